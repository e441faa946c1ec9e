// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/rules/RulesView.h"

#include "core/profiles/ProfileLibrary.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/Workshop.h"
#include "ui/certificate/CertificatePage.h"
#include "ui/convert/QtText.h"
#include "ui/rules/RulesDraft.h"
#include "ui/shell/ProjectView.h"

#include <QComboBox>
#include <QFile>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTest>
#include <QTreeWidget>

#include <catch2/catch.hpp>

namespace lastrivet::test {

namespace {

struct Window {
    explicit Window(Workshop &workshop)
        : view(workshop.session())
    {
        view.resize(1280, 700);
        view.show();
        REQUIRE(QTest::qWaitForWindowExposed(&view));
        view.open(ui::PageId::Certificate);
        press(page(), QStringLiteral("Rules"));
    }
    ui::CertificatePage &page()
    {
        return static_cast<ui::CertificatePage &>(view.page(ui::PageId::Certificate));
    }
    ui::RulesView &rules() { return page().rules(); }
    QTreeWidget &tree() { return *rules().findChild<QTreeWidget *>(); }
    /// Chooses a place by the words of its line.
    void choose(const QString &words)
    {
        const auto found = tree().findItems(words, Qt::MatchExactly | Qt::MatchRecursive);
        REQUIRE_FALSE(found.isEmpty());
        tree().setCurrentItem(found.front());
    }
    void number(const QString &name, int value)
    {
        for (auto *box : rules().findChildren<QSpinBox *>()) {
            if (box->accessibleName() == name)
                box->setValue(value);
        }
    }

