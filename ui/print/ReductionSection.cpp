// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/Facts.h"
#include "ui/print/PacketSections.h"
#include "ui/print/Pages.h"

#include <QStringList>

#include <string>
#include <vector>

namespace lastrivet::print {

namespace {

/// "3, 7 – 12, 15": numbers as their captions write them, those that follow each other drawn
/// together.
QString runsOf(const std::vector<int> &numbers)
{
    QStringList runs;
    for (std::size_t first = 0; first < numbers.size();) {
        std::size_t last = first;
        while (last + 1 < numbers.size() && numbers[last + 1] == numbers[last] + 1)
            ++last;
        const QString from = QString::number(numbers[first]);
        const QString to = QString::number(numbers[last]);
        runs << (first == last ? from : from + QStringLiteral(" – ") + to);
        first = last + 1;
    }
    return runs.join(QStringLiteral(", "));
}

/// Numbers of the photographs that the packet has a place for, and no picture.
std::vector<int> missingFrom(const packet::Packet &packet, PictureShelf &shelf)
{
    std::vector<int> missing;
    for (const auto *photos : {&packet.photos, &packet.signed_sheets}) {
        for (const packet::Photo &photo : *photos) {
            if (shelf.place(photo).index < 0)
                missing.push_back(photo.number);
        }
    }
    return missing;
}

/// Which photographs are in it and which are not, by their numbers.
QStringList photographsSaid(const Wording &words, const packet::Packet::Reduction &reduction,
                            const std::vector<int> &missing)
{
    const std::string all = words.count(reduction.photos_in_all);
    QStringList said;
    if (!reduction.left_out.empty())
        said << words.text("Of {0} photographs, {1} are left out: {2}.",
                           {all, words.count(reduction.left_out.size()),
                            runsOf(reduction.left_out).toStdString()});
    else if (missing.empty() && reduction.photos_in_all > 0)
        said << words.text("All {0} photographs are in it.", {all});
    if (!missing.empty())
        said << words.text("Photographs that could not be printed, each with the reason in its "
                           "place: {0}.",
                           {runsOf(missing).toStdString()});
    return said;
}

} // namespace

void drawReduction(Pages &pages, const packet::Packet &packet, PictureShelf &shelf)
{
    if (!packet.reduction)
        return;
    const Wording &words = pages.wording();
    const auto &reduction = *packet.reduction;
    QStringList said;
    if (reduction.longest_edge > 0)
        said << words.text("Pictures are at most {0} pixels long.",
                           {std::to_string(reduction.longest_edge)});
    said << photographsSaid(words, reduction, missingFrom(packet, shelf));
    said << words.text("The whole packet and the photographs in full size are with the builder.");
    drawNotice(pages, words.text("This is the version to send"), said.join(QLatin1Char(' ')));
}

} // namespace lastrivet::print
