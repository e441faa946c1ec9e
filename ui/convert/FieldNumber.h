// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/base/Result.h"
#include "core/records/Description.h"

#include <QString>

#include <functional>

namespace lastrivet::ui {

using NumberReader = std::function<Result<double, Message>(const QString &typed)>;

/// How a number that is typed into the field of such a record is read: a weight and an arm of
/// equipment also with the record's own unit behind them, all others without any.
NumberReader numberReader(const Field &field, const void *record);

} // namespace lastrivet::ui
