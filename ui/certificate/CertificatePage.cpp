// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/certificate/CertificatePage.h"

#include "ui/certificate/CrossCheckView.h"
#include "ui/certificate/MajorPortionView.h"
#include "ui/certificate/PapersView.h"
#include "ui/flights/FlightsView.h"
#include "ui/prints/AskToPrint.h"
#include "ui/rules/RulesView.h"
#include "ui/weighing/WeighingView.h"
#include "ui/widgets/Flow.h"

#include <QButtonGroup>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace lastrivet::ui {

CertificatePage::CertificatePage(Session &session, QWidget *parent)
    : Page(session, parent)
    , m_head(new QWidget(this))
    , m_flow(new Flow(m_head))
    , m_buttons(new QButtonGroup(this))
    , m_toCrossCheck(addButtons())
    , m_stack(new QStackedWidget(this))
    , m_papers(new PapersView(session, this))
    , m_crossCheck(new CrossCheckView(session, this))
    , m_majorPortion(new MajorPortionView(session, this))
    , m_rules(new RulesView(session, this))
    , m_weighing(new WeighingView(session, this))
    , m_flights(new FlightsView(session, this))
{
    build();
    show(*m_papers);
    updateWords();
}

/// Made before the places that they lead to, so that the Tab key comes to them first. The answer is
/// the button whose words tell how much does not agree.
QPushButton *CertificatePage::addButtons()
{
    const QString titles[] = {tr("Documents"),     tr("Facts and agreement"),
                              tr("Major portion"), tr("Weight and balance"),
                              tr("Test flights"),  tr("Rules")};
    int place = 0;
    for (const QString &title : titles) {
        auto *button = new QPushButton(title, m_head);
        button->setCheckable(true);
        m_buttons->addButton(button, place++);
        m_flow->addWidget(button);
    }
    auto *print = new QPushButton(tr("File for the final inspection…"), m_head);
    print->setToolTip(tr("Documents, inspections, equipment, major portion, log, deviations and "
                         "bulletins as one PDF"));
    print->setProperty("flat", true);
    m_flow->addWidget(print);
    connect(print, &QPushButton::clicked, this,
            [this] { askToPrint(*this, this->session(), PrintKind::FinalFile); });
    return qobject_cast<QPushButton *>(m_buttons->button(1));
}

void CertificatePage::build()
{
    // In the order of their buttons.
    m_places = {m_papers, m_crossCheck, m_majorPortion, m_weighing, m_flights, m_rules};
    for (CertificatePlace *place : m_places)
        m_stack->addWidget(place);
    connect(m_buttons, &QButtonGroup::idClicked, this,
            [this](int place) { show(*m_places[std::size_t(place)]); });
    connect(m_stack, &QStackedWidget::currentChanged, this,
            [this](int shown) { m_buttons->button(shown)->setChecked(true); });
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 12, 16, 8);
    layout->setSpacing(12);
    layout->addWidget(m_head);
    layout->addWidget(m_stack, 1);
}

void CertificatePage::show(QWidget &place)
{
    m_stack->setCurrentWidget(&place);
    m_buttons->button(m_stack->currentIndex())->setChecked(true);
}

void CertificatePage::open(CertificatePlace &place)
{
    show(place);
    place.firstFocus()->setFocus();
}

CertificatePlace *CertificatePage::shown() const
{
    return qobject_cast<CertificatePlace *>(m_stack->currentWidget());
}

void CertificatePage::updateWords()
{
    const int count = m_crossCheck->disagreementCount();
    m_toCrossCheck->setText(count == 0 ? tr("Facts and agreement")
                                       : tr("Facts and agreement (≠ %n)", nullptr, count));
}

void CertificatePage::showRecord(RecordRef record)
{
    for (CertificatePlace *place : m_places) {
        if (place->showRecord(record)) {
            show(*place);
            return;
        }
    }
}

void CertificatePage::startNew()
{
    shown()->startNew();
}

QWidget *CertificatePage::firstFocus()
{
    return shown()->firstFocus();
}

void CertificatePage::recordsChanged(const ChangeNotice &notice)
{
    for (CertificatePlace *place : m_places)
        place->apply(notice);
    updateWords();
}

void CertificatePage::answerChanged()
{
    for (CertificatePlace *place : m_places)
        place->applyAnswer();
}

void CertificatePage::themeChanged()
{
    recordsChanged({session().records(), session().records(), {}, {}});
}

} // namespace lastrivet::ui
