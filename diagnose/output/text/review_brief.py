"""What ``review`` prints by default: the answer on one screen, the next thing to do last."""

from __future__ import annotations

from diagnose.output.documents.next_checks import CheckOption
from diagnose.output.documents.ranking import ORIGIN_IS_OPEN, RankedCause
from diagnose.output.documents.review import ReviewDocument
from diagnose.output.lines import as_typed, headed, labelled, percent, wrapped
from diagnose.output.text.next_step import first_lines, nothing_left_lines
from diagnose.output.text.screen import (
    Block,
    command_lines,
    gravest_lines,
    on_screen,
    report_lines,
)
from knowledge.model import Station

CAUSES = 3  #: places where it may have begun
PLACES = 3  #: to clean, named
FOUND = 3  #: found faults named
EXPLAINED = 2  #: findings named that the first of them explains
SPARE = (0, 2, 8)  #: of each of the three, as in ``Block``
CERTAIN = 0.9  #: probability of damage from which the screen always says so
INSTRUMENT = Station.INSTRUMENT.value
LEAST = 0.02  #: probability from which a cause after the first is worth a line


def review_brief(document: ReviewDocument, causes: int = CAUSES) -> str:
    """Return the review in thirty lines, with so many causes."""
    blocks = [
        *_history(document),
        Block(_title(document), space=False),
        *_alarms(document),
        *_contradictions(document),
        *_found_lines(document),
        *_began(document, causes),
        *_followed(document),
        Block(wrapped(document.strip, 0, 2) if document.strip else [], spare=1, space=False),
        Block(_more_lines(document)),
        *_next_lines(document),
    ]
    return on_screen(blocks)


def _more_lines(document: ReviewDocument) -> list[str]:
    command = f"diagnose review {as_typed(document.path)} --full"
    return [
        *wrapped(f"Reasons and rivals: {command}", 0, 2, [command]),
        *wrapped("The engine maker's manual comes first. Not for certified aircraft engines."),
    ]


def _history(document: ReviewDocument) -> list[Block]:
    if not document.history:
        return []
    return [Block(wrapped(document.history.says, 0, 2, document.history.whole))]


def _title(document: ReviewDocument) -> list[str]:
    lines = wrapped(document.title or "Case without a title", 0, 2)
    if document.closed:
        lines += wrapped(document.closed, 0, 2)
    if not document.evidence:
        lines += wrapped("Nothing seen or reported yet: this is only how common each cause is.")
    return lines


def _alarms(document: ReviewDocument) -> list[Block]:
    """The gravest alarm in full, the rest in a line; none of a closed job."""
    if document.closed:
        return []
    if not document.alarms:
        lines = wrapped(document.verdict, 0, 2) if document.verdict else []
        if document.nothing_wrong:
            close = f'diagnose close {as_typed(document.path)} --cause "nothing wrong" --how TEXT'
            lines += wrapped(f"To end the job so: {close}", 0, 2, [close])
        return [Block(lines)]
    return [Block(gravest_lines(document.alarms))]


def _contradictions(document: ReviewDocument) -> list[Block]:
    if not document.contradictions:
        return []
    first, *others = document.contradictions
    entries = wrapped(f"entries: {', '.join(first.entries_say)}", 2, 4)
    again = wrapped(f"look again: {first.recheck_asks} [{first.recheck}]", 2, 4)
    more = [f"  {len(others)} more: --full"] if others else []
    return [
        Block(wrapped(f"Does not fit together: {first.says}", 0, 2)),
        Block(entries if first.entries_say else [], spare=2, space=False),
        Block(again, spare=1, space=False),
        Block(more, space=False),
    ]


def _found_lines(document: ReviewDocument) -> list[Block]:
    """Found faults with what each costs; of the first whose origin is open, what would decide."""
    head = "What was found" if document.closed else "Found"
    blocks: list[Block] = []
    undecided = next((f for f in document.found if f.decides and not f.damage), None)
    for fault in document.found[:FOUND]:
        lines = [*([] if blocks else [head]), *wrapped(f"- {fault.title}", 2, 4)]
        blocks.append(Block(lines, space=not blocks))
        if fault is undecided and not document.closed:
            for label, text, spare in (
                ("explains", "; ".join(f.says for f in fault.explains[:EXPLAINED]), 0),
                ("from", fault.came_from, 0),
                ("decide", fault.decides, 1),
            ):
                said = labelled(label, text, 4, 14) if text else []
                blocks.append(Block(said, spare, space=False))
    if len(document.found) > FOUND:
        more = f"  and {len(document.found) - FOUND} more: --full"
        blocks.append(Block([more], space=False))
    return blocks


def _began(document: ReviewDocument, most: int) -> list[Block]:
    """The causes, likeliest first; where none were asked for, the last may be spared."""
    head = "Where it most likely began" if document.found else "Most likely"
    if document.nothing_wrong:
        head = "If something is wrong all the same"
    blocks = []
    causes = [c for c in document.causes if document.evidence or not c.no_fault]
    likelier = _likelier(document)
    if likelier and causes.index(likelier) > 1:
        causes = [causes[0], likelier, *(c for c in causes[1:] if c is not likelier)]
    for number, cause in enumerate(causes[:most]):
        if number and cause.probability < LEAST and most == CAUSES:
            break
        lines = headed(f"{percent(cause.probability):>6}  ", f"{cause.says} [{cause.id}]")
        if not number:
            lines = ["What the evidence showed" if document.closed else head, *lines]
        spare = SPARE[number] if number < CAUSES and most == CAUSES else 0
        spare = 0 if cause is likelier else spare
        blocks.append(Block(lines, spare, space=not number))
        if not number:
            blocks += _why(cause)
            if document.remedies and not document.closed:
                remedy = labelled("remedy", cause.remedy, 8, 17)
                blocks.append(Block(remedy, spare=1 if cause.as_found else 5, space=False))
    if document.stations and document.evidence and not document.closed:
        said = ", ".join(f"{s.says} {percent(s.probability)}" for s in document.stations)
        blocks.append(Block(labelled("by place", said, 0, 10), spare=8))
    return blocks


