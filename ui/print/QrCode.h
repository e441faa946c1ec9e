// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>

#include <string>

class QPainter;

namespace lastrivet::print {

/// Draws a text as a QR code (ISO/IEC 18004, correction level M) with its quiet zone of four
/// modules into the square of the place. Throws a `Fault` for a text that no code can hold.
void drawQrCode(QPainter &painter, const std::string &text, const QRectF &place);

} // namespace lastrivet::print
