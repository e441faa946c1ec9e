// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/photos/CardLayout.h"

#include <QAbstractItemView>

namespace lastrivet::ui {

class PhotoDelegate;
class PhotoListModel;
class PictureLoader;
class Theme;

/// Photos as cards under headings; only what is seen is looked at, however many there are.
///
/// Ctrl with Page Up or Page Down goes to the heading before or after.
class PhotoGrid final : public QAbstractItemView {
    Q_OBJECT

public:
    PhotoGrid(const Theme &theme, PhotoListModel &model, PictureLoader &loader,
              QWidget *parent = nullptr);

    void scrollToSection(int section);
    /// The section at the upper edge.
    int topSection() const;
    /// Says in its middle why no photo is shown; nothing when some are.
    void tellEmpty(const QString &why);

    QRect visualRect(const QModelIndex &index) const override;
    void scrollTo(const QModelIndex &index, ScrollHint hint = EnsureVisible) override;
    QModelIndex indexAt(const QPoint &point) const override;

Q_SIGNALS:
    void topSectionChanged(int section);

protected:
    QModelIndex moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) override;
    int horizontalOffset() const override { return 0; }
    int verticalOffset() const override;
    bool isIndexHidden(const QModelIndex &) const override { return false; }
    void setSelection(const QRect &rect, QItemSelectionModel::SelectionFlags command) override;
    QRegion visualRegionForSelection(const QItemSelection &selection) const override;
    void updateGeometries() override;
    void scrollContentsBy(int dx, int dy) override;
    void paintEvent(QPaintEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;
    void focusInEvent(QFocusEvent *event) override;

private:
    void arrange();
    void askForPictures();
    void paintHeading(QPainter &painter, int section) const;
    int linesOnPage() const;

    const Theme &m_theme;
    PhotoListModel &m_model;
    PictureLoader &m_loader;
    PhotoDelegate *m_delegate;
    CardLayout m_layout;
    CardLayout::Span m_asked{-1, 0};
    int m_topSection = -1;
    QString m_whyEmpty;
};

} // namespace lastrivet::ui
