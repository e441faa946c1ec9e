// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/certificate/MajorPortionView.h"

#include "core/project/acts/CreditActs.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/Workshop.h"
#include "ui/certificate/CertificatePage.h"
#include "ui/certificate/CreditModel.h"
#include "ui/certificate/PaidHelpBox.h"
#include "ui/certificate/TaskPanel.h"
#include "ui/certificate/TenthsEditor.h"
#include "ui/shell/ProjectView.h"
#include "ui/widgets/PlainTable.h"

#include <QAbstractItemModelTester>
#include <QComboBox>
#include <QCoreApplication>
#include <QHeaderView>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTest>

#include <catch2/catch.hpp>

namespace lastrivet::test {

namespace {

struct Window {
    Window()
    {
        view.resize(1280, 700);
        view.show();
        REQUIRE(QTest::qWaitForWindowExposed(&view));
        view.open(ui::PageId::Certificate);
        press(page(), QStringLiteral("Major portion"));
    }
    ui::CertificatePage &page()
    {
        return static_cast<ui::CertificatePage &>(view.page(ui::PageId::Certificate));
    }
    ui::MajorPortionView &portion() { return page().majorPortion(); }
    ui::PlainTable &table() { return *portion().findChild<ui::PlainTable *>(); }
    QString cell(int row, int column)
    {
        return table().model()->index(row, column).data().toString();
    }
    Id<CreditTask> add(const credit::Tenths &tenths, IdSet<Component> parts = {})
    {
        Id<CreditTask> made;
        view.session().change(QStringLiteral("task"), [&](Edit &edit) {
            made = acts::addTask(edit, "Wings", "Ribs");
            acts::setTenths(edit, made, tenths);
            edit.update(made, [&](CreditTask &task) { task.component_ids = parts; });
        });
        return made;
    }
    void tenths(int kit, int paid, int assembly, int fabrication)
    {
        const std::pair<const char *, int> boxes[] = {{"A: maker of kit or part", kit},
                                                      {"B: paid help", paid},
                                                      {"C: builder, assembly", assembly},
                                                      {"D: builder, fabrication", fabrication}};
        for (const auto &[name, value] : boxes) {
            for (auto *box : portion().findChildren<QSpinBox *>()) {
                if (box->accessibleName() == QLatin1String(name))
                    box->setValue(value);
            }
        }
    }
    const CreditTask &task(Id<CreditTask> id)
    {
        records = view.session().records();
        return *records->find(id);
    }

