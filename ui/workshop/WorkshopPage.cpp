// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workshop/WorkshopPage.h"

#include "core/workshop/WorkshopTable.h"
#include "ui/convert/QtText.h"
#include "ui/widgets/FilterLine.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/TallRows.h"
#include "ui/workshop/FigureView.h"
#include "ui/workshop/OwnLimitForm.h"
#include "ui/workshop/Tables.h"
#include "ui/workshop/TopicView.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace lastrivet::ui {

namespace {

constexpr int leftWidth = 260;
/// All tables are searched when a word is written, not at each letter.
constexpr int searchAfter = 150;

} // namespace

WorkshopPage::WorkshopPage(Session &session, QWidget *parent)
    : Page(session, parent)
    , m_topics(topics())
    , m_views(m_topics.size(), nullptr)
    , m_search(new FilterLine(this))
    , m_searchSoon(new QTimer(this))
    , m_list(new QListWidget(this))
    , m_units(new QComboBox(this))
    , m_stack(new QStackedWidget(this))
    , m_foundArea(new QScrollArea(this))
    , m_found(nullptr)
    , m_ownForm(new OwnLimitForm([this](const workshop::OwnLimit &limit) { return keepOwn(limit); },
                                 this))
    , m_begunOwn(session, {m_ownForm})
    , m_withoutOwn(new QLabel(tr("This project's own limits could not be read: the tables and sums "
                                 "stand here without them. None can be changed until then."),
                              this))
{
    build();
    readOwn();
    m_list->setCurrentRow(0);
}

void WorkshopPage::build()
{
    auto *layout = new QHBoxLayout(this);
    layout->setContentsMargins(16, 12, 16, 8);
    layout->setSpacing(16);
    layout->addWidget(buildLeft());
    layout->addWidget(buildRight(), 1);
    connectSearch();
    connect(m_units, &QComboBox::currentIndexChanged, this, &WorkshopPage::refresh);
    connect(m_ownForm, &ActForm::left, m_list, qOverload<>(&QWidget::setFocus));
}

void WorkshopPage::connectSearch()
{
    connect(m_list, &QListWidget::currentRowChanged, this, &WorkshopPage::choose);
    // After a search the topic that is wanted may be the current one already.
    for (const auto pressed : {&QListWidget::itemClicked, &QListWidget::itemActivated})
        connect(m_list, pressed, this, [this] { choose(m_list->currentRow()); });
    m_searchSoon->setSingleShot(true);
    m_searchSoon->setInterval(searchAfter);
    connect(m_searchSoon, &QTimer::timeout, this, &WorkshopPage::search);
    connect(m_search, &QLineEdit::textChanged, m_searchSoon, qOverload<>(&QTimer::start));
    connect(m_search, &QLineEdit::returnPressed, this, &WorkshopPage::search);
}

QWidget *WorkshopPage::buildLeft()
{
    auto *left = new QWidget(this);
    left->setFixedWidth(leftWidth);
    m_search->setPlaceholderText(tr("Search all tables"));
    m_search->setAccessibleName(tr("Search all tables"));
    m_units->addItem(tr("inches and pounds"), int(UnitSystem::Imperial));
    m_units->addItem(tr("millimetres and newtons"), int(UnitSystem::Metric));
    m_units->setAccessibleName(tr("Units"));
    // Fasteners are sold and tables printed in inches in most countries.
    m_units->setCurrentIndex(0);
    m_list->setAccessibleName(tr("Topics"));
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setItemDelegate(new TallRows(m_list));
    for (const Topic &topic : m_topics)
        m_list->addItem(topic.title);
    auto *layout = new QVBoxLayout(left);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_search);
    layout->addWidget(m_list, 1);
    layout->addWidget(m_units);
    return left;
}

QWidget *WorkshopPage::buildRight()
{
    auto *right = new QWidget(this);
    auto *caution = new QLabel(
        tr("General practice. The maker's drawings and manuals come first; local rules and "
           "licensed practice decide. What is from memory is to be looked up before it is used."),
        right);
    caution->setWordWrap(true);
    m_stack->addWidget(buildFound());
    auto *layout = new QVBoxLayout(right);
    layout->setContentsMargins(0, 0, 0, 0);
    m_withoutOwn->setWordWrap(true);
    m_withoutOwn->hide();
    layout->addWidget(m_withoutOwn);
    layout->addWidget(m_ownForm);
    layout->addWidget(m_stack, 1);
    layout->addWidget(caution);
    return right;
}

