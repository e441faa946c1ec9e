// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/WeightReport.h"
#include "ui/shell/Session.h"
#include "ui/weighing/UnitChange.h"

#include <QWidget>

#include <functional>
#include <memory>
#include <vector>

class QLabel;
class QPushButton;
class QScrollArea;

namespace lastrivet::ui {

class ActLine;
class EmptyPlace;
class FigureView;
class LinesEditor;
struct LinesColumn;
class RecordForm;
class RowListView;

/// The weighings, and the chosen one: scales with tare, corrections, what it comes to, and what has
/// changed the weight since.
class WeighingPanel final : public QWidget {
    Q_OBJECT

public:
    explicit WeighingPanel(Session &session, QWidget *parent = nullptr);

    void show(Id<Weighing> weighing);
    void startNew();
    void apply(const ChangeNotice &notice);
    /// After a change: the report of the whole.
    void setReport(const packet::WeightReport &report);
    QWidget *firstFocus() const;

private:
    static std::vector<LinesColumn> scaleColumns();
    static std::vector<LinesColumn> correctionColumns();
    void buildLeft();
    void buildRight();
    void connectLines();
    void connectLinesTakenOut();
    void choose(Id<Weighing> weighing);
    void refresh();
    void showList();
    void showLines(const Weighing &weighing);
    void showResult(const Weighing &weighing);
    void showChanges(const Weighing &weighing);
    QString typeScale(Weighing &weighing, int row, int column, const QString &text) const;
    QString typeCorrection(Weighing &weighing, int row, int column, const QString &text) const;
    /// One change of the shown weighing; `body` answers why it cannot be, or nothing. What is not
    /// to be kept is only looked at.
    Session::Outcome change(const std::function<QString(Weighing &)> &body, bool isKept = true);
    const Weighing *shown() const;

    Session &m_session;
    Id<Weighing> m_shown;
    packet::WeightReport m_report;
    RowListView *m_list;
    QPushButton *m_new;
    QPushButton *m_withdraw;
    RecordForm *m_form;
    ActLine *m_ask;
    EmptyPlace *m_empty;
    QScrollArea *m_leftArea;
    QScrollArea *m_rightArea;
    LinesEditor *m_scales;
    LinesEditor *m_corrections;
    QLabel *m_sum;
    QLabel *m_since;
    FigureView *m_changes;
    std::shared_ptr<UnitChoice> m_unitChoice = unitChoice(*m_form);
};

} // namespace lastrivet::ui
