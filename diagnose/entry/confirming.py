"""The person's say over what was understood: keep it, strike facts out, correct one, add to it.

Nothing is written here; ``confirmed`` shows the facts, takes one line, and shows them again after
each change. How they are shown and where lines come from is the caller's::

    account = confirmed(understand(path, words, book), book, show, say, ask)
    if account is not None:
        case = write(account, book)
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass, replace

from diagnose.case.schema import LONGEST
from diagnose.entry.readings import parse_reading
from diagnose.entry.telling import Account, understood
from diagnose.errors import UsageError, plain
from diagnose.understanding.words.facts import Fact, Span, Understanding
from diagnose.understanding.words.figures import figures
from knowledge.book import Book

#: what a line may be; a caller prints it before it asks
PROMPT = (
    "All right? Enter: save. A number: delete that fact. 3 = words: correct fact 3. Other words: "
    "add. q: quit, save nothing: "
)
_YES = frozenset(["", "y", "yes", "ok", "okay"])
_NO = frozenset(["q", "quit", "n", "no", "stop"])
_HELP = frozenset(["help", "?", "h", "what", "how"])
_STRIKE = frozenset(["strike", "delete", "remove", "drop", "cross", "del", "rm", "not"])
_BETWEEN = frozenset(["and", "out", "fact", "facts", "number", "no", "line", "the"])
HELP = (
    "Enter saves these facts; '4' or 'delete 4' deletes fact 4; '3 = 15 psi at hot idle' corrects "
    "fact 3; any other words are read and added; q saves nothing"
)
_NUMBERED = re.compile(r"(\d{1,3})\s+(\S.*)", re.S)
_SIGNED = re.compile(r"#?(\d{1,3})\s*[=:]\s*(.*)", re.S)
_NUMBER = re.compile(r"\d+(?:\.\d+)?")
#: fields of a reading that stay when only its pressure is corrected
_WHEN = ("rpm", "oil", "coolant", "during", "gauge", "station", "usual")


@dataclass(frozen=True, slots=True)
class Strike:
    """Facts that are wrong, by their numbers."""

    numbers: frozenset[int]


@dataclass(frozen=True, slots=True)
class Correct:
    """The right words for one fact."""

    number: int
    words: str
    signed: bool = True  #: with "=" or ":" behind the number; else it may be a figure of new words


@dataclass(frozen=True, slots=True)
class More:
    """Words to read besides."""

    words: str


Change = Strike | Correct | More


def confirmed(
    account: Account,
    book: Book,
    show: Callable[[Account], None],
    say: Callable[[str], None],
    ask: Callable[[str], str | None],
) -> Account | None:
    """Show an account until the person keeps it; None where nothing is to be written.

    ``show`` prints all facts that are kept and what could not be read, ``say`` one remark,
    ``ask`` prints a prompt and returns a line, None at the end of the input. What is returned
    holds the facts that were shown last and no others.
    """
    show(account)
    while True:
        line = ask(PROMPT)
        wanted = "" if line is None else line.strip()
        if line is None or wanted.lower() in _NO:
            return None
        if wanted.lower() in _YES:
            return account
        try:
            account = changed(account, parse_change(wanted, account), book)
        except UsageError as fault:
            say(str(fault))
        else:
            show(account)


def parse_change(line: str, account: Account) -> Change:
    """What a line changes.

    >>> parse_change("oil level is fine", Account.empty())
    More(words='oil level is fine')

    Raises UsageError for a number that is not shown, and for words without a letter.
    """
    shown = {number for number, _ in account.kept}
    words = line.replace(",", " ").split()
    if line.strip().lower() in _HELP:
        raise UsageError(HELP)
    if len(words) > 1 and words[0].lower() in _STRIKE:
        words = [w.lstrip("#") for w in words[1:] if w.lower() not in _BETWEEN]
    if words and all(w.isdecimal() for w in words):
        numbers = frozenset(map(int, words))
        if not numbers <= shown:
            raise UsageError(_no_such(min(numbers - shown), shown))
        return Strike(numbers)
    signed = _SIGNED.fullmatch(line)
    begins = signed or (_NUMBERED.fullmatch(line) if _begins_with_a_place(line) else None)
    if begins and int(begins[1]) in shown and begins[2].strip():
        return Correct(int(begins[1]), begins[2].strip(), signed=bool(signed))
    if signed and int(signed[1]) not in shown:
        raise UsageError(_no_such(int(signed[1]), shown))
    if not any(c.isalpha() for c in line):
        raise UsageError(f"'{plain(line, 30)}': numbers with spaces between, or '3 = right words'")
    return More(line)


def changed(account: Account, change: Change, book: Book) -> Account:
    """The account after a change; numbers of facts stay as they are.

    Raises UsageError, in one line, where nothing could be read of the words; the account is then
    as before.
    """
    match change:
        case Strike(numbers):
            return replace(account, struck=account.struck | {n - 1 for n in numbers})
        case Correct(number, words, signed):
            old = account.understanding.facts[number - 1]
            found = _typed_reading(words, old) or understood(words, book, account.has)
            if not found.facts and not signed:
                return changed(account, More(f"{number} {words}"), book)
            if not found.facts:
                raise UsageError(f"'{plain(words)}' was not understood; {number} stays as it is")
            first = _completed(found.facts[0], old)
            new = replace(found, facts=(first, *found.facts[1:]))
            return _joined(account, new, number - 1)
        case More(words):
            found = understood(words, book, account.has)
            if not found.facts:
                raise UsageError(f"'{plain(words)}' was not understood")
            return _joined(account, found, None)


def _begins_with_a_place(line: str) -> bool:
    """Whether the number a line begins with is no figure with a unit, as "5 psi" is."""
    first = next(iter(figures(line[:LONGEST])), None)
    return first is not None and first.start == 0 and first.kinds == {"number"}


def _no_such(number: int, shown: set[int]) -> str:
    listed = ", ".join(map(str, sorted(shown))) or "none is left"
    return f"no fact {number} is shown; numbers are {listed}"


def _typed_reading(words: str, old: Fact) -> Understanding | None:
    """A reading typed in place of one as ``record --reading`` takes it: "22 psi 2000 rpm direct".

    A bare number has the unit that the reading has. None where it is typed in other words.
    """
    if old.table != "reading":
        return None
    unit = str(old.fields.get("pressure") or "").rpartition(" ")[2]
    if _NUMBER.fullmatch(words):
        words = f"{words} {unit if unit.isalpha() else 'psi'}"
    try:
        read = parse_reading(words)
        read.in_si()  # what no gauge can show is refused
    except UsageError:
        return None
    fields = {key: value for key, value in read.fields().items() if value is not None}
    return Understanding(words, (Fact("reading", fields, ((0, len(words)),)),))


def _completed(new: Fact, old: Fact) -> Fact:
    """A bare pressure for a reading: read at the speed and heat that were said before."""
    if new.table != "reading" or old.table != "reading" or set(new.fields) != {"pressure"}:
        return new
    kept = {key: old.fields[key] for key in _WHEN if key in old.fields}
    return replace(new, fields={**new.fields, **kept})


def _joined(account: Account, found: Understanding, place: int | None) -> Account:
    """The account with the facts of more words, the first in ``place``, the others behind.

    The words go below those there are, so that every fact still names where it came from.
    """
    old = account.understanding
    text = f"{old.text}\n{found.text}"
    if len(text) > LONGEST:
        raise UsageError(f"that is too long: at most {LONGEST:,} characters in all")
    offset = len(old.text) + 1
    facts, struck = list(old.facts), set(account.struck)
    for k, fact in enumerate(replace(f, spans=_moved(f.spans, offset)) for f in found.facts):
        same = {i for i, each in enumerate(facts) if _about(each) == _about(fact)}
        if k == 0 and place is not None:
            struck |= same - {place}
            facts[place] = fact
        elif same:
            facts[min(same)] = fact
            struck.discard(min(same))
        else:
            facts.append(fact)
    unread = (*old.unread, *_moved(found.unread, offset))
    return replace(
        account,
        text=text,
        struck=frozenset(struck),
        understanding=Understanding(text, tuple(facts), unread),
    )


def _moved(spans: tuple[Span, ...], offset: int) -> tuple[Span, ...]:
    return tuple((a + offset, b + offset) for a, b in spans)


def _about(fact: Fact) -> tuple[str, str]:
    """What a fact is about: of one thing, a later word takes the place of an earlier one."""
    if "what" in fact.fields:
        return fact.table, f"{fact.fields['what']} {fact.fields.get('where', '')}"
    return fact.table, str(sorted(fact.fields.items(), key=str))
