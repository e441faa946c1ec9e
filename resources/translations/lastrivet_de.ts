<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en">
<context>
    <name>Bench</name>
    <message>
        <source>%1 to %2 %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: locked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fitted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Locked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sealed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Torqued</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least %1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most %1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>has to wait for another step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the clock runs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>torqued: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Closing</name>
    <message>
        <source>own check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tool and debris check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>independent check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pre-cover inspection</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stage inspection</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>technical visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>final inspection</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>builder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>adviser</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inspector</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>accepted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>accepted, with findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rejected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by video</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by message</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>workshop visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Field</name>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>part</source>
        <translation>Teil</translation>
    </message>
</context>
<context>
    <name>FieldName</name>
    <message>
        <source>accepted_basis</source>
        <translation>Grundlage der Annahme</translation>
    </message>
    <message>
        <source>accepted_by</source>
        <translation>angenommen von</translation>
    </message>
    <message>
        <source>accepted_on</source>
        <translation>angenommen am</translation>
    </message>
    <message>
        <source>added</source>
        <translation>dazugekommen</translation>
    </message>
    <message>
        <source>after</source>
        <translation>nach</translation>
    </message>
    <message>
        <source>aircraft_type</source>
        <translation>Muster</translation>
    </message>
    <message>
        <source>alternatives</source>
        <translation>Alternativen</translation>
    </message>
    <message>
        <source>amount</source>
        <translation>Betrag</translation>
    </message>
    <message>
        <source>annotations</source>
        <translation>Markierungen</translation>
    </message>
    <message>
        <source>applies</source>
        <translation>trifft zu</translation>
    </message>
    <message>
        <source>approximate</source>
        <translation>nur ungefähr</translation>
    </message>
    <message>
        <source>arm</source>
        <translation>Hebelarm</translation>
    </message>
    <message>
        <source>arm_unit</source>
        <translation>Einheit des Hebelarms</translation>
    </message>
    <message>
        <source>asked_of</source>
        <translation>angefragt bei</translation>
    </message>
    <message>
        <source>asked_on</source>
        <translation>angefragt am</translation>
    </message>
    <message>
        <source>assembly_tenths</source>
        <translation>Zehntel Zusammenbau</translation>
    </message>
    <message>
        <source>authority_file</source>
        <translation>Aktenzeichen der Behörde</translation>
    </message>
    <message>
        <source>basis</source>
        <translation>Grundlage</translation>
    </message>
    <message>
        <source>began</source>
        <translation>begonnen</translation>
    </message>
    <message>
        <source>builder_address</source>
        <translation>Anschrift des Erbauers</translation>
    </message>
    <message>
        <source>builder_id</source>
        <translation>Erbauer</translation>
    </message>
    <message>
        <source>built_as</source>
        <translation>gebaut als</translation>
    </message>
    <message>
        <source>built_on</source>
        <translation>gebaut am</translation>
    </message>
    <message>
        <source>by</source>
        <translation>von</translation>
    </message>
    <message>
        <source>bytes</source>
        <translation>Bytes</translation>
    </message>
    <message>
        <source>calibrated_on</source>
        <translation>kalibriert am</translation>
    </message>
    <message>
        <source>calibrations</source>
        <translation>Kalibrierungen</translation>
    </message>
    <message>
        <source>cancelled_on</source>
        <translation>abgesagt am</translation>
    </message>
    <message>
        <source>caption</source>
        <translation>Bildunterschrift</translation>
    </message>
    <message>
        <source>category</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>certificate_id</source>
        <translation>Zertifikat</translation>
    </message>
    <message>
        <source>changed_inspected</source>
        <translation>änderte Geprüftes</translation>
    </message>
    <message>
        <source>chosen</source>
        <translation>gewählt</translation>
    </message>
    <message>
        <source>closed_on</source>
        <translation>geschlossen am</translation>
    </message>
    <message>
        <source>closes</source>
        <translation>schließt</translation>
    </message>
    <message>
        <source>closing_id</source>
        <translation>Verschluss</translation>
    </message>
    <message>
        <source>code</source>
        <translation>Kürzel</translation>
    </message>
    <message>
        <source>commercial_tenths</source>
        <translation>Zehntel gewerblich</translation>
    </message>
    <message>
        <source>completed_on</source>
        <translation>abgeschlossen am</translation>
    </message>
    <message>
        <source>complied_on</source>
        <translation>erfüllt am</translation>
    </message>
    <message>
        <source>component_id</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>component_ids</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>cons</source>
        <translation>Nachteile</translation>
    </message>
    <message>
        <source>construction</source>
        <translation>Bauweise</translation>
    </message>
    <message>
        <source>contact</source>
        <translation>Kontakt</translation>
    </message>
    <message>
        <source>correction</source>
        <translation>Behebung</translation>
    </message>
    <message>
        <source>corrections</source>
        <translation>Korrekturen</translation>
    </message>
    <message>
        <source>credential</source>
        <translation>Berechtigung</translation>
    </message>
    <message>
        <source>cure_minutes</source>
        <translation>Aushärtezeit</translation>
    </message>
    <message>
        <source>cures</source>
        <translation>härtet aus</translation>
    </message>
    <message>
        <source>currency</source>
        <translation>Währung</translation>
    </message>
    <message>
        <source>damaged_quantity</source>
        <translation>davon beschädigt</translation>
    </message>
    <message>
        <source>datum</source>
        <translation>Bezugspunkt</translation>
    </message>
    <message>
        <source>decided_by</source>
        <translation>entschieden von</translation>
    </message>
    <message>
        <source>decided_on</source>
        <translation>entschieden am</translation>
    </message>
    <message>
        <source>decision</source>
        <translation>Entscheidung</translation>
    </message>
    <message>
        <source>designer</source>
        <translation>Konstrukteur</translation>
    </message>
    <message>
        <source>detail</source>
        <translation>Einzelheiten</translation>
    </message>
    <message>
        <source>done_by</source>
        <translation>erledigt von</translation>
    </message>
    <message>
        <source>done_on</source>
        <translation>erledigt am</translation>
    </message>
    <message>
        <source>drawing_ref</source>
        <translation>Zeichnung</translation>
    </message>
    <message>
        <source>dropped_on</source>
        <translation>verworfen am</translation>
    </message>
    <message>
        <source>due_on</source>
        <translation>fällig am</translation>
    </message>
    <message>
        <source>edition</source>
        <translation>Ausgabe</translation>
    </message>
    <message>
        <source>encloses</source>
        <translation>umschließt</translation>
    </message>
    <message>
        <source>equipment_note</source>
        <translation>Ausrüstung</translation>
    </message>
    <message>
        <source>estimate_minutes</source>
        <translation>geschätzte Zeit</translation>
    </message>
    <message>
        <source>events</source>
        <translation>Ereignisse</translation>
    </message>
    <message>
        <source>expected_on</source>
        <translation>erwartet am</translation>
    </message>
    <message>
        <source>expires_on</source>
        <translation>haltbar bis</translation>
    </message>
    <message>
        <source>fabrication_tenths</source>
        <translation>Zehntel Fertigung</translation>
    </message>
    <message>
        <source>faults</source>
        <translation>Beanstandungen</translation>
    </message>
    <message>
        <source>file</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>finding_number</source>
        <translation>Nummer des Befunds</translation>
    </message>
    <message>
        <source>fitted_on</source>
        <translation>eingebaut am</translation>
    </message>
    <message>
        <source>fixed_by</source>
        <translation>behoben von</translation>
    </message>
    <message>
        <source>fixed_on</source>
        <translation>behoben am</translation>
    </message>
    <message>
        <source>flown_on</source>
        <translation>geflogen am</translation>
    </message>
    <message>
        <source>found_by</source>
        <translation>gefunden von</translation>
    </message>
    <message>
        <source>found_on</source>
        <translation>gefunden am</translation>
    </message>
    <message>
        <source>fuel_state</source>
        <translation>Kraftstoffstand</translation>
    </message>
    <message>
        <source>hardware</source>
        <translation>Normteil</translation>
    </message>
    <message>
        <source>height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>held_on</source>
        <translation>durchgeführt am</translation>
    </message>
    <message>
        <source>hold_point_id</source>
        <translation>Haltepunkt</translation>
    </message>
    <message>
        <source>hold_point_ids</source>
        <translation>Haltepunkte</translation>
    </message>
    <message>
        <source>humidity</source>
        <translation>Luftfeuchte</translation>
    </message>
    <message>
        <source>id</source>
        <translation>Nummer im Programm</translation>
    </message>
    <message>
        <source>imported_on</source>
        <translation>eingelesen am</translation>
    </message>
    <message>
        <source>inspection_id</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>inspector_id</source>
        <translation>Prüfer</translation>
    </message>
    <message>
        <source>issued_on</source>
        <translation>ausgestellt am</translation>
    </message>
    <message>
        <source>issuer</source>
        <translation>Herausgeber</translation>
    </message>
    <message>
        <source>item</source>
        <translation>Prüfpunkt</translation>
    </message>
    <message>
        <source>items</source>
        <translation>Posten</translation>
    </message>
    <message>
        <source>key</source>
        <translation>Schlüssel</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>kit_number</source>
        <translation>Bausatznummer</translation>
    </message>
    <message>
        <source>kit_tenths</source>
        <translation>Zehntel Bausatz</translation>
    </message>
    <message>
        <source>landings</source>
        <translation>Landungen</translation>
    </message>
    <message>
        <source>late_acceptances</source>
        <translation>späte Annahmen</translation>
    </message>
    <message>
        <source>lemac</source>
        <translation>Vorderkante der Bezugstiefe</translation>
    </message>
    <message>
        <source>level</source>
        <translation>waagerecht</translation>
    </message>
    <message>
        <source>links</source>
        <translation>Zuordnungen</translation>
    </message>
    <message>
        <source>locked_on</source>
        <translation>gesichert am</translation>
    </message>
    <message>
        <source>locking</source>
        <translation>Sicherung</translation>
    </message>
    <message>
        <source>lot_ids</source>
        <translation>Chargen</translation>
    </message>
    <message>
        <source>lot_number</source>
        <translation>Chargennummer</translation>
    </message>
    <message>
        <source>mac</source>
        <translation>mittlere Flügeltiefe</translation>
    </message>
    <message>
        <source>made_by</source>
        <translation>gemacht von</translation>
    </message>
    <message>
        <source>maker</source>
        <translation>Hersteller</translation>
    </message>
    <message>
        <source>mandatory</source>
        <translation>verbindlich</translation>
    </message>
    <message>
        <source>marked_on</source>
        <translation>markiert am</translation>
    </message>
    <message>
        <source>maximum</source>
        <translation>Höchstwert</translation>
    </message>
    <message>
        <source>maximum_weight</source>
        <translation>Höchstmasse</translation>
    </message>
    <message>
        <source>may_follow</source>
        <translation>darf folgen auf</translation>
    </message>
    <message>
        <source>measured_on</source>
        <translation>gemessen am</translation>
    </message>
    <message>
        <source>media_id</source>
        <translation>Foto oder Dokument</translation>
    </message>
    <message>
        <source>media_ids</source>
        <translation>Fotos und Dokumente</translation>
    </message>
    <message>
        <source>method</source>
        <translation>Verfahren</translation>
    </message>
    <message>
        <source>minimum</source>
        <translation>Mindestwert</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation>Dauer</translation>
    </message>
    <message>
        <source>mix_ratio</source>
        <translation>Mischungsverhältnis</translation>
    </message>
    <message>
        <source>model</source>
        <translation>Baureihe</translation>
    </message>
    <message>
        <source>model_as_written</source>
        <translation>Baureihe wie geschrieben</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>name_as_written</source>
        <translation>Name wie geschrieben</translation>
    </message>
    <message>
        <source>needs_access_to</source>
        <translation>braucht Zugang zu</translation>
    </message>
    <message>
        <source>needs_calibration</source>
        <translation>braucht Kalibrierung</translation>
    </message>
    <message>
        <source>never_enclosed_why</source>
        <translation>warum nie umschlossen</translation>
    </message>
    <message>
        <source>not_applicable</source>
        <translation>trifft nicht zu</translation>
    </message>
    <message>
        <source>not_inside</source>
        <translation>nicht in</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>oil_state</source>
        <translation>Ölstand</translation>
    </message>
    <message>
        <source>opened_on</source>
        <translation>geöffnet am</translation>
    </message>
    <message>
        <source>ordered_on</source>
        <translation>bestellt am</translation>
    </message>
    <message>
        <source>origin</source>
        <translation>gebaut nach</translation>
    </message>
    <message>
        <source>paid</source>
        <translation>bezahlt</translation>
    </message>
    <message>
        <source>parent_id</source>
        <translation>liegt in</translation>
    </message>
    <message>
        <source>part_number</source>
        <translation>Teilenummer</translation>
    </message>
    <message>
        <source>permanent</source>
        <translation>dauerhaft</translation>
    </message>
    <message>
        <source>person_id</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>pilot_id</source>
        <translation>Pilot</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>plan_ref</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>planned_for</source>
        <translation>geplant für</translation>
    </message>
    <message>
        <source>planned_on</source>
        <translation>geplant am</translation>
    </message>
    <message>
        <source>point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>points</source>
        <translation>Punkte</translation>
    </message>
    <message>
        <source>position</source>
        <translation>Reihenfolge</translation>
    </message>
    <message>
        <source>present</source>
        <translation>vorhanden</translation>
    </message>
    <message>
        <source>profile</source>
        <translation>Regelwerk</translation>
    </message>
    <message>
        <source>pros</source>
        <translation>Vorteile</translation>
    </message>
    <message>
        <source>quantity</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>raised_on</source>
        <translation>gemeldet am</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>Ablesung</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>received_on</source>
        <translation>erhalten am</translation>
    </message>
    <message>
        <source>received_quantity</source>
        <translation>davon erhalten</translation>
    </message>
    <message>
        <source>reference</source>
        <translation>Zeichen</translation>
    </message>
    <message>
        <source>registration</source>
        <translation>Kennzeichen</translation>
    </message>
    <message>
        <source>registration_as_written</source>
        <translation>Kennzeichen wie geschrieben</translation>
    </message>
    <message>
        <source>remarks</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <source>removed_on</source>
        <translation>ausgebaut am</translation>
    </message>
    <message>
        <source>removed_why</source>
        <translation>warum ausgebaut</translation>
    </message>
    <message>
        <source>repair_options</source>
        <translation>Reparaturwege</translation>
    </message>
    <message>
        <source>repair_plan</source>
        <translation>Reparaturplan</translation>
    </message>
    <message>
        <source>report_id</source>
        <translation>Bericht</translation>
    </message>
    <message>
        <source>report_number</source>
        <translation>Nummer des Berichts</translation>
    </message>
    <message>
        <source>required</source>
        <translation>erforderlich</translation>
    </message>
    <message>
        <source>result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>roles</source>
        <translation>Rollen</translation>
    </message>
    <message>
        <source>sample</source>
        <translation>Probe</translation>
    </message>
    <message>
        <source>sample_on</source>
        <translation>geprüfte Probe am</translation>
    </message>
    <message>
        <source>scale_readings</source>
        <translation>Ablesungen der Waagen</translation>
    </message>
    <message>
        <source>scan_id</source>
        <translation>unterschriebenes Blatt</translation>
    </message>
    <message>
        <source>scope</source>
        <translation>Umfang</translation>
    </message>
    <message>
        <source>section</source>
        <translation>Abschnitt</translation>
    </message>
    <message>
        <source>seen</source>
        <translation>gesehen</translation>
    </message>
    <message>
        <source>serial_as_written</source>
        <translation>Werknummer wie geschrieben</translation>
    </message>
    <message>
        <source>serial_number</source>
        <translation>Werknummer</translation>
    </message>
    <message>
        <source>severity</source>
        <translation>Schwere</translation>
    </message>
    <message>
        <source>sha256</source>
        <translation>SHA-256</translation>
    </message>
    <message>
        <source>shape</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>shelf</source>
        <translation>Fach</translation>
    </message>
    <message>
        <source>shipment</source>
        <translation>Lieferung</translation>
    </message>
    <message>
        <source>shows</source>
        <translation>zeigt</translation>
    </message>
    <message>
        <source>signed_on</source>
        <translation>unterschrieben am</translation>
    </message>
    <message>
        <source>signer_role</source>
        <translation>unterschreibt</translation>
    </message>
    <message>
        <source>source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>specification</source>
        <translation>Spezifikation</translation>
    </message>
    <message>
        <source>spent_on</source>
        <translation>ausgegeben am</translation>
    </message>
    <message>
        <source>squawk_id</source>
        <translation>Mangel</translation>
    </message>
    <message>
        <source>started_on</source>
        <translation>begonnen am</translation>
    </message>
    <message>
        <source>step_id</source>
        <translation>Arbeitsschritt</translation>
    </message>
    <message>
        <source>storage</source>
        <translation>Lagerung</translation>
    </message>
    <message>
        <source>subject</source>
        <translation>Gegenstand</translation>
    </message>
    <message>
        <source>supplier</source>
        <translation>Lieferant</translation>
    </message>
    <message>
        <source>taken_on</source>
        <translation>aufgenommen am</translation>
    </message>
    <message>
        <source>tare</source>
        <translation>Tara</translation>
    </message>
    <message>
        <source>task</source>
        <translation>Aufgabe</translation>
    </message>
    <message>
        <source>temperature_max</source>
        <translation>höchste Temperatur</translation>
    </message>
    <message>
        <source>temperature_min</source>
        <translation>tiefste Temperatur</translation>
    </message>
    <message>
        <source>temperature_unit</source>
        <translation>Einheit der Temperatur</translation>
    </message>
    <message>
        <source>text</source>
        <translation>Text</translation>
    </message>
    <message>
        <source>thread</source>
        <translation>Gewinde</translation>
    </message>
    <message>
        <source>time_zone</source>
        <translation>Zeitzone</translation>
    </message>
    <message>
        <source>title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>tool_id</source>
        <translation>Werkzeug</translation>
    </message>
    <message>
        <source>torque_drag</source>
        <translation>Leerdrehmoment</translation>
    </message>
    <message>
        <source>torque_max</source>
        <translation>höchstes Drehmoment</translation>
    </message>
    <message>
        <source>torque_min</source>
        <translation>kleinstes Drehmoment</translation>
    </message>
    <message>
        <source>torque_unit</source>
        <translation>Einheit des Drehmoments</translation>
    </message>
    <message>
        <source>torque_value</source>
        <translation>Drehmoment</translation>
    </message>
    <message>
        <source>torqued_on</source>
        <translation>angezogen am</translation>
    </message>
    <message>
        <source>undone_on</source>
        <translation>zurückgebaut am</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>unit_price</source>
        <translation>Einzelpreis</translation>
    </message>
    <message>
        <source>units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>used_on</source>
        <translation>verwendet am</translation>
    </message>
    <message>
        <source>value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>verified_by</source>
        <translation>nachgeprüft von</translation>
    </message>
    <message>
        <source>verified_on</source>
        <translation>nachgeprüft am</translation>
    </message>
    <message>
        <source>verify_by</source>
        <translation>nachzuprüfen von</translation>
    </message>
    <message>
        <source>waived_by</source>
        <translation>erlassen von</translation>
    </message>
    <message>
        <source>waived_on</source>
        <translation>erlassen am</translation>
    </message>
    <message>
        <source>waived_why</source>
        <translation>warum erlassen</translation>
    </message>
    <message>
        <source>weighed_on</source>
        <translation>gewogen am</translation>
    </message>
    <message>
        <source>weight</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>weight_change</source>
        <translation>Änderung der Masse</translation>
    </message>
    <message>
        <source>weight_unit</source>
        <translation>Einheit der Masse</translation>
    </message>
    <message>
        <source>what</source>
        <translation>was</translation>
    </message>
    <message>
        <source>width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>withdrawn_on</source>
        <translation>zurückgezogen am</translation>
    </message>
    <message>
        <source>withdrawn_why</source>
        <translation>warum zurückgezogen</translation>
    </message>
    <message>
        <source>workers</source>
        <translation>wer gearbeitet hat</translation>
    </message>
    <message>
        <source>zone</source>
        <translation>Zone</translation>
    </message>
