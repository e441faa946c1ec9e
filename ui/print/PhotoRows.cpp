// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/PhotoRows.h"

#include "ui/print/Annotations.h"
#include "ui/print/Mark.h"
#include "ui/print/Pages.h"
#include "ui/print/PhotoGrid.h"
#include "ui/print/Placeholder.h"

#include <algorithm>

namespace lastrivet::print {

namespace {

constexpr std::size_t inOneRow = 3;
constexpr double between = points(12);
constexpr double captionGap = points(4);
/// Pictures are mostly four to three; higher ones are fitted in.
constexpr double heightOfWidth = 0.75;
constexpr int mostCaptionLines = 3;

/// One photograph with the words below it.
struct Tile {
    Tile(const Wording &words, const packet::Photo &shown, const PictureShelf::Place &where,
         double width)
        : photo(shown)
        , place(where)
        , title(photoTitle(words, shown), Size::Small, width, true)
        , caption(fitted(asIs(shown.caption), Size::Small, width, mostCaptionLines))
    {
    }

    int captionLines() const
    {
        return photo.caption.empty() ? 0 : std::min(caption.lineCount(), mostCaptionLines);
    }
    double wordsHeight() const
    {
        return captionGap + title.height() + captionLines() * caption.lineHeight();
    }

    const packet::Photo &photo;
    const PictureShelf::Place &place;
    TextBlock title;
    TextBlock caption;
};

void drawMissing(Pages &pages, const Tile &tile, const QRectF &frame)
{
    QPainter &painter = pages.painter();
    drawHatching(painter, QRectF(frame.topLeft(), QSizeF(points(8), frame.height())), points(4));
    const double inset = points(14);
    const TextBlock why(pages.wording().text(tile.place.missing) + QLatin1Char('\n') +
                            asIs(tile.photo.file),
                        Size::Small, frame.width() - inset - points(4));
    why.drawLines(painter, frame.topLeft() + QPointF(inset, points(6)), 0,
                  std::min(why.lineCount(), 6));
}

void drawTile(Pages &pages, const Tile &tile, const QRectF &room)
{
    QPainter &painter = pages.painter();
    painter.setPen(QPen(Qt::black, points(0.4)));
    QRectF frame = room;
    if (tile.place.index < 0) {
        painter.drawRect(frame);
        drawMissing(pages, tile, frame);
    } else {
        frame.setSize(
            QSizeF(tile.place.width, tile.place.height).scaled(room.size(), Qt::KeepAspectRatio));
        frame.moveBottomLeft(room.bottomLeft());
        painter.drawImage(frame, placeholder(tile.place.index));
        drawAnnotations(painter, frame, tile.photo.annotations);
        painter.setPen(QPen(Qt::black, points(0.4)));
        painter.drawRect(frame);
    }
    painter.setPen(Qt::black);
    const QPointF text = room.bottomLeft() + QPointF(0, captionGap);
    tile.title.draw(painter, text);
    tile.caption.drawLines(painter, text + QPointF(0, tile.title.height()), 0, tile.captionLines());
}

void drawRow(Pages &pages, const std::vector<Tile> &row, double width)
{
    const double height = width * heightOfWidth;
    double words = 0;
    for (const Tile &tile : row)
        words = std::max(words, tile.wordsHeight());
    pages.gap(points(10));
    pages.need(height + words);
    double left = pages.body().left();
    for (const Tile &tile : row) {
        drawTile(pages, tile, QRectF(left, pages.y(), width, height));
        left += width + between;
    }
    pages.advance(height + words);
}

} // namespace

void drawPhotoRows(Pages &pages, const std::vector<packet::Photo> &photos, PictureShelf &shelf)
{
    const double width = (pages.body().width() - between * double(inOneRow - 1)) / double(inOneRow);
    for (std::size_t first = 0; first < photos.size(); first += inOneRow) {
        std::vector<Tile> row;
        for (std::size_t i = first; i < std::min(first + inOneRow, photos.size()); ++i)
            row.emplace_back(pages.wording(), photos[i], shelf.place(photos[i]), width);
        drawRow(pages, row, width);
    }
}

} // namespace lastrivet::print
