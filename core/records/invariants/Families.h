// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/invariants/Review.h"

// One function per family of invariants, each in the file of its name without "check". Each reports
// on the records under review and on others that became wrong because of them.
namespace lastrivet::invariants {

/// Required fields are filled, ids and whole numbers lie within bounds; for withdrawn records too.
void checkRequired(Review &review);
/// Every named id exists, and is live where its owner is.
void checkReferences(Review &review);
/// Numbers that people say are unique among all records of their type, codes among live parts: a
/// number stands on somebody's paper for good, the code of a part entered by mistake is free again.
void checkNumbers(Review &review);
/// Parts form a forest.
void checkTree(Review &review);
/// Steps follow each other without a cycle, and what follows a closing step inside says so.
void checkSteps(Review &review);
/// A closing is closed and opened in turn, each event not after a later one.
void checkEvents(Review &review);
/// What closings enclose, and how they lie inside each other.
void checkEnclosure(Review &review);
/// A factory-made closing has no hold points and no checks.
void checkFactory(Review &review);
/// Dates of one record keep their order.
void checkDates(Review &review);
/// A fact comes with what it needs: a correction, a person, a basis.
void checkNeeds(Review &review);
/// Who may verify, accept, sign and waive.
void checkAuthority(Review &review);
/// Minutes of log entries, of those who worked, and of flights.
void checkLog(Review &review);
/// Quantities, prices, estimates, cure times, landings and the size of a file are not below zero.
void checkCounts(Review &review);
/// The tenths of a credit task.
void checkCredit(Review &review);

} // namespace lastrivet::invariants
