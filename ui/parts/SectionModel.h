// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"
#include "ui/parts/PartSection.h"
#include "ui/widgets/RecordRowsModel.h"
#include "ui/widgets/UnkeptWords.h"

#include <cstdint>
#include <functional>

namespace lastrivet::ui {

class Session;

/// The records of a part in one section; ticked and written in place.
class SectionModel final : public RecordRowsModel {
    Q_OBJECT

public:
    explicit SectionModel(Session &session, QObject *parent = nullptr);

    /// No part stands for the whole aircraft.
    void show(const PartSection &section, Id<Component> part, bool isWithBelow);
    /// Leaves out records that it does not hold for; none lists all again.
    using Filter = std::function<bool(std::int64_t id)>;
    void setFilter(Filter filter);
    void apply(const ChangeNotice &notice);
    void applyAnswer() { touchAll(); }
    /// What was typed into cells and could not be saved.
    const UnkeptWords &unkept() const { return m_unkept; }

    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    bool setData(const QModelIndex &index, const QVariant &value, int role) override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex &index) const override;
    /// Steps are dragged into another order.
    Qt::DropActions supportedDropActions() const override { return Qt::MoveAction; }
    QStringList mimeTypes() const override;
    QMimeData *mimeData(const QModelIndexList &indexes) const override;
    bool dropMimeData(const QMimeData *data, Qt::DropAction action, int row, int column,
                      const QModelIndex &parent) override;

private:
    void fill();
    bool tick(const SectionColumn &column, std::int64_t id, bool isTicked);
    bool write(const SectionColumn &column, std::int64_t id, const QString &text);
    QString nameOf(std::int64_t id) const;
    QVariant markOf(Tone tone) const;

    Session &m_session;
    const PartSection *m_section;
    Id<Component> m_part;
    bool m_isWithBelow = true;
    Filter m_filter;
    /// By record and the column's title.
    UnkeptWords m_unkept;
};

/// The part and, if wanted, everything below it; for no part all parts, and 0 for what is on none.
std::unordered_set<std::int64_t> partsShown(const Records &records, Id<Component> part,
                                            bool isWithBelow);

} // namespace lastrivet::ui
