"""What a person types, as entries of a case: answers, measured values, readings, dates."""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import date

from diagnose.case.case import Case
from diagnose.case.schema import ENTRIES, FindingEntry, WorkEntry
from diagnose.case.writing import Fields, Value
from diagnose.errors import UsageError, nearest, plain
from knowledge.book import Book
from knowledge.model import Finding, Measure
from knowledge.units import DIMENSIONS, PRESSURE, SPEED, TEMPERATURE, UnitError, parse, unit_named
from knowledge.work import Task

Answer = tuple[str, float | None]
Entry = tuple[str, Fields]  #: 'finding' or 'reading', and its fields
ANSWERS: dict[str, Answer] = {
    **dict.fromkeys(("yes", "y", "present", "true", "seen", "1"), ("present", None)),
    **dict.fromkeys(("no", "n", "absent", "false", "none", "0"), ("absent", None)),
    **dict.fromkeys(("unknown", "u", "d", "?", "dont_know"), ("unknown", None)),
    "probably": ("present", 0.8),
    "maybe": ("present", 0.65),
    "probably_not": ("absent", 0.8),
}
WORK = {
    **dict.fromkeys(("done", "yes", "y", "ok", "passed"), "done"),
    **dict.fromkeys(("failed", "no", "n"), "failed"),
    "skipped": "skipped",
}
LEARNED = ("told", "outside", "opened")
_ERROR = re.compile(r"(?:\+/?-|±)\s*(\d+(?:\.\d*)?|\.\d+)\s*([^\d\s]\S*)")
_PIECE = re.compile(r"([+-]?(?:\d+(?:\.\d*)?|\.\d+))\s*([^\d\s]\S*)")
_LIKE = 'write it like "700 rpm 95 C 8 psi", "2500 rpm 60 C 3.1 bar direct" or "800 rpm 15 psi"'


@dataclass(frozen=True, slots=True)
class Details:
    """What goes with every entry of one command."""

    note: str = ""
    where: str = ""
    by: str = ""
    when: str = ""
    learned: str = ""
    replaces: int | None = None

    def faults(self) -> list[str]:
        """What is wrong with them."""
        out = []
        try:
            the_date(self.when)
        except UsageError as fault:
            out.append(f"when: {fault}")
        if self.learned and self.learned not in LEARNED:
            near = nearest(self.learned, LEARNED)
            out.append(f"learned: '{plain(self.learned)}' is not told, outside or opened.{near}")
        return out

    def fields(self) -> dict[str, Value | None]:
        """As fields of an entry."""
        return {
            "when": the_date(self.when),
            "by": self.by or None,
            "note": self.note or None,
            "where": self.where or None,
            "learned": self.learned or None,
            "replaces": self.replaces,
        }


def the_date(text: str) -> date:
    """A day as typed; today where nothing was. Raises UsageError."""
    if not text:
        return date.today()
    try:
        return date.fromisoformat(text.strip())
    except ValueError:
        raise UsageError(
            f"'{plain(text, 30)}' is no date; write it like {date.today().isoformat()}"
        ) from None


def fact(text: str, book: Book, case: Case, details: Details) -> Entry:
    """'needle_flickers=yes' or 'main_clearance=0.1 mm' as an entry. Raises UsageError."""
    name, equals, value = text.partition("=")
    if not equals or not name.strip():
        blanks = ", without blanks round the '='" if text.strip() in ("=", *ANSWERS) else ""
        like = "needle_flickers" if blanks else _id_like(name)
        raise UsageError(f"'{plain(text)}': write it like {like}=yes{blanks}")
    word = the_word(name, book)
    fields = details.fields()
    if isinstance(word, Task):
        done = _done(value, word, details)
        return "work", {"what": word.id, **done, **_replacing(word, case, fields)}
    if isinstance(word, Measure):
        try:
            parse(value, DIMENSIONS[word.dimension])
        except UnitError as error:
            raise UsageError(f"{word.id}: {error}") from None
        said: Fields = {"value": value.strip()}
    else:
        state, sure = the_answer(value, word)
        said = {"state": state, "sure": sure}
    return "finding", {"what": word.id, **said, **_replacing(word, case, fields)}


def _id_like(name: str) -> str:
    """The word as an id, if it could be one."""
    id_ = name.strip().lower().replace("-", "_").replace(" ", "_")
    return id_ if re.fullmatch(r"[a-z0-9_]{1,40}", id_) else "needle_flickers"


def the_word(name: str, book: Book) -> Finding | Measure | Task:
    """The finding, measure or task a person named. Raises UsageError with the nearest."""
    wanted = name.strip().lower().replace("-", "_").replace(" ", "_")
    word = book.findings.get(wanted) or book.measures.get(wanted) or book.tasks.get(wanted)
    if word is None and wanted in book.causes:
        raise UsageError(
            f"'{wanted}' is a cause, no finding: record what was seen of it; a cause is named at "
            f"the end, with diagnose close --cause. Try: diagnose show {wanted}"
        )
    if word is None:
        near = nearest(wanted, [*book.findings, *book.measures, *book.tasks])
        words = "".join(c if c.isalnum() else " " for c in name[:60]).split()
        hint = f" Try: diagnose lookup {' '.join(words)}" if words else ""
        raise UsageError(f"no finding '{plain(name.strip())}'.{near}{hint}")
    return word


