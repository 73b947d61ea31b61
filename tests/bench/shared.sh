# shared.sh - what the parts of the bench share. Sourced at the project's root, never run; POSIX sh. Sets $bench, the
# folder of what is kept: .build/bench, or bench in $MUSLIN_BUILD.
#
# SPDX-License-Identifier: MIT
. tests/shared.sh

bench=$(absolute "${MUSLIN_BUILD:-.build}")/bench
mkdir -p "$bench"

# release TARGET ...: builds these for release, in $bench.
release() {
    {
        [ -f "$bench/build.ninja" ] || meson setup --buildtype release "$bench" .
        ninja -C "$bench" "$@"
    } >"$bench/log" 2>&1 || {
        cat "$bench/log" >&2
        exit 1
    }
}

# keep NAME COMMAND ...: runs it, and its lines are printed and kept in NAME.json.
keep() {
    kept=$bench/$1.json
    shift
    "$@" >"$kept.new"
    mv "$kept.new" "$kept"
    cat "$kept"
}
