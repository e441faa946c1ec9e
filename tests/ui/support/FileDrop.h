// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>
#include <QDragEnterEvent>
#include <QDropEvent>
#include <QMimeData>
#include <QUrl>
#include <QWidget>

namespace lastrivet::test {

/// Drops a file on the window or something in it; false when nobody there takes it.
inline bool dropFile(QWidget &place, const QString &file)
{
    QMimeData offered;
    offered.setUrls({QUrl::fromLocalFile(file)});
    QDragEnterEvent entered(QPoint(5, 5), Qt::CopyAction, &offered, Qt::LeftButton, Qt::NoModifier);
    // One that is new counts as accepted.
    entered.ignore();
    QCoreApplication::sendEvent(&place, &entered);
    if (!entered.isAccepted())
        return false;
    QDropEvent dropped(QPointF(5, 5), Qt::CopyAction, &offered, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&place, &dropped);
    return true;
}

} // namespace lastrivet::test
