// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/evidence/SessionMatcher.h"
#include "core/project/Project.h"

#include <QWidget>

#include <optional>
#include <utility>
#include <vector>

class QLabel;
class QPushButton;

namespace lastrivet::ui {

class Session;

/// A photo and the log entry that it fits.
using PhotoAndWork = std::pair<Id<Media>, Id<WorkSession>>;

/// The log entry that a photo fits best by the time it was taken; none for papers, and for what
/// belongs to a log entry already. `surely`: only when it was taken while that work was going on.
Id<WorkSession> workThatFits(const evidence::SessionMatcher &matcher, const Media &media,
                             bool surely);
/// Each photo belongs to its log entry, in one change.
void confirmWork(Session &session, const std::vector<PhotoAndWork> &pairs);

/// Proposes for each chosen photo the log entry that it fits, and confirms all of them at once.
class WorkProposal final : public QWidget {
    Q_OBJECT

public:
    explicit WorkProposal(Session &session, QWidget *parent = nullptr);

    void show(const std::vector<Id<Media>> &media);
    void confirm();

private:
    QString words();
    const evidence::SessionMatcher &matcher();

    Session &m_session;
    /// Of `m_matched`: made once per snapshot, however often another photo is chosen.
    std::optional<evidence::SessionMatcher> m_matcher;
    Snapshot m_matched;
    std::vector<PhotoAndWork> m_pairs;
    QLabel *m_words;
    QPushButton *m_confirm;
};

} // namespace lastrivet::ui
