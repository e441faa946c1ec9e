// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/LogbookPrinter.h"

#include "ui/print/LogbookSections.h"
#include "ui/print/PacketSections.h"

namespace lastrivet::print {

std::optional<Printed> printLogbook(const packet::Logbook &log, const Imprint &imprint,
                                    const Pictures &pictures, const Choices &choices,
                                    const std::filesystem::path &place, const OnPercent &onPercent)
{
    const QString aircraft = aircraftName(log.aircraft);
    const QString title = choices.wording.text("Builder's log");
    std::size_t pictureCount = 0;
    for (const packet::Logbook::Chapter &chapter : log.chapters)
        pictureCount += chapter.photos.size();
    const Document document{.title = title + QStringLiteral(", ") + aircraft,
                            .author = asIs(log.aircraft.builder),
                            .head_left = aircraft,
                            .head_right = title,
                            .picture_count = int(pictureCount),
                            .draw = [&](Pages &pages, PictureShelf &shelf) {
                                drawLogbookFront(pages, log);
                                drawLogbookSums(pages, log);
                                drawLogbookChapters(pages, log, shelf);
                            }};
    return printDocument(document, imprint, pictures, choices, place, onPercent);
}

} // namespace lastrivet::print
