// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/weighing/EquipmentPanel.h"

#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/weighing/WeightText.h"
#include "ui/widgets/ActLine.h"
#include "ui/widgets/RecordForm.h"
#include "ui/widgets/RecordNames.h"
#include "ui/widgets/RowListView.h"
#include "ui/widgets/WithdrawAct.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <utility>

namespace lastrivet::ui {

namespace {

constexpr int formWidth = 380;

} // namespace

EquipmentPanel::EquipmentPanel(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_count(new QLabel(this))
    , m_list(new RowListView(session.theme(), tr("Equipment"), this))
    , m_new(new QPushButton(tr("New equipment"), this))
    , m_form(new RecordForm(session, RecordType::Equipment,
                            {{"name"},
                             {"component_id"},
                             {"maker"},
                             {"part_number"},
                             {"serial_number"},
                             {"weight"},
                             {"weight_unit"},
                             {"arm"},
                             {"arm_unit"},
                             {"fitted_on"},
                             {"removed_on"},
                             {"note", true}},
                            this))
    // As they stand: behind the form.
    , m_ask(new ActLine(session, this))
    , m_withdraw(new QPushButton(tr("Withdraw…"), this))
{
    auto *layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(16);
    layout->addWidget(buildList(), 1);
    layout->addWidget(buildForm(), 1);
    m_ask->hide();
    m_form->setCheck([](const void *record) {
        const auto &item = *static_cast<const Equipment *>(record);
        return item.weight && *item.weight < 0 ? tr("A weight is not below zero.") : QString();
    });
    connect(m_list, &RowListView::chosen, this,
            [this](RecordRef record) { show(Id<Equipment>{record.id}); });
    connect(m_new, &QPushButton::clicked, this, &EquipmentPanel::startNew);
    connect(m_ask, &ActLine::wanted, this, [this] { show(Id<Equipment>{m_ask->aboutId()}); });
    connect(m_withdraw, &QPushButton::clicked, this, [this] {
        askToWithdraw(m_session, *m_ask, RecordRef{RecordType::Equipment, m_shown.value()});
    });
}

QWidget *EquipmentPanel::buildList()
{
    auto *area = new QScrollArea(this);
    auto *content = new QWidget(area);
    auto *layout = new QVBoxLayout(content);
    layout->setContentsMargins(0, 0, 8, 0);
    m_count->setWordWrap(true);
    layout->addWidget(m_count);
    layout->addWidget(m_list);
    layout->addWidget(m_new, 0, Qt::AlignLeft);
    layout->addStretch(1);
    area->setWidget(content);
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    return area;
}

QWidget *EquipmentPanel::buildForm()
{
    auto *area = new QScrollArea(this);
    auto *right = new QWidget(area);
    m_withdraw->setProperty("flat", true);
    auto *layout = new QVBoxLayout(right);
    layout->setContentsMargins(0, 0, 8, 0);
    layout->addWidget(m_form);
    layout->addWidget(m_ask);
    layout->addWidget(m_withdraw, 0, Qt::AlignLeft);
    layout->addStretch(1);
    area->setWidget(right);
    area->setWidgetResizable(true);
    area->setMaximumWidth(formWidth);
    area->setFocusPolicy(Qt::NoFocus);
    return area;
}

void EquipmentPanel::choose(Id<Equipment> equipment)
{
    // A question is about the record that it was asked about.
    m_ask->follow({{RecordType::Equipment, equipment.value()}});
    m_shown = equipment;
}

void EquipmentPanel::show(Id<Equipment> equipment)
{
    if (equipment)
        choose(equipment);
    refresh();
}

void EquipmentPanel::startNew()
{
    if (m_session.isReadOnly())
        return;
    Id<Equipment> made;
    const bool isDone = m_session.change(tr("Equipment written down"), [&](Edit &edit) {
        Equipment equipment;
        equipment.name = toStd(tr("New equipment"));
        equipment.weight_unit = m_units.weight;
        equipment.arm_unit = m_units.arm;
        equipment.fitted_on = edit.today();
        made = edit.put(equipment);
    });
    if (!isDone)
        return;
    show(made);
    m_form->edit("name");
}

void EquipmentPanel::apply(const ChangeNotice &notice)
{
    m_form->apply(notice);
    if (std::exchange(m_unitChoice->isChosen, false))
        askToConvert(m_session, *m_ask, *m_unitChoice, notice, m_shown);
}

void EquipmentPanel::setReport(const packet::WeightReport &report)
{
    m_units = report.units;
    refresh();
}

ListRow EquipmentPanel::rowOf(const Records &records, const Equipment &item) const
{
    ListRow row{{RecordType::Equipment, item.id.value()}, toQt(item.name)};
    QStringList details;
    for (const auto &text : {item.maker, item.part_number, item.serial_number}) {
        if (!text.empty())
            details << toQt(text);
    }
    if (item.component_id)
        details << partName(records, item.component_id);
    if (item.removed_on)
        details << tr("removed %1").arg(dateText(item.removed_on));
    row.detail = details.join(QStringLiteral(" · "));
    if (item.weight && item.weight_unit)
        row.figure = weightText(*item.weight, *item.weight_unit);
    return row;
}

void EquipmentPanel::refresh()
{
    const auto records = m_session.records();
    std::vector<ListRow> rows;
    int unweighed = 0;
    for (const Equipment &item : records->equipment) {
        if (item.withdrawn_on)
            continue;
        // Also after the shown one was withdrawn: the others are still there.
        if (!records->findLive(m_shown))
            choose(item.id);
        rows.push_back(rowOf(*records, item));
        if (rows.back().figure.isEmpty() || !item.arm || !item.arm_unit)
            ++unweighed;
    }
    m_count->setText(
        rows.empty()    ? tr("What is built in and can be taken out is listed here: engine, "
                                "propeller, battery, instruments.")
        : unweighed > 0 ? tr("%n of these have no weight or no arm on record.", nullptr, unweighed)
                        : tr("All of these have their weight and arm on record."));
    for (ListRow &row : rows)
        row.is_shown = row.record.id == m_shown.value();
    m_list->setVisible(!rows.empty());
    m_list->setRows(std::move(rows));
    const bool isAny = records->findLive(m_shown) != nullptr;
    m_form->show(isAny ? m_shown.value() : 0);
    m_form->setVisible(isAny);
    m_withdraw->setVisible(isAny);
    for (QPushButton *button : {m_new, m_withdraw}) {
        button->setEnabled(!m_session.isReadOnly());
        button->setToolTip(readOnlyReason(m_session));
    }
    m_form->setToolTip(readOnlyReason(m_session));
}

QWidget *EquipmentPanel::firstFocus() const
{
    return m_list->isVisible() ? static_cast<QWidget *>(m_list) : m_new;
}

} // namespace lastrivet::ui
