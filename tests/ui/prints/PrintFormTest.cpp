// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/prints/PrintForm.h"

#include "tests/ui/support/Hands.h"
#include "tests/ui/support/Workshop.h"
#include "ui/convert/QtText.h"
#include "ui/convert/UsualFolders.h"
#include "ui/shell/MainWindow.h"
#include "ui/shell/ProjectView.h"

#include <QAccessible>
#include <QComboBox>
#include <QDesktopServices>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSettings>
#include <QTest>
#include <QUrl>

#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>
#include <sys/stat.h>

namespace lastrivet::ui {

namespace {

/// Takes the place of the program that would show a finished paper.
class Reader final : public QObject {
    Q_OBJECT

public:
    Reader() { QDesktopServices::setUrlHandler(QStringLiteral("file"), this, "show"); }
    ~Reader() override { QDesktopServices::unsetUrlHandler(QStringLiteral("file")); }
    QStringList shown;

public Q_SLOTS:
    void show(const QUrl &url) { shown << url.toLocalFile(); }
};

struct Desk {
    Desk()
    {
        REQUIRE(window.openFolder(pathText(workshop.folder())));
        window.resize(1280, 720);
        window.show();
    }

    QString file(const char *name) const { return pathText(folder / name); }
    QLineEdit &fileLine() const
    {
        for (QLineEdit *line : form().findChildren<QLineEdit *>()) {
            if (line->accessibleName() == QLatin1String("File"))
                return *line;
        }
        FAIL("no line for the file");
        throw 0;
    }
    PrintForm &form() const { return window.printForm(); }
    /// Opens the form, types a file over the offered one, and prints by key.
    void print(PrintKind kind, const QString &file)
    {
        form().open(window.view()->session(), kind);
        fileLine().selectAll();
        QTest::keyClicks(&fileLine(), file);
        QTest::keyClick(&fileLine(), Qt::Key_Return, Qt::ControlModifier);
    }
    int printedRows() const
    {
        int count = 0;
        for (const JournalEntry &entry : window.view()->session().project().journal())
            count += entry.kind == ChangeKind::Printed ? 1 : 0;
        return count;
    }

