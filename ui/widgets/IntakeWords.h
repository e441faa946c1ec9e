// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>

namespace lastrivet::ui {

/// How the journal names a change that took in so many files, in the language of the screen; none
/// when all were there already.
std::string intakeLabel(std::size_t files, bool onlyPhotos);

} // namespace lastrivet::ui
