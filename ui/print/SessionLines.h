// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/WorkLog.h"

#include <QStringList>

namespace lastrivet::print {

class Wording;

/// What was worked at: the step, the squawk and the note of a session, a line each.
QStringList workOf(const Wording &words, const packet::WorkLog::Session &session);
/// Who worked, a line each, with the time of those who worked another one, and who was paid.
QString workersOf(const Wording &words, const packet::WorkLog::Session &session);

} // namespace lastrivet::print
