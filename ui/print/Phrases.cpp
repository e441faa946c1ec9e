// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/Phrases.h"

namespace lastrivet::print {

QString rangeOf(const Wording &words, const std::optional<double> &least,
                const std::optional<double> &most)
{
    if (least && most)
        return words.number(*least) + QStringLiteral(" – ") + words.number(*most);
    if (least)
        return QStringLiteral("≥ ") + words.number(*least);
    return most ? QStringLiteral("≤ ") + words.number(*most) : QString();
}

QString acceptanceIn(const Wording &words, const std::optional<Moment> &on, const std::string &by,
                     const std::string &basis)
{
    return on ? QLatin1Char('\n') +
                    words.text("Accepted on {0} by {1}: {2}", {on->text(), by, basis})
              : QString();
}

} // namespace lastrivet::print
