// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QPainter;
class QStyleOptionViewItem;

namespace lastrivet::ui {

struct Colours;

/// What lies behind a row that a delegate draws itself: a hairline below, the colour of what is
/// chosen, and the ring of focus.
void paintRowFrame(QPainter &painter, const QStyleOptionViewItem &option, const Colours &colours);

} // namespace lastrivet::ui
