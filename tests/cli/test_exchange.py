# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Taking records in and giving them back."""

import csv
import hashlib
import json
import os
import resource
import signal
import subprocess
import zipfile
from pathlib import Path

from documents import BUILDER, LEFT_SKIN, LEFT_WING, bench
from terminal import PROGRAM, TerminalTest

RESOURCES = Path(__file__).resolve().parents[2] / "resources"


class Json(TerminalTest):
    def test_export_import_export_gives_the_same_bytes(self):
        self.make_project(bench())
        first = self.export("first.json")
        self.project = self.folder / "Again.lastrivet"
        self.ask("import", self.project, self.folder / "first.json", "--create")
        self.assertEqual(self.export("second.json"), first)
        self.assertTrue(first.endswith(b"\n"))

    def test_what_is_there_already_is_skipped_and_counted(self):
        self.make_project(bench())
        self.export("first.json")
        answer = self.ask("import", self.project, self.folder / "first.json", "--json").json()
        report, = answer["files"]
        self.assertEqual((report["added"], report["skipped"]), ({}, 21))

    def test_the_answer_counts_what_was_added(self):
        path = self.write("bench.json", bench())
        answer = self.ask("import", self.project, path, "--create", "--json").json()
        added = answer["files"][0]["added"]
        self.assertEqual((added["people"], added["components"], added["squawks"]), (3, 3, 4))

    def test_the_profile_gives_hold_points_where_the_document_lists_none(self):
        document = bench()
        del document["hold_points_given"]
        path = self.write("bench.json", document)
        report, = self.ask("import", self.project, path, "--create", "--json").json()["files"]
        self.assertEqual(report["hold_points_made"], 2)

    def test_the_export_is_what_the_published_schema_describes(self):
        schema = RESOURCES / "schema" / "records.schema.json"
        import jsonschema
        self.make_project(bench())
        jsonschema.Draft202012Validator(json.loads(schema.read_text(encoding="utf-8"))).validate(
            json.loads(self.export("out.json")))

    def test_files_beside_the_document_are_taken_along_and_missing_ones_named(self):
        content = b"%PDF-1.4\n%%EOF\n"
        self.write("documents/there.pdf", content)
        document = bench()
        document["media"] = [
            {"id": 70, "kind": "document", "file": "documents/there.pdf", "bytes": len(content),
             "sha256": hashlib.sha256(content).hexdigest(), "imported_on": "2026-01-01"},
            {"id": 71, "kind": "document", "file": "documents/gone.pdf", "bytes": 1,
             "sha256": "0" * 64, "imported_on": "2026-01-01"}]
        path = self.write("bench.json", document)
        answer = self.run_program("import", self.project, path, "--create", "--json")
        self.assertEqual(answer.code, 0)
        self.assertIn("documents/gone.pdf", answer.err)
        report, = answer.json()["files"]
        self.assertEqual((report["files_copied"], report["files_missing"]),
                         (1, ["documents/gone.pdf"]))
        self.assertEqual((self.project / "documents/there.pdf").read_bytes(), content)
        verified = self.run_program("verify", self.project, "--json")
        self.assertEqual(verified.code, 1)
        self.assertEqual([(f["record"], f["id"]) for f in verified.json()["findings"]],
                         [("media", 71)])

    def test_a_currency_that_nobody_knows_is_told_and_taken_in(self):
        document = bench()
        document["expenses"] = [{"id": 90, "spent_on": "2026-01-02", "what": "Rent",
                                 "amount": 500, "currency": "ABC"}]
        answer = self.run_program("import", self.project, self.write("bench.json", document),
                                  "--create")
        self.assertEqual(answer.code, 0)
        self.assertIn("ISO 4217: ABC", answer.err)

    def test_a_day_far_ahead_is_told_and_taken_in(self):
        document = bench()
        document["work_sessions"][0]["began"] = "2192-12-29"
        document["part_lines"] = [{"id": 90, "name": "Rib", "quantity": 1,
                                   "expected_on": "2192-01-01"}]
        answer = self.run_program("import", self.project, self.write("bench.json", document),
                                  "--create")
        self.assertEqual(answer.code, 0)
        self.assertIn("1 record speaks of days more than a year ahead, the first is log entry 40",
                      answer.err)

    def test_what_was_taken_in_before_a_file_that_fails_is_told(self):
        good = self.write("good.json", bench())
        bad = self.write("bad.json", "no document")
        answer = self.run_program("import", self.project, good, bad, "--create", "--json")
        self.assertEqual(answer.code, 3)
        self.assertIn("bad.json", answer.err)
        self.assertEqual([each["file"] for each in answer.json()["files"]], [str(good)])
        self.refused(3, "import", self.project, bad, good, "--json", says="bad.json")

    def test_a_link_is_followed_and_a_device_or_a_pipe_is_no_place(self):
        self.make_project(bench())
        target = self.write("disk/records.json", "before")
        link = self.folder / "link.json"
        link.symlink_to(target)
        self.ask("export", self.project, "--to", link)
        self.assertTrue(link.is_symlink())
        self.assertEqual(json.loads(target.read_text(encoding="utf-8"))["project"]["name"],
                         "Bench")
        nowhere = self.folder / "nowhere.json"
        nowhere.symlink_to(self.folder / "gone" / "records.json")
        self.refused(3, "export", self.project, "--to", nowhere, says="leads nowhere")
        self.assertTrue(nowhere.is_symlink())
        for suffix in ("json", "zip", "ics"):
            pipe = self.folder / f"pipe.{suffix}"
            os.mkfifo(pipe)
            self.refused(3, "export", self.project, "--to", pipe, says="a device or a pipe")
            self.assertTrue(pipe.is_fifo())
        pipe = self.folder / "pipe.pdf"
        os.mkfifo(pipe)
        self.refused(3, "logbook", self.project, "--to", pipe, says="a device or a pipe")
        self.refused(3, "packet", self.project, "--closing", LEFT_SKIN, "--to", pipe,
                     says="a device or a pipe")
        self.assertTrue(pipe.is_fifo())

    def test_an_import_can_be_undone_as_a_whole(self):
        self.make_project({**bench(), "squawks": []})
        before = self.export("before.json")
        self.ask("import", self.project, self.write("all.json", bench()))
        self.assertNotEqual(self.export("after.json"), before)
        self.ask("undo", self.project)
        self.assertEqual(self.export("undone.json"), before)

    def export(self, name):
        path = self.folder / name
        self.ask("export", self.project, "--to", path)
        return path.read_bytes()


