// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"
#include "ui/widgets/BegunForms.h"

#include <QWidget>

#include <vector>

class QLabel;
class QPushButton;

namespace lastrivet::ui {

class ActLine;
class LinksEditor;
class RecordForm;
class RowMenu;
class Session;
class ShiftForm;
class ShowsBar;
class WorkProposal;

/// The chosen photos: what they show, what they belong to, and the log entries they fit.
class PhotoDetail final : public QWidget {
    Q_OBJECT

public:
    explicit PhotoDetail(Session &session, QWidget *parent = nullptr);

    void show(const std::vector<Id<Media>> &media);
    void apply(const ChangeNotice &notice);
    /// Puts the cursor where the part is typed that they belong to.
    void assign();
    /// They belong to the log entries that are proposed.
    void confirmMatch();
    void toggle(Shows what);
    void withdrawAll();
    /// Puts what its buttons do with the photos into the menu of one of them.
    void offer(RowMenu &menu);
    /// Asks by how much their times are moved.
    void shiftTimes();

Q_SIGNALS:
    void finished();
    /// What is half answered about these is to be shown.
    void begunWanted(const std::vector<qint64> &media);

protected:
    /// Escape, of which no line made anything, leads back to the photos.
    void keyPressEvent(QKeyEvent *event) override;

private:
    void build();
    void connectShift();
    void refresh();
    std::vector<RecordRef> shown() const;

    Session &m_session;
    std::vector<Id<Media>> m_media;
    QLabel *m_heading;
    ActLine *m_ask;
    ShiftForm *m_shift;
    BegunForms m_begun;
    WorkProposal *m_proposal;
    ShowsBar *m_shows;
    LinksEditor *m_links;
    RecordForm *m_form;
    QPushButton *m_toShift;
    QPushButton *m_withdraw;
};

} // namespace lastrivet::ui
