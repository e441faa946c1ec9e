// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/merge/Turn.h"

#include <algorithm>
#include <filesystem>
#include <fmt/format.h>

namespace lastrivet::merge {

namespace {

using storage::Cell;
using storage::RecordTable;

std::size_t columnOf(const RecordTable &table, std::string_view name)
{
    const auto &columns = table.columns();
    return std::size_t(std::find_if(columns.begin(), columns.end(),
                                    [&](const auto &column) { return column.name == name; }) -
                       columns.begin());
}

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

/// "photos/a_4f2a91.jpg" with twelve digits of the sum instead of six; of a photograph without sum
/// with its id, which is no other's either.
std::string withMoreDigits(const std::string &file, const std::string &sum, std::int64_t id)
{
    const std::filesystem::path path(file);
    auto stem = path.stem().string();
    if (const auto line = stem.rfind('_');
        line != std::string::npos && sum.starts_with(stem.substr(line + 1)))
        stem.erase(line);
    const auto digits = sum.empty() ? fmt::to_string(id) : sum.substr(0, 12);
    const auto name = fmt::format("{}_{}{}", stem, digits, path.extension().string());
    return (path.parent_path() / name).generic_string();
}

} // namespace

void Turn::findSamePhotos()
{
    static const auto sum = columnOf(mediaTable(), "sha256");
    for (const auto &edits : m_content.records) {
        const auto *own = edits.own();
        if (edits.record.type != RecordType::Media || !own || own->kind != RowChange::Insert ||
            sum >= own->after.size() || m_memory.samePhoto.contains(edits.record.id))
            continue;
        const auto *text = own->after[sum] ? std::get_if<std::string>(&*own->after[sum]) : nullptr;
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
    const auto *name = std::get_if<std::string>(&row[file]);
    const Media *media = name ? m_memory.photos.withFile(m_after.records, *name) : nullptr;
    if (!media)
        return;
    // Both get another name, so that no file on any disk has to give way.
    storage::RecordRows other(m_after.records, {RecordType::Media, media->id.value()});
    renameFile(other.ref, *other.main);
    other.putInto(m_after.records);
    notePhoto(other.ref);
    m_touched.insert(other.ref);
    renameFile(record, row);
}

void Turn::renameFile(RecordRef record, Row &row)
{
    static const auto file = columnOf(mediaTable(), "file");
    static const auto sum = columnOf(mediaTable(), "sha256");
    const auto *name = std::get_if<std::string>(&row[file]);
    if (!name)
        return;
    const auto *digits = std::get_if<std::string>(&row[sum]);
    later([this, record, was = row[file]] { m_memory.seen[{record, "file"}].push_back(was); });
    row[file] = withMoreDigits(*name, digits ? *digits : std::string(), record.id);
}

} // namespace lastrivet::merge
