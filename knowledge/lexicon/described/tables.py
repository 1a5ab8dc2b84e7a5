"""Groups of described parts, put together; their form is that of ``lexicon.sights``."""

from __future__ import annotations

from collections.abc import Iterable

from knowledge.lexicon.described import drive, pickup, pressure, pump, relief, top_end
from knowledge.lexicon.sights import tables as sights

_FILES = (drive, pickup, pressure, pump, relief, top_end)
_MANY = 3  #: sets of which words in different clauses still say more than chance
Table = dict[str, tuple[str, ...]]


def _gathered(tables: Iterable[Table]) -> Table:
    """One table of all; a finding stands in one file only."""
    return {finding: said for table in tables for finding, said in table.items()}


def _over_commas(group: str) -> str:
    """A group of many sets over a whole sentence: "the pump, a ball fell out of its teeth"."""
    wanted, _, without = group.partition(" - ")
    if wanted.count(" + ") + 1 < _MANY:
        return ""
    return f"{wanted.replace(' + ', ' & ')} - {without}" if without else ""


#: the finding, by words that stand together when it is there
DESCRIBED: Table = {
    finding: (*said, *filter(None, map(_over_commas, said)))
    for finding, said in _gathered(file.THERE for file in _FILES).items()
}
#: the finding, by words that stand together when it is not there
DESCRIBED_ABSENT: Table = _gathered(file.ABSENT for file in _FILES)


def _joined(named: Table, described: Table) -> Table:
    """Of each finding the groups of both tables."""
    every = dict.fromkeys((*named, *described))
    return {f: (*named.get(f, ()), *described.get(f, ())) for f in every}


#: the groups by a part's name and those by what it does
TOGETHER: Table = _joined(sights.TOGETHER, DESCRIBED)
TOGETHER_ABSENT: Table = _joined(sights.TOGETHER_ABSENT, DESCRIBED_ABSENT)