    ui::ProjectView view;
};

} // namespace

TEST_CASE("A copy of the rules is changed and used, and the project goes by it", "[rules]")
{
    Workshop workshop;
    Window window(workshop);
    CHECK(window.rules().draft().profile().id == "ca-own");
    CHECK(window.rules().fault().isEmpty());
    CHECK(says(window.rules(), QStringLiteral("nothing is changed yet")));
    // The day of the rules is told as every day is.
    const auto edition = Moment::parse(window.view.session().project().profile().edition);
    REQUIRE(edition);
    CHECK(says(window.rules(), QStringLiteral("last gone through on ") + ui::dateText(*edition)));
    window.number(QStringLiteral("Interior photos"), 5);
    press(window.rules(), QStringLiteral("Use in this project"));
    CHECK(window.view.focusWidget() == &window.tree());
    auto &session = window.view.session();
    CHECK(session.project().profile().interior_photos == 5);
    CHECK(session.records()->project.profile == "ca-own");
    CHECK(says(window.rules(), QStringLiteral("Below are the rules of this project.")));
    session.undo();
    CHECK(session.project().profile().id == "ca");
}

TEST_CASE("What is wrong is said in one sentence with its place, and led to", "[rules]")
{
    Workshop workshop;
    Window window(workshop);
    window.choose(QStringLiteral("Documents"));
    const auto before = window.rules().draft().profile().documents.size();
    press(window.rules(), QStringLiteral("Add a line"));
    REQUIRE(window.rules().draft().profile().documents.size() == before + 1);
    CHECK(window.rules().fault() ==
          QStringLiteral("Documents, line %1, Key: is empty.").arg(before + 1));
    CHECK_FALSE(button(window.rules(), QStringLiteral("Use in this project")));
    window.tree().setCurrentItem(window.tree().topLevelItem(0));
    press(window.rules(), QStringLiteral("Show it"));
    type(window.rules(), QStringLiteral("Key"), QStringLiteral("noise certificate"));
    CHECK(window.rules().fault().contains(QStringLiteral("is no key")));
    type(window.rules(), QStringLiteral("Key"), QStringLiteral("noise_certificate"));
    type(window.rules(), QStringLiteral("Title"), QStringLiteral("Noise certificate"));
    CHECK(window.rules().fault().isEmpty());
    CHECK(window.tree().currentItem()->text(0) == QStringLiteral("Noise certificate"));
    press(window.rules(), QStringLiteral("Up"));
    CHECK(window.rules().draft().profile().documents[before - 1].key == "noise_certificate");
    press(window.rules(), QStringLiteral("Take out"));
    CHECK(window.rules().draft().profile().documents.size() == before);
}

TEST_CASE("What was unfolded stays so when a line is added elsewhere", "[rules]")
{
    Workshop workshop;
    Window window(workshop);
    const auto place = [&](const QString &words) {
        return window.tree().findItems(words, Qt::MatchExactly | Qt::MatchRecursive).value(0);
    };
    REQUIRE(place(QStringLiteral("Sources")));
    place(QStringLiteral("Sources"))->setExpanded(true);
    window.choose(QStringLiteral("Documents"));
    press(window.rules(), QStringLiteral("Add a line"));
    CHECK(place(QStringLiteral("Sources"))->isExpanded());
    CHECK_FALSE(place(QStringLiteral("Cautions"))->isExpanded());
}

TEST_CASE("A draft that is not right is kept, and there again when the project is opened again",
          "[rules]")
{
    Workshop workshop;
    {
        Window window(workshop);
        QLineEdit &name = field(window.rules(), QStringLiteral("Name"));
        name.selectAll();
        QTest::keyClick(&name, Qt::Key_Delete);
        type(window.rules(), QStringLiteral("Id"), QStringLiteral("my-own"));
        CHECK_FALSE(window.rules().fault().isEmpty());
    }
    Window window(workshop);
    CHECK(window.rules().draft().profile().id == "my-own");
    CHECK(window.rules().draft().profile().name.empty());
    CHECK(window.rules().fault() == QStringLiteral("Name: is empty."));
    // Beginning with other rules loses nothing either.
    window.rules().draft().begin(ProfileLibrary::shipped().profile("us"));
    CHECK(window.rules().draft().profile().id == "us-own");
    auto &origin = choice(window.rules(), QStringLiteral("Begin with other rules"));
    origin.setCurrentIndex(origin.findText(QStringLiteral("the draft before this one")));
    Q_EMIT origin.activated(origin.currentIndex());
    CHECK(window.rules().draft().profile().id == "my-own");
}

TEST_CASE("A draft that is right can be used after the project was opened again", "[rules]")
{
    Workshop workshop;
    {
        Window window(workshop);
        CHECK_FALSE(button(window.rules(), QStringLiteral("Use in this project")));
        window.number(QStringLiteral("Interior photos"), 7);
    }
    Window window(workshop);
    CHECK(says(window.rules(), QStringLiteral("Below is a draft that can be used.")));
    press(window.rules(), QStringLiteral("Use in this project"));
    CHECK(window.view.session().project().profile().interior_photos == 7);
    CHECK_FALSE(button(window.rules(), QStringLiteral("Use in this project")));
}

TEST_CASE("Other rules are offered by name, and found by id", "[rules]")
{
    Workshop workshop;
    Window window(workshop);
    auto &origin = choice(window.rules(), QStringLiteral("Begin with other rules"));
    const auto us = ProfileLibrary::shipped().profile("us");
    const int row = origin.findText(QString::fromStdString(us.name));
    REQUIRE(row > 0);
    Q_EMIT origin.activated(row);
    CHECK(window.rules().draft().profile().id == "us-own");
    CHECK(window.rules().draft().profile().hold_points == us.hold_points);
}

TEST_CASE("Changed rules cannot go by the id of those that came with the program", "[rules]")
{
    Workshop workshop;
    Window window(workshop);
    window.number(QStringLiteral("Late entry days"), 12);
    type(window.rules(), QStringLiteral("Id"), QStringLiteral("ca"));
    CHECK(window.rules().fault().startsWith(QStringLiteral("Id: is that of a profile")));
}

TEST_CASE("Rules are written to a file and read from one, also when they are not right", "[rules]")
{
    Workshop workshop;
    Window window(workshop);
    const TemporaryFolder folder;
    const QString file = QString::fromStdString((folder / "rules.json").string());
    type(window.rules(), QStringLiteral("Name"), QStringLiteral("Club rules"));
    window.rules().draft().writeTo(file);
    REQUIRE(readProfileFile((folder / "rules.json")).name == "Club rules");
    type(window.rules(), QStringLiteral("Name"), QStringLiteral("Other"));
    window.rules().draft().readFrom(file);
    CHECK(window.rules().draft().profile().name == "Club rules");
    QFile broken(file);
    REQUIRE(broken.open(QIODevice::WriteOnly));
    broken.write("{\"id\": \"half\", \"name\": \"Half\"}");
    broken.close();
    window.rules().draft().readFrom(file);
    CHECK(window.rules().draft().profile().name == "Half");
    CHECK_FALSE(window.rules().fault().isEmpty());
}

TEST_CASE("The rules are shown whole, with the chosen place beside them", "[rules]")
{
    Workshop workshop;
    Window window(workshop);
    window.choose(QStringLiteral("Hold points"));
    wholePicture(window.view, 1280, 700, "certificate-rules");
    CHECK(says(window.rules(), QStringLiteral("This project goes by: Canada")));
    CHECK(says(window.rules(), QStringLiteral("Hold points")));
}

} // namespace lastrivet::test
