<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en_US" sourcelanguage="en_US">
<context>
    <name>AsidePage</name>
    <message numerus="yes">
        <source>%n more</source>
        <translation>
            <numerusform>%n more</numerusform>
            <numerusform>%n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>BoardCard</name>
    <message numerus="yes">
        <source>%n wait(s)</source>
        <translation>
            <numerusform>%n waits</numerusform>
            <numerusform>%n wait</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to check</source>
        <translation>
            <numerusform>%n to check</numerusform>
            <numerusform>%n to check</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>CheckWords</name>
    <message numerus="yes">
        <source>%1: %n sheet(s) overlap in time, at different sites or in different rooms. Was the preceptor at each of them?</source>
        <translation>
            <numerusform>%1: %n sheet overlaps in time, at another site or in another room. Was the preceptor there?</numerusform>
            <numerusform>%1: %n sheets overlap in time, at different sites or in different rooms. Was the preceptor at each of them?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n sheet(s) of one day, more than usual. Did the preceptor sign each of them?</source>
        <translation>
            <numerusform>%1: %n sheet of one day, more than usual. Did the preceptor sign it?</numerusform>
            <numerusform>%1: %n sheets of one day, more than usual. Did the preceptor sign each of them?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n sheet(s) of different sites, signed within a minute. Did the preceptor sign each of them?</source>
        <translation>
            <numerusform>%1: %n sheet of another site, signed within a minute. Did the preceptor sign it?</numerusform>
            <numerusform>%1: %n sheets of different sites, signed within a minute. Did the preceptor sign each of them?</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ClassListPage</name>
    <message numerus="yes">
        <source>Cannot be used: %n line(s)</source>
        <translation>
            <numerusform>Cannot be used: %n line</numerusform>
            <numerusform>Cannot be used: %n lines</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Invited: %n student(s)</source>
        <translation>
            <numerusform>Invited: %n student</numerusform>
            <numerusform>Invited: %n students</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>On the list: %n student(s)</source>
        <translation>
            <numerusform>On the list: %n student</numerusform>
            <numerusform>On the list: %n students</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Invite these %n student(s)</source>
        <translation>
            <numerusform>Invite this student</numerusform>
            <numerusform>Invite these %n students</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ClinicalDaysPage</name>
    <message numerus="yes">
        <source>In the file: %n day(s), in place of those that are listed</source>
        <translation>
            <numerusform>In the file: %n day, in place of those that are listed</numerusform>
            <numerusform>In the file: %n days, in place of those that are listed</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>From today on: %n day(s)</source>
        <translation>
            <numerusform>From today on: %n day</numerusform>
            <numerusform>From today on: %n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Before: %n day(s)</source>
        <translation>
            <numerusform>Before: %n day</numerusform>
            <numerusform>Before: %n days</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>History</name>
    <message numerus="yes">
        <source>%n mark(s)</source>
        <translation>
            <numerusform>%n mark</numerusform>
            <numerusform>%n marks</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A wrong PIN was tried %n time(s).</source>
        <translation>
            <numerusform>A wrong PIN was tried once.</numerusform>
            <numerusform>A wrong PIN was tried %n times.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>MarkingPage</name>
    <message numerus="yes">
        <source>%n skill(s) not marked: they stay open.</source>
        <translation>
            <numerusform>%n skill not marked: it stays open.</numerusform>
            <numerusform>%n skills not marked: they stay open.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>MyPhonePage</name>
    <message numerus="yes">
        <source>Locks after %n minute(s) without a touch</source>
        <translation>
            <numerusform>Locks after %n minute without a touch</numerusform>
            <numerusform>Locks after %n minutes without a touch</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>OwnProceduresPage</name>
    <message numerus="yes">
        <source>In the file: %n procedure(s), in place of those that are listed</source>
        <translation>
            <numerusform>In the file: %n procedure, in place of those that are listed</numerusform>
            <numerusform>In the file: %n procedures, in place of those that are listed</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PaperToCutPage</name>
    <message numerus="yes">
        <source>%n invitation(s), to be cut apart and given out. Whoever has one can join in that name.</source>
        <translation>
            <numerusform>%n invitation, to be cut apart and given out. Whoever has it can join in that name.</numerusform>
            <numerusform>%n invitations, to be cut apart and given out. Whoever has one can join in that name.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SheetListPage</name>
    <message numerus="yes">
        <source>Give the phone for %n sheet(s)</source>
        <translation>
            <numerusform>Give the phone for %n sheet</numerusform>
            <numerusform>Give the phone for %n sheets</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SigningHomePage</name>
    <message numerus="yes">
        <source>%n sheet(s)</source>
        <translation>
            <numerusform>%n sheet</numerusform>
            <numerusform>%n sheets</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SigningPage</name>
    <message numerus="yes">
        <source>One signature for %n sheet(s)</source>
        <translation>
            <numerusform>One signature for %n sheet</numerusform>
            <numerusform>One signature for %n sheets</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Sign %n sheet(s)</source>
        <translation>
            <numerusform>Sign %n sheet</numerusform>
            <numerusform>Sign %n sheets</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SplitWords</name>
    <message numerus="yes">
        <source>%n item(s) in this version.</source>
        <translation>
            <numerusform>%n item in this version.</numerusform>
            <numerusform>%n items in this version.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TallyPage</name>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <translation>
            <numerusform>%1 and %n more</numerusform>
            <numerusform>%1 and %n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>WaitingListPage</name>
    <message numerus="yes">
        <source>Initial the %n plain sheet(s) that you looked at</source>
        <translation>
            <numerusform>Initial the plain sheet that you looked at</numerusform>
            <numerusform>Initial the %n plain sheets that you looked at</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>peelpack::evidence_pages::Completion</name>
    <message numerus="yes">
        <source>%n case(s) are short.</source>
        <translation>
            <numerusform>%n case is short.</numerusform>
            <numerusform>%n cases are short.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>peelpack::evidence_pages::Confirming</name>
    <message numerus="yes">
        <source>%n sheet(s)</source>
        <translation>
            <numerusform>%n sheet</numerusform>
            <numerusform>%n sheets</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>peelpack::evidence_pages::Papers</name>
    <message numerus="yes">
        <source>%n row(s). Not de-identified: keep it as an education record.</source>
        <translation>
            <numerusform>%n row. Not de-identified: keep it as an education record.</numerusform>
            <numerusform>%n rows. Not de-identified: keep it as an education record.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n page(s). Keep it as an education record.</source>
        <translation>
            <numerusform>%n page. Keep it as an education record.</numerusform>
            <numerusform>%n pages. Keep it as an education record.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>peelpack::instructor::CheckList</name>
    <message numerus="yes">
        <source>And %n more.</source>
        <translation>
            <numerusform>And %n more.</numerusform>
            <numerusform>And %n more.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Reading: %1 of %n student(s)</source>
        <translation>
            <numerusform>Reading: %1 of %n student</numerusform>
            <numerusform>Reading: %1 of %n students</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) wait</source>
        <translation>
            <numerusform>%n sheet waits</numerusform>
            <numerusform>%n sheets wait</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) initialed</source>
        <translation>
            <numerusform>%n sheet initialed</numerusform>
            <numerusform>%n sheets initialed</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>peelpack::instructor::ClassBoard</name>
    <message numerus="yes">
        <source>%n mark review(s)</source>
        <translation>
            <numerusform>%n mark review</numerusform>
            <numerusform>%n mark reviews</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n returned</source>
        <translation>
            <numerusform>%n returned</numerusform>
            <numerusform>%n returned</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>no sheet for %n day(s)</source>
        <translation>
            <numerusform>no sheet for %n day</numerusform>
            <numerusform>no sheet for %n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Counting: %1 of %n student(s)</source>
        <translation>
            <numerusform>Counting: %1 of %n student</numerusform>
            <numerusform>Counting: %1 of %n students</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n student(s)</source>
        <translation>
            <numerusform>%n student</numerusform>
            <numerusform>%n students</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with all cases recorded</source>
        <translation>
            <numerusform>%n with all cases recorded</numerusform>
            <numerusform>%n with all cases recorded</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>peelpack::instructor::RulesInForce</name>
    <message numerus="yes">
        <source>%n case(s)</source>
        <translation>
            <numerusform>%n case</numerusform>
            <numerusform>%n cases</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n so far</source>
        <translation>
            <numerusform>%n so far</numerusform>
            <numerusform>%n so far</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n coming</source>
        <translation>
            <numerusform>%n coming</numerusform>
            <numerusform>%n coming</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>peelpack::instructor::StaffParcels</name>
    <message numerus="yes">
        <source>Stopped: %n file(s) were not looked at.</source>
        <translation>
            <numerusform>Stopped: %n file was not looked at.</numerusform>
            <numerusform>Stopped: %n files were not looked at.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n new item(s) taken in.</source>
        <translation>
            <numerusform>%n new item taken in.</numerusform>
            <numerusform>%n new items taken in.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n receipt(s) signed.</source>
        <translation>
            <numerusform>%n receipt signed.</numerusform>
            <numerusform>%n receipts signed.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n new</source>
        <translation>
            <numerusform>%n new</numerusform>
            <numerusform>%n new</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n known</source>
        <translation>
            <numerusform>%n known</numerusform>
            <numerusform>%n known</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) from you that they do not have yet</source>
        <translation>
            <numerusform>%n item from you that they do not have yet</numerusform>
            <numerusform>%n items from you that they do not have yet</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>peelpack::instructor::StudentOfClass</name>
    <message numerus="yes">
        <source>%n observation(s)</source>
        <translation>
            <numerusform>%n observation</numerusform>
            <numerusform>%n observations</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) not fully marked</source>
        <translation>
            <numerusform>%n sheet not fully marked</numerusform>
            <numerusform>%n sheets not fully marked</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n canceled case(s)</source>
        <translation>
            <numerusform>%n canceled case</numerusform>
            <numerusform>%n canceled cases</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>peelpack::light::CodeReading</name>
    <message numerus="yes">
        <source>%1 of %n code(s)</source>
        <translation>
            <numerusform>%1 of %n code</numerusform>
            <numerusform>%1 of %n codes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n code(s) are missing, whichever: keep the camera on them.</source>
        <translation>
            <numerusform>%n code is missing, whichever: keep the camera on them.</numerusform>
            <numerusform>%n codes are missing, whichever: keep the camera on them.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>peelpack::light::RunningCodes</name>
    <message numerus="yes">
        <source>Any %n code(s) are enough: one that is missed does not matter.</source>
        <translation>
            <numerusform>%n code is enough.</numerusform>
            <numerusform>Any %n codes are enough: one that is missed does not matter.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>peelpack::preceptor::SigningPhone</name>
    <message numerus="yes">
        <source>%n skill(s) marked</source>
        <translation>
            <numerusform>%n skill marked</numerusform>
            <numerusform>%n skills marked</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>peelpack::program::People</name>
    <message numerus="yes">
        <source>%n device(s)</source>
        <translation>
            <numerusform>%n device</numerusform>
            <numerusform>%n devices</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n ended</source>
        <translation>
            <numerusform>%n ended</numerusform>
            <numerusform>%n ended</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>in use · %n entry(s) received</source>
        <translation>
            <numerusform>in use · %n entry received</numerusform>
            <numerusform>in use · %n entries received</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>peelpack::program::Vouching</name>
    <message numerus="yes">
        <source>%n sheet(s) wait for it</source>
        <translation>
            <numerusform>%n sheet waits for it</numerusform>
            <numerusform>%n sheets wait for it</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>peelpack::shell::Phone</name>
    <message numerus="yes">
        <source>The hand-over ended after %n minute(s) without a touch. What was marked and not signed is gone.</source>
        <translation>
            <numerusform>The hand-over ended after %n minute without a touch. What was marked and not signed is gone.</numerusform>
            <numerusform>The hand-over ended after %n minutes without a touch. What was marked and not signed is gone.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>peelpack::student::Parcels</name>
    <message numerus="yes">
        <source>%n change(s) are only on this phone, and would be lost with it. Send them to your instructor.</source>
        <translation>
            <numerusform>%n change is only on this phone, and would be lost with it. Send it to your instructor.</numerusform>
            <numerusform>%n changes are only on this phone, and would be lost with it. Send them to your instructor.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) cannot be used.</source>
        <translation>
            <numerusform>%n item cannot be used.</numerusform>
            <numerusform>%n items cannot be used.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n new item(s) taken in.</source>
        <translation>
            <numerusform>%n new item taken in.</numerusform>
            <numerusform>%n new items taken in.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>peelpack::student::SheetList</name>
    <message numerus="yes">
        <source>%n sheet(s)</source>
        <translation>
            <numerusform>%n sheet</numerusform>
            <numerusform>%n sheets</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n sheet(s)</source>
        <translation>
            <numerusform>%1 of %n sheet</numerusform>
            <numerusform>%1 of %n sheets</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>peelpack::student::TallyPage</name>
    <message numerus="yes">
        <source>%n observation(s)</source>
        <translation>
            <numerusform>%n observation</numerusform>
            <numerusform>%n observations</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) not fully marked</source>
        <translation>
            <numerusform>%n sheet not fully marked</numerusform>
            <numerusform>%n sheets not fully marked</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n canceled case(s)</source>
        <translation>
            <numerusform>%n canceled case</numerusform>
            <numerusform>%n canceled cases</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) without a specialty</source>
        <translation>
            <numerusform>%n sheet without a specialty</numerusform>
            <numerusform>%n sheets without a specialty</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>peelpack::student::Today</name>
    <message numerus="yes">
        <source>%n more sheet(s) wait</source>
        <translation>
            <numerusform>%n more sheet waits</numerusform>
            <numerusform>%n more sheets wait</numerusform>
        </translation>
    </message>
</context>
</TS>
