# SPDX-License-Identifier: MIT
"""The headers' words in JavaScript's terms: names as JavaScript has them, and nothing of what only C does."""
import re
from typing import Any, Callable, Dict, List, Optional, Set, Tuple

from described import Api, Record, flag_keyword, without_struct

# Statuses of C's own mechanics: the package sees to it that none of them comes.
NEVER = {"MUSLIN_ERR_NULL", "MUSLIN_ERR_STRUCT_SIZE", "MUSLIN_ERR_BUFFER", "MUSLIN_ERR_FLAGS"}
# A sentence with one of these speaks of C alone,
OF_C = re.compile(r"\b(row_size|capacity|sizeof|cap|buf|[Aa]llocator|ask-then-fill|libc|outlives?|pointers?|"
                  r"\*?need)\b|\(void\)|\(null\)|\bnull output\b")
# ... and an example with one of these is written in C.
CODE = re.compile(r"&\w|->|puts\(|\); ?\w|; ?\w+\(|\+\+|\bstruct |\w+\.\w+ = |\bsizeof\b")
NEVER_ONE = r"\b(?:%s|the struct statuses)\b" % "|".join(sorted(NEVER))
NEVER_HERE = rf"{NEVER_ONE}(?:(?:, | and |, and ){NEVER_ONE})*"
# What is said of C within others.
BITS_OF_C: List[Tuple[str, Any]] = [
    (rf"{NEVER_HERE}: [^.;]*(?:[.;]|$)", ""),
    (rf"{NEVER_HERE}(?: \([^)]*\)| (?:for|when|where|of) [^.;,]*)?(?:[,;] (?:and )?|(?=[.]))", ""),
    (r"(?:Statuses: )?[,;]? ?(?<=[ :])[.]$", ""),
    (r"[,;]? ?\(?\b[Aa]sk[,-] ?then[- ]fill\)?[,;.]?", ""), (r"\basks? then fills?\b", "asks"),
    (r"\s*\b[Nn]ever null\b[.;]?", ""), (r"\b(may|can) (then )?be null\b", r"\1 be left out"),
    (r"\bnull means\b", "left out means"), (r"\bterminated text\b", "text"), (r"\bint64_t\b", "whole number"),
    (r"\bMUSLIN_(\w+)_INIT\b", lambda found: f"muslin_{found[1].lower()}_init()"),
    (r"\bstock_n rows\b", "rows"), (r"\bstock_n 0\b", "no stock"),
    (r"\*(\w)", r"\1"), (r"\bmuslin_status\b", "an error"),
    (r"\bmuslin_(len|id)\b", lambda found: {"len": "Length", "id": "Id"}[found[1]])]
SENTENCE_END = re.compile(r"(?<=[^.\d][.])\s+(?=[A-Z\"'(])")
ABBREVIATED = re.compile(r"\b(e\.g|i\.e|cf|vs|No)\.$")


def sentences(text: str) -> List[str]:
    parts: List[str] = []
    for part in SENTENCE_END.split(text):
        if parts and ABBREVIATED.search(parts[-1]):
            parts[-1] += " " + part
        else:
            parts.append(part)
    return parts


