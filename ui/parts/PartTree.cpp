// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/PartTree.h"

#include "ui/parts/PartFilter.h"
#include "ui/parts/PartTreeModel.h"
#include "ui/parts/SteadyTree.h"
#include "ui/shell/Session.h"
#include "ui/widgets/EmptyPlace.h"
#include "ui/widgets/FilterLine.h"
#include "ui/widgets/Marks.h"
#include "ui/widgets/OneRow.h"
#include "ui/widgets/TallRows.h"

#include <QEvent>
#include <QFontMetrics>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QItemSelectionModel>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollBar>
#include <QShortcut>
#include <QStackedWidget>
#include <QTreeView>
#include <QVBoxLayout>

#include <algorithm>
#include <iterator>
#include <tuple>
#include <utility>

namespace lastrivet::ui {

namespace {

/// Wider where a language has a longer word for it.
struct Width {
    int column;
    int pixels;
};
constexpr Width widths[] = {
    {PartTreeModel::StateColumn, 112},
    {PartTreeModel::HoursColumn, 74},
    {PartTreeModel::SquawksColumn, 70},
    {PartTreeModel::PhotosColumn, 58},
};
/// The least width at which names of parts can be told from each other.
constexpr int leastName = 170;
/// What of it deep in the tree is worth scrolling for.
constexpr int leastDeepName = 90;

/// How many parts hold it; itself counts as one.
int levelOf(const QModelIndex &index)
{
    int level = 0;
    for (QModelIndex at = index; at.isValid(); at = at.parent())
        ++level;
    return level;
}

/// With the shape before its words.
int widestState(const QFontMetrics &metrics)
{
    using enum readiness::State;
    constexpr int besideWords = 36;
    int widest = 0;
    for (const auto state : {Hold, ReadyToInspect, ReadyToSign, Clear, Closed, ClosedEarly})
        widest = std::max(widest, metrics.horizontalAdvance(shortStateWords(state)));
    return widest + besideWords;
}

} // namespace

PartTree::PartTree(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_model(new PartTreeModel(session, this))
    , m_filtered(new PartFilter(this))
    , m_filter(new FilterLine(this))
    , m_fitting(new QLabel(this))
    , m_whole(new QPushButton(tr("The whole aircraft"), this))
    , m_view(new SteadyTree([this] { showName(); }, this))
    , m_empty(new EmptyPlace({}, this))
    , m_stack(new QStackedWidget(this))
{
    build();
    buildView();
    connectView();
    m_view->expandToDepth(0);
    chooseOneRow(*m_view, m_filtered->index(0, 0));
    updateWords();
}

void PartTree::build()
{
    m_filter->setPlaceholderText(tr("Type to filter the parts"));
    m_filter->setAccessibleName(tr("Filter the parts"));
    m_whole->setCheckable(true);
    m_whole->setToolTip(tr("Alt+Home: what is on record of all parts, and of none"));
    m_empty->setSentence(tr("The parts of the aeroplane will stand here as a tree, each with its "
                            "state, hours, squawks and photos."));
    m_empty->setAction(tr("Add the first part"));
    m_stack->addWidget(m_view);
    m_stack->addWidget(m_empty);
    auto *top = new QHBoxLayout;
    top->addWidget(m_filter, 1);
    top->addWidget(m_fitting);
    top->addWidget(m_whole);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(top);
    layout->addWidget(m_stack, 1);
}

void PartTree::buildView()
{
    m_filtered->setSourceModel(m_model);
    m_view->setModel(m_filtered);
    m_view->setAccessibleName(tr("Parts"));
    m_view->setItemDelegate(new TallRows(this));
    m_view->setUniformRowHeights(true);
    m_view->setIndentation(16);
    m_view->setAllColumnsShowFocus(true);
    m_view->setSelectionMode(QAbstractItemView::ExtendedSelection);
    m_view->setDragDropMode(QAbstractItemView::InternalMove);
    m_view->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_view->header()->setStretchLastSection(false);
    m_view->header()->setSectionResizeMode(PartTreeModel::PartColumn, QHeaderView::Stretch);
    m_view->header()->ensurePolished();
    static_assert(std::size(widths) == std::tuple_size_v<decltype(m_widths)>);
    for (std::size_t i = 0; i < m_widths.size(); ++i) {
        const int column = widths[i].column;
        m_widths[i] = std::max(widths[i].pixels, m_view->header()->sectionSizeHint(column));
        if (column == PartTreeModel::StateColumn)
            m_widths[i] = std::max(m_widths[i], widestState(m_view->fontMetrics()));
        m_view->header()->setSectionResizeMode(column, QHeaderView::Interactive);
        m_view->setColumnWidth(column, m_widths[i]);
    }
    m_view->viewport()->installEventFilter(this);
    connect(m_view->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &PartTree::fitColumns);
    connect(m_view->horizontalScrollBar(), &QScrollBar::rangeChanged, this, &PartTree::showName);
}

/// Those of a part include what is below it, so no number is longer than those at the top.
void PartTree::widenHours()
{
    constexpr int column = PartTreeModel::HoursColumn;
    const auto *place = std::ranges::find(widths, column, &Width::column);
    int &width = m_widths[std::size_t(std::distance(std::begin(widths), place))];
    int widest = width;
    for (int row = 0; row < m_filtered->rowCount(); ++row)
        widest = std::max(widest, m_view->sizeHintForIndex(m_filtered->index(row, column)).width());
    if (widest > width)
        m_view->setColumnWidth(column, width = widest);
}

void PartTree::fitColumns()
{
    widenHours();
    int name = m_view->viewport()->width();
    for (std::size_t i = 0; i < m_widths.size(); ++i)
        name -= isUsed(widths[i].column) ? m_widths[i] : 0;
    // State and hours always stay.
    for (std::size_t i = m_widths.size(); i-- > 2;) {
        const bool isEmpty = !isUsed(widths[i].column);
        const bool isHidden = isEmpty || name < leastName;
        name += isHidden && !isEmpty ? m_widths[i] : 0;
        m_view->setColumnHidden(widths[i].column, isHidden);
    }
    // Deep in the tree the name begins far to the right; then what has no room can be scrolled to.
    const int askedBefore = std::exchange(
        m_askedForName, levelOf(m_view->currentIndex()) * m_view->indentation() + leastDeepName);
    const bool isRoom = name >= m_askedForName;
    auto *header = m_view->header();
    header->setSectionResizeMode(PartTreeModel::PartColumn,
                                 isRoom ? QHeaderView::Stretch : QHeaderView::Interactive);
    if (!isRoom)
        header->resizeSection(PartTreeModel::PartColumn, m_askedForName);
    if (m_askedForName != askedBefore)
        showName();
}

void PartTree::showName()
{
    m_view->horizontalScrollBar()->setValue(
        std::max(0, m_askedForName - m_view->viewport()->width()));
}

/// The numbers of a part include what is below it, so those at the top stand for all.
bool PartTree::isUsed(int column) const
{
    if (column != PartTreeModel::SquawksColumn && column != PartTreeModel::PhotosColumn)
        return true;
    for (int row = 0; row < m_model->rowCount(); ++row) {
        const PartFigures top =
            m_model->figures(m_model->partAt(m_model->index(row, PartTreeModel::PartColumn)));
        if ((column == PartTreeModel::SquawksColumn ? top.open_squawks : top.photos) > 0)
            return true;
    }
    return false;
}

bool PartTree::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() == QEvent::Resize && watched == m_view->viewport())
        fitColumns();
    return QWidget::eventFilter(watched, event);
}