def _done(text: str, task: Task, details: Details) -> Fields:
    """'done', 'failed', 'skipped' or a measured value as fields. Raises UsageError."""
    wanted = text.strip().lower()
    if wanted == "skipped" and not details.note.strip():
        raise UsageError(f"{task.id}: skipped; give the reason with --note")
    if wanted in WORK:
        return {"state": WORK[wanted]}
    if task.dimension:
        try:
            parse(text, DIMENSIONS[task.dimension])
        except UnitError as error:
            raise UsageError(f"{task.id}: {error}") from None
        return {"value": text.strip()}
    raise UsageError(
        f"{task.id}: '{plain(text.strip(), 40)}' is no answer; write done, failed or skipped"
    )


def the_answer(text: str, word: Finding) -> Answer:
    """'yes', 'probably', '70%' … as a state and how sure. Raises UsageError."""
    wanted = "_".join(text.lower().replace("'", "").replace("’", "").split())
    if wanted in ANSWERS:
        return ANSWERS[wanted]
    share = re.fullmatch(r"([0-9]{1,3})_?%", wanted)
    if share and int(share[1]) <= 100:
        p = int(share[1]) / 100
        return ("present", p) if p >= 0.5 else ("absent", 1 - p)
    raise UsageError(
        f"{word.id}: '{plain(text.strip(), 40)}' is no answer; "
        "write yes, no, unknown, probably or 70%"
    )


def _replacing(
    word: Finding | Measure | Task, case: Case, fields: dict[str, Value | None]
) -> Fields:
    """A new sighting of the same thing at the same place corrects the old one."""
    if fields["replaces"] is not None:
        return fields
    where = fields["where"] or ""
    olds = [s.entry.no for s in case.sightings if s.finding is word and s.entry.where == where]
    if isinstance(word, Measure):
        olds = [m.entry.no for m in case.measured if m.measure is word and m.entry.where == where]
    elif isinstance(word, Task):
        olds = [w.entry.no for w in case.works if w.task is word and w.entry.where == where]
    return {**fields, "replaces": olds[-1]} if olds else fields


def reading(text: str, details: Details) -> Entry:
    """'700 rpm 95 C 8 psi direct' as an entry. Raises UsageError."""
    fields = details.fields()
    if fields.pop("where"):
        raise UsageError("where: a reading has no place on the engine; say it with --note")
    got: dict[str, Value | None] = {}
    spaced = re.sub(r"(?<!\d)[,;]|[,;](?!\d)", " ", text[:500])
    spaced = _ERROR.sub(lambda piece: _error(piece, got), spaced)
    rest = _PIECE.sub(lambda piece: _taken(piece, got), spaced)
    for word in rest.split():
        if word.lower() in ("direct", "panel") and "gauge" not in got:
            got["gauge"] = word.lower()
        elif word.lower() in ("gallery", "pump") and "tap" not in got:
            got["tap"] = word.lower()
        elif word.lower() == "start" and "at" not in got:
            got["at"] = "start"
        elif word.lower() in ("cold", "hot"):
            raise UsageError(
                f"reading '{plain(text)}': give the oil temperature, for instance 95 C"
            )
        else:
            raise UsageError(
                f"reading '{plain(text)}': '{plain(word, 20)}' is not understood; {_LIKE}"
            )
    if not {"rpm", "pressure"} <= got.keys():
        raise UsageError(f"reading '{plain(text)}': needs speed and pressure with units; {_LIKE}")
    return "reading", {**got, **fields}


def _taken(piece: re.Match[str], got: dict[str, Value | None]) -> str:
    """Note the first figure of each sort; what is not taken stays in the text."""
    for key, dimension in (("rpm", SPEED), ("oil", TEMPERATURE), ("pressure", PRESSURE)):
        if unit_named(piece[2], dimension) and key not in got:
            got[key] = f"{piece[1]} {piece[2]}"
            return " "
    return piece[0]


def _error(piece: re.Match[str], got: dict[str, Value | None]) -> str:
    """Note the gauge's own error, the first there is."""
    if unit_named(piece[2], PRESSURE) and "error" not in got:
        got["error"] = f"{piece[1]} {piece[2]}"
        return " "
    return piece[0]


def withdrawal(number: int, case: Case, details: Details) -> Entry:
    """An entry that takes another back. Raises UsageError."""
    entry = case.standing.get(number)
    if entry is None:
        raise UsageError(f"no entry {number} stands in this case")
    fields = {**details.fields(), "state": "withdrawn", "replaces": number}
    if isinstance(entry, FindingEntry | WorkEntry):
        return kind_of(entry), {"what": entry.what, **fields}
    fields.pop("where")
    return kind_of(entry), fields


def kind_of(entry: object) -> str:
    """'finding', 'reading' ...: the table an entry is written in."""
    return next(kind for kind, model in ENTRIES.items() if isinstance(entry, model))
