// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/Theme.h"

#include "ui/widgets/SvgIcon.h"

#include <QApplication>
#include <QPalette>
#include <QStyleFactory>

#include <cmath>

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
        palette.setColor(QPalette::Disabled, role, colours.border);
    return palette;
}

/// What a palette cannot say: focus is a ring of 2 pixels, frames are hairlines.
QString styleSheetOf(const Colours &colours)
{
    return QStringLiteral(R"(
QPushButton { padding: 5px 14px; border: 1px solid %1; border-radius: 3px; background: %2; }
QPushButton:hover { background: %5; }
QPushButton:pressed, QPushButton:checked { background: %3; }
QPushButton:disabled { border-color: %4; }
QPushButton:focus { border: 2px solid %6; padding: 4px 13px; }
QPushButton[primary="true"] { background: %6; color: %7; border-color: %6; }
QPushButton[primary="true"]:focus { border: 2px solid %8; }
QPushButton[primary="true"]:disabled { background: %2; color: %1; border-color: %4; }
QPushButton[flat="true"] { background: transparent; border-color: transparent; padding: 5px 8px; }
QPushButton[flat="true"]:hover { background: %5; }
QPushButton[flat="true"]:focus { border: 2px solid %6; padding: 4px 7px; }
QLineEdit, QPlainTextEdit, QComboBox, QDateEdit, QDateTimeEdit, QSpinBox {
    border: 1px solid %1; border-radius: 3px; padding: 4px 6px; background: %5; }
QLineEdit:focus, QPlainTextEdit:focus, QComboBox:focus, QDateEdit:focus, QDateTimeEdit:focus,
QSpinBox:focus { border: 2px solid %6; padding: 3px 5px; }
QComboBox::drop-down, QDateEdit::drop-down, QDateTimeEdit::drop-down {
    border: none; width: 22px; }
QComboBox::down-arrow, QDateEdit::down-arrow, QDateTimeEdit::down-arrow {
    image: url(:/icons/actions/choose.svg); width: 12px; height: 12px; }
QAbstractItemView { border: 1px solid %4; background: %5; outline: none; }
QAbstractItemView:focus { border: 2px solid %6; }
QHeaderView::section { background: %2; border: none; border-bottom: 1px solid %4;
    padding: 5px 8px; }
QScrollArea { border: none; background: transparent; }
QToolTip { border: 1px solid %1; padding: 4px; }
QMenuBar { background: %2; }
)")
        .arg(colours.border.name(), colours.raised.name(), colours.selection.name(),
             colours.line.name(), colours.surface.name(), colours.accent.name(),
             colours.accentText.name(), colours.text.name());
}

} // namespace

Theme::Theme(QApplication &application, QObject *parent)
    : QObject(parent)
    , m_application(application)
    , m_systemIsDark(application.palette().color(QPalette::Window).lightnessF() < 0.5F)
{
    application.setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    apply();
}

void Theme::choose(Choice choice)
{
    m_choice = choice;
    apply();
}

void Theme::apply()
{
    m_isDark = m_choice == Choice::Dark || (m_choice == Choice::System && m_systemIsDark);
    m_application.setPalette(paletteOf(colours()));
    m_application.setStyleSheet(styleSheetOf(colours()));
    Q_EMIT changed();
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
