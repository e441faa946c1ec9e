// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stores/ClaimView.h"

#include "core/base/Error.h"
#include "core/exchange/WholeFile.h"
#include "ui/convert/QtText.h"
#include "ui/convert/UsualFolders.h"
#include "ui/print/Language.h"
#include "ui/prints/PrintTask.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/NewFileName.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QDir>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTextCursor>
#include <QTextDocument>
#include <QVBoxLayout>

#include <ostream>

namespace lastrivet::ui {

ClaimView::ClaimView(Session &session, QWidget *parent)
    : Unfinished(parent)
    , m_session(session)
    , m_title(heading({}, this))
    , m_language(new QComboBox(this))
    , m_text(new QPlainTextEdit(this))
{
    m_chooseFile = [this](const QString &suggested) {
        return askForNewFile(this, tr("Save the letter"), suggested, tr("Text (*.txt)"));
    };
    build();
}

void ClaimView::build()
{
    for (const print::Language &language : print::languages())
        m_language->addItem(language.name, int(language.id));
    m_language->setCurrentIndex(
        std::max(0, m_language->findData(int(usualChoices().wording.locale().language()))));
    m_language->setAccessibleName(tr("Language of the letter"));
    m_text->setAccessibleName(tr("The letter"));
    m_text->setTabChangesFocus(true);
    auto *copyIt = new QPushButton(tr("Copy"), this);
    auto *saveIt = new QPushButton(tr("Save as…"), this);
    auto *back = flatButton(tr("Back to the list"), this);
    setPrimary(*copyIt, true);
    auto *line = new QHBoxLayout;
    line->addWidget(m_title, 1);
    line->addWidget(m_language);
    line->addWidget(back);
    line->addWidget(saveIt);
    line->addWidget(copyIt);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(line);
    layout->addWidget(m_text, 1);
    connect(m_language, &QComboBox::activated, this, &ClaimView::writeAnew);
    connect(copyIt, &QPushButton::clicked, this, &ClaimView::copy);
    connect(saveIt, &QPushButton::clicked, this, &ClaimView::save);
    connect(back, &QPushButton::clicked, this, &ClaimView::left);
}

void ClaimView::show(const stores::Claim &claim)
{
    const bool isSame = claim.shipment == m_claim.shipment;
    m_claim = claim;
    m_title->setText(claim.shipment.empty() ? tr("Letter about what named no shipment")
                                            : tr("Letter: %1").arg(toQt(claim.shipment)));
    // What somebody wrote into the letter is kept while it is about the same shipment.
    if (!isSame || !m_text->document()->isModified())
        m_text->setPlainText(letter());
    m_text->setFocus();
}

QString ClaimView::letter() const
{
    const auto language = QLocale::Language(m_language->currentData().toInt());
    const print::Wording wording = print::wordingIn(print::languageFor(language));
    QStringList lines;
    for (const Message &line : stores::letter(*m_session.records(), m_claim, m_session.today()))
        lines << wording.text(line);
    return lines.join(QLatin1Char('\n')) + QLatin1Char('\n');
}

/// The text's own undo brings back what somebody wrote into it.
void ClaimView::writeAnew()
{
    QTextCursor all(m_text->document());
    all.select(QTextCursor::Document);
    all.insertText(letter());
    m_text->moveCursor(QTextCursor::Start);
    m_text->document()->setModified(false);
}

bool ClaimView::isBegun() const
{
    return m_text->document()->isModified() && text() != m_used;
}

QString ClaimView::heldBackWords() const
{
    return tr("What was written into the letter is kept nowhere. Copy it, save it, or do the same "
              "once more to leave without it.");
}

QString ClaimView::text() const
{
    return m_text->toPlainText();
}

void ClaimView::copy()
{
    m_used = text();
    QApplication::clipboard()->setText(m_used);
    m_session.say(tr("The letter is on the clipboard."));
}

void ClaimView::save()
{
    const QString name =
        printFileName(tr("Claim"), m_session.today().text(), QStringLiteral(".txt"));
    const QString file = m_chooseFile(QDir(documentsFolder()).filePath(name));
    if (file.isEmpty())
        return;
    try {
        const std::string written = text().toStdString();
        exchange::writeWholeFile(toPath(file), [&](std::ostream &out) { out << written; });
        m_used = text();
        m_session.say(tr("The letter is in %1.").arg(QDir::toNativeSeparators(file)));
    } catch (const Fault &fault) {
        m_session.complain(fault);
    }
}

void ClaimView::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        Q_EMIT left();
    else
        Unfinished::keyPressEvent(event);
}

} // namespace lastrivet::ui