class Csv(TerminalTest):
    def setUp(self):
        super().setUp()
        self.make_project(bench())

    def test_a_folder_with_a_file_per_kind_of_record_that_a_csv_reader_reads(self):
        folder = self.folder / "lists"
        self.ask("export", self.project, "--to", folder, "--csv")
        with open(folder / "components.csv", newline="", encoding="utf-8") as file:
            rows = list(csv.DictReader(file))
        self.assertEqual([row["code"] for row in rows], ["LW", "LW-R1", "RW"])
        self.assertEqual(rows[1]["parent_id"], str(LEFT_WING))
        self.assertTrue((folder / "work_sessions.csv").exists())

    def test_parts_are_taken_in_from_a_list(self):
        path = self.write("parts.csv", "code,name,parent\r\nLW-R2,Nose rib 2,LW\r\n"
                                       "LW-R2a,\"Doubler, inner\",LW-R2\r\n")
        report, = self.ask("import", self.project, path, "--as", "components",
                           "--json").json()["files"]
        self.assertEqual(report["added"], {"components": 2})
        self.assertEqual(
            self.database("SELECT c.name, p.code AS parent FROM component c JOIN component p"
                          " ON p.id = c.parent_id WHERE c.code = 'LW-R2a'"),
            [{"name": "Doubler, inner", "parent": "LW-R2"}])

    def test_log_entries_are_the_builders(self):
        path = self.write("log.csv", "began;part;minutes;note\n2026-03-01;LW;30;Deburred\n")
        self.ask("import", self.project, path, "--as", "work_sessions")
        rows = self.database("SELECT w.person_id, s.minutes FROM work_session s JOIN"
                             " work_session_workers w ON w.work_session_id = s.id"
                             " WHERE s.note = 'Deburred'")
        self.assertEqual([row["person_id"] for row in rows], [BUILDER])

    def test_a_log_of_a_spreadsheet_is_taken_in_as_it_is_and_only_once(self):
        path = self.folder / "log.csv"
        path.write_bytes("Datum;Bauteil;Stunden;Bemerkung\r\n5/3/26;LW;1,5;Flügel entgratet\r\n"
                         .encode("cp1252"))
        refused = self.run_program("import", self.project, path, "--as", "work_sessions")
        self.assertEqual(refused.code, 3)
        self.assertIn("say with --days dmy or --days mdy", refused.err)
        asked = ("import", self.project, path, "--as", "work_sessions", "--days", "dmy", "--json")
        report, = self.ask(*asked).json()["files"]
        self.assertEqual((report["added"], report["skipped"]), ({"work_sessions": 1}, 0))
        report, = self.ask(*asked).json()["files"]
        self.assertEqual((report["added"], report["skipped"]), ({}, 1))
        self.assertEqual(self.database("SELECT began, minutes FROM work_session"
                                       " WHERE note = 'Flügel entgratet'"),
                         [{"began": "2026-03-05", "minutes": 90}])

    def test_the_order_of_days_is_taken_from_all_of_them_and_told(self):
        path = self.write("log.csv", "date,part,minutes,note\n3/1/2026,LW,30,Sanded one\n"
                                     "14/2/2026,LW,30,Sanded two\n")
        answer = self.run_program("import", self.project, path, "--as", "work_sessions")
        self.assertEqual(answer.code, 0)
        self.assertIn("took its days for day-month-year", answer.err)
        self.assertEqual(self.database("SELECT began FROM work_session WHERE note LIKE 'Sanded %'"
                                       " ORDER BY began"),
                         [{"began": "2026-01-03"}, {"began": "2026-02-14"}])

    def test_prices_below_the_header_of_an_export_are_told_another(self):
        path = self.write("parts.csv", "name,quantity,unit_price\nRib,4,1.25\n")
        refused = self.run_program("import", self.project, path, "--as", "part_lines")
        self.assertEqual(refused.code, 3)
        self.assertIn('head prices as people write them "price"', refused.err)

    def test_columns_that_name_no_field_are_told(self):
        path = self.write("parts.csv", "code,name,colour\nX1,Bracket,red\n")
        answer = self.run_program("import", self.project, path, "--as", "components")
        self.assertEqual(answer.code, 0)
        self.assertIn("colour", answer.err)

    def test_columns_without_a_heading_are_told_where_anything_stands_in_them(self):
        path = self.write("parts.csv", "code,name,,\nX1,Bracket,,\nX2,Clip,,steel\n")
        answer = self.run_program("import", self.project, path, "--as", "components")
        self.assertEqual(answer.code, 0)
        told, = answer.err.splitlines()
        self.assertIn("that name no field: column 4.", told)

    def test_a_list_in_utf_16_is_taken_in(self):
        path = self.folder / "parts.txt"
        path.write_bytes("code\tname\r\nX1\tFlügel\r\n".encode("utf-16"))
        self.ask("import", self.project, path, "--as", "components")
        self.assertEqual(self.database("SELECT name FROM component WHERE code = 'X1'"),
                         [{"name": "Flügel"}])

    def test_a_column_that_stands_twice_is_told_as_that(self):
        path = self.write("parts.csv", "code,name,Name,colour\nX1,Bracket,Clip,red\n")
        answer = self.run_program("import", self.project, path, "--as", "components")
        self.assertEqual(answer.code, 0)
        doubled, unknown = answer.err.splitlines()
        self.assertIn("whose field another column fills: Name.", doubled)
        self.assertIn("that name no field: colour.", unknown)
        self.assertEqual(self.database("SELECT name FROM component WHERE code = 'X1'"),
                         [{"name": "Bracket"}])

    def test_what_a_column_of_times_was_taken_for_is_told(self):
        head = "date,time,part,note\n"
        rows = {"clock": "2026-03-01,19:30,LW,By the clock\n2026-03-02,8:15,LW,By the clock\n",
                "length": "2026-03-01,1:30,LW,How long\n"}
        said = {}
        for name, text in rows.items():
            path = self.write(f"{name}.csv", head + text)
            answer = self.run_program("import", self.project, path, "--as", "work_sessions")
            self.assertEqual(answer.code, 0, answer.err)
            said[name], = answer.err.splitlines()
        self.assertIn('left out the column "time": it holds times of the day', said["clock"])
        self.assertIn('took the column "time" for how long the work took', said["length"])
        self.assertEqual(
            self.database("SELECT note, minutes FROM work_session WHERE note IN"
                          " ('By the clock', 'How long') ORDER BY began, note"),
            [{"note": "By the clock", "minutes": None}, {"note": "How long", "minutes": 90},
             {"note": "By the clock", "minutes": None}])

    def test_a_list_without_a_word_what_it_lists_is_wrong_usage(self):
        path = self.write("parts.csv", "code,name\nX1,Bracket\n")
        self.refused(2, "import", self.project, path, says="--as")
        self.refused(2, "import", self.project, path, "--as", "dreams", says="--as")


