// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/prints/PrintForm.h"

#include "core/packet/Tag.h"
#include "ui/convert/QtText.h"
#include "ui/convert/UsualFolders.h"
#include "ui/print/Language.h"
#include "ui/shell/Session.h"
#include "ui/widgets/NewFileName.h"
#include "ui/widgets/NumberBox.h"
#include "ui/widgets/Overlay.h"
#include "ui/widgets/PathLine.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr int widest = 620;
constexpr int closingListHeight = 132;
constexpr int mostSheets = 50;

} // namespace

PrintForm::PrintForm(QWidget *parent)
    : ActForm(tr("Print"), parent)
    , m_kind(new QComboBox(this))
    , m_closings(new QListWidget(this))
    , m_hasCodes(new QCheckBox(tr("with a code that Find reads"), this))
    , m_onlyWithShelf(new QCheckBox(tr("only parts that have a shelf"), this))
    , m_paper(new QComboBox(this))
    , m_grid(new QComboBox(this))
    , m_used(new NumberBox(this))
    , m_sheets(new NumberBox(this))
    , m_language(new QComboBox(this))
    , m_file(new PathLine(this))
{
    setTitle(tr("A paper is written as PDF and opened; from there it goes to any printer."));
    m_sheets->setRange(1, mostSheets);
    m_hasCodes->setChecked(true);
    m_closings->setFixedHeight(closingListHeight);
    m_closings->setProperty("checkLines", true);
    for (int kind = 0; kind < printKindCount; ++kind)
        m_kind->addItem(nameOf(PrintKind(kind)));
    offerPapers();
    offerLanguages();
    addFields();
    connect(m_kind, &QComboBox::currentIndexChanged, this, &PrintForm::showKind);
    connect(m_paper, &QComboBox::currentIndexChanged, this, &PrintForm::offerGrids);
    connect(this, &ActForm::left, this, &QWidget::hide);
    keepPlaced(*this, [this] { place(); });
    hide();
}

void PrintForm::addFields()
{
    addField(tr("Paper to make"), m_kind);
    addField(tr("For which closings"), m_closings);
    addField({}, tickField());
    addField(tr("Code"), m_hasCodes);
    addField(tr("Which parts"), m_onlyWithShelf);
    addField(tr("Paper size"), m_paper);
    addField(tr("Label size"), m_grid);
    addField(tr("Labels already used"), m_used);
    addField(tr("Sheets"), m_sheets);
    addField(tr("Language"), m_language);
    addField(tr("File"), fileField());
    m_file->setAccessibleName(tr("File"));
    // The keyboard goes to the line inside a spin box.
    for (const NumberBox *box : {m_used, m_sheets})
        box->findChild<QLineEdit *>()->setAccessibleName(box->accessibleName());
}

/// Mostly one closing is wanted, or all of them.
QWidget *PrintForm::tickField()
{
    m_ticks = new QWidget(this);
    auto *all = new QPushButton(tr("Tick all"), m_ticks);
    auto *none = new QPushButton(tr("Tick none"), m_ticks);
    auto *line = new QHBoxLayout(m_ticks);
    line->setContentsMargins(0, 0, 0, 0);
    for (QPushButton *button : {all, none}) {
        button->setProperty("flat", true);
        line->addWidget(button);
    }
    line->addStretch(1);
    connect(all, &QPushButton::clicked, this, [this] { tickEvery(Qt::Checked); });
    connect(none, &QPushButton::clicked, this, [this] { tickEvery(Qt::Unchecked); });
    return m_ticks;
}

void PrintForm::tickEvery(Qt::CheckState state)
{
    for (int row = 0; row < m_closings->count(); ++row)
        m_closings->item(row)->setCheckState(state);
}

QWidget *PrintForm::fileField()
{
    auto *field = new QWidget(this);
    auto *choose = new QPushButton(tr("Choose…"), field);
    auto *line = new QHBoxLayout(field);
    line->setContentsMargins(0, 0, 0, 0);
    line->addWidget(m_file, 1);
    line->addWidget(choose);
    connect(choose, &QPushButton::clicked, this, &PrintForm::browse);
    return field;
}

void PrintForm::offerPapers()
{
    m_paper->addItem(QStringLiteral("A4"));
    m_paper->addItem(QStringLiteral("Letter"));
    offerGrids();
}

void PrintForm::offerLanguages()
{
    for (const print::Language &language : print::languages())
        m_language->addItem(language.name, int(language.id));
}

void PrintForm::chooseUsual()
{
    const print::Choices usual = usualChoices();
    m_paper->setCurrentIndex(int(usual.paper));
    m_language->setCurrentIndex(
        std::max(0, m_language->findData(int(usual.wording.locale().language()))));
}

void PrintForm::offerGrids()
{
    m_grid->clear();
    for (const print::LabelGrid &grid : print::labelGrids(paper()))
        m_grid->addItem(tr("%1 × %2 mm, %3 on a sheet")
                            .arg(QLocale().toString(grid.width), QLocale().toString(grid.height))
                            .arg(grid.count()));
    m_used->setRange(0, print::labelGrids(paper()).front().count() * 4);
}

void PrintForm::offerClosings(Id<Closing> only)
{
    m_closings->clear();
    const auto wanted = packet::closingsToTag(*m_session->answer());
    const bool isOne = std::ranges::find(wanted, only) != wanted.end();
    for (const packet::Tag &tag :
         packet::tags(*m_session->records(), *m_session->answer(), wanted)) {
        auto *item = new QListWidgetItem(toQt(tag.title), m_closings);
        item->setData(Qt::UserRole, qlonglong(tag.closing.value()));
        item->setCheckState(!isOne || tag.closing == only ? Qt::Checked : Qt::Unchecked);
        // In a long list the one line that is ticked would be out of sight.
        if (tag.closing == only)
            m_closings->setCurrentItem(item);
    }
}

