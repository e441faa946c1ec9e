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

    /// Empty where nothing was left.
    QString of(const std::string &subject);
    /// Empty text forgets it. While nothing can be written, it is kept in memory only.
    void keep(const std::string &subject, const QString &text);

private:
    struct Draft {
        QString text;
        QString written;
    };

    Draft &draft(const std::string &subject);
    std::string key(const std::string &subject) const;

    Session &m_session;
    std::string m_kind;
    std::map<std::string, Draft> m_drafts;
};

} // namespace lastrivet::ui
