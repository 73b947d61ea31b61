# SPDX-License-Identifier: MIT
"""What pyproject.toml cannot say: a wheel with a copy of the library inside is for one platform and any Python 3."""
from pathlib import Path

from setuptools import setup
from wheel.bdist_wheel import bdist_wheel

PACKAGE = Path(__file__).resolve().parent / "muslin"
LIBRARIES = ("libmuslin.so.*", "libmuslin.*.dylib", "muslin-*.dll")


class Wheel(bdist_wheel):
    """Pure without a library inside. With one: not bound to this Python, as ctypes reads the library."""

    def finalize_options(self):
        super().finalize_options()
        self.root_is_pure = not any(list(PACKAGE.glob(pattern)) for pattern in LIBRARIES)

    def get_tag(self):
        python, abi, platform = super().get_tag()
        return (python, abi, platform) if self.root_is_pure else ("py3", "none", platform)


setup(cmdclass={"bdist_wheel": Wheel})
