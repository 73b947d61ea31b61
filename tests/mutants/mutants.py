"""mutants.py - the small changes that tests must notice, in one file of lib/, found in what clang reads.

A mutant is known by its file, its function and its changed line, with the change as [old => new], so that it stays the
same one when lines move; of several alike in one function the second ends in #2.

SPDX-License-Identifier: MIT"""
import collections
import pathlib
import re

from clang.cindex import Config, CursorKind, Index, TypeKind

Config.set_library_file("libclang-14.so.1")

# `new` for the text from `start` to `end`; `outer` is the expression or the step that is changed by it.
Mutant = collections.namedtuple("Mutant", "key file function line text start end new outer is_step")

OPERATORS = {
    "<": ("<=", ">="), "<=": ("<", ">"), ">": (">=", "<="), ">=": (">", "<"), "==": ("!=",), "!=": ("==",),
    "&&": ("||",), "||": ("&&",),
    "+": ("-",), "-": ("+",), "*": ("/",), "/": ("*",), "%": ("*",), "<<": (">>",), ">>": ("<<",),
    "&": ("|",), "|": ("&",), "^": ("&",),
    "=": (), "+=": ("-=",), "-=": ("+=",), "*=": ("/=",), "/=": ("*=",), "%=": ("*=",), "<<=": (">>=",),
    ">>=": ("<<=",), "&=": ("|=",), "|=": ("&=",), "^=": ("&=",),
    "++": ("--",), "--": ("++",), "!": ("",), "~": ("",),
}
COMPARISONS = ("<", "<=", ">", ">=", "==", "!=")
BODIES = (CursorKind.COMPOUND_STMT, CursorKind.CASE_STMT, CursorKind.DEFAULT_STMT)
STEPS = (CursorKind.CALL_EXPR, CursorKind.UNARY_OPERATOR, CursorKind.BINARY_OPERATOR,
         CursorKind.COMPOUND_ASSIGNMENT_OPERATOR, CursorKind.BREAK_STMT, CursorKind.CONTINUE_STMT)
WHOLE = (TypeKind.INT, TypeKind.UINT, TypeKind.LONG, TypeKind.ULONG, TypeKind.UCHAR, TypeKind.USHORT)
INTEGER = re.compile(r"(0[xX][0-9a-fA-F]+|[0-9]+)([uUlL]*)$")


