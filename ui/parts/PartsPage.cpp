// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/PartsPage.h"

#include "core/project/acts/PartActs.h"
#include "core/records/Description.h"
#include "ui/convert/QtText.h"
#include "ui/parts/PartDetail.h"
#include "ui/parts/PartMoves.h"
#include "ui/parts/PartTreeModel.h"
#include "ui/widgets/ActLine.h"
#include "ui/widgets/EmptyPlace.h"
#include "ui/widgets/Flow.h"
#include "ui/widgets/PictureLoader.h"
#include "ui/widgets/RecordNames.h"
#include "ui/widgets/TallRows.h"
#include "ui/widgets/WithdrawAct.h"

#include <QHeaderView>
#include <QLineEdit>
#include <QPushButton>
#include <QShortcut>
#include <QSortFilterProxyModel>
#include <QSplitter>
#include <QStackedWidget>
#include <QTreeView>
#include <QVBoxLayout>

#include <algorithm>

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
    , m_model(new PartTreeModel(session, this))
    , m_filtered(new QSortFilterProxyModel(this))
    , m_loader(new PictureLoader(session, this))
    , m_filter(new QLineEdit(this))
    , m_tree(new QTreeView(this))
    , m_empty(new EmptyPlace({}, this))
    , m_stack(new QStackedWidget(this))
    , m_detail(new PartDetail(session, *m_loader, this))
{
    build();
    buildKeys();
    m_tree->expandToDepth(0);
    m_tree->setCurrentIndex(m_filtered->index(0, 0));
    showCurrent();
    updateWords();
}

void PartsPage::build()
{
    auto *halves = new QSplitter(this);
    halves->setChildrenCollapsible(false);
    halves->addWidget(buildTree());
    halves->addWidget(m_detail);
    halves->setStretchFactor(0, 5);
    halves->setStretchFactor(1, 6);
    halves->setSizes({560, 540});
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 12, 16, 8);
    layout->addWidget(halves, 1);
    connect(m_detail, &PartDetail::finished, this, [this] { m_tree->setFocus(); });
}

QWidget *PartsPage::buildTree()
{
    m_filtered->setSourceModel(m_model);
    m_filtered->setRecursiveFilteringEnabled(true);
    m_filtered->setFilterCaseSensitivity(Qt::CaseInsensitive);
    m_tree->setModel(m_filtered);
    m_tree->setAccessibleName(tr("Parts"));
    m_tree->setItemDelegate(new TallRows(this));
    m_tree->setUniformRowHeights(true);
    m_tree->setIndentation(16);
    m_tree->setAllColumnsShowFocus(true);
    m_tree->setDragDropMode(QAbstractItemView::InternalMove);
    m_tree->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_tree->header()->setStretchLastSection(false);
    m_tree->header()->setSectionResizeMode(PartTreeModel::PartColumn, QHeaderView::Stretch);
    for (int column = PartTreeModel::StateColumn; column < PartTreeModel::columns; ++column)
        m_tree->header()->setSectionResizeMode(column, QHeaderView::Interactive);
    m_tree->setColumnWidth(PartTreeModel::StateColumn, 124);
    m_tree->setColumnWidth(PartTreeModel::HoursColumn, 74);
    m_tree->setColumnWidth(PartTreeModel::SquawksColumn, 70);
    m_tree->setColumnWidth(PartTreeModel::PhotosColumn, 60);
    m_filter->setPlaceholderText(tr("Type to filter the parts"));
    m_filter->setAccessibleName(tr("Filter the parts"));
    m_filter->setClearButtonEnabled(true);
    m_empty->setSentence(tr("The parts of the aeroplane will stand here as a tree, each with its "
                            "state, hours, squawks and photos."));
    m_empty->setAction(tr("Add the first part"));
    m_stack->addWidget(m_tree);
    m_stack->addWidget(m_empty);
    auto *left = new QWidget(this);
    auto *layout = new QVBoxLayout(left);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_filter);
    layout->addWidget(m_stack, 1);
    layout->addWidget(buildActs());
    connect(m_filter, &QLineEdit::textChanged, this, &PartsPage::filter);
    connect(m_tree->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this] { showCurrent(); });
    connect(m_tree, &QTreeView::activated, m_detail, &PartDetail::editPart);
    connect(m_empty, &EmptyPlace::acted, this, &PartsPage::addBeside);
    return left;
}

QWidget *PartsPage::buildActs()
{
    struct Act {
        QString words;
        QString tip;
        void (PartsPage::*run)();
    };
    const Act acts[] = {
        {tr("Add beside"), tr("Insert: a part after this one"), &PartsPage::addBeside},
        {tr("Add inside"), tr("Shift+Insert: a part within this one"), &PartsPage::addInside},
        {tr("Withdraw"), tr("Delete: take a wrong part out"), &PartsPage::withdrawCurrent},
    };
    auto *bar = new QWidget(this);
    auto *flow = new Flow(bar);
    for (const Act &act : acts) {
        auto *button = new QPushButton(act.words, bar);
        button->setToolTip(act.tip);
        button->setEnabled(!session().isReadOnly());
        flow->addWidget(button);
        connect(button, &QPushButton::clicked, this, act.run);
    }
    return bar;
}

