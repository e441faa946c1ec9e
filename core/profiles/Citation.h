// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"

#include <string>

namespace lastrivet {

/// What `Profile::citation` gave, or a builder wrote as a source, as a message: what stands in
/// brackets at its end for how far the document was seen has words in every language.
Message citationMessage(const std::string &citation);

} // namespace lastrivet
