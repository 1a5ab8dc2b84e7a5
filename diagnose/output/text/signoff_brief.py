"""What ``signoff`` prints by default: what stands open by phase, and the next task.

``text.signoff`` has every task.
"""

from __future__ import annotations

from diagnose.output.documents.signoff import SignoffDocument, SignoffPhase
from diagnose.output.documents.signoff_items import SignoffItem
from diagnose.output.lines import as_typed, columns, headed, labelled, wrapped
from diagnose.output.text.screen import Block, command_lines, cut, on_screen, report_lines
from diagnose.output.text.signoff import whole_engine_lines

WRONG, NEXT, PARTS = 3, 2, 3  #: failed tasks, tasks after the next one, parts named
NAMES = 48  #: columns of the phases' names
LIMITS = 2  #: limits shown of the next task


def signoff_brief(document: SignoffDocument) -> str:
    """Return the sheet in about thirty lines, the next thing to do last."""
    now = _next_item(document)
    blocks = [
        Block(_head(document)),
        Block(wrapped(document.closed, 0, 2) if document.closed else []),
        Block(_standing(document)),
        *_wrong(document),
        Block(_table(document) if now else []),
        Block(_question(document), space=False),
        Block(_used(document) if now else [], spare=2),
        Block(_parts(document) if now else [], spare=4),
        *(_task(now, document) if now else []),
        Block(_next_lines(document, now)),
    ]
    return on_screen(blocks)


def _next_item(document: SignoffDocument) -> SignoffItem | None:
    """The task to do next: the first failed one of the earliest phase, else the first open one."""
    before = [i for i in document.items if i.before_start]
    for items in (before, document.items):
        waiting = [i for i in items if i.failed or i.open]
        if waiting:
            return min(waiting, key=lambda i: 0 if i.failed else 1 if i.stops else 2)
    return None


def _head(document: SignoffDocument) -> list[str]:
    lines = wrapped(f"Sign-off: {document.name}", 0, 2)
    return lines + wrapped(f"Cause: {document.causes_say}", 0, 7)


def _standing(document: SignoffDocument) -> list[str]:
    if document.rebuilt and not document.items:
        return whole_engine_lines(document)
    if not document.items:
        command = f"diagnose signoff {as_typed(document.path)} --opened sump_off"
        return [
            *wrapped(
                "Nothing opened so far needs a check. If you opened more than the case shows:"
            ),
            f"  {command}",
        ]
    done = sum(not i.open for i in document.items)
    failed = sum(i.failed for i in document.items)
    wrong = f"; {failed} failed" if failed else ""
    text = f"{done} of {len(document.items)} tasks done{wrong}."
    if document.over and document.blocking:
        text += f" {len(document.blocking)} left open when the job was closed."
    elif document.held_up and document.started:
        text += f" Do not run it on: {document.held_up} come before the first start."
    elif document.held_up:
        text += f" Do not start yet: {document.held_up} must be done before the first start."
    elif document.asked_first and document.asks and document.started:
        text += " Do not run it on: say first which parts it has."
    elif document.asked_first and document.asks:
        text += " Do not start yet: say first which parts it has."
    elif document.blocking:
        text += f" {len(document.blocking)} left before the job can be closed."
    elif document.asks:
        text += " Left before the job can be closed: say which parts it has."
    return [*wrapped(text), *(whole_engine_lines(document) if document.rebuilt else [])]


def _wrong(document: SignoffDocument) -> list[Block]:
    failed = [i for i in document.items if i.failed]
    blocks = []
    for place, item in enumerate(failed[:WRONG]):
        blocks.append(Block(wrapped(f"FAILED: {item.says}: {item.stands}", 0, 2), space=False))
        remedy = wrapped(f"remedy: {item.remedy}", 2, 4) if item.remedy else []
        blocks.append(Block(remedy, spare=4 + place if place else 0, space=False))
    if len(failed) > WRONG:
        blocks.append(Block([f"  and {len(failed) - WRONG} more: --open-only"], space=False))
    return blocks


