// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/widgets/Unfinished.h"
#include "ui/widgets/UnkeptWords.h"

namespace lastrivet::ui {

class Session;

/// Holds the window back while words of a place could not be saved. It is never to be seen itself.
class UnkeptHold final : public Unfinished {
    Q_OBJECT

public:
    /// `words` belong to `parent`, and live as long.
    UnkeptHold(Session &session, const UnkeptWords &words, QWidget *parent);

    /// That what was typed is not on record, and what can be done about it.
    static QString unkeptSentence();
    /// What is being typed is to be kept now, as far as that can be.
    void settle() { Q_EMIT settling(); }
    bool isBegun() const override { return firstThere().id != 0; }
    QStringList contents() const override;
    QString heldBackWords() const override;
    /// Goes to the record.
    void takeKeyboard() override;

Q_SIGNALS:
    void settling();

private:
    bool isThere(RecordRef record) const;
    /// The first record with such words that was not withdrawn; id 0 for none.
    RecordRef firstThere() const;

    Session &m_session;
    const UnkeptWords &m_words;
};

} // namespace lastrivet::ui
