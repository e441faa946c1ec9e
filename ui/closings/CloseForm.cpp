// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/CloseForm.h"

#include "core/project/acts/ClosingUp.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/MomentLine.h"
#include "ui/widgets/PersonBox.h"

#include <QCheckBox>
#include <QLineEdit>

namespace lastrivet::ui {

CloseForm::CloseForm(Session &session, QWidget *parent)
    : ActForm({}, parent)
    , m_session(session)
    , m_on(new MomentLine(this))
    , m_about(new QCheckBox(tr("the day is only about right"), this))
    , m_by(new PersonBox(this))
    , m_reason(new QLineEdit(this))
{
    addField(tr("On"), m_on);
    addWide(m_about);
    addField(tr("By"), m_by);
    addField(tr("Reason"), m_reason);
}

void CloseForm::start(const Closing &closing)
{
    const auto records = m_session.records();
    m_closing = closing.id;
    m_on->setMoment(m_session.today());
    m_about->setChecked(false);
    m_by->offer(*records, SignerRole::Builder, records->project.builder_id);
    m_reason->clear();
    m_reason->setPlaceholderText(isReasonNeeded() ? tr("needed") : tr("only if there is one"));
    m_on->setFocus();
    m_on->selectAll();
}

void CloseForm::startClosing(const Closing &closing)
{
    m_isReopening = false;
    start(closing);
    setDoWords(tr("Record the closing"));
    setTitle(isReasonNeeded()
                 ? tr("Something on record stands against closing “%1”. If it was closed all the "
                      "same, the record says so, with your reason, until an inspector accepts it.")
                       .arg(toQt(closing.title))
                 : tr("“%1” was closed. Nothing on record stood against it; only the look inside "
                      "told whether the work is right.")
                       .arg(toQt(closing.title)));
    hint({});
}

void CloseForm::startReopening(const Closing &closing)
{
    m_isReopening = true;
    start(closing);
    setDoWords(tr("Record the opening"));
    setTitle(tr("“%1” was opened again. Signatures given before that count as outdated.")
                 .arg(toQt(closing.title)));
    hint({});
}

bool CloseForm::isReasonNeeded() const
{
    if (m_isReopening)
        return true;
    const auto *answer = m_session.answer()->closing(m_closing);
    return !answer || answer->state != readiness::State::Clear;
}

bool CloseForm::perform()
{
    if (!m_on->moment() || !m_by->isFilled()) {
        hint(tr("It needs the day, and who did it."));
        return false;
    }
    const std::string reason = toStd(m_reason->text());
    if (isReasonNeeded() && reason.empty()) {
        hint(tr("It needs a reason, for whoever reads this later."));
        m_reason->setFocus();
        return false;
    }
    const QString title = toQt(m_session.records()->find(m_closing)->title);
    const QString label = (m_isReopening ? tr("%1 opened again") : tr("%1 closed")).arg(title);
    return m_session.change(label, [&](Edit &edit) {
        const acts::Act act{*m_on->moment(), m_by->personIn(edit), reason, m_about->isChecked()};
        if (m_isReopening)
            acts::reopen(edit, m_closing, act);
        else
            acts::close(edit, m_closing, act);
    });
}

} // namespace lastrivet::ui
