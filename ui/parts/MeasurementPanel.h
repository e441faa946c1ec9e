// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/parts/SectionAside.h"

class QLabel;

namespace lastrivet::ui {

class MeasurementPlot;
class Session;

/// What was measured again and again, drawn against its limits.
class MeasurementPanel final : public SectionAside {
    Q_OBJECT

public:
    explicit MeasurementPanel(Session &session, QWidget *parent = nullptr);

    void present(std::int64_t id) override;

private:
    Session &m_session;
    QLabel *m_words;
    MeasurementPlot *m_plot;
};

} // namespace lastrivet::ui
