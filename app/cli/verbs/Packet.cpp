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
#include "ui/print/HeldDocument.h"
#include "ui/print/NewFile.h"
#include "ui/print/PacketMaker.h"
#include "ui/print/Type.h"

#include <CLI/CLI.hpp>

#include <fmt/ostream.h>

namespace lastrivet::cli {

namespace {

struct Options : VerbOptions {
    std::vector<std::string> closings;
    std::string to;
    std::string folder;
    bool small = false;
    PaperOptions paper;
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

print::PacketForm formOf(const Options &options)
{
    if (!options.folder.empty())
        return print::PacketForm::Folder;
    return options.small ? print::PacketForm::Small : print::PacketForm::Pdf;
}

const std::string &placeOf(const Options &options)
{
    return options.folder.empty() ? options.to : options.folder;
}

print::PacketMade makeIn(const Options &options, Project &project, const IdSet<Closing> &closings)
{
    const PrintShop shop;
    const PrintCopies copies(project);
    const Snapshot records = project.records();
    print::PacketOrder order{.packet = packetOf(project, closings),
                             .imprint = {{}, project.now()},
                             .choices = choicesOf(options.paper),
                             .form = formOf(options),
                             .place = {}};
    print::requireFonts();
    order.form == print::PacketForm::Folder ? print::requireRoomForFolder(placeOf(options))
                                            : print::requireRoomFor(placeOf(options));
    print::HeldDocument document(placeOf(options));
    order.place = document.path();
    print::PacketMade made;
    project.notePrinted(labelFor(closings, *records), [&](const std::string &hash) {
        order.imprint.journal_hash = hash;
        document.make([&] {
            made = *print::makePacket(
                order, *records, project.folder(),
                [&copies](const packet::Photo &photo) { return copies.copyOf(photo); });
        });
    });
    document.publish();
    return made;
}

void tellPlainly(const Options &options, const print::PacketMade &made, Terminal &terminal)
{
    fmt::print(terminal.out(), "Wrote {}: {}, {}, {} without a picture.\n",
               onOneLine(placeOf(options)), counted(made.printed.pages, "page"),
               counted(made.printed.pictures, "photo"), made.printed.missing_pictures);
    if (!options.folder.empty())
        fmt::print(terminal.out(), "Beside the PDF: {} in full size, and SHA256SUMS.\n",
                   counted(made.full_size, "photo"));
    if (options.small)
        fmt::print(terminal.out(), "{:.1f} MB, {} left out.\n", double(made.bytes) / 1e6,
                   counted(made.left_out, "photo"));
    complainOfUnshown(made.printed, terminal);
    for (const std::string &file : made.missing)
        terminal.complain(fmt::format("{} is not in the project.", onOneLine(file)));
    for (const std::string &file : made.altered)
        terminal.complain(
            fmt::format("{} is no longer the file that was taken in.", onOneLine(file)));
}

void writeNames(JsonWriter &json, std::string_view key, const std::vector<std::string> &names)
{
    json.key(key);
    json.beginArray();
    for (const std::string &name : names)
        json.value(name);
    json.endArray();
}

void tellJson(const Options &options, const IdSet<Closing> &closings, const print::PacketMade &made,
              std::ostream &out)
{
    JsonWriter json(out, JsonWriter::Layout::Indented);
    json.beginObject();
    json.member(options.folder.empty() ? "file" : "folder", placeOf(options));
    json.key("closings");
    json.beginArray();
    for (const Id<Closing> id : closings)
        json.value(id.value());
    json.endArray();
    json.member("pages", made.printed.pages);
    json.member("pictures", made.printed.pictures);
    json.member("missing_pictures", made.printed.missing_pictures);
    json.member("unshown_characters", made.printed.unshown);
    json.member("bytes", std::int64_t(made.bytes));
    if (options.small) {
        json.member("longest_edge", made.longest_edge);
        json.member("left_out", made.left_out);
    }
    if (!options.folder.empty()) {
        json.member("full_size", made.full_size);
        writeNames(json, "missing_files", made.missing);
        writeNames(json, "altered_files", made.altered);
    }
    json.endObject();
}

Outcome make(const Options &options, Terminal &terminal)
{
    if (placeOf(options).empty())
        throw WrongUsage("One of --to and --folder is needed.");
    const auto project = openToPrint(options.project, options.who, terminal);
    const auto closings = closingsOf(*project->records(), options.closings);
    tellOfStrays(*project->records(), terminal);
    const print::PacketMade made = makeIn(options, *project, closings);
    if (options.json) {
        tellJson(options, closings, made, terminal.out());
        terminal.out() << '\n';
    } else {
        tellPlainly(options, made, terminal);
    }
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
    // No group of options: CLI11 takes an empty argument for the name of one, and hangs.
    CLI::Option &to = *verb.add_option("--to", options->to, "The PDF to write");
    to.type_name("FILE.pdf");
    CLI::Option &folder =
        *verb.add_option("--folder", options->folder,
                         "A new folder for the PDF, the photographs in full size, and SHA256SUMS");
    folder.type_name("DIR")->excludes(&to);
    verb.add_flag("--small", options->small, "A PDF under 15 MB, to send")->excludes(&folder);
    addPaper(verb, options->paper);
    addWho(verb, options->who);
    addJsonFlag(verb, options->json);
    whenNamed(verb, chosen, [options](Terminal &terminal) { return make(*options, terminal); });
}

} // namespace lastrivet::cli
