// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/records/Fastener.h"

#include <optional>
#include <string_view>

namespace lastrivet::fasteners {

/// Takes how many there are and where from the first part of a typed line: "12 x rear spar hinge",
/// "12 pcs hinge", "1 000 bolts", "12 Schlossschrauben", "hinge". A number in front of something
/// else, and one behind as in "hinge x 4", may be part of the place, and is asked about; the count
/// is one where there is none.
std::optional<Message> takePlace(Fastener &fastener, std::string_view words);

} // namespace lastrivet::fasteners
