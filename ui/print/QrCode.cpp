// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/QrCode.h"

#include "core/base/Error.h"

#include <QPainter>
#include <QPainterPath>

#include <qrencode.h>

#include <algorithm>
#include <memory>

namespace lastrivet::print {

namespace {

struct Free {
    void operator()(QRcode *code) const { QRcode_free(code); }
};

constexpr int quietModules = 4;

/// Dark modules of a row that stand side by side are one rectangle: no hairlines between them.
QPainterPath modulesOf(const QRcode &code, QPointF topLeft, double module)
{
    QPainterPath path;
    const auto isDark = [&](int x, int y) { return (code.data[y * code.width + x] & 1) != 0; };
    for (int y = 0; y < code.width; ++y) {
        for (int x = 0; x < code.width; ++x) {
            const int from = x;
            while (x < code.width && isDark(x, y))
                ++x;
            if (x > from)
                path.addRect(topLeft.x() + from * module, topLeft.y() + y * module,
                             (x - from) * module, module);
        }
    }
    return path;
}

} // namespace

void drawQrCode(QPainter &painter, const std::string &text, const QRectF &place)
{
    const std::unique_ptr<QRcode, Free> code(
        QRcode_encodeString8bit(text.c_str(), 0, QR_ECLEVEL_M));
    if (!code)
        throw Fault("The text is too long for a QR code: " + text);
    const double side = std::min(place.width(), place.height());
    const double module = side / (code->width + 2 * quietModules);
    const QPointF topLeft = place.topLeft() + QPointF(quietModules, quietModules) * module;
    painter.fillPath(modulesOf(*code, topLeft, module), Qt::black);
}

} // namespace lastrivet::print
