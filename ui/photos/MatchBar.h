// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"
#include "ui/photos/WorkProposal.h"

#include <QWidget>

#include <vector>

class QLabel;

namespace lastrivet::ui {

/// The line that says how many photos were taken during logged work, and confirms them all.
class MatchBar final : public QWidget {
    Q_OBJECT

public:
    explicit MatchBar(Session &session, QWidget *parent = nullptr);

    /// Works the pairs out away from the window.
    void refresh();
    void confirm();

Q_SIGNALS:
    /// These are meant, and are to be looked at first.
    void shown(const std::vector<qint64> &media);

private:
    void take(const std::vector<PhotoAndWork> &pairs);

    Session &m_session;
    std::vector<PhotoAndWork> m_pairs;
    /// What was looked through last: an earlier look may end after a later one.
    Snapshot m_asked;
    QLabel *m_words;
};

} // namespace lastrivet::ui
