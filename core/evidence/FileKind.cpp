// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/FileKind.h"

#include "core/base/CaseFold.h"

#include <algorithm>
#include <array>
#include <string>

namespace lastrivet::evidence {

namespace {

using namespace std::string_view_literals;

struct Brand {
    std::string_view beginning;
    FileKind kind;
};

// Registered brands of ISO base media files (ISO/IEC 14496-12, mp4ra.org); raw photographs and
// other uses of the container are in none of these lists.
constexpr std::array brands{
    Brand{"heic", FileKind::Heic},      Brand{"heix", FileKind::Heic},
    Brand{"hevc", FileKind::Heic},      Brand{"heim", FileKind::Heic},
    Brand{"heis", FileKind::Heic},      Brand{"mif1", FileKind::Heic},
    Brand{"qt  ", FileKind::QuickTime}, Brand{"iso", FileKind::Mp4},
    Brand{"mp4", FileKind::Mp4},        Brand{"avc1", FileKind::Mp4},
    Brand{"M4V", FileKind::Mp4},        Brand{"3gp", FileKind::Mp4},
    Brand{"3g2", FileKind::Mp4},        Brand{"MSNV", FileKind::Mp4},
    Brand{"XAVC", FileKind::Mp4},
};

std::optional<FileKind> brandOf(std::string_view brand)
{
    const auto found = std::find_if(brands.begin(), brands.end(), [&](const Brand &known) {
        return brand.starts_with(known.beginning);
    });
    return found == brands.end() ? std::nullopt : std::optional(found->kind);
}

} // namespace

std::optional<FileKind> sniff(std::span<const std::uint8_t> beginning)
{
    const std::string_view text(reinterpret_cast<const char *>(beginning.data()),
                                std::min(beginning.size(), sniffedBytes));
    if (text.starts_with("\xff\xd8\xff"sv))
        return FileKind::Jpeg;
    if (text.starts_with("\x89PNG\r\n\x1a\n"sv))
        return FileKind::Png;
    if (text.substr(std::min<std::size_t>(4, text.size())).starts_with("ftyp"sv))
        return brandOf(text.substr(8));
    if (text.starts_with("\x1a\x45\xdf\xa3"sv))
        return FileKind::Matroska;
    if (text.starts_with("RIFF"sv) && text.size() > 12 && text.substr(8, 4) == "AVI "sv)
        return FileKind::Avi;
    // Readers accept a PDF header anywhere in the first 1024 bytes (ISO 32000-1, annex H.3.4.1).
    if (text.find("%PDF-"sv) != std::string_view::npos)
        return FileKind::Pdf;
    return std::nullopt;
}

std::string_view suffix(FileKind kind)
{
    constexpr std::array suffixes{"jpg"sv, "png"sv, "heic"sv, "mp4"sv,
                                  "mov"sv, "mkv"sv, "avi"sv,  "pdf"sv};
    return suffixes[std::size_t(kind)];
}

bool fitsKind(FileKind kind, std::string_view dottedSuffix)
{
    static constexpr std::array<std::string_view, 8> common{".jpg.jpeg.jpe.jfif.",
                                                            ".png.",
                                                            ".heic.heif.hif.",
                                                            ".mp4.m4v.3gp.3g2.",
                                                            ".mov.qt.",
                                                            ".mkv.webm.",
                                                            ".avi.",
                                                            ".pdf."};
    const std::string wanted = asciiLower(dottedSuffix) + '.';
    return dottedSuffix.size() > 1 && common[std::size_t(kind)].find(wanted) != std::string::npos;
}

MediaKind mediaKind(FileKind kind)
{
    if (kind <= FileKind::Heic)
        return MediaKind::Photo;
    return kind == FileKind::Pdf ? MediaKind::Document : MediaKind::Video;
}

} // namespace lastrivet::evidence
