-- What merges of two copies could not settle; a person's change decides it. Journalled like the
-- records, but no record. SPDX-License-Identifier: GPL-3.0-or-later

CREATE TABLE "merge_conflict" (
    "id" INTEGER PRIMARY KEY,
    "kind" TEXT NOT NULL,
    "record" TEXT NOT NULL,
    "record_id" INTEGER NOT NULL,
    "field" TEXT,
    "item" INTEGER,
    "kept" ANY,
    "lost" ANY,
    "kept_by" TEXT,
    "lost_by" TEXT,
    "reason" TEXT,
    "decision" TEXT
) STRICT;
