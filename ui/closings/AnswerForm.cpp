// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/AnswerForm.h"

#include "core/project/acts/PhotoActs.h"
#include "core/project/acts/SquawkActs.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/MomentLine.h"
#include "ui/widgets/PersonBox.h"
#include "ui/widgets/SheetBox.h"

#include <QLineEdit>

namespace lastrivet::ui {

AnswerForm::AnswerForm(Session &session, QWidget *parent)
    : ActForm({}, parent)
    , m_session(session)
    , m_correction(new QLineEdit(this))
    , m_on(new MomentLine(session, this))
    , m_by(new PersonBox(this))
    , m_picture(new SheetBox(session, this))
{
    m_picture->setShows({Shows::Repair});
    m_correction->setPlaceholderText(tr("what was done about it"));
    addField(tr("Correction"), m_correction);
    addField(tr("On"), m_on);
    addField(tr("By"), m_by);
    addField(tr("Picture of it now"), m_picture);
}

void AnswerForm::start(const Squawk &finding, bool isVerifying)
{
    const auto records = m_session.records();
    m_finding = finding.id;
    m_isVerifying = isVerifying;
    setFieldVisible(m_correction, !isVerifying);
    setFieldVisible(m_picture, !isVerifying);
    m_correction->setText(
        toQt(finding.correction.empty() ? finding.repair_plan : finding.correction));
    m_on->setMoment(m_session.today());
    m_picture->clear();
    const auto role =
        isVerifying ? finding.verify_by.value_or(SignerRole::Builder) : SignerRole::Builder;
    const Inspection *visit = records->find(finding.inspection_id);
    m_by->offer(*records, role,
                isVerifying && visit ? visit->inspector_id : records->project.builder_id);
    hint({});
    noteFields();
}

void AnswerForm::startCorrecting(const Squawk &finding)
{
    setTitle(tr("Corrected: %1").arg(toQt(finding.title)));
    setDoWords(tr("Record the correction"));
    start(finding, false);
    m_correction->setFocus();
}

void AnswerForm::startVerifying(const Squawk &finding)
{
    setTitle(tr("Verified: %1. Correction: %2").arg(toQt(finding.title), toQt(finding.correction)));
    setDoWords(tr("Record the verification"));
    start(finding, true);
    m_by->setFocus();
    m_by->lineEdit()->selectAll();
}

bool AnswerForm::perform()
{
    const auto records = m_session.records();
    const Squawk *finding = records->findLive(m_finding);
    if (!finding) {
        hint(tr("This finding is no longer on record."));
        return false;
    }
    for (const QString &why :
         {m_on->whyNotHappened(m_session.now()), m_by->whyNot(*records), m_picture->whyNot()}) {
        if (!why.isEmpty()) {
            hint(why);
            return false;
        }
    }
    return m_isVerifying ? verify(*finding) : correct(*finding);
}

bool AnswerForm::correct(const Squawk &finding)
{
    const std::string correction = toStd(m_correction->text());
    if (correction.empty()) {
        hint(tr("It needs a word about what was done."));
        m_correction->setFocus();
        return false;
    }
    const auto id = finding.id;
    const QString label = tr("Squawk %1 corrected").arg(toQt(finding.number));
    return m_picture->change(label, [&](Edit &edit, Id<Media> picture) {
        acts::fixSquawk(edit, id, correction, *m_on->moment(), m_by->personIn(edit));
        if (picture)
            acts::linkMedia(edit, picture, {RecordType::Squawk, id.value()});
    });
}

bool AnswerForm::verify(const Squawk &finding)
{
    if (!finding.fixed_on) {
        hint(tr("This finding is no longer on record as corrected."));
        return false;
    }
    if (after(*finding.fixed_on, *m_on->moment())) {
        hint(tr("It was corrected on %1; nobody can have verified it before.")
                 .arg(dateText(*finding.fixed_on)));
        return false;
    }
    return m_session.change(tr("Squawk %1 verified").arg(toQt(finding.number)), [&](Edit &edit) {
        acts::verifySquawk(edit, finding.id, *m_on->moment(), m_by->personIn(edit));
    });
}

} // namespace lastrivet::ui
