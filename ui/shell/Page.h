// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/Session.h"

#include <QWidget>

#include <optional>

namespace lastrivet::ui {

/// A page of the window: made when it is first shown, told of every change from then on. While
/// another page is shown, what happens is kept and told at once when it is back.
///
/// Title, icon and key stand in `pageList`. A page keeps no copy of the records and calls no other
/// page; it asks the session to go to a record.
class Page : public QWidget {
    Q_OBJECT

public:
    explicit Page(Session &session, QWidget *parent = nullptr);

    /// Chooses a record of one of the page's types (`pageFor`) and brings it into view; id 0 asks
    /// for the page as it is when there is nothing to show yet.
    virtual void showRecord(RecordRef record) = 0;
    /// Starts a new record of the page's kind, in place.
    virtual void startNew() {}
    /// True for a page with a paper of its own: the key for printing is the page's then, and not
    /// the menu's. A key that two have does nothing.
    virtual bool printsItself() const { return false; }
    /// Begins that paper, where the menu has it too.
    virtual void startPrinting() {}
    /// Where the keyboard goes when the page is opened; the page itself when null.
    virtual QWidget *firstFocus() { return nullptr; }
    /// Another page is shown, or this one again.
    void setAway(bool isAway);
    /// The part that the person is looking at; none when the page shows no part, or many.
    virtual Id<Component> shownPart() const { return {}; }

protected:
    Session &session() const { return m_session; }
    const Theme &theme() const { return m_session.theme(); }

    /// After every change; the readiness answer is still the one before it.
    virtual void recordsChanged(const ChangeNotice &notice) = 0;
    /// When a new readiness answer is there.
    virtual void answerChanged() {}
    /// When light became dark or the other way round.
    virtual void themeChanged() {}

private:
    void hear(const ChangeNotice &notice);
    void hearAnswer();

    Session &m_session;
    bool m_isAway = false;
    /// All changes since the page was left, as one.
    std::optional<ChangeNotice> m_missed;
    bool m_missedAnswer = false;
};

} // namespace lastrivet::ui
