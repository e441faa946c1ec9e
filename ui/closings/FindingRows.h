// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/acts/Inspecting.h"

#include <QBoxLayout>
#include <QWidget>

#include <optional>
#include <vector>

class QComboBox;
class QLineEdit;
class QPushButton;

namespace lastrivet::ui {

class Session;

/// What the inspector found, a line each with its number on the sheet; a new line appears under the
/// last one that is filled. Several lines that are pasted become several findings.
class FindingRows final : public QWidget {
    Q_OBJECT

public:
    explicit FindingRows(Session &session, QWidget *parent = nullptr);

    /// Starts empty; the parts to choose from are these, the first one offered.
    void start(std::vector<Id<Component>> parts);
    /// Who verifies what is not typed yet.
    void setUsual(acts::Verifying verifying);
    /// Reads several lines of a sheet into rows, from the first empty one on.
    void takeLines(const QString &text);
    std::vector<acts::Finding> findings() const;
    /// One sentence why the findings cannot be kept as they are; empty when they can.
    QString whyNot() const;

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;

private:
    struct Row {
        QLineEdit *number;
        QComboBox *part;
        QLineEdit *title;
        QComboBox *severity;
        QComboBox *verifying;
        /// The day that a pasted line gives; the visit's where it gives none.
        std::optional<Moment> found_on{};
    };

    void addRow();
    QBoxLayout::Direction direction() const;
    Row makeRow(int number);
    void nameRow(const Row &row, int number) const;
    void pasteClipboard();
    static void forgetDay(Row &row);
    static void choosePart(QComboBox &box, Id<Component> part, const QString &name);

    Session &m_session;
    std::vector<Id<Component>> m_parts;
    std::vector<Row> m_rows;
    acts::Verifying m_usual = acts::Verifying::InspectorOnSite;
    QVBoxLayout *m_layout;
    QPushButton *m_paste;
};

} // namespace lastrivet::ui
