// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/entry/SquawkLine.h"
#include "ui/widgets/LineDraft.h"
#include "ui/widgets/PictureInbox.h"
#include "ui/widgets/Unfinished.h"

class QLabel;
class QPushButton;

namespace lastrivet::ui {

class PhotoIntake;
class Session;
class SquawkLineEdit;

/// A squawk in one line with a photo or two, and what the line was understood as; what is typed
/// stays until it is written down or cleared, also over a restart. Photos, which may have been
/// pasted and be nowhere else, do not: they hold the window back.
class SquawkCapture final : public Unfinished {
    Q_OBJECT

public:
    /// `draft` names where the unfinished line is kept.
    SquawkCapture(Session &session, const QString &draft, QWidget *parent = nullptr);
    ~SquawkCapture() override;

    /// Puts the keyboard into the line; a line that names no part is about `partShown`.
    void start(Id<Component> partShown);
    void addPhotos(const QStringList &files);
    /// Shows nothing but the line as long as nothing is in it.
    void setQuietWhenEmpty();
    QString understood() const;
    bool isBegun() const override { return !m_photos.isEmpty(); }
    QStringList contents() const override { return m_photos; }
    QString heldBackWords() const override;

Q_SIGNALS:
    void recorded(qint64 squawk);
    void left();
    /// The form needs another height.
    void resized();

protected:
    void dragEnterEvent(QDragEnterEvent *event) override;
    void dropEvent(QDropEvent *event) override;
    void hideEvent(QHideEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;

private:
    void build();
    QWidget *buildBar();
    void connectParts();
    entry::SquawkReading reading() const;
    void understand();
    QString inWords(const entry::SquawkReading &reading) const;
    void record(bool isToOpen);
    Id<Squawk> put(const Squawk &draft);
    void takePhotos(Id<Squawk> squawk, Id<Component> part);
    void paste();
    void clear();

    Session &m_session;
    Id<Component> m_part;
    QStringList m_photos;
    bool m_isQuietWhenEmpty = false;
    PictureInbox m_inbox;
    PhotoIntake *m_intake;
    SquawkLineEdit *m_line;
    LineDraft m_draft;
    QLabel *m_understood;
    QWidget *m_bar = nullptr;
    QLabel *m_names = nullptr;
    QPushButton *m_write = nullptr;
    QPushButton *m_clear = nullptr;
};

} // namespace lastrivet::ui
