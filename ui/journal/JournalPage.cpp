// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/journal/JournalPage.h"

#include "core/journal/Account.h"
#include "core/journal/RecordHistory.h"
#include "core/records/Designation.h"
#include "ui/convert/QtText.h"
#include "ui/convert/UsualFolders.h"
#include "ui/journal/AccountModel.h"
#include "ui/journal/ConflictsView.h"
#include "ui/journal/JournalDelegate.h"
#include "ui/journal/JournalDetail.h"
#include "ui/journal/JournalFilterBar.h"
#include "ui/journal/JournalModel.h"
#include "ui/journal/JournalPrint.h"
#include "ui/widgets/EmptyPlace.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/NewFileName.h"
#include "ui/widgets/RowMenu.h"

#include <QButtonGroup>
#include <QCheckBox>
#include <QDir>
#include <QHBoxLayout>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QShortcut>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <memory>
#include <unordered_set>

namespace lastrivet::ui {

JournalPage::JournalPage(Session &session, QWidget *parent)
    : Page(session, parent)
    , m_model(new JournalModel(session, this))
    , m_toChanges(new QPushButton(tr("Changes"), this))
    , m_toDecisions(new QPushButton(this))
    , m_print(new QPushButton(tr("Print…"), this))
    , m_filter(new JournalFilterBar(session, this))
    , m_about(new QWidget(this))
    , m_aboutWords(new QLabel(this))
    , m_withBranch(new QCheckBox(this))
    , m_count(new QLabel(this))
    , m_list(new QListView(this))
    , m_noMatch(new EmptyPlace(tr("No row of the journal matches."), this))
    , m_listOrNone(new QStackedWidget(this))
    , m_detail(new JournalDetail(session, *m_model, this))
    , m_conflicts(new ConflictsView(session, *m_model, this))
    , m_stack(new QStackedWidget(this))
    , m_changes(nullptr)
{
    m_chooseFile = [this](const QString &suggested) {
        return askForNewFile(this, tr("Print the journal"), suggested, tr("PDF (*.pdf)"));
    };
    build();
    buildKeys();
    refresh();
}

void JournalPage::build()
{
    m_changes = buildChanges();
    m_stack->addWidget(m_changes);
    m_stack->addWidget(m_conflicts);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 12, 16, 8);
    layout->setSpacing(8);
    layout->addWidget(buildHead());
    layout->addWidget(m_stack, 1);
}

QWidget *JournalPage::buildHead()
{
    auto *head = new QWidget(this);
    auto *line = new QHBoxLayout(head);
    line->setContentsMargins(0, 0, 0, 0);
    auto *places = new QButtonGroup(head);
    for (QPushButton *button : {m_toChanges, m_toDecisions}) {
        button->setCheckable(true);
        places->addButton(button);
        line->addWidget(button);
    }
    m_toChanges->setChecked(true);
    m_print->setToolTip(tr("Print what is listed (Ctrl+P)"));
    line->addStretch(1);
    line->addWidget(m_count);
    line->addWidget(m_print);
    connect(m_toChanges, &QPushButton::clicked, this, &JournalPage::showChanges);
    connect(m_toDecisions, &QPushButton::clicked, this, &JournalPage::showDecisions);
    connect(m_print, &QPushButton::clicked, this, &JournalPage::print);
    return head;
}

QWidget *JournalPage::buildChanges()
{
    auto *halves = new QSplitter(this);
    halves->setChildrenCollapsible(false);
    halves->addWidget(buildList());
    halves->addWidget(m_detail);
    halves->setStretchFactor(0, 1);
    halves->setStretchFactor(1, 1);
    return halves;
}

QWidget *JournalPage::buildList()
{
    m_list->setModel(m_model);
    m_list->setItemDelegate(new JournalDelegate(theme(), this));
    m_list->setAccessibleName(tr("Journal"));
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    // Every row is asked for its height, but only what is shown for its words.
    m_list->setLayoutMode(QListView::Batched);
    m_noMatch->setAction(tr("Show everything"));
    m_listOrNone->addWidget(m_list);
    m_listOrNone->addWidget(m_noMatch);
    auto *left = new QWidget(this);
    auto *layout = new QVBoxLayout(left);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_filter);
    layout->addWidget(buildAbout());
    layout->addWidget(m_listOrNone, 1);
    connect(m_filter, &JournalFilterBar::changed, this, &JournalPage::filter);
    connect(m_noMatch, &EmptyPlace::acted, this, [this] {
        showEverything();
        m_filter->clear();
        refresh();
    });
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this] { showChosen(); });
    connect(m_list, &QListView::activated, this, [this] {
        m_detail->records().setFocus();
        m_detail->records().setCurrentIndex(m_detail->account().index(0, 0));
    });
    return left;
}

