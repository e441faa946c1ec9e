// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/PhotoViewer.h"

#include "core/base/Sha256.h"
#include "tests/ui/support/PhotosWindow.h"
#include "ui/widgets/UnkeptHold.h"

#include <QDesktopServices>
#include <QFile>
#include <QImage>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include <QWheelEvent>
#include <filesystem>
#include <fstream>

#include <catch2/catch.hpp>

namespace lastrivet::test {

namespace {

/// The page with three photos, the newest of them open.
struct OpenViewer : PhotosWindow {
    OpenViewer()
    {
        page.takeIn({file(1), file(2), file(3)});
        grid().setFocus();
        grid().setCurrentIndex(grid().model()->index(0, 0));
        key(grid(), Qt::Key_Space);
        REQUIRE(picture().isVisible());
    }
    const Media &shown()
    {
        return *session->records()->find(page.findChild<ui::PhotoViewer *>()->shown());
    }
    const std::vector<Media::Annotation> &marks() { return shown().annotations; }
    QLineEdit &line(const QString &placeholderOrLabel)
    {
        for (auto *edit : page.findChild<ui::PhotoViewer *>()->findChildren<QLineEdit *>()) {
            if (edit->isVisible() && (edit->placeholderText() == placeholderOrLabel ||
                                      edit->accessibleName() == placeholderOrLabel))
                return *edit;
        }
        FAIL("no line " << placeholderOrLabel.toStdString());
        return *page.findChild<QLineEdit *>();
    }
    void stroke(const QPoint &from, const QPoint &to)
    {
        QTest::mousePress(&picture(), Qt::LeftButton, {}, from);
        QTest::mouseMove(&picture(), (from + to) / 2);
        QTest::mouseMove(&picture(), to);
        // The offscreen window does not press buttons while it moves.
        QMouseEvent move(QEvent::MouseMove, to, picture().mapToGlobal(QPointF(to)), Qt::NoButton,
                         Qt::LeftButton, {});
        QApplication::sendEvent(&picture(), &move);
        QTest::mouseRelease(&picture(), Qt::LeftButton, {}, to);
    }
    QPoint middle() { return picture().rect().center(); }
};

QByteArray contentOf(const QString &name)
{
    QFile file(name);
    REQUIRE(file.open(QIODevice::ReadOnly));
    return file.readAll();
}

class Opener : public QObject {
    Q_OBJECT

public:
    Opener() { QDesktopServices::setUrlHandler(QStringLiteral("file"), this, "open"); }
    ~Opener() override { QDesktopServices::unsetUrlHandler(QStringLiteral("file")); }
    QUrl opened;

public Q_SLOTS:
    void open(const QUrl &url) { opened = url; }
};

} // namespace

TEST_CASE("An arrow is drawn with the mouse, moved by keys, told in words, and removed")
{
    OpenViewer viewer;
    const QByteArray original = contentOf(
        QString::fromStdString((viewer.workshop.folder() / viewer.shown().file).string()));
    QTest::mouseClick(viewer.button(QStringLiteral("Arrow")), Qt::LeftButton);
    viewer.stroke(viewer.middle() - QPoint(80, 60), viewer.middle());
    REQUIRE(viewer.marks().size() == 1);
    CHECK(viewer.marks().front().shape == AnnotationShape::Arrow);
    const std::vector<double> drawn = viewer.marks().front().points;
    REQUIRE(drawn.size() == 4);
    CHECK(drawn[2] == Approx(0.5).margin(0.01));
    CHECK(drawn[0] < drawn[2]);
    CHECK(drawn[1] < drawn[3]);

    viewer.key(viewer.picture(), Qt::Key_Right);
    viewer.key(viewer.picture(), Qt::Key_Right);
    viewer.key(viewer.picture(), Qt::Key_Down, Qt::ShiftModifier);
    CHECK(viewer.marks().front().points == drawn);
    viewer.key(viewer.picture(), Qt::Key_Return);
    const std::vector<double> moved = viewer.marks().front().points;
    CHECK(moved[0] == Approx(drawn[0] + 0.01));
    CHECK(moved[1] == Approx(drawn[1]));
    CHECK(moved[3] == Approx(drawn[3] + 0.005));

    auto *words = qobject_cast<QLineEdit *>(QApplication::focusWidget());
    REQUIRE(words);
    QTest::keyClicks(words, QStringLiteral("cracked here"));
    QTest::keyClick(words, Qt::Key_Return);
    CHECK(viewer.marks().front().text == "cracked here");
    CHECK(QApplication::focusWidget() == &viewer.picture());
    viewer.key(viewer.picture(), Qt::Key_Delete);
    CHECK(viewer.marks().empty());
    viewer.session->undo();
    CHECK(viewer.marks().size() == 1);
    const Media &media = viewer.shown();
    const QByteArray after =
        contentOf(QString::fromStdString((viewer.workshop.folder() / media.file).string()));
    CHECK(after == original);
    CHECK(sha256({reinterpret_cast<const std::uint8_t *>(after.data()),
                  std::size_t(after.size())}) == media.sha256);
}

TEST_CASE("The tools for marks are whole in a small window, and stand in two lines there")
{
    OpenViewer viewer;
    const auto &place = *viewer.page.findChild<ui::PhotoViewer *>();
    for (const int width : {1100, 860, 700}) {
        viewer.page.resize(width, 680);
        QTest::qWait(20);
        for (const QPushButton *button : place.findChildren<QPushButton *>()) {
            if (!button->isVisible())
                continue;
            INFO(button->text().toStdString() << " at " << width);
            CHECK(button->width() >= button->sizeHint().width());
            CHECK(button->height() >= button->sizeHint().height());
            CHECK(button->parentWidget()->rect().contains(button->geometry()));
        }
    }
}

TEST_CASE("Marks are drawn by keyboard alone, and chosen one after the other")
{
    OpenViewer viewer;
    viewer.key(viewer.picture(), Qt::Key_C);
    viewer.key(viewer.picture(), Qt::Key_Escape);
    viewer.key(viewer.picture(), Qt::Key_W);
    auto *words = qobject_cast<QLineEdit *>(QApplication::focusWidget());
    REQUIRE(words);
    QTest::keyClicks(words, QStringLiteral("rib 3"));
    QTest::keyClick(words, Qt::Key_Return);
    REQUIRE(viewer.marks().size() == 2);
    CHECK(viewer.marks()[0].shape == AnnotationShape::Circle);
    CHECK(viewer.marks()[1] ==
          Media::Annotation{AnnotationShape::Text, viewer.marks()[1].points, "rib 3"});
    viewer.key(viewer.picture(), Qt::Key_Escape);
    QTest::keyClick(&viewer.picture(), Qt::Key_Tab);
    CHECK(viewer.picture().marks().chosen() == 0);
    viewer.key(viewer.picture(), Qt::Key_Delete);
    REQUIRE(viewer.marks().size() == 1);
    CHECK(viewer.marks()[0].text == "rib 3");
}

TEST_CASE("Words that were never written leave no mark")
{
    OpenViewer viewer;
    viewer.key(viewer.picture(), Qt::Key_W);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    viewer.key(viewer.picture(), Qt::Key_Escape);
    CHECK(viewer.marks().empty());
    CHECK(viewer.picture().marks().marks().empty());
}

TEST_CASE("A mark is taken by the mouse and put elsewhere, but not off the picture")
{
    OpenViewer viewer;
    viewer.key(viewer.picture(), Qt::Key_C);
    viewer.key(viewer.picture(), Qt::Key_Escape);
    const auto before = viewer.marks().front().points;
    CHECK(before[0] == Approx(0.5).margin(0.01));
    // The ring is taken where its line is: a tenth of the picture beside the middle.
    const double width = 640 * viewer.picture().scale();
    const QPoint line = viewer.middle() + QPoint(int(width / 10), 0);
    viewer.stroke(line, line + QPoint(5000, 0));
    const auto after = viewer.marks().front().points;
    CHECK(after[2] == Approx(1.0));
    CHECK(after[2] - after[0] == Approx(before[2] - before[0]));
}

TEST_CASE("The picture is enlarged by wheel and keys, moved, and shown whole again")
{
    OpenViewer viewer;
    ui::PictureView &picture = viewer.picture();
    CHECK(picture.isWhole());
    const double whole = picture.scale();
    QWheelEvent wheel(QPointF(viewer.middle()), picture.mapToGlobal(QPointF(viewer.middle())), {},
                      QPoint(0, 240), Qt::NoButton, {}, Qt::NoScrollPhase, false);
    QApplication::sendEvent(&picture, &wheel);
    CHECK(picture.scale() > whole);
    viewer.key(picture, Qt::Key_O);
    CHECK(picture.scale() == Approx(1.0));
    viewer.key(picture, Qt::Key_Plus);
    CHECK(picture.scale() == Approx(1.25));
    const Id<Media> shown = viewer.shown().id;
    viewer.key(picture, Qt::Key_Right);
    CHECK(viewer.shown().id == shown);
    viewer.key(picture, Qt::Key_F);
    CHECK(picture.isWhole());
    viewer.key(picture, Qt::Key_Right);
    CHECK(viewer.shown().id != shown);
    viewer.key(picture, Qt::Key_PageUp);
    CHECK(viewer.shown().id == shown);
    viewer.key(picture, Qt::Key_Escape);
    CHECK(QApplication::focusWidget() == &viewer.grid());
}

TEST_CASE("A caption that could not be saved waits with its photo")
{
    OpenViewer viewer;
    const Id<Media> first = viewer.shown().id;
    QLineEdit &caption = viewer.line(QStringLiteral("what there is to see"));
    const auto place = viewer.workshop.folder();
    auto elsewhere = place;
    elsewhere += ".unplugged";
    std::filesystem::rename(place, elsewhere);
    caption.setFocus();
    QTest::keyClicks(&caption, QStringLiteral("Bay 3"));
    viewer.button(QStringLiteral("Next"))->click();
    REQUIRE(viewer.shown().id != first);
    CHECK(caption.text().isEmpty());
    viewer.button(QStringLiteral("Previous"))->click();
    REQUIRE(viewer.shown().id == first);
    CHECK(caption.text() == QStringLiteral("Bay 3"));
    // The window does not close over it without a word.
    auto *hold = caption.window()->findChild<ui::UnkeptHold *>();
    REQUIRE(hold);
    CHECK(hold->isBegun());
    std::filesystem::rename(elsewhere, place);
    viewer.button(QStringLiteral("Next"))->click();
    CHECK_FALSE(hold->isBegun());
    CHECK(viewer.session->records()->find(first)->caption == "Bay 3");
    CHECK(caption.text().isEmpty());
}

TEST_CASE("Marks that could not be saved wait with their photo")
{
    OpenViewer viewer;
    const Id<Media> first = viewer.shown().id;
    const auto place = viewer.workshop.folder();
    auto elsewhere = place;
    elsewhere += ".unplugged";
    std::filesystem::rename(place, elsewhere);
    QTest::mouseClick(viewer.button(QStringLiteral("Arrow")), Qt::LeftButton);
    viewer.stroke(viewer.middle() - QPoint(80, 60), viewer.middle());
    REQUIRE(viewer.marks().empty());
    viewer.button(QStringLiteral("Next"))->click();
    REQUIRE(viewer.shown().id != first);
    viewer.button(QStringLiteral("Previous"))->click();
    REQUIRE(viewer.shown().id == first);
    std::filesystem::rename(elsewhere, place);
    viewer.button(QStringLiteral("Next"))->click();
    CHECK(viewer.session->records()->find(first)->annotations.size() == 1);
    CHECK(viewer.marks().empty());
}

TEST_CASE("A caption that is being written is kept when the next photo is shown")
{
    OpenViewer viewer;
    const Id<Media> first = viewer.shown().id;
    QLineEdit &caption = viewer.line(QStringLiteral("what there is to see"));
    caption.setFocus();
    QTest::keyClicks(&caption, QStringLiteral("Bay 3 before the skin"));
    viewer.button(QStringLiteral("Next"))->click();
    CHECK(viewer.session->records()->find(first)->caption == "Bay 3 before the skin");
    CHECK(caption.text().isEmpty());
}

TEST_CASE("Number keys say what the open photo shows")
{
    OpenViewer viewer;
    viewer.key(viewer.picture(), Qt::Key_4);
    CHECK(viewer.shown().shows == WordSet<Shows>{Shows::Defect});
}

TEST_CASE("Number keys in the open photo say nothing of the others that are chosen")
{
    OpenViewer viewer;
    const Id<Media> open = viewer.shown().id;
    viewer.grid().selectAll();
    viewer.key(viewer.picture(), Qt::Key_4);
    for (const Media &media : viewer.session->records()->media)
        CHECK(media.shows.contains(Shows::Defect) == (media.id == open));
}

TEST_CASE("Words of a mark that are being written are kept when the page goes")
{
    OpenViewer viewer;
    viewer.key(viewer.picture(), Qt::Key_W);
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("chafed"));
    viewer.page.findChild<ui::PhotoViewer *>()->settle();
    REQUIRE(viewer.marks().size() == 1);
    CHECK(viewer.marks().front().text == "chafed");
}

