// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/VisitForm.h"

#include "core/project/acts/ClosingUp.h"
#include "ui/closings/ClosingWords.h"
#include "ui/closings/FindingParts.h"
#include "ui/closings/FindingRows.h"
#include "ui/closings/OpenRequestNotice.h"
#include "ui/closings/PeopleNamed.h"
#include "ui/closings/SheetPreview.h"
#include "ui/closings/VerdictRows.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/MomentLine.h"
#include "ui/widgets/PersonBox.h"
#include "ui/widgets/SheetBox.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QRadioButton>
#include <QStringList>

#include <algorithm>
#include <utility>

namespace lastrivet::ui {

VisitForm::VisitForm(Session &session, QWidget *parent)
    : ActForm({}, parent)
    , m_session(session)
    , m_ask(new QRadioButton(tr("ask for it"), this))
    , m_held(new QRadioButton(tr("it was held"), this))
    , m_notice(new OpenRequestNotice(session, this))
    , m_verdicts(new VerdictRows(session, this))
    , m_inspector(new PersonBox(this))
    , m_askedOn(new MomentLine(session, this))
    , m_day(new MomentLine(session, this))
    , m_reference(new QLineEdit(this))
    , m_present(new QLineEdit(this))
    , m_seen(new QComboBox(this))
    , m_sheet(new SheetBox(session, this))
    , m_preview(new SheetPreview(this))
    , m_findings(new FindingRows(session, this))
    , m_complete(new QCheckBox(tr("nothing is left to do: the visit is complete"), this))
{
    setTitle(tr("A visit of the inspector or adviser; one visit may sign several hold points."));
    addFields();
    connectParts();
}

void VisitForm::addFields()
{
    offerSeen(*m_seen);
    m_present->setPlaceholderText(tr("names, with commas between them"));
    auto *choice = new QWidget(this);
    auto *line = new QHBoxLayout(choice);
    line->setContentsMargins(0, 0, 0, 0);
    line->addWidget(m_ask);
    line->addWidget(m_held);
    line->addStretch(1);
    addField(tr("Visit"), choice);
    addWide(m_notice);
    addField(tr("Hold points"), m_verdicts);
    addField(tr("Who comes"), m_inspector);
    addField(tr("Asked for on"), m_askedOn);
    addField(tr("Day"), m_day);
    addField(tr("Reference or number"), m_reference);
    addField(tr("Also there"), m_present);
    addField(tr("Looked at"), m_seen);
    addField(tr("Signed sheet"), m_sheet);
    addWide(m_preview);
    addField(tr("Findings"), m_findings);
    addWide(m_complete);
}

void VisitForm::connectParts()
{
    connect(m_ask, &QRadioButton::toggled, this, &VisitForm::setAsking);
    connect(m_verdicts, &VerdictRows::chosenChanged, this, &VisitForm::offerPeopleAgain);
    connect(m_verdicts, &VerdictRows::othersWanted, this, &VisitForm::showOthers);
    connect(m_sheet, &SheetBox::fileChanged, m_preview, &SheetPreview::showFile);
    connect(m_notice, &OpenRequestNotice::extendWanted, this, &VisitForm::extend);
}

/// To see what else waits begins nothing.
void VisitForm::showOthers()
{
    const bool wasBegun = isBegun();
    m_verdicts->showOthers();
    if (!wasBegun)
        noteFields();
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

void VisitForm::start(const IdSet<Closing> &closings)
{
    m_asked = {};
    m_verdicts->start(closings);
    m_asked = openRequest();
    begin(closings);
}

void VisitForm::startHolding(const Inspection &visit)
{
    IdSet<Closing> closings;
    for (const auto id : visit.hold_point_ids) {
        if (const HoldPoint *point = m_session.records()->findLive(id))
            closings.push_back(point->closing_id);
    }
    std::ranges::sort(closings);
    m_verdicts->start({}, visit.hold_point_ids);
    m_asked = visit.id;
    begin(closings);
}

void VisitForm::begin(const IdSet<Closing> &closings)
{
    m_warned.clear();
    m_toldOfClosing.clear();
    offerPeople();
    m_askedOn->setMoment(m_session.today());
    const Inspection *asked = m_session.records()->find(m_asked);
    m_reference->setText(asked ? toQt(asked->reference) : QString());
    // Undo is about what is on record from here on, not about the words of an earlier form.
    m_present->setText({});
    m_sheet->clear();
    m_complete->setChecked(false);
    m_findings->start(partsWithin(*m_session.records(), *m_session.answer(), closings));
    m_held->setChecked(bool(m_asked));
    m_ask->setChecked(!m_asked);
    m_isAsking = !m_asked;
    // No day is planned yet; held it was today, as far as anybody knows.
    m_otherDay = m_asked ? QString() : dateText(m_session.today());
    m_day->setText(m_asked ? dateText(m_session.today()) : QString());
    setAsking(!m_asked);
    hint({});
    noteFields();
    (m_asked ? m_held : m_ask)->setFocus();
    goToTop();
}

void VisitForm::setAsking(bool isAsking)
{
    m_warned.clear();
    m_verdicts->setAsking(isAsking);
    m_notice->refresh();
    if (!isAsking)
        m_notice->hide();
    for (QWidget *field : {static_cast<QWidget *>(m_seen), static_cast<QWidget *>(m_sheet),
                           static_cast<QWidget *>(m_findings), static_cast<QWidget *>(m_present)})
        setFieldVisible(field, !isAsking);
    setFieldVisible(m_askedOn, isAsking);
    m_complete->setVisible(!isAsking);
    setDoWords(isAsking ? tr("Record the request") : tr("Record the visit"));
    m_day->setPlaceholderText(isAsking ? tr("planned for, if a day is set") : tr("held on"));
    if (isAsking == m_isAsking)
        return;
    m_isAsking = isAsking;
    const QString typed = m_day->text();
    m_day->setText(m_otherDay);
    m_otherDay = typed;
}

void VisitForm::offerPeople()
{
    const auto records = m_session.records();
    const Inspection *asked = records->find(m_asked);
    const auto role = m_verdicts->role();
    m_inspector->offer(*records, role, asked ? asked->inspector_id : Id<Person>{});
    m_findings->setUsual(role == SignerRole::Adviser ? acts::Verifying::Adviser
                                                     : acts::Verifying::InspectorOnSite);
}

void VisitForm::offerPeopleAgain()
{
    const QString named = m_inspector->currentText().trimmed();
    const auto person = m_inspector->person();
    offerPeople();
    if (const int row = m_inspector->findData(qlonglong(person.value())); row >= 0) {
        m_inspector->setCurrentIndex(row);
        return;
    }
    const QString usual = m_inspector->currentText();
    m_inspector->setEditText(named);
    if (!m_inspector->whyNot(*m_session.records()).isEmpty())
        m_inspector->setEditText(usual);
}

void VisitForm::extend(Id<Inspection> visit)
{
    const auto points = m_verdicts->chosen();
    if (points.empty()) {
        hint(tr("It needs at least one hold point."));
        return;
    }
    const bool isDone =
        m_session.change(tr("%n hold points added to the visit", nullptr, int(points.size())),
                         [&](Edit &edit) { acts::extendRequest(edit, visit, points); });
    if (isDone) {
        Q_EMIT recorded(visit);
        Q_EMIT left();
    }
}

/// Says it, and lets the second press pass; true when it was the first.
bool VisitForm::warnOnce(const QString &sentence)
{
    if (m_warned == sentence)
        return false;
    m_warned = sentence;
    hint(sentence);
    return true;
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
    QString why = m_askedOn->whyNotHappened(m_session.now());
    if (why.isEmpty() && m_day->isWrong())
        why = tr("“%1” is no day.").arg(m_day->text());
    if (why.isEmpty() && m_day->moment() && after(*m_askedOn->moment(), *m_day->moment()))
        why = tr("It was asked for on %1; the day of the visit cannot lie before that.")
                  .arg(dateText(m_askedOn->moment()));
    if (why.isEmpty() && m_inspector->isFilled())
        why = m_inspector->whyNot(*m_session.records());
    if (!why.isEmpty()) {
        hint(why);
        return false;
    }
    if (m_notice->isInTheWay() &&
        warnOnce(tr("The other visit stands in the way, see above. Press again if the request was "
                    "made all the same.")))
        return false;
    Id<Inspection> id;
    const bool isDone = m_session.change(tr("Visit asked for"), [&](Edit &edit) {
        Inspection visit;
        visit.kind = m_verdicts->kind();
        visit.reference = toStd(m_reference->text());
        visit.asked_on = m_askedOn->moment();
        visit.planned_for = m_day->moment();
        if (m_inspector->isFilled())
            visit.inspector_id = m_inspector->personIn(edit);
        visit.hold_point_ids = m_verdicts->chosen();
        id = acts::askForInspection(edit, std::move(visit));
    });
    if (isDone)
        Q_EMIT recorded(id);
    return isDone;
}

QString VisitForm::whyNotHold() const
{
    const Inspection *asked = m_session.records()->findLive(m_asked);
    for (const QString &why :
         {m_day->whyNotHappened(m_session.now()), m_inspector->whyNot(*m_session.records()),
          m_sheet->whyNot(), m_findings->whyNot()}) {
        if (!why.isEmpty())
            return why;
    }
    if (asked && asked->asked_on && after(*asked->asked_on, *m_day->moment()))
        return tr("It was asked for on %1 and cannot have been held before.")
            .arg(dateText(*asked->asked_on));
    if (m_complete->isChecked() && !m_findings->findings().empty())
        return tr("A visit with findings is complete when they are corrected and verified.");
    return {};
}

/// What was said was said, also where the request is withdrawn by now: false once, to say so.
bool VisitForm::mayGoWithoutRequest()
{
    if (!m_asked || m_session.records()->findLive(m_asked))
        return true;
    if (warnOnce(tr("The visit that was asked for is no longer on record. Press again to record "
                    "what was said as a visit of its own.")))
        return false;
    m_asked = {};
    return true;
}

/// What is accepted after the closing does not count for it: false once, to say what does.
bool VisitForm::mayFollowTheClosing()
{
    const auto records = m_session.records();
    QStringList sentences;
    for (const acts::Verdict &said : m_verdicts->verdicts()) {
        const HoldPoint *point = records->find(said.hold_point_id);
        const Closing *closing = point ? records->find(point->closing_id) : nullptr;
        const auto closed = closing ? acts::closedBefore(*closing, *m_day->moment()) : std::nullopt;
        if (!closed)
            continue;
        const QString sentence =
            tr("“%1” was closed on %2, before this visit: what is signed here does not count for "
               "that closing. Press again to record it all the same; “Accepted afterwards”, beside "
               "the closing, is what does count.")
                .arg(toQt(closing->title), dateText(*closed));
        if (!sentences.contains(sentence))
            sentences << sentence;
    }
    const QString all = sentences.join(QLatin1Char('\n'));
    if (m_toldOfClosing == all)
        return true;
    m_toldOfClosing = all;
    hint(all);
    return all.isEmpty();
}

bool VisitForm::performHolding()
{
    if (const QString why = whyNotHold(); !why.isEmpty()) {
        hint(why);
        return false;
    }
    if (!mayGoWithoutRequest() || !mayFollowTheClosing())
        return false;
    const auto findings = m_findings->findings();
    const bool saysFindings =
        std::ranges::any_of(m_verdicts->verdicts(), [](const acts::Verdict &said) {
            return said.result != SignOffResult::Accepted;
        });
    if (saysFindings && findings.empty() &&
        warnOnce(tr("By the result there are findings, and none is typed. Press again to "
                    "enter them later.")))
        return false;
    if (!saysFindings && !findings.empty() &&
        warnOnce(tr("Findings are typed, and by the result everything is accepted without any. "
                    "Choose the result, or press again if the findings change nothing in it.")))
        return false;
    const QString label =
        findings.empty() ? tr("Visit recorded")
                         : tr("Visit recorded with %n findings", nullptr, int(findings.size()));
    Id<Inspection> id;
    const bool isDone = m_sheet->change(label, [&](Edit &edit, Id<Media> sheet) {
        id = acts::holdInspection(edit, typed(edit, sheet));
        if (m_complete->isChecked())
            acts::completeInspection(edit, id, *m_day->moment());
    });
    if (isDone)
        Q_EMIT recorded(id);
    return isDone;
}

acts::HeldInspection VisitForm::typed(Edit &edit, Id<Media> sheet) const
{
    acts::HeldInspection held{m_asked, m_verdicts->kind(), *m_day->moment(), {}, {}};
    held.inspector_id = m_inspector->personIn(edit);
    held.seen = Seen(m_seen->currentData().toInt());
    held.report_number = toStd(m_reference->text());
    held.sheet_id = sheet;
    held.verdicts = m_verdicts->verdicts();
    held.findings = m_findings->findings();
    held.present = peopleNamed(edit, m_present->text());
    return held;
}

} // namespace lastrivet::ui
