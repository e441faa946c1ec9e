// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/Drafts.h"
#include "ui/widgets/RestTimer.h"

#include <string>

class QLineEdit;

namespace lastrivet::ui {

class Session;

/// What is typed into a line and not written down yet: kept on this computer, and there again when
/// the line is. The line may be about one thing after the other, and has a draft of each. It is
/// kept whenever the hand rests, too: power may fail before the line is left.
class LineDraft {
public:
    /// `kind` names where it is kept; `line` lives as long.
    LineDraft(Session &session, std::string kind, QLineEdit &line);

    /// Puts what was kept into the line, in front of what was typed before it could be read.
    void takeUp();
    /// Keeps what stands in the line now; never in the place of something that was not read, which
    /// comes into the line in front of it. Also for the owner to call when the words are written
    /// down and the line is empty: after a crash they would be there to be written down again.
    void keep();
    /// The line is about this from now on: what stands in it is kept for what it was about, and
    /// what was kept for this is in it.
    void turnTo(const std::string &subject);

private:
    void put(const QString &text);

    Drafts m_drafts;
    QLineEdit &m_line;
    std::string m_subject;
    RestTimer m_soon;
};

} // namespace lastrivet::ui
