#!/usr/bin/env bash
# Plays one case through all three people on real vaults in the folder $1: a student opens a sheet, a preceptor marks and
# signs it on the student's phone, an instructor takes it in and initials it; ends with the tally. $2: the program.
# People, site and case are invented; the secrets below are for this play only.
set -euo pipefail
folder=$1
peelpack=$(realpath "${2:-build/bin/peelpack}")
rm -rf "$folder"
mkdir -p "$folder"
cd "$folder"
export XDG_STATE_HOME=$PWD/marks # so that nothing outside the folder is touched
passphrase='four odd words here'
pin=27182818

act() { printf '\n-- %s\n' "$*"; }
# Runs a command with the secrets given, a line each, on descriptor 3: secrets LINES -- COMMAND ...
with() {
    local secrets=$1
    shift
    "$peelpack" "$@" --secrets-fd 3 3<<<"$secrets"
}

act 'The director sets up the program; the program code is shown once and typed back'
mkfifo typed
exec 4<>typed
"$peelpack" program new --vault director.peelvault --name 'Invented Director' --set spread10 --secrets-fd 4 >setup.txt &
setup=$!
until grep -q '^  ' setup.txt; do sleep 0.1; done
sed -n 's/^  \(.*-.*\)$/\1/p' setup.txt | head -1 >&4
printf '%s\n' "$passphrase" >&4
wait $setup
exec 4>&-
grep -v -- '-.*-.*-' setup.txt
program=$(grep -Eo '[0-9a-f]{64}' setup.txt)

# Invites $2 in the role $3, for $4, from the vault $1 into the vault $5.
enroll() {
    with "$passphrase" enroll invite --vault "$1" --name "$2" --role "$3" --for "$4" --out "$5.invitation"
    with "$passphrase" enroll join "$5.invitation" --vault "$5" --name "$2" --out "$5.reply" >"$5.joined"
    digits=$(grep -Eo '[0-9]{6}$' "$5.joined")
    with "$passphrase" enroll grant "$5.reply" --vault "$1" --digits "$digits"
}

act 'An instructor joins, and makes a signing card for a preceptor'
enroll director.peelvault 'Invented Instructor' instructor 'Spring class' instructor.peelvault
with "$passphrase" send --vault director.peelvault --to 'Invented Instructor' --out to-instructor.peelparcel
with "$passphrase" take to-instructor.peelparcel --vault instructor.peelvault
with "$passphrase"$'\n'$pin preceptor card --vault instructor.peelvault --name 'Invented Preceptor' --credential CST \
    --site 'North Campus' --out preceptor.card

act 'A student joins'
enroll instructor.peelvault 'Invented Student' student 'Spring class' student.peelvault
with "$passphrase" send --vault instructor.peelvault --to 'Invented Student' --out to-student.peelparcel
with "$passphrase" take to-student.peelparcel --vault student.peelvault

act 'Right after the case: the student opens a sheet, the preceptor marks and signs it on the same phone'
with "$passphrase" sheet open --vault student.peelvault --procedure 'Laparoscopic cholecystectomy' --date 2026-03-12 \
    --surgeon 'Dr Iversen' --site 'North Campus' --room 'Room 4' --start 07:30 --end 09:10 --json >opened.json
sheet=$(grep -Eo '[0-9a-f]{8}' opened.json)
with "$passphrase"$'\n'yes$'\n'$pin sheet sign "$sheet" --vault student.peelvault --card preceptor.card --marks YYYYYYYYYA \
    --feedback 'Had the clip applier ready before it was asked for.'
with "$passphrase" sheet log "$sheet" --vault student.peelvault --under general
with "$passphrase" sheet list --vault student.peelvault
with "$passphrase" send --vault student.peelvault --out to-staff.peelparcel

act 'The instructor takes the parcel in, checks and initials'
with "$passphrase" take to-staff.peelparcel --vault instructor.peelvault
with "$passphrase" queue --vault instructor.peelvault
with "$passphrase" initial "$sheet" --vault instructor.peelvault
with "$passphrase" send --vault instructor.peelvault --to 'Invented Student' --out receipts.peelparcel

act 'The student takes the receipt back; everything is proven from nothing with the program id alone'
with "$passphrase" take receipts.peelparcel --vault student.peelvault
with "$passphrase" sheet show "$sheet" --vault student.peelvault
with "$passphrase" check student.peelvault --program "$program"

act 'The tally of initialed cases'
with "$passphrase" tally student.peelvault --level initialed
