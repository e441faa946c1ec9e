// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/workshop/OwnLimits.h"
#include "ui/shell/Page.h"
#include "ui/widgets/BegunForms.h"
#include "ui/workshop/Topics.h"

#include <vector>

class QComboBox;
class QLabel;
class QLineEdit;
class QListWidget;
class QScrollArea;
class QStackedWidget;
class QTimer;
class QVBoxLayout;

namespace lastrivet::ui {

class OwnLimitForm;
class TopicView;

/// The tables and sums of the workshop: published numbers with their sources, looked up and worked
/// out, and the project's own limits in their place.
class WorkshopPage final : public Page {
    Q_OBJECT

public:
    explicit WorkshopPage(Session &session, QWidget *parent = nullptr);

    void showRecord(RecordRef record) override;
    QWidget *firstFocus() override;
    /// The topic's sums and tables, made when they are first shown.
    TopicView &topic(int index);

protected:
    void recordsChanged(const ChangeNotice &notice) override;
    void showEvent(QShowEvent *event) override;

private:
    void build();
    void connectSearch();
    QWidget *buildLeft();
    QWidget *buildRight();
    QWidget *buildFound();
    UnitSystem units() const;
    void choose(int index);
    void search();
    void showFound(const QString &words);
    /// After other units or another limit.
    void refresh();
    void askForOwn(const QString &subject, const QString &unit);
    /// What could not be kept does not count; false then.
    bool keepOwn(const workshop::OwnLimit &limit);
    /// Reads the project's own limits; false when they could not be read.
    bool readOwn();
    /// Reads them and shows them, when they could not be read before.
    void lookForOwn();

    std::vector<Topic> m_topics;
    std::vector<TopicView *> m_views;
    std::vector<workshop::OwnLimit> m_own;
    bool m_isOwnRead = false;
    QLineEdit *m_search;
    QTimer *m_searchSoon;
    QListWidget *m_list;
    QComboBox *m_units;
    QStackedWidget *m_stack;
    QScrollArea *m_foundArea;
    QVBoxLayout *m_found;
    OwnLimitForm *m_ownForm;
    BegunForms m_begunOwn;
    /// Said while the tables stand there without the project's own limits.
    QLabel *m_withoutOwn;
};

} // namespace lastrivet::ui
