# SPDX-License-Identifier: MIT
"""What is generated is current, and the types are right."""
import importlib.util
import re
import shutil
import subprocess
import sys
from pathlib import Path
from typing import List

import pytest

from conftest import PACKAGE, ROOT


def said(command: List[str], at: Path = ROOT) -> str:
    """What a command says, and how it ends."""
    done = subprocess.run(command, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, encoding="utf-8", check=False,
                          cwd=at)
    return done.stdout + (f"ended with {done.returncode}" if done.returncode else "")


def test_the_description_of_the_api_is_current() -> None:
    pytest.importorskip("clang.cindex", reason="python3-clang-14 is not installed")
    assert said([sys.executable, "-B", str(ROOT / "tests" / "abi" / "describe_api.py"), "--check"]) == ""


def test_the_generated_modules_are_current() -> None:
    assert said([sys.executable, "-B", str(PACKAGE / "generate.py"), "--check"]) == ""


def test_the_generator_names_what_is_not_current(tmp_path: Path) -> None:
    copy = tmp_path / "bindings" / "python"
    shutil.copytree(PACKAGE, copy, ignore=shutil.ignore_patterns("__pycache__", "build", "*.egg-info"))
    shutil.copy(PACKAGE.parent / "described.py", copy.parent)
    shutil.copytree(ROOT / "include", tmp_path / "include")
    shutil.copytree(ROOT / "lib" / "abi", tmp_path / "lib" / "abi")
    check = [sys.executable, "-B", str(copy / "generate.py"), "--check"]
    assert said(check) == ""
    with open(copy / "muslin" / "calls.py", "a", encoding="utf-8") as calls:
        calls.write("\n")
    assert "not current: calls.py" in said(check)
    said([sys.executable, "-B", str(copy / "generate.py")])
    assert said(check) == ""


def test_the_programs_of_the_readme_print_what_they_say() -> None:
    """The strip set by common practice; the patch is 152.4 mm and two seams of 6 mm. Nine blocks of 6 in, each of five
    blue and four white patches."""
    text = (PACKAGE / "README.md").read_text(encoding="utf-8")
    blocks = re.findall(r"^```\w+\n(.*?)^```$", text, re.S | re.M)
    assert len(blocks) == 4
    for program, printed in zip(blocks[::2], blocks[1::2]):
        assert said([sys.executable, "-B", "-c", program], at=PACKAGE) == printed


SAMPLE = '''
from fractions import Fraction
from typing import List, Tuple
import muslin
from muslin import Join, Length, Warning

plan: muslin.Stripquilt = muslin.stripquilt_plan(strips=42, strip_length="42 in", from_one_end=True)
width: Length = plan.top_finished_width + Length.parse("1 in") * 2 - width_of(plan)
ratio: Fraction = width / Length(8128)
half: Length = width / 2
said: Tuple[Warning, ...] = plan.warnings
rows: List[muslin.Backing] = muslin.backing_layouts(quilt_width=width, quilt_length="60 in")
strips: int = muslin.run_plan(length=width, join=Join.DIAGONAL).strips
with muslin.Quilt(allowance="6 mm") as quilt:
    blue: muslin.Id = quilt.fabric("blue")
    block: muslin.Id = quilt.join([quilt.patch(fabric=blue)], axis=muslin.Axis.DOWN)
    with muslin.Solution(quilt, block, [muslin.SolutionValueSpec(blue, "42 in")], tops=2) as solution:
        cuts: List[muslin.SolutionCut] = solution.cuts()
        children: List[muslin.Id] = quilt.children(block)
        corners: List[Tuple[muslin.OutlineCorner, ...]] = [
            outline.corners for outline in solution.outlines(block, muslin.Stage.RAW)]
    plan_of: muslin.PressingTotal = muslin.Pressing(solution, work_limit=5).totals()
'''


def mypy(*arguments: str, cache: Path) -> str:
    if importlib.util.find_spec("mypy") is None:
        pytest.skip("mypy is not installed")
    return said([sys.executable, "-m", "mypy", "--strict", "--no-error-summary", "--cache-dir", str(cache), *arguments],
                at=PACKAGE)


def test_the_package_is_strictly_typed(tmp_path: Path) -> None:
    assert mypy("muslin", "generate.py", "../described.py", cache=tmp_path) == ""


def test_the_generator_for_cpp_is_too(tmp_path: Path) -> None:
    assert mypy("../cpp/generate.py", "../described.py", "../../tests/cpp/every_call.py", cache=tmp_path) == ""


def test_the_types_serve_whoever_uses_them(tmp_path: Path) -> None:
    good = tmp_path / "good.py"
    good.write_text(SAMPLE.replace("width_of(plan)", "plan.set_finished"), encoding="utf-8")
    assert mypy(str(good), cache=tmp_path) == ""


WRONG = ["muslin.stripquilt_plan(strips=42.0)", "muslin.stripset_yield(segment_cut=6)", "muslin.run_plan(join=3)",
         "Length(1) + 1", "Length(1) * 0.5", "Length.from_float(0.1)", "muslin.seam_row_equal('1 in', 2).pieces.ticks",
         "muslin.seam_row_equal('1 in', 2).pieces = 3", "muslin.Quilt().fabric(1)", "muslin.Solution(muslin.Quilt())",
         "muslin.Pressing(muslin.Quilt())", "muslin.Quilt().fixed(8128)"]


def test_the_types_find_what_is_wrong(tmp_path: Path) -> None:
    bad = tmp_path / "bad.py"
    bad.write_text("\n".join(["import muslin", "from muslin import Length", *WRONG, ""]), encoding="utf-8")
    found = mypy(str(bad), cache=tmp_path)
    assert [line for at, line in enumerate(WRONG, 3) if f"bad.py:{at}: error" not in found] == []
