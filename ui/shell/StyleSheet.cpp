// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/StyleSheet.h"

#include "ui/shell/Colours.h"

#include <utility>

namespace lastrivet::ui {

namespace {

constexpr const char *rules = R"(
QPushButton { padding: 5px 14px; border: 1px solid @border; border-radius: 3px;
    background: @raised; }
QPushButton:hover { background: @surface; }
QPushButton:pressed, QPushButton:checked { background: @selection; }
QPushButton:disabled { color: @quiet; border-color: @line; }
QPushButton:focus { border: 2px solid @accent; padding: 4px 13px; }
QPushButton[primary="true"] { background: @accent; color: @onAccent; border-color: @accent; }
QPushButton[primary="true"]:focus { border: 2px solid @text; }
QPushButton[primary="true"]:disabled { background: @raised; color: @quiet;
    border-color: @line; }
QPushButton[flat="true"] { background: transparent; border-color: transparent; color: @accent;
    padding: 5px 8px; }
QPushButton[flat="true"]:hover { background: @surface; }
QPushButton[flat="true"]:disabled { color: @quiet; }
QPushButton[flat="true"]:focus { border: 2px solid @accent; padding: 4px 7px; }
QPushButton::menu-indicator { image: url(:/icons/actions/choose.svg); width: 12px; height: 12px;
    subcontrol-origin: padding; subcontrol-position: center right; right: 6px; }
QLineEdit, QPlainTextEdit, QTextEdit, QComboBox, QDateEdit, QDateTimeEdit, QSpinBox {
    border: 1px solid @border; border-radius: 3px; padding: 4px 6px; background: @surface; }
QLineEdit:focus, QPlainTextEdit:focus, QTextEdit:focus, QComboBox:focus, QDateEdit:focus,
QDateTimeEdit:focus, QSpinBox:focus { border: 2px solid @accent; padding: 3px 5px; }
/* The height of its list comes from the padding, which must be the same with the focus. */
QComboBox { margin: 1px; padding: 3px 5px; }
QComboBox:focus { margin: 0; }
QLineEdit:disabled, QPlainTextEdit:disabled, QTextEdit:disabled, QDateEdit:disabled,
QDateTimeEdit:disabled, QSpinBox:disabled { color: @quiet; border-color: @line; }
QCheckBox:disabled, QRadioButton:disabled { color: @quiet; }
QComboBox:disabled { color: @quiet; border-color: @line; background: @raised; }
QComboBox QLineEdit, QComboBox QLineEdit:focus { border: none; padding: 0; }
QComboBox::drop-down, QDateEdit::drop-down { border: none; width: 24px; }
QSpinBox::up-button, QSpinBox::down-button { border: none; width: 20px; }
QSpinBox::up-arrow { image: url(:/icons/actions/raise.svg); width: 10px; height: 10px; }
QSpinBox::down-arrow { image: url(:/icons/actions/choose.svg); width: 10px; height: 10px; }
QComboBox::down-arrow, QDateEdit::down-arrow { image: url(:/icons/actions/choose.svg); width: 12px; height: 12px; }
QCheckBox::indicator, QRadioButton::indicator, QAbstractItemView::indicator {
    width: 14px; height: 14px; border: 1px solid @border; background: @surface; }
QCheckBox::indicator, QAbstractItemView::indicator { border-radius: 2px; }
QRadioButton::indicator { border-radius: 7px; }
QCheckBox::indicator:checked, QAbstractItemView::indicator:checked {
    image: url(:/icons/controls/@tick.svg); background: @accent; border-color: @accent; }
QCheckBox::indicator:indeterminate, QAbstractItemView::indicator:indeterminate {
    image: url(:/icons/controls/@partly.svg); background: @accent; border-color: @accent; }
QRadioButton::indicator:checked { border: 4px solid @accent; width: 8px; height: 8px; }
QCheckBox:focus, QRadioButton:focus { border: 2px solid @accent; border-radius: 3px; }
QCheckBox, QRadioButton { border: 2px solid transparent; padding: 1px 3px; }
QAbstractItemView { border: 1px solid @line; background: @surface; outline: none; }
QAbstractItemView:focus { border: 2px solid @accent; }
QAbstractItemView[ownRing="true"]:focus { border: 1px solid @line; }
QComboBox QAbstractItemView:focus { border: 1px solid @border; }
QTableView::item { padding: 0 6px; }
QListView[checkLines="true"]::item { padding: 3px 0; color: @text; }
QListView[checkLines="true"]::item:selected { background: @selection; }
QHeaderView::section { background: @raised; border: none; border-bottom: 1px solid @line;
    padding: 5px 8px 5px 4px; }
QTableView[roomy="true"] QHeaderView::section { padding: 5px 8px; }
QScrollArea { border: none; background: transparent; }
QScrollBar { background: @window; border: none; }
QScrollBar:vertical { width: 14px; }
QScrollBar:horizontal { height: 14px; }
QScrollBar::handle { background: @border; border-radius: 4px; }
QScrollBar::handle:vertical { min-height: 32px; margin: 1px 2px; }
QScrollBar::handle:horizontal { min-width: 32px; margin: 2px 1px; }
QScrollBar::handle:hover, QScrollBar::handle:pressed { background: @quiet; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; border: none; }
QScrollBar::add-page, QScrollBar::sub-page { background: none; }
QFrame[afloat="true"] { border: 1px solid @border; background: @surface; }
QLabel[chip="true"] { border: 1px solid @line; border-radius: 3px; padding: 1px 7px;
    background: @raised; }
QToolTip { border: 1px solid @border; padding: 4px; }
QMenuBar { background: @raised; }
)";

} // namespace

QString styleSheetOf(const Colours &colours)
{
    const bool isDark = colours.window.lightnessF() < 0.5F;
    const std::pair<const char *, QString> names[] = {
        {"@border", colours.border.name()},
        {"@raised", colours.raised.name()},
        {"@surface", colours.surface.name()},
        {"@selection", colours.selection.name()},
        {"@line", colours.line.name()},
        {"@accent", colours.accent.name()},
        {"@onAccent", colours.accentText.name()},
        {"@text", colours.text.name()},
        {"@quiet", colours.quietText.name()},
        {"@window", colours.window.name()},
        {"@partly", isDark ? QStringLiteral("partly_dark") : QStringLiteral("partly_light")},
        {"@tick", isDark ? QStringLiteral("tick_dark") : QStringLiteral("tick_light")},
    };
    QString sheet = QString::fromLatin1(rules);
    for (const auto &[name, value] : names)
        sheet.replace(QLatin1String(name), value);
    return sheet;
}

} // namespace lastrivet::ui
