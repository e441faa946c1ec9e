// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"
#include "core/records/Description.h"

#include <QWidget>

#include <functional>
#include <initializer_list>
#include <string_view>
#include <vector>

class QFormLayout;
class QLabel;

namespace lastrivet::ui {

class FieldEditor;
class Session;

/// Shows chosen fields of one record and changes them in place, each as a change of its own.
class RecordForm final : public QWidget {
    Q_OBJECT

public:
    /// A field of the form: its name on record and, where that says it badly, its label.
    struct Row {
        std::string_view field;
        bool isLong = false;
        QString label;
    };

    RecordForm(Session &session, RecordType type, const std::vector<Row> &rows,
               QWidget *parent = nullptr);

    /// Says what is wrong with a record as it would be; empty when it may be kept.
    using Check = std::function<QString(const void *record)>;
    void setCheck(Check check) { m_check = std::move(check); }

    /// 0 shows nothing and takes no input.
    void show(std::int64_t id);
    std::int64_t shown() const { return m_id; }
    /// After a change: shows what became of the record and of those it names; what is being typed
    /// stays.
    void apply(const ChangeNotice &notice);
    /// Keeps what is being typed.
    void settle();
    /// Puts the cursor into a field.
    void edit(std::string_view field);

protected:
    void hideEvent(QHideEvent *event) override;

private:
    struct Line {
        const Field *field;
        FieldEditor *editor;
    };

    void addRow(QFormLayout *layout, const Row &row);
    void commit(const Line &line, const std::function<bool(void *)> &assign);
    void refresh(bool isOther);

    Session &m_session;
    RecordType m_type;
    std::int64_t m_id = 0;
    std::vector<Line> m_lines;
    Check m_check;
};

} // namespace lastrivet::ui
