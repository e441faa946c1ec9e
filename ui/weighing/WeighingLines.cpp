// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/balance/Written.h"
#include "ui/convert/NumberText.h"
#include "ui/convert/QtText.h"
#include "ui/weighing/LinesEditor.h"
#include "ui/weighing/RecordChange.h"
#include "ui/weighing/WeighingPanel.h"
#include "ui/weighing/WeightText.h"

// The scales and corrections of a weighing, as they are typed.
namespace lastrivet::ui {

namespace {

enum ScaleColumn { PointColumn, ReadingColumn, TareColumn, NetColumn, ScaleArmColumn, ToolColumn };
enum CorrectionColumn { WhatColumn, WeightColumn, ArmColumn, MomentColumn };

const Tool *toolCalled(const Records &records, const QString &name)
{
    for (const Tool &tool : records.tools) {
        if (!tool.withdrawn_on && toQt(tool.name).compare(name, Qt::CaseInsensitive) == 0)
            return &tool;
    }
    return nullptr;
}

} // namespace

std::vector<LinesColumn> WeighingPanel::scaleColumns()
{
    return {{{}, false},      {{}, true, false, true}, {{}, true},
            {{}, true, true}, {{}, true, false, true}, {{}, false}};
}

std::vector<LinesColumn> WeighingPanel::correctionColumns()
{
    return {{{}, false}, {{}, true, false, true}, {{}, true, false, true}, {{}, true, true}};
}

void WeighingPanel::connectLines()
{
    using Cells = LinesModel::Cells;
    m_scales->setKeep([this](int row, const Cells &cells, bool isWhole) {
        return change(
            [&](Weighing &weighing) {
                return LinesModel::typeAll(cells, [&](int column, const QString &text) {
                    return typeScale(weighing, row, column, text);
                });
            },
            isWhole);
    });
    m_corrections->setKeep([this](int row, const Cells &cells, bool isWhole) {
        return change(
            [&](Weighing &weighing) {
                return LinesModel::typeAll(cells, [&](int column, const QString &text) {
                    return typeCorrection(weighing, row, column, text);
                });
            },
            isWhole);
    });
    connectLinesTakenOut();
    for (LinesEditor *lines : {m_scales, m_corrections}) {
        connect(lines, &LinesEditor::recordWanted, this,
                [this](std::int64_t id) { show(Id<Weighing>{id}); });
        connect(lines, &LinesEditor::begunChanged, this, [this] {
            if (const Weighing *weighing = shown())
                showResult(*weighing);
        });
    }
}

void WeighingPanel::connectLinesTakenOut()
{
    connect(m_scales, &LinesEditor::removeWanted, this, [this](int row) {
        change([row](Weighing &weighing) {
            weighing.scale_readings.erase(weighing.scale_readings.begin() + row);
            return QString();
        });
    });
    connect(m_corrections, &LinesEditor::removeWanted, this, [this](int row) {
        change([row](Weighing &weighing) {
            weighing.corrections.erase(weighing.corrections.begin() + row);
            return QString();
        });
    });
}

Session::Outcome WeighingPanel::change(const std::function<QString(Weighing &)> &body, bool isKept)
{
    const Weighing *known = shown();
    if (!known)
        return Session::Outcome::AgainstRules;
    const auto outcome = changeRecord(m_session, *known, body, isKept, tr("Weighing changed"));
    refresh();
    return outcome;
}

QString WeighingPanel::typeScale(Weighing &weighing, int row, int column, const QString &text) const
{
    auto &scales = weighing.scale_readings;
    if (std::size_t(row) >= scales.size())
        scales.push_back({toStd(tr("point %1").arg(row + 1)), 0, 0, 0, {}});
    auto &scale = std::size_t(row) < scales.size() ? scales[std::size_t(row)] : scales.back();
    if (column == PointColumn) {
        scale.point = toStd(text);
        return text.isEmpty() ? tr("A scale stands under something: give the point a name.")
                              : QString();
    }
    if (column == ToolColumn) {
        const Tool *tool = toolCalled(*m_session.records(), text);
        scale.tool_id = tool ? tool->id : Id<Tool>{};
        return tool || text.isEmpty() ? QString() : tr("No tool is called “%1”.").arg(text);
    }
    const auto number = column == ScaleArmColumn
                            ? readTyped(balance::readArm, text, weighing.arm_unit)
                            : readTyped(balance::readWeight, text, weighing.weight_unit);
    if (!number)
        return inWords(number.reason());
    if (column == TareColumn && *number < 0)
        return tr("A tare is not below zero: it is what lies on the scale besides the "
                  "aeroplane, and is taken off.");
    (column == ReadingColumn ? scale.reading
     : column == TareColumn  ? scale.tare
                             : scale.arm) = *number;
    return {};
}

QString WeighingPanel::typeCorrection(Weighing &weighing, int row, int column,
                                      const QString &text) const
{
    auto &all = weighing.corrections;
    if (std::size_t(row) >= all.size())
        all.push_back({toStd(tr("correction %1").arg(row + 1)), 0, 0});
    auto &correction = std::size_t(row) < all.size() ? all[std::size_t(row)] : all.back();
    if (column == WhatColumn) {
        correction.what = toStd(text);
        return text.isEmpty() ? tr("Say what is taken off or added.") : QString();
    }
    const auto number = column == ArmColumn
                            ? readTyped(balance::readArm, text, weighing.arm_unit)
                            : readTyped(balance::readWeight, text, weighing.weight_unit);
    if (!number)
        return inWords(number.reason());
    (column == ArmColumn ? correction.arm : correction.weight) = *number;
    return {};
}

void WeighingPanel::showLines(const Weighing &weighing)
{
    const auto records = m_session.records();
    std::vector<QStringList> scales;
    for (const auto &scale : weighing.scale_readings) {
        const Tool *tool = records->findLive(scale.tool_id);
        scales.push_back({toQt(scale.point), plainNumber(scale.reading), plainNumber(scale.tare),
                          plainNumber(scale.reading - scale.tare), plainNumber(scale.arm),
                          tool ? toQt(tool->name) : QString()});
    }
    std::vector<QStringList> corrections;
    for (const auto &correction : weighing.corrections)
        corrections.push_back({toQt(correction.what), plainNumber(correction.weight),
                               plainNumber(correction.arm),
                               plainNumber(correction.weight * correction.arm)});
    const auto weight = word(weighing.weight_unit);
    const auto arm = word(weighing.arm_unit);
    m_scales->setHeads({tr("Under"), headWithUnit(tr("Reading"), weight),
                        headWithUnit(tr("Tare"), weight), headWithUnit(tr("Net"), weight),
                        headWithUnit(tr("Arm"), arm), tr("Scale (tool)")});
    m_corrections->setHeads({tr("What"), headWithUnit(tr("Weight"), weight),
                             headWithUnit(tr("Arm"), arm), tr("Moment")});
    m_scales->setLines(weighing.id.value(), std::move(scales));
    m_corrections->setLines(weighing.id.value(), std::move(corrections));
}

} // namespace lastrivet::ui
