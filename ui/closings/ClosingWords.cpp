// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/ClosingWords.h"

#include "core/packet/InWords.h"
#include "ui/convert/QtText.h"
#include "ui/widgets/Marks.h"

#include <QComboBox>
#include <QCoreApplication>

#include <array>

namespace lastrivet::ui {

namespace {

/// The words of a vocabulary on screen, in its order.
template <class Word> using ScreenWords = std::array<const char *, Words<Word>::list.size()>;

constexpr ScreenWords<SignOffResult> results{
    QT_TRANSLATE_NOOP("Closing", "accepted"),
    QT_TRANSLATE_NOOP("Closing", "accepted, with findings"),
    QT_TRANSLATE_NOOP("Closing", "rejected"),
};
constexpr ScreenWords<Seen> ways{
    QT_TRANSLATE_NOOP("Closing", "on site"),
    QT_TRANSLATE_NOOP("Closing", "by photo"),
    QT_TRANSLATE_NOOP("Closing", "by video"),
    QT_TRANSLATE_NOOP("Closing", "by message"),
};

QString translated(const char *words)
{
    return QCoreApplication::translate("Closing", words);
}

} // namespace

QString holdPointWords(HoldPointKind kind)
{
    return inWords(packet::inWords(kind));
}

QString roleWords(SignerRole role)
{
    return inWords(packet::inWords(role));
}

QString resultWords(SignOffResult result)
{
    return translated(results[std::size_t(result)]);
}

QString seenWords(Seen seen)
{
    return translated(ways[std::size_t(seen)]);
}

QString inspectionWords(InspectionKind kind)
{
    return inWords(packet::inWords(kind));
}

QString visitName(const Inspection &visit)
{
    QString kind = inspectionWords(visit.kind);
    kind[0] = kind[0].toUpper();
    const std::string &number = visit.report_number.empty() ? visit.reference : visit.report_number;
    return number.empty()
               ? kind
               : QCoreApplication::translate("Closing", "%1, %2").arg(kind, toQt(number));
}

QString holdPointName(const Records &records, const HoldPoint &point)
{
    const Closing *closing = records.find(point.closing_id);
    return QCoreApplication::translate("Closing", "%1: %2")
        .arg(closing ? toQt(closing->title) : QString(), holdPointWords(point.kind));
}

void showState(ListRow &row, const readiness::ClosingAnswer &answer)
{
    using enum readiness::State;
    if (answer.begun || answer.state == Closed || answer.state == ClosedEarly) {
        row.state = answer.state;
        row.figure = shortStateWords(answer.state);
    } else {
        row.icon = stateIcon(answer.state, false);
        row.figure = stateWords(answer.state, false);
    }
}

void offerResults(QComboBox &box)
{
    for (std::size_t i = 0; i < results.size(); ++i)
        box.addItem(resultWords(SignOffResult(i)), int(i));
}

void offerSeen(QComboBox &box)
{
    for (std::size_t i = 0; i < ways.size(); ++i)
        box.addItem(seenWords(Seen(i)), int(i));
}

} // namespace lastrivet::ui
