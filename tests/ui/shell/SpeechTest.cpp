// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/Speech.h"

#include "core/base/Tongue.h"
#include "core/readiness/Names.h"
#include "tests/support/TemporaryFolder.h"
#include "tests/ui/support/WholeWindow.h"
#include "tests/ui/support/Workshop.h"
#include "ui/convert/FieldText.h"
#include "ui/convert/QtText.h"
#include "ui/print/JournalWords.h"
#include "ui/print/Language.h"
#include "ui/shell/FileTasks.h"
#include "ui/shell/PersonalSettings.h"
#include "ui/shell/Preferences.h"

#include <QAction>
#include <QComboBox>
#include <QCoreApplication>
#include <QFile>
#include <QKeySequence>
#include <QLocale>
#include <QSettings>
#include <QTest>
#include <QTranslator>

#include <catch2/catch.hpp>

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

namespace lastrivet::ui {

namespace {

/// A translation of two sentences of the core, and of a word of a vocabulary.
class Sample final : public QTranslator {
public:
    QString translate(const char *context, const char *source, const char *, int) const override
    {
        const QLatin1String in(context);
        const QLatin1String text(source);
        if (in == QLatin1String("Message") && text == QLatin1String("{0} is not signed"))
            return QStringLiteral("{0} ist nicht unterschrieben");
        if (in == QLatin1String("Message") && text == QLatin1String("own check"))
            return QStringLiteral("Eigenprüfung");
        if (in == QLatin1String("Message") &&
            text == QLatin1String("The document is {0}, not an object."))
            return QStringLiteral("Das Dokument ist {0}, kein Objekt.");
        if (in == QLatin1String("FieldName") && text == QLatin1String("found_on"))
            return QStringLiteral("gefunden am");
        return {};
    }
    bool isEmpty() const override { return false; }
};

} // namespace

TEST_CASE("Sentences of the core are said in the language of the screen, names within them too")
{
    const Message whole{"{0} is not signed", {nestedFirst({"own check", {}})}};
    CHECK(inWords(whole) == QStringLiteral("Own check is not signed"));
    Sample sample;
    QCoreApplication::installTranslator(&sample);
    CHECK(inWords(whole) == QStringLiteral("Eigenprüfung ist nicht unterschrieben"));
    CHECK(inWords({"{0} lacks {1}.", {"Squawk 3", nested({"found_on", {}})}}) ==
          QStringLiteral("Squawk 3 lacks gefunden am."));
    QCoreApplication::removeTranslator(&sample);
}

TEST_CASE("What is wrong with an imported file is said in the language of the screen")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    QString said;
    QObject::connect(session.get(), &Session::complained, session.get(),
                     [&said](const QString &sentence) { said = sentence; });
    const test::TemporaryFolder folder;
    const QString name = pathText(folder / "records.json");
    QFile file(name);
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write("7");
    file.close();
    Sample sample;
    QCoreApplication::installTranslator(&sample);
    tasks::importInto(*session, name);
    QCoreApplication::removeTranslator(&sample);
    CHECK(said.endsWith(QStringLiteral("records.json: Das Dokument ist 7, kein Objekt.")));
}

TEST_CASE("The program speaks what was chosen, with days and numbers of that language")
{
    const QLocale before;
    const auto squawks = [](int count) {
        return QCoreApplication::translate("lastrivet::ui::SquawksPage", "%n squawks", nullptr,
                                           count);
    };
    {
        Speech speech;
        speech.speak(QStringLiteral("de"));
        CHECK(squawks(1234).startsWith(QStringLiteral("1.234 ")));
        CHECK(QLocale().language() == QLocale::German);
        CHECK(QCoreApplication::translate("QPlatformTheme", "Cancel") ==
              QStringLiteral("Abbrechen"));
        speech.speak(QStringLiteral("fr"));
        CHECK(QLocale().language() == QLocale::French);
        CHECK(QCoreApplication::translate("QPlatformTheme", "Cancel") == QStringLiteral("Annuler"));
        CHECK(QCoreApplication::translate("lastrivet::ui::StandingPanel", "stay open, work left",
                                          nullptr,
                                          1) == QStringLiteral("reste ouverte, du travail reste"));
        speech.speak(QStringLiteral("en"));
        CHECK(squawks(1) == QStringLiteral("1 squawk"));
        CHECK(squawks(1234) == QStringLiteral("1,234 squawks"));
    }
    QLocale::setDefault(before);
}

TEST_CASE(
    "A line of a profile's list is in the language of the screen, and a builder's own as it is")
{
    const QLocale before;
    {
        Speech speech;
        speech.speak(QStringLiteral("de"));
        CHECK(listLine("At least one full thread stands out of every nut") ==
              QStringLiteral("Aus jeder Mutter ragt mindestens ein voller Gewindegang"));
        CHECK(listLine("My own line {0} for tag_12") ==
              QStringLiteral("My own line {0} for tag_12"));
        CHECK(listLine("").isEmpty());
        const auto unticked = [](std::string item) {
            const Check line{.id = Id<Check>{1}, .item = std::move(item)};
            Records records;
            records.put(RecordType::Check, &line);
            const Message name = readiness::named(records, {RecordType::Check, 1});
            return inWords({"{0}: not ticked", {nestedFirst(name)}});
        };
        CHECK(unticked("At least one full thread stands out of every nut") ==
              QStringLiteral(
                  "Aus jeder Mutter ragt mindestens ein voller Gewindegang: nicht abgehakt"));
        CHECK(unticked("My own line {0} for tag_12") ==
              QStringLiteral("My own line {0} for tag_12: nicht abgehakt"));
        CHECK(unticked("Assembly") == QStringLiteral("Assembly: nicht abgehakt"));
    }
    QLocale::setDefault(before);
}

