// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/credit/Credit.h"

#include <iosfwd>

namespace lastrivet::answers {

/// The major-portion account as one JSON object and a line end.
void writeJson(const credit::Account &account, std::ostream &out);

} // namespace lastrivet::answers
