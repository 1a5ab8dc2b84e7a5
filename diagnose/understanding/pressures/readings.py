"""Read pressures: "5 psi at hot idle, 60 cold, used to show 50"."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from diagnose.understanding.pressures.bounds import bounded, hardly, of_alarm
from diagnose.understanding.pressures.carried import SPANS, at_one_moment, carry_on
from diagnose.understanding.pressures.changes import pressures_at
from diagnose.understanding.pressures.compared_figures import (
    compares_pressures,
    of_the_book,
    recovers_then,
)
from diagnose.understanding.pressures.gauges import gauges_named, in_groups
from diagnose.understanding.pressures.gauges_compared import (
    PANEL,
    Pressure,
    apart_by,
    apart_later,
    by_panel,
)
from diagnose.understanding.pressures.idle_speed import of_an_idle, without_standing
from diagnose.understanding.pressures.nearness import how_near, nearness, of_none
from diagnose.understanding.pressures.pressures import value_at
from diagnose.understanding.pressures.reading_fields import (
    DIRECT,
    field_of,
    is_speed_figure,
    is_temperature,
)
from diagnose.understanding.pressures.stations_named import beside_each_other, station_of
from diagnose.understanding.pressures.then_now import is_a_step, left_behind, of_an_earlier_day
from diagnose.understanding.pressures.unitless import unit_of
from diagnose.understanding.pressures.usual_pressures import (
    is_heat,
    is_none,
    nearest_made,
    partners,
    sound_ones,
)
from diagnose.understanding.sentences.paragraph import Line, Paragraph
from diagnose.understanding.sentences.stance import UNTRUE, Stance
from diagnose.understanding.words.facts import Fact, Span, Value, reader, said_once
from diagnose.understanding.words.phrases import Mark
from knowledge.lexicon.shows.instruments_named import OF_THE_PANEL
from knowledge.lexicon.shows.then_and_now import BESIDE_NOW
from knowledge.reports.words import Circumstance, Heat, Shows, Speed

_BOTH = {True, False}
#: circumstances that are the speed of a reading
_SPEEDS = {Circumstance.IDLE.value: Speed.IDLE, Circumstance.SPEED.value: Speed.CRUISE}
_MAKES = frozenset(["makes", "gives", "shows", "reads", "gets"])
_NOW_WITHIN = 8  #: words between what was and what is now
_FARTHEST = 9  #: words between a pressure and what it was read at


@reader(
    {
        "5 psi at hot idle, 60 cold": ["reading 5 psi hot, idle", "reading 60 psi cold"],
        "when hot it drops to 10 psi at idle": ["reading 10 psi hot, idle"],
        "never goes above 25 psi": ["reading never above 25 psi"],
        "my last engine had 40 psi at idle": [],
        "would 20 psi at idle be ok?": [],
        "it has a 350 with 120,000 miles from 1978": [],
        "gauge used to show 60, now it shows 20 psi": ["reading 20 psi"],
        "goes from 60 cold to 15 hot at idle": ["reading 60 psi cold", "reading 15 psi hot, idle"],
        "pressure dropped from 45 to 20": ["reading 20 psi"],
        "new shells, idle went 11 to 19 psi": ["reading 19 psi idle"],
        "2 kg/cm2 or less at warm idle": ["reading under 2 kg/cm2 hot, idle"],
        "can't even get 20 psi": ["reading under 20 psi"],
        "pressure in the low 20s at idle": ["reading 20 to 23 psi idle"],
        "idle 12 psi, 2000 rpm 38": ["reading 12 psi idle", "reading 38 psi 2000 rpm"],
        "shows only 10 lb. when hot, it used to show 30 lb.": ["reading 10 psi hot"],
        "needle will drop to 1/4 when idling": ["reading 1/4 of the dial idle"],
        "oil pressure: 35 @ 2500": ["reading 35 psi 2500 rpm"],
        "pressure fell 15 psi": [],
        "15 to 20 psi above the panel gauge": [],
        "fitted a 0 to 100 psi gauge and a 20 psi switch": [],
        "reads 50 psi with the engine off": [],
        "pressure either 25 psi or zero": [],
        "needle swings from 8 to 65 psi": [],
        "gauge wavers between 5 and 15 psi at hot idle": ["reading 5 to 15 psi hot, idle"],
        "needle bounces from 20 to 28 psi at 2000 rpm": ["reading 20 to 28 psi 2000 rpm"],
        "reads 55 cold, falling to 12 once warm; used to hold 30 hot last summer": [
            "reading 55 psi cold",
            "reading 12 psi hot",
        ],
        "panel gauge says 10, mine says 45": [
            "reading 10 psi",
            "reading 45 psi",
            "finding panel_reads_too_low present",
        ],
        "a mechanical gauge shows 50 where the dash gauge reads 15": [
            "reading 50 psi",
            "reading 15 psi",
            "finding panel_reads_too_low present",
        ],
        "sender reads 10 but my own gauge 38": [
            "reading 10 psi",
            "reading 38 psi",
            "finding panel_reads_too_low present",
        ],
        "my old gauge read 38, dash says 10": ["reading 38 psi", "reading 10 psi"],
        "panel gauge says 45, mine says 44": ["reading 45 psi", "reading 44 psi"],
        "dash gauge reads a quarter on the gauge, a mechanical gauge shows 45 psi": [
            "reading a quarter of the dial",
            "reading 45 psi",
        ],
        "hot idle 8, 2000 rpm 22, 3000 rpm 30": [
            "reading 8 psi hot, idle",
            "reading 22 psi hot, 2000 rpm",
            "reading 30 psi hot, 3000 rpm",
        ],
        "gauge used to show 55 on the highway, now barely 30": ["reading 30 psi cruise"],
        "used to be 60 cold and 30 hot": ["baseline 60 psi cold", "baseline 30 psi hot"],
        "hot it's 12 at 2000 and 3 at idle": [
            "reading 3 psi hot, idle",
            "reading 12 psi hot, 2000 rpm",
        ],
        "cold oil pressure 60. Port 45 psi, starboard 28 at 2000 rpm": [
            "reading 60 psi cold",
            "reading 28 psi 2000 rpm",
        ],
        "the right engine has 50 psi and the left 20": ["reading 20 psi"],
        "it's 10 psi against 25 on the other": ["reading 10 psi"],
        "test port 45 psi": ["reading 45 psi"],
        "when I brake hard I lose oil pressure, 70 to 20": ["reading 20 psi"],
        "pressure is 35 where it ran 45": ["reading 35 psi"],
        "pressure was 55 in May, 48 in July, 40 now": ["reading 40 psi"],
        "never over 12 psi, hot or cold": ["reading never above 12 psi hot or cold"],
        "now at 12 hot idle from 5": ["reading 12 psi hot, idle"],
        "crank ground 20/20, pressure is good": [],
        "I was afraid it would go to 0 psi": [],
        "ran 20W-50 in it": [],
        "my 2.0 petrol estate has a low oil pressure light": [],
        "wheel loader: 44 psi high idle": ["reading 44 psi full speed"],
        "pickup: 44 psi high idle": ["reading 44 psi fast idle"],
        "test gauge, 80c oil 0.4 bar at 850 rpm": ["reading 0.4 bar 80 C, 850 rpm"],
        "hot idle 0.9 bar was 2.0, at 1400rpm 2.6 was 4.5": [
            "reading 2.6 bar hot, 1400 rpm",
            "reading 0.9 bar hot, idle",
        ],
        "zero psi at hot idle": ["reading 0 psi hot, idle"],
        "1.7 bar at hot idle 750 rpm": ["reading 1.7 bar hot, 750 rpm"],
        "At 2000 rpm, parked in neutral, the gauge reads 60 psi": ["reading 60 psi 2000 rpm"],
        "15 psi is hot idle 700 rpm, 40 at 2000": [
            "reading 15 psi hot, 700 rpm",
            "reading 40 psi 2000 rpm",
        ],
        "hot idle fell from 30 to 11 psi at 600rpm, 26 at 1800 hot": [
            "reading 11 psi hot, 600 rpm",
            "reading 26 psi hot, 1800 rpm",
        ],
        "gauge flickers at hot idle, drops to 5 psi": ["reading 5 psi hot, idle"],
        "pressure flickers at idle once hot, down to 3 or 4 psi": ["reading 3 to 4 psi hot, idle"],
        "pressure is about 25 at idle cold and 10 hot": [
            "reading about 25 psi cold, idle",
            "reading 10 psi hot, idle",
        ],
        "gauge holds 40 until it gets hot then it shows below 10 at stop lights": [
            "reading 40 psi cold",
            "reading under 10 psi hot, idle",
        ],
        "gauge reads 40 on start up and after 10 minutes it is down to 5 at idle": [
            "reading 40 psi at start",
            "reading 5 psi idle, after minutes of running",
        ],
        "oil pressure 60 psi drops in 2 minutes to 20": [
            "reading 60 psi",
            "reading 20 psi after minutes of running",
        ],
    }
)
def readings(paragraph: Paragraph) -> Iterator[Fact]:
    """Each pressure, with the speed and heat said nearest to it."""
    waiting: list[Pressure] = []
    unit = unit_of(paragraph)
    made: list[tuple[Pressure, Pressure | None]] = []
    put_on, olden = False, list[Pressure]()
    for line in paragraph.lines:
        spoken_of = paragraph.speaks_of_pressure or beside_each_other(line)
        spoken_of = spoken_of or compares_pressures(line) or bool(made)
        found = _pressures(line, unit, spoken_of)
        _share_out(line, found, paragraph.is_governed)
        _set_now(line, found)
        put_on = _set_direct(line, found, put_on)
        for each in found:
            each.usual = each.usual or (each.left and not each.near)
        then = [p for p in found if p.usual]
        now = [p for p in found if not p.usual]
        then = [p for p in then if not (is_none(p) or (p.left and _rose(p, now)))]
        beside = partners(now, then or waiting)
        olden += then
        for k, each in enumerate(now):
            usual = beside.get(k)
            if usual in then:
                then.remove(usual)
            made.append((each, usual))
        waiting = [] if now else waiting
        before = nearest_made(made, then[0]) if then else -1
        if then and made and made[-1][1] is None and before >= 0:
            made[before] = (made[before][0], then[0])
        elif then and not made:
            waiting = then
    yield from said_once([_fact(now, usual) for now, usual in made])
    yield from said_once(sound_ones(olden, made, _fact))
    yield from apart_by([now for now, _ in made])
    yield from apart_later([now for now, _ in made])


def _rose(before: Pressure, now: list[Pressure]) -> bool:
    """Whether a pressure is more now than where it came from, which then was not the usual one."""
    was = pressures_at(before.line, before.mark.last - 1)
    those = [v for p in now for v in pressures_at(p.line, p.mark.last - 1)]
    return bool(was and those) and was[0] < min(those)


def _pressures(line: Line, unit: str, spoken_of: bool) -> list[Pressure]:
    found: list[Pressure] = []
    shows = line.find(line.lexicon.shows)
    taken = [m for m in shows if m.value is Shows.NONE]
    for i in range(len(line.tokens)):
        mark = Mark("", i, i + 1)
        if any(mark.overlaps(t) for t in taken):
            continue
        value = value_at(line, i, unit, spoken_of or bool(found))
        stance = line.stances.at(mark)
        if value is None or is_a_step(line, i) or stance & (Stance.SUPPOSED | Stance.ELSEWHERE):
            continue
        first, written = bounded(line, i, value)
        if stance & Stance.DENIED and written == value and not hardly(line, i):
            continue
        usual = bool(stance & Stance.USUAL) or of_an_earlier_day(line, i)
        left = left_behind(line, i)
        found.append(Pressure(Mark(written, first, i + 1), line, usual, left))
    return found


def _share_out(line: Line, found: list[Pressure], governed: bool) -> None:
    """Give each circumstance, speed and temperature to the nearest pressure.

    ``governed``: "high idle" is the speed the governor holds without load.
    """
    if not found:
        return
    lexicon = line.lexicon
    figures: list[Mark[object]] = [
        Mark(t, i, i + 1) for i, t in enumerate(line.tokens) if t.kinds & {"rpm", "temperature"}
    ]
    run = [m for m in line.circumstances if m.value in SPANS]
    marks: list[Mark[object]] = [
        Mark(Speed.FULL, m.first, m.last) if governed and line.word(m.first) == "highidle" else m
        for m in line.find(lexicon.speed)
        if not any(m.overlaps(r) for r in run)
    ]
    any_heat = [m for m in line.find(lexicon.any_heat) if not _is_figure(line, m.last)]
    marks += [m for m in line.circumstances if not any(a.overlaps(m) for a in any_heat)]
    marks += [*any_heat, *gauges_named(line), *figures]
    if len(found) == 1:
        marks = without_standing(line, marks)
    heads: list[Mark[object]] = [p.mark for p in found]
    order = _order(marks, heads)
    every = marks
    marks = [m for m in marks if not line.stances.at(m) & (Stance.SUPPOSED | Stance.ELSEWHERE)]
    for mark, whole in in_groups(line, marks):
        able = [k for k, p in enumerate(found) if not p.left or mark.first > p.mark.first]
        leads = line.word(whole.first - 1) in ("and", "then", "but")
        speaks = is_speed_figure(mark) and line.word(whole.last) in _MAKES  # "2500 rpm makes 20"
        if speaks or (mark.value in SPANS and (leads or line.word(whole.last) == "to")):
            able = [k for k in able if found[k].mark.first > mark.first] or able
        if is_heat(mark) and line.word(mark.first - 1) in ("all", "both") and not found[0].left:
            for each in found:
                each.near += [mark] * (not any(is_heat(m) for m in each.near))
            continue
        if mark.value is Circumstance.SLOWING and recovers_then(line, mark):
            continue  # "shows 10, back the throttle off and it recovers"
        best = min(able, key=lambda k: nearness(line, heads[k], whole, k * order), default=-1)
        if best < 0 or of_none(line, heads[best], whole) or of_alarm(line, heads[best], whole):
            continue
        alone = len(heads) == 1 and is_temperature(mark)
        if line.distance(heads[best], whole) <= _FARTHEST * (1 + alone):
            found[best].near.append(mark)
    carry_on(line, found)
    two = len(found) == len(_BOTH)
    if two and ({by_panel(p) for p in found} == _BOTH or beside_each_other(line)):
        at_one_moment(line, found)
    for each in found:
        each.near += [] if each.near else of_the_book(line, each.mark.last - 1, every)
        each.near += station_of(line, each.mark)


def _order(marks: list[Mark[object]], heads: list[Mark[object]]) -> int:
    """-1 where when it was read stands before each pressure: "idling 20 driving 45"; else 1."""
    plain = [m for m in marks if not is_heat(m)]
    trails = any(m.first >= heads[-1].last for m in plain)
    leads = any(m.last <= heads[0].first for m in marks)
    of_all = any(is_heat(m) and m.first < heads[0].first for m in marks)
    each = len(plain) >= len(heads) > 1  # "hot 15 tickover 35 at 40 mph"
    return -1 if (of_all and not (trails and each)) or (leads and not trails) else 1


def _set_direct(line: Line, found: list[Pressure], put_on: bool) -> bool:
    """Give a gauge of its own to the pressures behind its name: "put a test gauge on. 12 at idle".

    ``put_on``: one was named in the sentence before. Returns whether the next may go on with it.
    """
    if line.find(line.lexicon.panel):
        return False
    if put_on and OF_THE_PANEL & {t.word for t in line.tokens}:
        put_on = False  # "reads 38. New sender fitted, now it reads 40"
    named = [
        m.first
        for m in line.find(line.lexicon.direct)
        if not line.stances.at(m) & (UNTRUE | Stance.DENIED | Stance.GUESSED)
    ]
    for each in found:
        behind = any(at < each.mark.first for at in named)
        each.direct = behind or (put_on and not line.find(line.lexicon.direct))
    return bool(named) or (put_on and bool(found))


def _set_now(line: Line, found: list[Pressure]) -> None:
    """Take a pressure for the usual one of "now 40" straight behind it: "60 at cruise now 40"."""
    for then, now in pairwise(found):
        between = [line.word(k) for k in range(then.mark.last, now.mark.first)]
        led = "now" in between and set(between[between.index("now") :]) <= BESIDE_NOW
        if led and not now.near and not then.usual and len(between) <= _NOW_WITHIN:
            then.usual = True
            now.near += then.near


def _is_figure(line: Line, at: int) -> bool:
    return at < len(line.tokens) and line.tokens[at].is_figure


def _fact(pressure: Pressure, usual: Pressure | None) -> Fact:
    line, fields = pressure.line, dict[str, Value]()
    used: list[Mark[object]] = [pressure.mark]
    near = sorted(pressure.near, key=lambda m: how_near(line, pressure.mark, m))
    during: list[str] = []
    for mark in near:
        key, word = field_of(mark, line, pressure.mark.first)
        if key == "during" and word not in during:
            during.append(word)
        elif key and key != "during" and (key not in fields or of_an_idle(mark.value, fields)):
            fields[key] = word
        elif key != "during":
            continue
        used.append(mark)
    if fields.get("rpm") == Speed.IDLE.value and Circumstance.IDLE.value in during:
        during.remove(Circumstance.IDLE.value)
    if fields.get("oil") == Heat.COLD.value and Circumstance.START.value in during:
        during.remove(Circumstance.START.value)
    spare = {Circumstance.IDLE.value} if "rpm" in fields else set()
    spare |= {Circumstance.SPEED.value} if "rpm" in fields else set()
    during = [d for d in during if d not in spare]
    run = [d for d in during if d in _SPEEDS]  # the nearest first
    if run:
        fields["rpm"] = _SPEEDS[run[0]].value
        during = [d for d in during if d not in _SPEEDS]
    if usual is not None and not pressure.near and usual.line is line:
        fields |= _when(usual)  # "used to show 55 on the highway, now 30"
    if pressure.direct and not pressure.usual:
        fields.setdefault("gauge", DIRECT)
    if fields.get("gauge") == PANEL:
        del fields["gauge"]  # what a reading is of unless it says otherwise
    fields = {"pressure": pressure.mark.value, **fields}
    if during:
        fields["during"] = during
    spans: tuple[Span, ...] = line.span(used)
    if usual is not None:
        fields["usual"] = usual.mark.value
        spans += usual.line.span([usual.mark, *usual.near])
    return Fact("reading", fields, tuple(sorted(spans)), line.stances.surety(pressure.mark))


def _when(pressure: Pressure) -> dict[str, Value]:
    """The speed and heat of a pressure, where they are fields of their own."""
    said = (field_of(m, pressure.line, pressure.mark.first) for m in pressure.near)
    return {key: word for key, word in said if key in ("rpm", "oil", "coolant")}
