// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/Answer.h"
#include "core/records/Records.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace lastrivet::ui {

class Session;
class StateBadge;

/// The head of an opened closing: what it is, where it stands, and what can be done now.
class ClosingHead final : public QWidget {
    Q_OBJECT

public:
    explicit ClosingHead(Session &session, QWidget *parent = nullptr);

    /// Where the way back leads.
    void setBackWords(const QString &words);
    void show(const Closing &closing, const readiness::ClosingAnswer &answer);

Q_SIGNALS:
    void backWanted();
    void closeWanted();
    void acceptWanted();
    void visitWanted();
    void packetWanted();

private:
    void build();
    QString placeOf(const Closing &closing) const;
    QString gapOf(const Closing &closing, const readiness::ClosingAnswer &answer) const;

    Session &m_session;
    Id<Closing> m_shown;
    QLabel *m_title;
    QLabel *m_place;
    StateBadge *m_badge;
    QPushButton *m_back;
    QPushButton *m_packet;
    QPushButton *m_visit;
    QPushButton *m_accept;
    QPushButton *m_close;
};

} // namespace lastrivet::ui