/// Says whose history is listed, and leads back to everything.
QWidget *JournalPage::buildAbout()
{
    m_aboutWords->setWordWrap(true);
    m_aboutWords->setTextFormat(Qt::PlainText);
    m_withBranch->setText(tr("with all that is inside it or recorded on it"));
    auto *everything = flatButton(tr("Show everything"), m_about);
    auto *layout = new QVBoxLayout(m_about);
    layout->setContentsMargins(0, 0, 0, 0);
    auto *line = new QHBoxLayout;
    line->addWidget(m_aboutWords, 1);
    line->addWidget(everything);
    layout->addLayout(line);
    layout->addWidget(m_withBranch);
    m_about->hide();
    connect(everything, &QPushButton::clicked, this, [this] {
        showEverything();
        m_list->setFocus();
    });
    connect(m_withBranch, &QCheckBox::toggled, this, &JournalPage::lookAbout);
    return m_about;
}

void JournalPage::buildKeys()
{
    const auto add = [](const QKeySequence &keys, const QString &words, QWidget *where,
                        Qt::ShortcutContext context, auto act) {
        auto *shortcut = new QShortcut(keys, where);
        shortcut->setContext(context);
        shortcut->setWhatsThis(words);
        connect(shortcut, &QShortcut::activated, where, act);
    };
    add(Qt::Key_Slash, tr("Look for words in the list"), m_list, Qt::WidgetShortcut,
        [this] { m_filter->focusWords(); });
    add(Qt::Key_Escape, {}, &m_detail->records(), Qt::WidgetShortcut,
        [this] { m_list->setFocus(); });
    add(QKeySequence::Print, tr("Print what is listed"), this, Qt::WidgetWithChildrenShortcut,
        [this] { print(); });
    (new RowMenu(*m_list))->addBar(*m_detail);
}

void JournalPage::refresh()
{
    const auto hash = session().read([this] { return session().project().journalHash(); });
    if (hash && *hash == m_hash)
        return;
    if (hash && refreshList() && m_conflicts->refresh())
        m_hash = *hash;
    m_toDecisions->setVisible(m_conflicts->isAny());
    if (!m_conflicts->isAny())
        showChanges();
    updateWords();
}

bool JournalPage::refreshList()
{
    bool isRead = false;
    listAnew([&] { isRead = m_model->reload(); });
    if (!isRead)
        return false;
    m_filter->offerPeople(m_model->people());
    if (m_record)
        lookAbout();
    return true;
}

void JournalPage::listAnew(const std::function<void()> &list)
{
    const JournalEntry *shown = m_model->entryAt(m_list->currentIndex().row());
    const std::int64_t seq = shown ? shown->seq : 0;
    const bool isAtTop = m_list->currentIndex().row() <= m_model->firstEntry();
    list();
    const int row = isAtTop ? -1 : m_model->rowOf(seq);
    choose(row < 0 ? m_model->firstEntry() : row);
}

void JournalPage::filter()
{
    m_model->setFilter(m_filter->filter());
    choose(m_model->firstEntry());
    updateWords();
}

void JournalPage::lookAbout()
{
    if (!m_record)
        return;
    const auto records = session().records();
    const bool isPart = m_record->type == RecordType::Component;
    std::set<RecordRef> wanted{*m_record};
    if (isPart && m_withBranch->isChecked())
        wanted = journal::belongingTo(*records, Id<Component>{m_record->id});
    const bool isClosing = m_record->type == RecordType::Closing;
    if (isClosing)
        wanted = journal::belongingTo(*records, Id<Closing>{m_record->id});
    m_aboutWords->setText(
        (isClosing ? tr("Only what touched %1, its hold points, signatures and lines to check")
                   : tr("Only what touched %1"))
            .arg(inWords(spoken(*records, *m_record))));
    m_withBranch->setVisible(isPart);
    m_about->show();
    const auto found = std::make_shared<std::unordered_set<std::int64_t>>();
    const int lookup = ++m_lookup;
    session().runLong(
        tr("Looking through the journal"),
        [found, wanted, folder = session().project().folder()](Progress &) {
            for (const std::int64_t seq : journal::rowsTouching(folder, wanted))
                found->insert(seq);
        },
        this,
        [this, found, lookup] {
            if (lookup != m_lookup)
                return;
            listAnew([&] { m_model->setRowsOnly(*found); });
            updateWords();
        },
        [this, lookup] {
            // What is listed is not only what touched it.
            if (lookup == m_lookup)
                showEverything();
        });
}

