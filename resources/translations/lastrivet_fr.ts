<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr_FR" sourcelanguage="en">
<context>
    <name>Bench</name>
    <message>
        <source>%1 to %2 %3</source>
        <translation>%1 à %2 %3</translation>
    </message>
    <message>
        <source>%1: locked</source>
        <translation>%1&#xa0;: freiné</translation>
    </message>
    <message>
        <source>Tick</source>
        <translation>Cocher</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>et %1 de plus</translation>
    </message>
    <message>
        <source>at least %1 %2</source>
        <translation>au moins %1 %2</translation>
    </message>
    <message>
        <source>at most %1 %2</source>
        <translation>au plus %1 %2</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fait</translation>
    </message>
    <message>
        <source>has to wait for another step</source>
        <translation>doit attendre une autre étape</translation>
    </message>
    <message>
        <source>the clock runs</source>
        <translation>l’horloge tourne</translation>
    </message>
    <message>
        <source>torqued: %1</source>
        <translation>serré&#xa0;: %1</translation>
    </message>
    <message>
        <source>finger-tight · %1</source>
        <translation>serré à la main · %1</translation>
    </message>
    <message>
        <source>Fit</source>
        <translation>Monter</translation>
    </message>
    <message>
        <source>Lock</source>
        <translation>Freiner</translation>
    </message>
    <message>
        <source>Seal</source>
        <translation>Marquer</translation>
    </message>
    <message>
        <source>Tick off</source>
        <translation>Cocher</translation>
    </message>
    <message>
        <source>Torque</source>
        <translation>Serrer</translation>
    </message>
</context>
<context>
    <name>Closing</name>
    <message>
        <source>accepted</source>
        <translation>accepté</translation>
    </message>
    <message>
        <source>accepted, with findings</source>
        <translation>accepté, avec constatations</translation>
    </message>
    <message>
        <source>rejected</source>
        <translation>refusé</translation>
    </message>
    <message>
        <source>on site</source>
        <translation>sur place</translation>
    </message>
    <message>
        <source>by photo</source>
        <translation>sur photo</translation>
    </message>
    <message>
        <source>by video</source>
        <translation>sur vidéo</translation>
    </message>
    <message>
        <source>by message</source>
        <translation>par message</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
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
        <translation>%1&#xa0;: %2 ou %3&#xa0;?</translation>
    </message>
    <message>
        <source>It is not known who wrote it.</source>
        <translation>On ne sait pas qui l’a écrit.</translation>
    </message>
    <message>
        <source>decided: the other was taken</source>
        <translation>décidé&#xa0;: l’autre a été repris</translation>
    </message>
    <message>
        <source>decided: what stood was kept</source>
        <translation>décidé&#xa0;: ce qui était en place est resté</translation>
    </message>
    <message>
        <source>left out: %1</source>
        <translation>laissé de côté&#xa0;: %1</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>row %1</source>
        <translation>ligne %1</translation>
    </message>
    <message>
        <source>taken back in one copy, gone on with in the other</source>
        <translation>annulé dans une copie, poursuivi dans l’autre</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>«&#xa0;%1&#xa0;»</translation>
    </message>
</context>
<context>
    <name>CreditModel</name>
    <message>
        <source>Section</source>
        <translation>Section</translation>
    </message>
    <message>
        <source>Task</source>
        <translation>Tâche</translation>
    </message>
    <message>
        <source>A</source>
        <translation>A</translation>
    </message>
    <message>
        <source>Tenths done by the maker of kit or part</source>
        <translation>Dixièmes réalisés par le fabricant du kit ou de la pièce</translation>
    </message>
    <message>
        <source>B</source>
        <translation>B</translation>
    </message>
    <message>
        <source>Tenths done by paid help</source>
        <translation>Dixièmes réalisés par une aide rémunérée</translation>
    </message>
    <message>
        <source>C</source>
        <translation>C</translation>
    </message>
    <message>
        <source>Tenths assembled by the builder</source>
        <translation>Dixièmes assemblés par le constructeur</translation>
    </message>
    <message>
        <source>D</source>
        <translation>D</translation>
    </message>
    <message>
        <source>Tenths fabricated by the builder</source>
        <translation>Dixièmes fabriqués par le constructeur</translation>
    </message>
    <message>
        <source>Builder</source>
        <translation>Constructeur</translation>
    </message>
    <message>
        <source>Tick of the builder, in two columns</source>
        <translation>Coche du constructeur, en deux colonnes</translation>
    </message>
    <message>
        <source>Maker</source>
        <translation>Fabricant</translation>
    </message>
    <message>
        <source>Tick of the maker, in two columns</source>
        <translation>Coche du fabricant, en deux colonnes</translation>
    </message>
    <message>
        <source>Shown by</source>
        <translation>Montré par</translation>
    </message>
    <message>
        <source>Pictures and log entries on record</source>
        <translation>Photos et entrées du carnet</translation>
    </message>
</context>
<context>
    <name>Demo</name>
    <message>
        <source>%1 could not be made.</source>
        <translation>%1 n’a pas pu être créé.</translation>
    </message>
</context>
<context>
    <name>Expiry</name>
    <message>
        <source>“%1” does not say for certain which year is meant; write a day as %2, or a month as 03/2027.</source>
        <translation>«&#xa0;%1&#xa0;» ne dit pas de quelle année il s’agit&#xa0;; écrivez un jour comme %2, ou un mois comme 03/2027.</translation>
    </message>
    <message>
        <source>“%1” is no day; write it as %2, or a month as 03/2027, which is read as its last day.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un jour&#xa0;; écrivez-le comme %2, ou un mois comme 03/2027, dont le dernier jour compte alors.</translation>
    </message>
</context>
<context>
    <name>Field</name>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>part</source>
        <translation>pièce</translation>
    </message>
</context>
<context>
    <name>FieldName</name>
    <message>
        <source>accepted_basis</source>
        <translation>base de l’acceptation</translation>
    </message>
    <message>
        <source>accepted_by</source>
        <translation>accepté par</translation>
    </message>
    <message>
        <source>accepted_on</source>
        <translation>accepté le</translation>
    </message>
    <message>
        <source>added</source>
        <translation>ajouté</translation>
    </message>
    <message>
        <source>after</source>
        <translation>après</translation>
    </message>
    <message>
        <source>aircraft_type</source>
        <translation>type d’avion</translation>
    </message>
    <message>
        <source>alternatives</source>
        <translation>solutions possibles</translation>
    </message>
    <message>
        <source>amount</source>
        <translation>montant</translation>
    </message>
    <message>
        <source>annotations</source>
        <translation>annotations</translation>
    </message>
    <message>
        <source>applies</source>
        <translation>s’applique</translation>
    </message>
    <message>
        <source>approximate</source>
        <translation>approximatif</translation>
    </message>
    <message>
        <source>arm</source>
        <translation>bras de levier</translation>
    </message>
    <message>
        <source>arm_unit</source>
        <translation>unité du bras</translation>
    </message>
    <message>
        <source>asked_of</source>
        <translation>demandé à</translation>
    </message>
    <message>
        <source>asked_on</source>
        <translation>demandé le</translation>
    </message>
    <message>
        <source>assembly_tenths</source>
        <translation>dixièmes assemblage</translation>
    </message>
    <message>
        <source>authority_file</source>
        <translation>dossier de l’autorité</translation>
    </message>
    <message>
        <source>basis</source>
        <translation>base</translation>
    </message>
    <message>
        <source>began</source>
        <translation>début</translation>
    </message>
    <message>
        <source>builder_address</source>
        <translation>adresse du constructeur</translation>
    </message>
    <message>
        <source>builder_id</source>
        <translation>constructeur</translation>
    </message>
    <message>
        <source>built_as</source>
        <translation>construit ainsi</translation>
    </message>
    <message>
        <source>built_on</source>
        <translation>construit le</translation>
    </message>
    <message>
        <source>by</source>
        <translation>par</translation>
    </message>
    <message>
        <source>bytes</source>
        <translation>octets</translation>
    </message>
    <message>
        <source>calibrated_on</source>
        <translation>étalonné le</translation>
    </message>
    <message>
        <source>calibrations</source>
        <translation>étalonnages</translation>
    </message>
    <message>
        <source>cancelled_on</source>
        <translation>annulé le</translation>
    </message>
    <message>
        <source>caption</source>
        <translation>légende</translation>
    </message>
    <message>
        <source>category</source>
        <translation>catégorie</translation>
    </message>
    <message>
        <source>certificate_id</source>
        <translation>certificat</translation>
    </message>
    <message>
        <source>changed_inspected</source>
        <translation>a modifié ce qui était inspecté</translation>
    </message>
    <message>
        <source>chosen</source>
        <translation>choisi</translation>
    </message>
    <message>
        <source>closed_on</source>
        <translation>fermée le</translation>
    </message>
    <message>
        <source>closes</source>
        <translation>ferme</translation>
    </message>
    <message>
        <source>closing_id</source>
        <translation>fermeture</translation>
    </message>
    <message>
        <source>code</source>
        <translation>code</translation>
    </message>
    <message>
        <source>commercial_tenths</source>
        <translation>dixièmes commercial</translation>
    </message>
    <message>
        <source>completed_on</source>
        <translation>achevé le</translation>
    </message>
    <message>
        <source>complied_on</source>
        <translation>appliqué le</translation>
    </message>
    <message>
        <source>component_id</source>
        <translation>pièce</translation>
    </message>
    <message>
        <source>component_ids</source>
        <translation>pièces</translation>
    </message>
    <message>
        <source>cons</source>
        <translation>contre</translation>
    </message>
    <message>
        <source>construction</source>
        <translation>construction</translation>
    </message>
    <message>
        <source>contact</source>
        <translation>contact</translation>
    </message>
    <message>
        <source>correction</source>
        <translation>correction</translation>
    </message>
    <message>
        <source>corrections</source>
        <translation>corrections</translation>
    </message>
    <message>
        <source>credential</source>
        <translation>qualification</translation>
    </message>
    <message>
        <source>cure_minutes</source>
        <translation>durée de durcissement</translation>
    </message>
    <message>
        <source>cures</source>
        <translation>durcit</translation>
    </message>
    <message>
        <source>currency</source>
        <translation>monnaie</translation>
    </message>
    <message>
        <source>damaged_quantity</source>
        <translation>quantité endommagée</translation>
    </message>
    <message>
        <source>datum</source>
        <translation>plan de référence</translation>
    </message>
    <message>
        <source>decided_by</source>
        <translation>décidé par</translation>
    </message>
    <message>
        <source>decided_on</source>
        <translation>décidé le</translation>
    </message>
    <message>
        <source>decision</source>
        <translation>décision</translation>
    </message>
    <message>
        <source>designer</source>
        <translation>concepteur</translation>
    </message>
    <message>
        <source>detail</source>
        <translation>détail</translation>
    </message>
    <message>
        <source>done_by</source>
        <translation>fait par</translation>
    </message>
    <message>
        <source>done_on</source>
        <translation>fait le</translation>
    </message>
    <message>
        <source>drawing_ref</source>
        <translation>plan</translation>
    </message>
    <message>
        <source>dropped_on</source>
        <translation>abandonné le</translation>
    </message>
    <message>
        <source>due_on</source>
        <translation>échéance</translation>
    </message>
    <message>
        <source>edition</source>
        <translation>édition</translation>
    </message>
    <message>
        <source>encloses</source>
        <translation>enferme</translation>
    </message>
    <message>
        <source>equipment_note</source>
        <translation>note sur l’équipement</translation>
    </message>
    <message>
        <source>estimate_minutes</source>
        <translation>estimation</translation>
    </message>
    <message>
        <source>events</source>
        <translation>événements</translation>
    </message>
    <message>
        <source>expected_on</source>
        <translation>attendu le</translation>
    </message>
    <message>
        <source>expires_on</source>
        <translation>expire le</translation>
    </message>
    <message>
        <source>fabrication_tenths</source>
        <translation>dixièmes fabrication</translation>
    </message>
    <message>
        <source>faults</source>
        <translation>défauts</translation>
    </message>
    <message>
        <source>file</source>
        <translation>fichier</translation>
    </message>
    <message>
        <source>finding_number</source>
        <translation>numéro de constatation</translation>
    </message>
    <message>
        <source>fitted_on</source>
        <translation>posé le</translation>
    </message>
    <message>
        <source>fixed_by</source>
        <translation>corrigé par</translation>
    </message>
    <message>
        <source>fixed_on</source>
        <translation>corrigé le</translation>
    </message>
    <message>
        <source>flown_on</source>
        <translation>volé le</translation>
    </message>
    <message>
        <source>found_by</source>
        <translation>trouvé par</translation>
    </message>
    <message>
        <source>found_on</source>
        <translation>trouvé le</translation>
    </message>
    <message>
        <source>fuel_state</source>
        <translation>état du carburant</translation>
    </message>
    <message>
        <source>hardware</source>
        <translation>quincaillerie</translation>
    </message>
    <message>
        <source>height</source>
        <translation>hauteur</translation>
    </message>
    <message>
        <source>held_on</source>
        <translation>tenue le</translation>
    </message>
    <message>
        <source>hold_point_id</source>
        <translation>point d’arrêt</translation>
    </message>
    <message>
        <source>hold_point_ids</source>
        <translation>points d’arrêt</translation>
    </message>
    <message>
        <source>humidity</source>
        <translation>humidité</translation>
    </message>
    <message>
        <source>id</source>
        <translation>identifiant</translation>
    </message>
    <message>
        <source>imported_on</source>
        <translation>importé le</translation>
    </message>
    <message>
        <source>inspection_id</source>
        <translation>inspection</translation>
    </message>
    <message>
        <source>inspector_id</source>
        <translation>inspecteur</translation>
    </message>
    <message>
        <source>issued_on</source>
        <translation>émis le</translation>
    </message>
    <message>
        <source>issuer</source>
        <translation>émetteur</translation>
    </message>
    <message>
        <source>item</source>
        <translation>point</translation>
    </message>
    <message>
        <source>items</source>
        <translation>postes</translation>
    </message>
    <message>
        <source>key</source>
        <translation>clé</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>genre</translation>
    </message>
    <message>
        <source>kit_number</source>
        <translation>numéro de kit</translation>
    </message>
    <message>
        <source>kit_tenths</source>
        <translation>dixièmes kit</translation>
    </message>
    <message>
        <source>landings</source>
        <translation>atterrissages</translation>
    </message>
    <message>
        <source>late_acceptances</source>
        <translation>acceptations tardives</translation>
    </message>
    <message>
        <source>lemac</source>
        <translation>bord d’attaque de la corde moyenne</translation>
    </message>
    <message>
        <source>level</source>
        <translation>mise à niveau</translation>
    </message>
    <message>
        <source>links</source>
        <translation>liens</translation>
    </message>
    <message>
        <source>locked_on</source>
        <translation>freiné le</translation>
    </message>
    <message>
        <source>locking</source>
        <translation>freinage</translation>
    </message>
    <message>
        <source>lot_ids</source>
        <translation>lots</translation>
    </message>
    <message>
        <source>lot_number</source>
        <translation>numéro de lot</translation>
    </message>
    <message>
        <source>mac</source>
        <translation>corde moyenne</translation>
    </message>
    <message>
        <source>made_by</source>
        <translation>fermée par</translation>
    </message>
    <message>
        <source>maker</source>
        <translation>fabricant</translation>
    </message>
    <message>
        <source>mandatory</source>
        <translation>obligatoire</translation>
    </message>
    <message>
        <source>marked_on</source>
        <translation>marqué le</translation>
    </message>
    <message>
        <source>maximum</source>
        <translation>maximum</translation>
    </message>
    <message>
        <source>maximum_weight</source>
        <translation>masse maximale</translation>
    </message>
    <message>
        <source>may_follow</source>
        <translation>peut suivre</translation>
    </message>
    <message>
        <source>measured_on</source>
        <translation>mesuré le</translation>
    </message>
    <message>
        <source>media_id</source>
        <translation>photo ou document</translation>
    </message>
    <message>
        <source>media_ids</source>
        <translation>photos et documents</translation>
    </message>
    <message>
        <source>method</source>
        <translation>méthode</translation>
    </message>
    <message>
        <source>minimum</source>
        <translation>minimum</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation>durée</translation>
    </message>
    <message>
        <source>mix_ratio</source>
        <translation>proportion de mélange</translation>
    </message>
    <message>
        <source>model</source>
        <translation>modèle</translation>
    </message>
    <message>
        <source>model_as_written</source>
        <translation>modèle tel qu’écrit</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nom</translation>
    </message>
    <message>
        <source>name_as_written</source>
        <translation>nom tel qu’écrit</translation>
    </message>
    <message>
        <source>needs_access_to</source>
        <translation>demande l’accès à</translation>
    </message>
    <message>
        <source>needs_calibration</source>
        <translation>demande un étalonnage</translation>
    </message>
    <message>
        <source>never_enclosed_why</source>
        <translation>jamais enfermée, parce que</translation>
    </message>
    <message>
        <source>not_applicable</source>
        <translation>sans objet</translation>
    </message>
    <message>
        <source>not_inside</source>
        <translation>n’est pas dans</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>number</source>
        <translation>numéro</translation>
    </message>
    <message>
        <source>oil_state</source>
        <translation>état de l’huile</translation>
    </message>
    <message>
        <source>opened_on</source>
        <translation>ouvert le</translation>
    </message>
    <message>
        <source>ordered_on</source>
        <translation>commandé le</translation>
    </message>
    <message>
        <source>origin</source>
        <translation>origine</translation>
    </message>
    <message>
        <source>paid</source>
        <translation>payé</translation>
    </message>
    <message>
        <source>parent_id</source>
        <translation>appartient à</translation>
    </message>
    <message>
        <source>part_number</source>
        <translation>référence</translation>
    </message>
    <message>
        <source>permanent</source>
        <translation>définitive</translation>
    </message>
    <message>
        <source>person_id</source>
        <translation>personne</translation>
    </message>
    <message>
        <source>pilot_id</source>
        <translation>pilote</translation>
    </message>
    <message>
        <source>place</source>
        <translation>endroit</translation>
    </message>
    <message>
        <source>plan_ref</source>
        <translation>repère au plan</translation>
    </message>
    <message>
        <source>planned_for</source>
        <translation>prévu pour</translation>
    </message>
    <message>
        <source>planned_on</source>
        <translation>planifié le</translation>
    </message>
    <message>
        <source>point</source>
        <translation>point</translation>
    </message>
    <message>
        <source>points</source>
        <translation>points</translation>
    </message>
    <message>
        <source>position</source>
        <translation>position</translation>
    </message>
    <message>
        <source>present</source>
        <translation>présents</translation>
    </message>
    <message>
        <source>profile</source>
        <translation>profil de règles</translation>
    </message>
    <message>
        <source>pros</source>
        <translation>pour</translation>
    </message>
    <message>
        <source>quantity</source>
        <translation>quantité</translation>
    </message>
    <message>
        <source>raised_on</source>
        <translation>soulevé le</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>lecture</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>motif</translation>
    </message>
    <message>
        <source>received_on</source>
        <translation>reçu le</translation>
    </message>
    <message>
        <source>received_quantity</source>
        <translation>quantité reçue</translation>
    </message>
    <message>
        <source>reference</source>
        <translation>référence</translation>
    </message>
    <message>
        <source>registration</source>
        <translation>immatriculation</translation>
    </message>
    <message>
        <source>registration_as_written</source>
        <translation>immatriculation telle qu’écrite</translation>
    </message>
    <message>
        <source>remarks</source>
        <translation>remarques</translation>
    </message>
    <message>
        <source>removed_on</source>
        <translation>retiré le</translation>
    </message>
    <message>
        <source>removed_why</source>
        <translation>retiré parce que</translation>
    </message>
    <message>
        <source>repair_options</source>
        <translation>réparations possibles</translation>
    </message>
    <message>
        <source>repair_plan</source>
        <translation>plan de réparation</translation>
    </message>
    <message>
        <source>report_id</source>
        <translation>rapport</translation>
    </message>
    <message>
        <source>report_number</source>
        <translation>numéro de rapport</translation>
    </message>
    <message>
        <source>required</source>
        <translation>requis</translation>
    </message>
    <message>
        <source>result</source>
        <translation>résultat</translation>
    </message>
    <message>
        <source>roles</source>
        <translation>rôles</translation>
    </message>
    <message>
        <source>sample</source>
        <translation>éprouvette</translation>
    </message>
    <message>
        <source>sample_on</source>
        <translation>éprouvette le</translation>
    </message>
    <message>
        <source>scale_readings</source>
        <translation>lectures des balances</translation>
    </message>
    <message>
        <source>scan_id</source>
        <translation>feuille numérisée</translation>
    </message>
    <message>
        <source>scope</source>
        <translation>portée</translation>
    </message>
    <message>
        <source>section</source>
        <translation>section</translation>
    </message>
    <message>
        <source>seen</source>
        <translation>vu</translation>
    </message>
    <message>
        <source>serial_as_written</source>
        <translation>numéro de série tel qu’écrit</translation>
    </message>
    <message>
        <source>serial_number</source>
        <translation>numéro de série</translation>
    </message>
    <message>
        <source>severity</source>
        <translation>gravité</translation>
    </message>
    <message>
        <source>sha256</source>
        <translation>SHA-256</translation>
    </message>
    <message>
        <source>shape</source>
        <translation>forme</translation>
    </message>
    <message>
        <source>shelf</source>
        <translation>étagère</translation>
    </message>
    <message>
        <source>shipment</source>
        <translation>livraison</translation>
    </message>
    <message>
        <source>shows</source>
        <translation>montre</translation>
    </message>
    <message>
        <source>signed_on</source>
        <translation>signé le</translation>
    </message>
    <message>
        <source>signer_role</source>
        <translation>à signer par</translation>
    </message>
    <message>
        <source>source</source>
        <translation>source</translation>
    </message>
    <message>
        <source>specification</source>
        <translation>spécification</translation>
    </message>
    <message>
        <source>spent_on</source>
        <translation>dépensé le</translation>
    </message>
    <message>
        <source>squawk_id</source>
        <translation>anomalie</translation>
    </message>
    <message>
        <source>started_on</source>
        <translation>commencé le</translation>
    </message>
    <message>
        <source>step_id</source>
        <translation>étape</translation>
    </message>
    <message>
        <source>storage</source>
        <translation>stockage</translation>
    </message>
    <message>
        <source>subject</source>
        <translation>sujet</translation>
    </message>
    <message>
        <source>supplier</source>
        <translation>fournisseur</translation>
    </message>
    <message>
        <source>taken_on</source>
        <translation>prise le</translation>
    </message>
    <message>
        <source>tare</source>
        <translation>tare</translation>
    </message>
    <message>
        <source>task</source>
        <translation>tâche</translation>
    </message>
    <message>
        <source>temperature_max</source>
        <translation>température maximale</translation>
    </message>
    <message>
        <source>temperature_min</source>
        <translation>température minimale</translation>
    </message>
    <message>
        <source>temperature_unit</source>
        <translation>unité de température</translation>
    </message>
    <message>
        <source>text</source>
        <translation>texte</translation>
    </message>
    <message>
        <source>thread</source>
        <translation>filetage</translation>
    </message>
    <message>
        <source>time_zone</source>
        <translation>fuseau horaire</translation>
    </message>
    <message>
        <source>title</source>
        <translation>titre</translation>
    </message>
    <message>
        <source>tool_id</source>
        <translation>outil</translation>
    </message>
    <message>
        <source>torque_drag</source>
        <translation>couple de frottement</translation>
    </message>
    <message>
        <source>torque_max</source>
        <translation>couple maximal</translation>
    </message>
    <message>
        <source>torque_min</source>
        <translation>couple minimal</translation>
    </message>
    <message>
        <source>torque_unit</source>
        <translation>unité de couple</translation>
    </message>
    <message>
        <source>torque_value</source>
        <translation>couple</translation>
    </message>
    <message>
        <source>torqued_on</source>
        <translation>serré le</translation>
    </message>
    <message>
        <source>undone_on</source>
        <translation>défait le</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>unité</translation>
    </message>
    <message>
        <source>unit_price</source>
        <translation>prix unitaire</translation>
    </message>
    <message>
        <source>units</source>
        <translation>unités</translation>
    </message>
    <message>
        <source>used_on</source>
        <translation>utilisé le</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valeur</translation>
    </message>
    <message>
        <source>verified_by</source>
        <translation>vérifié par</translation>
    </message>
    <message>
        <source>verified_on</source>
        <translation>vérifié le</translation>
    </message>
    <message>
        <source>verify_by</source>
        <translation>à vérifier par</translation>
    </message>
    <message>
        <source>waived_by</source>
        <translation>dispensé par</translation>
    </message>
    <message>
        <source>waived_on</source>
        <translation>dispensé le</translation>
    </message>
    <message>
        <source>waived_why</source>
        <translation>dispensé parce que</translation>
    </message>
    <message>
        <source>weighed_on</source>
        <translation>pesé le</translation>
    </message>
    <message>
        <source>weight</source>
        <translation>masse</translation>
    </message>
    <message>
        <source>weight_change</source>
        <translation>variation de masse</translation>
    </message>
    <message>
        <source>weight_unit</source>
        <translation>unité de masse</translation>
    </message>
    <message>
        <source>what</source>
        <translation>quoi</translation>
    </message>
    <message>
        <source>width</source>
        <translation>largeur</translation>
    </message>
    <message>
        <source>withdrawn_on</source>
        <translation>retiré des dossiers le</translation>
    </message>
    <message>
        <source>withdrawn_why</source>
        <translation>retiré des dossiers parce que</translation>
    </message>
    <message>
        <source>workers</source>
        <translation>personnes au travail</translation>
    </message>
    <message>
        <source>zone</source>
        <translation>zone</translation>
    </message>
</context>
<context>
    <name>HardwareActs</name>
    <message>
        <source>%1: fitted</source>
        <translation>%1&#xa0;: posé</translation>
    </message>
    <message>
        <source>%1: sealed</source>
        <translation>%1&#xa0;: marqué au vernis</translation>
    </message>
    <message>
        <source>%1: locked</source>
        <translation>%1&#xa0;: freiné</translation>
    </message>
    <message>
        <source>%1, measured again</source>
        <translation>%1, mesuré de nouveau</translation>
    </message>
    <message>
        <source>%1: measured again</source>
        <translation>%1&#xa0;: mesuré de nouveau</translation>
    </message>
    <message>
        <source>%1: torqued</source>
        <translation>%1&#xa0;: serré au couple</translation>
    </message>
    <message numerus="yes">
        <source>%n lines of fasteners</source>
        <translation>
            <numerusform>%Ln ligne de fixations</numerusform>
            <numerusform>%Ln lignes de fixations</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lines of fasteners, all to the same torque</source>
        <translation>
            <numerusform>%Ln ligne de fixations</numerusform>
            <numerusform>%Ln lignes de fixations, toutes au même couple</numerusform>
        </translation>
    </message>
    <message>
        <source>On</source>
        <translation>Le</translation>
    </message>
    <message>
        <source>Torque on the wrench, %1</source>
        <translation>Couple sur la clé, %1</translation>
    </message>
    <message>
        <source>Torque on the wrench, %1 to %2 %3</source>
        <translation>Couple sur la clé, %1 à %2 %3</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valeur</translation>
    </message>
    <message>
        <source>Value, %1</source>
        <translation>Valeur, %1</translation>
    </message>
    <message>
        <source>With</source>
        <translation>Avec</translation>
    </message>
    <message>
        <source>Write the torque that the wrench showed.</source>
        <translation>Écrivez le couple que la clé a montré.</translation>
    </message>
    <message>
        <source>Write the value.</source>
        <translation>Écrivez la valeur.</translation>
    </message>
    <message>
        <source>The chosen lines have different limits; torque each by itself.</source>
        <translation>Les lignes choisies ont des limites différentes&#xa0;; serrez chacune séparément.</translation>
    </message>
    <message>
        <source>Record the torque</source>
        <translation>Inscrire le couple</translation>
    </message>
    <message>
        <source>Record the value</source>
        <translation>Inscrire la valeur</translation>
    </message>
    <message>
        <source>What this is about is no longer on record.</source>
        <translation>Ce dont il s’agit n’est plus enregistré.</translation>
    </message>
    <message>
        <source>%1: torqued outside its limits</source>
        <translation>%1&#xa0;: serré hors limites</translation>
    </message>
</context>
<context>
    <name>HoursPaper</name>
    <message>
        <source>Hours</source>
        <translation>Heures</translation>
    </message>
    <message>
        <source>The figures were written to %1.</source>
        <translation>Les chiffres sont écrits dans %1.</translation>
    </message>
</context>
<context>
    <name>HoursView</name>
    <message>
        <source>By kind</source>
        <translation>Par genre</translation>
    </message>
    <message>
        <source>By month</source>
        <translation>Par mois</translation>
    </message>
    <message>
        <source>By part</source>
        <translation>Par pièce</translation>
    </message>
    <message>
        <source>By person</source>
        <translation>Par personne</translation>
    </message>
    <message>
        <source>By week</source>
        <translation>Par semaine</translation>
    </message>
    <message>
        <source>Estimates</source>
        <translation>Estimations</translation>
    </message>
    <message>
        <source>Look back</source>
        <translation>Rétrospective</translation>
    </message>
    <message>
        <source>To go</source>
        <translation>Reste à faire</translation>
    </message>
</context>
<context>
    <name>IntakeWords</name>
    <message>
        <source>Photos linked that were there already</source>
        <translation>Photos déjà présentes, reliées</translation>
    </message>
    <message numerus="yes">
        <source>%n photos taken in</source>
        <translation>
            <numerusform>%Ln photo importée</numerusform>
            <numerusform>%Ln photos importées</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n files taken in</source>
        <translation>
            <numerusform>%Ln fichier importé</numerusform>
            <numerusform>%Ln fichiers importés</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>JournalFilter</name>
    <message>
        <source>changes</source>
        <translation>modifications</translation>
    </message>
</context>
<context>
    <name>JournalPrint</name>
    <message>
        <source>Journal</source>
        <translation>Registre</translation>
    </message>
</context>
<context>
    <name>ListInput</name>
    <message>
        <source>Column %1</source>
        <translation>Colonne %1</translation>
    </message>
</context>
<context>
    <name>LogActs</name>
    <message>
        <source>%1 in pieces: parts, times or both, with a plus sign between them, as in “LA + RW” or “40m + RW 20m”. What says no time shares the rest.</source>
        <translation>%1 en morceaux&#xa0;: pièces, durées ou les deux, avec un plus entre eux, comme «&#xa0;LA + RW&#xa0;» ou «&#xa0;40m + RW 20m&#xa0;». Ce qui ne dit pas de durée partage le reste.</translation>
    </message>
    <message numerus="yes">
        <source>%n entries go to another day, another part, or both, as in “yesterday”, “LA” or “3 Mar left aileron”. The time of day stays.</source>
        <translation>
            <numerusform>%Ln entrée va à un autre jour, une autre pièce, ou les deux, comme «&#xa0;hier&#xa0;», «&#xa0;LA&#xa0;» ou «&#xa0;3 mar aileron gauche&#xa0;». L’heure reste.</numerusform>
            <numerusform>%Ln entrées vont à un autre jour, une autre pièce, ou les deux, comme «&#xa0;hier&#xa0;», «&#xa0;LA&#xa0;» ou «&#xa0;3 mar aileron gauche&#xa0;». L’heure reste.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n log entries moved</source>
        <translation>
            <numerusform>%Ln entrée déplacée</numerusform>
            <numerusform>%Ln entrées déplacées</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Log entry split into %n</source>
        <translation>
            <numerusform>Entrée divisée en %Ln</numerusform>
            <numerusform>Entrée divisée en %Ln</numerusform>
        </translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Déplacer</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Morceaux</translation>
    </message>
    <message>
        <source>Say at least two parts or times.</source>
        <translation>Dites au moins deux pièces ou durées.</translation>
    </message>
    <message>
        <source>Say the day, the part, or both.</source>
        <translation>Dites le jour, la pièce, ou les deux.</translation>
    </message>
    <message>
        <source>Split</source>
        <translation>Diviser</translation>
    </message>
    <message>
        <source>The entry once for each part, with a plus sign between them.</source>
        <translation>L’entrée une fois par pièce, avec un plus entre elles.</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Vers</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>a project folder to open</source>
        <translation>un dossier de projet à ouvrir</translation>
    </message>
    <message>
        <source>One project can be opened at a time.</source>
        <translation>Un seul projet peut être ouvert à la fois.</translation>
    </message>
</context>
<context>
    <name>Mend</name>
    <message>
        <source>Sign</source>
        <translation>Signer</translation>
    </message>
    <message>
        <source>Add the sheet</source>
        <translation>Ajouter la feuille</translation>
    </message>
    <message>
        <source>Tick</source>
        <translation>Cocher</translation>
    </message>
    <message>
        <source>Add photos</source>
        <translation>Ajouter des photos</translation>
    </message>
    <message>
        <source>Ask for a visit</source>
        <translation>Demander une visite</translation>
    </message>
    <message>
        <source>Tick off</source>
        <translation>Cocher</translation>
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
            <numerusform>%Ln modification d’une autre copie est reprise</numerusform>
            <numerusform>%Ln modifications d’une autre copie sont reprises</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n files are in neither copy</source>
        <translation>
            <numerusform>%Ln fichier n’est dans aucune des copies</numerusform>
            <numerusform>%Ln fichiers ne sont dans aucune des copies</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n files copied</source>
        <translation>
            <numerusform>%Ln fichier copié</numerusform>
            <numerusform>%Ln fichiers copiés</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n things to decide</source>
        <translation>
            <numerusform>%Ln chose à décider</numerusform>
            <numerusform>%Ln choses à décider</numerusform>
        </translation>
    </message>
    <message>
        <source>Merging another copy</source>
        <translation>Fusion avec une autre copie</translation>
    </message>
    <message>
        <source>Nothing new: this project has every change of the other copy.</source>
        <translation>Rien de nouveau&#xa0;: ce projet a toutes les modifications de l’autre copie.</translation>
    </message>
    <message numerus="yes">
        <source>Nothing new: this project has every change of the other copy; %n things are still to decide.</source>
        <translation>
            <numerusform>Rien de nouveau&#xa0;: ce projet a toutes les modifications de l’autre copie&#xa0;; %Ln chose reste à décider.</numerusform>
            <numerusform>Rien de nouveau&#xa0;: ce projet a toutes les modifications de l’autre copie&#xa0;; %Ln choses restent à décider.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing was merged. %1</source>
        <translation>Rien n’a été fusionné. %1</translation>
    </message>
    <message>
        <source>nothing to decide</source>
        <translation>rien à décider</translation>
    </message>
</context>
<context>
    <name>Message</name>
    <message>
        <source>1 closing must stay open.</source>
        <translation>1 fermeture doit rester ouverte.</translation>
    </message>
    <message>
        <source>1 closing must stay open; it waits only for a signature.</source>
        <translation>1 fermeture doit rester ouverte&#xa0;; elle n’attend qu’une signature.</translation>
    </message>
    <message>
        <source>A correction is verified by a builder, an adviser or an inspector; {0} is none of them.</source>
        <translation>Une correction est vérifiée par un constructeur, un conseiller ou un inspecteur&#xa0;; {0} n’est rien de cela.</translation>
    </message>
    <message>
        <source>A full bar keeps the closing open; a broken bar is advice. Nothing on record is not the same as met.</source>
        <translation>Une barre pleine garde la fermeture ouverte&#xa0;; une barre interrompue est un conseil. Rien d’inscrit ne veut pas dire rempli.</translation>
    </message>
    <message>
        <source>A quotation mark opens a cell that does not end as it should.</source>
        <translation>Un guillemet ouvre une cellule qui ne se termine pas comme il faut.</translation>
    </message>
    <message>
        <source>A visit is planned for {0}</source>
        <translation>Une visite est prévue pour {0}</translation>
    </message>
    <message>
        <source>A visit was asked for on {0}; no day is set yet</source>
        <translation>Une visite a été demandée le {0}&#xa0;; aucun jour n’est fixé</translation>
    </message>
    <message>
        <source>Acceptance</source>
        <translation>Acceptation</translation>
    </message>
    <message>
        <source>Accepted as it is: {0}</source>
        <translation>Acceptée en l’état&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Accepted late</source>
        <translation>Accepté après coup</translation>
    </message>
    <message>
        <source>Advice</source>
        <translation>Conseil</translation>
    </message>
    <message>
        <source>Adviser, name and number</source>
        <translation>Conseiller, nom et numéro</translation>
    </message>
    <message>
        <source>Against {0}, nothing on record stands.</source>
        <translation>Contre {0}, rien n’est inscrit.</translation>
    </message>
    <message>
        <source>Aircraft</source>
        <translation>Avion</translation>
    </message>
    <message>
        <source>An object</source>
        <translation>Un objet</translation>
    </message>
    <message>
        <source>Another program has the project open for writing.</source>
        <translation>Un autre programme a ouvert le projet en écriture.</translation>
    </message>
    <message>
        <source>Applies</source>
        <translation>S’applique</translation>
    </message>
    <message>
        <source>Asked</source>
        <translation>Demandé</translation>
    </message>
    <message>
        <source>Authority&apos;s file</source>
        <translation>Dossier de l’autorité</translation>
    </message>
    <message>
        <source>Brackets are nested more than {0} levels deep.</source>
        <translation>Les parenthèses sont imbriquées sur plus de {0} niveaux.</translation>
    </message>
    <message>
        <source>Builder</source>
        <translation>Constructeur</translation>
    </message>
    <message>
        <source>Builder, name</source>
        <translation>Constructeur, nom</translation>
    </message>
    <message>
        <source>Builder, signature and date</source>
        <translation>Constructeur, signature et date</translation>
    </message>
    <message>
        <source>Built</source>
        <translation>Construit</translation>
    </message>
    <message>
        <source>Built as</source>
        <translation>Construit ainsi</translation>
    </message>
    <message>
        <source>Bulletins</source>
        <translation>Bulletins</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Par</translation>
    </message>
    <message>
        <source>Calibrated</source>
        <translation>Étalonné</translation>
    </message>
    <message>
        <source>Caption</source>
        <translation>Légende</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Avertissements</translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>Fermée</translation>
    </message>
    <message>
        <source>Closed and opened</source>
        <translation>Fermetures et ouvertures</translation>
    </message>
    <message>
        <source>Closed with gaps, and accepted by nobody yet</source>
        <translation>Fermées avec lacunes, que personne n’a encore acceptées</translation>
    </message>
    <message>
        <source>Closing</source>
        <translation>Fermeture</translation>
    </message>
    <message>
        <source>Complete</source>
        <translation>Complet</translation>
    </message>
    <message>
        <source>Complied with</source>
        <translation>Appliqué</translation>
    </message>
    <message>
        <source>Conditions</source>
        <translation>Conditions</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Sommaire</translation>
    </message>
    <message>
        <source>Correction</source>
        <translation>Correction</translation>
    </message>
    <message>
        <source>Cure time</source>
        <translation>Durée de durcissement</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Date</translation>
    </message>
    <message>
        <source>Day by day</source>
        <translation>Jour par jour</translation>
    </message>
    <message>
        <source>Deficiencies</source>
        <translation>Défauts</translation>
    </message>
    <message>
        <source>Deficiency</source>
        <translation>Défaut</translation>
    </message>
    <message>
        <source>Designer</source>
        <translation>Concepteur</translation>
    </message>
    <message>
        <source>Deviation</source>
        <translation>Écart</translation>
    </message>
    <message>
        <source>Deviations</source>
        <translation>Écarts</translation>
    </message>
    <message>
        <source>Drawing</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Encloses</source>
        <translation>Enferme</translation>
    </message>
    <message>
        <source>Every rule</source>
        <translation>Toutes les règles</translation>
    </message>
    <message>
        <source>Every rule, as it stood when it was closed</source>
        <translation>Toutes les règles, telles qu’à la fermeture</translation>
    </message>
    <message>
        <source>Fasteners and torque</source>
        <translation>Fixations et couples</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Fichier</translation>
    </message>
    <message>
        <source>Fitted</source>
        <translation>Posé</translation>
    </message>
    <message>
        <source>Fixed, to be verified by the {0}</source>
        <translation>Corrigée, à vérifier par&#xa0;: {0}</translation>
    </message>
    <message>
        <source>For closing</source>
        <translation>Pour la fermeture</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Trouvé</translation>
    </message>
    <message>
        <source>From: {0}</source>
        <translation>De&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Hardware</source>
        <translation>Quincaillerie</translation>
    </message>
    <message>
        <source>Held</source>
        <translation>Tenue</translation>
    </message>
    <message>
        <source>Hold point</source>
        <translation>Point d’arrêt</translation>
    </message>
    <message>
        <source>Hold points</source>
        <translation>Points d’arrêt</translation>
    </message>
    <message>
        <source>Inspection packet</source>
        <translation>Dossier d’inspection</translation>
    </message>
    <message>
        <source>Inspection packet: {0}</source>
        <translation>Dossier d’inspection&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Inspection packet: {0} closings</source>
        <translation>Dossier d’inspection&#xa0;: {0} fermetures</translation>
    </message>
    <message>
        <source>Inspector</source>
        <translation>Inspecteur</translation>
    </message>
    <message>
        <source>Inspector, name and number</source>
        <translation>Inspecteur, nom et numéro</translation>
    </message>
    <message>
        <source>Inspector, signature and date</source>
        <translation>Inspecteur, signature et date</translation>
    </message>
    <message>
        <source>Issuer</source>
        <translation>Émetteur</translation>
    </message>
    <message>
        <source>Its copy for printing is damaged.</source>
        <translation>Sa copie pour l’impression est endommagée.</translation>
    </message>
    <message>
        <source>Journal at printing: {0}</source>
        <translation>Registre à l’impression&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Genre</translation>
    </message>
    <message>
        <source>Kit number</source>
        <translation>Numéro de kit</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Limites</translation>
    </message>
    <message>
        <source>Lock</source>
        <translation>Freinage</translation>
    </message>
    <message>
        <source>Look at</source>
        <translation>À regarder</translation>
    </message>
    <message>
        <source>Marked</source>
        <translation>Marqué</translation>
    </message>
    <message>
        <source>Material and lot</source>
        <translation>Matériau et lot</translation>
    </message>
    <message>
        <source>Materials and lots</source>
        <translation>Matériaux et lots</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Mesuré</translation>
    </message>
    <message>
        <source>Measurement</source>
        <translation>Mesure</translation>
    </message>
    <message>
        <source>Measurements</source>
        <translation>Mesures</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Méthode</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modèle</translation>
    </message>
    <message>
        <source>Must</source>
        <translation>Obligatoire</translation>
    </message>
    <message>
        <source>No closing that was begun must stay open.</source>
        <translation>Aucune fermeture commencée ne doit rester ouverte.</translation>
    </message>
    <message>
        <source>No copy of {0} could be made: {1}.</source>
        <translation>Aucune copie de {0} n’a pu être faite&#xa0;: {1}.</translation>
    </message>
    <message>
        <source>No deviation from the drawings is on record for this region.</source>
        <translation>Aucun écart aux plans n’est inscrit pour cette zone.</translation>
    </message>
    <message>
        <source>No fastener is on record for this region.</source>
        <translation>Aucune fixation n’est inscrite pour cette zone.</translation>
    </message>
    <message>
        <source>No list was kept for this closing; these are the usual points for a structure of its kind.</source>
        <translation>Aucune liste n’a été tenue pour cette fermeture&#xa0;; voici les points habituels d’une structure de ce genre.</translation>
    </message>
    <message>
        <source>No measurement is on record for this region.</source>
        <translation>Aucune mesure n’est inscrite pour cette zone.</translation>
    </message>
    <message>
        <source>No part has the code or name {0}.</source>
        <translation>Aucune pièce n’a le code ou le nom {0}.</translation>
    </message>
    <message>
        <source>No part is called “{0}”; it goes into the note.</source>
        <translation>Aucune pièce ne s’appelle «&#xa0;{0}&#xa0;»&#xa0;; cela va dans la note.</translation>
    </message>
    <message>
        <source>No photograph of the open structure is on record.</source>
        <translation>Aucune photo de la structure ouverte n’est inscrite.</translation>
    </message>
    <message>
        <source>No squawk is on record for this region.</source>
        <translation>Aucune anomalie n’est inscrite pour cette zone.</translation>
    </message>
    <message>
        <source>No step is called “{0}”; nothing is ticked for it.</source>
        <translation>Aucune étape ne s’appelle «&#xa0;{0}&#xa0;»&#xa0;; rien n’est coché pour elle.</translation>
    </message>
    <message>
        <source>No torque or measurement of this region names its tool.</source>
        <translation>Aucun couple ni aucune mesure de cette zone ne nomme son outil.</translation>
    </message>
    <message>
        <source>No use of material is on record for this region.</source>
        <translation>Aucune utilisation de matériau n’est inscrite pour cette zone.</translation>
    </message>
    <message>
        <source>No work on record is open in the way of these closings.</source>
        <translation>Aucun travail inscrit ne fait obstacle à ces fermetures.</translation>
    </message>
    <message>
        <source>No work on this region is on record.</source>
        <translation>Aucun travail sur cette zone n’est inscrit.</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>N°</translation>
    </message>
    <message>
        <source>Not decided</source>
        <translation>Non décidé</translation>
    </message>
    <message>
        <source>Not decided, asked on {0} of {1}</source>
        <translation>Non décidé, demandé le {0} à {1}</translation>
    </message>
    <message>
        <source>Not on record</source>
        <translation>Non inscrit</translation>
    </message>
    <message>
        <source>Not signed</source>
        <translation>Non signé</translation>
    </message>
    <message>
        <source>Nothing is on record about the inside: no step, no session, no photograph</source>
        <translation>Rien n’est inscrit sur l’intérieur&#xa0;: ni étape, ni travail, ni photo</translation>
    </message>
    <message>
        <source>Nothing on record of</source>
        <translation>Rien d’inscrit sur</translation>
    </message>
    <message>
        <source>Nothing waits for an inspector or adviser at present.</source>
        <translation>Rien n’attend un inspecteur ou un conseiller pour l’instant.</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>De</translation>
    </message>
    <message>
        <source>On record</source>
        <translation>Inscrit</translation>
    </message>
    <message>
        <source>One document holds no more pictures.</source>
        <translation>Un document ne contient pas plus d’images.</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>En suspens</translation>
    </message>
    <message>
        <source>Open behind “{1}”, which is closed: {0}</source>
        <translation>Ouvert derrière «&#xa0;{1}&#xa0;», qui est fermée&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Opened</source>
        <translation>Ouverte</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>Résultat</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Pièce</translation>
    </message>
    <message>
        <source>Photo {0}</source>
        <translation>Photo {0}</translation>
    </message>
    <message>
        <source>Photographs of the open structure</source>
        <translation>Photos de la structure ouverte</translation>
    </message>
    <message>
        <source>Photos linked that were there already</source>
        <translation>Photos liées déjà présentes</translation>
    </message>
    <message>
        <source>Photos {0}</source>
        <translation>Photos {0}</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Endroit</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>Prévu</translation>
    </message>
    <message>
        <source>Planned: {0}</source>
        <translation>Prévu&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Project begun</source>
        <translation>Projet commencé</translation>
    </message>
    <message>
        <source>Qty</source>
        <translation>Qté</translation>
    </message>
    <message>
        <source>Readiness</source>
        <translation>Préparation</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motif</translation>
    </message>
    <message>
        <source>Reason given</source>
        <translation>Motif donné</translation>
    </message>
    <message>
        <source>Reason: {0}</source>
        <translation>Motif&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Received</source>
        <translation>Reçu</translation>
    </message>
    <message>
        <source>Registration</source>
        <translation>Immatriculation</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Remarques</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Rapport</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Rôle</translation>
    </message>
    <message>
        <source>Rules</source>
        <translation>Règles</translation>
    </message>
    <message>
        <source>Sample</source>
        <translation>Éprouvette</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Numéro de série</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Séances</translation>
    </message>
    <message>
        <source>Sheets signed before</source>
        <translation>Feuilles déjà signées</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Signature</translation>
    </message>
    <message>
        <source>Signed before: {0}, {1}, {2}</source>
        <translation>Signé auparavant&#xa0;: {0}, {1}, {2}</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Source</translation>
    </message>
    <message>
        <source>Squawk</source>
        <translation>Anomalie</translation>
    </message>
    <message>
        <source>Squawk {0} is for an adviser or an inspector to verify; {1} is neither.</source>
        <translation>L’anomalie {0} est à vérifier par un conseiller ou un inspecteur&#xa0;; {1} n’est ni l’un ni l’autre.</translation>
    </message>
    <message>
        <source>Squawk {0} is for an inspector to verify; {1} is none.</source>
        <translation>L’anomalie {0} est à vérifier par un inspecteur&#xa0;; {1} ne l’est pas.</translation>
    </message>
    <message>
        <source>Squawk {0} matters for airworthiness: only a designer, an adviser or an inspector may accept it as it is, and {1} is none of them.</source>
        <translation>L’anomalie {0} touche la navigabilité&#xa0;: seul un concepteur, un conseiller ou un inspecteur peut l’accepter en l’état, et {1} n’est rien de cela.</translation>
    </message>
    <message>
        <source>Squawks</source>
        <translation>Anomalies</translation>
    </message>
    <message>
        <source>Standing</source>
        <translation>Situation</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>Commencé</translation>
    </message>
    <message>
        <source>State</source>
        <translation>État</translation>
    </message>
    <message>
        <source>State of the records on {0}. This is the builder&apos;s record, not an approval.</source>
        <translation>État des dossiers le {0}. Ceci est le dossier du constructeur, pas une approbation.</translation>
    </message>
    <message>
        <source>Taken</source>
        <translation>Prise</translation>
    </message>
    <message>
        <source>The authority&apos;s own report form governs, number:</source>
        <translation>Le formulaire de l’autorité fait foi, numéro&#xa0;:</translation>
    </message>
    <message>
        <source>The character U+0000 is not allowed in a text.</source>
        <translation>Le caractère U+0000 n’est pas permis dans un texte.</translation>
    </message>
    <message>
        <source>The document is a list, not an object.</source>
        <translation>Le document est une liste, pas un objet.</translation>
    </message>
    <message>
        <source>The document is {0}, not an object.</source>
        <translation>Le document est {0}, pas un objet.</translation>
    </message>
    <message>
        <source>The field {0} is missing.</source>
        <translation>Le champ {0} manque.</translation>
    </message>
    <message>
        <source>The file is not the one that the record describes; its SHA-256 is {0}.</source>
        <translation>Le fichier n’est pas celui décrit&#xa0;; son SHA-256 est {0}.</translation>
    </message>
    <message>
        <source>The file name is not one that a file of a project may have.</source>
        <translation>Un fichier de projet ne peut pas porter ce nom.</translation>
    </message>
    <message>
        <source>The file name leads out of the document&apos;s folder.</source>
        <translation>Le nom de fichier mène hors du dossier du document.</translation>
    </message>
    <message>
        <source>The id {0} is that of {1} already.</source>
        <translation>L’identifiant {0} est déjà celui de {1}.</translation>
    </message>
    <message>
        <source>The inspector&apos;s list</source>
        <translation>La liste de l’inspecteur</translation>
    </message>
    <message>
        <source>The list is empty.</source>
        <translation>La liste est vide.</translation>
    </message>
    <message>
        <source>The newest photograph is older than the last work inside</source>
        <translation>La photo la plus récente est plus ancienne que le dernier travail à l’intérieur</translation>
    </message>
    <message>
        <source>The profile copy is of {0}, but the project goes by {1}.</source>
        <translation>La copie du profil est de {0}, mais le projet suit {1}.</translation>
    </message>
    <message>
        <source>The project goes by another rule profile.</source>
        <translation>Le projet suit un autre profil de règles.</translation>
    </message>
    <message>
        <source>The project has another file of this name.</source>
        <translation>Le projet a un autre fichier de ce nom.</translation>
    </message>
    <message>
        <source>The project has this record with other content; they differ in {0} first.</source>
        <translation>Le projet a cet enregistrement avec un autre contenu&#xa0;; ils diffèrent d’abord par {0}.</translation>
    </message>
    <message>
        <source>The project is missing.</source>
        <translation>Le projet manque.</translation>
    </message>
    <message>
        <source>The project on record is another one; they differ in {0} first.</source>
        <translation>Le projet inscrit est un autre&#xa0;; ils diffèrent d’abord par {0}.</translation>
    </message>
    <message>
        <source>The project was opened for reading only.</source>
        <translation>Le projet est ouvert en lecture seule.</translation>
    </message>
    <message>
        <source>The project&apos;s folder cannot be written.</source>
        <translation>Impossible d’écrire dans le dossier du projet.</translation>
    </message>
    <message>
        <source>The row has {0} cells, but the header only {1}.</source>
        <translation>La ligne a {0} cellules, l’en-tête seulement {1}.</translation>
    </message>
    <message>
        <source>The sheet to sign</source>
        <translation>La feuille à signer</translation>
    </message>
    <message>
        <source>There are several parts called {0}; name it by code or id.</source>
        <translation>Plusieurs pièces s’appellent {0}&#xa0;; nommez-la par code ou identifiant.</translation>
    </message>
    <message>
        <source>There are several people called {0}; name them by id.</source>
        <translation>Plusieurs personnes s’appellent {0}&#xa0;; nommez-les par identifiant.</translation>
    </message>
    <message>
        <source>There is no field of this name.</source>
        <translation>Il n’y a pas de champ de ce nom.</translation>
    </message>
    <message>
        <source>There is no list for this closing.</source>
        <translation>Il n’y a pas de liste pour cette fermeture.</translation>
    </message>
    <message>
        <source>There is no rule profile {0}; there are {1}.</source>
        <translation>Il n’y a pas de profil de règles {0}&#xa0;; il y a {1}.</translation>
    </message>
    <message>
        <source>There is nobody called {0}.</source>
        <translation>Personne ne s’appelle {0}.</translation>
    </message>
    <message>
        <source>There is nothing of this name in a document.</source>
        <translation>Rien ne porte ce nom dans un document.</translation>
    </message>
    <message>
        <source>There is nothing to redo.</source>
        <translation>Il n’y a rien à refaire.</translation>
    </message>
    <message>
        <source>There is nothing to undo.</source>
        <translation>Il n’y a rien à annuler.</translation>
    </message>
    <message>
        <source>This closing has no hold point.</source>
        <translation>Cette fermeture n’a pas de point d’arrêt.</translation>
    </message>
    <message>
        <source>This field must not be null.</source>
        <translation>Ce champ ne doit pas être nul.</translation>
    </message>
    <message>
        <source>This field stands twice.</source>
        <translation>Ce champ figure deux fois.</translation>
    </message>
    <message>
        <source>This is a list, not an object.</source>
        <translation>C’est une liste, pas un objet.</translation>
    </message>
    <message>
        <source>This is a list, which does not belong here.</source>
        <translation>C’est une liste, qui n’a pas sa place ici.</translation>
    </message>
    <message>
        <source>This is an object, which does not belong here.</source>
        <translation>C’est un objet, qui n’a pas sa place ici.</translation>
    </message>
    <message>
        <source>This is no document of format {0}: {1} is missing.</source>
        <translation>Ce n’est pas un document au format {0}&#xa0;: {1} manque.</translation>
    </message>
    <message>
        <source>This photograph could not be printed.</source>
        <translation>Cette photo n’a pas pu être imprimée.</translation>
    </message>
    <message>
        <source>This stands twice in the document.</source>
        <translation>Ceci figure deux fois dans le document.</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Temps</translation>
    </message>
    <message>
        <source>Time not written down</source>
        <translation>Temps non noté</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titre</translation>
    </message>
    <message>
        <source>To be closed</source>
        <translation>À fermer</translation>
    </message>
    <message>
        <source>Too few photographs of the inside</source>
        <translation>Trop peu de photos de l’intérieur</translation>
    </message>
    <message>
        <source>Tool</source>
        <translation>Outil</translation>
    </message>
    <message>
        <source>Tool calibration</source>
        <translation>Étalonnage des outils</translation>
    </message>
    <message>
        <source>Torque</source>
        <translation>Couple</translation>
    </message>
    <message>
        <source>Triangle filled: airworthiness. Half filled: workmanship. Outline: cosmetic. Open ones come first.</source>
        <translation>Triangle plein&#xa0;: navigabilité. À moitié plein&#xa0;: exécution. Contour&#xa0;: aspect. Les ouvertes d’abord.</translation>
    </message>
    <message>
        <source>Type</source>
        <translation>Type</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unité</translation>
    </message>
    <message>
        <source>Used</source>
        <translation>Utilisé</translation>
    </message>
    <message>
        <source>Used here</source>
        <translation>Utilisé ici</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valeur</translation>
    </message>
    <message>
        <source>Verified</source>
        <translation>Vérifiée</translation>
    </message>
    <message>
        <source>Videos, to be asked for</source>
        <translation>Vidéos, sur demande</translation>
    </message>
    <message>
        <source>Visit</source>
        <translation>Visite</translation>
    </message>
    <message>
        <source>Visits</source>
        <translation>Visites</translation>
    </message>
    <message>
        <source>Waits for</source>
        <translation>Attend</translation>
    </message>
    <message>
        <source>Waived</source>
        <translation>Dispensé</translation>
    </message>
    <message>
        <source>Waived on {0} by {1}: {2}</source>
        <translation>Dispensé le {0} par {1}&#xa0;: {2}</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>What is asked</source>
        <translation>Ce qui est demandé</translation>
    </message>
    <message>
        <source>What is asked of the records</source>
        <translation>Ce qui est demandé aux dossiers</translation>
    </message>
    <message>
        <source>What is open</source>
        <translation>Ce qui est ouvert</translation>
    </message>
    <message>
        <source>What was missing</source>
        <translation>Ce qui manquait</translation>
    </message>
    <message>
        <source>What would clear it</source>
        <translation>Ce qui le réglerait</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Qui</translation>
    </message>
    <message>
        <source>Who did it</source>
        <translation>Qui l’a fait</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>Work log</source>
        <translation>Carnet</translation>
    </message>
    <message>
        <source>Worst of {1} closings on {0}. This is the builder&apos;s record, not an approval.</source>
        <translation>Le pire état de {1} fermetures le {0}. Ceci est le dossier du constructeur, pas une approbation.</translation>
    </message>
    <message>
        <source>about {0}</source>
        <translation>environ {0}</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>accepté</translation>
    </message>
    <message>
        <source>accepted with findings</source>
        <translation>accepté avec constatations</translation>
    </message>
    <message>
        <source>advice</source>
        <translation>conseil</translation>
    </message>
    <message>
        <source>adviser</source>
        <translation>conseiller</translation>
    </message>
    <message>
        <source>airworthiness</source>
        <translation>navigabilité</translation>
    </message>
    <message>
        <source>an inspection list</source>
        <translation>une liste d’inspection</translation>
    </message>
    <message>
        <source>applies</source>
        <translation>s’applique</translation>
    </message>
    <message>
        <source>approved</source>
        <translation>approuvé</translation>
    </message>
    <message>
        <source>assembly</source>
        <translation>assemblage</translation>
    </message>
    <message>
        <source>builder</source>
        <translation>constructeur</translation>
    </message>
    <message>
        <source>bulletin</source>
        <translation>bulletin</translation>
    </message>
    <message>
        <source>bulletin {0}, {1}</source>
        <translation>bulletin {0}, {1}</translation>
    </message>
    <message>
        <source>by message</source>
        <translation>par message</translation>
    </message>
    <message>
        <source>by photograph</source>
        <translation>sur photo</translation>
    </message>
    <message>
        <source>by video</source>
        <translation>sur vidéo</translation>
    </message>
    <message>
        <source>calibrated_on</source>
        <translation>étalonné le</translation>
    </message>
    <message>
        <source>can be opened again</source>
        <translation>peut être rouverte</translation>
    </message>
    <message>
        <source>certificate document</source>
        <translation>document de certification</translation>
    </message>
    <message>
        <source>check</source>
        <translation>point de contrôle</translation>
    </message>
    <message>
        <source>check it with a calibrated tool</source>
        <translation>le contrôler avec un outil étalonné</translation>
    </message>
    <message>
        <source>close that one first</source>
        <translation>fermer d’abord celle-là</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>fermée</translation>
    </message>
    <message>
        <source>closed before these records began; the inspector decides</source>
        <translation>fermée avant le début de ces dossiers&#xa0;; l’inspecteur décide</translation>
    </message>
    <message>
        <source>closed by the maker</source>
        <translation>fermée par le fabricant</translation>
    </message>
    <message>
        <source>closed with gaps</source>
        <translation>fermée avec lacunes</translation>
    </message>
    <message>
        <source>closing</source>
        <translation>fermeture</translation>
    </message>
    <message>
        <source>commercial help</source>
        <translation>aide commerciale</translation>
    </message>
    <message>
        <source>comply and record it, or record that it does not apply</source>
        <translation>l’appliquer et l’inscrire, ou inscrire qu’il est sans objet</translation>
    </message>
    <message>
        <source>correct it and have it verified, or have it accepted</source>
        <translation>la corriger et la faire vérifier, ou la faire accepter</translation>
    </message>
    <message>
        <source>correct it and measure again, or record who accepts it and on what basis</source>
        <translation>corriger et mesurer de nouveau, ou inscrire qui l’accepte et sur quelle base</translation>
    </message>
    <message>
        <source>cosmetic</source>
        <translation>aspect</translation>
    </message>
    <message>
        <source>credit task</source>
        <translation>tâche de la majeure partie</translation>
    </message>
    <message>
        <source>cure times are known</source>
        <translation>les durées de durcissement sont connues</translation>
    </message>
    <message>
        <source>designer</source>
        <translation>concepteur</translation>
    </message>
    <message>
        <source>deviation</source>
        <translation>écart</translation>
    </message>
    <message>
        <source>deviation {0}, {1}</source>
        <translation>écart {0}, {1}</translation>
    </message>
    <message>
        <source>deviations {0}</source>
        <translation>écarts {0}</translation>
    </message>
    <message>
        <source>directive</source>
        <translation>consigne</translation>
    </message>
    <message>
        <source>directive {0}, {1}</source>
        <translation>consigne {0}, {1}</translation>
    </message>
    <message>
        <source>do it, or drop it</source>
        <translation>la faire, ou l’abandonner</translation>
    </message>
    <message>
        <source>does not apply</source>
        <translation>ne s’applique pas</translation>
    </message>
    <message>
        <source>drawing change</source>
        <translation>modification de plan</translation>
    </message>
    <message>
        <source>drawing change {0}, {1}</source>
        <translation>modification de plan {0}, {1}</translation>
    </message>
    <message>
        <source>due_on</source>
        <translation>échéance</translation>
    </message>
    <message>
        <source>earlier builder</source>
        <translation>constructeur précédent</translation>
    </message>
    <message>
        <source>enter its cure time, from the lot&apos;s data sheet</source>
        <translation>inscrire sa durée de durcissement, d’après la fiche du lot</translation>
    </message>
    <message>
        <source>enter the findings of the rejection as squawks of that inspection</source>
        <translation>inscrire les constatations du refus comme anomalies de cette inspection</translation>
    </message>
    <message>
        <source>envelope</source>
        <translation>domaine de centrage</translation>
    </message>
    <message>
        <source>equipment</source>
        <translation>équipement</translation>
    </message>
    <message>
        <source>every box within is closed</source>
        <translation>chaque caisson intérieur est fermé</translation>
    </message>
    <message>
        <source>every bulletin that applies is complied with</source>
        <translation>chaque bulletin applicable est appliqué</translation>
    </message>
    <message>
        <source>every deviation is decided</source>
        <translation>chaque écart est décidé</translation>
    </message>
    <message>
        <source>every fastener is fitted</source>
        <translation>chaque fixation est posée</translation>
    </message>
    <message>
        <source>every fastener with a torque limit is torqued</source>
        <translation>chaque fixation à couple limité est serrée</translation>
    </message>
    <message>
        <source>every hold point is signed</source>
        <translation>chaque point d’arrêt est signé</translation>
    </message>
    <message>
        <source>every line of the inspection list is ticked</source>
        <translation>chaque ligne de la liste d’inspection est cochée</translation>
    </message>
    <message>
        <source>every lock made by hand is in place</source>
        <translation>chaque freinage fait à la main est en place</translation>
    </message>
    <message>
        <source>every measurement is taken</source>
        <translation>chaque mesure est prise</translation>
    </message>
    <message>
        <source>every measurement is within its limits</source>
        <translation>chaque mesure est dans ses limites</translation>
    </message>
    <message>
        <source>every part has arrived undamaged</source>
        <translation>chaque pièce est arrivée intacte</translation>
    </message>
    <message>
        <source>every squawk is verified or accepted</source>
        <translation>chaque anomalie est vérifiée ou acceptée</translation>
    </message>
    <message>
        <source>every step is done or dropped</source>
        <translation>chaque étape est faite ou abandonnée</translation>
    </message>
    <message>
        <source>every torque is within its limits</source>
        <translation>chaque couple est dans ses limites</translation>
    </message>
    <message>
        <source>every torqued fastener carries its mark</source>
        <translation>chaque fixation serrée porte sa marque</translation>
    </message>
    <message>
        <source>everything that cures has cured</source>
        <translation>tout ce qui durcit a durci</translation>
    </message>
    <message>
        <source>expense</source>
        <translation>dépense</translation>
    </message>
    <message>
        <source>fabrication</source>
        <translation>fabrication</translation>
    </message>
    <message>
        <source>fastener</source>
        <translation>fixation</translation>
    </message>
    <message>
        <source>fasteners and torques</source>
        <translation>fixations et couples</translation>
    </message>
    <message>
        <source>file</source>
        <translation>fichier</translation>
    </message>
    <message>
        <source>final inspection</source>
        <translation>inspection finale</translation>
    </message>
    <message>
        <source>finding {0}</source>
        <translation>constatation {0}</translation>
    </message>
    <message>
        <source>finishing</source>
        <translation>finition</translation>
    </message>
    <message>
        <source>fit it and record the day</source>
        <translation>la poser et inscrire le jour</translation>
    </message>
    <message>
        <source>flight</source>
        <translation>vol</translation>
    </message>
    <message>
        <source>from a kit</source>
        <translation>d’un kit</translation>
    </message>
    <message>
        <source>from plans</source>
        <translation>sur plans</translation>
    </message>
    <message>
        <source>have it signed</source>
        <translation>le faire signer</translation>
    </message>
    <message>
        <source>have it signed again, or say of each session whether it changed what was inspected</source>
        <translation>le faire signer de nouveau, ou dire de chaque séance si elle a modifié ce qui était inspecté</translation>
    </message>
    <message>
        <source>have it verified</source>
        <translation>la faire vérifier</translation>
    </message>
    <message>
        <source>have the inspector accept it late, or open it again</source>
        <translation>la faire accepter après coup par l’inspecteur, ou la rouvrir</translation>
    </message>
    <message>
        <source>helper</source>
        <translation>aide</translation>
    </message>
    <message>
        <source>hold point</source>
        <translation>point d’arrêt</translation>
    </message>
    <message>
        <source>independent check</source>
        <translation>contrôle indépendant</translation>
    </message>
    <message>
        <source>inspection</source>
        <translation>inspection</translation>
    </message>
    <message>
        <source>inspection {0}</source>
        <translation>inspection {0}</translation>
    </message>
    <message>
        <source>inspector</source>
        <translation>inspecteur</translation>
    </message>
    <message>
        <source>jam nut</source>
        <translation>contre-écrou</translation>
    </message>
    <message>
        <source>letter</source>
        <translation>lettre</translation>
    </message>
    <message>
        <source>letter {0}, {1}</source>
        <translation>lettre {0}, {1}</translation>
    </message>
    <message>
        <source>lines of fasteners {0}</source>
        <translation>lignes de fixations {0}</translation>
    </message>
    <message>
        <source>loading case</source>
        <translation>cas de chargement</translation>
    </message>
    <message>
        <source>lock it and record the day</source>
        <translation>la freiner et inscrire le jour</translation>
    </message>
    <message>
        <source>lock tab</source>
        <translation>frein en tôle</translation>
    </message>
    <message>
        <source>log entry</source>
        <translation>entrée du carnet</translation>
    </message>
    <message>
        <source>look, and tick it or say that it does not apply</source>
        <translation>regarder, puis cocher ou dire sans objet</translation>
    </message>
    <message>
        <source>mark it and record the day</source>
        <translation>la marquer et inscrire le jour</translation>
    </message>
    <message>
        <source>material</source>
        <translation>matériau</translation>
    </message>
    <message>
        <source>material lot</source>
        <translation>lot de matériau</translation>
    </message>
    <message>
        <source>material use</source>
        <translation>utilisation de matériau</translation>
    </message>
    <message>
        <source>measure it and record the value</source>
        <translation>mesurer et inscrire la valeur</translation>
    </message>
    <message>
        <source>measurement</source>
        <translation>mesure</translation>
    </message>
    <message>
        <source>measurements {0}</source>
        <translation>mesures {0}</translation>
    </message>
    <message>
        <source>met</source>
        <translation>rempli</translation>
    </message>
    <message>
        <source>mix {0}</source>
        <translation>mélange {0}</translation>
    </message>
    <message>
        <source>new {0}</source>
        <translation>nouveau&#xa0;: {0}</translation>
    </message>
    <message>
        <source>no box within was closed with gaps</source>
        <translation>aucun caisson intérieur n’a été fermé avec lacunes</translation>
    </message>
    <message>
        <source>no calibration on record</source>
        <translation>aucun étalonnage inscrit</translation>
    </message>
    <message>
        <source>no document on record in which the maker names it as closed</source>
        <translation>aucun document inscrit où le fabricant la dit fermée</translation>
    </message>
    <message>
        <source>no material was used past its date</source>
        <translation>aucun matériau n’a été utilisé après sa date</translation>
    </message>
    <message>
        <source>no rejected deviation is left as built</source>
        <translation>aucun écart refusé n’est resté construit</translation>
    </message>
    <message>
        <source>no sample</source>
        <translation>pas d’éprouvette</translation>
    </message>
    <message>
        <source>no sheet filed</source>
        <translation>aucune feuille classée</translation>
    </message>
    <message>
        <source>no test sample failed</source>
        <translation>aucune éprouvette n’a échoué</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>not fitted</source>
        <translation>non posé</translation>
    </message>
    <message>
        <source>not locked</source>
        <translation>non freiné</translation>
    </message>
    <message>
        <source>not looked into</source>
        <translation>non examiné</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>non mesuré</translation>
    </message>
    <message>
        <source>not met</source>
        <translation>non rempli</translation>
    </message>
    <message>
        <source>not needed</source>
        <translation>pas nécessaire</translation>
    </message>
    <message>
        <source>not torqued</source>
        <translation>non serré</translation>
    </message>
    <message>
        <source>nothing on record</source>
        <translation>rien d’inscrit</translation>
    </message>
    <message>
        <source>nothing on record against closing</source>
        <translation>rien d’inscrit contre la fermeture</translation>
    </message>
    <message>
        <source>nothing open is filed on a larger assembly</source>
        <translation>rien d’ouvert n’est classé sur un ensemble plus grand</translation>
    </message>
    <message>
        <source>nothing was changed after a signature</source>
        <translation>rien n’a été modifié après une signature</translation>
    </message>
    <message>
        <source>open</source>
        <translation>ouvert</translation>
    </message>
    <message>
        <source>other</source>
        <translation>autre</translation>
    </message>
    <message>
        <source>own check</source>
        <translation>contrôle par le constructeur</translation>
    </message>
    <message>
        <source>packing line</source>
        <translation>ligne de colisage</translation>
    </message>
    <message>
        <source>packing lists</source>
        <translation>listes de colisage</translation>
    </message>
    <message>
        <source>page {0} of {1}</source>
        <translation>page {0} sur {1}</translation>
    </message>
    <message>
        <source>paid</source>
        <translation>payé</translation>
    </message>
    <message>
        <source>part</source>
        <translation>pièce</translation>
    </message>
    <message>
        <source>permanent</source>
        <translation>définitive</translation>
    </message>
    <message>
        <source>person</source>
        <translation>personne</translation>
    </message>
    <message>
        <source>photograph it as it is now</source>
        <translation>la photographier dans son état actuel</translation>
    </message>
    <message>
        <source>photograph the open structure</source>
        <translation>photographier la structure ouverte</translation>
    </message>
    <message>
        <source>photograph the signed sheet</source>
        <translation>photographier la feuille signée</translation>
    </message>
    <message>
        <source>photographs {0}</source>
        <translation>photos {0}</translation>
    </message>
    <message>
        <source>planning</source>
        <translation>planification</translation>
    </message>
    <message>
        <source>pre-cover inspection</source>
        <translation>inspection avant fermeture</translation>
    </message>
    <message>
        <source>premature end</source>
        <translation>fin prématurée</translation>
    </message>
    <message>
        <source>project</source>
        <translation>projet</translation>
    </message>
    <message>
        <source>record the decision and its basis</source>
        <translation>inscrire la décision et sa base</translation>
    </message>
    <message>
        <source>record what has been received</source>
        <translation>inscrire ce qui a été reçu</translation>
    </message>
    <message>
        <source>record what was done, however roughly</source>
        <translation>inscrire ce qui a été fait, même en gros</translation>
    </message>
    <message>
        <source>rejected</source>
        <translation>refusé</translation>
    </message>
    <message>
        <source>replace it, or record who accepts it and on what basis</source>
        <translation>le remplacer, ou inscrire qui l’accepte et sur quelle base</translation>
    </message>
    <message>
        <source>rework</source>
        <translation>reprise</translation>
    </message>
    <message>
        <source>safety wire</source>
        <translation>fil à freiner</translation>
    </message>
    <message>
        <source>sample failed</source>
        <translation>éprouvette en échec</translation>
    </message>
    <message>
        <source>sample good</source>
        <translation>éprouvette bonne</translation>
    </message>
    <message>
        <source>sample kept</source>
        <translation>éprouvette gardée</translation>
    </message>
    <message>
        <source>say where it is, or that it is not inside</source>
        <translation>dire où c’est, ou que ce n’est pas à l’intérieur</translation>
    </message>
    <message>
        <source>seen on site</source>
        <translation>vu sur place</translation>
    </message>
    <message>
        <source>self-locking nut</source>
        <translation>écrou autofreiné</translation>
    </message>
    <message>
        <source>sign-off</source>
        <translation>visa</translation>
    </message>
    <message>
        <source>signature of {0}</source>
        <translation>signature du {0}</translation>
    </message>
    <message>
        <source>signature of {0} by {1}</source>
        <translation>signature du {0} par {1}</translation>
    </message>
    <message>
        <source>split pin</source>
        <translation>goupille fendue</translation>
    </message>
    <message>
        <source>squawk</source>
        <translation>anomalie</translation>
    </message>
    <message>
        <source>squawk {0}</source>
        <translation>anomalie {0}</translation>
    </message>
    <message>
        <source>squawk {0}, {1}</source>
        <translation>anomalie {0}, {1}</translation>
    </message>
    <message>
        <source>squawks {0}</source>
        <translation>anomalies {0}</translation>
    </message>
    <message>
        <source>stage inspection</source>
        <translation>inspection d’étape</translation>
    </message>
    <message>
        <source>stays open, waits for the inspector</source>
        <translation>reste ouverte, attend l’inspecteur</translation>
    </message>
    <message>
        <source>stays open, waits for your signature</source>
        <translation>reste ouverte, attend votre signature</translation>
    </message>
    <message>
        <source>stays open, work left</source>
        <translation>reste ouverte, du travail reste</translation>
    </message>
    <message>
        <source>step</source>
        <translation>étape</translation>
    </message>
    <message>
        <source>steps {0}</source>
        <translation>étapes {0}</translation>
    </message>
    <message>
        <source>taken in on {0}</source>
        <translation>importée le {0}</translation>
    </message>
    <message>
        <source>technical visit</source>
        <translation>visite technique</translation>
    </message>
    <message>
        <source>the open structure is photographed</source>
        <translation>la structure ouverte est photographiée</translation>
    </message>
    <message>
        <source>the photographs are as new as the work</source>
        <translation>les photos sont aussi récentes que le travail</translation>
    </message>
    <message>
        <source>the signed sheets are filed</source>
        <translation>les feuilles signées sont classées</translation>
    </message>
    <message>
        <source>there is no such folder</source>
        <translation>ce dossier n’existe pas</translation>
    </message>
    <message>
        <source>there is work on record</source>
        <translation>du travail est inscrit</translation>
    </message>
    <message>
        <source>thread locker</source>
        <translation>frein-filet</translation>
    </message>
    <message>
        <source>tool</source>
        <translation>outil</translation>
    </message>
    <message>
        <source>tool and debris check</source>
        <translation>contrôle des outils et corps étrangers</translation>
    </message>
    <message>
        <source>tools were in calibration when used</source>
        <translation>les outils étaient étalonnés quand ils ont servi</translation>
    </message>
    <message>
        <source>torque it again, or record who accepts it and on what basis</source>
        <translation>la resserrer, ou inscrire qui l’accepte et sur quelle base</translation>
    </message>
    <message>
        <source>torque it and record the value</source>
        <translation>la serrer et inscrire la valeur</translation>
    </message>
    <message>
        <source>torqued</source>
        <translation>serré</translation>
    </message>
    <message>
        <source>undo it and record the day, or have it decided anew</source>
        <translation>le défaire et inscrire le jour, ou le faire décider de nouveau</translation>
    </message>
    <message>
        <source>undone on {0}</source>
        <translation>défait le {0}</translation>
    </message>
    <message>
        <source>uses of material {0}</source>
        <translation>utilisations de matériau {0}</translation>
    </message>
    <message>
        <source>wait until the cure time has passed</source>
        <translation>attendre la fin du durcissement</translation>
    </message>
    <message>
        <source>weighing</source>
        <translation>pesée</translation>
    </message>
    <message>
        <source>work on {0}</source>
        <translation>travail sur {0}</translation>
    </message>
    <message>
        <source>work sessions</source>
        <translation>séances de travail</translation>
    </message>
    <message>
        <source>work sessions {0}</source>
        <translation>séances de travail {0}</translation>
    </message>
    <message>
        <source>workmanship</source>
        <translation>exécution</translation>
    </message>
    <message>
        <source>workshop visit</source>
        <translation>visite d’atelier</translation>
    </message>
    <message>
        <source>{0}</source>
        <translation>{0}</translation>
    </message>
    <message>
        <source>{0} at {1}</source>
        <translation>{0} à {1}</translation>
    </message>
    <message>
        <source>{0} batch</source>
        <translation>{0} mélange</translation>
    </message>
    <message>
        <source>{0} batches</source>
        <translation>{0} mélanges</translation>
    </message>
    <message>
        <source>{0} belongs to {1} and cannot enclose {2}, which is above it.</source>
        <translation>{0} appartient à {1} et ne peut enfermer {2}, qui est au-dessus.</translation>
    </message>
    <message>
        <source>{0} box within</source>
        <translation>{0} caisson intérieur</translation>
    </message>
    <message>
        <source>{0} boxes within</source>
        <translation>{0} caissons intérieurs</translation>
    </message>
    <message>
        <source>{0} built</source>
        <translation>construits&#xa0;: {0}</translation>
    </message>
    <message>
        <source>{0} bulletin</source>
        <translation>{0} bulletin</translation>
    </message>
    <message>
        <source>{0} bulletins</source>
        <translation>{0} bulletins</translation>
    </message>
    <message>
        <source>{0} claims {1} × {2} pixels, more than can be shown.</source>
        <translation>{0} annonce {1} × {2} pixels, plus qu’on ne peut montrer.</translation>
    </message>
    <message>
        <source>{0} closings by the factory have no document on record; the first is {1}</source>
        <translation>{0} fermetures d’usine n’ont pas de document inscrit&#xa0;; la première est {1}</translation>
    </message>
    <message>
        <source>{0} closings must stay open, 1 of them waits only for a signature.</source>
        <translation>{0} fermetures doivent rester ouvertes, dont 1 n’attend qu’une signature.</translation>
    </message>
    <message>
        <source>{0} closings must stay open, {1} of them wait only for a signature.</source>
        <translation>{0} fermetures doivent rester ouvertes, dont {1} n’attendent qu’une signature.</translation>
    </message>
    <message>
        <source>{0} closings must stay open.</source>
        <translation>{0} fermetures doivent rester ouvertes.</translation>
    </message>
    <message>
        <source>{0} dated batch</source>
        <translation>{0} mélange daté</translation>
    </message>
    <message>
        <source>{0} dated batches</source>
        <translation>{0} mélanges datés</translation>
    </message>
    <message>
        <source>{0} deviation</source>
        <translation>{0} écart</translation>
    </message>
    <message>
        <source>{0} deviations</source>
        <translation>{0} écarts</translation>
    </message>
    <message>
        <source>{0} does not apply, but has {1} tenths instead of none.</source>
        <translation>{0} est sans objet, mais a {1} dixièmes au lieu d’aucun.</translation>
    </message>
    <message>
        <source>{0} encloses nothing; a region encloses at least one part.</source>
        <translation>{0} n’enferme rien&#xa0;; une zone enferme au moins une pièce.</translation>
    </message>
    <message>
        <source>{0} filed above</source>
        <translation>{0} au-dessus</translation>
    </message>
    <message>
        <source>{0} has a share that is not between 0 and 10 tenths.</source>
        <translation>{0} a une part qui n’est pas entre 0 et 10 dixièmes.</translation>
    </message>
    <message>
        <source>{0} has an id that is not between 1 and {1}.</source>
        <translation>{0} a un identifiant qui n’est pas entre 1 et {1}.</translation>
    </message>
    <message>
        <source>{0} has shares that add up to {1} tenths instead of 10.</source>
        <translation>{0} a des parts dont la somme est {1} dixièmes au lieu de 10.</translation>
    </message>
    <message>
        <source>{0} has the code {1}, which the part with id {2} already has.</source>
        <translation>{0} a le code {1}, que porte déjà la pièce d’identifiant {2}.</translation>
    </message>
    <message>
        <source>{0} has the number {1}, which the one with id {2} already has.</source>
        <translation>{0} a le numéro {1}, que porte déjà l’identifiant {2}.</translation>
    </message>
    <message>
        <source>{0} has {1} at work for {2} minutes, longer than it lasted.</source>
        <translation>{0}&#xa0;: {1} aurait travaillé {2} minutes, plus que la durée.</translation>
    </message>
    <message>
        <source>{0} has {1} at work for {2} minutes.</source>
        <translation>{0}&#xa0;: {1} aurait travaillé {2} minutes.</translation>
    </message>
    <message>
        <source>{0} has {1} {2}, which is before {3} {4}.</source>
        <translation>{0}&#xa0;: {1} {2} est avant {3} {4}.</translation>
    </message>
    <message>
        <source>{0} has {1}, but no {2}.</source>
        <translation>{0}&#xa0;: {1} est là, mais {2} manque.</translation>
    </message>
    <message>
        <source>{0} hold point</source>
        <translation>{0} point d’arrêt</translation>
    </message>
    <message>
        <source>{0} hold points</source>
        <translation>{0} points d’arrêt</translation>
    </message>
    <message>
        <source>{0} in {1}</source>
        <translation>{0} dans {1}</translation>
    </message>
    <message>
        <source>{0} is a second closing of the whole aircraft; the first is {1}.</source>
        <translation>{0} est une deuxième fermeture de l’avion entier&#xa0;; la première est {1}.</translation>
    </message>
    <message>
        <source>{0} is accepted late by {1}, which is of a hold point.</source>
        <translation>{0} est acceptée après coup par {1}, qui est d’un point d’arrêt.</translation>
    </message>
    <message>
        <source>{0} is accepted late by {1}, who may not do that under this rule profile; a builder who may must add remarks.</source>
        <translation>{0} est acceptée après coup par {1}, ce que ce profil de règles ne permet pas&#xa0;; un constructeur qui le peut doit ajouter des remarques.</translation>
    </message>
    <message>
        <source>{0} is another format than {1}.</source>
        <translation>{0} est un autre format que {1}.</translation>
    </message>
    <message>
        <source>{0} is another version than {1}, the only one that is read here.</source>
        <translation>{0} est une autre version que {1}, la seule lue ici.</translation>
    </message>
    <message>
        <source>{0} is cut short: its end is missing. Copy it from the camera again.</source>
        <translation>{0} est tronqué&#xa0;: sa fin manque. Recopiez-le depuis l’appareil.</translation>
    </message>
    <message>
        <source>{0} is damaged and cannot be shown as a picture.</source>
        <translation>{0} est endommagé et ne peut être montré comme image.</translation>
    </message>
    <message>
        <source>{0} is filed on a larger part and may lie inside</source>
        <translation>{0} figure sur une pièce plus grande et peut se trouver à l’intérieur</translation>
    </message>
    <message>
        <source>{0} is for {1} or a higher role to sign, which {2} does not have.</source>
        <translation>{0} est à signer par {1} ou un rôle supérieur, que {2} n’a pas.</translation>
    </message>
    <message>
        <source>{0} is for {1} or a higher role to verify, which {2} does not have.</source>
        <translation>{0} est à vérifier par {1} ou un rôle supérieur, que {2} n’a pas.</translation>
    </message>
    <message>
        <source>{0} is in printing colours (CMYK); save it as an RGB picture first.</source>
        <translation>{0} est en couleurs d’impression (CMJN)&#xa0;; enregistrez-la d’abord en RVB.</translation>
    </message>
    <message>
        <source>{0} is neither true nor false.</source>
        <translation>{0} n’est ni vrai ni faux.</translation>
    </message>
    <message>
        <source>{0} is no day or time that exists: YYYY-MM-DD or YYYY-MM-DDTHH:MM, from 1900 to 2199.</source>
        <translation>{0} n’est ni un jour ni une heure qui existe&#xa0;: AAAA-MM-JJ ou AAAA-MM-JJThh:mm, de 1900 à 2199.</translation>
    </message>
    <message>
        <source>{0} is no id: a whole number from 1 to {1}, without fraction or exponent.</source>
        <translation>{0} n’est pas un identifiant&#xa0;: un entier de 1 à {1}, sans fraction ni exposant.</translation>
    </message>
    <message>
        <source>{0} is no list.</source>
        <translation>{0} n’est pas une liste.</translation>
    </message>
    <message>
        <source>{0} is no number.</source>
        <translation>{0} n’est pas un nombre.</translation>
    </message>
    <message>
        <source>{0} is no object.</source>
        <translation>{0} n’est pas un objet.</translation>
    </message>
    <message>
        <source>{0} is no text.</source>
        <translation>{0} n’est pas un texte.</translation>
    </message>
    <message>
        <source>{0} is no type of record.</source>
        <translation>{0} n’est pas un type d’enregistrement.</translation>
    </message>
    <message>
        <source>{0} is no whole number from -{1} to {1}, without fraction or exponent.</source>
        <translation>{0} n’est pas un entier de -{1} à {1}, sans fraction ni exposant.</translation>
    </message>
    <message>
        <source>{0} is none of {1}.</source>
        <translation>{0} n’est aucun de&#xa0;: {1}.</translation>
    </message>
    <message>
        <source>{0} is not signed</source>
        <translation>{0}&#xa0;: pas de signature</translation>
    </message>
    <message>
        <source>{0} is of the whole aircraft and encloses no part by name.</source>
        <translation>{0} est de l’avion entier et n’enferme aucune pièce par son nom.</translation>
    </message>
    <message>
        <source>{0} is of {1}, which was made in the factory and has no checks.</source>
        <translation>{0} est de {1}, faite en usine et sans points de contrôle.</translation>
    </message>
    <message>
        <source>{0} is of {1}, which was made in the factory and has no hold points.</source>
        <translation>{0} est de {1}, faite en usine et sans points d’arrêt.</translation>
    </message>
    <message>
        <source>{0} is required and an inspector&apos;s; {1} cannot waive it.</source>
        <translation>{0} est requis et revient à un inspecteur&#xa0;; {1} ne peut en dispenser.</translation>
    </message>
    <message>
        <source>{0} is signed, but the signed sheet is not on record</source>
        <translation>{0} est signé, mais la feuille signée n’est pas classée</translation>
    </message>
    <message>
        <source>{0} is to come after itself.</source>
        <translation>{0} devrait venir après elle-même.</translation>
    </message>
    <message>
        <source>{0} is to come after {1}, which in turn has to wait for it.</source>
        <translation>{0} devrait venir après {1}, qui doit à son tour l’attendre.</translation>
    </message>
    <message>
        <source>{0} lacks {1} in row {2} of {3}.</source>
        <translation>{0}&#xa0;: {1} manque à la ligne {2} de {3}.</translation>
    </message>
    <message>
        <source>{0} lacks {1}.</source>
        <translation>{0}&#xa0;: {1} manque.</translation>
    </message>
    <message>
        <source>{0} lasts {1} minutes.</source>
        <translation>{0} dure {1} minutes.</translation>
    </message>
    <message>
        <source>{0} lasts {1} minutes; leave them empty when they are not known.</source>
        <translation>{0} dure {1} minutes&#xa0;; laissez vide si ce n’est pas connu.</translation>
    </message>
    <message>
        <source>{0} lies inside itself.</source>
        <translation>{0} se trouve dans elle-même.</translation>
    </message>
    <message>
        <source>{0} lies inside {1} and comes after a step that closes it, but does not say in may_follow that it can be done then.</source>
        <translation>{0} se trouve dans {1} et vient après une étape qui la ferme, mais ne dit pas dans may_follow que c’est alors possible.</translation>
    </message>
    <message>
        <source>{0} lies inside {1}, which lies inside it in turn.</source>
        <translation>{0} se trouve dans {1}, qui s’y trouve à son tour.</translation>
    </message>
    <message>
        <source>{0} line</source>
        <translation>{0} ligne</translation>
    </message>
    <message>
        <source>{0} lines</source>
        <translation>{0} lignes</translation>
    </message>
    <message>
        <source>{0} lock</source>
        <translation>{0} freinage</translation>
    </message>
    <message>
        <source>{0} locks</source>
        <translation>{0} freinages</translation>
    </message>
    <message>
        <source>{0} matters for airworthiness and is for a designer, adviser or inspector to accept, which {1} is not.</source>
        <translation>{0} touche la navigabilité et ne peut être acceptée que par un concepteur, un conseiller ou un inspecteur, ce que {1} n’est pas.</translation>
    </message>
    <message>
        <source>{0} measured</source>
        <translation>{0} avec valeur</translation>
    </message>
    <message>
        <source>{0} measurement</source>
        <translation>{0} mesure</translation>
    </message>
    <message>
        <source>{0} measurements</source>
        <translation>{0} mesures</translation>
    </message>
    <message>
        <source>{0} names {1} in {2}, which is not on record.</source>
        <translation>{0} nomme {1} sous {2}, qui n’est pas inscrit.</translation>
    </message>
    <message>
        <source>{0} names {1} in {2}, which is withdrawn.</source>
        <translation>{0} nomme {1} sous {2}, qui est retiré.</translation>
    </message>
    <message>
        <source>{0} names {1} twice among those who worked.</source>
        <translation>{0} nomme {1} deux fois parmi ceux qui ont travaillé.</translation>
    </message>
    <message>
        <source>{0} open papers name no part; the first is {1}</source>
        <translation>{0} papiers ouverts ne nomment aucune pièce&#xa0;; le premier est {1}</translation>
    </message>
    <message>
        <source>{0} packing line</source>
        <translation>{0} ligne de colisage</translation>
    </message>
    <message>
        <source>{0} packing lines</source>
        <translation>{0} lignes de colisage</translation>
    </message>
    <message>
        <source>{0} parts have no closing recorded; the first is {1}</source>
        <translation>{0} pièces n’ont pas de fermeture inscrite&#xa0;; la première est {1}</translation>
    </message>
    <message>
        <source>{0} photograph</source>
        <translation>{0} photo</translation>
    </message>
    <message>
        <source>{0} photographs</source>
        <translation>{0} photos</translation>
    </message>
    <message>
        <source>{0} signed</source>
        <translation>{0} avec signature</translation>
    </message>
    <message>
        <source>{0} squawk</source>
        <translation>{0} anomalie</translation>
    </message>
    <message>
        <source>{0} squawks</source>
        <translation>{0} anomalies</translation>
    </message>
    <message>
        <source>{0} step</source>
        <translation>{0} étape</translation>
    </message>
    <message>
        <source>{0} steps</source>
        <translation>{0} étapes</translation>
    </message>
    <message>
        <source>{0} steps are not done whose closings are closed; the first is {1}</source>
        <translation>{0} étapes ne sont pas faites alors que leurs fermetures sont fermées&#xa0;; la première est {1}</translation>
    </message>
    <message>
        <source>{0} tested</source>
        <translation>{0} avec résultat</translation>
    </message>
    <message>
        <source>{0} torqued</source>
        <translation>{0} au couple</translation>
    </message>
    <message>
        <source>{0} use</source>
        <translation>{0} utilisation</translation>
    </message>
    <message>
        <source>{0} uses</source>
        <translation>{0} utilisations</translation>
    </message>
    <message>
        <source>{0} was closed before these records began; the inspector decides</source>
        <translation>{0} a été fermée avant le début de ces dossiers&#xa0;; l’inspecteur décide</translation>
    </message>
    <message>
        <source>{0} was closed by the factory; its document is not on record</source>
        <translation>{0} a été fermée en usine&#xa0;; son document n’est pas inscrit</translation>
    </message>
    <message>
        <source>{0} was closed with gaps</source>
        <translation>{0} a été fermée avec lacunes</translation>
    </message>
    <message>
        <source>{0} was closed with gaps: {1}</source>
        <translation>{0} a été fermée avec lacunes&#xa0;: {1}</translation>
    </message>
    <message>
        <source>{0} was not taken in, because the same file before it was not.</source>
        <translation>{0} n’a pas été importé, car le même fichier avant lui ne l’a pas été.</translation>
    </message>
    <message>
        <source>{0} was not taken in. {1}</source>
        <translation>{0} n’a pas été importé. {1}</translation>
    </message>
    <message>
        <source>{0} was not taken in: {1}.</source>
        <translation>{0} n’a pas été importé&#xa0;: {1}.</translation>
    </message>
    <message>
        <source>{0} was rejected, and its findings are not entered</source>
        <translation>{0}&#xa0;: refus, et les constatations ne sont pas inscrites</translation>
    </message>
    <message>
        <source>{0} with a limit</source>
        <translation>{0} avec limites</translation>
    </message>
    <message>
        <source>{0} with limits</source>
        <translation>{0} avec limites</translation>
    </message>
    <message>
        <source>{0} {1}</source>
        <translation>{0} {1}</translation>
    </message>
    <message>
        <source>{0} {1} of {2}</source>
        <translation>{0} {1} du {2}</translation>
    </message>
    <message>
        <source>{0} {1} “{2}”</source>
        <translation>{0} {1} «&#xa0;{2}&#xa0;»</translation>
    </message>
    <message>
        <source>{0} × {1} at {2}</source>
        <translation>{0} × {1} à {2}</translation>
    </message>
    <message>
        <source>{0} “{1}”</source>
        <translation>{0} «&#xa0;{1}&#xa0;»</translation>
    </message>
    <message>
        <source>{0}, a box inside, is still open</source>
        <translation>{0}, un caisson intérieur, est encore ouverte</translation>
    </message>
    <message>
        <source>{0}, lot {1}</source>
        <translation>{0}, lot {1}</translation>
    </message>
    <message>
        <source>{0}.</source>
        <translation>{0}.</translation>
    </message>
    <message>
        <source>{0}: calibration is due on {1}</source>
        <translation>{0}&#xa0;: étalonnage à faire le {1}</translation>
    </message>
    <message>
        <source>{0}: calibration was due on {1}</source>
        <translation>{0}&#xa0;: étalonnage était à faire le {1}</translation>
    </message>
    <message>
        <source>{0}: cure time not on record</source>
        <translation>{0}&#xa0;: durée de durcissement non inscrite</translation>
    </message>
    <message>
        <source>{0}: event {1} closes it while it is closed.</source>
        <translation>{0}&#xa0;: l’événement {1} la ferme alors qu’elle est fermée.</translation>
    </message>
    <message>
        <source>{0}: event {1} must say either when it was closed or when it was opened.</source>
        <translation>{0}&#xa0;: l’événement {1} doit dire quand elle a été fermée ou ouverte.</translation>
    </message>
    <message>
        <source>{0}: event {1} of {2} is listed after one of {3}.</source>
        <translation>{0}&#xa0;: l’événement {1} du {2} est placé après un du {3}.</translation>
    </message>
    <message>
        <source>{0}: event {1} opens it while it is open.</source>
        <translation>{0}&#xa0;: l’événement {1} l’ouvre alors qu’elle est ouverte.</translation>
    </message>
    <message>
        <source>{0}: fixed, not verified</source>
        <translation>{0}&#xa0;: corrigée, non vérifiée</translation>
    </message>
    <message>
        <source>{0}: no calibration on record</source>
        <translation>{0}&#xa0;: aucun étalonnage inscrit</translation>
    </message>
    <message>
        <source>{0}: not complied with</source>
        <translation>{0}&#xa0;: non appliqué</translation>
    </message>
    <message>
        <source>{0}: not decided</source>
        <translation>{0}&#xa0;: non décidé</translation>
    </message>
    <message>
        <source>{0}: not done</source>
        <translation>{0}&#xa0;: non faite</translation>
    </message>
    <message>
        <source>{0}: not fitted</source>
        <translation>{0}&#xa0;: non posé</translation>
    </message>
    <message>
        <source>{0}: not locked</source>
        <translation>{0}&#xa0;: non freiné</translation>
    </message>
    <message>
        <source>{0}: not measured</source>
        <translation>{0}&#xa0;: non mesuré</translation>
    </message>
    <message>
        <source>{0}: not ticked</source>
        <translation>{0}&#xa0;: non coché</translation>
    </message>
    <message>
        <source>{0}: open</source>
        <translation>{0}&#xa0;: ouverte</translation>
    </message>
    <message>
        <source>{0}: parts are missing or damaged</source>
        <translation>{0}&#xa0;: des pièces manquent ou sont endommagées</translation>
    </message>
    <message>
        <source>{0}: rejected, but built</source>
        <translation>{0}&#xa0;: refusé, mais construit</translation>
    </message>
    <message>
        <source>{0}: still curing</source>
        <translation>{0}&#xa0;: durcit encore</translation>
    </message>
    <message>
        <source>{0}: the last measurement is outside its limits</source>
        <translation>{0}&#xa0;: la dernière mesure est hors limites</translation>
    </message>
    <message>
        <source>{0}: the test sample failed</source>
        <translation>{0}&#xa0;: l’éprouvette a échoué</translation>
    </message>
    <message>
        <source>{0}: the tool was not in calibration</source>
        <translation>{0}&#xa0;: l’outil n’était pas étalonné</translation>
    </message>
    <message>
        <source>{0}: the torque is outside its limits</source>
        <translation>{0}&#xa0;: le couple est hors limites</translation>
    </message>
    <message>
        <source>{0}: torqued but not sealed with torque paint</source>
        <translation>{0}&#xa0;: serré mais non marqué au vernis</translation>
    </message>
    <message>
        <source>{0}: used after its lot expired</source>
        <translation>{0}&#xa0;: utilisé après l’expiration du lot</translation>
    </message>
    <message>
        <source>{0}: work was recorded after the signature</source>
        <translation>{0}&#xa0;: du travail a été inscrit après la signature</translation>
    </message>
    <message>
        <source>{0}: {1}</source>
        <translation>{0}&#xa0;: {1}</translation>
    </message>
    <message>
        <source>{0}: {1} of {2} missing, expected on {3}</source>
        <translation>{0}&#xa0;: il manque {1} sur {2}, attendu le {3}</translation>
    </message>
    <message>
        <source>“{0}” cannot be taken back: {1} {2} is no longer as it was left.</source>
        <translation>«&#xa0;{0}&#xa0;» ne peut être annulé&#xa0;: {1} {2} n’est plus dans l’état laissé.</translation>
    </message>
    <message>
        <source>“{0}” cannot be taken back: “{1}” (row {2} of the journal) changed the same record later.</source>
        <translation>«&#xa0;{0}&#xa0;» ne peut être annulé&#xa0;: «&#xa0;{1}&#xa0;» (ligne {2} du registre) a modifié le même enregistrement plus tard.</translation>
    </message>
    <message>
        <source>“{0}” may be several steps; say it with the part&apos;s code.</source>
        <translation>«&#xa0;{0}&#xa0;» peut désigner plusieurs étapes&#xa0;; dites-le avec le code de la pièce.</translation>
    </message>
    <message>
        <source>“{0}” may be {1} or {2}; say more of the name.</source>
        <translation>«&#xa0;{0}&#xa0;» peut être {1} ou {2}&#xa0;; dites-en plus du nom.</translation>
    </message>
    <message>
        <source>The database did not keep what it was given; nothing was changed.</source>
        <translation>La base n’a pas gardé ce qu’elle a reçu&#xa0;; rien n’a été modifié.</translation>
    </message>
    <message>
        <source>The pages could not be laid out.</source>
        <translation>Les pages n’ont pas pu être mises en page.</translation>
    </message>
    <message>
        <source>The typeface DejaVu Sans is not installed, so nothing can be printed. Install the package fonts-dejavu-core.</source>
        <translation>La police DejaVu Sans n’est pas installée, donc rien ne peut être imprimé. Installez le paquet fonts-dejavu-core.</translation>
    </message>
    <message>
        <source>an object is missing</source>
        <translation>un objet manque</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>pratique courante</translation>
    </message>
    <message>
        <source>parts is no list, or nested too deep</source>
        <translation>parts n’est pas une liste, ou trop imbriquée</translation>
    </message>
    <message>
        <source>This paper is what the builder wrote down. It is no approval and no finding that the work is right: the drawings, the authority and the inspector decide.</source>
        <translation>Ce papier est ce que le constructeur a noté. Ce n’est ni une approbation ni la preuve que le travail est bon&#xa0;: les plans, l’autorité et l’inspecteur décident.</translation>
    </message>
    <message>
        <source>{0} d</source>
        <translation>{0} j</translation>
    </message>
    <message>
        <source>{0} d {1}</source>
        <translation>{0} j {1}</translation>
    </message>
    <message>
        <source>{0} d {1} h</source>
        <translation>{0} j {1} h</translation>
    </message>
    <message>
        <source>% humidity</source>
        <translation>% humidité</translation>
    </message>
    <message>
        <source>A airworthiness, W workmanship, C cosmetic. The authority&apos;s own report form governs.</source>
        <translation>A navigabilité, W exécution, C aspect. Le formulaire de l’autorité fait foi.</translation>
    </message>
    <message>
        <source>A, W or C</source>
        <translation>A, W ou C</translation>
    </message>
    <message>
        <source>As built, as the records say on {0}</source>
        <translation>Tel que construit, d’après les dossiers du {0}</translation>
    </message>
    <message>
        <source>As of {0}. What will be out of reach first comes first, then by severity and age.</source>
        <translation>Au {0}. D’abord ce qui sera d’abord hors d’accès, puis par gravité et ancienneté.</translation>
    </message>
    <message>
        <source>Closed in by</source>
        <translation>Enfermé par</translation>
    </message>
    <message>
        <source>Closings and signatures</source>
        <translation>Fermetures et signatures</translation>
    </message>
    <message>
        <source>Corrected on, by</source>
        <translation>Corrigé le, par</translation>
    </message>
    <message>
        <source>Cure times hold at the maker&apos;s temperature; a cold workshop needs longer.</source>
        <translation>Les durées de durcissement valent à la température du fabricant&#xa0;; un atelier froid demande plus.</translation>
    </message>
    <message>
        <source>DO NOT CLOSE</source>
        <translation>NE PAS FERMER</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Day, time</source>
        <translation>Jour, heure</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fait</translation>
    </message>
    <message>
        <source>Drag in it</source>
        <translation>Frottement inclus</translation>
    </message>
    <message>
        <source>Equipment</source>
        <translation>Équipement</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Constatation</translation>
    </message>
    <message>
        <source>Findings of a visit</source>
        <translation>Constatations d’une visite</translation>
    </message>
    <message>
        <source>First work on record</source>
        <translation>Premier travail inscrit</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>Hand-over book</source>
        <translation>Livret de remise</translation>
    </message>
    <message>
        <source>Hours on record</source>
        <translation>Heures inscrites</translation>
    </message>
    <message>
        <source>In reach</source>
        <translation>Accessible</translation>
    </message>
    <message>
        <source>Kinds: fabrication, assembly, finishing, rework, inspection, planning, other. Pictures taken: say so beside the line.</source>
        <translation>Genres&#xa0;: fabrication, assemblage, finition, reprise, inspection, planification, autre. Photos prises&#xa0;: notez-le à côté.</translation>
    </message>
    <message>
        <source>Last chance before: {0}</source>
        <translation>Dernière occasion avant&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Latest work on record</source>
        <translation>Dernier travail inscrit</translation>
    </message>
    <message>
        <source>Lay-up and glue batches</source>
        <translation>Mélanges de stratification et de colle</translation>
    </message>
    <message>
        <source>Limits are the maker&apos;s; general tables come after them. The reading is what the wrench showed, with the drag of a self-locking nut still in it.</source>
        <translation>Les limites sont celles du fabricant&#xa0;; les tables générales viennent après. La lecture est ce que la clé montrait, frottement d’un écrou autofreiné compris.</translation>
    </message>
    <message>
        <source>List of squawks</source>
        <translation>Liste des anomalies</translation>
    </message>
    <message>
        <source>Locked</source>
        <translation>Freiné</translation>
    </message>
    <message>
        <source>Log entries</source>
        <translation>Entrées</translation>
    </message>
    <message>
        <source>Log of a week</source>
        <translation>Carnet d’une semaine</translation>
    </message>
    <message>
        <source>Looked at again by</source>
        <translation>Revu par</translation>
    </message>
    <message>
        <source>Maker</source>
        <translation>Fabricant</translation>
    </message>
    <message>
        <source>Mix</source>
        <translation>Mélange</translation>
    </message>
    <message>
        <source>No closing is on record.</source>
        <translation>Aucune fermeture n’est inscrite.</translation>
    </message>
    <message>
        <source>No part is called “{0}”: the whole line became the title.</source>
        <translation>Aucune pièce ne s’appelle «&#xa0;{0}&#xa0;»&#xa0;: toute la ligne est devenue le titre.</translation>
    </message>
    <message>
        <source>No squawk on record matches.</source>
        <translation>Aucune anomalie inscrite ne correspond.</translation>
    </message>
    <message>
        <source>No work is on record.</source>
        <translation>Aucun travail n’est inscrit.</translation>
    </message>
    <message>
        <source>None of these closings must stay open, so there is no tag to print.</source>
        <translation>Aucune de ces fermetures ne doit rester ouverte, donc pas d’étiquette à imprimer.</translation>
    </message>
    <message>
        <source>Nothing is left out.</source>
        <translation>Rien n’est omis.</translation>
    </message>
    <message>
        <source>Nothing on record needs such a label, so there is none to print.</source>
        <translation>Rien d’inscrit ne demande une telle étiquette, donc rien à imprimer.</translation>
    </message>
    <message>
        <source>Out of reach</source>
        <translation>Hors d’accès</translation>
    </message>
    <message>
        <source>Part number</source>
        <translation>Référence</translation>
    </message>
    <message>
        <source>Part, place</source>
        <translation>Pièce, endroit</translation>
    </message>
    <message>
        <source>Part, step</source>
        <translation>Pièce, étape</translation>
    </message>
    <message>
        <source>Part, with everything below it</source>
        <translation>Pièce, avec tout ce qui est dessous</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Pièces</translation>
    </message>
    <message>
        <source>Place of work</source>
        <translation>Lieu de travail</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lecture</translation>
    </message>
    <message>
        <source>Removed</source>
        <translation>Retiré</translation>
    </message>
    <message>
        <source>Report number</source>
        <translation>Numéro de rapport</translation>
    </message>
    <message>
        <source>Sample kept, good</source>
        <translation>Éprouvette gardée, bonne</translation>
    </message>
    <message>
        <source>Say in a few words what is wrong.</source>
        <translation>Dites en peu de mots ce qui ne va pas.</translation>
    </message>
    <message>
        <source>Seen again</source>
        <translation>Revu</translation>
    </message>
    <message>
        <source>Several parts fit “{0}”: the whole line became the title.</source>
        <translation>Plusieurs pièces correspondent à «&#xa0;{0}&#xa0;»&#xa0;: toute la ligne est devenue le titre.</translation>
    </message>
    <message>
        <source>Shelf labels</source>
        <translation>Étiquettes d’étagère</translation>
    </message>
    <message>
        <source>Signature of the builder, day</source>
        <translation>Signature du constructeur, jour</translation>
    </message>
    <message>
        <source>Signature of the inspector, day</source>
        <translation>Signature de l’inspecteur, jour</translation>
    </message>
    <message>
        <source>Soon out of reach</source>
        <translation>Bientôt hors d’accès</translation>
    </message>
    <message>
        <source>Squawk {0} was fixed on {1}; nobody can have looked at that on {2}.</source>
        <translation>L’anomalie {0} a été corrigée le {1}&#xa0;; personne ne peut l’avoir regardée le {2}.</translation>
    </message>
    <message>
        <source>Squawk {0} was found on {1}, after {2}.</source>
        <translation>L’anomalie {0} a été trouvée le {1}, après le {2}.</translation>
    </message>
    <message>
        <source>The log in short</source>
        <translation>Le carnet en bref</translation>
    </message>
    <message>
        <source>The text is too long for a QR code: </source>
        <translation>Le texte est trop long pour un code QR&#xa0;: </translation>
    </message>
    <message>
        <source>Tie-on tags</source>
        <translation>Étiquettes à attacher</translation>
    </message>
    <message>
        <source>To reach it, open: {0}</source>
        <translation>Pour y accéder, ouvrir&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Torque list</source>
        <translation>Liste des couples</translation>
    </message>
    <message>
        <source>Triangle filled: airworthiness. Half filled: workmanship. Outline: cosmetic.</source>
        <translation>Triangle plein&#xa0;: navigabilité. À moitié plein&#xa0;: exécution. Contour&#xa0;: aspect.</translation>
    </message>
    <message>
        <source>Use before</source>
        <translation>À utiliser avant</translation>
    </message>
    <message>
        <source>Week from</source>
        <translation>Semaine du</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Ce qui a été fait</translation>
    </message>
    <message>
        <source>What was looked at</source>
        <translation>Ce qui a été regardé</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Où</translation>
    </message>
    <message>
        <source>Who built it</source>
        <translation>Qui l’a construit</translation>
    </message>
    <message>
        <source>With</source>
        <translation>Avec</translation>
    </message>
    <message>
        <source>Wrench and its number</source>
        <translation>Clé et son numéro</translation>
    </message>
    <message>
        <source>and {0} more on record</source>
        <translation>et {0} de plus au dossier</translation>
    </message>
    <message>
        <source>calibration due {0}</source>
        <translation>étalonnage à faire {0}</translation>
    </message>
    <message>
        <source>deviations from the drawings</source>
        <translation>écarts aux plans</translation>
    </message>
    <message>
        <source>fasteners and torque</source>
        <translation>fixations et couple</translation>
    </message>
    <message>
        <source>of no part</source>
        <translation>d’aucune pièce</translation>
    </message>
    <message>
        <source>opened {0}</source>
        <translation>ouvert {0}</translation>
    </message>
    <message>
        <source>part number {0}</source>
        <translation>référence {0}</translation>
    </message>
    <message>
        <source>photographs of the structure</source>
        <translation>photos de la structure</translation>
    </message>
    <message>
        <source>serial number {0}</source>
        <translation>numéro de série {0}</translation>
    </message>
    <message>
        <source>to</source>
        <translation>à</translation>
    </message>
    <message>
        <source>use before {0}</source>
        <translation>à utiliser avant {0}</translation>
    </message>
    <message>
        <source>uses of material</source>
        <translation>utilisations de matériau</translation>
    </message>
    <message>
        <source>waits for:</source>
        <translation>attend&#xa0;:</translation>
    </message>
    <message>
        <source>{0} has not come yet.</source>
        <translation>{0} n’est pas encore venu.</translation>
    </message>
    <message>
        <source>{0} has not come yet; a squawk is found today or before.</source>
        <translation>{0} n’est pas encore venu&#xa0;; une anomalie est trouvée aujourd’hui ou avant.</translation>
    </message>
    <message>
        <source>{0} · as the records say on {1}</source>
        <translation>{0} · d’après les dossiers du {1}</translation>
    </message>
    <message>
        <source>All who worked</source>
        <translation>Tous ceux qui ont travaillé</translation>
    </message>
    <message>
        <source>Began</source>
        <translation>Début</translation>
    </message>
    <message>
        <source>Builder&apos;s log</source>
        <translation>Carnet du constructeur</translation>
    </message>
    <message>
        <source>By date, {0}</source>
        <translation>Par date, {0}</translation>
    </message>
    <message>
        <source>By kind of work</source>
        <translation>Par genre de travail</translation>
    </message>
    <message>
        <source>By month</source>
        <translation>Par mois</translation>
    </message>
    <message>
        <source>By part</source>
        <translation>Par pièce</translation>
    </message>
    <message>
        <source>By part, {0}</source>
        <translation>Par pièce, {0}</translation>
    </message>
    <message>
        <source>By person</source>
        <translation>Par personne</translation>
    </message>
    <message>
        <source>By the clock</source>
        <translation>D’après l’horloge</translation>
    </message>
    <message>
        <source>Entries</source>
        <translation>Entrées</translation>
    </message>
    <message>
        <source>Entries without a time</source>
        <translation>Entrées sans durée</translation>
    </message>
    <message>
        <source>Entries written down late</source>
        <translation>Entrées tardives</translation>
    </message>
    <message>
        <source>In all</source>
        <translation>En tout</translation>
    </message>
    <message>
        <source>Kind of work</source>
        <translation>Genre de travail</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Mois</translation>
    </message>
    <message>
        <source>Nobody on record is called “{0}”; it goes into the note.</source>
        <translation>Personne d’inscrit ne s’appelle «&#xa0;{0}&#xa0;»&#xa0;; cela va dans la note.</translation>
    </message>
    <message>
        <source>Nothing is on record for this time.</source>
        <translation>Rien n’est inscrit pour cette période.</translation>
    </message>
    <message>
        <source>Of it rework</source>
        <translation>Dont reprise</translation>
    </message>
    <message>
        <source>On no part</source>
        <translation>Sur aucune pièce</translation>
    </message>
    <message>
        <source>Own</source>
        <translation>Propre</translation>
    </message>
    <message>
        <source>Place, unless an entry names another</source>
        <translation>Lieu, sauf si une entrée en nomme un autre</translation>
    </message>
    <message>
        <source>Say at least two parts or times, with a plus sign between them.</source>
        <translation>Dites au moins deux pièces ou durées, avec un plus entre elles.</translation>
    </message>
    <message>
        <source>Say the day, the part, or both.</source>
        <translation>Dites le jour, la pièce, ou les deux.</translation>
    </message>
    <message>
        <source>Sum</source>
        <translation>Somme</translation>
    </message>
    <message>
        <source>Sums</source>
        <translation>Sommes</translation>
    </message>
    <message>
        <source>The entry has no time that could be split; give parts alone.</source>
        <translation>L’entrée n’a pas de durée à diviser&#xa0;; donnez seulement des pièces.</translation>
    </message>
    <message>
        <source>The log by date</source>
        <translation>Le carnet par date</translation>
    </message>
    <message>
        <source>The log by part</source>
        <translation>Le carnet par pièce</translation>
    </message>
    <message>
        <source>The pieces do not add up to the {0} minutes of the entry.</source>
        <translation>Les morceaux ne font pas les {0} minutes de l’entrée.</translation>
    </message>
    <message>
        <source>With all below</source>
        <translation>Avec tout dessous</translation>
    </message>
    <message>
        <source>Work on no part</source>
        <translation>Travail sur aucune pièce</translation>
    </message>
    <message>
        <source>Worked</source>
        <translation>Travaillé</translation>
    </message>
    <message>
        <source>changed what was inspected</source>
        <translation>a modifié ce qui était inspecté</translation>
    </message>
    <message>
        <source>entries: {0}; all who worked: {1}</source>
        <translation>entrées&#xa0;: {0}&#xa0;; tous ceux qui ont travaillé&#xa0;: {1}</translation>
    </message>
    <message>
        <source>from the first entry to the last</source>
        <translation>de la première entrée à la dernière</translation>
    </message>
    <message>
        <source>from {0}</source>
        <translation>à partir du {0}</translation>
    </message>
    <message>
        <source>from: {0}</source>
        <translation>de&#xa0;: {0}</translation>
    </message>
    <message>
        <source>not on record</source>
        <translation>non inscrit</translation>
    </message>
    <message>
        <source>until {0}</source>
        <translation>jusqu’au {0}</translation>
    </message>
    <message>
        <source>{0} cannot have worked longer than the whole of it.</source>
        <translation>{0} ne peut avoir travaillé plus que le tout.</translation>
    </message>
    <message>
        <source>{0} has a number for {1} in row {2} of {3} that is too large.</source>
        <translation>{0}&#xa0;: le nombre pour {1} à la ligne {2} de {3} est trop grand.</translation>
    </message>
    <message>
        <source>{0} has a number for {1} that is too large.</source>
        <translation>{0}&#xa0;: le nombre pour {1} est trop grand.</translation>
    </message>
    <message>
        <source>{0} has {1} at work for {2} minutes; more than 10,000 hours do not fit into one entry.</source>
        <translation>{0}&#xa0;: {1} aurait travaillé {2} minutes&#xa0;; plus de 10 000 heures ne tiennent pas dans une entrée.</translation>
    </message>
    <message>
        <source>{0} lasts {1} minutes; more than 10,000 hours do not fit into one entry.</source>
        <translation>{0} dure {1} minutes&#xa0;; plus de 10 000 heures ne tiennent pas dans une entrée.</translation>
    </message>
    <message>
        <source>{0} lies ahead; the log tells what was done.</source>
        <translation>{0} est à venir&#xa0;; le carnet dit ce qui a été fait.</translation>
    </message>
    <message>
        <source>{0} to {1}</source>
        <translation>{0} à {1}</translation>
    </message>
    <message>
        <source>“{0}” is a second time; it goes into the note.</source>
        <translation>«&#xa0;{0}&#xa0;» est une deuxième durée&#xa0;; elle va dans la note.</translation>
    </message>
    <message>
        <source>“{0}” is more than a day has; write each day&apos;s work by itself.</source>
        <translation>«&#xa0;{0}&#xa0;» dépasse une journée&#xa0;; écrivez chaque jour séparément.</translation>
    </message>
    <message>
        <source>“{0}” is no length of time; leave it out when nobody knows.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas une durée&#xa0;; omettez-la si personne ne la sait.</translation>
    </message>
    <message>
        <source>“{0}” is no part, or may be several.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas une pièce, ou peut en être plusieurs.</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Après</translation>
    </message>
    <message>
        <source>All findings are verified or accepted.</source>
        <translation>Toutes les constatations sont vérifiées ou acceptées.</translation>
    </message>
    <message>
        <source>All {0} photographs are in it.</source>
        <translation>Les {0} photos y sont toutes.</translation>
    </message>
    <message>
        <source>Another look inside</source>
        <translation>Un autre regard à l’intérieur</translation>
    </message>
    <message>
        <source>Asked for</source>
        <translation>Demandé</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Avant</translation>
    </message>
    <message>
        <source>Closed with gaps: late acceptance</source>
        <translation>Fermée avec lacunes&#xa0;: acceptation tardive</translation>
    </message>
    <message>
        <source>Complied with {0}: {1}</source>
        <translation>Appliqué {0}&#xa0;: {1}</translation>
    </message>
    <message>
        <source>Corrections report</source>
        <translation>Rapport de corrections</translation>
    </message>
    <message>
        <source>Deviation {0} built: {1}</source>
        <translation>Écart {0} construit&#xa0;: {1}</translation>
    </message>
    <message>
        <source>Deviation {0} raised: {1}</source>
        <translation>Écart {0} soulevé&#xa0;: {1}</translation>
    </message>
    <message>
        <source>Deviation {0} undone: {1}</source>
        <translation>Écart {0} défait&#xa0;: {1}</translation>
    </message>
    <message>
        <source>Does your signature still hold?</source>
        <translation>Votre signature tient-elle encore&#xa0;?</translation>
    </message>
    <message>
        <source>File of the authority</source>
        <translation>Dossier de l’autorité</translation>
    </message>
    <message>
        <source>Findings and corrections</source>
        <translation>Constatations et corrections</translation>
    </message>
    <message>
        <source>Findings: {0}. Neither verified nor accepted: {1}; corrected of these: {2}.</source>
        <translation>Constatations&#xa0;: {0}. Ni vérifiées ni acceptées&#xa0;: {1}&#xa0;; dont corrigées&#xa0;: {2}.</translation>
    </message>
    <message>
        <source>Fitted: {0}</source>
        <translation>Posé&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Inspector or adviser</source>
        <translation>Inspecteur ou conseiller</translation>
    </message>
    <message>
        <source>Left out to keep the packet small.</source>
        <translation>Omise pour garder le dossier petit.</translation>
    </message>
    <message>
        <source>Looked at</source>
        <translation>Vu</translation>
    </message>
    <message>
        <source>Material used: {0}</source>
        <translation>Matériau utilisé&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Name and number</source>
        <translation>Nom et numéro</translation>
    </message>
    <message>
        <source>No finding of this visit is on record.</source>
        <translation>Aucune constatation de cette visite n’est inscrite.</translation>
    </message>
    <message>
        <source>No folder for smaller copies of the photographs could be made.</source>
        <translation>Aucun dossier pour des copies réduites des photos n’a pu être créé.</translation>
    </message>
    <message>
        <source>No photograph of it is on record.</source>
        <translation>Aucune photo n’en est inscrite.</translation>
    </message>
    <message>
        <source>No photograph on record.</source>
        <translation>Aucune photo inscrite.</translation>
    </message>
    <message>
        <source>No, I have to look at it again.</source>
        <translation>Non, je dois la regarder de nouveau.</translation>
    </message>
    <message>
        <source>Not drawn.</source>
        <translation>Non dessiné.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Nothing on record was touched since.</source>
        <translation>Rien d’inscrit n’a été touché depuis.</translation>
    </message>
    <message>
        <source>Of {0} photographs, {1} are left out: {2}.</source>
        <translation>Sur {0} photos, {1} sont omises&#xa0;: {2}.</translation>
    </message>
    <message>
        <source>Opened again: {0}</source>
        <translation>Rouvert&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Photographed since: {0} of {1}</source>
        <translation>Photographié depuis&#xa0;: {0} sur {1}</translation>
    </message>
    <message>
        <source>Pictures are at most {0} pixels long.</source>
        <translation>Les images ont au plus {0} pixels de long.</translation>
    </message>
    <message>
        <source>Removed: {0}</source>
        <translation>Retiré&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Résultat</translation>
    </message>
    <message>
        <source>Signed</source>
        <translation>Signé</translation>
    </message>
    <message>
        <source>Signed by {0} on {1}, {2}, {3}.</source>
        <translation>Signé par {0} le {1}, {2}, {3}.</translation>
    </message>
    <message>
        <source>Squawk {0} corrected: {1}</source>
        <translation>Anomalie {0} corrigée&#xa0;: {1}</translation>
    </message>
    <message>
        <source>Squawk {0} found: {1}</source>
        <translation>Anomalie {0} trouvée&#xa0;: {1}</translation>
    </message>
    <message>
        <source>Step done: {0}</source>
        <translation>Étape faite&#xa0;: {0}</translation>
    </message>
    <message>
        <source>The whole packet and the photographs in full size are with the builder.</source>
        <translation>Le dossier entier et les photos en pleine taille sont chez le constructeur.</translation>
    </message>
    <message>
        <source>This is the version to send</source>
        <translation>Ceci est la version à envoyer</translation>
    </message>
    <message>
        <source>To be signed</source>
        <translation>À signer</translation>
    </message>
    <message>
        <source>Torqued: {0}</source>
        <translation>Serré&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Touched since then</source>
        <translation>Touché depuis</translation>
    </message>
    <message>
        <source>What changed since you signed</source>
        <translation>Ce qui a changé depuis votre signature</translation>
    </message>
    <message>
        <source>What was missing is named on the front pages and under Readiness.</source>
        <translation>Ce qui manquait est nommé aux premières pages et sous «&#xa0;Préparation&#xa0;».</translation>
    </message>
    <message>
        <source>Work on: {0}</source>
        <translation>Travail sur&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Work: {0}</source>
        <translation>Travail&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Yes, it holds.</source>
        <translation>Oui, elle tient.</translation>
    </message>
    <message>
        <source>Yes, with the remarks below.</source>
        <translation>Oui, avec les remarques ci-dessous.</translation>
    </message>
    <message>
        <source>accepted as it is: {0}</source>
        <translation>acceptée en l’état&#xa0;: {0}</translation>
    </message>
    <message>
        <source>decide whether it may stay closed or must be opened</source>
        <translation>décider si elle peut rester fermée ou doit être ouverte</translation>
    </message>
    <message>
        <source>found {0}</source>
        <translation>trouvée {0}</translation>
    </message>
    <message>
        <source>is to be opened</source>
        <translation>est à ouvrir</translation>
    </message>
    <message>
        <source>may stay closed</source>
        <translation>peut rester fermée</translation>
    </message>
    <message>
        <source>not corrected yet</source>
        <translation>pas encore corrigée</translation>
    </message>
    <message>
        <source>planned: {0}</source>
        <translation>prévu&#xa0;: {0}</translation>
    </message>
    <message>
        <source>something is there already</source>
        <translation>quelque chose y est déjà</translation>
    </message>
    <message>
        <source>waits for: {0}</source>
        <translation>attend&#xa0;: {0}</translation>
    </message>
    <message>
        <source>{0} of {1}</source>
        <translation>{0} du {1}</translation>
    </message>
    <message>
        <source>{0}, report {1}</source>
        <translation>{0}, rapport {1}</translation>
    </message>
    <message>
        <source>{0}: name, number, signature, date</source>
        <translation>{0}&#xa0;: nom, numéro, signature, date</translation>
    </message>
    <message>
        <source>Calibration due: {0}</source>
        <translation>Étalonnage à faire&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Expires: {0}</source>
        <translation>Expire&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Expires: {0}, lot {1}</source>
        <translation>Expire&#xa0;: {0}, lot {1}</translation>
    </message>
    <message>
        <source>Serial number {0}</source>
        <translation>Numéro de série {0}</translation>
    </message>
    <message>
        <source>There is no whole backup yet</source>
        <translation>Il n’y a pas encore de sauvegarde complète</translation>
    </message>
    <message>
        <source>What the builder wrote down, no approval: the inspector decides.</source>
        <translation>Notes du constructeur, pas une approbation&#xa0;: l’inspecteur décide.</translation>
    </message>
    <message>
        <source>A drag is a torque of 0 or more.</source>
        <translation>Un couple de frottement est un couple de 0 ou plus.</translation>
    </message>
    <message>
        <source>A drag of {0} in-lb is more than the {1} in-lb that a {2} nut on {3} is tightened to; something is wrong with nut, bolt or reading.</source>
        <translation>Un couple de frottement de {0} in-lb dépasse les {1} in-lb auxquels un écrou {2} est serré sur {3}&#xa0;; l’écrou, le boulon ou la lecture ne va pas.</translation>
    </message>
    <message>
        <source>A grip is above zero and at most {0} in.</source>
        <translation>Une épaisseur serrée est supérieure à zéro et d’au plus {0} in.</translation>
    </message>
    <message>
        <source>A torque is above zero.</source>
        <translation>Un couple est supérieur à zéro.</translation>
    </message>
    <message>
        <source>It still does not fit: {0}</source>
        <translation>Cela ne convient pas encore&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Taken back in another copy.</source>
        <translation>Annulé dans une autre copie.</translation>
    </message>
    <message>
        <source>The extension points back beyond the grip: it must be shorter than the lever.</source>
        <translation>La rallonge revient au-delà de la poignée&#xa0;: elle doit être plus courte que le levier.</translation>
    </message>
    <message>
        <source>The journal is damaged: a row&apos;s changes cannot be read.</source>
        <translation>Le registre est endommagé&#xa0;: les modifications d’une ligne sont illisibles.</translation>
    </message>
    <message>
        <source>The lever of the wrench, from the middle of the grip to the drive, is above zero.</source>
        <translation>Le levier de la clé, du milieu de la poignée au carré, est supérieur à zéro.</translation>
    </message>
    <message>
        <source>The mean aerodynamic chord needs a length above zero.</source>
        <translation>La corde aérodynamique moyenne doit avoir une longueur supérieure à zéro.</translation>
    </message>
    <message>
        <source>The table has no thread {0}; it has {1}.</source>
        <translation>Le tableau n’a pas de filetage {0}&#xa0;; il a {1}.</translation>
    </message>
    <message>
        <source>The tables have no solid rivet of {0} in; they have {1}.</source>
        <translation>Les tableaux n’ont pas de rivet plein de {0} in&#xa0;; ils ont {1}.</translation>
    </message>
    <message>
        <source>The two are not copies of one project: they have no beginning in common.</source>
        <translation>Les deux ne sont pas des copies d’un même projet&#xa0;: ils n’ont pas de début commun.</translation>
    </message>
    <message>
        <source>The weights do not add up to something above zero, so there is no centre of gravity.</source>
        <translation>La somme des masses n’est pas supérieure à zéro&#xa0;: il n’y a donc pas de centre de gravité.</translation>
    </message>
    <message>
        <source>There is no such thing to decide.</source>
        <translation>Il n’y a rien de tel à décider.</translation>
    </message>
    <message>
        <source>There is nothing to weigh.</source>
        <translation>Il n’y a rien à peser.</translation>
    </message>
    <message>
        <source>This cannot be taken over by itself; change the record by hand, then keep what stands.</source>
        <translation>Cela ne peut être repris seul&#xa0;; changez l’enregistrement à la main, puis gardez ce qui est là.</translation>
    </message>
    <message>
        <source>is missing</source>
        <translation>manque</translation>
    </message>
    <message>
        <source>is no list</source>
        <translation>n’est pas une liste</translation>
    </message>
    <message>
        <source>is no number</source>
        <translation>n’est pas un nombre</translation>
    </message>
    <message>
        <source>is no object</source>
        <translation>n’est pas un objet</translation>
    </message>
    <message>
        <source>is no text</source>
        <translation>n’est pas un texte</translation>
    </message>
    <message>
        <source>is not known here</source>
        <translation>n’est pas connu ici</translation>
    </message>
    <message>
        <source>the shear values of this size are estimated</source>
        <translation>les valeurs de cisaillement de cette taille sont estimées</translation>
    </message>
    <message>
        <source>{0} has a weight or an arm that is no number.</source>
        <translation>{0} a une masse ou un bras de levier qui n’est pas un nombre.</translation>
    </message>
    <message>
        <source>A second database lies in the project&apos;s folder: {0}. What is in it is not shown.</source>
        <translation>Une seconde base de données se trouve dans le dossier du projet&#xa0;: {0}. Son contenu n’est pas montré.</translation>
    </message>
    <message>
        <source>Another program wrote to the project since it was opened here. Open it again to go on.</source>
        <translation>Un autre programme a écrit dans le projet depuis son ouverture ici. Rouvrez-le pour continuer.</translation>
    </message>
    <message>
        <source>Process {0} on {1} has the project open for writing since {2}.</source>
        <translation>Le processus {0} sur {1} a ouvert le projet en écriture depuis le {2}.</translation>
    </message>
    <message>
        <source>The aeroplane has not been weighed.</source>
        <translation>L’avion n’a pas été pesé.</translation>
    </message>
    <message>
        <source>The database is damaged ({0}).</source>
        <translation>La base de données est endommagée ({0}).</translation>
    </message>
    <message>
        <source>The database is damaged: a row of {0} names a {1} that does not exist.</source>
        <translation>La base de données est endommagée&#xa0;: une ligne de {0} nomme un {1} qui n’existe pas.</translation>
    </message>
    <message>
        <source>The disk that the project&apos;s folder is on keeps no locks, so that two programs could write at once; copy the folder to another disk to go on with it.</source>
        <translation>Le disque où se trouve le dossier du projet ne connaît pas de verrous, deux programmes pourraient donc écrire à la fois&#xa0;; copiez le dossier sur un autre disque pour continuer.</translation>
    </message>
    <message>
        <source>The empty weight is above zero.</source>
        <translation>La masse à vide est supérieure à zéro.</translation>
    </message>
    <message>
        <source>The project could not be looked over: {0}</source>
        <translation>Le projet n’a pas pu être vérifié&#xa0;: {0}</translation>
    </message>
    <message>
        <source>The project lies on a network folder or the like: saving takes longer there, and only one program can be at it.</source>
        <translation>Le projet se trouve sur un dossier réseau ou semblable&#xa0;: l’enregistrement y est plus lent, et un seul programme peut y travailler.</translation>
    </message>
    <message>
        <source>The project&apos;s folder is no longer at {0}; nothing is changed until it is back, or is opened where it is now.</source>
        <translation>Le dossier du projet n’est plus à {0}&#xa0;; rien n’est modifié tant qu’il n’est pas revenu ou ouvert là où il est maintenant.</translation>
    </message>
    <message>
        <source>The reading of {0} is below its tare.</source>
        <translation>La lecture de {0} est inférieure à sa tare.</translation>
    </message>
    <message>
        <source>The tables of the database were altered by another program: {0}.</source>
        <translation>Les tables de la base de données ont été modifiées par un autre programme&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>The tare of {0} is below zero: a tare is what lies on the scale besides the aeroplane, and is taken off.</source>
        <translation>La tare de {0} est inférieure à zéro&#xa0;: une tare est ce qui repose sur la balance en plus de l’avion, et elle est déduite.</translation>
    </message>
    <message>
        <source>The weighing has no scale readings.</source>
        <translation>La pesée n’a aucune lecture de balance.</translation>
    </message>
    <message>
        <source>With the least that must be on board it weighs {0}, more than the {1} that are allowed.</source>
        <translation>Avec le minimum qui doit être à bord, il pèse {0}, plus que les {1} autorisés.</translation>
    </message>
    <message>
        <source>serial number</source>
        <translation>numéro de série</translation>
    </message>
    <message>
        <source>{0} needs a weight of 0 or more, and an arm.</source>
        <translation>{0} a besoin d’une masse de 0 ou plus et d’un bras de levier.</translation>
    </message>
    <message>
        <source>{3} has the project open for writing since {2} (process {0} on {1}).</source>
        <translation>{3} a ouvert le projet en écriture depuis le {2} (processus {0} sur {1}).</translation>
    </message>
    <message>
        <source>The list has more than {0} cells.</source>
        <translation>La liste a plus de {0} cellules.</translation>
    </message>
    <message>
        <source>At the foot of its pages: {0}</source>
        <translation>Au pied de ses pages&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Changes</source>
        <translation>Modifications</translation>
    </message>
    <message>
        <source>Each row&apos;s hash is made of the row and of the hash before it: one row changed later would change every hash after it. A paper that was printed from these records has a hash at its foot and dates them.</source>
        <translation>L’empreinte de chaque ligne est faite de la ligne et de l’empreinte précédente&#xa0;: une ligne modifiée plus tard changerait toutes les empreintes suivantes. Un papier imprimé à partir de ces enregistrements porte une empreinte à son pied et les date.</translation>
    </message>
    <message>
        <source>In the copy that wrote it: {0}</source>
        <translation>Dans la copie qui l’a écrite&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Journal</source>
        <translation>Registre</translation>
    </message>
    <message>
        <source>No row matches.</source>
        <translation>Aucune ligne ne correspond.</translation>
    </message>
    <message>
        <source>Nothing is left out: {0} rows.</source>
        <translation>Rien n’est omis&#xa0;: {0} lignes.</translation>
    </message>
    <message>
        <source>Row, and its hash begins</source>
        <translation>Ligne et début de son empreinte</translation>
    </message>
    <message>
        <source>Rule profile</source>
        <translation>Profil de règles</translation>
    </message>
    <message>
        <source>Who changed what in these records, field by field, and when. As of {0}.</source>
        <translation>Qui a modifié quoi dans ces enregistrements, champ par champ, et quand. État au {0}.</translation>
    </message>
    <message>
        <source>added: {0}</source>
        <translation>ajouté&#xa0;: {0}</translation>
    </message>
    <message>
        <source>and {0} records more</source>
        <translation>et {0} autres enregistrements</translation>
    </message>
    <message>
        <source>copies merged</source>
        <translation>copies fusionnées</translation>
    </message>
    <message>
        <source>done again</source>
        <translation>refait</translation>
    </message>
    <message>
        <source>from another copy</source>
        <translation>d’une autre copie</translation>
    </message>
    <message>
        <source>from the watched folder</source>
        <translation>du dossier surveillé</translation>
    </message>
    <message>
        <source>imported</source>
        <translation>importé</translation>
    </message>
    <message>
        <source>it takes back: {0}</source>
        <translation>annule&#xa0;: {0}</translation>
    </message>
    <message>
        <source>late: {0} {1}</source>
        <translation>tardif&#xa0;: {0} {1}</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>printed</source>
        <translation>imprimé</translation>
    </message>
    <message>
        <source>removed: {0}</source>
        <translation>retiré&#xa0;: {0}</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>annulé</translation>
    </message>
    <message>
        <source>taken from the program anew</source>
        <translation>repris à nouveau du programme</translation>
    </message>
    <message>
        <source>the clock had been set back, the time is that of the row before</source>
        <translation>l’horloge avait été retardée, l’heure est celle de la ligne précédente</translation>
    </message>
    <message>
        <source>undone</source>
        <translation>annulation</translation>
    </message>
    <message>
        <source>written down</source>
        <translation>noté</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>{0} of {1} rows; left out is what does not match: {2}.</source>
        <translation>{0} lignes sur {1}&#xa0;; est omis ce qui ne correspond pas à&#xa0;: {2}.</translation>
    </message>
    <message>
        <source>A column holds from 0 to 10 tenths.</source>
        <translation>Une colonne contient de 0 à 10 dixièmes.</translation>
    </message>
    <message>
        <source>A maker</source>
        <translation>A fabricant</translation>
    </message>
    <message>
        <source>As the records say on {0}</source>
        <translation>D’après les enregistrements au {0}</translation>
    </message>
    <message>
        <source>B paid help</source>
        <translation>B aide payée</translation>
    </message>
    <message>
        <source>By the builder&apos;s own figures; the authority decides</source>
        <translation>D’après les chiffres du constructeur&#xa0;; l’autorité décide</translation>
    </message>
    <message>
        <source>By these figures the major portion is not the builder&apos;s; the authority decides.</source>
        <translation>D’après ces chiffres, la majeure partie n’est pas l’œuvre du constructeur&#xa0;; l’autorité décide.</translation>
    </message>
    <message>
        <source>By these figures the major portion is the builder&apos;s; the authority decides.</source>
        <translation>D’après ces chiffres, la majeure partie est l’œuvre du constructeur&#xa0;; l’autorité décide.</translation>
    </message>
    <message>
        <source>C builder, assembly</source>
        <translation>C constr., assemblage</translation>
    </message>
    <message>
        <source>Closings</source>
        <translation>Fermetures</translation>
    </message>
    <message>
        <source>Closings that are not closed: {0}.</source>
        <translation>Fermetures non fermées&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>D builder, fabrication</source>
        <translation>D constr., fabrication</translation>
    </message>
    <message>
        <source>Document</source>
        <translation>Document</translation>
    </message>
    <message>
        <source>Documents for the certificate</source>
        <translation>Documents pour le certificat</translation>
    </message>
    <message>
        <source>Does not agree</source>
        <translation>Ne concorde pas</translation>
    </message>
    <message>
        <source>Edition</source>
        <translation>Édition</translation>
    </message>
    <message>
        <source>Entries of papers that do not agree: {0}.</source>
        <translation>Mentions de documents qui ne concordent pas&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>File for the final inspection</source>
        <translation>Dossier pour l’inspection finale</translation>
    </message>
    <message>
        <source>Findings of inspections neither verified nor accepted: {0}.</source>
        <translation>Constatations d’inspections ni vérifiées ni acceptées&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>In tenths it is {0} %.</source>
        <translation>En dixièmes, cela fait {0} %.</translation>
    </message>
    <message>
        <source>Inspections, findings and corrections</source>
        <translation>Inspections, constatations et corrections</translation>
    </message>
    <message>
        <source>Major portion</source>
        <translation>Majeure partie</translation>
    </message>
    <message>
        <source>NO PICTURE on record</source>
        <translation>AUCUNE PHOTO enregistrée</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Needed</source>
        <translation>Exigence</translation>
    </message>
    <message>
        <source>No document is on record.</source>
        <translation>Aucun document n’est enregistré.</translation>
    </message>
    <message>
        <source>No task is on record.</source>
        <translation>Aucune tâche n’est enregistrée.</translation>
    </message>
    <message>
        <source>No task that applies is entered yet.</source>
        <translation>Aucune tâche applicable n’est encore saisie.</translation>
    </message>
    <message>
        <source>Not complete</source>
        <translation>Incomplet</translation>
    </message>
    <message>
        <source>Nothing of this kind is open on record</source>
        <translation>Rien de tel n’est ouvert dans les enregistrements</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Numéro</translation>
    </message>
    <message>
        <source>Papers that do not agree</source>
        <translation>Documents qui ne concordent pas</translation>
    </message>
    <message>
        <source>Picture</source>
        <translation>Photo</translation>
    </message>
    <message>
        <source>Pictures that show the tasks</source>
        <translation>Photos qui montrent les tâches</translation>
    </message>
    <message>
        <source>Required documents that are not here: {0}.</source>
        <translation>Documents requis absents&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>SHA-256 begins</source>
        <translation>SHA-256 commence par</translation>
    </message>
    <message>
        <source>Scans</source>
        <translation>Scans</translation>
    </message>
    <message>
        <source>Shown by</source>
        <translation>Montré par</translation>
    </message>
    <message>
        <source>Squawks that are open: {0}.</source>
        <translation>Anomalies ouvertes&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>Task</source>
        <translation>Tâche</translation>
    </message>
    <message>
        <source>Tasks claimed by the builder that no picture shows: {0}.</source>
        <translation>Tâches revendiquées par le constructeur qu’aucune photo ne montre&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>Tasks of the major portion without a picture: {0}.</source>
        <translation>Tâches de la majeure partie sans photo&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>The builder&apos;s share is {0} % of {1} tasks that apply: more than half.</source>
        <translation>La part du constructeur est de {0} % de {1} tâches applicables&#xa0;: plus de la moitié.</translation>
    </message>
    <message>
        <source>The builder&apos;s share is {0} % of {1} tasks that apply: not more than half.</source>
        <translation>La part du constructeur est de {0} % de {1} tâches applicables&#xa0;: pas plus de la moitié.</translation>
    </message>
    <message>
        <source>The first two photographs of each task</source>
        <translation>Les deux premières photos de chaque tâche</translation>
    </message>
    <message>
        <source>The four columns add up to {0}; the tenths of a task add up to 10.</source>
        <translation>Les quatre colonnes donnent {0}&#xa0;; les dixièmes d’une tâche donnent 10.</translation>
    </message>
    <message>
        <source>Tick of the builder</source>
        <translation>Coche du constr.</translation>
    </message>
    <message>
        <source>Tick of the maker</source>
        <translation>Coche du fabr.</translation>
    </message>
    <message>
        <source>Ticks of the builder: {0}, of the maker: {1}; the builder does not have more.</source>
        <translation>Coches du constructeur&#xa0;: {0}, du fabricant&#xa0;: {1}&#xa0;; le constructeur n’en a pas davantage.</translation>
    </message>
    <message>
        <source>Ticks of the builder: {0}, of the maker: {1}; the builder has more.</source>
        <translation>Coches du constructeur&#xa0;: {0}, du fabricant&#xa0;: {1}&#xa0;; le constructeur en a davantage.</translation>
    </message>
    <message>
        <source>Who did how much of each task</source>
        <translation>Qui a fait quelle part de chaque tâche</translation>
    </message>
    <message>
        <source>asked for on {0}</source>
        <translation>demandé le {0}</translation>
    </message>
    <message>
        <source>builder&apos;s name</source>
        <translation>nom du constructeur</translation>
    </message>
    <message>
        <source>entries of the log: {0}, {1} to {2}; {3}</source>
        <translation>entrées du carnet&#xa0;: {0}, du {1} au {2}&#xa0;; {3}</translation>
    </message>
    <message>
        <source>expected</source>
        <translation>attendu</translation>
    </message>
    <message>
        <source>expired after {0}</source>
        <translation>expiré après le {0}</translation>
    </message>
    <message>
        <source>for resale</source>
        <translation>pour la revente</translation>
    </message>
    <message>
        <source>has fewer than {0} entries</source>
        <translation>a moins de {0} entrées</translation>
    </message>
    <message>
        <source>here since {0}</source>
        <translation>reçu le {0}</translation>
    </message>
    <message>
        <source>holds a number that is too large</source>
        <translation>contient un nombre trop grand</translation>
    </message>
    <message>
        <source>holds the character U+0000</source>
        <translation>contient le caractère U+0000</translation>
    </message>
    <message>
        <source>in some cases</source>
        <translation>dans certains cas</translation>
    </message>
    <message>
        <source>in tenths of a task</source>
        <translation>en dixièmes d’une tâche</translation>
    </message>
    <message>
        <source>is empty</source>
        <translation>est vide</translation>
    </message>
    <message>
        <source>is longer than 1 MiB</source>
        <translation>dépasse 1 Mio</translation>
    </message>
    <message>
        <source>is longer than {0} bytes</source>
        <translation>dépasse {0} octets</translation>
    </message>
    <message>
        <source>is neither true nor false</source>
        <translation>n’est ni vrai ni faux</translation>
    </message>
    <message>
        <source>is nested more than {0} deep</source>
        <translation>est imbriqué à plus de {0} niveaux</translation>
    </message>
    <message>
        <source>is no field of a profile</source>
        <translation>n’est pas un champ d’un profil de règles</translation>
    </message>
    <message>
        <source>is no whole number from {0} to {1}</source>
        <translation>n’est pas un nombre entier de {0} à {1}</translation>
    </message>
    <message>
        <source>is not JSON at line {0}, column {1}</source>
        <translation>n’est pas du JSON à la ligne {0}, colonne {1}</translation>
    </message>
    <message>
        <source>is that of a profile that came with the program and says otherwise: a copy needs an id of its own</source>
        <translation>est celui d’un profil de règles livré avec le programme, qui dit autre chose&#xa0;: une copie a besoin d’un identifiant à elle</translation>
    </message>
    <message>
        <source>log entries</source>
        <translation>entrées du carnet</translation>
    </message>
    <message>
        <source>model</source>
        <translation>modèle</translation>
    </message>
    <message>
        <source>not here</source>
        <translation>absent</translation>
    </message>
    <message>
        <source>pictures {0}</source>
        <translation>photos {0}</translation>
    </message>
    <message>
        <source>registration</source>
        <translation>immatriculation</translation>
    </message>
    <message>
        <source>required</source>
        <translation>requis</translation>
    </message>
    <message>
        <source>tasks of the major portion</source>
        <translation>tâches de la majeure partie</translation>
    </message>
    <message>
        <source>the builder&apos;s name is {0} there, and {1} in the facts of the project</source>
        <translation>le nom du constructeur y est {0}, et {1} dans les données du projet</translation>
    </message>
    <message>
        <source>the model is {0} there, and {1} in the facts of the project</source>
        <translation>le modèle y est {0}, et {1} dans les données du projet</translation>
    </message>
    <message>
        <source>the registration is {0} there, and {1} in the facts of the project</source>
        <translation>l’immatriculation y est {0}, et {1} dans les données du projet</translation>
    </message>
    <message>
        <source>the serial number is {0} on the equipment list, and {1} on the part</source>
        <translation>le numéro de série est {0} sur la liste d’équipement, et {1} sur la pièce</translation>
    </message>
    <message>
        <source>the serial number is {0} there, and {1} in the facts of the project</source>
        <translation>le numéro de série y est {0}, et {1} dans les données du projet</translation>
    </message>
    <message>
        <source>video: {0}</source>
        <translation>vidéo&#xa0;: {0}</translation>
    </message>
    <message>
        <source>{0} (added)</source>
        <translation>{0} (ajoutée)</translation>
    </message>
    <message>
        <source>{0} is listed twice</source>
        <translation>{0} figure deux fois</translation>
    </message>
    <message>
        <source>{0} is no day from 1900 to 2199</source>
        <translation>{0} n’est pas un jour de 1900 à 2199</translation>
    </message>
    <message>
        <source>{0} is no key: lower-case letters, digits, - and _, at most {1} of them</source>
        <translation>{0} n’est pas une clé&#xa0;: minuscules, chiffres, - et _, au plus {1}</translation>
    </message>
    <message>
        <source>{0} is none of the listed sources</source>
        <translation>{0} n’est aucune des sources indiquées</translation>
    </message>
    <message>
        <source>{0} is none of {1}</source>
        <translation>{0} n’est aucun de {1}</translation>
    </message>
    <message>
        <source>% MAC</source>
        <translation>% CMA</translation>
    </message>
    <message>
        <source>A bend is between 0 and 180 degrees.</source>
        <translation>Un pli est compris entre 0 et 180 degrés.</translation>
    </message>
    <message>
        <source>A bend radius is 0 or more.</source>
        <translation>Un rayon de pliage est de 0 ou plus.</translation>
    </message>
    <message>
        <source>A current is above zero.</source>
        <translation>Un courant est supérieur à zéro.</translation>
    </message>
    <message>
        <source>A run of wire is longer than nothing.</source>
        <translation>Un câble est plus long que rien.</translation>
    </message>
    <message>
        <source>A sheet is thicker than nothing and at most {0} in.</source>
        <translation>Une tôle est plus épaisse que rien et d’au plus {0} in.</translation>
    </message>
    <message>
        <source>Arm</source>
        <translation>Bras de levier</translation>
    </message>
    <message>
        <source>Calibrated until</source>
        <translation>Étalonné jusqu’au</translation>
    </message>
    <message>
        <source>Centre of gravity</source>
        <translation>Centre de gravité</translation>
    </message>
    <message>
        <source>Credential</source>
        <translation>Qualification</translation>
    </message>
    <message>
        <source>Datum</source>
        <translation>Plan de référence</translation>
    </message>
    <message>
        <source>Deviation or bulletin</source>
        <translation>Écart ou bulletin</translation>
    </message>
    <message>
        <source>Empty weight</source>
        <translation>Masse à vide</translation>
    </message>
    <message>
        <source>Empty weight and centre of gravity</source>
        <translation>Masse à vide et centre de gravité</translation>
    </message>
    <message>
        <source>Equipment list</source>
        <translation>Liste d’équipement</translation>
    </message>
    <message>
        <source>Equipment on board</source>
        <translation>Équipement à bord</translation>
    </message>
    <message>
        <source>Fuel</source>
        <translation>Carburant</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Comment</translation>
    </message>
    <message>
        <source>Levelled by</source>
        <translation>Mis à niveau selon</translation>
    </message>
    <message>
        <source>Limits from: {0}</source>
        <translation>Limites tirées de&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Loading</source>
        <translation>Chargement</translation>
    </message>
    <message>
        <source>Loading and limits</source>
        <translation>Chargement et limites</translation>
    </message>
    <message>
        <source>Moment</source>
        <translation>Moment</translation>
    </message>
    <message>
        <source>Net</source>
        <translation>Net</translation>
    </message>
    <message>
        <source>No equipment is on record.</source>
        <translation>Aucun équipement enregistré.</translation>
    </message>
    <message>
        <source>No loading is on record.</source>
        <translation>Aucun chargement enregistré.</translation>
    </message>
    <message>
        <source>No wire of the table carries {0} A over {1} ft with a drop of at most {2} V.</source>
        <translation>Aucun fil du tableau ne porte {0} A sur {1} ft avec une chute d’au plus {2} V.</translation>
    </message>
    <message>
        <source>OUTSIDE the limits</source>
        <translation>HORS des limites</translation>
    </message>
    <message>
        <source>Oil</source>
        <translation>Huile</translation>
    </message>
    <message>
        <source>Rivets an inch, share, width and pitch are above zero.</source>
        <translation>Rivets par pouce, part, largeur et pas sont supérieurs à zéro.</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Balance</translation>
    </message>
    <message>
        <source>Scale under</source>
        <translation>Balance sous</translation>
    </message>
    <message>
        <source>Square: the empty aeroplane. Discs: the loadings by their number. Triangles: the extremes. E, F and A name them.</source>
        <translation>Carré&#xa0;: l’avion à vide. Disques&#xa0;: les chargements par leur numéro. Triangles&#xa0;: les extrêmes. E, F et A les désignent.</translation>
    </message>
    <message>
        <source>Tare</source>
        <translation>Tare</translation>
    </message>
    <message>
        <source>The centre of gravity lies at {0} % of the mean aerodynamic chord.</source>
        <translation>Le centre de gravité se trouve à {0} % de la corde moyenne aérodynamique.</translation>
    </message>
    <message>
        <source>The drop that is allowed is above zero.</source>
        <translation>La chute admise est supérieure à zéro.</translation>
    </message>
    <message>
        <source>The extremes are searched over all loads that the cases name: of each no less than the least and no more than the most of any case, within the maximum weight.</source>
        <translation>Les extrêmes sont cherchés sur toutes les charges que nomment les cas&#xa0;: de chacune pas moins que le moins et pas plus que le plus d’un cas, dans la masse maximale.</translation>
    </message>
    <message>
        <source>The table has no rivets of {0} in for a sheet of {1} in.</source>
        <translation>Le tableau n’a pas de rivets de {0} in pour une tôle de {1} in.</translation>
    </message>
    <message>
        <source>The table has no wire size {0}; it has {1}.</source>
        <translation>Le tableau n’a pas de calibre de fil {0}&#xa0;; il a {1}.</translation>
    </message>
    <message>
        <source>The wire&apos;s temperature is between {0} and {1} °C.</source>
        <translation>La température du fil est comprise entre {0} et {1} °C.</translation>
    </message>
    <message>
        <source>Weigh indoors, level, with scales whose calibration holds, and say which fuel and oil were on board. The flight manual and the authority decide on limits.</source>
        <translation>Peser à l’intérieur, de niveau, avec des balances dont l’étalonnage est valable, et dire quels carburant et huile étaient à bord. Le manuel de vol et l’autorité décident des limites.</translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation>Pesé</translation>
    </message>
    <message>
        <source>Weighed and worked out by</source>
        <translation>Pesé et calculé par</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Weight and balance</source>
        <translation>Masse et centrage</translation>
    </message>
    <message>
        <source>Weight and balance report</source>
        <translation>Rapport de masse et centrage</translation>
    </message>
    <message>
        <source>What changes the weight</source>
        <translation>Ce qui change la masse</translation>
    </message>
    <message>
        <source>after the weighing: not in it</source>
        <translation>après la pesée&#xa0;: n’y est pas</translation>
    </message>
    <message>
        <source>before the weighing: in it</source>
        <translation>avant la pesée&#xa0;: y est</translation>
    </message>
    <message>
        <source>correction</source>
        <translation>correction</translation>
    </message>
    <message>
        <source>fitted since</source>
        <translation>monté depuis</translation>
    </message>
    <message>
        <source>is not known here: all items share the weight_unit and arm_unit of the file</source>
        <translation>est inconnu ici&#xa0;: tous les éléments ont les weight_unit et arm_unit du fichier</translation>
    </message>
    <message>
        <source>removed since</source>
        <translation>démonté depuis</translation>
    </message>
    <message>
        <source>scale, net</source>
        <translation>balance, net</translation>
    </message>
    <message>
        <source>within the limits</source>
        <translation>dans les limites</translation>
    </message>
    <message>
        <source>“{0}” is no arm; write it as 1750, 1750 mm or 68.9 in.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas un bras de levier&#xa0;; écrivez 1750, 1750 mm ou 68,9 in.</translation>
    </message>
    <message>
        <source>“{0}” is no force; write it as 38 lb or 170 N.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas une force&#xa0;; écrivez 38 lb ou 170 N.</translation>
    </message>
    <message>
        <source>“{0}” is no length of wire; write it as 20 ft or 6 m.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas une longueur de fil&#xa0;; écrivez 20 ft ou 6 m.</translation>
    </message>
    <message>
        <source>“{0}” is no length; write it as 1/8, 0.125 in or 3.2 mm.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas une longueur&#xa0;; écrivez 1/8, 0,125 in ou 3,2 mm.</translation>
    </message>
    <message>
        <source>“{0}” is no number.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas un nombre.</translation>
    </message>
    <message>
        <source>“{0}” is no torque; write it as 20 in-lb, 2 ft-lb or 2.3 N·m.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas un couple&#xa0;; écrivez 20 in-lb, 2 ft-lb ou 2,3 N·m.</translation>
    </message>
    <message>
        <source>“{0}” is no weight; write it as 84, 84 kg or 185 lb.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas une masse&#xa0;; écrivez 84, 84 kg ou 185 lb.</translation>
    </message>
    <message>
        <source>    Photographs: {0}</source>
        <translation>    Photos&#xa0;: {0}</translation>
    </message>
    <message>
        <source>  {0} × {1}: expected on {2}</source>
        <translation>  {0} × {1}&#xa0;: attendu le {2}</translation>
    </message>
    <message>
        <source>  {0} × {1}: listed {2}, received {3}</source>
        <translation>  {0} × {1}&#xa0;: sur la liste {2}, reçu {3}</translation>
    </message>
    <message>
        <source>  {0} × {1}: received {2}, of these damaged {3}</source>
        <translation>  {0} × {1}&#xa0;: reçu {2}, dont endommagé {3}</translation>
    </message>
    <message>
        <source>A count is 0 or more.</source>
        <translation>Un compte est de 0 ou plus.</translation>
    </message>
    <message>
        <source>A drag of {0} {2} is more than the {1} {2} that the nut is tightened to: something is wrong with the nut, the bolt or the reading.</source>
        <translation>Un couple de frottement de {0} {2} dépasse les {1} {2} auxquels l’écrou est serré&#xa0;: l’écrou, le boulon ou la lecture est en cause.</translation>
    </message>
    <message>
        <source>A line is for one fastener or more.</source>
        <translation>Une ligne vaut pour au moins une fixation.</translation>
    </message>
    <message>
        <source>A torque limit is 0 or more.</source>
        <translation>Une limite de couple est de 0 ou plus.</translation>
    </message>
    <message>
        <source>Aircraft: {0}</source>
        <translation>Aéronef&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Damaged</source>
        <translation>Endommagé</translation>
    </message>
    <message>
        <source>Finger-tight in {0} places, the first since {1}: {2}</source>
        <translation>Serré à la main à {0} endroits, le premier depuis le {1}&#xa0;: {2}</translation>
    </message>
    <message>
        <source>Finger-tight since {0}: {1}, {2}</source>
        <translation>Serré à la main depuis le {0}&#xa0;: {1}, {2}</translation>
    </message>
    <message>
        <source>Give the thread, and the table proposes limits.</source>
        <translation>Donnez le filetage, et le tableau propose des limites.</translation>
    </message>
    <message>
        <source>I have counted this shipment against its packing list. These lines do not agree with it:</source>
        <translation>J’ai compté cette livraison d’après sa liste de colisage. Ces lignes ne concordent pas&#xa0;:</translation>
    </message>
    <message>
        <source>Kit number: {0}</source>
        <translation>Numéro du kit&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Lines without a price are not in this sum.</source>
        <translation>Les lignes sans prix ne sont pas dans cette somme.</translation>
    </message>
    <message>
        <source>Missing</source>
        <translation>Manquant</translation>
    </message>
    <message>
        <source>Not arrived</source>
        <translation>Non arrivé</translation>
    </message>
    <message>
        <source>Please send what is missing and replace what is damaged, or tell me by when you will.</source>
        <translation>Veuillez envoyer ce qui manque et remplacer ce qui est endommagé, ou me dire pour quand.</translation>
    </message>
    <message>
        <source>Say what is measured.</source>
        <translation>Dites ce qui est mesuré.</translation>
    </message>
    <message>
        <source>Say what was paid for behind the amount.</source>
        <translation>Écrivez derrière le montant ce qui a été payé.</translation>
    </message>
    <message>
        <source>Say where the fastener is.</source>
        <translation>Dites où se trouve la fixation.</translation>
    </message>
    <message>
        <source>Shipment: {0}</source>
        <translation>Livraison&#xa0;: {0}</translation>
    </message>
    <message>
        <source>The lower limit {0} is above the upper limit {1}.</source>
        <translation>La limite basse {0} est au-dessus de la limite haute {1}.</translation>
    </message>
    <message>
        <source>The price of {0} names no currency.</source>
        <translation>Le prix de {0} ne nomme pas de monnaie.</translation>
    </message>
    <message>
        <source>The prices add up to more than can be kept.</source>
        <translation>La somme des prix dépasse ce qui peut être noté.</translation>
    </message>
    <message>
        <source>The torque table has no thread “{0}”: take the limits from the drawing.</source>
        <translation>Le tableau des couples n’a pas de filetage «&#xa0;{0}&#xa0;»&#xa0;: prenez les limites du plan.</translation>
    </message>
    <message>
        <source>The torque table has no thread “{0}”: write the limits of the drawing behind it, like 8-10 N-m.</source>
        <translation>Le tableau des couples n’a pas de filetage «&#xa0;{0}&#xa0;»&#xa0;: écrivez derrière les limites du plan, comme 8-10 N-m.</translation>
    </message>
    <message>
        <source>What is missing or damaged is priced at {0} {1} in all.</source>
        <translation>Ce qui manque ou est endommagé vaut {0} {1} en tout.</translation>
    </message>
    <message>
        <source>{0} cannot be damaged when {1} came.</source>
        <translation>{0} ne peuvent être endommagés quand {1} sont arrivés.</translation>
    </message>
    <message>
        <source>{0} has no price on record.</source>
        <translation>Aucun prix n’est noté pour {0}.</translation>
    </message>
    <message>
        <source>{0} has {1} {2}, which is below zero.</source>
        <translation>{0} a {1} {2}, ce qui est sous zéro.</translation>
    </message>
    <message>
        <source>{0}: finger-tight, fitted but not torqued</source>
        <translation>{0}&#xa0;: serré à la main, posé mais pas au couple</translation>
    </message>
    <message>
        <source>“{0}” has more decimals than {1} has.</source>
        <translation>«&#xa0;{0}&#xa0;» a plus de décimales que {1}.</translation>
    </message>
    <message>
        <source>“{0}” is below zero: amounts are of what was paid.</source>
        <translation>«&#xa0;{0}&#xa0;» est sous zéro&#xa0;: un montant dit ce qui a été payé.</translation>
    </message>
    <message>
        <source>“{0}” is no amount; write it like 12.50.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas un montant&#xa0;; écrivez-le comme 12,50.</translation>
    </message>
    <message>
        <source>“{0}” is too large an amount to be kept.</source>
        <translation>«&#xa0;{0}&#xa0;» est un montant trop grand.</translation>
    </message>
    <message>
        <source>“{0}” names no currency; write it behind, in three letters.</source>
        <translation>«&#xa0;{0}&#xa0;» ne nomme pas de monnaie&#xa0;; écrivez-la derrière, en trois lettres.</translation>
    </message>
    <message>
        <source>All other work</source>
        <translation>Tout autre travail</translation>
    </message>
    <message>
        <source>All work left</source>
        <translation>Tout le travail restant</translation>
    </message>
    <message>
        <source>At this pace it is not done within a hundred years.</source>
        <translation>À ce rythme, ce ne sera pas fini en cent ans.</translation>
    </message>
    <message>
        <source>Came</source>
        <translation>Réalisé</translation>
    </message>
    <message>
        <source>Done again</source>
        <translation>Refait</translation>
    </message>
    <message>
        <source>Done between {0} and {1}; in 80 futures of 100 by {2}.</source>
        <translation>Fini entre le {0} et le {1}&#xa0;; dans 80 avenirs sur 100 avant le {2}.</translation>
    </message>
    <message>
        <source>Done by</source>
        <translation>Fini avant le</translation>
    </message>
    <message>
        <source>Done by (P50)</source>
        <translation>Fini avant le (P50)</translation>
    </message>
    <message>
        <source>Done in all, by day</source>
        <translation>Fait en tout, par jour</translation>
    </message>
    <message>
        <source>Estimate</source>
        <translation>Estimation</translation>
    </message>
    <message>
        <source>Estimate beside what it took</source>
        <translation>Estimation et temps passé</translation>
    </message>
    <message>
        <source>Finished steps with an estimate and time in the log: {0}. Thought to take {1}, they took {2}: {3} of the estimate.</source>
        <translation>Étapes finies avec estimation et temps au carnet&#xa0;: {0}. Estimées à {1}, elles ont pris {2}&#xa0;: {3} de l’estimation.</translation>
    </message>
    <message>
        <source>Finished steps without an estimate, left out: {0}.</source>
        <translation>Étapes finies sans estimation, non comptées&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>Finished steps without time in the log, left out: {0}.</source>
        <translation>Étapes finies sans temps au carnet, non comptées&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>Here stands what finished steps took beside what was thought of them: steps with an estimate, ticked, and with time in the log.</source>
        <translation>Ici figure ce que les étapes finies ont pris à côté de ce qui était prévu&#xa0;: étapes cochées, avec une estimation et du temps au carnet.</translation>
    </message>
    <message>
        <source>Here stands what the forecast said on the first day of each month beside what came, from the third month of the log on.</source>
        <translation>Ici figure ce que la prévision disait le premier jour de chaque mois à côté de ce qui est venu, à partir du troisième mois du carnet.</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Heures</translation>
    </message>
    <message>
        <source>Hours by kind of work</source>
        <translation>Heures par type de travail</translation>
    </message>
    <message>
        <source>Hours by part</source>
        <translation>Heures par pièce</translation>
    </message>
    <message>
        <source>Hours by person</source>
        <translation>Heures par personne</translation>
    </message>
    <message>
        <source>Hours done, and how they may go on</source>
        <translation>Heures faites, et leur suite possible</translation>
    </message>
    <message>
        <source>Hours per month</source>
        <translation>Heures par mois</translation>
    </message>
    <message>
        <source>Hours per week, the last year</source>
        <translation>Heures par semaine, la dernière année</translation>
    </message>
    <message>
        <source>Hours to go</source>
        <translation>Heures restantes</translation>
    </message>
    <message>
        <source>In {0} of {1} months no more came than P50 had said, in {2} no more than P80. A forecast that holds has half of them within P50 and four fifths within P80; months share most of their work, so a few years are one story, not many.</source>
        <translation>Dans {0} mois sur {1}, il n’est pas venu plus que P50 ne disait, dans {2} pas plus que P80. Une prévision qui tient en a la moitié dans P50 et quatre cinquièmes dans P80&#xa0;; les mois partagent l’essentiel de leur travail, quelques années sont donc une seule histoire, pas plusieurs.</translation>
    </message>
    <message>
        <source>Left out by choice: {0} (steps: {1}, squawks: {2}).</source>
        <translation>Laissé de côté par choix&#xa0;: {0} (étapes&#xa0;: {1}, anomalies&#xa0;: {2}).</translation>
    </message>
    <message>
        <source>Left to do (steps: {0}, squawks: {1}): {2} to {3} h of all who work.</source>
        <translation>Reste à faire (étapes&#xa0;: {0}, anomalies&#xa0;: {1})&#xa0;: {2} à {3} h de tous ceux qui travaillent.</translation>
    </message>
    <message>
        <source>Lies in</source>
        <translation>Se situe</translation>
    </message>
    <message>
        <source>Most of the spread comes from: {0}.</source>
        <translation>L’incertitude vient surtout de&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>Nobody is on record.</source>
        <translation>Personne n’est enregistré.</translation>
    </message>
    <message>
        <source>Nothing that is left has an estimate.</source>
        <translation>Rien de ce qui reste n’est estimé.</translation>
    </message>
    <message>
        <source>Nothing that is left has an estimate. Write steps with estimates on the page of parts, and this tells how long they may take.</source>
        <translation>Rien de ce qui reste n’est estimé. Notez des étapes avec estimation sur la page des pièces, et ceci dira combien de temps elles peuvent prendre.</translation>
    </message>
    <message>
        <source>Of the estimate</source>
        <translation>De l’estimation</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Le</translation>
    </message>
    <message>
        <source>P10 to P50</source>
        <translation>P10 à P50</translation>
    </message>
    <message>
        <source>P10 to P90</source>
        <translation>P10 à P90</translation>
    </message>
    <message>
        <source>P50 to P80</source>
        <translation>P50 à P80</translation>
    </message>
    <message>
        <source>P80 to P90</source>
        <translation>P80 à P90</translation>
    </message>
    <message>
        <source>Part and step</source>
        <translation>Pièce et étape</translation>
    </message>
    <message>
        <source>Said of the work done since, and what came</source>
        <translation>Prévu pour le travail fait depuis, et réalisé</translation>
    </message>
    <message>
        <source>Said of them</source>
        <translation>Prévu pour elles</translation>
    </message>
    <message>
        <source>Said, P10 to P90</source>
        <translation>Prévu, P10 à P90</translation>
    </message>
    <message>
        <source>Said, P50</source>
        <translation>Prévu, P50</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Part</translation>
    </message>
    <message>
        <source>Share done again</source>
        <translation>Part refaite</translation>
    </message>
    <message>
        <source>Squawks without an estimate, in no figure: {0}.</source>
        <translation>Anomalies sans estimation, dans aucun chiffre&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>Steps done since</source>
        <translation>Étapes depuis</translation>
    </message>
    <message>
        <source>Steps without an estimate: {0}. What finished steps of the same kind of part took stands in for it.</source>
        <translation>Étapes sans estimation&#xa0;: {0}. Ce qu’ont pris les étapes finies sur des pièces de même type en tient lieu.</translation>
    </message>
    <message>
        <source>Sum so far</source>
        <translation>Total à ce jour</translation>
    </message>
    <message>
        <source>The last step was done on {0}.</source>
        <translation>La dernière étape a été finie le {0}.</translation>
    </message>
    <message>
        <source>The log is empty.</source>
        <translation>Le carnet est vide.</translation>
    </message>
    <message>
        <source>The log is empty. Hours entered there are added up here.</source>
        <translation>Le carnet est vide. Les heures qui y sont notées s’additionnent ici.</translation>
    </message>
    <message>
        <source>The log is too short to tell when: it needs eight weeks, or the hours a week that you mean to work.</source>
        <translation>Le carnet est trop court pour dire quand&#xa0;: il faut huit semaines, ou les heures par semaine que vous comptez faire.</translation>
    </message>
    <message>
        <source>Took</source>
        <translation>Pris</translation>
    </message>
    <message>
        <source>Week</source>
        <translation>Semaine</translation>
    </message>
    <message>
        <source>What came is the time of the steps and squawks that were left then and are done now, and all rework since. Estimates are those of today.</source>
        <translation>Ce qui est venu est le temps des étapes et anomalies qui restaient alors et sont faites aujourd’hui, et toute reprise depuis. Les estimations sont celles d’aujourd’hui.</translation>
    </message>
    <message>
        <source>What the forecast said, and what came</source>
        <translation>Ce que disait la prévision, et ce qui est venu</translation>
    </message>
    <message>
        <source>hours of all who worked</source>
        <translation>heures de tous ceux qui ont travaillé</translation>
    </message>
    <message>
        <source>less than P10</source>
        <translation>moins que P10</translation>
    </message>
    <message>
        <source>more than P90</source>
        <translation>plus que P90</translation>
    </message>
    <message>
        <source>{0} by the clock, {1} of all who worked; {2}.</source>
        <translation>{0} à l’horloge, {1} de tous ceux qui ont travaillé&#xa0;; {2}.</translation>
    </message>
    <message>
        <source>{0} h are done.</source>
        <translation>{0} h sont faites.</translation>
    </message>
    <message>
        <source>{0} of all work was done again</source>
        <translation>{0} de tout le travail a été refait</translation>
    </message>
    <message>
        <source>{0} to {1} h to go</source>
        <translation>Encore {0} à {1} h</translation>
    </message>
    <message>
        <source>{0} to {1} h to go, done between {2} and {3}</source>
        <translation>Encore {0} à {1} h, fini entre le {2} et le {3}</translation>
    </message>
    <message>
        <source>Accepted on {0} by {1}: {2}</source>
        <translation>Acceptée le {0} par {1}&#xa0;: {2}</translation>
    </message>
    <message>
        <source>Equipment fitted or removed since the weighing, without weight or arm: {0}.</source>
        <translation>Équipements montés ou démontés depuis la pesée, sans masse ou bras de levier&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>Estimate {0}</source>
        <translation>Estimation {0}</translation>
    </message>
    <message>
        <source>Every closing and how it stands</source>
        <translation>Chaque fermeture et son état</translation>
    </message>
    <message>
        <source>Extremes of loading outside the limits: {0}.</source>
        <translation>Chargements extrêmes hors limites&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>Farthest aft</source>
        <translation>Le plus arrière</translation>
    </message>
    <message>
        <source>Farthest forward</source>
        <translation>Le plus avant</translation>
    </message>
    <message>
        <source>LATE, written {0}</source>
        <translation>TARDIVE, écrite le {0}</translation>
    </message>
    <message>
        <source>Loadings outside the limits: {0}.</source>
        <translation>Chargements hors limites&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>Of the spread</source>
        <translation>Part de la dispersion</translation>
    </message>
    <message>
        <source>Out of date: something was changed after it</source>
        <translation>Périmé&#xa0;: quelque chose a été modifié ensuite</translation>
    </message>
    <message>
        <source>bulletins</source>
        <translation>bulletins</translation>
    </message>
    <message>
        <source>certificate filed</source>
        <translation>certificat classé</translation>
    </message>
    <message>
        <source>closed by an earlier builder</source>
        <translation>fermée par un constructeur précédent</translation>
    </message>
    <message>
        <source>due {0}</source>
        <translation>échéance {0}</translation>
    </message>
    <message>
        <source>elsewhere in the aircraft</source>
        <translation>ailleurs dans l’avion</translation>
    </message>
    <message>
        <source>for other closings, still open</source>
        <translation>pour d’autres fermetures, encore ouvertes</translation>
    </message>
    <message>
        <source>from visit {0}</source>
        <translation>de la visite {0}</translation>
    </message>
    <message>
        <source>inspections</source>
        <translation>inspections</translation>
    </message>
    <message>
        <source>journal {0}</source>
        <translation>registre {0}</translation>
    </message>
    <message>
        <source>limits of weight and centre of gravity</source>
        <translation>limites de masse et de centre de gravité</translation>
    </message>
    <message>
        <source>loadings</source>
        <translation>chargements</translation>
    </message>
    <message>
        <source>lot {0}</source>
        <translation>lot {0}</translation>
    </message>
    <message>
        <source>mandatory</source>
        <translation>obligatoire</translation>
    </message>
    <message>
        <source>measurements</source>
        <translation>mesures</translation>
    </message>
    <message>
        <source>nobody said whether it changed what was inspected</source>
        <translation>personne n’a dit si cela a modifié ce qui avait été inspecté</translation>
    </message>
    <message>
        <source>not required</source>
        <translation>non exigé</translation>
    </message>
    <message>
        <source>not weighed yet</source>
        <translation>pas encore pesé</translation>
    </message>
    <message>
        <source>parts</source>
        <translation>pièces</translation>
    </message>
    <message>
        <source>signed sheet filed</source>
        <translation>feuille signée classée</translation>
    </message>
    <message>
        <source>squawks</source>
        <translation>anomalies</translation>
    </message>
    <message>
        <source>used after its date, {0}</source>
        <translation>utilisé après sa date, {0}</translation>
    </message>
    <message>
        <source>weighings</source>
        <translation>pesées</translation>
    </message>
    <message>
        <source>{0}.{1}</source>
        <translation>{0},{1}</translation>
    </message>
    <message>
        <source>There is no weighing to count on: each sum is of nothing but what the loading itself names, and an empty weight among it is an estimate.</source>
        <translation>Aucune pesée ne sert de base&#xa0;: chaque somme ne contient que ce que le chargement nomme lui-même, et une masse à vide qui y figure est une estimation.</translation>
    </message>
    <message>
        <source>What was to be changed is not there any more.</source>
        <translation>Ce qui devait être modifié n’est plus là.</translation>
    </message>
    <message>
        <source>“{0}”: {1} is the code of no currency.</source>
        <translation>«&#xa0;{0}&#xa0;»&#xa0;: {1} n’est le code d’aucune monnaie.</translation>
    </message>
    <message>
        <source>1 photograph taken since, not printed here.</source>
        <translation>1 photo prise depuis, non imprimée ici.</translation>
    </message>
    <message>
        <source>A closing without blockers means complete records. Only the inspector&apos;s own look can tell whether the work is right.</source>
        <translation>Une fermeture à laquelle rien ne s’oppose signifie que les dossiers sont complets. Seul le regard de l’inspecteur dit si le travail est bon.</translation>
    </message>
    <message>
        <source>All of it is named under Readiness.</source>
        <translation>Tout est nommé sous «&#xa0;Préparation&#xa0;».</translation>
    </message>
    <message>
        <source></source>
        <translation>Tout est nommé dans la partie «&#xa0;Préparation&#xa0;».</translation>
    </message>
    <message>
        <source>And {0} more: {1}</source>
        <translation>Et {0} de plus&#xa0;: {1}</translation>
    </message>
    <message>
        <source>Boxes inside, and who signed them</source>
        <translation>Fermetures intérieures, et qui les a signées</translation>
    </message>
    <message>
        <source>Cure times hold at the temperature the maker names. In a cold workshop material that counts as cured may not be.</source>
        <translation>Les durées de durcissement valent à la température que le fabricant indique. Dans un atelier froid, un produit compté comme durci peut ne pas l’être.</translation>
    </message>
    <message>
        <source>Findings inside, and what became of them</source>
        <translation>Constatations à l’intérieur, et ce qu’elles sont devenues</translation>
    </message>
    <message>
        <source>Lies within</source>
        <translation>Se trouve dans</translation>
    </message>
    <message>
        <source>Limits from general tables are common practice. The maker&apos;s drawings and manuals come first.</source>
        <translation>Les limites des tableaux généraux relèvent de la pratique courante. Les plans et manuels du fabricant passent avant.</translation>
    </message>
    <message>
        <source>Nothing besides the corrections below.</source>
        <translation>Rien d’autre que les corrections ci-dessous.</translation>
    </message>
    <message>
        <source>Nothing here replaces local rules or the judgement of licensed people.</source>
        <translation>Rien ici ne remplace les règles locales ni le jugement des personnes titulaires d’une licence.</translation>
    </message>
    <message>
        <source>Nothing was logged in the last {0} weeks; to tell when, it needs the hours a week that you mean to work.</source>
        <translation>Rien n’a été inscrit ces {0} dernières semaines&#xa0;; pour dire quand, il faut les heures par semaine que vous comptez travailler.</translation>
    </message>
    <message>
        <source>Open, and out of reach</source>
        <translation>Ouvert, et hors d’atteinte</translation>
    </message>
    <message>
        <source>Report of the visit: {0}</source>
        <translation>Rapport de la visite&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Rules change. Check the current edition with your authority before relying on what is quoted here.</source>
        <translation>Les règles changent. Vérifiez l’édition en vigueur auprès de votre autorité avant de vous fier à ce qui est cité ici.</translation>
    </message>
    <message>
        <source>Shown: {0}.</source>
        <translation>Affiché&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>Steps without an estimate: {0}. No finished step and no estimate tells what they take; two hours stand in for it.</source>
        <translation>Étapes sans estimation&#xa0;: {0}. Aucune étape faite ni aucune estimation ne dit ce qu’elles prennent&#xa0;; deux heures les remplacent.</translation>
    </message>
    <message>
        <source>Steps without an estimate: {0}. No finished step tells what they take; the median of all estimates stands in for it.</source>
        <translation>Étapes sans estimation&#xa0;: {0}. Aucune étape faite ne dit ce qu’elles prennent&#xa0;; la médiane de toutes les estimations les remplace.</translation>
    </message>
    <message>
        <source>This form is no approval and no finding that the work is right: the drawings, the authority and the inspector decide.</source>
        <translation>Ce formulaire n’est ni une approbation ni la preuve que le travail est bon&#xa0;: les plans, l’autorité et l’inspecteur décident.</translation>
    </message>
    <message>
        <source>This is the builder&apos;s own record and no approval. The drawings, the authority and the inspector decide.</source>
        <translation>Ceci est le dossier du constructeur lui-même et non une approbation. Les plans, l’autorité et l’inspecteur décident.</translation>
    </message>
    <message>
        <source>Who signed each closing</source>
        <translation>Qui a signé chaque fermeture</translation>
    </message>
    <message>
        <source>boxes within {0}</source>
        <translation>fermetures intérieures {0}</translation>
    </message>
    <message>
        <source>bulletins {0}</source>
        <translation>bulletins {0}</translation>
    </message>
    <message>
        <source>by the program</source>
        <translation>par le programme</translation>
    </message>
    <message>
        <source>has the field {0} twice in one object</source>
        <translation>a deux fois le champ {0} dans un même objet</translation>
    </message>
    <message>
        <source>have the adviser or the inspector accept it late, or open it again</source>
        <translation>la faire accepter après coup par le conseiller ou l’inspecteur, ou la rouvrir</translation>
    </message>
    <message>
        <source>have the builder or the inspector accept it late, or open it again</source>
        <translation>la faire accepter après coup par le constructeur ou l’inspecteur, ou la rouvrir</translation>
    </message>
    <message>
        <source>have the builder, the adviser or the inspector accept it late, or open it again</source>
        <translation>la faire accepter après coup par le constructeur, le conseiller ou l’inspecteur, ou la rouvrir</translation>
    </message>
    <message>
        <source>hold points {0}</source>
        <translation>points d’arrêt {0}</translation>
    </message>
    <message>
        <source>holds the character U+0000 at line {0}, column {1}</source>
        <translation>contient le caractère U+0000 à la ligne {0}, colonne {1}</translation>
    </message>
    <message>
        <source>limits {0}</source>
        <translation>limites {0}</translation>
    </message>
    <message>
        <source>materials</source>
        <translation>matériaux</translation>
    </message>
    <message>
        <source>no hold point</source>
        <translation>aucun point d’arrêt</translation>
    </message>
    <message>
        <source>not begun</source>
        <translation>non commencée</translation>
    </message>
    <message>
        <source>not corrected</source>
        <translation>non corrigée</translation>
    </message>
    <message>
        <source>not in calibration</source>
        <translation>hors étalonnage</translation>
    </message>
    <message>
        <source>others {0}</source>
        <translation>autres {0}</translation>
    </message>
    <message>
        <source>packing lines {0}</source>
        <translation>lignes de colisage {0}</translation>
    </message>
    <message>
        <source>photographs</source>
        <translation>photos</translation>
    </message>
    <message>
        <source>picture {0}</source>
        <translation>photo {0}</translation>
    </message>
    <message>
        <source>raised {0}</source>
        <translation>soulevé le {0}</translation>
    </message>
    <message>
        <source>stays open, waits for the builder&apos;s signature</source>
        <translation>reste ouverte, attend la signature du constructeur</translation>
    </message>
    <message>
        <source>steps</source>
        <translation>étapes</translation>
    </message>
    <message>
        <source>still built</source>
        <translation>toujours construit ainsi</translation>
    </message>
    <message>
        <source>take in the maker&apos;s document and link it</source>
        <translation>ajouter le document du fabricant et le lier</translation>
    </message>
    <message>
        <source>{0} more, all in the sections below.</source>
        <translation>{0} de plus, toutes dans les parties ci-dessous.</translation>
    </message>
    <message>
        <source>{0} names no part</source>
        <translation>{0} ne nomme aucune pièce</translation>
    </message>
    <message>
        <source>{0} net</source>
        <translation>{0} net</translation>
    </message>
    <message>
        <source>{0} photographs taken since, not printed here.</source>
        <translation>{0} photos prises depuis, non imprimées ici.</translation>
    </message>
    <message>
        <source>{0}: closed by the factory, no document on record</source>
        <translation>{0}&#xa0;: fermée par le fabricant, aucun document enregistré</translation>
    </message>
    <message>
        <source>{0}: its closing is closed, the step is not done</source>
        <translation>{0}&#xa0;: sa fermeture est fermée, l’étape n’est pas faite</translation>
    </message>
    <message>
        <source>{0}: no closing is recorded for it</source>
        <translation>{0}&#xa0;: aucune fermeture enregistrée</translation>
    </message>
    <message>
        <source>An answer by message is kept with the signature. Whether another look is needed you decide.</source>
        <translation>Une réponse par message est gardée avec la signature. Vous décidez si un autre regard est nécessaire.</translation>
    </message>
    <message>
        <source>{0} and {1} more</source>
        <translation>{0} et {1} de plus</translation>
    </message>
    <message>
        <source>{0} from – to</source>
        <translation>{0} de – à</translation>
    </message>
    <message>
        <source>{0}, drag {1}</source>
        <translation>{0}, frottement {1}</translation>
    </message>
    <message>
        <source>Maker, part number</source>
        <translation>Fabricant, référence</translation>
    </message>
    <message>
        <source>removed {0}</source>
        <translation>démonté {0}</translation>
    </message>
    <message>
        <source>This computer knows no time zone {0}; the names are like Europe/Berlin.</source>
        <translation>Cet ordinateur ne connaît pas de fuseau horaire {0}&#xa0;; les noms sont comme Europe/Berlin.</translation>
    </message>
    <message>
        <source>changes</source>
        <translation>modifications</translation>
    </message>
    <message>
        <source>fixed, to be looked at</source>
        <translation>corrigées, à revoir</translation>
    </message>
    <message>
        <source>for the adviser to verify</source>
        <translation>à vérifier par le conseiller</translation>
    </message>
    <message>
        <source>for the builder to verify</source>
        <translation>à vérifier par le constructeur</translation>
    </message>
    <message>
        <source>for the inspector to verify</source>
        <translation>à vérifier par l’inspecteur</translation>
    </message>
    <message>
        <source>in reach</source>
        <translation>accessibles</translation>
    </message>
    <message>
        <source>only what touched {0}</source>
        <translation>seulement ce qui a touché {0}</translation>
    </message>
    <message>
        <source>out of reach</source>
        <translation>hors d’accès</translation>
    </message>
    <message>
        <source>outstanding</source>
        <translation>à traiter</translation>
    </message>
    <message>
        <source>soon out of reach</source>
        <translation>bientôt hors d’accès</translation>
    </message>
    <message>
        <source>to be fixed</source>
        <translation>à corriger</translation>
    </message>
    <message>
        <source>with the words “{0}”</source>
        <translation>avec les mots «&#xa0;{0}&#xa0;»</translation>
    </message>
    <message>
        <source>{0} and below</source>
        <translation>{0} et dessous</translation>
    </message>
    <message>
        <source>dealt with</source>
        <translation>réglées</translation>
    </message>
    <message>
        <source>outstanding and dealt with</source>
        <translation>à traiter et réglées</translation>
    </message>
    <message>
        <source>{0}, continued</source>
        <translation>{0}, suite</translation>
    </message>
    <message>
        <source>{0} record</source>
        <translation>{0} inscription</translation>
    </message>
    <message>
        <source>{0} records</source>
        <translation>{0} inscriptions</translation>
    </message>
    <message>
        <source>1 was closed with gaps.</source>
        <translation>1 a été fermée avec lacunes.</translation>
    </message>
    <message>
        <source>What is closed already is told below: what is open now and out of reach, and what was missing when it was closed.</source>
        <translation>Ce qui est déjà fermé est exposé plus bas&#xa0;: ce qui est ouvert et hors d’atteinte aujourd’hui, et ce qui manquait à la fermeture.</translation>
    </message>
    <message>
        <source>correct what was found, and have it signed again</source>
        <translation>corriger ce qui a été constaté et faire signer de nouveau</translation>
    </message>
    <message>
        <source>enter the day it came</source>
        <translation>inscrire le jour de son arrivée</translation>
    </message>
    <message>
        <source>{0} was rejected, and is not signed since</source>
        <translation>{0}&#xa0;: refus, et pas de signature depuis</translation>
    </message>
    <message>
        <source>{0} were closed with gaps.</source>
        <translation>{0} ont été fermées avec lacunes.</translation>
    </message>
    <message>
        <source>{0}: counted, but the day it came is not on record</source>
        <translation>{0}&#xa0;: compté, mais le jour d’arrivée n’est pas inscrit</translation>
    </message>
    <message>
        <source>{0}: not received yet</source>
        <translation>{0}&#xa0;: pas encore reçu</translation>
    </message>
    <message>
        <source>{0}: used on {1}, after its lot expired on {2}</source>
        <translation>{0}&#xa0;: utilisé le {1}, alors que le lot était périmé depuis le {2}</translation>
    </message>
    <message>
        <source>{0}: {1} of {2} missing or damaged</source>
        <translation>{0}&#xa0;: {1} sur {2} manquent ou sont endommagés</translation>
    </message>
    <message>
        <source>What would have cleared it</source>
        <translation>Ce qui l’aurait réglé</translation>
    </message>
    <message>
        <source>The folder {0} could not be made: {1}.</source>
        <translation>Le dossier {0} n’a pas pu être créé&#xa0;: {1}.</translation>
    </message>
    <message>
        <source>The folder {0} could not be saved: {1}.</source>
        <translation>Le dossier {0} n’a pas pu être enregistré&#xa0;: {1}.</translation>
    </message>
    <message>
        <source>The folder {0} leads out of the project, where its files are not looked for; nothing is taken in there.</source>
        <translation>Le dossier {0} mène hors du projet, où ses fichiers ne sont pas cherchés&#xa0;; rien n’y est repris.</translation>
    </message>
    <message>
        <source>{0} became shorter while it was read.</source>
        <translation>{0} a raccourci pendant sa lecture.</translation>
    </message>
    <message>
        <source>{0} changed while it was read; try again when it has arrived.</source>
        <translation>{0} a changé pendant sa lecture&#xa0;; réessayer quand le fichier sera arrivé.</translation>
    </message>
    <message>
        <source>{0} could not be read: {1}.</source>
        <translation>{0} n’a pas pu être lu&#xa0;: {1}.</translation>
    </message>
    <message>
        <source>{0} could not be saved: its name is taken by another file.</source>
        <translation>{0} n’a pas pu être enregistré&#xa0;: un autre fichier porte ce nom.</translation>
    </message>
    <message>
        <source>{0} could not be saved: {1}.</source>
        <translation>{0} n’a pas pu être enregistré&#xa0;: {1}.</translation>
    </message>
    <message>
        <source>{0} is cut short: its end is missing. Copy it again.</source>
        <translation>{0} est tronqué&#xa0;: la fin manque. Copiez-le de nouveau.</translation>
    </message>
    <message>
        <source>{0} is empty.</source>
        <translation>{0} est vide.</translation>
    </message>
    <message>
        <source>{0} is larger than any photo.</source>
        <translation>{0} est plus grand que n’importe quelle photo.</translation>
    </message>
    <message>
        <source>{0} is not a file.</source>
        <translation>{0} n’est pas un fichier.</translation>
    </message>
    <message>
        <source>{0} is not a photo (JPEG, PNG, HEIC), a video or a PDF.</source>
        <translation>{0} n’est ni une photo (JPEG, PNG, HEIC), ni une vidéo, ni un PDF.</translation>
    </message>
    <message>
        <source>{0} is not a photo (JPEG, PNG, HEIC).</source>
        <translation>{0} n’est pas une photo (JPEG, PNG, HEIC).</translation>
    </message>
    <message>
        <source>{0} is not a photo in the project folder.</source>
        <translation>{0} n’est pas une photo du dossier du projet.</translation>
    </message>
    <message>
        <source>{0} is not the file that was taken in: it has changed since.</source>
        <translation>{0} n’est pas le fichier repris&#xa0;: il a changé depuis.</translation>
    </message>
    <message>
        <source>{0} was not taken in: stopped.</source>
        <translation>{0} n’a pas été repris&#xa0;: arrêté.</translation>
    </message>
    <message>
        <source>{0} was not there when its record came; take the file in as a photo.</source>
        <translation>{0} n’était pas là quand sa fiche est arrivée&#xa0;; reprenez le fichier comme photo.</translation>
    </message>
    <message>
        <source>No visit is planned, and no expiry or calibration falls due or did in the last 30 days: there is nothing to put into a calendar.</source>
        <translation>Aucune visite n’est prévue, et aucune échéance ni étalonnage n’est dû ou ne l’a été dans les 30 derniers jours&#xa0;: il n’y a rien à mettre dans un calendrier.</translation>
    </message>
    <message>
        <source>have it signed again</source>
        <translation>faire signer de nouveau</translation>
    </message>
    <message>
        <source>{0} on {1}</source>
        <translation>{0} le {1}</translation>
    </message>
    <message>
        <source>{0}: after the signature came {1}</source>
        <translation>{0}&#xa0;: après la signature, {1}</translation>
    </message>
    <message>
        <source>{0}: after the signature came {1}, and {2} more</source>
        <translation>{0}&#xa0;: après la signature, {1} et {2} de plus</translation>
    </message>
    <message>
        <source>{0}: expired on {1}</source>
        <translation>{0}&#xa0;: expiré le {1}</translation>
    </message>
    <message>
        <source>{0}: expires on {1}</source>
        <translation>{0}&#xa0;: expire le {1}</translation>
    </message>
    <message>
        <source>The text is no UTF-8.</source>
        <translation>Le texte n’est pas en UTF-8.</translation>
    </message>
    <message>
        <source>Photographs that could not be printed, each with the reason in its place: {0}.</source>
        <translation>Photos qui n’ont pas pu être imprimées, chacune avec la raison à sa place&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>at least {0}</source>
        <translation>au moins {0}</translation>
    </message>
    <message>
        <source>at most {0}</source>
        <translation>au plus {0}</translation>
    </message>
    <message>
        <source>{0}: the last measurement is {1}, outside its limits ({2})</source>
        <translation>{0}&#xa0;: la dernière mesure est de {1}, hors limites ({2})</translation>
    </message>
    <message>
        <source>{0}: the torque is {1} ({3} less a drag of {4}), outside its limits ({2})</source>
        <translation>{0}&#xa0;: le couple est de {1} ({3} moins un couple de frottement de {4}), hors limites ({2})</translation>
    </message>
    <message>
        <source>{0}: the torque is {1}, outside its limits ({2})</source>
        <translation>{0}&#xa0;: le couple est de {1}, hors limites ({2})</translation>
    </message>
    <message>
        <source>The project has this file with other content than the one beside the document, and no SHA-256 on record says which is right. Nothing was taken in, and both are as they were; take away the one that is wrong.</source>
        <translation>Le projet a ce fichier avec un autre contenu que celui placé à côté du document, et aucune somme SHA-256 ne dit lequel est le bon. Rien n’a été repris, et tous deux sont restés tels quels&#xa0;; retirez celui qui est faux.</translation>
    </message>
    <message>
        <source>The project lacks this file, and the one beside the document is another: its SHA-256 is {0}, the one on record {1}. Nothing was taken in; put the right file there, or take this one away.</source>
        <translation>Ce fichier manque au projet, et celui placé à côté du document en est un autre&#xa0;: son SHA-256 est {0}, celui du registre {1}. Rien n’a été repris&#xa0;; placez-y le bon fichier ou retirez celui-ci.</translation>
    </message>
    <message>
        <source>These numbers are too large to be reckoned with.</source>
        <translation>Ces nombres sont trop grands pour être calculés.</translation>
    </message>
    <message>
        <source>A row of {0} names a {1} that does not exist.</source>
        <translation>Une ligne de {0} nomme un élément {1} qui n’existe pas.</translation>
    </message>
    <message>
        <source>A second database lies in the project&apos;s folder: {0}. What was written to it is not in the records.</source>
        <translation>Une seconde base de données se trouve dans le dossier du projet&#xa0;: {0}. Ce qui y a été écrit n’est pas dans les enregistrements.</translation>
    </message>
    <message>
        <source>Made the search index anew; {0} of its rows were wrong.</source>
        <translation>L’index de recherche a été refait&#xa0;; lignes fausses&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>Made the small copies of {0} of {1} photos anew.</source>
        <translation>Petites copies refaites&#xa0;: {0} photos sur {1}.</translation>
    </message>
    <message>
        <source>No record names the file {0}.</source>
        <translation>Aucun enregistrement ne nomme le fichier {0}.</translation>
    </message>
    <message>
        <source>Nothing more could be mended: {0}</source>
        <translation>Rien de plus n’a pu être réparé&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Removed the half-written file {0}.</source>
        <translation>Le fichier à moitié écrit {0} a été supprimé.</translation>
    </message>
    <message>
        <source>Row {0} of the journal (“{1}”) does not fit the rows before it.</source>
        <translation>La ligne {0} du registre («&#xa0;{1}&#xa0;») ne s’accorde pas avec les lignes précédentes.</translation>
    </message>
    <message>
        <source>Row {0} of the journal (“{1}”) does not follow the row before it: a row was altered, removed or put in.</source>
        <translation>La ligne {0} du registre («&#xa0;{1}&#xa0;») ne suit pas la ligne précédente&#xa0;: une ligne a été modifiée, retirée ou ajoutée.</translation>
    </message>
    <message>
        <source>Row {0} of the journal (“{1}”) is not later than the row before it.</source>
        <translation>La ligne {0} du registre («&#xa0;{1}&#xa0;») n’est pas postérieure à la ligne précédente.</translation>
    </message>
    <message>
        <source>Row {0} of the journal (“{1}”) is out of sequence.</source>
        <translation>La ligne {0} du registre («&#xa0;{1}&#xa0;») n’est pas à sa place dans la suite.</translation>
    </message>
    <message>
        <source>Row {0} of the journal (“{1}”) was altered: its hash does not fit its content.</source>
        <translation>La ligne {0} du registre («&#xa0;{1}&#xa0;») a été modifiée&#xa0;: son empreinte ne correspond pas à son contenu.</translation>
    </message>
    <message>
        <source>The database is damaged, so nothing was made from it: restore a backup.</source>
        <translation>La base de données est endommagée, rien n’en a donc été tiré&#xa0;: restaurez une sauvegarde.</translation>
    </message>
    <message>
        <source>The database is damaged: {0}.</source>
        <translation>La base de données est endommagée&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>The file {0} cannot be read.</source>
        <translation>Le fichier {0} ne peut pas être lu.</translation>
    </message>
    <message>
        <source>The file {0} has no SHA-256 on record: whether it is as it came cannot be told.</source>
        <translation>Aucune somme SHA-256 n’est enregistrée pour le fichier {0}&#xa0;: impossible de dire s’il est resté tel qu’il est arrivé.</translation>
    </message>
    <message>
        <source>The file {0} is half-written: a program was interrupted, unless one is taking files in just now.</source>
        <translation>Le fichier {0} n’est écrit qu’à moitié&#xa0;: un programme a été interrompu, à moins qu’un autre ne soit en train d’ajouter des fichiers.</translation>
    </message>
    <message>
        <source>The file {0} is missing.</source>
        <translation>Le fichier {0} manque.</translation>
    </message>
    <message>
        <source>The file {0} is not as it was taken in: its SHA-256 has changed.</source>
        <translation>Le fichier {0} n’est plus tel qu’il a été ajouté&#xa0;: son SHA-256 a changé.</translation>
    </message>
    <message>
        <source>The file {0}, like {1} more, has no SHA-256 on record: whether it is as it came cannot be told.</source>
        <translation>Aucune somme SHA-256 n’est enregistrée pour le fichier {0}, ni pour {1} autres&#xa0;: impossible de dire s’il est resté tel qu’il est arrivé.</translation>
    </message>
    <message>
        <source>The project lies on a network folder or the like, and keeps a rollback journal there.</source>
        <translation>Le projet se trouve dans un dossier réseau ou semblable, et y tient un journal d’annulation.</translation>
    </message>
    <message>
        <source>The project&apos;s time zone {0} is not known on this computer; the time now counts as UTC.</source>
        <translation>Le fuseau horaire {0} du projet est inconnu de cet ordinateur&#xa0;; l’heure est désormais comptée en UTC.</translation>
    </message>
    <message>
        <source>The search index does not say what {0} {1} says.</source>
        <translation>L’index de recherche ne dit pas ce que dit {0} {1}.</translation>
    </message>
    <message>
        <source>The tables were altered by another program: {0}.</source>
        <translation>Les tables ont été modifiées par un autre programme&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>line {0}</source>
        <translation>ligne {0}</translation>
    </message>
    <message>
        <source>row {0}</source>
        <translation>ligne {0}</translation>
    </message>
    <message>
        <source>row {0}, column {1}</source>
        <translation>ligne {0}, colonne {1}</translation>
    </message>
    <message>
        <source>{0} could not be removed: {1}.</source>
        <translation>{0} n’a pas pu être supprimé&#xa0;: {1}.</translation>
    </message>
    <message>
        <source>{0} {1} differs from what the journal made of it (table {2}).</source>
        <translation>{0} {1} diffère de ce que le registre en a fait (table {2}).</translation>
    </message>
    <message>
        <source>{0} {1} is in the journal, and missing from the records (table {2}).</source>
        <translation>{0} {1} figure au registre et manque aux enregistrements (table {2}).</translation>
    </message>
    <message>
        <source>{0} {1} is in the records, and no change in the journal made it (table {2}).</source>
        <translation>{0} {1} figure aux enregistrements, mais aucune modification du registre ne l’a produit (table {2}).</translation>
    </message>
    <message>
        <source>The project&apos;s copy of its rule profile {0}.</source>
        <translation>La copie du profil de règles dans le projet {0}.</translation>
    </message>
    <message>
        <source>The project&apos;s copy of its rule profile: {0} {1}.</source>
        <translation>La copie du profil de règles dans le projet&#xa0;: {0} {1}.</translation>
    </message>
    <message>
        <source>the opening of “{0}” on {1}</source>
        <translation>l’ouverture de «&#xa0;{0}&#xa0;» le {1}</translation>
    </message>
    <message>
        <source>place: {0}</source>
        <translation>lieu&#xa0;: {0}</translation>
    </message>
    <message>
        <source>An entry is marked late when it was written down more than {0} days after the day it speaks of; the journal of the records tells when. Of entries that were imported nobody knows when they were first written, and they are not marked. Withdrawn entries are not printed. This is the builder&apos;s own record: it approves nothing.</source>
        <translation>Une entrée est dite tardive quand elle a été écrite plus de {0} jours après le jour dont elle parle&#xa0;; le registre dit quand. Des entrées importées, nul ne sait quand elles ont d’abord été écrites, et elles ne sont pas marquées. Les entrées retirées ne sont pas imprimées. Ceci est le dossier du constructeur lui-même&#xa0;: il n’approuve rien.</translation>
    </message>
    <message>
        <source>not recorded as built</source>
        <translation>pas inscrit comme construit</translation>
    </message>
    <message>
        <source>{0} of {1} uses not in calibration</source>
        <translation>{0} utilisations sur {1} hors étalonnage</translation>
    </message>
    <message>
        <source>{0} “{1}” for “{2}”</source>
        <translation>{0} «&#xa0;{1}&#xa0;» pour «&#xa0;{2}&#xa0;»</translation>
    </message>
    <message>
        <source>Bulletins not complied with: {0}.</source>
        <translation>Bulletins non appliqués&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>Closings closed with gaps and accepted by nobody: {0}.</source>
        <translation>Fermetures fermées avec lacunes et acceptées par personne&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>Deviations not decided, or rejected and still built: {0}.</source>
        <translation>Écarts non décidés, ou refusés et toujours construits&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>Every required document is here, findings are verified or accepted, closings are closed and none with gaps, deviations are decided, bulletins complied with, the aeroplane is weighed, and no loading on record lies outside the limits. Only the inspector&apos;s own look tells whether the work is right.</source>
        <translation>Chaque document exigé est présent, les constatations sont vérifiées ou acceptées, les fermetures sont fermées, aucune avec lacunes, les écarts sont décidés, les bulletins appliqués, l’avion est pesé et aucun chargement enregistré ne sort des limites. Seul le regard de l’inspecteur dit si le travail est bien fait.</translation>
    </message>
    <message>
        <source>A coupon from each batch is kept and labelled</source>
        <translation>Une éprouvette de chaque mélange est conservée et étiquetée</translation>
    </message>
    <message>
        <source>A drain is open at the lowest point</source>
        <translation>Un drain est ouvert au point le plus bas</translation>
    </message>
    <message>
        <source>A drain sits at the lowest point in the parked attitude</source>
        <translation>Un drain se trouve au point le plus bas, l’avion au parking</translation>
    </message>
    <message>
        <source>A skin, or a spar, is still on temporary fasteners so that the inside shows</source>
        <translation>Un revêtement, ou un longeron, tient encore par des fixations provisoires pour que l’intérieur se voie</translation>
    </message>
    <message>
        <source>Adhesive is the type called for, within its life, mixed by weight</source>
        <translation>L’adhésif est celui demandé, non périmé, mélangé au poids</translation>
    </message>
    <message>
        <source>All lines, cables and controls inside are connected, routed and supported</source>
        <translation>Conduites, câbles et commandes à l’intérieur sont tous raccordés, guidés et fixés</translation>
    </message>
    <message>
        <source>Antennas have their doublers and grounding fitted</source>
        <translation>Les antennes ont leurs doublures et leur mise à la masse est posée</translation>
    </message>
    <message>
        <source>At least one full thread stands out of every nut</source>
        <translation>Au moins un filet entier dépasse de chaque écrou</translation>
    </message>
    <message>
        <source>Baffles are fitted with their openings clear at top and bottom</source>
        <translation>Les cloisons sont posées, leurs ouvertures dégagées en haut et en bas</translation>
    </message>
    <message>
        <source>Battery is held down and vented, and its contactor can be switched from the seat</source>
        <translation>La batterie est maintenue et ventilée, son relais se commande depuis le siège</translation>
    </message>
    <message>
        <source>Bead of adhesive squeezes out along the whole joint</source>
        <translation>Un cordon d’adhésif ressort tout le long du joint</translation>
    </message>
    <message>
        <source>Bond gap is measured dry and within limits; bond areas are sanded and clean</source>
        <translation>Le jeu de collage est mesuré à sec et dans les limites&#xa0;; les surfaces sont poncées et propres</translation>
    </message>
    <message>
        <source>Both ends of every fastener can be seen, with light and a mirror where needed</source>
        <translation>Les deux extrémités de chaque fixation sont visibles, à l’aide d’une lampe et d’un miroir si nécessaire</translation>
    </message>
    <message>
        <source>Cable tension is measured at a noted temperature with the instrument&apos;s own table</source>
        <translation>La tension des câbles est mesurée à une température notée, avec la table de l’instrument</translation>
    </message>
    <message>
        <source>Control stops are fitted, strike squarely and are locked</source>
        <translation>Les butées de commande sont posées, portent d’équerre et sont freinées</translation>
    </message>
    <message>
        <source>Control tubes, cables and bellcranks run clear of structure through their whole travel, with no chafing</source>
        <translation>Tubes, câbles et renvois de commande passent librement sur toute leur course, sans frotter la structure</translation>
    </message>
    <message>
        <source>Controls move full and free to their stops with someone in the seat</source>
        <translation>Les commandes vont librement jusqu’à leurs butées, avec quelqu’un sur le siège</translation>
    </message>
    <message>
        <source>Corrosion protection is complete: primer on bare metal, inside of tubes, faying surfaces</source>
        <translation>La protection contre la corrosion est complète&#xa0;: primaire sur le métal nu, dans les tubes, sur les surfaces de contact</translation>
    </message>
    <message>
        <source>Crimps are made with the right tool and pull checked</source>
        <translation>Les sertissages sont faits avec le bon outil et éprouvés à la traction</translation>
    </message>
    <message>
        <source>Cure time and temperature are on record</source>
        <translation>Durée et température de durcissement sont inscrites</translation>
    </message>
    <message>
        <source>Doublers and stiffeners are fitted at cut-outs and fittings</source>
        <translation>Doublures et raidisseurs sont posés aux découpes et aux ferrures</translation>
    </message>
    <message>
        <source>Drain grommets are placed at every low point</source>
        <translation>Des œillets de drainage sont placés à chaque point bas</translation>
    </message>
    <message>
        <source>Drains and vents are open and at the right place</source>
        <translation>Drains et mises à l’air sont ouverts et au bon endroit</translation>
    </message>
    <message>
        <source>Each glue batch has a test joint, broken and noted</source>
        <translation>Chaque mélange de colle a son éprouvette, cassée et notée</translation>
    </message>
    <message>
        <source>Edge distance holds at hinges, horn and end ribs</source>
        <translation>La distance au bord est respectée aux charnières, au guignol et aux nervures d’extrémité</translation>
    </message>
    <message>
        <source>Edges, holes and corners are free of burrs, sharp edges and scratches</source>
        <translation>Bords, trous et angles sont sans bavures, arêtes vives ni rayures</translation>
    </message>
    <message>
        <source>End ribs and their flanges are fastened on both sides</source>
        <translation>Les nervures d’extrémité et leurs semelles sont fixées des deux côtés</translation>
    </message>
    <message>
        <source>Engine and exhaust have clearance to cowling and mount through their movement</source>
        <translation>Moteur et échappement gardent leur jeu avec les capots et le bâti dans tous leurs mouvements</translation>
    </message>
    <message>
        <source>Every bay is vented and drained</source>
        <translation>Chaque compartiment est aéré et drainé</translation>
    </message>
    <message>
        <source>Every bolt and nut is locked: split pin, safety wire, lock tab or self-locking nut</source>
        <translation>Chaque vis et écrou est freiné&#xa0;: goupille fendue, fil à freiner, frein en tôle ou écrou autofreiné</translation>
    </message>
    <message>
        <source>Every breaker, fuse and switch is labelled and sized for its wire</source>
        <translation>Chaque disjoncteur, fusible et interrupteur est repéré et adapté à son fil</translation>
    </message>
    <message>
        <source>Every jam nut is tight and marked; every rod end is engaged past its witness hole</source>
        <translation>Chaque contre-écrou est serré et marqué&#xa0;; chaque embout est vissé au-delà de son trou témoin</translation>
    </message>
    <message>
        <source>Every nut on a rotating joint carries a split pin; no friction-only lock nut is used there</source>
        <translation>Chaque écrou d’une articulation tournante porte une goupille&#xa0;; aucun écrou freiné par friction seule n’y est employé</translation>
    </message>
    <message>
        <source>Every surface, tab and wheel moves in the right sense</source>
        <translation>Chaque gouverne, tab et roue bouge dans le bon sens</translation>
    </message>
    <message>
        <source>Every weld of the frame is inspected and clean</source>
        <translation>Chaque soudure de la structure est inspectée et propre</translation>
    </message>
    <message>
        <source>Everything that moves, wears or needs adjusting can be reached after closing</source>
        <translation>Tout ce qui bouge, s’use ou se règle reste accessible après la fermeture</translation>
    </message>
    <message>
        <source>Firewall penetrations are sealed with fireproof parts</source>
        <translation>Les traversées de la cloison pare-feu sont étanchées par des pièces à l’épreuve du feu</translation>
    </message>
    <message>
        <source>Floor panels stay loose until the final inspection</source>
        <translation>Les planchers restent amovibles jusqu’à l’inspection finale</translation>
    </message>
    <message>
        <source>Frame is protected against rust outside, and inside the tubes where drawn</source>
        <translation>La structure est protégée contre la rouille à l’extérieur, et dans les tubes là où le plan le demande</translation>
    </message>
    <message>
        <source>Fuel lines are leak checked, flow is measured in the steepest attitude, selector and drains are reachable</source>
        <translation>L’étanchéité des conduites de carburant est contrôlée, le débit mesuré dans l’assiette la plus cabrée, sélecteur et drains sont accessibles</translation>
    </message>
    <message>
        <source>Fuel pick-up and its screen are fitted, clean and locked</source>
        <translation>La prise de carburant et sa crépine sont posées, propres et freinées</translation>
    </message>
    <message>
        <source>Glue joints show a thin even line with squeeze-out on both sides</source>
        <translation>Les joints de colle montrent des deux côtés un filet mince et régulier</translation>
    </message>
    <message>
        <source>Grounds are bonded to clean metal and on record</source>
        <translation>Les masses sont reliées au métal nu et inscrites</translation>
    </message>
    <message>
        <source>Guards and fairleads keep cables on their pulleys and runs clear of feet and cargo</source>
        <translation>Protections et guides tiennent les câbles sur leurs poulies, à l’écart des pieds et du chargement</translation>
    </message>
    <message>
        <source>Hardware is what the drawing calls for: diameter, grip, head and material</source>
        <translation>La visserie est celle du plan&#xa0;: diamètre, longueur de serrage, tête et matière</translation>
    </message>
    <message>
        <source>Hinge brackets and their backing plates are in line, riveted in full and free of play</source>
        <translation>Les ferrures de charnière et leurs contre-plaques sont alignées, entièrement rivetées et sans jeu</translation>
    </message>
    <message>
        <source>Hoses, lines and wires are supported, protected from heat and clear of everything that moves</source>
        <translation>Tuyaux, conduites et fils sont fixés, protégés de la chaleur et à l’écart de tout ce qui bouge</translation>
    </message>
    <message>
        <source>Inserts and hard points are in place and potted</source>
        <translation>Inserts et renforts sont en place et noyés</translation>
    </message>
    <message>
        <source>Inside surfaces are sealed, glue lands for the skin left bare</source>
        <translation>Les surfaces intérieures sont vernies, les surfaces de collage du revêtement laissées nues</translation>
    </message>
    <message>
        <source>Inspection rings are placed at every fitting, pulley and bellcrank</source>
        <translation>Des anneaux de visite sont placés à chaque ferrure, poulie et renvoi</translation>
    </message>
    <message>
        <source>Lacing or other rib attachment is planned at the spacing the covering process gives</source>
        <translation>Le laçage ou une autre fixation aux nervures est prévu au pas que donne le procédé d’entoilage</translation>
    </message>
    <message>
        <source>Leak test is on record with pressure, duration and result; test limits are the maker&apos;s</source>
        <translation>L’essai d’étanchéité est inscrit avec pression, durée et résultat&#xa0;; les limites sont celles du fabricant</translation>
    </message>
    <message>
        <source>Level sender moves freely through its range and is grounded</source>
        <translation>La jauge bouge librement sur toute sa course et est mise à la masse</translation>
    </message>
    <message>
        <source>Longerons are continuous, straight and fastened at every station</source>
        <translation>Les longerons de fuselage sont continus, droits et fixés à chaque couple</translation>
    </message>
    <message>
        <source>Mass balance is attached as drawn and its fasteners are locked</source>
        <translation>La masse d’équilibrage est fixée comme au plan et ses fixations sont freinées</translation>
    </message>
    <message>
        <source>Moisture content and grade of the timber are on record</source>
        <translation>L’humidité et la qualité du bois sont inscrites</translation>
    </message>
    <message>
        <source>Near heat only all-metal lock nuts are used</source>
        <translation>Près de la chaleur, seuls des écrous autofreinés tout métal sont employés</translation>
    </message>
    <message>
        <source>No fastener is missing; no rivet is cracked, tipped, loose or over-driven</source>
        <translation>Aucune fixation ne manque&#xa0;; aucun rivet n’est fissuré, incliné, lâche ou trop écrasé</translation>
    </message>
    <message>
        <source>Nothing that belongs inside is missing: wiring, conduit, antennas, pitot and static lines, fuel and vent lines, drains and grommets</source>
        <translation>Rien de ce qui va à l’intérieur ne manque&#xa0;: câblage, gaines, antennes, conduites de pression totale et statique, de carburant et de mise à l’air, drains et passe-fils</translation>
    </message>
    <message>
        <source>Photographs of the open structure are taken, some with the builder at work</source>
        <translation>Des photos de la structure ouverte sont prises, quelques-unes avec le constructeur au travail</translation>
    </message>
    <message>
        <source>Photographs show the wet glue before assembly</source>
        <translation>Des photos montrent la colle fraîche avant l’assemblage</translation>
    </message>
    <message>
        <source>Pitot and static lines are fitted, supported, drained and leak checked</source>
        <translation>Les conduites de pression totale et statique sont posées, fixées, drainées et leur étanchéité contrôlée</translation>
    </message>
    <message>
        <source>Places where fabric will touch edges or heads carry anti-chafe tape</source>
        <translation>Les endroits où la toile touchera des bords ou des têtes portent du ruban anti-frottement</translation>
    </message>
    <message>
        <source>Ply schedule is ticked ply by ply: cloth, direction, overlap</source>
        <translation>Le plan de drapage est coché pli par pli&#xa0;: tissu, direction, recouvrement</translation>
    </message>
    <message>
        <source>Position, landing and strobe light wiring is complete and labelled</source>
        <translation>Le câblage des feux de position, d’atterrissage et à éclats est complet et repéré</translation>
    </message>
    <message>
        <source>Rod ends are screwed in deep enough and their jam nuts are tight and marked</source>
        <translation>Les embouts à rotule sont assez vissés, leurs contre-écrous serrés et marqués</translation>
    </message>
    <message>
        <source>Sealant fillets run unbroken along every seam and over every rivet</source>
        <translation>Les cordons de mastic courent sans interruption sur chaque joint et chaque rivet</translation>
    </message>
    <message>
        <source>Seat and harness attachments are complete, with torque and locking on record</source>
        <translation>Les attaches des sièges et harnais sont complètes, couple et freinage inscrits</translation>
    </message>
    <message>
        <source>Spar fasteners are all fitted, of the right grip, with thread showing beyond the nut</source>
        <translation>Toutes les fixations du longeron sont posées, de la bonne longueur de serrage, avec du filet au-delà de l’écrou</translation>
    </message>
    <message>
        <source>Split pins and safety wire are new, and pull in the tightening direction</source>
        <translation>Goupilles et fil à freiner sont neufs et tirent dans le sens du serrage</translation>
    </message>
    <message>
        <source>Static balance is measured complete with tabs and finish, and entered in the record</source>
        <translation>L’équilibrage statique est mesuré, tabs et finition compris, et inscrit au dossier</translation>
    </message>
    <message>
        <source>Static ports and their lines are fitted flush, drained and leak checked</source>
        <translation>Les prises statiques affleurent, leurs conduites sont drainées et leur étanchéité contrôlée</translation>
    </message>
    <message>
        <source>Stops are fitted and locked; travel is measured against the maker&apos;s limits</source>
        <translation>Les butées sont posées et freinées&#xa0;; les débattements sont mesurés par rapport aux limites du fabricant</translation>
    </message>
    <message>
        <source>Tap test of the finished bond is on record</source>
        <translation>Le contrôle sonore du collage terminé est inscrit</translation>
    </message>
    <message>
        <source>The work agrees with the drawings and manual; every deviation is listed with its acceptance</source>
        <translation>Le travail est conforme aux plans et au manuel&#xa0;; chaque écart est listé avec son acceptation</translation>
    </message>
    <message>
        <source>Tie-down points are fitted and locked</source>
        <translation>Les points d’amarrage sont posés et freinés</translation>
    </message>
    <message>
        <source>Tools are counted and back in their places; swarf, rags and debris are out</source>
        <translation>Les outils sont comptés et rangés&#xa0;; copeaux, chiffons et débris sont enlevés</translation>
    </message>
    <message>
        <source>Torque of the spar, strut and root fittings is on record with the wrench used</source>
        <translation>Le couple des ferrures de longeron, de mât et d’emplanture est inscrit, avec la clé utilisée</translation>
    </message>
    <message>
        <source>Trailing edge is straight to the maker&apos;s limit</source>
        <translation>Le bord de fuite est droit dans la limite du fabricant</translation>
    </message>
    <message>
        <source>Trim works through its range in the right sense before it is covered</source>
        <translation>Le compensateur parcourt sa course dans le bon sens avant d’être recouvert</translation>
    </message>
    <message>
        <source>Turnbuckles show at most three threads at either end and are locked</source>
        <translation>Les tendeurs montrent au plus trois filets à chaque bout et sont freinés</translation>
    </message>
    <message>
        <source>Unusable fuel is measured, or its measurement is planned</source>
        <translation>Le carburant inutilisable est mesuré, ou sa mesure est prévue</translation>
    </message>
    <message>
        <source>Vent line is open from the highest point to the outside</source>
        <translation>La mise à l’air est ouverte du point le plus haut jusqu’à l’extérieur</translation>
    </message>
    <message>
        <source>Voids, dry spots and delaminations are marked, measured and within the maker&apos;s limits</source>
        <translation>Vides, zones sèches et délaminages sont marqués, mesurés et dans les limites du fabricant</translation>
    </message>
    <message>
        <source>Wires and conduits are supported, protected at every hole, with a pull string where more will follow</source>
        <translation>Fils et gaines sont fixés, protégés à chaque trou, avec un tire-fil là où d’autres suivront</translation>
    </message>
    <message>
        <source>Wires are supported, protected at edges and holes, and clear of controls and fuel lines</source>
        <translation>Les fils sont fixés, protégés aux bords et aux trous, à l’écart des commandes et des conduites de carburant</translation>
    </message>
    <message>
        <source>Who signs</source>
        <translation>Qui signe</translation>
    </message>
    <message>
        <source>Before: {0}, {1}, {2}</source>
        <translation>Auparavant&#xa0;: {0}, {1}, {2}</translation>
    </message>
    <message>
        <source>{0} is no length of time, as 1:30 or 2h15.</source>
        <translation>{0} n’est pas une durée comme 1:30 ou 2h15.</translation>
    </message>
    <message>
        <source>“{0}” is no time of day; it goes into the note.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas une heure&#xa0;; cela va dans la note.</translation>
    </message>
    <message>
        <source>The file name is longer than the disk allows; most end at 255 bytes.</source>
        <translation>Le nom de fichier est plus long que le disque ne le permet&#xa0;; la plupart s’arrêtent à 255 octets.</translation>
    </message>
    <message>
        <source>Only the first {0} findings of each kind are listed; {1} more are not.</source>
        <translation>Seules les {0} premières constatations de chaque sorte sont énumérées&#xa0;; {1} autres ne le sont pas.</translation>
    </message>
    <message>
        <source>“{0}” may be one amount, or an amount and a count; write {1}, or the currency behind the amount.</source>
        <translation>«&#xa0;{0}&#xa0;» peut être un montant, ou un montant et un nombre&#xa0;; écrivez {1}, ou la devise derrière le montant.</translation>
    </message>
    <message>
        <source>The clock of this computer says {0}, and the newest row of the journal is of {1}. If the clock is wrong, set it before you write anything down: what must stay open, what has expired and the days of what is written down go by it.</source>
        <translation>L’horloge de cet ordinateur indique {0}, et la dernière ligne du registre est du {1}. Si l’horloge est fausse, réglez-la avant de noter quoi que ce soit&#xa0;: ce qui doit rester ouvert, ce qui est périmé et les jours de ce qui est noté en dépendent.</translation>
    </message>
    <message>
        <source>The clock of this computer says {0}, which cannot be. What must stay open, what has expired and the days of what is written down go by this clock; set it first.</source>
        <translation>L’horloge de cet ordinateur indique {0}, ce qui est impossible. Ce qui doit rester ouvert, ce qui est périmé et les jours de ce qui est noté dépendent de cette horloge&#xa0;; réglez-la d’abord.</translation>
    </message>
    <message>
        <source>The clock of this computer says {0}, which is before the newest row of the journal ({1}): it is wrong now, or it was ahead then. What must stay open, what has expired and the days of what is written down go by this clock. The order of the journal holds.</source>
        <translation>L’horloge de cet ordinateur indique {0}, soit avant la dernière ligne du registre ({1})&#xa0;: elle est fausse maintenant, ou elle avançait alors. Ce qui doit rester ouvert, ce qui est périmé et les jours de ce qui est noté dépendent de cette horloge. L’ordre du registre reste juste.</translation>
    </message>
    <message>
        <source>“{0}” is no day; write it as 3 Mar 2026 or 2026-03-03. It goes into the note.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas un jour&#xa0;; écrivez-le 3 mars 2026 ou 2026-03-03. Cela va dans la note.</translation>
    </message>
    <message>
        <source>Aircraft registration application (form 8050-1)</source>
        <translation>Demande d’immatriculation de l’aéronef (formulaire 8050-1)</translation>
    </message>
    <message>
        <source>Aircraft, engine and propeller logbooks</source>
        <translation>Livrets d’aéronef, de moteur et d’hélice</translation>
    </message>
    <message>
        <source>All inspection reports with their corrections complete</source>
        <translation>Tous les rapports d’inspection, leurs corrections faites</translation>
    </message>
    <message>
        <source>Application for an airworthiness certificate (form 8130-6)</source>
        <translation>Demande de certificat de navigabilité (formulaire 8130-6)</translation>
    </message>
    <message>
        <source>Application for the permit to fly</source>
        <translation>Demande du permis de vol</translation>
    </message>
    <message>
        <source>Application for the special certificate of airworthiness (form 24-0079)</source>
        <translation>Demande du certificat spécial de navigabilité (formulaire 24-0079)</translation>
    </message>
    <message>
        <source>Bill of sale</source>
        <translation>Acte de vente</translation>
    </message>
    <message>
        <source>Builder&apos;s log with photographs</source>
        <translation>Carnet de construction avec photographies</translation>
    </message>
    <message>
        <source>Builder&apos;s log with the signed stages</source>
        <translation>Carnet de construction avec les étapes signées</translation>
    </message>
    <message>
        <source>Declaration that the aircraft is amateur-built</source>
        <translation>Déclaration que l’aéronef est de construction amateur</translation>
    </message>
    <message>
        <source>Eligibility statement (form 8130-12), notarised</source>
        <translation>Déclaration d’admissibilité (formulaire 8130-12), notariée</translation>
    </message>
    <message>
        <source>Fabrication and assembly checklist</source>
        <translation>Liste de contrôle de fabrication et d’assemblage</translation>
    </message>
    <message>
        <source>Fireproof identification plate</source>
        <translation>Plaque d’identification à l’épreuve du feu</translation>
    </message>
    <message>
        <source>Flight test plan</source>
        <translation>Plan des essais en vol</translation>
    </message>
    <message>
        <source>Identification plate</source>
        <translation>Plaque d’identification</translation>
    </message>
    <message>
        <source>Letter of intent</source>
        <translation>Lettre d’intention</translation>
    </message>
    <message>
        <source>Major-portion checklist</source>
        <translation>Liste de contrôle de la majeure partie</translation>
    </message>
    <message>
        <source>Operating conditions</source>
        <translation>Conditions d’utilisation</translation>
    </message>
    <message>
        <source>Operating limitations</source>
        <translation>Limites d’utilisation</translation>
    </message>
    <message>
        <source>Placards and instrument markings</source>
        <translation>Étiquettes et marquages des instruments</translation>
    </message>
    <message>
        <source>Placards and markings</source>
        <translation>Étiquettes et marquages</translation>
    </message>
    <message>
        <source>Programme letter: purpose, area and length of the flight tests</source>
        <translation>Lettre de programme&#xa0;: but, zone et durée des essais en vol</translation>
    </message>
    <message>
        <source>Registration and marks</source>
        <translation>Immatriculation et marques</translation>
    </message>
    <message>
        <source>Registration of the project with the approved body</source>
        <translation>Enregistrement du projet auprès de l’organisme agréé</translation>
    </message>
    <message>
        <source>Stage signatures complete</source>
        <translation>Signatures des étapes complètes</translation>
    </message>
    <message>
        <source>Statement that the aircraft is amateur-built</source>
        <translation>Attestation que l’aéronef est de construction amateur</translation>
    </message>
    <message>
        <source>Test flying as agreed with the approved body</source>
        <translation>Vols d’essai comme convenu avec l’organisme agréé</translation>
    </message>
    <message>
        <source>Three-view drawing or photographs</source>
        <translation>Plan trois vues ou photographies</translation>
    </message>
    <message>
        <source>Three-view drawings or photographs that identify the aircraft</source>
        <translation>Plans trois vues ou photographies qui identifient l’aéronef</translation>
    </message>
    <message>
        <source>Weight and balance report with the extreme loadings</source>
        <translation>Rapport de masse et centrage avec les chargements extrêmes</translation>
    </message>
    <message>
        <source>Alternatives: {0}</source>
        <translation>Autres solutions&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Way to repair it, chosen: {0}</source>
        <translation>Façon de réparer, retenue&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Way to repair it: {0}</source>
        <translation>Façon de réparer&#xa0;: {0}</translation>
    </message>
    <message>
        <source>against it: {0}</source>
        <translation>contre&#xa0;: {0}</translation>
    </message>
    <message>
        <source>for it: {0}</source>
        <translation>pour&#xa0;: {0}</translation>
    </message>
    <message>
        <source>{0} is more than a year before the project was begun ({1}).</source>
        <translation>{0} est plus d’un an avant le début du projet ({1}).</translation>
    </message>
    <message>
        <source>A merge is not taken back as one; take back the changes that it brought.</source>
        <translation>Une fusion ne s’annule pas en bloc&#xa0;; annulez les modifications qu’elle a apportées.</translation>
    </message>
    <message>
        <source>The journal has no row {0}.</source>
        <translation>Le registre n’a pas de ligne {0}.</translation>
    </message>
    <message>
        <source>“{0}” changed nothing that could be taken back.</source>
        <translation>«&#xa0;{0}&#xa0;» n’a rien modifié qui puisse être annulé.</translation>
    </message>
    <message>
        <source>“{0}” decided what a merge had left open; decide it anew there.</source>
        <translation>«&#xa0;{0}&#xa0;» a décidé de ce qu’une fusion avait laissé ouvert&#xa0;; décidez-en à nouveau à cet endroit.</translation>
    </message>
    <message>
        <source>“{0}” was taken back already.</source>
        <translation>«&#xa0;{0}&#xa0;» a déjà été annulé.</translation>
    </message>
    <message>
        <source>This row undid “{0}”; to have that again, make the change again.</source>
        <translation>Cette ligne a annulé «&#xa0;{0}&#xa0;»&#xa0;; pour y revenir, refaites la modification.</translation>
    </message>
    <message>
        <source>“{0}” was not understood: write both limits, as 50-70 in-lb, the drag as drag 6 in-lb, and a comma between them.</source>
        <translation>«&#xa0;{0}&#xa0;» n’a pas été compris&#xa0;: écrire les deux limites sous la forme 50-70 in-lb, le frottement sous la forme frottement 6 in-lb, avec une virgule entre les deux.</translation>
    </message>
    <message>
        <source>NOT in calibration when weighed</source>
        <translation>HORS étalonnage lors de la pesée</translation>
    </message>
    <message>
        <source>Rows are counted: 1, 2, 3 and so on.</source>
        <translation>Les rangées se comptent&#xa0;: 1, 2, 3, etc.</translation>
    </message>
    <message>
        <source>“{0}” is a count and a price: write what was paid for all of them.</source>
        <translation>«&#xa0;{0}&#xa0;» est un nombre avec un prix&#xa0;: écrivez ce qui a été payé pour le tout.</translation>
    </message>
    <message>
        <source>“{0}” is taken for the day {1}; put the number of a chapter behind the colon.</source>
        <translation>«&#xa0;{0}&#xa0;» est pris pour le jour {1}&#xa0;; mettez le numéro d’un chapitre après les deux-points.</translation>
    </message>
    <message>
        <source>What has a bar before it keeps its closing open.</source>
        <translation>Ce qui a une barre devant lui garde sa fermeture ouverte.</translation>
    </message>
    <message>
        <source>10 hours, with 10 flights among them.</source>
        <translation>10 heures, dont 10 vols.</translation>
    </message>
    <message>
        <source>10 hours.</source>
        <translation>10 heures.</translation>
    </message>
    <message>
        <source>100 flights, in 20 of which the line is let go at 30 metres or higher.</source>
        <translation>100 vols, dont 20 où le câble est largué à 30 mètres ou plus haut.</translation>
    </message>
    <message>
        <source>25 hours in the assigned area.</source>
        <translation>25 heures dans la zone assignée.</translation>
    </message>
    <message>
        <source>40 hours in the assigned area.</source>
        <translation>40 heures dans la zone assignée.</translation>
    </message>
    <message>
        <source>Set by the approved body with the permit to test fly.</source>
        <translation>Fixée par l’organisme agréé avec l’autorisation de vol d’essai.</translation>
    </message>
    <message>
        <source>The hours needed to put all faults right, and 25 more in which nothing but normal upkeep was needed.</source>
        <translation>Les heures nécessaires pour corriger tous les défauts, et 25 de plus où rien d’autre qu’un entretien normal n’a été nécessaire.</translation>
    </message>
    <message>
        <source>The period ends when the planned tests are flown and the operating handbook is made.</source>
        <translation>La période prend fin quand les essais prévus sont effectués et que le manuel d’utilisation est établi.</translation>
    </message>
    <message>
        <source>a task-based plan in place of hours</source>
        <translation>un plan par tâches au lieu d’heures</translation>
    </message>
    <message>
        <source>an engine and propeller certificated together</source>
        <translation>un moteur et une hélice certifiés ensemble</translation>
    </message>
    <message>
        <source>any other engine and propeller</source>
        <translation>tout autre moteur et toute autre hélice</translation>
    </message>
    <message>
        <source>asked for after the pre-cover inspection</source>
        <translation>demandé après l’inspection avant fermeture</translation>
    </message>
    <message>
        <source>at every inspection</source>
        <translation>à chaque inspection</translation>
    </message>
    <message>
        <source>at every stage inspection</source>
        <translation>à chaque inspection d’étape</translation>
    </message>
    <message>
        <source>at the final inspection</source>
        <translation>à l’inspection finale</translation>
    </message>
    <message>
        <source>at the inspection</source>
        <translation>à l’inspection</translation>
    </message>
    <message>
        <source>balloons</source>
        <translation>les ballons</translation>
    </message>
    <message>
        <source>before construction starts</source>
        <translation>avant le début de la construction</translation>
    </message>
    <message>
        <source>before the application</source>
        <translation>avant la demande</translation>
    </message>
    <message>
        <source>before the certificate is issued</source>
        <translation>avant la délivrance du certificat</translation>
    </message>
    <message>
        <source>before the first flight</source>
        <translation>avant le premier vol</translation>
    </message>
    <message>
        <source>before the permit is asked for</source>
        <translation>avant la demande de l’autorisation</translation>
    </message>
    <message>
        <source>before the permit is issued</source>
        <translation>avant la délivrance de l’autorisation</translation>
    </message>
    <message>
        <source>every amateur-built aircraft</source>
        <translation>tout aéronef de construction amateur</translation>
    </message>
    <message>
        <source>fitted at the final inspection</source>
        <translation>posé à l’inspection finale</translation>
    </message>
    <message>
        <source>fitted at the inspection</source>
        <translation>posé à l’inspection</translation>
    </message>
    <message>
        <source>fixed-wing gliders</source>
        <translation>les planeurs à voilure fixe</translation>
    </message>
    <message>
        <source>hours in an assigned area, or task by task</source>
        <translation>heures dans une zone assignée, ou tâche par tâche</translation>
    </message>
    <message>
        <source>issued with the certificate</source>
        <translation>délivré avec le certificat</translation>
    </message>
    <message>
        <source>powered fixed-wing aircraft, helicopters and powered gyroplanes</source>
        <translation>les aéronefs à voilure fixe motorisés, les hélicoptères et les autogires motorisés</translation>
    </message>
    <message>
        <source>reviewed at the inspection</source>
        <translation>examiné à l’inspection</translation>
    </message>
    <message>
        <source>unpowered gyroplanes</source>
        <translation>les autogires sans moteur</translation>
    </message>
    <message>
        <source>when kit or plans came second-hand</source>
        <translation>quand le kit ou les plans sont de seconde main</translation>
    </message>
    <message>
        <source>when kit or plans did not come from the original supplier</source>
        <translation>quand le kit ou les plans ne viennent pas du fournisseur d’origine</translation>
    </message>
    <message>
        <source>when the kit is not on the published list, or recycled parts are used</source>
        <translation>quand le kit n’est pas sur la liste publiée, ou que des pièces réutilisées sont employées</translation>
    </message>
    <message>
        <source>when the kit is unlisted or changed, or paid help was used</source>
        <translation>quand le kit n’est sur aucune liste ou a été modifié, ou qu’il y a eu de l’aide payée</translation>
    </message>
    <message>
        <source>with the weight and balance report</source>
        <translation>avec le rapport de masse et centrage</translation>
    </message>
    <message>
        <source>Loadings and limits in a picture</source>
        <translation>Chargements et limites en image</translation>
    </message>
    <message>
        <source>amateur built statement</source>
        <translation>déclaration de construction amateur</translation>
    </message>
    <message>
        <source>application</source>
        <translation>demande</translation>
    </message>
    <message>
        <source>bill of sale</source>
        <translation>acte de vente</translation>
    </message>
    <message>
        <source>builders log</source>
        <translation>carnet du constructeur</translation>
    </message>
    <message>
        <source>data plate</source>
        <translation>plaque d’identification</translation>
    </message>
    <message>
        <source>equipment list</source>
        <translation>liste d’équipement</translation>
    </message>
    <message>
        <source>inspection reports</source>
        <translation>rapports d’inspection</translation>
    </message>
    <message>
        <source>letter of intent</source>
        <translation>lettre d’intention</translation>
    </message>
    <message>
        <source>logbooks</source>
        <translation>livrets d’aéronef, de moteur et d’hélice</translation>
    </message>
    <message>
        <source>major portion checklist</source>
        <translation>liste de contrôle de la majeure partie</translation>
    </message>
    <message>
        <source>operating limitations</source>
        <translation>conditions d’utilisation</translation>
    </message>
    <message>
        <source>placards</source>
        <translation>étiquettes et marquages</translation>
    </message>
    <message>
        <source>programme letter</source>
        <translation>lettre de programme</translation>
    </message>
    <message>
        <source>test plan</source>
        <translation>plan des essais en vol</translation>
    </message>
    <message>
        <source>three view</source>
        <translation>plan trois vues</translation>
    </message>
    <message>
        <source>weight and balance report</source>
        <translation>rapport de masse et centrage</translation>
    </message>
    <message>
        <source>A merge is not taken back by undo, nor is what was changed before it. The journal takes single changes back; or restore a backup from before the merge.</source>
        <translation>Une fusion ne s’annule pas, ni ce qui a été modifié avant elle. Le registre annule des modifications une à une&#xa0;; ou restaurez une sauvegarde d’avant la fusion.</translation>
    </message>
    <message>
        <source>A newer version of the program took the project over since: what was changed before is not taken back by undo. The journal takes single changes back.</source>
        <translation>Une version plus récente du programme a repris le projet depuis&#xa0;: ce qui a été modifié avant ne s’annule pas. Le registre annule des modifications une à une.</translation>
    </message>
    <message>
        <source>“{0}” was printed since: what a paper says is not taken back by undo. The journal takes single changes back, by a new one.</source>
        <translation>«&#xa0;{0}&#xa0;» a été imprimé depuis&#xa0;: ce que dit un papier ne s’annule pas. Le registre annule des modifications une à une, par une nouvelle.</translation>
    </message>
    <message>
        <source>“{0}” may be {1} or {2}; write {1} when that is meant.</source>
        <translation>«&#xa0;{0}&#xa0;» peut être {1} ou {2}&#xa0;; écrivez {1} si c’est ce qui est voulu.</translation>
    </message>
    <message>
        <source>“{0}” is longer than from the one time of day to the other; it is what counts.</source>
        <translation>«&#xa0;{0}&#xa0;» est plus long que d’une heure à l’autre&#xa0;; c’est cette durée qui compte.</translation>
    </message>
    <message>
        <source>The limits are in {0} and in {1}; write both in one unit.</source>
        <translation>Les limites sont en {0} et en {1}&#xa0;; écrivez-les dans une seule unité.</translation>
    </message>
    <message>
        <source>“{0}” was not understood: write limits as 1.4-1.6 mm, max 1.6 mm or 20 ± 0.5 mm.</source>
        <translation>«&#xa0;{0}&#xa0;» n’a pas été compris&#xa0;: écrivez les limites sous la forme 1,4-1,6 mm, max 1,6 mm ou 20 ± 0,5 mm.</translation>
    </message>
    <message>
        <source>“{0} {1}” is a measure and no amount: begin with what was paid.</source>
        <translation>«&#xa0;{0} {1}&#xa0;» est une mesure et non un montant&#xa0;: commencez par ce qui a été payé.</translation>
    </message>
    <message>
        <source>The project&apos;s own limit of {0} is in “{1}”, which is no unit of torque.</source>
        <translation>La limite propre au projet pour {0} est en «&#xa0;{1}&#xa0;», qui n’est pas une unité de couple.</translation>
    </message>
    <message>
        <source>The project&apos;s own limit of {0}, from {1}, does not go with the table&apos;s {2} to {3} {4}: write down both its ends.</source>
        <translation>La limite propre au projet pour {0}, d’après {1}, ne va pas avec les {2} à {3} {4} du tableau&#xa0;: notez ses deux bornes.</translation>
    </message>
    <message>
        <source>Boxes stand for characters that no typeface here has: {0}</source>
        <translation>Des cases remplacent les caractères qu’aucune police d’ici ne possède&#xa0;: {0}</translation>
    </message>
    <message>
        <source>each point once for each closing</source>
        <translation>chaque point une fois par fermeture</translation>
    </message>
    <message>
        <source>{0} closings</source>
        <translation>{0} fermetures</translation>
    </message>
    <message>
        <source>{0} points are open beside what is asked above; {1} of them are named here.</source>
        <translation>Outre ce qui est demandé plus haut, {0} points sont en suspens&#xa0;; {1} d’entre eux sont nommés ici.</translation>
    </message>
    <message>
        <source>{0} points are open; {1} of them are named here.</source>
        <translation>{0} points sont en suspens&#xa0;; {1} d’entre eux sont nommés ici.</translation>
    </message>
    <message>
        <source>{0}: {1} at {2}</source>
        <translation>{0}&#xa0;: {1} à {2}</translation>
    </message>
    <message>
        <source>Bought engines, propellers, wheels, brakes, instruments and standard hardware count neither way.</source>
        <translation>Les moteurs, hélices, roues, freins, instruments et pièces normalisées achetés ne comptent pour personne.</translation>
    </message>
    <message>
        <source>Bought engines, propellers, wheels, brakes, instruments and standard hardware count neither way; salvaged assemblies go to the maker.</source>
        <translation>Les moteurs, hélices, roues, freins, instruments et pièces normalisées achetés ne comptent pour personne&#xa0;; les ensembles récupérés comptent pour le fabricant.</translation>
    </message>
    <message>
        <source>Covering and painting count as fabrication.</source>
        <translation>L’entoilage et la peinture comptent comme fabrication.</translation>
    </message>
    <message>
        <source>Every row is one point in tenths, adding to exactly one; rows may be not applicable, rows may be added.</source>
        <translation>Chaque ligne vaut un point en dixièmes, dont la somme fait exactement un&#xa0;; des lignes peuvent être sans objet, des lignes peuvent être ajoutées.</translation>
    </message>
    <message>
        <source>From memory, no document seen</source>
        <translation>De mémoire, aucun document vu</translation>
    </message>
    <message>
        <source>From memory, no document seen [from memory]</source>
        <translation>De mémoire, aucun document vu</translation>
    </message>
    <message>
        <source>Not every piece has to be made by the builder: work on a representative number of the pieces in a row earns the tick.</source>
        <translation>Le constructeur n’a pas à faire chaque pièce&#xa0;: le travail sur un nombre représentatif des pièces d’une ligne vaut la coche.</translation>
    </message>
    <message>
        <source>Paid help moves points out of the builder&apos;s columns; log it before it is used.</source>
        <translation>L’aide payée retire des points des colonnes du constructeur&#xa0;; l’inscrire avant d’y recourir.</translation>
    </message>
    <message>
        <source>Practice of the trade, from builders&apos; and inspectors&apos; accounts; no published standard</source>
        <translation>Pratique du métier, d’après des récits de constructeurs et d’inspecteurs&#xa0;; aucune norme publiée</translation>
    </message>
    <message>
        <source>Practice of the trade, from builders&apos; and inspectors&apos; accounts; no published standard [second-hand]</source>
        <translation>Pratique du métier, d’après des récits de constructeurs et d’inspecteurs&#xa0;; aucune norme publiée [de seconde main]</translation>
    </message>
    <message>
        <source>Tasks count, hours do not.</source>
        <translation>Les tâches comptent, pas les heures.</translation>
    </message>
    <message>
        <source>The major portion is made and put together by people who build for their own education or recreation alone.</source>
        <translation>La majeure partie est fabriquée et assemblée par des personnes qui construisent uniquement pour leur propre instruction ou leur loisir.</translation>
    </message>
    <message>
        <source>The majority of the work is the builder&apos;s own.</source>
        <translation>La plus grande part du travail est celle du constructeur lui-même.</translation>
    </message>
    <message>
        <source>The share is the builder&apos;s two columns over all four.</source>
        <translation>La part est celle des deux colonnes du constructeur sur les quatre.</translation>
    </message>
    <message>
        <source>Earlier changes, in the inspection packet: {0}.</source>
        <translation>Modifications antérieures, dans le dossier d’inspection&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>More findings, in the inspection packet: {0}.</source>
        <translation>Autres constatations, dans le dossier d’inspection&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>Of equipment fitted or removed since the weighing, items that are not in the sum, without weight or arm on record: {0}.</source>
        <translation>De l’équipement monté ou démonté depuis la pesée, éléments qui ne sont pas dans la somme, sans masse ou bras de levier inscrits&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>{0} was not signed before the closing, only after it</source>
        <translation>{0}&#xa0;: signé seulement après la fermeture, pas avant</translation>
    </message>
    <message>
        <source>The file {0} has letters in its name that mean something else on other systems, as a backslash does; it is not looked for.</source>
        <translation>Le fichier {0} a dans son nom des signes qui ont un autre sens sur d’autres systèmes, comme une barre oblique inverse&#xa0;; il n’est pas cherché.</translation>
    </message>
    <message>
        <source>The file {0} would lie among what the program itself keeps in the project&apos;s folder.</source>
        <translation>Le fichier {0} se trouverait parmi ce que le programme garde lui-même dans le dossier du projet.</translation>
    </message>
    <message>
        <source>The file {0} would lie behind a link that leads out of the project&apos;s folder; it is not looked for.</source>
        <translation>Le fichier {0} se trouverait derrière un lien qui mène hors du dossier du projet&#xa0;; il n’est pas cherché.</translation>
    </message>
    <message>
        <source>The file {0} would lie outside the project&apos;s folder.</source>
        <translation>Le fichier {0} se trouverait hors du dossier du projet.</translation>
    </message>
    <message>
        <source>Another program has {0} open for writing; close it first.</source>
        <translation>Un autre programme a ouvert {0} en écriture&#xa0;; fermez-le d’abord.</translation>
    </message>
    <message>
        <source>Another program holds the project&apos;s database just now.</source>
        <translation>Un autre programme tient en ce moment la base de données du projet.</translation>
    </message>
    <message>
        <source>Another program keeps writing to the project; it could not be copied.</source>
        <translation>Un autre programme écrit sans cesse dans le projet&#xa0;; il n’a pas pu être copié.</translation>
    </message>
    <message>
        <source>Another program keeps writing to the project; try again later.</source>
        <translation>Un autre programme écrit sans cesse dans le projet&#xa0;; réessayez plus tard.</translation>
    </message>
    <message>
        <source>Another program makes a project in this folder just now.</source>
        <translation>Un autre programme crée en ce moment un projet dans ce dossier.</translation>
    </message>
    <message>
        <source>Its tables are not those of schema {0}: {1}.</source>
        <translation>Ses tables ne sont pas celles du schéma {0}&#xa0;: {1}.</translation>
    </message>
    <message>
        <source>No temporary folder could be made: {0}.</source>
        <translation>Aucun dossier temporaire n’a pu être créé&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>Nothing was mended. {0}</source>
        <translation>Rien n’a été réparé. {0}</translation>
    </message>
    <message>
        <source>Row {0} of the journal (“{1}”) does not fit the records; verify the project before merging.</source>
        <translation>La ligne {0} du registre («&#xa0;{1}&#xa0;») ne s’accorde pas avec les enregistrements&#xa0;; vérifiez le projet avant de fusionner.</translation>
    </message>
    <message>
        <source>SHA-256 is not available on this computer.</source>
        <translation>SHA-256 n’est pas disponible sur cet ordinateur.</translation>
    </message>
    <message>
        <source>The backup of {0} stays as it was</source>
        <translation>La sauvegarde du {0} reste comme elle était</translation>
    </message>
    <message>
        <source>The backup was not finished: {0} {1}</source>
        <translation>La sauvegarde n’a pas été terminée&#xa0;: {0} {1}</translation>
    </message>
    <message>
        <source>The character U+0000 is not allowed, but stands at line {0}, column {1}.</source>
        <translation>Le caractère U+0000 n’est pas permis, mais se trouve à la ligne {0}, colonne {1}.</translation>
    </message>
    <message>
        <source>The copy {0} does not read back as it was written; it was removed.</source>
        <translation>La copie {0} ne se relit pas comme elle a été écrite&#xa0;; elle a été supprimée.</translation>
    </message>
    <message>
        <source>The copy {0} is not what was copied.</source>
        <translation>La copie {0} n’est pas ce qui a été copié.</translation>
    </message>
    <message>
        <source>The database holds a value larger than any that Lastrivet writes.</source>
        <translation>La base de données contient une valeur plus grande que toutes celles qu’écrit Lastrivet.</translation>
    </message>
    <message>
        <source>The database is cut short: {0} holds {1} of {2} bytes. Restore a backup.</source>
        <translation>La base de données est tronquée&#xa0;: {0} contient {1} octets sur {2}. Restaurez une sauvegarde.</translation>
    </message>
    <message>
        <source>The database is damaged ({0}); restore a backup.</source>
        <translation>La base de données est endommagée ({0})&#xa0;; restaurez une sauvegarde.</translation>
    </message>
    <message>
        <source>The database is damaged: {0} {1} has an impossible {2}.</source>
        <translation>La base de données est endommagée&#xa0;: {0} {1} a une valeur impossible pour {2}.</translation>
    </message>
    <message>
        <source>The database refused: {0}.</source>
        <translation>La base de données a refusé&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>The database was altered by another program: {0}. Restore a backup.</source>
        <translation>La base de données a été modifiée par un autre programme&#xa0;: {0}. Restaurez une sauvegarde.</translation>
    </message>
    <message>
        <source>The disk could not be read or written ({0}); nothing was changed.</source>
        <translation>Le disque n’a pas pu être lu ou écrit ({0})&#xa0;; rien n’a été modifié.</translation>
    </message>
    <message>
        <source>The disk is full; nothing was changed.</source>
        <translation>Le disque est plein&#xa0;; rien n’a été modifié.</translation>
    </message>
    <message>
        <source>The folder of the project has no name.</source>
        <translation>Le dossier du projet n’a pas de nom.</translation>
    </message>
    <message>
        <source>The folder {0} was not written: {1} Nothing was left behind.</source>
        <translation>Le dossier {0} n’a pas été écrit&#xa0;: {1} Il n’en reste rien.</translation>
    </message>
    <message>
        <source>The folder {0} was not written: {1}. Nothing was left behind.</source>
        <translation>Le dossier {0} n’a pas été écrit&#xa0;: {1}. Il n’en reste rien.</translation>
    </message>
    <message>
        <source>The journal is damaged: no row can follow row {0}.</source>
        <translation>Le registre est endommagé&#xa0;: aucune ligne ne peut suivre la ligne {0}.</translation>
    </message>
    <message>
        <source>The journal is damaged: no time comes after that of row {0}.</source>
        <translation>Le registre est endommagé&#xa0;: aucune heure ne vient après celle de la ligne {0}.</translation>
    </message>
    <message>
        <source>The journal is damaged: row {0} is of no known kind.</source>
        <translation>Le registre est endommagé&#xa0;: la ligne {0} est d’un genre inconnu.</translation>
    </message>
    <message>
        <source>The journal is damaged: {0} {1} has an impossible {2}.</source>
        <translation>Le registre est endommagé&#xa0;: {0} {1} a une valeur impossible pour {2}.</translation>
    </message>
    <message>
        <source>The journal speaks of a table {0} of another shape.</source>
        <translation>Le registre parle d’une table {0} d’une autre forme.</translation>
    </message>
    <message>
        <source>The other copy&apos;s journal is broken, so nothing was merged: {0}.</source>
        <translation>Le registre de l’autre copie est rompu, rien n’a donc été fusionné&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>The packet was not written: {0}.</source>
        <translation>Le dossier n’a pas été écrit&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>The picture {0} could not be read.</source>
        <translation>L’image {0} n’a pas pu être lue.</translation>
    </message>
    <message>
        <source>The project cannot be written ({0}).</source>
        <translation>Le projet ne peut pas être écrit ({0}).</translation>
    </message>
    <message>
        <source>The project could not be brought from schema {0} to {1} ({2}), is whole at schema {3}, and {4}.</source>
        <translation>Le projet n’a pas pu passer du schéma {0} au {1} ({2}), est complet au schéma {3}, et {4}.</translation>
    </message>
    <message>
        <source>The project was never finished being made; make it anew.</source>
        <translation>La création du projet n’a jamais été achevée&#xa0;; recréez-le.</translation>
    </message>
    <message>
        <source>The project was written by a newer Lastrivet (schema {0}; this one knows {1}). It was left as it is.</source>
        <translation>Le projet a été écrit par un Lastrivet plus récent (schéma {0}&#xa0;; celui-ci connaît le {1}). Il est resté tel quel.</translation>
    </message>
    <message>
        <source>The starter cannot be used: {0}.</source>
        <translation>Le modèle de départ est inutilisable&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>The table of what merges left to decide is damaged.</source>
        <translation>La table de ce que les fusions ont laissé à décider est endommagée.</translation>
    </message>
    <message>
        <source>The text is no UTF-8 at line {0}, column {1}.</source>
        <translation>Le texte n’est pas de l’UTF-8 à la ligne {0}, colonne {1}.</translation>
    </message>
    <message>
        <source>The workshop table {0} could not be read; it should be {1}.</source>
        <translation>Le tableau d’atelier {0} n’a pas pu être lu&#xa0;; il devrait être ici&#xa0;: {1}.</translation>
    </message>
    <message>
        <source>There is no folder for temporary files; TMPDIR may name one.</source>
        <translation>Il n’y a pas de dossier pour les fichiers temporaires&#xa0;; TMPDIR peut en nommer un.</translation>
    </message>
    <message>
        <source>There is no folder {0}; plug its disk in, or make it.</source>
        <translation>Il n’y a pas de dossier {0}&#xa0;; branchez son disque, ou créez-le.</translation>
    </message>
    <message>
        <source>There is no rule profile &quot;{0}&quot;; there are: {1}.</source>
        <translation>Il n’y a pas de profil de règles «&#xa0;{0}&#xa0;»&#xa0;; il y a&#xa0;: {1}.</translation>
    </message>
    <message>
        <source>This build of SQLite lacks a protection that project files need.</source>
        <translation>Il manque à ce SQLite une protection dont les fichiers de projet ont besoin.</translation>
    </message>
    <message>
        <source>This computer gives no random numbers.</source>
        <translation>Cet ordinateur ne donne pas de nombres aléatoires.</translation>
    </message>
    <message>
        <source>This is no JSON at line {0}, column {1}.</source>
        <translation>Ce n’est pas du JSON à la ligne {0}, colonne {1}.</translation>
    </message>
    <message>
        <source>a folder has that name</source>
        <translation>un dossier porte ce nom</translation>
    </message>
    <message>
        <source>as it was it is kept in {0}</source>
        <translation>tel qu’il était il est conservé dans {0}</translation>
    </message>
    <message>
        <source>it has “{0}”</source>
        <translation>elle a «&#xa0;{0}&#xa0;»</translation>
    </message>
    <message>
        <source>it lacks “{0}”</source>
        <translation>il lui manque «&#xa0;{0}&#xa0;»</translation>
    </message>
    <message>
        <source>its row {0} (“{1}”) does not follow the row before it</source>
        <translation>sa ligne {0} («&#xa0;{1}&#xa0;») ne suit pas la ligne précédente</translation>
    </message>
    <message>
        <source>its row {0} (“{1}”) is of a time after the year 2199</source>
        <translation>sa ligne {0} («&#xa0;{1}&#xa0;») est d’une date après l’an 2199</translation>
    </message>
    <message>
        <source>its row {0} (“{1}”) is out of sequence</source>
        <translation>sa ligne {0} («&#xa0;{1}&#xa0;») n’est pas à sa place dans la suite</translation>
    </message>
    <message>
        <source>its row {0} (“{1}”) was altered</source>
        <translation>sa ligne {0} («&#xa0;{1}&#xa0;») a été modifiée</translation>
    </message>
    <message>
        <source>no copy of it could be made</source>
        <translation>aucune copie n’a pu en être faite</translation>
    </message>
    <message>
        <source>records.db is not a database.</source>
        <translation>records.db n’est pas une base de données.</translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation>le disque est plein</translation>
    </message>
    <message>
        <source>the folder cannot be written</source>
        <translation>le dossier ne peut pas être écrit</translation>
    </message>
    <message>
        <source>the {0} is not Lastrivet&apos;s, and could change or hide records; until it is removed the project can only be read</source>
        <translation>{0} n’est pas de Lastrivet, et pourrait modifier ou cacher des enregistrements&#xa0;; tant que cela n’est pas retiré, le projet ne peut qu’être lu</translation>
    </message>
    <message>
        <source>{0} cannot be locked: {1}.</source>
        <translation>{0} ne peut pas être verrouillé&#xa0;: {1}.</translation>
    </message>
    <message>
        <source>{0} cannot be read.</source>
        <translation>{0} ne peut pas être lu.</translation>
    </message>
    <message>
        <source>{0} cannot be written: {1}.</source>
        <translation>{0} ne peut pas être écrit&#xa0;: {1}.</translation>
    </message>
    <message>
        <source>{0} cannot be written: {1}; nothing was changed there.</source>
        <translation>{0} ne peut pas être écrit&#xa0;: {1}&#xa0;; rien n’y a été modifié.</translation>
    </message>
    <message>
        <source>{0} cannot be written; nothing was changed there.</source>
        <translation>{0} ne peut pas être écrit&#xa0;; rien n’y a été modifié.</translation>
    </message>
    <message>
        <source>{0} could not be made: {1}</source>
        <translation>{0} n’a pas pu être créé&#xa0;: {1}</translation>
    </message>
    <message>
        <source>{0} could not be made: {1}.</source>
        <translation>{0} n’a pas pu être créé&#xa0;: {1}.</translation>
    </message>
    <message>
        <source>{0} could not be read or written: {1}.</source>
        <translation>{0} n’a pas pu être lu ou écrit&#xa0;: {1}.</translation>
    </message>
    <message>
        <source>{0} could not be read.</source>
        <translation>{0} n’a pas pu être lu.</translation>
    </message>
    <message>
        <source>{0} could not be written: {1}.</source>
        <translation>{0} n’a pas pu être écrit&#xa0;: {1}.</translation>
    </message>
    <message>
        <source>{0} does not read back as it was written; the disk may be failing.</source>
        <translation>{0} ne se relit pas comme il a été écrit&#xa0;; le disque est peut-être en train de lâcher.</translation>
    </message>
    <message>
        <source>{0} exists already; choose another name.</source>
        <translation>{0} existe déjà&#xa0;; choisissez un autre nom.</translation>
    </message>
    <message>
        <source>{0} has changes that this project has not; they would be lost, so nothing was changed. Choose another folder.</source>
        <translation>{0} a des modifications que ce projet n’a pas&#xa0;; elles seraient perdues, rien n’a donc été modifié. Choisissez un autre dossier.</translation>
    </message>
    <message>
        <source>{0} holds another project; nothing was changed.</source>
        <translation>{0} contient un autre projet&#xa0;; rien n’a été modifié.</translation>
    </message>
    <message>
        <source>{0} is a folder, not a file.</source>
        <translation>{0} est un dossier, pas un fichier.</translation>
    </message>
    <message>
        <source>{0} is a link that leads nowhere; nothing was written.</source>
        <translation>{0} est un lien qui ne mène nulle part&#xa0;; rien n’a été écrit.</translation>
    </message>
    <message>
        <source>{0} is a link to another place, where the lists could take the place of other files; remove it first.</source>
        <translation>{0} est un lien vers un autre endroit, où les listes pourraient prendre la place d’autres fichiers&#xa0;; supprimez-le d’abord.</translation>
    </message>
    <message>
        <source>{0} is in the way; rename it, or choose another name.</source>
        <translation>{0} gêne&#xa0;; renommez-le, ou choisissez un autre nom.</translation>
    </message>
    <message>
        <source>{0} is longer than any list of records.</source>
        <translation>{0} est plus long que toute liste d’enregistrements.</translation>
    </message>
    <message>
        <source>{0} is no file but a device or a pipe; nothing was written. Name a file.</source>
        <translation>{0} n’est pas un fichier mais un périphérique ou un tube&#xa0;; rien n’a été écrit. Nommez un fichier.</translation>
    </message>
    <message>
        <source>{0} is not a Lastrivet project.</source>
        <translation>{0} n’est pas un projet Lastrivet.</translation>
    </message>
    <message>
        <source>{0} is not a Lastrivet project: it has no records.db.</source>
        <translation>{0} n’est pas un projet Lastrivet&#xa0;: il n’a pas de records.db.</translation>
    </message>
    <message>
        <source>{0} is not there.</source>
        <translation>{0} n’est pas là.</translation>
    </message>
    <message>
        <source>{0} is there already and is no backup of this project.</source>
        <translation>{0} est déjà là et n’est pas une sauvegarde de ce projet.</translation>
    </message>
    <message>
        <source>{0} lies inside {1}; choose another disk or folder.</source>
        <translation>{0} se trouve dans {1}&#xa0;; choisissez un autre disque ou dossier.</translation>
    </message>
    <message>
        <source>{0} or {1} could not be read or written: {2}.</source>
        <translation>{0} ou {1} n’a pas pu être lu ou écrit&#xa0;: {2}.</translation>
    </message>
    <message>
        <source>{0} was not written: even without photographs it would be larger than {1} MB. Nothing was left behind.</source>
        <translation>{0} n’a pas été écrit&#xa0;: même sans photos il dépasserait {1} Mo. Il n’en reste rien.</translation>
    </message>
    <message>
        <source>{0} was not written: {1} could not be read.</source>
        <translation>{0} n’a pas été écrit&#xa0;: {1} n’a pas pu être lu.</translation>
    </message>
    <message>
        <source>{0} was not written: {1}. Nothing was left behind.</source>
        <translation>{0} n’a pas été écrit&#xa0;: {1}. Il n’en reste rien.</translation>
    </message>
    <message>
        <source>{0} {1} names a {2} that does not exist.</source>
        <translation>{0} {1} nomme un élément {2} qui n’existe pas.</translation>
    </message>
    <message>
        <source>{0} {1}.</source>
        <translation>{0} {1}.</translation>
    </message>
    <message>
        <source>{0}, and 1 file copied so far will not be copied again.</source>
        <translation>{0}, et 1 fichier déjà copié ne le sera pas de nouveau.</translation>
    </message>
    <message>
        <source>{0}, and {1} files copied so far will not be copied again.</source>
        <translation>{0}, et {1} fichiers déjà copiés ne le seront pas de nouveau.</translation>
    </message>
    <message>
        <source>{0}: /id is &quot;{1}&quot;, not what the file is called.</source>
        <translation>{0}&#xa0;: /id est «&#xa0;{1}&#xa0;», et non le nom du fichier.</translation>
    </message>
    <message>
        <source>{0}: {1} {2}.</source>
        <translation>{0}&#xa0;: {1} {2}.</translation>
    </message>
    <message>
        <source>The number at line {0}, column {1} is too large.</source>
        <translation>Le nombre à la ligne {0}, colonne {1} est trop grand.</translation>
    </message>
    <message>
        <source>The text ends too early, at line {0}, column {1}.</source>
        <translation>Le texte s’arrête trop tôt, à la ligne {0}, colonne {1}.</translation>
    </message>
    <message>
        <source>{0} [from memory]</source>
        <translation>{0} [de mémoire]</translation>
    </message>
    <message>
        <source>{0} [second-hand]</source>
        <translation>{0} [de seconde main]</translation>
    </message>
    <message>
        <source>and {0} more on record, squawks of airworthiness among them: {1}</source>
        <translation>et {0} de plus au dossier, dont anomalies de navigabilité&#xa0;: {1}</translation>
    </message>
    <message>
        <source>{0} points are asked; {1} of them are named here, all of them under Readiness.</source>
        <translation>{0} points sont demandés&#xa0;; {1} d’entre eux sont nommés ici, tous sous «&#xa0;Préparation&#xa0;».</translation>
    </message>
    <message>
        <source>{0} could not be written.</source>
        <translation>{0} n’a pas pu être écrit.</translation>
    </message>
    <message>
        <source>{0} {1} {2} {3} {4} {5} {6} {7}</source>
        <translation>{0} {1} {2} {3} {4} {5} {6} {7}</translation>
    </message>
    <message>
        <source>Nothing is left out: 1 row.</source>
        <translation>Rien n’est omis&#xa0;: 1 ligne.</translation>
    </message>
    <message>
        <source>on record: {0}</source>
        <translation>au dossier&#xa0;: {0}</translation>
    </message>
    <message>
        <source>{0}: 1 point</source>
        <translation>{0}&#xa0;: 1 point</translation>
    </message>
    <message>
        <source>{0}: {1} points</source>
        <translation>{0}&#xa0;: {1} points</translation>
    </message>
    <message>
        <source>The project&apos;s own limit of {0} is in {1}: write the unit of the drag, too.</source>
        <translation>La limite propre au projet pour {0} est en {1}&#xa0;: écrivez aussi l’unité du frottement.</translation>
    </message>
    <message>
        <source>“{0} {1}”: write the amount with its decimals, like 0.50.</source>
        <translation>«&#xa0;{0}&#xa0;{1}&#xa0;»&#xa0;: écrivez le montant avec ses décimales, comme 0,50.</translation>
    </message>
    <message>
        <source>{0} cannot be read: {1}.</source>
        <translation>{0} ne peut pas être lu&#xa0;: {1}.</translation>
    </message>
    <message>
        <source>{0} is not a Lastrivet project: the file is empty. If it was one, restore a backup.</source>
        <translation>{0} n’est pas un projet Lastrivet&#xa0;: le fichier est vide. Si c’en était un, rétablissez une sauvegarde.</translation>
    </message>
    <message>
        <source>{0} is what a Lastrivet project keeps; nothing was written. Choose another name or folder.</source>
        <translation>{0} fait partie de ce que garde un projet Lastrivet&#xa0;; rien n’a été écrit. Choisissez un autre nom ou dossier.</translation>
    </message>
    <message>
        <source>{0} could not be given its name: {1}; the document lies beside its place as {2}.</source>
        <translation>{0} n’a pas pu recevoir son nom&#xa0;: {1}&#xa0;; le document se trouve à côté, sous le nom {2}.</translation>
    </message>
    <message>
        <source>it is a folder, not a file</source>
        <translation>c’est un dossier, pas un fichier</translation>
    </message>
    <message>
        <source>it is not there</source>
        <translation>il n’est pas là</translation>
    </message>
    <message>
        <source>its permissions forbid it</source>
        <translation>ses droits d’accès l’interdisent</translation>
    </message>
    <message>
        <source>the disk reports an error</source>
        <translation>le disque signale une erreur</translation>
    </message>
    <message>
        <source>the disk takes no file so large</source>
        <translation>le disque n’accepte pas de fichier aussi grand</translation>
    </message>
    <message>
        <source>the name is too long</source>
        <translation>le nom est trop long</translation>
    </message>
    <message>
        <source>{0} cannot be locked: its file system has no locks.</source>
        <translation>{0} ne peut pas être verrouillé&#xa0;: son système de fichiers n’a pas de verrous.</translation>
    </message>
    <message>
        <source>How much of each kind is on record for a closing stands under Readiness.</source>
        <translation>Ce qui est inscrit de chaque sorte pour une fermeture se trouve sous Préparation.</translation>
    </message>
    <message>
        <source>Which</source>
        <translation>Lesquelles</translation>
    </message>
    <message>
        <source>lines to check {0}</source>
        <translation>lignes à contrôler {0}</translation>
    </message>
    <message>
        <source>{0} closings, all named below as closed with gaps</source>
        <translation>{0} fermetures, toutes nommées plus bas comme fermées avec lacunes</translation>
    </message>
    <message>
        <source>“{0}” is not in {1}: write it in {1}, or choose the other unit first.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas en {1}&#xa0;: écrivez-le en {1}, ou choisissez d’abord l’autre unité.</translation>
    </message>
    <message>
        <source>“{0}”: choose the unit first, and write the number alone or in it.</source>
        <translation>«&#xa0;{0}&#xa0;»&#xa0;: choisissez d’abord l’unité, puis écrivez le nombre seul ou dans cette unité.</translation>
    </message>
    <message>
        <source>Prices without a currency ({0}) are taken in {1}, though others of the list are in {2}.</source>
        <translation>Les prix sans monnaie ({0}) sont pris en {1}, bien que d’autres de la liste soient en {2}.</translation>
    </message>
    <message>
        <source>“{0}” may be {1}, or {2} for a count; write {1} or {2}.</source>
        <translation>«&#xa0;{0}&#xa0;» peut être {1}, ou {2} pour un nombre de pièces&#xa0;; écrivez {1} ou {2}.</translation>
    </message>
    <message>
        <source>“{0}” may be {1} fasteners or one: write {1} x {2}, or 1 x {0}.</source>
        <translation>«&#xa0;{0}&#xa0;» peut être {1} fixations ou une seule&#xa0;: écrivez {1} x {2}, ou 1 x {0}.</translation>
    </message>
    <message>
        <source>{0} is no number of pieces; write it in figures alone, as 12 or 1200.</source>
        <translation>{0} n’est pas un nombre de pièces&#xa0;; écrivez-le en chiffres seuls, comme 12 ou 1200.</translation>
    </message>
    <message>
        <source>“{0}” is taken for hours and minutes; put a comma behind the hours when the number is a count.</source>
        <translation>«&#xa0;{0}&#xa0;» est pris pour des heures et des minutes&#xa0;; mettez une virgule derrière les heures si le nombre est une quantité.</translation>
    </message>
    <message>
        <source>“{0}” may be a time of day or how long it took; write from 8:00 to 10:30, or 2h30.</source>
        <translation>«&#xa0;{0}&#xa0;» peut être une heure de la journée ou une durée&#xa0;; écrivez de 8:00 à 10:30, ou 2h30.</translation>
    </message>
    <message>
        <source>Deviations that change the weight, built since the weighing and not in it: {0}.</source>
        <translation>Écarts qui changent la masse, construits depuis la pesée et absents de celle-ci&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>{0} by the clock, {1} of all who worked</source>
        <translation>{0} à l’horloge, {1} de tous ceux qui ont travaillé</translation>
    </message>
    <message>
        <source>The file {0} was damaged and is there again as it was taken in; the damaged one is kept as {1}.</source>
        <translation>Le fichier {0} était endommagé et est de nouveau là tel qu’il avait été pris&#xa0;; celui qui est endommagé est gardé sous {1}.</translation>
    </message>
    <message>
        <source>The file {0} was missing and is there again.</source>
        <translation>Le fichier {0} manquait et est de nouveau là.</translation>
    </message>
    <message>
        <source>“{0}” may be a time of day; write from 8:00 to 10:30.</source>
        <translation>«&#xa0;{0}&#xa0;» peut être une heure du jour&#xa0;; écrivez de 8:00 à 10:30.</translation>
    </message>
    <message>
        <source>“{0}” may be the one time or the other; write one, as 2h30.</source>
        <translation>«&#xa0;{0}&#xa0;» peut être l’une ou l’autre durée&#xa0;; écrivez-en une, comme 2h30.</translation>
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
        <translation>Aucune monnaie en vigueur selon ISO 4217&#xa0;: %1&#xa0;; les montants restent tels quels.</translation>
    </message>
</context>
<context>
    <name>Packet</name>
    <message>
        <source>Packet for %1</source>
        <translation>Dossier pour %1</translation>
    </message>
    <message>
        <source>Packet %1</source>
        <translation>Dossier %1</translation>
    </message>
    <message numerus="yes">
        <source>%n closings</source>
        <translation>
            <numerusform>%Ln fermeture</numerusform>
            <numerusform>%Ln fermetures</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n files are no longer what was taken in.</source>
        <translation>
            <numerusform>%Ln fichier n’est plus ce qui a été importé.</numerusform>
            <numerusform>%Ln fichiers ne sont plus ce qui a été importé.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n files were not in the project.</source>
        <translation>
            <numerusform>%Ln fichier n’était pas dans le projet.</numerusform>
            <numerusform>%Ln fichiers n’étaient pas dans le projet.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photographs are beside it in full size.</source>
        <translation>
            <numerusform>%Ln photo est à côté en pleine taille.</numerusform>
            <numerusform>%Ln photos sont à côté en pleine taille.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photographs are left out.</source>
        <translation>
            <numerusform>%Ln photo est omise.</numerusform>
            <numerusform>%Ln photos sont omises.</numerusform>
        </translation>
    </message>
    <message>
        <source>Corrections report</source>
        <translation>Rapport de corrections</translation>
    </message>
    <message>
        <source>It has %1 MB.</source>
        <translation>Il fait %1 Mo.</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>What changed since the signature</source>
        <translation>Ce qui a changé depuis la signature</translation>
    </message>
    <message>
        <source>Where it goes</source>
        <translation>Où il va</translation>
    </message>
    <message>
        <source>Nobody has signed there yet.</source>
        <translation>Personne n’y a encore signé.</translation>
    </message>
    <message>
        <source>The visit is not on record as held.</source>
        <translation>La visite n’est pas notée comme faite.</translation>
    </message>
    <message>
        <source>Corrections report %1</source>
        <translation>Rapport de corrections %1</translation>
    </message>
    <message>
        <source>What changed since the signature, %1</source>
        <translation>Ce qui a changé depuis la signature, %1</translation>
    </message>
</context>
<context>
    <name>Page</name>
    <message>
        <source>Today</source>
        <translation>Aujourd’hui</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Pièces</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>Carnet</translation>
    </message>
    <message>
        <source>Squawks</source>
        <translation>Anomalies</translation>
    </message>
    <message>
        <source>Closings</source>
        <translation>Fermetures</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Photos</translation>
    </message>
    <message>
        <source>Stores</source>
        <translation>Magasin</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Heures</translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation>Certificat</translation>
    </message>
    <message>
        <source>Journal</source>
        <translation>Registre</translation>
    </message>
    <message>
        <source>Workshop</source>
        <translation>Atelier</translation>
    </message>
</context>
<context>
    <name>PaperModel</name>
    <message>
        <source>Document</source>
        <translation>Document</translation>
    </message>
    <message>
        <source>Needed</source>
        <translation>Exigence</translation>
    </message>
    <message>
        <source>State</source>
        <translation>État</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Numéro</translation>
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
        <translation>%1 déplacée vers %2</translation>
    </message>
    <message>
        <source>%1 moved to the top</source>
        <translation>%1 déplacée tout en haut</translation>
    </message>
    <message numerus="yes">
        <source>%n parts</source>
        <translation>
            <numerusform>%Ln pièce</numerusform>
            <numerusform>%Ln pièces</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PartTree</name>
    <message>
        <source>Part</source>
        <translation>Pièce</translation>
    </message>
    <message>
        <source>State</source>
        <translation>État</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Heures</translation>
    </message>
    <message>
        <source>Squawks</source>
        <translation>Anomalies</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Photos</translation>
    </message>
    <message>
        <source>work left</source>
        <translation>du travail reste</translation>
    </message>
    <message>
        <source>inspection</source>
        <translation>inspection</translation>
    </message>
    <message>
        <source>signature</source>
        <translation>signature</translation>
    </message>
    <message>
        <source>none against</source>
        <translation>rien contre</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>fermée</translation>
    </message>
    <message>
        <source>closed, gaps</source>
        <translation>fermée, lacunes</translation>
    </message>
</context>
<context>
    <name>PhotoSections</name>
    <message>
        <source>Belonging to no part</source>
        <translation>Sans pièce</translation>
    </message>
    <message>
        <source>Without a date</source>
        <translation>Sans date</translation>
    </message>
</context>
<context>
    <name>PictureFile</name>
    <message>
        <source>This file is no photo.</source>
        <translation>Ce fichier n’est pas une photo.</translation>
    </message>
</context>
<context>
    <name>PictureInbox</name>
    <message>
        <source>Choose photos</source>
        <translation>Choisir des photos</translation>
    </message>
    <message>
        <source>Photos and papers (*.jpg *.jpeg *.png *.heic *.pdf);;All files (*)</source>
        <translation>Photos et papiers (*.jpg *.jpeg *.png *.heic *.pdf);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>pasted picture %1</source>
        <translation>image collée %1</translation>
    </message>
</context>
<context>
    <name>Print</name>
    <message numerus="yes">
        <source>%1 is written: %n pages.</source>
        <translation>
            <numerusform>%1 est écrit&#xa0;: %Ln page.</numerusform>
            <numerusform>%1 est écrit&#xa0;: %Ln pages.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 is written: %n dates.</source>
        <translation>
            <numerusform>%1 est écrit&#xa0;: %Ln date.</numerusform>
            <numerusform>%1 est écrit&#xa0;: %Ln dates.</numerusform>
        </translation>
    </message>
    <message>
        <source>Blank form: findings of a visit</source>
        <translation>Formulaire vierge&#xa0;: constatations d’une visite</translation>
    </message>
    <message>
        <source>Blank form: lay-up and glue batches</source>
        <translation>Formulaire vierge&#xa0;: mélanges de stratification et de colle</translation>
    </message>
    <message>
        <source>Blank form: log of a week</source>
        <translation>Formulaire vierge&#xa0;: carnet d’une semaine</translation>
    </message>
    <message>
        <source>Blank form: torque list</source>
        <translation>Formulaire vierge&#xa0;: liste des couples</translation>
    </message>
    <message>
        <source>Calendar file</source>
        <translation>Fichier de calendrier</translation>
    </message>
    <message>
        <source>Hand-over book</source>
        <translation>Livret de remise</translation>
    </message>
    <message>
        <source>Labels for tools</source>
        <translation>Étiquettes pour outils</translation>
    </message>
    <message>
        <source>Shelf labels for material lots</source>
        <translation>Étiquettes d’étagère pour lots de matériau</translation>
    </message>
    <message>
        <source>Shelf labels for parts</source>
        <translation>Étiquettes d’étagère pour pièces</translation>
    </message>
    <message>
        <source>Tie-on tags: do not close</source>
        <translation>Étiquettes à attacher&#xa0;: ne pas fermer</translation>
    </message>
    <message numerus="yes">
        <source>%n photographs are in it.</source>
        <translation>
            <numerusform>%Ln photo y figure.</numerusform>
            <numerusform>%Ln photos y figurent.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photographs could not be printed.</source>
        <translation>
            <numerusform>%Ln photo n’a pas pu être imprimée.</numerusform>
            <numerusform>%Ln photos n’ont pas pu être imprimées.</numerusform>
        </translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>File for the final inspection</source>
        <translation>Dossier pour l’inspection finale</translation>
    </message>
    <message>
        <source>Major portion with its evidence</source>
        <translation>Majeure partie avec ses preuves</translation>
    </message>
    <message>
        <source>Weight and balance report</source>
        <translation>Rapport de masse et centrage</translation>
    </message>
    <message>
        <source>No typeface on this computer has %1: boxes stand in their place.</source>
        <translation>Aucune police de cet ordinateur n’a %1&#xa0;: des cases tiennent leur place.</translation>
    </message>
</context>
<context>
    <name>ProjectFiles</name>
    <message numerus="yes">
        <source>%1: %n files attached</source>
        <translation>
            <numerusform>%1&#xa0;: %Ln fichier joint</numerusform>
            <numerusform>%1&#xa0;: %Ln fichiers joints</numerusform>
        </translation>
    </message>
    <message>
        <source>This computer has no program that opens %1.</source>
        <translation>Aucun programme de cet ordinateur n’ouvre %1.</translation>
    </message>
    <message>
        <source>%1 is not opened: it is not there, or is no picture, video or PDF as its name says.</source>
        <translation>%1 n’est pas ouvert&#xa0;: le fichier n’est pas là, ou n’est pas l’image, la vidéo ou le PDF que dit son nom.</translation>
    </message>
</context>
<context>
    <name>RecordNames</name>
    <message>
        <source>and %1 more</source>
        <translation>et %1 de plus</translation>
    </message>
    <message>
        <source>It is about: %1.</source>
        <translation>Il s’agit de&#xa0;: %1.</translation>
    </message>
</context>
<context>
    <name>Recording</name>
    <message>
        <source>Logged: %1</source>
        <translation>Inscrit&#xa0;: %1</translation>
    </message>
    <message>
        <source>Logged: %1 on %2</source>
        <translation>Inscrit&#xa0;: %1 sur %2</translation>
    </message>
    <message>
        <source>work</source>
        <translation>travail</translation>
    </message>
</context>
<context>
    <name>Records</name>
    <message>
        <source>Project</source>
        <translation>Projet</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personnes</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Pièces</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Étapes</translation>
    </message>
    <message>
        <source>Work sessions</source>
        <translation>Séances de travail</translation>
    </message>
    <message>
        <source>Closings</source>
        <translation>Fermetures</translation>
    </message>
    <message>
        <source>Hold points</source>
        <translation>Points d’arrêt</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation>Points de contrôle</translation>
    </message>
    <message>
        <source>Inspections</source>
        <translation>Inspections</translation>
    </message>
    <message>
        <source>Sign-offs</source>
        <translation>Visas</translation>
    </message>
    <message>
        <source>Squawks</source>
        <translation>Anomalies</translation>
    </message>
    <message>
        <source>Deviations</source>
        <translation>Écarts</translation>
    </message>
    <message>
        <source>Bulletins</source>
        <translation>Bulletins</translation>
    </message>
    <message>
        <source>Fasteners</source>
        <translation>Fixations</translation>
    </message>
    <message>
        <source>Measurements</source>
        <translation>Mesures</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Outils</translation>
    </message>
    <message>
        <source>Packing lists</source>
        <translation>Listes de colisage</translation>
    </message>
    <message>
        <source>Material lots</source>
        <translation>Lots de matériau</translation>
    </message>
    <message>
        <source>Material used</source>
        <translation>Matériau utilisé</translation>
    </message>
    <message>
        <source>Photos and documents</source>
        <translation>Photos et documents</translation>
    </message>
    <message>
        <source>Expenses</source>
        <translation>Dépenses</translation>
    </message>
    <message>
        <source>Major-portion tasks</source>
        <translation>Tâches de la majeure partie</translation>
    </message>
    <message>
        <source>Equipment</source>
        <translation>Équipement</translation>
    </message>
    <message>
        <source>Weighings</source>
        <translation>Pesées</translation>
    </message>
    <message>
        <source>Loading cases</source>
        <translation>Cas de chargement</translation>
    </message>
    <message>
        <source>Envelopes</source>
        <translation>Domaines de centrage</translation>
    </message>
    <message>
        <source>Documents</source>
        <translation>Documents</translation>
    </message>
    <message>
        <source>Flights</source>
        <translation>Vols</translation>
    </message>
</context>
<context>
    <name>RuleField</name>
    <message>
        <source>id</source>
        <translation>identifiant</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nom</translation>
    </message>
    <message>
        <source>edition</source>
        <translation>édition</translation>
    </message>
    <message>
        <source>late_acceptance_by</source>
        <translation>acceptation tardive par</translation>
    </message>
    <message>
        <source>factory_closing_needs_document</source>
        <translation>la fermeture d’usine demande un document</translation>
    </message>
    <message>
        <source>credit_basis</source>
        <translation>mode de compte de la majeure partie</translation>
    </message>
    <message>
        <source>interior_photos</source>
        <translation>photos de l’intérieur</translation>
    </message>
    <message>
        <source>one_open_request</source>
        <translation>une seule demande ouverte</translation>
    </message>
    <message>
        <source>late_entry_days</source>
        <translation>jours avant entrée tardive</translation>
    </message>
    <message>
        <source>basis</source>
        <translation>base</translation>
    </message>
    <message>
        <source>hold_points</source>
        <translation>points d’arrêt</translation>
    </message>
    <message>
        <source>checklists</source>
        <translation>listes de contrôle</translation>
    </message>
    <message>
        <source>documents</source>
        <translation>documents</translation>
    </message>
    <message>
        <source>test_period</source>
        <translation>période d’essais</translation>
    </message>
    <message>
        <source>credit</source>
        <translation>majeure partie</translation>
    </message>
    <message>
        <source>cautions</source>
        <translation>mises en garde</translation>
    </message>
    <message>
        <source>words</source>
        <translation>termes</translation>
    </message>
    <message>
        <source>sources</source>
        <translation>sources</translation>
    </message>
    <message>
        <source>rule</source>
        <translation>règle</translation>
    </message>
    <message>
        <source>rules</source>
        <translation>règles</translation>
    </message>
    <message>
        <source>text</source>
        <translation>texte</translation>
    </message>
    <message>
        <source>source</source>
        <translation>source</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>fiabilité</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>genre</translation>
    </message>
    <message>
        <source>signer_role</source>
        <translation>signataire</translation>
    </message>
    <message>
        <source>required</source>
        <translation>requis</translation>
    </message>
    <message>
        <source>component_kinds</source>
        <translation>genres de pièces</translation>
    </message>
    <message>
        <source>constructions</source>
        <translation>modes de construction</translation>
    </message>
    <message>
        <source>scope</source>
        <translation>portée</translation>
    </message>
    <message>
        <source>item</source>
        <translation>point</translation>
    </message>
    <message>
        <source>items</source>
        <translation>points</translation>
    </message>
    <message>
        <source>at</source>
        <translation>endroit</translation>
    </message>
    <message>
        <source>key</source>
        <translation>clé</translation>
    </message>
    <message>
        <source>title</source>
        <translation>titre</translation>
    </message>
    <message>
        <source>need</source>
        <translation>exigence</translation>
    </message>
    <message>
        <source>when</source>
        <translation>quand</translation>
    </message>
    <message>
        <source>applies_to</source>
        <translation>s’applique à</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>heures</translation>
    </message>
    <message>
        <source>columns</source>
        <translation>colonnes</translation>
    </message>
    <message>
        <source>passes_when</source>
        <translation>atteint si</translation>
    </message>
    <message>
        <source>read_on</source>
        <translation>lu le</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>squawk</source>
        <translation>anomalie</translation>
    </message>
    <message>
        <source>squawks</source>
        <translation>anomalies</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>constatation</translation>
    </message>
    <message>
        <source>findings</source>
        <translation>constatations</translation>
    </message>
    <message>
        <source>undercarriage</source>
        <translation>train d’atterrissage</translation>
    </message>
    <message>
        <source>inspector</source>
        <translation>inspecteur</translation>
    </message>
    <message>
        <source>adviser</source>
        <translation>conseiller</translation>
    </message>
    <message>
        <source>authority</source>
        <translation>autorité</translation>
    </message>
    <message>
        <source>certificate</source>
        <translation>certificat</translation>
    </message>
</context>
<context>
    <name>RulesView</name>
    <message>
        <source>line %1</source>
        <translation>ligne %1</translation>
    </message>
    <message>
        <source>The whole %1.</source>
        <translation>L’ensemble %1.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <comment>place in the rules, fault</comment>
        <translation>%1&#xa0;: %2.</translation>
    </message>
</context>
<context>
    <name>Section</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>au moins %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>au plus %1</translation>
    </message>
    <message>
        <source>%1 (removed)</source>
        <translation>%1 (retiré)</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>pas encore</translation>
    </message>
    <message>
        <source>%1, damaged %2</source>
        <translation>%1, endommagés %2</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Étape</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fait</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Repère</translation>
    </message>
    <message>
        <source>Estimate</source>
        <translation>Estimation</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Temps</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Genre</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Squawk</source>
        <translation>Anomalie</translation>
    </message>
    <message>
        <source>Severity</source>
        <translation>Gravité</translation>
    </message>
    <message>
        <source>State</source>
        <translation>État</translation>
    </message>
    <message>
        <source>Closing</source>
        <translation>Fermeture</translation>
    </message>
    <message>
        <source>Fitted</source>
        <translation>Posé</translation>
    </message>
    <message>
        <source>fitted</source>
        <translation>posé</translation>
    </message>
    <message>
        <source>Hardware</source>
        <translation>Quincaillerie</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Limites</translation>
    </message>
    <message>
        <source>Torque</source>
        <translation>Couple</translation>
    </message>
    <message>
        <source>Marked</source>
        <translation>Marqué</translation>
    </message>
    <message>
        <source>marked</source>
        <translation>marqué</translation>
    </message>
    <message>
        <source>Locked</source>
        <translation>Freiné</translation>
    </message>
    <message>
        <source>locked</source>
        <translation>freiné</translation>
    </message>
    <message>
        <source>Measurement</source>
        <translation>Mesure</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valeur</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Le</translation>
    </message>
    <message>
        <source>Deviation</source>
        <translation>Écart</translation>
    </message>
    <message>
        <source>Packing line</source>
        <translation>Ligne de colisage</translation>
    </message>
    <message>
        <source>Wanted</source>
        <translation>Demandé</translation>
    </message>
    <message>
        <source>Received</source>
        <translation>Reçu</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Matériau</translation>
    </message>
    <message>
        <source>Used</source>
        <translation>Utilisé</translation>
    </message>
    <message>
        <source>Sample</source>
        <translation>Éprouvette</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Étapes</translation>
    </message>
    <message>
        <source>New step</source>
        <translation>Nouvelle étape</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>Carnet</translation>
    </message>
    <message>
        <source>Squawks</source>
        <translation>Anomalies</translation>
    </message>
    <message>
        <source>New squawk</source>
        <translation>Nouvelle anomalie</translation>
    </message>
    <message>
        <source>Closings</source>
        <translation>Fermetures</translation>
    </message>
    <message>
        <source>Fasteners</source>
        <translation>Fixations</translation>
    </message>
    <message>
        <source>Measurements</source>
        <translation>Mesures</translation>
    </message>
    <message>
        <source>Deviations</source>
        <translation>Écarts</translation>
    </message>
    <message>
        <source>Stores</source>
        <translation>Magasin</translation>
    </message>
    <message>
        <source>New packing line</source>
        <translation>Nouvelle ligne de colisage</translation>
    </message>
    <message>
        <source>Materials</source>
        <translation>Matériaux</translation>
    </message>
    <message>
        <source>dropped %1</source>
        <translation>abandonnée le %1</translation>
    </message>
    <message>
        <source>closes %1</source>
        <translation>ferme %1</translation>
    </message>
    <message>
        <source>Drawing</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Stands</source>
        <translation>Situation</translation>
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
        <translation>Émetteur</translation>
    </message>
    <message>
        <source>Issued</source>
        <translation>Émis</translation>
    </message>
    <message>
        <source>New deviation: what differs</source>
        <translation>Nouvel écart&#xa0;: ce qui diffère</translation>
    </message>
    <message>
        <source>Bulletins</source>
        <translation>Bulletins</translation>
    </message>
    <message>
        <source>New bulletin: its title</source>
        <translation>Nouveau bulletin&#xa0;: son titre</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>At arm</source>
        <translation>Au bras</translation>
    </message>
    <message>
        <source>Documents</source>
        <translation>Documents</translation>
    </message>
    <message>
        <source>Drawing says</source>
        <translation>Le plan dit</translation>
    </message>
    <message>
        <source>Letters and pictures</source>
        <translation>Lettres et images</translation>
    </message>
    <message>
        <source>On what basis</source>
        <translation>Sur quelle base</translation>
    </message>
    <message>
        <source>Weight, more or less</source>
        <translation>Masse, en plus ou en moins</translation>
    </message>
    <message>
        <source>applies</source>
        <translation>s’applique</translation>
    </message>
    <message>
        <source>applies, mandatory</source>
        <translation>s’applique, obligatoire</translation>
    </message>
    <message>
        <source>approved %1</source>
        <translation>approuvé le %1</translation>
    </message>
    <message>
        <source>approved %1, built</source>
        <translation>approuvé le %1, construit</translation>
    </message>
    <message>
        <source>asked %1, no answer yet</source>
        <translation>demandé le %1, pas encore de réponse</translation>
    </message>
    <message>
        <source>built though rejected</source>
        <translation>construit malgré le refus</translation>
    </message>
    <message>
        <source>built, not decided</source>
        <translation>construit, non décidé</translation>
    </message>
    <message>
        <source>complied with %1</source>
        <translation>appliqué le %1</translation>
    </message>
    <message>
        <source>does not apply</source>
        <translation>ne s’applique pas</translation>
    </message>
    <message>
        <source>not asked yet</source>
        <translation>pas encore demandé</translation>
    </message>
    <message>
        <source>not looked into</source>
        <translation>non examiné</translation>
    </message>
    <message>
        <source>rejected %1</source>
        <translation>refusé le %1</translation>
    </message>
    <message>
        <source>undone %1</source>
        <translation>défait le %1</translation>
    </message>
    <message>
        <source>torqued</source>
        <translation>au couple</translation>
    </message>
    <message>
        <source>sealed</source>
        <translation>marqué au vernis</translation>
    </message>
    <message>
        <source>to fit</source>
        <translation>à poser</translation>
    </message>
    <message>
        <source>finger-tight</source>
        <translation>serré à la main</translation>
    </message>
    <message>
        <source>outside its limits</source>
        <translation>hors limites</translation>
    </message>
    <message>
        <source>to lock</source>
        <translation>à freiner</translation>
    </message>
    <message>
        <source>to seal</source>
        <translation>à marquer au vernis</translation>
    </message>
    <message>
        <source>removed</source>
        <translation>déposé</translation>
    </message>
    <message>
        <source>to measure</source>
        <translation>à mesurer</translation>
    </message>
    <message>
        <source>within limits</source>
        <translation>dans les limites</translation>
    </message>
    <message>
        <source>no limits</source>
        <translation>sans limites</translation>
    </message>
    <message>
        <source>outside, accepted</source>
        <translation>hors limites, accepté</translation>
    </message>
    <message>
        <source>outside, measured again</source>
        <translation>hors limites, remesuré</translation>
    </message>
    <message>
        <source>New: 12 x rear hinge, AN4-7A, 1/4-28, drag 6, split pin</source>
        <translation>Nouveau&#xa0;: 12 x charnière arrière, AN4-7A, 1/4-28, frottement 6, goupille</translation>
    </message>
    <message>
        <source>New: span of the stabiliser, 2740-2746 mm</source>
        <translation>Nouveau&#xa0;: envergure du plan fixe, 2740-2746 mm</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>compté</translation>
    </message>
    <message>
        <source>Part number</source>
        <translation>Référence</translation>
    </message>
    <message>
        <source>Listed</source>
        <translation>Prévu</translation>
    </message>
    <message>
        <source>Came</source>
        <translation>Arrivé</translation>
    </message>
    <message>
        <source>Damaged</source>
        <translation>Endommagé</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Pour</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lot</translation>
    </message>
    <message>
        <source>Good until</source>
        <translation>Bon jusqu’au</translation>
    </message>
    <message>
        <source>Tool</source>
        <translation>Outil</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Numéro de série</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Échéance</translation>
    </message>
    <message>
        <source>Calibration</source>
        <translation>Étalonnage</translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation>Certificat</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Montant</translation>
    </message>
    <message>
        <source>Category</source>
        <translation>Catégorie</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Fournisseur</translation>
    </message>
    <message>
        <source>Receipt</source>
        <translation>Reçu</translation>
    </message>
    <message>
        <source>Packing lists</source>
        <translation>Listes de colisage</translation>
    </message>
    <message>
        <source>New lot: the material</source>
        <translation>Nouveau lot&#xa0;: le matériau</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Outils</translation>
    </message>
    <message>
        <source>New tool</source>
        <translation>Nouvel outil</translation>
    </message>
    <message>
        <source>Expenses</source>
        <translation>Dépenses</translation>
    </message>
    <message>
        <source>New expense: 34.90 hardware: bolts and nuts</source>
        <translation>Nouvelle dépense&#xa0;: 34,90 visserie&#xa0;: boulons et écrous</translation>
    </message>
    <message>
        <source>Price each</source>
        <translation>Prix unitaire</translation>
    </message>
    <message>
        <source>Counted, packing line</source>
        <translation>Comptée, ligne de colisage</translation>
    </message>
</context>
<context>
    <name>SectionActs</name>
    <message>
        <source>Put back…</source>
        <translation>Remis…</translation>
    </message>
    <message>
        <source>Insert before…</source>
        <translation>Insérer avant…</translation>
    </message>
    <message>
        <source>Drop</source>
        <translation>Abandonner</translation>
    </message>
    <message>
        <source>Take up again</source>
        <translation>Reprendre</translation>
    </message>
    <message>
        <source>%1: dropped</source>
        <translation>%1&#xa0;: abandonnée</translation>
    </message>
    <message>
        <source>%1: to be done after all</source>
        <translation>%1&#xa0;: à faire quand même</translation>
    </message>
    <message>
        <source>A decision needs its basis: a letter, a drawing, a paragraph.</source>
        <translation>Une décision demande sa base&#xa0;: une lettre, un plan, un paragraphe.</translation>
    </message>
    <message>
        <source>A new step before %1</source>
        <translation>Une nouvelle étape avant %1</translation>
    </message>
    <message>
        <source>A step needs its words.</source>
        <translation>Une étape demande ses mots.</translation>
    </message>
    <message>
        <source>Asked of</source>
        <translation>Demandé à</translation>
    </message>
    <message>
        <source>Because</source>
        <translation>Parce que</translation>
    </message>
    <message>
        <source>Bulletin %1: applies</source>
        <translation>Bulletin %1&#xa0;: s’applique</translation>
    </message>
    <message>
        <source>Bulletin %1: complied with</source>
        <translation>Bulletin %1&#xa0;: appliqué</translation>
    </message>
    <message>
        <source>Bulletin %1: does not apply</source>
        <translation>Bulletin %1&#xa0;: ne s’applique pas</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Par</translation>
    </message>
    <message>
        <source>Deviation %1: approved</source>
        <translation>Écart %1&#xa0;: approuvé</translation>
    </message>
    <message>
        <source>Deviation %1: asked</source>
        <translation>Écart %1&#xa0;: demandé</translation>
    </message>
    <message>
        <source>Deviation %1: built so</source>
        <translation>Écart %1&#xa0;: construit ainsi</translation>
    </message>
    <message>
        <source>Deviation %1: put back as drawn</source>
        <translation>Écart %1&#xa0;: remis selon le plan</translation>
    </message>
    <message>
        <source>Deviation %1: rejected</source>
        <translation>Écart %1&#xa0;: refusé</translation>
    </message>
    <message>
        <source>Deviation %1: who was asked?</source>
        <translation>Écart %1&#xa0;: qui a été consulté&#xa0;?</translation>
    </message>
    <message>
        <source>How, and by which paper</source>
        <translation>Comment, et selon quel papier</translation>
    </message>
    <message>
        <source>Insert it</source>
        <translation>L’insérer</translation>
    </message>
    <message>
        <source>Note it</source>
        <translation>Le noter</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Le</translation>
    </message>
    <message>
        <source>On what basis</source>
        <translation>Sur quelle base</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Étape</translation>
    </message>
    <message>
        <source>Step added: %1</source>
        <translation>Étape ajoutée&#xa0;: %1</translation>
    </message>
    <message>
        <source>What was done, and by which paper?</source>
        <translation>Qu’a-t-on fait, et selon quel papier&#xa0;?</translation>
    </message>
    <message>
        <source>Whoever reads this later wants to know why.</source>
        <translation>Qui lira ceci plus tard voudra savoir pourquoi.</translation>
    </message>
    <message>
        <source>Measure again…</source>
        <translation>Mesurer de nouveau…</translation>
    </message>
    <message>
        <source>Make a lot of it</source>
        <translation>En faire un lot</translation>
    </message>
    <message>
        <source>Enter as an expense</source>
        <translation>Inscrire comme dépense</translation>
    </message>
    <message>
        <source>Show the certificate</source>
        <translation>Montrer le certificat</translation>
    </message>
    <message>
        <source>Show the receipt</source>
        <translation>Montrer le reçu</translation>
    </message>
    <message>
        <source>%1: entered as a lot</source>
        <translation>%1&#xa0;: inscrit comme lot</translation>
    </message>
    <message>
        <source>%1: entered as an expense</source>
        <translation>%1&#xa0;: inscrit comme dépense</translation>
    </message>
    <message>
        <source>%1: opened</source>
        <translation>%1&#xa0;: ouvert</translation>
    </message>
    <message>
        <source>Note who was asked…</source>
        <translation>Noter qui a été consulté…</translation>
    </message>
    <message>
        <source>Mark as approved…</source>
        <translation>Marquer comme approuvée…</translation>
    </message>
    <message>
        <source>Mark as rejected…</source>
        <translation>Marquer comme refusée…</translation>
    </message>
    <message>
        <source>Mark as built so…</source>
        <translation>Marquer comme construite ainsi…</translation>
    </message>
    <message>
        <source>Mark as applying</source>
        <translation>Marquer comme applicable</translation>
    </message>
    <message>
        <source>Mark as not applying…</source>
        <translation>Marquer comme non applicable…</translation>
    </message>
    <message>
        <source>Mark as complied with…</source>
        <translation>Marquer comme appliqué…</translation>
    </message>
    <message>
        <source>Mark as opened today</source>
        <translation>Marquer comme ouvert aujourd’hui</translation>
    </message>
    <message>
        <source>Mark as approved</source>
        <translation>Marquer comme approuvée</translation>
    </message>
    <message>
        <source>Mark as complied with</source>
        <translation>Marquer comme appliqué</translation>
    </message>
    <message>
        <source>Mark as not applying</source>
        <translation>Marquer comme non applicable</translation>
    </message>
    <message>
        <source>Mark as rejected</source>
        <translation>Marquer comme refusée</translation>
    </message>
</context>
<context>
    <name>Session</name>
    <message>
        <source>Nothing was changed: %1</source>
        <translation>Rien n’a été modifié&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>Severity</name>
    <message>
        <source>airworthiness</source>
        <translation>navigabilité</translation>
    </message>
    <message>
        <source>workmanship</source>
        <translation>exécution</translation>
    </message>
    <message>
        <source>cosmetic</source>
        <translation>aspect</translation>
    </message>
</context>
<context>
    <name>SquawkList</name>
    <message numerus="yes">
        <source>%n squawks were written to %1.</source>
        <translation>
            <numerusform>%Ln anomalie a été écrite dans %1.</numerusform>
            <numerusform>%Ln anomalies ont été écrites dans %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>List of squawks</source>
        <translation>Liste des anomalies</translation>
    </message>
</context>
<context>
    <name>SquawkPeople</name>
    <message>
        <source>the adviser</source>
        <translation>le conseiller</translation>
    </message>
    <message>
        <source>the adviser (%1)</source>
        <translation>le conseiller (%1)</translation>
    </message>
    <message>
        <source>the builder</source>
        <translation>le constructeur</translation>
    </message>
    <message>
        <source>the inspector</source>
        <translation>l’inspecteur</translation>
    </message>
    <message>
        <source>the inspector (%1)</source>
        <translation>l’inspecteur (%1)</translation>
    </message>
</context>
<context>
    <name>SquawkStory</name>
    <message>
        <source>Accepted as it is %1 by %2: %3</source>
        <translation>Acceptée en l’état le %1 par %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>Fixed %1 by %2: %3</source>
        <translation>Corrigée le %1 par %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>Found %1</source>
        <translation>Trouvée le %1</translation>
    </message>
    <message>
        <source>Found %1 by %2</source>
        <translation>Trouvée le %1 par %2</translation>
    </message>
    <message>
        <source>Open. When it is fixed, this is who looks at it: %1</source>
        <translation>Ouverte. Une fois corrigée, la regarde&#xa0;: %1</translation>
    </message>
    <message>
        <source>Still to look at it: %1</source>
        <translation>Doit encore la regarder&#xa0;: %1</translation>
    </message>
    <message>
        <source>Verified %1 by %2</source>
        <translation>Vérifiée le %1 par %2</translation>
    </message>
</context>
<context>
    <name>Starter</name>
    <message>
        <source>A dry fit with clay or putty shows the bond gap along every rib and the web</source>
        <translation>Un essai à blanc avec de la pâte montre le jeu de collage le long de chaque nervure et de l’âme</translation>
    </message>
    <message>
        <source>A pull string lies in every conduit</source>
        <translation>Un tire-fil se trouve dans chaque gaine</translation>
    </message>
    <message>
        <source>All placards and markings are in place</source>
        <translation>Toutes les plaquettes et marques sont en place</translation>
    </message>
    <message>
        <source>Antenna in the fin</source>
        <translation>Antenne dans la dérive</translation>
    </message>
    <message>
        <source>Battery, contactors and grounds</source>
        <translation>Batterie, contacteurs et masses</translation>
    </message>
    <message>
        <source>Before the final inspection and first flight</source>
        <translation>Avant l’inspection finale et le premier vol</translation>
    </message>
    <message>
        <source>Blocks for every fitting are in place and sealed</source>
        <translation>Les cales de chaque ferrure sont en place et vernies</translation>
    </message>
    <message>
        <source>Bulkheads and hard points</source>
        <translation>Cloisons et points durs</translation>
    </message>
    <message>
        <source>Cabin floor and side panels</source>
        <translation>Plancher et panneaux latéraux de la cabine</translation>
    </message>
    <message>
        <source>Cabin section</source>
        <translation>Tronçon de cabine</translation>
    </message>
    <message>
        <source>Canopy and windows</source>
        <translation>Verrière et vitres</translation>
    </message>
    <message>
        <source>Cockpit floor and consoles bonded</source>
        <translation>Plancher et consoles du poste collés</translation>
    </message>
    <message>
        <source>Cockpit floor and side skins</source>
        <translation>Plancher et revêtements latéraux du poste</translation>
    </message>
    <message>
        <source>Cockpit section</source>
        <translation>Tronçon du poste de pilotage</translation>
    </message>
    <message>
        <source>Composite</source>
        <translation>Composite</translation>
    </message>
    <message>
        <source>Cowling</source>
        <translation>Capot moteur</translation>
    </message>
    <message>
        <source>Doors and windows</source>
        <translation>Portes et vitres</translation>
    </message>
    <message>
        <source>Doors, windscreen and windows</source>
        <translation>Portes, pare-brise et vitres</translation>
    </message>
    <message>
        <source>Drag wires are even in tension and locked</source>
        <translation>Les haubans intérieurs ont la même tension et sont freinés</translation>
    </message>
    <message>
        <source>Electrical and instruments</source>
        <translation>Électricité et instruments</translation>
    </message>
    <message>
        <source>Elevator</source>
        <translation>Gouverne de profondeur</translation>
    </message>
    <message>
        <source>Elevator frame and horn</source>
        <translation>Cadre et guignol de profondeur</translation>
    </message>
    <message>
        <source>Elevator hinges and horn</source>
        <translation>Charnières et guignol de profondeur</translation>
    </message>
    <message>
        <source>Elevator spar and horn</source>
        <translation>Longeron et guignol de profondeur</translation>
    </message>
    <message>
        <source>Elevator, covered</source>
        <translation>Profondeur, entoilée</translation>
    </message>
    <message>
        <source>Elevator, second skin</source>
        <translation>Profondeur, second revêtement</translation>
    </message>
    <message>
        <source>Elevator, shells bonded</source>
        <translation>Profondeur, coques collées</translation>
    </message>
    <message>
        <source>Elevator, skins closed</source>
        <translation>Profondeur, revêtement fermé</translation>
    </message>
    <message>
        <source>Engine installation</source>
        <translation>Installation moteur</translation>
    </message>
    <message>
        <source>Engine mount</source>
        <translation>Bâti moteur</translation>
    </message>
    <message>
        <source>Every inspection panel was opened and looked into once more</source>
        <translation>Chaque trappe de visite a été ouverte et l’intérieur regardé une fois encore</translation>
    </message>
    <message>
        <source>Every tube was treated inside and its drain hole is shut</source>
        <translation>Chaque tube est traité à l’intérieur et son trou de vidange fermé</translation>
    </message>
    <message>
        <source>Every varnished wooden part is dry</source>
        <translation>Chaque pièce de bois vernie est sèche</translation>
    </message>
    <message>
        <source>Exhaust and cooling</source>
        <translation>Échappement et refroidissement</translation>
    </message>
    <message>
        <source>Fin</source>
        <translation>Dérive</translation>
    </message>
    <message>
        <source>Fin frame</source>
        <translation>Cadre de dérive</translation>
    </message>
    <message>
        <source>Fin spars and ribs</source>
        <translation>Longerons et nervures de dérive</translation>
    </message>
    <message>
        <source>Fin web and hard points</source>
        <translation>Âme et points durs de dérive</translation>
    </message>
    <message>
        <source>Fin, covered</source>
        <translation>Dérive, entoilée</translation>
    </message>
    <message>
        <source>Fin, second skin</source>
        <translation>Dérive, second revêtement</translation>
    </message>
    <message>
        <source>Fin, shells bonded</source>
        <translation>Dérive, coques collées</translation>
    </message>
    <message>
        <source>Firewall</source>
        <translation>Cloison pare-feu</translation>
    </message>
    <message>
        <source>Frame tubes, sealed inside</source>
        <translation>Tubes de la structure, protégés à l’intérieur</translation>
    </message>
    <message>
        <source>Fuel flow and fuel quantity indication are checked</source>
        <translation>Débit et jaugeage de carburant sont contrôlés</translation>
    </message>
    <message>
        <source>Fuel lines, filter and pump</source>
        <translation>Conduites, filtre et pompe à carburant</translation>
    </message>
    <message>
        <source>Fuselage</source>
        <translation>Fuselage</translation>
    </message>
    <message>
        <source>Fuselage shells</source>
        <translation>Coques du fuselage</translation>
    </message>
    <message>
        <source>Fuselage, covered</source>
        <translation>Fuselage, entoilé</translation>
    </message>
    <message>
        <source>Glue is within its life and the workshop is warm enough for it</source>
        <translation>La colle n’est pas périmée et l’atelier est assez chaud pour elle</translation>
    </message>
    <message>
        <source>Inside of the tubes</source>
        <translation>Intérieur des tubes</translation>
    </message>
    <message>
        <source>Instrument panel</source>
        <translation>Tableau de bord</translation>
    </message>
    <message>
        <source>Left aileron</source>
        <translation>Aileron gauche</translation>
    </message>
    <message>
        <source>Left aileron balance weight</source>
        <translation>Masse d’équilibrage, aileron gauche</translation>
    </message>
    <message>
        <source>Left aileron cables and pulleys</source>
        <translation>Câbles et poulies, aileron gauche</translation>
    </message>
    <message>
        <source>Left aileron frame and hinges</source>
        <translation>Cadre et charnières, aileron gauche</translation>
    </message>
    <message>
        <source>Left aileron hinges and balance weight</source>
        <translation>Charnières et masse d’équilibrage, aileron gauche</translation>
    </message>
    <message>
        <source>Left aileron spar and hinge blocks</source>
        <translation>Longeron et cales de charnière, aileron gauche</translation>
    </message>
    <message>
        <source>Left aileron spar and hinge brackets</source>
        <translation>Longeron et ferrures de charnière, aileron gauche</translation>
    </message>
    <message>
        <source>Left aileron, covered</source>
        <translation>Aileron gauche, entoilé</translation>
    </message>
    <message>
        <source>Left aileron, second skin</source>
        <translation>Aileron gauche, second revêtement</translation>
    </message>
    <message>
        <source>Left aileron, shells bonded</source>
        <translation>Aileron gauche, coques collées</translation>
    </message>
    <message>
        <source>Left aileron, skins closed</source>
        <translation>Aileron gauche, revêtement fermé</translation>
    </message>
    <message>
        <source>Left drag wires and compression struts</source>
        <translation>Haubans intérieurs et entretoises, aile gauche</translation>
    </message>
    <message>
        <source>Left flap</source>
        <translation>Volet gauche</translation>
    </message>
    <message>
        <source>Left flap hinges and drive</source>
        <translation>Charnières et commande, volet gauche</translation>
    </message>
    <message>
        <source>Left flap spar and hinge blocks</source>
        <translation>Longeron et cales de charnière, volet gauche</translation>
    </message>
    <message>
        <source>Left flap spar and horn</source>
        <translation>Longeron et guignol, volet gauche</translation>
    </message>
    <message>
        <source>Left flap, second skin</source>
        <translation>Volet gauche, second revêtement</translation>
    </message>
    <message>
        <source>Left flap, shells bonded</source>
        <translation>Volet gauche, coques collées</translation>
    </message>
    <message>
        <source>Left flap, skins closed</source>
        <translation>Volet gauche, revêtement fermé</translation>
    </message>
    <message>
        <source>Left fuel tank</source>
        <translation>Réservoir gauche</translation>
    </message>
    <message>
        <source>Left fuel tank bay</source>
        <translation>Caisson de réservoir gauche</translation>
    </message>
    <message>
        <source>Left fuel tank bay, closed</source>
        <translation>Caisson de réservoir gauche, fermé</translation>
    </message>
    <message>
        <source>Left fuel tank, last baffle and skin</source>
        <translation>Réservoir gauche, dernière cloison et peau</translation>
    </message>
    <message>
        <source>Left fuel tank, last seam</source>
        <translation>Réservoir gauche, dernière couture</translation>
    </message>
    <message>
        <source>Left hard points and root fittings</source>
        <translation>Points durs et ferrures d’emplanture, aile gauche</translation>
    </message>
    <message>
        <source>Left leading edge</source>
        <translation>Bord d’attaque, aile gauche</translation>
    </message>
    <message>
        <source>Left leading-edge box</source>
        <translation>Caisson de bord d’attaque, aile gauche</translation>
    </message>
    <message>
        <source>Left main leg, wheel and brake</source>
        <translation>Jambe, roue et frein principaux, côté gauche</translation>
    </message>
    <message>
        <source>Left root and strut fittings</source>
        <translation>Ferrures d’emplanture et de mât, aile gauche</translation>
    </message>
    <message>
        <source>Left strut and root fittings</source>
        <translation>Ferrures de mât et d’emplanture, aile gauche</translation>
    </message>
    <message>
        <source>Left tank fittings</source>
        <translation>Raccords du réservoir gauche</translation>
    </message>
    <message>
        <source>Left wing</source>
        <translation>Aile gauche</translation>
    </message>
    <message>
        <source>Left wing control runs</source>
        <translation>Commandes, aile gauche</translation>
    </message>
    <message>
        <source>Left wing control runs and bellcrank</source>
        <translation>Commandes et renvoi, aile gauche</translation>
    </message>
    <message>
        <source>Left wing fittings</source>
        <translation>Ferrures, aile gauche</translation>
    </message>
    <message>
        <source>Left wing ribs</source>
        <translation>Nervures, aile gauche</translation>
    </message>
    <message>
        <source>Left wing skins</source>
        <translation>Revêtement, aile gauche</translation>
    </message>
    <message>
        <source>Left wing spar and shear web</source>
        <translation>Longeron et âme, aile gauche</translation>
    </message>
    <message>
        <source>Left wing spar box</source>
        <translation>Caisson de longeron, aile gauche</translation>
    </message>
    <message>
        <source>Left wing spar, second web</source>
        <translation>Longeron d’aile gauche, seconde âme</translation>
    </message>
    <message>
        <source>Left wing spars</source>
        <translation>Longerons, aile gauche</translation>
    </message>
    <message>
        <source>Left wing struts</source>
        <translation>Mâts, aile gauche</translation>
    </message>
    <message>
        <source>Left wing tip</source>
        <translation>Saumon, aile gauche</translation>
    </message>
    <message>
        <source>Left wing wiring and pitot line</source>
        <translation>Câblage et ligne pitot, aile gauche</translation>
    </message>
    <message>
        <source>Left wing wiring, antennas and pitot line</source>
        <translation>Câblage, antennes et ligne pitot, aile gauche</translation>
    </message>
    <message>
        <source>Left wing wiring, pitot and lights</source>
        <translation>Câblage, pitot et feux, aile gauche</translation>
    </message>
    <message>
        <source>Left wing, covered</source>
        <translation>Aile gauche, entoilée</translation>
    </message>
    <message>
        <source>Left wing, last plywood skin</source>
        <translation>Aile gauche, dernier revêtement de contreplaqué</translation>
    </message>
    <message>
        <source>Left wing, leading-edge skin</source>
        <translation>Aile gauche, revêtement de bord d’attaque</translation>
    </message>
    <message>
        <source>Left wing, lower shell</source>
        <translation>Aile gauche, coque inférieure</translation>
    </message>
    <message>
        <source>Left wing, lower skin</source>
        <translation>Aile gauche, revêtement inférieur</translation>
    </message>
    <message>
        <source>Left wing, shells bonded</source>
        <translation>Aile gauche, coques collées</translation>
    </message>
    <message>
        <source>Left wing, upper shell</source>
        <translation>Aile gauche, coque supérieure</translation>
    </message>
    <message>
        <source>Left wing, upper skin</source>
        <translation>Aile gauche, revêtement supérieur</translation>
    </message>
    <message>
        <source>Longerons and frames</source>
        <translation>Longerons et couples</translation>
    </message>
    <message>
        <source>Main wiring</source>
        <translation>Câblage principal</translation>
    </message>
    <message>
        <source>Metal, high wing</source>
        <translation>Métal, aile haute</translation>
    </message>
    <message>
        <source>Metal, low wing</source>
        <translation>Métal, aile basse</translation>
    </message>
    <message>
        <source>No cable touches fabric, frame or stringer through its whole travel</source>
        <translation>Aucun câble ne touche toile, cadre ou lisse sur toute sa course</translation>
    </message>
    <message>
        <source>Nose leg and wheel</source>
        <translation>Jambe et roue avant</translation>
    </message>
    <message>
        <source>Propeller</source>
        <translation>Hélice</translation>
    </message>
    <message>
        <source>Rear cables, pulleys and trim</source>
        <translation>Câbles, poulies et compensation arrière</translation>
    </message>
    <message>
        <source>Rear control runs</source>
        <translation>Commandes arrière</translation>
    </message>
    <message>
        <source>Rear fuselage</source>
        <translation>Fuselage arrière</translation>
    </message>
    <message>
        <source>Rear fuselage, last plywood skin</source>
        <translation>Fuselage arrière, dernier revêtement de contreplaqué</translation>
    </message>
    <message>
        <source>Rear fuselage, shells bonded</source>
        <translation>Fuselage arrière, coques collées</translation>
    </message>
    <message>
        <source>Rear fuselage, top skin</source>
        <translation>Fuselage arrière, revêtement supérieur</translation>
    </message>
    <message>
        <source>Rear wiring and antennas</source>
        <translation>Câblage et antennes arrière</translation>
    </message>
    <message>
        <source>Rear wiring and static line</source>
        <translation>Câblage et ligne statique arrière</translation>
    </message>
    <message>
        <source>Rear wiring, antennas and static line</source>
        <translation>Câblage, antennes et ligne statique arrière</translation>
    </message>
    <message>
        <source>Right aileron</source>
        <translation>Aileron droit</translation>
    </message>
    <message>
        <source>Right aileron balance weight</source>
        <translation>Masse d’équilibrage, aileron droit</translation>
    </message>
    <message>
        <source>Right aileron cables and pulleys</source>
        <translation>Câbles et poulies, aileron droit</translation>
    </message>
    <message>
        <source>Right aileron frame and hinges</source>
        <translation>Cadre et charnières, aileron droit</translation>
    </message>
    <message>
        <source>Right aileron hinges and balance weight</source>
        <translation>Charnières et masse d’équilibrage, aileron droit</translation>
    </message>
    <message>
        <source>Right aileron spar and hinge blocks</source>
        <translation>Longeron et cales de charnière, aileron droit</translation>
    </message>
    <message>
        <source>Right aileron spar and hinge brackets</source>
        <translation>Longeron et ferrures de charnière, aileron droit</translation>
    </message>
    <message>
        <source>Right aileron, covered</source>
        <translation>Aileron droit, entoilé</translation>
    </message>
    <message>
        <source>Right aileron, second skin</source>
        <translation>Aileron droit, second revêtement</translation>
    </message>
    <message>
        <source>Right aileron, shells bonded</source>
        <translation>Aileron droit, coques collées</translation>
    </message>
    <message>
        <source>Right aileron, skins closed</source>
        <translation>Aileron droit, revêtement fermé</translation>
    </message>
    <message>
        <source>Right drag wires and compression struts</source>
        <translation>Haubans intérieurs et entretoises, aile droite</translation>
    </message>
    <message>
        <source>Right flap</source>
        <translation>Volet droit</translation>
    </message>
    <message>
        <source>Right flap hinges and drive</source>
        <translation>Charnières et commande, volet droit</translation>
    </message>
    <message>
        <source>Right flap spar and hinge blocks</source>
        <translation>Longeron et cales de charnière, volet droit</translation>
    </message>
    <message>
        <source>Right flap spar and horn</source>
        <translation>Longeron et guignol, volet droit</translation>
    </message>
    <message>
        <source>Right flap, second skin</source>
        <translation>Volet droit, second revêtement</translation>
    </message>
    <message>
        <source>Right flap, shells bonded</source>
        <translation>Volet droit, coques collées</translation>
    </message>
    <message>
        <source>Right flap, skins closed</source>
        <translation>Volet droit, revêtement fermé</translation>
    </message>
    <message>
        <source>Right fuel tank</source>
        <translation>Réservoir droit</translation>
    </message>
    <message>
        <source>Right fuel tank bay</source>
        <translation>Caisson de réservoir droit</translation>
    </message>
    <message>
        <source>Right fuel tank bay, closed</source>
        <translation>Caisson de réservoir droit, fermé</translation>
    </message>
    <message>
        <source>Right fuel tank, last baffle and skin</source>
        <translation>Réservoir droit, dernière cloison et peau</translation>
    </message>
    <message>
        <source>Right fuel tank, last seam</source>
        <translation>Réservoir droit, dernière couture</translation>
    </message>
    <message>
        <source>Right hard points and root fittings</source>
        <translation>Points durs et ferrures d’emplanture, aile droite</translation>
    </message>
    <message>
        <source>Right leading edge</source>
        <translation>Bord d’attaque, aile droite</translation>
    </message>
    <message>
        <source>Right leading-edge box</source>
        <translation>Caisson de bord d’attaque, aile droite</translation>
    </message>
    <message>
        <source>Right main leg, wheel and brake</source>
        <translation>Jambe, roue et frein principaux, côté droit</translation>
    </message>
    <message>
        <source>Right root and strut fittings</source>
        <translation>Ferrures d’emplanture et de mât, aile droite</translation>
    </message>
    <message>
        <source>Right strut and root fittings</source>
        <translation>Ferrures de mât et d’emplanture, aile droite</translation>
    </message>
    <message>
        <source>Right tank fittings</source>
        <translation>Raccords du réservoir droit</translation>
    </message>
    <message>
        <source>Right wing</source>
        <translation>Aile droite</translation>
    </message>
    <message>
        <source>Right wing control runs</source>
        <translation>Commandes, aile droite</translation>
    </message>
    <message>
        <source>Right wing control runs and bellcrank</source>
        <translation>Commandes et renvoi, aile droite</translation>
    </message>
    <message>
        <source>Right wing fittings</source>
        <translation>Ferrures, aile droite</translation>
    </message>
    <message>
        <source>Right wing ribs</source>
        <translation>Nervures, aile droite</translation>
    </message>
    <message>
        <source>Right wing skins</source>
        <translation>Revêtement, aile droite</translation>
    </message>
    <message>
        <source>Right wing spar and shear web</source>
        <translation>Longeron et âme, aile droite</translation>
    </message>
    <message>
        <source>Right wing spar box</source>
        <translation>Caisson de longeron, aile droite</translation>
    </message>
    <message>
        <source>Right wing spar, second web</source>
        <translation>Longeron d’aile droite, seconde âme</translation>
    </message>
    <message>
        <source>Right wing spars</source>
        <translation>Longerons, aile droite</translation>
    </message>
    <message>
        <source>Right wing struts</source>
        <translation>Mâts, aile droite</translation>
    </message>
    <message>
        <source>Right wing tip</source>
        <translation>Saumon, aile droite</translation>
    </message>
    <message>
        <source>Right wing wiring and pitot line</source>
        <translation>Câblage et ligne pitot, aile droite</translation>
    </message>
    <message>
        <source>Right wing wiring, antennas and pitot line</source>
        <translation>Câblage, antennes et ligne pitot, aile droite</translation>
    </message>
    <message>
        <source>Right wing wiring, pitot and lights</source>
        <translation>Câblage, pitot et feux, aile droite</translation>
    </message>
    <message>
        <source>Right wing, covered</source>
        <translation>Aile droite, entoilée</translation>
    </message>
    <message>
        <source>Right wing, last plywood skin</source>
        <translation>Aile droite, dernier revêtement de contreplaqué</translation>
    </message>
    <message>
        <source>Right wing, leading-edge skin</source>
        <translation>Aile droite, revêtement de bord d’attaque</translation>
    </message>
    <message>
        <source>Right wing, lower shell</source>
        <translation>Aile droite, coque inférieure</translation>
    </message>
    <message>
        <source>Right wing, lower skin</source>
        <translation>Aile droite, revêtement inférieur</translation>
    </message>
    <message>
        <source>Right wing, shells bonded</source>
        <translation>Aile droite, coques collées</translation>
    </message>
    <message>
        <source>Right wing, upper shell</source>
        <translation>Aile droite, coque supérieure</translation>
    </message>
    <message>
        <source>Right wing, upper skin</source>
        <translation>Aile droite, revêtement supérieur</translation>
    </message>
    <message>
        <source>Rivet shanks and shop heads along the spar were looked at with a mirror</source>
        <translation>Tiges et têtes formées des rivets le long du longeron ont été regardées au miroir</translation>
    </message>
    <message>
        <source>Rudder</source>
        <translation>Gouverne de direction</translation>
    </message>
    <message>
        <source>Rudder frame and horn</source>
        <translation>Cadre et guignol de direction</translation>
    </message>
    <message>
        <source>Rudder hinges and horn</source>
        <translation>Charnières et guignol de direction</translation>
    </message>
    <message>
        <source>Rudder spar and horn</source>
        <translation>Longeron et guignol de direction</translation>
    </message>
    <message>
        <source>Rudder spar, ribs and horn</source>
        <translation>Longeron, nervures et guignol de direction</translation>
    </message>
    <message>
        <source>Rudder, covered</source>
        <translation>Direction, entoilée</translation>
    </message>
    <message>
        <source>Rudder, second skin</source>
        <translation>Direction, second revêtement</translation>
    </message>
    <message>
        <source>Rudder, shells bonded</source>
        <translation>Direction, coques collées</translation>
    </message>
    <message>
        <source>Rudder, skins closed</source>
        <translation>Direction, revêtement fermé</translation>
    </message>
    <message>
        <source>Seats and harness attachments</source>
        <translation>Sièges et attaches des harnais</translation>
    </message>
    <message>
        <source>Stabiliser</source>
        <translation>Plan fixe</translation>
    </message>
    <message>
        <source>Stabiliser frame and fittings</source>
        <translation>Cadre et ferrures du plan fixe</translation>
    </message>
    <message>
        <source>Stabiliser ribs</source>
        <translation>Nervures du plan fixe</translation>
    </message>
    <message>
        <source>Stabiliser spar and hard points</source>
        <translation>Longeron et points durs du plan fixe</translation>
    </message>
    <message>
        <source>Stabiliser spars</source>
        <translation>Longerons du plan fixe</translation>
    </message>
    <message>
        <source>Stabiliser spars and ribs</source>
        <translation>Longerons et nervures du plan fixe</translation>
    </message>
    <message>
        <source>Stabiliser, covered</source>
        <translation>Plan fixe, entoilé</translation>
    </message>
    <message>
        <source>Stabiliser, second skin</source>
        <translation>Plan fixe, second revêtement</translation>
    </message>
    <message>
        <source>Stabiliser, shells bonded</source>
        <translation>Plan fixe, coques collées</translation>
    </message>
    <message>
        <source>Static line and antenna cables are tied and leave no loop in the way of a control</source>
        <translation>Ligne statique et câbles d’antenne sont attachés et ne laissent pas de boucle sur le passage d’une commande</translation>
    </message>
    <message>
        <source>Steel tube and fabric</source>
        <translation>Tube d’acier et toile</translation>
    </message>
    <message>
        <source>Stick, pedals and brakes</source>
        <translation>Manche, palonniers et freins</translation>
    </message>
    <message>
        <source>Stick, pedals and trim</source>
        <translation>Manche, palonniers et compensation</translation>
    </message>
    <message>
        <source>Stringers and formers</source>
        <translation>Lisses et couples de forme</translation>
    </message>
    <message>
        <source>Tail wheel</source>
        <translation>Roulette de queue</translation>
    </message>
    <message>
        <source>The bond can be reached for the tap test</source>
        <translation>Le collage est accessible pour l’essai au tintement</translation>
    </message>
    <message>
        <source>The sealing coat is complete and cured, and was made for the fuel that will be used</source>
        <translation>L’enduit d’étanchéité est complet, durci, et prévu pour le carburant qui sera utilisé</translation>
    </message>
    <message>
        <source>The tank was leak tested before it went into the wing</source>
        <translation>L’étanchéité du réservoir a été essayée avant sa pose dans l’aile</translation>
    </message>
    <message>
        <source>Trim tab</source>
        <translation>Compensateur</translation>
    </message>
    <message>
        <source>Trim tab, skins closed</source>
        <translation>Compensateur, revêtement fermé</translation>
    </message>
    <message>
        <source>Undercarriage</source>
        <translation>Train d’atterrissage</translation>
    </message>
    <message>
        <source>Weight and balance is done with the aircraft as it will fly</source>
        <translation>La pesée est faite avec l’aéronef tel qu’il volera</translation>
    </message>
    <message>
        <source>Welded frame</source>
        <translation>Structure soudée</translation>
    </message>
    <message>
        <source>Wing and strut attachments</source>
        <translation>Attaches des ailes et des mâts</translation>
    </message>
    <message>
        <source>Wing carry-through</source>
        <translation>Traversée de voilure</translation>
    </message>
    <message>
        <source>Wing is square: diagonals are measured and on record</source>
        <translation>L’aile est d’équerre&#xa0;: les diagonales sont mesurées et notées</translation>
    </message>
    <message>
        <source>Wood</source>
        <translation>Bois</translation>
    </message>
    <message>
        <source>fabric, glued and laced</source>
        <translation>toile, collée et lardée</translation>
    </message>
    <message>
        <source>glue, with nails or clamps until cured</source>
        <translation>colle, avec pointes ou serre-joints jusqu’au durcissement</translation>
    </message>
    <message>
        <source>oil or primer, then closed by weld or screw</source>
        <translation>huile ou apprêt, puis fermé par soudure ou vis</translation>
    </message>
    <message>
        <source>rivets</source>
        <translation>rivets</translation>
    </message>
    <message>
        <source>sealant and rivets</source>
        <translation>mastic et rivets</translation>
    </message>
    <message>
        <source>structural adhesive</source>
        <translation>adhésif structural</translation>
    </message>
    <message>
        <source>welded or riveted and sealed</source>
        <translation>soudé, ou riveté et étanché</translation>
    </message>
    <message>
        <source>Aeroplane with engine</source>
        <translation>Avion à moteur</translation>
    </message>
    <message>
        <source>Ailerons and flaps</source>
        <translation>Ailerons et volets</translation>
    </message>
    <message>
        <source>Airbrake, flap and trim controls</source>
        <translation>Commandes d’aérofreins, de volets et de compensation</translation>
    </message>
    <message>
        <source>Airbrakes</source>
        <translation>Aérofreins</translation>
    </message>
    <message>
        <source>Attachment and automatic connections</source>
        <translation>Fixation et raccords automatiques</translation>
    </message>
    <message>
        <source>Attachment and rigging of the tail</source>
        <translation>Fixation et réglage de l’empennage</translation>
    </message>
    <message>
        <source>Balance</source>
        <translation>Équilibrage</translation>
    </message>
    <message>
        <source>Balance and tracking</source>
        <translation>Équilibrage et alignement</translation>
    </message>
    <message>
        <source>Balance of the surfaces</source>
        <translation>Équilibrage des gouvernes</translation>
    </message>
    <message>
        <source>Balloon or airship</source>
        <translation>Ballon ou dirigeable</translation>
    </message>
    <message>
        <source>Basket or car</source>
        <translation>Nacelle</translation>
    </message>
    <message>
        <source>Basket or car and floor</source>
        <translation>Nacelle et plancher</translation>
    </message>
    <message>
        <source>Burner frame</source>
        <translation>Cadre de brûleur</translation>
    </message>
    <message>
        <source>Burner or propulsion</source>
        <translation>Brûleur ou propulsion</translation>
    </message>
    <message>
        <source>Burner, valves and hoses</source>
        <translation>Brûleur, vannes et tuyaux</translation>
    </message>
    <message>
        <source>Cabin, skins and fairings</source>
        <translation>Cabine, revêtements et carénages</translation>
    </message>
    <message>
        <source>Cables, tubes, pulleys and bellcranks</source>
        <translation>Câbles, tubes, poulies et renvois</translation>
    </message>
    <message>
        <source>Canopy and frame</source>
        <translation>Verrière et cadre</translation>
    </message>
    <message>
        <source>Clutch, or pre-rotator</source>
        <translation>Embrayage ou prélanceur</translation>
    </message>
    <message>
        <source>Cockpit, seat and harness points</source>
        <translation>Habitacle, siège et points d’ancrage</translation>
    </message>
    <message>
        <source>Column or stick, and pedals</source>
        <translation>Manche ou volant, et palonnier</translation>
    </message>
    <message>
        <source>Control run in the wing</source>
        <translation>Commandes dans l’aile</translation>
    </message>
    <message>
        <source>Cooling and cowling</source>
        <translation>Refroidissement et capot</translation>
    </message>
    <message>
        <source>Corrosion protection</source>
        <translation>Protection contre la corrosion</translation>
    </message>
    <message>
        <source>Cutting of the panels</source>
        <translation>Coupe des panneaux</translation>
    </message>
    <message>
        <source>Doors, canopy and windows</source>
        <translation>Portes, verrière et fenêtres</translation>
    </message>
    <message>
        <source>Drive</source>
        <translation>Transmission</translation>
    </message>
    <message>
        <source>Electrical system</source>
        <translation>Circuit électrique</translation>
    </message>
    <message>
        <source>Electrical system and radio</source>
        <translation>Circuit électrique et radio</translation>
    </message>
    <message>
        <source>Engine</source>
        <translation>Moteur</translation>
    </message>
    <message>
        <source>Engine and propeller</source>
        <translation>Moteur et hélice</translation>
    </message>
    <message>
        <source>Engine and propeller, where there are any</source>
        <translation>Moteur et hélice, s’il y en a</translation>
    </message>
    <message>
        <source>Engine controls</source>
        <translation>Commandes moteur</translation>
    </message>
    <message>
        <source>Engine controls and fuel system</source>
        <translation>Commandes moteur et circuit de carburant</translation>
    </message>
    <message>
        <source>Engine controls and governor</source>
        <translation>Commandes moteur et régulateur</translation>
    </message>
    <message>
        <source>Engine, where there is one</source>
        <translation>Moteur, s’il y en a un</translation>
    </message>
    <message>
        <source>Envelope</source>
        <translation>Enveloppe</translation>
    </message>
    <message>
        <source>Exhaust</source>
        <translation>Échappement</translation>
    </message>
    <message>
        <source>Exhaust and cabin heat</source>
        <translation>Échappement et chauffage cabine</translation>
    </message>
    <message>
        <source>Fairings</source>
        <translation>Carénages</translation>
    </message>
    <message>
        <source>Filling and painting</source>
        <translation>Enduit et peinture</translation>
    </message>
    <message>
        <source>Fin and stabiliser</source>
        <translation>Dérive et plan fixe</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Finition</translation>
    </message>
    <message>
        <source>Fitting of engine and propeller</source>
        <translation>Montage du moteur et de l’hélice</translation>
    </message>
    <message>
        <source>Fitting of the engine</source>
        <translation>Montage du moteur</translation>
    </message>
    <message>
        <source>Fitting of the propeller and spinner</source>
        <translation>Montage de l’hélice et du cône</translation>
    </message>
    <message>
        <source>Flight controls</source>
        <translation>Commandes de vol</translation>
    </message>
    <message>
        <source>Floors and inside panels</source>
        <translation>Planchers et garnitures</translation>
    </message>
    <message>
        <source>Frame and attachment</source>
        <translation>Cadre et fixation</translation>
    </message>
    <message>
        <source>Frame or keel</source>
        <translation>Cadre ou quille</translation>
    </message>
    <message>
        <source>Frames, shells or longerons</source>
        <translation>Cadres, coques ou longerons</translation>
    </message>
    <message>
        <source>Fuel lines, valves and filters</source>
        <translation>Conduites, robinets et filtres de carburant</translation>
    </message>
    <message>
        <source>Fuel tanks and their attachment</source>
        <translation>Réservoirs et leur fixation</translation>
    </message>
    <message>
        <source>Fuel tanks in the wing</source>
        <translation>Réservoirs dans l’aile</translation>
    </message>
    <message>
        <source>Fuel tanks outside the wing</source>
        <translation>Réservoirs hors de l’aile</translation>
    </message>
    <message>
        <source>Fuel tanks, lines and valves</source>
        <translation>Réservoirs, conduites et robinets</translation>
    </message>
    <message>
        <source>Gearboxes and belts</source>
        <translation>Boîtes de transmission et courroies</translation>
    </message>
    <message>
        <source>Glider, with or without engine</source>
        <translation>Planeur, avec ou sans moteur</translation>
    </message>
    <message>
        <source>Helicopter or gyroplane</source>
        <translation>Hélicoptère ou autogire</translation>
    </message>
    <message>
        <source>Hinges and balance</source>
        <translation>Charnières et équilibrage</translation>
    </message>
    <message>
        <source>Hinges and brackets</source>
        <translation>Charnières et ferrures</translation>
    </message>
    <message>
        <source>Induction and cooling, baffles</source>
        <translation>Admission et refroidissement, déflecteurs</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Instruments</translation>
    </message>
    <message>
        <source>Instruments and finish</source>
        <translation>Instruments et finition</translation>
    </message>
    <message>
        <source>Joining of the fuselage&apos;s parts</source>
        <translation>Assemblage des éléments du fuselage</translation>
    </message>
    <message>
        <source>Landing gear</source>
        <translation>Train d’atterrissage</translation>
    </message>
    <message>
        <source>Leading edges</source>
        <translation>Bords d’attaque</translation>
    </message>
    <message>
        <source>Legs, struts and attachment</source>
        <translation>Jambes, contrefiches et fixation</translation>
    </message>
    <message>
        <source>Lines, pulleys and crown ring</source>
        <translation>Cordes, poulies et couronne</translation>
    </message>
    <message>
        <source>Longerons, frames and bulkheads</source>
        <translation>Longerons, cadres et cloisons</translation>
    </message>
    <message>
        <source>Main rotor blades</source>
        <translation>Pales du rotor principal</translation>
    </message>
    <message>
        <source>Main rotor head and mast</source>
        <translation>Moyeu du rotor principal et mât</translation>
    </message>
    <message>
        <source>Main wheel, legs and brake</source>
        <translation>Roue principale, jambes et frein</translation>
    </message>
    <message>
        <source>Mount or pylon</source>
        <translation>Bâti ou pylône</translation>
    </message>
    <message>
        <source>Nose or tail wheel and steering</source>
        <translation>Roue avant ou roulette et direction</translation>
    </message>
    <message>
        <source>Oxygen, vacuum and other systems</source>
        <translation>Oxygène, dépression et autres circuits</translation>
    </message>
    <message>
        <source>Padding and equipment</source>
        <translation>Rembourrage et équipement</translation>
    </message>
    <message>
        <source>Parachute or other vents</source>
        <translation>Parachute ou autres évents</translation>
    </message>
    <message>
        <source>Pitot and static lines</source>
        <translation>Circuits pitot et statique</translation>
    </message>
    <message>
        <source>Placards and markings</source>
        <translation>Plaquettes et marquages</translation>
    </message>
    <message>
        <source>Propeller, where there is one</source>
        <translation>Hélice, s’il y en a une</translation>
    </message>
    <message>
        <source>Radios and antennas</source>
        <translation>Radios et antennes</translation>
    </message>
    <message>
        <source>Retraction</source>
        <translation>Rétraction</translation>
    </message>
    <message>
        <source>Ribs</source>
        <translation>Nervures</translation>
    </message>
    <message>
        <source>Ribs or cores</source>
        <translation>Nervures ou noyaux</translation>
    </message>
    <message>
        <source>Rigging of wings to fuselage</source>
        <translation>Montage et réglage des ailes</translation>
    </message>
    <message>
        <source>Rigging, travel and stops</source>
        <translation>Réglage, débattements et butées</translation>
    </message>
    <message>
        <source>Root fittings and main pins</source>
        <translation>Ferrures d’emplanture et axes principaux</translation>
    </message>
    <message>
        <source>Rotor brake</source>
        <translation>Frein de rotor</translation>
    </message>
    <message>
        <source>Rotors</source>
        <translation>Rotors</translation>
    </message>
    <message>
        <source>Rudder and elevator</source>
        <translation>Direction et profondeur</translation>
    </message>
    <message>
        <source>Scoop and suspension</source>
        <translation>Jupe et suspension</translation>
    </message>
    <message>
        <source>Seams and load tapes</source>
        <translation>Coutures et sangles</translation>
    </message>
    <message>
        <source>Seats and harness points</source>
        <translation>Sièges et points d’ancrage</translation>
    </message>
    <message>
        <source>Shafts and couplings</source>
        <translation>Arbres et accouplements</translation>
    </message>
    <message>
        <source>Skids or legs</source>
        <translation>Patins ou jambes</translation>
    </message>
    <message>
        <source>Skins or covering</source>
        <translation>Revêtement ou entoilage</translation>
    </message>
    <message>
        <source>Skins or covering frame</source>
        <translation>Revêtement ou ossature d’entoilage</translation>
    </message>
    <message>
        <source>Skins or covering of fin and stabiliser</source>
        <translation>Revêtement ou entoilage de la dérive et du plan fixe</translation>
    </message>
    <message>
        <source>Skins or covering of rudder and elevator</source>
        <translation>Revêtement ou entoilage de la direction et de la profondeur</translation>
    </message>
    <message>
        <source>Spars</source>
        <translation>Longerons d’aile</translation>
    </message>
    <message>
        <source>Spars and ribs</source>
        <translation>Longerons et nervures</translation>
    </message>
    <message>
        <source>Spars and ribs of fin and stabiliser</source>
        <translation>Longerons et nervures de la dérive et du plan fixe</translation>
    </message>
    <message>
        <source>Spars and ribs of rudder and elevator</source>
        <translation>Longerons et nervures de la direction et de la profondeur</translation>
    </message>
    <message>
        <source>Spars, ribs or cores</source>
        <translation>Longerons, nervures ou noyaux</translation>
    </message>
    <message>
        <source>Stabilisers</source>
        <translation>Stabilisateurs</translation>
    </message>
    <message>
        <source>Steering and fins</source>
        <translation>Direction et dérives</translation>
    </message>
    <message>
        <source>Stick and pedals</source>
        <translation>Manche et palonnier</translation>
    </message>
    <message>
        <source>Stick, collective and pedals</source>
        <translation>Manche, pas collectif et palonnier</translation>
    </message>
    <message>
        <source>Struts and attachment fittings</source>
        <translation>Mâts et ferrures de fixation</translation>
    </message>
    <message>
        <source>Swashplate or head controls</source>
        <translation>Plateau cyclique ou commande de tête</translation>
    </message>
    <message>
        <source>Systems</source>
        <translation>Circuits</translation>
    </message>
    <message>
        <source>Systems and finish</source>
        <translation>Circuits et finition</translation>
    </message>
    <message>
        <source>Tail</source>
        <translation>Empennage</translation>
    </message>
    <message>
        <source>Tail boom</source>
        <translation>Poutre de queue</translation>
    </message>
    <message>
        <source>Tail rotor or rudder</source>
        <translation>Rotor de queue ou gouverne de direction</translation>
    </message>
    <message>
        <source>Tail wheel or skid</source>
        <translation>Roulette ou patin de queue</translation>
    </message>
    <message>
        <source>Towing hooks</source>
        <translation>Crochets de remorquage</translation>
    </message>
    <message>
        <source>Trim</source>
        <translation>Compensation</translation>
    </message>
    <message>
        <source>Trim and flap controls</source>
        <translation>Commandes de compensation et de volets</translation>
    </message>
    <message>
        <source>Trim tabs</source>
        <translation>Compensateurs</translation>
    </message>
    <message>
        <source>Tubes, cables and bellcranks</source>
        <translation>Tubes, câbles et renvois</translation>
    </message>
    <message>
        <source>Upholstery</source>
        <translation>Sellerie</translation>
    </message>
    <message>
        <source>Water ballast</source>
        <translation>Ballast d’eau</translation>
    </message>
    <message>
        <source>Wheels, brakes and brake lines</source>
        <translation>Roues, freins et conduites de frein</translation>
    </message>
    <message>
        <source>Wheels, brakes and steering</source>
        <translation>Roues, freins et direction</translation>
    </message>
    <message>
        <source>Wing tips</source>
        <translation>Saumons d’aile</translation>
    </message>
    <message>
        <source>Wings</source>
        <translation>Ailes</translation>
    </message>
    <message>
        <source>Wiring and lights in the wing</source>
        <translation>Câblage et feux dans l’aile</translation>
    </message>
    <message>
        <source>centre fuselage</source>
        <translation>fuselage central</translation>
    </message>
    <message>
        <source>cockpit</source>
        <translation>habitacle</translation>
    </message>
    <message>
        <source>elevator</source>
        <translation>gouverne de profondeur</translation>
    </message>
    <message>
        <source>engine bay</source>
        <translation>compartiment moteur</translation>
    </message>
    <message>
        <source>fin</source>
        <translation>dérive</translation>
    </message>
    <message>
        <source>left aileron</source>
        <translation>aileron gauche</translation>
    </message>
    <message>
        <source>left flap</source>
        <translation>volet gauche</translation>
    </message>
    <message>
        <source>left main wheel</source>
        <translation>train principal gauche</translation>
    </message>
    <message>
        <source>left tank</source>
        <translation>réservoir d’aile gauche</translation>
    </message>
    <message>
        <source>left wing</source>
        <translation>aile gauche</translation>
    </message>
    <message>
        <source>nose wheel</source>
        <translation>roue avant</translation>
    </message>
    <message>
        <source>rear fuselage</source>
        <translation>fuselage arrière</translation>
    </message>
    <message>
        <source>right aileron</source>
        <translation>aileron droit</translation>
    </message>
    <message>
        <source>right flap</source>
        <translation>volet droit</translation>
    </message>
    <message>
        <source>right main wheel</source>
        <translation>train principal droit</translation>
    </message>
    <message>
        <source>right tank</source>
        <translation>réservoir d’aile droit</translation>
    </message>
    <message>
        <source>right wing</source>
        <translation>aile droite</translation>
    </message>
    <message>
        <source>rudder</source>
        <translation>gouverne de direction</translation>
    </message>
    <message>
        <source>stabiliser</source>
        <translation>stabilisateur</translation>
    </message>
    <message>
        <source>tail wheel</source>
        <translation>roulette de queue</translation>
    </message>
</context>
<context>
    <name>State</name>
    <message>
        <source>not begun</source>
        <translation>pas commencée</translation>
    </message>
    <message>
        <source>stays open, waits for the adviser</source>
        <translation>reste ouverte, attend le conseiller</translation>
    </message>
</context>
<context>
    <name>StepMoves</name>
    <message numerus="yes">
        <source>%n steps moved</source>
        <translation>
            <numerusform>%Ln étape déplacée</numerusform>
            <numerusform>%Ln étapes déplacées</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 cannot come before %2, because it has to wait for it: %3.</source>
        <translation>%1 ne peut venir avant %2, car elle doit l’attendre&#xa0;: %3.</translation>
    </message>
    <message>
        <source>%1 comes after %2</source>
        <translation>%1 vient après %2</translation>
    </message>
    <message>
        <source>%1: moved</source>
        <translation>%1&#xa0;: déplacée</translation>
    </message>
    <message>
        <source>Steps change places within their part only.</source>
        <translation>Les étapes ne changent de place que dans leur pièce.</translation>
    </message>
</context>
<context>
    <name>StoreRows</name>
    <message>
        <source>%1 on %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>%1, due %2</source>
        <translation>%1, échéance %2</translation>
    </message>
    <message numerus="yes">
        <source>%n d late</source>
        <translation>
            <numerusform>%Ln jour de retard</numerusform>
            <numerusform>%Ln jours de retard</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n damaged</source>
        <translation>
            <numerusform>%Ln endommagée</numerusform>
            <numerusform>%Ln endommagées</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lines: %1.</source>
        <translation>
            <numerusform>%Ln ligne&#xa0;: %1.</numerusform>
            <numerusform>%Ln lignes&#xa0;: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n short</source>
        <translation>
            <numerusform>%Ln incomplète</numerusform>
            <numerusform>%Ln incomplètes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to count</source>
        <translation>
            <numerusform>%Ln à compter</numerusform>
            <numerusform>%Ln à compter</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>All %n lines are here as listed.</source>
        <translation>
            <numerusform>%Ln ligne est là comme sur la liste.</numerusform>
            <numerusform>Les %Ln lignes sont là comme sur la liste.</numerusform>
        </translation>
    </message>
    <message>
        <source>after expiry</source>
        <translation>après péremption</translation>
    </message>
    <message>
        <source>after expiry, accepted</source>
        <translation>après péremption, accepté</translation>
    </message>
    <message>
        <source>certificate on file</source>
        <translation>certificat classé</translation>
    </message>
    <message>
        <source>keeps open: %1</source>
        <translation>garde ouvert&#xa0;: %1</translation>
    </message>
    <message>
        <source>must stay open</source>
        <translation>doit rester ouverte</translation>
    </message>
    <message>
        <source>no certificate on file</source>
        <translation>pas de certificat classé</translation>
    </message>
    <message>
        <source>sample %1</source>
        <translation>éprouvette %1</translation>
    </message>
    <message>
        <source>step of %1</source>
        <translation>étape de %1</translation>
    </message>
    <message>
        <source>waits: %1</source>
        <translation>attend&#xa0;: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n of them late</source>
        <translation>
            <numerusform>dont %Ln en retard</numerusform>
            <numerusform>dont %Ln en retard</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>StoreTexts</name>
    <message>
        <source>on file</source>
        <translation>classé</translation>
    </message>
    <message>
        <source>%1 d %2 h</source>
        <translation>%1 j %2 h</translation>
    </message>
    <message>
        <source>%1 more than listed</source>
        <translation>%1 de plus que la liste</translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n uses out of calibration</source>
        <translation>
            <numerusform>%1 utilisation sur %Ln sans étalonnage valable</numerusform>
            <numerusform>%1 utilisations sur %Ln sans étalonnage valable</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2 after expiry</source>
        <translation>%1, dont %2 après péremption</translation>
    </message>
    <message>
        <source>%1, damaged %2</source>
        <translation>%1, endommagé %2</translation>
    </message>
    <message>
        <source>%1; keeps open: %2</source>
        <translation>%1&#xa0;; garde ouvert&#xa0;: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n days left</source>
        <translation>
            <numerusform>encore %Ln jour</numerusform>
            <numerusform>encore %Ln jours</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n times</source>
        <translation>
            <numerusform>%Ln fois</numerusform>
            <numerusform>%Ln fois</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n uses</source>
        <translation>
            <numerusform>%Ln utilisation</numerusform>
            <numerusform>%Ln utilisations</numerusform>
        </translation>
    </message>
    <message>
        <source>complete</source>
        <translation>complet</translation>
    </message>
    <message>
        <source>cure time not on record</source>
        <translation>durée de durcissement non notée</translation>
    </message>
    <message>
        <source>cured %1</source>
        <translation>durci le %1</translation>
    </message>
    <message>
        <source>cures until %1: %2 left</source>
        <translation>durcit jusqu’au %1&#xa0;: encore %2</translation>
    </message>
    <message>
        <source>damaged %1</source>
        <translation>endommagé %1</translation>
    </message>
    <message>
        <source>expected %1</source>
        <translation>attendu le %1</translation>
    </message>
    <message numerus="yes">
        <source>expired %n days ago</source>
        <translation>
            <numerusform>périmé depuis %Ln jour</numerusform>
            <numerusform>périmé depuis %Ln jours</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>late by %n days</source>
        <translation>
            <numerusform>%Ln jour de retard</numerusform>
            <numerusform>%Ln jours de retard</numerusform>
        </translation>
    </message>
    <message>
        <source>missing %1</source>
        <translation>manque %1</translation>
    </message>
    <message>
        <source>no calibration on record</source>
        <translation>aucun étalonnage noté</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>not counted yet</source>
        <translation>pas encore compté</translation>
    </message>
    <message>
        <source>not to be calibrated</source>
        <translation>sans étalonnage</translation>
    </message>
    <message numerus="yes">
        <source>overdue by %n days</source>
        <translation>
            <numerusform>dépassé de %Ln jour</numerusform>
            <numerusform>dépassé de %Ln jours</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Tasks</name>
    <message>
        <source>All records were written to %1.</source>
        <translation>Tous les dossiers ont été écrits dans %1.</translation>
    </message>
    <message>
        <source>Exporting records</source>
        <translation>Export des dossiers</translation>
    </message>
    <message>
        <source>Imported: %1 new records, %2 known before, %3 files.</source>
        <translation>Importé&#xa0;: %1 nouveaux enregistrements, %2 déjà connus, %3 fichiers.</translation>
    </message>
    <message>
        <source>Nothing was imported. %1</source>
        <translation>Rien n’a été importé. %1</translation>
    </message>
    <message>
        <source>Nothing was imported; %1 errors. The first: %2</source>
        <translation>Rien n’a été importé&#xa0;; %1 erreurs. La première&#xa0;: %2</translation>
    </message>
    <message>
        <source>Verified: %1 records, %2 journal rows and %3 files are as they should be.</source>
        <translation>Vérifié&#xa0;: %1 enregistrements, %2 lignes du registre et %3 fichiers sont comme il se doit.</translation>
    </message>
    <message>
        <source>Verifying records and files</source>
        <translation>Vérification des dossiers et des fichiers</translation>
    </message>
    <message>
        <source>Looked over: not everything is as it should be.</source>
        <translation>Vérifié&#xa0;: tout n’est pas comme il faut.</translation>
    </message>
    <message numerus="yes">
        <source>%1 was written without %n files that are not in the project; “Verify records and files” names them.</source>
        <translation>
            <numerusform>%1 a été écrit sans %Ln fichier qui manque au projet&#xa0;; «&#xa0;Vérifier dossiers et fichiers&#xa0;» le nomme.</numerusform>
            <numerusform>%1 a été écrit sans %Ln fichiers qui manquent au projet&#xa0;; «&#xa0;Vérifier dossiers et fichiers&#xa0;» les nomme.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 was written; %n files in it are no longer what was taken in; “Verify records and files” names them.</source>
        <translation>
            <numerusform>%1 a été écrit&#xa0;; %Ln fichier n’y est plus ce qui avait été pris&#xa0;; «&#xa0;Vérifier dossiers et fichiers&#xa0;» le nomme.</numerusform>
            <numerusform>%1 a été écrit&#xa0;; %Ln fichiers n’y sont plus ce qui avait été pris&#xa0;; «&#xa0;Vérifier dossiers et fichiers&#xa0;» les nomme.</numerusform>
        </translation>
    </message>
    <message>
        <source>The export was cancelled.</source>
        <translation>L’export a été annulé.</translation>
    </message>
    <message numerus="yes">
        <source>The whole project with %n files was written to %1.</source>
        <translation>
            <numerusform>Tout le projet avec %Ln fichier a été écrit dans %1.</numerusform>
            <numerusform>Tout le projet avec %Ln fichiers a été écrit dans %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Writing the whole project into one file</source>
        <translation>Écriture de tout le projet dans un seul fichier</translation>
    </message>
    <message numerus="yes">
        <source>%n files were not found; the first: %1.</source>
        <translation>
            <numerusform>%Ln fichier n’a pas été trouvé&#xa0;: %1.</numerusform>
            <numerusform>%Ln fichiers n’ont pas été trouvés&#xa0;; le premier&#xa0;: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n records speak of days more than a year ahead; the first: %1.</source>
        <translation>
            <numerusform>%Ln fiche parle de jours à plus d’un an d’ici&#xa0;: %1.</numerusform>
            <numerusform>%Ln fiches parlent de jours à plus d’un an d’ici&#xa0;; la première&#xa0;: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n files have no SHA-256 on record, so that nothing can be said of them.</source>
        <translation>
            <numerusform>%Ln fichier n’a pas de somme SHA-256 enregistrée, de sorte qu’on ne peut rien en dire.</numerusform>
            <numerusform>%Ln fichiers n’ont pas de somme SHA-256 enregistrée, de sorte qu’on ne peut rien en dire.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, number %2 in the file</source>
        <translation>%1, numéro %2 dans le fichier</translation>
    </message>
</context>
<context>
    <name>TodayRows</name>
    <message>
        <source>Running</source>
        <translation>En cours</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Démarrer</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>et %1 de plus</translation>
    </message>
    <message>
        <source>before %1 is closed</source>
        <translation>avant de fermer %1</translation>
    </message>
    <message>
        <source>needed for %1</source>
        <translation>nécessaire pour %1</translation>
    </message>
    <message>
        <source>needed for %1 and %2 more</source>
        <translation>nécessaire pour %1 et %2 de plus</translation>
    </message>
    <message numerus="yes">
        <source>%n closings are on record and none is begun. A closing comes onto this page with the first work that is logged on a part inside it.</source>
        <translation>
            <numerusform>%Ln fermeture est inscrite et pas commencée. Une fermeture vient sur cette page avec le premier travail inscrit sur une pièce à l’intérieur.</numerusform>
            <numerusform>%Ln fermetures sont inscrites et aucune n’est commencée. Une fermeture vient sur cette page avec le premier travail inscrit sur une pièce à l’intérieur.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lines of the inspector&apos;s list are not ticked</source>
        <translation>
            <numerusform>%Ln ligne de la liste de l’inspecteur n’est pas cochée</numerusform>
            <numerusform>%Ln lignes de la liste de l’inspecteur ne sont pas cochées</numerusform>
        </translation>
    </message>
    <message>
        <source>Ask</source>
        <translation>Demander</translation>
    </message>
    <message>
        <source>Count in</source>
        <translation>Compter</translation>
    </message>
    <message>
        <source>Decide</source>
        <translation>Décider</translation>
    </message>
    <message>
        <source>Fix</source>
        <translation>Corriger</translation>
    </message>
    <message>
        <source>No closing is recorded yet. A closing is the act after which a place can no longer be seen: riveting on a skin, bonding two halves, covering with fabric. Once it is written down, this page says what has to happen before it.</source>
        <translation>Aucune fermeture n’est encore inscrite. Une fermeture est l’acte après lequel un endroit ne se voit plus&#xa0;: riveter un revêtement, coller deux moitiés, entoiler. Une fois écrite, cette page dit ce qui doit se faire avant.</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Photo</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Lire</translation>
    </message>
    <message>
        <source>Sign</source>
        <translation>Signer</translation>
    </message>
    <message>
        <source>Tick</source>
        <translation>Cocher</translation>
    </message>
    <message>
        <source>Verify</source>
        <translation>Vérifier</translation>
    </message>
    <message>
        <source>on the page %1</source>
        <translation>à la page %1</translation>
    </message>
</context>
<context>
    <name>Told</name>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>Weighing</name>
    <message>
        <source>% MAC</source>
        <translation>% CMA</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>%1 at %2, %3 % MAC</source>
        <translation>%1 à %2, %3 % CMA</translation>
    </message>
    <message>
        <source>Arm</source>
        <translation>Bras de levier</translation>
    </message>
    <message>
        <source>Centre of gravity</source>
        <translation>Centre de gravité</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Compté</translation>
    </message>
    <message>
        <source>Empty aeroplane</source>
        <translation>Avion à vide</translation>
    </message>
    <message>
        <source>Farthest aft: %1</source>
        <translation>Le plus à l’arrière&#xa0;: %1</translation>
    </message>
    <message>
        <source>Farthest forward: %1</source>
        <translation>Le plus à l’avant&#xa0;: %1</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Limites</translation>
    </message>
    <message>
        <source>Loading</source>
        <translation>Chargement</translation>
    </message>
    <message>
        <source>Loading and limits</source>
        <translation>Chargement et limites</translation>
    </message>
    <message>
        <source>OUTSIDE the limits</source>
        <translation>HORS des limites</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>fitted since</source>
        <translation>monté depuis</translation>
    </message>
    <message>
        <source>in the sum</source>
        <translation>dans la somme</translation>
    </message>
    <message>
        <source>no limits on record</source>
        <translation>aucune limite enregistrée</translation>
    </message>
    <message>
        <source>not in the sum: weigh again, or enter equipment</source>
        <translation>pas dans la somme&#xa0;: peser de nouveau ou saisir l’équipement</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>non dit</translation>
    </message>
    <message>
        <source>removed since</source>
        <translation>démonté depuis</translation>
    </message>
    <message>
        <source>weighed with it</source>
        <translation>pesé avec</translation>
    </message>
    <message>
        <source>within the limits</source>
        <translation>dans les limites</translation>
    </message>
    <message>
        <source>fitted or removed since</source>
        <translation>monté ou démonté depuis</translation>
    </message>
    <message>
        <source>not in the sum: enter weight and arm</source>
        <translation>pas dans la somme&#xa0;: saisir masse et bras de levier</translation>
    </message>
    <message>
        <source>not weighed yet</source>
        <translation>pas encore pesé</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>This project is to read only: nothing can be written down.</source>
        <translation>Ce projet est en lecture seule&#xa0;: rien ne peut être inscrit.</translation>
    </message>
    <message>
        <source>%1: numbers converted</source>
        <translation>%1&#xa0;: nombres convertis</translation>
    </message>
    <message>
        <source>Convert the numbers</source>
        <translation>Convertir les nombres</translation>
    </message>
    <message>
        <source>The numbers have changed since that was asked.</source>
        <translation>Les nombres ont changé depuis que cela a été demandé.</translation>
    </message>
    <message>
        <source>The numbers stay as they were typed: %1 has become %2. If %1 was right, convert them, and it is %3.</source>
        <translation>Les nombres restent tels qu’ils ont été saisis&#xa0;: %1 est devenu %2. Si %1 était juste, convertissez-les, et ce sera %3.</translation>
    </message>
    <message>
        <source>Leave them as typed</source>
        <translation>Les laisser tels quels</translation>
    </message>
</context>
<context>
    <name>WithdrawAct</name>
    <message>
        <source>%1 records</source>
        <translation>%1 enregistrements</translation>
    </message>
    <message>
        <source>%1 will count nowhere any more; the journal keeps it.</source>
        <translation>%1 ne comptera plus nulle part&#xa0;; le registre le garde.</translation>
    </message>
    <message>
        <source>%1 withdrawn</source>
        <translation>%1 retiré</translation>
    </message>
    <message>
        <source>A withdrawal needs its reason.</source>
        <translation>Un retrait demande un motif.</translation>
    </message>
    <message>
        <source>These name it and are withdrawn with it: %1.</source>
        <translation>Ceux-ci le nomment et sont retirés avec lui&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>Withdraw all %1</source>
        <translation>Retirer les %1</translation>
    </message>
    <message>
        <source>These name it and stay, without it: %1.</source>
        <translation>Ceux-ci le nomment et restent, sans lui&#xa0;: %1.</translation>
    </message>
</context>
<context>
    <name>Word</name>
    <message>
        <source>accepted</source>
        <translation>accepté</translation>
    </message>
    <message>
        <source>accepted_with_findings</source>
        <translation>accepté avec constatations</translation>
    </message>
    <message>
        <source>adviser</source>
        <translation>conseiller</translation>
    </message>
    <message>
        <source>aircraft</source>
        <translation>avion</translation>
    </message>
    <message>
        <source>airworthiness</source>
        <translation>navigabilité</translation>
    </message>
    <message>
        <source>approved</source>
        <translation>approuvé</translation>
    </message>
    <message>
        <source>arrow</source>
        <translation>flèche</translation>
    </message>
    <message>
        <source>assembly</source>
        <translation>assemblage</translation>
    </message>
    <message>
        <source>automatic</source>
        <translation>automatique</translation>
    </message>
    <message>
        <source>builder</source>
        <translation>constructeur</translation>
    </message>
    <message>
        <source>builder_at_work</source>
        <translation>constructeur au travail</translation>
    </message>
    <message>
        <source>bulletin</source>
        <translation>bulletin</translation>
    </message>
    <message>
        <source>by_message</source>
        <translation>par message</translation>
    </message>
    <message>
        <source>by_photo</source>
        <translation>sur photo</translation>
    </message>
    <message>
        <source>by_video</source>
        <translation>sur vidéo</translation>
    </message>
    <message>
        <source>cabin</source>
        <translation>cabine</translation>
    </message>
    <message>
        <source>carried</source>
        <translation>repris</translation>
    </message>
    <message>
        <source>certificate_document</source>
        <translation>document de certification</translation>
    </message>
    <message>
        <source>change</source>
        <translation>modification</translation>
    </message>
    <message>
        <source>check</source>
        <translation>point de contrôle</translation>
    </message>
    <message>
        <source>circle</source>
        <translation>cercle</translation>
    </message>
    <message>
        <source>clear</source>
        <translation>libre</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>fermée</translation>
    </message>
    <message>
        <source>closed_early</source>
        <translation>fermée avec lacunes</translation>
    </message>
    <message>
        <source>closing</source>
        <translation>fermeture</translation>
    </message>
    <message>
        <source>commercial</source>
        <translation>aide commerciale</translation>
    </message>
    <message>
        <source>component</source>
        <translation>pièce</translation>
    </message>
    <message>
        <source>composite</source>
        <translation>composite</translation>
    </message>
    <message>
        <source>control_surface</source>
        <translation>gouverne</translation>
    </message>
    <message>
        <source>cosmetic</source>
        <translation>aspect</translation>
    </message>
    <message>
        <source>credit_basis</source>
        <translation>mode de compte de la majeure partie</translation>
    </message>
    <message>
        <source>credit_task</source>
        <translation>tâche de la majeure partie</translation>
    </message>
    <message>
        <source>defect</source>
        <translation>défaut</translation>
    </message>
    <message>
        <source>delete</source>
        <translation>supprimé</translation>
    </message>
    <message>
        <source>designer</source>
        <translation>concepteur</translation>
    </message>
    <message>
        <source>deviation</source>
        <translation>écart</translation>
    </message>
    <message>
        <source>directive</source>
        <translation>consigne</translation>
    </message>
    <message>
        <source>document</source>
        <translation>document</translation>
    </message>
    <message>
        <source>drawing_change</source>
        <translation>modification de plan</translation>
    </message>
    <message>
        <source>earlier_builder</source>
        <translation>constructeur précédent</translation>
    </message>
    <message>
        <source>electrical</source>
        <translation>électricité</translation>
    </message>
    <message>
        <source>engine_installation</source>
        <translation>installation du moteur</translation>
    </message>
    <message>
        <source>envelope</source>
        <translation>domaine de centrage</translation>
    </message>
    <message>
        <source>equipment</source>
        <translation>équipement</translation>
    </message>
    <message>
        <source>expected</source>
        <translation>attendu</translation>
    </message>
    <message>
        <source>expense</source>
        <translation>dépense</translation>
    </message>
    <message>
        <source>exterior</source>
        <translation>extérieur</translation>
    </message>
    <message>
        <source>fabric</source>
        <translation>entoilage</translation>
    </message>
    <message>
        <source>fabrication</source>
        <translation>fabrication</translation>
    </message>
    <message>
        <source>factory</source>
        <translation>usine</translation>
    </message>
    <message>
        <source>factory_closing_needs_document</source>
        <translation>la fermeture d’usine demande un document</translation>
    </message>
    <message>
        <source>failed</source>
        <translation>échoué</translation>
    </message>
    <message>
        <source>fastener</source>
        <translation>fixation</translation>
    </message>
    <message>
        <source>final</source>
        <translation>inspection finale</translation>
    </message>
    <message>
        <source>finishing</source>
        <translation>finition</translation>
    </message>
    <message>
        <source>flight</source>
        <translation>vol</translation>
    </message>
    <message>
        <source>flight_controls</source>
        <translation>commandes de vol</translation>
    </message>
    <message>
        <source>fuel_system</source>
        <translation>circuit de carburant</translation>
    </message>
    <message>
        <source>fuel_tank</source>
        <translation>réservoir</translation>
    </message>
    <message>
        <source>fuselage_section</source>
        <translation>tronçon de fuselage</translation>
    </message>
    <message>
        <source>good</source>
        <translation>bon</translation>
    </message>
    <message>
        <source>helper</source>
        <translation>aide</translation>
    </message>
    <message>
        <source>hold</source>
        <translation>garder ouverte</translation>
    </message>
    <message>
        <source>hold_point</source>
        <translation>point d’arrêt</translation>
    </message>
    <message>
        <source>imperial</source>
        <translation>impérial</translation>
    </message>
    <message>
        <source>import</source>
        <translation>import</translation>
    </message>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
    <message>
        <source>independent_check</source>
        <translation>contrôle indépendant</translation>
    </message>
    <message>
        <source>insert</source>
        <translation>ajout</translation>
    </message>
    <message>
        <source>inspection</source>
        <translation>inspection</translation>
    </message>
    <message>
        <source>inspector</source>
        <translation>inspecteur</translation>
    </message>
    <message>
        <source>interior</source>
        <translation>intérieur</translation>
    </message>
    <message>
        <source>interior_photos</source>
        <translation>photos de l’intérieur</translation>
    </message>
    <message>
        <source>jam_nut</source>
        <translation>contre-écrou</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>gardée</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>kit</source>
        <translation>kit</translation>
    </message>
    <message>
        <source>late_acceptance_by</source>
        <translation>acceptation tardive par</translation>
    </message>
    <message>
        <source>late_entry_days</source>
        <translation>jours avant entrée tardive</translation>
    </message>
    <message>
        <source>lb</source>
        <translation>lb</translation>
    </message>
    <message>
        <source>letter</source>
        <translation>lettre</translation>
    </message>
    <message>
        <source>lifting_surface</source>
        <translation>surface portante</translation>
    </message>
    <message>
        <source>loading_case</source>
        <translation>cas de chargement</translation>
    </message>
    <message>
        <source>lock_tab</source>
        <translation>frein en tôle</translation>
    </message>
    <message>
        <source>material_lot</source>
        <translation>lot de matériau</translation>
    </message>
    <message>
        <source>material_use</source>
        <translation>utilisation de matériau</translation>
    </message>
    <message>
        <source>measurement</source>
        <translation>mesure</translation>
    </message>
    <message>
        <source>media</source>
        <translation>photo ou document</translation>
    </message>
    <message>
        <source>memory</source>
        <translation>de mémoire</translation>
    </message>
    <message>
        <source>merge</source>
        <translation>fusion</translation>
    </message>
    <message>
        <source>metal</source>
        <translation>métal</translation>
    </message>
    <message>
        <source>metric</source>
        <translation>métrique</translation>
    </message>
    <message>
        <source>migration</source>
        <translation>migration</translation>
    </message>
    <message>
        <source>mixed</source>
        <translation>mixte</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>must</source>
        <translation>obligatoire</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>on_site</source>
        <translation>sur place</translation>
    </message>
    <message>
        <source>one_open_request</source>
        <translation>une seule demande ouverte</translation>
    </message>
    <message>
        <source>other</source>
        <translation>autre</translation>
    </message>
    <message>
        <source>own_check</source>
        <translation>contrôle par le constructeur</translation>
    </message>
    <message>
        <source>part</source>
        <translation>pièce</translation>
    </message>
    <message>
        <source>part_line</source>
        <translation>ligne de colisage</translation>
    </message>
    <message>
        <source>person</source>
        <translation>personne</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>photo</translation>
    </message>
    <message>
        <source>planning</source>
        <translation>planification</translation>
    </message>
    <message>
        <source>plans</source>
        <translation>plans</translation>
    </message>
    <message>
        <source>pre_cover</source>
        <translation>avant fermeture</translation>
    </message>
    <message>
        <source>printed</source>
        <translation>imprimé</translation>
    </message>
    <message>
        <source>project</source>
        <translation>projet</translation>
    </message>
    <message>
        <source>read</source>
        <translation>lu</translation>
    </message>
    <message>
        <source>ready_to_inspect</source>
        <translation>prête à inspecter</translation>
    </message>
    <message>
        <source>ready_to_sign</source>
        <translation>prête à signer</translation>
    </message>
    <message>
        <source>receipt</source>
        <translation>reçu</translation>
    </message>
    <message>
        <source>redo</source>
        <translation>refait</translation>
    </message>
    <message>
        <source>region</source>
        <translation>zone</translation>
    </message>
    <message>
        <source>rejected</source>
        <translation>refusé</translation>
    </message>
    <message>
        <source>repair</source>
        <translation>réparation</translation>
    </message>
    <message>
        <source>required</source>
        <translation>requis</translation>
    </message>
    <message>
        <source>resale</source>
        <translation>revente</translation>
    </message>
    <message>
        <source>rework</source>
        <translation>reprise</translation>
    </message>
    <message>
        <source>safety_wire</source>
        <translation>fil à freiner</translation>
    </message>
    <message>
        <source>self_locking_nut</source>
        <translation>écrou autofreiné</translation>
    </message>
    <message>
        <source>should</source>
        <translation>conseillé</translation>
    </message>
    <message>
        <source>sign_off</source>
        <translation>visa</translation>
    </message>
    <message>
        <source>signed_sheet</source>
        <translation>feuille signée</translation>
    </message>
    <message>
        <source>some_cases</source>
        <translation>certains cas</translation>
    </message>
    <message>
        <source>split_pin</source>
        <translation>goupille fendue</translation>
    </message>
    <message>
        <source>squawk</source>
        <translation>anomalie</translation>
    </message>
    <message>
        <source>stage</source>
        <translation>inspection d’étape</translation>
    </message>
    <message>
        <source>step</source>
        <translation>étape</translation>
    </message>
    <message>
        <source>technical_visit</source>
        <translation>visite technique</translation>
    </message>
    <message>
        <source>tenths</source>
        <translation>dixièmes</translation>
    </message>
    <message>
        <source>text</source>
        <translation>texte</translation>
    </message>
    <message>
        <source>thread_locker</source>
        <translation>frein-filet</translation>
    </message>
    <message>
        <source>ticks</source>
        <translation>coches</translation>
    </message>
    <message>
        <source>tool</source>
        <translation>outil</translation>
    </message>
    <message>
        <source>tool_and_debris_check</source>
        <translation>contrôle des outils et corps étrangers</translation>
    </message>
    <message>
        <source>tube</source>
        <translation>tube</translation>
    </message>
    <message>
        <source>undercarriage</source>
        <translation>train d’atterrissage</translation>
    </message>
    <message>
        <source>undo</source>
        <translation>annulé</translation>
    </message>
    <message>
        <source>update</source>
        <translation>modifié</translation>
    </message>
    <message>
        <source>video</source>
        <translation>vidéo</translation>
    </message>
    <message>
        <source>weighing</source>
        <translation>pesée</translation>
    </message>
    <message>
        <source>wood</source>
        <translation>bois</translation>
    </message>
    <message>
        <source>work_session</source>
        <translation>séance de travail</translation>
    </message>
    <message>
        <source>workmanship</source>
        <translation>exécution</translation>
    </message>
    <message>
        <source>workshop_visit</source>
        <translation>visite d’atelier</translation>
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
        <translation>tous</translation>
    </message>
    <message>
        <source>closing-step-not-done</source>
        <translation>étape de fermeture non faite</translation>
    </message>
    <message>
        <source>cure-time-unknown</source>
        <translation>durée de durcissement inconnue</translation>
    </message>
    <message>
        <source>curing-material</source>
        <translation>matériau en durcissement</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fait</translation>
    </message>
    <message>
        <source>expired-material</source>
        <translation>matériau périmé</translation>
    </message>
    <message>
        <source>factory-closing-without-document</source>
        <translation>fermeture d’usine sans document</translation>
    </message>
    <message>
        <source>failed-sample</source>
        <translation>éprouvette en échec</translation>
    </message>
    <message>
        <source>fastener-not-fitted</source>
        <translation>fixation non posée</translation>
    </message>
    <message>
        <source>filed-above</source>
        <translation>classé au-dessus</translation>
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
        <translation>intérieur fermé avec lacunes</translation>
    </message>
    <message>
        <source>inner-closing-open</source>
        <translation>intérieur encore ouvert</translation>
    </message>
    <message>
        <source>loose-fastener</source>
        <translation>fixation desserrée</translation>
    </message>
    <message>
        <source>measurement-missing</source>
        <translation>mesure manquante</translation>
    </message>
    <message>
        <source>measurement-out-of-limits</source>
        <translation>mesure hors limites</translation>
    </message>
    <message>
        <source>missing-part</source>
        <translation>pièce manquante</translation>
    </message>
    <message>
        <source>no_longer</source>
        <translation>hors d’accès</translation>
    </message>
    <message>
        <source>not_for_long</source>
        <translation>plus pour longtemps</translation>
    </message>
    <message>
        <source>open-bulletin</source>
        <translation>bulletin ouvert</translation>
    </message>
    <message>
        <source>open-squawk</source>
        <translation>anomalie ouverte</translation>
    </message>
    <message>
        <source>outdated-sign-off</source>
        <translation>signature périmée</translation>
    </message>
    <message>
        <source>outstanding</source>
        <translation>à traiter</translation>
    </message>
    <message>
        <source>part-without-closing</source>
        <translation>pièce sans fermeture</translation>
    </message>
    <message>
        <source>record-without-place</source>
        <translation>enregistrement sans lieu</translation>
    </message>
    <message>
        <source>rejected-deviation-built</source>
        <translation>écart refusé mais construit</translation>
    </message>
    <message>
        <source>second-hand</source>
        <translation>de seconde main</translation>
    </message>
    <message>
        <source>signature-without-sheet</source>
        <translation>signature sans feuille</translation>
    </message>
    <message>
        <source>stale-photos</source>
        <translation>photos dépassées</translation>
    </message>
    <message>
        <source>thin-record</source>
        <translation>dossier mince</translation>
    </message>
    <message>
        <source>to_fix</source>
        <translation>à corriger</translation>
    </message>
    <message>
        <source>to_verify</source>
        <translation>à vérifier</translation>
    </message>
    <message>
        <source>too-few-photos</source>
        <translation>trop peu de photos</translation>
    </message>
    <message>
        <source>torque-out-of-limits</source>
        <translation>couple hors limites</translation>
    </message>
    <message>
        <source>uncalibrated-tool</source>
        <translation>outil non étalonné</translation>
    </message>
    <message>
        <source>undecided-deviation</source>
        <translation>écart non décidé</translation>
    </message>
    <message>
        <source>undone-step</source>
        <translation>étape non faite</translation>
    </message>
    <message>
        <source>unlocked-fastener</source>
        <translation>fixation non freinée</translation>
    </message>
    <message>
        <source>unmarked-fastener</source>
        <translation>fixation non marquée</translation>
    </message>
    <message>
        <source>unsigned-hold-point</source>
        <translation>point d’arrêt non signé</translation>
    </message>
    <message>
        <source>unticked-check</source>
        <translation>point de contrôle non coché</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>biplane</source>
        <translation>biplan</translation>
    </message>
    <message>
        <source>canard</source>
        <translation>canard</translation>
    </message>
    <message>
        <source>centre_fuselage</source>
        <translation>fuselage central</translation>
    </message>
    <message>
        <source>cockpit</source>
        <translation>poste de pilotage</translation>
    </message>
    <message>
        <source>elevator</source>
        <translation>gouverne de profondeur</translation>
    </message>
    <message>
        <source>engine_bay</source>
        <translation>compartiment moteur</translation>
    </message>
    <message>
        <source>fin</source>
        <translation>dérive</translation>
    </message>
    <message>
        <source>foreplane</source>
        <translation>plan avant</translation>
    </message>
    <message>
        <source>fuselage_tank</source>
        <translation>réservoir de fuselage</translation>
    </message>
    <message>
        <source>high_wing</source>
        <translation>aile haute</translation>
    </message>
    <message>
        <source>left_aileron</source>
        <translation>aileron gauche</translation>
    </message>
    <message>
        <source>left_flap</source>
        <translation>volet gauche</translation>
    </message>
    <message>
        <source>left_main_wheel</source>
        <translation>roue principale gauche</translation>
    </message>
    <message>
        <source>left_tank</source>
        <translation>réservoir gauche</translation>
    </message>
    <message>
        <source>left_wing</source>
        <translation>aile gauche</translation>
    </message>
    <message>
        <source>low_wing</source>
        <translation>aile basse</translation>
    </message>
    <message>
        <source>lower_left_wing</source>
        <translation>aile inférieure gauche</translation>
    </message>
    <message>
        <source>lower_right_wing</source>
        <translation>aile inférieure droite</translation>
    </message>
    <message>
        <source>nose_wheel</source>
        <translation>roue avant</translation>
    </message>
    <message>
        <source>rear_fuselage</source>
        <translation>fuselage arrière</translation>
    </message>
    <message>
        <source>right_aileron</source>
        <translation>aileron droit</translation>
    </message>
    <message>
        <source>right_flap</source>
        <translation>volet droit</translation>
    </message>
    <message>
        <source>right_main_wheel</source>
        <translation>roue principale droite</translation>
    </message>
    <message>
        <source>right_tank</source>
        <translation>réservoir droit</translation>
    </message>
    <message>
        <source>right_wing</source>
        <translation>aile droite</translation>
    </message>
    <message>
        <source>rudder</source>
        <translation>gouverne de direction</translation>
    </message>
    <message>
        <source>stabiliser</source>
        <translation>plan fixe</translation>
    </message>
    <message>
        <source>tail_wheel</source>
        <translation>roulette de queue</translation>
    </message>
    <message>
        <source>existence</source>
        <translation>existence</translation>
    </message>
    <message>
        <source>set_aside</source>
        <translation>laissé de côté</translation>
    </message>
    <message>
        <source>taken</source>
        <translation>repris</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valeur</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>type</translation>
    </message>
    <message>
        <source>month</source>
        <translation>mois</translation>
    </message>
    <message>
        <source>week</source>
        <translation>semaine</translation>
    </message>
</context>
<context>
    <name>Workshop</name>
    <message>
        <source>nut used again</source>
        <translation>écrou réutilisé</translation>
    </message>
    <message>
        <source>military, breakaway</source>
        <translation>militaire, décollement</translation>
    </message>
    <message>
        <source>ground equipment, nylon insert</source>
        <translation>matériel au sol, insert nylon</translation>
    </message>
    <message>
        <source>final hole, today</source>
        <translation>trou final, aujourd’hui</translation>
    </message>
    <message>
        <source>final hole, 1940s manual</source>
        <translation>trou final, manuel des années 1940</translation>
    </message>
    <message>
        <source>hole for a blind rivet</source>
        <translation>trou pour rivet aveugle</translation>
    </message>
    <message>
        <source>hole for a bolt in a rivet&apos;s place</source>
        <translation>trou pour un boulon à la place d’un rivet</translation>
    </message>
    <message>
        <source>usual target, 1.5 D × 0.5 D</source>
        <translation>cible usuelle, 1,5 D × 0,5 D</translation>
    </message>
    <message>
        <source>military minimum</source>
        <translation>minimum militaire</translation>
    </message>
    <message>
        <source>trade gauge</source>
        <translation>calibre du métier</translation>
    </message>
    <message>
        <source>1940s manual</source>
        <translation>manuel des années 1940</translation>
    </message>
    <message>
        <source>edge distance, least</source>
        <translation>distance au bord, minimum</translation>
    </message>
    <message>
        <source>edge distance, most</source>
        <translation>distance au bord, maximum</translation>
    </message>
    <message>
        <source>edge distance, better</source>
        <translation>distance au bord, préférable</translation>
    </message>
    <message>
        <source>allowance added when laying out</source>
        <translation>marge ajoutée au traçage</translation>
    </message>
    <message>
        <source>military least for 3/32 universal heads</source>
        <translation>minimum militaire pour têtes universelles de 3/32</translation>
    </message>
    <message>
        <source>below this a bolt takes the rivet&apos;s place</source>
        <translation>en dessous, un boulon remplace le rivet</translation>
    </message>
    <message>
        <source>pitch, least</source>
        <translation>pas, minimum</translation>
    </message>
    <message>
        <source>usual pitch, from</source>
        <translation>pas usuel, de</translation>
    </message>
    <message>
        <source>usual pitch, to</source>
        <translation>pas usuel, à</translation>
    </message>
    <message>
        <source>pitch, most, Navy</source>
        <translation>pas, maximum, marine</translation>
    </message>
    <message>
        <source>pitch, most, trade</source>
        <translation>pas, maximum, métier</translation>
    </message>
    <message>
        <source>pitch, most, FAA</source>
        <translation>pas, maximum, FAA</translation>
    </message>
    <message>
        <source>distance of rows</source>
        <translation>distance des rangées</translation>
    </message>
    <message>
        <source>distance of rows, least</source>
        <translation>distance des rangées, minimum</translation>
    </message>
    <message>
        <source>rivet diameter, target</source>
        <translation>diamètre du rivet, cible</translation>
    </message>
    <message>
        <source>rivet diameter, least, Navy</source>
        <translation>diamètre du rivet, minimum, marine</translation>
    </message>
    <message>
        <source>rivet diameter, most, Navy</source>
        <translation>diamètre du rivet, maximum, marine</translation>
    </message>
    <message>
        <source>rivet diameter, least in structure</source>
        <translation>diamètre du rivet, minimum en structure</translation>
    </message>
    <message>
        <source>length of a rivet</source>
        <translation>longueur d’un rivet</translation>
    </message>
    <message>
        <source>tail before driving, least</source>
        <translation>dépassement avant formage, minimum</translation>
    </message>
    <message>
        <source>rivet through a tube, least</source>
        <translation>rivet à travers un tube, minimum</translation>
    </message>
    <message>
        <source>larger when replacing a harder rivet</source>
        <translation>plus gros en remplaçant un rivet plus dur</translation>
    </message>
    <message>
        <source>oversize repairs, most</source>
        <translation>réparations en surdimension, maximum</translation>
    </message>
    <message>
        <source>depth of deburring, most</source>
        <translation>profondeur d’ébavurage, maximum</translation>
    </message>
    <message>
        <source>thinnest sheet to countersink by machine</source>
        <translation>tôle la plus mince à fraiser à la machine</translation>
    </message>
    <message>
        <source>thinnest outer sheet to countersink by machine</source>
        <translation>tôle extérieure la plus mince à fraiser à la machine</translation>
    </message>
    <message>
        <source>countersink for reduced heads, most</source>
        <translation>fraisure pour têtes réduites, maximum</translation>
    </message>
    <message>
        <source>countersink, least</source>
        <translation>fraisure, minimum</translation>
    </message>
    <message>
        <source>countersink, most</source>
        <translation>fraisure, maximum</translation>
    </message>
    <message>
        <source>dimpling is best up to</source>
        <translation>l’embrèvement convient jusqu’à</translation>
    </message>
    <message>
        <source>dimpling up to, 1940s</source>
        <translation>embrèvement jusqu’à, années 1940</translation>
    </message>
    <message>
        <source>depth of a countersink, most</source>
        <translation>profondeur d’une fraisure, maximum</translation>
    </message>
    <message>
        <source>knife edge, not approved</source>
        <translation>arête vive, non approuvé</translation>
    </message>
    <message>
        <source>blend, length to depth</source>
        <translation>raccordement, longueur sur profondeur</translation>
    </message>
    <message>
        <source>no rotary file on sheet below</source>
        <translation>pas de lime rotative sur tôle sous</translation>
    </message>
    <message>
        <source>no blasting without approval below</source>
        <translation>pas de sablage sans approbation sous</translation>
    </message>
    <message>
        <source>blasting pressure, clad</source>
        <translation>pression de sablage, plaqué</translation>
    </message>
    <message>
        <source>blasting pressure, bare</source>
        <translation>pression de sablage, nu</translation>
    </message>
    <message>
        <source>blasting one spot, most</source>
        <translation>sablage d’un point, maximum</translation>
    </message>
    <message>
        <source>last grit</source>
        <translation>dernier grain</translation>
    </message>
    <message>
        <source>primer on sanded steel within</source>
        <translation>apprêt sur acier poncé sous</translation>
    </message>
    <message>
        <source>how deep may be removed</source>
        <translation>profondeur qui peut être enlevée</translation>
    </message>
    <message>
        <source>one type&apos;s limit for skins</source>
        <translation>limite d’un type pour les revêtements</translation>
    </message>
    <message>
        <source>one type&apos;s limit for structure</source>
        <translation>limite d’un type pour la structure</translation>
    </message>
    <message>
        <source>stop drill</source>
        <translation>trou d’arrêt</translation>
    </message>
    <message>
        <source>corner of a cut-out, least radius</source>
        <translation>coin d’une découpe, rayon minimum</translation>
    </message>
    <message>
        <source>magnifier for fittings</source>
        <translation>loupe pour ferrures</translation>
    </message>
    <message>
        <source>worn hole in a fitting without bush</source>
        <translation>trou usé d’une ferrure sans bague</translation>
    </message>
    <message>
        <source>threads through the nut, least</source>
        <translation>filets dépassant l’écrou, minimum</translation>
    </message>
    <message>
        <source>washers, most</source>
        <translation>rondelles, maximum</translation>
    </message>
    <message>
        <source>smallest steel bolt</source>
        <translation>plus petit boulon acier</translation>
    </message>
    <message>
        <source>smallest aluminium bolt</source>
        <translation>plus petit boulon aluminium</translation>
    </message>
    <message>
        <source>locking used again</source>
        <translation>freinage réutilisé</translation>
    </message>
    <message>
        <source>self-locking nut</source>
        <translation>écrou autofreiné</translation>
    </message>
    <message>
        <source>calibration at least every</source>
        <translation>étalonnage au moins tous les</translation>
    </message>
    <message>
        <source>lubricated threads</source>
        <translation>filets lubrifiés</translation>
    </message>
    <message>
        <source>torque paint</source>
        <translation>vernis témoin</translation>
    </message>
    <message>
        <source>safety wire, least</source>
        <translation>fil à freiner, minimum</translation>
    </message>
    <message>
        <source>turning on to line up holes</source>
        <translation>tourner pour aligner les trous</translation>
    </message>
    <message>
        <source>twists</source>
        <translation>torsades</translation>
    </message>
    <message>
        <source>pigtail, turns</source>
        <translation>queue de fil, tours</translation>
    </message>
    <message>
        <source>pigtail, length</source>
        <translation>queue de fil, longueur</translation>
    </message>
    <message>
        <source>prongs of a split pin</source>
        <translation>branches d’une goupille</translation>
    </message>
    <message>
        <source>threads outside a turnbuckle, most</source>
        <translation>filets hors d’un tendeur, maximum</translation>
    </message>
    <message>
        <source>wraps at a turnbuckle, least</source>
        <translation>enroulements au tendeur, minimum</translation>
    </message>
    <message>
        <source>proof load of a swaged end</source>
        <translation>charge d’épreuve d’un embout serti</translation>
    </message>
    <message>
        <source>deflection at a fairlead, most</source>
        <translation>déviation à un guide, maximum</translation>
    </message>
    <message>
        <source>table of a tensiometer</source>
        <translation>tableau d’un tensiomètre</translation>
    </message>
    <message>
        <source>readings of a tensiometer</source>
        <translation>lectures d’un tensiomètre</translation>
    </message>
    <message>
        <source>tensiometer from fittings, least</source>
        <translation>tensiomètre aux ferrures, minimum</translation>
    </message>
    <message>
        <source>tolerance of travel</source>
        <translation>tolérance des débattements</translation>
    </message>
    <message>
        <source>drop of a feeder, most</source>
        <translation>chute d’une alimentation, maximum</translation>
    </message>
    <message>
        <source>ground path, most</source>
        <translation>retour de masse, maximum</translation>
    </message>
    <message>
        <source>hot copper wire</source>
        <translation>fil de cuivre chaud</translation>
    </message>
    <message>
        <source>hot aluminium wire</source>
        <translation>fil d’aluminium chaud</translation>
    </message>
    <message>
        <source>pulling a crimp</source>
        <translation>essai de traction d’un sertissage</translation>
    </message>
    <message>
        <source>crimp</source>
        <translation>sertissage</translation>
    </message>
    <message>
        <source>epoxy: pot life halves every</source>
        <translation>époxy&#xa0;: la vie en pot se divise par deux tous les</translation>
    </message>
    <message>
        <source>epoxy: no load before</source>
        <translation>époxy&#xa0;: pas de charge avant</translation>
    </message>
    <message>
        <source>epoxy primer: let stand</source>
        <translation>apprêt époxy&#xa0;: laisser reposer</translation>
    </message>
    <message>
        <source>epoxy primer: use within</source>
        <translation>apprêt époxy&#xa0;: utiliser sous</translation>
    </message>
    <message>
        <source>sealant: mix</source>
        <translation>mastic&#xa0;: mélange</translation>
    </message>
    <message>
        <source>military</source>
        <translation>militaire</translation>
    </message>
    <message>
        <source>commercial</source>
        <translation>commercial</translation>
    </message>
    <message>
        <source>protruding head</source>
        <translation>tête saillante</translation>
    </message>
    <message>
        <source>flush head</source>
        <translation>tête fraisée</translation>
    </message>
    <message>
        <source>any</source>
        <translation>tous</translation>
    </message>
    <message>
        <source>1 row, protruding head</source>
        <translation>1 rangée, tête saillante</translation>
    </message>
    <message>
        <source>2 rows, protruding head</source>
        <translation>2 rangées, tête saillante</translation>
    </message>
    <message>
        <source>3 rows or more, protruding head</source>
        <translation>3 rangées ou plus, tête saillante</translation>
    </message>
    <message>
        <source>1 row, flush head</source>
        <translation>1 rangée, tête fraisée</translation>
    </message>
    <message>
        <source>2 rows, flush head</source>
        <translation>2 rangées, tête fraisée</translation>
    </message>
    <message>
        <source>3 rows or more, flush head</source>
        <translation>3 rangées ou plus, tête fraisée</translation>
    </message>
    <message>
        <source>the project&apos;s own</source>
        <translation>propre au projet</translation>
    </message>
    <message>
        <source>read in two places</source>
        <translation>lu à deux endroits</translation>
    </message>
    <message>
        <source>read in one place</source>
        <translation>lu à un endroit</translation>
    </message>
    <message>
        <source>computed</source>
        <translation>calculé</translation>
    </message>
    <message>
        <source>second hand</source>
        <translation>de seconde main</translation>
    </message>
    <message>
        <source>from memory: look it up</source>
        <translation>de mémoire&#xa0;: à vérifier</translation>
    </message>
    <message>
        <source>Thread</source>
        <translation>Filetage</translation>
    </message>
    <message>
        <source>Tension nut</source>
        <translation>Écrou en traction</translation>
    </message>
    <message>
        <source>Shear nut</source>
        <translation>Écrou en cisaillement</translation>
    </message>
    <message>
        <source>Most, tension</source>
        <translation>Maximum, traction</translation>
    </message>
    <message>
        <source>Most, shear</source>
        <translation>Maximum, cisaillement</translation>
    </message>
    <message>
        <source>Shear estimated</source>
        <translation>Cisaillement estimé</translation>
    </message>
    <message>
        <source>Basis</source>
        <translation>Base</translation>
    </message>
    <message>
        <source>Least drag</source>
        <translation>Frottement minimum</translation>
    </message>
    <message>
        <source>Case</source>
        <translation>Cas</translation>
    </message>
    <message>
        <source>Lever</source>
        <translation>Levier</translation>
    </message>
    <message>
        <source>Extension</source>
        <translation>Rallonge</translation>
    </message>
    <message>
        <source>Printed</source>
        <translation>Imprimé</translation>
    </message>
    <message>
        <source>Worked out</source>
        <translation>Calculé</translation>
    </message>
    <message>
        <source>Rivet</source>
        <translation>Rivet</translation>
    </message>
    <message>
        <source>Width of the head</source>
        <translation>Largeur de la tête</translation>
    </message>
    <message>
        <source>Height of the head</source>
        <translation>Hauteur de la tête</translation>
    </message>
    <message>
        <source>Rule</source>
        <translation>Règle</translation>
    </message>
    <message>
        <source>Holds for</source>
        <translation>Vaut pour</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valeur</translation>
    </message>
    <message>
        <source>Fastener</source>
        <translation>Fixation</translation>
    </message>
    <message>
        <source>Drill</source>
        <translation>Foret</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Diamètre</translation>
    </message>
    <message>
        <source>Hole</source>
        <translation>Trou</translation>
    </message>
    <message>
        <source>Pilot hole</source>
        <translation>Avant-trou</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Tôle</translation>
    </message>
    <message>
        <source>3/16 bolts</source>
        <translation>boulons de 3/16</translation>
    </message>
    <message>
        <source>Sum</source>
        <translation>Calcul</translation>
    </message>
    <message>
        <source>Cable, in</source>
        <translation>Câble, in</translation>
    </message>
    <message>
        <source>Made of</source>
        <translation>Composition</translation>
    </message>
    <message>
        <source>Composition A</source>
        <translation>Composition A</translation>
    </message>
    <message>
        <source>Composition B, stainless</source>
        <translation>Composition B, inoxydable</translation>
    </message>
    <message>
        <source>Wrap</source>
        <translation>Enroulement</translation>
    </message>
    <message>
        <source>Wire</source>
        <translation>Fil</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Matériau</translation>
    </message>
    <message>
        <source>AWG</source>
        <translation>AWG</translation>
    </message>
    <message>
        <source>A at 105 °C</source>
        <translation>A à 105 °C</translation>
    </message>
    <message>
        <source>A at 150 °C</source>
        <translation>A à 150 °C</translation>
    </message>
    <message>
        <source>A at 200 °C</source>
        <translation>A à 200 °C</translation>
    </message>
    <message>
        <source>Ohms per 1,000 ft</source>
        <translation>Ohms pour 1 000 ft</translation>
    </message>
    <message>
        <source>Circular mils</source>
        <translation>Circular mils</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tableau</translation>
    </message>
    <message>
        <source>Length of the wire</source>
        <translation>Longueur du fil</translation>
    </message>
    <message>
        <source>A</source>
        <translation>A</translation>
    </message>
    <message>
        <source>Printed, V</source>
        <translation>Imprimé, V</translation>
    </message>
    <message>
        <source>Worked out, V</source>
        <translation>Calculé, V</translation>
    </message>
    <message>
        <source>Circuit, V</source>
        <translation>Circuit, V</translation>
    </message>
    <message>
        <source>All the time, V</source>
        <translation>En continu, V</translation>
    </message>
    <message>
        <source>Now and then, V</source>
        <translation>Par moments, V</translation>
    </message>
    <message>
        <source>Holds at least</source>
        <translation>Tient au moins</translation>
    </message>
    <message>
        <source>Strands</source>
        <translation>Brins</translation>
    </message>
    <message>
        <source>Nicked, most</source>
        <translation>Entaillés, maximum</translation>
    </message>
    <message>
        <source>Broken, most</source>
        <translation>Rompus, maximum</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Classe</translation>
    </message>
    <message>
        <source>Application, h</source>
        <translation>Application, h</translation>
    </message>
    <message>
        <source>Tack-free, h</source>
        <translation>Hors poisse, h</translation>
    </message>
    <message>
        <source>Cured, h</source>
        <translation>Durci, h</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Example</source>
        <translation>Exemple</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Arm</source>
        <translation>Bras de levier</translation>
    </message>
    <message>
        <source>Moment</source>
        <translation>Moment</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Résultat</translation>
    </message>
    <message>
        <source>Torque of fine threads</source>
        <translation>Couples, filetages fins</translation>
    </message>
    <message>
        <source>Torque of coarse threads</source>
        <translation>Couples, gros filetages</translation>
    </message>
    <message>
        <source>Least drag of self-locking nuts</source>
        <translation>Frottement minimum des écrous autofreinés</translation>
    </message>
    <message>
        <source>Worked examples of wrench extensions</source>
        <translation>Exemples calculés de rallonges de clé</translation>
    </message>
    <message>
        <source>Bolts, nuts and locking</source>
        <translation>Boulons, écrous et freinage</translation>
    </message>
    <message>
        <source>Safety wire and split pins</source>
        <translation>Fil à freiner et goupilles</translation>
    </message>
    <message>
        <source>Shop heads</source>
        <translation>Têtes formées</translation>
    </message>
    <message>
        <source>Rivets: distances and sizes</source>
        <translation>Rivets&#xa0;: distances et dimensions</translation>
    </message>
    <message>
        <source>Countersinks and dimples</source>
        <translation>Fraisures et embrèvements</translation>
    </message>
    <message>
        <source>Drills and holes</source>
        <translation>Forets et trous</translation>
    </message>
    <message>
        <source>Rivets an inch, 5052 sheet</source>
        <translation>Rivets par pouce, tôle 5052</translation>
    </message>
    <message>
        <source>Worked examples of sheet metal</source>
        <translation>Exemples calculés de tôlerie</translation>
    </message>
    <message>
        <source>Strength of control cables</source>
        <translation>Résistance des câbles de commande</translation>
    </message>
    <message>
        <source>Safety wire of turnbuckles</source>
        <translation>Fil à freiner des tendeurs</translation>
    </message>
    <message>
        <source>Turnbuckles, cables and travel</source>
        <translation>Tendeurs, câbles et débattements</translation>
    </message>
    <message>
        <source>Copper wire</source>
        <translation>Fil de cuivre</translation>
    </message>
    <message>
        <source>Voltage drop that is allowed</source>
        <translation>Chute de tension admise</translation>
    </message>
    <message>
        <source>Worked examples of voltage drop</source>
        <translation>Exemples calculés de chute de tension</translation>
    </message>
    <message>
        <source>Pull of crimped terminals</source>
        <translation>Traction des cosses serties</translation>
    </message>
    <message>
        <source>Nicked and broken strands</source>
        <translation>Brins entaillés et rompus</translation>
    </message>
    <message>
        <source>Wiring</source>
        <translation>Câblage</translation>
    </message>
    <message>
        <source>Sealants</source>
        <translation>Mastics</translation>
    </message>
    <message>
        <source>Resins, primers and mixing</source>
        <translation>Résines, apprêts et mélange</translation>
    </message>
    <message>
        <source>Corrosion and damage</source>
        <translation>Corrosion et dommages</translation>
    </message>
    <message>
        <source>Weights that are usual</source>
        <translation>Masses usuelles</translation>
    </message>
    <message>
        <source>Worked examples of weighing and loading</source>
        <translation>Exemples calculés de pesée et de chargement</translation>
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
        <translation>%1 entaillés, %2 rompus</translation>
    </message>
    <message>
        <source>%1 wide, %2 high</source>
        <translation>%1 de large, %2 de haut</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>60 % of that, held 5 s; composition A</source>
        <translation>60 % de cela, tenu 5 s&#xa0;; composition A</translation>
    </message>
    <message>
        <source>60 % of that, held 5 s; composition B</source>
        <translation>60 % de cela, tenu 5 s&#xa0;; composition B</translation>
    </message>
    <message>
        <source>A crimped terminal holds at least</source>
        <translation>Une cosse sertie tient au moins</translation>
    </message>
    <message>
        <source>A driven head has a width and a height above zero.</source>
        <translation>Une tête formée a une largeur et une hauteur supérieures à zéro.</translation>
    </message>
    <message>
        <source>A driven head that was measured</source>
        <translation>Une tête formée mesurée</translation>
    </message>
    <message>
        <source>About three times the sheet</source>
        <translation>Environ trois fois la tôle</translation>
    </message>
    <message>
        <source>Allowed all the time</source>
        <translation>Admis en continu</translation>
    </message>
    <message>
        <source>Allowed now and then</source>
        <translation>Admis par moments</translation>
    </message>
    <message>
        <source>An extension that points back to the handle is below zero; at a right angle it changes nothing.</source>
        <translation>Une rallonge qui revient vers la poignée est négative&#xa0;; à angle droit, elle ne change rien.</translation>
    </message>
    <message>
        <source>At least</source>
        <translation>Au moins</translation>
    </message>
    <message>
        <source>At the nut</source>
        <translation>À l’écrou</translation>
    </message>
    <message>
        <source>Bent by, degrees</source>
        <translation>Plié de, degrés</translation>
    </message>
    <message>
        <source>Bolts and torque</source>
        <translation>Boulons et couple</translation>
    </message>
    <message>
        <source>Breaks at, at least</source>
        <translation>Rompt à, au moins</translation>
    </message>
    <message>
        <source>Cable</source>
        <translation>Câble</translation>
    </message>
    <message>
        <source>Cables and controls</source>
        <translation>Câbles et commandes</translation>
    </message>
    <message>
        <source>Circuit</source>
        <translation>Circuit</translation>
    </message>
    <message>
        <source>Conductor, °C</source>
        <translation>Conducteur, °C</translation>
    </message>
    <message>
        <source>Current, A</source>
        <translation>Courant, A</translation>
    </message>
    <message>
        <source>Drag of the nut</source>
        <translation>Frottement de l’écrou</translation>
    </message>
    <message>
        <source>Edge distance</source>
        <translation>Distance au bord</translation>
    </message>
    <message>
        <source>Extension: drive to the nut</source>
        <translation>Rallonge&#xa0;: carré à écrou</translation>
    </message>
    <message>
        <source>Grip</source>
        <translation>Épaisseur serrée</translation>
    </message>
    <message>
        <source>How well it is known</source>
        <translation>Degré de vérification</translation>
    </message>
    <message>
        <source>Inner bend radius</source>
        <translation>Rayon intérieur</translation>
    </message>
    <message>
        <source>Insulation</source>
        <translation>Isolant</translation>
    </message>
    <message>
        <source>Least drag of a self-locking nut</source>
        <translation>Frottement minimum d’un écrou autofreiné</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Longueur</translation>
    </message>
    <message>
        <source>Lever: middle of the grip to the drive</source>
        <translation>Levier&#xa0;: milieu de la poignée au carré</translation>
    </message>
    <message>
        <source>Machine countersink from</source>
        <translation>Fraisage à la machine à partir de</translation>
    </message>
    <message>
        <source>Never more than</source>
        <translation>Jamais plus de</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Nut</source>
        <translation>Écrou</translation>
    </message>
    <message>
        <source>One way, with the airframe as return. A hot wire has more resistance: give the temperature that the conductor reaches.</source>
        <translation>Aller simple, la cellule servant de retour. Un fil chaud a plus de résistance&#xa0;: indiquer la température atteinte par le conducteur.</translation>
    </message>
    <message>
        <source>Other alloys have tables of their own. Part of the count is enough in some places: the drawing or the text of the table says which share.</source>
        <translation>D’autres alliages ont leurs propres tableaux. À certains endroits une part du nombre suffit&#xa0;: le plan ou le texte du tableau dit laquelle.</translation>
    </message>
    <message>
        <source>Pitch</source>
        <translation>Pas</translation>
    </message>
    <message>
        <source>Proof load of a swaged end</source>
        <translation>Charge d’épreuve d’un embout serti</translation>
    </message>
    <message>
        <source>Rivets</source>
        <translation>Rivets</translation>
    </message>
    <message>
        <source>Rivets an inch of width</source>
        <translation>Rivets par pouce de largeur</translation>
    </message>
    <message>
        <source>Rivets of a splice in 5052 sheet</source>
        <translation>Rivets d’une éclisse en tôle 5052</translation>
    </message>
    <message>
        <source>Rivets on each side of the seam</source>
        <translation>Rivets de chaque côté du joint</translation>
    </message>
    <message>
        <source>Rivets that there is room for</source>
        <translation>Rivets pour lesquels il y a la place</translation>
    </message>
    <message>
        <source>Rows</source>
        <translation>Rangées</translation>
    </message>
    <message>
        <source>Safety wire</source>
        <translation>Fil à freiner</translation>
    </message>
    <message>
        <source>Sealants, resins, primers</source>
        <translation>Mastics, résines, apprêts</translation>
    </message>
    <message>
        <source>Set the wrench to</source>
        <translation>Régler la clé à</translation>
    </message>
    <message>
        <source>Setback</source>
        <translation>Retrait de pli</translation>
    </message>
    <message>
        <source>Setback of a bend</source>
        <translation>Retrait d’un pli</translation>
    </message>
    <message>
        <source>Share of the count, %</source>
        <translation>Part du nombre, %</translation>
    </message>
    <message>
        <source>Sheet metal</source>
        <translation>Tôlerie</translation>
    </message>
    <message>
        <source>Shop head</source>
        <translation>Tête formée</translation>
    </message>
    <message>
        <source>Solid rivet</source>
        <translation>Rivet plein</translation>
    </message>
    <message>
        <source>Solid rivets</source>
        <translation>Rivets pleins</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Source</translation>
    </message>
    <message>
        <source>Strands that may be damaged</source>
        <translation>Brins qui peuvent être abîmés</translation>
    </message>
    <message>
        <source>Strength of a control cable</source>
        <translation>Résistance d’un câble de commande</translation>
    </message>
    <message>
        <source>The drag is read off the wrench while the nut runs down, and added. For clean, dry, cadmium-plated threads; what lubricated threads take the maker says.</source>
        <translation>Le frottement se lit sur la clé pendant que l’écrou descend, et s’ajoute. Pour filets propres, secs, cadmiés&#xa0;; pour des filets lubrifiés, le fabricant décide.</translation>
    </message>
    <message>
        <source>The grip is the thickness of all sheets together. Of a countersunk rivet the length includes the head.</source>
        <translation>L’épaisseur serrée est celle de toutes les tôles ensemble. Pour un rivet fraisé, la longueur comprend la tête.</translation>
    </message>
    <message>
        <source>The project&apos;s own limit</source>
        <translation>Limite propre au projet</translation>
    </message>
    <message>
        <source>The sources differ: a head may pass the military minimum and miss the usual target. Write down which one was used.</source>
        <translation>Les sources diffèrent&#xa0;: une tête peut satisfaire au minimum militaire et manquer la cible usuelle. Noter laquelle a servi.</translation>
    </message>
    <message>
        <source>The wire carries at most</source>
        <translation>Le fil porte au plus</translation>
    </message>
    <message>
        <source>The wrench is set to</source>
        <translation>La clé est réglée à</translation>
    </message>
    <message>
        <source>Thicker sheet</source>
        <translation>Tôle la plus épaisse</translation>
    </message>
    <message>
        <source>Thinnest wire for a load</source>
        <translation>Fil le plus fin pour une charge</translation>
    </message>
    <message>
        <source>Thinnest wire, AWG</source>
        <translation>Fil le plus fin, AWG</translation>
    </message>
    <message>
        <source>Torque of a bolt</source>
        <translation>Couple d’un boulon</translation>
    </message>
    <message>
        <source>Torque wanted at the nut</source>
        <translation>Couple voulu à l’écrou</translation>
    </message>
    <message>
        <source>Voltage drop</source>
        <translation>Chute de tension</translation>
    </message>
    <message>
        <source>Voltage drop of a wire</source>
        <translation>Chute de tension d’un fil</translation>
    </message>
    <message>
        <source>Weights</source>
        <translation>Masses</translation>
    </message>
    <message>
        <source>Which rivet for a sheet</source>
        <translation>Quel rivet pour une tôle</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Largeur</translation>
    </message>
    <message>
        <source>Width of the splice</source>
        <translation>Largeur de l’éclisse</translation>
    </message>
    <message>
        <source>Wire size, AWG</source>
        <translation>Calibre du fil, AWG</translation>
    </message>
    <message>
        <source>Wrench with an extension: what reaches the nut</source>
        <translation>Clé avec rallonge&#xa0;: ce qui arrive à l’écrou</translation>
    </message>
    <message>
        <source>Wrench with an extension: what to set</source>
        <translation>Clé avec rallonge&#xa0;: ce qu’il faut régler</translation>
    </message>
    <message>
        <source>add the drag of the nut</source>
        <translation>ajouter le frottement de l’écrou</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>au moins %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>au plus %1</translation>
    </message>
    <message>
        <source>composition A</source>
        <translation>composition A</translation>
    </message>
    <message>
        <source>composition B, stainless</source>
        <translation>composition B, inoxydable</translation>
    </message>
    <message>
        <source>dash number %1: grip and 1.5 diameters, up to the next sixteenth</source>
        <translation>numéro de longueur %1&#xa0;: épaisseur et 1,5 diamètre, au seizième supérieur</translation>
    </message>
    <message>
        <source>drop and current within the tables</source>
        <translation>chute et courant dans les tableaux</translation>
    </message>
    <message>
        <source>for 5052 sheet of %1, 2117 rivets with protruding heads</source>
        <translation>pour tôle 5052 de %1, rivets 2117 à tête saillante</translation>
    </message>
    <message>
        <source>larger than any of the tables</source>
        <translation>plus gros que tous ceux des tableaux</translation>
    </message>
    <message>
        <source>misses</source>
        <translation>manque</translation>
    </message>
    <message>
        <source>of %1 strands</source>
        <translation>sur %1 brins</translation>
    </message>
    <message>
        <source>ohms a foot × feet × amperes</source>
        <translation>ohms par pied × pieds × ampères</translation>
    </message>
    <message>
        <source>once the sheet, 3/32 in structure</source>
        <translation>une fois la tôle, 3/32 en structure</translation>
    </message>
    <message>
        <source>passes</source>
        <translation>satisfait</translation>
    </message>
    <message>
        <source>rounded up</source>
        <translation>arrondi au-dessus</translation>
    </message>
    <message>
        <source>rows × width / pitch</source>
        <translation>rangées × largeur / pas</translation>
    </message>
    <message>
        <source>the target; by the Navy the most. Next size: %1</source>
        <translation>la cible&#xa0;; le maximum selon la marine. Taille suivante&#xa0;: %1</translation>
    </message>
    <message>
        <source>thick, loaded in tension</source>
        <translation>épais, en traction</translation>
    </message>
    <message>
        <source>thin, loaded in shear</source>
        <translation>mince, en cisaillement</translation>
    </message>
    <message>
        <source>with the drag of the nut</source>
        <translation>avec le frottement de l’écrou</translation>
    </message>
    <message>
        <source>within</source>
        <translation>dans la limite</translation>
    </message>
    <message>
        <source>without the drag of the nut</source>
        <translation>sans le frottement de l’écrou</translation>
    </message>
    <message>
        <source>set aside</source>
        <translation>mis de côté</translation>
    </message>
    <message>
        <source>set aside; %1</source>
        <translation>mis de côté&#xa0;; %1</translation>
    </message>
    <message>
        <source>exceeded: %1 is above %2</source>
        <translation>dépassé&#xa0;: %1 est plus que %2</translation>
    </message>
</context>
<context>
    <name>Zone</name>
    <message>
        <source>Engine bay</source>
        <translation>Compartiment moteur</translation>
    </message>
    <message>
        <source>Nose wheel</source>
        <translation>Roue avant</translation>
    </message>
    <message>
        <source>Foreplane</source>
        <translation>Plan avant</translation>
    </message>
    <message>
        <source>Cockpit</source>
        <translation>Poste de pilotage</translation>
    </message>
    <message>
        <source>Fuselage tank</source>
        <translation>Réservoir de fuselage</translation>
    </message>
    <message>
        <source>Centre fuselage</source>
        <translation>Fuselage central</translation>
    </message>
    <message>
        <source>Left wing</source>
        <translation>Aile gauche</translation>
    </message>
    <message>
        <source>Right wing</source>
        <translation>Aile droite</translation>
    </message>
    <message>
        <source>Lower left wing</source>
        <translation>Aile inférieure gauche</translation>
    </message>
    <message>
        <source>Lower right wing</source>
        <translation>Aile inférieure droite</translation>
    </message>
    <message>
        <source>Left tank</source>
        <translation>Réservoir gauche</translation>
    </message>
    <message>
        <source>Right tank</source>
        <translation>Réservoir droit</translation>
    </message>
    <message>
        <source>Left aileron</source>
        <translation>Aileron gauche</translation>
    </message>
    <message>
        <source>Right aileron</source>
        <translation>Aileron droit</translation>
    </message>
    <message>
        <source>Left flap</source>
        <translation>Volet gauche</translation>
    </message>
    <message>
        <source>Right flap</source>
        <translation>Volet droit</translation>
    </message>
    <message>
        <source>Left main wheel</source>
        <translation>Roue principale gauche</translation>
    </message>
    <message>
        <source>Right main wheel</source>
        <translation>Roue principale droite</translation>
    </message>
    <message>
        <source>Rear fuselage</source>
        <translation>Fuselage arrière</translation>
    </message>
    <message>
        <source>Stabiliser</source>
        <translation>Plan fixe</translation>
    </message>
    <message>
        <source>Elevator</source>
        <translation>Gouverne de profondeur</translation>
    </message>
    <message>
        <source>Fin</source>
        <translation>Dérive</translation>
    </message>
    <message>
        <source>Rudder</source>
        <translation>Gouverne de direction</translation>
    </message>
    <message>
        <source>Tail wheel</source>
        <translation>Roulette de queue</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message numerus="yes">
        <source>%n other closings here</source>
        <translation>
            <numerusform>%Ln autre fermeture ici</numerusform>
            <numerusform>%Ln autres fermetures ici</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n parts, no closing is recorded.</source>
        <translation>
            <numerusform>%Ln pièce, aucune fermeture inscrite.</numerusform>
            <numerusform>%Ln pièces, aucune fermeture inscrite.</numerusform>
        </translation>
    </message>
    <message>
        <source>No part is recorded here.</source>
        <translation>Aucune pièce n’est inscrite ici.</translation>
    </message>
    <message>
        <source>biplane</source>
        <translation>biplan</translation>
    </message>
    <message>
        <source>canard</source>
        <translation>canard</translation>
    </message>
    <message>
        <source>high wing</source>
        <translation>aile haute</translation>
    </message>
    <message>
        <source>low wing</source>
        <translation>aile basse</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::AccountModel</name>
    <message numerus="yes">
        <source>and %n records more; a printed journal names them</source>
        <translation>
            <numerusform>et %Ln autre enregistrement&#xa0;; un registre imprimé le nomme</numerusform>
            <numerusform>et %Ln autres enregistrements&#xa0;; un registre imprimé les nomme</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ActForm</name>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ActLine</name>
    <message>
        <source>“%1” is no day.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un jour.</translation>
    </message>
    <message>
        <source>How long did it take? Write it as 2h15 or 90m.</source>
        <translation>Combien de temps&#xa0;? Écrivez-le 2h15 ou 90m.</translation>
    </message>
    <message>
        <source>Somebody has to be named.</source>
        <translation>Il faut nommer quelqu’un.</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>%1 lies ahead: only what has happened is recorded.</source>
        <translation>%1 est à venir&#xa0;: on n’inscrit que ce qui est arrivé.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::AirframePanel</name>
    <message>
        <source>Drawn as %1</source>
        <translation>Dessiné&#xa0;: %1</translation>
    </message>
    <message>
        <source>As the records say: %1</source>
        <translation>D’après les dossiers&#xa0;: %1</translation>
    </message>
    <message numerus="yes">
        <source>Not on the picture: %n parts</source>
        <translation>
            <numerusform>Pas sur l’image&#xa0;: %Ln pièce</numerusform>
            <numerusform>Pas sur l’image&#xa0;: %Ln pièces</numerusform>
        </translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1&#xa0;; %2</translation>
    </message>
    <message numerus="yes">
        <source>%n closings there must stay open</source>
        <translation>
            <numerusform>%Ln fermeture là doit rester ouverte</numerusform>
            <numerusform>%Ln fermetures là doivent rester ouvertes</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing says where on the aeroplane they are. Their field “zone” can.</source>
        <translation>Rien ne dit où elles sont sur l’avion. Leur champ «&#xa0;zone&#xa0;» le peut.</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>et %Ln de plus</numerusform>
            <numerusform>et %Ln de plus</numerusform>
        </translation>
    </message>
    <message>
        <source>Point at a zone, or walk through them with the arrow keys, to read why it is as it is.</source>
        <translation>Pointez une zone, ou parcourez-les avec les flèches, pour lire pourquoi elle est ainsi.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::AirframePicture</name>
    <message>
        <source>The aeroplane, by zone</source>
        <translation>L’avion, par zones</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::AmountColumns</name>
    <message>
        <source>most in %1: %2</source>
        <translation>maximum en %1&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::AnswerForm</name>
    <message>
        <source>what was done about it</source>
        <translation>ce qui a été fait</translation>
    </message>
    <message>
        <source>Correction</source>
        <translation>Correction</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Le</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Par</translation>
    </message>
    <message>
        <source>Picture of it now</source>
        <translation>Image actuelle</translation>
    </message>
    <message>
        <source>Corrected: %1</source>
        <translation>Corrigée&#xa0;: %1</translation>
    </message>
    <message>
        <source>Record the correction</source>
        <translation>Inscrire la correction</translation>
    </message>
    <message>
        <source>Verified: %1. Correction: %2</source>
        <translation>Vérifiée&#xa0;: %1. Correction&#xa0;: %2</translation>
    </message>
    <message>
        <source>Record the verification</source>
        <translation>Inscrire la vérification</translation>
    </message>
    <message>
        <source>This finding is no longer on record.</source>
        <translation>Cette constatation n’est plus inscrite.</translation>
    </message>
    <message>
        <source>It needs a word about what was done.</source>
        <translation>Il faut un mot sur ce qui a été fait.</translation>
    </message>
    <message>
        <source>Squawk %1 corrected</source>
        <translation>Anomalie %1 corrigée</translation>
    </message>
    <message>
        <source>It was corrected on %1; nobody can have verified it before.</source>
        <translation>Elle a été corrigée le %1&#xa0;; personne n’a pu la vérifier avant.</translation>
    </message>
    <message>
        <source>Squawk %1 verified</source>
        <translation>Anomalie %1 vérifiée</translation>
    </message>
    <message>
        <source>This finding is no longer on record as corrected.</source>
        <translation>Cette constatation n’est plus notée comme corrigée.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::BackupForm</name>
    <message>
        <source>Back up now</source>
        <translation>Sauvegarder maintenant</translation>
    </message>
    <message>
        <source>Folder on another disk</source>
        <translation>Dossier sur un autre disque</translation>
    </message>
    <message>
        <source>by itself, when that disk is there and something was changed</source>
        <translation>d’elle-même, quand ce disque est là et que quelque chose a changé</translation>
    </message>
    <message>
        <source>read back also what earlier backups copied (takes long)</source>
        <translation>relire aussi ce que des sauvegardes antérieures ont copié (c’est long)</translation>
    </message>
    <message>
        <source> days without one</source>
        <translation> jours sans sauvegarde</translation>
    </message>
    <message>
        <source>Back up</source>
        <translation>Sauvegarder</translation>
    </message>
    <message>
        <source>Remind me after</source>
        <translation>Me le rappeler après</translation>
    </message>
    <message>
        <source>This time</source>
        <translation>Cette fois</translation>
    </message>
    <message>
        <source>Everything is copied there, with all photographs; later only what is new.</source>
        <translation>Tout y est copié, avec toutes les photos&#xa0;; ensuite seulement ce qui est nouveau.</translation>
    </message>
    <message>
        <source>This folder is not there just now.</source>
        <translation>Ce dossier n’est pas là en ce moment.</translation>
    </message>
    <message>
        <source>This folder is on the disk of the project. A backup there helps against mistakes, and is lost with the disk.</source>
        <translation>Ce dossier est sur le disque du projet. Une sauvegarde y protège des erreurs, et se perd avec le disque.</translation>
    </message>
    <message>
        <source>This folder is on another disk. Keep that disk in another building.</source>
        <translation>Ce dossier est sur un autre disque. Gardez ce disque dans un autre bâtiment.</translation>
    </message>
    <message>
        <source>It needs a folder, best on a disk that is only plugged in for this.</source>
        <translation>Il faut un dossier, de préférence sur un disque qui n’est branché que pour cela.</translation>
    </message>
    <message>
        <source>A backup is running already.</source>
        <translation>Une sauvegarde est déjà en cours.</translation>
    </message>
    <message>
        <source>There is no folder %1; plug its disk in, or make it.</source>
        <translation>Il n’y a pas de dossier %1&#xa0;; branchez son disque, ou créez-le.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::BackupKeeper</name>
    <message>
        <source>No backup elsewhere was made yet.</source>
        <translation>Aucune sauvegarde n’a encore été faite ailleurs.</translation>
    </message>
    <message>
        <source>The last backup was made today and read back: %1</source>
        <translation>La dernière sauvegarde est d’aujourd’hui et a été relue&#xa0;: %1</translation>
    </message>
    <message numerus="yes">
        <source>The last backup was made %n days ago and read back: %1</source>
        <translation>
            <numerusform>La dernière sauvegarde a %Ln jour et a été relue&#xa0;: %1</numerusform>
            <numerusform>La dernière sauvegarde a %Ln jours et a été relue&#xa0;: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>There is no backup elsewhere yet: if this disk fails, these records and photographs are gone.</source>
        <translation>Il n’y a pas encore de sauvegarde ailleurs&#xa0;: si ce disque lâche, ces données et ces photos sont perdues.</translation>
    </message>
    <message numerus="yes">
        <source>The last backup elsewhere is %n days old, and work was recorded since.</source>
        <translation>
            <numerusform>La dernière sauvegarde ailleurs a %Ln jour, et du travail a été noté depuis.</numerusform>
            <numerusform>La dernière sauvegarde ailleurs a %Ln jours, et du travail a été noté depuis.</numerusform>
        </translation>
    </message>
    <message>
        <source>A backup is running already.</source>
        <translation>Une sauvegarde est déjà en cours.</translation>
    </message>
    <message>
        <source>Backing up, in megabytes</source>
        <translation>Sauvegarde, en mégaoctets</translation>
    </message>
    <message>
        <source>The backup was cancelled. The one before is as it was, and what was copied so far is not copied again.</source>
        <translation>La sauvegarde a été annulée. La précédente est intacte, et ce qui est déjà copié ne le sera pas de nouveau.</translation>
    </message>
    <message numerus="yes">
        <source>Backed up and read back: %n new files.</source>
        <translation>
            <numerusform>Sauvegardé et relu&#xa0;: %Ln nouveau fichier.</numerusform>
            <numerusform>Sauvegardé et relu&#xa0;: %Ln nouveaux fichiers.</numerusform>
        </translation>
    </message>
    <message>
        <source>The backup lies on the disk of the project, and would be lost with it.</source>
        <translation>La sauvegarde est sur le disque du projet, et se perdrait avec lui.</translation>
    </message>
    <message numerus="yes">
        <source>%n files are missing or no longer what was taken in; “Verify records and files” names them.</source>
        <translation>
            <numerusform>%Ln fichier manque ou n’est plus ce qui avait été pris&#xa0;; «&#xa0;Vérifier dossiers et fichiers&#xa0;» le nomme.</numerusform>
            <numerusform>%Ln fichiers manquent ou ne sont plus ce qui avait été pris&#xa0;; «&#xa0;Vérifier dossiers et fichiers&#xa0;» les nomme.</numerusform>
        </translation>
    </message>
    <message>
        <source>It could not be read when the last backup was made.</source>
        <translation>La date de la dernière sauvegarde n’a pas pu être lue.</translation>
    </message>
    <message>
        <source>The project could not be told of it, and may remind you of an older backup.</source>
        <translation>Le projet n’a pas pu en prendre note, et rappellera peut-être une sauvegarde plus ancienne.</translation>
    </message>
    <message>
        <source>This project is to read only: what was chosen for its backups is not kept.</source>
        <translation>Ce projet est en lecture seule&#xa0;: ce qui a été choisi pour ses sauvegardes n’est pas conservé.</translation>
    </message>
    <message>
        <source>The database of the earlier backup was damaged; it is kept there as %1.</source>
        <translation>La base de données de la sauvegarde précédente était endommagée&#xa0;; elle y est conservée sous %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n files of the earlier backup were damaged there; its disk may be failing.</source>
        <translation>
            <numerusform>%Ln fichier de la sauvegarde précédente y était endommagé&#xa0;; son disque est peut-être en train de lâcher.</numerusform>
            <numerusform>%Ln fichiers de la sauvegarde précédente y étaient endommagés&#xa0;; son disque est peut-être en train de lâcher.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n files beside it that are not the project&apos;s are kept there under names with “set-aside” in them.</source>
        <translation>
            <numerusform>%Ln fichier à côté, qui n’est pas du projet, y est conservé sous un nom contenant «&#xa0;set-aside&#xa0;».</numerusform>
            <numerusform>%Ln fichiers à côté, qui ne sont pas du projet, y sont conservés sous des noms contenant «&#xa0;set-aside&#xa0;».</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::BackupNotice</name>
    <message>
        <source>Back up…</source>
        <translation>Sauvegarder…</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::BenchClock</name>
    <message>
        <source>The clock runs: %1</source>
        <translation>L’horloge tourne&#xa0;: %1</translation>
    </message>
    <message>
        <source>Stop work (F2)</source>
        <translation>Arrêter le travail (F2)</translation>
    </message>
    <message>
        <source>Start work (F2)</source>
        <translation>Commencer le travail (F2)</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>Paused after %1</source>
        <translation>En pause après %1</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::BenchPartChooser</name>
    <message>
        <source>Parts</source>
        <translation>Pièces</translation>
    </message>
    <message>
        <source>Code or name of the part</source>
        <translation>Code ou nom de la pièce</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Pièce</translation>
    </message>
    <message>
        <source>Which part?</source>
        <translation>Quelle pièce&#xa0;?</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::BenchPicture</name>
    <message>
        <source>Back to the part (Esc)</source>
        <translation>Retour à la pièce (Échap)</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::BenchView</name>
    <message>
        <source>Other part (F6)</source>
        <translation>Autre pièce (F6)</translation>
    </message>
    <message>
        <source>Next steps (F3)</source>
        <translation>Étapes suivantes (F3)</translation>
    </message>
    <message>
        <source>No step of this part is left to do.</source>
        <translation>Il ne reste aucune étape pour cette pièce.</translation>
    </message>
    <message>
        <source>Torque and lock</source>
        <translation>Serrer et freiner</translation>
    </message>
    <message>
        <source>No fasteners are on record here.</source>
        <translation>Aucune fixation n’est inscrite ici.</translation>
    </message>
    <message>
        <source>Lines to check</source>
        <translation>Lignes à contrôler</translation>
    </message>
    <message>
        <source>No line of an inspector&apos;s list is left here.</source>
        <translation>Aucune ligne d’une liste de l’inspecteur ne reste ici.</translation>
    </message>
    <message>
        <source>Must stay open here</source>
        <translation>Doit rester ouvert ici</translation>
    </message>
    <message>
        <source>No closing on record has to stay open here.</source>
        <translation>Aucune fermeture inscrite ne doit rester ouverte ici.</translation>
    </message>
    <message>
        <source>No picture of this part is on record.</source>
        <translation>Aucune image de cette pièce n’est inscrite.</translation>
    </message>
    <message>
        <source>Leave (Esc)</source>
        <translation>Quitter (Échap)</translation>
    </message>
    <message>
        <source>What is wrong?</source>
        <translation>Qu’est-ce qui ne va pas&#xa0;?</translation>
    </message>
    <message>
        <source>New squawk</source>
        <translation>Nouvelle anomalie</translation>
    </message>
    <message>
        <source>To remember about this part</source>
        <translation>À retenir sur cette pièce</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>New squawk (F4)</source>
        <translation>Nouvelle anomalie (F4)</translation>
    </message>
    <message>
        <source>Note (F5)</source>
        <translation>Note (F5)</translation>
    </message>
    <message>
        <source>Newest pictures</source>
        <translation>Images récentes</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Établi</translation>
    </message>
    <message>
        <source>This step has to wait for another.</source>
        <translation>Cette étape doit en attendre une autre.</translation>
    </message>
    <message>
        <source>Done: %1</source>
        <translation>Fait&#xa0;: %1</translation>
    </message>
    <message>
        <source>No step of this part can be worked on now.</source>
        <translation>Aucune étape de cette pièce n’est faisable maintenant.</translation>
    </message>
    <message>
        <source>Ticked: %1</source>
        <translation>Coché&#xa0;: %1</translation>
    </message>
    <message>
        <source>Fitted: %1</source>
        <translation>Posé&#xa0;: %1</translation>
    </message>
    <message>
        <source>Locked: %1</source>
        <translation>Freiné&#xa0;: %1</translation>
    </message>
    <message>
        <source>Torque seal put on: %1</source>
        <translation>Vernis témoin posé&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Torque in %1</source>
        <translation>Couple en %1</translation>
    </message>
    <message>
        <source>What did the wrench say?</source>
        <translation>Que disait la clé&#xa0;?</translation>
    </message>
    <message>
        <source>Torqued: %1</source>
        <translation>Serré&#xa0;: %1</translation>
    </message>
    <message>
        <source>New squawk: %1</source>
        <translation>Nouvelle anomalie&#xa0;: %1</translation>
    </message>
    <message>
        <source>Note on %1</source>
        <translation>Note sur %1</translation>
    </message>
    <message>
        <source>Record the torque</source>
        <translation>Inscrire le couple</translation>
    </message>
    <message>
        <source>Choose the part first.</source>
        <translation>Choisissez d’abord la pièce.</translation>
    </message>
    <message>
        <source>At the bench: start or stop work</source>
        <translation>À l’établi&#xa0;: commencer ou arrêter le travail</translation>
    </message>
    <message>
        <source>At the bench: tick the next step</source>
        <translation>À l’établi&#xa0;: cocher l’étape suivante</translation>
    </message>
    <message>
        <source>At the bench: a new squawk</source>
        <translation>À l’établi&#xa0;: nouvelle anomalie</translation>
    </message>
    <message>
        <source>At the bench: a note</source>
        <translation>À l’établi&#xa0;: note</translation>
    </message>
    <message>
        <source>At the bench: another part</source>
        <translation>À l’établi&#xa0;: autre pièce</translation>
    </message>
    <message>
        <source>What is typed for a squawk or a note goes to %1 now.</source>
        <translation>Ce qui est tapé pour une anomalie ou une note va maintenant à %1.</translation>
    </message>
    <message>
        <source>Torqued outside its limits: %1</source>
        <translation>Serré hors limites&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::BranchForm</name>
    <message>
        <source>Make the copy</source>
        <translation>Faire la copie</translation>
    </message>
    <message>
        <source>Parts of the copy</source>
        <translation>Pièces de la copie</translation>
    </message>
    <message numerus="yes">
        <source>%n parts</source>
        <translation>
            <numerusform>%Ln pièce</numerusform>
            <numerusform>%Ln pièces</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n steps</source>
        <translation>
            <numerusform>%Ln étape</numerusform>
            <numerusform>%Ln étapes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n closings</source>
        <translation>
            <numerusform>%Ln fermeture</numerusform>
            <numerusform>%Ln fermetures</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lines to check</source>
        <translation>
            <numerusform>%Ln ligne à contrôler</numerusform>
            <numerusform>%Ln lignes à contrôler</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fasteners</source>
        <translation>
            <numerusform>%Ln fixation</numerusform>
            <numerusform>%Ln fixations</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n measurements</source>
        <translation>
            <numerusform>%Ln mesure</numerusform>
            <numerusform>%Ln mesures</numerusform>
        </translation>
    </message>
    <message>
        <source>Left and right change places in names and words.</source>
        <translation>Gauche et droite s’échangent dans les noms et les mots.</translation>
    </message>
    <message>
        <source>The name tells no side, so that names stay as they are.</source>
        <translation>Le nom ne dit pas de côté, donc les noms restent tels quels.</translation>
    </message>
    <message>
        <source>Copied as planned: %1. What was done, signed, photographed or found stays with the original. %2 Codes that other parts have are left empty.</source>
        <translation>Copié comme prévu&#xa0;: %1. Ce qui a été fait, signé, photographié ou trouvé reste à l’original. %2 Les codes déjà pris restent vides.</translation>
    </message>
    <message>
        <source>Copy of %1</source>
        <translation>Copie de %1</translation>
    </message>
    <message>
        <source>Another part has the code %1.</source>
        <translation>Une autre pièce a le code %1.</translation>
    </message>
    <message>
        <source>%1 copied as %2</source>
        <translation>%1 copiée en %2</translation>
    </message>
    <message>
        <source>The parts are no longer those that are listed here. Leave, and copy again.</source>
        <translation>Les pièces ne sont plus celles qui figurent ici. Quittez et copiez de nouveau.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::BranchModel</name>
    <message>
        <source>Copy</source>
        <translation>Copie</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Code</translation>
    </message>
    <message>
        <source>Copied from</source>
        <translation>Copié de</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::CalibrationForm</name>
    <message>
        <source>Keep the calibration</source>
        <translation>Garder l’étalonnage</translation>
    </message>
    <message>
        <source>Calibrated on</source>
        <translation>Étalonné le</translation>
    </message>
    <message>
        <source>Due again on</source>
        <translation>Prochaine échéance</translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation>Certificat</translation>
    </message>
    <message>
        <source>%1 was calibrated</source>
        <translation>%1 a été étalonné</translation>
    </message>
    <message>
        <source>Say on which day it is due again.</source>
        <translation>Dites quel jour est la prochaine échéance.</translation>
    </message>
    <message>
        <source>It cannot be due before it was calibrated.</source>
        <translation>L’échéance ne peut précéder l’étalonnage.</translation>
    </message>
    <message>
        <source>%1: calibrated</source>
        <translation>%1&#xa0;: étalonné</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::CertificatePage</name>
    <message>
        <source>Documents</source>
        <translation>Documents</translation>
    </message>
    <message>
        <source>Facts and agreement</source>
        <translation>Données et concordance</translation>
    </message>
    <message>
        <source>Major portion</source>
        <translation>Majeure partie</translation>
    </message>
    <message>
        <source>Rules</source>
        <translation>Règles</translation>
    </message>
    <message>
        <source>File for the final inspection…</source>
        <translation>Dossier pour l’inspection finale…</translation>
    </message>
    <message>
        <source>Documents, inspections, equipment, major portion, log, deviations and bulletins as one PDF</source>
        <translation>Documents, inspections, équipement, majeure partie, carnet, écarts et bulletins en un seul PDF</translation>
    </message>
    <message numerus="yes">
        <source>Facts and agreement (≠ %n)</source>
        <translation>
            <numerusform>Données et concordance (≠ %Ln)</numerusform>
            <numerusform>Données et concordance (≠ %Ln)</numerusform>
        </translation>
    </message>
    <message>
        <source>Weight and balance</source>
        <translation>Masse et centrage</translation>
    </message>
    <message>
        <source>Test flights</source>
        <translation>Vols d’essai</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::CheckListModel</name>
    <message>
        <source>%1 (not applicable)</source>
        <translation>%1 (sans objet)</translation>
    </message>
    <message>
        <source>ticked on %1</source>
        <translation>coché le %1</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::CheckPanel</name>
    <message>
        <source>Not applicable</source>
        <translation>Sans objet</translation>
    </message>
    <message>
        <source>Inspector&apos;s list</source>
        <translation>Liste de l’inspecteur</translation>
    </message>
    <message>
        <source>Inspector&apos;s list  %1 of %2</source>
        <translation>Liste de l’inspecteur  %1 sur %2</translation>
    </message>
    <message>
        <source>Tick all that are left</source>
        <translation>Cocher tout le reste</translation>
    </message>
    <message>
        <source>Tick all but the %1 chosen</source>
        <translation>Cocher tout sauf les %1 choisies</translation>
    </message>
    <message>
        <source>Ticked: %1</source>
        <translation>Coché&#xa0;: %1</translation>
    </message>
    <message>
        <source>Tick taken away: %1</source>
        <translation>Décoché&#xa0;: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n lines ticked</source>
        <translation>
            <numerusform>%Ln ligne cochée</numerusform>
            <numerusform>%Ln lignes cochées</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lines are not applicable</source>
        <translation>
            <numerusform>%Ln ligne est sans objet</numerusform>
            <numerusform>%Ln lignes sont sans objet</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lines are applicable again</source>
        <translation>
            <numerusform>%Ln ligne s’applique de nouveau</numerusform>
            <numerusform>%Ln lignes s’appliquent de nouveau</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ChoiceEditor</name>
    <message>
        <source>not said</source>
        <translation>non précisé</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ClaimView</name>
    <message>
        <source>Save the letter</source>
        <translation>Enregistrer la lettre</translation>
    </message>
    <message>
        <source>Text (*.txt)</source>
        <translation>Texte (*.txt)</translation>
    </message>
    <message>
        <source>Language of the letter</source>
        <translation>Langue de la lettre</translation>
    </message>
    <message>
        <source>The letter</source>
        <translation>La lettre</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Copier</translation>
    </message>
    <message>
        <source>Save as…</source>
        <translation>Enregistrer sous…</translation>
    </message>
    <message>
        <source>Back to the list</source>
        <translation>Retour à la liste</translation>
    </message>
    <message>
        <source>Letter about what named no shipment</source>
        <translation>Lettre sur ce qui ne nomme pas de livraison</translation>
    </message>
    <message>
        <source>Letter: %1</source>
        <translation>Lettre&#xa0;: %1</translation>
    </message>
    <message>
        <source>The letter is on the clipboard.</source>
        <translation>La lettre est dans le presse-papiers.</translation>
    </message>
    <message>
        <source>Claim</source>
        <translation>Réclamation</translation>
    </message>
    <message>
        <source>The letter is in %1.</source>
        <translation>La lettre est dans %1.</translation>
    </message>
    <message>
        <source>What was written into the letter is kept nowhere. Copy it, save it, or do the same once more to leave without it.</source>
        <translation>Ce qui a été écrit dans la lettre n’est conservé nulle part. La copier, l’enregistrer, ou refaire la même chose pour partir sans cela.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::CloseForm</name>
    <message>
        <source>the day is only about right</source>
        <translation>le jour n’est qu’approximatif</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Le</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Par</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motif</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>nécessaire</translation>
    </message>
    <message>
        <source>only if there is one</source>
        <translation>seulement s’il y en a une</translation>
    </message>
    <message>
        <source>Record the closing</source>
        <translation>Inscrire la fermeture</translation>
    </message>
    <message>
        <source>Something on record stands against closing “%1”. If it was closed all the same, the record says so, with your reason, until an inspector accepts it.</source>
        <translation>Quelque chose d’inscrit s’oppose à la fermeture de «&#xa0;%1&#xa0;». Si elle a tout de même été fermée, le dossier le dit, avec votre motif, jusqu’à ce qu’un inspecteur l’accepte.</translation>
    </message>
    <message>
        <source>“%1” was closed. Nothing on record stood against it; only the look inside told whether the work is right.</source>
        <translation>«&#xa0;%1&#xa0;» a été fermée. Rien d’inscrit ne s’y opposait&#xa0;; seul le regard à l’intérieur dit si le travail est bon.</translation>
    </message>
    <message>
        <source>Record the opening</source>
        <translation>Inscrire l’ouverture</translation>
    </message>
    <message>
        <source>It needs a reason, for whoever reads this later.</source>
        <translation>Il faut un motif, pour qui lira ceci plus tard.</translation>
    </message>
    <message>
        <source>%1 opened again</source>
        <translation>%1 rouverte</translation>
    </message>
    <message>
        <source>%1 closed</source>
        <translation>%1 fermée</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Photo</translation>
    </message>
    <message>
        <source>“%1” was opened again.</source>
        <translation>«&#xa0;%1&#xa0;» a été rouverte.</translation>
    </message>
    <message>
        <source>No longer holds: %1, signed by %2 on %3.</source>
        <translation>Ne tient plus&#xa0;: %1, signé par %2 le %3.</translation>
    </message>
    <message>
        <source>“%1” then: %2 (now: %3).</source>
        <translation>«&#xa0;%1&#xa0;» alors&#xa0;: %2 (maintenant&#xa0;: %3).</translation>
    </message>
    <message>
        <source>Can be reached again: %1.</source>
        <translation>De nouveau accessible&#xa0;: %1.</translation>
    </message>
    <message>
        <source>No signature and no other closing depends on its being closed.</source>
        <translation>Aucune signature ni autre fermeture ne dépend de sa fermeture.</translation>
    </message>
    <message>
        <source>… and %1 more.</source>
        <translation>… et %1 de plus.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ClosingBoard</name>
    <message>
        <source>Before the final inspection and first flight</source>
        <translation>Avant l’inspection finale et le premier vol</translation>
    </message>
    <message>
        <source>No closing has these words.</source>
        <translation>Aucune fermeture n’a ces mots.</translation>
    </message>
    <message>
        <source>no document</source>
        <translation>aucun document</translation>
    </message>
    <message>
        <source>%1 missing</source>
        <translation>lacunes&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 to clear</source>
        <translation>%1 à régler</translation>
    </message>
    <message>
        <source>%1 advised</source>
        <translation>conseils&#xa0;: %1</translation>
    </message>
    <message>
        <source>Left, Right</source>
        <translation>Gauche, Droite</translation>
    </message>
    <message>
        <source>The column before or behind, on the board</source>
        <translation>La colonne d’avant ou d’après, sur le tableau</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ClosingHead</name>
    <message>
        <source>← All closings</source>
        <translation>← Toutes les fermetures</translation>
    </message>
    <message>
        <source>Make packet</source>
        <translation>Faire le dossier</translation>
    </message>
    <message>
        <source>Inspection visit</source>
        <translation>Visite d’inspection</translation>
    </message>
    <message>
        <source>Accepted afterwards</source>
        <translation>Accepté après coup</translation>
    </message>
    <message>
        <source>Before the final inspection and first flight: the whole aircraft</source>
        <translation>Avant l’inspection finale et le premier vol&#xa0;: tout l’avion</translation>
    </message>
    <message>
        <source>%1; hides %2</source>
        <translation>%1&#xa0;; cache %2</translation>
    </message>
    <message>
        <source>its document is not on record</source>
        <translation>son document n’est pas inscrit</translation>
    </message>
    <message>
        <source>closed before these records began; the inspector decides</source>
        <translation>fermée avant le début de ces dossiers&#xa0;; l’inspecteur décide</translation>
    </message>
    <message>
        <source>%1, and %2 more</source>
        <translation>%1, et %2 de plus</translation>
    </message>
    <message>
        <source>Record an opening</source>
        <translation>Inscrire une ouverture</translation>
    </message>
    <message>
        <source>Record the closing</source>
        <translation>Inscrire la fermeture</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ClosingView</name>
    <message>
        <source>Only what is not met</source>
        <translation>Seulement ce qui n’est pas rempli</translation>
    </message>
    <message>
        <source>Hold points</source>
        <translation>Points d’arrêt</translation>
    </message>
    <message>
        <source>Closed on %1</source>
        <translation>Fermée le %1</translation>
    </message>
    <message>
        <source>Opened on %1</source>
        <translation>Ouverte le %1</translation>
    </message>
    <message>
        <source>Closed about %1</source>
        <translation>Fermée vers le %1</translation>
    </message>
    <message>
        <source>Opened about %1</source>
        <translation>Ouverte vers le %1</translation>
    </message>
    <message>
        <source>Looked at afterwards on %1 by %2: %3</source>
        <translation>Vue après coup le %1 par %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>Signed sheet added</source>
        <translation>Feuille signée ajoutée</translation>
    </message>
    <message>
        <source>Step done: %1</source>
        <translation>Étape faite&#xa0;: %1</translation>
    </message>
    <message>
        <source>Photographs of the inside</source>
        <translation>Photos de l’intérieur</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.heic);;All files (*)</source>
        <translation>Images (*.jpg *.jpeg *.png *.heic);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Closed about %1 by %2</source>
        <translation>Fermée vers le %1 par %2</translation>
    </message>
    <message>
        <source>Opened about %1 by %2</source>
        <translation>Ouverte vers le %1 par %2</translation>
    </message>
    <message>
        <source>Closed on %1 by %2</source>
        <translation>Fermée le %1 par %2</translation>
    </message>
    <message>
        <source>Opened on %1 by %2</source>
        <translation>Ouverte le %1 par %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ClosingsPage</name>
    <message>
        <source>New closing</source>
        <translation>Nouvelle fermeture</translation>
    </message>
    <message>
        <source>Here stand the closings: each region of structure that will be hidden by a skin, a cover or glue, and what must happen before.</source>
        <translation>Ici figurent les fermetures&#xa0;: chaque zone de structure qu’un revêtement, un couvercle ou de la colle cachera, et ce qui doit se faire avant.</translation>
    </message>
    <message>
        <source>Words of a closing or part</source>
        <translation>Mots d’une fermeture ou d’une pièce</translation>
    </message>
    <message>
        <source>Show only closings with these words</source>
        <translation>Ne montrer que les fermetures avec ces mots</translation>
    </message>
    <message>
        <source>Make the first closing</source>
        <translation>Créer la première fermeture</translation>
    </message>
    <message>
        <source>Plan a visit</source>
        <translation>Prévoir une visite</translation>
    </message>
    <message>
        <source>← The visit</source>
        <translation>← La visite</translation>
    </message>
    <message>
        <source>← Visits</source>
        <translation>← Visites</translation>
    </message>
    <message>
        <source>← All closings</source>
        <translation>← Toutes les fermetures</translation>
    </message>
    <message>
        <source>Open it</source>
        <translation>L’ouvrir</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ColumnChoice</name>
    <message>
        <source>Lies inside</source>
        <translation>Se trouve dans</translation>
    </message>
    <message>
        <source>leave it out</source>
        <translation>l’omettre</translation>
    </message>
    <message>
        <source>Column</source>
        <translation>Colonne</translation>
    </message>
    <message>
        <source>First value</source>
        <translation>Première valeur</translation>
    </message>
    <message>
        <source>Fills</source>
        <translation>Remplit</translation>
    </message>
    <message>
        <source>Columns of the list</source>
        <translation>Colonnes de la liste</translation>
    </message>
    <message>
        <source>What column %1 fills</source>
        <translation>Ce que remplit la colonne %1</translation>
    </message>
    <message>
        <source>Column %1</source>
        <translation>Colonne %1</translation>
    </message>
    <message>
        <source>Left out: %1.</source>
        <translation>Laissé de côté&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Left out, as a column before it fills the same: %1.</source>
        <translation>Laissé de côté, car une colonne précédente remplit la même chose&#xa0;: %1.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ConflictPanel</name>
    <message>
        <source>What it would have changed</source>
        <translation>Ce qu’elle aurait modifié</translation>
    </message>
    <message>
        <source>Go to the record</source>
        <translation>Aller à l’enregistrement</translation>
    </message>
    <message>
        <source>Came later, and stood after the merge</source>
        <translation>Venu plus tard, resté en place après la fusion</translation>
    </message>
    <message>
        <source>Came earlier, and lost</source>
        <translation>Venu plus tôt, et écarté</translation>
    </message>
    <message>
        <source>One copy went on with it: it stayed</source>
        <translation>Une copie l’a poursuivi&#xa0;: il est resté</translation>
    </message>
    <message>
        <source>is on record</source>
        <translation>est enregistré</translation>
    </message>
    <message>
        <source>The other copy took it back</source>
        <translation>L’autre copie l’a annulé</translation>
    </message>
    <message>
        <source>was taken back</source>
        <translation>a été annulé</translation>
    </message>
    <message>
        <source>This change was left out</source>
        <translation>Cette modification a été laissée de côté</translation>
    </message>
    <message>
        <source>Keep what stands (K)</source>
        <translation>Garder ce qui est en place (K)</translation>
    </message>
    <message>
        <source>Take the other (T)</source>
        <translation>Reprendre l’autre (T)</translation>
    </message>
    <message>
        <source>Keep the record (K)</source>
        <translation>Garder l’enregistrement (K)</translation>
    </message>
    <message>
        <source>Withdraw it (T)</source>
        <translation>Le retirer (T)</translation>
    </message>
    <message>
        <source>Leave it out (K)</source>
        <translation>La laisser de côté (K)</translation>
    </message>
    <message>
        <source>Try it again (T)</source>
        <translation>Réessayer (T)</translation>
    </message>
    <message>
        <source>The other value cannot be put here by itself. Where it is the right one, go to the record and write it there; then keep what stands.</source>
        <translation>L’autre valeur ne peut pas être mise ici telle quelle. Si c’est la bonne, allez à l’enregistrement et écrivez-la&#xa0;; gardez ensuite ce qui est en place.</translation>
    </message>
    <message>
        <source>What stands against it can be put right, and this tried again. Or write it down anew, and leave this out.</source>
        <translation>Ce qui s’y oppose peut être corrigé&#xa0;; réessayez alors. Ou bien écrivez-le à nouveau, et laissez ceci de côté.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ConflictsView</name>
    <message>
        <source>Show what was decided as well</source>
        <translation>Montrer aussi ce qui est décidé</translation>
    </message>
    <message>
        <source>Things to decide</source>
        <translation>À décider</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Merging another copy has left nothing to decide.</source>
        <translation>La fusion avec une autre copie n’a rien laissé à décider.</translation>
    </message>
    <message>
        <source>Everything is decided.</source>
        <translation>Tout est décidé.</translation>
    </message>
    <message>
        <source>Keep what stands</source>
        <translation>Garder ce qui est en place</translation>
    </message>
    <message>
        <source>Take the other</source>
        <translation>Reprendre l’autre</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::CreditModel</name>
    <message numerus="yes">
        <source>%n pictures</source>
        <translation>
            <numerusform>%Ln photo</numerusform>
            <numerusform>%Ln photos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entries</source>
        <translation>
            <numerusform>%Ln entrée</numerusform>
            <numerusform>%Ln entrées</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 (added)</source>
        <translation>%1 (ajoutée)</translation>
    </message>
    <message>
        <source>does not apply</source>
        <translation>sans objet</translation>
    </message>
    <message>
        <source>no picture</source>
        <translation>aucune photo</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::CrossCheckModel</name>
    <message>
        <source>Facts of the project</source>
        <translation>Données du projet</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>non saisi</translation>
    </message>
    <message>
        <source>says the same</source>
        <translation>dit la même chose</translation>
    </message>
    <message>
        <source>says otherwise than the project</source>
        <translation>dit autre chose que le projet</translation>
    </message>
    <message>
        <source>nobody wrote down what it says</source>
        <translation>personne n’a noté ce qu’il dit</translation>
    </message>
    <message>
        <source>the project&apos;s own facts do not say it</source>
        <translation>les données du projet ne le disent pas</translation>
    </message>
    <message>
        <source>Document</source>
        <translation>Document</translation>
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
        <translation>Projet</translation>
    </message>
    <message>
        <source>Builder</source>
        <translation>Constructeur</translation>
    </message>
    <message>
        <source>Address</source>
        <translation>Adresse</translation>
    </message>
    <message>
        <source>Type</source>
        <translation>Type</translation>
    </message>
    <message>
        <source>Authority&apos;s file</source>
        <translation>Dossier de l’autorité</translation>
    </message>
    <message>
        <source>Maximum weight</source>
        <translation>Masse maximale</translation>
    </message>
    <message>
        <source>Begun on</source>
        <translation>Commencé le</translation>
    </message>
    <message>
        <source>its closing is closed, the step is not done</source>
        <translation>sa fermeture est fermée, l’étape n’est pas faite</translation>
    </message>
    <message>
        <source>closed by the factory, no document on record</source>
        <translation>fermée en usine, aucun document enregistré</translation>
    </message>
    <message>
        <source>no closing is recorded for it</source>
        <translation>aucune fermeture n’est enregistrée pour elle</translation>
    </message>
    <message>
        <source>names no part</source>
        <translation>ne nomme aucune pièce</translation>
    </message>
    <message>
        <source>What the papers say of the aircraft</source>
        <translation>Ce que les documents disent de l’aéronef</translation>
    </message>
    <message>
        <source>Serial numbers</source>
        <translation>Numéros de série</translation>
    </message>
    <message>
        <source>No serial number stands on two parts, and none stands otherwise on the equipment list.</source>
        <translation>Aucun numéro de série ne figure sur deux pièces, et aucun ne diffère sur la liste d’équipement.</translation>
    </message>
    <message>
        <source>To complete in the records</source>
        <translation>À compléter dans les enregistrements</translation>
    </message>
    <message>
        <source>No hole of this kind is in the records.</source>
        <translation>Les enregistrements n’ont pas de lacune de ce genre.</translation>
    </message>
    <message>
        <source>Facts of the project</source>
        <translation>Données du projet</translation>
    </message>
    <message>
        <source>No paper is on record yet. What each says of name, model, serial number and registration is compared here.</source>
        <translation>Aucun document n’est encore enregistré. Ce que chacun dit du nom, du modèle, du numéro de série et de l’immatriculation est comparé ici.</translation>
    </message>
    <message>
        <source>What is written down from the papers agrees with the project.</source>
        <translation>Ce qui est noté des documents concorde avec le projet.</translation>
    </message>
    <message numerus="yes">
        <source>%n entries do not agree; an authority sends such papers back. Upper and lower case, spaces, hyphens and full stops do not count.</source>
        <translation>
            <numerusform>%Ln mention ne concorde pas&#xa0;; une autorité renvoie de tels documents. Majuscules, espaces, traits d’union et points ne comptent pas.</numerusform>
            <numerusform>%Ln mentions ne concordent pas&#xa0;; une autorité renvoie de tels documents. Majuscules, espaces, traits d’union et points ne comptent pas.</numerusform>
        </translation>
    </message>
    <message>
        <source>has the serial number %1, as %2 has</source>
        <translation>a le numéro de série %1, comme %2</translation>
    </message>
    <message>
        <source>Squawk %1</source>
        <translation>Anomalie %1</translation>
    </message>
    <message>
        <source>Deviation %1</source>
        <translation>Écart %1</translation>
    </message>
    <message>
        <source>A weight is not below zero.</source>
        <translation>Une masse n’est pas négative.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::DailyCopy</name>
    <message>
        <source>The copy of the day could not be made; your records are saved. %1</source>
        <translation>La copie du jour n’a pas pu être faite&#xa0;; vos données sont enregistrées. %1</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::DeliveryBoard</name>
    <message>
        <source>Claim letter</source>
        <translation>Réclamation</translation>
    </message>
    <message>
        <source>Waits for this line</source>
        <translation>Attend cette ligne</translation>
    </message>
    <message>
        <source>No open step waits for it.</source>
        <translation>Aucune étape ouverte ne l’attend.</translation>
    </message>
    <message>
        <source>What is not here yet</source>
        <translation>Ce qui n’est pas encore là</translation>
    </message>
    <message>
        <source>Everything on the lists is here.</source>
        <translation>Tout ce qui est sur les listes est là.</translation>
    </message>
    <message>
        <source>all lines</source>
        <translation>toutes les lignes</translation>
    </message>
    <message>
        <source>still to count</source>
        <translation>encore à compter</translation>
    </message>
    <message>
        <source>not as listed</source>
        <translation>pas comme la liste</translation>
    </message>
    <message>
        <source>late</source>
        <translation>en retard</translation>
    </message>
    <message>
        <source>Shipment</source>
        <translation>Livraison</translation>
    </message>
    <message>
        <source>Which lines</source>
        <translation>Quelles lignes</translation>
    </message>
    <message>
        <source>Bring in a list…</source>
        <translation>Importer une liste…</translation>
    </message>
    <message>
        <source>No line here. A packing list can be brought in from a spreadsheet, or be typed line by line below.</source>
        <translation>Aucune ligne ici. Une liste de colisage s’importe d’un tableur, ou s’écrit ligne par ligne ci-dessous.</translation>
    </message>
    <message>
        <source>all shipments</source>
        <translation>toutes les livraisons</translation>
    </message>
    <message>
        <source>no shipment named</source>
        <translation>sans livraison</translation>
    </message>
    <message>
        <source>%1 (open)</source>
        <translation>%1 (ouverte)</translation>
    </message>
    <message numerus="yes">
        <source>%n lines counted as listed</source>
        <translation>
            <numerusform>%Ln ligne comptée comme sur la liste</numerusform>
            <numerusform>%Ln lignes comptées comme sur la liste</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing of this shipment is missing, damaged or late.</source>
        <translation>Rien de cette livraison ne manque, n’est endommagé ou en retard.</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Pièces</translation>
    </message>
    <message>
        <source>%1: entered as an expense</source>
        <translation>%1&#xa0;: inscrit comme dépense</translation>
    </message>
    <message>
        <source>Shipment as an expense</source>
        <translation>Inscrire la livraison comme dépense</translation>
    </message>
    <message>
        <source>Choose a shipment first.</source>
        <translation>Choisir d’abord une livraison.</translation>
    </message>
    <message>
        <source>Count selected lines as listed</source>
        <translation>Compter les lignes choisies comme listées</translation>
    </message>
    <message>
        <source>All of the selected lines came. Space ticks the line under the cursor as counted.</source>
        <translation>Tout des lignes choisies est arrivé. La barre d’espace coche la ligne courante comme comptée.</translation>
    </message>
    <message>
        <source>No packing list is on record yet.</source>
        <translation>Aucune liste de colisage n’est encore enregistrée.</translation>
    </message>
    <message>
        <source>%1 is among the expenses already, with the same amount.</source>
        <translation>%1 figure déjà parmi les dépenses, avec le même montant.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::EntryBar</name>
    <message>
        <source>What was done, as in “2h15 left aileron: dimpled both skins”</source>
        <translation>Ce qui a été fait, comme «&#xa0;2h15 aileron gauche&#xa0;: deux peaux embrevées&#xa0;»</translation>
    </message>
    <message>
        <source>New log entry</source>
        <translation>Nouvelle entrée du carnet</translation>
    </message>
    <message>
        <source>In front of the colon: how long, which day, parts joined by +, “with” a name. Behind it the note, and “done” with the steps to tick.</source>
        <translation>Avant les deux-points&#xa0;: durée, jour, pièces reliées par +, «&#xa0;avec&#xa0;» un nom. Après, la note, et «&#xa0;fait&#xa0;» avec les étapes à cocher.</translation>
    </message>
    <message>
        <source>Start work</source>
        <translation>Commencer le travail</translation>
    </message>
    <message>
        <source>Not logged yet: %1</source>
        <translation>Pas encore inscrit&#xa0;: %1</translation>
    </message>
    <message>
        <source>Enter once more logs it like this.</source>
        <translation>Entrée encore une fois l’inscrit ainsi.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::EntryPictures</name>
    <message>
        <source>No photo of this entry yet. Drop some here.</source>
        <translation>Pas encore de photo de cette entrée. Déposez-en ici.</translation>
    </message>
    <message>
        <source>Add photos…</source>
        <translation>Ajouter des photos…</translation>
    </message>
    <message>
        <source>Photos of the entry</source>
        <translation>Photos de l’entrée</translation>
    </message>
    <message>
        <source>Add photos of the entry</source>
        <translation>Ajouter des photos de l’entrée</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::EnvelopePicture</name>
    <message>
        <source>Limits of weight and centre of gravity</source>
        <translation>Limites de masse et de centre de gravité</translation>
    </message>
    <message>
        <source>Centre of gravity</source>
        <translation>Centre de gravité</translation>
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
        <translation>Équipement</translation>
    </message>
    <message>
        <source>New equipment</source>
        <translation>Nouvel équipement</translation>
    </message>
    <message>
        <source>Withdraw…</source>
        <translation>Retirer…</translation>
    </message>
    <message>
        <source>Equipment written down</source>
        <translation>Équipement noté</translation>
    </message>
    <message>
        <source>removed %1</source>
        <translation>démonté le %1</translation>
    </message>
    <message>
        <source>What is built in and can be taken out is listed here: engine, propeller, battery, instruments.</source>
        <translation>Ici figure ce qui est monté et peut être démonté&#xa0;: moteur, hélice, batterie, instruments.</translation>
    </message>
    <message numerus="yes">
        <source>%n of these have no weight or no arm on record.</source>
        <translation>
            <numerusform>%Ln d’entre eux est sans masse ou sans bras de levier.</numerusform>
            <numerusform>%Ln d’entre eux sont sans masse ou sans bras de levier.</numerusform>
        </translation>
    </message>
    <message>
        <source>All of these have their weight and arm on record.</source>
        <translation>La masse et le bras de levier de tous sont enregistrés.</translation>
    </message>
    <message>
        <source>A weight is not below zero.</source>
        <translation>Une masse n’est pas négative.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ExpenseBoard</name>
    <message>
        <source>Expenses by category</source>
        <translation>Dépenses par catégorie</translation>
    </message>
    <message>
        <source>Expenses by month</source>
        <translation>Dépenses par mois</translation>
    </message>
    <message>
        <source>Category</source>
        <translation>Catégorie</translation>
    </message>
    <message>
        <source>Currency of the bars</source>
        <translation>Monnaie des barres</translation>
    </message>
    <message>
        <source>By category</source>
        <translation>Par catégorie</translation>
    </message>
    <message>
        <source>By month</source>
        <translation>Par mois</translation>
    </message>
    <message>
        <source>No expense on record. Write one below: the amount first, then what it was for.</source>
        <translation>Aucune dépense notée. Écrivez-en une ci-dessous&#xa0;: le montant d’abord, puis pour quoi.</translation>
    </message>
    <message>
        <source>all categories</source>
        <translation>toutes les catégories</translation>
    </message>
    <message>
        <source>without a category</source>
        <translation>sans catégorie</translation>
    </message>
    <message numerus="yes">
        <source>%n expenses</source>
        <translation>
            <numerusform>%Ln dépense</numerusform>
            <numerusform>%Ln dépenses</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n without a receipt</source>
        <translation>
            <numerusform>%Ln sans reçu</numerusform>
            <numerusform>%Ln sans reçu</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n below zero, as they were brought in</source>
        <translation>
            <numerusform>%Ln sous zéro, comme elle a été importée</numerusform>
            <numerusform>%Ln sous zéro, comme elles ont été importées</numerusform>
        </translation>
    </message>
    <message>
        <source>amounts too large to be added up are left out</source>
        <translation>les montants trop grands pour la somme sont omis</translation>
    </message>
    <message>
        <source>In all: %1</source>
        <translation>En tout&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::FilterLine</name>
    <message>
        <source>Look for words on this page</source>
        <translation>Chercher des mots sur cette page</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::Finder</name>
    <message>
        <source>Found</source>
        <translation>Trouvé</translation>
    </message>
    <message>
        <source>Find a record, a page, a command</source>
        <translation>Trouver un enregistrement, une page, une commande</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Trouver</translation>
    </message>
    <message>
        <source>page, Ctrl+%1</source>
        <translation>page, Ctrl+%1</translation>
    </message>
    <message>
        <source>Nothing has all of these words.</source>
        <translation>Rien ne contient tous ces mots.</translation>
    </message>
    <message>
        <source>More records have these words; one more word finds fewer.</source>
        <translation>D’autres enregistrements contiennent ces mots&#xa0;; un mot de plus en trouve moins.</translation>
    </message>
    <message>
        <source>The records could not be searched just now.</source>
        <translation>Il n’a pas été possible de chercher dans les données à l’instant.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::FindingRows</name>
    <message>
        <source>what was found</source>
        <translation>ce qui a été trouvé</translation>
    </message>
    <message>
        <source>Part of finding %1</source>
        <translation>Pièce de la constatation %1</translation>
    </message>
    <message>
        <source>Finding %1</source>
        <translation>Constatation %1</translation>
    </message>
    <message>
        <source>Severity of finding %1</source>
        <translation>Gravité de la constatation %1</translation>
    </message>
    <message>
        <source>Paste the lines of the sheet</source>
        <translation>Coller les lignes de la feuille</translation>
    </message>
    <message>
        <source>One finding a line, with or without its number; “part: what was found” names the part.</source>
        <translation>Une constatation par ligne, avec ou sans numéro&#xa0;; «&#xa0;pièce&#xa0;: ce qui a été trouvé&#xa0;» nomme la pièce.</translation>
    </message>
    <message>
        <source>inspector, on site</source>
        <translation>inspecteur, sur place</translation>
    </message>
    <message>
        <source>inspector, by photo</source>
        <translation>inspecteur, sur photo</translation>
    </message>
    <message>
        <source>Number of finding %1 on the sheet</source>
        <translation>Numéro de la constatation %1 sur la feuille</translation>
    </message>
    <message>
        <source>Who may verify finding %1</source>
        <translation>Qui peut vérifier la constatation %1</translation>
    </message>
    <message>
        <source>Who may verify the correction</source>
        <translation>Qui peut vérifier la correction</translation>
    </message>
    <message>
        <source>“%1” needs its number on the sheet.</source>
        <translation>«&#xa0;%1&#xa0;» demande son numéro sur la feuille.</translation>
    </message>
    <message>
        <source>Two findings have the number %1.</source>
        <translation>Deux constatations ont le numéro %1.</translation>
    </message>
    <message>
        <source>found on %1</source>
        <translation>trouvée le %1</translation>
    </message>
    <message>
        <source>A photograph of the correction is enough for the inspector.</source>
        <translation>Une photo de la correction suffit à l’inspecteur.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::FindingsDialog</name>
    <message>
        <source>Make anew what can be</source>
        <translation>Refaire ce qui peut l’être</translation>
    </message>
    <message>
        <source>Records and files looked over</source>
        <translation>Données et fichiers vérifiés</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Ce qui a été trouvé</translation>
    </message>
    <message>
        <source>The search index and the small copies of photos can be made anew, and half-written files removed. Records, photos and papers are never touched: for those, compare a backup.</source>
        <translation>L’index de recherche et les petites copies des photos peuvent être refaits, et les fichiers à moitié écrits supprimés. Les données, photos et papiers ne sont jamais touchés&#xa0;: pour ceux-là, comparez une sauvegarde.</translation>
    </message>
    <message>
        <source>Everything is as it should be now.</source>
        <translation>Tout est maintenant comme il faut.</translation>
    </message>
    <message numerus="yes">
        <source>%n things are not as they should be.</source>
        <translation>
            <numerusform>%Ln chose n’est pas comme il faut.</numerusform>
            <numerusform>%Ln choses ne sont pas comme il faut.</numerusform>
        </translation>
    </message>
    <message>
        <source>Done: %1</source>
        <translation>Fait&#xa0;: %1</translation>
    </message>
    <message>
        <source>Making anew what can be</source>
        <translation>Réfection de ce qui peut l’être</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Stopped before the end: what is listed as done was made, and not everything was looked over.</source>
        <translation>Arrêté avant la fin&#xa0;: ce qui est indiqué comme fait l’est, et tout n’a pas été examiné.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::FlightForm</name>
    <message>
        <source>Write the flight down</source>
        <translation>Noter le vol</translation>
    </message>
    <message>
        <source>Next flight</source>
        <translation>Prochain vol</translation>
    </message>
    <message>
        <source>1h20 or 80m</source>
        <translation>1h20 ou 80m</translation>
    </message>
    <message>
        <source>empty when there was none</source>
        <translation>vide s’il n’y en a pas eu</translation>
    </message>
    <message>
        <source>Flown on</source>
        <translation>Volé le</translation>
    </message>
    <message>
        <source>Time in the air</source>
        <translation>Temps de vol</translation>
    </message>
    <message>
        <source>Landings</source>
        <translation>Atterrissages</translation>
    </message>
    <message>
        <source>Pilot</source>
        <translation>Pilote</translation>
    </message>
    <message>
        <source>Faults</source>
        <translation>Pannes</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>It needs the time in the air, as 1h20 or 80m.</source>
        <translation>Il manque le temps de vol, comme 1h20 ou 80m.</translation>
    </message>
    <message>
        <source>Flight of %1 written down</source>
        <translation>Vol du %1 noté</translation>
    </message>
    <message>
        <source>A day has 24 hours; write down each flight by itself.</source>
        <translation>Un jour a 24 heures&#xa0;; noter chaque vol séparément.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::FlightsView</name>
    <message>
        <source>Flights</source>
        <translation>Vols</translation>
    </message>
    <message>
        <source>Flights, the latest first</source>
        <translation>Vols, le dernier d’abord</translation>
    </message>
    <message>
        <source>Withdraw…</source>
        <translation>Retirer…</translation>
    </message>
    <message>
        <source>The chosen flight</source>
        <translation>Le vol choisi</translation>
    </message>
    <message>
        <source>No flight is on record yet.</source>
        <translation>Aucun vol enregistré pour l’instant.</translation>
    </message>
    <message numerus="yes">
        <source>%1 in all; %2 since the last fault, in %n flights</source>
        <translation>
            <numerusform>%1 en tout&#xa0;; %2 depuis la dernière panne, en %Ln vol</numerusform>
            <numerusform>%1 en tout&#xa0;; %2 depuis la dernière panne, en %Ln vols</numerusform>
        </translation>
    </message>
    <message>
        <source>For %1</source>
        <translation>Pour %1</translation>
    </message>
    <message>
        <source>For %1: %2 without a fault are flown</source>
        <translation>Pour %1&#xa0;: %2 sans panne sont volées</translation>
    </message>
    <message>
        <source>For %1: %2 left, counted from the last fault; %3 left, counted over all flights</source>
        <translation>Pour %1&#xa0;: reste %2, compté depuis la dernière panne&#xa0;; reste %3, compté sur tous les vols</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>The project&apos;s rules name no test period: the authority or the permit does.</source>
        <translation>Les règles du projet ne nomment pas de période d’essai&#xa0;: l’autorité ou le permis le fait.</translation>
    </message>
    <message>
        <source>Which of these holds, and what counts as a fault, the authority says; check the current edition.</source>
        <translation>Laquelle vaut, et ce qui compte comme panne, l’autorité le dit&#xa0;; vérifier l’édition en vigueur.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n landings</source>
        <translation>
            <numerusform>%Ln atterrissage</numerusform>
            <numerusform>%Ln atterrissages</numerusform>
        </translation>
    </message>
    <message>
        <source>Time flown</source>
        <translation>Durée du vol</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::FolderLine</name>
    <message>
        <source>Choose…</source>
        <translation>Choisir…</translation>
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
        <translation>Historique</translation>
    </message>
    <message>
        <source>Who changed what about it, and when</source>
        <translation>Qui y a modifié quoi, et quand</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::HoldPointForm</name>
    <message>
        <source>Plan the hold point</source>
        <translation>Prévoir le point d’arrêt</translation>
    </message>
    <message>
        <source>keeps the closing open until it is signed</source>
        <translation>garde la fermeture ouverte jusqu’à sa signature</translation>
    </message>
    <message>
        <source>Another hold point for this closing</source>
        <translation>Un autre point d’arrêt pour cette fermeture</translation>
    </message>
    <message>
        <source>who asks for it, and where that is written</source>
        <translation>qui le demande, et où c’est écrit</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Genre</translation>
    </message>
    <message>
        <source>Signed by the</source>
        <translation>Signé par</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Source</translation>
    </message>
    <message>
        <source>Hold point planned: %1</source>
        <translation>Point d’arrêt prévu&#xa0;: %1</translation>
    </message>
    <message>
        <source>This hold point is there already: %1, signed by: %2.</source>
        <translation>Ce point d’arrêt existe déjà&#xa0;: %1, signé par&#xa0;: %2.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::HoldPointPanel</name>
    <message>
        <source>This closing has no hold points.</source>
        <translation>Cette fermeture n’a pas de points d’arrêt.</translation>
    </message>
    <message>
        <source>Sign again</source>
        <translation>Signer de nouveau</translation>
    </message>
    <message>
        <source>Sign</source>
        <translation>Signer</translation>
    </message>
    <message>
        <source>Withdraw signature</source>
        <translation>Retirer la signature</translation>
    </message>
    <message>
        <source>Waive</source>
        <translation>Dispenser</translation>
    </message>
    <message>
        <source>waived on %1 by %2: %3</source>
        <translation>dispensé le %1 par %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>not signed</source>
        <translation>non signé</translation>
    </message>
    <message>
        <source>%1 on %2 by %3, %4</source>
        <translation>%1 le %2 par %3, %4</translation>
    </message>
    <message>
        <source> (no signed sheet on record)</source>
        <translation> (aucune feuille signée inscrite)</translation>
    </message>
    <message>
        <source>Plan another</source>
        <translation>En prévoir un autre</translation>
    </message>
    <message>
        <source>hold point</source>
        <translation>point d’arrêt</translation>
    </message>
    <message>
        <source>What changed since</source>
        <translation>Ce qui a changé depuis</translation>
    </message>
    <message>
        <source>Answered by message</source>
        <translation>Répondu par message</translation>
    </message>
    <message>
        <source>%1, by the %2</source>
        <translation>%1, par&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1, by the %2, if wished</source>
        <translation>%1, par&#xa0;: %2, si souhaité</translation>
    </message>
    <message>
        <source>Signed before the closing</source>
        <translation>Signé avant la fermeture</translation>
    </message>
    <message>
        <source>out of date: something was changed after it</source>
        <translation>périmée&#xa0;: quelque chose a été changé après</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::HoursPage</name>
    <message>
        <source>New person</source>
        <translation>Nouvelle personne</translation>
    </message>
    <message>
        <source>In 10 futures of 100 it is no more than P10, in 50 no more than P50, in 80 no more than P80, in 90 no more than P90.</source>
        <translation>Dans 10 avenirs sur 100 ce n’est pas plus que P10, dans 50 pas plus que P50, dans 80 pas plus que P80, dans 90 pas plus que P90.</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Imprimer…</translation>
    </message>
    <message>
        <source>CSV…</source>
        <translation>CSV…</translation>
    </message>
    <message>
        <source>Write the hours</source>
        <translation>Écrire les heures</translation>
    </message>
    <message>
        <source>Print chart and table (Ctrl+P)</source>
        <translation>Imprimer le graphique et le tableau (Ctrl+P)</translation>
    </message>
    <message>
        <source>Write the figures as CSV</source>
        <translation>Écrire les chiffres en CSV</translation>
    </message>
    <message>
        <source>CSV for a spreadsheet (*.csv)</source>
        <translation>CSV pour un tableur (*.csv)</translation>
    </message>
    <message>
        <source>This is being worked out.</source>
        <translation>Calcul en cours.</translation>
    </message>
    <message>
        <source>Hours %1</source>
        <comment>by what</comment>
        <translation>Heures %1</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Print chart and table</source>
        <translation>Imprimer le graphique et le tableau</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::HoursPanel</name>
    <message>
        <source>this week</source>
        <translation>cette semaine</translation>
    </message>
    <message>
        <source>this month</source>
        <translation>ce mois</translation>
    </message>
    <message>
        <source>in all</source>
        <translation>en tout</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Heures</translation>
    </message>
    <message>
        <source>All hours</source>
        <translation>Toutes les heures</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::InspectionView</name>
    <message>
        <source>Record what was said</source>
        <translation>Inscrire ce qui a été dit</translation>
    </message>
    <message>
        <source>Corrections report</source>
        <translation>Rapport de corrections</translation>
    </message>
    <message>
        <source>Hold points</source>
        <translation>Points d’arrêt</translation>
    </message>
    <message>
        <source>It was about none.</source>
        <translation>Elle n’en concernait aucun.</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Constatations</translation>
    </message>
    <message>
        <source>None on record.</source>
        <translation>Aucune inscrite.</translation>
    </message>
    <message>
        <source>← Visits</source>
        <translation>← Visites</translation>
    </message>
    <message>
        <source>Asked for on %1.</source>
        <translation>Demandée le %1.</translation>
    </message>
    <message>
        <source>Planned for %1.</source>
        <translation>Prévue pour le %1.</translation>
    </message>
    <message>
        <source>Held on %1.</source>
        <translation>Tenue le %1.</translation>
    </message>
    <message>
        <source>Complete since %1.</source>
        <translation>Achevée depuis le %1.</translation>
    </message>
    <message>
        <source>Cancelled on %1.</source>
        <translation>Annulée le %1.</translation>
    </message>
    <message>
        <source>By %1.</source>
        <translation>Par %1.</translation>
    </message>
    <message>
        <source>Also there: %1.</source>
        <translation>Aussi présents&#xa0;: %1.</translation>
    </message>
    <message>
        <source>The signed sheet is not on record.</source>
        <translation>La feuille signée n’est pas inscrite.</translation>
    </message>
    <message>
        <source>nothing said</source>
        <translation>rien de dit</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <translation>%1  %2</translation>
    </message>
    <message>
        <source>verified on %1 by %2</source>
        <translation>vérifiée le %1 par %2</translation>
    </message>
    <message>
        <source>accepted as it is: %1</source>
        <translation>acceptée en l’état&#xa0;: %1</translation>
    </message>
    <message>
        <source>corrected on %1, waits for the %2: %3</source>
        <translation>corrigée le %1, attend&#xa0;: %2. %3</translation>
    </message>
    <message>
        <source>open; the %1 verifies the correction</source>
        <translation>ouverte&#xa0;; vérifiera la correction&#xa0;: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n findings are neither verified nor accepted. Press again if the inspector calls the visit complete all the same.</source>
        <translation>
            <numerusform>%Ln constatation n’est ni vérifiée ni acceptée. Pressez de nouveau si l’inspecteur déclare quand même la visite achevée.</numerusform>
            <numerusform>%Ln constatations ne sont ni vérifiées ni acceptées. Pressez de nouveau si l’inspecteur déclare quand même la visite achevée.</numerusform>
        </translation>
    </message>
    <message>
        <source>Visit complete</source>
        <translation>Visite achevée</translation>
    </message>
    <message>
        <source>Visit cancelled</source>
        <translation>Visite annulée</translation>
    </message>
    <message>
        <source>Mark as complete</source>
        <translation>Marquer comme achevée</translation>
    </message>
    <message>
        <source>Mark as cancelled</source>
        <translation>Marquer comme annulée</translation>
    </message>
    <message>
        <source>Mark as verified</source>
        <translation>Marquer comme vérifiée</translation>
    </message>
    <message>
        <source>Mark as corrected</source>
        <translation>Marquer comme corrigée</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::JournalDetail</name>
    <message>
        <source>Copy the hash</source>
        <translation>Copier l’empreinte</translation>
    </message>
    <message>
        <source>What was changed</source>
        <translation>Ce qui a été modifié</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>It does again: %1</source>
        <translation>Elle refait&#xa0;: %1</translation>
    </message>
    <message>
        <source>It takes back: %1</source>
        <translation>Elle annule&#xa0;: %1</translation>
    </message>
    <message>
        <source>The hash below stands at the foot of the pages that were printed.</source>
        <translation>L’empreinte ci-dessous se trouve au pied des pages imprimées.</translation>
    </message>
    <message>
        <source>Row %1, hash %2</source>
        <translation>Ligne %1, empreinte %2</translation>
    </message>
    <message>
        <source>in the copy that wrote it %1</source>
        <translation>dans la copie qui l’a écrite %1</translation>
    </message>
    <message>
        <source>The hash is copied.</source>
        <translation>L’empreinte est copiée.</translation>
    </message>
    <message>
        <source>Take this back</source>
        <translation>Annuler cette modification</translation>
    </message>
    <message>
        <source>Makes a new change: fields become what they were before this one, and what it made is withdrawn</source>
        <translation>Fait une nouvelle modification&#xa0;: les champs redeviennent ce qu’ils étaient avant celle-ci, et ce qu’elle a créé est retiré</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::JournalFilterBar</name>
    <message>
        <source>Clear</source>
        <translation>Effacer</translation>
    </message>
    <message>
        <source>Words, or the hash at a paper&apos;s foot</source>
        <translation>Mots, ou l’empreinte au pied d’un papier</translation>
    </message>
    <message>
        <source>Filter by words or by a hash</source>
        <translation>Filtrer par mots ou par une empreinte</translation>
    </message>
    <message>
        <source>Filter by person</source>
        <translation>Filtrer par personne</translation>
    </message>
    <message>
        <source>anybody</source>
        <translation>toute personne</translation>
    </message>
    <message>
        <source>Filter by kind</source>
        <translation>Filtrer par nature</translation>
    </message>
    <message>
        <source>every kind</source>
        <translation>toute nature</translation>
    </message>
    <message>
        <source>from which day</source>
        <translation>depuis quel jour</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Du</translation>
    </message>
    <message>
        <source>until which day</source>
        <translation>jusqu’à quel jour</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Au</translation>
    </message>
    <message>
        <source>Clear the filter</source>
        <translation>Effacer le filtre</translation>
    </message>
    <message>
        <source>“%1” is no day.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un jour.</translation>
    </message>
    <message>
        <source>%1 The list goes on as if nothing stood there.</source>
        <translation>%1 La liste fait comme si rien n’y figurait.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::JournalModel</name>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <translation>
            <numerusform>%1 et %Ln autre</numerusform>
            <numerusform>%1 et %Ln autres</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::JournalPage</name>
    <message>
        <source>Changes</source>
        <translation>Modifications</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Imprimer…</translation>
    </message>
    <message>
        <source>No row of the journal matches.</source>
        <translation>Aucune ligne du registre ne correspond.</translation>
    </message>
    <message>
        <source>Print the journal</source>
        <translation>Imprimer le registre</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Print what is listed (Ctrl+P)</source>
        <translation>Imprimer ce qui est listé (Ctrl+P)</translation>
    </message>
    <message>
        <source>Journal</source>
        <translation>Registre</translation>
    </message>
    <message>
        <source>Show everything</source>
        <translation>Tout montrer</translation>
    </message>
    <message>
        <source>with all that is inside it or recorded on it</source>
        <translation>avec tout ce qu’elle contient ou qui y est noté</translation>
    </message>
    <message>
        <source>Only what touched %1</source>
        <translation>Seulement ce qui a touché %1</translation>
    </message>
    <message>
        <source>Looking through the journal</source>
        <translation>Parcours du registre</translation>
    </message>
    <message>
        <source>To decide (%1)</source>
        <translation>À décider (%1)</translation>
    </message>
    <message numerus="yes">
        <source>%n rows</source>
        <translation>
            <numerusform>%Ln ligne</numerusform>
            <numerusform>%Ln lignes</numerusform>
        </translation>
    </message>
    <message>
        <source>The journal could not be read.</source>
        <translation>Le registre n’a pas pu être lu.</translation>
    </message>
    <message>
        <source>Look for words in the list</source>
        <translation>Chercher des mots dans la liste</translation>
    </message>
    <message>
        <source>Print what is listed</source>
        <translation>Imprimer ce qui est listé</translation>
    </message>
    <message>
        <source>Only what touched %1, its hold points, signatures and lines to check</source>
        <translation>Seulement ce qui a touché %1, ses points d’arrêt, ses signatures et ses lignes à vérifier</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::LedgerView</name>
    <message>
        <source>Ledger</source>
        <translation>Bilan</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::LimitsEditor</name>
    <message>
        <source>Write the limits down</source>
        <translation>Noter les limites</translation>
    </message>
    <message>
        <source>Corners of the limits, in their order</source>
        <translation>Coins des limites, dans l’ordre</translation>
    </message>
    <message>
        <source>Chord begins at</source>
        <translation>La corde commence à</translation>
    </message>
    <message>
        <source>Chord is long</source>
        <translation>Longueur de la corde</translation>
    </message>
    <message>
        <source>Limits written down</source>
        <translation>Limites notées</translation>
    </message>
    <message>
        <source>Limits changed</source>
        <translation>Limites modifiées</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Arm</source>
        <translation>Bras de levier</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::LineEditor</name>
    <message>
        <source>“%1” is no duration; write it as 2h15 or 90m.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas une durée&#xa0;; écrivez 2h15 ou 90m.</translation>
    </message>
    <message>
        <source>This is kept in %1; change its currency first.</source>
        <translation>Ceci est en %1&#xa0;; changez d’abord la monnaie.</translation>
    </message>
    <message>
        <source>“%1” is no whole number.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un nombre entier.</translation>
    </message>
    <message>
        <source>“%1” is no currency; write its code, like EUR.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas une monnaie&#xa0;; écrivez son code, comme EUR.</translation>
    </message>
    <message>
        <source>The amount has more decimals than %1.</source>
        <translation>Le montant a plus de décimales que %1.</translation>
    </message>
    <message>
        <source>“%1” is no day; write it as %2, as %2 14:30, or “yesterday”.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un jour&#xa0;; écrivez %2, %2 14:30 ou «&#xa0;hier&#xa0;».</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::LinesEditor</name>
    <message>
        <source>Take the line out</source>
        <translation>Enlever la ligne</translation>
    </message>
    <message>
        <source>Take the chosen line away</source>
        <translation>Retirer la ligne choisie</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>ligne %1</translation>
    </message>
    <message>
        <source>%1 (missing: %2)</source>
        <translation>%1 (il manque&#xa0;: %2)</translation>
    </message>
    <message>
        <source>Not on record, and counted nowhere: %1.</source>
        <translation>Pas consigné, et compté nulle part&#xa0;: %1.</translation>
    </message>
    <message>
        <source>A line that is typed here lacks something, and is not on record. Type what is missing, take the line out, or do the same once more to leave without it.</source>
        <translation>Il manque quelque chose à une ligne saisie ici, et elle n’est pas consignée. Saisissez ce qui manque, retirez la ligne, ou refaites la même chose pour partir sans elle.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::LinksEditor</name>
    <message>
        <source>Kind of record</source>
        <translation>Type d’enregistrement</translation>
    </message>
    <message>
        <source>type a few letters</source>
        <translation>tapez un nom</translation>
    </message>
    <message>
        <source>Assign to %1</source>
        <translation>Attribuer à %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 (%2 of %3)</source>
        <translation>%1 (%2 sur %3)</translation>
    </message>
    <message>
        <source>Go to %1</source>
        <translation>Aller à %1</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Toutes</translation>
    </message>
    <message>
        <source>All belong to %1</source>
        <translation>Toutes appartiennent à %1</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Ôter</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>Ôter %1</translation>
    </message>
    <message>
        <source>%1: belongs to %2</source>
        <translation>%1&#xa0;: appartient à %2</translation>
    </message>
    <message>
        <source>%1: does not belong to %2</source>
        <translation>%1&#xa0;: n’appartient pas à %2</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation>%1 de plus</translation>
    </message>
    <message>
        <source>Show all that the chosen photos belong to</source>
        <translation>Montrer tout ce à quoi les photos choisies appartiennent</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ListDialog</name>
    <message>
        <source>The first row holds headings</source>
        <translation>La première ligne contient des titres</translation>
    </message>
    <message>
        <source>Bring it in</source>
        <translation>Importer</translation>
    </message>
    <message>
        <source>a pasted list</source>
        <translation>une liste collée</translation>
    </message>
    <message>
        <source>Bring in a list</source>
        <translation>Importer une liste</translation>
    </message>
    <message>
        <source>year-month-day</source>
        <translation>année-mois-jour</translation>
    </message>
    <message>
        <source>day.month.year</source>
        <translation>jour.mois.année</translation>
    </message>
    <message>
        <source>month/day/year</source>
        <translation>mois/jour/année</translation>
    </message>
    <message>
        <source>no part</source>
        <translation>aucune pièce</translation>
    </message>
    <message>
        <source>Paste rows from a spreadsheet here. Columns are parted by tabs, commas or semicolons.</source>
        <translation>Collez ici des lignes d’un tableur. Les colonnes sont séparées par tabulation, virgule ou point-virgule.</translation>
    </message>
    <message>
        <source>What it lists</source>
        <translation>Ce qu’elle liste</translation>
    </message>
    <message>
        <source>Rows that name no part</source>
        <translation>Lignes sans pièce</translation>
    </message>
    <message>
        <source>Days are written</source>
        <translation>Les jours sont écrits</translation>
    </message>
    <message>
        <source>The list</source>
        <translation>La liste</translation>
    </message>
    <message>
        <source>Open a file…</source>
        <translation>Ouvrir un fichier…</translation>
    </message>
    <message>
        <source>What becomes of each row</source>
        <translation>Ce que devient chaque ligne</translation>
    </message>
    <message>
        <source>%1 cannot be read.</source>
        <translation>%1 ne peut être lu.</translation>
    </message>
    <message>
        <source>Open a list</source>
        <translation>Ouvrir une liste</translation>
    </message>
    <message>
        <source>Lists (*.csv *.tsv *.txt);;All files (*)</source>
        <translation>Listes (*.csv *.tsv *.txt);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Nothing is changed before you have seen what becomes of each row.</source>
        <translation>Rien n’est modifié avant d’avoir vu ce que devient chaque ligne.</translation>
    </message>
    <message>
        <source>%1 new, %2 there already, %3 blank, %4 wrong.</source>
        <translation>%1 nouvelles, %2 déjà là, %3 vides, %4 fausses.</translation>
    </message>
    <message>
        <source>All rows have to be right; then all of them are taken in at once.</source>
        <translation>Toutes les lignes doivent être justes&#xa0;; alors toutes sont prises d’un coup.</translation>
    </message>
    <message numerus="yes">
        <source>%n rows brought in. Undo takes all of them back.</source>
        <translation>
            <numerusform>%Ln ligne importée. Annuler la retire.</numerusform>
            <numerusform>%Ln lignes importées. Annuler les retire toutes.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing was brought in. %1</source>
        <translation>Rien n’a été importé. %1</translation>
    </message>
    <message>
        <source>none: name the crate or the delivery</source>
        <translation>aucune&#xa0;: nommez la caisse ou la livraison</translation>
    </message>
    <message>
        <source>Rows that name no shipment</source>
        <translation>Lignes sans livraison</translation>
    </message>
    <message>
        <source>No column fills %1: choose on the left which one does.</source>
        <translation>Aucune colonne ne remplit %1&#xa0;: choisissez laquelle à gauche.</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>What was typed into the list is not brought in. The same once more drops it.</source>
        <translation>Ce qui a été tapé dans la liste n’est pas importé. La même chose encore une fois l’abandonne.</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>«&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>The list does not show which number of a day is its month: choose above how days are written.</source>
        <translation>La liste ne montre pas lequel des nombres d’un jour est le mois&#xa0;: choisissez ci-dessus comment les jours sont écrits.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ListRows</name>
    <message>
        <source>+ new</source>
        <translation>+ nouveau</translation>
    </message>
    <message>
        <source>= there already</source>
        <translation>= déjà là</translation>
    </message>
    <message>
        <source>· blank</source>
        <translation>· vide</translation>
    </message>
    <message>
        <source>× wrong</source>
        <translation>× faux</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Ligne</translation>
    </message>
    <message>
        <source>Becomes</source>
        <translation>Devient</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Row %1: %2</source>
        <translation>Ligne %1&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::LoadingPanel</name>
    <message>
        <source>New loading</source>
        <translation>Nouveau chargement</translation>
    </message>
    <message>
        <source>Withdraw…</source>
        <translation>Retirer…</translation>
    </message>
    <message>
        <source>On board, besides the empty aeroplane</source>
        <translation>À bord, outre l’avion à vide</translation>
    </message>
    <message>
        <source>Loading</source>
        <translation>Chargement</translation>
    </message>
    <message>
        <source>Loading %1 changed</source>
        <translation>Chargement %1 modifié</translation>
    </message>
    <message>
        <source>load %1</source>
        <translation>charge %1</translation>
    </message>
    <message>
        <source>Say what is on board.</source>
        <translation>Dites ce qui est à bord.</translation>
    </message>
    <message>
        <source>What is on board weighs nothing or more.</source>
        <translation>Ce qui est à bord pèse rien ou plus.</translation>
    </message>
    <message>
        <source>Loading written down</source>
        <translation>Chargement noté</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Arm</source>
        <translation>Bras de levier</translation>
    </message>
    <message>
        <source>The extremes are searched over all loads that the loadings name: of each no less than the least and no more than the most of any of them, within the maximum weight.</source>
        <translation>Les extrêmes sont cherchés sur toutes les charges que nomment les chargements&#xa0;: de chacune pas moins que le moins et pas plus que le plus, dans la masse maximale.</translation>
    </message>
    <message>
        <source>The extremes are searched as soon as there are a weighing and a loading. While nothing is weighed, a loading stands for itself.</source>
        <translation>Les extrêmes sont cherchés dès qu’il y a une pesée et un chargement. Tant que rien n’est pesé, un chargement vaut pour lui-même.</translation>
    </message>
    <message>
        <source>The flight manual and the authority decide on limits.</source>
        <translation>Le manuel de vol et l’autorité décident des limites.</translation>
    </message>
    <message>
        <source>The limits name no source. The flight manual and the authority decide.</source>
        <translation>Les limites ne citent aucune source. Le manuel de vol et l’autorité décident.</translation>
    </message>
    <message>
        <source>Limits from: %1. The flight manual and the authority decide.</source>
        <translation>Limites tirées de&#xa0;: %1. Le manuel de vol et l’autorité décident.</translation>
    </message>
    <message>
        <source>Square: the empty aeroplane, E. Discs: the loadings by their number. Triangles: the extremes. F is the farthest forward, A the farthest aft.</source>
        <translation>Carré&#xa0;: l’avion à vide, E. Disques&#xa0;: les chargements selon leur numéro. Triangles&#xa0;: les extrêmes. F est le plus avant, A le plus arrière.</translation>
    </message>
    <message>
        <source>Not all that is on board is in these sums: some lines lack something.</source>
        <translation>Tout ce qui est à bord n’est pas dans ces sommes&#xa0;: il manque quelque chose à certaines lignes.</translation>
    </message>
    <message>
        <source>Not all corners are in the limits: some lack something.</source>
        <translation>Tous les coins ne sont pas dans les limites&#xa0;: il manque quelque chose à certains.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::LogDetail</name>
    <message>
        <source>Duration</source>
        <translation>Durée</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Ce qui a été fait</translation>
    </message>
    <message>
        <source>Changed what was inspected</source>
        <translation>A modifié ce qui était inspecté</translation>
    </message>
    <message>
        <source>Who worked</source>
        <translation>Qui a travaillé</translation>
    </message>
    <message>
        <source>Split this entry…</source>
        <translation>Diviser cette entrée…</translation>
    </message>
    <message>
        <source>Move this entry…</source>
        <translation>Déplacer cette entrée…</translation>
    </message>
    <message>
        <source>Move them…</source>
        <translation>Les déplacer…</translation>
    </message>
    <message>
        <source>Withdraw this entry</source>
        <translation>Retirer cette entrée</translation>
    </message>
    <message>
        <source>Withdraw them</source>
        <translation>Les retirer</translation>
    </message>
    <message numerus="yes">
        <source>%n entries are chosen, %1 in all.</source>
        <translation>
            <numerusform>%Ln entrée est choisie, %1 en tout.</numerusform>
            <numerusform>%Ln entrées sont choisies, %1 en tout.</numerusform>
        </translation>
    </message>
    <message>
        <source>The day is only about right</source>
        <translation>Le jour n’est qu’approximatif</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::LogModel</name>
    <message numerus="yes">
        <source>%n photos</source>
        <translation>
            <numerusform>%Ln photo</numerusform>
            <numerusform>%Ln photos</numerusform>
        </translation>
    </message>
    <message>
        <source>about</source>
        <translation>environ</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>environ %1</translation>
    </message>
    <message>
        <source>written down late, %1</source>
        <translation>notée tard, %1</translation>
    </message>
    <message>
        <source>changed what was inspected</source>
        <translation>a modifié ce qui était inspecté</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>de %1</translation>
    </message>
    <message>
        <source>Squawk %1</source>
        <translation>Anomalie %1</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::LogPage</name>
    <message>
        <source>Log entries</source>
        <translation>Entrées</translation>
    </message>
    <message>
        <source>What was done each day will stand here. Write the first entry in the line above, or start the clock.</source>
        <translation>Ici figurera ce qui a été fait chaque jour. Écrivez la première entrée dans la ligne ci-dessus, ou lancez l’horloge.</translation>
    </message>
    <message>
        <source>Type to filter</source>
        <translation>Tapez pour filtrer</translation>
    </message>
    <message>
        <source>Filter the log</source>
        <translation>Filtrer le carnet</translation>
    </message>
    <message numerus="yes">
        <source>%n entries, %1</source>
        <translation>
            <numerusform>%Ln entrée, %1</numerusform>
            <numerusform>%Ln entrées, %1</numerusform>
        </translation>
    </message>
    <message>
        <source>The year before</source>
        <translation>L’année d’avant</translation>
    </message>
    <message>
        <source>The year after</source>
        <translation>L’année d’après</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Imprimer…</translation>
    </message>
    <message>
        <source>Print the builder&apos;s log (Ctrl+P)</source>
        <translation>Imprimer le carnet du constructeur (Ctrl+P)</translation>
    </message>
    <message>
        <source>This year ends today; there is none after it</source>
        <translation>Cette année finit aujourd’hui&#xa0;; il n’y en a pas après</translation>
    </message>
    <message>
        <source>Withdraw what is chosen</source>
        <translation>Retirer ce qui est choisi</translation>
    </message>
    <message>
        <source>Split the entry</source>
        <translation>Diviser l’entrée</translation>
    </message>
    <message>
        <source>Move the entry elsewhere</source>
        <translation>Déplacer l’entrée ailleurs</translation>
    </message>
    <message>
        <source>Look for words in the list</source>
        <translation>Chercher des mots dans la liste</translation>
    </message>
    <message>
        <source>Print the builder&apos;s log</source>
        <translation>Imprimer le carnet de construction</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::LogbookForm</name>
    <message>
        <source>Print to a file…</source>
        <translation>Imprimer dans un fichier…</translation>
    </message>
    <message>
        <source>with photographs</source>
        <translation>avec photos</translation>
    </message>
    <message>
        <source>Print the builder&apos;s log</source>
        <translation>Imprimer le carnet du constructeur</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>by date</source>
        <translation>par date</translation>
    </message>
    <message>
        <source>by part</source>
        <translation>par pièce</translation>
    </message>
    <message>
        <source>the first entry</source>
        <translation>la première entrée</translation>
    </message>
    <message>
        <source>the last entry</source>
        <translation>la dernière entrée</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Ordre</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Jusqu’à</translation>
    </message>
    <message>
        <source>“%1” is no day.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un jour.</translation>
    </message>
    <message>
        <source>The last day lies before the first.</source>
        <translation>Le dernier jour est avant le premier.</translation>
    </message>
    <message>
        <source>Builder&apos;s log</source>
        <translation>Carnet du constructeur</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::MainWindow</name>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Fichier</translation>
    </message>
    <message>
        <source>&amp;New project</source>
        <translation>&amp;Nouveau projet</translation>
    </message>
    <message>
        <source>&amp;Open a project folder…</source>
        <translation>&amp;Ouvrir un dossier de projet…</translation>
    </message>
    <message>
        <source>Open &amp;again</source>
        <translation>&amp;Rouvrir</translation>
    </message>
    <message>
        <source>&amp;Import records…</source>
        <translation>&amp;Importer des dossiers…</translation>
    </message>
    <message>
        <source>&amp;Export records…</source>
        <translation>&amp;Exporter les dossiers…</translation>
    </message>
    <message>
        <source>&amp;Verify records and files</source>
        <translation>&amp;Vérifier dossiers et fichiers</translation>
    </message>
    <message>
        <source>&amp;Close the project</source>
        <translation>&amp;Fermer le projet</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Quitter</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Édition</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Annuler</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Refaire</translation>
    </message>
    <message>
        <source>New &amp;squawk</source>
        <translation>Nouvelle &amp;anomalie</translation>
    </message>
    <message>
        <source>New on this &amp;page</source>
        <translation>Nouveau sur cette &amp;page</translation>
    </message>
    <message>
        <source>&amp;Find…</source>
        <translation>&amp;Trouver…</translation>
    </message>
    <message>
        <source>&amp;Go</source>
        <translation>A&amp;ller à</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Affichage</translation>
    </message>
    <message>
        <source>&amp;Full screen</source>
        <translation>&amp;Plein écran</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>Ai&amp;de</translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation>&amp;Touches</translation>
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
        <translation>Ouvrir un dossier de projet</translation>
    </message>
    <message>
        <source>&amp;Undo: %1</source>
        <translation>&amp;Annuler&#xa0;: %1</translation>
    </message>
    <message>
        <source>&amp;Redo: %1</source>
        <translation>&amp;Refaire&#xa0;: %1</translation>
    </message>
    <message>
        <source>Import records</source>
        <translation>Importer des dossiers</translation>
    </message>
    <message>
        <source>Records (*.json);;All files (*)</source>
        <translation>Dossiers (*.json);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Export records</source>
        <translation>Exporter les dossiers</translation>
    </message>
    <message>
        <source>Records (*.json)</source>
        <translation>Dossiers (*.json)</translation>
    </message>
    <message>
        <source>&amp;Preferences…</source>
        <translation>Pré&amp;férences…</translation>
    </message>
    <message>
        <source>Bring in a &amp;list…</source>
        <translation>Importer une &amp;liste…</translation>
    </message>
    <message>
        <source>&amp;Print</source>
        <translation>&amp;Imprimer</translation>
    </message>
    <message>
        <source>%1…</source>
        <comment>a paper to make</comment>
        <translation>%1…</translation>
    </message>
    <message>
        <source>&amp;Bench view</source>
        <translation>Vue d’&amp;établi</translation>
    </message>
    <message>
        <source>&amp;Back up now</source>
        <translation>&amp;Sauvegarder maintenant</translation>
    </message>
    <message>
        <source>Bac&amp;kups…</source>
        <translation>Sauve&amp;gardes…</translation>
    </message>
    <message>
        <source>Write log and lists into the &amp;folder</source>
        <translation>Écrire le carnet et les listes dans le &amp;dossier</translation>
    </message>
    <message>
        <source>&amp;Restore a backup…</source>
        <translation>&amp;Restaurer une sauvegarde…</translation>
    </message>
    <message>
        <source>&amp;Merge another copy…</source>
        <translation>&amp;Fusionner une autre copie…</translation>
    </message>
    <message>
        <source>Merge another copy: choose records.db in its folder</source>
        <translation>Fusionner une autre copie&#xa0;: choisir records.db dans son dossier</translation>
    </message>
    <message>
        <source>Databases of projects (*.db);;All files (*)</source>
        <translation>Bases de données de projets (*.db);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>The whole project with its files (*.zip)</source>
        <translation>Tout le projet avec ses fichiers (*.zip)</translation>
    </message>
    <message>
        <source>A new project is begun and not made. Make it, press Escape to drop it, or do the same once more to leave without it.</source>
        <translation>Un nouveau projet est commencé et n’est pas créé. Le créer, l’abandonner avec Échap, ou refaire la même chose pour partir sans lui.</translation>
    </message>
    <message>
        <source>Photos are being taken in. They are kept when that is done; do the same once more to stop it.</source>
        <translation>Des photos sont en cours d’import. Elles sont conservées une fois que c’est fini&#xa0;; refaire la même chose l’arrête.</translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n photos are being taken in. They are kept when that is done; do the same once more to stop it.</source>
        <translation>
            <numerusform>La photo est en cours d’import (%1 sur %Ln). Elle est conservée une fois que c’est fini&#xa0;; refaire la même chose l’arrête.</numerusform>
            <numerusform>%1 photos sur %Ln sont importées. Elles sont conservées une fois que c’est fini&#xa0;; refaire la même chose l’arrête.</numerusform>
        </translation>
    </message>
    <message>
        <source>Inspection packet</source>
        <translation>Dossier d’inspection</translation>
    </message>
    <message>
        <source>Builder&apos;s log</source>
        <translation>Carnet de construction</translation>
    </message>
    <message>
        <source>Open the closing that the packet is for; it is made there.</source>
        <translation>Ouvrez la fermeture à laquelle le dossier est destiné&#xa0;; c’est là qu’il se fait.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::MajorPortionView</name>
    <message>
        <source>Tasks of the major portion</source>
        <translation>Tâches de la majeure partie</translation>
    </message>
    <message>
        <source>Add the usual tasks</source>
        <translation>Ajouter les tâches usuelles</translation>
    </message>
    <message>
        <source>Add a task</source>
        <translation>Ajouter une tâche</translation>
    </message>
    <message>
        <source>Here stands, task by task, what the maker, paid help and the builder did, in tenths. Begin with the usual tasks of the aircraft&apos;s class, then bring them into line with the form of your authority.</source>
        <translation>Ici figure, tâche par tâche et en dixièmes, ce qu’ont fait le fabricant, l’aide rémunérée et le constructeur. Commencez par les tâches usuelles de la classe d’aéronef, puis accordez-les avec le formulaire de votre autorité.</translation>
    </message>
    <message>
        <source>Class of aircraft</source>
        <translation>Classe d’aéronef</translation>
    </message>
    <message>
        <source>Common practice and no authority&apos;s form; rows that are there stay.</source>
        <translation>Pratique courante et non un formulaire d’autorité&#xa0;; les lignes présentes restent.</translation>
    </message>
    <message>
        <source>Section: task</source>
        <translation>Section&#xa0;: tâche</translation>
    </message>
    <message>
        <source>A task that the form does not name</source>
        <translation>Une tâche que le formulaire ne nomme pas</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Imprimer…</translation>
    </message>
    <message>
        <source>Print the major portion with its evidence</source>
        <translation>Imprimer la majeure partie avec ses preuves</translation>
    </message>
    <message>
        <source>All usual tasks are there already.</source>
        <translation>Toutes les tâches usuelles sont déjà là.</translation>
    </message>
    <message numerus="yes">
        <source>%n usual tasks added, each for the maker until you enter who did it</source>
        <translation>
            <numerusform>%Ln tâche usuelle ajoutée, au fabricant jusqu’à ce que vous saisissiez qui l’a faite</numerusform>
            <numerusform>%Ln tâches usuelles ajoutées, chacune au fabricant jusqu’à ce que vous saisissiez qui l’a faite</numerusform>
        </translation>
    </message>
    <message>
        <source>Task “%1” added</source>
        <translation>Tâche «&#xa0;%1&#xa0;» ajoutée</translation>
    </message>
    <message numerus="yes">
        <source>%n claimed tasks have no picture.</source>
        <translation>
            <numerusform>%Ln tâche revendiquée n’a pas de photo.</numerusform>
            <numerusform>%Ln tâches revendiquées n’ont pas de photo.</numerusform>
        </translation>
    </message>
    <message>
        <source>Tasks count, hours do not. Rules change: check the current form with your authority.</source>
        <translation>Les tâches comptent, pas les heures. Les règles changent&#xa0;: vérifiez le formulaire en vigueur auprès de votre autorité.</translation>
    </message>
    <message>
        <source>Go to the next of them</source>
        <translation>Aller à la suivante</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::MatchBar</name>
    <message>
        <source>Confirm them all</source>
        <translation>Les confirmer toutes</translation>
    </message>
    <message>
        <source>Shift+M</source>
        <translation>Maj+M</translation>
    </message>
    <message>
        <source>Show them</source>
        <translation>Les montrer</translation>
    </message>
    <message numerus="yes">
        <source>%n photos were taken during work that is in the log.</source>
        <translation>
            <numerusform>%Ln photo a été prise pendant un travail inscrit.</numerusform>
            <numerusform>%Ln photos ont été prises pendant un travail inscrit.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::MaterialBoard</name>
    <message>
        <source>Used on…</source>
        <translation>Utilisé sur…</translation>
    </message>
    <message>
        <source>Still curing</source>
        <translation>En cours de durcissement</translation>
    </message>
    <message>
        <source>Nothing cures at the moment.</source>
        <translation>Rien ne durcit en ce moment.</translation>
    </message>
    <message>
        <source>Used for</source>
        <translation>Utilisé pour</translation>
    </message>
    <message>
        <source>Nothing on record.</source>
        <translation>Rien de noté.</translation>
    </message>
    <message>
        <source>Cure times hold at the temperature of the data sheet; in a cold workshop they are longer.</source>
        <translation>Les durées de durcissement valent à la température de la fiche&#xa0;; dans un atelier froid elles sont plus longues.</translation>
    </message>
    <message>
        <source>No lot on record. Write the material below, then its lot number and its last good day.</source>
        <translation>Aucun lot noté. Écrivez le matériau ci-dessous, puis son numéro de lot et son dernier bon jour.</translation>
    </message>
    <message>
        <source>No lot has expired or will within 30 days.</source>
        <translation>Aucun lot n’est périmé ni ne le sera sous 30 jours.</translation>
    </message>
    <message>
        <source>%1 expired, %2 within 30 days.</source>
        <translation>Périmés&#xa0;: %1&#xa0;; sous 30 jours&#xa0;: %2.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::MeasurementPanel</name>
    <message>
        <source>Not measured yet.</source>
        <translation>Pas encore mesuré.</translation>
    </message>
    <message numerus="yes">
        <source>Measured %n times.</source>
        <translation>
            <numerusform>Mesuré %Ln fois.</numerusform>
            <numerusform>Mesuré %Ln fois.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::MeasurementPlot</name>
    <message>
        <source>Values over time</source>
        <translation>Valeurs dans le temps</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::MediaModel</name>
    <message>
        <source>%1 (taken in)</source>
        <translation>%1 (importation)</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::MessageLine</name>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Dismiss</source>
        <translation>Masquer</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>%1: %2 of %3</source>
        <translation>%1&#xa0;: %2 sur %3</translation>
    </message>
    <message numerus="yes">
        <source>%1, about %n s to go</source>
        <translation>
            <numerusform>%1, encore environ %Ln s</numerusform>
            <numerusform>%1, encore environ %Ln s</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1; %n more at work</source>
        <translation>
            <numerusform>%1&#xa0;; %Ln autre en cours</numerusform>
            <numerusform>%1&#xa0;; %Ln autres en cours</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::MissingView</name>
    <message>
        <source>No open closing and no part that will be hidden lacks photographs on record.</source>
        <translation>Aucune fermeture ouverte et aucune pièce qui sera cachée ne manque de photos.</translation>
    </message>
    <message>
        <source>Closings that lack photographs</source>
        <translation>Fermetures manquant de photos</translation>
    </message>
    <message>
        <source>Parts that lack photographs</source>
        <translation>Pièces manquant de photos</translation>
    </message>
    <message>
        <source>Take photos in</source>
        <translation>Importer des photos</translation>
    </message>
    <message>
        <source>no photograph of the inside</source>
        <translation>aucune photo de l’intérieur</translation>
    </message>
    <message numerus="yes">
        <source>%n photographs of the inside</source>
        <translation>
            <numerusform>%Ln photo de l’intérieur</numerusform>
            <numerusform>%Ln photos de l’intérieur</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2 are asked for</source>
        <translation>%1, %2 demandées</translation>
    </message>
    <message>
        <source>work was done after the latest photograph</source>
        <translation>du travail a suivi la dernière photo</translation>
    </message>
    <message numerus="yes">
        <source>%n closings lack photographs of the open structure</source>
        <translation>
            <numerusform>%Ln fermeture manque de photos de la structure ouverte</numerusform>
            <numerusform>%Ln fermetures manquent de photos de la structure ouverte</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n parts were worked on, will be hidden, and have no photograph of the inside</source>
        <translation>
            <numerusform>%Ln pièce travaillée sera cachée et n’a pas de photo de l’intérieur</numerusform>
            <numerusform>%Ln pièces travaillées seront cachées et n’ont pas de photo de l’intérieur</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Show %n photos that belong to no part and no closing</source>
        <translation>
            <numerusform>Montrer %Ln photo sans pièce ni fermeture</numerusform>
            <numerusform>Montrer %Ln photos sans pièce ni fermeture</numerusform>
        </translation>
    </message>
    <message>
        <source>What is missing</source>
        <translation>Ce qui manque</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::MomentLine</name>
    <message>
        <source>day, or day and time</source>
        <translation>jour, ou jour et heure</translation>
    </message>
    <message>
        <source>“%1” is no day; 14 March 2026 is written 2026-03-14.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un jour&#xa0;; le 14 mars 2026 s’écrit 2026-03-14.</translation>
    </message>
    <message>
        <source>It needs the day.</source>
        <translation>Il faut le jour.</translation>
    </message>
    <message>
        <source>%1 lies ahead: only what has happened is recorded.</source>
        <translation>%1 est à venir&#xa0;: on n’inscrit que ce qui est arrivé.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::NewClosingForm</name>
    <message>
        <source>Make the closing</source>
        <translation>Créer la fermeture</translation>
    </message>
    <message>
        <source>opening it again would mean drilling, cutting, or breaking glue or fabric</source>
        <translation>la rouvrir demanderait de percer, de couper, ou de détruire colle ou toile</translation>
    </message>
    <message>
        <source>this is the end of the whole aircraft, before the final inspection and first flight</source>
        <translation>c’est la fin de tout l’avion, avant l’inspection finale et le premier vol</translation>
    </message>
    <message>
        <source>of the tree, or a new one</source>
        <translation>de l’arbre, ou une nouvelle</translation>
    </message>
    <message>
        <source>A closing is the act after which a region can no longer be seen or reached.</source>
        <translation>Une fermeture est l’acte après lequel une zone ne peut plus être vue ni atteinte.</translation>
    </message>
    <message>
        <source>the builder</source>
        <translation>le constructeur</translation>
    </message>
    <message>
        <source>an earlier builder</source>
        <translation>un constructeur précédent</translation>
    </message>
    <message>
        <source>the factory</source>
        <translation>l’usine</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Pièce</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titre</translation>
    </message>
    <message>
        <source>Hides</source>
        <translation>Cache</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Comment</translation>
    </message>
    <message>
        <source>Closed by</source>
        <translation>Fermée par</translation>
    </message>
    <message>
        <source>Inspector&apos;s lists</source>
        <translation>Listes de l’inspecteur</translation>
    </message>
    <message>
        <source>riveted, bonded, covered …</source>
        <translation>rivetée, collée, entoilée …</translation>
    </message>
    <message numerus="yes">
        <source>%1 (%n lines)</source>
        <translation>
            <numerusform>%1 (%Ln ligne)</numerusform>
            <numerusform>%1 (%Ln lignes)</numerusform>
        </translation>
    </message>
    <message>
        <source>It needs a part, and a title such as “Left wing, upper skin”.</source>
        <translation>Il faut une pièce, et un titre comme «&#xa0;Aile gauche, revêtement supérieur&#xa0;».</translation>
    </message>
    <message>
        <source>New closing: %1</source>
        <translation>Nouvelle fermeture&#xa0;: %1</translation>
    </message>
    <message>
        <source>Several parts are called “%1”: choose one from the list.</source>
        <translation>Plusieurs pièces s’appellent «&#xa0;%1&#xa0;»&#xa0;: choisissez-en une dans la liste.</translation>
    </message>
    <message>
        <source>“%1” will be a new part</source>
        <translation>«&#xa0;%1&#xa0;» sera une nouvelle pièce</translation>
    </message>
    <message>
        <source>%1, all of it</source>
        <translation>%1, tout entier</translation>
    </message>
    <message>
        <source>It hides nothing yet: tick what can no longer be reached behind it.</source>
        <translation>Rien n’est encore caché&#xa0;: cochez ce qui ne sera plus accessible derrière elle.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::NewProjectForm</name>
    <message>
        <source>Make the project</source>
        <translation>Créer le projet</translation>
    </message>
    <message>
        <source>A new project</source>
        <translation>Un nouveau projet</translation>
    </message>
    <message>
        <source>a kit</source>
        <translation>un kit</translation>
    </message>
    <message>
        <source>plans</source>
        <translation>plans</translation>
    </message>
    <message>
        <source>Name of the project</source>
        <translation>Nom du projet</translation>
    </message>
    <message>
        <source>Rules of</source>
        <translation>Règles de</translation>
    </message>
    <message>
        <source>Built from</source>
        <translation>Construit d’après</translation>
    </message>
    <message>
        <source>Aircraft type</source>
        <translation>Type d’avion</translation>
    </message>
    <message>
        <source>Builder</source>
        <translation>Constructeur</translation>
    </message>
    <message>
        <source>Kept in the folder</source>
        <translation>Rangé dans le dossier</translation>
    </message>
    <message>
        <source>can be added later</source>
        <translation>peut être ajouté plus tard</translation>
    </message>
    <message>
        <source>It needs a name, and who builds it.</source>
        <translation>Il faut un nom, et qui le construit.</translation>
    </message>
    <message>
        <source>Begin with</source>
        <translation>Commencer avec</translation>
    </message>
    <message>
        <source>no parts yet</source>
        <translation>aucune pièce</translation>
    </message>
    <message numerus="yes">
        <source>Untick what your aeroplane has not. The closings that go with the parts: %n. Everything can be renamed, moved and added to later.</source>
        <translation>
            <numerusform>Décochez ce que votre avion n’a pas. Fermetures qui vont avec les pièces&#xa0;: %Ln. Tout peut être renommé, déplacé et complété plus tard.</numerusform>
            <numerusform>Décochez ce que votre avion n’a pas. Fermetures qui vont avec les pièces&#xa0;: %Ln. Tout peut être renommé, déplacé et complété plus tard.</numerusform>
        </translation>
    </message>
    <message>
        <source>Project begun</source>
        <translation>Projet commencé</translation>
    </message>
    <message>
        <source>It needs a folder to be kept in.</source>
        <translation>Il faut un dossier où le conserver.</translation>
    </message>
    <message>
        <source>Ctrl+Enter makes the project.</source>
        <translation>Ctrl+Entrée crée le projet.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::NoticeBars</name>
    <message>
        <source>Merge it</source>
        <translation>Fusionner</translation>
    </message>
    <message>
        <source>Dismiss</source>
        <translation>Masquer</translation>
    </message>
    <message>
        <source>The project&apos;s folder is back.</source>
        <translation>Le dossier du projet est revenu.</translation>
    </message>
    <message>
        <source>The project&apos;s folder is no longer at %1. Nothing can be written down until it is back, or is opened where it is now.</source>
        <translation>Le dossier du projet n’est plus à %1. Rien ne peut être noté tant qu’il n’est pas revenu ou ouvert là où il est maintenant.</translation>
    </message>
    <message>
        <source>Open it where it is…</source>
        <translation>L’ouvrir là où il est…</translation>
    </message>
    <message>
        <source>%1 Look everything over before you go on, and keep the backups.</source>
        <translation>%1 Vérifiez tout avant de continuer, et gardez les sauvegardes.</translation>
    </message>
    <message>
        <source>Verify records and files</source>
        <translation>Vérifier dossiers et fichiers</translation>
    </message>
    <message>
        <source>To read only, as the records were when this was opened (%1). %2</source>
        <translation>En lecture seule, tel qu’était le projet à l’ouverture (%1). %2</translation>
    </message>
    <message>
        <source>Open it anew</source>
        <translation>Rouvrir</translation>
    </message>
    <message>
        <source>Shows what was changed since, and can write when nothing stands against that any more.</source>
        <translation>Montre ce qui a été modifié depuis, et peut écrire dès que rien ne s’y oppose plus.</translation>
    </message>
    <message>
        <source>The records have been changed since this was opened (%1), and are shown as they were then. To read only. %2</source>
        <translation>Des modifications ont été faites depuis l’ouverture (%1)&#xa0;; ce qui est montré date d’alors. En lecture seule. %2</translation>
    </message>
    <message>
        <source>Bring the records of %1 into this project?</source>
        <translation>Importer les enregistrements de %1 dans ce projet&#xa0;?</translation>
    </message>
    <message>
        <source>Import records</source>
        <translation>Importer les enregistrements</translation>
    </message>
    <message>
        <source>The program that had the project open for writing has closed it. To read only, as the records were when this was opened (%1): open it anew to see what was changed since, and to write.</source>
        <translation>Le programme qui avait ouvert le projet en écriture l’a fermé. En lecture seule, dans l’état des enregistrements à l’ouverture (%1)&#xa0;: rouvrez-le pour voir ce qui a changé depuis, et pour écrire.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::NumberBox</name>
    <message>
        <source>“%1” cannot stand there: it is a whole number from %2 to %3.</source>
        <translation>«&#xa0;%1&#xa0;» ne peut pas figurer là&#xa0;: c’est un nombre entier de %2 à %3.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::OpenRequestNotice</name>
    <message>
        <source>Add these hold points to it</source>
        <translation>Y ajouter ces points d’arrêt</translation>
    </message>
    <message>
        <source>“%1”, held on %2, is not complete.</source>
        <translation>«&#xa0;%1&#xa0;», tenue le %2, n’est pas achevée.</translation>
    </message>
    <message>
        <source>“%1”, asked for on %2, is still open.</source>
        <translation>«&#xa0;%1&#xa0;», demandée le %2, est encore ouverte.</translation>
    </message>
    <message>
        <source>This authority takes one request at a time: a visit must be complete before the next one can be asked for.</source>
        <translation>Cette autorité prend une demande à la fois&#xa0;: une visite doit être achevée avant d’en demander une autre.</translation>
    </message>
    <message numerus="yes">
        <source>%n of its findings are neither verified nor accepted; see the visit itself.</source>
        <translation>
            <numerusform>%Ln de ses constatations n’est ni vérifiée ni acceptée&#xa0;; voyez la visite.</numerusform>
            <numerusform>%Ln de ses constatations ne sont ni vérifiées ni acceptées&#xa0;; voyez la visite.</numerusform>
        </translation>
    </message>
    <message>
        <source>Visit complete</source>
        <translation>Visite achevée</translation>
    </message>
    <message>
        <source>Visit cancelled</source>
        <translation>Visite annulée</translation>
    </message>
    <message>
        <source>Mark as complete</source>
        <translation>Marquer comme achevée</translation>
    </message>
    <message>
        <source>Mark as cancelled</source>
        <translation>Marquer comme annulée</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::OwnLimitForm</name>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>drawing, manual or letter it is from</source>
        <translation>plan, manuel ou lettre d’où elle vient</translation>
    </message>
    <message>
        <source>At least</source>
        <translation>Au moins</translation>
    </message>
    <message>
        <source>At most</source>
        <translation>Au plus</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unité</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Source</translation>
    </message>
    <message>
        <source>This project&apos;s own limit in the place of: %1. Both lines empty give the table its place back.</source>
        <translation>Limite propre à ce projet à la place de&#xa0;: %1. Les deux lignes vides rendent sa place au tableau.</translation>
    </message>
    <message>
        <source>The least is more than the most.</source>
        <translation>Le minimum dépasse le maximum.</translation>
    </message>
    <message>
        <source>It needs its source: the drawing, manual or letter that says so.</source>
        <translation>Il manque la source&#xa0;: le plan, le manuel ou la lettre qui le dit.</translation>
    </message>
    <message>
        <source>It could not be kept, and the limits are those from before.</source>
        <translation>La conservation a échoué&#xa0;; les limites sont celles d’avant.</translation>
    </message>
    <message>
        <source>A torque is not below zero.</source>
        <translation>Un couple n’est pas négatif.</translation>
    </message>
    <message>
        <source>It needs its unit.</source>
        <translation>Il faut l’unité.</translation>
    </message>
    <message>
        <source>Write the unit of the torque as in-lb, ft-lb or N·m.</source>
        <translation>Écrivez l’unité du couple en in-lb, ft-lb ou N·m.</translation>
    </message>
    <message>
        <source>It stays with this copy of the project: a merge brings it to no other, and the journal does not tell of it.</source>
        <translation>Elle reste dans cette copie du projet&#xa0;: une fusion ne l’apporte dans aucune autre, et le registre n’en dit rien.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PacketForm</name>
    <message>
        <source>Make the packet</source>
        <translation>Faire le dossier</translation>
    </message>
    <message>
        <source>The inspection packet: everything an inspector needs to decide, in his order.</source>
        <translation>Le dossier d’inspection&#xa0;: tout ce qu’il faut à un inspecteur pour décider, dans son ordre.</translation>
    </message>
    <message>
        <source>Closings</source>
        <translation>Fermetures</translation>
    </message>
    <message>
        <source>Form</source>
        <translation>Forme</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Language of the packet</source>
        <translation>Langue du dossier</translation>
    </message>
    <message>
        <source>Goes to</source>
        <translation>Va dans</translation>
    </message>
    <message>
        <source>PDF to print</source>
        <translation>PDF à imprimer</translation>
    </message>
    <message>
        <source>Folder with the PDF and all photographs in full size</source>
        <translation>Dossier avec le PDF et toutes les photos en pleine taille</translation>
    </message>
    <message>
        <source>PDF under 15 MB to send</source>
        <translation>PDF de moins de 15 Mo à envoyer</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Lettre US</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Choisir…</translation>
    </message>
    <message>
        <source>Choose where the packet goes</source>
        <translation>Choisir où va le dossier</translation>
    </message>
    <message>
        <source>Photographs as large as paper shows them.</source>
        <translation>Photos aussi grandes que le papier les montre.</translation>
    </message>
    <message>
        <source>For a stick or a shared folder. SHA256SUMS beside the photographs lets anybody check that none was altered.</source>
        <translation>Pour une clé ou un dossier partagé. SHA256SUMS à côté des photos permet à chacun de vérifier qu’aucune n’a été altérée.</translation>
    </message>
    <message>
        <source>Pictures become smaller, and some are left out where that is not enough; the first page says so.</source>
        <translation>Les images sont réduites, et certaines omises si cela ne suffit pas&#xa0;; la première page le dit.</translation>
    </message>
    <message>
        <source>Name of the new folder</source>
        <translation>Nom du nouveau dossier</translation>
    </message>
    <message>
        <source>Where the packet goes</source>
        <translation>Où mettre le dossier</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>It needs a place to go to.</source>
        <translation>Il faut un endroit où aller.</translation>
    </message>
    <message>
        <source>There is no folder %1.</source>
        <translation>Il n’y a pas de dossier %1.</translation>
    </message>
    <message>
        <source>%1 is a folder; the PDF needs a name.</source>
        <translation>%1 est un dossier&#xa0;; le PDF demande un nom.</translation>
    </message>
    <message>
        <source>Something is called %1 there already; the new folder needs another name.</source>
        <translation>Quelque chose s’y appelle déjà %1&#xa0;; le nouveau dossier demande un autre nom.</translation>
    </message>
    <message>
        <source>%1 to send</source>
        <translation>%1 à envoyer</translation>
    </message>
    <message>
        <source>A file of this name is there. Press again to replace it.</source>
        <translation>Un fichier de ce nom existe. Pressez de nouveau pour le remplacer.</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>et %1 autres</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PaidHelpBox</name>
    <message>
        <source>It will be so: keep these tenths</source>
        <translation>Ce sera ainsi&#xa0;: garder ces dixièmes</translation>
    </message>
    <message>
        <source>What if paid help did some of it?</source>
        <translation>Et si une aide rémunérée en faisait une partie&#xa0;?</translation>
    </message>
    <message>
        <source>Tenths of the assembly</source>
        <translation>Dixièmes de l’assemblage</translation>
    </message>
    <message>
        <source>Tenths of the fabrication</source>
        <translation>Dixièmes de la fabrication</translation>
    </message>
    <message>
        <source>Then: %1</source>
        <translation>Alors&#xa0;: %1</translation>
    </message>
    <message numerus="yes">
        <source>Of all tasks together, %n tenths can still be paid for before the builder&apos;s share is no longer more than half.</source>
        <translation>
            <numerusform>Sur l’ensemble des tâches, %Ln dixième peut encore être payé avant que la part du constructeur ne dépasse plus la moitié.</numerusform>
            <numerusform>Sur l’ensemble des tâches, %Ln dixièmes peuvent encore être payés avant que la part du constructeur ne dépasse plus la moitié.</numerusform>
        </translation>
    </message>
    <message>
        <source>The builder&apos;s share is not more than half as it is.</source>
        <translation>La part du constructeur ne dépasse pas la moitié en l’état.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PaperModel</name>
    <message>
        <source>On no list of the country: added here.</source>
        <translation>Sur aucune liste du pays&#xa0;: ajouté ici.</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1&#xa0;: %2.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PaperPanel</name>
    <message>
        <source>Asked for on</source>
        <translation>Demandé le</translation>
    </message>
    <message>
        <source>Here since</source>
        <translation>Reçu le</translation>
    </message>
    <message>
        <source>Valid until</source>
        <translation>Valable jusqu’au</translation>
    </message>
    <message>
        <source>Builder&apos;s name on it</source>
        <translation>Nom du constructeur inscrit</translation>
    </message>
    <message>
        <source>Model on it</source>
        <translation>Modèle inscrit</translation>
    </message>
    <message>
        <source>Serial number on it</source>
        <translation>Numéro de série inscrit</translation>
    </message>
    <message>
        <source>Registration on it</source>
        <translation>Immatriculation inscrite</translation>
    </message>
    <message>
        <source>A newer one…</source>
        <translation>Un plus récent…</translation>
    </message>
    <message>
        <source>Write down what it says</source>
        <translation>Noter ce qu’il dit</translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>Scans of it</source>
        <translation>Scans du document</translation>
    </message>
    <message>
        <source>All records of it</source>
        <translation>Tous ses enregistrements</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Source&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>no number</source>
        <translation>sans numéro</translation>
    </message>
    <message>
        <source>here since %1</source>
        <translation>reçu le %1</translation>
    </message>
    <message>
        <source>asked for on %1</source>
        <translation>demandé le %1</translation>
    </message>
    <message>
        <source>counts</source>
        <translation>compte</translation>
    </message>
    <message>
        <source>%1: asked for</source>
        <translation>%1&#xa0;: demandé</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Le</translation>
    </message>
    <message>
        <source>%1: here</source>
        <translation>%1&#xa0;: reçu</translation>
    </message>
    <message>
        <source>Number on it, if any</source>
        <translation>Numéro inscrit, s’il y en a un</translation>
    </message>
    <message>
        <source>Since</source>
        <translation>Depuis le</translation>
    </message>
    <message>
        <source>%1: begun</source>
        <translation>%1&#xa0;: commencé</translation>
    </message>
    <message>
        <source>%1: scan taken off</source>
        <translation>%1&#xa0;: scan retiré</translation>
    </message>
    <message>
        <source>Mark as asked for…</source>
        <translation>Marquer comme demandé…</translation>
    </message>
    <message>
        <source>Mark as here…</source>
        <translation>Marquer comme présent…</translation>
    </message>
    <message>
        <source>Mark as asked for</source>
        <translation>Marquer comme demandé</translation>
    </message>
    <message>
        <source>Mark as here</source>
        <translation>Marquer comme présent</translation>
    </message>
    <message>
        <source>A newer one was asked for on %1.</source>
        <translation>Une version plus récente a été demandée le %1.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PapersView</name>
    <message>
        <source>Documents on the way to the certificate</source>
        <translation>Documents en vue du certificat</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Ajouter</translation>
    </message>
    <message>
        <source>A document that is on no list</source>
        <translation>Un document qui n’est sur aucune liste</translation>
    </message>
    <message>
        <source>Document “%1” added</source>
        <translation>Document «&#xa0;%1&#xa0;» ajouté</translation>
    </message>
    <message>
        <source>These rules require no document; what is usual is listed.</source>
        <translation>Ces règles n’exigent aucun document&#xa0;; sont listés ceux d’usage.</translation>
    </message>
    <message>
        <source>Every document that these rules require is here.</source>
        <translation>Chaque document qu’exigent ces règles est là.</translation>
    </message>
    <message numerus="yes">
        <source>%n required documents are not here yet.</source>
        <translation>
            <numerusform>%Ln document requis n’est pas encore là.</numerusform>
            <numerusform>%Ln documents requis ne sont pas encore là.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n that are here have no scan.</source>
        <translation>
            <numerusform>%Ln reçu est sans scan.</numerusform>
            <numerusform>%Ln reçus sont sans scan.</numerusform>
        </translation>
    </message>
    <message>
        <source>Rules change: check the current edition with your authority.</source>
        <translation>Les règles changent&#xa0;: vérifiez l’édition en vigueur auprès de votre autorité.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PartDetail</name>
    <message>
        <source>Never enclosed because</source>
        <translation>Jamais enfermée, parce que</translation>
    </message>
    <message>
        <source>The part itself</source>
        <translation>La pièce elle-même</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Photos</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PartHead</name>
    <message>
        <source>With everything below</source>
        <translation>Avec tout ce qui est dessous</translation>
    </message>
    <message>
        <source>The whole aircraft</source>
        <translation>L’avion entier</translation>
    </message>
    <message>
        <source>What is on record of all parts, and of none</source>
        <translation>Ce qui est inscrit de toutes les pièces, et d’aucune</translation>
    </message>
    <message>
        <source>%1 with everything below</source>
        <translation>%1 avec tout ce qui est dessous</translation>
    </message>
    <message>
        <source>%1 in all</source>
        <translation>%1 en tout</translation>
    </message>
    <message>
        <source>Fitted, and not torqued yet: show them</source>
        <translation>Posé et pas encore au couple&#xa0;: montrer</translation>
    </message>
    <message numerus="yes">
        <source>%n finger-tight</source>
        <translation>
            <numerusform>%Ln serrée à la main</numerusform>
            <numerusform>%Ln serrées à la main</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PartPhotos</name>
    <message>
        <source>Photos of the part</source>
        <translation>Photos de la pièce</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PartTree</name>
    <message>
        <source>The whole aircraft</source>
        <translation>L’avion entier</translation>
    </message>
    <message>
        <source>Type to filter the parts</source>
        <translation>Tapez pour filtrer les pièces</translation>
    </message>
    <message>
        <source>Filter the parts</source>
        <translation>Filtrer les pièces</translation>
    </message>
    <message>
        <source>Alt+Home: what is on record of all parts, and of none</source>
        <translation>Alt+Début&#xa0;: ce qui est inscrit de toutes les pièces, et d’aucune</translation>
    </message>
    <message>
        <source>The parts of the aeroplane will stand here as a tree, each with its state, hours, squawks and photos.</source>
        <translation>Les pièces de l’avion figureront ici en arbre, chacune avec état, heures, anomalies et photos.</translation>
    </message>
    <message>
        <source>Add the first part</source>
        <translation>Ajouter la première pièce</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Pièces</translation>
    </message>
    <message numerus="yes">
        <source>%n fit</source>
        <comment>parts</comment>
        <translation>
            <numerusform>%Ln correspond</numerusform>
            <numerusform>%Ln correspondent</numerusform>
        </translation>
    </message>
    <message>
        <source>Look for words in the tree</source>
        <translation>Chercher des mots dans l’arbre</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PartsPage</name>
    <message>
        <source>Add beside</source>
        <translation>Ajouter à côté</translation>
    </message>
    <message>
        <source>Insert: a part after this one</source>
        <translation>Inser&#xa0;: une pièce après celle-ci</translation>
    </message>
    <message>
        <source>Add inside</source>
        <translation>Ajouter dedans</translation>
    </message>
    <message>
        <source>Shift+Insert: a part within this one</source>
        <translation>Maj+Inser&#xa0;: une pièce dans celle-ci</translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>A new part inside %1</source>
        <translation>Une nouvelle pièce dans %1</translation>
    </message>
    <message>
        <source>A new part at the top</source>
        <translation>Une nouvelle pièce tout en haut</translation>
    </message>
    <message>
        <source>Add it</source>
        <translation>L’ajouter</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>A part needs a name.</source>
        <translation>Une pièce demande un nom.</translation>
    </message>
    <message>
        <source>Part added: %1</source>
        <translation>Pièce ajoutée&#xa0;: %1</translation>
    </message>
    <message>
        <source>Copy…</source>
        <translation>Copier…</translation>
    </message>
    <message>
        <source>Ctrl+D: this part with everything below it, for the other side</source>
        <translation>Ctrl+D&#xa0;: cette pièce avec tout ce qui est dessous, pour l’autre côté</translation>
    </message>
    <message>
        <source>Paste list…</source>
        <translation>Coller une liste…</translation>
    </message>
    <message>
        <source>Ctrl+V: parts or steps from a spreadsheet</source>
        <translation>Ctrl+V&#xa0;: pièces ou étapes d’un tableur</translation>
    </message>
    <message>
        <source>Delete: take wrong parts out</source>
        <translation>Suppr&#xa0;: ôter des pièces erronées</translation>
    </message>
    <message>
        <source>Choose a part in the tree first.</source>
        <translation>Choisissez d’abord une pièce dans l’arbre.</translation>
    </message>
    <message>
        <source>A part beside the chosen one</source>
        <translation>Une pièce à côté de celle qui est choisie</translation>
    </message>
    <message>
        <source>A part inside the chosen one</source>
        <translation>Une pièce dans celle qui est choisie</translation>
    </message>
    <message>
        <source>Withdraw what is chosen</source>
        <translation>Retirer ce qui est choisi</translation>
    </message>
    <message>
        <source>Copy the part with what is in it</source>
        <translation>Copier la pièce avec ce qu’elle contient</translation>
    </message>
    <message>
        <source>Paste a list of parts</source>
        <translation>Coller une liste de pièces</translation>
    </message>
    <message>
        <source>Move up</source>
        <translation>Déplacer vers le haut</translation>
    </message>
    <message>
        <source>Move down</source>
        <translation>Déplacer vers le bas</translation>
    </message>
    <message>
        <source>Move into the part above</source>
        <translation>Déplacer dans la pièce du dessus</translation>
    </message>
    <message>
        <source>Move out of its part</source>
        <translation>Sortir de sa pièce</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PersonBox</name>
    <message>
        <source>It needs a name.</source>
        <translation>Il faut un nom.</translation>
    </message>
    <message>
        <source>%1 is on record, but not as an inspector, and only an inspector&apos;s word counts here.</source>
        <translation>%1 est inscrit, mais pas comme inspecteur, et seule la parole d’un inspecteur compte ici.</translation>
    </message>
    <message>
        <source>%1 is on record, but neither as an adviser nor as an inspector, and only their word counts here.</source>
        <translation>%1 est inscrit, mais ni comme conseiller ni comme inspecteur, et seule leur parole compte ici.</translation>
    </message>
    <message>
        <source>%1 is on record, but not as a builder, adviser or inspector.</source>
        <translation>%1 est inscrit, mais pas comme constructeur, conseiller ou inspecteur.</translation>
    </message>
    <message>
        <source>%1 is on record, but not in a role that counts here.</source>
        <translation>%1 est inscrit, mais pas dans un rôle qui compte ici.</translation>
    </message>
    <message>
        <source>“%1” is not on record yet, and becomes a person there with this.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas encore enregistré et le sera ainsi comme personne.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PersonPanel</name>
    <message>
        <source>Roles of %1 changed</source>
        <translation>Rôles de %1 modifiés</translation>
    </message>
    <message>
        <source>Person added</source>
        <translation>Personne ajoutée</translation>
    </message>
    <message>
        <source>New person</source>
        <translation>Nouvelle personne</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PhotoBar</name>
    <message>
        <source>Take photos in</source>
        <translation>Importer des photos</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Toutes</translation>
    </message>
    <message>
        <source>Belonging to no part</source>
        <translation>Sans pièce</translation>
    </message>
    <message>
        <source>Of a part</source>
        <translation>D’une pièce</translation>
    </message>
    <message>
        <source>Papers</source>
        <translation>Papiers</translation>
    </message>
    <message>
        <source>What is missing</source>
        <translation>Ce qui manque</translation>
    </message>
    <message>
        <source>Which photos</source>
        <translation>Quelles photos</translation>
    </message>
    <message>
        <source>part</source>
        <translation>pièce</translation>
    </message>
    <message>
        <source>Photos of this part and below</source>
        <translation>Photos de cette pièce et dessous</translation>
    </message>
    <message>
        <source>by date</source>
        <translation>par date</translation>
    </message>
    <message>
        <source>by part</source>
        <translation>par pièce</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Ordre</translation>
    </message>
    <message numerus="yes">
        <source>%n shown</source>
        <translation>
            <numerusform>%Ln montrée</numerusform>
            <numerusform>%Ln montrées</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n places lack photos</source>
        <translation>
            <numerusform>Des photos manquent à %Ln endroit</numerusform>
            <numerusform>Des photos manquent à %Ln endroits</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PhotoBrowser</name>
    <message>
        <source>Photos</source>
        <translation>Photos</translation>
    </message>
    <message>
        <source>Headings</source>
        <translation>Rubriques</translation>
    </message>
    <message>
        <source>Space opens · A assigns to a part · M confirms the log entry · 1 to 7 say what it shows · Del withdraws</source>
        <translation>Espace ouvre · A attribue à une pièce · M confirme l’entrée · 1 à 7 disent ce qu’elle montre · Suppr retire</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PhotoDetail</name>
    <message>
        <source>Withdraw</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>It shows</source>
        <translation>Elle montre</translation>
    </message>
    <message>
        <source>It belongs to</source>
        <translation>Elle appartient à</translation>
    </message>
    <message>
        <source>Shift times…</source>
        <translation>Décaler les heures…</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PhotoIntake</name>
    <message>
        <source>Taking in photos</source>
        <translation>Import de photos</translation>
    </message>
    <message numerus="yes">
        <source>%n files were not taken in, because the folder %1 is not there any more.</source>
        <translation>
            <numerusform>%Ln fichier n’a pas été importé, car le dossier %1 n’est plus là.</numerusform>
            <numerusform>%Ln fichiers n’ont pas été importés, car le dossier %1 n’est plus là.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n taken in.</source>
        <translation>
            <numerusform>%Ln importée.</numerusform>
            <numerusform>%Ln importées.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n were there already.</source>
        <translation>
            <numerusform>%Ln y était déjà.</numerusform>
            <numerusform>%Ln y étaient déjà.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n were not; the list says why.</source>
        <translation>
            <numerusform>%Ln non&#xa0;; la liste dit pourquoi.</numerusform>
            <numerusform>%Ln non&#xa0;; la liste dit pourquoi.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more were not taken in.</source>
        <translation>
            <numerusform>%Ln autre n’a pas été prise.</numerusform>
            <numerusform>%Ln autres n’ont pas été prises.</numerusform>
        </translation>
    </message>
    <message>
        <source>The rest was not taken in: %1</source>
        <translation>Le reste n’a pas été pris&#xa0;: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n are dated ahead or years before the project; was the camera&apos;s clock right?</source>
        <translation>
            <numerusform>%Ln porte une date à venir ou des années avant le projet&#xa0;; l’horloge de l’appareil était-elle juste&#xa0;?</numerusform>
            <numerusform>%Ln portent une date à venir ou des années avant le projet&#xa0;; l’horloge de l’appareil était-elle juste&#xa0;?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n files on record were missing or damaged and are there again; damaged ones are kept in backups/damaged.</source>
        <translation>
            <numerusform>%Ln fichier enregistré manquait ou était endommagé et est de nouveau là&#xa0;; ce qui est endommagé est gardé dans backups/damaged.</numerusform>
            <numerusform>%Ln fichiers enregistrés manquaient ou étaient endommagés et sont de nouveau là&#xa0;; ce qui est endommagé est gardé dans backups/damaged.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PhotoStrip</name>
    <message>
        <source>Photos</source>
        <translation>Photos</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PhotoViewer</name>
    <message>
        <source>Back to all</source>
        <translation>Retour à toutes</translation>
    </message>
    <message>
        <source>Open it</source>
        <translation>L’ouvrir</translation>
    </message>
    <message>
        <source>Words on the mark</source>
        <translation>Mots sur la marque</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Échap</translation>
    </message>
    <message>
        <source>Page Up</source>
        <translation>Page préc.</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Suivante</translation>
    </message>
    <message>
        <source>Page Down</source>
        <translation>Page suiv.</translation>
    </message>
    <message>
        <source>Arrow</source>
        <translation>Flèche</translation>
    </message>
    <message>
        <source>Circle</source>
        <translation>Cercle</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Mots</translation>
    </message>
    <message>
        <source>A: an arrow</source>
        <translation>A&#xa0;: une flèche</translation>
    </message>
    <message>
        <source>C: a circle</source>
        <translation>C&#xa0;: un cercle</translation>
    </message>
    <message>
        <source>W: words</source>
        <translation>W&#xa0;: des mots</translation>
    </message>
    <message>
        <source>Remove mark</source>
        <translation>Ôter la marque</translation>
    </message>
    <message>
        <source>Del</source>
        <translation>Suppr</translation>
    </message>
    <message>
        <source>−: smaller</source>
        <translation>−&#xa0;: plus petit</translation>
    </message>
    <message>
        <source>Smaller</source>
        <translation>Plus petit</translation>
    </message>
    <message>
        <source>+: larger</source>
        <translation>+&#xa0;: plus grand</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Plus grand</translation>
    </message>
    <message>
        <source>Whole</source>
        <translation>Entière</translation>
    </message>
    <message>
        <source>F: the whole picture</source>
        <translation>F&#xa0;: l’image entière</translation>
    </message>
    <message>
        <source>Full size</source>
        <translation>Pleine taille</translation>
    </message>
    <message>
        <source>O: every pixel</source>
        <translation>O&#xa0;: chaque pixel</translation>
    </message>
    <message>
        <source>Caption</source>
        <translation>Légende</translation>
    </message>
    <message>
        <source>what there is to see</source>
        <translation>ce qu’on voit</translation>
    </message>
    <message>
        <source>This is a video. The program that this computer has for videos can show it.</source>
        <translation>C’est une vidéo. Le programme de cet ordinateur pour les vidéos peut la montrer.</translation>
    </message>
    <message>
        <source>This is a paper. The program that this computer has for such files can show it.</source>
        <translation>C’est un papier. Le programme de cet ordinateur pour ces fichiers peut le montrer.</translation>
    </message>
    <message numerus="yes">
        <source>%1, %2, %n marks</source>
        <translation>
            <numerusform>%1, %2, %Ln marque</numerusform>
            <numerusform>%1, %2, %Ln marques</numerusform>
        </translation>
    </message>
    <message>
        <source>Open %1</source>
        <translation>Ouvrir %1</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Mark drawn on %1</source>
        <translation>Marque dessinée sur %1</translation>
    </message>
    <message>
        <source>Mark removed from %1</source>
        <translation>Marque ôtée de %1</translation>
    </message>
    <message>
        <source>Mark changed on %1</source>
        <translation>Marque modifiée sur %1</translation>
    </message>
    <message>
        <source>%1: caption</source>
        <translation>%1&#xa0;: légende</translation>
    </message>
    <message>
        <source>Previous</source>
        <translation>Précédente</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PhotosPage</name>
    <message>
        <source>Choose files</source>
        <translation>Choisir des fichiers</translation>
    </message>
    <message>
        <source>Take in</source>
        <translation>Importer</translation>
    </message>
    <message>
        <source>Photos, videos and papers (*.jpg *.jpeg *.png *.heic *.mp4 *.mov *.mkv *.avi *.pdf);;All files (*)</source>
        <translation>Photos, vidéos et papiers (*.jpg *.jpeg *.png *.heic *.mp4 *.mov *.mkv *.avi *.pdf);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Photographs of what will later be closed belong here: drop files on this page, paste a picture, or choose files.</source>
        <translation>Les photos de ce qui sera fermé vont ici&#xa0;: déposez des fichiers sur cette page, collez une image, ou choisissez des fichiers.</translation>
    </message>
    <message>
        <source>There is no picture and no file to paste.</source>
        <translation>Il n’y a ni image ni fichier à coller.</translation>
    </message>
    <message>
        <source>Say what the photo belongs to</source>
        <translation>Indiquer à quoi la photo se rapporte</translation>
    </message>
    <message>
        <source>Confirm the proposed work</source>
        <translation>Confirmer le travail proposé</translation>
    </message>
    <message>
        <source>Confirm all that is proposed</source>
        <translation>Confirmer tout ce qui est proposé</translation>
    </message>
    <message>
        <source>Look at the photo</source>
        <translation>Regarder la photo</translation>
    </message>
    <message>
        <source>Withdraw what is chosen</source>
        <translation>Retirer ce qui est choisi</translation>
    </message>
    <message>
        <source>Take in what was copied</source>
        <translation>Prendre ce qui a été copié</translation>
    </message>
    <message>
        <source>Every photo belongs to a part or a closing.</source>
        <translation>Chaque photo se rapporte à une pièce ou à une fermeture.</translation>
    </message>
    <message>
        <source>No paper is on record.</source>
        <translation>Aucun papier n’est enregistré.</translation>
    </message>
    <message>
        <source>No photo of this part is on record.</source>
        <translation>Aucune photo de cette pièce n’est enregistrée.</translation>
    </message>
    <message>
        <source>No photo is on record.</source>
        <translation>Aucune photo n’est enregistrée.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PictureLoader</name>
    <message>
        <source>There is no picture of it.</source>
        <translation>Il n’y en a pas d’image.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PictureView</name>
    <message>
        <source>Reading the picture …</source>
        <translation>Lecture de l’image…</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PlainPapers</name>
    <message>
        <source>This project is to read only: nothing can be written into it.</source>
        <translation>Ce projet est en lecture seule&#xa0;: rien ne peut y être écrit.</translation>
    </message>
    <message>
        <source>Writing the log and lists into the folder</source>
        <translation>Écriture du carnet et des listes dans le dossier</translation>
    </message>
    <message>
        <source>The folder now holds the builder&apos;s log as PDF, all records as CSV, and a page that explains them.</source>
        <translation>Le dossier contient maintenant le carnet en PDF, toutes les données en CSV et une page qui les explique.</translation>
    </message>
    <message>
        <source>Cancelled: all records are there as CSV, the builder&apos;s log as it was before.</source>
        <translation>Annulé&#xa0;: toutes les données sont là en CSV, le carnet est comme avant.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::Preferences</name>
    <message>
        <source>Preferences</source>
        <translation>Préférences</translation>
    </message>
    <message>
        <source>Language of the screen</source>
        <translation>Langue de l’écran</translation>
    </message>
    <message>
        <source>As the system</source>
        <translation>Comme le système</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Couleurs</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Clair</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Sombre</translation>
    </message>
    <message>
        <source>Rows</source>
        <translation>Lignes</translation>
    </message>
    <message>
        <source>Close together</source>
        <translation>Serrées</translation>
    </message>
    <message>
        <source>Tall, for fingers and gloves</source>
        <translation>Hautes, pour les doigts et les gants</translation>
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
        <translation>Lettre US</translation>
    </message>
    <message>
        <source>Language of what is printed</source>
        <translation>Langue des impressions</translation>
    </message>
    <message>
        <source>As the screen</source>
        <translation>Comme l’écran</translation>
    </message>
    <message>
        <source>Who is working here</source>
        <translation>Qui travaille ici</translation>
    </message>
    <message>
        <source>The builder of the project</source>
        <translation>Le constructeur du projet</translation>
    </message>
    <message>
        <source>The journal keeps this name with every change.</source>
        <translation>Le registre garde ce nom avec chaque modification.</translation>
    </message>
    <message>
        <source>Units of this project</source>
        <translation>Unités de ce projet</translation>
    </message>
    <message>
        <source>Metric</source>
        <translation>Métriques</translation>
    </message>
    <message>
        <source>Imperial</source>
        <translation>Impériales</translation>
    </message>
    <message>
        <source>Units of the project</source>
        <translation>Unités du projet</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PrintForm</name>
    <message>
        <source>Print</source>
        <translation>Imprimer</translation>
    </message>
    <message>
        <source>with a code that Find reads</source>
        <translation>avec un code que Trouver lit</translation>
    </message>
    <message>
        <source>only parts that have a shelf</source>
        <translation>seulement les pièces avec étagère</translation>
    </message>
    <message>
        <source>A paper is written as PDF and opened; from there it goes to any printer.</source>
        <translation>Un papier est écrit en PDF et ouvert&#xa0;; de là il va à toute imprimante.</translation>
    </message>
    <message>
        <source>Paper to make</source>
        <translation>Papier à faire</translation>
    </message>
    <message>
        <source>For which closings</source>
        <translation>Pour quelles fermetures</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Code QR</translation>
    </message>
    <message>
        <source>Which parts</source>
        <translation>Quelles pièces</translation>
    </message>
    <message>
        <source>Paper size</source>
        <translation>Format du papier</translation>
    </message>
    <message>
        <source>Label size</source>
        <translation>Taille d’étiquette</translation>
    </message>
    <message>
        <source>Labels already used</source>
        <translation>Étiquettes déjà utilisées</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Feuilles</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Langue</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Fichier</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Choisir…</translation>
    </message>
    <message>
        <source>%1 × %2 mm, %3 on a sheet</source>
        <translation>%1 × %2 mm, %3 par feuille</translation>
    </message>
    <message>
        <source>Write</source>
        <translation>Écrire</translation>
    </message>
    <message>
        <source>Calendar (*.ics)</source>
        <translation>Calendrier (*.ics)</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>It needs a file to write to.</source>
        <translation>Il faut un fichier où écrire.</translation>
    </message>
    <message>
        <source>No closing that is begun must stay open.</source>
        <translation>Aucune fermeture commencée ne doit rester ouverte.</translation>
    </message>
    <message>
        <source>It needs at least one closing.</source>
        <translation>Il faut au moins une fermeture.</translation>
    </message>
    <message>
        <source>A file of this name is there. Press again to replace it.</source>
        <translation>Un fichier de ce nom existe. Pressez de nouveau pour le remplacer.</translation>
    </message>
    <message>
        <source>Tick all</source>
        <translation>Tout cocher</translation>
    </message>
    <message>
        <source>Tick none</source>
        <translation>Tout décocher</translation>
    </message>
    <message>
        <source>There is no folder %1.</source>
        <translation>Il n’y a pas de dossier %1.</translation>
    </message>
    <message>
        <source>%1 is a folder; the file needs a name.</source>
        <translation>%1 est un dossier&#xa0;; le fichier demande un nom.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ProjectView</name>
    <message>
        <source>This project is to read only: nothing can be written down.</source>
        <translation>Ce projet est en lecture seule&#xa0;: rien ne peut être inscrit.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::Rail</name>
    <message>
        <source>%1 (Ctrl+%2)</source>
        <translation>%1 (Ctrl+%2)</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ReasonForm</name>
    <message>
        <source>By</source>
        <translation>Par</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motif</translation>
    </message>
    <message>
        <source>The signature of %1 on %2 is wrong and counts no more. It stays in the journal.</source>
        <translation>La signature de %1 du %2 est erronée et ne compte plus. Elle reste au registre.</translation>
    </message>
    <message>
        <source>Withdraw it</source>
        <translation>La retirer</translation>
    </message>
    <message>
        <source>Nobody will sign for the %1.</source>
        <translation>Personne ne signera pour&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Waive it</source>
        <translation>Dispenser</translation>
    </message>
    <message>
        <source>Signature withdrawn</source>
        <translation>Signature retirée</translation>
    </message>
    <message>
        <source>%1 waived</source>
        <translation>%1&#xa0;: dispense</translation>
    </message>
    <message>
        <source>It needs a reason, for whoever reads this later.</source>
        <translation>Il faut un motif, pour qui lira ceci plus tard.</translation>
    </message>
    <message>
        <source>What this is about is no longer on record.</source>
        <translation>Ce dont il s’agit n’est plus enregistré.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::RecordForm</name>
    <message>
        <source>%1: %2 changed</source>
        <translation>%1&#xa0;: %2 modifié</translation>
    </message>
    <message>
        <source>%1 cannot be empty.</source>
        <translation>%1 ne peut être vide.</translation>
    </message>
    <message>
        <source>What was typed here is not on record, as it could not be kept. Leave the field once more when that is possible, or do the same once more to leave without it.</source>
        <translation>Ce qui a été tapé ici n’a pas pu être conservé. Quitter encore une fois le champ quand ce sera possible, ou refaire la même chose pour partir sans.</translation>
    </message>
    <message>
        <source>%1 lies ahead: only what has happened is recorded.</source>
        <translation>%1 est à venir&#xa0;: on n’inscrit que ce qui est arrivé.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::RecordLine</name>
    <message>
        <source>Nothing on record is called “%1”; the line is as it was before.</source>
        <translation>Rien d’enregistré ne s’appelle «&#xa0;%1&#xa0;»&#xa0;; la ligne est comme avant.</translation>
    </message>
    <message>
        <source>Nothing on record is called “%1”.</source>
        <translation>Rien d’enregistré ne s’appelle «&#xa0;%1&#xa0;».</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::RecordSetEditor</name>
    <message>
        <source>add one more</source>
        <translation>en ajouter un</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Ôter</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>Ôter %1</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::RepairOptions</name>
    <message>
        <source>a way to repair it</source>
        <translation>une façon de réparer</translation>
    </message>
    <message>
        <source>for it</source>
        <translation>pour</translation>
    </message>
    <message>
        <source>against it</source>
        <translation>contre</translation>
    </message>
    <message>
        <source>for: %1</source>
        <translation>pour&#xa0;: %1</translation>
    </message>
    <message>
        <source>against: %1</source>
        <translation>contre&#xa0;: %1</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Ôter</translation>
    </message>
    <message>
        <source>Squawk %1: %2</source>
        <translation>Anomalie %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>repair option added</source>
        <translation>réparation possible ajoutée</translation>
    </message>
    <message>
        <source>repair option removed</source>
        <translation>réparation possible ôtée</translation>
    </message>
    <message>
        <source>A way to repair it</source>
        <translation>Une façon de réparer</translation>
    </message>
    <message>
        <source>What is for it</source>
        <translation>Ce qui est pour</translation>
    </message>
    <message>
        <source>What is against it</source>
        <translation>Ce qui est contre</translation>
    </message>
    <message>
        <source>Ways to repair it</source>
        <translation>Façons de réparer</translation>
    </message>
    <message>
        <source>%1 (decided)</source>
        <translation>%1 (décidé)</translation>
    </message>
    <message>
        <source>Edit</source>
        <translation>Modifier</translation>
    </message>
    <message>
        <source>Edit %1</source>
        <translation>Modifier %1</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>Ôter %1</translation>
    </message>
    <message>
        <source>A way to repair it needs a name; what is for and against it is still in the line.</source>
        <translation>Une façon de réparer demande un nom&#xa0;; le pour et le contre sont encore dans la ligne.</translation>
    </message>
    <message>
        <source>repair option changed</source>
        <translation>réparation possible modifiée</translation>
    </message>
    <message>
        <source>decision taken back</source>
        <translation>décision annulée</translation>
    </message>
    <message>
        <source>repair decided</source>
        <translation>réparation décidée</translation>
    </message>
    <message>
        <source>What is typed in the line is not kept: Enter keeps it, and the same once more drops it.</source>
        <translation>Ce qui est écrit dans la ligne n’est pas encore conservé&#xa0;: Entrée le conserve, la même chose encore une fois l’abandonne.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::RestoreForm</name>
    <message>
        <source>Restore</source>
        <translation>Restaurer</translation>
    </message>
    <message>
        <source>Folder of the backup</source>
        <translation>Dossier de la sauvegarde</translation>
    </message>
    <message>
        <source>Put it into</source>
        <translation>Le mettre dans</translation>
    </message>
    <message>
        <source>A backup becomes a project again, in a new folder. Nothing that is there is touched.</source>
        <translation>Une sauvegarde redevient un projet, dans un nouveau dossier. Rien de ce qui existe n’est touché.</translation>
    </message>
    <message>
        <source>State of</source>
        <translation>État du</translation>
    </message>
    <message>
        <source>Name of the new folder</source>
        <translation>Nom du nouveau dossier</translation>
    </message>
    <message>
        <source>How much is restored</source>
        <translation>Part déjà restaurée</translation>
    </message>
    <message>
        <source>the last backup, %1</source>
        <translation>la dernière sauvegarde, %1</translation>
    </message>
    <message>
        <source>It needs the folder of a backup: the one with a records.db in it.</source>
        <translation>Il faut le dossier d’une sauvegarde&#xa0;: celui qui contient un records.db.</translation>
    </message>
    <message>
        <source>It needs a place and a name for the new folder.</source>
        <translation>Il faut un endroit et un nom pour le nouveau dossier.</translation>
    </message>
    <message>
        <source>Cancelled; nothing was left behind.</source>
        <translation>Annulé&#xa0;; rien n’est resté.</translation>
    </message>
    <message numerus="yes">
        <source>%n files of the backup are missing or no longer what was taken in; “Verify records and files” names them.</source>
        <translation>
            <numerusform>%Ln fichier de la sauvegarde manque ou n’est plus ce qui avait été pris&#xa0;; «&#xa0;Vérifier dossiers et fichiers&#xa0;» le nomme.</numerusform>
            <numerusform>%Ln fichiers de la sauvegarde manquent ou ne sont plus ce qui avait été pris&#xa0;; «&#xa0;Vérifier dossiers et fichiers&#xa0;» les nomme.</numerusform>
        </translation>
    </message>
    <message>
        <source>choose its folder first</source>
        <translation>choisir d’abord son dossier</translation>
    </message>
    <message>
        <source>no backup is in this folder</source>
        <translation>aucune sauvegarde dans ce dossier</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::RulesDraft</name>
    <message>
        <source>%1, own copy</source>
        <translation>%1, copie personnelle</translation>
    </message>
    <message>
        <source>Rules: %1</source>
        <translation>Règles&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 is written.</source>
        <translation>%1 est écrit.</translation>
    </message>
    <message>
        <source>%1 could not be written.</source>
        <translation>%1 n’a pas pu être écrit.</translation>
    </message>
    <message>
        <source>%1 could not be read.</source>
        <translation>%1 n’a pas pu être lu.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>file, what is wrong in it</comment>
        <translation>%1&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::RulesForm</name>
    <message>
        <source>none named</source>
        <translation>aucune indiquée</translation>
    </message>
    <message>
        <source>One on each line</source>
        <translation>Un par ligne</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::RulesView</name>
    <message>
        <source>Show it</source>
        <translation>Montrer</translation>
    </message>
    <message>
        <source>Use in this project</source>
        <translation>Utiliser dans ce projet</translation>
    </message>
    <message>
        <source>Keep for other projects</source>
        <translation>Garder pour d’autres projets</translation>
    </message>
    <message>
        <source>Write to a file…</source>
        <translation>Écrire dans un fichier…</translation>
    </message>
    <message>
        <source>Add a line</source>
        <translation>Ajouter une ligne</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Enlever</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Monter</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Descendre</translation>
    </message>
    <message>
        <source>Begin with other rules</source>
        <translation>Commencer avec d’autres règles</translation>
    </message>
    <message>
        <source>The rules, part by part</source>
        <translation>Les règles, partie par partie</translation>
    </message>
    <message>
        <source>Begin with…</source>
        <translation>Commencer avec…</translation>
    </message>
    <message>
        <source>the rules of this project</source>
        <translation>les règles de ce projet</translation>
    </message>
    <message>
        <source>the draft before this one</source>
        <translation>le brouillon précédent</translation>
    </message>
    <message>
        <source>a file…</source>
        <translation>un fichier…</translation>
    </message>
    <message>
        <source>Read rules</source>
        <translation>Lire des règles</translation>
    </message>
    <message>
        <source>Rules (*.json)</source>
        <translation>Règles (*.json)</translation>
    </message>
    <message>
        <source>Write the rules</source>
        <translation>Écrire les règles</translation>
    </message>
    <message>
        <source>Below are the rules of this project.</source>
        <translation>Ci-dessous figurent les règles de ce projet.</translation>
    </message>
    <message>
        <source>Below is a copy to change; nothing is changed yet.</source>
        <translation>Ci-dessous figure une copie à modifier&#xa0;; rien n’est encore changé.</translation>
    </message>
    <message>
        <source>Below is a draft that can be used. Hold points and checks on record stay; closings made later get those of the new rules.</source>
        <translation>Ci-dessous figure un brouillon utilisable. Les points d’arrêt et contrôles enregistrés restent&#xa0;; les fermetures faites plus tard reçoivent ceux des nouvelles règles.</translation>
    </message>
    <message>
        <source>This project goes by: %1, last gone through on %2. Each rule names its source and how far that was seen; check the current edition with your authority.</source>
        <translation>Ce projet suit&#xa0;: %1, revu pour la dernière fois le %2. Chaque règle nomme sa source et dans quelle mesure elle a été vue&#xa0;; vérifiez l’édition en vigueur auprès de votre autorité.</translation>
    </message>
    <message>
        <source>Whether a draft was kept here could not be read. What is typed now is kept when it can be; a draft that is there then becomes the one before it.</source>
        <translation>Il n’a pas été possible de lire si un brouillon était gardé ici. Ce qui s’écrit maintenant sera gardé dès que possible&#xa0;; un brouillon qui s’y trouve alors devient le brouillon précédent.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SavedFilterMenu</name>
    <message>
        <source>Saved filters</source>
        <translation>Filtres enregistrés</translation>
    </message>
    <message>
        <source>No filter is saved yet</source>
        <translation>Aucun filtre enregistré</translation>
    </message>
    <message>
        <source>Save this filter…</source>
        <translation>Enregistrer ce filtre…</translation>
    </message>
    <message>
        <source>A name for this filter; one of the same name is replaced.</source>
        <translation>Un nom pour ce filtre&#xa0;; un autre du même nom est remplacé.</translation>
    </message>
    <message>
        <source>Rename “%1”…</source>
        <translation>Renommer «&#xa0;%1&#xa0;»…</translation>
    </message>
    <message>
        <source>The new name of “%1”.</source>
        <translation>Le nouveau nom de «&#xa0;%1&#xa0;».</translation>
    </message>
    <message>
        <source>Delete “%1”</source>
        <translation>Supprimer «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>The filter “%1” is deleted; no record has changed.</source>
        <translation>Le filtre «&#xa0;%1&#xa0;» est supprimé&#xa0;; aucun enregistrement n’a changé.</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>A saved filter needs a name.</source>
        <translation>Un filtre enregistré demande un nom.</translation>
    </message>
    <message>
        <source>Saved</source>
        <comment>filters</comment>
        <translation>Enregistrés</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ScanList</name>
    <message>
        <source>None attached. Files can be dropped here.</source>
        <translation>Rien de joint. Des fichiers peuvent être déposés ici.</translation>
    </message>
    <message>
        <source>Attach…</source>
        <translation>Joindre…</translation>
    </message>
    <message>
        <source>Take off</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>Attach files</source>
        <translation>Joindre des fichiers</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::Section</name>
    <message>
        <source>Show fewer</source>
        <translation>Montrer moins</translation>
    </message>
    <message>
        <source>%1  %L2</source>
        <translation>%1  %L2</translation>
    </message>
    <message>
        <source>%L1 more</source>
        <translation>%L1 de plus</translation>
    </message>
    <message numerus="yes">
        <source>%n more are not listed here.</source>
        <translation>
            <numerusform>%Ln autre n’est pas listé ici.</numerusform>
            <numerusform>%Ln autres ne sont pas listés ici.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SectionActsBar</name>
    <message>
        <source>Attach a file…</source>
        <translation>Joindre un fichier…</translation>
    </message>
    <message>
        <source>Attach files</source>
        <translation>Joindre des fichiers</translation>
    </message>
    <message>
        <source>Documents and pictures (*.pdf *.jpg *.jpeg *.png *.heic);;All files (*)</source>
        <translation>Documents et images (*.pdf *.jpg *.jpeg *.png *.heic);;Tous les fichiers (*)</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SectionChoice</name>
    <message>
        <source>Sections</source>
        <translation>Sections</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 %2 open of %3</source>
        <translation>%1 %2 ouvertes sur %3</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SectionList</name>
    <message>
        <source>Nothing on record here.</source>
        <translation>Rien d’inscrit ici.</translation>
    </message>
    <message>
        <source>Drawn</source>
        <translation>En dessin</translation>
    </message>
    <message>
        <source>Which step comes before which, as a picture</source>
        <translation>Quelle étape vient avant laquelle, en image</translation>
    </message>
    <message>
        <source>%1: %2 added</source>
        <translation>%1&#xa0;: %2 ajouté</translation>
    </message>
    <message>
        <source>Withdraw what is chosen</source>
        <translation>Retirer ce qui est choisi</translation>
    </message>
    <message>
        <source>A new one before the chosen one</source>
        <translation>Un nouvel élément avant celui qui est choisi</translation>
    </message>
    <message>
        <source>Move up</source>
        <translation>Déplacer vers le haut</translation>
    </message>
    <message>
        <source>Move down</source>
        <translation>Déplacer vers le bas</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SectionModel</name>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1: not %2</source>
        <translation>%1&#xa0;: pas %2</translation>
    </message>
    <message>
        <source>%1: %2 changed</source>
        <translation>%1&#xa0;: %2 modifié</translation>
    </message>
    <message>
        <source>“%1” cannot stand under “%2”.</source>
        <translation>«&#xa0;%1&#xa0;» ne peut pas figurer sous «&#xa0;%2&#xa0;».</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::Session</name>
    <message>
        <source>Undone: %1</source>
        <translation>Annulé&#xa0;: %1</translation>
    </message>
    <message>
        <source>Done again: %1</source>
        <translation>Refait&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1: cancelled, nothing was kept</source>
        <translation>%1&#xa0;: annulé, rien n’a été gardé</translation>
    </message>
    <message>
        <source>Nothing had to be changed.</source>
        <translation>Il n’y avait rien à changer.</translation>
    </message>
    <message>
        <source>Taken back: %1</source>
        <translation>Annulé&#xa0;: %1</translation>
    </message>
    <message>
        <source>Undone: %1 (%2 records). Redo brings all of it back.</source>
        <translation>Annulé&#xa0;: %1 (%2 enregistrements). «&#xa0;Refaire&#xa0;» rétablit le tout.</translation>
    </message>
    <message>
        <source>“%1” changed %2 records. Undo once more to take all of it back; redo brings it again.</source>
        <translation>«&#xa0;%1&#xa0;» a modifié %2 enregistrements. Annulez encore une fois pour tout reprendre&#xa0;; «&#xa0;Refaire&#xa0;» le rétablit.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SeveralParts</name>
    <message>
        <source>as they are</source>
        <translation>telles quelles</translation>
    </message>
    <message>
        <source>Set for all</source>
        <translation>Fixer pour toutes</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zone</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Genre</translation>
    </message>
    <message>
        <source>Construction</source>
        <translation>Construction</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Endroit</translation>
    </message>
    <message>
        <source>Shelf</source>
        <translation>Étagère</translation>
    </message>
    <message>
        <source>Move into</source>
        <translation>Déplacer dans</translation>
    </message>
    <message numerus="yes">
        <source>%n parts chosen</source>
        <translation>
            <numerusform>%Ln pièce choisie</numerusform>
            <numerusform>%Ln pièces choisies</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing is filled in that could be set.</source>
        <translation>Rien n’est rempli qui puisse être fixé.</translation>
    </message>
    <message numerus="yes">
        <source>%n parts changed</source>
        <translation>
            <numerusform>%Ln pièce modifiée</numerusform>
            <numerusform>%Ln pièces modifiées</numerusform>
        </translation>
    </message>
    <message>
        <source>Withdraw all…</source>
        <translation>Tout retirer…</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SheetBox</name>
    <message>
        <source>Choose the photo…</source>
        <translation>Choisir la photo…</translation>
    </message>
    <message>
        <source>none yet; it can be added later</source>
        <translation>aucune encore&#xa0;; elle peut être ajoutée plus tard</translation>
    </message>
    <message>
        <source>The photographed sheet</source>
        <translation>La feuille photographiée</translation>
    </message>
    <message>
        <source>Pictures and documents (*.jpg *.jpeg *.png *.heic *.pdf);;All files (*)</source>
        <translation>Images et documents (*.jpg *.jpeg *.png *.heic *.pdf);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>%1 is not there any more, or cannot be read. Choose it again, or leave it out and add it later.</source>
        <translation>%1 n’est plus là, ou ne peut être lu. Choisissez-le de nouveau, ou ajoutez-le plus tard.</translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation>L’omettre</translation>
    </message>
    <message>
        <source>There is place for one file here: %1 was chosen, the others were not.</source>
        <translation>Il y a ici place pour un fichier&#xa0;: %1 a été choisi, les autres non.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SheetPreview</name>
    <message>
        <source>The photographed sheet</source>
        <translation>La feuille photographiée</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ShiftForm</name>
    <message numerus="yes">
        <source>%n days</source>
        <translation>
            <numerusform>%Ln jour</numerusform>
            <numerusform>%Ln jours</numerusform>
        </translation>
    </message>
    <message>
        <source>Shift the times</source>
        <translation>Décaler les heures</translation>
    </message>
    <message>
        <source>later by</source>
        <translation>plus tard de</translation>
    </message>
    <message>
        <source>earlier by</source>
        <translation>plus tôt de</translation>
    </message>
    <message>
        <source>the first was taken at</source>
        <translation>la première a été prise le</translation>
    </message>
    <message>
        <source>1h30, 90 min, 2 days</source>
        <translation>1h30, 90 min, 2 jours</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Comment</translation>
    </message>
    <message>
        <source>Length of time</source>
        <translation>Durée</translation>
    </message>
    <message>
        <source>First taken at</source>
        <translation>Première prise le</translation>
    </message>
    <message>
        <source>Shift the times of: %1</source>
        <translation>Décaler les heures&#xa0;: %1</translation>
    </message>
    <message>
        <source>It is not known when they were taken; there is no time to shift.</source>
        <translation>On ne sait pas quand elles ont été prises&#xa0;; il n’y a pas d’heure à décaler.</translation>
    </message>
    <message>
        <source>Of none of them the time of day is known: say the day alone.</source>
        <translation>L’heure n’est connue pour aucune d’elles&#xa0;: indiquez le jour seul.</translation>
    </message>
    <message>
        <source>By how much? Write it as 1h30, 90 min or 2 days.</source>
        <translation>De combien&#xa0;? Par exemple 1h30, 90 min ou 2 jours.</translation>
    </message>
    <message>
        <source>So far they would lie outside the years 1900 to 2199.</source>
        <translation>Décalées d’autant, elles sortiraient des années 1900 à 2199.</translation>
    </message>
    <message>
        <source>That is what their times are already.</source>
        <translation>Ce sont déjà leurs heures.</translation>
    </message>
    <message>
        <source>Only their days are known: shift them by whole days.</source>
        <translation>Seul leur jour est connu&#xa0;: décalez-les de jours entiers.</translation>
    </message>
    <message>
        <source>First: %1 becomes %2.</source>
        <translation>Première&#xa0;: %1 devient %2.</translation>
    </message>
    <message>
        <source>Last: %1 becomes %2.</source>
        <translation>Dernière&#xa0;: %1 devient %2.</translation>
    </message>
    <message numerus="yes">
        <source>%n would lie ahead of now.</source>
        <translation>
            <numerusform>%Ln serait dans le futur.</numerusform>
            <numerusform>%Ln seraient dans le futur.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n stay as they are: their time is not known.</source>
        <translation>
            <numerusform>%Ln reste telle quelle&#xa0;: son heure n’est pas connue.</numerusform>
            <numerusform>%Ln restent telles quelles&#xa0;: leur heure n’est pas connue.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: times shifted back by %2</source>
        <translation>%1&#xa0;: heures reculées de %2</translation>
    </message>
    <message>
        <source>%1: times shifted forward by %2</source>
        <translation>%1&#xa0;: heures avancées de %2</translation>
    </message>
    <message numerus="yes">
        <source>%n belong to log entries and stay with them.</source>
        <translation>
            <numerusform>%Ln appartient à une entrée du carnet et y reste.</numerusform>
            <numerusform>%Ln appartiennent à des entrées du carnet et y restent.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ShortcutSheet</name>
    <message>
        <source>Keys</source>
        <translation>Touches</translation>
    </message>
    <message>
        <source>Ctrl+%1</source>
        <translation>Ctrl+%1</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Entrée</translation>
    </message>
    <message>
        <source>Go to the record of a row</source>
        <translation>Aller à l’enregistrement d’une ligne</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Espace</translation>
    </message>
    <message>
        <source>Press the button of a row</source>
        <translation>Presser le bouton d’une ligne</translation>
    </message>
    <message>
        <source>Up, Down</source>
        <translation>Haut, Bas</translation>
    </message>
    <message>
        <source>A day later or earlier, in a field for days</source>
        <translation>Un jour plus tard ou plus tôt, dans un champ de jour</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <translation>Ctrl+Entrée</translation>
    </message>
    <message>
        <source>Record what a form says</source>
        <translation>Inscrire ce que dit un formulaire</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Échap</translation>
    </message>
    <message>
        <source>Leave a form, a closing, this sheet</source>
        <translation>Quitter un formulaire, une fermeture, cette liste</translation>
    </message>
    <message>
        <source>Menu, Shift+F10</source>
        <translation>Menu, Maj+F10</translation>
    </message>
    <message>
        <source>What can be done with a row</source>
        <translation>Ce qui peut être fait d’une ligne</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ShowsBar</name>
    <message numerus="yes">
        <source>%n photos</source>
        <translation>
            <numerusform>%Ln photo</numerusform>
            <numerusform>%Ln photos</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1: shows %2</source>
        <translation>%1&#xa0;: montre %2</translation>
    </message>
    <message>
        <source>%1: does not show %2</source>
        <translation>%1&#xa0;: ne montre pas %2</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SignOffForm</name>
    <message>
        <source>Record the signature</source>
        <translation>Inscrire la signature</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>Signé par</translation>
    </message>
    <message>
        <source>Credential</source>
        <translation>Qualification</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Le</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Résultat</translation>
    </message>
    <message>
        <source>Looked at</source>
        <translation>Vu</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Remarques</translation>
    </message>
    <message>
        <source>Signed sheet</source>
        <translation>Feuille signée</translation>
    </message>
    <message>
        <source>Signature for the %1</source>
        <translation>Signature&#xa0;: %1</translation>
    </message>
    <message>
        <source>Accepted afterwards: %1</source>
        <translation>Accepté après coup&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 signed</source>
        <translation>%1&#xa0;: signé</translation>
    </message>
    <message>
        <source>%1 accepted afterwards</source>
        <translation>%1&#xa0;: accepté après coup</translation>
    </message>
    <message>
        <source>Answer to what changed since the signature: %1</source>
        <translation>Réponse à ce qui a changé depuis la signature&#xa0;: %1</translation>
    </message>
    <message>
        <source>What was to be signed is no longer on record.</source>
        <translation>Ce qui devait être signé n’est plus enregistré.</translation>
    </message>
    <message>
        <source>“%1” was closed on %2. What was signed after that does not count for it; “Accepted afterwards”, beside the closing, is what does.</source>
        <translation>«&#xa0;%1&#xa0;» a été fermé le %2. Ce qui a été signé après ne compte pas pour cette fermeture&#xa0;; c’est «&#xa0;Accepté après coup&#xa0;», près de la fermeture, qui compte.</translation>
    </message>
    <message>
        <source>“%1” was closed on %2: what accepts it afterwards is not of a day before that.</source>
        <translation>«&#xa0;%1&#xa0;» a été fermé le %2&#xa0;: ce qui l’accepte après coup ne date pas d’un jour antérieur.</translation>
    </message>
    <message>
        <source>%1 not accepted afterwards</source>
        <translation>%1&#xa0;: non accepté après coup</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SignedQuestion</name>
    <message>
        <source>Did this change what was inspected?</source>
        <translation>Cela a-t-il modifié ce qui était inspecté&#xa0;?</translation>
    </message>
    <message>
        <source>“%1” is signed for and still open. Did this change what was inspected?</source>
        <translation>«&#xa0;%1&#xa0;» est signée et encore ouverte. Cela a-t-il modifié ce qui était inspecté&#xa0;?</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>non précisé</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>this is the closing itself</source>
        <translation>c’est la fermeture elle-même</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SquawkActForm</name>
    <message>
        <source>A correction needs to be written down.</source>
        <translation>Une correction doit être écrite.</translation>
    </message>
    <message>
        <source>An acceptance needs its basis: a letter, a drawing, a rule.</source>
        <translation>Une acceptation demande sa base&#xa0;: une lettre, un plan, une règle.</translation>
    </message>
    <message>
        <source>Say why, so that the record still makes sense in a year.</source>
        <translation>Dites pourquoi, pour que le dossier se comprenne encore dans un an.</translation>
    </message>
    <message>
        <source>Say in a few words what is wrong.</source>
        <translation>Dites en peu de mots ce qui ne va pas.</translation>
    </message>
    <message>
        <source>“%1” is no day.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un jour.</translation>
    </message>
    <message>
        <source>On which day?</source>
        <translation>Quel jour&#xa0;?</translation>
    </message>
    <message>
        <source>Somebody has to be named.</source>
        <translation>Il faut nommer quelqu’un.</translation>
    </message>
    <message>
        <source>“%1” is not among the people on record; add the name there first, with the role.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas parmi les personnes inscrites&#xa0;; ajoutez-y d’abord le nom, avec le rôle.</translation>
    </message>
    <message>
        <source>“%1” is no length of time; write it as 2h15 or 90m.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas une durée&#xa0;; écrivez 2h15 ou 90m.</translation>
    </message>
    <message>
        <source>Squawk %1 fixed and checked</source>
        <translation>Anomalie %1 corrigée et contrôlée</translation>
    </message>
    <message>
        <source>Squawk %1 fixed</source>
        <translation>Anomalie %1 corrigée</translation>
    </message>
    <message>
        <source>Squawk %1 verified</source>
        <translation>Anomalie %1 vérifiée</translation>
    </message>
    <message>
        <source>Squawk %1 accepted</source>
        <translation>Anomalie %1 acceptée</translation>
    </message>
    <message>
        <source>%1: acceptance taken back: %2</source>
        <translation>%1&#xa0;: acceptation annulée&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1: verification taken back: %2</source>
        <translation>%1&#xa0;: vérification annulée&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1: not fixed after all: %2</source>
        <translation>%1&#xa0;: finalement pas corrigée&#xa0;: %2</translation>
    </message>
    <message>
        <source>Squawk %1: one step back</source>
        <translation>Anomalie %1&#xa0;: un pas en arrière</translation>
    </message>
    <message>
        <source>As squawk %1, which was dealt with before. %2</source>
        <translation>Comme l’anomalie %1, déjà réglée. %2</translation>
    </message>
    <message>
        <source>Squawk %1 has come back</source>
        <translation>L’anomalie %1 est revenue</translation>
    </message>
    <message>
        <source>Squawk %1: what was done about it?</source>
        <translation>Anomalie %1&#xa0;: qu’a-t-on fait&#xa0;?</translation>
    </message>
    <message>
        <source>Squawk %1: who looked at the correction?</source>
        <translation>Anomalie %1&#xa0;: qui a regardé la correction&#xa0;?</translation>
    </message>
    <message>
        <source>Squawk %1 stays as it is: who accepts that, and on what basis?</source>
        <translation>L’anomalie %1 reste en l’état&#xa0;: qui l’accepte, et sur quelle base&#xa0;?</translation>
    </message>
    <message>
        <source>Squawk %1: why is the last step taken back?</source>
        <translation>Anomalie %1&#xa0;: pourquoi revenir d’un pas en arrière&#xa0;?</translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation>Revenir en arrière</translation>
    </message>
    <message>
        <source>Squawk %1 has come back: what is seen now?</source>
        <translation>L’anomalie %1 est revenue&#xa0;: que voit-on maintenant&#xa0;?</translation>
    </message>
    <message>
        <source>Write down a new squawk</source>
        <translation>Inscrire une nouvelle anomalie</translation>
    </message>
    <message>
        <source>Correction</source>
        <translation>Correction</translation>
    </message>
    <message>
        <source>Basis</source>
        <translation>Base</translation>
    </message>
    <message>
        <source>a letter, a drawing, a rule</source>
        <translation>une lettre, un plan, une règle</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Le</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Par</translation>
    </message>
    <message>
        <source>Worked for</source>
        <translation>Travaillé</translation>
    </message>
    <message>
        <source>optional, as 2h15 or 90m; goes into the log</source>
        <translation>facultatif, comme 2h15 ou 90m&#xa0;; va dans le carnet</translation>
    </message>
    <message>
        <source>Mark as fixed</source>
        <translation>Marquer comme corrigée</translation>
    </message>
    <message>
        <source>Mark as fixed and checked</source>
        <translation>Marquer comme corrigée et contrôlée</translation>
    </message>
    <message>
        <source>Mark as verified</source>
        <translation>Marquer comme vérifiée</translation>
    </message>
    <message>
        <source>Mark as accepted</source>
        <translation>Marquer comme acceptée</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SquawkCapture</name>
    <message>
        <source>New squawk</source>
        <translation>Nouvelle anomalie</translation>
    </message>
    <message>
        <source>Photos…</source>
        <translation>Photos…</translation>
    </message>
    <message>
        <source>Files can also be dropped here, or pasted into the line</source>
        <translation>On peut aussi déposer des fichiers ici, ou les coller dans la ligne</translation>
    </message>
    <message>
        <source>Photos to take in</source>
        <translation>Photos à importer</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Effacer</translation>
    </message>
    <message>
        <source>Write it down</source>
        <translation>L’inscrire</translation>
    </message>
    <message>
        <source>Enter; Ctrl+Enter also opens it</source>
        <translation>Entrée&#xa0;; Ctrl+Entrée l’ouvre aussi</translation>
    </message>
    <message>
        <source>no part</source>
        <translation>aucune pièce</translation>
    </message>
    <message>
        <source>%1 (the part you are looking at)</source>
        <translation>%1 (la pièce que vous regardez)</translation>
    </message>
    <message>
        <source>today</source>
        <translation>aujourd’hui</translation>
    </message>
    <message>
        <source>Squawk %1: “%2” · %3 · %4 · found %5</source>
        <translation>Anomalie %1&#xa0;: «&#xa0;%2&#xa0;» · %3 · %4 · trouvée %5</translation>
    </message>
    <message>
        <source>In front of the colon a part, a severity, a day, as far as you like; behind it what is wrong.</source>
        <translation>Avant les deux-points une pièce, une gravité, un jour, à volonté&#xa0;; après, ce qui ne va pas.</translation>
    </message>
    <message>
        <source>Squawk %1 written down: %2</source>
        <translation>Anomalie %1 inscrite&#xa0;: %2</translation>
    </message>
    <message>
        <source>The photos that were chosen for a squawk are not taken in. Write it down, press “Clear”, or do the same once more to leave without them.</source>
        <translation>Les photos choisies pour une anomalie ne sont pas importées. L’inscrire, presser «&#xa0;Effacer&#xa0;», ou refaire la même chose pour partir sans elles.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SquawkEditor</name>
    <message>
        <source>Found on</source>
        <translation>Trouvée le</translation>
    </message>
    <message>
        <source>Reached through</source>
        <translation>Accès par</translation>
    </message>
    <message>
        <source>Estimate</source>
        <translation>Estimation</translation>
    </message>
    <message>
        <source>Verify</source>
        <translation>Vérifier</translation>
    </message>
    <message>
        <source>Accept as it is</source>
        <translation>Accepter en l’état</translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>Squawk %1: %2</source>
        <translation>Anomalie %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Take back…</source>
        <translation>Revenir en arrière…</translation>
    </message>
    <message>
        <source>It came back…</source>
        <translation>Elle est revenue…</translation>
    </message>
    <message>
        <source>F in the list</source>
        <translation>F dans la liste</translation>
    </message>
    <message>
        <source>One step back: not accepted, not verified or not fixed after all</source>
        <translation>Un pas en arrière&#xa0;: finalement pas acceptée, vérifiée ou corrigée</translation>
    </message>
    <message>
        <source>Writes down a new squawk like this one; this one keeps its dates</source>
        <translation>Inscrit une nouvelle anomalie comme celle-ci, qui garde ses dates</translation>
    </message>
    <message>
        <source>Mark as fixed</source>
        <translation>Marquer comme corrigée</translation>
    </message>
    <message>
        <source>Mark as fixed and checked</source>
        <translation>Marquer comme corrigée et contrôlée</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SquawkFilterBar</name>
    <message>
        <source>Clear</source>
        <translation>Effacer</translation>
    </message>
    <message>
        <source>Type to filter</source>
        <translation>Tapez pour filtrer</translation>
    </message>
    <message>
        <source>Filter by words</source>
        <translation>Filtrer par mots</translation>
    </message>
    <message>
        <source>any part</source>
        <translation>toute pièce</translation>
    </message>
    <message>
        <source>Filter by part and what is below it</source>
        <translation>Filtrer par pièce et ce qui est dessous</translation>
    </message>
    <message>
        <source>Clear the filter</source>
        <translation>Effacer le filtre</translation>
    </message>
    <message>
        <source>Filter by how far they are dealt with</source>
        <translation>Filtrer par avancement</translation>
    </message>
    <message>
        <source>Filter by severity</source>
        <translation>Filtrer par gravité</translation>
    </message>
    <message>
        <source>any severity</source>
        <translation>toute gravité</translation>
    </message>
    <message>
        <source>Filter by who verifies</source>
        <translation>Filtrer par qui vérifie</translation>
    </message>
    <message>
        <source>anybody to verify</source>
        <translation>à vérifier par quiconque</translation>
    </message>
    <message>
        <source>Filter by reach</source>
        <translation>Filtrer par accès</translation>
    </message>
    <message>
        <source>in and out of reach</source>
        <translation>accessibles ou non</translation>
    </message>
    <message>
        <source>Filter by inspection</source>
        <translation>Filtrer par inspection</translation>
    </message>
    <message>
        <source>any inspection</source>
        <translation>toute inspection</translation>
    </message>
    <message>
        <source>More filters</source>
        <translation>Plus de filtres</translation>
    </message>
    <message>
        <source>More</source>
        <comment>filters</comment>
        <translation>Plus</translation>
    </message>
    <message>
        <source>More filters: by severity, part, who verifies it, inspection and reach</source>
        <translation>Plus de filtres&#xa0;: par gravité, pièce, vérificateur, inspection et accès</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SquawkLineEdit</name>
    <message>
        <source>New squawk, as in “left aileron: overdriven rivet at rib 3”</source>
        <translation>Nouvelle anomalie, comme «&#xa0;aileron gauche&#xa0;: rivet trop écrasé à la nervure 3&#xa0;»</translation>
    </message>
    <message>
        <source>New squawk</source>
        <translation>Nouvelle anomalie</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SquawkModel</name>
    <message>
        <source>verified %1</source>
        <translation>vérifiée le %1</translation>
    </message>
    <message>
        <source>accepted as it is %1</source>
        <translation>acceptée en l’état le %1</translation>
    </message>
    <message>
        <source>open</source>
        <translation>ouverte</translation>
    </message>
    <message>
        <source>fixed, the inspector has to look</source>
        <translation>corrigée, l’inspecteur doit regarder</translation>
    </message>
    <message>
        <source>fixed, the adviser has to look</source>
        <translation>corrigée, le conseiller doit regarder</translation>
    </message>
    <message>
        <source>fixed, to be checked</source>
        <translation>corrigée, à contrôler</translation>
    </message>
    <message>
        <source>last chance before %1</source>
        <translation>dernière occasion avant %1</translation>
    </message>
    <message>
        <source>out of reach: open %1</source>
        <translation>hors d’accès&#xa0;: ouvrir %1</translation>
    </message>
    <message>
        <source>on papers</source>
        <translation>sur les papiers</translation>
    </message>
    <message>
        <source>Soon out of reach (%1)</source>
        <translation>Bientôt hors d’accès (%1)</translation>
    </message>
    <message>
        <source>Out of reach (%1)</source>
        <translation>Hors d’accès (%1)</translation>
    </message>
    <message>
        <source>In reach (%1)</source>
        <translation>Accessibles (%1)</translation>
    </message>
    <message>
        <source>Done (%1)</source>
        <translation>Réglées (%1)</translation>
    </message>
    <message numerus="yes">
        <source>last chance before %1 and %n more</source>
        <translation>
            <numerusform>dernière occasion avant %1 et %Ln autre</numerusform>
            <numerusform>dernière occasion avant %1 et %Ln autres</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>out of reach: open %1 and %n more</source>
        <translation>
            <numerusform>hors d’accès&#xa0;: ouvrir %1 et %Ln autre</numerusform>
            <numerusform>hors d’accès&#xa0;: ouvrir %1 et %Ln autres</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SquawkPictures</name>
    <message>
        <source>Add photos…</source>
        <translation>Ajouter des photos…</translation>
    </message>
    <message>
        <source>Photos before the repair</source>
        <translation>Photos avant la réparation</translation>
    </message>
    <message>
        <source>Photos after the repair</source>
        <translation>Photos après la réparation</translation>
    </message>
    <message>
        <source>No photo of the defect yet. Drop some here.</source>
        <translation>Pas encore de photo du défaut. Déposez-en ici.</translation>
    </message>
    <message>
        <source>No photo of the repair yet. Drop some here.</source>
        <translation>Pas encore de photo de la réparation. Déposez-en ici.</translation>
    </message>
    <message>
        <source>Add photos of the defect</source>
        <translation>Ajouter des photos du défaut</translation>
    </message>
    <message>
        <source>Add photos of the repair</source>
        <translation>Ajouter des photos de la réparation</translation>
    </message>
    <message>
        <source>It shows the repair</source>
        <translation>Elle montre la réparation</translation>
    </message>
    <message>
        <source>It shows the defect</source>
        <translation>Elle montre le défaut</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Avant</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Après</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>A photo shows the repair</source>
        <translation>Une photo montre la réparation</translation>
    </message>
    <message>
        <source>A photo shows the defect</source>
        <translation>Une photo montre le défaut</translation>
    </message>
    <message>
        <source>Look at the photo</source>
        <translation>Regarder la photo</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SquawkReach</name>
    <message numerus="yes">
        <source>Out of reach. To get at it, open again:</source>
        <translation>
            <numerusform>Hors d’accès. Pour y arriver, rouvrir&#xa0;:</numerusform>
            <numerusform>Hors d’accès. Pour y arriver, rouvrir&#xa0;:</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Soon out of reach. This is the last chance before:</source>
        <translation>
            <numerusform>Bientôt hors d’accès. Dernière occasion avant&#xa0;:</numerusform>
            <numerusform>Bientôt hors d’accès. Dernière occasion avant&#xa0;:</numerusform>
        </translation>
    </message>
    <message>
        <source>Go to the closing %1</source>
        <translation>Aller à la fermeture %1</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SquawkWork</name>
    <message>
        <source>Work on it</source>
        <translation>Travail dessus</translation>
    </message>
    <message>
        <source>No work on it is in the log yet.</source>
        <translation>Aucun travail dessus n’est encore inscrit.</translation>
    </message>
    <message>
        <source>Log work on it, as in “45m: drilled out” or “2h15 yesterday”</source>
        <translation>Inscrire, comme «&#xa0;45m&#xa0;: percé&#xa0;» ou «&#xa0;2h15 hier&#xa0;»</translation>
    </message>
    <message>
        <source>Log work on this squawk</source>
        <translation>Inscrire du travail sur cette anomalie</translation>
    </message>
    <message>
        <source>not written down</source>
        <translation>non noté</translation>
    </message>
    <message>
        <source>%1 worked; the estimate was %2</source>
        <translation>%1 travaillé&#xa0;; l’estimation était %2</translation>
    </message>
    <message>
        <source>%1 worked</source>
        <translation>%1 travaillé</translation>
    </message>
    <message>
        <source>no time written down</source>
        <translation>aucun temps noté</translation>
    </message>
    <message>
        <source>Work logged on squawk %1</source>
        <translation>Travail inscrit sur l’anomalie %1</translation>
    </message>
    <message>
        <source>The clock has run for %1. How long was really worked on it?</source>
        <translation>L’horloge a tourné %1. Combien de temps a-t-on vraiment travaillé dessus&#xa0;?</translation>
    </message>
    <message>
        <source>Stop work</source>
        <translation>Arrêter le travail</translation>
    </message>
    <message>
        <source>Start work</source>
        <translation>Commencer le travail</translation>
    </message>
    <message>
        <source>At work on it since %1: %2</source>
        <translation>Au travail dessus depuis %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>The clock runs on something else; stop it in the log first.</source>
        <translation>L’horloge tourne pour autre chose&#xa0;; arrêtez-la d’abord dans le carnet.</translation>
    </message>
    <message>
        <source>the clock is stopped</source>
        <translation>l’horloge sera arrêtée</translation>
    </message>
    <message>
        <source>Not logged yet: %1 Enter once more logs it like this.</source>
        <translation>Pas encore inscrit&#xa0;: %1 Entrée encore une fois l’inscrit ainsi.</translation>
    </message>
    <message>
        <source>Not logged yet: %1</source>
        <translation>Pas encore inscrit&#xa0;: %1</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>«&#xa0;%1&#xa0;»</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SquawksPage</name>
    <message>
        <source>Squawks</source>
        <translation>Anomalies</translation>
    </message>
    <message>
        <source>Defects that are found will be listed here, those first that will soon be out of reach. Write the first one in the line above.</source>
        <translation>Les défauts trouvés figureront ici, d’abord ceux bientôt hors d’accès. Écrivez le premier dans la ligne ci-dessus.</translation>
    </message>
    <message numerus="yes">
        <source>%n squawks</source>
        <translation>
            <numerusform>%Ln anomalie</numerusform>
            <numerusform>%Ln anomalies</numerusform>
        </translation>
    </message>
    <message>
        <source>No squawk matches the filter.</source>
        <translation>Aucune anomalie ne correspond au filtre.</translation>
    </message>
    <message>
        <source>Clear the filter</source>
        <translation>Effacer le filtre</translation>
    </message>
    <message>
        <source>Print the list…</source>
        <translation>Imprimer la liste…</translation>
    </message>
    <message>
        <source>CSV…</source>
        <translation>CSV…</translation>
    </message>
    <message>
        <source>Write the list as CSV</source>
        <translation>Écrire la liste en CSV</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>CSV for a spreadsheet (*.csv)</source>
        <translation>CSV pour un tableur (*.csv)</translation>
    </message>
    <message>
        <source>Squawks %1</source>
        <translation>Anomalies %1</translation>
    </message>
    <message>
        <source>Write the list</source>
        <translation>Écrire la liste</translation>
    </message>
    <message numerus="yes">
        <source>%1; of all, %n soon out of reach</source>
        <translation>
            <numerusform>%1&#xa0;; en tout, %Ln bientôt hors d’accès</numerusform>
            <numerusform>%1&#xa0;; en tout, %Ln bientôt hors d’accès</numerusform>
        </translation>
    </message>
    <message>
        <source>Look for words in the list</source>
        <translation>Chercher des mots dans la liste</translation>
    </message>
    <message>
        <source>Mark as fixed and checked</source>
        <translation>Marquer comme corrigée et contrôlée</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::StandingPanel</name>
    <message numerus="yes">
        <source>stay open, work left</source>
        <translation>
            <numerusform>reste ouverte, du travail reste</numerusform>
            <numerusform>restent ouvertes, du travail reste</numerusform>
        </translation>
    </message>
    <message>
        <source>nothing on record against closing</source>
        <translation>rien d’inscrit contre la fermeture</translation>
    </message>
    <message numerus="yes">
        <source>closed</source>
        <translation>
            <numerusform>fermée</numerusform>
            <numerusform>fermées</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>closed with gaps</source>
        <translation>
            <numerusform>fermée avec lacunes</numerusform>
            <numerusform>fermées avec lacunes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>not begun</source>
        <translation>
            <numerusform>pas commencée</numerusform>
            <numerusform>pas commencées</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>stay open, wait for somebody from outside</source>
        <translation>
            <numerusform>reste ouverte, attend quelqu’un du dehors</numerusform>
            <numerusform>restent ouvertes, attendent quelqu’un du dehors</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>stay open, wait for your signature</source>
        <translation>
            <numerusform>reste ouverte, attend votre signature</numerusform>
            <numerusform>restent ouvertes, attendent votre signature</numerusform>
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
        <translation>Ouvrir un dossier de projet…</translation>
    </message>
    <message>
        <source>Open the demo</source>
        <translation>Ouvrir l’exemple</translation>
    </message>
    <message>
        <source>An invented aeroplane, two and a half years in, to look around and try everything.</source>
        <translation>Un avion inventé, après deux ans et demi, pour regarder et tout essayer.</translation>
    </message>
    <message>
        <source>What was built, what was found, what must stay open, and who signed: the records of one aircraft, in one folder.</source>
        <translation>Ce qui a été construit, trouvé, ce qui doit rester ouvert, et qui a signé&#xa0;: les dossiers d’un avion, dans un seul dossier.</translation>
    </message>
    <message>
        <source>Open again</source>
        <translation>Rouvrir</translation>
    </message>
    <message>
        <source>Restore a backup…</source>
        <translation>Restaurer une sauvegarde…</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::StarterTree</name>
    <message>
        <source>Parts to begin with</source>
        <translation>Pièces du début</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::StateBadge</name>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::StateColumn</name>
    <message>
        <source>Show fewer</source>
        <translation>Montrer moins</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation>%1 de plus</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::StepPicture</name>
    <message>
        <source>Order of the steps</source>
        <translation>Ordre des étapes</translation>
    </message>
    <message>
        <source>%1, after %2</source>
        <translation>%1, après %2</translation>
    </message>
    <message>
        <source>Go to the step that has to wait for it, and press W again.</source>
        <translation>Allez à l’étape qui doit l’attendre, et pressez W de nouveau.</translation>
    </message>
    <message>
        <source>These are too many steps for a picture. Choose a part further down, or leave out what lies below.</source>
        <translation>C’est trop d’étapes pour une image. Choisissez une pièce plus bas, ou omettez ce qui est dessous.</translation>
    </message>
    <message>
        <source>One step waits for another</source>
        <translation>Une étape en attend une autre</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::StopForm</name>
    <message>
        <source>as in the line for a new entry: with names, “done” and steps</source>
        <translation>comme dans la ligne d’une nouvelle entrée&#xa0;: avec noms, «&#xa0;fait&#xa0;» et étapes</translation>
    </message>
    <message>
        <source>Log it</source>
        <translation>Inscrire</translation>
    </message>
    <message>
        <source>Keep it running</source>
        <translation>La laisser tourner</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fait</translation>
    </message>
    <message>
        <source>Stopped at</source>
        <translation>Arrêté à</translation>
    </message>
    <message>
        <source>Worked for</source>
        <translation>Travaillé</translation>
    </message>
    <message>
        <source>From %1 on the computer slept or the program was closed, for %2. When did work stop?</source>
        <translation>Dès %1 l’ordinateur dormait ou le programme était fermé, pendant %2. Quand le travail a-t-il cessé&#xa0;?</translation>
    </message>
    <message>
        <source>The clock has run for %1. When did work stop?</source>
        <translation>L’horloge a tourné %1. Quand le travail a-t-il cessé&#xa0;?</translation>
    </message>
    <message>
        <source>What was done?</source>
        <translation>Qu’a-t-on fait&#xa0;?</translation>
    </message>
    <message>
        <source>How long did it take? Write it as 2h15 or 90m, at most a day.</source>
        <translation>Combien de temps&#xa0;? Écrivez 2h15 ou 90m, au plus un jour.</translation>
    </message>
    <message>
        <source>When did work stop? Write it as 17:30; it cannot lie ahead.</source>
        <translation>Quand le travail a-t-il cessé&#xa0;? Écrivez 17:30&#xa0;; ce ne peut être dans l’avenir.</translation>
    </message>
    <message>
        <source>%1 “Log it” once more logs it like this.</source>
        <translation>%1 «&#xa0;Inscrire&#xa0;» encore une fois l’inscrit ainsi.</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Pièce</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::StoresPage</name>
    <message>
        <source>Packing lists</source>
        <translation>Listes de colisage</translation>
    </message>
    <message>
        <source>Materials</source>
        <translation>Matériaux</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Outils</translation>
    </message>
    <message>
        <source>Expenses</source>
        <translation>Dépenses</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SumPanel</name>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valeur</translation>
    </message>
    <message>
        <source>Basis</source>
        <translation>Base</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Source</translation>
    </message>
    <message>
        <source>How well it is known</source>
        <translation>Degré de vérification</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::TaskPanel</name>
    <message>
        <source>Parts it was done on</source>
        <translation>Pièces concernées</translation>
    </message>
    <message>
        <source>Pictures named for it</source>
        <translation>Photos désignées pour elle</translation>
    </message>
    <message>
        <source>Log entries of its parts</source>
        <translation>Entrées du carnet sur ses pièces</translation>
    </message>
    <message>
        <source>No log entry on its parts.</source>
        <translation>Aucune entrée du carnet sur ses pièces.</translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>section: task</comment>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>No picture shows the builder at work on it. A photo of the parts named above that is marked “builder at work” counts, and so does one attached here.</source>
        <translation>Aucune photo ne montre le constructeur à l’œuvre. Une photo des pièces nommées ci-dessus marquée «&#xa0;constructeur au travail&#xa0;» compte, de même qu’une photo jointe ici.</translation>
    </message>
    <message>
        <source>%1: tenths</source>
        <translation>%1&#xa0;: dixièmes</translation>
    </message>
    <message>
        <source>%1: does not apply</source>
        <translation>%1&#xa0;: sans objet</translation>
    </message>
    <message>
        <source>%1: picture taken off</source>
        <translation>%1&#xa0;: photo retirée</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::TenthsEditor</name>
    <message>
        <source>Keep the tenths</source>
        <translation>Garder les dixièmes</translation>
    </message>
    <message>
        <source>A: maker of kit or part</source>
        <translation>A&#xa0;: fabricant du kit ou de la pièce</translation>
    </message>
    <message>
        <source>B: paid help</source>
        <translation>B&#xa0;: aide rémunérée</translation>
    </message>
    <message>
        <source>C: builder, assembly</source>
        <translation>C&#xa0;: constructeur, assemblage</translation>
    </message>
    <message>
        <source>D: builder, fabrication</source>
        <translation>D&#xa0;: constructeur, fabrication</translation>
    </message>
    <message>
        <source>Does not apply; tenths make it apply.</source>
        <translation>Sans objet&#xa0;; des dixièmes la rendent applicable.</translation>
    </message>
    <message>
        <source>Together 10 tenths.</source>
        <translation>Ensemble 10 dixièmes.</translation>
    </message>
    <message>
        <source>Mark as not applying</source>
        <translation>Non applicable</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::TimerBar</name>
    <message>
        <source>Leave that time out</source>
        <translation>Omettre ce temps</translation>
    </message>
    <message>
        <source>Stop work</source>
        <translation>Arrêter le travail</translation>
    </message>
    <message>
        <source>Note while at work</source>
        <translation>Note pendant le travail</translation>
    </message>
    <message>
        <source>Paused after %1 of work</source>
        <translation>Pause après %1 de travail</translation>
    </message>
    <message>
        <source>Paused after %1 of work on %2</source>
        <translation>Pause après %1 de travail sur %2</translation>
    </message>
    <message>
        <source>At work since %1: %2. Of it the computer slept, or the program was closed, for %3.</source>
        <translation>Au travail depuis %1&#xa0;: %2. Dont ordinateur en veille ou programme fermé&#xa0;: %3.</translation>
    </message>
    <message>
        <source>The clock has run for %1, since %2. When did work stop?</source>
        <translation>L’horloge a tourné %1, depuis %2. Quand le travail a-t-il cessé&#xa0;?</translation>
    </message>
    <message>
        <source>At work since %1: %2</source>
        <translation>Au travail depuis %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>At work on %1 since %2: %3</source>
        <translation>Au travail sur %1 depuis %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Continuer</translation>
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
        <translation>L’horloge tourne déjà, depuis %1. Arrêtez-la d’abord à la page Carnet, pour ne pas perdre son temps.</translation>
    </message>
    <message>
        <source>The clock runs: %1</source>
        <translation>L’horloge tourne&#xa0;: %1</translation>
    </message>
    <message>
        <source>Take in photos</source>
        <translation>Importer des photos</translation>
    </message>
    <message>
        <source>Photos (*.jpg *.jpeg *.png *.heic);;All files (*)</source>
        <translation>Photos (*.jpg *.jpeg *.png *.heic);;Tous les fichiers (*)</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::TodayPage</name>
    <message>
        <source>Stays open</source>
        <translation>Reste ouvert</translation>
    </message>
    <message>
        <source>No closing that was begun has to stay open.</source>
        <translation>Aucune fermeture commencée ne doit rester ouverte.</translation>
    </message>
    <message>
        <source>Workable now</source>
        <translation>Faisable maintenant</translation>
    </message>
    <message>
        <source>Before it is out of reach</source>
        <translation>Avant que ce soit hors d’accès</translation>
    </message>
    <message>
        <source>Nothing on record would be buried by the next closing.</source>
        <translation>La prochaine fermeture n’enfouirait rien d’inscrit.</translation>
    </message>
    <message>
        <source>Needs attention</source>
        <translation>Demande attention</translation>
    </message>
    <message>
        <source>Nothing on record.</source>
        <translation>Rien d’inscrit.</translation>
    </message>
    <message>
        <source>Here stands each evening what must stay open and what can be worked on. It begins with a part and the closing that will hide it.</source>
        <translation>Ici figure chaque soir ce qui doit rester ouvert et ce qui est faisable. Tout commence par une pièce et la fermeture qui la cachera.</translation>
    </message>
    <message>
        <source>Make the first closing</source>
        <translation>Créer la première fermeture</translation>
    </message>
    <message>
        <source>Nothing is recorded yet.</source>
        <translation>Rien n’est encore inscrit.</translation>
    </message>
    <message>
        <source>The clock runs since %1.</source>
        <translation>L’horloge tourne depuis %1.</translation>
    </message>
    <message>
        <source>No step is recorded. Steps are optional; of those written down, this list says which can be worked on and what each of them unlocks.</source>
        <translation>Aucune étape n’est inscrite. Les étapes sont facultatives&#xa0;; de celles inscrites, cette liste dit lesquelles sont faisables et ce que chacune débloque.</translation>
    </message>
    <message>
        <source>Every step on record is done, or has to wait for another.</source>
        <translation>Chaque étape inscrite est faite, ou doit en attendre une autre.</translation>
    </message>
    <message numerus="yes">
        <source>After a merge, %n things are to decide</source>
        <translation>
            <numerusform>Après une fusion, %Ln chose est à décider</numerusform>
            <numerusform>Après une fusion, %Ln choses sont à décider</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ToolBoard</name>
    <message>
        <source>Calibrated…</source>
        <translation>Étalonné…</translation>
    </message>
    <message>
        <source>Calibrations</source>
        <translation>Étalonnages</translation>
    </message>
    <message>
        <source>None on record.</source>
        <translation>Aucun noté.</translation>
    </message>
    <message>
        <source>Used out of calibration</source>
        <translation>Utilisé sans étalonnage valable</translation>
    </message>
    <message>
        <source>Everything on record was done in calibration.</source>
        <translation>Tout ce qui est noté a été fait avec un étalonnage valable.</translation>
    </message>
    <message>
        <source>What was torqued or measured with a tool out of calibration should be checked again.</source>
        <translation>Ce qui a été serré ou mesuré avec un outil sans étalonnage valable est à revérifier.</translation>
    </message>
    <message>
        <source>No tool on record. Those that measure or torque belong here, with the day on which their calibration runs out.</source>
        <translation>Aucun outil noté. Ceux qui mesurent ou serrent vont ici, avec le jour où leur étalonnage expire.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::TopicView</name>
    <message>
        <source>The project&apos;s own limit…</source>
        <translation>Limite propre au projet…</translation>
    </message>
    <message>
        <source>For the row that is chosen</source>
        <translation>Pour la ligne choisie</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::TorquePanel</name>
    <message>
        <source>Take these limits</source>
        <translation>Prendre ces limites</translation>
    </message>
    <message>
        <source>nut in tension</source>
        <translation>écrou en traction</translation>
    </message>
    <message>
        <source>nut in shear</source>
        <translation>écrou en cisaillement</translation>
    </message>
    <message>
        <source>How the nut is loaded</source>
        <translation>Charge de l’écrou</translation>
    </message>
    <message>
        <source>grip to drive</source>
        <translation>poignée au carré</translation>
    </message>
    <message>
        <source>0 without one</source>
        <translation>0 sans</translation>
    </message>
    <message>
        <source>Lever of the wrench</source>
        <translation>Levier de la clé</translation>
    </message>
    <message>
        <source>Extension</source>
        <translation>Rallonge</translation>
    </message>
    <message>
        <source>Torque by the table</source>
        <translation>Couple d’après le tableau</translation>
    </message>
    <message>
        <source>On the wrench</source>
        <translation>Sur la clé</translation>
    </message>
    <message>
        <source>With the drag of %1 added: %2 to %3 %4.</source>
        <translation>Avec le frottement de %1 ajouté&#xa0;: %2 à %3 %4.</translation>
    </message>
    <message>
        <source>No drag on record: read it off the wrench while the nut runs down, and it is added.</source>
        <translation>Pas de frottement noté&#xa0;: lisez-le sur la clé pendant que l’écrou descend&#xa0;; il est ajouté.</translation>
    </message>
    <message>
        <source>%1; %2. For clean, dry threads; the drawing of the maker comes first.</source>
        <translation>%1&#xa0;; %2. Pour filets propres et secs&#xa0;; le plan du fabricant prime.</translation>
    </message>
    <message>
        <source>That is less than the %1 in-lb that %2 asks of a self-locking nut.</source>
        <translation>C’est moins que les %1 in-lb que %2 demande d’un écrou autofreiné.</translation>
    </message>
    <message>
        <source>Lever and extension in the same unit, from the middle of the grip to the drive, and from there to the nut.</source>
        <translation>Levier et rallonge dans la même unité&#xa0;: du milieu de la poignée au carré, et de là à l’écrou.</translation>
    </message>
    <message>
        <source>Without limits there is nothing to set.</source>
        <translation>Sans limites, rien à régler.</translation>
    </message>
    <message>
        <source>Set the wrench to %1 to %2 %3.</source>
        <translation>Réglez la clé de %1 à %2 %3.</translation>
    </message>
    <message>
        <source>Set the wrench to at most %1 %2.</source>
        <translation>Réglez la clé à %1 %2 au plus.</translation>
    </message>
    <message>
        <source>%1: limits from the table</source>
        <translation>%1&#xa0;: limites du tableau</translation>
    </message>
    <message>
        <source>%1: %2 to %3 %4, the project&apos;s own limit.</source>
        <translation>%1&#xa0;: de %2 à %3 %4, limite propre au projet.</translation>
    </message>
    <message>
        <source>The project&apos;s own limit: %1, from %2.</source>
        <translation>Limite propre au projet&#xa0;: %1, d’après %2.</translation>
    </message>
    <message>
        <source>From %1. The drawing of the maker comes first.</source>
        <translation>D’après %1. Le dessin du constructeur prime.</translation>
    </message>
    <message>
        <source>%1: %2 to %3 %4</source>
        <translation>%1&#xa0;: %2 à %3 %4</translation>
    </message>
    <message>
        <source>%1, and never above %2 %3.</source>
        <translation>%1, et jamais au-dessus de %2 %3.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::TroubleList</name>
    <message>
        <source>Dismiss</source>
        <translation>Masquer</translation>
    </message>
    <message>
        <source>Not taken in</source>
        <translation>Non importé</translation>
    </message>
    <message>
        <source>Not taken in:</source>
        <translation>Non importé&#xa0;:</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::Understood</name>
    <message>
        <source>today</source>
        <translation>aujourd’hui</translation>
    </message>
    <message>
        <source>no time</source>
        <translation>aucune durée</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>no part</source>
        <translation>aucune pièce</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, paid</source>
        <translation>%1, payé</translation>
    </message>
    <message>
        <source>%1, by the words</source>
        <translation>%1, d’après les mots</translation>
    </message>
    <message>
        <source>squawk %1</source>
        <translation>anomalie %1</translation>
    </message>
    <message numerus="yes">
        <source>%n people, their time shared too</source>
        <translation>
            <numerusform>%Ln personne, son temps partagé aussi</numerusform>
            <numerusform>%Ln personnes, leur temps partagé aussi</numerusform>
        </translation>
    </message>
    <message>
        <source>ticks “%1”</source>
        <translation>coche «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>«&#xa0;%1&#xa0;»</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::Unfinished</name>
    <message>
        <source>What is begun here is not kept. Keep it, press Escape to drop it, or do the same once more to leave without it.</source>
        <translation>Ce qui est commencé ici n’est pas encore conservé. Le conserver, l’abandonner avec Échap, ou refaire la même chose pour partir sans lui.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::UnkeptHold</name>
    <message>
        <source>What was typed here is not on record, as it could not be kept. Type it once more when that is possible, or do the same once more to leave without it.</source>
        <translation>Ce qui a été tapé ici n’est pas consigné, car cela n’a pas pu être gardé. Tapez-le de nouveau dès que c’est possible, ou refaites la même chose pour partir sans cela.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::UseForm</name>
    <message>
        <source>Keep the use</source>
        <translation>Inscrire l’utilisation</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>18-21</source>
        <translation>18-21</translation>
    </message>
    <message>
        <source>14 d, 24 h; from the data sheet</source>
        <translation>14 j, 24 h&#xa0;; de la fiche</translation>
    </message>
    <message>
        <source>On part</source>
        <translation>Sur la pièce</translation>
    </message>
    <message>
        <source>Mixed with lot</source>
        <translation>Mélangé au lot</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>Mix</source>
        <translation>Mélange</translation>
    </message>
    <message>
        <source>Temperature, °C</source>
        <translation>Température, °C</translation>
    </message>
    <message>
        <source>Humidity, %</source>
        <translation>Humidité, %</translation>
    </message>
    <message>
        <source>Cures for</source>
        <translation>Durée de durcissement</translation>
    </message>
    <message>
        <source>Sample</source>
        <translation>Éprouvette</translation>
    </message>
    <message>
        <source>%1 was used</source>
        <translation>%1 a été utilisé</translation>
    </message>
    <message>
        <source>This lot has expired: what is made with it needs somebody&apos;s acceptance.</source>
        <translation>Ce lot est périmé&#xa0;: ce qui en est fait doit être accepté par quelqu’un.</translation>
    </message>
    <message>
        <source>“%1” is no temperature; write 20 or 18-21.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas une température&#xa0;; écrivez 20 ou 18-21.</translation>
    </message>
    <message>
        <source>“%1” is no humidity between 0 and 100 %.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas une humidité entre 0 et 100 %.</translation>
    </message>
    <message>
        <source>“%1” is no time to cure; write 14 d or 24 h.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas une durée de durcissement&#xa0;; écrivez 14 j ou 24 h.</translation>
    </message>
    <message>
        <source>Say which part it was used on.</source>
        <translation>Dites sur quelle pièce il a été utilisé.</translation>
    </message>
    <message>
        <source>%1: used</source>
        <translation>%1&#xa0;: utilisé</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::VerdictRows</name>
    <message>
        <source>No hold point waits for an inspector or adviser.</source>
        <translation>Aucun point d’arrêt n’attend un inspecteur ou un conseiller.</translation>
    </message>
    <message>
        <source>Result for %1</source>
        <translation>Résultat pour %1</translation>
    </message>
    <message>
        <source>%1 more wait</source>
        <translation>%1 autres attendent</translation>
    </message>
    <message>
        <source>Up, Down</source>
        <translation>Haut, Bas</translation>
    </message>
    <message>
        <source>Another hold point of a visit</source>
        <translation>Un autre point d’arrêt d’une visite</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::VisitBoard</name>
    <message>
        <source>No closing waits for an inspector or adviser.</source>
        <translation>Aucune fermeture n’attend un inspecteur ou un conseiller.</translation>
    </message>
    <message>
        <source>Pick those that need no more work</source>
        <translation>Choisir celles sans travail restant</translation>
    </message>
    <message>
        <source>Make packet</source>
        <translation>Faire le dossier</translation>
    </message>
    <message>
        <source>Inspection visit</source>
        <translation>Visite d’inspection</translation>
    </message>
    <message>
        <source>Visits</source>
        <translation>Visites</translation>
    </message>
    <message>
        <source>No visit was asked for yet. Pick closings above to ask for one.</source>
        <translation>Aucune visite n’a encore été demandée. Choisissez des fermetures ci-dessus pour en demander une.</translation>
    </message>
    <message>
        <source>← All closings</source>
        <translation>← Toutes les fermetures</translation>
    </message>
    <message>
        <source>What one visit could cover</source>
        <translation>Ce qu’une visite pourrait couvrir</translation>
    </message>
    <message>
        <source>First what waits for somebody&apos;s word alone, then what costs the least more work. Work that several share counts once.</source>
        <translation>D’abord ce qui n’attend que la parole de quelqu’un, puis ce qui coûte le moins de travail. Le travail partagé compte une fois.</translation>
    </message>
    <message>
        <source>Closings that one visit could cover</source>
        <translation>Fermetures qu’une visite pourrait couvrir</translation>
    </message>
    <message>
        <source>cancelled on %1</source>
        <translation>annulée le %1</translation>
    </message>
    <message>
        <source>held on %1</source>
        <translation>tenue le %1</translation>
    </message>
    <message>
        <source>planned for %1</source>
        <translation>prévue pour le %1</translation>
    </message>
    <message>
        <source>asked for on %1, no day is set yet</source>
        <translation>demandée le %1, aucun jour fixé</translation>
    </message>
    <message numerus="yes">
        <source>%n findings open</source>
        <translation>
            <numerusform>%Ln constatation ouverte</numerusform>
            <numerusform>%Ln constatations ouvertes</numerusform>
        </translation>
    </message>
    <message>
        <source>complete since %1</source>
        <translation>achevée depuis le %1</translation>
    </message>
    <message numerus="yes">
        <source>%n hold points</source>
        <translation>
            <numerusform>%Ln point d’arrêt</numerusform>
            <numerusform>%Ln points d’arrêt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n picked</source>
        <translation>
            <numerusform>%Ln choisie</numerusform>
            <numerusform>%Ln choisies</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing is picked.</source>
        <translation>Rien n’est choisi.</translation>
    </message>
    <message>
        <source>%1; %2 of work until then, what stands before them in the list included</source>
        <translation>%1&#xa0;; %2 de travail d’ici là, avec ce qui les précède dans la liste</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::VisitForm</name>
    <message>
        <source>ask for it</source>
        <translation>la demander</translation>
    </message>
    <message>
        <source>it was held</source>
        <translation>elle a eu lieu</translation>
    </message>
    <message>
        <source>A visit of the inspector or adviser; one visit may sign several hold points.</source>
        <translation>Une visite de l’inspecteur ou du conseiller&#xa0;; une visite peut signer plusieurs points d’arrêt.</translation>
    </message>
    <message>
        <source>Visit</source>
        <translation>Visite</translation>
    </message>
    <message>
        <source>Hold points</source>
        <translation>Points d’arrêt</translation>
    </message>
    <message>
        <source>Who comes</source>
        <translation>Qui vient</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Looked at</source>
        <translation>Vu</translation>
    </message>
    <message>
        <source>Signed sheet</source>
        <translation>Feuille signée</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Constatations</translation>
    </message>
    <message>
        <source>Record the request</source>
        <translation>Inscrire la demande</translation>
    </message>
    <message>
        <source>Record the visit</source>
        <translation>Inscrire la visite</translation>
    </message>
    <message>
        <source>planned for, if a day is set</source>
        <translation>prévue pour, si un jour est fixé</translation>
    </message>
    <message>
        <source>held on</source>
        <translation>tenue le</translation>
    </message>
    <message>
        <source>It needs at least one hold point.</source>
        <translation>Il faut au moins un point d’arrêt.</translation>
    </message>
    <message>
        <source>Visit asked for</source>
        <translation>Visite demandée</translation>
    </message>
    <message>
        <source>Visit recorded</source>
        <translation>Visite inscrite</translation>
    </message>
    <message numerus="yes">
        <source>Visit recorded with %n findings</source>
        <translation>
            <numerusform>Visite inscrite avec %Ln constatation</numerusform>
            <numerusform>Visite inscrite avec %Ln constatations</numerusform>
        </translation>
    </message>
    <message>
        <source>nothing is left to do: the visit is complete</source>
        <translation>plus rien à faire&#xa0;: la visite est achevée</translation>
    </message>
    <message>
        <source>names, with commas between them</source>
        <translation>noms, séparés par des virgules</translation>
    </message>
    <message>
        <source>Asked for on</source>
        <translation>Demandée le</translation>
    </message>
    <message>
        <source>Also there</source>
        <translation>Aussi présents</translation>
    </message>
    <message numerus="yes">
        <source>%n hold points added to the visit</source>
        <translation>
            <numerusform>%Ln point d’arrêt ajouté à la visite</numerusform>
            <numerusform>%Ln points d’arrêt ajoutés à la visite</numerusform>
        </translation>
    </message>
    <message>
        <source>“%1” is no day.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un jour.</translation>
    </message>
    <message>
        <source>The other visit stands in the way, see above. Press again if the request was made all the same.</source>
        <translation>L’autre visite fait obstacle, voir ci-dessus. Pressez de nouveau si la demande a quand même été faite.</translation>
    </message>
    <message>
        <source>It was asked for on %1 and cannot have been held before.</source>
        <translation>Elle a été demandée le %1 et n’a pu être tenue avant.</translation>
    </message>
    <message>
        <source>A visit with findings is complete when they are corrected and verified.</source>
        <translation>Une visite avec constatations est achevée quand elles sont corrigées et vérifiées.</translation>
    </message>
    <message>
        <source>By the result there are findings, and none is typed. Press again to enter them later.</source>
        <translation>D’après le résultat il y a des constatations, et aucune n’est tapée. Pressez de nouveau pour les inscrire plus tard.</translation>
    </message>
    <message>
        <source>Reference or number</source>
        <translation>Référence ou numéro</translation>
    </message>
    <message>
        <source>The visit that was asked for is no longer on record. Press again to record what was said as a visit of its own.</source>
        <translation>La visite demandée n’est plus inscrite. Pressez de nouveau pour noter ce qui a été dit comme une visite à part.</translation>
    </message>
    <message>
        <source>It was asked for on %1; the day of the visit cannot lie before that.</source>
        <translation>Elle a été demandée le %1&#xa0;; le jour de la visite ne peut être avant.</translation>
    </message>
    <message>
        <source>Findings are typed, and by the result everything is accepted without any. Choose the result, or press again if the findings change nothing in it.</source>
        <translation>Des constatations sont tapées, et d’après le résultat tout est accepté sans aucune. Choisissez le résultat, ou pressez de nouveau si les constatations n’y changent rien.</translation>
    </message>
    <message>
        <source>“%1” was closed on %2, before this visit: what is signed here does not count for that closing. Press again to record it all the same; “Accepted afterwards”, beside the closing, is what does count.</source>
        <translation>«&#xa0;%1&#xa0;» a été fermé le %2, avant cette visite&#xa0;: ce qui est signé ici ne compte pas pour cette fermeture. Appuyez encore une fois pour l’enregistrer tout de même&#xa0;; c’est «&#xa0;Accepté après coup&#xa0;», près de la fermeture, qui compte.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::VisitPlanModel</name>
    <message>
        <source>Closing</source>
        <translation>Fermeture</translation>
    </message>
    <message>
        <source>Stands</source>
        <translation>Situation</translation>
    </message>
    <message>
        <source>Work until then, in all</source>
        <translation>Travail d’ici là, en tout</translation>
    </message>
    <message>
        <source>And besides</source>
        <translation>Et en plus</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message numerus="yes">
        <source>%n without an estimate</source>
        <translation>
            <numerusform>%Ln sans estimation</numerusform>
            <numerusform>%Ln sans estimation</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n other things in the way</source>
        <translation>
            <numerusform>%Ln autre obstacle</numerusform>
            <numerusform>%Ln autres obstacles</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::WatchBar</name>
    <message>
        <source>Watch a folder</source>
        <translation>Surveiller un dossier</translation>
    </message>
    <message>
        <source>Show them</source>
        <translation>Les montrer</translation>
    </message>
    <message>
        <source>They do not belong here</source>
        <translation>Elles n’ont rien à faire ici</translation>
    </message>
    <message>
        <source>Take in what is there, too</source>
        <translation>Importer aussi ce qui y est</translation>
    </message>
    <message>
        <source>Only what comes from now on</source>
        <translation>Seulement ce qui viendra</translation>
    </message>
    <message>
        <source>Another folder</source>
        <translation>Un autre dossier</translation>
    </message>
    <message>
        <source>Stop watching</source>
        <translation>Ne plus surveiller</translation>
    </message>
    <message>
        <source>Photos that a phone puts there are taken in on their own.</source>
        <translation>Les photos qu’un téléphone y met sont importées d’elles-mêmes.</translation>
    </message>
    <message>
        <source>The folder that your phone puts its pictures into</source>
        <translation>Le dossier où votre téléphone met ses images</translation>
    </message>
    <message>
        <source>%1 will be watched.</source>
        <translation>%1 sera surveillé.</translation>
    </message>
    <message>
        <source>Not watching %1 for now.</source>
        <translation>%1 n’est pas surveillé pour l’instant.</translation>
    </message>
    <message>
        <source>%1 is not there; it is looked for again and again.</source>
        <translation>%1 n’est pas là&#xa0;; on le cherche sans cesse.</translation>
    </message>
    <message>
        <source>Watching %1.</source>
        <translation>%1 est surveillé.</translation>
    </message>
    <message numerus="yes">
        <source>Watching %1; %n came in last.</source>
        <translation>
            <numerusform>%1 est surveillé&#xa0;; %Ln arrivée en dernier.</numerusform>
            <numerusform>%1 est surveillé&#xa0;; %Ln arrivées en dernier.</numerusform>
        </translation>
    </message>
    <message>
        <source>Go on watching</source>
        <translation>Continuer à surveiller</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>Do not watch it</source>
        <translation>Ne pas surveiller</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::WatchedFolder</name>
    <message>
        <source>The watched folder %1 is not there; photos are taken in again when it is back.</source>
        <translation>Le dossier surveillé %1 n’est pas là&#xa0;; les photos seront importées à son retour.</translation>
    </message>
    <message>
        <source>The watched folder %1 is back.</source>
        <translation>Le dossier surveillé %1 est revenu.</translation>
    </message>
    <message numerus="yes">
        <source>%n came in from the watched folder.</source>
        <translation>
            <numerusform>%Ln venue du dossier surveillé.</numerusform>
            <numerusform>%Ln venues du dossier surveillé.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n files from the watched folder were not taken in; the page Photos says why.</source>
        <translation>
            <numerusform>%Ln fichier du dossier surveillé n’a pas été importé&#xa0;; la page Photos dit pourquoi.</numerusform>
            <numerusform>%Ln fichiers du dossier surveillé n’ont pas été importés&#xa0;; la page Photos dit pourquoi.</numerusform>
        </translation>
    </message>
    <message>
        <source>Watching the folder %1 is paused, because photos from it could not be stored: %2</source>
        <translation>La surveillance du dossier %1 est en pause, car des photos n’ont pas pu être enregistrées&#xa0;: %2</translation>
    </message>
    <message>
        <source>Watching the folder %1 is paused, because it could not be read what came from it before.</source>
        <translation>La surveillance du dossier %1 est en pause, car ce qui en est venu auparavant n’a pas pu être lu.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::WeekBars</name>
    <message>
        <source>Hours per week</source>
        <translation>Heures par semaine</translation>
    </message>
    <message>
        <source>No hours in these weeks.</source>
        <translation>Aucune heure ces semaines.</translation>
    </message>
    <message>
        <source>week of %1: %2, of that %3 done again</source>
        <translation>semaine du %1&#xa0;: %2, dont %3 de reprise</translation>
    </message>
    <message>
        <source>week of %1: %2</source>
        <translation>semaine du %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>this week</source>
        <translation>cette semaine</translation>
    </message>
    <message>
        <source>Hours per week, at most %1; hatched: done again</source>
        <translation>Heures par semaine, au plus %1&#xa0;; hachuré&#xa0;: reprise</translation>
    </message>
    <message>
        <source>Hours per week, at most %1</source>
        <translation>Heures par semaine, au plus %1</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::WeighingPanel</name>
    <message>
        <source>Weighings</source>
        <translation>Pesées</translation>
    </message>
    <message>
        <source>New weighing</source>
        <translation>Nouvelle pesée</translation>
    </message>
    <message>
        <source>Withdraw…</source>
        <translation>Retirer…</translation>
    </message>
    <message>
        <source>Scale readings with tare and arm come to the empty weight and its centre of gravity. Weigh indoors and level, with scales whose calibration holds.</source>
        <translation>Les lectures des balances, avec tare et bras de levier, donnent la masse à vide et son centre de gravité. Peser à l’intérieur et de niveau, avec des balances dont l’étalonnage est valable.</translation>
    </message>
    <message>
        <source>Scales</source>
        <translation>Balances</translation>
    </message>
    <message>
        <source>Taken off and added</source>
        <translation>Retranché et ajouté</translation>
    </message>
    <message>
        <source>Write the first weighing down</source>
        <translation>Noter la première pesée</translation>
    </message>
    <message>
        <source>What has changed the weight</source>
        <translation>Ce qui a changé la masse</translation>
    </message>
    <message>
        <source>Weighing changed</source>
        <translation>Pesée modifiée</translation>
    </message>
    <message>
        <source>point %1</source>
        <translation>point %1</translation>
    </message>
    <message>
        <source>A scale stands under something: give the point a name.</source>
        <translation>Une balance se trouve sous quelque chose&#xa0;: donnez un nom au point.</translation>
    </message>
    <message>
        <source>No tool is called “%1”.</source>
        <translation>Aucun outil ne s’appelle «&#xa0;%1&#xa0;».</translation>
    </message>
    <message>
        <source>A tare is not below zero: it is what lies on the scale besides the aeroplane, and is taken off.</source>
        <translation>Une tare n’est pas négative&#xa0;: c’est ce qui se trouve sur la balance en plus de l’avion, et se retranche.</translation>
    </message>
    <message>
        <source>correction %1</source>
        <translation>correction %1</translation>
    </message>
    <message>
        <source>Say what is taken off or added.</source>
        <translation>Dites ce qui est retranché ou ajouté.</translation>
    </message>
    <message>
        <source>Weighing written down</source>
        <translation>Pesée notée</translation>
    </message>
    <message>
        <source>Under</source>
        <translation>Sous</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lecture</translation>
    </message>
    <message>
        <source>Tare</source>
        <translation>Tare</translation>
    </message>
    <message>
        <source>Net</source>
        <translation>Net</translation>
    </message>
    <message>
        <source>Arm</source>
        <translation>Bras de levier</translation>
    </message>
    <message>
        <source>Scale (tool)</source>
        <translation>Balance (outil)</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
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
        <translation>Masse à vide selon la pesée&#xa0;: %1</translation>
    </message>
    <message>
        <source>A later weighing counts.</source>
        <translation>Une pesée ultérieure vaut.</translation>
    </message>
    <message>
        <source>Nothing on record has changed the weight since this weighing.</source>
        <translation>Rien d’enregistré n’a changé la masse depuis cette pesée.</translation>
    </message>
    <message>
        <source>With what was fitted and removed since: %1</source>
        <translation>Avec ce qui a été monté et démonté depuis&#xa0;: %1</translation>
    </message>
    <message>
        <source>What was fitted and removed since is reckoned with as soon as the weighing comes to a sum.</source>
        <translation>Ce qui a été monté et démonté depuis est pris en compte dès que la pesée donne une somme.</translation>
    </message>
    <message>
        <source>Not all lines are in this sum: some lack something.</source>
        <translation>Toutes les lignes ne sont pas dans cette somme&#xa0;: à certaines il manque quelque chose.</translation>
    </message>
    <message>
        <source>Not in calibration when it was weighed: %1.</source>
        <translation>Hors étalonnage lors de la pesée&#xa0;: %1.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::WeighingView</name>
    <message>
        <source>Weighing</source>
        <translation>Pesée</translation>
    </message>
    <message>
        <source>Equipment</source>
        <translation>Équipement</translation>
    </message>
    <message>
        <source>Loading and limits</source>
        <translation>Chargement et limites</translation>
    </message>
    <message>
        <source>Print the report…</source>
        <translation>Imprimer le rapport…</translation>
    </message>
    <message>
        <source>Empty: %1</source>
        <translation>À vide&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::WishBar</name>
    <message>
        <source>Hours a week:</source>
        <translation>Heures par semaine&#xa0;:</translation>
    </message>
    <message>
        <source>as in the log</source>
        <translation>comme au carnet</translation>
    </message>
    <message>
        <source>Hours a week</source>
        <translation>Heures par semaine</translation>
    </message>
    <message>
        <source>What the forecast reckons with; at 0 the pace of the last 26 weeks</source>
        <translation>Ce sur quoi la prévision se fonde&#xa0;; à 0, le rythme des 26 dernières semaines</translation>
    </message>
    <message>
        <source>Leave out:</source>
        <translation>Laisser de côté&#xa0;:</translation>
    </message>
    <message>
        <source>a part, painting for one</source>
        <translation>une pièce, la peinture par exemple</translation>
    </message>
    <message>
        <source>Leave a part out of the forecast</source>
        <translation>Laisser une pièce hors de la prévision</translation>
    </message>
    <message>
        <source>%1 ✕</source>
        <comment>take back in</comment>
        <translation>%1 ✕</translation>
    </message>
    <message>
        <source>Take %1 back into the forecast</source>
        <translation>Reprendre %1 dans la prévision</translation>
    </message>
    <message>
        <source>What was chosen for the forecast before could not be read. Nothing is kept in its place; what can be read is shown now.</source>
        <translation>Ce qui avait été choisi pour la prévision n’a pas pu être lu. Rien n’est gardé à sa place&#xa0;; ce qui peut être lu est montré maintenant.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::WorkProposal</name>
    <message>
        <source>%1: belongs to a log entry</source>
        <translation>%1&#xa0;: appartient à une entrée</translation>
    </message>
    <message numerus="yes">
        <source>%n photos belong to their log entries</source>
        <translation>
            <numerusform>%Ln photo appartient à son entrée</numerusform>
            <numerusform>%Ln photos appartiennent à leurs entrées</numerusform>
        </translation>
    </message>
    <message>
        <source>M</source>
        <translation>M</translation>
    </message>
    <message>
        <source>It belongs there (M)</source>
        <translation>Elle va là (M)</translation>
    </message>
    <message numerus="yes">
        <source>All %n belong there (M)</source>
        <translation>
            <numerusform>Elle va là (M)</numerusform>
            <numerusform>Toutes les %Ln vont là (M)</numerusform>
        </translation>
    </message>
    <message>
        <source>Taken while this was done:</source>
        <translation>Prise pendant ce travail&#xa0;:</translation>
    </message>
    <message>
        <source>Taken on the day of this work:</source>
        <translation>Prise le jour de ce travail&#xa0;:</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>et %Ln de plus</numerusform>
            <numerusform>et %Ln de plus</numerusform>
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
        <translation>quelqu’un d’autre qui a travaillé</translation>
    </message>
    <message>
        <source>Add somebody who worked</source>
        <translation>Ajouter quelqu’un qui a travaillé</translation>
    </message>
    <message>
        <source>all of it</source>
        <translation>tout le temps</translation>
    </message>
    <message>
        <source>How long %1 worked</source>
        <translation>Combien de temps %1 a travaillé</translation>
    </message>
    <message>
        <source>paid</source>
        <translation>payé</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Ôter</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>Ôter %1</translation>
    </message>
    <message>
        <source>“%1” is no duration; write it as 2h15 or 90m.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas une durée&#xa0;; écrivez 2h15 ou 90m.</translation>
    </message>
    <message>
        <source>Log entry: who worked</source>
        <translation>Entrée&#xa0;: qui a travaillé</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::WorkshopPage</name>
    <message>
        <source>Search all tables</source>
        <translation>Chercher dans tous les tableaux</translation>
    </message>
    <message>
        <source>inches and pounds</source>
        <translation>pouces et livres</translation>
    </message>
    <message>
        <source>millimetres and newtons</source>
        <translation>millimètres et newtons</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Unités</translation>
    </message>
    <message>
        <source>Topics</source>
        <translation>Sujets</translation>
    </message>
    <message>
        <source>General practice. The maker&apos;s drawings and manuals come first; local rules and licensed practice decide. What is from memory is to be looked up before it is used.</source>
        <translation>Pratique générale. Les plans et manuels du fabricant priment&#xa0;; les règles locales et les professionnels agréés décident. Ce qui est de mémoire est à vérifier avant usage.</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Ce qui a été trouvé</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>No table has all of these words.</source>
        <translation>Aucun tableau n’a tous ces mots.</translation>
    </message>
    <message>
        <source>This project&apos;s own limits could not be read: the tables and sums stand here without them. None can be changed until then.</source>
        <translation>Les limites propres à ce projet n’ont pas pu être lues&#xa0;: les tableaux et les calculs figurent ici sans elles. D’ici là, aucune ne peut être changée.</translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::YearStrip</name>
    <message>
        <source>%1: nothing logged</source>
        <translation>%1&#xa0;: rien d’inscrit</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message numerus="yes">
        <source>Work on %n days of the year</source>
        <translation>
            <numerusform>Travail sur %Ln jour de l’année</numerusform>
            <numerusform>Travail sur %Ln jours de l’année</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>month, year</comment>
        <translation>%1 %2</translation>
    </message>
</context>
</TS>
