// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/ClosingsPage.h"

#include "ui/closings/ClosingBoard.h"
#include "ui/closings/ClosingView.h"
#include "ui/closings/InspectionView.h"
#include "ui/closings/LedgerView.h"
#include "ui/closings/NewClosingForm.h"
#include "ui/closings/PacketForm.h"
#include "ui/closings/VisitBoard.h"
#include "ui/closings/VisitForm.h"
#include "ui/widgets/EmptyPlace.h"
#include "ui/widgets/FilterLine.h"
#include "ui/widgets/RowListView.h"
#include "ui/widgets/Section.h"

#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTreeView>
#include <QVBoxLayout>

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr int formWidth = 860;
/// For rows of several fields.
constexpr int wideFormWidth = 1080;

/// What the form of a visit is started for.
enum class VisitPurpose { Ask, Hold };

} // namespace

ClosingsPage::ClosingsPage(Session &session, QWidget *parent)
    : Page(session, parent)
    , m_stack(new QStackedWidget(this))
    , m_filter(new FilterLine(this))
    , m_plan(
          new QPushButton(theme().icon(QStringLiteral("actions/sign")), tr("Plan a visit"), this))
    , m_add(new QPushButton(theme().icon(QStringLiteral("actions/add")), tr("New closing"), this))
    , m_board(new ClosingBoard(session, this))
    , m_empty(new EmptyPlace(tr("Here stand the closings: each region of structure that will be "
                                "hidden by a skin, a cover or glue, and what must happen before."),
                             this))
    , m_boardOrEmpty(new QStackedWidget(this))
    , m_view(new ClosingView(session, this))
    , m_new(new NewClosingForm(session, this))
    , m_visit(new VisitForm(session, this))
    , m_begunVisit(session, {m_visit})
    , m_visits(new VisitBoard(session, this))
    , m_inspection(new InspectionView(session, this))
    , m_packet(new PacketForm(session, this))
    , m_boardPlace(buildBoard())
    , m_newPlace(scrolled(*m_new, formWidth))
    , m_visitPlace(scrolled(*m_visit, wideFormWidth))
    , m_visitsPlace(scrolled(*m_visits, QWIDGETSIZE_MAX))
    , m_inspectionPlace(scrolled(*m_inspection, QWIDGETSIZE_MAX))
    , m_packetPlace(scrolled(*m_packet, formWidth))
{
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_stack);
    for (QWidget *place : {m_boardPlace, static_cast<QWidget *>(m_view), m_newPlace, m_visitPlace,
                           m_visitsPlace, m_inspectionPlace, m_packetPlace})
        m_stack->addWidget(place);
    connectPlaces();
    buildMenus();
    refresh();
}

void ClosingsPage::connectPlaces()
{
    connect(m_board, &ClosingBoard::chosen, this, &ClosingsPage::showRecord);
    connect(m_view, &ClosingView::backWanted, this, &ClosingsPage::leaveClosing);
    connect(m_view, &ClosingView::begunWanted, this,
            [this](Id<Closing> closing) { showClosing(closing); });
    connect(m_view, &ClosingView::visitWanted, this,
            [this](Id<Closing> closing) { startVisit({closing}); });
    connect(m_view, &ClosingView::packetWanted, this,
            [this](Id<Closing> closing) { startPacket({closing}); });
    connect(m_visits, &VisitBoard::backWanted, this, &ClosingsPage::showBoard);
    connect(m_visits, &VisitBoard::closingWanted, this,
            [this](Id<Closing> closing) { showClosing(closing, m_visitsPlace); });
    connect(m_visits, &VisitBoard::packetWanted, this, &ClosingsPage::startPacket);
    connect(m_visits, &VisitBoard::visitWanted, this, &ClosingsPage::startVisit);
    connect(m_visits, &VisitBoard::inspectionWanted, this, &ClosingsPage::showInspection);
    connect(m_inspection, &InspectionView::backWanted, this, &ClosingsPage::showVisits);
    connect(m_inspection, &InspectionView::closingWanted, this,
            [this](Id<Closing> closing) { showClosing(closing, m_inspectionPlace); });
    connect(m_inspection, &InspectionView::holdingWanted, this, &ClosingsPage::startHolding);
    connect(m_inspection, &InspectionView::begunWanted, this, &ClosingsPage::showInspection);
    connect(m_new, &NewClosingForm::made, this, [this](Id<Closing> made) { m_pending = made; });
    connect(m_new, &ActForm::left, this,
            [this] { m_pending ? showClosing(m_pending) : showBoard(); });
    connect(m_visit, &VisitForm::recorded, this, [this](Id<Inspection> visit) {
        m_inspection->show(visit);
        m_cameFrom = m_inspectionPlace;
    });
    connect(m_visit, &ActForm::left, this, &ClosingsPage::leaveForm);
    connect(m_packet, &ActForm::left, this, &ClosingsPage::leaveForm);
}

