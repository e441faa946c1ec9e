// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/profiles/ProfileLibrary.h"

#include "core/base/Error.h"
#include "core/profiles/ProfileJson.h"

#include <cstdlib>
#include <fmt/format.h>
#include <fstream>
#include <iterator>
#include <set>

namespace lastrivet {

namespace fs = std::filesystem;

namespace {

constexpr std::string_view suffix = ".json";
/// One byte more than a profile may have: enough to tell that a file is too long.
constexpr std::size_t mostRead = 1024 * 1024 + 1;

std::string contentOf(const fs::path &file)
{
    std::ifstream stream(file, std::ios::binary);
    if (!stream || fs::is_directory(file))
        throw UnreadableInput(Message{"{0} could not be read.", {file.string()}});
    std::string content(mostRead, '\0');
    stream.read(content.data(), std::streamsize(content.size()));
    if (stream.bad())
        throw UnreadableInput(Message{"{0} could not be read.", {file.string()}});
    content.resize(std::size_t(stream.gcount()));
    return content;
}

std::set<std::string> idsIn(const fs::path &folder)
{
    std::set<std::string> ids;
    std::error_code unreadable;
    for (const fs::directory_entry &entry : fs::directory_iterator(folder, unreadable)) {
        if (entry.path().extension() == suffix)
            ids.insert(entry.path().stem().string());
    }
    return ids;
}

std::vector<fs::path> shippedFolders()
{
    return {fs::path(LASTRIVET_RESOURCES) / "profiles", fs::path("/usr/share/lastrivet/profiles")};
}

} // namespace

Profile readProfileFile(const fs::path &file)
{
    auto profile = readProfile(contentOf(file));
    if (!profile)
        throw UnreadableInput(profile.reason().sentence(file.string()));
    return std::move(*profile);
}

ProfileLibrary::ProfileLibrary(std::vector<fs::path> folders)
    : m_folders(std::move(folders))
{
}

ProfileLibrary ProfileLibrary::shipped()
{
    return ProfileLibrary(shippedFolders());
}

ProfileLibrary ProfileLibrary::standard()
{
    auto folders = shippedFolders();
    if (const fs::path own = ownFolder(); !own.empty())
        folders.push_back(own);
    return ProfileLibrary(std::move(folders));
}

fs::path ProfileLibrary::ownFolder()
{
    const auto valueOf = [](const char *name) {
        const char *value = std::getenv(name);
        return fs::path(value ? value : "");
    };
    const fs::path data = valueOf("XDG_DATA_HOME");
    // The specification takes a path that is not absolute for none.
    if (data.is_absolute())
        return data / "lastrivet" / "profiles";
    const fs::path home = valueOf("HOME");
    return home.is_absolute() ? home / ".local/share/lastrivet/profiles" : fs::path();
}

std::vector<std::string> ProfileLibrary::ids() const
{
    std::set<std::string> all;
    for (const fs::path &folder : m_folders)
        all.merge(idsIn(folder));
    return {all.begin(), all.end()};
}

std::optional<Profile> ProfileLibrary::find(std::string_view id) const
{
    for (const fs::path &folder : m_folders) {
        // Looked up by listing, so that an id can never lead out of the folder.
        if (!idsIn(folder).contains(std::string(id)))
            continue;
        const fs::path file = folder / fmt::format("{}{}", id, suffix);
        Profile profile = readProfileFile(file);
        if (profile.id != id)
            throw UnreadableInput(Message{"{0}: /id is \"{1}\", not what the file is called.",
                                          {file.string(), profile.id}});
        return profile;
    }
    return std::nullopt;
}

Profile ProfileLibrary::profile(std::string_view id) const
{
    if (auto found = find(id))
        return std::move(*found);
    throw UnreadableInput(Message{"There is no rule profile \"{0}\"; there are: {1}.",
                                  {std::string(id), fmt::format("{}", fmt::join(ids(), ", "))}});
}

} // namespace lastrivet
