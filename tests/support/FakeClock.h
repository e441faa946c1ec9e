// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Clock.h"

namespace lastrivet::test {

/// A clock that stands still until it is told otherwise.
class FakeClock final : public Clock {
public:
    std::chrono::sys_time<std::chrono::milliseconds> now() const override { return m_now; }
    void set(std::chrono::sys_time<std::chrono::milliseconds> now) { m_now = now; }
    void advance(std::chrono::milliseconds by) { m_now += by; }

private:
    std::chrono::sys_time<std::chrono::milliseconds> m_now =
        std::chrono::sys_days{std::chrono::year{2026} / 3 / 14} + std::chrono::hours{9};
};

} // namespace lastrivet::test
