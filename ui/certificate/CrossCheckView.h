// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/certificate/CertificatePlace.h"

class QLabel;

namespace lastrivet::ui {

class CrossCheckModel;
class PlainTable;
class RecordForm;
class Section;

/// Whether all papers say the same of the aircraft, and what the records themselves still lack.
class CrossCheckView final : public CertificatePlace {
    Q_OBJECT

public:
    explicit CrossCheckView(Session &session, QWidget *parent = nullptr);

    /// How many entries do not agree.
    int disagreementCount() const { return m_disagreements; }
    bool showRecord(RecordRef record) override;
    void apply(const ChangeNotice &notice) override;
    void applyAnswer() override;
    QWidget *firstFocus() override;

private:
    void build();
    QWidget *buildFacts();
    QWidget *buildChecks();
    void fill();
    void fillDoubles();
    void fillGaps();
    void open(int row);

    Session &m_session;
    int m_disagreements = 0;
    CrossCheckModel *m_model;
    RecordForm *m_facts;
    QLabel *m_words;
    PlainTable *m_table;
    Section *m_doubles;
    Section *m_gaps;
};

} // namespace lastrivet::ui
