// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/ClosingView.h"

#include "core/project/acts/ClosingUp.h"
#include "core/project/acts/Signing.h"
#include "core/readiness/SignOffs.h"
#include "ui/closings/CheckPanel.h"
#include "ui/closings/CloseForm.h"
#include "ui/closings/ClosingHead.h"
#include "ui/closings/ClosingWords.h"
#include "ui/closings/HoldPointForm.h"
#include "ui/closings/HoldPointPanel.h"
#include "ui/closings/LedgerView.h"
#include "ui/closings/PacketTask.h"
#include "ui/closings/ReasonForm.h"
#include "ui/closings/SignOffForm.h"
#include "ui/convert/QtText.h"
#include "ui/convert/UsualFolders.h"
#include "ui/photos/PhotoIntake.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/RecordNames.h"
#include "ui/widgets/SheetBox.h"

#include <QCheckBox>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QResizeEvent>
#include <QScrollArea>
#include <QVBoxLayout>

#include <vector>

namespace lastrivet::ui {

namespace {

/// Below this width hold points and list stand under the ledger instead of beside it.
constexpr int stackedBelow = 820;

} // namespace

ClosingView::ClosingView(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_head(new ClosingHead(session, this))
    , m_onlyOpen(new QCheckBox(tr("Only what is not met"), this))
    , m_ledger(new LedgerView(session.theme(), this))
    , m_points(new HoldPointPanel(session, this))
    , m_checks(new CheckPanel(session, this))
    , m_history(new QLabel(this))
    , m_signOff(new SignOffForm(session, this))
    , m_closeForm(new CloseForm(session, this))
    , m_reason(new ReasonForm(session, this))
    , m_plan(new HoldPointForm(session, this))
    , m_begun(session, {m_signOff, m_closeForm, m_reason, m_plan})
    , m_intake(new PhotoIntake(session, this))
    , m_body(nullptr)
{
    build();
    connectParts();
}

ClosingView::~ClosingView()
{
    // What is copied already must not wait for a view that is gone.
    m_intake->finish();
}

void ClosingView::build()
{
    auto *inner = new QWidget;
    auto *left = new QVBoxLayout;
    left->setSpacing(Theme::space);
    left->addWidget(m_onlyOpen);
    left->addWidget(m_ledger, 1);
    m_body = new QBoxLayout(QBoxLayout::LeftToRight);
    m_body->setSpacing(24);
    m_body->addLayout(left, 3);
    m_body->addLayout(buildSide(), 2);
    auto *whole = new QVBoxLayout(inner);
    whole->setContentsMargins(24, 12, 24, 8);
    whole->addWidget(m_head);
    for (ActForm *form : forms()) {
        form->setMaximumWidth(720);
        form->hide();
        connect(form, &ActForm::left, this, &ClosingView::leaveForm);
        connect(form, &ActForm::wanted, this,
                [this] { Q_EMIT begunWanted(Id<Closing>{m_begun.record()}); });
        whole->addWidget(form);
    }
    whole->addLayout(m_body, 1);
    auto *scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setWidget(inner);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(scroll);
}

QLayout *ClosingView::buildSide()
{
    auto *side = new QVBoxLayout;
    side->setSpacing(8);
    side->addWidget(heading(tr("Hold points"), this));
    side->addWidget(m_points);
    m_history->setWordWrap(true);
    m_history->setTextFormat(Qt::PlainText);
    side->addWidget(m_history);
    m_checks->setMinimumHeight(200);
    side->addWidget(m_checks, 1);
    side->addStretch(0);
    return side;
}

std::vector<ActForm *> ClosingView::forms() const
{
    return {m_signOff, m_closeForm, m_reason, m_plan};
}

void ClosingView::connectParts()
{
    connect(m_onlyOpen, &QCheckBox::toggled, m_ledger, &LedgerView::setOnlyOpen);
    connect(m_ledger, &LedgerView::recordWanted, &m_session, &Session::goTo);
    connect(m_ledger, &LedgerView::mendWanted, this, &ClosingView::mend);
    connect(m_points, &HoldPointPanel::signWanted, this, &ClosingView::startSigning);
    connect(m_points, &HoldPointPanel::waiveWanted, this, &ClosingView::startWaiving);
    connect(m_points, &HoldPointPanel::withdrawWanted, this, &ClosingView::startWithdrawing);
    connect(m_points, &HoldPointPanel::changesWanted, this, &ClosingView::writeChanges);
    connect(m_points, &HoldPointPanel::answerWanted, this, &ClosingView::startAnswer);
    connect(m_points, &HoldPointPanel::planWanted, this, &ClosingView::startPlanning);
    connect(m_head, &ClosingHead::backWanted, this, &ClosingView::backWanted);
    connect(m_head, &ClosingHead::closeWanted, this, &ClosingView::startClosing);
    connect(m_head, &ClosingHead::acceptWanted, this, &ClosingView::startLateAcceptance);
    connect(m_head, &ClosingHead::visitWanted, this, [this] { Q_EMIT visitWanted(m_closing); });
    connect(m_head, &ClosingHead::packetWanted, this, [this] { Q_EMIT packetWanted(m_closing); });
}

void ClosingView::show(Id<Closing> closing)
{
    if (closing != m_closing) {
        // The keyboard is not left in what goes out of sight.
        for (const ActForm *form : forms()) {
            if (form->isVisible())
                m_ledger->setFocus();
        }
        m_begun.show(closing.value());
    }
    m_closing = closing;
    refresh();
}

void ClosingView::setBackWords(const QString &words)
{
    m_head->setBackWords(words);
}

void ClosingView::refresh()
{
    const auto records = m_session.records();
    if (m_begun.record() != 0 && !records->findLive(Id<Closing>{m_begun.record()}))
        m_begun.drop();
    const Closing *closing = records->findLive(m_closing);
    const auto *answer = m_session.answer()->closing(m_closing);
    if (!closing || !answer)
        return;
    m_head->show(*closing, *answer);
    m_points->show(m_closing);
    m_checks->show(m_closing);
    m_history->setText(history(*closing));
    m_history->setVisible(!m_history->text().isEmpty());
    orderStops();
    // An answer of an older snapshot may name records that are gone by now.
    if (m_session.isAnswerCurrent())
        m_ledger->show(
            {records, &m_session.project().profile(), *answer, m_session.answer()->as_of});
}

/// As it is read: the hold points' buttons are made anew each time, behind all that was there.
void ClosingView::orderStops()
{
    std::vector<QWidget *> places{m_head};
    for (ActForm *form : forms())
        places.push_back(form);
    places.insert(places.end(), {m_onlyOpen, m_ledger, m_points, m_checks});
    setTabOrderOf(places);
}

/// Whole sentences: other languages put the person elsewhere.
QString ClosingView::eventWords(bool isClosed, bool isApproximate, const QString &day,
                                const QString &person)
{
    if (person.isEmpty() && isApproximate)
        return (isClosed ? tr("Closed about %1") : tr("Opened about %1")).arg(day);
    if (person.isEmpty())
        return (isClosed ? tr("Closed on %1") : tr("Opened on %1")).arg(day);
    if (isApproximate)
        return (isClosed ? tr("Closed about %1 by %2") : tr("Opened about %1 by %2"))
            .arg(day, person);
    return (isClosed ? tr("Closed on %1 by %2") : tr("Opened on %1 by %2")).arg(day, person);
}

QString ClosingView::history(const Closing &closing) const
{
    const auto records = m_session.records();
    QStringList lines;
    for (const auto &event : closing.events) {
        const bool isClosed = event.closed_on.has_value();
        const auto moment = isClosed ? *event.closed_on : *event.opened_on;
        const QString line = eventWords(isClosed, event.approximate, dateText(moment),
                                        personName(*records, event.by));
        lines << (event.reason.empty() ? line : tr("%1: %2").arg(line, toQt(event.reason)));
    }
    for (const auto id : closing.late_acceptances) {
        if (const SignOff *late = records->findLive(id))
            lines << tr("Looked at afterwards on %1 by %2: %3")
                         .arg(dateText(late->signed_on), personName(*records, late->person_id),
                              resultWords(late->result));
    }
    return lines.join(QLatin1Char('\n'));
}

bool ClosingView::startForm(ActForm &form, Purpose purpose, std::int64_t record)
{
    if (!m_begun.mayStart(m_closing.value(), {std::int64_t(purpose), record}))
        return false;
    leaveForm();
    form.show();
    return true;
}

void ClosingView::leaveForm()
{
    for (ActForm *form : forms()) {
        if (form->isVisible() && isVisible())
            m_ledger->setFocus();
        form->hide();
    }
}

void ClosingView::startSigning(Id<HoldPoint> point)
{
    if (startForm(*m_signOff, Purpose::Sign, point.value()))
        m_signOff->startFor(*m_session.records()->find(point));
}

void ClosingView::startAnswer(Id<HoldPoint> point)
{
    if (startForm(*m_signOff, Purpose::Answer, point.value()))
        m_signOff->startAnswer(*m_session.records()->find(point));
}

void ClosingView::startLateAcceptance()
{
    if (startForm(*m_signOff, Purpose::Accept, m_closing.value()))
        m_signOff->startLateAcceptance(*m_session.records()->find(m_closing));
}

void ClosingView::startWaiving(Id<HoldPoint> point)
{
    if (startForm(*m_reason, Purpose::Waive, point.value()))
        m_reason->startWaiving(*m_session.records()->find(point));
}

void ClosingView::startWithdrawing(Id<SignOff> signature)
{
    if (startForm(*m_reason, Purpose::Withdraw, signature.value()))
        m_reason->startWithdrawing(*m_session.records()->find(signature));
}

void ClosingView::startPlanning()
{
    if (startForm(*m_plan, Purpose::Plan, m_closing.value()))
        m_plan->start(m_closing);
}

void ClosingView::startClosing()
{
    const Closing &closing = *m_session.records()->find(m_closing);
    const bool isClosed = acts::isClosed(closing, m_session.now());
    if (!startForm(*m_closeForm, isClosed ? Purpose::Reopen : Purpose::Close, m_closing.value()))
        return;
    if (isClosed)
        m_closeForm->startReopening(closing);
    else
        m_closeForm->startClosing(closing);
}

void ClosingView::mend(Mend mend, RecordRef record)
{
    // The ledger may be of an answer that is older than an undo.
    if (!m_session.records()->find(record.type, record.id))
        return;
    if (mend != Mend::None && !m_session.mayChange())
        return;
    switch (mend) {
    case Mend::None:
        return;
    case Mend::AskForVisit:
        Q_EMIT visitWanted(m_closing);
        return;
    case Mend::Sign:
        return startSigning(Id<HoldPoint>{record.id});
    case Mend::AddSheet:
        return attachSheet(Id<HoldPoint>{record.id});
    case Mend::AddPhoto:
        return choosePhotos();
    case Mend::Tick:
        return m_checks->tick(Id<Check>{record.id}, true);
    case Mend::StepDone:
        return markStepDone(Id<Step>{record.id});
    }
}

void ClosingView::attachSheet(Id<HoldPoint> point)
{
    const auto *signature = readiness::latestSignOff(*m_session.records(), point, m_session.now());
    if (!signature)
        return;
    const auto id = signature->id;
    SheetBox sheet(m_session);
    sheet.choose();
    if (!sheet.hasFile())
        return;
    sheet.change(tr("Signed sheet added"),
                 [&](Edit &edit, Id<Media> taken) { acts::attachSheet(edit, id, taken); });
}

void ClosingView::choosePhotos()
{
    addPhotos(
        QFileDialog::getOpenFileNames(this, tr("Photographs of the inside"), picturesFolder(),
                                      tr("Pictures (*.jpg *.jpeg *.png *.heic);;All files (*)")));
}

void ClosingView::addPhotos(const QStringList &files)
{
    const Closing *closing = m_session.records()->findLive(m_closing);
    if (!closing)
        return;
    m_intake->takeIn(files,
                     {{RecordType::Closing, m_closing.value()},
                      {RecordType::Component, closing->component_id.value()}},
                     {Shows::Interior});
}

void ClosingView::writeChanges(Id<HoldPoint> point)
{
    const QString file = askForPdf(this, m_session, changesName(m_session, point));
    if (!file.isEmpty())
        makeChangesPage(m_session, point, file);
}

void ClosingView::markStepDone(Id<Step> step)
{
    m_session.change(
        tr("Step done: %1").arg(toQt(m_session.records()->find(step)->title)),
        [&](Edit &edit) { edit.update(step, [&](Step &copy) { copy.done_on = edit.today(); }); });
}

void ClosingView::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        Q_EMIT backWanted();
    else
        QWidget::keyPressEvent(event);
}

void ClosingView::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    m_body->setDirection(event->size().width() < stackedBelow ? QBoxLayout::TopToBottom
                                                              : QBoxLayout::LeftToRight);
}

} // namespace lastrivet::ui
