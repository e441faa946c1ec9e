// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>

namespace lastrivet::ui {

/// A photographed sheet, so that what is on it can be typed beside it; hidden while there is none.
class SheetPreview final : public QLabel {
    Q_OBJECT

public:
    explicit SheetPreview(QWidget *parent = nullptr);

    void showFile(const QString &file);
};

} // namespace lastrivet::ui
