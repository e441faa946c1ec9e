// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/PhotoGrid.h"

#include "ui/print/Annotations.h"
#include "ui/print/Mark.h"
#include "ui/print/Pages.h"
#include "ui/print/Placeholder.h"

#include <algorithm>
#include <array>
#include <optional>

namespace lastrivet::print {

namespace {

constexpr double captionGap = points(5);
constexpr double betweenRows = points(16);
constexpr double betweenPictures = points(14);
/// Fewer pixels on an inch of paper look like mud.
constexpr double leastPixelsPerInch = 150;
constexpr int mostCaptionLines = 6;

/// One photograph with its place in a row.
class Tile {
public:
    Tile(Pages &pages, const packet::Photo &photo, const PictureShelf::Place &place, double width,
         double mostHeight);

    double width() const { return m_width; }
    double pictureHeight() const { return m_picture.height(); }
    double captionHeight() const;
    void draw(Pages &pages, double left, double pictureBottom) const;

private:
    void drawMissing(Pages &pages, const QRectF &frame) const;

    const packet::Photo &m_photo;
    const PictureShelf::Place &m_place;
    double m_width;
    QSizeF m_picture;
    TextBlock m_title;
    TextBlock m_caption;
};

QSizeF pictureSize(const PictureShelf::Place &place, double width, double mostHeight)
{
    if (place.index < 0)
        return {width, points(120)};
    const double unitsPerPixel = unitsPerInch / leastPixelsPerInch;
    const QSizeF largest(place.width * unitsPerPixel, place.height * unitsPerPixel);
    const QSizeF room(width, mostHeight);
    const QSizeF fitting = largest.scaled(room, Qt::KeepAspectRatio);
    return fitting.width() > largest.width() ? largest : fitting;
}

Tile::Tile(Pages &pages, const packet::Photo &photo, const PictureShelf::Place &place, double width,
           double mostHeight)
    : m_photo(photo)
    , m_place(place)
    , m_width(width)
    , m_picture(pictureSize(place, width, mostHeight))
    , m_title(photoTitle(pages.wording(), photo), Size::Small, width, true)
    , m_caption(fitted(asIs(photo.caption), Size::Small, width, mostCaptionLines))
{
}

double Tile::captionHeight() const
{
    const int lines =
        m_photo.caption.empty() ? 0 : std::min(m_caption.lineCount(), mostCaptionLines);
    return captionGap + m_title.height() + lines * m_caption.lineHeight();
}

void Tile::drawMissing(Pages &pages, const QRectF &frame) const
{
    QPainter &painter = pages.painter();
    painter.setPen(QPen(Qt::black, points(0.8)));
    painter.drawRect(frame);
    const QRectF edge(frame.left(), frame.top(), points(14), frame.height());
    drawHatching(painter, edge, points(5));
    const double inset = points(26);
    const TextBlock head(pages.wording().text("This photograph could not be printed."), Size::Body,
                         frame.width() - inset - points(10), true);
    const TextBlock why(pages.wording().text(m_place.missing) + QLatin1Char('\n') +
                            asIs(m_photo.file),
                        Size::Small, frame.width() - inset - points(10));
    painter.setPen(Qt::black);
    head.draw(painter, frame.topLeft() + QPointF(inset, points(12)));
    why.drawLines(painter, frame.topLeft() + QPointF(inset, points(16) + head.height()), 0, 5);
}

void Tile::draw(Pages &pages, double left, double pictureBottom) const
{
    QPainter &painter = pages.painter();
    QRectF frame(QPointF(left, pictureBottom - m_picture.height()), m_picture);
    if (m_place.index < 0) {
        drawMissing(pages, frame);
    } else {
        painter.drawImage(frame, placeholder(m_place.index));
        drawAnnotations(painter, frame, m_photo.annotations);
        painter.setPen(QPen(Qt::black, points(0.4)));
        painter.drawRect(frame);
    }
    painter.setPen(Qt::black);
    const QPointF text(left, pictureBottom + captionGap);
    m_title.draw(painter, text);
    if (!m_photo.caption.empty())
        m_caption.drawLines(painter, text + QPointF(0, m_title.height()), 0, mostCaptionLines);
}

bool isUpright(const PictureShelf::Place &place)
{
    return place.index >= 0 && place.height > place.width;
}

/// Room for a picture so that two rows fill what is left of the page; a page that is more than half
/// full gets one row of the usual height.
double mostPictureHeight(const Pages &pages)
{
    constexpr double captionLines = 3;
    const double usual = (pages.body().height() - betweenRows) / 2;
    // A page that ends early is to pass a row on, not to shrink both.
    const double whole = pages.body().bottom() - pages.y();
    const double left = whole - (pages.isAtTop() ? 0 : betweenRows);
    const bool isForTwo = left > 1.6 * usual;
    const double row = isForTwo ? (left - betweenRows) / 2 : usual;
    return std::min(row, usual) - captionGap - captionLines * lineHeight(Size::Small);
}

void drawRow(Pages &pages, const std::vector<Tile> &row)
{
    double picture = 0;
    double caption = 0;
    for (const Tile &tile : row) {
        picture = std::max(picture, tile.pictureHeight());
        caption = std::max(caption, tile.captionHeight());
    }
    pages.gap(betweenRows);
    pages.need(picture + caption);
    double left = pages.body().left();
    for (const Tile &tile : row) {
        tile.draw(pages, left, pages.y() + picture);
        left += tile.width() + betweenPictures;
    }
    pages.advance(picture + caption);
}

double halfOf(const Pages &pages)
{
    return (pages.body().width() - betweenPictures) / 2;
}

/// A photograph of each side, where that has one.
class Pair {
public:
    Pair(Pages &pages, std::size_t index, const std::vector<packet::Photo> &left,
         const std::vector<packet::Photo> &right, PictureShelf &shelf);

