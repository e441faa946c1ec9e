// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/acts/Inspecting.h"

#include <QWidget>

#include <vector>

class QComboBox;
class QLineEdit;
class QVBoxLayout;

namespace lastrivet::ui {

class Session;

/// What the inspector found, a line each; a new line appears under the last one that is filled.
class FindingRows final : public QWidget {
    Q_OBJECT

public:
    explicit FindingRows(Session &session, QWidget *parent = nullptr);

    /// Starts empty; the parts to choose from are these, the first one offered.
    void start(std::vector<Id<Component>> parts);
    std::vector<acts::Finding> findings() const;

private:
    struct Row {
        QComboBox *part;
        QLineEdit *title;
        QComboBox *severity;
    };

    void addRow();

    Session &m_session;
    std::vector<Id<Component>> m_parts;
    std::vector<Row> m_rows;
    QVBoxLayout *m_layout;
};

} // namespace lastrivet::ui
