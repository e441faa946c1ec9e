// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/Marks.h"

#include "core/readiness/Sentences.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Colours.h"
#include "ui/widgets/SvgIcon.h"

#include <QCoreApplication>
#include <QPainter>

#include <algorithm>

namespace lastrivet::ui {

QString stateIcon(readiness::State state, bool begun)
{
    return QStringLiteral("states/") + (begun ? toQt(word(state)) : QStringLiteral("not_begun"));
}

QString stateWords(readiness::State state, bool begun, bool waitsForAdviser)
{
    if (!begun)
        return QCoreApplication::translate("State", "not begun");
    if (state == readiness::State::ReadyToInspect && waitsForAdviser)
        return QCoreApplication::translate("State", "stays open, waits for the adviser");
    return inWords(readiness::stateInWords(state));
}

QString shortStateWords(readiness::State state)
{
    using enum readiness::State;
    switch (state) {
    case Hold:
        return QCoreApplication::translate("PartTree", "work left");
    case ReadyToInspect:
        return QCoreApplication::translate("PartTree", "inspection");
    case ReadyToSign:
        return QCoreApplication::translate("PartTree", "signature");
    case Clear:
        return QCoreApplication::translate("PartTree", "none against");
    case Closed:
        return QCoreApplication::translate("PartTree", "closed");
    case ClosedEarly:
        return QCoreApplication::translate("PartTree", "closed, gaps");
    }
    return {};
}

bool waitsForAdviser(const readiness::ClosingAnswer &answer)
{
    if (answer.state != readiness::State::ReadyToInspect)
        return false;
    return std::ranges::none_of(answer.blockers, [](const readiness::Blocker &blocker) {
        return blocker.weight == readiness::Weight::Must &&
               blocker.waits_for == SignerRole::Inspector;
    });
}

void paintState(QPainter &painter, const QRectF &place, readiness::State state, bool begun,
                const Colours &colours)
{
    paintSvg(painter, place, stateIcon(state, begun),
             begun ? colours.state(state) : colours.notBegun);
}

QString severityIcon(Severity severity)
{
    return QStringLiteral("severities/") + toQt(word(severity));
}

QString severityWord(Severity severity)
{
    switch (severity) {
    case Severity::Airworthiness:
        return QCoreApplication::translate("Severity", "airworthiness");
    case Severity::Workmanship:
        return QCoreApplication::translate("Severity", "workmanship");
    case Severity::Cosmetic:
        return QCoreApplication::translate("Severity", "cosmetic");
    }
    return {};
}

void paintSeverity(QPainter &painter, const QRectF &place, Severity severity,
                   const Colours &colours)
{
    paintSvg(painter, place, severityIcon(severity), colours.severity(severity));
}

void paintWeight(QPainter &painter, const QRectF &row, readiness::Weight weight,
                 const Colours &colours)
{
    constexpr qreal width = 4;
    const QRectF bar(row.left(), row.top(), width, row.height());
    if (weight == readiness::Weight::Must) {
        painter.fillRect(bar, colours.hold);
        return;
    }
    constexpr int dashes = 3;
    const qreal dash = row.height() / (2 * dashes - 1);
    for (int i = 0; i < dashes; ++i)
        painter.fillRect(QRectF(bar.left(), bar.top() + 2 * i * dash, width, dash),
                         colours.notBegun);
}

} // namespace lastrivet::ui
