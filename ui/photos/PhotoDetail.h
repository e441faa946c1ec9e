// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"

#include <QWidget>

#include <vector>

class QComboBox;
class QLabel;
class QPushButton;
class QStackedWidget;
class QVBoxLayout;

namespace lastrivet::ui {

class ActLine;
class RecordForm;
class RecordLine;
class Session;

/// The chosen photos: what they show, what they belong to, and the log entry they fit.
class PhotoDetail final : public QWidget {
    Q_OBJECT

public:
    explicit PhotoDetail(Session &session, QWidget *parent = nullptr);

    void show(const std::vector<Id<Media>> &media);
    void apply(const ChangeNotice &notice);
    /// Puts the cursor where the part is typed that they belong to.
    void assign();
    /// They belong to the log entry that is proposed.
    void confirmMatch();
    void withdrawAll();

Q_SIGNALS:
    void finished();

private:
    void build();
    QWidget *buildShows();
    QWidget *buildAssign();
    void refresh();
    void fillLinks();
    void fillMatch();
    void link(RecordType type, std::int64_t id);
    void unlink(RecordRef record);
    void setShows(Shows what, bool isShown);
    QString name() const;
    /// The links that all of the chosen have.
    std::vector<Media::Link> commonLinks() const;

    Session &m_session;
    std::vector<Id<Media>> m_media;
    Id<WorkSession> m_match;
    QLabel *m_heading;
    QLabel *m_matchWords;
    QPushButton *m_matchButton;
    ActLine *m_ask;
    RecordForm *m_form;
    std::vector<QPushButton *> m_shows;
    QVBoxLayout *m_links;
    QComboBox *m_kind;
    QStackedWidget *m_lines;
};

} // namespace lastrivet::ui
