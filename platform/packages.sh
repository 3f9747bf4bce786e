# Packages from Debian 12 or Ubuntu 24.04 that Peelpack is built, run and tested with. Sourced by start.sh and test.sh.
peelpack_build_packages=(g++ cmake ninja-build pkg-config qt6-base-dev qt6-declarative-dev qt6-declarative-dev-tools qt6-multimedia-dev
    qt6-l10n-tools nlohmann-json3-dev libsodium-dev libcereal-dev libical-dev libqt6sql6-sqlite libqrcodegencpp-dev libzxing-dev fonts-inter
    qml6-module-qt-labs-folderlistmodel qml6-module-qt-labs-settings qml6-module-qtqml qml6-module-qtqml-models qml6-module-qtqml-workerscript qml6-module-qtquick qml6-module-qtquick-controls
    qml6-module-qtquick-dialogs qml6-module-qtquick-layouts qml6-module-qtquick-shapes qml6-module-qtquick-templates
    qml6-module-qtquick-window)
peelpack_test_packages=(catch2 qml6-module-qttest xvfb xdotool poppler-utils zbar-tools libglpk-dev libsqlite3-dev python3 python3-nacl)
peelpack_fuzz_packages=(clang libclang-rt-14-dev)
peelpack_ci_packages=(ccache clang-tidy clang-format libbenchmark-dev libsqlcipher0 "${peelpack_fuzz_packages[@]}")

say() { printf '\n== %s\n' "$*"; }

# Installs those of the named packages that are missing; asks for nothing, and does nothing when all are there.
install_missing() {
    local missing=()
    local package
    for package in "$@"; do
        dpkg-query -W -f='${Status}' "$package" 2>/dev/null | grep -q 'install ok installed' || missing+=("$package")
    done
    if [ ${#missing[@]} -eq 0 ]; then
        return 0
    fi
    say "Installing what is missing: ${missing[*]}"
    local as_root=()
    [ "$(id -u)" -eq 0 ] || as_root=(sudo)
    "${as_root[@]}" apt-get update -qq
    "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "${missing[@]}"
}

# Configures and builds into the folder $1 with the CMake options that follow.
build_into() {
    local folder=$1
    shift
    say "Building into $folder"
    # Lines in the debug information, no variables: a quarter less time to compile.
    cmake -S . -B "$folder" -G Ninja -DCMAKE_CXX_FLAGS_RELWITHDEBINFO="-O2 -g1 -DNDEBUG" "$@" >"$folder.log" 2>&1 || { cat "$folder.log"; return 1; }
    rm -f "$folder.log"
    cmake --build "$folder"
}
