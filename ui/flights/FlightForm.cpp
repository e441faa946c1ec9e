// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/flights/FlightForm.h"

#include "core/entry/DurationText.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/MomentLine.h"
#include "ui/widgets/NumberBox.h"
#include "ui/widgets/PersonBox.h"

#include <QLineEdit>

namespace lastrivet::ui {

namespace {

constexpr int mostLandings = 999;
constexpr Minutes longestFlight{24 * 60};

const Flight *latestFlight(const Records &records)
{
    const Flight *latest = nullptr;
    for (const Flight &flight : records.flights) {
        if (flight.withdrawn_on || !flight.flown_on)
            continue;
        if (!latest || !after(*latest->flown_on, *flight.flown_on))
            latest = &flight;
    }
    return latest;
}

std::vector<const Person *> livePeople(const Records &records)
{
    std::vector<const Person *> people;
    for (const Person &person : records.people) {
        if (!person.withdrawn_on)
            people.push_back(&person);
    }
    return people;
}

} // namespace

FlightForm::FlightForm(Session &session, QWidget *parent)
    : ActForm(tr("Write the flight down"), parent)
    , m_session(session)
    , m_day(new MomentLine(session, this))
    , m_minutes(new QLineEdit(this))
    , m_landings(new NumberBox(this))
    , m_pilot(new PersonBox(this))
    , m_faults(new QLineEdit(this))
    , m_note(new QLineEdit(this))
{
    setTitle(tr("Next flight"));
    setLeavable(false);
    m_landings->setRange(0, mostLandings);
    m_minutes->setPlaceholderText(tr("1h20 or 80m"));
    m_faults->setPlaceholderText(tr("empty when there was none"));
    addField(tr("Flown on"), m_day);
    addField(tr("Time in the air"), m_minutes);
    addField(tr("Landings"), m_landings);
    addField(tr("Pilot"), m_pilot);
    addField(tr("Faults"), m_faults);
    addField(tr("Note"), m_note);
    // The keyboard goes to the lines inside.
    m_landings->findChild<QLineEdit *>()->setAccessibleName(tr("Landings"));
    if (m_pilot->lineEdit())
        m_pilot->lineEdit()->setAccessibleName(tr("Pilot"));
    // It stands there always: who leaves it drops what is typed.
    connect(this, &ActForm::left, this, &FlightForm::start);
    start();
}

void FlightForm::start()
{
    const auto records = m_session.records();
    const Flight *latest = latestFlight(*records);
    m_day->setMoment(m_session.today());
    // Undo is about the flight from here on, not about its words.
    m_minutes->setText({});
    m_landings->setValue(1);
    m_pilot->offer(*records, livePeople, Role::Builder,
                   latest ? latest->pilot_id : records->project.builder_id);
    m_faults->setText({});
    m_note->setText({});
    hint({});
    setEnabled(!m_session.isReadOnly());
    noteFields();
}

void FlightForm::offerPeopleAnew()
{
    const bool wasBegun = isBegun();
    const QString typed = m_pilot->currentText();
    const Id<Person> chosen = m_pilot->person();
    const auto records = m_session.records();
    m_pilot->offer(*records, livePeople, Role::Builder, chosen);
    // Somebody who is on record goes by the name there.
    if (!chosen || !records->findLive(chosen))
        m_pilot->setEditText(typed);
    if (!wasBegun)
        noteFields();
}

QWidget *FlightForm::firstField() const
{
    return m_minutes;
}

QString FlightForm::whyNot(std::optional<Minutes> minutes) const
{
    const QString day = m_day->whyNotHappened(m_session.now());
    if (!day.isEmpty())
        return day;
    if (!minutes || minutes->count() <= 0)
        return tr("It needs the time in the air, as 1h20 or 80m.");
    if (*minutes > longestFlight)
        return tr("A day has 24 hours; write down each flight by itself.");
    return m_pilot->isFilled() ? m_pilot->whyNot(*m_session.records()) : QString();
}

bool FlightForm::perform()
{
    const auto minutes = entry::parseDuration(toStd(m_minutes->text()));
    const QString why = whyNot(minutes);
    if (!why.isEmpty()) {
        hint(why);
        return false;
    }
    Id<Flight> made;
    const bool isDone = m_session.change(
        tr("Flight of %1 written down").arg(dateText(*m_day->moment())), [&](Edit &edit) {
            Flight flight;
            flight.flown_on = m_day->moment();
            flight.minutes = *minutes;
            flight.landings = m_landings->value();
            if (m_pilot->isFilled())
                flight.pilot_id = m_pilot->personIn(edit);
            flight.faults = toStd(m_faults->text());
            flight.note = toStd(m_note->text());
            made = edit.put(flight);
        });
    if (!isDone)
        return false;
    Q_EMIT kept(made.value());
    return true;
}

} // namespace lastrivet::ui
