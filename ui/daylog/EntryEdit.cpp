// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/daylog/EntryEdit.h"

#include "core/entry/EntryLine.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/RecordNames.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QKeyEvent>
#include <QStringListModel>

namespace lastrivet::ui {

namespace {

constexpr std::size_t offeredAtOnce = 8;
constexpr int fewestLetters = 2;

/// Core counts bytes of UTF-8, the line counts characters of UTF-16.
int charactersIn(const std::string &text, std::size_t bytes)
{
    return int(QString::fromUtf8(text.data(), qsizetype(bytes)).size());
}

} // namespace

EntryEdit::EntryEdit(Session &session, QWidget *parent)
    : QLineEdit(parent)
    , m_session(session)
    , m_names(new QStringListModel(this))
    , m_completer(new QCompleter(m_names, this))
{
    m_completer->setCompletionMode(QCompleter::UnfilteredPopupCompletion);
    m_completer->setWidget(this);
    connect(m_completer, qOverload<const QModelIndex &>(&QCompleter::activated), this,
            [this](const QModelIndex &index) { take(index.row()); });
    connect(this, &QLineEdit::textEdited, this, &EntryEdit::offer);
}

entry::PartWords EntryEdit::partWords(std::string_view line, std::size_t cursor,
                                      const entry::PartFinder &finder) const
{
    return entry::partWordsAt(line, cursor, *m_session.records(), finder, m_session.now());
}

void EntryEdit::offer()
{
    const auto records = m_session.records();
    const entry::PartFinder &finder = m_session.partFinder();
    const std::string line = text().toStdString();
    const auto cursor = text().left(cursorPosition()).toStdString().size();
    const auto words = partWords(line, cursor, finder);
    QStringList names;
    if (int(words.text.size()) >= fewestLetters) {
        for (const auto id : finder.matches(words.text, offeredAtOnce))
            names.append(partName(*records, id));
    }
    m_begin = charactersIn(line, words.begin);
    m_end = charactersIn(line, words.end);
    // A name that is there in full needs no offer.
    if (names.size() == 1 && names.front().compare(toQt(words.text), Qt::CaseInsensitive) == 0)
        names.clear();
    m_names->setStringList(names);
    if (names.isEmpty())
        m_completer->popup()->hide();
    else
        m_completer->complete();
}

/// Puts the part's code in place of what was typed, or its name when it has none.
void EntryEdit::take(int row)
{
    const QString name = m_names->stringList().value(row);
    const auto records = m_session.records();
    const auto part = m_session.partFinder().matches(toStd(name), 1);
    if (part.empty())
        return;
    const Component &component = *records->find(part.front());
    const QString word = toQt(component.code.empty() ? component.name : component.code);
    const QString rest = text().mid(m_end);
    setText(text().left(m_begin) + word + (rest.isEmpty() ? QStringLiteral(": ") : rest));
    setCursorPosition(m_begin + int(word.size()) + (rest.isEmpty() ? 2 : 0));
}

void EntryEdit::keyPressEvent(QKeyEvent *event)
{
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    const bool isChoosing =
        m_completer->popup()->isVisible() && m_completer->popup()->currentIndex().isValid();
    if (isEnter && !isChoosing) {
        m_completer->popup()->hide();
        Q_EMIT entered();
    } else if (event->key() == Qt::Key_Escape && !text().isEmpty()) {
        m_completer->popup()->hide();
        clear();
    } else {
        QLineEdit::keyPressEvent(event);
    }
}

} // namespace lastrivet::ui
