// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/PictureFile.h"

#include "core/evidence/FileKind.h"

#include <QCoreApplication>
#include <QFile>
#include <QImageReader>

namespace lastrivet::ui {

namespace {

QByteArray formatOf(QFile &file)
{
    const QByteArray beginning = file.peek(qint64(evidence::sniffedBytes));
    const auto kind = evidence::sniff(
        {reinterpret_cast<const std::uint8_t *>(beginning.data()), std::size_t(beginning.size())});
    if (!kind || evidence::mediaKind(*kind) != MediaKind::Photo)
        return {};
    const auto suffix = evidence::suffix(*kind);
    return {suffix.data(), qsizetype(suffix.size())};
}

/// Read at a reduced size: a phone's picture has a hundred times the pixels that are shown.
void scale(QImageReader &reader, int widest)
{
    const QSize size = reader.size();
    const bool isTurned = reader.transformation() & QImageIOHandler::TransformationRotate90;
    const int width = isTurned ? size.height() : size.width();
    if (widest > 0 && width > widest)
        reader.setScaledSize(size * widest / width);
}

} // namespace

PictureRead readPicture(const QString &name, int widest)
{
    QFile file(name);
    if (!file.open(QIODevice::ReadOnly))
        return {{}, file.errorString()};
    const QByteArray format = formatOf(file);
    if (format.isEmpty())
        return {{}, QCoreApplication::translate("PictureFile", "This file is no photo.")};
    QImageReader reader(&file, format);
    reader.setAutoDetectImageFormat(false);
    reader.setAutoTransform(true);
    scale(reader, widest);
    PictureRead read;
    read.image = reader.read();
    if (read.image.isNull())
        read.failure = reader.errorString();
    return read;
}

} // namespace lastrivet::ui
