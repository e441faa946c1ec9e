// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/certificate/PapersView.h"

#include "core/project/acts/PaperActs.h"
#include "ui/certificate/PaperModel.h"
#include "ui/certificate/PaperPanel.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/PlainTable.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QVBoxLayout>

#include <algorithm>

namespace lastrivet::ui {

using certificate::Paper;
using certificate::PaperState;

namespace {

/// A state with its day, in every language.
constexpr int widestOther = 280;

} // namespace

PapersView::PapersView(Session &session, QWidget *parent)
    : CertificatePlace(parent)
    , m_session(session)
    , m_model(new PaperModel(session, this))
    , m_headline(new QLabel(this))
    , m_table(new PlainTable(tr("Documents on the way to the certificate"), this))
    , m_own(new QLineEdit(this))
    , m_draft(session, "own_paper", *m_own)
    , m_add(new QPushButton(tr("Add"), this))
    , m_panel(new PaperPanel(session, this))
    , m_panelArea(new QScrollArea(this))
{
    build();
    m_draft.takeUp();
    m_table->setCurrentIndex(m_model->index(0, 0));
    showCurrent();
    updateWords();
}

void PapersView::build()
{
    m_panelArea->setWidgetResizable(true);
    m_panelArea->setWidget(m_panel);
    m_panelArea->setFocusPolicy(Qt::NoFocus);
    auto *halves = new QSplitter(this);
    halves->setChildrenCollapsible(false);
    halves->addWidget(buildList());
    halves->addWidget(m_panelArea);
    halves->setStretchFactor(0, 3);
    halves->setStretchFactor(1, 2);
    halves->setSizes({680, 420});
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(halves);
}

QWidget *PapersView::buildList()
{
    m_headline->setWordWrap(true);
    m_table->setModel(m_model);
    constexpr int leastTitle = 160;
    m_table->setWideColumn(PaperModel::Title, leastTitle);
    m_table->wrapLines();
    // Both stand in the panel of the chosen document, too.
    m_table->setSparable({PaperModel::Scans, PaperModel::Number});
    m_table->fitColumns(widestOther);
    m_own->setPlaceholderText(tr("A document that is on no list"));
    m_own->setAccessibleName(m_own->placeholderText());
    auto *foot = new QHBoxLayout;
    foot->addWidget(m_own, 1);
    foot->addWidget(m_add);
    auto *left = new QWidget(this);
    auto *layout = new QVBoxLayout(left);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_headline);
    layout->addWidget(m_table, 1);
    layout->addLayout(foot);
    connect(m_table, &PlainTable::rowChosen, this, [this] { showCurrent(); });
    connect(m_own, &QLineEdit::returnPressed, this, &PapersView::addOwn);
    connect(m_add, &QPushButton::clicked, this, &PapersView::addOwn);
    connect(m_panel, &PaperPanel::begunWanted, this,
            [this](const std::string &key, Id<CertificateDocument> document) {
                m_table->selectRow(m_model->rowOf(key));
                m_panel->showEarlier(document);
            });
    connect(m_panel, &PaperPanel::finished, this, [this] { m_table->setFocus(); });
    return left;
}

void PapersView::addOwn()
{
    const QString title = m_own->text().trimmed();
    if (title.isEmpty()) {
        m_own->setFocus();
        return;
    }
    if (m_model->rowOf(toStd(title)) < 0 &&
        !m_session.change(tr("Document “%1” added").arg(title),
                          [&](Edit &edit) { acts::addPaper(edit, toStd(title)); }))
        return;
    // Undo is about the document from here on, not about its words.
    m_own->setText({});
    m_draft.keep();
    m_table->selectRow(m_model->rowOf(toStd(title)));
}

void PapersView::showCurrent()
{
    const int row = m_table->currentRow();
    m_panelArea->setVisible(row >= 0);
    if (row >= 0)
        m_panel->show(m_model->paper(row));
}

void PapersView::updateWords()
{
    const auto isHere = [](const Paper &paper) { return paper.state == PaperState::Here; };
    const auto &all = m_model->papers();
    const auto isRequired = [](const Paper &paper) { return paper.need == Need::Required; };
    const auto required = int(std::ranges::count_if(all, isRequired));
    const auto missing = int(std::ranges::count_if(
        all, [&](const Paper &paper) { return isRequired(paper) && !isHere(paper); }));
    const auto withoutScan = int(std::ranges::count_if(
        all, [&](const Paper &paper) { return isHere(paper) && !paper.hasScan; }));
    QStringList sentences;
    if (required == 0)
        sentences << tr("These rules require no document; what is usual is listed.");
    else if (missing == 0)
        sentences << tr("Every document that these rules require is here.");
    else
        sentences << tr("%n required documents are not here yet.", nullptr, missing);
    if (withoutScan > 0)
        sentences << tr("%n that are here have no scan.", nullptr, withoutScan);
    sentences << tr("Rules change: check the current edition with your authority.");
    m_headline->setText(sentences.join(QLatin1Char(' ')));
    for (QWidget *widget : std::initializer_list<QWidget *>{m_own, m_add})
        widget->setEnabled(!m_session.isReadOnly());
}

bool PapersView::showRecord(RecordRef record)
{
    if (record.type != RecordType::CertificateDocument)
        return false;
    const Id<CertificateDocument> id{record.id};
    if (const int row = m_model->rowOf(id); row >= 0) {
        m_table->selectRow(row);
        m_table->scrollTo(m_model->index(row, 0));
        m_panel->showEarlier(id);
    }
    return true;
}

void PapersView::apply(const ChangeNotice &notice)
{
    const int row = m_table->currentRow();
    const std::string shown = row >= 0 ? m_model->paper(row).key : std::string();
    m_model->refresh();
    m_table->fitColumns(widestOther);
    if (m_table->currentRow() < 0)
        m_table->selectRow(std::max(0, m_model->rowOf(shown)));
    m_panel->apply(notice);
    showCurrent();
    updateWords();
}

void PapersView::hideEvent(QHideEvent *event)
{
    m_draft.keep();
    CertificatePlace::hideEvent(event);
}

void PapersView::startNew()
{
    m_own->setFocus();
}

QWidget *PapersView::firstFocus()
{
    return m_table;
}

} // namespace lastrivet::ui
