// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/photos/PhotoListModel.h"

#include <QListWidget>

namespace lastrivet::ui {

/// The headings of the photos at the side, with their counts: a way to get to each.
class HeadingList final : public QListWidget {
    Q_OBJECT

public:
    explicit HeadingList(QWidget *parent = nullptr);

    void setSections(const std::vector<PhotoListModel::Section> &sections);
    /// The heading that is in view; tells nothing.
    void follow(int section);
    QSize sizeHint() const override;

Q_SIGNALS:
    void wanted(int section);
};

} // namespace lastrivet::ui
