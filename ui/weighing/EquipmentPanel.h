// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/WeightReport.h"
#include "core/project/Project.h"
#include "ui/weighing/UnitChange.h"

#include <QWidget>

#include <memory>

class QLabel;
class QPushButton;
class QScrollArea;

namespace lastrivet::ui {

class ActLine;
struct ListRow;
class RecordForm;
class RowListView;
class Session;

/// The equipment list, and the chosen item to change, take out of the aeroplane or withdraw.
class EquipmentPanel final : public QWidget {
    Q_OBJECT

public:
    explicit EquipmentPanel(Session &session, QWidget *parent = nullptr);

    void show(Id<Equipment> equipment);
    void startNew();
    void apply(const ChangeNotice &notice);
    void setReport(const packet::WeightReport &report);
    QWidget *firstFocus() const;

private:
    QWidget *buildList();
    QWidget *buildForm();
    void choose(Id<Equipment> equipment);
    void refresh();
    ListRow rowOf(const Records &records, const Equipment &item) const;

    Session &m_session;
    Id<Equipment> m_shown;
    balance::Units m_units;
    QLabel *m_count;
    RowListView *m_list;
    QPushButton *m_new;
    RecordForm *m_form;
    std::shared_ptr<UnitChoice> m_unitChoice = unitChoice(*m_form);
    ActLine *m_ask;
    QPushButton *m_withdraw;
};

} // namespace lastrivet::ui
