// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/certificate/TenthsEditor.h"

#include "ui/convert/QtText.h"
#include "ui/widgets/NumberBox.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace lastrivet::ui {

TenthsEditor::TenthsEditor(QWidget *parent)
    : QWidget(parent)
    , m_sum(new QLabel(this))
    , m_keep(new QPushButton(tr("Keep the tenths"), this))
    , m_none(new QPushButton(tr("Mark as not applying"), this))
{
    for (NumberBox *&box : m_boxes)
        box = new NumberBox(this);
    build();
    // The boxes are made last.
    setTabOrder(m_boxes.back(), m_keep);
    setTabOrder(m_keep, m_none);
}

void TenthsEditor::build()
{
    const std::array names{tr("A: maker of kit or part"), tr("B: paid help"),
                           tr("C: builder, assembly"), tr("D: builder, fabrication")};
    auto *grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(12);
    grid->setVerticalSpacing(4);
    for (int i = 0; i < 4; ++i) {
        NumberBox *box = m_boxes[std::size_t(i)];
        box->setRange(0, 10);
        box->setButtonSymbols(QAbstractSpinBox::NoButtons);
        box->setFixedWidth(56);
        box->setAccessibleName(names[std::size_t(i)]);
        // The keyboard goes to the line inside a spin box, but Enter to the box.
        box->findChild<QLineEdit *>()->setAccessibleName(box->accessibleName());
        box->installEventFilter(this);
        auto *label = new QLabel(names[std::size_t(i)], this);
        label->setBuddy(box);
        grid->addWidget(label, i, 0);
        grid->addWidget(box, i, 1);
        connect(box, &NumberBox::valueChanged, this, &TenthsEditor::updateWords);
        connect(box, &NumberBox::valueChanged, this, &TenthsEditor::changed);
        connect(box, &NumberBox::refused, m_sum, &QLabel::setText);
    }
    m_sum->setWordWrap(true);
    m_keep->setProperty("primary", true);
    m_none->setProperty("flat", true);
    auto *buttons = new QHBoxLayout;
    buttons->addWidget(m_keep);
    buttons->addWidget(m_none);
    buttons->addStretch(1);
    grid->addWidget(m_sum, 4, 0, 1, 3);
    grid->addLayout(buttons, 5, 0, 1, 3);
    grid->setColumnStretch(2, 1);
    connect(m_keep, &QPushButton::clicked, this, &TenthsEditor::keep);
    connect(m_none, &QPushButton::clicked, this, &TenthsEditor::notApplicable);
}

void TenthsEditor::show(const credit::Tenths &tenths, bool isApplicable)
{
    m_shown = tenths;
    m_isApplicable = isApplicable;
    type(tenths);
    m_none->setVisible(isApplicable);
    updateWords();
}

void TenthsEditor::type(const credit::Tenths &tenths)
{
    const std::array each{tenths.kit, tenths.commercial, tenths.assembly, tenths.fabrication};
    for (std::size_t i = 0; i < each.size(); ++i)
        m_boxes[i]->setValue(int(each[i]));
}

credit::Tenths TenthsEditor::tenths() const
{
    return {m_boxes[0]->value(), m_boxes[1]->value(), m_boxes[2]->value(), m_boxes[3]->value()};
}

bool TenthsEditor::isBeingTyped() const
{
    return tenths() != m_shown;
}

void TenthsEditor::startTyping()
{
    m_boxes[0]->setFocus();
    m_boxes[0]->selectAll();
}

void TenthsEditor::updateWords()
{
    const auto why = credit::whyNot(tenths());
    const bool isUntouched = !m_isApplicable && !isBeingTyped();
    if (isUntouched)
        m_sum->setText(tr("Does not apply; tenths make it apply."));
    else
        m_sum->setText(why ? inWords(*why) : tr("Together 10 tenths."));
    m_keep->setEnabled(isBeingTyped());
}

void TenthsEditor::keep()
{
    for (NumberBox *box : m_boxes) {
        if (const QString why = box->takeRefused(); !why.isEmpty()) {
            m_sum->setText(why);
            box->setFocus();
            return;
        }
        box->interpretText();
    }
    if (credit::whyNot(tenths())) {
        updateWords();
        startTyping();
        return;
    }
    Q_EMIT kept();
}

bool TenthsEditor::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() == QEvent::KeyPress) {
        const int key = static_cast<const QKeyEvent *>(event)->key();
        if (key == Qt::Key_Return || key == Qt::Key_Enter) {
            keep();
            return true;
        }
        if (key == Qt::Key_Escape && isBeingTyped()) {
            show(m_shown, m_isApplicable);
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace lastrivet::ui
