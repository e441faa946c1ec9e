// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>
#include <QStringList>

class QLabel;
class QListWidget;

namespace lastrivet::ui {

/// The files that were not taken in, one sentence each, until they are dismissed.
class TroubleList final : public QFrame {
    Q_OBJECT

public:
    explicit TroubleList(QWidget *parent = nullptr);

    /// None hides the list; of a single one the foot of the window has told already.
    void tell(const QStringList &sentences);

private:
    QLabel *m_heading;
    QListWidget *m_list;
};

} // namespace lastrivet::ui
