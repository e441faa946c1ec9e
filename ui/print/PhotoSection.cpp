// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/PacketSections.h"

#include "ui/print/Pages.h"
#include "ui/print/PhotoGrid.h"
#include "ui/print/Table.h"

namespace lastrivet::print {

namespace {

void drawVideos(Pages &pages, const std::vector<packet::Photo> &videos)
{
    if (videos.empty())
        return;
    const Wording &words = pages.wording();
    Table table;
    table.columns = {{words.text("File"), 4},
                     {words.text("Taken"), 2},
                     {words.text("Part"), 3},
                     {words.text("Caption"), 5}};
    for (const packet::Photo &video : videos)
        table.rows.push_back({{{asIs(video.file)},
                               {photoDay(words, video)},
                               {asIs(video.part)},
                               {asIs(video.caption)}}});
    pages.heading(1, words.text("Videos, to be asked for"),
                  leastHeightOf(table, pages.body().width()));
    drawTable(pages, table);
}

} // namespace

void drawPhotographs(Pages &pages, const packet::Packet &packet, PictureShelf &shelf)
{
    const Wording &words = pages.wording();
    pages.breakPage();
    pages.heading(0, words.text("Photographs of the open structure"), points(60));
    if (packet.photos.empty())
        pages.text(words.text("No photograph of the open structure is on record."));
    drawPhotos(pages, packet.photos, shelf);
    drawVideos(pages, packet.videos);
}

void drawSignedSheets(Pages &pages, const packet::Packet &packet, PictureShelf &shelf)
{
    if (packet.signed_sheets.empty())
        return;
    pages.breakPage();
    pages.heading(0, pages.wording().text("Sheets signed before"), points(60));
    drawPhotos(pages, packet.signed_sheets, shelf);
}

} // namespace lastrivet::print
