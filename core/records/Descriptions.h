// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Description.h"

// One function per record type, defined beside its struct; `describe` chooses among them.
namespace lastrivet {

const RecordDescription &describeProjectFacts();
const RecordDescription &describePerson();
const RecordDescription &describeComponent();
const RecordDescription &describeStep();
const RecordDescription &describeWorkSession();
const RecordDescription &describeClosing();
const RecordDescription &describeHoldPoint();
const RecordDescription &describeCheck();
const RecordDescription &describeInspection();
const RecordDescription &describeSignOff();
const RecordDescription &describeSquawk();
const RecordDescription &describeDeviation();
const RecordDescription &describeBulletin();
const RecordDescription &describeFastener();
const RecordDescription &describeMeasurement();
const RecordDescription &describeTool();
const RecordDescription &describePartLine();
const RecordDescription &describeMaterialLot();
const RecordDescription &describeMaterialUse();
const RecordDescription &describeMedia();
const RecordDescription &describeExpense();
const RecordDescription &describeCreditTask();
const RecordDescription &describeEquipment();
const RecordDescription &describeWeighing();
const RecordDescription &describeLoadingCase();
const RecordDescription &describeEnvelope();
const RecordDescription &describeCertificateDocument();
const RecordDescription &describeFlight();

} // namespace lastrivet
