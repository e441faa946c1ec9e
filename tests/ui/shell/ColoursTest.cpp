// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/Colours.h"

#include "ui/shell/StyleSheet.h"

#include <QCheckBox>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSpinBox>

#include <catch2/catch.hpp>

#include <cmath>
#include <initializer_list>

namespace lastrivet::ui {

namespace {

double linear(double part)
{
    return part <= 0.04045 ? part / 12.92 : std::pow((part + 0.055) / 1.055, 2.4);
}

// Relative luminance and contrast ratio: W3C, Web Content Accessibility Guidelines 2.1,
// "Terminology".
double luminance(const QColor &colour)
{
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

double contrast(const QColor &a, const QColor &b)
{
    const auto [low, high] = std::minmax({luminance(a), luminance(b)});
    return (high + 0.05) / (low + 0.05);
}

} // namespace

TEST_CASE("Words reach 4.5 : 1 and shapes 3 : 1 in the light and in the dark")
{
    for (const Colours *colours : {&Colours::light(), &Colours::dark()}) {
        const auto grounds = {colours->window, colours->surface, colours->raised,
                              colours->selection};
        for (const QColor &ground : grounds) {
            CAPTURE(ground.name().toStdString());
            CHECK(contrast(colours->text, ground) >= 4.5);
            CHECK(contrast(colours->quietText, ground) >= 4.5);
        }
        CHECK(contrast(colours->accentText, colours->accent) >= 4.5);
        // Success criteria 1.4.3 for words and 1.4.11 for shapes of the same guidelines.
        for (const QColor &shape :
             {colours->notBegun, colours->hold, colours->waits, colours->clear, colours->closed,
              colours->closedEarly, colours->accent, colours->border}) {
            CAPTURE(shape.name().toStdString());
            CHECK(contrast(shape, colours->surface) >= 3.0);
            CHECK(contrast(shape, colours->window) >= 3.0);
        }
    }
}

TEST_CASE("What cannot be pressed can still be read: buttons reach 4.5 : 1 when they are disabled")
{
    for (const Colours *colours : {&Colours::light(), &Colours::dark()}) {
        for (const char *kind : {"plain", "primary", "flat"}) {
            QPushButton button(QStringLiteral("Withdraw"));
            button.setProperty(kind, true);
            button.setStyleSheet(styleSheetOf(*colours));
            button.setEnabled(false);
            button.ensurePolished();
            CAPTURE(kind);
            const QColor words = button.palette().color(QPalette::Disabled, QPalette::ButtonText);
            CHECK(contrast(words, colours->surface) >= 4.5);
            CHECK(contrast(words, colours->window) >= 4.5);
            CHECK(contrast(words, colours->raised) >= 4.5);
        }
    }
}

TEST_CASE("What cannot be changed can still be read: fields reach 4.5 : 1 when they are disabled")
{
    for (const Colours *colours : {&Colours::light(), &Colours::dark()}) {
        QLineEdit line;
        QPlainTextEdit text;
        QSpinBox number;
        QCheckBox box;
        for (QWidget *field : std::initializer_list<QWidget *>{&line, &text, &number, &box}) {
            field->setStyleSheet(styleSheetOf(*colours));
            field->setEnabled(false);
            field->ensurePolished();
            CAPTURE(field->metaObject()->className());
            const QColor words = field->palette().color(QPalette::Disabled, QPalette::Text);
            CHECK(contrast(words, colours->surface) >= 4.5);
            CHECK(contrast(words, colours->window) >= 4.5);
        }
    }
}

} // namespace lastrivet::ui
