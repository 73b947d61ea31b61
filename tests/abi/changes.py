#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""The change log, lib/CHANGES.md, against the headers.

    changes.py                  everything it names exists, what it calls former names does not, and every function is
                                named in the version that it came with
    changes.py --write          writes the lists of functions of the newest version anew
    changes.py --renamed OLD    prints rows for the table of former names: OLD is an older lib/abi/api.json

A version's section begins with "## VERSION", a module's list with "### module", a table of former names has the columns
"was" and "is". Before the first version in the log lies what it came with: since 0.1 is since 1.0.0.
"""
import difflib
import json
import re
import sys
from pathlib import Path
from typing import Any, Dict, Iterator, List, Set, Tuple

ROOT = Path(__file__).resolve().parent.parent.parent
LOG = ROOT / "lib" / "CHANGES.md"
API = ROOT / "lib" / "abi" / "api.json"
NAMED = re.compile(r"`(?:struct |enum )?((?:muslin|MUSLIN)_\w+(?:\.\.\.)?)(?:\(\))?(?:\.(\w+))?`")
ROW = re.compile(r"^\| (`.*?`) \| (`.*?`|gone.*?) \|$", re.M)
Api = Dict[str, Any]


def read() -> Api:
    return json.loads(API.read_text(encoding="utf-8"))


def symbols(api: Api) -> Set[str]:
    """All names, and struct.member for each member."""
    names = {row["name"] for part in ("types", "constants", "enums", "structs", "handles", "inits", "functions")
             for row in api[part]}
    names |= {value for enum in api["enums"] for value in enum["values"]}
    names |= {"MUSLIN_PROBLEM_INIT"}
    return names | {f"{struct['name']}.{member['name']}" for struct in api["structs"] for member in struct["members"]}


def named(text: str) -> List[str]:
    """What a text names: a member with its struct, else the symbol."""
    return [f"{name}.{member}" if member else name for name, member in NAMED.findall(text)]


def is_there(name: str, exist: Set[str]) -> bool:
    """A name that ends in dots stands for all that begin so."""
    return any(one.startswith(name[:-3]) for one in exist) if name.endswith("...") else name in exist


def sections(text: str) -> Dict[str, str]:
    """By version, the oldest first."""
    parts = re.split(r"^## (\d+\.\d+\.\d+).*$", text, flags=re.M)
    found = dict(zip(parts[1::2], parts[2::2]))
    return {version: found[version] for version in sorted(found, key=number)}


def number(version: str) -> Tuple[int, ...]:
    parts = [int(part) for part in version.split(".")]
    return tuple(parts + [0] * (3 - len(parts)))


def came_with(since: str, versions: List[str]) -> str:
    """The first version of the log that is not before it."""
    return next((version for version in versions if number(version) >= number(since)), "")


def faults(text: str, api: Api) -> Iterator[str]:
    exist = symbols(api)
    former = {name for was, _ in ROW.findall(text) for name in named(was)}
    now = set(named(ROW.sub(lambda row: row.group(2), text)))
    yield from (f"{name} is called a former name and exists" for name in sorted(former) if is_there(name, exist))
    yield from (f"{name} is named and does not exist" for name in sorted(now) if not is_there(name, exist))
    found = sections(text)
    for function in api["functions"]:
        version = came_with(function["since"], list(found))
        if function["name"] not in named(ROW.sub("", found.get(version, ""))):
            yield f"{function['name']} came with {version or function['since']}, whose section does not name it"
    if api["version"] not in found and number(api["version"]) >= number(next(iter(found))):
        yield f"version {api['version']} has no section"


def controls(text: str) -> Iterator[Tuple[str, str]]:
    """Logs that are wrong."""
    yield "a function left out", text.replace("`muslin_length_add()`,", "")
    yield "a name that is none", text + "\n`muslin_length_ad()`\n"
    yield "a member that is none", text + "\n`struct muslin_problem.length`\n"
    yield "a former name that exists", text + "\n| `muslin_length_add` | `muslin_length_sum` |\n"


# ---- writing ---------------------------------------------------------------------------------------------------------

def functions_of(module: str, version: str, versions: List[str], api: Api) -> List[str]:
    return [function["name"] for function in api["functions"] if function["header"] == f"{module}.h" and
            came_with(function["since"], versions) == version]


def wrapped(words: List[str]) -> str:
    lines = [""]
    for word in words:
        if len(lines[-1]) + len(word) > 118:
            lines.append("")
        lines[-1] += (" " if lines[-1] else "") + word
    return "\n".join(lines)


def write(text: str, api: Api) -> str:
    """The last paragraph of each module's part is its list."""
    versions = list(sections(text))
    newest = versions[-1]
    start = text.index(f"## {newest}")

    def part(match: "re.Match[str]") -> str:
        names = functions_of(match.group(1), newest, versions, api)
        listed = wrapped([f"`{name}()`," for name in names])[:-1] + "."
        return f"### {match.group(1)}\n\n{match.group(2)}\n\n{listed}\n"
    end = text.find("\n## ", start + 1)
    body = text[start:end if end > 0 else len(text)]
    modules = "|".join(header[:-2] for header in api["headers"])
    new = re.sub(rf"^### ({modules})\n\n(.+?)\n\n`muslin_(?:.|\n)*?\.\n", part, body, flags=re.M)
    return text.replace(body, new)


