// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/ClosingBoard.h"

#include "ui/closings/ClosingWords.h"
#include "ui/closings/StateColumn.h"
#include "ui/convert/QtText.h"
#include "ui/shell/ShortcutSheet.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/RowListView.h"

#include <QGuiApplication>
#include <QHBoxLayout>
#include <QItemSelectionModel>
#include <QKeyEvent>
#include <QLabel>
#include <QResizeEvent>
#include <QScrollArea>
#include <QScrollBar>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>
#include <array>

namespace lastrivet::ui {

using readiness::State;

namespace {

/// The columns from left to right, in the order of the work; the last is not begun.
constexpr std::array<std::optional<State>, 7> columnOrder{
    State::Hold,        State::ReadyToInspect, State::ReadyToSign, State::Clear,
    State::ClosedEarly, State::Closed,         std::nullopt};

/// Below this width the columns stand under each other, and where one would be narrower than that.
constexpr int singleColumnBelow = 700;
constexpr int leastColumn = 100;
constexpr int margin = 24;

std::size_t columnOf(const readiness::ClosingAnswer &answer)
{
    if (!answer.begun && !isClosed(answer.state))
        return columnOrder.size() - 1;
    return std::size_t(std::ranges::find(columnOrder, answer.state) - columnOrder.begin());
}

std::int64_t count(const readiness::ClosingAnswer &answer, readiness::Weight weight)
{
    return std::ranges::count(answer.blockers, weight, &readiness::Blocker::weight);
}

} // namespace

ClosingBoard::ClosingBoard(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_layout(nullptr)
    , m_scroll(new QScrollArea(this))
    , m_aircraftPlace(new QWidget(this))
    , m_aircraft(new RowListView(session.theme(),
                                 tr("Before the final inspection and first flight"), this))
    , m_nothing(new QLabel(tr("No closing has these words."), this))
{
    build();
    refresh();
}

void ClosingBoard::build()
{
    auto *inner = new QWidget;
    auto *whole = new QVBoxLayout(inner);
    whole->setContentsMargins(margin, 4, margin, 12);
    whole->setSpacing(16);
    m_layout = new QBoxLayout(QBoxLayout::LeftToRight);
    m_layout->setSpacing(12);
    for (const auto state : columnOrder) {
        auto *column = new StateColumn(m_session.theme(), state, inner);
        column->list().setMinimumWidth(leastColumn);
        m_columns.push_back(column);
        m_layout->addWidget(column, 1);
        connect(column, &StateColumn::chosen, this, &ClosingBoard::chosen);
        follow(column->list());
        column->list().installEventFilter(this);
        column->list().setProperty(
            ShortcutSheet::toldKeys,
            QStringList{tr("Left, Right"), tr("The column before or behind, on the board")});
    }
    whole->addWidget(m_nothing);
    whole->addLayout(m_layout);
    auto *apart = new QVBoxLayout(m_aircraftPlace);
    apart->setContentsMargins(0, 0, 0, 0);
    apart->addWidget(heading(tr("Before the final inspection and first flight"), m_aircraftPlace));
    apart->addWidget(m_aircraft);
    whole->addWidget(m_aircraftPlace);
    whole->addStretch(1);
    connect(m_aircraft, &RowListView::chosen, this, &ClosingBoard::chosen);
    follow(*m_aircraft);
    m_scroll->setWidgetResizable(true);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setWidget(inner);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_scroll);
}

void ClosingBoard::follow(RowListView &list)
{
    // Afterwards: the area scrolls by itself to the middle of a list that is higher than it.
    connect(list.selectionModel(), &QItemSelectionModel::currentChanged, this, [this, &list] {
        QTimer::singleShot(0, &list, [this, &list] { bringIntoView(list); });
    });
}

void ClosingBoard::bringIntoView(const RowListView &list)
{
    constexpr int around = 8;
    // Nothing moves away from under a mouse that is held down on it.
    if (!list.hasFocus() || !list.currentIndex().isValid() ||
        QGuiApplication::mouseButtons() != Qt::NoButton)
        return;
    const QRect row = list.visualRect(list.currentIndex());
    const int place = list.viewport()->mapTo(m_scroll->widget(), row.topLeft()).y();
    const int bottom = place + row.height() + around;
    QScrollBar &bar = *m_scroll->verticalScrollBar();
    const int seen = m_scroll->viewport()->height();
    int top = place - around;
    // The first row brings the head of its column along.
    const int head = list.parentWidget()->mapTo(m_scroll->widget(), QPoint()).y();
    if (list.currentIndex().row() == 0 && bottom - head <= seen)
        top = head;
    if (top < bar.value())
        bar.setValue(top);
    else if (bottom > bar.value() + seen)
        bar.setValue(bottom - seen);
}

void ClosingBoard::goBeside(const RowListView &list, bool isBehind)
{
    std::vector<RowListView *> shown;
    for (const StateColumn *column : m_columns) {
        if (column->count() > 0)
            shown.push_back(&column->list());
    }
    const auto here = std::ranges::find(shown, &list);
    if (here == shown.end() || (isBehind ? here + 1 == shown.end() : here == shown.begin()))
        return;
    RowListView &next = isBehind ? **(here + 1) : **(here - 1);
    const int row = std::clamp(list.currentIndex().row(), 0, next.rows().rowCount() - 1);
    next.setCurrentIndex(next.rows().index(row));
    next.setFocus();
}

bool ClosingBoard::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(watched, event);
    const auto *pressed = static_cast<const QKeyEvent *>(event);
    const auto *list = qobject_cast<const RowListView *>(watched);
    const bool isBeside = pressed->key() == Qt::Key_Left || pressed->key() == Qt::Key_Right;
    const bool isPlain =
        pressed->modifiers() == Qt::NoModifier || pressed->modifiers() == Qt::KeypadModifier;
    if (!list || !isBeside || !isPlain)
        return QWidget::eventFilter(watched, event);
    goBeside(*list, pressed->key() == Qt::Key_Right);
    return true;
}

