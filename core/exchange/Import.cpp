// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/Import.h"

#include "core/base/Clock.h"
#include "core/base/Error.h"
#include "core/exchange/FileImport.h"
#include "core/exchange/ImportPlan.h"
#include "core/exchange/InputText.h"
#include "core/profiles/HoldPoints.h"

#include <fmt/format.h>

#include <algorithm>
#include <numeric>
#include <system_error>
#include <vector>

namespace lastrivet::exchange {

namespace {

namespace fs = std::filesystem;

void put(Edit &edit, const ImportPlan &plan, const RecordRef &record, const FileImport &files)
{
    if (record.type != RecordType::Media) {
        edit.putAny(record.type, plan.merged.find(record.type, record.id));
        return;
    }
    Media media = *plan.merged.find(Id<Media>{record.id});
    files.describe(media);
    edit.putAny(record.type, &media);
}

/// Stores what the plan adds; answers how many hold points were made.
std::size_t apply(Edit &edit, const ImportPlan &plan, const ImportDocument &document,
                  const FileImport &files)
{
    for (const RecordRef &record : plan.added)
        put(edit, plan, record, files);
    for (const RecordRef &record : plan.known_files) {
        Media media = *plan.merged.find(Id<Media>{record.id});
        if (files.describe(media))
            edit.putAny(record.type, &media);
    }
    std::size_t made = 0;
    for (const RecordRef &record : plan.added) {
        if (record.type != RecordType::Closing || document.hold_points_given)
            continue;
        const Closing closing = *edit.records().find(Id<Closing>{record.id});
        for (HoldPoint &point : holdPointsFor(closing, edit.records(), edit.profile())) {
            edit.put(std::move(point));
            ++made;
        }
    }
    return made;
}

InputErrors errorsOf(const Refusal &refusal, const ImportDocument &document)
{
    InputErrors errors;
    for (const Violation &violation : refusal.violations)
        errors.push_back({document.pointerTo(violation.record), {}, violation.message});
    if (errors.empty())
        errors.push_back({{}, {}, refusal.message});
    if (errors.size() > mostErrors)
        errors.resize(mostErrors);
    return errors;
}

/// All that stands against an import: of the records, and of their files.
InputErrors allErrors(const ImportPlan &plan, const FileImport &files,
                      const DocumentReading &reading)
{
    auto errors = plan.errors;
    for (InputError &error : files.check(plan, reading)) {
        if (errors.size() < mostErrors)
            errors.push_back(std::move(error));
    }
    return errors;
}

/// Copies the files and stores the records in one change.
Result<ImportReport, InputErrors> carryOut(Project &project, FileImport &files,
                                           const fs::path &source, const ImportPlan &plan,
                                           const ImportDocument &document)
{
    if (auto errors = files.copy(plan, document); !errors.empty())
        return errors;
    ImportReport report;
    report.skipped = plan.skipped;
    report.files_copied = files.copied();
    report.files_missing = files.missing();
    report.unknown_currencies = unknownCurrencies(plan);
    report.far_ahead = farAhead(plan, project.today());
    for (const RecordRef &record : plan.added)
        ++report.added[std::size_t(record.type)];
    const auto changed = project.change(
        fmt::format("{}{}", importLabel, source.filename().string()),
        [&](Edit &edit) {
            if (!(edit.records().project == plan.merged.project))
                edit.put(plan.merged.project);
            report.hold_points_made = apply(edit, plan, document, files);
        },
        ChangeKind::Import);
    if (!changed)
        return errorsOf(changed.reason(), document);
    files.keep();
    return report;
}

/// The project's facts as they can stand before there are people.
ProjectFacts withoutBuilder(ProjectFacts facts)
{
    facts.builder_id = {};
    return facts;
}

InputError unknownProfile(const std::string &id, const ProfileLibrary &profiles)
{
    std::string known;
    for (const auto &each : profiles.ids())
        known += (known.empty() ? "" : ", ") + each;
    return {"/project/profile", {}, {"There is no rule profile {0}; there are {1}.", {id, known}}};
}

bool isAboutProfileCopy(const InputError &error)
{
    return error.place.starts_with("/profile_copy");
}

/// The profile of a document for a new project. Where there is none, that is one more error, and
/// the rest is judged by one that allows whatever some profile may.
Profile profileFor(DocumentReading &reading, const ProfileLibrary &profiles)
{
    const auto &id = reading.document.records.project.profile;
    auto profile = reading.document.profile;
    if (!profile && !id.empty())
        profile = profiles.find(id);
    if (profile)
        return *profile;
    if (!id.empty() && reading.isComplete && reading.errors.size() < mostErrors &&
        std::ranges::none_of(reading.errors, isAboutProfileCopy))
        reading.errors.push_back(unknownProfile(id, profiles));
    Profile lenient;
    lenient.late_acceptance_by = {SignerRole::Builder, SignerRole::Adviser, SignerRole::Inspector};
    return lenient;
}

/// Moments are read in the zone; with an unknown one all of them would silently be UTC.
void checkZone(DocumentReading &reading)
{
    const std::string &zone = reading.document.records.project.time_zone;
    if (zone.empty() || isKnownZone(zone) || reading.errors.size() >= mostErrors)
        return;
    reading.errors.push_back(
        {"/project/time_zone",
         {},
         {"This computer knows no time zone {0}; the names are like Europe/Berlin.", {zone}}});
}

/// Where a new project is made; unless it is kept, everything is as it was before.
class MadeFolder {
public:
    explicit MadeFolder(fs::path folder)
        : m_folder(std::move(folder))
    {
        std::error_code none;
        m_wasThere = fs::exists(fs::symlink_status(m_folder, none));
    }
    ~MadeFolder()
    {
        std::error_code ignored;
        if (!m_isOurs)
            return;
        if (!m_wasThere) {
            fs::remove_all(m_folder, ignored);
            return;
        }
        // It was empty, or the way to an empty one, when a project could be made in it.
        std::vector<fs::path> inside;
        for (fs::directory_iterator entry(m_folder, ignored), end; !ignored && entry != end;
             entry.increment(ignored))
            inside.push_back(entry->path());
        for (const fs::path &made : inside)
            fs::remove_all(made, ignored);
    }
    MadeFolder(const MadeFolder &) = delete;
    MadeFolder &operator=(const MadeFolder &) = delete;
    /// From now on what lies in it is the new project's.
    void begin() { m_isOurs = true; }
    void keep() { m_isOurs = false; }

private:
    fs::path m_folder;
    bool m_wasThere = false;
    bool m_isOurs = false;
};

} // namespace

std::size_t ImportReport::addedInAll() const
{
    return std::accumulate(added.begin(), added.end(), std::size_t{0});
}

Result<ImportReport, InputErrors> importDocument(Project &project, const fs::path &document)
{
    if (project.isReadOnly())
        throw NotWritable(project.readOnlyMessage());
    const auto reading = readDocument(readInputFile(document));
    const auto plan = planImport(reading, *project.records(), project.profile());
    FileImport files{document.parent_path(), project.folder()};
    if (auto errors = allErrors(plan, files, reading); !errors.empty())
        return errors;
    return carryOut(project, files, document, plan, reading.document);
}

Result<NewProject, InputErrors> importAsNewProject(const fs::path &folder, const fs::path &document,
                                                   const ProfileLibrary &profiles,
                                                   const Project::Options &options)
{
    auto reading = readDocument(readInputFile(document));
    const auto profile = profileFor(reading, profiles);
    checkZone(reading);
    const auto plan = planImport(reading, profile);
    MadeFolder unfinished{folder};
    FileImport files{document.parent_path(), folder};
    if (auto errors = allErrors(plan, files, reading); !errors.empty())
        return errors;
    const auto &facts = reading.document.records.project;
    NewProject made;
    made.project = Project::create(folder, withoutBuilder(facts), profile, options);
    unfinished.begin();
    auto report = carryOut(*made.project, files, document, plan, reading.document);
    if (!report)
        return report.reason();
    unfinished.keep();
    made.report = *report;
    return made;
}

} // namespace lastrivet::exchange
