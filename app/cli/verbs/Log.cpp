// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/Names.h"
#include "app/cli/OpenProject.h"
#include "app/cli/PlainText.h"
#include "app/cli/VerbOptions.h"
#include "core/base/JsonWriter.h"
#include "core/base/Trimmed.h"
#include "core/project/acts/Sessions.h"
#include "core/readiness/Readiness.h"
#include "core/readiness/Sentences.h"
#include "core/records/invariants/Bounds.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <fmt/ostream.h>
#include <optional>
#include <utility>
#include <vector>

namespace lastrivet::cli {

namespace {

struct Options : VerbOptions {
    std::string component;
    std::string minutes;
    std::string kind{word(WorkKind::Other)};
    std::optional<std::string> began;
    std::string note;
    std::string who;
    bool json = false;
};

WorkSession sessionFrom(const Options &options, const Project &project)
{
    if (trimmed(options.note).empty())
        throw WrongUsage("--note: say what was done.");
    const Records &records = *project.records();
    WorkSession session;
    session.component_id = partOf(records, options.component).id;
    session.minutes =
        Minutes(wholeNumberOf(options.minutes, "--minutes", 1, longestRecorded.count()));
    session.kind = wordOf<WorkKind>(options.kind, "--kind");
    session.began = options.began ? momentOf(*options.began, "--began") : project.today();
    session.note = options.note;
    if (!options.who.empty())
        session.workers.push_back({personOf(records, options.who).id, {}, false});
    return session;
}

void writeJson(Id<WorkSession> id, const WorkSession &session, std::ostream &out)
{
    JsonWriter json(out, JsonWriter::Layout::Indented);
    json.beginObject();
    json.member("id", id.value());
    json.member("component_id", session.component_id.value());
    json.member("began", session.began->text());
    json.member("minutes", session.minutes->count());
    json.endObject();
}

bool isOutdated(const readiness::Blocker &blocker)
{
    return blocker.rule == readiness::Rule::OutdatedSignOff;
}

/// Whether the answer says already that work came after this signature.
bool isToldIn(const readiness::Answer &answer, Id<Closing> id, const readiness::Blocker &outdated)
{
    const auto *closing = answer.closing(id);
    return closing && std::ranges::any_of(closing->blockers, [&](const readiness::Blocker &known) {
               return isOutdated(known) && known.record == outdated.record;
           });
}

using Outdated = std::pair<Id<Closing>, readiness::Blocker>;

std::vector<Outdated> outdatedIn(const readiness::Answer &answer)
{
    std::vector<Outdated> all;
    for (const auto &closing : answer.closings) {
        for (const auto &blocker : closing.blockers) {
            if (isOutdated(blocker) && !isClosed(closing.state))
                all.emplace_back(closing.id, blocker);
        }
    }
    return all;
}

/// Names each signature that was valid until the change and is outdated by it.
void tellOutdated(const ChangeNotice &notice, const Project &project, std::ostream &out)
{
    if (notice.after->sign_offs.isEmpty())
        return;
    const auto outdated =
        outdatedIn(readiness::readiness(*notice.after, project.profile(), project.today()));
    // The answer before the change is worked out only when needed, since each takes a while.
    if (outdated.empty())
        return;
    const auto before = readiness::readiness(*notice.before, project.profile(), project.today());
    for (const auto &[closing, blocker] : outdated) {
        if (isToldIn(before, closing, blocker))
            continue;
        const std::string line =
            fmt::format("{}: {}; {}.", notice.after->find(closing)->title,
                        english(readiness::sentence(blocker, *notice.after)),
                        english(readiness::clearedBy(blocker, *notice.after, project.profile())));
        fmt::print(out, "{}\n", onOneLine(line));
    }
}

Outcome enter(const Options &options, Terminal &terminal)
{
    const auto project = openForWriting(options.project, options.who, terminal);
    const WorkSession session = sessionFrom(options, *project);
    const Component &part = *project->records()->find(session.component_id);
    const std::string label =
        fmt::format("Logged {} on {}", hoursText(*session.minutes), part.code);
    Id<WorkSession> id;
    const auto done =
        project->change(label, [&](Edit &edit) { id = acts::enterSession(edit, session); });
    requireDone(done);
    if (options.json) {
        writeJson(id, session, terminal.out());
        terminal.out() << '\n';
    } else {
        const bool isToCome = after(*session.began, project->today());
        fmt::print(terminal.out(), "{} {} on {}{}.\n", onOneLine(label), onOneLine(part.name),
                   session.began->text(),
                   isToCome ? ", which is still to come: its hours count already" : "");
        tellOutdated(*done, *project, terminal.out());
    }
    return Outcome::Done;
}

} // namespace

void declareLog(CLI::App &program, Action &chosen)
{
    auto options = std::make_shared<Options>();
    CLI::App &verb = addVerb(program, "log", "Enters a stretch of work", *options);
    verb.add_option("--component", options->component, "The code of the part worked on")
        ->required()
        ->type_name("CODE");
    verb.add_option("--minutes", options->minutes, "How long")->required()->type_name("N");
    verb.add_option("--kind", options->kind,
                    fmt::format("What kind of work: {}", fmt::join(Words<WorkKind>::list, ", ")))
        ->type_name("K");
    verb.add_option("--began", options->began, "When it began; today when not said")
        ->type_name("M");
    asText(*verb.add_option("--note", options->note, "What was done"))
        .required()
        ->type_name("TEXT");
    addWho(verb, options->who);
    addJsonFlag(verb, options->json);
    whenNamed(verb, chosen, [options](Terminal &terminal) { return enter(*options, terminal); });
}

} // namespace lastrivet::cli