bool ClosingBoard::passes(const Closing &closing) const
{
    const auto records = m_session.records();
    QString words = toQt(closing.title);
    if (const Component *part = records->find(closing.component_id))
        words += QLatin1Char(' ') + toQt(part->name) + QLatin1Char(' ') + toQt(part->code);
    const auto wanted = m_filter.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    return std::ranges::all_of(
        wanted, [&](const QString &word) { return words.contains(word, Qt::CaseInsensitive); });
}

QString ClosingBoard::detail(const Closing &closing, const readiness::ClosingAnswer &answer) const
{
    const auto must = count(answer, readiness::Weight::Must);
    const auto should = count(answer, readiness::Weight::Should);
    switch (answer.state) {
    case State::Closed:
        return {};
    case State::ClosedEarly:
        return closing.made_by == MadeBy::Factory ? tr("no document") : tr("%1 missing").arg(must);
    default:
        break;
    }
    if (!answer.begun || (must == 0 && should == 0))
        return {};
    return must > 0 ? tr("%1 to clear").arg(must) : tr("%1 advised").arg(should);
}

void ClosingBoard::refresh()
{
    const auto records = m_session.records();
    std::vector<const readiness::ClosingAnswer *> answers;
    const auto answer = m_session.answer();
    for (const auto &closing : answer->closings)
        answers.push_back(&closing);
    std::ranges::stable_sort(answers, {}, [](const readiness::ClosingAnswer *closing) {
        return closing->state == State::Hold ? count(*closing, readiness::Weight::Must) : 0;
    });
    std::array<std::vector<ListRow>, columnOrder.size()> rows;
    for (const auto *one : answers) {
        const Closing *closing = records->findLive(one->id);
        if (!closing || closing->scope == ClosingScope::Aircraft || !passes(*closing))
            continue;
        ListRow row{{RecordType::Closing, one->id.value()}, toQt(closing->title)};
        row.detail = detail(*closing, *one);
        rows[columnOf(*one)].push_back(std::move(row));
    }
    m_nothing->setVisible(!m_filter.trimmed().isEmpty() &&
                          std::ranges::all_of(rows, &std::vector<ListRow>::empty));
    for (std::size_t i = 0; i < rows.size(); ++i)
        m_columns[i]->setRows(std::move(rows[i]));
    layOut();
    refreshAircraft();
}

void ClosingBoard::layOut()
{
    const auto shown = std::ranges::count_if(
        m_columns, [](const StateColumn *column) { return !column->isHidden(); });
    const int needed = int(shown) * (leastColumn + m_layout->spacing()) + 2 * margin;
    m_layout->setDirection(width() < std::max(singleColumnBelow, needed) ? QBoxLayout::TopToBottom
                                                                         : QBoxLayout::LeftToRight);
    m_layout->activate();
    alignHeads();
}

void ClosingBoard::alignHeads()
{
    int height = 0;
    for (const StateColumn *column : m_columns)
        height = std::max(height, column->isHidden() ? 0 : column->headHeight());
    const bool isStacked = m_layout->direction() == QBoxLayout::TopToBottom;
    for (StateColumn *column : m_columns)
        column->setHeadHeight(isStacked ? 0 : height);
}

void ClosingBoard::refreshAircraft()
{
    const auto records = m_session.records();
    std::vector<ListRow> rows;
    for (const auto &answer : m_session.answer()->closings) {
        const Closing *closing = records->findLive(answer.id);
        if (!closing || closing->scope != ClosingScope::Aircraft)
            continue;
        ListRow row{{RecordType::Closing, answer.id.value()}, toQt(closing->title)};
        row.detail = detail(*closing, answer);
        showState(row, answer);
        rows.push_back(std::move(row));
    }
    m_aircraftPlace->setVisible(!rows.empty());
    m_aircraft->setRows(std::move(rows));
}

void ClosingBoard::setFilter(const QString &words)
{
    m_filter = words;
    refresh();
}

void ClosingBoard::setTheme()
{
    for (StateColumn *column : m_columns)
        column->setTheme();
}

QWidget *ClosingBoard::firstList() const
{
    for (const StateColumn *column : m_columns) {
        if (column->count() > 0)
            return &column->list();
    }
    return m_aircraft;
}

Id<Closing> ClosingBoard::chosenClosing() const
{
    for (const RowListView *list : lists()) {
        if (list->currentIndex().isValid())
            return Id<Closing>{list->rows().row(list->currentIndex().row()).record.id};
    }
    return {};
}

std::vector<RowListView *> ClosingBoard::lists() const
{
    std::vector<RowListView *> all{m_aircraft};
    for (const StateColumn *column : m_columns)
        all.push_back(&column->list());
    return all;
}

void ClosingBoard::returnTo(Id<Closing> closing)
{
    for (RowListView *list : lists()) {
        for (int row = 0; row < list->rows().rowCount(); ++row) {
            if (list->rows().row(row).record != RecordRef{RecordType::Closing, closing.value()})
                continue;
            list->setCurrentIndex(list->rows().index(row));
            list->setFocus();
            QTimer::singleShot(0, list, [this, list] { bringIntoView(*list); });
            return;
        }
    }
    firstList()->setFocus();
}

void ClosingBoard::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    layOut();
}

} // namespace lastrivet::ui
