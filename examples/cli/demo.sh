#!/bin/sh
# demo.sh [MUSLIN]: an invented story, planned with the command line. MUSLIN is the program, by default the one on PATH.
#
# SPDX-License-Identifier: MIT
set -eu
muslin=${1:-muslin}

cat <<'STORY'
An invented story. Ottilie teaches a Saturday class above the bakery in a village
that is on no map. Twelve friends have each brought home a bundle of 30 strips,
cut 3 in wide, and want a lap quilt by winter. Ottilie measured the strips: the
shortest is 41 1/2 in without its selvages. She trims 1/2 in off each end, keeps
1 in clear at the fold, and her own machine takes up 1/64 in at every seam.

First she looks at the seam. Her test trio of strips cut 3 in should measure 8 in
unfinished, and measures 7 31/32 in:

STORY
set -x
"$muslin" calibrate 3 --pieces 3 --measured "7 31/32"
{ set +x; } 2>/dev/null

cat <<'STORY'

So a pressed seam eats 1/64 in beyond its allowances, as she thought. Now the
whole quilt, with two borders, batting, backing and binding:

STORY
set -x
"$muslin" plan 30 --strip 3 --set 5 --usable "41 1/2" --trim 1/2 --fold-clear 1 \
    --take-up 1/64 --columns 4 --rows 4 --tops 1 --turn quarter \
    --border "1 1/2 in" --border "5 in cornerstones" --cloth-width 41 \
    --batting --batting-roll 60 --backing --backing-width 43 --backing-selvage 1/2 \
    --binding --step "1/4 yd" --shrinkage "3 %"
