// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squawks/RepairOptions.h"

#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/RecordNames.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QVBoxLayout>

namespace lastrivet::ui {

RepairOptions::RepairOptions(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_rows(new QVBoxLayout)
    , m_title(new QLineEdit(this))
    , m_pros(new QLineEdit(this))
    , m_cons(new QLineEdit(this))
{
    m_title->setPlaceholderText(tr("a way to repair it"));
    m_pros->setPlaceholderText(tr("for it"));
    m_cons->setPlaceholderText(tr("against it"));
    auto *line = new QHBoxLayout;
    for (QLineEdit *field : {m_title, m_pros, m_cons}) {
        field->setAccessibleName(field->placeholderText());
        line->addWidget(field);
        connect(field, &QLineEdit::returnPressed, this, &RepairOptions::add);
    }
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(m_rows);
    layout->addLayout(line);
}

void RepairOptions::show(Id<Squawk> squawk)
{
    const Squawk *found = m_session.records()->find(squawk);
    const auto options = found ? found->repair_options : std::vector<Squawk::RepairOption>();
    if (squawk == m_squawk && options == m_shown)
        return;
    m_squawk = squawk;
    m_shown = options;
    fill(options);
}

void RepairOptions::fill(const std::vector<Squawk::RepairOption> &options)
{
    while (QLayoutItem *item = m_rows->takeAt(0)) {
        item->widget()->hide();
        item->widget()->deleteLater();
        delete item;
    }
    for (std::size_t i = 0; i < options.size(); ++i)
        m_rows->addWidget(makeRow(options[i], i));
}

QWidget *RepairOptions::makeRow(const Squawk::RepairOption &option, std::size_t place)
{
    auto *row = new QWidget(this);
    auto *radio = new QRadioButton(toQt(option.title), row);
    radio->setChecked(option.chosen);
    QStringList words;
    if (!option.pros.empty())
        words.append(tr("for: %1").arg(toQt(option.pros)));
    if (!option.cons.empty())
        words.append(tr("against: %1").arg(toQt(option.cons)));
    auto *reasons = new QLabel(words.join(QStringLiteral(" · ")), row);
    reasons->setWordWrap(true);
    auto *removal = new QPushButton(tr("Remove"), row);
    removal->setProperty("flat", true);
    auto *text = new QVBoxLayout;
    text->setSpacing(0);
    text->addWidget(radio);
    text->addWidget(reasons);
    reasons->setContentsMargins(22, 0, 0, 0);
    reasons->setVisible(!words.isEmpty());
    auto *layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(text, 1);
    layout->addWidget(removal, 0, Qt::AlignTop);
    connect(radio, &QRadioButton::clicked, this, [this, place] { choose(place); });
    connect(removal, &QPushButton::clicked, this, [this, place] { remove(place); });
    return row;
}

bool RepairOptions::change(const QString &what,
                           const std::function<void(std::vector<Squawk::RepairOption> &)> &body)
{
    const Id<Squawk> id = m_squawk;
    if (!id)
        return false;
    const QString number = toQt(m_session.records()->find(id)->number);
    return m_session.change(tr("Squawk %1: %2").arg(number, what), [&](Edit &edit) {
        edit.update(id, [&](Squawk &squawk) { body(squawk.repair_options); });
    });
}

void RepairOptions::add()
{
    const std::string title = toStd(m_title->text());
    if (title.empty())
        return;
    const Squawk::RepairOption option{title, toStd(m_pros->text()), toStd(m_cons->text()), false};
    if (!change(tr("repair option added"), [&](auto &options) { options.push_back(option); }))
        return;
    for (QLineEdit *field : {m_title, m_pros, m_cons})
        field->clear();
    m_title->setFocus();
}

void RepairOptions::choose(std::size_t place)
{
    change(tr("repair option chosen"), [&](auto &options) {
        for (std::size_t i = 0; i < options.size(); ++i)
            options[i].chosen = i == place;
    });
}

void RepairOptions::remove(std::size_t place)
{
    change(tr("repair option removed"), [&](auto &options) {
        options.erase(options.begin() + std::ptrdiff_t(place));
    });
}

} // namespace lastrivet::ui
