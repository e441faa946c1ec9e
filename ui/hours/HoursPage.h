// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/hours/HoursView.h"
#include "ui/shell/Page.h"
#include "ui/widgets/Unfolded.h"

#include <functional>
#include <optional>

class QButtonGroup;
class QLabel;
class QPushButton;
class QSplitter;
class QTreeView;

namespace lastrivet::ui {

class ChartPane;
class HoursTableModel;
class PersonPanel;
class WishBar;

/// The hours worked, grouped in every way, and the hours to go: a chart, and beside it a table with
/// every figure.
class HoursPage final : public Page {
    Q_OBJECT

public:
    using ChooseFile = std::function<QString(const QString &suggested, const QString &kinds)>;

    explicit HoursPage(Session &session, QWidget *parent = nullptr);

    void showRecord(RecordRef record) override;
    /// A person: the other records here are none of this page's.
    void startNew() override;
    bool printsItself() const override { return true; }
    QWidget *firstFocus() override;
    void choose(HoursView view);
    HoursView view() const { return m_view; }
    /// In place of the dialog that asks for a file.
    void setChooseFile(ChooseFile chooseFile) { m_chooseFile = std::move(chooseFile); }

    HoursTableModel &model() const { return *m_model; }
    QTreeView &table() const { return *m_table; }
    ChartPane &chart() const { return *m_chart; }
    const HoursCalculation &calculation() const { return *m_calculation; }

protected:
    void recordsChanged(const ChangeNotice &notice) override;
    void answerChanged() override;
    void themeChanged() override;
    void showEvent(QShowEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void build();
    QWidget *buildChoices();
    QWidget *buildFoot();
    void buildTable();
    void connectParts();
    void fill();
    void fillTable();
    void keepPlace();
    void unfold(bool isTree);
    void giveRoom();
    void fitToWidth();
    void fitColumns();
    int leastForNames() const;
    void showChosen();
    void ask(const QString &ending, const QString &kinds);
    void print();

    ChooseFile m_chooseFile;
    HoursCalculation *m_calculation;
    HoursView m_view = HoursView::Ahead;
    std::optional<HoursView> m_roomGiven;
    /// Somebody moved the edge between chart and table since then.
    bool m_isRoomChosen = false;
    QButtonGroup *m_buttons;
    QWidget *m_choices;
    QLabel *m_sentences;
    WishBar *m_wishes;
    QSplitter *m_halves;
    ChartPane *m_chart;
    HoursTableModel *m_model;
    QTreeView *m_table;
    PersonPanel *m_person;
    QPushButton *m_newPerson;
    QLabel *m_nothing;
    QLabel *m_legend;
    QPushButton *m_print;
    QPushButton *m_csv;
    RecordRef m_wanted{RecordType::Person, 0};
    /// The view that the table holds figures of, which of its rows were unfolded, and how far it
    /// was scrolled: nothing when another record is to be seen.
    std::optional<HoursView> m_filled;
    Unfolded m_unfolded;
    std::optional<int> m_scrolled;
};

} // namespace lastrivet::ui
