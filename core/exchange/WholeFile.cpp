// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/WholeFile.h"

#include "core/base/Error.h"
#include "core/base/Tongue.h"
#include "core/base/WriteFailure.h"
#include "core/evidence/files/FileBehind.h"
#include "core/evidence/files/FileFault.h"
#include "core/evidence/files/NewFile.h"

#include <cerrno>
#include <fstream>
#include <memory>
#include <string_view>
#include <system_error>

namespace lastrivet::exchange {

namespace {

namespace fs = std::filesystem;

/// `error` is what the system said; 0 when it said nothing.
[[noreturn]] void refuse(const fs::path &file, int error)
{
    const std::string_view why = usualWriteFailure(error);
    if (why.empty())
        throw NotSaved(
            Message{"{0} cannot be written; nothing was changed there.", {file.string()}});
    throw NotSaved(Message{"{0} cannot be written: {1}; nothing was changed there.",
                           {file.string(), nested({why, {}})}});
}

/// Removed again unless it has become the file that was asked for.
class Unfinished {
public:
    explicit Unfinished(const fs::path &file)
        : m_place(evidence::fileBehind(file))
        , m_folder(m_place.has_parent_path() ? m_place.parent_path() : fs::path("."))
        , m_path(m_folder / evidence::temporaryName())
    {
    }
    ~Unfinished()
    {
        std::error_code ignored;
        fs::remove(m_path, ignored);
    }
    Unfinished(const Unfinished &) = delete;
    Unfinished &operator=(const Unfinished &) = delete;

    const fs::path &place() const { return m_place; }
    const fs::path &path() const { return m_path; }
    void settle() const
    {
        try {
            evidence::settleFile(m_path);
        } catch (const evidence::FileFault &) {
            refuse(m_place, 0);
        }
    }
    void takePlace() const
    {
        std::error_code failure;
        fs::rename(m_path, m_place, failure);
        if (failure)
            refuse(m_place, failure.value());
    }
    void settleFolder() const
    {
        try {
            evidence::settleFolder(m_folder);
        } catch (const evidence::FileFault &) {
            // It has its name, and is whole; after a power cut there may be the one before.
        }
    }

private:
    fs::path m_place;
    fs::path m_folder;
    fs::path m_path;
};

/// Faults name `file`.
void writeTo(const fs::path &unfinished, const fs::path &file, const WriteTo &write)
{
    // Streams leave there what the system said.
    errno = 0;
    std::ofstream out(unfinished, std::ios::binary | std::ios::trunc);
    if (!out)
        refuse(file, errno);
    write(out);
    out.flush();
    int error = out ? 0 : errno;
    out.close();
    if (error == 0)
        error = errno;
    // Whatever was done after the stream had failed may have left something else there; of what is
    // usual, an open file fails for the lack of room alone.
    if (!out)
        refuse(file, error == ENOSPC || error == EDQUOT ? error : 0);
}

} // namespace

void makeWholeFile(const fs::path &file, const std::function<void(const fs::path &)> &make)
{
    const Unfinished unfinished(file);
    make(unfinished.path());
    unfinished.settle();
    unfinished.takePlace();
    unfinished.settleFolder();
}

void writeWholeFile(const fs::path &file, const WriteTo &write)
{
    makeWholeFile(file, [&](const fs::path &unfinished) { writeTo(unfinished, file, write); });
}

void writeWholeFiles(const std::vector<FileToWrite> &files)
{
    std::vector<std::unique_ptr<const Unfinished>> written;
    for (const FileToWrite &each : files) {
        written.push_back(std::make_unique<const Unfinished>(each.file));
        // Nothing else that is there already keeps a file from its place.
        std::error_code none;
        if (fs::is_directory(written.back()->place(), none))
            refuse(each.file, EISDIR);
        writeTo(written.back()->path(), each.file, each.write);
        written.back()->settle();
    }
    for (const auto &each : written)
        each->takePlace();
    for (const auto &each : written)
        each->settleFolder();
}

} // namespace lastrivet::exchange
