// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workshop/Tables.h"

#include "core/workshop/Quantities.h"
#include "core/workshop/Torque.h"
#include "core/workshop/WorkshopTable.h"
#include "ui/convert/QtText.h"
#include "ui/workshop/RuleWords.h"
#include "ui/workshop/Sum.h"
#include "ui/workshop/TableShapes.h"

#include <QCoreApplication>
#include <QLocale>
#include <QRegularExpression>

#include <algorithm>

namespace lastrivet::ui {

namespace {

using workshop::Quantity;
using workshop::WorkshopTable;

QString tr(const char *text)
{
    return QCoreApplication::translate("Workshop", text);
}

/// A table's words as they are read: no figure without its zero, none parted from its unit, and
/// where nothing stands but a number or two, as the person's language writes it. The tables keep
/// them as printed, and limits of the project's own are kept under those.
QString proseText(QString text)
{
    static const QRegularExpression bare(QStringLiteral("(?<![\\w.])\\.(?=\\d)"));
    static const QRegularExpression parted(
        QStringLiteral("(?<=\\d) (?=(in|ft|mm|lb|lbf|in-lb|psi|V|A|h|min|s|%|°C|deg)(?![\\w-]))"));
    static const QRegularExpression figures(QStringLiteral("^\\d+\\.?\\d*([-–]\\d+\\.?\\d*)?$"));
    text.replace(bare, QStringLiteral("0."));
    if (figures.match(text).hasMatch())
        text.replace(QLatin1Char('.'), QLocale().decimalPoint());
    return text.replace(parted, QString(QChar(QChar::Nbsp)));
}

/// What a word of a table's unit column means.
Quantity quantityOf(const std::string &unit)
{
    if (unit == "in")
        return Quantity::Length;
    return unit == "lb" ? Quantity::Force : Quantity::Number;
}

/// ".040", "1/8", "2000"; nothing for "30-40".
Result<double, Message> plainNumberOf(const std::string &cell)
{
    return workshop::inTableUnits(cell, Quantity::Number, UnitSystem::Imperial);
}

/// "0.040", "0.057 min", "1/8", "30-40": a number in the person's units where it is one.
QString valueText(const std::string &cell, Quantity quantity, UnitSystem units)
{
    const auto space = cell.find(' ');
    const auto number = plainNumberOf(cell.substr(0, space));
    if (quantity == Quantity::Number || !number)
        return proseText(toQt(cell));
    const QString rest = space == std::string::npos ? QString() : toQt(cell.substr(space));
    return figureText(*number, quantity, units) + rest;
}

QString withUnit(const std::string &cell, const std::string &unit, UnitSystem units)
{
    const auto quantity = quantityOf(unit);
    if (quantity != Quantity::Number && plainNumberOf(cell))
        return valueText(cell, quantity, units);
    const QString value = proseText(toQt(cell));
    return unit.empty() ? value : value + QChar(QChar::Nbsp) + toQt(unit);
}

QString cellText(const WorkshopTable &table, std::size_t row, const ColumnShape &shape,
                 UnitSystem units)
{
    const auto &cell = table.text(row, shape.column);
    if (!shape.upto.empty()) {
        const auto least = table.number(row, shape.column);
        const auto most = table.number(row, shape.upto);
        return spanText(least, most, shape.quantity, units);
    }
    if (shape.isRule)
        return proseText(ruleWords(cell));
    if (!shape.unit.empty())
        return withUnit(cell, table.text(row, shape.unit), units);
    return valueText(cell, shape.quantity, units);
}

/// The table and what tells the row from the others: its first cell, and those that are words.
QString subjectOf(const WorkshopTable &table, const TableShape &shape, std::size_t row)
{
    QStringList words{toQt(table.name())};
    for (const auto &column : shape.columns) {
        const bool isFirst = words.size() == 1;
        const bool isValue = column.quantity != Quantity::Number || !column.upto.empty() ||
                             !column.unit.empty() || column.column == "shear_estimated";
        if (isFirst || (!isValue && !table.number(row, column.column)))
            words << toQt(table.text(row, column.column));
    }
    words.removeAll(QString());
    return words.join(QLatin1Char(' '));
}

bool haveOneSource(const WorkshopTable &table)
{
    for (std::size_t row = 1; row < table.rowCount(); ++row) {
        if (table.source(row) != table.source(0))
            return false;
    }
    return true;
}

FigureRow ownRow(const workshop::OwnLimit &limit, const FigureRow &published, int columns)
{
    FigureRow row;
    row.cells = {published.cells.value(0)};
    while (row.cells.size() < columns)
        row.cells << QString();
    row.cells[1] = ownText(limit);
    row.cells[columns - 2] = toQt(limit.source);
    row.cells[columns - 1] = verifiedWords("own");
    row.subject = published.subject;
    row.isOwn = true;
    return row;
}

} // namespace

QString tableTitle(std::string_view name)
{
    const auto *shape = tableShape(name);
    return shape ? QCoreApplication::translate("Workshop", shape->title) : toQt(name);
}

QString subjectWords(const QString &subject)
{
    using workshop::Nut;
    QStringList words = subject.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    if (words.isEmpty())
        return {};
    const QString table = words.takeFirst();
    const bool isTorque = table == QLatin1String("torque");
    for (QString &each : words) {
        const std::string known = toStd(each);
        if (isTorque && known == word(Nut::Tension))
            each = tr("thick, loaded in tension");
        else if (isTorque && known == word(Nut::Shear))
            each = tr("thin, loaded in shear");
        else
            each = ruleWords(known);
    }
    words.prepend((isTorque ? tr("Torque of a bolt") : tableTitle(toStd(table))) +
                  QLatin1Char(words.isEmpty() ? ' ' : ','));
    return words.join(QLatin1Char(' ')).trimmed();
}

FigureTable shownTable(std::string_view name, UnitSystem units,
                       const std::vector<workshop::OwnLimit> &own)
{
    FigureTable shown{tableTitle(name), {}, {}};
    const auto *shape = tableShape(name);
    if (!shape)
        return shown;
    const auto &table = WorkshopTable::named(name);
    for (const auto &column : shape->columns)
        shown.heads << QCoreApplication::translate("Workshop", column.head);
    shown.heads << tr("Note") << tr("Source") << tr("How well it is known");
    const bool isOne = haveOneSource(table);
    for (std::size_t i = 0; i < table.rowCount(); ++i) {
        const auto source = table.source(i);
        FigureRow row;
        for (const auto &column : shape->columns)
            row.cells << cellText(table, i, column, units);
        row.cells << proseText(toQt(table.text(i, "note")))
                  << (isOne ? QString() : toQt(source.document))
                  << (isOne ? QString() : verifiedWords(source.verified));
        row.isFromMemory = source.isFromMemory();
        row.subject = subjectOf(table, *shape, i);
        if (const auto *limit = workshop::ownLimit(own, toStd(row.subject))) {
            shown.rows.push_back(ownRow(*limit, row, int(shown.heads.size())));
            row.isAside = true;
            row.cells.back() = asideWords(row.cells.back());
        }
        shown.rows.push_back(std::move(row));
    }
    if (isOne && table.rowCount() > 0)
        shown.caption = tr("%1 (%2)").arg(toQt(table.source(0).document),
                                          verifiedWords(table.source(0).verified));
    return shown;
}

FigureTable foundIn(FigureTable table, const QString &search)
{
    const auto words = search.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    const auto hasAll = [&](const QString &text) {
        return std::ranges::all_of(
            words, [&](const QString &word) { return text.contains(word, Qt::CaseInsensitive); });
    };
    std::erase_if(table.rows, [&](const FigureRow &row) {
        return !hasAll(table.title + QLatin1Char(' ') + table.caption + QLatin1Char(' ') +
                       row.cells.join(QLatin1Char(' ')));
    });
    return table;
}

} // namespace lastrivet::ui
