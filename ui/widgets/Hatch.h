// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/Answer.h"

#include <optional>

class QPainter;
class QPainterPath;

namespace lastrivet::ui {

struct Colours;

/// Fills a shape with the hatching of a state, which tells states apart without colour; without a
/// state the shape is outlined only, and dotted while nothing in it was begun.
void paintHatched(QPainter &painter, const QPainterPath &shape,
                  const std::optional<readiness::State> &state, bool begun, const Colours &colours);

} // namespace lastrivet::ui
