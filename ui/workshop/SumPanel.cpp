// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workshop/SumPanel.h"

#include "ui/convert/NumberText.h"
#include "ui/convert/QtText.h"
#include "ui/widgets/Layouts.h"
#include "ui/workshop/FigureView.h"
#include "ui/workshop/RuleWords.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace lastrivet::ui {

namespace {

constexpr int usualField = 220;

/// Without the unit that a plain number has in its label: "5 A" into "Current, A".
QString typedIn(const QLineEdit &line, const SumField &field)
{
    QString typed = line.text().trimmed();
    const QString unit = field.label.section(QStringLiteral(", "), 1);
    if (field.quantity == workshop::Quantity::Number && !unit.isEmpty() && typed.endsWith(unit))
        typed.chop(unit.size());
    return typed;
}

} // namespace

SumPanel::SumPanel(Sum sum, QWidget *parent)
    : QWidget(parent)
    , m_sum(std::move(sum))
    , m_figures(nullptr)
    , m_refusal(new QLabel(this))
{
    auto *form = new QFormLayout;
    form->setLabelAlignment(Qt::AlignLeft);
    form->setFieldGrowthPolicy(QFormLayout::FieldsStayAtSizeHint);
    for (const auto &field : m_sum.fields)
        addInput(*form, field);
    // Made after what is typed, so that the Tab key comes to it afterwards.
    m_figures = new FigureView(this);
    m_refusal->setWordWrap(true);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(8);
    layout->addWidget(heading(m_sum.title, this));
    if (!m_sum.how.isEmpty()) {
        auto *how = new QLabel(m_sum.how, this);
        how->setWordWrap(true);
        how->setForegroundRole(QPalette::PlaceholderText);
        layout->addWidget(how);
    }
    layout->addLayout(form);
    layout->addWidget(m_refusal);
    layout->addWidget(m_figures);
    work();
}

void SumPanel::addInput(QFormLayout &form, const SumField &field)
{
    Input input;
    if (!field.choices.isEmpty()) {
        input.choice = new QComboBox(this);
        input.choice->addItems(field.choices);
        connect(input.choice, &QComboBox::currentIndexChanged, this, &SumPanel::work);
    } else {
        input.line = new QLineEdit(figureText(field.initial, field.quantity, m_units), this);
        connect(input.line, &QLineEdit::textChanged, this, &SumPanel::work);
    }
    QWidget *widget = input.line ? static_cast<QWidget *>(input.line) : input.choice;
    widget->setAccessibleName(tr("%1: %2").arg(m_sum.title, field.label));
    widget->setMinimumWidth(usualField);
    form.addRow(field.label, widget);
    m_inputs.push_back(input);
}

std::optional<Entered> SumPanel::entered()
{
    Entered entered;
    entered.units = m_units;
    entered.own = m_own;
    for (std::size_t i = 0; i < m_inputs.size(); ++i) {
        const auto &field = m_sum.fields[i];
        const auto &input = m_inputs[i];
        entered.numbers.push_back(0);
        entered.keys.emplace_back();
        if (input.choice) {
            entered.keys.back() = field.keys[std::size_t(input.choice->currentIndex())];
            continue;
        }
        const auto number =
            readTyped(workshop::inTableUnits, typedIn(*input.line, field), field.quantity, m_units);
        if (!number) {
            refuse(tr("%1: %2").arg(field.label, inWords(number.reason())));
            return std::nullopt;
        }
        entered.numbers.back() = *number;
    }
    return entered;
}

void SumPanel::refuse(const QString &why)
{
    m_refusal->setText(why);
    m_refusal->setVisible(!why.isEmpty());
    m_figures->setVisible(why.isEmpty());
}

void SumPanel::work()
{
    // While the panel is built, fields are still to come.
    if (m_inputs.size() < m_sum.fields.size())
        return;
    m_subject.clear();
    if (const auto filled = entered())
        show(m_sum.work(*filled));
    Q_EMIT worked();
}

void SumPanel::show(const SumAnswer &answer)
{
    m_subject = toQt(answer.own_subject);
    refuse(answer.refusal);
    FigureTable table{
        m_sum.title,
        {tr("What"), tr("Value"), tr("Basis"), tr("Source"), tr("How well it is known")},
        {}};
    for (const auto &figure : answer.figures) {
        const QString known = verifiedWords(figure.source.verified);
        table.rows.push_back(
            {{figure.what, figure.value, figure.basis, toQt(figure.source.document),
              figure.isAside ? asideWords(known) : known},
             {},
             figure.isMain,
             figure.source.isFromMemory(),
             figure.source.verified == "own",
             figure.isAside,
             figure.isExceeded});
    }
    m_figures->setTable(std::move(table));
}

void SumPanel::setUnits(UnitSystem units)
{
    if (units == m_units)
        return;
    for (std::size_t i = 0; i < m_inputs.size(); ++i) {
        const auto &field = m_sum.fields[i];
        if (!m_inputs[i].line || field.quantity == workshop::Quantity::Number)
            continue;
        const auto number =
            readTyped(workshop::inTableUnits, m_inputs[i].line->text(), field.quantity, m_units);
        if (number) {
            const QSignalBlocker quiet(m_inputs[i].line);
            m_inputs[i].line->setText(figureText(*number, field.quantity, units));
        }
    }
    m_units = units;
    work();
}

void SumPanel::setOwnLimits(std::vector<workshop::OwnLimit> own)
{
    m_own = std::move(own);
    work();
}

} // namespace lastrivet::ui
