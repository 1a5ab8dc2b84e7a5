"""``python -m tests.support.guided_fuzz case|line FOLDER ...``: bytes guided by the code they reach.

``case`` tries them as a case file, ``line`` as a figure with its unit and as a gauge reading.
FOLDER holds the first inputs; what follows goes to libFuzzer.
"""

from __future__ import annotations

import sys
from importlib import import_module


def main() -> None:
    """Hand over to the fuzzer, which ends the process; our modules are loaded under its eye."""
    atheris = import_module("atheris")

    with atheris.instrument_imports(include=["diagnose", "knowledge.units", "tomllib"]):
        from tests.hostile import test_fuzz_cases as target

    def case(data: bytes) -> None:
        target.read(data)

    def line(data: bytes) -> None:
        target.read_line(data.decode("utf-8", "replace"))

    atheris.Setup([sys.argv[0], *sys.argv[2:]], {"case": case, "line": line}[sys.argv[1]])
    atheris.Fuzz()


if __name__ == "__main__":
    main()
