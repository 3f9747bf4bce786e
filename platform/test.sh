#!/usr/bin/env bash
# Installs what is missing, builds Peelpack and runs every test. --full adds the long runs, fuzzing among them.
set -euo pipefail
cd "$(dirname "$0")/.."
# shellcheck source=platform/packages.sh
source platform/packages.sh

full=no
[ "${1:-}" = "--full" ] && full=yes

install_missing "${peelpack_build_packages[@]}" "${peelpack_test_packages[@]}"
build_into build -DPEELPACK_TESTS=ON -DPEELPACK_FULL="$([ $full = yes ] && echo ON || echo OFF)"
say "Running the tests"
ctest --test-dir build --output-on-failure --no-tests=error -j "$(nproc)"
if [ $full = yes ]; then
    install_missing "${peelpack_fuzz_packages[@]}"
    bash tests/fuzz/run.sh 300 entry payload parcel statement certificate codes light
fi
