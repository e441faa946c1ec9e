// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/IntakeRun.h"

#include "core/evidence/Workers.h"

#include <algorithm>
#include <mutex>
#include <optional>
#include <system_error>

namespace lastrivet::evidence {

namespace {

std::uintmax_t sizeOf(const IncomingFile &file)
{
    std::error_code error;
    const auto size = std::filesystem::file_size(file.path, error);
    return error ? 0 : size;
}

/// Counts finished files and tells the listener.
class Count {
public:
    Count(const std::vector<IncomingFile> &files, const IntakeListener &listener)
        : m_listener(listener)
    {
        m_progress.files_in_all = files.size();
        for (const IncomingFile &file : files)
            m_progress.bytes_in_all += sizeOf(file);
    }

    void add(const IncomingFile &file)
    {
        const std::scoped_lock lock(m_mutex);
        ++m_progress.files_done;
        m_progress.bytes_done += sizeOf(file);
        if (m_listener.progress)
            m_listener.progress(m_progress);
    }

private:
    std::mutex m_mutex;
    IntakeProgress m_progress;
    const IntakeListener &m_listener;
};

} // namespace

void prepareAll(Intake &intake, const std::vector<IncomingFile> &files, unsigned workers,
                const IntakeListener &listener, std::stop_token stop)
{
    Count count(files, listener);
    for (std::size_t first = 0; first < files.size(); first += largestBatch) {
        std::vector<std::optional<PreparedFile>> prepared(
            std::min(largestBatch, files.size() - first));
        forEachIndex(
            prepared.size(), workers,
            [&](std::size_t i) {
                prepared[i] = intake.prepare(files[first + i], stop);
                count.add(files[first + i]);
            },
            stop);
        Batch batch;
        for (auto &file : prepared) {
            if (file)
                batch.push_back(std::move(*file));
        }
        if (!batch.empty() && listener.deliver)
            listener.deliver(std::move(batch));
    }
}

} // namespace lastrivet::evidence
