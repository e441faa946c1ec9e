// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Tool.h"
#include "ui/widgets/ActForm.h"

#include <optional>

namespace lastrivet::ui {

class MomentLine;
class Session;
class SheetBox;

/// A tool came back from its calibration: when it was done, when it is due again, its certificate.
class CalibrationForm final : public ActForm {
    Q_OBJECT

public:
    explicit CalibrationForm(Session &session, QWidget *parent = nullptr);

    void start(Id<Tool> tool);

protected:
    bool perform() override;

private:
    QString whyNot() const;
    void proposeDue();

    Session &m_session;
    Id<Tool> m_tool;
    MomentLine *m_done;
    MomentLine *m_due;
    std::optional<Moment> m_proposed;
    SheetBox *m_certificate;
};

} // namespace lastrivet::ui
