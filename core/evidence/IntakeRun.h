// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/evidence/Intake.h"

#include <cstdint>
#include <functional>
#include <stop_token>
#include <vector>

namespace lastrivet::evidence {

/// The most rows that one change takes in.
inline constexpr std::size_t largestBatch = 50;

/// How far a run has come.
struct IntakeProgress {
    std::size_t files_done = 0;
    std::size_t files_in_all = 0;
    std::uintmax_t bytes_done = 0;
    std::uintmax_t bytes_in_all = 0;
};

/// Whom a run tells.
struct IntakeListener {
    /// After each file, on a worker thread, one call at a time.
    std::function<void(const IntakeProgress &)> progress;
    /// At most `largestBatch` files in the order given, on the thread of `prepareAll`; pass it to
    /// `store` on the project's thread, or to `discard`.
    std::function<void(Batch)> deliver;
};

/// Prepares all files with `workers` threads (0: on the calling thread). After a stop no further
/// file is begun, and those that are whole are still delivered.
void prepareAll(Intake &intake, const std::vector<IncomingFile> &files, unsigned workers,
                const IntakeListener &listener, std::stop_token stop = {});

} // namespace lastrivet::evidence
