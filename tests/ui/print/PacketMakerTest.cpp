// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/PacketMaker.h"

#include "core/base/Error.h"
#include "core/readiness/Readiness.h"
#include "tests/support/WingProject.h"
#include "tests/ui/print/PrintedFolder.h"

#include <catch2/catch.hpp>

#include <QImage>
#include <QRandomGenerator>

#include <fstream>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

namespace fs = std::filesystem;

/// The wing with photographs on disk, noisy so that they do not become small of themselves.
class WingOnDisk {
public:
    WingOnDisk()
    {
        fs::create_directories(projectFolder() / "photos");
        for (const std::int64_t id : {1, 2, 3})
            addPhoto(id);
    }

    fs::path projectFolder() const { return m_folder.path("Wing.lastrivet"); }
    fs::path place(const std::string &name) const { return m_folder.path(name); }

    print::PacketOrder order(print::PacketForm form, const std::string &name) const
    {
        const auto answer =
            readiness::readiness(m_project.records, m_project.profile, m_project.as_of);
        return {.packet = packet::packetFor(m_project.records, m_project.profile, answer,
                                            {m_project.wingSkin}),
                .imprint = imprintOfTest(),
                .choices = {},
                .form = form,
                .place = place(name)};
    }
    std::optional<print::PacketMade> make(const print::PacketOrder &order,
                                          const print::OnPercent &tell = {}) const
    {
        return makeOf(pictures(), order, tell);
    }
    std::optional<print::PacketMade> makeOf(const print::Pictures &pictures,
                                            const print::PacketOrder &order,
                                            const print::OnPercent &tell = {}) const
    {
        return print::makePacket(order, m_project.records, projectFolder(), pictures, tell);
    }
    print::Pictures pictures() const
    {
        return [this](const packet::Photo &photo) {
            return evidence::PictureCache(projectFolder())
                .copy(*m_project.records.find(photo.id), evidence::PictureSize::Large);
        };
    }
    const Media &media(std::int64_t id) const { return *m_project.records.find(Id<Media>{id}); }
    std::size_t entries() const
    {
        return std::size_t(
            std::distance(fs::directory_iterator(m_folder.path("")), fs::directory_iterator()));
    }

private:
    void addPhoto(std::int64_t id)
    {
        Media media = *m_project.records.find(Id<Media>{id});
        QImage image(1800, 1350, QImage::Format_RGB32);
        QRandomGenerator random{quint32(id)};
        for (int y = 0; y < image.height(); ++y) {
            auto *line = reinterpret_cast<QRgb *>(image.scanLine(y));
            for (int x = 0; x < image.width(); ++x)
                line[x] = qRgb(int(random.bounded(256)), x % 256, y % 256);
        }
        const fs::path file = projectFolder() / media.file;
        REQUIRE(image.save(QString::fromStdString(file.string()), "JPEG", 90));
        media.sha256 = PrintedFolder::hashOf(file);
        m_project.records.media.put(std::move(media));
    }

    PrintedFolder m_folder;
    WingProject m_project;
};

/// Temporary files lie in a folder of the test until this goes.
class TemporaryPlace {
public:
    explicit TemporaryPlace(const fs::path &folder)
    {
        fs::create_directories(folder);
        qputenv("TMPDIR", QByteArray::fromStdString(folder.string()));
    }
    ~TemporaryPlace()
    {
        if (m_wasSet)
            qputenv("TMPDIR", m_before);
        else
            qunsetenv("TMPDIR");
    }
    TemporaryPlace(const TemporaryPlace &) = delete;
    TemporaryPlace &operator=(const TemporaryPlace &) = delete;

private:
    bool m_wasSet = qEnvironmentVariableIsSet("TMPDIR");
    QByteArray m_before = qgetenv("TMPDIR");
};

} // namespace

TEST_CASE("A packet as a folder has the photographs byte for byte, and sums that sha256sum accepts")
{
    const WingOnDisk wing;
    const auto made = wing.make(wing.order(print::PacketForm::Folder, "Packet"));
    REQUIRE(made);
    CHECK(made->full_size == 3);
    CHECK(made->missing.empty());
    CHECK(made->altered.empty());
    const QString folder = QString::fromStdString(wing.place("Packet").string());
    const auto checked = PrintedFolder::run(
        QStringLiteral("sh"),
        {QStringLiteral("-c"),
         QStringLiteral("cd '%1' && sha256sum --strict -c SHA256SUMS").arg(folder)});
    INFO(checked.output.toStdString());
    CHECK(checked.exit_code == 0);
    CHECK(checked.output.count(QStringLiteral(": OK")) == 4);
    std::vector<std::string> sums;
    for (const auto &file : fs::directory_iterator(wing.place("Packet") / "photos"))
        sums.push_back(PrintedFolder::hashOf(file.path()));
    CHECK(std::find(sums.begin(), sums.end(), wing.media(2).sha256) != sums.end());
}

