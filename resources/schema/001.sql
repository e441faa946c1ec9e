-- The first schema. Journalled tables are append-only from here on: later steps only add columns at the
-- end, nullable or with a default. SPDX-License-Identifier: GPL-3.0-or-later

CREATE TABLE "project" (
    "id" INTEGER PRIMARY KEY CHECK ("id" = 1),
    "name" TEXT NOT NULL,
    "aircraft_type" TEXT,
    "designer" TEXT,
    "model" TEXT,
    "registration" TEXT,
    "serial_number" TEXT,
    "kit_number" TEXT,
    "authority_file" TEXT,
    "maximum_weight" REAL,
    "weight_unit" TEXT,
    "origin" TEXT,
    "profile" TEXT NOT NULL,
    "builder_id" INTEGER REFERENCES "person" DEFERRABLE INITIALLY DEFERRED,
    "builder_address" TEXT,
    "started_on" TEXT,
    "time_zone" TEXT NOT NULL,
    "currency" TEXT,
    "units" TEXT NOT NULL,
    "note" TEXT
) STRICT;

CREATE TABLE "person" (
    "id" INTEGER PRIMARY KEY,
    "name" TEXT NOT NULL,
    "credential" TEXT,
    "contact" TEXT,
    "note" TEXT,
    "withdrawn_on" TEXT,
    "withdrawn_why" TEXT
) STRICT;

CREATE TABLE "person_roles" (
    "person_id" INTEGER NOT NULL REFERENCES "person" DEFERRABLE INITIALLY DEFERRED,
    "item" TEXT NOT NULL,
    PRIMARY KEY ("person_id", "item")
) STRICT, WITHOUT ROWID;

CREATE TABLE "component" (
    "id" INTEGER PRIMARY KEY,
    "parent_id" INTEGER REFERENCES "component" DEFERRABLE INITIALLY DEFERRED,
    "position" INTEGER,
    "code" TEXT,
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "construction" TEXT,
    "part_number" TEXT,
    "serial_number" TEXT,
    "zone" TEXT,
    "plan_ref" TEXT,
    "place" TEXT,
    "shelf" TEXT,
    "never_enclosed_why" TEXT,
    "note" TEXT,
    "withdrawn_on" TEXT,
    "withdrawn_why" TEXT
) STRICT;

CREATE TABLE "step" (
    "id" INTEGER PRIMARY KEY,
    "component_id" INTEGER NOT NULL REFERENCES "component" DEFERRABLE INITIALLY DEFERRED,
    "position" INTEGER,
    "title" TEXT NOT NULL,
    "plan_ref" TEXT,
    "planned_on" TEXT,
    "estimate_minutes" INTEGER,
    "closes" INTEGER REFERENCES "closing" DEFERRABLE INITIALLY DEFERRED,
    "done_on" TEXT,
    "dropped_on" TEXT,
    "note" TEXT,
    "withdrawn_on" TEXT,
    "withdrawn_why" TEXT
) STRICT;

CREATE TABLE "step_after" (
    "step_id" INTEGER NOT NULL REFERENCES "step" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "step" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("step_id", "item")
) STRICT, WITHOUT ROWID;

CREATE TABLE "step_may_follow" (
    "step_id" INTEGER NOT NULL REFERENCES "step" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "closing" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("step_id", "item")
) STRICT, WITHOUT ROWID;

CREATE TABLE "work_session" (
    "id" INTEGER PRIMARY KEY,
    "began" TEXT NOT NULL,
    "approximate" INTEGER NOT NULL,
    "minutes" INTEGER,
    "component_id" INTEGER REFERENCES "component" DEFERRABLE INITIALLY DEFERRED,
    "step_id" INTEGER REFERENCES "step" DEFERRABLE INITIALLY DEFERRED,
    "squawk_id" INTEGER REFERENCES "squawk" DEFERRABLE INITIALLY DEFERRED,
    "kind" TEXT NOT NULL,
    "place" TEXT,
    "changed_inspected" INTEGER,
    "source" TEXT,
    "note" TEXT,
    "withdrawn_on" TEXT,
    "withdrawn_why" TEXT
) STRICT;

CREATE TABLE "work_session_workers" (
    "work_session_id" INTEGER NOT NULL REFERENCES "work_session" DEFERRABLE INITIALLY DEFERRED,
    "person_id" INTEGER NOT NULL REFERENCES "person" DEFERRABLE INITIALLY DEFERRED,
    "minutes" INTEGER,
    "paid" INTEGER NOT NULL,
    PRIMARY KEY ("work_session_id", "person_id")
) STRICT, WITHOUT ROWID;

