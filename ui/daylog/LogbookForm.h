// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/Logbook.h"
#include "ui/widgets/ActForm.h"

#include <functional>

class QCheckBox;
class QComboBox;
class QLineEdit;

namespace lastrivet::ui {

class Session;

/// Asks which entries of the log are printed, and in which order.
class LogbookForm final : public ActForm {
    Q_OBJECT

public:
    /// Where the person wants the PDF; empty when nowhere after all.
    using ChooseFile = std::function<QString(const QString &suggested)>;

    /// `writtenOn` says when entries were written down, and outlives this.
    LogbookForm(Session &session, packet::WrittenOn writtenOn, QWidget *parent = nullptr);

    /// In place of the dialog that asks for a file.
    void setChooseFile(ChooseFile chooseFile) { m_chooseFile = std::move(chooseFile); }
    void start();

protected:
    bool perform() override;

private:
    /// False, and said, when the text is no day.
    bool readDay(QLineEdit &field, std::optional<Moment> &day);

    Session &m_session;
    packet::WrittenOn m_writtenOn;
    ChooseFile m_chooseFile;
    QComboBox *m_order;
    QLineEdit *m_from;
    QLineEdit *m_until;
    QCheckBox *m_photos;
};

} // namespace lastrivet::ui