TEST_CASE("A file that changed or went is told of, and the folder is made all the same")
{
    const WingOnDisk wing;
    std::ofstream(wing.projectFolder() / wing.media(1).file, std::ios::app) << "x";
    fs::remove(wing.projectFolder() / wing.media(2).file);
    const auto made = wing.make(wing.order(print::PacketForm::Folder, "Packet"));
    REQUIRE(made);
    CHECK(made->full_size == 2);
    CHECK(made->altered == std::vector<std::string>{wing.media(1).file});
    CHECK(made->missing == std::vector<std::string>{wing.media(2).file});
}

TEST_CASE("Cancelling leaves no folder and no file, in whatever form")
{
    const WingOnDisk wing;
    for (const auto form :
         {print::PacketForm::Pdf, print::PacketForm::Folder, print::PacketForm::Small}) {
        for (const int at : {0, 30, 62, 95}) {
            const auto made =
                wing.make(wing.order(form, "Packet"), [at](int percent) { return percent < at; });
            CHECK_FALSE(made);
            CHECK_FALSE(fs::exists(wing.place("Packet")));
        }
    }
    // The project alone.
    CHECK(wing.entries() == 1);
}

TEST_CASE("What is small enough is sent whole; else pictures become smaller, then fewer")
{
    const WingOnDisk wing;
    auto order = wing.order(print::PacketForm::Small, "packet.pdf");
    const auto whole = wing.make(order);
    REQUIRE(whole);
    CHECK(whole->longest_edge == 0);
    CHECK(whole->left_out == 0);
    const auto text = [&] { return PrintedFolder::text(wing.place("packet.pdf")).simplified(); };
    CHECK(text().contains(QStringLiteral("All 3 photographs are in it.")));

    order.most_bytes = whole->bytes / 2;
    const auto smaller = wing.make(order);
    REQUIRE(smaller);
    CHECK(smaller->bytes <= order.most_bytes);
    CHECK(fs::file_size(wing.place("packet.pdf")) == smaller->bytes);
    CHECK(smaller->longest_edge > 0);
    CHECK(smaller->left_out == 0);
    CHECK(smaller->printed.pictures == 3);

    // Down until even the smallest pictures do not all fit.
    std::optional<print::PacketMade> fewer = smaller;
    while (fewer->left_out == 0) {
        order.most_bytes = order.most_bytes * 4 / 5;
        fewer = wing.make(order);
        REQUIRE(fewer);
    }
    CHECK(fewer->bytes <= order.most_bytes);
    CHECK(fewer->left_out > 0);
    CHECK(fewer->printed.pictures == 3 - fewer->left_out);
    CHECK(text().contains(QStringLiteral("left out:")));
    CHECK(PrintedFolder::run(QStringLiteral("qpdf"),
                             {QStringLiteral("--check"),
                              QString::fromStdString(wing.place("packet.pdf").string())})
              .exit_code == 0);
}

TEST_CASE("A limit that nothing fits under is said, and leaves nothing")
{
    const WingOnDisk wing;
    auto order = wing.order(print::PacketForm::Small, "packet.pdf");
    order.most_bytes = 2000;
    CHECK_THROWS_WITH(wing.make(order), Catch::Contains("even without photographs"));
    CHECK_FALSE(fs::exists(wing.place("packet.pdf")));
}

TEST_CASE("A damaged picture is told in its place in the form to send, too")
{
    const WingOnDisk wing;
    auto order = wing.order(print::PacketForm::Small, "packet.pdf");
    order.most_bytes = wing.make(order)->bytes / 2;
    const fs::path damaged = wing.place("damaged.jpg");
    const auto pictures = [&](const packet::Photo &photo) {
        auto copy = wing.pictures()(photo);
        REQUIRE(copy);
        if (photo.id == Id<Media>{2}) {
            fs::copy_file(copy->file, damaged, fs::copy_options::overwrite_existing);
            fs::resize_file(damaged, fs::file_size(damaged) / 2);
            copy->file = damaged;
        }
        return copy;
    };
    const auto made = wing.makeOf(pictures, order);
    REQUIRE(made);
    CHECK(made->longest_edge > 0);
    CHECK(made->left_out == 0);
    CHECK(made->printed.pictures == 2);
    const QString text = PrintedFolder::text(wing.place("packet.pdf")).simplified();
    CHECK(text.contains(QStringLiteral("Its copy for printing is damaged.")));
    CHECK(text.contains(QStringLiteral("Photographs that could not be printed")));
    CHECK_FALSE(text.contains(QStringLiteral("All 3 photographs are in it.")));
}

TEST_CASE("Smaller pictures that cannot be written down are no damaged ones: nothing is made")
{
    const WingOnDisk wing;
    auto order = wing.order(print::PacketForm::Small, "packet.pdf");
    order.most_bytes = wing.make(order)->bytes / 2;
    fs::remove(order.place);
    const fs::path temporary = wing.place("temporary");
    const TemporaryPlace place(temporary);
    const auto pictures = [&](const packet::Photo &photo) {
        fs::remove_all(temporary);
        return wing.pictures()(photo);
    };
    CHECK_THROWS_AS(wing.makeOf(pictures, order), NotSaved);
    CHECK_FALSE(fs::exists(order.place));
}
