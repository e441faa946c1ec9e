// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/prints/PrintWish.h"
#include "ui/widgets/ActForm.h"

class QCheckBox;
class QComboBox;
class QListWidget;

namespace lastrivet::ui {

class NumberBox;
class PathLine;

/// The one place where papers are made: which, what for, on which paper, in which language, where.
/// Floats over the window that it belongs to.
class PrintForm final : public ActForm {
    Q_OBJECT

public:
    explicit PrintForm(QWidget *parent = nullptr);

    /// Tags are for all that is to be tagged, or for `only` where that is.
    void open(Session &session, PrintKind kind, Id<Closing> only = {});
    /// What would be printed now.
    PrintWish wish() const;

protected:
    bool perform() override;
    void keyPressEvent(QKeyEvent *event) override;

private:
    void addFields();
    QWidget *tickField();
    void tickEvery(Qt::CheckState state);
    QWidget *fileField();
    void offerPapers();
    void offerLanguages();
    void chooseUsual();
    void offerClosings(Id<Closing> only);
    void offerGrids();
    void showKind();
    void place();
    void browse();
    PrintKind kind() const;
    print::Paper paper() const;
    /// Of the file's name.
    QString ending() const;

    Session *m_session = nullptr;
    QString m_asked;
    QComboBox *m_kind;
    QListWidget *m_closings;
    QWidget *m_ticks = nullptr;
    QCheckBox *m_hasCodes;
    QCheckBox *m_onlyWithShelf;
    QComboBox *m_paper;
    QComboBox *m_grid;
    NumberBox *m_used;
    NumberBox *m_sheets;
    QComboBox *m_language;
    PathLine *m_file;
};

} // namespace lastrivet::ui
