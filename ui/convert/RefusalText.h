// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace lastrivet {
class Fault;
struct Refusal;
} // namespace lastrivet

namespace lastrivet::ui {

/// Why a change was not made, in the language of the screen, one sentence per reason.
QString inWords(const Refusal &refusal);

/// That nothing was changed, and why; it is said once where the fault says so, too.
QString nothingChanged(const Refusal &refusal);
QString nothingChanged(const Fault &fault);

} // namespace lastrivet::ui
