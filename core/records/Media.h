// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Id.h"
#include "core/base/Moment.h"
#include "core/base/WordSet.h"
#include "core/records/RecordType.h"
#include "core/records/Vocabulary.h"

#include <optional>
#include <string>
#include <vector>

namespace lastrivet {

/// A photograph, video or document, kept as a file.
struct Media {
    static constexpr RecordType type = RecordType::Media;

    /// A mark over the picture; points are pairs of x and y from 0 to 1.
    struct Annotation {
        AnnotationShape shape = AnnotationShape::Arrow;
        std::vector<double> points;
        std::string text;

        friend bool operator==(const Annotation &, const Annotation &) = default;
    };

    /// A record that the file belongs to.
    struct Link {
        RecordType subject = RecordType::Project;
        std::int64_t id = 0;

        friend bool operator==(const Link &, const Link &) = default;
    };

    Id<Media> id;
    MediaKind kind = MediaKind::Photo;
    /// Relative to the project's folder, with forward slashes.
    std::string file;
    /// 64 hex digits, of the file as it was taken in.
    std::string sha256;
    std::optional<std::int64_t> bytes;
    std::optional<Moment> taken_on;
    std::optional<Moment> imported_on;
    /// Width and height in pixels, turned upright.
    std::optional<std::int64_t> width;
    std::optional<std::int64_t> height;
    /// Empty while nobody has said.
    WordSet<Shows> shows;
    std::string caption;
    std::vector<Annotation> annotations;
    std::vector<Link> links;
    std::string note;
    std::optional<Moment> withdrawn_on;
    std::string withdrawn_why;

    friend bool operator==(const Media &, const Media &) = default;
};

/// True for a photograph or a video, which show something; a document says it.
inline bool isPicture(const Media &media)
{
    return media.kind == MediaKind::Photo || media.kind == MediaKind::Video;
}

/// When a file was taken, or else taken in.
inline std::optional<Moment> dayOf(const Media &media)
{
    return media.taken_on ? media.taken_on : media.imported_on;
}

} // namespace lastrivet
