PRAGMA foreign_keys=OFF;
BEGIN TRANSACTION;
CREATE TABLE IF NOT EXISTS "project" (
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
INSERT INTO project VALUES(1,'Sample',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'plain',90,NULL,NULL,'Europe/Berlin','EUR','metric',NULL);
CREATE TABLE IF NOT EXISTS "person" (
    "id" INTEGER PRIMARY KEY,
    "name" TEXT NOT NULL,
    "credential" TEXT,
    "contact" TEXT,
    "note" TEXT,
    "withdrawn_on" TEXT,
    "withdrawn_why" TEXT
) STRICT;
INSERT INTO person VALUES(90,'Ada Holm',NULL,NULL,NULL,NULL,NULL);
INSERT INTO person VALUES(91,'Ben Ruiz',NULL,NULL,NULL,NULL,NULL);
INSERT INTO person VALUES(92,'Cleo Marsh',NULL,NULL,NULL,NULL,NULL);
CREATE TABLE IF NOT EXISTS "person_roles" (
    "person_id" INTEGER NOT NULL REFERENCES "person" DEFERRABLE INITIALLY DEFERRED,
    "item" TEXT NOT NULL,
    PRIMARY KEY ("person_id", "item")
) STRICT, WITHOUT ROWID;
INSERT INTO person_roles VALUES(90,'builder');
INSERT INTO person_roles VALUES(91,'helper');
INSERT INTO person_roles VALUES(92,'inspector');
CREATE TABLE IF NOT EXISTS "component" (
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
INSERT INTO component VALUES(1,NULL,NULL,'LW','Left wing','lifting_surface',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO component VALUES(2,1,NULL,'LW-R1','Nose rib 1','part',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO component VALUES(3,NULL,NULL,'RW','Right wing','lifting_surface',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
CREATE TABLE IF NOT EXISTS "step" (
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
INSERT INTO step VALUES(10,2,NULL,'Rivet the nose ribs',NULL,NULL,90,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO step VALUES(11,1,NULL,'Rivet the lower skin',NULL,NULL,NULL,20,NULL,NULL,NULL,NULL,NULL);
CREATE TABLE IF NOT EXISTS "step_after" (
    "step_id" INTEGER NOT NULL REFERENCES "step" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "step" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("step_id", "item")
) STRICT, WITHOUT ROWID;
INSERT INTO step_after VALUES(11,10);
CREATE TABLE IF NOT EXISTS "step_may_follow" (
    "step_id" INTEGER NOT NULL REFERENCES "step" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "closing" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("step_id", "item")
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS "work_session" (
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
INSERT INTO work_session VALUES(40,'2025-12-29T18:30',0,100,1,NULL,NULL,'fabrication',NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO work_session VALUES(41,'2026-01-03',0,30,2,NULL,NULL,'rework',NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO work_session VALUES(42,'2026-02-01',0,20,NULL,NULL,NULL,'planning',NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO work_session VALUES(43,'2026-02-02',0,NULL,3,NULL,NULL,'other',NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO work_session VALUES(44,'2026-02-03',0,600,3,NULL,NULL,'other',NULL,NULL,NULL,NULL,'2026-02-04','entered twice');
INSERT INTO work_session VALUES(5994943154060,'2026-11-25',0,95,1,NULL,NULL,'other',NULL,NULL,NULL,'Riveted the nose ribs',NULL,NULL);
INSERT INTO work_session VALUES(5994943561124,'2026-11-25',0,45,3,NULL,NULL,'other',NULL,NULL,NULL,'Sanded the scratch',NULL,NULL);
INSERT INTO work_session VALUES(5996751153390,'2026-11-26',0,95,1,NULL,NULL,'other',NULL,NULL,NULL,'Ribs set in jig',NULL,NULL);
INSERT INTO work_session VALUES(5996751214694,'2026-11-26',0,30,3,NULL,NULL,'other',NULL,NULL,NULL,'Deburred',NULL,NULL);
INSERT INTO work_session VALUES(5996753822827,'2026-11-26',0,45,3,NULL,NULL,'other',NULL,NULL,NULL,'Spar web fluted',NULL,NULL);
INSERT INTO work_session VALUES(5996754707969,'2026-11-26',0,25,1,NULL,NULL,'other',NULL,NULL,NULL,'Hinge line marked',NULL,NULL);
INSERT INTO work_session VALUES(5996755554100,'2026-11-26',0,20,3,NULL,NULL,'other',NULL,NULL,NULL,'Tip rib fitted',NULL,NULL);
INSERT INTO work_session VALUES(6000565150661,'2026-11-26',0,45,1,NULL,NULL,'other',NULL,NULL,NULL,'Dimpled the skin',NULL,NULL);
INSERT INTO work_session VALUES(6000566013156,'2026-11-26',0,20,1,NULL,NULL,'other',NULL,NULL,NULL,'Primed the ribs',NULL,NULL);
INSERT INTO work_session VALUES(6000566059256,'2026-11-26',0,35,1,NULL,NULL,'other',NULL,NULL,NULL,'Riveted the leading edge',NULL,NULL);
INSERT INTO work_session VALUES(6000568603209,'2026-11-26',0,25,1,NULL,NULL,'other',NULL,NULL,NULL,'After the merge',NULL,NULL);
CREATE TABLE IF NOT EXISTS "work_session_workers" (
    "work_session_id" INTEGER NOT NULL REFERENCES "work_session" DEFERRABLE INITIALLY DEFERRED,
    "person_id" INTEGER NOT NULL REFERENCES "person" DEFERRABLE INITIALLY DEFERRED,
    "minutes" INTEGER,
    "paid" INTEGER NOT NULL,
    PRIMARY KEY ("work_session_id", "person_id")
) STRICT, WITHOUT ROWID;
INSERT INTO work_session_workers VALUES(40,90,NULL,0);
INSERT INTO work_session_workers VALUES(40,91,40,0);
INSERT INTO work_session_workers VALUES(5994943154060,90,NULL,0);
INSERT INTO work_session_workers VALUES(5994943561124,90,NULL,0);
INSERT INTO work_session_workers VALUES(5996751153390,90,NULL,0);
INSERT INTO work_session_workers VALUES(5996751214694,90,NULL,0);
INSERT INTO work_session_workers VALUES(5996753822827,90,NULL,0);
INSERT INTO work_session_workers VALUES(5996754707969,90,NULL,0);
INSERT INTO work_session_workers VALUES(5996755554100,90,NULL,0);
INSERT INTO work_session_workers VALUES(6000565150661,90,NULL,0);
INSERT INTO work_session_workers VALUES(6000566013156,90,NULL,0);
INSERT INTO work_session_workers VALUES(6000566059256,90,NULL,0);
INSERT INTO work_session_workers VALUES(6000568603209,90,NULL,0);
CREATE TABLE IF NOT EXISTS "closing" (
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
INSERT INTO closing VALUES(20,1,'Left wing, lower skin','region',1,'builder',NULL,NULL,NULL,NULL);
INSERT INTO closing VALUES(21,3,'Right wing, lower skin','region',0,'builder',NULL,NULL,NULL,NULL);
CREATE TABLE IF NOT EXISTS "closing_encloses" (
    "closing_id" INTEGER NOT NULL REFERENCES "closing" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "component" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("closing_id", "item")
) STRICT, WITHOUT ROWID;
INSERT INTO closing_encloses VALUES(20,1);
INSERT INTO closing_encloses VALUES(21,3);
CREATE TABLE IF NOT EXISTS "closing_events" (
    "closing_id" INTEGER NOT NULL REFERENCES "closing" DEFERRABLE INITIALLY DEFERRED,
    "position" INTEGER NOT NULL,
    "closed_on" TEXT,
    "opened_on" TEXT,
    "by" INTEGER REFERENCES "person" DEFERRABLE INITIALLY DEFERRED,
    "reason" TEXT,
    "approximate" INTEGER NOT NULL,
    PRIMARY KEY ("closing_id", "position")
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS "closing_late_acceptances" (
    "closing_id" INTEGER NOT NULL REFERENCES "closing" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "sign_off" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("closing_id", "item")
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS "hold_point" (
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
CREATE TABLE IF NOT EXISTS "check" (
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
CREATE TABLE IF NOT EXISTS "check_may_follow" (
    "check_id" INTEGER NOT NULL REFERENCES "check" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "closing" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("check_id", "item")
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS "check_media_ids" (
    "check_id" INTEGER NOT NULL REFERENCES "check" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "media" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("check_id", "item")
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS "inspection" (
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
CREATE TABLE IF NOT EXISTS "inspection_present" (
    "inspection_id" INTEGER NOT NULL REFERENCES "inspection" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "person" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("inspection_id", "item")
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS "inspection_hold_point_ids" (
    "inspection_id" INTEGER NOT NULL REFERENCES "inspection" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "hold_point" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("inspection_id", "item")
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS "inspection_media_ids" (
    "inspection_id" INTEGER NOT NULL REFERENCES "inspection" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "media" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("inspection_id", "item")
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS "sign_off" (
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
CREATE TABLE IF NOT EXISTS "squawk" (
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
INSERT INTO squawk VALUES(30,'1',2,'Overdriven rivet, rib 4',NULL,'workmanship','2026-01-02',0,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'Leave until the visit',NULL,NULL);
INSERT INTO squawk VALUES(31,'2',3,'Scratch',NULL,'cosmetic','2026-01-01',0,NULL,NULL,NULL,NULL,NULL,NULL,'polished','2026-01-05',NULL,'2026-01-06',90,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO squawk VALUES(32,'3',NULL,'Wiring list has two pages 7',NULL,'airworthiness','2026-01-03',0,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO squawk VALUES(33,'4',3,'Burr in the spar web',NULL,'workmanship','2026-02-05',0,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
CREATE TABLE IF NOT EXISTS "squawk_needs_access_to" (
    "squawk_id" INTEGER NOT NULL REFERENCES "squawk" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "component" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("squawk_id", "item")
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS "squawk_not_inside" (
    "squawk_id" INTEGER NOT NULL REFERENCES "squawk" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "closing" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("squawk_id", "item")
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS "squawk_repair_options" (
    "squawk_id" INTEGER NOT NULL REFERENCES "squawk" DEFERRABLE INITIALLY DEFERRED,
    "position" INTEGER NOT NULL,
    "title" TEXT NOT NULL,
    "pros" TEXT,
    "cons" TEXT,
    "chosen" INTEGER NOT NULL,
    PRIMARY KEY ("squawk_id", "position")
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS "deviation" (
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
CREATE TABLE IF NOT EXISTS "deviation_component_ids" (
    "deviation_id" INTEGER NOT NULL REFERENCES "deviation" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "component" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("deviation_id", "item")
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS "deviation_not_inside" (
    "deviation_id" INTEGER NOT NULL REFERENCES "deviation" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "closing" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("deviation_id", "item")
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS "deviation_media_ids" (
    "deviation_id" INTEGER NOT NULL REFERENCES "deviation" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "media" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("deviation_id", "item")
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS "bulletin" (
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
CREATE TABLE IF NOT EXISTS "bulletin_component_ids" (
    "bulletin_id" INTEGER NOT NULL REFERENCES "bulletin" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "component" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("bulletin_id", "item")
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS "bulletin_not_inside" (
    "bulletin_id" INTEGER NOT NULL REFERENCES "bulletin" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "closing" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("bulletin_id", "item")
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS "bulletin_media_ids" (
    "bulletin_id" INTEGER NOT NULL REFERENCES "bulletin" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "media" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("bulletin_id", "item")
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS "fastener" (
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
CREATE TABLE IF NOT EXISTS "fastener_may_follow" (
    "fastener_id" INTEGER NOT NULL REFERENCES "fastener" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "closing" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("fastener_id", "item")
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS "measurement" (
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
CREATE TABLE IF NOT EXISTS "measurement_may_follow" (
    "measurement_id" INTEGER NOT NULL REFERENCES "measurement" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "closing" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("measurement_id", "item")
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS "tool" (
    "id" INTEGER PRIMARY KEY,
    "name" TEXT NOT NULL,
    "serial_number" TEXT,
    "needs_calibration" INTEGER NOT NULL,
    "note" TEXT,
    "withdrawn_on" TEXT,
    "withdrawn_why" TEXT
) STRICT;
CREATE TABLE IF NOT EXISTS "tool_calibrations" (
    "tool_id" INTEGER NOT NULL REFERENCES "tool" DEFERRABLE INITIALLY DEFERRED,
    "position" INTEGER NOT NULL,
    "calibrated_on" TEXT NOT NULL,
    "due_on" TEXT NOT NULL,
    "certificate_id" INTEGER REFERENCES "media" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("tool_id", "position")
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS "part_line" (
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
CREATE TABLE IF NOT EXISTS "part_line_may_follow" (
    "part_line_id" INTEGER NOT NULL REFERENCES "part_line" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "closing" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("part_line_id", "item")
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS "material_lot" (
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
CREATE TABLE IF NOT EXISTS "material_use" (
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
CREATE TABLE IF NOT EXISTS "material_use_lot_ids" (
    "material_use_id" INTEGER NOT NULL REFERENCES "material_use" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "material_lot" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("material_use_id", "item")
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS "material_use_may_follow" (
    "material_use_id" INTEGER NOT NULL REFERENCES "material_use" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "closing" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("material_use_id", "item")
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS "media" (
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
INSERT INTO media VALUES(5994943332417,'photo','photos/2026/2026-11-25_left-wing_a80d8c.jpg','a80d8c8faa3e2bd10a0c347f29586e821d577a13e047e0ec63e7a0f34a86d7b7',346,NULL,'2026-11-25T21:37',48,32,NULL,NULL,NULL,NULL);
CREATE TABLE IF NOT EXISTS "media_shows" (
    "media_id" INTEGER NOT NULL REFERENCES "media" DEFERRABLE INITIALLY DEFERRED,
    "item" TEXT NOT NULL,
    PRIMARY KEY ("media_id", "item")
) STRICT, WITHOUT ROWID;
INSERT INTO media_shows VALUES(5994943332417,'interior');
CREATE TABLE IF NOT EXISTS "media_annotations" (
    "media_id" INTEGER NOT NULL REFERENCES "media" DEFERRABLE INITIALLY DEFERRED,
    "position" INTEGER NOT NULL,
    "shape" TEXT NOT NULL,
    "points" TEXT NOT NULL,
    "text" TEXT,
    PRIMARY KEY ("media_id", "position")
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS "media_links" (
    "media_id" INTEGER NOT NULL REFERENCES "media" DEFERRABLE INITIALLY DEFERRED,
    "position" INTEGER NOT NULL,
    "subject" TEXT NOT NULL,
    "id" INTEGER NOT NULL,
    PRIMARY KEY ("media_id", "position")
) STRICT, WITHOUT ROWID;
INSERT INTO media_links VALUES(5994943332417,0,'component',1);
CREATE TABLE IF NOT EXISTS "expense" (
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
CREATE TABLE IF NOT EXISTS "credit_task" (
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
INSERT INTO credit_task VALUES(50,'Wings','Rivet the ribs',0,0,3,0,2,5,NULL,NULL,NULL);
INSERT INTO credit_task VALUES(51,'Wings','Paint',1,0,0,0,0,0,NULL,NULL,NULL);
CREATE TABLE IF NOT EXISTS "credit_task_component_ids" (
    "credit_task_id" INTEGER NOT NULL REFERENCES "credit_task" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "component" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("credit_task_id", "item")
) STRICT, WITHOUT ROWID;
INSERT INTO credit_task_component_ids VALUES(50,1);
CREATE TABLE IF NOT EXISTS "credit_task_media_ids" (
    "credit_task_id" INTEGER NOT NULL REFERENCES "credit_task" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "media" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("credit_task_id", "item")
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS "equipment" (
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
CREATE TABLE IF NOT EXISTS "weighing" (
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
CREATE TABLE IF NOT EXISTS "weighing_scale_readings" (
    "weighing_id" INTEGER NOT NULL REFERENCES "weighing" DEFERRABLE INITIALLY DEFERRED,
    "position" INTEGER NOT NULL,
    "point" TEXT NOT NULL,
    "reading" REAL NOT NULL,
    "tare" REAL NOT NULL,
    "arm" REAL NOT NULL,
    "tool_id" INTEGER REFERENCES "tool" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("weighing_id", "position")
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS "weighing_corrections" (
    "weighing_id" INTEGER NOT NULL REFERENCES "weighing" DEFERRABLE INITIALLY DEFERRED,
    "position" INTEGER NOT NULL,
    "what" TEXT NOT NULL,
    "weight" REAL NOT NULL,
    "arm" REAL NOT NULL,
    PRIMARY KEY ("weighing_id", "position")
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS "loading_case" (
    "id" INTEGER PRIMARY KEY,
    "name" TEXT NOT NULL,
    "weight_unit" TEXT NOT NULL,
    "arm_unit" TEXT NOT NULL,
    "note" TEXT,
    "withdrawn_on" TEXT,
    "withdrawn_why" TEXT
) STRICT;
CREATE TABLE IF NOT EXISTS "loading_case_items" (
    "loading_case_id" INTEGER NOT NULL REFERENCES "loading_case" DEFERRABLE INITIALLY DEFERRED,
    "position" INTEGER NOT NULL,
    "what" TEXT NOT NULL,
    "weight" REAL NOT NULL,
    "arm" REAL NOT NULL,
    PRIMARY KEY ("loading_case_id", "position")
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS "envelope" (
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
CREATE TABLE IF NOT EXISTS "envelope_points" (
    "envelope_id" INTEGER NOT NULL REFERENCES "envelope" DEFERRABLE INITIALLY DEFERRED,
    "position" INTEGER NOT NULL,
    "weight" REAL NOT NULL,
    "arm" REAL NOT NULL,
    PRIMARY KEY ("envelope_id", "position")
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS "certificate_document" (
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
CREATE TABLE IF NOT EXISTS "certificate_document_media_ids" (
    "certificate_document_id" INTEGER NOT NULL REFERENCES "certificate_document" DEFERRABLE INITIALLY DEFERRED,
    "item" INTEGER NOT NULL REFERENCES "media" DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY ("certificate_document_id", "item")
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS "flight" (
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
CREATE TABLE IF NOT EXISTS "profile_copy" (
    "id" INTEGER PRIMARY KEY CHECK ("id" = 1),
    "content" TEXT NOT NULL
) STRICT;
INSERT INTO profile_copy VALUES(1,replace('{\n "id": "plain",\n "name": "No authority",\n "edition": "2026-11-25",\n "late_acceptance_by": [\n  "builder",\n  "adviser",\n  "inspector"\n ],\n "factory_closing_needs_document": false,\n "credit_basis": "tenths",\n "interior_photos": 1,\n "one_open_request": false,\n "late_entry_days": 30,\n "basis": [\n  {\n   "rule": "late_acceptance_by",\n   "text": "Nobody else has a say: whoever knows the work vouches for it, the builder with written remarks.",\n   "source": "trade-practice",\n   "mark": "second-hand"\n  },\n  {\n   "rule": "factory_closing_needs_document",\n   "text": "No paper is asked for.",\n   "source": "trade-practice",\n   "mark": "second-hand"\n  },\n  {\n   "rule": "credit_basis",\n   "text": "Counted in tenths of a task, for the builder''s own knowledge.",\n   "source": "trade-practice",\n   "mark": "second-hand"\n  },\n  {\n   "rule": "interior_photos",\n   "text": "One photograph of the open inside is the least that anyone will be glad of later.",\n   "source": "trade-practice",\n   "mark": "second-hand"\n  },\n  {\n   "rule": "one_open_request",\n   "text": "Nothing limits how many visits are asked for at a time.",\n   "source": "trade-practice",\n   "mark": "second-hand"\n  },\n  {\n   "rule": "late_entry_days",\n   "text": "A log is kept as the work goes on; an entry made more than a month later says so.",\n   "source": "trade-practice",\n   "mark": "second-hand"\n  }\n ],\n "hold_points": [\n  {\n   "kind": "tool_and_debris_check",\n   "signer_role": "builder",\n   "required": true,\n   "scope": "region",\n   "text": "Count the tools and clear out debris on the day of closing, after everything else.",\n   "source": "trade-practice",\n   "mark": "second-hand"\n  },\n  {\n   "kind": "own_check",\n   "signer_role": "builder",\n   "required": true,\n   "scope": "region",\n   "text": "Go through the open structure yourself, against the list, before it is closed.",\n   "source": "trade-practice",\n   "mark": "second-hand"\n  },\n  {\n   "kind": "final",\n   "signer_role": "builder",\n   "required": true,\n   "scope": "aircraft",\n   "text": "Go over the finished aircraft and its record yourself before the first flight.",\n   "source": "trade-practice",\n   "mark": "second-hand"\n  }\n ],\n "checklists": [\n  {\n   "key": "common",\n   "title": "Every structure about to be closed",\n   "constructions": [],\n   "component_kinds": [],\n   "items": [\n    {\n     "item": "Both ends of every fastener can be seen, with light and a mirror where needed",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "No fastener is missing; no rivet is cracked, tipped, loose or over-driven",\n     "source": "ac43",\n     "at": "4-58",\n     "mark": "read"\n    },\n    {\n     "item": "Hardware is what the drawing calls for: diameter, grip, head and material",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "At least one full thread stands out of every nut",\n     "source": "ac43",\n     "at": "7-37",\n     "mark": "read"\n    },\n    {\n     "item": "Edges, holes and corners are free of burrs, sharp edges and scratches",\n     "source": "ac43",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Corrosion protection is complete: primer on bare metal, inside of tubes, faying surfaces",\n     "source": "ac43",\n     "mark": "second-hand"\n    },\n    {\n     "item": "The work agrees with the drawings and manual; every deviation is listed with its acceptance",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Nothing that belongs inside is missing: wiring, conduit, antennas, pitot and static lines, fuel and vent lines, drains and grommets",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Drains and vents are open and at the right place",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Everything that moves, wears or needs adjusting can be reached after closing",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Tools are counted and back in their places; swarf, rags and debris are out",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Photographs of the open structure are taken, some with the builder at work",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "A skin, or a spar, is still on temporary fasteners so that the inside shows",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    }\n   ]\n  },\n  {\n   "key": "metal_control_surface",\n   "title": "Metal control surface",\n   "constructions": [\n    "metal",\n    "mixed"\n   ],\n   "component_kinds": [\n    "control_surface"\n   ],\n   "items": [\n    {\n     "item": "Hinge brackets and their backing plates are in line, riveted in full and free of play",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "End ribs and their flanges are fastened on both sides",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Trailing edge is straight to the maker''s limit",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Mass balance is attached as drawn and its fasteners are locked",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "A drain is open at the lowest point",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Static balance is measured complete with tabs and finish, and entered in the record",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Edge distance holds at hinges, horn and end ribs",\n     "source": "ac43",\n     "at": "4-57",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Rod ends are screwed in deep enough and their jam nuts are tight and marked",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    }\n   ]\n  },\n  {\n   "key": "wing",\n   "title": "Wing and other lifting surface",\n   "constructions": [],\n   "component_kinds": [\n    "lifting_surface"\n   ],\n   "items": [\n    {\n     "item": "Spar fasteners are all fitted, of the right grip, with thread showing beyond the nut",\n     "source": "ac43",\n     "at": "7-37",\n     "mark": "read"\n    },\n    {\n     "item": "Torque of the spar, strut and root fittings is on record with the wrench used",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Control tubes, cables and bellcranks run clear of structure through their whole travel, with no chafing",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Control stops are fitted, strike squarely and are locked",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Wires and conduits are supported, protected at every hole, with a pull string where more will follow",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Tie-down points are fitted and locked",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Pitot and static lines are fitted, supported, drained and leak checked",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Position, landing and strobe light wiring is complete and labelled",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    }\n   ]\n  },\n  {\n   "key": "fuel_tank",\n   "title": "Fuel tank",\n   "constructions": [],\n   "component_kinds": [\n    "fuel_tank"\n   ],\n   "items": [\n    {\n     "item": "Sealant fillets run unbroken along every seam and over every rivet",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Baffles are fitted with their openings clear at top and bottom",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "A drain sits at the lowest point in the parked attitude",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Fuel pick-up and its screen are fitted, clean and locked",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Vent line is open from the highest point to the outside",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Level sender moves freely through its range and is grounded",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Leak test is on record with pressure, duration and result; test limits are the maker''s",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Unusable fuel is measured, or its measurement is planned",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    }\n   ]\n  },\n  {\n   "key": "fuselage_and_tail",\n   "title": "Fuselage and tail",\n   "constructions": [],\n   "component_kinds": [\n    "fuselage_section",\n    "cabin"\n   ],\n   "items": [\n    {\n     "item": "Longerons are continuous, straight and fastened at every station",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Doublers and stiffeners are fitted at cut-outs and fittings",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Seat and harness attachments are complete, with torque and locking on record",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Guards and fairleads keep cables on their pulleys and runs clear of feet and cargo",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Antennas have their doublers and grounding fitted",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Static ports and their lines are fitted flush, drained and leak checked",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Trim works through its range in the right sense before it is covered",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Floor panels stay loose until the final inspection",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    }\n   ]\n  },\n  {\n   "key": "wood",\n   "title": "Wooden structure",\n   "constructions": [\n    "wood",\n    "mixed"\n   ],\n   "component_kinds": [],\n   "items": [\n    {\n     "item": "Glue joints show a thin even line with squeeze-out on both sides",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Each glue batch has a test joint, broken and noted",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Inside surfaces are sealed, glue lands for the skin left bare",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Every bay is vented and drained",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Moisture content and grade of the timber are on record",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Photographs show the wet glue before assembly",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    }\n   ]\n  },\n  {\n   "key": "fabric",\n   "title": "Fabric covering over tube or other frames",\n   "constructions": [\n    "fabric",\n    "tube",\n    "mixed"\n   ],\n   "component_kinds": [],\n   "items": [\n    {\n     "item": "Every weld of the frame is inspected and clean",\n     "source": "ac43",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Frame is protected against rust outside, and inside the tubes where drawn",\n     "source": "ac43",\n     "mark": "second-hand"\n    },\n    {\n     "item": "All lines, cables and controls inside are connected, routed and supported",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Places where fabric will touch edges or heads carry anti-chafe tape",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Lacing or other rib attachment is planned at the spacing the covering process gives",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Drain grommets are placed at every low point",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Inspection rings are placed at every fitting, pulley and bellcrank",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    }\n   ]\n  },\n  {\n   "key": "composite",\n   "title": "Composite structure",\n   "constructions": [\n    "composite",\n    "mixed"\n   ],\n   "component_kinds": [],\n   "items": [\n    {\n     "item": "Ply schedule is ticked ply by ply: cloth, direction, overlap",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Voids, dry spots and delaminations are marked, measured and within the maker''s limits",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Adhesive is the type called for, within its life, mixed by weight",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Bond gap is measured dry and within limits; bond areas are sanded and clean",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Bead of adhesive squeezes out along the whole joint",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Inserts and hard points are in place and potted",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Cure time and temperature are on record",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "A coupon from each batch is kept and labelled",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Tap test of the finished bond is on record",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    }\n   ]\n  },\n  {\n   "key": "firewall_forward",\n   "title": "Firewall forward and fuel system",\n   "constructions": [],\n   "component_kinds": [\n    "engine_installation",\n    "fuel_system"\n   ],\n   "items": [\n    {\n     "item": "Every bolt and nut is locked: split pin, safety wire, lock tab or self-locking nut",\n     "source": "ac43",\n     "at": "7-38",\n     "mark": "read"\n    },\n    {\n     "item": "Near heat only all-metal lock nuts are used",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Split pins and safety wire are new, and pull in the tightening direction",\n     "source": "ac43",\n     "at": "7-38 and 7-126",\n     "mark": "read"\n    },\n    {\n     "item": "Hoses, lines and wires are supported, protected from heat and clear of everything that moves",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Engine and exhaust have clearance to cowling and mount through their movement",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Firewall penetrations are sealed with fireproof parts",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Fuel lines are leak checked, flow is measured in the steepest attitude, selector and drains are reachable",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    }\n   ]\n  },\n  {\n   "key": "electrical",\n   "title": "Electrical system",\n   "constructions": [],\n   "component_kinds": [\n    "electrical"\n   ],\n   "items": [\n    {\n     "item": "Every breaker, fuse and switch is labelled and sized for its wire",\n     "source": "ac43",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Wires are supported, protected at edges and holes, and clear of controls and fuel lines",\n     "source": "ac43",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Crimps are made with the right tool and pull checked",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Battery is held down and vented, and its contactor can be switched from the seat",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Grounds are bonded to clean metal and on record",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    }\n   ]\n  },\n  {\n   "key": "controls",\n   "title": "Flight controls and undercarriage",\n   "constructions": [],\n   "component_kinds": [\n    "undercarriage",\n    "flight_controls"\n   ],\n   "items": [\n    {\n     "item": "Controls move full and free to their stops with someone in the seat",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Every surface, tab and wheel moves in the right sense",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Stops are fitted and locked; travel is measured against the maker''s limits",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Every jam nut is tight and marked; every rod end is engaged past its witness hole",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    },\n    {\n     "item": "Every nut on a rotating joint carries a split pin; no friction-only lock nut is used there",\n     "source": "ac43",\n     "at": "7-64",\n     "mark": "read"\n    },\n    {\n     "item": "Turnbuckles show at most three threads at either end and are locked",\n     "source": "ac43",\n     "at": "7-179 to 7-182",\n     "mark": "read"\n    },\n    {\n     "item": "Cable tension is measured at a noted temperature with the instrument''s own table",\n     "source": "trade-practice",\n     "mark": "second-hand"\n    }\n   ]\n  }\n ],\n "documents": [\n  {\n   "key": "weight_and_balance_report",\n   "title": "Weight and balance report",\n   "need": "expected",\n   "when": "before the first flight",\n   "source": "trade-practice",\n   "mark": "second-hand"\n  },\n  {\n   "key": "equipment_list",\n   "title": "Equipment list",\n   "need": "expected",\n   "when": "with the weight and balance report",\n   "source": "trade-practice",\n   "mark": "second-hand"\n  },\n  {\n   "key": "three_view",\n   "title": "Three-view drawing or photographs",\n   "need": "expected",\n   "source": "trade-practice",\n   "mark": "second-hand"\n  },\n  {\n   "key": "builders_log",\n   "title": "Builder''s log",\n   "need": "expected",\n   "source": "trade-practice",\n   "mark": "second-hand"\n  },\n  {\n   "key": "bill_of_sale",\n   "title": "Bill of sale",\n   "need": "resale",\n   "when": "when kit or plans came second-hand",\n   "source": "trade-practice",\n   "mark": "second-hand"\n  },\n  {\n   "key": "logbooks",\n   "title": "Aircraft, engine and propeller logbooks",\n   "need": "expected",\n   "source": "trade-practice",\n   "mark": "second-hand"\n  },\n  {\n   "key": "data_plate",\n   "title": "Identification plate",\n   "need": "expected",\n   "source": "trade-practice",\n   "mark": "second-hand"\n  },\n  {\n   "key": "placards",\n   "title": "Placards and markings",\n   "need": "expected",\n   "source": "trade-practice",\n   "mark": "second-hand"\n  },\n  {\n   "key": "test_plan",\n   "title": "Flight test plan",\n   "need": "expected",\n   "when": "before the first flight",\n   "source": "trade-practice",\n   "mark": "second-hand"\n  }\n ],\n "test_period": [],\n "credit": {\n  "columns": [\n   "maker",\n   "paid help",\n   "builder assembly",\n   "builder fabrication"\n  ],\n  "passes_when": "the builder''s two columns hold more than half of all points of the rows that apply",\n  "rules": [\n   {\n    "text": "Tasks count, hours do not.",\n    "source": "trade-practice",\n    "mark": "second-hand"\n   }\n  ]\n },\n "cautions": [\n  {\n   "id": "current_edition",\n   "text": "Rules change. Check the current edition with your authority before relying on what is quoted here."\n  },\n  {\n   "id": "records_not_work",\n   "text": "A closing without blockers means complete records. Only the inspector''s own look can tell whether the work is right."\n  },\n  {\n   "id": "makers_data_first",\n   "text": "Limits from general tables are common practice. The maker''s drawings and manuals come first."\n  },\n  {\n   "id": "cure_temperature",\n   "text": "Cure times hold at the temperature the maker names. In a cold workshop material that counts as cured may not be."\n  },\n  {\n   "id": "builders_record",\n   "text": "This is the builder''s own record and no approval. The drawings, the authority and the inspector decide."\n  },\n  {\n   "id": "licensed_practice",\n   "text": "Nothing here replaces local rules or the judgement of licensed people."\n  }\n ],\n "words": {\n  "squawk": "squawk",\n  "squawks": "squawks",\n  "finding": "finding",\n  "findings": "findings",\n  "undercarriage": "undercarriage",\n  "inspector": "inspector",\n  "adviser": "technical adviser",\n  "authority": "your authority",\n  "certificate": "certificate"\n },\n "sources": [\n  {\n   "id": "ac43",\n   "title": "Advisory Circular 43.13-1B, Acceptable Methods, Techniques and Practices: Aircraft Inspection and Repair",\n   "edition": "1998-09-08",\n   "mark": "read",\n   "note": "Single paragraphs only, where an item names one."\n  },\n  {\n   "id": "trade-practice",\n   "title": "Practice of the trade, from builders'' and inspectors'' accounts; no published standard",\n   "mark": "second-hand"\n  }\n ]\n}\n','\n',char(10)));
CREATE TABLE IF NOT EXISTS "journal" (
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
INSERT INTO journal VALUES(1,'78fa033c88a12be708cadfa49e0c325b',1795695251796,'migration',NULL,NULL,'Project begun',3,X'5414010000000000000000000000000000000000000070726f6a656374001200010000000000000001030653616d706c65050505050505050505050305706c61696e050505030d4575726f70652f4265726c696e030345555203066d6574726963055402010070726f66696c655f636f70790012000100000000000000010381a4687b0a20226964223a2022706c61696e222c0a20226e616d65223a20224e6f20617574686f72697479222c0a202265646974696f6e223a2022323032362d31312d3235222c0a20226c6174655f616363657074616e63655f6279223a205b0a2020226275696c646572222c0a20202261647669736572222c0a202022696e73706563746f72220a205d2c0a2022666163746f72795f636c6f73696e675f6e656564735f646f63756d656e74223a2066616c73652c0a20226372656469745f6261736973223a202274656e746873222c0a2022696e746572696f725f70686f746f73223a20312c0a20226f6e655f6f70656e5f72657175657374223a2066616c73652c0a20226c6174655f656e7472795f64617973223a2033302c0a20226261736973223a205b0a20207b0a2020202272756c65223a20226c6174655f616363657074616e63655f6279222c0a2020202274657874223a20224e6f626f647920656c7365206861732061207361793a2077686f65766572206b6e6f77732074686520776f726b20766f756368657320666f722069742c20746865206275696c6465722077697468207772697474656e2072656d61726b732e222c0a20202022736f75726365223a202274726164652d7072616374696365222c0a202020226d61726b223a20227365636f6e642d68616e64220a20207d2c0a20207b0a2020202272756c65223a2022666163746f72795f636c6f73696e675f6e656564735f646f63756d656e74222c0a2020202274657874223a20224e6f2070617065722069732061736b656420666f722e222c0a20202022736f75726365223a202274726164652d7072616374696365222c0a202020226d61726b223a20227365636f6e642d68616e64220a20207d2c0a20207b0a2020202272756c65223a20226372656469745f6261736973222c0a2020202274657874223a2022436f756e74656420696e2074656e746873206f662061207461736b2c20666f7220746865206275696c6465722773206f776e206b6e6f776c656467652e222c0a20202022736f75726365223a202274726164652d7072616374696365222c0a202020226d61726b223a20227365636f6e642d68616e64220a20207d2c0a20207b0a2020202272756c65223a2022696e746572696f725f70686f746f73222c0a2020202274657874223a20224f6e652070686f746f6772617068206f6620746865206f70656e20696e7369646520697320746865206c65617374207468617420616e796f6e652077696c6c20626520676c6164206f66206c617465722e222c0a20202022736f75726365223a202274726164652d7072616374696365222c0a202020226d61726b223a20227365636f6e642d68616e64220a20207d2c0a20207b0a2020202272756c65223a20226f6e655f6f70656e5f72657175657374222c0a2020202274657874223a20224e6f7468696e67206c696d69747320686f77206d616e7920766973697473206172652061736b656420666f7220617420612074696d652e222c0a20202022736f75726365223a202274726164652d7072616374696365222c0a202020226d61726b223a20227365636f6e642d68616e64220a20207d2c0a20207b0a2020202272756c65223a20226c6174655f656e7472795f64617973222c0a2020202274657874223a202241206c6f67206973206b6570742061732074686520776f726b20676f6573206f6e3b20616e20656e747279206d616465206d6f7265207468616e2061206d6f6e7468206c61746572207361797320736f2e222c0a20202022736f75726365223a202274726164652d7072616374696365222c0a202020226d61726b223a20227365636f6e642d68616e64220a20207d0a205d2c0a2022686f6c645f706f696e7473223a205b0a20207b0a202020226b696e64223a2022746f6f6c5f616e645f6465627269735f636865636b222c0a202020227369676e65725f726f6c65223a20226275696c646572222c0a202020227265717569726564223a20747275652c0a2020202273636f7065223a2022726567696f6e222c0a2020202274657874223a2022436f756e742074686520746f6f6c7320616e6420636c656172206f757420646562726973206f6e2074686520646179206f6620636c6f73696e672c2061667465722065766572797468696e6720656c73652e222c0a20202022736f75726365223a202274726164652d7072616374696365222c0a202020226d61726b223a20227365636f6e642d68616e64220a20207d2c0a20207b0a202020226b696e64223a20226f776e5f636865636b222c0a202020227369676e65725f726f6c65223a20226275696c646572222c0a202020227265717569726564223a20747275652c0a2020202273636f7065223a2022726567696f6e222c0a2020202274657874223a2022476f207468726f75676820746865206f70656e2073747275637475726520796f757273656c662c20616761696e737420746865206c6973742c206265666f726520697420697320636c6f7365642e222c0a20202022736f75726365223a202274726164652d7072616374696365222c0a202020226d61726b223a20227365636f6e642d68616e64220a20207d2c0a20207b0a202020226b696e64223a202266696e616c222c0a202020227369676e65725f726f6c65223a20226275696c646572222c0a202020227265717569726564223a20747275652c0a2020202273636f7065223a20226169726372616674222c0a2020202274657874223a2022476f206f766572207468652066696e697368656420616972637261667420616e6420697473207265636f726420796f757273656c66206265666f72652074686520666972737420666c696768742e222c0a20202022736f75726365223a202274726164652d7072616374696365222c0a202020226d61726b223a20227365636f6e642d68616e64220a20207d0a205d2c0a2022636865636b6c69737473223a205b0a20207b0a202020226b6579223a2022636f6d6d6f6e222c0a202020227469746c65223a20224576657279207374727563747572652061626f757420746f20626520636c6f736564222c0a20202022636f6e737472756374696f6e73223a205b5d2c0a20202022636f6d706f6e656e745f6b696e6473223a205b5d2c0a202020226974656d73223a205b0a202020207b0a2020202020226974656d223a2022426f746820656e6473206f662065766572792066617374656e65722063616e206265207365656e2c2077697468206c6967687420616e642061206d6972726f72207768657265206e6565646564222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a20224e6f2066617374656e6572206973206d697373696e673b206e6f20726976657420697320637261636b65642c207469707065642c206c6f6f7365206f72206f7665722d64726976656e222c0a202020202022736f75726365223a202261633433222c0a2020202020226174223a2022342d3538222c0a2020202020226d61726b223a202272656164220a202020207d2c0a202020207b0a2020202020226974656d223a202248617264776172652069732077686174207468652064726177696e672063616c6c7320666f723a206469616d657465722c20677269702c206865616420616e64206d6174657269616c222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a20224174206c65617374206f6e652066756c6c20746872656164207374616e6473206f7574206f66206576657279206e7574222c0a202020202022736f75726365223a202261633433222c0a2020202020226174223a2022372d3337222c0a2020202020226d61726b223a202272656164220a202020207d2c0a202020207b0a2020202020226974656d223a202245646765732c20686f6c657320616e6420636f726e657273206172652066726565206f662062757272732c20736861727020656467657320616e6420736372617463686573222c0a202020202022736f75726365223a202261633433222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a2022436f72726f73696f6e2070726f74656374696f6e20697320636f6d706c6574653a207072696d6572206f6e2062617265206d6574616c2c20696e73696465206f662074756265732c20666179696e67207375726661636573222c0a202020202022736f75726365223a202261633433222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a202254686520776f726b206167726565732077697468207468652064726177696e677320616e64206d616e75616c3b20657665727920646576696174696f6e206973206c697374656420776974682069747320616363657074616e6365222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a20224e6f7468696e6720746861742062656c6f6e677320696e73696465206973206d697373696e673a20776972696e672c20636f6e647569742c20616e74656e6e61732c207069746f7420616e6420737461746963206c696e65732c206675656c20616e642076656e74206c696e65732c20647261696e7320616e642067726f6d6d657473222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a2022447261696e7320616e642076656e747320617265206f70656e20616e642061742074686520726967687420706c616365222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a202245766572797468696e672074686174206d6f7665732c207765617273206f72206e656564732061646a757374696e672063616e206265207265616368656420616674657220636c6f73696e67222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a2022546f6f6c732061726520636f756e74656420616e64206261636b20696e20746865697220706c616365733b2073776172662c207261677320616e642064656272697320617265206f7574222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a202250686f746f677261706873206f6620746865206f70656e20737472756374757265206172652074616b656e2c20736f6d65207769746820746865206275696c64657220617420776f726b222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a20224120736b696e2c206f72206120737061722c206973207374696c6c206f6e2074656d706f726172792066617374656e65727320736f20746861742074686520696e736964652073686f7773222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d0a2020205d0a20207d2c0a20207b0a202020226b6579223a20226d6574616c5f636f6e74726f6c5f73757266616365222c0a202020227469746c65223a20224d6574616c20636f6e74726f6c2073757266616365222c0a20202022636f6e737472756374696f6e73223a205b0a20202020226d6574616c222c0a20202020226d69786564220a2020205d2c0a20202022636f6d706f6e656e745f6b696e6473223a205b0a2020202022636f6e74726f6c5f73757266616365220a2020205d2c0a202020226974656d73223a205b0a202020207b0a2020202020226974656d223a202248696e676520627261636b65747320616e64207468656972206261636b696e6720706c617465732061726520696e206c696e652c207269766574656420696e2066756c6c20616e642066726565206f6620706c6179222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a2022456e64207269627320616e6420746865697220666c616e676573206172652066617374656e6564206f6e20626f7468207369646573222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a2022547261696c696e67206564676520697320737472616967687420746f20746865206d616b65722773206c696d6974222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a20224d6173732062616c616e636520697320617474616368656420617320647261776e20616e64206974732066617374656e65727320617265206c6f636b6564222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a20224120647261696e206973206f70656e20617420746865206c6f7765737420706f696e74222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a20225374617469632062616c616e6365206973206d6561737572656420636f6d706c6574652077697468207461627320616e642066696e6973682c20616e6420656e746572656420696e20746865207265636f7264222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a2022456467652064697374616e636520686f6c64732061742068696e6765732c20686f726e20616e6420656e642072696273222c0a202020202022736f75726365223a202261633433222c0a2020202020226174223a2022342d3537222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a2022526f6420656e647320617265207363726577656420696e206465657020656e6f75676820616e64207468656972206a616d206e7574732061726520746967687420616e64206d61726b6564222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d0a2020205d0a20207d2c0a20207b0a202020226b6579223a202277696e67222c0a202020227469746c65223a202257696e6720616e64206f74686572206c696674696e672073757266616365222c0a20202022636f6e737472756374696f6e73223a205b5d2c0a20202022636f6d706f6e656e745f6b696e6473223a205b0a20202020226c696674696e675f73757266616365220a2020205d2c0a202020226974656d73223a205b0a202020207b0a2020202020226974656d223a2022537061722066617374656e6572732061726520616c6c206669747465642c206f662074686520726967687420677269702c2077697468207468726561642073686f77696e67206265796f6e6420746865206e7574222c0a202020202022736f75726365223a202261633433222c0a2020202020226174223a2022372d3337222c0a2020202020226d61726b223a202272656164220a202020207d2c0a202020207b0a2020202020226974656d223a2022546f72717565206f662074686520737061722c20737472757420616e6420726f6f742066697474696e6773206973206f6e207265636f7264207769746820746865207772656e63682075736564222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a2022436f6e74726f6c2074756265732c206361626c657320616e642062656c6c6372616e6b732072756e20636c656172206f6620737472756374757265207468726f7567682074686569722077686f6c652074726176656c2c2077697468206e6f2063686166696e67222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a2022436f6e74726f6c2073746f707320617265206669747465642c20737472696b65207371756172656c7920616e6420617265206c6f636b6564222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a2022576972657320616e6420636f6e64756974732061726520737570706f727465642c2070726f74656374656420617420657665727920686f6c652c207769746820612070756c6c20737472696e67207768657265206d6f72652077696c6c20666f6c6c6f77222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a20225469652d646f776e20706f696e7473206172652066697474656420616e64206c6f636b6564222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a20225069746f7420616e6420737461746963206c696e657320617265206669747465642c20737570706f727465642c20647261696e656420616e64206c65616b20636865636b6564222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a2022506f736974696f6e2c206c616e64696e6720616e64207374726f6265206c6967687420776972696e6720697320636f6d706c65746520616e64206c6162656c6c6564222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d0a2020205d0a20207d2c0a20207b0a202020226b6579223a20226675656c5f74616e6b222c0a202020227469746c65223a20224675656c2074616e6b222c0a20202022636f6e737472756374696f6e73223a205b5d2c0a20202022636f6d706f6e656e745f6b696e6473223a205b0a20202020226675656c5f74616e6b220a2020205d2c0a202020226974656d73223a205b0a202020207b0a2020202020226974656d223a20225365616c616e742066696c6c6574732072756e20756e62726f6b656e20616c6f6e67206576657279207365616d20616e64206f766572206576657279207269766574222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a2022426166666c657320617265206669747465642077697468207468656972206f70656e696e677320636c65617220617420746f7020616e6420626f74746f6d222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a20224120647261696e207369747320617420746865206c6f7765737420706f696e7420696e20746865207061726b6564206174746974756465222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a20224675656c207069636b2d757020616e64206974732073637265656e20617265206669747465642c20636c65616e20616e64206c6f636b6564222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a202256656e74206c696e65206973206f70656e2066726f6d20746865206869676865737420706f696e7420746f20746865206f757473696465222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a20224c6576656c2073656e646572206d6f76657320667265656c79207468726f756768206974732072616e676520616e642069732067726f756e646564222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a20224c65616b2074657374206973206f6e207265636f726420776974682070726573737572652c206475726174696f6e20616e6420726573756c743b2074657374206c696d6974732061726520746865206d616b65722773222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a2022556e757361626c65206675656c206973206d656173757265642c206f7220697473206d6561737572656d656e7420697320706c616e6e6564222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d0a2020205d0a20207d2c0a20207b0a202020226b6579223a2022667573656c6167655f616e645f7461696c222c0a202020227469746c65223a2022467573656c61676520616e64207461696c222c0a20202022636f6e737472756374696f6e73223a205b5d2c0a20202022636f6d706f6e656e745f6b696e6473223a205b0a2020202022667573656c6167655f73656374696f6e222c0a2020202022636162696e220a2020205d2c0a202020226974656d73223a205b0a202020207b0a2020202020226974656d223a20224c6f6e6765726f6e732061726520636f6e74696e756f75732c20737472616967687420616e642066617374656e65642061742065766572792073746174696f6e222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a2022446f75626c65727320616e64207374696666656e6572732061726520666974746564206174206375742d6f75747320616e642066697474696e6773222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a20225365617420616e64206861726e657373206174746163686d656e74732061726520636f6d706c6574652c207769746820746f7271756520616e64206c6f636b696e67206f6e207265636f7264222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a202247756172647320616e6420666169726c65616473206b656570206361626c6573206f6e2074686569722070756c6c65797320616e642072756e7320636c656172206f66206665657420616e6420636172676f222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a2022416e74656e6e6173206861766520746865697220646f75626c65727320616e642067726f756e64696e6720666974746564222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a202253746174696320706f72747320616e64207468656972206c696e6573206172652066697474656420666c7573682c20647261696e656420616e64206c65616b20636865636b6564222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a20225472696d20776f726b73207468726f756768206974732072616e676520696e207468652072696768742073656e7365206265666f726520697420697320636f7665726564222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a2022466c6f6f722070616e656c732073746179206c6f6f736520756e74696c207468652066696e616c20696e7370656374696f6e222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d0a2020205d0a20207d2c0a20207b0a202020226b6579223a2022776f6f64222c0a202020227469746c65223a2022576f6f64656e20737472756374757265222c0a20202022636f6e737472756374696f6e73223a205b0a2020202022776f6f64222c0a20202020226d69786564220a2020205d2c0a20202022636f6d706f6e656e745f6b696e6473223a205b5d2c0a202020226974656d73223a205b0a202020207b0a2020202020226974656d223a2022476c7565206a6f696e74732073686f772061207468696e206576656e206c696e6520776974682073717565657a652d6f7574206f6e20626f7468207369646573222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a20224561636820676c75652062617463682068617320612074657374206a6f696e742c2062726f6b656e20616e64206e6f746564222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a2022496e7369646520737572666163657320617265207365616c65642c20676c7565206c616e647320666f722074686520736b696e206c6566742062617265222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a20224576657279206261792069732076656e74656420616e6420647261696e6564222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a20224d6f69737475726520636f6e74656e7420616e64206772616465206f66207468652074696d62657220617265206f6e207265636f7264222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a202250686f746f6772617068732073686f77207468652077657420676c7565206265666f726520617373656d626c79222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d0a2020205d0a20207d2c0a20207b0a202020226b6579223a2022666162726963222c0a202020227469746c65223a202246616272696320636f766572696e67206f7665722074756265206f72206f74686572206672616d6573222c0a20202022636f6e737472756374696f6e73223a205b0a2020202022666162726963222c0a202020202274756265222c0a20202020226d69786564220a2020205d2c0a20202022636f6d706f6e656e745f6b696e6473223a205b5d2c0a202020226974656d73223a205b0a202020207b0a2020202020226974656d223a202245766572792077656c64206f6620746865206672616d6520697320696e7370656374656420616e6420636c65616e222c0a202020202022736f75726365223a202261633433222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a20224672616d652069732070726f74656374656420616761696e73742072757374206f7574736964652c20616e6420696e736964652074686520747562657320776865726520647261776e222c0a202020202022736f75726365223a202261633433222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a2022416c6c206c696e65732c206361626c657320616e6420636f6e74726f6c7320696e736964652061726520636f6e6e65637465642c20726f7574656420616e6420737570706f72746564222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a2022506c61636573207768657265206661627269632077696c6c20746f756368206564676573206f7220686561647320636172727920616e74692d63686166652074617065222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a20224c6163696e67206f72206f7468657220726962206174746163686d656e7420697320706c616e6e6564206174207468652073706163696e672074686520636f766572696e672070726f63657373206769766573222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a2022447261696e2067726f6d6d6574732061726520706c61636564206174206576657279206c6f7720706f696e74222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a2022496e7370656374696f6e2072696e67732061726520706c616365642061742065766572792066697474696e672c2070756c6c657920616e642062656c6c6372616e6b222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d0a2020205d0a20207d2c0a20207b0a202020226b6579223a2022636f6d706f73697465222c0a202020227469746c65223a2022436f6d706f7369746520737472756374757265222c0a20202022636f6e737472756374696f6e73223a205b0a2020202022636f6d706f73697465222c0a20202020226d69786564220a2020205d2c0a20202022636f6d706f6e656e745f6b696e6473223a205b5d2c0a202020226974656d73223a205b0a202020207b0a2020202020226974656d223a2022506c79207363686564756c65206973207469636b656420706c7920627920706c793a20636c6f74682c20646972656374696f6e2c206f7665726c6170222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a2022566f6964732c206472792073706f747320616e642064656c616d696e6174696f6e7320617265206d61726b65642c206d6561737572656420616e642077697468696e20746865206d616b65722773206c696d697473222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a202241646865736976652069732074686520747970652063616c6c656420666f722c2077697468696e20697473206c6966652c206d6978656420627920776569676874222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a2022426f6e6420676170206973206d656173757265642064727920616e642077697468696e206c696d6974733b20626f6e64206172656173206172652073616e64656420616e6420636c65616e222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a202242656164206f662061646865736976652073717565657a6573206f757420616c6f6e67207468652077686f6c65206a6f696e74222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a2022496e736572747320616e64206861726420706f696e74732061726520696e20706c61636520616e6420706f74746564222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a2022437572652074696d6520616e642074656d706572617475726520617265206f6e207265636f7264222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a20224120636f75706f6e2066726f6d2065616368206261746368206973206b65707420616e64206c6162656c6c6564222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a20225461702074657374206f66207468652066696e697368656420626f6e64206973206f6e207265636f7264222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d0a2020205d0a20207d2c0a20207b0a202020226b6579223a20226669726577616c6c5f666f7277617264222c0a202020227469746c65223a20224669726577616c6c20666f727761726420616e64206675656c2073797374656d222c0a20202022636f6e737472756374696f6e73223a205b5d2c0a20202022636f6d706f6e656e745f6b696e6473223a205b0a2020202022656e67696e655f696e7374616c6c6174696f6e222c0a20202020226675656c5f73797374656d220a2020205d2c0a202020226974656d73223a205b0a202020207b0a2020202020226974656d223a2022457665727920626f6c7420616e64206e7574206973206c6f636b65643a2073706c69742070696e2c2073616665747920776972652c206c6f636b20746162206f722073656c662d6c6f636b696e67206e7574222c0a202020202022736f75726365223a202261633433222c0a2020202020226174223a2022372d3338222c0a2020202020226d61726b223a202272656164220a202020207d2c0a202020207b0a2020202020226974656d223a20224e6561722068656174206f6e6c7920616c6c2d6d6574616c206c6f636b206e757473206172652075736564222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a202253706c69742070696e7320616e6420736166657479207769726520617265206e65772c20616e642070756c6c20696e20746865207469676874656e696e6720646972656374696f6e222c0a202020202022736f75726365223a202261633433222c0a2020202020226174223a2022372d333820616e6420372d313236222c0a2020202020226d61726b223a202272656164220a202020207d2c0a202020207b0a2020202020226974656d223a2022486f7365732c206c696e657320616e642077697265732061726520737570706f727465642c2070726f7465637465642066726f6d206865617420616e6420636c656172206f662065766572797468696e672074686174206d6f766573222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a2022456e67696e6520616e642065786861757374206861766520636c656172616e636520746f20636f776c696e6720616e64206d6f756e74207468726f756768207468656972206d6f76656d656e74222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a20224669726577616c6c2070656e6574726174696f6e7320617265207365616c65642077697468206669726570726f6f66207061727473222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a20224675656c206c696e657320617265206c65616b20636865636b65642c20666c6f77206973206d6561737572656420696e207468652073746565706573742061747469747564652c2073656c6563746f7220616e6420647261696e732061726520726561636861626c65222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d0a2020205d0a20207d2c0a20207b0a202020226b6579223a2022656c656374726963616c222c0a202020227469746c65223a2022456c656374726963616c2073797374656d222c0a20202022636f6e737472756374696f6e73223a205b5d2c0a20202022636f6d706f6e656e745f6b696e6473223a205b0a2020202022656c656374726963616c220a2020205d2c0a202020226974656d73223a205b0a202020207b0a2020202020226974656d223a2022457665727920627265616b65722c206675736520616e6420737769746368206973206c6162656c6c656420616e642073697a656420666f72206974732077697265222c0a202020202022736f75726365223a202261633433222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a202257697265732061726520737570706f727465642c2070726f74656374656420617420656467657320616e6420686f6c65732c20616e6420636c656172206f6620636f6e74726f6c7320616e64206675656c206c696e6573222c0a202020202022736f75726365223a202261633433222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a20224372696d707320617265206d61646520776974682074686520726967687420746f6f6c20616e642070756c6c20636865636b6564222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a2022426174746572792069732068656c6420646f776e20616e642076656e7465642c20616e642069747320636f6e746163746f722063616e2062652073776974636865642066726f6d207468652073656174222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a202247726f756e64732061726520626f6e64656420746f20636c65616e206d6574616c20616e64206f6e207265636f7264222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d0a2020205d0a20207d2c0a20207b0a202020226b6579223a2022636f6e74726f6c73222c0a202020227469746c65223a2022466c6967687420636f6e74726f6c7320616e6420756e6465726361727269616765222c0a20202022636f6e737472756374696f6e73223a205b5d2c0a20202022636f6d706f6e656e745f6b696e6473223a205b0a2020202022756e6465726361727269616765222c0a2020202022666c696768745f636f6e74726f6c73220a2020205d2c0a202020226974656d73223a205b0a202020207b0a2020202020226974656d223a2022436f6e74726f6c73206d6f76652066756c6c20616e64206672656520746f2074686569722073746f7073207769746820736f6d656f6e6520696e207468652073656174222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a2022457665727920737572666163652c2074616220616e6420776865656c206d6f76657320696e207468652072696768742073656e7365222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a202253746f7073206172652066697474656420616e64206c6f636b65643b2074726176656c206973206d6561737572656420616761696e737420746865206d616b65722773206c696d697473222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a20224576657279206a616d206e757420697320746967687420616e64206d61726b65643b20657665727920726f6420656e6420697320656e6761676564207061737420697473207769746e65737320686f6c65222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d2c0a202020207b0a2020202020226974656d223a20224576657279206e7574206f6e206120726f746174696e67206a6f696e74206361727269657320612073706c69742070696e3b206e6f206672696374696f6e2d6f6e6c79206c6f636b206e75742069732075736564207468657265222c0a202020202022736f75726365223a202261633433222c0a2020202020226174223a2022372d3634222c0a2020202020226d61726b223a202272656164220a202020207d2c0a202020207b0a2020202020226974656d223a20225475726e6275636b6c65732073686f77206174206d6f737420746872656520746872656164732061742065697468657220656e6420616e6420617265206c6f636b6564222c0a202020202022736f75726365223a202261633433222c0a2020202020226174223a2022372d31373920746f20372d313832222c0a2020202020226d61726b223a202272656164220a202020207d2c0a202020207b0a2020202020226974656d223a20224361626c652074656e73696f6e206973206d656173757265642061742061206e6f7465642074656d706572617475726520776974682074686520696e737472756d656e742773206f776e207461626c65222c0a202020202022736f75726365223a202274726164652d7072616374696365222c0a2020202020226d61726b223a20227365636f6e642d68616e64220a202020207d0a2020205d0a20207d0a205d2c0a2022646f63756d656e7473223a205b0a20207b0a202020226b6579223a20227765696768745f616e645f62616c616e63655f7265706f7274222c0a202020227469746c65223a202257656967687420616e642062616c616e6365207265706f7274222c0a202020226e656564223a20226578706563746564222c0a202020227768656e223a20226265666f72652074686520666972737420666c69676874222c0a20202022736f75726365223a202274726164652d7072616374696365222c0a202020226d61726b223a20227365636f6e642d68616e64220a20207d2c0a20207b0a202020226b6579223a202265717569706d656e745f6c697374222c0a202020227469746c65223a202245717569706d656e74206c697374222c0a202020226e656564223a20226578706563746564222c0a202020227768656e223a202277697468207468652077656967687420616e642062616c616e6365207265706f7274222c0a20202022736f75726365223a202274726164652d7072616374696365222c0a202020226d61726b223a20227365636f6e642d68616e64220a20207d2c0a20207b0a202020226b6579223a202274687265655f76696577222c0a202020227469746c65223a202254687265652d766965772064726177696e67206f722070686f746f677261706873222c0a202020226e656564223a20226578706563746564222c0a20202022736f75726365223a202274726164652d7072616374696365222c0a202020226d61726b223a20227365636f6e642d68616e64220a20207d2c0a20207b0a202020226b6579223a20226275696c646572735f6c6f67222c0a202020227469746c65223a20224275696c6465722773206c6f67222c0a202020226e656564223a20226578706563746564222c0a20202022736f75726365223a202274726164652d7072616374696365222c0a202020226d61726b223a20227365636f6e642d68616e64220a20207d2c0a20207b0a202020226b6579223a202262696c6c5f6f665f73616c65222c0a202020227469746c65223a202242696c6c206f662073616c65222c0a202020226e656564223a2022726573616c65222c0a202020227768656e223a20227768656e206b6974206f7220706c616e732063616d65207365636f6e642d68616e64222c0a20202022736f75726365223a202274726164652d7072616374696365222c0a202020226d61726b223a20227365636f6e642d68616e64220a20207d2c0a20207b0a202020226b6579223a20226c6f67626f6f6b73222c0a202020227469746c65223a202241697263726166742c20656e67696e6520616e642070726f70656c6c6572206c6f67626f6f6b73222c0a202020226e656564223a20226578706563746564222c0a20202022736f75726365223a202274726164652d7072616374696365222c0a202020226d61726b223a20227365636f6e642d68616e64220a20207d2c0a20207b0a202020226b6579223a2022646174615f706c617465222c0a202020227469746c65223a20224964656e74696669636174696f6e20706c617465222c0a202020226e656564223a20226578706563746564222c0a20202022736f75726365223a202274726164652d7072616374696365222c0a202020226d61726b223a20227365636f6e642d68616e64220a20207d2c0a20207b0a202020226b6579223a2022706c616361726473222c0a202020227469746c65223a2022506c61636172647320616e64206d61726b696e6773222c0a202020226e656564223a20226578706563746564222c0a20202022736f75726365223a202274726164652d7072616374696365222c0a202020226d61726b223a20227365636f6e642d68616e64220a20207d2c0a20207b0a202020226b6579223a2022746573745f706c616e222c0a202020227469746c65223a2022466c69676874207465737420706c616e222c0a202020226e656564223a20226578706563746564222c0a202020227768656e223a20226265666f72652074686520666972737420666c69676874222c0a20202022736f75726365223a202274726164652d7072616374696365222c0a202020226d61726b223a20227365636f6e642d68616e64220a20207d0a205d2c0a2022746573745f706572696f64223a205b5d2c0a2022637265646974223a207b0a202022636f6c756d6e73223a205b0a202020226d616b6572222c0a20202022706169642068656c70222c0a202020226275696c64657220617373656d626c79222c0a202020226275696c646572206661627269636174696f6e220a20205d2c0a2020227061737365735f7768656e223a2022746865206275696c64657227732074776f20636f6c756d6e7320686f6c64206d6f7265207468616e2068616c66206f6620616c6c20706f696e7473206f662074686520726f77732074686174206170706c79222c0a20202272756c6573223a205b0a2020207b0a202020202274657874223a20225461736b7320636f756e742c20686f75727320646f206e6f742e222c0a2020202022736f75726365223a202274726164652d7072616374696365222c0a20202020226d61726b223a20227365636f6e642d68616e64220a2020207d0a20205d0a207d2c0a202263617574696f6e73223a205b0a20207b0a202020226964223a202263757272656e745f65646974696f6e222c0a2020202274657874223a202252756c6573206368616e67652e20436865636b207468652063757272656e742065646974696f6e207769746820796f757220617574686f72697479206265666f72652072656c79696e67206f6e20776861742069732071756f74656420686572652e220a20207d2c0a20207b0a202020226964223a20227265636f7264735f6e6f745f776f726b222c0a2020202274657874223a20224120636c6f73696e6720776974686f757420626c6f636b657273206d65616e7320636f6d706c657465207265636f7264732e204f6e6c792074686520696e73706563746f722773206f776e206c6f6f6b2063616e2074656c6c20776865746865722074686520776f726b2069732072696768742e220a20207d2c0a20207b0a202020226964223a20226d616b6572735f646174615f6669727374222c0a2020202274657874223a20224c696d6974732066726f6d2067656e6572616c207461626c65732061726520636f6d6d6f6e2070726163746963652e20546865206d616b657227732064726177696e677320616e64206d616e75616c7320636f6d652066697273742e220a20207d2c0a20207b0a202020226964223a2022637572655f74656d7065726174757265222c0a2020202274657874223a2022437572652074696d657320686f6c64206174207468652074656d706572617475726520746865206d616b6572206e616d65732e20496e206120636f6c6420776f726b73686f70206d6174657269616c207468617420636f756e7473206173206375726564206d6179206e6f742062652e220a20207d2c0a20207b0a202020226964223a20226275696c646572735f7265636f7264222c0a2020202274657874223a20225468697320697320746865206275696c6465722773206f776e207265636f726420616e64206e6f20617070726f76616c2e205468652064726177696e67732c2074686520617574686f7269747920616e642074686520696e73706563746f72206465636964652e220a20207d2c0a20207b0a202020226964223a20226c6963656e7365645f7072616374696365222c0a2020202274657874223a20224e6f7468696e672068657265207265706c61636573206c6f63616c2072756c6573206f7220746865206a756467656d656e74206f66206c6963656e7365642070656f706c652e220a20207d0a205d2c0a2022776f726473223a207b0a20202273717561776b223a202273717561776b222c0a20202273717561776b73223a202273717561776b73222c0a20202266696e64696e67223a202266696e64696e67222c0a20202266696e64696e6773223a202266696e64696e6773222c0a202022756e6465726361727269616765223a2022756e6465726361727269616765222c0a202022696e73706563746f72223a2022696e73706563746f72222c0a20202261647669736572223a2022746563686e6963616c2061647669736572222c0a202022617574686f72697479223a2022796f757220617574686f72697479222c0a2020226365727469666963617465223a20226365727469666963617465220a207d2c0a2022736f7572636573223a205b0a20207b0a202020226964223a202261633433222c0a202020227469746c65223a202241647669736f72792043697263756c61722034332e31332d31422c2041636365707461626c65204d6574686f64732c20546563686e697175657320616e64205072616374696365733a20416972637261667420496e7370656374696f6e20616e6420526570616972222c0a2020202265646974696f6e223a2022313939382d30392d3038222c0a202020226d61726b223a202272656164222c0a202020226e6f7465223a202253696e676c652070617261677261706873206f6e6c792c20776865726520616e206974656d206e616d6573206f6e652e220a20207d2c0a20207b0a202020226964223a202274726164652d7072616374696365222c0a202020227469746c65223a20225072616374696365206f66207468652074726164652c2066726f6d206275696c646572732720616e6420696e73706563746f727327206163636f756e74733b206e6f207075626c6973686564207374616e64617264222c0a202020226d61726b223a20227365636f6e642d68616e64220a20207d0a205d0a7d0a',NULL,X'0000000000000000000000000000000000000000000000000000000000000000',X'ca09ba21bcc15141cb64f3ebf85fb6c70cc28e47b20a42dbdad16cd8ec635de5');
INSERT INTO journal VALUES(2,'f73a7fbae0f22a9871b27a6c7cdc019b',1795695251807,'import',NULL,'Ada Holm','Imported export.json',3,X'5414010000000000000000000000000000000000000070726f6a656374001700010000000000000001000000000000000000000000050000000000000000000000000000000000000001000000000000005a000000000000540701000000000000706572736f6e00120001000000000000005b030842656e205275697a0505050505120001000000000000005a030841646120486f6c6d0505050505120001000000000000005c030a436c656f204d61727368050505050554020102706572736f6e5f726f6c657300120001000000000000005a03076275696c646572120001000000000000005b030668656c706572120001000000000000005c0309696e73706563746f7254110100000000000000000000000000000000636f6d706f6e656e74001200010000000000000001050503024c5703094c6566742077696e67030f6c696674696e675f73757266616365050505050505050505050512000100000000000000020100000000000000010503054c572d5231030a4e6f736520726962203103047061727405050505050505050505051200010000000000000003050503025257030a52696768742077696e67030f6c696674696e675f737572666163650505050505050505050505540d010000000000000000000000007374657000120001000000000000000b010000000000000001050314526976657420746865206c6f77657220736b696e0505050100000000000000140505050505120001000000000000000a010000000000000002050313526976657420746865206e6f73652072696273050501000000000000005a05050505050554020102737465705f616674657200120001000000000000000b01000000000000000a540e0100000000000000000000000000776f726b5f73657373696f6e00120001000005743a61a46b030a323032362d31312d323601000000000000000001000000000000002d010000000000000003050503056f74686572050505030f537061722077656220666c757465640505120001000000000000002c030a323032362d30322d3033010000000000000000010000000000000258010000000000000003050503056f7468657205050505030a323032362d30322d3034030d656e74657265642074776963651200010000000000000029030a323032362d30312d303301000000000000000001000000000000001e010000000000000002050503067265776f726b05050505050512000100000000000000280310323032352d31322d32395431383a33300100000000000000000100000000000000640100000000000000010505030b6661627269636174696f6e050505050505120001000000000000002b030a323032362d30322d303201000000000000000005010000000000000003050503056f74686572050505050505120001000000000000002a030a323032362d30322d30310100000000000000000100000000000000140505050308706c616e6e696e67050505050505120001000005743a6f2601030a323032362d31312d3236010000000000000000010000000000000019010000000000000001050503056f74686572050505031148696e6765206c696e65206d61726b65640505120001000005743a39d866030a323032362d31312d323601000000000000000001000000000000001e010000000000000003050503056f74686572050505030844656275727265640505120001000005743a7c0f34030a323032362d31312d3236010000000000000000010000000000000014010000000000000003050503056f74686572050505030e54697020726962206669747465640505120001000005743a38e8ee030a323032362d31312d323601000000000000000001000000000000005f010000000000000001050503056f74686572050505030f526962732073657420696e206a6967050512000100000573ce7b3da4030a323032362d31312d323501000000000000000001000000000000002d010000000000000003050503056f74686572050505031253616e646564207468652073637261746368050512000100000573ce75078c030a323032362d31312d323501000000000000000001000000000000005f010000000000000001050503056f7468657205050503155269766574656420746865206e6f736520726962730505540401020000776f726b5f73657373696f6e5f776f726b65727300120001000005743a6f260101000000000000005a05010000000000000000120001000005743a7c0f3401000000000000005a0501000000000000000012000100000573ce7b3da401000000000000005a0501000000000000000012000100000573ce75078c01000000000000005a05010000000000000000120001000005743a39d86601000000000000005a05010000000000000000120001000005743a61a46b01000000000000005a05010000000000000000120001000000000000002801000000000000005b010000000000000028010000000000000000120001000000000000002801000000000000005a05010000000000000000120001000005743a38e8ee01000000000000005a05010000000000000000540a01000000000000000000636c6f73696e6700120001000000000000001401000000000000000103154c6566742077696e672c206c6f77657220736b696e0306726567696f6e01000000000000000103076275696c646572050505051200010000000000000015010000000000000003031652696768742077696e672c206c6f77657220736b696e0306726567696f6e01000000000000000003076275696c6465720505050554020102636c6f73696e675f656e636c6f7365730012000100000000000000150100000000000000031200010000000000000014010000000000000001541a010000000000000000000000000000000000000000000000000073717561776b00120001000000000000002003013305031b576972696e67206c697374206861732074776f207061676573203705030d616972776f727468696e657373030a323032362d30312d3033010000000000000000050505050505050505050505050505050505120001000000000000002103013401000000000000000303144275727220696e2074686520737061722077656205030b776f726b6d616e73686970030a323032362d30322d3035010000000000000000050505050505050505050505050505050505120001000000000000001f030132010000000000000003030753637261746368050308636f736d65746963030a323032362d30312d30310100000000000000000505050505050308706f6c6973686564030a323032362d30312d303505030a323032362d30312d303601000000000000005a05050505050505120001000000000000001e03013101000000000000000203174f76657264726976656e2072697665742c20726962203405030b776f726b6d616e73686970030a323032362d30312d303201000000000000000005050505050505050505050505050503154c6561766520756e74696c207468652076697369740505540d010000000000000000000000006d656469610012000100000573ce77c041030570686f746f032b70686f746f732f323032362f323032362d31312d32355f6c6566742d77696e675f6138306438632e6a706703406138306438633866616133653262643130613063333437663239353836653832316435373761313365303437653065633633653761306633346138366437623701000000000000015a050310323032362d31312d32355432313a333701000000000000003001000000000000002005050505540201026d656469615f73686f77730012000100000573ce77c0410308696e746572696f725404010200006d656469615f6c696e6b730012000100000573ce77c0410100000000000000000309636f6d706f6e656e74010000000000000001540c0100000000000000000000006372656469745f7461736b001200010000000000000032030557696e6773030e52697665742074686520726962730100000000000000000100000000000000000100000000000000030100000000000000000100000000000000020100000000000000050505051200010000000000000033030557696e677303055061696e74010000000000000001010000000000000000010000000000000000010000000000000000010000000000000000010000000000000000050505540201026372656469745f7461736b5f636f6d706f6e656e745f696473001200010000000000000032010000000000000001',NULL,X'ca09ba21bcc15141cb64f3ebf85fb6c70cc28e47b20a42dbdad16cd8ec635de5',X'78da362012497d5054c24548bcfaed7b93415981829331212449d135640a43d8');
INSERT INTO journal VALUES(3,'a1bfd5eb04a36f03712bd2762c00c9cc',1795695251962,'change',NULL,'Ada Holm','Logged 45 min on LW',3,X'540e0100000000000000000000000000776f726b5f73657373696f6e00120001000005751d8de3c5030a323032362d31312d323601000000000000000001000000000000002d010000000000000001050503056f74686572050505031044696d706c65642074686520736b696e0505540401020000776f726b5f73657373696f6e5f776f726b65727300120001000005751d8de3c501000000000000005a05010000000000000000',NULL,X'78da362012497d5054c24548bcfaed7b93415981829331212449d135640a43d8',X'd5b769c2cacdcf6a4bf7073e7515bd6278ffa7b6e490aada7bceb97a8d30dfac');
INSERT INTO journal VALUES(4,'81a800da66999771efbce4d65dca6c15',1795695260284,'change',NULL,'Ada Holm','Logged 20 min on LW',3,X'540e0100000000000000000000000000776f726b5f73657373696f6e00120001000005751d9b0ce4030a323032362d31312d3236010000000000000000010000000000000014010000000000000001050503056f74686572050505030f5072696d65642074686520726962730505540401020000776f726b5f73657373696f6e5f776f726b65727300120001000005751d9b0ce401000000000000005a05010000000000000000',NULL,X'd5b769c2cacdcf6a4bf7073e7515bd6278ffa7b6e490aada7bceb97a8d30dfac',X'96e8bb568df928e539a9e0a7ac4eea7fbafb3e68adba9f991990c5a490742de4');
INSERT INTO journal VALUES(5,'a0b7b8956dfb5294f7f025e69b47caec',1795695260352,'undo','81a800da66999771efbce4d65dca6c15','Ada Holm','Logged 20 min on LW',3,X'540e0100000000000000000000000000776f726b5f73657373696f6e00090001000005751d9b0ce4030a323032362d31312d3236010000000000000000010000000000000014010000000000000001050503056f74686572050505030f5072696d65642074686520726962730505540401020000776f726b5f73657373696f6e5f776f726b65727300090001000005751d9b0ce401000000000000005a05010000000000000000',NULL,X'96e8bb568df928e539a9e0a7ac4eea7fbafb3e68adba9f991990c5a490742de4',X'808bf81b9f1d193a8155e233077d32902bfa909579c0edafc86793f4279aa8c2');
INSERT INTO journal VALUES(6,'bf77e54ad44570d6c86485a8cca7c2cb',1795695260402,'redo','a0b7b8956dfb5294f7f025e69b47caec','Ada Holm','Logged 20 min on LW',3,X'540e0100000000000000000000000000776f726b5f73657373696f6e00120001000005751d9b0ce4030a323032362d31312d3236010000000000000000010000000000000014010000000000000001050503056f74686572050505030f5072696d65642074686520726962730505540401020000776f726b5f73657373696f6e5f776f726b65727300120001000005751d9b0ce401000000000000005a05010000000000000000',NULL,X'808bf81b9f1d193a8155e233077d32902bfa909579c0edafc86793f4279aa8c2',X'844add3798fa2e242adc4e78fcc56e38b2560d4878b2e5aee9d7327b8cd53e2f');
INSERT INTO journal VALUES(7,'5061bf2234f3b22083f9450210b0115c',1795695260458,'carried',NULL,'Ada Holm','Logged 35 min on LW',3,X'540e0100000000000000000000000000776f726b5f73657373696f6e00120001000005751d9bc0f8030a323032362d31312d3236010000000000000000010000000000000023010000000000000001050503056f7468657205050503185269766574656420746865206c656164696e6720656467650505540401020000776f726b5f73657373696f6e5f776f726b65727300120001000005751d9bc0f801000000000000005a05010000000000000000',X'10f0f177c33b5d33054bf11686937bb7aec4214c6be1b72dec84eb3bb1facc69',X'844add3798fa2e242adc4e78fcc56e38b2560d4878b2e5aee9d7327b8cd53e2f',X'7e89f6e6a73511badfe92c4c614aec485f13dbdac771a1a6bdf691913ef93eae');
INSERT INTO journal VALUES(8,'0d9c24d275869ddc56162690dd6cd88f',1795695260516,'merge',NULL,'Ada Holm','1 change of another copy merged',3,X'540e0100000000000000000000000000776f726b5f73657373696f6e00120001000005751d9bc0f8030a323032362d31312d3236010000000000000000010000000000000023010000000000000001050503056f7468657205050503185269766574656420746865206c656164696e6720656467650505540401020000776f726b5f73657373696f6e5f776f726b65727300120001000005751d9bc0f801000000000000005a05010000000000000000',NULL,X'7e89f6e6a73511badfe92c4c614aec485f13dbdac771a1a6bdf691913ef93eae',X'e1c0eb7c3775ecf02b75e37420678810001ef6abfab59f130c42945e82c5f3f9');
INSERT INTO journal VALUES(9,'a79611e490348330cd3f0d428c948c0e',1795695260590,'printed',NULL,'Ada Holm','Builder''s log',3,NULL,NULL,X'e1c0eb7c3775ecf02b75e37420678810001ef6abfab59f130c42945e82c5f3f9',X'81e46341f562cd271b3bd02afad5c8d740164da99cf1e50a61e04c91a92a47e0');
INSERT INTO journal VALUES(10,'ebaf8e3029d67384975ced1fa586d108',1795695286997,'change',NULL,'Ada Holm','Logged 25 min on LW',3,X'540e0100000000000000000000000000776f726b5f73657373696f6e00120001000005751dc29249030a323032362d31312d3236010000000000000000010000000000000019010000000000000001050503056f74686572050505030f416674657220746865206d657267650505540401020000776f726b5f73657373696f6e5f776f726b65727300120001000005751dc2924901000000000000005a05010000000000000000',NULL,X'81e46341f562cd271b3bd02afad5c8d740164da99cf1e50a61e04c91a92a47e0',X'9e642e78c32f01f45090762f71f5b42cbb3702f62cecb054450cd4d6c3ff040a');
CREATE TABLE IF NOT EXISTS "local_state" (
    "key" TEXT PRIMARY KEY,
    "value" TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS "merge_conflict" (
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
PRAGMA writable_schema=ON;
INSERT INTO sqlite_schema(type,name,tbl_name,rootpage,sql)VALUES('table','search','search',0,'CREATE VIRTUAL TABLE "search" USING fts5 (
    "title", "body", tokenize = ''unicode61 remove_diacritics 2'', prefix = ''2 3'', columnsize = 0
)');
CREATE TABLE IF NOT EXISTS 'search_data'(id INTEGER PRIMARY KEY, block BLOB);
INSERT INTO search_data VALUES(1,X'215e0f');
INSERT INTO search_data VALUES(10,X'00000000010c0c000c0101010201010301010401010501010601010701010801010901010a01010b01010c0101');
INSERT INTO search_data VALUES(137438953473,X'000002050230318880808080808080420204010361646196410202010362656e966102020104636c656f970102020104686f6c6d9641020301046c656674888080808080808022020202017788808080808080802206010102200601010201056d617273689701020301046e6f73658880808080808080420202010272318880808080808080420601010302026962888080808080808042020303036768748880808080808080620202020375697a9661020302017788808080808080806206010102010477696e67888080808080808022020340020300033161649641020201026265966102020102636c970102020102686f9641020301026c65888080808080808022020202017788808080808080802206010102200601010201026d619701020301026e6f888080808080808042020201027231888080808080808042060101030201698880808080808080420203200202020175966102030201778880808080808080620601010201027769888080808080808022020340020300043261646196410202010362656e966102020103636c65970102020103686f6c9641020301036c6566888080808080808022020201036d61729701020301036e6f7388808080808080804202020103726962888080808080808042020303016788808080808080806202020202756996610203010377696e8880808080808080220203400203040e09090a0a11150b11110f10091014090808080f15080f11110710120a090909100910100e08');
INSERT INTO search_data VALUES(274877906945,X'0000012706306c6f776572828080808080808163020401046e6f736582808080808080814302040104726962738280808080808081430205030376657482808080808080814302022002020104736b696e8280808080808081630205010374686582808080808080814302032002030003316c6f828080808080808163020401026e6f8280808080808081430204010272698280808080808081430402052002020102736b82808080808080816302050102746882808080808080814302032002030004326c6f77828080808080808163020401036e6f7382808080808080814302040103726962828080808080808143020503017682808080808080814302022002020103736b6982808080808080816302050103746865828080808080808143020320020304121111131113100f130f121110101110');
INSERT INTO search_data VALUES(412316860417,X'0000044a09306465627572726564abd0f4b9ec994402020107656e74657265648b0402020106666974746564abd0f4fc87cd04020402056c75746564abd0f4e1d29a640204010568696e6765abd0f4ef93802402020102696eabd0f4b8f4bb44020401036a6967abd0f4b8f4bb44020501046c65667486808080808080828502020203696e65abd0f4ef938024020302046f776572868080808080808285020420020401066d61726b6564abd0f4ef938024020401046e6f7365abcf9cf583e30402040103726962abd0f4fc87cd040203040173abcf9cf583e304020581d7c3f0d840020203036768748680808080808082a5020203057665746564abcf9cf583e3040202010673616e646564abcf9cfb9ee90402020206637261746368abcf9cfb9ee904020402026574abd0f4b8f4bb44020302036b696e86808080808080828502052002050203706172abd0f4e1d29a6402020103746865abcf9cf583e3040203869b8600020302026970abd0f4fc87cd0402020204776963658b0402030103776562abd0f4e1d29a6402030203696e6786808080808080828502032002030003316465abd0f4b9ec994402020102656e8b04020201026669abd0f4fc87cd04020402016cabd0f4e1d29a64020401026869abd0f4ef93802402020102696eabd0f4b8f4bb44020401026a69abd0f4b8f4bb44020501026c658680808080808082850202020169abd0f4ef938024020302016f868080808080808285020420020401026d61abd0f4ef938024020401026e6fabcf9cf583e304020401027269abcf9cf583e30404020581d7c3f0d8400202c3939140020385ffea97c5c1fc9c21020201027361abcf9cfb9ee9040202020163abcf9cfb9ee9040204020165abd0f4b8f4bb44020302016b8680808080808082850205200205020170abd0f4e1d29a64020201027468abcf9cf583e3040203869b86000203020169abd0f4fc87cd0402020201778b04020301027765abd0f4e1d29a6402030201698680808080808082850203200203000432646562abd0f4b9ec994402020103656e748b0402020103666974abd0f4fc87cd04020402026c75abd0f4e1d29a640204010368696eabd0f4ef938024020201036a6967abd0f4b8f4bb44020501036c656686808080808080828502020202696eabd0f4ef938024020302026f77868080808080808285020420020401036d6172abd0f4ef938024020401036e6f73abcf9cf583e30402040103726962abcf9cf583e304020581d7c3f0d8400202c393914002030301678680808080808082a50202030176abcf9cf583e3040202010373616eabcf9cfb9ee904020202026372abcf9cfb9ee904020402026574abd0f4b8f4bb44020302026b69868080808080808285020520020502027061abd0f4e1d29a6402020103746865abcf9cf583e3040203869b8600020302026970abd0f4fc87cd040202020277698b0402030103776562abd0f4e1d29a6402030202696e868080808080808285020320020304130d1110100d0e110e14110f0e14101011110d130e140d0a0e130e080d0c0d0d0d0f0c110d0d270d0c0c110c130c070d110f090e0d0e0e100d120e0e1c0e0c0e0d0d120d140d080e');
INSERT INTO search_data VALUES(549755813889,X'000003ba0230318480808080808083ca060101020101328480808080808083ea0601010201013384808080808080840a060101020101348480808080808083ca0205600601010201013784808080808080840a020701046275727284808080808080842a0202010368617384808080808080840a02040102696e84808080808080842a020301056c656176658480808080808083ca06010103020369737484808080808080840a0203010a6f76657264726976656e8480808080808083ca02020105706167657384808080808080840a020602076f6c69736865648480808080808083ea0601010301037269628480808080808083ca020403037665748480808080808083ca02030107736372617463688480808080808083ea0202020370617284808080808080842a020501037468658480808080808083ca060101056002040202776f84808080808080840a02050105756e74696c8480808080808083ca06010104010576697369748480808080808083ca06010106010377656284808080808080842a020602056972696e6784808080808080840a0202000331627584808080808080842a02020102686184808080808080840a02040102696e84808080808080842a020301026c658480808080808083ca0601010302016984808080808080840a020301026f768480808080808083ca02020102706184808080808080840a020602016f8480808080808083ea06010103010272698480808080808083ca040303010273638480808080808083ea020202017084808080808080842a0205010274688480808080808083ca0601010560020402017784808080808080840a02050102756e8480808080808083ca06010104010276698480808080808083ca060101060102776584808080808080842a020602016984808080808080840a020200043262757284808080808080842a0202010368617384808080808080840a020401036c65618480808080808083ca060101030202697384808080808080840a020301036f76658480808080808083ca0202010370616784808080808080840a020602026f6c8480808080808083ea0601010301037269628480808080808083ca02040301768480808080808083ca020301037363728480808080808083ea02020202706184808080808080842a020501037468658480808080808083ca060101056002040202776f84808080808080840a02050103756e748480808080808083ca0601010401037669738480808080808083ca06010106010377656284808080808080842a02060202697284808080808080840a020204101010130e11100f141017121610101410150f14141012100f0f110e0f0f10100f0e140e11110f0e1110120f101011100e100f150f121210');
INSERT INTO search_data VALUES(687194767361,X'0000013a03303131abcf9cf7e090330205010432303236abcf9cf7e09033040303020135abcf9cf7e0903302060106613830643863abcf9cf7e09033020901036a7067abcf9cf7e09033020a01046c656674abcf9cf7e090330207010670686f746f73abcf9cf7e090330202010477696e67abcf9cf7e0903302080003313131abcf9cf7e09033020501023230abcf9cf7e09033040303020135abcf9cf7e09033020601026138abcf9cf7e09033020901026a70abcf9cf7e09033020a01026c65abcf9cf7e09033020701027068abcf9cf7e09033020201027769abcf9cf7e090330208000432323032abcf9cf7e090330403030103613830abcf9cf7e09033020901036a7067abcf9cf7e09033020a01036c6566abcf9cf7e090330207010370686fabcf9cf7e090330202010377696eabcf9cf7e090330208040d100c110e0f110f0e0e0c0d0d0d0d0d100e0e0e0e');
INSERT INTO search_data VALUES(824633720833,X'0000009906307061696e748c7502020104726962738c55020403037665748c55020201037468658c550203010577696e67738c5506010102200601010200033170618c750202010272698c55040204010274688c550203010277698c550601010220060101020004327061698c75020201037269628c5502040301768c55020201037468658c550203010377696e8c55060101022006010102040b0a0909120909080f0a090709');
INSERT INTO search_data VALUES(962072674305,X'00000086083064696d706c6564abd4bb8df1f12402020104736b696eabd4bb8df1f12402040103746865abd4bb8df1f12402030003316469abd4bb8df1f12402020102736babd4bb8df1f124020401027468abd4bb8df1f124020300043264696dabd4bb8df1f12402020103736b69abd4bb8df1f12402040103746865abd4bb8df1f124020304120f0e0e0d0d0f0e');
INSERT INTO search_data VALUES(1099511627777,X'0000008507307072696d6564abd4bb9b86b9040202010472696273abd4bb9b86b90402040103746865abd4bb9b86b90402030003317072abd4bb9b86b904020201027269abd4bb9b86b904020401027468abd4bb9b86b9040203000432707269abd4bb9b86b90402020103726962abd4bb9b86b90402040103746865abd4bb9b86b904020304110f0e0e0d0d0f0e');
INSERT INTO search_data VALUES(1236950581249,X'0000007c07307072696d6564abd4bb9b86b90401010472696273abd4bb9b86b904010103746865abd4bb9b86b904010003317072abd4bb9b86b9040101027269abd4bb9b86b9040101027468abd4bb9b86b90401000432707269abd4bb9b86b904010103726962abd4bb9b86b904010103746865abd4bb9b86b9040104100e0d0d0c0c0e0d');
INSERT INTO search_data VALUES(1374389534721,X'0000008507307072696d6564abd4bb9b86b9040202010472696273abd4bb9b86b90402040103746865abd4bb9b86b90402030003317072abd4bb9b86b904020201027269abd4bb9b86b904020401027468abd4bb9b86b9040203000432707269abd4bb9b86b90402020103726962abd4bb9b86b90402040103746865abd4bb9b86b904020304110f0e0e0d0d0f0e');
INSERT INTO search_data VALUES(1511828488193,X'000000b3053065646765abd4bb9be0be04020501076c656164696e67abd4bb9be0be040204010772697665746564abd4bb9be0be0402020103746865abd4bb9be0be0402030003316564abd4bb9be0be04020501026c65abd4bb9be0be04020401027269abd4bb9be0be04020201027468abd4bb9be0be040203000432656467abd4bb9be0be04020501036c6561abd4bb9be0be0402040103726976abd4bb9be0be0402020103746865abd4bb9be0be040203040f12120e0e0d0d0d0f0e0e');
INSERT INTO search_data VALUES(1649267441665,X'0000008506306166746572abd4bbc2c99224020201056d65726765abd4bbc2c9922402040103746865abd4bbc2c9922402030003316166abd4bbc2c99224020201026d65abd4bbc2c99224020401027468abd4bbc2c992240203000432616674abd4bbc2c99224020201036d6572abd4bbc2c9922402040103746865abd4bbc2c9922402030410100e0e0d0d0f0e');
CREATE TABLE IF NOT EXISTS 'search_idx'(segid, term, pgno, PRIMARY KEY(segid, term)) WITHOUT ROWID;
INSERT INTO search_idx VALUES(1,X'',2);
INSERT INTO search_idx VALUES(2,X'',2);
INSERT INTO search_idx VALUES(3,X'',2);
INSERT INTO search_idx VALUES(4,X'',2);
INSERT INTO search_idx VALUES(5,X'',2);
INSERT INTO search_idx VALUES(6,X'',2);
INSERT INTO search_idx VALUES(7,X'',2);
INSERT INTO search_idx VALUES(8,X'',2);
INSERT INTO search_idx VALUES(9,X'',2);
INSERT INTO search_idx VALUES(10,X'',2);
INSERT INTO search_idx VALUES(11,X'',2);
INSERT INTO search_idx VALUES(12,X'',2);
CREATE TABLE IF NOT EXISTS 'search_content'(id INTEGER PRIMARY KEY, c0, c1);
INSERT INTO search_content VALUES(1284,'','');
INSERT INTO search_content VALUES(1316,'','');
INSERT INTO search_content VALUES(1348,'','');
INSERT INTO search_content VALUES(1380,'','');
INSERT INTO search_content VALUES(1412,'entered twice','');
INSERT INTO search_content VALUES(1621,'Rivet the ribs','Wings');
INSERT INTO search_content VALUES(1653,'Paint','Wings');
INSERT INTO search_content VALUES(2881,'Ada Holm','');
INSERT INTO search_content VALUES(2913,'Ben Ruiz','');
INSERT INTO search_content VALUES(2945,'Cleo Marsh','');
INSERT INTO search_content VALUES(191838180929924,'Riveted the nose ribs','');
INSERT INTO search_content VALUES(191838186637363,'photos/2026/2026-11-25_left-wing_a80d8c.jpg','');
INSERT INTO search_content VALUES(191838193955972,'Sanded the scratch','');
INSERT INTO search_content VALUES(191896036908484,'Ribs set in jig','');
INSERT INTO search_content VALUES(191896038870212,'Deburred','');
INSERT INTO search_content VALUES(191896122330468,'Spar web fluted','');
INSERT INTO search_content VALUES(191896150655012,'Hinge line marked','');
INSERT INTO search_content VALUES(191896177731204,'Tip rib fitted','');
INSERT INTO search_content VALUES(192018084821156,'Dimpled the skin','');
INSERT INTO search_content VALUES(192018112420996,'Primed the ribs','');
INSERT INTO search_content VALUES(192018113896196,'Riveted the leading edge','');
INSERT INTO search_content VALUES(192018195302692,'After the merge','');
INSERT INTO search_content VALUES(288230376151712067,'Rivet the nose ribs','');
INSERT INTO search_content VALUES(288230376151712099,'Rivet the lower skin','');
INSERT INTO search_content VALUES(576460752303424458,'Overdriven rivet, rib 4',replace('1\nLeave until the visit','\n',char(10)));
INSERT INTO search_content VALUES(576460752303424490,'Scratch',replace('2\npolished','\n',char(10)));
INSERT INTO search_content VALUES(576460752303424522,'Wiring list has two pages 7','3');
INSERT INTO search_content VALUES(576460752303424554,'Burr in the spar web','4');
INSERT INTO search_content VALUES(864691128455135877,'Left wing, lower skin','');
INSERT INTO search_content VALUES(864691128455135909,'Right wing, lower skin','');
INSERT INTO search_content VALUES(1152921504606847010,'Left wing','LW');
INSERT INTO search_content VALUES(1152921504606847042,'Nose rib 1','LW-R1');
INSERT INTO search_content VALUES(1152921504606847074,'Right wing','RW');
CREATE TABLE IF NOT EXISTS 'search_config'(k PRIMARY KEY, v) WITHOUT ROWID;
INSERT INTO search_config VALUES('version',4);
CREATE UNIQUE INDEX "journal_change_id" ON "journal" ("change_id");
CREATE TRIGGER "journal_is_never_changed" BEFORE UPDATE ON "journal"
BEGIN
    SELECT RAISE (ABORT, 'the journal is append-only');
END;
CREATE TRIGGER "journal_is_never_shortened" BEFORE DELETE ON "journal"
BEGIN
    SELECT RAISE (ABORT, 'the journal is append-only');
END;
PRAGMA writable_schema=OFF;
COMMIT;
PRAGMA application_id=1280472692;
PRAGMA user_version=3;
