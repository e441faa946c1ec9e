// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/RecordType.h"

#include <QEvent>

#include <optional>

class QWidget;

namespace lastrivet::ui {

/// Somebody wants to see the journal: a record's own history, or what a merge left to decide.
///
/// Goes from the widget where it was asked up to the view that has the pages.
class JournalCall final : public QEvent {
public:
    explicit JournalCall(std::optional<RecordRef> about);

    static QEvent::Type eventType();
    /// None for what is to decide.
    std::optional<RecordRef> about() const { return m_about; }

private:
    std::optional<RecordRef> m_about;
};

/// Shows where a record's own history stands.
void callHistory(QWidget &from, RecordRef record);
/// Shows what merges left to decide.
void callDecisions(QWidget &from);

} // namespace lastrivet::ui
