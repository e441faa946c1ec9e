// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/TextBlock.h"

#include "ui/print/Unshown.h"

#include <QPainter>
#include <QTextOption>

#include <algorithm>

namespace lastrivet::print {

namespace {

/// "167 h 05" is one figure: no line ends within it.
void keepHoursTogether(QString &text)
{
    const auto isSpace = [&](qsizetype i) { return text[i] == QLatin1Char(' '); };
    for (qsizetype i = 2; i + 2 < text.size(); ++i) {
        if (text[i] != QLatin1Char('h') || !isSpace(i - 1) || !isSpace(i + 1) ||
            !text[i - 2].isDigit() || !text[i + 2].isDigit())
            continue;
        text[i - 1] = QChar::Nbsp;
        text[i + 1] = QChar::Nbsp;
    }
}

/// Line breaks as a text layout knows them; other control characters would print as boxes.
QString forLayout(QString text)
{
    text.replace(QStringLiteral("\r\n"), QStringLiteral("\n"));
    for (QChar &character : text) {
        if (character == QLatin1Char('\n') || character == QChar::ParagraphSeparator)
            character = QChar::LineSeparator;
        else if (character.category() == QChar::Other_Control)
            character = QLatin1Char(' ');
    }
    keepHoursTogether(text);
    return text;
}

bool isOfCode(QChar character)
{
    return character.isUpper() || character.isDigit();
}

/// What stands in front of a code and goes to the next line with it.
bool opensCode(QChar character)
{
    return QStringLiteral("([“„«‘").contains(character) || character == QChar::Nbsp;
}

/// Where the code begins, of a part or a lot, that a line from `begin` to `end` tears at a hyphen:
/// "LW-" reads as if it were all. -1 for none, and for one that the line begins with.
qsizetype startOfTornCode(const QString &text, qsizetype begin, qsizetype end)
{
    if (end - begin < 2 || end >= text.size() || text[end - 1] != QLatin1Char('-') ||
        !isOfCode(text[end]))
        return -1;
    qsizetype start = end - 1;
    while (start > begin && (isOfCode(text[start - 1]) || text[start - 1] == QLatin1Char('-')))
        --start;
    if (start == end - 1)
        return -1;
    while (start > begin && opensCode(text[start - 1]))
        --start;
    return start > begin && text[start - 1] == QLatin1Char(' ') ? start : -1;
}

/// Ends the line before a code that it would tear. No other hyphen stands in for this one: whoever
/// searches the document for a code would not find it.
void keepCodeWhole(QTextLine line, const QString &text)
{
    const qsizetype begin = line.textStart();
    const qsizetype start = startOfTornCode(text, begin, begin + line.textLength());
    if (start >= 0 && !text.isRightToLeft())
        line.setLineWidth(line.cursorToX(int(start)));
}

} // namespace

TextBlock::TextBlock(const QString &text, Size size, double width, bool isBold,
                     Qt::Alignment alignment)
    : m_layout(std::make_unique<QTextLayout>(forLayout(text), font(size, isBold)))
    , m_lineHeight(print::lineHeight(size))
{
    hearUnshown(text);
    QTextOption option(alignment);
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    m_layout->setTextOption(option);
    const QString laid = m_layout->text();
    m_layout->beginLayout();
    for (QTextLine line = m_layout->createLine(); line.isValid(); line = m_layout->createLine()) {
        line.setLineWidth(std::max(width, 1.0));
        // Other lines stand by their width.
        if (!(alignment & (Qt::AlignRight | Qt::AlignHCenter)))
            keepCodeWhole(line, laid);
        const double leading = (m_lineHeight - line.height()) / 2;
        line.setPosition(QPointF(0, (m_layout->lineCount() - 1) * m_lineHeight + leading));
    }
    m_layout->endLayout();
}

double TextBlock::naturalWidth() const
{
    double widest = 0;
    for (int i = 0; i < lineCount(); ++i)
        widest = std::max(widest, m_layout->lineAt(i).naturalTextWidth());
    return widest;
}

qsizetype TextBlock::lengthOf(int lines) const
{
    const QTextLine last = m_layout->lineAt(lines - 1);
    return last.textStart() + last.textLength();
}

void TextBlock::draw(QPainter &painter, QPointF topLeft) const
{
    drawLines(painter, topLeft, 0, lineCount());
}

void TextBlock::drawLines(QPainter &painter, QPointF topLeft, int first, int count) const
{
    const QPointF origin = topLeft - QPointF(0, first * m_lineHeight);
    const int end = std::min(first + count, lineCount());
    for (int i = first; i < end; ++i)
        m_layout->lineAt(i).draw(&painter, origin);
}

TextBlock fitted(const QString &text, Size size, double width, int mostLines, bool isBold,
                 Qt::Alignment alignment)
{
    TextBlock block(text, size, width, isBold, alignment);
    if (block.lineCount() <= mostLines)
        return block;
    for (qsizetype kept = block.lengthOf(mostLines); kept > 0; --kept) {
        block = TextBlock(text.left(kept).trimmed() + QStringLiteral("…"), size, width, isBold,
                          alignment);
        if (block.lineCount() <= mostLines)
            break;
    }
    return block;
}

} // namespace lastrivet::print
