// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/widgets/FieldEditor.h"

#include <vector>

class QVBoxLayout;

namespace lastrivet::ui {

class RecordLine;

/// A set of records, one beside the other, with a line to add one more.
class RecordSetEditor final : public FieldEditor {
    Q_OBJECT

public:
    RecordSetEditor(Session &session, const Field &field, QWidget *parent = nullptr);
    ~RecordSetEditor() override;

    void show(const void *record) override;
    bool isBeingTyped() const override;
    QString typed() const override;
    void typeAgain(const QString &words) override;
    void settle() override;

private:
    void add(std::int64_t id);
    void remove(std::int64_t id);
    void commit(std::vector<std::int64_t> ids);
    void fill();

    Session &m_session;
    const Field &m_field;
    std::vector<std::int64_t> m_ids;
    QVBoxLayout *m_names;
    RecordLine *m_line;
};

} // namespace lastrivet::ui