void PartTree::connectView()
{
    connect(m_filter, &QLineEdit::textChanged, this, &PartTree::filter);
    connect(m_filter, &QLineEdit::returnPressed, this, [this] { m_view->setFocus(); });
    connect(m_whole, &QPushButton::clicked, this, &PartTree::chooseWhole);
    connect(m_view, &QTreeView::activated, this, &PartTree::openWanted);
    connect(m_empty, &EmptyPlace::acted, this, &PartTree::firstWanted);
    connect(m_view->selectionModel(), &QItemSelectionModel::selectionChanged, this, [this] {
        if (m_isFollowing)
            return;
        m_whole->setChecked(!current());
        Q_EMIT chosenChanged();
    });
    auto *whole = new QShortcut(QKeySequence(Qt::ALT | Qt::Key_Home), this);
    whole->setContext(Qt::WidgetWithChildrenShortcut);
    whole->setWhatsThis(tr("The whole aircraft"));
    connect(whole, &QShortcut::activated, this, &PartTree::chooseWhole);
    auto *find = new QShortcut(QKeySequence(QStringLiteral("/")), m_view);
    find->setContext(Qt::WidgetShortcut);
    find->setWhatsThis(tr("Look for words in the tree"));
    connect(find, &QShortcut::activated, this, &PartTree::focusFilter);
}

QWidget *PartTree::firstFocus() const
{
    return m_stack->currentWidget() == m_empty ? static_cast<QWidget *>(m_empty) : m_view;
}

Id<Component> PartTree::current() const
{
    if (!m_view->selectionModel()->hasSelection())
        return {};
    return m_model->partAt(m_filtered->mapToSource(m_view->currentIndex()));
}

std::vector<Id<Component>> PartTree::chosen() const
{
    std::vector<Id<Component>> parts;
    for (const QModelIndex &index : m_view->selectionModel()->selectedRows())
        parts.push_back(m_model->partAt(m_filtered->mapToSource(index)));
    return parts;
}

