// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/NewProjectForm.h"

#include "core/base/Error.h"
#include "core/base/TimeZone.h"
#include "core/profiles/ProfileLibrary.h"
#include "core/starters/Planting.h"
#include "core/starters/StarterLibrary.h"
#include "ui/backup/FolderLine.h"
#include "ui/convert/QtText.h"
#include "ui/convert/RefusalText.h"
#include "ui/convert/UsualFolders.h"
#include "ui/shell/StarterTree.h"

#include <QComboBox>
#include <QDir>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QTimeZone>

#include <algorithm>
#include <filesystem>
#include <system_error>

namespace lastrivet::ui {

namespace {

constexpr int treeHeight = 220;
const auto noAuthority = QStringLiteral("plain");

/// Without characters that file systems do not take.
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
    , m_place(new FolderLine(tr("Kept in the folder"), this))
    , m_starter(new QComboBox(this))
    , m_tree(new StarterTree(this))
    , m_size(new QLabel(this))
{
    setTitle(tr("A new project"));
    setLeavable(false);
    offerProfiles();
    m_origin->addItem(tr("a kit"), int(Origin::Kit));
    m_origin->addItem(tr("plans"), int(Origin::Plans));
    addField(tr("Name of the project"), m_name);
    addField(tr("Rules of"), m_profile);
    addField(tr("Built from"), m_origin);
    addField(tr("Aircraft type"), m_aircraft);
    addField(tr("Builder"), m_builder);
    addField(tr("Kept in the folder"), m_place);
    addField(tr("Begin with"), m_starter);
    addWide(m_tree);
    addWide(m_size);
    m_aircraft->setPlaceholderText(tr("can be added later"));
    setPlace(documentsFolder());
    m_tree->setMinimumHeight(treeHeight);
    m_size->setWordWrap(true);
    offerStarters();
    connect(m_starter, &QComboBox::currentIndexChanged, this, &NewProjectForm::showStarter);
    connect(m_tree, &StarterTree::pruned, this, &NewProjectForm::tellSize);
    for (const QLineEdit *line : {m_name, m_builder})
        connect(line, &QLineEdit::textChanged, this, &NewProjectForm::lookAtNames);
    // The form is always shown; once a project is made or dropped, it begins anew.
    connect(this, &ActForm::left, this, &NewProjectForm::clear);
    clear();
}

void NewProjectForm::clear()
{
    for (QLineEdit *line : {m_name, m_aircraft, m_builder})
        line->clear();
    chooseUsualProfile();
    m_origin->setCurrentIndex(0);
    m_starter->setCurrentIndex(0);
    showStarter();
    noteFields();
}

void NewProjectForm::offerProfiles()
{
    const auto library = ProfileLibrary::standard();
    for (const std::string &id : library.ids()) {
        if (const auto profile = library.find(id))
            m_profile->addItem(toQt(profile->name), toQt(id));
    }
}

void NewProjectForm::chooseUsualProfile()
{
    const QString here = QLocale::territoryToCode(QLocale::system().territory()).toLower();
    const int known = m_profile->findData(here);
    m_profile->setCurrentIndex(std::max(0, known >= 0 ? known : m_profile->findData(noAuthority)));
}

void NewProjectForm::offerStarters()
{
    m_starter->addItem(tr("no parts yet"));
    try {
        m_starters = standardStarters();
    } catch (const Fault &fault) {
        hint(inWords(fault.message()));
    }
    for (const Starter &each : m_starters)
        m_starter->addItem(starterText(each.title));
}

const Starter *NewProjectForm::starter() const
{
    const auto index = std::size_t(std::max(0, m_starter->currentIndex()));
    return index == 0 ? nullptr : &m_starters[index - 1];
}

void NewProjectForm::showStarter()
{
    m_tree->setVisible(starter() != nullptr);
    m_size->setVisible(starter() != nullptr);
    if (starter())
        m_tree->offer(*starter());
    tellSize();
}

void NewProjectForm::tellSize()
{
    if (!starter())
        return;
    const Starter wanted = pruned(*starter(), m_tree->leftOut());
    // The one of the whole aircraft goes with no part, and Today does not count it either.
    const auto count =
        std::ranges::count(wanted.closings, ClosingScope::Region, &Starter::Closing::scope);
    m_size->setText(tr("Untick what your aeroplane has not. The closings that go with the parts: "
                       "%n. Everything can be renamed, moved and added to later.",
                       nullptr, int(count)));
}

void NewProjectForm::start()
{
    hint({});
    m_name->setFocus();
}

void NewProjectForm::setPlace(const QString &folder)
{
    m_place->setFolder(folder);
}

QString NewProjectForm::folder() const
{
    return QDir(m_place->folder())
        .filePath(asFileName(m_name->text()) + QStringLiteral(".lastrivet"));
}

ProjectFacts NewProjectForm::typed() const
{
    ProjectFacts facts;
    facts.name = toStd(m_name->text());
    facts.aircraft_type = toStd(m_aircraft->text());
    facts.origin = Origin(m_origin->currentData().toInt());
    facts.profile = m_profile->currentData().toString().toStdString();
    const std::string zone = QTimeZone::systemTimeZoneId().toStdString();
    facts.time_zone = findZone(zone) ? zone : "UTC";
    facts.currency = currencyHere();
    if (QLocale().measurementSystem() != QLocale::MetricSystem)
        facts.units = UnitSystem::Imperial;
    facts.started_on = localMoment(m_clock.now(), facts.time_zone).dayOnly();
    return facts;
}

bool NewProjectForm::make(const std::string &builder)
{
    const ProjectFacts facts = typed();
    QDir().mkpath(m_place->folder());
    const auto profile = ProfileLibrary::standard().profile(facts.profile);
    const auto place = toPath(folder());
    auto project = Project::create(place, facts, profile, {&m_clock, builder});
    try {
        const auto result =
            project->change(toStd(tr("Project begun")), [&](Edit &edit) { fill(edit, builder); });
        if (result)
            return true;
        hint(inWords(result.reason()));
    } catch (const Fault &fault) {
        hint(inWords(fault.message()));
    }
    // All of it was made just now, and would only prevent a second try.
    project.reset();
    std::error_code failure;
    std::filesystem::remove_all(place, failure);
    return false;
}

void NewProjectForm::fill(Edit &edit, const std::string &builder) const
{
    Person person;
    person.name = builder;
    person.roles.insert(Role::Builder);
    ProjectFacts with = edit.records().project;
    with.builder_id = edit.put(std::move(person));
    edit.put(with);
    const auto inWords = [](const std::string &text) { return toStd(starterText(text)); };
    if (starter())
        plant(edit, *starter(), {m_tree->leftOut(), inWords});
}

bool NewProjectForm::isNamed() const
{
    return !m_name->text().trimmed().isEmpty() && !m_builder->text().trimmed().isEmpty();
}

void NewProjectForm::lookAtNames()
{
    if (!m_isLacking || !isNamed())
        return;
    m_isLacking = false;
    hint({});
}

bool NewProjectForm::tellMissing()
{
    m_isLacking = !isNamed();
    if (m_isLacking) {
        hint(tr("It needs a name, and who builds it."));
        (m_name->text().trimmed().isEmpty() ? m_name : m_builder)->setFocus();
        return true;
    }
    if (!m_place->folder().isEmpty())
        return false;
    hint(tr("It needs a folder to be kept in."));
    m_place->setFocus();
    return true;
}

/// Enter in a line does not make the project, since there is more to choose further down.
void NewProjectForm::keyPressEvent(QKeyEvent *event)
{
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    const bool isInLine = qobject_cast<QLineEdit *>(focusWidget()) != nullptr;
    if (!isEnter || !isInLine || event->modifiers() & Qt::ControlModifier) {
        ActForm::keyPressEvent(event);
        return;
    }
    if (!tellMissing())
        hint(tr("Ctrl+Enter makes the project."));
}

bool NewProjectForm::perform()
{
    const std::string builder = toStd(m_builder->text());
    if (tellMissing())
        return false;
    try {
        if (!make(builder))
            return false;
    } catch (const Fault &fault) {
        hint(inWords(fault.message()));
        return false;
    }
    Q_EMIT made(folder());
    return true;
}

} // namespace lastrivet::ui
