# shared.sh - what tests/run, examples/run and .ci/run share: missing packages, and stages with their time and tally.
# Sourced, never run; POSIX sh. Who uses stages sets $logs, a folder for their output.
#
# SPDX-License-Identifier: MIT

# Debian's own tools come first, so that meson and python3 are the ones that see Debian's modules.
export PATH="/usr/bin:$PATH"

# Check ends a test that hangs, and not one on a machine that does much else.
export CK_TIMEOUT_MULTIPLIER=20

# want_packages PACKAGE ...: installs the Debian packages that are missing; where it may not, names them and stops.
want_packages() {
    if ! command -v dpkg-query >/dev/null; then
        [ -n "${MUSLIN_HAVE_PACKAGES:-}" ] && return
        echo "This is not a Debian machine. Install what these packages hold, then set MUSLIN_HAVE_PACKAGES=1: $*" >&2
        exit 1
    fi
    missing=
    for package in "$@"; do
        # shellcheck disable=SC2016  # dpkg-query's own format, not a shell variable
        case $(dpkg-query -W -f '${Status}' "$package" 2>/dev/null) in
        *' ok installed') ;;
        *) missing="$missing $package" ;;
        esac
    done
    [ -z "$missing" ] && return
    if [ "$(id -u)" -eq 0 ]; then
        as_root=
    elif command -v sudo >/dev/null && sudo -n true 2>/dev/null; then
        as_root='sudo -n'
    else
        echo "These Debian packages are missing, and installing them needs root:$missing" >&2
        echo "Run: apt-get install$missing" >&2
        exit 1
    fi
    echo "installing$missing"
    install_log=$(mktemp)
    # shellcheck disable=SC2086  # lists of words
    if ! { $as_root apt-get -q update &&
           $as_root env DEBIAN_FRONTEND=noninteractive apt-get -q -y install --no-install-recommends $missing; } \
            >"$install_log" 2>&1; then
        tail -n 20 "$install_log" >&2
        rm -f "$install_log"
        echo "These Debian packages are missing and could not be installed:$missing" >&2
        exit 1
    fi
    rm -f "$install_log"
}

# absolute PATH: the same from the root, for a path that need not exist yet.
absolute() {
    case $1 in
    /*) echo "$1" ;;
    *) echo "$(pwd)/$1" ;;
    esac
}

: "${logs:=}"
passed=0
failed=0

tenths() {
    echo $(($(date +%s%N) / 100000000))
}

# stage NAME COMMAND ...: runs it and prints one line: how it went, its time, its name, and the last line it printed.
# Everything it printed follows when it failed; it stays in $logs/NAME.log either way.
stage() {
    stage_name=$1
    shift
    stage_log="$logs/$(echo "$stage_name" | tr ' /' '--').log"
    stage_start=$(tenths)
    if "$@" >"$stage_log" 2>&1 </dev/null; then
        stage_result=ok
        passed=$((passed + 1))
    else
        stage_result=FAILED
        failed=$((failed + 1))
    fi
    stage_time=$(($(tenths) - stage_start))
    stage_said=$(tail -n 1 "$stage_log" | cut -c 1-140)
    printf '%-6s %4d.%d s  %s\n' "$stage_result" $((stage_time / 10)) $((stage_time % 10)) \
        "$stage_name${stage_said:+: $stage_said}"
    [ "$stage_result" = ok ] || { echo "$stage_name:"; cat "$stage_log"; } | sed 's/^/    /'
}

# lane NAME FUNCTION: the stages of a function, beside what else runs. lanes_end waits for all and counts theirs.
# What a shell runs beside itself does not hear Ctrl-C: the shell passes it on.
lanes=
lane() {
    lanes="$lanes $1"
    trap 'trap - INT; kill -TERM 0' INT
    rm -f "$logs/$1.lane"
    (
        passed=0
        failed=0
        "$2"
        echo "$passed $failed" >"$logs/$1.lane"
    ) &
}

lanes_end() {
    wait
    trap - INT
    for lane_name in $lanes; do
        # A lane that wrote nothing was ended: that is a failure, too.
        read -r lane_passed lane_failed <"$logs/$lane_name.lane" || { lane_passed=0 lane_failed=1; }
        passed=$((passed + lane_passed))
        failed=$((failed + lane_failed))
    done
}

# The last line of a run, and its exit status.
tally() {
    echo "$passed passed, $failed failed"
    [ "$failed" -eq 0 ]
}