/// Scrolling to it does so too, but not while something is dragged.
void PartTree::openAbove(const QModelIndex &index)
{
    for (QModelIndex above = index.parent(); above.isValid(); above = above.parent())
        m_view->expand(above);
}

void PartTree::bring(Id<Component> part)
{
    const QModelIndex index = m_filtered->mapFromSource(m_model->indexOf(part));
    if (!index.isValid())
        return;
    openAbove(index);
    chooseOneRow(*m_view, index);
    m_view->scrollTo(index);
}

void PartTree::choose(Id<Component> part)
{
    if (!m_filtered->mapFromSource(m_model->indexOf(part)).isValid())
        m_filter->clear();
    bring(part);
}

void PartTree::choose(const std::vector<Id<Component>> &parts)
{
    const auto indexOf = [this](Id<Component> part) {
        return m_filtered->mapFromSource(m_model->indexOf(part));
    };
    if (!std::ranges::all_of(parts, [&](Id<Component> part) { return indexOf(part).isValid(); }))
        m_filter->clear();
    QItemSelection selection;
    for (const Id<Component> part : parts) {
        if (const QModelIndex index = indexOf(part); index.isValid())
            selection.select(index, index);
    }
    if (selection.isEmpty())
        return;
    const QModelIndex first = selection.indexes().front();
    m_view->selectionModel()->setCurrentIndex(first, QItemSelectionModel::NoUpdate);
    m_view->selectionModel()->select(selection, QItemSelectionModel::ClearAndSelect |
                                                    QItemSelectionModel::Rows);
    m_view->scrollTo(first);
}

void PartTree::chooseWhole()
{
    m_before = {};
    m_view->clearSelection();
    m_whole->setChecked(true);
    Q_EMIT chosenChanged();
}

PartFigures PartTree::figures(Id<Component> part) const
{
    return m_model->figures(part);
}

void PartTree::focusFilter()
{
    m_filter->setFocus();
    m_filter->selectAll();
}

void PartTree::filter()
{
    // A filter that no part passes selects none; with the next filter the former one is back.
    if (current())
        m_before = current();
    const Id<Component> kept = m_before;
    m_filtered->setWords(m_filter->text(), *m_session.records());
    if (m_filtered->isFiltering())
        m_view->expandAll();
    else
        m_view->expandToDepth(0);
    bring(kept);
    if (!current())
        chooseOneRow(*m_view, m_filtered->index(0, 0));
    updateWords();
}

/// The parts to select in place of one that is removed: the next, the one before, or its parent.
std::vector<Id<Component>> PartTree::heirs() const
{
    const QModelIndex index = m_view->currentIndex();
    std::vector<Id<Component>> parts;
    for (const QModelIndex &other : {index.siblingAtRow(index.row() + 1),
                                     index.siblingAtRow(index.row() - 1), index.parent()}) {
        if (other.isValid())
            parts.push_back(m_model->partAt(m_filtered->mapToSource(other)));
    }
    return parts;
}

void PartTree::apply(const ChangeNotice &notice)
{
    const Id<Component> kept = current();
    const auto parts = chosen();
    const auto next = heirs();
    m_isFollowing = true;
    m_filtered->look(*notice.after);
    m_model->apply(notice);
    m_filtered->refresh();
    const bool isOther = std::ranges::any_of(notice.touched, [](const RecordRef &record) {
        return record.type == RecordType::Component;
    });
    // A move closes what was open; what is chosen stays chosen and in sight.
    if (isOther && parts.size() <= 1 && kept)
        bring(kept);
    if (isOther && parts.size() > 1) {
        for (const Id<Component> part : parts)
            openAbove(m_filtered->mapFromSource(m_model->indexOf(part)));
    }
    // So that several parts can be removed one after the other.
    const auto isLive = [&](Id<Component> part) { return notice.after->findLive(part) != nullptr; };
    if (kept && !isLive(kept) && !m_view->selectionModel()->hasSelection()) {
        if (const auto heir = std::ranges::find_if(next, isLive); heir != next.end())
            bring(*heir);
    }
    m_isFollowing = false;
    m_whole->setChecked(!current());
    updateWords();
}

void PartTree::applyAnswer()
{
    m_model->applyAnswer();
}

void PartTree::updateWords()
{
    fitColumns();
    m_stack->setCurrentWidget(m_model->rowCount() > 0 ? static_cast<QWidget *>(m_view) : m_empty);
    m_fitting->setVisible(m_filtered->isFiltering());
    m_fitting->setText(tr("%n fit", "parts", m_filtered->fitting()));
}

} // namespace lastrivet::ui
