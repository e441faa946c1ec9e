// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Id.h"
#include "core/base/Moment.h"
#include "core/records/RecordType.h"

#include <optional>
#include <string>

namespace lastrivet {

struct Media;

/// A document that the certificate needs.
struct CertificateDocument {
    static constexpr RecordType type = RecordType::CertificateDocument;

    Id<CertificateDocument> id;
    /// Names a document of the profile; a key of its own for one that the builder added.
    std::string key;
    std::string number;
    std::string edition;
    std::optional<Moment> asked_on;
    std::optional<Moment> received_on;
    std::optional<Moment> expires_on;
    /// What the document itself says, to be compared with the project's facts.
    std::string name_as_written;
    std::string model_as_written;
    std::string serial_as_written;
    std::string registration_as_written;
    IdSet<Media> media_ids;
    std::string note;
    std::optional<Moment> withdrawn_on;
    std::string withdrawn_why;

    friend bool operator==(const CertificateDocument &, const CertificateDocument &) = default;
};

} // namespace lastrivet
