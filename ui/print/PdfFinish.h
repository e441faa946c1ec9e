// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/JpegHeader.h"
#include "ui/print/Outline.h"

#include <QByteArray>

#include <filesystem>
#include <functional>
#include <string>
#include <vector>

namespace lastrivet::print {

/// A JPEG file that takes the place of the placeholder with its index.
struct EmbeddedPicture {
    std::filesystem::path file;
    JpegHeader header;
};

/// What turns laid-out pages into the finished document.
struct PdfFinish {
    std::vector<EmbeddedPicture> pictures;
    std::vector<Heading> headings;
    std::vector<Link> links;
    std::string title;
    std::string author;
    std::string subject;
    /// As PDF writes it: "D:20260314152300".
    std::string made_on;
    /// Language tag of the texts.
    std::string language;
    /// Height of a page in print units.
    double page_height = 0;
};

/// Told how much is written, in percent; false stops it.
using OnPercent = std::function<bool(int percent)>;

/// Writes the finished document: pictures byte by byte, bookmarks, links and particulars. The same
/// input gives the same bytes. Throws `Fault`s, and `Cancelled` when `onPercent` answers false.
void finishPdf(const QByteArray &pages, const PdfFinish &finish, const std::filesystem::path &place,
               const OnPercent &onPercent);

} // namespace lastrivet::print
