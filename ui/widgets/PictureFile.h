// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <QSize>
#include <QString>

namespace lastrivet::ui {

/// A picture as a window shows it, or why there is none.
struct PictureRead {
    QImage image;
    QString failure;
};

/// Reads a photo, turned upright; where it is wider than `widest` (0: never), scaled down to that
/// on the way. The content decides what it is read as, and only photos are read: Qt has readers for
/// much else, which a strange file must not choose. Any thread.
PictureRead readPicture(const QString &file, int widest = 0);

} // namespace lastrivet::ui
