<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en">
<context>
    <name>Bench</name>
    <message>
        <source>%1 to %2 %3</source>
        <translation>%1 bis %2 %3</translation>
    </message>
    <message>
        <source>%1: locked</source>
        <translation>%1: gesichert</translation>
    </message>
    <message>
        <source>Tick</source>
        <translation>Abhaken</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>und %1 weitere</translation>
    </message>
    <message>
        <source>at least %1 %2</source>
        <translation>mindestens %1 %2</translation>
    </message>
    <message>
        <source>at most %1 %2</source>
        <translation>höchstens %1 %2</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>has to wait for another step</source>
        <translation>muss auf einen anderen Schritt warten</translation>
    </message>
    <message>
        <source>the clock runs</source>
        <translation>die Uhr läuft</translation>
    </message>
    <message>
        <source>torqued: %1</source>
        <translation>angezogen: %1</translation>
    </message>
    <message>
        <source>finger-tight · %1</source>
        <translation>fingerfest · %1</translation>
    </message>
    <message>
        <source>Fit</source>
        <translation>Einsetzen</translation>
    </message>
    <message>
        <source>Lock</source>
        <translation>Sichern</translation>
    </message>
    <message>
        <source>Seal</source>
        <translation>Lackmarke setzen</translation>
    </message>
    <message>
        <source>Tick off</source>
        <translation>Abhaken</translation>
    </message>
    <message>
        <source>Torque</source>
        <translation>Anziehen</translation>
    </message>
</context>
<context>
    <name>Closing</name>
    <message>
        <source>accepted</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>accepted, with findings</source>
        <translation>angenommen, mit Feststellungen</translation>
    </message>
    <message>
        <source>rejected</source>
        <translation>abgelehnt</translation>
    </message>
    <message>
        <source>on site</source>
        <translation>vor Ort</translation>
    </message>
    <message>
        <source>by photo</source>
        <translation>per Foto</translation>
    </message>
    <message>
        <source>by video</source>
        <translation>per Video</translation>
    </message>
    <message>
        <source>by message</source>
        <translation>per Nachricht</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>Conflicts</name>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: %2, or %3?</source>
        <translation>%1: %2 oder %3?</translation>
    </message>
    <message>
        <source>It is not known who wrote it.</source>
        <translation>Es ist nicht bekannt, wer das geschrieben hat.</translation>
    </message>
    <message>
        <source>decided: the other was taken</source>
        <translation>entschieden: das andere wurde übernommen</translation>
    </message>
    <message>
        <source>decided: what stood was kept</source>
        <translation>entschieden: was stand, blieb</translation>
    </message>
    <message>
        <source>left out: %1</source>
        <translation>weggelassen: %1</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>row %1</source>
        <translation>Zeile %1</translation>
    </message>
    <message>
        <source>taken back in one copy, gone on with in the other</source>
        <translation>in der einen Kopie zurückgenommen, in der anderen weitergeführt</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>„%1“</translation>
    </message>
</context>
<context>
    <name>CreditModel</name>
    <message>
        <source>Section</source>
        <translation>Abschnitt</translation>
    </message>
    <message>
        <source>Task</source>
        <translation>Aufgabe</translation>
    </message>
    <message>
        <source>A</source>
        <translation>A</translation>
    </message>
    <message>
        <source>Tenths done by the maker of kit or part</source>
        <translation>Zehntel, die der Hersteller des Bausatzes oder Teils ausgeführt hat</translation>
    </message>
    <message>
        <source>B</source>
        <translation>B</translation>
    </message>
    <message>
        <source>Tenths done by paid help</source>
        <translation>Zehntel, die bezahlte Hilfe ausgeführt hat</translation>
    </message>
    <message>
        <source>C</source>
        <translation>C</translation>
    </message>
    <message>
        <source>Tenths assembled by the builder</source>
        <translation>Zehntel, die der Erbauer montiert hat</translation>
    </message>
    <message>
        <source>D</source>
        <translation>D</translation>
    </message>
    <message>
        <source>Tenths fabricated by the builder</source>
        <translation>Zehntel, die der Erbauer angefertigt hat</translation>
    </message>
    <message>
        <source>Builder</source>
        <translation>Erbauer</translation>
    </message>
    <message>
        <source>Tick of the builder, in two columns</source>
        <translation>Häkchen des Erbauers, in zwei Spalten</translation>
    </message>
    <message>
        <source>Maker</source>
        <translation>Hersteller</translation>
    </message>
    <message>
        <source>Tick of the maker, in two columns</source>
        <translation>Häkchen des Herstellers, in zwei Spalten</translation>
    </message>
    <message>
        <source>Shown by</source>
        <translation>Belegt durch</translation>
    </message>
    <message>
        <source>Pictures and log entries on record</source>
        <translation>Bilder und Einträge im Bautagebuch</translation>
    </message>
</context>
<context>
    <name>Demo</name>
    <message>
        <source>%1 could not be made.</source>
        <translation>%1 konnte nicht angelegt werden.</translation>
    </message>
</context>
<context>
    <name>Expiry</name>
    <message>
        <source>“%1” does not say for certain which year is meant; write a day as %2, or a month as 03/2027.</source>
        <translation>„%1“ lässt offen, welches Jahr gemeint ist; schreiben Sie einen Tag wie %2 oder einen Monat wie 03/2027.</translation>
    </message>
    <message>
        <source>“%1” is no day; write it as %2, or a month as 03/2027, which is read as its last day.</source>
        <translation>„%1“ ist kein Tag; schreiben Sie ihn wie %2, oder einen Monat wie 03/2027, von dem dann der letzte Tag gilt.</translation>
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
        <translation>hinzugefügt</translation>
    </message>
    <message>
        <source>after</source>
        <translation>nach</translation>
    </message>
    <message>
        <source>aircraft_type</source>
        <translation>Flugzeugtyp</translation>
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
        <translation>Anmerkungen</translation>
    </message>
    <message>
        <source>applies</source>
        <translation>trifft zu</translation>
    </message>
    <message>
        <source>approximate</source>
        <translation>ungefähr</translation>
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
        <translation>gefragt wurde</translation>
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
        <translation>Beginn</translation>
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
        <translation>Bildtext</translation>
    </message>
    <message>
        <source>category</source>
        <translation>Kategorie</translation>
    </message>
    <message>
        <source>certificate_id</source>
        <translation>Zertifikat</translation>
    </message>
    <message>
        <source>changed_inspected</source>
        <translation>Geprüftes verändert</translation>
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
        <translation>Schließstelle</translation>
    </message>
    <message>
        <source>code</source>
        <translation>Kürzel</translation>
    </message>
    <message>
        <source>commercial_tenths</source>
        <translation>Zehntel Fremdleistung</translation>
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
        <translation>dagegen</translation>
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
        <translation>Behebungen</translation>
    </message>
    <message>
        <source>credential</source>
        <translation>Nachweis</translation>
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
        <translation>Bezugsebene</translation>
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
        <translation>entfallen am</translation>
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
        <translation>Anmerkung zur Ausrüstung</translation>
    </message>
    <message>
        <source>estimate_minutes</source>
        <translation>Schätzung</translation>
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
        <translation>läuft ab am</translation>
    </message>
    <message>
        <source>fabrication_tenths</source>
        <translation>Zehntel Herstellung</translation>
    </message>
    <message>
        <source>faults</source>
        <translation>Störungen</translation>
    </message>
    <message>
        <source>file</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>finding_number</source>
        <translation>Nummer der Feststellung</translation>
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
        <translation>abgehalten am</translation>
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
        <translation>Kennung</translation>
    </message>
    <message>
        <source>imported_on</source>
        <translation>übernommen am</translation>
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
        <translation>herausgegeben am</translation>
    </message>
    <message>
        <source>issuer</source>
        <translation>Herausgeber</translation>
    </message>
    <message>
        <source>item</source>
        <translation>Punkt</translation>
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
        <translation>nachträgliche Annahmen</translation>
    </message>
    <message>
        <source>lemac</source>
        <translation>Vorderkante der Bezugsflügeltiefe</translation>
    </message>
    <message>
        <source>level</source>
        <translation>Nivellierung</translation>
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
        <translation>geschlossen durch</translation>
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
        <translation>Bild oder Dokument</translation>
    </message>
    <message>
        <source>media_ids</source>
        <translation>Bilder und Dokumente</translation>
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
        <translation>Muster</translation>
    </message>
    <message>
        <source>model_as_written</source>
        <translation>Muster, wie geschrieben</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>name_as_written</source>
        <translation>Name, wie geschrieben</translation>
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
        <translation>wird nie umschlossen, weil</translation>
    </message>
    <message>
        <source>not_applicable</source>
        <translation>trifft nicht zu</translation>
    </message>
    <message>
        <source>not_inside</source>
        <translation>nicht im Inneren von</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Anmerkung</translation>
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
        <translation>Herkunft</translation>
    </message>
    <message>
        <source>paid</source>
        <translation>bezahlt</translation>
    </message>
    <message>
        <source>parent_id</source>
        <translation>gehört zu</translation>
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
        <translation>Stelle</translation>
    </message>
    <message>
        <source>plan_ref</source>
        <translation>Stelle im Plan</translation>
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
        <translation>Platz</translation>
    </message>
    <message>
        <source>present</source>
        <translation>anwesend</translation>
    </message>
    <message>
        <source>profile</source>
        <translation>Regelprofil</translation>
    </message>
    <message>
        <source>pros</source>
        <translation>dafür</translation>
    </message>
    <message>
        <source>quantity</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>raised_on</source>
        <translation>aufgenommen am</translation>
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
        <translation>Aktenzeichen</translation>
    </message>
    <message>
        <source>registration</source>
        <translation>Kennzeichen</translation>
    </message>
    <message>
        <source>registration_as_written</source>
        <translation>Kennzeichen, wie geschrieben</translation>
    </message>
    <message>
        <source>remarks</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <source>removed_on</source>
        <translation>entfernt am</translation>
    </message>
    <message>
        <source>removed_why</source>
        <translation>entfernt, weil</translation>
    </message>
    <message>
        <source>repair_options</source>
        <translation>Reparaturmöglichkeiten</translation>
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
        <translation>Probe am</translation>
    </message>
    <message>
        <source>scale_readings</source>
        <translation>Ablesungen der Waagen</translation>
    </message>
    <message>
        <source>scan_id</source>
        <translation>eingescanntes Blatt</translation>
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
        <translation>Werknummer, wie geschrieben</translation>
    </message>
    <message>
        <source>serial_number</source>
        <translation>Werk-/Seriennummer</translation>
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
        <translation>Regalfach</translation>
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
        <translation>zu unterschreiben durch</translation>
    </message>
    <message>
        <source>source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>specification</source>
        <translation>Norm</translation>
    </message>
    <message>
        <source>spent_on</source>
        <translation>ausgegeben am</translation>
    </message>
    <message>
        <source>squawk_id</source>
        <translation>Beanstandung</translation>
    </message>
    <message>
        <source>started_on</source>
        <translation>begonnen am</translation>
    </message>
    <message>
        <source>step_id</source>
        <translation>Schritt</translation>
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
        <translation>niedrigste Temperatur</translation>
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
        <translation>Laufmoment</translation>
    </message>
    <message>
        <source>torque_max</source>
        <translation>höchstes Drehmoment</translation>
    </message>
    <message>
        <source>torque_min</source>
        <translation>niedrigstes Drehmoment</translation>
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
        <translation>rückgängig gemacht am</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>unit_price</source>
        <translation>Stückpreis</translation>
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
        <translation>nachzuprüfen durch</translation>
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
        <translation>erlassen, weil</translation>
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
        <translation>zurückgezogen, weil</translation>
    </message>
    <message>
        <source>workers</source>
        <translation>Arbeitende</translation>
    </message>
    <message>
        <source>zone</source>
        <translation>Zone</translation>
    </message>
</context>
<context>
    <name>HardwareActs</name>
    <message>
        <source>%1: fitted</source>
        <translation>%1: eingebaut</translation>
    </message>
    <message>
        <source>%1: sealed</source>
        <translation>%1: Lackmarke gesetzt</translation>
    </message>
    <message>
        <source>%1: locked</source>
        <translation>%1: gesichert</translation>
    </message>
    <message>
        <source>%1, measured again</source>
        <translation>%1, noch einmal gemessen</translation>
    </message>
    <message>
        <source>%1: measured again</source>
        <translation>%1: noch einmal gemessen</translation>
    </message>
    <message>
        <source>%1: torqued</source>
        <translation>%1: angezogen</translation>
    </message>
    <message numerus="yes">
        <source>%n lines of fasteners</source>
        <translation>
            <numerusform>%Ln Zeile Verbindungselemente</numerusform>
            <numerusform>%Ln Zeilen Verbindungselemente</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lines of fasteners, all to the same torque</source>
        <translation>
            <numerusform>%Ln Zeile Verbindungselemente</numerusform>
            <numerusform>%Ln Zeilen Verbindungselemente, alle mit demselben Drehmoment</numerusform>
        </translation>
    </message>
    <message>
        <source>On</source>
        <translation>Am</translation>
    </message>
    <message>
        <source>Torque on the wrench, %1</source>
        <translation>Drehmoment am Schlüssel, %1</translation>
    </message>
    <message>
        <source>Torque on the wrench, %1 to %2 %3</source>
        <translation>Drehmoment am Schlüssel, %1 bis %2 %3</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Value, %1</source>
        <translation>Wert, %1</translation>
    </message>
    <message>
        <source>With</source>
        <translation>Mit</translation>
    </message>
    <message>
        <source>Write the torque that the wrench showed.</source>
        <translation>Das Drehmoment gehört dazu, das der Schlüssel zeigte.</translation>
    </message>
    <message>
        <source>Write the value.</source>
        <translation>Der Wert gehört dazu.</translation>
    </message>
    <message>
        <source>The chosen lines have different limits; torque each by itself.</source>
        <translation>Die gewählten Zeilen haben verschiedene Grenzen; ziehen Sie jede für sich an.</translation>
    </message>
    <message>
        <source>Record the torque</source>
        <translation>Drehmoment eintragen</translation>
    </message>
    <message>
        <source>Record the value</source>
        <translation>Wert eintragen</translation>
    </message>
    <message>
        <source>What this is about is no longer on record.</source>
        <translation>Worum es geht, ist nicht mehr aufgezeichnet.</translation>
    </message>
    <message>
        <source>%1: torqued outside its limits</source>
        <translation>%1: außerhalb der Grenzen angezogen</translation>
    </message>
</context>
<context>
    <name>HoursPaper</name>
    <message>
        <source>Hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>The figures were written to %1.</source>
        <translation>Die Zahlen stehen in %1.</translation>
    </message>
</context>
<context>
    <name>HoursView</name>
    <message>
        <source>By kind</source>
        <translation>Nach Art</translation>
    </message>
    <message>
        <source>By month</source>
        <translation>Nach Monat</translation>
    </message>
    <message>
        <source>By part</source>
        <translation>Nach Teil</translation>
    </message>
    <message>
        <source>By person</source>
        <translation>Nach Person</translation>
    </message>
    <message>
        <source>By week</source>
        <translation>Nach Woche</translation>
    </message>
    <message>
        <source>Estimates</source>
        <translation>Schätzungen</translation>
    </message>
    <message>
        <source>Look back</source>
        <translation>Rückblick</translation>
    </message>
    <message>
        <source>To go</source>
        <translation>Noch zu tun</translation>
    </message>
</context>
<context>
    <name>IntakeWords</name>
    <message>
        <source>Photos linked that were there already</source>
        <translation>Fotos verknüpft, die schon da waren</translation>
    </message>
    <message numerus="yes">
        <source>%n photos taken in</source>
        <translation>
            <numerusform>%Ln Foto übernommen</numerusform>
            <numerusform>%Ln Fotos übernommen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n files taken in</source>
        <translation>
            <numerusform>%Ln Datei übernommen</numerusform>
            <numerusform>%Ln Dateien übernommen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>JournalFilter</name>
    <message>
        <source>changes</source>
        <translation>Änderungen</translation>
    </message>
</context>
<context>
    <name>JournalPrint</name>
    <message>
        <source>Journal</source>
        <translation>Journal</translation>
    </message>
</context>
<context>
    <name>ListInput</name>
    <message>
        <source>Column %1</source>
        <translation>Spalte %1</translation>
    </message>
</context>
<context>
    <name>LogActs</name>
    <message>
        <source>%1 in pieces: parts, times or both, with a plus sign between them, as in “LA + RW” or “40m + RW 20m”. What says no time shares the rest.</source>
        <translation>%1 in Stücken: Teile, Zeiten oder beides, mit einem Plus dazwischen, wie „LA + RW“ oder „40m + RW 20m“. Was keine Zeit nennt, teilt sich den Rest.</translation>
    </message>
    <message numerus="yes">
        <source>%n entries go to another day, another part, or both, as in “yesterday”, “LA” or “3 Mar left aileron”. The time of day stays.</source>
        <translation>
            <numerusform>%Ln Eintrag kommt zu einem anderen Tag, einem anderen Teil oder beidem, wie „gestern“, „LA“ oder „3. Mär linkes Querruder“. Die Uhrzeit bleibt.</numerusform>
            <numerusform>%Ln Einträge kommen zu einem anderen Tag, einem anderen Teil oder beidem, wie „gestern“, „LA“ oder „3. Mär linkes Querruder“. Die Uhrzeit bleibt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n log entries moved</source>
        <translation>
            <numerusform>%Ln Eintrag verschoben</numerusform>
            <numerusform>%Ln Einträge verschoben</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Log entry split into %n</source>
        <translation>
            <numerusform>Eintrag in %Ln geteilt</numerusform>
            <numerusform>Eintrag in %Ln geteilt</numerusform>
        </translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Verschieben</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Stücke</translation>
    </message>
    <message>
        <source>Say at least two parts or times.</source>
        <translation>Mindestens zwei Teile oder Zeiten nennen.</translation>
    </message>
    <message>
        <source>Say the day, the part, or both.</source>
        <translation>Den Tag, das Teil oder beides nennen.</translation>
    </message>
    <message>
        <source>Split</source>
        <translation>Teilen</translation>
    </message>
    <message>
        <source>The entry once for each part, with a plus sign between them.</source>
        <translation>Den Eintrag je Teil einmal, mit einem Plus dazwischen.</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Nach</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>a project folder to open</source>
        <translation>ein Projektordner, der geöffnet wird</translation>
    </message>
    <message>
        <source>One project can be opened at a time.</source>
        <translation>Es kann nur ein Projekt auf einmal geöffnet werden.</translation>
    </message>
</context>
<context>
    <name>Mend</name>
    <message>
        <source>Sign</source>
        <translation>Unterschreiben</translation>
    </message>
    <message>
        <source>Add the sheet</source>
        <translation>Blatt hinzufügen</translation>
    </message>
    <message>
        <source>Tick</source>
        <translation>Abhaken</translation>
    </message>
    <message>
        <source>Add photos</source>
        <translation>Fotos hinzufügen</translation>
    </message>
    <message>
        <source>Ask for a visit</source>
        <translation>Besuch erbitten</translation>
    </message>
    <message>
        <source>Tick off</source>
        <translation>Abhaken</translation>
    </message>
</context>
<context>
    <name>Merge</name>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message numerus="yes">
        <source>%n changes of another copy are brought in</source>
        <translation>
            <numerusform>%Ln Änderung einer anderen Kopie ist übernommen</numerusform>
            <numerusform>%Ln Änderungen einer anderen Kopie sind übernommen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n files are in neither copy</source>
        <translation>
            <numerusform>%Ln Datei ist in keiner der Kopien</numerusform>
            <numerusform>%Ln Dateien sind in keiner der Kopien</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n files copied</source>
        <translation>
            <numerusform>%Ln Datei kopiert</numerusform>
            <numerusform>%Ln Dateien kopiert</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n things to decide</source>
        <translation>
            <numerusform>%Ln Sache ist zu entscheiden</numerusform>
            <numerusform>%Ln Sachen sind zu entscheiden</numerusform>
        </translation>
    </message>
    <message>
        <source>Merging another copy</source>
        <translation>Eine andere Kopie wird zusammengeführt</translation>
    </message>
    <message>
        <source>Nothing new: this project has every change of the other copy.</source>
        <translation>Nichts Neues: Dieses Projekt hat alle Änderungen der anderen Kopie.</translation>
    </message>
    <message numerus="yes">
        <source>Nothing new: this project has every change of the other copy; %n things are still to decide.</source>
        <translation>
            <numerusform>Nichts Neues: Dieses Projekt hat alle Änderungen der anderen Kopie; %Ln Sache ist noch zu entscheiden.</numerusform>
            <numerusform>Nichts Neues: Dieses Projekt hat alle Änderungen der anderen Kopie; %Ln Sachen sind noch zu entscheiden.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing was merged. %1</source>
        <translation>Es wurde nichts zusammengeführt. %1</translation>
    </message>
    <message>
        <source>nothing to decide</source>
        <translation>nichts ist zu entscheiden</translation>
    </message>
</context>
<context>
    <name>Message</name>
    <message>
        <source>1 closing must stay open.</source>
        <translation>1 Schließstelle muss offen bleiben.</translation>
    </message>
    <message>
        <source>1 closing must stay open; it waits only for a signature.</source>
        <translation>1 Schließstelle muss offen bleiben; es fehlt nur eine Unterschrift.</translation>
    </message>
    <message>
        <source>A correction is verified by a builder, an adviser or an inspector; {0} is none of them.</source>
        <translation>Eine Behebung prüft ein Erbauer, Berater oder Prüfer nach; {0} ist nichts davon.</translation>
    </message>
    <message>
        <source>A full bar keeps the closing open; a broken bar is advice. Nothing on record is not the same as met.</source>
        <translation>Ein voller Balken hält die Schließstelle offen; ein unterbrochener ist ein Rat. Nichts verzeichnet heißt nicht erfüllt.</translation>
    </message>
    <message>
        <source>A quotation mark opens a cell that does not end as it should.</source>
        <translation>Ein Anführungszeichen öffnet eine Zelle, die nicht richtig endet.</translation>
    </message>
    <message>
        <source>A visit is planned for {0}</source>
        <translation>Ein Besuch ist für {0} geplant</translation>
    </message>
    <message>
        <source>A visit was asked for on {0}; no day is set yet</source>
        <translation>Ein Besuch wurde am {0} angefragt; ein Tag steht noch nicht fest</translation>
    </message>
    <message>
        <source>Acceptance</source>
        <translation>Annahme</translation>
    </message>
    <message>
        <source>Accepted as it is: {0}</source>
        <translation>Unverändert angenommen: {0}</translation>
    </message>
    <message>
        <source>Accepted late</source>
        <translation>Nachträglich angenommen</translation>
    </message>
    <message>
        <source>Advice</source>
        <translation>Rat</translation>
    </message>
    <message>
        <source>Adviser, name and number</source>
        <translation>Berater, Name und Nummer</translation>
    </message>
    <message>
        <source>Against {0}, nothing on record stands.</source>
        <translation>Gegen {0} steht nichts in den Aufzeichnungen.</translation>
    </message>
    <message>
        <source>Aircraft</source>
        <translation>Flugzeug</translation>
    </message>
    <message>
        <source>An object</source>
        <translation>Ein Objekt</translation>
    </message>
    <message>
        <source>Another program has the project open for writing.</source>
        <translation>Ein anderes Programm hat das Projekt zum Schreiben geöffnet.</translation>
    </message>
    <message>
        <source>Applies</source>
        <translation>Trifft zu</translation>
    </message>
    <message>
        <source>Asked</source>
        <translation>Angefragt</translation>
    </message>
    <message>
        <source>Authority&apos;s file</source>
        <translation>Aktenzeichen der Behörde</translation>
    </message>
    <message>
        <source>Brackets are nested more than {0} levels deep.</source>
        <translation>Klammern sind mehr als {0} Ebenen tief verschachtelt.</translation>
    </message>
    <message>
        <source>Builder</source>
        <translation>Erbauer</translation>
    </message>
    <message>
        <source>Builder, name</source>
        <translation>Erbauer, Name</translation>
    </message>
    <message>
        <source>Builder, signature and date</source>
        <translation>Erbauer, Unterschrift und Datum</translation>
    </message>
    <message>
        <source>Built</source>
        <translation>Gebaut</translation>
    </message>
    <message>
        <source>Built as</source>
        <translation>Gebaut als</translation>
    </message>
    <message>
        <source>Bulletins</source>
        <translation>Bulletins</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Calibrated</source>
        <translation>Kalibriert</translation>
    </message>
    <message>
        <source>Caption</source>
        <translation>Bildtext</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Hinweise</translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>Geschlossen</translation>
    </message>
    <message>
        <source>Closed and opened</source>
        <translation>Geschlossen und geöffnet</translation>
    </message>
    <message>
        <source>Closed with gaps, and accepted by nobody yet</source>
        <translation>Mit Lücken geschlossen, und noch von niemandem angenommen</translation>
    </message>
    <message>
        <source>Closing</source>
        <translation>Schließstelle</translation>
    </message>
    <message>
        <source>Complete</source>
        <translation>Vollständig</translation>
    </message>
    <message>
        <source>Complied with</source>
        <translation>Erfüllt</translation>
    </message>
    <message>
        <source>Conditions</source>
        <translation>Bedingungen</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>Correction</source>
        <translation>Behebung</translation>
    </message>
    <message>
        <source>Cure time</source>
        <translation>Aushärtezeit</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Day by day</source>
        <translation>Tag für Tag</translation>
    </message>
    <message>
        <source>Deficiencies</source>
        <translation>Mängel</translation>
    </message>
    <message>
        <source>Deficiency</source>
        <translation>Mangel</translation>
    </message>
    <message>
        <source>Designer</source>
        <translation>Konstrukteur</translation>
    </message>
    <message>
        <source>Deviation</source>
        <translation>Abweichung</translation>
    </message>
    <message>
        <source>Deviations</source>
        <translation>Abweichungen</translation>
    </message>
    <message>
        <source>Drawing</source>
        <translation>Zeichnung</translation>
    </message>
    <message>
        <source>Encloses</source>
        <translation>Umschließt</translation>
    </message>
    <message>
        <source>Every rule</source>
        <translation>Alle Regeln</translation>
    </message>
    <message>
        <source>Every rule, as it stood when it was closed</source>
        <translation>Alle Regeln, wie sie beim Schließen standen</translation>
    </message>
    <message>
        <source>Fasteners and torque</source>
        <translation>Verbindungselemente und Drehmomente</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>Fitted</source>
        <translation>Eingebaut</translation>
    </message>
    <message>
        <source>Fixed, to be verified by the {0}</source>
        <translation>Behoben, nachzuprüfen durch: {0}</translation>
    </message>
    <message>
        <source>For closing</source>
        <translation>Für Schließstelle</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Gefunden</translation>
    </message>
    <message>
        <source>From: {0}</source>
        <translation>Aus: {0}</translation>
    </message>
    <message>
        <source>Hardware</source>
        <translation>Normteil</translation>
    </message>
    <message>
        <source>Held</source>
        <translation>Abgehalten</translation>
    </message>
    <message>
        <source>Hold point</source>
        <translation>Haltepunkt</translation>
    </message>
    <message>
        <source>Hold points</source>
        <translation>Haltepunkte</translation>
    </message>
    <message>
        <source>Inspection packet</source>
        <translation>Prüfmappe</translation>
    </message>
    <message>
        <source>Inspection packet: {0}</source>
        <translation>Prüfmappe: {0}</translation>
    </message>
    <message>
        <source>Inspection packet: {0} closings</source>
        <translation>Prüfmappe: {0} Schließstellen</translation>
    </message>
    <message>
        <source>Inspector</source>
        <translation>Prüfer</translation>
    </message>
    <message>
        <source>Inspector, name and number</source>
        <translation>Prüfer, Name und Nummer</translation>
    </message>
    <message>
        <source>Inspector, signature and date</source>
        <translation>Prüfer, Unterschrift und Datum</translation>
    </message>
    <message>
        <source>Issuer</source>
        <translation>Herausgeber</translation>
    </message>
    <message>
        <source>Its copy for printing is damaged.</source>
        <translation>Seine Druckkopie ist beschädigt.</translation>
    </message>
    <message>
        <source>Journal at printing: {0}</source>
        <translation>Journal beim Drucken: {0}</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Kit number</source>
        <translation>Bausatznummer</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <source>Lock</source>
        <translation>Sicherung</translation>
    </message>
    <message>
        <source>Look at</source>
        <translation>Ansehen</translation>
    </message>
    <message>
        <source>Marked</source>
        <translation>Markiert</translation>
    </message>
    <message>
        <source>Material and lot</source>
        <translation>Material und Charge</translation>
    </message>
    <message>
        <source>Materials and lots</source>
        <translation>Materialien und Chargen</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>Measurement</source>
        <translation>Messung</translation>
    </message>
    <message>
        <source>Measurements</source>
        <translation>Messungen</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Verfahren</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Muster</translation>
    </message>
    <message>
        <source>Must</source>
        <translation>Muss</translation>
    </message>
    <message>
        <source>No closing that was begun must stay open.</source>
        <translation>Keine begonnene Schließstelle muss offen bleiben.</translation>
    </message>
    <message>
        <source>No copy of {0} could be made: {1}.</source>
        <translation>Von {0} konnte keine Kopie gemacht werden: {1}.</translation>
    </message>
    <message>
        <source>No deviation from the drawings is on record for this region.</source>
        <translation>Für diesen Bereich ist keine Abweichung von den Zeichnungen verzeichnet.</translation>
    </message>
    <message>
        <source>No fastener is on record for this region.</source>
        <translation>Für diesen Bereich ist kein Verbindungselement verzeichnet.</translation>
    </message>
    <message>
        <source>No list was kept for this closing; these are the usual points for a structure of its kind.</source>
        <translation>Für diese Schließstelle gibt es keine Liste; dies sind die üblichen Punkte für eine Struktur dieser Art.</translation>
    </message>
    <message>
        <source>No measurement is on record for this region.</source>
        <translation>Für diesen Bereich ist keine Messung verzeichnet.</translation>
    </message>
    <message>
        <source>No part has the code or name {0}.</source>
        <translation>Kein Teil hat das Kürzel oder den Namen {0}.</translation>
    </message>
    <message>
        <source>No part is called “{0}”; it goes into the note.</source>
        <translation>Kein Teil heißt „{0}“; es kommt in die Anmerkung.</translation>
    </message>
    <message>
        <source>No photograph of the open structure is on record.</source>
        <translation>Kein Foto der offenen Struktur ist verzeichnet.</translation>
    </message>
    <message>
        <source>No squawk is on record for this region.</source>
        <translation>Für diesen Bereich ist keine Beanstandung verzeichnet.</translation>
    </message>
    <message>
        <source>No step is called “{0}”; nothing is ticked for it.</source>
        <translation>Kein Schritt heißt „{0}“; dafür wird nichts abgehakt.</translation>
    </message>
    <message>
        <source>No torque or measurement of this region names its tool.</source>
        <translation>Kein Drehmoment und keine Messung dieses Bereichs nennt das Werkzeug.</translation>
    </message>
    <message>
        <source>No use of material is on record for this region.</source>
        <translation>Für diesen Bereich ist kein Materialeinsatz verzeichnet.</translation>
    </message>
    <message>
        <source>No work on record is open in the way of these closings.</source>
        <translation>Keine verzeichnete Arbeit steht diesen Schließstellen im Weg.</translation>
    </message>
    <message>
        <source>No work on this region is on record.</source>
        <translation>Für diesen Bereich ist keine Arbeit verzeichnet.</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>Not decided</source>
        <translation>Nicht entschieden</translation>
    </message>
    <message>
        <source>Not decided, asked on {0} of {1}</source>
        <translation>Nicht entschieden, angefragt am {0} bei {1}</translation>
    </message>
    <message>
        <source>Not on record</source>
        <translation>Nicht verzeichnet</translation>
    </message>
    <message>
        <source>Not signed</source>
        <translation>Nicht unterschrieben</translation>
    </message>
    <message>
        <source>Nothing is on record about the inside: no step, no session, no photograph</source>
        <translation>Über das Innere ist nichts verzeichnet: kein Schritt, keine Arbeit, kein Foto</translation>
    </message>
    <message>
        <source>Nothing on record of</source>
        <translation>Nichts verzeichnet über</translation>
    </message>
    <message>
        <source>Nothing waits for an inspector or adviser at present.</source>
        <translation>Zurzeit wartet nichts auf einen Prüfer oder Berater.</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>On record</source>
        <translation>Verzeichnet</translation>
    </message>
    <message>
        <source>One document holds no more pictures.</source>
        <translation>Ein Dokument fasst nicht mehr Bilder.</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Offen</translation>
    </message>
    <message>
        <source>Open behind “{1}”, which is closed: {0}</source>
        <translation>Offen hinter „{1}“, die geschlossen ist: {0}</translation>
    </message>
    <message>
        <source>Opened</source>
        <translation>Geöffnet</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Photo {0}</source>
        <translation>Foto {0}</translation>
    </message>
    <message>
        <source>Photographs of the open structure</source>
        <translation>Fotos der offenen Struktur</translation>
    </message>
    <message>
        <source>Photos linked that were there already</source>
        <translation>Zugeordnete Fotos, die schon da waren</translation>
    </message>
    <message>
        <source>Photos {0}</source>
        <translation>Fotos {0}</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Stelle</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>Geplant</translation>
    </message>
    <message>
        <source>Planned: {0}</source>
        <translation>Geplant: {0}</translation>
    </message>
    <message>
        <source>Project begun</source>
        <translation>Projekt begonnen</translation>
    </message>
    <message>
        <source>Qty</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>Readiness</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Reason given</source>
        <translation>Angegebener Grund</translation>
    </message>
    <message>
        <source>Reason: {0}</source>
        <translation>Grund: {0}</translation>
    </message>
    <message>
        <source>Received</source>
        <translation>Erhalten</translation>
    </message>
    <message>
        <source>Registration</source>
        <translation>Kennzeichen</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Bericht</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>Rules</source>
        <translation>Regeln</translation>
    </message>
    <message>
        <source>Sample</source>
        <translation>Probe</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Werk-/Seriennummer</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Arbeiten</translation>
    </message>
    <message>
        <source>Sheets signed before</source>
        <translation>Früher unterschriebene Blätter</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Unterschrift</translation>
    </message>
    <message>
        <source>Signed before: {0}, {1}, {2}</source>
        <translation>Früher unterschrieben: {0}, {1}, {2}</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Squawk</source>
        <translation>Beanstandung</translation>
    </message>
    <message>
        <source>Squawk {0} is for an adviser or an inspector to verify; {1} is neither.</source>
        <translation>Beanstandung {0} muss ein Berater oder Prüfer nachprüfen; {1} ist keines von beiden.</translation>
    </message>
    <message>
        <source>Squawk {0} is for an inspector to verify; {1} is none.</source>
        <translation>Beanstandung {0} muss ein Prüfer nachprüfen; {1} ist keiner.</translation>
    </message>
    <message>
        <source>Squawk {0} matters for airworthiness: only a designer, an adviser or an inspector may accept it as it is, and {1} is none of them.</source>
        <translation>Beanstandung {0} betrifft die Lufttüchtigkeit: nur ein Konstrukteur, Berater oder Prüfer darf sie unverändert annehmen, und {1} ist nichts davon.</translation>
    </message>
    <message>
        <source>Squawks</source>
        <translation>Beanstandungen</translation>
    </message>
    <message>
        <source>Standing</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>Begonnen</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>State of the records on {0}. This is the builder&apos;s record, not an approval.</source>
        <translation>Stand der Aufzeichnungen am {0}. Dies sind die Aufzeichnungen des Erbauers, keine Zulassung.</translation>
    </message>
    <message>
        <source>Taken</source>
        <translation>Aufgenommen</translation>
    </message>
    <message>
        <source>The authority&apos;s own report form governs, number:</source>
        <translation>Maßgebend ist das Formular der Behörde, Nummer:</translation>
    </message>
    <message>
        <source>The character U+0000 is not allowed in a text.</source>
        <translation>Das Zeichen U+0000 ist in einem Text nicht erlaubt.</translation>
    </message>
    <message>
        <source>The document is a list, not an object.</source>
        <translation>Das Dokument ist eine Liste, kein Objekt.</translation>
    </message>
    <message>
        <source>The document is {0}, not an object.</source>
        <translation>Das Dokument ist {0}, kein Objekt.</translation>
    </message>
    <message>
        <source>The field {0} is missing.</source>
        <translation>Das Feld {0} fehlt.</translation>
    </message>
    <message>
        <source>The file is not the one that the record describes; its SHA-256 is {0}.</source>
        <translation>Die Datei ist nicht die beschriebene; ihr SHA-256 ist {0}.</translation>
    </message>
    <message>
        <source>The file name is not one that a file of a project may have.</source>
        <translation>So darf eine Datei eines Projekts nicht heißen.</translation>
    </message>
    <message>
        <source>The file name leads out of the document&apos;s folder.</source>
        <translation>Der Dateiname führt aus dem Ordner des Dokuments hinaus.</translation>
    </message>
    <message>
        <source>The id {0} is that of {1} already.</source>
        <translation>Die Kennung {0} gehört schon zu {1}.</translation>
    </message>
    <message>
        <source>The inspector&apos;s list</source>
        <translation>Die Liste des Prüfers</translation>
    </message>
    <message>
        <source>The list is empty.</source>
        <translation>Die Liste ist leer.</translation>
    </message>
    <message>
        <source>The newest photograph is older than the last work inside</source>
        <translation>Das neueste Foto ist älter als die letzte Arbeit im Inneren</translation>
    </message>
    <message>
        <source>The profile copy is of {0}, but the project goes by {1}.</source>
        <translation>Die Profilkopie ist von {0}, aber das Projekt folgt {1}.</translation>
    </message>
    <message>
        <source>The project goes by another rule profile.</source>
        <translation>Das Projekt folgt einem anderen Regelprofil.</translation>
    </message>
    <message>
        <source>The project has another file of this name.</source>
        <translation>Das Projekt hat eine andere Datei dieses Namens.</translation>
    </message>
    <message>
        <source>The project has this record with other content; they differ in {0} first.</source>
        <translation>Das Projekt hat diesen Datensatz mit anderem Inhalt; der erste Unterschied ist {0}.</translation>
    </message>
    <message>
        <source>The project is missing.</source>
        <translation>Das Projekt fehlt.</translation>
    </message>
    <message>
        <source>The project on record is another one; they differ in {0} first.</source>
        <translation>Das verzeichnete Projekt ist ein anderes; der erste Unterschied ist {0}.</translation>
    </message>
    <message>
        <source>The project was opened for reading only.</source>
        <translation>Das Projekt ist nur zum Lesen geöffnet.</translation>
    </message>
    <message>
        <source>The project&apos;s folder cannot be written.</source>
        <translation>In den Ordner des Projekts kann nicht geschrieben werden.</translation>
    </message>
    <message>
        <source>The row has {0} cells, but the header only {1}.</source>
        <translation>Die Zeile hat {0} Zellen, die Kopfzeile nur {1}.</translation>
    </message>
    <message>
        <source>The sheet to sign</source>
        <translation>Das Blatt zum Unterschreiben</translation>
    </message>
    <message>
        <source>There are several parts called {0}; name it by code or id.</source>
        <translation>Mehrere Teile heißen {0}; nennen Sie das Teil mit Kürzel oder Kennung.</translation>
    </message>
    <message>
        <source>There are several people called {0}; name them by id.</source>
        <translation>Mehrere Personen heißen {0}; nennen Sie die Person mit der Kennung.</translation>
    </message>
    <message>
        <source>There is no field of this name.</source>
        <translation>Es gibt kein Feld dieses Namens.</translation>
    </message>
    <message>
        <source>There is no list for this closing.</source>
        <translation>Für diese Schließstelle gibt es keine Liste.</translation>
    </message>
    <message>
        <source>There is no rule profile {0}; there are {1}.</source>
        <translation>Es gibt kein Regelprofil {0}; vorhanden sind {1}.</translation>
    </message>
    <message>
        <source>There is nobody called {0}.</source>
        <translation>Niemand heißt {0}.</translation>
    </message>
    <message>
        <source>There is nothing of this name in a document.</source>
        <translation>So heißt nichts in einem Dokument.</translation>
    </message>
    <message>
        <source>There is nothing to redo.</source>
        <translation>Es gibt nichts zu wiederholen.</translation>
    </message>
    <message>
        <source>There is nothing to undo.</source>
        <translation>Es gibt nichts zurückzunehmen.</translation>
    </message>
    <message>
        <source>This closing has no hold point.</source>
        <translation>Diese Schließstelle hat keinen Haltepunkt.</translation>
    </message>
    <message>
        <source>This field must not be null.</source>
        <translation>Dieses Feld darf nicht null sein.</translation>
    </message>
    <message>
        <source>This field stands twice.</source>
        <translation>Dieses Feld steht zweimal da.</translation>
    </message>
    <message>
        <source>This is a list, not an object.</source>
        <translation>Das ist eine Liste, kein Objekt.</translation>
    </message>
    <message>
        <source>This is a list, which does not belong here.</source>
        <translation>Das ist eine Liste, die nicht hierher gehört.</translation>
    </message>
    <message>
        <source>This is an object, which does not belong here.</source>
        <translation>Das ist ein Objekt, das nicht hierher gehört.</translation>
    </message>
    <message>
        <source>This is no document of format {0}: {1} is missing.</source>
        <translation>Das ist kein Dokument im Format {0}: {1} fehlt.</translation>
    </message>
    <message>
        <source>This photograph could not be printed.</source>
        <translation>Dieses Foto konnte nicht gedruckt werden.</translation>
    </message>
    <message>
        <source>This stands twice in the document.</source>
        <translation>Das steht zweimal im Dokument.</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Time not written down</source>
        <translation>Zeit nicht aufgeschrieben</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>To be closed</source>
        <translation>Zu schließen</translation>
    </message>
    <message>
        <source>Too few photographs of the inside</source>
        <translation>Zu wenige Fotos vom Inneren</translation>
    </message>
    <message>
        <source>Tool</source>
        <translation>Werkzeug</translation>
    </message>
    <message>
        <source>Tool calibration</source>
        <translation>Kalibrierung der Werkzeuge</translation>
    </message>
    <message>
        <source>Torque</source>
        <translation>Drehmoment</translation>
    </message>
    <message>
        <source>Triangle filled: airworthiness. Half filled: workmanship. Outline: cosmetic. Open ones come first.</source>
        <translation>Dreieck gefüllt: Lufttüchtigkeit. Halb gefüllt: Ausführung. Umriss: Aussehen. Offene stehen zuerst.</translation>
    </message>
    <message>
        <source>Type</source>
        <translation>Typ</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Used</source>
        <translation>Verwendet</translation>
    </message>
    <message>
        <source>Used here</source>
        <translation>Hier verwendet</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Verified</source>
        <translation>Nachgeprüft</translation>
    </message>
    <message>
        <source>Videos, to be asked for</source>
        <translation>Videos, auf Anfrage</translation>
    </message>
    <message>
        <source>Visit</source>
        <translation>Besuch</translation>
    </message>
    <message>
        <source>Visits</source>
        <translation>Besuche</translation>
    </message>
    <message>
        <source>Waits for</source>
        <translation>Wartet auf</translation>
    </message>
    <message>
        <source>Waived</source>
        <translation>Erlassen</translation>
    </message>
    <message>
        <source>Waived on {0} by {1}: {2}</source>
        <translation>Erlassen am {0} von {1}: {2}</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>What is asked</source>
        <translation>Worum gebeten wird</translation>
    </message>
    <message>
        <source>What is asked of the records</source>
        <translation>Was von den Aufzeichnungen verlangt wird</translation>
    </message>
    <message>
        <source>What is open</source>
        <translation>Was offen ist</translation>
    </message>
    <message>
        <source>What was missing</source>
        <translation>Was fehlte</translation>
    </message>
    <message>
        <source>What would clear it</source>
        <translation>Was es erledigen würde</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>Who did it</source>
        <translation>Wer es getan hat</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Work log</source>
        <translation>Bautagebuch</translation>
    </message>
    <message>
        <source>Worst of {1} closings on {0}. This is the builder&apos;s record, not an approval.</source>
        <translation>Schlechtester Stand von {1} Schließstellen am {0}. Dies sind die Aufzeichnungen des Erbauers, keine Zulassung.</translation>
    </message>
    <message>
        <source>about {0}</source>
        <translation>etwa {0}</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>accepted with findings</source>
        <translation>angenommen mit Feststellungen</translation>
    </message>
    <message>
        <source>advice</source>
        <translation>Rat</translation>
    </message>
    <message>
        <source>adviser</source>
        <translation>Berater</translation>
    </message>
    <message>
        <source>airworthiness</source>
        <translation>Lufttüchtigkeit</translation>
    </message>
    <message>
        <source>an inspection list</source>
        <translation>eine Prüfliste</translation>
    </message>
    <message>
        <source>applies</source>
        <translation>trifft zu</translation>
    </message>
    <message>
        <source>approved</source>
        <translation>genehmigt</translation>
    </message>
    <message>
        <source>assembly</source>
        <translation>Zusammenbau</translation>
    </message>
    <message>
        <source>builder</source>
        <translation>Erbauer</translation>
    </message>
    <message>
        <source>bulletin</source>
        <translation>Bulletin</translation>
    </message>
    <message>
        <source>bulletin {0}, {1}</source>
        <translation>Bulletin {0}, {1}</translation>
    </message>
    <message>
        <source>by message</source>
        <translation>per Nachricht</translation>
    </message>
    <message>
        <source>by photograph</source>
        <translation>per Foto</translation>
    </message>
    <message>
        <source>by video</source>
        <translation>per Video</translation>
    </message>
    <message>
        <source>calibrated_on</source>
        <translation>kalibriert am</translation>
    </message>
    <message>
        <source>can be opened again</source>
        <translation>kann wieder geöffnet werden</translation>
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
        <translation>diese zuerst schließen</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>geschlossen</translation>
    </message>
    <message>
        <source>closed before these records began; the inspector decides</source>
        <translation>geschlossen, bevor diese Aufzeichnungen begannen; der Prüfer entscheidet</translation>
    </message>
    <message>
        <source>closed by the maker</source>
        <translation>vom Hersteller geschlossen</translation>
    </message>
    <message>
        <source>closed with gaps</source>
        <translation>mit Lücken geschlossen</translation>
    </message>
    <message>
        <source>closing</source>
        <translation>Schließstelle</translation>
    </message>
    <message>
        <source>commercial help</source>
        <translation>bezahlte Hilfe</translation>
    </message>
    <message>
        <source>comply and record it, or record that it does not apply</source>
        <translation>erfüllen und eintragen, oder eintragen, dass es nicht zutrifft</translation>
    </message>
    <message>
        <source>correct it and have it verified, or have it accepted</source>
        <translation>beheben und nachprüfen lassen, oder annehmen lassen</translation>
    </message>
    <message>
        <source>correct it and measure again, or record who accepts it and on what basis</source>
        <translation>berichtigen und neu messen, oder eintragen, wer es auf welcher Grundlage annimmt</translation>
    </message>
    <message>
        <source>cosmetic</source>
        <translation>Aussehen</translation>
    </message>
    <message>
        <source>credit task</source>
        <translation>Aufgabe des überwiegenden Teils</translation>
    </message>
    <message>
        <source>cure times are known</source>
        <translation>Aushärtezeiten sind bekannt</translation>
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
        <source>deviation {0}, {1}</source>
        <translation>Abweichung {0}, {1}</translation>
    </message>
    <message>
        <source>deviations {0}</source>
        <translation>Abweichungen {0}</translation>
    </message>
    <message>
        <source>directive</source>
        <translation>Anweisung</translation>
    </message>
    <message>
        <source>directive {0}, {1}</source>
        <translation>Anweisung {0}, {1}</translation>
    </message>
    <message>
        <source>do it, or drop it</source>
        <translation>erledigen oder streichen</translation>
    </message>
    <message>
        <source>does not apply</source>
        <translation>trifft nicht zu</translation>
    </message>
    <message>
        <source>drawing change</source>
        <translation>Zeichnungsänderung</translation>
    </message>
    <message>
        <source>drawing change {0}, {1}</source>
        <translation>Zeichnungsänderung {0}, {1}</translation>
    </message>
    <message>
        <source>due_on</source>
        <translation>fällig am</translation>
    </message>
    <message>
        <source>earlier builder</source>
        <translation>früherer Erbauer</translation>
    </message>
    <message>
        <source>enter its cure time, from the lot&apos;s data sheet</source>
        <translation>Aushärtezeit aus dem Datenblatt der Charge eintragen</translation>
    </message>
    <message>
        <source>enter the findings of the rejection as squawks of that inspection</source>
        <translation>die Feststellungen der Ablehnung als Beanstandungen dieser Prüfung eintragen</translation>
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
        <translation>jeder Kasten im Inneren ist geschlossen</translation>
    </message>
    <message>
        <source>every bulletin that applies is complied with</source>
        <translation>jedes zutreffende Bulletin ist erfüllt</translation>
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
        <translation>jede von Hand gemachte Sicherung sitzt</translation>
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
        <translation>jede Beanstandung ist nachgeprüft oder angenommen</translation>
    </message>
    <message>
        <source>every step is done or dropped</source>
        <translation>jeder Schritt ist erledigt oder gestrichen</translation>
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
        <translation>alles, was aushärtet, ist ausgehärtet</translation>
    </message>
    <message>
        <source>expense</source>
        <translation>Ausgabe</translation>
    </message>
    <message>
        <source>fabrication</source>
        <translation>Herstellung</translation>
    </message>
    <message>
        <source>fastener</source>
        <translation>Verbindungselement</translation>
    </message>
    <message>
        <source>fasteners and torques</source>
        <translation>Verbindungselemente und Drehmomente</translation>
    </message>
    <message>
        <source>file</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>final inspection</source>
        <translation>Endprüfung</translation>
    </message>
    <message>
        <source>finding {0}</source>
        <translation>Feststellung {0}</translation>
    </message>
    <message>
        <source>finishing</source>
        <translation>Oberfläche</translation>
    </message>
    <message>
        <source>fit it and record the day</source>
        <translation>einbauen und den Tag eintragen</translation>
    </message>
    <message>
        <source>flight</source>
        <translation>Flug</translation>
    </message>
    <message>
        <source>from a kit</source>
        <translation>aus einem Bausatz</translation>
    </message>
    <message>
        <source>from plans</source>
        <translation>nach Plänen</translation>
    </message>
    <message>
        <source>have it signed</source>
        <translation>unterschreiben lassen</translation>
    </message>
    <message>
        <source>have it signed again, or say of each session whether it changed what was inspected</source>
        <translation>neu unterschreiben lassen, oder bei jeder Arbeit sagen, ob sie das Geprüfte verändert hat</translation>
    </message>
    <message>
        <source>have it verified</source>
        <translation>nachprüfen lassen</translation>
    </message>
    <message>
        <source>have the inspector accept it late, or open it again</source>
        <translation>nachträglich vom Prüfer annehmen lassen, oder wieder öffnen</translation>
    </message>
    <message>
        <source>helper</source>
        <translation>Helfer</translation>
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
        <translation>Prüfer</translation>
    </message>
    <message>
        <source>jam nut</source>
        <translation>Kontermutter</translation>
    </message>
    <message>
        <source>letter</source>
        <translation>Schreiben</translation>
    </message>
    <message>
        <source>letter {0}, {1}</source>
        <translation>Schreiben {0}, {1}</translation>
    </message>
    <message>
        <source>lines of fasteners {0}</source>
        <translation>Zeilen Verbindungselemente {0}</translation>
    </message>
    <message>
        <source>loading case</source>
        <translation>Beladefall</translation>
    </message>
    <message>
        <source>lock it and record the day</source>
        <translation>sichern und den Tag eintragen</translation>
    </message>
    <message>
        <source>lock tab</source>
        <translation>Sicherungsblech</translation>
    </message>
    <message>
        <source>log entry</source>
        <translation>Bautagebucheintrag</translation>
    </message>
    <message>
        <source>look, and tick it or say that it does not apply</source>
        <translation>nachsehen und abhaken, oder sagen, dass es nicht zutrifft</translation>
    </message>
    <message>
        <source>mark it and record the day</source>
        <translation>markieren und den Tag eintragen</translation>
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
        <translation>Materialeinsatz</translation>
    </message>
    <message>
        <source>measure it and record the value</source>
        <translation>messen und den Wert eintragen</translation>
    </message>
    <message>
        <source>measurement</source>
        <translation>Messung</translation>
    </message>
    <message>
        <source>measurements {0}</source>
        <translation>Messungen {0}</translation>
    </message>
    <message>
        <source>met</source>
        <translation>erfüllt</translation>
    </message>
    <message>
        <source>mix {0}</source>
        <translation>Mischung {0}</translation>
    </message>
    <message>
        <source>new {0}</source>
        <translation>neu: {0}</translation>
    </message>
    <message>
        <source>no box within was closed with gaps</source>
        <translation>kein Kasten im Inneren wurde mit Lücken geschlossen</translation>
    </message>
    <message>
        <source>no calibration on record</source>
        <translation>keine Kalibrierung verzeichnet</translation>
    </message>
    <message>
        <source>no document on record in which the maker names it as closed</source>
        <translation>kein Dokument verzeichnet, in dem der Hersteller sie als geschlossen nennt</translation>
    </message>
    <message>
        <source>no material was used past its date</source>
        <translation>kein Material wurde nach seinem Datum verwendet</translation>
    </message>
    <message>
        <source>no rejected deviation is left as built</source>
        <translation>keine abgelehnte Abweichung ist so gebaut geblieben</translation>
    </message>
    <message>
        <source>no sample</source>
        <translation>keine Probe</translation>
    </message>
    <message>
        <source>no sheet filed</source>
        <translation>kein Blatt abgelegt</translation>
    </message>
    <message>
        <source>no test sample failed</source>
        <translation>keine Probe ist durchgefallen</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>not fitted</source>
        <translation>nicht eingebaut</translation>
    </message>
    <message>
        <source>not locked</source>
        <translation>nicht gesichert</translation>
    </message>
    <message>
        <source>not looked into</source>
        <translation>nicht geprüft</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>not met</source>
        <translation>nicht erfüllt</translation>
    </message>
    <message>
        <source>not needed</source>
        <translation>nicht nötig</translation>
    </message>
    <message>
        <source>not torqued</source>
        <translation>nicht angezogen</translation>
    </message>
    <message>
        <source>nothing on record</source>
        <translation>nichts verzeichnet</translation>
    </message>
    <message>
        <source>nothing on record against closing</source>
        <translation>nichts verzeichnet gegen das Schließen</translation>
    </message>
    <message>
        <source>nothing open is filed on a larger assembly</source>
        <translation>nichts Offenes ist bei einer größeren Baugruppe abgelegt</translation>
    </message>
    <message>
        <source>nothing was changed after a signature</source>
        <translation>nach einer Unterschrift wurde nichts verändert</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>other</source>
        <translation>Sonstiges</translation>
    </message>
    <message>
        <source>own check</source>
        <translation>eigene Prüfung</translation>
    </message>
    <message>
        <source>packing line</source>
        <translation>Packzeile</translation>
    </message>
    <message>
        <source>packing lists</source>
        <translation>Packlisten</translation>
    </message>
    <message>
        <source>page {0} of {1}</source>
        <translation>Seite {0} von {1}</translation>
    </message>
    <message>
        <source>paid</source>
        <translation>bezahlt</translation>
    </message>
    <message>
        <source>part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>permanent</source>
        <translation>dauerhaft</translation>
    </message>
    <message>
        <source>person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>photograph it as it is now</source>
        <translation>so fotografieren, wie es jetzt ist</translation>
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
        <translation>Fotos {0}</translation>
    </message>
    <message>
        <source>planning</source>
        <translation>Planung</translation>
    </message>
    <message>
        <source>pre-cover inspection</source>
        <translation>Prüfung vor dem Schließen</translation>
    </message>
    <message>
        <source>premature end</source>
        <translation>vorzeitiges Ende</translation>
    </message>
    <message>
        <source>project</source>
        <translation>Projekt</translation>
    </message>
    <message>
        <source>record the decision and its basis</source>
        <translation>die Entscheidung und ihre Grundlage eintragen</translation>
    </message>
    <message>
        <source>record what has been received</source>
        <translation>eintragen, was angekommen ist</translation>
    </message>
    <message>
        <source>record what was done, however roughly</source>
        <translation>eintragen, was getan wurde, und sei es grob</translation>
    </message>
    <message>
        <source>rejected</source>
        <translation>abgelehnt</translation>
    </message>
    <message>
        <source>replace it, or record who accepts it and on what basis</source>
        <translation>ersetzen, oder eintragen, wer es auf welcher Grundlage annimmt</translation>
    </message>
    <message>
        <source>rework</source>
        <translation>Nacharbeit</translation>
    </message>
    <message>
        <source>safety wire</source>
        <translation>Sicherungsdraht</translation>
    </message>
    <message>
        <source>sample failed</source>
        <translation>Probe durchgefallen</translation>
    </message>
    <message>
        <source>sample good</source>
        <translation>Probe gut</translation>
    </message>
    <message>
        <source>sample kept</source>
        <translation>Probe aufbewahrt</translation>
    </message>
    <message>
        <source>say where it is, or that it is not inside</source>
        <translation>sagen, wo es ist, oder dass es nicht im Inneren ist</translation>
    </message>
    <message>
        <source>seen on site</source>
        <translation>vor Ort gesehen</translation>
    </message>
    <message>
        <source>self-locking nut</source>
        <translation>selbstsichernde Mutter</translation>
    </message>
    <message>
        <source>sign-off</source>
        <translation>Abzeichnung</translation>
    </message>
    <message>
        <source>signature of {0}</source>
        <translation>Unterschrift vom {0}</translation>
    </message>
    <message>
        <source>signature of {0} by {1}</source>
        <translation>Unterschrift vom {0} durch {1}</translation>
    </message>
    <message>
        <source>split pin</source>
        <translation>Splint</translation>
    </message>
    <message>
        <source>squawk</source>
        <translation>Beanstandung</translation>
    </message>
    <message>
        <source>squawk {0}</source>
        <translation>Beanstandung {0}</translation>
    </message>
    <message>
        <source>squawk {0}, {1}</source>
        <translation>Beanstandung {0}, {1}</translation>
    </message>
    <message>
        <source>squawks {0}</source>
        <translation>Beanstandungen {0}</translation>
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
        <translation>bleibt offen, wartet auf Ihre Unterschrift</translation>
    </message>
    <message>
        <source>stays open, work left</source>
        <translation>bleibt offen, noch Arbeit</translation>
    </message>
    <message>
        <source>step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>steps {0}</source>
        <translation>Schritte {0}</translation>
    </message>
    <message>
        <source>taken in on {0}</source>
        <translation>übernommen am {0}</translation>
    </message>
    <message>
        <source>technical visit</source>
        <translation>technischer Besuch</translation>
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
        <translation>diesen Ordner gibt es nicht</translation>
    </message>
    <message>
        <source>there is work on record</source>
        <translation>Arbeit ist verzeichnet</translation>
    </message>
    <message>
        <source>thread locker</source>
        <translation>Schraubenkleber</translation>
    </message>
    <message>
        <source>tool</source>
        <translation>Werkzeug</translation>
    </message>
    <message>
        <source>tool and debris check</source>
        <translation>Werkzeug- und Fremdkörperprüfung</translation>
    </message>
    <message>
        <source>tools were in calibration when used</source>
        <translation>Werkzeuge waren beim Gebrauch kalibriert</translation>
    </message>
    <message>
        <source>torque it again, or record who accepts it and on what basis</source>
        <translation>neu anziehen, oder eintragen, wer es auf welcher Grundlage annimmt</translation>
    </message>
    <message>
        <source>torque it and record the value</source>
        <translation>anziehen und den Wert eintragen</translation>
    </message>
    <message>
        <source>torqued</source>
        <translation>angezogen</translation>
    </message>
    <message>
        <source>undo it and record the day, or have it decided anew</source>
        <translation>rückgängig machen und den Tag eintragen, oder neu entscheiden lassen</translation>
    </message>
    <message>
        <source>undone on {0}</source>
        <translation>rückgängig gemacht am {0}</translation>
    </message>
    <message>
        <source>uses of material {0}</source>
        <translation>Materialeinsätze {0}</translation>
    </message>
    <message>
        <source>wait until the cure time has passed</source>
        <translation>warten, bis die Aushärtezeit vorbei ist</translation>
    </message>
    <message>
        <source>weighing</source>
        <translation>Wägung</translation>
    </message>
    <message>
        <source>work on {0}</source>
        <translation>Arbeit an {0}</translation>
    </message>
    <message>
        <source>work sessions</source>
        <translation>Arbeiten</translation>
    </message>
    <message>
        <source>work sessions {0}</source>
        <translation>Arbeiten {0}</translation>
    </message>
    <message>
        <source>workmanship</source>
        <translation>Ausführung</translation>
    </message>
    <message>
        <source>workshop visit</source>
        <translation>Werkstattbesuch</translation>
    </message>
    <message>
        <source>{0}</source>
        <translation>{0}</translation>
    </message>
    <message>
        <source>{0} at {1}</source>
        <translation>{0} an {1}</translation>
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
        <translation>{0} gehört zu {1} und kann {2} darüber nicht umschließen.</translation>
    </message>
    <message>
        <source>{0} box within</source>
        <translation>{0} Kasten im Inneren</translation>
    </message>
    <message>
        <source>{0} boxes within</source>
        <translation>{0} Kästen im Inneren</translation>
    </message>
    <message>
        <source>{0} built</source>
        <translation>{0} gebaut</translation>
    </message>
    <message>
        <source>{0} bulletin</source>
        <translation>{0} Bulletin</translation>
    </message>
    <message>
        <source>{0} bulletins</source>
        <translation>{0} Bulletins</translation>
    </message>
    <message>
        <source>{0} claims {1} × {2} pixels, more than can be shown.</source>
        <translation>{0} gibt {1} × {2} Bildpunkte an, mehr als gezeigt werden kann.</translation>
    </message>
    <message>
        <source>{0} closings by the factory have no document on record; the first is {1}</source>
        <translation>{0} Schließstellen des Herstellers haben kein Dokument; die erste ist {1}</translation>
    </message>
    <message>
        <source>{0} closings must stay open, 1 of them waits only for a signature.</source>
        <translation>{0} Schließstellen müssen offen bleiben, 1 davon wartet nur auf eine Unterschrift.</translation>
    </message>
    <message>
        <source>{0} closings must stay open, {1} of them wait only for a signature.</source>
        <translation>{0} Schließstellen müssen offen bleiben, {1} davon warten nur auf eine Unterschrift.</translation>
    </message>
    <message>
        <source>{0} closings must stay open.</source>
        <translation>{0} Schließstellen müssen offen bleiben.</translation>
    </message>
    <message>
        <source>{0} dated batch</source>
        <translation>{0} Ansatz mit Datum</translation>
    </message>
    <message>
        <source>{0} dated batches</source>
        <translation>{0} Ansätze mit Datum</translation>
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
        <translation>{0} trifft nicht zu, hat aber {1} Zehntel statt keiner.</translation>
    </message>
    <message>
        <source>{0} encloses nothing; a region encloses at least one part.</source>
        <translation>{0} umschließt nichts; ein Bereich umschließt mindestens ein Teil.</translation>
    </message>
    <message>
        <source>{0} filed above</source>
        <translation>{0} darüber abgelegt</translation>
    </message>
    <message>
        <source>{0} has a share that is not between 0 and 10 tenths.</source>
        <translation>{0} hat einen Anteil, der nicht zwischen 0 und 10 Zehnteln liegt.</translation>
    </message>
    <message>
        <source>{0} has an id that is not between 1 and {1}.</source>
        <translation>{0} hat eine Kennung, die nicht zwischen 1 und {1} liegt.</translation>
    </message>
    <message>
        <source>{0} has shares that add up to {1} tenths instead of 10.</source>
        <translation>{0} hat Anteile, die {1} Zehntel ergeben statt 10.</translation>
    </message>
    <message>
        <source>{0} has the code {1}, which the part with id {2} already has.</source>
        <translation>{0} hat das Kürzel {1}, das schon das Teil mit der Kennung {2} hat.</translation>
    </message>
    <message>
        <source>{0} has the number {1}, which the one with id {2} already has.</source>
        <translation>{0} hat die Nummer {1}, die schon die Kennung {2} hat.</translation>
    </message>
    <message>
        <source>{0} has {1} at work for {2} minutes, longer than it lasted.</source>
        <translation>{0}: {1} hätte {2} Minuten gearbeitet, länger als die Dauer.</translation>
    </message>
    <message>
        <source>{0} has {1} at work for {2} minutes.</source>
        <translation>{0}: {1} hätte {2} Minuten gearbeitet.</translation>
    </message>
    <message>
        <source>{0} has {1} {2}, which is before {3} {4}.</source>
        <translation>{0}: {1} {2} liegt vor {3} {4}.</translation>
    </message>
    <message>
        <source>{0} has {1}, but no {2}.</source>
        <translation>{0}: {1} ist da, aber {2} fehlt.</translation>
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
        <translation>{0} ist eine zweite Schließstelle des ganzen Flugzeugs; die erste ist {1}.</translation>
    </message>
    <message>
        <source>{0} is accepted late by {1}, which is of a hold point.</source>
        <translation>{0} ist durch {1} nachträglich angenommen, das zu einem Haltepunkt gehört.</translation>
    </message>
    <message>
        <source>{0} is accepted late by {1}, who may not do that under this rule profile; a builder who may must add remarks.</source>
        <translation>{0} ist nachträglich von {1} angenommen, was dieses Regelprofil nicht erlaubt; ein Erbauer, der es darf, muss Bemerkungen schreiben.</translation>
    </message>
    <message>
        <source>{0} is another format than {1}.</source>
        <translation>{0} ist ein anderes Format als {1}.</translation>
    </message>
    <message>
        <source>{0} is another version than {1}, the only one that is read here.</source>
        <translation>{0} ist eine andere Version als {1}, die einzige, die hier gelesen wird.</translation>
    </message>
    <message>
        <source>{0} is cut short: its end is missing. Copy it from the camera again.</source>
        <translation>{0} ist abgeschnitten: das Ende fehlt. Bitte noch einmal von der Kamera kopieren.</translation>
    </message>
    <message>
        <source>{0} is damaged and cannot be shown as a picture.</source>
        <translation>{0} ist beschädigt und kann nicht als Bild gezeigt werden.</translation>
    </message>
    <message>
        <source>{0} is filed on a larger part and may lie inside</source>
        <translation>{0} ist bei einem größeren Teil abgelegt und kann im Inneren liegen</translation>
    </message>
    <message>
        <source>{0} is for {1} or a higher role to sign, which {2} does not have.</source>
        <translation>{0} muss {1} oder eine höhere Rolle unterschreiben; {2} hat keine davon.</translation>
    </message>
    <message>
        <source>{0} is for {1} or a higher role to verify, which {2} does not have.</source>
        <translation>{0} muss {1} oder eine höhere Rolle nachprüfen; {2} hat keine davon.</translation>
    </message>
    <message>
        <source>{0} is in printing colours (CMYK); save it as an RGB picture first.</source>
        <translation>{0} ist in Druckfarben (CMYK); bitte zuerst als RGB-Bild speichern.</translation>
    </message>
    <message>
        <source>{0} is neither true nor false.</source>
        <translation>{0} ist weder wahr noch falsch.</translation>
    </message>
    <message>
        <source>{0} is no day or time that exists: YYYY-MM-DD or YYYY-MM-DDTHH:MM, from 1900 to 2199.</source>
        <translation>{0} ist kein Tag und keine Zeit, die es gibt: JJJJ-MM-TT oder JJJJ-MM-TTThh:mm, von 1900 bis 2199.</translation>
    </message>
    <message>
        <source>{0} is no id: a whole number from 1 to {1}, without fraction or exponent.</source>
        <translation>{0} ist keine Kennung: eine ganze Zahl von 1 bis {1}, ohne Bruch oder Exponent.</translation>
    </message>
    <message>
        <source>{0} is no list.</source>
        <translation>{0} ist keine Liste.</translation>
    </message>
    <message>
        <source>{0} is no number.</source>
        <translation>{0} ist keine Zahl.</translation>
    </message>
    <message>
        <source>{0} is no object.</source>
        <translation>{0} ist kein Objekt.</translation>
    </message>
    <message>
        <source>{0} is no text.</source>
        <translation>{0} ist kein Text.</translation>
    </message>
    <message>
        <source>{0} is no type of record.</source>
        <translation>{0} ist keine Art von Aufzeichnung.</translation>
    </message>
    <message>
        <source>{0} is no whole number from -{1} to {1}, without fraction or exponent.</source>
        <translation>{0} ist keine ganze Zahl von -{1} bis {1}, ohne Bruch oder Exponent.</translation>
    </message>
    <message>
        <source>{0} is none of {1}.</source>
        <translation>{0} ist nichts von: {1}.</translation>
    </message>
    <message>
        <source>{0} is not signed</source>
        <translation>{0} ist nicht unterschrieben</translation>
    </message>
    <message>
        <source>{0} is of the whole aircraft and encloses no part by name.</source>
        <translation>{0} gilt dem ganzen Flugzeug und umschließt kein Teil mit Namen.</translation>
    </message>
    <message>
        <source>{0} is of {1}, which was made in the factory and has no checks.</source>
        <translation>{0} gehört zu {1}, das in der Fabrik entstand und keine Prüfpunkte hat.</translation>
    </message>
    <message>
        <source>{0} is of {1}, which was made in the factory and has no hold points.</source>
        <translation>{0} gehört zu {1}, das in der Fabrik entstand und keine Haltepunkte hat.</translation>
    </message>
    <message>
        <source>{0} is required and an inspector&apos;s; {1} cannot waive it.</source>
        <translation>{0} ist vorgeschrieben und Sache eines Prüfers; {1} kann es nicht erlassen.</translation>
    </message>
    <message>
        <source>{0} is signed, but the signed sheet is not on record</source>
        <translation>{0} ist unterschrieben, aber das Blatt ist nicht abgelegt</translation>
    </message>
    <message>
        <source>{0} is to come after itself.</source>
        <translation>{0} soll nach sich selbst kommen.</translation>
    </message>
    <message>
        <source>{0} is to come after {1}, which in turn has to wait for it.</source>
        <translation>{0} soll nach {1} kommen, das seinerseits darauf warten muss.</translation>
    </message>
    <message>
        <source>{0} lacks {1} in row {2} of {3}.</source>
        <translation>{0}: {1} fehlt in Zeile {2} von {3}.</translation>
    </message>
    <message>
        <source>{0} lacks {1}.</source>
        <translation>{0}: {1} fehlt.</translation>
    </message>
    <message>
        <source>{0} lasts {1} minutes.</source>
        <translation>{0} dauert {1} Minuten.</translation>
    </message>
    <message>
        <source>{0} lasts {1} minutes; leave them empty when they are not known.</source>
        <translation>{0} dauert {1} Minuten; leer lassen, wenn unbekannt.</translation>
    </message>
    <message>
        <source>{0} lies inside itself.</source>
        <translation>{0} liegt in sich selbst.</translation>
    </message>
    <message>
        <source>{0} lies inside {1} and comes after a step that closes it, but does not say in may_follow that it can be done then.</source>
        <translation>{0} liegt in {1} und kommt nach einem Schritt, der sie schließt, sagt aber in may_follow nicht, dass es dann noch geht.</translation>
    </message>
    <message>
        <source>{0} lies inside {1}, which lies inside it in turn.</source>
        <translation>{0} liegt in {1}, das wiederum darin liegt.</translation>
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
        <translation>{0} betrifft die Lufttüchtigkeit; annehmen darf das nur ein Konstrukteur, Berater oder Prüfer, und {1} ist keiner.</translation>
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
        <source>{0} names {1} in {2}, which is not on record.</source>
        <translation>{0} nennt unter {2} {1}; das ist nicht verzeichnet.</translation>
    </message>
    <message>
        <source>{0} names {1} in {2}, which is withdrawn.</source>
        <translation>{0} nennt unter {2} {1}; das ist zurückgezogen.</translation>
    </message>
    <message>
        <source>{0} names {1} twice among those who worked.</source>
        <translation>{0} nennt {1} zweimal unter denen, die gearbeitet haben.</translation>
    </message>
    <message>
        <source>{0} open papers name no part; the first is {1}</source>
        <translation>{0} offene Unterlagen nennen kein Teil; die erste ist {1}</translation>
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
        <translation>{0} Teile haben keine Schließstelle; das erste ist {1}</translation>
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
        <translation>{0} Beanstandung</translation>
    </message>
    <message>
        <source>{0} squawks</source>
        <translation>{0} Beanstandungen</translation>
    </message>
    <message>
        <source>{0} step</source>
        <translation>{0} Schritt</translation>
    </message>
    <message>
        <source>{0} steps</source>
        <translation>{0} Schritte</translation>
    </message>
    <message>
        <source>{0} steps are not done whose closings are closed; the first is {1}</source>
        <translation>{0} Schritte sind nicht erledigt, obwohl ihre Schließstellen geschlossen sind; der erste ist {1}</translation>
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
        <translation>{0} wurde geschlossen, bevor diese Aufzeichnungen begannen; der Prüfer entscheidet</translation>
    </message>
    <message>
        <source>{0} was closed by the factory; its document is not on record</source>
        <translation>{0} wurde in der Fabrik geschlossen; das Dokument ist nicht abgelegt</translation>
    </message>
    <message>
        <source>{0} was closed with gaps</source>
        <translation>{0} wurde mit Lücken geschlossen</translation>
    </message>
    <message>
        <source>{0} was closed with gaps: {1}</source>
        <translation>{0} wurde mit Lücken geschlossen: {1}</translation>
    </message>
    <message>
        <source>{0} was not taken in, because the same file before it was not.</source>
        <translation>{0} wurde nicht übernommen, weil dieselbe Datei davor nicht übernommen wurde.</translation>
    </message>
    <message>
        <source>{0} was not taken in. {1}</source>
        <translation>{0} wurde nicht übernommen. {1}</translation>
    </message>
    <message>
        <source>{0} was not taken in: {1}.</source>
        <translation>{0} wurde nicht übernommen: {1}.</translation>
    </message>
    <message>
        <source>{0} was rejected, and its findings are not entered</source>
        <translation>{0} wurde abgelehnt, und die Feststellungen sind nicht eingetragen</translation>
    </message>
    <message>
        <source>{0} with a limit</source>
        <translation>{0} mit Grenzen</translation>
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
        <translation>{0} × {1} an {2}</translation>
    </message>
    <message>
        <source>{0} “{1}”</source>
        <translation>{0} „{1}“</translation>
    </message>
    <message>
        <source>{0}, a box inside, is still open</source>
        <translation>{0}, ein Kasten im Inneren, ist noch offen</translation>
    </message>
    <message>
        <source>{0}, lot {1}</source>
        <translation>{0}, Charge {1}</translation>
    </message>
    <message>
        <source>{0}.</source>
        <translation>{0}.</translation>
    </message>
    <message>
        <source>{0}: calibration is due on {1}</source>
        <translation>{0}: Kalibrierung fällig am {1}</translation>
    </message>
    <message>
        <source>{0}: calibration was due on {1}</source>
        <translation>{0}: Kalibrierung war fällig am {1}</translation>
    </message>
    <message>
        <source>{0}: cure time not on record</source>
        <translation>{0}: Aushärtezeit nicht verzeichnet</translation>
    </message>
    <message>
        <source>{0}: event {1} closes it while it is closed.</source>
        <translation>{0}: Ereignis {1} schließt, obwohl schon geschlossen ist.</translation>
    </message>
    <message>
        <source>{0}: event {1} must say either when it was closed or when it was opened.</source>
        <translation>{0}: Ereignis {1} muss sagen, wann geschlossen oder wann geöffnet wurde.</translation>
    </message>
    <message>
        <source>{0}: event {1} of {2} is listed after one of {3}.</source>
        <translation>{0}: Ereignis {1} vom {2} steht hinter einem vom {3}.</translation>
    </message>
    <message>
        <source>{0}: event {1} opens it while it is open.</source>
        <translation>{0}: Ereignis {1} öffnet, obwohl schon offen ist.</translation>
    </message>
    <message>
        <source>{0}: fixed, not verified</source>
        <translation>{0}: behoben, nicht nachgeprüft</translation>
    </message>
    <message>
        <source>{0}: no calibration on record</source>
        <translation>{0}: keine Kalibrierung verzeichnet</translation>
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
        <translation>{0}: die letzte Messung liegt außerhalb ihrer Grenzen</translation>
    </message>
    <message>
        <source>{0}: the test sample failed</source>
        <translation>{0}: die Probe ist durchgefallen</translation>
    </message>
    <message>
        <source>{0}: the tool was not in calibration</source>
        <translation>{0}: das Werkzeug war nicht kalibriert</translation>
    </message>
    <message>
        <source>{0}: the torque is outside its limits</source>
        <translation>{0}: das Drehmoment liegt außerhalb seiner Grenzen</translation>
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
        <translation>{0}: nach der Unterschrift wurde Arbeit eingetragen</translation>
    </message>
    <message>
        <source>{0}: {1}</source>
        <translation>{0}: {1}</translation>
    </message>
    <message>
        <source>{0}: {1} of {2} missing, expected on {3}</source>
        <translation>{0}: fehlend {1} von {2}, erwartet am {3}</translation>
    </message>
    <message>
        <source>“{0}” cannot be taken back: {1} {2} is no longer as it was left.</source>
        <translation>„{0}“ kann nicht zurückgenommen werden: {1} {2} ist nicht mehr, wie es war.</translation>
    </message>
    <message>
        <source>“{0}” cannot be taken back: “{1}” (row {2} of the journal) changed the same record later.</source>
        <translation>„{0}“ kann nicht zurückgenommen werden: „{1}“ (Zeile {2} des Journals) hat denselben Datensatz später geändert.</translation>
    </message>
    <message>
        <source>“{0}” may be several steps; say it with the part&apos;s code.</source>
        <translation>„{0}“ passt zu mehreren Schritten; mit dem Kürzel des Teils sagen.</translation>
    </message>
    <message>
        <source>“{0}” may be {1} or {2}; say more of the name.</source>
        <translation>„{0}“ kann {1} oder {2} sein; mehr vom Namen sagen.</translation>
    </message>
    <message>
        <source>The database did not keep what it was given; nothing was changed.</source>
        <translation>Die Datenbank hat nicht behalten, was sie bekam; nichts wurde geändert.</translation>
    </message>
    <message>
        <source>The pages could not be laid out.</source>
        <translation>Die Seiten konnten nicht gesetzt werden.</translation>
    </message>
    <message>
        <source>The typeface DejaVu Sans is not installed, so nothing can be printed. Install the package fonts-dejavu-core.</source>
        <translation>Die Schrift DejaVu Sans ist nicht installiert, deshalb kann nichts gedruckt werden. Bitte das Paket fonts-dejavu-core installieren.</translation>
    </message>
    <message>
        <source>an object is missing</source>
        <translation>ein Objekt fehlt</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>übliche Praxis</translation>
    </message>
    <message>
        <source>parts is no list, or nested too deep</source>
        <translation>parts ist keine Liste oder zu tief verschachtelt</translation>
    </message>
    <message>
        <source>This paper is what the builder wrote down. It is no approval and no finding that the work is right: the drawings, the authority and the inspector decide.</source>
        <translation>Dieses Papier ist, was der Erbauer aufgeschrieben hat. Es ist keine Zulassung und keine Feststellung, dass die Arbeit richtig ist: Zeichnungen, Behörde und Prüfer entscheiden.</translation>
    </message>
    <message>
        <source>{0} d</source>
        <translation>{0} d</translation>
    </message>
    <message>
        <source>{0} d {1}</source>
        <translation>{0} d {1}</translation>
    </message>
    <message>
        <source>{0} d {1} h</source>
        <translation>{0} d {1} h</translation>
    </message>
    <message>
        <source>% humidity</source>
        <translation>% Feuchte</translation>
    </message>
    <message>
        <source>A airworthiness, W workmanship, C cosmetic. The authority&apos;s own report form governs.</source>
        <translation>A Lufttüchtigkeit, W Ausführung, C Aussehen. Maßgebend ist das Formular der Behörde.</translation>
    </message>
    <message>
        <source>A, W or C</source>
        <translation>A, W oder C</translation>
    </message>
    <message>
        <source>As built, as the records say on {0}</source>
        <translation>Wie gebaut, nach den Aufzeichnungen vom {0}</translation>
    </message>
    <message>
        <source>As of {0}. What will be out of reach first comes first, then by severity and age.</source>
        <translation>Stand {0}. Zuerst, was zuerst unerreichbar wird, dann nach Schwere und Alter.</translation>
    </message>
    <message>
        <source>Closed in by</source>
        <translation>Umschlossen durch</translation>
    </message>
    <message>
        <source>Closings and signatures</source>
        <translation>Schließstellen und Unterschriften</translation>
    </message>
    <message>
        <source>Corrected on, by</source>
        <translation>Behoben am, von</translation>
    </message>
    <message>
        <source>Cure times hold at the maker&apos;s temperature; a cold workshop needs longer.</source>
        <translation>Aushärtezeiten gelten bei der Temperatur des Herstellers; eine kalte Werkstatt braucht länger.</translation>
    </message>
    <message>
        <source>DO NOT CLOSE</source>
        <translation>NICHT SCHLIESSEN</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Day, time</source>
        <translation>Tag, Zeit</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Erledigt</translation>
    </message>
    <message>
        <source>Drag in it</source>
        <translation>Laufmoment darin</translation>
    </message>
    <message>
        <source>Equipment</source>
        <translation>Ausrüstung</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Feststellung</translation>
    </message>
    <message>
        <source>Findings of a visit</source>
        <translation>Feststellungen eines Besuchs</translation>
    </message>
    <message>
        <source>First work on record</source>
        <translation>Erste verzeichnete Arbeit</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Hand-over book</source>
        <translation>Übergabebuch</translation>
    </message>
    <message>
        <source>Hours on record</source>
        <translation>Verzeichnete Stunden</translation>
    </message>
    <message>
        <source>In reach</source>
        <translation>Erreichbar</translation>
    </message>
    <message>
        <source>Kinds: fabrication, assembly, finishing, rework, inspection, planning, other. Pictures taken: say so beside the line.</source>
        <translation>Arten: Herstellung, Zusammenbau, Oberfläche, Nacharbeit, Prüfung, Planung, Sonstiges. Fotos gemacht: neben der Zeile vermerken.</translation>
    </message>
    <message>
        <source>Last chance before: {0}</source>
        <translation>Letzte Gelegenheit vor: {0}</translation>
    </message>
    <message>
        <source>Latest work on record</source>
        <translation>Letzte verzeichnete Arbeit</translation>
    </message>
    <message>
        <source>Lay-up and glue batches</source>
        <translation>Laminat- und Leimansätze</translation>
    </message>
    <message>
        <source>Limits are the maker&apos;s; general tables come after them. The reading is what the wrench showed, with the drag of a self-locking nut still in it.</source>
        <translation>Grenzen sind die des Herstellers; allgemeine Tabellen kommen danach. Die Ablesung ist, was der Schlüssel zeigte, das Laufmoment einer selbstsichernden Mutter noch darin.</translation>
    </message>
    <message>
        <source>List of squawks</source>
        <translation>Liste der Beanstandungen</translation>
    </message>
    <message>
        <source>Locked</source>
        <translation>Gesichert</translation>
    </message>
    <message>
        <source>Log entries</source>
        <translation>Einträge</translation>
    </message>
    <message>
        <source>Log of a week</source>
        <translation>Bautagebuch einer Woche</translation>
    </message>
    <message>
        <source>Looked at again by</source>
        <translation>Nachgeprüft von</translation>
    </message>
    <message>
        <source>Maker</source>
        <translation>Hersteller</translation>
    </message>
    <message>
        <source>Mix</source>
        <translation>Mischung</translation>
    </message>
    <message>
        <source>No closing is on record.</source>
        <translation>Keine Schließstelle ist verzeichnet.</translation>
    </message>
    <message>
        <source>No part is called “{0}”: the whole line became the title.</source>
        <translation>Kein Teil heißt „{0}“: die ganze Zeile wurde der Titel.</translation>
    </message>
    <message>
        <source>No squawk on record matches.</source>
        <translation>Keine verzeichnete Beanstandung passt.</translation>
    </message>
    <message>
        <source>No work is on record.</source>
        <translation>Keine Arbeit ist verzeichnet.</translation>
    </message>
    <message>
        <source>None of these closings must stay open, so there is no tag to print.</source>
        <translation>Keine dieser Schließstellen muss offen bleiben, also ist kein Anhänger zu drucken.</translation>
    </message>
    <message>
        <source>Nothing is left out.</source>
        <translation>Nichts ist weggelassen.</translation>
    </message>
    <message>
        <source>Nothing on record needs such a label, so there is none to print.</source>
        <translation>Nichts Verzeichnetes braucht so ein Etikett, also ist keins zu drucken.</translation>
    </message>
    <message>
        <source>Out of reach</source>
        <translation>Nicht erreichbar</translation>
    </message>
    <message>
        <source>Part number</source>
        <translation>Teilenummer</translation>
    </message>
    <message>
        <source>Part, place</source>
        <translation>Teil, Stelle</translation>
    </message>
    <message>
        <source>Part, step</source>
        <translation>Teil, Schritt</translation>
    </message>
    <message>
        <source>Part, with everything below it</source>
        <translation>Teil, mit allem darunter</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Place of work</source>
        <translation>Arbeitsort</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Ablesung</translation>
    </message>
    <message>
        <source>Removed</source>
        <translation>Entfernt</translation>
    </message>
    <message>
        <source>Report number</source>
        <translation>Nummer des Berichts</translation>
    </message>
    <message>
        <source>Sample kept, good</source>
        <translation>Probe aufbewahrt, gut</translation>
    </message>
    <message>
        <source>Say in a few words what is wrong.</source>
        <translation>In wenigen Worten sagen, was nicht stimmt.</translation>
    </message>
    <message>
        <source>Seen again</source>
        <translation>Wieder angesehen</translation>
    </message>
    <message>
        <source>Several parts fit “{0}”: the whole line became the title.</source>
        <translation>Mehrere Teile passen zu „{0}“: die ganze Zeile wurde der Titel.</translation>
    </message>
    <message>
        <source>Shelf labels</source>
        <translation>Regaletiketten</translation>
    </message>
    <message>
        <source>Signature of the builder, day</source>
        <translation>Unterschrift des Erbauers, Tag</translation>
    </message>
    <message>
        <source>Signature of the inspector, day</source>
        <translation>Unterschrift des Prüfers, Tag</translation>
    </message>
    <message>
        <source>Soon out of reach</source>
        <translation>Bald nicht erreichbar</translation>
    </message>
    <message>
        <source>Squawk {0} was fixed on {1}; nobody can have looked at that on {2}.</source>
        <translation>Beanstandung {0} wurde am {1} behoben; am {2} kann das niemand angesehen haben.</translation>
    </message>
    <message>
        <source>Squawk {0} was found on {1}, after {2}.</source>
        <translation>Beanstandung {0} wurde am {1} gefunden, nach dem {2}.</translation>
    </message>
    <message>
        <source>The log in short</source>
        <translation>Das Bautagebuch in Kürze</translation>
    </message>
    <message>
        <source>The text is too long for a QR code: </source>
        <translation>Der Text ist zu lang für einen QR-Code: </translation>
    </message>
    <message>
        <source>Tie-on tags</source>
        <translation>Anhänger</translation>
    </message>
    <message>
        <source>To reach it, open: {0}</source>
        <translation>Um heranzukommen, öffnen: {0}</translation>
    </message>
    <message>
        <source>Torque list</source>
        <translation>Drehmomentliste</translation>
    </message>
    <message>
        <source>Triangle filled: airworthiness. Half filled: workmanship. Outline: cosmetic.</source>
        <translation>Dreieck gefüllt: Lufttüchtigkeit. Halb gefüllt: Ausführung. Umriss: Aussehen.</translation>
    </message>
    <message>
        <source>Use before</source>
        <translation>Verwenden bis</translation>
    </message>
    <message>
        <source>Week from</source>
        <translation>Woche vom</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <source>What was looked at</source>
        <translation>Was angesehen wurde</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Who built it</source>
        <translation>Wer es gebaut hat</translation>
    </message>
    <message>
        <source>With</source>
        <translation>Mit</translation>
    </message>
    <message>
        <source>Wrench and its number</source>
        <translation>Schlüssel und seine Nummer</translation>
    </message>
    <message>
        <source>and {0} more on record</source>
        <translation>und {0} weitere verzeichnet</translation>
    </message>
    <message>
        <source>calibration due {0}</source>
        <translation>Kalibrierung fällig {0}</translation>
    </message>
    <message>
        <source>deviations from the drawings</source>
        <translation>Abweichungen von den Zeichnungen</translation>
    </message>
    <message>
        <source>fasteners and torque</source>
        <translation>Verbindungselemente und Drehmoment</translation>
    </message>
    <message>
        <source>of no part</source>
        <translation>keines Teils</translation>
    </message>
    <message>
        <source>opened {0}</source>
        <translation>angebrochen {0}</translation>
    </message>
    <message>
        <source>part number {0}</source>
        <translation>Teilenummer {0}</translation>
    </message>
    <message>
        <source>photographs of the structure</source>
        <translation>Fotos der Struktur</translation>
    </message>
    <message>
        <source>serial number {0}</source>
        <translation>Seriennummer {0}</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>use before {0}</source>
        <translation>verwenden bis {0}</translation>
    </message>
    <message>
        <source>uses of material</source>
        <translation>Materialeinsätze</translation>
    </message>
    <message>
        <source>waits for:</source>
        <translation>wartet auf:</translation>
    </message>
    <message>
        <source>{0} has not come yet.</source>
        <translation>{0} ist noch nicht gekommen.</translation>
    </message>
    <message>
        <source>{0} has not come yet; a squawk is found today or before.</source>
        <translation>{0} ist noch nicht gekommen; eine Beanstandung wird heute oder früher gefunden.</translation>
    </message>
    <message>
        <source>{0} · as the records say on {1}</source>
        <translation>{0} · nach den Aufzeichnungen vom {1}</translation>
    </message>
    <message>
        <source>All who worked</source>
        <translation>Alle, die gearbeitet haben</translation>
    </message>
    <message>
        <source>Began</source>
        <translation>Beginn</translation>
    </message>
    <message>
        <source>Builder&apos;s log</source>
        <translation>Bautagebuch des Erbauers</translation>
    </message>
    <message>
        <source>By date, {0}</source>
        <translation>Nach Datum, {0}</translation>
    </message>
    <message>
        <source>By kind of work</source>
        <translation>Nach Art der Arbeit</translation>
    </message>
    <message>
        <source>By month</source>
        <translation>Nach Monat</translation>
    </message>
    <message>
        <source>By part</source>
        <translation>Nach Teil</translation>
    </message>
    <message>
        <source>By part, {0}</source>
        <translation>Nach Teil, {0}</translation>
    </message>
    <message>
        <source>By person</source>
        <translation>Nach Person</translation>
    </message>
    <message>
        <source>By the clock</source>
        <translation>Nach der Uhr</translation>
    </message>
    <message>
        <source>Entries</source>
        <translation>Einträge</translation>
    </message>
    <message>
        <source>Entries without a time</source>
        <translation>Einträge ohne Zeit</translation>
    </message>
    <message>
        <source>Entries written down late</source>
        <translation>Nachgetragene Einträge</translation>
    </message>
    <message>
        <source>In all</source>
        <translation>Insgesamt</translation>
    </message>
    <message>
        <source>Kind of work</source>
        <translation>Art der Arbeit</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <source>Nobody on record is called “{0}”; it goes into the note.</source>
        <translation>Niemand Verzeichnetes heißt „{0}“; es kommt in die Anmerkung.</translation>
    </message>
    <message>
        <source>Nothing is on record for this time.</source>
        <translation>Für diese Zeit ist nichts verzeichnet.</translation>
    </message>
    <message>
        <source>Of it rework</source>
        <translation>Davon Nacharbeit</translation>
    </message>
    <message>
        <source>On no part</source>
        <translation>An keinem Teil</translation>
    </message>
    <message>
        <source>Own</source>
        <translation>Eigene</translation>
    </message>
    <message>
        <source>Place, unless an entry names another</source>
        <translation>Ort, wenn ein Eintrag keinen anderen nennt</translation>
    </message>
    <message>
        <source>Say at least two parts or times, with a plus sign between them.</source>
        <translation>Mindestens zwei Teile oder Zeiten nennen, mit einem Plus dazwischen.</translation>
    </message>
    <message>
        <source>Say the day, the part, or both.</source>
        <translation>Den Tag, das Teil oder beides nennen.</translation>
    </message>
    <message>
        <source>Sum</source>
        <translation>Summe</translation>
    </message>
    <message>
        <source>Sums</source>
        <translation>Summen</translation>
    </message>
    <message>
        <source>The entry has no time that could be split; give parts alone.</source>
        <translation>Der Eintrag hat keine Zeit zum Teilen; nur Teile nennen.</translation>
    </message>
    <message>
        <source>The log by date</source>
        <translation>Das Bautagebuch nach Datum</translation>
    </message>
    <message>
        <source>The log by part</source>
        <translation>Das Bautagebuch nach Teil</translation>
    </message>
    <message>
        <source>The pieces do not add up to the {0} minutes of the entry.</source>
        <translation>Die Stücke ergeben nicht die {0} Minuten des Eintrags.</translation>
    </message>
    <message>
        <source>With all below</source>
        <translation>Mit allem darunter</translation>
    </message>
    <message>
        <source>Work on no part</source>
        <translation>Arbeit an keinem Teil</translation>
    </message>
    <message>
        <source>Worked</source>
        <translation>Gearbeitet</translation>
    </message>
    <message>
        <source>changed what was inspected</source>
        <translation>hat Geprüftes verändert</translation>
    </message>
    <message>
        <source>entries: {0}; all who worked: {1}</source>
        <translation>Einträge: {0}; alle, die gearbeitet haben: {1}</translation>
    </message>
    <message>
        <source>from the first entry to the last</source>
        <translation>vom ersten bis zum letzten Eintrag</translation>
    </message>
    <message>
        <source>from {0}</source>
        <translation>ab {0}</translation>
    </message>
    <message>
        <source>from: {0}</source>
        <translation>aus: {0}</translation>
    </message>
    <message>
        <source>not on record</source>
        <translation>nicht verzeichnet</translation>
    </message>
    <message>
        <source>until {0}</source>
        <translation>bis {0}</translation>
    </message>
    <message>
        <source>{0} cannot have worked longer than the whole of it.</source>
        <translation>{0} kann nicht länger gearbeitet haben als das Ganze.</translation>
    </message>
    <message>
        <source>{0} has a number for {1} in row {2} of {3} that is too large.</source>
        <translation>{0}: die Zahl für {1} in Zeile {2} von {3} ist zu groß.</translation>
    </message>
    <message>
        <source>{0} has a number for {1} that is too large.</source>
        <translation>{0}: die Zahl für {1} ist zu groß.</translation>
    </message>
    <message>
        <source>{0} has {1} at work for {2} minutes; more than 10,000 hours do not fit into one entry.</source>
        <translation>{0}: {1} hätte {2} Minuten gearbeitet; mehr als 10.000 Stunden passen nicht in einen Eintrag.</translation>
    </message>
    <message>
        <source>{0} lasts {1} minutes; more than 10,000 hours do not fit into one entry.</source>
        <translation>{0} dauert {1} Minuten; mehr als 10.000 Stunden passen nicht in einen Eintrag.</translation>
    </message>
    <message>
        <source>{0} lies ahead; the log tells what was done.</source>
        <translation>{0} liegt in der Zukunft; das Bautagebuch sagt, was getan wurde.</translation>
    </message>
    <message>
        <source>{0} to {1}</source>
        <translation>{0} bis {1}</translation>
    </message>
    <message>
        <source>“{0}” is a second time; it goes into the note.</source>
        <translation>„{0}“ ist eine zweite Zeit; sie kommt in die Anmerkung.</translation>
    </message>
    <message>
        <source>“{0}” is more than a day has; write each day&apos;s work by itself.</source>
        <translation>„{0}“ ist mehr, als ein Tag hat; schreiben Sie die Arbeit jedes Tages für sich.</translation>
    </message>
    <message>
        <source>“{0}” is no length of time; leave it out when nobody knows.</source>
        <translation>„{0}“ ist keine Dauer; lassen Sie sie weg, wenn niemand sie weiß.</translation>
    </message>
    <message>
        <source>“{0}” is no part, or may be several.</source>
        <translation>„{0}“ ist kein Teil, oder es können mehrere sein.</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Nachher</translation>
    </message>
    <message>
        <source>All findings are verified or accepted.</source>
        <translation>Alle Feststellungen sind nachgeprüft oder angenommen.</translation>
    </message>
    <message>
        <source>All {0} photographs are in it.</source>
        <translation>Alle {0} Fotos sind darin.</translation>
    </message>
    <message>
        <source>Another look inside</source>
        <translation>Noch ein Blick hinein</translation>
    </message>
    <message>
        <source>Asked for</source>
        <translation>Angefragt</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>Closed with gaps: late acceptance</source>
        <translation>Mit Lücken geschlossen: nachträgliche Annahme</translation>
    </message>
    <message>
        <source>Complied with {0}: {1}</source>
        <translation>Erfüllt {0}: {1}</translation>
    </message>
    <message>
        <source>Corrections report</source>
        <translation>Bericht der Behebungen</translation>
    </message>
    <message>
        <source>Deviation {0} built: {1}</source>
        <translation>Abweichung {0} gebaut: {1}</translation>
    </message>
    <message>
        <source>Deviation {0} raised: {1}</source>
        <translation>Abweichung {0} aufgenommen: {1}</translation>
    </message>
    <message>
        <source>Deviation {0} undone: {1}</source>
        <translation>Abweichung {0} rückgängig gemacht: {1}</translation>
    </message>
    <message>
        <source>Does your signature still hold?</source>
        <translation>Gilt Ihre Unterschrift noch?</translation>
    </message>
    <message>
        <source>File of the authority</source>
        <translation>Aktenzeichen der Behörde</translation>
    </message>
    <message>
        <source>Findings and corrections</source>
        <translation>Feststellungen und Behebungen</translation>
    </message>
    <message>
        <source>Findings: {0}. Neither verified nor accepted: {1}; corrected of these: {2}.</source>
        <translation>Feststellungen: {0}. Weder nachgeprüft noch angenommen: {1}; davon behoben: {2}.</translation>
    </message>
    <message>
        <source>Fitted: {0}</source>
        <translation>Eingebaut: {0}</translation>
    </message>
    <message>
        <source>Inspector or adviser</source>
        <translation>Prüfer oder Berater</translation>
    </message>
    <message>
        <source>Left out to keep the packet small.</source>
        <translation>Weggelassen, damit die Prüfmappe klein bleibt.</translation>
    </message>
    <message>
        <source>Looked at</source>
        <translation>Angesehen</translation>
    </message>
    <message>
        <source>Material used: {0}</source>
        <translation>Material verwendet: {0}</translation>
    </message>
    <message>
        <source>Name and number</source>
        <translation>Name und Nummer</translation>
    </message>
    <message>
        <source>No finding of this visit is on record.</source>
        <translation>Keine Feststellung dieses Besuchs ist verzeichnet.</translation>
    </message>
    <message>
        <source>No folder for smaller copies of the photographs could be made.</source>
        <translation>Für kleinere Kopien der Fotos konnte kein Ordner gemacht werden.</translation>
    </message>
    <message>
        <source>No photograph of it is on record.</source>
        <translation>Kein Foto davon ist verzeichnet.</translation>
    </message>
    <message>
        <source>No photograph on record.</source>
        <translation>Kein Foto verzeichnet.</translation>
    </message>
    <message>
        <source>No, I have to look at it again.</source>
        <translation>Nein, ich muss noch einmal hinsehen.</translation>
    </message>
    <message>
        <source>Not drawn.</source>
        <translation>Nicht abgebildet.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Nothing on record was touched since.</source>
        <translation>Nichts Verzeichnetes wurde seitdem berührt.</translation>
    </message>
    <message>
        <source>Of {0} photographs, {1} are left out: {2}.</source>
        <translation>Von {0} Fotos sind {1} weggelassen: {2}.</translation>
    </message>
    <message>
        <source>Opened again: {0}</source>
        <translation>Wieder geöffnet: {0}</translation>
    </message>
    <message>
        <source>Photographed since: {0} of {1}</source>
        <translation>Seitdem fotografiert: {0} von {1}</translation>
    </message>
    <message>
        <source>Pictures are at most {0} pixels long.</source>
        <translation>Bilder sind höchstens {0} Bildpunkte lang.</translation>
    </message>
    <message>
        <source>Removed: {0}</source>
        <translation>Entfernt: {0}</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Signed</source>
        <translation>Unterschrieben</translation>
    </message>
    <message>
        <source>Signed by {0} on {1}, {2}, {3}.</source>
        <translation>Unterschrieben von {0} am {1}, {2}, {3}.</translation>
    </message>
    <message>
        <source>Squawk {0} corrected: {1}</source>
        <translation>Beanstandung {0} behoben: {1}</translation>
    </message>
    <message>
        <source>Squawk {0} found: {1}</source>
        <translation>Beanstandung {0} gefunden: {1}</translation>
    </message>
    <message>
        <source>Step done: {0}</source>
        <translation>Schritt erledigt: {0}</translation>
    </message>
    <message>
        <source>The whole packet and the photographs in full size are with the builder.</source>
        <translation>Die ganze Prüfmappe und die Fotos in voller Größe sind beim Erbauer.</translation>
    </message>
    <message>
        <source>This is the version to send</source>
        <translation>Dies ist die Fassung zum Senden</translation>
    </message>
    <message>
        <source>To be signed</source>
        <translation>Zu unterschreiben</translation>
    </message>
    <message>
        <source>Torqued: {0}</source>
        <translation>Angezogen: {0}</translation>
    </message>
    <message>
        <source>Touched since then</source>
        <translation>Seitdem berührt</translation>
    </message>
    <message>
        <source>What changed since you signed</source>
        <translation>Was sich seit Ihrer Unterschrift geändert hat</translation>
    </message>
    <message>
        <source>What was missing is named on the front pages and under Readiness.</source>
        <translation>Was fehlte, steht auf den ersten Seiten und unter „Stand“.</translation>
    </message>
    <message>
        <source>Work on: {0}</source>
        <translation>Arbeit an: {0}</translation>
    </message>
    <message>
        <source>Work: {0}</source>
        <translation>Arbeit: {0}</translation>
    </message>
    <message>
        <source>Yes, it holds.</source>
        <translation>Ja, sie gilt.</translation>
    </message>
    <message>
        <source>Yes, with the remarks below.</source>
        <translation>Ja, mit den Bemerkungen unten.</translation>
    </message>
    <message>
        <source>accepted as it is: {0}</source>
        <translation>unverändert angenommen: {0}</translation>
    </message>
    <message>
        <source>decide whether it may stay closed or must be opened</source>
        <translation>entscheiden, ob sie geschlossen bleiben darf oder geöffnet werden muss</translation>
    </message>
    <message>
        <source>found {0}</source>
        <translation>gefunden {0}</translation>
    </message>
    <message>
        <source>is to be opened</source>
        <translation>ist zu öffnen</translation>
    </message>
    <message>
        <source>may stay closed</source>
        <translation>darf geschlossen bleiben</translation>
    </message>
    <message>
        <source>not corrected yet</source>
        <translation>noch nicht behoben</translation>
    </message>
    <message>
        <source>planned: {0}</source>
        <translation>geplant: {0}</translation>
    </message>
    <message>
        <source>something is there already</source>
        <translation>dort ist schon etwas</translation>
    </message>
    <message>
        <source>waits for: {0}</source>
        <translation>wartet auf: {0}</translation>
    </message>
    <message>
        <source>{0} of {1}</source>
        <translation>{0} vom {1}</translation>
    </message>
    <message>
        <source>{0}, report {1}</source>
        <translation>{0}, Bericht {1}</translation>
    </message>
    <message>
        <source>{0}: name, number, signature, date</source>
        <translation>{0}: Name, Nummer, Unterschrift, Datum</translation>
    </message>
    <message>
        <source>Calibration due: {0}</source>
        <translation>Kalibrierung fällig: {0}</translation>
    </message>
    <message>
        <source>Expires: {0}</source>
        <translation>Läuft ab: {0}</translation>
    </message>
    <message>
        <source>Expires: {0}, lot {1}</source>
        <translation>Läuft ab: {0}, Charge {1}</translation>
    </message>
    <message>
        <source>Serial number {0}</source>
        <translation>Seriennummer {0}</translation>
    </message>
    <message>
        <source>There is no whole backup yet</source>
        <translation>Es gibt noch keine vollständige Sicherung</translation>
    </message>
    <message>
        <source>What the builder wrote down, no approval: the inspector decides.</source>
        <translation>Aufzeichnung des Erbauers, keine Freigabe: Der Prüfer entscheidet.</translation>
    </message>
    <message>
        <source>A drag is a torque of 0 or more.</source>
        <translation>Ein Laufmoment ist ein Drehmoment von 0 oder mehr.</translation>
    </message>
    <message>
        <source>A drag of {0} in-lb is more than the {1} in-lb that a {2} nut on {3} is tightened to; something is wrong with nut, bolt or reading.</source>
        <translation>Ein Laufmoment von {0} in-lb ist mehr als die {1} in-lb, mit denen eine Mutter {2} auf {3} angezogen wird; mit Mutter, Schraube oder Ablesung stimmt etwas nicht.</translation>
    </message>
    <message>
        <source>A grip is above zero and at most {0} in.</source>
        <translation>Eine Klemmlänge ist größer als null und höchstens {0} in.</translation>
    </message>
    <message>
        <source>A torque is above zero.</source>
        <translation>Ein Drehmoment ist größer als null.</translation>
    </message>
    <message>
        <source>It still does not fit: {0}</source>
        <translation>Es passt noch nicht: {0}</translation>
    </message>
    <message>
        <source>Taken back in another copy.</source>
        <translation>In einer anderen Kopie zurückgenommen.</translation>
    </message>
    <message>
        <source>The extension points back beyond the grip: it must be shorter than the lever.</source>
        <translation>Die Verlängerung zeigt über den Griff hinaus zurück: Sie muss kürzer sein als der Hebel.</translation>
    </message>
    <message>
        <source>The journal is damaged: a row&apos;s changes cannot be read.</source>
        <translation>Das Journal ist beschädigt: Die Änderungen einer Zeile sind nicht lesbar.</translation>
    </message>
    <message>
        <source>The lever of the wrench, from the middle of the grip to the drive, is above zero.</source>
        <translation>Der Hebel des Schlüssels, von der Griffmitte bis zum Vierkant, ist größer als null.</translation>
    </message>
    <message>
        <source>The mean aerodynamic chord needs a length above zero.</source>
        <translation>Die mittlere aerodynamische Flügeltiefe braucht eine Länge über null.</translation>
    </message>
    <message>
        <source>The table has no thread {0}; it has {1}.</source>
        <translation>Die Tabelle hat kein Gewinde {0}; sie hat {1}.</translation>
    </message>
    <message>
        <source>The tables have no solid rivet of {0} in; they have {1}.</source>
        <translation>Die Tabellen haben keinen Vollniet von {0} in; sie haben {1}.</translation>
    </message>
    <message>
        <source>The two are not copies of one project: they have no beginning in common.</source>
        <translation>Die beiden sind keine Kopien eines Projekts: Sie haben keinen gemeinsamen Anfang.</translation>
    </message>
    <message>
        <source>The weights do not add up to something above zero, so there is no centre of gravity.</source>
        <translation>Die Massen ergeben zusammen nichts über null, also gibt es keinen Schwerpunkt.</translation>
    </message>
    <message>
        <source>There is no such thing to decide.</source>
        <translation>So etwas gibt es nicht zu entscheiden.</translation>
    </message>
    <message>
        <source>There is nothing to weigh.</source>
        <translation>Es gibt nichts zu wiegen.</translation>
    </message>
    <message>
        <source>This cannot be taken over by itself; change the record by hand, then keep what stands.</source>
        <translation>Das lässt sich nicht für sich übernehmen; ändern Sie den Datensatz von Hand und behalten Sie dann, was dasteht.</translation>
    </message>
    <message>
        <source>is missing</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>is no list</source>
        <translation>ist keine Liste</translation>
    </message>
    <message>
        <source>is no number</source>
        <translation>ist keine Zahl</translation>
    </message>
    <message>
        <source>is no object</source>
        <translation>ist kein Objekt</translation>
    </message>
    <message>
        <source>is no text</source>
        <translation>ist kein Text</translation>
    </message>
    <message>
        <source>is not known here</source>
        <translation>ist hier nicht bekannt</translation>
    </message>
    <message>
        <source>the shear values of this size are estimated</source>
        <translation>die Scherwerte dieser Größe sind geschätzt</translation>
    </message>
    <message>
        <source>{0} has a weight or an arm that is no number.</source>
        <translation>{0} hat eine Masse oder einen Hebelarm, der keine Zahl ist.</translation>
    </message>
    <message>
        <source>A second database lies in the project&apos;s folder: {0}. What is in it is not shown.</source>
        <translation>Im Ordner des Projekts liegt eine zweite Datenbank: {0}. Was darin steht, wird nicht gezeigt.</translation>
    </message>
    <message>
        <source>Another program wrote to the project since it was opened here. Open it again to go on.</source>
        <translation>Ein anderes Programm hat in das Projekt geschrieben, seit es hier geöffnet wurde. Zum Weiterarbeiten bitte neu öffnen.</translation>
    </message>
    <message>
        <source>Process {0} on {1} has the project open for writing since {2}.</source>
        <translation>Prozess {0} auf {1} hat das Projekt seit {2} zum Schreiben geöffnet.</translation>
    </message>
    <message>
        <source>The aeroplane has not been weighed.</source>
        <translation>Das Flugzeug ist nicht gewogen.</translation>
    </message>
    <message>
        <source>The database is damaged ({0}).</source>
        <translation>Die Datenbank ist beschädigt ({0}).</translation>
    </message>
    <message>
        <source>The database is damaged: a row of {0} names a {1} that does not exist.</source>
        <translation>Die Datenbank ist beschädigt: eine Zeile von {0} nennt {1}, das es nicht gibt.</translation>
    </message>
    <message>
        <source>The disk that the project&apos;s folder is on keeps no locks, so that two programs could write at once; copy the folder to another disk to go on with it.</source>
        <translation>Der Datenträger mit dem Ordner des Projekts kennt keine Sperren, zwei Programme könnten also zugleich schreiben; zum Weiterarbeiten den Ordner auf einen anderen Datenträger kopieren.</translation>
    </message>
    <message>
        <source>The empty weight is above zero.</source>
        <translation>Die Leermasse ist größer als null.</translation>
    </message>
    <message>
        <source>The project could not be looked over: {0}</source>
        <translation>Das Projekt konnte nicht durchgesehen werden: {0}</translation>
    </message>
    <message>
        <source>The project lies on a network folder or the like: saving takes longer there, and only one program can be at it.</source>
        <translation>Das Projekt liegt auf einem Netzordner oder Ähnlichem: Speichern dauert dort länger, und nur ein Programm kann daran arbeiten.</translation>
    </message>
    <message>
        <source>The project&apos;s folder is no longer at {0}; nothing is changed until it is back, or is opened where it is now.</source>
        <translation>Der Ordner des Projekts ist nicht mehr unter {0}; nichts wird geändert, bis er zurück ist oder dort geöffnet wird, wo er jetzt ist.</translation>
    </message>
    <message>
        <source>The reading of {0} is below its tare.</source>
        <translation>Die Ablesung von {0} liegt unter ihrer Tara.</translation>
    </message>
    <message>
        <source>The tables of the database were altered by another program: {0}.</source>
        <translation>Die Tabellen der Datenbank wurden von einem anderen Programm verändert: {0}.</translation>
    </message>
    <message>
        <source>The tare of {0} is below zero: a tare is what lies on the scale besides the aeroplane, and is taken off.</source>
        <translation>Die Tara von {0} liegt unter null: Eine Tara ist, was außer dem Flugzeug auf der Waage liegt, und wird abgezogen.</translation>
    </message>
    <message>
        <source>The weighing has no scale readings.</source>
        <translation>Die Wägung hat keine Ablesungen der Waagen.</translation>
    </message>
    <message>
        <source>With the least that must be on board it weighs {0}, more than the {1} that are allowed.</source>
        <translation>Mit dem Wenigsten, was an Bord sein muss, wiegt es {0}, mehr als die erlaubten {1}.</translation>
    </message>
    <message>
        <source>serial number</source>
        <translation>Werknummer</translation>
    </message>
    <message>
        <source>{0} needs a weight of 0 or more, and an arm.</source>
        <translation>{0} braucht eine Masse von 0 oder mehr und einen Hebelarm.</translation>
    </message>
    <message>
        <source>{3} has the project open for writing since {2} (process {0} on {1}).</source>
        <translation>{3} hat das Projekt seit {2} zum Schreiben geöffnet (Prozess {0} auf {1}).</translation>
    </message>
    <message>
        <source>The list has more than {0} cells.</source>
        <translation>Die Liste hat mehr als {0} Zellen.</translation>
    </message>
    <message>
        <source>At the foot of its pages: {0}</source>
        <translation>Am Fuß seiner Seiten: {0}</translation>
    </message>
    <message>
        <source>Changes</source>
        <translation>Änderungen</translation>
    </message>
    <message>
        <source>Each row&apos;s hash is made of the row and of the hash before it: one row changed later would change every hash after it. A paper that was printed from these records has a hash at its foot and dates them.</source>
        <translation>Die Prüfsumme jeder Zeile entsteht aus der Zeile und der Prüfsumme davor: Würde eine Zeile später geändert, änderten sich alle Prüfsummen danach. Ein Papier, das aus diesen Aufzeichnungen gedruckt wurde, trägt am Fuß eine Prüfsumme und datiert sie.</translation>
    </message>
    <message>
        <source>In the copy that wrote it: {0}</source>
        <translation>In der Kopie, die sie schrieb: {0}</translation>
    </message>
    <message>
        <source>Journal</source>
        <translation>Journal</translation>
    </message>
    <message>
        <source>No row matches.</source>
        <translation>Keine Zeile passt.</translation>
    </message>
    <message>
        <source>Nothing is left out: {0} rows.</source>
        <translation>Nichts ist weggelassen: {0} Zeilen.</translation>
    </message>
    <message>
        <source>Row, and its hash begins</source>
        <translation>Zeile und Anfang ihrer Prüfsumme</translation>
    </message>
    <message>
        <source>Rule profile</source>
        <translation>Regelprofil</translation>
    </message>
    <message>
        <source>Who changed what in these records, field by field, and when. As of {0}.</source>
        <translation>Wer in diesen Aufzeichnungen was geändert hat, Feld für Feld, und wann. Stand {0}.</translation>
    </message>
    <message>
        <source>added: {0}</source>
        <translation>hinzugefügt: {0}</translation>
    </message>
    <message>
        <source>and {0} records more</source>
        <translation>und {0} weitere Datensätze</translation>
    </message>
    <message>
        <source>copies merged</source>
        <translation>Kopien zusammengeführt</translation>
    </message>
    <message>
        <source>done again</source>
        <translation>wiederholt</translation>
    </message>
    <message>
        <source>from another copy</source>
        <translation>aus einer anderen Kopie</translation>
    </message>
    <message>
        <source>from the watched folder</source>
        <translation>aus dem beobachteten Ordner</translation>
    </message>
    <message>
        <source>imported</source>
        <translation>importiert</translation>
    </message>
    <message>
        <source>it takes back: {0}</source>
        <translation>nimmt zurück: {0}</translation>
    </message>
    <message>
        <source>late: {0} {1}</source>
        <translation>verspätet: {0} {1}</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>printed</source>
        <translation>gedruckt</translation>
    </message>
    <message>
        <source>removed: {0}</source>
        <translation>entfernt: {0}</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>zurückgenommen</translation>
    </message>
    <message>
        <source>taken from the program anew</source>
        <translation>neu vom Programm übernommen</translation>
    </message>
    <message>
        <source>the clock had been set back, the time is that of the row before</source>
        <translation>die Uhr war zurückgestellt, die Zeit ist die der Zeile davor</translation>
    </message>
    <message>
        <source>undone</source>
        <translation>rückgängig gemacht</translation>
    </message>
    <message>
        <source>written down</source>
        <translation>aufgeschrieben</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>{0} of {1} rows; left out is what does not match: {2}.</source>
        <translation>{0} von {1} Zeilen; weggelassen ist, was nicht passt zu: {2}.</translation>
    </message>
    <message>
        <source>A column holds from 0 to 10 tenths.</source>
        <translation>Eine Spalte fasst 0 bis 10 Zehntel.</translation>
    </message>
    <message>
        <source>A maker</source>
        <translation>A Hersteller</translation>
    </message>
    <message>
        <source>As the records say on {0}</source>
        <translation>Nach dem Stand der Aufzeichnungen vom {0}</translation>
    </message>
    <message>
        <source>B paid help</source>
        <translation>B bez. Hilfe</translation>
    </message>
    <message>
        <source>By the builder&apos;s own figures; the authority decides</source>
        <translation>Nach den eigenen Zahlen des Erbauers; die Behörde entscheidet</translation>
    </message>
    <message>
        <source>By these figures the major portion is not the builder&apos;s; the authority decides.</source>
        <translation>Nach diesen Zahlen liegt der überwiegende Teil nicht beim Erbauer; die Behörde entscheidet.</translation>
    </message>
    <message>
        <source>By these figures the major portion is the builder&apos;s; the authority decides.</source>
        <translation>Nach diesen Zahlen liegt der überwiegende Teil beim Erbauer; die Behörde entscheidet.</translation>
    </message>
    <message>
        <source>C builder, assembly</source>
        <translation>C Erbauer, Montage</translation>
    </message>
    <message>
        <source>Closings</source>
        <translation>Schließstellen</translation>
    </message>
    <message>
        <source>Closings that are not closed: {0}.</source>
        <translation>Schließstellen, die nicht geschlossen sind: {0}.</translation>
    </message>
    <message>
        <source>D builder, fabrication</source>
        <translation>D Erbauer, Fertigung</translation>
    </message>
    <message>
        <source>Document</source>
        <translation>Dokument</translation>
    </message>
    <message>
        <source>Documents for the certificate</source>
        <translation>Dokumente für die Zulassung</translation>
    </message>
    <message>
        <source>Does not agree</source>
        <translation>Stimmt nicht überein</translation>
    </message>
    <message>
        <source>Edition</source>
        <translation>Ausgabe</translation>
    </message>
    <message>
        <source>Entries of papers that do not agree: {0}.</source>
        <translation>Angaben in Papieren, die nicht übereinstimmen: {0}.</translation>
    </message>
    <message>
        <source>File for the final inspection</source>
        <translation>Mappe für die Endprüfung</translation>
    </message>
    <message>
        <source>Findings of inspections neither verified nor accepted: {0}.</source>
        <translation>Feststellungen von Prüfungen, weder nachgeprüft noch angenommen: {0}.</translation>
    </message>
    <message>
        <source>In tenths it is {0} %.</source>
        <translation>In Zehnteln sind es {0} %.</translation>
    </message>
    <message>
        <source>Inspections, findings and corrections</source>
        <translation>Prüfungen, Feststellungen und Behebungen</translation>
    </message>
    <message>
        <source>Major portion</source>
        <translation>Überwiegender Teil</translation>
    </message>
    <message>
        <source>NO PICTURE on record</source>
        <translation>KEIN BILD vorhanden</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Needed</source>
        <translation>Nötig</translation>
    </message>
    <message>
        <source>No document is on record.</source>
        <translation>Kein Dokument ist verzeichnet.</translation>
    </message>
    <message>
        <source>No task is on record.</source>
        <translation>Keine Aufgabe ist verzeichnet.</translation>
    </message>
    <message>
        <source>No task that applies is entered yet.</source>
        <translation>Noch ist keine zutreffende Aufgabe eingetragen.</translation>
    </message>
    <message>
        <source>Not complete</source>
        <translation>Nicht vollständig</translation>
    </message>
    <message>
        <source>Nothing of this kind is open on record</source>
        <translation>Nichts dergleichen ist nach den Aufzeichnungen offen</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>Papers that do not agree</source>
        <translation>Papiere, die nicht übereinstimmen</translation>
    </message>
    <message>
        <source>Picture</source>
        <translation>Bild</translation>
    </message>
    <message>
        <source>Pictures that show the tasks</source>
        <translation>Bilder, die die Aufgaben zeigen</translation>
    </message>
    <message>
        <source>Required documents that are not here: {0}.</source>
        <translation>Erforderliche Dokumente, die noch fehlen: {0}.</translation>
    </message>
    <message>
        <source>SHA-256 begins</source>
        <translation>SHA-256 beginnt mit</translation>
    </message>
    <message>
        <source>Scans</source>
        <translation>Scans</translation>
    </message>
    <message>
        <source>Shown by</source>
        <translation>Belegt durch</translation>
    </message>
    <message>
        <source>Squawks that are open: {0}.</source>
        <translation>Offene Beanstandungen: {0}.</translation>
    </message>
    <message>
        <source>Task</source>
        <translation>Aufgabe</translation>
    </message>
    <message>
        <source>Tasks claimed by the builder that no picture shows: {0}.</source>
        <translation>Aufgaben, die der Erbauer für sich beansprucht und die kein Bild zeigt: {0}.</translation>
    </message>
    <message>
        <source>Tasks of the major portion without a picture: {0}.</source>
        <translation>Aufgaben des überwiegenden Teils ohne Bild: {0}.</translation>
    </message>
    <message>
        <source>The builder&apos;s share is {0} % of {1} tasks that apply: more than half.</source>
        <translation>Der Anteil des Erbauers beträgt {0} % von {1} zutreffenden Aufgaben: mehr als die Hälfte.</translation>
    </message>
    <message>
        <source>The builder&apos;s share is {0} % of {1} tasks that apply: not more than half.</source>
        <translation>Der Anteil des Erbauers beträgt {0} % von {1} zutreffenden Aufgaben: nicht mehr als die Hälfte.</translation>
    </message>
    <message>
        <source>The first two photographs of each task</source>
        <translation>Die ersten beiden Fotos jeder Aufgabe</translation>
    </message>
    <message>
        <source>The four columns add up to {0}; the tenths of a task add up to 10.</source>
        <translation>Die vier Spalten ergeben {0}; die Zehntel einer Aufgabe ergeben 10.</translation>
    </message>
    <message>
        <source>Tick of the builder</source>
        <translation>Häkchen Erbauer</translation>
    </message>
    <message>
        <source>Tick of the maker</source>
        <translation>Häkchen Herst.</translation>
    </message>
    <message>
        <source>Ticks of the builder: {0}, of the maker: {1}; the builder does not have more.</source>
        <translation>Häkchen des Erbauers: {0}, des Herstellers: {1}; der Erbauer hat nicht mehr.</translation>
    </message>
    <message>
        <source>Ticks of the builder: {0}, of the maker: {1}; the builder has more.</source>
        <translation>Häkchen des Erbauers: {0}, des Herstellers: {1}; der Erbauer hat mehr.</translation>
    </message>
    <message>
        <source>Who did how much of each task</source>
        <translation>Wer wie viel von jeder Aufgabe ausgeführt hat</translation>
    </message>
    <message>
        <source>asked for on {0}</source>
        <translation>angefordert am {0}</translation>
    </message>
    <message>
        <source>builder&apos;s name</source>
        <translation>Name des Erbauers</translation>
    </message>
    <message>
        <source>entries of the log: {0}, {1} to {2}; {3}</source>
        <translation>Einträge im Bautagebuch: {0}, {1} bis {2}; {3}</translation>
    </message>
    <message>
        <source>expected</source>
        <translation>erwartet</translation>
    </message>
    <message>
        <source>expired after {0}</source>
        <translation>abgelaufen nach dem {0}</translation>
    </message>
    <message>
        <source>for resale</source>
        <translation>für den Wiederverkauf</translation>
    </message>
    <message>
        <source>has fewer than {0} entries</source>
        <translation>hat weniger als {0} Einträge</translation>
    </message>
    <message>
        <source>here since {0}</source>
        <translation>liegt vor seit {0}</translation>
    </message>
    <message>
        <source>holds a number that is too large</source>
        <translation>enthält eine zu große Zahl</translation>
    </message>
    <message>
        <source>holds the character U+0000</source>
        <translation>enthält das Zeichen U+0000</translation>
    </message>
    <message>
        <source>in some cases</source>
        <translation>in manchen Fällen</translation>
    </message>
    <message>
        <source>in tenths of a task</source>
        <translation>in Zehnteln einer Aufgabe</translation>
    </message>
    <message>
        <source>is empty</source>
        <translation>ist leer</translation>
    </message>
    <message>
        <source>is longer than 1 MiB</source>
        <translation>ist länger als 1 MiB</translation>
    </message>
    <message>
        <source>is longer than {0} bytes</source>
        <translation>ist länger als {0} Bytes</translation>
    </message>
    <message>
        <source>is neither true nor false</source>
        <translation>ist weder wahr noch falsch</translation>
    </message>
    <message>
        <source>is nested more than {0} deep</source>
        <translation>ist tiefer als {0} verschachtelt</translation>
    </message>
    <message>
        <source>is no field of a profile</source>
        <translation>ist kein Feld eines Regelprofils</translation>
    </message>
    <message>
        <source>is no whole number from {0} to {1}</source>
        <translation>ist keine ganze Zahl von {0} bis {1}</translation>
    </message>
    <message>
        <source>is not JSON at line {0}, column {1}</source>
        <translation>ist kein JSON in Zeile {0}, Spalte {1}</translation>
    </message>
    <message>
        <source>is that of a profile that came with the program and says otherwise: a copy needs an id of its own</source>
        <translation>ist die eines Regelprofils, das mit dem Programm kam und anders lautet: eine Kopie braucht eine eigene Kennung</translation>
    </message>
    <message>
        <source>log entries</source>
        <translation>Einträge im Bautagebuch</translation>
    </message>
    <message>
        <source>model</source>
        <translation>Muster</translation>
    </message>
    <message>
        <source>not here</source>
        <translation>fehlt noch</translation>
    </message>
    <message>
        <source>pictures {0}</source>
        <translation>Bilder {0}</translation>
    </message>
    <message>
        <source>registration</source>
        <translation>Kennzeichen</translation>
    </message>
    <message>
        <source>required</source>
        <translation>erforderlich</translation>
    </message>
    <message>
        <source>tasks of the major portion</source>
        <translation>Aufgaben des überwiegenden Teils</translation>
    </message>
    <message>
        <source>the builder&apos;s name is {0} there, and {1} in the facts of the project</source>
        <translation>der Name des Erbauers lautet dort {0}, in den Angaben des Projekts {1}</translation>
    </message>
    <message>
        <source>the model is {0} there, and {1} in the facts of the project</source>
        <translation>das Muster lautet dort {0}, in den Angaben des Projekts {1}</translation>
    </message>
    <message>
        <source>the registration is {0} there, and {1} in the facts of the project</source>
        <translation>das Kennzeichen lautet dort {0}, in den Angaben des Projekts {1}</translation>
    </message>
    <message>
        <source>the serial number is {0} on the equipment list, and {1} on the part</source>
        <translation>die Seriennummer lautet in der Ausrüstungsliste {0}, am Teil {1}</translation>
    </message>
    <message>
        <source>the serial number is {0} there, and {1} in the facts of the project</source>
        <translation>die Werknummer lautet dort {0}, in den Angaben des Projekts {1}</translation>
    </message>
    <message>
        <source>video: {0}</source>
        <translation>Video: {0}</translation>
    </message>
    <message>
        <source>{0} (added)</source>
        <translation>{0} (ergänzt)</translation>
    </message>
    <message>
        <source>{0} is listed twice</source>
        <translation>{0} ist zweimal aufgeführt</translation>
    </message>
    <message>
        <source>{0} is no day from 1900 to 2199</source>
        <translation>{0} ist kein Tag von 1900 bis 2199</translation>
    </message>
    <message>
        <source>{0} is no key: lower-case letters, digits, - and _, at most {1} of them</source>
        <translation>{0} ist kein Schlüssel: Kleinbuchstaben, Ziffern, - und _, höchstens {1} davon</translation>
    </message>
    <message>
        <source>{0} is none of the listed sources</source>
        <translation>{0} ist keine der aufgeführten Quellen</translation>
    </message>
    <message>
        <source>{0} is none of {1}</source>
        <translation>{0} ist keines von {1}</translation>
    </message>
    <message>
        <source>% MAC</source>
        <translation>% MAC</translation>
    </message>
    <message>
        <source>A bend is between 0 and 180 degrees.</source>
        <translation>Eine Biegung liegt zwischen 0 und 180 Grad.</translation>
    </message>
    <message>
        <source>A bend radius is 0 or more.</source>
        <translation>Ein Biegeradius ist 0 oder größer.</translation>
    </message>
    <message>
        <source>A current is above zero.</source>
        <translation>Ein Strom ist größer als null.</translation>
    </message>
    <message>
        <source>A run of wire is longer than nothing.</source>
        <translation>Eine Leitung ist länger als nichts.</translation>
    </message>
    <message>
        <source>A sheet is thicker than nothing and at most {0} in.</source>
        <translation>Ein Blech ist dicker als nichts und höchstens {0} in dick.</translation>
    </message>
    <message>
        <source>Arm</source>
        <translation>Hebelarm</translation>
    </message>
    <message>
        <source>Calibrated until</source>
        <translation>Kalibriert bis</translation>
    </message>
    <message>
        <source>Centre of gravity</source>
        <translation>Schwerpunkt</translation>
    </message>
    <message>
        <source>Credential</source>
        <translation>Nachweis</translation>
    </message>
    <message>
        <source>Datum</source>
        <translation>Bezugsebene</translation>
    </message>
    <message>
        <source>Deviation or bulletin</source>
        <translation>Abweichung oder Bulletin</translation>
    </message>
    <message>
        <source>Empty weight</source>
        <translation>Leermasse</translation>
    </message>
    <message>
        <source>Empty weight and centre of gravity</source>
        <translation>Leermasse und Schwerpunkt</translation>
    </message>
    <message>
        <source>Equipment list</source>
        <translation>Ausrüstungsliste</translation>
    </message>
    <message>
        <source>Equipment on board</source>
        <translation>Ausrüstung an Bord</translation>
    </message>
    <message>
        <source>Fuel</source>
        <translation>Kraftstoff</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Wie</translation>
    </message>
    <message>
        <source>Levelled by</source>
        <translation>Nivelliert nach</translation>
    </message>
    <message>
        <source>Limits from: {0}</source>
        <translation>Grenzen aus: {0}</translation>
    </message>
    <message>
        <source>Loading</source>
        <translation>Beladung</translation>
    </message>
    <message>
        <source>Loading and limits</source>
        <translation>Beladung und Grenzen</translation>
    </message>
    <message>
        <source>Moment</source>
        <translation>Moment</translation>
    </message>
    <message>
        <source>Net</source>
        <translation>Netto</translation>
    </message>
    <message>
        <source>No equipment is on record.</source>
        <translation>Keine Ausrüstung verzeichnet.</translation>
    </message>
    <message>
        <source>No loading is on record.</source>
        <translation>Keine Beladung verzeichnet.</translation>
    </message>
    <message>
        <source>No wire of the table carries {0} A over {1} ft with a drop of at most {2} V.</source>
        <translation>Keine Leitung der Tabelle trägt {0} A über {1} ft bei höchstens {2} V Abfall.</translation>
    </message>
    <message>
        <source>OUTSIDE the limits</source>
        <translation>AUSSERHALB der Grenzen</translation>
    </message>
    <message>
        <source>Oil</source>
        <translation>Öl</translation>
    </message>
    <message>
        <source>Rivets an inch, share, width and pitch are above zero.</source>
        <translation>Niete je Zoll, Anteil, Breite und Teilung sind größer als null.</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Waage</translation>
    </message>
    <message>
        <source>Scale under</source>
        <translation>Waage unter</translation>
    </message>
    <message>
        <source>Square: the empty aeroplane. Discs: the loadings by their number. Triangles: the extremes. E, F and A name them.</source>
        <translation>Quadrat: das leere Flugzeug. Scheiben: die Beladungen mit ihrer Nummer. Dreiecke: die äußersten Lagen. E, F und A benennen sie.</translation>
    </message>
    <message>
        <source>Tare</source>
        <translation>Tara</translation>
    </message>
    <message>
        <source>The centre of gravity lies at {0} % of the mean aerodynamic chord.</source>
        <translation>Der Schwerpunkt liegt bei {0} % der mittleren aerodynamischen Flügeltiefe.</translation>
    </message>
    <message>
        <source>The drop that is allowed is above zero.</source>
        <translation>Der erlaubte Abfall ist größer als null.</translation>
    </message>
    <message>
        <source>The extremes are searched over all loads that the cases name: of each no less than the least and no more than the most of any case, within the maximum weight.</source>
        <translation>Die äußersten Lagen werden über alle Zuladungen gesucht, die die Fälle nennen: von jeder nicht weniger als das Wenigste und nicht mehr als das Meiste eines Falles, innerhalb der Höchstmasse.</translation>
    </message>
    <message>
        <source>The table has no rivets of {0} in for a sheet of {1} in.</source>
        <translation>Die Tabelle hat keine Niete von {0} in für ein Blech von {1} in.</translation>
    </message>
    <message>
        <source>The table has no wire size {0}; it has {1}.</source>
        <translation>Die Tabelle hat keine Leitungsgröße {0}; sie hat {1}.</translation>
    </message>
    <message>
        <source>The wire&apos;s temperature is between {0} and {1} °C.</source>
        <translation>Die Temperatur der Leitung liegt zwischen {0} und {1} °C.</translation>
    </message>
    <message>
        <source>Weigh indoors, level, with scales whose calibration holds, and say which fuel and oil were on board. The flight manual and the authority decide on limits.</source>
        <translation>Im Gebäude und nivelliert wägen, mit Waagen, deren Kalibrierung gilt, und sagen, welcher Kraftstoff und welches Öl an Bord waren. Über Grenzen entscheiden Flughandbuch und Behörde.</translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation>Gewogen</translation>
    </message>
    <message>
        <source>Weighed and worked out by</source>
        <translation>Gewogen und berechnet von</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Weight and balance</source>
        <translation>Masse und Schwerpunktlage</translation>
    </message>
    <message>
        <source>Weight and balance report</source>
        <translation>Wägebericht mit Schwerpunkt</translation>
    </message>
    <message>
        <source>What changes the weight</source>
        <translation>Was die Masse ändert</translation>
    </message>
    <message>
        <source>after the weighing: not in it</source>
        <translation>nach der Wägung: nicht darin</translation>
    </message>
    <message>
        <source>before the weighing: in it</source>
        <translation>vor der Wägung: darin</translation>
    </message>
    <message>
        <source>correction</source>
        <translation>Korrektur</translation>
    </message>
    <message>
        <source>fitted since</source>
        <translation>seither eingebaut</translation>
    </message>
    <message>
        <source>is not known here: all items share the weight_unit and arm_unit of the file</source>
        <translation>ist hier nicht bekannt: alle Posten haben weight_unit und arm_unit der Datei</translation>
    </message>
    <message>
        <source>removed since</source>
        <translation>seither ausgebaut</translation>
    </message>
    <message>
        <source>scale, net</source>
        <translation>Waage, netto</translation>
    </message>
    <message>
        <source>within the limits</source>
        <translation>innerhalb der Grenzen</translation>
    </message>
    <message>
        <source>“{0}” is no arm; write it as 1750, 1750 mm or 68.9 in.</source>
        <translation>„{0}“ ist kein Hebelarm; schreiben Sie 1750, 1750 mm oder 68,9 in.</translation>
    </message>
    <message>
        <source>“{0}” is no force; write it as 38 lb or 170 N.</source>
        <translation>„{0}“ ist keine Kraft; schreiben Sie 38 lb oder 170 N.</translation>
    </message>
    <message>
        <source>“{0}” is no length of wire; write it as 20 ft or 6 m.</source>
        <translation>„{0}“ ist keine Leitungslänge; schreiben Sie 20 ft oder 6 m.</translation>
    </message>
    <message>
        <source>“{0}” is no length; write it as 1/8, 0.125 in or 3.2 mm.</source>
        <translation>„{0}“ ist keine Länge; schreiben Sie 1/8, 0,125 in oder 3,2 mm.</translation>
    </message>
    <message>
        <source>“{0}” is no number.</source>
        <translation>„{0}“ ist keine Zahl.</translation>
    </message>
    <message>
        <source>“{0}” is no torque; write it as 20 in-lb, 2 ft-lb or 2.3 N·m.</source>
        <translation>„{0}“ ist kein Drehmoment; schreiben Sie 20 in-lb, 2 ft-lb oder 2,3 N·m.</translation>
    </message>
    <message>
        <source>“{0}” is no weight; write it as 84, 84 kg or 185 lb.</source>
        <translation>„{0}“ ist keine Masse; schreiben Sie 84, 84 kg oder 185 lb.</translation>
    </message>
    <message>
        <source>    Photographs: {0}</source>
        <translation>    Fotos: {0}</translation>
    </message>
    <message>
        <source>  {0} × {1}: expected on {2}</source>
        <translation>  {0} × {1}: erwartet am {2}</translation>
    </message>
    <message>
        <source>  {0} × {1}: listed {2}, received {3}</source>
        <translation>  {0} × {1}: laut Liste {2}, erhalten {3}</translation>
    </message>
    <message>
        <source>  {0} × {1}: received {2}, of these damaged {3}</source>
        <translation>  {0} × {1}: erhalten {2}, davon beschädigt {3}</translation>
    </message>
    <message>
        <source>A count is 0 or more.</source>
        <translation>Eine Anzahl ist 0 oder mehr.</translation>
    </message>
    <message>
        <source>A drag of {0} {2} is more than the {1} {2} that the nut is tightened to: something is wrong with the nut, the bolt or the reading.</source>
        <translation>Ein Laufmoment von {0} {2} ist mehr als die {1} {2}, mit denen die Mutter angezogen wird: mit Mutter, Schraube oder Ablesung stimmt etwas nicht.</translation>
    </message>
    <message>
        <source>A line is for one fastener or more.</source>
        <translation>Eine Zeile steht für mindestens ein Verbindungselement.</translation>
    </message>
    <message>
        <source>A torque limit is 0 or more.</source>
        <translation>Eine Drehmomentgrenze ist 0 oder mehr.</translation>
    </message>
    <message>
        <source>Aircraft: {0}</source>
        <translation>Flugzeug: {0}</translation>
    </message>
    <message>
        <source>Damaged</source>
        <translation>Beschädigt</translation>
    </message>
    <message>
        <source>Finger-tight in {0} places, the first since {1}: {2}</source>
        <translation>Nur fingerfest an {0} Stellen, zuerst seit {1}: {2}</translation>
    </message>
    <message>
        <source>Finger-tight since {0}: {1}, {2}</source>
        <translation>Nur fingerfest seit {0}: {1}, {2}</translation>
    </message>
    <message>
        <source>Give the thread, and the table proposes limits.</source>
        <translation>Mit dem Gewinde schlägt die Tabelle Grenzen vor.</translation>
    </message>
    <message>
        <source>I have counted this shipment against its packing list. These lines do not agree with it:</source>
        <translation>Ich habe diese Lieferung nach ihrer Packliste gezählt. Diese Posten stimmen nicht damit überein:</translation>
    </message>
    <message>
        <source>Kit number: {0}</source>
        <translation>Bausatznummer: {0}</translation>
    </message>
    <message>
        <source>Lines without a price are not in this sum.</source>
        <translation>Posten ohne Preis sind in dieser Summe nicht enthalten.</translation>
    </message>
    <message>
        <source>Missing</source>
        <translation>Es fehlen</translation>
    </message>
    <message>
        <source>Not arrived</source>
        <translation>Nicht eingetroffen</translation>
    </message>
    <message>
        <source>Please send what is missing and replace what is damaged, or tell me by when you will.</source>
        <translation>Bitte senden Sie das Fehlende und ersetzen Sie das Beschädigte, oder teilen Sie mir mit, bis wann das geschieht.</translation>
    </message>
    <message>
        <source>Say what is measured.</source>
        <translation>Was wird gemessen?</translation>
    </message>
    <message>
        <source>Say what was paid for behind the amount.</source>
        <translation>Hinter den Betrag gehört, wofür er bezahlt wurde.</translation>
    </message>
    <message>
        <source>Say where the fastener is.</source>
        <translation>Wo sitzt das Verbindungselement?</translation>
    </message>
    <message>
        <source>Shipment: {0}</source>
        <translation>Lieferung: {0}</translation>
    </message>
    <message>
        <source>The lower limit {0} is above the upper limit {1}.</source>
        <translation>Die untere Grenze {0} liegt über der oberen {1}.</translation>
    </message>
    <message>
        <source>The price of {0} names no currency.</source>
        <translation>Der Preis von {0} nennt keine Währung.</translation>
    </message>
    <message>
        <source>The prices add up to more than can be kept.</source>
        <translation>Die Preise ergeben mehr, als sich festhalten lässt.</translation>
    </message>
    <message>
        <source>The torque table has no thread “{0}”: take the limits from the drawing.</source>
        <translation>Die Drehmomenttabelle kennt kein Gewinde „{0}“: die Grenzen stehen in der Zeichnung.</translation>
    </message>
    <message>
        <source>The torque table has no thread “{0}”: write the limits of the drawing behind it, like 8-10 N-m.</source>
        <translation>Die Drehmomenttabelle kennt kein Gewinde „{0}“: die Grenzen der Zeichnung gehören dahinter, etwa 8-10 N-m.</translation>
    </message>
    <message>
        <source>What is missing or damaged is priced at {0} {1} in all.</source>
        <translation>Was fehlt oder beschädigt ist, kostet zusammen {0} {1}.</translation>
    </message>
    <message>
        <source>{0} cannot be damaged when {1} came.</source>
        <translation>{0} können nicht beschädigt sein, wenn {1} kamen.</translation>
    </message>
    <message>
        <source>{0} has no price on record.</source>
        <translation>Zu {0} ist kein Preis eingetragen.</translation>
    </message>
    <message>
        <source>{0} has {1} {2}, which is below zero.</source>
        <translation>{0} hat {1} {2}, das ist unter null.</translation>
    </message>
    <message>
        <source>{0}: finger-tight, fitted but not torqued</source>
        <translation>{0}: nur fingerfest, eingebaut, aber nicht angezogen</translation>
    </message>
    <message>
        <source>“{0}” has more decimals than {1} has.</source>
        <translation>„{0}“ hat mehr Nachkommastellen als {1}.</translation>
    </message>
    <message>
        <source>“{0}” is below zero: amounts are of what was paid.</source>
        <translation>„{0}“ ist unter null: Beträge sagen, was bezahlt wurde.</translation>
    </message>
    <message>
        <source>“{0}” is no amount; write it like 12.50.</source>
        <translation>„{0}“ ist kein Betrag; so geht es: 12,50.</translation>
    </message>
    <message>
        <source>“{0}” is too large an amount to be kept.</source>
        <translation>„{0}“ ist ein zu großer Betrag.</translation>
    </message>
    <message>
        <source>“{0}” names no currency; write it behind, in three letters.</source>
        <translation>„{0}“ nennt keine Währung; sie gehört mit drei Buchstaben dahinter.</translation>
    </message>
    <message>
        <source>All other work</source>
        <translation>Alle andere Arbeit</translation>
    </message>
    <message>
        <source>All work left</source>
        <translation>Alle Arbeit, die bleibt</translation>
    </message>
    <message>
        <source>At this pace it is not done within a hundred years.</source>
        <translation>In diesem Tempo wird es in hundert Jahren nicht fertig.</translation>
    </message>
    <message>
        <source>Came</source>
        <translation>Gekommen</translation>
    </message>
    <message>
        <source>Done again</source>
        <translation>Nachgearbeitet</translation>
    </message>
    <message>
        <source>Done between {0} and {1}; in 80 futures of 100 by {2}.</source>
        <translation>Fertig zwischen {0} und {1}; in 80 von 100 möglichen Verläufen bis {2}.</translation>
    </message>
    <message>
        <source>Done by</source>
        <translation>Fertig bis</translation>
    </message>
    <message>
        <source>Done by (P50)</source>
        <translation>Fertig bis (P50)</translation>
    </message>
    <message>
        <source>Done in all, by day</source>
        <translation>Im Ganzen getan, nach Tag</translation>
    </message>
    <message>
        <source>Estimate</source>
        <translation>Schätzung</translation>
    </message>
    <message>
        <source>Estimate beside what it took</source>
        <translation>Schätzung neben dem Aufwand</translation>
    </message>
    <message>
        <source>Finished steps with an estimate and time in the log: {0}. Thought to take {1}, they took {2}: {3} of the estimate.</source>
        <translation>Fertige Schritte mit Schätzung und Zeit im Bautagebuch: {0}. Geschätzt auf {1}, brauchten sie {2}: {3} der Schätzung.</translation>
    </message>
    <message>
        <source>Finished steps without an estimate, left out: {0}.</source>
        <translation>Fertige Schritte ohne Schätzung, nicht mitgezählt: {0}.</translation>
    </message>
    <message>
        <source>Finished steps without time in the log, left out: {0}.</source>
        <translation>Fertige Schritte ohne Zeit im Bautagebuch, nicht mitgezählt: {0}.</translation>
    </message>
    <message>
        <source>Here stands what finished steps took beside what was thought of them: steps with an estimate, ticked, and with time in the log.</source>
        <translation>Hier steht, was fertige Schritte gebraucht haben, neben dem, was geschätzt war: abgehakte Schritte mit Schätzung und mit Zeit im Bautagebuch.</translation>
    </message>
    <message>
        <source>Here stands what the forecast said on the first day of each month beside what came, from the third month of the log on.</source>
        <translation>Hier steht, was die Vorhersage am ersten Tag jedes Monats sagte, neben dem, was kam; vom dritten Monat des Bautagebuchs an.</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>Hours by kind of work</source>
        <translation>Stunden nach Art der Arbeit</translation>
    </message>
    <message>
        <source>Hours by part</source>
        <translation>Stunden nach Teil</translation>
    </message>
    <message>
        <source>Hours by person</source>
        <translation>Stunden nach Person</translation>
    </message>
    <message>
        <source>Hours done, and how they may go on</source>
        <translation>Geleistete Stunden und wie sie weitergehen können</translation>
    </message>
    <message>
        <source>Hours per month</source>
        <translation>Stunden je Monat</translation>
    </message>
    <message>
        <source>Hours per week, the last year</source>
        <translation>Stunden je Woche, das letzte Jahr</translation>
    </message>
    <message>
        <source>Hours to go</source>
        <translation>Stunden, die bleiben</translation>
    </message>
    <message>
        <source>In {0} of {1} months no more came than P50 had said, in {2} no more than P80. A forecast that holds has half of them within P50 and four fifths within P80; months share most of their work, so a few years are one story, not many.</source>
        <translation>In {0} von {1} Monaten kam nicht mehr, als P50 gesagt hatte, in {2} nicht mehr als P80. Hält eine Vorhersage, so liegt die Hälfte in P50 und vier Fünftel in P80; die Monate teilen den größten Teil ihrer Arbeit, darum sind wenige Jahre eine Geschichte, nicht viele.</translation>
    </message>
    <message>
        <source>Left out by choice: {0} (steps: {1}, squawks: {2}).</source>
        <translation>Mit Absicht weggelassen: {0} (Schritte: {1}, Beanstandungen: {2}).</translation>
    </message>
    <message>
        <source>Left to do (steps: {0}, squawks: {1}): {2} to {3} h of all who work.</source>
        <translation>Noch zu tun (Schritte: {0}, Beanstandungen: {1}): {2} bis {3} h aller, die arbeiten.</translation>
    </message>
    <message>
        <source>Lies in</source>
        <translation>Liegt in</translation>
    </message>
    <message>
        <source>Most of the spread comes from: {0}.</source>
        <translation>Die Unsicherheit kommt vor allem aus: {0}.</translation>
    </message>
    <message>
        <source>Nobody is on record.</source>
        <translation>Niemand ist verzeichnet.</translation>
    </message>
    <message>
        <source>Nothing that is left has an estimate.</source>
        <translation>Nichts, was bleibt, ist geschätzt.</translation>
    </message>
    <message>
        <source>Nothing that is left has an estimate. Write steps with estimates on the page of parts, and this tells how long they may take.</source>
        <translation>Nichts, was bleibt, ist geschätzt. Auf der Seite der Teile lassen sich Schritte mit Schätzung eintragen; dann steht hier, wie lange sie dauern können.</translation>
    </message>
    <message>
        <source>Of the estimate</source>
        <translation>Von der Schätzung</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Am</translation>
    </message>
    <message>
        <source>P10 to P50</source>
        <translation>P10 bis P50</translation>
    </message>
    <message>
        <source>P10 to P90</source>
        <translation>P10 bis P90</translation>
    </message>
    <message>
        <source>P50 to P80</source>
        <translation>P50 bis P80</translation>
    </message>
    <message>
        <source>P80 to P90</source>
        <translation>P80 bis P90</translation>
    </message>
    <message>
        <source>Part and step</source>
        <translation>Teil und Schritt</translation>
    </message>
    <message>
        <source>Said of the work done since, and what came</source>
        <translation>Gesagt von der Arbeit, die seither getan ist, und was kam</translation>
    </message>
    <message>
        <source>Said of them</source>
        <translation>Davon gesagt</translation>
    </message>
    <message>
        <source>Said, P10 to P90</source>
        <translation>Gesagt, P10 bis P90</translation>
    </message>
    <message>
        <source>Said, P50</source>
        <translation>Gesagt, P50</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Anteil</translation>
    </message>
    <message>
        <source>Share done again</source>
        <translation>Anteil nachgearbeitet</translation>
    </message>
    <message>
        <source>Squawks without an estimate, in no figure: {0}.</source>
        <translation>Beanstandungen ohne Schätzung, in keiner Zahl: {0}.</translation>
    </message>
    <message>
        <source>Steps done since</source>
        <translation>Schritte seither</translation>
    </message>
    <message>
        <source>Steps without an estimate: {0}. What finished steps of the same kind of part took stands in for it.</source>
        <translation>Schritte ohne Schätzung: {0}. An ihrer Stelle steht, was fertige Schritte an Teilen derselben Art gebraucht haben.</translation>
    </message>
    <message>
        <source>Sum so far</source>
        <translation>Summe bisher</translation>
    </message>
    <message>
        <source>The last step was done on {0}.</source>
        <translation>Der letzte Schritt war am {0} fertig.</translation>
    </message>
    <message>
        <source>The log is empty.</source>
        <translation>Das Bautagebuch ist leer.</translation>
    </message>
    <message>
        <source>The log is empty. Hours entered there are added up here.</source>
        <translation>Das Bautagebuch ist leer. Stunden, die dort eingetragen sind, werden hier zusammengezählt.</translation>
    </message>
    <message>
        <source>The log is too short to tell when: it needs eight weeks, or the hours a week that you mean to work.</source>
        <translation>Das Bautagebuch ist zu kurz, um zu sagen, wann: Es braucht acht Wochen, oder die Stunden je Woche, die Sie arbeiten wollen.</translation>
    </message>
    <message>
        <source>Took</source>
        <translation>Gebraucht</translation>
    </message>
    <message>
        <source>Week</source>
        <translation>Woche</translation>
    </message>
    <message>
        <source>What came is the time of the steps and squawks that were left then and are done now, and all rework since. Estimates are those of today.</source>
        <translation>Gekommen ist die Zeit der Schritte und Beanstandungen, die damals blieben und jetzt erledigt sind, und alle Nacharbeit seither. Die Schätzungen sind die von heute.</translation>
    </message>
    <message>
        <source>What the forecast said, and what came</source>
        <translation>Was die Vorhersage sagte, und was kam</translation>
    </message>
    <message>
        <source>hours of all who worked</source>
        <translation>Stunden aller, die arbeiteten</translation>
    </message>
    <message>
        <source>less than P10</source>
        <translation>unter P10</translation>
    </message>
    <message>
        <source>more than P90</source>
        <translation>über P90</translation>
    </message>
    <message>
        <source>{0} by the clock, {1} of all who worked; {2}.</source>
        <translation>{0} nach der Uhr, {1} aller, die arbeiteten; {2}.</translation>
    </message>
    <message>
        <source>{0} h are done.</source>
        <translation>{0} h sind geleistet.</translation>
    </message>
    <message>
        <source>{0} of all work was done again</source>
        <translation>{0} aller Arbeit war Nacharbeit</translation>
    </message>
    <message>
        <source>{0} to {1} h to go</source>
        <translation>Noch {0} bis {1} h</translation>
    </message>
    <message>
        <source>{0} to {1} h to go, done between {2} and {3}</source>
        <translation>Noch {0} bis {1} h, fertig zwischen {2} und {3}</translation>
    </message>
    <message>
        <source>Accepted on {0} by {1}: {2}</source>
        <translation>Angenommen am {0} von {1}: {2}</translation>
    </message>
    <message>
        <source>Equipment fitted or removed since the weighing, without weight or arm: {0}.</source>
        <translation>Ausrüstung, die seit der Wägung ein- oder ausgebaut wurde, ohne Masse oder Hebelarm: {0}.</translation>
    </message>
    <message>
        <source>Estimate {0}</source>
        <translation>Schätzung {0}</translation>
    </message>
    <message>
        <source>Every closing and how it stands</source>
        <translation>Jede Schließstelle und wie es um sie steht</translation>
    </message>
    <message>
        <source>Extremes of loading outside the limits: {0}.</source>
        <translation>Äußerste Beladungen außerhalb der Grenzen: {0}.</translation>
    </message>
    <message>
        <source>Farthest aft</source>
        <translation>Am weitesten hinten</translation>
    </message>
    <message>
        <source>Farthest forward</source>
        <translation>Am weitesten vorn</translation>
    </message>
    <message>
        <source>LATE, written {0}</source>
        <translation>NACHTRAG, geschrieben {0}</translation>
    </message>
    <message>
        <source>Loadings outside the limits: {0}.</source>
        <translation>Beladungen außerhalb der Grenzen: {0}.</translation>
    </message>
    <message>
        <source>Of the spread</source>
        <translation>Anteil an Streuung</translation>
    </message>
    <message>
        <source>Out of date: something was changed after it</source>
        <translation>Überholt: danach wurde etwas geändert</translation>
    </message>
    <message>
        <source>bulletins</source>
        <translation>Bulletins</translation>
    </message>
    <message>
        <source>certificate filed</source>
        <translation>Zertifikat abgelegt</translation>
    </message>
    <message>
        <source>closed by an earlier builder</source>
        <translation>von einem früheren Erbauer geschlossen</translation>
    </message>
    <message>
        <source>due {0}</source>
        <translation>fällig {0}</translation>
    </message>
    <message>
        <source>elsewhere in the aircraft</source>
        <translation>anderswo im Flugzeug</translation>
    </message>
    <message>
        <source>for other closings, still open</source>
        <translation>für andere Schließstellen, noch offen</translation>
    </message>
    <message>
        <source>from visit {0}</source>
        <translation>vom Besuch {0}</translation>
    </message>
    <message>
        <source>inspections</source>
        <translation>Prüfungen</translation>
    </message>
    <message>
        <source>journal {0}</source>
        <translation>Journal {0}</translation>
    </message>
    <message>
        <source>limits of weight and centre of gravity</source>
        <translation>Grenzen von Masse und Schwerpunkt</translation>
    </message>
    <message>
        <source>loadings</source>
        <translation>Beladungen</translation>
    </message>
    <message>
        <source>lot {0}</source>
        <translation>Charge {0}</translation>
    </message>
    <message>
        <source>mandatory</source>
        <translation>verbindlich</translation>
    </message>
    <message>
        <source>measurements</source>
        <translation>Messungen</translation>
    </message>
    <message>
        <source>nobody said whether it changed what was inspected</source>
        <translation>niemand hat gesagt, ob sich dadurch das Geprüfte geändert hat</translation>
    </message>
    <message>
        <source>not required</source>
        <translation>nicht verlangt</translation>
    </message>
    <message>
        <source>not weighed yet</source>
        <translation>noch nicht gewogen</translation>
    </message>
    <message>
        <source>parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>signed sheet filed</source>
        <translation>unterschriebenes Blatt abgelegt</translation>
    </message>
    <message>
        <source>squawks</source>
        <translation>Beanstandungen</translation>
    </message>
    <message>
        <source>used after its date, {0}</source>
        <translation>nach Ablauf verwendet, {0}</translation>
    </message>
    <message>
        <source>weighings</source>
        <translation>Wägungen</translation>
    </message>
    <message>
        <source>{0}.{1}</source>
        <translation>{0},{1}</translation>
    </message>
    <message>
        <source>There is no weighing to count on: each sum is of nothing but what the loading itself names, and an empty weight among it is an estimate.</source>
        <translation>Es liegt keine Wägung zugrunde: Jede Summe enthält nur, was die Beladung selbst nennt, und eine Leermasse darunter ist geschätzt.</translation>
    </message>
    <message>
        <source>What was to be changed is not there any more.</source>
        <translation>Was geändert werden sollte, ist nicht mehr da.</translation>
    </message>
    <message>
        <source>“{0}”: {1} is the code of no currency.</source>
        <translation>„{0}“: {1} ist das Kürzel keiner Währung.</translation>
    </message>
    <message>
        <source>1 photograph taken since, not printed here.</source>
        <translation>1 Foto seither, hier nicht gedruckt.</translation>
    </message>
    <message>
        <source>A closing without blockers means complete records. Only the inspector&apos;s own look can tell whether the work is right.</source>
        <translation>Eine Schließstelle, gegen die nichts spricht, heißt: Die Aufzeichnungen sind vollständig. Ob die Arbeit richtig ist, zeigt nur der eigene Blick des Prüfers.</translation>
    </message>
    <message>
        <source>All of it is named under Readiness.</source>
        <translation>Alles davon steht unter „Stand“.</translation>
    </message>
    <message>
        <source></source>
        <translation>Alles davon steht im Teil „Stand“.</translation>
    </message>
    <message>
        <source>And {0} more: {1}</source>
        <translation>Und {0} weitere: {1}</translation>
    </message>
    <message>
        <source>Boxes inside, and who signed them</source>
        <translation>Schließstellen darin, und wer dafür unterschrieb</translation>
    </message>
    <message>
        <source>Cure times hold at the temperature the maker names. In a cold workshop material that counts as cured may not be.</source>
        <translation>Aushärtezeiten gelten bei der Temperatur, die der Hersteller nennt. In einer kalten Werkstatt ist vielleicht noch nicht ausgehärtet, was als ausgehärtet zählt.</translation>
    </message>
    <message>
        <source>Findings inside, and what became of them</source>
        <translation>Feststellungen darin, und was daraus wurde</translation>
    </message>
    <message>
        <source>Lies within</source>
        <translation>Liegt in</translation>
    </message>
    <message>
        <source>Limits from general tables are common practice. The maker&apos;s drawings and manuals come first.</source>
        <translation>Grenzwerte aus allgemeinen Tabellen sind übliche Praxis. Zeichnungen und Handbücher des Herstellers gehen vor.</translation>
    </message>
    <message>
        <source>Nothing besides the corrections below.</source>
        <translation>Nichts außer den Behebungen unten.</translation>
    </message>
    <message>
        <source>Nothing here replaces local rules or the judgement of licensed people.</source>
        <translation>Nichts hiervon ersetzt örtliche Vorschriften oder das Urteil von Fachleuten mit Lizenz.</translation>
    </message>
    <message>
        <source>Nothing was logged in the last {0} weeks; to tell when, it needs the hours a week that you mean to work.</source>
        <translation>In den letzten {0} Wochen wurde nichts eingetragen; um ein Datum zu nennen, braucht es die Stunden je Woche, die gearbeitet werden sollen.</translation>
    </message>
    <message>
        <source>Open, and out of reach</source>
        <translation>Offen und nicht mehr erreichbar</translation>
    </message>
    <message>
        <source>Report of the visit: {0}</source>
        <translation>Bericht des Besuchs: {0}</translation>
    </message>
    <message>
        <source>Rules change. Check the current edition with your authority before relying on what is quoted here.</source>
        <translation>Vorschriften ändern sich. Bei der Behörde ist nach der gültigen Ausgabe zu fragen, bevor sich jemand auf das hier Zitierte verlässt.</translation>
    </message>
    <message>
        <source>Shown: {0}.</source>
        <translation>Gezeigt: {0}.</translation>
    </message>
    <message>
        <source>Steps without an estimate: {0}. No finished step and no estimate tells what they take; two hours stand in for it.</source>
        <translation>Schritte ohne Schätzung: {0}. Kein erledigter Schritt und keine Schätzung sagt, wie lange sie dauern; zwei Stunden stehen dafür.</translation>
    </message>
    <message>
        <source>Steps without an estimate: {0}. No finished step tells what they take; the median of all estimates stands in for it.</source>
        <translation>Schritte ohne Schätzung: {0}. Kein erledigter Schritt sagt, wie lange sie dauern; der Median aller Schätzungen steht dafür.</translation>
    </message>
    <message>
        <source>This form is no approval and no finding that the work is right: the drawings, the authority and the inspector decide.</source>
        <translation>Dieses Formular ist keine Zulassung und keine Feststellung, dass die Arbeit richtig ist: Zeichnungen, Behörde und Prüfer entscheiden.</translation>
    </message>
    <message>
        <source>This is the builder&apos;s own record and no approval. The drawings, the authority and the inspector decide.</source>
        <translation>Dies ist die eigene Aufzeichnung des Erbauers und keine Zulassung. Zeichnungen, Behörde und Prüfer entscheiden.</translation>
    </message>
    <message>
        <source>Who signed each closing</source>
        <translation>Wer für jede Schließstelle unterschrieb</translation>
    </message>
    <message>
        <source>boxes within {0}</source>
        <translation>Schließstellen darin {0}</translation>
    </message>
    <message>
        <source>bulletins {0}</source>
        <translation>Bulletins {0}</translation>
    </message>
    <message>
        <source>by the program</source>
        <translation>durch das Programm</translation>
    </message>
    <message>
        <source>has the field {0} twice in one object</source>
        <translation>hat das Feld {0} zweimal in einem Objekt</translation>
    </message>
    <message>
        <source>have the adviser or the inspector accept it late, or open it again</source>
        <translation>vom Berater oder Prüfer nachträglich annehmen lassen oder wieder öffnen</translation>
    </message>
    <message>
        <source>have the builder or the inspector accept it late, or open it again</source>
        <translation>vom Erbauer oder Prüfer nachträglich annehmen lassen oder wieder öffnen</translation>
    </message>
    <message>
        <source>have the builder, the adviser or the inspector accept it late, or open it again</source>
        <translation>vom Erbauer, Berater oder Prüfer nachträglich annehmen lassen oder wieder öffnen</translation>
    </message>
    <message>
        <source>hold points {0}</source>
        <translation>Haltepunkte {0}</translation>
    </message>
    <message>
        <source>holds the character U+0000 at line {0}, column {1}</source>
        <translation>enthält das Zeichen U+0000 in Zeile {0}, Spalte {1}</translation>
    </message>
    <message>
        <source>limits {0}</source>
        <translation>Grenzen {0}</translation>
    </message>
    <message>
        <source>materials</source>
        <translation>Materialien</translation>
    </message>
    <message>
        <source>no hold point</source>
        <translation>kein Haltepunkt</translation>
    </message>
    <message>
        <source>not begun</source>
        <translation>nicht begonnen</translation>
    </message>
    <message>
        <source>not corrected</source>
        <translation>nicht behoben</translation>
    </message>
    <message>
        <source>not in calibration</source>
        <translation>nicht kalibriert</translation>
    </message>
    <message>
        <source>others {0}</source>
        <translation>Sonstiges {0}</translation>
    </message>
    <message>
        <source>packing lines {0}</source>
        <translation>Packzeilen {0}</translation>
    </message>
    <message>
        <source>photographs</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>picture {0}</source>
        <translation>Bild {0}</translation>
    </message>
    <message>
        <source>raised {0}</source>
        <translation>aufgenommen {0}</translation>
    </message>
    <message>
        <source>stays open, waits for the builder&apos;s signature</source>
        <translation>bleibt offen, wartet auf die Unterschrift des Erbauers</translation>
    </message>
    <message>
        <source>steps</source>
        <translation>Arbeitsschritte</translation>
    </message>
    <message>
        <source>still built</source>
        <translation>noch so gebaut</translation>
    </message>
    <message>
        <source>take in the maker&apos;s document and link it</source>
        <translation>das Dokument des Herstellers aufnehmen und verknüpfen</translation>
    </message>
    <message>
        <source>{0} more, all in the sections below.</source>
        <translation>{0} weitere, alle in den Abschnitten unten.</translation>
    </message>
    <message>
        <source>{0} names no part</source>
        <translation>{0} nennt kein Teil</translation>
    </message>
    <message>
        <source>{0} net</source>
        <translation>{0} netto</translation>
    </message>
    <message>
        <source>{0} photographs taken since, not printed here.</source>
        <translation>{0} Fotos seither, hier nicht gedruckt.</translation>
    </message>
    <message>
        <source>{0}: closed by the factory, no document on record</source>
        <translation>{0}: vom Hersteller geschlossen, kein Dokument verzeichnet</translation>
    </message>
    <message>
        <source>{0}: its closing is closed, the step is not done</source>
        <translation>{0}: die Schließstelle ist geschlossen, der Schritt nicht erledigt</translation>
    </message>
    <message>
        <source>{0}: no closing is recorded for it</source>
        <translation>{0}: keine Schließstelle dafür verzeichnet</translation>
    </message>
    <message>
        <source>An answer by message is kept with the signature. Whether another look is needed you decide.</source>
        <translation>Eine Antwort per Nachricht wird bei der Unterschrift aufbewahrt. Ob ein weiterer Blick nötig ist, entscheiden Sie.</translation>
    </message>
    <message>
        <source>{0} and {1} more</source>
        <translation>{0} und {1} weitere</translation>
    </message>
    <message>
        <source>{0} from – to</source>
        <translation>{0} von – bis</translation>
    </message>
    <message>
        <source>{0}, drag {1}</source>
        <translation>{0}, Laufmoment {1}</translation>
    </message>
    <message>
        <source>Maker, part number</source>
        <translation>Hersteller, Teilenummer</translation>
    </message>
    <message>
        <source>removed {0}</source>
        <translation>ausgebaut {0}</translation>
    </message>
    <message>
        <source>This computer knows no time zone {0}; the names are like Europe/Berlin.</source>
        <translation>Dieser Rechner kennt keine Zeitzone {0}; die Namen sind wie Europe/Berlin.</translation>
    </message>
    <message>
        <source>changes</source>
        <translation>Änderungen</translation>
    </message>
    <message>
        <source>fixed, to be looked at</source>
        <translation>behoben, nachzuprüfen</translation>
    </message>
    <message>
        <source>for the adviser to verify</source>
        <translation>vom Berater nachzuprüfen</translation>
    </message>
    <message>
        <source>for the builder to verify</source>
        <translation>vom Erbauer nachzuprüfen</translation>
    </message>
    <message>
        <source>for the inspector to verify</source>
        <translation>vom Prüfer nachzuprüfen</translation>
    </message>
    <message>
        <source>in reach</source>
        <translation>erreichbar</translation>
    </message>
    <message>
        <source>only what touched {0}</source>
        <translation>nur was {0} betraf</translation>
    </message>
    <message>
        <source>out of reach</source>
        <translation>nicht erreichbar</translation>
    </message>
    <message>
        <source>outstanding</source>
        <translation>unerledigt</translation>
    </message>
    <message>
        <source>soon out of reach</source>
        <translation>bald nicht erreichbar</translation>
    </message>
    <message>
        <source>to be fixed</source>
        <translation>zu beheben</translation>
    </message>
    <message>
        <source>with the words “{0}”</source>
        <translation>mit den Wörtern „{0}“</translation>
    </message>
    <message>
        <source>{0} and below</source>
        <translation>{0} und darunter</translation>
    </message>
    <message>
        <source>dealt with</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>outstanding and dealt with</source>
        <translation>unerledigt und erledigt</translation>
    </message>
    <message>
        <source>{0}, continued</source>
        <translation>{0}, Fortsetzung</translation>
    </message>
    <message>
        <source>{0} record</source>
        <translation>{0} Aufzeichnung</translation>
    </message>
    <message>
        <source>{0} records</source>
        <translation>{0} Aufzeichnungen</translation>
    </message>
    <message>
        <source>1 was closed with gaps.</source>
        <translation>1 wurde mit Lücken geschlossen.</translation>
    </message>
    <message>
        <source>What is closed already is told below: what is open now and out of reach, and what was missing when it was closed.</source>
        <translation>Was schon geschlossen ist, steht weiter unten: was jetzt offen und nicht mehr erreichbar ist, und was beim Schließen fehlte.</translation>
    </message>
    <message>
        <source>correct what was found, and have it signed again</source>
        <translation>das Festgestellte beheben und neu unterschreiben lassen</translation>
    </message>
    <message>
        <source>enter the day it came</source>
        <translation>den Tag eintragen, an dem es kam</translation>
    </message>
    <message>
        <source>{0} was rejected, and is not signed since</source>
        <translation>{0} wurde abgelehnt und ist seitdem nicht unterschrieben</translation>
    </message>
    <message>
        <source>{0} were closed with gaps.</source>
        <translation>{0} wurden mit Lücken geschlossen.</translation>
    </message>
    <message>
        <source>{0}: counted, but the day it came is not on record</source>
        <translation>{0}: gezählt, aber der Tag der Ankunft ist nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>{0}: not received yet</source>
        <translation>{0}: noch nicht eingetroffen</translation>
    </message>
    <message>
        <source>{0}: used on {1}, after its lot expired on {2}</source>
        <translation>{0}: verarbeitet am {1}, nachdem die Charge am {2} abgelaufen war</translation>
    </message>
    <message>
        <source>{0}: {1} of {2} missing or damaged</source>
        <translation>{0}: {1} von {2} fehlen oder sind beschädigt</translation>
    </message>
    <message>
        <source>What would have cleared it</source>
        <translation>Was es erledigt hätte</translation>
    </message>
    <message>
        <source>The folder {0} could not be made: {1}.</source>
        <translation>Der Ordner {0} ließ sich nicht anlegen: {1}.</translation>
    </message>
    <message>
        <source>The folder {0} could not be saved: {1}.</source>
        <translation>Der Ordner {0} ließ sich nicht sichern: {1}.</translation>
    </message>
    <message>
        <source>The folder {0} leads out of the project, where its files are not looked for; nothing is taken in there.</source>
        <translation>Der Ordner {0} führt aus dem Projekt hinaus, wo seine Dateien nicht gesucht werden; dort wird nichts aufgenommen.</translation>
    </message>
    <message>
        <source>{0} became shorter while it was read.</source>
        <translation>{0} wurde kürzer, während sie gelesen wurde.</translation>
    </message>
    <message>
        <source>{0} changed while it was read; try again when it has arrived.</source>
        <translation>{0} hat sich beim Lesen geändert; noch einmal versuchen, wenn sie ganz angekommen ist.</translation>
    </message>
    <message>
        <source>{0} could not be read: {1}.</source>
        <translation>{0} war nicht zu lesen: {1}.</translation>
    </message>
    <message>
        <source>{0} could not be saved: its name is taken by another file.</source>
        <translation>{0} ließ sich nicht sichern: Der Name gehört einer anderen Datei.</translation>
    </message>
    <message>
        <source>{0} could not be saved: {1}.</source>
        <translation>{0} ließ sich nicht sichern: {1}.</translation>
    </message>
    <message>
        <source>{0} is cut short: its end is missing. Copy it again.</source>
        <translation>{0} ist abgeschnitten: Das Ende fehlt. Noch einmal kopieren.</translation>
    </message>
    <message>
        <source>{0} is empty.</source>
        <translation>{0} ist leer.</translation>
    </message>
    <message>
        <source>{0} is larger than any photo.</source>
        <translation>{0} ist größer als jedes Foto.</translation>
    </message>
    <message>
        <source>{0} is not a file.</source>
        <translation>{0} ist keine Datei.</translation>
    </message>
    <message>
        <source>{0} is not a photo (JPEG, PNG, HEIC), a video or a PDF.</source>
        <translation>{0} ist kein Foto (JPEG, PNG, HEIC), kein Video und kein PDF.</translation>
    </message>
    <message>
        <source>{0} is not a photo (JPEG, PNG, HEIC).</source>
        <translation>{0} ist kein Foto (JPEG, PNG, HEIC).</translation>
    </message>
    <message>
        <source>{0} is not a photo in the project folder.</source>
        <translation>{0} ist kein Foto im Projektordner.</translation>
    </message>
    <message>
        <source>{0} is not the file that was taken in: it has changed since.</source>
        <translation>{0} ist nicht die Datei, die aufgenommen wurde: Sie hat sich seitdem geändert.</translation>
    </message>
    <message>
        <source>{0} was not taken in: stopped.</source>
        <translation>{0} wurde nicht aufgenommen: abgebrochen.</translation>
    </message>
    <message>
        <source>{0} was not there when its record came; take the file in as a photo.</source>
        <translation>{0} war nicht da, als der Eintrag kam; die Datei als Foto aufnehmen.</translation>
    </message>
    <message>
        <source>No visit is planned, and no expiry or calibration falls due or did in the last 30 days: there is nothing to put into a calendar.</source>
        <translation>Kein Besuch ist geplant, und kein Ablauf und keine Kalibrierung ist fällig oder war es in den letzten 30 Tagen: Für einen Kalender gibt es nichts.</translation>
    </message>
    <message>
        <source>have it signed again</source>
        <translation>neu unterschreiben lassen</translation>
    </message>
    <message>
        <source>{0} on {1}</source>
        <translation>{0} am {1}</translation>
    </message>
    <message>
        <source>{0}: after the signature came {1}</source>
        <translation>{0}: nach der Unterschrift kam {1}</translation>
    </message>
    <message>
        <source>{0}: after the signature came {1}, and {2} more</source>
        <translation>{0}: nach der Unterschrift kamen {1} und {2} weitere</translation>
    </message>
    <message>
        <source>{0}: expired on {1}</source>
        <translation>{0}: abgelaufen am {1}</translation>
    </message>
    <message>
        <source>{0}: expires on {1}</source>
        <translation>{0}: läuft ab am {1}</translation>
    </message>
    <message>
        <source>The text is no UTF-8.</source>
        <translation>Der Text ist kein UTF-8.</translation>
    </message>
    <message>
        <source>Photographs that could not be printed, each with the reason in its place: {0}.</source>
        <translation>Fotos, die nicht gedruckt werden konnten, jedes mit dem Grund an seiner Stelle: {0}.</translation>
    </message>
    <message>
        <source>at least {0}</source>
        <translation>mindestens {0}</translation>
    </message>
    <message>
        <source>at most {0}</source>
        <translation>höchstens {0}</translation>
    </message>
    <message>
        <source>{0}: the last measurement is {1}, outside its limits ({2})</source>
        <translation>{0}: die letzte Messung ergab {1} und liegt außerhalb ihrer Grenzen ({2})</translation>
    </message>
    <message>
        <source>{0}: the torque is {1} ({3} less a drag of {4}), outside its limits ({2})</source>
        <translation>{0}: das Drehmoment von {1} ({3} weniger {4} Laufmoment) liegt außerhalb seiner Grenzen ({2})</translation>
    </message>
    <message>
        <source>{0}: the torque is {1}, outside its limits ({2})</source>
        <translation>{0}: das Drehmoment von {1} liegt außerhalb seiner Grenzen ({2})</translation>
    </message>
    <message>
        <source>The project has this file with other content than the one beside the document, and no SHA-256 on record says which is right. Nothing was taken in, and both are as they were; take away the one that is wrong.</source>
        <translation>Das Projekt hat diese Datei mit anderem Inhalt als die neben dem Dokument, und keine SHA-256-Summe sagt, welche die richtige ist. Nichts wurde übernommen, und beide sind, wie sie waren; die falsche wegnehmen.</translation>
    </message>
    <message>
        <source>The project lacks this file, and the one beside the document is another: its SHA-256 is {0}, the one on record {1}. Nothing was taken in; put the right file there, or take this one away.</source>
        <translation>Dem Projekt fehlt diese Datei, und die neben dem Dokument ist eine andere: ihr SHA-256 ist {0}, festgehalten ist {1}. Nichts wurde übernommen; die richtige Datei dorthin legen oder diese wegnehmen.</translation>
    </message>
    <message>
        <source>These numbers are too large to be reckoned with.</source>
        <translation>Mit so großen Zahlen lässt sich nicht rechnen.</translation>
    </message>
    <message>
        <source>A row of {0} names a {1} that does not exist.</source>
        <translation>Eine Zeile von {0} nennt einen Eintrag {1}, den es nicht gibt.</translation>
    </message>
    <message>
        <source>A second database lies in the project&apos;s folder: {0}. What was written to it is not in the records.</source>
        <translation>Im Ordner des Projekts liegt eine zweite Datenbank: {0}. Was in sie geschrieben wurde, ist nicht in den Aufzeichnungen.</translation>
    </message>
    <message>
        <source>Made the search index anew; {0} of its rows were wrong.</source>
        <translation>Das Suchverzeichnis wurde neu gemacht; {0} seiner Zeilen waren falsch.</translation>
    </message>
    <message>
        <source>Made the small copies of {0} of {1} photos anew.</source>
        <translation>Kleine Kopien neu gemacht: von {0} der {1} Fotos.</translation>
    </message>
    <message>
        <source>No record names the file {0}.</source>
        <translation>Keine Aufzeichnung nennt die Datei {0}.</translation>
    </message>
    <message>
        <source>Nothing more could be mended: {0}</source>
        <translation>Mehr ließ sich nicht richten: {0}</translation>
    </message>
    <message>
        <source>Removed the half-written file {0}.</source>
        <translation>Die halb geschriebene Datei {0} wurde entfernt.</translation>
    </message>
    <message>
        <source>Row {0} of the journal (“{1}”) does not fit the rows before it.</source>
        <translation>Zeile {0} des Journals („{1}“) passt nicht zu den Zeilen davor.</translation>
    </message>
    <message>
        <source>Row {0} of the journal (“{1}”) does not follow the row before it: a row was altered, removed or put in.</source>
        <translation>Zeile {0} des Journals („{1}“) schließt nicht an die Zeile davor an: Eine Zeile wurde verändert, entfernt oder eingeschoben.</translation>
    </message>
    <message>
        <source>Row {0} of the journal (“{1}”) is not later than the row before it.</source>
        <translation>Zeile {0} des Journals („{1}“) ist nicht später als die Zeile davor.</translation>
    </message>
    <message>
        <source>Row {0} of the journal (“{1}”) is out of sequence.</source>
        <translation>Zeile {0} des Journals („{1}“) steht nicht in der Reihenfolge.</translation>
    </message>
    <message>
        <source>Row {0} of the journal (“{1}”) was altered: its hash does not fit its content.</source>
        <translation>Zeile {0} des Journals („{1}“) wurde verändert: Ihre Prüfsumme passt nicht zum Inhalt.</translation>
    </message>
    <message>
        <source>The database is damaged, so nothing was made from it: restore a backup.</source>
        <translation>Die Datenbank ist beschädigt, deshalb wurde nichts aus ihr gemacht: eine Sicherung zurückholen.</translation>
    </message>
    <message>
        <source>The database is damaged: {0}.</source>
        <translation>Die Datenbank ist beschädigt: {0}.</translation>
    </message>
    <message>
        <source>The file {0} cannot be read.</source>
        <translation>Die Datei {0} lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>The file {0} has no SHA-256 on record: whether it is as it came cannot be told.</source>
        <translation>Zur Datei {0} steht keine SHA-256-Summe fest: Ob sie ist, wie sie kam, lässt sich nicht sagen.</translation>
    </message>
    <message>
        <source>The file {0} is half-written: a program was interrupted, unless one is taking files in just now.</source>
        <translation>Die Datei {0} ist halb geschrieben: Ein Programm wurde unterbrochen, wenn nicht gerade eines Dateien übernimmt.</translation>
    </message>
    <message>
        <source>The file {0} is missing.</source>
        <translation>Die Datei {0} fehlt.</translation>
    </message>
    <message>
        <source>The file {0} is not as it was taken in: its SHA-256 has changed.</source>
        <translation>Die Datei {0} ist nicht mehr, wie sie übernommen wurde: Ihre SHA-256-Summe hat sich geändert.</translation>
    </message>
    <message>
        <source>The file {0}, like {1} more, has no SHA-256 on record: whether it is as it came cannot be told.</source>
        <translation>Zur Datei {0} und zu {1} weiteren steht keine SHA-256-Summe fest: Ob sie ist, wie sie kam, lässt sich nicht sagen.</translation>
    </message>
    <message>
        <source>The project lies on a network folder or the like, and keeps a rollback journal there.</source>
        <translation>Das Projekt liegt in einem Netzordner oder dergleichen und führt dort ein Rücknahmejournal.</translation>
    </message>
    <message>
        <source>The project&apos;s time zone {0} is not known on this computer; the time now counts as UTC.</source>
        <translation>Die Zeitzone {0} des Projekts ist auf diesem Rechner nicht bekannt; die Zeit gilt jetzt als UTC.</translation>
    </message>
    <message>
        <source>The search index does not say what {0} {1} says.</source>
        <translation>Das Suchverzeichnis sagt nicht, was {0} {1} sagt.</translation>
    </message>
    <message>
        <source>The tables were altered by another program: {0}.</source>
        <translation>Die Tabellen wurden von einem anderen Programm verändert: {0}.</translation>
    </message>
    <message>
        <source>line {0}</source>
        <translation>Zeile {0}</translation>
    </message>
    <message>
        <source>row {0}</source>
        <translation>Zeile {0}</translation>
    </message>
    <message>
        <source>row {0}, column {1}</source>
        <translation>Zeile {0}, Spalte {1}</translation>
    </message>
    <message>
        <source>{0} could not be removed: {1}.</source>
        <translation>{0} ließ sich nicht entfernen: {1}.</translation>
    </message>
    <message>
        <source>{0} {1} differs from what the journal made of it (table {2}).</source>
        <translation>{0} {1} ist anders, als das Journal es gemacht hat (Tabelle {2}).</translation>
    </message>
    <message>
        <source>{0} {1} is in the journal, and missing from the records (table {2}).</source>
        <translation>{0} {1} steht im Journal und fehlt in den Aufzeichnungen (Tabelle {2}).</translation>
    </message>
    <message>
        <source>{0} {1} is in the records, and no change in the journal made it (table {2}).</source>
        <translation>{0} {1} steht in den Aufzeichnungen, und keine Änderung im Journal hat es gemacht (Tabelle {2}).</translation>
    </message>
    <message>
        <source>The project&apos;s copy of its rule profile {0}.</source>
        <translation>Die Kopie des Regelprofils im Projekt {0}.</translation>
    </message>
    <message>
        <source>The project&apos;s copy of its rule profile: {0} {1}.</source>
        <translation>Die Kopie des Regelprofils im Projekt: {0} {1}.</translation>
    </message>
    <message>
        <source>the opening of “{0}” on {1}</source>
        <translation>die Öffnung von „{0}“ am {1}</translation>
    </message>
    <message>
        <source>place: {0}</source>
        <translation>Ort: {0}</translation>
    </message>
    <message>
        <source>An entry is marked late when it was written down more than {0} days after the day it speaks of; the journal of the records tells when. Of entries that were imported nobody knows when they were first written, and they are not marked. Withdrawn entries are not printed. This is the builder&apos;s own record: it approves nothing.</source>
        <translation>Ein Eintrag gilt als Nachtrag, wenn er mehr als {0} Tage nach dem Tag geschrieben wurde, von dem er spricht; das Journal der Aufzeichnungen sagt, wann. Von eingelesenen Einträgen weiß niemand, wann sie zuerst geschrieben wurden; sie sind nicht bezeichnet. Zurückgezogene Einträge werden nicht gedruckt. Dies sind die eigenen Aufzeichnungen des Erbauers: sie genehmigen nichts.</translation>
    </message>
    <message>
        <source>not recorded as built</source>
        <translation>nicht als gebaut verzeichnet</translation>
    </message>
    <message>
        <source>{0} of {1} uses not in calibration</source>
        <translation>bei {0} von {1} Verwendungen nicht kalibriert</translation>
    </message>
    <message>
        <source>{0} “{1}” for “{2}”</source>
        <translation>{0} „{1}“ für „{2}“</translation>
    </message>
    <message>
        <source>Bulletins not complied with: {0}.</source>
        <translation>Bulletins, nicht erfüllt: {0}.</translation>
    </message>
    <message>
        <source>Closings closed with gaps and accepted by nobody: {0}.</source>
        <translation>Schließstellen, mit Lücken geschlossen und von niemandem angenommen: {0}.</translation>
    </message>
    <message>
        <source>Deviations not decided, or rejected and still built: {0}.</source>
        <translation>Abweichungen, nicht entschieden oder abgelehnt und noch so gebaut: {0}.</translation>
    </message>
    <message>
        <source>Every required document is here, findings are verified or accepted, closings are closed and none with gaps, deviations are decided, bulletins complied with, the aeroplane is weighed, and no loading on record lies outside the limits. Only the inspector&apos;s own look tells whether the work is right.</source>
        <translation>Jedes verlangte Dokument ist da, Feststellungen sind nachgeprüft oder angenommen, Schließstellen sind geschlossen, keine mit Lücken, Abweichungen sind entschieden, Bulletins erfüllt, das Flugzeug ist gewogen, und keine verzeichnete Beladung liegt außerhalb der Grenzen. Ob die Arbeit richtig ist, sagt nur der eigene Blick des Prüfers.</translation>
    </message>
    <message>
        <source>A coupon from each batch is kept and labelled</source>
        <translation>Von jedem Ansatz ist eine Probe aufbewahrt und beschriftet</translation>
    </message>
    <message>
        <source>A drain is open at the lowest point</source>
        <translation>Am tiefsten Punkt ist ein Ablauf offen</translation>
    </message>
    <message>
        <source>A drain sits at the lowest point in the parked attitude</source>
        <translation>Ein Ablauf sitzt am tiefsten Punkt der Standlage</translation>
    </message>
    <message>
        <source>A skin, or a spar, is still on temporary fasteners so that the inside shows</source>
        <translation>Eine Beplankung oder ein Holm ist noch vorläufig geheftet, sodass das Innere zu sehen ist</translation>
    </message>
    <message>
        <source>Adhesive is the type called for, within its life, mixed by weight</source>
        <translation>Der Klebstoff ist der vorgeschriebene, nicht abgelaufen, nach Gewicht gemischt</translation>
    </message>
    <message>
        <source>All lines, cables and controls inside are connected, routed and supported</source>
        <translation>Alle Leitungen, Seile und Steuerungen im Inneren sind angeschlossen, geführt und befestigt</translation>
    </message>
    <message>
        <source>Antennas have their doublers and grounding fitted</source>
        <translation>Antennen haben ihre Verdopplungen, die Erdung ist eingebaut</translation>
    </message>
    <message>
        <source>At least one full thread stands out of every nut</source>
        <translation>Aus jeder Mutter ragt mindestens ein voller Gewindegang</translation>
    </message>
    <message>
        <source>Baffles are fitted with their openings clear at top and bottom</source>
        <translation>Schottbleche sind eingebaut, ihre Öffnungen oben und unten frei</translation>
    </message>
    <message>
        <source>Battery is held down and vented, and its contactor can be switched from the seat</source>
        <translation>Die Batterie ist festgehalten und belüftet, ihr Schütz lässt sich vom Sitz aus schalten</translation>
    </message>
    <message>
        <source>Bead of adhesive squeezes out along the whole joint</source>
        <translation>Klebstoff tritt entlang der ganzen Fuge aus</translation>
    </message>
    <message>
        <source>Bond gap is measured dry and within limits; bond areas are sanded and clean</source>
        <translation>Der Klebespalt ist trocken gemessen und in Grenzen; Klebeflächen sind geschliffen und sauber</translation>
    </message>
    <message>
        <source>Both ends of every fastener can be seen, with light and a mirror where needed</source>
        <translation>Beide Enden jedes Verbindungselements sind zu sehen, wo nötig mit Licht und Spiegel</translation>
    </message>
    <message>
        <source>Cable tension is measured at a noted temperature with the instrument&apos;s own table</source>
        <translation>Die Seilspannung ist bei notierter Temperatur mit der Tabelle des Geräts gemessen</translation>
    </message>
    <message>
        <source>Control stops are fitted, strike squarely and are locked</source>
        <translation>Steuerungsanschläge sind eingebaut, liegen gerade an und sind gesichert</translation>
    </message>
    <message>
        <source>Control tubes, cables and bellcranks run clear of structure through their whole travel, with no chafing</source>
        <translation>Steuerstangen, Seile und Umlenkhebel laufen über den ganzen Weg frei von der Struktur, ohne zu scheuern</translation>
    </message>
    <message>
        <source>Controls move full and free to their stops with someone in the seat</source>
        <translation>Die Steuerung geht voll und frei bis zu ihren Anschlägen, mit jemandem auf dem Sitz</translation>
    </message>
    <message>
        <source>Corrosion protection is complete: primer on bare metal, inside of tubes, faying surfaces</source>
        <translation>Der Korrosionsschutz ist vollständig: Grundierung auf blankem Metall, in Rohren, auf Anlageflächen</translation>
    </message>
    <message>
        <source>Crimps are made with the right tool and pull checked</source>
        <translation>Quetschverbindungen sind mit dem richtigen Werkzeug gemacht und auf Zug geprüft</translation>
    </message>
    <message>
        <source>Cure time and temperature are on record</source>
        <translation>Aushärtezeit und Temperatur sind verzeichnet</translation>
    </message>
    <message>
        <source>Doublers and stiffeners are fitted at cut-outs and fittings</source>
        <translation>Verdopplungen und Versteifungen sitzen an Ausschnitten und Beschlägen</translation>
    </message>
    <message>
        <source>Drain grommets are placed at every low point</source>
        <translation>An jedem tiefen Punkt sitzen Ablaufösen</translation>
    </message>
    <message>
        <source>Drains and vents are open and at the right place</source>
        <translation>Abläufe und Entlüftungen sind offen und an der richtigen Stelle</translation>
    </message>
    <message>
        <source>Each glue batch has a test joint, broken and noted</source>
        <translation>Zu jedem Leimansatz gibt es eine Probeverleimung, gebrochen und vermerkt</translation>
    </message>
    <message>
        <source>Edge distance holds at hinges, horn and end ribs</source>
        <translation>Der Randabstand stimmt an Lagern, Horn und Endrippen</translation>
    </message>
    <message>
        <source>Edges, holes and corners are free of burrs, sharp edges and scratches</source>
        <translation>Kanten, Löcher und Ecken sind frei von Grat, scharfen Kanten und Kratzern</translation>
    </message>
    <message>
        <source>End ribs and their flanges are fastened on both sides</source>
        <translation>Endrippen und ihre Flansche sind auf beiden Seiten befestigt</translation>
    </message>
    <message>
        <source>Engine and exhaust have clearance to cowling and mount through their movement</source>
        <translation>Motor und Auspuff haben bei allen Bewegungen Abstand zu Verkleidung und Träger</translation>
    </message>
    <message>
        <source>Every bay is vented and drained</source>
        <translation>Jede Kammer ist belüftet und entwässert</translation>
    </message>
    <message>
        <source>Every bolt and nut is locked: split pin, safety wire, lock tab or self-locking nut</source>
        <translation>Jede Schraube und Mutter ist gesichert: Splint, Sicherungsdraht, Sicherungsblech oder selbstsichernde Mutter</translation>
    </message>
    <message>
        <source>Every breaker, fuse and switch is labelled and sized for its wire</source>
        <translation>Jeder Sicherungsautomat, jede Sicherung und jeder Schalter ist beschriftet und für seinen Draht bemessen</translation>
    </message>
    <message>
        <source>Every jam nut is tight and marked; every rod end is engaged past its witness hole</source>
        <translation>Jede Kontermutter ist fest und markiert; jeder Gelenkkopf greift über sein Kontrollloch hinaus</translation>
    </message>
    <message>
        <source>Every nut on a rotating joint carries a split pin; no friction-only lock nut is used there</source>
        <translation>Jede Mutter an einem drehenden Gelenk trägt einen Splint; dort ist keine nur klemmende Sicherungsmutter verwendet</translation>
    </message>
    <message>
        <source>Every surface, tab and wheel moves in the right sense</source>
        <translation>Jede Fläche, jede Klappe und jedes Rad bewegt sich im richtigen Sinn</translation>
    </message>
    <message>
        <source>Every weld of the frame is inspected and clean</source>
        <translation>Jede Schweißnaht des Rahmens ist geprüft und sauber</translation>
    </message>
    <message>
        <source>Everything that moves, wears or needs adjusting can be reached after closing</source>
        <translation>Alles, was sich bewegt, verschleißt oder eingestellt werden muss, ist nach dem Schließen erreichbar</translation>
    </message>
    <message>
        <source>Firewall penetrations are sealed with fireproof parts</source>
        <translation>Durchführungen im Brandspant sind mit feuerfesten Teilen abgedichtet</translation>
    </message>
    <message>
        <source>Floor panels stay loose until the final inspection</source>
        <translation>Bodenbretter bleiben bis zur Endprüfung lose</translation>
    </message>
    <message>
        <source>Frame is protected against rust outside, and inside the tubes where drawn</source>
        <translation>Der Rahmen ist außen gegen Rost geschützt, und innen in den Rohren, wo gezeichnet</translation>
    </message>
    <message>
        <source>Fuel lines are leak checked, flow is measured in the steepest attitude, selector and drains are reachable</source>
        <translation>Kraftstoffleitungen sind auf Dichtheit geprüft, der Durchfluss ist in der steilsten Lage gemessen, Wahlschalter und Abläufe sind erreichbar</translation>
    </message>
    <message>
        <source>Fuel pick-up and its screen are fitted, clean and locked</source>
        <translation>Die Kraftstoffentnahme und ihr Sieb sind eingebaut, sauber und gesichert</translation>
    </message>
    <message>
        <source>Glue joints show a thin even line with squeeze-out on both sides</source>
        <translation>Leimfugen zeigen beiderseits einen dünnen, gleichmäßigen Austritt</translation>
    </message>
    <message>
        <source>Grounds are bonded to clean metal and on record</source>
        <translation>Massen liegen auf blankem Metall an und sind verzeichnet</translation>
    </message>
    <message>
        <source>Guards and fairleads keep cables on their pulleys and runs clear of feet and cargo</source>
        <translation>Seilschutz und Führungen halten die Seile auf ihren Rollen, frei von Füßen und Gepäck</translation>
    </message>
    <message>
        <source>Hardware is what the drawing calls for: diameter, grip, head and material</source>
        <translation>Normteile sind wie gezeichnet: Durchmesser, Klemmlänge, Kopf und Werkstoff</translation>
    </message>
    <message>
        <source>Hinge brackets and their backing plates are in line, riveted in full and free of play</source>
        <translation>Lagerböcke und ihre Gegenplatten fluchten, sind ganz vernietet und ohne Spiel</translation>
    </message>
    <message>
        <source>Hoses, lines and wires are supported, protected from heat and clear of everything that moves</source>
        <translation>Schläuche, Leitungen und Kabel sind befestigt, vor Hitze geschützt und frei von allem, was sich bewegt</translation>
    </message>
    <message>
        <source>Inserts and hard points are in place and potted</source>
        <translation>Einsätze und Verstärkungen sitzen und sind vergossen</translation>
    </message>
    <message>
        <source>Inside surfaces are sealed, glue lands for the skin left bare</source>
        <translation>Innenflächen sind versiegelt, die Leimflächen für die Beplankung frei gelassen</translation>
    </message>
    <message>
        <source>Inspection rings are placed at every fitting, pulley and bellcrank</source>
        <translation>An jedem Beschlag, jeder Rolle und jedem Umlenkhebel sitzen Inspektionsringe</translation>
    </message>
    <message>
        <source>Lacing or other rib attachment is planned at the spacing the covering process gives</source>
        <translation>Vernähen oder andere Befestigung an den Rippen ist in dem Abstand geplant, den das Bespannverfahren vorgibt</translation>
    </message>
    <message>
        <source>Leak test is on record with pressure, duration and result; test limits are the maker&apos;s</source>
        <translation>Die Dichtheitsprüfung ist mit Druck, Dauer und Ergebnis verzeichnet; die Grenzen sind die des Herstellers</translation>
    </message>
    <message>
        <source>Level sender moves freely through its range and is grounded</source>
        <translation>Der Füllstandgeber bewegt sich über seinen ganzen Bereich frei und ist geerdet</translation>
    </message>
    <message>
        <source>Longerons are continuous, straight and fastened at every station</source>
        <translation>Längsträger sind durchgehend, gerade und an jeder Station befestigt</translation>
    </message>
    <message>
        <source>Mass balance is attached as drawn and its fasteners are locked</source>
        <translation>Der Massenausgleich sitzt wie gezeichnet, seine Verbindungselemente sind gesichert</translation>
    </message>
    <message>
        <source>Moisture content and grade of the timber are on record</source>
        <translation>Feuchte und Güte des Holzes sind verzeichnet</translation>
    </message>
    <message>
        <source>Near heat only all-metal lock nuts are used</source>
        <translation>In der Nähe von Hitze sind nur Ganzmetall-Sicherungsmuttern verwendet</translation>
    </message>
    <message>
        <source>No fastener is missing; no rivet is cracked, tipped, loose or over-driven</source>
        <translation>Kein Verbindungselement fehlt; kein Niet ist gerissen, schief, lose oder überschlagen</translation>
    </message>
    <message>
        <source>Nothing that belongs inside is missing: wiring, conduit, antennas, pitot and static lines, fuel and vent lines, drains and grommets</source>
        <translation>Nichts, was hineingehört, fehlt: Verkabelung, Leerrohre, Antennen, Staudruck- und Statikleitungen, Kraftstoff- und Lüftungsleitungen, Abläufe und Tüllen</translation>
    </message>
    <message>
        <source>Photographs of the open structure are taken, some with the builder at work</source>
        <translation>Fotos der offenen Struktur sind gemacht, einige mit dem Erbauer bei der Arbeit</translation>
    </message>
    <message>
        <source>Photographs show the wet glue before assembly</source>
        <translation>Fotos zeigen den nassen Leim vor dem Zusammenbau</translation>
    </message>
    <message>
        <source>Pitot and static lines are fitted, supported, drained and leak checked</source>
        <translation>Staudruck- und Statikleitungen sind eingebaut, befestigt, entwässert und auf Dichtheit geprüft</translation>
    </message>
    <message>
        <source>Places where fabric will touch edges or heads carry anti-chafe tape</source>
        <translation>Stellen, wo der Stoff Kanten oder Köpfe berührt, tragen Scheuerschutzband</translation>
    </message>
    <message>
        <source>Ply schedule is ticked ply by ply: cloth, direction, overlap</source>
        <translation>Der Lagenplan ist Lage für Lage abgehakt: Gewebe, Richtung, Überlappung</translation>
    </message>
    <message>
        <source>Position, landing and strobe light wiring is complete and labelled</source>
        <translation>Die Verkabelung von Positions-, Lande- und Blitzlichtern ist vollständig und beschriftet</translation>
    </message>
    <message>
        <source>Rod ends are screwed in deep enough and their jam nuts are tight and marked</source>
        <translation>Gelenkköpfe sind tief genug eingeschraubt, ihre Kontermuttern fest und markiert</translation>
    </message>
    <message>
        <source>Sealant fillets run unbroken along every seam and over every rivet</source>
        <translation>Dichtmassenkehlen laufen ununterbrochen über jede Naht und jeden Niet</translation>
    </message>
    <message>
        <source>Seat and harness attachments are complete, with torque and locking on record</source>
        <translation>Befestigungen von Sitz und Gurten sind vollständig, Drehmoment und Sicherung verzeichnet</translation>
    </message>
    <message>
        <source>Spar fasteners are all fitted, of the right grip, with thread showing beyond the nut</source>
        <translation>Alle Verbindungselemente des Holms sind eingebaut, in der richtigen Klemmlänge, mit Gewinde jenseits der Mutter</translation>
    </message>
    <message>
        <source>Split pins and safety wire are new, and pull in the tightening direction</source>
        <translation>Splinte und Sicherungsdraht sind neu und ziehen in Anzugsrichtung</translation>
    </message>
    <message>
        <source>Static balance is measured complete with tabs and finish, and entered in the record</source>
        <translation>Der statische Ausgleich ist mit Trimmklappen und Lack gemessen und eingetragen</translation>
    </message>
    <message>
        <source>Static ports and their lines are fitted flush, drained and leak checked</source>
        <translation>Statiköffnungen sitzen bündig, ihre Leitungen sind entwässert und auf Dichtheit geprüft</translation>
    </message>
    <message>
        <source>Stops are fitted and locked; travel is measured against the maker&apos;s limits</source>
        <translation>Anschläge sind eingebaut und gesichert; Ausschläge sind gegen die Grenzen des Herstellers gemessen</translation>
    </message>
    <message>
        <source>Tap test of the finished bond is on record</source>
        <translation>Die Klopfprüfung der fertigen Klebung ist verzeichnet</translation>
    </message>
    <message>
        <source>The work agrees with the drawings and manual; every deviation is listed with its acceptance</source>
        <translation>Die Arbeit stimmt mit Zeichnungen und Handbuch überein; jede Abweichung ist mit ihrer Annahme aufgeführt</translation>
    </message>
    <message>
        <source>Tie-down points are fitted and locked</source>
        <translation>Verzurrpunkte sind eingebaut und gesichert</translation>
    </message>
    <message>
        <source>Tools are counted and back in their places; swarf, rags and debris are out</source>
        <translation>Werkzeuge sind gezählt und an ihrem Platz; Späne, Lappen und Abfall sind draußen</translation>
    </message>
    <message>
        <source>Torque of the spar, strut and root fittings is on record with the wrench used</source>
        <translation>Drehmomente der Beschläge an Holm, Strebe und Wurzel sind verzeichnet, mit dem benutzten Schlüssel</translation>
    </message>
    <message>
        <source>Trailing edge is straight to the maker&apos;s limit</source>
        <translation>Die Hinterkante ist gerade, innerhalb der Grenze des Herstellers</translation>
    </message>
    <message>
        <source>Trim works through its range in the right sense before it is covered</source>
        <translation>Die Trimmung läuft vor dem Verschließen über ihren Bereich in der richtigen Richtung</translation>
    </message>
    <message>
        <source>Turnbuckles show at most three threads at either end and are locked</source>
        <translation>Spannschlösser zeigen an beiden Enden höchstens drei Gewindegänge und sind gesichert</translation>
    </message>
    <message>
        <source>Unusable fuel is measured, or its measurement is planned</source>
        <translation>Der nicht ausfliegbare Kraftstoff ist gemessen, oder die Messung ist geplant</translation>
    </message>
    <message>
        <source>Vent line is open from the highest point to the outside</source>
        <translation>Die Entlüftungsleitung ist vom höchsten Punkt bis ins Freie offen</translation>
    </message>
    <message>
        <source>Voids, dry spots and delaminations are marked, measured and within the maker&apos;s limits</source>
        <translation>Lunker, trockene Stellen und Ablösungen sind markiert, vermessen und innerhalb der Grenzen des Herstellers</translation>
    </message>
    <message>
        <source>Wires and conduits are supported, protected at every hole, with a pull string where more will follow</source>
        <translation>Kabel und Leerrohre sind befestigt, an jedem Loch geschützt, mit Zugschnur, wo noch etwas folgt</translation>
    </message>
    <message>
        <source>Wires are supported, protected at edges and holes, and clear of controls and fuel lines</source>
        <translation>Kabel sind befestigt, an Kanten und Löchern geschützt und frei von Steuerung und Kraftstoffleitungen</translation>
    </message>
    <message>
        <source>Who signs</source>
        <translation>Wer unterschreibt</translation>
    </message>
    <message>
        <source>Before: {0}, {1}, {2}</source>
        <translation>Zuvor: {0}, {1}, {2}</translation>
    </message>
    <message>
        <source>{0} is no length of time, as 1:30 or 2h15.</source>
        <translation>{0} ist keine Zeitdauer wie 1:30 oder 2h15.</translation>
    </message>
    <message>
        <source>“{0}” is no time of day; it goes into the note.</source>
        <translation>„{0}“ ist keine Uhrzeit; es kommt in die Anmerkung.</translation>
    </message>
    <message>
        <source>The file name is longer than the disk allows; most end at 255 bytes.</source>
        <translation>Der Dateiname ist länger, als der Datenträger erlaubt; die meisten erlauben höchstens 255 Byte.</translation>
    </message>
    <message>
        <source>Only the first {0} findings of each kind are listed; {1} more are not.</source>
        <translation>Nur die ersten {0} Funde jeder Art sind aufgeführt; {1} weitere sind es nicht.</translation>
    </message>
    <message>
        <source>“{0}” may be one amount, or an amount and a count; write {1}, or the currency behind the amount.</source>
        <translation>„{0}“ kann ein Betrag sein oder ein Betrag und eine Anzahl; schreiben Sie {1} oder die Währung hinter den Betrag.</translation>
    </message>
    <message>
        <source>The clock of this computer says {0}, and the newest row of the journal is of {1}. If the clock is wrong, set it before you write anything down: what must stay open, what has expired and the days of what is written down go by it.</source>
        <translation>Die Uhr dieses Rechners zeigt {0}, und die neueste Zeile des Journals ist von {1}. Geht die Uhr falsch, so stellen Sie sie, bevor Sie etwas eintragen: Was offen bleiben muss, was abgelaufen ist und die Tage der Einträge richten sich nach ihr.</translation>
    </message>
    <message>
        <source>The clock of this computer says {0}, which cannot be. What must stay open, what has expired and the days of what is written down go by this clock; set it first.</source>
        <translation>Die Uhr dieses Rechners zeigt {0}, was nicht sein kann. Was offen bleiben muss, was abgelaufen ist und die Tage der Einträge richten sich nach dieser Uhr; stellen Sie sie zuerst.</translation>
    </message>
    <message>
        <source>The clock of this computer says {0}, which is before the newest row of the journal ({1}): it is wrong now, or it was ahead then. What must stay open, what has expired and the days of what is written down go by this clock. The order of the journal holds.</source>
        <translation>Die Uhr dieses Rechners zeigt {0}, also vor der neuesten Zeile des Journals ({1}): Sie geht jetzt falsch, oder sie ging damals vor. Was offen bleiben muss, was abgelaufen ist und die Tage der Einträge richten sich nach dieser Uhr. Die Reihenfolge im Journal stimmt.</translation>
    </message>
    <message>
        <source>“{0}” is no day; write it as 3 Mar 2026 or 2026-03-03. It goes into the note.</source>
        <translation>„{0}“ ist kein Tag; schreiben Sie ihn als 3.3.2026 oder 2026-03-03. Es kommt in die Anmerkung.</translation>
    </message>
    <message>
        <source>Aircraft registration application (form 8050-1)</source>
        <translation>Antrag auf Eintragung des Luftfahrzeugs (Formular 8050-1)</translation>
    </message>
    <message>
        <source>Aircraft, engine and propeller logbooks</source>
        <translation>Bordbuch, Motorbuch und Propellerbuch</translation>
    </message>
    <message>
        <source>All inspection reports with their corrections complete</source>
        <translation>Alle Prüfberichte, ihre Berichtigungen vollständig</translation>
    </message>
    <message>
        <source>Application for an airworthiness certificate (form 8130-6)</source>
        <translation>Antrag auf ein Lufttüchtigkeitszeugnis (Formular 8130-6)</translation>
    </message>
    <message>
        <source>Application for the permit to fly</source>
        <translation>Antrag auf die Fluggenehmigung</translation>
    </message>
    <message>
        <source>Application for the special certificate of airworthiness (form 24-0079)</source>
        <translation>Antrag auf das besondere Lufttüchtigkeitszeugnis (Formular 24-0079)</translation>
    </message>
    <message>
        <source>Bill of sale</source>
        <translation>Kaufvertrag</translation>
    </message>
    <message>
        <source>Builder&apos;s log with photographs</source>
        <translation>Bautagebuch mit Fotos</translation>
    </message>
    <message>
        <source>Builder&apos;s log with the signed stages</source>
        <translation>Bautagebuch mit den unterschriebenen Bauabschnitten</translation>
    </message>
    <message>
        <source>Declaration that the aircraft is amateur-built</source>
        <translation>Erklärung, dass das Luftfahrzeug von Amateuren gebaut ist</translation>
    </message>
    <message>
        <source>Eligibility statement (form 8130-12), notarised</source>
        <translation>Erklärung, dass die Bedingungen erfüllt sind (Formular 8130-12), beglaubigt</translation>
    </message>
    <message>
        <source>Fabrication and assembly checklist</source>
        <translation>Prüfliste für Herstellung und Zusammenbau</translation>
    </message>
    <message>
        <source>Fireproof identification plate</source>
        <translation>Feuerfestes Kennschild</translation>
    </message>
    <message>
        <source>Flight test plan</source>
        <translation>Flugerprobungsplan</translation>
    </message>
    <message>
        <source>Identification plate</source>
        <translation>Kennschild</translation>
    </message>
    <message>
        <source>Letter of intent</source>
        <translation>Absichtserklärung</translation>
    </message>
    <message>
        <source>Major-portion checklist</source>
        <translation>Prüfliste des überwiegenden Teils</translation>
    </message>
    <message>
        <source>Operating conditions</source>
        <translation>Betriebsbedingungen</translation>
    </message>
    <message>
        <source>Operating limitations</source>
        <translation>Betriebsgrenzen</translation>
    </message>
    <message>
        <source>Placards and instrument markings</source>
        <translation>Hinweisschilder und Markierungen der Instrumente</translation>
    </message>
    <message>
        <source>Placards and markings</source>
        <translation>Hinweisschilder und Markierungen</translation>
    </message>
    <message>
        <source>Programme letter: purpose, area and length of the flight tests</source>
        <translation>Programmschreiben: Zweck, Gebiet und Dauer der Flugerprobung</translation>
    </message>
    <message>
        <source>Registration and marks</source>
        <translation>Eintragung und Kennzeichen</translation>
    </message>
    <message>
        <source>Registration of the project with the approved body</source>
        <translation>Anmeldung des Projekts bei der anerkannten Stelle</translation>
    </message>
    <message>
        <source>Stage signatures complete</source>
        <translation>Unterschriften der Bauabschnitte vollständig</translation>
    </message>
    <message>
        <source>Statement that the aircraft is amateur-built</source>
        <translation>Bestätigung, dass das Luftfahrzeug von Amateuren gebaut ist</translation>
    </message>
    <message>
        <source>Test flying as agreed with the approved body</source>
        <translation>Erprobungsflüge wie mit der anerkannten Stelle vereinbart</translation>
    </message>
    <message>
        <source>Three-view drawing or photographs</source>
        <translation>Dreiseitenansicht oder Fotos</translation>
    </message>
    <message>
        <source>Three-view drawings or photographs that identify the aircraft</source>
        <translation>Dreiseitenansichten oder Fotos, an denen das Luftfahrzeug zu erkennen ist</translation>
    </message>
    <message>
        <source>Weight and balance report with the extreme loadings</source>
        <translation>Wägebericht mit Schwerpunkt und den äußersten Beladungen</translation>
    </message>
    <message>
        <source>Alternatives: {0}</source>
        <translation>Andere Möglichkeiten: {0}</translation>
    </message>
    <message>
        <source>Way to repair it, chosen: {0}</source>
        <translation>Möglichkeit, gewählt: {0}</translation>
    </message>
    <message>
        <source>Way to repair it: {0}</source>
        <translation>Möglichkeit: {0}</translation>
    </message>
    <message>
        <source>against it: {0}</source>
        <translation>dagegen: {0}</translation>
    </message>
    <message>
        <source>for it: {0}</source>
        <translation>dafür: {0}</translation>
    </message>
    <message>
        <source>{0} is more than a year before the project was begun ({1}).</source>
        <translation>{0} liegt mehr als ein Jahr vor dem Beginn des Projekts ({1}).</translation>
    </message>
    <message>
        <source>A merge is not taken back as one; take back the changes that it brought.</source>
        <translation>Eine Zusammenführung wird nicht als Ganzes zurückgenommen; nehmen Sie die Änderungen zurück, die sie gebracht hat.</translation>
    </message>
    <message>
        <source>The journal has no row {0}.</source>
        <translation>Das Journal hat keine Zeile {0}.</translation>
    </message>
    <message>
        <source>“{0}” changed nothing that could be taken back.</source>
        <translation>„{0}“ hat nichts geändert, was sich zurücknehmen ließe.</translation>
    </message>
    <message>
        <source>“{0}” decided what a merge had left open; decide it anew there.</source>
        <translation>„{0}“ hat entschieden, was eine Zusammenführung offen gelassen hatte; entscheiden Sie dort neu.</translation>
    </message>
    <message>
        <source>“{0}” was taken back already.</source>
        <translation>„{0}“ wurde bereits zurückgenommen.</translation>
    </message>
    <message>
        <source>This row undid “{0}”; to have that again, make the change again.</source>
        <translation>Diese Zeile hat „{0}“ rückgängig gemacht; um es wieder zu haben, nehmen Sie die Änderung noch einmal vor.</translation>
    </message>
    <message>
        <source>“{0}” was not understood: write both limits, as 50-70 in-lb, the drag as drag 6 in-lb, and a comma between them.</source>
        <translation>„{0}“ wurde nicht verstanden: beide Grenzen als 50-70 in-lb schreiben, das Laufmoment als Laufmoment 6 in-lb, und ein Komma dazwischen.</translation>
    </message>
    <message>
        <source>NOT in calibration when weighed</source>
        <translation>beim Wiegen NICHT kalibriert</translation>
    </message>
    <message>
        <source>Rows are counted: 1, 2, 3 and so on.</source>
        <translation>Reihen werden gezählt: 1, 2, 3 und so weiter.</translation>
    </message>
    <message>
        <source>“{0}” is a count and a price: write what was paid for all of them.</source>
        <translation>„{0}“ ist eine Anzahl mit einem Preis: schreiben Sie, was für alles zusammen bezahlt wurde.</translation>
    </message>
    <message>
        <source>“{0}” is taken for the day {1}; put the number of a chapter behind the colon.</source>
        <translation>„{0}“ gilt als der Tag {1}; die Nummer eines Kapitels gehört hinter den Doppelpunkt.</translation>
    </message>
    <message>
        <source>What has a bar before it keeps its closing open.</source>
        <translation>Was einen Balken davor hat, hält seine Schließstelle offen.</translation>
    </message>
    <message>
        <source>10 hours, with 10 flights among them.</source>
        <translation>10 Stunden, darunter 10 Flüge.</translation>
    </message>
    <message>
        <source>10 hours.</source>
        <translation>10 Stunden.</translation>
    </message>
    <message>
        <source>100 flights, in 20 of which the line is let go at 30 metres or higher.</source>
        <translation>100 Flüge, bei 20 davon wird die Leine in 30 Metern Höhe oder darüber gelöst.</translation>
    </message>
    <message>
        <source>25 hours in the assigned area.</source>
        <translation>25 Stunden im zugewiesenen Gebiet.</translation>
    </message>
    <message>
        <source>40 hours in the assigned area.</source>
        <translation>40 Stunden im zugewiesenen Gebiet.</translation>
    </message>
    <message>
        <source>Set by the approved body with the permit to test fly.</source>
        <translation>Von der anerkannten Stelle mit der Genehmigung zum Erprobungsflug festgelegt.</translation>
    </message>
    <message>
        <source>The hours needed to put all faults right, and 25 more in which nothing but normal upkeep was needed.</source>
        <translation>Die Stunden, die es braucht, um alle Störungen zu beheben, und 25 weitere, in denen nichts als übliche Wartung nötig war.</translation>
    </message>
    <message>
        <source>The period ends when the planned tests are flown and the operating handbook is made.</source>
        <translation>Die Zeit endet, wenn die geplanten Erprobungen geflogen sind und das Betriebshandbuch erstellt ist.</translation>
    </message>
    <message>
        <source>a task-based plan in place of hours</source>
        <translation>einen Plan nach Aufgaben anstelle von Stunden</translation>
    </message>
    <message>
        <source>an engine and propeller certificated together</source>
        <translation>einen Motor und einen Propeller, die zusammen zugelassen sind</translation>
    </message>
    <message>
        <source>any other engine and propeller</source>
        <translation>jeden anderen Motor und Propeller</translation>
    </message>
    <message>
        <source>asked for after the pre-cover inspection</source>
        <translation>nach der Prüfung vor dem Schließen angefordert</translation>
    </message>
    <message>
        <source>at every inspection</source>
        <translation>bei jeder Prüfung</translation>
    </message>
    <message>
        <source>at every stage inspection</source>
        <translation>bei jeder Zwischenprüfung</translation>
    </message>
    <message>
        <source>at the final inspection</source>
        <translation>bei der Endprüfung</translation>
    </message>
    <message>
        <source>at the inspection</source>
        <translation>bei der Prüfung</translation>
    </message>
    <message>
        <source>balloons</source>
        <translation>Ballone</translation>
    </message>
    <message>
        <source>before construction starts</source>
        <translation>vor Baubeginn</translation>
    </message>
    <message>
        <source>before the application</source>
        <translation>vor dem Antrag</translation>
    </message>
    <message>
        <source>before the certificate is issued</source>
        <translation>vor Ausstellung des Zeugnisses</translation>
    </message>
    <message>
        <source>before the first flight</source>
        <translation>vor dem Erstflug</translation>
    </message>
    <message>
        <source>before the permit is asked for</source>
        <translation>bevor die Genehmigung beantragt wird</translation>
    </message>
    <message>
        <source>before the permit is issued</source>
        <translation>vor Erteilung der Genehmigung</translation>
    </message>
    <message>
        <source>every amateur-built aircraft</source>
        <translation>jedes von Amateuren gebaute Luftfahrzeug</translation>
    </message>
    <message>
        <source>fitted at the final inspection</source>
        <translation>bei der Endprüfung angebracht</translation>
    </message>
    <message>
        <source>fitted at the inspection</source>
        <translation>bei der Prüfung angebracht</translation>
    </message>
    <message>
        <source>fixed-wing gliders</source>
        <translation>Segelflugzeuge mit festen Flügeln</translation>
    </message>
    <message>
        <source>hours in an assigned area, or task by task</source>
        <translation>Stunden in einem zugewiesenen Gebiet, oder Aufgabe für Aufgabe</translation>
    </message>
    <message>
        <source>issued with the certificate</source>
        <translation>mit dem Zeugnis ausgestellt</translation>
    </message>
    <message>
        <source>powered fixed-wing aircraft, helicopters and powered gyroplanes</source>
        <translation>motorgetriebene Starrflügler, Hubschrauber und Tragschrauber mit Motor</translation>
    </message>
    <message>
        <source>reviewed at the inspection</source>
        <translation>bei der Prüfung durchgesehen</translation>
    </message>
    <message>
        <source>unpowered gyroplanes</source>
        <translation>Tragschrauber ohne Motor</translation>
    </message>
    <message>
        <source>when kit or plans came second-hand</source>
        <translation>wenn Bausatz oder Pläne aus zweiter Hand kamen</translation>
    </message>
    <message>
        <source>when kit or plans did not come from the original supplier</source>
        <translation>wenn Bausatz oder Pläne nicht vom ursprünglichen Lieferanten kamen</translation>
    </message>
    <message>
        <source>when the kit is not on the published list, or recycled parts are used</source>
        <translation>wenn der Bausatz nicht auf der veröffentlichten Liste steht oder gebrauchte Teile verwendet werden</translation>
    </message>
    <message>
        <source>when the kit is unlisted or changed, or paid help was used</source>
        <translation>wenn der Bausatz auf keiner Liste steht oder geändert wurde oder bezahlte Hilfe in Anspruch genommen wurde</translation>
    </message>
    <message>
        <source>with the weight and balance report</source>
        <translation>mit dem Wägebericht</translation>
    </message>
    <message>
        <source>Loadings and limits in a picture</source>
        <translation>Beladungen und Grenzen im Bild</translation>
    </message>
    <message>
        <source>amateur built statement</source>
        <translation>Erklärung über den Bau durch Amateure</translation>
    </message>
    <message>
        <source>application</source>
        <translation>Antrag</translation>
    </message>
    <message>
        <source>bill of sale</source>
        <translation>Kaufvertrag</translation>
    </message>
    <message>
        <source>builders log</source>
        <translation>Bautagebuch des Erbauers</translation>
    </message>
    <message>
        <source>data plate</source>
        <translation>Kennschild</translation>
    </message>
    <message>
        <source>equipment list</source>
        <translation>Ausrüstungsliste</translation>
    </message>
    <message>
        <source>inspection reports</source>
        <translation>Prüfberichte</translation>
    </message>
    <message>
        <source>letter of intent</source>
        <translation>Absichtserklärung</translation>
    </message>
    <message>
        <source>logbooks</source>
        <translation>Bordbuch, Motorbuch und Propellerbuch</translation>
    </message>
    <message>
        <source>major portion checklist</source>
        <translation>Prüfliste des überwiegenden Teils</translation>
    </message>
    <message>
        <source>operating limitations</source>
        <translation>Betriebsbedingungen</translation>
    </message>
    <message>
        <source>placards</source>
        <translation>Hinweisschilder</translation>
    </message>
    <message>
        <source>programme letter</source>
        <translation>Programmschreiben</translation>
    </message>
    <message>
        <source>test plan</source>
        <translation>Flugerprobungsplan</translation>
    </message>
    <message>
        <source>three view</source>
        <translation>Dreiseitenansicht</translation>
    </message>
    <message>
        <source>weight and balance report</source>
        <translation>Wägebericht mit Schwerpunkt</translation>
    </message>
    <message>
        <source>A merge is not taken back by undo, nor is what was changed before it. The journal takes single changes back; or restore a backup from before the merge.</source>
        <translation>Eine Zusammenführung wird von „Rückgängig“ nicht zurückgenommen, ebenso wenig, was vor ihr geändert wurde. Das Journal nimmt einzelne Änderungen zurück; oder stellen Sie eine Sicherung von vorher wieder her.</translation>
    </message>
    <message>
        <source>A newer version of the program took the project over since: what was changed before is not taken back by undo. The journal takes single changes back.</source>
        <translation>Eine neuere Version des Programms hat das Projekt seither übernommen: Was vorher geändert wurde, nimmt „Rückgängig“ nicht zurück. Das Journal nimmt einzelne Änderungen zurück.</translation>
    </message>
    <message>
        <source>“{0}” was printed since: what a paper says is not taken back by undo. The journal takes single changes back, by a new one.</source>
        <translation>„{0}“ wurde seither gedruckt: Was auf einem Papier steht, nimmt „Rückgängig“ nicht zurück. Das Journal nimmt einzelne Änderungen durch eine neue zurück.</translation>
    </message>
    <message>
        <source>“{0}” may be {1} or {2}; write {1} when that is meant.</source>
        <translation>„{0}“ kann {1} oder {2} sein; schreiben Sie {1}, wenn das gemeint ist.</translation>
    </message>
    <message>
        <source>“{0}” is longer than from the one time of day to the other; it is what counts.</source>
        <translation>„{0}“ ist länger als von der einen Uhrzeit zur anderen; diese Dauer gilt.</translation>
    </message>
    <message>
        <source>The limits are in {0} and in {1}; write both in one unit.</source>
        <translation>Die Grenzen sind in {0} und in {1}; schreiben Sie beide in einer Einheit.</translation>
    </message>
    <message>
        <source>“{0}” was not understood: write limits as 1.4-1.6 mm, max 1.6 mm or 20 ± 0.5 mm.</source>
        <translation>„{0}“ wurde nicht verstanden: Schreiben Sie Grenzen als 1,4-1,6 mm, max 1,6 mm oder 20 ± 0,5 mm.</translation>
    </message>
    <message>
        <source>“{0} {1}” is a measure and no amount: begin with what was paid.</source>
        <translation>„{0} {1}“ ist ein Maß und kein Betrag: Beginnen Sie mit dem, was bezahlt wurde.</translation>
    </message>
    <message>
        <source>The project&apos;s own limit of {0} is in “{1}”, which is no unit of torque.</source>
        <translation>Die eigene Grenze des Projekts für {0} ist in „{1}“, was keine Einheit für Drehmomente ist.</translation>
    </message>
    <message>
        <source>The project&apos;s own limit of {0}, from {1}, does not go with the table&apos;s {2} to {3} {4}: write down both its ends.</source>
        <translation>Die eigene Grenze des Projekts für {0}, aus {1}, passt nicht zu den {2} bis {3} {4} der Tabelle: Schreiben Sie beide Enden auf.</translation>
    </message>
    <message>
        <source>Boxes stand for characters that no typeface here has: {0}</source>
        <translation>Kästchen stehen für Zeichen, die keine Schrift hier hat: {0}</translation>
    </message>
    <message>
        <source>each point once for each closing</source>
        <translation>jeder Punkt einmal je Schließstelle</translation>
    </message>
    <message>
        <source>{0} closings</source>
        <translation>{0} Schließstellen</translation>
    </message>
    <message>
        <source>{0} points are open beside what is asked above; {1} of them are named here.</source>
        <translation>Außer dem, worum oben gebeten wird, sind {0} Punkte offen; {1} davon sind hier genannt.</translation>
    </message>
    <message>
        <source>{0} points are open; {1} of them are named here.</source>
        <translation>Offen sind {0} Punkte; {1} davon sind hier genannt.</translation>
    </message>
    <message>
        <source>{0}: {1} at {2}</source>
        <translation>{0}: {1} bei {2}</translation>
    </message>
    <message>
        <source>Bought engines, propellers, wheels, brakes, instruments and standard hardware count neither way.</source>
        <translation>Zugekaufte Motoren, Propeller, Räder, Bremsen, Instrumente und Normteile zählen für keine Seite.</translation>
    </message>
    <message>
        <source>Bought engines, propellers, wheels, brakes, instruments and standard hardware count neither way; salvaged assemblies go to the maker.</source>
        <translation>Zugekaufte Motoren, Propeller, Räder, Bremsen, Instrumente und Normteile zählen für keine Seite; wiederverwendete Baugruppen zählen für den Hersteller.</translation>
    </message>
    <message>
        <source>Covering and painting count as fabrication.</source>
        <translation>Bespannen und Lackieren zählen als Fertigung.</translation>
    </message>
    <message>
        <source>Every row is one point in tenths, adding to exactly one; rows may be not applicable, rows may be added.</source>
        <translation>Jede Zeile ist ein Punkt in Zehnteln, die zusammen genau eins ergeben; Zeilen dürfen entfallen, Zeilen dürfen dazukommen.</translation>
    </message>
    <message>
        <source>From memory, no document seen</source>
        <translation>Aus dem Gedächtnis, kein Dokument gesehen</translation>
    </message>
    <message>
        <source>From memory, no document seen [from memory]</source>
        <translation>Aus dem Gedächtnis, kein Dokument gesehen</translation>
    </message>
    <message>
        <source>Not every piece has to be made by the builder: work on a representative number of the pieces in a row earns the tick.</source>
        <translation>Nicht jedes Stück muss der Erbauer fertigen: Arbeit an einer repräsentativen Zahl der Stücke einer Zeile bringt das Häkchen.</translation>
    </message>
    <message>
        <source>Paid help moves points out of the builder&apos;s columns; log it before it is used.</source>
        <translation>Bezahlte Hilfe nimmt Punkte aus den Spalten des Erbauers; sie ist einzutragen, bevor sie in Anspruch genommen wird.</translation>
    </message>
    <message>
        <source>Practice of the trade, from builders&apos; and inspectors&apos; accounts; no published standard</source>
        <translation>Übung des Handwerks, nach Berichten von Erbauern und Prüfern; keine veröffentlichte Norm</translation>
    </message>
    <message>
        <source>Practice of the trade, from builders&apos; and inspectors&apos; accounts; no published standard [second-hand]</source>
        <translation>Übung des Handwerks, nach Berichten von Erbauern und Prüfern; keine veröffentlichte Norm [aus zweiter Hand]</translation>
    </message>
    <message>
        <source>Tasks count, hours do not.</source>
        <translation>Aufgaben zählen, Stunden nicht.</translation>
    </message>
    <message>
        <source>The major portion is made and put together by people who build for their own education or recreation alone.</source>
        <translation>Den überwiegenden Teil fertigen und montieren Menschen, die nur zur eigenen Bildung oder Erholung bauen.</translation>
    </message>
    <message>
        <source>The majority of the work is the builder&apos;s own.</source>
        <translation>Der größere Teil der Arbeit ist die des Erbauers selbst.</translation>
    </message>
    <message>
        <source>The share is the builder&apos;s two columns over all four.</source>
        <translation>Der Anteil ist die Summe der beiden Spalten des Erbauers durch die aller vier.</translation>
    </message>
    <message>
        <source>Earlier changes, in the inspection packet: {0}.</source>
        <translation>Frühere Änderungen, in der Prüfmappe: {0}.</translation>
    </message>
    <message>
        <source>More findings, in the inspection packet: {0}.</source>
        <translation>Weitere Feststellungen, in der Prüfmappe: {0}.</translation>
    </message>
    <message>
        <source>Of equipment fitted or removed since the weighing, items that are not in the sum, without weight or arm on record: {0}.</source>
        <translation>Von der seit der Wägung ein- oder ausgebauten Ausrüstung nicht in der Summe, weil Masse oder Hebelarm nicht verzeichnet ist, Posten: {0}.</translation>
    </message>
    <message>
        <source>{0} was not signed before the closing, only after it</source>
        <translation>{0} war vor dem Schließen nicht unterschrieben, erst danach</translation>
    </message>
    <message>
        <source>The file {0} has letters in its name that mean something else on other systems, as a backslash does; it is not looked for.</source>
        <translation>Die Datei {0} hat Zeichen im Namen, die auf anderen Systemen etwas anderes bedeuten, wie ein umgekehrter Schrägstrich; sie wird nicht gesucht.</translation>
    </message>
    <message>
        <source>The file {0} would lie among what the program itself keeps in the project&apos;s folder.</source>
        <translation>Die Datei {0} läge unter dem, was das Programm selbst im Ordner des Projekts aufbewahrt.</translation>
    </message>
    <message>
        <source>The file {0} would lie behind a link that leads out of the project&apos;s folder; it is not looked for.</source>
        <translation>Die Datei {0} läge hinter einem Verweis, der aus dem Ordner des Projekts hinausführt; sie wird nicht gesucht.</translation>
    </message>
    <message>
        <source>The file {0} would lie outside the project&apos;s folder.</source>
        <translation>Die Datei {0} läge außerhalb des Projektordners.</translation>
    </message>
    <message>
        <source>Another program has {0} open for writing; close it first.</source>
        <translation>Ein anderes Programm hat {0} zum Schreiben geöffnet; erst dort schließen.</translation>
    </message>
    <message>
        <source>Another program holds the project&apos;s database just now.</source>
        <translation>Ein anderes Programm hält gerade die Datenbank des Projekts.</translation>
    </message>
    <message>
        <source>Another program keeps writing to the project; it could not be copied.</source>
        <translation>Ein anderes Programm schreibt fortwährend in das Projekt; es ließ sich nicht kopieren.</translation>
    </message>
    <message>
        <source>Another program keeps writing to the project; try again later.</source>
        <translation>Ein anderes Programm schreibt fortwährend in das Projekt; später noch einmal versuchen.</translation>
    </message>
    <message>
        <source>Another program makes a project in this folder just now.</source>
        <translation>Ein anderes Programm legt gerade ein Projekt in diesem Ordner an.</translation>
    </message>
    <message>
        <source>Its tables are not those of schema {0}: {1}.</source>
        <translation>Ihre Tabellen sind nicht die von Schema {0}: {1}.</translation>
    </message>
    <message>
        <source>No temporary folder could be made: {0}.</source>
        <translation>Es ließ sich kein vorübergehender Ordner anlegen: {0}.</translation>
    </message>
    <message>
        <source>Nothing was mended. {0}</source>
        <translation>Nichts wurde ausgebessert. {0}</translation>
    </message>
    <message>
        <source>Row {0} of the journal (“{1}”) does not fit the records; verify the project before merging.</source>
        <translation>Zeile {0} des Journals („{1}“) passt nicht zu den Aufzeichnungen; vor dem Zusammenführen das Projekt nachprüfen.</translation>
    </message>
    <message>
        <source>SHA-256 is not available on this computer.</source>
        <translation>SHA-256 steht auf diesem Rechner nicht zur Verfügung.</translation>
    </message>
    <message>
        <source>The backup of {0} stays as it was</source>
        <translation>Die Sicherung vom {0} bleibt, wie sie war</translation>
    </message>
    <message>
        <source>The backup was not finished: {0} {1}</source>
        <translation>Die Sicherung wurde nicht fertig: {0} {1}</translation>
    </message>
    <message>
        <source>The character U+0000 is not allowed, but stands at line {0}, column {1}.</source>
        <translation>Das Zeichen U+0000 ist nicht erlaubt, steht aber in Zeile {0}, Spalte {1}.</translation>
    </message>
    <message>
        <source>The copy {0} does not read back as it was written; it was removed.</source>
        <translation>Die Kopie {0} liest sich nicht so zurück, wie sie geschrieben wurde; sie wurde entfernt.</translation>
    </message>
    <message>
        <source>The copy {0} is not what was copied.</source>
        <translation>Die Kopie {0} ist nicht, was kopiert wurde.</translation>
    </message>
    <message>
        <source>The database holds a value larger than any that Lastrivet writes.</source>
        <translation>Die Datenbank enthält einen Wert, der größer ist als jeder, den Lastrivet schreibt.</translation>
    </message>
    <message>
        <source>The database is cut short: {0} holds {1} of {2} bytes. Restore a backup.</source>
        <translation>Die Datenbank ist abgeschnitten: {0} enthält {1} von {2} Byte. Eine Sicherung zurückholen.</translation>
    </message>
    <message>
        <source>The database is damaged ({0}); restore a backup.</source>
        <translation>Die Datenbank ist beschädigt ({0}); eine Sicherung zurückholen.</translation>
    </message>
    <message>
        <source>The database is damaged: {0} {1} has an impossible {2}.</source>
        <translation>Die Datenbank ist beschädigt: {0} {1} hat ein unmögliches {2}.</translation>
    </message>
    <message>
        <source>The database refused: {0}.</source>
        <translation>Die Datenbank hat abgelehnt: {0}.</translation>
    </message>
    <message>
        <source>The database was altered by another program: {0}. Restore a backup.</source>
        <translation>Die Datenbank wurde von einem anderen Programm verändert: {0}. Eine Sicherung zurückholen.</translation>
    </message>
    <message>
        <source>The disk could not be read or written ({0}); nothing was changed.</source>
        <translation>Der Datenträger war nicht zu lesen oder zu beschreiben ({0}); nichts wurde geändert.</translation>
    </message>
    <message>
        <source>The disk is full; nothing was changed.</source>
        <translation>Der Datenträger ist voll; nichts wurde geändert.</translation>
    </message>
    <message>
        <source>The folder of the project has no name.</source>
        <translation>Der Ordner des Projekts hat keinen Namen.</translation>
    </message>
    <message>
        <source>The folder {0} was not written: {1} Nothing was left behind.</source>
        <translation>Der Ordner {0} wurde nicht geschrieben: {1} Nichts ist zurückgeblieben.</translation>
    </message>
    <message>
        <source>The folder {0} was not written: {1}. Nothing was left behind.</source>
        <translation>Der Ordner {0} wurde nicht geschrieben: {1}. Nichts ist zurückgeblieben.</translation>
    </message>
    <message>
        <source>The journal is damaged: no row can follow row {0}.</source>
        <translation>Das Journal ist beschädigt: Auf Zeile {0} kann keine weitere folgen.</translation>
    </message>
    <message>
        <source>The journal is damaged: no time comes after that of row {0}.</source>
        <translation>Das Journal ist beschädigt: Nach der Zeit von Zeile {0} kommt keine mehr.</translation>
    </message>
    <message>
        <source>The journal is damaged: row {0} is of no known kind.</source>
        <translation>Das Journal ist beschädigt: Zeile {0} ist von keiner bekannten Art.</translation>
    </message>
    <message>
        <source>The journal is damaged: {0} {1} has an impossible {2}.</source>
        <translation>Das Journal ist beschädigt: {0} {1} hat ein unmögliches {2}.</translation>
    </message>
    <message>
        <source>The journal speaks of a table {0} of another shape.</source>
        <translation>Das Journal spricht von einer Tabelle {0} anderer Form.</translation>
    </message>
    <message>
        <source>The other copy&apos;s journal is broken, so nothing was merged: {0}.</source>
        <translation>Das Journal der anderen Kopie ist unterbrochen, deshalb wurde nichts zusammengeführt: {0}.</translation>
    </message>
    <message>
        <source>The packet was not written: {0}.</source>
        <translation>Die Prüfmappe wurde nicht geschrieben: {0}.</translation>
    </message>
    <message>
        <source>The picture {0} could not be read.</source>
        <translation>Das Bild {0} war nicht zu lesen.</translation>
    </message>
    <message>
        <source>The project cannot be written ({0}).</source>
        <translation>In das Projekt kann nicht geschrieben werden ({0}).</translation>
    </message>
    <message>
        <source>The project could not be brought from schema {0} to {1} ({2}), is whole at schema {3}, and {4}.</source>
        <translation>Das Projekt ließ sich nicht von Schema {0} auf {1} bringen ({2}), ist bei Schema {3} vollständig, und {4}.</translation>
    </message>
    <message>
        <source>The project was never finished being made; make it anew.</source>
        <translation>Das Projekt wurde nie fertig angelegt; neu anlegen.</translation>
    </message>
    <message>
        <source>The project was written by a newer Lastrivet (schema {0}; this one knows {1}). It was left as it is.</source>
        <translation>Das Projekt wurde von einem neueren Lastrivet geschrieben (Schema {0}; dieses kennt {1}). Es blieb, wie es ist.</translation>
    </message>
    <message>
        <source>The starter cannot be used: {0}.</source>
        <translation>Die Vorlage ist nicht zu gebrauchen: {0}.</translation>
    </message>
    <message>
        <source>The table of what merges left to decide is damaged.</source>
        <translation>Die Tabelle dessen, was beim Zusammenführen zu entscheiden blieb, ist beschädigt.</translation>
    </message>
    <message>
        <source>The text is no UTF-8 at line {0}, column {1}.</source>
        <translation>Der Text ist in Zeile {0}, Spalte {1} kein UTF-8.</translation>
    </message>
    <message>
        <source>The workshop table {0} could not be read; it should be {1}.</source>
        <translation>Die Werkstatttabelle {0} war nicht zu lesen; sie sollte hier liegen: {1}.</translation>
    </message>
    <message>
        <source>There is no folder for temporary files; TMPDIR may name one.</source>
        <translation>Es gibt keinen Ordner für vorübergehende Dateien; TMPDIR kann einen nennen.</translation>
    </message>
    <message>
        <source>There is no folder {0}; plug its disk in, or make it.</source>
        <translation>Es gibt keinen Ordner {0}; den Datenträger anschließen oder den Ordner anlegen.</translation>
    </message>
    <message>
        <source>There is no rule profile &quot;{0}&quot;; there are: {1}.</source>
        <translation>Es gibt kein Regelprofil „{0}“; vorhanden sind: {1}.</translation>
    </message>
    <message>
        <source>This build of SQLite lacks a protection that project files need.</source>
        <translation>Diesem SQLite fehlt ein Schutz, den Projektdateien brauchen.</translation>
    </message>
    <message>
        <source>This computer gives no random numbers.</source>
        <translation>Dieser Rechner gibt keine Zufallszahlen.</translation>
    </message>
    <message>
        <source>This is no JSON at line {0}, column {1}.</source>
        <translation>Das ist in Zeile {0}, Spalte {1} kein JSON.</translation>
    </message>
    <message>
        <source>a folder has that name</source>
        <translation>ein Ordner heißt so</translation>
    </message>
    <message>
        <source>as it was it is kept in {0}</source>
        <translation>wie es war, ist es aufgehoben in {0}</translation>
    </message>
    <message>
        <source>it has “{0}”</source>
        <translation>sie hat „{0}“</translation>
    </message>
    <message>
        <source>it lacks “{0}”</source>
        <translation>ihr fehlt „{0}“</translation>
    </message>
    <message>
        <source>its row {0} (“{1}”) does not follow the row before it</source>
        <translation>seine Zeile {0} („{1}“) schließt nicht an die Zeile davor an</translation>
    </message>
    <message>
        <source>its row {0} (“{1}”) is of a time after the year 2199</source>
        <translation>seine Zeile {0} („{1}“) ist von einer Zeit nach dem Jahr 2199</translation>
    </message>
    <message>
        <source>its row {0} (“{1}”) is out of sequence</source>
        <translation>seine Zeile {0} („{1}“) steht nicht in der Reihenfolge</translation>
    </message>
    <message>
        <source>its row {0} (“{1}”) was altered</source>
        <translation>seine Zeile {0} („{1}“) wurde verändert</translation>
    </message>
    <message>
        <source>no copy of it could be made</source>
        <translation>es ließ sich keine Kopie davon machen</translation>
    </message>
    <message>
        <source>records.db is not a database.</source>
        <translation>records.db ist keine Datenbank.</translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation>der Datenträger ist voll</translation>
    </message>
    <message>
        <source>the folder cannot be written</source>
        <translation>in den Ordner kann nicht geschrieben werden</translation>
    </message>
    <message>
        <source>the {0} is not Lastrivet&apos;s, and could change or hide records; until it is removed the project can only be read</source>
        <translation>{0} ist nicht von Lastrivet und könnte Aufzeichnungen ändern oder verbergen; bis es entfernt ist, lässt sich das Projekt nur lesen</translation>
    </message>
    <message>
        <source>{0} cannot be locked: {1}.</source>
        <translation>{0} lässt sich nicht sperren: {1}.</translation>
    </message>
    <message>
        <source>{0} cannot be read.</source>
        <translation>{0} ist nicht zu lesen.</translation>
    </message>
    <message>
        <source>{0} cannot be written: {1}.</source>
        <translation>{0} ist nicht zu beschreiben: {1}.</translation>
    </message>
    <message>
        <source>{0} cannot be written: {1}; nothing was changed there.</source>
        <translation>{0} ist nicht zu beschreiben: {1}; dort wurde nichts geändert.</translation>
    </message>
    <message>
        <source>{0} cannot be written; nothing was changed there.</source>
        <translation>{0} ist nicht zu beschreiben; dort wurde nichts geändert.</translation>
    </message>
    <message>
        <source>{0} could not be made: {1}</source>
        <translation>{0} ließ sich nicht anlegen: {1}</translation>
    </message>
    <message>
        <source>{0} could not be made: {1}.</source>
        <translation>{0} ließ sich nicht anlegen: {1}.</translation>
    </message>
    <message>
        <source>{0} could not be read or written: {1}.</source>
        <translation>{0} ließ sich nicht lesen oder schreiben: {1}.</translation>
    </message>
    <message>
        <source>{0} could not be read.</source>
        <translation>{0} war nicht zu lesen.</translation>
    </message>
    <message>
        <source>{0} could not be written: {1}.</source>
        <translation>{0} ließ sich nicht schreiben: {1}.</translation>
    </message>
    <message>
        <source>{0} does not read back as it was written; the disk may be failing.</source>
        <translation>{0} liest sich nicht so zurück, wie es geschrieben wurde; der Datenträger könnte am Ende sein.</translation>
    </message>
    <message>
        <source>{0} exists already; choose another name.</source>
        <translation>{0} gibt es schon; einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>{0} has changes that this project has not; they would be lost, so nothing was changed. Choose another folder.</source>
        <translation>{0} hat Änderungen, die dieses Projekt nicht hat; sie wären verloren, deshalb wurde nichts geändert. Einen anderen Ordner wählen.</translation>
    </message>
    <message>
        <source>{0} holds another project; nothing was changed.</source>
        <translation>{0} enthält ein anderes Projekt; nichts wurde geändert.</translation>
    </message>
    <message>
        <source>{0} is a folder, not a file.</source>
        <translation>{0} ist ein Ordner und keine Datei.</translation>
    </message>
    <message>
        <source>{0} is a link that leads nowhere; nothing was written.</source>
        <translation>{0} ist eine Verknüpfung, die ins Leere führt; nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>{0} is a link to another place, where the lists could take the place of other files; remove it first.</source>
        <translation>{0} ist eine Verknüpfung zu einem anderen Ort, wo die Listen andere Dateien verdrängen könnten; sie zuerst entfernen.</translation>
    </message>
    <message>
        <source>{0} is in the way; rename it, or choose another name.</source>
        <translation>{0} ist im Weg; umbenennen oder einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>{0} is longer than any list of records.</source>
        <translation>{0} ist länger als jede Liste von Aufzeichnungen.</translation>
    </message>
    <message>
        <source>{0} is no file but a device or a pipe; nothing was written. Name a file.</source>
        <translation>{0} ist keine Datei, sondern ein Gerät oder eine Pipe; nichts wurde geschrieben. Eine Datei nennen.</translation>
    </message>
    <message>
        <source>{0} is not a Lastrivet project.</source>
        <translation>{0} ist kein Lastrivet-Projekt.</translation>
    </message>
    <message>
        <source>{0} is not a Lastrivet project: it has no records.db.</source>
        <translation>{0} ist kein Lastrivet-Projekt: Es enthält keine records.db.</translation>
    </message>
    <message>
        <source>{0} is not there.</source>
        <translation>{0} ist nicht da.</translation>
    </message>
    <message>
        <source>{0} is there already and is no backup of this project.</source>
        <translation>{0} ist schon da und keine Sicherung dieses Projekts.</translation>
    </message>
    <message>
        <source>{0} lies inside {1}; choose another disk or folder.</source>
        <translation>{0} liegt in {1}; einen anderen Datenträger oder Ordner wählen.</translation>
    </message>
    <message>
        <source>{0} or {1} could not be read or written: {2}.</source>
        <translation>{0} oder {1} ließ sich nicht lesen oder schreiben: {2}.</translation>
    </message>
    <message>
        <source>{0} was not written: even without photographs it would be larger than {1} MB. Nothing was left behind.</source>
        <translation>{0} wurde nicht geschrieben: Selbst ohne Fotos wäre es größer als {1} MB. Nichts ist zurückgeblieben.</translation>
    </message>
    <message>
        <source>{0} was not written: {1} could not be read.</source>
        <translation>{0} wurde nicht geschrieben: {1} war nicht zu lesen.</translation>
    </message>
    <message>
        <source>{0} was not written: {1}. Nothing was left behind.</source>
        <translation>{0} wurde nicht geschrieben: {1}. Nichts ist zurückgeblieben.</translation>
    </message>
    <message>
        <source>{0} {1} names a {2} that does not exist.</source>
        <translation>{0} {1} nennt einen Eintrag {2}, den es nicht gibt.</translation>
    </message>
    <message>
        <source>{0} {1}.</source>
        <translation>{0} {1}.</translation>
    </message>
    <message>
        <source>{0}, and 1 file copied so far will not be copied again.</source>
        <translation>{0}, und 1 Datei, die schon kopiert ist, wird nicht noch einmal kopiert.</translation>
    </message>
    <message>
        <source>{0}, and {1} files copied so far will not be copied again.</source>
        <translation>{0}, und {1} Dateien, die schon kopiert sind, werden nicht noch einmal kopiert.</translation>
    </message>
    <message>
        <source>{0}: /id is &quot;{1}&quot;, not what the file is called.</source>
        <translation>{0}: /id ist „{1}“ und nicht, wie die Datei heißt.</translation>
    </message>
    <message>
        <source>{0}: {1} {2}.</source>
        <translation>{0}: {1} {2}.</translation>
    </message>
    <message>
        <source>The number at line {0}, column {1} is too large.</source>
        <translation>Die Zahl in Zeile {0}, Spalte {1} ist zu groß.</translation>
    </message>
    <message>
        <source>The text ends too early, at line {0}, column {1}.</source>
        <translation>Der Text endet zu früh, in Zeile {0}, Spalte {1}.</translation>
    </message>
    <message>
        <source>{0} [from memory]</source>
        <translation>{0} [aus dem Gedächtnis]</translation>
    </message>
    <message>
        <source>{0} [second-hand]</source>
        <translation>{0} [aus zweiter Hand]</translation>
    </message>
    <message>
        <source>and {0} more on record, squawks of airworthiness among them: {1}</source>
        <translation>und {0} weitere verzeichnet, davon Beanstandungen der Lufttüchtigkeit: {1}</translation>
    </message>
    <message>
        <source>{0} points are asked; {1} of them are named here, all of them under Readiness.</source>
        <translation>Gebeten wird um {0} Punkte; {1} davon sind hier genannt, alle unter „Stand“.</translation>
    </message>
    <message>
        <source>{0} could not be written.</source>
        <translation>{0} ließ sich nicht schreiben.</translation>
    </message>
    <message>
        <source>{0} {1} {2} {3} {4} {5} {6} {7}</source>
        <translation>{0} {1} {2} {3} {4} {5} {6} {7}</translation>
    </message>
    <message>
        <source>Nothing is left out: 1 row.</source>
        <translation>Nichts ist weggelassen: 1 Zeile.</translation>
    </message>
    <message>
        <source>on record: {0}</source>
        <translation>verzeichnet: {0}</translation>
    </message>
    <message>
        <source>{0}: 1 point</source>
        <translation>{0}: 1 Punkt</translation>
    </message>
    <message>
        <source>{0}: {1} points</source>
        <translation>{0}: {1} Punkte</translation>
    </message>
    <message>
        <source>The project&apos;s own limit of {0} is in {1}: write the unit of the drag, too.</source>
        <translation>Die eigene Grenze des Projekts für {0} steht in {1}: Schreiben Sie auch die Einheit des Laufmoments.</translation>
    </message>
    <message>
        <source>“{0} {1}”: write the amount with its decimals, like 0.50.</source>
        <translation>„{0} {1}“: Schreiben Sie den Betrag mit Nachkommastellen, wie 0,50.</translation>
    </message>
    <message>
        <source>{0} cannot be read: {1}.</source>
        <translation>{0} ist nicht zu lesen: {1}.</translation>
    </message>
    <message>
        <source>{0} is not a Lastrivet project: the file is empty. If it was one, restore a backup.</source>
        <translation>{0} ist kein Lastrivet-Projekt: Die Datei ist leer. War es eines, eine Sicherung zurückholen.</translation>
    </message>
    <message>
        <source>{0} is what a Lastrivet project keeps; nothing was written. Choose another name or folder.</source>
        <translation>{0} gehört zu dem, was ein Lastrivet-Projekt aufbewahrt; nichts wurde geschrieben. Einen anderen Namen oder Ordner wählen.</translation>
    </message>
    <message>
        <source>{0} could not be given its name: {1}; the document lies beside its place as {2}.</source>
        <translation>{0} konnte seinen Namen nicht bekommen: {1}; das Dokument liegt daneben als {2}.</translation>
    </message>
    <message>
        <source>it is a folder, not a file</source>
        <translation>es ist ein Ordner, keine Datei</translation>
    </message>
    <message>
        <source>it is not there</source>
        <translation>es ist nicht da</translation>
    </message>
    <message>
        <source>its permissions forbid it</source>
        <translation>die Zugriffsrechte verbieten es</translation>
    </message>
    <message>
        <source>the disk reports an error</source>
        <translation>der Datenträger meldet einen Fehler</translation>
    </message>
    <message>
        <source>the disk takes no file so large</source>
        <translation>der Datenträger nimmt keine so große Datei an</translation>
    </message>
    <message>
        <source>the name is too long</source>
        <translation>der Name ist zu lang</translation>
    </message>
    <message>
        <source>{0} cannot be locked: its file system has no locks.</source>
        <translation>{0} kann nicht gesperrt werden: Das Dateisystem kennt keine Sperren.</translation>
    </message>
    <message>
        <source>How much of each kind is on record for a closing stands under Readiness.</source>
        <translation>Wie viel von jeder Art zu einer Schließstelle verzeichnet ist, steht unter Stand.</translation>
    </message>
    <message>
        <source>Which</source>
        <translation>Welche</translation>
    </message>
    <message>
        <source>lines to check {0}</source>
        <translation>zu prüfende Zeilen {0}</translation>
    </message>
    <message>
        <source>{0} closings, all named below as closed with gaps</source>
        <translation>{0} Schließstellen, alle unten als mit Lücken geschlossen genannt</translation>
    </message>
    <message>
        <source>“{0}” is not in {1}: write it in {1}, or choose the other unit first.</source>
        <translation>„{0}“ ist nicht in {1}: Schreiben Sie es in {1}, oder wählen Sie zuerst die andere Einheit.</translation>
    </message>
    <message>
        <source>“{0}”: choose the unit first, and write the number alone or in it.</source>
        <translation>„{0}“: Wählen Sie zuerst die Einheit, und schreiben Sie die Zahl allein oder in dieser Einheit.</translation>
    </message>
    <message>
        <source>Prices without a currency ({0}) are taken in {1}, though others of the list are in {2}.</source>
        <translation>Preise ohne Währung ({0}) gelten in {1}, obwohl andere der Liste in {2} stehen.</translation>
    </message>
    <message>
        <source>“{0}” may be {1}, or {2} for a count; write {1} or {2}.</source>
        <translation>„{0}“ kann {1} sein oder {2} für eine Anzahl; schreiben Sie {1} oder {2}.</translation>
    </message>
    <message>
        <source>“{0}” may be {1} fasteners or one: write {1} x {2}, or 1 x {0}.</source>
        <translation>„{0}“ können {1} Verbindungselemente oder eines sein: Schreiben Sie {1} x {2} oder 1 x {0}.</translation>
    </message>
    <message>
        <source>{0} is no number of pieces; write it in figures alone, as 12 or 1200.</source>
        <translation>{0} ist keine Stückzahl; schreiben Sie sie nur in Ziffern, wie 12 oder 1200.</translation>
    </message>
    <message>
        <source>“{0}” is taken for hours and minutes; put a comma behind the hours when the number is a count.</source>
        <translation>„{0}“ gilt als Stunden und Minuten; setzen Sie ein Komma hinter die Stunden, wenn die Zahl eine Anzahl ist.</translation>
    </message>
    <message>
        <source>“{0}” may be a time of day or how long it took; write from 8:00 to 10:30, or 2h30.</source>
        <translation>„{0}“ kann eine Uhrzeit sein oder die Dauer; schreiben Sie von 8:00 bis 10:30 oder 2h30.</translation>
    </message>
    <message>
        <source>Deviations that change the weight, built since the weighing and not in it: {0}.</source>
        <translation>Abweichungen, die die Masse ändern, seit der Wägung gebaut und nicht in ihr enthalten: {0}.</translation>
    </message>
    <message>
        <source>{0} by the clock, {1} of all who worked</source>
        <translation>{0} nach der Uhr, {1} aller, die arbeiteten</translation>
    </message>
    <message>
        <source>The file {0} was damaged and is there again as it was taken in; the damaged one is kept as {1}.</source>
        <translation>Die Datei {0} war beschädigt und ist wieder so da, wie sie aufgenommen wurde; die beschädigte ist als {1} aufgehoben.</translation>
    </message>
    <message>
        <source>The file {0} was missing and is there again.</source>
        <translation>Die Datei {0} fehlte und ist wieder da.</translation>
    </message>
    <message>
        <source>“{0}” may be a time of day; write from 8:00 to 10:30.</source>
        <translation>„{0}“ kann eine Uhrzeit sein; schreiben Sie von 8:00 bis 10:30.</translation>
    </message>
    <message>
        <source>“{0}” may be the one time or the other; write one, as 2h30.</source>
        <translation>„{0}“ kann die eine oder die andere Zeit sein; schreiben Sie eine, wie 2h30.</translation>
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
    <name>Money</name>
    <message>
        <source>No currency in force by ISO 4217: %1; the amounts are kept as they are.</source>
        <translation>Keine gültige Währung nach ISO 4217: %1; die Beträge bleiben, wie sie sind.</translation>
    </message>
</context>
<context>
    <name>Packet</name>
    <message>
        <source>Packet for %1</source>
        <translation>Prüfmappe für %1</translation>
    </message>
    <message>
        <source>Packet %1</source>
        <translation>Prüfmappe %1</translation>
    </message>
    <message numerus="yes">
        <source>%n closings</source>
        <translation>
            <numerusform>%Ln Schließstelle</numerusform>
            <numerusform>%Ln Schließstellen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n files are no longer what was taken in.</source>
        <translation>
            <numerusform>%Ln Datei ist nicht mehr, was übernommen wurde.</numerusform>
            <numerusform>%Ln Dateien sind nicht mehr, was übernommen wurde.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n files were not in the project.</source>
        <translation>
            <numerusform>%Ln Datei war nicht im Projekt.</numerusform>
            <numerusform>%Ln Dateien waren nicht im Projekt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photographs are beside it in full size.</source>
        <translation>
            <numerusform>%Ln Foto liegt in voller Größe daneben.</numerusform>
            <numerusform>%Ln Fotos liegen in voller Größe daneben.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photographs are left out.</source>
        <translation>
            <numerusform>%Ln Foto ist weggelassen.</numerusform>
            <numerusform>%Ln Fotos sind weggelassen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Corrections report</source>
        <translation>Bericht der Behebungen</translation>
    </message>
    <message>
        <source>It has %1 MB.</source>
        <translation>Sie hat %1 MB.</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>What changed since the signature</source>
        <translation>Was sich seit der Unterschrift geändert hat</translation>
    </message>
    <message>
        <source>Where it goes</source>
        <translation>Wohin es kommt</translation>
    </message>
    <message>
        <source>Nobody has signed there yet.</source>
        <translation>Dort hat noch niemand unterschrieben.</translation>
    </message>
    <message>
        <source>The visit is not on record as held.</source>
        <translation>Der Besuch ist nicht als durchgeführt verzeichnet.</translation>
    </message>
    <message>
        <source>Corrections report %1</source>
        <translation>Bericht der Behebungen %1</translation>
    </message>
    <message>
        <source>What changed since the signature, %1</source>
        <translation>Was sich seit der Unterschrift geändert hat, %1</translation>
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
        <translation>Beanstandungen</translation>
    </message>
    <message>
        <source>Closings</source>
        <translation>Schließstellen</translation>
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
    <message>
        <source>Journal</source>
        <translation>Journal</translation>
    </message>
    <message>
        <source>Workshop</source>
        <translation>Werkstatt</translation>
    </message>
</context>
<context>
    <name>PaperModel</name>
    <message>
        <source>Document</source>
        <translation>Dokument</translation>
    </message>
    <message>
        <source>Needed</source>
        <translation>Nötig</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>Scans</source>
        <translation>Scans</translation>
    </message>
</context>
<context>
    <name>PartMoves</name>
    <message>
        <source>%1 moved to %2</source>
        <translation>%1 nach %2 verschoben</translation>
    </message>
    <message>
        <source>%1 moved to the top</source>
        <translation>%1 ganz nach oben verschoben</translation>
    </message>
    <message numerus="yes">
        <source>%n parts</source>
        <translation>
            <numerusform>%Ln Teil</numerusform>
            <numerusform>%Ln Teile</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PartTree</name>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>Squawks</source>
        <translation>Beanst.</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>work left</source>
        <translation>noch Arbeit</translation>
    </message>
    <message>
        <source>inspection</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>signature</source>
        <translation>Unterschrift</translation>
    </message>
    <message>
        <source>none against</source>
        <translation>nichts dagegen</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>geschlossen</translation>
    </message>
    <message>
        <source>closed, gaps</source>
        <translation>zu, Lücken</translation>
    </message>
</context>
<context>
    <name>PhotoSections</name>
    <message>
        <source>Belonging to no part</source>
        <translation>Ohne Teil</translation>
    </message>
    <message>
        <source>Without a date</source>
        <translation>Ohne Datum</translation>
    </message>
</context>
<context>
    <name>PictureFile</name>
    <message>
        <source>This file is no photo.</source>
        <translation>Diese Datei ist kein Foto.</translation>
    </message>
</context>
<context>
    <name>PictureInbox</name>
    <message>
        <source>Choose photos</source>
        <translation>Fotos wählen</translation>
    </message>
    <message>
        <source>Photos and papers (*.jpg *.jpeg *.png *.heic *.pdf);;All files (*)</source>
        <translation>Fotos und Unterlagen (*.jpg *.jpeg *.png *.heic *.pdf);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>pasted picture %1</source>
        <translation>eingefügtes Bild %1</translation>
    </message>
</context>
<context>
    <name>Print</name>
    <message numerus="yes">
        <source>%1 is written: %n pages.</source>
        <translation>
            <numerusform>%1 ist geschrieben: %Ln Seite.</numerusform>
            <numerusform>%1 ist geschrieben: %Ln Seiten.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 is written: %n dates.</source>
        <translation>
            <numerusform>%1 ist geschrieben: %Ln Termin.</numerusform>
            <numerusform>%1 ist geschrieben: %Ln Termine.</numerusform>
        </translation>
    </message>
    <message>
        <source>Blank form: findings of a visit</source>
        <translation>Leeres Formular: Feststellungen eines Besuchs</translation>
    </message>
    <message>
        <source>Blank form: lay-up and glue batches</source>
        <translation>Leeres Formular: Laminat- und Leimansätze</translation>
    </message>
    <message>
        <source>Blank form: log of a week</source>
        <translation>Leeres Formular: Bautagebuch einer Woche</translation>
    </message>
    <message>
        <source>Blank form: torque list</source>
        <translation>Leeres Formular: Drehmomentliste</translation>
    </message>
    <message>
        <source>Calendar file</source>
        <translation>Kalenderdatei</translation>
    </message>
    <message>
        <source>Hand-over book</source>
        <translation>Übergabebuch</translation>
    </message>
    <message>
        <source>Labels for tools</source>
        <translation>Etiketten für Werkzeuge</translation>
    </message>
    <message>
        <source>Shelf labels for material lots</source>
        <translation>Regaletiketten für Materialchargen</translation>
    </message>
    <message>
        <source>Shelf labels for parts</source>
        <translation>Regaletiketten für Teile</translation>
    </message>
    <message>
        <source>Tie-on tags: do not close</source>
        <translation>Anhänger: nicht schließen</translation>
    </message>
    <message numerus="yes">
        <source>%n photographs are in it.</source>
        <translation>
            <numerusform>%Ln Foto ist darin.</numerusform>
            <numerusform>%Ln Fotos sind darin.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photographs could not be printed.</source>
        <translation>
            <numerusform>%Ln Foto konnte nicht gedruckt werden.</numerusform>
            <numerusform>%Ln Fotos konnten nicht gedruckt werden.</numerusform>
        </translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>File for the final inspection</source>
        <translation>Mappe für die Endprüfung</translation>
    </message>
    <message>
        <source>Major portion with its evidence</source>
        <translation>Überwiegender Teil mit seinen Belegen</translation>
    </message>
    <message>
        <source>Weight and balance report</source>
        <translation>Wägebericht mit Schwerpunkt</translation>
    </message>
    <message>
        <source>No typeface on this computer has %1: boxes stand in their place.</source>
        <translation>Keine Schrift auf diesem Computer hat %1: An ihrer Stelle stehen Kästchen.</translation>
    </message>
</context>
<context>
    <name>ProjectFiles</name>
    <message numerus="yes">
        <source>%1: %n files attached</source>
        <translation>
            <numerusform>%1: %Ln Datei angehängt</numerusform>
            <numerusform>%1: %Ln Dateien angehängt</numerusform>
        </translation>
    </message>
    <message>
        <source>This computer has no program that opens %1.</source>
        <translation>Auf diesem Computer öffnet kein Programm %1.</translation>
    </message>
    <message>
        <source>%1 is not opened: it is not there, or is no picture, video or PDF as its name says.</source>
        <translation>%1 wird nicht geöffnet: Die Datei ist nicht da, oder sie ist kein Bild, Video oder PDF, wie ihr Name sagt.</translation>
    </message>
</context>
<context>
    <name>RecordNames</name>
    <message>
        <source>and %1 more</source>
        <translation>und %1 weitere</translation>
    </message>
    <message>
        <source>It is about: %1.</source>
        <translation>Es geht um: %1.</translation>
    </message>
</context>
<context>
    <name>Recording</name>
    <message>
        <source>Logged: %1</source>
        <translation>Eingetragen: %1</translation>
    </message>
    <message>
        <source>Logged: %1 on %2</source>
        <translation>Eingetragen: %1 an %2</translation>
    </message>
    <message>
        <source>work</source>
        <translation>Arbeit</translation>
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
        <translation>Schritte</translation>
    </message>
    <message>
        <source>Work sessions</source>
        <translation>Arbeiten</translation>
    </message>
    <message>
        <source>Closings</source>
        <translation>Schließstellen</translation>
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
        <translation>Abzeichnungen</translation>
    </message>
    <message>
        <source>Squawks</source>
        <translation>Beanstandungen</translation>
    </message>
    <message>
        <source>Deviations</source>
        <translation>Abweichungen</translation>
    </message>
    <message>
        <source>Bulletins</source>
        <translation>Bulletins</translation>
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
        <translation>Materialeinsatz</translation>
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
        <translation>Aufgaben des überwiegenden Teils</translation>
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
    <name>RuleField</name>
    <message>
        <source>id</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>edition</source>
        <translation>Ausgabe</translation>
    </message>
    <message>
        <source>late_acceptance_by</source>
        <translation>nachträgliche Annahme durch</translation>
    </message>
    <message>
        <source>factory_closing_needs_document</source>
        <translation>Werksschließstelle braucht Dokument</translation>
    </message>
    <message>
        <source>credit_basis</source>
        <translation>Zählweise des überwiegenden Teils</translation>
    </message>
    <message>
        <source>interior_photos</source>
        <translation>Innenfotos</translation>
    </message>
    <message>
        <source>one_open_request</source>
        <translation>eine offene Anfrage</translation>
    </message>
    <message>
        <source>late_entry_days</source>
        <translation>Tage bis zum Nachtrag</translation>
    </message>
    <message>
        <source>basis</source>
        <translation>Grundlage</translation>
    </message>
    <message>
        <source>hold_points</source>
        <translation>Haltepunkte</translation>
    </message>
    <message>
        <source>checklists</source>
        <translation>Prüflisten</translation>
    </message>
    <message>
        <source>documents</source>
        <translation>Dokumente</translation>
    </message>
    <message>
        <source>test_period</source>
        <translation>Erprobung</translation>
    </message>
    <message>
        <source>credit</source>
        <translation>überwiegender Teil</translation>
    </message>
    <message>
        <source>cautions</source>
        <translation>Hinweise</translation>
    </message>
    <message>
        <source>words</source>
        <translation>Wörter</translation>
    </message>
    <message>
        <source>sources</source>
        <translation>Quellen</translation>
    </message>
    <message>
        <source>rule</source>
        <translation>Regel</translation>
    </message>
    <message>
        <source>rules</source>
        <translation>Regeln</translation>
    </message>
    <message>
        <source>text</source>
        <translation>Text</translation>
    </message>
    <message>
        <source>source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>Verlässlichkeit</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>signer_role</source>
        <translation>Unterschrift durch</translation>
    </message>
    <message>
        <source>required</source>
        <translation>erforderlich</translation>
    </message>
    <message>
        <source>component_kinds</source>
        <translation>Arten von Teilen</translation>
    </message>
    <message>
        <source>constructions</source>
        <translation>Bauweisen</translation>
    </message>
    <message>
        <source>scope</source>
        <translation>Umfang</translation>
    </message>
    <message>
        <source>item</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>items</source>
        <translation>Punkte</translation>
    </message>
    <message>
        <source>at</source>
        <translation>Stelle</translation>
    </message>
    <message>
        <source>key</source>
        <translation>Schlüssel</translation>
    </message>
    <message>
        <source>title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>need</source>
        <translation>nötig</translation>
    </message>
    <message>
        <source>when</source>
        <translation>wann</translation>
    </message>
    <message>
        <source>applies_to</source>
        <translation>gilt für</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>columns</source>
        <translation>Spalten</translation>
    </message>
    <message>
        <source>passes_when</source>
        <translation>bestanden, wenn</translation>
    </message>
    <message>
        <source>read_on</source>
        <translation>gelesen am</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Anmerkung</translation>
    </message>
    <message>
        <source>squawk</source>
        <translation>Beanstandung</translation>
    </message>
    <message>
        <source>squawks</source>
        <translation>Beanstandungen</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>Feststellung</translation>
    </message>
    <message>
        <source>findings</source>
        <translation>Feststellungen</translation>
    </message>
    <message>
        <source>undercarriage</source>
        <translation>Fahrwerk</translation>
    </message>
    <message>
        <source>inspector</source>
        <translation>Prüfer</translation>
    </message>
    <message>
        <source>adviser</source>
        <translation>Berater</translation>
    </message>
    <message>
        <source>authority</source>
        <translation>Behörde</translation>
    </message>
    <message>
        <source>certificate</source>
        <translation>Zulassung</translation>
    </message>
</context>
<context>
    <name>RulesView</name>
    <message>
        <source>line %1</source>
        <translation>Zeile %1</translation>
    </message>
    <message>
        <source>The whole %1.</source>
        <translation>Das Ganze %1.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <comment>place in the rules, fault</comment>
        <translation>%1: %2.</translation>
    </message>
</context>
<context>
    <name>Section</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>%1 (removed)</source>
        <translation>%1 (entfernt)</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>noch nicht</translation>
    </message>
    <message>
        <source>%1, damaged %2</source>
        <translation>%1, beschädigt %2</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Kürzel</translation>
    </message>
    <message>
        <source>Estimate</source>
        <translation>Schätzung</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Squawk</source>
        <translation>Beanstandung</translation>
    </message>
    <message>
        <source>Severity</source>
        <translation>Schwere</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>Closing</source>
        <translation>Schließstelle</translation>
    </message>
    <message>
        <source>Fitted</source>
        <translation>Eingebaut</translation>
    </message>
    <message>
        <source>fitted</source>
        <translation>eingebaut</translation>
    </message>
    <message>
        <source>Hardware</source>
        <translation>Normteil</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <source>Torque</source>
        <translation>Moment</translation>
    </message>
    <message>
        <source>Marked</source>
        <translation>Markiert</translation>
    </message>
    <message>
        <source>marked</source>
        <translation>markiert</translation>
    </message>
    <message>
        <source>Locked</source>
        <translation>Gesichert</translation>
    </message>
    <message>
        <source>locked</source>
        <translation>gesichert</translation>
    </message>
    <message>
        <source>Measurement</source>
        <translation>Messung</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Am</translation>
    </message>
    <message>
        <source>Deviation</source>
        <translation>Abweichung</translation>
    </message>
    <message>
        <source>Packing line</source>
        <translation>Packzeile</translation>
    </message>
    <message>
        <source>Wanted</source>
        <translation>Benötigt</translation>
    </message>
    <message>
        <source>Received</source>
        <translation>Erhalten</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Used</source>
        <translation>Verwendet</translation>
    </message>
    <message>
        <source>Sample</source>
        <translation>Probe</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>New step</source>
        <translation>Neuer Schritt</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>Bautagebuch</translation>
    </message>
    <message>
        <source>Squawks</source>
        <translation>Beanstandungen</translation>
    </message>
    <message>
        <source>New squawk</source>
        <translation>Neue Beanstandung</translation>
    </message>
    <message>
        <source>Closings</source>
        <translation>Schließstellen</translation>
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
        <source>Deviations</source>
        <translation>Abweichungen</translation>
    </message>
    <message>
        <source>Stores</source>
        <translation>Lager</translation>
    </message>
    <message>
        <source>New packing line</source>
        <translation>Neue Packzeile</translation>
    </message>
    <message>
        <source>Materials</source>
        <translation>Materialien</translation>
    </message>
    <message>
        <source>dropped %1</source>
        <translation>gestrichen am %1</translation>
    </message>
    <message>
        <source>closes %1</source>
        <translation>schließt %1</translation>
    </message>
    <message>
        <source>Drawing</source>
        <translation>Zeichnung</translation>
    </message>
    <message>
        <source>Stands</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Bulletin</source>
        <translation>Bulletin</translation>
    </message>
    <message>
        <source>Issuer</source>
        <translation>Herausgeber</translation>
    </message>
    <message>
        <source>Issued</source>
        <translation>Herausgegeben</translation>
    </message>
    <message>
        <source>New deviation: what differs</source>
        <translation>Neue Abweichung: was anders ist</translation>
    </message>
    <message>
        <source>Bulletins</source>
        <translation>Bulletins</translation>
    </message>
    <message>
        <source>New bulletin: its title</source>
        <translation>Neues Bulletin: sein Titel</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>At arm</source>
        <translation>Am Hebelarm</translation>
    </message>
    <message>
        <source>Documents</source>
        <translation>Dokumente</translation>
    </message>
    <message>
        <source>Drawing says</source>
        <translation>Zeichnung sagt</translation>
    </message>
    <message>
        <source>Letters and pictures</source>
        <translation>Schreiben und Bilder</translation>
    </message>
    <message>
        <source>On what basis</source>
        <translation>Auf welcher Grundlage</translation>
    </message>
    <message>
        <source>Weight, more or less</source>
        <translation>Masse, mehr oder weniger</translation>
    </message>
    <message>
        <source>applies</source>
        <translation>trifft zu</translation>
    </message>
    <message>
        <source>applies, mandatory</source>
        <translation>trifft zu, verbindlich</translation>
    </message>
    <message>
        <source>approved %1</source>
        <translation>genehmigt am %1</translation>
    </message>
    <message>
        <source>approved %1, built</source>
        <translation>genehmigt am %1, gebaut</translation>
    </message>
    <message>
        <source>asked %1, no answer yet</source>
        <translation>angefragt am %1, noch keine Antwort</translation>
    </message>
    <message>
        <source>built though rejected</source>
        <translation>trotz Ablehnung gebaut</translation>
    </message>
    <message>
        <source>built, not decided</source>
        <translation>gebaut, nicht entschieden</translation>
    </message>
    <message>
        <source>complied with %1</source>
        <translation>erfüllt am %1</translation>
    </message>
    <message>
        <source>does not apply</source>
        <translation>trifft nicht zu</translation>
    </message>
    <message>
        <source>not asked yet</source>
        <translation>noch nicht angefragt</translation>
    </message>
    <message>
        <source>not looked into</source>
        <translation>nicht geprüft</translation>
    </message>
    <message>
        <source>rejected %1</source>
        <translation>abgelehnt am %1</translation>
    </message>
    <message>
        <source>undone %1</source>
        <translation>rückgängig gemacht am %1</translation>
    </message>
    <message>
        <source>torqued</source>
        <translation>angezogen</translation>
    </message>
    <message>
        <source>sealed</source>
        <translation>markiert</translation>
    </message>
    <message>
        <source>to fit</source>
        <translation>einzubauen</translation>
    </message>
    <message>
        <source>finger-tight</source>
        <translation>nur fingerfest</translation>
    </message>
    <message>
        <source>outside its limits</source>
        <translation>außerhalb der Grenzen</translation>
    </message>
    <message>
        <source>to lock</source>
        <translation>zu sichern</translation>
    </message>
    <message>
        <source>to seal</source>
        <translation>zu markieren</translation>
    </message>
    <message>
        <source>removed</source>
        <translation>ausgebaut</translation>
    </message>
    <message>
        <source>to measure</source>
        <translation>zu messen</translation>
    </message>
    <message>
        <source>within limits</source>
        <translation>in den Grenzen</translation>
    </message>
    <message>
        <source>no limits</source>
        <translation>ohne Grenzen</translation>
    </message>
    <message>
        <source>outside, accepted</source>
        <translation>außerhalb, angenommen</translation>
    </message>
    <message>
        <source>outside, measured again</source>
        <translation>außerhalb, neu gemessen</translation>
    </message>
    <message>
        <source>New: 12 x rear hinge, AN4-7A, 1/4-28, drag 6, split pin</source>
        <translation>Neu: 12 x hinteres Scharnier, AN4-7A, 1/4-28, Laufmoment 6, Splint</translation>
    </message>
    <message>
        <source>New: span of the stabiliser, 2740-2746 mm</source>
        <translation>Neu: Spannweite der Höhenflosse, 2740-2746 mm</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>gezählt</translation>
    </message>
    <message>
        <source>Part number</source>
        <translation>Teilenummer</translation>
    </message>
    <message>
        <source>Listed</source>
        <translation>Soll</translation>
    </message>
    <message>
        <source>Came</source>
        <translation>Ist</translation>
    </message>
    <message>
        <source>Damaged</source>
        <translation>Beschädigt</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Für</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>Good until</source>
        <translation>Gut bis</translation>
    </message>
    <message>
        <source>Tool</source>
        <translation>Werkzeug</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>Calibration</source>
        <translation>Kalibrierung</translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation>Zertifikat</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Betrag</translation>
    </message>
    <message>
        <source>Category</source>
        <translation>Kategorie</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Lieferant</translation>
    </message>
    <message>
        <source>Receipt</source>
        <translation>Beleg</translation>
    </message>
    <message>
        <source>Packing lists</source>
        <translation>Packlisten</translation>
    </message>
    <message>
        <source>New lot: the material</source>
        <translation>Neue Charge: das Material</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Werkzeuge</translation>
    </message>
    <message>
        <source>New tool</source>
        <translation>Neues Werkzeug</translation>
    </message>
    <message>
        <source>Expenses</source>
        <translation>Ausgaben</translation>
    </message>
    <message>
        <source>New expense: 34.90 hardware: bolts and nuts</source>
        <translation>Neue Ausgabe: 34,90 Normteile: Schrauben und Muttern</translation>
    </message>
    <message>
        <source>Price each</source>
        <translation>Stückpreis</translation>
    </message>
    <message>
        <source>Counted, packing line</source>
        <translation>Gezählt, Packzeile</translation>
    </message>
</context>
<context>
    <name>SectionActs</name>
    <message>
        <source>Put back…</source>
        <translation>Zurückgebaut…</translation>
    </message>
    <message>
        <source>Insert before…</source>
        <translation>Davor einfügen…</translation>
    </message>
    <message>
        <source>Drop</source>
        <translation>Streichen</translation>
    </message>
    <message>
        <source>Take up again</source>
        <translation>Wieder aufnehmen</translation>
    </message>
    <message>
        <source>%1: dropped</source>
        <translation>%1: gestrichen</translation>
    </message>
    <message>
        <source>%1: to be done after all</source>
        <translation>%1: doch zu erledigen</translation>
    </message>
    <message>
        <source>A decision needs its basis: a letter, a drawing, a paragraph.</source>
        <translation>Eine Entscheidung braucht eine Grundlage: ein Schreiben, eine Zeichnung, einen Paragrafen.</translation>
    </message>
    <message>
        <source>A new step before %1</source>
        <translation>Ein neuer Schritt vor %1</translation>
    </message>
    <message>
        <source>A step needs its words.</source>
        <translation>Ein Schritt braucht seine Worte.</translation>
    </message>
    <message>
        <source>Asked of</source>
        <translation>Angefragt bei</translation>
    </message>
    <message>
        <source>Because</source>
        <translation>Weil</translation>
    </message>
    <message>
        <source>Bulletin %1: applies</source>
        <translation>Bulletin %1: trifft zu</translation>
    </message>
    <message>
        <source>Bulletin %1: complied with</source>
        <translation>Bulletin %1: erfüllt</translation>
    </message>
    <message>
        <source>Bulletin %1: does not apply</source>
        <translation>Bulletin %1: trifft nicht zu</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Deviation %1: approved</source>
        <translation>Abweichung %1: genehmigt</translation>
    </message>
    <message>
        <source>Deviation %1: asked</source>
        <translation>Abweichung %1: angefragt</translation>
    </message>
    <message>
        <source>Deviation %1: built so</source>
        <translation>Abweichung %1: so gebaut</translation>
    </message>
    <message>
        <source>Deviation %1: put back as drawn</source>
        <translation>Abweichung %1: nach Zeichnung zurückgebaut</translation>
    </message>
    <message>
        <source>Deviation %1: rejected</source>
        <translation>Abweichung %1: abgelehnt</translation>
    </message>
    <message>
        <source>Deviation %1: who was asked?</source>
        <translation>Abweichung %1: wer wurde gefragt?</translation>
    </message>
    <message>
        <source>How, and by which paper</source>
        <translation>Wie, und nach welchem Papier</translation>
    </message>
    <message>
        <source>Insert it</source>
        <translation>Einfügen</translation>
    </message>
    <message>
        <source>Note it</source>
        <translation>Vermerken</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Am</translation>
    </message>
    <message>
        <source>On what basis</source>
        <translation>Auf welcher Grundlage</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>Step added: %1</source>
        <translation>Schritt hinzugefügt: %1</translation>
    </message>
    <message>
        <source>What was done, and by which paper?</source>
        <translation>Was wurde getan, und nach welchem Papier?</translation>
    </message>
    <message>
        <source>Whoever reads this later wants to know why.</source>
        <translation>Wer das später liest, will wissen, warum.</translation>
    </message>
    <message>
        <source>Measure again…</source>
        <translation>Noch einmal messen…</translation>
    </message>
    <message>
        <source>Make a lot of it</source>
        <translation>Als Charge eintragen</translation>
    </message>
    <message>
        <source>Enter as an expense</source>
        <translation>Als Ausgabe eintragen</translation>
    </message>
    <message>
        <source>Show the certificate</source>
        <translation>Zertifikat zeigen</translation>
    </message>
    <message>
        <source>Show the receipt</source>
        <translation>Beleg zeigen</translation>
    </message>
    <message>
        <source>%1: entered as a lot</source>
        <translation>%1: als Charge eingetragen</translation>
    </message>
    <message>
        <source>%1: entered as an expense</source>
        <translation>%1: als Ausgabe eingetragen</translation>
    </message>
    <message>
        <source>%1: opened</source>
        <translation>%1: angebrochen</translation>
    </message>
    <message>
        <source>Note who was asked…</source>
        <translation>Eintragen, wer gefragt wurde…</translation>
    </message>
    <message>
        <source>Mark as approved…</source>
        <translation>Als genehmigt eintragen…</translation>
    </message>
    <message>
        <source>Mark as rejected…</source>
        <translation>Als abgelehnt eintragen…</translation>
    </message>
    <message>
        <source>Mark as built so…</source>
        <translation>Als so gebaut eintragen…</translation>
    </message>
    <message>
        <source>Mark as applying</source>
        <translation>Als zutreffend eintragen</translation>
    </message>
    <message>
        <source>Mark as not applying…</source>
        <translation>Als nicht zutreffend eintragen…</translation>
    </message>
    <message>
        <source>Mark as complied with…</source>
        <translation>Als erfüllt eintragen…</translation>
    </message>
    <message>
        <source>Mark as opened today</source>
        <translation>Als heute geöffnet eintragen</translation>
    </message>
    <message>
        <source>Mark as approved</source>
        <translation>Als genehmigt eintragen</translation>
    </message>
    <message>
        <source>Mark as complied with</source>
        <translation>Als erfüllt eintragen</translation>
    </message>
    <message>
        <source>Mark as not applying</source>
        <translation>Als nicht zutreffend eintragen</translation>
    </message>
    <message>
        <source>Mark as rejected</source>
        <translation>Als abgelehnt eintragen</translation>
    </message>
</context>
<context>
    <name>Session</name>
    <message>
        <source>Nothing was changed: %1</source>
        <translation>Nichts wurde geändert: %1</translation>
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
    <name>SquawkList</name>
    <message numerus="yes">
        <source>%n squawks were written to %1.</source>
        <translation>
            <numerusform>%Ln Beanstandung wurde nach %1 geschrieben.</numerusform>
            <numerusform>%Ln Beanstandungen wurden nach %1 geschrieben.</numerusform>
        </translation>
    </message>
    <message>
        <source>List of squawks</source>
        <translation>Liste der Beanstandungen</translation>
    </message>
</context>
<context>
    <name>SquawkPeople</name>
    <message>
        <source>the adviser</source>
        <translation>der Berater</translation>
    </message>
    <message>
        <source>the adviser (%1)</source>
        <translation>der Berater (%1)</translation>
    </message>
    <message>
        <source>the builder</source>
        <translation>der Erbauer</translation>
    </message>
    <message>
        <source>the inspector</source>
        <translation>der Prüfer</translation>
    </message>
    <message>
        <source>the inspector (%1)</source>
        <translation>der Prüfer (%1)</translation>
    </message>
</context>
<context>
    <name>SquawkStory</name>
    <message>
        <source>Accepted as it is %1 by %2: %3</source>
        <translation>Unverändert angenommen am %1 von %2: %3</translation>
    </message>
    <message>
        <source>Fixed %1 by %2: %3</source>
        <translation>Behoben am %1 von %2: %3</translation>
    </message>
    <message>
        <source>Found %1</source>
        <translation>Gefunden am %1</translation>
    </message>
    <message>
        <source>Found %1 by %2</source>
        <translation>Gefunden am %1 von %2</translation>
    </message>
    <message>
        <source>Open. When it is fixed, this is who looks at it: %1</source>
        <translation>Offen. Wenn sie behoben ist, sieht sie an: %1</translation>
    </message>
    <message>
        <source>Still to look at it: %1</source>
        <translation>Muss sie noch ansehen: %1</translation>
    </message>
    <message>
        <source>Verified %1 by %2</source>
        <translation>Nachgeprüft am %1 von %2</translation>
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
        <translation>Vor Endprüfung und Erstflug</translation>
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
        <translation>Linkes Querruder</translation>
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
        <translation>Linke Landeklappe</translation>
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
        <translation>Linker Flügel</translation>
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
        <translation>Rumpfheck</translation>
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
        <translation>Rechtes Querruder</translation>
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
        <translation>Rechte Landeklappe</translation>
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
        <translation>Rechter Flügel</translation>
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
        <translation>Stringer und Formspante</translation>
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
    <message>
        <source>Aeroplane with engine</source>
        <translation>Motorflugzeug</translation>
    </message>
    <message>
        <source>Ailerons and flaps</source>
        <translation>Querruder und Klappen</translation>
    </message>
    <message>
        <source>Airbrake, flap and trim controls</source>
        <translation>Bremsklappen-, Wölbklappen- und Trimmsteuerung</translation>
    </message>
    <message>
        <source>Airbrakes</source>
        <translation>Bremsklappen</translation>
    </message>
    <message>
        <source>Attachment and automatic connections</source>
        <translation>Befestigung und automatische Anschlüsse</translation>
    </message>
    <message>
        <source>Attachment and rigging of the tail</source>
        <translation>Befestigung und Einstellung des Leitwerks</translation>
    </message>
    <message>
        <source>Balance</source>
        <translation>Ausgleich</translation>
    </message>
    <message>
        <source>Balance and tracking</source>
        <translation>Auswuchten und Spurlauf</translation>
    </message>
    <message>
        <source>Balance of the surfaces</source>
        <translation>Ausgleich der Ruder</translation>
    </message>
    <message>
        <source>Balloon or airship</source>
        <translation>Ballon oder Luftschiff</translation>
    </message>
    <message>
        <source>Basket or car</source>
        <translation>Korb oder Gondel</translation>
    </message>
    <message>
        <source>Basket or car and floor</source>
        <translation>Korb oder Gondel und Boden</translation>
    </message>
    <message>
        <source>Burner frame</source>
        <translation>Brennerrahmen</translation>
    </message>
    <message>
        <source>Burner or propulsion</source>
        <translation>Brenner oder Antrieb</translation>
    </message>
    <message>
        <source>Burner, valves and hoses</source>
        <translation>Brenner, Ventile und Schläuche</translation>
    </message>
    <message>
        <source>Cabin, skins and fairings</source>
        <translation>Kabine, Beplankung und Verkleidungen</translation>
    </message>
    <message>
        <source>Cables, tubes, pulleys and bellcranks</source>
        <translation>Seile, Stangen, Rollen und Umlenkhebel</translation>
    </message>
    <message>
        <source>Canopy and frame</source>
        <translation>Haube und Rahmen</translation>
    </message>
    <message>
        <source>Clutch, or pre-rotator</source>
        <translation>Kupplung oder Vorrotation</translation>
    </message>
    <message>
        <source>Cockpit, seat and harness points</source>
        <translation>Cockpit, Sitz und Gurtpunkte</translation>
    </message>
    <message>
        <source>Column or stick, and pedals</source>
        <translation>Knüppel oder Steuersäule und Pedale</translation>
    </message>
    <message>
        <source>Control run in the wing</source>
        <translation>Steuerungslauf im Flügel</translation>
    </message>
    <message>
        <source>Cooling and cowling</source>
        <translation>Kühlung und Haube</translation>
    </message>
    <message>
        <source>Corrosion protection</source>
        <translation>Korrosionsschutz</translation>
    </message>
    <message>
        <source>Cutting of the panels</source>
        <translation>Zuschnitt der Bahnen</translation>
    </message>
    <message>
        <source>Doors, canopy and windows</source>
        <translation>Türen, Haube und Fenster</translation>
    </message>
    <message>
        <source>Drive</source>
        <translation>Antriebsstrang</translation>
    </message>
    <message>
        <source>Electrical system</source>
        <translation>Elektrik</translation>
    </message>
    <message>
        <source>Electrical system and radio</source>
        <translation>Elektrik und Funk</translation>
    </message>
    <message>
        <source>Engine</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>Engine and propeller</source>
        <translation>Motor und Propeller</translation>
    </message>
    <message>
        <source>Engine and propeller, where there are any</source>
        <translation>Motor und Propeller, wo vorhanden</translation>
    </message>
    <message>
        <source>Engine controls</source>
        <translation>Motorbedienung</translation>
    </message>
    <message>
        <source>Engine controls and fuel system</source>
        <translation>Motorbedienung und Kraftstoffanlage</translation>
    </message>
    <message>
        <source>Engine controls and governor</source>
        <translation>Motorbedienung und Drehzahlregler</translation>
    </message>
    <message>
        <source>Engine, where there is one</source>
        <translation>Motor, wo vorhanden</translation>
    </message>
    <message>
        <source>Envelope</source>
        <translation>Hülle</translation>
    </message>
    <message>
        <source>Exhaust</source>
        <translation>Auspuff</translation>
    </message>
    <message>
        <source>Exhaust and cabin heat</source>
        <translation>Auspuff und Kabinenheizung</translation>
    </message>
    <message>
        <source>Fairings</source>
        <translation>Verkleidungen</translation>
    </message>
    <message>
        <source>Filling and painting</source>
        <translation>Spachteln und Lackieren</translation>
    </message>
    <message>
        <source>Fin and stabiliser</source>
        <translation>Seiten- und Höhenflosse</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Oberfläche</translation>
    </message>
    <message>
        <source>Fitting of engine and propeller</source>
        <translation>Einbau von Motor und Propeller</translation>
    </message>
    <message>
        <source>Fitting of the engine</source>
        <translation>Einbau des Motors</translation>
    </message>
    <message>
        <source>Fitting of the propeller and spinner</source>
        <translation>Anbau von Propeller und Spinner</translation>
    </message>
    <message>
        <source>Flight controls</source>
        <translation>Steuerung</translation>
    </message>
    <message>
        <source>Floors and inside panels</source>
        <translation>Böden und Innenverkleidung</translation>
    </message>
    <message>
        <source>Frame and attachment</source>
        <translation>Rahmen und Befestigung</translation>
    </message>
    <message>
        <source>Frame or keel</source>
        <translation>Rahmen oder Kiel</translation>
    </message>
    <message>
        <source>Frames, shells or longerons</source>
        <translation>Spante, Schalen oder Längsgurte</translation>
    </message>
    <message>
        <source>Fuel lines, valves and filters</source>
        <translation>Kraftstoffleitungen, Hähne und Filter</translation>
    </message>
    <message>
        <source>Fuel tanks and their attachment</source>
        <translation>Kraftstoffbehälter und ihre Befestigung</translation>
    </message>
    <message>
        <source>Fuel tanks in the wing</source>
        <translation>Tanks im Flügel</translation>
    </message>
    <message>
        <source>Fuel tanks outside the wing</source>
        <translation>Tanks außerhalb des Flügels</translation>
    </message>
    <message>
        <source>Fuel tanks, lines and valves</source>
        <translation>Tanks, Leitungen und Hähne</translation>
    </message>
    <message>
        <source>Gearboxes and belts</source>
        <translation>Getriebe und Riemen</translation>
    </message>
    <message>
        <source>Glider, with or without engine</source>
        <translation>Segelflugzeug, mit oder ohne Motor</translation>
    </message>
    <message>
        <source>Helicopter or gyroplane</source>
        <translation>Hubschrauber oder Tragschrauber</translation>
    </message>
    <message>
        <source>Hinges and balance</source>
        <translation>Scharniere und Ausgleich</translation>
    </message>
    <message>
        <source>Hinges and brackets</source>
        <translation>Scharniere und Beschläge</translation>
    </message>
    <message>
        <source>Induction and cooling, baffles</source>
        <translation>Ansaugung und Kühlung, Leitbleche</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Instrumente</translation>
    </message>
    <message>
        <source>Instruments and finish</source>
        <translation>Instrumente und Oberfläche</translation>
    </message>
    <message>
        <source>Joining of the fuselage&apos;s parts</source>
        <translation>Zusammenfügen der Rumpfteile</translation>
    </message>
    <message>
        <source>Landing gear</source>
        <translation>Fahrwerk</translation>
    </message>
    <message>
        <source>Leading edges</source>
        <translation>Nasen</translation>
    </message>
    <message>
        <source>Legs, struts and attachment</source>
        <translation>Beine, Streben und Befestigung</translation>
    </message>
    <message>
        <source>Lines, pulleys and crown ring</source>
        <translation>Leinen, Rollen und Kronenring</translation>
    </message>
    <message>
        <source>Longerons, frames and bulkheads</source>
        <translation>Längsgurte, Spante und Schotte</translation>
    </message>
    <message>
        <source>Main rotor blades</source>
        <translation>Hauptrotorblätter</translation>
    </message>
    <message>
        <source>Main rotor head and mast</source>
        <translation>Hauptrotorkopf und Mast</translation>
    </message>
    <message>
        <source>Main wheel, legs and brake</source>
        <translation>Hauptrad, Beine und Bremse</translation>
    </message>
    <message>
        <source>Mount or pylon</source>
        <translation>Motorträger oder Klappträger</translation>
    </message>
    <message>
        <source>Nose or tail wheel and steering</source>
        <translation>Bug- oder Spornrad und Lenkung</translation>
    </message>
    <message>
        <source>Oxygen, vacuum and other systems</source>
        <translation>Sauerstoff, Unterdruck und andere Anlagen</translation>
    </message>
    <message>
        <source>Padding and equipment</source>
        <translation>Polster und Ausrüstung</translation>
    </message>
    <message>
        <source>Parachute or other vents</source>
        <translation>Parachute oder andere Ventile</translation>
    </message>
    <message>
        <source>Pitot and static lines</source>
        <translation>Pitot- und Statikleitungen</translation>
    </message>
    <message>
        <source>Placards and markings</source>
        <translation>Beschriftung und Kennzeichen</translation>
    </message>
    <message>
        <source>Propeller, where there is one</source>
        <translation>Propeller, wo vorhanden</translation>
    </message>
    <message>
        <source>Radios and antennas</source>
        <translation>Funkgeräte und Antennen</translation>
    </message>
    <message>
        <source>Retraction</source>
        <translation>Einziehmechanik</translation>
    </message>
    <message>
        <source>Ribs</source>
        <translation>Rippen</translation>
    </message>
    <message>
        <source>Ribs or cores</source>
        <translation>Rippen oder Kerne</translation>
    </message>
    <message>
        <source>Rigging of wings to fuselage</source>
        <translation>Anbau und Einstellung der Flügel am Rumpf</translation>
    </message>
    <message>
        <source>Rigging, travel and stops</source>
        <translation>Einstellung, Ausschläge und Anschläge</translation>
    </message>
    <message>
        <source>Root fittings and main pins</source>
        <translation>Wurzelbeschläge und Hauptbolzen</translation>
    </message>
    <message>
        <source>Rotor brake</source>
        <translation>Rotorbremse</translation>
    </message>
    <message>
        <source>Rotors</source>
        <translation>Rotoren</translation>
    </message>
    <message>
        <source>Rudder and elevator</source>
        <translation>Seiten- und Höhenruder</translation>
    </message>
    <message>
        <source>Scoop and suspension</source>
        <translation>Schürze und Aufhängung</translation>
    </message>
    <message>
        <source>Seams and load tapes</source>
        <translation>Nähte und Lastbänder</translation>
    </message>
    <message>
        <source>Seats and harness points</source>
        <translation>Sitze und Gurtpunkte</translation>
    </message>
    <message>
        <source>Shafts and couplings</source>
        <translation>Wellen und Kupplungen</translation>
    </message>
    <message>
        <source>Skids or legs</source>
        <translation>Kufen oder Beine</translation>
    </message>
    <message>
        <source>Skins or covering</source>
        <translation>Beplankung oder Bespannung</translation>
    </message>
    <message>
        <source>Skins or covering frame</source>
        <translation>Beplankung oder Bespanngerüst</translation>
    </message>
    <message>
        <source>Skins or covering of fin and stabiliser</source>
        <translation>Beplankung oder Bespannung der Flossen</translation>
    </message>
    <message>
        <source>Skins or covering of rudder and elevator</source>
        <translation>Beplankung oder Bespannung von Seiten- und Höhenruder</translation>
    </message>
    <message>
        <source>Spars</source>
        <translation>Holme</translation>
    </message>
    <message>
        <source>Spars and ribs</source>
        <translation>Holme und Rippen</translation>
    </message>
    <message>
        <source>Spars and ribs of fin and stabiliser</source>
        <translation>Holme und Rippen der Flossen</translation>
    </message>
    <message>
        <source>Spars and ribs of rudder and elevator</source>
        <translation>Holme und Rippen von Seiten- und Höhenruder</translation>
    </message>
    <message>
        <source>Spars, ribs or cores</source>
        <translation>Holme, Rippen oder Kerne</translation>
    </message>
    <message>
        <source>Stabilisers</source>
        <translation>Stabilisierungsflossen</translation>
    </message>
    <message>
        <source>Steering and fins</source>
        <translation>Steuerung und Flossen</translation>
    </message>
    <message>
        <source>Stick and pedals</source>
        <translation>Knüppel und Pedale</translation>
    </message>
    <message>
        <source>Stick, collective and pedals</source>
        <translation>Knüppel, Blattverstellhebel und Pedale</translation>
    </message>
    <message>
        <source>Struts and attachment fittings</source>
        <translation>Streben und Anschlussbeschläge</translation>
    </message>
    <message>
        <source>Swashplate or head controls</source>
        <translation>Taumelscheibe oder Kopfsteuerung</translation>
    </message>
    <message>
        <source>Systems</source>
        <translation>Anlagen</translation>
    </message>
    <message>
        <source>Systems and finish</source>
        <translation>Anlagen und Oberfläche</translation>
    </message>
    <message>
        <source>Tail</source>
        <translation>Leitwerk</translation>
    </message>
    <message>
        <source>Tail boom</source>
        <translation>Heckausleger</translation>
    </message>
    <message>
        <source>Tail rotor or rudder</source>
        <translation>Heckrotor oder Seitenruder</translation>
    </message>
    <message>
        <source>Tail wheel or skid</source>
        <translation>Spornrad oder Kufe</translation>
    </message>
    <message>
        <source>Towing hooks</source>
        <translation>Schleppkupplungen</translation>
    </message>
    <message>
        <source>Trim</source>
        <translation>Trimmung</translation>
    </message>
    <message>
        <source>Trim and flap controls</source>
        <translation>Trimm- und Klappensteuerung</translation>
    </message>
    <message>
        <source>Trim tabs</source>
        <translation>Trimmklappen</translation>
    </message>
    <message>
        <source>Tubes, cables and bellcranks</source>
        <translation>Stangen, Seile und Umlenkhebel</translation>
    </message>
    <message>
        <source>Upholstery</source>
        <translation>Polsterung</translation>
    </message>
    <message>
        <source>Water ballast</source>
        <translation>Wasserballast</translation>
    </message>
    <message>
        <source>Wheels, brakes and brake lines</source>
        <translation>Räder, Bremsen und Bremsleitungen</translation>
    </message>
    <message>
        <source>Wheels, brakes and steering</source>
        <translation>Räder, Bremsen und Lenkung</translation>
    </message>
    <message>
        <source>Wing tips</source>
        <translation>Randbögen</translation>
    </message>
    <message>
        <source>Wings</source>
        <translation>Flügel</translation>
    </message>
    <message>
        <source>Wiring and lights in the wing</source>
        <translation>Leitungen und Lichter im Flügel</translation>
    </message>
    <message>
        <source>centre fuselage</source>
        <translation>Mittelrumpf</translation>
    </message>
    <message>
        <source>cockpit</source>
        <translation>Cockpit</translation>
    </message>
    <message>
        <source>elevator</source>
        <translation>Höhenruder</translation>
    </message>
    <message>
        <source>engine bay</source>
        <translation>Motorraum</translation>
    </message>
    <message>
        <source>fin</source>
        <translation>Seitenflosse</translation>
    </message>
    <message>
        <source>left aileron</source>
        <translation>linkes Querruder</translation>
    </message>
    <message>
        <source>left flap</source>
        <translation>linke Landeklappe</translation>
    </message>
    <message>
        <source>left main wheel</source>
        <translation>linkes Hauptrad</translation>
    </message>
    <message>
        <source>left tank</source>
        <translation>linker Flügeltank</translation>
    </message>
    <message>
        <source>left wing</source>
        <translation>linker Flügel</translation>
    </message>
    <message>
        <source>nose wheel</source>
        <translation>Bugrad</translation>
    </message>
    <message>
        <source>rear fuselage</source>
        <translation>Rumpfheck</translation>
    </message>
    <message>
        <source>right aileron</source>
        <translation>rechtes Querruder</translation>
    </message>
    <message>
        <source>right flap</source>
        <translation>rechte Landeklappe</translation>
    </message>
    <message>
        <source>right main wheel</source>
        <translation>rechtes Hauptrad</translation>
    </message>
    <message>
        <source>right tank</source>
        <translation>rechter Flügeltank</translation>
    </message>
    <message>
        <source>right wing</source>
        <translation>rechter Flügel</translation>
    </message>
    <message>
        <source>rudder</source>
        <translation>Seitenruder</translation>
    </message>
    <message>
        <source>stabiliser</source>
        <translation>Höhenflosse</translation>
    </message>
    <message>
        <source>tail wheel</source>
        <translation>Spornrad</translation>
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
        <translation>
            <numerusform>%Ln Schritt verschoben</numerusform>
            <numerusform>%Ln Schritte verschoben</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 cannot come before %2, because it has to wait for it: %3.</source>
        <translation>%1 kann nicht vor %2 kommen, weil es darauf warten muss: %3.</translation>
    </message>
    <message>
        <source>%1 comes after %2</source>
        <translation>%1 kommt nach %2</translation>
    </message>
    <message>
        <source>%1: moved</source>
        <translation>%1: verschoben</translation>
    </message>
    <message>
        <source>Steps change places within their part only.</source>
        <translation>Schritte tauschen nur innerhalb ihres Teils die Plätze.</translation>
    </message>
</context>
<context>
    <name>StoreRows</name>
    <message>
        <source>%1 on %2</source>
        <translation>%1 an %2</translation>
    </message>
    <message>
        <source>%1, due %2</source>
        <translation>%1, fällig %2</translation>
    </message>
    <message numerus="yes">
        <source>%n d late</source>
        <translation>
            <numerusform>%Ln Tag zu spät</numerusform>
            <numerusform>%Ln Tage zu spät</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n damaged</source>
        <translation>
            <numerusform>%Ln beschädigt</numerusform>
            <numerusform>%Ln beschädigt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lines: %1.</source>
        <translation>
            <numerusform>%Ln Posten: %1.</numerusform>
            <numerusform>%Ln Posten: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n short</source>
        <translation>
            <numerusform>%Ln unvollständig</numerusform>
            <numerusform>%Ln unvollständig</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to count</source>
        <translation>
            <numerusform>%Ln zu zählen</numerusform>
            <numerusform>%Ln zu zählen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>All %n lines are here as listed.</source>
        <translation>
            <numerusform>%Ln Posten ist da wie in der Liste.</numerusform>
            <numerusform>Alle %Ln Posten sind da wie in der Liste.</numerusform>
        </translation>
    </message>
    <message>
        <source>after expiry</source>
        <translation>nach Ablauf</translation>
    </message>
    <message>
        <source>after expiry, accepted</source>
        <translation>nach Ablauf, angenommen</translation>
    </message>
    <message>
        <source>certificate on file</source>
        <translation>Zertifikat liegt vor</translation>
    </message>
    <message>
        <source>keeps open: %1</source>
        <translation>hält offen: %1</translation>
    </message>
    <message>
        <source>must stay open</source>
        <translation>muss offen bleiben</translation>
    </message>
    <message>
        <source>no certificate on file</source>
        <translation>kein Zertifikat</translation>
    </message>
    <message>
        <source>sample %1</source>
        <translation>Probe %1</translation>
    </message>
    <message>
        <source>step of %1</source>
        <translation>Schritt an %1</translation>
    </message>
    <message>
        <source>waits: %1</source>
        <translation>wartet: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n of them late</source>
        <translation>
            <numerusform>%Ln davon verspätet</numerusform>
            <numerusform>%Ln davon verspätet</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>StoreTexts</name>
    <message>
        <source>on file</source>
        <translation>liegt vor</translation>
    </message>
    <message>
        <source>%1 d %2 h</source>
        <translation>%1 d %2 h</translation>
    </message>
    <message>
        <source>%1 more than listed</source>
        <translation>%1 mehr als in der Liste</translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n uses out of calibration</source>
        <translation>
            <numerusform>%1 von %Ln Verwendung ohne gültige Kalibrierung</numerusform>
            <numerusform>%1 von %Ln Verwendungen ohne gültige Kalibrierung</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2 after expiry</source>
        <translation>%1, davon %2 nach Ablauf</translation>
    </message>
    <message>
        <source>%1, damaged %2</source>
        <translation>%1, beschädigt %2</translation>
    </message>
    <message>
        <source>%1; keeps open: %2</source>
        <translation>%1; hält offen: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n days left</source>
        <translation>
            <numerusform>noch %Ln Tag</numerusform>
            <numerusform>noch %Ln Tage</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n times</source>
        <translation>
            <numerusform>%Ln-mal</numerusform>
            <numerusform>%Ln-mal</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n uses</source>
        <translation>
            <numerusform>%Ln Verwendung</numerusform>
            <numerusform>%Ln Verwendungen</numerusform>
        </translation>
    </message>
    <message>
        <source>complete</source>
        <translation>vollständig</translation>
    </message>
    <message>
        <source>cure time not on record</source>
        <translation>Aushärtezeit nicht eingetragen</translation>
    </message>
    <message>
        <source>cured %1</source>
        <translation>ausgehärtet am %1</translation>
    </message>
    <message>
        <source>cures until %1: %2 left</source>
        <translation>härtet aus bis %1: noch %2</translation>
    </message>
    <message>
        <source>damaged %1</source>
        <translation>beschädigt %1</translation>
    </message>
    <message>
        <source>expected %1</source>
        <translation>erwartet am %1</translation>
    </message>
    <message numerus="yes">
        <source>expired %n days ago</source>
        <translation>
            <numerusform>seit %Ln Tag abgelaufen</numerusform>
            <numerusform>seit %Ln Tagen abgelaufen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>late by %n days</source>
        <translation>
            <numerusform>%Ln Tag überfällig</numerusform>
            <numerusform>%Ln Tage überfällig</numerusform>
        </translation>
    </message>
    <message>
        <source>missing %1</source>
        <translation>fehlend %1</translation>
    </message>
    <message>
        <source>no calibration on record</source>
        <translation>keine Kalibrierung eingetragen</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keines</translation>
    </message>
    <message>
        <source>not counted yet</source>
        <translation>noch nicht gezählt</translation>
    </message>
    <message>
        <source>not to be calibrated</source>
        <translation>wird nicht kalibriert</translation>
    </message>
    <message numerus="yes">
        <source>overdue by %n days</source>
        <translation>
            <numerusform>seit %Ln Tag überfällig</numerusform>
            <numerusform>seit %Ln Tagen überfällig</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Tasks</name>
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
        <translation>Übernommen: %1 neue Datensätze, %2 schon bekannt, %3 Dateien.</translation>
    </message>
    <message>
        <source>Nothing was imported. %1</source>
        <translation>Nichts wurde übernommen. %1</translation>
    </message>
    <message>
        <source>Nothing was imported; %1 errors. The first: %2</source>
        <translation>Nichts wurde übernommen; %1 Fehler. Der erste: %2</translation>
    </message>
    <message>
        <source>Verified: %1 records, %2 journal rows and %3 files are as they should be.</source>
        <translation>Nachgeprüft: %1 Datensätze, %2 Journalzeilen und %3 Dateien sind, wie sie sein sollen.</translation>
    </message>
    <message>
        <source>Verifying records and files</source>
        <translation>Aufzeichnungen und Dateien werden nachgeprüft</translation>
    </message>
    <message>
        <source>Looked over: not everything is as it should be.</source>
        <translation>Durchgesehen: nicht alles ist, wie es sein soll.</translation>
    </message>
    <message numerus="yes">
        <source>%1 was written without %n files that are not in the project; “Verify records and files” names them.</source>
        <translation>
            <numerusform>%1 wurde ohne %Ln Datei geschrieben, die im Projekt fehlt; „Aufzeichnungen und Dateien nachprüfen“ nennt sie.</numerusform>
            <numerusform>%1 wurde ohne %Ln Dateien geschrieben, die im Projekt fehlen; „Aufzeichnungen und Dateien nachprüfen“ nennt sie.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 was written; %n files in it are no longer what was taken in; “Verify records and files” names them.</source>
        <translation>
            <numerusform>%1 wurde geschrieben; %Ln Datei darin ist nicht mehr, was aufgenommen wurde; „Aufzeichnungen und Dateien nachprüfen“ nennt sie.</numerusform>
            <numerusform>%1 wurde geschrieben; %Ln Dateien darin sind nicht mehr, was aufgenommen wurde; „Aufzeichnungen und Dateien nachprüfen“ nennt sie.</numerusform>
        </translation>
    </message>
    <message>
        <source>The export was cancelled.</source>
        <translation>Der Export wurde abgebrochen.</translation>
    </message>
    <message numerus="yes">
        <source>The whole project with %n files was written to %1.</source>
        <translation>
            <numerusform>Das ganze Projekt mit %Ln Datei wurde nach %1 geschrieben.</numerusform>
            <numerusform>Das ganze Projekt mit %Ln Dateien wurde nach %1 geschrieben.</numerusform>
        </translation>
    </message>
    <message>
        <source>Writing the whole project into one file</source>
        <translation>Das ganze Projekt wird in eine Datei geschrieben</translation>
    </message>
    <message numerus="yes">
        <source>%n files were not found; the first: %1.</source>
        <translation>
            <numerusform>%Ln Datei wurde nicht gefunden: %1.</numerusform>
            <numerusform>%Ln Dateien wurden nicht gefunden; die erste: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n records speak of days more than a year ahead; the first: %1.</source>
        <translation>
            <numerusform>%Ln Datensatz spricht von Tagen, die mehr als ein Jahr voraus liegen: %1.</numerusform>
            <numerusform>%Ln Datensätze sprechen von Tagen, die mehr als ein Jahr voraus liegen; der erste: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n files have no SHA-256 on record, so that nothing can be said of them.</source>
        <translation>
            <numerusform>Zu %Ln Datei steht keine SHA-256-Summe fest, sodass sich über sie nichts sagen lässt.</numerusform>
            <numerusform>Zu %Ln Dateien steht keine SHA-256-Summe fest, sodass sich über sie nichts sagen lässt.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, number %2 in the file</source>
        <translation>%1, Nummer %2 in der Datei</translation>
    </message>
</context>
<context>
    <name>TodayRows</name>
    <message>
        <source>Running</source>
        <translation>Läuft</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Starten</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>und %1 weitere</translation>
    </message>
    <message>
        <source>before %1 is closed</source>
        <translation>bevor %1 geschlossen wird</translation>
    </message>
    <message>
        <source>needed for %1</source>
        <translation>nötig für %1</translation>
    </message>
    <message>
        <source>needed for %1 and %2 more</source>
        <translation>nötig für %1 und %2 weitere</translation>
    </message>
    <message numerus="yes">
        <source>%n closings are on record and none is begun. A closing comes onto this page with the first work that is logged on a part inside it.</source>
        <translation>
            <numerusform>%Ln Schließstelle ist verzeichnet und nicht begonnen. Eine Schließstelle kommt auf diese Seite mit der ersten Arbeit, die an einem Teil darin eingetragen wird.</numerusform>
            <numerusform>%Ln Schließstellen sind verzeichnet und keine ist begonnen. Eine Schließstelle kommt auf diese Seite mit der ersten Arbeit, die an einem Teil darin eingetragen wird.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lines of the inspector&apos;s list are not ticked</source>
        <translation>
            <numerusform>%Ln Zeile der Liste des Prüfers ist nicht abgehakt</numerusform>
            <numerusform>%Ln Zeilen der Liste des Prüfers sind nicht abgehakt</numerusform>
        </translation>
    </message>
    <message>
        <source>Ask</source>
        <translation>Anfragen</translation>
    </message>
    <message>
        <source>Count in</source>
        <translation>Zählen</translation>
    </message>
    <message>
        <source>Decide</source>
        <translation>Entscheiden</translation>
    </message>
    <message>
        <source>Fix</source>
        <translation>Beheben</translation>
    </message>
    <message>
        <source>No closing is recorded yet. A closing is the act after which a place can no longer be seen: riveting on a skin, bonding two halves, covering with fabric. Once it is written down, this page says what has to happen before it.</source>
        <translation>Noch ist keine Schließstelle verzeichnet. Nach dem Schließen ist eine Stelle nicht mehr zu sehen: eine Haut aufnieten, zwei Hälften kleben, mit Stoff bespannen. Ist sie aufgeschrieben, sagt diese Seite, was vorher geschehen muss.</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Lesen</translation>
    </message>
    <message>
        <source>Sign</source>
        <translation>Unterschreiben</translation>
    </message>
    <message>
        <source>Tick</source>
        <translation>Abhaken</translation>
    </message>
    <message>
        <source>Verify</source>
        <translation>Nachprüfen</translation>
    </message>
    <message>
        <source>on the page %1</source>
        <translation>auf der Seite %1</translation>
    </message>
</context>
<context>
    <name>Told</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>Weighing</name>
    <message>
        <source>% MAC</source>
        <translation>% MAC</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>%1 at %2, %3 % MAC</source>
        <translation>%1 bei %2, %3 % MAC</translation>
    </message>
    <message>
        <source>Arm</source>
        <translation>Hebelarm</translation>
    </message>
    <message>
        <source>Centre of gravity</source>
        <translation>Schwerpunkt</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Gezählt</translation>
    </message>
    <message>
        <source>Empty aeroplane</source>
        <translation>Leeres Flugzeug</translation>
    </message>
    <message>
        <source>Farthest aft: %1</source>
        <translation>Am weitesten hinten: %1</translation>
    </message>
    <message>
        <source>Farthest forward: %1</source>
        <translation>Am weitesten vorn: %1</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <source>Loading</source>
        <translation>Beladung</translation>
    </message>
    <message>
        <source>Loading and limits</source>
        <translation>Beladung und Grenzen</translation>
    </message>
    <message>
        <source>OUTSIDE the limits</source>
        <translation>AUSSERHALB der Grenzen</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>fitted since</source>
        <translation>seither eingebaut</translation>
    </message>
    <message>
        <source>in the sum</source>
        <translation>in der Summe</translation>
    </message>
    <message>
        <source>no limits on record</source>
        <translation>keine Grenzen verzeichnet</translation>
    </message>
    <message>
        <source>not in the sum: weigh again, or enter equipment</source>
        <translation>nicht in der Summe: neu wägen oder Ausrüstung eintragen</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nicht gesagt</translation>
    </message>
    <message>
        <source>removed since</source>
        <translation>seither ausgebaut</translation>
    </message>
    <message>
        <source>weighed with it</source>
        <translation>mitgewogen</translation>
    </message>
    <message>
        <source>within the limits</source>
        <translation>innerhalb der Grenzen</translation>
    </message>
    <message>
        <source>fitted or removed since</source>
        <translation>seither ein- oder ausgebaut</translation>
    </message>
    <message>
        <source>not in the sum: enter weight and arm</source>
        <translation>nicht in der Summe: Masse und Hebelarm eintragen</translation>
    </message>
    <message>
        <source>not weighed yet</source>
        <translation>noch nicht gewogen</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>This project is to read only: nothing can be written down.</source>
        <translation>Dieses Projekt ist nur zum Lesen: nichts kann eingetragen werden.</translation>
    </message>
    <message>
        <source>%1: numbers converted</source>
        <translation>%1: Zahlen umgerechnet</translation>
    </message>
    <message>
        <source>Convert the numbers</source>
        <translation>Zahlen umrechnen</translation>
    </message>
    <message>
        <source>The numbers have changed since that was asked.</source>
        <translation>Die Zahlen haben sich geändert, seit das gefragt wurde.</translation>
    </message>
    <message>
        <source>The numbers stay as they were typed: %1 has become %2. If %1 was right, convert them, and it is %3.</source>
        <translation>Die Zahlen bleiben, wie sie eingegeben wurden: Aus %1 ist %2 geworden. War %1 richtig, rechnen Sie sie um; dann sind es %3.</translation>
    </message>
    <message>
        <source>Leave them as typed</source>
        <translation>So lassen, wie eingegeben</translation>
    </message>
</context>
<context>
    <name>WithdrawAct</name>
    <message>
        <source>%1 records</source>
        <translation>%1 Datensätze</translation>
    </message>
    <message>
        <source>%1 will count nowhere any more; the journal keeps it.</source>
        <translation>%1 zählt dann nirgends mehr; das Journal behält es.</translation>
    </message>
    <message>
        <source>%1 withdrawn</source>
        <translation>%1 zurückgezogen</translation>
    </message>
    <message>
        <source>A withdrawal needs its reason.</source>
        <translation>Ein Zurückziehen braucht einen Grund.</translation>
    </message>
    <message>
        <source>These name it and are withdrawn with it: %1.</source>
        <translation>Diese nennen es und werden mit zurückgezogen: %1.</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation>Zurückziehen</translation>
    </message>
    <message>
        <source>Withdraw all %1</source>
        <translation>Alle %1 zurückziehen</translation>
    </message>
    <message>
        <source>These name it and stay, without it: %1.</source>
        <translation>Diese nennen es und bleiben, ohne es: %1.</translation>
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
        <translation>angenommen mit Feststellungen</translation>
    </message>
    <message>
        <source>adviser</source>
        <translation>Berater</translation>
    </message>
    <message>
        <source>aircraft</source>
        <translation>Flugzeug</translation>
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
        <translation>Zusammenbau</translation>
    </message>
    <message>
        <source>automatic</source>
        <translation>selbsttätig</translation>
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
        <translation>Bulletin</translation>
    </message>
    <message>
        <source>by_message</source>
        <translation>per Nachricht</translation>
    </message>
    <message>
        <source>by_photo</source>
        <translation>per Foto</translation>
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
        <translation>übernommen</translation>
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
        <translation>frei</translation>
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
        <translation>Schließstelle</translation>
    </message>
    <message>
        <source>commercial</source>
        <translation>bezahlte Hilfe</translation>
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
        <translation>Ruder</translation>
    </message>
    <message>
        <source>cosmetic</source>
        <translation>Aussehen</translation>
    </message>
    <message>
        <source>credit_basis</source>
        <translation>Zählweise des überwiegenden Teils</translation>
    </message>
    <message>
        <source>credit_task</source>
        <translation>Aufgabe des überwiegenden Teils</translation>
    </message>
    <message>
        <source>defect</source>
        <translation>Mangel</translation>
    </message>
    <message>
        <source>delete</source>
        <translation>gelöscht</translation>
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
        <translation>Äußeres</translation>
    </message>
    <message>
        <source>fabric</source>
        <translation>Bespannung</translation>
    </message>
    <message>
        <source>fabrication</source>
        <translation>Herstellung</translation>
    </message>
    <message>
        <source>factory</source>
        <translation>Hersteller</translation>
    </message>
    <message>
        <source>factory_closing_needs_document</source>
        <translation>Werksschließstelle braucht Dokument</translation>
    </message>
    <message>
        <source>failed</source>
        <translation>durchgefallen</translation>
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
        <translation>offen halten</translation>
    </message>
    <message>
        <source>hold_point</source>
        <translation>Haltepunkt</translation>
    </message>
    <message>
        <source>imperial</source>
        <translation>angloamerikanisch</translation>
    </message>
    <message>
        <source>import</source>
        <translation>Übernahme</translation>
    </message>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
    <message>
        <source>independent_check</source>
        <translation>unabhängige Prüfung</translation>
    </message>
    <message>
        <source>insert</source>
        <translation>neu</translation>
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
        <translation>Inneres</translation>
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
        <translation>nachträgliche Annahme durch</translation>
    </message>
    <message>
        <source>late_entry_days</source>
        <translation>Tage bis zum Nachtrag</translation>
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
        <translation>Materialeinsatz</translation>
    </message>
    <message>
        <source>measurement</source>
        <translation>Messung</translation>
    </message>
    <message>
        <source>media</source>
        <translation>Bild oder Dokument</translation>
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
        <translation>Sonstiges</translation>
    </message>
    <message>
        <source>own_check</source>
        <translation>eigene Prüfung</translation>
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
        <translation>vor dem Schließen</translation>
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
        <translation>bereit zur Prüfung</translation>
    </message>
    <message>
        <source>ready_to_sign</source>
        <translation>bereit zur Unterschrift</translation>
    </message>
    <message>
        <source>receipt</source>
        <translation>Beleg</translation>
    </message>
    <message>
        <source>redo</source>
        <translation>wiederholt</translation>
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
        <translation>Weiterverkauf</translation>
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
        <translation>soll</translation>
    </message>
    <message>
        <source>sign_off</source>
        <translation>Abzeichnung</translation>
    </message>
    <message>
        <source>signed_sheet</source>
        <translation>unterschriebenes Blatt</translation>
    </message>
    <message>
        <source>some_cases</source>
        <translation>manche Fälle</translation>
    </message>
    <message>
        <source>split_pin</source>
        <translation>Splint</translation>
    </message>
    <message>
        <source>squawk</source>
        <translation>Beanstandung</translation>
    </message>
    <message>
        <source>stage</source>
        <translation>Zwischenprüfung</translation>
    </message>
    <message>
        <source>step</source>
        <translation>Schritt</translation>
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
        <translation>Schraubenkleber</translation>
    </message>
    <message>
        <source>ticks</source>
        <translation>Häkchen</translation>
    </message>
    <message>
        <source>tool</source>
        <translation>Werkzeug</translation>
    </message>
    <message>
        <source>tool_and_debris_check</source>
        <translation>Werkzeug- und Fremdkörperprüfung</translation>
    </message>
    <message>
        <source>tube</source>
        <translation>Rohr</translation>
    </message>
    <message>
        <source>undercarriage</source>
        <translation>Fahrwerk</translation>
    </message>
    <message>
        <source>undo</source>
        <translation>zurückgenommen</translation>
    </message>
    <message>
        <source>update</source>
        <translation>geändert</translation>
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
        <translation>Arbeit</translation>
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
        <translation>C</translation>
    </message>
    <message>
        <source>F</source>
        <translation>F</translation>
    </message>
    <message>
        <source>N-m</source>
        <translation>N·m</translation>
    </message>
    <message>
        <source>all</source>
        <translation>alle</translation>
    </message>
    <message>
        <source>closing-step-not-done</source>
        <translation>Schließschritt nicht erledigt</translation>
    </message>
    <message>
        <source>cure-time-unknown</source>
        <translation>Aushärtezeit unbekannt</translation>
    </message>
    <message>
        <source>curing-material</source>
        <translation>Material härtet aus</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>expired-material</source>
        <translation>abgelaufenes Material</translation>
    </message>
    <message>
        <source>factory-closing-without-document</source>
        <translation>Werksschließstelle ohne Dokument</translation>
    </message>
    <message>
        <source>failed-sample</source>
        <translation>Probe durchgefallen</translation>
    </message>
    <message>
        <source>fastener-not-fitted</source>
        <translation>Verbindungselement nicht eingebaut</translation>
    </message>
    <message>
        <source>filed-above</source>
        <translation>darüber abgelegt</translation>
    </message>
    <message>
        <source>ft-lb</source>
        <translation>ft-lb</translation>
    </message>
    <message>
        <source>in-lb</source>
        <translation>in-lb</translation>
    </message>
    <message>
        <source>inner-closed-early</source>
        <translation>Inneres mit Lücken geschlossen</translation>
    </message>
    <message>
        <source>inner-closing-open</source>
        <translation>Inneres noch offen</translation>
    </message>
    <message>
        <source>loose-fastener</source>
        <translation>loses Verbindungselement</translation>
    </message>
    <message>
        <source>measurement-missing</source>
        <translation>Messung fehlt</translation>
    </message>
    <message>
        <source>measurement-out-of-limits</source>
        <translation>Messung außerhalb der Grenzen</translation>
    </message>
    <message>
        <source>missing-part</source>
        <translation>fehlendes Teil</translation>
    </message>
    <message>
        <source>no_longer</source>
        <translation>nicht mehr erreichbar</translation>
    </message>
    <message>
        <source>not_for_long</source>
        <translation>nicht mehr lange</translation>
    </message>
    <message>
        <source>open-bulletin</source>
        <translation>offenes Bulletin</translation>
    </message>
    <message>
        <source>open-squawk</source>
        <translation>offene Beanstandung</translation>
    </message>
    <message>
        <source>outdated-sign-off</source>
        <translation>überholte Unterschrift</translation>
    </message>
    <message>
        <source>outstanding</source>
        <translation>unerledigt</translation>
    </message>
    <message>
        <source>part-without-closing</source>
        <translation>Teil ohne Schließstelle</translation>
    </message>
    <message>
        <source>record-without-place</source>
        <translation>Aufzeichnung ohne Ort</translation>
    </message>
    <message>
        <source>rejected-deviation-built</source>
        <translation>abgelehnte Abweichung gebaut</translation>
    </message>
    <message>
        <source>second-hand</source>
        <translation>aus zweiter Hand</translation>
    </message>
    <message>
        <source>signature-without-sheet</source>
        <translation>Unterschrift ohne Blatt</translation>
    </message>
    <message>
        <source>stale-photos</source>
        <translation>veraltete Fotos</translation>
    </message>
    <message>
        <source>thin-record</source>
        <translation>dünne Aufzeichnung</translation>
    </message>
    <message>
        <source>to_fix</source>
        <translation>zu beheben</translation>
    </message>
    <message>
        <source>to_verify</source>
        <translation>nachzuprüfen</translation>
    </message>
    <message>
        <source>too-few-photos</source>
        <translation>zu wenige Fotos</translation>
    </message>
    <message>
        <source>torque-out-of-limits</source>
        <translation>Drehmoment außerhalb der Grenzen</translation>
    </message>
    <message>
        <source>uncalibrated-tool</source>
        <translation>Werkzeug nicht kalibriert</translation>
    </message>
    <message>
        <source>undecided-deviation</source>
        <translation>Abweichung nicht entschieden</translation>
    </message>
    <message>
        <source>undone-step</source>
        <translation>Schritt nicht erledigt</translation>
    </message>
    <message>
        <source>unlocked-fastener</source>
        <translation>Verbindungselement nicht gesichert</translation>
    </message>
    <message>
        <source>unmarked-fastener</source>
        <translation>Verbindungselement nicht markiert</translation>
    </message>
    <message>
        <source>unsigned-hold-point</source>
        <translation>Haltepunkt nicht unterschrieben</translation>
    </message>
    <message>
        <source>unticked-check</source>
        <translation>Prüfpunkt nicht abgehakt</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>biplane</source>
        <translation>Doppeldecker</translation>
    </message>
    <message>
        <source>canard</source>
        <translation>Entenflugzeug</translation>
    </message>
    <message>
        <source>centre_fuselage</source>
        <translation>Rumpfmitte</translation>
    </message>
    <message>
        <source>cockpit</source>
        <translation>Cockpit</translation>
    </message>
    <message>
        <source>elevator</source>
        <translation>Höhenruder</translation>
    </message>
    <message>
        <source>engine_bay</source>
        <translation>Motorraum</translation>
    </message>
    <message>
        <source>fin</source>
        <translation>Seitenflosse</translation>
    </message>
    <message>
        <source>foreplane</source>
        <translation>Entenflügel</translation>
    </message>
    <message>
        <source>fuselage_tank</source>
        <translation>Rumpftank</translation>
    </message>
    <message>
        <source>high_wing</source>
        <translation>Hochdecker</translation>
    </message>
    <message>
        <source>left_aileron</source>
        <translation>linkes Querruder</translation>
    </message>
    <message>
        <source>left_flap</source>
        <translation>linke Klappe</translation>
    </message>
    <message>
        <source>left_main_wheel</source>
        <translation>linkes Hauptrad</translation>
    </message>
    <message>
        <source>left_tank</source>
        <translation>linker Tank</translation>
    </message>
    <message>
        <source>left_wing</source>
        <translation>linker Flügel</translation>
    </message>
    <message>
        <source>low_wing</source>
        <translation>Tiefdecker</translation>
    </message>
    <message>
        <source>lower_left_wing</source>
        <translation>linker Unterflügel</translation>
    </message>
    <message>
        <source>lower_right_wing</source>
        <translation>rechter Unterflügel</translation>
    </message>
    <message>
        <source>nose_wheel</source>
        <translation>Bugrad</translation>
    </message>
    <message>
        <source>rear_fuselage</source>
        <translation>Rumpfheck</translation>
    </message>
    <message>
        <source>right_aileron</source>
        <translation>rechtes Querruder</translation>
    </message>
    <message>
        <source>right_flap</source>
        <translation>rechte Klappe</translation>
    </message>
    <message>
        <source>right_main_wheel</source>
        <translation>rechtes Hauptrad</translation>
    </message>
    <message>
        <source>right_tank</source>
        <translation>rechter Tank</translation>
    </message>
    <message>
        <source>right_wing</source>
        <translation>rechter Flügel</translation>
    </message>
    <message>
        <source>rudder</source>
        <translation>Seitenruder</translation>
    </message>
    <message>
        <source>stabiliser</source>
        <translation>Höhenflosse</translation>
    </message>
    <message>
        <source>tail_wheel</source>
        <translation>Spornrad</translation>
    </message>
    <message>
        <source>existence</source>
        <translation>Vorhandensein</translation>
    </message>
    <message>
        <source>set_aside</source>
        <translation>weggelassen</translation>
    </message>
    <message>
        <source>taken</source>
        <translation>übernommen</translation>
    </message>
    <message>
        <source>value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <source>week</source>
        <translation>Woche</translation>
    </message>
</context>
<context>
    <name>Workshop</name>
    <message>
        <source>nut used again</source>
        <translation>wiederverwendete Mutter</translation>
    </message>
    <message>
        <source>military, breakaway</source>
        <translation>militärisch, Losbrechmoment</translation>
    </message>
    <message>
        <source>ground equipment, nylon insert</source>
        <translation>Bodengerät, Nyloneinsatz</translation>
    </message>
    <message>
        <source>final hole, today</source>
        <translation>fertige Bohrung, heute</translation>
    </message>
    <message>
        <source>final hole, 1940s manual</source>
        <translation>fertige Bohrung, Handbuch der 1940er</translation>
    </message>
    <message>
        <source>hole for a blind rivet</source>
        <translation>Bohrung für Blindniet</translation>
    </message>
    <message>
        <source>hole for a bolt in a rivet&apos;s place</source>
        <translation>Bohrung für eine Schraube an Nietstelle</translation>
    </message>
    <message>
        <source>usual target, 1.5 D × 0.5 D</source>
        <translation>übliches Ziel, 1,5 D × 0,5 D</translation>
    </message>
    <message>
        <source>military minimum</source>
        <translation>militärisches Mindestmaß</translation>
    </message>
    <message>
        <source>trade gauge</source>
        <translation>Lehre des Handwerks</translation>
    </message>
    <message>
        <source>1940s manual</source>
        <translation>Handbuch der 1940er</translation>
    </message>
    <message>
        <source>edge distance, least</source>
        <translation>Randabstand, mindestens</translation>
    </message>
    <message>
        <source>edge distance, most</source>
        <translation>Randabstand, höchstens</translation>
    </message>
    <message>
        <source>edge distance, better</source>
        <translation>Randabstand, besser</translation>
    </message>
    <message>
        <source>allowance added when laying out</source>
        <translation>Zugabe beim Anreißen</translation>
    </message>
    <message>
        <source>military least for 3/32 universal heads</source>
        <translation>militärisches Mindestmaß für 3/32-Universalköpfe</translation>
    </message>
    <message>
        <source>below this a bolt takes the rivet&apos;s place</source>
        <translation>darunter tritt eine Schraube an die Stelle des Niets</translation>
    </message>
    <message>
        <source>pitch, least</source>
        <translation>Teilung, mindestens</translation>
    </message>
    <message>
        <source>usual pitch, from</source>
        <translation>übliche Teilung, von</translation>
    </message>
    <message>
        <source>usual pitch, to</source>
        <translation>übliche Teilung, bis</translation>
    </message>
    <message>
        <source>pitch, most, Navy</source>
        <translation>Teilung, höchstens, Marine</translation>
    </message>
    <message>
        <source>pitch, most, trade</source>
        <translation>Teilung, höchstens, Handwerk</translation>
    </message>
    <message>
        <source>pitch, most, FAA</source>
        <translation>Teilung, höchstens, FAA</translation>
    </message>
    <message>
        <source>distance of rows</source>
        <translation>Abstand der Reihen</translation>
    </message>
    <message>
        <source>distance of rows, least</source>
        <translation>Abstand der Reihen, mindestens</translation>
    </message>
    <message>
        <source>rivet diameter, target</source>
        <translation>Nietdurchmesser, Ziel</translation>
    </message>
    <message>
        <source>rivet diameter, least, Navy</source>
        <translation>Nietdurchmesser, mindestens, Marine</translation>
    </message>
    <message>
        <source>rivet diameter, most, Navy</source>
        <translation>Nietdurchmesser, höchstens, Marine</translation>
    </message>
    <message>
        <source>rivet diameter, least in structure</source>
        <translation>Nietdurchmesser, mindestens in der Struktur</translation>
    </message>
    <message>
        <source>length of a rivet</source>
        <translation>Länge eines Niets</translation>
    </message>
    <message>
        <source>tail before driving, least</source>
        <translation>Schaftüberstand vor dem Schlagen, mindestens</translation>
    </message>
    <message>
        <source>rivet through a tube, least</source>
        <translation>Niet durch ein Rohr, mindestens</translation>
    </message>
    <message>
        <source>larger when replacing a harder rivet</source>
        <translation>größer als Ersatz für einen härteren Niet</translation>
    </message>
    <message>
        <source>oversize repairs, most</source>
        <translation>Reparaturen mit Übermaß, höchstens</translation>
    </message>
    <message>
        <source>depth of deburring, most</source>
        <translation>Tiefe des Entgratens, höchstens</translation>
    </message>
    <message>
        <source>thinnest sheet to countersink by machine</source>
        <translation>dünnstes Blech zum Senken mit der Maschine</translation>
    </message>
    <message>
        <source>thinnest outer sheet to countersink by machine</source>
        <translation>dünnstes Außenblech zum Senken mit der Maschine</translation>
    </message>
    <message>
        <source>countersink for reduced heads, most</source>
        <translation>Senkung für kleine Köpfe, höchstens</translation>
    </message>
    <message>
        <source>countersink, least</source>
        <translation>Senkung, mindestens</translation>
    </message>
    <message>
        <source>countersink, most</source>
        <translation>Senkung, höchstens</translation>
    </message>
    <message>
        <source>dimpling is best up to</source>
        <translation>Dimpeln am besten bis</translation>
    </message>
    <message>
        <source>dimpling up to, 1940s</source>
        <translation>Dimpeln bis, 1940er</translation>
    </message>
    <message>
        <source>depth of a countersink, most</source>
        <translation>Tiefe einer Senkung, höchstens</translation>
    </message>
    <message>
        <source>knife edge, not approved</source>
        <translation>Messerkante, nicht zugelassen</translation>
    </message>
    <message>
        <source>blend, length to depth</source>
        <translation>Verlauf, Länge zu Tiefe</translation>
    </message>
    <message>
        <source>no rotary file on sheet below</source>
        <translation>kein Rotierfräser auf Blech unter</translation>
    </message>
    <message>
        <source>no blasting without approval below</source>
        <translation>kein Strahlen ohne Genehmigung unter</translation>
    </message>
    <message>
        <source>blasting pressure, clad</source>
        <translation>Strahldruck, plattiert</translation>
    </message>
    <message>
        <source>blasting pressure, bare</source>
        <translation>Strahldruck, unplattiert</translation>
    </message>
    <message>
        <source>blasting one spot, most</source>
        <translation>Strahlen einer Stelle, höchstens</translation>
    </message>
    <message>
        <source>last grit</source>
        <translation>letzte Körnung</translation>
    </message>
    <message>
        <source>primer on sanded steel within</source>
        <translation>Grundierung auf geschliffenem Stahl binnen</translation>
    </message>
    <message>
        <source>how deep may be removed</source>
        <translation>wie tief abgetragen werden darf</translation>
    </message>
    <message>
        <source>one type&apos;s limit for skins</source>
        <translation>Grenze eines Musters für Häute</translation>
    </message>
    <message>
        <source>one type&apos;s limit for structure</source>
        <translation>Grenze eines Musters für Struktur</translation>
    </message>
    <message>
        <source>stop drill</source>
        <translation>Stoppbohrung</translation>
    </message>
    <message>
        <source>corner of a cut-out, least radius</source>
        <translation>Ecke eines Ausschnitts, kleinster Radius</translation>
    </message>
    <message>
        <source>magnifier for fittings</source>
        <translation>Lupe für Beschläge</translation>
    </message>
    <message>
        <source>worn hole in a fitting without bush</source>
        <translation>ausgeschlagenes Loch in Beschlag ohne Buchse</translation>
    </message>
    <message>
        <source>threads through the nut, least</source>
        <translation>Gewindegänge durch die Mutter, mindestens</translation>
    </message>
    <message>
        <source>washers, most</source>
        <translation>Unterlegscheiben, höchstens</translation>
    </message>
    <message>
        <source>smallest steel bolt</source>
        <translation>kleinste Stahlschraube</translation>
    </message>
    <message>
        <source>smallest aluminium bolt</source>
        <translation>kleinste Aluminiumschraube</translation>
    </message>
    <message>
        <source>locking used again</source>
        <translation>Sicherung wiederverwenden</translation>
    </message>
    <message>
        <source>self-locking nut</source>
        <translation>selbstsichernde Mutter</translation>
    </message>
    <message>
        <source>calibration at least every</source>
        <translation>Kalibrierung mindestens alle</translation>
    </message>
    <message>
        <source>lubricated threads</source>
        <translation>geschmierte Gewinde</translation>
    </message>
    <message>
        <source>torque paint</source>
        <translation>Sicherungslack</translation>
    </message>
    <message>
        <source>safety wire, least</source>
        <translation>Sicherungsdraht, mindestens</translation>
    </message>
    <message>
        <source>turning on to line up holes</source>
        <translation>Weiterdrehen, bis Löcher fluchten</translation>
    </message>
    <message>
        <source>twists</source>
        <translation>Verdrillungen</translation>
    </message>
    <message>
        <source>pigtail, turns</source>
        <translation>Drahtende, Windungen</translation>
    </message>
    <message>
        <source>pigtail, length</source>
        <translation>Drahtende, Länge</translation>
    </message>
    <message>
        <source>prongs of a split pin</source>
        <translation>Schenkel eines Splints</translation>
    </message>
    <message>
        <source>threads outside a turnbuckle, most</source>
        <translation>Gewindegänge außerhalb des Spannschlosses, höchstens</translation>
    </message>
    <message>
        <source>wraps at a turnbuckle, least</source>
        <translation>Umwicklungen am Spannschloss, mindestens</translation>
    </message>
    <message>
        <source>proof load of a swaged end</source>
        <translation>Prüflast eines gepressten Endes</translation>
    </message>
    <message>
        <source>deflection at a fairlead, most</source>
        <translation>Ablenkung an einer Führung, höchstens</translation>
    </message>
    <message>
        <source>table of a tensiometer</source>
        <translation>Tabelle eines Seilspannungsmessers</translation>
    </message>
    <message>
        <source>readings of a tensiometer</source>
        <translation>Ablesungen eines Seilspannungsmessers</translation>
    </message>
    <message>
        <source>tensiometer from fittings, least</source>
        <translation>Seilspannungsmesser von Beschlägen, mindestens</translation>
    </message>
    <message>
        <source>tolerance of travel</source>
        <translation>Toleranz der Ausschläge</translation>
    </message>
    <message>
        <source>drop of a feeder, most</source>
        <translation>Abfall einer Zuleitung, höchstens</translation>
    </message>
    <message>
        <source>ground path, most</source>
        <translation>Masseweg, höchstens</translation>
    </message>
    <message>
        <source>hot copper wire</source>
        <translation>heiße Kupferleitung</translation>
    </message>
    <message>
        <source>hot aluminium wire</source>
        <translation>heiße Aluminiumleitung</translation>
    </message>
    <message>
        <source>pulling a crimp</source>
        <translation>Zugprobe einer Crimpung</translation>
    </message>
    <message>
        <source>crimp</source>
        <translation>Crimpung</translation>
    </message>
    <message>
        <source>epoxy: pot life halves every</source>
        <translation>Epoxid: Topfzeit halbiert sich je</translation>
    </message>
    <message>
        <source>epoxy: no load before</source>
        <translation>Epoxid: keine Last vor</translation>
    </message>
    <message>
        <source>epoxy primer: let stand</source>
        <translation>Epoxidgrundierung: stehen lassen</translation>
    </message>
    <message>
        <source>epoxy primer: use within</source>
        <translation>Epoxidgrundierung: verarbeiten binnen</translation>
    </message>
    <message>
        <source>sealant: mix</source>
        <translation>Dichtmasse: Mischung</translation>
    </message>
    <message>
        <source>military</source>
        <translation>militärisch</translation>
    </message>
    <message>
        <source>commercial</source>
        <translation>gewerblich</translation>
    </message>
    <message>
        <source>protruding head</source>
        <translation>vorstehender Kopf</translation>
    </message>
    <message>
        <source>flush head</source>
        <translation>Senkkopf</translation>
    </message>
    <message>
        <source>any</source>
        <translation>alle</translation>
    </message>
    <message>
        <source>1 row, protruding head</source>
        <translation>1 Reihe, vorstehender Kopf</translation>
    </message>
    <message>
        <source>2 rows, protruding head</source>
        <translation>2 Reihen, vorstehender Kopf</translation>
    </message>
    <message>
        <source>3 rows or more, protruding head</source>
        <translation>3 Reihen oder mehr, vorstehender Kopf</translation>
    </message>
    <message>
        <source>1 row, flush head</source>
        <translation>1 Reihe, Senkkopf</translation>
    </message>
    <message>
        <source>2 rows, flush head</source>
        <translation>2 Reihen, Senkkopf</translation>
    </message>
    <message>
        <source>3 rows or more, flush head</source>
        <translation>3 Reihen oder mehr, Senkkopf</translation>
    </message>
    <message>
        <source>the project&apos;s own</source>
        <translation>des Projekts eigene</translation>
    </message>
    <message>
        <source>read in two places</source>
        <translation>an zwei Stellen gelesen</translation>
    </message>
    <message>
        <source>read in one place</source>
        <translation>an einer Stelle gelesen</translation>
    </message>
    <message>
        <source>computed</source>
        <translation>berechnet</translation>
    </message>
    <message>
        <source>second hand</source>
        <translation>aus zweiter Hand</translation>
    </message>
    <message>
        <source>from memory: look it up</source>
        <translation>aus dem Gedächtnis: nachschlagen</translation>
    </message>
    <message>
        <source>Thread</source>
        <translation>Gewinde</translation>
    </message>
    <message>
        <source>Tension nut</source>
        <translation>Mutter auf Zug</translation>
    </message>
    <message>
        <source>Shear nut</source>
        <translation>Mutter auf Scherung</translation>
    </message>
    <message>
        <source>Most, tension</source>
        <translation>Höchstens, Zug</translation>
    </message>
    <message>
        <source>Most, shear</source>
        <translation>Höchstens, Scherung</translation>
    </message>
    <message>
        <source>Shear estimated</source>
        <translation>Scherung geschätzt</translation>
    </message>
    <message>
        <source>Basis</source>
        <translation>Grundlage</translation>
    </message>
    <message>
        <source>Least drag</source>
        <translation>Mindestlaufmoment</translation>
    </message>
    <message>
        <source>Case</source>
        <translation>Fall</translation>
    </message>
    <message>
        <source>Lever</source>
        <translation>Hebel</translation>
    </message>
    <message>
        <source>Extension</source>
        <translation>Verlängerung</translation>
    </message>
    <message>
        <source>Printed</source>
        <translation>Gedruckt</translation>
    </message>
    <message>
        <source>Worked out</source>
        <translation>Berechnet</translation>
    </message>
    <message>
        <source>Rivet</source>
        <translation>Niet</translation>
    </message>
    <message>
        <source>Width of the head</source>
        <translation>Breite des Kopfes</translation>
    </message>
    <message>
        <source>Height of the head</source>
        <translation>Höhe des Kopfes</translation>
    </message>
    <message>
        <source>Rule</source>
        <translation>Regel</translation>
    </message>
    <message>
        <source>Holds for</source>
        <translation>Gilt für</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Fastener</source>
        <translation>Verbindungselement</translation>
    </message>
    <message>
        <source>Drill</source>
        <translation>Bohrer</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>Hole</source>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>Pilot hole</source>
        <translation>Vorbohrung</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Blech</translation>
    </message>
    <message>
        <source>3/16 bolts</source>
        <translation>3/16-Schrauben</translation>
    </message>
    <message>
        <source>Sum</source>
        <translation>Rechnung</translation>
    </message>
    <message>
        <source>Cable, in</source>
        <translation>Seil, in</translation>
    </message>
    <message>
        <source>Made of</source>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>Composition A</source>
        <translation>Ausführung A</translation>
    </message>
    <message>
        <source>Composition B, stainless</source>
        <translation>Ausführung B, rostfrei</translation>
    </message>
    <message>
        <source>Wrap</source>
        <translation>Wicklung</translation>
    </message>
    <message>
        <source>Wire</source>
        <translation>Draht</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>AWG</source>
        <translation>AWG</translation>
    </message>
    <message>
        <source>A at 105 °C</source>
        <translation>A bei 105 °C</translation>
    </message>
    <message>
        <source>A at 150 °C</source>
        <translation>A bei 150 °C</translation>
    </message>
    <message>
        <source>A at 200 °C</source>
        <translation>A bei 200 °C</translation>
    </message>
    <message>
        <source>Ohms per 1,000 ft</source>
        <translation>Ohm je 1.000 ft</translation>
    </message>
    <message>
        <source>Circular mils</source>
        <translation>Circular mils</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>Length of the wire</source>
        <translation>Länge der Leitung</translation>
    </message>
    <message>
        <source>A</source>
        <translation>A</translation>
    </message>
    <message>
        <source>Printed, V</source>
        <translation>Gedruckt, V</translation>
    </message>
    <message>
        <source>Worked out, V</source>
        <translation>Berechnet, V</translation>
    </message>
    <message>
        <source>Circuit, V</source>
        <translation>Netz, V</translation>
    </message>
    <message>
        <source>All the time, V</source>
        <translation>Dauernd, V</translation>
    </message>
    <message>
        <source>Now and then, V</source>
        <translation>Zeitweise, V</translation>
    </message>
    <message>
        <source>Holds at least</source>
        <translation>Hält mindestens</translation>
    </message>
    <message>
        <source>Strands</source>
        <translation>Einzeldrähte</translation>
    </message>
    <message>
        <source>Nicked, most</source>
        <translation>Eingekerbt, höchstens</translation>
    </message>
    <message>
        <source>Broken, most</source>
        <translation>Gebrochen, höchstens</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Klasse</translation>
    </message>
    <message>
        <source>Application, h</source>
        <translation>Topfzeit, h</translation>
    </message>
    <message>
        <source>Tack-free, h</source>
        <translation>Klebfrei, h</translation>
    </message>
    <message>
        <source>Cured, h</source>
        <translation>Fest nach, h</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Example</source>
        <translation>Beispiel</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Arm</source>
        <translation>Hebelarm</translation>
    </message>
    <message>
        <source>Moment</source>
        <translation>Moment</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Torque of fine threads</source>
        <translation>Drehmomente, Feingewinde</translation>
    </message>
    <message>
        <source>Torque of coarse threads</source>
        <translation>Drehmomente, Grobgewinde</translation>
    </message>
    <message>
        <source>Least drag of self-locking nuts</source>
        <translation>Mindestlaufmoment selbstsichernder Muttern</translation>
    </message>
    <message>
        <source>Worked examples of wrench extensions</source>
        <translation>Gerechnete Beispiele mit Schlüsselverlängerung</translation>
    </message>
    <message>
        <source>Bolts, nuts and locking</source>
        <translation>Schrauben, Muttern und Sicherung</translation>
    </message>
    <message>
        <source>Safety wire and split pins</source>
        <translation>Sicherungsdraht und Splinte</translation>
    </message>
    <message>
        <source>Shop heads</source>
        <translation>Schließköpfe</translation>
    </message>
    <message>
        <source>Rivets: distances and sizes</source>
        <translation>Niete: Abstände und Größen</translation>
    </message>
    <message>
        <source>Countersinks and dimples</source>
        <translation>Senken und Dimpeln</translation>
    </message>
    <message>
        <source>Drills and holes</source>
        <translation>Bohrer und Bohrungen</translation>
    </message>
    <message>
        <source>Rivets an inch, 5052 sheet</source>
        <translation>Niete je Zoll, Blech 5052</translation>
    </message>
    <message>
        <source>Worked examples of sheet metal</source>
        <translation>Gerechnete Beispiele zum Blech</translation>
    </message>
    <message>
        <source>Strength of control cables</source>
        <translation>Festigkeit von Steuerseilen</translation>
    </message>
    <message>
        <source>Safety wire of turnbuckles</source>
        <translation>Sicherungsdraht von Spannschlössern</translation>
    </message>
    <message>
        <source>Turnbuckles, cables and travel</source>
        <translation>Spannschlösser, Seile und Ausschläge</translation>
    </message>
    <message>
        <source>Copper wire</source>
        <translation>Kupferleitung</translation>
    </message>
    <message>
        <source>Voltage drop that is allowed</source>
        <translation>Erlaubter Spannungsabfall</translation>
    </message>
    <message>
        <source>Worked examples of voltage drop</source>
        <translation>Gerechnete Beispiele zum Spannungsabfall</translation>
    </message>
    <message>
        <source>Pull of crimped terminals</source>
        <translation>Zugkraft gecrimpter Anschlüsse</translation>
    </message>
    <message>
        <source>Nicked and broken strands</source>
        <translation>Eingekerbte und gebrochene Einzeldrähte</translation>
    </message>
    <message>
        <source>Wiring</source>
        <translation>Verkabelung</translation>
    </message>
    <message>
        <source>Sealants</source>
        <translation>Dichtmassen</translation>
    </message>
    <message>
        <source>Resins, primers and mixing</source>
        <translation>Harze, Grundierungen und Mischen</translation>
    </message>
    <message>
        <source>Corrosion and damage</source>
        <translation>Korrosion und Schäden</translation>
    </message>
    <message>
        <source>Weights that are usual</source>
        <translation>Übliche Massen</translation>
    </message>
    <message>
        <source>Worked examples of weighing and loading</source>
        <translation>Gerechnete Beispiele zu Wägung und Beladung</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 in, %2</source>
        <translation>%1 in, %2</translation>
    </message>
    <message>
        <source>%1 nicked, %2 broken</source>
        <translation>%1 eingekerbt, %2 gebrochen</translation>
    </message>
    <message>
        <source>%1 wide, %2 high</source>
        <translation>%1 breit, %2 hoch</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>60 % of that, held 5 s; composition A</source>
        <translation>60 % davon, 5 s gehalten; Ausführung A</translation>
    </message>
    <message>
        <source>60 % of that, held 5 s; composition B</source>
        <translation>60 % davon, 5 s gehalten; Ausführung B</translation>
    </message>
    <message>
        <source>A crimped terminal holds at least</source>
        <translation>Ein gecrimpter Anschluss hält mindestens</translation>
    </message>
    <message>
        <source>A driven head has a width and a height above zero.</source>
        <translation>Ein geschlagener Kopf hat Breite und Höhe über null.</translation>
    </message>
    <message>
        <source>A driven head that was measured</source>
        <translation>Ein gemessener Schließkopf</translation>
    </message>
    <message>
        <source>About three times the sheet</source>
        <translation>Etwa dreimal das Blech</translation>
    </message>
    <message>
        <source>Allowed all the time</source>
        <translation>Dauernd erlaubt</translation>
    </message>
    <message>
        <source>Allowed now and then</source>
        <translation>Zeitweise erlaubt</translation>
    </message>
    <message>
        <source>An extension that points back to the handle is below zero; at a right angle it changes nothing.</source>
        <translation>Eine Verlängerung, die zum Griff zurückweist, ist kleiner als null; im rechten Winkel ändert sie nichts.</translation>
    </message>
    <message>
        <source>At least</source>
        <translation>Mindestens</translation>
    </message>
    <message>
        <source>At the nut</source>
        <translation>An der Mutter</translation>
    </message>
    <message>
        <source>Bent by, degrees</source>
        <translation>Gebogen um, Grad</translation>
    </message>
    <message>
        <source>Bolts and torque</source>
        <translation>Schrauben und Drehmoment</translation>
    </message>
    <message>
        <source>Breaks at, at least</source>
        <translation>Bricht bei, mindestens</translation>
    </message>
    <message>
        <source>Cable</source>
        <translation>Seil</translation>
    </message>
    <message>
        <source>Cables and controls</source>
        <translation>Seile und Steuerung</translation>
    </message>
    <message>
        <source>Circuit</source>
        <translation>Netz</translation>
    </message>
    <message>
        <source>Conductor, °C</source>
        <translation>Leiter, °C</translation>
    </message>
    <message>
        <source>Current, A</source>
        <translation>Strom, A</translation>
    </message>
    <message>
        <source>Drag of the nut</source>
        <translation>Laufmoment der Mutter</translation>
    </message>
    <message>
        <source>Edge distance</source>
        <translation>Randabstand</translation>
    </message>
    <message>
        <source>Extension: drive to the nut</source>
        <translation>Verlängerung: Vierkant bis Mutter</translation>
    </message>
    <message>
        <source>Grip</source>
        <translation>Klemmlänge</translation>
    </message>
    <message>
        <source>How well it is known</source>
        <translation>Wie gut es bekannt ist</translation>
    </message>
    <message>
        <source>Inner bend radius</source>
        <translation>Innerer Biegeradius</translation>
    </message>
    <message>
        <source>Insulation</source>
        <translation>Isolierung</translation>
    </message>
    <message>
        <source>Least drag of a self-locking nut</source>
        <translation>Mindestlaufmoment einer selbstsichernden Mutter</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Lever: middle of the grip to the drive</source>
        <translation>Hebel: Griffmitte bis Vierkant</translation>
    </message>
    <message>
        <source>Machine countersink from</source>
        <translation>Senken mit der Maschine ab</translation>
    </message>
    <message>
        <source>Never more than</source>
        <translation>Nie mehr als</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>Nut</source>
        <translation>Mutter</translation>
    </message>
    <message>
        <source>One way, with the airframe as return. A hot wire has more resistance: give the temperature that the conductor reaches.</source>
        <translation>Ein Weg, mit der Zelle als Rückleiter. Eine heiße Leitung hat mehr Widerstand: die Temperatur angeben, die der Leiter erreicht.</translation>
    </message>
    <message>
        <source>Other alloys have tables of their own. Part of the count is enough in some places: the drawing or the text of the table says which share.</source>
        <translation>Andere Legierungen haben eigene Tabellen. An manchen Stellen genügt ein Teil der Zahl: welcher, sagt die Zeichnung oder der Text der Tabelle.</translation>
    </message>
    <message>
        <source>Pitch</source>
        <translation>Teilung</translation>
    </message>
    <message>
        <source>Proof load of a swaged end</source>
        <translation>Prüflast eines gepressten Endes</translation>
    </message>
    <message>
        <source>Rivets</source>
        <translation>Niete</translation>
    </message>
    <message>
        <source>Rivets an inch of width</source>
        <translation>Niete je Zoll Breite</translation>
    </message>
    <message>
        <source>Rivets of a splice in 5052 sheet</source>
        <translation>Niete eines Stoßes in Blech 5052</translation>
    </message>
    <message>
        <source>Rivets on each side of the seam</source>
        <translation>Niete auf jeder Seite der Naht</translation>
    </message>
    <message>
        <source>Rivets that there is room for</source>
        <translation>Niete, für die Platz ist</translation>
    </message>
    <message>
        <source>Rows</source>
        <translation>Reihen</translation>
    </message>
    <message>
        <source>Safety wire</source>
        <translation>Sicherungsdraht</translation>
    </message>
    <message>
        <source>Sealants, resins, primers</source>
        <translation>Dichtmassen, Harze, Grundierungen</translation>
    </message>
    <message>
        <source>Set the wrench to</source>
        <translation>Schlüssel einstellen auf</translation>
    </message>
    <message>
        <source>Setback</source>
        <translation>Rücksprung</translation>
    </message>
    <message>
        <source>Setback of a bend</source>
        <translation>Rücksprung einer Biegung</translation>
    </message>
    <message>
        <source>Share of the count, %</source>
        <translation>Anteil der Zahl, %</translation>
    </message>
    <message>
        <source>Sheet metal</source>
        <translation>Blech</translation>
    </message>
    <message>
        <source>Shop head</source>
        <translation>Schließkopf</translation>
    </message>
    <message>
        <source>Solid rivet</source>
        <translation>Vollniet</translation>
    </message>
    <message>
        <source>Solid rivets</source>
        <translation>Vollniete</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Strands that may be damaged</source>
        <translation>Einzeldrähte, die beschädigt sein dürfen</translation>
    </message>
    <message>
        <source>Strength of a control cable</source>
        <translation>Festigkeit eines Steuerseils</translation>
    </message>
    <message>
        <source>The drag is read off the wrench while the nut runs down, and added. For clean, dry, cadmium-plated threads; what lubricated threads take the maker says.</source>
        <translation>Das Laufmoment wird am Schlüssel abgelesen, während die Mutter bis zur Anlage läuft, und dazugezählt. Für saubere, trockene, kadmierte Gewinde; was geschmierte vertragen, sagt der Hersteller.</translation>
    </message>
    <message>
        <source>The grip is the thickness of all sheets together. Of a countersunk rivet the length includes the head.</source>
        <translation>Die Klemmlänge ist die Dicke aller Bleche zusammen. Beim Senkniet zählt der Kopf zur Länge.</translation>
    </message>
    <message>
        <source>The project&apos;s own limit</source>
        <translation>Eigene Grenze des Projekts</translation>
    </message>
    <message>
        <source>The sources differ: a head may pass the military minimum and miss the usual target. Write down which one was used.</source>
        <translation>Die Quellen weichen ab: ein Kopf kann das militärische Mindestmaß erfüllen und das übliche Ziel verfehlen. Aufschreiben, welche galt.</translation>
    </message>
    <message>
        <source>The wire carries at most</source>
        <translation>Die Leitung trägt höchstens</translation>
    </message>
    <message>
        <source>The wrench is set to</source>
        <translation>Der Schlüssel ist eingestellt auf</translation>
    </message>
    <message>
        <source>Thicker sheet</source>
        <translation>Dickeres Blech</translation>
    </message>
    <message>
        <source>Thinnest wire for a load</source>
        <translation>Dünnste Leitung für eine Last</translation>
    </message>
    <message>
        <source>Thinnest wire, AWG</source>
        <translation>Dünnste Leitung, AWG</translation>
    </message>
    <message>
        <source>Torque of a bolt</source>
        <translation>Drehmoment einer Schraube</translation>
    </message>
    <message>
        <source>Torque wanted at the nut</source>
        <translation>Gewünschtes Drehmoment an der Mutter</translation>
    </message>
    <message>
        <source>Voltage drop</source>
        <translation>Spannungsabfall</translation>
    </message>
    <message>
        <source>Voltage drop of a wire</source>
        <translation>Spannungsabfall einer Leitung</translation>
    </message>
    <message>
        <source>Weights</source>
        <translation>Massen</translation>
    </message>
    <message>
        <source>Which rivet for a sheet</source>
        <translation>Welcher Niet für ein Blech</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Width of the splice</source>
        <translation>Breite des Stoßes</translation>
    </message>
    <message>
        <source>Wire size, AWG</source>
        <translation>Leitungsgröße, AWG</translation>
    </message>
    <message>
        <source>Wrench with an extension: what reaches the nut</source>
        <translation>Schlüssel mit Verlängerung: was an der Mutter ankommt</translation>
    </message>
    <message>
        <source>Wrench with an extension: what to set</source>
        <translation>Schlüssel mit Verlängerung: was einzustellen ist</translation>
    </message>
    <message>
        <source>add the drag of the nut</source>
        <translation>Laufmoment der Mutter dazuzählen</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>composition A</source>
        <translation>Ausführung A</translation>
    </message>
    <message>
        <source>composition B, stainless</source>
        <translation>Ausführung B, rostfrei</translation>
    </message>
    <message>
        <source>dash number %1: grip and 1.5 diameters, up to the next sixteenth</source>
        <translation>Längenzahl %1: Klemmlänge und 1,5 Durchmesser, auf das nächste Sechzehntel</translation>
    </message>
    <message>
        <source>drop and current within the tables</source>
        <translation>Abfall und Strom innerhalb der Tabellen</translation>
    </message>
    <message>
        <source>for 5052 sheet of %1, 2117 rivets with protruding heads</source>
        <translation>für Blech 5052 von %1, Niete 2117 mit vorstehenden Köpfen</translation>
    </message>
    <message>
        <source>larger than any of the tables</source>
        <translation>größer als alle der Tabellen</translation>
    </message>
    <message>
        <source>misses</source>
        <translation>verfehlt</translation>
    </message>
    <message>
        <source>of %1 strands</source>
        <translation>von %1 Einzeldrähten</translation>
    </message>
    <message>
        <source>ohms a foot × feet × amperes</source>
        <translation>Ohm je Fuß × Fuß × Ampere</translation>
    </message>
    <message>
        <source>once the sheet, 3/32 in structure</source>
        <translation>einmal das Blech, 3/32 in der Struktur</translation>
    </message>
    <message>
        <source>passes</source>
        <translation>erfüllt</translation>
    </message>
    <message>
        <source>rounded up</source>
        <translation>aufgerundet</translation>
    </message>
    <message>
        <source>rows × width / pitch</source>
        <translation>Reihen × Breite / Teilung</translation>
    </message>
    <message>
        <source>the target; by the Navy the most. Next size: %1</source>
        <translation>das Ziel; nach der Marine das Höchste. Nächste Größe: %1</translation>
    </message>
    <message>
        <source>thick, loaded in tension</source>
        <translation>dick, auf Zug</translation>
    </message>
    <message>
        <source>thin, loaded in shear</source>
        <translation>dünn, auf Scherung</translation>
    </message>
    <message>
        <source>with the drag of the nut</source>
        <translation>mit dem Laufmoment der Mutter</translation>
    </message>
    <message>
        <source>within</source>
        <translation>innerhalb</translation>
    </message>
    <message>
        <source>without the drag of the nut</source>
        <translation>ohne das Laufmoment der Mutter</translation>
    </message>
    <message>
        <source>set aside</source>
        <translation>zurückgestellt</translation>
    </message>
    <message>
        <source>set aside; %1</source>
        <translation>zurückgestellt; %1</translation>
    </message>
    <message>
        <source>exceeded: %1 is above %2</source>
        <translation>überschritten: %1 ist mehr als %2</translation>
    </message>
</context>
<context>
    <name>Zone</name>
    <message>
        <source>Engine bay</source>
        <translation>Motorraum</translation>
    </message>
    <message>
        <source>Nose wheel</source>
        <translation>Bugrad</translation>
    </message>
    <message>
        <source>Foreplane</source>
        <translation>Entenflügel</translation>
    </message>
    <message>
        <source>Cockpit</source>
        <translation>Cockpit</translation>
    </message>
    <message>
        <source>Fuselage tank</source>
        <translation>Rumpftank</translation>
    </message>
    <message>
        <source>Centre fuselage</source>
        <translation>Rumpfmitte</translation>
    </message>
    <message>
        <source>Left wing</source>
        <translation>Linker Flügel</translation>
    </message>
    <message>
        <source>Right wing</source>
        <translation>Rechter Flügel</translation>
    </message>
    <message>
        <source>Lower left wing</source>
        <translation>Linker Unterflügel</translation>
    </message>
    <message>
        <source>Lower right wing</source>
        <translation>Rechter Unterflügel</translation>
    </message>
    <message>
        <source>Left tank</source>
        <translation>Linker Tank</translation>
    </message>
    <message>
        <source>Right tank</source>
        <translation>Rechter Tank</translation>
    </message>
    <message>
        <source>Left aileron</source>
        <translation>Linkes Querruder</translation>
    </message>
    <message>
        <source>Right aileron</source>
        <translation>Rechtes Querruder</translation>
    </message>
    <message>
        <source>Left flap</source>
        <translation>Linke Klappe</translation>
    </message>
    <message>
        <source>Right flap</source>
        <translation>Rechte Klappe</translation>
    </message>
    <message>
        <source>Left main wheel</source>
        <translation>Linkes Hauptrad</translation>
    </message>
    <message>
        <source>Right main wheel</source>
        <translation>Rechtes Hauptrad</translation>
    </message>
    <message>
        <source>Rear fuselage</source>
        <translation>Rumpfheck</translation>
    </message>
    <message>
        <source>Stabiliser</source>
        <translation>Höhenflosse</translation>
    </message>
    <message>
        <source>Elevator</source>
        <translation>Höhenruder</translation>
    </message>
    <message>
        <source>Fin</source>
        <translation>Seitenflosse</translation>
    </message>
    <message>
        <source>Rudder</source>
        <translation>Seitenruder</translation>
    </message>
    <message>
        <source>Tail wheel</source>
        <translation>Spornrad</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message numerus="yes">
        <source>%n other closings here</source>
        <translation>
            <numerusform>%Ln andere Schließstelle hier</numerusform>
            <numerusform>%Ln andere Schließstellen hier</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n parts, no closing is recorded.</source>
        <translation>
            <numerusform>%Ln Teil, keine Schließstelle verzeichnet.</numerusform>
            <numerusform>%Ln Teile, keine Schließstelle verzeichnet.</numerusform>
        </translation>
    </message>
    <message>
        <source>No part is recorded here.</source>
        <translation>Hier ist kein Teil verzeichnet.</translation>
    </message>
    <message>
        <source>biplane</source>
        <translation>Doppeldecker</translation>
    </message>
    <message>
        <source>canard</source>
        <translation>Entenflugzeug</translation>
    </message>
    <message>
        <source>high wing</source>
        <translation>Hochdecker</translation>
    </message>
    <message>
        <source>low wing</source>
        <translation>Tiefdecker</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::AccountModel</name>
    <message numerus="yes">
        <source>and %n records more; a printed journal names them</source>
        <translation>
            <numerusform>und %Ln weiterer Datensatz; ein gedrucktes Journal nennt ihn</numerusform>
            <numerusform>und %Ln weitere Datensätze; ein gedrucktes Journal nennt sie</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ActForm</name>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ActLine</name>
    <message>
        <source>“%1” is no day.</source>
        <translation>„%1“ ist kein Tag.</translation>
    </message>
    <message>
        <source>How long did it take? Write it as 2h15 or 90m.</source>
        <translation>Wie lange hat es gedauert? Schreiben Sie es als 2h15 oder 90m.</translation>
    </message>
    <message>
        <source>Somebody has to be named.</source>
        <translation>Jemand muss genannt werden.</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>%1 lies ahead: only what has happened is recorded.</source>
        <translation>%1 liegt in der Zukunft: eingetragen wird nur, was geschehen ist.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::AirframePanel</name>
    <message>
        <source>Drawn as %1</source>
        <translation>Dargestellt als %1</translation>
    </message>
    <message>
        <source>As the records say: %1</source>
        <translation>Nach den Aufzeichnungen: %1</translation>
    </message>
    <message numerus="yes">
        <source>Not on the picture: %n parts</source>
        <translation>
            <numerusform>Nicht auf dem Bild: %Ln Teil</numerusform>
            <numerusform>Nicht auf dem Bild: %Ln Teile</numerusform>
        </translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message numerus="yes">
        <source>%n closings there must stay open</source>
        <translation>
            <numerusform>%Ln Schließstelle dort muss offen bleiben</numerusform>
            <numerusform>%Ln Schließstellen dort müssen offen bleiben</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing says where on the aeroplane they are. Their field “zone” can.</source>
        <translation>Nichts sagt, wo am Flugzeug sie sind. Ihr Feld „Zone“ kann es.</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>und %Ln weiteres</numerusform>
            <numerusform>und %Ln weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>Point at a zone, or walk through them with the arrow keys, to read why it is as it is.</source>
        <translation>Auf eine Zone zeigen oder mit den Pfeiltasten durchgehen, um zu lesen, warum sie so ist.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::AirframePicture</name>
    <message>
        <source>The aeroplane, by zone</source>
        <translation>Das Flugzeug, nach Zonen</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::AmountColumns</name>
    <message>
        <source>most in %1: %2</source>
        <translation>am meisten in %1: %2</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::AnswerForm</name>
    <message>
        <source>what was done about it</source>
        <translation>was dagegen getan wurde</translation>
    </message>
    <message>
        <source>Correction</source>
        <translation>Behebung</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Am</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Picture of it now</source>
        <translation>Bild davon jetzt</translation>
    </message>
    <message>
        <source>Corrected: %1</source>
        <translation>Behoben: %1</translation>
    </message>
    <message>
        <source>Record the correction</source>
        <translation>Behebung eintragen</translation>
    </message>
    <message>
        <source>Verified: %1. Correction: %2</source>
        <translation>Nachgeprüft: %1. Behebung: %2</translation>
    </message>
    <message>
        <source>Record the verification</source>
        <translation>Nachprüfung eintragen</translation>
    </message>
    <message>
        <source>This finding is no longer on record.</source>
        <translation>Diese Feststellung ist nicht mehr verzeichnet.</translation>
    </message>
    <message>
        <source>It needs a word about what was done.</source>
        <translation>Nötig ist ein Wort darüber, was getan wurde.</translation>
    </message>
    <message>
        <source>Squawk %1 corrected</source>
        <translation>Beanstandung %1 behoben</translation>
    </message>
    <message>
        <source>It was corrected on %1; nobody can have verified it before.</source>
        <translation>Sie wurde am %1 behoben; vorher kann sie niemand nachgeprüft haben.</translation>
    </message>
    <message>
        <source>Squawk %1 verified</source>
        <translation>Beanstandung %1 nachgeprüft</translation>
    </message>
    <message>
        <source>This finding is no longer on record as corrected.</source>
        <translation>Diese Feststellung ist nicht mehr als behoben verzeichnet.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::BackupForm</name>
    <message>
        <source>Back up now</source>
        <translation>Jetzt sichern</translation>
    </message>
    <message>
        <source>Folder on another disk</source>
        <translation>Ordner auf einem anderen Datenträger</translation>
    </message>
    <message>
        <source>by itself, when that disk is there and something was changed</source>
        <translation>von selbst, wenn dieser Datenträger da ist und sich etwas geändert hat</translation>
    </message>
    <message>
        <source>read back also what earlier backups copied (takes long)</source>
        <translation>auch zurücklesen, was frühere Sicherungen kopiert haben (dauert lange)</translation>
    </message>
    <message>
        <source> days without one</source>
        <translation> Tagen ohne Sicherung</translation>
    </message>
    <message>
        <source>Back up</source>
        <translation>Sichern</translation>
    </message>
    <message>
        <source>Remind me after</source>
        <translation>Erinnern nach</translation>
    </message>
    <message>
        <source>This time</source>
        <translation>Dieses Mal</translation>
    </message>
    <message>
        <source>Everything is copied there, with all photographs; later only what is new.</source>
        <translation>Alles wird dorthin kopiert, mit allen Fotos; später nur noch, was neu ist.</translation>
    </message>
    <message>
        <source>This folder is not there just now.</source>
        <translation>Diesen Ordner gibt es gerade nicht.</translation>
    </message>
    <message>
        <source>This folder is on the disk of the project. A backup there helps against mistakes, and is lost with the disk.</source>
        <translation>Dieser Ordner liegt auf dem Datenträger des Projekts. Eine Sicherung dort hilft gegen Versehen und geht mit dem Datenträger verloren.</translation>
    </message>
    <message>
        <source>This folder is on another disk. Keep that disk in another building.</source>
        <translation>Dieser Ordner liegt auf einem anderen Datenträger. Bewahren Sie ihn in einem anderen Gebäude auf.</translation>
    </message>
    <message>
        <source>It needs a folder, best on a disk that is only plugged in for this.</source>
        <translation>Es braucht einen Ordner, am besten auf einem Datenträger, der nur dafür angesteckt wird.</translation>
    </message>
    <message>
        <source>A backup is running already.</source>
        <translation>Es läuft schon eine Sicherung.</translation>
    </message>
    <message>
        <source>There is no folder %1; plug its disk in, or make it.</source>
        <translation>Den Ordner %1 gibt es nicht; seinen Datenträger anschließen oder den Ordner anlegen.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::BackupKeeper</name>
    <message>
        <source>No backup elsewhere was made yet.</source>
        <translation>Es gibt noch keine Sicherung an einem anderen Ort.</translation>
    </message>
    <message>
        <source>The last backup was made today and read back: %1</source>
        <translation>Die letzte Sicherung ist von heute und wurde zurückgelesen: %1</translation>
    </message>
    <message numerus="yes">
        <source>The last backup was made %n days ago and read back: %1</source>
        <translation>
            <numerusform>Die letzte Sicherung ist %Ln Tag alt und wurde zurückgelesen: %1</numerusform>
            <numerusform>Die letzte Sicherung ist %Ln Tage alt und wurde zurückgelesen: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>There is no backup elsewhere yet: if this disk fails, these records and photographs are gone.</source>
        <translation>Es gibt noch keine Sicherung an einem anderen Ort: Fällt dieser Datenträger aus, sind Aufzeichnungen und Fotos verloren.</translation>
    </message>
    <message numerus="yes">
        <source>The last backup elsewhere is %n days old, and work was recorded since.</source>
        <translation>
            <numerusform>Die letzte Sicherung an einem anderen Ort ist %Ln Tag alt, und seitdem wurde etwas eingetragen.</numerusform>
            <numerusform>Die letzte Sicherung an einem anderen Ort ist %Ln Tage alt, und seitdem wurde etwas eingetragen.</numerusform>
        </translation>
    </message>
    <message>
        <source>A backup is running already.</source>
        <translation>Es läuft schon eine Sicherung.</translation>
    </message>
    <message>
        <source>Backing up, in megabytes</source>
        <translation>Sicherung, in Megabyte</translation>
    </message>
    <message>
        <source>The backup was cancelled. The one before is as it was, and what was copied so far is not copied again.</source>
        <translation>Die Sicherung wurde abgebrochen. Die vorige ist, wie sie war, und was schon kopiert ist, wird nicht noch einmal kopiert.</translation>
    </message>
    <message numerus="yes">
        <source>Backed up and read back: %n new files.</source>
        <translation>
            <numerusform>Gesichert und zurückgelesen: %Ln neue Datei.</numerusform>
            <numerusform>Gesichert und zurückgelesen: %Ln neue Dateien.</numerusform>
        </translation>
    </message>
    <message>
        <source>The backup lies on the disk of the project, and would be lost with it.</source>
        <translation>Die Sicherung liegt auf dem Datenträger des Projekts und ginge mit ihm verloren.</translation>
    </message>
    <message numerus="yes">
        <source>%n files are missing or no longer what was taken in; “Verify records and files” names them.</source>
        <translation>
            <numerusform>%Ln Datei fehlt oder ist nicht mehr, was aufgenommen wurde; „Aufzeichnungen und Dateien nachprüfen“ nennt sie.</numerusform>
            <numerusform>%Ln Dateien fehlen oder sind nicht mehr, was aufgenommen wurde; „Aufzeichnungen und Dateien nachprüfen“ nennt sie.</numerusform>
        </translation>
    </message>
    <message>
        <source>It could not be read when the last backup was made.</source>
        <translation>Wann die letzte Sicherung gemacht wurde, war nicht zu lesen.</translation>
    </message>
    <message>
        <source>The project could not be told of it, and may remind you of an older backup.</source>
        <translation>Im Projekt ließ sich das nicht vermerken; es kann sein, dass es an eine ältere Sicherung erinnert.</translation>
    </message>
    <message>
        <source>This project is to read only: what was chosen for its backups is not kept.</source>
        <translation>Dieses Projekt ist nur zum Lesen: Was für seine Sicherungen gewählt wurde, wird nicht behalten.</translation>
    </message>
    <message>
        <source>The database of the earlier backup was damaged; it is kept there as %1.</source>
        <translation>Die Datenbank der früheren Sicherung war beschädigt; sie ist dort als %1 aufbewahrt.</translation>
    </message>
    <message numerus="yes">
        <source>%n files of the earlier backup were damaged there; its disk may be failing.</source>
        <translation>
            <numerusform>%Ln Datei der früheren Sicherung war dort beschädigt; ihr Datenträger könnte am Ende sein.</numerusform>
            <numerusform>%Ln Dateien der früheren Sicherung waren dort beschädigt; ihr Datenträger könnte am Ende sein.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n files beside it that are not the project&apos;s are kept there under names with “set-aside” in them.</source>
        <translation>
            <numerusform>%Ln Datei daneben, die nicht zum Projekt gehört, ist dort unter einem Namen mit „set-aside“ aufbewahrt.</numerusform>
            <numerusform>%Ln Dateien daneben, die nicht zum Projekt gehören, sind dort unter Namen mit „set-aside“ aufbewahrt.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::BackupNotice</name>
    <message>
        <source>Back up…</source>
        <translation>Sichern…</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::BenchClock</name>
    <message>
        <source>The clock runs: %1</source>
        <translation>Die Uhr läuft: %1</translation>
    </message>
    <message>
        <source>Stop work (F2)</source>
        <translation>Arbeit beenden (F2)</translation>
    </message>
    <message>
        <source>Start work (F2)</source>
        <translation>Arbeit beginnen (F2)</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 an %2</translation>
    </message>
    <message>
        <source>Paused after %1</source>
        <translation>Pause nach %1</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::BenchPartChooser</name>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Code or name of the part</source>
        <translation>Kürzel oder Name des Teils</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Which part?</source>
        <translation>Welches Teil?</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::BenchPicture</name>
    <message>
        <source>Back to the part (Esc)</source>
        <translation>Zurück zum Teil (Esc)</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::BenchView</name>
    <message>
        <source>Other part (F6)</source>
        <translation>Anderes Teil (F6)</translation>
    </message>
    <message>
        <source>Next steps (F3)</source>
        <translation>Nächste Schritte (F3)</translation>
    </message>
    <message>
        <source>No step of this part is left to do.</source>
        <translation>An diesem Teil ist kein Schritt mehr zu tun.</translation>
    </message>
    <message>
        <source>Torque and lock</source>
        <translation>Anziehen und sichern</translation>
    </message>
    <message>
        <source>No fasteners are on record here.</source>
        <translation>Hier sind keine Verbindungselemente verzeichnet.</translation>
    </message>
    <message>
        <source>Lines to check</source>
        <translation>Zu prüfende Zeilen</translation>
    </message>
    <message>
        <source>No line of an inspector&apos;s list is left here.</source>
        <translation>Hier ist keine Zeile einer Prüferliste mehr offen.</translation>
    </message>
    <message>
        <source>Must stay open here</source>
        <translation>Muss hier offen bleiben</translation>
    </message>
    <message>
        <source>No closing on record has to stay open here.</source>
        <translation>Keine verzeichnete Schließstelle muss hier offen bleiben.</translation>
    </message>
    <message>
        <source>No picture of this part is on record.</source>
        <translation>Kein Bild dieses Teils ist verzeichnet.</translation>
    </message>
    <message>
        <source>Leave (Esc)</source>
        <translation>Verlassen (Esc)</translation>
    </message>
    <message>
        <source>What is wrong?</source>
        <translation>Was stimmt nicht?</translation>
    </message>
    <message>
        <source>New squawk</source>
        <translation>Neue Beanstandung</translation>
    </message>
    <message>
        <source>To remember about this part</source>
        <translation>Zu diesem Teil zu merken</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>New squawk (F4)</source>
        <translation>Neue Beanstandung (F4)</translation>
    </message>
    <message>
        <source>Note (F5)</source>
        <translation>Notiz (F5)</translation>
    </message>
    <message>
        <source>Newest pictures</source>
        <translation>Neueste Bilder</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Werkbank</translation>
    </message>
    <message>
        <source>This step has to wait for another.</source>
        <translation>Dieser Schritt muss auf einen anderen warten.</translation>
    </message>
    <message>
        <source>Done: %1</source>
        <translation>Erledigt: %1</translation>
    </message>
    <message>
        <source>No step of this part can be worked on now.</source>
        <translation>An diesem Teil ist jetzt kein Schritt machbar.</translation>
    </message>
    <message>
        <source>Ticked: %1</source>
        <translation>Abgehakt: %1</translation>
    </message>
    <message>
        <source>Fitted: %1</source>
        <translation>Eingebaut: %1</translation>
    </message>
    <message>
        <source>Locked: %1</source>
        <translation>Gesichert: %1</translation>
    </message>
    <message>
        <source>Torque seal put on: %1</source>
        <translation>Sicherungslack aufgetragen: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Torque in %1</source>
        <translation>Drehmoment in %1</translation>
    </message>
    <message>
        <source>What did the wrench say?</source>
        <translation>Was zeigte der Schlüssel?</translation>
    </message>
    <message>
        <source>Torqued: %1</source>
        <translation>Angezogen: %1</translation>
    </message>
    <message>
        <source>New squawk: %1</source>
        <translation>Neue Beanstandung: %1</translation>
    </message>
    <message>
        <source>Note on %1</source>
        <translation>Notiz zu %1</translation>
    </message>
    <message>
        <source>Record the torque</source>
        <translation>Drehmoment eintragen</translation>
    </message>
    <message>
        <source>Choose the part first.</source>
        <translation>Erst das Teil wählen.</translation>
    </message>
    <message>
        <source>At the bench: start or stop work</source>
        <translation>An der Werkbank: Arbeit beginnen oder beenden</translation>
    </message>
    <message>
        <source>At the bench: tick the next step</source>
        <translation>An der Werkbank: den nächsten Schritt abhaken</translation>
    </message>
    <message>
        <source>At the bench: a new squawk</source>
        <translation>An der Werkbank: neue Beanstandung</translation>
    </message>
    <message>
        <source>At the bench: a note</source>
        <translation>An der Werkbank: Notiz</translation>
    </message>
    <message>
        <source>At the bench: another part</source>
        <translation>An der Werkbank: anderes Teil</translation>
    </message>
    <message>
        <source>What is typed for a squawk or a note goes to %1 now.</source>
        <translation>Was für eine Beanstandung oder eine Notiz getippt ist, geht jetzt an %1.</translation>
    </message>
    <message>
        <source>Torqued outside its limits: %1</source>
        <translation>Außerhalb der Grenzen angezogen: %1</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::BranchForm</name>
    <message>
        <source>Make the copy</source>
        <translation>Kopie machen</translation>
    </message>
    <message>
        <source>Parts of the copy</source>
        <translation>Teile der Kopie</translation>
    </message>
    <message numerus="yes">
        <source>%n parts</source>
        <translation>
            <numerusform>%Ln Teil</numerusform>
            <numerusform>%Ln Teile</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n steps</source>
        <translation>
            <numerusform>%Ln Schritt</numerusform>
            <numerusform>%Ln Schritte</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n closings</source>
        <translation>
            <numerusform>%Ln Schließstelle</numerusform>
            <numerusform>%Ln Schließstellen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lines to check</source>
        <translation>
            <numerusform>%Ln zu prüfende Zeile</numerusform>
            <numerusform>%Ln zu prüfende Zeilen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fasteners</source>
        <translation>
            <numerusform>%Ln Verbindungselement</numerusform>
            <numerusform>%Ln Verbindungselemente</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n measurements</source>
        <translation>
            <numerusform>%Ln Messung</numerusform>
            <numerusform>%Ln Messungen</numerusform>
        </translation>
    </message>
    <message>
        <source>Left and right change places in names and words.</source>
        <translation>Links und rechts tauschen in Namen und Wörtern die Plätze.</translation>
    </message>
    <message>
        <source>The name tells no side, so that names stay as they are.</source>
        <translation>Der Name nennt keine Seite, deshalb bleiben Namen, wie sie sind.</translation>
    </message>
    <message>
        <source>Copied as planned: %1. What was done, signed, photographed or found stays with the original. %2 Codes that other parts have are left empty.</source>
        <translation>Kopiert wird die Planung: %1. Was getan, unterschrieben, fotografiert oder gefunden wurde, bleibt beim Original. %2 Kürzel, die andere Teile haben, bleiben leer.</translation>
    </message>
    <message>
        <source>Copy of %1</source>
        <translation>Kopie von %1</translation>
    </message>
    <message>
        <source>Another part has the code %1.</source>
        <translation>Ein anderes Teil hat das Kürzel %1.</translation>
    </message>
    <message>
        <source>%1 copied as %2</source>
        <translation>%1 als %2 kopiert</translation>
    </message>
    <message>
        <source>The parts are no longer those that are listed here. Leave, and copy again.</source>
        <translation>Die Teile sind nicht mehr die hier aufgeführten. Verlassen und neu kopieren.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::BranchModel</name>
    <message>
        <source>Copy</source>
        <translation>Kopie</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Kürzel</translation>
    </message>
    <message>
        <source>Copied from</source>
        <translation>Kopiert von</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::CalibrationForm</name>
    <message>
        <source>Keep the calibration</source>
        <translation>Kalibrierung festhalten</translation>
    </message>
    <message>
        <source>Calibrated on</source>
        <translation>Kalibriert am</translation>
    </message>
    <message>
        <source>Due again on</source>
        <translation>Wieder fällig am</translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation>Zertifikat</translation>
    </message>
    <message>
        <source>%1 was calibrated</source>
        <translation>%1 wurde kalibriert</translation>
    </message>
    <message>
        <source>Say on which day it is due again.</source>
        <translation>An welchem Tag ist sie wieder fällig?</translation>
    </message>
    <message>
        <source>It cannot be due before it was calibrated.</source>
        <translation>Sie kann nicht vor der Kalibrierung fällig sein.</translation>
    </message>
    <message>
        <source>%1: calibrated</source>
        <translation>%1: kalibriert</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::CertificatePage</name>
    <message>
        <source>Documents</source>
        <translation>Dokumente</translation>
    </message>
    <message>
        <source>Facts and agreement</source>
        <translation>Angaben und Abgleich</translation>
    </message>
    <message>
        <source>Major portion</source>
        <translation>Überwiegender Teil</translation>
    </message>
    <message>
        <source>Rules</source>
        <translation>Regeln</translation>
    </message>
    <message>
        <source>File for the final inspection…</source>
        <translation>Mappe für die Endprüfung…</translation>
    </message>
    <message>
        <source>Documents, inspections, equipment, major portion, log, deviations and bulletins as one PDF</source>
        <translation>Dokumente, Prüfungen, Ausrüstung, überwiegender Teil, Bautagebuch, Abweichungen und Bulletins als ein PDF</translation>
    </message>
    <message numerus="yes">
        <source>Facts and agreement (≠ %n)</source>
        <translation>
            <numerusform>Angaben und Abgleich (≠ %Ln)</numerusform>
            <numerusform>Angaben und Abgleich (≠ %Ln)</numerusform>
        </translation>
    </message>
    <message>
        <source>Weight and balance</source>
        <translation>Masse und Schwerpunktlage</translation>
    </message>
    <message>
        <source>Test flights</source>
        <translation>Erprobungsflüge</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::CheckListModel</name>
    <message>
        <source>%1 (not applicable)</source>
        <translation>%1 (trifft nicht zu)</translation>
    </message>
    <message>
        <source>ticked on %1</source>
        <translation>abgehakt am %1</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::CheckPanel</name>
    <message>
        <source>Not applicable</source>
        <translation>Trifft nicht zu</translation>
    </message>
    <message>
        <source>Inspector&apos;s list</source>
        <translation>Liste des Prüfers</translation>
    </message>
    <message>
        <source>Inspector&apos;s list  %1 of %2</source>
        <translation>Liste des Prüfers  %1 von %2</translation>
    </message>
    <message>
        <source>Tick all that are left</source>
        <translation>Alle übrigen abhaken</translation>
    </message>
    <message>
        <source>Tick all but the %1 chosen</source>
        <translation>Alle außer den %1 gewählten abhaken</translation>
    </message>
    <message>
        <source>Ticked: %1</source>
        <translation>Abgehakt: %1</translation>
    </message>
    <message>
        <source>Tick taken away: %1</source>
        <translation>Häkchen entfernt: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n lines ticked</source>
        <translation>
            <numerusform>%Ln Zeile abgehakt</numerusform>
            <numerusform>%Ln Zeilen abgehakt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lines are not applicable</source>
        <translation>
            <numerusform>%Ln Zeile trifft nicht zu</numerusform>
            <numerusform>%Ln Zeilen treffen nicht zu</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lines are applicable again</source>
        <translation>
            <numerusform>%Ln Zeile trifft wieder zu</numerusform>
            <numerusform>%Ln Zeilen treffen wieder zu</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ChoiceEditor</name>
    <message>
        <source>not said</source>
        <translation>nicht gesagt</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ClaimView</name>
    <message>
        <source>Save the letter</source>
        <translation>Brief speichern</translation>
    </message>
    <message>
        <source>Text (*.txt)</source>
        <translation>Text (*.txt)</translation>
    </message>
    <message>
        <source>Language of the letter</source>
        <translation>Sprache des Briefes</translation>
    </message>
    <message>
        <source>The letter</source>
        <translation>Der Brief</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Save as…</source>
        <translation>Speichern unter…</translation>
    </message>
    <message>
        <source>Back to the list</source>
        <translation>Zurück zur Liste</translation>
    </message>
    <message>
        <source>Letter about what named no shipment</source>
        <translation>Brief zu Posten ohne Lieferung</translation>
    </message>
    <message>
        <source>Letter: %1</source>
        <translation>Brief: %1</translation>
    </message>
    <message>
        <source>The letter is on the clipboard.</source>
        <translation>Der Brief liegt in der Zwischenablage.</translation>
    </message>
    <message>
        <source>Claim</source>
        <translation>Reklamation</translation>
    </message>
    <message>
        <source>The letter is in %1.</source>
        <translation>Der Brief liegt in %1.</translation>
    </message>
    <message>
        <source>What was written into the letter is kept nowhere. Copy it, save it, or do the same once more to leave without it.</source>
        <translation>Was in den Brief geschrieben wurde, ist nirgends festgehalten. Kopieren, speichern oder dasselbe noch einmal tun, um ohne es zu gehen.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::CloseForm</name>
    <message>
        <source>the day is only about right</source>
        <translation>der Tag stimmt nur ungefähr</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Am</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>nötig</translation>
    </message>
    <message>
        <source>only if there is one</source>
        <translation>nur falls vorhanden</translation>
    </message>
    <message>
        <source>Record the closing</source>
        <translation>Schließen eintragen</translation>
    </message>
    <message>
        <source>Something on record stands against closing “%1”. If it was closed all the same, the record says so, with your reason, until an inspector accepts it.</source>
        <translation>Gegen das Schließen von „%1“ steht etwas in den Aufzeichnungen. Wurde trotzdem geschlossen, so steht es mit Ihrem Grund verzeichnet, bis ein Prüfer es annimmt.</translation>
    </message>
    <message>
        <source>“%1” was closed. Nothing on record stood against it; only the look inside told whether the work is right.</source>
        <translation>„%1“ wurde geschlossen. Nichts Verzeichnetes stand dagegen; ob die Arbeit richtig ist, sagte nur der Blick hinein.</translation>
    </message>
    <message>
        <source>Record the opening</source>
        <translation>Öffnen eintragen</translation>
    </message>
    <message>
        <source>It needs a reason, for whoever reads this later.</source>
        <translation>Nötig ist ein Grund, für alle, die es später lesen.</translation>
    </message>
    <message>
        <source>%1 opened again</source>
        <translation>%1 wieder geöffnet</translation>
    </message>
    <message>
        <source>%1 closed</source>
        <translation>%1 geschlossen</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>“%1” was opened again.</source>
        <translation>„%1“ wurde wieder geöffnet.</translation>
    </message>
    <message>
        <source>No longer holds: %1, signed by %2 on %3.</source>
        <translation>Gilt nicht mehr: %1, unterschrieben von %2 am %3.</translation>
    </message>
    <message>
        <source>“%1” then: %2 (now: %3).</source>
        <translation>„%1“ dann: %2 (jetzt: %3).</translation>
    </message>
    <message>
        <source>Can be reached again: %1.</source>
        <translation>Wieder erreichbar: %1.</translation>
    </message>
    <message>
        <source>No signature and no other closing depends on its being closed.</source>
        <translation>Keine Unterschrift und keine andere Schließstelle hängt daran, dass sie geschlossen ist.</translation>
    </message>
    <message>
        <source>… and %1 more.</source>
        <translation>… und %1 weitere.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ClosingBoard</name>
    <message>
        <source>Before the final inspection and first flight</source>
        <translation>Vor Endprüfung und Erstflug</translation>
    </message>
    <message>
        <source>No closing has these words.</source>
        <translation>Keine Schließstelle hat diese Wörter.</translation>
    </message>
    <message>
        <source>no document</source>
        <translation>kein Dokument</translation>
    </message>
    <message>
        <source>%1 missing</source>
        <translation>Lücken: %1</translation>
    </message>
    <message>
        <source>%1 to clear</source>
        <translation>%1 zu klären</translation>
    </message>
    <message>
        <source>%1 advised</source>
        <translation>%1 empfohlen</translation>
    </message>
    <message>
        <source>Left, Right</source>
        <translation>Links, Rechts</translation>
    </message>
    <message>
        <source>The column before or behind, on the board</source>
        <translation>Die Spalte davor oder dahinter, auf der Tafel</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ClosingHead</name>
    <message>
        <source>← All closings</source>
        <translation>← Alle Schließstellen</translation>
    </message>
    <message>
        <source>Make packet</source>
        <translation>Prüfmappe machen</translation>
    </message>
    <message>
        <source>Inspection visit</source>
        <translation>Besuch des Prüfers</translation>
    </message>
    <message>
        <source>Accepted afterwards</source>
        <translation>Nachträglich angenommen</translation>
    </message>
    <message>
        <source>Before the final inspection and first flight: the whole aircraft</source>
        <translation>Vor Endprüfung und Erstflug: das ganze Flugzeug</translation>
    </message>
    <message>
        <source>%1; hides %2</source>
        <translation>%1; verdeckt %2</translation>
    </message>
    <message>
        <source>its document is not on record</source>
        <translation>ihr Dokument ist nicht abgelegt</translation>
    </message>
    <message>
        <source>closed before these records began; the inspector decides</source>
        <translation>geschlossen, bevor diese Aufzeichnungen begannen; der Prüfer entscheidet</translation>
    </message>
    <message>
        <source>%1, and %2 more</source>
        <translation>%1 und %2 weitere</translation>
    </message>
    <message>
        <source>Record an opening</source>
        <translation>Öffnen eintragen</translation>
    </message>
    <message>
        <source>Record the closing</source>
        <translation>Schließen eintragen</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ClosingView</name>
    <message>
        <source>Only what is not met</source>
        <translation>Nur was nicht erfüllt ist</translation>
    </message>
    <message>
        <source>Hold points</source>
        <translation>Haltepunkte</translation>
    </message>
    <message>
        <source>Closed on %1</source>
        <translation>Geschlossen am %1</translation>
    </message>
    <message>
        <source>Opened on %1</source>
        <translation>Geöffnet am %1</translation>
    </message>
    <message>
        <source>Closed about %1</source>
        <translation>Geschlossen etwa %1</translation>
    </message>
    <message>
        <source>Opened about %1</source>
        <translation>Geöffnet etwa %1</translation>
    </message>
    <message>
        <source>Looked at afterwards on %1 by %2: %3</source>
        <translation>Nachträglich angesehen am %1 von %2: %3</translation>
    </message>
    <message>
        <source>Signed sheet added</source>
        <translation>Unterschriebenes Blatt hinzugefügt</translation>
    </message>
    <message>
        <source>Step done: %1</source>
        <translation>Schritt erledigt: %1</translation>
    </message>
    <message>
        <source>Photographs of the inside</source>
        <translation>Fotos vom Inneren</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.heic);;All files (*)</source>
        <translation>Bilder (*.jpg *.jpeg *.png *.heic);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Closed about %1 by %2</source>
        <translation>Geschlossen etwa %1 von %2</translation>
    </message>
    <message>
        <source>Opened about %1 by %2</source>
        <translation>Geöffnet etwa %1 von %2</translation>
    </message>
    <message>
        <source>Closed on %1 by %2</source>
        <translation>Geschlossen am %1 von %2</translation>
    </message>
    <message>
        <source>Opened on %1 by %2</source>
        <translation>Geöffnet am %1 von %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ClosingsPage</name>
    <message>
        <source>New closing</source>
        <translation>Neue Schließstelle</translation>
    </message>
    <message>
        <source>Here stand the closings: each region of structure that will be hidden by a skin, a cover or glue, and what must happen before.</source>
        <translation>Hier stehen die Schließstellen: jeder Bereich der Struktur, den eine Beplankung, eine Abdeckung oder Leim verdecken wird, und was vorher geschehen muss.</translation>
    </message>
    <message>
        <source>Words of a closing or part</source>
        <translation>Wörter einer Schließstelle oder eines Teils</translation>
    </message>
    <message>
        <source>Show only closings with these words</source>
        <translation>Nur Schließstellen mit diesen Wörtern zeigen</translation>
    </message>
    <message>
        <source>Make the first closing</source>
        <translation>Erste Schließstelle anlegen</translation>
    </message>
    <message>
        <source>Plan a visit</source>
        <translation>Besuch planen</translation>
    </message>
    <message>
        <source>← The visit</source>
        <translation>← Der Besuch</translation>
    </message>
    <message>
        <source>← Visits</source>
        <translation>← Besuche</translation>
    </message>
    <message>
        <source>← All closings</source>
        <translation>← Alle Schließstellen</translation>
    </message>
    <message>
        <source>Open it</source>
        <translation>Öffnen</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ColumnChoice</name>
    <message>
        <source>Lies inside</source>
        <translation>Liegt in</translation>
    </message>
    <message>
        <source>leave it out</source>
        <translation>weglassen</translation>
    </message>
    <message>
        <source>Column</source>
        <translation>Spalte</translation>
    </message>
    <message>
        <source>First value</source>
        <translation>Erster Wert</translation>
    </message>
    <message>
        <source>Fills</source>
        <translation>Füllt</translation>
    </message>
    <message>
        <source>Columns of the list</source>
        <translation>Spalten der Liste</translation>
    </message>
    <message>
        <source>What column %1 fills</source>
        <translation>Was Spalte %1 füllt</translation>
    </message>
    <message>
        <source>Column %1</source>
        <translation>Spalte %1</translation>
    </message>
    <message>
        <source>Left out: %1.</source>
        <translation>Weggelassen: %1.</translation>
    </message>
    <message>
        <source>Left out, as a column before it fills the same: %1.</source>
        <translation>Weggelassen, weil eine Spalte davor dasselbe füllt: %1.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ConflictPanel</name>
    <message>
        <source>What it would have changed</source>
        <translation>Was sie geändert hätte</translation>
    </message>
    <message>
        <source>Go to the record</source>
        <translation>Zum Datensatz</translation>
    </message>
    <message>
        <source>Came later, and stood after the merge</source>
        <translation>Kam später und blieb beim Zusammenführen stehen</translation>
    </message>
    <message>
        <source>Came earlier, and lost</source>
        <translation>Kam früher und unterlag</translation>
    </message>
    <message>
        <source>One copy went on with it: it stayed</source>
        <translation>Eine Kopie führte es weiter: es blieb</translation>
    </message>
    <message>
        <source>is on record</source>
        <translation>ist aufgezeichnet</translation>
    </message>
    <message>
        <source>The other copy took it back</source>
        <translation>Die andere Kopie nahm es zurück</translation>
    </message>
    <message>
        <source>was taken back</source>
        <translation>wurde zurückgenommen</translation>
    </message>
    <message>
        <source>This change was left out</source>
        <translation>Diese Änderung wurde weggelassen</translation>
    </message>
    <message>
        <source>Keep what stands (K)</source>
        <translation>Behalten, was steht (K)</translation>
    </message>
    <message>
        <source>Take the other (T)</source>
        <translation>Das andere übernehmen (T)</translation>
    </message>
    <message>
        <source>Keep the record (K)</source>
        <translation>Den Datensatz behalten (K)</translation>
    </message>
    <message>
        <source>Withdraw it (T)</source>
        <translation>Ihn zurückziehen (T)</translation>
    </message>
    <message>
        <source>Leave it out (K)</source>
        <translation>Weglassen (K)</translation>
    </message>
    <message>
        <source>Try it again (T)</source>
        <translation>Noch einmal versuchen (T)</translation>
    </message>
    <message>
        <source>The other value cannot be put here by itself. Where it is the right one, go to the record and write it there; then keep what stands.</source>
        <translation>Der andere Wert lässt sich nicht von selbst einsetzen. Ist er der richtige, gehen Sie zum Datensatz und schreiben Sie ihn dort hin; behalten Sie dann, was steht.</translation>
    </message>
    <message>
        <source>What stands against it can be put right, and this tried again. Or write it down anew, and leave this out.</source>
        <translation>Was dagegen steht, lässt sich in Ordnung bringen; versuchen Sie dies dann noch einmal. Oder schreiben Sie es neu auf, und lassen Sie dies weg.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ConflictsView</name>
    <message>
        <source>Show what was decided as well</source>
        <translation>Auch Entschiedenes zeigen</translation>
    </message>
    <message>
        <source>Things to decide</source>
        <translation>Zu entscheiden</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Merging another copy has left nothing to decide.</source>
        <translation>Das Zusammenführen mit einer anderen Kopie ließ nichts zu entscheiden.</translation>
    </message>
    <message>
        <source>Everything is decided.</source>
        <translation>Alles ist entschieden.</translation>
    </message>
    <message>
        <source>Keep what stands</source>
        <translation>Behalten, was steht</translation>
    </message>
    <message>
        <source>Take the other</source>
        <translation>Das andere übernehmen</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::CreditModel</name>
    <message numerus="yes">
        <source>%n pictures</source>
        <translation>
            <numerusform>%Ln Bild</numerusform>
            <numerusform>%Ln Bilder</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entries</source>
        <translation>
            <numerusform>%Ln Eintrag</numerusform>
            <numerusform>%Ln Einträge</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 (added)</source>
        <translation>%1 (ergänzt)</translation>
    </message>
    <message>
        <source>does not apply</source>
        <translation>trifft nicht zu</translation>
    </message>
    <message>
        <source>no picture</source>
        <translation>kein Bild</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::CrossCheckModel</name>
    <message>
        <source>Facts of the project</source>
        <translation>Angaben des Projekts</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>nicht eingetragen</translation>
    </message>
    <message>
        <source>says the same</source>
        <translation>sagt dasselbe</translation>
    </message>
    <message>
        <source>says otherwise than the project</source>
        <translation>sagt anderes als das Projekt</translation>
    </message>
    <message>
        <source>nobody wrote down what it says</source>
        <translation>niemand hat notiert, was es sagt</translation>
    </message>
    <message>
        <source>the project&apos;s own facts do not say it</source>
        <translation>die Angaben des Projekts sagen es selbst nicht</translation>
    </message>
    <message>
        <source>Document</source>
        <translation>Dokument</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>document, its number</comment>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::CrossCheckView</name>
    <message>
        <source>Project</source>
        <translation>Projekt</translation>
    </message>
    <message>
        <source>Builder</source>
        <translation>Erbauer</translation>
    </message>
    <message>
        <source>Address</source>
        <translation>Anschrift</translation>
    </message>
    <message>
        <source>Type</source>
        <translation>Flugzeugtyp</translation>
    </message>
    <message>
        <source>Authority&apos;s file</source>
        <translation>Aktenzeichen der Behörde</translation>
    </message>
    <message>
        <source>Maximum weight</source>
        <translation>Höchstmasse</translation>
    </message>
    <message>
        <source>Begun on</source>
        <translation>Begonnen am</translation>
    </message>
    <message>
        <source>its closing is closed, the step is not done</source>
        <translation>ihre Schließstelle ist geschlossen, der Schritt ist nicht erledigt</translation>
    </message>
    <message>
        <source>closed by the factory, no document on record</source>
        <translation>vom Werk geschlossen, kein Nachweis verzeichnet</translation>
    </message>
    <message>
        <source>no closing is recorded for it</source>
        <translation>dafür ist keine Schließstelle verzeichnet</translation>
    </message>
    <message>
        <source>names no part</source>
        <translation>nennt kein Teil</translation>
    </message>
    <message>
        <source>What the papers say of the aircraft</source>
        <translation>Was die Papiere vom Luftfahrzeug sagen</translation>
    </message>
    <message>
        <source>Serial numbers</source>
        <translation>Seriennummern</translation>
    </message>
    <message>
        <source>No serial number stands on two parts, and none stands otherwise on the equipment list.</source>
        <translation>Keine Seriennummer steht auf zwei Teilen, und keine steht anders in der Ausrüstungsliste.</translation>
    </message>
    <message>
        <source>To complete in the records</source>
        <translation>In den Aufzeichnungen zu ergänzen</translation>
    </message>
    <message>
        <source>No hole of this kind is in the records.</source>
        <translation>Die Aufzeichnungen haben keine solche Lücke.</translation>
    </message>
    <message>
        <source>Facts of the project</source>
        <translation>Angaben des Projekts</translation>
    </message>
    <message>
        <source>No paper is on record yet. What each says of name, model, serial number and registration is compared here.</source>
        <translation>Noch ist kein Papier verzeichnet. Was jedes über Namen, Muster, Werknummer und Kennzeichen sagt, wird hier verglichen.</translation>
    </message>
    <message>
        <source>What is written down from the papers agrees with the project.</source>
        <translation>Was aus den Papieren notiert ist, stimmt mit dem Projekt überein.</translation>
    </message>
    <message numerus="yes">
        <source>%n entries do not agree; an authority sends such papers back. Upper and lower case, spaces, hyphens and full stops do not count.</source>
        <translation>
            <numerusform>%Ln Angabe stimmt nicht überein; solche Papiere schickt eine Behörde zurück. Groß und klein, Leerzeichen, Bindestriche und Punkte zählen nicht.</numerusform>
            <numerusform>%Ln Angaben stimmen nicht überein; solche Papiere schickt eine Behörde zurück. Groß und klein, Leerzeichen, Bindestriche und Punkte zählen nicht.</numerusform>
        </translation>
    </message>
    <message>
        <source>has the serial number %1, as %2 has</source>
        <translation>hat die Seriennummer %1 wie auch %2</translation>
    </message>
    <message>
        <source>Squawk %1</source>
        <translation>Beanstandung %1</translation>
    </message>
    <message>
        <source>Deviation %1</source>
        <translation>Abweichung %1</translation>
    </message>
    <message>
        <source>A weight is not below zero.</source>
        <translation>Ein Gewicht ist nicht kleiner als null.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::DailyCopy</name>
    <message>
        <source>The copy of the day could not be made; your records are saved. %1</source>
        <translation>Die Kopie des Tages konnte nicht gemacht werden; Ihre Aufzeichnungen sind gespeichert. %1</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::DeliveryBoard</name>
    <message>
        <source>Claim letter</source>
        <translation>Reklamation</translation>
    </message>
    <message>
        <source>Waits for this line</source>
        <translation>Wartet auf diesen Posten</translation>
    </message>
    <message>
        <source>No open step waits for it.</source>
        <translation>Kein offener Schritt wartet darauf.</translation>
    </message>
    <message>
        <source>What is not here yet</source>
        <translation>Was noch nicht da ist</translation>
    </message>
    <message>
        <source>Everything on the lists is here.</source>
        <translation>Alles auf den Listen ist da.</translation>
    </message>
    <message>
        <source>all lines</source>
        <translation>alle Posten</translation>
    </message>
    <message>
        <source>still to count</source>
        <translation>noch zu zählen</translation>
    </message>
    <message>
        <source>not as listed</source>
        <translation>nicht wie in der Liste</translation>
    </message>
    <message>
        <source>late</source>
        <translation>überfällig</translation>
    </message>
    <message>
        <source>Shipment</source>
        <translation>Lieferung</translation>
    </message>
    <message>
        <source>Which lines</source>
        <translation>Welche Posten</translation>
    </message>
    <message>
        <source>Bring in a list…</source>
        <translation>Liste übernehmen…</translation>
    </message>
    <message>
        <source>No line here. A packing list can be brought in from a spreadsheet, or be typed line by line below.</source>
        <translation>Kein Posten hier. Eine Packliste lässt sich aus einer Tabelle übernehmen oder unten Zeile für Zeile schreiben.</translation>
    </message>
    <message>
        <source>all shipments</source>
        <translation>alle Lieferungen</translation>
    </message>
    <message>
        <source>no shipment named</source>
        <translation>ohne Lieferung</translation>
    </message>
    <message>
        <source>%1 (open)</source>
        <translation>%1 (offen)</translation>
    </message>
    <message numerus="yes">
        <source>%n lines counted as listed</source>
        <translation>
            <numerusform>%Ln Posten wie in der Liste gezählt</numerusform>
            <numerusform>%Ln Posten wie in der Liste gezählt</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing of this shipment is missing, damaged or late.</source>
        <translation>Von dieser Lieferung fehlt nichts, nichts ist beschädigt oder überfällig.</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>%1: entered as an expense</source>
        <translation>%1: als Ausgabe eingetragen</translation>
    </message>
    <message>
        <source>Shipment as an expense</source>
        <translation>Lieferung als Ausgabe eintragen</translation>
    </message>
    <message>
        <source>Choose a shipment first.</source>
        <translation>Zuerst eine Lieferung wählen.</translation>
    </message>
    <message>
        <source>Count selected lines as listed</source>
        <translation>Gewählte Zeilen wie gelistet zählen</translation>
    </message>
    <message>
        <source>All of the selected lines came. Space ticks the line under the cursor as counted.</source>
        <translation>Alles in den gewählten Zeilen ist da. Die Leertaste hakt die Zeile unter dem Cursor als gezählt ab.</translation>
    </message>
    <message>
        <source>No packing list is on record yet.</source>
        <translation>Noch ist keine Packliste eingetragen.</translation>
    </message>
    <message>
        <source>%1 is among the expenses already, with the same amount.</source>
        <translation>%1 steht schon unter den Ausgaben, mit demselben Betrag.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::EntryBar</name>
    <message>
        <source>What was done, as in “2h15 left aileron: dimpled both skins”</source>
        <translation>Was getan wurde, etwa „2h15 linkes Querruder: beide Häute gedimpelt“</translation>
    </message>
    <message>
        <source>New log entry</source>
        <translation>Neuer Bautagebucheintrag</translation>
    </message>
    <message>
        <source>In front of the colon: how long, which day, parts joined by +, “with” a name. Behind it the note, and “done” with the steps to tick.</source>
        <translation>Vor dem Doppelpunkt: wie lange, welcher Tag, Teile mit + verbunden, „mit“ ein Name. Dahinter die Anmerkung, und „erledigt“ mit den Schritten zum Abhaken.</translation>
    </message>
    <message>
        <source>Start work</source>
        <translation>Arbeit beginnen</translation>
    </message>
    <message>
        <source>Not logged yet: %1</source>
        <translation>Noch nicht eingetragen: %1</translation>
    </message>
    <message>
        <source>Enter once more logs it like this.</source>
        <translation>Noch einmal Eingabe trägt es so ein.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::EntryPictures</name>
    <message>
        <source>No photo of this entry yet. Drop some here.</source>
        <translation>Noch kein Foto von diesem Eintrag. Hierher ziehen.</translation>
    </message>
    <message>
        <source>Add photos…</source>
        <translation>Fotos hinzufügen…</translation>
    </message>
    <message>
        <source>Photos of the entry</source>
        <translation>Fotos des Eintrags</translation>
    </message>
    <message>
        <source>Add photos of the entry</source>
        <translation>Fotos des Eintrags hinzufügen</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::EnvelopePicture</name>
    <message>
        <source>Limits of weight and centre of gravity</source>
        <translation>Grenzen von Masse und Schwerpunkt</translation>
    </message>
    <message>
        <source>Centre of gravity</source>
        <translation>Schwerpunkt</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Masse</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::EquipmentPanel</name>
    <message>
        <source>Equipment</source>
        <translation>Ausrüstung</translation>
    </message>
    <message>
        <source>New equipment</source>
        <translation>Neue Ausrüstung</translation>
    </message>
    <message>
        <source>Withdraw…</source>
        <translation>Zurückziehen…</translation>
    </message>
    <message>
        <source>Equipment written down</source>
        <translation>Ausrüstung eingetragen</translation>
    </message>
    <message>
        <source>removed %1</source>
        <translation>ausgebaut am %1</translation>
    </message>
    <message>
        <source>What is built in and can be taken out is listed here: engine, propeller, battery, instruments.</source>
        <translation>Hier steht, was eingebaut ist und ausgebaut werden kann: Motor, Propeller, Batterie, Instrumente.</translation>
    </message>
    <message numerus="yes">
        <source>%n of these have no weight or no arm on record.</source>
        <translation>
            <numerusform>%Ln davon ist ohne Masse oder Hebelarm verzeichnet.</numerusform>
            <numerusform>%Ln davon sind ohne Masse oder Hebelarm verzeichnet.</numerusform>
        </translation>
    </message>
    <message>
        <source>All of these have their weight and arm on record.</source>
        <translation>Masse und Hebelarm sind bei allen verzeichnet.</translation>
    </message>
    <message>
        <source>A weight is not below zero.</source>
        <translation>Ein Gewicht ist nicht kleiner als null.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ExpenseBoard</name>
    <message>
        <source>Expenses by category</source>
        <translation>Ausgaben nach Kategorie</translation>
    </message>
    <message>
        <source>Expenses by month</source>
        <translation>Ausgaben nach Monat</translation>
    </message>
    <message>
        <source>Category</source>
        <translation>Kategorie</translation>
    </message>
    <message>
        <source>Currency of the bars</source>
        <translation>Währung der Balken</translation>
    </message>
    <message>
        <source>By category</source>
        <translation>Nach Kategorie</translation>
    </message>
    <message>
        <source>By month</source>
        <translation>Nach Monat</translation>
    </message>
    <message>
        <source>No expense on record. Write one below: the amount first, then what it was for.</source>
        <translation>Keine Ausgabe eingetragen. Unten schreiben: erst der Betrag, dann wofür.</translation>
    </message>
    <message>
        <source>all categories</source>
        <translation>alle Kategorien</translation>
    </message>
    <message>
        <source>without a category</source>
        <translation>ohne Kategorie</translation>
    </message>
    <message numerus="yes">
        <source>%n expenses</source>
        <translation>
            <numerusform>%Ln Ausgabe</numerusform>
            <numerusform>%Ln Ausgaben</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n without a receipt</source>
        <translation>
            <numerusform>%Ln ohne Beleg</numerusform>
            <numerusform>%Ln ohne Beleg</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n below zero, as they were brought in</source>
        <translation>
            <numerusform>%Ln unter null, wie sie hereinkam</numerusform>
            <numerusform>%Ln unter null, wie sie hereinkamen</numerusform>
        </translation>
    </message>
    <message>
        <source>amounts too large to be added up are left out</source>
        <translation>Beträge, die zum Summieren zu groß sind, fehlen</translation>
    </message>
    <message>
        <source>In all: %1</source>
        <translation>Zusammen: %1</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::FilterLine</name>
    <message>
        <source>Look for words on this page</source>
        <translation>Wörter auf dieser Seite suchen</translation>
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
        <translation>Aufzeichnung, Seite oder Befehl finden</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Finden</translation>
    </message>
    <message>
        <source>page, Ctrl+%1</source>
        <translation>Seite, Strg+%1</translation>
    </message>
    <message>
        <source>Nothing has all of these words.</source>
        <translation>Nichts enthält alle diese Wörter.</translation>
    </message>
    <message>
        <source>More records have these words; one more word finds fewer.</source>
        <translation>Mehr Einträge haben diese Wörter; ein weiteres Wort findet weniger.</translation>
    </message>
    <message>
        <source>The records could not be searched just now.</source>
        <translation>Die Aufzeichnungen ließen sich gerade nicht durchsuchen.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::FindingRows</name>
    <message>
        <source>what was found</source>
        <translation>was gefunden wurde</translation>
    </message>
    <message>
        <source>Part of finding %1</source>
        <translation>Teil der Feststellung %1</translation>
    </message>
    <message>
        <source>Finding %1</source>
        <translation>Feststellung %1</translation>
    </message>
    <message>
        <source>Severity of finding %1</source>
        <translation>Schwere der Feststellung %1</translation>
    </message>
    <message>
        <source>Paste the lines of the sheet</source>
        <translation>Zeilen des Blattes einfügen</translation>
    </message>
    <message>
        <source>One finding a line, with or without its number; “part: what was found” names the part.</source>
        <translation>Eine Feststellung je Zeile, mit oder ohne Nummer; „Teil: was gefunden wurde“ nennt das Teil.</translation>
    </message>
    <message>
        <source>inspector, on site</source>
        <translation>Prüfer, vor Ort</translation>
    </message>
    <message>
        <source>inspector, by photo</source>
        <translation>Prüfer, per Foto</translation>
    </message>
    <message>
        <source>Number of finding %1 on the sheet</source>
        <translation>Nummer der Feststellung %1 auf dem Blatt</translation>
    </message>
    <message>
        <source>Who may verify finding %1</source>
        <translation>Wer Feststellung %1 nachprüfen darf</translation>
    </message>
    <message>
        <source>Who may verify the correction</source>
        <translation>Wer die Behebung nachprüfen darf</translation>
    </message>
    <message>
        <source>“%1” needs its number on the sheet.</source>
        <translation>„%1“ braucht seine Nummer auf dem Blatt.</translation>
    </message>
    <message>
        <source>Two findings have the number %1.</source>
        <translation>Zwei Feststellungen haben die Nummer %1.</translation>
    </message>
    <message>
        <source>found on %1</source>
        <translation>gefunden am %1</translation>
    </message>
    <message>
        <source>A photograph of the correction is enough for the inspector.</source>
        <translation>Dem Prüfer genügt ein Foto der Behebung.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::FindingsDialog</name>
    <message>
        <source>Make anew what can be</source>
        <translation>Neu machen, was geht</translation>
    </message>
    <message>
        <source>Records and files looked over</source>
        <translation>Aufzeichnungen und Dateien durchgesehen</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Was gefunden wurde</translation>
    </message>
    <message>
        <source>The search index and the small copies of photos can be made anew, and half-written files removed. Records, photos and papers are never touched: for those, compare a backup.</source>
        <translation>Das Suchverzeichnis und die kleinen Kopien der Fotos lassen sich neu machen, halb geschriebene Dateien entfernen. Aufzeichnungen, Fotos und Papiere werden nie angerührt: dafür eine Sicherung vergleichen.</translation>
    </message>
    <message>
        <source>Everything is as it should be now.</source>
        <translation>Jetzt ist alles, wie es sein soll.</translation>
    </message>
    <message numerus="yes">
        <source>%n things are not as they should be.</source>
        <translation>
            <numerusform>%Ln Sache ist nicht, wie sie sein soll.</numerusform>
            <numerusform>%Ln Dinge sind nicht, wie sie sein sollen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Done: %1</source>
        <translation>Erledigt: %1</translation>
    </message>
    <message>
        <source>Making anew what can be</source>
        <translation>Macht neu, was geht</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Stopped before the end: what is listed as done was made, and not everything was looked over.</source>
        <translation>Vor dem Ende angehalten: was als erledigt aufgeführt ist, ist gemacht, und nicht alles ist durchgesehen.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::FlightForm</name>
    <message>
        <source>Write the flight down</source>
        <translation>Flug eintragen</translation>
    </message>
    <message>
        <source>Next flight</source>
        <translation>Nächster Flug</translation>
    </message>
    <message>
        <source>1h20 or 80m</source>
        <translation>1h20 oder 80m</translation>
    </message>
    <message>
        <source>empty when there was none</source>
        <translation>leer, wenn keine war</translation>
    </message>
    <message>
        <source>Flown on</source>
        <translation>Geflogen am</translation>
    </message>
    <message>
        <source>Time in the air</source>
        <translation>Zeit in der Luft</translation>
    </message>
    <message>
        <source>Landings</source>
        <translation>Landungen</translation>
    </message>
    <message>
        <source>Pilot</source>
        <translation>Pilot</translation>
    </message>
    <message>
        <source>Faults</source>
        <translation>Störungen</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>It needs the time in the air, as 1h20 or 80m.</source>
        <translation>Es fehlt die Zeit in der Luft, etwa 1h20 oder 80m.</translation>
    </message>
    <message>
        <source>Flight of %1 written down</source>
        <translation>Flug vom %1 eingetragen</translation>
    </message>
    <message>
        <source>A day has 24 hours; write down each flight by itself.</source>
        <translation>Ein Tag hat 24 Stunden; jeden Flug einzeln eintragen.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::FlightsView</name>
    <message>
        <source>Flights</source>
        <translation>Flüge</translation>
    </message>
    <message>
        <source>Flights, the latest first</source>
        <translation>Flüge, der letzte zuerst</translation>
    </message>
    <message>
        <source>Withdraw…</source>
        <translation>Zurückziehen…</translation>
    </message>
    <message>
        <source>The chosen flight</source>
        <translation>Der gewählte Flug</translation>
    </message>
    <message>
        <source>No flight is on record yet.</source>
        <translation>Noch kein Flug verzeichnet.</translation>
    </message>
    <message numerus="yes">
        <source>%1 in all; %2 since the last fault, in %n flights</source>
        <translation>
            <numerusform>%1 insgesamt; %2 seit der letzten Störung, in %Ln Flug</numerusform>
            <numerusform>%1 insgesamt; %2 seit der letzten Störung, in %Ln Flügen</numerusform>
        </translation>
    </message>
    <message>
        <source>For %1</source>
        <translation>Für %1</translation>
    </message>
    <message>
        <source>For %1: %2 without a fault are flown</source>
        <translation>Für %1: %2 ohne Störung sind geflogen</translation>
    </message>
    <message>
        <source>For %1: %2 left, counted from the last fault; %3 left, counted over all flights</source>
        <translation>Für %1: noch %2, gezählt seit der letzten Störung; noch %3, gezählt über alle Flüge</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>The project&apos;s rules name no test period: the authority or the permit does.</source>
        <translation>Die Regeln des Projekts nennen keine Erprobungszeit: die Behörde oder die Zulassung tut es.</translation>
    </message>
    <message>
        <source>Which of these holds, and what counts as a fault, the authority says; check the current edition.</source>
        <translation>Was davon gilt und was als Störung zählt, sagt die Behörde; die aktuelle Ausgabe prüfen.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n landings</source>
        <translation>
            <numerusform>%Ln Landung</numerusform>
            <numerusform>%Ln Landungen</numerusform>
        </translation>
    </message>
    <message>
        <source>Time flown</source>
        <translation>Flugzeit</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::FolderLine</name>
    <message>
        <source>Choose…</source>
        <translation>Wählen…</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::HeadingList</name>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::HistoryButton</name>
    <message>
        <source>History</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Who changed what about it, and when</source>
        <translation>Wer daran was geändert hat, und wann</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::HoldPointForm</name>
    <message>
        <source>Plan the hold point</source>
        <translation>Haltepunkt planen</translation>
    </message>
    <message>
        <source>keeps the closing open until it is signed</source>
        <translation>hält die Schließstelle offen, bis er unterschrieben ist</translation>
    </message>
    <message>
        <source>Another hold point for this closing</source>
        <translation>Noch ein Haltepunkt für diese Schließstelle</translation>
    </message>
    <message>
        <source>who asks for it, and where that is written</source>
        <translation>wer ihn verlangt, und wo das steht</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Signed by the</source>
        <translation>Unterschrieben durch</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Hold point planned: %1</source>
        <translation>Haltepunkt geplant: %1</translation>
    </message>
    <message>
        <source>This hold point is there already: %1, signed by: %2.</source>
        <translation>Diesen Haltepunkt gibt es schon: %1, unterschrieben von: %2.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::HoldPointPanel</name>
    <message>
        <source>This closing has no hold points.</source>
        <translation>Diese Schließstelle hat keine Haltepunkte.</translation>
    </message>
    <message>
        <source>Sign again</source>
        <translation>Neu unterschreiben</translation>
    </message>
    <message>
        <source>Sign</source>
        <translation>Unterschreiben</translation>
    </message>
    <message>
        <source>Withdraw signature</source>
        <translation>Unterschrift zurückziehen</translation>
    </message>
    <message>
        <source>Waive</source>
        <translation>Erlassen</translation>
    </message>
    <message>
        <source>waived on %1 by %2: %3</source>
        <translation>erlassen am %1 von %2: %3</translation>
    </message>
    <message>
        <source>not signed</source>
        <translation>nicht unterschrieben</translation>
    </message>
    <message>
        <source>%1 on %2 by %3, %4</source>
        <translation>%1 am %2 von %3, %4</translation>
    </message>
    <message>
        <source> (no signed sheet on record)</source>
        <translation> (kein unterschriebenes Blatt abgelegt)</translation>
    </message>
    <message>
        <source>Plan another</source>
        <translation>Noch einen planen</translation>
    </message>
    <message>
        <source>hold point</source>
        <translation>Haltepunkt</translation>
    </message>
    <message>
        <source>What changed since</source>
        <translation>Was sich seitdem geändert hat</translation>
    </message>
    <message>
        <source>Answered by message</source>
        <translation>Per Nachricht beantwortet</translation>
    </message>
    <message>
        <source>%1, by the %2</source>
        <translation>%1, durch: %2</translation>
    </message>
    <message>
        <source>%1, by the %2, if wished</source>
        <translation>%1, durch: %2, falls gewünscht</translation>
    </message>
    <message>
        <source>Signed before the closing</source>
        <translation>Vor dem Schließen unterschrieben</translation>
    </message>
    <message>
        <source>out of date: something was changed after it</source>
        <translation>überholt: danach wurde etwas verändert</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::HoursPage</name>
    <message>
        <source>New person</source>
        <translation>Neue Person</translation>
    </message>
    <message>
        <source>In 10 futures of 100 it is no more than P10, in 50 no more than P50, in 80 no more than P80, in 90 no more than P90.</source>
        <translation>In 10 von 100 möglichen Verläufen ist es nicht mehr als P10, in 50 nicht mehr als P50, in 80 nicht mehr als P80, in 90 nicht mehr als P90.</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>CSV…</source>
        <translation>CSV…</translation>
    </message>
    <message>
        <source>Write the hours</source>
        <translation>Stunden schreiben</translation>
    </message>
    <message>
        <source>Print chart and table (Ctrl+P)</source>
        <translation>Schaubild und Tabelle drucken (Strg+P)</translation>
    </message>
    <message>
        <source>Write the figures as CSV</source>
        <translation>Die Zahlen als CSV schreiben</translation>
    </message>
    <message>
        <source>CSV for a spreadsheet (*.csv)</source>
        <translation>CSV für eine Tabellenkalkulation (*.csv)</translation>
    </message>
    <message>
        <source>This is being worked out.</source>
        <translation>Das wird gerade ausgerechnet.</translation>
    </message>
    <message>
        <source>Hours %1</source>
        <comment>by what</comment>
        <translation>Stunden %1</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Print chart and table</source>
        <translation>Schaubild und Tabelle drucken</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::HoursPanel</name>
    <message>
        <source>this week</source>
        <translation>diese Woche</translation>
    </message>
    <message>
        <source>this month</source>
        <translation>diesen Monat</translation>
    </message>
    <message>
        <source>in all</source>
        <translation>insgesamt</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>All hours</source>
        <translation>Alle Stunden</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::InspectionView</name>
    <message>
        <source>Record what was said</source>
        <translation>Eintragen, was gesagt wurde</translation>
    </message>
    <message>
        <source>Corrections report</source>
        <translation>Bericht der Behebungen</translation>
    </message>
    <message>
        <source>Hold points</source>
        <translation>Haltepunkte</translation>
    </message>
    <message>
        <source>It was about none.</source>
        <translation>Es ging um keinen.</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Feststellungen</translation>
    </message>
    <message>
        <source>None on record.</source>
        <translation>Keine verzeichnet.</translation>
    </message>
    <message>
        <source>← Visits</source>
        <translation>← Besuche</translation>
    </message>
    <message>
        <source>Asked for on %1.</source>
        <translation>Angefragt am %1.</translation>
    </message>
    <message>
        <source>Planned for %1.</source>
        <translation>Geplant für %1.</translation>
    </message>
    <message>
        <source>Held on %1.</source>
        <translation>Abgehalten am %1.</translation>
    </message>
    <message>
        <source>Complete since %1.</source>
        <translation>Abgeschlossen seit %1.</translation>
    </message>
    <message>
        <source>Cancelled on %1.</source>
        <translation>Abgesagt am %1.</translation>
    </message>
    <message>
        <source>By %1.</source>
        <translation>Von %1.</translation>
    </message>
    <message>
        <source>Also there: %1.</source>
        <translation>Auch dabei: %1.</translation>
    </message>
    <message>
        <source>The signed sheet is not on record.</source>
        <translation>Das unterschriebene Blatt ist nicht abgelegt.</translation>
    </message>
    <message>
        <source>nothing said</source>
        <translation>nichts gesagt</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <translation>%1  %2</translation>
    </message>
    <message>
        <source>verified on %1 by %2</source>
        <translation>nachgeprüft am %1 von %2</translation>
    </message>
    <message>
        <source>accepted as it is: %1</source>
        <translation>unverändert angenommen: %1</translation>
    </message>
    <message>
        <source>corrected on %1, waits for the %2: %3</source>
        <translation>behoben am %1, wartet auf: %2. %3</translation>
    </message>
    <message>
        <source>open; the %1 verifies the correction</source>
        <translation>offen; nachprüfen wird: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n findings are neither verified nor accepted. Press again if the inspector calls the visit complete all the same.</source>
        <translation>
            <numerusform>%Ln Feststellung ist weder nachgeprüft noch angenommen. Noch einmal drücken, wenn der Prüfer den Besuch trotzdem abschließt.</numerusform>
            <numerusform>%Ln Feststellungen sind weder nachgeprüft noch angenommen. Noch einmal drücken, wenn der Prüfer den Besuch trotzdem abschließt.</numerusform>
        </translation>
    </message>
    <message>
        <source>Visit complete</source>
        <translation>Besuch abgeschlossen</translation>
    </message>
    <message>
        <source>Visit cancelled</source>
        <translation>Besuch abgesagt</translation>
    </message>
    <message>
        <source>Mark as complete</source>
        <translation>Als vollständig eintragen</translation>
    </message>
    <message>
        <source>Mark as cancelled</source>
        <translation>Als abgesagt eintragen</translation>
    </message>
    <message>
        <source>Mark as verified</source>
        <translation>Als nachgeprüft eintragen</translation>
    </message>
    <message>
        <source>Mark as corrected</source>
        <translation>Als behoben eintragen</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::JournalDetail</name>
    <message>
        <source>Copy the hash</source>
        <translation>Prüfsumme kopieren</translation>
    </message>
    <message>
        <source>What was changed</source>
        <translation>Was geändert wurde</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>It does again: %1</source>
        <translation>Sie wiederholt: %1</translation>
    </message>
    <message>
        <source>It takes back: %1</source>
        <translation>Sie nimmt zurück: %1</translation>
    </message>
    <message>
        <source>The hash below stands at the foot of the pages that were printed.</source>
        <translation>Die Prüfsumme unten steht am Fuß der gedruckten Seiten.</translation>
    </message>
    <message>
        <source>Row %1, hash %2</source>
        <translation>Zeile %1, Prüfsumme %2</translation>
    </message>
    <message>
        <source>in the copy that wrote it %1</source>
        <translation>in der Kopie, die sie schrieb %1</translation>
    </message>
    <message>
        <source>The hash is copied.</source>
        <translation>Die Prüfsumme ist kopiert.</translation>
    </message>
    <message>
        <source>Take this back</source>
        <translation>Dies zurücknehmen</translation>
    </message>
    <message>
        <source>Makes a new change: fields become what they were before this one, and what it made is withdrawn</source>
        <translation>Macht eine neue Änderung: Felder werden, was sie vor dieser waren, und was sie angelegt hat, wird zurückgezogen</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::JournalFilterBar</name>
    <message>
        <source>Clear</source>
        <translation>Leeren</translation>
    </message>
    <message>
        <source>Words, or the hash at a paper&apos;s foot</source>
        <translation>Wörter, oder die Prüfsumme am Fuß eines Papiers</translation>
    </message>
    <message>
        <source>Filter by words or by a hash</source>
        <translation>Nach Wörtern oder einer Prüfsumme filtern</translation>
    </message>
    <message>
        <source>Filter by person</source>
        <translation>Nach Person filtern</translation>
    </message>
    <message>
        <source>anybody</source>
        <translation>alle Personen</translation>
    </message>
    <message>
        <source>Filter by kind</source>
        <translation>Nach Art filtern</translation>
    </message>
    <message>
        <source>every kind</source>
        <translation>jede Art</translation>
    </message>
    <message>
        <source>from which day</source>
        <translation>ab dem Tag</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Ab</translation>
    </message>
    <message>
        <source>until which day</source>
        <translation>bis zum Tag</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Clear the filter</source>
        <translation>Filter leeren</translation>
    </message>
    <message>
        <source>“%1” is no day.</source>
        <translation>„%1“ ist kein Tag.</translation>
    </message>
    <message>
        <source>%1 The list goes on as if nothing stood there.</source>
        <translation>%1 Die Liste zeigt, was sie zeigte, wenn dort nichts stünde.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::JournalModel</name>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <translation>
            <numerusform>%1 und %Ln weiterer</numerusform>
            <numerusform>%1 und %Ln weitere</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::JournalPage</name>
    <message>
        <source>Changes</source>
        <translation>Änderungen</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>No row of the journal matches.</source>
        <translation>Keine Zeile des Journals passt.</translation>
    </message>
    <message>
        <source>Print the journal</source>
        <translation>Das Journal drucken</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Print what is listed (Ctrl+P)</source>
        <translation>Drucken, was gelistet ist (Strg+P)</translation>
    </message>
    <message>
        <source>Journal</source>
        <translation>Journal</translation>
    </message>
    <message>
        <source>Show everything</source>
        <translation>Alles zeigen</translation>
    </message>
    <message>
        <source>with all that is inside it or recorded on it</source>
        <translation>mit allem, was darin ist oder daran aufgezeichnet ist</translation>
    </message>
    <message>
        <source>Only what touched %1</source>
        <translation>Nur was %1 betraf</translation>
    </message>
    <message>
        <source>Looking through the journal</source>
        <translation>Das Journal wird durchgesehen</translation>
    </message>
    <message>
        <source>To decide (%1)</source>
        <translation>Zu entscheiden (%1)</translation>
    </message>
    <message numerus="yes">
        <source>%n rows</source>
        <translation>
            <numerusform>%Ln Zeile</numerusform>
            <numerusform>%Ln Zeilen</numerusform>
        </translation>
    </message>
    <message>
        <source>The journal could not be read.</source>
        <translation>Das Journal war nicht zu lesen.</translation>
    </message>
    <message>
        <source>Look for words in the list</source>
        <translation>Wörter in der Liste suchen</translation>
    </message>
    <message>
        <source>Print what is listed</source>
        <translation>Drucken, was gelistet ist</translation>
    </message>
    <message>
        <source>Only what touched %1, its hold points, signatures and lines to check</source>
        <translation>Nur was %1 betraf, mit ihren Haltepunkten, Unterschriften und Zeilen zum Prüfen</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::LedgerView</name>
    <message>
        <source>Ledger</source>
        <translation>Regelblatt</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::LimitsEditor</name>
    <message>
        <source>Write the limits down</source>
        <translation>Grenzen eintragen</translation>
    </message>
    <message>
        <source>Corners of the limits, in their order</source>
        <translation>Ecken der Grenzen, der Reihe nach</translation>
    </message>
    <message>
        <source>Chord begins at</source>
        <translation>Flügeltiefe beginnt bei</translation>
    </message>
    <message>
        <source>Chord is long</source>
        <translation>Flügeltiefe beträgt</translation>
    </message>
    <message>
        <source>Limits written down</source>
        <translation>Grenzen eingetragen</translation>
    </message>
    <message>
        <source>Limits changed</source>
        <translation>Grenzen geändert</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Arm</source>
        <translation>Hebelarm</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::LineEditor</name>
    <message>
        <source>“%1” is no duration; write it as 2h15 or 90m.</source>
        <translation>„%1“ ist keine Dauer; schreiben Sie sie als 2h15 oder 90m.</translation>
    </message>
    <message>
        <source>This is kept in %1; change its currency first.</source>
        <translation>Das steht in %1; zuerst die Währung ändern.</translation>
    </message>
    <message>
        <source>“%1” is no whole number.</source>
        <translation>„%1“ ist keine ganze Zahl.</translation>
    </message>
    <message>
        <source>“%1” is no currency; write its code, like EUR.</source>
        <translation>„%1“ ist keine Währung; schreiben Sie ihren Code, wie EUR.</translation>
    </message>
    <message>
        <source>The amount has more decimals than %1.</source>
        <translation>Der Betrag hat mehr Nachkommastellen als %1.</translation>
    </message>
    <message>
        <source>“%1” is no day; write it as %2, as %2 14:30, or “yesterday”.</source>
        <translation>„%1“ ist kein Tag; schreiben Sie ihn als %2, als %2 14:30 oder „gestern“.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::LinesEditor</name>
    <message>
        <source>Take the line out</source>
        <translation>Zeile herausnehmen</translation>
    </message>
    <message>
        <source>Take the chosen line away</source>
        <translation>Die gewählte Zeile entfernen</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>Zeile %1</translation>
    </message>
    <message>
        <source>%1 (missing: %2)</source>
        <translation>%1 (es fehlt: %2)</translation>
    </message>
    <message>
        <source>Not on record, and counted nowhere: %1.</source>
        <translation>Nicht aufgezeichnet und nirgends mitgezählt: %1.</translation>
    </message>
    <message>
        <source>A line that is typed here lacks something, and is not on record. Type what is missing, take the line out, or do the same once more to leave without it.</source>
        <translation>Einer Zeile, die hier getippt ist, fehlt etwas, und sie ist nicht aufgezeichnet. Das Fehlende eintippen, die Zeile herausnehmen oder dasselbe noch einmal tun, um ohne sie zu gehen.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::LinksEditor</name>
    <message>
        <source>Kind of record</source>
        <translation>Art der Aufzeichnung</translation>
    </message>
    <message>
        <source>type a few letters</source>
        <translation>Name tippen</translation>
    </message>
    <message>
        <source>Assign to %1</source>
        <translation>%1 zuordnen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 (%2 of %3)</source>
        <translation>%1 (%2 von %3)</translation>
    </message>
    <message>
        <source>Go to %1</source>
        <translation>Zu %1</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>All belong to %1</source>
        <translation>Alle gehören zu %1</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>%1: belongs to %2</source>
        <translation>%1: gehört zu %2</translation>
    </message>
    <message>
        <source>%1: does not belong to %2</source>
        <translation>%1: gehört nicht zu %2</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation>%1 weitere</translation>
    </message>
    <message>
        <source>Show all that the chosen photos belong to</source>
        <translation>Alles zeigen, wozu die gewählten Fotos gehören</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ListDialog</name>
    <message>
        <source>The first row holds headings</source>
        <translation>Die erste Zeile enthält Überschriften</translation>
    </message>
    <message>
        <source>Bring it in</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>a pasted list</source>
        <translation>eine eingefügte Liste</translation>
    </message>
    <message>
        <source>Bring in a list</source>
        <translation>Liste übernehmen</translation>
    </message>
    <message>
        <source>year-month-day</source>
        <translation>Jahr-Monat-Tag</translation>
    </message>
    <message>
        <source>day.month.year</source>
        <translation>Tag.Monat.Jahr</translation>
    </message>
    <message>
        <source>month/day/year</source>
        <translation>Monat/Tag/Jahr</translation>
    </message>
    <message>
        <source>no part</source>
        <translation>kein Teil</translation>
    </message>
    <message>
        <source>Paste rows from a spreadsheet here. Columns are parted by tabs, commas or semicolons.</source>
        <translation>Hier Zeilen aus einer Tabelle einfügen. Spalten sind durch Tabulator, Komma oder Semikolon getrennt.</translation>
    </message>
    <message>
        <source>What it lists</source>
        <translation>Was sie aufzählt</translation>
    </message>
    <message>
        <source>Rows that name no part</source>
        <translation>Zeilen ohne Teil</translation>
    </message>
    <message>
        <source>Days are written</source>
        <translation>Tage sind geschrieben als</translation>
    </message>
    <message>
        <source>The list</source>
        <translation>Die Liste</translation>
    </message>
    <message>
        <source>Open a file…</source>
        <translation>Datei öffnen…</translation>
    </message>
    <message>
        <source>What becomes of each row</source>
        <translation>Was aus jeder Zeile wird</translation>
    </message>
    <message>
        <source>%1 cannot be read.</source>
        <translation>%1 kann nicht gelesen werden.</translation>
    </message>
    <message>
        <source>Open a list</source>
        <translation>Liste öffnen</translation>
    </message>
    <message>
        <source>Lists (*.csv *.tsv *.txt);;All files (*)</source>
        <translation>Listen (*.csv *.tsv *.txt);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Nothing is changed before you have seen what becomes of each row.</source>
        <translation>Nichts wird geändert, bevor zu sehen war, was aus jeder Zeile wird.</translation>
    </message>
    <message>
        <source>%1 new, %2 there already, %3 blank, %4 wrong.</source>
        <translation>%1 neu, %2 schon da, %3 leer, %4 falsch.</translation>
    </message>
    <message>
        <source>All rows have to be right; then all of them are taken in at once.</source>
        <translation>Alle Zeilen müssen stimmen; dann werden alle auf einmal übernommen.</translation>
    </message>
    <message numerus="yes">
        <source>%n rows brought in. Undo takes all of them back.</source>
        <translation>
            <numerusform>%Ln Zeile übernommen. Rückgängig nimmt sie zurück.</numerusform>
            <numerusform>%Ln Zeilen übernommen. Rückgängig nimmt alle zurück.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing was brought in. %1</source>
        <translation>Nichts wurde übernommen. %1</translation>
    </message>
    <message>
        <source>none: name the crate or the delivery</source>
        <translation>keine: Kiste oder Lieferung nennen</translation>
    </message>
    <message>
        <source>Rows that name no shipment</source>
        <translation>Zeilen ohne Lieferung</translation>
    </message>
    <message>
        <source>No column fills %1: choose on the left which one does.</source>
        <translation>Keine Spalte füllt %1: links wählen, welche es tut.</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>What was typed into the list is not brought in. The same once more drops it.</source>
        <translation>Was in die Liste getippt wurde, ist nicht übernommen. Dasselbe noch einmal verwirft es.</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>„%1“</translation>
    </message>
    <message>
        <source>The list does not show which number of a day is its month: choose above how days are written.</source>
        <translation>Die Liste zeigt nicht, welche Zahl eines Tages sein Monat ist: Wählen Sie oben, wie Tage geschrieben sind.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ListRows</name>
    <message>
        <source>+ new</source>
        <translation>+ neu</translation>
    </message>
    <message>
        <source>= there already</source>
        <translation>= schon da</translation>
    </message>
    <message>
        <source>· blank</source>
        <translation>· leer</translation>
    </message>
    <message>
        <source>× wrong</source>
        <translation>× falsch</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>Becomes</source>
        <translation>Wird</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Row %1: %2</source>
        <translation>Zeile %1: %2</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::LoadingPanel</name>
    <message>
        <source>New loading</source>
        <translation>Neue Beladung</translation>
    </message>
    <message>
        <source>Withdraw…</source>
        <translation>Zurückziehen…</translation>
    </message>
    <message>
        <source>On board, besides the empty aeroplane</source>
        <translation>An Bord, außer dem leeren Flugzeug</translation>
    </message>
    <message>
        <source>Loading</source>
        <translation>Beladung</translation>
    </message>
    <message>
        <source>Loading %1 changed</source>
        <translation>Beladung %1 geändert</translation>
    </message>
    <message>
        <source>load %1</source>
        <translation>Last %1</translation>
    </message>
    <message>
        <source>Say what is on board.</source>
        <translation>Sagen Sie, was an Bord ist.</translation>
    </message>
    <message>
        <source>What is on board weighs nothing or more.</source>
        <translation>Was an Bord ist, wiegt nichts oder mehr.</translation>
    </message>
    <message>
        <source>Loading written down</source>
        <translation>Beladung eingetragen</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Arm</source>
        <translation>Hebelarm</translation>
    </message>
    <message>
        <source>The extremes are searched over all loads that the loadings name: of each no less than the least and no more than the most of any of them, within the maximum weight.</source>
        <translation>Die äußersten Lagen werden über alle Zuladungen gesucht, die die Beladungen nennen: von jeder nicht weniger als das Wenigste und nicht mehr als das Meiste, innerhalb der Höchstmasse.</translation>
    </message>
    <message>
        <source>The extremes are searched as soon as there are a weighing and a loading. While nothing is weighed, a loading stands for itself.</source>
        <translation>Die äußersten Lagen werden gesucht, sobald es eine Wägung und eine Beladung gibt. Solange nichts gewogen ist, steht eine Beladung für sich.</translation>
    </message>
    <message>
        <source>The flight manual and the authority decide on limits.</source>
        <translation>Über Grenzen entscheiden das Flughandbuch und die Behörde.</translation>
    </message>
    <message>
        <source>The limits name no source. The flight manual and the authority decide.</source>
        <translation>Die Grenzen nennen keine Quelle. Es entscheiden das Flughandbuch und die Behörde.</translation>
    </message>
    <message>
        <source>Limits from: %1. The flight manual and the authority decide.</source>
        <translation>Grenzen aus: %1. Es entscheiden das Flughandbuch und die Behörde.</translation>
    </message>
    <message>
        <source>Square: the empty aeroplane, E. Discs: the loadings by their number. Triangles: the extremes. F is the farthest forward, A the farthest aft.</source>
        <translation>Quadrat: das leere Flugzeug, E. Scheiben: die Beladungen nach ihrer Nummer. Dreiecke: die äußersten Lagen. F ist die vorderste, A die hinterste.</translation>
    </message>
    <message>
        <source>Not all that is on board is in these sums: some lines lack something.</source>
        <translation>Nicht alles an Bord ist in diesen Summen: Manchen Zeilen fehlt etwas.</translation>
    </message>
    <message>
        <source>Not all corners are in the limits: some lack something.</source>
        <translation>Nicht alle Ecken gehören zu den Grenzen: Manchen fehlt etwas.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::LogDetail</name>
    <message>
        <source>Duration</source>
        <translation>Dauer</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <source>Changed what was inspected</source>
        <translation>Hat Geprüftes verändert</translation>
    </message>
    <message>
        <source>Who worked</source>
        <translation>Wer gearbeitet hat</translation>
    </message>
    <message>
        <source>Split this entry…</source>
        <translation>Diesen Eintrag teilen…</translation>
    </message>
    <message>
        <source>Move this entry…</source>
        <translation>Diesen Eintrag verschieben…</translation>
    </message>
    <message>
        <source>Move them…</source>
        <translation>Sie verschieben…</translation>
    </message>
    <message>
        <source>Withdraw this entry</source>
        <translation>Diesen Eintrag zurückziehen</translation>
    </message>
    <message>
        <source>Withdraw them</source>
        <translation>Sie zurückziehen</translation>
    </message>
    <message numerus="yes">
        <source>%n entries are chosen, %1 in all.</source>
        <translation>
            <numerusform>%Ln Eintrag ist gewählt, %1 insgesamt.</numerusform>
            <numerusform>%Ln Einträge sind gewählt, %1 insgesamt.</numerusform>
        </translation>
    </message>
    <message>
        <source>The day is only about right</source>
        <translation>Der Tag stimmt nur ungefähr</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::LogModel</name>
    <message numerus="yes">
        <source>%n photos</source>
        <translation>
            <numerusform>%Ln Foto</numerusform>
            <numerusform>%Ln Fotos</numerusform>
        </translation>
    </message>
    <message>
        <source>about</source>
        <translation>etwa</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>etwa %1</translation>
    </message>
    <message>
        <source>written down late, %1</source>
        <translation>nachgetragen, %1</translation>
    </message>
    <message>
        <source>changed what was inspected</source>
        <translation>hat Geprüftes verändert</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>aus %1</translation>
    </message>
    <message>
        <source>Squawk %1</source>
        <translation>Beanstandung %1</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::LogPage</name>
    <message>
        <source>Log entries</source>
        <translation>Einträge</translation>
    </message>
    <message>
        <source>What was done each day will stand here. Write the first entry in the line above, or start the clock.</source>
        <translation>Hier steht, was jeden Tag getan wurde. Schreiben Sie den ersten Eintrag in die Zeile oben, oder starten Sie die Uhr.</translation>
    </message>
    <message>
        <source>Type to filter</source>
        <translation>Tippen zum Filtern</translation>
    </message>
    <message>
        <source>Filter the log</source>
        <translation>Bautagebuch filtern</translation>
    </message>
    <message numerus="yes">
        <source>%n entries, %1</source>
        <translation>
            <numerusform>%Ln Eintrag, %1</numerusform>
            <numerusform>%Ln Einträge, %1</numerusform>
        </translation>
    </message>
    <message>
        <source>The year before</source>
        <translation>Das Jahr davor</translation>
    </message>
    <message>
        <source>The year after</source>
        <translation>Das Jahr danach</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>Print the builder&apos;s log (Ctrl+P)</source>
        <translation>Bautagebuch drucken (Strg+P)</translation>
    </message>
    <message>
        <source>This year ends today; there is none after it</source>
        <translation>Dieses Jahr endet heute; danach kommt keines</translation>
    </message>
    <message>
        <source>Withdraw what is chosen</source>
        <translation>Zurückziehen, was gewählt ist</translation>
    </message>
    <message>
        <source>Split the entry</source>
        <translation>Den Eintrag teilen</translation>
    </message>
    <message>
        <source>Move the entry elsewhere</source>
        <translation>Den Eintrag anderswohin verschieben</translation>
    </message>
    <message>
        <source>Look for words in the list</source>
        <translation>Wörter in der Liste suchen</translation>
    </message>
    <message>
        <source>Print the builder&apos;s log</source>
        <translation>Das Bautagebuch drucken</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::LogbookForm</name>
    <message>
        <source>Print to a file…</source>
        <translation>In eine Datei drucken…</translation>
    </message>
    <message>
        <source>with photographs</source>
        <translation>mit Fotos</translation>
    </message>
    <message>
        <source>Print the builder&apos;s log</source>
        <translation>Bautagebuch drucken</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>by date</source>
        <translation>nach Datum</translation>
    </message>
    <message>
        <source>by part</source>
        <translation>nach Teil</translation>
    </message>
    <message>
        <source>the first entry</source>
        <translation>der erste Eintrag</translation>
    </message>
    <message>
        <source>the last entry</source>
        <translation>der letzte Eintrag</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Reihenfolge</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>“%1” is no day.</source>
        <translation>„%1“ ist kein Tag.</translation>
    </message>
    <message>
        <source>The last day lies before the first.</source>
        <translation>Der letzte Tag liegt vor dem ersten.</translation>
    </message>
    <message>
        <source>Builder&apos;s log</source>
        <translation>Bautagebuch des Erbauers</translation>
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
        <translation>Projektordner ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>Open &amp;again</source>
        <translation>&amp;Wieder öffnen</translation>
    </message>
    <message>
        <source>&amp;Import records…</source>
        <translation>Aufzeichnungen &amp;übernehmen…</translation>
    </message>
    <message>
        <source>&amp;Export records…</source>
        <translation>Aufzeichnungen &amp;ausgeben…</translation>
    </message>
    <message>
        <source>&amp;Verify records and files</source>
        <translation>Aufzeichnungen und Dateien nach&amp;prüfen</translation>
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
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>New &amp;squawk</source>
        <translation>Neue Bean&amp;standung</translation>
    </message>
    <message>
        <source>New on this &amp;page</source>
        <translation>Neu auf dieser &amp;Seite</translation>
    </message>
    <message>
        <source>&amp;Find…</source>
        <translation>&amp;Finden…</translation>
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
        <translation>&amp;Wiederholen: %1</translation>
    </message>
    <message>
        <source>Import records</source>
        <translation>Aufzeichnungen übernehmen</translation>
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
        <translation>&amp;Einstellungen…</translation>
    </message>
    <message>
        <source>Bring in a &amp;list…</source>
        <translation>&amp;Liste übernehmen…</translation>
    </message>
    <message>
        <source>&amp;Print</source>
        <translation>D&amp;rucken</translation>
    </message>
    <message>
        <source>%1…</source>
        <comment>a paper to make</comment>
        <translation>%1…</translation>
    </message>
    <message>
        <source>&amp;Bench view</source>
        <translation>&amp;Werkbank-Ansicht</translation>
    </message>
    <message>
        <source>&amp;Back up now</source>
        <translation>Jetzt &amp;sichern</translation>
    </message>
    <message>
        <source>Bac&amp;kups…</source>
        <translation>Sicherun&amp;gen…</translation>
    </message>
    <message>
        <source>Write log and lists into the &amp;folder</source>
        <translation>Bautagebuch und Listen in den Or&amp;dner schreiben</translation>
    </message>
    <message>
        <source>&amp;Restore a backup…</source>
        <translation>Sicherung &amp;wiederherstellen…</translation>
    </message>
    <message>
        <source>&amp;Merge another copy…</source>
        <translation>Andere Kopie &amp;zusammenführen…</translation>
    </message>
    <message>
        <source>Merge another copy: choose records.db in its folder</source>
        <translation>Andere Kopie zusammenführen: records.db in ihrem Ordner wählen</translation>
    </message>
    <message>
        <source>Databases of projects (*.db);;All files (*)</source>
        <translation>Datenbanken von Projekten (*.db);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>The whole project with its files (*.zip)</source>
        <translation>Das ganze Projekt mit seinen Dateien (*.zip)</translation>
    </message>
    <message>
        <source>A new project is begun and not made. Make it, press Escape to drop it, or do the same once more to leave without it.</source>
        <translation>Ein neues Projekt ist begonnen und nicht angelegt. Anlegen, mit Esc verwerfen oder dasselbe noch einmal tun, um ohne es zu gehen.</translation>
    </message>
    <message>
        <source>Photos are being taken in. They are kept when that is done; do the same once more to stop it.</source>
        <translation>Fotos werden gerade übernommen. Sie sind festgehalten, wenn das fertig ist; dasselbe noch einmal bricht es ab.</translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n photos are being taken in. They are kept when that is done; do the same once more to stop it.</source>
        <translation>
            <numerusform>Das Foto wird gerade übernommen (%1 von %Ln). Es ist festgehalten, wenn das fertig ist; dasselbe noch einmal bricht es ab.</numerusform>
            <numerusform>%1 von %Ln Fotos sind übernommen. Sie sind festgehalten, wenn das fertig ist; dasselbe noch einmal bricht es ab.</numerusform>
        </translation>
    </message>
    <message>
        <source>Inspection packet</source>
        <translation>Prüfmappe</translation>
    </message>
    <message>
        <source>Builder&apos;s log</source>
        <translation>Bautagebuch</translation>
    </message>
    <message>
        <source>Open the closing that the packet is for; it is made there.</source>
        <translation>Die Schließstelle öffnen, für die die Mappe ist; dort wird sie gemacht.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::MajorPortionView</name>
    <message>
        <source>Tasks of the major portion</source>
        <translation>Aufgaben des überwiegenden Teils</translation>
    </message>
    <message>
        <source>Add the usual tasks</source>
        <translation>Übliche Aufgaben hinzufügen</translation>
    </message>
    <message>
        <source>Add a task</source>
        <translation>Aufgabe hinzufügen</translation>
    </message>
    <message>
        <source>Here stands, task by task, what the maker, paid help and the builder did, in tenths. Begin with the usual tasks of the aircraft&apos;s class, then bring them into line with the form of your authority.</source>
        <translation>Hier steht Aufgabe für Aufgabe in Zehnteln, was Hersteller, bezahlte Hilfe und Erbauer ausgeführt haben. Beginnen Sie mit den üblichen Aufgaben der Luftfahrzeugklasse und gleichen Sie sie dann dem Formular Ihrer Behörde an.</translation>
    </message>
    <message>
        <source>Class of aircraft</source>
        <translation>Klasse des Luftfahrzeugs</translation>
    </message>
    <message>
        <source>Common practice and no authority&apos;s form; rows that are there stay.</source>
        <translation>Übliche Praxis und kein Formular einer Behörde; vorhandene Zeilen bleiben.</translation>
    </message>
    <message>
        <source>Section: task</source>
        <translation>Abschnitt: Aufgabe</translation>
    </message>
    <message>
        <source>A task that the form does not name</source>
        <translation>Eine Aufgabe, die das Formular nicht nennt</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>Print the major portion with its evidence</source>
        <translation>Den überwiegenden Teil mit seinen Belegen drucken</translation>
    </message>
    <message>
        <source>All usual tasks are there already.</source>
        <translation>Alle üblichen Aufgaben sind schon da.</translation>
    </message>
    <message numerus="yes">
        <source>%n usual tasks added, each for the maker until you enter who did it</source>
        <translation>
            <numerusform>%Ln übliche Aufgabe hinzugefügt, für den Hersteller, bis Sie eintragen, wer sie ausgeführt hat</numerusform>
            <numerusform>%Ln übliche Aufgaben hinzugefügt, jede für den Hersteller, bis Sie eintragen, wer sie ausgeführt hat</numerusform>
        </translation>
    </message>
    <message>
        <source>Task “%1” added</source>
        <translation>Aufgabe „%1“ hinzugefügt</translation>
    </message>
    <message numerus="yes">
        <source>%n claimed tasks have no picture.</source>
        <translation>
            <numerusform>%Ln beanspruchte Aufgabe hat kein Bild.</numerusform>
            <numerusform>%Ln beanspruchte Aufgaben haben kein Bild.</numerusform>
        </translation>
    </message>
    <message>
        <source>Tasks count, hours do not. Rules change: check the current form with your authority.</source>
        <translation>Aufgaben zählen, Stunden nicht. Regeln ändern sich: Prüfen Sie das geltende Formular bei Ihrer Behörde.</translation>
    </message>
    <message>
        <source>Go to the next of them</source>
        <translation>Zur nächsten davon gehen</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::MatchBar</name>
    <message>
        <source>Confirm them all</source>
        <translation>Alle bestätigen</translation>
    </message>
    <message>
        <source>Shift+M</source>
        <translation>Umschalt+M</translation>
    </message>
    <message>
        <source>Show them</source>
        <translation>Zeigen</translation>
    </message>
    <message numerus="yes">
        <source>%n photos were taken during work that is in the log.</source>
        <translation>
            <numerusform>%Ln Foto entstand während eingetragener Arbeit.</numerusform>
            <numerusform>%Ln Fotos entstanden während eingetragener Arbeit.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::MaterialBoard</name>
    <message>
        <source>Used on…</source>
        <translation>Verwendet an…</translation>
    </message>
    <message>
        <source>Still curing</source>
        <translation>Härtet noch aus</translation>
    </message>
    <message>
        <source>Nothing cures at the moment.</source>
        <translation>Zurzeit härtet nichts aus.</translation>
    </message>
    <message>
        <source>Used for</source>
        <translation>Verwendet für</translation>
    </message>
    <message>
        <source>Nothing on record.</source>
        <translation>Nichts eingetragen.</translation>
    </message>
    <message>
        <source>Cure times hold at the temperature of the data sheet; in a cold workshop they are longer.</source>
        <translation>Aushärtezeiten gelten bei der Temperatur des Datenblatts; in einer kalten Werkstatt dauert es länger.</translation>
    </message>
    <message>
        <source>No lot on record. Write the material below, then its lot number and its last good day.</source>
        <translation>Keine Charge eingetragen. Unten das Material schreiben, dann Chargennummer und letzten guten Tag.</translation>
    </message>
    <message>
        <source>No lot has expired or will within 30 days.</source>
        <translation>Keine Charge ist abgelaufen oder läuft innerhalb von 30 Tagen ab.</translation>
    </message>
    <message>
        <source>%1 expired, %2 within 30 days.</source>
        <translation>%1 abgelaufen, %2 innerhalb von 30 Tagen.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::MeasurementPanel</name>
    <message>
        <source>Not measured yet.</source>
        <translation>Noch nicht gemessen.</translation>
    </message>
    <message numerus="yes">
        <source>Measured %n times.</source>
        <translation>
            <numerusform>%Ln-mal gemessen.</numerusform>
            <numerusform>%Ln-mal gemessen.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::MeasurementPlot</name>
    <message>
        <source>Values over time</source>
        <translation>Werte über die Zeit</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::MediaModel</name>
    <message>
        <source>%1 (taken in)</source>
        <translation>%1 (übernommen)</translation>
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
        <translation>Ausblenden</translation>
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
            <numerusform>%1, noch etwa %Ln s</numerusform>
            <numerusform>%1, noch etwa %Ln s</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1; %n more at work</source>
        <translation>
            <numerusform>%1; %Ln weitere läuft</numerusform>
            <numerusform>%1; %Ln weitere laufen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::MissingView</name>
    <message>
        <source>No open closing and no part that will be hidden lacks photographs on record.</source>
        <translation>Keiner offenen Schließstelle und keinem Teil, das verdeckt wird, fehlen Fotos.</translation>
    </message>
    <message>
        <source>Closings that lack photographs</source>
        <translation>Schließstellen ohne genug Fotos</translation>
    </message>
    <message>
        <source>Parts that lack photographs</source>
        <translation>Teile ohne Fotos</translation>
    </message>
    <message>
        <source>Take photos in</source>
        <translation>Fotos übernehmen</translation>
    </message>
    <message>
        <source>no photograph of the inside</source>
        <translation>kein Foto vom Inneren</translation>
    </message>
    <message numerus="yes">
        <source>%n photographs of the inside</source>
        <translation>
            <numerusform>%Ln Foto vom Inneren</numerusform>
            <numerusform>%Ln Fotos vom Inneren</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2 are asked for</source>
        <translation>%1, verlangt sind %2</translation>
    </message>
    <message>
        <source>work was done after the latest photograph</source>
        <translation>nach dem letzten Foto wurde gearbeitet</translation>
    </message>
    <message numerus="yes">
        <source>%n closings lack photographs of the open structure</source>
        <translation>
            <numerusform>%Ln Schließstelle fehlen Fotos der offenen Struktur</numerusform>
            <numerusform>%Ln Schließstellen fehlen Fotos der offenen Struktur</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n parts were worked on, will be hidden, and have no photograph of the inside</source>
        <translation>
            <numerusform>%Ln Teil wurde bearbeitet, wird verdeckt und hat kein Foto vom Inneren</numerusform>
            <numerusform>%Ln Teile wurden bearbeitet, werden verdeckt und haben kein Foto vom Inneren</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Show %n photos that belong to no part and no closing</source>
        <translation>
            <numerusform>%Ln Foto zeigen, das zu keinem Teil und keiner Schließstelle gehört</numerusform>
            <numerusform>%Ln Fotos zeigen, die zu keinem Teil und keiner Schließstelle gehören</numerusform>
        </translation>
    </message>
    <message>
        <source>What is missing</source>
        <translation>Was fehlt</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::MomentLine</name>
    <message>
        <source>day, or day and time</source>
        <translation>Tag, oder Tag und Zeit</translation>
    </message>
    <message>
        <source>“%1” is no day; 14 March 2026 is written 2026-03-14.</source>
        <translation>„%1“ ist kein Tag; der 14. März 2026 wird 2026-03-14 geschrieben.</translation>
    </message>
    <message>
        <source>It needs the day.</source>
        <translation>Nötig ist der Tag.</translation>
    </message>
    <message>
        <source>%1 lies ahead: only what has happened is recorded.</source>
        <translation>%1 liegt in der Zukunft: eingetragen wird nur, was geschehen ist.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::NewClosingForm</name>
    <message>
        <source>Make the closing</source>
        <translation>Schließstelle anlegen</translation>
    </message>
    <message>
        <source>opening it again would mean drilling, cutting, or breaking glue or fabric</source>
        <translation>wieder öffnen hieße bohren, schneiden oder Leim oder Bespannung zerstören</translation>
    </message>
    <message>
        <source>this is the end of the whole aircraft, before the final inspection and first flight</source>
        <translation>dies ist der Abschluss des ganzen Flugzeugs, vor Endprüfung und Erstflug</translation>
    </message>
    <message>
        <source>of the tree, or a new one</source>
        <translation>aus dem Baum, oder ein neues</translation>
    </message>
    <message>
        <source>A closing is the act after which a region can no longer be seen or reached.</source>
        <translation>Nach dem Schließen ist ein Bereich nicht mehr zu sehen oder zu erreichen.</translation>
    </message>
    <message>
        <source>the builder</source>
        <translation>der Erbauer</translation>
    </message>
    <message>
        <source>an earlier builder</source>
        <translation>ein früherer Erbauer</translation>
    </message>
    <message>
        <source>the factory</source>
        <translation>der Hersteller</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>Hides</source>
        <translation>Verdeckt</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Wie</translation>
    </message>
    <message>
        <source>Closed by</source>
        <translation>Geschlossen durch</translation>
    </message>
    <message>
        <source>Inspector&apos;s lists</source>
        <translation>Listen des Prüfers</translation>
    </message>
    <message>
        <source>riveted, bonded, covered …</source>
        <translation>genietet, geklebt, bespannt …</translation>
    </message>
    <message numerus="yes">
        <source>%1 (%n lines)</source>
        <translation>
            <numerusform>%1 (%Ln Zeile)</numerusform>
            <numerusform>%1 (%Ln Zeilen)</numerusform>
        </translation>
    </message>
    <message>
        <source>It needs a part, and a title such as “Left wing, upper skin”.</source>
        <translation>Nötig sind ein Teil und ein Titel wie „Linker Flügel, obere Haut“.</translation>
    </message>
    <message>
        <source>New closing: %1</source>
        <translation>Neue Schließstelle: %1</translation>
    </message>
    <message>
        <source>Several parts are called “%1”: choose one from the list.</source>
        <translation>Mehrere Teile heißen „%1“: wählen Sie eines aus der Liste.</translation>
    </message>
    <message>
        <source>“%1” will be a new part</source>
        <translation>„%1“ wird ein neues Teil</translation>
    </message>
    <message>
        <source>%1, all of it</source>
        <translation>%1, alles davon</translation>
    </message>
    <message>
        <source>It hides nothing yet: tick what can no longer be reached behind it.</source>
        <translation>Noch verdeckt sie nichts: anhaken, was dahinter nicht mehr erreichbar ist.</translation>
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
        <translation>Gebaut aus</translation>
    </message>
    <message>
        <source>Aircraft type</source>
        <translation>Flugzeugtyp</translation>
    </message>
    <message>
        <source>Builder</source>
        <translation>Erbauer</translation>
    </message>
    <message>
        <source>Kept in the folder</source>
        <translation>Aufbewahrt im Ordner</translation>
    </message>
    <message>
        <source>can be added later</source>
        <translation>kann später ergänzt werden</translation>
    </message>
    <message>
        <source>It needs a name, and who builds it.</source>
        <translation>Nötig sind ein Name und wer es baut.</translation>
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
            <numerusform>Nehmen Sie das Häkchen weg, wo Ihr Flugzeug etwas nicht hat. Schließstellen, die zu den Teilen gehören: %Ln. Alles kann später umbenannt, verschoben und ergänzt werden.</numerusform>
            <numerusform>Nehmen Sie das Häkchen weg, wo Ihr Flugzeug etwas nicht hat. Schließstellen, die zu den Teilen gehören: %Ln. Alles kann später umbenannt, verschoben und ergänzt werden.</numerusform>
        </translation>
    </message>
    <message>
        <source>Project begun</source>
        <translation>Projekt begonnen</translation>
    </message>
    <message>
        <source>It needs a folder to be kept in.</source>
        <translation>Nötig ist ein Ordner, in dem es liegen soll.</translation>
    </message>
    <message>
        <source>Ctrl+Enter makes the project.</source>
        <translation>Strg+Eingabe legt das Projekt an.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::NoticeBars</name>
    <message>
        <source>Merge it</source>
        <translation>Zusammenführen</translation>
    </message>
    <message>
        <source>Dismiss</source>
        <translation>Ausblenden</translation>
    </message>
    <message>
        <source>The project&apos;s folder is back.</source>
        <translation>Der Ordner des Projekts ist zurück.</translation>
    </message>
    <message>
        <source>The project&apos;s folder is no longer at %1. Nothing can be written down until it is back, or is opened where it is now.</source>
        <translation>Der Ordner des Projekts ist nicht mehr unter %1. Nichts kann aufgeschrieben werden, bis er zurück ist oder dort geöffnet wird, wo er jetzt ist.</translation>
    </message>
    <message>
        <source>Open it where it is…</source>
        <translation>Dort öffnen, wo er ist…</translation>
    </message>
    <message>
        <source>%1 Look everything over before you go on, and keep the backups.</source>
        <translation>%1 Vor dem Weiterarbeiten alles durchsehen und die Sicherungen aufheben.</translation>
    </message>
    <message>
        <source>Verify records and files</source>
        <translation>Aufzeichnungen und Dateien nachprüfen</translation>
    </message>
    <message>
        <source>To read only, as the records were when this was opened (%1). %2</source>
        <translation>Nur zum Lesen, so wie die Einträge beim Öffnen waren (%1). %2</translation>
    </message>
    <message>
        <source>Open it anew</source>
        <translation>Neu öffnen</translation>
    </message>
    <message>
        <source>Shows what was changed since, and can write when nothing stands against that any more.</source>
        <translation>Zeigt, was seither geändert wurde, und kann schreiben, wenn nichts mehr dagegen steht.</translation>
    </message>
    <message>
        <source>The records have been changed since this was opened (%1), and are shown as they were then. To read only. %2</source>
        <translation>Seit dem Öffnen (%1) wurde etwas geändert; gezeigt wird der Stand von damals. Nur zum Lesen. %2</translation>
    </message>
    <message>
        <source>Bring the records of %1 into this project?</source>
        <translation>Die Aufzeichnungen aus %1 in dieses Projekt übernehmen?</translation>
    </message>
    <message>
        <source>Import records</source>
        <translation>Aufzeichnungen übernehmen</translation>
    </message>
    <message>
        <source>The program that had the project open for writing has closed it. To read only, as the records were when this was opened (%1): open it anew to see what was changed since, and to write.</source>
        <translation>Das Programm, das das Projekt zum Schreiben offen hatte, hat es geschlossen. Nur zum Lesen, so wie die Einträge beim Öffnen waren (%1): Öffnen Sie es neu, um zu sehen, was seither geändert wurde, und um zu schreiben.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::NumberBox</name>
    <message>
        <source>“%1” cannot stand there: it is a whole number from %2 to %3.</source>
        <translation>„%1“ kann dort nicht stehen: Es ist eine ganze Zahl von %2 bis %3.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::OpenRequestNotice</name>
    <message>
        <source>Add these hold points to it</source>
        <translation>Diese Haltepunkte dazu nehmen</translation>
    </message>
    <message>
        <source>“%1”, held on %2, is not complete.</source>
        <translation>„%1“, abgehalten am %2, ist nicht abgeschlossen.</translation>
    </message>
    <message>
        <source>“%1”, asked for on %2, is still open.</source>
        <translation>„%1“, angefragt am %2, ist noch offen.</translation>
    </message>
    <message>
        <source>This authority takes one request at a time: a visit must be complete before the next one can be asked for.</source>
        <translation>Diese Behörde nimmt eine Anfrage zur Zeit: ein Besuch muss abgeschlossen sein, bevor der nächste angefragt werden kann.</translation>
    </message>
    <message numerus="yes">
        <source>%n of its findings are neither verified nor accepted; see the visit itself.</source>
        <translation>
            <numerusform>%Ln seiner Feststellungen ist weder nachgeprüft noch angenommen; siehe den Besuch selbst.</numerusform>
            <numerusform>%Ln seiner Feststellungen sind weder nachgeprüft noch angenommen; siehe den Besuch selbst.</numerusform>
        </translation>
    </message>
    <message>
        <source>Visit complete</source>
        <translation>Besuch abgeschlossen</translation>
    </message>
    <message>
        <source>Visit cancelled</source>
        <translation>Besuch abgesagt</translation>
    </message>
    <message>
        <source>Mark as complete</source>
        <translation>Als vollständig eintragen</translation>
    </message>
    <message>
        <source>Mark as cancelled</source>
        <translation>Als abgesagt eintragen</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::OwnLimitForm</name>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>drawing, manual or letter it is from</source>
        <translation>Zeichnung, Handbuch oder Brief, aus dem sie stammt</translation>
    </message>
    <message>
        <source>At least</source>
        <translation>Mindestens</translation>
    </message>
    <message>
        <source>At most</source>
        <translation>Höchstens</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>This project&apos;s own limit in the place of: %1. Both lines empty give the table its place back.</source>
        <translation>Eigene Grenze dieses Projekts anstelle von: %1. Sind beide Zeilen leer, gilt wieder die Tabelle.</translation>
    </message>
    <message>
        <source>The least is more than the most.</source>
        <translation>Das Mindeste ist mehr als das Höchste.</translation>
    </message>
    <message>
        <source>It needs its source: the drawing, manual or letter that says so.</source>
        <translation>Es fehlt die Quelle: Zeichnung, Handbuch oder Brief, der das sagt.</translation>
    </message>
    <message>
        <source>It could not be kept, and the limits are those from before.</source>
        <translation>Es konnte nicht festgehalten werden; es gelten die Grenzen von vorher.</translation>
    </message>
    <message>
        <source>A torque is not below zero.</source>
        <translation>Ein Drehmoment ist nicht kleiner als null.</translation>
    </message>
    <message>
        <source>It needs its unit.</source>
        <translation>Es fehlt die Einheit.</translation>
    </message>
    <message>
        <source>Write the unit of the torque as in-lb, ft-lb or N·m.</source>
        <translation>Schreiben Sie die Einheit des Drehmoments als in-lb, ft-lb oder N·m.</translation>
    </message>
    <message>
        <source>It stays with this copy of the project: a merge brings it to no other, and the journal does not tell of it.</source>
        <translation>Sie bleibt bei dieser Kopie des Projekts: Kein Zusammenführen bringt sie in eine andere, und das Journal sagt nichts von ihr.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PacketForm</name>
    <message>
        <source>Make the packet</source>
        <translation>Prüfmappe machen</translation>
    </message>
    <message>
        <source>The inspection packet: everything an inspector needs to decide, in his order.</source>
        <translation>Die Prüfmappe: alles, was ein Prüfer zum Entscheiden braucht, in seiner Reihenfolge.</translation>
    </message>
    <message>
        <source>Closings</source>
        <translation>Schließstellen</translation>
    </message>
    <message>
        <source>Form</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Language of the packet</source>
        <translation>Sprache der Prüfmappe</translation>
    </message>
    <message>
        <source>Goes to</source>
        <translation>Kommt nach</translation>
    </message>
    <message>
        <source>PDF to print</source>
        <translation>PDF zum Drucken</translation>
    </message>
    <message>
        <source>Folder with the PDF and all photographs in full size</source>
        <translation>Ordner mit dem PDF und allen Fotos in voller Größe</translation>
    </message>
    <message>
        <source>PDF under 15 MB to send</source>
        <translation>PDF unter 15 MB zum Senden</translation>
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
        <source>Choose…</source>
        <translation>Wählen…</translation>
    </message>
    <message>
        <source>Choose where the packet goes</source>
        <translation>Wählen, wohin die Prüfmappe kommt</translation>
    </message>
    <message>
        <source>Photographs as large as paper shows them.</source>
        <translation>Fotos so groß, wie Papier sie zeigt.</translation>
    </message>
    <message>
        <source>For a stick or a shared folder. SHA256SUMS beside the photographs lets anybody check that none was altered.</source>
        <translation>Für einen Stick oder einen geteilten Ordner. Mit SHA256SUMS neben den Fotos kann jeder prüfen, dass keines verändert wurde.</translation>
    </message>
    <message>
        <source>Pictures become smaller, and some are left out where that is not enough; the first page says so.</source>
        <translation>Bilder werden kleiner, und wo das nicht reicht, fallen einige weg; die erste Seite sagt es.</translation>
    </message>
    <message>
        <source>Name of the new folder</source>
        <translation>Name des neuen Ordners</translation>
    </message>
    <message>
        <source>Where the packet goes</source>
        <translation>Wohin die Prüfmappe kommt</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>It needs a place to go to.</source>
        <translation>Nötig ist ein Ort dafür.</translation>
    </message>
    <message>
        <source>There is no folder %1.</source>
        <translation>Den Ordner %1 gibt es nicht.</translation>
    </message>
    <message>
        <source>%1 is a folder; the PDF needs a name.</source>
        <translation>%1 ist ein Ordner; das PDF braucht einen Namen.</translation>
    </message>
    <message>
        <source>Something is called %1 there already; the new folder needs another name.</source>
        <translation>Dort heißt schon etwas %1; der neue Ordner braucht einen anderen Namen.</translation>
    </message>
    <message>
        <source>%1 to send</source>
        <translation>%1 zum Senden</translation>
    </message>
    <message>
        <source>A file of this name is there. Press again to replace it.</source>
        <translation>Eine Datei dieses Namens ist da. Noch einmal drücken, um sie zu ersetzen.</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>und %1 weitere</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PaidHelpBox</name>
    <message>
        <source>It will be so: keep these tenths</source>
        <translation>So wird es: diese Zehntel behalten</translation>
    </message>
    <message>
        <source>What if paid help did some of it?</source>
        <translation>Was, wenn bezahlte Hilfe etwas davon ausführt?</translation>
    </message>
    <message>
        <source>Tenths of the assembly</source>
        <translation>Zehntel der Montage</translation>
    </message>
    <message>
        <source>Tenths of the fabrication</source>
        <translation>Zehntel der Anfertigung</translation>
    </message>
    <message>
        <source>Then: %1</source>
        <translation>Dann: %1</translation>
    </message>
    <message numerus="yes">
        <source>Of all tasks together, %n tenths can still be paid for before the builder&apos;s share is no longer more than half.</source>
        <translation>
            <numerusform>Von allen Aufgaben zusammen kann noch %Ln Zehntel bezahlt werden, bevor der Anteil des Erbauers nicht mehr über der Hälfte liegt.</numerusform>
            <numerusform>Von allen Aufgaben zusammen können noch %Ln Zehntel bezahlt werden, bevor der Anteil des Erbauers nicht mehr über der Hälfte liegt.</numerusform>
        </translation>
    </message>
    <message>
        <source>The builder&apos;s share is not more than half as it is.</source>
        <translation>Der Anteil des Erbauers liegt schon jetzt nicht über der Hälfte.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PaperModel</name>
    <message>
        <source>On no list of the country: added here.</source>
        <translation>Auf keiner Liste des Landes: hier ergänzt.</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PaperPanel</name>
    <message>
        <source>Asked for on</source>
        <translation>Angefordert am</translation>
    </message>
    <message>
        <source>Here since</source>
        <translation>Liegt vor seit</translation>
    </message>
    <message>
        <source>Valid until</source>
        <translation>Gültig bis</translation>
    </message>
    <message>
        <source>Builder&apos;s name on it</source>
        <translation>Name des Erbauers darauf</translation>
    </message>
    <message>
        <source>Model on it</source>
        <translation>Muster darauf</translation>
    </message>
    <message>
        <source>Serial number on it</source>
        <translation>Werknummer darauf</translation>
    </message>
    <message>
        <source>Registration on it</source>
        <translation>Kennzeichen darauf</translation>
    </message>
    <message>
        <source>A newer one…</source>
        <translation>Ein neueres…</translation>
    </message>
    <message>
        <source>Write down what it says</source>
        <translation>Notieren, was es sagt</translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation>Zurückziehen</translation>
    </message>
    <message>
        <source>Scans of it</source>
        <translation>Scans davon</translation>
    </message>
    <message>
        <source>All records of it</source>
        <translation>Alle Einträge dazu</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>no number</source>
        <translation>ohne Nummer</translation>
    </message>
    <message>
        <source>here since %1</source>
        <translation>liegt vor seit %1</translation>
    </message>
    <message>
        <source>asked for on %1</source>
        <translation>angefordert am %1</translation>
    </message>
    <message>
        <source>counts</source>
        <translation>zählt</translation>
    </message>
    <message>
        <source>%1: asked for</source>
        <translation>%1: angefordert</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Am</translation>
    </message>
    <message>
        <source>%1: here</source>
        <translation>%1: liegt vor</translation>
    </message>
    <message>
        <source>Number on it, if any</source>
        <translation>Nummer darauf, falls vorhanden</translation>
    </message>
    <message>
        <source>Since</source>
        <translation>Seit</translation>
    </message>
    <message>
        <source>%1: begun</source>
        <translation>%1: begonnen</translation>
    </message>
    <message>
        <source>%1: scan taken off</source>
        <translation>%1: Scan abgenommen</translation>
    </message>
    <message>
        <source>Mark as asked for…</source>
        <translation>Als angefordert eintragen…</translation>
    </message>
    <message>
        <source>Mark as here…</source>
        <translation>Als vorhanden eintragen…</translation>
    </message>
    <message>
        <source>Mark as asked for</source>
        <translation>Als angefordert eintragen</translation>
    </message>
    <message>
        <source>Mark as here</source>
        <translation>Als vorhanden eintragen</translation>
    </message>
    <message>
        <source>A newer one was asked for on %1.</source>
        <translation>Ein neueres ist am %1 angefordert.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PapersView</name>
    <message>
        <source>Documents on the way to the certificate</source>
        <translation>Dokumente auf dem Weg zur Zulassung</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <source>A document that is on no list</source>
        <translation>Ein Dokument, das auf keiner Liste steht</translation>
    </message>
    <message>
        <source>Document “%1” added</source>
        <translation>Dokument „%1“ hinzugefügt</translation>
    </message>
    <message>
        <source>These rules require no document; what is usual is listed.</source>
        <translation>Diese Regeln fordern kein Dokument; aufgeführt ist, was üblich ist.</translation>
    </message>
    <message>
        <source>Every document that these rules require is here.</source>
        <translation>Jedes Dokument, das diese Regeln fordern, liegt vor.</translation>
    </message>
    <message numerus="yes">
        <source>%n required documents are not here yet.</source>
        <translation>
            <numerusform>%Ln erforderliches Dokument fehlt noch.</numerusform>
            <numerusform>%Ln erforderliche Dokumente fehlen noch.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n that are here have no scan.</source>
        <translation>
            <numerusform>%Ln vorliegendes hat keinen Scan.</numerusform>
            <numerusform>%Ln vorliegende haben keinen Scan.</numerusform>
        </translation>
    </message>
    <message>
        <source>Rules change: check the current edition with your authority.</source>
        <translation>Regeln ändern sich: Prüfen Sie die geltende Ausgabe bei Ihrer Behörde.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PartDetail</name>
    <message>
        <source>Never enclosed because</source>
        <translation>Wird nie umschlossen, weil</translation>
    </message>
    <message>
        <source>The part itself</source>
        <translation>Das Teil selbst</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PartHead</name>
    <message>
        <source>With everything below</source>
        <translation>Mit allem darunter</translation>
    </message>
    <message>
        <source>The whole aircraft</source>
        <translation>Das ganze Flugzeug</translation>
    </message>
    <message>
        <source>What is on record of all parts, and of none</source>
        <translation>Was zu allen Teilen und zu keinem verzeichnet ist</translation>
    </message>
    <message>
        <source>%1 with everything below</source>
        <translation>%1 mit allem darunter</translation>
    </message>
    <message>
        <source>%1 in all</source>
        <translation>%1 insgesamt</translation>
    </message>
    <message>
        <source>Fitted, and not torqued yet: show them</source>
        <translation>Eingebaut und noch nicht angezogen: zeigen</translation>
    </message>
    <message numerus="yes">
        <source>%n finger-tight</source>
        <translation>
            <numerusform>%Ln nur fingerfest</numerusform>
            <numerusform>%Ln nur fingerfest</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PartPhotos</name>
    <message>
        <source>Photos of the part</source>
        <translation>Fotos des Teils</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PartTree</name>
    <message>
        <source>The whole aircraft</source>
        <translation>Das ganze Flugzeug</translation>
    </message>
    <message>
        <source>Type to filter the parts</source>
        <translation>Tippen, um Teile zu filtern</translation>
    </message>
    <message>
        <source>Filter the parts</source>
        <translation>Teile filtern</translation>
    </message>
    <message>
        <source>Alt+Home: what is on record of all parts, and of none</source>
        <translation>Alt+Pos1: was zu allen Teilen und zu keinem verzeichnet ist</translation>
    </message>
    <message>
        <source>The parts of the aeroplane will stand here as a tree, each with its state, hours, squawks and photos.</source>
        <translation>Hier stehen die Teile des Flugzeugs als Baum, jedes mit Zustand, Stunden, Beanstandungen und Fotos.</translation>
    </message>
    <message>
        <source>Add the first part</source>
        <translation>Erstes Teil hinzufügen</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message numerus="yes">
        <source>%n fit</source>
        <comment>parts</comment>
        <translation>
            <numerusform>%Ln passt</numerusform>
            <numerusform>%Ln passen</numerusform>
        </translation>
    </message>
    <message>
        <source>Look for words in the tree</source>
        <translation>Wörter im Baum suchen</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PartsPage</name>
    <message>
        <source>Add beside</source>
        <translation>Daneben hinzufügen</translation>
    </message>
    <message>
        <source>Insert: a part after this one</source>
        <translation>Einfg: ein Teil nach diesem</translation>
    </message>
    <message>
        <source>Add inside</source>
        <translation>Darin hinzufügen</translation>
    </message>
    <message>
        <source>Shift+Insert: a part within this one</source>
        <translation>Umschalt+Einfg: ein Teil in diesem</translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation>Zurückziehen</translation>
    </message>
    <message>
        <source>A new part inside %1</source>
        <translation>Ein neues Teil in %1</translation>
    </message>
    <message>
        <source>A new part at the top</source>
        <translation>Ein neues Teil ganz oben</translation>
    </message>
    <message>
        <source>Add it</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>A part needs a name.</source>
        <translation>Ein Teil braucht einen Namen.</translation>
    </message>
    <message>
        <source>Part added: %1</source>
        <translation>Teil hinzugefügt: %1</translation>
    </message>
    <message>
        <source>Copy…</source>
        <translation>Kopieren…</translation>
    </message>
    <message>
        <source>Ctrl+D: this part with everything below it, for the other side</source>
        <translation>Strg+D: dieses Teil mit allem darunter, für die andere Seite</translation>
    </message>
    <message>
        <source>Paste list…</source>
        <translation>Liste einfügen…</translation>
    </message>
    <message>
        <source>Ctrl+V: parts or steps from a spreadsheet</source>
        <translation>Strg+V: Teile oder Schritte aus einer Tabelle</translation>
    </message>
    <message>
        <source>Delete: take wrong parts out</source>
        <translation>Entf: falsche Teile herausnehmen</translation>
    </message>
    <message>
        <source>Choose a part in the tree first.</source>
        <translation>Erst ein Teil im Baum wählen.</translation>
    </message>
    <message>
        <source>A part beside the chosen one</source>
        <translation>Ein Teil neben dem gewählten</translation>
    </message>
    <message>
        <source>A part inside the chosen one</source>
        <translation>Ein Teil im gewählten</translation>
    </message>
    <message>
        <source>Withdraw what is chosen</source>
        <translation>Zurückziehen, was gewählt ist</translation>
    </message>
    <message>
        <source>Copy the part with what is in it</source>
        <translation>Das Teil mit allem darin kopieren</translation>
    </message>
    <message>
        <source>Paste a list of parts</source>
        <translation>Eine Liste von Teilen einfügen</translation>
    </message>
    <message>
        <source>Move up</source>
        <translation>Nach oben verschieben</translation>
    </message>
    <message>
        <source>Move down</source>
        <translation>Nach unten verschieben</translation>
    </message>
    <message>
        <source>Move into the part above</source>
        <translation>In das Teil darüber verschieben</translation>
    </message>
    <message>
        <source>Move out of its part</source>
        <translation>Aus seinem Teil herausnehmen</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PersonBox</name>
    <message>
        <source>It needs a name.</source>
        <translation>Nötig ist ein Name.</translation>
    </message>
    <message>
        <source>%1 is on record, but not as an inspector, and only an inspector&apos;s word counts here.</source>
        <translation>%1 ist verzeichnet, aber nicht als Prüfer, und hier zählt nur das Wort eines Prüfers.</translation>
    </message>
    <message>
        <source>%1 is on record, but neither as an adviser nor as an inspector, and only their word counts here.</source>
        <translation>%1 ist verzeichnet, aber weder als Berater noch als Prüfer, und hier zählt nur deren Wort.</translation>
    </message>
    <message>
        <source>%1 is on record, but not as a builder, adviser or inspector.</source>
        <translation>%1 ist verzeichnet, aber nicht als Erbauer, Berater oder Prüfer.</translation>
    </message>
    <message>
        <source>%1 is on record, but not in a role that counts here.</source>
        <translation>%1 ist verzeichnet, aber nicht in einer Rolle, die hier zählt.</translation>
    </message>
    <message>
        <source>“%1” is not on record yet, and becomes a person there with this.</source>
        <translation>„%1“ steht noch nicht in den Einträgen und wird damit als Person angelegt.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PersonPanel</name>
    <message>
        <source>Roles of %1 changed</source>
        <translation>Rollen von %1 geändert</translation>
    </message>
    <message>
        <source>Person added</source>
        <translation>Person hinzugefügt</translation>
    </message>
    <message>
        <source>New person</source>
        <translation>Neue Person</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PhotoBar</name>
    <message>
        <source>Take photos in</source>
        <translation>Fotos übernehmen</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Belonging to no part</source>
        <translation>Ohne Teil</translation>
    </message>
    <message>
        <source>Of a part</source>
        <translation>Eines Teils</translation>
    </message>
    <message>
        <source>Papers</source>
        <translation>Unterlagen</translation>
    </message>
    <message>
        <source>What is missing</source>
        <translation>Was fehlt</translation>
    </message>
    <message>
        <source>Which photos</source>
        <translation>Welche Fotos</translation>
    </message>
    <message>
        <source>part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Photos of this part and below</source>
        <translation>Fotos dieses Teils und darunter</translation>
    </message>
    <message>
        <source>by date</source>
        <translation>nach Datum</translation>
    </message>
    <message>
        <source>by part</source>
        <translation>nach Teil</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Reihenfolge</translation>
    </message>
    <message numerus="yes">
        <source>%n shown</source>
        <translation>
            <numerusform>%Ln gezeigt</numerusform>
            <numerusform>%Ln gezeigt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n places lack photos</source>
        <translation>
            <numerusform>An %Ln Stelle fehlen Fotos</numerusform>
            <numerusform>An %Ln Stellen fehlen Fotos</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PhotoBrowser</name>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Headings</source>
        <translation>Überschriften</translation>
    </message>
    <message>
        <source>Space opens · A assigns to a part · M confirms the log entry · 1 to 7 say what it shows · Del withdraws</source>
        <translation>Leertaste öffnet · A ordnet einem Teil zu · M bestätigt den Eintrag · 1 bis 7 sagen, was es zeigt · Entf zieht zurück</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PhotoDetail</name>
    <message>
        <source>Withdraw</source>
        <translation>Zurückziehen</translation>
    </message>
    <message>
        <source>It shows</source>
        <translation>Es zeigt</translation>
    </message>
    <message>
        <source>It belongs to</source>
        <translation>Es gehört zu</translation>
    </message>
    <message>
        <source>Shift times…</source>
        <translation>Zeiten verschieben …</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PhotoIntake</name>
    <message>
        <source>Taking in photos</source>
        <translation>Fotos werden übernommen</translation>
    </message>
    <message numerus="yes">
        <source>%n files were not taken in, because the folder %1 is not there any more.</source>
        <translation>
            <numerusform>%Ln Datei wurde nicht übernommen, weil der Ordner %1 nicht mehr da ist.</numerusform>
            <numerusform>%Ln Dateien wurden nicht übernommen, weil der Ordner %1 nicht mehr da ist.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n taken in.</source>
        <translation>
            <numerusform>%Ln übernommen.</numerusform>
            <numerusform>%Ln übernommen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n were there already.</source>
        <translation>
            <numerusform>%Ln war schon da.</numerusform>
            <numerusform>%Ln waren schon da.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n were not; the list says why.</source>
        <translation>
            <numerusform>%Ln nicht; die Liste sagt, warum.</numerusform>
            <numerusform>%Ln nicht; die Liste sagt, warum.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more were not taken in.</source>
        <translation>
            <numerusform>%Ln weitere wurde nicht aufgenommen.</numerusform>
            <numerusform>%Ln weitere wurden nicht aufgenommen.</numerusform>
        </translation>
    </message>
    <message>
        <source>The rest was not taken in: %1</source>
        <translation>Der Rest wurde nicht aufgenommen: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n are dated ahead or years before the project; was the camera&apos;s clock right?</source>
        <translation>
            <numerusform>%Ln trägt ein Datum, das voraus oder Jahre vor dem Projekt liegt; ging die Uhr der Kamera richtig?</numerusform>
            <numerusform>%Ln tragen ein Datum, das voraus oder Jahre vor dem Projekt liegt; ging die Uhr der Kamera richtig?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n files on record were missing or damaged and are there again; damaged ones are kept in backups/damaged.</source>
        <translation>
            <numerusform>%Ln erfasste Datei fehlte oder war beschädigt und ist wieder da; Beschädigtes ist in backups/damaged aufgehoben.</numerusform>
            <numerusform>%Ln erfasste Dateien fehlten oder waren beschädigt und sind wieder da; Beschädigtes ist in backups/damaged aufgehoben.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PhotoStrip</name>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PhotoViewer</name>
    <message>
        <source>Back to all</source>
        <translation>Zurück zu allen</translation>
    </message>
    <message>
        <source>Open it</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Words on the mark</source>
        <translation>Worte an der Markierung</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Page Up</source>
        <translation>Bild auf</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Page Down</source>
        <translation>Bild ab</translation>
    </message>
    <message>
        <source>Arrow</source>
        <translation>Pfeil</translation>
    </message>
    <message>
        <source>Circle</source>
        <translation>Kreis</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Worte</translation>
    </message>
    <message>
        <source>A: an arrow</source>
        <translation>A: ein Pfeil</translation>
    </message>
    <message>
        <source>C: a circle</source>
        <translation>C: ein Kreis</translation>
    </message>
    <message>
        <source>W: words</source>
        <translation>W: Worte</translation>
    </message>
    <message>
        <source>Remove mark</source>
        <translation>Markierung entfernen</translation>
    </message>
    <message>
        <source>Del</source>
        <translation>Entf</translation>
    </message>
    <message>
        <source>−: smaller</source>
        <translation>−: kleiner</translation>
    </message>
    <message>
        <source>Smaller</source>
        <translation>Kleiner</translation>
    </message>
    <message>
        <source>+: larger</source>
        <translation>+: größer</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Größer</translation>
    </message>
    <message>
        <source>Whole</source>
        <translation>Ganz</translation>
    </message>
    <message>
        <source>F: the whole picture</source>
        <translation>F: das ganze Bild</translation>
    </message>
    <message>
        <source>Full size</source>
        <translation>Volle Größe</translation>
    </message>
    <message>
        <source>O: every pixel</source>
        <translation>O: jeder Bildpunkt</translation>
    </message>
    <message>
        <source>Caption</source>
        <translation>Bildtext</translation>
    </message>
    <message>
        <source>what there is to see</source>
        <translation>was zu sehen ist</translation>
    </message>
    <message>
        <source>This is a video. The program that this computer has for videos can show it.</source>
        <translation>Das ist ein Video. Das Programm dieses Computers für Videos kann es zeigen.</translation>
    </message>
    <message>
        <source>This is a paper. The program that this computer has for such files can show it.</source>
        <translation>Das ist eine Unterlage. Das Programm dieses Computers für solche Dateien kann sie zeigen.</translation>
    </message>
    <message numerus="yes">
        <source>%1, %2, %n marks</source>
        <translation>
            <numerusform>%1, %2, %Ln Markierung</numerusform>
            <numerusform>%1, %2, %Ln Markierungen</numerusform>
        </translation>
    </message>
    <message>
        <source>Open %1</source>
        <translation>%1 öffnen</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Mark drawn on %1</source>
        <translation>Markierung auf %1 gezeichnet</translation>
    </message>
    <message>
        <source>Mark removed from %1</source>
        <translation>Markierung von %1 entfernt</translation>
    </message>
    <message>
        <source>Mark changed on %1</source>
        <translation>Markierung auf %1 geändert</translation>
    </message>
    <message>
        <source>%1: caption</source>
        <translation>%1: Bildtext</translation>
    </message>
    <message>
        <source>Previous</source>
        <translation>Voriges</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PhotosPage</name>
    <message>
        <source>Choose files</source>
        <translation>Dateien wählen</translation>
    </message>
    <message>
        <source>Take in</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>Photos, videos and papers (*.jpg *.jpeg *.png *.heic *.mp4 *.mov *.mkv *.avi *.pdf);;All files (*)</source>
        <translation>Fotos, Videos und Unterlagen (*.jpg *.jpeg *.png *.heic *.mp4 *.mov *.mkv *.avi *.pdf);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Photographs of what will later be closed belong here: drop files on this page, paste a picture, or choose files.</source>
        <translation>Hierher gehören Fotos von allem, was später geschlossen wird: Dateien auf diese Seite ziehen, ein Bild einfügen oder Dateien wählen.</translation>
    </message>
    <message>
        <source>There is no picture and no file to paste.</source>
        <translation>Es gibt kein Bild und keine Datei zum Einfügen.</translation>
    </message>
    <message>
        <source>Say what the photo belongs to</source>
        <translation>Angeben, wozu das Foto gehört</translation>
    </message>
    <message>
        <source>Confirm the proposed work</source>
        <translation>Die vorgeschlagene Arbeit bestätigen</translation>
    </message>
    <message>
        <source>Confirm all that is proposed</source>
        <translation>Alles Vorgeschlagene bestätigen</translation>
    </message>
    <message>
        <source>Look at the photo</source>
        <translation>Das Foto ansehen</translation>
    </message>
    <message>
        <source>Withdraw what is chosen</source>
        <translation>Zurückziehen, was gewählt ist</translation>
    </message>
    <message>
        <source>Take in what was copied</source>
        <translation>Aufnehmen, was kopiert wurde</translation>
    </message>
    <message>
        <source>Every photo belongs to a part or a closing.</source>
        <translation>Jedes Foto gehört zu einem Teil oder einer Schließstelle.</translation>
    </message>
    <message>
        <source>No paper is on record.</source>
        <translation>Es ist kein Papier verzeichnet.</translation>
    </message>
    <message>
        <source>No photo of this part is on record.</source>
        <translation>Von diesem Teil ist kein Foto verzeichnet.</translation>
    </message>
    <message>
        <source>No photo is on record.</source>
        <translation>Es ist kein Foto verzeichnet.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PictureLoader</name>
    <message>
        <source>There is no picture of it.</source>
        <translation>Davon gibt es kein Bild.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PictureView</name>
    <message>
        <source>Reading the picture …</source>
        <translation>Das Bild wird gelesen …</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PlainPapers</name>
    <message>
        <source>This project is to read only: nothing can be written into it.</source>
        <translation>Dieses Projekt kann nur gelesen werden: Es lässt sich nichts hineinschreiben.</translation>
    </message>
    <message>
        <source>Writing the log and lists into the folder</source>
        <translation>Bautagebuch und Listen werden in den Ordner geschrieben</translation>
    </message>
    <message>
        <source>The folder now holds the builder&apos;s log as PDF, all records as CSV, and a page that explains them.</source>
        <translation>Im Ordner liegen jetzt das Bautagebuch als PDF, alle Aufzeichnungen als CSV und eine Seite, die sie erklärt.</translation>
    </message>
    <message>
        <source>Cancelled: all records are there as CSV, the builder&apos;s log as it was before.</source>
        <translation>Abgebrochen: Alle Aufzeichnungen liegen als CSV da, das Bautagebuch ist, wie es vorher war.</translation>
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
        <translation>Angloamerikanisch</translation>
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
        <translation>Drucken</translation>
    </message>
    <message>
        <source>with a code that Find reads</source>
        <translation>mit einem Code, den Finden liest</translation>
    </message>
    <message>
        <source>only parts that have a shelf</source>
        <translation>nur Teile mit Regalfach</translation>
    </message>
    <message>
        <source>A paper is written as PDF and opened; from there it goes to any printer.</source>
        <translation>Ein Papier wird als PDF geschrieben und geöffnet; von dort geht es zu jedem Drucker.</translation>
    </message>
    <message>
        <source>Paper to make</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>For which closings</source>
        <translation>Für welche Schließstellen</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>QR-Code</translation>
    </message>
    <message>
        <source>Which parts</source>
        <translation>Welche Teile</translation>
    </message>
    <message>
        <source>Paper size</source>
        <translation>Papiergröße</translation>
    </message>
    <message>
        <source>Label size</source>
        <translation>Etikettengröße</translation>
    </message>
    <message>
        <source>Labels already used</source>
        <translation>Schon verbrauchte Etiketten</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Blätter</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Wählen…</translation>
    </message>
    <message>
        <source>%1 × %2 mm, %3 on a sheet</source>
        <translation>%1 × %2 mm, %3 auf einem Blatt</translation>
    </message>
    <message>
        <source>Write</source>
        <translation>Schreiben</translation>
    </message>
    <message>
        <source>Calendar (*.ics)</source>
        <translation>Kalender (*.ics)</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>It needs a file to write to.</source>
        <translation>Nötig ist eine Datei.</translation>
    </message>
    <message>
        <source>No closing that is begun must stay open.</source>
        <translation>Keine begonnene Schließstelle muss offen bleiben.</translation>
    </message>
    <message>
        <source>It needs at least one closing.</source>
        <translation>Nötig ist mindestens eine Schließstelle.</translation>
    </message>
    <message>
        <source>A file of this name is there. Press again to replace it.</source>
        <translation>Eine Datei dieses Namens ist da. Noch einmal drücken, um sie zu ersetzen.</translation>
    </message>
    <message>
        <source>Tick all</source>
        <translation>Alle auswählen</translation>
    </message>
    <message>
        <source>Tick none</source>
        <translation>Keine auswählen</translation>
    </message>
    <message>
        <source>There is no folder %1.</source>
        <translation>Den Ordner %1 gibt es nicht.</translation>
    </message>
    <message>
        <source>%1 is a folder; the file needs a name.</source>
        <translation>%1 ist ein Ordner; die Datei braucht einen Namen.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ProjectView</name>
    <message>
        <source>This project is to read only: nothing can be written down.</source>
        <translation>Dieses Projekt ist nur zum Lesen: nichts kann eingetragen werden.</translation>
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
        <translation>Von</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>The signature of %1 on %2 is wrong and counts no more. It stays in the journal.</source>
        <translation>Die Unterschrift von %1 vom %2 ist falsch und zählt nicht mehr. Sie bleibt im Journal.</translation>
    </message>
    <message>
        <source>Withdraw it</source>
        <translation>Zurückziehen</translation>
    </message>
    <message>
        <source>Nobody will sign for the %1.</source>
        <translation>Für „%1“ wird niemand unterschreiben.</translation>
    </message>
    <message>
        <source>Waive it</source>
        <translation>Erlassen</translation>
    </message>
    <message>
        <source>Signature withdrawn</source>
        <translation>Unterschrift zurückgezogen</translation>
    </message>
    <message>
        <source>%1 waived</source>
        <translation>%1 erlassen</translation>
    </message>
    <message>
        <source>It needs a reason, for whoever reads this later.</source>
        <translation>Nötig ist ein Grund, für alle, die es später lesen.</translation>
    </message>
    <message>
        <source>What this is about is no longer on record.</source>
        <translation>Worum es geht, ist nicht mehr aufgezeichnet.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::RecordForm</name>
    <message>
        <source>%1: %2 changed</source>
        <translation>%1: %2 geändert</translation>
    </message>
    <message>
        <source>%1 cannot be empty.</source>
        <translation>%1 darf nicht leer sein.</translation>
    </message>
    <message>
        <source>What was typed here is not on record, as it could not be kept. Leave the field once more when that is possible, or do the same once more to leave without it.</source>
        <translation>Was hier getippt wurde, ist nicht festgehalten: es ging nicht. Das Feld noch einmal verlassen, sobald es wieder geht, oder dasselbe noch einmal tun, um ohne es zu gehen.</translation>
    </message>
    <message>
        <source>%1 lies ahead: only what has happened is recorded.</source>
        <translation>%1 liegt in der Zukunft: eingetragen wird nur, was geschehen ist.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::RecordLine</name>
    <message>
        <source>Nothing on record is called “%1”; the line is as it was before.</source>
        <translation>Nichts Aufgezeichnetes heißt „%1“; die Zeile ist wie zuvor.</translation>
    </message>
    <message>
        <source>Nothing on record is called “%1”.</source>
        <translation>Nichts Aufgezeichnetes heißt „%1“.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::RecordSetEditor</name>
    <message>
        <source>add one more</source>
        <translation>noch eins hinzufügen</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::RepairOptions</name>
    <message>
        <source>a way to repair it</source>
        <translation>eine Möglichkeit</translation>
    </message>
    <message>
        <source>for it</source>
        <translation>dafür</translation>
    </message>
    <message>
        <source>against it</source>
        <translation>dagegen</translation>
    </message>
    <message>
        <source>for: %1</source>
        <translation>dafür: %1</translation>
    </message>
    <message>
        <source>against: %1</source>
        <translation>dagegen: %1</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Squawk %1: %2</source>
        <translation>Beanstandung %1: %2</translation>
    </message>
    <message>
        <source>repair option added</source>
        <translation>Reparaturmöglichkeit hinzugefügt</translation>
    </message>
    <message>
        <source>repair option removed</source>
        <translation>Reparaturmöglichkeit entfernt</translation>
    </message>
    <message>
        <source>A way to repair it</source>
        <translation>Eine Reparaturmöglichkeit</translation>
    </message>
    <message>
        <source>What is for it</source>
        <translation>Was dafür spricht</translation>
    </message>
    <message>
        <source>What is against it</source>
        <translation>Was dagegen spricht</translation>
    </message>
    <message>
        <source>Ways to repair it</source>
        <translation>Reparaturmöglichkeiten</translation>
    </message>
    <message>
        <source>%1 (decided)</source>
        <translation>%1 (entschieden)</translation>
    </message>
    <message>
        <source>Edit</source>
        <translation>Bearbeiten</translation>
    </message>
    <message>
        <source>Edit %1</source>
        <translation>%1 bearbeiten</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>A way to repair it needs a name; what is for and against it is still in the line.</source>
        <translation>Eine Reparaturmöglichkeit braucht einen Namen; Dafür und Dagegen stehen noch in der Zeile.</translation>
    </message>
    <message>
        <source>repair option changed</source>
        <translation>Reparaturmöglichkeit geändert</translation>
    </message>
    <message>
        <source>decision taken back</source>
        <translation>Entscheidung zurückgenommen</translation>
    </message>
    <message>
        <source>repair decided</source>
        <translation>Reparatur entschieden</translation>
    </message>
    <message>
        <source>What is typed in the line is not kept: Enter keeps it, and the same once more drops it.</source>
        <translation>Was in der Zeile steht, ist noch nicht festgehalten: Eingabe hält es fest, dasselbe noch einmal verwirft es.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::RestoreForm</name>
    <message>
        <source>Restore</source>
        <translation>Wiederherstellen</translation>
    </message>
    <message>
        <source>Folder of the backup</source>
        <translation>Ordner der Sicherung</translation>
    </message>
    <message>
        <source>Put it into</source>
        <translation>Ablegen in</translation>
    </message>
    <message>
        <source>A backup becomes a project again, in a new folder. Nothing that is there is touched.</source>
        <translation>Aus einer Sicherung wird wieder ein Projekt, in einem neuen Ordner. Was da ist, wird nicht angerührt.</translation>
    </message>
    <message>
        <source>State of</source>
        <translation>Stand vom</translation>
    </message>
    <message>
        <source>Name of the new folder</source>
        <translation>Name des neuen Ordners</translation>
    </message>
    <message>
        <source>How much is restored</source>
        <translation>Wie viel wiederhergestellt ist</translation>
    </message>
    <message>
        <source>the last backup, %1</source>
        <translation>der letzten Sicherung, %1</translation>
    </message>
    <message>
        <source>It needs the folder of a backup: the one with a records.db in it.</source>
        <translation>Es braucht den Ordner einer Sicherung: den, in dem eine records.db liegt.</translation>
    </message>
    <message>
        <source>It needs a place and a name for the new folder.</source>
        <translation>Es braucht einen Ort und einen Namen für den neuen Ordner.</translation>
    </message>
    <message>
        <source>Cancelled; nothing was left behind.</source>
        <translation>Abgebrochen; es ist nichts zurückgeblieben.</translation>
    </message>
    <message numerus="yes">
        <source>%n files of the backup are missing or no longer what was taken in; “Verify records and files” names them.</source>
        <translation>
            <numerusform>%Ln Datei der Sicherung fehlt oder ist nicht mehr, was aufgenommen wurde; „Aufzeichnungen und Dateien nachprüfen“ nennt sie.</numerusform>
            <numerusform>%Ln Dateien der Sicherung fehlen oder sind nicht mehr, was aufgenommen wurde; „Aufzeichnungen und Dateien nachprüfen“ nennt sie.</numerusform>
        </translation>
    </message>
    <message>
        <source>choose its folder first</source>
        <translation>zuerst den Ordner wählen</translation>
    </message>
    <message>
        <source>no backup is in this folder</source>
        <translation>in diesem Ordner ist keine Sicherung</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::RulesDraft</name>
    <message>
        <source>%1, own copy</source>
        <translation>%1, eigene Kopie</translation>
    </message>
    <message>
        <source>Rules: %1</source>
        <translation>Regeln: %1</translation>
    </message>
    <message>
        <source>%1 is written.</source>
        <translation>%1 ist geschrieben.</translation>
    </message>
    <message>
        <source>%1 could not be written.</source>
        <translation>%1 konnte nicht geschrieben werden.</translation>
    </message>
    <message>
        <source>%1 could not be read.</source>
        <translation>%1 konnte nicht gelesen werden.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>file, what is wrong in it</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::RulesForm</name>
    <message>
        <source>none named</source>
        <translation>keine genannt</translation>
    </message>
    <message>
        <source>One on each line</source>
        <translation>Eines je Zeile</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::RulesView</name>
    <message>
        <source>Show it</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>Use in this project</source>
        <translation>In diesem Projekt verwenden</translation>
    </message>
    <message>
        <source>Keep for other projects</source>
        <translation>Für andere Projekte behalten</translation>
    </message>
    <message>
        <source>Write to a file…</source>
        <translation>In eine Datei schreiben…</translation>
    </message>
    <message>
        <source>Add a line</source>
        <translation>Zeile hinzufügen</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Herausnehmen</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Nach oben</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Nach unten</translation>
    </message>
    <message>
        <source>Begin with other rules</source>
        <translation>Mit anderen Regeln beginnen</translation>
    </message>
    <message>
        <source>The rules, part by part</source>
        <translation>Die Regeln, Teil für Teil</translation>
    </message>
    <message>
        <source>Begin with…</source>
        <translation>Beginnen mit…</translation>
    </message>
    <message>
        <source>the rules of this project</source>
        <translation>den Regeln dieses Projekts</translation>
    </message>
    <message>
        <source>the draft before this one</source>
        <translation>dem Entwurf vor diesem</translation>
    </message>
    <message>
        <source>a file…</source>
        <translation>einer Datei…</translation>
    </message>
    <message>
        <source>Read rules</source>
        <translation>Regeln lesen</translation>
    </message>
    <message>
        <source>Rules (*.json)</source>
        <translation>Regeln (*.json)</translation>
    </message>
    <message>
        <source>Write the rules</source>
        <translation>Die Regeln schreiben</translation>
    </message>
    <message>
        <source>Below are the rules of this project.</source>
        <translation>Unten stehen die Regeln dieses Projekts.</translation>
    </message>
    <message>
        <source>Below is a copy to change; nothing is changed yet.</source>
        <translation>Unten steht eine Kopie zum Ändern; noch ist nichts geändert.</translation>
    </message>
    <message>
        <source>Below is a draft that can be used. Hold points and checks on record stay; closings made later get those of the new rules.</source>
        <translation>Unten steht ein Entwurf, der verwendet werden kann. Vorhandene Haltepunkte und Prüfpunkte bleiben; spätere Schließstellen bekommen die der neuen Regeln.</translation>
    </message>
    <message>
        <source>This project goes by: %1, last gone through on %2. Each rule names its source and how far that was seen; check the current edition with your authority.</source>
        <translation>Dieses Projekt folgt: %1, zuletzt durchgesehen am %2. Jede Regel nennt ihre Quelle und wie weit sie gesehen wurde; prüfen Sie die geltende Ausgabe bei Ihrer Behörde.</translation>
    </message>
    <message>
        <source>Whether a draft was kept here could not be read. What is typed now is kept when it can be; a draft that is there then becomes the one before it.</source>
        <translation>Ob hier ein Entwurf lag, war nicht zu lesen. Was jetzt geschrieben wird, bleibt erhalten, sobald es geht; ein Entwurf, der dann da ist, wird zu dem davor.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SavedFilterMenu</name>
    <message>
        <source>Saved filters</source>
        <translation>Gespeicherte Filter</translation>
    </message>
    <message>
        <source>No filter is saved yet</source>
        <translation>Noch kein Filter gespeichert</translation>
    </message>
    <message>
        <source>Save this filter…</source>
        <translation>Diesen Filter speichern…</translation>
    </message>
    <message>
        <source>A name for this filter; one of the same name is replaced.</source>
        <translation>Ein Name für diesen Filter; einer desselben Namens wird ersetzt.</translation>
    </message>
    <message>
        <source>Rename “%1”…</source>
        <translation>„%1“ umbenennen…</translation>
    </message>
    <message>
        <source>The new name of “%1”.</source>
        <translation>Der neue Name von „%1“.</translation>
    </message>
    <message>
        <source>Delete “%1”</source>
        <translation>„%1“ löschen</translation>
    </message>
    <message>
        <source>The filter “%1” is deleted; no record has changed.</source>
        <translation>Der Filter „%1“ ist gelöscht; keine Aufzeichnung hat sich geändert.</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>A saved filter needs a name.</source>
        <translation>Ein gespeicherter Filter braucht einen Namen.</translation>
    </message>
    <message>
        <source>Saved</source>
        <comment>filters</comment>
        <translation>Gespeichert</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ScanList</name>
    <message>
        <source>None attached. Files can be dropped here.</source>
        <translation>Nichts angehängt. Dateien können hier abgelegt werden.</translation>
    </message>
    <message>
        <source>Attach…</source>
        <translation>Anhängen…</translation>
    </message>
    <message>
        <source>Take off</source>
        <translation>Abnehmen</translation>
    </message>
    <message>
        <source>Attach files</source>
        <translation>Dateien anhängen</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::Section</name>
    <message>
        <source>Show fewer</source>
        <translation>Weniger zeigen</translation>
    </message>
    <message>
        <source>%1  %L2</source>
        <translation>%1  %L2</translation>
    </message>
    <message>
        <source>%L1 more</source>
        <translation>%L1 weitere</translation>
    </message>
    <message numerus="yes">
        <source>%n more are not listed here.</source>
        <translation>
            <numerusform>%Ln weitere steht nicht hier.</numerusform>
            <numerusform>%Ln weitere stehen nicht hier.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SectionActsBar</name>
    <message>
        <source>Attach a file…</source>
        <translation>Datei anhängen…</translation>
    </message>
    <message>
        <source>Attach files</source>
        <translation>Dateien anhängen</translation>
    </message>
    <message>
        <source>Documents and pictures (*.pdf *.jpg *.jpeg *.png *.heic);;All files (*)</source>
        <translation>Dokumente und Bilder (*.pdf *.jpg *.jpeg *.png *.heic);;Alle Dateien (*)</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SectionChoice</name>
    <message>
        <source>Sections</source>
        <translation>Abschnitte</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 %2 open of %3</source>
        <translation>%1 %2 offen von %3</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SectionList</name>
    <message>
        <source>Nothing on record here.</source>
        <translation>Hier ist nichts verzeichnet.</translation>
    </message>
    <message>
        <source>Drawn</source>
        <translation>Als Zeichnung</translation>
    </message>
    <message>
        <source>Which step comes before which, as a picture</source>
        <translation>Welcher Schritt vor welchem kommt, als Bild</translation>
    </message>
    <message>
        <source>%1: %2 added</source>
        <translation>%1: %2 hinzugefügt</translation>
    </message>
    <message>
        <source>Withdraw what is chosen</source>
        <translation>Zurückziehen, was gewählt ist</translation>
    </message>
    <message>
        <source>A new one before the chosen one</source>
        <translation>Ein neuer Eintrag vor dem gewählten</translation>
    </message>
    <message>
        <source>Move up</source>
        <translation>Nach oben verschieben</translation>
    </message>
    <message>
        <source>Move down</source>
        <translation>Nach unten verschieben</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SectionModel</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: not %2</source>
        <translation>%1: nicht %2</translation>
    </message>
    <message>
        <source>%1: %2 changed</source>
        <translation>%1: %2 geändert</translation>
    </message>
    <message>
        <source>“%1” cannot stand under “%2”.</source>
        <translation>„%1“ kann nicht unter „%2“ stehen.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::Session</name>
    <message>
        <source>Undone: %1</source>
        <translation>Zurückgenommen: %1</translation>
    </message>
    <message>
        <source>Done again: %1</source>
        <translation>Wiederholt: %1</translation>
    </message>
    <message>
        <source>%1: cancelled, nothing was kept</source>
        <translation>%1: abgebrochen, nichts wurde behalten</translation>
    </message>
    <message>
        <source>Nothing had to be changed.</source>
        <translation>Es war nichts zu ändern.</translation>
    </message>
    <message>
        <source>Taken back: %1</source>
        <translation>Zurückgenommen: %1</translation>
    </message>
    <message>
        <source>Undone: %1 (%2 records). Redo brings all of it back.</source>
        <translation>Zurückgenommen: %1 (%2 Datensätze). „Wiederholen“ bringt alles zurück.</translation>
    </message>
    <message>
        <source>“%1” changed %2 records. Undo once more to take all of it back; redo brings it again.</source>
        <translation>„%1“ hat %2 Datensätze geändert. Noch einmal „Rückgängig“ nimmt alles zurück; „Wiederholen“ bringt es wieder.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SeveralParts</name>
    <message>
        <source>as they are</source>
        <translation>wie sie sind</translation>
    </message>
    <message>
        <source>Set for all</source>
        <translation>Für alle setzen</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zone</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Construction</source>
        <translation>Bauweise</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Stelle</translation>
    </message>
    <message>
        <source>Shelf</source>
        <translation>Regalfach</translation>
    </message>
    <message>
        <source>Move into</source>
        <translation>Verschieben in</translation>
    </message>
    <message numerus="yes">
        <source>%n parts chosen</source>
        <translation>
            <numerusform>%Ln Teil gewählt</numerusform>
            <numerusform>%Ln Teile gewählt</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing is filled in that could be set.</source>
        <translation>Nichts ist ausgefüllt, das gesetzt werden könnte.</translation>
    </message>
    <message numerus="yes">
        <source>%n parts changed</source>
        <translation>
            <numerusform>%Ln Teil geändert</numerusform>
            <numerusform>%Ln Teile geändert</numerusform>
        </translation>
    </message>
    <message>
        <source>Withdraw all…</source>
        <translation>Alle zurückziehen…</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SheetBox</name>
    <message>
        <source>Choose the photo…</source>
        <translation>Foto wählen…</translation>
    </message>
    <message>
        <source>none yet; it can be added later</source>
        <translation>noch keins; es kann später ergänzt werden</translation>
    </message>
    <message>
        <source>The photographed sheet</source>
        <translation>Das fotografierte Blatt</translation>
    </message>
    <message>
        <source>Pictures and documents (*.jpg *.jpeg *.png *.heic *.pdf);;All files (*)</source>
        <translation>Bilder und Dokumente (*.jpg *.jpeg *.png *.heic *.pdf);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>%1 is not there any more, or cannot be read. Choose it again, or leave it out and add it later.</source>
        <translation>%1 ist nicht mehr da oder kann nicht gelesen werden. Neu wählen, oder weglassen und später ergänzen.</translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation>Weglassen</translation>
    </message>
    <message>
        <source>There is place for one file here: %1 was chosen, the others were not.</source>
        <translation>Hier ist Platz für eine Datei: %1 wurde gewählt, die anderen nicht.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SheetPreview</name>
    <message>
        <source>The photographed sheet</source>
        <translation>Das fotografierte Blatt</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ShiftForm</name>
    <message numerus="yes">
        <source>%n days</source>
        <translation>
            <numerusform>%Ln Tag</numerusform>
            <numerusform>%Ln Tage</numerusform>
        </translation>
    </message>
    <message>
        <source>Shift the times</source>
        <translation>Zeiten verschieben</translation>
    </message>
    <message>
        <source>later by</source>
        <translation>später um</translation>
    </message>
    <message>
        <source>earlier by</source>
        <translation>früher um</translation>
    </message>
    <message>
        <source>the first was taken at</source>
        <translation>das erste entstand um</translation>
    </message>
    <message>
        <source>1h30, 90 min, 2 days</source>
        <translation>1h30, 90 min, 2 Tage</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Wie</translation>
    </message>
    <message>
        <source>Length of time</source>
        <translation>Zeitspanne</translation>
    </message>
    <message>
        <source>First taken at</source>
        <translation>Erstes aufgenommen am</translation>
    </message>
    <message>
        <source>Shift the times of: %1</source>
        <translation>Zeiten verschieben: %1</translation>
    </message>
    <message>
        <source>It is not known when they were taken; there is no time to shift.</source>
        <translation>Wann sie aufgenommen wurden, ist nicht bekannt; es gibt keine Zeit zu verschieben.</translation>
    </message>
    <message>
        <source>Of none of them the time of day is known: say the day alone.</source>
        <translation>Von keinem ist die Uhrzeit bekannt: nur den Tag angeben.</translation>
    </message>
    <message>
        <source>By how much? Write it as 1h30, 90 min or 2 days.</source>
        <translation>Um wie viel? Etwa 1h30, 90 min oder 2 Tage.</translation>
    </message>
    <message>
        <source>So far they would lie outside the years 1900 to 2199.</source>
        <translation>So weit verschoben lägen sie außerhalb der Jahre 1900 bis 2199.</translation>
    </message>
    <message>
        <source>That is what their times are already.</source>
        <translation>Das sind ihre Zeiten schon.</translation>
    </message>
    <message>
        <source>Only their days are known: shift them by whole days.</source>
        <translation>Nur ihre Tage sind bekannt: um ganze Tage verschieben.</translation>
    </message>
    <message>
        <source>First: %1 becomes %2.</source>
        <translation>Das erste: aus %1 wird %2.</translation>
    </message>
    <message>
        <source>Last: %1 becomes %2.</source>
        <translation>Das letzte: aus %1 wird %2.</translation>
    </message>
    <message numerus="yes">
        <source>%n would lie ahead of now.</source>
        <translation>
            <numerusform>%Ln läge in der Zukunft.</numerusform>
            <numerusform>%Ln lägen in der Zukunft.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n stay as they are: their time is not known.</source>
        <translation>
            <numerusform>%Ln bleibt, wie es ist: seine Zeit ist nicht bekannt.</numerusform>
            <numerusform>%Ln bleiben, wie sie sind: ihre Zeit ist nicht bekannt.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: times shifted back by %2</source>
        <translation>%1: Zeiten um %2 zurück verschoben</translation>
    </message>
    <message>
        <source>%1: times shifted forward by %2</source>
        <translation>%1: Zeiten um %2 vor verschoben</translation>
    </message>
    <message numerus="yes">
        <source>%n belong to log entries and stay with them.</source>
        <translation>
            <numerusform>%Ln gehört zu einem Eintrag des Bautagebuchs und bleibt bei ihm.</numerusform>
            <numerusform>%Ln gehören zu Einträgen des Bautagebuchs und bleiben bei ihnen.</numerusform>
        </translation>
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
        <translation>Zur Aufzeichnung einer Zeile</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <source>Press the button of a row</source>
        <translation>Knopf einer Zeile drücken</translation>
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
        <translation>Eintragen, was ein Formular sagt</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Leave a form, a closing, this sheet</source>
        <translation>Formular, Schließstelle oder diese Liste verlassen</translation>
    </message>
    <message>
        <source>Menu, Shift+F10</source>
        <translation>Menü, Umschalt+F10</translation>
    </message>
    <message>
        <source>What can be done with a row</source>
        <translation>Was mit einer Zeile getan werden kann</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ShowsBar</name>
    <message numerus="yes">
        <source>%n photos</source>
        <translation>
            <numerusform>%Ln Foto</numerusform>
            <numerusform>%Ln Fotos</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1: shows %2</source>
        <translation>%1: zeigt %2</translation>
    </message>
    <message>
        <source>%1: does not show %2</source>
        <translation>%1: zeigt nicht %2</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SignOffForm</name>
    <message>
        <source>Record the signature</source>
        <translation>Unterschrift eintragen</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>Unterschrieben von</translation>
    </message>
    <message>
        <source>Credential</source>
        <translation>Nachweis</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Am</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Looked at</source>
        <translation>Angesehen</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <source>Signed sheet</source>
        <translation>Unterschriebenes Blatt</translation>
    </message>
    <message>
        <source>Signature for the %1</source>
        <translation>Unterschrift: %1</translation>
    </message>
    <message>
        <source>Accepted afterwards: %1</source>
        <translation>Nachträglich angenommen: %1</translation>
    </message>
    <message>
        <source>%1 signed</source>
        <translation>%1 unterschrieben</translation>
    </message>
    <message>
        <source>%1 accepted afterwards</source>
        <translation>%1 nachträglich angenommen</translation>
    </message>
    <message>
        <source>Answer to what changed since the signature: %1</source>
        <translation>Antwort auf das, was sich seit der Unterschrift geändert hat: %1</translation>
    </message>
    <message>
        <source>What was to be signed is no longer on record.</source>
        <translation>Was unterschrieben werden sollte, ist nicht mehr aufgezeichnet.</translation>
    </message>
    <message>
        <source>“%1” was closed on %2. What was signed after that does not count for it; “Accepted afterwards”, beside the closing, is what does.</source>
        <translation>„%1“ wurde am %2 geschlossen. Was danach unterschrieben wurde, zählt dafür nicht; es zählt „Nachträglich angenommen“ bei der Schließstelle.</translation>
    </message>
    <message>
        <source>“%1” was closed on %2: what accepts it afterwards is not of a day before that.</source>
        <translation>„%1“ wurde am %2 geschlossen: Was das nachträglich annimmt, ist nicht von einem Tag davor.</translation>
    </message>
    <message>
        <source>%1 not accepted afterwards</source>
        <translation>%1 nachträglich nicht angenommen</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SignedQuestion</name>
    <message>
        <source>Did this change what was inspected?</source>
        <translation>Hat das Geprüftes verändert?</translation>
    </message>
    <message>
        <source>“%1” is signed for and still open. Did this change what was inspected?</source>
        <translation>„%1“ ist unterschrieben und noch offen. Hat das Geprüftes verändert?</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nicht gesagt</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>this is the closing itself</source>
        <translation>das ist das Schließen selbst</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SquawkActForm</name>
    <message>
        <source>A correction needs to be written down.</source>
        <translation>Eine Behebung muss aufgeschrieben werden.</translation>
    </message>
    <message>
        <source>An acceptance needs its basis: a letter, a drawing, a rule.</source>
        <translation>Eine Annahme braucht eine Grundlage: ein Schreiben, eine Zeichnung, eine Regel.</translation>
    </message>
    <message>
        <source>Say why, so that the record still makes sense in a year.</source>
        <translation>Sagen Sie, warum, damit die Aufzeichnung in einem Jahr noch verständlich ist.</translation>
    </message>
    <message>
        <source>Say in a few words what is wrong.</source>
        <translation>In wenigen Worten sagen, was nicht stimmt.</translation>
    </message>
    <message>
        <source>“%1” is no day.</source>
        <translation>„%1“ ist kein Tag.</translation>
    </message>
    <message>
        <source>On which day?</source>
        <translation>An welchem Tag?</translation>
    </message>
    <message>
        <source>Somebody has to be named.</source>
        <translation>Jemand muss genannt werden.</translation>
    </message>
    <message>
        <source>“%1” is not among the people on record; add the name there first, with the role.</source>
        <translation>„%1“ ist nicht unter den verzeichneten Personen; fügen Sie den Namen dort zuerst mit der Rolle hinzu.</translation>
    </message>
    <message>
        <source>“%1” is no length of time; write it as 2h15 or 90m.</source>
        <translation>„%1“ ist keine Dauer; schreiben Sie sie als 2h15 oder 90m.</translation>
    </message>
    <message>
        <source>Squawk %1 fixed and checked</source>
        <translation>Beanstandung %1 behoben und geprüft</translation>
    </message>
    <message>
        <source>Squawk %1 fixed</source>
        <translation>Beanstandung %1 behoben</translation>
    </message>
    <message>
        <source>Squawk %1 verified</source>
        <translation>Beanstandung %1 nachgeprüft</translation>
    </message>
    <message>
        <source>Squawk %1 accepted</source>
        <translation>Beanstandung %1 angenommen</translation>
    </message>
    <message>
        <source>%1: acceptance taken back: %2</source>
        <translation>%1: Annahme zurückgenommen: %2</translation>
    </message>
    <message>
        <source>%1: verification taken back: %2</source>
        <translation>%1: Nachprüfung zurückgenommen: %2</translation>
    </message>
    <message>
        <source>%1: not fixed after all: %2</source>
        <translation>%1: doch nicht behoben: %2</translation>
    </message>
    <message>
        <source>Squawk %1: one step back</source>
        <translation>Beanstandung %1: eine Stufe zurück</translation>
    </message>
    <message>
        <source>As squawk %1, which was dealt with before. %2</source>
        <translation>Wie Beanstandung %1, die schon erledigt war. %2</translation>
    </message>
    <message>
        <source>Squawk %1 has come back</source>
        <translation>Beanstandung %1 ist wiedergekommen</translation>
    </message>
    <message>
        <source>Squawk %1: what was done about it?</source>
        <translation>Beanstandung %1: was wurde dagegen getan?</translation>
    </message>
    <message>
        <source>Squawk %1: who looked at the correction?</source>
        <translation>Beanstandung %1: wer hat die Behebung angesehen?</translation>
    </message>
    <message>
        <source>Squawk %1 stays as it is: who accepts that, and on what basis?</source>
        <translation>Beanstandung %1 bleibt, wie sie ist: wer nimmt das an, und auf welcher Grundlage?</translation>
    </message>
    <message>
        <source>Squawk %1: why is the last step taken back?</source>
        <translation>Beanstandung %1: warum wird die letzte Stufe zurückgenommen?</translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>Squawk %1 has come back: what is seen now?</source>
        <translation>Beanstandung %1 ist wiedergekommen: was ist jetzt zu sehen?</translation>
    </message>
    <message>
        <source>Write down a new squawk</source>
        <translation>Neue Beanstandung aufschreiben</translation>
    </message>
    <message>
        <source>Correction</source>
        <translation>Behebung</translation>
    </message>
    <message>
        <source>Basis</source>
        <translation>Grundlage</translation>
    </message>
    <message>
        <source>a letter, a drawing, a rule</source>
        <translation>ein Schreiben, eine Zeichnung, eine Regel</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Am</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Worked for</source>
        <translation>Gearbeitet</translation>
    </message>
    <message>
        <source>optional, as 2h15 or 90m; goes into the log</source>
        <translation>freiwillig, als 2h15 oder 90m; kommt ins Bautagebuch</translation>
    </message>
    <message>
        <source>Mark as fixed</source>
        <translation>Als behoben eintragen</translation>
    </message>
    <message>
        <source>Mark as fixed and checked</source>
        <translation>Als behoben und geprüft eintragen</translation>
    </message>
    <message>
        <source>Mark as verified</source>
        <translation>Als nachgeprüft eintragen</translation>
    </message>
    <message>
        <source>Mark as accepted</source>
        <translation>Als angenommen eintragen</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SquawkCapture</name>
    <message>
        <source>New squawk</source>
        <translation>Neue Beanstandung</translation>
    </message>
    <message>
        <source>Photos…</source>
        <translation>Fotos…</translation>
    </message>
    <message>
        <source>Files can also be dropped here, or pasted into the line</source>
        <translation>Dateien lassen sich auch hierher ziehen oder in die Zeile einfügen</translation>
    </message>
    <message>
        <source>Photos to take in</source>
        <translation>Zu übernehmende Fotos</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Leeren</translation>
    </message>
    <message>
        <source>Write it down</source>
        <translation>Aufschreiben</translation>
    </message>
    <message>
        <source>Enter; Ctrl+Enter also opens it</source>
        <translation>Eingabe; Strg+Eingabe öffnet sie auch</translation>
    </message>
    <message>
        <source>no part</source>
        <translation>kein Teil</translation>
    </message>
    <message>
        <source>%1 (the part you are looking at)</source>
        <translation>%1 (das Teil, das gerade gezeigt wird)</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>Squawk %1: “%2” · %3 · %4 · found %5</source>
        <translation>Beanstandung %1: „%2“ · %3 · %4 · gefunden %5</translation>
    </message>
    <message>
        <source>In front of the colon a part, a severity, a day, as far as you like; behind it what is wrong.</source>
        <translation>Vor dem Doppelpunkt Teil, Schwere und Tag, soviel man mag; dahinter, was nicht stimmt.</translation>
    </message>
    <message>
        <source>Squawk %1 written down: %2</source>
        <translation>Beanstandung %1 aufgeschrieben: %2</translation>
    </message>
    <message>
        <source>The photos that were chosen for a squawk are not taken in. Write it down, press “Clear”, or do the same once more to leave without them.</source>
        <translation>Die Fotos, die für eine Beanstandung gewählt wurden, sind nicht übernommen. Aufschreiben, „Leeren“ drücken oder dasselbe noch einmal tun, um ohne sie zu gehen.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SquawkEditor</name>
    <message>
        <source>Found on</source>
        <translation>Gefunden am</translation>
    </message>
    <message>
        <source>Reached through</source>
        <translation>Erreichbar durch</translation>
    </message>
    <message>
        <source>Estimate</source>
        <translation>Schätzung</translation>
    </message>
    <message>
        <source>Verify</source>
        <translation>Nachprüfen</translation>
    </message>
    <message>
        <source>Accept as it is</source>
        <translation>Unverändert annehmen</translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation>Zurückziehen</translation>
    </message>
    <message>
        <source>Squawk %1: %2</source>
        <translation>Beanstandung %1: %2</translation>
    </message>
    <message>
        <source>Take back…</source>
        <translation>Zurücknehmen…</translation>
    </message>
    <message>
        <source>It came back…</source>
        <translation>Wiedergekommen…</translation>
    </message>
    <message>
        <source>F in the list</source>
        <translation>F in der Liste</translation>
    </message>
    <message>
        <source>One step back: not accepted, not verified or not fixed after all</source>
        <translation>Eine Stufe zurück: doch nicht angenommen, nachgeprüft oder behoben</translation>
    </message>
    <message>
        <source>Writes down a new squawk like this one; this one keeps its dates</source>
        <translation>Schreibt eine neue Beanstandung wie diese auf; diese behält ihre Tage</translation>
    </message>
    <message>
        <source>Mark as fixed</source>
        <translation>Als behoben eintragen</translation>
    </message>
    <message>
        <source>Mark as fixed and checked</source>
        <translation>Als behoben und geprüft eintragen</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SquawkFilterBar</name>
    <message>
        <source>Clear</source>
        <translation>Leeren</translation>
    </message>
    <message>
        <source>Type to filter</source>
        <translation>Tippen zum Filtern</translation>
    </message>
    <message>
        <source>Filter by words</source>
        <translation>Nach Wörtern filtern</translation>
    </message>
    <message>
        <source>any part</source>
        <translation>jedes Teil</translation>
    </message>
    <message>
        <source>Filter by part and what is below it</source>
        <translation>Nach Teil und allem darunter filtern</translation>
    </message>
    <message>
        <source>Clear the filter</source>
        <translation>Filter leeren</translation>
    </message>
    <message>
        <source>Filter by how far they are dealt with</source>
        <translation>Nach dem Stand filtern</translation>
    </message>
    <message>
        <source>Filter by severity</source>
        <translation>Nach Schwere filtern</translation>
    </message>
    <message>
        <source>any severity</source>
        <translation>jede Schwere</translation>
    </message>
    <message>
        <source>Filter by who verifies</source>
        <translation>Nach Nachprüfendem filtern</translation>
    </message>
    <message>
        <source>anybody to verify</source>
        <translation>durch jeden nachzuprüfen</translation>
    </message>
    <message>
        <source>Filter by reach</source>
        <translation>Nach Erreichbarkeit filtern</translation>
    </message>
    <message>
        <source>in and out of reach</source>
        <translation>erreichbar und nicht</translation>
    </message>
    <message>
        <source>Filter by inspection</source>
        <translation>Nach Prüfung filtern</translation>
    </message>
    <message>
        <source>any inspection</source>
        <translation>jede Prüfung</translation>
    </message>
    <message>
        <source>More filters</source>
        <translation>Mehr Filter</translation>
    </message>
    <message>
        <source>More</source>
        <comment>filters</comment>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>More filters: by severity, part, who verifies it, inspection and reach</source>
        <translation>Mehr Filter: nach Schwere, Teil, Nachprüfendem, Prüfung und Erreichbarkeit</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SquawkLineEdit</name>
    <message>
        <source>New squawk, as in “left aileron: overdriven rivet at rib 3”</source>
        <translation>Neue Beanstandung, etwa „linkes Querruder: überschlagener Niet an Rippe 3“</translation>
    </message>
    <message>
        <source>New squawk</source>
        <translation>Neue Beanstandung</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SquawkModel</name>
    <message>
        <source>verified %1</source>
        <translation>nachgeprüft am %1</translation>
    </message>
    <message>
        <source>accepted as it is %1</source>
        <translation>unverändert angenommen am %1</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>fixed, the inspector has to look</source>
        <translation>behoben, der Prüfer muss nachsehen</translation>
    </message>
    <message>
        <source>fixed, the adviser has to look</source>
        <translation>behoben, der Berater muss nachsehen</translation>
    </message>
    <message>
        <source>fixed, to be checked</source>
        <translation>behoben, zu prüfen</translation>
    </message>
    <message>
        <source>last chance before %1</source>
        <translation>letzte Gelegenheit vor %1</translation>
    </message>
    <message>
        <source>out of reach: open %1</source>
        <translation>nicht erreichbar: %1 öffnen</translation>
    </message>
    <message>
        <source>on papers</source>
        <translation>in Unterlagen</translation>
    </message>
    <message>
        <source>Soon out of reach (%1)</source>
        <translation>Bald nicht erreichbar (%1)</translation>
    </message>
    <message>
        <source>Out of reach (%1)</source>
        <translation>Nicht erreichbar (%1)</translation>
    </message>
    <message>
        <source>In reach (%1)</source>
        <translation>Erreichbar (%1)</translation>
    </message>
    <message>
        <source>Done (%1)</source>
        <translation>Erledigt (%1)</translation>
    </message>
    <message numerus="yes">
        <source>last chance before %1 and %n more</source>
        <translation>
            <numerusform>letzte Gelegenheit vor %1 und %Ln weiteren</numerusform>
            <numerusform>letzte Gelegenheit vor %1 und %Ln weiteren</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>out of reach: open %1 and %n more</source>
        <translation>
            <numerusform>nicht erreichbar: %1 und %Ln weitere öffnen</numerusform>
            <numerusform>nicht erreichbar: %1 und %Ln weitere öffnen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SquawkPictures</name>
    <message>
        <source>Add photos…</source>
        <translation>Fotos hinzufügen…</translation>
    </message>
    <message>
        <source>Photos before the repair</source>
        <translation>Fotos vor der Reparatur</translation>
    </message>
    <message>
        <source>Photos after the repair</source>
        <translation>Fotos nach der Reparatur</translation>
    </message>
    <message>
        <source>No photo of the defect yet. Drop some here.</source>
        <translation>Noch kein Foto des Mangels. Hierher ziehen.</translation>
    </message>
    <message>
        <source>No photo of the repair yet. Drop some here.</source>
        <translation>Noch kein Foto der Reparatur. Hierher ziehen.</translation>
    </message>
    <message>
        <source>Add photos of the defect</source>
        <translation>Fotos des Mangels hinzufügen</translation>
    </message>
    <message>
        <source>Add photos of the repair</source>
        <translation>Fotos der Reparatur hinzufügen</translation>
    </message>
    <message>
        <source>It shows the repair</source>
        <translation>Es zeigt die Reparatur</translation>
    </message>
    <message>
        <source>It shows the defect</source>
        <translation>Es zeigt den Mangel</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Nachher</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>A photo shows the repair</source>
        <translation>Ein Foto zeigt die Reparatur</translation>
    </message>
    <message>
        <source>A photo shows the defect</source>
        <translation>Ein Foto zeigt den Mangel</translation>
    </message>
    <message>
        <source>Look at the photo</source>
        <translation>Das Foto ansehen</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SquawkReach</name>
    <message numerus="yes">
        <source>Out of reach. To get at it, open again:</source>
        <translation>
            <numerusform>Nicht erreichbar. Um heranzukommen, wieder öffnen:</numerusform>
            <numerusform>Nicht erreichbar. Um heranzukommen, wieder öffnen:</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Soon out of reach. This is the last chance before:</source>
        <translation>
            <numerusform>Bald nicht erreichbar. Dies ist die letzte Gelegenheit vor:</numerusform>
            <numerusform>Bald nicht erreichbar. Dies ist die letzte Gelegenheit vor:</numerusform>
        </translation>
    </message>
    <message>
        <source>Go to the closing %1</source>
        <translation>Zur Schließstelle %1</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SquawkWork</name>
    <message>
        <source>Work on it</source>
        <translation>Arbeit daran</translation>
    </message>
    <message>
        <source>No work on it is in the log yet.</source>
        <translation>Es ist noch keine Arbeit daran eingetragen.</translation>
    </message>
    <message>
        <source>Log work on it, as in “45m: drilled out” or “2h15 yesterday”</source>
        <translation>Eintragen, etwa „45m: ausgebohrt“ oder „2h15 gestern“</translation>
    </message>
    <message>
        <source>Log work on this squawk</source>
        <translation>Arbeit an dieser Beanstandung eintragen</translation>
    </message>
    <message>
        <source>not written down</source>
        <translation>nicht aufgeschrieben</translation>
    </message>
    <message>
        <source>%1 worked; the estimate was %2</source>
        <translation>%1 gearbeitet; geschätzt waren %2</translation>
    </message>
    <message>
        <source>%1 worked</source>
        <translation>%1 gearbeitet</translation>
    </message>
    <message>
        <source>no time written down</source>
        <translation>keine Zeit aufgeschrieben</translation>
    </message>
    <message>
        <source>Work logged on squawk %1</source>
        <translation>Arbeit an Beanstandung %1 eingetragen</translation>
    </message>
    <message>
        <source>The clock has run for %1. How long was really worked on it?</source>
        <translation>Die Uhr lief %1. Wie lange wurde wirklich daran gearbeitet?</translation>
    </message>
    <message>
        <source>Stop work</source>
        <translation>Arbeit beenden</translation>
    </message>
    <message>
        <source>Start work</source>
        <translation>Arbeit beginnen</translation>
    </message>
    <message>
        <source>At work on it since %1: %2</source>
        <translation>Daran bei der Arbeit seit %1: %2</translation>
    </message>
    <message>
        <source>The clock runs on something else; stop it in the log first.</source>
        <translation>Die Uhr läuft für etwas anderes; erst im Bautagebuch anhalten.</translation>
    </message>
    <message>
        <source>the clock is stopped</source>
        <translation>die Uhr wird angehalten</translation>
    </message>
    <message>
        <source>Not logged yet: %1 Enter once more logs it like this.</source>
        <translation>Noch nicht eingetragen: %1 Noch einmal Eingabe trägt es so ein.</translation>
    </message>
    <message>
        <source>Not logged yet: %1</source>
        <translation>Noch nicht eingetragen: %1</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>„%1“</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SquawksPage</name>
    <message>
        <source>Squawks</source>
        <translation>Beanstandungen</translation>
    </message>
    <message>
        <source>Defects that are found will be listed here, those first that will soon be out of reach. Write the first one in the line above.</source>
        <translation>Hier stehen gefundene Mängel, zuerst die, die bald nicht mehr erreichbar sind. Schreiben Sie den ersten in die Zeile oben.</translation>
    </message>
    <message numerus="yes">
        <source>%n squawks</source>
        <translation>
            <numerusform>%Ln Beanstandung</numerusform>
            <numerusform>%Ln Beanstandungen</numerusform>
        </translation>
    </message>
    <message>
        <source>No squawk matches the filter.</source>
        <translation>Keine Beanstandung passt zum Filter.</translation>
    </message>
    <message>
        <source>Clear the filter</source>
        <translation>Filter leeren</translation>
    </message>
    <message>
        <source>Print the list…</source>
        <translation>Liste drucken…</translation>
    </message>
    <message>
        <source>CSV…</source>
        <translation>CSV…</translation>
    </message>
    <message>
        <source>Write the list as CSV</source>
        <translation>Liste als CSV schreiben</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>CSV for a spreadsheet (*.csv)</source>
        <translation>CSV für eine Tabelle (*.csv)</translation>
    </message>
    <message>
        <source>Squawks %1</source>
        <translation>Beanstandungen %1</translation>
    </message>
    <message>
        <source>Write the list</source>
        <translation>Liste schreiben</translation>
    </message>
    <message numerus="yes">
        <source>%1; of all, %n soon out of reach</source>
        <translation>
            <numerusform>%1; von allen %Ln bald nicht erreichbar</numerusform>
            <numerusform>%1; von allen %Ln bald nicht erreichbar</numerusform>
        </translation>
    </message>
    <message>
        <source>Look for words in the list</source>
        <translation>Wörter in der Liste suchen</translation>
    </message>
    <message>
        <source>Mark as fixed and checked</source>
        <translation>Als behoben und geprüft eintragen</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::StandingPanel</name>
    <message numerus="yes">
        <source>stay open, work left</source>
        <translation>
            <numerusform>bleibt offen, noch Arbeit</numerusform>
            <numerusform>bleiben offen, noch Arbeit</numerusform>
        </translation>
    </message>
    <message>
        <source>nothing on record against closing</source>
        <translation>nichts verzeichnet gegen das Schließen</translation>
    </message>
    <message numerus="yes">
        <source>closed</source>
        <translation>
            <numerusform>geschlossen</numerusform>
            <numerusform>geschlossen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>closed with gaps</source>
        <translation>
            <numerusform>mit Lücken geschlossen</numerusform>
            <numerusform>mit Lücken geschlossen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>not begun</source>
        <translation>
            <numerusform>nicht begonnen</numerusform>
            <numerusform>nicht begonnen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>stay open, wait for somebody from outside</source>
        <translation>
            <numerusform>bleibt offen, wartet auf jemanden von außen</numerusform>
            <numerusform>bleiben offen, warten auf jemanden von außen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>stay open, wait for your signature</source>
        <translation>
            <numerusform>bleibt offen, wartet auf Ihre Unterschrift</numerusform>
            <numerusform>bleiben offen, warten auf Ihre Unterschrift</numerusform>
        </translation>
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
        <translation>Projektordner öffnen…</translation>
    </message>
    <message>
        <source>Open the demo</source>
        <translation>Beispiel öffnen</translation>
    </message>
    <message>
        <source>An invented aeroplane, two and a half years in, to look around and try everything.</source>
        <translation>Ein erfundenes Flugzeug nach zweieinhalb Jahren Bau, zum Umsehen und Ausprobieren.</translation>
    </message>
    <message>
        <source>What was built, what was found, what must stay open, and who signed: the records of one aircraft, in one folder.</source>
        <translation>Was gebaut wurde, was gefunden wurde, was offen bleiben muss und wer unterschrieb: die Aufzeichnungen eines Flugzeugs in einem Ordner.</translation>
    </message>
    <message>
        <source>Open again</source>
        <translation>Wieder öffnen</translation>
    </message>
    <message>
        <source>Restore a backup…</source>
        <translation>Sicherung wiederherstellen…</translation>
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
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::StateColumn</name>
    <message>
        <source>Show fewer</source>
        <translation>Weniger zeigen</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation>%1 weitere</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::StepPicture</name>
    <message>
        <source>Order of the steps</source>
        <translation>Reihenfolge der Schritte</translation>
    </message>
    <message>
        <source>%1, after %2</source>
        <translation>%1, nach %2</translation>
    </message>
    <message>
        <source>Go to the step that has to wait for it, and press W again.</source>
        <translation>Zu dem Schritt gehen, der darauf warten muss, und wieder W drücken.</translation>
    </message>
    <message>
        <source>These are too many steps for a picture. Choose a part further down, or leave out what lies below.</source>
        <translation>Das sind zu viele Schritte für ein Bild. Wählen Sie ein Teil weiter unten, oder lassen Sie weg, was darunter liegt.</translation>
    </message>
    <message>
        <source>One step waits for another</source>
        <translation>Ein Schritt wartet auf einen anderen</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::StopForm</name>
    <message>
        <source>as in the line for a new entry: with names, “done” and steps</source>
        <translation>wie in der Zeile für einen neuen Eintrag: mit Namen, „erledigt“ und Schritten</translation>
    </message>
    <message>
        <source>Log it</source>
        <translation>Eintragen</translation>
    </message>
    <message>
        <source>Keep it running</source>
        <translation>Weiterlaufen lassen</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Erledigt</translation>
    </message>
    <message>
        <source>Stopped at</source>
        <translation>Aufgehört um</translation>
    </message>
    <message>
        <source>Worked for</source>
        <translation>Gearbeitet</translation>
    </message>
    <message>
        <source>From %1 on the computer slept or the program was closed, for %2. When did work stop?</source>
        <translation>Ab %1 schlief der Computer oder das Programm war zu, %2 lang. Wann endete die Arbeit?</translation>
    </message>
    <message>
        <source>The clock has run for %1. When did work stop?</source>
        <translation>Die Uhr lief %1. Wann endete die Arbeit?</translation>
    </message>
    <message>
        <source>What was done?</source>
        <translation>Was wurde getan?</translation>
    </message>
    <message>
        <source>How long did it take? Write it as 2h15 or 90m, at most a day.</source>
        <translation>Wie lange hat es gedauert? Schreiben Sie es als 2h15 oder 90m, höchstens ein Tag.</translation>
    </message>
    <message>
        <source>When did work stop? Write it as 17:30; it cannot lie ahead.</source>
        <translation>Wann endete die Arbeit? Schreiben Sie es als 17:30; es kann nicht in der Zukunft liegen.</translation>
    </message>
    <message>
        <source>%1 “Log it” once more logs it like this.</source>
        <translation>%1 Noch einmal „Eintragen“ trägt es so ein.</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::StoresPage</name>
    <message>
        <source>Packing lists</source>
        <translation>Packlisten</translation>
    </message>
    <message>
        <source>Materials</source>
        <translation>Materialien</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Werkzeuge</translation>
    </message>
    <message>
        <source>Expenses</source>
        <translation>Ausgaben</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SumPanel</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Basis</source>
        <translation>Grundlage</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>How well it is known</source>
        <translation>Wie gut es bekannt ist</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::TaskPanel</name>
    <message>
        <source>Parts it was done on</source>
        <translation>Teile, an denen es ausgeführt wurde</translation>
    </message>
    <message>
        <source>Pictures named for it</source>
        <translation>Dafür benannte Bilder</translation>
    </message>
    <message>
        <source>Log entries of its parts</source>
        <translation>Bautagebuch zu seinen Teilen</translation>
    </message>
    <message>
        <source>No log entry on its parts.</source>
        <translation>Kein Eintrag im Bautagebuch zu seinen Teilen.</translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation>Zurückziehen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>section: task</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>No picture shows the builder at work on it. A photo of the parts named above that is marked “builder at work” counts, and so does one attached here.</source>
        <translation>Kein Bild zeigt den Erbauer bei dieser Arbeit. Ein Foto der oben genannten Teile mit der Angabe „Erbauer bei der Arbeit“ zählt, ebenso eines, das hier angehängt wird.</translation>
    </message>
    <message>
        <source>%1: tenths</source>
        <translation>%1: Zehntel</translation>
    </message>
    <message>
        <source>%1: does not apply</source>
        <translation>%1: trifft nicht zu</translation>
    </message>
    <message>
        <source>%1: picture taken off</source>
        <translation>%1: Bild abgenommen</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::TenthsEditor</name>
    <message>
        <source>Keep the tenths</source>
        <translation>Zehntel behalten</translation>
    </message>
    <message>
        <source>A: maker of kit or part</source>
        <translation>A: Hersteller von Bausatz oder Teil</translation>
    </message>
    <message>
        <source>B: paid help</source>
        <translation>B: bezahlte Hilfe</translation>
    </message>
    <message>
        <source>C: builder, assembly</source>
        <translation>C: Erbauer, Montage</translation>
    </message>
    <message>
        <source>D: builder, fabrication</source>
        <translation>D: Erbauer, Anfertigung</translation>
    </message>
    <message>
        <source>Does not apply; tenths make it apply.</source>
        <translation>Trifft nicht zu; mit Zehnteln trifft es zu.</translation>
    </message>
    <message>
        <source>Together 10 tenths.</source>
        <translation>Zusammen 10 Zehntel.</translation>
    </message>
    <message>
        <source>Mark as not applying</source>
        <translation>Nicht zutreffend</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::TimerBar</name>
    <message>
        <source>Leave that time out</source>
        <translation>Diese Zeit weglassen</translation>
    </message>
    <message>
        <source>Stop work</source>
        <translation>Arbeit beenden</translation>
    </message>
    <message>
        <source>Note while at work</source>
        <translation>Notiz während der Arbeit</translation>
    </message>
    <message>
        <source>Paused after %1 of work</source>
        <translation>Pause nach %1 Arbeit</translation>
    </message>
    <message>
        <source>Paused after %1 of work on %2</source>
        <translation>Pause nach %1 Arbeit an %2</translation>
    </message>
    <message>
        <source>At work since %1: %2. Of it the computer slept, or the program was closed, for %3.</source>
        <translation>Bei der Arbeit seit %1: %2. Davon schlief der Computer oder war das Programm zu: %3.</translation>
    </message>
    <message>
        <source>The clock has run for %1, since %2. When did work stop?</source>
        <translation>Die Uhr lief %1, seit %2. Wann endete die Arbeit?</translation>
    </message>
    <message>
        <source>At work since %1: %2</source>
        <translation>Bei der Arbeit seit %1: %2</translation>
    </message>
    <message>
        <source>At work on %1 since %2: %3</source>
        <translation>Bei der Arbeit an %1 seit %2: %3</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::TodayActs</name>
    <message>
        <source>The clock runs already, since %1. Stop it on the Log page first, so that its time is not lost.</source>
        <translation>Die Uhr läuft schon, seit %1. Halten Sie sie zuerst auf der Seite Bautagebuch an, damit die Zeit nicht verloren geht.</translation>
    </message>
    <message>
        <source>The clock runs: %1</source>
        <translation>Die Uhr läuft: %1</translation>
    </message>
    <message>
        <source>Take in photos</source>
        <translation>Fotos übernehmen</translation>
    </message>
    <message>
        <source>Photos (*.jpg *.jpeg *.png *.heic);;All files (*)</source>
        <translation>Fotos (*.jpg *.jpeg *.png *.heic);;Alle Dateien (*)</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::TodayPage</name>
    <message>
        <source>Stays open</source>
        <translation>Bleibt offen</translation>
    </message>
    <message>
        <source>No closing that was begun has to stay open.</source>
        <translation>Keine begonnene Schließstelle muss offen bleiben.</translation>
    </message>
    <message>
        <source>Workable now</source>
        <translation>Jetzt machbar</translation>
    </message>
    <message>
        <source>Before it is out of reach</source>
        <translation>Bevor es unerreichbar ist</translation>
    </message>
    <message>
        <source>Nothing on record would be buried by the next closing.</source>
        <translation>Das nächste Schließen würde nichts Verzeichnetes begraben.</translation>
    </message>
    <message>
        <source>Needs attention</source>
        <translation>Braucht Aufmerksamkeit</translation>
    </message>
    <message>
        <source>Nothing on record.</source>
        <translation>Nichts verzeichnet.</translation>
    </message>
    <message>
        <source>Here stands each evening what must stay open and what can be worked on. It begins with a part and the closing that will hide it.</source>
        <translation>Hier steht jeden Abend, was offen bleiben muss und woran gearbeitet werden kann. Es beginnt mit einem Teil und der Schließstelle, die es verdecken wird.</translation>
    </message>
    <message>
        <source>Make the first closing</source>
        <translation>Erste Schließstelle anlegen</translation>
    </message>
    <message>
        <source>Nothing is recorded yet.</source>
        <translation>Noch ist nichts verzeichnet.</translation>
    </message>
    <message>
        <source>The clock runs since %1.</source>
        <translation>Die Uhr läuft seit %1.</translation>
    </message>
    <message>
        <source>No step is recorded. Steps are optional; of those written down, this list says which can be worked on and what each of them unlocks.</source>
        <translation>Kein Schritt ist verzeichnet. Schritte sind freiwillig; von den aufgeschriebenen sagt diese Liste, welche machbar sind und was jeder freigibt.</translation>
    </message>
    <message>
        <source>Every step on record is done, or has to wait for another.</source>
        <translation>Jeder verzeichnete Schritt ist erledigt oder muss auf einen anderen warten.</translation>
    </message>
    <message numerus="yes">
        <source>After a merge, %n things are to decide</source>
        <translation>
            <numerusform>Nach dem Zusammenführen ist %Ln Sache zu entscheiden</numerusform>
            <numerusform>Nach dem Zusammenführen sind %Ln Sachen zu entscheiden</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ToolBoard</name>
    <message>
        <source>Calibrated…</source>
        <translation>Kalibriert…</translation>
    </message>
    <message>
        <source>Calibrations</source>
        <translation>Kalibrierungen</translation>
    </message>
    <message>
        <source>None on record.</source>
        <translation>Keine eingetragen.</translation>
    </message>
    <message>
        <source>Used out of calibration</source>
        <translation>Ohne gültige Kalibrierung verwendet</translation>
    </message>
    <message>
        <source>Everything on record was done in calibration.</source>
        <translation>Alles Eingetragene geschah mit gültiger Kalibrierung.</translation>
    </message>
    <message>
        <source>What was torqued or measured with a tool out of calibration should be checked again.</source>
        <translation>Was mit einem Werkzeug ohne gültige Kalibrierung angezogen oder gemessen wurde, sollte nachgeprüft werden.</translation>
    </message>
    <message>
        <source>No tool on record. Those that measure or torque belong here, with the day on which their calibration runs out.</source>
        <translation>Kein Werkzeug eingetragen. Hierher gehören die zum Messen und Anziehen, mit dem Tag, an dem ihre Kalibrierung abläuft.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::TopicView</name>
    <message>
        <source>The project&apos;s own limit…</source>
        <translation>Eigene Grenze des Projekts…</translation>
    </message>
    <message>
        <source>For the row that is chosen</source>
        <translation>Für die gewählte Zeile</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::TorquePanel</name>
    <message>
        <source>Take these limits</source>
        <translation>Diese Grenzen nehmen</translation>
    </message>
    <message>
        <source>nut in tension</source>
        <translation>Mutter auf Zug</translation>
    </message>
    <message>
        <source>nut in shear</source>
        <translation>Mutter auf Scherung</translation>
    </message>
    <message>
        <source>How the nut is loaded</source>
        <translation>Wie die Mutter belastet ist</translation>
    </message>
    <message>
        <source>grip to drive</source>
        <translation>Griff bis Vierkant</translation>
    </message>
    <message>
        <source>0 without one</source>
        <translation>0 ohne</translation>
    </message>
    <message>
        <source>Lever of the wrench</source>
        <translation>Hebel des Schlüssels</translation>
    </message>
    <message>
        <source>Extension</source>
        <translation>Verlängerung</translation>
    </message>
    <message>
        <source>Torque by the table</source>
        <translation>Drehmoment nach Tabelle</translation>
    </message>
    <message>
        <source>On the wrench</source>
        <translation>Am Schlüssel</translation>
    </message>
    <message>
        <source>With the drag of %1 added: %2 to %3 %4.</source>
        <translation>Mit dem Laufmoment von %1 dazu: %2 bis %3 %4.</translation>
    </message>
    <message>
        <source>No drag on record: read it off the wrench while the nut runs down, and it is added.</source>
        <translation>Kein Laufmoment eingetragen: am Schlüssel ablesen, während die Mutter bis zur Anlage läuft; es wird dazugezählt.</translation>
    </message>
    <message>
        <source>%1; %2. For clean, dry threads; the drawing of the maker comes first.</source>
        <translation>%1; %2. Für saubere, trockene Gewinde; die Zeichnung des Herstellers geht vor.</translation>
    </message>
    <message>
        <source>That is less than the %1 in-lb that %2 asks of a self-locking nut.</source>
        <translation>Das ist weniger als die %1 in-lb, die %2 von einer selbstsichernden Mutter verlangt.</translation>
    </message>
    <message>
        <source>Lever and extension in the same unit, from the middle of the grip to the drive, and from there to the nut.</source>
        <translation>Hebel und Verlängerung in derselben Einheit: von der Mitte des Griffs bis zum Vierkant und von dort bis zur Mutter.</translation>
    </message>
    <message>
        <source>Without limits there is nothing to set.</source>
        <translation>Ohne Grenzen gibt es nichts einzustellen.</translation>
    </message>
    <message>
        <source>Set the wrench to %1 to %2 %3.</source>
        <translation>Schlüssel auf %1 bis %2 %3 stellen.</translation>
    </message>
    <message>
        <source>Set the wrench to at most %1 %2.</source>
        <translation>Schlüssel auf höchstens %1 %2 stellen.</translation>
    </message>
    <message>
        <source>%1: limits from the table</source>
        <translation>%1: Grenzen aus der Tabelle</translation>
    </message>
    <message>
        <source>%1: %2 to %3 %4, the project&apos;s own limit.</source>
        <translation>%1: %2 bis %3 %4, eigene Grenze des Projekts.</translation>
    </message>
    <message>
        <source>The project&apos;s own limit: %1, from %2.</source>
        <translation>Eigene Grenze des Projekts: %1, aus %2.</translation>
    </message>
    <message>
        <source>From %1. The drawing of the maker comes first.</source>
        <translation>Aus %1. Die Zeichnung des Herstellers geht vor.</translation>
    </message>
    <message>
        <source>%1: %2 to %3 %4</source>
        <translation>%1: %2 bis %3 %4</translation>
    </message>
    <message>
        <source>%1, and never above %2 %3.</source>
        <translation>%1, und nie über %2 %3.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::TroubleList</name>
    <message>
        <source>Dismiss</source>
        <translation>Ausblenden</translation>
    </message>
    <message>
        <source>Not taken in</source>
        <translation>Nicht übernommen</translation>
    </message>
    <message>
        <source>Not taken in:</source>
        <translation>Nicht übernommen:</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::Understood</name>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>no time</source>
        <translation>keine Zeit</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 an %2</translation>
    </message>
    <message>
        <source>no part</source>
        <translation>kein Teil</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, paid</source>
        <translation>%1, bezahlt</translation>
    </message>
    <message>
        <source>%1, by the words</source>
        <translation>%1, nach den Wörtern</translation>
    </message>
    <message>
        <source>squawk %1</source>
        <translation>Beanstandung %1</translation>
    </message>
    <message numerus="yes">
        <source>%n people, their time shared too</source>
        <translation>
            <numerusform>%Ln Person, ihre Zeit auch geteilt</numerusform>
            <numerusform>%Ln Personen, ihre Zeit auch geteilt</numerusform>
        </translation>
    </message>
    <message>
        <source>ticks “%1”</source>
        <translation>hakt „%1“ ab</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>„%1“</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::Unfinished</name>
    <message>
        <source>What is begun here is not kept. Keep it, press Escape to drop it, or do the same once more to leave without it.</source>
        <translation>Was hier begonnen ist, ist noch nicht festgehalten. Festhalten, mit Esc verwerfen oder dasselbe noch einmal tun, um ohne es zu gehen.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::UnkeptHold</name>
    <message>
        <source>What was typed here is not on record, as it could not be kept. Type it once more when that is possible, or do the same once more to leave without it.</source>
        <translation>Was hier getippt wurde, ist nicht festgehalten: es ging nicht. Es noch einmal tippen, sobald es wieder geht, oder dasselbe noch einmal tun, um ohne es zu gehen.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::UseForm</name>
    <message>
        <source>Keep the use</source>
        <translation>Verwendung festhalten</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>18-21</source>
        <translation>18-21</translation>
    </message>
    <message>
        <source>14 d, 24 h; from the data sheet</source>
        <translation>14 d, 24 h; aus dem Datenblatt</translation>
    </message>
    <message>
        <source>On part</source>
        <translation>An Teil</translation>
    </message>
    <message>
        <source>Mixed with lot</source>
        <translation>Gemischt mit Charge</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Mix</source>
        <translation>Mischung</translation>
    </message>
    <message>
        <source>Temperature, °C</source>
        <translation>Temperatur, °C</translation>
    </message>
    <message>
        <source>Humidity, %</source>
        <translation>Luftfeuchte, %</translation>
    </message>
    <message>
        <source>Cures for</source>
        <translation>Aushärtezeit</translation>
    </message>
    <message>
        <source>Sample</source>
        <translation>Probe</translation>
    </message>
    <message>
        <source>%1 was used</source>
        <translation>%1 wurde verwendet</translation>
    </message>
    <message>
        <source>This lot has expired: what is made with it needs somebody&apos;s acceptance.</source>
        <translation>Diese Charge ist abgelaufen: was damit gemacht wird, muss jemand annehmen.</translation>
    </message>
    <message>
        <source>“%1” is no temperature; write 20 or 18-21.</source>
        <translation>„%1“ ist keine Temperatur; 20 oder 18-21 schreiben.</translation>
    </message>
    <message>
        <source>“%1” is no humidity between 0 and 100 %.</source>
        <translation>„%1“ ist keine Luftfeuchte zwischen 0 und 100 %.</translation>
    </message>
    <message>
        <source>“%1” is no time to cure; write 14 d or 24 h.</source>
        <translation>„%1“ ist keine Aushärtezeit; 14 d oder 24 h schreiben.</translation>
    </message>
    <message>
        <source>Say which part it was used on.</source>
        <translation>An welchem Teil wurde sie verwendet?</translation>
    </message>
    <message>
        <source>%1: used</source>
        <translation>%1: verwendet</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::VerdictRows</name>
    <message>
        <source>No hold point waits for an inspector or adviser.</source>
        <translation>Kein Haltepunkt wartet auf einen Prüfer oder Berater.</translation>
    </message>
    <message>
        <source>Result for %1</source>
        <translation>Ergebnis für %1</translation>
    </message>
    <message>
        <source>%1 more wait</source>
        <translation>%1 weitere warten</translation>
    </message>
    <message>
        <source>Up, Down</source>
        <translation>Auf, Ab</translation>
    </message>
    <message>
        <source>Another hold point of a visit</source>
        <translation>Ein anderer Haltepunkt eines Besuchs</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::VisitBoard</name>
    <message>
        <source>No closing waits for an inspector or adviser.</source>
        <translation>Keine Schließstelle wartet auf einen Prüfer oder Berater.</translation>
    </message>
    <message>
        <source>Pick those that need no more work</source>
        <translation>Die wählen, die keine Arbeit mehr brauchen</translation>
    </message>
    <message>
        <source>Make packet</source>
        <translation>Prüfmappe machen</translation>
    </message>
    <message>
        <source>Inspection visit</source>
        <translation>Besuch des Prüfers</translation>
    </message>
    <message>
        <source>Visits</source>
        <translation>Besuche</translation>
    </message>
    <message>
        <source>No visit was asked for yet. Pick closings above to ask for one.</source>
        <translation>Noch kein Besuch angefragt. Oben Schließstellen wählen, um einen anzufragen.</translation>
    </message>
    <message>
        <source>← All closings</source>
        <translation>← Alle Schließstellen</translation>
    </message>
    <message>
        <source>What one visit could cover</source>
        <translation>Was ein Besuch abdecken könnte</translation>
    </message>
    <message>
        <source>First what waits for somebody&apos;s word alone, then what costs the least more work. Work that several share counts once.</source>
        <translation>Zuerst, was nur auf jemandes Wort wartet, dann, was am wenigsten Arbeit kostet. Gemeinsame Arbeit zählt einmal.</translation>
    </message>
    <message>
        <source>Closings that one visit could cover</source>
        <translation>Schließstellen, die ein Besuch abdecken könnte</translation>
    </message>
    <message>
        <source>cancelled on %1</source>
        <translation>abgesagt am %1</translation>
    </message>
    <message>
        <source>held on %1</source>
        <translation>abgehalten am %1</translation>
    </message>
    <message>
        <source>planned for %1</source>
        <translation>geplant für %1</translation>
    </message>
    <message>
        <source>asked for on %1, no day is set yet</source>
        <translation>angefragt am %1, noch kein Tag fest</translation>
    </message>
    <message numerus="yes">
        <source>%n findings open</source>
        <translation>
            <numerusform>%Ln Feststellung offen</numerusform>
            <numerusform>%Ln Feststellungen offen</numerusform>
        </translation>
    </message>
    <message>
        <source>complete since %1</source>
        <translation>abgeschlossen seit %1</translation>
    </message>
    <message numerus="yes">
        <source>%n hold points</source>
        <translation>
            <numerusform>%Ln Haltepunkt</numerusform>
            <numerusform>%Ln Haltepunkte</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n picked</source>
        <translation>
            <numerusform>%Ln gewählt</numerusform>
            <numerusform>%Ln gewählt</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing is picked.</source>
        <translation>Nichts ist gewählt.</translation>
    </message>
    <message>
        <source>%1; %2 of work until then, what stands before them in the list included</source>
        <translation>%1; bis dahin %2 Arbeit, samt dem, was davor in der Liste steht</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::VisitForm</name>
    <message>
        <source>ask for it</source>
        <translation>ihn anfragen</translation>
    </message>
    <message>
        <source>it was held</source>
        <translation>er fand statt</translation>
    </message>
    <message>
        <source>A visit of the inspector or adviser; one visit may sign several hold points.</source>
        <translation>Ein Besuch des Prüfers oder Beraters; ein Besuch kann mehrere Haltepunkte unterschreiben.</translation>
    </message>
    <message>
        <source>Visit</source>
        <translation>Besuch</translation>
    </message>
    <message>
        <source>Hold points</source>
        <translation>Haltepunkte</translation>
    </message>
    <message>
        <source>Who comes</source>
        <translation>Wer kommt</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Looked at</source>
        <translation>Angesehen</translation>
    </message>
    <message>
        <source>Signed sheet</source>
        <translation>Unterschriebenes Blatt</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Feststellungen</translation>
    </message>
    <message>
        <source>Record the request</source>
        <translation>Anfrage eintragen</translation>
    </message>
    <message>
        <source>Record the visit</source>
        <translation>Besuch eintragen</translation>
    </message>
    <message>
        <source>planned for, if a day is set</source>
        <translation>geplant für, falls ein Tag feststeht</translation>
    </message>
    <message>
        <source>held on</source>
        <translation>abgehalten am</translation>
    </message>
    <message>
        <source>It needs at least one hold point.</source>
        <translation>Nötig ist mindestens ein Haltepunkt.</translation>
    </message>
    <message>
        <source>Visit asked for</source>
        <translation>Besuch angefragt</translation>
    </message>
    <message>
        <source>Visit recorded</source>
        <translation>Besuch eingetragen</translation>
    </message>
    <message numerus="yes">
        <source>Visit recorded with %n findings</source>
        <translation>
            <numerusform>Besuch mit %Ln Feststellung eingetragen</numerusform>
            <numerusform>Besuch mit %Ln Feststellungen eingetragen</numerusform>
        </translation>
    </message>
    <message>
        <source>nothing is left to do: the visit is complete</source>
        <translation>nichts mehr zu tun: der Besuch ist abgeschlossen</translation>
    </message>
    <message>
        <source>names, with commas between them</source>
        <translation>Namen, durch Kommas getrennt</translation>
    </message>
    <message>
        <source>Asked for on</source>
        <translation>Angefragt am</translation>
    </message>
    <message>
        <source>Also there</source>
        <translation>Auch dabei</translation>
    </message>
    <message numerus="yes">
        <source>%n hold points added to the visit</source>
        <translation>
            <numerusform>%Ln Haltepunkt zum Besuch genommen</numerusform>
            <numerusform>%Ln Haltepunkte zum Besuch genommen</numerusform>
        </translation>
    </message>
    <message>
        <source>“%1” is no day.</source>
        <translation>„%1“ ist kein Tag.</translation>
    </message>
    <message>
        <source>The other visit stands in the way, see above. Press again if the request was made all the same.</source>
        <translation>Der andere Besuch steht im Weg, siehe oben. Noch einmal drücken, wenn trotzdem angefragt wurde.</translation>
    </message>
    <message>
        <source>It was asked for on %1 and cannot have been held before.</source>
        <translation>Er wurde am %1 angefragt und kann nicht vorher stattgefunden haben.</translation>
    </message>
    <message>
        <source>A visit with findings is complete when they are corrected and verified.</source>
        <translation>Ein Besuch mit Feststellungen ist abgeschlossen, wenn sie behoben und nachgeprüft sind.</translation>
    </message>
    <message>
        <source>By the result there are findings, and none is typed. Press again to enter them later.</source>
        <translation>Nach dem Ergebnis gibt es Feststellungen, und keine ist eingegeben. Noch einmal drücken, um sie später einzutragen.</translation>
    </message>
    <message>
        <source>Reference or number</source>
        <translation>Zeichen oder Nummer</translation>
    </message>
    <message>
        <source>The visit that was asked for is no longer on record. Press again to record what was said as a visit of its own.</source>
        <translation>Der Besuch, um den gebeten wurde, ist nicht mehr verzeichnet. Noch einmal drücken, um das Gesagte als eigenen Besuch festzuhalten.</translation>
    </message>
    <message>
        <source>It was asked for on %1; the day of the visit cannot lie before that.</source>
        <translation>Er wurde am %1 angefragt; der Tag des Besuchs kann nicht davor liegen.</translation>
    </message>
    <message>
        <source>Findings are typed, and by the result everything is accepted without any. Choose the result, or press again if the findings change nothing in it.</source>
        <translation>Es sind Feststellungen eingegeben, und nach dem Ergebnis ist alles ohne solche angenommen. Das Ergebnis wählen, oder noch einmal drücken, wenn die Feststellungen daran nichts ändern.</translation>
    </message>
    <message>
        <source>“%1” was closed on %2, before this visit: what is signed here does not count for that closing. Press again to record it all the same; “Accepted afterwards”, beside the closing, is what does count.</source>
        <translation>„%1“ wurde am %2 geschlossen, vor diesem Besuch: Was hier unterschrieben wird, zählt für dieses Schließen nicht. Noch einmal drücken, um es trotzdem festzuhalten; es zählt „Nachträglich angenommen“ bei der Schließstelle.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::VisitPlanModel</name>
    <message>
        <source>Closing</source>
        <translation>Schließstelle</translation>
    </message>
    <message>
        <source>Stands</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Work until then, in all</source>
        <translation>Arbeit bis dahin, insgesamt</translation>
    </message>
    <message>
        <source>And besides</source>
        <translation>Und außerdem</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message numerus="yes">
        <source>%n without an estimate</source>
        <translation>
            <numerusform>%Ln ohne Schätzung</numerusform>
            <numerusform>%Ln ohne Schätzung</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n other things in the way</source>
        <translation>
            <numerusform>%Ln anderes steht im Weg</numerusform>
            <numerusform>%Ln andere Dinge stehen im Weg</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::WatchBar</name>
    <message>
        <source>Watch a folder</source>
        <translation>Ordner beobachten</translation>
    </message>
    <message>
        <source>Show them</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>They do not belong here</source>
        <translation>Sie gehören nicht hierher</translation>
    </message>
    <message>
        <source>Take in what is there, too</source>
        <translation>Auch übernehmen, was da ist</translation>
    </message>
    <message>
        <source>Only what comes from now on</source>
        <translation>Nur was ab jetzt kommt</translation>
    </message>
    <message>
        <source>Another folder</source>
        <translation>Anderer Ordner</translation>
    </message>
    <message>
        <source>Stop watching</source>
        <translation>Nicht mehr beobachten</translation>
    </message>
    <message>
        <source>Photos that a phone puts there are taken in on their own.</source>
        <translation>Fotos, die ein Telefon dorthin legt, werden von selbst übernommen.</translation>
    </message>
    <message>
        <source>The folder that your phone puts its pictures into</source>
        <translation>Der Ordner, in den Ihr Telefon seine Bilder legt</translation>
    </message>
    <message>
        <source>%1 will be watched.</source>
        <translation>%1 wird beobachtet.</translation>
    </message>
    <message>
        <source>Not watching %1 for now.</source>
        <translation>%1 wird zurzeit nicht beobachtet.</translation>
    </message>
    <message>
        <source>%1 is not there; it is looked for again and again.</source>
        <translation>%1 ist nicht da; es wird immer wieder danach gesucht.</translation>
    </message>
    <message>
        <source>Watching %1.</source>
        <translation>%1 wird beobachtet.</translation>
    </message>
    <message numerus="yes">
        <source>Watching %1; %n came in last.</source>
        <translation>
            <numerusform>%1 wird beobachtet; zuletzt kam %Ln.</numerusform>
            <numerusform>%1 wird beobachtet; zuletzt kamen %Ln.</numerusform>
        </translation>
    </message>
    <message>
        <source>Go on watching</source>
        <translation>Weiter beobachten</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>Do not watch it</source>
        <translation>Nicht beobachten</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::WatchedFolder</name>
    <message>
        <source>The watched folder %1 is not there; photos are taken in again when it is back.</source>
        <translation>Der beobachtete Ordner %1 ist nicht da; Fotos werden wieder übernommen, wenn er zurück ist.</translation>
    </message>
    <message>
        <source>The watched folder %1 is back.</source>
        <translation>Der beobachtete Ordner %1 ist wieder da.</translation>
    </message>
    <message numerus="yes">
        <source>%n came in from the watched folder.</source>
        <translation>
            <numerusform>%Ln kam aus dem beobachteten Ordner.</numerusform>
            <numerusform>%Ln kamen aus dem beobachteten Ordner.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n files from the watched folder were not taken in; the page Photos says why.</source>
        <translation>
            <numerusform>%Ln Datei aus dem beobachteten Ordner wurde nicht übernommen; die Seite Fotos sagt, warum.</numerusform>
            <numerusform>%Ln Dateien aus dem beobachteten Ordner wurden nicht übernommen; die Seite Fotos sagt, warum.</numerusform>
        </translation>
    </message>
    <message>
        <source>Watching the folder %1 is paused, because photos from it could not be stored: %2</source>
        <translation>Der Ordner %1 wird vorerst nicht mehr beobachtet, weil Fotos daraus nicht gespeichert werden konnten: %2</translation>
    </message>
    <message>
        <source>Watching the folder %1 is paused, because it could not be read what came from it before.</source>
        <translation>Der Ordner %1 wird vorerst nicht mehr beobachtet, weil nicht zu lesen war, was vorher aus ihm gekommen ist.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::WeekBars</name>
    <message>
        <source>Hours per week</source>
        <translation>Stunden pro Woche</translation>
    </message>
    <message>
        <source>No hours in these weeks.</source>
        <translation>Keine Stunden in diesen Wochen.</translation>
    </message>
    <message>
        <source>week of %1: %2, of that %3 done again</source>
        <translation>Woche vom %1: %2, davon %3 Nacharbeit</translation>
    </message>
    <message>
        <source>week of %1: %2</source>
        <translation>Woche vom %1: %2</translation>
    </message>
    <message>
        <source>this week</source>
        <translation>diese Woche</translation>
    </message>
    <message>
        <source>Hours per week, at most %1; hatched: done again</source>
        <translation>Stunden pro Woche, höchstens %1; schraffiert: Nacharbeit</translation>
    </message>
    <message>
        <source>Hours per week, at most %1</source>
        <translation>Stunden pro Woche, höchstens %1</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::WeighingPanel</name>
    <message>
        <source>Weighings</source>
        <translation>Wägungen</translation>
    </message>
    <message>
        <source>New weighing</source>
        <translation>Neue Wägung</translation>
    </message>
    <message>
        <source>Withdraw…</source>
        <translation>Zurückziehen…</translation>
    </message>
    <message>
        <source>Scale readings with tare and arm come to the empty weight and its centre of gravity. Weigh indoors and level, with scales whose calibration holds.</source>
        <translation>Ablesungen der Waagen mit Tara und Hebelarm ergeben Leermasse und Schwerpunkt. Im Gebäude und nivelliert wägen, mit Waagen, deren Kalibrierung gilt.</translation>
    </message>
    <message>
        <source>Scales</source>
        <translation>Waagen</translation>
    </message>
    <message>
        <source>Taken off and added</source>
        <translation>Abgezogen und zugeschlagen</translation>
    </message>
    <message>
        <source>Write the first weighing down</source>
        <translation>Erste Wägung eintragen</translation>
    </message>
    <message>
        <source>What has changed the weight</source>
        <translation>Was die Masse geändert hat</translation>
    </message>
    <message>
        <source>Weighing changed</source>
        <translation>Wägung geändert</translation>
    </message>
    <message>
        <source>point %1</source>
        <translation>Punkt %1</translation>
    </message>
    <message>
        <source>A scale stands under something: give the point a name.</source>
        <translation>Eine Waage steht unter etwas: dem Punkt einen Namen geben.</translation>
    </message>
    <message>
        <source>No tool is called “%1”.</source>
        <translation>Kein Werkzeug heißt „%1“.</translation>
    </message>
    <message>
        <source>A tare is not below zero: it is what lies on the scale besides the aeroplane, and is taken off.</source>
        <translation>Eine Tara ist nicht kleiner als null: sie ist, was außer dem Flugzeug auf der Waage liegt, und wird abgezogen.</translation>
    </message>
    <message>
        <source>correction %1</source>
        <translation>Korrektur %1</translation>
    </message>
    <message>
        <source>Say what is taken off or added.</source>
        <translation>Sagen Sie, was abgezogen oder zugeschlagen wird.</translation>
    </message>
    <message>
        <source>Weighing written down</source>
        <translation>Wägung eingetragen</translation>
    </message>
    <message>
        <source>Under</source>
        <translation>Unter</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Ablesung</translation>
    </message>
    <message>
        <source>Tare</source>
        <translation>Tara</translation>
    </message>
    <message>
        <source>Net</source>
        <translation>Netto</translation>
    </message>
    <message>
        <source>Arm</source>
        <translation>Hebelarm</translation>
    </message>
    <message>
        <source>Scale (tool)</source>
        <translation>Waage (Werkzeug)</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Moment</source>
        <translation>Moment</translation>
    </message>
    <message>
        <source>Empty weight as weighed: %1</source>
        <translation>Leermasse nach der Wägung: %1</translation>
    </message>
    <message>
        <source>A later weighing counts.</source>
        <translation>Eine spätere Wägung gilt.</translation>
    </message>
    <message>
        <source>Nothing on record has changed the weight since this weighing.</source>
        <translation>Nichts Verzeichnetes hat die Masse seit dieser Wägung geändert.</translation>
    </message>
    <message>
        <source>With what was fitted and removed since: %1</source>
        <translation>Mit seither Ein- und Ausgebautem: %1</translation>
    </message>
    <message>
        <source>What was fitted and removed since is reckoned with as soon as the weighing comes to a sum.</source>
        <translation>Was seither ein- und ausgebaut wurde, wird gerechnet, sobald die Wägung eine Summe ergibt.</translation>
    </message>
    <message>
        <source>Not all lines are in this sum: some lack something.</source>
        <translation>Nicht alle Zeilen sind in dieser Summe: Manchen fehlt etwas.</translation>
    </message>
    <message>
        <source>Not in calibration when it was weighed: %1.</source>
        <translation>Beim Wiegen nicht kalibriert: %1.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::WeighingView</name>
    <message>
        <source>Weighing</source>
        <translation>Wägung</translation>
    </message>
    <message>
        <source>Equipment</source>
        <translation>Ausrüstung</translation>
    </message>
    <message>
        <source>Loading and limits</source>
        <translation>Beladung und Grenzen</translation>
    </message>
    <message>
        <source>Print the report…</source>
        <translation>Bericht drucken…</translation>
    </message>
    <message>
        <source>Empty: %1</source>
        <translation>Leer: %1</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::WishBar</name>
    <message>
        <source>Hours a week:</source>
        <translation>Stunden je Woche:</translation>
    </message>
    <message>
        <source>as in the log</source>
        <translation>wie im Bautagebuch</translation>
    </message>
    <message>
        <source>Hours a week</source>
        <translation>Stunden je Woche</translation>
    </message>
    <message>
        <source>What the forecast reckons with; at 0 the pace of the last 26 weeks</source>
        <translation>Womit die Vorhersage rechnet; bei 0 das Tempo der letzten 26 Wochen</translation>
    </message>
    <message>
        <source>Leave out:</source>
        <translation>Weglassen:</translation>
    </message>
    <message>
        <source>a part, painting for one</source>
        <translation>ein Teil, etwa Lackierung</translation>
    </message>
    <message>
        <source>Leave a part out of the forecast</source>
        <translation>Ein Teil aus der Vorhersage weglassen</translation>
    </message>
    <message>
        <source>%1 ✕</source>
        <comment>take back in</comment>
        <translation>%1 ✕</translation>
    </message>
    <message>
        <source>Take %1 back into the forecast</source>
        <translation>%1 wieder in die Vorhersage nehmen</translation>
    </message>
    <message>
        <source>What was chosen for the forecast before could not be read. Nothing is kept in its place; what can be read is shown now.</source>
        <translation>Was vorher für die Vorhersage gewählt war, war nicht zu lesen. An seiner Stelle wird nichts festgehalten; gezeigt wird, was jetzt zu lesen ist.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::WorkProposal</name>
    <message>
        <source>%1: belongs to a log entry</source>
        <translation>%1: gehört zu einem Eintrag</translation>
    </message>
    <message numerus="yes">
        <source>%n photos belong to their log entries</source>
        <translation>
            <numerusform>%Ln Foto gehört zu seinem Eintrag</numerusform>
            <numerusform>%Ln Fotos gehören zu ihren Einträgen</numerusform>
        </translation>
    </message>
    <message>
        <source>M</source>
        <translation>M</translation>
    </message>
    <message>
        <source>It belongs there (M)</source>
        <translation>Es gehört dorthin (M)</translation>
    </message>
    <message numerus="yes">
        <source>All %n belong there (M)</source>
        <translation>
            <numerusform>Es gehört dorthin (M)</numerusform>
            <numerusform>Alle %Ln gehören dorthin (M)</numerusform>
        </translation>
    </message>
    <message>
        <source>Taken while this was done:</source>
        <translation>Aufgenommen, während dies getan wurde:</translation>
    </message>
    <message>
        <source>Taken on the day of this work:</source>
        <translation>Aufgenommen am Tag dieser Arbeit:</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>und %Ln weiteres</numerusform>
            <numerusform>und %Ln weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::WorkersEditor</name>
    <message>
        <source>somebody else who worked</source>
        <translation>jemand, der auch gearbeitet hat</translation>
    </message>
    <message>
        <source>Add somebody who worked</source>
        <translation>Jemanden hinzufügen, der gearbeitet hat</translation>
    </message>
    <message>
        <source>all of it</source>
        <translation>die ganze Zeit</translation>
    </message>
    <message>
        <source>How long %1 worked</source>
        <translation>Wie lange %1 gearbeitet hat</translation>
    </message>
    <message>
        <source>paid</source>
        <translation>bezahlt</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>“%1” is no duration; write it as 2h15 or 90m.</source>
        <translation>„%1“ ist keine Dauer; schreiben Sie sie als 2h15 oder 90m.</translation>
    </message>
    <message>
        <source>Log entry: who worked</source>
        <translation>Eintrag: wer gearbeitet hat</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::WorkshopPage</name>
    <message>
        <source>Search all tables</source>
        <translation>Alle Tabellen durchsuchen</translation>
    </message>
    <message>
        <source>inches and pounds</source>
        <translation>Zoll und Pfund</translation>
    </message>
    <message>
        <source>millimetres and newtons</source>
        <translation>Millimeter und Newton</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>Topics</source>
        <translation>Themen</translation>
    </message>
    <message>
        <source>General practice. The maker&apos;s drawings and manuals come first; local rules and licensed practice decide. What is from memory is to be looked up before it is used.</source>
        <translation>Allgemeine Praxis. Zeichnungen und Handbücher des Herstellers gehen vor; örtliche Regeln und zugelassene Fachleute entscheiden. Was aus dem Gedächtnis stammt, ist vor Gebrauch nachzuschlagen.</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Was gefunden wurde</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>No table has all of these words.</source>
        <translation>Keine Tabelle hat alle diese Wörter.</translation>
    </message>
    <message>
        <source>This project&apos;s own limits could not be read: the tables and sums stand here without them. None can be changed until then.</source>
        <translation>Die eigenen Grenzen dieses Projekts waren nicht zu lesen: Tabellen und Rechnungen stehen hier ohne sie. Bis dahin lässt sich keine ändern.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::YearStrip</name>
    <message>
        <source>%1: nothing logged</source>
        <translation>%1: nichts eingetragen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>Work on %n days of the year</source>
        <translation>
            <numerusform>Arbeit an %Ln Tag des Jahres</numerusform>
            <numerusform>Arbeit an %Ln Tagen des Jahres</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>month, year</comment>
        <translation>%1 %2</translation>
    </message>
</context>
</TS>
