// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/photos/PhotoSections.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QPushButton;

namespace lastrivet::ui {

class Flow;
class RecordLine;
class Session;

/// The line above the photos: taking them in, which are shown, and in which order.
class PhotoBar final : public QWidget {
    Q_OBJECT

public:
    enum class Which { All, Unassigned, OfPart, Papers, Missing };

    explicit PhotoBar(Session &session, QWidget *parent = nullptr);

    Which which() const;
    void choose(Which which);
    PhotoOrder order() const;
    void chooseOrder(PhotoOrder order);
    /// The part whose photos are shown, or none.
    Id<Component> part() const;
    PhotoFilter filter() const;
    void showCount(int files);
    void showMissing(int places);
    /// Puts a button of another's beside the one that takes photos in.
    void add(QWidget *button);

Q_SIGNALS:
    void takeInWanted();
    /// Other photos or another order are to be shown.
    void changed();

private:
    void build();
    void update();

    Session &m_session;
    Flow *m_flow;
    QPushButton *m_take;
    QComboBox *m_which;
    RecordLine *m_part;
    QComboBox *m_order;
    QPushButton *m_missing;
    QLabel *m_count;
};

} // namespace lastrivet::ui
