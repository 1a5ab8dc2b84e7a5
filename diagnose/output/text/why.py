"""What ``review --why`` prints: reasons for and against one cause, strongest first."""

from __future__ import annotations

from collections.abc import Sequence

from diagnose.output.documents.reasons import EvidenceItem
from diagnose.output.documents.why import WhyDocument
from diagnose.output.lines import as_typed, headed, labelled, percent, wrapped
from diagnose.output.text.screen import Block, command_lines, on_screen

SHOWN = 6  #: reasons on either side


def why_text(document: WhyDocument) -> str:
    """Return the reasons in about thirty lines, the next thing to do last."""
    cause = document.cause
    head = headed(f"{percent(cause.probability):>6}  ", f"{cause.says} [{cause.id}]")
    head += wrapped(_place(document), 8)
    if cause.no_fault:
        head += wrapped("no fault: it would explain the reading", 8)
    blocks = [
        Block(wrapped(document.title or "Case without a title", 0, 2)),
        Block(head),
        *_side("Points to it", cause.pro),
        *_side("Points away from it", cause.con),
        Block(labelled("how", cause.chain, 2, 10) if cause.chain else [], spare=1),
        Block(_brought(document), spare=2),
        Block(labelled("remedy", cause.remedy, 2, 10) if cause.remedy else [], spare=3),
        Block(_next_lines(document)),
    ]
    return on_screen(blocks)


def _place(document: WhyDocument) -> str:
    if document.place == 1:
        return "the likeliest cause"
    return (
        f"number {document.place}; the likeliest is {document.leader} "
        f"({percent(document.leads_with)})"
    )


def _side(title: str, items: Sequence[EvidenceItem]) -> list[Block]:
    if not items:
        return [Block([f"{title}: nothing known so far"])]
    blocks = [Block([title])]
    for at, item in enumerate(items[:SHOWN]):
        line = labelled(item.strength, item.says, 2, 10)
        blocks.append(Block(line, spare=4 + at if at > 1 else 0, space=False))
    if len(items) > SHOWN:
        weaker = f"  and {len(items) - SHOWN} weaker ones"
        blocks.append(Block([weaker], spare=4 + SHOWN, space=False))
    return blocks


def _brought(document: WhyDocument) -> list[str]:
    if not document.brought_say:
        return []
    return labelled("led to", "; ".join(document.brought_say), 2, 10)


def _next_lines(document: WhyDocument) -> list[str]:
    command = f"diagnose teardown {as_typed(document.path)}"
    return [
        f"What the book says of it: diagnose show {document.cause.id}",
        *command_lines("What to look at next", command),
    ]
