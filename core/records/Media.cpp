// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/Media.h"

#include "core/records/Descriptions.h"
#include "core/records/FieldOf.h"

namespace lastrivet {

template <> const RowDescription &describeRow<Media::Annotation>()
{
    static const std::array fields{
        field<&Media::Annotation::shape>("shape", true),
        numbersField<&Media::Annotation::points>("points"),
        field<&Media::Annotation::text>("text"),
    };
    static const auto description = describeRows<Media::Annotation>("media.annotations", fields);
    return description;
}

template <> const RowDescription &describeRow<Media::Link>()
{
    static const std::array fields{
        field<&Media::Link::subject>("subject", true),
        subjectIdField<&Media::Link::id>("id"),
    };
    static const auto description = describeRows<Media::Link>("media.links", fields);
    return description;
}

const RecordDescription &describeMedia()
{
    static const std::array fields{
        idField<&Media::id>(),
        field<&Media::kind>("kind", true),
        field<&Media::file>("file", true),
        field<&Media::sha256>("sha256"),
        field<&Media::bytes>("bytes"),
        field<&Media::taken_on>("taken_on"),
        field<&Media::imported_on>("imported_on"),
        field<&Media::width>("width"),
        field<&Media::height>("height"),
        setField<&Media::shows, Shows>("shows", false),
        field<&Media::caption>("caption"),
        listField<&Media::annotations>("annotations"),
        listField<&Media::links>("links"),
        field<&Media::note>("note"),
        field<&Media::withdrawn_on>("withdrawn_on"),
        field<&Media::withdrawn_why>("withdrawn_why"),
    };
    static const auto description = describeRecord<Media>(fields);
    return description;
}

} // namespace lastrivet