PrintKind PrintForm::kind() const
{
    return PrintKind(std::max(0, m_kind->currentIndex()));
}

print::Paper PrintForm::paper() const
{
    return print::Paper(std::max(0, m_paper->currentIndex()));
}

QString PrintForm::ending() const
{
    return kind() == PrintKind::Calendar ? QStringLiteral(".ics") : QStringLiteral(".pdf");
}

void PrintForm::open(Session &session, PrintKind kind, Id<Closing> only)
{
    QWidget *before = window()->focusWidget();
    if (before && isHidden())
        connect(this, &ActForm::left, before, qOverload<>(&QWidget::setFocus),
                Qt::SingleShotConnection);
    m_session = &session;
    m_asked.clear();
    hint({});
    chooseUsual();
    offerClosings(only);
    m_kind->setCurrentIndex(int(kind));
    showKind();
    show();
    raise();
    place();
    m_kind->setFocus();
}

void PrintForm::showKind()
{
    const PrintKind chosen = kind();
    const bool isLabel = isForLabels(chosen);
    setFieldVisible(m_closings, chosen == PrintKind::Tags);
    setFieldVisible(m_ticks, chosen == PrintKind::Tags);
    setFieldVisible(m_hasCodes, chosen == PrintKind::Tags);
    setFieldVisible(m_onlyWithShelf, chosen == PrintKind::PartLabels);
    setFieldVisible(m_grid, isLabel);
    setFieldVisible(m_used, isLabel);
    setFieldVisible(m_sheets, isBlankForm(chosen));
    setFieldVisible(m_paper, chosen != PrintKind::Calendar);
    setDoWords(chosen == PrintKind::Calendar ? tr("Write") : tr("Print"));
    if (!m_session)
        return;
    const QString name = printFileName(nameOf(chosen), m_session->today().text(), ending());
    const QDir folder(documentsFolder());
    m_file->setText(QDir::toNativeSeparators(folder.filePath(name)));
    place();
}

void PrintForm::place()
{
    if (!parentWidget() || !isVisible())
        return;
    const QSize room = parentWidget()->size();
    setFixedWidth(std::min(widest, room.width() - 32));
    adjustSize();
    move((room.width() - width()) / 2, std::max(8, std::min(48, room.height() - height() - 8)));
}

void PrintForm::browse()
{
    const bool isCalendar = kind() == PrintKind::Calendar;
    const QString file = askForNewFile(this, nameOf(kind()), withEnding(m_file->text(), ending()),
                                       isCalendar ? tr("Calendar (*.ics)") : tr("PDF (*.pdf)"));
    if (file.isEmpty())
        return;
    m_file->setText(file);
    // The file dialog has asked already whether it may go.
    m_asked = file;
}

PrintWish PrintForm::wish() const
{
    PrintWish wish;
    wish.kind = kind();
    const auto language = QLocale::Language(m_language->currentData().toInt());
    wish.choices = {paper(), print::wordingIn(print::languageFor(language))};
    wish.file = withEnding(wholePath(m_file->text(), documentsFolder()), ending());
    for (int row = 0; row < m_closings->count(); ++row) {
        const QListWidgetItem *item = m_closings->item(row);
        if (item->checkState() == Qt::Checked)
            wish.closings.push_back(Id<Closing>{item->data(Qt::UserRole).toLongLong()});
    }
    std::sort(wish.closings.begin(), wish.closings.end());
    wish.hasCodes = m_hasCodes->isChecked();
    wish.grid = print::labelGrids(paper())[std::size_t(std::max(0, m_grid->currentIndex()))];
    wish.usedLabels = m_used->value();
    wish.onlyWithShelf = m_onlyWithShelf->isChecked();
    wish.sheets = m_sheets->value();
    return wish;
}

/// Enter in the line of the file prints, as it saves in a dialog of files.
void PrintForm::keyPressEvent(QKeyEvent *event)
{
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (isEnter && window()->focusWidget() == m_file)
        tryToPerform();
    else
        ActForm::keyPressEvent(event);
}

bool PrintForm::perform()
{
    const PrintWish chosen = wish();
    if (chosen.file.isEmpty()) {
        hint(tr("It needs a file to write to."));
        return false;
    }
    // What is chosen here is not to be chosen again because of a slip in a path.
    m_file->setText(QDir::toNativeSeparators(chosen.file));
    const QFileInfo place(chosen.file);
    if (!QFileInfo(place.path()).isDir()) {
        hint(tr("There is no folder %1.").arg(QDir::toNativeSeparators(place.path())));
        m_file->setFocus();
        return false;
    }
    if (place.isDir()) {
        hint(tr("%1 is a folder; the file needs a name.").arg(place.fileName()));
        m_file->setFocus();
        return false;
    }
    if (chosen.kind == PrintKind::Tags && chosen.closings.empty()) {
        hint(m_closings->count() == 0 ? tr("No closing that is begun must stay open.")
                                      : tr("It needs at least one closing."));
        return false;
    }
    if (QFileInfo::exists(chosen.file) && m_asked != chosen.file) {
        m_asked = chosen.file;
        hint(tr("A file of this name is there. Press again to replace it."));
        return false;
    }
    carryOut(*m_session, chosen);
    return true;
}

} // namespace lastrivet::ui
