"""The wording of the usual cautions, and the authorities the tool defers to.

A caution is shown before the step it belongs to.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import KW_ONLY, dataclass
from types import MappingProxyType

from knowledge import sources
from knowledge.engines import features, features_build
from knowledge.model import Finding, Source
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.work import Caution


@dataclass(frozen=True, slots=True, eq=False)
class Wording:
    """One sentence of a caution, and the engines it concerns: all where nothing is named.

    A feature nobody has stated may be there, so it rules no sentence out.
    """

    says: str
    source: Source
    _: KW_ONLY
    short: str  #: in a few words, for a screen whose full text has the sentence
    only_with: tuple[Finding, ...] = ()  #: any of these features, else it does not concern it
    not_with: tuple[Finding, ...] = ()  #: none of these features

    def __str__(self) -> str:
        return self.says


#: of every step in which the engine runs; a boat's and a tractor's are shown where they may be meant
RUNNING = (Caution.EXHAUST, Caution.ROTATING, Caution.HOT, Caution.BOAT, Caution.TRACTOR)
CAUTIONS: Mapping[Caution, tuple[Wording, ...]] = MappingProxyType(
    {
        Caution.HOT: (
            Wording(
                "hot oil and exhaust burn: let the engine cool, or wear gloves and eye protection; "
                "never take a sender out under pressure, the oil sprays out hot",
                sources.PRESSURE_CHECK_2006,
                short="hot oil and exhaust burn: let it cool, no sender out under pressure",
            ),
        ),
        Caution.EXHAUST: (
            Wording(
                "exhaust gas kills: run outdoors or with extraction; make sure of fresh air before "
                "running indoors",
                sources.ARMY_TM_307_RUNNING,
                short="exhaust gas kills: fresh air",
            ),
        ),
        Caution.ROTATING: (
            Wording(
                "running engine: guard belts, fan and couplings; keep hair, sleeves and rings "
                "away; route hoses clear",
                sources.ARMY_TM_307_RUNNING,
                short="hands, hair and hoses clear of belts and fan",
            ),
        ),
        Caution.LIFTING: (
            Wording(
                "never under a jack alone; support the engine before you loosen its mounts",
                sources.ARMY_TM_272_TABLE,
                short="never under a jack alone",
            ),
            Wording(
                "vehicle on rated stands on firm ground, wheels chocked",
                sources.ARMY_TM_272_TABLE,
                only_with=(features.IN_A_VEHICLE, features.IN_A_TRACTOR),
                short="vehicle on rated stands, wheels chocked",
            ),
            Wording(
                "tractor: support its axle and the split as well",
                sources.ARMY_TM_272_TABLE,
                only_with=(features.IN_A_TRACTOR,),
                short="tractor: support axle and split",
            ),
        ),
        Caution.BATTERY: (
            Wording(
                "disconnect the battery, negative first, before working near starter, sender or "
                "alternator wires; for a test with the key on, connect it again with hands and "
                "tools clear of live ends",
                sources.SUMP_REMOVAL_2003,
                short="battery off, negative first",
            ),
        ),
        Caution.SPRING: (
            Wording(
                "behind a relief cap, pin or tensioner is a loaded spring: eye protection, face "
                "away, a cloth over it; hold the cap with a deep socket (common practice) and "
                "release slowly",
                sources.PRESSURIZED_BLACK_GOLD,
                short="loaded spring: eye protection, face away, release slowly",
            ),
        ),
        Caution.PRESSURE: (
            Wording(
                "compressed air or pressure pot: regulated, with its own relief and a rated hose, "
                "no more than needed (3 psi for a bubble test)",
                COMMON_PRACTICE,
                short="compressed air regulated, rated hose, no more than needed",
            ),
        ),
        Caution.SOLVENT: (
            Wording(
                "cleaning solvent burns and poisons: outdoors or with extraction, no flame, gloves "
                "and eye protection; no petrol (gasoline) on skin",
                sources.ARMY_TM_464_SUMP,
                short="solvent burns and poisons: outdoors, gloves, no flame",
            ),
        ),
        Caution.FIRE: (
            Wording(
                "oil on a hot exhaust, or fuel in the oil, can burn or explode: extinguisher at "
                "hand, no cranking with a strong smell of fuel",
                sources.LABORATORY_FUEL,
                short="fire: extinguisher at hand, no cranking with a smell of fuel",
            ),
        ),
        Caution.USED_OIL: (
            Wording(
                "used oil may cause skin cancer: barrier cream, gloves, wash; no oily rags in "
                "pockets",
                sources.OIL_SERVICE_SAFETY_2002,
                short="used oil: gloves, wash",
            ),
        ),
        Caution.ASBESTOS: (
            Wording(
                "old gaskets and clutch dust may hold asbestos: no dry scraping, no blowing",
                COMMON_PRACTICE,
                short="old gaskets may hold asbestos: no dry scraping",
            ),
        ),
        Caution.EYES: (
            Wording(
                "eye protection for drilling, grinding, sprung parts and compressed air",
                sources.TRAINING_PUMP_TEST,
                short="eye protection",
            ),
        ),
        Caution.HEAVY: (
            Wording(
                "crankshaft, cylinder head and engine are heavy: rated hoist and a second person",
                COMMON_PRACTICE,
                short="heavy: rated hoist, second person",
            ),
        ),
        Caution.SHARP: (
            Wording(
                "the edges of a cut filter and of sheet metal are sharp: gloves",
                COMMON_PRACTICE,
                short="sharp edges: gloves",
            ),
        ),
        Caution.HAND_TURN: (
            Wording(
                "turn by hand only with plugs out, ignition or fuel off, a diesel's stop lever "
                "pulled",
                COMMON_PRACTICE,
                short="turn by hand with ignition or fuel off, plugs out",
            ),
        ),
        Caution.WASTE: (
            Wording(
                "catch and label waste, let filters drain; pour nothing into drains, soil, water "
                "or bins; oily rags in a closed metal bin",
                sources.USED_OIL_HANDLING_2007,
                short="catch the waste, nothing into drains",
            ),
        ),
        Caution.INJECTION: (
            Wording(
                "injection spray goes through skin: keep clear when a union is loosened",
                COMMON_PRACTICE,
                only_with=(features.DIESEL,),
                short="injection spray goes through skin: keep clear",
            ),
            Wording(
                "common rail: never loosen a union, running or cranked; to cut a cylinder out "
                "switch its injector off electrically; the rail holds its pressure for minutes "
                "after stopping",
                COMMON_PRACTICE,
                only_with=(features_build.COMMON_RAIL,),
                not_with=(features_build.COIL_ON_PLUG,),
                short="common rail: loosen no union",
            ),
        ),
        Caution.BOAT: (
            Wording(
                "boat: moor her so that she cannot move",
                COMMON_PRACTICE,
                only_with=(features.IN_A_BOAT,),
                short="boat: run it moored",
            ),
            Wording(
                "petrol boat: run the blower and smell the bilge; no ignition until free of vapour",
                COMMON_PRACTICE,
                only_with=(features.IN_A_BOAT,),
                not_with=(features.DIESEL,),
                short="petrol boat: blower first, no ignition until free of vapour",
            ),
        ),
        Caution.TRACTOR: (
            Wording(
                "tractor: power take-off and hydraulics off, brakes locked",
                COMMON_PRACTICE,
                only_with=(features.IN_A_TRACTOR,),
                short="tractor: power take-off and hydraulics off, brakes locked",
            ),
        ),
        Caution.IGNITION: (
            Wording(
                "ignition voltage shocks: insulated pliers, a lead earthed (grounded) before the "
                "engine runs, never a lead left open to spark",
                COMMON_PRACTICE,
                not_with=(features.DIESEL,),
                short="ignition voltage shocks: insulated pliers, earthed lead",
            ),
            Wording(
                "coils on the plugs: pull none off while it runs or cranks; unplug that cylinder's "
                "injector, or switch it off with a tester",
                COMMON_PRACTICE,
                only_with=(features_build.COIL_ON_PLUG,),
                not_with=(features.DIESEL,),
                short="pull no coil off while it runs or cranks",
            ),
        ),
        Caution.PRIMING: (
            Wording(
                "priming with a drill: coil off, hands off, key out; the drill can kick",
                COMMON_PRACTICE,
                short="the drill can kick: coil off, key out",
            ),
        ),
    }
)


@dataclass(frozen=True, slots=True, eq=False)
class Deferral:
    """A matter in which the tool defers to an authority; shown, never overridden."""

    id: str
    says: str
    source: Source

    def __str__(self) -> str:
        return self.says


AIRCRAFT = Deferral(
    "aircraft",
    "engines in type-certificated aircraft are outside this book: stop; only a licensed "
    "maintenance organisation and the maker's data",
    sources.AIRCRAFT_FAULT_ISOLATION,
)
MAKERS_MANUAL = Deferral(
    "makers_manual",
    "the engine maker's manual, wear limits and torque figures come before anything typical "
    "in this book",
    JUDGEMENT,
)
WASTE_LAW = Deferral(
    "waste_law",
    "waste oil, filters and solvent: local law and collection points; in some places used oil is "
    "a hazardous waste by itself",
    sources.USED_OIL_HANDLING_2007,
)
LIFTING_RULES = Deferral(
    "lifting_rules",
    "lifting and jacking: a competent person, rated gear, local rules",
    JUDGEMENT,
)
FIRE_RULES = Deferral(
    "fire_rules",
    "fuel in the oil, petrol (gasoline) boats, gas engines: fire rules and marine safety "
    "code come first",
    JUDGEMENT,
)
EMERGENCY_PLANT = Deferral(
    "emergency_plant",
    "emergency plant, fire pumps, lifeboats: the owner's duty procedures and authorised persons",
    JUDGEMENT,
)
HIGH_PRESSURE_WORK = Deferral(
    "high_pressure_work",
    "high-pressure diesel injection and pressure testing: qualified persons",
    JUDGEMENT,
)
WARRANTY = Deferral(
    "warranty",
    "engines under a maker's or rebuilder's warranty: ask before you take them apart, keep "
    "the evidence",
    JUDGEMENT,
)
PERSON_DECIDES = Deferral(
    "person_decides",
    "the program ranks likely causes and shows evidence; a person decides on running, repair and "
    "sign-off",
    JUDGEMENT,
)
MACHINE_SHOP = Deferral(
    "machine_shop",
    "machining, welding of pump castings, line boring and crank repair: a machine shop",
    JUDGEMENT,
)
HAZARDOUS_MATERIAL = Deferral(
    "hazardous_material",
    "asbestos or other hazardous material suspected: licensed handling",
    JUDGEMENT,
)
DEFERS_TO: tuple[Deferral, ...] = (
    AIRCRAFT,
    MAKERS_MANUAL,
    WASTE_LAW,
    LIFTING_RULES,
    FIRE_RULES,
    EMERGENCY_PLANT,
    HIGH_PRESSURE_WORK,
    WARRANTY,
    PERSON_DECIDES,
    MACHINE_SHOP,
    HAZARDOUS_MATERIAL,
)
