// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>
#include <QStringList>

namespace lastrivet::ui {

/// Fields in place that are kept together or not at all: knows whether anybody has begun to fill
/// them in, so that the window does not close over them.
class Unfinished : public QFrame {
    Q_OBJECT

public:
    using QFrame::QFrame;

    /// True when something else stands in its fields than when they were last noted, until it is
    /// left, or hidden without being parked.
    virtual bool isBegun() const;
    /// What stands in its fields: texts, choices and ticks.
    virtual QStringList contents() const;
    /// That what is begun here held something else back, and what can be done now.
    virtual QString heldBackWords() const;
    /// Brings it into view on its page, with the keyboard where it was last.
    virtual void takeKeyboard();
    /// Hides it while something else is shown than what it is about; what is begun stays begun.
    void park();
    /// Shows it again when it was begun as it was parked.
    void bringBack();
    /// It is kept or dropped: nothing in it can be lost any more.
    void noteLeft();

Q_SIGNALS:
    /// It is parked, and the keyboard is to be in it: what it is about has to be shown.
    void wanted();

protected:
    /// What stands in the fields now comes from the records; whatever is changed is the person's.
    void noteFields();
    /// What was noted last still holds, and so does what was typed since.
    void goOn() { m_isLeft = false; }

private:
    QWidget *firstField();

    bool m_isLeft = true;
    bool m_isParked = false;
    QStringList m_noted;
};

} // namespace lastrivet::ui