CREATE TABLE "closing" (
    "id" INTEGER PRIMARY KEY,
    "component_id" INTEGER NOT NULL REFERENCES "component" DEFERRABLE INITIALLY DEFERRED,
    "title" TEXT NOT NULL,
    "scope" TEXT NOT NULL,
    "permanent" INTEGER NOT NULL,
    "made_by" TEXT NOT NULL,
    "method" TEXT,
    "note" TEXT,
    "withdrawn_on" TEXT,
    "withdrawn_why" TEXT
) STRICT;

CREATE TABLE "closing_encloses" (
    "closing_id" INTEGER NOT NULL REFERENCES "closing" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "component" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("closing_id", "item")
) STRICT, WITHOUT ROWID;

CREATE TABLE "closing_events" (
    "closing_id" INTEGER NOT NULL REFERENCES "closing" DEFERRABLE INITIALLY DEFERRED,
    "position" INTEGER NOT NULL,
    "closed_on" TEXT,
    "opened_on" TEXT,
    "by" INTEGER REFERENCES "person" DEFERRABLE INITIALLY DEFERRED,
    "reason" TEXT,
    "approximate" INTEGER NOT NULL,
    PRIMARY KEY ("closing_id", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "closing_late_acceptances" (
    "closing_id" INTEGER NOT NULL REFERENCES "closing" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "sign_off" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("closing_id", "item")
) STRICT, WITHOUT ROWID;

CREATE TABLE "hold_point" (
    "id" INTEGER PRIMARY KEY,
    "closing_id" INTEGER NOT NULL REFERENCES "closing" DEFERRABLE INITIALLY DEFERRED,
    "kind" TEXT NOT NULL,
    "signer_role" TEXT NOT NULL,
    "required" INTEGER NOT NULL,
    "source" TEXT,
    "planned_on" TEXT,
    "waived_on" TEXT,
    "waived_by" INTEGER REFERENCES "person" DEFERRABLE INITIALLY DEFERRED,
    "waived_why" TEXT,
    "note" TEXT,
    "withdrawn_on" TEXT,
    "withdrawn_why" TEXT
) STRICT;

CREATE TABLE "check" (
    "id" INTEGER PRIMARY KEY,
    "closing_id" INTEGER NOT NULL REFERENCES "closing" DEFERRABLE INITIALLY DEFERRED,
    "item" TEXT NOT NULL,
    "source" TEXT,
    "planned_on" TEXT,
    "done_on" TEXT,
    "done_by" INTEGER REFERENCES "person" DEFERRABLE INITIALLY DEFERRED,
    "not_applicable" INTEGER NOT NULL,
    "note" TEXT,
    "withdrawn_on" TEXT,
    "withdrawn_why" TEXT
) STRICT;

CREATE TABLE "check_may_follow" (
    "check_id" INTEGER NOT NULL REFERENCES "check" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "closing" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("check_id", "item")
) STRICT, WITHOUT ROWID;

CREATE TABLE "check_media_ids" (
    "check_id" INTEGER NOT NULL REFERENCES "check" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "media" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("check_id", "item")
) STRICT, WITHOUT ROWID;

CREATE TABLE "inspection" (
    "id" INTEGER PRIMARY KEY,
    "kind" TEXT NOT NULL,
    "reference" TEXT,
    "asked_on" TEXT,
    "planned_for" TEXT,
    "held_on" TEXT,
    "completed_on" TEXT,
    "cancelled_on" TEXT,
    "inspector_id" INTEGER REFERENCES "person" DEFERRABLE INITIALLY DEFERRED,
    "place" TEXT,
    "report_number" TEXT,
    "note" TEXT,
    "withdrawn_on" TEXT,
    "withdrawn_why" TEXT
) STRICT;

CREATE TABLE "inspection_present" (
    "inspection_id" INTEGER NOT NULL REFERENCES "inspection" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "person" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("inspection_id", "item")
) STRICT, WITHOUT ROWID;

CREATE TABLE "inspection_hold_point_ids" (
    "inspection_id" INTEGER NOT NULL REFERENCES "inspection" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "hold_point" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("inspection_id", "item")
) STRICT, WITHOUT ROWID;

CREATE TABLE "inspection_media_ids" (
    "inspection_id" INTEGER NOT NULL REFERENCES "inspection" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "media" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("inspection_id", "item")
) STRICT, WITHOUT ROWID;

CREATE TABLE "sign_off" (
    "id" INTEGER PRIMARY KEY,
    "hold_point_id" INTEGER REFERENCES "hold_point" DEFERRABLE INITIALLY DEFERRED,
    "inspection_id" INTEGER REFERENCES "inspection" DEFERRABLE INITIALLY DEFERRED,
    "person_id" INTEGER NOT NULL REFERENCES "person" DEFERRABLE INITIALLY DEFERRED,
    "credential" TEXT,
    "signed_on" TEXT NOT NULL,
    "result" TEXT NOT NULL,
    "seen" TEXT NOT NULL,
    "remarks" TEXT,
    "scan_id" INTEGER REFERENCES "media" DEFERRABLE INITIALLY DEFERRED,
    "note" TEXT,
    "withdrawn_on" TEXT,
    "withdrawn_why" TEXT
) STRICT;

CREATE TABLE "squawk" (
    "id" INTEGER PRIMARY KEY,
    "number" TEXT NOT NULL,
    "component_id" INTEGER REFERENCES "component" DEFERRABLE INITIALLY DEFERRED,
    "title" TEXT NOT NULL,
    "detail" TEXT,
    "severity" TEXT NOT NULL,
    "found_on" TEXT NOT NULL,
    "approximate" INTEGER NOT NULL,
    "found_by" INTEGER REFERENCES "person" DEFERRABLE INITIALLY DEFERRED,
    "inspection_id" INTEGER REFERENCES "inspection" DEFERRABLE INITIALLY DEFERRED,
    "finding_number" TEXT,
    "verify_by" TEXT,
    "estimate_minutes" INTEGER,
    "repair_plan" TEXT,
    "correction" TEXT,
    "fixed_on" TEXT,
    "fixed_by" INTEGER REFERENCES "person" DEFERRABLE INITIALLY DEFERRED,
    "verified_on" TEXT,
    "verified_by" INTEGER REFERENCES "person" DEFERRABLE INITIALLY DEFERRED,
    "accepted_on" TEXT,
    "accepted_by" INTEGER REFERENCES "person" DEFERRABLE INITIALLY DEFERRED,
    "accepted_basis" TEXT,
    "source" TEXT,
    "note" TEXT,
    "withdrawn_on" TEXT,
    "withdrawn_why" TEXT
) STRICT;

CREATE TABLE "squawk_needs_access_to" (
    "squawk_id" INTEGER NOT NULL REFERENCES "squawk" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "component" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("squawk_id", "item")
) STRICT, WITHOUT ROWID;

CREATE TABLE "squawk_not_inside" (
    "squawk_id" INTEGER NOT NULL REFERENCES "squawk" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "closing" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("squawk_id", "item")
) STRICT, WITHOUT ROWID;

CREATE TABLE "squawk_repair_options" (
    "squawk_id" INTEGER NOT NULL REFERENCES "squawk" DEFERRABLE INITIALLY DEFERRED,
    "position" INTEGER NOT NULL,
    "title" TEXT NOT NULL,
    "pros" TEXT,
    "cons" TEXT,
    "chosen" INTEGER NOT NULL,
    PRIMARY KEY ("squawk_id", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "deviation" (
    "id" INTEGER PRIMARY KEY,
    "number" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "drawing_ref" TEXT,
    "built_as" TEXT,
    "reason" TEXT,
    "alternatives" TEXT,
    "raised_on" TEXT NOT NULL,
    "asked_on" TEXT,
    "asked_of" INTEGER REFERENCES "person" DEFERRABLE INITIALLY DEFERRED,
    "decided_on" TEXT,
    "decided_by" INTEGER REFERENCES "person" DEFERRABLE INITIALLY DEFERRED,
    "decision" TEXT,
    "basis" TEXT,
    "built_on" TEXT,
    "undone_on" TEXT,
    "weight_change" REAL,
    "weight_unit" TEXT,
    "arm" REAL,
    "arm_unit" TEXT,
    "note" TEXT,
    "withdrawn_on" TEXT,
    "withdrawn_why" TEXT
) STRICT;

CREATE TABLE "deviation_component_ids" (
    "deviation_id" INTEGER NOT NULL REFERENCES "deviation" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "component" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("deviation_id", "item")
) STRICT, WITHOUT ROWID;

CREATE TABLE "deviation_not_inside" (
    "deviation_id" INTEGER NOT NULL REFERENCES "deviation" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "closing" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("deviation_id", "item")
) STRICT, WITHOUT ROWID;

CREATE TABLE "deviation_media_ids" (
    "deviation_id" INTEGER NOT NULL REFERENCES "deviation" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "media" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("deviation_id", "item")
) STRICT, WITHOUT ROWID;

CREATE TABLE "bulletin" (
    "id" INTEGER PRIMARY KEY,
    "number" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "issuer" TEXT,
    "issued_on" TEXT,
    "received_on" TEXT NOT NULL,
    "applies" INTEGER,
    "mandatory" INTEGER NOT NULL,
    "complied_on" TEXT,
    "basis" TEXT,
    "note" TEXT,
    "withdrawn_on" TEXT,
    "withdrawn_why" TEXT
) STRICT;

CREATE TABLE "bulletin_component_ids" (
    "bulletin_id" INTEGER NOT NULL REFERENCES "bulletin" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "component" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("bulletin_id", "item")
) STRICT, WITHOUT ROWID;

CREATE TABLE "bulletin_not_inside" (
    "bulletin_id" INTEGER NOT NULL REFERENCES "bulletin" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "closing" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("bulletin_id", "item")
) STRICT, WITHOUT ROWID;

CREATE TABLE "bulletin_media_ids" (
    "bulletin_id" INTEGER NOT NULL REFERENCES "bulletin" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "media" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("bulletin_id", "item")
) STRICT, WITHOUT ROWID;

CREATE TABLE "fastener" (
    "id" INTEGER PRIMARY KEY,
    "component_id" INTEGER NOT NULL REFERENCES "component" DEFERRABLE INITIALLY DEFERRED,
    "step_id" INTEGER REFERENCES "step" DEFERRABLE INITIALLY DEFERRED,
    "place" TEXT NOT NULL,
    "hardware" TEXT,
    "thread" TEXT,
    "quantity" INTEGER NOT NULL,
    "planned_on" TEXT,
    "torque_min" REAL,
    "torque_max" REAL,
    "torque_drag" REAL,
    "torque_unit" TEXT NOT NULL,
    "fitted_on" TEXT,
    "torqued_on" TEXT,
    "torque_value" REAL,
    "tool_id" INTEGER REFERENCES "tool" DEFERRABLE INITIALLY DEFERRED,
    "marked_on" TEXT,
    "locking" TEXT NOT NULL,
    "locked_on" TEXT,
    "removed_on" TEXT,
    "removed_why" TEXT,
    "accepted_on" TEXT,
    "accepted_by" INTEGER REFERENCES "person" DEFERRABLE INITIALLY DEFERRED,
    "accepted_basis" TEXT,
    "note" TEXT,
    "withdrawn_on" TEXT,
    "withdrawn_why" TEXT
) STRICT;

CREATE TABLE "fastener_may_follow" (
    "fastener_id" INTEGER NOT NULL REFERENCES "fastener" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "closing" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("fastener_id", "item")
) STRICT, WITHOUT ROWID;

CREATE TABLE "measurement" (
    "id" INTEGER PRIMARY KEY,
    "component_id" INTEGER NOT NULL REFERENCES "component" DEFERRABLE INITIALLY DEFERRED,
    "step_id" INTEGER REFERENCES "step" DEFERRABLE INITIALLY DEFERRED,
    "what" TEXT NOT NULL,
    "unit" TEXT,
    "planned_on" TEXT,
    "minimum" REAL,
    "maximum" REAL,
    "value" REAL,
    "measured_on" TEXT,
    "tool_id" INTEGER REFERENCES "tool" DEFERRABLE INITIALLY DEFERRED,
    "accepted_on" TEXT,
    "accepted_by" INTEGER REFERENCES "person" DEFERRABLE INITIALLY DEFERRED,
    "accepted_basis" TEXT,
    "note" TEXT,
    "withdrawn_on" TEXT,
    "withdrawn_why" TEXT
) STRICT;

CREATE TABLE "measurement_may_follow" (
    "measurement_id" INTEGER NOT NULL REFERENCES "measurement" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "closing" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("measurement_id", "item")
) STRICT, WITHOUT ROWID;

CREATE TABLE "tool" (
    "id" INTEGER PRIMARY KEY,
    "name" TEXT NOT NULL,
    "serial_number" TEXT,
    "needs_calibration" INTEGER NOT NULL,
    "note" TEXT,
    "withdrawn_on" TEXT,
    "withdrawn_why" TEXT
) STRICT;

CREATE TABLE "tool_calibrations" (
    "tool_id" INTEGER NOT NULL REFERENCES "tool" DEFERRABLE INITIALLY DEFERRED,
    "position" INTEGER NOT NULL,
    "calibrated_on" TEXT NOT NULL,
    "due_on" TEXT NOT NULL,
    "certificate_id" INTEGER REFERENCES "media" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("tool_id", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "part_line" (
    "id" INTEGER PRIMARY KEY,
    "component_id" INTEGER REFERENCES "component" DEFERRABLE INITIALLY DEFERRED,
    "step_id" INTEGER REFERENCES "step" DEFERRABLE INITIALLY DEFERRED,
    "planned_on" TEXT,
    "shipment" TEXT,
    "part_number" TEXT,
    "name" TEXT NOT NULL,
    "quantity" INTEGER NOT NULL,
    "received_quantity" INTEGER NOT NULL,
    "received_on" TEXT,
    "damaged_quantity" INTEGER NOT NULL,
    "ordered_on" TEXT,
    "expected_on" TEXT,
    "unit_price" INTEGER,
    "currency" TEXT,
    "note" TEXT,
    "withdrawn_on" TEXT,
    "withdrawn_why" TEXT
) STRICT;

CREATE TABLE "part_line_may_follow" (
    "part_line_id" INTEGER NOT NULL REFERENCES "part_line" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "closing" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("part_line_id", "item")
) STRICT, WITHOUT ROWID;

CREATE TABLE "material_lot" (
    "id" INTEGER PRIMARY KEY,
    "name" TEXT NOT NULL,
    "specification" TEXT,
    "lot_number" TEXT,
    "supplier" TEXT,
    "certificate_id" INTEGER REFERENCES "media" DEFERRABLE INITIALLY DEFERRED,
    "cures" INTEGER NOT NULL,
    "opened_on" TEXT,
    "expires_on" TEXT,
    "storage" TEXT,
    "note" TEXT,
    "withdrawn_on" TEXT,
    "withdrawn_why" TEXT
) STRICT;

CREATE TABLE "material_use" (
    "id" INTEGER PRIMARY KEY,
    "component_id" INTEGER NOT NULL REFERENCES "component" DEFERRABLE INITIALLY DEFERRED,
    "step_id" INTEGER REFERENCES "step" DEFERRABLE INITIALLY DEFERRED,
    "used_on" TEXT NOT NULL,
    "approximate" INTEGER NOT NULL,
    "mix_ratio" TEXT,
    "temperature_min" REAL,
    "temperature_max" REAL,
    "temperature_unit" TEXT NOT NULL,
    "humidity" REAL,
    "cure_minutes" INTEGER,
    "sample" TEXT NOT NULL,
    "sample_on" TEXT,
    "accepted_on" TEXT,
    "accepted_by" INTEGER REFERENCES "person" DEFERRABLE INITIALLY DEFERRED,
    "accepted_basis" TEXT,
    "note" TEXT,
    "withdrawn_on" TEXT,
    "withdrawn_why" TEXT
) STRICT;

CREATE TABLE "material_use_lot_ids" (
    "material_use_id" INTEGER NOT NULL REFERENCES "material_use" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "material_lot" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("material_use_id", "item")
) STRICT, WITHOUT ROWID;

CREATE TABLE "material_use_may_follow" (
    "material_use_id" INTEGER NOT NULL REFERENCES "material_use" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "closing" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("material_use_id", "item")
) STRICT, WITHOUT ROWID;

CREATE TABLE "media" (
    "id" INTEGER PRIMARY KEY,
    "kind" TEXT NOT NULL,
    "file" TEXT NOT NULL,
    "sha256" TEXT,
    "bytes" INTEGER,
    "taken_on" TEXT,
    "imported_on" TEXT,
    "width" INTEGER,
    "height" INTEGER,
    "caption" TEXT,
    "note" TEXT,
    "withdrawn_on" TEXT,
    "withdrawn_why" TEXT
) STRICT;

CREATE TABLE "media_shows" (
    "media_id" INTEGER NOT NULL REFERENCES "media" DEFERRABLE INITIALLY DEFERRED,
    "item" TEXT NOT NULL,
    PRIMARY KEY ("media_id", "item")
) STRICT, WITHOUT ROWID;

CREATE TABLE "media_annotations" (
    "media_id" INTEGER NOT NULL REFERENCES "media" DEFERRABLE INITIALLY DEFERRED,
    "position" INTEGER NOT NULL,
    "shape" TEXT NOT NULL,
    "points" TEXT NOT NULL,
    "text" TEXT,
    PRIMARY KEY ("media_id", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "media_links" (
    "media_id" INTEGER NOT NULL REFERENCES "media" DEFERRABLE INITIALLY DEFERRED,
    "position" INTEGER NOT NULL,
    "subject" TEXT NOT NULL,
    "id" INTEGER NOT NULL,
    PRIMARY KEY ("media_id", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "expense" (
    "id" INTEGER PRIMARY KEY,
    "spent_on" TEXT NOT NULL,
    "what" TEXT NOT NULL,
    "supplier" TEXT,
    "amount" INTEGER NOT NULL,
    "currency" TEXT NOT NULL,
    "category" TEXT,
    "media_id" INTEGER REFERENCES "media" DEFERRABLE INITIALLY DEFERRED,
    "note" TEXT,
    "withdrawn_on" TEXT,
    "withdrawn_why" TEXT
) STRICT;

CREATE TABLE "credit_task" (
    "id" INTEGER PRIMARY KEY,
    "section" TEXT,
    "task" TEXT NOT NULL,
    "not_applicable" INTEGER NOT NULL,
    "added" INTEGER NOT NULL,
    "kit_tenths" INTEGER NOT NULL,
    "commercial_tenths" INTEGER NOT NULL,
    "assembly_tenths" INTEGER NOT NULL,
    "fabrication_tenths" INTEGER NOT NULL,
    "note" TEXT,
    "withdrawn_on" TEXT,
    "withdrawn_why" TEXT
) STRICT;

CREATE TABLE "credit_task_component_ids" (
    "credit_task_id" INTEGER NOT NULL REFERENCES "credit_task" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "component" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("credit_task_id", "item")
) STRICT, WITHOUT ROWID;

CREATE TABLE "credit_task_media_ids" (
    "credit_task_id" INTEGER NOT NULL REFERENCES "credit_task" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "media" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("credit_task_id", "item")
) STRICT, WITHOUT ROWID;

CREATE TABLE "equipment" (
    "id" INTEGER PRIMARY KEY,
    "component_id" INTEGER REFERENCES "component" DEFERRABLE INITIALLY DEFERRED,
    "name" TEXT NOT NULL,
    "maker" TEXT,
    "part_number" TEXT,
    "serial_number" TEXT,
    "weight" REAL,
    "weight_unit" TEXT,
    "arm" REAL,
    "arm_unit" TEXT,
    "fitted_on" TEXT,
    "removed_on" TEXT,
    "note" TEXT,
    "withdrawn_on" TEXT,
    "withdrawn_why" TEXT
) STRICT;

CREATE TABLE "weighing" (
    "id" INTEGER PRIMARY KEY,
    "weighed_on" TEXT NOT NULL,
    "place" TEXT,
    "weight_unit" TEXT NOT NULL,
    "arm_unit" TEXT NOT NULL,
    "datum" TEXT,
    "level" TEXT,
    "fuel_state" TEXT,
    "oil_state" TEXT,
    "equipment_note" TEXT,
    "report_id" INTEGER REFERENCES "media" DEFERRABLE INITIALLY DEFERRED,
    "note" TEXT,
    "withdrawn_on" TEXT,
    "withdrawn_why" TEXT
) STRICT;

CREATE TABLE "weighing_scale_readings" (
    "weighing_id" INTEGER NOT NULL REFERENCES "weighing" DEFERRABLE INITIALLY DEFERRED,
    "position" INTEGER NOT NULL,
    "point" TEXT NOT NULL,
    "reading" REAL NOT NULL,
    "tare" REAL NOT NULL,
    "arm" REAL NOT NULL,
    "tool_id" INTEGER REFERENCES "tool" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("weighing_id", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "weighing_corrections" (
    "weighing_id" INTEGER NOT NULL REFERENCES "weighing" DEFERRABLE INITIALLY DEFERRED,
    "position" INTEGER NOT NULL,
    "what" TEXT NOT NULL,
    "weight" REAL NOT NULL,
    "arm" REAL NOT NULL,
    PRIMARY KEY ("weighing_id", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "loading_case" (
    "id" INTEGER PRIMARY KEY,
    "name" TEXT NOT NULL,
    "weight_unit" TEXT NOT NULL,
    "arm_unit" TEXT NOT NULL,
    "note" TEXT,
    "withdrawn_on" TEXT,
    "withdrawn_why" TEXT
) STRICT;

CREATE TABLE "loading_case_items" (
    "loading_case_id" INTEGER NOT NULL REFERENCES "loading_case" DEFERRABLE INITIALLY DEFERRED,
    "position" INTEGER NOT NULL,
    "what" TEXT NOT NULL,
    "weight" REAL NOT NULL,
    "arm" REAL NOT NULL,
    PRIMARY KEY ("loading_case_id", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "envelope" (
    "id" INTEGER PRIMARY KEY,
    "weight_unit" TEXT NOT NULL,
    "arm_unit" TEXT NOT NULL,
    "lemac" REAL,
    "mac" REAL,
    "source" TEXT,
    "note" TEXT,
    "withdrawn_on" TEXT,
    "withdrawn_why" TEXT
) STRICT;

CREATE TABLE "envelope_points" (
    "envelope_id" INTEGER NOT NULL REFERENCES "envelope" DEFERRABLE INITIALLY DEFERRED,
    "position" INTEGER NOT NULL,
    "weight" REAL NOT NULL,
    "arm" REAL NOT NULL,
    PRIMARY KEY ("envelope_id", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "certificate_document" (
    "id" INTEGER PRIMARY KEY,
    "key" TEXT NOT NULL,
    "number" TEXT,
    "edition" TEXT,
    "asked_on" TEXT,
    "received_on" TEXT,
    "expires_on" TEXT,
    "name_as_written" TEXT,
    "model_as_written" TEXT,
    "serial_as_written" TEXT,
    "registration_as_written" TEXT,
    "note" TEXT,
    "withdrawn_on" TEXT,
    "withdrawn_why" TEXT
) STRICT;

CREATE TABLE "certificate_document_media_ids" (
    "certificate_document_id" INTEGER NOT NULL REFERENCES "certificate_document" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "media" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("certificate_document_id", "item")
) STRICT, WITHOUT ROWID;

CREATE TABLE "flight" (
    "id" INTEGER PRIMARY KEY,
    "flown_on" TEXT NOT NULL,
    "minutes" INTEGER NOT NULL,
    "landings" INTEGER NOT NULL,
    "pilot_id" INTEGER REFERENCES "person" DEFERRABLE INITIALLY DEFERRED,
    "faults" TEXT,
    "note" TEXT,
    "withdrawn_on" TEXT,
    "withdrawn_why" TEXT
) STRICT;

CREATE TABLE "profile_copy" (
    "id" INTEGER PRIMARY KEY CHECK ("id" = 1),
    "content" TEXT NOT NULL
) STRICT;

-- What was changed, when and by whom. Every other table above is a consequence of these rows.
CREATE TABLE "journal" (
    "seq" INTEGER PRIMARY KEY,
    "change_id" TEXT NOT NULL,
    "stamp" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "undoes" TEXT,
    "who" TEXT,
    "label" TEXT NOT NULL,
    "schema" INTEGER NOT NULL,
    "changeset" BLOB,
    "origin_hash" BLOB,
    "previous_hash" BLOB NOT NULL,
    "hash" BLOB NOT NULL
) STRICT;

CREATE UNIQUE INDEX "journal_change_id" ON "journal" ("change_id");

CREATE TRIGGER "journal_is_never_changed" BEFORE UPDATE ON "journal"
BEGIN
    SELECT RAISE (ABORT, 'the journal is append-only');
END;

CREATE TRIGGER "journal_is_never_shortened" BEFORE DELETE ON "journal"
BEGIN
    SELECT RAISE (ABORT, 'the journal is append-only');
END;

-- The words of the records; the program writes it, and can make it anew at any time.
CREATE VIRTUAL TABLE "search" USING fts5 (
    "title", "body", tokenize = 'unicode61 remove_diacritics 2', prefix = '2 3'
);

-- Small things of this computer that are no records, such as a running timer.
CREATE TABLE "local_state" (
    "key" TEXT PRIMARY KEY,
    "value" TEXT NOT NULL
) STRICT, WITHOUT ROWID;
