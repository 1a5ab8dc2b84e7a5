"""The interview with a simulated owner; ``python -m tests.studies.interview [--few]`` prints figures.

The owner knows the coded facts of each confirmed case and answers every prompt. Before the
interview was ordered as on the telephone, the same owner was asked one yes/no after another:
``BEFORE``, measured on the same cases by the same rules.
"""

from __future__ import annotations

import sys
from collections.abc import Sequence
from pathlib import Path
from statistics import fmean
from tempfile import TemporaryDirectory

from tests.confirmed.scoring import FIRST, FURTHER, case_files, gold, kept_aside
from tests.support.owner import MOST, Owner, Talk, talk

WITHIN = (3, 5, 10, 20)  #: prompts
#: hits within 3, 5, 10, 20 prompts, mean prompts, share of facts, presuming prompts
BEFORE = {
    ("developed", True): (0.156, 0.211, 0.422, 0.523, 13.1, 0.358, 70),
    ("developed", False): (0.156, 0.211, 0.349, 0.468, 14.0, 0.356, 16),
    ("kept aside", True): (0.222, 0.259, 0.370, 0.556, 13.1, 0.346, 24),
    ("kept aside", False): (0.222, 0.259, 0.352, 0.519, 13.8, 0.330, 4),
}


def cases(half: str) -> list[Path]:
    """The confirmed cases of a half, doubtful ones left out; the first 51 are developed on."""
    paths = [*case_files(FIRST), *case_files(FURTHER)]
    known = [p for p in paths if not gold()[p.stem].get("doubtful")]
    aside = {p for p in known if p.parent == FURTHER and kept_aside(p.stem)}
    return [p for p in known if (p in aside) == (half == "kept aside")]


def talks(paths: Sequence[Path], tells: bool) -> list[Talk]:
    """An interview over each case."""
    with TemporaryDirectory() as folder:
        return [talk(Owner(p, tells), Path(folder) / p.name) for p in paths]


def figures(done: Sequence[Talk]) -> tuple[float, ...]:
    """As in ``BEFORE``; an interview without a hit counts as ``MOST`` prompts."""
    hits = [fmean(bool(t.hit_at and t.hit_at <= n) for t in done) for n in WITHIN]
    prompts = fmean(t.hit_at or MOST for t in done)
    return (*hits, prompts, fmean(t.share for t in done), sum(t.presuming for t in done))


def main(few: bool) -> None:
    """Print one row for each half and each way to begin, before and after."""
    heads = [f"<= {n}" for n in WITHIN]
    print(f"{'right cause among three within':44}" + "".join(f"{h:>7}" for h in heads), end="")
    print(f"{'prompts':>9}{'facts':>7}{'presume':>9}{'ended':>7}")
    for (half, tells), before in BEFORE.items():
        name = f"{half}, {'his story first' if tells else 'no story'}"
        chosen = cases(half)[:: 4 if few else 1]
        done = talks(chosen, tells)
        ended = f"{fmean(t.ended for t in done):7.2f}"
        for when, row, end in (("before", before, ""), ("after", figures(done), ended)):
            rates = "".join(f"{x:7.2f}" for x in row[:4])
            label = f"{name} ({len(chosen)}), {when}"
            print(f"{label:44}{rates}{row[4]:9.1f}{row[5]:7.2f}{row[6]:9.0f}{end}", flush=True)


if __name__ == "__main__":
    main("--few" in sys.argv[1:])
