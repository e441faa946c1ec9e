// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/Packet.h"
#include "app/cli/Names.h"
#include "app/cli/OpenProject.h"
#include "app/cli/PlainText.h"
#include "app/cli/PrintShop.h"
#include "app/cli/VerbOptions.h"
#include "core/base/JsonWriter.h"
#include "core/readiness/Readiness.h"
#include "ui/print/PacketPrinter.h"

#include <CLI/CLI.hpp>

#include <fmt/ostream.h>

namespace lastrivet::cli {

namespace {

struct Options : VerbOptions {
    std::vector<std::int64_t> closings;
    std::string to;
    std::string paper = "A4";
    std::string who;
    bool json = false;
};

packet::Packet packetOf(const Project &project, const IdSet<Closing> &closings)
{
    const Records &records = *project.records();
    const auto answer = readiness::readiness(records, project.profile(), project.today());
    return packet::packetFor(records, project.profile(), answer, closings);
}

std::string labelFor(const IdSet<Closing> &closings, const Records &records)
{
    return closings.size() == 1
               ? fmt::format("Packet for “{}”", records.find(closings.front())->title)
               : fmt::format("Packet for {} closings", closings.size());
}

print::Printed printTo(const Options &options, Project &project, const IdSet<Closing> &closings)
{
    const PrintShop shop;
    const PrintCopies copies(project);
    const auto packet = packetOf(project, closings);
    print::Choices choices;
    choices.paper = options.paper == "Letter" ? print::Paper::Letter : print::Paper::A4;
    const std::string hash = project.notePrinted(labelFor(closings, *project.records()));
    return *print::printPacket(
        packet, {hash, project.now()},
        [&copies](const packet::Photo &photo) { return copies.copyOf(photo); }, choices,
        options.to);
}

void tell(const Options &options, const IdSet<Closing> &closings, const print::Printed &printed,
          std::ostream &out)
{
    if (!options.json) {
        fmt::print(out, "Wrote {}: {}, {}, {} without a picture.\n", onOneLine(options.to),
                   counted(printed.pages, "page"), counted(printed.pictures, "photo"),
                   printed.missing_pictures);
        return;
    }
    JsonWriter json(out, JsonWriter::Layout::Indented);
    json.beginObject();
    json.member("file", options.to);
    json.key("closings");
    json.beginArray();
    for (const Id<Closing> id : closings)
        json.value(id.value());
    json.endArray();
    json.member("pages", printed.pages);
    json.member("pictures", printed.pictures);
    json.member("missing_pictures", printed.missing_pictures);
    json.endObject();
}

Outcome make(const Options &options, Terminal &terminal)
{
    const auto project = Project::open(options.project, {nullptr, options.who, false});
    const auto closings = closingsOf(*project->records(), options.closings);
    // A packet from a copy that cannot be written is worth having; its hash still dates it.
    if (project->isReadOnly())
        terminal.complain(project->readOnlyReason() +
                          " The packet is made, but the journal does not say so.");
    const print::Printed printed = printTo(options, *project, closings);
    tell(options, closings, printed, terminal.out());
    if (options.json)
        terminal.out() << '\n';
    return Outcome::Done;
}

} // namespace

void declarePacket(CLI::App &program, Action &chosen)
{
    auto options = std::make_shared<Options>();
    CLI::App &verb = addVerb(program, "packet", "Prints what an inspector needs to see", *options);
    verb.add_option("--closing", options->closings, "The closings it is about")
        ->required()
        ->type_name("ID");
    verb.add_option("--to", options->to, "The PDF to write")->required()->type_name("FILE.pdf");
    verb.add_option("--paper", options->paper, "A4 or Letter")
        ->check(CLI::IsMember({"A4", "Letter"}, CLI::ignore_case))
        ->type_name("SIZE");
    addWho(verb, options->who);
    addJsonFlag(verb, options->json);
    whenNamed(verb, chosen, [options](Terminal &terminal) { return make(*options, terminal); });
}

} // namespace lastrivet::cli
