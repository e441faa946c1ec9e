// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStyledItemDelegate>

namespace lastrivet::ui {

struct Colours;
struct ListRow;
class Theme;

/// Draws the rows of a `RowListModel`: mark, line, quieter second line, figure.
class RowDelegate final : public QStyledItemDelegate {
    Q_OBJECT

public:
    /// The height of a row in the bench view.
    static constexpr int touchRowHeight = 56;

    explicit RowDelegate(const Theme &theme, QObject *parent = nullptr);

    /// Titles may take this many lines.
    void setTitleLines(int lines) { m_titleLines = lines; }
    /// Second lines may take this many.
    void setDetailLines(int lines) { m_detailLines = lines; }
    /// Rows for gloves and for reading from two metres away.
    void setTouch() { m_isTouch = true; }
    void paint(QPainter *painter, const QStyleOptionViewItem &option,
               const QModelIndex &index) const override;
    /// Where the row's button is; empty without one.
    static QRect actionPlace(const QRect &row, const QFontMetrics &metrics, const QString &action);
    static void paintButton(QPainter &painter, const QRect &place, const QString &words,
                            const Colours &colours);
    QSize sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const override;

private:
    int titleHeight(const QStyleOptionViewItem &option, const ListRow &row) const;
    int detailHeight(const QStyleOptionViewItem &option, const ListRow &row) const;
    /// Of a text beside the mark and the button, less `figure` at its right.
    int wrappedHeight(const QStyleOptionViewItem &option, const ListRow &row, const QString &text,
                      int lines, int figure) const;
    int markSize() const;
    /// From the row's left edge.
    int leftOfWords(const ListRow &row) const;

    const Theme &m_theme;
    int m_titleLines = 1;
    int m_detailLines = 1;
    bool m_isTouch = false;
};

} // namespace lastrivet::ui
