// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/certificate/CertificatePlace.h"

class QButtonGroup;
class QLabel;
class QStackedWidget;

namespace lastrivet::ui {

class EquipmentPanel;
class LoadingPanel;
class Session;
class WeighingPanel;

/// Weighing and balance: the weighing, the equipment list, loadings within the limits, the printed
/// report.
class WeighingView final : public CertificatePlace {
    Q_OBJECT

public:
    explicit WeighingView(Session &session, QWidget *parent = nullptr);

    bool showRecord(RecordRef record) override;
    void apply(const ChangeNotice &notice) override;
    void startNew() override;
    QWidget *firstFocus() override;

private:
    QWidget *buildHead();
    void build();
    void open(QWidget *panel);
    void work();

    Session &m_session;
    QButtonGroup *m_buttons;
    QStackedWidget *m_stack;
    QLabel *m_sum;
    QWidget *m_head;
    WeighingPanel *m_weighing;
    EquipmentPanel *m_equipment;
    LoadingPanel *m_loading;
};

} // namespace lastrivet::ui
