// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/flights/FlightsView.h"

#include "core/certificate/FlightTest.h"
#include "ui/convert/QtText.h"
#include "ui/flights/FlightForm.h"
#include "ui/shell/Session.h"
#include "ui/widgets/ActLine.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/RecordForm.h"
#include "ui/widgets/RecordNames.h"
#include "ui/widgets/RowListView.h"
#include "ui/widgets/WithdrawAct.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>
#include <initializer_list>

namespace lastrivet::ui {

namespace {

constexpr int formWidth = 400;

} // namespace

FlightsView::FlightsView(Session &session, QWidget *parent)
    : CertificatePlace(parent)
    , m_session(session)
    , m_sum(wrappedLabel({}, this))
    , m_rules(new QVBoxLayout)
    , m_form(new FlightForm(session, this))
    , m_list(new RowListView(session.theme(), tr("Flights"), this))
    , m_detail(new RecordForm(session, RecordType::Flight,
                              {{"flown_on"},
                               {"minutes", false, tr("Time flown")},
                               {"landings"},
                               {"pilot_id"},
                               {"faults", true},
                               {"note", true}},
                              this))
    , m_ask(new ActLine(session, this))
    , m_chosen(new QWidget(this))
    , m_withdraw(new QPushButton(tr("Withdraw…"), m_chosen))
{
    m_detail->setHappened({"flown_on"});
    auto *layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(16);
    layout->addWidget(buildLeft(), 1);
    layout->addWidget(buildRight(), 1);
    m_ask->hide();
    connect(m_form, &FlightForm::kept, this, [this](qint64 flight) {
        choose(Id<Flight>{flight});
        work();
        m_form->firstField()->setFocus();
    });
    connect(m_list, &RowListView::chosen, this, &FlightsView::showRecord);
    connect(m_ask, &ActLine::wanted, this, [this] {
        showRecord({RecordType::Flight, m_ask->aboutId()});
    });
    work();
}

QWidget *FlightsView::buildLeft()
{
    auto *area = new QScrollArea(this);
    auto *left = new QWidget(area);
    m_sum->setFont(m_session.theme().font(1));
    m_rules->setSpacing(4);
    auto *layout = new QVBoxLayout(left);
    layout->setContentsMargins(0, 0, 8, 0);
    layout->setSpacing(8);
    layout->addWidget(m_sum);
    layout->addLayout(m_rules);
    layout->addSpacing(8);
    m_listTitle = heading(tr("Flights, the latest first"), left);
    layout->addWidget(m_listTitle);
    layout->addWidget(m_list);
    layout->addStretch(1);
    area->setWidget(left);
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    return area;
}

QWidget *FlightsView::buildRight()
{
    auto *area = new QScrollArea(this);
    auto *right = new QWidget(area);
    m_withdraw->setProperty("flat", true);
    auto *chosen = new QVBoxLayout(m_chosen);
    chosen->setContentsMargins(0, 0, 0, 0);
    chosen->addWidget(heading(tr("The chosen flight"), m_chosen));
    chosen->addWidget(m_detail);
    chosen->addWidget(m_ask);
    chosen->addWidget(m_withdraw, 0, Qt::AlignLeft);
    auto *layout = new QVBoxLayout(right);
    layout->setContentsMargins(0, 0, 8, 0);
    layout->setSpacing(12);
    layout->addWidget(m_form);
    layout->addWidget(m_chosen);
    layout->addStretch(1);
    connect(m_withdraw, &QPushButton::clicked, this, [this] {
        askToWithdraw(m_session, *m_ask, RecordRef{RecordType::Flight, m_shown.value()});
    });
    area->setWidget(right);
    area->setWidgetResizable(true);
    area->setMaximumWidth(formWidth);
    area->setFocusPolicy(Qt::NoFocus);
    return area;
}

/// How far the flights are by a rule; in bold when the flights count for it.
void FlightsView::addRule(const Profile::TestPeriod &rule,
                          const certificate::TestProgress *progress, Minutes flown)
{
    const QString kind = listLine(rule.applies_to);
    const Minutes overall =
        progress ? Minutes{std::max<std::int64_t>(0, progress->needed.count() - flown.count())}
                 : Minutes{};
    const QString head =
        !progress ? tr("For %1").arg(kind)
        : progress->isDone()
            ? tr("For %1: %2 without a fault are flown").arg(kind, hoursText(progress->needed))
            : tr("For %1: %2 left, counted from the last fault; %3 left, counted over all flights")
                  .arg(kind, hoursText(progress->left), hoursText(overall));
    QLabel *line = wrappedLabel(head, this);
    QFont bold = font();
    bold.setBold(progress);
    line->setFont(bold);
    m_rules->addWidget(line);
    const Profile &profile = m_session.project().profile();
    QLabel *text =
        wrappedLabel(tr("%1 (%2)").arg(listLine(rule.text),
                                       sourceWords(profile.citation(rule.source, rule.mark))),
                     this);
    text->setForegroundRole(QPalette::PlaceholderText);
    m_rules->addWidget(text);
}

void FlightsView::showRules()
{
    clearLayout(*m_rules);
    const Profile &profile = m_session.project().profile();
    const auto flown = certificate::flightTest(*m_session.records(), m_session.today());
    m_sum->setText(flown.flights == 0
                       ? tr("No flight is on record yet.")
                       : tr("%1 in all; %2 since the last fault, in %n flights", nullptr,
                            int(flown.faultless_flights))
                             .arg(hoursText(flown.flown), hoursText(flown.faultless)));
    const auto progress = certificate::progress(flown, profile);
    for (std::size_t i = 0; i < profile.test_period.size(); ++i) {
        const auto of = std::ranges::find(progress, i, &certificate::TestProgress::rule);
        addRule(profile.test_period[i], of == progress.end() ? nullptr : &*of, flown.flown);
    }
    m_rules->addWidget(wrappedLabel(
        profile.test_period.empty()
            ? tr("The project's rules name no test period: the authority or the permit does.")
            : tr("Which of these holds, and what counts as a fault, the authority says; check the "
                 "current edition."),
        this));
}

void FlightsView::showFlights()
{
    const auto records = m_session.records();
    std::vector<const Flight *> flights;
    for (const Flight &flight : records->flights) {
        if (!flight.withdrawn_on && flight.flown_on)
            flights.push_back(&flight);
    }
    std::ranges::stable_sort(flights, [](const Flight *a, const Flight *b) {
        return a->flown_on->text() == b->flown_on->text()
                   ? a->id.value() > b->id.value()
                   : a->flown_on->text() > b->flown_on->text();
    });
    std::vector<ListRow> rows;
    for (const Flight *flight : flights) {
        ListRow row{{RecordType::Flight, flight->id.value()},
                    flight->faults.empty()
                        ? dateText(flight->flown_on)
                        : tr("%1: %2").arg(dateText(flight->flown_on), toQt(flight->faults))};
        row.detail = tr("%n landings", nullptr, int(flight->landings));
        if (const QString pilot = personName(*records, flight->pilot_id); !pilot.isEmpty())
            row.detail += QStringLiteral(" · ") + pilot;
        row.figure = hoursText(flight->minutes);
        if (!flight->faults.empty())
            row.icon = QStringLiteral("marks/alert");
        rows.push_back(row);
    }
    for (QWidget *widget : std::initializer_list<QWidget *>{m_listTitle, m_list})
        widget->setVisible(!rows.empty());
    m_list->setRows(std::move(rows));
}

void FlightsView::choose(Id<Flight> flight)
{
    // A question is about the record that it was asked about.
    m_ask->follow({{RecordType::Flight, flight.value()}});
    m_shown = flight;
}

void FlightsView::work()
{
    showRules();
    showFlights();
    const bool isAny = m_session.records()->findLive(m_shown) != nullptr;
    m_detail->show(isAny ? m_shown.value() : 0);
    m_chosen->setVisible(isAny);
    m_withdraw->setEnabled(!m_session.isReadOnly());
}

bool FlightsView::showRecord(RecordRef record)
{
    if (record.type != RecordType::Flight)
        return false;
    choose(Id<Flight>{record.id});
    work();
    return true;
}

void FlightsView::apply(const ChangeNotice &notice)
{
    m_detail->apply(notice);
    const auto isTouched = [&notice](RecordType type) {
        return std::ranges::find(notice.touched, type, &RecordRef::type) != notice.touched.end();
    };
    if (isTouched(RecordType::Person))
        m_form->offerPeopleAnew();
    const bool isAbout = isTouched(RecordType::Flight) || isTouched(RecordType::Person);
    // The rules of the test period belong to the project's country, which may have been changed.
    if (isAbout || notice.before->profile_copy != notice.after->profile_copy)
        work();
}

void FlightsView::startNew()
{
    m_form->firstField()->setFocus();
}

QWidget *FlightsView::firstFocus()
{
    return m_form->firstField();
}

} // namespace lastrivet::ui
