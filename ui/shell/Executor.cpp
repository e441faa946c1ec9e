// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/Executor.h"

#include <QCoreApplication>
#include <QMetaObject>
#include <QPointer>

namespace lastrivet::ui {

ThreadExecutor::~ThreadExecutor()
{
    m_pool.waitForDone();
}

void ThreadExecutor::run(QObject *context, std::function<void()> work, std::function<void()> done)
{
    m_pool.start(
        [work = std::move(work), done = std::move(done), context = QPointer<QObject>(context)] {
            work();
            // The pointer is read only in the window's thread, in which the context is deleted.
            QMetaObject::invokeMethod(
                QCoreApplication::instance(),
                [done, context] {
                    if (context)
                        done();
                },
                Qt::QueuedConnection);
        });
}

void InlineExecutor::run(QObject *, std::function<void()> work, std::function<void()> done)
{
    work();
    done();
}

} // namespace lastrivet::ui
