// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/hours/HoursPaper.h"

#include "core/base/Error.h"
#include "core/exchange/WholeFile.h"
#include "ui/convert/QtText.h"
#include "ui/hours/ChartDrawing.h"
#include "ui/print/HoursPrinter.h"
#include "ui/prints/PrintTask.h"
#include "ui/shell/Session.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QPainter>

#include <memory>

namespace lastrivet::ui {

namespace {

/// In the proportions of the place on paper; letters are sized for it.
constexpr QSize chartSize(720, 402);

QString tr(const char *text)
{
    return QCoreApplication::translate("HoursPaper", text);
}

void play(const QPicture &chart, QPainter &painter, const QRectF &place)
{
    QPicture own(chart);
    painter.save();
    painter.translate(place.topLeft());
    // Played back, a picture is enlarged by the printer's dots to those it was recorded with.
    const qreal dots = qreal(chart.logicalDpiX()) / painter.device()->logicalDpiX();
    painter.scale(dots * place.width() / chartSize.width(),
                  dots * place.height() / chartSize.height());
    own.play(&painter);
    painter.restore();
}

} // namespace

void printHours(Session &session, HoursView view, const HoursAnswer &answer, const QString &file)
{
    const auto choices = usualChoices();
    const auto report = std::make_shared<print::HoursReport>();
    report->aircraft = packet::aircraftOf(*answer.records, session.project().profile());
    report->cautions = session.project().profile().cautions;
    report->title = titleOf(view, choices.wording);
    report->sentences = sentencesOf(view, answer, choices.wording);
    report->table = tableOf(view, answer, choices.wording);
    const auto plan = chartOf(view, answer, choices.wording);
    if (!plan.isEmpty()) {
        report->sentences << plan.title;
        report->draw_chart = [chart = recorded(plan, ChartInk::onPaper(), chartSize)](
                                 QPainter &painter, const QRectF &place) {
            play(chart, painter, place);
        };
    }
    carryOut(session, {.title = tr("Hours"),
                       .file = file,
                       .print = [report, choices, place = toPath(file)](
                                    const print::Imprint &imprint, const print::Pictures &,
                                    const print::OnPercent &onPercent) {
                           return print::printHours(*report, imprint, choices, place, onPercent);
                       }});
}

void exportHours(Session &session, HoursView view, const HoursAnswer &answer, const QString &file)
{
    try {
        exchange::writeWholeFile(toPath(file),
                                 [&](std::ostream &out) { writeCsv(view, answer, out); });
        session.say(tr("The figures were written to %1.").arg(QFileInfo(file).fileName()));
    } catch (const Fault &fault) {
        session.complain(fault);
    }
}

} // namespace lastrivet::ui
