// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/journal/ConflictsView.h"

#include "ui/convert/QtText.h"
#include "ui/journal/ConflictPanel.h"
#include "ui/journal/ConflictWords.h"
#include "ui/shell/Session.h"
#include "ui/widgets/RowDelegate.h"
#include "ui/widgets/RowListModel.h"

#include <QCheckBox>
#include <QLabel>
#include <QListView>
#include <QShortcut>
#include <QSplitter>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace lastrivet::ui {

ConflictsView::ConflictsView(Session &session, const JournalModel &journal, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_journal(journal)
    , m_model(new RowListModel(this))
    , m_list(new QListView(this))
    , m_decidedToo(new QCheckBox(tr("Show what was decided as well"), this))
    , m_nothing(new QLabel(this))
    , m_panel(new ConflictPanel(session, this))
{
    build();
    buildKeys();
}

void ConflictsView::build()
{
    m_list->setModel(m_model);
    m_list->setItemDelegate(new RowDelegate(m_session.theme(), this));
    m_list->setAccessibleName(tr("Things to decide"));
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setResizeMode(QListView::Adjust);
    m_list->setProperty("ownRing", true);
    m_nothing->setWordWrap(true);
    auto *left = new QWidget(this);
    auto *column = new QVBoxLayout(left);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_nothing);
    column->addWidget(m_list, 1);
    column->addWidget(m_decidedToo);
    auto *halves = new QSplitter(this);
    halves->setChildrenCollapsible(false);
    halves->addWidget(left);
    halves->addWidget(m_panel);
    halves->setStretchFactor(0, 2);
    halves->setStretchFactor(1, 3);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(halves, 1);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this] { showChosen(); });
    connect(m_list, &QListView::activated, m_panel, &ConflictPanel::goToRecord);
    connect(m_decidedToo, &QCheckBox::toggled, this, [this] { fill(); });
}

void ConflictsView::buildKeys()
{
    const auto add = [this](Qt::Key key, const QString &words, auto act) {
        auto *shortcut = new QShortcut(QKeySequence(key), this);
        shortcut->setWhatsThis(words);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, m_panel, act);
    };
    add(Qt::Key_K, tr("Keep what stands"), &ConflictPanel::keep);
    add(Qt::Key_T, tr("Take the other"), &ConflictPanel::take);
}

bool ConflictsView::refresh()
{
    auto all = m_session.read([this] { return m_session.project().conflicts(); });
    if (!all)
        return false;
    m_all = std::move(*all);
    m_undecided =
        int(std::ranges::count_if(m_all, [](const MergeConflict &each) { return !each.decision; }));
    fill();
    return true;
}

void ConflictsView::fill()
{
    const int before = m_list->currentIndex().row();
    m_listed = m_all;
    if (!m_decidedToo->isChecked())
        std::erase_if(m_listed, [](const MergeConflict &each) { return each.decision; });
    const auto records = m_session.records();
    std::vector<ListRow> rows;
    for (const MergeConflict &conflict : m_listed) {
        ListRow row{conflict.record,
                    recordIn(*records, conflict),
                    summaryIn(*records, conflict),
                    {},
                    {},
                    {}};
        if (const QString decision = decisionIn(conflict); !decision.isEmpty())
            row.detail = tr("%1 · %2").arg(decision, row.detail);
        rows.push_back(std::move(row));
    }
    m_model->setRows(std::move(rows));
    m_nothing->setText(m_all.empty() ? tr("Merging another copy has left nothing to decide.")
                                     : tr("Everything is decided."));
    m_nothing->setVisible(m_listed.empty());
    m_list->setVisible(!m_listed.empty());
    m_decidedToo->setVisible(int(m_all.size()) > m_undecided);
    const int count = m_model->rowCount();
    if (count > 0)
        m_list->setCurrentIndex(m_model->index(std::clamp(before, 0, count - 1), 0));
    showChosen();
}

void ConflictsView::showChosen()
{
    const int row = m_list->currentIndex().row();
    const bool isAny = row >= 0 && row < int(m_listed.size());
    m_panel->setVisible(isAny);
    if (isAny) {
        const MergeConflict &conflict = m_listed[std::size_t(row)];
        m_panel->show(conflict, seqOf(conflict.lost_by.change_id));
    }
}

std::int64_t ConflictsView::seqOf(const std::string &change) const
{
    const auto &entries = m_journal.entries();
    const auto found = std::ranges::find(entries, change, &JournalEntry::change_id);
    return found == entries.end() ? 0 : found->seq;
}

} // namespace lastrivet::ui
