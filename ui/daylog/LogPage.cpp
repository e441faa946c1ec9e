// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/daylog/LogPage.h"

#include "ui/convert/QtText.h"
#include "ui/daylog/EntryBar.h"
#include "ui/daylog/LogDelegate.h"
#include "ui/daylog/LogModel.h"
#include "ui/daylog/WorkersEditor.h"
#include "ui/daylog/YearStrip.h"
#include "ui/widgets/ActLine.h"
#include "ui/widgets/EmptyPlace.h"
#include "ui/widgets/PhotoStrip.h"
#include "ui/widgets/PictureLoader.h"
#include "ui/widgets/RecordForm.h"
#include "ui/widgets/WithdrawAct.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QScrollArea>
#include <QShortcut>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace lastrivet::ui {

namespace {

std::vector<RecordForm::Row> formRows()
{
    return {{"began"},
            {"minutes", false, LogPage::tr("Duration")},
            {"component_id"},
            {"note", true, LogPage::tr("What was done")},
            {"kind"},
            {"step_id"},
            {"squawk_id"},
            {"changed_inspected", false, LogPage::tr("Changed what was inspected")},
            {"approximate", false, LogPage::tr("Only about right")},
            {"place"},
            {"source"}};
}

} // namespace

LogPage::LogPage(Session &session, QWidget *parent)
    : Page(session, parent)
    , m_model(new LogModel(session, this))
    , m_loader(new PictureLoader(session, this))
    , m_entry(new EntryBar(session, this))
    , m_filter(new QLineEdit(this))
    , m_total(new QLabel(this))
    , m_list(new QListView(this))
    , m_empty(new EmptyPlace({}, this))
    , m_stack(new QStackedWidget(this))
    , m_strip(new YearStrip(session, this))
    , m_detail(new QScrollArea(this))
    , m_form(new RecordForm(session, RecordType::WorkSession, formRows(), this))
    , m_workers(new WorkersEditor(session, this))
    , m_photos(new PhotoStrip(session, *m_loader, this))
    , m_ask(new ActLine(session, this))
{
    build();
    buildKeys();
    if (m_model->rowCount() > 1)
        m_list->setCurrentIndex(m_model->index(1, 0));
    showCurrent();
    updateWords();
}

void LogPage::build()
{
    auto *halves = new QSplitter(this);
    halves->setChildrenCollapsible(false);
    halves->addWidget(buildList());
    halves->addWidget(buildDetail());
    halves->setStretchFactor(0, 3);
    halves->setStretchFactor(1, 2);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 12, 16, 8);
    layout->setSpacing(8);
    layout->addWidget(m_entry);
    layout->addWidget(m_strip);
    layout->addWidget(halves, 1);
    connect(m_entry, &EntryBar::recorded, this, [this](qint64 id) {
        showRecord({RecordType::WorkSession, id});
        m_entry->focusLine();
    });
    connect(m_entry, &EntryBar::leftForList, this, [this] { m_list->setFocus(); });
    connect(m_strip, &YearStrip::dayChosen, this, &LogPage::goToDay);
}

QWidget *LogPage::buildList()
{
    m_list->setModel(m_model);
    m_list->setItemDelegate(new LogDelegate(theme(), this));
    m_list->setAccessibleName(tr("Log entries"));
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setResizeMode(QListView::Adjust);
    m_empty->setSentence(tr("What was done each day will stand here. Write the first entry in the "
                            "line above, or start the clock."));
    m_stack->addWidget(m_list);
    m_stack->addWidget(m_empty);
    m_filter->setPlaceholderText(tr("Type to filter"));
    m_filter->setAccessibleName(tr("Filter the log"));
    m_filter->setClearButtonEnabled(true);
    auto *line = new QHBoxLayout;
    line->addWidget(m_filter, 1);
    line->addWidget(m_total);
    auto *left = new QWidget(this);
    auto *layout = new QVBoxLayout(left);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(line);
    layout->addWidget(m_stack, 1);
    connect(m_filter, &QLineEdit::textChanged, this, [this] {
        m_model->setFilter(m_filter->text().trimmed());
        updateWords();
    });
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this] { showCurrent(); });
    connect(m_list, &QListView::activated, this, [this] { m_form->edit("note"); });
    return left;
}

