"""A pasted thread: what strangers write in it of their own engines is left out."""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import NamedTuple

from knowledge.lexicon.stance.threads import LABELS, NAMES, OWNER

#: heads a line: "> ripper: ", "dieseldave66: ", "turbo_nut wrote:", "> by dave:", "User B replied:"
_HEAD = re.compile(
    r"^(?P<quoted>>?)[ \t]*(?:by |from )?(?P<user>(?:forum )?(?:user|member|guest) )?"
    r"(?P<name>[A-Za-z][\w.-]{0,24})(?P<writes> (?:wrote|replied|answered|posted|added|adds))?"
    r"(?: again| said| says| then)?[ \t]*:[ \t]+(?=\S)",
    re.M | re.I,
)
_PIECE = re.compile(r"[^.!?\n]*[.!?]*[ \t]*")
_PLAIN = re.compile(r"^(?![ \t]*>)[ \t]*\S", re.M)  #: begins a line that is not quoted
_LONG_HEAD = 12  #: words before the first name from which they are the owner's story, no title


class _Passage(NamedTuple):
    """What one person wrote: from his name, and from behind it, to the next name."""

    name: str
    head: int
    first: int
    last: int


def without_strangers(text: str, knows: Callable[[str], bool]) -> str:
    """The text with spaces for names, and for what others than the owner state in a thread.

    Their questions stay. The owner is who writes first, or "me", or who quotes the others behind a
    story of his own; ``knows``: whether a word is of the trade, so no name.

    >>> text = "> sam66: my oil light is on\\n> ripper: mine spun a bearing. any noise?\\n> sam66: no"
    >>> [line.strip() for line in without_strangers(text, lambda word: False).split("\\n")]
    ['my oil light is on', 'any noise?', 'no']
    >>> without_strangers("oil level: full\\npressure: 20 psi", lambda word: True)
    'oil level: full\\npressure: 20 psi'
    """
    heads = [m for m in _HEAD.finditer(text) if not _is_a_label(m, knows)]
    if not any(_is_a_name(m, text) for m in heads):
        return text
    starts = [*(m.start() for m in heads[1:]), len(text)]
    passages = [
        _Passage(m["name"].lower(), m.start(), m.end(), _end(m, text, last))
        for m, last in zip(heads, starts, strict=True)
    ]
    names = {p.name for p in passages}
    has_a_story = len(text[: heads[0].start()].split()) >= _LONG_HEAD
    owners = OWNER if has_a_story or names & OWNER else OWNER | {passages[0].name}
    if not has_a_story and len(names) < 2:
        return text
    for passage in passages:
        said = text[passage.first : passage.last]
        if passage.name not in owners:
            said = _PIECE.sub(lambda m: m[0] if "?" in m[0] else _spaces(m[0]), said)
        head = _spaces(text[passage.head : passage.first])
        text = text[: passage.head] + head + said + text[passage.last :]
    return text


def _end(head: re.Match[str], text: str, last: int) -> int:
    """Where a passage ends: a quoted one at the first line that is not quoted."""
    if not head["quoted"]:
        return last
    plain = _PLAIN.search(text, head.end(), last)
    return plain.start() if plain else last


def _is_a_label(head: re.Match[str], knows: Callable[[str], bool]) -> bool:
    """Whether the head of a line is a word of the trade, or one that heads a note."""
    word = head["name"].lower()
    if head["user"]:
        return False
    return len(word) == 1 or word in LABELS or (knows(word) and word not in NAMES | OWNER)


def _is_a_name(head: re.Match[str], text: str) -> bool:
    """Whether the head of a line plainly names a person: quoted, made up, or of several lines."""
    name = head["name"]
    if head["user"] or head["writes"]:
        return True
    several = re.findall(rf"^>?[ \t]*{re.escape(name)}[ \t]*:", text, re.M | re.I)
    made_up = name.lower() in NAMES | OWNER or bool(re.search(r"[\d_]", name))
    return made_up or bool(head["quoted"]) or len(several) > 1


def _spaces(text: str) -> str:
    """Spaces for all but the ends of lines."""
    return re.sub(r"[^\n]", " ", text)
