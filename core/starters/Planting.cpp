// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/starters/Planting.h"

#include "core/project/acts/ClosingUp.h"

#include <algorithm>
#include <map>

namespace lastrivet {

namespace {

/// Says of the lines where they come from: no book was read for them.
constexpr auto origin = "common practice";

using Codes = std::set<std::string>;

std::vector<Starter::Part> kept(std::vector<Starter::Part> parts, const Codes &leftOut,
                                Codes &there)
{
    std::erase_if(parts, [&](const auto &part) { return leftOut.contains(part.code); });
    for (Starter::Part &part : parts) {
        there.insert(part.code);
        part.parts = kept(std::move(part.parts), leftOut, there);
    }
    return parts;
}

class Planter {
public:
    Planter(Edit &edit, const Planting &how)
        : m_edit(edit)
        , m_how(how)
    {
    }

    void addParts(const std::vector<Starter::Part> &parts, Id<Component> parent)
    {
        std::int64_t position = 0;
        for (const Starter::Part &part : parts) {
            Component component;
            component.parent_id = parent;
            component.position = ++position;
            component.code = part.code;
            component.name = said(part.name);
            component.zone = said(part.zone);
            component.kind = part.kind;
            component.construction = part.construction;
            component.never_enclosed_why = said(part.never_enclosed_why);
            const auto id = m_edit.put(std::move(component));
            m_parts[part.code] = id;
            addParts(part.parts, id);
        }
    }

    void addClosing(const Starter::Closing &planned)
    {
        Closing closing;
        closing.component_id = m_parts.at(planned.part);
        closing.title = said(planned.title);
        closing.scope = planned.scope;
        closing.permanent = planned.permanent;
        closing.method = said(planned.method);
        for (const std::string &code : planned.encloses)
            closing.encloses.push_back(m_parts.at(code));
        if (closing.encloses.empty() && closing.scope == ClosingScope::Region)
            closing.encloses = {closing.component_id};
        std::ranges::sort(closing.encloses, {}, &Id<Component>::value);
        const auto lists = acts::fittingChecklists(m_edit.records(), m_edit.profile(), closing);
        const auto id = acts::addClosing(m_edit, std::move(closing), lists);
        for (const std::string &item : planned.checks) {
            Check check;
            check.closing_id = id;
            check.item = said(item);
            check.source = said(origin);
            m_edit.put(std::move(check));
        }
    }

private:
    std::string said(const std::string &text) const
    {
        return m_how.said && !text.empty() ? m_how.said(text) : text;
    }

    Edit &m_edit;
    const Planting &m_how;
    std::map<std::string, Id<Component>> m_parts;
};

} // namespace

Starter pruned(Starter starter, const Codes &leftOut)
{
    Codes there;
    starter.parts = kept(std::move(starter.parts), leftOut, there);
    std::erase_if(starter.closings, [&](Starter::Closing &closing) {
        const bool namedParts = !closing.encloses.empty();
        std::erase_if(closing.encloses, [&](const auto &code) { return !there.contains(code); });
        return !there.contains(closing.part) || (namedParts && closing.encloses.empty());
    });
    return starter;
}

void plant(Edit &edit, const Starter &starter, const Planting &how)
{
    const Starter wanted = pruned(starter, how.left_out);
    Planter planter(edit, how);
    planter.addParts(wanted.parts, {});
    for (const Starter::Closing &closing : wanted.closings)
        planter.addClosing(closing);
}

} // namespace lastrivet
