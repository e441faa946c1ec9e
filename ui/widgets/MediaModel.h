// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"
#include "ui/widgets/RecordRowsModel.h"

#include <functional>

namespace lastrivet::ui {

class PictureLoader;
class Session;

/// Photos, videos and papers, the newest first, as far as a filter lets them through.
class MediaModel final : public RecordRowsModel {
    Q_OBJECT

public:
    enum Role { IdRole = Qt::UserRole, FailureRole, KindRole, DayRole, ShowsRole };
    using Filter = std::function<bool(const Records &records, const Media &media)>;

    MediaModel(Session &session, PictureLoader &loader, QObject *parent = nullptr);

    void setFilter(Filter filter);
    void apply(const ChangeNotice &notice);
    const Media *mediaAt(int row) const;

    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;

private:
    void fill();

    Session &m_session;
    PictureLoader &m_loader;
    Filter m_filter;
};

/// What the file is called on screen, on one line: its caption, else its day, else its file name.
QString mediaTitle(const Media &media);
/// What it shows, in words.
QString shownWords(const Media &media);
/// Its day, and what it shows.
QString mediaFacts(const Media &media);
/// What a model of files answers about one of them.
QVariant mediaData(const Media &media, int role, PictureLoader &loader);

} // namespace lastrivet::ui
