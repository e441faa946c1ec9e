// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"
#include "core/records/Description.h"
#include "ui/widgets/Unfinished.h"

#include <QString>
#include <QStringList>

#include <cstdint>
#include <functional>
#include <initializer_list>
#include <map>
#include <string_view>
#include <vector>

class QFormLayout;
class QLabel;

namespace lastrivet::ui {

class FieldEditor;
class Session;

/// Shows chosen fields of one record and changes them in place, each as a change of its own.
///
/// What cannot be kept, as while the disk is gone, waits with its record while another is shown, is
/// there with it again, and holds the window back like a form that is begun.
class RecordForm final : public Unfinished {
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
    /// Days that cannot lie ahead: on record is what has happened.
    void setHappened(std::vector<std::string_view> fields) { m_happened = std::move(fields); }

    /// What follows for the record from a field that was written, in the same change.
    using Follow = std::function<void(const Edit &edit, std::string_view field, void *record)>;
    void setFollow(Follow follow) { m_follow = std::move(follow); }

    /// 0 shows nothing and takes no input.
    void show(std::int64_t id);
    std::int64_t shown() const { return m_id; }
    /// After a change: shows what became of the record and of those it names; what is being typed
    /// stays.
    void apply(const ChangeNotice &notice);
    /// Keeps what is being typed.
    void settle();
    /// True while words are typed that are not on record: after `settle`, such as could not be
    /// kept.
    bool isBegun() const override;
    QStringList contents() const override;
    QString heldBackWords() const override;
    void takeKeyboard() override;
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
    QString whyAhead(const Field &field, const void *record) const;
    void refresh(bool isOther);
    /// Null when there is none.
    const void *shownRecord() const;
    bool isBeingTyped() const;
    void setAside();
    void takeUp();

    Session &m_session;
    RecordType m_type;
    std::int64_t m_id = 0;
    std::vector<Line> m_lines;
    Check m_check;
    Follow m_follow;
    std::vector<std::string_view> m_happened;
    /// What was typed about other records and could not be kept, by record and editor.
    std::map<std::int64_t, std::map<FieldEditor *, QString>> m_waiting;
};

} // namespace lastrivet::ui
