// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"
#include "core/records/Records.h"
#include "ui/widgets/RecordForm.h"

#include <QString>

#include <span>
#include <unordered_set>
#include <vector>

namespace lastrivet::ui {

class ActLine;
class SectionAside;
class Session;

/// How what a column says stands out: by a shape in a colour, beside its words.
enum class Tone { Plain, Settled, Soon, Alert };

/// One column of a section: what it shows, and how it is ticked or written, where it can be.
struct SectionColumn {
    const char *title;
    bool isNumber;
    QString (*text)(const Session &session, std::int64_t id);
    bool (*isTicked)(const Records &records, std::int64_t id) = nullptr;
    void (*tick)(Edit &edit, std::int64_t id, bool isTicked) = nullptr;
    /// False when the text says nothing that can be stored.
    bool (*write)(Edit &edit, std::int64_t id, const QString &text) = nullptr;
    /// What a tick says of the record: "done".
    const char *act = "";
    Tone (*tone)(const Session &session, std::int64_t id) = nullptr;
    /// One sentence why the text cannot be written; empty when it can.
    QString (*whyNot)(const Session &session, std::int64_t id, const QString &text) = nullptr;
    /// Where the list is too narrow for all columns these go, 1 first; 0 for one that stays. What
    /// they say stands below or beside the list as well.
    int spare = 0;
};

/// What one key does with the chosen records of a section.
struct SectionKey {
    int key;
    /// For the hint below the list: "fitted".
    const char *title;
    void (*run)(Session &session, ActLine &ask, const std::vector<std::int64_t> &ids);
};

/// Something people do with the chosen record of a section.
struct SectionAct {
    const char *title;
    bool (*isOffered)(const Records &records, std::int64_t id);
    /// Does it, or asks what it needs to know first.
    void (*run)(Session &session, ActLine &ask, std::int64_t id);
};

/// What is on record of a part in one respect: its steps, its log, its fasteners.
struct PartSection {
    const char *title;
    RecordType type;
    std::span<const SectionColumn> columns;
    /// The live records of these parts, in the order in which people look for them.
    std::vector<std::int64_t> (*collect)(const Records &records,
                                         const std::unordered_set<std::int64_t> &parts);
    /// What the line for a new one asks for; null when new ones are made elsewhere.
    const char *addPrompt = nullptr;
    std::int64_t (*add)(Edit &edit, Id<Component> part, const std::string &words) = nullptr;
    /// In its place where a new one depends on what is kept on this computer.
    std::int64_t (*addHere)(Session &session, Edit &edit, Id<Component> part,
                            const std::string &words) = nullptr;
    /// The fields to edit beneath the list; none for records that have a page of their own.
    std::vector<RecordForm::Row> (*form)() = nullptr;
    std::span<const SectionAct> (*acts)() = nullptr;
    /// Attaches a file that was taken in; null where none can be.
    void (*attach)(Edit &edit, std::int64_t id, Id<Media> file) = nullptr;
    /// New records cannot stand on no part.
    bool needsPart = false;
    /// One sentence why no new one can be made of the words; empty when it can.
    QString (*whyNotAdd)(Session &session, const QString &words) = nullptr;
    std::span<const SectionKey> (*keys)() = nullptr;
    /// One sentence why the record cannot be as it would be after a change in its form.
    QString (*check)(const void *record) = nullptr;
    /// What follows for the record from a field that was written in its form.
    void (*follow)(const Edit &edit, std::string_view field, void *record) = nullptr;
    /// What stands beside the fields of the chosen record; null for nothing.
    SectionAside *(*aside)(Session &session, QWidget *parent) = nullptr;
};

/// Every section in the order of the page.
std::span<const PartSection> partSections();

/// The section that shows records of the type; -1 when none does.
int sectionFor(RecordType type);

} // namespace lastrivet::ui
