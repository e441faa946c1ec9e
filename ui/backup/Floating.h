// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QWidget;

namespace lastrivet::ui {

class ActForm;

/// Shows a form over the window that it belongs to, with the keyboard at `first`; when it is left,
/// the keyboard goes back to where it was.
void floatOver(ActForm &form, QWidget &first);
/// Puts it into the middle of the window, not wider than that.
void placeOver(ActForm &form);
/// Makes it as high as what it says needs, after other words came.
void fitHeight(ActForm &form);

} // namespace lastrivet::ui
