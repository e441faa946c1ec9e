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

/// Verbs of the workshop, English, then German and French, by the letters their forms share; rework
/// first, because what is drilled out or made again is not new work.
constexpr std::array verbs{
    Verb{"redo", WorkKind::Rework},
    Verb{"redid", WorkKind::Rework},
    Verb{"rework", WorkKind::Rework},
    Verb{"remade", WorkKind::Rework},
    Verb{"replac", WorkKind::Rework},
    Verb{"repair", WorkKind::Rework},
    Verb{"inspect", WorkKind::Inspection},
    Verb{"measur", WorkKind::Inspection},
    Verb{"deburr", WorkKind::Fabrication},
    Verb{"drill", WorkKind::Fabrication},
    Verb{"dimpl", WorkKind::Fabrication},
    Verb{"cut", WorkKind::Fabrication},
    Verb{"bent", WorkKind::Fabrication},
    Verb{"ream", WorkKind::Fabrication},
    Verb{"weld", WorkKind::Fabrication},
    Verb{"laid", WorkKind::Fabrication},
    Verb{"countersink", WorkKind::Fabrication},
    Verb{"countersunk", WorkKind::Fabrication},
    Verb{"rivet", WorkKind::Assembly},
    Verb{"bolt", WorkKind::Assembly},
    Verb{"torqu", WorkKind::Assembly},
    Verb{"install", WorkKind::Assembly},
    Verb{"glued", WorkKind::Assembly},
    Verb{"bonded", WorkKind::Assembly},
    Verb{"fitted", WorkKind::Assembly},
    Verb{"assembl", WorkKind::Assembly},
    Verb{"paint", WorkKind::Finishing},
    Verb{"prime", WorkKind::Finishing},
    Verb{"priming", WorkKind::Finishing},
    Verb{"sand", WorkKind::Finishing},
    Verb{"order", WorkKind::Planning},
    Verb{"plann", WorkKind::Planning},
    Verb{"stud", WorkKind::Planning},
    Verb{"repariert", WorkKind::Rework},
    Verb{"ausgetauscht", WorkKind::Rework},
    Verb{"geprüft", WorkKind::Inspection},
    Verb{"gemessen", WorkKind::Inspection},
    Verb{"gebohrt", WorkKind::Fabrication},
    Verb{"gebogen", WorkKind::Fabrication},
    Verb{"zugeschnitten", WorkKind::Fabrication},
    Verb{"geschweißt", WorkKind::Fabrication},
    Verb{"gedimpelt", WorkKind::Fabrication},
    Verb{"versenkt", WorkKind::Fabrication},
    Verb{"vernietet", WorkKind::Assembly},
    Verb{"verklebt", WorkKind::Assembly},
    Verb{"montiert", WorkKind::Assembly},
    Verb{"verschliffen", WorkKind::Finishing},
    Verb{"bestellt", WorkKind::Planning},
    Verb{"entgratet", WorkKind::Fabrication},
    Verb{"geschnitten", WorkKind::Fabrication},
    Verb{"gesenkt", WorkKind::Fabrication},
    Verb{"genietet", WorkKind::Assembly},
    Verb{"verschraubt", WorkKind::Assembly},
    Verb{"geklebt", WorkKind::Assembly},
    Verb{"eingebaut", WorkKind::Assembly},
    Verb{"lackiert", WorkKind::Finishing},
    Verb{"geschliffen", WorkKind::Finishing},
    Verb{"grundiert", WorkKind::Finishing},
    Verb{"ersetzt", WorkKind::Rework},
    Verb{"répar", WorkKind::Rework},
    Verb{"vérifi", WorkKind::Inspection},
    Verb{"mesur", WorkKind::Inspection},
    Verb{"percé", WorkKind::Fabrication},
    Verb{"perçage", WorkKind::Fabrication},
    Verb{"plié", WorkKind::Fabrication},
    Verb{"soudé", WorkKind::Fabrication},
    Verb{"fraisé", WorkKind::Fabrication},
    Verb{"ébavur", WorkKind::Fabrication},
    Verb{"découp", WorkKind::Fabrication},
    Verb{"vissé", WorkKind::Assembly},
    Verb{"collé", WorkKind::Assembly},
    Verb{"boulonn", WorkKind::Assembly},
    Verb{"monté", WorkKind::Assembly},
    Verb{"peint", WorkKind::Finishing},
    Verb{"poncé", WorkKind::Finishing},
    Verb{"ponçage", WorkKind::Finishing},
    Verb{"remplac", WorkKind::Rework},
    Verb{"commandé", WorkKind::Planning},
};

/// Other words for kinds of work, with those of German and French: those on the screen are among
/// them.
constexpr std::array names{
    Verb{"painting", WorkKind::Finishing},      Verb{"fertigung", WorkKind::Fabrication},
    Verb{"montage", WorkKind::Assembly},        Verb{"assemblage", WorkKind::Assembly},
    Verb{"lackieren", WorkKind::Finishing},     Verb{"lackierung", WorkKind::Finishing},
    Verb{"finition", WorkKind::Finishing},      Verb{"peinture", WorkKind::Finishing},
    Verb{"nacharbeit", WorkKind::Rework},       Verb{"reprise", WorkKind::Rework},
    Verb{"retouche", WorkKind::Rework},         Verb{"prüfung", WorkKind::Inspection},
    Verb{"kontrolle", WorkKind::Inspection},    Verb{"contrôle", WorkKind::Inspection},
    Verb{"planung", WorkKind::Planning},        Verb{"préparation", WorkKind::Planning},
    Verb{"herstellung", WorkKind::Fabrication}, Verb{"zusammenbau", WorkKind::Assembly},
    Verb{"oberfläche", WorkKind::Finishing},    Verb{"sonstiges", WorkKind::Other},
    Verb{"planification", WorkKind::Planning},
};

} // namespace

std::optional<WorkKind> kindNamed(const std::string &word)
{
    const auto name = std::ranges::find(names, word, &Verb::beginning);
    return name != names.end() ? std::optional(name->kind) : parseWord<WorkKind>(word);
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
