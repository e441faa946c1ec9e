// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv/CsvColumns.h"

#include "core/base/CaseFold.h"
#include "core/base/Trimmed.h"
#include "core/entry/ClockText.h"
#include "core/records/Description.h"

#include <algorithm>
#include <optional>

namespace lastrivet::exchange {

namespace {

struct Synonym {
    std::string_view header;
    std::string_view field;
    /// The record type that it is meant of; every one when empty.
    std::optional<RecordType> type{};
};

/// How long, where nothing else in the list says that; else when.
constexpr std::string_view maybeClock = "time";

/// What people write over the columns of their own lists.
constexpr Synonym synonyms[] = {
    {"part", "component_id"},
    {"component", "component_id"},
    {"parent", "parent_id"},
    {"inside", "parent_id"},
    {"notes", "note"},
    {"remarks", "note"},
    {"qty", "quantity"},
    {"part_no", "part_number"},
    {"part_no.", "part_number"},
    {"p/n", "part_number"},
    {"serial_no", "serial_number"},
    {"estimate", "estimate_minutes"},
    {"drawing", "plan_ref"},
    {"description", "name", RecordType::Component},
    {"bezeichnung", "name"},
    {"benennung", "name"},
    {"désignation", "name"},
    {"designation", "name"},
    {"teilenummer", "part_number"},
    {"teile_nr.", "part_number"},
    {"artikelnummer", "part_number"},
    {"référence", "part_number"},
    {"reference", "part_number"},
    {"réf.", "part_number"},
    {"réf", "part_number"},
    {"ref.", "part_number"},
    {"ref", "part_number"},
    {"art._nr.", "part_number"},
    {"artikel_nr.", "part_number"},
    {"bestellnummer", "part_number"},
    {"best._nr.", "part_number"},
    {"part_#", "part_number"},
    {"menge", "quantity"},
    {"anzahl", "quantity"},
    {"stück", "quantity"},
    {"stk", "quantity"},
    {"stk.", "quantity"},
    {"quantité", "quantity"},
    {"qté", "quantity"},
    {"qté.", "quantity"},
    {"qte", "quantity"},
    {"pcs", "quantity"},
    {"count", "quantity"},
    {"bemerkung", "note"},
    {"remarque", "note"},
    {"description", "name", RecordType::PartLine},
    {"item", "name", RecordType::PartLine},
    {"received", "received_quantity", RecordType::PartLine},
    {"damaged", "damaged_quantity", RecordType::PartLine},
    {"ordered", "ordered_on", RecordType::PartLine},
    {"expected", "expected_on", RecordType::PartLine},
    {"price", "unit_price", RecordType::PartLine},
    {"price_each", "unit_price", RecordType::PartLine},
    {"einzelpreis", "unit_price", RecordType::PartLine},
    {"preis", "unit_price", RecordType::PartLine},
    {"prix", "unit_price", RecordType::PartLine},
    {"prix_unitaire", "unit_price", RecordType::PartLine},
    {"prix_unitaire_ht", "unit_price", RecordType::PartLine},
    {"prix_unit.", "unit_price", RecordType::PartLine},
    {"p.u.", "unit_price", RecordType::PartLine},
    {"p.u._ht", "unit_price", RecordType::PartLine},
    {"pu", "unit_price", RecordType::PartLine},
    {"pu_ht", "unit_price", RecordType::PartLine},
    {"preis/stk.", "unit_price", RecordType::PartLine},
    {"preis/stk", "unit_price", RecordType::PartLine},
    {"preis/stück", "unit_price", RecordType::PartLine},
    {"preis_pro_stück", "unit_price", RecordType::PartLine},
    {"preis_je_stück", "unit_price", RecordType::PartLine},
    {"e_preis", "unit_price", RecordType::PartLine},
    {"unit_cost", "unit_price", RecordType::PartLine},
    {"kiste", "shipment", RecordType::PartLine},
    {"caisse", "shipment", RecordType::PartLine},
    {"box", "shipment", RecordType::PartLine},
    {"crate", "shipment", RecordType::PartLine},
    {"estimate_hours", "estimate_minutes", RecordType::Step},
    {"hours", "estimate_minutes", RecordType::Step},
    {"stunden", "estimate_minutes", RecordType::Step},
    {"heures", "estimate_minutes", RecordType::Step},
    {"step", "title", RecordType::Step},
    {"task", "title", RecordType::Step},
    {"description", "title", RecordType::Step},
    {"done", "done_on", RecordType::Step},
    {"date", "began", RecordType::WorkSession},
    {"day", "began", RecordType::WorkSession},
    {"datum", "began", RecordType::WorkSession},
    {"jour", "began", RecordType::WorkSession},
    {"bauteil", "component_id"},
    {"pièce", "component_id", RecordType::WorkSession},
    {maybeClock, "minutes", RecordType::WorkSession},
    {"duration", "minutes", RecordType::WorkSession},
    {"dauer", "minutes", RecordType::WorkSession},
    {"durée", "minutes", RecordType::WorkSession},
    {"hours", "minutes", RecordType::WorkSession},
    {"hrs", "minutes", RecordType::WorkSession},
    {"h", "minutes", RecordType::WorkSession},
    {"stunden", "minutes", RecordType::WorkSession},
    {"std", "minutes", RecordType::WorkSession},
    {"std.", "minutes", RecordType::WorkSession},
    {"heures", "minutes", RecordType::WorkSession},
    {"description", "note", RecordType::WorkSession},
    {"what", "note", RecordType::WorkSession},
    {"helpers", "workers", RecordType::WorkSession},
    {"people", "workers", RecordType::WorkSession},
    {"who", "workers", RecordType::WorkSession},
    {"wer", "workers", RecordType::WorkSession},
    {"qui", "workers", RecordType::WorkSession},
    {"was", "note", RecordType::WorkSession},
    {"tätigkeit", "note", RecordType::WorkSession},
    {"travail", "note", RecordType::WorkSession},
    {"beschreibung", "note", RecordType::WorkSession},
    {"helfer", "workers", RecordType::WorkSession},
    {"tag", "began", RecordType::WorkSession},
    {"beginn", "began", RecordType::WorkSession},
    {"début", "began", RecordType::WorkSession},
    {"notiz", "note"},
    {"notizen", "note"},
    {"anmerkung", "note"},
    {"anmerkungen", "note"},
    {"bemerkungen", "note"},
    {"remarques", "note"},
    {"remark", "note"},
    {"commentaire", "note"},
    {"kommentar", "note"},
    {"comment", "note"},
    {"beschreibung", "title", RecordType::Step},
    {"schritt", "title", RecordType::Step},
    {"aufgabe", "title", RecordType::Step},
    {"étape", "title", RecordType::Step},
    {"tâche", "title", RecordType::Step},
    {"titel", "title"},
    {"titre", "title"},
    {"erledigt", "done_on", RecordType::Step},
    {"fertig", "done_on", RecordType::Step},
    {"fait", "done_on", RecordType::Step},
    {"teil", "name", RecordType::Component},
    {"teil", "component_id", RecordType::Step},
    {"teil", "component_id", RecordType::WorkSession},
    {"pièce", "name", RecordType::Component},
    {"pièce", "component_id", RecordType::Step},
    {"gehört_zu", "parent_id"},
    {"zeichnung", "plan_ref"},
    {"dessin", "plan_ref"},
    {"seriennummer", "serial_number"},
    {"numéro_de_série", "serial_number"},
    {"teile_nr", "part_number"},
    {"artikelnr.", "part_number"},
    {"beschreibung", "name"},
    {"nom", "name"},
    {"artikel", "name", RecordType::PartLine},
    {"article", "name", RecordType::PartLine},
    {"lieferung", "shipment", RecordType::PartLine},
    {"livraison", "shipment", RecordType::PartLine},
    {"erhalten", "received_quantity", RecordType::PartLine},
    {"reçu", "received_quantity", RecordType::PartLine},
    {"beschädigt", "damaged_quantity", RecordType::PartLine},
    {"endommagé", "damaged_quantity", RecordType::PartLine},
    {"bestellt", "ordered_on", RecordType::PartLine},
    {"commandé", "ordered_on", RecordType::PartLine},
    {"erwartet", "expected_on", RecordType::PartLine},
    {"attendu", "expected_on", RecordType::PartLine},
    {"stückpreis", "unit_price", RecordType::PartLine},
    {"währung", "currency", RecordType::PartLine},
    {"devise", "currency", RecordType::PartLine},
};

std::string asFieldName(std::string_view header, RecordType type)
{
    std::string name = plainHeader(header);
    if (describe(type).find(name))
        return name;
    for (const Synonym &synonym : synonyms) {
        if (synonym.header == name && (!synonym.type || synonym.type == type))
            return std::string(synonym.field);
    }
    return name;
}

/// The minute of the day of "19:30" or "7:05:00"; nothing for what is no time of a day.
std::optional<int> minuteOfClock(std::string_view cell)
{
    const auto colon = cell.find(':');
    if (colon == std::string_view::npos)
        return std::nullopt;
    return entry::parseClock(cell.substr(0, cell.find(':', colon + 1)));
}

/// Whether all cells of a column are times of a day, and one is later than anybody works long.
bool areTimesOfDay(const CsvTable &table, std::size_t column)
{
    constexpr int longestWork = 16 * 60;
    bool isAnyLate = false;
    for (const auto &row : table.rows) {
        const auto cell = trimmed(row[column]);
        if (cell.empty())
            continue;
        const auto minute = minuteOfClock(cell);
        if (!minute)
            return false;
        isAnyLate = isAnyLate || *minute >= longestWork;
    }
    return isAnyLate;
}

} // namespace

std::string plainHeader(std::string_view header)
{
    std::string name = folded(trimmed(header));
    for (char &c : name)
        c = c == ' ' || c == '-' ? '_' : c;
    return name;
}

std::span<const RecordType> csvRecordTypes()
{
    static constexpr RecordType types[] = {RecordType::Component, RecordType::Step,
                                           RecordType::PartLine, RecordType::WorkSession};
    return types;
}

std::vector<std::string_view> csvFields(RecordType type)
{
    std::vector<std::string_view> names;
    for (const Field &field : describe(type).fields)
        names.push_back(field.name);
    return names;
}

CsvColumns columnsByHeader(const CsvTable &table, RecordType type)
{
    CsvColumns columns;
    for (const auto &header : table.header) {
        const auto name = asFieldName(header, type);
        // A stranger's list may have any number of columns that are none.
        if (!describe(type).find(name)) {
            columns.emplace_back();
            continue;
        }
        const auto before = std::find(columns.begin(), columns.end(), name);
        bool isFree = before == columns.end();
        if (!isFree &&
            plainHeader(table.header[std::size_t(before - columns.begin())]) == maybeClock) {
            before->clear();
            isFree = true;
        }
        columns.push_back(isFree ? name : std::string());
    }
    for (std::size_t i = 0; i < columns.size(); ++i) {
        if (plainHeader(table.header[i]) == maybeClock && areTimesOfDay(table, i))
            columns[i].clear();
    }
    return columns;
}

TimeColumn timeColumn(const CsvTable &table, const CsvColumns &columns, RecordType type)
{
    for (std::size_t i = 0; i < columns.size(); ++i) {
        if (plainHeader(table.header[i]) != maybeClock ||
            asFieldName(table.header[i], type) != "minutes")
            continue;
        if (!columns[i].empty())
            return columns[i] == "minutes" ? TimeColumn::IsLength : TimeColumn::None;
        if (areTimesOfDay(table, i) &&
            std::find(columns.begin(), columns.end(), "minutes") == columns.end())
            return TimeColumn::IsClock;
    }
    return TimeColumn::None;
}

std::vector<std::string> doubledColumns(const CsvTable &table, RecordType type)
{
    std::vector<std::string> doubled;
    const auto columns = columnsByHeader(table, type);
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const auto name = asFieldName(table.header[i], type);
        if (columns[i].empty() && describe(type).find(name) &&
            std::find(columns.begin(), columns.end(), name) != columns.end())
            doubled.push_back(table.header[i]);
    }
    return doubled;
}

std::vector<std::string_view> unfilled(RecordType type, const CsvColumns &columns)
{
    std::vector<std::string_view> missing;
    for (const Field &field : describe(type).fields) {
        const bool isFilled =
            std::find(columns.begin(), columns.end(), field.name) != columns.end();
        if (field.required && field.type != FieldType::Id && !isFilled)
            missing.push_back(field.name);
    }
    return missing;
}

} // namespace lastrivet::exchange
