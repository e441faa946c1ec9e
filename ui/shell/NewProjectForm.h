// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"
#include "ui/widgets/ActForm.h"

#include <memory>

class QComboBox;
class QLineEdit;

namespace lastrivet::ui {

/// Makes a project on one page: name, country, kit or plans, who builds it.
class NewProjectForm final : public ActForm {
    Q_OBJECT

public:
    explicit NewProjectForm(const Clock &clock, QWidget *parent = nullptr);

    void start();
    /// Where the project's folder will be made.
    void setPlace(const QString &folder);

Q_SIGNALS:
    void made(const QString &folder);

protected:
    bool perform() override;

private:
    ProjectFacts typed() const;
    QString folder() const;

    const Clock &m_clock;
    QLineEdit *m_name;
    QComboBox *m_profile;
    QComboBox *m_origin;
    QLineEdit *m_aircraft;
    QLineEdit *m_builder;
    QLineEdit *m_place;
};

} // namespace lastrivet::ui
