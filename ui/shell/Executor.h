// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QThreadPool>

#include <functional>

class QObject;

namespace lastrivet::ui {

/// Runs work on another thread, and reports its end on the window's.
class Executor {
public:
    virtual ~Executor() = default;
    /// Runs `work`, then `done` in the thread of `context` unless `context` is gone by then.
    virtual void run(QObject *context, std::function<void()> work, std::function<void()> done) = 0;
};

/// Runs work in threads of its own; the destructor waits for what is running.
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
