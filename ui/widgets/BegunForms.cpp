// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/BegunForms.h"

#include "ui/shell/Session.h"
#include "ui/widgets/Unfinished.h"

#include <algorithm>
#include <utility>

namespace lastrivet::ui {

BegunForms::BegunForms(Session &session, std::vector<Unfinished *> forms)
    : m_session(session)
    , m_forms(std::move(forms))
{
}

bool BegunForms::isHeldBack(const Unfinished &form, const Purpose &purpose)
{
    QStringList what = form.contents();
    if (purpose == m_heldPurpose && what == m_heldBackBy)
        return false;
    m_heldPurpose = purpose;
    m_heldBackBy = std::move(what);
    return true;
}

bool BegunForms::mayStart(std::int64_t record, const Purpose &purpose)
{
    const auto begun =
        std::ranges::find_if(m_forms, [](const Unfinished *form) { return form->isBegun(); });
    if (begun != m_forms.end()) {
        const bool isSame = purpose == m_purpose;
        if (isSame || isHeldBack(**begun, purpose)) {
            (*begun)->takeKeyboard();
            if (!isSame)
                m_session.complain((*begun)->heldBackWords());
            return false;
        }
    }
    for (Unfinished *form : m_forms)
        form->noteLeft();
    m_heldPurpose.clear();
    m_record = record;
    m_purpose = purpose;
    return true;
}

void BegunForms::show(std::int64_t record)
{
    for (Unfinished *form : m_forms) {
        if (record != 0 && record == m_record)
            form->bringBack();
        else if (!form->isHidden())
            form->park();
    }
}

void BegunForms::drop()
{
    m_record = 0;
    m_purpose.clear();
    for (Unfinished *form : m_forms) {
        form->noteLeft();
        form->hide();
    }
}

} // namespace lastrivet::ui
