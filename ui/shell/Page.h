// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/Session.h"

#include <QWidget>

#include <optional>

namespace lastrivet::ui {

/// A page of the window: made when it is first shown, and told of every change from then on. While
/// another page is shown, changes are collected, and told as one when this page is back.
///
/// Title, icon and key are in `pageList`. A page keeps no copy of the records and calls no other
/// page; it asks the session to go to a record.
class Page : public QWidget {
    Q_OBJECT

public:
    explicit Page(Session &session, QWidget *parent = nullptr);

    /// Selects a record of one of the page's types (`pageFor`) and brings it into view. With id 0
    /// it only shows the page.
    virtual void showRecord(RecordRef record) = 0;
    /// Starts a new record of the page's kind, in place.
    virtual void startNew() {}
    /// True for a page with a document of its own to print: the print key then belongs to the page
    /// and not to the menu, since Qt ignores a key that two actions have.
    virtual bool printsItself() const { return false; }
    /// Begins to print that document; for the menu.
    virtual void startPrinting() {}
    /// Where the keyboard goes when the page is opened; the page itself when null.
    virtual QWidget *firstFocus() { return nullptr; }
    /// Called when another page is shown, and when this one is shown again.
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
