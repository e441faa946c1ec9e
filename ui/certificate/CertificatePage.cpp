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

void CertificatePage::build()
{
    addPlace(tr("Documents"), *m_papers);
    m_toCrossCheck = addPlace(tr("Facts and agreement"), *m_crossCheck);
    addPlace(tr("Major portion"), *m_majorPortion);
    addPlace(tr("Weight and balance"), *m_weighing);
    addPlace(tr("Test flights"), *m_flights);
    addPlace(tr("Rules"), *m_rules);
    connect(m_stack, &QStackedWidget::currentChanged, this,
            [this](int shown) { m_buttons->button(shown)->setChecked(true); });
    m_places = {m_papers, m_crossCheck, m_majorPortion, m_weighing, m_flights, m_rules};
    auto *print = new QPushButton(tr("File for the final inspection…"), m_head);
    print->setToolTip(tr("Documents, inspections, equipment, major portion, log, deviations and "
                         "bulletins as one PDF"));
    print->setProperty("flat", true);
    m_flow->addWidget(print);
    connect(print, &QPushButton::clicked, this,
            [this] { askToPrint(*this, this->session(), PrintKind::FinalFile); });
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 12, 16, 8);
    layout->setSpacing(12);
    layout->addWidget(m_head);
    layout->addWidget(m_stack, 1);
}

QPushButton *CertificatePage::addPlace(const QString &words, QWidget &place)
{
    auto *button = new QPushButton(words, m_head);
    button->setCheckable(true);
    m_buttons->addButton(button, m_stack->addWidget(&place));
    m_flow->addWidget(button);
    connect(button, &QPushButton::clicked, this, [this, &place] { show(place); });
    return button;
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
