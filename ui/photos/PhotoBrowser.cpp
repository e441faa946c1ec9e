// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/PhotoBrowser.h"

#include "ui/photos/HeadingList.h"
#include "ui/photos/PhotoGrid.h"
#include "ui/photos/PhotoListModel.h"
#include "ui/shell/Session.h"
#include "ui/widgets/OneRow.h"

#include <QLabel>
#include <QSplitter>
#include <QVBoxLayout>

#include <algorithm>
#include <unordered_set>

namespace lastrivet::ui {

PhotoBrowser::PhotoBrowser(Session &session, PictureLoader &loader, QWidget *parent)
    : QWidget(parent)
    , m_model(new PhotoListModel(session, loader, this))
    , m_headings(new HeadingList(this))
    , m_grid(new PhotoGrid(session.theme(), *m_model, loader, this))
{
    build();
    connect(m_grid->selectionModel(), &QItemSelectionModel::selectionChanged, this,
            &PhotoBrowser::chosenChanged);
    connect(m_grid, &QAbstractItemView::activated, this, &PhotoBrowser::opened);
    connect(m_grid, &PhotoGrid::topSectionChanged, m_headings, &HeadingList::follow);
    connect(m_headings, &HeadingList::wanted, this, [this](int section) {
        m_grid->scrollToSection(section);
        // The last headings never reach the upper edge.
        m_headings->follow(section);
    });
    connect(m_model, &PhotoListModel::sectionsChanged, this,
            [this] { m_headings->setSections(m_model->sections()); });
}

void PhotoBrowser::build()
{
    m_grid->setAccessibleName(tr("Photos"));
    m_headings->setAccessibleName(tr("Headings"));
    auto *keys = new QLabel(tr("Space opens · A assigns to a part · M confirms the log entry · "
                               "1 to 7 say what it shows · Del withdraws"),
                            this);
    keys->setForegroundRole(QPalette::PlaceholderText);
    keys->setWordWrap(true);
    auto *right = new QWidget(this);
    auto *rightLayout = new QVBoxLayout(right);
    rightLayout->setContentsMargins(0, 0, 0, 0);
    rightLayout->addWidget(m_grid, 1);
    rightLayout->addWidget(keys);
    auto *parts = new QSplitter(this);
    parts->setChildrenCollapsible(false);
    parts->addWidget(m_headings);
    parts->addWidget(right);
    parts->setStretchFactor(1, 1);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(parts);
}

void PhotoBrowser::show(PhotoOrder order, const PhotoFilter &filter)
{
    const std::vector<Id<Media>> media = chosen();
    m_model->show(order, filter);
    m_headings->setSections(m_model->sections());
    keepChosen(media);
}

void PhotoBrowser::apply(const ChangeNotice &notice)
{
    const std::vector<Id<Media>> media = chosen();
    m_model->apply(notice);
    keepChosen(media);
}

void PhotoBrowser::keepChosen(const std::vector<Id<Media>> &media)
{
    if (!media.empty() && chosen() != media)
        choose(media);
}

int PhotoBrowser::fileCount() const
{
    return m_model->fileCount();
}

std::vector<Id<Media>> PhotoBrowser::chosen() const
{
    std::vector<Id<Media>> media;
    for (const QModelIndex &index : m_grid->selectionModel()->selectedIndexes())
        media.push_back(m_model->idAt(index.row()));
    std::ranges::sort(media);
    const auto repeated = std::ranges::unique(media);
    media.erase(repeated.begin(), repeated.end());
    return media;
}

bool PhotoBrowser::choose(const std::vector<Id<Media>> &media)
{
    QItemSelection selection;
    int first = -1;
    std::unordered_set<std::int64_t> wanted;
    for (const Id<Media> id : media)
        wanted.insert(id.value());
    for (int row = 0; row < m_model->rowCount(); ++row) {
        if (!wanted.contains(m_model->idAt(row).value()))
            continue;
        selection.select(m_model->index(row), m_model->index(row));
        first = first < 0 ? row : first;
    }
    if (first < 0)
        return false;
    m_grid->selectionModel()->setCurrentIndex(m_model->index(first), QItemSelectionModel::NoUpdate);
    m_grid->selectionModel()->select(selection, QItemSelectionModel::ClearAndSelect);
    m_grid->scrollTo(m_model->index(first));
    return true;
}

bool PhotoBrowser::isShown(Id<Media> media) const
{
    return m_model->rowOf(media) >= 0;
}

const Media *PhotoBrowser::current() const
{
    const QModelIndex index = m_grid->currentIndex();
    return index.isValid() ? m_model->mediaAt(index.row()) : nullptr;
}

bool PhotoBrowser::step(int by)
{
    const int row = m_grid->currentIndex().row() + by;
    if (row < 0 || row >= m_model->rowCount())
        return false;
    chooseOneRow(*m_grid, m_model->index(row));
    return true;
}

} // namespace lastrivet::ui
