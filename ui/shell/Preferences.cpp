// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/Preferences.h"

#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>

namespace lastrivet::ui {

namespace {

constexpr int leastChoice = 240;

void offerLanguages(QComboBox &box, const QString &first, const QString &chosen)
{
    box.addItem(first, QString());
    for (const print::Language &language : print::languages())
        box.addItem(language.name, language.code);
    box.setCurrentIndex(std::max(0, box.findData(chosen)));
}

} // namespace

Preferences::Preferences(PersonalSettings settings, Theme &theme, Session *session,
                         const QString &folder, QWidget *parent)
    : QDialog(parent)
    , m_settings(settings)
    , m_theme(theme)
    , m_form(new QFormLayout(this))
{
    setWindowTitle(tr("Preferences"));
    m_form->setContentsMargins(24, 12, 24, 12);
    m_form->setHorizontalSpacing(12);
    // On a small screen at twice the size everything has to fit.
    m_form->setVerticalSpacing(8);
    addLanguages();
    addLook();
    addPrint();
    if (session)
        addProject(*session, folder);
    auto *buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::accept);
    m_form->addRow(buttons);
}

QComboBox &Preferences::addChoice(const QString &label)
{
    auto *box = new QComboBox(this);
    box->setAccessibleName(label);
    box->setMinimumWidth(leastChoice);
    m_form->addRow(label, box);
    return *box;
}

void Preferences::addLanguages()
{
    QComboBox &screen = addChoice(tr("Language of the screen"));
    offerLanguages(screen, tr("As the system"), m_settings.language());
    connect(&screen, &QComboBox::activated, this, [this, &screen] {
        m_settings.setLanguage(screen.currentData().toString());
        m_needsNewWindow = true;
    });
}

void Preferences::addLook()
{
    QComboBox &look = addChoice(tr("Colours"));
    look.addItems({tr("As the system"), tr("Light"), tr("Dark")});
    look.setCurrentIndex(int(m_settings.theme()));
    connect(&look, &QComboBox::activated, this, [this](int index) {
        m_settings.setTheme(Theme::Choice(index));
        m_theme.choose(Theme::Choice(index));
    });
    QComboBox &rows = addChoice(tr("Rows"));
    rows.addItems({tr("Close together"), tr("Tall, for fingers and gloves")});
    rows.setCurrentIndex(m_settings.hasTallRows() ? 1 : 0);
    connect(&rows, &QComboBox::activated, this, [this](int index) {
        m_settings.setTallRows(index == 1);
        m_needsNewWindow = true;
    });
}

void Preferences::addPrint()
{
    QComboBox &paper = addChoice(tr("Paper"));
    paper.addItems({tr("A4"), tr("Letter")});
    paper.setCurrentIndex(m_settings.paper() == print::Paper::A4 ? 0 : 1);
    connect(&paper, &QComboBox::activated, this, [this](int index) {
        m_settings.setPaper(index == 0 ? print::Paper::A4 : print::Paper::Letter);
    });
    QComboBox &language = addChoice(tr("Language of what is printed"));
    offerLanguages(language, tr("As the screen"), m_settings.printLanguageCode());
    connect(&language, &QComboBox::activated, this,
            [this, &language] { m_settings.setPrintLanguage(language.currentData().toString()); });
}

void Preferences::addProject(Session &session, const QString &folder)
{
    addUnits(session);
    QComboBox &who = addChoice(tr("Who is working here"));
    who.addItem(tr("The builder of the project"), QString());
    for (const Person &person : session.records()->people) {
        if (!person.withdrawn_on)
            who.addItem(toQt(person.name), toQt(person.name));
    }
    who.setCurrentIndex(std::max(0, who.findData(m_settings.who(folder))));
    connect(&who, &QComboBox::activated, this, [this, &who, folder] {
        m_settings.setWho(folder, who.currentData().toString());
        m_needsNewWindow = true;
    });
    auto *hint = new QLabel(tr("The journal keeps this name with every change."), this);
    hint->setWordWrap(true);
    hint->setMinimumHeight(hint->heightForWidth(leastChoice));
    hint->setForegroundRole(QPalette::PlaceholderText);
    m_form->addRow(QString(), hint);
}

void Preferences::addUnits(Session &session)
{
    QComboBox &units = addChoice(tr("Units of this project"));
    units.addItems({tr("Metric"), tr("Imperial")});
    units.setCurrentIndex(int(session.records()->project.units));
    units.setEnabled(!session.isReadOnly());
    connect(&units, &QComboBox::activated, this, [&session, &units](int index) {
        if (int(session.records()->project.units) == index)
            return;
        session.change(tr("Units of the project"), [index](Edit &edit) {
            ProjectFacts facts = edit.records().project;
            facts.units = UnitSystem(index);
            edit.put(facts);
        });
        units.setCurrentIndex(int(session.records()->project.units));
    });
}

} // namespace lastrivet::ui
