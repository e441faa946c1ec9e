// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/TodayPage.h"

#include "ui/convert/QtText.h"
#include "ui/today/HoursPanel.h"
#include "ui/today/StandingPanel.h"
#include "ui/today/TodayRows.h"
#include "ui/widgets/EmptyPlace.h"
#include "ui/widgets/RowListView.h"
#include "ui/widgets/Section.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QResizeEvent>
#include <QScrollArea>
#include <QVBoxLayout>

#include <utility>

namespace lastrivet::ui {

namespace {

constexpr int headlineSteps = 3; // 10 pt × 1.25³ is 20 pt
constexpr int widestList = 760;
constexpr int widestLeft = 400;
/// From this width on the lists stand in two columns; below the other everything is stacked.
constexpr int twoColumnsFrom = 1500;
constexpr int stackedBelow = 760;

} // namespace

TodayPage::TodayPage(Session &session, QWidget *parent)
    : Page(session, parent)
    , m_headline(new QLabel(this))
    , m_timer(new QLabel(this))
    , m_standing(new StandingPanel(theme(), this))
    , m_hours(new HoursPanel(this))
    , m_staysOpen(new Section(theme(), tr("Stays open"),
                              tr("No closing that was begun has to stay open."), this))
    , m_workable(new Section(theme(), tr("Workable now"),
                             tr("No step is recorded that can be worked on."), this))
    , m_lastChance(new Section(theme(), tr("Before it is out of reach"),
                               tr("Nothing on record would be buried by the next closing."), this))
    , m_attention(new Section(theme(), tr("Needs attention"), tr("Nothing on record."), this))
    , m_empty(new EmptyPlace({}, this))
    , m_columns(nullptr)
    , m_lists{}
    , m_left(nullptr)
    , m_scroll(new QScrollArea(this))
{
    build();
    fill();
    connect(&session, &Session::timerChanged, this, &TodayPage::fill);
}

void TodayPage::build()
{
    m_headline->setFont(theme().font(headlineSteps));
    m_headline->setWordWrap(true);
    m_empty->setSentence(tr("Here stands each evening what must stay open and what can be worked "
                            "on. It begins with a part and the closing that will hide it."));
    m_empty->setAction(tr("Make the first closing"));
    connect(m_empty, &EmptyPlace::acted, this, [this] {
        session().goTo({RecordType::Closing, 0});
    });
    m_attention->list().setTitleLines(2);
    m_lastChance->list().setTitleLines(2);
    auto *body = new QWidget;
    m_columns = new QBoxLayout(QBoxLayout::LeftToRight);
    m_columns->setSpacing(32);
    m_columns->addWidget(buildLeft(), 1);
    m_columns->addWidget(buildLists(), 2);
    auto *whole = new QVBoxLayout(body);
    whole->setContentsMargins(24, 16, 24, 16);
    whole->setSpacing(16);
    whole->addWidget(m_headline);
    whole->addLayout(m_columns);
    whole->addWidget(m_empty, 1);
    whole->addStretch(1);
    m_scroll->setWidgetResizable(true);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setWidget(body);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_scroll);
    arrange(twoColumnsFrom - 1);
}

QWidget *TodayPage::buildLeft()
{
    m_left = new QWidget(this);
    m_left->setMaximumWidth(widestLeft);
    auto *layout = new QVBoxLayout(m_left);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(16);
    layout->addWidget(m_standing);
    m_timer->setWordWrap(true);
    layout->addWidget(m_timer);
    layout->addWidget(m_hours);
    layout->addStretch(1);
    return m_left;
}

QWidget *TodayPage::buildLists()
{
    auto *lists = new QWidget(this);
    auto *layout = new QHBoxLayout(lists);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(32);
    for (QVBoxLayout *&column : m_lists) {
        column = new QVBoxLayout;
        column->setSpacing(20);
        layout->addLayout(column, 1);
    }
    for (Section *section : {m_staysOpen, m_workable, m_lastChance, m_attention}) {
        section->setMaximumWidth(widestList);
        connect(section, &Section::chosen, &session(), &Session::goTo);
    }
    connect(m_workable, &Section::acted, this, &TodayPage::startWork);
    return lists;
}

