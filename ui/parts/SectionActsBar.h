// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/parts/PartSection.h"

#include <QWidget>

#include <vector>

class QPushButton;

namespace lastrivet::ui {

/// Buttons for what can be done with one record of a section; takes files that are dropped on it.
class SectionActsBar final : public QWidget {
    Q_OBJECT

public:
    SectionActsBar(Session &session, ActLine &ask, QWidget *parent = nullptr);

    /// Id 0 stands for no record.
    void show(const PartSection &section, std::int64_t id);
    /// Takes files in and attaches them to the record; false when nothing was attached.
    bool attach(const QStringList &files);

protected:
    void dragEnterEvent(QDragEnterEvent *event) override;
    void dropEvent(QDropEvent *event) override;

private:
    std::vector<const SectionAct *> offered() const;
    void fill();
    QPushButton *addButton(const QString &words);
    void browse();

    Session &m_session;
    ActLine &m_ask;
    const PartSection *m_section;
    std::int64_t m_id = 0;
    std::vector<const SectionAct *> m_offered;
};

} // namespace lastrivet::ui
