// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/ImportDocument.h"

#include "core/exchange/DocumentBuilder.h"
#include "core/exchange/JsonEvents.h"

namespace lastrivet::exchange {

std::string ImportDocument::pointerTo(RecordRef record) const
{
    if (record.type == RecordType::Project)
        return "/project";
    const auto found = positions.find(record);
    if (found == positions.end())
        return {};
    return "/" + std::string(plural(record.type)) + "/" + std::to_string(found->second);
}

DocumentReading readDocument(std::string_view json)
{
    DocumentBuilder builder;
    feedJson(builder, json);
    return builder.finish();
}

} // namespace lastrivet::exchange
