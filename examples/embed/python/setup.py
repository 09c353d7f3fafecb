"""Builds the library with cargo and puts it beside the module.

`pip install` copies this folder alone, or none: the crate is looked for where this folder stands, or where
SHANKLINE_LIBRARY names a library that is built already.
"""

import os
import shutil
import subprocess
import sys
from pathlib import Path

from setuptools import setup
from setuptools.command.build_py import build_py

try:
    from setuptools.command.bdist_wheel import bdist_wheel
except ImportError:  # before setuptools 70 it came with another package
    from wheel.bdist_wheel import bdist_wheel

NAME = {"win32": "shankline_embed.dll", "darwin": "libshankline_embed.dylib"}.get(sys.platform, "libshankline_embed.so")
CRATE = Path(__file__).resolve().parent.parent


def library() -> Path:
    """The library, built if nobody has named one."""
    if "SHANKLINE_LIBRARY" in os.environ:
        return Path(os.environ["SHANKLINE_LIBRARY"]).resolve()
    build = ["cargo", "build", "--release", "--locked", "--message-format", "short"]
    subprocess.run(build, cwd=CRATE, check=True)
    target = Path(os.environ.get("CARGO_TARGET_DIR", CRATE / "target"))
    return CRATE / target / "release" / NAME


class WithLibrary(build_py):
    """The module, and the library beside it."""

    def run(self) -> None:
        super().run()
        folder = Path(self.build_lib) / "shankline"
        folder.mkdir(parents=True, exist_ok=True)
        shutil.copy2(library(), folder / NAME)


class ForThisMachine(bdist_wheel):
    """A wheel for any Python 3, on this kind of machine only."""

    def finalize_options(self) -> None:
        super().finalize_options()
        self.root_is_pure = False

    def get_tag(self):
        return "py3", "none", super().get_tag()[2]


setup(cmdclass={"build_py": WithLibrary, "bdist_wheel": ForThisMachine})
