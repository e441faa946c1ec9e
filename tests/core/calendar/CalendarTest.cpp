// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Error.h"
#include "core/base/TemporaryFolder.h"
#include "core/calendar/CalendarFile.h"
#include "core/calendar/UtcTime.h"

#include <catch2/catch.hpp>

using namespace lastrivet;

namespace {

Moment at(std::string_view text)
{
    return *Moment::parse(text);
}

calendar::FileFacts facts()
{
    return {"0123456789abcdef", "Larkspur", at("2026-03-14T15:20"), "Europe/Berlin", std::nullopt};
}

std::vector<std::string> linesOf(const std::string &text)
{
    std::vector<std::string> lines;
    for (std::size_t from = 0; from < text.size();) {
        const std::size_t end = text.find("\r\n", from);
        REQUIRE(end != text.npos);
        lines.push_back(text.substr(from, end - from));
        from = end + 2;
    }
    return lines;
}

/// RFC 5545, 3.1: a line break before a space or tab is taken out with it.
std::string unfolded(std::string text)
{
    for (std::size_t at = text.find("\r\n "); at != text.npos; at = text.find("\r\n ", at))
        text.erase(at, 3);
    return text;
}

Records workshop()
{
    Records records;
    records.project.name = "Larkspur";
    records.inspections.put({.id = Id<Inspection>{1},
                             .kind = InspectionKind::PreCover,
                             .planned_for = at("2026-04-02T14:30"),
                             .place = "Hangar 3"});
    records.inspections.put(
        {.id = Id<Inspection>{2}, .planned_for = at("2026-04-03"), .held_on = at("2026-03-01")});
    records.inspections.put({.id = Id<Inspection>{3},
                             .planned_for = at("2026-04-03"),
                             .cancelled_on = at("2026-03-01")});
    records.material_lots.put({.id = Id<MaterialLot>{4},
                               .name = "Tank sealant",
                               .lot_number = "S-17",
                               .expires_on = at("2026-05-01")});
    records.material_lots.put(
        {.id = Id<MaterialLot>{5}, .name = "Old resin", .expires_on = at("2025-05-01")});
    records.tools.put(
        {.id = Id<Tool>{6},
         .name = "Torque wrench",
         .needs_calibration = true,
         .calibrations = {{.calibrated_on = at("2025-06-01"), .due_on = at("2026-06-01")},
                          {.calibrated_on = at("2024-06-01"), .due_on = at("2025-06-01")}}});
    return records;
}

} // namespace

TEST_CASE("The calendar holds planned visits, days of expiry, and the next calibration of tools")
{
    const auto entries = calendar::entries(workshop(), {}, at("2026-03-14"));
    REQUIRE(entries.size() == 3);
    CHECK(entries[0].record == RecordRef{RecordType::Inspection, 1});
    CHECK(entries[0].when == at("2026-04-02T14:30"));
    CHECK(entries[0].summary == "Pre-cover inspection");
    CHECK(entries[0].place == "Hangar 3");
    CHECK(entries[1].summary == "Expires: Tank sealant, lot S-17");
    CHECK(entries[2].when == at("2026-06-01"));
}

TEST_CASE("A paper that expires is in the calendar until a newer one is here")
{
    Records records = workshop();
    records.certificate_documents.put({.id = Id<CertificateDocument>{7},
                                       .key = "permit",
                                       .number = "P 12",
                                       .received_on = at("2026-01-05"),
                                       .expires_on = at("2026-04-10")});
    Profile profile;
    profile.documents.emplace_back();
    profile.documents.back().key = "permit";
    profile.documents.back().title = "Permit for trial flights";
    const auto first = calendar::entries(records, profile, at("2026-03-14"));
    REQUIRE(first.size() == 4);
    CHECK(first[1].kind == calendar::Kind::Expiry);
    CHECK(first[1].when == at("2026-04-10"));
    CHECK(first[1].summary == "Expires: Permit for trial flights");
    CHECK(first[1].description == "P 12");
    records.certificate_documents.put({.id = Id<CertificateDocument>{8},
                                       .key = "permit",
                                       .received_on = at("2026-03-10"),
                                       .expires_on = at("2027-04-10")});
    const auto second = calendar::entries(records, profile, at("2026-03-14"));
    REQUIRE(second.size() == 4);
    CHECK(second[3].when == at("2027-04-10"));
    CHECK(second[3].record == RecordRef{RecordType::CertificateDocument, 8});
}

TEST_CASE("The newest calibration says when a tool is due, though an older one may say later")
{
    Records records = workshop();
    Tool tool = *records.find(Id<Tool>{6});
    tool.calibrations[1].due_on = at("2027-06-01");
    records.tools.put(tool);
    CHECK(calendar::entries(records, {}, at("2026-03-14"))[2].when == at("2026-06-01"));
}

TEST_CASE("The calendar is said in the tongue that is asked for; names stay as they are")
{
    Tongue tongue;
    tongue.pattern = [](std::string_view english) {
        if (english == "Expires: {0}, lot {1}")
            return std::string("Läuft ab: {0}, Charge {1}");
        if (english == "Calibration due: {0}")
            return std::string("Kalibrierung fällig: {0}");
        return english == "pre-cover inspection" ? std::string("prüfung vor dem Schließen")
                                                 : std::string(english);
    };
    const auto entries = calendar::entries(workshop(), {}, at("2026-03-14"), tongue);
    REQUIRE(entries.size() == 3);
    CHECK(entries[0].summary == "Prüfung vor dem Schließen");
    CHECK(entries[1].summary == "Läuft ab: Tank sealant, Charge S-17");
    CHECK(entries[2].summary == "Kalibrierung fällig: Torque wrench");
}