def _table(document: SignoffDocument) -> list[str]:
    phases = list(document.phases())
    if not phases:
        return []
    lines = ["Phase".ljust(NAMES) + "   open  failed    done"]
    for phase in phases:
        name = cut(f"{phase.number:3}  {phase.says}", NAMES - 1)
        lines.append(name + " " * (NAMES - columns(name)) + _counts(phase))
    return lines


def _question(document: SignoffDocument) -> list[str]:
    """Which parts it has, and how to say so."""
    if not document.asks:
        return []
    names = "; ".join(a.says for a in document.asks[:PARTS])
    more = len(document.asks) - PARTS
    names += f"; {more} more (--all)" if more > 0 else ""
    command = f"  {_answer(document)}"
    if len(document.asks) == 1:
        return [*wrapped(f"Say whether it has {names}, yes or no:", 0, 2), command]
    return [*wrapped(f"Say which of these it has: {names}; yes for each it has:", 0, 2), command]


def _answer(document: SignoffDocument) -> str:
    """The command that answers all of it at once, each part with its id."""
    says = " ".join(f"{asked.id}=no" for asked in document.asks)
    return f"diagnose record {as_typed(document.path)} {says}"


def _counts(phase: SignoffPhase) -> str:
    waiting = sum(i.open for i in phase.items)
    failed = sum(i.failed for i in phase.items)
    done = len(phase.items) - waiting - failed
    return f"{waiting or '-':>7}{failed or '-':>8}{done or '-':>8}"


def _used(document: SignoffDocument) -> list[str]:
    """Each used part that does not go back as it is, and what to do with it."""
    changed = [p for p in document.used_parts if p.decided and not p.goes_back]
    return [line for p in changed for line in headed(f"{p.fate:6} ", f"{p.part}: {p.how}")]


def _parts(document: SignoffDocument) -> list[str]:
    if not document.parts:
        return []
    names = "; ".join(p.says for p in document.parts[:PARTS])
    more = len(document.parts) - PARTS
    return labelled("Parts", names + (f"; {more} more: --all" if more > 0 else ""), 0, 7)


def _task(item: SignoffItem, document: SignoffDocument) -> list[Block]:
    """The task: care and limits always, steps and what comes after as there is room."""
    lines = wrapped(f"{'Again' if item.failed else 'Next'}: {item.says}", 0, 2)
    lines += wrapped(f"caution: {'; '.join(item.care)}", 2, 4) if item.care else []
    steps = [line for step in item.how for line in wrapped(f"- {step}", 2, 4)]
    limits = [line for text in item.limits[:LIMITS] for line in wrapped(text, 2, 4)]
    waiting = [i for i in document.items if i.open and i.task != item.task]
    later = [i for i in waiting if document.items.index(i) > document.items.index(item)][:NEXT]
    then = "; ".join(i.says for i in later)
    return [
        Block(lines),
        Block(steps, spare=3, space=False),
        Block(limits, spare=1, space=False),
        Block(labelled("then", then, 2, 7) if then else [], spare=3, space=False),
    ]


def _next_lines(document: SignoffDocument, now: SignoffItem | None) -> list[str]:
    name = as_typed(document.path)
    if document.over and now is None:
        first_look = command_lines("After an hour", f"diagnose signoff {name} --after 1h")
        return [*report_lines(document.path), *first_look]
    if now is None and document.asks:
        return []  # the question is what comes next
    if now is None:
        closing = f"diagnose close {name}" if document.items else f"diagnose review {name}"
        return command_lines("Next", closing)
    more = "Every task: --all; what is open: --open-only; sheet to fill in: --markdown"
    return [
        more,
        *command_lines("What the gauge should show", f"diagnose signoff {name} --start"),
        *command_lines("Write it down", f"diagnose record {name} {now.task}={now.example}"),
    ]
