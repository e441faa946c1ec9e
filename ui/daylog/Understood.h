// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/entry/EntryReading.h"

#include <QStringList>
#include <QWidget>

class QLabel;

namespace lastrivet::ui {

class Session;

/// What a log line was understood to say, a small framed label for each fact; below them what is
/// unclear, behind a question mark, and what cannot be, behind an exclamation mark.
class Understood final : public QWidget {
    Q_OBJECT

public:
    explicit Understood(Session &session, QWidget *parent = nullptr);

    void show(const entry::EntryReading &reading);
    /// Says something more below, or all there is to say while there are no facts.
    void say(const QString &sentence);
    /// All of it, in order.
    QStringList texts() const;

private:
    void add(const QString &text);
    void addFacts(const entry::EntryReading &reading);
    void addPeople(const WorkSession &session);
    QString whenText(const WorkSession &session) const;
    QString whereText(const WorkSession &session) const;
    void nameIt();

    Session &m_session;
    QWidget *m_facts;
    QLabel *m_told;
};

} // namespace lastrivet::ui
