// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Closing.h"
#include "core/records/HoldPoint.h"
#include "ui/widgets/ActForm.h"

class QCheckBox;
class QComboBox;
class QLineEdit;

namespace lastrivet::ui {

class Session;

/// Plans a hold point of a closing besides those that the rules ask for.
class HoldPointForm final : public ActForm {
    Q_OBJECT

public:
    explicit HoldPointForm(Session &session, QWidget *parent = nullptr);

    void start(Id<Closing> closing);

protected:
    bool perform() override;

private:
    Session &m_session;
    Id<Closing> m_closing;
    QComboBox *m_kind;
    QComboBox *m_role;
    QCheckBox *m_required;
    QLineEdit *m_source;
};

} // namespace lastrivet::ui
