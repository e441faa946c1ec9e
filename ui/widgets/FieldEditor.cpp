// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/FieldEditor.h"

#include "core/base/Hyphens.h"
#include "core/entry/DurationText.h"
#include "core/stores/MoneyText.h"
#include "ui/convert/ExpiryText.h"
#include "ui/convert/FieldNumber.h"
#include "ui/convert/FieldText.h"
#include "ui/convert/MoneyText.h"
#include "ui/convert/NumberText.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/LongText.h"
#include "ui/widgets/RecordLine.h"
#include "ui/widgets/RecordSetEditor.h"

#include <QComboBox>
#include <QCoreApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QLocale>

namespace lastrivet::ui {

namespace {

/// Lets the inner widget fill the editor and be what focus and labels mean.
void hold(FieldEditor *editor, QWidget *inner)
{
    auto *layout = new QHBoxLayout(editor);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(inner);
    editor->setFocusProxy(inner);
}

FieldEditor::Assign assignText(const Field &field, std::string text)
{
    return [&field, text = std::move(text)](void *record) {
        return field.assign(record, text.empty() ? Scalar{} : Scalar{std::string_view(text)});
    };
}

FieldEditor::Assign assignScalar(const Field &field, Scalar value)
{
    return [&field, value](void *record) { return field.assign(record, value); };
}

class LineEditor final : public FieldEditor {
    Q_DECLARE_TR_FUNCTIONS(lastrivet::ui::LineEditor)

public:
    LineEditor(Session &session, const Field &field, QWidget *parent)
        : FieldEditor(parent)
        , m_session(session)
        , m_field(field)
        , m_line(new QLineEdit(this))
    {
        hold(this, m_line);
        m_line->installEventFilter(this);
        connect(m_line, &QLineEdit::editingFinished, this, [this] { settle(); });
    }
    // Losing the focus as it goes, the line would call what is no longer there; so would those of
    // the other editors.
    ~LineEditor() override { m_line->disconnect(this); }

