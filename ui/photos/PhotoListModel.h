// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"
#include "ui/photos/PhotoSections.h"

#include <QAbstractListModel>

#include <unordered_set>
#include <vector>

namespace lastrivet::ui {

class PictureLoader;
class Session;

/// The photos of all sections, one after the other; a new order is told as one run of rows that
/// went and one that came.
class PhotoListModel final : public QAbstractListModel {
    Q_OBJECT

public:
    /// A heading and the rows beneath it.
    struct Section {
        std::int64_t key = 0;
        QString title;
        QString within;
        int first = 0;
        int count = 0;

        friend bool operator==(const Section &, const Section &) = default;
    };

    PhotoListModel(Session &session, PictureLoader &loader, QObject *parent = nullptr);

    void show(PhotoOrder order, PhotoFilter filter);
    PhotoOrder order() const { return m_order; }
    void apply(const ChangeNotice &notice);

    const std::vector<Section> &sections() const { return m_sections; }
    Id<Media> idAt(int row) const { return m_rows[std::size_t(row)].media; }
    const Media *mediaAt(int row) const;
    /// The first row of a file, or -1.
    int rowOf(Id<Media> media) const;
    /// How many files are shown; one under two parts counts once.
    int fileCount() const { return m_fileCount; }

    int rowCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;

Q_SIGNALS:
    void sectionsChanged();

private:
    struct Row {
        std::int64_t section = 0;
        Id<Media> media;

        friend bool operator==(const Row &, const Row &) = default;
    };

    bool mayDiffer(const ChangeNotice &notice) const;
    void fill();
    void setRows(std::vector<Row> rows, std::vector<Section> sections);
    void tellChanged(const std::unordered_set<std::int64_t> &media);

    Session &m_session;
    PictureLoader &m_loader;
    PhotoOrder m_order = PhotoOrder::ByDate;
    PhotoFilter m_filter;
    std::vector<Row> m_rows;
    std::vector<Section> m_sections;
    int m_fileCount = 0;
};

} // namespace lastrivet::ui
