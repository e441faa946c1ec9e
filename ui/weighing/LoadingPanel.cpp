// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/weighing/LoadingPanel.h"

#include "core/balance/Written.h"
#include "ui/convert/NumberText.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/weighing/EnvelopePicture.h"
#include "ui/weighing/LimitsEditor.h"
#include "ui/weighing/LinesEditor.h"
#include "ui/weighing/RecordChange.h"
#include "ui/weighing/WeightTables.h"
#include "ui/weighing/WeightText.h"
#include "ui/widgets/ActLine.h"
#include "ui/widgets/Flow.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/RecordForm.h"
#include "ui/widgets/WithdrawAct.h"
#include "ui/workshop/FigureView.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QStringList>
#include <QTableView>
#include <QVBoxLayout>

#include <utility>

namespace lastrivet::ui {

namespace {

constexpr int leftWidth = 480;

enum Column { WhatColumn, WeightColumn, ArmColumn };

} // namespace

LoadingPanel::LoadingPanel(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_cases(new QComboBox(this))
    , m_new(new QPushButton(tr("New loading"), this))
    , m_withdraw(new QPushButton(tr("Withdraw…"), this))
    , m_ask(new ActLine(session, this))
    , m_form(new RecordForm(session, RecordType::LoadingCase,
                            {{"name"}, {"weight_unit"}, {"arm_unit"}, {"note", true}}, this))
    , m_items(new LinesEditor(tr("On board, besides the empty aeroplane"),
                              {{{}, false}, {{}, true, false, true}, {{}, true, false, true}},
                              this))
    , m_picture(new EnvelopePicture(session.theme(), this))
    , m_how(new QLabel(this))
    , m_lacking(new QLabel(this))
    , m_sums(new FigureView(this))
    , m_legend(new QLabel(tr("Square: the empty aeroplane, E. Discs: the loadings by their number. "
                             "Triangles: the extremes. F is the farthest forward, A the farthest "
                             "aft."),
                          this))
    , m_source(new QLabel(this))
    , m_limits(new LimitsEditor(session, this))
{
    auto *layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(16);
    layout->addWidget(buildCases(), 1);
    auto *right = new QWidget(this);
    auto *column = new QVBoxLayout(right);
    buildResult(*column);
    layout->addWidget(scrollArea(*right, this), 1);
    m_ask->hide();
    connect(m_cases, &QComboBox::activated, this,
            [this] { show(Id<LoadingCase>{m_cases->currentData().toLongLong()}); });
    connect(m_new, &QPushButton::clicked, this, &LoadingPanel::startNew);
    connect(m_ask, &ActLine::wanted, this, [this] { show(Id<LoadingCase>{m_ask->aboutId()}); });
    connect(m_withdraw, &QPushButton::clicked, this, [this] {
        askToWithdraw(m_session, *m_ask, RecordRef{RecordType::LoadingCase, m_shown.value()});
    });
    connectItems();
}

void LoadingPanel::connectItems()
{
    m_items->setKeep([this](int row, const LinesModel::Cells &cells, bool isWhole) {
        return change(
            [&](LoadingCase &loading) {
                return LinesModel::typeAll(cells, [&](int column, const QString &text) {
                    return type(loading, row, column, text);
                });
            },
            isWhole);
    });
    connect(m_items, &LinesEditor::begunChanged, this, &LoadingPanel::tellLacking);
    connect(m_limits, &LimitsEditor::begunChanged, this, &LoadingPanel::tellLacking);
    connect(m_items, &LinesEditor::recordWanted, this,
            [this](std::int64_t id) { show(Id<LoadingCase>{id}); });
    connect(m_items, &LinesEditor::removeWanted, this, [this](int row) {
        change([row](LoadingCase &loading) {
            loading.items.erase(loading.items.begin() + row);
            return QString();
        });
    });
}

QWidget *LoadingPanel::buildCases()
{
    auto *left = new QWidget(this);
    m_cases->setAccessibleName(tr("Loading"));
    m_cases->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_withdraw->setProperty("flat", true);
    auto *buttons = new QWidget(left);
    auto *flow = new Flow(buttons);
    flow->addWidget(m_new);
    flow->addWidget(m_withdraw);
    auto *layout = new QVBoxLayout(left);
    layout->setContentsMargins(0, 0, 8, 0);
    layout->setSpacing(8);
    layout->addWidget(m_cases);
    layout->addWidget(buttons);
    layout->addWidget(m_ask);
    layout->addWidget(m_form);
    layout->addWidget(m_items);
    layout->addSpacing(12);
    layout->addWidget(m_limits);
    layout->addStretch(1);
    auto *area = scrollArea(*left, this);
    area->setMaximumWidth(leftWidth);
    return area;
}

void LoadingPanel::buildResult(QVBoxLayout &layout)
{
    for (QLabel *label : {m_legend, m_source, m_how, m_lacking})
        label->setWordWrap(true);
    for (QLabel *quiet : {m_legend, m_how})
        quiet->setForegroundRole(QPalette::PlaceholderText);
    layout.setContentsMargins(0, 0, 8, 0);
    layout.setSpacing(8);
    layout.addWidget(m_picture, 1);
    layout.addWidget(m_legend);
    layout.addWidget(m_lacking);
    layout.addWidget(m_sums);
    layout.addWidget(m_source);
    layout.addWidget(m_how);
}

const LoadingCase *LoadingPanel::shown() const
{
    return m_session.records()->findLive(m_shown);
}

Session::Outcome LoadingPanel::change(const std::function<QString(LoadingCase &)> &body,
                                      bool isKept)
{
    const LoadingCase *known = shown();
    if (!known)
        return Session::Outcome::AgainstRules;
    const auto outcome = changeRecord(m_session, *known, body, isKept,
                                      tr("Loading %1 changed").arg(toQt(known->name)));
    refresh();
    return outcome;
}

QString LoadingPanel::type(LoadingCase &loading, int row, int column, const QString &text) const
{
    auto &items = loading.items;
    if (std::size_t(row) >= items.size())
        items.push_back({toStd(tr("load %1").arg(row + 1)), 0, 0});
    auto &item = std::size_t(row) < items.size() ? items[std::size_t(row)] : items.back();
    if (column == WhatColumn) {
        item.what = toStd(text);
        return text.isEmpty() ? tr("Say what is on board.") : QString();
    }
    const auto number = column == ArmColumn
                            ? readTyped(balance::readArm, text, loading.arm_unit)
                            : readTyped(balance::readWeight, text, loading.weight_unit);
    if (!number)
        return inWords(number.reason());
    if (column == WeightColumn && *number < 0)
        return tr("What is on board weighs nothing or more.");
    (column == ArmColumn ? item.arm : item.weight) = *number;
    return {};
}

void LoadingPanel::choose(Id<LoadingCase> loading)
{
    // A question is about the record that it was asked about.
    m_ask->follow({{RecordType::LoadingCase, loading.value()}});
    m_shown = loading;
}

void LoadingPanel::show(Id<LoadingCase> loading)
{
    choose(loading);
    refresh();
}

void LoadingPanel::startNew()
{
    if (m_session.isReadOnly())
        return;
    Id<LoadingCase> made;
    const bool isDone = m_session.change(tr("Loading written down"), [&](Edit &edit) {
        LoadingCase loading;
        loading.name = toStd(tr("New loading"));
        loading.weight_unit = m_report.units.weight;
        loading.arm_unit = m_report.units.arm;
        made = edit.put(loading);
    });
    if (!isDone)
        return;
    show(made);
    m_form->edit("name");
}

void LoadingPanel::apply(const ChangeNotice &notice)
{
    m_form->apply(notice);
    if (std::exchange(m_unitChoice->isChosen, false))
        askToConvert(m_session, *m_ask, *m_unitChoice, notice, m_shown);
    m_limits->apply(notice);
}

void LoadingPanel::setReport(const packet::WeightReport &report)
{
    m_report = report;
    m_limits->setUnits(report.units);
    refresh();
}

void LoadingPanel::showCases()
{
    m_cases->clear();
    for (const LoadingCase &loading : m_session.records()->loading_cases) {
        if (loading.withdrawn_on)
            continue;
        if (!shown())
            choose(loading.id);
        m_cases->addItem(toQt(loading.name), qlonglong(loading.id.value()));
    }
    m_cases->setCurrentIndex(m_cases->findData(qlonglong(m_shown.value())));
    m_cases->setVisible(m_cases->count() > 1);
}

void LoadingPanel::refresh()
{
    showCases();
    m_form->show(shown() ? m_shown.value() : 0);
    // Only now: the form keeps what was being typed, which makes other records of these.
    const auto records = m_session.records();
    const LoadingCase *loading = records->findLive(m_shown);
    const bool isOpen = !m_session.isReadOnly();
    m_form->setVisible(loading);
    m_items->setVisible(loading);
    m_withdraw->setVisible(loading);
    for (QPushButton *button : {m_new, m_withdraw}) {
        button->setEnabled(isOpen);
        button->setToolTip(readOnlyReason(m_session));
    }
    m_form->setToolTip(readOnlyReason(m_session));
    m_items->setToolTip(readOnlyReason(m_session));
    m_items->setEditable(isOpen);
    m_items->model().forgetUnless(
        [&](std::int64_t id) { return records->findLive(Id<LoadingCase>{id}) != nullptr; });
    if (loading)
        showItems(*loading);
    showResult();
}

void LoadingPanel::showItems(const LoadingCase &loading)
{
    std::vector<QStringList> lines;
    for (const auto &item : loading.items)
        lines.push_back({toQt(item.what), plainNumber(item.weight), plainNumber(item.arm)});
    m_items->setHeads({tr("What"), headWithUnit(tr("Weight"), word(loading.weight_unit)),
                       headWithUnit(tr("Arm"), word(loading.arm_unit))});
    m_items->setLines(loading.id.value(), std::move(lines));
}

void LoadingPanel::showResult()
{
    tellLacking();
    m_picture->show(m_report);
    m_legend->setVisible(m_report.empty || !m_report.cases.empty());
    m_sums->setTable(loadingTable(m_report));
    m_source->setText(
        !m_report.limits ? tr("The flight manual and the authority decide on limits.")
        : m_report.limits->source.empty()
            ? tr("The limits name no source. The flight manual and the authority decide.")
            : tr("Limits from: %1. The flight manual and the authority decide.")
                  .arg(toQt(m_report.limits->source)));
    m_how->setText(
        m_report.no_extremes ? inWords(*m_report.no_extremes)
        : m_report.extremes
            ? tr("The extremes are searched over all loads that the loadings name: of each no "
                 "less than the least and no more than the most of any of them, within the "
                 "maximum weight.")
            : tr("The extremes are searched as soon as there are a weighing and a loading. While "
                 "nothing is weighed, a loading stands for itself."));
}

void LoadingPanel::tellLacking()
{
    QStringList sentences;
    if (shown() && m_items->hasBegunLines())
        sentences += tr("Not all that is on board is in these sums: some lines lack something.");
    if (m_limits->hasBegunCorners())
        sentences += tr("Not all corners are in the limits: some lack something.");
    m_lacking->setText(sentences.join(QLatin1Char(' ')));
    m_lacking->setVisible(!sentences.isEmpty());
}

QWidget *LoadingPanel::firstFocus() const
{
    return shown() ? static_cast<QWidget *>(&m_items->view()) : m_new;
}

} // namespace lastrivet::ui
