// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/PhotoIntake.h"

#include "tests/support/TestPictures.h"
#include "tests/ui/support/PhotosWindow.h"
#include "tests/ui/support/WaitingExecutor.h"
#include "ui/convert/QtText.h"
#include "ui/widgets/PictureInbox.h"

#include <QApplication>
#include <QClipboard>
#include <QCoreApplication>
#include <QDirIterator>
#include <QFile>
#include <QImage>
#include <QListWidget>
#include <QMimeData>
#include <QTest>
#include <QTranslator>
#include <QUrl>

#include <catch2/catch.hpp>

#include <memory>

namespace lastrivet::test {

namespace {

QStringList troubles(PhotosWindow &window)
{
    QStringList sentences;
    for (auto *list : window.page.findChildren<QListWidget *>()) {
        for (int i = 0;
             i < list->count() && list->accessibleName() == QStringLiteral("Not taken in"); ++i)
            sentences.append(list->item(i)->text());
    }
    return sentences;
}

} // namespace

TEST_CASE("Files are taken in, the same file once, and one that is no picture is told")
{
    PhotosWindow window;
    window.page.takeIn({window.file(1), window.file(2), window.file(1)});
    CHECK(window.media().size() == 2);
    CHECK(window.complaint.isEmpty());
    window.page.takeIn({window.textFile(QStringLiteral("no.jpg"), "not a picture")});
    CHECK(window.media().size() == 2);
    CHECK(window.complaint.contains(QStringLiteral("no.jpg is not a photo")));
}

TEST_CASE("The journal says in the language of the screen that photos were taken in")
{
    class German final : public QTranslator {
    public:
        bool isEmpty() const override { return false; }
        QString translate(const char *, const char *text, const char *, int) const override
        {
            return QLatin1String(text) == QLatin1String("%n photos taken in")
                       ? QStringLiteral("%n Fotos aufgenommen")
                       : QString();
        }
    };
    PhotosWindow window;
    German german;
    QCoreApplication::installTranslator(&german);
    window.page.takeIn({window.file(1), window.file(2)});
    QCoreApplication::removeTranslator(&german);
    CHECK(window.session->project().undoLabel() == "2 Fotos aufgenommen");
}

TEST_CASE("Photos of a camera whose clock is wrong are told when they are taken in")
{
    PhotosWindow window;
    window.page.takeIn({ui::pathText(testPicture("naive.jpg"))}); // of the day itself
    CHECK(window.said == QStringLiteral("1 taken in."));
    window.page.takeIn({ui::pathText(testPicture("offset.jpg"))}); // of July, and it is March
    CHECK(window.said ==
          QStringLiteral("1 taken in. 1 are dated ahead or years before the project; "
                         "was the camera's clock right?"));
    window.change([](Edit &edit) {
        ProjectFacts facts = edit.records().project;
        facts.started_on = Moment::parse("2030-01-01");
        edit.put(facts);
    });
    window.page.takeIn({ui::pathText(testPicture("oddoffset.jpg"))}); // of the day
    CHECK(window.said.contains(QStringLiteral("1 are dated ahead or years before")));
}

TEST_CASE("Each bad file has a sentence of its own, and the good ones are kept")
{
    PhotosWindow window;
    const QString good = window.file(1);
    QFile whole(good);
    REQUIRE(whole.open(QIODevice::ReadOnly));
    const QString cut = window.textFile(QStringLiteral("cut.mp4"), QByteArray("\0\0\0\x18"
                                                                              "ftypisom",
                                                                              12));
    window.page.takeIn({window.textFile(QStringLiteral("no.jpg"), "not a picture"), good, cut,
                        window.textFile(QStringLiteral("empty.png"), {})});
    CHECK(window.media().size() == 1);
    const QStringList sentences = troubles(window);
    REQUIRE(sentences.size() == 3);
    CHECK(sentences[0].contains(QStringLiteral("no.jpg is not a photo")));
    CHECK(sentences[1].contains(QStringLiteral("cut.mp4 is cut short")));
    CHECK(sentences[2] == QStringLiteral("empty.png is empty."));
    CHECK(window.complaint.startsWith(QStringLiteral("1 taken in.")));
    picture(window.page, 1120, 660, "photos-troubles");
}

TEST_CASE("A folder that goes away during intake is told once; what was read before is kept")
{
    PhotosWindow window;
    QStringList files{window.file(1), window.file(2)};
    for (int i = 0; i < 5; ++i)
        files.append(QStringLiteral("/media/not-there/%1.jpg").arg(i));
    window.page.takeIn(files);
    CHECK(window.media().size() == 2);
    CHECK(window.complaint == QStringLiteral("2 taken in. 5 files were not taken in, because the "
                                             "folder /media/not-there is not there any more."));
}

TEST_CASE("More photos than one batch are all stored, also when the page goes at once")
{
    Workshop workshop;
    auto session = workshop.session();
    {
        PhotosWindow source;
        QStringList files;
        for (int i = 0; i < 60; ++i)
            files.append(source.file(i));
        ui::PhotosPage page(*session);
        page.takeIn(files);
        CHECK(session->records()->media.size() < 60);
    }
    CHECK(session->records()->media.size() == 60);
    CHECK(session->project().undoLabel() == "60 photos taken in");
    session->undo();
    CHECK(session->records()->media.isEmpty());
    session->redo();
    CHECK(session->records()->media.size() == 60);
}

TEST_CASE("Who cancels when all is copied has nothing kept but what a form put on record meanwhile")
{
    const bool isAlsoInForm = GENERATE(false, true);
    PhotosWindow source;
    Workshop workshop;
    WaitingExecutor executor;
    ui::Session session(Project::open(workshop.folder(), {&workshop.clock, "Robin"}), executor,
                        theme());
    std::shared_ptr<ui::Progress> progress;
    QObject::connect(&session, &ui::Session::workStarted, &session,
                     [&](const std::shared_ptr<ui::Progress> &started) { progress = started; });
    const auto copies = [&] {
        int count = 0;
        QDirIterator files(ui::pathText(workshop.folder()), {QStringLiteral("*.png")}, QDir::Files,
                           QDirIterator::Subdirectories);
        for (; files.hasNext(); files.next())
            ++count;
        return count;
    };
    ui::PhotoIntake intake(session);
    intake.takeIn({source.file(1), source.file(2)}, {});
    executor.work();
    REQUIRE(copies() == 2);
    if (isAlsoInForm) {
        evidence::IncomingFile same;
        same.path = ui::toPath(source.file(1));
        REQUIRE(evidence::takeIn(session.project(), {same}).taken.size() == 1);
    }
    progress->cancel();
    executor.finish();
    const int kept = isAlsoInForm ? 1 : 0;
    CHECK(copies() == kept);
    CHECK(int(session.records()->media.size()) == kept);
}

TEST_CASE("A picture from the clipboard is taken in, and so are dropped files and folders")
{
    PhotosWindow window;
    QImage image(80, 60, QImage::Format_RGB32);
    image.fill(Qt::darkGreen);
    QApplication::clipboard()->setImage(image);
    window.grid().setFocus();
    window.key(window.grid(), Qt::Key_V, Qt::ControlModifier);
    REQUIRE(window.media().size() == 1);
    CHECK(window.lastMedia().width == 80);
    QApplication::clipboard()->setText(QStringLiteral("words"));
    window.key(window.grid(), Qt::Key_V, Qt::ControlModifier);
    CHECK(window.media().size() == 1);
    CHECK(window.said == QStringLiteral("There is no picture and no file to paste."));

    window.file(1);
    const QString single = window.file(2);
    QMimeData offer;
    offer.setUrls({QUrl::fromLocalFile(QString::fromStdString(window.folder.path().string())),
                   QUrl(QStringLiteral("https://example.org/a.jpg"))});
    ui::PictureInbox files;
    CHECK(files.filesIn(offer).size() == 2);
    offer.setUrls({QUrl::fromLocalFile(single)});
    CHECK(files.filesIn(offer) == QStringList{single});
}

} // namespace lastrivet::test
