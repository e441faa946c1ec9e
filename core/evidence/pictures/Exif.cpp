// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/pictures/Exif.h"

#include "core/base/Clock.h"
#include "core/evidence/pictures/ExifTime.h"

#include <exiv2/exiv2.hpp>

#include <mutex>
#include <string>

namespace lastrivet::evidence {

namespace {

void lockXmp(void *mutex, bool lock)
{
    if (lock)
        static_cast<std::mutex *>(mutex)->lock();
    else
        static_cast<std::mutex *>(mutex)->unlock();
}

/// exiv2 reads HEIC only when told, reads XMP on several threads only with a lock, and writes its
/// warnings to standard error.
void prepareLibrary()
{
    static std::mutex xmp;
    static std::once_flag once;
    std::call_once(once, [] {
        Exiv2::LogMsg::setLevel(Exiv2::LogMsg::mute);
        Exiv2::XmpParser::initialize(lockXmp, &xmp);
        Exiv2::enableBMFF(true);
    });
}

std::string text(const Exiv2::ExifData &data, const char *key)
{
    const auto found = data.findKey(Exiv2::ExifKey(key));
    return found == data.end() ? std::string() : found->toString();
}

int orientationIn(const Exiv2::ExifData &data)
{
    const auto found = data.findKey(Exiv2::ExifKey("Exif.Image.Orientation"));
    const long value = found == data.end() || found->count() == 0 ? 1 : found->toLong();
    return value >= 1 && value <= 8 ? int(value) : 1;
}

} // namespace

Exif readExif(std::span<const std::uint8_t> picture)
{
    prepareLibrary();
    Exif exif;
    try {
        const auto image = Exiv2::ImageFactory::open(picture.data(), long(picture.size()));
        image->readMetadata();
        const Exiv2::ExifData &data = image->exifData();
        exif.taken = parseExifTime(text(data, "Exif.Photo.DateTimeOriginal"));
        exif.offset_minutes = parseExifOffset(text(data, "Exif.Photo.OffsetTimeOriginal"));
        exif.orientation = orientationIn(data);
        if (const Exiv2::DataBuf *profile = image->iccProfile())
            exif.colour_profile.assign(profile->pData_, profile->pData_ + profile->size_);
    } catch (const std::exception &) {
        // A picture without readable metadata is still a picture.
    }
    return exif;
}

std::optional<Moment> takenOn(const Exif &exif, std::string_view zone)
{
    if (exif.taken && exif.offset_minutes)
        return inZone(*exif.taken, *exif.offset_minutes, zone);
    return exif.taken;
}

} // namespace lastrivet::evidence
