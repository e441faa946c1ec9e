// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>

namespace lastrivet::workshop {

/// A length in inches as the trade writes it: "1/8", "1-1/4", "3/32", ".064", "0.5", "2". Nothing
/// for what is no length, for one below zero, and for one of more than 1,000.
std::optional<double> inches(std::string_view text);

} // namespace lastrivet::workshop
