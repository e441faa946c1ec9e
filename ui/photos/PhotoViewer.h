// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Media.h"

#include <QPixmap>
#include <QWidget>

class QLabel;
class QLineEdit;

namespace lastrivet::ui {

class PictureLoader;
class Session;

/// One picture as large as the page, with its caption; arrow keys go on, Escape goes back.
class PhotoViewer final : public QWidget {
    Q_OBJECT

public:
    PhotoViewer(Session &session, PictureLoader &loader, QWidget *parent = nullptr);

    void show(const Media &media);

Q_SIGNALS:
    void stepped(int by);
    void left();

protected:
    void paintEvent(QPaintEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
    void mouseDoubleClickEvent(QMouseEvent *event) override;

private:
    QRect pictureRect() const;

    Session &m_session;
    PictureLoader &m_loader;
    Id<Media> m_media;
    QPixmap m_picture;
    QString m_failure;
    QLabel *m_words;
};

} // namespace lastrivet::ui
