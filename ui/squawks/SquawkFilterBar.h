// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"
#include "core/readiness/SquawkFilter.h"

#include <QWidget>

class QComboBox;
class QLineEdit;
class QPushButton;

namespace lastrivet::ui {

class ActLine;
class RecordLine;
class SavedFilterMenu;
class Session;

/// Which squawks are listed: a line for words, a choice per question, most of them shown when
/// wanted or set, and filters kept by name.
class SquawkFilterBar final : public QWidget {
    Q_OBJECT

public:
    using Filter = readiness::SquawkFilter;

    explicit SquawkFilterBar(Session &session, QWidget *parent = nullptr);
    ~SquawkFilterBar() override;

    Filter filter() const;
    /// Shows a filter; says so when it is another one.
    void setFilter(const Filter &filter);
    void focusText();
    /// After a change: offers the inspections there are now.
    void apply(const ChangeNotice &notice);

Q_SIGNALS:
    void changed();

protected:
    void hideEvent(QHideEvent *event) override;

private:
    void build();
    void addChoices();
    QWidget *buildRest();
    bool hasRest() const;
    void showRest();
    void fillInspections();
    void tell();

    Session &m_session;
    bool m_isFilling = false;
    QLineEdit *m_text;
    QComboBox *m_standing;
    QPushButton *m_more;
    QWidget *m_rest;
    QComboBox *m_severity;
    RecordLine *m_part;
    QComboBox *m_verifier;
    QComboBox *m_inspection;
    QComboBox *m_reach;
    QPushButton *m_everything;
    ActLine *m_ask;
    SavedFilterMenu *m_saved;
};

} // namespace lastrivet::ui
