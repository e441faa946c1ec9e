// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later

// Taking photos in, and making their copies, beside general programs that do the same parts of the
// work on the same files: evidence_bench FOLDER [PHOTOS [ROUNDS]]. Needs vipsthumbnail (Debian
// package libvips-tools). Prints the median seconds of each and the ratios.
#include "core/base/Clock.h"
#include "core/evidence/IntakeStore.h"
#include "core/evidence/PictureCache.h"
#include "core/evidence/pictures/JpegWriter.h"
#include "core/profiles/ProfileLibrary.h"
#include "core/project/Project.h"

#include <exiv2/exiv2.hpp>
#include <fmt/format.h>
#include <sys/resource.h>

#include <algorithm>
#include <charconv>
#include <chrono>
#include <cstdlib>
#include <fstream>
#include <random>
#include <stdexcept>

using namespace lastrivet;
using namespace lastrivet::evidence;

namespace fs = std::filesystem;

namespace {

constexpr unsigned workers = 2;

/// A 12-megapixel picture with soft shapes and the noise of a sensor.
Pixels noisyPicture(unsigned seed)
{
    std::minstd_rand random(seed);
    Pixels pixels(4032, 3024);
    std::uint8_t *target = pixels.rgb.data();
    for (int y = 0; y < pixels.height; ++y) {
        for (int x = 0; x < pixels.width; ++x) {
            const unsigned bits = unsigned(random());
            const int noise = int(bits & 15) + int(bits >> 4 & 15) + int(bits >> 8 & 15) - 22;
            const int shape = (x / 37 + y / 53) % 9 * 12 + x * 90 / pixels.width + 30;
            for (int channel = 0; channel < 3; ++channel)
                *target++ = std::uint8_t(std::clamp(shape + noise + 8 * channel, 0, 255));
        }
    }
    return pixels;
}

void writePhoto(const fs::path &file, const std::string &jpeg, int number)
{
    // A comment behind the start of image makes each file another one.
    const std::string comment = fmt::format("photo {:08}", number);
    std::ofstream(file, std::ios::binary) << jpeg.substr(0, 2) << "\xff\xfe" << '\0'
                                          << char(comment.size() + 2) << comment << jpeg.substr(2);
    const auto image = Exiv2::ImageFactory::open(file.string());
    image->readMetadata();
    image->exifData()["Exif.Image.Orientation"] = std::uint16_t(6);
    image->exifData()["Exif.Photo.DateTimeOriginal"] =
        fmt::format("2026:03:{:02} 10:{:02}:00", number / 60 % 28 + 1, number % 60);
    image->writeMetadata();
}

std::vector<IncomingFile> makePhotos(const fs::path &folder, int count)
{
    fs::create_directories(folder);
    std::vector<std::string> jpegs;
    for (unsigned seed = 1; seed <= 4 && !fs::exists(folder / fmt::format("{:04}.jpg", count - 1));
         ++seed)
        jpegs.push_back(writeJpeg(noisyPicture(seed), 92, {}));
    std::vector<IncomingFile> files;
    for (int i = 0; i < count; ++i) {
        files.push_back({folder / fmt::format("{:04}.jpg", i)});
        if (!fs::exists(files.back().path))
            writePhoto(files.back().path, jpegs[std::size_t(i) % jpegs.size()], i);
    }
    return files;
}

template <class Work> double seconds(Work &&work)
{
    const auto begin = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
}

void run(const std::string &command)
{
    if (std::system(command.c_str()) != 0)
        throw std::runtime_error("failed: " + command);
}

double median(std::vector<double> times)
{
    std::sort(times.begin(), times.end());
    return times[times.size() / 2];
}

struct Times {
    std::vector<double> copying, intake, thumbnails, copies;
};

void measure(const fs::path &folder, const std::vector<IncomingFile> &files, Times &times)
{
    const std::string photos = (folder / "photos").string();
    const std::string other = (folder / "other").string();
    const fs::path place = folder / "Bench.lastrivet";
    run("rm -rf " + other + " " + place.string() + " && mkdir " + other);
    times.copying.push_back(seconds([&] {
        run("cp " + photos + "/*.jpg " + other + " && sha256sum " + other +
            "/*.jpg > /dev/null && sync " + other + "/*.jpg " + other);
    }));
    SystemClock clock;
    ProjectFacts facts;
    facts.name = "Bench";
    facts.time_zone = "America/Toronto";
    const Profile profile = ProfileLibrary::standard().profile("ca");
    const auto project = Project::create(place, facts, profile, {&clock});
    times.intake.push_back(seconds([&] {
        const auto report = takeIn(*project, files, workers);
        if (report.taken.size() != files.size())
            throw std::runtime_error(english(report.failures.at(0).why));
    }));
    times.thumbnails.push_back(seconds([&] {
        run("cd " + other + " && vipsthumbnail -s 256 -o 'small-%s.jpg[Q=80]' 0*.jpg" +
            " && vipsthumbnail -s 1600 -o 'large-%s.jpg[Q=85]' 0*.jpg");
    }));
    std::vector<Media> media;
    for (const Media &each : project->records()->media)
        media.push_back(each);
    times.copies.push_back(seconds([&] {
        PictureCache(place).makeMissing(media, workers, [](const Media &, const auto &failure) {
            if (failure)
                throw std::runtime_error(english(*failure));
        });
    }));
}

int number(const char *text)
{
    int value = 0;
    std::from_chars(text, text + std::string_view(text).size(), value);
    return value;
}

} // namespace

int main(int count, char **arguments)
{
    if (count < 2)
        return 2;
    const fs::path folder = arguments[1];
    const auto files = makePhotos(folder / "photos", count > 2 ? number(arguments[2]) : 400);
    Times times;
    for (int round = 0; round < (count > 3 ? number(arguments[3]) : 3); ++round)
        measure(folder, files, times);
    const auto line = [](std::string_view what, double ours, double theirs, double goal) {
        fmt::print("{}: {:.2f} s, ratio {:.2f}, goal {:.1f}\n", what, ours, ours / theirs, goal);
    };
    fmt::print("cp + sha256sum + sync: {:.2f} s\n", median(times.copying));
    line("taking in", median(times.intake), median(times.copying), 0.5);
    fmt::print("vipsthumbnail twice: {:.2f} s\n", median(times.thumbnails));
    line("both copies", median(times.copies), median(times.thumbnails), 0.6);
    rusage usage{};
    ::getrusage(RUSAGE_SELF, &usage);
    fmt::print("memory at most: {} MB\n", usage.ru_maxrss / 1024);
}
