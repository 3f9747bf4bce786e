import QtQuick
import QtTest
import Peelpack.Shell

// An instructor imports what a class logged on paper: from where, what is refused and why, what will come of it, and
// only then the journal.
ClassJourney {
    name: "PaperLog"

    readonly property string ines: "Ines Duarte"
    readonly property string caleb: "Caleb Nwosu"
    readonly property string header: "sheet,date,student,procedure,role,site\n"
    readonly property string source: "paper log of spring, page 3"

    function init() {
        begin()
    }
    function cleanup() {
        end()
    }
    function openLog() {
        hold("instructor")
        tap("tab-3")
        tap("paperLogRow")
        awaitWords("Earlier paper log")
    }
    function choose(text) {
        world.readyText("spring.csv", text)
        tap("openLog")
    }
    function saySource(text) {
        const field = await("logSource")
        tapInside(field)
        field.field.clear()
        type(text)
    }

    function test_logOfTwoStudents() {
        openLog()
        const before = world.actsAbout(ines)
        choose(header)
        awaitWords("Say first where the rows come from")
        saySource("log of MRN 445566")
        choose(header)
        awaitWords("looks like a record number")
        saySource(source)
        choose("name,case\nInes Duarte,hernia\n")
        awaitWords("the header row lacks the columns sheet, date, student, procedure and role; a paper log needs no marks: write first, second or observed on every row under role.")
        verify(find("importLog") === null)
        choose(header)
        awaitWords("No row stands in this file.")

        choose(header + "p1,2026-01-14,Ines Duarte,Laparoscopic cholecystectomy,first,North Campus\n"
                      + "p2,2026-01-15,ines duarte,Laparoscopic appendectomy,second,North Campus\n"
                      + "p3,2026-01-15,Nobody Known,Laparoscopic appendectomy,second,North Campus\n"
                      + "p4,2026-01-16,Caleb Nwosu,Laparoscopic appendectomy,,North Campus\n"
                      + "p5,2026-01-17,Caleb Nwosu,Laparoscopic appendectomy,observed,MRN 445566\n")
        awaitWords("Is this the paper log?")
        awaitWords("Comes from: " + source)
        awaitWords("Refused: 3 of 5 row")
        awaitWords("Line 4, column student: no student of this name is enrolled; write the name as it was enrolled.")
        awaitWords("Line 5, column role: a row from a paper log needs its role")
        awaitWords("Line 6, column site: this looks like a record number; take it out; what is imported stays.")
        awaitWords("Will be imported, not attested: 2 sheet")
        compare((await("logOf-" + ines)).detail, "2 sheet(s) · First scrub: 1 · Second scrub: 1 · Jan 14, 2026 to Jan 15, 2026".replace(/, 2026/g, new Date().getFullYear() === 2026 ? "" : ", 2026"))
        verify(find("logOf-" + caleb) === null)
        tap("logOf-" + ines)
        awaitWords("Laparoscopic cholecystectomy · First scrub · General")
        tap("logChecked") // somebody looked: it is no record number
        awaitWords("Refused: 2 of 5 row")
        awaitWords("Will be imported, not attested: 3 sheet")
        verify(find("logOf-" + caleb) !== null)
        compare(world.importedOf(ines), []) // nothing is written before it is confirmed
        compare(world.actsAbout(ines), before)

        tap("importLog")
        awaitWords("Imported, not attested: 3 sheet(s). Each counts once an instructor has initialed it")
        awaitWords("Ines Duarte: 2 sheet(s) imported")
        awaitWords("Caleb Nwosu: 1 sheet(s) imported")
        awaitWords("Line 4, column student") // still there, to be mended
        compare(world.importedOf(ines), ["2026-01-14 Laparoscopic cholecystectomy first imported: " + source,
                                         "2026-01-15 Laparoscopic appendectomy second imported: " + source])
        compare(world.importedOf(caleb), ["2026-01-17 Laparoscopic appendectomy observed imported: " + source])

        // The same file again adds nothing.
        tap("leaveLog")
        choose(header + "p1,2026-01-14,Ines Duarte,Laparoscopic cholecystectomy,first,North Campus\n")
        awaitWords("Nothing in this file is new")
        awaitWords("Left out, here already: 1 sheet")
        verify(find("importLog") === null)
        tapWords("Back")

        // It counts once it is initialed.
        tap("tab-0")
        look(world.keyOfImported(ines, 0))
        awaitWords("Imported, not attested, by Bertil Moreau. It comes from: " + source)
        tap("initialButton")
        verify(staff.pending.writeNow())
        compare(world.importedOf(ines)[0], "2026-01-14 Laparoscopic cholecystectomy first initialed: " + source)
    }

    function test_nothingIsImported() {
        openLog()
        const before = world.actsAbout(ines)
        saySource(source)
        choose(header + "p1,2026-01-14,Nobody Known,Laparoscopic appendectomy,first,North Campus\n")
        awaitWords("Nothing in this file can be imported as it is.")
        verify(find("importLog") === null)
        world.phone.program.paperLog.importThem()
        compare(world.actsAbout(ines), before)
        awaitWords("Nothing was imported.")
    }
}
