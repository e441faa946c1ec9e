// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/HoldPointForm.h"

#include "ui/closings/ClosingWords.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>

#include <algorithm>

namespace lastrivet::ui {

HoldPointForm::HoldPointForm(Session &session, QWidget *parent)
    : ActForm(tr("Plan the hold point"), parent)
    , m_session(session)
    , m_kind(new QComboBox(this))
    , m_role(new QComboBox(this))
    , m_required(new QCheckBox(tr("keeps the closing open until it is signed"), this))
    , m_source(new QLineEdit(this))
{
    setTitle(tr("Another hold point for this closing"));
    for (std::size_t i = 0; i < Words<HoldPointKind>::list.size(); ++i)
        m_kind->addItem(holdPointWords(HoldPointKind(i)), int(i));
    for (std::size_t i = 0; i < Words<SignerRole>::list.size(); ++i)
        m_role->addItem(roleWords(SignerRole(i)), int(i));
    m_source->setPlaceholderText(tr("who asks for it, and where that is written"));
    addField(tr("Kind"), m_kind);
    addField(tr("Signed by the"), m_role);
    addWide(m_required);
    addField(tr("Source"), m_source);
}

void HoldPointForm::start(Id<Closing> closing)
{
    m_closing = closing;
    m_kind->setCurrentIndex(int(HoldPointKind::IndependentCheck));
    m_role->setCurrentIndex(int(SignerRole::Adviser));
    m_required->setChecked(true);
    // Undo is about what is on record from here on, not about the words of an earlier form.
    m_source->setText({});
    hint({});
    noteFields();
    m_kind->setFocus();
}

bool HoldPointForm::perform()
{
    HoldPoint point;
    point.closing_id = m_closing;
    point.kind = HoldPointKind(m_kind->currentData().toInt());
    point.signer_role = SignerRole(m_role->currentData().toInt());
    point.required = m_required->isChecked();
    point.source = toStd(m_source->text());
    const auto records = m_session.records();
    const bool isThere = std::ranges::any_of(records->hold_points, [&](const HoldPoint &known) {
        return !known.withdrawn_on && known.closing_id == m_closing && known.kind == point.kind &&
               known.signer_role == point.signer_role;
    });
    if (isThere) {
        hint(tr("This hold point is there already: %1, signed by: %2.")
                 .arg(holdPointWords(point.kind), roleWords(point.signer_role)));
        return false;
    }
    return m_session.change(tr("Hold point planned: %1").arg(holdPointWords(point.kind)),
                            [&](Edit &edit) {
                                point.planned_on = edit.today();
                                edit.put(point);
                            });
}

} // namespace lastrivet::ui
