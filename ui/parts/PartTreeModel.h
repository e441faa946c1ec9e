// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"
#include "core/readiness/Answer.h"
#include "ui/parts/PartFigures.h"

#include <QAbstractItemModel>

#include <memory>
#include <unordered_map>
#include <unordered_set>
#include <vector>

namespace lastrivet::ui {

class Session;

/// The tree of live parts with state, hours, open squawks and photos; an index carries the part's
/// id.
class PartTreeModel final : public QAbstractItemModel {
    Q_OBJECT

public:
    enum Column { PartColumn, StateColumn, HoursColumn, SquawksColumn, PhotosColumn, columns };
    enum Role { IdRole = Qt::UserRole };

    explicit PartTreeModel(Session &session, QObject *parent = nullptr);

    void apply(const ChangeNotice &notice);
    void applyAnswer();
    Id<Component> partAt(const QModelIndex &index) const { return idOf(index); }
    /// Invalid when the part is not in the tree.
    QModelIndex indexOf(Id<Component> part, int column = PartColumn) const;
    PartFigures figures(Id<Component> part) const;

    QModelIndex index(int row, int column, const QModelIndex &parent = {}) const override;
    QModelIndex parent(const QModelIndex &index) const override;
    int rowCount(const QModelIndex &parent = {}) const override;
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex &index) const override;
    Qt::DropActions supportedDropActions() const override { return Qt::MoveAction; }
    QStringList mimeTypes() const override;
    QMimeData *mimeData(const QModelIndexList &indexes) const override;
    bool dropMimeData(const QMimeData *data, Qt::DropAction action, int row, int column,
                      const QModelIndex &parent) override;

private:
    using Ids = std::vector<std::int64_t>;
    /// The parts below each part in order; 0 stands for the top.
    using Shape = std::unordered_map<std::int64_t, Ids>;

    static Id<Component> idOf(const QModelIndex &index);
    static Shape shapeOf(const Records &records);
    void reset();
    void indexParents();
    void remove(std::int64_t id);
    void forget(std::int64_t id);
    void insert(std::int64_t id, std::int64_t parent);
    bool move(std::int64_t id, std::int64_t parent);
    bool isBelow(std::int64_t id, std::int64_t above) const;
    bool applyShape(const Shape &wanted);
    void removeGone(const Shape &wanted);
    void insertNew(const Shape &wanted, std::int64_t parent);
    bool moveAll(const Shape &wanted);
    void order(const Shape &wanted);
    void touch(std::int64_t id);
    void touchFigures(const FiguresByPart &before);
    QString text(const Component &part, int column) const;
    QString inFull(const Component &part, int column) const;
    QVariant stateIconOf(const Component &part) const;

    Session &m_session;
    Shape m_shape;
    std::unordered_map<std::int64_t, std::int64_t> m_parents;
    FiguresByPart m_figures;
    std::shared_ptr<const readiness::Answer> m_answer;
};

} // namespace lastrivet::ui
