// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stores/ExpenseBoard.h"

#include "core/base/CaseFold.h"
#include "ui/convert/MoneyText.h"
#include "ui/convert/QtText.h"
#include "ui/parts/SectionList.h"
#include "ui/shell/Session.h"
#include "ui/stores/AmountBars.h"
#include "ui/stores/StoreSections.h"
#include "ui/widgets/Layouts.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>

#include <algorithm>

namespace lastrivet::ui {

namespace {

QString monthName(std::chrono::year_month month)
{
    const QDate first(int(month.year()), int(unsigned(month.month())), 1);
    return QLocale().toString(first, QStringLiteral("MMM yyyy"));
}

} // namespace

ExpenseBoard::ExpenseBoard(Session &session, QWidget *parent)
    : StoreBoard(session, storeroom::expenseSection(), parent)
    , m_category(new QComboBox(this))
    , m_words(new QLabel(this))
    , m_total(heading({}, this))
    , m_currency(new QComboBox(this))
    , m_categories(new AmountBars(session.theme(), tr("Expenses by category"), this))
    , m_months(new AmountColumns(session.theme(), tr("Expenses by month"), this))
{
    build();
    refresh();
}

void ExpenseBoard::build()
{
    m_category->setAccessibleName(tr("Category"));
    makeNarrow(*m_category, 20);
    m_currency->setAccessibleName(tr("Currency of the bars"));
    m_words->setWordWrap(true);
    m_total->setWordWrap(true);
    auto *line = new QHBoxLayout;
    line->addWidget(m_category);
    line->addWidget(m_words, 1);
    head().addLayout(line);
    aside().addWidget(m_total);
    aside().addWidget(m_currency);
    aside().addWidget(heading(tr("By category"), this));
    aside().addWidget(m_categories);
    aside().addWidget(heading(tr("By month"), this));
    aside().addWidget(m_months);
    list().setWhenEmpty(tr("No expense on record. Write one below: the amount first, then what it "
                           "was for."));
    list().setCompleting([this](Edit &edit, std::int64_t id) {
        if (m_category->currentIndex() <= 0 || m_category->currentData().toString().isEmpty())
            return;
        edit.update(Id<Expense>{id}, [&](Expense &expense) {
            if (expense.category.empty())
                expense.category = toStd(m_category->currentText());
        });
    });
    connect(m_category, &QComboBox::activated, this, [this] {
        m_wanted = m_category->currentData();
        filter();
    });
    connect(m_currency, &QComboBox::activated, this, [this] {
        draw(stores::spending(*this->session().records(), this->session().today()));
    });
}

void ExpenseBoard::showRecord(RecordRef record)
{
    if (!list().isListed(record)) {
        m_wanted = QVariant();
        m_category->setCurrentIndex(0);
        filter();
    }
    StoreBoard::showRecord(record);
}

/// Categories are told apart as they are added up: without regard to capitals.
void ExpenseBoard::filter()
{
    if (m_category->currentIndex() <= 0) {
        list().setFilter({});
        return;
    }
    const std::string wanted = m_category->currentData().toString().toStdString();
    list().setFilter([this, wanted](std::int64_t id) {
        const Expense *expense = session().records()->find(Id<Expense>{id});
        return expense && folded(expense->category) == wanted;
    });
}

void ExpenseBoard::offer(const stores::Spending &spending)
{
    const QVariant before = m_category->currentData();
    m_category->clear();
    m_category->addItem(tr("all categories"));
    for (const stores::CategorySum &sum : spending.categories)
        m_category->addItem(sum.category.empty() ? tr("without a category") : toQt(sum.category),
                            toQt(folded(sum.category)));
    m_category->setCurrentIndex(m_wanted.isValid() ? std::max(0, m_category->findData(m_wanted))
                                                   : 0);
    // Its name may be gone, or there again; the list follows what the box says.
    if (m_category->currentData() != before)
        filter();
    const QString currency = m_currency->currentText();
    m_currency->clear();
    for (const Money &amount : spending.total.amounts())
        m_currency->addItem(toQt(amount.currency));
    const int usual = m_currency->findText(toQt(session().records()->project.currency));
    const int again = m_currency->findText(currency);
    m_currency->setCurrentIndex(std::max({0, again >= 0 ? again : usual}));
    m_currency->setVisible(m_currency->count() > 1);
}

void ExpenseBoard::say(const stores::Spending &spending)
{
    QStringList sentences;
    sentences << tr("%n expenses", nullptr, int(spending.expenses));
    if (spending.without_receipt > 0)
        sentences << tr("%n without a receipt", nullptr, int(spending.without_receipt));
    if (spending.below_zero > 0)
        sentences << tr("%n below zero, as they were brought in", nullptr,
                        int(spending.below_zero));
    if (spending.total.isBeyond())
        sentences << tr("amounts too large to be added up are left out");
    m_words->setText(sentences.join(QStringLiteral("; ")));
    m_total->setText(spending.expenses == 0
                         ? QString()
                         : tr("In all: %1").arg(moneyText(spending.total.amounts())));
}

void ExpenseBoard::draw(const stores::Spending &spending)
{
    const std::string currency = toStd(m_currency->currentText());
    std::vector<NamedAmount> categories;
    for (const stores::CategorySum &sum : spending.categories) {
        if (const auto amount = sum.sum.of(currency); amount != 0)
            categories.push_back(
                {sum.category.empty() ? tr("without a category") : toQt(sum.category),
                 {amount, currency}});
    }
    std::ranges::stable_sort(categories, std::ranges::greater{},
                             [](const NamedAmount &amount) { return amount.amount.minor_units; });
    m_categories->show(std::move(categories));
    std::vector<NamedAmount> months;
    for (const stores::MonthSum &sum : spending.months)
        months.push_back({monthName(sum.month), {sum.sum.of(currency), currency}});
    m_months->show(std::move(months));
}

void ExpenseBoard::refresh()
{
    const auto spending = stores::spending(*session().records(), session().today());
    offer(spending);
    say(spending);
    draw(spending);
}

} // namespace lastrivet::ui