TEST_CASE("What ran out stays in the calendar for thirty days")
{
    CHECK(calendar::entries(workshop(), {}, at("2026-05-31")).size() == 2);
    CHECK(calendar::entries(workshop(), {}, at("2026-06-01")).size() == 1);
}

// RFC 5545, 3.1: lines end in CR LF and are no longer than 75 octets, a character never torn.
TEST_CASE("Long lines are folded at 75 octets, between characters")
{
    std::string text;
    for (int i = 0; i < 60; ++i)
        text += i % 3 ? "ö" : "x";
    const std::string line = calendar::contentLine("SUMMARY", text);
    for (const std::string &piece : linesOf(line)) {
        CHECK(piece.size() <= 75);
        // Not a continuation byte of UTF-8 behind the space that marks the fold.
        CHECK((static_cast<unsigned char>(piece[piece[0] == ' ' ? 1 : 0]) & 0xC0) != 0x80);
    }
    CHECK(linesOf(line).size() == 2);
    CHECK(unfolded(line) == "SUMMARY:" + text + "\r\n");
}

TEST_CASE("A line of 75 octets is not folded, one of 76 is")
{
    CHECK(linesOf(calendar::contentLine("SUMMARY", std::string(67, 'x'))).size() == 1);
    CHECK(linesOf(calendar::contentLine("SUMMARY", std::string(68, 'x'))).size() == 2);
}

// RFC 5545, 3.3.11.
TEST_CASE("Commas, semicolons, backslashes and line breaks are escaped, control characters dropped")
{
    CHECK(calendar::contentLine("SUMMARY", "a,b;c\\d\ne:f\x07\r") ==
          "SUMMARY:a\\,b\\;c\\\\d\\ne:f\r\n");
}

// RFC 5545, 3.3.5 (form 2) and 3.6.1: a timed event in UTC, a day of its own as VALUE=DATE.
TEST_CASE("Times are written in UTC, days as days")
{
    const std::string text =
        calendar::calendarText(calendar::entries(workshop(), {}, at("2026-03-14")), facts());
    CHECK(text.find("DTSTART:20260402T123000Z\r\n") != text.npos);
    CHECK(text.find("DTSTART;VALUE=DATE:20260501\r\n") != text.npos);
    CHECK(text.find("DTSTAMP:20260314T142000Z\r\n") != text.npos);
}

TEST_CASE("The same record keeps its UID from file to file, other projects have others")
{
    const auto entries = calendar::entries(workshop(), {}, at("2026-03-14"));
    calendar::FileFacts later = facts();
    later.made_on = at("2026-03-20T08:00");
    const auto uids = [](const std::string &text) {
        std::vector<std::string> found;
        for (const std::string &line : linesOf(unfolded(text))) {
            if (line.starts_with("UID:"))
                found.push_back(line);
        }
        return found;
    };
    const auto first = uids(calendar::calendarText(entries, facts()));
    CHECK(first == uids(calendar::calendarText(entries, later)));
    CHECK(first[0] == "UID:lastrivet-0123456789abcdef-inspection-1");
    later.project_key = "fedcba9876543210";
    CHECK(first[0] != uids(calendar::calendarText(entries, later))[0]);
}

TEST_CASE("Summer and winter time are told apart, and an unknown zone gives no UTC")
{
    CHECK(calendar::inUtc(at("2026-01-15T12:00"), "Europe/Berlin") == at("2026-01-15T11:00"));
    CHECK(calendar::inUtc(at("2026-07-15T00:30"), "Europe/Berlin") == at("2026-07-14T22:30"));
    // Clocks went from 2 to 3 o'clock on 29 March 2026 and from 3 to 2 on 25 October.
    CHECK(calendar::inUtc(at("2026-03-29T02:30"), "Europe/Berlin") == at("2026-03-29T01:30"));
    CHECK(calendar::inUtc(at("2026-10-25T02:30"), "Europe/Berlin") == at("2026-10-25T00:30"));
    CHECK_FALSE(calendar::inUtc(at("2026-01-15T12:00"), "Nowhere/Land"));
    CHECK_FALSE(calendar::inUtc(at("2026-01-15"), "Europe/Berlin"));
}

TEST_CASE("Alarms ring so many days before, when asked for")
{
    calendar::FileFacts ringing = facts();
    ringing.alarm_days = 7;
    const auto entries = calendar::entries(workshop(), {}, at("2026-03-14"));
    CHECK(calendar::calendarText(entries, ringing).find("TRIGGER:-P7D\r\n") != std::string::npos);
    CHECK(calendar::calendarText(entries, facts()).find("VALARM") == std::string::npos);
}

TEST_CASE("A calendar that cannot be written is refused, and nothing is left there")
{
    const TemporaryFolder folder;
    const auto entries = calendar::entries(workshop(), {}, at("2026-03-14"));
    CHECK_THROWS_AS(calendar::writeCalendar(entries, facts(), folder.path() / "none" / "shop.ics"),
                    NotSaved);
    CHECK_THROWS_AS(calendar::writeCalendar({}, facts(), folder.path() / "shop.ics"), NotSaved);
    CHECK(std::filesystem::is_empty(folder.path()));
    calendar::writeCalendar(entries, facts(), folder.path() / "shop.ics");
    CHECK(std::filesystem::file_size(folder.path() / "shop.ics") ==
          calendar::calendarText(entries, facts()).size());
}
