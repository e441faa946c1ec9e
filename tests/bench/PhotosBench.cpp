// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later

// How smooth the photos page is: photos_bench FOLDER [PHOTOS [NEW]]. Scrolls through PHOTOS photos
// whose copies are cached, by date and by part, at wheel speed and at full speed, and takes NEW
// photographs of 12 megapixels in while the page is shown. Prints the longest turns of the event
// loop, in milliseconds by the clock and of this thread's own work: on a busy machine only the
// second says how long the program itself held the window up.
#include "core/base/Clock.h"
#include "core/base/Sha256.h"
#include "core/profiles/ProfileLibrary.h"
#include "ui/convert/QtText.h"
#include "ui/photos/PhotoGrid.h"
#include "ui/photos/PhotosPage.h"
#include "ui/shell/Session.h"

#include <QApplication>
#include <QComboBox>
#include <QDir>
#include <QElapsedTimer>
#include <QImage>
#include <QPainter>
#include <QScrollBar>

#include <fmt/format.h>
#include <time.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <random>

using namespace lastrivet;

namespace fs = std::filesystem;

namespace {

double ownMilliseconds()
{
    timespec time{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &time);
    return double(time.tv_sec) * 1e3 + double(time.tv_nsec) / 1e6;
}

/// Turns of the event loop, each measured.
class Turns {
public:
    template <class Act> void turn(Act act)
    {
        const double own = ownMilliseconds();
        m_clock.start();
        act();
        QCoreApplication::processEvents();
        m_wall.push_back(double(m_clock.nsecsElapsed()) / 1e6);
        m_own.push_back(ownMilliseconds() - own);
    }
    void print(std::string_view what)
    {
        std::ranges::sort(m_wall);
        std::ranges::sort(m_own);
        const auto at = [](const std::vector<double> &sorted, double share) {
            return sorted[std::size_t(double(sorted.size() - 1) * share)];
        };
        fmt::print("{:34} {:6} turns   clock: median {:5.1f}, 99 % {:5.1f}, longest {:5.1f}   "
                   "own: median {:5.1f}, 99 % {:5.1f}, longest {:5.1f}\n",
                   what, m_wall.size(), at(m_wall, 0.5), at(m_wall, 0.99), m_wall.back(),
                   at(m_own, 0.5), at(m_own, 0.99), m_own.back());
        std::fflush(stdout);
    }

private:
    QElapsedTimer m_clock;
    std::vector<double> m_wall;
    std::vector<double> m_own;
};

QImage noisyPicture(const QSize &size, unsigned seed)
{
    std::minstd_rand random(seed);
    QImage image(size, QImage::Format_RGB32);
    for (int y = 0; y < size.height(); ++y) {
        auto *line = reinterpret_cast<QRgb *>(image.scanLine(y));
        for (int x = 0; x < size.width(); ++x) {
            const int shade = (x * 90 / size.width()) + int(seed * 17 % 60) + int(random() & 31);
            line[x] = qRgb(shade, shade + 8, shade + 20);
        }
    }
    return image;
}

/// Small copies as the cache keeps them, of some pictures that repeat.
void cacheCopies(const fs::path &project, const std::vector<std::string> &hashes)
{
    std::vector<QByteArray> copies;
    for (unsigned seed = 0; seed < 24; ++seed) {
        const QString name = ui::pathText(project / "copy.jpg");
        noisyPicture({256, 192}, seed).save(name, "JPG", 80);
        QFile file(name);
        if (file.open(QIODevice::ReadOnly))
            copies.push_back(file.readAll());
    }
    for (std::size_t i = 0; i < hashes.size(); ++i) {
        const fs::path folder = project / "cache" / hashes[i].substr(0, 2);
        fs::create_directories(folder);
        const QByteArray &copy = copies[i % copies.size()];
        std::ofstream(folder / (hashes[i] + "-256.jpg"), std::ios::binary)
            .write(copy.data(), copy.size());
    }
}

void fill(Project &project, int photos)
{
    std::vector<std::string> hashes;
    for (int i = 0; i < photos; ++i) {
        const std::string text = fmt::format("photo {}", i);
        hashes.push_back(
            sha256({reinterpret_cast<const std::uint8_t *>(text.data()), text.size()}));
    }
    const auto result = project.change("Everything", [&](Edit &edit) {
        std::vector<std::int64_t> parts;
        for (int i = 0; i < 400; ++i) {
            Component part;
            part.code = fmt::format("P{}", i);
            part.name = fmt::format("Part {}", i);
            if (i >= 20)
                part.parent_id = Id<Component>{parts[std::size_t(i) % 20]};
            parts.push_back(edit.put(part).value());
        }
        for (int i = 0; i < photos; ++i) {
            Media media{.file = fmt::format("photos/{}.jpg", i), .sha256 = hashes[std::size_t(i)]};
            media.taken_on = Moment::parse("2026-06-01")->plusDays(-i / 18);
            media.shows = {i % 3 == 0 ? Shows::Interior : Shows::BuilderAtWork};
            if (i % 5 != 0)
                media.links.push_back({RecordType::Component, parts[std::size_t(i) % 400]});
            edit.put(media);
        }
    });
    if (!result)
        fmt::print("{}\n", english(result.reason()));
    cacheCopies(project.folder(), hashes);
}

void scroll(ui::PhotosPage &page, std::string_view what, int by, int steps)
{
    QScrollBar &bar = *page.findChild<ui::PhotoGrid *>()->verticalScrollBar();
    bar.setValue(0);
    for (int i = 0; i < 20; ++i)
        QCoreApplication::processEvents();
    Turns turns;
    for (int i = 0; i < steps && bar.value() < bar.maximum(); ++i) {
        turns.turn([&] { bar.setValue(bar.value() + by); });
    }
    turns.print(what);
}

QStringList makePhotographs(const fs::path &folder, int count)
{
    fs::create_directories(folder);
    const QString name = ui::pathText(folder / "made.jpg");
    noisyPicture({4032, 3024}, 5).save(name, "JPG", 92);
    QFile file(name);
    const QByteArray content = file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    QStringList files;
    for (int i = 0; i < count; ++i) {
        // A comment behind the start of image makes each file another one.
        const std::string comment = fmt::format("photo {:08}", i);
        const fs::path path = folder / fmt::format("{:04}.jpg", i);
        std::ofstream(path, std::ios::binary)
            << content.left(2).toStdString() << "\xff\xfe" << '\0' << char(comment.size() + 2)
            << comment << content.mid(2).toStdString();
        files.append(ui::pathText(path));
    }
    return files;
}

void takeIn(ui::Session &session, ui::PhotosPage &page, const fs::path &folder, int count)
{
    const QStringList files = makePhotographs(folder, count);
    const std::size_t before = session.records()->media.size();
    Turns turns;
    page.takeIn(files);
    while (session.records()->media.size() < before + std::size_t(count))
        turns.turn([] {});
    turns.print(fmt::format("taking {} in", count));
}

} // namespace

