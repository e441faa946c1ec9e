// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Moment.h"
#include "ui/print/Pages.h"
#include "ui/print/Paper.h"
#include "ui/print/PdfFinish.h"
#include "ui/print/PictureShelf.h"
#include "ui/print/Wording.h"

#include <filesystem>
#include <functional>
#include <optional>
#include <string>

namespace lastrivet::print {

/// What dates a paper copy: the journal's newest hash and the moment of printing.
struct Imprint {
    std::string journal_hash;
    Moment made_on;
};

/// What the person chooses for every document.
struct Choices {
    Paper paper = Paper::A4;
    Wording wording;
};

/// What came out.
struct Printed {
    int pages = 0;
    int pictures = 0;
    /// Photographs with a note in their place.
    int missing_pictures = 0;
};

/// A document that can be laid out any number of times: particulars, and how its pages are drawn.
struct Document {
    QString title;
    QString author;
    /// Stands at the head of each page but the first.
    QString head_left;
    QString head_right;
    /// For the progress: how many photographs `draw` asks for.
    int picture_count = 0;
    std::function<void(Pages &, PictureShelf &)> draw;
};

/// Writes a document as PDF, whole and durable or not at all; nothing when the person cancelled by
/// answering false to `onPercent`. The same input gives the same bytes. Needs a QGuiApplication.
/// Throws `Fault`s that say in one sentence what happened.
std::optional<Printed> printDocument(const Document &document, const Imprint &imprint,
                                     const Pictures &pictures, const Choices &choices,
                                     const std::filesystem::path &place,
                                     const OnPercent &onPercent = {});

} // namespace lastrivet::print
