// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/evidence/PictureCache.h"
#include "core/records/Media.h"
#include "ui/widgets/PictureFile.h"

#include <QCache>
#include <QHash>
#include <QImage>
#include <QObject>
#include <QPixmap>
#include <QSize>

#include <functional>
#include <memory>
#include <vector>

namespace lastrivet {
class Project;
}

namespace lastrivet::ui {

class Session;

/// The copies of pictures, beside the photos or elsewhere while the project is read-only.
evidence::PictureCache pictureCacheOf(const Project &project);

/// Brings the small copies of pictures into memory, away from the window and already in the size
/// they are drawn in; what was asked for last comes first, because that is what the person looks
/// at.
class PictureLoader final : public QObject {
    Q_OBJECT

public:
    /// What could not be read is tried again when `parent` is shown anew, when the person comes
    /// back from another program, and when its record is changed: the file may be there by then.
    explicit PictureLoader(Session &session, QObject *parent = nullptr);

    /// The place that pictures are fitted into; without one they come as they are cached.
    void setFrame(const QSize &frame);
    /// The small copy; null while it is not there, and then `loaded` follows.
    QPixmap small(const Media &media);
    /// Forgets what was asked for and is not being read yet: it was scrolled past.
    void forgetWanted() { m_wanted.clear(); }
    /// Why there is no picture; empty when there is one or nobody knows yet.
    QString failure(Id<Media> media) const { return m_failures.value(media.value()); }

    /// A picture, or an empty image and why.
    using Shown = std::function<void(const QImage &image, const QString &failure)>;
    /// The large copy.
    void large(const Media &media, QObject *context, const Shown &shown);
    /// The original with all its pixels, upright.
    void original(const Media &media, QObject *context, const Shown &shown);

Q_SIGNALS:
    void loaded(qint64 mediaId);

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    using Loaded = PictureRead;

    void tryFailedAgain();
    void startSome();
    void start(const Media &media);
    static Loaded load(const evidence::PictureCache &cache, const Media &media,
                       evidence::PictureSize size);
    static Loaded fitted(Loaded loaded, const QSize &frame, double ratio);

    Session &m_session;
    std::shared_ptr<const evidence::PictureCache> m_cache;
    QCache<qint64, QPixmap> m_pixmaps;
    QHash<qint64, QString> m_failures;
    std::vector<qint64> m_wanted;
    QSize m_frame;
    int m_running = 0;
    bool m_isStarting = false;
};

} // namespace lastrivet::ui
