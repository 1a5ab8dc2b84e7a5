"""What the messages of the library tell a person to do, as what to tap on the page."""

from __future__ import annotations

from collections.abc import Mapping

from diagnose.ways import Way

TAPS: Mapping[Way, str] = {
    Way.WORD: "",  # its label stands before it
    Way.NOTE: "in its note",
    Way.PLACE: "leave its place empty, and say it in the note",
    Way.NO_ENTRY: "say it in the note of another find",
    Way.LOOK_UP: "Say it in other words under Write down.",
    Way.OTHER_WORDS: "say it in other words: the part, and what it looks or sounds like",
    Way.EXAMPLE: "oil level ok",
    Way.LAYOUT: "choose that under Kind of engine",
    Way.OIL: "enter {grade} under Engine’s card",
    Way.DIMENSION: "enter {value} under Engine’s card",
    Way.FIGURES: "under Engine’s card",
    Way.CIRCUIT: "its own figures judge it: enter them under Engine’s card",
    Way.PLACES: "save one place, then the next",
    Way.NAME_CAUSE: "under Close the job.",
    Way.CAUSE: "What was it",
    Way.HOW: "Say how the cause was confirmed, for instance: seen with the sump off",
    Way.MINUTES: "Minutes of work",
    Way.REASON: " below",
    Way.REPAIRED: "After the repair",
    Way.FITTED: "save it again as fitted",
    Way.READING: "put one in under Gauge readings",
    Way.BUDGET: "see Where the pressure went",
    Way.FORECAST: "What if says why",
    Way.FIRST_START: "see First start",
    Way.BEGIN_CASE: "begin one with New job",
    Way.MAKE_SHEET: "print one under Take apart or Put together",
    Way.BEGIN_CARD: "put the file back where it was",
    Way.NAME_CARD: "open the job, then Engine’s card",
}