    Workshop workshop;
    ui::ProjectView view{workshop.session()};
    Snapshot records;
};

} // namespace

TEST_CASE("The usual tasks of a class are added once, and count for the maker until told otherwise",
          "[certificate]")
{
    Window window;
    CHECK(says(window.portion(), QStringLiteral("No task that applies is entered yet.")));
    press(window.portion(), QStringLiteral("Add the usual tasks"));
    const int rows = window.table().model()->rowCount();
    CHECK(rows > 30);
    CHECK(window.cell(0, ui::CreditModel::Maker) == QStringLiteral("10"));
    CHECK(window.portion().verdict().contains(QStringLiteral("the builder does not have more")));
    press(window.portion(), QStringLiteral("Add the usual tasks"));
    CHECK(window.table().model()->rowCount() == rows);
}

TEST_CASE("Tenths that add up to nine are not kept, and one sentence says why", "[certificate]")
{
    Window window;
    const auto id = window.add({10, 0, 0, 0});
    window.tenths(3, 0, 4, 2);
    CHECK(says(window.portion(),
               QStringLiteral("The four columns add up to 9; the tenths of a task add up to 10.")));
    press(window.portion(), QStringLiteral("Keep the tenths"));
    CHECK(window.task(id).kit_tenths == 10);
    window.tenths(3, 1, 4, 2);
    press(window.portion(), QStringLiteral("Keep the tenths"));
    CHECK(credit::tenthsOf(window.task(id)) == credit::Tenths{3, 1, 4, 2});
    CHECK(window.cell(0, ui::CreditModel::BuilderTick) == QStringLiteral("1"));
    CHECK(window.portion().verdict().contains(QStringLiteral("the authority decides")));
}

TEST_CASE("With Enter the tenths are kept and the next task has its turn", "[certificate]")
{
    Window window;
    const auto first = window.add({10, 0, 0, 0});
    const auto second = window.add({10, 0, 0, 0});
    window.table().selectRow(0);
    window.portion().panel().tenths().startTyping();
    QTest::keyClicks(window.view.focusWidget(), QStringLiteral("4"));
    QTest::keyClick(window.view.focusWidget(), Qt::Key_Tab);
    QTest::keyClick(window.view.focusWidget(), Qt::Key_Tab);
    QTest::keyClicks(window.view.focusWidget(), QStringLiteral("6"));
    QTest::keyClick(window.view.focusWidget(), Qt::Key_Return);
    CHECK(credit::tenthsOf(window.task(first)) == credit::Tenths{4, 0, 6, 0});
    CHECK(window.portion().panel().shown() == second);
}

TEST_CASE("The Tab key leads from the tenths to the buttons below them", "[certificate]")
{
    Window window;
    window.add({10, 0, 0, 0});
    window.table().selectRow(0);
    ui::MajorPortionView &portion = window.portion();
    portion.panel().tenths().startTyping();
    QTest::keyClicks(window.view.focusWidget(), QStringLiteral("4"));
    for (int i = 0; i < 4; ++i)
        QTest::keyClick(window.view.focusWidget(), Qt::Key_Tab);
    CHECK(window.view.focusWidget() == button(portion, QStringLiteral("Keep the tenths")));
    QTest::keyClick(window.view.focusWidget(), Qt::Key_Tab);
    CHECK(window.view.focusWidget() == button(portion, QStringLiteral("Mark as not applying")));
}

TEST_CASE("Tenths that are typed and not kept wait with their task; Escape shows what is on record",
          "[certificate]")
{
    Window window;
    const auto first = window.add({10, 0, 0, 0});
    window.add({10, 0, 0, 0});
    window.table().selectRow(0);
    ui::TenthsEditor &tenths = window.portion().panel().tenths();
    tenths.startTyping();
    QTest::keyClicks(window.view.focusWidget(), QStringLiteral("4"));
    REQUIRE(tenths.isBeingTyped());
    window.table().selectRow(1);
    CHECK(tenths.tenths() == credit::Tenths{10, 0, 0, 0});
    CHECK_FALSE(tenths.isBeingTyped());
    window.table().selectRow(0);
    REQUIRE(window.portion().panel().shown() == first);
    CHECK(tenths.tenths() == credit::Tenths{4, 0, 0, 0});
    tenths.startTyping();
    QTest::keyClick(window.view.focusWidget(), Qt::Key_Escape);
    CHECK(tenths.tenths() == credit::Tenths{10, 0, 0, 0});
    window.table().selectRow(1);
    window.table().selectRow(0);
    CHECK_FALSE(tenths.isBeingTyped());
    CHECK(credit::tenthsOf(window.task(first)) == credit::Tenths{10, 0, 0, 0});
}

TEST_CASE("Tenths that are typed are kept when the hand rests", "[certificate]")
{
    Window window;
    const auto task = window.add({10, 0, 0, 0});
    window.table().selectRow(0);
    REQUIRE(window.portion().panel().shown() == task);
    const std::string key = "task_tenths:" + std::to_string(task.value());
    const auto kept = [&] { return window.view.session().localState(key).value; };
    window.tenths(4, 0, 0, 0);
    CHECK_FALSE(kept());
    CHECK(QTest::qWaitFor([&] { return kept() == "4 0 0 0"; }, 5000));
    window.tenths(10, 0, 0, 0);
    CHECK(QTest::qWaitFor([&] { return !kept(); }, 5000));
}

TEST_CASE("Paid help is asked about before the work, and nothing is changed by asking",
          "[certificate]")
{
    Window window;
    const auto id = window.add({4, 0, 2, 4});
    window.add({10, 0, 0, 0});
    window.add({0, 0, 0, 10});
    window.table().selectRow(0);
    auto &help = window.portion().panel().paidHelp();
    CHECK(window.portion().verdict().contains(QStringLiteral("Ticks of the builder: 2")));
    for (auto *box : help.findChildren<QSpinBox *>()) {
        if (box->accessibleName() == QStringLiteral("Tenths of the fabrication"))
            box->setValue(4);
    }
    CHECK(help.answer().contains(QStringLiteral("Ticks of the builder: 1, of the maker: 2")));
    CHECK(window.task(id).fabrication_tenths == 4);
    press(window.portion(), QStringLiteral("It will be so: keep these tenths"));
    CHECK(credit::tenthsOf(window.task(id)) == credit::Tenths{4, 4, 2, 0});
    CHECK(help.tenths() == credit::Tenths{4, 4, 2, 0});
    CHECK_FALSE(button(window.portion(), QStringLiteral("It will be so: keep these tenths")));
    // In a form of ticks no sum of tenths tells what may still be paid for.
    CHECK(help.answer().isEmpty());
}

TEST_CASE("More paid help than there is of the task is not answered with what was asked before",
          "[certificate]")
{
    Window window;
    window.add({0, 0, 4, 6});
    window.table().selectRow(0);
    auto &help = window.portion().panel().paidHelp();
    QSpinBox *assembly = nullptr;
    for (auto *box : help.findChildren<QSpinBox *>()) {
        if (box->accessibleName() == QStringLiteral("Tenths of the assembly"))
            assembly = box;
    }
    REQUIRE(assembly);
    const auto isAnswered = [&](const QString &typed) {
        assembly->selectAll();
        QTest::keyClicks(assembly, typed);
        return help.answer().contains(QStringLiteral("By these figures"));
    };
    CHECK(isAnswered(QStringLiteral("3")));
    CHECK_FALSE(isAnswered(QStringLiteral("9")));
    CHECK_FALSE(button(window.portion(), QStringLiteral("It will be so: keep these tenths")));
    CHECK(isAnswered(QStringLiteral("3")));
}

TEST_CASE("Tenths that are kept as paid for are taken from the builder once", "[certificate]")
{
    Window window;
    const auto id = window.add({0, 0, 10, 0});
    window.table().selectRow(0);
    auto &help = window.portion().panel().paidHelp();
    for (auto *box : help.findChildren<QSpinBox *>()) {
        if (box->accessibleName() == QStringLiteral("Tenths of the assembly"))
            box->setValue(3);
    }
    CHECK(help.answer().contains(QStringLiteral("By these figures")));
    CHECK(help.answer().contains(QStringLiteral("the authority decides")));
    press(window.portion(), QStringLiteral("It will be so: keep these tenths"));
    Q_EMIT help.wanted();
    CHECK(credit::tenthsOf(window.task(id)) == credit::Tenths{0, 3, 7, 0});
}

TEST_CASE("What was being typed for one task is kept for it when another is chosen",
          "[certificate]")
{
    Window window;
    const auto first = window.add({10, 0, 0, 0});
    const auto second = window.add({10, 0, 0, 0});
    window.table().selectRow(0);
    QLineEdit &section = field(window.portion(), QStringLiteral("Section"));
    section.selectAll();
    QTest::keyClicks(&section, QStringLiteral("Tail"));
    window.table().selectRow(1);
    CHECK(window.task(first).section == "Tail");
    CHECK(window.task(second).section == "Wings");
}

TEST_CASE("A claimed task without a picture is told until one shows the builder at work",
          "[certificate]")
{
    Window window;
    QAbstractItemModelTester tester(window.table().model(),
                                    QAbstractItemModelTester::FailureReportingMode::Fatal);
    window.add({0, 0, 0, 10}, {window.workshop.wing});
    CHECK(window.cell(0, ui::CreditModel::Evidence) == QStringLiteral("no picture"));
    CHECK(says(window.portion(), QStringLiteral("No picture shows the builder at work on it.")));
    // The log entry on the bay inside the wing belongs to it.
    CHECK(says(window.portion(), QStringLiteral("Log entries of its parts")));
    window.view.session().change(QStringLiteral("photo"), [&](Edit &edit) {
        Media photo;
        photo.file = "photos/at-work.jpg";
        photo.sha256 = std::string(64, 'a');
        photo.shows = {Shows::BuilderAtWork};
        photo.links = {{RecordType::Component, window.workshop.bay.value()}};
        edit.put(photo);
    });
    CHECK(window.cell(0, ui::CreditModel::Evidence).contains(QStringLiteral("1 pictures")));
    CHECK_FALSE(says(window.portion(), QStringLiteral("No picture shows the builder")));
}

TEST_CASE("A task is added with its section, and one that the aircraft has not counts nowhere",
          "[certificate]")
{
    Window window;
    type(window.portion(), QStringLiteral("A task that the form does not name"),
         QStringLiteral("Floats: Fitting of the floats"));
    press(window.portion(), QStringLiteral("Add a task"));
    REQUIRE(window.table().model()->rowCount() == 1);
    CHECK(window.cell(0, ui::CreditModel::Section) == QStringLiteral("Floats"));
    CHECK(window.cell(0, ui::CreditModel::Task) == QStringLiteral("Fitting of the floats (added)"));
    press(window.portion(), QStringLiteral("Mark as not applying"));
    CHECK(window.cell(0, ui::CreditModel::Evidence) == QStringLiteral("does not apply"));
    CHECK(says(window.portion(), QStringLiteral("No task that applies is entered yet.")));
}

TEST_CASE(
    "In a narrower window the section gives way, and the table of tasks does not scroll sideways",
    "[certificate]")
{
    Window window;
    press(window.portion(), QStringLiteral("Add the usual tasks"));
    auto &table = window.table();
    window.view.resize(1200, 700);
    QCoreApplication::processEvents();
    CHECK(table.horizontalHeader()->length() <= table.viewport()->width());
    const int narrow = table.columnWidth(ui::CreditModel::Section);
    window.view.resize(1900, 700);
    QCoreApplication::processEvents();
    CHECK(table.columnWidth(ui::CreditModel::Section) >= narrow);
    CHECK(table.horizontalHeader()->length() <= table.viewport()->width());
}

TEST_CASE("The count of claimed tasks without a picture leads from one to the next",
          "[certificate]")
{
    Window window;
    window.add({10, 0, 0, 0});
    window.add({0, 0, 0, 10});
    window.add({10, 0, 0, 0});
    window.add({0, 0, 10, 0});
    window.table().selectRow(0);
    const QString words = QStringLiteral("2 claimed tasks have no picture.");
    for (const int row : {1, 3, 1}) {
        press(window.portion(), words);
        CHECK(window.table().currentRow() == row);
    }
    // Nobody needs to show what the aircraft has not.
    window.table().selectRow(3);
    press(window.portion(), QStringLiteral("Mark as not applying"));
    CHECK_FALSE(button(window.portion(), words));
    press(window.portion(), QStringLiteral("1 claimed tasks have no picture."));
    CHECK(window.table().currentRow() == 1);
}

TEST_CASE("What shows a task is read whole beside its name", "[certificate]")
{
    Window window;
    window.add({0, 0, 0, 10}, {window.workshop.wing});
    window.view.session().change(QStringLiteral("photos"), [&](Edit &edit) {
        for (const char letter : {'a', 'b', 'c', 'd'}) {
            Media photo;
            photo.file = std::string("photos/at-work-") + letter + ".jpg";
            photo.sha256 = std::string(64, letter);
            photo.shows = {Shows::BuilderAtWork};
            photo.links = {{RecordType::Component, window.workshop.wing.value()}};
            edit.put(photo);
        }
    });
    QCoreApplication::processEvents();
    const auto &table = window.table();
    const QModelIndex shown = table.model()->index(0, ui::CreditModel::Evidence);
    REQUIRE(shown.data().toString() == QStringLiteral("4 pictures, 1 entries"));
    CHECK(table.columnWidth(ui::CreditModel::Evidence) >= table.sizeHintForIndex(shown).width());
    CHECK(table.horizontalHeader()->length() <= table.viewport()->width());
}

TEST_CASE("The major portion is shown whole, with the verdict and the first task", "[certificate]")
{
    Window window;
    press(window.portion(), QStringLiteral("Add the usual tasks"));
    wholePicture(window.view, 1280, 700, "certificate-portion");
    CHECK(says(window.view, QStringLiteral("the authority decides")));
    CHECK(says(window.view, QStringLiteral("Together 10 tenths.")));
}

} // namespace lastrivet::test
