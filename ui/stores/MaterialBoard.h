// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/stores/StoreBoard.h"
#include "ui/widgets/BegunForms.h"

class QLabel;
class QPushButton;

namespace lastrivet::ui {

class RecordForm;
class Section;
class UseForm;

/// Lots of material with their expiry, what they were used for, and what still cures.
class MaterialBoard final : public StoreBoard {
    Q_OBJECT

public:
    explicit MaterialBoard(Session &session, QWidget *parent = nullptr);

    void showRecord(RecordRef record) override;
    /// Asks on what the chosen lot was used.
    void startUse();
    UseForm &use() const { return *m_use; }

protected:
    void refresh() override;

private:
    void build();
    void showUse(std::int64_t use);

    QLabel *m_words;
    QPushButton *m_used;
    UseForm *m_use;
    BegunForms m_begun;
    Section *m_cures;
    Section *m_uses;
    RecordForm *m_form;
};

} // namespace lastrivet::ui
