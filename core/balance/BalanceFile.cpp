// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/balance/BalanceFile.h"

#include "core/base/Tongue.h"
#include "core/profiles/ProfileJson.h"
#include "core/profiles/StrictJson.h"

#include <algorithm>
#include <array>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

namespace lastrivet::balance {

namespace {

using nlohmann::json;

constexpr std::array<std::string_view, 2> weightUnits{"lb", "kg"};
constexpr std::array<std::string_view, 5> armUnits{"in", "mm", "cm", "m", "ft"};

[[noreturn]] void refuse(const std::string &pointer, const std::string &what)
{
    throw ProfileFault{pointer, verbatim(what)};
}

void requireOnly(const json &object, const std::string &pointer,
                 std::initializer_list<std::string_view> names)
{
    if (!object.is_object())
        refuse(pointer, "is no object");
    for (const auto &[name, value] : object.items()) {
        if (std::find(names.begin(), names.end(), name) == names.end())
            refuse(pointer + "/" + profiles::pointerStep(name), "is not known here");
    }
}

const json &member(const json &object, const std::string &pointer, const char *name)
{
    const auto found = object.find(name);
    if (found == object.end())
        refuse(pointer + "/" + name, "is missing");
    return *found;
}

double number(const json &object, const std::string &pointer, const char *name)
{
    const auto &value = member(object, pointer, name);
    if (!value.is_number())
        refuse(pointer + "/" + name, "is no number");
    return value.get<double>();
}

template <std::size_t Count>
std::string unit(const json &object, const char *name,
                 const std::array<std::string_view, Count> &known)
{
    const auto &value = member(object, "", name);
    if (!value.is_string() ||
        std::find(known.begin(), known.end(), value.get_ref<const std::string &>()) == known.end())
        refuse(std::string("/") + name, fmt::format("is none of {}", fmt::join(known, ", ")));
    return value.get<std::string>();
}

Item itemOf(const json &object, const std::string &pointer)
{
    for (const char *own : {"weight_unit", "arm_unit", "unit"}) {
        if (object.is_object() && object.contains(own))
            refuse(pointer + "/" + own,
                   "is not known here: all items share the weight_unit and arm_unit of the file");
    }
    requireOnly(object, pointer, {"name", "weight", "arm"});
    Item item;
    const auto name = object.find("name");
    if (name != object.end() && !name->is_string())
        refuse(pointer + "/name", "is no text");
    item.name = name == object.end() ? pointer : name->get<std::string>();
    item.weight = number(object, pointer, "weight");
    item.arm = number(object, pointer, "arm");
    return item;
}

std::optional<Chord> chordOf(const json &object)
{
    const auto chord = object.find("mac");
    if (chord == object.end() || chord->is_null())
        return std::nullopt;
    requireOnly(*chord, "/mac", {"lemac", "length"});
    return Chord{number(*chord, "/mac", "lemac"), number(*chord, "/mac", "length")};
}

} // namespace

Result<Question, Message> readQuestion(std::string_view text)
{
    try {
        const auto object = profiles::parseStrictly(text);
        requireOnly(object, "", {"weight_unit", "arm_unit", "items", "mac"});
        Question question;
        question.weight_unit = unit(object, "weight_unit", weightUnits);
        question.arm_unit = unit(object, "arm_unit", armUnits);
        const auto &items = member(object, "", "items");
        if (!items.is_array())
            refuse("/items", "is no list");
        for (std::size_t i = 0; i < items.size(); ++i)
            question.items.push_back(itemOf(items[i], fmt::format("/items/{}", i)));
        question.chord = chordOf(object);
        return question;
    } catch (const ProfileFault &fault) {
        const std::string place = fault.pointer.empty() ? "It" : fault.pointer;
        return Message{"{0}", {place + " " + english(fault.what) + "."}};
    }
}

} // namespace lastrivet::balance
