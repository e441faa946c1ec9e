// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace lastrivet::forecast {

/// The inverse of the standard normal distribution, for 0 < p < 1; to about 1e-16.
/// Algorithm AS 241 (Wichura, Applied Statistics 37, 1988).
double normalQuantile(double p);

/// The share of a gamma distribution of this shape and rate 1 below `x` (regularised lower
/// incomplete gamma function), by series and continued fraction: NIST DLMF 8.11.4 and 8.9.2.
double gammaShare(double shape, double x);

/// The inverse of it, for 0 < p < 1 and shape > 0; to about 1e-12.
double gammaQuantile(double shape, double p);

} // namespace lastrivet::forecast
