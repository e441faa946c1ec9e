// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/lists/ColumnChoice.h"

#include "core/records/Description.h"
#include "ui/convert/FieldText.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Theme.h"

#include <QComboBox>
#include <QHeaderView>

#include <algorithm>

namespace lastrivet::ui {

namespace {

enum Column { HeadingColumn, ExampleColumn, FieldColumn, columns };

QString titleOf(const Field &field)
{
    if (field.name == "parent_id")
        return ColumnChoice::tr("Lies inside");
    return fieldTitle(field);
}

QComboBox *fieldBox(RecordType type, const QString &chosen, QWidget *parent)
{
    auto *box = new QComboBox(parent);
    box->addItem(ColumnChoice::tr("leave it out"), QString());
    for (const std::string_view name : exchange::csvFields(type)) {
        if (!name.starts_with("withdrawn"))
            box->addItem(titleOf(*describe(type).find(name)), toQt(name));
    }
    box->setCurrentIndex(std::max(0, box->findData(chosen)));
    return box;
}

QTableWidgetItem *fixedItem(const std::string &text)
{
    auto *item = new QTableWidgetItem(toQt(text));
    item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
    return item;
}

} // namespace

ColumnChoice::ColumnChoice(QWidget *parent)
    : QTableWidget(parent)
{
    setColumnCount(columns);
    setHorizontalHeaderLabels({tr("Column"), tr("First value"), tr("Fills")});
    verticalHeader()->hide();
    verticalHeader()->setDefaultSectionSize(Theme::rowHeight + 8);
    horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    setTabKeyNavigation(false);
    setAccessibleName(tr("Columns of the list"));
}

void ColumnChoice::keep()
{
    if (rowCount() == 0)
        return;
    m_kept.clear();
    for (int row = 0; row < rowCount(); ++row)
        m_kept << qobject_cast<QComboBox *>(cellWidget(row, FieldColumn))->currentData().toString();
}

void ColumnChoice::showNothing()
{
    keep();
    setRowCount(0);
}

void ColumnChoice::forget()
{
    setRowCount(0);
    m_kept.clear();
}

void ColumnChoice::show(const exchange::CsvTable &table, RecordType type)
{
    keep();
    const auto fields = exchange::columnsByHeader(table, type);
    const bool isSame = table.header == m_header && type == m_type &&
                        std::size_t(m_kept.size()) == table.header.size();
    m_header = table.header;
    m_type = type;
    setRowCount(0);
    setRowCount(int(table.header.size()));
    for (std::size_t i = 0; i < table.header.size(); ++i) {
        const int row = int(i);
        setItem(row, HeadingColumn, fixedItem(table.header[i]));
        setItem(row, ExampleColumn, fixedItem(table.rows.empty() ? "" : table.rows.front()[i]));
        auto *box = fieldBox(type, isSame ? m_kept[row] : toQt(fields[i]), this);
        box->setAccessibleName(tr("What column %1 fills").arg(toQt(table.header[i])));
        setCellWidget(row, FieldColumn, box);
        connect(box, &QComboBox::currentIndexChanged, this, &ColumnChoice::chosenChanged);
    }
}

exchange::CsvColumns ColumnChoice::chosen() const
{
    exchange::CsvColumns fields;
    for (int row = 0; row < rowCount(); ++row) {
        const auto *box = qobject_cast<QComboBox *>(cellWidget(row, FieldColumn));
        const std::string field = toStd(box->currentData().toString());
        const bool isTaken =
            !field.empty() && std::find(fields.begin(), fields.end(), field) != fields.end();
        fields.push_back(isTaken ? std::string() : field);
    }
    return fields;
}

void ColumnChoice::choose(int column, const QString &field)
{
    auto *box = qobject_cast<QComboBox *>(cellWidget(column, FieldColumn));
    box->setCurrentIndex(std::max(0, box->findData(field)));
}

} // namespace lastrivet::ui
