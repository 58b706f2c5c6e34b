"""Builds what pyproject.toml cannot describe: the compiled kernels, and the rule packs in their checked form."""

from __future__ import annotations

import os
import re
import sys
from pathlib import Path

from Cython.Build import cythonize
from setuptools import Extension, find_packages, setup
from setuptools.command.build_py import build_py

HERE = Path(__file__).parent

# Contracted multiply-adds would make the result depend on the machine's processor. Nothing of the folder that a kernel
# was built in goes into it, and no symbols that only a debugger reads: two builds are alike, a sixth of the size.
# A build for a sanitizer keeps them.
if sys.platform == "win32":
    flags, linked = ["/O2"], []
else:
    flags, linked = ["-O3", "-ffp-contract=off", "-fno-math-errno", "-fno-trapping-math"], []
    if "-fsanitize" not in os.environ.get("CFLAGS", ""):
        flags += ["-g0", f"-ffile-prefix-map={HERE}=."]
        linked = ["-Wl,-x"] if sys.platform == "darwin" else ["-Wl,-s", "-Wl,--build-id=none"]


def described() -> str:
    """The README as an index shows it, where links and pictures have to name a whole address."""
    sys.path.insert(0, str(HERE))
    from gclint import HOME

    text = (HERE / "README.md").read_text(encoding="utf-8")
    return re.sub(r"\]\((?![a-z]+:|#)([^)\s]+)\)", rf"]({HOME}/\1)", text)


def extensions() -> list[Extension]:
    """The kernels, as the package's own sources name them."""
    sys.path.insert(0, str(HERE))  # an isolated build does not look in the source folder
    from gclint.kernels import kernels

    names = kernels(HERE / "gclint")
    return [
        Extension(name, [name.replace(".", "/") + ".py"], extra_compile_args=flags, extra_link_args=linked)
        for name in names
    ]


class BuildWithRules(build_py):
    """Also checks the shipped rule packs and writes them as gclint/rules_compiled.json: a check needs no parser."""

    def compiled_rules(self) -> Path:
        package = HERE / "gclint" if self.editable_mode else Path(self.build_lib) / "gclint"
        return package / "rules_compiled.json"

    def run(self) -> None:
        super().run()
        from gclint.packs.shipped_packs import compile_shipped

        target = self.compiled_rules()
        target.parent.mkdir(parents=True, exist_ok=True)
        target.write_bytes(compile_shipped(HERE / "rules"))

    def get_outputs(self, include_bytecode: bool = True) -> list[str]:
        return [*super().get_outputs(include_bytecode), str(self.compiled_rules())]


setup(
    long_description=described(),
    long_description_content_type="text/markdown",
    packages=[*find_packages(include=["gclint", "gclint.*"]), "gclint.rules"],  # the last one is data: the folder rules
    cmdclass={"build_py": BuildWithRules},
    options={"build_ext": {"parallel": os.cpu_count() or 1}},  # the kernels side by side: half the wait of an install
    ext_modules=cythonize(
        extensions(),
        language_level=3,
        compiler_directives={"boundscheck": True, "wraparound": False, "cdivision": True, "initializedcheck": False},
        build_dir="build/kernels",
    ),
)
