// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace lastrivet::ui {

class ActLine;
class PhotoStrip;
class PictureLoader;
class RecordForm;
class RepairOptions;
class Session;

/// One squawk, to be edited in place, corrected, verified, accepted or withdrawn.
class SquawkEditor final : public QWidget {
    Q_OBJECT

public:
    SquawkEditor(Session &session, PictureLoader &loader, QWidget *parent = nullptr);

    void show(Id<Squawk> squawk);
    Id<Squawk> shown() const { return m_squawk; }
    void apply(const ChangeNotice &notice);
    void editTitle();
    /// Asks for the correction and, where it is the builder's own to check, ticks both.
    void fixAndCheck();

Q_SIGNALS:
    /// An act was done or left: the list gets the keyboard back.
    void finished();

private:
    void build(PictureLoader &loader);
    void buildActs();
    QPushButton *addAct(const QString &words, const QString &key, void (SquawkEditor::*act)());
    void updateWords();
    void fix();
    void verify();
    void accept();
    void reopen();
    void withdrawIt();
    bool recordFix(const QString &correction, Moment on, Id<Person> by, bool isChecked);
    const Squawk *squawk() const;
    QString story(const Squawk &squawk) const;

    Session &m_session;
    Id<Squawk> m_squawk;
    QLabel *m_heading;
    QLabel *m_story;
    QPushButton *m_fix = nullptr;
    QPushButton *m_fixAndCheck = nullptr;
    QPushButton *m_verify = nullptr;
    QPushButton *m_accept = nullptr;
    QPushButton *m_reopen = nullptr;
    ActLine *m_ask;
    RecordForm *m_form;
    RepairOptions *m_options;
    PhotoStrip *m_photos;
};

} // namespace lastrivet::ui
