// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/rules/RulesForm.h"

#include "ui/convert/FieldText.h"
#include "ui/convert/QtText.h"
#include "ui/rules/RulesWords.h"
#include "ui/widgets/NumberBox.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>

#include <algorithm>
#include <array>
#include <utility>

namespace lastrivet::ui {

namespace {

/// Fields that hold sentences.
bool isLong(std::string_view name)
{
    constexpr std::array names{"text", "note", "passes_when", "item"};
    return std::ranges::find(names, name) != names.end();
}

} // namespace

RulesForm::RulesForm(QWidget *parent)
    : QWidget(parent)
    , m_fields(new QFormLayout(this))
{
    m_fields->setContentsMargins(0, 0, 0, 0);
    m_fields->setHorizontalSpacing(12);
    m_fields->setRowWrapPolicy(QFormLayout::DontWrapRows);
    m_fields->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
}

void RulesForm::begin(const QStringList &sources)
{
    m_sources = sources;
    while (m_fields->rowCount() > 0)
        m_fields->removeRow(0);
}

void RulesForm::addRow(const char *name, QWidget *field)
{
    const QString title = ruleFieldWords(name);
    field->setAccessibleName(title);
    m_fields->addRow(title, field);
}

void RulesForm::addLine(const char *name, std::string &into)
{
    auto *line = new QLineEdit(toQt(into), this);
    addRow(name, line);
    connect(line, &QLineEdit::textEdited, this, [this, &into](const QString &text) {
        into = toStd(text);
        Q_EMIT edited();
    });
}

void RulesForm::addText(const char *name, std::string &into)
{
    if (isLong(name))
        addLong(name, into);
    else
        addLine(name, into);
}

void RulesForm::addLong(const char *name, std::string &into)
{
    constexpr int lines = 4;
    auto *box = new QPlainTextEdit(toQt(into), this);
    box->setTabChangesFocus(true);
    box->setFixedHeight(lines * fontMetrics().lineSpacing() + 16);
    addRow(name, box);
    connect(box, &QPlainTextEdit::textChanged, this, [this, box, &into] {
        into = toStd(box->toPlainText());
        Q_EMIT edited();
    });
}

void RulesForm::source(const char *name, std::string &into)
{
    auto *choice = new QComboBox(this);
    choice->addItems(m_sources);
    // One that is on no list yet, or no more, stays to be seen.
    if (choice->findText(toQt(into)) < 0)
        choice->addItem(toQt(into));
    choice->setCurrentText(toQt(into));
    addRow(name, choice);
    connect(choice, &QComboBox::textActivated, this, [this, &into](const QString &text) {
        into = toStd(text);
        Q_EMIT edited();
    });
}

void RulesForm::flag(const char *name, bool &into)
{
    auto *box = new QCheckBox(this);
    box->setChecked(into);
    addRow(name, box);
    connect(box, &QCheckBox::toggled, this, [this, &into](bool isOn) {
        into = isOn;
        Q_EMIT edited();
    });
}

void RulesForm::number(const char *name, std::int64_t &into, std::int64_t low, std::int64_t high)
{
    auto *box = new NumberBox(this);
    box->setButtonSymbols(QAbstractSpinBox::NoButtons);
    box->setRange(int(low), int(high));
    box->setValue(int(into));
    addRow(name, box);
    box->findChild<QLineEdit *>()->setAccessibleName(box->accessibleName());
    connect(box, &NumberBox::refused, this, &RulesForm::refused);
    connect(box, &NumberBox::valueChanged, this, [this, &into](int value) {
        into = value;
        Q_EMIT edited();
    });
}

void RulesForm::optionalNumber(const char *name, std::optional<std::int64_t> &into,
                               std::int64_t low, std::int64_t high)
{
    auto *box = new NumberBox(this);
    const int none = int(low) - 1;
    box->setButtonSymbols(QAbstractSpinBox::NoButtons);
    box->setRange(none, int(high));
    box->setSpecialValueText(tr("none named"));
    box->setValue(into ? int(*into) : none);
    addRow(name, box);
    box->findChild<QLineEdit *>()->setAccessibleName(box->accessibleName());
    connect(box, &NumberBox::refused, this, &RulesForm::refused);
    connect(box, &NumberBox::valueChanged, this, [this, none, &into](int value) {
        if (value == none)
            into.reset();
        else
            into = value;
        Q_EMIT edited();
    });
}

void RulesForm::texts(const char *name, std::vector<std::string> &into, std::size_t)
{
    QStringList lines;
    for (const std::string &text : into)
        lines << toQt(text);
    auto *box = new QPlainTextEdit(lines.join(QLatin1Char('\n')), this);
    box->setTabChangesFocus(true);
    box->setFixedHeight(5 * fontMetrics().lineSpacing() + 16);
    box->setToolTip(tr("One on each line"));
    addRow(name, box);
    connect(box, &QPlainTextEdit::textChanged, this, [this, box, &into] {
        into.clear();
        for (const QString &line : box->toPlainText().split(QLatin1Char('\n'))) {
            if (!line.trimmed().isEmpty())
                into.push_back(toStd(line));
        }
        Q_EMIT edited();
    });
}

void RulesForm::addChoice(const char *name, WordList list, std::size_t chosen,
                          const std::function<void(std::size_t)> &choose)
{
    auto *choice = new QComboBox(this);
    for (const std::string_view word : list)
        choice->addItem(plainWord(word));
    choice->setCurrentIndex(int(chosen));
    addRow(name, choice);
    connect(choice, &QComboBox::activated, this, [this, choose](int index) {
        choose(std::size_t(index));
        Q_EMIT edited();
    });
}

void RulesForm::addTicks(const char *name, WordList list,
                         const std::function<bool(std::size_t)> &isIn,
                         const std::function<void(std::size_t, bool)> &tick)
{
    constexpr std::size_t sideBySide = 3;
    auto *place = new QWidget(this);
    auto *grid = new QGridLayout(place);
    grid->setContentsMargins(0, 0, 0, 0);
    for (std::size_t i = 0; i < list.size(); ++i) {
        auto *box = new QCheckBox(plainWord(list[i]), place);
        box->setChecked(isIn(i));
        grid->addWidget(box, int(i / sideBySide), int(i % sideBySide));
        connect(box, &QCheckBox::toggled, this, [this, i, tick](bool isOn) {
            tick(i, isOn);
            Q_EMIT edited();
        });
    }
    addRow(name, place);
}

} // namespace lastrivet::ui