TEST_CASE("Videos are opened with the program that the computer has for them")
{
    PhotosWindow window;
    const Opener opener;
    // Only what is a video by its first bytes is handed on: ISO/IEC 14496-12, the box ftyp.
    const auto place = window.session->project().folder() / "photos/2026/run.mp4";
    std::filesystem::create_directories(place.parent_path());
    std::ofstream(place, std::ios::binary) << std::string("\0\0\0\x18"
                                                          "ftypmp42\0\0\0\0mp42isom",
                                                          24);
    window.change([](Edit &edit) {
        edit.put(Media{.kind = MediaKind::Video, .file = "photos/2026/run.mp4"});
    });
    window.grid().setFocus();
    window.grid().setCurrentIndex(window.grid().model()->index(0, 0));
    window.key(window.grid(), Qt::Key_Space);
    QPushButton *open = window.button(QStringLiteral("Open it"));
    REQUIRE(open);
    CHECK(QApplication::focusWidget() == open);
    QTest::keyClick(open, Qt::Key_Space);
    CHECK(
        opener.opened.toLocalFile().endsWith(QStringLiteral("Test.lastrivet/photos/2026/run.mp4")));
}

TEST_CASE("Escape leads from what is told of a photo back to the photos")
{
    PhotosWindow window;
    window.page.takeIn({window.file(1)});
    window.grid().setFocus();
    window.grid().selectAll();
    window.key(window.grid(), Qt::Key_A);
    auto *line = qobject_cast<QLineEdit *>(QApplication::focusWidget());
    REQUIRE(line);
    CHECK_FALSE(window.grid().hasFocus());
    QTest::keyClick(line, Qt::Key_Escape);
    CHECK(window.grid().hasFocus());
}

TEST_CASE("An open photo with marks is shown whole, and the marks are painted on it")
{
    OpenViewer viewer;
    const QRect centre(viewer.middle() - QPoint(100, 100), QSize(200, 200));
    const QImage before = viewer.picture().grab(centre).toImage();
    viewer.key(viewer.picture(), Qt::Key_C);
    viewer.key(viewer.picture(), Qt::Key_Escape);
    viewer.key(viewer.picture(), Qt::Key_A);
    viewer.picture().marks().setWords(QStringLiteral("overdriven"));
    CHECK(viewer.picture().grab(centre).toImage() != before);
    wholePicture(viewer.page, 1120, 660, "photo-marks");
    REQUIRE(viewer.marks().size() == 2);
    CHECK(viewer.marks().back().text == "overdriven");
}

} // namespace lastrivet::test

#include "PhotoViewerTest.moc"
