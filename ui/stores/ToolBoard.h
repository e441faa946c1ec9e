// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/stores/StoreBoard.h"
#include "ui/widgets/BegunForms.h"

class QPushButton;

namespace lastrivet::ui {

class CalibrationForm;
class Section;

/// Tools with their calibrations and certificates, and what was done with one out of calibration.
class ToolBoard final : public StoreBoard {
    Q_OBJECT

public:
    explicit ToolBoard(Session &session, QWidget *parent = nullptr);

    /// Asks about a calibration of the chosen tool.
    void startCalibration();
    CalibrationForm &calibration() const { return *m_calibration; }

protected:
    void refresh() override;

private:
    void build();

    QPushButton *m_calibrated;
    CalibrationForm *m_calibration;
    BegunForms m_begun;
    Section *m_calibrations;
    Section *m_outside;
};

} // namespace lastrivet::ui
