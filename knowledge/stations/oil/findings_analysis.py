"""The laboratory's sheet, and the check that shows it. Trends outrank single figures."""

from knowledge import sources
from knowledge.model import (
    EXCEPTIONAL,
    OCCASIONAL,
    RARE,
    VERY_RARE,
    Background,
    Finding,
    Measure,
    Source,
    Stage,
    Station,
)
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.oil import quantities
from knowledge.work import Access, Caution, Inspection


def lab(
    *,
    id: str,
    says: str,
    denies: str,
    asks: str,
    normal: str,
    background: Background,
    source: Source = sources.LUBRICANTS_HANDBOOK_2004,
    also: tuple[str, ...] = (),
    why: str = "",
) -> Finding:
    """One line of a laboratory's sheet."""
    return Finding(
        id=id,
        station=Station.OIL,
        says=says,
        asks=f"Laboratory sheet: {asks}",
        source=source,
        denies=denies,
        stage=Stage.OUTSIDE,
        normal=normal,
        why=why,
        background=background,
        also=also,
    )


IRON_HIGH = lab(
    id="iron_high",
    says="the sample is high in iron",
    denies="the sample is not high in iron",
    asks="is iron high (more than about 100 ppm)?",
    normal="under 100 ppm; run-in and rust after standing raise it",
    background=OCCASIONAL,
    also=("high iron", "Fe high", "iron in oil analysis"),
)
COPPER_HIGH_ALONE = lab(
    id="copper_high_alone",
    says="the sample is high in copper alone",
    denies="the sample is not high in copper alone",
    asks="is copper high while lead and tin are not?",
    normal="10 to 50 ppm, by laboratory; coolers leach copper",
    background=OCCASIONAL,
    also=("high copper", "Cu high", "copper only"),
)
COPPER_AND_LEAD_HIGH = lab(
    id="copper_and_lead_high",
    says="the sample is high in copper and lead together",
    denies="the sample is not high in copper and lead together",
    asks="are copper and lead both high (unleaded fuel only)?",
    normal=(
        "lead under about 25, copper under about 20 to 50 ppm; with leaded fuel lead means nothing"
    ),
    background=VERY_RARE,
    also=("bearing metals high", "lead and copper up", "bearing material in oil sample"),
    why="lead over copper is what bearing shells are made of",
)
LEAD_HIGH_ALONE = lab(
    id="lead_high_alone",
    says="the sample is high in lead alone",
    denies="the sample is not high in lead alone",
    asks="is lead high while copper is not (unleaded fuel only)?",
    normal="under 25 to 40 ppm; with leaded fuel it means nothing",
    background=RARE,
    source=sources.OIL_ANALYSIS_TABLE,
    also=("high lead", "Pb high", "lead in oil"),
)
TIN_HIGH = lab(
    id="tin_high",
    says="the sample is high in tin",
    denies="the sample is not high in tin",
    asks="is tin high (more than about 10 ppm)?",
    normal="under 10 to 30 ppm",
    background=RARE,
    also=("high tin", "Sn high", "tin in oil sample"),
)
ALUMINIUM_HIGH = lab(
    id="aluminium_high",
    says="the sample is high in aluminium (aluminum)",
    denies="the sample is not high in aluminium",
    asks="is aluminium high (more than about 20 ppm, 80 in an aluminium block)?",
    normal="under 20 to 30 ppm",
    background=OCCASIONAL,
    also=("high aluminum", "Al high", "aluminium in oil"),
)
CHROMIUM_HIGH = lab(
    id="chromium_high",
    says="the sample is high in chromium",
    denies="the sample is not high in chromium",
    asks="is chromium high (more than about 10 ppm)?",
    normal="under 10 to 30 ppm; ring wear, not a cause of low pressure by itself",
    background=OCCASIONAL,
    also=("high chrome", "Cr high", "ring wear"),
)
SILICON_HIGH = lab(
    id="silicon_high",
    says="the sample is high in silicon",
    denies="the sample is not high in silicon",
    asks="is silicon high (more than about 20 ppm)?",
    normal="under 20 to 30 ppm; fresh silicone sealer and anti-foam raise it too",
    background=OCCASIONAL,
    also=("high silicon", "Si high", "dirt in oil sample"),
)
GLYCOL_FOUND = lab(
    id="glycol_found",
    says="the sample holds glycol, or sodium and potassium of coolant or sea water",
    denies="the sample holds neither glycol nor salt",
    asks="was glycol found, or high sodium or potassium?",
    normal="none; some additives contain potassium, sea water gives sodium alone",
    background=EXCEPTIONAL,
    source=sources.OIL_ANALYSIS_DARK_ART,
    also=("glycol positive", "sodium high", "potassium high", "antifreeze in sample"),
    why="sodium stays behind when the water has boiled off",
)
WATER_IN_SAMPLE = lab(
    id="water_in_sample",
    says="the sample holds more than a trace of water",
    denies="the sample holds no significant water",
    asks="is there more than 0.1 % water?",
    normal="0.1 % at most",
    background=RARE,
    source=sources.LABORATORY_COOLANT,
    also=("water in sample", "crackle test", "moisture in oil"),
)
LAB_FUEL_HIGH = lab(
    id="lab_fuel_high",
    says="the sample holds too much fuel",
    denies="the sample holds little fuel",
    asks="is there more than about 4 % fuel?",
    normal="caution from about 2.5 %, act at once above 4 to 5 %",
    background=VERY_RARE,
    source=sources.LABORATORY_FUEL,
    also=("fuel dilution", "fuel in sample", "low flash point"),
    why="5 % of fuel thins the oil by a grade",
)
LAB_VISCOSITY_LOW = lab(
    id="lab_viscosity_low",
    says="the sample is thinner than the new oil by 15 % or more",
    denies="the sample is about as thick as the new oil",
    asks="is it thinner than the new oil by 15 % or more at 100 °C?",
    normal="within 15 % of the new oil at 100 °C",
    background=RARE,
    also=("low viscosity", "viscosity down", "sheared oil"),
)
LAB_VISCOSITY_HIGH = lab(
    id="lab_viscosity_high",
    says="the sample is thicker than the new oil by 15 % or more",
    denies="the sample is no thicker than the new oil",
    asks="is it thicker than the new oil by 15 % or more at 100 °C?",
    normal="within 15 % of the new oil at 100 °C",
    background=RARE,
    also=("high viscosity", "viscosity up", "oxidised oil", "soot thickened"),
)
ACID_NUMBER_HIGH = lab(
    id="acid_number_high",
    says="the sample's acid number is well above the new oil's",
    denies="the sample's acid number is near the new oil's",
    asks="is the acid number more than 5 units above the new oil's?",
    normal="less than 5 units above new",
    background=RARE,
    also=("acid number", "TAN high", "acid oil"),
)
METALS_NORMAL = lab(
    id="metals_normal",
    says="the sample shows no abnormal metals",
    denies="the sample shows abnormal metals",
    asks="are all wear metals normal?",
    normal="normal; flakes too big for the test can still be in the filter",
    background=OCCASIONAL,
    source=idea_from(sources.LABORATORY_WORRY),
    also=("oil analysis clean", "no metals", "normal oil report"),
)
FUEL_SHARE = Measure(
    quantity=quantities.FUEL_SHARE,
    station=Station.OIL,
    asks="Fuel in the oil, by the laboratory?",
    source=sources.LABORATORY_FUEL,
    also=(
        "how much petrol in the oil",
        "fuel percentage",
    ),
)
VISCOSITY_AT_100C = Measure(
    quantity=quantities.VISCOSITY_AT_100C,
    station=Station.OIL,
    asks="Viscosity at 100 °C, by the laboratory?",
    source=COMMON_PRACTICE,
    also=(
        "oil viscosity",
        "how thick the oil is",
    ),
)
SEND_AN_OIL_SAMPLE = Inspection(
    id="send_an_oil_sample",
    station=Station.OIL,
    says="oil sample to a laboratory",
    steps=(
        "oil warm, before any drain: draw mid-stream or through the stick tube into a clean bottle",
        "label it: hours on engine and oil, grade, fuel (leaded?), additives",
        "send a little of the new oil along to compare",
    ),
    minutes=10,
    access=Access.OIL_SAMPLE,
    reveals=(
        IRON_HIGH,
        COPPER_HIGH_ALONE,
        COPPER_AND_LEAD_HIGH,
        LEAD_HIGH_ALONE,
        TIN_HIGH,
        ALUMINIUM_HIGH,
        CHROMIUM_HIGH,
        SILICON_HIGH,
        GLYCOL_FOUND,
        WATER_IN_SAMPLE,
        LAB_FUEL_HIGH,
        LAB_VISCOSITY_LOW,
        LAB_VISCOSITY_HIGH,
        ACID_NUMBER_HIGH,
        METALS_NORMAL,
    ),
    source=COMMON_PRACTICE,
    measures=(FUEL_SHARE, VISCOSITY_AT_100C),
    tools=("sample bottle", "vacuum pump", "label"),
    cautions=(Caution.HOT, Caution.USED_OIL),
    keep="a second bottle for a re-test",
    waits_minutes=4320,
    also=("oil analysis", "used oil test", "lab test", "spectrometer"),
)
