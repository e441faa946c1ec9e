// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/credit/CreditSentences.h"

#include "core/base/Tongue.h"

#include <fmt/format.h>

namespace lastrivet::credit {

namespace {

/// The share with the sign for decimals that the language of its sentence has.
std::string shareIn(const Account &account)
{
    const auto share = account.shareHundredths().value_or(0);
    return nested({"{0}.{1}", {fmt::format("{}", share / 100), fmt::format("{:02}", share % 100)}});
}

Message byTenths(const Account &account)
{
    const std::vector<std::string> figures{shareIn(account),
                                           std::to_string(account.applicable_rows)};
    return account.sharePasses()
               ? Message{"The builder's share is {0} % of {1} tasks that apply: more than half.",
                         figures}
               : Message{
                     "The builder's share is {0} % of {1} tasks that apply: not more than half.",
                     figures};
}

Message byTicks(const TwoColumns &columns)
{
    const std::vector<std::string> figures{ticksText(columns.builder_half_ticks),
                                           ticksText(columns.maker_half_ticks)};
    return columns.passes()
               ? Message{"Ticks of the builder: {0}, of the maker: {1}; the builder has more.",
                         figures}
               : Message{"Ticks of the builder: {0}, of the maker: {1}; the builder does not have "
                         "more.",
                         figures};
}

/// How the account stands by the country's way of counting.
Message outcome(const Account &account)
{
    if (!account.shareHundredths())
        return {"No task that applies is entered yet.", {}};
    return account.two_columns ? byTicks(*account.two_columns) : byTenths(account);
}

} // namespace

std::vector<Message> verdict(const Account &account)
{
    if (!account.shareHundredths())
        return {outcome(account)};
    std::vector<Message> sentences{outcome(account)};
    if (account.two_columns)
        sentences.push_back({"In tenths it is {0} %.", {shareIn(account)}});
    sentences.push_back({account.passes() ? "By these figures the major portion is the builder's; "
                                            "the authority decides."
                                          : "By these figures the major portion is not the "
                                            "builder's; the authority decides.",
                         {}});
    return sentences;
}

std::string ticksText(std::int64_t halfTicks)
{
    const std::string half = halfTicks % 2 == 1 ? "½" : "";
    return halfTicks == 1 ? half : std::to_string(halfTicks / 2) + half;
}

} // namespace lastrivet::credit
