// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/weighing/UnitChange.h"

#include "ui/shell/Session.h"
#include "ui/weighing/WeightText.h"
#include "ui/widgets/ActLine.h"
#include "ui/widgets/RecordForm.h"
#include "ui/widgets/RecordNames.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <string_view>
#include <vector>

namespace lastrivet::ui {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("Weighing", text);
}

QString becameWords(const QString &before, const QString &now, const QString &converted)
{
    return tr("The numbers stay as they were typed: %1 has become %2. If %1 was right, convert "
              "them, and it is %3.")
        .arg(before, now, converted);
}

/// The first number that is not nothing; 0 when there is none.
double firstOf(const std::vector<double> &numbers)
{
    const auto number =
        std::find_if(numbers.begin(), numbers.end(), [](double value) { return value != 0; });
    return number == numbers.end() ? 0 : *number;
}

/// What became of a weight and an arm that were typed in other units; empty when there is none.
QString becameWords(const balance::Numbers &numbers, balance::Units from)
{
    const auto [weightUnit, armUnit] = numbers.units;
    QStringList lines;
    const double weight = firstOf(numbers.weights);
    if (from.weight != weightUnit && weight != 0)
        lines << becameWords(
            weightText(weight, from.weight), weightText(weight, weightUnit),
            weightText(balance::converted(weight, from.weight, weightUnit), weightUnit));
    const double arm = firstOf(numbers.arms);
    if (from.arm != armUnit && arm != 0)
        lines << becameWords(armText(arm, from.arm), armText(arm, armUnit),
                             armText(balance::converted(arm, from.arm, armUnit), armUnit));
    return lines.join(QLatin1Char('\n'));
}

void complainOfOthers(Session &session)
{
    session.complain(tr("The numbers have changed since that was asked."));
}

QString convertedLabel(const Records &records, RecordRef record)
{
    return tr("%1: numbers converted").arg(shortName(records, record));
}

QString convertWords()
{
    return tr("Convert the numbers");
}

QString leaveWords()
{
    return tr("Leave them as typed");
}

ActLine::Question convertQuestion(const QString &words, RecordRef record)
{
    return {.words = words, .confirm = convertWords(), .of = {record}, .leave = leaveWords()};
}

/// The keyboard goes back to the unit, and not to a button that takes a line out.
void giveBackKeyboard(ActLine &ask)
{
    QWidget *unit = ask.window()->focusWidget();
    if (unit && !ask.isAncestorOf(unit))
        QObject::connect(
            &ask, &ActLine::ended, unit, [unit] { unit->setFocus(); }, Qt::SingleShotConnection);
}

template <class Record>
balance::Numbers numbersBefore(const Record &before, const balance::Numbers &)
{
    return balance::numbersOf(before);
}

balance::Numbers numbersBefore(const Equipment &before, const balance::Numbers &after)
{
    return balance::numbersOf(before, after.units);
}

template <class Record>
void askAbout(Session &session, ActLine &ask, UnitChoice &choice, const ChangeNotice &notice,
              Id<Record> id)
{
    const Record *before = notice.before->findLive(id);
    const Record *after = notice.after->findLive(id);
    if (!before || !after)
        return;
    const RecordRef record{Record::type, id.value()};
    const balance::Numbers asked = balance::numbersOf(*after);
    const balance::Numbers was = numbersBefore(*before, asked);
    const bool isAskedStill =
        !choice.words.isEmpty() && ask.askedWords() == choice.words && choice.asked == was;
    const balance::Units from = isAskedStill ? choice.from : was.units;
    choice = {false, becameWords(asked, from), asked, from};
    if (choice.words.isEmpty()) {
        if (isAskedStill)
            ask.drop();
        return;
    }
    giveBackKeyboard(ask);
    ask.ask(convertQuestion(choice.words, record), [&session, id, record, from,
                                                    asked](const ActLine::Answer &) {
        const auto records = session.records();
        const Record *known = records->findLive(id);
        if (!known || balance::numbersOf(*known) != asked) {
            complainOfOthers(session);
            return true;
        }
        return session.change(convertedLabel(*records, record), [&](Edit &edit) {
            edit.update(id, [&](Record &changed) { balance::convertNumbers(changed, from); });
        });
    });
}

} // namespace

std::shared_ptr<UnitChoice> unitChoice(RecordForm &form)
{
    auto choice = std::make_shared<UnitChoice>();
    form.setFollow([choice](const Edit &, std::string_view field, void *) {
        choice->isChosen = field == "weight_unit" || field == "arm_unit";
    });
    return choice;
}

void askToConvert(Session &session, ActLine &ask, UnitChoice &choice, const ChangeNotice &notice,
                  Id<Weighing> weighing)
{
    askAbout(session, ask, choice, notice, weighing);
}

void askToConvert(Session &session, ActLine &ask, UnitChoice &choice, const ChangeNotice &notice,
                  Id<LoadingCase> loading)
{
    askAbout(session, ask, choice, notice, loading);
}

void askToConvert(Session &session, ActLine &ask, UnitChoice &choice, const ChangeNotice &notice,
                  Id<Envelope> envelope)
{
    askAbout(session, ask, choice, notice, envelope);
}

void askToConvert(Session &session, ActLine &ask, UnitChoice &choice, const ChangeNotice &notice,
                  Id<Equipment> equipment)
{
    askAbout(session, ask, choice, notice, equipment);
}

} // namespace lastrivet::ui
