// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/hours/HoursPage.h"

#include "ui/convert/UsualFolders.h"
#include "ui/hours/ChartPane.h"
#include "ui/hours/HoursPaper.h"
#include "ui/hours/HoursTableModel.h"
#include "ui/hours/PersonPanel.h"
#include "ui/hours/WishBar.h"
#include "ui/journal/ScreenWording.h"
#include "ui/prints/PrintTask.h"
#include "ui/widgets/Flow.h"
#include "ui/widgets/NewFileName.h"

#include <QButtonGroup>
#include <QDir>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QItemSelectionModel>
#include <QLabel>
#include <QPushButton>
#include <QResizeEvent>
#include <QScrollBar>
#include <QShortcut>
#include <QSplitter>
#include <QTreeView>
#include <QVBoxLayout>

#include <algorithm>

namespace lastrivet::ui {

namespace {

/// Narrower than this the table stands below the chart.
constexpr int besideFrom = 760;
/// Narrower than this nobody tells one name from another.
constexpr int leastName = 160;

} // namespace

HoursPage::HoursPage(Session &session, QWidget *parent)
    : Page(session, parent)
    , m_calculation(new HoursCalculation(session, HoursCalculation::Extent::Everything, this))
    , m_buttons(new QButtonGroup(this))
    , m_choices(buildChoices())
    , m_sentences(new QLabel(this))
    , m_wishes(new WishBar(session, this))
    , m_halves(new QSplitter(this))
    , m_chart(new ChartPane(theme(), this))
    , m_model(new HoursTableModel(this))
    , m_table(new QTreeView(this))
    , m_person(new PersonPanel(session, this))
    , m_newPerson(new QPushButton(tr("New person"), this))
    , m_nothing(new QLabel(this))
    , m_legend(new QLabel(tr("In 10 futures of 100 it is no more than P10, in 50 no more than P50, "
                             "in 80 no more than P80, in 90 no more than P90."),
                          this))
    , m_print(new QPushButton(tr("Print…"), this))
    , m_csv(new QPushButton(tr("CSV…"), this))
{
    m_chooseFile = [this](const QString &suggested, const QString &kinds) {
        return askForNewFile(this, tr("Write the hours"), suggested, kinds);
    };
    build();
    connectParts();
    m_calculation->refresh();
    fill();
}

void HoursPage::build()
{
    for (QLabel *label : {m_sentences, m_nothing, m_legend}) {
        label->setWordWrap(true);
        label->setTextFormat(Qt::PlainText);
    }
    m_legend->setForegroundRole(QPalette::PlaceholderText);
    buildTable();
    auto *right = new QWidget(this);
    auto *column = new QVBoxLayout(right);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_table, 1);
    column->addWidget(m_nothing);
    column->addWidget(m_person);
    m_halves->setChildrenCollapsible(false);
    m_halves->addWidget(m_chart);
    m_halves->addWidget(right);
    m_halves->setStretchFactor(0, 3);
    m_halves->setStretchFactor(1, 5);
    m_halves->setSizes({400, 680});
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 12, 16, 8);
    layout->setSpacing(8);
    layout->addWidget(m_choices);
    layout->addWidget(m_sentences);
    layout->addWidget(m_wishes);
    layout->addWidget(m_halves, 1);
    layout->addWidget(buildFoot());
}

/// Made before all that they choose among, so that the Tab key comes to them first.
QWidget *HoursPage::buildChoices()
{
    auto *bar = new QWidget(this);
    auto *flow = new Flow(bar);
    for (int i = 0; i < hoursViewCount; ++i) {
        auto *button = new QPushButton(nameOf(HoursView(i)), bar);
        button->setCheckable(true);
        m_buttons->addButton(button, i);
        flow->addWidget(button);
    }
    m_buttons->button(int(m_view))->setChecked(true);
    return bar;
}

QWidget *HoursPage::buildFoot()
{
    auto *foot = new QWidget(this);
    auto *line = new QHBoxLayout(foot);
    line->setContentsMargins(0, 0, 0, 0);
    m_print->setToolTip(tr("Print chart and table (Ctrl+P)"));
    m_csv->setAccessibleName(tr("Write the figures as CSV"));
    line->addWidget(m_legend, 1);
    line->addStretch(0);
    line->addWidget(m_newPerson);
    line->addWidget(m_print);
    line->addWidget(m_csv);
    return foot;
}

void HoursPage::buildTable()
{
    m_table->setModel(m_model);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setUniformRowHeights(true);
    m_table->setAllColumnsShowFocus(true);
    m_table->setAlternatingRowColors(false);
    m_table->header()->setStretchLastSection(false);
    m_table->setMinimumWidth(300);
    m_table->viewport()->installEventFilter(this);
}

