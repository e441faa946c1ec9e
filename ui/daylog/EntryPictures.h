// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"
#include "core/records/WorkSession.h"
#include "ui/widgets/PictureInbox.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace lastrivet::ui {

class PhotoIntake;
class PhotoStrip;
class PictureLoader;
class Session;

/// The photos of a log entry; more can be dropped, pasted or chosen.
class EntryPictures final : public QWidget {
    Q_OBJECT

public:
    EntryPictures(Session &session, PictureLoader &loader, QWidget *parent = nullptr);
    ~EntryPictures() override;

    void show(Id<WorkSession> entry);
    void apply(const ChangeNotice &notice);
    int count() const;
    void addFiles(const QStringList &files);

protected:
    void dragEnterEvent(QDragEnterEvent *event) override;
    void dropEvent(QDropEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;

private:
    void build();
    void updateWords();

    Session &m_session;
    Id<WorkSession> m_entry;
    PhotoStrip *m_strip;
    PhotoIntake *m_intake;
    PictureInbox m_inbox;
    QLabel *m_nothing;
    QPushButton *m_add;
};

} // namespace lastrivet::ui