TEST_CASE("The name of a field within a sentence has the capital that its language gives it")
{
    const QLocale before;
    {
        Speech speech;
        const auto &squawk = describe(RecordType::Squawk);
        speech.speak(QStringLiteral("de"));
        CHECK(fieldWords(*squawk.find("accepted_basis")) ==
              QStringLiteral("Grundlage der Annahme"));
        CHECK(fieldWords(*squawk.find("accepted_on")) == QStringLiteral("angenommen am"));
        CHECK(fieldTitle(*squawk.find("accepted_on")) == QStringLiteral("Angenommen am"));
        speech.speak(QStringLiteral("en"));
        CHECK(fieldWords(*squawk.find("accepted_basis")) ==
              QStringLiteral("accepted on what basis"));
        const auto german = print::wordingIn(print::languageFor(QLocale::German));
        const std::vector<LateDate> late{
            {{RecordType::Closing, 1}, "events.closed_on", *Moment::parse("2026-03-14")}};
        CHECK(print::marksIn(german, false, late).front().contains(QStringLiteral("Ereignisse, ")));
    }
    QLocale::setDefault(before);
}

TEST_CASE("On a French keyboard the pages open by the keys of their digits, without Shift")
{
    const QLocale before;
    const auto isAKey = [](const QKeySequence &keys) {
        test::WholeWindow opened;
        const auto actions = opened.window.findChildren<QAction *>();
        return std::ranges::any_of(
            actions, [&](const QAction *action) { return action->shortcuts().contains(keys); });
    };
    const QKeySequence three(Qt::CTRL | Qt::Key_QuoteDbl);
    const QKeySequence nine(Qt::CTRL | Qt::Key_Ccedilla);
    {
        Speech speech;
        speech.speak(QStringLiteral("fr"));
        CHECK(isAKey(three));
        CHECK(isAKey(nine));
        speech.speak(QStringLiteral("de"));
        CHECK_FALSE(isAKey(three));
    }
    QLocale::setDefault(before);
}

TEST_CASE("What a person chose for the computer is found again")
{
    const test::TemporaryFolder folder;
    const QString file = pathText(folder / "settings.ini");
    {
        QSettings kept(file, QSettings::IniFormat);
        PersonalSettings chosen(kept);
        CHECK(chosen.language().isEmpty());
        CHECK(chosen.theme() == Theme::Choice::System);
        chosen.setLanguage(QStringLiteral("fr"));
        chosen.setTheme(Theme::Choice::Dark);
        chosen.setTallRows(true);
        chosen.setPaper(print::Paper::Letter);
        chosen.setWho(QStringLiteral("/a/b.lastrivet"), QStringLiteral("Kim Reed"));
    }
    QSettings kept(file, QSettings::IniFormat);
    PersonalSettings chosen(kept);
    CHECK(chosen.language() == QStringLiteral("fr"));
    CHECK(chosen.theme() == Theme::Choice::Dark);
    CHECK(chosen.hasTallRows());
    CHECK(chosen.paper() == print::Paper::Letter);
    CHECK(chosen.who(QStringLiteral("/a/b.lastrivet")) == QStringLiteral("Kim Reed"));
    CHECK(chosen.who(QStringLiteral("/a/c.lastrivet")).isEmpty());
    CHECK(chosen.printLanguage().id == QLocale::French);
    chosen.setPrintLanguage(QStringLiteral("de"));
    CHECK(chosen.printLanguage().id == QLocale::German);
    CHECK(chosen.language() == QStringLiteral("fr"));
}

TEST_CASE("Choosing counts at once, and asks for a new window only where one is needed")
{
    const test::TemporaryFolder folder;
    QSettings kept(pathText(folder / "settings.ini"), QSettings::IniFormat);
    test::Workshop workshop;
    const auto session = workshop.session();
    Preferences preferences(PersonalSettings(kept), test::theme(), session.get(),
                            QStringLiteral("/bench"), nullptr);
    const auto choose = [&](const QString &label, int index) {
        for (QComboBox *box : preferences.findChildren<QComboBox *>()) {
            if (box->accessibleName() != label)
                continue;
            box->setFocus();
            QTest::keyClick(box, Qt::Key_Home);
            for (int i = 0; i < index; ++i)
                QTest::keyClick(box, Qt::Key_Down);
        }
    };
    const PersonalSettings chosen(kept);
    choose(QStringLiteral("Paper"), 1);
    choose(QStringLiteral("Colours"), 2);
    CHECK(test::theme().isDark());
    test::theme().choose(Theme::Choice::Light);
    choose(QStringLiteral("Units of this project"), 1);
    CHECK(session->records()->project.units == UnitSystem::Imperial);
    CHECK(session->project().undoLabel());
    CHECK_FALSE(preferences.needsNewWindow());
    choose(QStringLiteral("Language of the screen"), 2);
    CHECK(chosen.language() == QStringLiteral("de"));
    choose(QStringLiteral("Who is working here"), 1);
    CHECK_FALSE(chosen.who(QStringLiteral("/bench")).isEmpty());
    CHECK(preferences.needsNewWindow());
}

} // namespace lastrivet::ui
