// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/MajorPortionSections.h"

#include "core/credit/CreditSentences.h"
#include "ui/print/Facts.h"
#include "ui/print/Pages.h"
#include "ui/print/PhotoGrid.h"
#include "ui/print/PhotoRows.h"
#include "ui/print/Phrases.h"
#include "ui/print/SquawkRows.h"
#include "ui/print/Table.h"

#include <algorithm>
#include <set>

namespace lastrivet::print {

namespace {

using packet::MajorPortion;

constexpr std::size_t photosOfTask = 2;
constexpr std::size_t hashShown = 12;

QString tenthsIn(std::int64_t tenths, const MajorPortion::Task &task)
{
    return task.is_not_applicable ? QStringLiteral("–") : QString::number(tenths);
}

QString ticksIn(std::int64_t halfTicks)
{
    return halfTicks == 0 ? QString() : QString::fromStdString(credit::ticksText(halfTicks));
}

/// "12 entries of the log from … to …, 34 h 30".
QString logIn(const Wording &words, const MajorPortion::Task &task)
{
    if (task.sessions == 0)
        return {};
    return words.text(
        "entries of the log: {0}, {1} to {2}; {3}",
        {words.number(task.sessions).toStdString(), words.day(task.first_work).toStdString(),
         words.day(task.last_work).toStdString(), words.hours(task.minutes).toStdString()});
}

QString picturesIn(const Wording &words, const std::vector<int> &numbers)
{
    QStringList list;
    for (const int number : numbers)
        list << QString::number(number);
    if (list.isEmpty())
        return {};
    return words.text(list.size() == 1 ? "picture {0}" : "pictures {0}",
                      {list.join(QStringLiteral(", ")).toStdString()});
}

QString evidenceIn(const Wording &words, const MajorPortion::Task &task)
{
    if (task.is_not_applicable)
        return words.text("does not apply");
    QStringList lines;
    addLine(lines, picturesIn(words, task.pictures));
    if (task.isGap())
        lines << words.text("NO PICTURE on record");
    addLine(lines, logIn(words, task));
    addLine(lines, asIs(task.note));
    return lines.join(QLatin1Char('\n'));
}

Table::Row rowOf(const Wording &words, const MajorPortion &form, const MajorPortion::Task &task)
{
    const credit::Tenths &tenths = task.tenths;
    const QString title =
        task.is_added ? words.text("{0} (added)", {task.title}) : asIs(task.title);
    Table::Row row{{{title},
                    {tenthsIn(tenths.kit, task)},
                    {tenthsIn(tenths.commercial, task)},
                    {tenthsIn(tenths.assembly, task)},
                    {tenthsIn(tenths.fabrication, task)}}};
    if (form.account.two_columns) {
        row.cells.push_back({ticksIn(task.ticks.builder)});
        row.cells.push_back({ticksIn(task.ticks.maker)});
    }
    row.cells.push_back({evidenceIn(words, task), Mark::None, task.isGap()});
    return row;
}

Table::Row sumOf(const Wording &words, const MajorPortion &form)
{
    const credit::Account &sum = form.account;
    Table::Row row{{{words.text("Sums"), Mark::None, true},
                    {QString::number(sum.kit_tenths), Mark::None, true},
                    {QString::number(sum.commercial_tenths), Mark::None, true},
                    {QString::number(sum.assembly_tenths), Mark::None, true},
                    {QString::number(sum.fabrication_tenths), Mark::None, true}}};
    if (sum.two_columns) {
        row.cells.push_back({ticksIn(sum.two_columns->builder_half_ticks), Mark::None, true});
        row.cells.push_back({ticksIn(sum.two_columns->maker_half_ticks), Mark::None, true});
    }
    row.cells.push_back({words.text("in tenths of a task"), Mark::None, false});
    return row;
}

Table formOf(const Wording &words, const MajorPortion &form)
{
    Table table;
    table.columns = {{words.text("Task"), 4.2},
                     {words.text("A maker"), 1.6, true, true},
                     {words.text("B paid help"), 1.4, true, true},
                     {words.text("C builder, assembly"), 1.9, true, true},
                     {words.text("D builder, fabrication"), 2.3, true, true}};
    if (form.account.two_columns) {
        table.columns.push_back({words.text("Tick of the builder"), 1.7, true, true});
        table.columns.push_back({words.text("Tick of the maker"), 1.6, true, true});
    }
    table.columns.push_back({words.text("Shown by"), 5.4});
    const std::string *section = nullptr;
    for (const MajorPortion::Task &task : form.tasks) {
        if (!task.section.empty() && (!section || *section != task.section))
            table.rows.push_back({{{asIs(task.section)}}, Table::Bar::None, true});
        section = &task.section;
        table.rows.push_back(rowOf(words, form, task));
    }
    if (!table.rows.empty())
        table.rows.push_back(sumOf(words, form));
    return table;
}

/// The numbers of the photographs that are printed.
std::set<int> chosenPhotos(const MajorPortion &form)
{
    std::set<int> chosen;
    for (const MajorPortion::Task &task : form.tasks) {
        std::size_t taken = 0;
        for (const int number : task.pictures) {
            if (taken == photosOfTask)
                break;
            if (form.pictures[std::size_t(number - 1)].is_video)
                continue;
            chosen.insert(number);
            ++taken;
        }
    }
    return chosen;
}

} // namespace

void drawPortionVerdict(Pages &pages, const MajorPortion &form)
{
    const Wording &words = pages.wording();
    QStringList sentences;
    for (const Message &sentence : credit::verdict(form.account))
        sentences << words.text(sentence);
    const auto gaps = form.account.evidence_gaps.size();
    if (gaps > 0)
        sentences << words.text("Tasks claimed by the builder that no picture shows: {0}.",
                                {words.count(gaps)});
    drawNotice(pages, words.text("By the builder's own figures; the authority decides"),
               sentences.join(QLatin1Char(' ')));
    for (const MajorPortion::Rule &rule : form.rules)
        pages.text(words.text("{0} ({1})", {words.text(rule.text).toStdString(),
                                            sourceIn(words, rule.source).toStdString()}),
                   Size::Small);
}

void drawPortionForm(Pages &pages, const MajorPortion &form, int level)
{
    const Wording &words = pages.wording();
    const Table table = formOf(words, form);
    pages.heading(level, words.text("Who did how much of each task"),
                  leastHeightOf(table, pages.body().width()));
    if (table.rows.empty())
        pages.text(words.text("No task is on record."));
    else
        drawTable(pages, table);
}

void drawPortionEvidence(Pages &pages, const MajorPortion &form, int level)
{
    if (form.pictures.empty())
        return;
    const Wording &words = pages.wording();
    Table table;
    table.columns = {{words.text("Picture"), 1.4, true}, {words.text("Day"), 2.5},
                     {words.text("Part"), 3.4},          {words.text("Caption"), 4},
                     {words.text("File"), 4.7},          {words.text("SHA-256 begins"), 2.7}};
    for (const MajorPortion::Picture &picture : form.pictures) {
        const packet::Photo &photo = picture.photo;
        table.rows.push_back(
            {{{QString::number(photo.number)},
              {photo.is_day_of_intake ? photoDay(words, photo) : words.day(photo.taken_on)},
              {asIs(photo.part)},
              {picture.is_video ? words.text("video: {0}", {photo.caption}) : asIs(photo.caption)},
              {asIs(photo.file)},
              {asIs(photo.sha256.substr(0, hashShown))}}});
    }
    pages.heading(level, words.text("Pictures that show the tasks"),
                  leastHeightOf(table, pages.body().width()));
    drawTable(pages, table);
}

void drawPortionPhotos(Pages &pages, const MajorPortion &form, PictureShelf &shelf)
{
    std::vector<packet::Photo> photos;
    for (const int number : chosenPhotos(form))
        photos.push_back(form.pictures[std::size_t(number - 1)].photo);
    if (photos.empty())
        return;
    pages.heading(1, pages.wording().text("The first two photographs of each task"), points(200));
    drawPhotoRows(pages, photos, shelf);
}

int portionPhotoCount(const MajorPortion &form)
{
    return int(chosenPhotos(form).size());
}

} // namespace lastrivet::print
