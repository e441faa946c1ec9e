# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The calendar file, read by python3-icalendar, which knows nothing of this program."""

import datetime
import zoneinfo

import icalendar

from documents import INSPECTOR, bench
from terminal import TerminalTest

YEAR = datetime.date.today().year + 1


class Calendar(TerminalTest):
    def document(self):
        document = bench()
        document["inspections"] = [
            {"id": 70, "kind": "pre_cover", "planned_for": f"{YEAR}-07-02T14:30",
             "inspector_id": INSPECTOR, "place": "Hangar 3; second door, left"},
            {"id": 71, "kind": "final", "planned_for": f"{YEAR}-09-01"}]
        document["material_lots"] = [
            {"id": 80, "name": "Sealant, grey \\ two parts; für Tanks " + "ü" * 60,
             "expires_on": f"{YEAR}-05-01"}]
        document["tools"] = [
            {"id": 85, "name": "Torque wrench", "needs_calibration": True,
             "calibrations": [{"calibrated_on": "2025-06-01", "due_on": f"{YEAR}-06-01"}]}]
        document["certificate_documents"] = [
            {"id": 88, "key": "hangar_pass", "received_on": "2025-06-01",
             "expires_on": f"{YEAR}-08-01"}]
        return document

    def events(self, *options):
        target = self.folder / "shop.ics"
        self.ask("export", self.project, "--to", target, *options)
        raw = target.read_bytes()
        # RFC 5545, 3.1.
        self.assertNotIn(b"\n", raw.replace(b"\r\n", b""))
        self.assertTrue(all(len(line) <= 75 for line in raw.split(b"\r\n")))
        calendar = icalendar.Calendar.from_ical(raw)
        self.assertEqual((calendar["VERSION"], calendar["CALSCALE"]), ("2.0", "GREGORIAN"))
        self.assertEqual(calendar.errors, [])
        return {str(event["UID"]).split("-", 2)[2]: event for event in calendar.walk("VEVENT")}

    def test_visits_expiry_and_calibration_are_events(self):
        self.make_project(self.document())
        events = self.events()
        self.assertEqual(sorted(events), ["certificate_document-88", "inspection-70",
                                          "inspection-71", "material_lot-80", "tool-85"])
        paper = events["certificate_document-88"]
        self.assertEqual(paper.decoded("DTSTART"), datetime.date(YEAR, 8, 1))
        self.assertEqual(paper["SUMMARY"], "Expires: hangar_pass")
        visit = events["inspection-70"]
        self.assertEqual(visit.decoded("DTSTART"), datetime.datetime(
            YEAR, 7, 2, 14, 30, tzinfo=zoneinfo.ZoneInfo("Europe/Berlin")))
        self.assertEqual(visit.decoded("DTSTART").utcoffset(), datetime.timedelta(0))
        self.assertEqual(visit["LOCATION"], "Hangar 3; second door, left")
        lot = events["material_lot-80"]
        self.assertEqual(lot.decoded("DTSTART"), datetime.date(YEAR, 5, 1))
        self.assertEqual(lot["SUMMARY"],
                         "Expires: Sealant, grey \\ two parts; für Tanks " + "ü" * 60)
        self.assertEqual(events["inspection-71"].decoded("DTSTART"), datetime.date(YEAR, 9, 1))
        for event in events.values():
            self.assertEqual(event.errors, [])
            self.assertEqual(event.decoded("DTSTAMP").utcoffset(), datetime.timedelta(0))
            self.assertEqual(event.walk("VALARM"), [])

    def test_uids_stay_and_alarms_ring_when_asked_for(self):
        self.make_project(self.document())
        first = {key: event["UID"] for key, event in self.events().items()}
        ringing = self.events("--alarm", 7)
        self.assertEqual({key: event["UID"] for key, event in ringing.items()}, first)
        self.refused(2, "export", self.project, "--to", self.folder / "late.ics", "--alarm", 366,
                     says="--alarm")
        for place in ("all.json", "all.zip", "all"):
            self.refused(2, "export", self.project, "--to", self.folder / place, "--alarm", 7,
                         *(["--csv"] if place == "all" else []), says="--alarm")
            self.assertFalse((self.folder / place).exists())
        for event in ringing.values():
            alarm, = event.walk("VALARM")
            self.assertEqual(alarm["TRIGGER"].dt, datetime.timedelta(days=-7))

    def test_nothing_planned_is_no_file(self):
        self.make_project(bench())
        target = self.folder / "shop.ics"
        self.refused(3, "export", self.project, "--to", target, says="nothing to put into")
        self.assertFalse(target.exists())
