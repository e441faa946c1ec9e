// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Media.h"

#include <QWidget>

#include <functional>

class QLabel;
class QPushButton;

namespace lastrivet {
class Edit;
}

namespace lastrivet::ui {

class Session;

/// The photographed sheet of a signature, or another picture: a file that is taken in when the form
/// is kept.
class SheetBox final : public QWidget {
    Q_OBJECT

public:
    explicit SheetBox(Session &session, QWidget *parent = nullptr);

    /// What the picture shows, where it is no signed sheet; nothing leaves that open.
    void setShows(WordSet<Shows> shows) { m_shows = shows; }
    void clear();
    void setFile(const QString &file);
    /// Asks for the file.
    void choose();
    bool hasFile() const { return !m_file.isEmpty(); }
    const QString &file() const { return m_file; }
    /// One sentence why the chosen file cannot be taken in; empty when it can, or none is chosen.
    QString whyNot() const;
    /// Makes a change named `label` with which the chosen file is taken into the project; `body`
    /// gets its id, or none when no file is chosen. False when nothing was changed, which was said.
    bool change(const QString &label, const std::function<void(Edit &, Id<Media>)> &body);

Q_SIGNALS:
    void fileChanged(const QString &file);

protected:
    void dragEnterEvent(QDragEnterEvent *event) override;
    void dropEvent(QDropEvent *event) override;

private:
    Session &m_session;
    QString m_file;
    WordSet<Shows> m_shows{Shows::SignedSheet};
    QPushButton *m_button;
    QLabel *m_name;
    QPushButton *m_leaveOut;
};

} // namespace lastrivet::ui
