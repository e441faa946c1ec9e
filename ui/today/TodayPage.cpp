// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/TodayPage.h"

#include "ui/backup/BackupNotice.h"
#include "ui/convert/QtText.h"
#include "ui/hours/HoursCalculation.h"
#include "ui/journal/JournalCall.h"
#include "ui/journal/ScreenWording.h"
#include "ui/print/HoursSentences.h"
#include "ui/today/AirframePanel.h"
#include "ui/today/HoursPanel.h"
#include "ui/today/StandingPanel.h"
#include "ui/today/TodayActs.h"
#include "ui/today/TodayRows.h"
#include "ui/widgets/AirframePicture.h"
#include "ui/widgets/EmptyPlace.h"
#include "ui/widgets/RowListView.h"
#include "ui/widgets/Section.h"

#include <QFontMetrics>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QResizeEvent>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>
#include <initializer_list>
#include <utility>

namespace lastrivet::ui {

namespace {

constexpr int headlineSteps = 3; // 10 pt × 1.25³ is 20 pt
constexpr int widestLeft = 400;
constexpr int rowsAtFirst = 4;
constexpr int rowsWithRoom = 8;
/// Lines longer than this are hard to read on.
constexpr int longestLine = 88;
/// From these widths on the lists stand in columns; below the last everything is stacked.
constexpr int threeColumnsFrom = 2100;
constexpr int twoColumnsFrom = 1500;
constexpr int stackedBelow = 760;
constexpr int betweenColumns = 32;
/// From this height on a page with columns has room for more rows of each list.
constexpr int manyRowsFrom = 1100;

/// The width of a number of letters of running text.
int widthOf(int letters, const QFontMetrics &metrics)
{
    const auto sample = QStringLiteral("nothing on record stands against closing the left wing");
    return int(metrics.horizontalAdvance(sample) * letters / sample.size());
}

} // namespace

TodayPage::TodayPage(Session &session, QWidget *parent)
    : Page(session, parent)
    , m_headline(new QLabel(this))
    , m_teaching(new QLabel(this))
    , m_timer(new QLabel(this))
    , m_undecided(new QPushButton(this))
    , m_airframe(new AirframePanel(session, this))
    , m_standing(new StandingPanel(theme(), this))
    , m_hours(new HoursPanel(theme(), this))
    , m_calculation(new HoursCalculation(session, HoursCalculation::Extent::Forecast, this))
    , m_staysOpen(new Section(theme(), tr("Stays open"),
                              tr("No closing that was begun has to stay open."), this))
    , m_workable(new Section(theme(), tr("Workable now"), {}, this))
    , m_lastChance(new Section(theme(), tr("Before it is out of reach"),
                               tr("Nothing on record would be buried by the next closing."), this))
    , m_attention(new Section(theme(), tr("Needs attention"), tr("Nothing on record."), this))
    , m_empty(new EmptyPlace({}, this))
    , m_acts(new TodayActs(session, this))
    , m_rowsAtFirst(rowsAtFirst)
    , m_columns(nullptr)
    , m_lists{}
    , m_left(nullptr)
    , m_right(nullptr)
    , m_scroll(new QScrollArea(this))
{
    build();
    m_undecided->hide();
    connect(m_calculation, &HoursCalculation::changed, this, &TodayPage::showForecast);
    connect(m_hours, &HoursPanel::hoursWanted, this, [this] {
        this->session().goTo({RecordType::Person, 0});
    });
    fill();
    connect(&session, &Session::timerChanged, this, &TodayPage::refill);
}

void TodayPage::build()
{
    m_headline->setFont(theme().font(headlineSteps));
    for (QLabel *label : {m_headline, m_teaching, m_timer})
        label->setWordWrap(true);
    m_empty->setSentence(tr("Here stands each evening what must stay open and what can be worked "
                            "on. It begins with a part and the closing that will hide it."));
    m_empty->setAction(tr("Make the first closing"));
    connect(m_undecided, &QPushButton::clicked, this, [this] { callDecisions(*this); });
    connect(m_empty, &EmptyPlace::acted, this, [this] {
        session().goTo({RecordType::Closing, 0});
    });
    for (Section *section : {m_staysOpen, m_attention, m_lastChance})
        section->list().setTitleLines(2);
    auto *body = new QWidget;
    m_columns = new QBoxLayout(QBoxLayout::LeftToRight);
    m_columns->setSpacing(32);
    m_columns->addWidget(buildLeft(), 1);
    m_columns->addWidget(buildLists(), 2);
    m_columns->addStretch(0);
    auto *whole = new QVBoxLayout(body);
    whole->setContentsMargins(24, 16, 24, 16);
    whole->setSpacing(12);
    for (QLabel *label : {m_headline, m_teaching, m_timer})
        whole->addWidget(label);
    whole->addWidget(m_undecided, 0, Qt::AlignLeft);
    whole->addLayout(m_columns);
    whole->addWidget(m_hours);
    whole->addWidget(m_empty, 1);
    whole->addStretch(1);
    m_scroll->setWidgetResizable(true);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setWidget(body);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_scroll);
    limitWidths();
    arrange(twoColumnsFrom - 1);
}

