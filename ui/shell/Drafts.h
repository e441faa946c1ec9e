// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <map>
#include <string>

namespace lastrivet::ui {

class Session;

/// Texts typed into a line and not on record yet, one for each subject of the line. They are stored
/// on this computer, so that they are there when the project is opened again.
class Drafts {
public:
    /// `kind` distinguishes the drafts of this line from those of others. `session` outlives them.
    Drafts(Session &session, std::string kind);

    /// The draft, empty when there is none. A line that is about one thing only has no subject.
    QString of(const std::string &subject = {});
    /// What the line has to show: the stored draft followed by what was `typed` before that could
    /// be read; later just `typed`.
    QString takeUp(const std::string &subject, const QString &typed);
    /// Stores the draft; removes it when `text` is empty. While nothing can be read or written it
    /// is kept in memory, and appended to what is stored once that can be read. Returns the text
    /// that the line has to show from now on.
    QString keep(const std::string &subject, const QString &text);
    /// Whether the last text given to `keep` is stored, and not in memory only.
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
