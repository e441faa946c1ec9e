// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/entry/EntryReading.h"
#include "core/records/Closing.h"
#include "core/records/Step.h"

#include <QWidget>

class QComboBox;
class QLabel;

namespace lastrivet::ui {

class Session;

/// While a region is signed for and still open: asks whoever logs work there whether it changed
/// what was inspected, or was the closing itself. Hidden while there is nothing to ask.
class SignedQuestion final : public QWidget {
    Q_OBJECT

public:
    explicit SignedQuestion(Session &session, QWidget *parent = nullptr);

    /// What was answered for earlier work is no answer any more.
    void forget();
    /// Asks about these parts, which may be none.
    void askAbout(const IdSet<Component> &parts);
    /// Writes the answer into what is to be logged.
    void apply(entry::EntryReading &reading) const;

private:
    Session &m_session;
    QLabel *m_words;
    QComboBox *m_answer;
    /// The closing and the step that are asked about.
    Id<Closing> m_closing;
    Id<Step> m_closingStep;
};

} // namespace lastrivet::ui
