// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/certificate/PaperPanel.h"

#include "core/project/acts/PaperActs.h"
#include "ui/certificate/PaperModel.h"
#include "ui/certificate/ScanList.h"
#include "ui/convert/QtText.h"
#include "ui/journal/HistoryButton.h"
#include "ui/shell/Session.h"
#include "ui/widgets/ActLine.h"
#include "ui/widgets/Flow.h"
#include "ui/widgets/ProjectFiles.h"
#include "ui/widgets/RecordForm.h"
#include "ui/widgets/Section.h"
#include "ui/widgets/WithdrawAct.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <optional>

namespace lastrivet::ui {

namespace {

using certificate::PaperState;

std::vector<RecordForm::Row> formRows()
{
    return {{"number"},
            {"edition"},
            {"asked_on", false, PaperPanel::tr("Asked for on")},
            {"received_on", false, PaperPanel::tr("Here since")},
            {"expires_on", false, PaperPanel::tr("Valid until")},
            {"name_as_written", false, PaperPanel::tr("Builder's name on it")},
            {"model_as_written", false, PaperPanel::tr("Model on it")},
            {"serial_as_written", false, PaperPanel::tr("Serial number on it")},
            {"registration_as_written", false, PaperPanel::tr("Registration on it")},
            {"note", true}};
}

} // namespace

PaperPanel::PaperPanel(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_heading(new QLabel(this))
    , m_needed(new QLabel(this))
    , m_source(new QLabel(this))
    , m_state(new QLabel(this))
    , m_here(new QPushButton(tr("Mark as here…"), this))
    , m_asked(new QPushButton(tr("Mark as asked for…"), this))
    , m_newer(new QPushButton(tr("A newer one…"), this))
    , m_write(new QPushButton(tr("Write down what it says"), this))
    , m_withdraw(new QPushButton(tr("Withdraw"), this))
    , m_ask(new ActLine(session, this))
    , m_form(new RecordForm(session, RecordType::CertificateDocument, formRows(), this))
    , m_scans(new ScanList(session, tr("Scans of it"), this))
    , m_others(new Section(session.theme(), tr("All records of it"), {}, this))
{
    m_form->setHappened({"asked_on", "received_on"});
    build();
}

void PaperPanel::build()
{
    m_heading->setFont(m_session.theme().font(1));
    for (QLabel *label : {m_heading, m_needed, m_source, m_state})
        label->setWordWrap(true);
    m_source->setForegroundRole(QPalette::PlaceholderText);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 4, 16, 12);
    layout->setSpacing(8);
    for (QWidget *part : std::initializer_list<QWidget *>{
             m_heading, m_needed, m_source, m_state, buildActs(), m_ask, m_form, m_scans, m_others})
        layout->addWidget(part);
    layout->addStretch(1);
    connect(m_ask, &ActLine::ended, this, &PaperPanel::finished);
    connect(m_ask, &ActLine::wanted, this, [this] {
        Q_EMIT begunWanted(m_ask->aboutWhich(), Id<CertificateDocument>{m_ask->aboutId()});
    });
    connect(m_scans, &ScanList::filesOffered, this, &PaperPanel::attach);
    connect(m_scans, &ScanList::takenOff, this, [this](qint64 id) { takeOff(Id<Media>{id}); });
    connect(m_others, &Section::chosen, this,
            [this](RecordRef record) { showRecord(Id<CertificateDocument>{record.id}); });
}

QWidget *PaperPanel::buildActs()
{
    auto *acts = new QWidget(this);
    auto *flow = new Flow(acts);
    m_here->setProperty("primary", true);
    m_withdraw->setProperty("flat", true);
    for (QPushButton *button : {m_here, m_asked, m_newer, m_write, m_withdraw})
        flow->addWidget(button);
    flow->addWidget(new HistoryButton(
        [this]() -> std::optional<RecordRef> {
            if (!m_document)
                return std::nullopt;
            return RecordRef{RecordType::CertificateDocument, m_document.value()};
        },
        acts));
    connect(m_asked, &QPushButton::clicked, this, &PaperPanel::askFor);
    connect(m_newer, &QPushButton::clicked, this, &PaperPanel::askFor);
    connect(m_here, &QPushButton::clicked, this, &PaperPanel::receive);
    connect(m_write, &QPushButton::clicked, this, &PaperPanel::startRecord);
    connect(m_withdraw, &QPushButton::clicked, this, &PaperPanel::withdraw);
    return acts;
}

void PaperPanel::show(certificate::Paper paper)
{
    const bool isOther = paper.key != m_paper.key;
    // What is asked of a document without a record is not asked of the one that came.
    if (paper.record && m_ask->aboutWhich() == paper.key && m_ask->aboutId() == 0)
        m_ask->leave();
    const bool isNewer = paper.record != m_paper.record;
    m_paper = paper;
    m_heading->setText(listLine(paper.title));
    m_needed->setText(neededWords(paper));
    m_source->setText(paper.source.empty() ? QString()
                                           : tr("Source: %1").arg(sourceWords(paper.source)));
    m_source->setVisible(!paper.source.empty());
    m_state->setText(stateWords());
    showRecord(isOther || isNewer || !m_session.records()->findLive(m_document) ? paper.record
                                                                                : m_document);
}

/// What counts, and that a newer one is on its way.
QString PaperPanel::stateWords() const
{
    const auto records = m_session.records();
    const QString counts = tr("%1.").arg(asSentence(certificate::inWords(m_paper, *records)));
    if (m_paper.state != PaperState::Here && m_paper.state != PaperState::Expired)
        return counts;
    std::optional<Moment> asked;
    for (const CertificateDocument &document : records->certificate_documents) {
        if (document.withdrawn_on || document.key != m_paper.key || document.received_on ||
            !document.asked_on)
            continue;
        if (!asked || after(*document.asked_on, *asked))
            asked = document.asked_on;
    }
    return asked ? counts + QLatin1Char(' ') +
                       tr("A newer one was asked for on %1.").arg(dateText(asked))
                 : counts;
}

void PaperPanel::showEarlier(Id<CertificateDocument> document)
{
    if (document)
        showRecord(document);
}

void PaperPanel::showRecord(Id<CertificateDocument> document)
{
    if (document != m_document) {
        // Keeps what is being typed for it, which is a change of the records.
        m_form->settle();
    }
    m_document = document;
    // What is asked is asked of the record that was shown.
    m_ask->follow({{RecordType::CertificateDocument, document.value()}}, m_paper.key);
    const auto records = m_session.records();
    const CertificateDocument *record = records->findLive(document);
    const bool canWrite = !m_session.isReadOnly();
    const bool isCounting = document == m_paper.record;
    m_form->show(record ? document.value() : 0);
    m_form->setVisible(record);
    m_scans->setVisible(record);
    if (record)
        m_scans->show(record->media_ids);
    const bool isThere = record && record->received_on;
    m_here->setVisible(!isThere);
    m_asked->setVisible(!record || (!record->asked_on && !isThere));
    m_newer->setVisible(isThere && isCounting);
    m_write->setVisible(!record);
    m_withdraw->setVisible(record);
    for (QPushButton *button : {m_here, m_asked, m_newer, m_write, m_withdraw})
        button->setEnabled(canWrite);
    showOthers();
}

void PaperPanel::showOthers()
{
    const auto records = m_session.records();
    std::vector<ListRow> rows;
    for (const CertificateDocument &document : records->certificate_documents) {
        if (document.withdrawn_on || document.key != m_paper.key)
            continue;
        ListRow row{{RecordType::CertificateDocument, document.id.value()},
                    document.number.empty() ? tr("no number") : toQt(document.number)};
        row.detail = document.received_on ? tr("here since %1").arg(dateText(document.received_on))
                     : document.asked_on  ? tr("asked for on %1").arg(dateText(document.asked_on))
                                          : QString();
        row.figure = document.id == m_paper.record ? tr("counts") : QString();
        rows.push_back(std::move(row));
    }
    m_others->setVisible(rows.size() > 1);
    m_others->setRows(std::move(rows));
}

void PaperPanel::apply(const ChangeNotice &notice)
{
    m_form->apply(notice);
}

void PaperPanel::askFor()
{
    const QString title = listLine(m_paper.title);
    m_ask->ask({.words = tr("%1: asked for").arg(title),
                .confirm = tr("Mark as asked for"),
                .dayLabel = tr("On")},
               [this, title, id = m_document, key = m_paper.key](const ActLine::Answer &answer) {
                   return m_session.change(tr("%1: asked for").arg(title), [&](Edit &edit) {
                       const auto *begun = edit.records().findLive(id);
                       if (begun && !begun->received_on)
                           edit.update(id, [&](CertificateDocument &document) {
                               document.asked_on = answer.day;
                           });
                       else
                           acts::askForPaper(edit, key, *answer.day);
                   });
               });
}

void PaperPanel::receive()
{
    const QString title = listLine(m_paper.title);
    const auto records = m_session.records();
    const auto *record = records->findLive(m_document);
    m_ask->ask({.words = tr("%1: here").arg(title),
                .confirm = tr("Mark as here"),
                .textLabel = tr("Number on it, if any"),
                .text = record ? toQt(record->number) : QString(),
                .dayLabel = tr("Since")},
               [this, title, id = m_document, key = m_paper.key](const ActLine::Answer &answer) {
                   return m_session.change(tr("%1: here").arg(title), [&](Edit &edit) {
                       acts::receivePaper(edit, key, id, *answer.day, toStd(answer.text));
                   });
               });
}

/// For what is known of a paper before it is asked for, or where no day is.
void PaperPanel::startRecord()
{
    m_session.change(tr("%1: begun").arg(listLine(m_paper.title)),
                     [&](Edit &edit) { acts::addPaper(edit, m_paper.key); });
    m_form->edit("number");
}

void PaperPanel::attach(const QStringList &files)
{
    attachFiles(m_session, listLine(m_paper.title), files,
                [this](Edit &edit, Id<Media> file) { acts::attachScan(edit, m_document, file); });
}

void PaperPanel::takeOff(Id<Media> file)
{
    m_session.change(tr("%1: scan taken off").arg(listLine(m_paper.title)),
                     [&](Edit &edit) { acts::detachScan(edit, m_document, file); });
}

void PaperPanel::withdraw()
{
    askToWithdraw(m_session, *m_ask, {RecordType::CertificateDocument, m_document.value()});
}

} // namespace lastrivet::ui