void PartsPage::addKey(const QKeySequence &keys, void (PartsPage::*act)())
{
    auto *shortcut = new QShortcut(keys, m_tree);
    shortcut->setContext(Qt::WidgetShortcut);
    connect(shortcut, &QShortcut::activated, this, [this, act] {
        if (!session().isReadOnly())
            (this->*act)();
    });
}

void PartsPage::buildKeys()
{
    addKey(QKeySequence(Qt::Key_Insert), &PartsPage::addBeside);
    addKey(QKeySequence(Qt::SHIFT | Qt::Key_Insert), &PartsPage::addInside);
    addKey(QKeySequence::Delete, &PartsPage::withdrawCurrent);
    addKey(QKeySequence(Qt::ALT | Qt::Key_Up), &PartsPage::moveUp);
    addKey(QKeySequence(Qt::ALT | Qt::Key_Down), &PartsPage::moveDown);
    addKey(QKeySequence(Qt::ALT | Qt::Key_Right), &PartsPage::moveIn);
    addKey(QKeySequence(Qt::ALT | Qt::Key_Left), &PartsPage::moveOutside);
    auto *find = new QShortcut(QKeySequence(QStringLiteral("/")), m_tree);
    find->setContext(Qt::WidgetShortcut);
    connect(find, &QShortcut::activated, this, [this] { m_filter->setFocus(); });
}

Id<Component> PartsPage::current() const
{
    return m_model->partAt(m_filtered->mapToSource(m_tree->currentIndex()));
}

void PartsPage::choose(Id<Component> part)
{
    const QModelIndex index = m_filtered->mapFromSource(m_model->indexOf(part));
    if (!index.isValid())
        return;
    m_tree->setCurrentIndex(index);
    m_tree->scrollTo(index);
}

void PartsPage::showCurrent()
{
    m_detail->show(current());
}

void PartsPage::filter()
{
    const Id<Component> kept = current();
    m_filtered->setFilterFixedString(m_filter->text().trimmed());
    if (m_filter->text().trimmed().isEmpty())
        m_tree->expandToDepth(0);
    else
        m_tree->expandAll();
    choose(kept);
    if (!m_tree->currentIndex().isValid())
        m_tree->setCurrentIndex(m_filtered->index(0, 0));
}

void PartsPage::addInside()
{
    if (current())
        addPart(current(), std::size_t(-1));
    else
        addBeside();
}

void PartsPage::addBeside()
{
    const auto records = session().records();
    const Component *beside = records->find(current());
    const Id<Component> parent = beside ? beside->parent_id : Id<Component>{};
    const auto neighbours = acts::partsInside(*records, parent);
    const auto place = std::ranges::find(neighbours, current());
    addPart(parent, std::size_t(place - neighbours.begin()) + 1);
}

void PartsPage::addPart(Id<Component> parent, std::size_t row)
{
    const QString where = parent ? tr("A new part inside %1")
                                       .arg(partName(*session().records(), parent))
                                 : tr("A new part at the top");
    m_detail->setVisible(true);
    m_detail->askLine().ask(
        {.words = where,
         .confirm = tr("Add it"),
         .textLabel = tr("Name"),
         .textMissing = tr("A part needs a name.")},
        [this, parent, row](const ActLine::Answer &answer) {
            Id<Component> added;
            const bool isDone = session().change(
                tr("Part added: %1").arg(answer.text), [&](Edit &edit) {
                    added = acts::addPart(
                        edit, Component{.parent_id = parent, .name = toStd(answer.text)}, row);
                });
            if (isDone) {
                m_filter->clear();
                choose(added);
            }
            return isDone;
        });
}

void PartsPage::withdrawCurrent()
{
    if (current())
        askToWithdraw(session(), m_detail->askLine(),
                      {RecordType::Component, current().value()});
}

void PartsPage::moveUp()
{
    if (current())
        moveAmong(session(), current(), -1);
}

void PartsPage::moveDown()
{
    if (current())
        moveAmong(session(), current(), 1);
}

void PartsPage::moveIn()
{
    if (current())
        moveInto(session(), current());
}

void PartsPage::moveOutside()
{
    if (current())
        moveOut(session(), current());
}

void PartsPage::updateWords()
{
    m_stack->setCurrentWidget(m_model->rowCount() > 0 ? static_cast<QWidget *>(m_tree) : m_empty);
}

void PartsPage::showRecord(RecordRef record)
{
    const Id<Component> part = partOf(*session().records(), record);
    if (!part)
        return;
    if (!m_filtered->mapFromSource(m_model->indexOf(part)).isValid())
        m_filter->clear();
    choose(part);
    if (record.type != RecordType::Component)
        m_detail->showRecord(record);
}

void PartsPage::startNew()
{
    addBeside();
}

QWidget *PartsPage::firstFocus()
{
    return m_tree;
}

void PartsPage::recordsChanged(const ChangeNotice &notice)
{
    const Id<Component> kept = current();
    m_model->apply(notice);
    m_detail->apply(notice);
    // A move closes what was open; the chosen part stays chosen and in sight.
    choose(kept);
    showCurrent();
    updateWords();
}

void PartsPage::answerChanged()
{
    m_model->applyAnswer();
    m_detail->applyAnswer();
}

void PartsPage::themeChanged()
{
    m_tree->viewport()->update();
}

} // namespace lastrivet::ui
