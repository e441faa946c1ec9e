// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Moment.h"
#include "core/packet/Aircraft.h"
#include "ui/print/Pages.h"
#include "ui/print/Paper.h"
#include "ui/print/PdfFinish.h"
#include "ui/print/PictureShelf.h"
#include "ui/print/Wording.h"

#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <vector>

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
    /// Some of the characters that no installed typeface has; boxes stand in their place.
    std::string unshown{};
};

/// Draws a part of a document where its pages stand, as often as the layout needs it.
using Section = std::function<void(Pages &, PictureShelf &)>;

/// A document that can be laid out any number of times: particulars, and its parts in their order.
///
/// Every page but a bare one gets a running head, and a foot with date, journal hash and number. A
/// document begins with `drawTitle`, has `drawContents` where it is long, and ends with
/// `drawCautions` where somebody else decides by it.
struct Document {
    QString title;
    QString author;
    /// Stands at the head of each page but the first.
    QString head_left;
    QString head_right;
    /// For the progress: how many photographs the sections ask for.
    int picture_count = 0;
    std::vector<Section> sections;
    /// Nothing stands in the margins and the body is the whole paper: sheets of labels.
    bool is_bare = false;
};

/// A document named `title` about an aircraft, with running heads and without sections.
Document documentAbout(const packet::Aircraft &aircraft, const QString &title);

/// Writes a document as PDF, whole and durable or not at all; nothing when the person cancelled by
/// answering false to `onPercent`. The same input gives the same bytes. Needs a QGuiApplication.
/// Throws `Fault`s that say in one sentence what happened.
std::optional<Printed> printDocument(const Document &document, const Imprint &imprint,
                                     const Pictures &pictures, const Choices &choices,
                                     const std::filesystem::path &place,
                                     const OnPercent &onPercent = {});

} // namespace lastrivet::print
