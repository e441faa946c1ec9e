// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/PacketMaker.h"

#include "core/base/Error.h"
#include "core/base/WriteFailure.h"
#include "core/evidence/MediaFile.h"
#include "core/evidence/files/SummedFolder.h"
#include "ui/print/PacketPrinter.h"
#include "ui/print/SmallPacketMaker.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace lastrivet::print {

namespace {

namespace fs = std::filesystem;

constexpr const char *nameOfPdf = "Packet.pdf";
/// Of the whole work in percent: printing; then the photographs are copied.
constexpr int percentAtCopying = 60;

class PacketMaking {
public:
    PacketMaking(const PacketOrder &order, const Records &records, fs::path projectFolder,
                 const Pictures &pictures, const OnPercent &onPercent)
        : m_order(order)
        , m_records(records)
        , m_projectFolder(std::move(projectFolder))
        , m_pictures(pictures)
        , m_onPercent(onPercent)
    {
    }

    std::optional<PacketMade> makePdf() const;
    std::optional<PacketMade> makeFolder() const;

private:
    bool tell(int percent) const { return !m_onPercent || m_onPercent(percent); }
    std::vector<packet::Photo> originals() const;
    bool addOriginals(evidence::SummedFolder &folder, PacketMade &made) const;
    void addOriginal(evidence::SummedFolder &folder, const packet::Photo &photo,
                     PacketMade &made) const;

    const PacketOrder &m_order;
    const Records &m_records;
    fs::path m_projectFolder;
    const Pictures &m_pictures;
    const OnPercent &m_onPercent;
};

std::optional<PacketMade> PacketMaking::makePdf() const
{
    const auto printed = printPacket(m_order.packet, m_order.imprint, m_pictures, m_order.choices,
                                     m_order.place, m_onPercent);
    if (!printed)
        return std::nullopt;
    return PacketMade{.printed = *printed, .bytes = fs::file_size(m_order.place)};
}

/// In the order and with the numbers that the PDF gives them.
std::vector<packet::Photo> PacketMaking::originals() const
{
    const packet::Packet &packet = m_order.packet;
    std::vector<packet::Photo> all = packet.photos;
    all.insert(all.end(), packet.signed_sheets.begin(), packet.signed_sheets.end());
    return all;
}

void PacketMaking::addOriginal(evidence::SummedFolder &folder, const packet::Photo &photo,
                               PacketMade &made) const
{
    const auto place = evidence::locate(m_projectFolder, *m_records.find(photo.id));
    std::error_code none;
    if (!place || !fs::is_regular_file(*place, none)) {
        made.missing.push_back(photo.file);
        return;
    }
    const std::string name =
        fmt::format("photos/{:03} {}", photo.number, evidence::shownName(*place));
    const std::string sum = folder.add(*place, name);
    if (!photo.sha256.empty() && sum != photo.sha256)
        made.altered.push_back(photo.file);
    ++made.full_size;
}

bool PacketMaking::addOriginals(evidence::SummedFolder &folder, PacketMade &made) const
{
    const auto photos = originals();
    for (std::size_t i = 0; i < photos.size(); ++i) {
        if (!tell(percentAtCopying + int(i * (100 - percentAtCopying) / photos.size())))
            return false;
        addOriginal(folder, photos[i], made);
    }
    return tell(100);
}

std::optional<PacketMade> PacketMaking::makeFolder() const
{
    evidence::SummedFolder folder(m_order.place);
    std::optional<Printed> printed;
    PacketMade made;
    folder.addBy(nameOfPdf, [&](const fs::path &place) {
        printed =
            printPacket(m_order.packet, m_order.imprint, m_pictures, m_order.choices, place,
                        [this](int percent) { return tell(percent * percentAtCopying / 100); });
        if (printed)
            made.bytes = fs::file_size(place);
        else
            throw Cancelled{};
    });
    made.printed = *printed;
    if (!addOriginals(folder, made))
        return std::nullopt;
    folder.finish();
    return made;
}

} // namespace

std::optional<PacketMade> makePacket(const PacketOrder &order, const Records &records,
                                     const fs::path &projectFolder, const Pictures &pictures,
                                     const OnPercent &onPercent)
{
    const PacketMaking making(order, records, projectFolder, pictures, onPercent);
    try {
        switch (order.form) {
        case PacketForm::Pdf:
            return making.makePdf();
        case PacketForm::Folder:
            return making.makeFolder();
        case PacketForm::Small:
            return makeSmallPacket(order, pictures, onPercent);
        }
    } catch (const Cancelled &) {
        return std::nullopt;
    } catch (const fs::filesystem_error &error) {
        throw NotSaved(
            Message{"The packet was not written: {0}.", {whyDiskFailed(error.code().value())}});
    }
    return std::nullopt;
}

} // namespace lastrivet::print
