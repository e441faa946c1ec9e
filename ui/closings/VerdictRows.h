// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/acts/Inspecting.h"

#include <QWidget>

#include <vector>

class QCheckBox;
class QComboBox;
class QGridLayout;

namespace lastrivet::ui {

class Session;

/// The hold points that one visit can sign, each with what was said about it.
class VerdictRows final : public QWidget {
    Q_OBJECT

public:
    explicit VerdictRows(Session &session, QWidget *parent = nullptr);

    /// Lists every hold point that waits for somebody from outside; those of these closings are
    /// chosen, and those that are named.
    void start(const IdSet<Closing> &closings, const IdSet<HoldPoint> &named = {});
    /// Hides the results while a visit is only asked for.
    void setAsking(bool isAsking);
    IdSet<HoldPoint> chosen() const;
    std::vector<acts::Verdict> verdicts() const;
    /// The highest role that the chosen ones need, and the kind of visit that sees the first.
    SignerRole role() const;
    InspectionKind kind() const;

Q_SIGNALS:
    void chosenChanged();

private:
    struct Row {
        Id<HoldPoint> point;
        QCheckBox *box;
        QComboBox *result;
    };

    void addRow(const HoldPoint &point, bool isChosen);
    bool isTaken(const Row &row) const;
    /// A result stands only beside what is chosen: a grey one would read as said.
    void showResults();

    Session &m_session;
    std::vector<Row> m_rows;
    bool m_isAsking = false;
    QGridLayout *m_layout;
};

} // namespace lastrivet::ui
