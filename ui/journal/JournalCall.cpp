// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/journal/JournalCall.h"

#include <QCoreApplication>
#include <QWidget>

namespace lastrivet::ui {

namespace {

void sendUp(QWidget &from, std::optional<RecordRef> about)
{
    JournalCall call(about);
    call.ignore();
    for (QWidget *at = &from; at && !call.isAccepted(); at = at->parentWidget())
        QCoreApplication::sendEvent(at, &call);
}

} // namespace

JournalCall::JournalCall(std::optional<RecordRef> about)
    : QEvent(eventType())
    , m_about(about)
{
}

QEvent::Type JournalCall::eventType()
{
    static const auto type = QEvent::Type(QEvent::registerEventType());
    return type;
}

void callHistory(QWidget &from, RecordRef record)
{
    sendUp(from, record);
}

void callDecisions(QWidget &from)
{
    sendUp(from, std::nullopt);
}

} // namespace lastrivet::ui
