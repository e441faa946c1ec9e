// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/backup/DailyCopy.h"

#include "core/backup/OwnCopies.h"
#include "core/base/Clock.h"
#include "core/base/Error.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"

#include <memory>

namespace lastrivet::ui {

namespace {

constexpr int quarterOfAnHour = 15 * 60 * 1000;
/// The window is on the screen by then: copying takes the disk and half of a small computer.
constexpr int afterOpening = 2000;

} // namespace

DailyCopy::DailyCopy(Session &session, QObject *parent)
    : QObject(parent)
    , m_session(session)
{
    connect(&session, &Session::changed, this, [this] { m_isChanged = true; });
    connect(&m_timer, &QTimer::timeout, this, &DailyCopy::look);
    m_timer.start(quarterOfAnHour);
    QTimer::singleShot(afterOpening, this, &DailyCopy::look);
}

DailyCopy::~DailyCopy()
{
    if (!m_isChanged || m_session.isReadOnly())
        return;
    // Goes on when the window is gone; the end of the program waits for it.
    m_session.executor().run(
        nullptr,
        [folder = m_session.project().folder()] {
            try {
                backup::keepCopy(folder, SystemClock{}.now());
            } catch (const std::exception &) {
                // Nobody is there to be told; the records are saved, and the next day copies again.
            }
        },
        [] {});
}

void DailyCopy::look()
{
    if (!m_isCopying && !m_session.isReadOnly() &&
        backup::isCopyDue(m_session.project().folder(), SystemClock{}.now()))
        copy();
}

void DailyCopy::copy()
{
    m_isCopying = true;
    const auto fault = std::make_shared<QString>();
    m_session.executor().run(
        this,
        [folder = m_session.project().folder(), fault] {
            try {
                backup::keepCopy(folder, SystemClock{}.now());
            } catch (const std::exception &error) {
                *fault = inWords(messageOf(error));
            }
        },
        [this, fault] {
            m_isCopying = false;
            if (!fault->isEmpty())
                m_session.complain(
                    tr("The copy of the day could not be made; your records are saved. %1")
                        .arg(*fault));
        });
}

} // namespace lastrivet::ui
