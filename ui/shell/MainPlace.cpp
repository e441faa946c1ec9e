// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/MainWindow.h"

#include <QGuiApplication>
#include <QScreen>
#include <QSettings>
#include <QStyle>

#include <algorithm>

// Where the window stands on the screen is kept from one time to the next.
namespace lastrivet::ui {

namespace {

const auto placeKey = QStringLiteral("window");

} // namespace

void MainWindow::keepPlace()
{
    m_surroundings.settings.setValue(placeKey, saveGeometry());
}

void MainWindow::restorePlace()
{
    resize(1280, 800);
    const bool isKnown = restoreGeometry(m_surroundings.settings.value(placeKey).toByteArray());
    if (windowState() & (Qt::WindowMaximized | Qt::WindowFullScreen))
        return;
    // The window must fit on the screen: complaints are shown at its foot. The real width of its
    // frame is known only once it is shown, so the style's is taken.
    const int frame = style()->pixelMetric(QStyle::PM_MdiSubWindowFrameWidth, nullptr, this);
    const int title = style()->pixelMetric(QStyle::PM_TitleBarHeight, nullptr, this);
    const QSize around(2 * frame, title + 2 * frame);
    const QScreen *there = QGuiApplication::screenAt(pos());
    const QRect room = (there ? there : screen())->availableGeometry();
    resize(size().boundedTo(room.size() - around));
    if (!isKnown)
        return;
    // Where the screen was larger, or its pixels less magnified, it may have stood farther off.
    const QPoint free(std::max(0, room.width() - width() - around.width()),
                      std::max(0, room.height() - height() - around.height()));
    const QPoint place(std::min(x(), room.left() + free.x()), std::min(y(), room.top() + free.y()));
    if (place != pos())
        move(place);
}

} // namespace lastrivet::ui
