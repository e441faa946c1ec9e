// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/Session.h"

#include <QWidget>

#include <vector>

class QBoxLayout;
class QLabel;
class QScrollArea;

namespace lastrivet::ui {

class RowListView;
class StateColumn;

/// All closings, a column per state; the one of the whole aircraft apart from the others.
class ClosingBoard final : public QWidget {
    Q_OBJECT

public:
    explicit ClosingBoard(Session &session, QWidget *parent = nullptr);

    void refresh();
    void setFilter(const QString &words);
    void setTheme();
    QWidget *firstList() const;
    /// The closing that the keyboard is at, or none.
    Id<Closing> chosenClosing() const;
    /// Every list of closings, that of the whole aircraft first.
    std::vector<RowListView *> lists() const;
    /// Puts the keyboard on this closing, or on the first one when it is not among those shown.
    void returnTo(Id<Closing> closing);

Q_SIGNALS:
    void chosen(lastrivet::RecordRef record);

protected:
    void resizeEvent(QResizeEvent *event) override;
    /// Left and Right go to the columns beside a column's list.
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void build();
    /// Scrolls to the row of a list that the keyboard has come to, with all of it.
    void follow(RowListView &list);
    void bringIntoView(const RowListView &list);
    /// Leads the keyboard from a column to the next one with rows: before it or behind it.
    void goBeside(const RowListView &list, bool isBehind);
    bool passes(const Closing &closing) const;
    QString detail(const Closing &closing, const readiness::ClosingAnswer &answer) const;
    void layOut();
    void alignHeads();
    void refreshAircraft();

    Session &m_session;
    QString m_filter;
    std::vector<StateColumn *> m_columns;
    QBoxLayout *m_layout;
    QScrollArea *m_scroll;
    QWidget *m_aircraftPlace;
    RowListView *m_aircraft;
    QLabel *m_nothing;
};

} // namespace lastrivet::ui
