// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <QTranslator>

class QWidget;

namespace lastrivet::test {

/// Every shown thing that takes the keyboard and has no name for a screen reader.
QStringList nameless(QWidget &place);

/// Every shown label, button and box that is narrower or lower than its words.
QStringList cutTexts(QWidget &place);

/// Every shown widget that sticks out of the one that it lies in, unless that one is scrolled.
QStringList outsideTheirPlace(QWidget &place);

/// Shown widgets that the tabulator ought to reach from the first one and does not, and traps that
/// it does not leave.
QStringList beyondTheTabulator(QWidget &place);

/// Makes every text a third longer, as German and French are; English otherwise.
class LongWords final : public QTranslator {
public:
    QString translate(const char *context, const char *source, const char *disambiguation,
                      int n) const override;
    bool isEmpty() const override { return false; }
};

} // namespace lastrivet::test