def _likelier(document: ReviewDocument) -> RankedCause | None:
    """The likeliest cause where another is named first because it was found."""
    loss = document.loss_is_real
    able = [c for c in document.causes[1:] if not (loss and c.station == INSTRUMENT)]
    best = max((c for c in able if not c.no_fault), key=lambda c: c.probability, default=None)
    first = next(iter(document.causes), None)
    if best is None or first is None or not first.as_found:
        return None
    return best if best.probability > first.probability else None


def _why(cause: RankedCause) -> list[Block]:
    """The strongest findings for the first cause, and against it where that is more than slight."""
    blocks = []
    if cause.open_origin:
        blocks.append(Block(wrapped(f"({ORIGIN_IS_OPEN})", 8), space=False))
    for label, items, spare in (("for", cause.pro[:2], 2), ("against", cause.con[:1], 3)):
        said = "; ".join(item.says for item in items)
        blocks.append(Block(labelled(label, said, 8, 17) if said else [], spare, space=False))
    if cause.as_found:
        blocks.append(Block(wrapped("(named first because it was found)", 8), space=False))
    if cause.no_fault:
        lines = wrapped("(no fault: it would explain the reading)", 8)
        blocks.append(Block(lines, space=False))
    return blocks


def _followed(document: ReviewDocument) -> list[Block]:
    """Damage to expect, places to clean, findings without explanation."""
    blocks = []
    if document.damage:
        worst = document.damage[-2:]
        said = "; ".join(f"{d.says} ({percent(d.probability)})" for d in worst)
        sure = max(d.probability for d in worst) >= CERTAIN and not document.strip
        blocks.append(Block(labelled("followed", said, 0, 10), spare=0 if sure else 3))
    if document.contaminated:
        few = ", ".join(document.contaminated[:PLACES])
        more = len(document.contaminated) - PLACES
        said = f"dirt or metal: {few}{f' and {more} more: --full' if more > 0 else ''}"
        blocks.append(Block(labelled("to clean", said, 0, 10), space=False))
    if document.unexplained:
        said = "; ".join(str(f) for f in document.unexplained[:2])
        blocks.append(Block(labelled("open", f"not explained yet: {said}", 0, 10), 4, False))
    if document.still_missing:
        blocks.append(Block(wrapped(document.still_missing, 0, 2), spare=2))
    if document.differs:
        blocks.append(Block(wrapped(document.differs, 0, 2)))
    return blocks


def _next_lines(document: ReviewDocument) -> list[Block]:
    if document.closed:
        close = f"diagnose close {as_typed(document.path)}"
        closing = command_lines("Next", close) if document.to_close else []
        if document.held_up:
            signoff = f"diagnose signoff {as_typed(document.path)}"
            return [Block(command_lines("Next, before it runs on", signoff))]
        return [Block([*closing, *report_lines(document.path)])]
    if not document.next:
        to_mend = document.settled or document.remedies
        return [*_afterwards(document), Block(nothing_left_lines(document.path, to_mend=to_mend))]
    check, *others = document.next
    head = "To be surer" if document.nothing_wrong else "Next"
    lines = wrapped(f"First: {document.first_step}", 0, 2) if document.first_step else []
    lines += wrapped(f"{head}: {check.says} ({check.minutes:.0f} min)", 0, 2)
    lines += first_lines(check, 2)
    lines += wrapped(f"caution: {'; '.join(check.care)}", 2, 4) if check.care else []
    shows = [] if document.settled else _outcomes(check)
    command = f"diagnose record {as_typed(document.path)} {check.findings[0]}=yes"
    besides = "; ".join(
        f"{o.says} ({o.minutes:.0f} min)" for o in others if o.inspection != check.inspection
    )
    return [
        Block(lines),
        Block(shows, spare=5, space=False),
        Block(labelled("or", besides, 2, 6) if besides else [], spare=6, space=False),
        Block([f"  write it down (yes, no, unknown): {command}"], space=False)
        if len(command) < 44
        else Block(["  write it down (yes, no, unknown):", f"    {command}"], space=False),
    ]


def _afterwards(document: ReviewDocument) -> list[Block]:
    """Where the cause came from and what it has damaged, as far as nobody has looked yet."""
    if not document.afterwards:
        return []
    lines = ["Before you put it right"]
    for check in document.afterwards:
        lines += wrapped(f"- {check.says} ({check.minutes:.0f} min): {check.why}", 2, 4)
    first = document.afterwards[0]
    lines += wrapped(
        f"how, and what to write down: diagnose show {first.inspection}",
        2,
        4,
        [f"diagnose show {first.inspection}"],
    )
    return [Block(lines, spare=4)]


def _outcomes(check: CheckOption) -> list[str]:
    lines = []
    for outcome in (check.outcomes or ())[:2]:
        then = f"{outcome.found_says}{outcome.leads_says} ({percent(outcome.leads_with)})"
        lines += wrapped(f"if {outcome.says}: {then}", 2, 4)
    return lines
