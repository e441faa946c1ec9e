// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/prints/PrintWish.h"

class QWidget;

namespace lastrivet::ui {

/// Asks for a file, then prints there on the person's usual paper, in his usual language.
void askToPrint(QWidget &asker, Session &session, PrintKind kind);

} // namespace lastrivet::ui
