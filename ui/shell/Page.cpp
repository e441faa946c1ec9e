// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/Page.h"

namespace lastrivet::ui {

Page::Page(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
{
    connect(&session, &Session::changed, this,
            [this](const ChangeNotice &notice) { recordsChanged(notice); });
    connect(&session, &Session::answerChanged, this, [this] { answerChanged(); });
    connect(&session.theme(), &Theme::changed, this, [this] { themeChanged(); });
}

} // namespace lastrivet::ui
