// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/records/Vocabulary.h"

namespace lastrivet {

/// What people call a hold point of the kind: "pre-cover inspection".
Message kindName(HoldPointKind kind);
/// What people call a visit of the kind: as the hold point that is signed there, where one is.
Message kindName(InspectionKind kind);

} // namespace lastrivet
