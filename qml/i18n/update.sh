#!/usr/bin/env bash
# Collects the texts of the screens anew into the .ts files; what is translated stays. English has only its plurals.
set -euo pipefail
cd "$(dirname "$0")/../.."
lupdate=$(command -v lupdate || echo /usr/lib/qt6/bin/lupdate)
collect() { "$lupdate" -no-obsolete -locations none -I . qml platform/app platform/camera platform/share -source-language en_US "$@"; }
collect -target-language es_US -ts qml/i18n/peelpack_es.ts
collect -target-language en_US -pluralonly -ts qml/i18n/peelpack_en.ts
