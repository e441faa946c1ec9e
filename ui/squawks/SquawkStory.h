// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

#include <QString>

namespace lastrivet::ui {

/// What happened to a squawk so far, a line each, and whose turn it is.
QString squawkStory(const Records &records, const Squawk &squawk);

} // namespace lastrivet::ui
