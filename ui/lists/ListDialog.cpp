// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/lists/ListDialog.h"

#include "core/base/Error.h"
#include "core/exchange/csv/CsvImport.h"
#include "core/exchange/csv/CsvPrices.h"
#include "core/records/Description.h"
#include "ui/convert/FieldText.h"
#include "ui/convert/MoneyText.h"
#include "ui/convert/QtText.h"
#include "ui/lists/ColumnChoice.h"
#include "ui/lists/ListRows.h"
#include "ui/shell/Session.h"
#include "ui/widgets/RecordLine.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTextDocument>
#include <QTreeView>

#include <algorithm>

namespace lastrivet::ui {

namespace {

QString wordsOf(const exchange::InputError &error)
{
    const QString what = asSentence(error.what);
    return error.place.empty() ? what : ListDialog::tr("%1: %2").arg(inWords(placeOf(error)), what);
}

using Fate = exchange::CsvRow::Fate;

/// The sentence, and what is odd about the money of the list.
QString withCurrencies(const QString &sentence, const exchange::CsvPlan &plan,
                       const ReadyList &list)
{
    const QString unknown = unknownCurrencyText(exchange::unknownCurrencies(plan.import));
    QStringList sentences{sentence};
    if (!unknown.isEmpty())
        sentences << unknown;
    if (list.told)
        sentences << inWords(*list.told);
    return sentences.join(QLatin1Char(' '));
}

} // namespace

ListDialog::ListDialog(Session &session, QWidget *parent)
    : QDialog(parent)
    , m_session(session)
    , m_type(new QComboBox(this))
    , m_within(new RecordLine(session, RecordType::Component, this))
    , m_shipment(new QLineEdit(this))
    , m_days(new QComboBox(this))
    , m_headings(new QCheckBox(tr("The first row holds headings"), this))
    , m_text(new QPlainTextEdit(this))
    , m_columns(new ColumnChoice(this))
    , m_rows(new ListRows(this))
    , m_view(new QTreeView(this))
    , m_summary(new QLabel(this))
    , m_take(new QPushButton(tr("Bring it in"), this))
{
    build();
    connectParts();
    showType();
}

void ListDialog::connectParts()
{
    // Typing and pasting a long list asks once, when the hand rests.
    m_soon.setSingleShot(true);
    m_soon.setInterval(200);
    connect(&m_soon, &QTimer::timeout, this, &ListDialog::readAnew);
    connect(m_text, &QPlainTextEdit::textChanged, &m_soon, qOverload<>(&QTimer::start));
    connect(m_headings, &QCheckBox::clicked, this, [this] {
        m_areHeadingsSaid = true;
        readAnew();
    });
    connect(m_type, &QComboBox::currentIndexChanged, this, &ListDialog::showType);
    connect(m_shipment, &QLineEdit::editingFinished, this, &ListDialog::planAnew);
    connect(m_days, &QComboBox::currentIndexChanged, this, [this] {
        m_areDaysSaid = true;
        planAnew();
    });
    connect(m_within, &RecordLine::chosenByPerson, this, &ListDialog::planAnew);
    connect(m_columns, &ColumnChoice::chosenChanged, this, &ListDialog::planAnew);
    connect(m_take, &QPushButton::clicked, this, &ListDialog::take);
}

ListInput ListDialog::input() const
{
    return {RecordType(m_type->currentData().toInt()),
            m_headings->isChecked(),
            exchange::DayOrder(m_days->currentData().toInt()),
            Id<Component>{m_within->chosen()},
            toStd(m_shipment->text()),
            m_session.records()->project.currency,
            m_session.today()};
}

void ListDialog::showType()
{
    m_form->setRowVisible(m_shipment, input().type == RecordType::PartLine);
    // What heads a list of one kind may be no heading for another.
    if (!m_areHeadingsSaid && !m_text->toPlainText().trimmed().isEmpty())
        guessHeadings();
    readAnew();
}

void ListDialog::setType(RecordType type)
{
    m_type->setCurrentIndex(m_type->findData(int(type)));
}

void ListDialog::setWithin(Id<Component> part)
{
    m_within->setChosen(part.value());
    planAnew();
}

void ListDialog::setShipment(const QString &name)
{
    m_shipment->setText(name);
    planAnew();
}

void ListDialog::setText(const QString &text)
{
    const bool isList = text.contains(QLatin1Char('\n')) || text.contains(QLatin1Char('\t')) ||
                        text.contains(QLatin1Char(','));
    if (isList)
        takeText(text);
}

void ListDialog::takeText(const QString &text)
{
    m_columns->forget();
    m_text->setPlainText(text);
    m_areHeadingsSaid = false;
    m_areDaysSaid = false;
    guessHeadings();
    readAnew();
}

void ListDialog::guessHeadings()
{
    m_headings->setChecked(looksLikeHeadings(m_text->toPlainText(), input().type));
}

bool ListDialog::guessDays()
{
    if (m_areDaysSaid)
        return true;
    const auto shown = exchange::orderShown(m_table, input().type, m_columns->chosen());
    const QSignalBlocker guessed(m_days);
    m_days->setCurrentIndex(
        m_days->findData(int(shown.value_or(exchange::DayOrder::YearMonthDay))));
    return shown.has_value();
}

bool ListDialog::openFile(const QString &file)
{
    QFile source(file);
    constexpr qint64 most = 16 * 1024 * 1024;
    if (!QFileInfo(file).isFile() || !source.open(QIODevice::ReadOnly) || source.size() > most) {
        say(tr("%1 cannot be read.").arg(QFileInfo(file).fileName()), false);
        return false;
    }
    const auto text = listText(source.readAll());
    if (!text) {
        say(tr("%1: %2").arg(QFileInfo(file).fileName(), wordsOf(text.reason().front())), false);
        return false;
    }
    takeText(*text);
    m_file = QFileInfo(file).fileName();
    const QStringList lines = m_text->toPlainText().split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    m_fileLines = QSet<QString>(lines.begin(), lines.end());
    return true;
}

/// Where the list comes from: the file while most of its lines stand in it.
QString ListDialog::sourceName() const
{
    const QStringList lines = m_text->toPlainText().split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    const auto known = std::ranges::count_if(
        lines, [this](const QString &line) { return m_fileLines.contains(line); });
    return 2 * known > lines.size() ? m_file : tr("a pasted list");
}

void ListDialog::browse()
{
    const QString file = QFileDialog::getOpenFileName(
        this, tr("Open a list"), {}, tr("Lists (*.csv *.tsv *.txt);;All files (*)"));
    if (!file.isEmpty())
        openFile(file);
}

void ListDialog::readAnew()
{
    m_soon.stop();
    m_table = {};
    const auto table = readList(m_text->toPlainText(), input());
    if (table) {
        m_table = *table;
        m_columns->show(m_table, input().type);
        planAnew();
        return;
    }
    if (!m_text->toPlainText().trimmed().isEmpty()) {
        say(wordsOf(table.reason().front()), false);
    } else {
        say(tr("Nothing is changed before you have seen what becomes of each row."), false);
    }
    m_columns->showNothing();
    m_rows->show({}, 1);
}

void ListDialog::planAnew()
{
    if (m_table.header.empty())
        return;
    const bool areDaysKnown = guessDays();
    const ReadyList list = readyList(m_table, m_columns->chosen(), input());
    if (const QString missing = whatIsMissing(list.columns); !missing.isEmpty()) {
        m_rows->show({}, 1);
        say(missing, false);
        return;
    }
    m_rows->show(exchange::dryRun(list.table, input().type, list.columns, m_session.project()),
                 m_headings->isChecked() ? 1 : 0);
    const int added = m_rows->countOf(Fate::Added);
    QString sentence = tr("%1 new, %2 there already, %3 blank, %4 wrong.")
                           .arg(added)
                           .arg(m_rows->countOf(Fate::AlreadyThere))
                           .arg(m_rows->countOf(Fate::Blank))
                           .arg(m_rows->countOf(Fate::Wrong));
    const auto &errors = m_rows->plan().errors;
    const QModelIndex first = m_rows->firstOf(Fate::Wrong);
    m_view->scrollTo(first);
    if (first.isValid() && !areDaysKnown)
        sentence += QLatin1Char(' ') +
                    tr("The list does not show which number of a day is its month: choose above "
                       "how days are written.");
    else if (first.isValid())
        sentence += QLatin1Char(' ') + m_rows->sentenceOf(first) + QLatin1Char(' ') +
                    tr("All rows have to be right; then all of them are taken in at once.");
    else if (!errors.empty())
        sentence += QLatin1Char(' ') + asSentence(errors.front().what);
    else
        sentence = withCurrencies(sentence, m_rows->plan(), list);
    say(sentence + m_columns->whatIsLeftOut(),
        errors.empty() && added > 0 && !m_session.isReadOnly());
}

/// One sentence for a list with other columns than such records have; empty when it has them.
QString ListDialog::whatIsMissing(const exchange::CsvColumns &columns) const
{
    const RecordType type = input().type;
    QStringList fields;
    for (const std::string_view field : exchange::unfilled(type, columns))
        fields << tr("“%1”").arg(fieldTitle(*describe(type).find(field)));
    if (fields.isEmpty())
        return {};
    return tr("No column fills %1: choose on the left which one does.")
        .arg(fields.join(QStringLiteral(", ")));
}

void ListDialog::say(const QString &sentence, bool canTake)
{
    m_summary->setText(sentence);
    m_take->setEnabled(canTake);
}

QString ListDialog::summary() const
{
    return m_summary->text();
}

void ListDialog::take()
{
    if (m_soon.isActive())
        readAnew();
    if (!m_take->isEnabled())
        return;
    const ReadyList list = readyList(m_table, m_columns->chosen(), input());
    try {
        const auto result = exchange::importCsv(m_session.project(), list.table, input().type,
                                                list.columns, toStd(sourceName()));
        if (!result) {
            say(asSentence(result.reason().front().what), false);
            return;
        }
        const QString done = tr("%n rows brought in. Undo takes all of them back.", "",
                                int(result->import.added.size()));
        Q_EMIT m_session.said(withCurrencies(done, *result, list), true);
        accept();
    } catch (const Fault &fault) {
        say(tr("Nothing was brought in. %1").arg(inWords(fault.message())), false);
    }
}

void ListDialog::reject()
{
    if (m_soon.isActive())
        readAnew();
    const QString typed = m_text->toPlainText();
    const bool isTyped = m_text->document()->isModified() && !typed.trimmed().isEmpty();
    if (!isTyped || typed == m_heldBackBy) {
        QDialog::reject();
        return;
    }
    m_heldBackBy = typed;
    say(tr("What was typed into the list is not brought in. The same once more drops it."),
        m_take->isEnabled());
}

} // namespace lastrivet::ui
