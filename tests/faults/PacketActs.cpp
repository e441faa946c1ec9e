// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/PacketActs.h"

#include "core/evidence/IntakeStore.h"
#include "core/evidence/PictureCache.h"
#include "core/readiness/Readiness.h"
#include "ui/print/PacketMaker.h"

#include <fmt/format.h>

#include <array>
#include <stdexcept>

namespace lastrivet::faults {

namespace {

using Reasons = std::vector<std::string>;

/// A region about to be closed, with a photo of it.
void addClosing(Project &project, Supplies &supplies)
{
    if (!project.records()->closings.isEmpty())
        return;
    const auto part = project.records()->components.begin()->id;
    const auto planned = project.change("Closing planned", [&](Edit &edit) {
        Closing closing;
        closing.component_id = part;
        closing.title = "Upper skin";
        closing.encloses = {part};
        edit.put(closing);
    });
    if (!planned)
        throw std::runtime_error("a closing cannot be planned: " + english(planned.reason()));
    auto photo = supplies.photo();
    photo.links = {{RecordType::Component, part.value()}};
    evidence::takeIn(project, {photo}, 0);
}

Reasons makePacket(Project &project, print::PacketForm form, const std::string &name,
                   const std::string &journalHash)
{
    const Snapshot records = project.records();
    const auto answer = readiness::readiness(*records, project.profile(), project.today());
    const print::PacketOrder order{.packet = packet::packetFor(*records, project.profile(), answer,
                                                               {records->closings.begin()->id}),
                                   .imprint = {journalHash, project.today()},
                                   .choices = {},
                                   .form = form,
                                   .place = project.folder().parent_path() / name};
    const evidence::PictureCache cache(project.folder());
    const auto made =
        print::makePacket(order, *records, project.folder(), [&](const packet::Photo &photo) {
            return cache.copy(*records->find(photo.id), evidence::PictureSize::Large);
        });
    return made ? Reasons{} : Reasons{"The packet was not made."};
}

Reasons asPdf(Project &project, Supplies &)
{
    return makePacket(project, print::PacketForm::Pdf, "packet.pdf", std::string(64, '0'));
}

Reasons smallPdf(Project &project, Supplies &)
{
    return makePacket(project, print::PacketForm::Small, "small.pdf", std::string(64, '0'));
}

Reasons asFolder(Project &project, Supplies &supplies)
{
    return makePacket(project, print::PacketForm::Folder, fmt::format("packet-{}", supplies.next()),
                      std::string(64, '0'));
}

Reasons withRow(Project &project, Supplies &)
{
    return makePacket(project, print::PacketForm::Pdf, "packet.pdf", project.notePrinted("Packet"));
}

constexpr std::array packets{
    Act{"packet as PDF", Effect::OnFiles, asPdf, addClosing},
    Act{"packet to send", Effect::OnFiles, smallPdf, addClosing},
    Act{"packet as folder", Effect::OnFiles, asFolder, addClosing},
};
constexpr Act printed{"packet", Effect::OnFiles, withRow, addClosing};

} // namespace

std::span<const Act> packetActs()
{
    return packets;
}

const Act &printedPacket()
{
    return printed;
}

} // namespace lastrivet::faults
