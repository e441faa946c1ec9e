// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLayout>

#include <memory>
#include <vector>

namespace lastrivet::ui {

/// Sets widgets side by side, and goes on in the next line where there is no room. What is wider
/// than a whole line is made as narrow as it can be.
class Flow final : public QLayout {
    Q_OBJECT

public:
    explicit Flow(QWidget *parent);
    ~Flow() override;

    void addItem(QLayoutItem *item) override;
    void insertWidget(int index, QWidget *widget);
    int count() const override { return int(m_items.size()); }
    QLayoutItem *itemAt(int index) const override;
    QLayoutItem *takeAt(int index) override;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override { return minimumSize(); }
    QSize minimumSize() const override;
    Qt::Orientations expandingDirections() const override { return {}; }
    void setGeometry(const QRect &rect) override;

private:
    int arrange(const QRect &rect, bool isReal) const;

    std::vector<std::unique_ptr<QLayoutItem>> m_items;
};

} // namespace lastrivet::ui