int main(int argc, char *argv[])
{
    QApplication application(argc, argv);
    QApplication::setFont(QFont(QStringLiteral("DejaVu Sans"), 10));
    const QStringList words = QCoreApplication::arguments();
    if (words.size() < 2)
        return 2;
    const fs::path folder = ui::toPath(words[1]);
    const int photos = words.size() > 2 ? words[2].toInt() : 20000;
    const SystemClock clock;
    ProjectFacts facts;
    facts.name = "Many photos";
    facts.profile = "ca";
    ui::Theme theme(application);
    ui::ThreadExecutor executor;
    auto project = Project::create(folder / "Many.lastrivet", facts,
                                   ProfileLibrary::standard().profile("ca"), {&clock, "bench"});
    fill(*project, photos);
    ui::Session session(std::move(project), executor, theme);
    const double own = ownMilliseconds();
    ui::PhotosPage page(session);
    page.resize(1180, 680);
    page.show();
    QCoreApplication::processEvents();
    fmt::print("page shown after {:.1f} ms of own work\n", ownMilliseconds() - own);
    scroll(page, "by date, a wheel's step", 120, 600);
    scroll(page, "by date, a page at a time", 640, 600);
    scroll(page, "by date, thrown", 5000, 600);
    for (auto *box : page.findChildren<QComboBox *>()) {
        if (box->count() == 2)
            box->setCurrentIndex(1);
    }
    scroll(page, "by part, a wheel's step", 120, 600);
    if (words.size() > 3)
        takeIn(session, page, folder / "new", words[3].toInt());
    return 0;
}
