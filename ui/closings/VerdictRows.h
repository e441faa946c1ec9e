// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/acts/Inspecting.h"

#include <QWidget>

#include <cstddef>
#include <vector>

class QCheckBox;
class QComboBox;
class QGridLayout;
class QPushButton;

namespace lastrivet::ui {

class Session;

/// The hold points that one visit can sign, each with what was said about it.
///
/// A list to the keyboard: Tab comes to one row, Up and Down go to the others, Space picks, Right
/// goes to what was said.
class VerdictRows final : public QWidget {
    Q_OBJECT

public:
    explicit VerdictRows(Session &session, QWidget *parent = nullptr);

    /// Lists the hold points of these closings and those that are named, chosen, and behind them
    /// every other that waits for somebody from outside; where those are many, on demand.
    void start(const IdSet<Closing> &closings, const IdSet<HoldPoint> &named = {});
    /// Lists what was left out, and leads the keyboard to it.
    void showOthers();
    /// Hides the results while a visit is only asked for.
    void setAsking(bool isAsking);
    IdSet<HoldPoint> chosen() const;
    std::vector<acts::Verdict> verdicts() const;
    /// The highest role that the chosen ones need, and the kind of visit that sees the first.
    SignerRole role() const;
    InspectionKind kind() const;

Q_SIGNALS:
    void chosenChanged();
    /// The button for the others was pressed.
    void othersWanted();

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    struct Row {
        Id<HoldPoint> point;
        QCheckBox *box;
        QComboBox *result;
    };

    void addRow(const HoldPoint &point, bool isChosen);
    void addOthers();
    void offerOthers();
    bool isTaken(const Row &row) const;
    /// The Tab key comes to this row, with what was said in it, and to no other.
    void makeStop(std::size_t place);
    /// True when the key is one of the list's, also where it leads nowhere.
    bool follow(std::size_t place, int key);
    /// A result stands only beside what is chosen: a grey one would read as said.
    void showResults();

    Session &m_session;
    std::vector<Row> m_rows;
    /// Those that wait as well and have no row yet.
    std::vector<Id<HoldPoint>> m_others;
    /// Null where nothing was left out.
    QPushButton *m_more = nullptr;
    bool m_isAsking = false;
    QGridLayout *m_layout;
};

} // namespace lastrivet::ui
