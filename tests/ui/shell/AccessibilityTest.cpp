// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/Looks.h"
#include "tests/ui/support/WholeWindow.h"
#include "ui/convert/QtText.h"
#include "ui/shell/MainWindow.h"
#include "ui/shell/Page.h"
#include "ui/shell/Preferences.h"
#include "ui/shell/ProjectView.h"
#include "ui/shell/StartPage.h"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTest>
#include <QVBoxLayout>

#include <catch2/catch.hpp>

namespace lastrivet::ui {

namespace {

struct Opened : test::WholeWindow {
    Opened() { WholeWindow::open(); }
    void open(PageId page)
    {
        window.view()->open(page);
        for (int i = 0; i < 3; ++i)
            QCoreApplication::processEvents();
    }
};

std::string lines(const QStringList &found)
{
    return found.join(QLatin1Char('\n')).toStdString();
}

} // namespace

TEST_CASE("A line without a name, cut words, what sticks out and a trap of the tabulator are found")
{
    QWidget place;
    auto *layout = new QVBoxLayout(&place);
    auto *line = new QLineEdit;
    layout->addWidget(line);
    auto *words = new QPlainTextEdit;
    words->setAccessibleName(QStringLiteral("Words"));
    layout->addWidget(words);
    auto *label = new QLabel(QStringLiteral("Left wing, lower skin"));
    label->setFixedWidth(20);
    layout->addWidget(label);
    auto *stray = new QPushButton(QStringLiteral("Stray"), &place);
    stray->setFocusPolicy(Qt::NoFocus);
    stray->setGeometry(-10, 0, 200, 60);
    place.show();
    REQUIRE(QTest::qWaitForWindowActive(&place));
    line->setFocus();
    const QStringList unnamed = test::nameless(place);
    REQUIRE(unnamed.size() == 1);
    CHECK(unnamed.front().startsWith(QStringLiteral("QLineEdit")));
    const QStringList cut = test::cutTexts(place);
    REQUIRE(cut.size() == 1);
    CHECK(cut.front().startsWith(QStringLiteral("QLabel")));
    const QStringList outside = test::outsideTheirPlace(place);
    REQUIRE(outside.size() == 1);
    CHECK(outside.front().startsWith(QStringLiteral("QPushButton")));
    const QStringList trapped = test::beyondTheTabulator(place);
    REQUIRE(trapped.size() == 1);
    CHECK(trapped.front().startsWith(QStringLiteral("trapped in QPlainTextEdit")));
}

TEST_CASE("On a page of several places the Tab key comes first to the choice among them")
{
    Opened opened;
    opened.show();
    for (const PageId id : {PageId::Stores, PageId::Hours, PageId::Certificate}) {
        opened.open(id);
        const QWidget &page = opened.window.view()->page(id);
        const auto isReached = [](const QWidget &widget) {
            return widget.isVisible() && (widget.focusPolicy() & Qt::TabFocus) != 0;
        };
        const QWidget *first = page.nextInFocusChain();
        while (page.isAncestorOf(first) && !isReached(*first))
            first = first->nextInFocusChain();
        const auto *button = qobject_cast<const QPushButton *>(first);
        REQUIRE(button);
        CHECK(page.isAncestorOf(button));
        CHECK(button->isCheckable());
    }
}

TEST_CASE("A screen reader can name all that the keyboard reaches, on every page")
{
    Opened opened;
    opened.show();
    for (const PageDescription &page : pageList()) {
        opened.open(page.id);
        const QStringList found = test::nameless(opened.window);
        INFO(page.title << ":\n" << lines(found));
        CHECK(found.isEmpty());
        // New photographs begin with the system's own dialog.
        if (page.id == PageId::Photos)
            continue;
        opened.window.view()->page(page.id).startNew();
        QCoreApplication::processEvents();
        const QStringList inForm = test::nameless(opened.window);
        INFO(page.title << ", new:\n" << lines(inForm));
        CHECK(inForm.isEmpty());
    }
}

TEST_CASE("A screen reader can name the start page, the preferences and the finder")
{
    Opened opened;
    opened.show();
    Preferences preferences(PersonalSettings(opened.settings), test::theme(),
                            &opened.window.view()->session(), QStringLiteral("/x"), &opened.window);
    preferences.show();
    CHECK(lines(test::nameless(preferences)).empty());
    preferences.hide();
    opened.window.openFinder();
    CHECK(lines(test::nameless(opened.window)).empty());
    opened.window.closeProject();
    QCoreApplication::processEvents();
    CHECK(lines(test::nameless(opened.window)).empty());
}

TEST_CASE("The tabulator reaches everything on every page, and is trapped nowhere")
{
    Opened opened;
    opened.show();
    for (const PageDescription &page : pageList()) {
        opened.open(page.id);
        const QStringList found = test::beyondTheTabulator(opened.window.view()->page(page.id));
        INFO(page.title << ":\n" << lines(found));
        CHECK(found.isEmpty());
    }
}

TEST_CASE("No label, button or box is cut at 1280 × 720, in longer languages either")
{
    test::LongWords longer;
    const bool isLong = GENERATE(false, true);
    if (isLong)
        QCoreApplication::installTranslator(&longer);
    {
        Opened opened;
        opened.show();
        for (const PageDescription &page : pageList()) {
            opened.open(page.id);
            const QStringList found = test::cutTexts(opened.window.view()->page(page.id));
            INFO(page.title << (isLong ? ", long:\n" : ":\n") << lines(found));
            CHECK(found.isEmpty());
        }
    }
    QCoreApplication::removeTranslator(&longer);
}

TEST_CASE("Focus shows on every kind of control, in light and in dark")
{
    const auto choice = GENERATE(Theme::Choice::Light, Theme::Choice::Dark);
    test::theme().choose(choice);
    QWidget place;
    auto *column = new QVBoxLayout(&place);
    const std::vector<QWidget *> controls{new QPushButton(QStringLiteral("Button"), &place),
                                          new QLineEdit(&place),
                                          new QCheckBox(QStringLiteral("Box"), &place),
                                          new QComboBox(&place), new QListWidget(&place)};
    auto *elsewhere = new QPushButton(QStringLiteral("Elsewhere"), &place);
    for (QWidget *control : controls)
        column->addWidget(control);
    column->addWidget(elsewhere);
    place.show();
    REQUIRE(QTest::qWaitForWindowExposed(&place));
    QApplication::setActiveWindow(&place);
    const QRgb accent = test::theme().colours().accent.rgb();
    const auto ring = [&](QWidget &control) {
        const QImage image = control.grab().toImage();
        int count = 0;
        for (int x = 0; x < image.width(); ++x) {
            for (int y = 0; y < image.height(); ++y)
                count += image.pixel(x, y) == accent ? 1 : 0;
        }
        return count;
    };
    for (QWidget *control : controls) {
        elsewhere->setFocus();
        const int without = ring(*control);
        control->setFocus();
        INFO(control->metaObject()->className());
        // Two pixels wide on at least the two longer edges.
        CHECK(ring(*control) - without > 2 * control->width());
    }
    test::theme().choose(Theme::Choice::Light);
}

} // namespace lastrivet::ui
