// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/weighing/WeighingView.h"

#include "core/packet/WeightReport.h"
#include "ui/prints/AskToPrint.h"
#include "ui/shell/Session.h"
#include "ui/weighing/EquipmentPanel.h"
#include "ui/weighing/LoadingPanel.h"
#include "ui/weighing/WeighingPanel.h"
#include "ui/weighing/WeightText.h"
#include "ui/widgets/Flow.h"
#include "ui/widgets/Layouts.h"

#include <QButtonGroup>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace lastrivet::ui {

WeighingView::WeighingView(Session &session, QWidget *parent)
    : CertificatePlace(parent)
    , m_session(session)
    , m_buttons(new QButtonGroup(this))
    , m_stack(new QStackedWidget(this))
    , m_sum(new QLabel(this))
    // Before the panels, so that the Tab key leads from it into what was chosen.
    , m_head(buildHead())
    , m_weighing(new WeighingPanel(session, this))
    , m_equipment(new EquipmentPanel(session, this))
    , m_loading(new LoadingPanel(session, this))
{
    build();
    open(m_weighing);
    work();
}

QWidget *WeighingView::buildHead()
{
    auto *head = new QWidget(this);
    auto *flow = new Flow(head);
    const QStringList places{tr("Weighing"), tr("Equipment"), tr("Loading and limits")};
    for (const QString &words : places) {
        auto *button = new QPushButton(words, this);
        button->setCheckable(true);
        m_buttons->addButton(button, int(m_buttons->buttons().size()));
        flow->addWidget(button);
    }
    auto *print = flatButton(tr("Print the report…"), this);
    flow->addWidget(print);
    flow->addWidget(m_sum);
    connect(print, &QPushButton::clicked, this,
            [this] { askToPrint(*this, m_session, PrintKind::Weight); });
    return head;
}

void WeighingView::build()
{
    for (QWidget *panel : {static_cast<QWidget *>(m_weighing), static_cast<QWidget *>(m_equipment),
                           static_cast<QWidget *>(m_loading)})
        m_stack->addWidget(panel);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(12);
    layout->addWidget(m_head);
    layout->addWidget(m_stack, 1);
    connect(m_buttons, &QButtonGroup::idClicked, this,
            [this](int place) { open(m_stack->widget(place)); });
    connect(m_stack, &QStackedWidget::currentChanged, this,
            [this](int shown) { m_buttons->button(shown)->setChecked(true); });
}

void WeighingView::open(QWidget *panel)
{
    m_stack->setCurrentWidget(panel);
    m_buttons->button(m_stack->currentIndex())->setChecked(true);
}

void WeighingView::work()
{
    const auto report = packet::weightReport(*m_session.records(), m_session.project().profile(),
                                             m_session.today());
    m_weighing->setReport(report);
    m_equipment->setReport(report);
    m_loading->setReport(report);
    m_sum->setText(report.empty ? tr("Empty: %1").arg(balanceText(report.empty->sum, report.units))
                                : QString());
}

bool WeighingView::showRecord(RecordRef record)
{
    switch (record.type) {
    case RecordType::Weighing:
        m_weighing->show(Id<Weighing>{record.id});
        open(m_weighing);
        return true;
    case RecordType::Equipment:
        m_equipment->show(Id<Equipment>{record.id});
        open(m_equipment);
        return true;
    case RecordType::LoadingCase:
        m_loading->show(Id<LoadingCase>{record.id});
        open(m_loading);
        return true;
    case RecordType::Envelope:
        open(m_loading);
        return true;
    default:
        return false;
    }
}

void WeighingView::apply(const ChangeNotice &notice)
{
    m_weighing->apply(notice);
    m_equipment->apply(notice);
    m_loading->apply(notice);
    const bool isAbout = std::ranges::any_of(notice.touched, [](RecordRef record) {
        switch (record.type) {
        case RecordType::Weighing:
        case RecordType::Equipment:
        case RecordType::LoadingCase:
        case RecordType::Envelope:
        case RecordType::Deviation:
        case RecordType::Bulletin:
        case RecordType::Tool:
        case RecordType::Project:
            return true;
        default:
            return false;
        }
    });
    if (isAbout)
        work();
}

void WeighingView::startNew()
{
    if (m_stack->currentWidget() == m_equipment)
        m_equipment->startNew();
    else if (m_stack->currentWidget() == m_loading)
        m_loading->startNew();
    else
        m_weighing->startNew();
}

QWidget *WeighingView::firstFocus()
{
    if (m_stack->currentWidget() == m_equipment)
        return m_equipment->firstFocus();
    if (m_stack->currentWidget() == m_loading)
        return m_loading->firstFocus();
    return m_weighing->firstFocus();
}

} // namespace lastrivet::ui
