// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/records/Records.h"

#include <array>
#include <string>
#include <vector>

namespace lastrivet::certificate {

/// The particulars that have to be the same on every document of one aircraft.
enum class Said { Name, Model, SerialNumber, Registration };
inline constexpr std::array everySaid{Said::Name, Said::Model, Said::SerialNumber,
                                      Said::Registration};

/// One of these as a document has it, compared with the project's own facts.
struct Compared {
    enum class Outcome {
        Agrees,
        Differs,
        NotWritten, ///< nobody wrote down what the paper says
        Unknown,    ///< the project itself does not say it
    };

    Outcome outcome = Outcome::NotWritten;
    std::string written;
    std::string expected;
};

struct ComparedDocument {
    Id<CertificateDocument> document;
    /// In the order of `everySaid`.
    std::array<Compared, everySaid.size()> said;
};

/// What the project's own facts say; empty when nobody entered it.
std::string_view ownWords(const Records &records, Said what);

/// Live documents, by id. Upper and lower case, spaces, hyphens and full stops do not count.
std::vector<ComparedDocument> compared(const Records &records);

/// A record that says something else than another one.
struct Disagreement {
    Said what = Said::Name;
    /// A document, or a piece of equipment beside the part that it is.
    RecordRef record{RecordType::CertificateDocument, 0};
    std::string written;
    std::string expected;

    friend bool operator==(const Disagreement &, const Disagreement &) = default;
};

/// Documents that have one of the four otherwise than the project, by id; then equipment whose
/// serial number is not that of the part which it stands for.
std::vector<Disagreement> disagreements(const Records &records);

/// Two live parts or pieces of equipment that claim one serial number of one maker's part.
struct SameSerialNumber {
    RecordRef first{RecordType::Equipment, 0};
    RecordRef second{RecordType::Equipment, 0};
    std::string serial_number;
};

std::vector<SameSerialNumber> sameSerialNumbers(const Records &records);

/// "builder's name", "model", "serial number", "registration".
Message inWords(Said what);
/// What the paper says, and what the project's facts say.
Message sentence(const Disagreement &disagreement);

} // namespace lastrivet::certificate