    void show(const void *record) override
    {
        readFrom(record);
        showAgain();
    }
    void holdOn(const void *record) override
    {
        readFrom(record);
        m_line->setModified(true);
    }
    bool isBeingTyped() const override { return m_line->isModified(); }
    QString typed() const override { return m_line->text(); }
    void typeAgain(const QString &words) override
    {
        m_line->setText(words);
        m_line->setModified(true);
    }
    void settle() override
    {
        if (!m_line->isModified())
            return;
        m_line->setModified(false);
        const QString text = m_line->text().trimmed();
        if (text == m_shown)
            return;
        if (isMoney(m_field) && !text.isEmpty()) {
            settleMoney(text);
        } else if (isCurrencyField(m_field) && !text.isEmpty()) {
            settleCurrency(text);
        } else if (m_field.type == FieldType::Text) {
            const bool isPartNumber = m_field.name == "part_number";
            Q_EMIT committed(
                assignText(m_field, isPartNumber ? withPlainHyphens(toStd(text)) : toStd(text)));
        } else if (const auto value = read(text)) {
            Q_EMIT committed(assignScalar(m_field, *value));
        } else {
            m_line->setText(m_shown);
            Q_EMIT refused(whyNot(text));
        }
    }

protected:
    /// Escape takes back what is half typed.
    bool eventFilter(QObject *watched, QEvent *event) override
    {
        const bool isEscape = event->type() == QEvent::KeyPress &&
                              static_cast<const QKeyEvent *>(event)->key() == Qt::Key_Escape;
        if (!isEscape || !m_line->isModified())
            return FieldEditor::eventFilter(watched, event);
        showAgain();
        return true;
    }

private:
    void showAgain()
    {
        // Words that are chosen to be typed over stay chosen, whatever is shown anew around them.
        const bool isThere = m_line->text() == m_shown && !m_line->isModified();
        if (isThere && m_line->hasSelectedText())
            return;
        m_line->setText(m_shown);
        m_line->setCursorPosition(0);
        m_line->setModified(false);
    }
    void readFrom(const void *record)
    {
        m_shown = fieldText(*m_session.records(), m_field, record);
        m_readNumber = numberReader(m_field, record);
        if (isMoney(m_field))
            m_currency = currencyOf(m_field, record);
        if (isCurrencyField(m_field)) {
            const auto *units = amountOf(m_field, const_cast<void *>(record));
            m_amount = units ? std::optional(*units) : std::nullopt;
        }
    }
    /// An amount in the record's currency; one without gets the currency that was written, or the
    /// project's.
    void settleMoney(const QString &text)
    {
        const std::string usual =
            m_currency.empty() ? m_session.records()->project.currency : m_currency;
        const auto money = stores::readMoney(toStd(text), usual, decimalSign());
        if (!money || (!m_currency.empty() && money->currency != m_currency)) {
            m_line->setText(m_shown);
            Q_EMIT refused(
                money ? tr("This is kept in %1; change its currency first.").arg(toQt(m_currency))
                      : inWords(money.reason()));
            return;
        }
        Q_EMIT committed([&field = m_field, money = *money](void *record) {
            currencyOf(field, record) = money.currency;
            return field.assign(record, Scalar{money.minor_units});
        });
    }
    /// What is typed is a code, a name or a sign; the amount of the record stays the same, whose
    /// minor units may be others in this currency.
    void settleCurrency(const QString &text)
    {
        const std::string before = toStd(m_shown);
        const std::string code = stores::currencyCode(toStd(text));
        const int more = before.empty() ? 0 : stores::decimalsOf(code) - stores::decimalsOf(before);
        const auto amount = m_amount ? stores::withDecimals(*m_amount, more) : std::nullopt;
        if (code.empty() || (m_amount && !amount)) {
            m_line->setText(m_shown);
            Q_EMIT refused(code.empty()
                               ? tr("“%1” is no currency; write its code, like EUR.").arg(text)
                               : tr("The amount has more decimals than %1.").arg(toQt(code)));
            return;
        }
        m_line->setText(toQt(code));
        Q_EMIT committed([&field = m_field, code, amount](void *record) {
            if (std::int64_t *units = amountOf(field, record); units && amount)
                *units = *amount;
            return field.assign(record, Scalar{std::string_view(code)});
        });
    }
    std::optional<Scalar> read(const QString &text) const
    {
        if (text.isEmpty())
            return Scalar{};
        if (m_field.type == FieldType::Moment) {
            const auto moment = isExpiryOfLot(m_field) ? typedExpiry(text, m_session.today())
                                                       : typedMoment(text, m_session.today());
            return moment ? std::optional<Scalar>(*moment) : std::nullopt;
        }
        if (m_field.type == FieldType::Real) {
            const auto value = m_readNumber(text);
            return value ? std::optional<Scalar>(*value) : std::nullopt;
        }
        return readWhole(text);
    }
    std::optional<Scalar> readWhole(const QString &text) const
    {
        if (m_field.name.ends_with("minutes")) {
            const auto minutes = entry::parseDuration(toStd(text));
            return minutes ? std::optional<Scalar>(minutes->count()) : std::nullopt;
        }
        bool isNumber = false;
        const qlonglong value = QLocale().toLongLong(text, &isNumber);
        return isNumber ? std::optional<Scalar>(std::int64_t(value)) : std::nullopt;
    }
    QString whyNot(const QString &text) const
    {
        if (isExpiryOfLot(m_field))
            return whyNoExpiry(text, m_session.today());
        if (m_field.type == FieldType::Moment)
            return tr("“%1” is no day; write it as %2, as %2 14:30, or “yesterday”.")
                .arg(text, toQt(m_session.today().text()));
        if (m_field.name.ends_with("minutes"))
            return tr("“%1” is no duration; write it as 2h15 or 90m.").arg(text);
        if (m_field.type != FieldType::Real)
            return tr("“%1” is no whole number.").arg(text);
        // It says why, where a number may be read in two ways.
        const auto number = m_readNumber(text);
        return number ? QString() : inWords(number.reason());
    }

    Session &m_session;
    const Field &m_field;
    QLineEdit *m_line;
    QString m_shown;
    NumberReader m_readNumber = readNumber;
    /// Of the record that is shown, where the field is an amount.
    std::string m_currency;
    /// Of the record that is shown, where the field is a currency.
    std::optional<std::int64_t> m_amount;
};

class LongEditor final : public FieldEditor {
public:
    LongEditor(const Field &field, QWidget *parent)
        : FieldEditor(parent)
        , m_field(field)
        , m_text(new LongText(this))
    {
        hold(this, m_text);
        connect(m_text, &LongText::finished, this, [this] { settle(); });
    }
    ~LongEditor() override { m_text->disconnect(this); }

