// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/certificate/CertificatePage.h"

#include "core/project/acts/PaperActs.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/Workshop.h"
#include "ui/certificate/CrossCheckView.h"
#include "ui/certificate/PaperModel.h"
#include "ui/certificate/PaperPanel.h"
#include "ui/certificate/PapersView.h"
#include "ui/certificate/ScanList.h"
#include "ui/shell/ProjectView.h"
#include "ui/widgets/PlainTable.h"
#include "ui/widgets/RowListView.h"

#include <QAbstractItemModelTester>
#include <QCoreApplication>
#include <QHeaderView>
#include <QImage>
#include <QLineEdit>
#include <QPushButton>
#include <QStyleOptionViewItem>
#include <QStyledItemDelegate>
#include <QTest>

#include <catch2/catch.hpp>

#include <algorithm>

namespace lastrivet::test {

namespace {

struct Window {
    Window()
    {
        view.resize(1280, 700);
        view.show();
        REQUIRE(QTest::qWaitForWindowExposed(&view));
        view.open(ui::PageId::Certificate);
    }
    ui::CertificatePage &page()
    {
        return static_cast<ui::CertificatePage &>(view.page(ui::PageId::Certificate));
    }
    ui::PlainTable &table() { return *page().papers().findChild<ui::PlainTable *>(); }
    /// Chooses a document and answers its line in the table.
    void choose(const QString &title)
    {
        const auto *model = table().model();
        for (int row = 0; row < model->rowCount(); ++row) {
            if (model->index(row, 0).data().toString() == title) {
                table().selectRow(row);
                return;
            }
        }
        FAIL("no such document: " << title.toStdString());
    }
    QString state()
    {
        return table()
            .model()
            ->index(table().currentRow(), ui::PaperModel::State)
            .data()
            .toString();
    }
    const CertificateDocument &only()
    {
        records = view.session().records();
        REQUIRE(records->certificate_documents.size() == 1);
        return *records->certificate_documents.begin();
    }

