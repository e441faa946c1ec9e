// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/WrappedText.h"

#include <QFontMetrics>
#include <QPainter>
#include <QTextBoundaryFinder>
#include <QTextLayout>

#include <algorithm>

namespace lastrivet::ui {

QString unbroken(QString text)
{
    for (qsizetype i = 1; i + 1 < text.size(); ++i) {
        const auto isOfCode = [&](qsizetype at) {
            return text[at].isUpper() || text[at].isDigit();
        };
        if (text[i] == QLatin1Char('-') && isOfCode(i - 1) && isOfCode(i + 1))
            text[i] = QChar(0x2011);
    }
    return text;
}

QString breakable(const QString &text)
{
    constexpr int lettersAtMost = 40;
    QTextBoundaryFinder letters(QTextBoundaryFinder::Grapheme, text);
    QTextBoundaryFinder breaks(QTextBoundaryFinder::Line, text);
    QString shown;
    int unbrokenLetters = 0;
    qsizetype from = 0;
    for (auto to = letters.toNextBoundary(); to >= 0; to = letters.toNextBoundary()) {
        breaks.setPosition(from);
        if (breaks.isAtBoundary())
            unbrokenLetters = 0;
        if (unbrokenLetters >= lettersAtMost && !text.at(from).isSpace()) {
            shown += QChar(0x200B);
            unbrokenLetters = 0;
        }
        shown += text.mid(from, to - from);
        ++unbrokenLetters;
        from = to;
    }
    return shown;
}

QString withShortWords(const QString &text, const QFontMetrics &metrics, int width)
{
    QStringList words = text.split(QLatin1Char(' '));
    for (QString &word : words)
        word = metrics.elidedText(word, Qt::ElideMiddle, width);
    return words.join(QLatin1Char(' '));
}

QStringList wrapped(const QString &text, const QFont &font, int width, int most)
{
    const QFontMetrics metrics(font);
    // Lists paint many rows of one line.
    if (most == 1)
        return {metrics.elidedText(text, Qt::ElideRight, width)};
    // What is painted is the text as it is.
    QTextLayout layout(unbroken(text), font);
    QStringList lines;
    layout.beginLayout();
    while (lines.size() < most) {
        QTextLine line = layout.createLine();
        if (!line.isValid())
            break;
        line.setLineWidth(width);
        const bool isLast = lines.size() + 1 == most;
        const QString words = isLast ? text.mid(line.textStart())
                                     : text.mid(line.textStart(), line.textLength()).trimmed();
        lines << metrics.elidedText(words, Qt::ElideRight, width);
    }
    layout.endLayout();
    return lines;
}

int heightOfLines(const QFont &font, int lines)
{
    return lines * QFontMetrics(font).lineSpacing();
}

void paintCut(QPainter &painter, const QRect &place, const QString &text, Qt::Alignment side)
{
    QString line = text;
    line.replace(QLatin1Char('\n'), QLatin1Char(' '));
    painter.drawText(place, int(side) | Qt::AlignVCenter | Qt::TextSingleLine,
                     painter.fontMetrics().elidedText(line, Qt::ElideRight, place.width()));
}

void paintWrapped(QPainter &painter, const QRect &place, const QString &text)
{
    const int line = heightOfLines(painter.font(), 1);
    const int most = std::max(1, place.height() / line);
    QRect here(place.left(), place.top(), place.width(), line);
    for (const QString &words : wrapped(text, painter.font(), place.width(), most)) {
        painter.drawText(here, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine, words);
        here.translate(0, line);
    }
}

} // namespace lastrivet::ui
