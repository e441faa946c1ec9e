// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/Complaint.h"
#include "app/cli/Names.h"
#include "app/cli/OpenProject.h"
#include "app/cli/PlainText.h"
#include "app/cli/VerbOptions.h"
#include "core/base/JsonWriter.h"
#include "core/entry/ShiftText.h"
#include "core/evidence/CameraClock.h"
#include "core/evidence/IntakeStore.h"
#include "core/evidence/PartsOf.h"
#include "core/project/acts/PhotoTimes.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <cstdint>
#include <fmt/ostream.h>
#include <optional>
#include <set>

namespace lastrivet::cli {

namespace {

using evidence::IncomingFile;
using evidence::IntakeReport;

struct Options : VerbOptions {
    std::vector<std::string> files;
    std::string component;
    std::vector<std::string> shows;
    std::string from;
    std::string until;
    std::string shift;
    std::string firstTaken;
    bool all = false;
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
    json.member("put_back", report.put_back.size());
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

/// The days or moments that photographs were taken between, both included.
struct Span {
    std::optional<Moment> from;
    std::optional<Moment> until;

    bool holds(const Media &media) const
    {
        if (!from && !until)
            return true;
        return media.taken_on && !(from && after(*from, *media.taken_on)) &&
               !(until && after(*media.taken_on, *until));
    }
};

Span spanOf(const Options &options)
{
    Span span;
    if (!options.from.empty())
        span.from = momentOf(options.from, "--from");
    if (!options.until.empty())
        span.until = momentOf(options.until, "--until");
    if (span.from && span.until && after(*span.from, *span.until))
        throw WrongUsage(
            fmt::format("--until: {} lies before --from, {}.", options.until, options.from));
    return span;
}

/// What is on record of a kind, by name of file: all, or what shows a part with everything in it,
/// and of a span of time.
std::vector<const Media *> listed(const Records &records, const Options &options, MediaKind kind)
{
    const Span span = spanOf(options);
    std::set<Id<Component>> parts;
    if (!options.component.empty())
        parts = inside(records, partOf(records, options.component).id);
    const auto isOfPart = [&](const Media &media) {
        const auto shown = evidence::partsOf(records, media);
        return std::any_of(shown.begin(), shown.end(),
                           [&](Id<Component> part) { return parts.contains(part); });
    };
    std::vector<const Media *> photos;
    for (const Media &media : records.media) {
        if (media.kind == kind && !media.withdrawn_on && span.holds(media) &&
            (options.component.empty() || isOfPart(media)))
            photos.push_back(&media);
    }
    std::sort(photos.begin(), photos.end(),
              [](const Media *a, const Media *b) { return a->file < b->file; });
    return photos;
}

std::vector<const Media *> photosOf(const Records &records, const Options &options)
{
    return listed(records, options, MediaKind::Photo);
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
    const auto records = project->records();
    const auto photos = photosOf(*records, options);
    if (options.json) {
        writeJson(photos, terminal.out());
        terminal.out() << '\n';
        return Outcome::Done;
    }
    for (const Media *photo : photos)
        terminal.out() << onOneLine(photo->file) << '\n';
    return Outcome::Done;
}

bool isShift(const Options &options)
{
    return !options.shift.empty() || !options.firstTaken.empty();
}

std::int64_t minutesOf(const Options &options, const Records &records,
                       const std::vector<Id<Media>> &photos)
{
    if (!options.shift.empty()) {
        if (const auto minutes = entry::readShift(options.shift))
            return *minutes;
        throw WrongUsage(fmt::format("--shift: “{}” is no length of time; write it as 1h30, -6h "
                                     "or 2d.",
                                     options.shift));
    }
    const auto minutes =
        acts::minutesUntil(records, photos, momentOf(options.firstTaken, "--first-taken"));
    if (!minutes)
        throw WrongUsage("--first-taken: of none of these photographs it is known when it was "
                         "taken.");
    return *minutes;
}

/// "1 h 30", "2 days".
std::string lengthText(std::int64_t minutes)
{
    constexpr std::int64_t perDay = 24 * 60;
    const std::int64_t length = minutes < 0 ? -minutes : minutes;
    return length % perDay == 0 ? counted(length / perDay, "day") : hoursText(Minutes{length});
}

void writeJson(const acts::TimeShift &shift, std::int64_t minutes, std::ostream &out)
{
    std::vector<Id<Media>> moved;
    for (const auto &one : shift.moved)
        moved.push_back(one.media);
    JsonWriter json(out, JsonWriter::Layout::Indented);
    json.beginObject();
    json.member("minutes", minutes);
    writeIds(json, "moved", moved);
    writeIds(json, "left", shift.left);
    json.endObject();
}

/// Nobody moves the times of all photographs by leaving an option out.
void requireChoice(const Options &options, std::size_t count)
{
    const bool isChosen =
        !options.component.empty() || !options.from.empty() || !options.until.empty();
    if (isChosen && options.all)
        throw WrongUsage("--all: --component, --from and --until choose some; it is either.");
    if (!isChosen && !options.all)
        throw WrongUsage(fmt::format("--shift and --first-taken move what --component, --from and "
                                     "--until choose; for all of the project, {}, say --all.",
                                     counted(std::int64_t(count), "photo")));
}

/// A video's time is what a person gave, not what a camera wrote.
void tellVideos(const std::vector<const Media *> &videos, std::ostream &out)
{
    const auto timed = std::count_if(videos.begin(), videos.end(), [](const Media *video) {
        return video->taken_on.has_value();
    });
    if (timed > 0)
        fmt::print(out, "{} left alone: only photographs are moved.\n",
                   counted(std::int64_t(timed), "video"));
}

void tellShift(const acts::TimeShift &shift, const std::string &label, Moment now,
               std::ostream &out)
{
    if (shift.moved.empty()) {
        fmt::print(out, "Nothing to move.\n");
    } else {
        fmt::print(out, "{}.\n", label);
        const auto &first = shift.moved.front();
        const auto &last = shift.moved.back();
        fmt::print(out, "First: {} becomes {}.\n", first.was.text(), first.becomes.text());
        fmt::print(out, "Last: {} becomes {}.\n", last.was.text(), last.becomes.text());
    }
    const auto ahead = std::count_if(shift.moved.begin(), shift.moved.end(),
                                     [&](const auto &one) { return after(one.becomes, now); });
    if (ahead > 0)
        fmt::print(out, "Dated ahead of now: {}.\n", counted(std::int64_t(ahead), "photo"));
    if (!shift.left.empty())
        fmt::print(out, "{} left alone: the time is not known.\n",
                   counted(std::int64_t(shift.left.size()), "photo"));
}

/// Moves the times of the photographs that would be listed; their files stay as they are.
Outcome shiftTimes(const Options &options, Terminal &terminal)
{
    if (!options.shift.empty() && !options.firstTaken.empty())
        throw WrongUsage("--shift and --first-taken: one of them says how far.");
    if (!options.files.empty() || !options.shows.empty())
        throw WrongUsage("--shift and --first-taken are for photographs on record, chosen by "
                         "--component, --from and --until; no FILE and no --shows go with them.");
    const auto project = openForWriting(options.project, options.who, terminal);
    const auto records = project->records();
    std::vector<Id<Media>> photos;
    for (const Media *photo : photosOf(*records, options))
        photos.push_back(photo->id);
    const std::int64_t minutes = minutesOf(options, *records, photos);
    const acts::TimeShift shift = acts::timeShift(*records, photos, minutes);
    if (!shift.beyond.empty())
        throw WrongUsage("Moved so far, photographs would lie outside the years 1900 to 2199.");
    requireChoice(options, shift.moved.size());
    const std::string label =
        fmt::format("{}: times moved {} by {}", counted(std::int64_t(shift.moved.size()), "photo"),
                    minutes < 0 ? "back" : "forward", lengthText(minutes));
    if (!shift.moved.empty())
        requireDone(
            project->change(label, [&](Edit &edit) { acts::shiftTimes(edit, photos, minutes); }));
    if (options.json) {
        writeJson(shift, minutes, terminal.out());
        terminal.out() << '\n';
    } else {
        tellShift(shift, label, project->now(), terminal.out());
        tellVideos(listed(*records, options, MediaKind::Video), terminal.out());
    }
    return Outcome::Done;
}

void tellWrongClock(const Project &project, const IntakeReport &report, std::ostream &out)
{
    const auto wrong = evidence::datedWrongly(*project.records(), report.taken, project.today());
    if (wrong > 0)
        fmt::print(out,
                   "Dated ahead, or years before the project: {}; was the camera's clock right?\n",
                   counted(std::int64_t(wrong), "file"));
}

/// Takes the good files in, and names the others.
Outcome takeIn(const Options &options, Terminal &terminal)
{
    if (!options.from.empty() || !options.until.empty() || options.all)
        throw WrongUsage("--from, --until and --all choose photographs on record; there is a "
                         "FILE.");
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
        for (const Message &told : report.put_back)
            fmt::print(terminal.out(), "{}\n", english(told));
        tellWrongClock(*project, report, terminal.out());
    }
    return report.failures.empty() ? Outcome::Done : Outcome::Failed;
}

void declareTimes(CLI::App &verb, Options &options)
{
    verb.add_option("--from", options.from, "In a list: the first day or moment")->type_name("M");
    verb.add_option("--until", options.until, "In a list: the last day or moment")->type_name("M");
    verb.add_option(
            "--shift", options.shift,
            "Moves the times of the listed ones, whose camera's clock was wrong: 1h30, -6h, 2d")
        ->type_name("LENGTH");
    verb.add_option("--first-taken", options.firstTaken,
                    "Moves them so that the first was taken then")
        ->type_name("M");
    verb.add_flag("--all", options.all, "Moves the times of all photographs of the project");
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
    declareTimes(verb, *options);
    addWho(verb, options->who);
    addJsonFlag(verb, options->json);
    whenNamed(verb, chosen, [options](Terminal &terminal) {
        if (isShift(*options))
            return shiftTimes(*options, terminal);
        return options->files.empty() ? list(*options, terminal) : takeIn(*options, terminal);
    });
}

} // namespace lastrivet::cli
