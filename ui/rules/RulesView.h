// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/certificate/CertificatePlace.h"
#include "ui/rules/RulesOutline.h"

#include <functional>
#include <set>
#include <string>

class QComboBox;
class QLabel;
class QPushButton;
class QTreeWidget;

namespace lastrivet::ui {

class RulesDraft;
class RulesForm;

/// The rules of the country as data to read, to copy and to change, place by place.
class RulesView final : public CertificatePlace {
    Q_OBJECT

public:
    explicit RulesView(Session &session, QWidget *parent = nullptr);

    bool showRecord(RecordRef) override { return false; }
    void apply(const ChangeNotice &notice) override;
    QWidget *firstFocus() override;

    RulesDraft &draft() const { return *m_draft; }
    /// One sentence what is wrong with the draft; empty when it can be used.
    QString fault() const;

protected:
    void showEvent(QShowEvent *event) override;
    void hideEvent(QHideEvent *event) override;

private:
    enum class Origin { Project, Library, Earlier, File };

    void build();
    QWidget *buildHead();
    QWidget *buildTree();
    QWidget *buildFields();
    void connectActs();
    void offerOrigins();
    void takeOrigin(int row);
    void askToWrite();
    void outline();
    /// The places whose lines below are to be seen.
    std::set<std::string> unfolded() const;
    void showNode();
    void addLine();
    void takeOutLine();
    void moveLine(int by);
    void change(const std::function<void()> &act, const std::string &pointer);
    void noteEdit();
    void updateWords();
    QString stateWords(bool isOfProject) const;
    std::size_t current() const;
    void select(std::size_t node);

    Session &m_session;
    RulesDraft *m_draft;
    std::vector<RulesNode> m_outline;
    QLabel *m_standing;
    QLabel *m_state;
    QPushButton *m_toFault;
    QComboBox *m_origin;
    QPushButton *m_use;
    QPushButton *m_own;
    QPushButton *m_write;
    QTreeWidget *m_tree;
    QPushButton *m_add;
    QPushButton *m_remove;
    QPushButton *m_up;
    QPushButton *m_down;
    QLabel *m_title;
    RulesForm *m_form;
};

} // namespace lastrivet::ui