def paired(old: List[str], new: List[str]) -> Dict[str, str]:
    """What stands in a name's place in the other list: the same name, or the one where equally many have changed."""
    pairs = {}
    for kind, a, b, c, d in difflib.SequenceMatcher(None, old, new, autojunk=False).get_opcodes():
        if kind == "equal" or (kind == "replace" and b - a == d - c):
            pairs.update(zip(old[a:b], new[c:d]))
    return pairs


def renamed(old: Api, new: Api) -> Iterator[Tuple[str, str]]:
    """Names that are gone, beside what stands in their place now, or nothing: to be looked through by a person."""
    exist = symbols(new)
    for part in ("constants", "handles", "enums", "structs", "functions"):
        now = {row["name"]: row for row in new[part]}
        for was, name in paired_by_header(old[part], new[part]):
            if was["name"] not in exist:
                yield was["name"], name
            inner = "values" if part == "enums" else "members"
            if inner not in was:
                continue
            words, others = (words_of(row[inner]) if row else [] for row in (was, now.get(name)))
            for word, other in {**dict.fromkeys(words, ""), **paired(words, others)}.items():
                if word != other and word not in others and not word.startswith("pad"):
                    prefix, place = ("", "") if part == "enums" else (f"{was['name']}.", f"{name}.")
                    if part != "enums" or word not in exist:
                        yield prefix + word, place + other if other else ""


def words_of(inner: Any) -> List[str]:
    return list(inner) if isinstance(inner, dict) else [member["name"] for member in inner]


def paired_by_header(old: List[Api], new: List[Api]) -> Iterator[Tuple[Api, str]]:
    found = []
    for header in dict.fromkeys(row["header"] for row in old):
        rows = [row for row in old if row["header"] == header]
        pairs = paired([row["name"] for row in rows], [row["name"] for row in new if row["header"] == header])
        found += [(row, pairs.get(row["name"], "")) for row in rows]
    return iter(found)


def main(arguments: List[str]) -> int:
    api = read()
    if arguments[:1] == ["--renamed"]:
        for was, now in renamed(json.loads(Path(arguments[1]).read_text(encoding="utf-8")), api):
            print(f"| `{was}` | " + (f"`{now}`" if now else "gone") + " |")
        return 0
    text = LOG.read_text(encoding="utf-8")
    if arguments == ["--write"]:
        LOG.write_text(write(text, api), encoding="utf-8")
        return 0
    wrong = list(faults(text, api)) + [f"this should be wrong: {what}" for what, broken in controls(text)
                                       if not list(faults(broken, api))]
    print("\n".join(wrong + [f"{len(set(named(text)))} names, {len(wrong)} wrong"]))
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
