// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/verify/Verification.h"

#include <QDialog>

class QLabel;
class QListWidget;
class QPushButton;

namespace lastrivet::ui {

class Session;

/// What was found wrong with a project, all of it, and the button that makes anew what can be.
class FindingsDialog final : public QDialog {
    Q_OBJECT

public:
    /// `session` outlives it.
    FindingsDialog(Session &session, const Verification &found, QWidget *parent);

    /// What is listed, a line each.
    QStringList lines() const;
    void mend();

private:
    void fill(const Verification &found, const std::vector<std::string> &mended);

    Session &m_session;
    QLabel *m_summary;
    QListWidget *m_list;
    QPushButton *m_mend;
};

} // namespace lastrivet::ui
