// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/Unshown.h"

#include "ui/print/Type.h"

#include <QGlyphRun>
#include <QList>
#include <QStringList>
#include <QTextLayout>

namespace lastrivet::print {

namespace {

constexpr int mostNamed = 24;
/// As many as stand on a line with the sentence that names them.
constexpr qsizetype mostNumbers = 5;
/// Letters of all Latin languages come before; the typeface that is required has them.
constexpr char16_t firstDoubtful = 0x250;

thread_local UnshownCharacters *listener = nullptr;

/// Accents and joiners show nothing by themselves.
bool standsAlone(char32_t character)
{
    if (QChar::isMark(character) || QChar::isSpace(character))
        return false;
    const QChar::Category category = QChar::category(character);
    return category != QChar::Other_Control && category != QChar::Other_Format &&
           category != QChar::Other_Surrogate;
}

/// Whether any typeface that Qt falls back to has it: glyph 0 is the box of all that have not.
bool isShown(char32_t character)
{
    QTextLayout layout(QString::fromUcs4(&character, 1), font(Size::Body));
    layout.beginLayout();
    QTextLine line = layout.createLine();
    line.setLineWidth(lineHeight(Size::Body) * 100);
    layout.endLayout();
    const QList<QGlyphRun> runs = layout.glyphRuns();
    for (const QGlyphRun &run : runs) {
        if (run.glyphIndexes().contains(quint32{0}))
            return false;
    }
    return true;
}

} // namespace

UnshownCharacters::UnshownCharacters()
    : m_before(listener)
{
    listener = this;
}

UnshownCharacters::~UnshownCharacters()
{
    listener = m_before;
}

void UnshownCharacters::hear(const QString &text)
{
    for (qsizetype i = 0; i < text.size(); ++i) {
        if (text[i].unicode() < firstDoubtful)
            continue;
        char32_t character = text[i].unicode();
        if (text[i].isHighSurrogate() && i + 1 < text.size() && text[i + 1].isLowSurrogate()) {
            character = QChar::surrogateToUcs4(text[i], text[i + 1]);
            ++i;
        }
        if (!m_heard.insert(character).second || !standsAlone(character) || isShown(character))
            continue;
        if (++m_count <= mostNamed)
            m_first += QString::fromUcs4(&character, 1);
    }
}

std::string UnshownCharacters::some() const
{
    return (m_count > mostNamed ? m_first + QStringLiteral("…") : m_first).toStdString();
}

QString UnshownCharacters::numbers() const
{
    const QList<uint> characters = m_first.toUcs4();
    QStringList numbers;
    for (const uint character : characters.mid(0, mostNumbers))
        numbers << QStringLiteral("U+%1").arg(character, 4, 16, QLatin1Char('0')).toUpper();
    const QString named = numbers.join(QStringLiteral(", "));
    return m_count > int(mostNumbers) ? named + QStringLiteral(", …") : named;
}

void hearUnshown(const QString &text)
{
    if (listener)
        listener->hear(text);
}

} // namespace lastrivet::print
