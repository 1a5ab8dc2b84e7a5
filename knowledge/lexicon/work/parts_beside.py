"""Parts that are worked on: clutch, fuel, ignition, cooling: parts of other systems, and a pickup that is a truck."""

from __future__ import annotations

from knowledge.lexicon.work.part_worked import PartWorked
from knowledge.reports.words import Done

_R, _B = Done.RENEWED, Done.REBUILT
PARTS: tuple[PartWorked, ...] = (
    PartWorked(
        names=(
            "on|in|for|from my|our|his|this|a|an|the|old @year? old|farm|diesel|work? =pickup",
            "my|our|his|her|this old|diesel|petrol? =pickup was|is|has|had|went|would|runs|ran|just|came|got|does|did|used|started|drives|shows|always|,",
            "=pickup truck",
        ),
    ),
    PartWorked(names=("clutch|gearbox|transmission",), area="clutch_or_gearbox"),
    PartWorked(names=("gearbox|transmission|clutch oil|fluid",), area="clutch_or_gearbox"),
    # of other systems: no oil change and no oil filter
    PartWorked(
        names=(
            "diff|differential|axle|hydraulic|fork|steering|brake|hub oil|fluid",
            "air|cabin|pollen|hydraulic|vacuum filter|filters|cleaner element?",
            "temp|temperature|coolant|crank|cam|knock|speed|oxygen|lambda|map sensor|sender",
            "fuel|gas|petrol tank? gauge|sender|sensor",
            "fuel pressure regulator",
        ),
    ),
    PartWorked(names=("fuel|diesel|petrol|inline filter|filters element?",), area="fuel_system"),
    PartWorked(
        names=("fuel|lift|injection|hp pump", "injectors|injector|carb|carburettor|carburetor"),
        area="fuel_system",
    ),
    PartWorked(
        names=(
            "battery|alternator|points|coil",
            "points plugs|plug",
            "plugs and|& points|leads|coil",
        ),
        area="ignition_or_electrics",
    ),
    PartWorked(
        names=("voltage|alternator|charging|fuel|fuel-pressure|gas|dynamo regulator",),
        area="ignition_or_electrics",
    ),
    PartWorked(names=("spark plugs|plug",), area="ignition_or_electrics", area_if=Done.RENEWED),
    PartWorked(
        names=("radiator|thermostat|heat-exchanger", "raw? water pump"), area="cooling_system"
    ),
    PartWorked(
        names=(
            "fuel|lift pump diaphragm|seal?",
            "injector|injectors",
            "injector|injectors seals|seal|washers|o-rings",
            "leaking|leaky|dribbling injector|injectors",
            "float|needle|carb|carburettor|carburetor float|needle|valve|seat",
            "float|carb|carburettor|carburetor",
        ),
        trials=dict.fromkeys((_R, _B), "fuel_leak_mended"),
        area="fuel_system",
    ),
    PartWorked(
        names=(
            "vacuum|hydraulic|steering|power-steering|servo|air pump",
            "governor|magneto|compressor",
            "blanking plate|cover",
        ),
        area="accessory",
    ),
    PartWorked(
        names=("liftpump|fuelpump",),
        trials=dict.fromkeys((_R, _B), "fuel_leak_mended"),
        area="fuel_system",
    ),
)
