// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"
#include "core/readiness/SquawkOrder.h"
#include "ui/widgets/RecordRowsModel.h"

#include <map>
#include <optional>

namespace lastrivet::ui {

class Session;

/// The squawks in the order in which they call for work, as far as the filter lets them through.
class SquawkModel final : public RecordRowsModel {
    Q_OBJECT

public:
    enum Role { SeverityRole = Qt::UserRole, NumberRole, PlaceRole, ReachRole, StateRole, UrgentRole };

    struct Filter {
        QString text;
        std::optional<Severity> severity;
        bool isOpenOnly = true;

        friend bool operator==(const Filter &, const Filter &) = default;
    };

    explicit SquawkModel(Session &session, QObject *parent = nullptr);

    void setFilter(const Filter &filter);
    void apply(const ChangeNotice &notice);
    void applyAnswer();
    /// How many are soon out of reach, whatever the filter.
    int notForLong() const;

    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;

private:
    void fill();
    bool isShown(const Squawk &squawk) const;
    QString reachWords(Id<Squawk> squawk) const;
    QString wholeText(const Squawk &squawk) const;

    Session &m_session;
    Filter m_filter;
    std::map<Id<Squawk>, readiness::ListedSquawk> m_listed;
};

/// Where a squawk stands, in words: "open", "fixed, the inspector has to look at it", "verified".
QString squawkState(const Squawk &squawk);

} // namespace lastrivet::ui
