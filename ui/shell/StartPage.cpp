// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/StartPage.h"

#include "core/base/Error.h"
#include "ui/convert/QtText.h"
#include "ui/shell/NewProjectForm.h"
#include "ui/shell/RecentProjects.h"
#include "ui/shell/Theme.h"
#include "ui/widgets/Layouts.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QShowEvent>
#include <QVBoxLayout>

namespace lastrivet::ui {

StartPage::StartPage(const Theme &theme, const Clock &clock, QWidget *parent)
    : QWidget(parent)
    , m_complaint(wrappedLabel({}, this))
    , m_demoPlace(new QWidget(this))
    , m_recent(new QVBoxLayout)
    , m_right(new QVBoxLayout)
    , m_clock(clock)
{
    m_complaint->hide();
    QLayout *left = buildInvitation(theme);
    buildDemo();
    m_right->addStretch(1);
    auto *inner = new QWidget;
    auto *columns = new QHBoxLayout(inner);
    columns->setContentsMargins(48, 48, 48, 24);
    columns->setSpacing(48);
    columns->addLayout(left, 1);
    columns->addLayout(m_right, 1);
    auto *scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(inner);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(scroll);
    setDemo({});
}

QLayout *StartPage::buildHead(const Theme &theme)
{
    auto *title = new QLabel(tr("Lastrivet"), this);
    title->setFont(theme.font(4));
    auto *mark = new QLabel(this);
    mark->setPixmap(QIcon(QStringLiteral(":/icons/lastrivet.svg")).pixmap(56, 56));
    auto *head = new QHBoxLayout;
    head->setSpacing(16);
    head->addWidget(mark);
    head->addWidget(title, 1);
    return head;
}

void StartPage::buildDemo()
{
    auto *demo = new QPushButton(tr("Open the demo"), m_demoPlace);
    auto *layout = new QVBoxLayout(m_demoPlace);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(wrappedLabel(tr("An invented aeroplane, two and a half years in, to look "
                                      "around and try everything."),
                                   m_demoPlace));
    layout->addWidget(demo, 0, Qt::AlignLeft);
    connect(demo, &QPushButton::clicked, this, &StartPage::openDemo);
}

QLayout *StartPage::buildInvitation(const Theme &theme)
{
    auto *open = new QPushButton(tr("Open a project folder…"), this);
    connect(open, &QPushButton::clicked, this, &StartPage::browseWanted);
    auto *restore = new QPushButton(tr("Restore a backup…"), this);
    connect(restore, &QPushButton::clicked, this, &StartPage::restoreWanted);
    auto *left = new QVBoxLayout;
    left->setSpacing(12);
    left->addLayout(buildHead(theme));
    left->addWidget(wrappedLabel(tr("What was built, what was found, what must stay open, and who "
                                    "signed: the records of one aircraft, in one folder."),
                                 this));
    left->addWidget(m_complaint);
    left->addLayout(m_recent);
    left->addWidget(open, 0, Qt::AlignLeft);
    left->addWidget(restore, 0, Qt::AlignLeft);
    left->addWidget(m_demoPlace);
    left->addStretch(1);
    return left;
}

void StartPage::setRecent(const RecentProjects &recent)
{
    clearLayout(*m_recent);
    m_newest = nullptr;
    const QStringList folders = recent.folders();
    if (!folders.isEmpty())
        m_recent->addWidget(heading(tr("Open again"), this));
    for (const QString &folder : folders) {
        auto *button = new QPushButton(recent.label(folder), this);
        button->setToolTip(folder);
        m_recent->addWidget(button, 0, Qt::AlignLeft);
        if (!m_newest)
            m_newest = button;
        connect(button, &QPushButton::clicked, this,
                [this, folder] { Q_EMIT folderWanted(folder); });
    }
}

void StartPage::setDemo(const Demo &demo)
{
    m_demo = demo;
    m_demoPlace->setVisible(demo.isThere());
}

void StartPage::openDemo()
{
    try {
        Q_EMIT folderWanted(m_demo.open(m_clock));
    } catch (const Fault &fault) {
        complain(inWords(fault.message()));
    }
}

void StartPage::complain(const QString &words)
{
    m_complaint->setText(words);
    m_complaint->setVisible(!words.isEmpty());
}

void StartPage::startNew()
{
    form().start();
}

NewProjectForm &StartPage::form()
{
    if (!m_form) {
        m_form = new NewProjectForm(m_clock, this);
        m_right->insertWidget(0, m_form);
        connect(m_form, &NewProjectForm::made, this, &StartPage::folderWanted);
    }
    return *m_form;
}

void StartPage::showEvent(QShowEvent *event)
{
    form();
    QWidget::showEvent(event);
    if (!event->spontaneous())
        takeKeyboard();
}

void StartPage::takeKeyboard()
{
    if (m_newest) {
        // A button made just now is not visible before the next events, and could get no focus.
        m_newest->show();
        m_newest->setFocus();
    } else if (m_form) {
        m_form->start();
    }
}

} // namespace lastrivet::ui
