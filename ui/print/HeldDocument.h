// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <functional>

namespace lastrivet::print {

/// A document that is made whole beside its place, and appears there only when it is published:
/// so its row in the journal can be written in between, when the paper can no longer fail for want
/// of room.
class HeldDocument {
public:
    /// `place`: of a file, of the link to one, or of a folder. Throws `NotSaved` for what no file
    /// may take the place of.
    explicit HeldDocument(const std::filesystem::path &place);
    /// Removes it unless it is published.
    ~HeldDocument();
    HeldDocument(const HeldDocument &) = delete;
    HeldDocument &operator=(const HeldDocument &) = delete;

    /// Where it is to be made.
    const std::filesystem::path &path() const { return m_held; }
    /// Runs what makes it. A `NotSaved` that names `path` names the place instead.
    void make(const std::function<void()> &body) const;
    /// Gives it its name, in place of an older file there. Throws `NotSaved`, and then leaves it
    /// where it was made, as the sentence says.
    void publish();

private:
    std::filesystem::path m_place;
    std::filesystem::path m_held;
};

} // namespace lastrivet::print