class Wording:
    """Names of the API in C, and what JavaScript calls them."""

    def __init__(self, api: Api, small: Callable[[str], str], large: Callable[[str], str],
                 choices: Callable[[Record], Dict[str, int]], error_class: Callable[[str], str]) -> None:
        self.api, self.small, self.large = api, small, large
        self.names: Dict[str, str] = {}
        self.short: Dict[str, Dict[str, Set[str]]] = {}  # header -> the end of a name -> what it may be
        self.members: Set[str] = {"work_limit"}
        self.statuses = {name: error_class(name) for name in api.enums["muslin_status_code"]["values"]}
        self.add_enums(choices)
        self.add_structs()
        self.add_functions()
        self.names.update(self.statuses)

    def add(self, header: str, c_name: str, js_name: str) -> None:
        self.names.setdefault(c_name, js_name)
        words = c_name.split("_")
        for at in range(1, len(words)):
            self.short.setdefault(header, {}).setdefault("_".join(words[at:]), set()).add(js_name)

    def add_enums(self, choices: Callable[[Record], Dict[str, int]]) -> None:
        for name, enum in self.api.enums.items():
            self.names[name] = self.large(re.sub(r"_code$", "", name))
            for c_name, word in zip(enum["values"], choices(enum)):
                self.add(enum["header"], c_name, f'"{word}"')

    def add_structs(self) -> None:
        for name, struct in self.api.structs.items():
            self.names[name] = self.large(name)
            self.members |= {member["name"] for member in struct["members"] if "_" in member["name"]}
            for flag in struct.get("flags", []):
                self.add(struct["header"], flag, self.small(flag_keyword(flag, name)))
        for name in self.api.constants:
            self.names.setdefault(name, f"constants.{name[len('MUSLIN_'):]}")

    def add_functions(self) -> None:
        for function in self.api.data["functions"]:
            name = function["name"]
            self.members |= {one["name"] for one in function["arguments"] if "_" in one["name"]}
            self.names[name] = self.small(name[:-len("_init")] if name.endswith("_spec_init") else name)
        for name, handle in self.api.handles.items():
            self.names[name] = self.large(name)
            start = handle["free"][:-len("free")]
            for function in self.api.data["functions"]:
                if function["name"].startswith(start) and self.is_method(function, handle):
                    own = self.small(function["name"][len(start):])
                    self.names[function["name"]] = f"{self.large(name)}.{own}"
            self.names[handle["create"]] = f"new {self.large(name)}"

    @staticmethod
    def is_method(function: Record, handle: Record) -> bool:
        first = function["arguments"][0] if function["arguments"] else {"type": ""}
        return bool(without_struct(first["type"]) == handle["name"])

    # ---- what is said ----

    def said(self, text: str, header: str) -> str:
        """A text with JavaScript's names, and without what only C does."""
        kept = [sentence for sentence in sentences(text) if not OF_C.search(sentence)
                and not (sentence.startswith("Example:") and CODE.search(sentence))]
        renamed = [self.renamed(sentence, header) for sentence in kept]
        return " ".join(sentence for sentence in renamed if re.search(r"\w", sentence))

    def renamed(self, text: str, header: str) -> str:
        text = re.sub(r"\b(MUSLIN_ERR_\w+)((?:(?:, | and | or )_[A-Z]\w+)+)", self.full_statuses, text)
        for of_c, of_js in BITS_OF_C:
            text = re.sub(of_c, of_js, text)
        text = re.sub(r"\b(?:struct|enum) (?=muslin_)", "", text)
        text = re.sub(r"\b(MUSLIN_[A-Z0-9_]+[A-Z0-9]|muslin_[a-z0-9_]+[a-z0-9])\b",
                      lambda found: self.names.get(found[0], found[0]), text)
        text = re.sub(r"\b[A-Z][A-Z0-9]*(?:_[A-Z0-9]+)*\b(?!\.[A-Z_])",
                      lambda found: self.shortened(found, header), text)
        return re.sub(r"\b[a-z0-9]+(?:_[a-z0-9]+)+\b",
                      lambda found: self.small(found[0]) if found[0] in self.members else found[0], text).strip()

    @staticmethod
    def full_statuses(found: "re.Match[str]") -> str:
        return found[1] + re.sub(r"\b_([A-Z])", r"MUSLIN_ERR_\1", found[2])

    def shortened(self, found: "re.Match[str]", header: str) -> str:
        """JOINED of cutplan.h is "joined", where it can be nothing else. Letters of a formula stay."""
        before = found.string[found.start() - 1:found.start()]
        if len(found[0]) < 3 or before in ("_", ".", '"'):
            return found[0]
        own = self.short.get(header, {}).get(found[0], set())
        may_be = own or {name for of in self.short.values() for name in of.get(found[0], ())}
        if len(may_be) > 1:  # a choice and a flag of one name
            may_be = {name for name in may_be if name.strip('"').lower() == found[0].replace("_", "").lower()}
        return next(iter(may_be)) if len(may_be) == 1 else found[0]

    # ---- of a function ----

    def subject(self, function: Record) -> Optional[str]:
        """Whose comment is a function's: its own, its spec's, or that of the functions that it continues."""
        name = function["name"]
        spec = next((without_struct(one["type"]) for one in function["arguments"] if one["name"] == "spec"), "")
        names = [other["name"] for other in self.api.data["functions"]]
        before = self.api.words.before
        return next((one for one in (name, spec, *names[:names.index(name)][::-1]) if one in before), None)

    def errors(self, text: str) -> List[str]:
        """The classes of the statuses that a comment names, without those that cannot come."""
        text = re.sub(r"\b(MUSLIN_ERR_\w+)((?:(?:, | and | or )_[A-Z]\w+)+)", self.full_statuses, text)
        named = dict.fromkeys(re.findall(r"\bMUSLIN_ERR_\w+", text))
        return [self.statuses[name] for name in named if name in self.statuses and name not in NEVER]
