// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"

#include <QWidget>

class QSplitter;
class QStackedWidget;
class QVBoxLayout;

namespace lastrivet::ui {

class ActLine;
class SectionList;
class Session;
struct PartSection;

/// One kind of thing in the stores: its list, what is chosen and done over it, and beside it what
/// follows from the chosen one.
class StoreBoard : public QWidget {
    Q_OBJECT

public:
    StoreBoard(Session &session, const PartSection &section, QWidget *parent = nullptr);

    SectionList &list() const { return *m_list; }
    /// Chooses a record that the board shows, whatever was filtered.
    virtual void showRecord(RecordRef record);
    void apply(const ChangeNotice &notice);
    void applyAnswer();

protected:
    Session &session() const { return m_session; }
    QVBoxLayout &head() const { return *m_head; }
    QVBoxLayout &aside() const { return *m_aside; }
    /// What may stand in place of list and aside.
    QStackedWidget &stack() const { return *m_stack; }
    void showList();
    /// Shows in head and aside what is on record now, and of the chosen record.
    virtual void refresh() = 0;

private:
    QWidget *buildMiddle();

    Session &m_session;
    ActLine *m_ask;
    SectionList *m_list;
    QStackedWidget *m_stack;
    QSplitter *m_middle;
    QVBoxLayout *m_head;
    QVBoxLayout *m_aside;
    /// While the list's rows change; `refresh` may filter them, and waits.
    bool m_isListing = false;
};

} // namespace lastrivet::ui
