// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/Site.h"

#include "core/profiles/ProfileLibrary.h"
#include "core/verify/Verification.h"

#include <stdexcept>

namespace lastrivet::faults {

Site::Site()
    : Site(std::filesystem::path())
{
}

Site::Site(std::filesystem::path root)
    : m_root(root.empty() ? m_temporary.path() : std::move(root))
{
    std::filesystem::create_directories(m_root);
    ProjectFacts facts;
    facts.name = "Fault bench";
    m_project =
        Project::create(folder(), facts, ProfileLibrary::standard().profile("plain"), options());
    const auto begun = m_project->change("Begun", [](Edit &edit) {
        Person person;
        person.name = "Robin";
        person.roles = {Role::Builder};
        edit.put(person);
    });
    if (!begun)
        throw std::runtime_error("the bench cannot begin: " + english(begun.reason()));
    addPart(*m_project);
}

std::string damageIn(const std::filesystem::path &project, Leftovers leftovers)
{
    std::string damage;
    for (const auto &finding : verify(project).findings) {
        const bool isLeftover = finding.text.find("is half-written") != std::string::npos;
        if (!finding.text.starts_with("No record names the file") &&
            !(isLeftover && leftovers == Leftovers::MayBeThere))
            damage += finding.text + "\n";
    }
    return damage;
}

void addPart(Project &project)
{
    const auto result = project.change("Part added", [](Edit &edit) {
        Component part;
        part.name = "Wing";
        edit.put(part);
    });
    if (!result)
        throw std::runtime_error("a part cannot be added: " + english(result.reason()));
}

} // namespace lastrivet::faults
