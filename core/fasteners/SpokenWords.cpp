// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fasteners/SpokenWords.h"

#include "core/base/Trimmed.h"
#include "core/entry/Fold.h"

#include <algorithm>
#include <array>
#include <utility>

namespace lastrivet::fasteners {

namespace {

template <class Value> using Saying = std::pair<std::string_view, Value>;

constexpr std::array<Saying<Locking>, 17> lockings{{{"self-locking", Locking::SelfLockingNut},
                                                    {"self locking", Locking::SelfLockingNut},
                                                    {"selbstsichernd", Locking::SelfLockingNut},
                                                    {"autofreiné", Locking::SelfLockingNut},
                                                    {"split pin", Locking::SplitPin},
                                                    {"cotter", Locking::SplitPin},
                                                    {"splint", Locking::SplitPin},
                                                    {"goupille", Locking::SplitPin},
                                                    {"safety wire", Locking::SafetyWire},
                                                    {"sicherungsdraht", Locking::SafetyWire},
                                                    {"fil frein", Locking::SafetyWire},
                                                    {"jam nut", Locking::JamNut},
                                                    {"kontermutter", Locking::JamNut},
                                                    {"contre-écrou", Locking::JamNut},
                                                    {"lock tab", Locking::LockTab},
                                                    {"sicherungsblech", Locking::LockTab},
                                                    {"thread locker", Locking::ThreadLocker}}};
constexpr std::array<std::string_view, 4> dragWords{"drag ", "laufmoment ", "klemmmoment ",
                                                    "frottement "};
constexpr std::array<std::string_view, 3> shearWords{"shear", "scher", "cisaillement"};
constexpr std::array<std::string_view, 3> tensionWords{"tension", "zug", "traction"};

bool isAny(std::string_view word, const auto &words)
{
    return std::find(words.begin(), words.end(), word) != words.end();
}

} // namespace

std::optional<Locking> lockingSaid(std::string_view words)
{
    const auto small = entry::folded(words);
    for (const auto &[word, locking] : lockings) {
        if (small.starts_with(word))
            return locking;
    }
    return std::nullopt;
}

std::optional<workshop::Nut> nutSaid(std::string_view words)
{
    const auto small = entry::folded(words);
    if (isAny(small, shearWords))
        return workshop::Nut::Shear;
    return isAny(small, tensionWords) ? std::optional(workshop::Nut::Tension) : std::nullopt;
}

std::optional<TorqueUnit> torqueUnitSaid(std::string_view words)
{
    const auto word = entry::folded(words);
    if (word == "in-lb" || word == "in lb" || word == "inlb" || word == "in-lbs")
        return TorqueUnit::InchPounds;
    if (word == "ft-lb" || word == "ft lb" || word == "ftlb" || word == "ft-lbs")
        return TorqueUnit::FootPounds;
    if (word == "n-m" || word == "nm" || word == "n m" || word == "n·m")
        return TorqueUnit::NewtonMetres;
    return std::nullopt;
}

std::optional<std::string_view> behindDrag(std::string_view words)
{
    const auto small = entry::folded(words);
    for (const auto word : dragWords) {
        if (small.starts_with(word))
            return trimmed(words.substr(word.size()));
    }
    return std::nullopt;
}

} // namespace lastrivet::fasteners
