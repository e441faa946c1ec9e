// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/certificate/CrossCheck.h"

#include "core/base/CaseFold.h"

#include <map>
#include <tuple>

namespace lastrivet::certificate {

namespace {

using Outcome = Compared::Outcome;

/// A text in small letters, since papers like capitals, without what people leave out or put in
/// between.
std::string plain(std::string_view text)
{
    std::string plain = folded(text);
    std::erase_if(plain, [](char c) { return c == ' ' || c == '-' || c == '.'; });
    return plain;
}

const std::string &writtenIn(const CertificateDocument &document, Said what)
{
    switch (what) {
    case Said::Name:
        return document.name_as_written;
    case Said::Model:
        return document.model_as_written;
    case Said::SerialNumber:
        return document.serial_as_written;
    case Said::Registration:
        break;
    }
    return document.registration_as_written;
}

Compared compare(const std::string &written, std::string_view expected)
{
    Compared result{Outcome::Agrees, written, std::string(expected)};
    if (written.empty())
        result.outcome = Outcome::NotWritten;
    else if (expected.empty())
        result.outcome = Outcome::Unknown;
    else if (plain(written) != plain(expected))
        result.outcome = Outcome::Differs;
    return result;
}

/// Equipment that stands for a part of the tree has to say the same of it.
void addEquipment(const Records &records, std::vector<Disagreement> &found)
{
    for (const Equipment &piece : records.equipment) {
        const Component *part = records.findLive(piece.component_id);
        if (!part || piece.withdrawn_on || piece.removed_on || part->part_number.empty() ||
            plain(part->part_number) != plain(piece.part_number))
            continue;
        const Compared serial = compare(piece.serial_number, part->serial_number);
        if (serial.outcome == Outcome::Differs)
            found.push_back({Said::SerialNumber,
                             {RecordType::Equipment, piece.id.value()},
                             serial.written,
                             serial.expected});
    }
}

} // namespace

std::string_view ownWords(const Records &records, Said what)
{
    switch (what) {
    case Said::Name: {
        const Person *builder = records.find(records.project.builder_id);
        return builder ? std::string_view(builder->name) : std::string_view();
    }
    case Said::Model:
        return records.project.model;
    case Said::SerialNumber:
        return records.project.serial_number;
    case Said::Registration:
        break;
    }
    return records.project.registration;
}

std::vector<ComparedDocument> compared(const Records &records)
{
    std::vector<ComparedDocument> all;
    for (const CertificateDocument &document : records.certificate_documents) {
        if (document.withdrawn_on)
            continue;
        ComparedDocument row{document.id, {}};
        for (const Said what : everySaid)
            row.said[std::size_t(what)] =
                compare(writtenIn(document, what), ownWords(records, what));
        all.push_back(std::move(row));
    }
    return all;
}

std::vector<Disagreement> disagreements(const Records &records)
{
    std::vector<Disagreement> found;
    for (const ComparedDocument &document : compared(records)) {
        for (const Said what : everySaid) {
            const Compared &said = document.said[std::size_t(what)];
            if (said.outcome == Outcome::Differs)
                found.push_back({what,
                                 {RecordType::CertificateDocument, document.document.value()},
                                 said.written,
                                 said.expected});
        }
    }
    addEquipment(records, found);
    return found;
}

std::vector<SameSerialNumber> sameSerialNumbers(const Records &records)
{
    std::vector<SameSerialNumber> found;
    std::map<std::tuple<std::string, std::string>, RecordRef> first;
    const auto look = [&](RecordRef record, const std::string &part, const std::string &serial,
                          bool counts) {
        if (!counts || serial.empty() || part.empty())
            return;
        const auto [known, isNew] = first.try_emplace({plain(part), plain(serial)}, record);
        if (!isNew)
            found.push_back({known->second, record, serial});
    };
    for (const auto &part : records.components)
        look({RecordType::Component, part.id.value()}, part.part_number, part.serial_number,
             !part.withdrawn_on);
    for (const auto &piece : records.equipment) {
        const auto *part = records.find(piece.component_id);
        // Equipment that stands for a part of the tree says the same of it.
        const bool isThatPart = part && plain(part->serial_number) == plain(piece.serial_number);
        look({RecordType::Equipment, piece.id.value()}, piece.part_number, piece.serial_number,
             !piece.withdrawn_on && !piece.removed_on && !isThatPart);
    }
    return found;
}

Message inWords(Said what)
{
    switch (what) {
    case Said::Name:
        return {"builder's name", {}};
    case Said::Model:
        return {"model", {}};
    case Said::SerialNumber:
        return {"serial number", {}};
    case Said::Registration:
        break;
    }
    return {"registration", {}};
}

Message sentence(const Disagreement &disagreement)
{
    const std::vector<std::string> both{disagreement.written, disagreement.expected};
    if (disagreement.record.type == RecordType::Equipment)
        return {"the serial number is {0} on the equipment list, and {1} on the part", both};
    switch (disagreement.what) {
    case Said::Name:
        return {"the builder's name is {0} there, and {1} in the facts of the project", both};
    case Said::Model:
        return {"the model is {0} there, and {1} in the facts of the project", both};
    case Said::SerialNumber:
        return {"the serial number is {0} there, and {1} in the facts of the project", both};
    case Said::Registration:
        break;
    }
    return {"the registration is {0} there, and {1} in the facts of the project", both};
}

} // namespace lastrivet::certificate
