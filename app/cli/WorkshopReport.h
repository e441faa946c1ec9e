// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/balance/Balance.h"
#include "core/workshop/Rivet.h"
#include "core/workshop/Torque.h"
#include "core/workshop/Wire.h"

#include <ostream>

namespace lastrivet::cli {

/// Said after every number of the workshop.
inline constexpr std::string_view workshopCaution =
    "General practice: the maker's drawings and manuals come first, and the local rules decide.\n";

void writeJson(const workshop::Torque &torque, std::ostream &out);
void print(const workshop::Torque &torque, std::ostream &out);

void writeJson(const workshop::Rivet &rivet, std::ostream &out);
void print(const workshop::Rivet &rivet, std::ostream &out);

/// Edge distances and pitches alone.
void writeEdgeJson(double diameter, std::ostream &out);
void printEdge(double diameter, std::ostream &out);

void writeJson(const workshop::WireRun &run, std::ostream &out);
void print(const workshop::WireRun &run, std::ostream &out);

/// A table as it was published, row by row, under its own column names.
void writeJson(const workshop::WorkshopTable &table, std::ostream &out);
void print(const workshop::WorkshopTable &table, std::ostream &out);

void writeJson(const balance::Balance &sum, std::ostream &out);
void print(const balance::Balance &sum, const std::string &weightUnit, const std::string &armUnit,
           std::ostream &out);

} // namespace lastrivet::cli
