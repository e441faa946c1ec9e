// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

class QFont;
class QFontMetrics;
class QPainter;
class QRect;

namespace lastrivet::ui {

/// The same to be shown in a label that wraps: the hyphens within codes, "LW-B3", are such as no
/// line is broken at. For the eye only, nothing that is stored, searched or copied.
QString unbroken(QString text);

/// The same to be shown in a label that wraps: a word that is longer than any page is wide, such as
/// a link, may be broken within. For the eye only, too.
QString breakable(const QString &text);

/// The text with every word that is wider than `width`, such as the name of a file, cut in its
/// middle: how it begins and ends tells it from others.
QString withShortWords(const QString &text, const QFontMetrics &metrics, int width);

/// The text in lines no wider than `width`, at most `most` of them, broken between words, and
/// not within a code; what is left over, and the end of a longer word, shows as "…".
QStringList wrapped(const QString &text, const QFont &font, int width, int most);

/// The height of that many lines.
int heightOfLines(const QFont &font, int lines);

/// Paints the text in one line at the middle of the place's height, ends of lines as blanks; what
/// is left over shows as "…".
void paintCut(QPainter &painter, const QRect &place, const QString &text,
              Qt::Alignment side = Qt::AlignLeft);

/// Paints as many lines, from the top of the place, as it is high and the text needs.
void paintWrapped(QPainter &painter, const QRect &place, const QString &text);

} // namespace lastrivet::ui
