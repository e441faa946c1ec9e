// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/SeveralParts.h"

#include "core/project/acts/PartActs.h"
#include "core/records/Vocabulary.h"
#include "ui/convert/FieldText.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/ActLine.h"
#include "ui/widgets/RecordLine.h"
#include "ui/widgets/WithdrawAct.h"

#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace lastrivet::ui {

namespace {

template <class Word> QComboBox *makeChoice(QWidget *parent)
{
    auto *box = new QComboBox(parent);
    box->addItem(SeveralParts::tr("as they are"));
    for (std::size_t i = 0; i < Words<Word>::list.size(); ++i)
        box->addItem(plainWord(word(Word(i))), int(i));
    return box;
}

template <class Word> std::optional<Word> chosenIn(const QComboBox &box)
{
    return box.currentIndex() > 0 ? std::optional(Word(box.currentData().toInt())) : std::nullopt;
}

} // namespace

class SeveralParts::Form final : public ActForm {
public:
    Form(Session &session, QWidget *parent)
        : ActForm(SeveralParts::tr("Set for all"), parent)
        , m_session(session)
        , m_zone(new QLineEdit(this))
        , m_kind(makeChoice<ComponentKind>(this))
        , m_construction(makeChoice<Construction>(this))
        , m_place(new QLineEdit(this))
        , m_shelf(new QLineEdit(this))
        , m_inside(new RecordLine(session, RecordType::Component, this))
    {
        for (QLineEdit *line : {m_zone, m_shelf, m_place, static_cast<QLineEdit *>(m_inside)})
            line->setPlaceholderText(SeveralParts::tr("as they are"));
        addField(SeveralParts::tr("Zone"), m_zone);
        addField(SeveralParts::tr("Kind"), m_kind);
        addField(SeveralParts::tr("Construction"), m_construction);
        addField(SeveralParts::tr("Place"), m_place);
        addField(SeveralParts::tr("Shelf"), m_shelf);
        addField(SeveralParts::tr("Move into"), m_inside);
        m_inside->keepUnknown();
        setLeavable(false);
        noteFields();
        // It stands there always: who leaves it drops what is typed.
        connect(this, &ActForm::left, this, [this] { clear(); });
    }

    /// What is typed is for the parts that are chosen, and for none while one alone is.
    bool isBegun() const override { return ActForm::isBegun() && !parentWidget()->isHidden(); }

    void show(const std::vector<Id<Component>> &parts)
    {
        m_parts = parts;
        setTitle(SeveralParts::tr("%n parts chosen", "", int(parts.size())));
        setEnabled(!m_session.isReadOnly());
    }

protected:
    bool perform() override
    {
        if (!m_inside->settle()) {
            hint(m_inside->unknownWords());
            m_inside->setFocus();
            return false;
        }
        const auto kind = chosenIn<ComponentKind>(*m_kind);
        const auto construction = chosenIn<Construction>(*m_construction);
        const std::string zone = toStd(m_zone->text());
        const std::string shelf = toStd(m_shelf->text());
        const std::string place = toStd(m_place->text());
        const Id<Component> inside{m_inside->chosen()};
        const bool isAny =
            kind || construction || !zone.empty() || !shelf.empty() || !place.empty();
        if (!isAny && !inside) {
            hint(SeveralParts::tr("Nothing is filled in that could be set."));
            return false;
        }
        const QString label = SeveralParts::tr("%n parts changed", "", int(m_parts.size()));
        const bool isDone = m_session.change(label, [&](Edit &edit) {
            for (const Id<Component> id : m_parts) {
                edit.update(id, [&](Component &part) {
                    part.kind = kind.value_or(part.kind);
                    if (construction)
                        part.construction = construction;
                    part.zone = zone.empty() ? part.zone : zone;
                    part.shelf = shelf.empty() ? part.shelf : shelf;
                    part.place = place.empty() ? part.place : place;
                });
            }
            if (inside)
                acts::moveParts(edit, m_parts, inside, {});
        });
        if (isDone)
            clear();
        return isDone;
    }

private:
    void clear()
    {
        for (QLineEdit *line : {m_zone, m_shelf, m_place})
            line->setText({});
        m_inside->setChosen(0);
        m_kind->setCurrentIndex(0);
        m_construction->setCurrentIndex(0);
        noteFields();
    }

    Session &m_session;
    std::vector<Id<Component>> m_parts;
    QLineEdit *m_zone;
    QComboBox *m_kind;
    QComboBox *m_construction;
    QLineEdit *m_place;
    QLineEdit *m_shelf;
    RecordLine *m_inside;
};

SeveralParts::SeveralParts(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_form(new Form(session, this))
    , m_ask(new ActLine(session, this))
{
    auto *withdraw = new QPushButton(tr("Withdraw all…"), this);
    withdraw->setEnabled(!session.isReadOnly());
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(12, 0, 0, 0);
    layout->addWidget(m_form);
    layout->addWidget(withdraw, 0, Qt::AlignLeft);
    layout->addWidget(m_ask);
    layout->addStretch(1);
    connect(withdraw, &QPushButton::clicked, this, &SeveralParts::withdraw);
    connect(m_form, &ActForm::left, this, &SeveralParts::finished);
    connect(m_ask, &ActLine::ended, this, &SeveralParts::finished);
    connect(m_ask, &ActLine::wanted, this, [this] {
        std::vector<Id<Component>> parts;
        for (const RecordRef &record : m_ask->about())
            parts.push_back(Id<Component>{record.id});
        Q_EMIT begunWanted(parts);
    });
}

void SeveralParts::show(const std::vector<Id<Component>> &parts)
{
    m_parts = parts;
    m_ask->follow(shown());
    m_form->show(parts);
}

std::vector<RecordRef> SeveralParts::shown() const
{
    std::vector<RecordRef> records;
    for (const Id<Component> part : m_parts)
        records.push_back({RecordType::Component, part.value()});
    return records;
}

void SeveralParts::withdraw()
{
    askToWithdraw(m_session, *m_ask, shown());
}

} // namespace lastrivet::ui
