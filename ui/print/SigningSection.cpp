// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/PacketSections.h"

#include "core/packet/InWords.h"
#include "ui/print/Mark.h"
#include "ui/print/Pages.h"
#include "ui/print/Table.h"

#include <algorithm>

namespace lastrivet::print {

namespace {

using packet::SheetToSign;
using packet::Standing;

constexpr double roomToWrite = points(42);
constexpr std::size_t leastDeficiencyLines = 5;

/// A line to write on, its name small below it.
void drawWritingLine(Pages &pages, double left, double width, double y, const QString &name)
{
    QPainter &painter = pages.painter();
    painter.setPen(QPen(Qt::black, points(0.6)));
    painter.drawLine(QLineF(left, y, left + width, y));
    painter.setPen(Qt::black);
    TextBlock(name, Size::Small, width).drawLines(painter, {left, y + points(1.5)}, 0, 1);
}

/// Empty boxes with words behind them, side by side.
void drawChoices(Pages &pages, double left, double y, const QStringList &choices)
{
    QPainter &painter = pages.painter();
    for (const QString &choice : choices) {
        drawMark(painter, Mark::EmptyBox, QRectF(left, y, points(11), points(11)));
        const TextBlock block(choice, Size::Small, points(200));
        painter.setPen(Qt::black);
        block.draw(painter, {left + points(15), y});
        left += points(15) + block.naturalWidth() + points(16);
    }
}

void drawReportForm(Pages &pages)
{
    const Wording &words = pages.wording();
    const double height = points(34);
    pages.need(height);
    const QRectF &body = pages.body();
    const TextBlock said(words.text("The authority's own report form governs, number:"),
                         Size::Body, body.width(), true);
    pages.painter().setPen(Qt::black);
    const double baseline = pages.y() + points(10);
    said.draw(pages.painter(), {body.left(), baseline});
    const double from = body.left() + said.naturalWidth() + points(8);
    pages.painter().setPen(QPen(Qt::black, points(0.6)));
    pages.painter().drawLine(QLineF(from, baseline + points(12), body.right(),
                                    baseline + points(12)));
    pages.advance(height);
}

Table::Row rowOf(const Wording &words, const SheetToSign::Deficiency &line)
{
    QString text = asIs(line.text);
    if (!line.inspection.empty())
        text += QLatin1Char('\n') + words.text("from visit {0}", {line.inspection});
    QString correction = asIs(line.correction);
    if (line.corrected_on)
        correction += QLatin1Char('\n') + words.date(line.corrected_on) +
                      QStringLiteral(", ") + asIs(line.corrected_by);
    return {{{asIs(line.number)}, {text}, {correction}, {}, {}},
            Table::Bar::None, false, roomToWrite};
}

/// Deficiencies known from earlier visits, then numbered lines to write on.
void drawDeficiencies(Pages &pages, const SheetToSign &sheet)
{
    const Wording &words = pages.wording();
    Table table;
    table.has_grid = true;
    table.columns = {{words.text("No."), 0.8, false, true},
                     {words.text("Deficiency"), 4, false, true},
                     {words.text("Correction"), 4, false, true},
                     {words.text("Builder, signature and date"), 2.2, false, true},
                     {words.text("Inspector, signature and date"), 2.2, false, true}};
    for (const SheetToSign::Deficiency &line : sheet.deficiencies)
        table.rows.push_back(rowOf(words, line));
    for (std::size_t line = 1; line <= leastDeficiencyLines; ++line) {
        const QString number = sheet.deficiencies.empty()
                                   ? words.number(std::int64_t(line))
                                   : words.text("new {0}", {std::to_string(line)});
        table.rows.push_back({{{number}, {}, {}, {}, {}}, Table::Bar::None, false, roomToWrite});
    }
    pages.smallHeading(words.text("Deficiencies"), leastHeightOf(table, pages.body().width()));
    drawTable(pages, table);
}

bool isSettled(const Standing::HoldPointLine &point)
{
    return point.waived_on || (point.signature && !point.is_outdated &&
                               point.signature->result != SignOffResult::Rejected);
}

QString settledIn(const Wording &words, const Standing::HoldPointLine &point)
{
    if (point.waived_on)
        return words.text("Waived on {0} by {1}: {2}",
                          {point.waived_on->text(), point.waived_by, point.waived_why});
    const Standing::Signature &signature = *point.signature;
    return words.text("Signed before: {0}, {1}, {2}",
                      {words.text(packet::inWords(signature.result)).toStdString(), signature.by,
                       signature.signed_on ? signature.signed_on->text() : std::string()});
}

QString titleOf(const Wording &words, const Standing::HoldPointLine &point)
{
    return words.sentence(packet::inWords(point.kind)) + QStringLiteral("  ·  ") +
           words.text(packet::inWords(point.signer_role)) + QStringLiteral("  ·  ") +
           words.text(point.required ? "required" : "not required");
}

QStringList resultsToTick(const Wording &words)
{
    QStringList list;
    for (const SignOffResult result : {SignOffResult::Accepted,
                                       SignOffResult::AcceptedWithFindings,
                                       SignOffResult::Rejected})
        list << words.text(packet::inWords(result));
    return list;
}

QStringList waysToSee(const Wording &words)
{
    QStringList list;
    for (const Seen seen : {Seen::OnSite, Seen::ByPhoto, Seen::ByVideo, Seen::ByMessage})
        list << words.text(packet::inWords(seen));
    return list;
}

QString visitorOf(const Wording &words, SignerRole role)
{
    return words.text(role == SignerRole::Inspector ? "Inspector, name and number"
                                                    : "Adviser, name and number");
}

/// Name, signature and date side by side, each on a line to write on.
void drawSigner(Pages &pages, const QRectF &place, double y, const QString &who)
{
    constexpr double gap = points(14);
    const Wording &words = pages.wording();
    const double name = place.width() * 0.34;
    const double signature = place.width() * 0.42;
    const double date = place.width() - name - signature - 2 * gap;
    drawWritingLine(pages, place.left(), name, y, who);
    drawWritingLine(pages, place.left() + name + gap, signature, y, words.text("Signature"));
    drawWritingLine(pages, place.right() - date, date, y, words.text("Date"));
}

/// A frame to sign in, its first two lines written.
QRectF beginBlock(Pages &pages, double height, const QString &title, const QString &source)
{
    pages.gap(points(6));
    pages.need(height);
    const QRectF frame(pages.body().left(), pages.y(), pages.body().width(), height);
    const QRectF inside = frame.adjusted(points(10), points(7), -points(10), -points(7));
    QPainter &painter = pages.painter();
    painter.setPen(QPen(Qt::black, points(0.9)));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(frame);
    painter.setPen(Qt::black);
    TextBlock(title, Size::Body, inside.width(), true).drawLines(painter, inside.topLeft(), 0, 1);
    TextBlock(source, Size::Small, inside.width())
        .drawLines(painter, inside.topLeft() + QPointF(0, points(15)), 0, 1);
    pages.advance(height);
    return inside;
}

/// What was found, how it was seen, and room for the visitor and the builder to sign.
void drawVisitorBlock(Pages &pages, const QString &title, const QString &source,
                      const QStringList &results, const QString &visitor)
{
    const Wording &words = pages.wording();
    const QRectF inside = beginBlock(pages, points(188), title, source);
    drawChoices(pages, inside.left(), inside.top() + points(33), results);
    drawChoices(pages, inside.left(), inside.top() + points(50), waysToSee(words));
    drawSigner(pages, inside, inside.bottom() - points(60), visitor);
    drawSigner(pages, inside, inside.bottom() - points(14), words.text("Builder, name"));
}

void drawBlock(Pages &pages, const Standing::HoldPointLine &point)
{
    const Wording &words = pages.wording();
    const QString title = titleOf(words, point);
    if (point.signer_role != SignerRole::Builder) {
        drawVisitorBlock(pages, title, asIs(point.source), resultsToTick(words),
                         visitorOf(words, point.signer_role));
        return;
    }
    const QRectF inside = beginBlock(pages, points(104), title, asIs(point.source));
    drawChoices(pages, inside.left(), inside.top() + points(33), resultsToTick(words));
    drawSigner(pages, inside, inside.bottom() - points(14), words.text("Builder, name"));
}

void drawLateAcceptance(Pages &pages)
{
    const Wording &words = pages.wording();
    drawVisitorBlock(
        pages, words.text("Closed with gaps: late acceptance"),
        words.text("What was missing is named on the front pages and under Readiness."),
        {words.text("may stay closed"), words.text("is to be opened")},
        visitorOf(words, SignerRole::Inspector));
}

void drawSettled(Pages &pages, const Standing::HoldPointLine &point)
{
    const Wording &words = pages.wording();
    const TextBlock title(titleOf(words, point), Size::Body, pages.body().width() - points(24),
                          true);
    const TextBlock said(settledIn(words, point), Size::Small,
                         pages.body().width() - points(24));
    pages.gap(points(8));
    pages.need(title.height() + said.height());
    QPainter &painter = pages.painter();
    drawMark(painter, Mark::Met,
             QRectF(pages.body().left(), pages.y(), points(12), points(12)));
    painter.setPen(Qt::black);
    title.draw(painter, {pages.body().left() + points(24), pages.y()});
    said.draw(painter, {pages.body().left() + points(24), pages.y() + title.height()});
    pages.advance(title.height() + said.height());
}

void drawSheet(Pages &pages, const SheetToSign &sheet)
{
    const Wording &words = pages.wording();
    pages.heading(1, asIs(sheet.title), points(200));
    pages.text(asIs(sheet.part), Size::Small);
    drawReportForm(pages);
    drawDeficiencies(pages, sheet);
    pages.smallHeading(words.text("To be signed"), points(100));
    if (sheet.asks_late_acceptance)
        drawLateAcceptance(pages);
    for (const Standing::HoldPointLine &point : sheet.hold_points) {
        if (isSettled(point))
            drawSettled(pages, point);
    }
    for (const Standing::HoldPointLine &point : sheet.hold_points) {
        if (!isSettled(point))
            drawBlock(pages, point);
    }
}

} // namespace

void drawSheetsToSign(Pages &pages, const packet::Packet &packet)
{
    for (std::size_t i = 0; i < packet.sheets.size(); ++i) {
        pages.breakPage();
        if (i == 0)
            pages.heading(0, pages.wording().text("The sheet to sign"), points(200));
        drawSheet(pages, packet.sheets[i]);
    }
}

} // namespace lastrivet::print
