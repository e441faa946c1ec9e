// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/ReadinessJson.h"

#include "core/base/JsonWriter.h"
#include "core/readiness/Sentences.h"

#include <ostream>

namespace lastrivet::answers {

namespace {

using namespace readiness;

class Writer {
public:
    Writer(const Records &records, const Profile &profile, std::ostream &out)
        : m_records(records)
        , m_profile(profile)
        , m_json(out)
    {
    }

    void write(const Answer &answer)
    {
        m_json.beginObject();
        m_json.member("as_of", answer.as_of.text());
        m_json.member("profile", answer.profile);
        rows("closings", answer.closings);
        rows("out_of_reach", answer.out_of_reach);
        rows("last_chance", answer.last_chance);
        ids("workable", answer.workable);
        rows("visit_plan", answer.visit_plan);
        rows("unlock", answer.unlock);
        rows("to_complete", answer.to_complete);
        rows("components", answer.components);
        m_json.endObject();
    }

private:
    template <class Rows> void rows(std::string_view name, const Rows &list)
    {
        m_json.key(name);
        m_json.beginArray();
        for (const auto &row : list) {
            m_json.beginObject();
            fields(row);
            m_json.endObject();
        }
        m_json.endArray();
    }
    template <class Ids> void ids(std::string_view name, const Ids &list)
    {
        m_json.key(name);
        m_json.beginArray();
        for (const auto &id : list)
            m_json.value(id.value());
        m_json.endArray();
    }

    void fields(RecordRef record)
    {
        m_json.member("record", word(record.type));
        m_json.member("id", record.id);
    }
    void fields(const ClosingAnswer &closing)
    {
        m_json.member("id", closing.id.value());
        const Closing *known = m_records.find(closing.id);
        m_json.member("title", known ? std::string_view(known->title) : std::string_view());
        m_json.member("state", word(closing.state));
        m_json.member("begun", closing.begun);
        ids("reach", closing.reach);
        m_json.key("on_record");
        m_json.beginObject();
        fields(closing.on_record);
        m_json.endObject();
        rows("blockers", closing.blockers);
    }
    void fields(const OnRecord &counts)
    {
        m_json.member("steps", counts.steps);
        m_json.member("sessions", counts.sessions);
        m_json.member("photos", counts.photos);
        m_json.member("squawks", counts.squawks);
        m_json.member("deviations", counts.deviations);
        m_json.member("bulletins", counts.bulletins);
        m_json.member("fasteners", counts.fasteners);
        m_json.member("measurements", counts.measurements);
        m_json.member("part_lines", counts.part_lines);
        m_json.member("material_uses", counts.material_uses);
        m_json.member("checks", counts.checks);
        m_json.member("checks_done", counts.checks_done);
    }
    void fields(const Blocker &blocker)
    {
        m_json.member("rule", word(blocker.rule));
        m_json.member("weight", word(blocker.weight));
        fields(blocker.record);
        m_json.key("waits_for");
        blocker.waits_for ? m_json.value(word(*blocker.waits_for)) : m_json.null();
        rows("facts", blocker.facts);
        m_json.member("text", english(sentence(blocker, m_records)));
        m_json.member("clears_by", english(clearedBy(blocker, m_records, m_profile)));
        m_json.key("source");
        const auto cited = source(blocker, m_records, m_profile);
        cited.empty() ? m_json.null() : m_json.value(cited);
    }
    void fields(const Fact &fact)
    {
        fields(fact.record);
        m_json.member("moment", fact.moment.text());
        m_json.member("heavy", fact.heavy);
    }
    void fields(const RecordAndClosings &row)
    {
        fields(row.record);
        ids("closings", row.closings);
    }
    void fields(const LastChance &row)
    {
        m_json.member("closing", row.closing.value());
        rows("items", row.items);
    }
    void fields(const VisitPlanRow &row)
    {
        m_json.member("closing", row.closing.value());
        m_json.member("cumulative_minutes", row.cumulative_minutes.count());
        m_json.member("unknown_estimates", row.unknown_estimates);
        m_json.member("other_blockers", row.other_blockers);
    }
    void fields(const ToComplete &row)
    {
        m_json.member("what", word(row.what));
        fields(row.record);
    }
    void fields(const Badge &badge)
    {
        m_json.member("id", badge.id.value());
        m_json.member("state", word(badge.state));
    }

    const Records &m_records;
    const Profile &m_profile;
    JsonWriter m_json;
};

} // namespace

void writeJson(const Answer &answer, const Records &records, const Profile &profile,
               std::ostream &out)
{
    Writer{records, profile, out}.write(answer);
    out.put('\n');
}

} // namespace lastrivet::answers
