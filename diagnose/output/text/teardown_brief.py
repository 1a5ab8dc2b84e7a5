"""What ``teardown`` prints by default: the stages in a table and the steps of the next one.

``text.teardown`` has the whole plan.
"""

from __future__ import annotations

from diagnose.errors import UsageError
from diagnose.output.documents.stages import PlannedCheck, PlannedStage
from diagnose.output.documents.teardown import TeardownDocument
from diagnose.output.lines import as_typed, headed, labelled, percent, together, wrapped
from diagnose.output.text.screen import (
    Block,
    command_lines,
    cut,
    gravest_lines,
    on_screen,
    report_lines,
)
from diagnose.output.text.teardown import stage_lines

MOST = 34  #: lines
NAMES = 50  #: columns of the stages' names in the table
STAGES, SHORT = 8, 4  #: stages in the table; where the screen is full
CHANGES = 4  #: lines on what changed
LONG = 240  #: minutes from which hours are said
CHECKS = 5  #: of the next stage
STEPS = 4  #: of a check
LOOK_FOR = 4  #: findings named of a check
FOLLOW = 3  #: jobs of the clean-up named


def teardown_brief(document: TeardownDocument) -> str:
    """Return the plan in about thirty lines, the next thing to do last."""
    history = document.history
    if document.closed:
        return _closed(document)
    blocks = [
        Block(wrapped(history.says, 0, 2, history.whole) if history else []),
        Block(wrapped(f"Teardown plan: {document.name}", 0, 2)),
        Block(gravest_lines(document.alarms, "diagnose review")),
        Block(_changed(document)),
        Block(wrapped(document.strip, 0, 2) if document.strip else []),
        Block(_in_short(document)),
        *_table(document),
        *(_stage(document.stages[0], document.first_step) if document.stages else []),
        *_loose_ends(document),
        Block(_next_lines(document)),
    ]
    return on_screen(blocks, MOST)


def _closed(document: TeardownDocument) -> str:
    """A closed job: nothing to open, and where the plan still is."""
    blocks = [
        Block(wrapped(f"Teardown plan: {document.name}", 0, 2)),
        Block(gravest_lines(document.alarms, "diagnose review")),
        Block(wrapped(document.closed, 0, 2)),
        Block(["The plan as it stood: --all", *report_lines(document.path)]),
    ]
    return on_screen(blocks)


def _care(stage: PlannedStage) -> list[str]:
    """The cautions of what is shown, in a few words each: openings, and the first checks."""
    shown = [c for o in stage.opens for c in o.care]
    shown += [c for check in stage.checks[:CHECKS] for c in check.care]
    return list(dict.fromkeys(shown))


def stage_text(document: TeardownDocument, number: int) -> str:
    """Return one stage in full. Raises UsageError where the plan has no such stage."""
    if not 1 <= number <= len(document.stages):
        last = len(document.stages)
        has = f"the stages are 1 to {last}" if last else "this plan has no stage"
        raise UsageError(f"stage: no stage {number}; {has}")
    stage = document.stages[number - 1]
    blocks = [wrapped(f"Teardown plan: {document.name}", 0, 2)]
    blocks += stage_lines(stage, len(document.stages))
    return together([*blocks, _record(document, stage)])


def _changed(document: TeardownDocument) -> list[str]:
    if document.changed is None:
        return []
    lines = [f"What changed since entry {document.changed.since}"]
    words = list(document.changed.in_words(with_ids=False))
    for line in words[:CHANGES]:
        lines += wrapped(f"- {line}", 2, 4)
    return [*lines, f"  {len(words) - CHANGES} more: --all"] if len(words) > CHANGES else lines


def _in_short(document: TeardownDocument) -> list[str]:
    if document.stop_here:
        return wrapped(document.stop_here)
    lines = []
    if document.nothing_wrong:
        lines += wrapped(
            "Nothing wrong found: every reading is within its limits. There is no reason to take "
            "it apart; this is the order if you look all the same.",
            0,
            2,
        )
    lines += wrapped(f"Likely now: {document.likely}", 0, 2)
    minutes = document.minutes
    if document.found:
        chance = f"Chance that this plan confirms a cause: {percent(document.found)}"
        if document.nothing_wrong:
            chance = f"If there is a fault, this plan confirms it in {percent(document.found)}"
        lines += wrapped(
            f"{chance}, on average after {_time(minutes.until_confirmed)} hands-on, as you stop "
            f"then; all of it takes {_time(minutes.all)}.",
            0,
            2,
        )
    else:
        lines += wrapped(f"This plan confirms no cause; all of it takes {_time(minutes.all)}.")
    if document.limit is not None:
        lines += wrapped(f"Only what fits into {document.limit:.0f} min.")
    return lines


def _time(minutes: float) -> str:
    """Minutes, or hours where they are many."""
    return f"{minutes:.0f} min" if minutes < LONG else f"{minutes / 60:.0f} h"


