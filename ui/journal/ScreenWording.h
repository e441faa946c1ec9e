// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/Wording.h"

namespace lastrivet::ui {

/// The words of papers in the language of the screen, for what both say alike; dates are those of
/// the screen.
print::Wording screenWording();

} // namespace lastrivet::ui
