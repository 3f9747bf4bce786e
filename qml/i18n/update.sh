#!/usr/bin/env bash
# Collects the texts of the screens anew into the .ts files, and what is said() below them (core/base/sentence.h); what
# is translated stays. English has only its plurals.
set -euo pipefail
cd "$(dirname "$0")/../.."
lupdate=$(command -v lupdate || echo /usr/lib/qt6/bin/lupdate)
collect() {
    "$lupdate" -no-obsolete -locations none -tr-function-alias QT_TRANSLATE_NOOP+=said -I . core sync platform qml \
        -source-language en_US "$@"
}
collect -target-language es_US -ts qml/i18n/peelpack_es.ts
collect -target-language en_US -pluralonly -ts qml/i18n/peelpack_en.ts
