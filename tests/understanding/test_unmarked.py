"""Texts without punctuation: where a statement begins, and that nothing dangerous is misread."""

from __future__ import annotations

from dataclasses import replace
from textwrap import fill

import pytest
from hypothesis import given
from hypothesis import strategies as st

from diagnose.understanding.reader import lexicon_of, read
from diagnose.understanding.sentences.paragraph import Paragraph
from knowledge.book import the_book
from tests.support.examples import one_in
from tests.support.readers import READERS
from tests.support.sentences import dangerous, typed, without_marks

BOOK = the_book()
LEXICON = lexicon_of(BOOK)
CUT = {
    "low 5 psi at hot idle 60 cold new sender made no difference lifters ticking since the rebuild": [
        "low 5 psi at hot idle",
        "60 cold",
        "new sender made no difference",
        "lifters ticking since the rebuild",
    ],
    "hot idle 8 psi cold 50 2000 rpm 25 new pump same thing": [
        "hot idle 8 psi",
        "cold 50",
        "2000 rpm 25",
        "new pump same thing",
    ],
    "it knocks when i rev it oil level is fine changed the sender no difference": [
        "it knocks when i rev it",
        "oil level is fine",
        "changed the sender no difference",
    ],
}
WHOLE = (
    "the o-ring on the pickup was cut and hard",
    "my mate changed the filter and the sender last week",
    "years ago it ran with no oil pressure for a mile",
    "on the return road it was 38 psi at 1000 rpm",
    "the bolts that hold the oil pump were only finger tight",
    "we found that the oil pressure gauge was wrong",
)


def clauses(text: str) -> list[str]:
    """The words of each clause."""
    found = []
    for line in Paragraph(text, LEXICON).lines:
        for clause in line.sentence.clauses:
            tokens = line.tokens[clause.first : clause.last]
            found.append(" ".join(text[t.start : t.end] for t in tokens if t.end > t.start))
    return [c for c in found if c]


@pytest.mark.parametrize("text", CUT)
def test_cut_where_a_statement_begins(text: str) -> None:
    assert clauses(text) == CUT[text]


def test_a_cut_is_no_part_of_what_is_read_behind_it() -> None:
    """The throttle before the cut is not what is on the full mark."""
    facts = read("goes off if i touch the throttle oil is on the full mark and clean", BOOK).facts
    assert {"finding level_correct present", "finding oil_looks_clean present"} <= {
        f.short for f in facts
    }


def test_what_one_says_of_another_engine_ends_where_a_sentence_begins() -> None:
    """A long text without marks is cut into sentences, so that a guess does not reach to its end."""
    facts = read(
        "the light comes on at idle and the bloke at the shop reckons the bearings are worn out "
        "i drained the oil and it stank of petrol the oil pressure is low hot at idle as well",
        BOOK,
    ).facts
    short = {f.short for f in facts}
    assert {"finding fuel_smell present", "behaviour low idle, hot"} <= short
    assert not any("shells" in s or "bearing" in s for s in short)


def test_a_denial_ends_where_work_begins() -> None:
    """A "no" denies what it stands before, not the work or the oil named after it."""
    facts = read(
        "light on at idle no rattles straight 30 in it put a new switch on no change", BOOK
    )
    assert {"trial new_sender no difference", "oil SAE 30"} <= {f.short for f in facts.facts}


@pytest.mark.parametrize("text", WHOLE)
def test_one_statement_stays_whole(text: str) -> None:
    assert not any(t.start == t.end for line in Paragraph(text, LEXICON).lines for t in line.tokens)


def test_what_is_said_without_marks_is_read() -> None:
    """A "no" that belongs to the statement before does not deny the next one."""
    text = (
        "5 psi at hot idle 60 cold new sender made no difference lifters ticking since the rebuild"
    )
    assert sorted(f.short for f in read(text, BOOK).facts) == [
        "behaviour ticking work",
        "earlier whole_engine rebuilt straight before",
        "reading 5 psi hot, idle",
        "reading 60 psi cold",
        "trial new_sender no difference",
    ]


@pytest.mark.parametrize("case", one_in(3, dangerous()), ids=lambda c: c.text[:40])
def test_nothing_dangerous_is_misread_without_marks(case) -> None:  # type: ignore[no-untyped-def]
    bare = replace(case, text=without_marks(case.text))
    assert not bare.misread_by(READERS["tell"])


def test_a_line_for_each_thing() -> None:
    """A list on a phone has no full stops; each line stands for itself."""
    lines = "oil level ok\nno leaks\nnew sender no change\nhot idle 8 psi\ncold 55\nlifters tick"
    assert sorted(f.short for f in read(lines, BOOK).facts) == [
        "behaviour ticking",
        "finding level_correct present",
        "finding oil_seen_outside absent",
        "reading 55 psi cold",
        "reading 8 psi hot, idle",
        "trial new_sender no difference",
    ]


@given(st.sampled_from([s.text for s in typed() if len(s.text) > 60]), st.integers(60, 80))
def test_a_text_broken_into_full_lines_says_the_same(text: str, width: int) -> None:
    broken = fill(text, width, break_on_hyphens=False)
    one, two = ([f.short for f in read(t, BOOK).facts] for t in (text, broken))
    assert one == two


@given(st.lists(st.sampled_from([*CUT, *WHOLE]), min_size=1, max_size=3).map(" ".join))
def test_words_stand_where_they_stood(text: str) -> None:
    """A cut adds nothing to the text and takes nothing from it, and no clause is empty."""
    lines = Paragraph(text, LEXICON).lines
    tokens = [t for line in lines for t in line.tokens]
    assert " ".join(text[t.start : t.end] for t in tokens if t.end > t.start) == text
    assert all(line.sentence.clauses for line in lines)
