// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <cstdint>
#include <filesystem>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace lastrivet::evidence {

/// A file as a look into a folder finds it.
struct SeenFile {
    std::filesystem::path path;
    std::uintmax_t bytes = 0;
    std::filesystem::file_time_type changed;
    /// No file but a folder that may not be read: nobody knows what is in it.
    bool is_closed_folder = false;
};

/// The files in a folder and its folders, six deep at most, without hidden ones; links to folders
/// are not followed. Of a folder in it that may not be read there is only the folder; empty when
/// the folder is not there, or when reading it breaks off.
std::vector<SeenFile> filesIn(const std::filesystem::path &folder);

/// Tells which files of a folder are new and have arrived whole: a file counts as whole when two
/// looks that lie the settling time apart find it the same.
///
/// Which files were dealt with is remembered by a mark per file, made of its name, size and time.
class ArrivingFiles {
public:
    using Clock = std::chrono::steady_clock;

    ArrivingFiles(std::filesystem::path folder, Clock::duration settling);

    /// The new files that are whole by now.
    std::vector<std::filesystem::path> look(const std::vector<SeenFile> &seen,
                                            Clock::time_point now);
    /// True while files are there that may still be written.
    bool isWaiting() const { return !m_waiting.empty(); }
    /// These need not be looked at again unless they change.
    void settleWith(const std::vector<SeenFile> &files);

    /// The marks as a text to keep, 16 hex digits each; those of files that the last look did not
    /// find are left out, unless they may lie in a folder that it could not read.
    std::string marks() const;
    void readMarks(const std::string &text);

private:
    struct Waiting {
        SeenFile file;
        Clock::time_point since;
    };

    std::uint64_t markOf(const SeenFile &file) const;

    std::filesystem::path m_folder;
    Clock::duration m_settling;
    std::map<std::filesystem::path, Waiting> m_waiting;
    std::set<std::uint64_t> m_done;
    std::set<std::uint64_t> m_present;
    bool m_sawAll = true;
};

} // namespace lastrivet::evidence
