// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Media.h"

#include <QRectF>

#include <vector>

class QPainter;

namespace lastrivet::print {

/// Draws arrows, circles and words over a picture, black with a white edge so that they show on any
/// ground, also when photocopied.
void drawAnnotations(QPainter &painter, const QRectF &picture,
                     const std::vector<Media::Annotation> &annotations);

} // namespace lastrivet::print
