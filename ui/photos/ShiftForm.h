// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"
#include "ui/widgets/ActForm.h"

#include <cstdint>
#include <optional>
#include <vector>

class QComboBox;
class QLabel;
class QLineEdit;

namespace lastrivet::ui {

class MomentLine;
class Session;

/// Sets the times of several photos right at once, whose camera's clock was wrong or in another
/// zone: says what the first and the last become, and moves them in one change.
class ShiftForm final : public ActForm {
    Q_OBJECT

public:
    explicit ShiftForm(Session &session, QWidget *parent = nullptr);

    void start(const std::vector<Id<Media>> &media);
    /// Those whose times are to be moved.
    const std::vector<Id<Media>> &media() const { return m_media; }
    /// What is no longer on record is no longer moved, and the others may have other times now.
    void recordsChanged();

protected:
    bool perform() override;

private:
    /// How it is said by how much.
    enum How { Later, Earlier, FirstTaken };

    void choose();
    void tell();
    std::optional<std::int64_t> minutes() const;
    QString whyNot() const;

    Session &m_session;
    std::vector<Id<Media>> m_media;
    QComboBox *m_how;
    QLineEdit *m_length;
    MomentLine *m_first;
    QLabel *m_what;
};

} // namespace lastrivet::ui
