// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/SheetPreview.h"

#include "ui/widgets/PictureFile.h"

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
    const QImage image = readPicture(file, widest).image;
    setVisible(!image.isNull());
    if (!image.isNull())
        setPixmap(QPixmap::fromImage(image));
}

} // namespace lastrivet::ui
