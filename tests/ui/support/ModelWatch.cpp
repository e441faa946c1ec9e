// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/ModelWatch.h"

#include <catch2/catch.hpp>

namespace lastrivet::test {

namespace {

QStringList complaints;

void listen(QtMsgType, const QMessageLogContext &context, const QString &message)
{
    if (qstrcmp(context.category, "qt.modeltest") == 0)
        complaints << message;
}

/// From before the tester is made, which looks the model over at once.
QAbstractItemModel *listenedTo(QAbstractItemModel &model)
{
    complaints.clear();
    qInstallMessageHandler(listen);
    return &model;
}

} // namespace

ModelWatch::ModelWatch(QAbstractItemModel &model)
    : m_tester(listenedTo(model), QAbstractItemModelTester::FailureReportingMode::Warning)
{
}

ModelWatch::~ModelWatch()
{
    qInstallMessageHandler(nullptr);
}

void ModelWatch::check()
{
    INFO(complaints.join(QLatin1Char('\n')).toStdString());
    CHECK(complaints.isEmpty());
}

} // namespace lastrivet::test
