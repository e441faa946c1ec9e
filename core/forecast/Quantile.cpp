// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/Quantile.h"

#include <array>
#include <cmath>
#include <limits>

namespace lastrivet::forecast {

namespace {

template <std::size_t Count> double polynomial(const std::array<double, Count> &terms, double x)
{
    double sum = 0;
    for (auto term = terms.rbegin(); term != terms.rend(); ++term)
        sum = sum * x + *term;
    return sum;
}

// The coefficients of AS 241, routine PPND16.
constexpr std::array<double, 8> middleUpper{3.3871328727963666080e0,  1.3314166789178437745e+2,
                                            1.9715909503065514427e+3, 1.3731693765509461125e+4,
                                            4.5921953931549871457e+4, 6.7265770927008700853e+4,
                                            3.3430575583588128105e+4, 2.5090809287301226727e+3};
constexpr std::array<double, 8> middleLower{1.0,
                                            4.2313330701600911252e+1,
                                            6.8718700749205790830e+2,
                                            5.3941960214247511077e+3,
                                            2.1213794301586595867e+4,
                                            3.9307895800092710610e+4,
                                            2.8729085735721942674e+4,
                                            5.2264952788528545610e+3};
constexpr std::array<double, 8> outerUpper{1.42343711074968357734e0,  4.63033784615654529590e0,
                                           5.76949722146069140550e0,  3.64784832476320460504e0,
                                           1.27045825245236838258e0,  2.41780725177450611770e-1,
                                           2.27238449892691845833e-2, 7.74545014278341407640e-4};
constexpr std::array<double, 8> outerLower{1.0,
                                           2.05319162663775882187e0,
                                           1.67638483018380384940e0,
                                           6.89767334985100004550e-1,
                                           1.48103976427480074590e-1,
                                           1.51986665636164571966e-2,
                                           5.47593808499534494600e-4,
                                           1.05075007164441684324e-9};
constexpr std::array<double, 8> tailUpper{6.65790464350110377720e0,  5.46378491116411436990e0,
                                          1.78482653991729133580e0,  2.96560571828504891230e-1,
                                          2.65321895265761230930e-2, 1.24266094738807843860e-3,
                                          2.71155556874348757815e-5, 2.01033439929228813265e-7};
constexpr std::array<double, 8> tailLower{1.0,
                                          5.99832206555887937690e-1,
                                          1.36929880922735805310e-1,
                                          1.48753612908506148525e-2,
                                          7.86869131145613259100e-4,
                                          1.84631831751005468180e-5,
                                          1.42151175831644588870e-7,
                                          2.04426310338993978564e-15};

double seriesShare(double shape, double x)
{
    double term = 1 / shape;
    double sum = term;
    for (double n = shape + 1; term > sum * 1e-17; ++n) {
        term *= x / n;
        sum += term;
    }
    return sum * std::exp(shape * std::log(x) - x - std::lgamma(shape));
}

/// The share above `x`, by Lentz's way of summing a continued fraction.
double fractionShare(double shape, double x)
{
    constexpr double tiny = std::numeric_limits<double>::min() * 1e10;
    double b = x + 1 - shape;
    double c = 1 / tiny;
    double d = 1 / b;
    double product = d;
    for (int i = 1; i < 500; ++i) {
        const double a = -i * (i - shape);
        b += 2;
        d = a * d + b;
        d = 1 / (std::abs(d) < tiny ? tiny : d);
        c = b + a / c;
        c = std::abs(c) < tiny ? tiny : c;
        product *= d * c;
        if (std::abs(d * c - 1) < 1e-16)
            break;
    }
    return product * std::exp(shape * std::log(x) - x - std::lgamma(shape));
}

} // namespace

double normalQuantile(double p)
{
    const double q = p - 0.5;
    if (std::abs(q) <= 0.425) {
        const double r = 0.180625 - q * q;
        return q * polynomial(middleUpper, r) / polynomial(middleLower, r);
    }
    const double r = std::sqrt(-std::log(q < 0 ? p : 1 - p));
    const double x = r <= 5 ? polynomial(outerUpper, r - 1.6) / polynomial(outerLower, r - 1.6)
                            : polynomial(tailUpper, r - 5) / polynomial(tailLower, r - 5);
    return q < 0 ? -x : x;
}

double gammaShare(double shape, double x)
{
    if (x <= 0)
        return 0;
    return x < shape + 1 ? seriesShare(shape, x) : 1 - fractionShare(shape, x);
}

double gammaQuantile(double shape, double p)
{
    // Begins at Wilson and Hilferty's cube, then halves and follows the tangent, whichever holds.
    const double z = normalQuantile(p);
    const double cube = 1 - 1 / (9 * shape) + z / (3 * std::sqrt(shape));
    double x = cube > 0 ? shape * cube * cube * cube : 0;
    if (x <= 0)
        x = std::exp((std::log(p) + std::lgamma(shape + 1)) / shape);
    double low = 0;
    double high = std::numeric_limits<double>::infinity();
    for (int i = 0; i < 100; ++i) {
        const double error = gammaShare(shape, x) - p;
        (error > 0 ? high : low) = x;
        const double density = std::exp((shape - 1) * std::log(x) - x - std::lgamma(shape));
        double next = density > 0 ? x - error / density : 0;
        if (!(next > low && next < high))
            next = std::isinf(high) ? 2 * x : (low + high) / 2;
        if (std::abs(next - x) <= 1e-14 * x)
            return next;
        x = next;
    }
    return x;
}

} // namespace lastrivet::forecast
