// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/workshop/OwnLimits.h"
#include "core/workshop/Quantities.h"
#include "core/workshop/WorkshopTable.h"

#include <QString>
#include <QStringList>

#include <functional>
#include <string>
#include <vector>

namespace lastrivet::ui {

/// Something that a sum asks for: a number with its unit, or one of a few words.
struct SumField {
    QString label;
    workshop::Quantity quantity = workshop::Quantity::Number;
    /// What stands there before anybody typed, in the tables' units.
    double initial = 0;
    /// A choice when there are any: what is shown, and what it means.
    QStringList choices{};
    std::vector<std::string> keys{};
};

/// What was filled in, in the order of the fields.
struct Entered {
    /// In the tables' units; 0 where a word is chosen.
    std::vector<double> numbers;
    std::vector<std::string> keys;
    UnitSystem units = UnitSystem::Imperial;
    std::vector<workshop::OwnLimit> own{};
};

/// A line of an answer, with where it is from.
struct Figure {
    QString what;
    QString value;
    /// The rule or basis, where several sources answer.
    QString basis;
    workshop::Source source;
    /// What the sum is made for.
    bool isMain = false;
    /// Set aside by a limit of the project's own.
    bool isAside = false;
    /// A limit that what was worked out or entered lies beyond.
    bool isExceeded = false;
};

/// Lines, or one sentence why there are none.
struct SumAnswer {
    std::vector<Figure> figures;
    QString refusal;
    /// What a limit of the project's own would be kept under; none when empty.
    std::string own_subject{};
};

/// A sum of the workshop: what it asks for and how it is worked out.
struct Sum {
    QString title;
    /// One sentence on how it is used.
    QString how;
    std::vector<SumField> fields;
    std::function<SumAnswer(const Entered &)> work;
    /// The unit of a limit of the project's own.
    QString own_unit{};
};

/// "0.4375 in", "11.11 mm": a number of the tables as the person reads it.
QString figureText(double value, workshop::Quantity quantity, UnitSystem units);
/// "50 – 70 in-lb"; one end alone where the other is open.
QString spanText(std::optional<double> least, std::optional<double> most,
                 workshop::Quantity quantity, UnitSystem units);
/// "45 – 55 in-lb" as it was kept.
QString ownText(const workshop::OwnLimit &limit);

std::vector<Sum> boltSums();
std::vector<Sum> rivetSums();
std::vector<Sum> sheetSums();
std::vector<Sum> wireSums();
std::vector<Sum> cableSums();

} // namespace lastrivet::ui
