// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/ShowsBar.h"

#include "core/project/acts/PhotoActs.h"
#include "ui/convert/FieldText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Flow.h"
#include "ui/widgets/MediaModel.h"

#include <QPushButton>

#include <algorithm>

namespace lastrivet::ui {

QString nameOf(const Session &session, const std::vector<Id<Media>> &media)
{
    const Media *one = media.size() == 1 ? session.records()->find(media.front()) : nullptr;
    return one ? mediaTitle(*one) : ShowsBar::tr("%n photos", nullptr, int(media.size()));
}

ShowsBar::ShowsBar(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
{
    auto *flow = new Flow(this);
    for (std::size_t i = 0; i < Words<Shows>::list.size(); ++i) {
        const QString what = plainWord(Words<Shows>::list[i]);
        auto *button = new QPushButton(tr("%1 %2").arg(i + 1).arg(what), this);
        button->setAccessibleName(what);
        button->setCheckable(true);
        button->setEnabled(!session.isReadOnly());
        flow->addWidget(button);
        m_buttons.push_back(button);
        connect(button, &QPushButton::clicked, this, [this, i] { toggle(Shows(i)); });
    }
}

bool ShowsBar::allShow(Shows what) const
{
    const auto records = m_session.records();
    return !m_media.empty() && std::ranges::all_of(m_media, [&](Id<Media> id) {
        const Media *media = records->find(id);
        return media && media->shows.contains(what);
    });
}

void ShowsBar::show(const std::vector<Id<Media>> &media)
{
    m_media = media;
    for (std::size_t i = 0; i < m_buttons.size(); ++i)
        m_buttons[i]->setChecked(allShow(Shows(i)));
}

void ShowsBar::toggle(Shows what)
{
    if (m_media.empty() || m_session.isReadOnly())
        return;
    const bool isShown = !allShow(what);
    const QString label = isShown ? tr("%1: shows %2") : tr("%1: does not show %2");
    m_session.change(label.arg(nameOf(m_session, m_media), plainWord(word(what))),
                     [&](Edit &edit) {
                         for (const auto media : m_media)
                             acts::setShown(edit, media, what, isShown);
                     });
}

} // namespace lastrivet::ui
