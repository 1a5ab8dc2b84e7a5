"""What ``review`` prints: what was found, where it began, what followed, and the next step."""

from __future__ import annotations

from collections.abc import Sequence

from diagnose.output.documents.ranking import ORIGIN_IS_OPEN, RankedCause, others
from diagnose.output.documents.reasons import STRONGEST, EvidenceItem
from diagnose.output.documents.review import ReviewDocument
from diagnose.output.lines import headed, labelled, percent, together, wrapped
from diagnose.output.text.alarms import alarm_lines
from diagnose.output.text.next_step import next_step_lines

SHOWN = 5  #: causes printed with their reasons


def review_text(document: ReviewDocument, shown: int = SHOWN) -> str:
    """Return the review as lines for a terminal, with so many causes."""
    text = together(
        [
            _head(document),
            alarm_lines(document.alarms),
            _reported(document),
            _contradictions(document),
            _in_short(document),
            _found_lines(document),
            _ranking(document, shown),
            _sets(document),
            _damage(document),
            _contaminated(document),
            _loose_ends(document),
            _photos(document),
            wrapped(document.still_missing, 0, 2) if document.still_missing else [],
            wrapped(document.differs, 0, 2) if document.differs else [],
            wrapped(document.strip, 0, 2) if document.strip else [],
            []
            if document.closed
            else next_step_lines(
                document.next,
                document.path,
                settled=document.settled,
                to_mend=document.settled or document.remedies,
            ),
            _scope(),
        ]
    )
    if document.history:
        return "\n".join([*wrapped(document.history.says, 0, 2, document.history.whole), "", text])
    return text


def _head(document: ReviewDocument) -> list[str]:
    lines = wrapped(document.title or "Case without a title")
    if document.closed:
        lines += wrapped(document.closed, 0, 2)
    lines += wrapped(f"Engine: {document.engine}", 0, 8)
    if not document.evidence:
        lines += wrapped(
            "Nothing has been seen or reported yet: what follows is only how common each cause is."
        )
    return lines


def _reported(document: ReviewDocument) -> list[str]:
    lines = ["Reported"] if document.reported else []
    for sentence in document.reported:
        lines += wrapped(f"- {sentence}", 2, 4)
    return lines


def _in_short(document: ReviewDocument) -> list[str]:
    """The answer in a sentence, with what would put it right once it is nearly certain."""
    if not document.in_short:
        return []
    lines = wrapped(f"In short: {document.in_short}.", 0, 2)
    first = document.causes[0]
    if document.remedies:
        lines += labelled("remedy", first.remedy, 2, 12)
        if first.follows:
            lines += labelled("if left", first.follows, 2, 12)
    return lines


def _found_lines(document: ReviewDocument) -> list[str]:
    """Each found fault: what it costs, how it was seen, what it explains, where it came from."""
    lines = ["Found"] if document.found else []
    for fault in document.found:
        lines += wrapped(f"- {fault.title}", 2, 4)
        lines += labelled("seen", fault.seen, 4, 14)
        for label, text in (
            ("explains", fault.explained),
            ("from", fault.came_from),
            ("decide", fault.decides),
        ):
            lines += labelled(label, text, 4, 14) if text else []
    return lines


def _contaminated(document: ReviewDocument) -> list[str]:
    if not document.contaminated:
        return []
    places = ", ".join(document.contaminated)
    return ["Also contaminated, to be cleaned or renewed", *wrapped(places, 2)]


def _contradictions(document: ReviewDocument) -> list[str]:
    if not document.contradictions:
        return []
    lines = ["These do not fit together; look again before trusting the ranking:"]
    for c in document.contradictions:
        lines += wrapped(f"- {c.says}", 2, 4)
        if c.entries_say:
            lines += wrapped(f"entries: {', '.join(c.entries_say)}", 4, 6)
        lines += wrapped(f"look again: {c.recheck_asks} [{c.recheck}]", 4, 6)
    return lines


def _ranking(document: ReviewDocument, shown: int) -> list[str]:
    lines = ["Where it began"] if document.found else []
    lines.append("Root causes, likeliest first")
    for number, cause in enumerate(document.causes[:shown], 1):
        lines += _cause(number, cause)
    rest = others(document.causes, shown, loss_is_real=document.loss_is_real)
    return [*lines, *wrapped(rest, 2)] if rest else lines


def _cause(number: int, cause: RankedCause) -> list[str]:
    head = f"{number:2}. {percent(cause.probability):>5} likely  "
    lines = ["", *headed(head, f"{cause.says} [{cause.id}]")]
    if cause.no_fault:
        lines += wrapped("(no fault: it would explain the reading)", 6)
    if cause.as_found:
        lines += wrapped("(named first because it was found)", 6)
    if cause.open_origin:
        lines += wrapped(f"({ORIGIN_IS_OPEN})", 6)
    lines += _evidence("for", cause.pro) + _evidence("against", cause.con)
    if cause.chain:
        lines += labelled("how", cause.chain, 6, 16)
    return lines


def _evidence(side: str, items: Sequence[EvidenceItem]) -> list[str]:
    lines = []
    for i, item in enumerate(items[:STRONGEST]):
        lines += labelled("" if i else side, f"{item.weight}: {item.says}", 6, 16)
    return lines


def _sets(document: ReviewDocument) -> list[str]:
    if len(document.explanations) < 2:
        return []
    lines = ["Explanations as sets of causes"]
    for each in document.explanations:
        lines += headed(f"  {percent(each.share):>6}  ", each.says)
    return lines


def _damage(document: ReviewDocument) -> list[str]:
    if not document.damage:
        return []
    lines = ["Following damage: look for it and repair it too"]
    for each in document.damage:
        lines += wrapped(f"{percent(each.probability):>6}  {each.says}", 2, 10)
    if document.damage_path:
        lines += labelled("chain", document.damage_path, 2, 10)
    return lines


def _loose_ends(document: ReviewDocument) -> list[str]:
    lines = []
    if document.unexplained:
        lines.append("Not explained yet")
        for finding in document.unexplained:
            lines += wrapped(f"- {finding}", 2, 4)
    if document.left_out:
        left_out = ", ".join(document.left_out)
        lines += wrapped(f"Left out, too entangled to compute: {left_out}")
    return lines


def _photos(document: ReviewDocument) -> list[str]:
    lines = ["Photos"] if document.photos else []
    for photo in document.photos:
        says = f": {photo.says}" if photo.says else ""
        lines += wrapped(f"{photo.path}{says}", 2, 4, whole=[photo.path])
    return lines


def _scope() -> list[str]:
    return wrapped(
        "The tool ranks causes and shows evidence; a person decides on running and repair. "
        "The engine maker's manual comes first. Certified aircraft engines are out of scope."
    )
