// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/SmallPacketMaker.h"

#include "core/base/Error.h"
#include "core/base/Tongue.h"
#include "core/evidence/ReducedPicture.h"
#include "core/evidence/files/FileFault.h"
#include "core/packet/SmallPacket.h"
#include "ui/print/NewFile.h"
#include "ui/print/PacketPrinter.h"

#include <QTemporaryDir>

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <fstream>
#include <map>

namespace lastrivet::print {

namespace {

namespace fs = std::filesystem;

/// From the copies as they are down to what still shows a rivet line on half a page.
constexpr std::array<evidence::Reduction, 4> steps{{{0, 0}, {1200, 78}, {900, 72}, {640, 65}}};
/// Pictures are got ready in this share of the work; the rest is printing.
constexpr int percentAtPrinting = 50;

/// Copies a finished document to where it belongs, whole or not at all.
void putInPlace(const fs::path &finished, const fs::path &place)
{
    std::ifstream stream(finished, std::ios::binary);
    NewFile file(place);
    std::array<char, 65536> block;
    while (stream.read(block.data(), block.size()) || stream.gcount() > 0)
        file.write(reinterpret_cast<const unsigned char *>(block.data()),
                   std::size_t(stream.gcount()));
    if (!stream.eof())
        throw NotSaved(Message{"{0} was not written: {1} could not be read.",
                               {place.string(), finished.string()}});
    file.finish();
}

class SmallPacketMaking {
public:
    SmallPacketMaking(const PacketOrder &order, const Pictures &pictures,
                      const OnPercent &onPercent)
        : m_order(order)
        , m_pictures(pictures)
        , m_onPercent(onPercent)
        , m_photos(packet::byImportance(order.packet))
    {
        if (!m_folder.isValid())
            throw NotSaved("No folder for smaller copies of the photographs could be made.");
    }

    std::optional<PacketMade> make();

private:
    using Copy = Result<evidence::PictureCopy, Message>;

    void tell(int percent) const
    {
        if (m_onPercent && !m_onPercent(percent))
            throw Cancelled{};
    }
    std::uint64_t bytesWithoutPictures();
    void prepare(std::size_t step);
    Copy copyFor(const packet::Photo &photo, std::size_t step) const;
    std::vector<std::uint64_t> sizes() const;
    fs::path temporary(const std::string &name) const
    {
        return fs::path(m_folder.path().toStdString()) / name;
    }
    std::optional<Printed> print(const packet::Packet &packet, const fs::path &place) const;
    std::optional<PacketMade> printFitting(std::size_t step, std::uint64_t room);

