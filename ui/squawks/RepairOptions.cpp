// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squawks/RepairOptions.h"

#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/WrappedText.h"

#include <QHBoxLayout>
#include <QJsonArray>
#include <QJsonDocument>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QVBoxLayout>

#include <algorithm>
#include <string>

namespace lastrivet::ui {

namespace {

/// Title, what is for it, and what is against it.
constexpr qsizetype optionWords = 3;
/// A title goes on in the next line from here: a choice does not wrap its words by itself, and
/// would make all that stands beside the list as wide.
constexpr int lettersInLine = 32;
constexpr int mostLines = 4;

/// Whether it is decided for is no part of its words.
bool sayTheSame(const Squawk::RepairOption &a, const Squawk::RepairOption &b)
{
    return a.title == b.title && a.pros == b.pros && a.cons == b.cons;
}

} // namespace

RepairOptions::RepairOptions(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_drafts(session, "squawk_repair")
    , m_rows(new QVBoxLayout)
    , m_title(new QLineEdit(this))
    , m_pros(new QLineEdit(this))
    , m_cons(new QLineEdit(this))
{
    m_title->setAccessibleName(tr("A way to repair it"));
    m_pros->setAccessibleName(tr("What is for it"));
    m_cons->setAccessibleName(tr("What is against it"));
    m_title->setPlaceholderText(tr("a way to repair it"));
    m_pros->setPlaceholderText(tr("for it"));
    m_cons->setPlaceholderText(tr("against it"));
    auto *line = new QHBoxLayout;
    for (QLineEdit *field : {m_title, m_pros, m_cons}) {
        line->addWidget(field);
        connect(field, &QLineEdit::returnPressed, this, &RepairOptions::keepLine);
        connect(field, &QLineEdit::textEdited, &m_soon, qOverload<>(&QTimer::start));
    }
    connect(&m_soon, &QTimer::timeout, this, &RepairOptions::keepDraft);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(heading(tr("Ways to repair it"), this));
    layout->addLayout(m_rows);
    layout->addLayout(line);
}

void RepairOptions::show(Id<Squawk> squawk)
{
    const Squawk *found = m_session.records()->find(squawk);
    const auto options = found ? found->repair_options : std::vector<Squawk::RepairOption>();
    if (squawk == m_squawk && options == m_shown)
        return;
    if (squawk != m_squawk) {
        keepDraft();
        setLine(fromText(m_drafts.of(std::to_string(squawk.value()))));
    }
    m_squawk = squawk;
    m_shown = options;
    clearLayout(*m_rows);
    for (std::size_t i = 0; i < options.size(); ++i)
        m_rows->addWidget(makeRow(options[i], i));
}

void RepairOptions::hideEvent(QHideEvent *event)
{
    keepDraft();
    QWidget::hideEvent(event);
}

void RepairOptions::keepDraft()
{
    if (!m_squawk)
        return;
    const QString typed = asText(line());
    const QString kept = m_drafts.keep(std::to_string(m_squawk.value()), typed);
    // What could not be read until now.
    if (typed.isEmpty() && !kept.isEmpty())
        setLine(fromText(kept));
}

/// Its words, and behind them those of the way that it is of; empty for an empty line.
QString RepairOptions::asText(const Line &line)
{
    QJsonArray words;
    const auto add = [&words](const Squawk::RepairOption &option) {
        for (const std::string &each : {option.title, option.pros, option.cons})
            words.append(QString::fromStdString(each));
    };
    add(line.words);
    if (line.edited)
        add(*line.edited);
    else if (line.words == Squawk::RepairOption())
        return {};
    return QString::fromUtf8(QJsonDocument(words).toJson(QJsonDocument::Compact));
}

RepairOptions::Line RepairOptions::fromText(const QString &text)
{
    const QJsonArray words = QJsonDocument::fromJson(text.toUtf8()).array();
    const auto option = [&words](qsizetype first) {
        const auto at = [&](qsizetype i) { return words.at(first + i).toString().toStdString(); };
        return Squawk::RepairOption{at(0), at(1), at(2), false};
    };
    Line line;
    if (words.size() >= optionWords)
        line.words = option(0);
    if (words.size() >= 2 * optionWords)
        line.edited = option(optionWords);
    return line;
}

QWidget *RepairOptions::makeRow(const Squawk::RepairOption &option, std::size_t place)
{
    auto *row = new QWidget(this);
    const QString title = toQt(option.title);
    const QString words = option.chosen ? tr("%1 (decided)").arg(title) : title;
    const int width = fontMetrics().averageCharWidth() * lettersInLine;
    const QStringList lines = wrapped(words, font(), width, mostLines);
    auto *choice = new QRadioButton(onButton(lines.join(QLatin1Char('\n'))), row);
    choice->setAccessibleName(words);
    // A decision can be taken back by pressing it again.
    choice->setAutoExclusive(false);
    choice->setChecked(option.chosen);
    choice->setEnabled(!m_session.isReadOnly());
    choice->setAccessibleDescription(reasonsFor(option));
    auto *reasons = new QLabel(reasonsFor(option), row);
    reasons->setWordWrap(true);
    reasons->setContentsMargins(22, 0, 0, 0);
    reasons->setVisible(!reasons->text().isEmpty());
    auto *text = new QVBoxLayout;
    text->setSpacing(0);
    text->addWidget(choice);
    text->addWidget(reasons);
    auto *layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(text, 1);
    connect(choice, &QRadioButton::clicked, this, [this, place] { choose(place); });
    addAct(*layout, tr("Edit"), tr("Edit %1").arg(toQt(option.title)),
           [this, place] { edit(place); });
    addAct(*layout, tr("Remove"), tr("Remove %1").arg(toQt(option.title)),
           [this, place] { remove(place); });
    return row;
}

void RepairOptions::addAct(QBoxLayout &layout, const QString &words, const QString &name,
                           const std::function<void()> &act)
{
    auto *button = flatButton(words, this);
    button->setAccessibleName(name);
    button->setEnabled(!m_session.isReadOnly());
    layout.addWidget(button, 0, Qt::AlignTop);
    connect(button, &QPushButton::clicked, this, act);
}

QString RepairOptions::reasonsFor(const Squawk::RepairOption &option) const
{
    QStringList words;
    if (!option.pros.empty())
        words.append(tr("for: %1").arg(toQt(option.pros)));
    if (!option.cons.empty())
        words.append(tr("against: %1").arg(toQt(option.cons)));
    return words.join(QStringLiteral(" · "));
}

bool RepairOptions::change(const QString &what, const std::function<void(Squawk &)> &body)
{
    const Id<Squawk> id = m_squawk;
    if (!id)
        return false;
    const QString number = toQt(m_session.records()->find(id)->number);
    return m_session.change(tr("Squawk %1: %2").arg(number, what),
                            [&](Edit &edit) { edit.update(id, body); });
}

/// What is typed in the line and not kept holds the words of another way back once; those of the
/// same way go on.
bool RepairOptions::mayEdit(const Squawk::RepairOption &option)
{
    const Line now = line();
    const bool isTyped = !sayTheSame(now.words, m_edited.value_or(Squawk::RepairOption()));
    const QString held = asText({now.words, option});
    if (!isTyped || held == m_heldBackBy)
        return true;
    m_title->setFocus();
    if (m_edited && sayTheSame(*m_edited, option))
        return false;
    m_heldBackBy = held;
    m_session.complain(tr("What is typed in the line is not kept: Enter keeps it, and the same "
                          "once more drops it."));
    return false;
}

void RepairOptions::edit(std::size_t place)
{
    if (!mayEdit(m_shown[place]))
        return;
    m_heldBackBy.clear();
    setLine({m_shown[place], m_shown[place]});
    m_title->setFocus();
    m_title->selectAll();
}

RepairOptions::Line RepairOptions::line() const
{
    return {{toStd(m_title->text()), toStd(m_pros->text()), toStd(m_cons->text()), false},
            m_edited};
}

void RepairOptions::setLine(const Line &line)
{
    m_edited = line.edited;
    m_title->setText(toQt(line.words.title));
    m_pros->setText(toQt(line.words.pros));
    m_cons->setText(toQt(line.words.cons));
}

/// What is in the line becomes one more way, or takes the place of the one being edited where
/// that is still there.
void RepairOptions::keepLine()
{
    const Squawk::RepairOption typed = line().words;
    if (typed.title.empty()) {
        if (!typed.pros.empty() || !typed.cons.empty() || m_edited)
            m_session.complain(tr("A way to repair it needs a name; what is for and against it "
                                  "is still in the line."));
        return;
    }
    const auto isEdited = [edited = m_edited](const Squawk::RepairOption &option) {
        return edited && sayTheSame(option, *edited);
    };
    const bool isChange = std::ranges::any_of(m_shown, isEdited);
    const bool isDone = change(
        isChange ? tr("repair option changed") : tr("repair option added"), [&](Squawk &squawk) {
            auto &options = squawk.repair_options;
            const auto found = std::ranges::find_if(options, isEdited);
            const bool isChosen = found != options.end() && found->chosen;
            auto &kept = found == options.end() ? options.emplace_back() : *found;
            kept = typed;
            kept.chosen = isChosen;
        });
    if (!isDone)
        return;
    setLine({});
    keepDraft();
    m_title->setFocus();
}

/// The decision becomes the plan where there is none yet: nobody types it twice.
void RepairOptions::choose(std::size_t place)
{
    const bool isTakenBack = m_shown[place].chosen;
    const QString what = isTakenBack ? tr("decision taken back") : tr("repair decided");
    const bool isDone = change(what, [&](Squawk &squawk) {
        for (std::size_t i = 0; i < squawk.repair_options.size(); ++i)
            squawk.repair_options[i].chosen = i == place && !isTakenBack;
        if (!isTakenBack && squawk.repair_plan.empty())
            squawk.repair_plan = squawk.repair_options[place].title;
    });
    // The button was pressed all the same: it shows what is on record again.
    if (!isDone) {
        m_shown.clear();
        show(m_squawk);
    }
}

void RepairOptions::remove(std::size_t place)
{
    change(tr("repair option removed"), [&](Squawk &squawk) {
        squawk.repair_options.erase(squawk.repair_options.begin() + std::ptrdiff_t(place));
    });
}

} // namespace lastrivet::ui
