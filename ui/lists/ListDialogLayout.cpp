// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/lists/ListDialog.h"

#include "ui/convert/FieldText.h"
#include "ui/lists/ColumnChoice.h"
#include "ui/lists/ListRows.h"
#include "ui/widgets/FormRows.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/RecordLine.h"
#include "ui/widgets/TallRows.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTreeView>
#include <QVBoxLayout>

#include <utility>

// What stands where.
namespace lastrivet::ui {

void ListDialog::build()
{
    setWindowTitle(tr("Bring in a list"));
    resize(940, 620);
    auto *leave = flatButton(tr("Cancel"), this);
    leave->setAutoDefault(false);
    // Enter in a field ends what is chosen there; the list comes in by its button alone.
    m_take->setAutoDefault(false);
    m_take->setProperty("primary", true);
    m_summary->setWordWrap(true);
    auto *middle = new QHBoxLayout;
    middle->addWidget(buildInput(), 1);
    middle->addWidget(buildPlan(), 1);
    auto *buttons = new QHBoxLayout;
    buttons->addWidget(m_summary, 1);
    buttons->addWidget(leave);
    buttons->addWidget(m_take);
    auto *layout = new QVBoxLayout(this);
    layout->addLayout(middle, 1);
    layout->addLayout(buttons);
    connect(leave, &QPushButton::clicked, this, &QDialog::reject);
}

void ListDialog::fillFields()
{
    for (const RecordType type : exchange::csvRecordTypes())
        m_type->addItem(recordsTitle(type), int(type));
    m_days->addItem(tr("year-month-day"), int(exchange::DayOrder::YearMonthDay));
    m_days->addItem(tr("day.month.year"), int(exchange::DayOrder::DayMonthYear));
    m_days->addItem(tr("month/day/year"), int(exchange::DayOrder::MonthDayYear));
    m_within->setPlaceholderText(tr("no part"));
    m_headings->setChecked(true);
    m_text->setPlaceholderText(tr(
        "Paste rows from a spreadsheet here. Columns are parted by tabs, commas or semicolons."));
    m_text->setLineWrapMode(QPlainTextEdit::NoWrap);
    m_text->setTabChangesFocus(true);
    m_text->setAccessibleName(tr("The list"));
    m_shipment->setPlaceholderText(tr("none: name the crate or the delivery"));
}

QWidget *ListDialog::buildInput()
{
    fillFields();
    m_form = new FormRows;
    const std::pair<QString, QWidget *> fields[] = {
        {tr("What it lists"), m_type},
        {tr("Rows that name no part"), m_within},
        {tr("Rows that name no shipment"), m_shipment},
        {tr("Days are written"), m_days},
    };
    for (const auto &[label, field] : fields) {
        m_form->addRow(label, field);
        field->setAccessibleName(label);
    }
    auto *open = new QPushButton(tr("Open a file…"), this);
    open->setAutoDefault(false);
    connect(open, &QPushButton::clicked, this, &ListDialog::browse);
    auto *line = new QHBoxLayout;
    line->addWidget(m_headings, 1);
    line->addWidget(open);
    auto *side = new QWidget(this);
    auto *layout = new QVBoxLayout(side);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(m_form);
    layout->addWidget(m_text, 2);
    layout->addLayout(line);
    layout->addWidget(m_columns, 3);
    // As they stand; the list itself came behind what is said of its first row.
    setTabOrder(m_days, m_text);
    setTabOrder(m_text, m_headings);
    setTabOrder(m_headings, open);
    setTabOrder(open, m_columns);
    return side;
}

QWidget *ListDialog::buildPlan()
{
    m_view->setModel(m_rows);
    m_view->setItemDelegate(new TallRows(this));
    m_view->setRootIsDecorated(false);
    m_view->setUniformRowHeights(true);
    m_view->setAllColumnsShowFocus(true);
    m_view->setAccessibleName(tr("What becomes of each row"));
    m_view->header()->setStretchLastSection(true);
    m_view->setColumnWidth(ListRows::RowColumn, 60);
    m_view->setColumnWidth(ListRows::FateColumn, 124);
    return m_view;
}

} // namespace lastrivet::ui
