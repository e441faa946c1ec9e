// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/daylog/LogPage.h"

#include "ui/convert/QtText.h"
#include "ui/daylog/EntryBar.h"
#include "ui/daylog/LogDelegate.h"
#include "ui/daylog/LogDetail.h"
#include "ui/daylog/LogModel.h"
#include "ui/daylog/LogbookForm.h"
#include "ui/daylog/YearStrip.h"
#include "ui/widgets/EmptyPlace.h"
#include "ui/widgets/FilterLine.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/OneRow.h"
#include "ui/widgets/PictureLoader.h"
#include "ui/widgets/RowMenu.h"

#include <QHBoxLayout>
#include <QItemSelectionModel>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QShortcut>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace lastrivet::ui {

LogPage::LogPage(Session &session, QWidget *parent)
    : Page(session, parent)
    , m_model(new LogModel(session, this))
    , m_loader(new PictureLoader(session, this))
    , m_entry(new EntryBar(session, this))
    , m_print(new LogbookForm(
          session, [this](Id<WorkSession> entry) { return m_model->writtenOn(entry); }, this))
    , m_filter(new FilterLine(this))
    , m_total(new QLabel(this))
    , m_list(new QListView(this))
    , m_empty(new EmptyPlace({}, this))
    , m_stack(new QStackedWidget(this))
    , m_strip(new YearStrip(session, this))
    , m_detail(new LogDetail(session, *m_loader, this))
{
    m_model->setPictures(m_loader);
    build();
    buildKeys();
    if (m_model->rowCount() > 1)
        chooseOneRow(*m_list, m_model->index(1, 0));
    showChosen();
    updateWords();
}

void LogPage::build()
{
    auto *halves = new QSplitter(this);
    halves->setChildrenCollapsible(false);
    halves->addWidget(buildList());
    halves->addWidget(m_detail);
    halves->setStretchFactor(0, 3);
    halves->setStretchFactor(1, 2);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 12, 16, 8);
    layout->setSpacing(8);
    layout->addWidget(m_entry);
    layout->addWidget(buildYear());
    layout->addWidget(m_print);
    layout->addWidget(halves, 1);
    connect(m_entry, &EntryBar::recorded, this, [this](qint64 id) {
        showRecord({RecordType::WorkSession, id});
        m_entry->focusLine();
    });
    connect(m_entry, &EntryBar::leftForList, this, [this] { m_list->setFocus(); });
    connect(m_print, &LogbookForm::left, this, [this] {
        m_print->hide();
        m_list->setFocus();
    });
    connect(m_strip, &YearStrip::dayChosen, this, &LogPage::goToDay);
    connect(m_detail, &LogDetail::ended, this, [this] { m_list->setFocus(); });
    connect(m_detail, &LogDetail::begunWanted, this, &LogPage::choose);
}

/// The strip between buttons that turn to the years around.
QWidget *LogPage::buildYear()
{
    auto *year = m_year = new QWidget(this);
    auto *layout = new QHBoxLayout(year);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    const auto addTurn = [&](const QString &sign, const QString &name, int years) {
        auto *button = flatButton(sign, year);
        button->setAccessibleName(name);
        button->setToolTip(name);
        connect(button, &QPushButton::clicked, m_strip, [this, years] { m_strip->turn(years); });
        layout->addWidget(button);
        return button;
    };
    addTurn(QStringLiteral("‹"), tr("The year before"), -1);
    layout->addWidget(m_strip, 1);
    auto *after = addTurn(QStringLiteral("›"), tr("The year after"), 1);
    const auto offer = [this, after] {
        after->setEnabled(!m_strip->isPresent());
        after->setToolTip(m_strip->isPresent() ? tr("This year ends today; there is none after it")
                                               : tr("The year after"));
    };
    connect(m_strip, &YearStrip::turned, after, offer);
    offer();
    return year;
}

QWidget *LogPage::buildList()
{
    m_list->setModel(m_model);
    m_list->setItemDelegate(new LogDelegate(theme(), this));
    m_list->setAccessibleName(tr("Log entries"));
    m_list->setSelectionMode(QAbstractItemView::ExtendedSelection);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setResizeMode(QListView::Adjust);
    m_empty->setSentence(tr("What was done each day will stand here. Write the first entry in the "
                            "line above, or start the clock."));
    m_stack->addWidget(m_list);
    m_stack->addWidget(m_empty);
    auto *left = new QWidget(this);
    auto *layout = new QVBoxLayout(left);
    layout->setContentsMargins(0, 0, 0, 0);
    auto *head = new QHBoxLayout;
    buildListHead(*head);
    layout->addLayout(head);
    layout->addWidget(m_stack, 1);
    connect(m_list->selectionModel(), &QItemSelectionModel::selectionChanged, this,
            [this] { showChosen(); });
    connect(m_list, &QListView::activated, this, [this] { m_detail->edit(); });
    return left;
}

void LogPage::buildListHead(QLayout &layout)
{
    m_filter->setPlaceholderText(tr("Type to filter"));
    m_filter->setAccessibleName(tr("Filter the log"));
    auto *print = new QPushButton(tr("Print…"), this);
    print->setToolTip(tr("Print the builder's log (Ctrl+P)"));
    layout.addWidget(m_filter);
    layout.addWidget(m_total);
    layout.addWidget(print);
    connect(m_filter, &QLineEdit::textChanged, this, [this] {
        m_model->setFilter(m_filter->text().trimmed());
        updateWords();
    });
    connect(print, &QPushButton::clicked, m_print, &LogbookForm::start);
}