QWidget *LogPage::buildDetail()
{
    auto *inside = new QWidget(this);
    auto *removal = new QPushButton(tr("Withdraw this entry"), inside);
    removal->setProperty("flat", true);
    removal->setEnabled(!session().isReadOnly());
    auto *layout = new QVBoxLayout(inside);
    layout->setContentsMargins(16, 0, 8, 8);
    layout->setSpacing(8);
    layout->addWidget(m_ask);
    layout->addWidget(m_form);
    layout->addWidget(new QLabel(tr("Who worked"), inside));
    layout->addWidget(m_workers);
    layout->addWidget(m_photos);
    layout->addWidget(removal, 0, Qt::AlignLeft);
    layout->addStretch(1);
    m_detail->setWidgetResizable(true);
    m_detail->setFocusPolicy(Qt::NoFocus);
    m_detail->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_detail->setWidget(inside);
    connect(removal, &QPushButton::clicked, this, &LogPage::withdrawCurrent);
    connect(m_ask, &ActLine::ended, this, [this] { m_list->setFocus(); });
    return m_detail;
}

void LogPage::buildKeys()
{
    auto *removal = new QShortcut(QKeySequence::Delete, m_list);
    removal->setContext(Qt::WidgetShortcut);
    connect(removal, &QShortcut::activated, this, &LogPage::withdrawCurrent);
    auto *find = new QShortcut(QKeySequence(QStringLiteral("/")), m_list);
    find->setContext(Qt::WidgetShortcut);
    connect(find, &QShortcut::activated, this, [this] { m_filter->setFocus(); });
}

Id<WorkSession> LogPage::current() const
{
    const QModelIndex index = m_list->currentIndex();
    if (!index.isValid() || LogModel::isDay(m_model->recordAt(index.row())))
        return {};
    return Id<WorkSession>{m_model->recordAt(index.row()).id};
}

void LogPage::showCurrent()
{
    const Id<WorkSession> id = current();
    m_detail->widget()->setVisible(bool(id));
    m_form->show(id.value());
    m_workers->show(id);
    m_photos->show({{RecordType::WorkSession, id.value()}});
}

void LogPage::withdrawCurrent()
{
    if (current())
        askToWithdraw(session(), *m_ask, {RecordType::WorkSession, current().value()});
}

void LogPage::updateWords()
{
    const bool isAny = std::ranges::any_of(
        session().records()->work_sessions,
        [](const WorkSession &known) { return !known.withdrawn_on; });
    m_stack->setCurrentWidget(isAny ? static_cast<QWidget *>(m_list) : m_empty);
    m_total->setText(tr("%n entries, %1", nullptr, m_model->entryCount())
                         .arg(hoursText(m_model->total())));
}

void LogPage::goToDay(QDate day)
{
    for (int row = 0; row < m_model->rowCount(); ++row) {
        const RecordRef record = m_model->recordAt(row);
        if (LogModel::isDay(record) && toDate(*Moment::ofDay(std::chrono::sys_days{
                                           std::chrono::days{record.id}})) <= day) {
            m_list->setCurrentIndex(m_model->index(row + 1, 0));
            m_list->scrollTo(m_model->index(row, 0), QAbstractItemView::PositionAtTop);
            return;
        }
    }
}

void LogPage::showRecord(RecordRef record)
{
    if (m_model->rowOf(record) < 0)
        m_filter->clear();
    if (const int row = m_model->rowOf(record); row >= 0) {
        m_list->setCurrentIndex(m_model->index(row, 0));
        m_list->scrollTo(m_list->currentIndex(), QAbstractItemView::PositionAtCenter);
    }
}

void LogPage::startNew()
{
    m_entry->focusLine();
}

QWidget *LogPage::firstFocus()
{
    m_entry->focusLine();
    return focusWidget();
}

Id<Component> LogPage::shownPart() const
{
    const WorkSession *shown = session().records()->findLive(current());
    return shown ? shown->component_id : Id<Component>{};
}

void LogPage::recordsChanged(const ChangeNotice &notice)
{
    m_model->apply(notice);
    m_form->apply(notice);
    m_photos->apply(notice);
    m_entry->recordsChanged();
    m_strip->recordsChanged();
    showCurrent();
    updateWords();
}

void LogPage::answerChanged()
{
    m_entry->recordsChanged();
}

} // namespace lastrivet::ui
