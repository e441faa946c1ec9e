// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/MissingPictures.h"

#include <QScrollArea>

#include <vector>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace lastrivet::ui {

struct ListRow;
class RowListView;
class Session;

/// Where photographs of the inside are missing, each with its way to take some in.
class MissingView final : public QScrollArea {
    Q_OBJECT

public:
    explicit MissingView(Session &session, QWidget *parent = nullptr);

    void show(const readiness::MissingPictures &missing);
    /// The first list that has rows; this view itself where there is nothing to act on.
    QWidget *firstFocus();

Q_SIGNALS:
    /// Photos are to be taken in for this closing or part.
    void takeInWanted(lastrivet::RecordRef record);
    void unassignedWanted();

private:
    void build();
    RowListView *addList(QVBoxLayout *layout, QLabel *heading, const QString &name);
    QString actionWords() const;
    /// Why a closing lacks photographs, in one line.
    QString reasons(const readiness::MissingPictures::OfClosing &lacking) const;
    std::vector<ListRow> closingRows(const readiness::MissingPictures &missing) const;
    std::vector<ListRow> partRows(const readiness::MissingPictures &missing) const;

    Session &m_session;
    QLabel *m_nothing;
    QLabel *m_closingsHeading;
    RowListView *m_closings;
    QLabel *m_partsHeading;
    RowListView *m_parts;
    QPushButton *m_unassigned;
};

} // namespace lastrivet::ui
