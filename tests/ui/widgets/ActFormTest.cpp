// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/ActForm.h"

#include "tests/ui/support/Hands.h"
#include "tests/ui/support/Workshop.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/PersonBox.h"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <QVBoxLayout>

#include <catch2/catch.hpp>

#include <initializer_list>

namespace lastrivet::ui {

namespace {

/// A form with a field of each kind: a line, a box to type in, and a line with a button beside it.
class Sample final : public ActForm {
public:
    explicit Sample(QWidget *parent)
        : ActForm(QStringLiteral("Record"), parent)
        , m_title(new QLineEdit(this))
        , m_who(new PersonBox(this))
        , m_place(new QWidget(this))
    {
        addField(QStringLiteral("Title"), m_title);
        addField(QStringLiteral("Who"), m_who);
        addField(QStringLiteral("Place"), m_place);
        auto *line = new QLineEdit(m_place);
        line->setAccessibleName(QStringLiteral("Folder"));
        auto *choose = new QPushButton(QStringLiteral("Choose…"), m_place);
        auto *layout = new QHBoxLayout(m_place);
        layout->addWidget(line);
        layout->addWidget(choose);
    }
    void addLater()
    {
        auto *later = new QLineEdit(this);
        addField(QStringLiteral("Later"), later);
        later->show();
    }
    void addToPlace()
    {
        auto *again = new QLineEdit(m_place);
        again->setAccessibleName(QStringLiteral("Again"));
        m_place->layout()->addWidget(again);
        again->show();
    }
    QLineEdit &first() { return *m_title; }
    PersonBox &who() { return *m_who; }

protected:
    bool perform() override
    {
        ++tries;
        return false;
    }

public:
    int tries = 0;

private:
    QLineEdit *m_title;
    PersonBox *m_who;
    QWidget *m_place;
};

/// A form with a row that needs two lines where it is narrow, above one that is always shown, one
/// that can be hidden with its label, one that has none, and one across the form.
class Wrapping final : public ActForm {
public:
    explicit Wrapping(QWidget *parent)
        : ActForm(QStringLiteral("Record"), parent)
        , always(new QComboBox(this))
        , sometimes(new QLineEdit(this))
        , unnamed(new QLineEdit(this))
        , without(new QCheckBox(QStringLiteral("complete"), this))
    {
        addWide(wrappedLabel(QStringLiteral("What is said about it."), this));
        auto *wide = new QWidget(this);
        wide->setMinimumSize(400, 40);
        addField(QStringLiteral("Hold points"), wide);
        addField(QStringLiteral("Always"), always);
        addField(QStringLiteral("Sometimes"), sometimes);
        addField({}, unnamed);
        addWide(without);
    }
    void showAll(bool isAll)
    {
        setFieldVisible(sometimes, isAll);
        setFieldVisible(unnamed, isAll);
        without->setVisible(isAll);
    }

    QComboBox *always;
    QLineEdit *sometimes;
    QLineEdit *unnamed;
    QCheckBox *without;

protected:
    bool perform() override { return false; }
};

struct Place {
    Place()
    {
        test::theme();
        auto *layout = new QVBoxLayout(&window);
        layout->addWidget(form);
        layout->addWidget(after);
        after->setAccessibleName(QStringLiteral("Below"));
        window.show();
        REQUIRE(QTest::qWaitForWindowExposed(&window));
        QApplication::setActiveWindow(&window);
    }
    /// What the Tab key comes to, from the first field until below the form.
    QStringList way()
    {
        form->first().setFocus();
        QStringList names;
        for (int i = 0; i < 12 && QApplication::focusWidget() != after; ++i) {
            QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
            const auto *button = qobject_cast<QPushButton *>(QApplication::focusWidget());
            names << (button ? button->text() : QApplication::focusWidget()->accessibleName());
        }
        return names;
    }

    QWidget window;
    Sample *form = new Sample(&window);
    QLineEdit *after = new QLineEdit(&window);
};

QStringList words(std::initializer_list<const char *> texts)
{
    QStringList all;
    for (const char *text : texts)
        all << QString::fromUtf8(text);
    return all;
}

} // namespace

TEST_CASE("The Tab key goes through the fields of a form, then its buttons, and out of it")
{
    Place place;
    CHECK(place.way() == words({"Who", "Folder", "Choose…", "Cancel", "Record", "Below"}));
    place.form->addLater();
    CHECK(place.way() == words({"Who", "Folder", "Choose…", "Later", "Cancel", "Record", "Below"}));
    place.form->addToPlace();
    CHECK(place.way() ==
          words({"Who", "Folder", "Choose…", "Again", "Later", "Cancel", "Record", "Below"}));
}

TEST_CASE("No field of a form is without height below a row that needs two lines")
{
    test::theme();
    QWidget window;
    auto *layout = new QVBoxLayout(&window);
    auto *form = new Wrapping(&window);
    layout->addWidget(form);
    layout->addStretch(1);
    window.resize(900, 600);
    window.show();
    REQUIRE(QTest::qWaitForWindowExposed(&window));
    const auto isWhole = [](const QWidget &field) {
        return field.isVisible() && field.height() >= field.minimumSizeHint().height();
    };
    for (const bool isAll : {true, false, true, false}) {
        form->showAll(isAll);
        for (const int width : {900, 480, 900}) {
            window.resize(width, 600);
            QTest::qWait(20);
            INFO((isAll ? "all" : "some") << " at " << window.width());
            CHECK(isWhole(*form->always));
            CHECK(isWhole(*form->sometimes) == isAll);
            CHECK(isWhole(*form->unnamed) == isAll);
            // It stands below the fields, also when it comes again.
            CHECK((!isAll || width < 900 || form->unnamed->x() == form->sometimes->x()));
            CHECK(isWhole(*form->without) == isAll);
            CHECK(form->always->geometry().bottom() < form->height());
        }
    }
}

TEST_CASE("Ctrl+Enter does what a form is for also where a proposed name is chosen to type over")
{
    Place place;
    PersonBox &who = place.form->who();
    who.addItem(QStringLiteral("Kim Doe"));
    who.setFocus();
    who.lineEdit()->selectAll();
    QTest::keyClick(&who, Qt::Key_Return, Qt::ControlModifier);
    CHECK(place.form->tries == 1);
    CHECK(who.currentText() == QStringLiteral("Kim Doe"));
}

TEST_CASE("A form says beside the name when it becomes a new person, and takes who came meanwhile")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    Place place;
    PersonBox &who = place.form->who();
    const auto newcomer = QStringLiteral("becomes a person");
    who.offer(*session->records(), SignerRole::Inspector);
    CHECK_FALSE(test::says(place.window, newcomer));
    who.setEditText(QStringLiteral("Kim Doe"));
    CHECK(test::says(place.window, newcomer));
    CHECK(who.accessibleDescription().contains(newcomer));
    // Somebody on record who may not sign is refused, not made anew.
    who.setEditText(QStringLiteral("robin vale"));
    CHECK_FALSE(test::says(place.window, newcomer));
    CHECK_FALSE(who.whyNot(*session->records()).isEmpty());
    who.setEditText(QStringLiteral("Kim Doe"));
    Id<Person> kim;
    REQUIRE(session->change(QStringLiteral("Person"), [&](Edit &edit) {
        Person person;
        person.name = "Kim Doe";
        person.roles = {Role::Inspector};
        kim = edit.put(person);
    }));
    CHECK(who.whyNot(*session->records()).isEmpty());
    session->change(QStringLiteral("Signed"),
                    [&](Edit &edit) { CHECK(who.personIn(edit) == kim); });
}

} // namespace lastrivet::ui
