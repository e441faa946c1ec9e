// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/storage/Opening.h"

#include <optional>
#include <string_view>

namespace lastrivet {

/// Why an opened project cannot be written; when another program has it, who and since when, in the
/// time of the IANA zone. Nothing when it can be written.
std::optional<Message> readOnlyReason(const storage::Opening &opening, std::string_view zone);

} // namespace lastrivet
