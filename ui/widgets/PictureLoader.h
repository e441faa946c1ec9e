// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/evidence/PictureCache.h"
#include "core/records/Media.h"

#include <QCache>
#include <QHash>
#include <QImage>
#include <QObject>
#include <QPixmap>

#include <functional>
#include <memory>
#include <vector>

namespace lastrivet::ui {

class Session;

/// Brings the small copies of pictures into memory, away from the window; what was asked for last
/// comes first, because that is what the person looks at.
class PictureLoader final : public QObject {
    Q_OBJECT

public:
    explicit PictureLoader(Session &session, QObject *parent = nullptr);

    /// The small copy; null while it is not there, and then `loaded` follows.
    QPixmap small(const Media &media);
    /// Why there is no picture; empty when there is one or nobody knows yet.
    QString failure(Id<Media> media) const { return m_failures.value(media.value()); }

    /// The large copy, or an empty image and why.
    using Shown = std::function<void(const QImage &image, const QString &failure)>;
    void large(const Media &media, QObject *context, const Shown &shown);

Q_SIGNALS:
    void loaded(qint64 mediaId);

private:
    struct Loaded {
        QImage image;
        QString failure;
    };

    void startSome();
    void start(const Media &media);
    static Loaded load(const evidence::PictureCache &cache, const Media &media,
                       evidence::PictureSize size);

    Session &m_session;
    std::shared_ptr<const evidence::PictureCache> m_cache;
    QCache<qint64, QPixmap> m_pixmaps;
    QHash<qint64, QString> m_failures;
    std::vector<Media> m_wanted;
    int m_running = 0;
    bool m_isStarting = false;
};

} // namespace lastrivet::ui
