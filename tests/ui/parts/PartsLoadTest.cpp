// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/profiles/ProfileLibrary.h"
#include "core/records/Description.h"
#include "tests/support/ReferenceLoad.h"
#include "tests/ui/support/Workshop.h"
#include "ui/parts/PartsPage.h"

#include <QLineEdit>
#include <QTest>
#include <QTreeView>

#include <catch2/catch.hpp>

#include <ctime>
#include <functional>
#include <map>

// How long the page takes with ten builders' lifetimes in it; run by name, since it takes a minute
// to make them and clocks on busy machines say little.
namespace lastrivet::test {

namespace {

/// A project on disk with every record of the load.
std::unique_ptr<Project> loadedProject(const std::filesystem::path &folder, const Clock &clock)
{
    ProjectBuilder builder;
    fillReferenceLoad(builder, 5);
    ProjectFacts facts;
    facts.name = "Load";
    facts.profile = "ca";
    auto project =
        Project::create(folder, facts, ProfileLibrary::standard().profile("ca"), {&clock, "Robin"});
    const auto stored = project->change("A load", [&](Edit &edit) {
        for (std::size_t i = std::size_t(RecordType::Person); i < recordTypeCount; ++i) {
            const AnyTable &table = builder.records.table(RecordType(i));
            const auto &description = describe(RecordType(i));
            for (const void *record = table.nextAny(0); record;
                 record = table.nextAny(idOf(description, record)))
                edit.putAny(RecordType(i), record);
        }
    });
    if (!stored)
        FAIL(english(stored.reason()));
    return project;
}

/// Of the processor, so that what else the machine does counts little.
qint64 millisecondsOf(const std::function<void()> &act)
{
    const std::clock_t begin = std::clock();
    act();
    QCoreApplication::processEvents();
    return qint64(std::clock() - begin) * 1000 / CLOCKS_PER_SEC;
}

} // namespace

TEST_CASE("Parts with the reference load open, filter, choose and move without a hitch", "[.load]")
{
    const TemporaryFolder folder;
    FakeClock clock;
    ui::InlineExecutor executor;
    const auto session = std::make_unique<ui::Session>(
        loadedProject(folder / "Load.lastrivet", clock), executor, theme());
    std::unique_ptr<ui::PartsPage> page;
    std::map<std::string, qint64> took;
    took["open"] = millisecondsOf([&] {
        page = std::make_unique<ui::PartsPage>(*session);
        page->resize(1100, 680);
        page->show();
    });
    auto *tree = page->findChild<QTreeView *>();
    QLineEdit *filter = nullptr;
    for (auto *line : page->findChildren<QLineEdit *>()) {
        if (line->accessibleName() == QStringLiteral("Filter the parts"))
            filter = line;
    }
    REQUIRE(filter);
    took["filter one"] = millisecondsOf([&] { filter->setText(QStringLiteral("P4321")); });
    took["filter many"] = millisecondsOf([&] { filter->setText(QStringLiteral("p")); });
    took["no filter"] = millisecondsOf([&] { filter->clear(); });
    tree->setFocus();
    took["choose"] = millisecondsOf([&] { QTest::keyClick(tree, Qt::Key_Down); });
    took["whole"] = millisecondsOf([&] { QTest::keyClick(tree, Qt::Key_Home, Qt::AltModifier); });
    page->showRecord({RecordType::Component, session->records()->components.begin()->id.value()});
    took["move"] = millisecondsOf([&] { QTest::keyClick(tree, Qt::Key_Down, Qt::AltModifier); });
    took["change"] = millisecondsOf([&] {
        session->change(QStringLiteral("Renamed"), [&](Edit &edit) {
            edit.update(session->records()->components.begin()->id,
                        [](Component &part) { part.name = "Renamed"; });
        });
    });
    for (const auto &[what, time] : took) {
        WARN(what << ": " << time << " ms");
    }
    CHECK(took["open"] < 200);
    for (const auto &[what, time] : took) {
        INFO(what);
        // A change also works out the readiness answer, which the window leaves to a worker.
        CHECK((what == "open" || what == "change" || what == "move" || time < 100));
    }
}

} // namespace lastrivet::test
