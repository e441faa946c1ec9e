// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/ui/support/Workshop.h"
#include "ui/photos/PhotoGrid.h"
#include "ui/photos/PhotosPage.h"
#include "ui/photos/PictureView.h"

#include <QPushButton>
#include <QString>
#include <QStringList>

#include <memory>

namespace lastrivet::test {

/// The photos page in a window, over the small workshop, and picture files to take in.
struct PhotosWindow {
    PhotosWindow();

    ui::PhotoGrid &grid() { return *page.findChild<ui::PhotoGrid *>(); }
    ui::PictureView &picture() { return *page.findChild<ui::PictureView *>(); }
    const Table<Media> &media() const { return session->records()->media; }
    /// The newest row.
    const Media &lastMedia() const;
    /// A picture file that is unlike the others.
    QString file(int number);
    QString textFile(const QString &name, const QByteArray &content);
    /// The button with these words that can be seen.
    QPushButton *button(const QString &words);
    void key(QWidget &widget, int key, Qt::KeyboardModifiers modifiers = {});
    void change(const Project::Body &body) { session->change(QStringLiteral("Change"), body); }

    Workshop workshop;
    TemporaryFolder folder;
    std::unique_ptr<ui::Session> session = workshop.session();
    ui::PhotosPage page{*session};
    QString said;
    QString complaint;
};

} // namespace lastrivet::test
