"""What the reader makes of sentences: examples of every rule, near misses, random text."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from diagnose.understanding.reader import LONGEST, RULES, lexicon_of, read
from diagnose.understanding.sentences.paragraph import Paragraph
from diagnose.understanding.words.facts import Example, Reader
from diagnose.understanding.words.phrases import Phrases
from knowledge.book import the_book
from knowledge.lexicon.engine import layouts as engine_layouts
from knowledge.lexicon.engine import traits
from knowledge.lexicon.shows import beside_pressure
from knowledge.lexicon.shows import tables as shows
from knowledge.lexicon.sights import exceptions
from knowledge.lexicon.sights import tables as sights
from knowledge.lexicon.stance import stance
from knowledge.lexicon.things import states
from knowledge.lexicon.things import tables as things
from knowledge.lexicon.work import actions, areas
from knowledge.lexicon.work import tables as work
from tests.support.examples import examples

BOOK = the_book()
EXAMPLES = [(rule, example) for rule in RULES for example in rule.examples]

#: sentences with everything that is read out of them
READ: dict[str, list[str]] = {
    "what would cause oil pressure to drop to zero at idle?": ["behaviour none idle"],
    "would a stuck valve cause low oil pressure at idle?": [],
    "why would the light flicker when braking?": ["behaviour unsteady braking"],
    "what would cause a rod bearing to spin?": [],
    "5 psi at hot idle, 60 cold, new sender made no difference, lifters ticking, since the rebuild": [
        "reading 5 psi hot, idle",
        "reading 60 psi cold",
        "trial new_sender no difference",
        "behaviour ticking work",
        "earlier whole_engine rebuilt straight before",
    ],
    "oil presure is 40 cold and drops to 10 when hot at idle, 30 driving": [
        "reading 40 psi cold",
        "behaviour low idle, hot",
        "reading 10 psi hot, idle",
        "reading 30 psi cruise",
    ],
    "30 lbs cold 10 lbs hot": ["reading 30 psi cold", "reading 10 psi hot"],
    "cold start 4 bar, hot idle 0.8 bar": ["reading 4 bar cold", "reading 0.8 bar hot, idle"],
    "at 3000 rpm hot 45 psi, at idle 12 psi": [
        "reading 45 psi hot, 3000 rpm",
        "reading 12 psi hot, idle",
    ],
    "pressure should be 50 but i get 20 psi at 2500 rpm hot": ["reading 20 psi hot, 2500 rpm"],
    "pressure used to be 60 now its 25 hot at 2000 rpm": ["reading 25 psi hot, 2000 rpm"],
    "my gauge reads about a third of the dial at idle": ["reading a third of the dial idle"],
    "if i rev it the pressure goes up to 40": ["reading 40 psi cruise"],
    "no oil pressure after rebuild, primed the pump with a drill and still nothing": [
        "behaviour none work",
        "earlier whole_engine rebuilt straight before",
        "finding drill_gives_none present",
        "trial pump_primed no difference",
    ],
    "Oil pressure light flickers at stop lights when hot. runs fine, no knocking": [
        "behaviour unsteady idle, hot",
        "finding engine_runs_normally present",
        "finding bearing_knock absent",
    ],
    "We hit a rock and dented the oil pan, since then pressure is low": [
        "behaviour low a blow to the sump",
        "finding sump_dented present",
    ],
    "Replaced pump and relief valve, no joy": [
        "trial new_pump no difference",
        "trial new_relief_valve no difference",
    ],
    "swapped sending unit, gauge and wiring. still zero": [
        "trial new_sender no difference",
        "trial other_gauge no difference",
        "trial wiring_repaired no difference",
    ],
    "New oil pump, new bearings, still only 5 lbs at idle hot. 20w50 helped a little.": [
        "trial new_pump no difference",
        "trial new_bearings no difference",
        "reading 5 psi hot, idle",
        "behaviour low idle, hot",
        "trial thicker_oil helped",
        "oil 20W-50",
    ],
    "tried a second gauge, reads the same": ["trial other_gauge no difference"],
    "changed the oil and now it has no pressure at all": [
        "earlier oil_change renewed straight before",
        "behaviour none oil change",
    ],
    "pressure normal when cold then goes down to almost nothing at idle once hot": [
        "reading 1 to 5 psi hot, idle",
        "behaviour normal cold",
        "behaviour low idle, hot",
    ],
    "relief spring was shimmed by previous owner": [
        "earlier relief_valve adjusted",
        "finding relief_parts_not_standard present",
    ],
    "no change after new filter": ["trial new_filter no difference"],
    "topped up the oil and the pressure came back": ["trial topped_up cured"],
    "oil smells of petrol and level has risen": [
        "finding fuel_smell present",
        "finding level_risen present",
    ],
    "oil level was fine until last week, now it is below the add mark": [
        "finding dipstick_low present"
    ],
    "it doesn't leak and the oil looks clean": [
        "finding oil_seen_outside absent",
        "finding oil_looks_clean present",
    ],
    "no leaks, smoke or knocks": [
        "finding oil_seen_outside absent",
        "finding blue_smoke absent",
        "finding bearing_knock absent",
    ],
    "cut the filter open and found shiny flakes": ["finding metal_in_filter present"],
    "uses a quart every 500 miles": ["finding oil_used_fast present"],
    "gauge works when i tap it": ["finding tap_frees_needle present"],
    "pressure drops off when the clutch is pressed": ["behaviour low clutch pressed"],
    "lost oil pressure all of a sudden on the highway": ["behaviour lost at speed sudden"],
    "head gasket replaced two weeks ago": ["earlier cylinder_head renewed 2 weeks"],
    "The oil light flickers when I pull up at junctions once the engine is thoroughly warm.": [
        "behaviour unsteady idle, hot"
    ],
    "In hard right-handers it loses all pressure for a second.": [
        "behaviour lost bends recovered by itself"
    ],
    "The needle twitches every time I use the indicators.": [
        "behaviour unsteady electrical load returns under the same condition"
    ],
    "On starting from cold the oil pressure is 60 lb., falling to 40 lb. when hot.": [
        "reading 60 psi cold",
        "behaviour low hot",
        "reading 40 psi hot",
    ],
    "the gauge would drop to 20 now and again": ["behaviour low comes and goes", "reading 20 psi"],
    "gauge has started reading very low, about 10 where it always read 40": [
        "behaviour low",
        "reading about 10 psi",
    ],
    "RPM 800: 0.4 bar. RPM 2000: 1.8 bar.": ["reading 0.4 bar 800 rpm", "reading 1.8 bar 2000 rpm"],
    "Turned the pump with a drill: no pressure at all.": ["finding drill_gives_none present"],
    "The gauge came back to life when I wiggled the connector.": [
        "finding wiggle_moves_needle present"
    ],
    "Oil pump drive gear had stripped its teeth.": ["finding drive_gear_stripped present"],
    "number three main bearing had spun": ["finding shell_spun present"],
    "I shut it down straight away.": ["finding ran_on_without_pressure absent"],
    "tightened the main cap bolts and the pressure came up": ["trial bolts_tightened cured"],
    "It locked up solid at 60 mph.": ["finding engine_seized present"],
    "3.0 v6 in a sterndrive": [
        "layout marine_petrol_v8",
        "finding in_a_boat present",
        "bearing rods 6",
    ],
}

#: sentences that state nothing of this engine, or only what stands beside them
NOTHING_STATED: dict[str, list[str]] = {
    "I was afraid the pressure had gone to zero, but it had not.": [],
    "No knock yet.": ["finding bearing_knock absent"],
    "Would a new pump help?": [],
    "My brother's had metal in the pan.": [],
    "my old truck had 5 psi at idle for years": [],
    "a friend told me his engine lost all pressure after an oil change": [],
    "my neighbour's V8 knocked like mad": [],
    "Is it normal for pressure to drop to 10 psi at idle?": [],
    "do lifters tick when pressure is low?": [],
    "if the pressure drops to zero should i stop?": [],
    "would it be the sender?": [],
    "could be a stuck relief valve": [],
    "Probably the pump.": [],
    "mechanic thinks main bearings are worn": [],
    "someone said the pump drive shaft could have sheared": [],
    "i don't think it's the bearings": [],
    "I hope it's not the bearings": [],
    "I was worried about a spun bearing but there is no knock": ["finding bearing_knock absent"],
    "Going to swap the sender next weekend.": [],
    "ordered a new oil pump, will fit it saturday": [],
    "thinking of putting in a high volume pump": [],
    "havent checked the dipstick yet": [],
    "we have not opened the engine": [],
    "not sure if it knocks": [],
    "it might be low on oil, need to check": [],
    "the pressure is not low": [],
    "gauge never went to zero": [],
    "oil light never flickers or comes on": [],
    "good oil pressure on my mates boat": [],
    "unless the oil is low i dont see why": [],
    "I'll cut the filter open tomorrow": [],
    "Can a bad sender make the gauge read zero?": [],
    "on my previous engine the oil pump drive sheared": [],
    "we suspected a blocked pickup, but the screen was clean": ["finding screen_blocked absent"],
    "i might replace the oil pump and clean the pickup": [],
    "if it had a knock i would pull the pan": [],
    "it never lost pressure on track": [],
    "afraid of spinning a bearing so i stopped": [],
    "I've read that these engines eat cam bearings": [],
    "neither smoke nor knock": ["finding bearing_knock absent", "finding blue_smoke absent"],
    "no water in the oil": ["finding oil_milky absent"],
    "spun the pump with a drill and got 50 psi": ["finding drill_gives_good present"],
    "pressure isn't dropping anymore": [],
    "It does not flicker at idle": [],
    "no drop in pressure when cornering": [],
    "the oil light is not on": [],
    "someone else's had a stuck relief valve": [],
    "he told me to check the oil level": [],
    "scared it will throw a rod": [],
    "no leaks and no smoke": ["finding oil_seen_outside absent", "finding blue_smoke absent"],
    "there's no sludge under the valve cover": ["finding sludge_seen absent"],
    "wondering whether the pickup screen is clogged": [],
    "the other engine in the boat has 60 psi": [],
    "i guess the relief valve is stuck": [],
    "my dad says it's the rod bearings": [],
    "it has never overheated": ["finding engine_ran_hot absent"],
    "no metal in the filter": ["finding metal_in_filter absent"],
    "it has a 350 with 120,000 miles from 1978": ["finding high_mileage present"],
    "last year it had 60 psi cold": ["baseline 60 psi cold"],
}


@pytest.mark.parametrize(("rule", "example"), EXAMPLES, ids=lambda x: getattr(x, "text", ""))
def test_a_rule_reads_its_examples_and_nothing_of_near_misses(
    rule: Reader, example: Example
) -> None:
    """The short form of every fact, no more and no fewer."""
    got = [f.short for f in rule.read(Paragraph(example.text, lexicon_of(BOOK)))]
    assert sorted(got) == sorted(example.facts)


@pytest.mark.parametrize("rule", RULES, ids=lambda r: r.name)
def test_every_rule_has_examples_and_near_misses(rule: Reader) -> None:
    """At least one of each."""
    assert any(e.facts for e in rule.examples)
    assert any(not e.facts for e in rule.examples)


@pytest.mark.parametrize("text", READ)
def test_sentences_as_people_type_them(text: str) -> None:
    """Everything a sentence states, and nothing else."""
    assert sorted(f.short for f in read(text, BOOK).facts) == sorted(READ[text])


@pytest.mark.parametrize("text", NOTHING_STATED)
def test_what_is_not_stated_is_not_read(text: str) -> None:
    """Questions, plans, fears, guesses, other engines, the time before, negations."""
    assert sorted(f.short for f in read(text, BOOK).facts) == sorted(NOTHING_STATED[text])


def test_the_usual_pressure_goes_with_the_present_one() -> None:
    """It is kept as what the gauge used to show, not as a reading."""
    (fact,) = read("idle pressure 8 psi, used to be 25", BOOK).facts
    assert fact.fields["usual"] == "25 psi"


def test_a_doubted_sight_is_less_sure() -> None:
    """A hedge lowers the certainty of the clause it stands in."""
    (fact,) = read("it seems the oil level is a bit low", BOOK).facts
    assert fact.sure == pytest.approx(0.8)


def test_words_of_a_fact_are_those_of_the_text() -> None:
    """Each span is cut from the text as typed."""
    text = "Well, OIL level is  fine here."
    (fact,) = read(text, BOOK).facts
    assert [text[a:b] for a, b in fact.spans] == ["OIL level is  fine"]


def test_the_states_of_parts_are_findings_of_the_book() -> None:
    """Every finding of a part in a state, or of a substance in a place."""
    for thing in things.THINGS:
        for table in (thing.shows, thing.rules_out, thing.holds, thing.gives):
            named = {finding for findings in table.values() for finding in findings}
            assert not named - BOOK.findings.keys(), thing.names[0]


def test_a_phrase_matches_in_the_words_as_they_stand() -> None:
    """An exact word in no other form; all meanings of the same words."""
    phrases = Phrases({"one": ("=clean",), "two": ("=clean|tidy",)})
    (line,) = Paragraph("clean and cleaned", lexicon_of(BOOK)).lines
    assert [(m.value, m.first) for m in phrases.find_alike(line.tokens)] == [("one", 0), ("two", 0)]
    assert [m.value for m in phrases.find(line.tokens)] == ["one"]


def test_lexicon_names_what_the_book_has() -> None:
    """Findings, trials, areas, layouts and features of the lexicon are in the book."""
    seen = {*sights.SIGHTS, *sights.SIGHTS_ABSENT, *beside_pressure.FINDING_OF.values()}
    seen |= {*traits.FEATURES.values(), *traits.FEATURE_WORDS}
    seen |= (
        exceptions.LEFT_TO_BEHAVIOUR
        | exceptions.NOT_BY_THE_BOOK
        | exceptions.INSTEAD
        | exceptions.NEVER_DENIED
    )
    assert not seen - BOOK.findings.keys()
    tried = {*work.TRIALS, *(t for p in work.PARTS for t in p.trials.values())}
    assert not tried - BOOK.trials.keys()
    worked_on = {*areas.AREAS, *(p.area for p in work.PARTS if p.area)}
    assert not worked_on - BOOK.areas.keys()
    assert not {layout for _, _, layout in engine_layouts.LAYOUTS} - BOOK.layouts.keys()


@pytest.mark.parametrize(
    "module",
    [shows, traits, areas, actions, sights, stance, states, work],
    ids=lambda m: m.__name__,
)
def test_phrases_are_listed_in_tuples(module: object) -> None:
    """A lone string in brackets would be read letter by letter."""
    tables = [v for k, v in vars(module).items() if k.isupper() and isinstance(v, dict)]
    for table in tables:
        assert not [v for v in table.values() if isinstance(v, str) and " " in v]


@settings(max_examples=examples(150), deadline=None)
@given(st.text(max_size=300) | st.lists(st.sampled_from([*READ, *NOTHING_STATED])).map(" ".join))
def test_any_text_is_read_and_nothing_is_lost(text: str) -> None:
    """Every fact and every piece left over lies inside the text; both together leave no word out."""
    found = read(text, BOOK)
    for a, b in (*found.unread, *(s for f in found.facts for s in f.spans)):
        assert 0 <= a < b <= len(text)
    assert len(found.not_understood) == len(found.unread)
    for fact in found.facts:
        assert found.words(fact)


def test_what_is_beyond_the_longest_text_is_left_over() -> None:
    """It is shown, not dropped."""
    text = "oil level is fine. " + "x " * LONGEST
    assert read(text, BOOK).unread[-1][1] == len(text)


@pytest.mark.parametrize("word", ["carburettorish", "needel", "preasure", "guage"])
def test_misspelt_words_do_no_harm(word: str) -> None:
    """A lone word states nothing, whatever it is taken for."""
    assert not read(word, BOOK).facts


FACETS: dict[str, dict[str, object]] = {
    "lifters tick on a cold start, goes away after a minute": {
        "during": ["at start", "cold"],
        "lasts": "1 min",
    },
    "knocks for a few seconds when started": {"during": ["at start"], "lasts": "3 s"},
    "rattle at cold start, gone in a few seconds": {"during": ["at start", "cold"], "lasts": "3 s"},
    "lifters tick after 5 minutes": {"during": ["after minutes of running"]},
    "pressure falls off above 3500 rpm, ok below that": {"during": ["at speed"], "only": True},
    "pressure drops when I rev it, normal otherwise": {"during": ["at speed"], "only": True},
    "pressure drops when I rev it, engine runs fine": {"during": ["at speed"]},
    "oil light comes on in left hand bends, goes out on the straight": {
        "during": ["bends"],
        "never": ["at speed"],
    },
    "oil light comes on on the straight": {"during": ["at speed"]},
    "changed the filter, now the oil light stays on": {"since": "oil change"},
    "pressure was low, changed the filter, now it is at zero": {},
}


@pytest.mark.parametrize("text", FACETS)
def test_when_it_ends_and_what_it_came_with(text: str) -> None:
    """The facets of the first behaviour: how long, when only, when never, since what."""
    shown = [f.fields for f in read(text, BOOK).facts if f.table == "behaviour"]
    facets = {k: v for k, v in (shown[0] if shown else {}).items() if k in FACET_NAMES}
    assert facets == {**FACETS[text]}


FACET_NAMES = frozenset(["lasts", "only", "never", "since", "during"])


@pytest.mark.parametrize(
    ("text", "usual"),
    [
        ("45 psi cold dropping to 15 after 20 minutes, used to hold 35 hot", ["", "35 psi"]),
        ("60 psi cold and 12 hot, used to be 70 cold", ["70 psi", ""]),
        ("now 12 psi hot, used to be 30", ["30 psi"]),
    ],
)
def test_a_usual_pressure_goes_to_the_reading_of_the_same_heat(text: str, usual: list[str]) -> None:
    """ "Used to hold 35 hot" is no usual pressure of the cold engine."""
    found = [f for f in read(text, BOOK).facts if f.table == "reading"]
    assert [f.fields.get("usual", "") for f in found] == usual
