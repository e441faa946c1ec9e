// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <cstdint>
#include <ctime>
#include <filesystem>
#include <functional>
#include <memory>
#include <string>

struct zip;
struct zip_source;

namespace lastrivet::exchange {

/// A ZIP archive that is being written, in a temporary file until it is whole. Names are UTF-8.
/// Throws `NotSaved`.
class ZipFile {
public:
    /// Done so far, from 0 to 1; false ends the writing.
    using OnProgress = std::function<bool(double)>;

    /// `place` is where it is written; faults speak of `named`, the file that it will become. Texts
    /// in it are dated `made`, so that the same content and time give the same bytes.
    ZipFile(const std::filesystem::path &place, std::filesystem::path named,
            std::chrono::sys_time<std::chrono::milliseconds> made);

    /// `text` must live until the archive is finished.
    void addText(const std::string &name, const std::string &text);
    /// Stored as it is: pictures are compressed already. The file is read when the archive is
    /// finished.
    void addFile(const std::string &name, const std::filesystem::path &file);
    /// Writes all of it; false when `onProgress` ended it.
    bool finish(const OnProgress &onProgress);

private:
    struct Discard {
        void operator()(zip *archive) const;
    };

    std::uint64_t add(const std::string &name, zip_source *source, int method);
    [[noreturn]] void fail(const std::string &why) const;

    std::filesystem::path m_named;
    std::time_t m_made;
    std::unique_ptr<zip, Discard> m_zip;
};

} // namespace lastrivet::exchange
