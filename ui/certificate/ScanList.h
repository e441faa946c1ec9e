// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Media.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace lastrivet::ui {

class RowListView;
class Session;

/// The files that go with a record: a click opens one, its button takes it off; new ones come by a
/// button or are dropped here.
class ScanList final : public QWidget {
    Q_OBJECT

public:
    ScanList(Session &session, const QString &title, QWidget *parent = nullptr);

    void show(const IdSet<Media> &files);
    /// Without, files can only be looked at.
    void setEditable(bool isEditable);

Q_SIGNALS:
    void filesOffered(const QStringList &files);
    void takenOff(qint64 file);

protected:
    void dragEnterEvent(QDragEnterEvent *event) override;
    void dropEvent(QDropEvent *event) override;

private:
    void ask();

    Session &m_session;
    bool m_isEditable = true;
    QLabel *m_empty;
    RowListView *m_list;
    QPushButton *m_add;
};

} // namespace lastrivet::ui
