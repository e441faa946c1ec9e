// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"
#include "core/readiness/SquawkOrder.h"
#include "ui/squawks/SquawkActForm.h"
#include "ui/widgets/BegunForms.h"

#include <QWidget>

class QLabel;
class QLayout;
class QPushButton;

namespace lastrivet::ui {

class ActLine;
class PictureLoader;
class RecordForm;
class RepairOptions;
class Session;
class SquawkPictures;
class SquawkReach;
class SquawkWork;

/// One squawk, from being found to being verified, accepted or withdrawn, all in place.
class SquawkEditor final : public QWidget {
    Q_OBJECT

public:
    SquawkEditor(Session &session, PictureLoader &loader, QWidget *parent = nullptr);

    void show(Id<Squawk> squawk);
    Id<Squawk> shown() const { return m_squawk; }
    /// How long it can be reached, as the list knows it.
    void showReach(const readiness::ListedSquawk *listed);
    void apply(const ChangeNotice &notice);
    void editTitle();
    /// Asks for the correction and, where it is the builder's own to check, ticks both.
    void fixAndCheck();
    /// The buttons for what can be done with the squawk.
    QWidget &acts() const { return *m_acts; }
    SquawkPictures &before() const { return *m_before; }
    SquawkPictures &after() const { return *m_after; }

Q_SIGNALS:
    /// An act was done or left: the list gets the keyboard back.
    void finished();
    /// What is begun for this squawk is to be shown.
    void begunWanted(lastrivet::Id<lastrivet::Squawk> squawk);

private:
    void build();
    QWidget *buildActs();
    QLayout *buildPictures();
    QPushButton *addAct(const QString &words, SquawkActForm::Act act);
    void updateWords();
    void updateActs(const Squawk &squawk);
    void start(SquawkActForm::Act act);
    void withdrawIt();
    const Squawk *squawk() const;
    bool isOwnToCheck(const Squawk &squawk) const;

    Session &m_session;
    Id<Squawk> m_squawk;
    QLabel *m_heading;
    QLabel *m_story;
    SquawkReach *m_reach;
    QPushButton *m_fixAndCheck;
    QPushButton *m_fix;
    QPushButton *m_verify;
    QPushButton *m_accept;
    QPushButton *m_again;
    QPushButton *m_takeBack;
    QPushButton *m_withdraw;
    QWidget *m_acts;
    SquawkActForm *m_act;
    ActLine *m_ask;
    BegunForms m_begun;
    SquawkPictures *m_before;
    SquawkPictures *m_after;
    RecordForm *m_form;
    RepairOptions *m_options;
    SquawkWork *m_work;
};

} // namespace lastrivet::ui
