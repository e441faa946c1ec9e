// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/PictureShelf.h"

#include <utility>

namespace lastrivet::print {

PictureShelf::PictureShelf(Pictures pictures)
    : m_pictures(std::move(pictures))
{
}

const PictureShelf::Place &PictureShelf::place(const packet::Photo &photo)
{
    const auto known = m_places.find(photo.id);
    if (known != m_places.end())
        return known->second;
    const Place &place = m_places.emplace(photo.id, find(photo)).first->second;
    m_missing += place.index < 0;
    return place;
}

PictureShelf::Place PictureShelf::find(const packet::Photo &photo)
{
    // A placeholder has two bytes for its index.
    constexpr std::size_t mostPictures = 65536;
    if (m_embedded.size() >= mostPictures)
        return {.missing = {"One document holds no more pictures.", {}}};
    const Result<evidence::PictureCopy, Message> copy = m_pictures(photo);
    if (!copy)
        return {.missing = copy.reason()};
    const std::optional<JpegHeader> header = readJpegHeader(copy->file);
    if (!header)
        return {.missing = {"Its copy for printing is damaged.", {}}};
    m_embedded.push_back({copy->file, *header});
    return {int(m_embedded.size()) - 1, header->width, header->height, {}};
}

} // namespace lastrivet::print