</context>
<context>
    <name>ListInput</name>
    <message>
        <source>Column %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>a project folder to open</source>
        <translation>ein Projektordner, der geöffnet werden soll</translation>
    </message>
</context>
<context>
    <name>Mend</name>
    <message>
        <source>Sign</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add the sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Message</name>
    <message>
        <source> and {0} more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, drag {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>/profile_copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>/project/profile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 closing must stay open.</source>
        <translation>1 Verschluss muss offen bleiben.</translation>
    </message>
    <message>
        <source>1 closing must stay open; it waits only for a signature.</source>
        <translation>1 Verschluss muss offen bleiben; er wartet nur auf eine Unterschrift.</translation>
    </message>
    <message>
        <source>A correction is verified by a builder, an adviser or an inspector; {0} is none of them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A full bar keeps the closing open; a broken bar is advice. Nothing on record is not the same as met.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A quotation mark opens a cell that does not end as it should.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A visit is planned for {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A visit was asked for on {0}; no day is set yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Acceptance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accepted as it is: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accepted late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Advice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Adviser, name and number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Against {0}, nothing on record stands.</source>
        <translation>Gegen {0} steht nichts Aufgezeichnetes.</translation>
    </message>
    <message>
        <source>Aircraft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An object</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another program has the project open for writing.</source>
        <translation>Ein anderes Programm hat das Projekt zum Schreiben offen.</translation>
    </message>
    <message>
        <source>Applies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Authority&apos;s file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brackets are nested more than {0} levels deep.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Builder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Builder, name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Builder, signature and date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Built</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Built as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bulletins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calibrated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caption</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closed and opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closed with gaps, and accepted by nobody yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Complete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Complied with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Conditions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Contents</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cure time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day by day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deficiencies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deficiency</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Designer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deviation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deviations</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Encloses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every rule, as it stood when it was closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fasteners and torque</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>File</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fitted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fixed, to be verified by the {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For closing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hardware</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inspection packet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inspection packet: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inspection packet: {0} closings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inspector</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inspector, name and number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inspector, signature and date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Issuer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its copy for printing is damaged.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Journal at printing: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kit number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Material and lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Materials and lots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measurement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measurements</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Method</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Model</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Must</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No closing that was begun must stay open.</source>
        <translation>Kein begonnener Verschluss muss offen bleiben.</translation>
    </message>
    <message>
        <source>No copy of {0} could be made: {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No deviation from the drawings is on record for this region.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No fastener is on record for this region.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No list was kept for this closing; these are the usual points for a structure of its kind.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No measurement is on record for this region.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No part has the code or name {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No part is called “{0}”; it goes into the note.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No photograph of the open structure is on record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No squawk is on record for this region.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No step is called “{0}”; nothing is ticked for it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No torque or measurement of this region names its tool.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No use of material is on record for this region.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No work on record is open in the way of these closings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No work on this region is on record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not decided</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not decided, asked on {0} of {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not on record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not signed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is on record about the inside: no step, no session, no photograph</source>
        <translation>Über das Innere ist nichts aufgezeichnet: kein Arbeitsschritt, keine Arbeitszeit, kein Foto</translation>
    </message>
    <message>
        <source>Nothing on record of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing waits for an inspector or adviser at present.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One document holds no more pictures.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open behind “{1}”, which is closed: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photo {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photographs of the open structure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos linked that were there already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Project begun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Qty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readiness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Received</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Registration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Report</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Role</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rules</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sample</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheets signed before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signed before: {0}, {1}, {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squawk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squawk {0} is for an adviser or an inspector to verify; {1} is neither.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squawk {0} is for an inspector to verify; {1} is none.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squawk {0} matters for airworthiness: only a designer, an adviser or an inspector may accept it as it is, and {1} is none of them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squawks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Standing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Started</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State of the records on {0}. This is the builder&apos;s record, not an approval.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The authority&apos;s own report form governs, number:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The character U+0000 is not allowed in a text.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The document is a list, not an object.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The document is {0}, not an object.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The field {0} is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is not the one that the record describes; its SHA-256 is {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file name is not one that a file of a project may have.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file name leads out of the document&apos;s folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The id {0} is that of {1} already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The inspector&apos;s list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The list is empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The newest photograph is older than the last work inside</source>
        <translation>Das neueste Foto ist älter als die letzte Arbeit darin</translation>
    </message>
    <message>
        <source>The number at line {0}, column {1} is too large.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The profile copy is of {0}, but the project goes by {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The project goes by another rule profile.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The project has another file of this name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The project has this record with other content; they differ in {0} first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The project is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The project on record is another one; they differ in {0} first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The project was opened for reading only.</source>
        <translation>Das Projekt wurde nur zum Lesen geöffnet.</translation>
    </message>
    <message>
        <source>The project&apos;s folder cannot be written.</source>
        <translation>In den Ordner des Projekts kann nicht geschrieben werden.</translation>
    </message>
    <message>
        <source>The row has {0} cells, but the header only {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sheet to sign</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The text ends too early, at line {0}, column {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The text is no UTF-8 at line {0}, column {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are several parts called {0}; name it by code or id.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are several people called {0}; name them by id.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no field of this name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no list for this closing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no rule profile {0}; there are {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nobody called {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing of this name in a document.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing to redo.</source>
        <translation>Es gibt nichts wiederherzustellen.</translation>
    </message>
    <message>
        <source>There is nothing to undo.</source>
        <translation>Es gibt nichts rückgängig zu machen.</translation>
    </message>
    <message>
        <source>This closing has no hold point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This field must not be null.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This field stands twice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is a list, not an object.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is a list, which does not belong here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is an object, which does not belong here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is no JSON at line {0}, column {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is no document of format {0}: {1} is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This photograph could not be printed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This stands twice in the document.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time not written down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Title</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To be closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too few photographs of the inside</source>
        <translation>Zu wenige Fotos vom Inneren</translation>
    </message>
    <message>
        <source>Tool</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tool calibration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Torque</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Triangle filled: airworthiness. Half filled: workmanship. Outline: cosmetic. Open ones come first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Used here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verified</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Videos, to be asked for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waits for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waived</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waived on {0} by {1}: {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is asked of the records</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What would clear it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who did it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Worst of {1} closings on {0}. This is the builder&apos;s record, not an approval.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a a a a a a aec e e e e i i i i d n o o o o o   o u u u u y thssa a a a a a aec e e e e i i i i d n o o o o o   o u u u u y thy a a a a a a c c c c c c c c d d d d e e e e e e e e e e g g g g g g g g h h h h i i i i i i i i i i ijijj j k k k l l l l l l l l l l n n n n n n n n n o o o o o o oeoer r r r r r s s s s s s s s t t t t t t u u u u u u u u u u u u w w y y y z z z z z z s </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a folder has that name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>accepted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>accepted with findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>advice</source>
        <translation>Rat</translation>
    </message>
    <message>
        <source>adviser</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>airworthiness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an inspection list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>applies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>approved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>assembly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>builder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bulletin</source>
        <translation>Mitteilung</translation>
    </message>
    <message>
        <source>bulletin {0}, {1}</source>
        <translation>Mitteilung {0}, {1}</translation>
    </message>
    <message>
        <source>by message</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by photograph</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by video</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>calibrated_on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>can be opened again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>certificate document</source>
        <translation>Zulassungsdokument</translation>
    </message>
    <message>
        <source>check</source>
        <translation>Prüfpunkt</translation>
    </message>
    <message>
        <source>check it with a calibrated tool</source>
        <translation>mit einem kalibrierten Werkzeug nachprüfen</translation>
    </message>
    <message>
        <source>close that one first</source>
        <translation>erst diesen schließen</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>geschlossen</translation>
    </message>
    <message>
        <source>closed before these records began; the inspector decides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closed by the maker</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closed with gaps</source>
        <translation>mit Lücken geschlossen</translation>
    </message>
    <message>
        <source>closing</source>
        <translation>Verschluss</translation>
    </message>
    <message>
        <source>commercial help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>comply and record it, or record that it does not apply</source>
        <translation>erfüllen und aufzeichnen, oder aufzeichnen, dass es nicht zutrifft</translation>
    </message>
    <message>
        <source>correct it and have it verified, or have it accepted</source>
        <translation>beheben und nachprüfen lassen, oder annehmen lassen</translation>
    </message>
    <message>
        <source>correct it and measure again, or record who accepts it and on what basis</source>
        <translation>berichtigen und neu messen oder aufzeichnen, wer es auf welcher Grundlage annimmt</translation>
    </message>
    <message>
        <source>cosmetic</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>credit task</source>
        <translation>Aufgabe zum Eigenbauanteil</translation>
    </message>
    <message>
        <source>cure times are known</source>
        <translation>Aushärtezeiten sind bekannt</translation>
    </message>
    <message>
        <source>designer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deviation</source>
        <translation>Abweichung</translation>
    </message>
    <message>
        <source>deviation {0}, {1}</source>
        <translation>Abweichung {0}, {1}</translation>
    </message>
    <message>
        <source>deviations {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>directive</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>directive {0}, {1}</source>
        <translation>Anweisung {0}, {1}</translation>
    </message>
    <message>
        <source>do it, or drop it</source>
        <translation>erledigen oder verwerfen</translation>
    </message>
    <message>
        <source>does not apply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drawing change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drawing change {0}, {1}</source>
        <translation>Zeichnungsänderung {0}, {1}</translation>
    </message>
    <message>
        <source>due_on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>earlier builder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>enter its cure time, from the lot&apos;s data sheet</source>
        <translation>seine Aushärtezeit eintragen, aus dem Datenblatt der Charge</translation>
    </message>
    <message>
        <source>enter the findings of the rejection as squawks of that inspection</source>
        <translation>die Befunde der Ablehnung als Mängel dieser Prüfung eintragen</translation>
    </message>
    <message>
        <source>envelope</source>
        <translation>Schwerpunktbereich</translation>
    </message>
    <message>
        <source>equipment</source>
        <translation>Ausrüstung</translation>
    </message>
    <message>
        <source>every box within is closed</source>
        <translation>jeder Kasten darin ist geschlossen</translation>
    </message>
    <message>
        <source>every bulletin that applies is complied with</source>
        <translation>jede zutreffende Mitteilung ist erfüllt</translation>
    </message>
    <message>
        <source>every deviation is decided</source>
        <translation>jede Abweichung ist entschieden</translation>
    </message>
    <message>
        <source>every fastener is fitted</source>
        <translation>jedes Verbindungselement ist eingebaut</translation>
    </message>
    <message>
        <source>every fastener with a torque limit is torqued</source>
        <translation>jedes Verbindungselement mit Drehmomentgrenze ist angezogen</translation>
    </message>
    <message>
        <source>every hold point is signed</source>
        <translation>jeder Haltepunkt ist unterschrieben</translation>
    </message>
    <message>
        <source>every line of the inspection list is ticked</source>
        <translation>jede Zeile der Prüfliste ist abgehakt</translation>
    </message>
    <message>
        <source>every lock made by hand is in place</source>
        <translation>jede Sicherung von Hand sitzt</translation>
    </message>
    <message>
        <source>every measurement is taken</source>
        <translation>jede Messung ist gemacht</translation>
    </message>
    <message>
        <source>every measurement is within its limits</source>
        <translation>jede Messung liegt in ihren Grenzen</translation>
    </message>
    <message>
        <source>every part has arrived undamaged</source>
        <translation>jedes Teil ist unbeschädigt angekommen</translation>
    </message>
    <message>
        <source>every squawk is verified or accepted</source>
        <translation>jeder Mangel ist nachgeprüft oder angenommen</translation>
    </message>
    <message>
        <source>every step is done or dropped</source>
        <translation>jeder Arbeitsschritt ist erledigt oder verworfen</translation>
    </message>
    <message>
        <source>every torque is within its limits</source>
        <translation>jedes Drehmoment liegt in seinen Grenzen</translation>
    </message>
    <message>
        <source>every torqued fastener carries its mark</source>
        <translation>jedes angezogene Verbindungselement trägt seine Markierung</translation>
    </message>
    <message>
        <source>everything that cures has cured</source>
        <translation>alles Aushärtende ist ausgehärtet</translation>
    </message>
    <message>
        <source>expense</source>
        <translation>Ausgabe</translation>
    </message>
    <message>
        <source>fabrication</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fastener</source>
        <translation>Verbindungselement</translation>
    </message>
    <message>
        <source>fasteners and torques</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>file</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>final</source>
        <translation>Endprüfung</translation>
    </message>
    <message>
        <source>final inspection</source>
        <translation>Endprüfung</translation>
    </message>
    <message>
        <source>finding {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>finishing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fit it and record the day</source>
        <translation>einbauen und den Tag aufzeichnen</translation>
    </message>
    <message>
        <source>flight</source>
        <translation>Flug</translation>
    </message>
    <message>
        <source>from a kit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from plans</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>have it signed</source>
        <translation>unterschreiben lassen</translation>
    </message>
    <message>
        <source>have it signed again, or say of each session whether it changed what was inspected</source>
        <translation>neu unterschreiben lassen, oder von jeder Arbeitszeit sagen, ob sie Geprüftes geändert hat</translation>
    </message>
    <message>
        <source>have it verified</source>
        <translation>nachprüfen lassen</translation>
    </message>
    <message>
        <source>have the inspector accept it late, or open it again</source>
        <translation>vom Prüfer nachträglich annehmen lassen oder wieder öffnen</translation>
    </message>
    <message>
        <source>helper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hold point</source>
        <translation>Haltepunkt</translation>
    </message>
    <message>
        <source>independent check</source>
        <translation>unabhängige Prüfung</translation>
    </message>
    <message>
        <source>inspection</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>inspection {0}</source>
        <translation>Prüfung {0}</translation>
    </message>
    <message>
        <source>inspector</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>jam nut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>letter {0}, {1}</source>
        <translation>Schreiben {0}, {1}</translation>
    </message>
    <message>
        <source>lines of fasteners {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>loading case</source>
        <translation>Beladefall</translation>
    </message>
    <message>
        <source>lock it and record the day</source>
        <translation>sichern und den Tag aufzeichnen</translation>
    </message>
    <message>
        <source>lock tab</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>log entry</source>
        <translation>Logbucheintrag</translation>
    </message>
    <message>
        <source>look, and tick it or say that it does not apply</source>
        <translation>nachsehen, dann abhaken oder sagen, dass es nicht zutrifft</translation>
    </message>
    <message>
        <source>mark it and record the day</source>
        <translation>markieren und den Tag aufzeichnen</translation>
    </message>
    <message>
        <source>material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>material lot</source>
        <translation>Materialcharge</translation>
    </message>
    <message>
        <source>material use</source>
        <translation>Materialverwendung</translation>
    </message>
    <message>
        <source>measure it and record the value</source>
        <translation>messen und den Wert aufzeichnen</translation>
    </message>
    <message>
        <source>measurement</source>
        <translation>Messung</translation>
    </message>
    <message>
        <source>measurements {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>met</source>
        <translation>erfüllt</translation>
    </message>
    <message>
        <source>mix {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no box within was closed with gaps</source>
        <translation>kein Kasten darin wurde mit Lücken geschlossen</translation>
    </message>
    <message>
        <source>no calibration on record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no document on record in which the maker names it as closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no material was used past its date</source>
        <translation>kein Material wurde nach seinem Ablauf verwendet</translation>
    </message>
    <message>
        <source>no rejected deviation is left as built</source>
        <translation>keine abgelehnte Abweichung ist so geblieben</translation>
    </message>
    <message>
        <source>no sample</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no sheet filed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no test sample failed</source>
        <translation>keine Probe hat versagt</translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not built</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not fitted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not locked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not looked into</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not met</source>
        <translation>nicht erfüllt</translation>
    </message>
    <message>
        <source>not needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not torqued</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing on record</source>
        <translation>nichts aufgezeichnet</translation>
    </message>
    <message>
        <source>nothing on record against closing</source>
        <translation>nichts Aufgezeichnetes steht dem Schließen entgegen</translation>
    </message>
    <message>
        <source>nothing open is filed on a larger assembly</source>
        <translation>nichts Offenes ist bei einer größeren Baugruppe abgelegt</translation>
    </message>
    <message>
        <source>nothing was changed after a signature</source>
        <translation>nach einer Unterschrift wurde nichts geändert</translation>
    </message>
    <message>
        <source>number overflow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own check</source>
        <translation>Eigenprüfung</translation>
    </message>
    <message>
        <source>packing line</source>
        <translation>Packzeile</translation>
    </message>
    <message>
        <source>packing lists</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>page {0} of {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>paid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>permanent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>photograph it as it is now</source>
        <translation>fotografieren, wie es jetzt ist</translation>
    </message>
    <message>
        <source>photograph the open structure</source>
        <translation>die offene Struktur fotografieren</translation>
    </message>
    <message>
        <source>photograph the signed sheet</source>
        <translation>das unterschriebene Blatt fotografieren</translation>
    </message>
    <message>
        <source>photographs {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pre-cover inspection</source>
        <translation>Prüfung vor dem Schließen</translation>
    </message>
    <message>
        <source>premature end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>project</source>
        <translation>Projekt</translation>
    </message>
    <message>
        <source>record the decision and its basis</source>
        <translation>die Entscheidung und ihre Grundlage aufzeichnen</translation>
    </message>
    <message>
        <source>record what has been received</source>
        <translation>aufzeichnen, was angekommen ist</translation>
    </message>
    <message>
        <source>record what was done, however roughly</source>
        <translation>aufzeichnen, was getan wurde, und sei es grob</translation>
    </message>
    <message>
        <source>rejected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>replace it, or record who accepts it and on what basis</source>
        <translation>ersetzen oder aufzeichnen, wer es auf welcher Grundlage annimmt</translation>
    </message>
    <message>
        <source>rework</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>safety wire</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sample failed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sample good</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sample kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>say where it is, or that it is not inside</source>
        <translation>sagen, wo es ist, oder dass es nicht darin liegt</translation>
    </message>
    <message>
        <source>seen on site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>self-locking nut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sign-off</source>
        <translation>Unterschrift</translation>
    </message>
    <message>
        <source>signature of {0}</source>
        <translation>Unterschrift vom {0}</translation>
    </message>
    <message>
        <source>signature of {0} by {1}</source>
        <translation>Unterschrift vom {0} von {1}</translation>
    </message>
    <message>
        <source>split pin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>squawk</source>
        <translation>Mangel</translation>
    </message>
    <message>
        <source>squawk {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>squawk {0}, {1}</source>
        <translation>Mangel {0}, {1}</translation>
    </message>
    <message>
        <source>squawks {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stage</source>
        <translation>Zwischenprüfung</translation>
    </message>
    <message>
        <source>stage inspection</source>
        <translation>Zwischenprüfung</translation>
    </message>
    <message>
        <source>stays open, waits for the inspector</source>
        <translation>bleibt offen, wartet auf den Prüfer</translation>
    </message>
    <message>
        <source>stays open, waits for your signature</source>
        <translation>bleibt offen, wartet auf deine Unterschrift</translation>
    </message>
    <message>
        <source>stays open, work left</source>
        <translation>bleibt offen, Arbeit übrig</translation>
    </message>
    <message>
        <source>step</source>
        <translation>Arbeitsschritt</translation>
    </message>
    <message>
        <source>steps {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken in on {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>technical visit</source>
        <translation>technischer Besuch</translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the folder cannot be written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the open structure is photographed</source>
        <translation>die offene Struktur ist fotografiert</translation>
    </message>
    <message>
        <source>the photographs are as new as the work</source>
        <translation>die Fotos sind so neu wie die Arbeit</translation>
    </message>
    <message>
        <source>the signed sheets are filed</source>
        <translation>die unterschriebenen Blätter sind abgelegt</translation>
    </message>
    <message>
        <source>there is no such folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is work on record</source>
        <translation>Arbeit ist aufgezeichnet</translation>
    </message>
    <message>
        <source>thread locker</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tool</source>
        <translation>Werkzeug</translation>
    </message>
    <message>
        <source>tool and debris check</source>
        <translation>Werkzeug- und Fremdkörperkontrolle</translation>
    </message>
    <message>
        <source>tools were in calibration when used</source>
        <translation>Werkzeuge waren bei der Verwendung kalibriert</translation>
    </message>
    <message>
        <source>torque it again, or record who accepts it and on what basis</source>
        <translation>neu anziehen oder aufzeichnen, wer es auf welcher Grundlage annimmt</translation>
    </message>
    <message>
        <source>torque it and record the value</source>
        <translation>anziehen und den Wert aufzeichnen</translation>
    </message>
    <message>
        <source>torqued</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>undo it and record the day, or have it decided anew</source>
        <translation>zurückbauen und den Tag aufzeichnen, oder neu entscheiden lassen</translation>
    </message>
    <message>
        <source>undone on {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unexpected end of input</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>uses of material {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wait until the cure time has passed</source>
        <translation>warten, bis die Aushärtezeit um ist</translation>
    </message>
    <message>
        <source>weighing</source>
        <translation>Wägung</translation>
    </message>
    <message>
        <source>work on {0}</source>
        <translation>Arbeit am {0}</translation>
    </message>
    <message>
        <source>work sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>work sessions {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>workmanship</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>workshop visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}</source>
        <translation>{0}</translation>
    </message>
    <message>
        <source>{0} at {1}</source>
        <translation>{0} bei {1}</translation>
    </message>
    <message>
        <source>{0} batch</source>
        <translation>{0} Ansatz</translation>
    </message>
    <message>
        <source>{0} batches</source>
        <translation>{0} Ansätze</translation>
    </message>
    <message>
        <source>{0} belongs to {1} and cannot enclose {2}, which is above it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} box within</source>
        <translation>{0} Kasten darin</translation>
    </message>
    <message>
        <source>{0} boxes within</source>
        <translation>{0} Kästen darin</translation>
    </message>
    <message>
        <source>{0} built</source>
        <translation>{0} gebaut</translation>
    </message>
    <message>
        <source>{0} bulletin</source>
        <translation>{0} Mitteilung</translation>
    </message>
    <message>
        <source>{0} bulletins</source>
        <translation>{0} Mitteilungen</translation>
    </message>
    <message>
        <source>{0} claims {1} × {2} pixels, more than can be shown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} closings by the factory have no document on record; the first is {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} closings must stay open, 1 of them waits only for a signature.</source>
        <translation>{0} Verschlüsse müssen offen bleiben, 1 davon wartet nur auf eine Unterschrift.</translation>
    </message>
    <message>
        <source>{0} closings must stay open, {1} of them wait only for a signature.</source>
        <translation>{0} Verschlüsse müssen offen bleiben, {1} davon warten nur auf eine Unterschrift.</translation>
    </message>
    <message>
        <source>{0} closings must stay open.</source>
        <translation>{0} Verschlüsse müssen offen bleiben.</translation>
    </message>
    <message>
        <source>{0} dated batch</source>
        <translation>{0} Charge mit Datum</translation>
    </message>
    <message>
        <source>{0} dated batches</source>
        <translation>{0} Chargen mit Datum</translation>
    </message>
    <message>
        <source>{0} deviation</source>
        <translation>{0} Abweichung</translation>
    </message>
    <message>
        <source>{0} deviations</source>
        <translation>{0} Abweichungen</translation>
    </message>
    <message>
        <source>{0} does not apply, but has {1} tenths instead of none.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} encloses nothing; a region encloses at least one part.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} entries</source>
        <translation>{0} Einträge</translation>
    </message>
    <message>
        <source>{0} entry</source>
        <translation>{0} Eintrag</translation>
    </message>
    <message>
        <source>{0} filed above</source>
        <translation>{0} darüber abgelegt</translation>
    </message>
    <message>
        <source>{0} has a share that is not between 0 and 10 tenths.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} has an id that is not between 1 and {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} has shares that add up to {1} tenths instead of 10.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} has the code {1}, which the part with id {2} already has.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} has the number {1}, which the one with id {2} already has.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} has {1} at work for {2} minutes, longer than it lasted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} has {1} at work for {2} minutes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} has {1} {2}, which is before {3} {4}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} has {1}, but no {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} hold point</source>
        <translation>{0} Haltepunkt</translation>
    </message>
    <message>
        <source>{0} hold points</source>
        <translation>{0} Haltepunkte</translation>
    </message>
    <message>
        <source>{0} in {1}</source>
        <translation>{0} in {1}</translation>
    </message>
    <message>
        <source>{0} is a second closing of the whole aircraft; the first is {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is accepted late by {1}, which is of a hold point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is accepted late by {1}, who may not do that under this rule profile; a builder who may must add remarks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is another format than {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is another version than {1}, the only one that is read here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is cut short: its end is missing. Copy it from the camera again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is damaged and cannot be shown as a picture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is filed on a larger part and may lie inside</source>
        <translation>{0} ist bei einem größeren Teil abgelegt und kann darin liegen</translation>
    </message>
    <message>
        <source>{0} is for {1} or a higher role to sign, which {2} does not have.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is for {1} or a higher role to verify, which {2} does not have.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is in printing colours (CMYK); save it as an RGB picture first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is neither true nor false.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is no day or time that exists: YYYY-MM-DD or YYYY-MM-DDTHH:MM, from 1900 to 2199.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is no id: a whole number from 1 to {1}, without fraction or exponent.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is no list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is no number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is no object.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is no text.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is no type of record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is no whole number from -{1} to {1}, without fraction or exponent.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is none of {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is not signed</source>
        <translation>{0}: nicht unterschrieben</translation>
    </message>
    <message>
        <source>{0} is of the whole aircraft and encloses no part by name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is of {1}, which was made in the factory and has no checks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is of {1}, which was made in the factory and has no hold points.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is required and an inspector&apos;s; {1} cannot waive it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is signed, but the signed sheet is not on record</source>
        <translation>{0} ist unterschrieben, aber das unterschriebene Blatt ist nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>{0} is to come after itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is to come after {1}, which in turn has to wait for it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} lacks {1} in row {2} of {3}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} lacks {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} lasts {1} minutes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} lasts {1} minutes; leave them empty when they are not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} lies inside itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} lies inside {1} and comes after a step that closes it, but does not say in may_follow that it can be done then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} lies inside {1}, which lies inside it in turn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} line</source>
        <translation>{0} Zeile</translation>
    </message>
    <message>
        <source>{0} lines</source>
        <translation>{0} Zeilen</translation>
    </message>
    <message>
        <source>{0} lock</source>
        <translation>{0} Sicherung</translation>
    </message>
    <message>
        <source>{0} locks</source>
        <translation>{0} Sicherungen</translation>
    </message>
    <message>
        <source>{0} matters for airworthiness and is for a designer, adviser or inspector to accept, which {1} is not.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} measured</source>
        <translation>{0} gemessen</translation>
    </message>
    <message>
        <source>{0} measurement</source>
        <translation>{0} Messung</translation>
    </message>
    <message>
        <source>{0} measurements</source>
        <translation>{0} Messungen</translation>
    </message>
    <message>
        <source>{0} more, all named under Readiness.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} names {1} in {2}, which is not on record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} names {1} in {2}, which is withdrawn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} names {1} twice among those who worked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} open papers name no part; the first is {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} packing line</source>
        <translation>{0} Packzeile</translation>
    </message>
    <message>
        <source>{0} packing lines</source>
        <translation>{0} Packzeilen</translation>
    </message>
    <message>
        <source>{0} parts have no closing recorded; the first is {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} photograph</source>
        <translation>{0} Foto</translation>
    </message>
    <message>
        <source>{0} photographs</source>
        <translation>{0} Fotos</translation>
    </message>
    <message>
        <source>{0} signed</source>
        <translation>{0} unterschrieben</translation>
    </message>
    <message>
        <source>{0} squawk</source>
        <translation>{0} Mangel</translation>
    </message>
    <message>
        <source>{0} squawks</source>
        <translation>{0} Mängel</translation>
    </message>
    <message>
        <source>{0} step</source>
        <translation>{0} Arbeitsschritt</translation>
    </message>
    <message>
        <source>{0} steps</source>
        <translation>{0} Arbeitsschritte</translation>
    </message>
    <message>
        <source>{0} steps are not done whose closings are closed; the first is {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} tested</source>
        <translation>{0} geprüft</translation>
    </message>
    <message>
        <source>{0} torqued</source>
        <translation>{0} angezogen</translation>
    </message>
    <message>
        <source>{0} use</source>
        <translation>{0} Verwendung</translation>
    </message>
    <message>
        <source>{0} uses</source>
        <translation>{0} Verwendungen</translation>
    </message>
    <message>
        <source>{0} was closed before these records began; the inspector decides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} was closed by the factory; its document is not on record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} was closed with gaps</source>
        <translation>{0} wurde mit Lücken geschlossen</translation>
    </message>
    <message>
        <source>{0} was closed with gaps: {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} was not taken in, because the same file before it was not.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} was not taken in. {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} was not taken in: {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} was rejected, and its findings are not entered</source>
        <translation>{0}: abgelehnt, und die Befunde sind nicht eingetragen</translation>
    </message>
    <message>
        <source>{0} with a limit</source>
        <translation>{0} mit Grenze</translation>
    </message>
    <message>
        <source>{0} with limits</source>
        <translation>{0} mit Grenzen</translation>
    </message>
    <message>
        <source>{0} {1}</source>
        <translation>{0} {1}</translation>
    </message>
    <message>
        <source>{0} {1} of {2}</source>
        <translation>{0} {1} vom {2}</translation>
    </message>
    <message>
        <source>{0} {1} “{2}”</source>
        <translation>{0} {1} „{2}“</translation>
    </message>
    <message>
        <source>{0} × {1} at {2}</source>
        <translation>{0} × {1} bei {2}</translation>
    </message>
    <message>
        <source>{0} “{1}”</source>
        <translation>{0} „{1}“</translation>
    </message>
    <message>
        <source>{0}, a box inside, is still open</source>
        <translation>{0}, ein Kasten darin, ist noch offen</translation>
    </message>
    <message>
        <source>{0}, lot {1}</source>
        <translation>{0}, Charge {1}</translation>
    </message>
    <message>
        <source>{0}, lot {1}, expired on {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, lot {1}, expires on {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: calibration is due on {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: calibration was due on {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: cure time not on record</source>
        <translation>{0}: Aushärtezeit nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>{0}: event {1} closes it while it is closed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: event {1} must say either when it was closed or when it was opened.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: event {1} of {2} is listed after one of {3}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: event {1} opens it while it is open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: fitted but not torqued</source>
        <translation>{0}: eingebaut, aber nicht auf Drehmoment angezogen</translation>
    </message>
    <message>
        <source>{0}: fixed, not verified</source>
        <translation>{0}: behoben, nicht nachgeprüft</translation>
    </message>
    <message>
        <source>{0}: no calibration on record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: not complied with</source>
        <translation>{0}: nicht erfüllt</translation>
    </message>
    <message>
        <source>{0}: not decided</source>
        <translation>{0}: nicht entschieden</translation>
    </message>
    <message>
        <source>{0}: not done</source>
        <translation>{0}: nicht erledigt</translation>
    </message>
    <message>
        <source>{0}: not fitted</source>
        <translation>{0}: nicht eingebaut</translation>
    </message>
    <message>
        <source>{0}: not locked</source>
        <translation>{0}: nicht gesichert</translation>
    </message>
    <message>
        <source>{0}: not measured</source>
        <translation>{0}: nicht gemessen</translation>
    </message>
    <message>
        <source>{0}: not ticked</source>
        <translation>{0}: nicht abgehakt</translation>
    </message>
    <message>
        <source>{0}: open</source>
        <translation>{0}: offen</translation>
    </message>
    <message>
        <source>{0}: parts are missing or damaged</source>
        <translation>{0}: Teile fehlen oder sind beschädigt</translation>
    </message>
    <message>
        <source>{0}: rejected, but built</source>
        <translation>{0}: abgelehnt, aber gebaut</translation>
    </message>
    <message>
        <source>{0}: still curing</source>
        <translation>{0}: härtet noch aus</translation>
    </message>
    <message>
        <source>{0}: the last measurement is outside its limits</source>
        <translation>{0}: die letzte Messung liegt außerhalb der Grenzen</translation>
    </message>
    <message>
        <source>{0}: the test sample failed</source>
        <translation>{0}: die Probe hat nicht bestanden</translation>
    </message>
    <message>
        <source>{0}: the tool was not in calibration</source>
        <translation>{0}: das Werkzeug war nicht kalibriert</translation>
    </message>
    <message>
        <source>{0}: the torque is outside its limits</source>
        <translation>{0}: das Drehmoment liegt außerhalb der Grenzen</translation>
    </message>
    <message>
        <source>{0}: torqued but not sealed with torque paint</source>
        <translation>{0}: angezogen, aber nicht mit Sicherungslack markiert</translation>
    </message>
    <message>
        <source>{0}: used after its lot expired</source>
        <translation>{0}: nach Ablauf der Charge verwendet</translation>
    </message>
    <message>
        <source>{0}: work was recorded after the signature</source>
        <translation>{0}: nach der Unterschrift wurde Arbeit aufgezeichnet</translation>
    </message>
    <message>
        <source>{0}: {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: {1} of {2} missing, expected on {3}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1} names no part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1}: closed by the factory, no document on record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1}: its closing is closed, the step is not done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1}: no closing is recorded for it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” cannot be taken back: {1} {2} is no longer as it was left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” cannot be taken back: “{1}” changed the same record later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” may be several steps; say it with the part&apos;s code.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” may be {1} or {2}; say more of the name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The database did not keep what it was given; nothing was changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pages could not be laid out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The typeface DejaVu Sans is not installed, so nothing can be printed. Install the package fonts-dejavu-core.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an object is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>übliche Praxis</translation>
    </message>
    <message>
        <source>parts is no list, or nested too deep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This paper is what the builder wrote down. It is no approval and no finding that the work is right: the drawings, the authority and the inspector decide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} d</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} d {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} d {1} h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> from – to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>% humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A airworthiness, W workmanship, C cosmetic. The authority&apos;s own report form governs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A, W or C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As built, as the records say on {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As of {0}. What will be out of reach first comes first, then by severity and age.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closed in by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closings and signatures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corrected on, by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cure times hold at the maker&apos;s temperature; a cold workshop needs longer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>DO NOT CLOSE</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day, time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag in it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Equipment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings of a visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First work on record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hand-over book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours on record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In reach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kinds: fabrication, assembly, finishing, rework, inspection, planning, other. Pictures taken: say so beside the line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last chance before: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Latest work on record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay-up and glue batches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left out is what does not match: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits are the maker&apos;s; general tables come after them. The reading is what the wrench showed, with the drag of a self-locking nut still in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>List of squawks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Locked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Log entries</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Log of a week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looked at again by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Maker</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No closing is on record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No part is called “{0}”: the whole line became the title.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No squawk on record matches.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No visit is planned, and no day of expiry or calibration is on record: there is nothing to put into a calendar.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No work is on record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None of these closings must stay open, so there is no tag to print.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing on record needs such a label, so there is none to print.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Out of reach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part, place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part, step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part, with everything below it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place of work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Removed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Report number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sample kept, good</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say in a few words what is wrong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seen again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Several parts fit “{0}”: the whole line became the title.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shelf labels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signature of the builder, day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signature of the inspector, day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Soon out of reach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squawk {0} was fixed on {1}; nobody can have looked at that on {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squawk {0} was found on {1}, after {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The log in short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The text is too long for a QR code: </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tie-on tags</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To reach it, open: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Torque list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Triangle filled: airworthiness. Half filled: workmanship. Outline: cosmetic.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Week from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was looked at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who built it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wrench and its number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and {0} more on record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>calibration due {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deviations from the drawings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fasteners and torque</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of no part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opened {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>part number {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>photographs of the structure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>serial number {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>use before {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>uses of material</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>waits for:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} has not come yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} has not come yet; a squawk is found today or before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} · as the records say on {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> aft fuselage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> aile inferieure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> aile superieure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> arriere du fuselage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> bottom wing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> center fuselage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> center section</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> centre fuselage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> centre section</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> cloison pare feu</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> fuselage arriere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> fuselage central</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> fuselage tank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> gouverne de direction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> header tank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> hinterer rumpf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> instrument panel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> landing gear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> left lower wing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> left main </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> left tank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> left upper wing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> lower left wing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> lower right wing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> lower wing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> main gear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> main leg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> main wheel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> nose gear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> nose leg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> nose wheel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> oberer flugel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> oberer linker flugel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> oberer rechter flugel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> plan avant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> plan horizontal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> rear fuselage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> reservoir d aile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> reservoir de fuselage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> right lower wing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> right main </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> right tank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> right upper wing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> roue avant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> roulette de nez</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> roulette de queue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> tableau de bord</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> tail boom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> tail cone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> tail skid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> tail wheel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> top wing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> train avant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> train d atterrissage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> train principal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> turtle deck</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> unterer flugel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> unterer linker flugel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> unterer rechter flugel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> upper left wing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> upper right wing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> upper wing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> wing tank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> wing tip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>aile basse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>aile haute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ailes basses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ailes hautes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hauban d</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>high wing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lift strut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>low wing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shoulder wing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tail first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wing strut</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Minutes</name>
    <message>
        <source>%1 h %2</source>
        <translation>%1 h %2</translation>
    </message>
</context>
<context>
    <name>Moment</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>Packet</name>
    <message>
        <source>%1 closings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Packet for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Packet %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Page</name>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>Bautagebuch</translation>
    </message>
    <message>
        <source>Squawks</source>
        <translation>Mängel</translation>
    </message>
    <message>
        <source>Closings</source>
        <translation>Verschlüsse</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Stores</source>
        <translation>Lager</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation>Zulassung</translation>
    </message>
</context>
<context>
    <name>PartMoves</name>
    <message>
        <source>%1 moved to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 moved to the top</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n parts</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PartTree</name>
    <message>
        <source>Part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squawks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>work left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inspection</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>signature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none against</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closed, gaps</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PhotoSections</name>
    <message>
        <source>Belonging to no part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without a date</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PictureInbox</name>
    <message>
        <source>Choose photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos and papers (*.jpg *.jpeg *.png *.heic *.pdf);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pasted picture %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Print</name>
    <message numerus="yes">
        <source>%1 is written: %n pages, %2 photographs, %3 could not be printed.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 is written: %n pages.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 is written: %n dates.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Blank form: findings of a visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blank form: lay-up and glue batches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blank form: log of a week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blank form: torque list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calendar file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hand-over book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Labels for tools</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shelf labels for material lots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shelf labels for parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tie-on tags: do not close</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Records</name>
    <message>
        <source>Project</source>
        <translation>Projekt</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Arbeitsschritte</translation>
    </message>
    <message>
        <source>Work sessions</source>
        <translation>Arbeitszeiten</translation>
    </message>
    <message>
        <source>Closings</source>
        <translation>Verschlüsse</translation>
    </message>
    <message>
        <source>Hold points</source>
        <translation>Haltepunkte</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation>Prüfpunkte</translation>
    </message>
    <message>
        <source>Inspections</source>
        <translation>Prüfungen</translation>
    </message>
    <message>
        <source>Sign-offs</source>
        <translation>Unterschriften</translation>
    </message>
    <message>
        <source>Squawks</source>
        <translation>Mängel</translation>
    </message>
    <message>
        <source>Deviations</source>
        <translation>Abweichungen</translation>
    </message>
    <message>
        <source>Bulletins</source>
        <translation>Mitteilungen</translation>
    </message>
    <message>
        <source>Fasteners</source>
        <translation>Verbindungselemente</translation>
    </message>
    <message>
        <source>Measurements</source>
        <translation>Messungen</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Werkzeuge</translation>
    </message>
    <message>
        <source>Packing lists</source>
        <translation>Packlisten</translation>
    </message>
    <message>
        <source>Material lots</source>
        <translation>Materialchargen</translation>
    </message>
    <message>
        <source>Material used</source>
        <translation>Verbrauchtes Material</translation>
    </message>
    <message>
        <source>Photos and documents</source>
        <translation>Fotos und Dokumente</translation>
    </message>
    <message>
        <source>Expenses</source>
        <translation>Ausgaben</translation>
    </message>
    <message>
        <source>Major-portion tasks</source>
        <translation>Aufgaben zum Eigenbauanteil</translation>
    </message>
    <message>
        <source>Equipment</source>
        <translation>Ausrüstung</translation>
    </message>
    <message>
        <source>Weighings</source>
        <translation>Wägungen</translation>
    </message>
    <message>
        <source>Loading cases</source>
        <translation>Beladefälle</translation>
    </message>
    <message>
        <source>Envelopes</source>
        <translation>Schwerpunktbereiche</translation>
    </message>
    <message>
        <source>Documents</source>
        <translation>Dokumente</translation>
    </message>
    <message>
        <source>Flights</source>
        <translation>Flüge</translation>
    </message>
</context>
<context>
    <name>Section</name>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (removed)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, damaged %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squawk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Severity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fitted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fitted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hardware</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Torque</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>marked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Locked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>locked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measurement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deviation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Packing line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Received</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Material</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sample</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squawks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New squawk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fasteners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New fastener: its place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measurements</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New measurement: what is measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deviations</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stores</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New packing line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Materials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dropped %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closes %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bulletin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Issuer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Issued</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New deviation: what differs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bulletins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New bulletin: its title</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At arm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Documents</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawing says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letters and pictures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On what basis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight, more or less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>applies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>applies, mandatory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>approved %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>approved %1, built</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>asked %1, no answer yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>built though rejected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>built, not decided</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>complied with %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>does not apply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not asked yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not looked into</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rejected %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>undone %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SectionActs</name>
    <message numerus="yes">
        <source>%1: %n files attached</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Asked…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Approved…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rejected…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Built so…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put back…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Applies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does not apply…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Complied with…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Insert before…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take up again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: dropped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: to be done after all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A decision needs its basis: a letter, a drawing, a paragraph.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new step before %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A step needs its words.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Approved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Asked of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Because</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bulletin %1: applies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bulletin %1: complied with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bulletin %1: does not apply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Complied with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deviation %1: approved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deviation %1: asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deviation %1: built so</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deviation %1: put back as drawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deviation %1: rejected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deviation %1: who was asked?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does not apply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How, and by which paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Insert it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On what basis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rejected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step added: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was done, and by which paper?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whoever reads this later wants to know why.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Severity</name>
    <message>
        <source>airworthiness</source>
        <translation>Lufttüchtigkeit</translation>
    </message>
    <message>
        <source>workmanship</source>
        <translation>Ausführung</translation>
    </message>
    <message>
        <source>cosmetic</source>
        <translation>Aussehen</translation>
    </message>
</context>
<context>
    <name>SquawkFilter</name>
    <message>
        <source>%1 and below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fixed, to be looked at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for the adviser to verify</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for the builder to verify</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for the inspector to verify</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in reach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>out of reach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outstanding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outstanding and done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>soon out of reach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to be fixed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with the words “%1”</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SquawkList</name>
    <message numerus="yes">
        <source>%n squawks were written to %1.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>List of squawks</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SquawkPeople</name>
    <message>
        <source>the adviser</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the adviser (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the builder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the inspector</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the inspector (%1)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SquawkStory</name>
    <message>
        <source>Accepted as it is %1 by %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fixed %1 by %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found %1 by %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open. When it is fixed, this is who looks at it: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Still to look at it: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verified %1 by %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Starter</name>
    <message>
        <source>A dry fit with clay or putty shows the bond gap along every rib and the web</source>
        <translation>Eine trockene Anprobe mit Knetmasse zeigt den Klebspalt an jeder Rippe und am Steg</translation>
    </message>
    <message>
        <source>A pull string lies in every conduit</source>
        <translation>In jedem Leerrohr liegt eine Zugschnur</translation>
    </message>
    <message>
        <source>All placards and markings are in place</source>
        <translation>Alle Schilder und Beschriftungen sind angebracht</translation>
    </message>
    <message>
        <source>Antenna in the fin</source>
        <translation>Antenne in der Seitenflosse</translation>
    </message>
    <message>
        <source>Battery, contactors and grounds</source>
        <translation>Batterie, Schütze und Massepunkte</translation>
    </message>
    <message>
        <source>Before the final inspection and first flight</source>
        <translation>Vor der Endprüfung und dem Erstflug</translation>
    </message>
    <message>
        <source>Blocks for every fitting are in place and sealed</source>
        <translation>Klötze für jeden Beschlag sitzen und sind versiegelt</translation>
    </message>
    <message>
        <source>Bulkheads and hard points</source>
        <translation>Spante und Krafteinleitungen</translation>
    </message>
    <message>
        <source>Cabin floor and side panels</source>
        <translation>Kabinenboden und Seitenverkleidungen</translation>
    </message>
    <message>
        <source>Cabin section</source>
        <translation>Kabinenabschnitt</translation>
    </message>
    <message>
        <source>Canopy and windows</source>
        <translation>Haube und Fenster</translation>
    </message>
    <message>
        <source>Cockpit floor and consoles bonded</source>
        <translation>Cockpitboden und Konsolen verklebt</translation>
    </message>
    <message>
        <source>Cockpit floor and side skins</source>
        <translation>Cockpitboden und Seitenbeplankung</translation>
    </message>
    <message>
        <source>Cockpit section</source>
        <translation>Cockpitabschnitt</translation>
    </message>
    <message>
        <source>Composite</source>
        <translation>Faserverbund</translation>
    </message>
    <message>
        <source>Cowling</source>
        <translation>Motorhaube</translation>
    </message>
    <message>
        <source>Doors and windows</source>
        <translation>Türen und Fenster</translation>
    </message>
    <message>
        <source>Doors, windscreen and windows</source>
        <translation>Türen, Frontscheibe und Fenster</translation>
    </message>
    <message>
        <source>Drag wires are even in tension and locked</source>
        <translation>Auskreuzungsdrähte sind gleich gespannt und gesichert</translation>
    </message>
    <message>
        <source>Electrical and instruments</source>
        <translation>Elektrik und Instrumente</translation>
    </message>
    <message>
        <source>Elevator</source>
        <translation>Höhenruder</translation>
    </message>
    <message>
        <source>Elevator frame and horn</source>
        <translation>Rahmen und Hebel des Höhenruders</translation>
    </message>
    <message>
        <source>Elevator hinges and horn</source>
        <translation>Scharniere und Hebel des Höhenruders</translation>
    </message>
    <message>
        <source>Elevator spar and horn</source>
        <translation>Holm und Hebel des Höhenruders</translation>
    </message>
    <message>
        <source>Elevator, covered</source>
        <translation>Höhenruder, bespannt</translation>
    </message>
    <message>
        <source>Elevator, second skin</source>
        <translation>Höhenruder, zweite Beplankung</translation>
    </message>
    <message>
        <source>Elevator, shells bonded</source>
        <translation>Höhenruder, Schalen verklebt</translation>
    </message>
    <message>
        <source>Elevator, skins closed</source>
        <translation>Höhenruder, Beplankung geschlossen</translation>
    </message>
    <message>
        <source>Engine installation</source>
        <translation>Triebwerkseinbau</translation>
    </message>
    <message>
        <source>Engine mount</source>
        <translation>Motorträger</translation>
    </message>
    <message>
        <source>Every inspection panel was opened and looked into once more</source>
        <translation>Jeder Handlochdeckel wurde geöffnet und noch einmal hineingesehen</translation>
    </message>
    <message>
        <source>Every tube was treated inside and its drain hole is shut</source>
        <translation>Jedes Rohr ist innen behandelt und sein Ablaufloch verschlossen</translation>
    </message>
    <message>
        <source>Every varnished wooden part is dry</source>
        <translation>Jedes lackierte Holzteil ist trocken</translation>
    </message>
    <message>
        <source>Exhaust and cooling</source>
        <translation>Auspuff und Kühlung</translation>
    </message>
    <message>
        <source>Fin</source>
        <translation>Seitenflosse</translation>
    </message>
    <message>
        <source>Fin frame</source>
        <translation>Rahmen der Seitenflosse</translation>
    </message>
    <message>
        <source>Fin spars and ribs</source>
        <translation>Holme und Rippen der Seitenflosse</translation>
    </message>
    <message>
        <source>Fin web and hard points</source>
        <translation>Steg und Krafteinleitungen der Seitenflosse</translation>
    </message>
    <message>
        <source>Fin, covered</source>
        <translation>Seitenflosse, bespannt</translation>
    </message>
    <message>
        <source>Fin, second skin</source>
        <translation>Seitenflosse, zweite Beplankung</translation>
    </message>
    <message>
        <source>Fin, shells bonded</source>
        <translation>Seitenflosse, Schalen verklebt</translation>
    </message>
    <message>
        <source>Firewall</source>
        <translation>Brandspant</translation>
    </message>
    <message>
        <source>Frame tubes, sealed inside</source>
        <translation>Rahmenrohre, innen versiegelt</translation>
    </message>
    <message>
        <source>Fuel flow and fuel quantity indication are checked</source>
        <translation>Kraftstofffluss und Vorratsanzeige sind geprüft</translation>
    </message>
    <message>
        <source>Fuel lines, filter and pump</source>
        <translation>Kraftstoffleitungen, Filter und Pumpe</translation>
    </message>
    <message>
        <source>Fuselage</source>
        <translation>Rumpf</translation>
    </message>
    <message>
        <source>Fuselage shells</source>
        <translation>Rumpfschalen</translation>
    </message>
    <message>
        <source>Fuselage, covered</source>
        <translation>Rumpf, bespannt</translation>
    </message>
    <message>
        <source>Glue is within its life and the workshop is warm enough for it</source>
        <translation>Der Leim ist nicht abgelaufen und die Werkstatt warm genug für ihn</translation>
    </message>
    <message>
        <source>Inside of the tubes</source>
        <translation>Inneres der Rohre</translation>
    </message>
    <message>
        <source>Instrument panel</source>
        <translation>Instrumentenbrett</translation>
    </message>
    <message>
        <source>Left aileron</source>
        <translation>Querruder links</translation>
    </message>
    <message>
        <source>Left aileron balance weight</source>
        <translation>Ausgleichsgewicht, Querruder links</translation>
    </message>
    <message>
        <source>Left aileron cables and pulleys</source>
        <translation>Seile und Rollen, Querruder links</translation>
    </message>
    <message>
        <source>Left aileron frame and hinges</source>
        <translation>Rahmen und Scharniere, Querruder links</translation>
    </message>
    <message>
        <source>Left aileron hinges and balance weight</source>
        <translation>Scharniere und Ausgleichsgewicht, Querruder links</translation>
    </message>
    <message>
        <source>Left aileron spar and hinge blocks</source>
        <translation>Holm und Scharnierklötze, Querruder links</translation>
    </message>
    <message>
        <source>Left aileron spar and hinge brackets</source>
        <translation>Holm und Scharnierböcke, Querruder links</translation>
    </message>
    <message>
        <source>Left aileron, covered</source>
        <translation>Querruder links, bespannt</translation>
    </message>
    <message>
        <source>Left aileron, second skin</source>
        <translation>Querruder links, zweite Beplankung</translation>
    </message>
    <message>
        <source>Left aileron, shells bonded</source>
        <translation>Querruder links, Schalen verklebt</translation>
    </message>
    <message>
        <source>Left aileron, skins closed</source>
        <translation>Querruder links, Beplankung geschlossen</translation>
    </message>
    <message>
        <source>Left drag wires and compression struts</source>
        <translation>Auskreuzung und Druckstreben links</translation>
    </message>
    <message>
        <source>Left flap</source>
        <translation>Landeklappe links</translation>
    </message>
    <message>
        <source>Left flap hinges and drive</source>
        <translation>Scharniere und Antrieb, Landeklappe links</translation>
    </message>
    <message>
        <source>Left flap spar and hinge blocks</source>
        <translation>Holm und Scharnierklötze, Landeklappe links</translation>
    </message>
    <message>
        <source>Left flap spar and horn</source>
        <translation>Holm und Hebel, Landeklappe links</translation>
    </message>
    <message>
        <source>Left flap, second skin</source>
        <translation>Landeklappe links, zweite Beplankung</translation>
    </message>
    <message>
        <source>Left flap, shells bonded</source>
        <translation>Landeklappe links, Schalen verklebt</translation>
    </message>
    <message>
        <source>Left flap, skins closed</source>
        <translation>Landeklappe links, Beplankung geschlossen</translation>
    </message>
    <message>
        <source>Left fuel tank</source>
        <translation>Kraftstofftank links</translation>
    </message>
    <message>
        <source>Left fuel tank bay</source>
        <translation>Tankraum links</translation>
    </message>
    <message>
        <source>Left fuel tank bay, closed</source>
        <translation>Tankraum links, geschlossen</translation>
    </message>
    <message>
        <source>Left fuel tank, last baffle and skin</source>
        <translation>Kraftstofftank links, letzte Schottwand und Haut</translation>
    </message>
    <message>
        <source>Left fuel tank, last seam</source>
        <translation>Kraftstofftank links, letzte Naht</translation>
    </message>
    <message>
        <source>Left hard points and root fittings</source>
        <translation>Krafteinleitungen und Wurzelbeschläge links</translation>
    </message>
    <message>
        <source>Left leading edge</source>
        <translation>Nase, Flügel links</translation>
    </message>
    <message>
        <source>Left leading-edge box</source>
        <translation>Torsionsnase, Flügel links</translation>
    </message>
    <message>
        <source>Left main leg, wheel and brake</source>
        <translation>Hauptfahrwerksbein, Rad und Bremse links</translation>
    </message>
    <message>
        <source>Left root and strut fittings</source>
        <translation>Wurzel- und Strebenbeschläge links</translation>
    </message>
    <message>
        <source>Left strut and root fittings</source>
        <translation>Streben- und Wurzelbeschläge links</translation>
    </message>
    <message>
        <source>Left tank fittings</source>
        <translation>Tankanschlüsse links</translation>
    </message>
    <message>
        <source>Left wing</source>
        <translation>Flügel links</translation>
    </message>
    <message>
        <source>Left wing control runs</source>
        <translation>Steuerung, Flügel links</translation>
    </message>
    <message>
        <source>Left wing control runs and bellcrank</source>
        <translation>Steuerung und Umlenkhebel, Flügel links</translation>
    </message>
    <message>
        <source>Left wing fittings</source>
        <translation>Beschläge, Flügel links</translation>
    </message>
    <message>
        <source>Left wing ribs</source>
        <translation>Rippen, Flügel links</translation>
    </message>
    <message>
        <source>Left wing skins</source>
        <translation>Beplankung, Flügel links</translation>
    </message>
    <message>
        <source>Left wing spar and shear web</source>
        <translation>Holm und Steg, Flügel links</translation>
    </message>
    <message>
        <source>Left wing spar box</source>
        <translation>Holmkasten, Flügel links</translation>
    </message>
    <message>
        <source>Left wing spar, second web</source>
        <translation>Flügelholm links, zweiter Steg</translation>
    </message>
    <message>
        <source>Left wing spars</source>
        <translation>Holme, Flügel links</translation>
    </message>
    <message>
        <source>Left wing struts</source>
        <translation>Streben, Flügel links</translation>
    </message>
    <message>
        <source>Left wing tip</source>
        <translation>Randbogen, Flügel links</translation>
    </message>
    <message>
        <source>Left wing wiring and pitot line</source>
        <translation>Verkabelung und Staudruckleitung, Flügel links</translation>
    </message>
    <message>
        <source>Left wing wiring, antennas and pitot line</source>
        <translation>Verkabelung, Antennen und Staudruckleitung, Flügel links</translation>
    </message>
    <message>
        <source>Left wing wiring, pitot and lights</source>
        <translation>Verkabelung, Staurohr und Lichter, Flügel links</translation>
    </message>
    <message>
        <source>Left wing, covered</source>
        <translation>Flügel links, bespannt</translation>
    </message>
    <message>
        <source>Left wing, last plywood skin</source>
        <translation>Flügel links, letzte Sperrholzbeplankung</translation>
    </message>
    <message>
        <source>Left wing, leading-edge skin</source>
        <translation>Flügel links, Nasenbeplankung</translation>
    </message>
    <message>
        <source>Left wing, lower shell</source>
        <translation>Flügel links, Unterschale</translation>
    </message>
    <message>
        <source>Left wing, lower skin</source>
        <translation>Flügel links, untere Beplankung</translation>
    </message>
    <message>
        <source>Left wing, shells bonded</source>
        <translation>Flügel links, Schalen verklebt</translation>
    </message>
    <message>
        <source>Left wing, upper shell</source>
        <translation>Flügel links, Oberschale</translation>
    </message>
    <message>
        <source>Left wing, upper skin</source>
        <translation>Flügel links, obere Beplankung</translation>
    </message>
    <message>
        <source>Longerons and frames</source>
        <translation>Gurte und Spante</translation>
    </message>
    <message>
        <source>Main wiring</source>
        <translation>Hauptverkabelung</translation>
    </message>
    <message>
        <source>Metal, high wing</source>
        <translation>Metall, Hochdecker</translation>
    </message>
    <message>
        <source>Metal, low wing</source>
        <translation>Metall, Tiefdecker</translation>
    </message>
    <message>
        <source>No cable touches fabric, frame or stringer through its whole travel</source>
        <translation>Kein Seil berührt auf seinem ganzen Weg Bespannung, Rahmen oder Stringer</translation>
    </message>
    <message>
        <source>Nose leg and wheel</source>
        <translation>Bugbein und Bugrad</translation>
    </message>
    <message>
        <source>Propeller</source>
        <translation>Propeller</translation>
    </message>
    <message>
        <source>Rear cables, pulleys and trim</source>
        <translation>Seile, Rollen und Trimmung hinten</translation>
    </message>
    <message>
        <source>Rear control runs</source>
        <translation>Steuerung hinten</translation>
    </message>
    <message>
        <source>Rear fuselage</source>
        <translation>Rumpf hinten</translation>
    </message>
    <message>
        <source>Rear fuselage, last plywood skin</source>
        <translation>Rumpf hinten, letzte Sperrholzbeplankung</translation>
    </message>
    <message>
        <source>Rear fuselage, shells bonded</source>
        <translation>Rumpf hinten, Schalen verklebt</translation>
    </message>
    <message>
        <source>Rear fuselage, top skin</source>
        <translation>Rumpf hinten, obere Beplankung</translation>
    </message>
    <message>
        <source>Rear wiring and antennas</source>
        <translation>Verkabelung und Antennen hinten</translation>
    </message>
    <message>
        <source>Rear wiring and static line</source>
        <translation>Verkabelung und Statikleitung hinten</translation>
    </message>
    <message>
        <source>Rear wiring, antennas and static line</source>
        <translation>Verkabelung, Antennen und Statikleitung hinten</translation>
    </message>
    <message>
        <source>Right aileron</source>
        <translation>Querruder rechts</translation>
    </message>
    <message>
        <source>Right aileron balance weight</source>
        <translation>Ausgleichsgewicht, Querruder rechts</translation>
    </message>
    <message>
        <source>Right aileron cables and pulleys</source>
        <translation>Seile und Rollen, Querruder rechts</translation>
    </message>
    <message>
        <source>Right aileron frame and hinges</source>
        <translation>Rahmen und Scharniere, Querruder rechts</translation>
    </message>
    <message>
        <source>Right aileron hinges and balance weight</source>
        <translation>Scharniere und Ausgleichsgewicht, Querruder rechts</translation>
    </message>
    <message>
        <source>Right aileron spar and hinge blocks</source>
        <translation>Holm und Scharnierklötze, Querruder rechts</translation>
    </message>
    <message>
        <source>Right aileron spar and hinge brackets</source>
        <translation>Holm und Scharnierböcke, Querruder rechts</translation>
    </message>
    <message>
        <source>Right aileron, covered</source>
        <translation>Querruder rechts, bespannt</translation>
    </message>
    <message>
        <source>Right aileron, second skin</source>
        <translation>Querruder rechts, zweite Beplankung</translation>
    </message>
    <message>
        <source>Right aileron, shells bonded</source>
        <translation>Querruder rechts, Schalen verklebt</translation>
    </message>
    <message>
        <source>Right aileron, skins closed</source>
        <translation>Querruder rechts, Beplankung geschlossen</translation>
    </message>
    <message>
        <source>Right drag wires and compression struts</source>
        <translation>Auskreuzung und Druckstreben rechts</translation>
    </message>
    <message>
        <source>Right flap</source>
        <translation>Landeklappe rechts</translation>
    </message>
    <message>
        <source>Right flap hinges and drive</source>
        <translation>Scharniere und Antrieb, Landeklappe rechts</translation>
    </message>
    <message>
        <source>Right flap spar and hinge blocks</source>
        <translation>Holm und Scharnierklötze, Landeklappe rechts</translation>
    </message>
    <message>
        <source>Right flap spar and horn</source>
        <translation>Holm und Hebel, Landeklappe rechts</translation>
    </message>
    <message>
        <source>Right flap, second skin</source>
        <translation>Landeklappe rechts, zweite Beplankung</translation>
    </message>
    <message>
        <source>Right flap, shells bonded</source>
        <translation>Landeklappe rechts, Schalen verklebt</translation>
    </message>
    <message>
        <source>Right flap, skins closed</source>
        <translation>Landeklappe rechts, Beplankung geschlossen</translation>
    </message>
    <message>
        <source>Right fuel tank</source>
        <translation>Kraftstofftank rechts</translation>
    </message>
    <message>
        <source>Right fuel tank bay</source>
        <translation>Tankraum rechts</translation>
    </message>
    <message>
        <source>Right fuel tank bay, closed</source>
        <translation>Tankraum rechts, geschlossen</translation>
    </message>
    <message>
        <source>Right fuel tank, last baffle and skin</source>
        <translation>Kraftstofftank rechts, letzte Schottwand und Haut</translation>
    </message>
    <message>
        <source>Right fuel tank, last seam</source>
        <translation>Kraftstofftank rechts, letzte Naht</translation>
    </message>
    <message>
        <source>Right hard points and root fittings</source>
        <translation>Krafteinleitungen und Wurzelbeschläge rechts</translation>
    </message>
    <message>
        <source>Right leading edge</source>
        <translation>Nase, Flügel rechts</translation>
    </message>
    <message>
        <source>Right leading-edge box</source>
        <translation>Torsionsnase, Flügel rechts</translation>
    </message>
    <message>
        <source>Right main leg, wheel and brake</source>
        <translation>Hauptfahrwerksbein, Rad und Bremse rechts</translation>
    </message>
    <message>
        <source>Right root and strut fittings</source>
        <translation>Wurzel- und Strebenbeschläge rechts</translation>
    </message>
    <message>
        <source>Right strut and root fittings</source>
        <translation>Streben- und Wurzelbeschläge rechts</translation>
    </message>
    <message>
        <source>Right tank fittings</source>
        <translation>Tankanschlüsse rechts</translation>
    </message>
    <message>
        <source>Right wing</source>
        <translation>Flügel rechts</translation>
    </message>
    <message>
        <source>Right wing control runs</source>
        <translation>Steuerung, Flügel rechts</translation>
    </message>
    <message>
        <source>Right wing control runs and bellcrank</source>
        <translation>Steuerung und Umlenkhebel, Flügel rechts</translation>
    </message>
    <message>
        <source>Right wing fittings</source>
        <translation>Beschläge, Flügel rechts</translation>
    </message>
    <message>
        <source>Right wing ribs</source>
        <translation>Rippen, Flügel rechts</translation>
    </message>
    <message>
        <source>Right wing skins</source>
        <translation>Beplankung, Flügel rechts</translation>
    </message>
    <message>
        <source>Right wing spar and shear web</source>
        <translation>Holm und Steg, Flügel rechts</translation>
    </message>
    <message>
        <source>Right wing spar box</source>
        <translation>Holmkasten, Flügel rechts</translation>
    </message>
    <message>
        <source>Right wing spar, second web</source>
        <translation>Flügelholm rechts, zweiter Steg</translation>
    </message>
    <message>
        <source>Right wing spars</source>
        <translation>Holme, Flügel rechts</translation>
    </message>
    <message>
        <source>Right wing struts</source>
        <translation>Streben, Flügel rechts</translation>
    </message>
    <message>
        <source>Right wing tip</source>
        <translation>Randbogen, Flügel rechts</translation>
    </message>
    <message>
        <source>Right wing wiring and pitot line</source>
        <translation>Verkabelung und Staudruckleitung, Flügel rechts</translation>
    </message>
    <message>
        <source>Right wing wiring, antennas and pitot line</source>
        <translation>Verkabelung, Antennen und Staudruckleitung, Flügel rechts</translation>
    </message>
    <message>
        <source>Right wing wiring, pitot and lights</source>
        <translation>Verkabelung, Staurohr und Lichter, Flügel rechts</translation>
    </message>
    <message>
        <source>Right wing, covered</source>
        <translation>Flügel rechts, bespannt</translation>
    </message>
    <message>
        <source>Right wing, last plywood skin</source>
        <translation>Flügel rechts, letzte Sperrholzbeplankung</translation>
    </message>
    <message>
        <source>Right wing, leading-edge skin</source>
        <translation>Flügel rechts, Nasenbeplankung</translation>
    </message>
    <message>
        <source>Right wing, lower shell</source>
        <translation>Flügel rechts, Unterschale</translation>
    </message>
    <message>
        <source>Right wing, lower skin</source>
        <translation>Flügel rechts, untere Beplankung</translation>
    </message>
    <message>
        <source>Right wing, shells bonded</source>
        <translation>Flügel rechts, Schalen verklebt</translation>
    </message>
    <message>
        <source>Right wing, upper shell</source>
        <translation>Flügel rechts, Oberschale</translation>
    </message>
    <message>
        <source>Right wing, upper skin</source>
        <translation>Flügel rechts, obere Beplankung</translation>
    </message>
    <message>
        <source>Rivet shanks and shop heads along the spar were looked at with a mirror</source>
        <translation>Nietschäfte und Schließköpfe am Holm wurden mit dem Spiegel angesehen</translation>
    </message>
    <message>
        <source>Rudder</source>
        <translation>Seitenruder</translation>
    </message>
    <message>
        <source>Rudder frame and horn</source>
        <translation>Rahmen und Hebel des Seitenruders</translation>
    </message>
    <message>
        <source>Rudder hinges and horn</source>
        <translation>Scharniere und Hebel des Seitenruders</translation>
    </message>
    <message>
        <source>Rudder spar and horn</source>
        <translation>Holm und Hebel des Seitenruders</translation>
    </message>
    <message>
        <source>Rudder spar, ribs and horn</source>
        <translation>Holm, Rippen und Hebel des Seitenruders</translation>
    </message>
    <message>
        <source>Rudder, covered</source>
        <translation>Seitenruder, bespannt</translation>
    </message>
    <message>
        <source>Rudder, second skin</source>
        <translation>Seitenruder, zweite Beplankung</translation>
    </message>
    <message>
        <source>Rudder, shells bonded</source>
        <translation>Seitenruder, Schalen verklebt</translation>
    </message>
    <message>
        <source>Rudder, skins closed</source>
        <translation>Seitenruder, Beplankung geschlossen</translation>
    </message>
    <message>
        <source>Seats and harness attachments</source>
        <translation>Sitze und Gurtbefestigungen</translation>
    </message>
    <message>
        <source>Stabiliser</source>
        <translation>Höhenflosse</translation>
    </message>
    <message>
        <source>Stabiliser frame and fittings</source>
        <translation>Rahmen und Beschläge der Höhenflosse</translation>
    </message>
    <message>
        <source>Stabiliser ribs</source>
        <translation>Rippen der Höhenflosse</translation>
    </message>
    <message>
        <source>Stabiliser spar and hard points</source>
        <translation>Holm und Krafteinleitungen der Höhenflosse</translation>
    </message>
    <message>
        <source>Stabiliser spars</source>
        <translation>Holme der Höhenflosse</translation>
    </message>
    <message>
        <source>Stabiliser spars and ribs</source>
        <translation>Holme und Rippen der Höhenflosse</translation>
    </message>
    <message>
        <source>Stabiliser, covered</source>
        <translation>Höhenflosse, bespannt</translation>
    </message>
    <message>
        <source>Stabiliser, second skin</source>
        <translation>Höhenflosse, zweite Beplankung</translation>
    </message>
    <message>
        <source>Stabiliser, shells bonded</source>
        <translation>Höhenflosse, Schalen verklebt</translation>
    </message>
    <message>
        <source>Static line and antenna cables are tied and leave no loop in the way of a control</source>
        <translation>Statikleitung und Antennenkabel sind gebunden und hängen keiner Steuerung im Weg</translation>
    </message>
    <message>
        <source>Steel tube and fabric</source>
        <translation>Stahlrohr und Bespannung</translation>
    </message>
    <message>
        <source>Stick, pedals and brakes</source>
        <translation>Knüppel, Pedale und Bremsen</translation>
    </message>
    <message>
        <source>Stick, pedals and trim</source>
        <translation>Knüppel, Pedale und Trimmung</translation>
    </message>
    <message>
        <source>Stringers and formers</source>
        <translation>Stringer und Formleisten</translation>
    </message>
    <message>
        <source>Tail wheel</source>
        <translation>Spornrad</translation>
    </message>
    <message>
        <source>The bond can be reached for the tap test</source>
        <translation>Die Klebung ist für die Klopfprobe erreichbar</translation>
    </message>
    <message>
        <source>The sealing coat is complete and cured, and was made for the fuel that will be used</source>
        <translation>Die Dichtschicht ist vollständig, ausgehärtet und für den vorgesehenen Kraftstoff gemacht</translation>
    </message>
    <message>
        <source>The tank was leak tested before it went into the wing</source>
        <translation>Der Tank wurde vor dem Einbau auf Dichtheit geprüft</translation>
    </message>
    <message>
        <source>Trim tab</source>
        <translation>Trimmklappe</translation>
    </message>
    <message>
        <source>Trim tab, skins closed</source>
        <translation>Trimmklappe, Beplankung geschlossen</translation>
    </message>
    <message>
        <source>Undercarriage</source>
        <translation>Fahrwerk</translation>
    </message>
    <message>
        <source>Weight and balance is done with the aircraft as it will fly</source>
        <translation>Gewogen wurde das Luftfahrzeug so, wie es fliegen wird</translation>
    </message>
    <message>
        <source>Welded frame</source>
        <translation>Geschweißter Rahmen</translation>
    </message>
    <message>
        <source>Wing and strut attachments</source>
        <translation>Anschlüsse von Flügeln und Streben</translation>
    </message>
    <message>
        <source>Wing carry-through</source>
        <translation>Flügelmittelstück</translation>
    </message>
    <message>
        <source>Wing is square: diagonals are measured and on record</source>
        <translation>Der Flügel ist rechtwinklig: Diagonalen sind gemessen und aufgezeichnet</translation>
    </message>
    <message>
        <source>Wood</source>
        <translation>Holz</translation>
    </message>
    <message>
        <source>fabric, glued and laced</source>
        <translation>Gewebe, geklebt und vernäht</translation>
    </message>
    <message>
        <source>glue, with nails or clamps until cured</source>
        <translation>Leim, mit Nägeln oder Zwingen bis zum Aushärten</translation>
    </message>
    <message>
        <source>oil or primer, then closed by weld or screw</source>
        <translation>Öl oder Grundierung, dann verschweißt oder verschraubt</translation>
    </message>
    <message>
        <source>rivets</source>
        <translation>Niete</translation>
    </message>
    <message>
        <source>sealant and rivets</source>
        <translation>Dichtmasse und Niete</translation>
    </message>
    <message>
        <source>structural adhesive</source>
        <translation>Strukturklebstoff</translation>
    </message>
    <message>
        <source>welded or riveted and sealed</source>
        <translation>geschweißt, oder genietet und abgedichtet</translation>
    </message>
</context>
<context>
    <name>State</name>
    <message>
        <source>not begun</source>
        <translation>nicht begonnen</translation>
    </message>
    <message>
        <source>stays open, waits for the adviser</source>
        <translation>bleibt offen, wartet auf den Berater</translation>
    </message>
</context>
<context>
    <name>StepMoves</name>
    <message numerus="yes">
        <source>%n steps moved</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1 cannot come before %2, because it has to wait for it: %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 comes after %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: moved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steps change places within their part only.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Tasks</name>
    <message>
        <source> %1 files were not found; the first: %2.</source>
        <translation> %1 Dateien wurden nicht gefunden; die erste: %2.</translation>
    </message>
    <message>
        <source>All records were written to %1.</source>
        <translation>Alle Aufzeichnungen wurden nach %1 geschrieben.</translation>
    </message>
    <message>
        <source>Exporting records</source>
        <translation>Aufzeichnungen werden ausgegeben</translation>
    </message>
    <message>
        <source>Imported: %1 new records, %2 known before, %3 files.</source>
        <translation>Eingelesen: %1 neue Aufzeichnungen, %2 schon bekannte, %3 Dateien.</translation>
    </message>
    <message>
        <source>Nothing was imported. %1</source>
        <translation>Nichts wurde eingelesen. %1</translation>
    </message>
    <message>
        <source>Nothing was imported; %1 errors. The first: %2</source>
        <translation>Nichts wurde eingelesen; %1 Fehler. Der erste: %2</translation>
    </message>
    <message>
        <source>Verified, %1 faults found; the first: %2</source>
        <translation>Geprüft, %1 Fehler gefunden; der erste: %2</translation>
    </message>
    <message>
        <source>Verified, 1 fault found: %1</source>
        <translation>Geprüft, 1 Fehler gefunden: %1</translation>
    </message>
    <message>
        <source>Verified: %1 records, %2 journal rows and %3 files are as they should be.</source>
        <translation>Geprüft: %1 Aufzeichnungen, %2 Journalzeilen und %3 Dateien sind, wie sie sein sollen.</translation>
    </message>
    <message>
        <source>Verifying records and files</source>
        <translation>Aufzeichnungen und Dateien werden geprüft</translation>
    </message>
</context>
<context>
    <name>TodayRows</name>
    <message>
        <source>Running</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>before %1 is closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>needed for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>needed for %1 and %2 more</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n closings are on record and none is begun. A closing comes onto this page with the first work that is logged on a part inside it.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lines of the inspector&apos;s list are not ticked</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Ask</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Count in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Decide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No closing is recorded yet. A closing is the act after which a place can no longer be seen: riveting on a skin, bonding two halves, covering with fabric. Once it is written down, this page says what has to happen before it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sign</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verify</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the page %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WithdrawAct</name>
    <message>
        <source>%1 records</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 will count nowhere any more; the journal keeps it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 withdrawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A withdrawal needs its reason.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These name it and are withdrawn with it: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Withdraw all %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Word</name>
    <message>
        <source>accepted</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>accepted_with_findings</source>
        <translation>angenommen mit Befunden</translation>
    </message>
    <message>
        <source>adviser</source>
        <translation>Berater</translation>
    </message>
    <message>
        <source>aircraft</source>
        <translation>Luftfahrzeug</translation>
    </message>
    <message>
        <source>airworthiness</source>
        <translation>Lufttüchtigkeit</translation>
    </message>
    <message>
        <source>approved</source>
        <translation>genehmigt</translation>
    </message>
    <message>
        <source>arrow</source>
        <translation>Pfeil</translation>
    </message>
    <message>
        <source>assembly</source>
        <translation>Baugruppe</translation>
    </message>
    <message>
        <source>automatic</source>
        <translation>automatisch</translation>
    </message>
    <message>
        <source>builder</source>
        <translation>Erbauer</translation>
    </message>
    <message>
        <source>builder_at_work</source>
        <translation>Erbauer bei der Arbeit</translation>
    </message>
    <message>
        <source>bulletin</source>
        <translation>Mitteilung</translation>
    </message>
    <message>
        <source>by_message</source>
        <translation>per Nachricht</translation>
    </message>
    <message>
        <source>by_photo</source>
        <translation>nach Fotos</translation>
    </message>
    <message>
        <source>by_video</source>
        <translation>per Video</translation>
    </message>
    <message>
        <source>cabin</source>
        <translation>Kabine</translation>
    </message>
    <message>
        <source>carried</source>
        <translation>mitgeführt</translation>
    </message>
    <message>
        <source>certificate_document</source>
        <translation>Zulassungsdokument</translation>
    </message>
    <message>
        <source>change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>check</source>
        <translation>Prüfpunkt</translation>
    </message>
    <message>
        <source>circle</source>
        <translation>Kreis</translation>
    </message>
    <message>
        <source>clear</source>
        <translation>nichts steht entgegen</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>geschlossen</translation>
    </message>
    <message>
        <source>closed_early</source>
        <translation>mit Lücken geschlossen</translation>
    </message>
    <message>
        <source>closing</source>
        <translation>Verschluss</translation>
    </message>
    <message>
        <source>commercial</source>
        <translation>gewerblich</translation>
    </message>
    <message>
        <source>component</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>composite</source>
        <translation>Faserverbund</translation>
    </message>
    <message>
        <source>control_surface</source>
        <translation>Ruderfläche</translation>
    </message>
    <message>
        <source>cosmetic</source>
        <translation>Aussehen</translation>
    </message>
    <message>
        <source>credit_basis</source>
        <translation>Grundlage der Anrechnung</translation>
    </message>
    <message>
        <source>credit_task</source>
        <translation>Aufgabe zum Eigenbauanteil</translation>
    </message>
    <message>
        <source>defect</source>
        <translation>Mangel</translation>
    </message>
    <message>
        <source>delete</source>
        <translation>Löschung</translation>
    </message>
    <message>
        <source>designer</source>
        <translation>Konstrukteur</translation>
    </message>
    <message>
        <source>deviation</source>
        <translation>Abweichung</translation>
    </message>
    <message>
        <source>directive</source>
        <translation>Anweisung</translation>
    </message>
    <message>
        <source>document</source>
        <translation>Dokument</translation>
    </message>
    <message>
        <source>drawing_change</source>
        <translation>Zeichnungsänderung</translation>
    </message>
    <message>
        <source>earlier_builder</source>
        <translation>früherer Erbauer</translation>
    </message>
    <message>
        <source>electrical</source>
        <translation>Elektrik</translation>
    </message>
    <message>
        <source>engine_installation</source>
        <translation>Triebwerkseinbau</translation>
    </message>
    <message>
        <source>envelope</source>
        <translation>Schwerpunktbereich</translation>
    </message>
    <message>
        <source>equipment</source>
        <translation>Ausrüstung</translation>
    </message>
    <message>
        <source>expected</source>
        <translation>erwartet</translation>
    </message>
    <message>
        <source>expense</source>
        <translation>Ausgabe</translation>
    </message>
    <message>
        <source>exterior</source>
        <translation>außen</translation>
    </message>
    <message>
        <source>fabric</source>
        <translation>Bespannung</translation>
    </message>
    <message>
        <source>fabrication</source>
        <translation>Fertigung</translation>
    </message>
    <message>
        <source>factory</source>
        <translation>Werk</translation>
    </message>
    <message>
        <source>factory_closing_needs_document</source>
        <translation>Werksverschluss braucht ein Dokument</translation>
    </message>
    <message>
        <source>failed</source>
        <translation>nicht bestanden</translation>
    </message>
    <message>
        <source>fastener</source>
        <translation>Verbindungselement</translation>
    </message>
    <message>
        <source>final</source>
        <translation>Endprüfung</translation>
    </message>
    <message>
        <source>finishing</source>
        <translation>Oberfläche</translation>
    </message>
    <message>
        <source>flight</source>
        <translation>Flug</translation>
    </message>
    <message>
        <source>flight_controls</source>
        <translation>Steuerung</translation>
    </message>
    <message>
        <source>fuel_system</source>
        <translation>Kraftstoffanlage</translation>
    </message>
    <message>
        <source>fuel_tank</source>
        <translation>Kraftstofftank</translation>
    </message>
    <message>
        <source>fuselage_section</source>
        <translation>Rumpfabschnitt</translation>
    </message>
    <message>
        <source>good</source>
        <translation>gut</translation>
    </message>
    <message>
        <source>helper</source>
        <translation>Helfer</translation>
    </message>
    <message>
        <source>hold</source>
        <translation>bleibt offen</translation>
    </message>
    <message>
        <source>hold_point</source>
        <translation>Haltepunkt</translation>
    </message>
    <message>
        <source>imperial</source>
        <translation>imperial</translation>
    </message>
    <message>
        <source>import</source>
        <translation>Einlesen</translation>
    </message>
    <message>
        <source>in</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>independent_check</source>
        <translation>unabhängige Prüfung</translation>
    </message>
    <message>
        <source>insert</source>
        <translation>Einfügung</translation>
    </message>
    <message>
        <source>inspection</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>inspector</source>
        <translation>Prüfer</translation>
    </message>
    <message>
        <source>interior</source>
        <translation>innen</translation>
    </message>
    <message>
        <source>interior_photos</source>
        <translation>Innenfotos</translation>
    </message>
    <message>
        <source>jam_nut</source>
        <translation>Kontermutter</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>aufbewahrt</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>kit</source>
        <translation>Bausatz</translation>
    </message>
    <message>
        <source>late_acceptance_by</source>
        <translation>späte Annahme durch</translation>
    </message>
    <message>
        <source>late_entry_days</source>
        <translation>Tage bis zum späten Eintrag</translation>
    </message>
    <message>
        <source>lb</source>
        <translation>lb</translation>
    </message>
    <message>
        <source>letter</source>
        <translation>Schreiben</translation>
    </message>
    <message>
        <source>lifting_surface</source>
        <translation>Tragfläche</translation>
    </message>
    <message>
        <source>loading_case</source>
        <translation>Beladefall</translation>
    </message>
    <message>
        <source>lock_tab</source>
        <translation>Sicherungsblech</translation>
    </message>
    <message>
        <source>material_lot</source>
        <translation>Materialcharge</translation>
    </message>
    <message>
        <source>material_use</source>
        <translation>Materialverwendung</translation>
    </message>
    <message>
        <source>measurement</source>
        <translation>Messung</translation>
    </message>
    <message>
        <source>media</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>memory</source>
        <translation>aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>merge</source>
        <translation>Zusammenführung</translation>
    </message>
    <message>
        <source>metal</source>
        <translation>Metall</translation>
    </message>
    <message>
        <source>metric</source>
        <translation>metrisch</translation>
    </message>
    <message>
        <source>migration</source>
        <translation>Umstellung</translation>
    </message>
    <message>
        <source>mixed</source>
        <translation>gemischt</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>must</source>
        <translation>muss</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>on_site</source>
        <translation>vor Ort</translation>
    </message>
    <message>
        <source>one_open_request</source>
        <translation>eine offene Anfrage</translation>
    </message>
    <message>
        <source>other</source>
        <translation>anderes</translation>
    </message>
    <message>
        <source>own_check</source>
        <translation>Eigenprüfung</translation>
    </message>
    <message>
        <source>part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>part_line</source>
        <translation>Packzeile</translation>
    </message>
    <message>
        <source>person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>planning</source>
        <translation>Planung</translation>
    </message>
    <message>
        <source>plans</source>
        <translation>Pläne</translation>
    </message>
    <message>
        <source>pre_cover</source>
        <translation>Prüfung vor dem Schließen</translation>
    </message>
    <message>
        <source>printed</source>
        <translation>gedruckt</translation>
    </message>
    <message>
        <source>project</source>
        <translation>Projekt</translation>
    </message>
    <message>
        <source>read</source>
        <translation>gelesen</translation>
    </message>
    <message>
        <source>ready_to_inspect</source>
        <translation>wartet auf den Prüfer</translation>
    </message>
    <message>
        <source>ready_to_sign</source>
        <translation>wartet auf deine Unterschrift</translation>
    </message>
    <message>
        <source>receipt</source>
        <translation>Beleg</translation>
    </message>
    <message>
        <source>redo</source>
        <translation>Wiederherstellung</translation>
    </message>
    <message>
        <source>region</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>rejected</source>
        <translation>abgelehnt</translation>
    </message>
    <message>
        <source>repair</source>
        <translation>Reparatur</translation>
    </message>
    <message>
        <source>required</source>
        <translation>erforderlich</translation>
    </message>
    <message>
        <source>resale</source>
        <translation>Wiederverkauf</translation>
    </message>
    <message>
        <source>rework</source>
        <translation>Nacharbeit</translation>
    </message>
    <message>
        <source>safety_wire</source>
        <translation>Sicherungsdraht</translation>
    </message>
    <message>
        <source>self_locking_nut</source>
        <translation>selbstsichernde Mutter</translation>
    </message>
    <message>
        <source>should</source>
        <translation>sollte</translation>
    </message>
    <message>
        <source>sign_off</source>
        <translation>Unterschrift</translation>
    </message>
    <message>
        <source>signed_sheet</source>
        <translation>unterschriebenes Blatt</translation>
    </message>
    <message>
        <source>some_cases</source>
        <translation>in manchen Fällen</translation>
    </message>
    <message>
        <source>split_pin</source>
        <translation>Splint</translation>
    </message>
    <message>
        <source>squawk</source>
        <translation>Mangel</translation>
    </message>
    <message>
        <source>stage</source>
        <translation>Zwischenprüfung</translation>
    </message>
    <message>
        <source>step</source>
        <translation>Arbeitsschritt</translation>
    </message>
    <message>
        <source>technical_visit</source>
        <translation>technischer Besuch</translation>
    </message>
    <message>
        <source>tenths</source>
        <translation>Zehntel</translation>
    </message>
    <message>
        <source>text</source>
        <translation>Text</translation>
    </message>
    <message>
        <source>thread_locker</source>
        <translation>Schraubensicherung</translation>
    </message>
    <message>
        <source>ticks</source>
        <translation>Haken</translation>
    </message>
    <message>
        <source>tool</source>
        <translation>Werkzeug</translation>
    </message>
    <message>
        <source>tool_and_debris_check</source>
        <translation>Werkzeug- und Fremdkörperkontrolle</translation>
    </message>
    <message>
        <source>tube</source>
        <translation>Stahlrohr</translation>
    </message>
    <message>
        <source>undercarriage</source>
        <translation>Fahrwerk</translation>
    </message>
    <message>
        <source>undo</source>
        <translation>Rücknahme</translation>
    </message>
    <message>
        <source>update</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>video</source>
        <translation>Video</translation>
    </message>
    <message>
        <source>weighing</source>
        <translation>Wägung</translation>
    </message>
    <message>
        <source>wood</source>
        <translation>Holz</translation>
    </message>
    <message>
        <source>work_session</source>
        <translation>Arbeitszeit</translation>
    </message>
    <message>
        <source>workmanship</source>
        <translation>Ausführung</translation>
    </message>
    <message>
        <source>workshop_visit</source>
        <translation>Werkstattbesuch</translation>
    </message>
    <message>
        <source>C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>N-m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closing-step-not-done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cure-time-unknown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>curing-material</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>expired-material</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>factory-closing-without-document</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>failed-sample</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fastener-not-fitted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>filed-above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ft-lb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in-lb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inner-closed-early</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inner-closing-open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>loose-fastener</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measurement-missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measurement-out-of-limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>missing-part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no_longer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not_for_long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open-bulletin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open-squawk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outdated-sign-off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outstanding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>part-without-closing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>record-without-place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rejected-deviation-built</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>second-hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>signature-without-sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stale-photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thin-record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to_fix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to_verify</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too-few-photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>torque-out-of-limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>uncalibrated-tool</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>undecided-deviation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>undone-step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unlocked-fastener</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unmarked-fastener</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unsigned-hold-point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unticked-check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>biplane</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>canard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>centre_fuselage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cockpit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>elevator</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>engine_bay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>foreplane</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fuselage_tank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>high_wing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left_aileron</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left_flap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left_main_wheel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left_tank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left_wing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>low_wing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lower_left_wing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lower_right_wing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nose_wheel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rear_fuselage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right_aileron</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right_flap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right_main_wheel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right_tank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right_wing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rudder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stabiliser</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tail_wheel</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Zone</name>
    <message>
        <source>Engine bay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nose wheel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Foreplane</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cockpit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fuselage tank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Centre fuselage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left wing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right wing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower left wing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower right wing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left tank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right tank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left aileron</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right aileron</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left flap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right flap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left main wheel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right main wheel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rear fuselage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stabiliser</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Elevator</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rudder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tail wheel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n other closings here</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n parts, no closing is recorded.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>No part is recorded here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>biplane</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>canard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>high wing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>low wing</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ActForm</name>
    <message>
        <source>Leave it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ActLine</name>
    <message>
        <source>Leave it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is no day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long did it take? Write it as 2h15 or 90m.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody has to be named.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::AirframePanel</name>
    <message>
        <source>Drawn as %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As the records say: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Not on the picture: %n parts</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n closings there must stay open</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing says where on the aeroplane they are. Their field “zone” can.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Point at a zone, or walk through them with the arrow keys, to read why it is as it is.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::AirframePicture</name>
    <message>
        <source>The aeroplane, by zone</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::BenchClock</name>
    <message>
        <source>not said</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Did this change what was inspected?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The clock runs: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The clock has run for %1. How long was really worked, and at what?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was done?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Log it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Worked for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is signed for and still open. Did this change what was inspected?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Logged: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Logged: %1 on %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop work (F2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start work (F2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::BenchPartChooser</name>
    <message>
        <source>Parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Code or name of the part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which part?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::BenchView</name>
    <message>
        <source>Other part (F6)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next steps (F3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No step of this part is left to do.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Torque and lock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No fasteners are on record here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lines to check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No line of an inspector&apos;s list is left here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Must stay open here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No closing on record has to stay open here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No picture of this part is on record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave (Esc)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is wrong?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New squawk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To remember about this part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New squawk (F4)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note (F5)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Newest pictures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This step has to wait for another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No step of this part can be worked on now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ticked: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fitted: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Locked: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Torque seal put on: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Torqued</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Torque in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What did the wrench say?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is no torque.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Torqued: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New squawk: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note on %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::BranchForm</name>
    <message>
        <source>Make the copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts of the copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n parts</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n steps</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n closings</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lines to check</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fasteners</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n measurements</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Left and right change places in names and words.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The name tells no side, so that names stay as they are.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copied as planned: %1. What was done, signed, photographed or found stays with the original. %2 Codes that other parts have are left empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another part has the code %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 copied as %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::BranchModel</name>
    <message>
        <source>Copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copied from</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::CheckListModel</name>
    <message>
        <source>%1 (not applicable)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ticked on %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::CheckPanel</name>
    <message>
        <source>Not applicable</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inspector&apos;s list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inspector&apos;s list  %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tick all that are left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tick all but the %1 chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ticked: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tick taken away: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n lines ticked</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lines are not applicable</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lines are applicable again</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ChoiceEditor</name>
    <message>
        <source>not said</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::CloseForm</name>
    <message>
        <source>the day is only about right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>only if there is one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record the closing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something on record stands against closing “%1”. If it was closed all the same, the record says so, with your reason, until an inspector accepts it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” was closed. Nothing on record stood against it; only the look inside told whether the work is right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record the opening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” was opened again. Signatures given before that count as outdated.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It needs the day, and who did it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It needs a reason, for whoever reads this later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 opened again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 closed</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ClosingBoard</name>
    <message>
        <source>Before the final inspection and first flight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No closing has these words.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no document</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to clear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 advised</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ClosingHead</name>
    <message>
        <source>← All closings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make packet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inspection visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accepted afterwards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before the final inspection and first flight: the whole aircraft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; hides %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its document is not on record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closed before these records began; the inspector decides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, and %2 more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record an opening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record the closing</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ClosingView</name>
    <message>
        <source>Only what is not met</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closed on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opened on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closed about %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opened about %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looked at afterwards on %1 by %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signed sheet added</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step done: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ClosingsPage</name>
    <message>
        <source>New closing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inspection visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Here stand the closings: each region of structure that will be hidden by a skin, a cover or glue, and what must happen before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Words of a closing or part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show only closings with these words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make the first closing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the packet goes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ColumnChoice</name>
    <message>
        <source>Lies inside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leave it out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Column</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fills</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Columns of the list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What column %1 fills</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::EntryBar</name>
    <message>
        <source>What was done, as in “2h15 left aileron: dimpled both skins”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New log entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Did this change what was inspected?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no time written down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on squawk %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> and </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ticks: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In front of the colon: how long, which day, parts joined by +, “with” a name. Behind it the note, and “done” with the steps to tick.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is signed for and still open. Did this change what was inspected?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not said</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is the closing itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Logged: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Logged: %1 on %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The clock has run for %1. How long was really worked, and at what?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was done?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Log it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Worked for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At work since %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At work on %1 since %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::Finder</name>
    <message>
        <source>Found</source>
        <translation>Gefunden</translation>
    </message>
    <message>
        <source>Find a record, a page, a command</source>
        <translation>Aufzeichnung, Seite oder Befehl suchen</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>page, Ctrl+%1</source>
        <translation>Seite, Strg+%1</translation>
    </message>
    <message>
        <source>Nothing has all of these words.</source>
        <translation>Nichts enthält alle diese Wörter.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::FindingRows</name>
    <message>
        <source>what was found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part of finding %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finding %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Severity of finding %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::HeadingList</name>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::HoldPointPanel</name>
    <message>
        <source>This closing has no hold points.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, by the %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, by the %1, if wished</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sign again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sign</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Withdraw signature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waive</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>waived on %1 by %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not signed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 on %2 by %3, %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (no signed sheet on record)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::HoursPanel</name>
    <message>
        <source>this week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::LedgerView</name>
    <message>
        <source>Ledger</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::LineEditor</name>
    <message>
        <source>“%1” is no day; write it as %2 or “yesterday”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is no duration; write it as 2h15 or 90m.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is no number.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::LinksEditor</name>
    <message>
        <source>Kind of record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>type a few letters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Assign to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2 of %3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All belong to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: belongs to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: does not belong to %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ListDialog</name>
    <message>
        <source>The first row holds headings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring it in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a pasted list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring in a list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>year-month-day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day.month.year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>month/day/year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paste rows from a spreadsheet here. Columns are parted by tabs, commas or semicolons.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it lists</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rows that name no part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days are written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What becomes of each row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cannot be read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lists (*.csv *.tsv *.txt);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is changed before you have seen what becomes of each row.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 new, %2 there already, %3 blank, %4 wrong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All rows have to be right; then all of them are taken in at once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n rows brought in. Undo takes all of them back.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing was brought in. %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ListRows</name>
    <message>
        <source>+ new</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>= there already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>· blank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>× wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Becomes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::LogModel</name>
    <message numerus="yes">
        <source>%n photos</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>about</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>written down late, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>changed what was inspected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squawk %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::LogPage</name>
    <message>
        <source>Duration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changed what was inspected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only about right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Log entries</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was done each day will stand here. Write the first entry in the line above, or start the clock.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type to filter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filter the log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Withdraw this entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who worked</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n entries, %1</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::MainWindow</name>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>&amp;New project</source>
        <translation>&amp;Neues Projekt</translation>
    </message>
    <message>
        <source>&amp;Open a project folder…</source>
        <translation>Projektordner ö&amp;ffnen …</translation>
    </message>
    <message>
        <source>Open &amp;again</source>
        <translation>&amp;Wieder öffnen</translation>
    </message>
    <message>
        <source>&amp;Import records…</source>
        <translation>Aufzeichnungen ein&amp;lesen …</translation>
    </message>
    <message>
        <source>&amp;Export records…</source>
        <translation>Aufzeichnungen aus&amp;geben …</translation>
    </message>
    <message>
        <source>&amp;Verify records and files</source>
        <translation>Aufzeichnungen und Dateien &amp;prüfen</translation>
    </message>
    <message>
        <source>&amp;Close the project</source>
        <translation>Projekt &amp;schließen</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederherstellen</translation>
    </message>
    <message>
        <source>New &amp;squawk</source>
        <translation>Neuer &amp;Mangel</translation>
    </message>
    <message>
        <source>New on this &amp;page</source>
        <translation>Neu auf dieser &amp;Seite</translation>
    </message>
    <message>
        <source>&amp;Find…</source>
        <translation>&amp;Suchen …</translation>
    </message>
    <message>
        <source>&amp;Go</source>
        <translation>&amp;Gehe zu</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>&amp;Full screen</source>
        <translation>&amp;Vollbild</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation>&amp;Tasten</translation>
    </message>
    <message>
        <source>Lastrivet</source>
        <translation>Lastrivet</translation>
    </message>
    <message>
        <source>%1 – Lastrivet</source>
        <translation>%1 – Lastrivet</translation>
    </message>
    <message>
        <source>Open a project folder</source>
        <translation>Projektordner öffnen</translation>
    </message>
    <message>
        <source>&amp;Undo: %1</source>
        <translation>&amp;Rückgängig: %1</translation>
    </message>
    <message>
        <source>&amp;Redo: %1</source>
        <translation>&amp;Wiederherstellen: %1</translation>
    </message>
    <message>
        <source>Import records</source>
        <translation>Aufzeichnungen einlesen</translation>
    </message>
    <message>
        <source>Records (*.json);;All files (*)</source>
        <translation>Aufzeichnungen (*.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Export records</source>
        <translation>Aufzeichnungen ausgeben</translation>
    </message>
    <message>
        <source>Records (*.json)</source>
        <translation>Aufzeichnungen (*.json)</translation>
    </message>
    <message>
        <source>&amp;Preferences…</source>
        <translation>&amp;Einstellungen …</translation>
    </message>
    <message>
        <source>Bring in a &amp;list…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1…</source>
        <comment>a paper to make</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Bench view</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::MatchBar</name>
    <message>
        <source>Confirm them all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shift+M</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show them</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n photos were taken during work that is in the log.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::MessageLine</name>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Dismiss</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>%1: %2 of %3</source>
        <translation>%1: %2 von %3</translation>
    </message>
    <message numerus="yes">
        <source>%1, about %n s to go</source>
        <translation>
            <numerusform>%1, noch etwa %n s</numerusform>
            <numerusform>%1, noch etwa %n s</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::MissingView</name>
    <message>
        <source>No open closing and no part that will be hidden lacks photographs on record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closings that lack photographs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts that lack photographs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take photos in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no photograph of the inside</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n photographs of the inside</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2 are asked for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>work was done after the latest photograph</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n closings lack photographs of the open structure</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n parts were worked on, will be hidden, and have no photograph of the inside</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Show %n photos that belong to no part and no closing</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::MomentLine</name>
    <message>
        <source>day, or day and time</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::NewClosingForm</name>
    <message>
        <source>Make the closing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opening it again would mean drilling, cutting, or breaking glue or fabric</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is the end of the whole aircraft, before the final inspection and first flight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of the tree, or a new one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A closing is the act after which a region can no longer be seen or reached.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the builder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an earlier builder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the factory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Title</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closed by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inspector&apos;s lists</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>riveted, bonded, covered …</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%1 (%n lines)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>It needs a part, and a title such as “Left wing, upper skin”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New closing: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::NewProjectForm</name>
    <message>
        <source>Make the project</source>
        <translation>Projekt anlegen</translation>
    </message>
    <message>
        <source>A new project</source>
        <translation>Ein neues Projekt</translation>
    </message>
    <message>
        <source>a kit</source>
        <translation>einem Bausatz</translation>
    </message>
    <message>
        <source>plans</source>
        <translation>Plänen</translation>
    </message>
    <message>
        <source>Name of the project</source>
        <translation>Name des Projekts</translation>
    </message>
    <message>
        <source>Rules of</source>
        <translation>Regeln von</translation>
    </message>
    <message>
        <source>Built from</source>
        <translation>Gebaut nach</translation>
    </message>
    <message>
        <source>Aircraft type</source>
        <translation>Muster</translation>
    </message>
    <message>
        <source>Builder</source>
        <translation>Erbauer</translation>
    </message>
    <message>
        <source>Kept in the folder</source>
        <translation>Liegt im Ordner</translation>
    </message>
    <message>
        <source>can be added later</source>
        <translation>kann später folgen</translation>
    </message>
    <message>
        <source>It needs a name, and who builds it.</source>
        <translation>Es fehlt der Name oder wer es baut.</translation>
    </message>
    <message>
        <source>Begin with</source>
        <translation>Beginnen mit</translation>
    </message>
    <message>
        <source>no parts yet</source>
        <translation>noch keinen Teilen</translation>
    </message>
    <message numerus="yes">
        <source>Untick what your aeroplane has not. The closings that go with the parts: %n. Everything can be renamed, moved and added to later.</source>
        <translation>
            <numerusform>Nimm den Haken weg, wo dein Flugzeug etwas nicht hat. Verschlüsse, die zu den Teilen gehören: %n. Alles kann später umbenannt, verschoben und ergänzt werden.</numerusform>
            <numerusform>Nimm den Haken weg, wo dein Flugzeug etwas nicht hat. Verschlüsse, die zu den Teilen gehören: %n. Alles kann später umbenannt, verschoben und ergänzt werden.</numerusform>
        </translation>
    </message>
    <message>
        <source>Project begun</source>
        <translation>Projekt begonnen</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PartDetail</name>
    <message>
        <source>Never enclosed because</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The part itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PartHead</name>
    <message>
        <source>With everything below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The whole aircraft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is on record of all parts, and of none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 with everything below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in all</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PartPhotos</name>
    <message>
        <source>Photos of the part</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PartTree</name>
    <message>
        <source>The whole aircraft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type to filter the parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filter the parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alt+Home: what is on record of all parts, and of none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The parts of the aeroplane will stand here as a tree, each with its state, hours, squawks and photos.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add the first part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n fit</source>
        <comment>parts</comment>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PartsPage</name>
    <message>
        <source>Add beside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Insert: a part after this one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add inside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shift+Insert: a part within this one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new part inside %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new part at the top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A part needs a name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part added: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+D: this part with everything below it, for the other side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paste list…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+V: parts or steps from a spreadsheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete: take wrong parts out</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PhotoBar</name>
    <message>
        <source>Take photos in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Belonging to no part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of a part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Papers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos of this part and below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Order</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n shown</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n places lack photos</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PhotoBrowser</name>
    <message>
        <source>Photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Headings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space opens · A assigns to a part · M confirms the log entry · 1 to 7 say what it shows · Del withdraws</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PhotoDetail</name>
    <message>
        <source>Withdraw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It belongs to</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PhotoIntake</name>
    <message>
        <source>Taking in photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n files were not taken in, because the folder %1 is not there any more.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n taken in.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n were there already.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n were not; the list says why.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PhotoStrip</name>
    <message>
        <source>Photos</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PhotoViewer</name>
    <message>
        <source>Back to all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Words on the mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Esc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page Up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page Down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arrow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Circle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A: an arrow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C: a circle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>W: words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Del</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>−: smaller</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smaller</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>+: larger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Larger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F: the whole picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Full size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>O: every pixel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caption</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what there is to see</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is a video. The program that this computer has for videos can show it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is a paper. The program that this computer has for such files can show it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%1, %2, %n marks</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Open %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark drawn on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark removed from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark changed on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: caption</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This computer has no program that opens %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PhotosPage</name>
    <message>
        <source>Choose files</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos, videos and papers (*.jpg *.jpeg *.png *.heic *.mp4 *.mov *.mkv *.avi *.pdf);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photographs of what will later be closed belong here: drop files on this page, paste a picture, or choose files.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no picture and no file to paste.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PictureInbox</name>
    <message>
        <source>pasted picture %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos and papers (*.jpg *.jpeg *.png *.heic *.pdf);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PictureLoader</name>
    <message>
        <source>There is no picture of it.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PictureView</name>
    <message>
        <source>Reading the picture …</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::Preferences</name>
    <message>
        <source>Preferences</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Language of the screen</source>
        <translation>Sprache des Bildschirms</translation>
    </message>
    <message>
        <source>As the system</source>
        <translation>Wie das System</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Farben</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Hell</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>Rows</source>
        <translation>Zeilen</translation>
    </message>
    <message>
        <source>Close together</source>
        <translation>Eng</translation>
    </message>
    <message>
        <source>Tall, for fingers and gloves</source>
        <translation>Hoch, für Finger und Handschuhe</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>Language of what is printed</source>
        <translation>Sprache des Gedruckten</translation>
    </message>
    <message>
        <source>As the screen</source>
        <translation>Wie der Bildschirm</translation>
    </message>
    <message>
        <source>Who is working here</source>
        <translation>Wer hier arbeitet</translation>
    </message>
    <message>
        <source>The builder of the project</source>
        <translation>Der Erbauer des Projekts</translation>
    </message>
    <message>
        <source>The journal keeps this name with every change.</source>
        <translation>Das Journal vermerkt diesen Namen bei jeder Änderung.</translation>
    </message>
    <message>
        <source>Units of this project</source>
        <translation>Einheiten dieses Projekts</translation>
    </message>
    <message>
        <source>Metric</source>
        <translation>Metrisch</translation>
    </message>
    <message>
        <source>Imperial</source>
        <translation>Imperial</translation>
    </message>
    <message>
        <source>Units of the project</source>
        <translation>Einheiten des Projekts</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PrintForm</name>
    <message>
        <source>Print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with a code that Find reads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>only parts that have a shelf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A paper is written as PDF and opened; from there it goes to any printer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper to make</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For which closings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Label size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Labels already used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>File</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 × %2 mm, %3 on a sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calendar (*.ics)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It needs a file to write to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No closing that is begun must stay open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It needs at least one closing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A file of this name is there. Press again to replace it.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ProjectView</name>
    <message>
        <source>To read only. %1</source>
        <translation>Nur zum Lesen. %1</translation>
    </message>
    <message>
        <source>This project is to read only: nothing can be written down.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::Rail</name>
    <message>
        <source>%1 (Ctrl+%2)</source>
        <translation>%1 (Strg+%2)</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ReasonForm</name>
    <message>
        <source>By</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The signature of %1 on %2 is wrong and counts no more. It stays in the journal.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Withdraw it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody will sign for the %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waive it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It needs who, and a reason for whoever reads this later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signature withdrawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 waived</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::RecordForm</name>
    <message>
        <source>%1: %2 changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cannot be empty.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::RecordSetEditor</name>
    <message>
        <source>add one more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::RecordsPage</name>
    <message numerus="yes">
        <source>%n on record</source>
        <translation>
            <numerusform>%n aufgezeichnet</numerusform>
            <numerusform>%n aufgezeichnet</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: none on record. They can be brought in from a file with File, Import.</source>
        <translation>%1: nichts aufgezeichnet. Mit Datei, Einlesen kommen sie aus einer Datei.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::RepairOptions</name>
    <message>
        <source>a way to repair it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>against it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>against: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squawk %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>repair option added</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>repair option removed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A way to repair it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is for it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is against it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ways to repair it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (decided)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edit %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A way to repair it needs a name; what is for and against it is still in the line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>repair option changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>decision taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>repair decided</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SavedFilterMenu</name>
    <message>
        <source>Filters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved filters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No filter is saved yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save this filter…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A name for this filter; one of the same name is replaced.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rename “%1”…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The new name of “%1”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The filter “%1” is deleted; no record has changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A saved filter needs a name.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::Section</name>
    <message>
        <source>Show fewer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1  %L2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%L1 more</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n more are not listed here.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SectionActsBar</name>
    <message>
        <source>Attach a file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Attach files</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Documents and pictures (*.pdf *.jpg *.jpeg *.png *.heic);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SectionChoice</name>
    <message>
        <source>Sections</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SectionList</name>
    <message>
        <source>Nothing on record here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which step comes before which, as a picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 added</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SectionModel</name>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: not %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” cannot be the %2.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::Session</name>
    <message>
        <source>Nothing was changed: %1</source>
        <translation>Nichts wurde geändert: %1</translation>
    </message>
    <message>
        <source>Undone: %1</source>
        <translation>Rückgängig gemacht: %1</translation>
    </message>
    <message>
        <source>Done again: %1</source>
        <translation>Wiederhergestellt: %1</translation>
    </message>
    <message>
        <source>%1: cancelled, nothing was kept</source>
        <translation>%1: abgebrochen, nichts wurde behalten</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SeveralParts</name>
    <message>
        <source>as they are</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set for all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Construction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shelf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move into</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n parts chosen</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing is filled in that could be set.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n parts changed</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Withdraw all…</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SheetBox</name>
    <message>
        <source>Choose the photo…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none yet; it can be added later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The photographed sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pictures and documents (*.jpg *.jpeg *.png *.heic *.pdf);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ShortcutSheet</name>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Ctrl+%1</source>
        <translation>Strg+%1</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>Go to the record of a row</source>
        <translation>Zur Aufzeichnung einer Zeile gehen</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <source>Press the button of a row</source>
        <translation>Den Knopf einer Zeile drücken</translation>
    </message>
    <message>
        <source>Up, Down</source>
        <translation>Auf, Ab</translation>
    </message>
    <message>
        <source>A day later or earlier, in a field for days</source>
        <translation>Ein Tag später oder früher, in einem Tagesfeld</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <translation>Strg+Eingabe</translation>
    </message>
    <message>
        <source>Record what a form says</source>
        <translation>Aufnehmen, was im Formular steht</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Leave a form, a closing, this sheet</source>
        <translation>Formular, Verschluss oder dieses Blatt verlassen</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ShowsBar</name>
    <message numerus="yes">
        <source>%n photos</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: shows %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: does not show %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SignOffForm</name>
    <message>
        <source>Record the signature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Credential</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Result</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looked at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signed sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signature for the %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accepted afterwards: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It needs who signed, and on which day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 signed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 accepted afterwards</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SquawkActForm</name>
    <message>
        <source>A correction needs to be written down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An acceptance needs its basis: a letter, a drawing, a rule.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say why, so that the record still makes sense in a year.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say in a few words what is wrong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is no day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On which day?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody has to be named.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not among the people on record; add the name there first, with the role.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is no length of time; write it as 2h15 or 90m.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squawk %1 fixed and checked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squawk %1 fixed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squawk %1 verified</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squawk %1 accepted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: acceptance taken back: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: verification taken back: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: not fixed after all: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squawk %1: one step back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As squawk %1, which was dealt with before. %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squawk %1 has come back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squawk %1: what was done about it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fixed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fixed and checked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squawk %1: who looked at the correction?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verified</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squawk %1 stays as it is: who accepts that, and on what basis?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accepted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squawk %1: why is the last step taken back?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squawk %1 has come back: what is seen now?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write down a new squawk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Basis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a letter, a drawing, a rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Worked for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>optional, as 2h15 or 90m; goes into the log</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SquawkCapture</name>
    <message>
        <source>New squawk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Files can also be dropped here, or pasted into the line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos to take in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write it down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter; Ctrl+Enter also opens it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (the part you are looking at)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squawk %1: “%2” · %3 · %4 · found %5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In front of the colon a part, a severity, a day, as far as you like; behind it what is wrong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squawk %1 written down: %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SquawkEditor</name>
    <message>
        <source>Found on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reached through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fixed and checked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fixed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verify</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accept as it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squawk %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take back…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It came back…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F in the list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One step back: not accepted, not verified or not fixed after all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writes down a new squawk like this one; this one keeps its dates</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SquawkFilterBar</name>
    <message>
        <source>Clear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type to filter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filter by words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>any part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filter by part and what is below it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear the filter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filter by how far they are dealt with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filter by severity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>any severity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filter by who verifies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>anybody to verify</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filter by reach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in and out of reach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filter by inspection</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>any inspection</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SquawkLineEdit</name>
    <message>
        <source>New squawk, as in “left aileron: overdriven rivet at rib 3”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New squawk</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SquawkModel</name>
    <message>
        <source>verified %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>accepted as it is %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fixed, the inspector has to look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fixed, the adviser has to look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fixed, to be checked</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source> and %n more</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>last chance before %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>out of reach: open %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on papers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Soon out of reach (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Out of reach (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In reach (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done (%1)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SquawkPictures</name>
    <message>
        <source>Add photos…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos before the repair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos after the repair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No photo of the defect yet. Drop some here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No photo of the repair yet. Drop some here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add photos of the defect</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add photos of the repair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It shows the repair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It shows the defect</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A photo shows the repair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A photo shows the defect</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SquawkReach</name>
    <message numerus="yes">
        <source>Out of reach. To get at it, open again:</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Soon out of reach. This is the last chance before:</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Go to the closing %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SquawkWork</name>
    <message>
        <source>Work on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No work on it is in the log yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Log work on it, as in “45m: drilled out” or “2h15 yesterday”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Log work on this squawk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not written down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 worked; the estimate was %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 worked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no time written down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has not come yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work logged on squawk %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The clock has run for %1. How long was really worked on it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At work on it since %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The clock runs on something else; stop it in the log first.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SquawksPage</name>
    <message>
        <source>Squawks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Defects that are found will be listed here, those first that will soon be out of reach. Write the first one in the line above.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n squawks</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>No squawk matches the filter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear the filter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print the list…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CSV…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the list as CSV</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CSV for a spreadsheet (*.csv)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squawks %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the list</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%1; of all, %n soon out of reach</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::StandingPanel</name>
    <message>
        <source>stay open, work left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing on record against closing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closed with gaps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not begun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stay open, wait for somebody from outside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stay open, wait for your signature</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::StartPage</name>
    <message>
        <source>Lastrivet</source>
        <translation>Lastrivet</translation>
    </message>
    <message>
        <source>Open a project folder…</source>
        <translation>Projektordner öffnen …</translation>
    </message>
    <message>
        <source>Open the demo</source>
        <translation>Beispiel öffnen</translation>
    </message>
    <message>
        <source>An invented aeroplane, two and a half years in, to look around and try everything.</source>
        <translation>Ein erfundenes Flugzeug nach zweieinhalb Baujahren, zum Umsehen und Ausprobieren.</translation>
    </message>
    <message>
        <source>What was built, what was found, what must stay open, and who signed: the records of one aircraft, in one folder.</source>
        <translation>Was gebaut wurde, was gefunden wurde, was offen bleiben muss und wer unterschrieben hat: die Aufzeichnungen eines Luftfahrzeugs in einem Ordner.</translation>
    </message>
    <message>
        <source>Open again</source>
        <translation>Wieder öffnen</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::StarterTree</name>
    <message>
        <source>Parts to begin with</source>
        <translation>Teile zu Beginn</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::StateBadge</name>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::StateColumn</name>
    <message>
        <source>Show fewer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::StepPicture</name>
    <message>
        <source>Order of the steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, after %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to the step that has to wait for it, and press W again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These are too many steps for a picture. Choose a part further down, or leave out what lies below.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::TodayActs</name>
    <message>
        <source>The clock runs already, since %1. Stop it on the Log page first, so that its time is not lost.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The clock runs: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take in photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos (*.jpg *.jpeg *.png *.heic);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::TodayPage</name>
    <message>
        <source>Stays open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No closing that was begun has to stay open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Workable now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before it is out of reach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing on record would be buried by the next closing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Needs attention</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing on record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Here stands each evening what must stay open and what can be worked on. It begins with a part and the closing that will hide it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make the first closing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is recorded yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The clock runs since %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No step is recorded. Steps are optional; of those written down, this list says which can be worked on and what each of them unlocks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every step on record is done, or has to wait for another.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::TroubleList</name>
    <message>
        <source>Dismiss</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not taken in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not taken in:</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::VerdictRows</name>
    <message>
        <source>No hold point waits for an inspector or adviser.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Result for %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::VisitForm</name>
    <message>
        <source>ask for it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it was held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A visit of the inspector or adviser; one visit may sign several hold points.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who comes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reference or report number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looked at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signed sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record the request</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record the visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planned for, if a day is set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>held on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It needs at least one hold point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A visit asked for on %1 is still open, and this authority wants one request at a time. Press again to record this one all the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visit asked for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It needs who came, and on which day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visit recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Visit recorded with %n findings</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::WatchBar</name>
    <message>
        <source>Watch a folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They do not belong here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take in what is there, too</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only what comes from now on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop watching</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos that a phone puts there are taken in on their own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The folder that your phone puts its pictures into</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 will be watched.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not watching %1 for now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not there; it is looked for again and again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Watching %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Watching %1; %n came in last.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Go on watching</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pause</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::WatchedFolder</name>
    <message>
        <source>The watched folder %1 is not there; photos are taken in again when it is back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The watched folder %1 is back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n came in from the watched folder.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n files from the watched folder were not taken in; the page Photos says why.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::WeekBars</name>
    <message>
        <source>Hours per week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No hours in these weeks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>week of %1: %2, of that %3 done again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>week of %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours per week, at most %1; hatched: done again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours per week, at most %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::WorkProposal</name>
    <message>
        <source>%1: belongs to a log entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n photos belong to their log entries</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>M</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It belongs there (M)</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>All %n belong there (M)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Taken while this was done:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken on the day of this work:</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::WorkersEditor</name>
    <message>
        <source>somebody else who worked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add somebody who worked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long %1 worked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>paid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is no duration; write it as 2h15 or 90m.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Log entry: who worked</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::YearStrip</name>
    <message numerus="yes">
        <source>Work on %n days of the last year</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1: nothing logged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
