// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/profiles/Profile.h"

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lastrivet {

/// The profiles that lie as `ID.json` in some folders; of one id in several, the first folder's
/// counts.
class ProfileLibrary {
public:
    explicit ProfileLibrary(std::vector<std::filesystem::path> folders);
    /// The profiles that come with the program: beside its source while it is being developed, else
    /// where it was installed.
    static ProfileLibrary shipped();
    /// Those, and the person's own.
    static ProfileLibrary standard();
    /// Where the person's own profiles lie: below the folder for data of the XDG Base Directory
    /// Specification. Empty where there is no home.
    static std::filesystem::path ownFolder();

    /// Every id there is, in alphabetical order.
    std::vector<std::string> ids() const;
    /// Empty when no folder has it. Throws `UnreadableInput` when its file cannot be read, is no
    /// profile, or is that of another id.
    std::optional<Profile> find(std::string_view id) const;
    /// The profile. Throws `UnreadableInput` also when there is none, and says which there are.
    Profile profile(std::string_view id) const;

private:
    std::vector<std::filesystem::path> m_folders;
};

/// Reads a profile from a file. Throws `UnreadableInput`, with one sentence that names the file.
Profile readProfileFile(const std::filesystem::path &file);

} // namespace lastrivet
