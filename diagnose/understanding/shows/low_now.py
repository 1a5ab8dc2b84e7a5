"""What is low now, said of a pressure that was well: "it used to be fine but now it is low"."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from diagnose.understanding.sentences.paragraph import Line, Paragraph
from diagnose.understanding.sentences.stance import UNTRUE, Stance
from diagnose.understanding.words.phrases import Mark
from knowledge.lexicon.meant.beside_what_shows import LEVELS, PRESSURES
from knowledge.lexicon.shows.then_and_now import BESIDE_LOW_NOW, LOWS, NOW, WAS
from knowledge.lexicon.words.joints import BEFORE, UNTIL
from knowledge.reports.words import NOISES, Shows

_FAR = 8  #: words behind "was fine" in which "until" or "now" ends it


def low_now(line: Line, paragraph: Paragraph) -> Iterator[Mark[Shows]]:
    """A clause that says no more than "now it is low", where the pressure was named last."""
    lead: list[int] = []  #: "but now ," is a clause of its own
    for clause in line.sentence.clauses:
        words = [k for k in range(clause.first, clause.last) if not line.tokens[k].is_mark]
        led = all(line.word(k) in BESIDE_LOW_NOW for k in words)
        words, lead = [*lead, *words], words if led else []
        low = next((k for k in words if line.word(k) in LOWS), None)
        if low is None or line.stances.of[low] & (UNTRUE | Stance.DENIED):
            continue
        when = {k for m in line.circumstances for k in range(m.first - 1, m.last)}
        said = {line.word(k) for k in words if k != low and k not in when}
        now = bool(said & NOW) or (bool(when & set(words)) and _was_good(line, clause.first))
        if now and said <= BESIDE_LOW_NOW and _of_pressure(line, words[0], paragraph):
            yield Mark(Shows.LOW, words[0], low + 1)


def _was_good(line: Line, first: int) -> bool:
    """Whether it is good at another time, in the same breath: "good in the morning, poor by noon"."""
    good = [m for m in line.stated(line.lexicon.shows) if m.value is Shows.NORMAL]
    return any(m.last <= first for m in good)


def _of_pressure(line: Line, at: int, paragraph: Paragraph) -> bool:
    """Whether the last thing named before a token, here or a sentence before, is the pressure."""
    before = [x for x in paragraph.lines if x.number == line.number - 1]
    ahead = [t.word for x in before for t in x.tokens] + [t.word for t in line.tokens[:at]]
    named = next((w for w in reversed(ahead) if w in PRESSURES | LEVELS), "")
    if named == "oil":
        return paragraph.speaks_of_pressure and not LEVELS - {"oil"} & set(ahead)
    return named in PRESSURES


def noise_before(line: Line, mark: Mark[Shows], marks: Sequence[Mark[Shows]]) -> bool:
    """Whether what fades is the noise named last: "clatter from the top, dies away"."""
    if mark.value not in (Shows.FALLING, Shows.LOST):
        return False
    ahead = [m for m in marks if m.last <= mark.first]
    noise = max(ahead, key=lambda m: m.last, default=None)
    if noise is None or noise.value not in NOISES:
        return False
    return not line.words(noise.last, mark.first) & PRESSURES


def is_past(line: Line, mark: Mark[Shows], paragraph: Paragraph) -> bool:
    """Whether "was fine" is said of the time before: "was fine until today", "was fine. Now low"."""
    if mark.value is not Shows.NORMAL:
        return False
    if not WAS & line.words(mark.first - 2, mark.last):
        return False
    behind = range(mark.last, min(mark.last + _FAR, len(line.tokens)))
    if any(line.word(k) in UNTIL | BEFORE for k in behind):
        return True
    now = next((k for k in behind if line.word(k) in NOW), None)
    if now is not None and any("pressure" in t.kinds for t in line.tokens[now:]):
        return True
    after = (x for x in paragraph.lines if x.number == line.number + 1)
    lows = [m.first > mark.last for m in low_now(line, paragraph)]
    return any(lows) or any(True for x in after for _ in low_now(x, paragraph))
