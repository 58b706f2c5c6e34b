"""Builds what pyproject.toml cannot describe: the compiled kernels, and the rule packs in their checked form."""

from __future__ import annotations

import sys

from Cython.Build import cythonize
from setuptools import Extension, setup

from pathlib import Path

KERNELS = ["gclint.program.scan", "gclint.motion.modal", "gclint.stock.sweep"]
KERNELS = [k for k in KERNELS if Path(k.replace(".", "/") + ".py").exists()]  # while the rooms are being built

# Contracted multiply-adds would make the result depend on the machine's processor.
flags = ["/O2"] if sys.platform == "win32" else ["-O3", "-ffp-contract=off", "-fno-math-errno"]

setup(
    ext_modules=cythonize(
        [Extension(name, [name.replace(".", "/") + ".py"], extra_compile_args=flags) for name in KERNELS],
        language_level=3,
        compiler_directives={"boundscheck": True, "wraparound": False, "cdivision": True, "initializedcheck": False},
        build_dir="build/kernels",
    ),
)
