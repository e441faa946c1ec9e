// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/PhotoSections.h"

#include "core/entry/PartFinder.h"
#include "core/evidence/PartsOf.h"
#include "core/readiness/PartTree.h"
#include "ui/convert/QtText.h"
#include "ui/widgets/MediaModel.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>
#include <map>
#include <optional>

namespace lastrivet::ui {

namespace {

struct Dated {
    std::optional<Moment> day;
    const Media *media = nullptr;
};

QString translated(const char *text)
{
    return QCoreApplication::translate("PhotoSections", text);
}

std::vector<Dated> newestFirst(const Records &records, const PhotoFilter &filter)
{
    std::vector<Dated> photos;
    for (const Media &media : records.media) {
        if (!media.withdrawn_on && (!filter || filter(records, media)))
            photos.push_back({dayOf(media), &media});
    }
    std::ranges::stable_sort(photos, [](const Dated &a, const Dated &b) {
        if (!a.day || !b.day)
            return bool(a.day) && !b.day;
        return sortsBefore(*b.day, *a.day);
    });
    return photos;
}

std::int64_t monthOf(const std::optional<Moment> &day)
{
    if (!day)
        return 0;
    const std::chrono::year_month_day date(day->day());
    return std::int64_t(int(date.year())) * 100 + unsigned(date.month());
}

QString monthName(std::int64_t month)
{
    if (month == 0)
        return translated("Without a date");
    return QLocale().toString(QDate(int(month / 100), int(month % 100), 1),
                              QStringLiteral("MMMM yyyy"));
}

std::vector<PhotoSection> byMonth(const std::vector<Dated> &photos)
{
    std::vector<PhotoSection> sections;
    for (const Dated &photo : photos) {
        const std::int64_t month = monthOf(photo.day);
        if (sections.empty() || sections.back().key != month)
            sections.push_back({month, monthName(month), {}, {}});
        sections.back().photos.push_back(photo.media->id);
    }
    return sections;
}

std::vector<PhotoSection> byPart(const Records &records, const std::vector<Dated> &photos)
{
    const readiness::PartTree tree(records.components);
    std::map<readiness::Place, PhotoSection> sections;
    PhotoSection without{0, translated("Belonging to no part"), {}, {}};
    for (const Dated &photo : photos) {
        bool hasPlace = false;
        for (const Id<Component> part : evidence::partsOf(records, *photo.media)) {
            if (const auto place = tree.placeOf(part)) {
                sections[*place].photos.push_back(photo.media->id);
                hasPlace = true;
            }
        }
        if (!hasPlace)
            without.photos.push_back(photo.media->id);
    }
    std::vector<PhotoSection> ordered;
    for (auto &[place, section] : sections) {
        section.key = tree.part(place).id.value();
        section.title = toQt(entry::spokenName(tree.part(place)));
        if (const auto parent = tree.parentOf(place))
            section.within = toQt(tree.part(*parent).name);
        ordered.push_back(std::move(section));
    }
    if (!without.photos.empty())
        ordered.push_back(std::move(without));
    return ordered;
}

} // namespace

std::vector<PhotoSection> photoSections(const Records &records, PhotoOrder order,
                                        const PhotoFilter &filter)
{
    const std::vector<Dated> photos = newestFirst(records, filter);
    return order == PhotoOrder::ByDate ? byMonth(photos) : byPart(records, photos);
}

} // namespace lastrivet::ui
