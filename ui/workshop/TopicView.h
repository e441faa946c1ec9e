// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/workshop/Topics.h"

#include <QScrollArea>

#include <vector>

class QPushButton;
class QVBoxLayout;

namespace lastrivet::ui {

class FigureView;
class SumPanel;

/// The sums and tables of one topic, below each other.
class TopicView final : public QScrollArea {
    Q_OBJECT

public:
    TopicView(const Topic &topic, UnitSystem units, const std::vector<workshop::OwnLimit> &own,
              QWidget *parent = nullptr);

    /// Shows everything anew.
    void show(UnitSystem units, const std::vector<workshop::OwnLimit> &own);
    const std::vector<SumPanel *> &sums() const { return m_sums; }

Q_SIGNALS:
    /// The person wants to put a limit of the project's own in the place of what a table says.
    void ownLimitWanted(const QString &subject, const QString &unit);

private:
    void addSum(const Sum &sum);
    void addTable(std::string_view name);
    QPushButton *ownButton();

    std::vector<std::string_view> m_names;
    QVBoxLayout *m_column;
    std::vector<SumPanel *> m_sums;
    std::vector<FigureView *> m_tables;
};

} // namespace lastrivet::ui
