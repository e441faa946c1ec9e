// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/Page.h"
#include "ui/widgets/BegunForms.h"

class QShortcut;
class QStackedWidget;

namespace lastrivet::ui {

class BranchForm;
class PartDetail;
class PartTree;
class PictureLoader;
class RowMenu;
class SeveralParts;

/// The tree of parts beside what is chosen in it: one part, several, or the whole aircraft.
class PartsPage final : public Page {
    Q_OBJECT

public:
    explicit PartsPage(Session &session, QWidget *parent = nullptr);

    void showRecord(RecordRef record) override;
    void startNew() override;
    QWidget *firstFocus() override;
    Id<Component> shownPart() const override;

protected:
    void recordsChanged(const ChangeNotice &notice) override;
    void answerChanged() override;
    void themeChanged() override;

private:
    void build();
    void connectParts();
    QWidget *buildActs();
    void buildKeys();
    QShortcut *addKey(const QKeySequence &keys, const QString &words, void (PartsPage::*act)());
    /// A key that the menu of a row has, too; for the chosen part, where that can be moved so.
    void addMove(Qt::Key arrow, const QString &words, void (PartsPage::*act)(),
                 bool (*canMove)(const Session &session, Id<Component> part));
    Id<Component> current() const;
    void showChosen();
    /// The chosen part itself; a copy that is begun waits.
    void showDetail();
    void addInside();
    void addBeside();
    void addPart(Id<Component> parent, std::size_t row);
    /// False, which is said, while the whole aircraft is chosen.
    bool hasPart();
    void withdrawChosen();
    void copyCurrent();
    void pasteList();
    void moveUp();
    void moveDown();
    void moveIn();
    void moveOutside();

    PictureLoader *m_loader;
    PartTree *m_tree;
    RowMenu *m_menu;
    QStackedWidget *m_right;
    PartDetail *m_detail;
    SeveralParts *m_several;
    BranchForm *m_branch;
    BegunForms m_begun;
};

} // namespace lastrivet::ui
