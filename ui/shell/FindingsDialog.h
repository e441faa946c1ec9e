// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/verify/Verification.h"

#include <QDialog>

#include <memory>

class QLabel;
class QListWidget;
class QPushButton;

namespace lastrivet::ui {

class Progress;
class Session;

/// Lists all that was found wrong with a project, with a button that repairs what can be repaired.
/// The repair is stopped here, since the dialog keeps one from reaching the foot of the window.
class FindingsDialog final : public QDialog {
    Q_OBJECT

public:
    /// `session` outlives it.
    FindingsDialog(Session &session, const Verification &found, QWidget *parent);

    /// What is listed, a line each.
    QStringList lines() const;
    void mend();

private:
    void build();
    void fill(const Verification &found, const std::vector<Message> &mended);
    void setRunning(bool isRunning);
    void stop();

    Session &m_session;
    QLabel *m_summary;
    QListWidget *m_list;
    QPushButton *m_mend;
    QPushButton *m_stop;
    /// Of what is being made anew, or was last.
    std::weak_ptr<Progress> m_progress;
};

} // namespace lastrivet::ui
