// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/journal/ScreenWording.h"

#include "ui/convert/QtText.h"
#include "ui/print/Language.h"

namespace lastrivet::ui {

print::Wording screenWording()
{
    print::Wording words = print::wordingIn(print::languageFor(QLocale().language()));
    words.setDates([](Moment moment) { return dateText(moment); });
    return words;
}

} // namespace lastrivet::ui
