import Peelpack.Parts
import Peelpack.Student

// A case sheet of the student's as a pack.
PackCard {
    required property sheetRow row

    title: row.title
    detail: row.detail
    standing: row.standing
    seal: row.seal
    role: row.role
    roleCounts: row.roleCounts
    specialty: row.specialty
    remark: row.remark
    graveRemark: row.grave
}