void HoursPage::connectParts()
{
    connect(m_buttons, &QButtonGroup::idClicked, this, [this](int id) { choose(HoursView(id)); });
    connect(m_calculation, &HoursCalculation::changed, this, &HoursPage::fill);
    connect(m_halves, &QSplitter::splitterMoved, this, [this] { m_isRoomChosen = true; });
    connect(m_wishes, &WishBar::changed, m_calculation, &HoursCalculation::refresh);
    connect(m_print, &QPushButton::clicked, this, &HoursPage::print);
    connect(m_newPerson, &QPushButton::clicked, this, &HoursPage::startNew);
    connect(m_person, &PersonPanel::made, this, &HoursPage::showRecord);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentChanged, this,
            &HoursPage::showChosen);
    connect(m_csv, &QPushButton::clicked, this,
            [this] { ask(QStringLiteral(".csv"), tr("CSV for a spreadsheet (*.csv)")); });
    connect(m_table, &QTreeView::activated, this, [this](const QModelIndex &index) {
        const auto &record = m_model->row(index).record;
        if (record && record->type != RecordType::Person)
            session().goTo(*record);
    });
    auto *shortcut = new QShortcut(QKeySequence::Print, this);
    shortcut->setContext(Qt::WidgetWithChildrenShortcut);
    shortcut->setWhatsThis(tr("Print chart and table"));
    connect(shortcut, &QShortcut::activated, this, &HoursPage::print);
}

void HoursPage::choose(HoursView view)
{
    m_view = view;
    m_buttons->button(int(view))->setChecked(true);
    m_calculation->wantLookBack(view == HoursView::LookBack);
    fill();
}

void HoursPage::fill()
{
    const HoursAnswer &answer = m_calculation->answer();
    const bool isReady = isThere(m_view, answer);
    const auto words = screenWording();
    m_sentences->setText(isReady ? sentencesOf(m_view, answer, words).join(QLatin1Char('\n'))
                                 : tr("This is being worked out."));
    m_chart->show(isReady ? chartOf(m_view, answer, words) : print::ChartPlan());
    m_wishes->setVisible(m_view == HoursView::Ahead);
    m_newPerson->setVisible(m_view == HoursView::People && !session().isReadOnly());
    m_legend->setVisible(m_view == HoursView::Ahead || m_view == HoursView::LookBack);
    m_table->setAccessibleName(nameOf(m_view));
    m_print->setEnabled(isReady);
    m_csv->setEnabled(isReady);
    fillTable();
}

void HoursPage::fillTable()
{
    const HoursAnswer &answer = m_calculation->answer();
    const bool isReady = isThere(m_view, answer);
    keepPlace();
    m_model->show(isReady ? tableOf(m_view, answer, screenWording()) : print::FigureTable());
    const bool isEmpty = m_model->rowCount() == 0;
    m_table->setVisible(!isEmpty);
    m_nothing->setVisible(isEmpty && isReady);
    m_nothing->setText(m_model->table().when_empty);
    const bool isTree = m_view == HoursView::Parts || m_view == HoursView::Steps;
    m_table->setRootIsDecorated(isTree || m_view == HoursView::Ahead);
    unfold(isTree);
    fitColumns();
    if (isReady && m_roomGiven != m_view) {
        m_isRoomChosen = false;
        giveRoom();
    }
    // What is not there yet stays wanted.
    const RecordRef kept = m_wanted;
    const QModelIndex wanted = m_model->indexOf(kept);
    m_table->setCurrentIndex(wanted.isValid() ? wanted : m_model->index(0, 0));
    if (m_scrolled && m_filled == m_view)
        m_table->verticalScrollBar()->setValue(*m_scrolled);
    if (!isEmpty)
        m_filled = m_view;
    else if (m_filled != m_view)
        m_filled.reset();
    showChosen();
    m_wanted = kept;
}

/// Before other figures come into the same table.
void HoursPage::keepPlace()
{
    if (m_filled != m_view || m_model->rowCount() == 0)
        return;
    m_unfolded.keep(*m_table);
    const QModelIndex current = m_table->currentIndex();
    const auto record = current.isValid() ? m_model->row(current).record : std::nullopt;
    const bool isNothingElseWanted =
        record ? *record == m_wanted : !m_model->indexOf(m_wanted).isValid();
    m_scrolled.reset();
    if (isNothingElseWanted)
        m_scrolled = m_table->verticalScrollBar()->value();
}

void HoursPage::unfold(bool isTree)
{
    if (m_filled == m_view)
        m_unfolded.restore(*m_table);
    else if (isTree)
        m_table->expandToDepth(0);
}

