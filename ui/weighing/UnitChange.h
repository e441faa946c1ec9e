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

/// What was chosen in a form, and what is asked about it.
struct UnitChoice {
    bool is_made = false;
    /// What the last question was about, and the units in which it was typed.
    balance::Numbers asked;
    balance::Units from;
};

/// Is made when another unit of weight or arm is chosen in the form.
std::shared_ptr<UnitChoice> unitChoice(RecordForm &form);

/// Numbers stay as they were typed when their unit is changed. Where a choice was made and there
/// are any, this says what that made of them, and asks whether they are to be converted. While that
/// is asked of one unit, the other may be chosen, too: both are asked about then.
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
