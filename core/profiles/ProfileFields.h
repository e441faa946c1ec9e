// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/profiles/Profile.h"

/// The fields of a profile in their order, said once for the reader and the writer (`Io`).
namespace lastrivet::profiles {

template <class Io> void fieldsOf(Io &io, Profile::Basis &basis)
{
    io.word("rule", basis.rule);
    io.text("text", basis.text);
    io.source("source", basis.source);
    io.word("mark", basis.mark);
}

template <class Io> void fieldsOf(Io &io, Profile::HoldPointRule &rule)
{
    io.word("kind", rule.kind);
    io.word("signer_role", rule.signer_role);
    io.flag("required", rule.required);
    io.optionalWords("component_kinds", rule.component_kinds);
    io.word("scope", rule.scope);
    io.text("text", rule.text);
    io.source("source", rule.source);
    io.word("mark", rule.mark);
}

template <class Io> void fieldsOf(Io &io, Profile::ChecklistItem &item)
{
    io.text("item", item.item);
    io.source("source", item.source);
    io.optionalText("at", item.at);
    io.word("mark", item.mark);
}

template <class Io> void fieldsOf(Io &io, Profile::Checklist &checklist)
{
    io.key("key", checklist.key);
    io.text("title", checklist.title);
    io.words("constructions", checklist.constructions);
    io.words("component_kinds", checklist.component_kinds);
    io.rows("items", checklist.items, 1);
}

template <class Io> void fieldsOf(Io &io, Profile::Document &document)
{
    io.key("key", document.key);
    io.text("title", document.title);
    io.word("need", document.need);
    io.optionalText("when", document.when);
    io.source("source", document.source);
    io.word("mark", document.mark);
}

template <class Io> void fieldsOf(Io &io, Profile::TestPeriod &period)
{
    io.text("applies_to", period.applies_to);
    io.optionalNumber("hours", period.hours, 1, 10'000);
    io.text("text", period.text);
    io.source("source", period.source);
    io.word("mark", period.mark);
}

template <class Io> void fieldsOf(Io &io, Profile::CreditRule &rule)
{
    io.text("text", rule.text);
    io.source("source", rule.source);
    io.word("mark", rule.mark);
}

template <class Io> void fieldsOf(Io &io, Profile::Credit &credit)
{
    io.texts("columns", credit.columns, 2);
    io.text("passes_when", credit.passes_when);
    io.rows("rules", credit.rules);
}

template <class Io> void fieldsOf(Io &io, Profile::Caution &caution)
{
    io.key("id", caution.id);
    io.text("text", caution.text);
}

template <class Io> void fieldsOf(Io &io, Profile::CountryWords &words)
{
    io.optionalText("squawk", words.squawk);
    io.optionalText("squawks", words.squawks);
    io.optionalText("finding", words.finding);
    io.optionalText("findings", words.findings);
    io.optionalText("undercarriage", words.undercarriage);
    io.optionalText("inspector", words.inspector);
    io.optionalText("adviser", words.adviser);
    io.optionalText("authority", words.authority);
    io.optionalText("certificate", words.certificate);
}

template <class Io> void fieldsOf(Io &io, Profile::Source &source)
{
    io.key("id", source.id);
    io.text("title", source.title);
    io.optionalText("edition", source.edition);
    io.word("mark", source.mark);
    io.optionalDay("read_on", source.read_on);
    io.optionalText("note", source.note);
}

template <class Io> void fieldsOf(Io &io, Profile &profile)
{
    io.key("id", profile.id);
    io.text("name", profile.name);
    io.day("edition", profile.edition);
    io.words("late_acceptance_by", profile.late_acceptance_by, 1);
    io.flag("factory_closing_needs_document", profile.factory_closing_needs_document);
    io.word("credit_basis", profile.credit_basis);
    io.number("interior_photos", profile.interior_photos, 0, 1'000);
    io.flag("one_open_request", profile.one_open_request);
    io.number("late_entry_days", profile.late_entry_days, 0, 3'650);
    io.rows("basis", profile.basis);
    io.rows("hold_points", profile.hold_points);
    io.rows("checklists", profile.checklists);
    io.rows("documents", profile.documents);
    io.rows("test_period", profile.test_period);
    io.object("credit", profile.credit);
    io.rows("cautions", profile.cautions);
    io.object("words", profile.words);
    io.rows("sources", profile.sources, 1);
}

} // namespace lastrivet::profiles
