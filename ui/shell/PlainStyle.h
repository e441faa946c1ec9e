// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QProxyStyle>

class QLabel;

namespace lastrivet::ui {

/// Fusion, in which every label and tip shows its text as it is: left alone, Qt takes a text that
/// looks like HTML for HTML, and many texts are those of records, perhaps a stranger's. A tip goes
/// over several lines before it is too wide to be read.
///
/// The wheel scrolls forms and changes nothing in them: a choice that it turned over on its way
/// would be a change of the records that nobody meant.
///
/// A click chooses a row and no more, whatever the desktop is used to: what opens a row leads away
/// from the list, or into a form, and several rows could not be chosen.
///
/// Undo and redo are the project's wherever a field has nothing of its own to take back, and Enter
/// presses the button that has the keyboard, as the space bar does.
class PlainStyle final : public QProxyStyle {
    Q_OBJECT

public:
    PlainStyle();

    using QProxyStyle::polish;
    void polish(QWidget *widget) override;
    int styleHint(StyleHint hint, const QStyleOption *option, const QWidget *widget,
                  QStyleHintReturn *returned) const override;
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    static bool passesBy(QObject *watched, QEvent *event);
    static void narrow(QLabel &tip);
};

} // namespace lastrivet::ui
