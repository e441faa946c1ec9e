// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/rules/RulesDraft.h"

#include "core/base/Error.h"
#include "core/profiles/ProfileLibrary.h"
#include "core/project/acts/RulesActs.h"
#include "ui/convert/QtText.h"
#include "ui/rules/RulesWords.h"
#include "ui/shell/Session.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

namespace lastrivet::ui {

namespace {

constexpr std::string_view draftKey = "rules_draft";
constexpr std::string_view earlierKey = "rules_draft_before";
constexpr int keepAfter = 500;
constexpr qint64 longestFile = 1024 * 1024;

bool isShipped(const Profile &profile)
{
    return ProfileLibrary::shipped().find(profile.id).has_value();
}

/// Without its text, which is of before the last letter that was typed.
Profile withoutText(Profile profile)
{
    profile.json.clear();
    return profile;
}

} // namespace

RulesDraft::RulesDraft(Session &session, QObject *parent)
    : QObject(parent)
    , m_session(session)
{
    m_keeping.setSingleShot(true);
    m_keeping.setInterval(keepAfter);
    connect(&m_keeping, &QTimer::timeout, this, &RulesDraft::keep);
    takeUp();
}

RulesDraft::~RulesDraft()
{
    keep();
}

bool RulesDraft::takeUp()
{
    const LocalState kept = m_session.localState(draftKey);
    m_isRead = kept.isRead;
    m_asBegun.reset();
    if (kept.value) {
        m_profile = readDraft(*kept.value);
    } else {
        const Profile &own = m_session.project().profile();
        m_profile = withoutText(isShipped(own) ? copyOf(own) : own);
        m_asBegun = m_profile;
    }
    check();
    return m_isRead;
}

void RulesDraft::lookAgain()
{
    if (!m_isRead && isUntouched() && takeUp())
        Q_EMIT begun();
}

bool RulesDraft::mayKeep()
{
    if (m_isRead)
        return true;
    const LocalState unseen = m_session.localState(draftKey);
    m_isRead =
        unseen.isRead && (!unseen.value || m_session.keepLocalState(earlierKey, *unseen.value));
    return m_isRead;
}

Profile RulesDraft::copyOf(const Profile &profile) const
{
    return copyToEdit(profile, toStd(tr("%1, own copy").arg(toQt(profile.name))),
                      m_session.today().text());
}

void RulesDraft::check()
{
    m_fault = whyNot(m_profile, ProfileLibrary::shipped());
}

void RulesDraft::noteEdit()
{
    m_isKept = false;
    m_keeping.start();
    check();
    Q_EMIT changed();
}

void RulesDraft::keep()
{
    if (!m_isKept)
        m_isKept = mayKeep() && m_session.keepLocalState(draftKey, profileJson(m_profile));
}

void RulesDraft::replace(const Profile &profile)
{
    // What was shown for want of the draft is none to come back to.
    if (m_isRead)
        m_session.keepLocalState(earlierKey, profileJson(m_profile));
    m_profile = withoutText(profile);
    m_asBegun.reset();
    m_isKept = false;
    keep();
    check();
    Q_EMIT begun();
}

void RulesDraft::begin(const Profile &profile)
{
    replace(isShipped(profile) ? copyOf(profile) : profile);
}

void RulesDraft::beginWithLibrary(const std::string &id)
{
    try {
        begin(ProfileLibrary::standard().profile(id));
    } catch (const Fault &fault) {
        m_session.complain(fault);
    }
}

bool RulesDraft::hasEarlier() const
{
    return m_session.localState(earlierKey).value.has_value();
}

void RulesDraft::takeUpEarlier()
{
    if (const auto earlier = m_session.localState(earlierKey).value)
        replace(readDraft(*earlier));
}

bool RulesDraft::isOfProject() const
{
    return withoutText(m_session.project().profile()) == m_profile;
}

bool RulesDraft::isUntouched() const
{
    return m_asBegun == m_profile;
}

void RulesDraft::useInProject()
{
    if (m_fault)
        return;
    if (!m_session.change(tr("Rules: %1").arg(toQt(m_profile.name)),
                          [&](Edit &edit) { acts::useRules(edit, m_profile); }))
        return;
    // The project has them now.
    m_keeping.stop();
    m_isKept = mayKeep() && m_session.keepLocalState(draftKey, std::nullopt);
    Q_EMIT changed();
}

void RulesDraft::keepForOthers()
{
    const auto folder = ProfileLibrary::ownFolder();
    if (m_fault || folder.empty())
        return;
    const QDir place(pathText(folder));
    place.mkpath(QStringLiteral("."));
    writeTo(place.filePath(toQt(m_profile.id) + QStringLiteral(".json")));
}

void RulesDraft::writeTo(const QString &file)
{
    QSaveFile whole(file);
    const std::string text = profileJson(m_profile);
    const auto size = qint64(text.size());
    const bool isWritten = whole.open(QIODevice::WriteOnly) &&
                           whole.write(text.data(), size) == size && whole.commit();
    if (isWritten)
        m_session.say(tr("%1 is written.").arg(QFileInfo(file).fileName()));
    else
        m_session.complain(tr("%1 could not be written.").arg(QFileInfo(file).fileName()));
}

void RulesDraft::readFrom(const QString &file)
{
    QFile stream(file);
    if (!stream.open(QIODevice::ReadOnly) || stream.size() > longestFile) {
        m_session.complain(tr("%1 could not be read.").arg(QFileInfo(file).fileName()));
        return;
    }
    const std::string text = stream.readAll().toStdString();
    const auto read = readProfile(text);
    if (read) {
        replace(*read);
        return;
    }
    m_session.complain(tr("%1: %2", "file, what is wrong in it")
                           .arg(QFileInfo(file).fileName(), faultWords(read.reason())));
    // What can be read of it is a draft; what is wrong with it is said as with any other.
    const Profile draft = readDraft(text);
    if (draft != Profile{})
        replace(draft);
}

} // namespace lastrivet::ui
