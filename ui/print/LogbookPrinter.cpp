// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/LogbookPrinter.h"

#include "ui/print/LogbookSections.h"

namespace lastrivet::print {

std::optional<Printed> printLogbook(const packet::Logbook &log, const Imprint &imprint,
                                    const Pictures &pictures, const Choices &choices,
                                    const std::filesystem::path &place, const OnPercent &onPercent)
{
    Document document = documentAbout(log.aircraft, choices.wording.text("Builder's log"));
    for (const packet::Logbook::Chapter &chapter : log.chapters)
        document.picture_count += int(chapter.photos.size());
    document.sections = {
        [&](Pages &pages, PictureShelf &) { drawLogbookFront(pages, log); },
        [&](Pages &pages, PictureShelf &) { drawLogbookSums(pages, log); },
        [&](Pages &pages, PictureShelf &shelf) { drawLogbookChapters(pages, log, shelf); }};
    return printDocument(document, imprint, pictures, choices, place, onPercent);
}

} // namespace lastrivet::print
