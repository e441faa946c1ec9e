// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/NewFile.h"

#include "core/base/Error.h"
#include "core/base/WriteFailure.h"
#include "core/evidence/files/FileBehind.h"
#include "core/evidence/files/SummedFolder.h"

#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <fcntl.h>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>
#include <utility>

namespace lastrivet::print {

namespace {

std::filesystem::path folderOf(const std::filesystem::path &place)
{
    const std::filesystem::path folder = place.parent_path();
    return folder.empty() ? std::filesystem::path(".") : folder;
}

} // namespace

NewFile::NewFile(const std::filesystem::path &place)
    : m_place(evidence::fileBehind(place))
    , m_temporary((folderOf(m_place) / ".tmp-print-XXXXXX").string())
{
    std::error_code none;
    if (std::filesystem::is_directory(m_place, none))
        fail(EISDIR);
    m_descriptor = mkostemp(m_temporary.data(), O_CLOEXEC);
    if (m_descriptor < 0)
        fail(errno);
}

NewFile::~NewFile()
{
    if (m_descriptor < 0)
        return;
    close(m_descriptor);
    unlink(m_temporary.c_str());
}

void NewFile::write(const unsigned char *bytes, std::size_t count)
{
    while (count > 0) {
        const ssize_t written = ::write(m_descriptor, bytes, count);
        if (written < 0 && errno == EINTR)
            continue;
        if (written < 0)
            fail(errno);
        bytes += written;
        count -= std::size_t(written);
    }
}

void NewFile::overwrite(std::uint64_t offset, std::string_view text)
{
    while (!text.empty()) {
        const ssize_t written = pwrite(m_descriptor, text.data(), text.size(), off_t(offset));
        if (written < 0 && errno == EINTR)
            continue;
        if (written < 0)
            fail(errno);
        offset += std::uint64_t(written);
        text.remove_prefix(std::size_t(written));
    }
}

void NewFile::finish()
{
    // Temporary files are for their owner alone; a finished document follows the person's habit.
    const mode_t habit = umask(0);
    umask(habit);
    if (fchmod(m_descriptor, 0666 & ~habit) != 0 || fsync(m_descriptor) != 0 ||
        std::rename(m_temporary.c_str(), m_place.c_str()) != 0)
        fail(errno);
    close(std::exchange(m_descriptor, -1));
    const int folder = open(folderOf(m_place).c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (folder < 0)
        return;
    fsync(folder);
    close(folder);
}

void requireRoomFor(const std::filesystem::path &place)
{
    const NewFile tried(place);
}

void requireRoomForFolder(const std::filesystem::path &place)
{
    const evidence::SummedFolder tried(place);
}

void NewFile::fail(int error) const
{
    throw NotSaved(Message{"{0} was not written: {1}. Nothing was left behind.",
                           {m_place.string(), whyNotWritten(error)}});
}

} // namespace lastrivet::print
