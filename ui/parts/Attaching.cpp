// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/SectionActs.h"
#include "ui/shell/Session.h"
#include "ui/widgets/ProjectFiles.h"
#include "ui/widgets/RecordNames.h"

// Letters, drawings and pictures that go with a record.
namespace lastrivet::ui::sections {

bool attachFiles(Session &session, const PartSection &section, std::int64_t id,
                 const QStringList &files)
{
    return ui::attachFiles(session, shortName(*session.records(), {section.type, id}), files,
                           [&](Edit &edit, Id<Media> file) { section.attach(edit, id, file); });
}

} // namespace lastrivet::ui::sections
