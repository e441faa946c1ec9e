// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/Complaint.h"
#include "app/cli/Names.h"
#include "app/cli/OpenProject.h"
#include "app/cli/PlainText.h"
#include "app/cli/VerbOptions.h"
#include "core/base/JsonWriter.h"
#include "core/evidence/IntakeStore.h"
#include "core/evidence/PartsOf.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <fmt/ostream.h>
#include <set>

namespace lastrivet::cli {

namespace {

using evidence::IncomingFile;
using evidence::IntakeReport;

struct Options : VerbOptions {
    std::vector<std::string> files;
    std::string component;
    std::vector<std::string> shows;
    std::string who;
    bool json = false;
};

std::vector<IncomingFile> filesFrom(const Options &options, const Records &records)
{
    IncomingFile like;
    if (!options.component.empty()) {
        const Component &part = partOf(records, options.component);
        like.part_name = part.name;
        like.links.push_back({RecordType::Component, part.id.value()});
    }
    for (const std::string &shown : options.shows)
        like.shows.insert(wordOf<Shows>(shown, "--shows"));
    std::vector<IncomingFile> files;
    for (const std::string &path : options.files) {
        like.path = path;
        files.push_back(like);
    }
    return files;
}

void writeIds(JsonWriter &json, std::string_view name, const std::vector<Id<Media>> &ids)
{
    json.key(name);
    json.beginArray();
    for (const Id<Media> id : ids)
        json.value(id.value());
    json.endArray();
}

void writeJson(const IntakeReport &report, std::ostream &out)
{
    JsonWriter json(out, JsonWriter::Layout::Indented);
    json.beginObject();
    writeIds(json, "taken", report.taken);
    writeIds(json, "already_there", report.already_there);
    json.member("failed", report.failures.size());
    json.endObject();
}

/// The part and all live parts in it.
std::set<Id<Component>> inside(const Records &records, Id<Component> part)
{
    std::set<Id<Component>> parts{part};
    for (std::size_t before = 0; before != parts.size();) {
        before = parts.size();
        for (const Component &each : records.components) {
            if (!each.withdrawn_on && parts.contains(each.parent_id))
                parts.insert(each.id);
        }
    }
    return parts;
}

/// The photographs on record, by name of file: all, or those of a part with everything in it.
std::vector<const Media *> photosOf(const Records &records, const std::string &component)
{
    std::set<Id<Component>> parts;
    if (!component.empty())
        parts = inside(records, partOf(records, component).id);
    std::vector<const Media *> photos;
    for (const Media &media : records.media) {
        if (media.kind != MediaKind::Photo || media.withdrawn_on)
            continue;
        const auto shown = evidence::partsOf(records, media);
        if (component.empty() || std::any_of(shown.begin(), shown.end(), [&](Id<Component> part) {
                return parts.contains(part);
            }))
            photos.push_back(&media);
    }
    std::sort(photos.begin(), photos.end(),
              [](const Media *a, const Media *b) { return a->file < b->file; });
    return photos;
}

void writeJson(const std::vector<const Media *> &photos, std::ostream &out)
{
    JsonWriter json(out, JsonWriter::Layout::Indented);
    json.beginObject();
    json.key("photos");
    json.beginArray();
    for (const Media *photo : photos) {
        json.beginObject();
        json.member("id", photo->id.value());
        json.member("file", photo->file);
        json.key("taken_on");
        photo->taken_on ? json.value(photo->taken_on->text()) : json.null();
        json.member("caption", photo->caption);
        json.endObject();
    }
    json.endArray();
    json.endObject();
}

Outcome list(const Options &options, Terminal &terminal)
{
    if (!options.shows.empty())
        throw WrongUsage("--shows: says what files show that are taken in; there is no FILE.");
    const auto project = openForReading(options.project, terminal);
    const auto photos = photosOf(*project->records(), options.component);
    if (options.json) {
        writeJson(photos, terminal.out());
        terminal.out() << '\n';
        return Outcome::Done;
    }
    for (const Media *photo : photos)
        terminal.out() << onOneLine(photo->file) << '\n';
    return Outcome::Done;
}

/// Every file by itself: those that are good are taken in, the others named.
Outcome takeIn(const Options &options, Terminal &terminal)
{
    const auto project = openForWriting(options.project, options.who, terminal);
    const auto files = filesFrom(options, *project->records());
    const IntakeReport report = evidence::takeIn(*project, files);
    for (const auto &failure : report.failures)
        terminal.complain(english(failure.why));
    if (options.json) {
        writeJson(report, terminal.out());
        terminal.out() << '\n';
    } else {
        fmt::print(terminal.out(), "{} taken in, {} there already, {} not.\n",
                   counted(std::int64_t(report.taken.size()), "file"), report.already_there.size(),
                   report.failures.size());
    }
    return report.failures.empty() ? Outcome::Done : Outcome::Failed;
}

} // namespace

void declarePhotos(CLI::App &program, Action &chosen)
{
    auto options = std::make_shared<Options>();
    CLI::App &verb = addVerb(
        program, "photos",
        "Takes photographs, videos and papers in; without a FILE lists photographs", *options);
    verb.add_option("FILE", options->files, "The files; they stay where they are")->type_name("");
    verb.add_option("--component", options->component,
                    "The code of the part they show; in a list, with all that is in it")
        ->type_name("CODE");
    verb.add_option("--shows", options->shows,
                    fmt::format("What they show: {}", fmt::join(Words<Shows>::list, ", ")))
        ->delimiter(',')
        ->expected(1)
        ->take_all()
        ->type_name("S");
    addWho(verb, options->who);
    addJsonFlag(verb, options->json);
    whenNamed(verb, chosen, [options](Terminal &terminal) {
        return options->files.empty() ? list(*options, terminal) : takeIn(*options, terminal);
    });
}

} // namespace lastrivet::cli
