// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/daylog/LogbookForm.h"

#include "core/entry/DayText.h"
#include "ui/convert/QtText.h"
#include "ui/print/LogbookPrinter.h"
#include "ui/prints/PrintTask.h"
#include "ui/shell/Session.h"
#include "ui/widgets/NewFileName.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>

#include <unordered_map>

namespace lastrivet::ui {

namespace {

/// When each entry was written down, for a worker that must not ask the project.
packet::WrittenOn kept(const Records &records, const packet::WrittenOn &writtenOn)
{
    auto days = std::make_shared<std::unordered_map<std::int64_t, Moment>>();
    for (const WorkSession &session : records.work_sessions) {
        if (const auto day = writtenOn(session.id))
            days->emplace(session.id.value(), *day);
    }
    return [days](Id<WorkSession> id) {
        const auto day = days->find(id.value());
        return day == days->end() ? std::nullopt : std::optional(day->second);
    };
}

} // namespace

LogbookForm::LogbookForm(Session &session, packet::WrittenOn writtenOn, QWidget *parent)
    : ActForm(tr("Print to a file…"), parent)
    , m_session(session)
    , m_writtenOn(std::move(writtenOn))
    , m_order(new QComboBox(this))
    , m_from(new QLineEdit(this))
    , m_until(new QLineEdit(this))
    , m_photos(new QCheckBox(tr("with photographs"), this))
{
    m_chooseFile = [this](const QString &suggested) {
        return askForNewFile(this, tr("Print the builder's log"), suggested, tr("PDF (*.pdf)"));
    };
    setTitle(tr("Print the builder's log"));
    m_order->addItems({tr("by date"), tr("by part")});
    m_from->setPlaceholderText(tr("the first entry"));
    m_until->setPlaceholderText(tr("the last entry"));
    m_photos->setChecked(true);
    addField(tr("Order"), m_order);
    addField(tr("From"), m_from);
    addField(tr("Until"), m_until);
    addWide(m_photos);
    hide();
}

void LogbookForm::start()
{
    hint({});
    show();
    m_order->setFocus();
}

bool LogbookForm::readDay(QLineEdit &field, std::optional<Moment> &day)
{
    const QString text = field.text().trimmed();
    if (text.isEmpty())
        return true;
    day = entry::parseDayText(toStd(text), m_session.today());
    if (!day)
        day = parseDay(text);
    if (day)
        return true;
    hint(tr("“%1” is no day.").arg(text));
    field.setFocus();
    return false;
}

bool LogbookForm::perform()
{
    packet::LogbookChoice choice;
    if (!readDay(*m_from, choice.from) || !readDay(*m_until, choice.until))
        return false;
    if (choice.from && choice.until && after(*choice.from, *choice.until)) {
        hint(tr("The last day lies before the first."));
        return false;
    }
    choice.order =
        m_order->currentIndex() == 0 ? packet::LogOrder::ByDate : packet::LogOrder::ByPart;
    choice.has_photos = m_photos->isChecked();
    const QString title = tr("Builder's log");
    const QString file = m_chooseFile(printFileName(title, m_session.today().text()));
    if (file.isEmpty())
        return false;
    const auto records = m_session.records();
    // Without it the paper would not say what was written down late.
    const auto writtenOn =
        m_session.read([&] { return kept(*records, m_writtenOn); }, Session::Telling::EachTime);
    if (!writtenOn)
        return false;
    carryOut(
        m_session,
        {title, file,
         [records, profile = m_session.project().profile(), choice, file, writtenOn = *writtenOn,
          choices = usualChoices()](const print::Imprint &imprint, const print::Pictures &pictures,
                                    const print::OnPercent &onPercent) {
             return print::printLogbook(packet::logbookOf(*records, profile, choice, writtenOn),
                                        imprint, pictures, choices, toPath(file), onPercent);
         }});
    return true;
}

} // namespace lastrivet::ui
