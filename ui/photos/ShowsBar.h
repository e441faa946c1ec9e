// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Media.h"

#include <QWidget>

#include <vector>

class QPushButton;

namespace lastrivet::ui {

class Session;

/// What the chosen photos show, a button per word, numbered as the keys that press them.
class ShowsBar final : public QWidget {
    Q_OBJECT

public:
    explicit ShowsBar(Session &session, QWidget *parent = nullptr);

    void show(const std::vector<Id<Media>> &media);
    /// Sets the word on all of them, or takes it away when all have it.
    void toggle(Shows what);

private:
    Session &m_session;
    std::vector<Id<Media>> m_media;
    std::vector<QPushButton *> m_buttons;
};

/// All of them show it from now on, in one change; none does where all did.
void toggleShown(Session &session, const std::vector<Id<Media>> &media, Shows what);
/// "3 photos", or the title of the one.
QString nameOf(const Session &session, const std::vector<Id<Media>> &media);

} // namespace lastrivet::ui
