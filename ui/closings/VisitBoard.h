// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Closing.h"
#include "core/records/HoldPoint.h"
#include "core/records/Inspection.h"
#include "ui/shell/Session.h"

#include <QWidget>

class QLabel;
class QPushButton;
class QTreeView;

namespace lastrivet::ui {

class Section;
class VisitPlanModel;

/// Which closings one visit could cover, to be picked for a packet and a visit; and the visits that
/// were asked for or held.
class VisitBoard final : public QWidget {
    Q_OBJECT

public:
    explicit VisitBoard(Session &session, QWidget *parent = nullptr);

    void refresh();
    /// Picks these closings, those that are in the plan.
    void pick(const IdSet<Closing> &closings);
    VisitPlanModel &plan() const { return *m_plan; }
    QTreeView &table() const { return *m_table; }

Q_SIGNALS:
    void backWanted();
    void closingWanted(lastrivet::Id<lastrivet::Closing> closing);
    void packetWanted(const lastrivet::IdSet<lastrivet::Closing> &closings);
    void visitWanted(const lastrivet::IdSet<lastrivet::Closing> &closings);
    void inspectionWanted(lastrivet::Id<lastrivet::Inspection> visit);

protected:
    void keyPressEvent(QKeyEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;

private:
    void build();
    void buildTable();
    void connectParts();
    void shareWidth();
    void refreshVisits();
    QString standing(const Inspection &visit) const;
    void updateWords();
    void pickWithoutWork();

    Session &m_session;
    VisitPlanModel *m_plan;
    QTreeView *m_table;
    QLabel *m_nothing;
    QLabel *m_sum;
    QPushButton *m_ready;
    QPushButton *m_packet;
    QPushButton *m_visit;
    Section *m_visits;
};

} // namespace lastrivet::ui