void JournalPage::showEverything()
{
    m_record.reset();
    ++m_lookup;
    m_detail->setAbout(std::nullopt);
    m_about->hide();
    m_model->setRowsOnly(std::nullopt);
    choose(m_model->firstEntry());
    updateWords();
}

void JournalPage::choose(int row)
{
    const QModelIndex wanted =
        row >= 0 && row < m_model->rowCount() ? m_model->index(row, 0) : QModelIndex();
    // Another row is shown as soon as it is the current one.
    if (!wanted.isValid() || wanted == m_list->currentIndex())
        showChosen();
    if (!wanted.isValid())
        return;
    m_list->setCurrentIndex(wanted);
    m_list->scrollTo(m_model->index(row == m_model->firstEntry() ? 0 : row, 0));
}

void JournalPage::showChosen()
{
    m_detail->show(m_model->entryAt(m_list->currentIndex().row()));
}

void JournalPage::showRecord(RecordRef record)
{
    m_record = record;
    m_detail->setAbout(record);
    m_filter->clear();
    showChanges();
    lookAbout();
}

void JournalPage::showChanges()
{
    m_toChanges->setChecked(true);
    m_stack->setCurrentWidget(m_changes);
    updateWords();
}

void JournalPage::showDecisions()
{
    refresh();
    if (!m_conflicts->isAny())
        return;
    m_toDecisions->setChecked(true);
    m_stack->setCurrentWidget(m_conflicts);
    m_conflicts->list().setFocus();
    updateWords();
}

QWidget *JournalPage::firstFocus()
{
    if (m_stack->currentWidget() == m_conflicts)
        return &m_conflicts->list();
    return m_listOrNone->currentWidget() == m_noMatch ? static_cast<QWidget *>(m_noMatch) : m_list;
}

Id<Component> JournalPage::shownPart() const
{
    return m_record && m_record->type == RecordType::Component ? Id<Component>{m_record->id}
                                                               : Id<Component>{};
}

void JournalPage::updateWords()
{
    // Every project has a row that says how it began.
    m_noMatch->setSentence(m_model->entries().empty() ? tr("The journal could not be read.")
                                                      : tr("No row of the journal matches."));
    m_listOrNone->setCurrentWidget(m_model->rowCount() > 0 ? static_cast<QWidget *>(m_list)
                                                           : m_noMatch);
    m_toDecisions->setText(tr("To decide (%1)").arg(m_conflicts->undecided()));
    const bool areChanges = m_stack->currentWidget() == m_changes;
    m_print->setVisible(areChanges);
    m_count->setVisible(areChanges);
    m_count->setText(tr("%n rows", nullptr, m_model->listedCount()));
}

void JournalPage::recordsChanged(const ChangeNotice &)
{
    refresh();
}

void JournalPage::showEvent(QShowEvent *event)
{
    // What was printed writes a row, and changes no record.
    refresh();
    Page::showEvent(event);
}

packet::JournalReport::Filter JournalPage::listedFilter() const
{
    const JournalFilter filter = m_filter->filter();
    packet::JournalReport::Filter listed{.about = {},
                                         .words = toStd(filter.words),
                                         .who = toStd(filter.who),
                                         .kind = filter.kind,
                                         .from = filter.from,
                                         .until = filter.until};
    if (m_record)
        listed.about = spoken(*session().records(), *m_record);
    return listed;
}

void JournalPage::print()
{
    // A paper with more rows than were asked for would look complete.
    if (const QString why = m_filter->objection(); !why.isEmpty()) {
        session().complain(why);
        return;
    }
    const QString name = printFileName(tr("Journal"), session().today().text());
    const QString file = m_chooseFile(QDir(documentsFolder()).filePath(name));
    if (file.isEmpty())
        return;
    printJournal(session(), {m_model->listed(), listedFilter(), m_model->entries().size()}, file);
    refresh();
}

} // namespace lastrivet::ui
