// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QThreadPool>

#include <functional>

class QObject;

namespace lastrivet::ui {

/// Runs work away from the window, and then says so on the window's thread.
class Executor {
public:
    virtual ~Executor() = default;
    /// Runs `work`, then `done` in the thread of `context` unless that is gone by then.
    virtual void run(QObject *context, std::function<void()> work, std::function<void()> done) = 0;
};

/// Runs work in threads of its own; its end waits for what is running.
class ThreadExecutor final : public Executor {
public:
    ~ThreadExecutor() override;
    void run(QObject *context, std::function<void()> work, std::function<void()> done) override;

private:
    QThreadPool m_pool;
};

/// Runs work at once and in place: for tests.
class InlineExecutor final : public Executor {
public:
    void run(QObject *context, std::function<void()> work, std::function<void()> done) override;
};

} // namespace lastrivet::ui
