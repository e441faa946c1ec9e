// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stores/UseForm.h"

#include "core/base/SortedIds.h"
#include "core/base/TypedNumber.h"
#include "core/entry/DurationText.h"
#include "ui/convert/FieldText.h"
#include "ui/convert/NumberText.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/MomentLine.h"
#include "ui/widgets/RecordLine.h"

#include <QComboBox>
#include <QLineEdit>
#include <QRegularExpression>

#include <string>
#include <utility>

namespace lastrivet::ui {

namespace {

/// "18", "18-21", "18 to 21 °C": one or two numbers.
std::optional<std::pair<double, double>> warmth(const QString &text)
{
    const std::string typed = toStd(text.trimmed());
    std::string_view left = typed;
    auto range = takeRange(left);
    if (const auto one = range ? std::nullopt : takeNumber(left))
        range = std::pair(*one, *one);
    const bool isBare = left.empty() || left == "°C" || left == "°" || left == "C";
    const bool isRange = range && isBare && range->first <= range->second;
    return isRange ? range : std::nullopt;
}

} // namespace

std::optional<Minutes> cureTime(const QString &text)
{
    constexpr std::int64_t perDay = 24 * 60;
    constexpr int mostDays = 3650;
    static const QRegularExpression days(
        QStringLiteral("^(\\d{1,4})\\s*(?:d|days?|Tage?|T|j|jours?)"
                       "(?:\\s*(\\d{1,2})\\s*(?:h|hours?|Std\\.?|Stunden?|heures?))?$"),
        QRegularExpression::CaseInsensitiveOption);
    static const QRegularExpression hours(QStringLiteral("^(\\d{1,4})\\s*(h|Std|heures?)?$"),
                                          QRegularExpression::CaseInsensitiveOption);
    const QString plain = text.trimmed();
    if (const auto match = days.match(plain); match.hasMatch()) {
        const int count = match.captured(1).toInt();
        // None is a text without figures, which is 0.
        const std::int64_t more = match.captured(2).toInt() * 60;
        return count <= mostDays ? std::optional(Minutes{count * perDay + more}) : std::nullopt;
    }
    if (const auto match = hours.match(plain); match.hasMatch())
        return Minutes{match.captured(1).toInt() * 60};
    return entry::parseDuration(toStd(plain));
}

UseForm::UseForm(Session &session, QWidget *parent)
    : ActForm(tr("Keep the use"), parent)
    , m_session(session)
    , m_part(new RecordLine(session, RecordType::Component, this))
    , m_other(new RecordLine(session, RecordType::MaterialLot, this))
    , m_when(new MomentLine(session, this))
    , m_mix(new QLineEdit(this))
    , m_warmth(new QLineEdit(this))
    , m_humidity(new QLineEdit(this))
    , m_cure(new QLineEdit(this))
    , m_sample(new QComboBox(this))
{
    for (const auto sample : Words<Sample>::list)
        m_sample->addItem(plainWord(sample));
    for (RecordLine *line : {m_part, m_other})
        line->keepUnknown();
    m_other->setPlaceholderText(tr("none"));
    m_warmth->setPlaceholderText(tr("18-21"));
    m_cure->setPlaceholderText(tr("14 d, 24 h; from the data sheet"));
    m_cure->setToolTip(m_cure->placeholderText());
    addField(tr("On part"), m_part);
    addField(tr("Mixed with lot"), m_other);
    addField(tr("When"), m_when);
    addField(tr("Mix"), m_mix);
    addField(tr("Temperature, °C"), m_warmth);
    addField(tr("Humidity, %"), m_humidity);
    addField(tr("Cures for"), m_cure);
    addField(tr("Sample"), m_sample);
    connect(m_when, &QLineEdit::textChanged, this, &UseForm::warnOfExpiry);
    hide();
}

void UseForm::start(Id<MaterialLot> lot)
{
    m_lot = lot;
    const MaterialLot &record = *m_session.records()->find(lot);
    setTitle(tr("%1 was used").arg(toQt(record.name)));
    for (RecordLine *line : {m_part, m_other})
        line->setChosen(0);
    m_when->setMoment(m_session.now());
    for (QLineEdit *line : {m_mix, m_warmth, m_humidity, m_cure})
        line->setText({});
    m_sample->setCurrentIndex(0);
    warnOfExpiry();
    show();
    noteFields();
    m_part->setFocus();
}

/// As of the moment in the form: a use may be written down later.
void UseForm::warnOfExpiry()
{
    const MaterialLot *lot = m_session.records()->findLive(m_lot);
    const auto moment = m_when->moment();
    const bool hasExpired = lot && lot->expires_on && moment && after(*moment, *lot->expires_on);
    hint(hasExpired ? tr("This lot has expired: what is made with it needs somebody's acceptance.")
                    : QString());
}

bool UseForm::readWarmth(MaterialUse &use)
{
    if (!m_warmth->text().trimmed().isEmpty()) {
        const auto range = warmth(m_warmth->text());
        if (!range) {
            hint(tr("“%1” is no temperature; write 20 or 18-21.").arg(m_warmth->text()));
            return false;
        }
        use.temperature_min = range->first;
        use.temperature_max = range->second;
    }
    if (!m_humidity->text().trimmed().isEmpty()) {
        QString typed = m_humidity->text().trimmed();
        if (typed.endsWith(QLatin1Char('%')))
            typed.chop(1);
        if (const auto humidity = readNumber(typed))
            use.humidity = *humidity;
        if (!use.humidity || *use.humidity < 0 || *use.humidity > 100) {
            hint(tr("“%1” is no humidity between 0 and 100 %.").arg(m_humidity->text()));
            return false;
        }
    }
    return true;
}

bool UseForm::readCure(MaterialUse &use)
{
    if (m_cure->text().trimmed().isEmpty())
        return true;
    use.cure_minutes = cureTime(m_cure->text());
    if (use.cure_minutes)
        return true;
    hint(tr("“%1” is no time to cure; write 14 d or 24 h.").arg(m_cure->text()));
    return false;
}

std::optional<MaterialUse> UseForm::filled()
{
    for (RecordLine *line : {m_part, m_other}) {
        if (!line->settle()) {
            hint(line->unknownWords());
            line->setFocus();
            return std::nullopt;
        }
    }
    MaterialUse use;
    use.lot_ids = {m_lot};
    if (m_other->chosen() != 0)
        insertSorted(use.lot_ids, Id<MaterialLot>{m_other->chosen()});
    use.component_id = Id<Component>{m_part->chosen()};
    if (!use.component_id) {
        hint(tr("Say which part it was used on."));
        return std::nullopt;
    }
    if (const QString why = m_when->whyNotHappened(m_session.now()); !why.isEmpty()) {
        hint(why);
        return std::nullopt;
    }
    use.used_on = m_when->moment();
    use.mix_ratio = toStd(m_mix->text());
    use.sample = Sample(m_sample->currentIndex());
    if (use.sample == Sample::Good || use.sample == Sample::Failed)
        use.sample_on = use.used_on;
    if (!readWarmth(use) || !readCure(use))
        return std::nullopt;
    return use;
}

bool UseForm::perform()
{
    const auto use = filled();
    if (!use)
        return false;
    const MaterialLot *lot = m_session.records()->findLive(m_lot);
    if (!lot) {
        hint(inWords(Message{"What was to be changed is not there any more.", {}}));
        return false;
    }
    const QString name = toQt(lot->name);
    return m_session.change(tr("%1: used").arg(name), [&](Edit &edit) { edit.put(*use); });
}

} // namespace lastrivet::ui
