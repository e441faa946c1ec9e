// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Minutes.h"

namespace lastrivet {

/// The longest stretch of work or flight that one record may tell: 10,000 hours. Our choice: a
/// whole earlier build, entered as one lump from a paper log, fits; a slip of the finger does not.
inline constexpr Minutes longestRecorded{10'000 * 60};

} // namespace lastrivet
