// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/weighing/WeighingPanel.h"

#include "core/readiness/CalibrationAt.h"
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

#include <utility>

namespace lastrivet::ui {

namespace {

constexpr int leftWidth = 340;

/// The scales that needed calibration and had none that held on the day.
QStringList scalesOutside(const Records &records, const Weighing &weighing)
{
    QStringList names;
    for (const auto &scale : weighing.scale_readings) {
        const Tool *tool = records.findLive(scale.tool_id);
        const bool isOutside =
            tool && weighing.weighed_on && readiness::wasUncalibrated(*tool, *weighing.weighed_on);
        if (isOutside && !names.contains(toQt(tool->name)))
            names << toQt(tool->name);
    }
    return names;
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

const Weighing *WeighingPanel::shown() const
{
    return m_session.records()->findLive(m_shown);
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
    if (std::exchange(m_unitChoice->isChosen, false))
        askToConvert(m_session, *m_ask, *m_unitChoice, notice, m_shown);
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
        row.is_shown = weighing.id == m_shown;
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
    for (LinesEditor *lines : {m_scales, m_corrections})
        lines->model().forgetUnless(
            [&](std::int64_t id) { return records->findLive(Id<Weighing>{id}) != nullptr; });
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
    showLines(*weighing);
    showResult(*weighing);
    showChanges(*weighing);
}

void WeighingPanel::showResult(const Weighing &weighing)
{
    const auto empty = balance::weighed(weighing);
    if (!empty) {
        m_sum->setText(inWords(empty.reason()));
        return;
    }
    const bool isAllThere = !m_scales->hasBegunLines() && !m_corrections->hasBegunLines();
    auto sum = empty->sum;
    if (const auto *envelope = balance::envelopeOf(*m_session.records())) {
        if (const auto chord = balance::chordOf(*envelope, empty->units))
            sum.percent_mac = (sum.cg - chord->lemac) * 100 / chord->length;
    }
    QStringList lines{tr("Empty weight as weighed: %1").arg(balanceText(sum, empty->units))};
    if (!isAllThere)
        lines << tr("Not all lines are in this sum: some lack something.");
    const QStringList outside = scalesOutside(*m_session.records(), weighing);
    if (!outside.isEmpty())
        lines << tr("Not in calibration when it was weighed: %1.")
                     .arg(outside.join(QStringLiteral("; ")));
    m_sum->setText(lines.join(QLatin1Char('\n')));
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
