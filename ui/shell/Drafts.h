// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <map>
#include <string>

namespace lastrivet::ui {

class Session;

/// What is typed in a line and not on record yet, of each thing that the line has been about; kept
/// on this computer, so that it is there again when the project is opened again.
class Drafts {
public:
    /// `kind` tells these drafts from those of other lines. The session outlives them.
    Drafts(Session &session, std::string kind);

    /// Empty where nothing was left. A line that is about one thing only has no subject.
    QString of(const std::string &subject = {});
    /// What was left, in front of what is typed before that could be read; once it was read, what
    /// is typed.
    QString takeUp(const std::string &subject, const QString &typed);
    /// Empty text forgets it. While nothing can be read or written, it is kept in memory only, and
    /// then goes behind what was not read: the text that stands from now on is the answer.
    QString keep(const std::string &subject, const QString &text);
    /// Whether what was to be kept last is on this computer, and not in memory only.
    bool isWritten(const std::string &subject = {}) const;

private:
    struct Draft {
        QString text;
        QString written;
        bool isRead = false;
        /// Asked for in vain: what is typed meanwhile must not go over what is there.
        bool isUnread = false;
    };

    void read(const std::string &subject, Draft &draft);
    std::string key(const std::string &subject) const;

    Session &m_session;
    std::string m_kind;
    std::map<std::string, Draft> m_drafts;
};

} // namespace lastrivet::ui
