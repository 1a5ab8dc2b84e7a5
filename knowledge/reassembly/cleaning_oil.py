"""What is done about coolant, fuel, sludge or a strange fluid in the oil before it runs again."""

from knowledge import sources
from knowledge.engines import features
from knowledge.reassembly import what_was_found
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.bearings import causes as bearings_causes
from knowledge.stations.delivery import causes as delivery_causes
from knowledge.stations.delivery import findings_filter_cut as delivery_filter_cut
from knowledge.stations.leaks import causes as leaks_causes
from knowledge.stations.leaks import causes_openings as leaks_causes_openings
from knowledge.stations.leaks import findings_sights as leaks_sights
from knowledge.stations.oil import causes_condition as oil_causes_condition
from knowledge.stations.oil import causes_contamination as oil_causes_contamination
from knowledge.stations.oil import findings_record as oil_record
from knowledge.stations.suction import causes as suction_causes
from knowledge.stations.suction import causes_sump as suction_causes_sump
from knowledge.stations.suction import findings_sump as suction_sump
from knowledge.work import Caution, Hold, Phase, Task

BEARINGS_SEEN_AFTER_COOLANT = Task(
    id="bearings_seen_after_coolant",
    phase=Phase.CLEANING,
    says="main and rod shells inspected after coolant in the oil",
    how=(
        "one cap of each kind off, the last one fed first; keep shells to their places",
        "dark, etched or with gelled oil on them: take every bearing out",
        "sound, and the oil on them still flows: flush, then close up",
    ),
    source=sources.COOLANT_CLEANING_MANUAL,
    remedy="take the engine down, measure the journals, fit new shells",
    why="coolant corrodes the lining, and glycol gels the oil in the feeds",
    guards=(bearings_causes.BEARING_WIPED,),
    after=what_was_found.COOLANT,
    cautions=(Caution.LIFTING, Caution.HAND_TURN, Caution.USED_OIL),
    also=("check bearings for corrosion", "glycol on bearings"),
)
COOLANT_FLUSHED_OUT = Task(
    id="coolant_flushed_out",
    phase=Phase.CLEANING,
    says="coolant flushed out of the oil circuit, or the circuit taken apart and washed",
    how=(
        "drain hot, filter off, sump, cooler and lines emptied; a sample to the laboratory",
        "a trace and no gel: new oil and filter are enough",
        "sticky black or grey coat: the engine maker's own flush for glycol, to the letter",
        "gel that must be scraped, or metal in the filter: no flushing, strip it and wash",
    ),
    source=sources.GLYCOL_CLEANING_1979,
    remedy="strip and wash whatever still shows coating or gel",
    guards=(oil_causes_contamination.COOLANT_IN_OIL, delivery_causes.FILTER_BLOCKED),
    after=what_was_found.COOLANT,
    cautions=(*what_was_found.WASHING, Caution.FIRE, Caution.HOT, Caution.USED_OIL),
    also=("flush coolant from the engine", "clean milky oil out"),
)
OIL_CHANGED_TWICE = Task(
    id="oil_changed_twice",
    phase=Phase.CLEANING,
    says="second oil and filter change planned after coolant, its filter to be cut open",
    how=(
        "the first fill is a rinse: change it with its filter after the first warm run",
        "second filter cut at about 50 hours, or a sample sent: no glycol, no metal",
    ),
    source=sources.GLYCOL_CLEANING_1979,
    hold=Hold.NOTE,
    remedy="write both dates into the job",
    guards=(oil_causes_contamination.COOLANT_IN_OIL, delivery_causes.FILTER_BLOCKED),
    after=what_was_found.COOLANT,
    cautions=(
        Caution.USED_OIL,
        Caution.WASTE,
        Caution.HOT,
        Caution.SHARP,
    ),
    also=("change oil twice",),
)
TURBO_LOOKED_AT_AFTER_COOLANT = Task(
    id="turbo_looked_at_after_coolant",
    phase=Phase.CLEANING,
    says="turbo bearings checked by feel and eye after coolant in the oil",
    how=(
        "cold, inlet hose off: spin the shaft, lift and push it along",
        "brown or discoloured bronze, any roughness: to a turbo shop",
    ),
    source=sources.TURBO_FAILURE_SHEET,
    remedy="have the turbo rebuilt or renewed before you run it on the new oil",
    guards=(oil_causes_contamination.COOLANT_IN_OIL,),
    only_with=(features.TURBOCHARGED,),
    after=what_was_found.COOLANT,
    cautions=(Caution.HOT, Caution.SHARP),
    also=("turbo after water in oil",),
)
FROZEN_WATER_DRAINED = Task(
    id="frozen_water_drained",
    phase=Phase.CLEANING,
    says="all water out of sump, pump and lines after a freeze-up",
    how=(
        "thaw it through in a warm place; no flame, no cranking frozen",
        "drain until oil comes clear; inspect screen, pump and drive for ice damage",
        "find where the water came from: breather, short trips, coolant",
    ),
    source=COMMON_PRACTICE,
    remedy="drain again after a night's standing",
    guards=(suction_causes_sump.ICE_IN_PICKUP, leaks_causes_openings.BREATHER_BLOCKED),
    after=(suction_sump.ICE_AT_SCREEN,),
    cautions=(Caution.FIRE, Caution.WASTE),
    also=("frozen oil pan", "ice in the sump"),
)
FUELLED_OIL_CHANGED = Task(
    id="fuelled_oil_changed",
    phase=Phase.CLEANING,
    says="oil and filter contaminated with fuel out, fresh oil of the right grade in",
    how=(
        "no cranking and no running until it is out: the crankcase can explode",
        "drain in the open air, cooler and remote filter too; air the crankcase",
        "fresh oil and filter to the mark; after an hour check level and smell again",
    ),
    source=idea_from(sources.LABORATORY_FUEL),
    remedy="level up or smell back: the leak is not cured",
    why="5 % of fuel turns a 30 oil into a 20",
    guards=(oil_causes_contamination.FUEL_DILUTION,),
    after=what_was_found.FUEL,
    cautions=(Caution.FIRE, Caution.WASTE, Caution.USED_OIL, Caution.BOAT),
    also=("change thinned oil",),
)
SLUDGE_TAKEN_OUT = Task(
    id="sludge_taken_out",
    phase=Phase.CLEANING,
    says="sludge and baked oil scraped and washed out by hand, not flushed loose",
    how=(
        "sump, valve covers, valley and front cover off: scrape, catch, wipe",
        ("no flush poured into a sludged engine: sludge breaks loose and blocks the screen"),
        "clean oil, changed at short intervals, removes what you cannot reach",
    ),
    source=idea_from(sources.CLUB_BLOCKED_SCREENS),
    remedy="open it once more after the first short interval and look at the screen",
    why="cleaning a sludged screen gave one engine 20 psi back; the next flake can take it away",
    guards=(
        oil_causes_condition.OIL_DEGRADED,
        suction_causes.PICKUP_SCREEN_BLOCKED,
        leaks_causes_openings.BREATHER_BLOCKED,
    ),
    after=what_was_found.SLUDGE,
    cautions=(*what_was_found.WASHING, Caution.USED_OIL),
    also=("desludge", "engine flush"),
)
SLUDGE_CAUSE_CURED = Task(
    id="sludge_cause_cured",
    phase=Phase.CLEANING,
    says="cause of the sludge: cured",
    how=(
        "thermostat opens and shuts, breather and its valve work, oil of the right kind",
        "an interval by hours or months if the engine idles or makes short trips",
        "coolant and fuel ruled out",
    ),
    source=COMMON_PRACTICE,
    hold=Hold.NOTE,
    remedy="write the interval on the engine",
    guards=(oil_causes_condition.OIL_DEGRADED, leaks_causes_openings.BREATHER_BLOCKED),
    after=what_was_found.SLUDGE,
    also=("why does it sludge", "oil change interval"),
)
COOLING_TESTED_TIGHT = Task(
    id="cooling_tested_tight",
    phase=Phase.CLEANING,
    says="cooling system holds its pressure before oil goes in",
    how=(
        "filled, at the cap's pressure, cold, for half an hour; sump off or drain open below",
        "heads on and torqued: no drip inside",
    ),
    source=COMMON_PRACTICE,
    remedy="find the drip before the sump is closed",
    guards=(oil_causes_contamination.COOLANT_IN_OIL,),
    only_with=(features.WATER_COOLED,),
    after=what_was_found.COOLANT,
    cautions=(Caution.PRESSURE, Caution.HOT),
    also=("pressure test the block",),
)
STRANGE_FLUID_OUT = Task(
    id="strange_fluid_out",
    phase=Phase.CLEANING,
    says="oil with flush, additive or another fluid in it drained to the last drop",
    how=(
        "drain hot with filter, cooler and lines emptied; leave it open to drip overnight",
        "fresh oil and filter; change both again early if it still foams",
    ),
    source=idea_from(sources.OIL_AERATION_ARTICLE),
    remedy="change once more",
    guards=(oil_causes_condition.OIL_FOAM_PRONE,),
    after=(oil_record.ADDITIVE_OR_FLUSH_IN_OIL,),
    cautions=(Caution.HOT, Caution.USED_OIL, Caution.WASTE),
    also=("wrong fluid in the oil", "flush left in"),
)
OIL_HOSES_PROVED = Task(
    id="oil_hoses_proved",
    phase=Phase.CLEANING,
    says="oil hoses to cooler and filter clear inside, the bad one and its twin renewed",
    how=(
        "cut the old hose open beside the flat place: a loose or folded liner closes it from inside",
        "look through each hose that stays, push a ball or a rod of nearly its bore through",
        "renew in sets: the other hose is as old; rated for hot oil and cold-start pressure",
        "no kink, no flat bend, nothing that rubs; fittings held while you tighten the unions",
    ),
    source=COMMON_PRACTICE,
    remedy="renew the hose; a flat or swollen one does not recover",
    why="a liner that folds with hot oil lets cold oil pass, and shows nothing outside",
    guards=(delivery_causes.OIL_COOLER_BLOCKED, leaks_causes.OIL_LINE_LEAK),
    after=(delivery_filter_cut.COOLER_FOUND_BLOCKED, leaks_sights.OIL_HOSES_AGED),
    cautions=(Caution.HOT, Caution.SHARP),
    also=("new oil cooler hoses", "collapsed hose", "hose liner folded"),
)
