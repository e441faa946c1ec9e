// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/balance/Numbers.h"
#include "core/project/Project.h"

#include <QString>

#include <memory>

namespace lastrivet::ui {

class ActLine;
class RecordForm;
class Session;

/// The choice of another unit in a form, and what was asked about the last one.
struct UnitChoice {
    /// A unit was chosen, and nothing is asked yet.
    bool isChosen = false;
    /// The question, the numbers that it is about, and the units that they were typed in.
    QString words;
    balance::Numbers asked;
    balance::Units from;
};

/// Follows the choices of units of weight and arm in the form.
std::shared_ptr<UnitChoice> unitChoice(RecordForm &form);

/// Numbers stay as they were typed when their unit is changed. Where there are any, this says what
/// that made of them, and asks whether they are to be converted. Of two units that are chosen one
/// after the other, the answer is about both.
void askToConvert(Session &session, ActLine &ask, UnitChoice &choice, const ChangeNotice &notice,
                  Id<Weighing> weighing);
void askToConvert(Session &session, ActLine &ask, UnitChoice &choice, const ChangeNotice &notice,
                  Id<LoadingCase> loading);
void askToConvert(Session &session, ActLine &ask, UnitChoice &choice, const ChangeNotice &notice,
                  Id<Envelope> envelope);
/// Of equipment a unit that was not known before changes nothing.
void askToConvert(Session &session, ActLine &ask, UnitChoice &choice, const ChangeNotice &notice,
                  Id<Equipment> equipment);

} // namespace lastrivet::ui
