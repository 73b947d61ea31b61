#!/bin/sh
# demo.sh [MUSLIN]: an invented story, planned with the command line. MUSLIN is the program, by default the one on PATH.
#
# SPDX-License-Identifier: MIT
set -eu
program=${1:-muslin}

# Shows the command, then runs it.
muslin() {
    printf '$ muslin'
    for word in "$@"; do
        case $word in
        *' '*) printf ' "%s"' "$word" ;;
        *) printf ' %s' "$word" ;;
        esac
    done
    printf '\n\n'
    "$program" "$@"
}

cat <<'STORY'
An invented story. Ottilie teaches a Saturday class above the bakery of a village
that is on no map. Twelve friends have each brought a bundle of 40 strips, cut
3 in wide, and want a lap quilt by winter. Ottilie measured: the shortest strip is
41 1/2 in without its selvages. She trims 1/2 in off each end and keeps 1 in clear
of the fold. Her test trio of strips came out at 7 15/16 in:

STORY
muslin calibrate 3 --pieces 3 --measured "7 15/16"

cat <<'STORY'

She moves the guide, tries again, and gets her 8 in. Now the whole quilt:

STORY
muslin plan 40 --strip 3 --set 5 --usable "41 1/2" --trim 1/2 --fold-clear 1 \
    --columns 4 --rows 4 --border "1 1/2 in" --border "5 in cornerstones" --cloth-width 41 \
    --batting --batting-roll 60 --backing --backing-width 43 --backing-selvage 1/2 \
    --binding --step "1/4 yd" --shrinkage "3 %"
