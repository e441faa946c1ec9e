// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/Supplies.h"

#include "core/base/Sha256.h"

#include "tests/support/TestPictures.h"

#include <fmt/format.h>

namespace lastrivet::faults {

namespace fs = std::filesystem;

namespace {

constexpr std::int64_t idsPerDocument = 1000;

std::string sumOf(const std::string &content)
{
    return sha256({reinterpret_cast<const std::uint8_t *>(content.data()), content.size()});
}

std::string sessionJson(std::int64_t id, std::int64_t part, int day)
{
    return fmt::format(R"({{"id": {}, "began": "2026-02-{:02}T09:00", "minutes": {},
        "component_id": {}, "kind": "fabrication", "note": "Ribs deburred"}})",
                       id, 1 + day % 28, 30 + day, part);
}

} // namespace

Supplies::Supplies(fs::path folder, std::int64_t series)
    : m_folder(std::move(folder))
    , m_series(series)
{
    // Making pictures takes a while: whoever uses the same folder finds them made.
    const auto picture = m_folder / "picture.jpg";
    if (!fs::exists(picture))
        fs::copy_file(test::testPicture("naive.jpg"), picture);
    m_picture = test::readText(picture);
}

std::string Supplies::unlike(std::string content)
{
    // Behind the end of a picture or a PDF a few bytes more do no harm.
    return content + fmt::format("\n{}-{}\n", m_series, next());
}

evidence::IncomingFile Supplies::photo()
{
    const auto file = m_folder / fmt::format("photo-{}-{}.jpg", m_series, next());
    test::writeText(file, unlike(m_picture));
    return {.path = file, .part_name = "Wing"};
}

evidence::IncomingFile Supplies::sheet()
{
    const auto file = m_folder / fmt::format("sheet-{}-{}.pdf", m_series, next());
    test::writeText(file, unlike("%PDF-1.4\n" + std::string(3000, '%') + "\n%%EOF"));
    return {.path = file};
}

fs::path Supplies::document(int sessions)
{
    const auto first = (m_series * 1'000'000 + next()) * idsPerDocument;
    const auto photo = unlike(m_picture);
    const auto name = fmt::format("documents/import-{}.jpg", first);
    fs::create_directories(m_folder / "documents");
    test::writeText(m_folder / name, photo);
    std::string work;
    for (int i = 0; i < sessions; ++i)
        work += (i ? ", " : "") + sessionJson(first + 3 + i, first + 1, i);
    const auto text = fmt::format(
        R"({{"format": "lastrivet-records", "version": 1,
            "project": {{"name": "Fault bench", "profile": "plain"}},
            "components": [{{"id": {0}, "name": "Rudder {0}"}}],
            "media": [{{"id": {1}, "kind": "photo", "file": "{2}", "sha256": "{3}", "bytes": {4},
                       "imported_on": "2026-03-01",
                       "links": [{{"subject": "component", "id": {0}}}]}}],
            "work_sessions": [{5}]}})",
        first + 1, first + 2, name, sumOf(photo), photo.size(), work);
    const auto file = m_folder / fmt::format("import-{}.json", first);
    test::writeText(file, text);
    return file;
}

} // namespace lastrivet::faults
