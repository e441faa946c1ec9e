// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/DocumentWriter.h"
#include "core/exchange/ImportPlan.h"
#include "tests/fuzz/Targets.h"
#include "tests/support/WingProject.h"

#include <sstream>

namespace lastrivet::fuzz {

namespace {

std::string written(const Records &records)
{
    std::ostringstream text;
    exchange::writeDocument(records, text);
    return std::move(text).str();
}

} // namespace

/// What can be taken in comes out again in the same words.
void document(Input input)
{
    static const test::WingProject wing;
    const auto reading = exchange::readDocument(textOf(input));
    exchange::planImport(reading, wing.records, wing.profile);
    const auto plan =
        exchange::planImport(reading, reading.document.profile.value_or(wing.profile));
    for (const auto &error : plan.errors)
        promised(!exchange::english(error, "records.json").empty());
    if (!plan.errors.empty())
        return;
    const std::string text = written(plan.merged);
    const auto again = exchange::readDocument(text);
    promised(again.errors.empty() && again.isComplete);
    promised(written(again.document.records) == text);
}

} // namespace lastrivet::fuzz
