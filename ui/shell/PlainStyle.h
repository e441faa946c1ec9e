// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QProxyStyle>

namespace lastrivet::ui {

/// Fusion, in which every label and tip shows its text as it is: left alone, Qt takes a text that
/// looks like HTML for HTML, and many texts are those of records, perhaps a stranger's.
class PlainStyle final : public QProxyStyle {
    Q_OBJECT

public:
    PlainStyle();

    using QProxyStyle::polish;
    void polish(QWidget *widget) override;
};

} // namespace lastrivet::ui
