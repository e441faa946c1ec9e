// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/CreditJson.h"

#include "core/base/JsonWriter.h"

#include <ostream>

namespace lastrivet::answers {

namespace {

void writeTwoColumns(JsonWriter &json, const std::optional<credit::TwoColumns> &columns)
{
    json.key("two_columns");
    if (!columns) {
        json.null();
        return;
    }
    json.beginObject();
    json.member("builder_half_ticks", columns->builder_half_ticks);
    json.member("maker_half_ticks", columns->maker_half_ticks);
    json.member("passes", columns->passes());
    json.endObject();
}

} // namespace

void writeJson(const credit::Account &account, std::ostream &out)
{
    {
        JsonWriter json{out};
        json.beginObject();
        json.member("profile", account.profile);
        json.member("rows", account.rows);
        json.member("applicable_rows", account.applicable_rows);
        json.member("kit_tenths", account.kit_tenths);
        json.member("commercial_tenths", account.commercial_tenths);
        json.member("assembly_tenths", account.assembly_tenths);
        json.member("fabrication_tenths", account.fabrication_tenths);
        json.member("share_hundredths", account.shareHundredths());
        json.member("share_text", account.shareText());
        json.member("share_passes", account.sharePasses());
        json.member("basis", word(account.basis));
        json.member("passes", account.passes());
        writeTwoColumns(json, account.two_columns);
        json.key("evidence_gaps");
        json.beginArray();
        for (const Id<CreditTask> id : account.evidence_gaps)
            json.value(id.value());
        json.endArray();
        json.endObject();
    }
    out.put('\n');
}

} // namespace lastrivet::answers
