"""Read work done before the trouble began."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import pairwise

from diagnose.understanding.sentences.paragraph import Line, Paragraph
from diagnose.understanding.words.facts import Fact, Value, reader
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.words.service import ran_well
from diagnose.understanding.work.before_work import well_until
from diagnose.understanding.work.began_then import area_of, since_behind
from diagnose.understanding.work.jobs import Job, jobs, served
from diagnose.understanding.work.run_since import run_since
from diagnose.understanding.work.since_then import shown_at_the_start, there_since
from diagnose.understanding.work.work import tried, troubles_of
from knowledge.lexicon.stance.stance import NEGATION
from knowledge.lexicon.work.beside_work import (
    APART_FROM,
    CARRIED_OUT,
    LOOKS,
    MENDS,
    REASSEMBLED,
    REUSED,
    TAKEN,
)
from knowledge.reports.words import Done, Hands, Result

_WHO = frozenset(["i", "we", "ive", "weve", "of"])  #: "nothing I have done helped"
_DAYS_AGO = ("1 days", "2 days")
_CARRIED = 4  #: words from "not" to "carried out"
_PUT_BACK = 5  #: so many words behind the work it was refitted
_DECIDED = frozenset(["decided", "elected", "opted"])
_SHOP = (Hands.SHOP, Hands.MACHINE_SHOP, Hands.EARLIER_OWNER)
#: work that cannot bring about low pressure from the first start; sentences from work to what it did
_NOT_OPENED, _WORK_WITHIN = frozenset(["instrument", "storage"]), 2


@reader(
    {
        "rebuilt 500 miles ago with standard bearings": ["earlier whole_engine rebuilt 2 weeks"],
        "rebuilt 50 miles ago": ["earlier whole_engine rebuilt straight before"],
        "rebuilt the bearings two weeks ago": ["earlier bearings rebuilt 2 weeks"],
        "new engine, low pressure": [],
        "a new engine is five grand": [],
        "low pressure since the motor swap": ["earlier other_engine renewed straight before"],
        "big end welded to the crank": [],
        "spun a main on the old block so I built another": [],
        "did an oil change on the wife's car yesterday. oil light on": [
            "earlier oil_change renewed 2 days"
        ],
        "replacement engine, low pressure": ["earlier other_engine renewed"],
        "did the head gasket last week": ["earlier cylinder_head renewed 1 weeks"],
        "did the head gasket cause this": [],
        "the maker's change at the pump's gear was not carried out": [],
        "main and rod bearings are new": ["earlier bearings renewed"],
        "replaced the pump, gauge now reads less": ["earlier oil_pump renewed"],
        "replaced the pump, gauge and filter last week": [
            "earlier oil_pump renewed",
            "earlier instrument renewed 1 weeks",
            "earlier filter_change renewed 1 weeks",
        ],
        "fitted a chain kit. When the engine was started, the oil lamp came on": [
            "earlier timing renewed straight before"
        ],
        "fitted a chain kit. Drove it for weeks. Started it, the oil lamp came on": [
            "earlier timing renewed"
        ],
        "the oil lamp came on. Fitted a chain kit. Started it": ["earlier timing renewed"],
        "so I decided to rebuild the top end and to replace the oil pump": [],
        "since the rebuild": ["earlier whole_engine rebuilt straight before"],
        "engine rebuilt last year by a machine shop": ["earlier whole_engine rebuilt 1 years"],
        "head gasket replaced two weeks ago": ["earlier cylinder_head renewed 2 weeks"],
        "timing case rebuilt about three months before": ["earlier timing rebuilt 3 months"],
        "oil changed the day before": ["earlier oil_change renewed 1 days"],
        "rebuilt engine fitted a few months ago": ["earlier other_engine renewed 3 months"],
        "new oil pump, still the same": [],
        "changed the filter, now pressure is lower than before": [
            "earlier filter_change renewed straight before"
        ],
        "fitted a new pump, pressure reads less than before": ["earlier oil_pump renewed"],
        "1300 hours since overhaul": [],
        "engine rebuilt 200 hours ago": ["earlier whole_engine rebuilt 9 months"],
        "bearings renewed 3 hours ago": ["earlier bearings renewed 3 h"],
        "oil pump was dismantled, cleaned and refitted with new gaskets 3 weeks before": [
            "earlier oil_pump taken off and refitted 3 weeks"
        ],
        "sump was removed and refitted": ["earlier sump taken off and refitted"],
        "took the oil pump apart, cleaned it, refitted it": [],
        "transferred my pan over": ["earlier sump taken off and refitted"],
        "pulled the pan": [],
        "fitted a new pump and it was fine for about 35,000 miles. Now it is low": [
            "earlier oil_pump renewed 3 years"
        ],
        "fitted a new pump. Ran perfectly for two years": ["earlier oil_pump renewed 2 years"],
        "fitted a new pump, it ran fine for ten minutes": [],
        "pump rebuilt with a kit": ["earlier oil_pump rebuilt"],
        "turbo rebuilt by a shop last year": ["earlier turbo rebuilt 1 years"],
        "I have a spare pump on the shelf": [],
        "infrequent oil changes": [],
        "oil changed every 250 hours": [],
        "oil changed by the book": [],
        "timing is 10 degrees. Carb rebuilt last summer": ["earlier fuel_system rebuilt 1 years"],
        "second trip the lifters rattled": [],
        "started the rebuilt two litre on Sunday": ["earlier whole_engine rebuilt 2 days"],
        "last week the gauge dropped to zero": [],
        "the gauge hose blew out": [],
        "pressure dropped after I switched to another brand": [],
        "the pump came from a parts bin, never opened it": [],
        "otherwise new pump needed": [],
        "planning to rebuild the engine": [],
        "should I change the oil?": [],
        "his engine was rebuilt last year, my brother says": [],
        "it was fine before the rebuild": ["earlier whole_engine rebuilt straight before"],
        "no trouble prior to the oil change": ["earlier oil_change renewed straight before"],
        "overhaul done 3 weeks ago, since then only 0.9 bar at hot idle": [
            "earlier whole_engine rebuilt straight before"
        ],
        "rebuilt 2 years ago. Ever since then the pressure is low when hot": [
            "earlier whole_engine rebuilt straight before"
        ],
        "rebuilt 3 weeks ago, since that all good until today, now low pressure": [
            "earlier whole_engine rebuilt 3 weeks"
        ],
        "rebuilt 3 weeks ago, since then it ran fine": ["earlier whole_engine rebuilt 3 weeks"],
        "dry sump, crank shells new": ["earlier bearings renewed"],
        "rebuilt straight six, 50 hours": ["earlier whole_engine rebuilt 2 months"],
        "full rebuild, 500 miles on it": ["earlier whole_engine rebuilt 2 weeks"],
        "rebuilt engine, 20 hours of work": ["earlier whole_engine rebuilt"],
    }
)
def earlier_work(paragraph: Paragraph) -> Iterator[Fact]:
    """Work before the trouble, with how long before and by whom."""
    as_trials = {
        job.trial
        for job, mark, _ in tried(paragraph)
        if mark is None or mark.value is not Result.WORSE  # then the trouble began with it
    }
    troubles = troubles_of(paragraph)
    lines = paragraph.lines
    for line, ahead, behind in zip(lines, (None, *lines), (*lines[1:], None), strict=False):
        own = jobs(line, ahead)
        for job in map(_as_put_back, own):
            before, words = job.before()
            ran = served(job, [line, behind] if behind else [line])
            if ran and not [m for m in words if m not in (*job.lead, *job.then_now)]:
                before = ran[1].value  # what is said of its age goes before
            well = well_until(job)
            if well is not None:
                words = (*words, well)
                before = before or "straight before"
            then = there_since(job, behind) if before and not ran else None
            if then is not None:
                words, before = (*words, then), "straight before"
            if not before and (ran_since := run_since(job)):
                before, words = ran_since[0], (*words, ran_since[1])
            if not before and (since := since_behind(job)) is not None:
                before, words = "straight before", (*words, since)
            hands = _hands(line, job)
            area = area_of(job, begun=bool(before))
            if not area or _is_another(job) or _not_carried_out(job) or _long_ago(job, words):
                continue
            later = any(line.word(k) == "later" for m in words for k in range(m.first, m.last))
            lately = later or before in _DAYS_AGO  # "put a new pump in over the weekend. No change"
            if job.trial in as_trials and (not before or lately or job.begins_it):
                continue
            if not before and job.trial not in as_trials:
                before = "straight before" if shown_at_the_start(job, paragraph, troubles) else ""
            if not before and _decided(job):
                continue
            opened = job.done in (Done.REFITTED, Done.OPENED) and not _off_for(job)
            opened = opened and job.line.word(job.first) not in REUSED and not job.put_back
            if opened and not before:
                continue
            fields: dict[str, Value] = {"what": area}
            if job.done:
                fields["done"] = job.done.value
            if before:
                fields["before"] = before
            if hands:
                fields["hands"] = hands.value.value
            marks = [*job.marks, *words, *([hands] if hands else [])]
            spans = line.span(marks) if not ran else (*line.span(marks), *ran[0].span([ran[1]]))
            yield Fact("earlier", fields, spans)
        for mark in line.stated(line.lexicon.nothing_done):
            of_a_part = any(m.last <= mark.first for m in line.find(line.lexicon.parts))
            apart = any(line.word(k) in APART_FROM for k in range(mark.last, mark.last + _CARRIED))
            apart = apart or any(line.word(k) in _WHO for k in range(mark.first, mark.last))
            if not own and not of_a_part and not apart:
                yield Fact("earlier", {"what": "nothing"}, line.span([mark]))


@reader(
    {
        "rebuilt it, ran well for two months, then low when hot": [
            "finding low_from_first_start absent"
        ],
        "ran well for two months after the rebuild": ["finding low_from_first_start absent"],
        "fitted a new pump and it was fine for two years": ["finding low_from_first_start absent"],
        "rebuilt it last week, drove fine for two days, now it has no pressure": [
            "finding low_from_first_start absent"
        ],
        "it ran well for two months": [],
        "ran it for a week with the gauge disconnected": [],
        "rebuilt it, never ran well for two months": [],
    }
)
def well_at_first(paragraph: Paragraph) -> Iterator[Fact]:
    """Good pressure for a time after work on the engine: it is no fault of the first start."""
    for line in paragraph.lines:
        for mark in filter(line.is_stated, ran_well(line.tokens)):
            before = paragraph.lines[max(0, line.number - _WORK_WITHIN) : line.number + 1]
            if not any(j.area and j.area not in _NOT_OPENED for each in before for j in jobs(each)):
                continue
            yield Fact(
                "finding", {"what": "low_from_first_start", "state": "absent"}, line.span([mark])
            )
            return


def _off_for(job: Job) -> bool:
    """Whether it was off for another reason than this trouble: "sump taken off for a gasket"."""
    after = [job.line.word(k) for k in range(job.last, job.last + 4)]
    for_it = after[0] in ("for", "by") or any(a == "to" and b in MENDS for a, b in pairwise(after))
    return for_it and not LOOKS & set(after)


def _is_another(job: Job) -> bool:
    """Whether "put a new one in" is said of a part that was named, not of an engine."""
    if job.area != "other_engine":
        return False
    line = job.line
    ones = "one" in line.words(job.first, job.last)
    return ones and not {"engine", "motor", "lump"} & {t.word for t in line.tokens}


def _as_put_back(job: Job) -> Job:
    """The whole of an overhaul that was put back: "pump dismantled, cleaned and refitted"."""
    line = job.line
    part_first = any(m.first == job.first for m in line.find(line.lexicon.parts))
    behind = range(job.last - 1, min(job.last + _PUT_BACK, len(line.tokens)))
    back = next((k for k in behind if line.word(k) in REASSEMBLED), None)
    taken = {line.word(job.first - k) for k in (1, 2)} & TAKEN
    if job.done not in (Done.REFITTED, Done.OPENED) or taken or not part_first or back is None:
        return job  # "took the pump apart, refitted it" was a look inside
    marks = (*job.marks, Mark(True, min(job.last, back), back + 1))
    return replace(job, marks=marks, done=Done.REFITTED, put_back=True)


def _long_ago(job: Job, words: Sequence[Mark[object]]) -> bool:
    """Whether a rebuilt engine ran so many hours since that they say its age, not its work."""
    aged = any("manyhours" in job.line.tokens[m.first].kinds for m in words)
    return job.area == "whole_engine" and aged


def _not_carried_out(job: Job) -> bool:
    """Whether its clause ends with that it was not done: "a bulletin on the pump not carried out"."""
    line = job.line
    behind = range(job.last, line.clause(job.last - 1).last)
    denied = next((k for k in behind if line.word(k) in NEGATION), None)
    return denied is not None and any(
        line.word(k) in CARRIED_OUT for k in range(denied, denied + _CARRIED)
    )


def _decided(job: Job) -> bool:
    """Whether its sentence says that it was decided on: then the trouble came first."""
    return any(job.line.word(k) in _DECIDED for k in range(job.first))


def _hands(line: Line, job: Job) -> Mark[Hands] | None:
    """Who did it, where "by" or the subject says so."""
    for mark in line.stated(line.lexicon.hands):
        clause = line.clause(job.first)
        inside = clause.first <= mark.first < clause.last
        by = line.word(mark.first - 1) in ("by", "the", "a", "my", "local", "to")
        if inside and (
            (mark.value in _SHOP and by) or (mark.value is Hands.OWNER and mark.overlaps(job.whole))
        ):
            return mark
    return None