void HoursPage::showChosen()
{
    const QModelIndex current = m_table->currentIndex();
    const auto record = current.isValid() ? m_model->row(current).record : std::nullopt;
    const bool isPerson = record && record->type == RecordType::Person;
    if (record)
        m_wanted = *record;
    m_person->show(isPerson ? Id<Person>{record->id} : Id<Person>{});
}

void HoursPage::startNew()
{
    choose(HoursView::People);
    m_person->startNew();
}

void HoursPage::fitColumns()
{
    auto *header = m_table->header();
    if (m_model->columnCount() == 0)
        return;
    int figures = 0;
    for (int column = 1; column < m_model->columnCount(); ++column) {
        header->setSectionResizeMode(column, QHeaderView::ResizeToContents);
        // The header itself looks at new contents only when events are worked off.
        m_table->resizeColumnToContents(column);
        figures += header->sectionSize(column);
    }
    // Names get what the figures leave; what has no room then can be scrolled to.
    const int least = leastForNames();
    const bool isRoom = m_table->viewport()->width() - figures >= least;
    header->setSectionResizeMode(0, isRoom ? QHeaderView::Stretch : QHeaderView::Interactive);
    if (!isRoom)
        header->resizeSection(0, least);
}

/// The table gets what its columns ask for as long as the chart can still be read; from then on
/// whoever reads it decides.
void HoursPage::giveRoom()
{
    constexpr int leastChart = 320;
    const int whole = m_halves->width() - m_halves->handleWidth();
    if (!isVisible() || m_model->columnCount() == 0 || m_halves->orientation() != Qt::Horizontal)
        return;
    m_roomGiven = m_view;
    int wanted = leastForNames() + m_table->verticalScrollBar()->sizeHint().width() +
                 2 * m_table->frameWidth();
    for (int column = 1; column < m_model->columnCount(); ++column)
        wanted += m_table->header()->sectionSize(column);
    const int usual = whole * 5 / 8;
    const int table = std::clamp(wanted, usual, std::max(usual, whole - leastChart));
    m_halves->setSizes({whole - table, table});
}

/// Weeks and days ask for less than the names of parts.
int HoursPage::leastForNames() const
{
    constexpr int besideText = 16;
    if (m_table->rootIsDecorated())
        return leastName;
    int widest = m_table->header()->sectionSizeHint(0);
    for (int row = 0; row < m_model->rowCount(); ++row) {
        const QString text = m_model->index(row, 0).data().toString();
        widest = std::max(widest, m_table->fontMetrics().horizontalAdvance(text) + besideText);
    }
    return std::min(leastName, widest);
}

bool HoursPage::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() == QEvent::Resize && watched == m_table->viewport())
        fitColumns();
    return Page::eventFilter(watched, event);
}

void HoursPage::showRecord(RecordRef record)
{
    m_wanted = record;
    if (record.type == RecordType::Person && record.id > 0)
        choose(HoursView::People);
}

QWidget *HoursPage::firstFocus()
{
    return m_model->rowCount() > 0 ? static_cast<QWidget *>(m_table)
                                   : m_buttons->button(int(m_view));
}

void HoursPage::recordsChanged(const ChangeNotice &notice)
{
    m_wishes->refresh();
    m_person->apply(notice);
    m_calculation->refresh();
}

void HoursPage::answerChanged()
{
    // Another day may have begun while the page was shown.
    if (isVisible())
        m_calculation->refresh();
}

void HoursPage::themeChanged()
{
    m_chart->redraw();
}

void HoursPage::showEvent(QShowEvent *event)
{
    // Another day may have begun.
    m_calculation->refresh();
    Page::showEvent(event);
    fitToWidth();
}

void HoursPage::resizeEvent(QResizeEvent *event)
{
    m_halves->setOrientation(event->size().width() < besideFrom ? Qt::Vertical : Qt::Horizontal);
    Page::resizeEvent(event);
    fitToWidth();
}

/// Only now it is known how wide the page is.
void HoursPage::fitToWidth()
{
    if (m_isRoomChosen || m_model->rowCount() == 0)
        return;
    fitColumns();
    giveRoom();
}

void HoursPage::ask(const QString &ending, const QString &kinds)
{
    const HoursAnswer &answer = m_calculation->answer();
    if (!isThere(m_view, answer))
        return;
    const QString name = printFileName(tr("Hours %1", "by what").arg(nameOf(m_view)),
                                       session().today().text(), ending);
    const QString file = m_chooseFile(QDir(documentsFolder()).filePath(name), kinds);
    if (file.isEmpty())
        return;
    if (ending == QStringLiteral(".csv"))
        exportHours(session(), m_view, answer, file);
    else
        printHours(session(), m_view, answer, file);
}

void HoursPage::print()
{
    ask(QStringLiteral(".pdf"), tr("PDF (*.pdf)"));
}

} // namespace lastrivet::ui
