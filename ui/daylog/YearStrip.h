// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDate>
#include <QHash>
#include <QWidget>

class QPainter;

namespace lastrivet::ui {

class Session;

/// A year of work as one line of bars, a bar a day, a month beside the other; the mouse or the
/// arrow keys choose a day, and its hours are told.
class YearStrip final : public QWidget {
    Q_OBJECT

public:
    explicit YearStrip(Session &session, QWidget *parent = nullptr);

    void recordsChanged();
    QSize sizeHint() const override;
    /// The day that the arrow keys chose last; the last day of the year at first.
    QDate cursorDay() const { return m_cursor; }
    /// Shows the year before, or the one after; the last year there is ends today.
    void turn(int years);
    /// The year that ends today is shown: there is none after it.
    bool isPresent() const { return m_yearsBack == 0; }

Q_SIGNALS:
    void dayChosen(QDate day);
    /// Another year is shown.
    void turned();

protected:
    void paintEvent(QPaintEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    void mouseMoveEvent(QMouseEvent *event) override;
    void leaveEvent(QEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
    void focusInEvent(QFocusEvent *event) override;
    void focusOutEvent(QFocusEvent *event) override;

private:
    QDate dayAt(int x) const;
    int xOf(QDate day) const;
    QString wordsFor(QDate day) const;
    void moveTo(QDate day);
    void nameIt();
    QDate toldDay() const;
    void paintMonths(QPainter &painter);
    void paintTold(QPainter &painter);

    Session &m_session;
    QDate m_first;
    QDate m_last;
    QDate m_cursor;
    QDate m_hovered;
    int m_yearsBack = 0;
    QHash<QDate, qint64> m_minutes;
};

} // namespace lastrivet::ui