QWidget *ClosingsPage::buildBoard()
{
    auto *place = new QWidget(this);
    m_filter->setPlaceholderText(tr("Words of a closing or part"));
    m_filter->setAccessibleName(tr("Show only closings with these words"));
    m_filter->setMaximumWidth(320);
    m_empty->setAction(tr("Make the first closing"));
    m_boardOrEmpty->addWidget(m_board);
    m_boardOrEmpty->addWidget(m_empty);
    auto *bar = new QHBoxLayout;
    bar->setContentsMargins(24, 12, 24, 4);
    bar->addWidget(m_filter, 1);
    bar->addStretch(1);
    bar->addWidget(m_plan);
    bar->addWidget(m_add);
    auto *layout = new QVBoxLayout(place);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(bar);
    layout->addWidget(m_boardOrEmpty, 1);
    connect(m_filter, &QLineEdit::textChanged, m_board, &ClosingBoard::setFilter);
    connect(m_add, &QPushButton::clicked, this, &ClosingsPage::startNew);
    connect(m_empty, &EmptyPlace::acted, this, &ClosingsPage::startNew);
    connect(m_plan, &QPushButton::clicked, this, &ClosingsPage::showVisits);
    return place;
}

/// Forms stand on a margin, whole views have their own.
QWidget *ClosingsPage::scrolled(QWidget &content, int mostWidth)
{
    auto *place = new QWidget;
    content.setMaximumWidth(mostWidth);
    auto *layout = new QVBoxLayout(place);
    const bool isForm = mostWidth < QWIDGETSIZE_MAX;
    layout->setContentsMargins(isForm ? QMargins(24, 16, 24, 16) : QMargins());
    layout->addWidget(&content);
    layout->addStretch(1);
    auto *scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setWidget(place);
    return scroll;
}

void ClosingsPage::showBoard()
{
    const auto from = m_view->shown();
    m_view->show({});
    m_stack->setCurrentWidget(m_boardPlace);
    m_board->returnTo(from);
}

void ClosingsPage::leaveClosing()
{
    if (m_backFromClosing == m_inspectionPlace)
        showInspection(m_inspection->shown());
    else if (m_backFromClosing == m_visitsPlace)
        showVisits();
    else
        showBoard();
}

void ClosingsPage::showClosing(Id<Closing> closing, QWidget *from)
{
    m_pending = {};
    m_backFromClosing = from;
    m_view->setBackWords(from == m_inspectionPlace ? tr("← The visit")
                         : from == m_visitsPlace   ? tr("← Visits")
                                                   : tr("← All closings"));
    m_view->show(closing);
    m_stack->setCurrentWidget(m_view);
    m_view->ledger().setFocus();
}

void ClosingsPage::startNew()
{
    if (!session().mayChange())
        return;
    if (m_new->isBegun()) {
        m_new->takeKeyboard();
        return;
    }
    m_pending = {};
    m_stack->setCurrentWidget(m_newPlace);
    m_new->start();
}

void ClosingsPage::showVisits()
{
    m_view->show({});
    m_visits->refresh();
    m_stack->setCurrentWidget(m_visitsPlace);
    if (m_visits->table().isVisibleTo(m_visits))
        m_visits->table().setFocus();
}

void ClosingsPage::showInspection(Id<Inspection> visit)
{
    m_inspection->show(visit);
    m_stack->setCurrentWidget(m_inspectionPlace);
    m_inspection->firstFocus()->setFocus();
}

void ClosingsPage::startVisit(const IdSet<Closing> &closings)
{
    BegunForms::Purpose purpose{int(VisitPurpose::Ask)};
    for (const auto id : closings)
        purpose.push_back(id.value());
    if (!m_begunVisit.mayStart(0, purpose))
        return;
    m_cameFrom = m_stack->currentWidget();
    m_stack->setCurrentWidget(m_visitPlace);
    m_visit->start(closings);
}

