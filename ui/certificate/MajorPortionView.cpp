// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/certificate/MajorPortionView.h"

#include "core/base/Error.h"
#include "core/credit/CreditSentences.h"
#include "core/project/acts/CreditActs.h"
#include "ui/certificate/CreditModel.h"
#include "ui/certificate/TaskPanel.h"
#include "ui/certificate/TenthsEditor.h"
#include "ui/convert/QtText.h"
#include "ui/prints/AskToPrint.h"
#include "ui/shell/Session.h"
#include "ui/widgets/EmptyPlace.h"
#include "ui/widgets/Flow.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/PictureLoader.h"
#include "ui/widgets/PlainTable.h"

#include <QComboBox>
#include <QCoreApplication>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace lastrivet::ui {

namespace {

/// Narrower than this nobody tells one task from another.
constexpr int leastTask = 190;
/// The section and what shows it stand in the panel of the chosen task, too.
constexpr int leastOther = 72;
constexpr int widestOther = 168;
constexpr int leastFigure = 28;

std::string inLanguage(const std::string &text)
{
    return toStd(QCoreApplication::translate("Starter", text.c_str()));
}

/// The rows in the language of the records.
credit::SuggestedTasks inLanguage(credit::SuggestedTasks suggested)
{
    for (auto &section : suggested.sections) {
        section.title = inLanguage(section.title);
        for (std::string &task : section.tasks)
            task = inLanguage(task);
    }
    return suggested;
}

} // namespace

MajorPortionView::MajorPortionView(Session &session, QWidget *parent)
    : CertificatePlace(parent)
    , m_session(session)
    , m_loader(new PictureLoader(session, this))
    , m_model(new CreditModel(session, this))
    , m_verdict(new QLabel(this))
    , m_gaps(flatButton({}, this))
    , m_rules(new QLabel(this))
    , m_table(new PlainTable(tr("Tasks of the major portion"), this))
    , m_tableOrEmpty(new QStackedWidget(this))
    , m_class(new QComboBox(this))
    , m_suggest(new QPushButton(tr("Add the usual tasks"), this))
    , m_own(new QLineEdit(this))
    , m_draft(session, "own_task", *m_own)
    , m_add(new QPushButton(tr("Add a task"), this))
    , m_panel(new TaskPanel(session, *m_loader, this))
    , m_panelArea(new QScrollArea(this))
{
    build();
    m_draft.takeUp();
    m_table->selectRow(0);
    showCurrent();
    updateWords();
}

void MajorPortionView::build()
{
    m_panelArea->setWidgetResizable(true);
    m_panelArea->setWidget(m_panel);
    m_panelArea->setFocusPolicy(Qt::NoFocus);
    auto *halves = new QSplitter(this);
    halves->setChildrenCollapsible(false);
    halves->addWidget(buildTable());
    halves->addWidget(m_panelArea);
    halves->setStretchFactor(0, 5);
    halves->setStretchFactor(1, 3);
    halves->setSizes({748, 352});
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(halves);
    connect(m_panel, &TaskPanel::settled, this, &MajorPortionView::goOn);
}

QWidget *MajorPortionView::buildTable()
{
    m_verdict->setFont(m_session.theme().font(1));
    for (QLabel *label : {m_verdict, m_rules})
        label->setWordWrap(true);
    m_rules->setForegroundRole(QPalette::PlaceholderText);
    m_table->setModel(m_model);
    m_table->setWideColumn(CreditModel::Task, leastTask);
    m_table->setYielding({CreditModel::Section, CreditModel::Evidence}, leastOther);
    // Columns of one figure need no more than it.
    m_table->horizontalHeader()->setMinimumSectionSize(leastFigure);
    auto *empty = new EmptyPlace(
        tr("Here stands, task by task, what the maker, paid help and the builder did, in tenths. "
           "Begin with the usual tasks of the aircraft's class, then bring them into line with the "
           "form of your authority."),
        this);
    m_tableOrEmpty->addWidget(m_table);
    m_tableOrEmpty->addWidget(empty);
    auto *left = new QWidget(this);
    auto *layout = new QVBoxLayout(left);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_verdict);
    layout->addWidget(m_gaps, 0, Qt::AlignLeft);
    layout->addWidget(m_rules);
    layout->addWidget(m_tableOrEmpty, 1);
    layout->addWidget(buildFoot());
    m_gaps->setToolTip(tr("Go to the next of them"));
    connect(m_gaps, &QPushButton::clicked, this, &MajorPortionView::goToNextGap);
    connect(m_table, &PlainTable::rowChosen, this, [this] { showCurrent(); });
    connect(m_table, &PlainTable::activated, this, [this] { m_panel->tenths().startTyping(); });
    return left;
}

