// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/Page.h"

class QButtonGroup;
class QStackedWidget;

namespace lastrivet::ui {

class DeliveryBoard;
class ExpenseBoard;
class MaterialBoard;
class StoreBoard;
class ToolBoard;

/// What came and what is missing, what is used up by when, what it is measured with, and what it
/// cost.
class StoresPage final : public Page {
    Q_OBJECT

public:
    explicit StoresPage(Session &session, QWidget *parent = nullptr);

    void showRecord(RecordRef record) override;
    void startNew() override;
    QWidget *firstFocus() override;
    /// Shows the board of records of this type.
    void showBoard(RecordType type);
    DeliveryBoard &deliveries() const { return *m_deliveries; }
    MaterialBoard &materials() const { return *m_materials; }
    ToolBoard &tools() const { return *m_tools; }
    ExpenseBoard &expenses() const { return *m_expenses; }

protected:
    void recordsChanged(const ChangeNotice &notice) override;
    void answerChanged() override;
    void themeChanged() override;

private:
    QWidget *buildBar();
    void build();
    StoreBoard &boardOf(RecordType type) const;
    StoreBoard &shown() const;

    QButtonGroup *m_buttons;
    QWidget *m_bar;
    DeliveryBoard *m_deliveries;
    MaterialBoard *m_materials;
    ToolBoard *m_tools;
    ExpenseBoard *m_expenses;
    QStackedWidget *m_stack;
};

} // namespace lastrivet::ui
