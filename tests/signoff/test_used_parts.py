"""Reuse, rework or renew: the verdict on cover, gears, relief valve, spring, crank and shells."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.signoff.reuse import part_fates
from knowledge.book import the_book
from knowledge.contents_reuse import USED_PARTS
from knowledge.reuse import Fate
from tests.support.command_line import ROOT, call

BOOK = the_book()
HEAD = 'schema = 1\n[engine]\nlayout = "distributor_v8"\n'


FITTED = 'what = "main 1"\nat = "build"\nstrip = "0.05 mm"'


def fates(*entries: str) -> dict[str, Fate | None]:
    """The fate of each part, by id; an entry: "finding=present" or "measure=0.1 mm"."""
    text = HEAD
    for number, entry in enumerate(entries, 1):
        what, _, said = entry.partition("=")
        key = "state" if what in BOOK.findings else "value"
        text += f'[[finding]]\nno = {number}\nwhat = "{what}"\n{key} = "{said}"\n'
    return {f.part.id: f.fate for f in part_fates(Diagnosis(BOOK, from_text(text, None, BOOK)))}


#: what a shop does with it (common practice)
TABLE = [
    ("cover_grooved=present", "used_pump_cover", Fate.REWORK),
    ("pump_casting_cracked=present", "used_pump_cover", Fate.RENEW),
    ("cover_grooved=absent", "used_pump_cover", Fate.REUSE),
    ("gears_worn_out=present", "used_pump_gears", Fate.RENEW),
    ("relief_seat_scored=present", "used_relief_valve", Fate.REWORK),
    ("relief_plunger_sticks=absent", "used_relief_valve", Fate.REUSE),
    ("relief_spring_short_or_broken=present", "used_relief_spring", Fate.RENEW),
    ("crank_scored=present", "used_crank", Fate.REWORK),
    ("crank_broken=present", "used_crank", Fate.RENEW),
    ("shells_wiped=present", "used_shells", Fate.RENEW),
    ("shells_look_normal=present", "used_shells", Fate.REUSE),
    ("main_clearance=0.2 mm", "used_shells", Fate.RENEW),
    ("main_clearance=0.06 mm", "used_shells", Fate.REUSE),
]


@pytest.mark.parametrize(("entry", "part", "fate"), TABLE, ids=lambda v: str(v)[:40])
def test_one_sight_or_value_decides(entry: str, part: str, fate: Fate) -> None:
    found = fates(entry)
    assert found[part] is fate
    others = {p: f for p, f in found.items() if p != part}
    assert all(f is None or part in ("used_shells", "used_crank") for f in others.values()), others


def test_the_gravest_verdict_holds() -> None:
    """A good look at one thing does not excuse another."""
    assert (
        fates("cover_grooved=present", "pump_casting_cracked=present")["used_pump_cover"]
        is Fate.RENEW
    )
    assert fates("shells_look_normal=present", "shell_spun=present")["used_shells"] is Fate.RENEW


def test_nothing_is_said_of_what_nobody_looked_at() -> None:
    """An unknown is no absence, and a "no" of a closed engine is none either."""
    assert set(fates("needle_flickers=present").values()) == {None}
    assert set(fates("cover_grooved=unknown").values()) == {None}


def test_every_part_can_be_judged_each_way_it_names() -> None:
    for part in USED_PARTS:
        assert part.look
        assert part.reuse
        assert part.source.trust
        assert len({rule.fate for rule in part.rules}) == len(part.rules)
        for rule in part.rules:
            for finding in rule.when:
                assert BOOK.findings[finding.id] is finding
                assert fates(f"{finding.id}=present")[part.id] is not None


def test_signoff_shows_it_with_source_and_as_data(tmp_path: Path) -> None:
    case = ROOT / "cases" / "bullfinch.toml"
    whole = " ".join(call("signoff", case, "--all").out.split())
    assert "renew bearing shells: shells are worn evenly to the copper" in whole
    assert "(common practice, no source)" in whole
    rows = {r["id"]: r for r in json.loads(call("signoff", case, "--json").out)["used_parts"]}
    assert (rows["used_shells"]["fate"], rows["used_pump_cover"]["fate"]) == ("renew", "reuse")
    page = tmp_path / "s.html"
    assert call("signoff", case, "--html", page).code == 0
    assert "reuse, rework or renew" in page.read_text("utf-8")


def test_what_to_do_with_a_used_part_is_not_cut_off(monkeypatch: pytest.MonkeyPatch) -> None:
    """A long order goes on in the next line."""
    monkeypatch.chdir(ROOT / "cases")
    lines = call("signoff", "dunlin.toml").out.splitlines()
    at = next(i for i, line in enumerate(lines) if line.startswith("renew  "))
    order = " ".join(line.strip() for line in lines[at : at + 2])
    assert "bearing shells: measure the journals, then renew the whole set of that kind" in order


@pytest.mark.parametrize("new", ['what = "mains"\nnew_shell = "1.8 mm"', FITTED])
def test_old_shells_go_nowhere_once_new_ones_are_in_hand(new: str) -> None:
    """Their clearance was within limits: still nobody refits them."""
    assert fates("main_clearance=0.06 mm")["used_shells"] is Fate.REUSE
    text = HEAD + '[[finding]]\nno = 1\nwhat = "main_clearance"\nvalue = "0.06 mm"\n'
    case = from_text(f"{text}[[bearing]]\nno = 2\n{new}\n", None, BOOK)
    parts = {f.part.id for f in part_fates(Diagnosis(BOOK, case))}
    assert "used_shells" not in parts
    assert "used_crank" in parts
