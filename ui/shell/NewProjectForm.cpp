// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/NewProjectForm.h"

#include "core/base/Error.h"
#include "core/profiles/ProfileLibrary.h"
#include "ui/convert/QtText.h"

#include <QComboBox>
#include <QDir>
#include <QLineEdit>
#include <QLocale>
#include <QStandardPaths>
#include <QTimeZone>

namespace lastrivet::ui {

namespace {

/// Without what a file system or another computer stumbles over.
QString asFileName(const QString &name)
{
    QString file;
    for (const QChar letter : name.trimmed())
        file += letter.isLetterOrNumber() || letter == QLatin1Char('-') ? letter : QLatin1Char('-');
    return file;
}

/// What records are written in where the locale tells nothing else.
std::string currencyHere()
{
    const QString code = QLocale().currencySymbol(QLocale::CurrencyIsoCode);
    return code.size() == 3 ? code.toStdString() : "USD";
}

} // namespace

NewProjectForm::NewProjectForm(const Clock &clock, QWidget *parent)
    : ActForm(tr("Make the project"), parent)
    , m_clock(clock)
    , m_name(new QLineEdit(this))
    , m_profile(new QComboBox(this))
    , m_origin(new QComboBox(this))
    , m_aircraft(new QLineEdit(this))
    , m_builder(new QLineEdit(this))
    , m_place(new QLineEdit(this))
{
    setTitle(tr("A new project"));
    setLeavable(false);
    const auto library = ProfileLibrary::standard();
    for (const std::string &id : library.ids()) {
        if (const auto profile = library.find(id))
            m_profile->addItem(toQt(profile->name), toQt(id));
    }
    m_origin->addItem(tr("a kit"), int(Origin::Kit));
    m_origin->addItem(tr("plans"), int(Origin::Plans));
    addField(tr("Name of the project"), m_name);
    addField(tr("Rules of"), m_profile);
    addField(tr("Built from"), m_origin);
    addField(tr("Aircraft type"), m_aircraft);
    addField(tr("Builder"), m_builder);
    addField(tr("Kept in the folder"), m_place);
    m_aircraft->setPlaceholderText(tr("can be added later"));
    setPlace(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation));
}

void NewProjectForm::start()
{
    hint({});
    m_name->setFocus();
}

void NewProjectForm::setPlace(const QString &folder)
{
    m_place->setText(QDir::toNativeSeparators(folder));
}

QString NewProjectForm::folder() const
{
    return QDir(m_place->text())
        .filePath(asFileName(m_name->text()) + QStringLiteral(".lastrivet"));
}

ProjectFacts NewProjectForm::typed() const
{
    ProjectFacts facts;
    facts.name = toStd(m_name->text());
    facts.aircraft_type = toStd(m_aircraft->text());
    facts.origin = Origin(m_origin->currentData().toInt());
    facts.profile = m_profile->currentData().toString().toStdString();
    facts.time_zone = QTimeZone::systemTimeZoneId().toStdString();
    facts.currency = currencyHere();
    if (QLocale().measurementSystem() != QLocale::MetricSystem)
        facts.units = UnitSystem::Imperial;
    facts.started_on = localMoment(m_clock.now(), facts.time_zone).dayOnly();
    return facts;
}

bool NewProjectForm::perform()
{
    const std::string builder = toStd(m_builder->text());
    if (m_name->text().trimmed().isEmpty() || builder.empty()) {
        hint(tr("It needs a name, and who builds it."));
        return false;
    }
    try {
        const ProjectFacts facts = typed();
        QDir().mkpath(m_place->text());
        const auto profile = ProfileLibrary::standard().profile(facts.profile);
        const auto project = Project::create(toPath(folder()), facts, profile, {&m_clock, builder});
        const auto result = project->change("Builder of the project", [&](Edit &edit) {
            Person person;
            person.name = builder;
            person.roles.insert(Role::Builder);
            ProjectFacts with = edit.records().project;
            with.builder_id = edit.put(std::move(person));
            edit.put(with);
        });
        if (!result) {
            hint(toQt(english(result.reason())));
            return false;
        }
    } catch (const Fault &fault) {
        hint(toQt(fault.what()));
        return false;
    }
    Q_EMIT made(folder());
    return true;
}

} // namespace lastrivet::ui
