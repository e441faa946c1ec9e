// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/OpenProject.h"
#include "app/cli/PlainText.h"
#include "app/cli/VerbOptions.h"
#include "core/base/JsonWriter.h"
#include "core/verify/Repair.h"
#include "core/verify/Verification.h"

#include <CLI/CLI.hpp>

#include <fmt/ostream.h>

#include <optional>

namespace lastrivet::cli {

namespace {

struct Options : VerbOptions {
    bool json = false;
    bool isRepairing = false;
};

using Mended = std::optional<std::vector<Message>>;

void writeFinding(JsonWriter &json, const Finding &finding)
{
    json.beginObject();
    json.member("what", finding.what);
    json.key("record");
    finding.record.empty() ? json.null() : json.value(finding.record);
    json.key("id");
    finding.id == 0 ? json.null() : json.value(finding.id);
    json.member("text", finding.text);
    json.endObject();
}

void writeTexts(JsonWriter &json, std::string_view name, const std::vector<Message> &texts)
{
    json.key(name);
    json.beginArray();
    for (const Message &text : texts)
        json.value(english(text));
    json.endArray();
}

void writeJson(const Verification &verification, const Mended &mended, std::ostream &out)
{
    JsonWriter json(out, JsonWriter::Layout::Indented);
    json.beginObject();
    json.member("ok", verification.isFaultless());
    json.key("checked");
    json.beginObject();
    json.member("records", verification.records);
    json.member("journal_rows", verification.journal_rows);
    json.member("files", verification.files);
    json.member("files_without_sha256", verification.files_without_sha256);
    json.endObject();
    json.key("findings");
    json.beginArray();
    for (const Finding &finding : verification.findings)
        writeFinding(json, finding);
    json.endArray();
    writeTexts(json, "notes", verification.notes);
    if (mended)
        writeTexts(json, "repaired", *mended);
    json.endObject();
}

void writeText(const Verification &verification, const Mended &mended, std::ostream &out)
{
    for (const Message &sentence : mended.value_or(std::vector<Message>{}))
        fmt::print(out, "repair: {}\n", onOneLine(english(sentence)));
    for (const Message &note : verification.notes)
        fmt::print(out, "note: {}\n", onOneLine(english(note)));
    for (const Finding &finding : verification.findings)
        fmt::print(out, "{}: {}\n", finding.what, onOneLine(finding.text));
    fmt::print(out, "Looked at {}, {} and {}: {}.\n", counted(verification.records, "record"),
               counted(verification.journal_rows, "journal row"),
               counted(verification.files, "file"),
               verification.isFaultless() ? "nothing is wrong"
                                          : counted(verification.foundInAll(), "finding"));
}

Outcome verifyProject(const Options &options, Terminal &terminal)
{
    Mended mended;
    Verification verification;
    if (options.isRepairing) {
        Repair repaired = tellingWhere(options.project, [&] { return repair(options.project); });
        mended = std::move(repaired.done);
        verification = std::move(repaired.after);
    } else {
        verification = tellingWhere(options.project, [&] { return verify(options.project); });
    }
    if (options.json) {
        writeJson(verification, mended, terminal.out());
        terminal.out() << '\n';
    } else {
        writeText(verification, mended, terminal.out());
    }
    return verification.isFaultless() ? Outcome::Done : Outcome::No;
}

} // namespace

void declareVerify(CLI::App &program, Action &chosen)
{
    auto options = std::make_shared<Options>();
    CLI::App &verb =
        addVerb(program, "verify",
                "Looks over the database, the records, the journal and every file", *options);
    verb.add_flag("--repair", options->isRepairing,
                  "First makes the search index and the small copies of photos anew, and removes "
                  "half-written files; never records or photos");
    addJsonFlag(verb, options->json);
    whenNamed(verb, chosen,
              [options](Terminal &terminal) { return verifyProject(*options, terminal); });
}

} // namespace lastrivet::cli
