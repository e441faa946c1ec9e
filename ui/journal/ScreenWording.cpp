// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/journal/ScreenWording.h"

#include "ui/print/Language.h"

namespace lastrivet::ui {

print::Wording screenWording()
{
    return print::wordingIn(print::languageFor(QLocale().language()));
}

} // namespace lastrivet::ui
