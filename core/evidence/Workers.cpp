// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/Workers.h"

#include <algorithm>
#include <atomic>
#include <thread>
#include <vector>

namespace lastrivet::evidence {

void forEachIndex(std::size_t count, unsigned workers, const std::function<void(std::size_t)> &body,
                  const std::stop_token &stop)
{
    std::atomic<std::size_t> next{0};
    const auto work = [&] {
        for (std::size_t i = next++; i < count && !stop.stop_requested(); i = next++)
            body(i);
    };
    if (workers == 0) {
        work();
        return;
    }
    std::vector<std::jthread> threads;
    for (std::size_t i = 0; i < std::min<std::size_t>(workers, count); ++i)
        threads.emplace_back(work);
}

} // namespace lastrivet::evidence
