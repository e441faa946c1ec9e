// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Description.h"
#include "core/records/Records.h"

#include <QString>
#include <QWidget>

#include <functional>

namespace lastrivet::ui {

class Session;

/// Edits one field of a record in place: what was typed is kept when the field is left or Enter is
/// pressed.
class FieldEditor : public QWidget {
    Q_OBJECT

public:
    /// Puts the new value into a record; false when the value cannot be there.
    using Assign = std::function<bool(void *record)>;

    using QWidget::QWidget;

    virtual void show(const void *record) = 0;
    /// True while something is typed that is not kept yet.
    virtual bool isBeingTyped() const { return false; }
    /// What stands there while something is typed that is not kept yet.
    virtual QString typed() const { return {}; }
    /// Puts such words in again, over the record that is shown: they are still to be kept.
    virtual void typeAgain(const QString &) {}
    /// Keeps what is typed.
    virtual void settle() {}
    /// What was committed may not be on record: shows the record again. A text of some length stays
    /// as it was typed instead, and is tried once more when it is settled the next time.
    virtual void takeBack(const void *record) { show(record); }
    /// What was committed could not be saved: what was typed stays, and is tried once more.
    virtual void holdOn(const void *record) { takeBack(record); }

Q_SIGNALS:
    void committed(const lastrivet::ui::FieldEditor::Assign &assign);
    void refused(const QString &why);
};

/// An editor that suits the field: `defaults` is a record with every field at its default, `isLong`
/// asks for several lines of text.
FieldEditor *makeFieldEditor(Session &session, const Field &field, const void *defaults,
                             bool isLong, QWidget *parent);

} // namespace lastrivet::ui
