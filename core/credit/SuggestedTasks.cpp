// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/credit/SuggestedTasks.h"

#include "core/base/Error.h"
#include "core/base/Words.h"

#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>

namespace lastrivet::credit {

namespace {

using nlohmann::json;
namespace fs = std::filesystem;

fs::path file()
{
    const fs::path beside = fs::path(LASTRIVET_RESOURCES) / "credit" / "tasks.json";
    std::error_code unreadable;
    return fs::exists(beside, unreadable) ? beside : "/usr/share/lastrivet/credit/tasks.json";
}

SuggestedTasks classOf(const json &object, const json &whole)
{
    SuggestedTasks tasks;
    tasks.key = object.at("key").get<std::string>();
    tasks.title = object.at("title").get<std::string>();
    for (const json &section : object.at("sections"))
        tasks.sections.push_back({section.at("title").get<std::string>(),
                                  section.at("tasks").get<std::vector<std::string>>()});
    tasks.source = whole.at("source").get<std::string>();
    tasks.mark = parseWord<Mark>(whole.at("mark").get<std::string>()).value_or(Mark::Memory);
    return tasks;
}

} // namespace

std::vector<SuggestedTasks> suggestedTasks()
{
    const fs::path place = file();
    try {
        std::ifstream stream(place, std::ios::binary);
        const json whole = json::parse(stream);
        std::vector<SuggestedTasks> all;
        for (const json &object : whole.at("classes"))
            all.push_back(classOf(object, whole));
        return all;
    } catch (const json::exception &) {
        throw UnreadableInput(Message{"{0} could not be read.", {place.string()}});
    }
}

} // namespace lastrivet::credit
