// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

#include <cstdint>
#include <set>
#include <string>
#include <unordered_map>

namespace lastrivet::merge {

/// Finds photographs by the sum and by the name of their file while the records change.
///
/// It knows what photographs ever had since they were noted, and looks at the records for what they
/// have now: a record that changed is noted again, one that went need not be taken out.
class PhotoIndex {
public:
    void note(const Media &media);

    /// The first by id of those that count and have this sum, but not the one with the id `except`.
    /// Who takes a picture in that was withdrawn means to have it again.
    const Media *withSum(const Records &records, const std::string &sum, std::int64_t except) const;
    /// The first by id of those whose file has this name.
    const Media *withFile(const Records &records, const std::string &file) const;

private:
    using Ids = std::unordered_map<std::string, std::set<std::int64_t>>;

    Ids m_bySum;
    Ids m_byFile;
};

} // namespace lastrivet::merge
