"""``python -m tests.confirmed``: hit rates on the confirmed cases, three stages."""

from __future__ import annotations

import sys

from tests.confirmed.scoring import STAGES, Score, brier, hit, reliability, scores


def line(label: str, these: list[Score]) -> str:
    """One row of the table."""
    if not these:
        return f"{label:34} no case"
    hits = "  ".join(f"{hit(these, n):6.0%}" for n in (1, 3, 5))
    return f"{label:34} {len(these):3}  {hits}   {brier(these):.3f}"


def main() -> None:
    """Print the tables."""
    print(f"{'':34}   n  first   top 3   top 5   Brier")
    for stage, label in STAGES.items():
        these = scores(stage)
        print(line(label, these))
        print(line("  without outside leaks", [s for s in these if not s.leak]))
        print(line("  outside leaks only", [s for s in these if s.leak]))
    print("\nreliability with everything known: said, true, count")
    for said, true, count in reliability(scores(list(STAGES)[-1])):
        print(f"  {said:5.0%}  {true:5.0%}  {count:5}")
    if "--misses" in sys.argv:
        print("\ncases whose confirmed cause is not among the first three, everything known")
        for s in scores(list(STAGES)[-1]):
            if s.rank > 3:
                print(f"  {s.case}  rank {s.rank:3}  {', '.join(sorted(s.accepted))}")


if __name__ == "__main__":
    main()
