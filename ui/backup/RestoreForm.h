// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/backup/Backup.h"
#include "core/base/Clock.h"
#include "ui/shell/Executor.h"
#include "ui/widgets/ActForm.h"

#include <QTimer>

#include <memory>

class QComboBox;
class QLineEdit;
class QProgressBar;

namespace lastrivet::ui {

class FolderLine;
class Progress;

/// Makes a project again of a backup, in a new folder. Floats over the window that it belongs to.
class RestoreForm final : public ActForm {
    Q_OBJECT

public:
    /// What it is given outlives it.
    RestoreForm(Executor &executor, const Clock &clock, QWidget *parent);
    ~RestoreForm() override;

    void open();
    bool isRunning() const { return m_progress != nullptr; }

Q_SIGNALS:
    /// The new folder is whole; `remark` says what was wrong with files, or nothing.
    void restored(const QString &folder, const QString &remark);

protected:
    bool perform() override;

private:
    struct Job;

    void offerStates();
    void suggestName();
    void leave();
    void start(const QString &target);
    void finish(const Job &job);
    void setRunning(bool isRunning);

    Executor &m_executor;
    const Clock &m_clock;
    FolderLine *m_backup;
    QComboBox *m_state;
    FolderLine *m_place;
    QLineEdit *m_name;
    QProgressBar *m_bar;
    QTimer m_poll;
    std::shared_ptr<Progress> m_progress;
};

} // namespace lastrivet::ui
