// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/weighing/WeighingPanel.h"

#include "core/balance/Written.h"
#include "ui/convert/NumberText.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/weighing/LinesEditor.h"
#include "ui/weighing/WeightTables.h"
#include "ui/weighing/WeightText.h"
#include "ui/widgets/ActLine.h"
#include "ui/widgets/EmptyPlace.h"
#include "ui/widgets/Flow.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/RecordForm.h"
#include "ui/widgets/RowListView.h"
#include "ui/widgets/WithdrawAct.h"
#include "ui/workshop/FigureView.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QTableView>
#include <QVBoxLayout>

namespace lastrivet::ui {

namespace {

constexpr int leftWidth = 340;

enum ScaleColumn { PointColumn, ReadingColumn, TareColumn, NetColumn, ScaleArmColumn, ToolColumn };
enum CorrectionColumn { WhatColumn, WeightColumn, ArmColumn, MomentColumn };

std::vector<LinesColumn> scaleColumns()
{
    return {{{}, false}, {{}, true}, {{}, true}, {{}, true, true}, {{}, true}, {{}, false}};
}

std::vector<LinesColumn> correctionColumns()
{
    return {{{}, false}, {{}, true}, {{}, true}, {{}, true, true}};
}

const Tool *toolCalled(const Records &records, const QString &name)
{
    for (const Tool &tool : records.tools) {
        if (!tool.withdrawn_on && toQt(tool.name).compare(name, Qt::CaseInsensitive) == 0)
            return &tool;
    }
    return nullptr;
}

} // namespace

WeighingPanel::WeighingPanel(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_list(new RowListView(session.theme(), tr("Weighings"), this))
    , m_new(new QPushButton(tr("New weighing"), this))
    , m_withdraw(new QPushButton(tr("Withdraw…"), this))
    , m_form(new RecordForm(session, RecordType::Weighing,
                            {{"weighed_on"},
                             {"place"},
                             {"weight_unit"},
                             {"arm_unit"},
                             {"datum"},
                             {"level"},
                             {"fuel_state"},
                             {"oil_state"},
                             {"equipment_note", true},
                             {"note", true}},
                            this))
    , m_ask(new ActLine(session, this))
    , m_empty(new EmptyPlace(tr("Scale readings with tare and arm come to the empty weight and its "
                                "centre of gravity. Weigh indoors and level, with scales whose "
                                "calibration holds."),
                             this))
    , m_leftArea(new QScrollArea(this))
    , m_rightArea(new QScrollArea(this))
    , m_scales(new LinesEditor(tr("Scales"), scaleColumns(), this))
    , m_corrections(new LinesEditor(tr("Taken off and added"), correctionColumns(), this))
    , m_sum(new QLabel(this))
    , m_since(new QLabel(this))
    , m_changes(new FigureView(this))
{
    m_empty->setAction(tr("Write the first weighing down"));
    m_form->setHappened({"weighed_on"});
    auto *layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(16);
    layout->addWidget(m_empty, 1);
    layout->addWidget(m_leftArea, 1);
    layout->addWidget(m_rightArea, 1);
    for (QScrollArea *area : {m_leftArea, m_rightArea}) {
        area->setWidgetResizable(true);
        area->setFocusPolicy(Qt::NoFocus);
    }
    buildLeft();
    buildRight();
    connect(m_empty, &EmptyPlace::acted, this, &WeighingPanel::startNew);
    connect(m_new, &QPushButton::clicked, this, &WeighingPanel::startNew);
    connect(m_ask, &ActLine::wanted, this, [this] { show(Id<Weighing>{m_ask->aboutId()}); });
    connect(m_withdraw, &QPushButton::clicked, this, [this] {
        askToWithdraw(m_session, *m_ask, RecordRef{RecordType::Weighing, m_shown.value()});
    });
    connect(m_list, &RowListView::chosen, this,
            [this](RecordRef record) { show(Id<Weighing>{record.id}); });
    connectLines();
    m_ask->hide();
}

void WeighingPanel::buildLeft()
{
    auto *left = new QWidget(m_leftArea);
    auto *buttons = new QWidget(left);
    auto *flow = new Flow(buttons);
    m_withdraw->setProperty("flat", true);
    flow->addWidget(m_new);
    flow->addWidget(m_withdraw);
    auto *layout = new QVBoxLayout(left);
    layout->setContentsMargins(0, 0, 8, 0);
    layout->addWidget(m_list);
    layout->addWidget(buttons);
    layout->addWidget(m_ask);
    layout->addWidget(m_form);
    layout->addStretch(1);
    m_leftArea->setWidget(left);
    m_leftArea->setMaximumWidth(leftWidth);
}

void WeighingPanel::buildRight()
{
    auto *right = new QWidget(m_rightArea);
    m_sum->setFont(m_session.theme().font(1));
    m_sum->setWordWrap(true);
    m_since->setWordWrap(true);
    auto *layout = new QVBoxLayout(right);
    layout->setContentsMargins(0, 0, 8, 0);
    layout->setSpacing(8);
    layout->addWidget(m_sum);
    layout->addWidget(m_scales);
    layout->addWidget(m_corrections);
    layout->addWidget(heading(tr("What has changed the weight"), right));
    layout->addWidget(m_since);
    layout->addWidget(m_changes);
    layout->addStretch(1);
    m_rightArea->setWidget(right);
}

void WeighingPanel::connectLines()
{
    connect(m_scales, &LinesEditor::typed, this, &WeighingPanel::typeScale);
    connect(m_corrections, &LinesEditor::typed, this, &WeighingPanel::typeCorrection);
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

const Weighing *WeighingPanel::shown() const
{
    return m_session.records()->findLive(m_shown);
}

void WeighingPanel::change(const std::function<QString(Weighing &)> &body)
{
    const Weighing *known = shown();
    if (!known)
        return;
    Weighing changed = *known;
    const QString why = body(changed);
    if (!why.isEmpty())
        m_session.complain(why);
    else
        m_session.change(tr("Weighing changed"), [&](Edit &edit) { edit.put(changed); });
    refresh();
}

void WeighingPanel::typeScale(int row, int column, const QString &text)
{
    change([&](Weighing &weighing) -> QString {
        if (std::size_t(row) >= weighing.scale_readings.size())
            weighing.scale_readings.push_back({toStd(tr("point %1").arg(row + 1)), 0, 0, 0, {}});
        auto &scale = weighing.scale_readings[std::size_t(row)];
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
                                ? balance::readArm(withPoint(text), weighing.arm_unit)
                                : balance::readWeight(withPoint(text), weighing.weight_unit);
        if (!number)
            return inWords(number.reason());
        if (column == TareColumn && *number < 0)
            return tr("A tare is not below zero: it is what lies on the scale besides the "
                      "aeroplane, and is taken off.");
        (column == ReadingColumn ? scale.reading
         : column == TareColumn  ? scale.tare
                                 : scale.arm) = *number;
        return {};
    });
}

void WeighingPanel::typeCorrection(int row, int column, const QString &text)
{
    change([&](Weighing &weighing) -> QString {
        if (std::size_t(row) >= weighing.corrections.size())
            weighing.corrections.push_back({toStd(tr("correction %1").arg(row + 1)), 0, 0});
        auto &correction = weighing.corrections[std::size_t(row)];
        if (column == WhatColumn) {
            correction.what = toStd(text);
            return text.isEmpty() ? tr("Say what is taken off or added.") : QString();
        }
        const auto number = column == ArmColumn
                                ? balance::readArm(withPoint(text), weighing.arm_unit)
                                : balance::readWeight(withPoint(text), weighing.weight_unit);
        if (!number)
            return inWords(number.reason());
        (column == ArmColumn ? correction.arm : correction.weight) = *number;
        return {};
    });
}

void WeighingPanel::choose(Id<Weighing> weighing)
{
    // A question is about the record that it was asked about.
    m_ask->follow({{RecordType::Weighing, weighing.value()}});
    m_shown = weighing;
}

void WeighingPanel::show(Id<Weighing> weighing)
{
    if (weighing)
        choose(weighing);
    refresh();
}

void WeighingPanel::startNew()
{
    if (m_session.isReadOnly())
        return;
    Id<Weighing> made;
    const bool isDone = m_session.change(tr("Weighing written down"), [&](Edit &edit) {
        Weighing weighing;
        weighing.weighed_on = edit.today();
        weighing.weight_unit = m_report.units.weight;
        weighing.arm_unit = m_report.units.arm;
        made = edit.put(weighing);
    });
    if (!isDone)
        return;
    show(made);
    m_form->edit("place");
}

void WeighingPanel::apply(const ChangeNotice &notice)
{
    m_form->apply(notice);
}

void WeighingPanel::setReport(const packet::WeightReport &report)
{
    m_report = report;
    if (!shown() && report.weighing)
        choose(report.weighing->id);
    refresh();
}

void WeighingPanel::showList()
{
    std::vector<ListRow> rows;
    for (const Weighing &weighing : m_session.records()->weighings) {
        if (weighing.withdrawn_on)
            continue;
        ListRow row{{RecordType::Weighing, weighing.id.value()}, dateText(weighing.weighed_on)};
        row.detail = toQt(weighing.place);
        if (const auto empty = balance::weighed(weighing))
            row.figure = weightText(empty->sum.weight, weighing.weight_unit);
        rows.insert(rows.begin(), row);
    }
    m_list->setVisible(rows.size() > 1);
    m_list->setRows(std::move(rows));
}

void WeighingPanel::refresh()
{
    m_form->show(shown() ? m_shown.value() : 0);
    // Only now: the form keeps what was being typed, which makes other records of these.
    const auto records = m_session.records();
    const Weighing *weighing = records->findLive(m_shown);
    const bool isOpen = !m_session.isReadOnly();
    m_empty->findChild<QPushButton *>()->setEnabled(isOpen);
    m_empty->setVisible(!weighing);
    m_leftArea->setVisible(weighing);
    m_rightArea->setVisible(weighing);
    showList();
    if (!weighing)
        return;
    for (LinesEditor *lines : {m_scales, m_corrections})
        lines->setEditable(isOpen);
    for (QPushButton *button : {m_new, m_withdraw}) {
        button->setEnabled(isOpen);
        button->setToolTip(readOnlyReason(m_session));
    }
    showSum(*weighing);
}

void WeighingPanel::showSum(const Weighing &weighing)
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
    m_scales->setLines(std::move(scales));
    m_corrections->setLines(std::move(corrections));
    showResult(weighing);
    showChanges(weighing);
}

void WeighingPanel::showResult(const Weighing &weighing)
{
    const auto empty = balance::weighed(weighing);
    if (!empty) {
        m_sum->setText(inWords(empty.reason()));
        return;
    }
    auto sum = empty->sum;
    if (const auto *envelope = balance::envelopeOf(*m_session.records())) {
        if (const auto chord = balance::chordOf(*envelope, empty->units))
            sum.percent_mac = (sum.cg - chord->lemac) * 100 / chord->length;
    }
    const QString weighed = tr("Empty weight as weighed: %1").arg(balanceText(sum, empty->units));
    m_sum->setText(weighed);
}

/// Equipment, deviations and bulletins; of an older weighing nothing is told.
void WeighingPanel::showChanges(const Weighing &weighing)
{
    const bool isLatest = m_report.weighing && m_report.weighing->id == weighing.id;
    const bool isChanged =
        isLatest && m_report.empty &&
        m_report.empty->lines.size() > weighing.scale_readings.size() + weighing.corrections.size();
    FigureTable table = isLatest ? changesTable(m_report) : FigureTable{};
    table.title = tr("What has changed the weight");
    QString since = !isLatest         ? tr("A later weighing counts.")
                    : !m_report.empty ? tr("What was fitted and removed since is reckoned with as "
                                           "soon as the weighing comes to a sum.")
                    : table.rows.empty()
                        ? tr("Nothing on record has changed the weight since this weighing.")
                        : QString();
    if (isChanged)
        since = tr("With what was fitted and removed since: %1")
                    .arg(balanceText(m_report.empty->sum, m_report.units));
    m_since->setText(since);
    m_since->setVisible(!since.isEmpty());
    m_changes->setVisible(!table.rows.empty());
    m_changes->setTable(std::move(table));
}

QWidget *WeighingPanel::firstFocus() const
{
    return shown() ? static_cast<QWidget *>(&m_scales->view())
                   : m_empty->findChild<QPushButton *>();
}

} // namespace lastrivet::ui
