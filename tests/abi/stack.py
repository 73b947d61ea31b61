#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""How deep the library's calls go, from what gcc writes of its call graph (-fcallgraph-info=su), the library as one file.

    stack.py CALLGRAPH SOURCE LIMIT    exits 1 when a public function may need more than LIMIT bytes, calls go in a circle,
                                       or a frame has no bound

What a call through a pointer may reach stands in POINTERS, by the pointer's name in the SOURCE of the graph: allocators
and progress calls are the caller's, and not counted. Functions of the compiler's (memcpy and the like) count as nothing.
"""
import re
import sys
from pathlib import Path
from typing import Dict, List, Set, Tuple

NODE = re.compile(r'^node: \{ title: "([^"]*)" label: "[^"]*?\\n(\d+) bytes \(([^)]*)\)')
EDGE = re.compile(r'^edge: \{ sourcename: "([^"]*)" targetname: "([^"]*)" label: "[^"]*?:(\d+):(\d+)"')
INDIRECT = "__indirect_call"
CALLERS_OWN = "$^"
POINTERS = {"alloc": CALLERS_OWN, "realloc": CALLERS_OWN, "free": CALLERS_OWN, "progress": CALLERS_OWN,
            "is_before": r"_before$", "step": r"^(?!msl_)\w*tell$", "change": r"^(put_on|take_off)$",
            "sum": r"^muslin_length_(add|subtract)$"}


class Graph:
    """Frames and calls."""

    def __init__(self, text: str, source: List[str]) -> None:
        self.frames: Dict[str, int] = {}
        self.calls: Dict[str, Set[str]] = {}
        self.unbounded: List[str] = []
        for line in text.splitlines():
            node, edge = NODE.match(line), EDGE.match(line)
            if node:
                self.frames[node.group(1)] = int(node.group(2))
                if "dynamic" in node.group(3) and "bounded" not in node.group(3):
                    self.unbounded.append(node.group(1))
            elif edge:
                target = edge.group(2)
                if target == INDIRECT:
                    target += " " + re.match(r"[\w>.-]*?(\w+)\(", source[int(edge.group(3)) - 1][int(edge.group(4)) - 1:])[1]
                self.calls.setdefault(edge.group(1), set()).add(target)
        self.public = [name for name in self.frames if name.startswith("muslin_")]
        for targets in self.calls.values():
            for pointer in [target.split()[1] for target in targets if target.startswith(INDIRECT)]:
                targets.update(name for name in self.frames if re.search(POINTERS[pointer], name.split(":")[-1]))
        self.deepest: Dict[str, Tuple[int, str]] = {}
        self.circles: Set[str] = set()

    def depth(self, name: str, above: Tuple[str, ...] = ()) -> int:
        """Bytes from here downwards; the way down is kept."""
        if name in above:
            self.circles.add(" > ".join(above[above.index(name):] + (name,)))
            return 0
        if name not in self.frames:
            return 0
        if name not in self.deepest:
            below = [(self.depth(target, above + (name,)), target) for target in sorted(self.calls.get(name, ()))]
            most, target = max(below, default=(0, ""))
            self.deepest[name] = (self.frames[name] + most, target)
        return self.deepest[name][0]

    def way(self, name: str) -> str:
        words = []
        while name in self.frames:
            words.append(f"{name.split(':')[-1]} {self.frames[name]}")
            name = self.deepest[name][1]
        return " > ".join(words)


def main(arguments: List[str]) -> int:
    texts = [Path(name).read_text(encoding="utf-8") for name in arguments[:2]]
    graph, limit = Graph(texts[0], texts[1].split("\n")), int(arguments[2])
    depths = sorted(((graph.depth(name), name) for name in graph.public), reverse=True)
    wrong = [f"needs {depth} bytes, at most {limit}: {graph.way(name)}" for depth, name in depths if depth > limit]
    wrong += [f"a circle: {circle}" for circle in sorted(graph.circles)]
    wrong += [f"a frame without bound: {name}" for name in graph.unbounded]
    print("\n".join(wrong))
    deepest, name = depths[0]
    print(f"{len(depths)} public functions; the deepest, {name}, needs {deepest} bytes")
    return 1 if wrong or len(depths) < 300 else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