void ClosingsPage::startHolding(Id<Inspection> visit)
{
    if (!m_begunVisit.mayStart(0, {int(VisitPurpose::Hold), visit.value()}))
        return;
    m_cameFrom = m_inspectionPlace;
    m_stack->setCurrentWidget(m_visitPlace);
    m_visit->startHolding(*session().records()->find(visit));
}

void ClosingsPage::startPacket(const IdSet<Closing> &closings)
{
    m_cameFrom = m_stack->currentWidget();
    m_stack->setCurrentWidget(m_packetPlace);
    m_packet->start(closings);
}

void ClosingsPage::leaveForm()
{
    if (m_cameFrom == m_inspectionPlace)
        showInspection(m_inspection->shown());
    else if (m_cameFrom == m_visitsPlace)
        showVisits();
    else if (m_view->shown())
        showClosing(m_view->shown(), m_backFromClosing);
    else
        showBoard();
}

Id<Closing> ClosingsPage::closingOf(RecordRef record) const
{
    const auto records = session().records();
    switch (record.type) {
    case RecordType::Closing:
        return Id<Closing>{record.id};
    case RecordType::Check:
        if (const Check *check = records->find(Id<Check>{record.id}))
            return check->closing_id;
        break;
    case RecordType::HoldPoint:
        if (const HoldPoint *point = records->find(Id<HoldPoint>{record.id}))
            return point->closing_id;
        break;
    case RecordType::SignOff:
        if (const SignOff *signature = records->find(Id<SignOff>{record.id}))
            return closingOf({RecordType::HoldPoint, signature->hold_point_id.value()});
        break;
    default:
        break;
    }
    return {};
}

void ClosingsPage::showRecord(RecordRef record)
{
    const auto closing = closingOf(record);
    if (record.id == 0)
        startNew();
    else if (record.type == RecordType::Inspection &&
             session().records()->findLive(Id<Inspection>{record.id}))
        showInspection(Id<Inspection>{record.id});
    else if (session().records()->findLive(closing))
        showClosing(closing);
    else
        showBoard();
}

QWidget *ClosingsPage::firstFocus()
{
    QWidget *shown = m_stack->currentWidget();
    if (shown == m_boardPlace)
        return m_boardOrEmpty->currentWidget() == m_board ? m_board->firstList() : m_empty;
    if (shown == m_visitsPlace)
        return &m_visits->table();
    // A form goes on where it was left.
    return shown == m_view ? &m_view->ledger() : shown->focusWidget();
}

void ClosingsPage::refresh()
{
    const auto records = session().records();
    const bool isAny = std::ranges::any_of(
        records->closings, [](const Closing &closing) { return !closing.withdrawn_on; });
    m_boardOrEmpty->setCurrentWidget(isAny ? static_cast<QWidget *>(m_board) : m_empty);
    m_add->setEnabled(!session().isReadOnly());
    m_view->refresh();
    // Otherwise it is refreshed when it is shown.
    if (m_stack->currentWidget() == m_visitsPlace)
        m_visits->refresh();
    m_inspection->refresh();
}

Id<Closing> ClosingsPage::shownClosing() const
{
    return m_stack->currentWidget() == m_view ? m_view->shown() : Id<Closing>{};
}

Id<Closing> ClosingsPage::chosenClosing() const
{
    return m_stack->currentWidget() == m_boardPlace ? m_board->chosenClosing() : shownClosing();
}

Id<Component> ClosingsPage::shownPart() const
{
    const Closing *shown = session().records()->findLive(shownClosing());
    return shown ? shown->component_id : Id<Component>{};
}

void ClosingsPage::recordsChanged(const ChangeNotice &notice)
{
    // Undo may have taken the opened closing away.
    if (m_view->shown() && !notice.after->findLive(m_view->shown()))
        showBoard();
    if (m_stack->currentWidget() == m_inspectionPlace &&
        !notice.after->findLive(m_inspection->shown()))
        showVisits();
    if (notice.before->profile_copy != notice.after->profile_copy)
        m_new->takeUpRules();
    refresh();
}

void ClosingsPage::answerChanged()
{
    m_board->refresh();
    refresh();
}

void ClosingsPage::themeChanged()
{
    m_board->setTheme();
}

} // namespace lastrivet::ui
