// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/WithdrawAct.h"

#include "core/project/acts/Withdrawal.h"
#include "core/records/Designation.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/ActLine.h"
#include "ui/widgets/RecordNames.h"

#include <QCoreApplication>

#include <algorithm>

namespace lastrivet::ui {

namespace {

QString translated(const char *text)
{
    return QCoreApplication::translate("WithdrawAct", text);
}

/// What names a photograph or a paper of these, and does not go `with` them for another reason.
std::vector<RecordRef> stayingWithout(const Records &all, const std::vector<RecordRef> &records,
                                      const std::vector<RecordRef> &with)
{
    auto naming = acts::namingFiles(all, records);
    std::erase_if(naming, [&](RecordRef record) {
        return std::ranges::find(with, record) != with.end() ||
               std::ranges::find(records, record) != records.end();
    });
    return naming;
}

} // namespace

void askToWithdraw(Session &session, ActLine &ask, const std::vector<RecordRef> &records)
{
    const auto known = session.records();
    const QString name = records.size() == 1 ? asSentence(spoken(*known, records.front()))
                                             : translated("%1 records").arg(records.size());
    const auto with = acts::companions(*known, records);
    QString words = translated("%1 will count nowhere any more; the journal keeps it.").arg(name) +
                    whichOf(*known, records);
    if (!with.empty())
        words +=
            QLatin1Char('\n') +
            translated("These name it and are withdrawn with it: %1.").arg(namesOf(*known, with));
    const auto staying = stayingWithout(*known, records, with);
    if (!staying.empty())
        words +=
            QLatin1Char('\n') +
            translated("These name it and stay, without it: %1.").arg(namesOf(*known, staying));
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
                    acts::letGoOfFiles(edit, records);
                });
            });
}

void askToWithdraw(Session &session, ActLine &ask, RecordRef record)
{
    askToWithdraw(session, ask, std::vector{record});
}

} // namespace lastrivet::ui
