// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/SectionActs.h"

#include "core/project/acts/BulletinActs.h"
#include "core/project/acts/DeviationActs.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/ActLine.h"
#include "ui/widgets/RecordNames.h"

#include <QCoreApplication>

#include <array>

// What people do with deviations and bulletins.
namespace lastrivet::ui::sections {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("SectionActs", text);
}

QString nameOf(const Session &session, RecordType type, std::int64_t id)
{
    return shortName(*session.records(), {type, id});
}

template <class Record> const Record &find(const Records &records, std::int64_t id)
{
    return *records.find(Id<Record>{id});
}

void askAbout(Session &session, ActLine &ask, std::int64_t id)
{
    const QString name = nameOf(session, RecordType::Deviation, id);
    ask.ask({.words = tr("Deviation %1: who was asked?").arg(name),
             .confirm = tr("Note it"),
             .dayLabel = tr("On"),
             .personLabel = tr("Asked of"),
             .person = find<Deviation>(*session.records(), id).asked_of},
            [&session, id, name](const ActLine::Answer &answer) {
                return session.change(tr("Deviation %1: asked").arg(name), [&](Edit &edit) {
                    acts::askAbout(edit, Id<Deviation>{id}, answer.person, *answer.day);
                });
            });
}

void decide(Session &session, ActLine &ask, std::int64_t id, Decision decision,
            const QString &words, const QString &confirm)
{
    const Deviation &deviation = find<Deviation>(*session.records(), id);
    ask.ask({.words = words,
             .confirm = confirm,
             .textLabel = tr("On what basis"),
             .text = toQt(deviation.basis),
             .dayLabel = tr("On"),
             .personLabel = tr("By"),
             .person = deviation.asked_of,
             .textMissing = tr("A decision needs its basis: a letter, a drawing, a paragraph.")},
            [&session, id, decision, words](const ActLine::Answer &answer) {
                return session.change(words, [&](Edit &edit) {
                    acts::decide(edit, Id<Deviation>{id}, decision, answer.person, *answer.day,
                                 toStd(answer.text));
                });
            });
}

void approve(Session &session, ActLine &ask, std::int64_t id)
{
    decide(session, ask, id, Decision::Approved,
           tr("Deviation %1: approved").arg(nameOf(session, RecordType::Deviation, id)),
           tr("Mark as approved"));
}

void reject(Session &session, ActLine &ask, std::int64_t id)
{
    decide(session, ask, id, Decision::Rejected,
           tr("Deviation %1: rejected").arg(nameOf(session, RecordType::Deviation, id)),
           tr("Mark as rejected"));
}

using OnDay = void (*)(Edit &edit, Id<Deviation> deviation, Moment on);

void onDay(Session &session, ActLine &ask, std::int64_t id, const QString &words, OnDay act)
{
    ask.ask({.words = words, .confirm = tr("Note it"), .dayLabel = tr("On")},
            [&session, id, words, act](const ActLine::Answer &answer) {
                return session.change(
                    words, [&](Edit &edit) { act(edit, Id<Deviation>{id}, *answer.day); });
            });
}

void buildSo(Session &session, ActLine &ask, std::int64_t id)
{
    onDay(session, ask, id,
          tr("Deviation %1: built so").arg(nameOf(session, RecordType::Deviation, id)),
          acts::buildSo);
}

void undoDeviation(Session &session, ActLine &ask, std::int64_t id)
{
    onDay(session, ask, id,
          tr("Deviation %1: put back as drawn").arg(nameOf(session, RecordType::Deviation, id)),
          acts::undoDeviation);
}

void applies(Session &session, ActLine &, std::int64_t id)
{
    session.change(tr("Bulletin %1: applies").arg(nameOf(session, RecordType::Bulletin, id)),
                   [&](Edit &edit) { acts::setApplies(edit, Id<Bulletin>{id}, true, {}); });
}

