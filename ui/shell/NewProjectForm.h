// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"
#include "core/starters/Starter.h"
#include "ui/widgets/ActForm.h"

#include <vector>

class QComboBox;
class QLabel;
class QLineEdit;

namespace lastrivet::ui {

class FolderLine;
class StarterTree;

/// Makes a project on one page: name, country, kit or plans, who builds it, and the parts and
/// closings to begin with.
class NewProjectForm final : public ActForm {
    Q_OBJECT

public:
    explicit NewProjectForm(const Clock &clock, QWidget *parent = nullptr);

    /// Puts the keyboard into its first line.
    void start();
    /// Where the project's folder will be made.
    void setPlace(const QString &folder);

Q_SIGNALS:
    void made(const QString &folder);

protected:
    bool perform() override;
    void keyPressEvent(QKeyEvent *event) override;

private:
    /// Empties what belongs to one project; where projects are kept stays.
    void clear();
    void offerProfiles();
    void chooseUsualProfile();
    void offerStarters();
    void showStarter();
    void tellSize();
    /// Says what the project cannot do without, and goes there; false when nothing is missing.
    bool tellMissing();
    /// Takes back that something is missing once it is there.
    void lookAtNames();
    bool isNamed() const;
    /// Null for a project without parts.
    const Starter *starter() const;
    ProjectFacts typed() const;
    QString folder() const;
    /// The builder and the first parts.
    void fill(Edit &edit, const std::string &builder) const;
    /// True when the folder has a project with its builder and its first parts; else nothing is
    /// left of it.
    bool make(const std::string &builder);

    const Clock &m_clock;
    QLineEdit *m_name;
    QComboBox *m_profile;
    QComboBox *m_origin;
    QLineEdit *m_aircraft;
    QLineEdit *m_builder;
    FolderLine *m_place;
    QComboBox *m_starter;
    StarterTree *m_tree;
    QLabel *m_size;
    std::vector<Starter> m_starters;
    /// It was said that a name is missing.
    bool m_isLacking = false;
};

} // namespace lastrivet::ui
