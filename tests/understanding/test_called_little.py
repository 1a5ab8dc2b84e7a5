"""Pressure that is called little, that comes back, or that is fine only at times."""

import pytest

from diagnose.understanding.reader import read
from knowledge.book import the_book


def shorts(text: str) -> list[str]:
    """The facts of a text in a few words."""
    return [f.short for f in read(text, the_book()).facts]


@pytest.mark.parametrize(
    ("text", "low"),
    [
        ("It only shows about 10 psi at idle.", "behaviour low idle"),
        ("I only get 12 psi hot at idle", "behaviour low idle, hot"),
        ("barely 8 psi at tickover", "behaviour low idle"),
        ("the gauge hardly reads 10 psi when warm", "behaviour low hot"),
        ("it makes a measly 20 psi", "behaviour low"),
    ],
)
def test_a_pressure_called_little_is_a_complaint(text: str, low: str) -> None:
    """Whoever says "only" finds it too little."""
    assert low in shorts(text)


@pytest.mark.parametrize(
    "text",
    [
        "It shows about 10 psi at idle.",
        "is only 10 psi at idle ok?",
        "it used to be only 20 psi at idle",
        "it is just over 40 psi",
        "my brother's only shows 10 psi",
    ],
)
def test_a_figure_alone_is_none(text: str) -> None:
    """A figure without such a word, a question and another engine say nothing of little."""
    assert not [s for s in shorts(text) if s.startswith("behaviour low")]


def test_said_once() -> None:
    """Where something else says that pressure is missing, nothing is added."""
    assert shorts("low oil pressure when hot, only 10 psi at idle").count("behaviour low hot") == 1
    assert "behaviour low idle" not in shorts("low oil pressure, only 10 psi at idle")


@pytest.mark.parametrize(
    ("text", "shown"),
    [
        ("lost pressure at 3000 rpm. Slowed down and the pressure came back.", True),
        ("The needle fell to zero on a climb. Two seconds later the pressure was back.", True),
        ("No oil pressure on the highway. The pressure never came back.", False),
        ("No oil pressure. Fitted a new pump and the pressure came back.", False),
        ("No oil pressure. Will the pressure come back?", False),
    ],
)
def test_what_came_back_by_itself(text: str, shown: bool) -> None:
    """It recovered by itself only where it did, and where no work brought it back."""
    loss = [s for s in shorts(text) if s.startswith(("behaviour lost", "behaviour none"))]
    assert loss
    assert any("recovered by itself" in s for s in loss) is shown


def test_fine_at_times_is_low_at_others() -> None:
    """Pressure that is fine on some days is amiss on others."""
    assert "behaviour low comes and goes" in shorts("some days the oil pressure is fine")
    assert "behaviour normal" in shorts("the oil pressure is fine")


def test_what_does_not_come_up_is_low_beside_a_figure() -> None:
    """ "It does not come up" is nothing at all only where no figure says otherwise."""
    assert "behaviour low" in shorts("oil pressure will not come up, stays at 10")
    assert "behaviour low" in shorts("oil pressure will not come up. It reads 0.5 bar")
    assert "behaviour none" in shorts("oil pressure will not come up")


def test_plugs_at_the_front_are_not_all() -> None:
    """The plugs that somebody could see leave the hidden ones open."""
    assert "finding gallery_plug_found_missing absent" in shorts("the gallery plugs are all there")
    assert not shorts("all the gallery plugs I could see are in place")
