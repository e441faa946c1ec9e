// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/files/NewFile.h"

#include "core/base/WriteFailure.h"
#include "core/evidence/files/FileFault.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <stdio.h> // renameat2

#include <atomic>
#include <cerrno>
#include <system_error>

namespace lastrivet::evidence {

namespace {

namespace fs = std::filesystem;

std::string reason()
{
    return whyNotWritten(errno);
}

/// Has the process id in it, so that a sweep can tell leftovers from files being written.
std::string ownPrefix()
{
    return fmt::format("{}{}-", leftoverPrefix, ::getpid());
}

bool isLeftover(const fs::path &file)
{
    const std::string name = file.filename().string();
    return name.starts_with(leftoverPrefix) && !name.starts_with(ownPrefix());
}

} // namespace

std::string temporaryName()
{
    static std::atomic<unsigned> count{0};
    return ownPrefix() + fmt::format("{}", ++count);
}

NewFile::NewFile(fs::path folder, std::string forName)
    : m_folder(std::move(folder))
    , m_temporary(m_folder / temporaryName())
    , m_forName(std::move(forName))
    , m_file(::open(m_temporary.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0644))
{
    if (!m_file)
        throwNotSaved();
}

NewFile::~NewFile()
{
    if (!m_temporary.empty())
        ::unlink(m_temporary.c_str());
}

void NewFile::throwNotSaved() const
{
    throw DiskFault({"{0} could not be saved: {1}.", {m_forName, reason()}});
}

void NewFile::write(std::span<const std::uint8_t> bytes)
{
    while (!bytes.empty()) {
        const auto written = ::write(m_file.number(), bytes.data(), bytes.size());
        if (written < 0 && errno == EINTR)
            continue;
        if (written < 0)
            throwNotSaved();
        bytes = bytes.subspan(std::size_t(written));
    }
}

void NewFile::settle()
{
    if (::fdatasync(m_file.number()) != 0)
        throwNotSaved();
}

bool NewFile::publish(const std::string &name)
{
    const fs::path target = m_folder / name;
    int failed =
        ::renameat2(AT_FDCWD, m_temporary.c_str(), AT_FDCWD, target.c_str(), RENAME_NOREPLACE);
    // Some network and removable file systems do not know the flag.
    if (failed && (errno == EINVAL || errno == ENOSYS)) {
        if (fs::exists(fs::symlink_status(target)))
            return false;
        failed = ::rename(m_temporary.c_str(), target.c_str());
    }
    if (failed && errno == EEXIST)
        return false;
    if (failed)
        throwNotSaved();
    m_temporary.clear();
    return true;
}

void NewFile::publishOver(const std::string &name)
{
    if (::rename(m_temporary.c_str(), (m_folder / name).c_str()) != 0)
        throwNotSaved();
    m_temporary.clear();
}

void settleFile(const fs::path &file)
{
    const Descriptor opened(::open(file.c_str(), O_RDONLY | O_CLOEXEC));
    if (!opened || ::fsync(opened.number()) != 0)
        throw DiskFault({"{0} could not be saved: {1}.", {file.filename().string(), reason()}});
}

void settleFolder(const fs::path &folder)
{
    const Descriptor opened(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    // Some network file systems cannot flush folders, nor need to, and say so with EINVAL.
    if (!opened || (::fsync(opened.number()) != 0 && errno != EINVAL))
        throw DiskFault(
            {"The folder {0} could not be saved: {1}.", {folder.filename().string(), reason()}});
}

void makeFolder(const fs::path &root, const fs::path &relative)
{
    fs::path folder = root;
    for (const fs::path &part : relative) {
        const fs::path parent = folder;
        folder /= part;
        std::error_code error;
        if (fs::create_directory(folder, error))
            settleFolder(parent);
        if (error)
            throw DiskFault({"The folder {0} could not be made: {1}.",
                             {relative.string(), whyNotWritten(error.value())}});
    }
}

void sweepLeftovers(const fs::path &folder)
{
    std::error_code error;
    // A link may lead anywhere; what lies there is not ours to remove.
    if (fs::is_symlink(folder, error))
        return;
    for (fs::recursive_directory_iterator entry(folder, error), end; !error && entry != end;
         entry.increment(error)) {
        std::error_code ignored;
        if (isLeftover(entry->path()) &&
            entry->symlink_status(ignored).type() == fs::file_type::regular)
            fs::remove(entry->path(), ignored);
    }
}

} // namespace lastrivet::evidence
