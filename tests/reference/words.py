# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The timeless words: subtree, reach, inner, excused, and what comes before a step.

Trees and chains are walked by networkx.
"""

import networkx


class Words:
    """Answers about one document that no moment changes."""

    def __init__(self, document):
        self.document = document
        self._tree = networkx.DiGraph()
        for component in document.all("component"):
            self._tree.add_node(component.id)
            if component.parent_id is not None:
                self._tree.add_edge(component.parent_id, component.id)
        self._order = networkx.DiGraph()
        for step in [*document.all("step"), *document.withdrawn_steps.values()]:
            self._order.add_node(step.id)
            self._order.add_edges_from((earlier, step.id) for earlier in step.after)
        self._subtrees = {c: {c} | networkx.descendants(self._tree, c) for c in self._tree}
        self._reach = {c.id: self._reach_of(c) for c in document.all("closing")}
        self._inner = {c.id: self._inner_of(c) for c in document.all("closing")}

    def subtree(self, component_id):
        return self._subtrees[component_id]

    def proper_ancestors(self, component_id):
        return networkx.ancestors(self._tree, component_id)

    def reach(self, closing):
        return self._reach[closing.id]

    def inner(self, closing):
        """The permanent boxes within the box, by id."""
        return self._inner[closing.id]

    def closes_inner(self, step, closing):
        """True when the step (may be None) closes a box within the box."""
        return step is not None and any(step.closes == k.id for k in self.inner(closing))

    def in_reach(self, record, closing):
        places = named_components(record)
        if any(place in self.reach(closing) for place in places):
            return True
        return (not places and closing.scope == "aircraft"
                and record.kind_of_record in ("squawk", "deviation", "bulletin"))

    def excused(self, record, closing):
        """Belongs to the closing step, or may be completed after the closing."""
        if closing.id in (record.may_follow or []):
            return True
        step = self.document.step_of(record)
        return step is not None and (closing.id in step.may_follow or step.closes == closing.id)

    def access_set(self, squawk):
        if squawk.needs_access_to:
            return set().union(*(self.subtree(c) for c in squawk.needs_access_to))
        return set(named_components(squawk))

    def steps_before(self, step):
        """Ids of all that precede the step, directly or not; withdrawn ones are among them."""
        return networkx.ancestors(self._order, step.id)

    def _reach_of(self, closing):
        if closing.scope == "aircraft":
            return set(self._tree)
        return set().union(*(self._subtrees[c] for c in closing.encloses))

    def _inner_of(self, closing):
        return sorted(
            (k for k in self.document.all("closing")
             if k.id != closing.id and k.permanent and k.scope == "region"
             and k.component_id in self._reach[closing.id]
             and k.component_id != closing.component_id),
            key=lambda k: k.id)


def named_components(record):
    """The components a record is filed on."""
    if record.component_ids is not None:
        return record.component_ids
    return [] if record.component_id is None else [record.component_id]