    test::Workshop workshop;
    test::TemporaryFolder folder;
    QSettings settings{pathText(folder / "settings.ini"), QSettings::IniFormat};
    Reader reader;
    MainWindow window{{settings, workshop.executor, test::theme(), workshop.clock}};
};

QByteArray beginningOf(const QString &file)
{
    QFile stream(file);
    return stream.open(QIODevice::ReadOnly) ? stream.read(8) : QByteArray();
}

} // namespace

TEST_CASE(
    "Every paper is printed by keyboard and opened, and the journal says so where it is shown")
{
    Desk desk;
    for (int index = 0; index < printKindCount; ++index) {
        const PrintKind kind = PrintKind(index);
        INFO(nameOf(kind).toStdString());
        const int rows = desk.printedRows();
        const QString typed = desk.file(("paper-" + std::to_string(index)).c_str());
        const QString file = typed + QStringLiteral(".pdf");
        desk.print(kind, typed);
        CHECK_FALSE(QFile::exists(typed));
        const bool isEmptyHere = kind == PrintKind::LotLabels || kind == PrintKind::ToolLabels ||
                                 kind == PrintKind::Calendar;
        CHECK(QFile::exists(file) == !isEmptyHere);
        if (isEmptyHere)
            continue;
        CHECK_FALSE(desk.form().isVisible());
        CHECK(beginningOf(file).startsWith("%PDF-1."));
        CHECK(desk.reader.shown.last() == file);
        CHECK(desk.printedRows() - rows == (isForLabels(kind) ? 0 : 1));
    }
}

TEST_CASE(
    "Ctrl+P asks for tags of all that must stay open; Esc leads back to where the keyboard was")
{
    Desk desk;
    const QWidget *before = desk.window.focusWidget();
    test::picture(desk.window, 1280, 720, "print-before");
    QTest::keyClick(&desk.window, Qt::Key_P, Qt::ControlModifier);
    REQUIRE(desk.form().isVisible());
    CHECK(desk.form().wish().kind == PrintKind::Tags);
    CHECK(desk.form().wish().closings ==
          IdSet<Closing>{desk.workshop.wingClosing, desk.workshop.aileronClosing});
    test::picture(desk.window, 1280, 720, "print-tags");
    QTest::keyClick(&desk.form(), Qt::Key_Escape);
    CHECK_FALSE(desk.form().isVisible());
    REQUIRE(before);
    CHECK(desk.window.focusWidget() == before);
}

TEST_CASE("A single tag is printed after the others were unticked by one button")
{
    Desk desk;
    desk.form().open(desk.window.view()->session(), PrintKind::Tags);
    const auto press = [&](const char *words) {
        for (QPushButton *button : desk.form().findChildren<QPushButton *>()) {
            if (button->text() == QLatin1String(words))
                button->click();
        }
    };
    press("Tick none");
    CHECK(desk.form().wish().closings.empty());
    auto &list = *desk.form().findChild<QListWidget *>();
    list.setCurrentRow(1);
    QTest::keyClick(&list, Qt::Key_Space);
    CHECK(desk.form().wish().closings.size() == 1);
    press("Tick all");
    CHECK(desk.form().wish().closings.size() == 2);
}

TEST_CASE("Tags are for the closing that is opened, where it is one to tag")
{
    Desk desk;
    desk.form().open(desk.window.view()->session(), PrintKind::Tags);
    const IdSet<Closing> all = desk.form().wish().closings;
    REQUIRE(all.size() == 2);
    desk.form().open(desk.window.view()->session(), PrintKind::Tags, all.back());
    CHECK(desk.form().wish().closings == IdSet<Closing>{all.back()});
    const QListWidgetItem *current = desk.form().findChild<QListWidget *>()->currentItem();
    REQUIRE(current);
    CHECK(current->checkState() == Qt::Checked);
}

TEST_CASE("A file that is there is replaced only when asked twice")
{
    Desk desk;
    const QString file = desk.file("older.pdf");
    QFile older(file);
    REQUIRE(older.open(QIODevice::WriteOnly));
    older.write("older");
    older.close();
    desk.print(PrintKind::WeekForm, file);
    CHECK(desk.form().isVisible());
    CHECK(beginningOf(file) == "older");
    QTest::keyClick(&desk.fileLine(), Qt::Key_Return, Qt::ControlModifier);
    CHECK_FALSE(desk.form().isVisible());
    CHECK(beginningOf(file).startsWith("%PDF"));
}

TEST_CASE("Enter in the line of the file prints, as it saves in a dialog of files")
{
    Desk desk;
    desk.form().open(desk.window.view()->session(), PrintKind::WeekForm);
    const QString file = desk.file("week.pdf");
    desk.fileLine().setFocus();
    desk.fileLine().selectAll();
    QTest::keyClicks(&desk.fileLine(), file);
    QTest::keyClick(&desk.fileLine(), Qt::Key_Return);
    CHECK_FALSE(desk.form().isVisible());
    CHECK(beginningOf(file).startsWith("%PDF"));
}

TEST_CASE("A paper speaks the language that was chosen for it")
{
    Desk desk;
    desk.form().open(desk.window.view()->session(), PrintKind::HandOver);
    auto *language = [&]() -> QComboBox * {
        for (auto *box : desk.form().findChildren<QComboBox *>()) {
            if (box->findData(int(QLocale::German)) >= 0)
                return box;
        }
        return nullptr;
    }();
    REQUIRE(language);
    language->setCurrentIndex(language->findData(int(QLocale::German)));
    const print::Wording wording = desk.form().wish().choices.wording;
    CHECK(wording.text("Contents") != QStringLiteral("Contents"));
    CHECK(wording.locale().language() == QLocale::German);
}

TEST_CASE("A folder that is not there is said in the form, which stays as it is filled in")
{
    Desk desk;
    const Project &project = desk.window.view()->session().project();
    const auto rows = project.journal().size();
    desk.print(PrintKind::HandOver, desk.file("nowhere/book.pdf"));
    CHECK(test::says(desk.form(), QStringLiteral("There is no folder")));
    CHECK(project.journal().size() == rows);
    CHECK(desk.reader.shown.isEmpty());
    REQUIRE(desk.form().isVisible());
    const QString better = desk.file("book.pdf");
    desk.fileLine().selectAll();
    QTest::keyClicks(&desk.fileLine(), better);
    QTest::keyClick(&desk.fileLine(), Qt::Key_Return, Qt::ControlModifier);
    CHECK_FALSE(desk.form().isVisible());
    CHECK(beginningOf(better).startsWith("%PDF"));
}

TEST_CASE("A folder that is typed alone is said to lack the name of the file, and is not replaced")
{
    Desk desk;
    const QString folder = desk.file("papers");
    REQUIRE(QDir().mkdir(folder));
    desk.print(PrintKind::HandOver, folder + QLatin1Char('/'));
    CHECK(test::says(desk.form(), QStringLiteral("papers is a folder")));
    CHECK_FALSE(test::says(desk.form(), QStringLiteral("Press again")));
    CHECK(desk.form().isVisible());
    CHECK(QFileInfo(folder).isDir());
}

TEST_CASE("A file that is typed without its folder is where papers usually go")
{
    Desk desk;
    desk.form().open(desk.window.view()->session(), PrintKind::WeekForm);
    const auto fileFor = [&](const QString &typed) {
        desk.fileLine().setText(typed);
        return desk.form().wish().file;
    };
    CHECK(fileFor(QStringLiteral("week")) ==
          QDir(documentsFolder()).filePath(QStringLiteral("week.pdf")));
    CHECK(fileFor(QStringLiteral("~/week.pdf")) ==
          QDir::home().filePath(QStringLiteral("week.pdf")));
    CHECK(fileFor(desk.file("week.pdf")) == desk.file("week.pdf"));
    CHECK(fileFor(QStringLiteral(" ")).isEmpty());
}

TEST_CASE("Where a link lies, the file behind it is replaced; a pipe is no place for a paper")
{
    Desk desk;
    const Project &project = desk.window.view()->session().project();
    const auto target = desk.folder / "target.pdf";
    const auto link = desk.folder / "link.pdf";
    std::ofstream(target) << "older";
    std::filesystem::create_symlink(target, link);
    desk.print(PrintKind::WeekForm, pathText(link));
    QTest::keyClick(&desk.fileLine(), Qt::Key_Return, Qt::ControlModifier);
    CHECK(std::filesystem::is_symlink(link));
    CHECK(beginningOf(pathText(target)).startsWith("%PDF"));

    QString said;
    QObject::connect(&desk.window.view()->session(), &Session::complained, &desk.window,
                     [&said](const QString &sentence) { said = sentence; });
    const auto pipe = desk.folder / "pipe.pdf";
    REQUIRE(mkfifo(pipe.c_str(), 0600) == 0);
    const auto rows = project.journal().size();
    desk.print(PrintKind::HandOver, pathText(pipe));
    if (said.isEmpty())
        QTest::keyClick(&desk.fileLine(), Qt::Key_Return, Qt::ControlModifier);
    CHECK(said.contains(QLatin1String("a device or a pipe")));
    CHECK(std::filesystem::is_fifo(pipe));
    CHECK(project.journal().size() == rows);
}

TEST_CASE("Everything in the form that the keyboard reaches has a name")
{
    Desk desk;
    for (int index = 0; index < printKindCount; ++index) {
        desk.form().open(desk.window.view()->session(), PrintKind(index));
        for (QWidget *widget : desk.form().findChildren<QWidget *>()) {
            if (!(widget->focusPolicy() & Qt::TabFocus) || !widget->isVisible())
                continue;
            auto *interface = QAccessible::queryAccessibleInterface(widget);
            INFO(widget->metaObject()->className());
            CHECK_FALSE(interface->text(QAccessible::Name).isEmpty());
        }
    }
}

} // namespace lastrivet::ui

#include "PrintFormTest.moc"
