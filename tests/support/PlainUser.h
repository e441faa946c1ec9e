// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <sys/types.h>
#include <unistd.h>

#include <catch2/catch.hpp>

namespace lastrivet::test {

/// While it lives, this program is not the superuser, to whom permissions mean nothing.
class PlainUser {
public:
    PlainUser()
    {
        if (m_user == 0)
            REQUIRE(::seteuid(65534) == 0);
    }
    ~PlainUser()
    {
        if (m_user == 0)
            (void)::seteuid(0);
    }
    PlainUser(const PlainUser &) = delete;
    PlainUser &operator=(const PlainUser &) = delete;

private:
    ::uid_t m_user = ::geteuid();
};

} // namespace lastrivet::test
