// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/PictureLoader.h"

#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"

#include <QImageReader>
#include <QStandardPaths>
#include <QTimer>

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr int mostRunning = 3;
constexpr std::size_t mostWanted = 300;
/// In kilobytes: some 600 small pictures.
constexpr int keptKilobytes = 96 * 1024;

std::shared_ptr<const evidence::PictureCache> cacheOf(const Project &project)
{
    if (!project.isReadOnly())
        return std::make_shared<evidence::PictureCache>(project.folder());
    const QString place = QStandardPaths::writableLocation(QStandardPaths::CacheLocation);
    return std::make_shared<evidence::PictureCache>(
        project.folder(), std::filesystem::path(place.toStdString()) / "pictures");
}

} // namespace

PictureLoader::PictureLoader(Session &session, QObject *parent)
    : QObject(parent)
    , m_session(session)
    , m_cache(cacheOf(session.project()))
    , m_pixmaps(keptKilobytes)
{
}

PictureLoader::Loaded PictureLoader::load(const evidence::PictureCache &cache, const Media &media,
                                          evidence::PictureSize size)
{
    auto file = cache.path(media, size);
    if (!file) {
        if (const auto why = cache.make(media))
            return {{}, inWords(*why)};
        file = cache.path(media, size);
    }
    if (!file)
        return {{}, tr("There is no picture of it.")};
    QImageReader reader(QString::fromStdString(file->string()));
    QImage image = reader.read();
    return {image, image.isNull() ? reader.errorString() : QString()};
}

QPixmap PictureLoader::small(const Media &media)
{
    const qint64 id = media.id.value();
    if (const QPixmap *pixmap = m_pixmaps.object(id))
        return *pixmap;
    if (media.kind != MediaKind::Photo || m_failures.contains(id))
        return {};
    std::erase_if(m_wanted, [&](const Media &wanted) { return wanted.id == media.id; });
    m_wanted.push_back(media);
    if (m_wanted.size() > mostWanted)
        m_wanted.erase(m_wanted.begin());
    if (!m_isStarting) {
        m_isStarting = true;
        // Never from within a paint: what is loaded at once would ask to be painted.
        QTimer::singleShot(0, this, [this] {
            m_isStarting = false;
            startSome();
        });
    }
    return {};
}

void PictureLoader::startSome()
{
    while (m_running < mostRunning && !m_wanted.empty()) {
        const Media media = std::move(m_wanted.back());
        m_wanted.pop_back();
        ++m_running;
        start(media);
    }
}

void PictureLoader::start(const Media &media)
{
    const auto loadedPicture = std::make_shared<Loaded>();
    m_session.executor().run(
        this,
        [cache = m_cache, media, loadedPicture] {
            *loadedPicture = load(*cache, media, evidence::PictureSize::Small);
        },
        [this, id = media.id.value(), loadedPicture] {
            --m_running;
            if (loadedPicture->image.isNull())
                m_failures.insert(id, loadedPicture->failure);
            else
                m_pixmaps.insert(id, new QPixmap(QPixmap::fromImage(loadedPicture->image)),
                                 int(loadedPicture->image.sizeInBytes() / 1024) + 1);
            Q_EMIT loaded(id);
            startSome();
        });
}

void PictureLoader::large(const Media &media, QObject *context, const Shown &shown)
{
    const auto loadedPicture = std::make_shared<Loaded>();
    m_session.executor().run(
        context,
        [cache = m_cache, media, loadedPicture] {
            *loadedPicture = load(*cache, media, evidence::PictureSize::Large);
        },
        [shown, loadedPicture] { shown(loadedPicture->image, loadedPicture->failure); });
}

} // namespace lastrivet::ui
