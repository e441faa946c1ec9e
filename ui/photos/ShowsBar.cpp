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

namespace {

bool allShow(const Records &records, const std::vector<Id<Media>> &media, Shows what)
{
    return !media.empty() && std::ranges::all_of(media, [&](Id<Media> id) {
        const Media *one = records.find(id);
        return one && one->shows.contains(what);
    });
}

} // namespace

void toggleShown(Session &session, const std::vector<Id<Media>> &media, Shows what)
{
    if (media.empty() || session.isReadOnly())
        return;
    const bool isShown = !allShow(*session.records(), media, what);
    const QString label =
        isShown ? ShowsBar::tr("%1: shows %2") : ShowsBar::tr("%1: does not show %2");
    session.change(label.arg(nameOf(session, media), plainWord(word(what))), [&](Edit &edit) {
        for (const auto id : media)
            acts::setShown(edit, id, what, isShown);
    });
}

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

void ShowsBar::show(const std::vector<Id<Media>> &media)
{
    m_media = media;
    for (std::size_t i = 0; i < m_buttons.size(); ++i)
        m_buttons[i]->setChecked(allShow(*m_session.records(), m_media, Shows(i)));
}

void ShowsBar::toggle(Shows what)
{
    toggleShown(m_session, m_media, what);
}

} // namespace lastrivet::ui
