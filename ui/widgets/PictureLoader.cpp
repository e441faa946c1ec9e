// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/PictureLoader.h"

#include "core/evidence/MediaFile.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"

#include <QEvent>
#include <QGuiApplication>
#include <QStandardPaths>
#include <QTimer>

#include <algorithm>
#include <utility>

namespace lastrivet::ui {

namespace {

constexpr int mostRunning = 2;
constexpr std::size_t mostWanted = 300;
/// In kilobytes: some 1,500 cards on a plain screen, some 380 on one of twice the density.
constexpr int keptKilobytes = 128 * 1024;

} // namespace

evidence::PictureCache pictureCacheOf(const Project &project)
{
    if (!project.isReadOnly())
        return evidence::PictureCache(project.folder());
    const QString place = QStandardPaths::writableLocation(QStandardPaths::CacheLocation);
    return {project.folder(), toPath(place) / "pictures"};
}

PictureLoader::PictureLoader(Session &session, QObject *parent)
    : QObject(parent)
    , m_session(session)
    , m_cache(std::make_shared<const evidence::PictureCache>(pictureCacheOf(session.project())))
    , m_pixmaps(keptKilobytes)
{
    if (parent && parent->isWidgetType())
        parent->installEventFilter(this);
    connect(&session, &Session::changed, this, [this](const ChangeNotice &notice) {
        for (const RecordRef &record : notice.touched) {
            if (record.type == RecordType::Media)
                m_failures.remove(record.id);
        }
    });
}

bool PictureLoader::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() == QEvent::Show || event->type() == QEvent::WindowActivate)
        tryFailedAgain();
    return QObject::eventFilter(watched, event);
}

void PictureLoader::tryFailedAgain()
{
    const auto failed = std::exchange(m_failures, {});
    // Whoever shows one of them asks for it again.
    for (auto each = failed.keyBegin(); each != failed.keyEnd(); ++each)
        Q_EMIT loaded(*each);
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
    return readPicture(pathText(*file));
}

PictureLoader::Loaded PictureLoader::fitted(Loaded loaded, const QSize &frame, double ratio)
{
    if (loaded.image.isNull() || frame.isEmpty())
        return loaded;
    const QSize size = loaded.image.size().scaled(frame * ratio, Qt::KeepAspectRatio);
    loaded.image = loaded.image.scaled(size, Qt::IgnoreAspectRatio, Qt::SmoothTransformation)
                       .convertToFormat(QImage::Format_RGB32);
    loaded.image.setDevicePixelRatio(ratio);
    return loaded;
}

void PictureLoader::setFrame(const QSize &frame)
{
    m_frame = frame;
    m_pixmaps.clear();
}

QPixmap PictureLoader::small(const Media &media)
{
    const qint64 id = media.id.value();
    if (const QPixmap *pixmap = m_pixmaps.object(id))
        return *pixmap;
    if (media.kind != MediaKind::Photo || m_failures.contains(id))
        return {};
    std::erase(m_wanted, id);
    m_wanted.push_back(id);
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
        const Media *media = m_session.records()->find(Id<Media>{m_wanted.back()});
        m_wanted.pop_back();
        if (!media)
            continue;
        ++m_running;
        start(*media);
    }
}

void PictureLoader::start(const Media &media)
{
    const auto loadedPicture = std::make_shared<Loaded>();
    m_session.executor().run(
        this,
        [cache = m_cache, media, loadedPicture, frame = m_frame,
         ratio = qGuiApp->devicePixelRatio()] {
            *loadedPicture =
                fitted(load(*cache, media, evidence::PictureSize::Small), frame, ratio);
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

void PictureLoader::original(const Media &media, QObject *context, const Shown &shown)
{
    const auto file = evidence::locate(m_session.project().folder(), media);
    if (!file)
        return;
    const auto read = std::make_shared<Loaded>();
    m_session.executor().run(
        context, [name = pathText(*file), read] { *read = readPicture(name); },
        [shown, read] { shown(read->image, read->failure); });
}

} // namespace lastrivet::ui