QWidget *MajorPortionView::buildFoot()
{
    auto *foot = new QWidget(this);
    offerClasses();
    constexpr int shortest = 18;
    m_class->setAccessibleName(tr("Class of aircraft"));
    makeNarrow(*m_class, shortest);
    m_own->setMinimumWidth(m_own->fontMetrics().averageCharWidth() * 18);
    m_suggest->setToolTip(tr("Common practice and no authority's form; rows that are there stay."));
    m_own->setPlaceholderText(tr("Section: task"));
    m_own->setAccessibleName(tr("A task that the form does not name"));
    auto *print = new QPushButton(tr("Print…"), foot);
    print->setAccessibleName(tr("Print the major portion with its evidence"));
    auto *flow = new Flow(foot);
    for (QWidget *act : std::initializer_list<QWidget *>{m_own, m_add, m_class, m_suggest, print})
        flow->addWidget(act);
    setTabOrder(m_own, m_add);
    setTabOrder(m_add, m_class);
    setTabOrder(m_class, m_suggest);
    setTabOrder(m_suggest, print);
    connect(print, &QPushButton::clicked, this,
            [this] { askToPrint(*this, m_session, PrintKind::MajorPortion); });
    connect(m_suggest, &QPushButton::clicked, this, &MajorPortionView::addSuggested);
    connect(m_add, &QPushButton::clicked, this, &MajorPortionView::addOwn);
    connect(m_own, &QLineEdit::returnPressed, this, &MajorPortionView::addOwn);
    return foot;
}

void MajorPortionView::offerClasses()
{
    try {
        for (const auto &suggested : credit::suggestedTasks())
            m_class->addItem(toQt(inLanguage(suggested.title)));
    } catch (const Fault &fault) {
        m_session.complain(fault);
    }
}

void MajorPortionView::addSuggested()
{
    const int chosen = m_class->currentIndex();
    if (chosen < 0)
        return;
    const auto suggested = inLanguage(credit::suggestedTasks()[std::size_t(chosen)]);
    const auto count = acts::countMissing(*m_session.records(), suggested);
    if (count == 0) {
        m_session.say(tr("All usual tasks are there already."));
        return;
    }
    m_session.change(tr("%n usual tasks added, each for the maker until you enter who did it",
                        nullptr, int(count)),
                     [&](Edit &edit) { acts::addTasks(edit, suggested); });
}

void MajorPortionView::addOwn()
{
    const QString typed = m_own->text().trimmed();
    const auto colon = typed.indexOf(QLatin1Char(':'));
    const QString task = typed.mid(colon + 1).trimmed();
    if (task.isEmpty()) {
        m_own->setFocus();
        return;
    }
    Id<CreditTask> made;
    if (!m_session.change(tr("Task “%1” added").arg(task), [&](Edit &edit) {
            made =
                acts::addTask(edit, toStd(typed.left(std::max<qsizetype>(0, colon))), toStd(task));
        }))
        return;
    // Undo is about the task from here on, not about its words.
    m_own->setText({});
    m_draft.keep();
    showRecord({RecordType::CreditTask, made.value()});
    m_panel->tenths().startTyping();
}

void MajorPortionView::showCurrent()
{
    const int row = m_table->currentRow();
    const auto task = m_model->taskAt(row);
    m_panelArea->setVisible(bool(task));
    if (task)
        m_panel->show(task, m_model->evidenceAt(row));
}

/// With the keyboard: from one task to the next, tenths by tenths.
void MajorPortionView::goOn()
{
    const int next = m_table->currentRow() + 1;
    if (next >= m_model->rowCount()) {
        m_table->setFocus();
        return;
    }
    m_table->selectRow(next);
    m_panel->tenths().startTyping();
}

void MajorPortionView::goToNextGap()
{
    const int row = m_model->nextGap(m_table->currentRow());
    if (row < 0)
        return;
    m_table->selectRow(row);
    m_table->scrollTo(m_model->index(row, 0));
}

QString MajorPortionView::verdict() const
{
    return m_verdict->text();
}

void MajorPortionView::updateWords()
{
    const auto account = credit::account(*m_session.records(), m_session.project().profile());
    QStringList sentences;
    for (const Message &sentence : credit::verdict(account))
        sentences << inWords(sentence);
    m_verdict->setText(sentences.join(QLatin1Char(' ')));
    const int gaps = int(account.evidence_gaps.size());
    m_gaps->setText(tr("%n claimed tasks have no picture.", nullptr, gaps));
    m_gaps->setVisible(gaps > 0);
    m_rules->setText(tr("Tasks count, hours do not. Rules change: check the current form with your "
                        "authority."));
    const bool isAny = m_model->rowCount() > 0;
    m_tableOrEmpty->setCurrentIndex(isAny ? 0 : 1);
    for (const int column : {CreditModel::BuilderTick, CreditModel::MakerTick})
        m_table->setColumnHidden(column, !account.two_columns);
    m_table->fitColumns(widestOther);
    for (QWidget *widget : std::initializer_list<QWidget *>{m_own, m_add, m_class, m_suggest})
        widget->setEnabled(!m_session.isReadOnly());
}

bool MajorPortionView::showRecord(RecordRef record)
{
    if (record.type != RecordType::CreditTask)
        return false;
    if (const int row = m_model->rowOf(Id<CreditTask>{record.id}); row >= 0) {
        m_table->selectRow(row);
        m_table->scrollTo(m_model->index(row, 0));
    }
    return true;
}

void MajorPortionView::apply(const ChangeNotice &notice)
{
    const auto shown = m_panel->shown();
    m_model->refresh();
    if (m_table->currentRow() < 0)
        m_table->selectRow(std::max(0, m_model->rowOf(shown)));
    m_panel->apply(notice);
    showCurrent();
    updateWords();
}

void MajorPortionView::hideEvent(QHideEvent *event)
{
    m_draft.keep();
    CertificatePlace::hideEvent(event);
}

void MajorPortionView::startNew()
{
    m_own->setFocus();
}

QWidget *MajorPortionView::firstFocus()
{
    return m_model->rowCount() > 0 ? static_cast<QWidget *>(m_table) : m_suggest;
}

} // namespace lastrivet::ui
