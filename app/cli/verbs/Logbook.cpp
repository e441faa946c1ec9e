// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/Logbook.h"
#include "app/cli/Names.h"
#include "app/cli/OpenProject.h"
#include "app/cli/PlainText.h"
#include "app/cli/PrintShop.h"
#include "app/cli/VerbOptions.h"
#include "core/base/JsonWriter.h"
#include "core/entry/CreationDays.h"
#include "ui/print/HeldDocument.h"
#include "ui/print/LogbookPrinter.h"
#include "ui/print/NewFile.h"
#include "ui/print/Type.h"

#include <CLI/CLI.hpp>

#include <filesystem>
#include <fmt/ostream.h>

namespace lastrivet::cli {

namespace {

struct Options : VerbOptions {
    std::string to;
    std::string from;
    std::string until;
    std::string by = "date";
    PaperOptions paper;
    std::string who;
    bool withoutPhotos = false;
    bool json = false;
};

packet::LogbookChoice choiceOf(const Options &options)
{
    packet::LogbookChoice choice;
    choice.order = options.by == "component" ? packet::LogOrder::ByPart : packet::LogOrder::ByDate;
    if (!options.from.empty())
        choice.from = momentOf(options.from, "--from");
    if (!options.until.empty())
        choice.until = momentOf(options.until, "--until");
    if (choice.from && choice.until && after(*choice.from, *choice.until))
        throw WrongUsage(
            fmt::format("--until: {} lies before --from, {}.", options.until, options.from));
    choice.has_photos = !options.withoutPhotos;
    return choice;
}

packet::Logbook logOf(const Project &project, const packet::LogbookChoice &choice)
{
    constexpr std::size_t rowsAtOnce = 1000;
    entry::CreationDays created(project);
    while (created.readSome(rowsAtOnce))
        ;
    return packet::logbookOf(*project.records(), project.profile(), choice,
                             [&](Id<WorkSession> session) { return created.createdOn(session); });
}

print::Printed printTo(const Options &options, Project &project, const packet::Logbook &log)
{
    const PrintShop shop;
    const PrintCopies copies(project);
    const std::filesystem::path place = options.to;
    print::requireFonts();
    print::requireRoomFor(place);
    print::HeldDocument document(place);
    print::Printed printed;
    project.notePrinted("Builder's log", [&](const std::string &hash) {
        document.make([&] {
            printed = *print::printLogbook(
                log, {hash, project.now()},
                [&copies](const packet::Photo &photo) { return copies.copyOf(photo); },
                choicesOf(options.paper), document.path());
        });
    });
    document.publish();
    return printed;
}

void tellPlainly(const Options &options, const packet::Logbook &log, const print::Printed &printed,
                 std::ostream &out)
{
    const hours::Total &all = log.totals.total;
    fmt::print(out, "Wrote {}: {}, {} of {}, {}, {} without a picture.\n", onOneLine(options.to),
               counted(printed.pages, "page"), counted(all.sessions, "entry", "entries"),
               hoursText(all.minutes), counted(printed.pictures, "photo"),
               printed.missing_pictures);
}

void tellJson(const Options &options, const packet::Logbook &log, const print::Printed &printed,
              std::ostream &out)
{
    const hours::Total &all = log.totals.total;
    JsonWriter json(out, JsonWriter::Layout::Indented);
    json.beginObject();
    json.member("file", options.to);
    json.member("entries", all.sessions);
    json.member("late_entries", log.late_entries);
    json.member("minutes", all.minutes.count());
    json.member("worker_minutes", all.worker_minutes.count());
    json.member("pages", printed.pages);
    json.member("pictures", printed.pictures);
    json.member("missing_pictures", printed.missing_pictures);
    json.member("unshown_characters", printed.unshown);
    json.endObject();
}

Outcome make(const Options &options, Terminal &terminal)
{
    const packet::LogbookChoice choice = choiceOf(options);
    const auto project = openToPrint(options.project, options.who, terminal);
    const packet::Logbook log = logOf(*project, choice);
    const print::Printed printed = printTo(options, *project, log);
    if (options.json) {
        tellJson(options, log, printed, terminal.out());
        terminal.out() << '\n';
    } else {
        tellPlainly(options, log, printed, terminal.out());
        complainOfUnshown(printed, terminal);
    }
    return Outcome::Done;
}

} // namespace

void declareLogbook(CLI::App &program, Action &chosen)
{
    auto options = std::make_shared<Options>();
    CLI::App &verb = addVerb(program, "logbook", "Prints the builder's log", *options);
    verb.add_option("--to", options->to, "The PDF to write")->required()->type_name("FILE.pdf");
    verb.add_option("--from", options->from, "The first day or moment")->type_name("M");
    verb.add_option("--until", options->until, "The last day or moment")->type_name("M");
    verb.add_option("--by", options->by, "Chapters by date or by component")
        ->check(CLI::IsMember({"date", "component"}))
        ->type_name("WHAT");
    addPaper(verb, options->paper);
    verb.add_flag("--without-photos", options->withoutPhotos, "Leaves the photographs out");
    addWho(verb, options->who);
    addJsonFlag(verb, options->json);
    whenNamed(verb, chosen, [options](Terminal &terminal) { return make(*options, terminal); });
}

} // namespace lastrivet::cli
