"""``python -m tests.confirmed``: hit rates on the confirmed cases, three stages.

With --misses: the cases whose cause is not among the first three, none of the half kept aside.
"""

from __future__ import annotations

import sys

from tests.confirmed.scoring import (
    FIRST,
    FURTHER,
    LATER,
    STAGES,
    Score,
    brier,
    case_files,
    coverage,
    hit,
    kept_aside,
    leading,
    reliability,
    scores,
)

BANDS = (0.9, 0.6, 0.4, 0.2, 0.1, 0.0)


def line(label: str, these: list[Score]) -> str:
    """One row of the table."""
    if not these:
        return f"{label:34} no case"
    hits = "  ".join(f"{hit(these, n):6.0%}" for n in (1, 3, 5))
    return f"{label:34} {len(these):3}  {hits}   {brier(these):.3f}"


def table(label: str, first: list[Score], further: list[Score]) -> None:
    """The rows of one stage."""
    every = [*first, *further]
    print(line(label, every))
    print(line("  the first 51", first))
    print(line("  further cases", further))
    print(line("    half developed on", [s for s in further if not kept_aside(s.case)]))
    print(line("    half kept aside", [s for s in further if kept_aside(s.case)]))
    print(line("  without outside leaks", [s for s in every if not s.leak]))
    print(line("  outside leaks only", [s for s in every if s.leak]))
    print(line("  without thin ones", [s for s in every if not s.thin]))


def later_cases() -> None:
    """The same for the cases that came later, which none of the figures above holds."""
    for stage, label in STAGES.items():
        these = scores(stage, case_files(LATER))
        print(line(f"later cases, {label}", these))
        print(line("    half developed on", [s for s in these if not kept_aside(s.case)]))
        print(line("    half kept aside", [s for s in these if kept_aside(s.case)]))


def main() -> None:
    """Print the tables."""
    print(f"{'':34}   n  first   top 3   top 5   Brier")
    for stage, label in STAGES.items():
        first, further = (scores(stage, case_files(folder)) for folder in (FIRST, FURTHER))
        table(label, first, further)
        print("  reliability: said, true, count")
        for said, true, count in reliability([*first, *further]):
            print(f"    {said:5.0%}  {true:5.0%}  {count:5}")
        if "--misses" in sys.argv:
            print("  not among the first three")
            for s in [*first, *further]:
                if s.rank > 3 and (s in first or not kept_aside(s.case)):
                    print(f"    {s.case}  rank {s.rank:3}  {', '.join(sorted(s.accepted))}")
    later_cases()
    for stage, label in STAGES.items():
        print(f"the leading cause, all cases, {label}: said, right, count")
        every = scores(stage, [p for f in (FIRST, FURTHER, LATER) for p in case_files(f)])
        for said, true, count in leading(every, BANDS):
            print(f"    {said:5.0%}  {true:5.0%}  {count:5}")
    folders = (("the first 51", FIRST), ("further cases", FURTHER), ("later cases", LATER))
    for label, folder in folders:
        said, unsaid = coverage(case_files(folder))
        print(f"facts that can be said, {label}: {said} of {said + unsaid}", end="")
        print(f" ({said / (said + unsaid):.0%})" if said else "")


if __name__ == "__main__":
    main()
