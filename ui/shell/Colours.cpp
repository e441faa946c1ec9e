// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/Colours.h"

namespace lastrivet::ui {

const Colours &Colours::light()
{
    static const Colours colours{
        .window = QColor(0xF4, 0xF4, 0xF1),
        .surface = QColor(0xFF, 0xFF, 0xFF),
        .raised = QColor(0xE9, 0xE9, 0xE5),
        .line = QColor(0xD9, 0xD9, 0xD4),
        .border = QColor(0x86, 0x86, 0x80),
        .text = QColor(0x1C, 0x1E, 0x20),
        .quietText = QColor(0x58, 0x5B, 0x5E),
        .accent = QColor(0x00, 0x72, 0xB2),
        .accentText = QColor(0xFF, 0xFF, 0xFF),
        .selection = QColor(0xD3, 0xE7, 0xF3),
        .notBegun = QColor(0x8A, 0x8A, 0x8A),
        .hold = QColor(0xB8, 0x7A, 0x00),
        .waits = QColor(0x00, 0x72, 0xB2),
        .clear = QColor(0x00, 0x7A, 0x5A),
        .closed = QColor(0x5A, 0x5A, 0x5A),
        .closedEarly = QColor(0xB8, 0x4A, 0x00),
    };
    return colours;
}

const Colours &Colours::dark()
{
    static const Colours colours{
        .window = QColor(0x1B, 0x1D, 0x1F),
        .surface = QColor(0x23, 0x26, 0x28),
        .raised = QColor(0x2C, 0x30, 0x33),
        .line = QColor(0x3A, 0x3E, 0x41),
        .border = QColor(0x80, 0x86, 0x8A),
        .text = QColor(0xEC, 0xEC, 0xE8),
        .quietText = QColor(0xB4, 0xB8, 0xBA),
        .accent = QColor(0x56, 0xB4, 0xE9),
        .accentText = QColor(0x10, 0x16, 0x1A),
        .selection = QColor(0x26, 0x44, 0x57),
        .notBegun = QColor(0x9A, 0x9A, 0x9A),
        .hold = QColor(0xE6, 0x9F, 0x00),
        .waits = QColor(0x56, 0xB4, 0xE9),
        .clear = QColor(0x2F, 0xBF, 0x97),
        .closed = QColor(0xB5, 0xB5, 0xB5),
        .closedEarly = QColor(0xF0, 0x7A, 0x3C),
    };
    return colours;
}

QColor Colours::state(readiness::State state) const
{
    switch (state) {
    case readiness::State::Closed:
        return closed;
    case readiness::State::ClosedEarly:
        return closedEarly;
    case readiness::State::Clear:
        return clear;
    case readiness::State::ReadyToSign:
    case readiness::State::ReadyToInspect:
        return waits;
    case readiness::State::Hold:
        return hold;
    }
    return text;
}

QColor Colours::severity(Severity severity) const
{
    return severity == Severity::Airworthiness ? closedEarly : text;
}

} // namespace lastrivet::ui
