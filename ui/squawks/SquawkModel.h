// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"
#include "core/readiness/SquawkFilter.h"
#include "ui/widgets/RecordRowsModel.h"

#include <array>
#include <map>
#include <vector>

namespace lastrivet::ui {

class Session;

/// The squawks in the order in which they call for work, as far as the filter lets them through.
class SquawkModel final : public RecordRowsModel {
    Q_OBJECT

public:
    enum Role {
        SeverityRole = Qt::UserRole,
        NumberRole,
        PlaceRole,
        ReachRole,
        StateRole,
        UrgentRole,
        /// What heads the group that begins with this row; empty for the others.
        HeadingRole,
    };
    using Filter = readiness::SquawkFilter;

    explicit SquawkModel(Session &session, QObject *parent = nullptr);

    void setFilter(const Filter &filter);
    const Filter &filter() const { return m_filter; }
    void apply(const ChangeNotice &notice);
    void applyAnswer();
    /// How many are soon out of reach, whatever the filter.
    int notForLong() const;
    /// What is shown, in its order.
    std::vector<readiness::ListedSquawk> listed() const;
    /// How long a squawk can be reached, and which closings matter; null for an unknown one.
    const readiness::ListedSquawk *listed(Id<Squawk> squawk) const;

    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;

private:
    /// The rows that are alike in reach.
    struct Group {
        Id<Squawk> first;
        int count = 0;

        friend bool operator==(const Group &, const Group &) = default;
    };

    void fill();
    QString heading(Id<Squawk> squawk) const;
    QString reachWords(Id<Squawk> squawk) const;
    QString wholeText(const Squawk &squawk) const;

    Session &m_session;
    Filter m_filter;
    std::map<Id<Squawk>, readiness::ListedSquawk> m_listed;
    std::array<Group, 4> m_groups{};
};

/// Where a squawk stood by `asOf`, in words: "open", "fixed, the inspector has to look",
/// "verified".
QString squawkState(const Squawk &squawk, Moment asOf);

} // namespace lastrivet::ui
