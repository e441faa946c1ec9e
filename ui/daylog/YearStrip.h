// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDate>
#include <QHash>
#include <QWidget>

namespace lastrivet::ui {

class Session;

/// The last year of work as one line of bars, a bar a day, a month beside the other.
class YearStrip final : public QWidget {
    Q_OBJECT

public:
    explicit YearStrip(Session &session, QWidget *parent = nullptr);

    void recordsChanged();
    QSize sizeHint() const override;

Q_SIGNALS:
    void dayChosen(QDate day);

protected:
    void paintEvent(QPaintEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    bool event(QEvent *event) override;

private:
    QDate dayAt(int x) const;
    int xOf(QDate day) const;
    QString wordsFor(QDate day) const;

    Session &m_session;
    QDate m_first;
    QDate m_last;
    QHash<QDate, qint64> m_minutes;
};

} // namespace lastrivet::ui
