// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stores/ToolBoard.h"

#include "ui/parts/SectionList.h"
#include "ui/shell/Session.h"
#include "ui/stores/CalibrationForm.h"
#include "ui/stores/StoreRows.h"
#include "ui/stores/StoreSections.h"
#include "ui/widgets/Section.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTreeView>
#include <QVBoxLayout>

namespace lastrivet::ui {

ToolBoard::ToolBoard(Session &session, QWidget *parent)
    : StoreBoard(session, storeroom::toolSection(), parent)
    , m_calibrated(new QPushButton(tr("Calibrated…"), this))
    , m_calibration(new CalibrationForm(session, this))
    , m_begun(session, {m_calibration})
    , m_calibrations(new Section(session.theme(), tr("Calibrations"), tr("None on record."), this))
    , m_outside(new Section(session.theme(), tr("Used out of calibration"),
                            tr("Everything on record was done in calibration."), this))
{
    build();
    refresh();
}

void ToolBoard::build()
{
    auto *words = new QLabel(
        tr("What was torqued or measured with a tool out of calibration should be checked again."),
        this);
    words->setWordWrap(true);
    auto *line = new QHBoxLayout;
    line->addWidget(words, 1);
    line->addWidget(m_calibrated);
    head().addLayout(line);
    aside().addWidget(m_calibration);
    aside().addWidget(m_calibrations);
    aside().addWidget(m_outside);
    list().setWhenEmpty(tr("No tool on record. Those that measure or torque belong here, with the "
                           "day on which their calibration runs out."));
    connect(m_calibrated, &QPushButton::clicked, this, &ToolBoard::startCalibration);
    connect(m_calibration, &ActForm::left, this, [this] {
        m_calibration->hide();
        list().view().setFocus();
    });
    connect(m_calibration, &ActForm::wanted, this, [this] {
        showRecord({RecordType::Tool, m_begun.record()});
    });
    for (Section *section : {m_calibrations, m_outside})
        connect(section, &Section::chosen, this,
                [this](RecordRef record) { this->session().goTo(record); });
}

void ToolBoard::startCalibration()
{
    const std::int64_t tool = list().current().id;
    if (tool != 0 && !session().isReadOnly() && m_begun.mayStart(tool, {tool}))
        m_calibration->start(Id<Tool>{tool});
}

void ToolBoard::refresh()
{
    const Id<Tool> tool{list().current().id};
    const bool isChosen = bool(tool);
    // An undo may have taken away what is being written about.
    if (m_begun.record() != 0 && !session().records()->findLive(Id<Tool>{m_begun.record()}))
        m_begun.drop();
    m_begun.show(tool.value());
    m_calibrated->setEnabled(isChosen && !session().isReadOnly());
    m_calibrations->setVisible(isChosen);
    m_outside->setVisible(isChosen);
    m_calibrations->setRows(calibrationRows(session(), tool));
    m_outside->setRows(outsideRows(session(), tool));
}

} // namespace lastrivet::ui
