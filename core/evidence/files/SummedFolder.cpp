// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/files/SummedFolder.h"

#include "core/base/Error.h"
#include "core/base/Tongue.h"
#include "core/base/WriteFailure.h"
#include "core/evidence/files/FileFault.h"
#include "core/evidence/files/FileSum.h"
#include "core/evidence/files/NewFile.h"

#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <system_error>

namespace lastrivet::evidence {

namespace {

namespace fs = std::filesystem;

fs::path parentOf(const fs::path &place)
{
    const fs::path folder = place.parent_path();
    return folder.empty() ? fs::path(".") : folder;
}

} // namespace

SummedFolder::SummedFolder(fs::path place)
    : m_place(place.has_filename() ? std::move(place) : place.parent_path())
{
    std::error_code none;
    if (fs::exists(fs::symlink_status(m_place, none)) && !fs::is_empty(m_place, none))
        fail(nested({"something is there already", {}}));
    std::string pattern = (parentOf(m_place) / (std::string(leftoverPrefix) + "XXXXXX")).string();
    if (!::mkdtemp(pattern.data()))
        fail(whyNotWritten(errno));
    m_filling = pattern;
}

SummedFolder::~SummedFolder()
{
    std::error_code none;
    if (!m_filling.empty())
        fs::remove_all(m_filling, none);
}

void SummedFolder::fail(const std::string &why) const
{
    throw NotSaved(Message{"The folder {0} was not written: {1}. Nothing was left behind.",
                           {m_place.string(), why}});
}

/// Turns what goes wrong with one file into a fault that names the whole folder.
template <class Body> auto SummedFolder::told(Body &&body) const
{
    try {
        return body();
    } catch (const FileFault &fault) {
        throw NotSaved(Message{"The folder {0} was not written: {1} Nothing was left behind.",
                               {m_place.string(), nested(fault.message())}});
    }
}

void SummedFolder::write(const std::string &name, const std::string &text) const
{
    NewFile file(m_filling, name);
    file.write({reinterpret_cast<const std::uint8_t *>(text.data()), text.size()});
    file.settle();
    file.publishOver(name);
}

void SummedFolder::addLine(const std::string &sum, const std::string &name)
{
    m_lines += sumLine(sum, name);
}

void SummedFolder::addBy(const std::string &name, const Write &write)
{
    try {
        write(m_filling / name);
    } catch (const NotSaved &fault) {
        // Names the place that the person chose, not the temporary folder.
        Message named = fault.message();
        for (std::string &argument : named.arguments) {
            if (argument.starts_with(m_filling.string()))
                argument.replace(0, m_filling.string().size(), m_place.string());
        }
        throw NotSaved(std::move(named));
    }
    addLine(told([&] { return sumOf(SourceFile(m_filling / name)); }), name);
}

std::string SummedFolder::add(const fs::path &source, const std::string &name)
{
    const std::string sum = told([&] {
        const fs::path inside = fs::path(name).parent_path();
        makeFolder(m_filling, inside);
        NewFile copy(m_filling / inside, name);
        std::string read = sumOf(SourceFile(source), [&](auto bytes) { copy.write(bytes); });
        copy.settle();
        copy.publishOver(fs::path(name).filename().string());
        return read;
    });
    addLine(sum, name);
    return sum;
}

void SummedFolder::finish()
{
    told([&] {
        write("SHA256SUMS", m_lines);
        settleFolder(m_filling);
        return 0;
    });
    std::error_code error;
    // While it was being filled only this user could enter it; from now on everybody may read it.
    fs::permissions(m_filling,
                    fs::perms::owner_all | fs::perms::group_read | fs::perms::group_exec |
                        fs::perms::others_read | fs::perms::others_exec,
                    error);
    if (std::rename(m_filling.c_str(), m_place.c_str()) != 0)
        fail(whyNotWritten(errno));
    told([&] {
        try {
            settleFolder(parentOf(m_place));
        } catch (const FileFault &) {
            // Renamed back, so that the destructor removes it, as the fault will say.
            if (std::rename(m_place.c_str(), m_filling.c_str()) != 0)
                m_filling = m_place;
            throw;
        }
        return 0;
    });
    m_filling.clear();
}

} // namespace lastrivet::evidence
