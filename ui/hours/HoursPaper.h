// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/hours/HoursView.h"

namespace lastrivet::ui {

/// Prints a view that is there, in the language and on the paper that the person chose.
void printHours(Session &session, HoursView view, const HoursAnswer &answer, const QString &file);
/// Writes its figures as CSV, or says in one sentence why not.
void exportHours(Session &session, HoursView view, const HoursAnswer &answer, const QString &file);

} // namespace lastrivet::ui
