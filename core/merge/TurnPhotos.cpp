// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/merge/Turn.h"

#include "core/records/OwnFileName.h"

#include <string>

namespace lastrivet::merge {

namespace {

using storage::Cell;
using storage::RecordTable;
using storage::textIn;

const RecordTable &mediaTable()
{
    return storage::tablesOf(RecordType::Media).front();
}

/// Whether the column holds ids of media in this row.
bool namesMedia(const RowEdit &edit, std::size_t column,
                const std::vector<std::optional<Cell>> &cells)
{
    const auto *field = edit.table->columns()[column].field;
    if (!field || (field->type != FieldType::Ref && field->type != FieldType::Refs))
        return false;
    if (field->target)
        return *field->target == RecordType::Media;
    const auto subject = columnOf(*edit.table, "subject");
    return subject < cells.size() && cells[subject] == Cell{std::string(word(RecordType::Media))};
}

} // namespace

void Turn::findSamePhotos()
{
    static const auto sum = columnOf(mediaTable(), "sha256");
    static const auto withdrawn = columnOf(mediaTable(), "withdrawn_on");
    for (const auto &edits : m_content.records) {
        const auto *own = edits.own();
        if (edits.record.type != RecordType::Media || !own || own->kind != RowChange::Insert ||
            m_memory.samePhoto.contains(edits.record.id))
            continue;
        // One that came withdrawn must not take one that counts along.
        if (textIn(own->after, withdrawn))
            continue;
        const auto *text = textIn(own->after, sum);
        const auto *known = text && !text->empty()
                                ? m_memory.photos.withSum(m_after.records, *text, edits.record.id)
                                : nullptr;
        if (known)
            m_memory.samePhoto.emplace(edits.record.id, known->id.value());
    }
}

void Turn::useOneId()
{
    if (m_memory.samePhoto.empty())
        return;
    const auto mapped = [&](std::int64_t id) {
        const auto found = m_memory.samePhoto.find(id);
        return found == m_memory.samePhoto.end() ? id : found->second;
    };
    for (auto &edits : m_content.records) {
        if (edits.record.type == RecordType::Media)
            edits.record.id = mapped(edits.record.id);
        for (auto &edit : edits.rows) {
            for (auto *cells : {&edit.before, &edit.after}) {
                for (std::size_t i = 1; i < cells->size(); ++i) {
                    auto &cell = (*cells)[i];
                    const auto *id = cell ? std::get_if<std::int64_t>(&*cell) : nullptr;
                    if (id && namesMedia(edit, i, *cells))
                        cell = mapped(*id);
                }
            }
        }
    }
}

void Turn::notePhoto(RecordRef record)
{
    const Media *media =
        record.type == RecordType::Media ? m_after.records.find(Id<Media>{record.id}) : nullptr;
    if (media)
        m_memory.photos.note(*media);
}

void Turn::freeFileName(RecordRef record, Row &row)
{
    if (record.type != RecordType::Media)
        return;
    static const auto file = columnOf(mediaTable(), "file");
    static const auto sum = columnOf(mediaTable(), "sha256");
    const auto *name = std::get_if<std::string>(&row[file]);
    const auto *digits = std::get_if<std::string>(&row[sum]);
    const Media *media = name ? m_memory.photos.withFile(m_after.records, *name) : nullptr;
    // What was withdrawn and taken in again is one file.
    if (media && digits && media->sha256 == *digits)
        return;
    if (media) {
        // Both get another name, so that no file on any disk has to give way.
        const RecordRef other{RecordType::Media, media->id.value()};
        const auto was = renameFile(m_after.records, other);
        later([this, other, was] { m_memory.seen[{other, "file"}].push_back(was); });
        m_touched.insert(other);
    } else if (!name || !m_memory.isOfLeftOut(*name, record)) {
        return;
    }
    const auto was = renameFile(record, row);
    later([this, record, was] { m_memory.seen[{record, "file"}].push_back(was); });
}

storage::Cell Turn::renameFile(RecordRef record, Row &row)
{
    static const auto file = columnOf(mediaTable(), "file");
    static const auto sum = columnOf(mediaTable(), "sha256");
    auto was = row[file];
    const auto *name = std::get_if<std::string>(&was);
    const auto *digits = std::get_if<std::string>(&row[sum]);
    if (name)
        row[file] = ownFileName(*name, digits ? *digits : std::string(), record.id);
    return was;
}

storage::Cell Turn::renameFile(Records &records, RecordRef photo)
{
    storage::RecordRows rows(records, photo);
    auto was = renameFile(photo, *rows.main);
    rows.putInto(records);
    m_memory.photos.note(*records.find(Id<Media>{photo.id}));
    return was;
}

void Turn::leaveNames(Records &records, std::set<RecordRef> &touched)
{
    static const auto sum = columnOf(mediaTable(), "sha256");
    static const auto file = columnOf(mediaTable(), "file");
    for (const auto &edits : m_content.records) {
        const auto *own = edits.own();
        const auto *name =
            edits.record.type == RecordType::Media && own && own->kind == RowChange::Insert
                ? textIn(own->after, file)
                : nullptr;
        if (!name)
            continue;
        m_memory.leftOutFiles.try_emplace(*name, edits.record);
        const Media *media = m_memory.photos.withFile(records, *name);
        const auto *digits = textIn(own->after, sum);
        if (!media || media->id.value() == edits.record.id || (digits && media->sha256 == *digits))
            continue;
        const RecordRef other{RecordType::Media, media->id.value()};
        m_memory.seen[{other, "file"}].push_back(renameFile(records, other));
        touched.insert(other);
    }
}

} // namespace lastrivet::merge
