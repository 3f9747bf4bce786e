#!/usr/bin/env bash
# Builds the fuzz targets and runs those that are named (entry payload parcel statement certificate codes light), each
# for so many seconds, side by side on the cores there are. Fails on a crash, a leak, an input that takes 10 seconds, more than
# 256 MB of memory or a broken property; the input is then kept in build-fuzz/found. The corpus in the tree stays as it
# is: what a run finds is in build-fuzz/corpus.
# Usage: tests/fuzz/run.sh SECONDS TARGET...
set -euo pipefail
cd "$(dirname "$0")/../.."
# shellcheck source=platform/packages.sh
source platform/packages.sh

if [ $# -lt 2 ]; then
    sed -n 's/^# \(Usage: .*\)/\1/p' "$0" >&2
    exit 2
fi
seconds=$1
shift

most_bytes() {
    case $1 in
        parcel) echo 1048576 ;;
        certificate | codes) echo 8192 ;;
        light) echo 16384 ;;
        *) echo 65536 ;;
    esac
}

# Without entropic scheduling, which would cost a third of the time with targets that have so many features.
run_one() {
    local seconds=$1 target=$2
    local corpus=build-fuzz/corpus/$target log=build-fuzz/$target.log
    mkdir -p "$corpus" build-fuzz/found
    local started=$SECONDS
    if ! ASAN_OPTIONS=quarantine_size_mb=16:malloc_context_size=8 "build-fuzz/bin/fuzz_$target" -max_total_time="$seconds" \
        -rss_limit_mb=256 -malloc_limit_mb=256 -timeout=10 -max_len="$(most_bytes "$target")" -print_final_stats=1 \
        -entropic=0 -artifact_prefix="build-fuzz/found/$target-" "$corpus" "tests/fuzz/corpus/$target" >"$log" 2>&1; then
        tail -n 40 "$log"
        echo "fuzz $target: failed after $((SECONDS - started)) s; see $log"
        return 1
    fi
    awk -v target="$target" '
        /^stat::number_of_executed_units:/ { runs = $2 }
        /^stat::average_exec_per_sec:/ { rate = $2 }
        /^stat::peak_rss_mb:/ { peak = $2 }
        END { printf "fuzz %s: %d executions, %d/s, peak memory %d MB\n", target, runs, rate, peak }' "$log"
}
export -f run_one most_bytes

for target in "$@"; do
    [ -d "tests/fuzz/corpus/$target" ] || { echo "No fuzz target is called $target." >&2; exit 2; }
done
build_into build-fuzz -DPEELPACK_FUZZ=ON -DCMAKE_CXX_COMPILER=clang++
say "Fuzzing for $seconds s each: $*"
# shellcheck disable=SC2016
printf '%s\n' "$@" | xargs -P "$(nproc)" -n 1 bash -c 'run_one "$0" "$1"' "$seconds"
