// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/stores/Claim.h"
#include "ui/widgets/Unfinished.h"

#include <functional>

class QComboBox;
class QLabel;
class QPlainTextEdit;

namespace lastrivet::ui {

class Session;

/// The letter to the supplier, to be read and changed before it is copied or saved as a text: until
/// then, what was written into it is begun.
class ClaimView final : public Unfinished {
    Q_OBJECT

public:
    using ChooseFile = std::function<QString(const QString &suggested)>;

    explicit ClaimView(Session &session, QWidget *parent = nullptr);

    void show(const stores::Claim &claim);
    QString text() const;
    bool isBegun() const override;
    QStringList contents() const override { return {text()}; }
    QString heldBackWords() const override;
    void copy();
    void save();
    /// In place of the dialog that asks for a file.
    void setChooseFile(ChooseFile chooseFile) { m_chooseFile = std::move(chooseFile); }

Q_SIGNALS:
    void left();

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    void build();
    QString letter() const;
    void writeAnew();

    Session &m_session;
    ChooseFile m_chooseFile;
    stores::Claim m_claim;
    QLabel *m_title;
    QComboBox *m_language;
    QPlainTextEdit *m_text;
    /// As it was copied or saved last.
    QString m_used;
};

} // namespace lastrivet::ui
