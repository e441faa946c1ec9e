// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Media.h"

#include <QWidget>

#include <vector>

class QComboBox;
class QStackedWidget;
class QVBoxLayout;

namespace lastrivet::ui {

class Session;

/// The records that the chosen photos belong to: parts, squawks, closings, steps and more; several
/// of each.
class LinksEditor final : public QWidget {
    Q_OBJECT

public:
    explicit LinksEditor(Session &session, QWidget *parent = nullptr);

    /// Where they are many, those that most of the photos belong to, and the others on demand.
    void show(const std::vector<Id<Media>> &media);
    /// Puts the cursor where a part is typed.
    void startAssigning();

private:
    /// A link and how many of the chosen have it.
    struct Held {
        RecordRef record;
        int count = 0;
    };

    QWidget *buildAssign();
    std::vector<Held> held() const;
    void fill();
    QWidget *row(const Held &link);
    void showAll();
    void link(RecordRef record);
    void unlink(RecordRef record);

    Session &m_session;
    std::vector<Id<Media>> m_media;
    /// Every link has its row, however many there are.
    bool m_isWhole = false;
    QVBoxLayout *m_rows;
    QComboBox *m_kind;
    QStackedWidget *m_lines;
};

} // namespace lastrivet::ui