    void show(const void *record) override
    {
        m_text->setPlainText(textIn(record));
        // It gives back other ends of lines and other spaces than it got: nobody typed those.
        m_shown = m_text->toPlainText();
    }
    bool isBeingTyped() const override { return m_text->toPlainText() != m_shown; }
    QString typed() const override { return m_text->toPlainText(); }
    void typeAgain(const QString &words) override { m_text->setPlainText(words); }
    void settle() override
    {
        if (!isBeingTyped())
            return;
        m_shown = m_text->toPlainText();
        Q_EMIT committed(assignText(m_field, toStd(m_shown)));
    }
    void takeBack(const void *record) override
    {
        if (m_text->toPlainText().trimmed().isEmpty())
            show(record);
        else
            m_shown = textIn(record);
    }

private:
    QString textIn(const void *record) const
    {
        const Scalar value = m_field.value(record);
        const auto *text = std::get_if<std::string_view>(&value);
        return text ? toQt(*text) : QString();
    }

    const Field &m_field;
    LongText *m_text;
    QString m_shown;
};

/// A word of a vocabulary, or yes and no; "not known" where the record may leave it open.
class ChoiceEditor final : public FieldEditor {
    Q_DECLARE_TR_FUNCTIONS(lastrivet::ui::ChoiceEditor)

public:
    ChoiceEditor(const Field &field, bool isNullable, QWidget *parent)
        : FieldEditor(parent)
        , m_field(field)
        , m_box(new QComboBox(this))
    {
        hold(this, m_box);
        if (isNullable)
            m_box->addItem(tr("not said"));
        if (field.type == FieldType::Bool) {
            m_box->addItem(tr("no"), false);
            m_box->addItem(tr("yes"), true);
        }
        for (const auto word : field.words)
            m_box->addItem(plainWord(word), toQt(word));
        connect(m_box, &QComboBox::activated, this, [this] { commit(); });
    }

    void show(const void *record) override
    {
        const Scalar value = m_field.value(record);
        QVariant shown;
        if (const auto *flag = std::get_if<bool>(&value))
            shown = *flag;
        else if (const auto *word = std::get_if<std::string_view>(&value))
            shown = toQt(*word);
        m_box->setCurrentIndex(shown.isValid() ? m_box->findData(shown) : 0);
    }

private:
    void commit()
    {
        const QVariant chosen = m_box->currentData();
        if (chosen.typeId() == QMetaType::Bool)
            Q_EMIT committed(assignScalar(m_field, chosen.toBool()));
        else
            Q_EMIT committed(assignText(m_field, toStd(chosen.toString())));
    }

    const Field &m_field;
    QComboBox *m_box;
};

class ReferenceEditor final : public FieldEditor {
public:
    ReferenceEditor(Session &session, const Field &field, QWidget *parent)
        : FieldEditor(parent)
        , m_field(field)
        , m_line(new RecordLine(session, *field.target, this))
    {
        hold(this, m_line);
        connect(m_line, &RecordLine::chosenByPerson, this, [this](qint64 id) {
            Q_EMIT committed(assignScalar(m_field, id ? Scalar{std::int64_t(id)} : Scalar{}));
        });
    }
    ~ReferenceEditor() override { m_line->disconnect(this); }

    void show(const void *record) override
    {
        const Scalar value = m_field.value(record);
        const auto *id = std::get_if<std::int64_t>(&value);
        m_line->setChosen(id ? *id : 0);
    }
    bool isBeingTyped() const override { return m_line->isBeingTyped(); }
    QString typed() const override { return m_line->text(); }
    void typeAgain(const QString &words) override { m_line->typeAgain(words); }
    void settle() override { m_line->settle(); }

private:
    const Field &m_field;
    RecordLine *m_line;
};

} // namespace

FieldEditor *makeFieldEditor(Session &session, const Field &field, const void *defaults,
                             bool isLong, QWidget *parent)
{
    switch (field.type) {
    case FieldType::Enum:
    case FieldType::Bool:
        return new ChoiceEditor(field, isNull(field.value(defaults)), parent);
    case FieldType::Ref:
        return new ReferenceEditor(session, field, parent);
    case FieldType::Refs:
        return new RecordSetEditor(session, field, parent);
    default:
        if (isLong)
            return new LongEditor(field, parent);
        return new LineEditor(session, field, parent);
    }
}

} // namespace lastrivet::ui
