// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"
#include "ui/parts/PartSection.h"
#include "ui/widgets/LineDraft.h"

#include <QStringList>
#include <QWidget>

#include <functional>
#include <map>
#include <vector>

class QLabel;
class QMenu;
class QModelIndex;
class QLineEdit;
class QPushButton;
class QScrollArea;
class QSplitter;
class QStackedWidget;
class QTreeView;

namespace lastrivet::ui {

class ActLine;
class SectionActsBar;
class SectionAside;
class SectionModel;
class StepPicture;

/// The records of a part in one section: the list, what can be done with the chosen one, its
/// fields, and a line for a new one.
class SectionList final : public QWidget {
    Q_OBJECT

public:
    SectionList(Session &session, ActLine &ask, QWidget *parent = nullptr);

    /// No part stands for the whole aircraft.
    void show(const PartSection &section, Id<Component> part, bool isWithBelow);
    void choose(RecordRef record);
    bool isListed(RecordRef record) const;
    /// Leaves out records that it does not hold for.
    void setFilter(std::function<bool(std::int64_t id)> filter);
    /// The chosen record; id 0 for none.
    RecordRef current() const;
    /// Every chosen record, from top to bottom.
    std::vector<RecordRef> chosen() const;
    int count() const;
    /// What stands where nothing is listed.
    void setWhenEmpty(const QString &sentence);
    /// What else a new record gets, within the same change: the shipment that is shown, say.
    void setCompleting(std::function<void(Edit &edit, std::int64_t id)> complete);
    /// The list, or where there is nothing in it the line for a new one.
    QWidget *firstFocus();
    /// Puts the cursor into the line for a new one.
    void startNew();
    void apply(const ChangeNotice &notice);
    void applyAnswer();
    QTreeView &view() const { return *m_view; }
    SectionActsBar &acts() const { return *m_acts; }

Q_SIGNALS:
    void currentChanged(lastrivet::RecordRef record);
    void recordAdded(lastrivet::RecordRef record);

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;
    void hideEvent(QHideEvent *event) override;

private:
    void build();
    void buildView();
    QWidget *buildUpper();
    void buildKeys();
    void addKey(const QKeySequence &keys, const QString &words, void (SectionList::*act)());
    void fitColumns();
    void fitWideColumn();
    int takeFromWords(int lacking);
    int giveRest(int rest);
    int yieldOf(int column) const;
    int spareColumns(int lacking);
    void spare(int column, bool isSpared);
    /// The column is hidden for want of room.
    bool isSpared(int column) const;
    void give(int column, int width);
    int wideColumn() const;
    int leastOf(int column) const;
    bool isOurs(int column) const;
    /// No record has anything there, and nothing can be written there.
    bool isUnused(int column) const;
    /// Columns that are no longer unused appear, and the other way round.
    void followUse();
    void showCurrent();
    void chooseFirst(const QModelIndex &now, const QModelIndex &before);
    void updateEmptiness();
    void addNew();
    void openCurrent();
    void withdrawChosen();
    void insertBefore();
    void moveUp() { moveSteps(-1); }
    void moveDown() { moveSteps(1); }
    void moveSteps(int by);
    void showPicture(bool isShown);
    bool runKey(int key);
    RecordForm *form();
    SectionAside *aside();
    QWidget *buildLower();
    /// The section's own keys, and what each does with what is chosen.
    QStringList ownKeys() const;
    QString keyWords() const;
    void buildMenu();
    void offerKeys(QMenu &menu);

    /// What a column besides the wide one asks for, and what it got.
    struct ColumnWish {
        int wanted = 0;
        /// The same, as far as it leaves room for others.
        int width = 0;
        /// Below this nobody could read its numbers and days.
        int least = 0;
        int given = 0;
        bool isSpared = false;
    };

    Session &m_session;
    ActLine &m_ask;
    const PartSection *m_section;
    Id<Component> m_part;
    bool m_isWithBelow = true;
    SectionModel *m_model;
    QTreeView *m_view;
    StepPicture *m_picture;
    QStackedWidget *m_stack;
    QLabel *m_nothing;
    std::function<void(Edit &edit, std::int64_t id)> m_complete;
    SectionActsBar *m_acts;
    QLineEdit *m_new;
    /// What is typed there and not added yet, of each section and part.
    LineDraft m_draft;
    QPushButton *m_drawn;
    QSplitter *m_halves;
    QScrollArea *m_formArea;
    QStackedWidget *m_forms;
    std::map<const PartSection *, RecordForm *> m_formOf;
    QWidget *m_lower;
    QScrollArea *m_asideArea;
    QStackedWidget *m_asides;
    std::map<const PartSection *, SectionAside *> m_asideOf;
    QLabel *m_keys;
    /// What the texts of the wide column ask for.
    int m_wideWanted = 0;
    std::vector<ColumnWish> m_wanted;
};

} // namespace lastrivet::ui
