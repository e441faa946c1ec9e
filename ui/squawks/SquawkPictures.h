// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"
#include "core/records/Squawk.h"
#include "ui/widgets/PictureInbox.h"

#include <QWidget>

class QLabel;
class QListView;
class QModelIndex;
class QPushButton;

namespace lastrivet::ui {

class MediaModel;
class PhotoIntake;
class PictureLoader;
class Session;

/// The photos of a squawk on one side, before its repair or after it; more can be dropped, pasted
/// or chosen, and a photo that is on the wrong side sent to the other.
class SquawkPictures final : public QWidget {
    Q_OBJECT

public:
    enum class Side { Before, After };

    SquawkPictures(Session &session, PictureLoader &loader, Side side, QWidget *parent = nullptr);
    ~SquawkPictures() override;

    void show(Id<Squawk> squawk);
    void apply(const ChangeNotice &notice);
    int count() const;
    void addFiles(const QStringList &files);

protected:
    void dragEnterEvent(QDragEnterEvent *event) override;
    void dropEvent(QDropEvent *event) override;
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void build();
    void connectParts();
    void updateWords();
    void paste();
    void keepChosenInSight();
    void openPicture(const QModelIndex &row);
    void sendOver();
    Shows own() const;
    Shows other() const;

    Session &m_session;
    Side m_side;
    Id<Squawk> m_squawk;
    MediaModel *m_model;
    PhotoIntake *m_intake;
    PictureInbox m_inbox;
    QLabel *m_heading;
    QListView *m_list;
    QLabel *m_nothing;
    QPushButton *m_add;
    QPushButton *m_send;
};

} // namespace lastrivet::ui
