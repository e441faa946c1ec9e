// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/TemporaryFolder.h"

namespace lastrivet::test {

using lastrivet::TemporaryFolder;

} // namespace lastrivet::test
