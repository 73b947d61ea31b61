#!/bin/sh
# Each public header compiles alone, as C99, C11 and C++11 to C++20, with every warning an error.
#
#     headers.sh CC CXX INITS    INITS is the file that tests/abi/layout.py writes: all headers at once, all initialisers
#
# SPDX-License-Identifier: MIT
set -eu
cc=$1
cxx=$2
inits=$3
root=$(cd "$(dirname "$0")/../.." && pwd)
warnings='-Wall -Wextra -Wpedantic -Wconversion -Wshadow -Wundef -Werror'
compiled=0

# compile FILE LANGUAGE STANDARD COMPILER [FLAG ...]: standard input when FILE is -
compile() {
    file=$1 language=$2 standard=$3 compiler=$4
    shift 4
    # shellcheck disable=SC2086  # a list of words
    "$compiler" -x "$language" "-std=$standard" $warnings "$@" -I"$root/include" -fsyntax-only "$file"
}

for header in "$root"/include/muslin/*.h; do
    line="#include <muslin/${header##*/}>"
    for standard in c99 c11; do
        echo "$line" | compile - c "$standard" "$cc" -Wstrict-prototypes
    done
    for standard in c++11 c++14 c++17 c++20; do
        echo "$line" | compile - c++ "$standard" "$cxx"
    done
    compiled=$((compiled + 6))
done
compile "$inits" c c99 "$cc" -Wstrict-prototypes
for standard in c++11 c++14 c++17 c++20; do
    compile "$inits" c++ "$standard" "$cxx"
done
echo "$((compiled + 5)) compilations with $cc and $cxx"
