// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <QWidget>

class QButtonGroup;

namespace lastrivet::ui {

/// The sections of a part side by side, each with how many records it has; the arrow keys go from
/// one to the next.
class SectionChoice final : public QWidget {
    Q_OBJECT

public:
    explicit SectionChoice(QWidget *parent = nullptr);

    void add(const QString &title);
    void setCount(int section, int count);
    /// The same for records of which only some are still open.
    void setCount(int section, int count, int open);
    void setOffered(int section, bool isOffered);
    int chosen() const;
    void choose(int section);

Q_SIGNALS:
    void chosenChanged(int section);

private:
    QButtonGroup *m_buttons;
    QStringList m_titles;
};

} // namespace lastrivet::ui
