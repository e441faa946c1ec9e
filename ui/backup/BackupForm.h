// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/backup/BackupChoice.h"
#include "ui/widgets/ActForm.h"

class QCheckBox;
class QLabel;

namespace lastrivet::ui {

class BackupKeeper;
class FolderLine;
class NumberBox;

/// Where the backups of the open project go, when, and one now. Floats over the window that it
/// belongs to.
class BackupForm final : public ActForm {
    Q_OBJECT

public:
    explicit BackupForm(QWidget *parent = nullptr);

    void open(BackupKeeper &keeper);

protected:
    bool perform() override;

private:
    void tellOfFolder();
    void keep();
    void leave();
    backup::BackupChoice chosen() const;

    BackupKeeper *m_keeper = nullptr;
    FolderLine *m_shelf;
    QLabel *m_remark;
    QCheckBox *m_byItself;
    NumberBox *m_days;
    QCheckBox *m_everyFile;
};

} // namespace lastrivet::ui
