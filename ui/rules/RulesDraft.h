// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/profiles/ProfileDraft.h"

#include <QObject>
#include <QTimer>

#include <optional>

namespace lastrivet::ui {

class Session;

/// Rules that somebody is writing: kept on this computer right or wrong until they are used, and
/// those before them, too.
class RulesDraft final : public QObject {
    Q_OBJECT

public:
    /// What was being written comes first; else the project's own rules, as a copy to change where
    /// they are those that came with the program.
    explicit RulesDraft(Session &session, QObject *parent = nullptr);
    ~RulesDraft() override;

    /// To be changed in place; `noteEdit` has to follow.
    Profile &profile() { return m_profile; }
    const Profile &profile() const { return m_profile; }
    void noteEdit();
    /// Takes up other rules in place of these; a copy of them where they came with the program.
    void begin(const Profile &profile);
    void beginWithLibrary(const std::string &id);
    bool hasEarlier() const;
    void takeUpEarlier();

    const std::optional<ProfileFault> &fault() const { return m_fault; }
    /// Word for word those of the project.
    bool isOfProject() const;
    /// A copy of the project's rules that nobody has typed into yet.
    bool isUntouched() const;

    void useInProject();
    void keepForOthers();
    /// Writes it as it is, right or wrong.
    void writeTo(const QString &file);
    void readFrom(const QString &file);
    /// Keeps it on this computer now; a draft that was there and could not be read until now
    /// becomes the one before it.
    void keep();
    /// False while it is not known whether a draft was kept.
    bool isRead() const { return m_isRead; }
    /// Takes up what was kept, when that could not be read before and nobody typed since.
    void lookAgain();

Q_SIGNALS:
    /// Something was written into it, or it was put to use.
    void changed();
    /// It is another one.
    void begun();

private:
    Profile copyOf(const Profile &profile) const;
    /// What was kept; else the project's own rules. False when it could not be read.
    bool takeUp();
    /// Makes sure that a draft nobody has seen is not written over.
    bool mayKeep();
    void replace(const Profile &profile);
    void check();

    Session &m_session;
    Profile m_profile;
    std::optional<ProfileFault> m_fault;
    /// The copy of the project's rules that it was; empty for rules from elsewhere and for what
    /// was written earlier.
    std::optional<Profile> m_asBegun;
    bool m_isKept = true;
    bool m_isRead = false;
    QTimer m_keeping;
};

} // namespace lastrivet::ui
