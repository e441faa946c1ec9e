// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/ArrivingFiles.h"

#include "core/base/Sha256.h"

#include <fmt/format.h>

#include <fcntl.h>
#include <unistd.h>

#include <charconv>
#include <system_error>
#include <utility>

namespace lastrivet::evidence {

namespace fs = std::filesystem;

namespace {

constexpr int deepest = 6;
constexpr std::size_t markDigits = 16;

bool isHidden(const fs::path &path)
{
    return path.filename().native().starts_with('.');
}

/// A folder, no link to one, that cannot be looked through.
bool isClosedFolder(const fs::directory_entry &entry)
{
    std::error_code unknown;
    return entry.symlink_status(unknown).type() == fs::file_type::directory &&
           ::faccessat(AT_FDCWD, entry.path().c_str(), R_OK | X_OK, AT_EACCESS) != 0;
}

bool isSame(const SeenFile &a, const SeenFile &b)
{
    return a.bytes == b.bytes && a.changed == b.changed;
}

} // namespace

std::vector<SeenFile> filesIn(const fs::path &folder)
{
    std::vector<SeenFile> files;
    std::error_code error;
    fs::recursive_directory_iterator place(folder, fs::directory_options::skip_permission_denied,
                                           error);
    for (; !error && place != fs::recursive_directory_iterator(); place.increment(error)) {
        std::error_code unknown;
        if (isHidden(place->path()) || place.depth() >= deepest) {
            place.disable_recursion_pending();
            continue;
        }
        if (isClosedFolder(*place)) {
            place.disable_recursion_pending();
            files.push_back({place->path(), 0, {}, true});
            continue;
        }
        if (!place->is_regular_file(unknown) || unknown)
            continue;
        SeenFile file{place->path(), place->file_size(unknown), {}};
        if (!unknown)
            file.changed = place->last_write_time(unknown);
        if (!unknown)
            files.push_back(std::move(file));
    }
    // Half a list would make the rest look as if it were gone.
    return error ? std::vector<SeenFile>{} : files;
}

ArrivingFiles::ArrivingFiles(fs::path folder, Clock::duration settling)
    : m_folder(std::move(folder))
    , m_settling(settling)
{
}

std::uint64_t ArrivingFiles::markOf(const SeenFile &file) const
{
    const std::string name = file.path.lexically_relative(m_folder).generic_string();
    const std::string text =
        fmt::format("{}\n{}\n{}", name, file.bytes, file.changed.time_since_epoch().count());
    const std::string digits =
        sha256({reinterpret_cast<const std::uint8_t *>(text.data()), text.size()})
            .substr(0, markDigits);
    std::uint64_t mark = 0;
    std::from_chars(digits.data(), digits.data() + digits.size(), mark, 16);
    return mark;
}

std::vector<fs::path> ArrivingFiles::look(const std::vector<SeenFile> &seen, Clock::time_point now)
{
    std::vector<fs::path> whole;
    std::map<fs::path, Waiting> waiting;
    m_present.clear();
    m_sawAll = true;
    for (const SeenFile &file : seen) {
        if (file.is_closed_folder) {
            m_sawAll = false;
            continue;
        }
        const std::uint64_t mark = markOf(file);
        m_present.insert(mark);
        if (m_done.contains(mark))
            continue;
        const auto before = m_waiting.find(file.path);
        const bool isKnown = before != m_waiting.end() && isSame(before->second.file, file);
        const Clock::time_point since = isKnown ? before->second.since : now;
        if (isKnown && now - since >= m_settling && file.bytes > 0)
            whole.push_back(file.path);
        waiting.emplace(file.path, Waiting{file, since});
    }
    m_waiting = std::move(waiting);
    return whole;
}

void ArrivingFiles::settleWith(const std::vector<SeenFile> &files)
{
    for (const SeenFile &file : files) {
        if (file.is_closed_folder)
            continue;
        m_done.insert(markOf(file));
        const auto waiting = m_waiting.find(file.path);
        if (waiting != m_waiting.end() && isSame(waiting->second.file, file))
            m_waiting.erase(waiting);
    }
}

std::string ArrivingFiles::marks() const
{
    std::string text;
    for (const std::uint64_t mark : m_done) {
        if (!m_sawAll || m_present.empty() || m_present.contains(mark))
            text += fmt::format("{:016x}", mark);
    }
    return text;
}

void ArrivingFiles::readMarks(const std::string &text)
{
    for (std::size_t i = 0; i + markDigits <= text.size(); i += markDigits) {
        std::uint64_t mark = 0;
        std::from_chars(text.data() + i, text.data() + i + markDigits, mark, 16);
        m_done.insert(mark);
    }
}

} // namespace lastrivet::evidence
