// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/certificate/CrossCheckView.h"

#include "ui/certificate/CrossCheckModel.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/PlainTable.h"
#include "ui/widgets/RecordForm.h"
#include "ui/widgets/RecordNames.h"
#include "ui/widgets/RowListView.h"
#include "ui/widgets/Section.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

namespace lastrivet::ui {

namespace {

std::vector<RecordForm::Row> factRows()
{
    return {{"name", false, CrossCheckView::tr("Project")},
            {"builder_id", false, CrossCheckView::tr("Builder")},
            {"builder_address", true, CrossCheckView::tr("Address")},
            {"aircraft_type", false, CrossCheckView::tr("Type")},
            {"designer"},
            {"model"},
            {"registration"},
            {"serial_number"},
            {"kit_number"},
            {"authority_file", false, CrossCheckView::tr("Authority's file")},
            {"maximum_weight", false, CrossCheckView::tr("Maximum weight")},
            {"weight_unit"},
            {"currency"},
            {"started_on", false, CrossCheckView::tr("Begun on")}};
}

QString gapWords(readiness::Gap gap)
{
    switch (gap) {
    case readiness::Gap::ClosingStepNotDone:
        return CrossCheckView::tr("its closing is closed, the step is not done");
    case readiness::Gap::FactoryClosingWithoutDocument:
        return CrossCheckView::tr("closed by the factory, no document on record");
    case readiness::Gap::PartWithoutClosing:
        return CrossCheckView::tr("no closing is recorded for it");
    case readiness::Gap::RecordWithoutPlace:
        return CrossCheckView::tr("names no part");
    }
    return {};
}

/// A number alone does not say what is numbered.
QString titleOf(const Records &records, RecordRef record)
{
    const QString name = shortName(records, record);
    if (record.type == RecordType::Squawk)
        return CrossCheckView::tr("Squawk %1").arg(name);
    return record.type == RecordType::Deviation ? CrossCheckView::tr("Deviation %1").arg(name)
                                                : name;
}

} // namespace

CrossCheckView::CrossCheckView(Session &session, QWidget *parent)
    : CertificatePlace(parent)
    , m_session(session)
    , m_model(new CrossCheckModel(session, this))
    , m_facts(new RecordForm(session, RecordType::Project, factRows(), this))
    , m_words(new QLabel(this))
    , m_table(new PlainTable(tr("What the papers say of the aircraft"), this))
    , m_doubles(new Section(session.theme(), tr("Serial numbers"),
                            tr("No serial number stands on two parts, and none stands otherwise on "
                               "the equipment list."),
                            this))
    , m_gaps(new Section(session.theme(), tr("To complete in the records"),
                         tr("No hole of this kind is in the records."), this))
{
    build();
    fill();
    fillGaps();
}

void CrossCheckView::build()
{
    auto *layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(24);
    layout->addWidget(buildFacts(), 5);
    layout->addWidget(buildChecks(), 9);
}

QWidget *CrossCheckView::buildFacts()
{
    auto *place = new QWidget(this);
    auto *heading = new QLabel(tr("Facts of the project"), place);
    heading->setFont(m_session.theme().font(1));
    auto *layout = new QVBoxLayout(place);
    layout->setContentsMargins(0, 0, 12, 0);
    layout->addWidget(heading);
    layout->addWidget(m_facts);
    layout->addStretch(1);
    m_facts->setCheck([](const void *record) {
        const auto &facts = *static_cast<const ProjectFacts *>(record);
        return facts.maximum_weight && *facts.maximum_weight < 0 ? tr("A weight is not below zero.")
                                                                 : QString();
    });
    m_facts->show(1);
    constexpr int leastFacts = 240;
    auto *area = scrollArea(*place, this);
    area->setMinimumWidth(leastFacts);
    return area;
}

QWidget *CrossCheckView::buildChecks()
{
    constexpr int leastTable = 180;
    auto *place = new QWidget(this);
    m_words->setWordWrap(true);
    m_table->setModel(m_model);
    m_table->setWideColumn(0);
    // What papers say is read whole; their own names go over several lines.
    m_table->wrapLines();
    m_table->setMinimumHeight(leastTable);
    auto *layout = new QVBoxLayout(place);
    layout->setContentsMargins(0, 0, 12, 0);
    layout->setSpacing(12);
    layout->addWidget(m_words);
    layout->addWidget(m_table, 1);
    layout->addWidget(m_doubles);
    layout->addWidget(m_gaps);
    connect(m_table, &PlainTable::activated, this,
            [this](const QModelIndex &index) { open(index.row()); });
    for (Section *section : {m_doubles, m_gaps})
        connect(section, &Section::chosen, &m_session, &Session::goTo);
    return scrollArea(*place, this);
}

void CrossCheckView::fill()
{
    m_model->refresh();
    m_table->fitColumns(140);
    fillDoubles();
    const auto found = certificate::disagreements(*m_session.records());
    m_disagreements = int(found.size());
    if (m_model->rowCount() == 1)
        m_words->setText(tr("No paper is on record yet. What each says of name, model, serial "
                            "number and registration is compared here."));
    else if (found.empty())
        m_words->setText(tr("What is written down from the papers agrees with the project."));
    else
        m_words->setText(
            tr("%n entries do not agree; an authority sends such papers back. Upper and lower "
               "case, spaces, hyphens and full stops do not count.",
               nullptr, m_disagreements));
}

void CrossCheckView::fillDoubles()
{
    const auto records = m_session.records();
    std::vector<ListRow> rows;
    for (const auto &disagreement : certificate::disagreements(*records)) {
        if (disagreement.record.type != RecordType::Equipment)
            continue;
        ListRow row{disagreement.record, shortName(*records, disagreement.record)};
        row.detail = asSentence(certificate::sentence(disagreement));
        row.icon = QStringLiteral("weights/must");
        rows.push_back(std::move(row));
    }
    for (const auto &same : certificate::sameSerialNumbers(*records)) {
        ListRow row{same.second, shortName(*records, same.second)};
        row.detail = tr("has the serial number %1, as %2 has")
                         .arg(toQt(same.serial_number), shortName(*records, same.first));
        row.icon = QStringLiteral("weights/must");
        rows.push_back(std::move(row));
    }
    m_doubles->setRows(std::move(rows));
}

void CrossCheckView::fillGaps()
{
    const auto records = m_session.records();
    std::vector<ListRow> rows;
    for (const auto &gap : m_session.answer()->to_complete) {
        ListRow row{gap.record, titleOf(*records, gap.record)};
        row.detail = gapWords(gap.what);
        row.icon = QStringLiteral("weights/should");
        rows.push_back(std::move(row));
    }
    m_gaps->setRows(std::move(rows));
}

void CrossCheckView::open(int row)
{
    if (const auto document = m_model->documentAt(row))
        m_session.goTo({RecordType::CertificateDocument, document.value()});
    else
        m_facts->edit("name");
}

bool CrossCheckView::showRecord(RecordRef record)
{
    return record.type == RecordType::Project && record.id > 0;
}

void CrossCheckView::apply(const ChangeNotice &notice)
{
    m_facts->apply(notice);
    fill();
}

void CrossCheckView::applyAnswer()
{
    fillGaps();
}

QWidget *CrossCheckView::firstFocus()
{
    return m_table;
}

} // namespace lastrivet::ui
