// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/SignOffForm.h"

#include "core/project/acts/ClosingUp.h"
#include "core/project/acts/Signing.h"
#include "core/readiness/SignOffs.h"
#include "ui/closings/ClosingWords.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/MomentLine.h"
#include "ui/widgets/PersonBox.h"
#include "ui/widgets/SheetBox.h"

#include <QComboBox>
#include <QLineEdit>

#include <optional>

namespace lastrivet::ui {

SignOffForm::SignOffForm(Session &session, QWidget *parent)
    : ActForm(tr("Record the signature"), parent)
    , m_session(session)
    , m_person(new PersonBox(this))
    , m_credential(new QLineEdit(this))
    , m_signedOn(new MomentLine(session, this))
    , m_result(new QComboBox(this))
    , m_seen(new QComboBox(this))
    , m_remarks(new QLineEdit(this))
    , m_sheet(new SheetBox(session, this))
{
    offerResults(*m_result);
    offerSeen(*m_seen);
    addField(tr("Signed by"), m_person);
    addField(tr("Credential"), m_credential);
    addField(tr("On"), m_signedOn);
    addField(tr("Result"), m_result);
    addField(tr("Looked at"), m_seen);
    addField(tr("Remarks"), m_remarks);
    addField(tr("Signed sheet"), m_sheet);
    connect(m_person, &QComboBox::currentTextChanged, this, &SignOffForm::fillCredential);
    // The next person may have the same name.
    connect(m_person, &QComboBox::currentIndexChanged, this, &SignOffForm::fillCredential);
}

void SignOffForm::start(SignerRole role)
{
    const auto records = m_session.records();
    const auto preferred = role == SignerRole::Builder ? records->project.builder_id : Id<Person>{};
    m_person->offer(*records, role, preferred);
    m_credential->setText({});
    fillCredential();
    m_signedOn->setMoment(m_session.today());
    m_result->setCurrentIndex(0);
    m_seen->setCurrentIndex(0);
    // Undo is about what is on record from here on, not about the words of an earlier form.
    m_remarks->setText({});
    m_sheet->clear();
    hint({});
    noteFields();
    m_person->setFocus();
    m_person->lineEdit()->selectAll();
}

void SignOffForm::startFor(const HoldPoint &point)
{
    m_point = point.id;
    m_late = {};
    setTitle(tr("Signature for the %1").arg(holdPointWords(point.kind)));
    start(point.signer_role);
    const Closing *closing = m_session.records()->find(point.closing_id);
    if (!closing || !acts::isClosed(*closing, m_session.now()))
        return;
    // It was signed before the closing, on a day that only whoever enters it knows.
    m_signedOn->setMoment(std::nullopt);
    noteFields();
}

void SignOffForm::startAnswer(const HoldPoint &point)
{
    startFor(point);
    setTitle(tr("Answer to what changed since the signature: %1").arg(holdPointWords(point.kind)));
    m_seen->setCurrentIndex(m_seen->findData(int(Seen::ByMessage)));
    const auto *before = readiness::latestSignOff(*m_session.records(), point.id, m_session.now());
    const int row = before ? m_person->findData(qlonglong(before->person_id.value())) : -1;
    if (row >= 0)
        m_person->setCurrentIndex(row);
    noteFields();
}

void SignOffForm::startLateAcceptance(const Closing &closing)
{
    m_point = {};
    m_late = closing.id;
    setTitle(tr("Accepted afterwards: %1").arg(toQt(closing.title)));
    const auto allowed = m_session.project().profile().late_acceptance_by;
    start(allowed.contains(SignerRole::Builder)   ? SignerRole::Builder
          : allowed.contains(SignerRole::Adviser) ? SignerRole::Adviser
                                                  : SignerRole::Inspector);
}

void SignOffForm::fillCredential()
{
    if (const Person *person = m_session.records()->find(m_person->person()))
        m_credential->setText(toQt(person->credential));
    else if (!m_credential->isModified())
        // It was that of somebody else.
        m_credential->setText({});
}

SignOff SignOffForm::typed(Id<Person> person, Id<Media> sheet) const
{
    SignOff signature;
    signature.hold_point_id = m_point;
    signature.person_id = person;
    signature.credential = toStd(m_credential->text());
    signature.signed_on = m_signedOn->moment();
    signature.result = SignOffResult(m_result->currentData().toInt());
    signature.seen = Seen(m_seen->currentData().toInt());
    signature.remarks = toStd(m_remarks->text());
    signature.scan_id = sheet;
    return signature;
}

QString SignOffForm::whyNot() const
{
    const auto records = m_session.records();
    // An undo may have taken away what is being signed.
    if (m_point ? !records->findLive(m_point) : !records->findLive(m_late))
        return tr("What was to be signed is no longer on record.");
    for (const QString &why : {m_person->whyNot(*records),
                               m_signedOn->whyNotHappened(m_session.now()), m_sheet->whyNot()}) {
        if (!why.isEmpty())
            return why;
    }
    return m_point ? whyTooLate() : whyTooEarly();
}

/// What is signed for a region that is closed by then is no look inside.
QString SignOffForm::whyTooLate() const
{
    const auto records = m_session.records();
    const Closing *closing = records->findLive(records->findLive(m_point)->closing_id);
    if (!closing || !acts::isClosed(*closing, m_session.now()))
        return {};
    const auto closed = acts::closedBefore(*closing, *m_signedOn->moment());
    return closed ? tr("“%1” was closed on %2. What was signed after that does not count for it; "
                       "“Accepted afterwards”, beside the closing, is what does.")
                        .arg(toQt(closing->title), dateText(*closed))
                  : QString();
}

QString SignOffForm::whyTooEarly() const
{
    const auto records = m_session.records();
    const Closing &closing = *records->findLive(m_late);
    const auto closed = acts::lastClosed(closing);
    return closed && after(*closed, *m_signedOn->moment())
               ? tr("“%1” was closed on %2: what accepts it afterwards is not of a day before "
                    "that.")
                     .arg(toQt(closing.title), dateText(*closed))
               : QString();
}

/// What the change is called in the journal.
QString SignOffForm::label() const
{
    const auto records = m_session.records();
    if (const HoldPoint *point = records->find(m_point))
        return tr("%1 signed").arg(holdPointName(*records, *point));
    const QString title = toQt(records->find(m_late)->title);
    return SignOffResult(m_result->currentData().toInt()) == SignOffResult::Rejected
               ? tr("%1 not accepted afterwards").arg(title)
               : tr("%1 accepted afterwards").arg(title);
}

bool SignOffForm::perform()
{
    if (const QString why = whyNot(); !why.isEmpty()) {
        hint(why);
        return false;
    }
    return m_sheet->change(label(), [&](Edit &edit, Id<Media> sheet) {
        const SignOff signature = typed(m_person->personIn(edit), sheet);
        if (m_point)
            acts::sign(edit, signature);
        else
            acts::acceptLate(edit, m_late, signature);
    });
}

} // namespace lastrivet::ui
