// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string_view>

namespace lastrivet::storage {

/// One numbered step of the schema: the text of `resources/schema/NNN.sql`.
struct SchemaStep {
    int number;
    std::string_view statements;
};

/// All steps, from 1 on without a gap.
std::span<const SchemaStep> schemaSteps();

} // namespace lastrivet::storage