def _table(document: TeardownDocument) -> list[Block]:
    """The first stages, one line each; a few of them may be spared."""
    if not document.summary:
        return []
    head = "Stages".ljust(NAMES) + "minutes so far  found by then"
    rows = [
        f"{s.number:3}  " + cut(s.says, NAMES - 6).ljust(NAMES - 5) + f"{s.minutes:14.0f}"
        f"{percent(s.chance):>15}"
        for s in document.summary
    ]
    first, more, last = rows[:SHORT], rows[SHORT:STAGES], len(rows)
    blocks = [Block([head, *first]), Block(more, spare=1, space=False)]
    if last > SHORT:
        shown = "the rest" if last > STAGES else "all stages"
        blocks.append(Block([f"     {shown}, to stage {last}: --all"], space=False))
    return blocks


def _stage(stage: PlannedStage, first: str) -> list[Block]:
    """The stage to do now: what to open with what care, then its checks."""
    lines = wrapped(f"First: {first}", 0, 2) if first else []
    lines += wrapped(f"Now, stage {stage.number}: {stage.title} ({stage.minutes:.0f} min)", 0, 2)
    care = _care(stage)
    lines += wrapped(f"caution: {'; '.join(care)}", 2, 4) if care else []
    ready: list[str] = []
    for opening in stage.opens:
        if opening.keep:
            lines += wrapped(f"record first: {opening.keep}", 2, 4)
        if opening.minutes:
            ready += opening.ready
    blocks = [Block(lines)]
    blocks.append(Block(labelled("ready", "; ".join(ready), 2, 9) if ready else [], 9, False))
    for place, check in enumerate(stage.checks[:CHECKS]):
        blocks += _check(check, f"{stage.number}.{place + 1}", place)
    more = len(stage.checks) - CHECKS
    if more > 0:
        blocks.append(
            Block([f"       {more} more at this stage: --stage {stage.number}"], space=False)
        )
    return blocks


def _check(check: PlannedCheck, number: str, place: int) -> list[Block]:
    """A check: its name and care always, its steps and findings as there is room."""
    lines = headed(f"  {number}  ", f"{check.says} ({check.minutes:.0f} min)")
    if check.evidence:
        lines += wrapped(f"first, because {check.evidence}", 6, 8)
    if check.keep:
        lines += wrapped(f"record first: {check.keep}", 6, 8)
    steps = []
    for step in check.steps[:STEPS]:
        steps += wrapped(f"- {step}", 6, 8)
    if len(check.steps) > STEPS:
        steps.append(f"      {len(check.steps) - STEPS} more steps: --stage {number.split('.')[0]}")
    seen = [f.says for f, _ in check.blanks]
    more = f"; {len(seen) - LOOK_FOR} more" if len(seen) > LOOK_FOR else ""
    look = wrapped(f"look for: {'; '.join(seen[:LOOK_FOR])}{more}", 6, 8)
    waits = [f"      then wait {check.waits}"] if check.waits else []
    return [
        Block(lines, space=False),
        Block(steps, spare=place * 2 + 2 if place else 0, space=False),
        Block(waits, space=False),
        Block(look, spare=place * 2 + 3, space=False),
    ]


def _loose_ends(document: TeardownDocument) -> list[Block]:
    """What is open before anything goes together; a line of it while the plan goes on."""
    ends = document.loose_ends
    if not ends.shown:
        return []
    todo = [t for t in ends.follow if t.open]
    jobs = f"{len(todo)} jobs" if len(todo) > 1 else "one job"
    first = "; ".join(t.says for t in todo[:FOLLOW])
    if document.stages:
        text = f"Clean-up after what was found: {jobs}, see diagnose signoff."
        return [Block(wrapped(text, 0, 2) if todo else [], spare=4)]
    lines = ["Before you put anything together"]
    if ends.confirmed:
        lines += labelled("cause", ends.causes, 2, 14)
        lines += labelled("remedy", ends.remedy, 2, 14)
    if ends.unexplained and ends.confirmed:
        more = f"; {len(ends.unexplained) - 2} more" if len(ends.unexplained) > 2 else ""
        named = "; ".join(f.says for f in ends.unexplained[:2])
        lines += labelled("unexplained", f"{named}{more}", 2, 14)
    if ends.pressure:
        lines += labelled("pressure", ends.pressure, 2, 14)
    if ends.damage:
        lines += labelled("damage", "; ".join(d.says for d in ends.damage), 2, 14)
    if todo:
        lines += labelled("clean-up", f"{jobs} open: {first} ... (--all)", 2, 14)
    return [Block(lines)]


def _next_lines(document: TeardownDocument) -> list[str]:
    name = as_typed(document.path)
    if not document.stages:
        return command_lines("Next", f"diagnose signoff {name}")
    stages = "a stage: --stage 2" if len(document.stages) > 1 else "in full: --stage 1"
    return [
        f"Whole plan, tools, parts: --all; {stages}; a sheet: --markdown",
        *_record(document, document.stages[0]),
    ]


def _record(document: TeardownDocument, stage: PlannedStage) -> list[str]:
    first = stage.checks[0].findings[0]
    command = f"diagnose record {as_typed(document.path)} {first.id}=yes"
    return command_lines("Write down what you find (yes, no, unknown)", command)
