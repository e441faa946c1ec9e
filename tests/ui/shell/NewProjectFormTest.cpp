// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/NewProjectForm.h"

#include "core/base/Error.h"
#include "core/project/Project.h"
#include "core/readiness/Readiness.h"
#include "core/today/Today.h"
#include "tests/support/FakeClock.h"
#include "tests/support/TemporaryFolder.h"
#include "tests/ui/support/Hands.h"
#include "ui/convert/QtText.h"

#include <QComboBox>
#include <QDir>
#include <QLabel>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>

#include <catch2/catch.hpp>

namespace lastrivet::ui {

namespace {

/// Counts how often it is asked, and can break at one of these times.
class BreakingClock final : public Clock {
public:
    std::chrono::sys_time<std::chrono::milliseconds> now() const override
    {
        if (++asked == breaksAt)
            throw NotSaved("The disk is full.");
        return m_clock.now();
    }

    mutable int asked = 0;
    /// 0 for never.
    int breaksAt = 0;

private:
    test::FakeClock m_clock;
};

struct Shown {
    Shown()
    {
        form.setPlace(pathText(folder.path()));
        form.resize(640, 720);
        form.show();
        REQUIRE(QTest::qWaitForWindowExposed(&form));
    }
    QLineEdit &line(const char *name) { return test::field(form, QString::fromUtf8(name)); }
    void make(const char *name)
    {
        test::type(form, QStringLiteral("Name of the project"), QString::fromUtf8(name));
        test::type(form, QStringLiteral("Builder"), QStringLiteral("Robin Vale"));
        QTest::keyClick(&form, Qt::Key_Return, Qt::ControlModifier);
    }
    bool isThere(const QString &name) const { return QDir(pathText(folder.path())).exists(name); }

    test::TemporaryFolder folder;
    BreakingClock clock;
    NewProjectForm form{clock};
    QSignalSpy made{&form, &NewProjectForm::made};
};

} // namespace

TEST_CASE("The form for a new project does not begin with the project made before")
{
    Shown shown;
    test::type(shown.form, QStringLiteral("Aircraft type"), QStringLiteral("Own design"));
    test::choice(shown.form, QStringLiteral("Built from")).setCurrentIndex(1);
    CHECK(shown.form.isBegun());
    shown.make("First");
    REQUIRE(shown.made.count() == 1);
    for (const char *name : {"Name of the project", "Builder", "Aircraft type"})
        CHECK(shown.line(name).text().isEmpty());
    CHECK(test::choice(shown.form, QStringLiteral("Built from")).currentIndex() == 0);
    CHECK(shown.line("Kept in the folder").text() == pathText(shown.folder.path()));
    CHECK_FALSE(shown.form.isBegun());
}

TEST_CASE("A new project that fails half way leaves its place to the next try")
{
    Shown shown;
    shown.make("First");
    REQUIRE(shown.made.count() == 1);
    // The clock is asked for the last time when builder and parts are put in.
    shown.clock.breaksAt = shown.clock.asked;
    shown.clock.asked = 0;
    shown.make("Second");
    CHECK(shown.made.count() == 1);
    CHECK(test::says(shown.form, QStringLiteral("The disk is full.")));
    CHECK(shown.line("Name of the project").text() == QStringLiteral("Second"));
    CHECK_FALSE(shown.isThere(QStringLiteral("Second.lastrivet")));
    shown.clock.breaksAt = 0;
    QTest::keyClick(&shown.form, Qt::Key_Return, Qt::ControlModifier);
    CHECK(shown.made.count() == 2);
    CHECK(shown.isThere(QStringLiteral("Second.lastrivet")));
}

TEST_CASE("A new project that is to be kept nowhere is not made where the program was started")
{
    Shown shown;
    shown.form.setPlace({});
    shown.make("Nowhere");
    CHECK(shown.made.isEmpty());
    CHECK(test::says(shown.form, QStringLiteral("It needs a folder to be kept in.")));
    CHECK_FALSE(QDir().exists(QStringLiteral("Nowhere.lastrivet")));
    shown.form.setPlace(pathText(shown.folder.path()));
    shown.make("Somewhere");
    CHECK(shown.made.size() == 1);
    CHECK(shown.isThere(QStringLiteral("Somewhere.lastrivet")));
}

TEST_CASE("Enter in a line of the form for a new project says what is missing, or what makes it")
{
    Shown shown;
    const auto enter = [&] {
        REQUIRE(shown.form.focusWidget());
        QTest::keyClick(shown.form.focusWidget(), Qt::Key_Return);
    };
    test::type(shown.form, QStringLiteral("Name of the project"), QStringLiteral("First"));
    enter();
    CHECK(test::says(shown.form, QStringLiteral("who builds it")));
    CHECK(shown.form.focusWidget() == &shown.line("Builder"));
    test::type(shown.form, QStringLiteral("Builder"), QStringLiteral("Robin Vale"));
    enter();
    CHECK(test::says(shown.form, QStringLiteral("Ctrl+Enter makes the project.")));
    CHECK(shown.made.isEmpty());
    QTest::keyClick(shown.form.focusWidget(), Qt::Key_Return, Qt::ControlModifier);
    CHECK(shown.made.count() == 1);
}

TEST_CASE("The form for a new project counts the closings that the first page counts then")
{
    Shown shown;
    auto &starters = test::choice(shown.form, QStringLiteral("Begin with"));
    const int which = GENERATE(1, 2, 3);
    starters.setCurrentIndex(which);
    QString told;
    for (const QLabel *label : shown.form.findChildren<QLabel *>()) {
        if (label->text().startsWith(QStringLiteral("Untick")))
            told = label->text();
    }
    shown.make("First");
    REQUIRE(shown.made.count() == 1);
    test::FakeClock clock;
    const auto project = Project::open(shown.folder / "First.lastrivet", {&clock});
    const auto records = project->records();
    const auto tally = today::tally(
        *records, readiness::readiness(*records, project->profile(), project->today()));
    CHECK(tally.not_begun > 1);
    CHECK(told.contains(QStringLiteral(": %1. ").arg(tally.not_begun)));
}

TEST_CASE("That a new project needs a name is taken back once it has one, and its folder is chosen")
{
    Shown shown;
    const auto lacking = QStringLiteral("It needs a name");
    QTest::keyClick(&shown.form, Qt::Key_Return, Qt::ControlModifier);
    CHECK(test::says(shown.form, lacking));
    test::type(shown.form, QStringLiteral("Name of the project"), QStringLiteral("First"));
    CHECK(test::says(shown.form, lacking));
    test::type(shown.form, QStringLiteral("Builder"), QStringLiteral("Robin Vale"));
    CHECK_FALSE(test::says(shown.form, lacking));
    CHECK(test::button(shown.form, QStringLiteral("Choose…")));
}

} // namespace lastrivet::ui
