// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Media.h"

#include <QWidget>

#include <optional>

class QLabel;
class QPushButton;

namespace lastrivet::ui {

class Session;

/// The photographed sheet of a signature: a file that is taken in when the form is kept.
class SheetBox final : public QWidget {
    Q_OBJECT

public:
    explicit SheetBox(Session &session, QWidget *parent = nullptr);

    void clear();
    void setFile(const QString &file);
    /// Asks for the file.
    void choose();
    bool hasFile() const { return !m_file.isEmpty(); }
    /// Takes the chosen file into the project; none when no file is chosen. Empty when it could not
    /// be taken in, which was said.
    std::optional<Id<Media>> takeIn();

protected:
    void dragEnterEvent(QDragEnterEvent *event) override;
    void dropEvent(QDropEvent *event) override;

private:
    Session &m_session;
    QString m_file;
    QPushButton *m_button;
    QLabel *m_name;
};

} // namespace lastrivet::ui
