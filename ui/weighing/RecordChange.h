// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"
#include "ui/shell/Session.h"

#include <QString>

#include <functional>

namespace lastrivet::ui {

/// One change of a record, from what it is now; `body` answers why it cannot be, which is said, or
/// nothing. What is not to be kept is only looked at.
template <class Record>
Session::Outcome changeRecord(Session &session, Record changed,
                              const std::function<QString(Record &)> &body, bool isKept,
                              const QString &label)
{
    const QString why = body(changed);
    if (!why.isEmpty())
        session.complain(why);
    if (!why.isEmpty() || !isKept)
        return Session::Outcome::AgainstRules;
    return session.attempt(label, [&](Edit &edit) { edit.put(changed); });
}

} // namespace lastrivet::ui