    const PacketOrder &m_order;
    const Pictures &m_pictures;
    const OnPercent &m_onPercent;
    QTemporaryDir m_folder;
    std::vector<packet::Photo> m_photos;
    std::map<Id<Media>, Copy> m_copies;
};

std::optional<Printed> SmallPacketMaking::print(const packet::Packet &packet,
                                                const fs::path &place) const
{
    return printPacket(
        packet, m_order.imprint,
        [this](const packet::Photo &photo) -> Copy {
            const auto copy = m_copies.find(photo.id);
            if (copy == m_copies.end())
                return Message{"Left out to keep the packet small.", {}};
            return copy->second;
        },
        m_order.choices, place,
        [&](int percent) {
            tell(percentAtPrinting + percent * (100 - percentAtPrinting) / 100);
            return true;
        });
}

/// Everything but the pictures, which need room beside it.
std::uint64_t SmallPacketMaking::bytesWithoutPictures()
{
    const fs::path place = temporary("without.pdf");
    printPacket(m_order.packet, m_order.imprint,
                [](const packet::Photo &) -> Copy {
                    return Message{"Not drawn.", {}};
                },
                m_order.choices, place, {});
    return fs::file_size(place);
}

/// A damaged picture is told in its place, as in every other form; that there is no room for the
/// smaller copies is the end of it.
SmallPacketMaking::Copy SmallPacketMaking::copyFor(const packet::Photo &photo,
                                                   std::size_t step) const
{
    Copy copy = m_pictures(photo);
    if (!copy || step == 0)
        return copy;
    try {
        const auto smaller = evidence::reducedPicture(
            *copy, steps[step], temporary(fmt::format("{}-{}.jpg", photo.id.value(), step)));
        if (smaller)
            return smaller;
        // The reason names the copy, which nobody knows.
        return Message{"Its copy for printing is damaged.", {}};
    } catch (const evidence::FileFault &fault) {
        throw NotSaved(fault.message());
    }
}

void SmallPacketMaking::prepare(std::size_t step)
{
    m_copies.clear();
    for (std::size_t i = 0; i < m_photos.size(); ++i) {
        tell(int(i * percentAtPrinting / m_photos.size()));
        m_copies.emplace(m_photos[i].id, copyFor(m_photos[i], step));
    }
}

/// In bytes, one by one; a picture that cannot be had needs no room.
std::vector<std::uint64_t> SmallPacketMaking::sizes() const
{
    std::vector<std::uint64_t> sizes;
    for (const packet::Photo &photo : m_photos) {
        const Copy &copy = m_copies.at(photo.id);
        sizes.push_back(copy ? fs::file_size(copy->file) : 0);
    }
    return sizes;
}

/// Prints what fits beside the picture-less pages; less when the pages turn out longer than
/// thought.
std::optional<PacketMade> SmallPacketMaking::printFitting(std::size_t step, std::uint64_t room)
{
    const fs::path trial = temporary("trial.pdf");
    const int edge = steps[step].longest_edge;
    constexpr int mostTrials = 4;
    for (int time = 0; time < mostTrials; ++time) {
        const auto kept = packet::fitting(m_photos, sizes(), room);
        const auto packet = packet::reduced(m_order.packet, kept, edge);
        const auto printed = print(packet, trial);
        if (!printed)
            return std::nullopt;
        const std::uint64_t bytes = fs::file_size(trial);
        if (bytes <= m_order.most_bytes) {
            putInPlace(trial, m_order.place);
            return PacketMade{.printed = *printed,
                              .bytes = bytes,
                              .longest_edge = edge,
                              .left_out = int(packet.reduction->left_out.size())};
        }
        const std::uint64_t excess = bytes - m_order.most_bytes;
        // The last trial goes without photographs, so that what is said below is true.
        const bool isLastNext = time + 2 == mostTrials;
        room = room > excess && !isLastNext ? room - excess : 0;
    }
    const std::uint64_t tenths = (m_order.most_bytes + 50'000) / 100'000;
    throw NotSaved(Message{
        "{0} was not written: even without photographs it would be larger than {1} MB. Nothing was "
        "left behind.",
        {m_order.place.string(),
         nested({"{0}.{1}", {std::to_string(tenths / 10), std::to_string(tenths % 10)}})}});
}

std::optional<PacketMade> SmallPacketMaking::make()
{
    // What a picture needs in the document besides its own bytes; a guess, as what comes out is
    // looked at.
    constexpr std::uint64_t aroundPicture = 700;
    const std::uint64_t taken = bytesWithoutPictures() + aroundPicture * m_photos.size();
    const std::uint64_t room = m_order.most_bytes > taken ? m_order.most_bytes - taken : 0;
    for (std::size_t step = 0; step < steps.size(); ++step) {
        prepare(step);
        const auto needed = sizes();
        std::uint64_t sum = 0;
        for (const std::uint64_t size : needed)
            sum += size;
        if (sum <= room || step + 1 == steps.size())
            return printFitting(step, room);
    }
    return std::nullopt;
}

} // namespace

std::optional<PacketMade> makeSmallPacket(const PacketOrder &order, const Pictures &pictures,
                                          const OnPercent &onPercent)
{
    return SmallPacketMaking(order, pictures, onPercent).make();
}

} // namespace lastrivet::print
