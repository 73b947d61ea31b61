"""switched.py - all mutants of a file in one source: which of them is meant is said when a program starts.

To build and link a program for each mutant takes far longer than to ask it. Here each changed expression stands beside
the one it is put for, chosen by a number: (msl_mutant == 7 ? (a <= b) : (a < b)). What no C allows there, as in the
size of an array or a label, is left out: the compiler tells.

SPDX-License-Identifier: MIT"""
import re

DECLARED = "extern const int msl_mutant;\n"
CHOSEN = """#include <stdlib.h>
int msl_mutant;
__attribute__((constructor)) static void choose(void)
{
    const char *number = getenv("MUSLIN_MUTANT");
    msl_mutant = number == NULL ? 0 : atoi(number);
}
"""
NUMBER = re.compile(r"msl_mutant [!=]= (\d+)")


class Place:
    """An expression or a step with the mutants that change it, and the places within it."""

    def __init__(self, start, end, is_step):
        self.start, self.end, self.is_step = start, end, is_step
        self.numbered = []
        self.inner = []


def places(numbered, text):
    """The outermost places of these mutants, in the order of the text; each holds those within it."""
    found = {}
    for number, mutant in numbered:
        start, end = mutant.outer
        if mutant.is_step and re.match(r"(break|continue|return)\b", text[start:end]):
            end = text.index(";", end) + 1
        place = found.setdefault((start, -end, not mutant.is_step), Place(start, end, mutant.is_step))
        place.numbered.append((number, mutant))
    outermost, around = [], []
    for _order, place in sorted(found.items()):
        while around and around[-1].end <= place.start:
            around.pop()
        if around and place.end > around[-1].end:
            continue  # a macro hides where it ends
        (around[-1].inner if around else outermost).append(place)
        around.append(place)
    return outermost


def one_line(text):
    return re.sub(r"\s*\n\s*", " ", text)


def with_places(text, start, end, inner):
    """A part of the text, the places within it switched."""
    parts = []
    for place in inner:
        parts += [text[start:place.start], switched_place(text, place)]
        start = place.end
    return "".join(parts) + text[start:end]


def switched_place(text, place):
    usual = with_places(text, place.start, place.end, place.inner)
    if place.is_step:
        [(number, _mutant)] = place.numbered
        if usual.endswith(";"):
            return f"{{\nif (msl_mutant != {number})\n{usual} }}"
        return f"(\nmsl_mutant == {number} ? (void)0 : (void)(\n{usual}))"
    changed = []
    for number, mutant in place.numbered:
        by = one_line(text[place.start:mutant.start] + mutant.new + text[mutant.end:place.end])
        changed.append(f"msl_mutant == {number} ? ({by}) :\n")
    return f"(\n{''.join(changed)}({usual}))"


def switched(mutants, left_out):
    """The source with these mutants of one file, numbered from 1 in their order, but for those left out."""
    text = mutants[0].text
    numbered = [(number, mutant) for number, mutant in enumerate(mutants, 1) if number not in left_out]
    return DECLARED + with_places(text, 0, len(text), places(numbered, text))


def numbers(source):
    return {int(number) for number in NUMBER.findall(source)}


def wrong_numbers(source, messages):
    """The mutants that the compiler's errors speak of: those of its line (of the next, where it ends with a place's
    bracket), or of the last line before it that has any."""
    lines = source.split("\n")
    wrong = set()
    for line in re.findall(r"^[^:\n]+:(\d+):\d+: error:", messages, flags=re.M):
        at = int(line)
        if lines[at - 1].endswith("("):
            at += 1
        while at > 0 and not NUMBER.search(lines[at - 1]):
            at -= 1
        wrong |= numbers(lines[at - 1]) if at else set()
    return wrong
