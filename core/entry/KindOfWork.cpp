// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/KindOfWork.h"

#include "core/base/Words.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace lastrivet::entry {

namespace {

struct Verb {
    std::string_view beginning;
    WorkKind kind;
};

/// Verbs of the workshop by the letters their forms share; rework first, because what is drilled
/// out or made again is not new work.
constexpr std::array verbs{
    Verb{"redo", WorkKind::Rework},        Verb{"redid", WorkKind::Rework},
    Verb{"rework", WorkKind::Rework},      Verb{"remade", WorkKind::Rework},
    Verb{"replac", WorkKind::Rework},      Verb{"repair", WorkKind::Rework},
    Verb{"inspect", WorkKind::Inspection}, Verb{"measur", WorkKind::Inspection},
    Verb{"deburr", WorkKind::Fabrication}, Verb{"drill", WorkKind::Fabrication},
    Verb{"dimpl", WorkKind::Fabrication},  Verb{"cut", WorkKind::Fabrication},
    Verb{"bent", WorkKind::Fabrication},   Verb{"ream", WorkKind::Fabrication},
    Verb{"weld", WorkKind::Fabrication},   Verb{"laid", WorkKind::Fabrication},
    Verb{"countersink", WorkKind::Fabrication},
    Verb{"countersunk", WorkKind::Fabrication},
    Verb{"rivet", WorkKind::Assembly},     Verb{"bolt", WorkKind::Assembly},
    Verb{"torqu", WorkKind::Assembly},     Verb{"install", WorkKind::Assembly},
    Verb{"glued", WorkKind::Assembly},     Verb{"bonded", WorkKind::Assembly},
    Verb{"fitted", WorkKind::Assembly},    Verb{"assembl", WorkKind::Assembly},
    Verb{"paint", WorkKind::Finishing},    Verb{"prime", WorkKind::Finishing},
    Verb{"priming", WorkKind::Finishing},  Verb{"sand", WorkKind::Finishing},
    Verb{"order", WorkKind::Planning},     Verb{"plann", WorkKind::Planning},
    Verb{"stud", WorkKind::Planning},
};

} // namespace

std::optional<WorkKind> kindNamed(const std::string &word)
{
    return parseWord<WorkKind>(word);
}

std::optional<WorkKind> kindGuessed(const std::vector<std::string> &note)
{
    for (std::size_t i = 0; i + 1 < note.size(); ++i) {
        if (note[i].starts_with("drill") && note[i + 1] == "out")
            return WorkKind::Rework;
    }
    for (const std::string &word : note) {
        const auto verb = std::ranges::find_if(
            verbs, [&](const Verb &known) { return word.starts_with(known.beginning); });
        if (verb != verbs.end())
            return verb->kind;
    }
    return std::nullopt;
}

} // namespace lastrivet::entry
