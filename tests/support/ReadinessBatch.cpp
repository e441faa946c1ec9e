// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
//
// readiness_batch DOC.json MOMENT…: the readiness answers of a document at these moments, as one
// JSON array. Without a database and one process for all of them, so that thousands of random
// projects can be compared in minutes.
#include "core/answers/ReadinessJson.h"
#include "core/base/Error.h"
#include "core/exchange/ImportPlan.h"
#include "core/exchange/InputText.h"
#include "core/profiles/HoldPoints.h"
#include "core/profiles/ProfileLibrary.h"
#include "core/readiness/Readiness.h"

#include <exception>
#include <iostream>
#include <span>
#include <string>

using namespace lastrivet;

namespace {

void require(const exchange::InputErrors &errors, std::string_view file)
{
    if (!errors.empty())
        throw UnreadableInput(exchange::english(errors.front(), file));
}

/// As an import does: those that the profile asks for, unless the document lists them all.
void giveHoldPoints(Records &records, const Profile &profile)
{
    std::int64_t id = records.hold_points.greatestId();
    for (const Closing &closing : records.closings) {
        for (HoldPoint &point : holdPointsFor(closing, records, profile)) {
            point.id = Id<HoldPoint>{++id};
            records.hold_points.put(std::move(point));
        }
    }
}

void answer(const std::string &file, std::span<char *> moments)
{
    const auto reading = exchange::readDocument(exchange::readInputFile(file));
    require(reading.errors, file);
    const Profile profile =
        reading.document.profile
            ? *reading.document.profile
            : ProfileLibrary::standard().profile(reading.document.records.project.profile);
    auto plan = exchange::planImport(reading, profile);
    require(plan.errors, file);
    if (!reading.document.hold_points_given)
        giveHoldPoints(plan.merged, profile);
    const char *separator = "[";
    for (const char *text : moments) {
        const auto moment = Moment::parse(text);
        if (!moment)
            throw UnreadableInput(std::string(text) + " is no moment.");
        std::cout << separator;
        answers::writeJson(readiness::readiness(plan.merged, profile, *moment), plan.merged,
                           profile, std::cout);
        separator = ",";
    }
    std::cout << (moments.empty() ? "[]\n" : "]\n");
}

} // namespace

int main(int count, char **arguments)
{
    try {
        if (count < 2)
            throw UnreadableInput("usage: readiness_batch DOC.json MOMENT...");
        const std::span all(arguments, std::size_t(count));
        answer(all[1], all.subspan(2));
    } catch (const std::exception &fault) {
        std::cerr << "readiness_batch: " << fault.what() << '\n';
        return 1;
    }
    return 0;
}
