// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <future>
#include <utility>

namespace lastrivet {

/// Does both at the same time, `beside` on a thread of its own, and returns when both are done.
/// They must not write what the other touches. What one of them throws is thrown here.
template <class Beside, class Here> void atOnce(Beside &&beside, Here &&here)
{
    // Where no thread is to be had, it is done here, afterwards.
    auto other = std::async(std::launch::async | std::launch::deferred, std::ref(beside));
    here();
    other.get();
}

} // namespace lastrivet
