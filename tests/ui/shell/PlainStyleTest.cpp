// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/PlainStyle.h"

#include "core/records/Description.h"
#include "tests/ui/support/Workshop.h"
#include "ui/convert/QtText.h"
#include "ui/shell/MainWindow.h"
#include "ui/shell/Page.h"
#include "ui/shell/ProjectView.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QComboBox>
#include <QFontMetrics>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QProxyStyle>
#include <QPushButton>
#include <QScrollBar>
#include <QSettings>
#include <QSpinBox>
#include <QTest>
#include <QToolTip>
#include <QVBoxLayout>
#include <QWheelEvent>

#include <catch2/catch.hpp>

#include <algorithm>
#include <vector>

namespace lastrivet::ui {

namespace {

/// As on a desktop where one click opens what is clicked at.
class OpensByOneClick final : public QProxyStyle {
public:
    int styleHint(StyleHint hint, const QStyleOption *option, const QWidget *widget,
                  QStyleHintReturn *returned) const override
    {
        return hint == SH_ItemView_ActivateItemOnSingleClick
                   ? 1
                   : QProxyStyle::styleHint(hint, option, widget, returned);
    }
};

constexpr std::string_view markup = "<img src='/etc/hostname'><b>rivet</b>";

struct Opened {
    test::Workshop workshop;
    test::TemporaryFolder folder;
    QSettings settings{pathText(folder / "settings.ini"), QSettings::IniFormat};
    MainWindow window{{settings, workshop.executor, test::theme(), workshop.clock}};
};

bool isFreeText(const Field &field)
{
    static constexpr std::array<std::string_view, 5> names{"name", "title", "note", "what",
                                                           "caption"};
    return field.type == FieldType::Text &&
           std::find(names.begin(), names.end(), field.name) != names.end();
}

/// Begins every free text of every record with markup.
void mark(Edit &edit)
{
    const Records records = edit.records();
    for (std::size_t i = std::size_t(RecordType::Person); i < recordTypeCount; ++i) {
        const auto &description = describe(RecordType(i));
        const AnyTable &table = records.table(RecordType(i));
        for (const void *row = table.nextAny(0); row; row = table.nextAny(idOf(description, row))) {
            const auto copy = description.copy(row);
            for (const Field &field : description.fields) {
                if (!isFreeText(field))
                    continue;
                const auto value = field.value(copy.get());
                const auto *text = std::get_if<std::string_view>(&value);
                const std::string marked = std::string(markup) + std::string(text ? *text : "");
                field.assign(copy.get(), std::string_view(marked));
            }
            edit.putAny(description.type, copy.get());
        }
    }
}

/// How many labels show the markup; fails where one takes it for HTML.
int labelsWithMarkup(const QWidget &place)
{
    int count = 0;
    for (const QLabel *label : place.findChildren<QLabel *>()) {
        if (!label->isVisible() || !label->text().contains(QLatin1String("<img")))
            continue;
        INFO(label->text().toStdString());
        CHECK(label->textFormat() == Qt::PlainText);
        ++count;
    }
    return count;
}

/// The same while each of the page's records is shown.
int labelsWithMarkupOfRecords(ProjectView &view, PageId page)
{
    int count = 0;
    const auto records = view.session().records();
    for (std::size_t i = std::size_t(RecordType::Person); i < recordTypeCount; ++i) {
        const auto type = RecordType(i);
        const void *first = records->table(type).nextAny(0);
        if (!first || pageFor(type) != page)
            continue;
        view.page(page).showRecord({type, idOf(describe(type), first)});
        QCoreApplication::processEvents();
        count += labelsWithMarkup(view);
    }
    return count;
}

} // namespace

TEST_CASE("No text of a record is taken for HTML, on any page")
{
    Opened opened;
    REQUIRE(opened.window.openFolder(pathText(opened.workshop.folder())));
    opened.window.resize(1280, 720);
    opened.window.show();
    opened.window.view()->session().change(QStringLiteral("Marked"), mark);
    int count = 0;
    for (const PageDescription &page : pageList()) {
        opened.window.view()->open(page.id);
        for (int i = 0; i < 3; ++i)
            QCoreApplication::processEvents();
        count += labelsWithMarkup(opened.window);
        count += labelsWithMarkupOfRecords(*opened.window.view(), page.id);
    }
    CHECK(count > 5);
}

TEST_CASE("One click chooses a row, also on a desktop where it opens things elsewhere")
{
    PlainStyle style;
    style.setBaseStyle(new OpensByOneClick);
    constexpr auto hint = QStyle::SH_ItemView_ActivateItemOnSingleClick;
    CHECK(style.baseStyle()->styleHint(hint) == 1);
    CHECK(style.styleHint(hint, nullptr, nullptr, nullptr) == 0);
}

TEST_CASE("The wheel changes no choice and no number on its way over a form")
{
    test::theme();
    QWidget form;
    auto *column = new QVBoxLayout(&form);
    auto *choice = new QComboBox(&form);
    choice->addItems({QStringLiteral("one"), QStringLiteral("two"), QStringLiteral("three")});
    auto *number = new QSpinBox(&form);
    number->setValue(7);
    column->addWidget(choice);
    column->addWidget(number);
    form.show();
    REQUIRE(QTest::qWaitForWindowExposed(&form));
    QApplication::setActiveWindow(&form);
    choice->setFocus();
    for (QWidget *box : {static_cast<QWidget *>(choice), static_cast<QWidget *>(number)}) {
        const QPointF middle = QRectF(box->rect()).center();
        QWheelEvent turn(middle, box->mapToGlobal(middle), {}, QPoint(0, -120), Qt::NoButton,
                         Qt::NoModifier, Qt::NoScrollPhase, false);
        QApplication::sendEvent(box, &turn);
    }
    CHECK(choice->currentIndex() == 0);
    CHECK(number->value() == 7);
}

TEST_CASE("Enter presses the button that has the keyboard, and none from a line")
{
    test::theme();
    QWidget form;
    auto *column = new QVBoxLayout(&form);
    auto *line = new QLineEdit(&form);
    auto *button = new QPushButton(QStringLiteral("Record"), &form);
    column->addWidget(line);
    column->addWidget(button);
    int pressed = 0;
    QObject::connect(button, &QPushButton::clicked, &form, [&pressed] { ++pressed; });
    form.show();
    REQUIRE(QTest::qWaitForWindowExposed(&form));
    QTest::keyClick(line, Qt::Key_Return);
    CHECK(pressed == 0);
    QTest::keyClick(button, Qt::Key_Return);
    CHECK(pressed == 1);
    QTest::keyClick(button, Qt::Key_Enter, Qt::KeypadModifier);
    CHECK(pressed == 2);
    QTest::keyClick(button, Qt::Key_Return, Qt::ControlModifier);
    QKeyEvent held(QEvent::KeyPress, Qt::Key_Return, Qt::NoModifier, QString(), true);
    QCoreApplication::sendEvent(button, &held);
    CHECK(pressed == 2);
}

TEST_CASE("A field without anything of its own to take back leaves undo to the project")
{
    test::theme();
    QWidget form;
    auto *column = new QVBoxLayout(&form);
    auto *box = new QComboBox(&form);
    box->setEditable(true);
    const std::vector<QWidget *> fields{new QLineEdit(&form), box, new QSpinBox(&form),
                                        new QPlainTextEdit(&form)};
    for (QWidget *field : fields)
        column->addWidget(field);
    form.show();
    REQUIRE(QTest::qWaitForWindowExposed(&form));
    QApplication::setActiveWindow(&form);
    for (QWidget *field : fields) {
        INFO(field->metaObject()->className());
        const auto takes = [field] {
            QKeyEvent asked(QEvent::ShortcutOverride, Qt::Key_Z, Qt::ControlModifier);
            QCoreApplication::sendEvent(field, &asked);
            return asked.isAccepted();
        };
        field->setFocus();
        CHECK_FALSE(takes());
        QTest::keyClicks(field, QStringLiteral("1"));
        CHECK(takes());
    }
}

TEST_CASE("A label and a tip show markup as it is written")
{
    test::theme();
    QWidget window;
    QLabel label(QString::fromUtf8(markup.data(), qsizetype(markup.size())), &window);
    window.show();
    CHECK(labelsWithMarkup(window) == 1);

    QToolTip::showText(QPoint(10, 10), label.text(), &window);
    const QWidgetList shown = QApplication::topLevelWidgets();
    const auto tip = std::find_if(shown.begin(), shown.end(), [](const QWidget *widget) {
        return widget->inherits("QTipLabel");
    });
    REQUIRE(tip != shown.end());
    CHECK(qobject_cast<QLabel *>(*tip)->textFormat() == Qt::PlainText);
    QToolTip::hideText();
}

TEST_CASE("A long tip goes over several lines, and all of it is shown")
{
    test::theme();
    QWidget window;
    window.show();
    const auto shownFor = [&](const QString &text) {
        QToolTip::showText(QPoint(10, 10), text, &window);
        QLabel *tip = nullptr;
        const auto isThere = [&tip] {
            for (QWidget *widget : QApplication::topLevelWidgets()) {
                if (widget->inherits("QTipLabel") && widget->isVisible())
                    tip = qobject_cast<QLabel *>(widget);
            }
            return tip != nullptr;
        };
        REQUIRE(QTest::qWaitFor(isThere, 2000));
        return tip;
    };
    const QString name = QStringLiteral("bracket of the elevator's control column, ");
    const QLabel *tip = shownFor(name.repeated(2));
    const QFontMetrics metrics = tip->fontMetrics();
    CHECK(tip->width() < metrics.horizontalAdvance(tip->text()));
    CHECK(tip->height() >= 2 * metrics.lineSpacing());
    CHECK(tip->height() >= tip->heightForWidth(tip->width()));
    const QString unbroken = QStringLiteral("folder").repeated(16);
    tip = shownFor(name + unbroken);
    CHECK(tip->width() >= metrics.horizontalAdvance(unbroken));
    tip = shownFor(QStringLiteral("short"));
    CHECK(tip->width() < 2 * metrics.horizontalAdvance(QStringLiteral("short")) + 32);
    CHECK_FALSE(tip->wordWrap());
    QToolTip::hideText();
}

TEST_CASE("The list of a combo box shows all its lines")
{
    test::theme();
    QWidget window;
    auto *line = new QLineEdit(&window);
    auto *box = new QComboBox(&window);
    box->addItems({QStringLiteral("All"), QStringLiteral("Of a part"), QStringLiteral("Papers")});
    auto *layout = new QVBoxLayout(&window);
    layout->addWidget(line);
    layout->addWidget(box);
    window.show();
    QApplication::setActiveWindow(&window);
    line->setFocus();
    const int height = box->height();
    for (int opened = 0; opened < 2; ++opened) {
        box->setFocus();
        CHECK(box->sizeHint().height() == height);
        box->showPopup();
        QCoreApplication::processEvents();
        CHECK(box->view()->verticalScrollBar()->maximum() == 0);
        box->hidePopup();
    }
}

} // namespace lastrivet::ui
