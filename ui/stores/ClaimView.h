// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/stores/Claim.h"

#include <QWidget>

#include <functional>

class QComboBox;
class QLabel;
class QPlainTextEdit;

namespace lastrivet::ui {

class Session;

/// The letter to the supplier, to be read and changed before it is copied or saved as a text.
class ClaimView final : public QWidget {
    Q_OBJECT

public:
    using ChooseFile = std::function<QString(const QString &suggested)>;

    explicit ClaimView(Session &session, QWidget *parent = nullptr);

    void show(const stores::Claim &claim);
    QString text() const;
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
    void write();

    Session &m_session;
    ChooseFile m_chooseFile;
    stores::Claim m_claim;
    QLabel *m_title;
    QComboBox *m_language;
    QPlainTextEdit *m_text;
};

} // namespace lastrivet::ui
