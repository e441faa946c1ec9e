// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/MissingPictures.h"

#include <QScrollArea>

class QLabel;
class QPushButton;

namespace lastrivet::ui {

class RowListView;
class Session;

/// Where photographs of the inside are missing, each with its way to take some in.
class MissingView final : public QScrollArea {
    Q_OBJECT

public:
    explicit MissingView(Session &session, QWidget *parent = nullptr);

    void show(const readiness::MissingPictures &missing);

Q_SIGNALS:
    /// Photos are to be taken in for this closing or part.
    void takeInWanted(lastrivet::RecordRef record);
    void unassignedWanted();

private:
    void build();
    RowListView *addList(class QVBoxLayout *layout, QLabel *heading, const QString &name);

    Session &m_session;
    QLabel *m_nothing;
    QLabel *m_closingsHeading;
    RowListView *m_closings;
    QLabel *m_partsHeading;
    RowListView *m_parts;
    QPushButton *m_unassigned;
};

} // namespace lastrivet::ui
