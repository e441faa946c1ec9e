// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/HoldPointPanel.h"

#include "core/project/acts/ClosingUp.h"
#include "core/readiness/SignOffs.h"
#include "ui/closings/ClosingWords.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Flow.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/RecordNames.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace lastrivet::ui {

namespace {

/// `name` tells the button from the others, and is the same when the panel is made anew.
QPushButton *smallButton(const QString &words, const QString &about, const QString &name,
                         QWidget *parent)
{
    auto *button = flatButton(words, parent);
    button->setObjectName(name);
    button->setAccessibleName(withColon(words, about));
    return button;
}

QString nameOf(const char *act, Id<HoldPoint> point)
{
    return QStringLiteral("%1 %2").arg(QLatin1String(act)).arg(point.value());
}

} // namespace

HoldPointPanel::HoldPointPanel(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_points(new QVBoxLayout(this))
{
    m_points->setContentsMargins(0, 0, 0, 0);
    m_points->setSpacing(Theme::space);
}

void HoldPointPanel::show(Id<Closing> closing)
{
    const QString focused = forgetButtons();
    clearLayout(*m_points);
    fill(closing);
    auto *same = focused.isEmpty() ? nullptr : findChild<QPushButton *>(focused);
    if (!same)
        return;
    // The layout shows it later; what is not shown takes no keyboard.
    if (same->parentWidget() != this)
        same->parentWidget()->show();
    same->show();
    same->setFocus();
}

/// The name of the button that has the keyboard, or nothing; the buttons that are about to go keep
/// theirs no longer.
QString HoldPointPanel::forgetButtons()
{
    QString focused;
    for (QPushButton *button : findChildren<QPushButton *>()) {
        if (button == window()->focusWidget())
            focused = button->objectName();
        button->setObjectName({});
    }
    return focused;
}

void HoldPointPanel::fill(Id<Closing> closing)
{
    const Closing *record = m_session.records()->find(closing);
    const bool isClosed = record && acts::isClosed(*record, m_session.now());
    bool isAny = false;
    for (const HoldPoint &point : m_session.records()->hold_points) {
        if (point.closing_id != closing || point.withdrawn_on)
            continue;
        addPoint(point, isClosed);
        isAny = true;
    }
    if (!isAny)
        m_points->addWidget(new QLabel(tr("This closing has no hold points."), this));
    if (m_session.isReadOnly() || isClosed || !record || record->made_by == MadeBy::Factory)
        return;
    auto *plan = smallButton(tr("Plan another"), tr("hold point"), QStringLiteral("plan"), this);
    connect(plan, &QPushButton::clicked, this, &HoldPointPanel::planWanted);
    m_points->addWidget(plan, 0, Qt::AlignLeft);
}

void HoldPointPanel::addPoint(const HoldPoint &point, bool isClosed)
{
    const auto *signature =
        readiness::latestSignOff(*m_session.records(), point.id, m_session.now());
    auto *words = new QLabel(this);
    words->setWordWrap(true);
    words->setTextFormat(Qt::PlainText);
    const QString kind = holdPointWords(point.kind);
    QString title = kind;
    title[0] = title[0].toUpper();
    const QString head = point.required ? tr("%1, by the %2") : tr("%1, by the %2, if wished");
    QString stands = standing(point, signature);
    if (signature && !isClosed && isOutdated(point))
        stands += QLatin1Char('\n') + tr("out of date: something was changed after it");
    words->setText(head.arg(title, roleWords(point.signer_role)) + QLatin1Char('\n') + stands);
    words->setToolTip(sourceWords(point.source));
    m_points->addWidget(words);
    if (!m_session.isReadOnly())
        addButtons(point, signature, isClosed);
}

void HoldPointPanel::addButtons(const HoldPoint &point, const SignOff *signature, bool isClosed)
{
    auto *row = new QWidget(this);
    auto *buttons = new Flow(row);
    const QString kind = holdPointWords(point.kind);
    const auto id = point.id;
    // What is signed after closing is a late acceptance, which has a place of its own.
    if (!isClosed) {
        auto *sign =
            smallButton(signature ? tr("Sign again") : tr("Sign"), kind, nameOf("sign", id), this);
        connect(sign, &QPushButton::clicked, this, [this, id] { Q_EMIT signWanted(id); });
        buttons->addWidget(sign);
    } else if (!signature && !point.waived_on) {
        auto *sign = smallButton(tr("Signed before the closing"), kind, nameOf("sign", id), this);
        connect(sign, &QPushButton::clicked, this, [this, id] { Q_EMIT signWanted(id); });
        buttons->addWidget(sign);
    }
    if (signature && !isClosed && isOutdated(point))
        addAnswerButtons(*buttons, point);
    if (signature) {
        auto *withdraw = smallButton(tr("Withdraw signature"), kind, nameOf("withdraw", id), this);
        connect(withdraw, &QPushButton::clicked, this,
                [this, which = signature->id] { Q_EMIT withdrawWanted(which); });
        buttons->addWidget(withdraw);
    } else if (!point.waived_on && !isClosed) {
        auto *waive = smallButton(tr("Waive"), kind, nameOf("waive", id), this);
        connect(waive, &QPushButton::clicked, this, [this, id] { Q_EMIT waiveWanted(id); });
        buttons->addWidget(waive);
    }
    m_points->addWidget(row);
    m_points->addSpacing(Theme::space);
}

bool HoldPointPanel::isOutdated(const HoldPoint &point) const
{
    const auto *answer = m_session.answer()->closing(point.closing_id);
    return answer && std::ranges::any_of(answer->blockers, [&](const readiness::Blocker &blocker) {
               return blocker.rule == readiness::Rule::OutdatedSignOff &&
                      blocker.record.id == point.id.value();
           });
}

void HoldPointPanel::addAnswerButtons(QLayout &buttons, const HoldPoint &point)
{
    const QString kind = holdPointWords(point.kind);
    const auto id = point.id;
    auto *page = smallButton(tr("What changed since"), kind, nameOf("changes", id), this);
    auto *answer = smallButton(tr("Answered by message"), kind, nameOf("answer", id), this);
    connect(page, &QPushButton::clicked, this, [this, id] { Q_EMIT changesWanted(id); });
    connect(answer, &QPushButton::clicked, this, [this, id] { Q_EMIT answerWanted(id); });
    buttons.addWidget(page);
    buttons.addWidget(answer);
}

QString HoldPointPanel::standing(const HoldPoint &point, const SignOff *signature) const
{
    const auto records = m_session.records();
    if (point.waived_on)
        return tr("waived on %1 by %2: %3")
            .arg(dateText(*point.waived_on), personName(*records, point.waived_by),
                 toQt(point.waived_why));
    if (!signature)
        return tr("not signed");
    QString words =
        tr("%1 on %2 by %3, %4")
            .arg(resultWords(signature->result), dateText(*signature->signed_on),
                 personName(*records, signature->person_id), seenWords(signature->seen));
    if (!signature->remarks.empty())
        words += QStringLiteral(". ") + toQt(signature->remarks);
    if (!signature->scan_id && point.signer_role != SignerRole::Builder)
        words += tr(" (no signed sheet on record)");
    return words;
}

} // namespace lastrivet::ui
