// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractItemModelTester>
#include <QStringList>

namespace lastrivet::test {

/// Watches a model with Qt's own checks while it lives, and fails the test for what they find.
class ModelWatch {
public:
    explicit ModelWatch(QAbstractItemModel &model);
    ~ModelWatch();

    /// Fails the test when the model broke a rule so far.
    void check();

private:
    QAbstractItemModelTester m_tester;
};

} // namespace lastrivet::test
