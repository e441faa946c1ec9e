// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Closing.h"
#include "ui/widgets/ActForm.h"

class QCheckBox;
class QLineEdit;

namespace lastrivet::ui {

class MomentLine;
class PersonBox;
class Session;

/// Records that a region was closed, or opened again.
class CloseForm final : public ActForm {
    Q_OBJECT

public:
    explicit CloseForm(Session &session, QWidget *parent = nullptr);

    /// Asks for a reason when something on record stands against closing.
    void startClosing(const Closing &closing);
    void startReopening(const Closing &closing);

protected:
    bool perform() override;

private:
    void start(const Closing &closing);
    bool isReasonNeeded() const;

    Session &m_session;
    Id<Closing> m_closing;
    bool m_isReopening = false;
    MomentLine *m_on;
    QCheckBox *m_about;
    PersonBox *m_by;
    QLineEdit *m_reason;
};

} // namespace lastrivet::ui
