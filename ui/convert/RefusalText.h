// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace lastrivet {
struct Refusal;
}

namespace lastrivet::ui {

/// Why a change was not made, in the language of the screen, one sentence per reason.
QString inWords(const Refusal &refusal);

} // namespace lastrivet::ui
