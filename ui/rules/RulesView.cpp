// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/rules/RulesView.h"

#include "core/base/Error.h"
#include "core/profiles/ProfileLibrary.h"
#include "ui/convert/QtText.h"
#include "ui/convert/UsualFolders.h"
#include "ui/rules/RulesDraft.h"
#include "ui/rules/RulesForm.h"
#include "ui/rules/RulesWords.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Density.h"
#include "ui/widgets/NewFileName.h"

#include <QComboBox>
#include <QDir>
#include <QFileDialog>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTreeWidget>

#include <algorithm>

// What the page of rules does; it is put together in RulesLayout.cpp.
namespace lastrivet::ui {

namespace {

constexpr int originRole = Qt::UserRole;
constexpr int idRole = Qt::UserRole + 1;

/// A file that cannot be read is told by its id, and why when it is chosen.
QString nameOfRules(const ProfileLibrary &library, const std::string &id)
{
    try {
        return toQt(library.profile(id).name);
    } catch (const Fault &) {
        return toQt(id);
    }
}

/// A day as people read it; what somebody else wrote there, as it stands.
QString editionText(const std::string &edition)
{
    const auto day = Moment::parse(edition);
    return day ? dateText(*day) : toQt(edition);
}

} // namespace

void RulesView::connectActs()
{
    connect(m_draft, &RulesDraft::changed, this, &RulesView::updateWords);
    connect(m_draft, &RulesDraft::begun, this, [this] {
        outline();
        offerOrigins();
    });
    connect(m_origin, &QComboBox::activated, this, &RulesView::takeOrigin);
    connect(m_use, &QPushButton::clicked, this, [this] {
        // The button cannot be pressed again then; the keyboard would go to the next one, which
        // keeps the rules for other projects.
        m_tree->setFocus();
        m_draft->useInProject();
    });
    connect(m_own, &QPushButton::clicked, this, [this] {
        m_draft->keepForOthers();
        offerOrigins();
    });
    connect(m_write, &QPushButton::clicked, this, &RulesView::askToWrite);
    connect(m_toFault, &QPushButton::clicked, this, [this] {
        if (const auto &fault = m_draft->fault())
            select(nodeAt(m_outline, fault->pointer));
    });
    connect(m_tree, &QTreeWidget::currentItemChanged, this, &RulesView::showNode);
    connect(m_add, &QPushButton::clicked, this, &RulesView::addLine);
    connect(m_remove, &QPushButton::clicked, this, &RulesView::takeOutLine);
    connect(m_up, &QPushButton::clicked, this, [this] { moveLine(-1); });
    connect(m_down, &QPushButton::clicked, this, [this] { moveLine(1); });
    connect(m_form, &RulesForm::edited, this, &RulesView::noteEdit);
    connect(m_form, &RulesForm::refused, &m_session,
            qOverload<const QString &>(&Session::complain));
}

void RulesView::offerOrigins()
{
    m_origin->clear();
    m_origin->addItem(tr("Begin with…"));
    m_origin->addItem(tr("the rules of this project"), int(Origin::Project));
    const ProfileLibrary library = ProfileLibrary::standard();
    for (const std::string &id : library.ids()) {
        m_origin->addItem(nameOfRules(library, id), int(Origin::Library));
        m_origin->setItemData(m_origin->count() - 1, toQt(id), idRole);
    }
    if (m_draft->hasEarlier())
        m_origin->addItem(tr("the draft before this one"), int(Origin::Earlier));
    m_origin->addItem(tr("a file…"), int(Origin::File));
}

void RulesView::takeOrigin(int row)
{
    const QVariant origin = m_origin->itemData(row, originRole);
    const std::string id = toStd(m_origin->itemData(row, idRole).toString());
    m_origin->setCurrentIndex(0);
    if (!origin.isValid())
        return;
    switch (Origin(origin.toInt())) {
    case Origin::Project:
        m_draft->begin(m_session.project().profile());
        break;
    case Origin::Library:
        m_draft->beginWithLibrary(id);
        break;
    case Origin::Earlier:
        m_draft->takeUpEarlier();
        break;
    case Origin::File: {
        const QString file = QFileDialog::getOpenFileName(this, tr("Read rules"), documentsFolder(),
                                                          tr("Rules (*.json)"));
        if (!file.isEmpty())
            m_draft->readFrom(file);
        break;
    }
    }
}

void RulesView::askToWrite()
{
    const QString name = toQt(m_draft->profile().id) + QStringLiteral(".json");
    const QString file = askForNewFile(
        this, tr("Write the rules"), QDir(documentsFolder()).filePath(name), tr("Rules (*.json)"));
    if (!file.isEmpty())
        m_draft->writeTo(file);
}

std::set<std::string> RulesView::unfolded() const
{
    std::set<std::string> places;
    for (QTreeWidgetItemIterator item(m_tree); *item; ++item) {
        if ((*item)->isExpanded())
            places.insert(m_outline[std::size_t((*item)->data(0, Qt::UserRole).toInt())].pointer);
    }
    return places;
}

/// Builds the tree anew, with the same place chosen and the same ones unfolded as far as they are
/// there.
void RulesView::outline()
{
    const std::string shown = m_outline.empty() ? std::string() : m_outline[current()].pointer;
    const auto open = unfolded();
    m_outline = outlineOf(m_draft->profile());
    {
        const QSignalBlocker quiet(m_tree);
        m_tree->clear();
        std::vector<QTreeWidgetItem *> above;
        for (std::size_t i = 0; i < m_outline.size(); ++i) {
            const RulesNode &node = m_outline[i];
            above.resize(std::size_t(node.depth));
            auto *item =
                above.empty() ? new QTreeWidgetItem(m_tree) : new QTreeWidgetItem(above.back());
            item->setText(0, node.title);
            item->setSizeHint(0, {0, rowHeight()});
            item->setData(0, Qt::UserRole, int(i));
            item->setExpanded(node.depth == 0 || open.contains(node.pointer));
            above.push_back(item);
        }
        select(nodeAt(m_outline, shown));
    }
    showNode();
}

std::size_t RulesView::current() const
{
    const QTreeWidgetItem *item = m_tree->currentItem();
    return item ? std::size_t(item->data(0, Qt::UserRole).toInt()) : 0;
}

void RulesView::select(std::size_t node)
{
    for (QTreeWidgetItemIterator item(m_tree); *item; ++item) {
        if ((*item)->data(0, Qt::UserRole).toInt() != int(node))
            continue;
        m_tree->setCurrentItem(*item);
        m_tree->scrollToItem(*item);
        return;
    }
}

void RulesView::showNode()
{
    const RulesNode &node = m_outline[current()];
    QStringList sources;
    for (const Profile::Source &source : m_draft->profile().sources)
        sources << toQt(source.id);
    m_form->begin(sources);
    if (node.show)
        node.show(*m_form);
    m_title->setText(node.title);
    updateWords();
}

void RulesView::addLine()
{
    const RulesNode list = m_outline[current()];
    const auto isLine = [&](const RulesNode &node) {
        return node.depth == list.depth + 1 && node.pointer.starts_with(list.pointer + '/');
    };
    const auto before = std::ranges::count_if(m_outline, isLine);
    change(list.add, list.pointer + '/' + std::to_string(before));
}

void RulesView::takeOutLine()
{
    const RulesNode node = m_outline[current()];
    change(node.remove, node.pointer.substr(0, node.pointer.rfind('/')));
}

void RulesView::moveLine(int by)
{
    const RulesNode node = m_outline[current()];
    const auto step = node.pointer.rfind('/') + 1;
    const int line = std::max(0, toQt(node.pointer.substr(step)).toInt() + by);
    change([&] { node.move(by); }, node.pointer.substr(0, step) + std::to_string(line));
}

void RulesView::change(const std::function<void()> &act, const std::string &pointer)
{
    act();
    outline();
    select(nodeAt(m_outline, pointer));
    m_draft->noteEdit();
}

void RulesView::noteEdit()
{
    // The line may go by another name now; no line came or went.
    if (QTreeWidgetItem *item = m_tree->currentItem())
        item->setText(0, outlineOf(m_draft->profile())[current()].title);
    m_draft->noteEdit();
}

QString RulesView::fault() const
{
    return m_draft->fault() ? faultWords(*m_draft->fault()) : QString();
}

QString RulesView::stateWords(bool isOfProject) const
{
    if (m_draft->fault())
        return fault();
    if (!m_draft->isRead())
        return tr("Whether a draft was kept here could not be read. What is typed now is kept when "
                  "it can be; a draft that is there then becomes the one before it.");
    if (isOfProject)
        return tr("Below are the rules of this project.");
    return m_draft->isUntouched()
               ? tr("Below is a copy to change; nothing is changed yet.")
               : tr("Below is a draft that can be used. Hold points and checks on record stay; "
                    "closings made later get those of the new rules.");
}

void RulesView::updateWords()
{
    const Profile &own = m_session.project().profile();
    m_standing->setText(tr("This project goes by: %1, last gone through on %2. Each rule names its "
                           "source and how far that was seen; check the current edition with your "
                           "authority.")
                            .arg(toQt(own.name), editionText(own.edition)));
    const bool isOfProject = m_draft->isOfProject();
    m_state->setText(stateWords(isOfProject));
    const bool isRight = !m_draft->fault();
    m_toFault->setVisible(!isRight);
    const RulesNode &node = m_outline[current()];
    m_add->setEnabled(bool(node.add));
    for (QPushButton *button : {m_remove, m_up, m_down})
        button->setEnabled(bool(node.remove));
    m_use->setEnabled(isRight && !isOfProject && !m_draft->isUntouched() &&
                      !m_session.isReadOnly());
    m_own->setEnabled(isRight);
}

void RulesView::apply(const ChangeNotice &notice)
{
    if (notice.before->profile_copy != notice.after->profile_copy)
        updateWords();
}

QWidget *RulesView::firstFocus()
{
    return m_tree;
}

void RulesView::showEvent(QShowEvent *event)
{
    m_draft->lookAgain();
    CertificatePlace::showEvent(event);
}

void RulesView::hideEvent(QHideEvent *event)
{
    m_draft->keep();
    CertificatePlace::hideEvent(event);
}

} // namespace lastrivet::ui
