// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/CertificateDocument.h"

#include "core/records/Descriptions.h"
#include "core/records/FieldOf.h"
#include "core/records/Media.h"

namespace lastrivet {

const RecordDescription &describeCertificateDocument()
{
    static const std::array fields{
        idField<&CertificateDocument::id>(),
        field<&CertificateDocument::key>("key", true),
        field<&CertificateDocument::number>("number"),
        field<&CertificateDocument::edition>("edition"),
        field<&CertificateDocument::asked_on>("asked_on"),
        field<&CertificateDocument::received_on>("received_on"),
        field<&CertificateDocument::expires_on>("expires_on"),
        field<&CertificateDocument::name_as_written>("name_as_written"),
        field<&CertificateDocument::model_as_written>("model_as_written"),
        field<&CertificateDocument::serial_as_written>("serial_as_written"),
        field<&CertificateDocument::registration_as_written>("registration_as_written"),
        refsField<&CertificateDocument::media_ids>("media_ids"),
        field<&CertificateDocument::note>("note"),
        field<&CertificateDocument::withdrawn_on>("withdrawn_on"),
        field<&CertificateDocument::withdrawn_why>("withdrawn_why"),
    };
    static const auto description = describeRecord<CertificateDocument>(fields);
    return description;
}

} // namespace lastrivet
