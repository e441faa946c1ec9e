// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Media.h"

#include <QElapsedTimer>
#include <QWidget>

class QLabel;

namespace lastrivet::ui {

class PictureLoader;
class PictureRefiner;
class PictureView;
class Session;

/// One picture as large as the bench, to look at; captions and marks are written on its page.
class BenchPicture final : public QWidget {
    Q_OBJECT

public:
    BenchPicture(Session &session, PictureLoader &loader, QWidget *parent = nullptr);

    /// With the keyboard on it.
    void showPicture(const Media &media);

Q_SIGNALS:
    void stepped(int by);
    void left();

protected:
    void showEvent(QShowEvent *event) override;
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    /// Since it came in the place of the part.
    QElapsedTimer m_shown;
    PictureView *m_picture;
    PictureRefiner *m_refiner;
    QLabel *m_title;
};

} // namespace lastrivet::ui
