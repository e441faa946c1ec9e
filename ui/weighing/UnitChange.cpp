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
#include <utility>
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

/// What became of a number of each unit that is another now; empty when there is none.
QString becameWords(const balance::Numbers &numbers, balance::Units from)
{
    const auto [weightUnit, armUnit] = numbers.units;
    QStringList sentences;
    const double weight = firstOf(numbers.weights);
    if (from.weight != weightUnit && weight != 0)
        sentences << becameWords(
            weightText(weight, from.weight), weightText(weight, weightUnit),
            weightText(balance::converted(weight, from.weight, weightUnit), weightUnit));
    const double arm = firstOf(numbers.arms);
    if (from.arm != armUnit && arm != 0)
        sentences << becameWords(armText(arm, from.arm), armText(arm, armUnit),
                                 armText(balance::converted(arm, from.arm, armUnit), armUnit));
    return sentences.join(QLatin1Char('\n'));
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
ActLine::Act convertAct(Session &session, Id<Record> id, const UnitChoice &choice)
{
    return [&session, id, from = choice.from, asked = choice.asked](const ActLine::Answer &) {
        const auto records = session.records();
        const Record *known = records->findLive(id);
        if (!known || balance::numbersOf(*known) != asked) {
            complainOfOthers(session);
            return true;
        }
        const RecordRef record{Record::type, id.value()};
        return session.change(convertedLabel(*records, record), [&](Edit &edit) {
            edit.update(id, [&](Record &changed) { balance::convertNumbers(changed, from); });
        });
    };
}

template <class Record>
void askAbout(Session &session, ActLine &ask, UnitChoice &choice, const ChangeNotice &notice,
              Id<Record> id)
{
    const Record *before = notice.before->findLive(id);
    const Record *after = notice.after->findLive(id);
    if (!std::exchange(choice.is_made, false) || !before || !after)
        return;
    const RecordRef record{Record::type, id.value()};
    const balance::Numbers was = balance::numbersOf(*before);
    const bool isOpen = ask.isAsking(convertWords(), {record}) && was == choice.asked;
    choice.from = isOpen ? choice.from : was.units;
    choice.asked = balance::numbersOf(*after);
    const QString words = becameWords(choice.asked, choice.from);
    if (words.isEmpty()) {
        if (isOpen)
            ask.leave();
        return;
    }
    giveBackKeyboard(ask);
    ask.ask(convertQuestion(words, record), convertAct(session, id, choice));
}

} // namespace

std::shared_ptr<UnitChoice> unitChoice(RecordForm &form)
{
    auto choice = std::make_shared<UnitChoice>();
    form.setFollow([choice](const Edit &, std::string_view field, void *) {
        choice->is_made = field == "weight_unit" || field == "arm_unit";
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

} // namespace lastrivet::ui
