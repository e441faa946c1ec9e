// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <future>
#include <utility>

namespace lastrivet {

/// Runs both at the same time, `beside` on a thread of its own, and returns when both are done.
/// Neither may write what the other reads or writes. An exception of either one is thrown here.
template <class Beside, class Here> void inParallel(Beside &&beside, Here &&here)
{
    // Where the system gives no further thread, `get` runs it here, afterwards.
    auto other = std::async(std::launch::async | std::launch::deferred, std::ref(beside));
    here();
    other.get();
}

} // namespace lastrivet
