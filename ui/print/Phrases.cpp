// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/Phrases.h"

#include "core/profiles/Citation.h"

namespace lastrivet::print {

QString rangeOf(const Wording &words, const std::optional<double> &least,
                const std::optional<double> &most)
{
    // Spaces at which no line ends: half a range in a narrow column reads as a limit of its own.
    if (least && most)
        return words.number(*least) + QStringLiteral("\u00a0–\u00a0") + words.number(*most);
    if (least)
        return QStringLiteral("≥\u00a0") + words.number(*least);
    return most ? QStringLiteral("≤\u00a0") + words.number(*most) : QString();
}

QString sourceIn(const Wording &words, const std::string &source)
{
    if (source.empty())
        return {};
    const QString whole = words.text(source);
    return whole == asIs(source) ? words.text(citationMessage(source)) : whole;
}

QString torqueIn(const Wording &words, const packet::FastenerEntry &fastener)
{
    if (!fastener.torque_value)
        return words.text("torqued");
    const QString value = words.number(*fastener.torque_value);
    if (!fastener.torque_drag)
        return value;
    return words.text("{0}, drag {1}",
                      {value.toStdString(), words.number(*fastener.torque_drag).toStdString()}) +
           QLatin1Char('\n') +
           words.text("{0} net", {words.number(*fastener.netTorque()).toStdString()});
}

QString acceptanceIn(const Wording &words, const std::optional<Moment> &on, const std::string &by,
                     const std::string &basis)
{
    return on ? QLatin1Char('\n') +
                    words.text("Accepted on {0} by {1}: {2}", {on->text(), by, basis})
              : QString();
}

} // namespace lastrivet::print
