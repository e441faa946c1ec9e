// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/VisitBoard.h"

#include "core/project/acts/Inspecting.h"
#include "ui/closings/ClosingWords.h"
#include "ui/closings/VisitPlanModel.h"
#include "ui/convert/QtText.h"
#include "ui/widgets/Density.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/RecordNames.h"
#include "ui/widgets/Section.h"
#include "ui/widgets/TallRows.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QTreeView>
#include <QVBoxLayout>

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr int mostVisits = 8;
constexpr int mostTableRows = 9;

} // namespace

VisitBoard::VisitBoard(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_plan(new VisitPlanModel(this))
    , m_table(new QTreeView(this))
    , m_nothing(new QLabel(tr("No closing waits for an inspector or adviser."), this))
    , m_sum(new QLabel(this))
    , m_ready(new QPushButton(tr("Pick those that need no more work"), this))
    , m_packet(new QPushButton(tr("Make packet"), this))
    , m_visit(new QPushButton(tr("Inspection visit"), this))
    , m_visits(new Section(session.theme(), tr("Visits"),
                           tr("No visit was asked for yet. Pick closings above to ask for one."),
                           this))
{
    build();
    buildTable();
    connectParts();
    refresh();
}

void VisitBoard::build()
{
    auto *back = flatButton(tr("← All closings"), this);
    connect(back, &QPushButton::clicked, this, &VisitBoard::backWanted);
    auto *title = new QLabel(tr("What one visit could cover"), this);
    title->setFont(m_session.theme().font(2));
    auto *about = new QLabel(tr("First what waits for somebody's word alone, then what costs the "
                                "least more work. Work that several share counts once."),
                             this);
    about->setWordWrap(true);
    about->setForegroundRole(QPalette::PlaceholderText);
    m_sum->setWordWrap(true);
    m_ready->setProperty("flat", true);
    setPrimary(*m_visit, true);
    auto *actions = new QHBoxLayout;
    actions->addWidget(m_ready);
    actions->addWidget(m_sum, 1);
    actions->addWidget(m_packet);
    actions->addWidget(m_visit);
    m_visits->setShortLength(mostVisits);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(24, 12, 24, 16);
    layout->setSpacing(8);
    layout->addWidget(back, 0, Qt::AlignLeft);
    layout->addWidget(title);
    layout->addWidget(about);
    layout->addWidget(m_nothing);
    layout->addWidget(m_table);
    layout->addLayout(actions);
    layout->addSpacing(12);
    layout->addWidget(m_visits);
    layout->addStretch(1);
}

void VisitBoard::buildTable()
{
    m_table->setModel(m_plan);
    m_table->setItemDelegate(new TallRows(this));
    m_table->setAccessibleName(tr("Closings that one visit could cover"));
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setRootIsDecorated(false);
    m_table->setUniformRowHeights(true);
    m_table->setAllColumnsShowFocus(true);
    m_table->header()->setStretchLastSection(false);
    m_table->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto *header = m_table->header();
    header->setSectionResizeMode(VisitPlanModel::Title, QHeaderView::Stretch);
    header->setSectionResizeMode(VisitPlanModel::State, QHeaderView::ResizeToContents);
    header->setSectionResizeMode(VisitPlanModel::Work, QHeaderView::ResizeToContents);
    header->setSectionResizeMode(VisitPlanModel::Open, QHeaderView::Fixed);
}

/// The last column has words as long as there are things in the way: the names of the closings, by
/// which they are picked, are not cut for them.
void VisitBoard::shareWidth()
{
    constexpr int shares = 5;
    const QHeaderView &header = *m_table->header();
    const int head = header.sectionSizeHint(VisitPlanModel::Open);
    const auto &table = static_cast<const QAbstractItemView &>(*m_table);
    const int wanted = table.sizeHintForColumn(VisitPlanModel::Open);
    m_table->setColumnWidth(VisitPlanModel::Open,
                            std::max(head, std::min(wanted, width() / shares)));
}

void VisitBoard::connectParts()
{
    connect(m_plan, &VisitPlanModel::pickedChanged, this, &VisitBoard::updateWords);
    connect(m_table, &QTreeView::activated, this, [this](const QModelIndex &index) {
        Q_EMIT closingWanted(m_plan->closing(index.row()));
    });
    connect(m_ready, &QPushButton::clicked, this, &VisitBoard::pickWithoutWork);
    connect(m_packet, &QPushButton::clicked, this,
            [this] { Q_EMIT packetWanted(m_plan->picked()); });
    connect(m_visit, &QPushButton::clicked, this, [this] { Q_EMIT visitWanted(m_plan->picked()); });
    connect(m_visits, &Section::chosen, this,
            [this](RecordRef record) { Q_EMIT inspectionWanted(Id<Inspection>{record.id}); });
}

void VisitBoard::refresh()
{
    const QModelIndex current = m_table->currentIndex();
    const auto chosen = current.isValid() ? m_plan->closing(current.row()) : Id<Closing>{};
    m_plan->show(m_session.records(), m_session.answer());
    const int rows = m_plan->rowCount();
    m_nothing->setVisible(rows == 0);
    m_table->setVisible(rows > 0);
    const int shown = std::min(rows, mostTableRows);
    m_table->setFixedHeight(m_table->header()->sizeHint().height() + shown * rowHeight() + 4);
    for (int row = 0; row < rows; ++row) {
        if (row == 0 || m_plan->closing(row) == chosen)
            m_table->setCurrentIndex(m_plan->index(row, VisitPlanModel::Title));
    }
    shareWidth();
    refreshVisits();
    updateWords();
}

void VisitBoard::pick(const IdSet<Closing> &closings)
{
    m_plan->pick(closings);
}

void VisitBoard::pickWithoutWork()
{
    IdSet<Closing> ready;
    for (const auto &row : m_session.answer()->visit_plan) {
        const auto *closing = m_session.answer()->closing(row.closing);
        if (closing->begun && closing->state != readiness::State::Hold)
            ready.push_back(row.closing);
    }
    std::ranges::sort(ready);
    m_plan->pick(ready);
}

QString VisitBoard::standing(const Inspection &visit) const
{
    const auto records = m_session.records();
    const Moment now = m_session.now();
    const QString who = personName(*records, visit.inspector_id);
    QStringList said;
    if (happened(visit.cancelled_on, now))
        said << tr("cancelled on %1").arg(dateText(*visit.cancelled_on));
    else if (happened(visit.held_on, now))
        said << tr("held on %1").arg(dateText(*visit.held_on));
    else if (visit.planned_for)
        said << tr("planned for %1").arg(dateText(*visit.planned_for));
    else if (visit.asked_on)
        said << tr("asked for on %1, no day is set yet").arg(dateText(*visit.asked_on));
    if (!who.isEmpty())
        said << who;
    const int open = int(acts::openFindings(*records, visit.id, now).size());
    if (open > 0)
        said << tr("%n findings open", nullptr, open);
    if (happened(visit.completed_on, now))
        said << tr("complete since %1").arg(dateText(*visit.completed_on));
    return said.join(QStringLiteral(", "));
}

void VisitBoard::refreshVisits()
{
    const auto records = m_session.records();
    std::vector<ListRow> rows;
    std::vector<ListRow> over;
    for (const Inspection &visit : records->inspections) {
        if (visit.withdrawn_on)
            continue;
        ListRow row{{RecordType::Inspection, visit.id.value()}, visitName(visit)};
        row.detail = standing(visit);
        if (!visit.hold_point_ids.empty())
            row.figure = tr("%n hold points", nullptr, int(visit.hold_point_ids.size()));
        const bool isOver = happened(visit.completed_on, m_session.now()) ||
                            happened(visit.cancelled_on, m_session.now());
        auto &list = isOver ? over : rows;
        list.insert(list.begin(), std::move(row));
    }
    std::ranges::move(over, std::back_inserter(rows));
    m_visits->setRows(std::move(rows));
}

void VisitBoard::updateWords()
{
    const int count = int(m_plan->picked().size());
    const Minutes work = m_plan->workForPicked();
    const QString picked = tr("%n picked", nullptr, count);
    m_sum->setText(count == 0          ? tr("Nothing is picked.")
                   : work.count() == 0 ? picked
                                       : tr("%1; %2 of work until then, what stands before them "
                                            "in the list included")
                                             .arg(picked, hoursText(work)));
    m_packet->setEnabled(count > 0);
    m_visit->setEnabled(count > 0 && !m_session.isReadOnly());
    m_ready->setEnabled(m_plan->rowCount() > 0);
}

void VisitBoard::keyPressEvent(QKeyEvent *event)
{
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (event->key() == Qt::Key_Escape)
        Q_EMIT backWanted();
    else if (isEnter && m_table->hasFocus() && m_table->currentIndex().isValid())
        Q_EMIT closingWanted(m_plan->closing(m_table->currentIndex().row()));
    else
        QWidget::keyPressEvent(event);
}

void VisitBoard::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    shareWidth();
}

} // namespace lastrivet::ui
