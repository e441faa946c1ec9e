// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include <cstdint>

namespace lastrivet::ui {

/// What stands beside the fields of the chosen record of a section.
class SectionAside : public QWidget {
public:
    using QWidget::QWidget;

    /// Of a record as it is now; id 0 stands for none.
    virtual void present(std::int64_t id) = 0;
};

} // namespace lastrivet::ui