    double height() const { return m_picture + m_caption; }
    void draw(Pages &pages, bool saysWhatIsMissing) const;

private:
    std::array<std::optional<Tile>, 2> m_tiles;
    double m_picture = 0;
    double m_caption = 0;
};

Pair::Pair(Pages &pages, std::size_t index, const std::vector<packet::Photo> &left,
           const std::vector<packet::Photo> &right, PictureShelf &shelf)
{
    // Lying pictures of four to three fill their half.
    constexpr double heightOfWidth = 0.75;
    const double half = halfOf(pages);
    for (std::size_t side = 0; side < 2; ++side) {
        const auto &photos = side == 0 ? left : right;
        if (index >= photos.size())
            continue;
        m_tiles[side].emplace(pages, photos[index], shelf.place(photos[index]), half,
                              half * heightOfWidth);
        m_picture = std::max(m_picture, m_tiles[side]->pictureHeight());
        m_caption = std::max(m_caption, m_tiles[side]->captionHeight());
    }
}

void Pair::draw(Pages &pages, bool saysWhatIsMissing) const
{
    const double half = halfOf(pages);
    for (std::size_t side = 0; side < 2; ++side) {
        const double x = pages.body().left() + double(side) * (half + betweenPictures);
        if (m_tiles[side])
            m_tiles[side]->draw(pages, x, pages.y() + m_picture);
        else if (saysWhatIsMissing)
            TextBlock(pages.wording().text("No photograph on record."), Size::Small, half)
                .draw(pages.painter(), {x, pages.y()});
    }
}

} // namespace

QString photoDay(const Wording &words, const packet::Photo &photo)
{
    if (photo.taken_on && photo.is_day_of_intake)
        return words.text("taken in on {0}", {photo.taken_on->dayOnly().text()});
    return words.date(photo.taken_on);
}

QString photoTitle(const Wording &words, const packet::Photo &photo)
{
    QStringList pieces{words.text("Photo {0}", {std::to_string(photo.number)})};
    if (photo.taken_on)
        pieces << photoDay(words, photo);
    if (!photo.part.empty())
        pieces << asIs(photo.part);
    return pieces.join(QStringLiteral(" · "));
}

void drawPhotos(Pages &pages, const std::vector<packet::Photo> &photos, PictureShelf &shelf)
{
    const double whole = pages.body().width();
    const double half = halfOf(pages);
    // The second row of a page is as high as its first.
    double mostHeight = 0;
    int page = -1;
    for (std::size_t i = 0; i < photos.size();) {
        const bool isPair = i + 1 < photos.size() && isUpright(shelf.place(photos[i])) &&
                            isUpright(shelf.place(photos[i + 1]));
        if (page != pages.outline().page_count) {
            mostHeight = mostPictureHeight(pages);
            page = pages.outline().page_count;
        }
        std::vector<Tile> row;
        for (std::size_t end = i + (isPair ? 2 : 1); i < end; ++i)
            row.emplace_back(pages, photos[i], shelf.place(photos[i]), isPair ? half : whole,
                             mostHeight);
        drawRow(pages, row);
    }
}

double heightOfFirstPair(Pages &pages, const std::vector<packet::Photo> &left,
                         const std::vector<packet::Photo> &right, PictureShelf &shelf)
{
    return Pair(pages, 0, left, right, shelf).height();
}

double heightOfWordsBelow(const Pages &pages, const packet::Photo &photo)
{
    const double half = halfOf(pages);
    const TextBlock title(photoTitle(pages.wording(), photo), Size::Small, half, true);
    const TextBlock caption = fitted(asIs(photo.caption), Size::Small, half, mostCaptionLines);
    return captionGap + title.height() + (photo.caption.empty() ? 0 : caption.height());
}

void drawSideBySide(Pages &pages, const std::vector<packet::Photo> &left,
                    const std::vector<packet::Photo> &right, PictureShelf &shelf,
                    bool areBeforeAndAfter)
{
    for (std::size_t i = 0; i < std::max(left.size(), right.size()); ++i) {
        const Pair pair(pages, i, left, right, shelf);
        pages.need(pair.height());
        pair.draw(pages, areBeforeAndAfter && i == 0);
        pages.advance(pair.height() + points(6));
    }
}

} // namespace lastrivet::print
