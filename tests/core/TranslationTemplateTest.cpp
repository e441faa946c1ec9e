// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/InWords.h"
#include "core/readiness/Ledger.h"
#include "core/readiness/Names.h"
#include "core/readiness/Readiness.h"
#include "core/readiness/Sentences.h"
#include "core/records/Description.h"
#include "core/records/Designation.h"
#include "core/today/Reminders.h"
#include "core/today/Today.h"
#include "tests/support/ProjectBuilder.h"
#include "tests/support/ReferenceLoad.h"

#include <catch2/catch.hpp>

#include <fstream>
#include <iterator>
#include <map>
#include <regex>
#include <set>

// What translators get is gathered from the sources by a script; here the running program says what
// it really uses.
namespace lastrivet {

namespace {

std::string unescaped(std::string text)
{
    for (const auto &[from, to] : std::map<std::string, std::string>{
             {"&apos;", "'"}, {"&quot;", "\""}, {"&lt;", "<"}, {"&gt;", ">"}, {"&amp;", "&"}}) {
        for (auto at = text.find(from); at != std::string::npos; at = text.find(from))
            text.replace(at, from.size(), to);
    }
    return text;
}

/// The texts of each context that the German file asks for.
const std::map<std::string, std::set<std::string>> &asked()
{
    static const auto found = [] {
        std::ifstream stream(LASTRIVET_SOURCE "/resources/translations/lastrivet_de.ts");
        const std::string all{std::istreambuf_iterator<char>(stream), {}};
        std::map<std::string, std::set<std::string>> texts;
        const std::regex part("<(name|source)>([^<]*)</");
        std::string context;
        for (std::sregex_iterator at(all.begin(), all.end(), part), end; at != end; ++at) {
            if ((*at)[1] == "name")
                context = (*at)[2];
            else
                texts[context].insert(unescaped((*at)[2]));
        }
        return texts;
    }();
    return found;
}

/// Where it is false: `python3 resources/translations/refresh.py .` brings in what is new.
bool isAsked(const std::string &context, std::string_view text)
{
    const auto found = asked().find(context);
    return found != asked().end() && found->second.contains(std::string(text));
}

void expect(const Message &message)
{
    INFO(message.pattern);
    CHECK(isAsked("Message", message.pattern));
}

template <class Word> void expectWords()
{
    for (const std::string_view each : Words<Word>::list) {
        INFO(each);
        CHECK(isAsked("Word", each));
    }
}

} // namespace

TEST_CASE("Translators are asked for every sentence that the load of ten lifetimes makes")
{
    test::ProjectBuilder load;
    test::fillReferenceLoad(load, 7, {500, 250, 1500, 1500, 500, 600});
    const auto answer = readiness::readiness(load.records, load.profile, test::on("2026-03-14"));
    std::set<std::string_view> said;
    const auto hear = [&](const Message &message) {
        if (said.insert(message.pattern).second)
            expect(message);
    };
    for (const auto &closing : answer.closings) {
        hear(readiness::stateInWords(closing.state));
        for (const auto &blocker : closing.blockers) {
            hear(readiness::sentence(blocker, load.records));
            hear(readiness::clearedBy(blocker, load.records, load.profile));
            hear(readiness::named(load.records, blocker.record));
        }
    }
    for (const auto &reminder : today::reminders(load.records, answer))
        hear(reminder.sentence);
    CHECK(said.size() > 20);
}

TEST_CASE("Translators are asked for every rule, state and kind of record")
{
    for (std::size_t i = 0; i < Words<readiness::Rule>::list.size(); ++i) {
        expect(readiness::demandOf(readiness::Rule(i)));
        expect(readiness::countedBy(readiness::Rule(i), 1));
        expect(readiness::countedBy(readiness::Rule(i), 2));
    }
    for (std::size_t i = 0; i < recordTypeCount; ++i)
        expect({noun(RecordType(i)), {}});
    for (std::size_t i = 0; i < Words<HoldPointKind>::list.size(); ++i)
        expect(packet::inWords(HoldPointKind(i)));
    for (std::size_t i = 0; i < Words<InspectionKind>::list.size(); ++i)
        expect(packet::inWords(InspectionKind(i)));
}

TEST_CASE("Translators are asked for the name of every field, and for every word")
{
    for (std::size_t i = 0; i < recordTypeCount; ++i) {
        for (const Field &field : describe(RecordType(i)).fields) {
            INFO(field.name);
            CHECK(isAsked("FieldName", field.name));
            for (const std::string_view each : field.words)
                CHECK(isAsked("Word", each));
        }
    }
    expectWords<readiness::State>();
    expectWords<Severity>();
}

} // namespace lastrivet
