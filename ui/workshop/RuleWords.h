// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <string_view>

namespace lastrivet::ui {

/// A rule or basis of the workshop tables in words: "mil_minimum" → "military minimum". What has no
/// words here is shown as it stands in the table.
QString ruleWords(std::string_view key);

/// How far a number was checked: "read in two places"; a limit of the project's own is "the
/// project's own".
QString verifiedWords(std::string_view verified);

/// The mark of a number that a limit of the project's own stands in place of: "set aside; " and how
/// well it is known.
QString asideWords(const QString &known);

} // namespace lastrivet::ui
