// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/lists/ListInput.h"

#include <QDialog>
#include <QSet>
#include <QTimer>

class QCheckBox;
class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;
class QTreeView;

namespace lastrivet::ui {

class ColumnChoice;
class ListRows;
class RecordLine;
class Session;

/// Brings in a list from a spreadsheet: pasted or from a file; says of each row what becomes of it,
/// and then does all of it in one change, or nothing.
class ListDialog final : public QDialog {
    Q_OBJECT

public:
    explicit ListDialog(Session &session, QWidget *parent = nullptr);

    void setType(RecordType type);
    /// Rows that name no part are of this one.
    void setWithin(Id<Component> part);
    /// Packing lines that name no shipment are of this one.
    void setShipment(const QString &name);
    /// Shows what of the text can be taken in; plain words without columns are left alone.
    void setText(const QString &text);
    bool openFile(const QString &file);
    ColumnChoice &columns() const { return *m_columns; }
    ListRows &rows() const { return *m_rows; }
    /// Takes the list in; closes the dialog when that was done.
    void take();
    /// Stays once when somebody typed in the list, and says so.
    void reject() override;
    QString summary() const;

private:
    void build();
    void fillFields();
    QWidget *buildInput();
    QWidget *buildPlan();
    void connectParts();
    ListInput input() const;
    /// Whatever it holds: what is wrong with it is said.
    void takeText(const QString &text);
    void guessHeadings();
    /// Shows the order that the days of the list show, and says whether they do.
    bool guessDays();
    void readAnew();
    void planAnew();
    QString whatIsMissing(const exchange::CsvColumns &columns) const;
    void showType();
    void say(const QString &sentence, bool canTake);
    void browse();
    QString sourceName() const;

    Session &m_session;
    QComboBox *m_type;
    RecordLine *m_within;
    QLineEdit *m_shipment;
    QFormLayout *m_form = nullptr;
    QComboBox *m_days;
    QCheckBox *m_headings;
    /// Somebody said whether the first row holds headings; it is not guessed any more.
    bool m_areHeadingsSaid = false;
    /// Somebody said how the days are written.
    bool m_areDaysSaid = false;
    QPlainTextEdit *m_text;
    ColumnChoice *m_columns;
    ListRows *m_rows;
    QTreeView *m_view;
    QLabel *m_summary;
    QPushButton *m_take;
    QTimer m_soon;
    exchange::CsvTable m_table;
    /// The file that was opened last, and what stood in it.
    QString m_file;
    QSet<QString> m_fileLines;
    /// What was typed when the dialog stayed last.
    QString m_heldBackBy;
};

} // namespace lastrivet::ui
