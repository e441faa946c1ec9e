// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/CloseForm.h"

#include "core/project/acts/ClosingUp.h"
#include "core/project/acts/PhotoActs.h"
#include "core/readiness/IfClosed.h"
#include "core/readiness/IfReopened.h"
#include "core/readiness/Names.h"
#include "core/readiness/Sentences.h"
#include "ui/closings/ClosingWords.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Marks.h"
#include "ui/widgets/MomentLine.h"
#include "ui/widgets/PersonBox.h"
#include "ui/widgets/RecordNames.h"
#include "ui/widgets/SheetBox.h"

#include <QCheckBox>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QStringList>

namespace lastrivet::ui {

CloseForm::CloseForm(Session &session, QWidget *parent)
    : ActForm({}, parent)
    , m_session(session)
    , m_on(new MomentLine(session, this))
    , m_about(new QCheckBox(tr("the day is only about right"), this))
    , m_by(new PersonBox(this))
    , m_reason(new QLineEdit(this))
    , m_picture(new SheetBox(session, this))
    , m_effect(new QLabel(this))
{
    m_picture->setShows({});
    m_effect->setWordWrap(true);
    m_effect->setTextFormat(Qt::PlainText);
    addWide(m_effect);
    addField(tr("On"), m_on);
    addWide(m_about);
    addField(tr("By"), m_by);
    addField(tr("Reason"), m_reason);
    addField(tr("Photo"), m_picture);
    connect(m_on, &QLineEdit::editingFinished, this, &CloseForm::tellWhatStands);
}

void CloseForm::start(const Closing &closing)
{
    const auto records = m_session.records();
    m_closing = closing.id;
    m_toldFor.reset();
    m_on->setMoment(m_session.today());
    m_about->setChecked(false);
    m_by->offer(*records, SignerRole::Builder, records->project.builder_id);
    m_picture->clear();
    // Undo is about what is on record from here on, not about the words of an earlier form.
    m_reason->setText({});
    m_reason->setPlaceholderText(tr("needed"));
    noteFields();
    m_on->setFocus();
    m_on->selectAll();
}

void CloseForm::startClosing(const Closing &closing)
{
    m_isReopening = false;
    start(closing);
    setDoWords(tr("Record the closing"));
    tellWhatStands();
    hint({});
}

/// What is on record by now may not have been on the day that is typed, and what was signed after
/// an opening holds.
void CloseForm::tellWhatStands()
{
    const auto records = m_session.records();
    const Closing *closing = records->findLive(m_closing);
    const auto on = m_on->moment();
    if (!closing || acts::isClosed(*closing, m_session.now()) != m_isReopening ||
        (m_toldFor && m_toldFor == on))
        return;
    m_toldFor = on;
    if (m_isReopening) {
        m_effect->setText(whatOpeningDoes(*closing));
        return;
    }
    const auto then = ifClosedThen();
    const bool isNeeded = isReasonNeeded(then);
    setTitle(isNeeded
                 ? tr("Something on record stands against closing “%1”. If it was closed all the "
                      "same, the record says so, with your reason, until an inspector accepts it.")
                       .arg(toQt(closing->title))
                 : tr("“%1” was closed. Nothing on record stood against it; only the look inside "
                      "told whether the work is right.")
                       .arg(toQt(closing->title)));
    m_reason->setPlaceholderText(isNeeded ? tr("needed") : tr("only if there is one"));
    const QString stood = then ? whatStood(*then) : QString();
    m_effect->setText(stood);
    m_effect->setVisible(!stood.isEmpty());
}

/// How it would stand as closed on the day that is typed; nothing for today, as which the answer
/// is.
std::optional<readiness::ClosingAnswer> CloseForm::ifClosedThen() const
{
    const auto records = m_session.records();
    const Closing *closing = records->findLive(m_closing);
    const auto on = m_on->moment();
    if (!closing || closing->made_by == MadeBy::Factory || !on || *on == m_session.today() ||
        !happened(on, m_session.now()))
        return std::nullopt;
    return readiness::ifClosed(*records, m_session.project().profile(), m_closing, *on,
                               m_session.today());
}

/// Nobody reads hundreds, and the fields below them would be out of sight.
QStringList CloseForm::firstFew(QStringList lines)
{
    constexpr qsizetype most = 5;
    const qsizetype more = lines.size() - most;
    // A line that says that there is one more could say which.
    if (more > 1)
        lines = lines.first(most) + QStringList{tr("… and %1 more.").arg(QLocale().toString(more))};
    return lines;
}

QString CloseForm::whatStood(const readiness::ClosingAnswer &then) const
{
    if (then.state == readiness::State::Closed)
        return {};
    const auto records = m_session.records();
    QStringList lines;
    for (const readiness::Blocker &blocker : then.blockers) {
        if (blocker.weight == readiness::Weight::Must)
            lines << inWords(readiness::sentence(blocker, *records));
    }
    return firstFew(lines).join(QLatin1Char('\n'));
}

void CloseForm::startReopening(const Closing &closing)
{
    m_isReopening = true;
    start(closing);
    setDoWords(tr("Record the opening"));
    setTitle(tr("“%1” was opened again.").arg(toQt(closing.title)));
    tellWhatStands();
    m_effect->show();
    hint({});
}

/// A line for each signature that goes, its own first, and each closing that stands otherwise.
QString CloseForm::whatOpeningDoes(const Closing &closing) const
{
    const auto records = m_session.records();
    const auto typed = m_on->moment();
    const Moment on = typed && happened(typed, m_session.now()) ? *typed : m_session.today();
    const auto effect = readiness::ifReopened(*records, m_session.project().profile(), closing.id,
                                              on, m_session.today());
    QStringList own;
    QStringList around;
    for (const auto &gone : effect.signatures) {
        const SignOff &signature = *records->find(gone.sign_off);
        const HoldPoint &point = *records->find(gone.hold_point);
        (point.closing_id == closing.id ? own : around)
            << tr("No longer holds: %1, signed by %2 on %3.")
                   .arg(holdPointName(*records, point), personName(*records, signature.person_id),
                        dateText(signature.signed_on));
    }
    QStringList changes;
    for (const auto &change : effect.changes) {
        if (change.closing != closing.id)
            changes << tr("“%1” then: %2 (now: %3).")
                           .arg(toQt(records->find(change.closing)->title),
                                stateWords(change.after, true), stateWords(change.before, true));
    }
    QStringList reachable;
    for (const auto record : effect.reachable)
        reachable
            << tr("Can be reached again: %1.").arg(inWords(readiness::named(*records, record)));
    const QStringList lines = firstFew(own + around) + firstFew(changes) + firstFew(reachable);
    if (lines.isEmpty())
        return tr("No signature and no other closing depends on its being closed.");
    return lines.join(QLatin1Char('\n'));
}

bool CloseForm::isReasonNeeded(const std::optional<readiness::ClosingAnswer> &then) const
{
    if (m_isReopening)
        return true;
    if (then)
        return then->state != readiness::State::Closed;
    const auto *answer = m_session.answer()->closing(m_closing);
    return !answer || answer->state != readiness::State::Clear;
}

QString CloseForm::whyNot() const
{
    for (const QString &why : {m_on->whyNotHappened(m_session.now()),
                               m_by->whyNot(*m_session.records()), m_picture->whyNot()}) {
        if (!why.isEmpty())
            return why;
    }
    return {};
}

bool CloseForm::isReasonMissing() const
{
    return m_reason->text().trimmed().isEmpty() && isReasonNeeded(ifClosedThen());
}

bool CloseForm::perform()
{
    if (const QString why = whyNot(); !why.isEmpty()) {
        hint(why);
        return false;
    }
    if (isReasonMissing()) {
        m_toldFor.reset();
        tellWhatStands();
        hint(tr("It needs a reason, for whoever reads this later."));
        m_reason->setFocus();
        return false;
    }
    const std::string reason = toStd(m_reason->text());
    const QString title = toQt(m_session.records()->find(m_closing)->title);
    const QString label = (m_isReopening ? tr("%1 opened again") : tr("%1 closed")).arg(title);
    return m_picture->change(label, [&](Edit &edit, Id<Media> picture) {
        const acts::Act act{*m_on->moment(), m_by->personIn(edit), reason, m_about->isChecked()};
        if (m_isReopening)
            acts::reopen(edit, m_closing, act);
        else
            acts::close(edit, m_closing, act);
        if (picture)
            acts::linkMedia(edit, picture, {RecordType::Closing, m_closing.value()});
    });
}

} // namespace lastrivet::ui