void LogPage::startPrinting()
{
    m_print->start();
}

void LogPage::buildKeys()
{
    const auto add = [](const QKeySequence &keys, const QString &words, QWidget *where,
                        Qt::ShortcutContext context, auto act) {
        auto *shortcut = new QShortcut(keys, where);
        shortcut->setContext(context);
        shortcut->setWhatsThis(words);
        connect(shortcut, &QShortcut::activated, where, act);
    };
    add(QKeySequence::Delete, tr("Withdraw what is chosen"), m_list, Qt::WidgetShortcut,
        [this] { m_detail->withdraw(); });
    add(Qt::Key_S, tr("Split the entry"), m_list, Qt::WidgetShortcut,
        [this] { m_detail->split(); });
    add(Qt::Key_M, tr("Move the entry elsewhere"), m_list, Qt::WidgetShortcut,
        [this] { m_detail->moveElsewhere(); });
    add(Qt::Key_Slash, tr("Look for words in the list"), m_list, Qt::WidgetShortcut,
        [this] { m_filter->setFocus(); });
    add(QKeySequence::Print, tr("Print the builder's log"), this, Qt::WidgetWithChildrenShortcut,
        [this] { m_print->start(); });
    (new RowMenu(*m_list))->addBar(m_detail->acts());
}

std::vector<Id<WorkSession>> LogPage::chosen() const
{
    std::vector<int> rows;
    for (const QModelIndex &index : m_list->selectionModel()->selectedIndexes())
        rows.push_back(index.row());
    std::ranges::sort(rows);
    std::vector<Id<WorkSession>> entries;
    for (const int row : rows) {
        const RecordRef record = m_model->recordAt(row);
        if (!LogModel::isDay(record))
            entries.push_back(Id<WorkSession>{record.id});
    }
    return entries;
}

void LogPage::showChosen()
{
    m_detail->show(chosen());
}

void LogPage::updateWords()
{
    const bool isAny =
        std::ranges::any_of(session().records()->work_sessions,
                            [](const WorkSession &known) { return !known.withdrawn_on; });
    m_stack->setCurrentWidget(isAny ? static_cast<QWidget *>(m_list) : m_empty);
    m_year->setVisible(isAny);
    m_detail->setVisible(isAny);
    m_total->setText(
        tr("%n entries, %1", nullptr, m_model->entryCount()).arg(hoursText(m_model->total())));
}

void LogPage::goToDay(QDate day)
{
    for (int row = 0; row < m_model->rowCount(); ++row) {
        const RecordRef record = m_model->recordAt(row);
        if (LogModel::isDay(record) &&
            toDate(*Moment::ofDay(std::chrono::sys_days{std::chrono::days{record.id}})) <= day) {
            chooseOneRow(*m_list, m_model->index(row + 1, 0));
            m_list->scrollTo(m_model->index(row, 0), QAbstractItemView::PositionAtTop);
            return;
        }
    }
    // Before the first entry: the first one is the nearest.
    const QModelIndex first = m_model->index(m_model->rowCount() - 1, 0);
    chooseOneRow(*m_list, first);
    m_list->scrollTo(first);
}

/// Takes the filter away where it hides one of them.
void LogPage::choose(const std::vector<RecordRef> &entries)
{
    if (std::ranges::any_of(entries,
                            [this](const RecordRef &entry) { return m_model->rowOf(entry) < 0; }))
        m_filter->clear();
    QItemSelection selection;
    for (const RecordRef &entry : entries) {
        if (const int row = m_model->rowOf(entry); row >= 0)
            selection.select(m_model->index(row, 0), m_model->index(row, 0));
    }
    if (selection.isEmpty())
        return;
    const QModelIndex first = selection.indexes().front();
    m_list->selectionModel()->setCurrentIndex(first, QItemSelectionModel::NoUpdate);
    m_list->selectionModel()->select(selection, QItemSelectionModel::ClearAndSelect);
    m_list->scrollTo(first);
}

void LogPage::showRecord(RecordRef record)
{
    if (m_model->rowOf(record) < 0)
        m_filter->clear();
    if (const int row = m_model->rowOf(record); row >= 0) {
        chooseOneRow(*m_list, m_model->index(row, 0));
        m_list->scrollTo(m_list->currentIndex(), QAbstractItemView::PositionAtCenter);
    }
}

void LogPage::startNew()
{
    m_entry->focusLine();
}

QWidget *LogPage::firstFocus()
{
    return session().isReadOnly() ? m_stack->currentWidget() : m_entry->firstFocus();
}

Id<Component> LogPage::shownPart() const
{
    const auto entries = chosen();
    const WorkSession *shown =
        entries.empty() ? nullptr : session().records()->findLive(entries.front());
    return shown ? shown->component_id : Id<Component>{};
}

void LogPage::recordsChanged(const ChangeNotice &notice)
{
    m_model->apply(notice);
    m_detail->apply(notice);
    m_entry->recordsChanged();
    m_strip->recordsChanged();
    showChosen();
    updateWords();
}

void LogPage::answerChanged()
{
    m_entry->recordsChanged();
}

} // namespace lastrivet::ui
