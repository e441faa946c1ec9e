// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/journal/HistoryButton.h"

#include "ui/journal/JournalCall.h"

namespace lastrivet::ui {

HistoryButton::HistoryButton(Shown shown, QWidget *parent)
    : QPushButton(tr("History"), parent)
{
    setToolTip(tr("Who changed what about it, and when"));
    setProperty("flat", true);
    connect(this, &QPushButton::clicked, this, [this, shown = std::move(shown)] {
        if (const auto record = shown())
            callHistory(*this, *record);
    });
}

} // namespace lastrivet::ui
