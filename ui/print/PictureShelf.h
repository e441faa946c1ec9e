// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/base/Result.h"
#include "core/evidence/PictureCache.h"
#include "core/packet/Photo.h"
#include "ui/print/PdfFinish.h"

#include <functional>
#include <map>
#include <vector>

namespace lastrivet::print {

/// The copy of a photograph that is printed, or the sentence why there is none.
using Pictures = std::function<Result<evidence::PictureCopy, Message>(const packet::Photo &)>;

/// The pictures of one document, each asked for once and numbered for its placeholder.
class PictureShelf {
public:
    explicit PictureShelf(Pictures pictures);

    struct Place {
        /// -1 when there is no picture.
        int index = -1;
        int width = 0;
        int height = 0;
        Message missing;
    };
    const Place &place(const packet::Photo &photo);

    const std::vector<EmbeddedPicture> &pictures() const { return m_embedded; }
    int missingCount() const { return m_missing; }

private:
    Place find(const packet::Photo &photo);

    Pictures m_pictures;
    std::map<Id<Media>, Place> m_places;
    std::vector<EmbeddedPicture> m_embedded;
    int m_missing = 0;
};

} // namespace lastrivet::print
