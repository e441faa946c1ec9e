// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/records/Description.h"

#include <string>
#include <string_view>

namespace lastrivet::exchange {

/// Sets a scalar field from a value of a file, in which moments are texts; false when the field
/// cannot hold it. A null leaves a field at its default.
bool assignValue(const Field &field, void *owner, const Scalar &value);
/// The same for one item of a set, or of numbers.
bool addValue(const Field &field, void *owner, const Scalar &value);

/// Why a field cannot hold a value; `shown` is how the sentence shows the value.
Message mismatch(const Field &field, std::string shown);

/// A value as a sentence can show it.
std::string shown(const Scalar &value);
/// A text from a file in quotation marks, shortened.
std::string shown(std::string_view text);

} // namespace lastrivet::exchange
