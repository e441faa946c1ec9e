// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"

#include <memory>

namespace lastrivet::ui {

class ActLine;
class RecordForm;
class Session;

/// Becomes true when another unit of weight or arm is chosen in the form.
std::shared_ptr<bool> unitChosen(RecordForm &form);

/// Numbers stay as they were typed when their unit is changed. Where there are any, this says what
/// that made of them, and asks whether they are to be converted.
void askToConvert(Session &session, ActLine &ask, const ChangeNotice &notice,
                  Id<Weighing> weighing);
void askToConvert(Session &session, ActLine &ask, const ChangeNotice &notice,
                  Id<LoadingCase> loading);
void askToConvert(Session &session, ActLine &ask, const ChangeNotice &notice,
                  Id<Envelope> envelope);

} // namespace lastrivet::ui