void TodayPage::limitWidths()
{
    for (QLabel *label : {m_headline, m_teaching, m_timer})
        label->setMaximumWidth(widthOf(longestLine, label->fontMetrics()));
    const int width = widthOf(longestLine, fontMetrics());
    for (Section *section : {m_staysOpen, m_workable, m_lastChance, m_attention})
        section->setMaximumWidth(width);
    m_hours->setMaximumWidth(width + widestLeft);
}

QWidget *TodayPage::buildLeft()
{
    m_left = new QWidget(this);
    m_left->setMaximumWidth(widestLeft);
    auto *layout = new QVBoxLayout(m_left);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(8);
    layout->addWidget(m_airframe);
    layout->addWidget(m_standing);
    layout->addStretch(1);
    return m_left;
}

QWidget *TodayPage::buildLists()
{
    m_right = new QWidget(this);
    auto *layout = new QHBoxLayout(m_right);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(betweenColumns);
    for (QVBoxLayout *&column : m_lists) {
        column = new QVBoxLayout;
        column->setSpacing(16);
        layout->addLayout(column, 1);
    }
    for (Section *section : {m_staysOpen, m_workable, m_lastChance, m_attention}) {
        section->setShortLength(m_rowsAtFirst);
        connect(section, &Section::chosen, &session(), &Session::goTo);
        connect(section, &Section::acted, m_acts, &TodayActs::mend);
    }
    return m_right;
}

int TodayPage::columns() const
{
    switch (m_arrangement) {
    case Arrangement::ThreeColumns:
        return 3;
    case Arrangement::TwoColumns:
        return 2;
    default:
        return 1;
    }
}

void TodayPage::arrange(int width)
{
    const auto wanted = width < stackedBelow       ? Arrangement::Stacked
                        : width < twoColumnsFrom   ? Arrangement::Beside
                        : width < threeColumnsFrom ? Arrangement::TwoColumns
                                                   : Arrangement::ThreeColumns;
    if (wanted == m_arrangement)
        return;
    m_arrangement = wanted;
    const bool isStacked = wanted == Arrangement::Stacked;
    m_columns->setDirection(isStacked ? QBoxLayout::BottomToTop : QBoxLayout::LeftToRight);
    const int count = columns();
    auto *beside = static_cast<QHBoxLayout *>(m_right->layout());
    for (int i = 1; i < int(m_lists.size()); ++i)
        beside->setStretch(i, i < count ? 1 : 0);
    beside->setSpacing(count > 1 ? betweenColumns : 0);
    m_right->setMaximumWidth(count * m_staysOpen->maximumWidth() + (count - 1) * betweenColumns);
    for (QVBoxLayout *column : m_lists) {
        while (QLayoutItem *item = column->takeAt(0))
            delete item;
    }
    // The last two go below the first two, or below each other in a column of their own.
    QVBoxLayout &second = *m_lists[count > 1 ? 1 : 0];
    m_lists[0]->addWidget(m_staysOpen);
    second.addWidget(m_workable);
    m_lists[count == 3 ? 2 : 0]->addWidget(m_lastChance);
    m_lists[std::size_t(count - 1)]->addWidget(m_attention);
    for (QVBoxLayout *column : m_lists)
        column->addStretch(1);
}

void TodayPage::giveRoom(int height)
{
    const int rows = columns() > 1 && height >= manyRowsFrom ? rowsWithRoom : rowsAtFirst;
    if (rows == m_rowsAtFirst)
        return;
    m_rowsAtFirst = rows;
    for (Section *section : {m_staysOpen, m_workable, m_lastChance, m_attention})
        section->setShortLength(rows);
    refill();
}

