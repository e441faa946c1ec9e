// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/Overlay.h"

#include <QEvent>
#include <QWidget>

#include <utility>

namespace lastrivet::ui {

namespace {

/// Lives as long as the overlay.
class SizeWatch final : public QObject {
public:
    SizeWatch(QWidget &overlay, std::function<void()> place)
        : QObject(&overlay)
        , m_overlay(overlay)
        , m_place(std::move(place))
    {
    }

    bool eventFilter(QObject *watched, QEvent *event) override
    {
        if (event->type() == QEvent::Resize && m_overlay.isVisible())
            m_place();
        return QObject::eventFilter(watched, event);
    }

private:
    QWidget &m_overlay;
    std::function<void()> m_place;
};

} // namespace

void keepPlaced(QWidget &overlay, const std::function<void()> &place)
{
    if (QWidget *below = overlay.parentWidget())
        below->installEventFilter(new SizeWatch(overlay, place));
}

} // namespace lastrivet::ui
