// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPlainTextEdit>

namespace lastrivet::ui {

/// Several lines of text, as high as what is in them; Tab goes on, Ctrl+Enter and leaving finish.
class LongText final : public QPlainTextEdit {
    Q_OBJECT

public:
    explicit LongText(QWidget *parent = nullptr);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

Q_SIGNALS:
    void finished();

protected:
    void focusOutEvent(QFocusEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;

private:
    void fit();
};

} // namespace lastrivet::ui
