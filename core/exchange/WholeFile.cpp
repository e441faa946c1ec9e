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
        : m_folder(file.has_parent_path() ? file.parent_path() : fs::path("."))
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

    const fs::path &path() const { return m_path; }
    void become(const fs::path &file) const
    {
        evidence::settleFile(m_path);
        std::error_code failure;
        fs::rename(m_path, file, failure);
        if (failure)
            refuse(file, failure.value());
        try {
            evidence::settleFolder(m_folder);
        } catch (const evidence::FileFault &) {
            // It has its name, and is whole; after a power cut there may be the one before.
        }
    }

private:
    fs::path m_folder;
    fs::path m_path;
};

} // namespace

void makeWholeFile(const fs::path &file, const std::function<void(const fs::path &)> &make)
{
    const fs::path place = evidence::fileBehind(file);
    const Unfinished unfinished(place);
    make(unfinished.path());
    try {
        unfinished.become(place);
    } catch (const evidence::FileFault &) {
        refuse(place, 0);
    }
}

void writeWholeFile(const fs::path &file, const std::function<void(std::ostream &)> &write)
{
    makeWholeFile(file, [&](const fs::path &unfinished) {
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
        // Whatever was done after the stream had failed may have left something else there; of what
        // is usual, an open file fails for the lack of room alone.
        if (!out)
            refuse(file, error == ENOSPC || error == EDQUOT ? error : 0);
    });
}

} // namespace lastrivet::exchange
