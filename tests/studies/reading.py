"""How well plain English is read into facts: ``python -m tests.studies.reading``.

Tables for each reader: precision and recall by kind of fact on the sentences of
``data/typed_sentences.toml``, the third kept back apart, of ``data/station_sentences.toml``, half
kept back, of the short reports of ``data/report_texts.toml``, a third kept back, and of the owners'
stories of ``data/story_texts_*.toml``, all kept back; the same on the words of every confirmed case
(complaint and notes) beside the entries coded in its file, the half kept aside apart; and how often
the confirmed cause is first, among three, among five when nothing but these words is known. What a
file does not code although its words say it counts as wrong there, and what it codes although they
do not say it counts as missed; the row "as words say" has both as one reader judged them
(``data/case_words_*.toml``).

--misses: facts missed and facts wrong, none of the parts kept back. --reader NAME: only this one.
--facts: without the hit rates, which take most of the time.
"""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterable, Sequence

from knowledge.model import Stage
from tests.confirmed.scoring import FURTHER, STAGES, Score, case_files, hit, scores
from tests.support.agreement import Outcome, Tally, total
from tests.support.case_texts import CaseText, case_texts, stories
from tests.support.readers import READERS, Reader
from tests.support.sentences import Sentence, by_station, dangerous, owner_stories, reports, typed
from tests.support.stated_facts import Kind


def rows(parts: Sequence[Outcome]) -> Iterable[str]:
    """Precision and recall by kind, a pair of columns for each part."""
    for kind in Kind:
        tallies = [p.by_kind[kind] for p in parts]
        if any(t.stated or t.read for t in tallies):
            yield f"  {kind:16}" + "".join(_cell(t) for t in tallies)
    sums = [p.all for p in parts]
    yield f"  {'all':16}" + "".join(_cell(t) for t in sums)


def _cell(tally: Tally) -> str:
    precision = f"{tally.precision:.0%}" if tally.read else "-"
    recall = f"{tally.recall:.0%}" if tally.stated else "-"
    return f"   {precision:>7} {recall:>7} {tally.stated:5}"


def heading(*parts: str) -> str:
    """The heading of ``rows``."""
    names = "".join(f"   {part:^20}" for part in parts)
    return f"  {'':16}{names}\n  {'':16}" + "   precis.  recall     n" * len(parts)


def in_sentences(reader: Reader, misses: bool) -> None:
    """Print how the typed and the dangerous sentences are read."""
    lists = (
        ("as typed", typed()),
        ("for each station", by_station()),
        ("of reports", reports()),
        ("of stories", owner_stories()),
    )
    for name, listed in lists:
        print(f" sentences {name}: {len(listed)}")
        parts = _split(listed, lambda s: s.kept_back, lambda s: s.read_by(reader))
        print(heading("developed on", "kept back"))
        print(*rows(parts), sep="\n")
        bare = _split(listed, lambda s: s.kept_back, lambda s: s.unmarked.read_by(reader))
        print(f"  {'without marks':16}" + "".join(_cell(p.all) for p in bare))
    misread = [d for d in dangerous() if d.misread_by(reader)]
    missed = sum(bool(d.missed_by(reader)) for d in dangerous())
    print(f"  dangerous sentences misread: {len(misread)} of {len(dangerous())}; ", end="")
    print(f"something left out of what must be read: {missed}")
    if misses:
        for sentence in (s for _, each in lists for s in each if not s.kept_back):
            _print_misses(sentence.text, sentence.read_by(reader))
        for each in misread:
            print(f"    {each.text}\n      MISREAD {'; '.join(each.misread_by(reader))}")


def in_cases(reader: Reader, misses: bool, ranks: bool = True) -> None:
    """Print how the words of the confirmed cases are read, and where the cause stands then."""
    for checks, stage in ((False, Stage.KNOWN), (True, Stage.OUTSIDE)):
        texts = case_texts(checks)
        parts = _split(texts, lambda t: t.kept_aside, lambda t: t.read_by(reader))
        print(f" {STAGES[stage]}: {len(texts)} cases")
        print(heading("developed on", "kept aside"))
        print(*rows(parts), sep="\n")
        judged = _split(texts, lambda t: t.kept_aside, lambda t: t.judged_by(reader))
        print(f"  {'as words say':16}" + "".join(_cell(p.all) for p in judged))
        if ranks:
            _print_ranks(texts, stage, reader)
    if misses:
        for text in (t for t in case_texts(True) if not t.kept_aside):
            _print_misses(f"{text.name}: {text.text}", text.read_by(reader))


def _print_ranks(texts: Sequence[CaseText], stage: Stage, reader: Reader) -> None:
    ranked = [(t, t.ranked_by(reader)) for t in texts if not t.doubtful]
    print(f"  {'from the words alone':22}   n   first   three   five")
    print(hits("all", [s for _, s in ranked]))
    print(hits("the first 51", [s for t, s in ranked if not t.further]))
    half = [s for t, s in ranked if t.further and not t.kept_aside]
    print(hits("half developed on", half))
    print(hits("half kept aside", [s for t, s in ranked if t.kept_aside]))
    print(hits("all, from the files", scores(stage, [*case_files(), *case_files(FURTHER)])))


def in_stories(reader: Reader) -> None:
    """Print where the confirmed cause of the later cases stands when only the story is known."""
    ranked = [(t, t.ranked_by(reader)) for t in stories()]
    print(f" stories of later cases: {len(ranked)}\n  {'':22}   n   first   three   five")
    print(hits("half developed on", [s for t, s in ranked if not t.kept_aside]))
    print(hits("half kept aside", [s for t, s in ranked if t.kept_aside]))


def hits(label: str, these: list[Score]) -> str:
    """One row of hit rates."""
    shares = "  ".join(f"{hit(these, n):5.0%}" for n in (1, 3, 5))
    return f"  {label:22} {len(these):3}   {shares}"


def _split(
    items: Sequence[Sentence] | Sequence[CaseText],
    apart: Callable[..., bool],
    read: Callable[..., Outcome],
) -> tuple[Outcome, Outcome]:
    """The outcomes of what is developed on, and of what is kept apart."""
    outcomes = [(apart(item), read(item)) for item in items]
    return total(o for a, o in outcomes if not a), total(o for a, o in outcomes if a)


def _print_misses(text: str, result: Outcome) -> None:
    if result.missed or result.wrong:
        print(f"    {text}")
        for fact in result.missed:
            print(f"      missed  {fact}")
        for fact in result.wrong:
            print(f"      wrong   {fact}")


def main() -> None:
    """Print the tables for each reader."""
    only = sys.argv[sys.argv.index("--reader") + 1] if "--reader" in sys.argv else None
    misses = "--misses" in sys.argv
    for name, reader in READERS.items():
        if only in (None, name):
            print(name)
            in_sentences(reader, misses)
            in_cases(reader, misses, ranks="--facts" not in sys.argv)
            if "--facts" not in sys.argv:
                in_stories(reader)


if __name__ == "__main__":
    main()
