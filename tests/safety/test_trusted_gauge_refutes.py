"""A trusted gauge beside panel or lamp: where it ends a stop, and where it does not."""

from __future__ import annotations

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from knowledge.book import the_book
from knowledge.model import Severity

BOOK = the_book()


def reading(no: int, psi: float, rpm: str, oil: str, gauge: str = "panel") -> str:
    said = [f'{k} = "{v}"' for k, v in (("rpm", rpm), ("oil", oil)) if v]
    fields = "\n".join([f'pressure = "{psi} psi"', f'gauge = "{gauge}"', *said])
    return f"[[reading]]\nno = {no}\n{fields}\n"


def finding(no: int, name: str) -> str:
    return f'[[finding]]\nno = {no}\nwhat = "{name}"\nstate = "present"\n'


def lamp(no: int, *during: str) -> str:
    when = f"during = {list(during)}\n" if during else ""
    return f'[[behaviour]]\nno = {no}\nshows = "lamp"\n{when}'


ZERO = reading(2, 0, "idle", "hot")
LOW = reading(2, 4, "idle", "hot")
GOOD = reading(1, 25, "idle", "hot", "direct")  #: before the panel's, so it shows nothing since


def severities(*parts: str) -> list[Severity]:
    answer = Diagnosis(BOOK, from_text("\n".join(("schema = 1", *parts)), None, BOOK))
    return [a.severity for a in answer.alarms]


@pytest.mark.parametrize(
    "parts",
    [
        (ZERO, GOOD),
        (LOW, GOOD),
        (reading(2, 0, "700 rpm", "90 C"), reading(1, 25, "720 rpm", "92 C", "direct")),
        (reading(2, 0, "cruise", "hot"), reading(1, 45, "cruise", "hot", "direct")),
        (lamp(5), GOOD),
        (lamp(5, "hot", "idle"), GOOD),
        (lamp(5), finding(3, "stationary"), reading(2, 60, "", "", "direct")),
        (reading(2, 0, "", ""), reading(1, 45, "", "", "direct")),
        (lamp(5), reading(2, 60, "", "", "direct")),
        (reading(2, 5, "idle", "hot"), reading(1, 45, "", "", "direct")),
    ],
)
def test_good_pressure_under_the_same_condition_ends_the_stop(parts: tuple[str, ...]) -> None:
    """As does a figure with no word on when, if it is enough for any speed."""
    assert not {Severity.STOP, Severity.DO_NOT_RUN} & set(severities(*parts))


@pytest.mark.parametrize("parts", [(ZERO, GOOD), (lamp(5), GOOD)])
def test_it_runs_only_with_that_gauge_watched(parts: tuple[str, ...]) -> None:
    assert Severity.CARE in severities(*parts)


@pytest.mark.parametrize(
    "parts",
    [
        (ZERO,),
        (ZERO, reading(1, 60, "3000 rpm", "hot", "direct")),
        (ZERO, reading(1, 60, "idle", "cold", "direct")),
        (ZERO, reading(1, 4, "idle", "hot", "direct")),
        (ZERO, GOOD, reading(3, 0, "cruise", "hot")),
        (ZERO, GOOD, '[[behaviour]]\nno = 3\nshows = "lost"\n'),
        (reading(2, 0, "", ""), reading(1, 15, "", "", "direct")),
        (reading(2, 0, "", ""), reading(1, 45, "", "cold", "direct")),
        (ZERO, GOOD, finding(3, "bearing_knock")),
        (ZERO, GOOD, finding(3, "bright_soft_metal")),
        (lamp(5), reading(1, 60, "3000 rpm", "hot", "direct")),
        (lamp(5), reading(2, 15, "", "", "direct")),
        (lamp(5, "at speed"), reading(2, 60, "", "", "direct")),
        (lamp(5, "at speed"), GOOD),
        (lamp(5), GOOD, reading(3, 3, "idle", "hot", "direct")),
        (lamp(5), finding(3, "stationary"), reading(2, 4, "", "", "direct")),
    ],
)
def test_another_condition_or_danger_leaves_the_stop(parts: tuple[str, ...]) -> None:
    assert {Severity.STOP, Severity.DO_NOT_RUN} & set(severities(*parts))


def test_pressure_shown_since_ends_the_stop_of_a_dead_needle_only() -> None:
    since = finding(3, "pressure_shown_since")
    assert Severity.STOP not in severities(reading(1, 0, "", ""), since)
    assert Severity.STOP in severities(reading(1, 4, "idle", "hot"), since)


@pytest.mark.parametrize("oil", ["hot", ""])
@pytest.mark.parametrize(
    ("rpm", "ends"),
    [("1500 rpm", False), ("2500 rpm", False), ("720 rpm", True), ("idle", True), ("", True)],
)
def test_pressure_at_speed_ends_no_stop_at_idle(rpm: str, ends: bool, oil: str) -> None:
    """Read after the zero: it counts where it was as slow, or where nobody said how fast."""
    later = reading(9, 60, rpm, oil, "direct")
    none = '[[behaviour]]\nno = 3\nshows = "none"\nduring = ["idle"]\n'
    for fall in (ZERO, none):
        stopped = bool({Severity.STOP, Severity.DO_NOT_RUN} & set(severities(fall, later)))
        assert stopped is not ends


def test_a_zero_at_no_certain_speed_ends_with_any() -> None:
    shown = (finding(2, "gauge_reads_zero"), reading(9, 60, "1500 rpm", "hot", "direct"))
    assert Severity.STOP not in severities(*shown)
