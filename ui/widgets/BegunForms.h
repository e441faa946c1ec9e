// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

#include <cstdint>
#include <vector>

namespace lastrivet::ui {

class Session;
class Unfinished;

/// The forms of one place that are used for one record after the other.
///
/// What is begun in one of them waits with its record while another is shown, and is not started
/// over without a word. The owner connects each form's `wanted`, and shows `record` then.
class BegunForms {
public:
    /// What a form is started for: which act, and on what.
    using Purpose = std::vector<std::int64_t>;

    /// `forms` live in a widget that lives as long.
    BegunForms(Session &session, std::vector<Unfinished *> forms);

    /// True when a form can be filled anew. What is begun for the same purpose gets the keyboard
    /// instead, as it was typed; so does what is begun for another, the first time that this one
    /// is wanted, which is said.
    bool mayStart(std::int64_t record, const Purpose &purpose);
    /// The place shows this record now: what is begun for it is there again, all else is parked.
    void show(std::int64_t record);
    /// The record that a form was last started for.
    std::int64_t record() const { return m_record; }
    /// The record is gone, and what is begun with it.
    void drop();

private:
    bool isHeldBack(const Unfinished &form, const Purpose &purpose);

    Session &m_session;
    std::vector<Unfinished *> m_forms;
    std::int64_t m_record = 0;
    Purpose m_purpose;
    /// What was wanted when what is begun held it back, and what was begun then.
    Purpose m_heldPurpose;
    QStringList m_heldBackBy;
};

} // namespace lastrivet::ui
