<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en_US" sourcelanguage="en_US">
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
