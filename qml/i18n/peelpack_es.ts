<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es_US" sourcelanguage="en_US">
<context>
    <name>DeclinePage</name>
    <message>
        <source>Why do you not sign?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I was not there for most of the case.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I was relieved before the case was over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is not what was performed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your reason; the student and the instructor see it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Decline to sign</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DemoBanner</name>
    <message>
        <source>Demo. The student&apos;s PIN is 246813.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Demo: everything here is invented, and nothing of it enters a real journal.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave the demo</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DrawPage</name>
    <message>
        <source>The weakest way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw your signature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody can tell later who drew it. It counts only once an instructor has asked you about it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your credential, such as CST or RN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Field for your signature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sign with this drawing</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ElsewherePage</name>
    <message>
        <source>This is a vault of staff</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This app shows the student&apos;s and the preceptor&apos;s part. Instructors and directors use the command peelpack with this vault.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lock</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>JoinPage</name>
    <message>
        <source>Program %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You and this phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your invitation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your instructor gives it to you: a code to scan, a file, or a text.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the camera sees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scan the code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the file, or a picture of the code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Or paste the text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use this text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your name, as your instructor knows it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open with a PIN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quicker and weaker than a passphrase: whoever copies this phone&apos;s storage can try PINs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PIN, 6 to 12 digits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Passphrase, at least 8 characters; four odd words are good</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Making your journal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Join</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>JoinedPage</name>
    <message>
        <source>You have joined</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two things before you go on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1. Write down your vault code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shown only now. It opens your journal when you forget what opens it: keep it on paper, not on this phone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>2. Show this to your instructor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Code of your answer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both of you must see these digits: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If your instructor sees others, somebody else has answered: stop, and ask for a new invitation.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the answer as a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved as %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The code is on paper, go on</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LockPage</name>
    <message>
        <source>Locked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PIN or passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vault code, 7 groups of 5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use the PIN or passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forgotten? Use the vault code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look around in the demo</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MarkingPage</name>
    <message>
        <source>You are marking %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All five first-scrub skills: Yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First-scrub skills</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Second-scrub skills</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why N/A? Not called for on this case, because</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why N/A? You may leave it out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Policy calls for no counts here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No countable items were used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not part of this procedure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done before the student came</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you did not see, leave unmarked: somebody who saw it can mark it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add feedback</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feedback for the student</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What went well, what to do next time</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n skill(s) not marked: they stay open.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>On to the next sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read back what I sign</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MePage</name>
    <message>
        <source>Send and take in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>My phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PIN or passphrase, vault code, when it locks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it looks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text size: %1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smaller</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Larger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you tap moves to the left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No motion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave the demo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lock now</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MyPhonePage</name>
    <message>
        <source>My phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your new vault code, shown only now. The old one opens nothing any more. Keep it on paper, not on this phone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is on paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Locks after %n minute(s) without a touch</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Sooner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change PIN or passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make a new vault code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What opens it now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open with a PIN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quicker and weaker than a passphrase: whoever copies this phone&apos;s storage can try PINs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New PIN, 6 to 12 digits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New passphrase, at least 8 characters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Working</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make the code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NewSheetPage</name>
    <message>
        <source>New case sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which procedure?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
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
        <source>Procedure, or how you say it: lap chole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search a procedure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yours, latest and most frequent first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write it as &quot;%1&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not in the list: you choose its specialty afterwards.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a procedure of the same operation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One pathology</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Biopsy then excision of the same tumor, or scope turned open: it counts as one case.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Surgeon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fewer fields</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change day, site, room or times</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin, 24 hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Canceled before incision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is recorded and has no role.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No patient names, numbers, ages or birth dates on a sheet. The date, the site and a rare procedure can still point at one patient: treat your log as confidential.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save and give the phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save for later</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>OwnPhonePage</name>
    <message>
        <source>Sheet %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scan the answer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scan this with your phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Code of the sheet to be signed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold the code on your phone before this camera, or choose a picture or file of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open Peelpack on your phone, scan this code, mark the ten skills and sign there. Then show its answer to this phone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the camera sees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A picture or file of the answer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Send the request as a file instead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I signed on my phone</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ParcelsPage</name>
    <message>
        <source>Send and take in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything is with your instructor.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A parcel is sealed: only your program&apos;s instructors can open it, so it may travel by any way, a message or a stick. Sending it again does no harm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved as %1. It counts as sent once your instructor has it: their answer comes back in a parcel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Send to my instructor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take in what came from my instructor</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PerformedPage</name>
    <message>
        <source>For %1 · sheet %2 of %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Was this performed?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was performed instead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This was performed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Canceled before incision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use the phone after degowning and hand washing, never at the field. Counts, sterile technique and what a student may do follow your facility&apos;s policy.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark and sign on my own phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The strongest way, when an instructor knows your phone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I do not sign this</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With a reason; the sheet stays open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give the phone back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is signed; %1 unlocks it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yes, and it was canceled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yes, mark the skills</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ReadBackPage</name>
    <message>
        <source>Before you sign</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is what you sign</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I scrubbed on this case with this student. These are my own marks for what I saw.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is right, sign</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ReasonForm</name>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ReturnPage</name>
    <message>
        <source>Signed by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Declined</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is signed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give the phone back to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on marking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pack is sealed. What you signed cannot be changed without it showing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marks that are not signed are not kept. That the phone was with you, and from when to when, stays in the journal.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, your PIN or passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open my phone</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SheetListPage</name>
    <message>
        <source>Case sheets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Procedure, surgeon, site or room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Role</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Specialty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No sheet fits. Clear the search or choose another filter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In this sitting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Several sheets for one preceptor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tap the sheets</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Give the phone for %n sheet(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SheetPageView</name>
    <message>
        <source>Case sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counts under</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Count under %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask for a mark review</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask for a mark review: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You did this: say when and how. Your instructor reads it; the preceptor&apos;s mark stays beside it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask for the review</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waiting for %1: change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The preceptor has left: note who</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who scrubbed with you and will sign it? Only you see this note.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wait for them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was not canceled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Canceled before incision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take this sheet back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why? The sheet stays visible with your reason and does not count. Once it is initialed, your instructor decides.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What happened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give the phone to your preceptor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give the phone to a second preceptor</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SheetRow</name>
    <message>
        <source>waiting for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>initialed by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>marked by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your instructor asks: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You changed it after it was signed: the signed version counts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawn signature: it counts once your instructor has confirmed it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A skill is not marked: ask a preceptor who saw it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ready for the preceptor</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SigningPage</name>
    <message numerus="yes">
        <source>One signature for %n sheet(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Your PIN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sign</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A card that is not on the program&apos;s list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is your new signing card. Photograph it with your own phone now: it is shown only here. Whoever has the picture and your PIN can sign as you.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Code of the new signing card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a PIN, 6 to 12 digits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PIN of the card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The PIN again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The two PINs differ.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the camera sees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scan my signing card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A picture of my signing card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the code of my signing card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The code printed on the card, 7 groups of 5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use this card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I have no signing card: make one now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It counts once an instructor vouches for it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your credential, such as CST or RN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make my card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw my signature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The weakest way: it counts only once an instructor has asked you about it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Demo: hold one of these cards before the camera</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signing</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Sign %n sheet(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TabBarOfPages</name>
    <message>
        <source>Today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tally</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Me</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TallyPage</name>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First scrub in %1: the next one counts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Second scrub in %1: the next one counts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First scrub in %1: it takes %2 of one specialty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Second scrub in %1: it takes %2 of one specialty.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TallyPageView</name>
    <message>
        <source>Tally</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask for next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hide what does not count</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why cases do not count</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. The program&apos;s director decides which requirements are in force and who has met them.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ThreeWay</name>
    <message>
        <source>Yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>N/A</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TodayPage</name>
    <message>
        <source>Today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waiting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing waits for a signature or an answer. After your next case, tap New case sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Latest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Send to my instructor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on with your case sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New case sheet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WelcomePage</name>
    <message>
        <source>Your case sheets, sealed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After the case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You open a case sheet, without network, in half a minute.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your preceptor signs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On your phone, with their own card: ten skills, one minute. Nobody can change it afterwards without it showing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your instructor initials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>And you always know what counts and what to ask for next.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Join a program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Making the demo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look around in the demo</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>Checked supplies and equipment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set up the sterile field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counts, initial and closing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Passed instruments</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept sterile technique</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sponged the wound</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Suctioned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut suture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Held retractors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handled the camera</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not marked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>N/A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First scrub</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Second scrub</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Observation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not fully marked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Canceled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>General</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cardiothoracic</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ear, nose and throat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Eye</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Genitourinary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Neurosurgery</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Obstetrics and gynecology</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Oral and maxillofacial</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Orthopedics</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Peripheral vascular</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plastic and reconstructive</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Procurement and transplant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Diagnostic endoscopy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Labor and delivery</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not signed yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>signed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>returned with a question</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>initialed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>changed by your instructor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>void</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the preceptor&apos;s own phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>signing card and PIN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new signing card, not vouched for yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drawn on this phone, the weakest way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pen-signed stub</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first scrub</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first or second scrub</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>second scrub</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Specialty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The case was canceled before incision, so it has no role.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No skill is marked yet, so there is no role yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no role until every skill is marked. Missing: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All five first-scrub skills are Yes, so the second-scrub marks do not change the role.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every first-scrub skill is Yes, or N/A: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not every first-scrub skill is Yes, and a second-scrub skill is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not first scrub, because these are No: %1. A second-scrub skill is Yes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not every first-scrub skill is Yes and no second-scrub skill is, so it is an observation.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>peelpack::camera::DeviceCamera</name>
    <message>
        <source>There is no camera here: choose a picture of the code, or type it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The camera does not start: choose a picture of the code, or type it.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>peelpack::parts::QrScanner</name>
    <message>
        <source>This file is no picture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no readable code in this picture: take it again, closer and straight.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>peelpack::preceptor::HandOver</name>
    <message>
        <source>against the preference card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with the circulator</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a break that was seen and mended is Yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>marked already: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark what you saw.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say why &quot;%1&quot; is N/A.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This looks like %1. No patient names, numbers, ages or birth dates belong here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 for %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The case was canceled before incision.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yes: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>N/A: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You did not see: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feedback: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What counts here: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only once an instructor has confirmed it with you: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This card belongs to another program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose your name first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whose card is it? Your name is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody on the program&apos;s list has this card: make yourself known with name and credential.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write your name first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw your signature first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say why you do not sign; the student sees it.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>peelpack::share::Share</name>
    <message>
        <source>Cannot read this file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This file is too large to be one of Peelpack&apos;s.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cannot write there: check the space that is left, or choose another place.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>peelpack::shell::Joining</name>
    <message>
        <source>This invitation has expired: ask for a new one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is not the text of an invitation. Copy all of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write your name as your instructor knows it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The two PINs differ.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The two passphrases differ.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>peelpack::shell::Phone</name>
    <message>
        <source>PIN %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The phone was with a preceptor when the app ended. What was marked and not signed is gone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is not the demo&apos;s PIN: it is %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The phone is locked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The demo&apos;s PIN stays as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The two new ones differ.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changed. From now on the new one opens this phone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The demo has no vault code.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>peelpack::student::Desk</name>
    <message>
        <source>Student</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>peelpack::student::NewSheet</name>
    <message>
        <source>Today, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You have a sheet of this day for &quot;%1&quot; already. Is this another case?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; looks like %2. No patient names, numbers, ages or birth dates belong on a sheet.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>peelpack::student::Parcels</name>
    <message numerus="yes">
        <source>%n change(s) are only on this phone and lost with it until your instructor has them.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>With your instructor up to %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your journal is too large for one parcel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cannot use %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept: something that came before it is missing. It is tried again with the next file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n entries cannot be used.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n news taken in.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing new: you have it already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This phone&apos;s record split, often after a restore. Nothing more is signed with its keys: ask your instructor for a new invitation and join again. What you have stays.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>peelpack::student::SheetList</name>
    <message>
        <source>Any state</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Any role</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Any specialty</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n sheet(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>peelpack::student::SheetPage</name>
    <message>
        <source>after it was initialed: without effect</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>signed other procedures or another head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>somebody unknown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As it was signed: %1; %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You asked for a review: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your review was accepted: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your review was declined: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two preceptors differ; No stands until your instructor rules.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n counted as second scrub</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n counted as first scrub</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Helps most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counts under %1: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say why the mark should be Yes; your instructor reads it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say why you take the sheet back; it stays visible with your reason.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>peelpack::student::TallyPage</name>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n observation(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) not fully marked</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n canceled case(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) without a specialty</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Also recorded, not counted: %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>peelpack::student::Today</name>
    <message>
        <source>%1 of %2 cases counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you did since your last parcel is only on this phone. Send it to your instructor.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