QWidget *WorkshopPage::buildFound()
{
    auto *content = new QWidget(m_foundArea);
    m_found = new QVBoxLayout(content);
    m_found->setContentsMargins(0, 0, 12, 12);
    m_foundArea->setWidget(content);
    m_foundArea->setWidgetResizable(true);
    m_foundArea->setFocusPolicy(Qt::NoFocus);
    m_foundArea->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_foundArea->setAccessibleName(tr("What was found"));
    return m_foundArea;
}

UnitSystem WorkshopPage::units() const
{
    return UnitSystem(m_units->currentData().toInt());
}

TopicView &WorkshopPage::topic(int index)
{
    TopicView *&view = m_views[std::size_t(index)];
    if (!view) {
        view = new TopicView(m_topics[std::size_t(index)], units(), m_own, m_stack);
        m_stack->addWidget(view);
        connect(view, &TopicView::ownLimitWanted, this, &WorkshopPage::askForOwn);
    }
    return *view;
}

void WorkshopPage::choose(int index)
{
    if (index < 0)
        return;
    m_searchSoon->stop();
    const QSignalBlocker quiet(m_search);
    m_search->clear();
    m_stack->setCurrentWidget(&topic(index));
}

void WorkshopPage::search()
{
    m_searchSoon->stop();
    const QString words = m_search->text().trimmed();
    if (words.isEmpty()) {
        choose(std::max(0, m_list->currentRow()));
        return;
    }
    showFound(words);
    m_stack->setCurrentWidget(m_foundArea);
}

void WorkshopPage::showFound(const QString &words)
{
    clearLayout(*m_found);
    QWidget *content = m_foundArea->widget();
    for (const Topic &topic : m_topics) {
        for (const auto name : topic.tables) {
            FigureTable table = foundIn(shownTable(name, units(), m_own), words);
            if (table.rows.empty())
                continue;
            m_found->addWidget(heading(tr("%1: %2").arg(topic.title, table.title), content));
            auto *caption = new QLabel(table.caption, content);
            caption->setWordWrap(true);
            caption->setForegroundRole(QPalette::PlaceholderText);
            caption->setVisible(!table.caption.isEmpty());
            auto *view = new FigureView(content);
            view->setTable(std::move(table));
            m_found->addWidget(caption);
            m_found->addWidget(view);
        }
    }
    if (m_found->count() == 0)
        m_found->addWidget(new QLabel(tr("No table has all of these words."), content));
    m_found->addStretch(1);
}

void WorkshopPage::refresh()
{
    for (TopicView *view : m_views) {
        if (view)
            view->show(units(), m_own);
    }
    if (m_stack->currentWidget() == m_foundArea)
        showFound(m_search->text().trimmed());
}

void WorkshopPage::lookForOwn()
{
    if (!m_isOwnRead && readOwn())
        refresh();
}

bool WorkshopPage::readOwn()
{
    const LocalState kept = session().localState(workshop::ownLimitsKey);
    m_isOwnRead = kept.isRead;
    m_withoutOwn->setVisible(!m_isOwnRead);
    m_own = workshop::ownLimits(kept.value.value_or(""));
    return m_isOwnRead;
}

void WorkshopPage::askForOwn(const QString &subject, const QString &unit)
{
    lookForOwn();
    if (!m_isOwnRead) {
        session().complain(m_withoutOwn->text());
        return;
    }
    BegunForms::Purpose purpose;
    for (const QChar letter : subject)
        purpose.push_back(letter.unicode());
    if (m_begunOwn.mayStart(0, purpose))
        m_ownForm->start(subject, unit, workshop::ownLimit(m_own, toStd(subject)));
}

bool WorkshopPage::keepOwn(const workshop::OwnLimit &limit)
{
    auto own = m_own;
    if (limit.minimum || limit.maximum)
        workshop::setOwnLimit(own, limit);
    else
        workshop::dropOwnLimit(own, limit.subject);
    if (!session().keepLocalState(workshop::ownLimitsKey, workshop::ownLimitsText(own)))
        return false;
    m_own = std::move(own);
    refresh();
    return true;
}

void WorkshopPage::showRecord(RecordRef) {}

QWidget *WorkshopPage::firstFocus()
{
    return m_search;
}

void WorkshopPage::recordsChanged(const ChangeNotice &) {}

void WorkshopPage::showEvent(QShowEvent *event)
{
    lookForOwn();
    Page::showEvent(event);
}

} // namespace lastrivet::ui
