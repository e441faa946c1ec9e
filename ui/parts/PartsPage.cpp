// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/PartsPage.h"

#include "core/records/Description.h"
#include "ui/parts/BranchForm.h"
#include "ui/parts/PartDetail.h"
#include "ui/parts/PartFigures.h"
#include "ui/parts/PartTree.h"
#include "ui/parts/SeveralParts.h"
#include "ui/widgets/ActLine.h"
#include "ui/widgets/PictureLoader.h"
#include "ui/widgets/RowMenu.h"

#include <QSplitter>
#include <QStackedWidget>
#include <QTreeView>
#include <QVBoxLayout>

namespace lastrivet::ui {

namespace {

/// The part that a record of the page belongs to.
Id<Component> partOf(const Records &records, RecordRef record)
{
    const auto &description = describe(record.type);
    const void *found = records.find(record.type, record.id);
    if (!found)
        return {};
    if (record.type == RecordType::Component)
        return Id<Component>{record.id};
    if (const Field *field = description.find("component_id")) {
        const Scalar value = field->value(found);
        const auto *id = std::get_if<std::int64_t>(&value);
        return id ? Id<Component>{*id} : Id<Component>{};
    }
    const Field *field = description.find("component_ids");
    if (!field || field->size(found) == 0)
        return {};
    return Id<Component>{std::get<std::int64_t>(field->item(found, 0))};
}

} // namespace

PartsPage::PartsPage(Session &session, QWidget *parent)
    : Page(session, parent)
    , m_loader(new PictureLoader(session, this))
    , m_tree(new PartTree(session, this))
    , m_menu(new RowMenu(m_tree->view()))
    , m_right(new QStackedWidget(this))
    , m_detail(new PartDetail(session, *m_loader, this))
    , m_several(new SeveralParts(session, this))
    , m_branch(new BranchForm(session, this))
    , m_begun(session, {m_branch})
{
    build();
    buildKeys();
    showChosen();
}

void PartsPage::build()
{
    auto *left = new QWidget(this);
    auto *leftLayout = new QVBoxLayout(left);
    leftLayout->setContentsMargins(0, 0, 0, 0);
    leftLayout->addWidget(m_tree, 1);
    leftLayout->addWidget(buildActs());
    m_right->addWidget(m_detail);
    m_right->addWidget(m_several);
    m_right->addWidget(m_branch);
    auto *halves = new QSplitter(this);
    halves->setChildrenCollapsible(false);
    halves->addWidget(left);
    halves->addWidget(m_right);
    halves->setStretchFactor(0, 5);
    halves->setStretchFactor(1, 5);
    halves->setSizes({535, 565});
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 12, 16, 8);
    layout->addWidget(halves, 1);
    connectParts();
}

void PartsPage::connectParts()
{
    const auto backToTree = [this] {
        showChosen();
        m_tree->view().setFocus();
    };
    connect(m_tree, &PartTree::chosenChanged, this, &PartsPage::showChosen);
    connect(m_tree, &PartTree::openWanted, m_detail, &PartDetail::editPart);
    connect(m_tree, &PartTree::firstWanted, this, &PartsPage::addBeside);
    connect(m_detail, &PartDetail::finished, this, [this] { m_tree->view().setFocus(); });
    connect(m_several, &SeveralParts::finished, this, backToTree);
    connect(m_several, &SeveralParts::begunWanted, this,
            [this](const std::vector<Id<Component>> &parts) { m_tree->choose(parts); });
    connect(m_branch, &BranchForm::left, this, backToTree);
    connect(m_branch, &BranchForm::wanted, this, [this] {
        m_tree->choose(Id<Component>{m_begun.record()});
        showChosen();
    });
    connect(&m_detail->askLine(), &ActLine::wanted, this, [this] {
        const Id<Component> part{m_detail->askLine().aboutId()};
        part ? m_tree->choose(part) : m_tree->chooseWhole();
        showChosen();
    });
    connect(m_branch, &BranchForm::made, this,
            [this](qint64 part) { m_tree->choose(Id<Component>{part}); });
}

Id<Component> PartsPage::current() const
{
    return m_tree->current();
}

void PartsPage::showChosen()
{
    const auto parts = m_tree->chosen();
    if (parts.size() > 1) {
        m_begun.show(0);
        m_several->show(parts);
        m_right->setCurrentWidget(m_several);
        return;
    }
    m_several->show({});
    m_detail->show(current(), m_tree->figures(current()));
    m_begun.show(current().value());
    // A copy that is begun is there again with its part.
    const bool isCopying = m_begun.record() == current().value() && m_branch->isBegun();
    m_right->setCurrentWidget(isCopying ? static_cast<QWidget *>(m_branch) : m_detail);
}

void PartsPage::showDetail()
{
    m_begun.show(0);
    m_right->setCurrentWidget(m_detail);
}

void PartsPage::showRecord(RecordRef record)
{
    const auto records = session().records();
    const Id<Component> part = partOf(*records, record);
    if (part)
        m_tree->choose(part);
    else if (record.id != 0 && records->find(record.type, record.id))
        m_tree->chooseWhole();
    else
        return;
    if (record.type != RecordType::Component)
        m_detail->showRecord(record);
}

void PartsPage::startNew()
{
    addBeside();
}

QWidget *PartsPage::firstFocus()
{
    return m_tree->firstFocus();
}

Id<Component> PartsPage::shownPart() const
{
    return current();
}

void PartsPage::recordsChanged(const ChangeNotice &notice)
{
    const bool isGone =
        m_begun.record() != 0 && !notice.after->findLive(Id<Component>{m_begun.record()});
    if (isGone)
        m_begun.drop();
    m_tree->apply(notice);
    const Id<Component> now = current();
    if (now == m_detail->shown())
        m_detail->apply(notice, m_tree->figures(now));
    const bool isSeveral = m_tree->chosen().size() > 1;
    const bool isOther = now != m_detail->shown();
    if (isOther || isGone || isSeveral != (m_right->currentWidget() == m_several))
        showChosen();
}

void PartsPage::answerChanged()
{
    m_tree->applyAnswer();
    m_detail->applyAnswer(m_tree->figures(m_detail->shown()));
}

void PartsPage::themeChanged()
{
    m_detail->themeChanged();
    update();
}

} // namespace lastrivet::ui
