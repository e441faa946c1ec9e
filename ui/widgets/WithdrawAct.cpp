// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/WithdrawAct.h"

#include "core/project/acts/Withdrawal.h"
#include "core/records/Designation.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/ActLine.h"

#include <QCoreApplication>
#include <QStringList>

namespace lastrivet::ui {

namespace {

constexpr std::size_t namedAtMost = 6;

QString translated(const char *text)
{
    return QCoreApplication::translate("WithdrawAct", text);
}

QString names(const Records &records, const std::vector<RecordRef> &companions)
{
    QStringList list;
    for (std::size_t i = 0; i < companions.size() && i < namedAtMost; ++i)
        list.append(inWords(designated(records, companions[i])));
    if (companions.size() > namedAtMost)
        list.append(translated("and %1 more").arg(companions.size() - namedAtMost));
    return list.join(QStringLiteral("; "));
}

} // namespace

void askToWithdraw(Session &session, ActLine &ask, const std::vector<RecordRef> &records)
{
    const auto known = session.records();
    const QString name = records.size() == 1 ? asSentence(designated(*known, records.front()))
                                             : translated("%1 records").arg(records.size());
    const auto with = acts::companions(*known, records);
    QString words = translated("%1 will count nowhere any more; the journal keeps it.").arg(name);
    if (!with.empty())
        words +=
            QLatin1Char('\n') +
            translated("These name it and are withdrawn with it: %1.").arg(names(*known, with));
    const QString confirm = with.empty()
                                ? translated("Withdraw")
                                : translated("Withdraw all %1").arg(with.size() + records.size());
    ask.ask({.words = words,
             .confirm = confirm,
             .textLabel = translated("Why"),
             .textMissing = translated("A withdrawal needs its reason."),
             .of = records},
            [&session, records, name](const ActLine::Answer &answer) {
                return session.change(translated("%1 withdrawn").arg(name), [&](Edit &edit) {
                    std::vector<RecordRef> all = acts::companions(edit.records(), records);
                    all.insert(all.end(), records.begin(), records.end());
                    acts::withdraw(edit, all, toStd(answer.text));
                });
            });
}

void askToWithdraw(Session &session, ActLine &ask, RecordRef record)
{
    askToWithdraw(session, ask, std::vector{record});
}

} // namespace lastrivet::ui
