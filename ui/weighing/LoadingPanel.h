// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/WeightReport.h"
#include "ui/shell/Session.h"
#include "ui/weighing/UnitChange.h"

#include <QWidget>

#include <functional>
#include <memory>

class QComboBox;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace lastrivet::ui {

class ActLine;
class EnvelopePicture;
class FigureView;
class LimitsEditor;
class LinesEditor;
class RecordForm;

/// The loadings, each with what is on board, and how they and the extremes lie within the limits.
class LoadingPanel final : public QWidget {
    Q_OBJECT

public:
    explicit LoadingPanel(Session &session, QWidget *parent = nullptr);

    void show(Id<LoadingCase> loading);
    void startNew();
    void apply(const ChangeNotice &notice);
    void setReport(const packet::WeightReport &report);
    QWidget *firstFocus() const;

private:
    QWidget *buildCases();
    void buildResult(QVBoxLayout &layout);
    void connectItems();
    void choose(Id<LoadingCase> loading);
    void refresh();
    void showCases();
    void showItems(const LoadingCase &loading);
    void showResult();
    /// Says above the sums what is typed and not in them.
    void tellLacking();
    QString type(LoadingCase &loading, int row, int column, const QString &text) const;
    /// One change of the shown loading; `body` answers why it cannot be, or nothing. What is not to
    /// be kept is only looked at.
    Session::Outcome change(const std::function<QString(LoadingCase &)> &body, bool isKept = true);
    const LoadingCase *shown() const;

    Session &m_session;
    Id<LoadingCase> m_shown;
    packet::WeightReport m_report;
    QComboBox *m_cases;
    QPushButton *m_new;
    QPushButton *m_withdraw;
    ActLine *m_ask;
    RecordForm *m_form;
    LinesEditor *m_items;
    EnvelopePicture *m_picture;
    QLabel *m_how;
    QLabel *m_lacking;
    FigureView *m_sums;
    QLabel *m_legend;
    QLabel *m_source;
    LimitsEditor *m_limits;
    std::shared_ptr<UnitChoice> m_unitChoice = unitChoice(*m_form);
};

} // namespace lastrivet::ui
