// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/SquawkRows.h"

#include "core/packet/InWords.h"

namespace lastrivet::print {

namespace {

using packet::SquawkEntry;

QString foundIn(const Wording &words, const SquawkEntry &squawk)
{
    QStringList lines{words.day(squawk.found_on, squawk.approximate)};
    addLine(lines, asIs(squawk.found_by));
    if (!squawk.finding_number.empty())
        lines << words.text("finding {0}", {squawk.finding_number});
    addLine(lines, asIs(squawk.inspection));
    return lines.join(QLatin1Char('\n'));
}

/// What was weighed up while nothing is corrected yet; the correction itself tells what came of it.
void addOptions(QStringList &lines, const Wording &words, const SquawkEntry &squawk)
{
    for (const Squawk::RepairOption &option : squawk.repair_options) {
        lines << words.text(option.chosen ? "Way to repair it, chosen: {0}"
                                          : "Way to repair it: {0}",
                            {option.title});
        if (!option.pros.empty())
            lines << words.text("for it: {0}", {option.pros});
        if (!option.cons.empty())
            lines << words.text("against it: {0}", {option.cons});
    }
}

QString correctionIn(const Wording &words, const SquawkEntry &squawk)
{
    QStringList lines;
    addLine(lines, asIs(squawk.correction));
    if (squawk.correction.empty() && !squawk.repair_plan.empty())
        lines << words.text("Planned: {0}", {squawk.repair_plan});
    if (squawk.correction.empty())
        addOptions(lines, words, squawk);
    addLine(lines, dateAndName(words, squawk.fixed_on, squawk.fixed_by));
    return lines.join(QLatin1Char('\n'));
}

QString standingOf(const Wording &words, const SquawkEntry &squawk)
{
    switch (squawk.state) {
    case SquawkEntry::State::Open:
        return words.text("Open");
    case SquawkEntry::State::Fixed:
        return words.text("Fixed, to be verified by the {0}",
                          {words.text(packet::inWords(squawk.verify_by)).toStdString()});
    case SquawkEntry::State::Verified:
        return words.text("Verified") + QLatin1Char('\n') +
               dateAndName(words, squawk.verified_on, squawk.verified_by);
    case SquawkEntry::State::Accepted:
        return words.text("Accepted as it is: {0}", {squawk.accepted_basis}) + QLatin1Char('\n') +
               dateAndName(words, squawk.accepted_on, squawk.accepted_by);
    }
    return {};
}

/// How grave it is, in words, which a copy of a copy keeps where the mark is a blot; and where.
QString gravityAndPlace(const Wording &words, const SquawkEntry &squawk)
{
    QStringList said{words.sentence(packet::inWords(squawk.severity))};
    addLine(said, asIs(squawk.part));
    return said.join(QStringLiteral(" · "));
}

} // namespace

void addLine(QStringList &lines, const QString &line)
{
    if (!line.isEmpty())
        lines << line;
}

QString dateAndName(const Wording &words, const std::optional<Moment> &date,
                    const std::string &name)
{
    QString text = words.day(date);
    if (!name.empty())
        text += (text.isEmpty() ? QString() : QStringLiteral(", ")) + asIs(name);
    return text;
}

QString photosIn(const Wording &words, const std::vector<int> &numbers)
{
    if (numbers.empty())
        return {};
    QStringList list;
    for (const int number : numbers)
        list << QString::number(number);
    return words.text(numbers.size() == 1 ? "Photo {0}" : "Photos {0}",
                      {list.join(QStringLiteral(", ")).toStdString()});
}

std::vector<Table::Column> squawkColumns(const Wording &words)
{
    return {{words.text("No."), 1.3},
            {words.text("Squawk"), 5},
            {words.text("Found"), 2.9},
            {words.text("Correction"), 4},
            {words.text("Standing"), 3}};
}

Table::Row squawkRow(const Wording &words, const SquawkEntry &squawk)
{
    QStringList what{asIs(squawk.title)};
    addLine(what, asIs(squawk.detail));
    addLine(what, gravityAndPlace(words, squawk));
    addLine(what, photosIn(words, squawk.photo_numbers));
    const bool isOpen =
        squawk.state == SquawkEntry::State::Open || squawk.state == SquawkEntry::State::Fixed;
    return {{{asIs(squawk.number), markOf(squawk.severity), isOpen},
             {what.join(QLatin1Char('\n'))},
             {foundIn(words, squawk)},
             {correctionIn(words, squawk)},
             {standingOf(words, squawk), Mark::None, isOpen}}};
}

} // namespace lastrivet::print
