// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/ReasonForm.h"

#include "core/project/acts/Signing.h"
#include "ui/closings/ClosingWords.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/PersonBox.h"
#include "ui/widgets/RecordNames.h"

#include <QLineEdit>

namespace lastrivet::ui {

ReasonForm::ReasonForm(Session &session, QWidget *parent)
    : ActForm({}, parent)
    , m_session(session)
    , m_by(new PersonBox(this))
    , m_reason(new QLineEdit(this))
{
    addField(tr("By"), m_by);
    addField(tr("Reason"), m_reason);
}

void ReasonForm::start(const QString &title, const QString &doWords, bool asksWho)
{
    setTitle(title);
    setDoWords(doWords);
    m_by->setEnabled(asksWho);
    // Undo is about what is on record from here on, not about the words of an earlier form.
    m_reason->setText({});
    hint({});
    noteFields();
    m_reason->setFocus();
}

void ReasonForm::startWithdrawing(const SignOff &signature)
{
    const auto records = m_session.records();
    m_signature = signature.id;
    m_point = {};
    m_by->offer(*records, SignerRole::Builder, records->project.builder_id);
    start(tr("The signature of %1 on %2 is wrong and counts no more. It stays in the journal.")
              .arg(personName(*records, signature.person_id), dateText(signature.signed_on)),
          tr("Withdraw it"), false);
}

void ReasonForm::startWaiving(const HoldPoint &point)
{
    const auto records = m_session.records();
    m_signature = {};
    m_point = point.id;
    // A demand of the authority's inspector is waived by an inspector, nobody below.
    const bool isInspectors = point.required && point.signer_role == SignerRole::Inspector;
    m_by->offer(*records, isInspectors ? SignerRole::Inspector : SignerRole::Builder,
                isInspectors ? Id<Person>{} : records->project.builder_id);
    start(tr("Nobody will sign for the %1.").arg(holdPointWords(point.kind)), tr("Waive it"), true);
}

bool ReasonForm::perform()
{
    const std::string reason = toStd(m_reason->text());
    const auto known = m_session.records();
    // An undo may have taken it away.
    if (m_signature ? !known->findLive(m_signature) : !known->findLive(m_point)) {
        hint(tr("What this is about is no longer on record."));
        return false;
    }
    if (const QString why = m_by->whyNot(*known); !why.isEmpty()) {
        hint(why);
        return false;
    }
    if (reason.empty()) {
        hint(tr("It needs a reason, for whoever reads this later."));
        return false;
    }
    if (m_signature)
        return m_session.change(tr("Signature withdrawn"), [&](Edit &edit) {
            acts::withdrawSignature(edit, m_signature, reason);
        });
    return m_session.change(
        tr("%1 waived").arg(holdPointName(*known, *known->find(m_point))), [&](Edit &edit) {
            acts::waive(edit, m_point, edit.today(), m_by->personIn(edit), reason);
        });
}

} // namespace lastrivet::ui
