"""Questions and answers of a thread of messages: what is asked is half of what an answer states."""

from __future__ import annotations

import pytest

from diagnose.understanding.reader import read
from knowledge.book import the_book

BOOK = the_book()
LEAD = "Low oil pressure at idle.\n"
LOW = "behaviour low idle"
READ: dict[str, list[str]] = {
    # a "no" that only answers denies nothing of what stands behind it
    "No the stick is dry.": ["finding dipstick_dry present"],
    "no its knocking now": ["behaviour knock"],
    "No I found metal in the filter.": ["finding metal_in_filter present"],
    "No there's no leak.": ["finding oil_seen_outside absent"],
    "no level is fine": ["finding level_correct present"],
    # it denies what was asked
    "Does it knock? No.": ["finding bearing_knock absent"],
    "Knocking? Not yet.": ["finding bearing_knock absent"],
    "Any metal in the filter? None.": ["finding metal_in_filter absent"],
    "Does it smoke? No, runs clean.": ["finding blue_smoke absent"],
    "Metal in the filter - no.": ["finding metal_in_filter absent"],
    "Leaks: no. Metal in the filter: none. Knock: yes.": [
        "finding oil_seen_outside absent",
        "finding metal_in_filter absent",
        "behaviour knock",
    ],
    "Leaks: no, smoke: none.": ["finding oil_seen_outside absent", "finding blue_smoke absent"],
    # and "yes" states it
    "Knocking? Yes.": ["behaviour knock"],
    "Did you change the sender? Yes, no change.": ["trial new_sender no difference"],
    # a question that names a thing, and labels
    "Oil level? Full.": ["finding level_correct present"],
    "Q: Oil level?\nA: Full.": ["finding level_correct present"],
    "Q Pressure? A 60 cold, 8 hot at idle.": [
        "reading 60 psi cold",
        "reading 8 psi hot, idle",
    ],
    "@dave level is good": ["finding level_correct present"],
    # trials with a result that is a sentence of its own
    "Swapped filter. No. New sender. Nope.": [
        "trial new_filter no difference",
        "trial new_sender no difference",
    ],
}
#: threads pasted whole: all that is stated of the engine in question
PASTED: dict[str, list[str]] = {
    "User A wrote: knock at idle\nUser B replied: mine had 5 psi\nUser A again: no smoke": [
        "behaviour knock idle",
        "finding blue_smoke absent",
    ],
    "oil light is on\nturbonut replied: spun a bearing, mine did\nMechanic says: 5 psi at idle": [
        "behaviour lamp",
        "finding shell_spun present",
        "reading 5 psi idle",
    ],
    "Forum user A wrote: Hi all, the oil lamp comes on on a steep bank. No noises.\n"
    "User B replied: mine did this, turned out the bearings were gone, knocked like mad\n"
    "User C replied: oil pump. Always the oil pump. I had 5 psi.\n"
    "User A again: 22 psi at hot idle on the yard.": [
        "behaviour lamp slopes",
        "finding raced_or_heeled present",
        "finding engine_runs_normally present",
        "reading 22 psi hot, idle",
    ],
    "> sam66: knock at idle\n> ripper: mine spun a bearing\n> sam66: no smoke": [
        "behaviour knock idle",
        "finding blue_smoke absent",
    ],
    # a story of one's own, then quoted answers, then one's own reply
    "My tractor has 5 psi at hot idle since I took it out of the shed, and I have no idea why\n"
    "> dave: had metal in my pan\n> bob: does it knock?\nno it does not": [
        "finding in_a_tractor present",
        "reading 5 psi hot, idle",
        "finding bearing_knock absent",
    ],
    "me: lamp on at idle\njim: the pump had failed in mine": ["behaviour lamp idle"],
    # labels of a note are no names
    "> Knock: yes\n> Smoke: none": ["behaviour knock", "finding blue_smoke absent"],
    "Complaint: knock at idle\nObservation: metal in the pan": [
        "behaviour knock idle",
        "finding metal_in_pan present",
    ],
}
NOTHING: tuple[str, ...] = (
    "Is it safe to run? No.",
    "Is this normal? Yes.",
    "Could it be the bearings? Yes maybe.",
    "Have you cleaned the pickup? No.",
    "Worn bearings? Thanks in advance.",
    "Bad pump? Pickup clogged? Ideas welcome.",
    "Is the engine ruined? No idea.",
)


@pytest.mark.parametrize("text", PASTED)
def test_strangers_lines_are_of_their_engines(text: str) -> None:
    facts = [f.short for f in read(text, BOOK).facts if f.table != "earlier"]
    assert sorted(facts) == sorted(PASTED[text])


@pytest.mark.parametrize("text", READ)
def test_an_answer_is_read_with_its_question(text: str) -> None:
    """What is affirmed or denied is what was asked."""
    facts = [f.short for f in read(LEAD + text, BOOK).facts]
    assert [f for f in facts if f != LOW] == READ[text]


@pytest.mark.parametrize("text", NOTHING)
def test_opinions_and_bare_questions_state_nothing(text: str) -> None:
    """Questions for an opinion, and questions that nobody answers."""
    assert [f.short for f in read(LEAD + text, BOOK).facts] == [LOW]


def test_the_pressure_straight_behind_work_is_its_result() -> None:
    """It is compared with the lowest pressure read before; one read cold or made by a drill is none."""

    def trials(text: str) -> list[str]:
        facts = read("Low oil pressure, 8 psi at hot idle. " + text, BOOK).facts
        return [f.short for f in facts if f.table == "trial"]

    assert trials("Bought a new sender, needle now sits at 40 at idle.") == [
        "trial new_sender cured"
    ]
    assert trials("Fitted new rotors, 9 psi now.") == ["trial pump_rebuilt helped"]
    assert trials("Fitted a new pump, 8 psi.") == ["trial new_pump no difference"]
    assert trials("Fitted a new pump, 50 psi cold.") == []
    assert trials("Fitted a new sender and it reads 9.") == ["trial new_sender no difference"]


def test_a_lone_answer_ends_a_trial() -> None:
    """What is done next has its own result."""
    text = (
        "No pressure. Swapped filter. No. Tapped the relief housing, it jumped to 40 for a moment."
    )
    facts = [f.short for f in read(text, BOOK).facts]
    assert "trial new_filter no difference" in facts
    assert "trial new_filter cured" not in facts


def test_what_is_fine_for_a_time_is_amiss_after_it() -> None:
    """The minutes are those of the trouble behind "then"."""
    facts = [
        f.short for f in read("Pressure fine for ten minutes then the light comes on.", BOOK).facts
    ]
    assert "behaviour lamp after minutes of running" in facts
    assert not any("normal after" in f for f in facts)