class Reader:
    """Finds the changes in one source: (function, start, end, new text), and the expression or step that is changed."""

    def __init__(self, path):
        self.path = path
        self.text = pathlib.Path(path).read_bytes().decode("latin-1")  # clang counts bytes
        self.changes = []

    def add(self, function, start, end, new, outer=None, is_step=False):
        self.changes.append((function, start, end, new, outer or (start, end), is_step))

    def operator(self, function, outer, left_end, right_start):
        """The operator between two operands; none where a macro hides it."""
        gap = re.sub(r"/\*.*?\*/", lambda comment: " " * len(comment.group()), self.text[left_end:right_start],
                     flags=re.S)
        found = re.search(r"[^\s()]+", gap)
        if found and found.group() in OPERATORS:
            for new in OPERATORS[found.group()]:
                self.add(function, left_end + found.start(), left_end + found.end(), new, outer)

    def expression(self, cursor, children, function):
        start, end = cursor.extent.start.offset, cursor.extent.end.offset
        if cursor.kind in (CursorKind.BINARY_OPERATOR, CursorKind.COMPOUND_ASSIGNMENT_OPERATOR):
            self.operator(function, (start, end), children[0].extent.end.offset, children[1].extent.start.offset)
        elif cursor.kind == CursorKind.UNARY_OPERATOR:
            for at in (start, end - 2):  # before its operand, or behind
                sign = re.match(r"\+\+|--|[!~]", self.text[at:end])
                if sign:
                    self.add(function, at, at + sign.end(), OPERATORS[sign.group()][0], (start, end))
                    break
            if re.match(r"-[^-]", self.text[start:end]):
                self.add(function, start, start + 1, "", (start, end))
        elif cursor.kind == CursorKind.INTEGER_LITERAL:
            number = INTEGER.match(self.text[start:end])
            # A 0 in a table is nothing of something, and { 0 } a struct that holds nothing yet.
            is_nothing = self.text[start:end] == "0" and (not function or self.text[start - 2:end + 2] == "{ 0 }")
            if number and not is_nothing:
                value = int(number.group(1), 0)
                if self.text[start - 1:end] != "-1":  # -1 mostly says that there is none, and so would -2
                    self.add(function, start, end, f"{value + 1}{number.group(2)}")
                self.add(function, start, end, f"{value - 1}{number.group(2)}" if value else "(-1)")

    def condition(self, cursor, function):
        """Negated; a comparison has its contrary already."""
        start, end = cursor.extent.start.offset, cursor.extent.end.offset
        if cursor.kind == CursorKind.BINARY_OPERATOR:
            left, right = cursor.get_children()
            between = self.text[left.extent.end.offset:right.extent.start.offset]
            if between.strip() in COMPARISONS:
                return
        self.add(function, start, end, f"!({self.text[start:end]})")

    def statement(self, cursor, children, function):
        start, end = cursor.extent.start.offset, cursor.extent.end.offset
        if cursor.kind in STEPS or (cursor.kind == CursorKind.RETURN_STMT and not children):
            self.add(function, start, end, "", is_step=True)
        elif cursor.kind == CursorKind.RETURN_STMT:
            value = children[0]
            at, to = value.extent.start.offset, value.extent.end.offset
            if value.type.get_canonical().kind in WHOLE and not INTEGER.match(self.text[at:to]):
                self.add(function, at, to, f"!({self.text[at:to]})")

    def visit(self, root):
        stack = [(root, None, None)]
        while stack:
            cursor, parent, function = stack.pop()
            if cursor.kind == CursorKind.FUNCTION_DECL:
                if not cursor.is_definition():
                    continue
                function = cursor.spelling
            children = list(cursor.get_children())
            if parent is not None and self.is_written_here(cursor):
                self.expression(cursor, children, function)
                if self.is_step(cursor, parent):
                    self.statement(cursor, children, function)
                if parent.kind in (CursorKind.IF_STMT, CursorKind.WHILE_STMT, CursorKind.CONDITIONAL_OPERATOR) and \
                        cursor == next(parent.get_children()):
                    self.condition(cursor, function)
            stack += [(child, cursor, function) for child in children]

    def is_written_here(self, cursor):
        """Not what a macro stands for: there clang's place is the macro's name."""
        start, end = cursor.extent.start.offset, cursor.extent.end.offset
        return start < end and re.match(r"\w*", self.text[start:end]).group() not in self.macros

    @staticmethod
    def is_step(cursor, parent):
        if parent.kind in BODIES:
            return cursor != next(parent.get_children()) or parent.kind == CursorKind.COMPOUND_STMT
        if parent.kind in (CursorKind.IF_STMT, CursorKind.FOR_STMT, CursorKind.WHILE_STMT):
            parts = list(parent.get_children())
            return cursor in (parts[1:] if parent.kind == CursorKind.IF_STMT else parts[-1:])
        return False

    def read(self, arguments):
        unit = Index.create().parse(str(self.path), args=arguments, options=1)  # 1: macros are listed too
        errors = [str(note) for note in unit.diagnostics if note.severity >= 3]
        if errors:
            raise SystemExit("\n".join(errors))
        here = [cursor for cursor in unit.cursor.get_children()
                if cursor.location.file and cursor.location.file.name == str(self.path)]
        self.macros = {cursor.spelling for cursor in unit.cursor.get_children()
                       if cursor.kind == CursorKind.MACRO_DEFINITION}
        for cursor in here:
            if cursor.kind in (CursorKind.FUNCTION_DECL, CursorKind.VAR_DECL):
                self.visit(cursor)
        return self.changes


def squeezed(text):
    return " ".join(text.split())


def mutants(path, arguments):
    """All mutants of a file, in the order of its text."""
    reader = Reader(path)
    seen = collections.Counter()
    result = []
    changes = {change[:4]: change for change in reader.read(arguments)}  # *p++ is found twice: the last is the inner
    for function, start, end, new, outer, is_step in sorted(changes.values(), key=lambda change: change[1:4]):
        text = reader.text
        first, last = text.rfind("\n", 0, start) + 1, text.find("\n", end)
        line = squeezed(f"{text[first:start]}[{text[start:end]} => {new}]{text[end:last]}")
        name = (pathlib.Path(path).name, function or "-", line)
        seen[name] += 1
        key = "\t".join(name) + (f" #{seen[name]}" if seen[name] > 1 else "")
        result.append(Mutant(key, path, function, text.count("\n", 0, start) + 1, text, start, end, new,
                             outer, is_step))
    return result


def mutated(mutant):
    return (mutant.text[:mutant.start] + mutant.new + mutant.text[mutant.end:]).encode("latin-1")