void TodayPage::arrange(int width)
{
    const auto wanted = width < stackedBelow     ? Arrangement::Stacked
                        : width < twoColumnsFrom ? Arrangement::Beside
                                                 : Arrangement::TwoColumns;
    if (wanted == m_arrangement)
        return;
    m_arrangement = wanted;
    const bool isStacked = wanted == Arrangement::Stacked;
    m_columns->setDirection(isStacked ? QBoxLayout::BottomToTop : QBoxLayout::LeftToRight);
    m_left->setMaximumWidth(isStacked ? widestList : widestLeft);
    for (QVBoxLayout *column : m_lists) {
        while (QLayoutItem *item = column->takeAt(0))
            delete item;
    }
    QVBoxLayout &second = *m_lists[wanted == Arrangement::TwoColumns ? 1 : 0];
    m_lists[0]->addWidget(m_staysOpen);
    second.addWidget(m_workable);
    m_lists[0]->addWidget(m_lastChance);
    second.addWidget(m_attention);
    m_lists[0]->addStretch(1);
    m_lists[1]->addStretch(1);
}

void TodayPage::fill()
{
    const Snapshot records = session().records();
    const auto answer = session().answer();
    const today::Today page = today::today(*records, *answer);
    const bool isEmpty = records->closings.isEmpty() && records->steps.isEmpty();
    m_empty->setVisible(isEmpty);
    m_left->setVisible(!isEmpty);
    for (Section *section : {m_staysOpen, m_workable, m_lastChance, m_attention})
        section->setVisible(!isEmpty);
    m_headline->setText(isEmpty ? tr("Nothing is recorded yet.") : headlineWords(page.tally));
    m_standing->show(page.tally);
    const auto timer = session().timer();
    m_staysOpen->setRows(staysOpenRows(page, *records, *answer));
    m_workable->setRows(workableRows(page, *records, timer ? timer->step_id : Id<Step>{}));
    m_lastChance->setRows(lastChanceRows(page, *records, *answer));
    m_attention->setRows(attentionRows(page, *records));
    m_hours->show(page.hours);
    showTimer();
}

void TodayPage::showTimer()
{
    const auto timer = session().timer();
    m_timer->setVisible(timer.has_value());
    if (timer)
        m_timer->setText(tr("The clock runs since %1.").arg(dateText(timer->began)));
}

void TodayPage::startWork(RecordRef record)
{
    const Step *step = session().records()->find(Id<Step>{record.id});
    const auto running = session().timer();
    if (!step || (running && running->step_id == step->id)) {
        session().goTo({RecordType::WorkSession, 0});
        return;
    }
    if (running) {
        session().complain(tr("The clock runs already, since %1. Stop it on the Log page first, so "
                              "that its time is not lost.")
                               .arg(dateText(running->began)));
        return;
    }
    session().setTimer(RunningTimer{session().now(), step->component_id, step->id, {}});
    session().say(tr("The clock runs: %1").arg(toQt(step->title)));
}

void TodayPage::showRecord(RecordRef)
{
    // No record has its place on this page.
}

QWidget *TodayPage::firstFocus()
{
    return m_staysOpen->list().rows().rowCount() > 0 ? &m_staysOpen->list() : &m_workable->list();
}

void TodayPage::recordsChanged(const ChangeNotice &)
{
    // Rows speak of the answer; they follow it in a moment.
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
    Page::showEvent(event);
}

void TodayPage::themeChanged()
{
    fill();
}

void TodayPage::resizeEvent(QResizeEvent *event)
{
    Page::resizeEvent(event);
    arrange(event->size().width());
}

} // namespace lastrivet::ui
