// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/verify/Verification.h"

#include <filesystem>
#include <stop_token>
#include <string>
#include <vector>

namespace lastrivet {

/// What was mended, and how the project stands now.
struct Repair {
    /// A sentence each, also for what had to be left as it was.
    std::vector<Message> done;
    Verification after;
};

/// Who may write to the project while it is mended.
enum class Writer {
    Nobody,      ///< it is kept from others for the time
    ThisProgram, ///< which has it open on another thread, and goes on
};

/// Mends what can be made anew without a doubt: removes half-written temporary files, makes the
/// search index anew from the records and the small copies of photos from the photos. Records, the
/// journal, photos and documents stay as they are, whatever is wrong with them.
///
/// Throws `NotWritable` when the project cannot be written now, and the faults of `verify`.
Repair repair(const std::filesystem::path &folder, std::stop_token stop = {},
              Writer writer = Writer::Nobody);

} // namespace lastrivet