void TodayPage::fill()
{
    const Snapshot records = session().records();
    const today::Today page = today::today(*records, *session().answer());
    const bool isEmpty = records->components.isEmpty() && records->work_sessions.isEmpty();
    m_empty->setVisible(isEmpty);
    for (QWidget *part : std::initializer_list<QWidget *>{m_left, m_right, m_hours})
        part->setVisible(!isEmpty);
    m_headline->setText(isEmpty ? tr("Nothing is recorded yet.") : headlineWords(page.tally));
    const QString teaching = isEmpty ? QString() : teachingWords(page, *records);
    m_teaching->setText(teaching);
    m_teaching->setVisible(!teaching.isEmpty());
    m_standing->show(page.tally);
    m_standing->setVisible(!records->closings.isEmpty());
    m_airframe->showAnswer();
    m_hours->show(page.hours);
    m_calculation->refresh();
    fillLists(page);
    showTimer();
    if (m_backup)
        m_backup->lookAgain();
    showUndecided();
}

void TodayPage::refill()
{
    if (!isVisible())
        m_isStale = true;
    else if (session().isAnswerCurrent())
        fill();
    else
        // Rows of an older answer may speak of what is gone; the new one is on its way.
        showTimer();
}

void TodayPage::fillLists(const today::Today &page)
{
    const Snapshot records = session().records();
    const auto answer = session().answer();
    const auto timer = session().timer();
    m_workable->setWhenEmpty(
        records->steps.isEmpty()
            ? tr("No step is recorded. Steps are optional; of those written down, this list says "
                 "which can be worked on and what each of them unlocks.")
            : tr("Every step on record is done, or has to wait for another."));
    m_staysOpen->setRows(staysOpenRows(page, *records, *answer), page.stays_open.size());
    m_workable->setRows(workableRows(page, *records, timer ? timer->step_id : Id<Step>{}),
                        page.workable.size());
    auto chances = lastChanceRows(page, *records, *answer);
    m_lastChance->setRows(std::move(chances.rows), chances.total);
    m_attention->setRows(attentionRows(page), page.attention.size());
}

void TodayPage::showTimer()
{
    const auto timer = session().timer();
    m_timer->setVisible(timer.has_value());
    if (timer)
        m_timer->setText(tr("The clock runs since %1.").arg(dateText(timer->began)));
}

void TodayPage::showForecast()
{
    const auto &outlook = m_calculation->answer().outlook;
    const bool isKnown = outlook && !outlook->told.assemblies.empty();
    m_hours->showForecast(isKnown ? print::rangeSentence(screenWording(), outlook->told)
                                  : QString());
}

BackupNotice &TodayPage::follow(BackupKeeper &keeper)
{
    m_backup = new BackupNotice(keeper, this);
    m_backup->setMaximumWidth(widthOf(longestLine, fontMetrics()));
    auto *whole = static_cast<QVBoxLayout *>(m_scroll->widget()->layout());
    whole->insertWidget(whole->indexOf(m_timer) + 1, m_backup);
    return *m_backup;
}

/// What a merge left stays here until somebody has decided it.
void TodayPage::showUndecided()
{
    const auto conflicts = session().read([this] { return session().project().conflicts(); });
    // Shown as it is until they can be read again.
    if (!conflicts)
        return;
    const auto count = int(std::ranges::count_if(
        *conflicts, [](const MergeConflict &conflict) { return !conflict.decision; }));
    m_undecided->setVisible(count > 0);
    m_undecided->setText(tr("After a merge, %n things are to decide", nullptr, count));
}

void TodayPage::showRecord(RecordRef)
{
    // No record has its place on this page.
}

QWidget *TodayPage::firstFocus()
{
    if (!m_empty->isHidden())
        return m_empty;
    for (Section *section : {m_staysOpen, m_workable}) {
        if (section->list().rows().rowCount() > 0)
            return &section->list();
    }
    return &m_airframe->picture();
}

void TodayPage::recordsChanged(const ChangeNotice &)
{
    // The rows show the answer, which follows in a moment.
}

void TodayPage::answerChanged()
{
    m_isStale = !isVisible();
    if (!m_isStale)
        fill();
}

void TodayPage::showEvent(QShowEvent *event)
{
    if (std::exchange(m_isStale, false))
        fill();
    // On the page of hours something else may have been left out.
    m_calculation->refresh();
    Page::showEvent(event);
}

void TodayPage::themeChanged()
{
    refill();
}

void TodayPage::resizeEvent(QResizeEvent *event)
{
    Page::resizeEvent(event);
    arrange(event->size().width());
    giveRoom(event->size().height());
}

} // namespace lastrivet::ui
