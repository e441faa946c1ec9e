// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/Bulletin.h"

#include "core/records/Closing.h"
#include "core/records/Component.h"
#include "core/records/Descriptions.h"
#include "core/records/FieldOf.h"
#include "core/records/Media.h"

namespace lastrivet {

const RecordDescription &describeBulletin()
{
    static const std::array fields{
        idField<&Bulletin::id>(),
        field<&Bulletin::number>("number", true),
        field<&Bulletin::kind>("kind"),
        field<&Bulletin::title>("title", true),
        field<&Bulletin::issuer>("issuer"),
        field<&Bulletin::issued_on>("issued_on"),
        field<&Bulletin::received_on>("received_on", true),
        refsField<&Bulletin::component_ids>("component_ids"),
        refsField<&Bulletin::not_inside>("not_inside"),
        field<&Bulletin::applies>("applies"),
        field<&Bulletin::mandatory>("mandatory"),
        field<&Bulletin::complied_on>("complied_on"),
        field<&Bulletin::basis>("basis"),
        refsField<&Bulletin::media_ids>("media_ids"),
        field<&Bulletin::note>("note"),
        field<&Bulletin::withdrawn_on>("withdrawn_on"),
        field<&Bulletin::withdrawn_why>("withdrawn_why"),
    };
    static const auto description = describeRecord<Bulletin>(fields);
    return description;
}

} // namespace lastrivet
