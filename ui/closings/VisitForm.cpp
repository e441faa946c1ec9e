// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/VisitForm.h"

#include "ui/closings/ClosingWords.h"
#include "ui/closings/FindingRows.h"
#include "ui/closings/VerdictRows.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/MomentLine.h"
#include "ui/widgets/PersonBox.h"
#include "ui/widgets/SheetBox.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QRadioButton>

#include <algorithm>
#include <utility>

namespace lastrivet::ui {

VisitForm::VisitForm(Session &session, QWidget *parent)
    : ActForm({}, parent)
    , m_session(session)
    , m_ask(new QRadioButton(tr("ask for it"), this))
    , m_held(new QRadioButton(tr("it was held"), this))
    , m_verdicts(new VerdictRows(session, this))
    , m_inspector(new PersonBox(this))
    , m_day(new MomentLine(this))
    , m_reference(new QLineEdit(this))
    , m_seen(new QComboBox(this))
    , m_sheet(new SheetBox(session, this))
    , m_findings(new FindingRows(session, this))
{
    setTitle(tr("A visit of the inspector or adviser; one visit may sign several hold points."));
    addFields();
    connect(m_ask, &QRadioButton::toggled, this, &VisitForm::setAsking);
    connect(m_verdicts, &VerdictRows::chosenChanged, this, &VisitForm::offerPeople);
}

void VisitForm::addFields()
{
    offerSeen(*m_seen);
    auto *choice = new QWidget(this);
    auto *line = new QHBoxLayout(choice);
    line->setContentsMargins(0, 0, 0, 0);
    line->addWidget(m_ask);
    line->addWidget(m_held);
    line->addStretch(1);
    addField(tr("Visit"), choice);
    addField(tr("Hold points"), m_verdicts);
    addField(tr("Who comes"), m_inspector);
    addField(tr("Day"), m_day);
    addField(tr("Reference or report number"), m_reference);
    addField(tr("Looked at"), m_seen);
    addField(tr("Signed sheet"), m_sheet);
    addField(tr("Findings"), m_findings);
}

Id<Inspection> VisitForm::openRequest() const
{
    const auto open = acts::openRequests(*m_session.records(), m_session.now());
    const auto chosen = m_verdicts->chosen();
    for (const Inspection *visit : open) {
        const bool isForThese = std::ranges::any_of(chosen, [visit](Id<HoldPoint> point) {
            return std::ranges::binary_search(visit->hold_point_ids, point);
        });
        if (isForThese)
            return visit->id;
    }
    return {};
}

std::vector<Id<Component>> VisitForm::reachableParts(Id<Closing> closing) const
{
    std::vector<Id<Component>> parts;
    if (const Closing *record = m_session.records()->find(closing))
        parts.push_back(record->component_id);
    const auto *answer = m_session.answer()->closing(closing);
    if (answer && answer->reach.size() < 200) {
        for (const auto part : answer->reach) {
            if (parts.empty() || part != parts.front())
                parts.push_back(part);
        }
        return parts;
    }
    for (const Component &part : m_session.records()->components) {
        if (!part.withdrawn_on)
            parts.push_back(part.id);
    }
    return parts;
}

void VisitForm::start(Id<Closing> closing)
{
    m_isWarned = false;
    m_verdicts->start(closing);
    m_asked = openRequest();
    offerPeople();
    m_day->setMoment(m_session.today());
    m_reference->clear();
    m_sheet->clear();
    m_findings->start(reachableParts(closing));
    m_held->setChecked(bool(m_asked));
    m_ask->setChecked(!m_asked);
    setAsking(!m_asked);
    hint({});
    (m_asked ? m_held : m_ask)->setFocus();
}

void VisitForm::setAsking(bool isAsking)
{
    m_verdicts->setAsking(isAsking);
    for (QWidget *field : {static_cast<QWidget *>(m_seen), static_cast<QWidget *>(m_sheet),
                           static_cast<QWidget *>(m_findings)})
        setFieldVisible(field, !isAsking);
    setDoWords(isAsking ? tr("Record the request") : tr("Record the visit"));
    m_day->setPlaceholderText(isAsking ? tr("planned for, if a day is set") : tr("held on"));
    if (isAsking)
        m_day->clear();
    else if (!m_day->moment())
        m_day->setMoment(m_session.today());
}

void VisitForm::offerPeople()
{
    const auto records = m_session.records();
    const Inspection *asked = records->find(m_asked);
    m_inspector->offer(*records, m_verdicts->role(), asked ? asked->inspector_id : Id<Person>{});
}

bool VisitForm::perform()
{
    if (m_verdicts->chosen().empty()) {
        hint(tr("It needs at least one hold point."));
        return false;
    }
    return m_ask->isChecked() ? performAsking() : performHolding();
}

bool VisitForm::performAsking()
{
    const auto open = acts::openRequests(*m_session.records(), m_session.now());
    const bool isOneTooMany = !open.empty() && m_session.project().profile().one_open_request;
    if (isOneTooMany && !std::exchange(m_isWarned, true)) {
        hint(tr("A visit asked for on %1 is still open, and this authority wants one request at a "
                "time. Press again to record this one all the same.")
                 .arg(dateText(open.front()->asked_on)));
        return false;
    }
    return m_session.change(tr("Visit asked for"), [&](Edit &edit) {
        Inspection visit;
        visit.kind = m_verdicts->kind();
        visit.reference = toStd(m_reference->text());
        visit.planned_for = m_day->moment();
        if (m_inspector->isFilled())
            visit.inspector_id = m_inspector->personIn(edit);
        visit.hold_point_ids = m_verdicts->chosen();
        acts::askForInspection(edit, std::move(visit));
    });
}

bool VisitForm::performHolding()
{
    if (!m_inspector->isFilled() || !m_day->moment()) {
        hint(tr("It needs who came, and on which day."));
        return false;
    }
    const auto sheet = m_sheet->takeIn();
    if (!sheet)
        return false;
    const auto findings = m_findings->findings();
    const QString label =
        findings.empty() ? tr("Visit recorded")
                         : tr("Visit recorded with %n findings", nullptr, int(findings.size()));
    return m_session.change(label, [&](Edit &edit) {
        acts::HeldInspection held{m_asked, m_verdicts->kind(), *m_day->moment(), {}, {}};
        held.inspector_id = m_inspector->personIn(edit);
        held.seen = Seen(m_seen->currentData().toInt());
        held.report_number = toStd(m_reference->text());
        held.sheet_id = *sheet;
        held.verdicts = m_verdicts->verdicts();
        held.findings = findings;
        acts::holdInspection(edit, held);
    });
}

} // namespace lastrivet::ui
