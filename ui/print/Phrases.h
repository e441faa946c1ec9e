// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Moment.h"
#include "core/packet/FastenerEntry.h"
#include "ui/print/Wording.h"

#include <QString>

#include <optional>
#include <string>

namespace lastrivet::print {

/// "20 – 25", "≥ 20", "≤ 25", or nothing.
QString rangeOf(const Wording &words, const std::optional<double> &least,
                const std::optional<double> &most);
/// What a rule was taken from: the title of a document stays as it is, "practice of the trade" is
/// said in the paper's language.
QString sourceIn(const Wording &words, const std::string &source);
/// "27, drag 3", and below it "24 net", which is what the limits speak of; "torqued" where nobody
/// wrote down the value.
QString torqueIn(const Wording &words, const packet::FastenerEntry &fastener);
/// A line of its own that says who accepted something as it is, when, and why; or nothing.
QString acceptanceIn(const Wording &words, const std::optional<Moment> &on, const std::string &by,
                     const std::string &basis);

} // namespace lastrivet::print
