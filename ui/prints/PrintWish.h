// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Closing.h"
#include "ui/print/LabelGrid.h"
#include "ui/prints/PrintTask.h"

namespace lastrivet::ui {

/// What can be printed that belongs to no single page of the window.
enum class PrintKind {
    Tags,
    PartLabels,
    LotLabels,
    ToolLabels,
    TorqueForm,
    BatchForm,
    WeekForm,
    FindingForm,
    MajorPortion,
    FinalFile,
    HandOver,
    Weight,
    Calendar,
};
inline constexpr int printKindCount = 13;

/// A document as a person chose it; what does not concern its kind is left alone.
struct PrintWish {
    PrintKind kind = PrintKind::Tags;
    print::Choices choices;
    QString file;
    /// For tags.
    IdSet<Closing> closings;
    bool hasCodes = true;
    /// For labels.
    print::LabelGrid grid;
    int usedLabels = 0;
    bool onlyWithShelf = false;
    /// For blank forms.
    int sheets = 1;
};

/// "Tie-on tags", "Shelf labels for parts".
QString nameOf(PrintKind kind);
bool isForLabels(PrintKind kind);
bool isBlankForm(PrintKind kind);

/// Makes it and opens it, or says in one sentence why not; a calendar file is only written.
void carryOut(Session &session, const PrintWish &wish);

} // namespace lastrivet::ui
