// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/verify/OpeningCheck.h"

#include "core/base/Clock.h"
#include "core/base/Error.h"
#include "core/base/Tongue.h"
#include "core/storage/Integrity.h"
#include "core/storage/Migration.h"
#include "core/storage/Opening.h"
#include "core/storage/Shape.h"

namespace lastrivet {

namespace {

void look(const storage::Database &database, const std::stop_token &stop,
          std::vector<Message> &damages)
{
    if (const auto damage = storage::firstDamageOf(database, stop))
        damages.push_back({"The database is damaged ({0}).", {*damage}});
    if (stop.stop_requested())
        return;
    if (const auto rows = storage::danglingRows(database); !rows.empty())
        damages.push_back({"The database is damaged: a row of {0} names a {1} that does not exist.",
                           {rows.front().table, rows.front().missing}});
    storage::Database made;
    storage::runSteps(made);
    if (const auto other = storage::differenceBetween(shapeOf(database), shapeOf(made)))
        damages.push_back(
            {"The tables of the database were altered by another program: {0}.", {nested(*other)}});
}

} // namespace

std::vector<Message> damagesAtOpening(const std::filesystem::path &folder, std::stop_token stop)
{
    std::vector<Message> damages;
    try {
        storage::withFaults([&] {
            const auto opening =
                storage::openDatabase(storage::ProjectFolder(folder), true, SystemClock{}.now());
            look(*opening.database, stop, damages);
        });
    } catch (const Fault &fault) {
        damages.push_back({"The project could not be looked over: {0}", {nested(fault.message())}});
    }
    return damages;
}

} // namespace lastrivet