    Workshop workshop;
    ui::ProjectView view{workshop.session()};
    Snapshot records;
};

} // namespace

TEST_CASE("A document goes from missing over asked for to here, with its number and its scan",
          "[certificate]")
{
    Window window;
    QAbstractItemModelTester tester(window.table().model(),
                                    QAbstractItemModelTester::FailureReportingMode::Fatal);
    auto &page = window.page();
    const auto documents = window.view.session().project().profile().documents;
    REQUIRE(window.table().model()->rowCount() == int(documents.size()));
    const QString title = QString::fromStdString(documents.front().title);
    window.choose(title);
    CHECK(window.state() == QStringLiteral("Not here"));
    press(page, QStringLiteral("Mark as asked for…"));
    press(page, QStringLiteral("Mark as asked for"));
    CHECK(window.state().startsWith(QStringLiteral("Asked for on")));
    press(page, QStringLiteral("Mark as here…"));
    type(page, QStringLiteral("Number on it, if any"), QStringLiteral("A-17"));
    press(page, QStringLiteral("Mark as here"));
    CHECK(window.state().startsWith(QStringLiteral("Here since")));
    CHECK(window.only().number == "A-17");
    CHECK(window.only().asked_on == Moment::parse("2026-03-14"));

    const TemporaryFolder folder;
    QImage scan(40, 30, QImage::Format_RGB32);
    scan.fill(Qt::white);
    const QString file = QString::fromStdString((folder / "letter.png").string());
    REQUIRE(scan.save(file));
    auto &scans = *page.papers().findChild<ui::ScanList *>();
    Q_EMIT scans.filesOffered({file});
    REQUIRE(window.only().media_ids.size() == 1);
    Q_EMIT scans.takenOff(window.only().media_ids.front().value());
    CHECK(window.only().media_ids.empty());
}

TEST_CASE("A document is not here since a day that lies ahead", "[certificate]")
{
    Window window;
    auto &page = window.page();
    const auto documents = window.view.session().project().profile().documents;
    window.choose(QString::fromStdString(documents.front().title));
    press(page, QStringLiteral("Mark as here…"));
    type(page, QStringLiteral("Since"), QStringLiteral("2026-03-15"));
    press(page, QStringLiteral("Mark as here"));
    CHECK(says(page, QStringLiteral("lies ahead")));
    CHECK(window.view.session().records()->certificate_documents.size() == 0);
    type(page, QStringLiteral("Since"), QStringLiteral("2026-03-14"));
    press(page, QStringLiteral("Mark as here"));
    CHECK(window.only().received_on == Moment::parse("2026-03-14"));
}

TEST_CASE("A day that is typed as soon as it is asked for is the one that is written down",
          "[certificate]")
{
    Window window;
    auto &page = window.page();
    const auto documents = window.view.session().project().profile().documents;
    window.choose(QString::fromStdString(documents.front().title));
    press(page, QStringLiteral("Mark as asked for…"));
    QTest::keyClicks(window.view.focusWidget(), QStringLiteral("2026-03-01"));
    QTest::keyClick(window.view.focusWidget(), Qt::Key_Return);
    CHECK(window.only().asked_on == Moment::parse("2026-03-01"));
}

TEST_CASE("A newer copy of a document counts, and the older one stays to be read", "[certificate]")
{
    Window window;
    auto &page = window.page();
    const auto key = window.view.session().project().profile().documents.front().key;
    window.view.session().change(QStringLiteral("here"), [&](Edit &edit) {
        acts::receivePaper(edit, key, {}, *Moment::parse("2025-01-05"), "old");
    });
    window.table().selectRow(0);
    press(page, QStringLiteral("A newer one…"));
    press(page, QStringLiteral("Mark as asked for"));
    CHECK(window.view.session().records()->certificate_documents.size() == 2);
    // What is here counts until the newer one is.
    CHECK(window.state().startsWith(QStringLiteral("Here since")));
    CHECK(says(page, QStringLiteral("All records of it")));
    CHECK(says(page, QStringLiteral("A newer one was asked for on")));
    // It is marked as here as the first one was.
    Id<CertificateDocument> newer;
    const auto before = window.view.session().records();
    for (const auto &one : before->certificate_documents)
        newer = one.asked_on ? one.id : newer;
    REQUIRE(newer);
    page.papers().panel().showEarlier(newer);
    press(page, QStringLiteral("Mark as here…"));
    type(page, QStringLiteral("Number on it, if any"), QStringLiteral("new"));
    press(page, QStringLiteral("Mark as here"));
    const auto records = window.view.session().records();
    CHECK(records->find(newer)->number == "new");
    CHECK(window.state().startsWith(QStringLiteral("Here since")));
    CHECK_FALSE(says(page, QStringLiteral("A newer one was asked for on")));
}

TEST_CASE("A question about one record is left when another is chosen", "[certificate]")
{
    Window window;
    auto &page = window.page();
    const auto key = window.view.session().project().profile().documents.front().key;
    Id<CertificateDocument> old;
    window.view.session().change(QStringLiteral("two"), [&](Edit &edit) {
        old = acts::receivePaper(edit, key, {}, *Moment::parse("2024-01-05"), "old");
        acts::receivePaper(edit, key, {}, *Moment::parse("2025-01-05"), "new");
    });
    window.table().selectRow(0);
    press(page, QStringLiteral("Withdraw"));
    REQUIRE(says(page, QStringLiteral("will count nowhere any more")));
    QLineEdit &number = field(page, QStringLiteral("Number"));
    number.selectAll();
    QTest::keyClicks(&number, QStringLiteral("A-2"));
    page.papers().panel().showEarlier(old);
    CHECK_FALSE(says(page, QStringLiteral("will count nowhere any more")));
    // What was being typed belongs to the record that was shown.
    const auto records = window.view.session().records();
    CHECK(records->find(old)->number == "old");
    CHECK(std::ranges::any_of(records->certificate_documents,
                              [](const auto &one) { return one.number == "A-2"; }));
}

TEST_CASE("A document that is on no list is added by its name", "[certificate]")
{
    Window window;
    const int before = window.table().model()->rowCount();
    type(window.page(), QStringLiteral("A document that is on no list"),
         QStringLiteral("Noise certificate"));
    press(window.page(), QStringLiteral("Add"));
    CHECK(window.table().model()->rowCount() == before + 1);
    CHECK(window.table().currentRow() == before);
    CHECK(window.only().key == "Noise certificate");
    // Undo is about the document from there on, not about its words.
    CHECK_FALSE(
        field(window.page(), QStringLiteral("A document that is on no list")).isUndoAvailable());
    CHECK(says(window.page(), QStringLiteral("On no list of the country")));
}

TEST_CASE("The names of the documents are read whole, over several lines where they have to be",
          "[certificate]")
{
    Window window;
    auto &table = window.table();
    QCoreApplication::processEvents();
    int several = 0;
    for (int row = 0; row < table.model()->rowCount(); ++row) {
        const QString name = table.model()->index(row, ui::PaperModel::Title).data().toString();
        const int lines =
            table.fontMetrics().horizontalAdvance(name) / table.columnWidth(ui::PaperModel::Title);
        INFO(name.toStdString());
        CHECK(table.rowHeight(row) > lines * table.fontMetrics().height());
        several += lines > 0 ? 1 : 0;
    }
    CHECK(several > 0);
}

TEST_CASE("What a paper says otherwise than the project is counted, marked and led to",
          "[certificate]")
{
    Window window;
    auto &session = window.view.session();
    session.change(QStringLiteral("facts"), [&](Edit &edit) {
        ProjectFacts facts = edit.records().project;
        facts.registration = "C-FABC";
        edit.put(facts);
        CertificateDocument paper;
        paper.key = "registration";
        paper.registration_as_written = "C-FABD";
        edit.put(paper);
    });
    CHECK(window.page().crossCheck().disagreementCount() == 1);
    press(window.page(), QStringLiteral("Facts and agreement (≠ 1)"));
    CHECK(says(window.page(), QStringLiteral("do not agree")));
    auto &table = *window.page().crossCheck().findChild<ui::PlainTable *>();
    REQUIRE(table.model()->rowCount() == 2);
    CHECK(table.model()->index(1, 4).data().toString() == QStringLiteral("≠ C-FABD"));
    // No head is cut, and a paper's name is read whole, over several lines where it has to be.
    for (int column = 1; column < table.model()->columnCount(); ++column)
        CHECK(table.columnWidth(column) >= table.horizontalHeader()->sectionSizeHint(column));
    QCoreApplication::processEvents();
    const int lines =
        table.fontMetrics().horizontalAdvance(table.model()->index(1, 0).data().toString()) /
        table.columnWidth(0);
    CHECK(table.rowHeight(1) > lines * table.fontMetrics().height());
    // The lines of two papers do not run into each other.
    QStyleOptionViewItem narrow;
    narrow.initFrom(&table);
    narrow.widget = &table;
    narrow.rect = QRect(0, 0, 60, 400);
    narrow.features |= QStyleOptionViewItem::WrapText;
    const QModelIndex name = table.model()->index(1, 0);
    CHECK(table.itemDelegate()->sizeHint(narrow, name).height() >
          QStyledItemDelegate().sizeHint(narrow, name).height() + 4);
    Q_EMIT table.activated(table.model()->index(1, 0));
    CHECK(window.page().papers().isVisible());
    // The facts are mended where they are compared.
    window.page().open(window.page().crossCheck());
    type(window.page(), QStringLiteral("Registration"), QStringLiteral("C-FABD"));
    QTest::keyClick(&field(window.page(), QStringLiteral("Registration")), Qt::Key_Return);
    CHECK(session.records()->project.registration == "C-FABD");
    CHECK(window.page().crossCheck().disagreementCount() == 0);
}

TEST_CASE("Other records of the certificate are found on its page", "[certificate]")
{
    Window window;
    Id<Equipment> radio;
    window.view.session().change(QStringLiteral("radio"), [&](Edit &edit) {
        Equipment piece;
        piece.name = "Radio";
        radio = edit.put(piece);
    });
    window.view.goTo({RecordType::Equipment, radio.value()});
    CHECK(button(window.page(), QStringLiteral("Weight and balance"))->isChecked());
}

TEST_CASE("The documents are shown whole, with the first of them beside the list", "[certificate]")
{
    Window window;
    wholePicture(window.view, 1280, 700, "certificate-papers");
    CHECK(says(window.view, QStringLiteral("required documents are not here yet")));
    CHECK(says(window.view, window.table().model()->index(0, 0).data().toString()));
}

} // namespace lastrivet::test
