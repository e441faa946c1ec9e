// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stores/MaterialBoard.h"

#include "core/stores/Lots.h"
#include "ui/convert/QtText.h"
#include "ui/parts/SectionList.h"
#include "ui/shell/Session.h"
#include "ui/stores/StoreRows.h"
#include "ui/stores/StoreSections.h"
#include "ui/stores/UseForm.h"
#include "ui/widgets/RecordForm.h"
#include "ui/widgets/RowListView.h"
#include "ui/widgets/Section.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTreeView>

namespace lastrivet::ui {

namespace {

std::vector<RecordForm::Row> useRowsToEdit()
{
    return {{"used_on"},     {"mix_ratio"},   {"cure_minutes"},   {"sample"},     {"sample_on"},
            {"accepted_on"}, {"accepted_by"}, {"accepted_basis"}, {"may_follow"}, {"note", true}};
}

} // namespace

MaterialBoard::MaterialBoard(Session &session, QWidget *parent)
    : StoreBoard(session, storeroom::lotSection(), parent)
    , m_words(new QLabel(this))
    , m_used(new QPushButton(tr("Used on…"), this))
    , m_use(new UseForm(session, this))
    , m_begun(session, {m_use})
    , m_cures(new Section(session.theme(), tr("Still curing"), tr("Nothing cures at the moment."),
                          this))
    , m_uses(new Section(session.theme(), tr("Used for"), tr("Nothing on record."), this))
    , m_form(new RecordForm(session, RecordType::MaterialUse, useRowsToEdit(), this))
{
    build();
    refresh();
}

void MaterialBoard::build()
{
    m_words->setWordWrap(true);
    m_uses->setShortLength(8);
    // What a cure keeps open stands at the end.
    m_cures->list().setDetailLines(3);
    m_form->hide();
    auto *caution = new QLabel(tr("Cure times hold at the temperature of the data sheet; in a cold "
                                  "workshop they are longer."),
                               this);
    caution->setWordWrap(true);
    caution->setForegroundRole(QPalette::PlaceholderText);
    auto *line = new QHBoxLayout;
    line->addWidget(m_words, 1);
    line->addWidget(m_used);
    head().addLayout(line);
    aside().addWidget(m_use);
    aside().addWidget(m_cures);
    aside().addWidget(caution);
    aside().addWidget(m_uses);
    aside().addWidget(m_form);
    list().setWhenEmpty(
        tr("No lot on record. Write the material below, then its lot number and its "
           "last good day."));
    connect(m_used, &QPushButton::clicked, this, &MaterialBoard::startUse);
    connect(m_use, &ActForm::left, this, [this] {
        m_use->hide();
        list().view().setFocus();
    });
    connect(m_use, &ActForm::wanted, this, [this] {
        showRecord({RecordType::MaterialLot, m_begun.record()});
    });
    connect(m_cures, &Section::chosen, this,
            [this](RecordRef record) { this->session().goTo(record); });
    connect(m_uses, &Section::chosen, this, [this](RecordRef record) { showUse(record.id); });
}

void MaterialBoard::showRecord(RecordRef record)
{
    if (record.type != RecordType::MaterialUse) {
        StoreBoard::showRecord(record);
        return;
    }
    const MaterialUse *use = session().records()->find(Id<MaterialUse>{record.id});
    if (!use || use->lot_ids.empty())
        return;
    StoreBoard::showRecord({RecordType::MaterialLot, use->lot_ids.front().value()});
    showUse(record.id);
}

void MaterialBoard::showUse(std::int64_t use)
{
    m_form->show(use);
    m_form->setVisible(use != 0);
}

void MaterialBoard::startUse()
{
    const std::int64_t lot = list().current().id;
    if (lot != 0 && !session().isReadOnly() && m_begun.mayStart(lot, {lot}))
        m_use->start(Id<MaterialLot>{lot});
}

void MaterialBoard::refresh()
{
    const auto records = session().records();
    const Id<MaterialLot> lot{list().current().id};
    const MaterialLot *chosen = records->find(lot);
    // An undo may have taken away what is being written about.
    if (m_begun.record() != 0 && !records->findLive(Id<MaterialLot>{m_begun.record()}))
        m_begun.drop();
    m_begun.show(lot.value());
    int expired = 0;
    int soon = 0;
    for (const MaterialLot &each : records->material_lots) {
        if (each.withdrawn_on)
            continue;
        const auto state = stores::standingOf(each, *records, session().today()).state;
        expired += state == stores::LotState::Expired ? 1 : 0;
        soon += state == stores::LotState::ExpiresSoon ? 1 : 0;
    }
    m_words->setText(expired + soon == 0
                         ? tr("No lot has expired or will within 30 days.")
                         : tr("%1 expired, %2 within 30 days.").arg(expired).arg(soon));
    m_used->setEnabled(chosen && !session().isReadOnly());
    m_cures->setRows(cureRows(session()));
    m_uses->setVisible(chosen != nullptr);
    m_uses->setRows(useRows(session(), lot));
    const MaterialUse *shown = records->findLive(Id<MaterialUse>{m_form->shown()});
    const bool isOfLot = shown && std::find(shown->lot_ids.begin(), shown->lot_ids.end(), lot) !=
                                      shown->lot_ids.end();
    showUse(isOfLot ? m_form->shown() : 0);
}

} // namespace lastrivet::ui
