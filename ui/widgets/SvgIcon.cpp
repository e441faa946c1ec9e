// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/SvgIcon.h"

#include <QGuiApplication>
#include <QIconEngine>
#include <QPainter>
#include <QPalette>
#include <QPixmapCache>
#include <QSvgRenderer>

namespace lastrivet::ui {

namespace {

QPixmap tinted(const QString &name, QSize size, const QColor &colour)
{
    const QString key = QStringLiteral("%1 %2 %3").arg(name, colour.name()).arg(size.width());
    QPixmap pixmap;
    if (QPixmapCache::find(key, &pixmap))
        return pixmap;
    pixmap = QPixmap(size);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    QSvgRenderer(QStringLiteral(":/icons/%1.svg").arg(name)).render(&painter);
    painter.setCompositionMode(QPainter::CompositionMode_SourceIn);
    painter.fillRect(pixmap.rect(), colour);
    painter.end();
    QPixmapCache::insert(key, pixmap);
    return pixmap;
}

/// Draws one of our monochrome pictures in one colour, sharp at any size.
class SvgIconEngine final : public QIconEngine {
public:
    SvgIconEngine(QString name, QColor colour)
        : m_name(std::move(name))
        , m_colour(std::move(colour))
    {
    }

    void paint(QPainter *painter, const QRect &place, QIcon::Mode mode, QIcon::State) override
    {
        paintSvg(*painter, place, m_name, colourFor(mode));
    }
    QPixmap pixmap(const QSize &size, QIcon::Mode mode, QIcon::State) override
    {
        return tinted(m_name, size, colourFor(mode));
    }
    QIconEngine *clone() const override { return new SvgIconEngine(*this); }

private:
    QColor colourFor(QIcon::Mode mode) const
    {
        if (mode == QIcon::Disabled)
            return QGuiApplication::palette().color(QPalette::Disabled, QPalette::Text);
        return m_colour.isValid() ? m_colour : QGuiApplication::palette().color(QPalette::Text);
    }

    QString m_name;
    QColor m_colour;
};

} // namespace

QIcon svgIcon(const QString &name, const QColor &colour)
{
    return QIcon(new SvgIconEngine(name, colour));
}

void paintSvg(QPainter &painter, const QRectF &place, const QString &name, const QColor &colour)
{
    const qreal ratio = painter.device()->devicePixelRatioF();
    QPixmap pixmap = tinted(name, (place.size() * ratio).toSize(), colour);
    pixmap.setDevicePixelRatio(ratio);
    painter.drawPixmap(place.topLeft(), pixmap);
}

} // namespace lastrivet::ui
