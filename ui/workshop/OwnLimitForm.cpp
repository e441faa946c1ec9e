// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workshop/OwnLimitForm.h"

#include "core/workshop/Quantities.h"
#include "core/workshop/TorqueUnitWords.h"
#include "ui/convert/NumberText.h"
#include "ui/convert/QtText.h"
#include "ui/widgets/Layouts.h"
#include "ui/workshop/Tables.h"

#include <QLineEdit>

#include <algorithm>
#include <utility>

namespace lastrivet::ui {

OwnLimitForm::OwnLimitForm(Keep keep, QWidget *parent)
    : ActForm(tr("Keep"), parent)
    , m_keep(std::move(keep))
    , m_minimum(new QLineEdit(this))
    , m_maximum(new QLineEdit(this))
    , m_unit(new QLineEdit(this))
    , m_source(new QLineEdit(this))
{
    m_source->setPlaceholderText(tr("drawing, manual or letter it is from"));
    addField(tr("At least"), m_minimum);
    addField(tr("At most"), m_maximum);
    addField(tr("Unit"), m_unit);
    addField(tr("Source"), m_source);
    addWide(
        wrappedLabel(tr("It stays with this copy of the project: a merge brings it to no other, "
                        "and the journal does not tell of it."),
                     this));
    connect(this, &ActForm::left, this, &QWidget::hide);
    hide();
}

void OwnLimitForm::start(const QString &subject, const QString &unit,
                         const workshop::OwnLimit *known)
{
    const auto number = [](const std::optional<double> &value) {
        return value ? plainNumber(*value, 6) : QString();
    };
    m_subject = subject;
    m_hasUnit = !unit.isEmpty();
    setTitle(tr("This project's own limit in the place of: %1. Both lines empty give the table "
                "its place back.")
                 .arg(subjectWords(subject)));
    m_minimum->setText(known ? number(known->minimum) : QString());
    m_maximum->setText(known ? number(known->maximum) : QString());
    m_unit->setText(known ? toQt(known->unit) : unit);
    m_source->setText(known ? toQt(known->source) : QString());
    hint({});
    show();
    noteFields();
    m_minimum->setFocus();
}

bool OwnLimitForm::read(const QLineEdit &line, std::optional<double> &number)
{
    number.reset();
    if (line.text().trimmed().isEmpty())
        return true;
    const auto read = readTyped(workshop::inTableUnits, line.text(), workshop::Quantity::Number,
                                UnitSystem::Imperial);
    if (!read) {
        hint(inWords(read.reason()));
        return false;
    }
    number = *read;
    return true;
}

bool OwnLimitForm::perform()
{
    workshop::OwnLimit limit;
    limit.subject = toStd(m_subject);
    limit.unit = toStd(m_unit->text());
    limit.source = toStd(m_source->text());
    if (!read(*m_minimum, limit.minimum) || !read(*m_maximum, limit.maximum))
        return false;
    const bool isAny = limit.minimum || limit.maximum;
    if (limit.minimum && limit.maximum && *limit.minimum > *limit.maximum) {
        hint(tr("The least is more than the most."));
        return false;
    }
    const bool isTorque = m_subject.startsWith(QLatin1String("torque"));
    if (isTorque && std::min(limit.minimum.value_or(0), limit.maximum.value_or(0)) < 0) {
        hint(tr("A torque is not below zero."));
        return false;
    }
    if (isAny && m_hasUnit && limit.unit.empty()) {
        hint(tr("It needs its unit."));
        return false;
    }
    const bool isOfBolt = m_subject.startsWith(QLatin1String("torque "));
    if (isAny && m_hasUnit && isOfBolt && !workshop::torqueUnitSaid(limit.unit)) {
        hint(tr("Write the unit of the torque as in-lb, ft-lb or N·m."));
        return false;
    }
    if (isAny && limit.source.empty()) {
        hint(tr("It needs its source: the drawing, manual or letter that says so."));
        return false;
    }
    if (!m_keep(limit)) {
        hint(tr("It could not be kept, and the limits are those from before."));
        return false;
    }
    return true;
}

} // namespace lastrivet::ui
