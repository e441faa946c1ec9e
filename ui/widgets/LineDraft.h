// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

class QLineEdit;

namespace lastrivet::ui {

class Session;

/// What is typed into a line and not written down yet: kept on this computer, and there again when
/// the line is.
class LineDraft {
public:
    /// `key` names where it is kept; `line` lives as long.
    LineDraft(Session &session, std::string key, QLineEdit &line);

    /// Puts what was kept into the line, in front of what was typed before it could be read.
    void takeUp();
    /// Keeps what stands in the line now; never in the place of something that was not read.
    void keep();

private:
    Session &m_session;
    std::string m_key;
    QLineEdit &m_line;
    std::string m_kept;
    bool m_isRead = false;
};

} // namespace lastrivet::ui
