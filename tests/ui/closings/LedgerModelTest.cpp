// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/LedgerModel.h"

#include "core/project/acts/ClosingUp.h"
#include "tests/ui/support/ModelWatch.h"
#include "tests/ui/support/Workshop.h"
#include "ui/closings/Mend.h"

#include <QSignalSpy>

#include <catch2/catch.hpp>

#include <algorithm>

namespace lastrivet::ui {

namespace {

LedgerModel::Source sourceOf(const Session &session, Id<Closing> closing)
{
    return {session.records(), &session.project().profile(), *session.answer()->closing(closing),
            session.answer()->as_of};
}

QModelIndex lineOf(const LedgerModel &model, readiness::Rule rule)
{
    for (int row = 0; row < model.rowCount(); ++row) {
        if (model.line(model.index(row, 0)).rule == rule)
            return model.index(row, 0);
    }
    return {};
}

} // namespace

TEST_CASE("Who signed before a change and is not the builder has to be asked to come again")
{
    readiness::Blocker blocker{readiness::Rule::OutdatedSignOff,
                               readiness::Weight{},
                               {RecordType::HoldPoint, 1},
                               SignerRole::Inspector,
                               {}};
    CHECK(mendFor(blocker) == Mend::AskForVisit);
    blocker.waits_for = SignerRole::Builder;
    CHECK(mendFor(blocker) == Mend::Sign);
}

TEST_CASE("The ledger has a row for every rule and one below it for each record not meeting it")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    LedgerModel model;
    test::ModelWatch watch(model);
    model.show(sourceOf(*session, workshop.wingClosing));
    CHECK(model.rowCount() == int(Words<readiness::Rule>::list.size()));
    const auto squawks = lineOf(model, readiness::Rule::OpenSquawk);
    REQUIRE(model.rowCount(squawks) == 1);
    const auto *blocker = model.blocker(model.index(0, 0, squawks));
    REQUIRE(blocker);
    CHECK(blocker->record == RecordRef{RecordType::Squawk, workshop.squawk.value()});
    CHECK(model.rowCount(lineOf(model, readiness::Rule::UntickedCheck)) == 3);
    watch.check();
}

TEST_CASE("A ledger follows what is mended without starting over")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    LedgerModel model;
    test::ModelWatch watch(model);
    model.show(sourceOf(*session, workshop.wingClosing));
    QSignalSpy resets(&model, &QAbstractItemModel::modelReset);
    const auto unticked = lineOf(model, readiness::Rule::UntickedCheck);
    const auto *first = model.blocker(model.index(0, 0, unticked));
    session->change(QStringLiteral("Ticked"), [&](Edit &edit) {
        acts::tick(edit, {Id<Check>{first->record.id}}, workshop.builder, edit.today());
    });
    model.show(sourceOf(*session, workshop.wingClosing));
    CHECK(model.rowCount(unticked) == 2);
    session->undo();
    model.show(sourceOf(*session, workshop.wingClosing));
    CHECK(model.rowCount(unticked) == 3);
    CHECK(resets.count() == 0);
    model.show(sourceOf(*session, workshop.aileronClosing));
    CHECK(resets.count() == 1);
    watch.check();
}

TEST_CASE("Of what was closed with gaps no line tells to do now what was missing then")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    session->change(QStringLiteral("Closed"), [&](Edit &edit) {
        acts::close(edit, workshop.wingClosing, {edit.today(), workshop.builder, "No time", false});
    });
    LedgerModel model;
    model.show(sourceOf(*session, workshop.wingClosing));
    const auto squawks = lineOf(model, readiness::Rule::OpenSquawk);
    REQUIRE(model.rowCount(squawks) == 1);
    const QString told = model.data(model.index(0, 0, squawks), Qt::AccessibleTextRole).toString();
    CHECK(told.contains(QStringLiteral("accept it late, or open it again")));
    CHECK_FALSE(told.contains(QStringLiteral("have it verified")));
}

TEST_CASE("Of two blockers that speak of one record one may be mended; others may change places")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    LedgerModel model;
    test::ModelWatch watch(model);
    auto source = sourceOf(*session, workshop.wingClosing);
    const auto squawk = *std::ranges::find(source.answer.blockers, readiness::Rule::OpenSquawk,
                                           &readiness::Blocker::rule);
    source.answer.blockers.push_back(squawk);
    model.show(source);
    const auto squawks = lineOf(model, readiness::Rule::OpenSquawk);
    CHECK(model.rowCount(squawks) == 2);
    source.answer.blockers.pop_back();
    std::ranges::reverse(source.answer.blockers);
    model.show(source);
    CHECK(model.rowCount(squawks) == 1);
    CHECK(model.rowCount(lineOf(model, readiness::Rule::UntickedCheck)) == 3);
    watch.check();
}

} // namespace lastrivet::ui
