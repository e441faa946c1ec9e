// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/Complaint.h"
#include "app/cli/OpenProject.h"
#include "app/cli/PlainText.h"
#include "app/cli/VerbOptions.h"
#include "core/profiles/ProfileLibrary.h"

#include <CLI/CLI.hpp>

#include <cstdlib>
#include <filesystem>
#include <fmt/format.h>
#include <fmt/ostream.h>

namespace lastrivet::cli {

namespace {

namespace fs = std::filesystem;

struct Options : VerbOptions {
    std::string name;
    std::string profile;
    std::string who;
};

/// "Europe/Berlin" of "/usr/share/zoneinfo/Europe/Berlin", and of itself.
std::string zoneOfFile(const std::string &file)
{
    constexpr std::string_view folder = "zoneinfo/";
    const auto at = file.find(folder);
    return at == std::string::npos ? file : file.substr(at + folder.size());
}

/// The time zone that this computer is set to, as an IANA name.
std::string zoneHere()
{
    // By POSIX a colon may stand before a zone's name or file.
    const char *set = std::getenv("TZ");
    const std::string named = set ? zoneOfFile(*set == ':' ? set + 1 : set) : "";
    if (isKnownZone(named))
        return named;
    std::error_code none;
    const std::string zone = zoneOfFile(fs::read_symlink("/etc/localtime", none).string());
    return isKnownZone(zone) ? zone : "UTC";
}

Profile profileNamed(const std::string &id)
{
    const auto library = ProfileLibrary::standard();
    if (auto profile = library.find(id))
        return std::move(*profile);
    throw WrongUsage(fmt::format("--profile: there is no rule profile “{}”; there are {}.", id,
                                 fmt::join(library.ids(), ", ")));
}

/// Adds a person of this name and makes it the project's builder.
void enterBuilder(Project &project, const std::string &name)
{
    requireDone(project.change("Builder entered", [&](Edit &edit) {
        Person builder;
        builder.name = name;
        builder.roles.insert(Role::Builder);
        ProjectFacts facts = edit.records().project;
        facts.builder_id = edit.put(builder);
        edit.put(facts);
    }));
}

Outcome make(const Options &options, Terminal &terminal)
{
    if (options.name.empty())
        throw WrongUsage("--name: say what the project is called.");
    const Profile profile = profileNamed(options.profile);
    ProjectFacts facts;
    facts.name = options.name;
    facts.profile = profile.id;
    facts.time_zone = zoneHere();
    const auto project =
        Project::create(options.project, facts, profile, {nullptr, options.who, false});
    if (!options.who.empty())
        enterBuilder(*project, options.who);
    fmt::print(terminal.out(), "Made {}, with the rules of profile {} ({}).\n",
               onOneLine(options.project), profile.id, profile.name);
    return Outcome::Done;
}

} // namespace

void declareNew(CLI::App &program, Action &chosen)
{
    auto options = std::make_shared<Options>();
    CLI::App &verb = addVerb(program, "new", "Makes an empty project folder", *options);
    asText(*verb.add_option("--name", options->name, "What the project is called")).required();
    verb.add_option("--profile", options->profile, "The rule profile: ca, us, gb, plain")
        ->required()
        ->type_name("ID");
    asText(*verb.add_option("--who", options->who, "Who builds: becomes the project's builder"))
        .type_name("NAME");
    whenNamed(verb, chosen, [options](Terminal &terminal) { return make(*options, terminal); });
}

} // namespace lastrivet::cli
