// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"

class QString;

namespace lastrivet::ui {

/// The people whose names stand between commas; a name that is new becomes a helper's, in this
/// change.
IdSet<Person> peopleNamed(Edit &edit, const QString &names);

} // namespace lastrivet::ui
