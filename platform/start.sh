#!/usr/bin/env bash
# Installs what is missing, builds Peelpack, plays one case through all three people on real vaults, makes the invented demo
# program and tallies its spring class; then opens the app, or, without a display, draws every screen of it.
set -euo pipefail
cd "$(dirname "$0")/.."
# shellcheck source=platform/packages.sh
source platform/packages.sh

install_missing "${peelpack_build_packages[@]}"
build_into build -DPEELPACK_TESTS=OFF
say "One case, from the student to the instructor (in build/one-case)"
bash platform/one_case.sh build/one-case
say "Making the demo program in build/demo"
rm -rf build/demo
build/bin/peelpack demo build/demo --csv
say "One student of the spring class"
build/bin/peelpack tally build/demo/spring-class.csv --student "Ines Duarte"
say "The spring class"
build/bin/peelpack tally build/demo/spring-class.csv --brief
if [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
    say "Opening the app: look around in its demo"
    build/bin/peelpack-app
else
    say "There is no display here: drawing every screen of the app, light and dark, phone and tablet"
    rm -rf build/screens
    for dress in 390x844-light 390x844-dark 1180x820-light 1180x820-dark; do
        build/bin/peelpack-app --pictures build/screens "$dress-100-en"
    done
fi
