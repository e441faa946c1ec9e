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
        // A list that an export wrote says it; nobody else's list is about what was withdrawn.
        if (!name.starts_with("withdrawn") || toQt(name) == chosen)
            box->addItem(titleOf(*describe(type).find(name)), toQt(name));
    }
    box->setCurrentIndex(std::max(0, box->findData(chosen)));
    return box;
}

/// The field that a column is headed by as the screen calls it; empty when there is none.
std::string fieldByTitle(RecordType type, const std::string &heading)
{
    const QString title = toQt(heading).trimmed();
    for (const std::string_view name : exchange::csvFields(type)) {
        const bool isNamed =
            titleOf(*describe(type).find(name)).compare(title, Qt::CaseInsensitive) == 0;
        if (isNamed && !name.starts_with("withdrawn"))
            return std::string(name);
    }
    return {};
}

exchange::CsvColumns guessedColumns(const exchange::CsvTable &table, RecordType type)
{
    auto fields = exchange::columnsByHeader(table, type);
    const auto doubled = exchange::doubledColumns(table, type);
    for (std::size_t i = 0; i < fields.size(); ++i) {
        const bool isKnown = !fields[i].empty() || std::ranges::count(doubled, table.header[i]) > 0;
        const std::string field = isKnown ? std::string() : fieldByTitle(type, table.header[i]);
        if (!field.empty() && std::ranges::count(fields, field) == 0)
            fields[i] = field;
    }
    return fields;
}

std::vector<bool> filledColumns(const exchange::CsvTable &table)
{
    std::vector<bool> isAny(table.header.size());
    for (const auto &row : table.rows) {
        for (std::size_t i = 0; i < isAny.size() && i < row.size(); ++i)
            isAny[i] = isAny[i] || !row[i].empty();
    }
    return isAny;
}

/// As many as a sentence can name.
QString firstOf(const QStringList &headings)
{
    constexpr int most = 6;
    const QString named = headings.mid(0, most).join(QStringLiteral(", "));
    return headings.size() > most ? named + QStringLiteral(", …") : named;
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
        m_kept << fieldOf(row);
}

QString ColumnChoice::fieldOf(int row) const
{
    return qobject_cast<QComboBox *>(cellWidget(row, FieldColumn))->currentData().toString();
}

QString ColumnChoice::headingOf(int row) const
{
    const QString heading = item(row, HeadingColumn)->text().trimmed();
    return heading.isEmpty() ? tr("Column %1").arg(row + 1) : heading;
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
    const auto fields = guessedColumns(table, type);
    const bool isSame = table.header == m_header && type == m_type &&
                        std::size_t(m_kept.size()) == table.header.size();
    m_header = table.header;
    m_type = type;
    m_isAny = filledColumns(table);
    setRowCount(0);
    setRowCount(int(table.header.size()));
    QWidget *before = this;
    for (std::size_t i = 0; i < table.header.size(); ++i) {
        const int row = int(i);
        setItem(row, HeadingColumn, fixedItem(table.header[i]));
        setItem(row, ExampleColumn, fixedItem(table.rows.empty() ? "" : table.rows.front()[i]));
        auto *box = fieldBox(type, isSame ? m_kept[row] : toQt(fields[i]), this);
        box->setAccessibleName(tr("What column %1 fills").arg(toQt(table.header[i])));
        setCellWidget(row, FieldColumn, box);
        // Else they would come behind the buttons, which were there before them.
        setTabOrder(before, box);
        before = box;
        connect(box, &QComboBox::currentIndexChanged, this, &ColumnChoice::chosenChanged);
    }
}

exchange::CsvColumns ColumnChoice::chosen() const
{
    exchange::CsvColumns fields;
    for (int row = 0; row < rowCount(); ++row) {
        const std::string field = toStd(fieldOf(row));
        const bool isTaken =
            !field.empty() && std::find(fields.begin(), fields.end(), field) != fields.end();
        fields.push_back(isTaken ? std::string() : field);
    }
    return fields;
}

QString ColumnChoice::whatIsLeftOut() const
{
    QStringList unused;
    QStringList doubled;
    const auto fields = chosen();
    for (int row = 0; row < rowCount(); ++row) {
        if (m_isAny[std::size_t(row)] && fields[std::size_t(row)].empty())
            (fieldOf(row).isEmpty() ? unused : doubled) << headingOf(row);
    }
    QString sentences;
    if (!unused.isEmpty())
        sentences += QLatin1Char(' ') + tr("Left out: %1.").arg(firstOf(unused));
    if (!doubled.isEmpty())
        sentences +=
            QLatin1Char(' ') +
            tr("Left out, as a column before it fills the same: %1.").arg(firstOf(doubled));
    return sentences;
}

void ColumnChoice::choose(int column, const QString &field)
{
    auto *box = qobject_cast<QComboBox *>(cellWidget(column, FieldColumn));
    box->setCurrentIndex(std::max(0, box->findData(field)));
}

} // namespace lastrivet::ui
