// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/SheetPreview.h"

#include <QImageReader>

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr int widest = 520;

} // namespace

SheetPreview::SheetPreview(QWidget *parent)
    : QLabel(parent)
{
    setAccessibleName(tr("The photographed sheet"));
    hide();
}

void SheetPreview::showFile(const QString &file)
{
    hide();
    if (file.isEmpty())
        return;
    QImageReader reader(file);
    reader.setAutoTransform(true);
    const QSize size = reader.size();
    // Decoded no larger than it is shown: a phone's picture has a hundred times the pixels.
    const bool isTurned = reader.transformation() & QImageIOHandler::TransformationRotate90;
    const int width = isTurned ? size.height() : size.width();
    if (width > widest)
        reader.setScaledSize(size * widest / width);
    const QImage image = reader.read();
    setVisible(!image.isNull());
    if (!image.isNull())
        setPixmap(QPixmap::fromImage(image));
}

} // namespace lastrivet::ui
