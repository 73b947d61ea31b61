# shared.sh - what the scripts here share: a build's staged install, and commands that must be refused.
# Sourced with $work set, a folder for what is made; POSIX sh.
#
# SPDX-License-Identifier: MIT

: "${work:=}"

wrong() {
    echo "$1"
    exit 1
}

# staged BUILD: installs it anew under $work/stage and lets pkg-config see nothing but that. The paths lead there from
# $work, which becomes the current folder, so that there may be blanks in its name.
staged() {
    stage=$work/stage
    rm -rf "$stage"
    mkdir -p "$work"
    DESTDIR=$stage meson install -C "$1" --no-rebuild --quiet
    cd "$work"
    export PKG_CONFIG_SYSROOT_DIR=stage
    PKG_CONFIG_LIBDIR=$(dirname "$(find "$stage" -name muslin.pc)")
    export PKG_CONFIG_LIBDIR
    libraries=$(dirname "$PKG_CONFIG_LIBDIR")
}

# must_fail WHAT WHY COMMAND ...: a negative control. It must fail, and say why.
must_fail() {
    what=$1
    why=$2
    shift 2
    if "$@" >"$work/refused.log" 2>&1; then
        wrong "$what: this must fail: $*"
    fi
    grep -q "$why" "$work/refused.log" || { cat "$work/refused.log"; wrong "$what: refused for another reason"; }
}
