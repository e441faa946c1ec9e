// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>
#include <QSizeF>

#include <vector>

namespace lastrivet::print {

/// A mark in a picture with the short sign that is to stand beside it.
struct SignedMark {
    QRectF mark;
    QSizeF sign;
    /// At which side the sign is tried first.
    bool begins_left = false;
};

/// Where the signs stand, in the order of their marks: on no mark and on no other sign, as near as
/// that allows, within the field. A sign that finds no such place stands beside its mark all the
/// same. `gap` is the least distance between a mark and its sign.
std::vector<QRectF> placesOfSigns(const std::vector<SignedMark> &marks, const QRectF &field,
                                  double gap);

} // namespace lastrivet::print
