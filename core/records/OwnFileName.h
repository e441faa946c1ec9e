// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Media.h"

#include <cstdint>
#include <string>

namespace lastrivet {

/// Where a merge puts the file of a photograph whose name another has: "photos/a_4f2a91.jpg" with
/// twelve digits of the sum instead of six; of one without sum with its id, which is no other's
/// either. Of such a name the same name again.
std::string ownFileName(const std::string &file, const std::string &sum, std::int64_t id);
std::string ownFileName(const Media &media);

} // namespace lastrivet