void appliesNot(Session &session, ActLine &ask, std::int64_t id)
{
    const QString label =
        tr("Bulletin %1: does not apply").arg(nameOf(session, RecordType::Bulletin, id));
    ask.ask({.words = label,
             .confirm = tr("Mark as not applying"),
             .textLabel = tr("Because"),
             .text = toQt(find<Bulletin>(*session.records(), id).basis),
             .textMissing = tr("Whoever reads this later wants to know why.")},
            [&session, id, label](const ActLine::Answer &answer) {
                return session.change(label, [&](Edit &edit) {
                    acts::setApplies(edit, Id<Bulletin>{id}, false, toStd(answer.text));
                });
            });
}

void comply(Session &session, ActLine &ask, std::int64_t id)
{
    const QString label =
        tr("Bulletin %1: complied with").arg(nameOf(session, RecordType::Bulletin, id));
    ask.ask({.words = label,
             .confirm = tr("Mark as complied with"),
             .textLabel = tr("How, and by which paper"),
             .text = toQt(find<Bulletin>(*session.records(), id).basis),
             .dayLabel = tr("On"),
             .textMissing = tr("What was done, and by which paper?")},
            [&session, id, label](const ActLine::Answer &answer) {
                return session.change(label, [&](Edit &edit) {
                    acts::comply(edit, Id<Bulletin>{id}, *answer.day, toStd(answer.text));
                });
            });
}

constexpr std::array forDeviations{
    SectionAct{QT_TRANSLATE_NOOP("SectionActs", "Note who was asked…"),
               [](const Records &records, std::int64_t id) {
                   return !find<Deviation>(records, id).decided_on;
               },
               askAbout},
    SectionAct{QT_TRANSLATE_NOOP("SectionActs", "Mark as approved…"),
               [](const Records &records, std::int64_t id) {
                   const Deviation &deviation = find<Deviation>(records, id);
                   return !deviation.decided_on || deviation.decision != Decision::Approved;
               },
               approve},
    SectionAct{QT_TRANSLATE_NOOP("SectionActs", "Mark as rejected…"),
               [](const Records &records, std::int64_t id) {
                   return !find<Deviation>(records, id).decided_on;
               },
               reject},
    SectionAct{QT_TRANSLATE_NOOP("SectionActs", "Mark as built so…"),
               [](const Records &records, std::int64_t id) {
                   const Deviation &deviation = find<Deviation>(records, id);
                   return !deviation.built_on || deviation.undone_on;
               },
               buildSo},
    SectionAct{QT_TRANSLATE_NOOP("SectionActs", "Put back…"),
               [](const Records &records, std::int64_t id) {
                   const Deviation &deviation = find<Deviation>(records, id);
                   return deviation.built_on && !deviation.undone_on;
               },
               undoDeviation},
};
constexpr std::array forBulletins{
    SectionAct{QT_TRANSLATE_NOOP("SectionActs", "Mark as applying"),
               [](const Records &records, std::int64_t id) {
                   return find<Bulletin>(records, id).applies != true;
               },
               applies},
    SectionAct{QT_TRANSLATE_NOOP("SectionActs", "Mark as not applying…"),
               [](const Records &records, std::int64_t id) {
                   const Bulletin &bulletin = find<Bulletin>(records, id);
                   return bulletin.applies != false && !bulletin.complied_on;
               },
               appliesNot},
    SectionAct{QT_TRANSLATE_NOOP("SectionActs", "Mark as complied with…"),
               [](const Records &records, std::int64_t id) {
                   return !find<Bulletin>(records, id).complied_on;
               },
               comply},
};

} // namespace

std::span<const SectionAct> deviationActs()
{
    return forDeviations;
}

std::span<const SectionAct> bulletinActs()
{
    return forBulletins;
}

void attachToDeviation(Edit &edit, std::int64_t id, Id<Media> file)
{
    acts::attach(edit, Id<Deviation>{id}, file);
}

void attachToBulletin(Edit &edit, std::int64_t id, Id<Media> file)
{
    acts::attach(edit, Id<Bulletin>{id}, file);
}

} // namespace lastrivet::ui::sections
