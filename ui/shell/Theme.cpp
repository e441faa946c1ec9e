// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/Theme.h"

#include "ui/shell/PlainStyle.h"
#include "ui/shell/StyleSheet.h"
#include "ui/widgets/SvgIcon.h"

#include <QApplication>
#include <QEvent>
#include <QPalette>

#include <cmath>
#include <memory>
#include <utility>

namespace lastrivet::ui {

namespace {

QPalette paletteOf(const Colours &colours)
{
    QPalette palette;
    palette.setColor(QPalette::Window, colours.window);
    palette.setColor(QPalette::Base, colours.surface);
    palette.setColor(QPalette::AlternateBase, colours.window);
    palette.setColor(QPalette::Button, colours.raised);
    palette.setColor(QPalette::ToolTipBase, colours.surface);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText,
                            QPalette::ToolTipText, QPalette::HighlightedText})
        palette.setColor(role, colours.text);
    palette.setColor(QPalette::BrightText, colours.closedEarly);
    palette.setColor(QPalette::Highlight, colours.selection);
    palette.setColor(QPalette::PlaceholderText, colours.quietText);
    palette.setColor(QPalette::Link, colours.accent);
    palette.setColor(QPalette::LinkVisited, colours.accent);
    palette.setColor(QPalette::Light, colours.surface);
    palette.setColor(QPalette::Midlight, colours.raised);
    palette.setColor(QPalette::Mid, colours.line);
    palette.setColor(QPalette::Dark, colours.border);
    palette.setColor(QPalette::Shadow, colours.line);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        palette.setColor(QPalette::Disabled, role, colours.quietText);
    return palette;
}

bool isDarkNow(const QApplication &application)
{
    return application.palette().color(QPalette::Window).lightnessF() < 0.5F;
}

} // namespace

Theme::Theme(QApplication &application, Choice choice, QObject *parent)
    : QObject(parent)
    , m_application(application)
    , m_choice(choice)
    , m_systemIsDark(isDarkNow(application))
{
    application.setStyle(std::make_unique<PlainStyle>().release());
    apply();
    application.installEventFilter(this);
}

void Theme::choose(Choice choice)
{
    m_choice = choice;
    // Setting it again would style every widget anew.
    if (wantsDark() != m_isDark)
        apply();
}

bool Theme::wantsDark() const
{
    return m_choice == Choice::Dark || (m_choice == Choice::System && m_systemIsDark);
}

void Theme::apply()
{
    m_isDark = wantsDark();
    m_application.setPalette(paletteOf(colours()));
    m_application.setStyleSheet(styleSheetOf(colours()));
    Q_EMIT changed();
}

bool Theme::eventFilter(QObject *watched, QEvent *event)
{
    // The system's own event, which our palette does not cause. Every window gets one.
    if (event->type() == QEvent::ThemeChange && !std::exchange(m_isToLook, true))
        QMetaObject::invokeMethod(this, &Theme::lookAtSystem, Qt::QueuedConnection);
    return QObject::eventFilter(watched, event);
}

void Theme::lookAtSystem()
{
    m_isToLook = false;
    // Ours lies over the system's, which shows while there is none.
    m_application.setPalette(QPalette());
    m_systemIsDark = isDarkNow(m_application);
    if (wantsDark() != m_isDark)
        apply();
    else
        m_application.setPalette(paletteOf(colours()));
}

QIcon Theme::icon(const QString &name) const
{
    return svgIcon(name);
}

QIcon Theme::icon(const QString &name, const QColor &colour) const
{
    return svgIcon(name, colour);
}

QFont Theme::font(int steps) const
{
    QFont font = QApplication::font();
    font.setPointSizeF(font.pointSizeF() * std::pow(1.25, steps));
    return font;
}

} // namespace lastrivet::ui