class Archive(TerminalTest):
    def test_holds_everything_with_sums_that_coreutils_accept(self):
        content = b"%PDF-1.4\n%%EOF\n"
        self.write("documents/there.pdf", content)
        document = bench()
        document["media"] = [
            {"id": 70, "kind": "document", "file": "documents/there.pdf", "bytes": len(content),
             "sha256": hashlib.sha256(content).hexdigest(), "imported_on": "2026-01-01"}]
        self.make_project(document)
        archive = self.folder / "all.zip"
        self.ask("export", self.project, "--to", archive)
        out = self.folder / "out"
        with zipfile.ZipFile(archive) as zipped:
            self.assertIsNone(zipped.testzip())
            zipped.extractall(out)
        checked = subprocess.run(["sha256sum", "--strict", "-c", "SHA256SUMS"], cwd=out,
                                 env={**os.environ, "LC_ALL": "C"}, capture_output=True, text=True,
                                 check=True)
        self.assertEqual(checked.stdout, "READ-ME-FIRST.txt: OK\nphotos-of-part.sql: OK\n"
                                         "records.db: OK\nrecords.json: OK\n"
                                         "documents/there.pdf: OK\n")
        self.project = self.folder / "Again.lastrivet"
        self.ask("import", self.project, out / "records.json", "--create")
        self.ask("verify", self.project)

    def test_unpacked_by_unzip_it_is_the_project_with_names_in_utf_8(self):
        name = "documents/Flügel – détail.pdf"
        content = b"%PDF-1.4\n%%EOF\n"
        self.write(name, content)
        document = bench()
        document["media"] = [
            {"id": 70, "kind": "document", "file": name, "bytes": len(content),
             "sha256": hashlib.sha256(content).hexdigest(), "imported_on": "2026-01-01"}]
        self.make_project(document)
        archive = self.folder / "all.zip"
        self.ask("export", self.project, "--to", archive)
        out = self.folder / "Unpacked.lastrivet"
        subprocess.run(["unzip", "-q", archive, "-d", out], check=True,
                       env={**os.environ, "LC_ALL": "C.UTF-8"})
        self.assertEqual((out / name).read_bytes(), content)
        subprocess.run(["sha256sum", "--strict", "--quiet", "-c", "SHA256SUMS"], cwd=out,
                       check=True)
        listed = {line.split("  ", 1)[1]
                  for line in (out / "SHA256SUMS").read_text(encoding="utf-8").splitlines()}
        there = {str(path.relative_to(out)) for path in out.rglob("*") if path.is_file()}
        self.assertEqual(there - listed, {"SHA256SUMS"})
        self.ask("verify", out)
        self.assertEqual(self.ask("journal", out, "--json").json(),
                         self.ask("journal", self.project, "--json").json())

    def test_that_is_not_whole_is_written_and_a_no(self):
        content = b"%PDF-1.4\n%%EOF\n"
        document = bench()
        document["media"] = [
            {"id": 70, "kind": "document", "file": "documents/70.pdf",
             "bytes": len(content), "sha256": hashlib.sha256(content).hexdigest(),
             "imported_on": "2026-01-01"}]
        self.write("documents/70.pdf", content)
        self.make_project(document)
        archive = self.folder / "all.zip"
        for spoil, word in ((lambda file: file.write_bytes(content + b"more"), "no longer what"),
                            (lambda file: file.unlink(), "not in the project")):
            spoil(self.project / "documents/70.pdf")
            answer = self.run_program("export", self.project, "--to", archive)
            self.assertEqual(answer.code, 1, answer.err)
            self.assertEqual(len(answer.err.splitlines()), 1)
            self.assertIn(f"documents/70.pdf: {word}", answer.err)
            self.assertEqual(answer.out, f"Wrote {archive}.\n")
            with zipfile.ZipFile(archive) as zipped:
                self.assertIn("records.db", zipped.namelist())

    def test_an_archive_that_cannot_be_written_leaves_the_one_before(self):
        self.make_project(bench())
        archive = self.folder / "all.zip"
        self.ask("export", self.project, "--to", archive)
        before = archive.read_bytes()
        self.refused(3, "export", self.project, "--to", self.folder / "gone" / "all.zip",
                     says="could not be written")

        def limit():
            signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
            resource.setrlimit(resource.RLIMIT_FSIZE, (50_000, 50_000))

        done = subprocess.run([PROGRAM, "export", self.project, "--to", archive],
                              capture_output=True, text=True, preexec_fn=limit, check=False)
        self.assertEqual(done.returncode, 3, done.stderr)
        self.assertEqual(archive.read_bytes(), before)
        self.assertEqual([path.name for path in self.folder.glob("all.zip*")], ["all.zip"])

    def test_another_suffix_is_wrong_usage(self):
        self.make_project(bench())
        self.refused(2, "export", self.project, "--to", self.folder / "all.xyz", says=".json")
