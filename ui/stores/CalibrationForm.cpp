// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stores/CalibrationForm.h"

#include "core/project/acts/StoreActs.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/MomentLine.h"
#include "ui/widgets/SheetBox.h"

namespace lastrivet::ui {

CalibrationForm::CalibrationForm(Session &session, QWidget *parent)
    : ActForm(tr("Keep the calibration"), parent)
    , m_session(session)
    , m_done(new MomentLine(session, this))
    , m_due(new MomentLine(session, this))
    , m_certificate(new SheetBox(session, this))
{
    m_certificate->setShows({});
    addField(tr("Calibrated on"), m_done);
    addField(tr("Due again on"), m_due);
    addField(tr("Certificate"), m_certificate);
    connect(m_done, &MomentLine::textChanged, this, [this] {
        if (m_due->moment() == m_proposed)
            proposeDue();
    });
    hide();
}

/// A year is what most laboratories write on their stickers; the sticker counts.
void CalibrationForm::proposeDue()
{
    if (const auto done = m_done->moment()) {
        m_proposed = toMoment(toDate(*done).addYears(1));
        m_due->setMoment(m_proposed);
    }
}

void CalibrationForm::start(Id<Tool> tool)
{
    m_tool = tool;
    setTitle(tr("%1 was calibrated").arg(toQt(m_session.records()->find(tool)->name)));
    m_done->setMoment(m_session.today());
    proposeDue();
    m_certificate->clear();
    hint({});
    show();
    noteFields();
    m_done->setFocus();
    m_done->selectAll();
}

QString CalibrationForm::whyNot() const
{
    if (const QString why = m_done->whyNotHappened(m_session.now()); !why.isEmpty())
        return why;
    if (!m_due->moment())
        return tr("Say on which day it is due again.");
    if (after(*m_done->moment(), *m_due->moment()))
        return tr("It cannot be due before it was calibrated.");
    return m_certificate->whyNot();
}

bool CalibrationForm::perform()
{
    if (const QString why = whyNot(); !why.isEmpty()) {
        hint(why);
        return false;
    }
    const Tool *tool = m_session.records()->findLive(m_tool);
    if (!tool) {
        hint(inWords(Message{"What was to be changed is not there any more.", {}}));
        return false;
    }
    const QString name = toQt(tool->name);
    return m_certificate->change(tr("%1: calibrated").arg(name), [&](Edit &edit, Id<Media> paper) {
        acts::calibrate(edit, m_tool, {m_done->moment(), m_due->moment(), paper});
    });
}

} // namespace lastrivet::ui
