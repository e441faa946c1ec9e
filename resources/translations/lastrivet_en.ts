<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en_US" sourcelanguage="en">
<context>
    <name>HardwareActs</name>
    <message numerus="yes">
        <source>%n lines of fasteners</source>
        <translation>
            <numerusform>%Ln line of fasteners</numerusform>
            <numerusform>%Ln lines of fasteners</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lines of fasteners, all to the same torque</source>
        <translation>
            <numerusform>%Ln line of fasteners</numerusform>
            <numerusform>%Ln lines of fasteners, all to the same torque</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>IntakeWords</name>
    <message numerus="yes">
        <source>%n photos taken in</source>
        <translation>
            <numerusform>%Ln photo taken in</numerusform>
            <numerusform>%Ln photos taken in</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n files taken in</source>
        <translation>
            <numerusform>%Ln file taken in</numerusform>
            <numerusform>%Ln files taken in</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>LogActs</name>
    <message numerus="yes">
        <source>%n entries go to another day, another part, or both, as in “yesterday”, “LA” or “3 Mar left aileron”. The time of day stays.</source>
        <translation>
            <numerusform>%Ln entry goes to another day, another part, or both, as in “yesterday”, “LA” or “3 Mar left aileron”. The time of day stays.</numerusform>
            <numerusform>%Ln entries go to another day, another part, or both, as in “yesterday”, “LA” or “3 Mar left aileron”. The time of day stays.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n log entries moved</source>
        <translation>
            <numerusform>%Ln log entry moved</numerusform>
            <numerusform>%Ln log entries moved</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Log entry split into %n</source>
        <translation>
            <numerusform>Log entry split into %Ln</numerusform>
            <numerusform>Log entry split into %Ln</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Merge</name>
    <message numerus="yes">
        <source>%n changes of another copy are brought in</source>
        <translation>
            <numerusform>%Ln change of another copy is brought in</numerusform>
            <numerusform>%Ln changes of another copy are brought in</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n files are in neither copy</source>
        <translation>
            <numerusform>%Ln file is in neither copy</numerusform>
            <numerusform>%Ln files are in neither copy</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n files copied</source>
        <translation>
            <numerusform>%Ln file copied</numerusform>
            <numerusform>%Ln files copied</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n things to decide</source>
        <translation>
            <numerusform>%Ln thing to decide</numerusform>
            <numerusform>%Ln things to decide</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Nothing new: this project has every change of the other copy; %n things are still to decide.</source>
        <translation>
            <numerusform>Nothing new: this project has every change of the other copy; %Ln thing is still to decide.</numerusform>
            <numerusform>Nothing new: this project has every change of the other copy; %Ln things are still to decide.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Packet</name>
    <message numerus="yes">
        <source>%n closings</source>
        <translation>
            <numerusform>%Ln closing</numerusform>
            <numerusform>%Ln closings</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n files are no longer what was taken in.</source>
        <translation>
            <numerusform>%Ln file is no longer what was taken in.</numerusform>
            <numerusform>%Ln files are no longer what was taken in.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n files were not in the project.</source>
        <translation>
            <numerusform>%Ln file was not in the project.</numerusform>
            <numerusform>%Ln files were not in the project.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photographs are beside it in full size.</source>
        <translation>
            <numerusform>%Ln photograph is beside it in full size.</numerusform>
            <numerusform>%Ln photographs are beside it in full size.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photographs are left out.</source>
        <translation>
            <numerusform>%Ln photograph is left out.</numerusform>
            <numerusform>%Ln photographs are left out.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PartMoves</name>
    <message numerus="yes">
        <source>%n parts</source>
        <translation>
            <numerusform>%Ln part</numerusform>
            <numerusform>%Ln parts</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Print</name>
    <message numerus="yes">
        <source>%1 is written: %n pages.</source>
        <translation>
            <numerusform>%1 is written: %Ln page.</numerusform>
            <numerusform>%1 is written: %Ln pages.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 is written: %n dates.</source>
        <translation>
            <numerusform>%1 is written: %Ln date.</numerusform>
            <numerusform>%1 is written: %Ln dates.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photographs are in it.</source>
        <translation>
            <numerusform>%Ln photograph is in it.</numerusform>
            <numerusform>%Ln photographs are in it.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photographs could not be printed.</source>
        <translation>
            <numerusform>%Ln photograph could not be printed.</numerusform>
            <numerusform>%Ln photographs could not be printed.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ProjectFiles</name>
    <message numerus="yes">
        <source>%1: %n files attached</source>
        <translation>
            <numerusform>%1: %Ln file attached</numerusform>
            <numerusform>%1: %Ln files attached</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SquawkList</name>
    <message numerus="yes">
        <source>%n squawks were written to %1.</source>
        <translation>
            <numerusform>%Ln squawk was written to %1.</numerusform>
            <numerusform>%Ln squawks were written to %1.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>StepMoves</name>
    <message numerus="yes">
        <source>%n steps moved</source>
        <translation>
            <numerusform>%Ln step moved</numerusform>
            <numerusform>%Ln steps moved</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>StoreRows</name>
    <message numerus="yes">
        <source>%n d late</source>
        <translation>
            <numerusform>%Ln d late</numerusform>
            <numerusform>%Ln d late</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n damaged</source>
        <translation>
            <numerusform>%Ln damaged</numerusform>
            <numerusform>%Ln damaged</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lines: %1.</source>
        <translation>
            <numerusform>%Ln line: %1.</numerusform>
            <numerusform>%Ln lines: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n short</source>
        <translation>
            <numerusform>%Ln short</numerusform>
            <numerusform>%Ln short</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to count</source>
        <translation>
            <numerusform>%Ln to count</numerusform>
            <numerusform>%Ln to count</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>All %n lines are here as listed.</source>
        <translation>
            <numerusform>%Ln line is here as listed.</numerusform>
            <numerusform>All %Ln lines are here as listed.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them late</source>
        <translation>
            <numerusform>%Ln of them late</numerusform>
            <numerusform>%Ln of them late</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>StoreTexts</name>
    <message numerus="yes">
        <source>%1 of %n uses out of calibration</source>
        <translation>
            <numerusform>%1 of %Ln use out of calibration</numerusform>
            <numerusform>%1 of %Ln uses out of calibration</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n days left</source>
        <translation>
            <numerusform>%Ln day left</numerusform>
            <numerusform>%Ln days left</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n times</source>
        <translation>
            <numerusform>%Ln time</numerusform>
            <numerusform>%Ln times</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n uses</source>
        <translation>
            <numerusform>%Ln use</numerusform>
            <numerusform>%Ln uses</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>expired %n days ago</source>
        <translation>
            <numerusform>expired %Ln day ago</numerusform>
            <numerusform>expired %Ln days ago</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>late by %n days</source>
        <translation>
            <numerusform>late by %Ln day</numerusform>
            <numerusform>late by %Ln days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>overdue by %n days</source>
        <translation>
            <numerusform>overdue by %Ln day</numerusform>
            <numerusform>overdue by %Ln days</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Tasks</name>
    <message numerus="yes">
        <source>%1 was written without %n files that are not in the project; “Verify records and files” names them.</source>
        <translation>
            <numerusform>%1 was written without %Ln file that is not in the project; “Verify records and files” names it.</numerusform>
            <numerusform>%1 was written without %Ln files that are not in the project; “Verify records and files” names them.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 was written; %n files in it are no longer what was taken in; “Verify records and files” names them.</source>
        <translation>
            <numerusform>%1 was written; %Ln file in it is no longer what was taken in; “Verify records and files” names it.</numerusform>
            <numerusform>%1 was written; %Ln files in it are no longer what was taken in; “Verify records and files” names them.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The whole project with %n files was written to %1.</source>
        <translation>
            <numerusform>The whole project with %Ln file was written to %1.</numerusform>
            <numerusform>The whole project with %Ln files was written to %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n files were not found; the first: %1.</source>
        <translation>
            <numerusform>%Ln file was not found: %1.</numerusform>
            <numerusform>%Ln files were not found; the first: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n records speak of days more than a year ahead; the first: %1.</source>
        <translation>
            <numerusform>%Ln record speaks of days more than a year ahead: %1.</numerusform>
            <numerusform>%Ln records speak of days more than a year ahead; the first: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n files have no SHA-256 on record, so that nothing can be said of them.</source>
        <translation>
            <numerusform>%Ln file has no SHA-256 on record, so that nothing can be said of it.</numerusform>
            <numerusform>%Ln files have no SHA-256 on record, so that nothing can be said of them.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TodayRows</name>
    <message numerus="yes">
        <source>%n closings are on record and none is begun. A closing comes onto this page with the first work that is logged on a part inside it.</source>
        <translation>
            <numerusform>%Ln closing is on record and none is begun. A closing comes onto this page with the first work that is logged on a part inside it.</numerusform>
            <numerusform>%Ln closings are on record and none is begun. A closing comes onto this page with the first work that is logged on a part inside it.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lines of the inspector&apos;s list are not ticked</source>
        <translation>
            <numerusform>%Ln line of the inspector&apos;s list is not ticked</numerusform>
            <numerusform>%Ln lines of the inspector&apos;s list are not ticked</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Zone</name>
    <message numerus="yes">
        <source>%n other closings here</source>
        <translation>
            <numerusform>%Ln other closings here</numerusform>
            <numerusform>%Ln other closings here</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n parts, no closing is recorded.</source>
        <translation>
            <numerusform>%Ln part, no closing is recorded.</numerusform>
            <numerusform>%Ln parts, no closing is recorded.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::AccountModel</name>
    <message numerus="yes">
        <source>and %n records more; a printed journal names them</source>
        <translation>
            <numerusform>and %Ln record more; a printed journal names it</numerusform>
            <numerusform>and %Ln records more; a printed journal names them</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::AirframePanel</name>
    <message numerus="yes">
        <source>Not on the picture: %n parts</source>
        <translation>
            <numerusform>Not on the picture: %Ln part</numerusform>
            <numerusform>Not on the picture: %Ln parts</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n closings there must stay open</source>
        <translation>
            <numerusform>%Ln closing there must stay open</numerusform>
            <numerusform>%Ln closings there must stay open</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and %Ln more</numerusform>
            <numerusform>and %Ln more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::BackupKeeper</name>
    <message numerus="yes">
        <source>The last backup was made %n days ago and read back: %1</source>
        <translation>
            <numerusform>The last backup was made %Ln day ago and read back: %1</numerusform>
            <numerusform>The last backup was made %Ln days ago and read back: %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The last backup elsewhere is %n days old, and work was recorded since.</source>
        <translation>
            <numerusform>The last backup elsewhere is %Ln day old, and work was recorded since.</numerusform>
            <numerusform>The last backup elsewhere is %Ln days old, and work was recorded since.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Backed up and read back: %n new files.</source>
        <translation>
            <numerusform>Backed up and read back: %Ln new file.</numerusform>
            <numerusform>Backed up and read back: %Ln new files.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n files are missing or no longer what was taken in; “Verify records and files” names them.</source>
        <translation>
            <numerusform>%Ln file is missing or no longer what was taken in; “Verify records and files” names it.</numerusform>
            <numerusform>%Ln files are missing or no longer what was taken in; “Verify records and files” names them.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n files of the earlier backup were damaged there; its disk may be failing.</source>
        <translation>
            <numerusform>%Ln file of the earlier backup was damaged there; its disk may be failing.</numerusform>
            <numerusform>%Ln files of the earlier backup were damaged there; its disk may be failing.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n files beside it that are not the project&apos;s are kept there under names with “set-aside” in them.</source>
        <translation>
            <numerusform>%Ln file beside it that is not the project&apos;s is kept there under a name with “set-aside” in it.</numerusform>
            <numerusform>%Ln files beside it that are not the project&apos;s are kept there under names with “set-aside” in them.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::BranchForm</name>
    <message numerus="yes">
        <source>%n parts</source>
        <translation>
            <numerusform>%Ln part</numerusform>
            <numerusform>%Ln parts</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n steps</source>
        <translation>
            <numerusform>%Ln step</numerusform>
            <numerusform>%Ln steps</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n closings</source>
        <translation>
            <numerusform>%Ln closing</numerusform>
            <numerusform>%Ln closings</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lines to check</source>
        <translation>
            <numerusform>%Ln line to check</numerusform>
            <numerusform>%Ln lines to check</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fasteners</source>
        <translation>
            <numerusform>%Ln fastener</numerusform>
            <numerusform>%Ln fasteners</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n measurements</source>
        <translation>
            <numerusform>%Ln measurement</numerusform>
            <numerusform>%Ln measurements</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::CertificatePage</name>
    <message numerus="yes">
        <source>Facts and agreement (≠ %n)</source>
        <translation>
            <numerusform>Facts and agreement (≠ %Ln)</numerusform>
            <numerusform>Facts and agreement (≠ %Ln)</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::CheckPanel</name>
    <message numerus="yes">
        <source>%n lines ticked</source>
        <translation>
            <numerusform>%Ln line ticked</numerusform>
            <numerusform>%Ln lines ticked</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lines are not applicable</source>
        <translation>
            <numerusform>%Ln line is not applicable</numerusform>
            <numerusform>%Ln lines are not applicable</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lines are applicable again</source>
        <translation>
            <numerusform>%Ln line is applicable again</numerusform>
            <numerusform>%Ln lines are applicable again</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::CreditModel</name>
    <message numerus="yes">
        <source>%n pictures</source>
        <translation>
            <numerusform>%Ln picture</numerusform>
            <numerusform>%Ln pictures</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entries</source>
        <translation>
            <numerusform>%Ln entry</numerusform>
            <numerusform>%Ln entries</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::CrossCheckView</name>
    <message numerus="yes">
        <source>%n entries do not agree; an authority sends such papers back. Upper and lower case, spaces, hyphens and full stops do not count.</source>
        <translation>
            <numerusform>%Ln entry does not agree; an authority sends such papers back. Upper and lower case, spaces, hyphens and full stops do not count.</numerusform>
            <numerusform>%Ln entries do not agree; an authority sends such papers back. Upper and lower case, spaces, hyphens and full stops do not count.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::DeliveryBoard</name>
    <message numerus="yes">
        <source>%n lines counted as listed</source>
        <translation>
            <numerusform>%Ln line counted as listed</numerusform>
            <numerusform>%Ln lines counted as listed</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::EquipmentPanel</name>
    <message numerus="yes">
        <source>%n of these have no weight or no arm on record.</source>
        <translation>
            <numerusform>%Ln of these has no weight or no arm on record.</numerusform>
            <numerusform>%Ln of these have no weight or no arm on record.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ExpenseBoard</name>
    <message numerus="yes">
        <source>%n expenses</source>
        <translation>
            <numerusform>%Ln expense</numerusform>
            <numerusform>%Ln expenses</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n without a receipt</source>
        <translation>
            <numerusform>%Ln without a receipt</numerusform>
            <numerusform>%Ln without a receipt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n below zero, as they were brought in</source>
        <translation>
            <numerusform>%Ln below zero, as it was brought in</numerusform>
            <numerusform>%Ln below zero, as they were brought in</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::FindingsDialog</name>
    <message numerus="yes">
        <source>%n things are not as they should be.</source>
        <translation>
            <numerusform>%Ln thing is not as it should be.</numerusform>
            <numerusform>%Ln things are not as they should be.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::FlightsView</name>
    <message numerus="yes">
        <source>%1 in all; %2 since the last fault, in %n flights</source>
        <translation>
            <numerusform>%1 in all; %2 since the last fault, in %Ln flight</numerusform>
            <numerusform>%1 in all; %2 since the last fault, in %Ln flights</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n landings</source>
        <translation>
            <numerusform>%Ln landing</numerusform>
            <numerusform>%Ln landings</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::InspectionView</name>
    <message numerus="yes">
        <source>%n findings are neither verified nor accepted. Press again if the inspector calls the visit complete all the same.</source>
        <translation>
            <numerusform>%Ln finding is neither verified nor accepted. Press again if the inspector calls the visit complete all the same.</numerusform>
            <numerusform>%Ln findings are neither verified nor accepted. Press again if the inspector calls the visit complete all the same.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::JournalModel</name>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <translation>
            <numerusform>%1 and %Ln more</numerusform>
            <numerusform>%1 and %Ln more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::JournalPage</name>
    <message numerus="yes">
        <source>%n rows</source>
        <translation>
            <numerusform>%Ln row</numerusform>
            <numerusform>%Ln rows</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ListDialog</name>
    <message numerus="yes">
        <source>%n rows brought in. Undo takes all of them back.</source>
        <translation>
            <numerusform>%Ln row brought in. Undo takes all of them back.</numerusform>
            <numerusform>%Ln rows brought in. Undo takes all of them back.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::LogDetail</name>
    <message numerus="yes">
        <source>%n entries are chosen, %1 in all.</source>
        <translation>
            <numerusform>%Ln entry is chosen, %1 in all.</numerusform>
            <numerusform>%Ln entries are chosen, %1 in all.</numerusform>
        </translation>
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
</context>
<context>
    <name>lastrivet::ui::LogPage</name>
    <message numerus="yes">
        <source>%n entries, %1</source>
        <translation>
            <numerusform>%Ln entry, %1</numerusform>
            <numerusform>%Ln entries, %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::MainWindow</name>
    <message numerus="yes">
        <source>%1 of %n photos are being taken in. They are kept when that is done; do the same once more to stop it.</source>
        <translation>
            <numerusform>The photo is being taken in (%1 of %Ln). It is kept when that is done; do the same once more to stop it.</numerusform>
            <numerusform>%1 of %Ln photos are taken in. They are kept when that is done; do the same once more to stop it.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::MajorPortionView</name>
    <message numerus="yes">
        <source>%n usual tasks added, each for the maker until you enter who did it</source>
        <translation>
            <numerusform>%Ln usual task added, for the maker until you enter who did it</numerusform>
            <numerusform>%Ln usual tasks added, each for the maker until you enter who did it</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n claimed tasks have no picture.</source>
        <translation>
            <numerusform>%Ln claimed task has no picture.</numerusform>
            <numerusform>%Ln claimed tasks have no picture.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::MatchBar</name>
    <message numerus="yes">
        <source>%n photos were taken during work that is in the log.</source>
        <translation>
            <numerusform>%Ln photo was taken during work that is in the log.</numerusform>
            <numerusform>%Ln photos were taken during work that is in the log.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::MeasurementPanel</name>
    <message numerus="yes">
        <source>Measured %n times.</source>
        <translation>
            <numerusform>Measured %Ln time.</numerusform>
            <numerusform>Measured %Ln times.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::MessageLine</name>
    <message numerus="yes">
        <source>%1, about %n s to go</source>
        <translation>
            <numerusform>%1, about %Ln s to go</numerusform>
            <numerusform>%1, about %Ln s to go</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1; %n more at work</source>
        <translation>
            <numerusform>%1; %Ln more at work</numerusform>
            <numerusform>%1; %Ln more at work</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::MissingView</name>
    <message numerus="yes">
        <source>%n photographs of the inside</source>
        <translation>
            <numerusform>%Ln photograph of the inside</numerusform>
            <numerusform>%Ln photographs of the inside</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n closings lack photographs of the open structure</source>
        <translation>
            <numerusform>%Ln closing lacks photographs of the open structure</numerusform>
            <numerusform>%Ln closings lack photographs of the open structure</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n parts were worked on, will be hidden, and have no photograph of the inside</source>
        <translation>
            <numerusform>%Ln part was worked on, will be hidden, and has no photograph of the inside</numerusform>
            <numerusform>%Ln parts were worked on, will be hidden, and have no photograph of the inside</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Show %n photos that belong to no part and no closing</source>
        <translation>
            <numerusform>Show %Ln photo that belongs to no part and no closing</numerusform>
            <numerusform>Show %Ln photos that belong to no part and no closing</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::NewClosingForm</name>
    <message numerus="yes">
        <source>%1 (%n lines)</source>
        <translation>
            <numerusform>%1 (%Ln line)</numerusform>
            <numerusform>%1 (%Ln lines)</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::NewProjectForm</name>
    <message numerus="yes">
        <source>Untick what your aeroplane has not. The closings that go with the parts: %n. Everything can be renamed, moved and added to later.</source>
        <translation>
            <numerusform>Untick what your aeroplane has not. The closings that go with the parts: %Ln. Everything can be renamed, moved and added to later.</numerusform>
            <numerusform>Untick what your aeroplane has not. The closings that go with the parts: %Ln. Everything can be renamed, moved and added to later.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::OpenRequestNotice</name>
    <message numerus="yes">
        <source>%n of its findings are neither verified nor accepted; see the visit itself.</source>
        <translation>
            <numerusform>%Ln of its findings is neither verified nor accepted; see the visit itself.</numerusform>
            <numerusform>%Ln of its findings are neither verified nor accepted; see the visit itself.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PaidHelpBox</name>
    <message numerus="yes">
        <source>Of all tasks together, %n tenths can still be paid for before the builder&apos;s share is no longer more than half.</source>
        <translation>
            <numerusform>Of all tasks together, %Ln tenth can still be paid for before the builder&apos;s share is no longer more than half.</numerusform>
            <numerusform>Of all tasks together, %Ln tenths can still be paid for before the builder&apos;s share is no longer more than half.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PapersView</name>
    <message numerus="yes">
        <source>%n required documents are not here yet.</source>
        <translation>
            <numerusform>%Ln required document is not here yet.</numerusform>
            <numerusform>%Ln required documents are not here yet.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n that are here have no scan.</source>
        <translation>
            <numerusform>%Ln that is here has no scan.</numerusform>
            <numerusform>%Ln that are here have no scan.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PartHead</name>
    <message numerus="yes">
        <source>%n finger-tight</source>
        <translation>
            <numerusform>%Ln finger-tight</numerusform>
            <numerusform>%Ln finger-tight</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PartTree</name>
    <message numerus="yes">
        <source>%n fit</source>
        <comment>parts</comment>
        <translation>
            <numerusform>%Ln fit</numerusform>
            <numerusform>%Ln fit</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PhotoBar</name>
    <message numerus="yes">
        <source>%n shown</source>
        <translation>
            <numerusform>%Ln shown</numerusform>
            <numerusform>%Ln shown</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n places lack photos</source>
        <translation>
            <numerusform>%Ln place lacks photos</numerusform>
            <numerusform>%Ln places lack photos</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PhotoIntake</name>
    <message numerus="yes">
        <source>%n files were not taken in, because the folder %1 is not there any more.</source>
        <translation>
            <numerusform>%Ln file was not taken in, because the folder %1 is not there any more.</numerusform>
            <numerusform>%Ln files were not taken in, because the folder %1 is not there any more.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n taken in.</source>
        <translation>
            <numerusform>%Ln taken in.</numerusform>
            <numerusform>%Ln taken in.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n were there already.</source>
        <translation>
            <numerusform>%Ln was there already.</numerusform>
            <numerusform>%Ln were there already.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n were not; the list says why.</source>
        <translation>
            <numerusform>%Ln was not; the list says why.</numerusform>
            <numerusform>%Ln were not; the list says why.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more were not taken in.</source>
        <translation>
            <numerusform>%Ln more was not taken in.</numerusform>
            <numerusform>%Ln more were not taken in.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n are dated ahead or years before the project; was the camera&apos;s clock right?</source>
        <translation>
            <numerusform>%Ln is dated ahead or years before the project; was the camera&apos;s clock right?</numerusform>
            <numerusform>%Ln are dated ahead or years before the project; was the camera&apos;s clock right?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n files on record were missing or damaged and are there again; damaged ones are kept in backups/damaged.</source>
        <translation>
            <numerusform>%Ln file on record was missing or damaged and is there again; a damaged one is kept in backups/damaged.</numerusform>
            <numerusform>%Ln files on record were missing or damaged and are there again; damaged ones are kept in backups/damaged.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::PhotoViewer</name>
    <message numerus="yes">
        <source>%1, %2, %n marks</source>
        <translation>
            <numerusform>%1, %2, %Ln mark</numerusform>
            <numerusform>%1, %2, %Ln marks</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::RestoreForm</name>
    <message numerus="yes">
        <source>%n files of the backup are missing or no longer what was taken in; “Verify records and files” names them.</source>
        <translation>
            <numerusform>%Ln file of the backup is missing or no longer what was taken in; “Verify records and files” names it.</numerusform>
            <numerusform>%Ln files of the backup are missing or no longer what was taken in; “Verify records and files” names them.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::Section</name>
    <message numerus="yes">
        <source>%n more are not listed here.</source>
        <translation>
            <numerusform>%Ln more is not listed here.</numerusform>
            <numerusform>%Ln more are not listed here.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SeveralParts</name>
    <message numerus="yes">
        <source>%n parts chosen</source>
        <translation>
            <numerusform>%Ln part chosen</numerusform>
            <numerusform>%Ln parts chosen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n parts changed</source>
        <translation>
            <numerusform>%Ln part changed</numerusform>
            <numerusform>%Ln parts changed</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::ShiftForm</name>
    <message numerus="yes">
        <source>%n days</source>
        <translation>
            <numerusform>%Ln day</numerusform>
            <numerusform>%Ln days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n would lie ahead of now.</source>
        <translation>
            <numerusform>%Ln would lie ahead of now.</numerusform>
            <numerusform>%Ln would lie ahead of now.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n stay as they are: their time is not known.</source>
        <translation>
            <numerusform>%Ln stays as it is: its time is not known.</numerusform>
            <numerusform>%Ln stay as they are: their time is not known.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n belong to log entries and stay with them.</source>
        <translation>
            <numerusform>%Ln belongs to a log entry and stays with it.</numerusform>
            <numerusform>%Ln belong to log entries and stay with them.</numerusform>
        </translation>
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
</context>
<context>
    <name>lastrivet::ui::SquawkModel</name>
    <message numerus="yes">
        <source>last chance before %1 and %n more</source>
        <translation>
            <numerusform>last chance before %1 and %Ln more</numerusform>
            <numerusform>last chance before %1 and %Ln more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>out of reach: open %1 and %n more</source>
        <translation>
            <numerusform>out of reach: open %1 and %Ln more</numerusform>
            <numerusform>out of reach: open %1 and %Ln more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SquawkReach</name>
    <message numerus="yes">
        <source>Out of reach. To get at it, open again:</source>
        <translation>
            <numerusform>Out of reach. To get at it, open again:</numerusform>
            <numerusform>Out of reach. To get at it, open again:</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Soon out of reach. This is the last chance before:</source>
        <translation>
            <numerusform>Soon out of reach. This is the last chance before:</numerusform>
            <numerusform>Soon out of reach. This is the last chance before:</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::SquawksPage</name>
    <message numerus="yes">
        <source>%n squawks</source>
        <translation>
            <numerusform>%Ln squawk</numerusform>
            <numerusform>%Ln squawks</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1; of all, %n soon out of reach</source>
        <translation>
            <numerusform>%1; of all, %Ln soon out of reach</numerusform>
            <numerusform>%1; of all, %Ln soon out of reach</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::StandingPanel</name>
    <message numerus="yes">
        <source>stay open, work left</source>
        <translation>
            <numerusform>stays open, work left</numerusform>
            <numerusform>stay open, work left</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>stay open, wait for somebody from outside</source>
        <translation>
            <numerusform>stays open, waits for somebody from outside</numerusform>
            <numerusform>stay open, wait for somebody from outside</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>stay open, wait for your signature</source>
        <translation>
            <numerusform>stays open, waits for your signature</numerusform>
            <numerusform>stay open, wait for your signature</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>closed</source>
        <translation>
            <numerusform>closed</numerusform>
            <numerusform>closed</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>closed with gaps</source>
        <translation>
            <numerusform>closed with gaps</numerusform>
            <numerusform>closed with gaps</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>not begun</source>
        <translation>
            <numerusform>not begun</numerusform>
            <numerusform>not begun</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::TodayPage</name>
    <message numerus="yes">
        <source>After a merge, %n things are to decide</source>
        <translation>
            <numerusform>After a merge, %Ln thing is to decide</numerusform>
            <numerusform>After a merge, %Ln things are to decide</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::Understood</name>
    <message numerus="yes">
        <source>%n people, their time shared too</source>
        <translation>
            <numerusform>%Ln person, their time shared too</numerusform>
            <numerusform>%Ln people, their time shared too</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::VisitBoard</name>
    <message numerus="yes">
        <source>%n findings open</source>
        <translation>
            <numerusform>%Ln finding open</numerusform>
            <numerusform>%Ln findings open</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hold points</source>
        <translation>
            <numerusform>%Ln hold point</numerusform>
            <numerusform>%Ln hold points</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n picked</source>
        <translation>
            <numerusform>%Ln picked</numerusform>
            <numerusform>%Ln picked</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::VisitForm</name>
    <message numerus="yes">
        <source>Visit recorded with %n findings</source>
        <translation>
            <numerusform>Visit recorded with %Ln finding</numerusform>
            <numerusform>Visit recorded with %Ln findings</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hold points added to the visit</source>
        <translation>
            <numerusform>%Ln hold point added to the visit</numerusform>
            <numerusform>%Ln hold points added to the visit</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::VisitPlanModel</name>
    <message numerus="yes">
        <source>%n without an estimate</source>
        <translation>
            <numerusform>%Ln without an estimate</numerusform>
            <numerusform>%Ln without an estimate</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n other things in the way</source>
        <translation>
            <numerusform>%Ln other thing in the way</numerusform>
            <numerusform>%Ln other things in the way</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::WatchBar</name>
    <message numerus="yes">
        <source>Watching %1; %n came in last.</source>
        <translation>
            <numerusform>Watching %1; %Ln came in last.</numerusform>
            <numerusform>Watching %1; %Ln came in last.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::WatchedFolder</name>
    <message numerus="yes">
        <source>%n came in from the watched folder.</source>
        <translation>
            <numerusform>%Ln came in from the watched folder.</numerusform>
            <numerusform>%Ln came in from the watched folder.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n files from the watched folder were not taken in; the page Photos says why.</source>
        <translation>
            <numerusform>%Ln file from the watched folder was not taken in; the page Photos says why.</numerusform>
            <numerusform>%Ln files from the watched folder were not taken in; the page Photos says why.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::WorkProposal</name>
    <message numerus="yes">
        <source>%n photos belong to their log entries</source>
        <translation>
            <numerusform>%Ln photo belongs to its log entry</numerusform>
            <numerusform>%Ln photos belong to their log entries</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>All %n belong there (M)</source>
        <translation>
            <numerusform>All %Ln belong there (M)</numerusform>
            <numerusform>All %Ln belong there (M)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and %Ln more</numerusform>
            <numerusform>and %Ln more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lastrivet::ui::YearStrip</name>
    <message numerus="yes">
        <source>Work on %n days of the year</source>
        <translation>
            <numerusform>Work on %Ln day of the year</numerusform>
            <numerusform>Work on %Ln days of the year</numerusform>
        </translation>
    </message>
</context>
</TS>
