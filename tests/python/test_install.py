# SPDX-License-Identifier: MIT
"""The package installs from the tree without a network."""
import importlib.util
import json
import os
import shutil
import subprocess
import sys
from pathlib import Path
from typing import List

import pytest

from conftest import PACKAGE, ROOT
from muslin._library import file_name

NEEDED = ["pip", "setuptools", "wheel"]
missing = [name for name in NEEDED if importlib.util.find_spec(name) is None]
pytestmark = pytest.mark.skipif(bool(missing), reason=f"not installed: {', '.join(missing)}")


def run(command: List[str], **environment: str) -> str:
    kept = {name: value for name, value in os.environ.items() if name not in ("MUSLIN_LIBRARY", "PYTHONPATH")}
    done = subprocess.run(command, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, encoding="utf-8", check=False,
                          env={**kept, "PYTHONDONTWRITEBYTECODE": "1", **environment})
    assert done.returncode == 0, done.stdout
    return done.stdout.strip()


def install(source: Path, target: Path) -> None:
    run([sys.executable, "-m", "pip", "install", "--quiet", "--no-build-isolation", "--no-index",
         "--disable-pip-version-check", "--root-user-action=ignore", "--target", str(target), str(source)])


@pytest.fixture(scope="module")
def source(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A copy to build in, because setuptools leaves its build beside the sources."""
    copy = tmp_path_factory.mktemp("source") / "python"
    shutil.copytree(PACKAGE, copy, ignore=shutil.ignore_patterns("__pycache__", "build", "*.egg-info"))
    return copy


@pytest.fixture(scope="module")
def target(source: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    place = tmp_path_factory.mktemp("installed")
    install(source, place)
    return place


def test_the_installed_package_works(target: Path) -> None:
    program = "import muslin; print(muslin.__file__); print(muslin.seam_row_equal('2 1/2 in', 6).unfinished)"
    where, answer = run([sys.executable, "-c", program], PYTHONPATH=str(target),
                        MUSLIN_LIBRARY=os.environ["MUSLIN_LIBRARY"]).split("\n")
    assert Path(where).parent == target / "muslin"
    assert answer == "12 1/2 in"


def test_all_modules_and_the_mark_of_types_are_installed(target: Path) -> None:
    shipped = {path.name for path in (PACKAGE / "muslin").iterdir() if path.suffix == ".py" or path.name == "py.typed"}
    assert {path.name for path in (target / "muslin").iterdir()} - {"__pycache__"} == shipped


def test_the_installed_version_is_the_headers(target: Path) -> None:
    version = json.loads((ROOT / "lib" / "abi" / "api.json").read_text(encoding="utf-8"))["version"]
    assert (target / f"muslin-{version}.dist-info").is_dir()


def test_a_library_put_into_the_package_is_installed_with_it(source: Path, tmp_path: Path) -> None:
    with_library = tmp_path / "python"
    shutil.copytree(source, with_library, ignore=shutil.ignore_patterns("build", "*.egg-info"))
    shutil.copy(os.environ["MUSLIN_LIBRARY"], with_library / "muslin" / file_name(sys.platform))
    install(with_library, tmp_path / "installed")
    found = run([sys.executable, "-c", "import muslin; print(muslin.library._name)"],
                PYTHONPATH=str(tmp_path / "installed"))
    assert Path(found) == tmp_path / "installed" / "muslin" / file_name(sys.platform)
