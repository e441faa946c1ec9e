// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/ClosingsPage.h"

#include "ui/closings/ClosingBoard.h"
#include "ui/closings/ClosingView.h"
#include "ui/closings/LedgerView.h"
#include "ui/closings/NewClosingForm.h"
#include "ui/closings/PacketTask.h"
#include "ui/closings/VisitForm.h"
#include "ui/widgets/EmptyPlace.h"

#include <QDir>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QStandardPaths>
#include <QVBoxLayout>

namespace lastrivet::ui {

ClosingsPage::ClosingsPage(Session &session, QWidget *parent)
    : Page(session, parent)
    , m_stack(new QStackedWidget(this))
    , m_filter(new QLineEdit(this))
    , m_add(new QPushButton(theme().icon(QStringLiteral("actions/add")), tr("New closing"), this))
    , m_ask(new QPushButton(theme().icon(QStringLiteral("actions/sign")), tr("Inspection visit"),
                            this))
    , m_board(new ClosingBoard(session, this))
    , m_empty(new EmptyPlace(tr("Here stand the closings: each region of structure that will be "
                                "hidden by a skin, a cover or glue, and what must happen before."),
                             this))
    , m_boardOrEmpty(new QStackedWidget(this))
    , m_view(new ClosingView(session, this))
    , m_new(new NewClosingForm(session, this))
    , m_visit(new VisitForm(session, this))
    , m_boardPlace(buildBoard())
    , m_newPlace(scrolled(*m_new))
    , m_visitPlace(scrolled(*m_visit))
{
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_stack);
    for (QWidget *place : {m_boardPlace, static_cast<QWidget *>(m_view), m_newPlace, m_visitPlace})
        m_stack->addWidget(place);
    connect(m_board, &ClosingBoard::chosen, this, &ClosingsPage::showRecord);
    connect(m_view, &ClosingView::backWanted, this, &ClosingsPage::showBoard);
    connect(m_view, &ClosingView::visitWanted, this, &ClosingsPage::startVisit);
    connect(m_view, &ClosingView::packetWanted, this, &ClosingsPage::makePacketOf);
    connect(m_new, &NewClosingForm::made, this, [this](Id<Closing> made) { m_pending = made; });
    connect(m_new, &ActForm::left, this,
            [this] { m_pending ? showClosing(m_pending) : showBoard(); });
    connect(m_visit, &ActForm::left, this,
            [this] { m_view->shown() ? showClosing(m_view->shown()) : showBoard(); });
    refresh();
}

QWidget *ClosingsPage::buildBoard()
{
    auto *place = new QWidget(this);
    m_filter->setPlaceholderText(tr("Words of a closing or part"));
    m_filter->setAccessibleName(tr("Show only closings with these words"));
    m_filter->setClearButtonEnabled(true);
    m_filter->setMaximumWidth(320);
    m_empty->setAction(tr("Make the first closing"));
    m_boardOrEmpty->addWidget(m_board);
    m_boardOrEmpty->addWidget(m_empty);
    auto *bar = new QHBoxLayout;
    bar->setContentsMargins(24, 12, 24, 4);
    bar->addWidget(m_filter, 1);
    bar->addStretch(1);
    bar->addWidget(m_ask);
    bar->addWidget(m_add);
    auto *layout = new QVBoxLayout(place);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(bar);
    layout->addWidget(m_boardOrEmpty, 1);
    connect(m_filter, &QLineEdit::textChanged, m_board, &ClosingBoard::setFilter);
    connect(m_add, &QPushButton::clicked, this, &ClosingsPage::startNew);
    connect(m_empty, &EmptyPlace::acted, this, &ClosingsPage::startNew);
    connect(m_ask, &QPushButton::clicked, this, [this] { startVisit({}); });
    return place;
}

QWidget *ClosingsPage::scrolled(ActForm &form)
{
    auto *place = new QWidget;
    form.setMaximumWidth(860);
    auto *layout = new QVBoxLayout(place);
    layout->setContentsMargins(24, 16, 24, 16);
    layout->addWidget(&form);
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
    m_view->show({});
    m_stack->setCurrentWidget(m_boardPlace);
    m_board->firstList()->setFocus();
}

void ClosingsPage::showClosing(Id<Closing> closing)
{
    m_pending = {};
    m_view->show(closing);
    m_stack->setCurrentWidget(m_view);
    m_view->ledger().setFocus();
}

void ClosingsPage::startNew()
{
    if (session().isReadOnly())
        return;
    m_pending = {};
    m_stack->setCurrentWidget(m_newPlace);
    m_new->start();
}

void ClosingsPage::startVisit(Id<Closing> closing)
{
    m_view->show(closing);
    m_stack->setCurrentWidget(m_visitPlace);
    m_visit->start(closing);
}

void ClosingsPage::makePacketOf(Id<Closing> closing)
{
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    const QString file = QFileDialog::getSaveFileName(
        this, tr("Where the packet goes"),
        QDir(folder).filePath(packetFileName(session(), {closing})), tr("PDF (*.pdf)"));
    if (!file.isEmpty())
        makePacket(session(), {closing}, file);
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
    case RecordType::Inspection:
        if (const Inspection *visit = records->find(Id<Inspection>{record.id});
            visit && !visit->hold_point_ids.empty())
            return closingOf({RecordType::HoldPoint, visit->hold_point_ids.front().value()});
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
    else if (record.type == RecordType::Inspection && closing)
        startVisit(closing);
    else if (session().records()->findLive(closing))
        showClosing(closing);
    else
        showBoard();
}

QWidget *ClosingsPage::firstFocus()
{
    if (m_stack->currentWidget() == m_boardPlace)
        return m_board->firstList();
    return m_stack->currentWidget() == m_view ? &m_view->ledger() : nullptr;
}

void ClosingsPage::refresh()
{
    m_boardOrEmpty->setCurrentWidget(
        session().records()->closings.isEmpty() ? static_cast<QWidget *>(m_empty) : m_board);
    m_add->setEnabled(!session().isReadOnly());
    m_ask->setEnabled(!session().isReadOnly());
    m_view->refresh();
}

Id<Component> ClosingsPage::shownPart() const
{
    const Closing *shown = m_stack->currentWidget() == m_view
                               ? session().records()->findLive(m_view->shown())
                               : nullptr;
    return shown ? shown->component_id : Id<Component>{};
}

void ClosingsPage::recordsChanged(const ChangeNotice &notice)
{
    // Undo may have taken the opened closing away.
    if (m_view->shown() && !notice.after->findLive(m_view->shown()))
        showBoard();
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
