// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/today/Today.h"
#include "ui/shell/Page.h"

#include <array>

class QBoxLayout;
class QLabel;
class QPushButton;
class QScrollArea;
class QVBoxLayout;

namespace lastrivet::ui {

class AirframePanel;
class BackupKeeper;
class BackupNotice;
class EmptyPlace;
class HoursCalculation;
class HoursPanel;
class Section;
class StandingPanel;
class TodayActs;

/// The first page: one sentence, the aeroplane by the state of its closings, what to work on, what
/// not to forget, and the hours.
class TodayPage final : public Page {
    Q_OBJECT

public:
    explicit TodayPage(Session &session, QWidget *parent = nullptr);

    /// Says how old the last backup is, when that is worth saying.
    BackupNotice &follow(BackupKeeper &keeper);
    void showRecord(RecordRef record) override;
    QWidget *firstFocus() override;

protected:
    void recordsChanged(const ChangeNotice &notice) override;
    void answerChanged() override;
    void themeChanged() override;
    void showEvent(QShowEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;

private:
    enum class Arrangement { None, Stacked, Beside, TwoColumns, ThreeColumns };

    void build();
    QWidget *buildLists();
    QWidget *buildLeft();
    /// In how many columns the lists stand.
    int columns() const;
    void arrange(int width);
    void giveRoom(int height);
    void fill();
    /// As soon as the page is seen, and the answer is of what is on record.
    void refill();
    void fillLists(const today::Today &page);
    void showTimer();
    void showForecast();
    void showUndecided();
    void limitWidths();

    QLabel *m_headline;
    QLabel *m_teaching;
    QLabel *m_timer;
    BackupNotice *m_backup = nullptr;
    QPushButton *m_undecided;
    AirframePanel *m_airframe;
    StandingPanel *m_standing;
    HoursPanel *m_hours;
    HoursCalculation *m_calculation;
    Section *m_staysOpen;
    Section *m_workable;
    Section *m_lastChance;
    Section *m_attention;
    EmptyPlace *m_empty;
    TodayActs *m_acts;
    int m_rowsAtFirst;
    QBoxLayout *m_columns;
    std::array<QVBoxLayout *, 3> m_lists;
    QWidget *m_left;
    QWidget *m_right;
    bool m_isStale = false;
    Arrangement m_arrangement = Arrangement::None;
    QScrollArea *m_scroll;
};

} // namespace lastrivet::ui
