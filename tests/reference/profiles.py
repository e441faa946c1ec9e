# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""What the rule profiles ask for, as far as the answers depend on it."""

from dataclasses import dataclass


@dataclass(frozen=True)
class Profile:
    interior_photos: int
    factory_needs_document: bool
    credit_basis: str


PROFILES = {
    "ca": Profile(interior_photos=2, factory_needs_document=True, credit_basis="ticks"),
    "us": Profile(interior_photos=2, factory_needs_document=False, credit_basis="tenths"),
    "gb": Profile(interior_photos=2, factory_needs_document=False, credit_basis="tenths"),
    "plain": Profile(interior_photos=1, factory_needs_document=False, credit_basis="tenths"),
}

# Whose sign-off a late acceptance may be; the random projects keep to it.
LATE_ACCEPTANCE_BY = {
    "ca": ("inspector",),
    "us": ("inspector", "adviser", "builder"),
    "gb": ("inspector",),
    "plain": ("inspector", "adviser", "builder"),
}
