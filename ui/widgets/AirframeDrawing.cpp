// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/AirframeDrawing.h"

#include "ui/convert/QtText.h"

#include <QFile>
#include <QRegularExpression>
#include <QXmlStreamReader>

namespace lastrivet::ui {

namespace {

const auto sideSuffix = QLatin1String("_side");

/// Reads a path's commands one after the other.
class PathReader {
public:
    explicit PathReader(const QString &text)
        : m_tokens(tokens().globalMatch(text))
    {
    }

    QPainterPath path()
    {
        while (m_tokens.hasNext())
            take(m_tokens.next().captured());
        return m_path;
    }

private:
    static const QRegularExpression &tokens()
    {
        static const QRegularExpression expression(QStringLiteral("[A-Z]|-?[0-9.]+"));
        return expression;
    }

    void take(const QString &token)
    {
        if (token.at(0).isLetter()) {
            m_command = token.at(0);
            if (m_command == QLatin1Char('Z'))
                m_path.closeSubpath();
            return;
        }
        const QPointF to = point(token);
        if (m_command == QLatin1Char('M')) {
            m_path.moveTo(to);
        } else if (m_command == QLatin1Char('L')) {
            m_path.lineTo(to);
        } else {
            const QPointF second = point(m_tokens.next().captured());
            m_path.cubicTo(to, second, point(m_tokens.next().captured()));
        }
    }

    QPointF point(const QString &x)
    {
        const double y = m_tokens.hasNext() ? m_tokens.next().captured().toDouble() : 0;
        return {x.toDouble(), y};
    }

    QRegularExpressionMatchIterator m_tokens;
    QChar m_command;
    QPainterPath m_path;
};

} // namespace

QString AirframeDrawing::file(airframe::AircraftKind kind)
{
    return QStringLiteral(":/airframes/%1.svg").arg(toQt(word(kind)));
}

AirframeDrawing::AirframeDrawing(airframe::AircraftKind kind)
{
    QFile source(file(kind));
    if (!source.open(QIODevice::ReadOnly))
        return;
    QXmlStreamReader xml(&source);
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement)
            continue;
        const auto attributes = xml.attributes();
        if (xml.name() == QLatin1String("svg")) {
            m_size = QSizeF(attributes.value(QLatin1String("width")).toDouble(),
                            attributes.value(QLatin1String("height")).toDouble());
            continue;
        }
        if (xml.name() != QLatin1String("path"))
            continue;
        QString id = attributes.value(QLatin1String("id")).toString();
        const QPainterPath path =
            PathReader(attributes.value(QLatin1String("d")).toString()).path();
        if (id.endsWith(sideSuffix))
            id.chop(sideSuffix.size());
        if (const auto zone = parseWord<airframe::Zone>(toStd(id)))
            m_shapes.push_back({*zone, path});
        else
            m_lines = path;
    }
}

} // namespace lastrivet::ui
