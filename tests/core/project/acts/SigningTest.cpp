// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/Signing.h"

#include "core/project/acts/ClosingUp.h"
#include "core/readiness/SignOffs.h"
#include "tests/support/ActBench.h"

#include <algorithm>

namespace lastrivet::acts {

namespace {

Moment on(std::string_view text)
{
    return *Moment::parse(text);
}

struct Bench : test::ActBench {
    Id<Closing> closing;
    Id<HoldPoint> point;

    Bench()
    {
        change([this](Edit &edit) {
            Closing skin;
            skin.component_id = wing;
            skin.title = "Upper skin";
            closing = addClosing(edit, skin, {});
            for (const HoldPoint &made : edit.records().hold_points) {
                if (made.kind == HoldPointKind::PreCover)
                    point = made.id;
            }
        });
    }

    SignOff signature(std::string_view day) const
    {
        SignOff signature;
        signature.hold_point_id = point;
        signature.person_id = inspector;
        signature.signed_on = on(day);
        return signature;
    }
};

} // namespace

TEST_CASE("A signature takes the credential from the person unless another is written on the sheet")
{
    Bench bench;
    Id<SignOff> plain;
    Id<SignOff> other;
    bench.change([&](Edit &edit) {
        plain = sign(edit, bench.signature("2026-03-01"));
        SignOff written = bench.signature("2026-03-02");
        written.credential = "deputy";
        other = sign(edit, written);
    });
    CHECK(bench.records()->find(plain)->credential == "Sam's licence");
    CHECK(bench.records()->find(other)->credential == "deputy");
}

TEST_CASE("The latest signature is the one no other comes after; ties go to the later record")
{
    Bench bench;
    Id<SignOff> morning;
    Id<SignOff> undated;
    bench.change([&](Edit &edit) {
        sign(edit, bench.signature("2026-03-01"));
        morning = sign(edit, bench.signature("2026-03-02T09:00"));
    });
    const Moment end = on("2026-03-31");
    CHECK(readiness::latestSignOff(*bench.records(), bench.point, end)->id == morning);
    bench.change([&](Edit &edit) { undated = sign(edit, bench.signature("2026-03-02")); });
    CHECK(readiness::latestSignOff(*bench.records(), bench.point, end)->id == undated);
    CHECK(readiness::latestSignOff(*bench.records(), bench.point, on("2026-02-28")) == nullptr);
    bench.change([&](Edit &edit) { withdrawSignature(edit, undated, "wrong sheet"); });
    CHECK(readiness::latestSignOff(*bench.records(), bench.point, end)->id == morning);
}

TEST_CASE("Who may sign follows rank")
{
    Bench bench;
    const auto names = [&](SignerRole role) {
        std::vector<Id<Person>> ids;
        for (const Person *person : peopleWhoMaySign(*bench.records(), role))
            ids.push_back(person->id);
        std::ranges::sort(ids);
        return ids;
    };
    const auto sorted = [](std::vector<Id<Person>> ids) {
        std::ranges::sort(ids);
        return ids;
    };
    CHECK(names(SignerRole::Inspector) == std::vector{bench.inspector});
    CHECK(names(SignerRole::Adviser) == sorted({bench.adviser, bench.inspector}));
    CHECK(names(SignerRole::Builder) == sorted({bench.builder, bench.adviser, bench.inspector}));
}

TEST_CASE("A late acceptance that is withdrawn is named by no closing any more")
{
    Bench bench;
    Id<SignOff> late;
    bench.change([&](Edit &edit) {
        close(edit, bench.closing, {on("2026-03-01"), bench.builder, "before winter"});
        SignOff acceptance;
        acceptance.person_id = bench.inspector;
        acceptance.signed_on = on("2026-03-05");
        late = acceptLate(edit, bench.closing, acceptance);
    });
    CHECK(bench.records()->find(bench.closing)->late_acceptances == IdSet<SignOff>{late});
    bench.change([&](Edit &edit) { withdrawSignature(edit, late, "not his to give"); });
    CHECK(bench.records()->find(bench.closing)->late_acceptances.empty());
    CHECK(bench.records()->find(late)->withdrawn_why == "not his to give");
}

TEST_CASE("A sheet that comes later is linked to its signature")
{
    Bench bench;
    Id<SignOff> signature;
    Id<Media> sheet;
    bench.change([&](Edit &edit) {
        signature = sign(edit, bench.signature("2026-03-01"));
        Media media;
        media.file = "documents/sheet.jpg";
        media.sha256 = std::string(64, 'a');
        sheet = edit.put(media);
        attachSheet(edit, signature, sheet);
    });
    CHECK(bench.records()->find(signature)->scan_id == sheet);
    const Media &linked = *bench.records()->find(sheet);
    CHECK(linked.shows.contains(Shows::SignedSheet));
    CHECK(linked.links == std::vector{Media::Link{RecordType::SignOff, signature.value()}});
}

TEST_CASE("A required hold point of the inspector is waived by nobody below")
{
    Bench bench;
    CHECK(bench.isRefused(
        [&](Edit &edit) { waive(edit, bench.point, edit.today(), bench.builder, "no time"); }));
    bench.change([&](Edit &edit) {
        waive(edit, bench.point, edit.today(), bench.inspector, "seen with the other wing");
    });
    CHECK(bench.records()->find(bench.point)->waived_why == "seen with the other wing");
}

} // namespace lastrivet::acts
