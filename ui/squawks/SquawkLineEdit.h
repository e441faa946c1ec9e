// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/entry/SquawkLine.h"
#include "ui/daylog/EntryEdit.h"

namespace lastrivet::ui {

/// The line that a squawk is told in; pictures may be pasted into it.
class SquawkLineEdit final : public EntryEdit {
    Q_OBJECT

public:
    explicit SquawkLineEdit(Session &session, QWidget *parent = nullptr);

    /// What the line is read with.
    entry::SquawkSurroundings surroundings(Id<Component> partShown = {}) const;

Q_SIGNALS:
    void picturesPasted();
    /// Esc; what is typed stays.
    void left();
    /// Ctrl+Enter.
    void enteredToOpen();

protected:
    entry::PartWords partWords(std::string_view line, std::size_t cursor,
                               const entry::PartFinder &finder) const override;
    void keyPressEvent(QKeyEvent *event) override;
};

} // namespace lastrivet::ui
