// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <functional>
#include <stop_token>

namespace lastrivet::evidence {

/// Calls `body` with 0 to count - 1, on `workers` threads (0: on the calling thread), and returns
/// when all calls have. After a stop no further call is begun. `body` does not throw.
void forEachIndex(std::size_t count, unsigned workers, const std::function<void(std::size_t)> &body,
                  const std::stop_token &stop);

} // namespace lastrivet::evidence
