// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Squawk.h"
#include "ui/shell/Drafts.h"
#include "ui/widgets/RestTimer.h"

#include <QWidget>

#include <functional>
#include <optional>
#include <vector>

class QBoxLayout;
class QLineEdit;
class QVBoxLayout;

namespace lastrivet::ui {

class Session;

/// The ways in which a squawk may be repaired, what speaks for and against each, and which is
/// chosen.
class RepairOptions final : public QWidget {
    Q_OBJECT

public:
    explicit RepairOptions(Session &session, QWidget *parent = nullptr);

    void show(Id<Squawk> squawk);

protected:
    void hideEvent(QHideEvent *event) override;

private:
    /// The words in the line, and the way that they are of; none when they are for a new one.
    struct Line {
        Squawk::RepairOption words;
        std::optional<Squawk::RepairOption> edited;
    };

    QWidget *makeRow(const Squawk::RepairOption &option, std::size_t place);
    void addAct(QBoxLayout &layout, const QString &words, const QString &name,
                const std::function<void()> &act);
    QString reasonsFor(const Squawk::RepairOption &option) const;
    Line line() const;
    void setLine(const Line &line);
    void keepLine();
    void keepDraft();
    static QString asText(const Line &line);
    static Line fromText(const QString &text);
    bool mayEdit(const Squawk::RepairOption &option);
    void edit(std::size_t place);
    void choose(std::size_t place);
    void remove(std::size_t place);
    bool change(const QString &what, const std::function<void(Squawk &)> &body);

    Session &m_session;
    Id<Squawk> m_squawk;
    std::vector<Squawk::RepairOption> m_shown;
    /// As it was when its words were put into the line: its place may change meanwhile.
    std::optional<Squawk::RepairOption> m_edited;
    /// The way whose edit the words in the line held back last, and these words.
    QString m_heldBackBy;
    /// What is typed and not kept.
    Drafts m_drafts;
    RestTimer m_soon;
    QVBoxLayout *m_rows;
    QLineEdit *m_title;
    QLineEdit *m_pros;
    QLineEdit *m_cons;
};

} // namespace lastrivet::ui
