// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/credit/Credit.h"

#include <string>
#include <vector>

namespace lastrivet::credit {

/// How the account stands by the country's way of counting, what the other way says where there is
/// one, and who decides.
std::vector<Message> verdict(const Account &account);
/// "14½": ticks of a column.
std::string ticksText(std::int64_t halfTicks);

} // namespace lastrivet::credit
