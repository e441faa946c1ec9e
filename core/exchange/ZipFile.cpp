// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/ZipFile.h"

#include "core/base/Error.h"
#include "core/base/Tongue.h"
#include "core/base/WriteFailure.h"

#include <zip.h>

#include <cerrno>

namespace lastrivet::exchange {

namespace {

constexpr double precision = 0.001;

using OnProgress = ZipFile::OnProgress;

/// What libzip is told about progress, and asks about going on.
struct Follower {
    const OnProgress &onProgress;
    bool goesOn = true;
};

void follow(zip_t *, double done, void *follower)
{
    auto &following = *static_cast<Follower *>(follower);
    if (following.onProgress && following.goesOn)
        following.goesOn = following.onProgress(done);
}

int isOver(zip_t *, void *follower)
{
    return static_cast<Follower *>(follower)->goesOn ? 0 : 1;
}

} // namespace

void ZipFile::Discard::operator()(zip *archive) const
{
    zip_discard(archive);
}

ZipFile::ZipFile(const std::filesystem::path &place, std::filesystem::path named,
                 std::chrono::sys_time<std::chrono::milliseconds> made)
    : m_named(std::move(named))
    , m_made(std::chrono::system_clock::to_time_t(made))
{
    int error = 0;
    m_zip.reset(zip_open(place.c_str(), ZIP_CREATE | ZIP_TRUNCATE, &error));
    if (m_zip)
        return;
    zip_error_t reason;
    zip_error_init_with_code(&reason, error);
    const std::string text = zip_error_strerror(&reason);
    zip_error_fini(&reason);
    fail(text);
}

void ZipFile::addText(const std::string &name, const std::string &text)
{
    const auto index =
        add(name, zip_source_buffer(m_zip.get(), text.data(), text.size(), 0), ZIP_CM_DEFLATE);
    zip_file_set_mtime(m_zip.get(), index, m_made, 0);
}

void ZipFile::addFile(const std::string &name, const std::filesystem::path &file)
{
    add(name, zip_source_file(m_zip.get(), file.c_str(), 0, -1), ZIP_CM_STORE);
}

bool ZipFile::finish(const OnProgress &onProgress)
{
    Follower follower{onProgress};
    zip_register_progress_callback_with_state(m_zip.get(), precision, follow, nullptr, &follower);
    zip_register_cancel_callback_with_state(m_zip.get(), isOver, nullptr, &follower);
    if (zip_close(m_zip.get()) != 0) {
        if (!follower.goesOn)
            return false;
        // Other words of the system may be about a file that is read.
        const int error = zip_error_code_system(zip_get_error(m_zip.get()));
        const bool isFull = error == ENOSPC || error == EDQUOT;
        fail(isFull ? nested({usualWriteFailure(error), {}}) : zip_strerror(m_zip.get()));
    }
    m_zip.release();
    return true;
}

std::uint64_t ZipFile::add(const std::string &name, zip_source_t *source, int method)
{
    const auto index =
        source ? zip_file_add(m_zip.get(), name.c_str(), source, ZIP_FL_ENC_UTF_8) : -1;
    if (index < 0) {
        zip_source_free(source);
        fail(zip_strerror(m_zip.get()));
    }
    zip_set_file_compression(m_zip.get(), zip_uint64_t(index), method, 0);
    return std::uint64_t(index);
}

void ZipFile::fail(const std::string &why) const
{
    throw NotSaved(Message{"{0} could not be written: {1}.", {m_named.string(), why}});
}

} // namespace lastrivet::exchange
