// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <atomic>
#include <stop_token>

namespace lastrivet::ui {

/// How far long work is, written by the worker and read by the window; the window may cancel it.
class Progress {
public:
    explicit Progress(QString title)
        : m_title(std::move(title))
    {
    }

    const QString &title() const { return m_title; }

    /// Called by the worker; false when it should stop and leave nothing half done.
    bool report(qint64 done, qint64 total)
    {
        m_done = done;
        m_total = total;
        return !isCancelled();
    }
    /// For a worker that is asked to stop this way; the same as `report` answers.
    std::stop_token stopToken() const { return m_stop.get_token(); }
    /// What it brings goes on record when it is done, so that nobody leaves the project unawares.
    void markAsBringing() { m_isBringing = true; }
    bool isBringing() const { return m_isBringing; }
    bool isCancelled() const { return m_stop.stop_requested(); }
    /// Called by the worker when what it makes is there: cancelling comes too late from then on.
    void noteKept() { m_isKept = true; }
    bool isKept() const { return m_isKept; }
    void cancel() { m_stop.request_stop(); }
    qint64 done() const { return m_done; }
    /// 0 while it is not known.
    qint64 total() const { return m_total; }

private:
    const QString m_title;
    std::atomic<qint64> m_done = 0;
    std::atomic<qint64> m_total = 0;
    std::stop_source m_stop;
    std::atomic<bool> m_isKept = false;
    /// Of the window alone.
    bool m_isBringing = false;
};

} // namespace lastrivet::ui
