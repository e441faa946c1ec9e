// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/RecordType.h"

#include <QPushButton>

#include <functional>
#include <optional>

namespace lastrivet::ui {

/// Leads from a record's detail to its own history in the journal.
class HistoryButton final : public QPushButton {
    Q_OBJECT

public:
    /// The record that is shown now; none while nothing is.
    using Shown = std::function<std::optional<RecordRef>()>;

    HistoryButton(Shown shown, QWidget *parent);
};

} // namespace lastrivet::ui
