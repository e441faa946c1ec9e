// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fasteners/SpokenWords.h"

#include "core/base/CaseFold.h"
#include "core/base/Digits.h"
#include "core/base/Trimmed.h"

#include <algorithm>
#include <array>
#include <string>
#include <utility>

namespace lastrivet::fasteners {

namespace {

template <class Value> using Saying = std::pair<std::string_view, Value>;

constexpr std::array<Saying<Locking>, 26> lockings{{{"self-locking", Locking::SelfLockingNut},
                                                    {"self locking", Locking::SelfLockingNut},
                                                    {"selbstsichernd", Locking::SelfLockingNut},
                                                    {"stoppmutter", Locking::SelfLockingNut},
                                                    {"autofreiné", Locking::SelfLockingNut},
                                                    {"écrou autofreiné", Locking::SelfLockingNut},
                                                    {"split pin", Locking::SplitPin},
                                                    {"cotter", Locking::SplitPin},
                                                    {"splint", Locking::SplitPin},
                                                    {"goupille", Locking::SplitPin},
                                                    {"safety wire", Locking::SafetyWire},
                                                    {"lockwire", Locking::SafetyWire},
                                                    {"lock wire", Locking::SafetyWire},
                                                    {"sicherungsdraht", Locking::SafetyWire},
                                                    {"drahtsicherung", Locking::SafetyWire},
                                                    {"fil frein", Locking::SafetyWire},
                                                    {"fil à freiner", Locking::SafetyWire},
                                                    {"jam nut", Locking::JamNut},
                                                    {"kontermutter", Locking::JamNut},
                                                    {"contre-écrou", Locking::JamNut},
                                                    {"lock tab", Locking::LockTab},
                                                    {"sicherungsblech", Locking::LockTab},
                                                    {"thread locker", Locking::ThreadLocker},
                                                    {"schraubensicherung", Locking::ThreadLocker},
                                                    {"frein filet", Locking::ThreadLocker},
                                                    {"frein-filet", Locking::ThreadLocker}}};
constexpr std::array<std::string_view, 4> dragWords{"drag", "laufmoment", "klemmmoment",
                                                    "frottement"};
constexpr std::array<std::string_view, 10> shearWords{
    "shear",        "shear nut",   "in shear",     "scher",           "scherung",
    "auf scherung", "schermutter", "cisaillement", "en cisaillement", "écrou de cisaillement"};
constexpr std::array<std::string_view, 9> tensionWords{
    "tension",  "tension nut", "in tension",       "zug", "auf zug", "zugmutter",
    "traction", "en traction", "écrou de traction"};

bool isAny(std::string_view word, const auto &words)
{
    return std::find(words.begin(), words.end(), word) != words.end();
}

bool isTorqueUnit(std::string_view words)
{
    return torqueUnitSaid(words) || workshop::isForeignTorqueUnit(words);
}

} // namespace

std::optional<Locking> lockingSaid(std::string_view words)
{
    const auto small = folded(words);
    for (const auto &[word, locking] : lockings) {
        if (small.starts_with(word))
            return locking;
    }
    return std::nullopt;
}

std::optional<workshop::Nut> nutSaid(std::string_view words)
{
    const auto small = folded(words);
    if (isAny(small, shearWords))
        return workshop::Nut::Shear;
    return isAny(small, tensionWords) ? std::optional(workshop::Nut::Tension) : std::nullopt;
}

bool saysTorque(std::string_view words)
{
    for (std::size_t at = 0; at < words.size(); ++at) {
        if (!isDigit(words[at]) || (at + 1 < words.size() && isDigit(words[at + 1])))
            continue;
        const auto behind = trimmed(words.substr(at + 1));
        // "in-lb" is one word, "in lb" two, and more may follow.
        const auto one = std::min(behind.find(' '), behind.size());
        const auto two =
            std::min(behind.find(' ', std::min(one + 1, behind.size())), behind.size());
        if (isTorqueUnit(behind.substr(0, one)) || isTorqueUnit(behind.substr(0, two)))
            return true;
    }
    return false;
}

std::optional<std::string_view> behindDrag(std::string_view words)
{
    const auto small = folded(words);
    for (const auto word : dragWords) {
        if (!small.starts_with(word) || small.size() == word.size())
            continue;
        const char next = small[word.size()];
        if (next == ' ' || next == ':')
            return words.substr(std::min(words.find_first_not_of(" :", word.size()), words.size()));
    }
    return std::nullopt;
}

} // namespace lastrivet::fasteners
