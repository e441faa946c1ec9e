// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Closing.h"
#include "core/records/Inspection.h"
#include "core/records/Squawk.h"
#include "ui/shell/Session.h"
#include "ui/widgets/BegunForms.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace lastrivet::ui {

class ActForm;
class AnswerForm;
class Section;

/// One visit: what it was about, its findings with what became of each, and what can be done now.
class InspectionView final : public QWidget {
    Q_OBJECT

public:
    explicit InspectionView(Session &session, QWidget *parent = nullptr);

    void show(Id<Inspection> visit);
    Id<Inspection> shown() const { return m_visit; }
    void refresh();
    AnswerForm &answer() const { return *m_answer; }
    Section &findings() const { return *m_findings; }
    /// The findings or, where there are none, what comes next.
    QWidget *firstFocus() const;

Q_SIGNALS:
    void backWanted();
    /// What was said at it is to be recorded.
    void holdingWanted(lastrivet::Id<lastrivet::Inspection> visit);
    void closingWanted(lastrivet::Id<lastrivet::Closing> closing);
    /// What is begun for this visit is to be shown.
    void begunWanted(lastrivet::Id<lastrivet::Inspection> visit);

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    void build();
    void connectParts();
    void refreshPoints(const Inspection &visit);
    void refreshFindings(const Inspection &visit);
    QString facts(const Inspection &visit) const;
    QString said(const Inspection &visit, Id<HoldPoint> point) const;
    void act(RecordRef finding);
    void complete();
    void cancel();
    void writeReport();
    void leaveForm();

    Session &m_session;
    Id<Inspection> m_visit;
    bool m_isWarned = false;
    // In the order in which the Tab key comes to them.
    QPushButton *m_back;
    QLabel *m_title;
    QLabel *m_facts;
    QLabel *m_warning;
    QPushButton *m_hold;
    QPushButton *m_report;
    QPushButton *m_complete;
    QPushButton *m_cancel;
    AnswerForm *m_answer;
    BegunForms m_begun;
    Section *m_findings;
    Section *m_points;
};

} // namespace lastrivet::ui
