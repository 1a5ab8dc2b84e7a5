"""What was well until work was done, what is low now, and what others say of the engine."""

import pytest

from diagnose.understanding.reader import read
from knowledge.book import the_book


def shorts(text: str) -> list[str]:
    """The facts of a text in a few words."""
    return [f.short for f in read(text, the_book()).facts]


@pytest.mark.parametrize(
    ("text", "since"),
    [
        ("oil pressure is low. it was fine before the rebuild.", "low work"),
        ("low oil pressure, never had a problem until I changed the pump", "low work"),
        ("low oil pressure at idle. had good pressure before I rebuilt it", "low idle, work"),
        ("light comes on at idle. No issues prior to the oil change.", "lamp idle, oil change"),
        (
            "gauge reads low. engine was rebuilt last winter, before that it was always good",
            "low work",
        ),
        ("lamp flickers at idle. always been ok before the head gasket job", "unsteady idle, work"),
    ],
)
def test_well_until_work_means_since_that_work(text: str, since: str) -> None:
    """The trouble began with the work, and the work cured nothing."""
    found = shorts(text)
    assert f"behaviour {since}" in found
    assert any(s.startswith("earlier ") for s in found)
    assert not any(s.startswith("trial ") for s in found)


@pytest.mark.parametrize(
    "text",
    [
        "oil pressure is low. it was never fine before the rebuild.",
        "oil pressure is low. it was not fine before the rebuild.",
        "oil pressure is low. was it fine before the rebuild?",
        "oil pressure is low. the oil was changed last week",
    ],
)
def test_other_words_with_before_say_no_such_thing(text: str) -> None:
    """Fine after it too, not fine before, a question, no "fine"."""
    assert "behaviour low work" not in shorts(text)


@pytest.mark.parametrize(
    ("text", "trial"),
    [
        ("pressure was just as low before the pump was changed", "new_pump"),
        ("low pressure, same reading before the new pump", "new_pump"),
        ("pressure low, was low before the rebuild as well", "engine_rebuilt"),
        ("low at idle. It was already low before I changed the oil", "right_oil"),
    ],
)
def test_as_low_before_means_no_difference(text: str, trial: str) -> None:
    """The work changed nothing."""
    assert f"trial {trial} no difference" in shorts(text)


@pytest.mark.parametrize(
    "text",
    [
        "the oil pressure used to be fine but now it is low",
        "pressure was good, now it is low",
        "pressure was fine. Now it's low",
        "the gauge was fine before, now it is low",
        "pressure used to be great, now low",
    ],
)
def test_low_now_is_no_good_pressure(text: str) -> None:
    """What was good is not what is."""
    found = shorts(text)
    assert "behaviour low" in found
    assert not any(s.startswith("behaviour normal") for s in found)


@pytest.mark.parametrize(
    ("text", "fact"),
    [
        ("oil level was fine. now it is low", "finding level_correct present"),
        ("the pressure was normal. Now the engine knocks", "behaviour normal"),
        ("checked the pressure, it was fine", "behaviour normal"),
        ("checked the oil pressure and it was fine", "behaviour normal"),
        ("checked the oil and it was fine", "finding level_correct present"),
    ],
)
def test_what_was_checked_keeps_its_meaning(text: str, fact: str) -> None:
    """The level is no pressure, a pressure is no level, and what was read holds."""
    found = shorts(text)
    assert fact in found
    assert "behaviour low" not in found
    assert "finding engine_runs_normally present" not in found


@pytest.mark.parametrize(
    "text",
    [
        "forum says 15 is too low and the bearings are gone?? Im worried.",
        "i was told the mains are shot, 25 psi hot idle",
        "the internet says the big ends are worn out and the crank is scored",
    ],
)
def test_hearsay_is_no_sight(text: str) -> None:
    """Whoever never saw the engine found nothing on it."""
    assert not [s for s in shorts(text) if s.startswith("finding ") and s.endswith(" present")]


@pytest.mark.parametrize(
    ("text", "reading"),
    [
        ("60 down the hwy now 40", "reading 40 psi cruise"),
        ("8 psi hot idle. before rebuild it had 20 hot idle", "reading 8 psi hot, idle"),
        ("60 psi at idle now 40", "reading 40 psi idle"),
        ("is 15 psi at hot idle too low?", "reading 15 psi hot, idle"),
        (
            "gauge goes up to 30 psi cold, runs 20 mins pulling hay and then drops to nothing",
            "reading 30 psi cold",
        ),
        ("starts at 40 psi, then after an hour the pressure is gone", "reading 40 psi"),
    ],
)
def test_one_reading_of_one_moment(text: str, reading: str) -> None:
    """What was before is the usual one; when it was lost is not when it was read."""
    assert [s for s in shorts(text) if s.startswith("reading ")] == [reading]


@pytest.mark.parametrize(
    "text",
    [
        "is 40 psi normal for a v8?",
        "the new switch is stamped 3 bar",
        "pressure drop across oil cooler 42 psi at 3000 rpm",
        "low pressure. looped the hoses past the cooler, back to 55 at 3000",
    ],
)
def test_figures_that_are_no_reading(text: str) -> None:
    """A question of such engines, a marking, a difference, and what a trial showed."""
    assert not [s for s in shorts(text) if s.startswith("reading ")]


def test_the_usual_pressure_is_of_the_like_reading() -> None:
    """That of hot idle belongs to hot idle, though another reading was named last."""
    text = "8 psi hot idle, 30 psi at 3000. before rebuild it had 20 hot idle"
    found = {
        f.value: f.fields.get("usual") for f in read(text, the_book()).facts if f.table == "reading"
    }
    assert found == {"8 psi": "20 psi", "30 psi": None}


def test_a_needle_with_three_readings_is_not_stuck() -> None:
    """ "Sits at" is said of a reading."""
    text = "gauge sits at 15 psi when idling hot, at 2000 rpm its 45 and when cold 60"
    assert "finding needle_stuck_at_one_value present" not in shorts(text)
    assert len([s for s in shorts(text) if s.startswith("reading ")]) == 3


@pytest.mark.parametrize(
    ("text", "wrong"),
    [
        ("filter hand tight, dry", "finding filter_found_loose present"),
        ("plug and wire dry and tight, earth good", "finding drain_plug_found_loose absent"),
        ("loosened the feed line at the tank to bleed it", "finding suction_union_loose present"),
        ("pulled valve cover, leak off rail cracked", "finding oil_seen_outside present"),
        ("lift pump dry", "finding pump_dry_inside present"),
        ("no good pressure before the overhaul", "earlier whole_engine rebuilt straight before"),
        ("both gauges read the same", "finding direct_gauge_low present"),
        ("gets worse slowly over half an hour", "finding grows_worse present"),
        ("dry sump, crank shells new", "earlier sump renewed"),
        ("had a tapping noise, turned out it was the fuel pump", "behaviour ticking"),
    ],
)
def test_a_part_of_another_name_or_a_deed_is_no_finding(text: str, wrong: str) -> None:
    """Names of parts, what somebody did, and other systems."""
    assert wrong not in shorts(text)
