#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Every example sentence in the headers must be quoted, word for word, in a C test that runs it.

usage: examples.py HEADER_FOLDER TEST_FOLDER

An example runs from "Example:" to the "Since" of its comment, in the headers and in the test's comments alike (there
to the comment's end). A new example without a test, or an example changed in one place only, fails.
"""

import collections
import pathlib
import re
import sys

COMMENT = re.compile(r"/\*(.*?)\*/", re.DOTALL)
EXAMPLE = re.compile(r"Example: (.*?)(?= Since \d| Example: |$)")


def examples(path):
    """The examples in a C file's comments, with line breaks and comment stars taken out."""
    for comment in COMMENT.finditer(path.read_text(encoding="utf-8")):
        text = re.sub(r"\s*\n\s*\*?\s*", " ", comment[1]).strip()
        yield from (found[1].strip() for found in EXAMPLE.finditer(text))


def main():
    folder, tests = pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2])
    said = collections.Counter(text for header in sorted(folder.glob("*.h")) for text in examples(header))
    run = collections.Counter(text for test in sorted(tests.glob("*.c")) for text in examples(test))
    for text in said - run:
        print(f"no test quotes: {text}", file=sys.stderr)
    for text in run - said:
        print(f"no header says: {text}", file=sys.stderr)
    failed = len((said - run) + (run - said))
    if not said:
        print("the headers hold no example", file=sys.stderr)
        failed = 1
    print(f"{sum((said & run).values())} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
