"""Quantities of the main and rod bearings and of the crank, with their limits."""

from knowledge import sources
from knowledge.engines import features
from knowledge.figures import DIAL_GAUGE, GAUGE_STRIP
from knowledge.limits import BySize, Figure, Limit, Printed, Side
from knowledge.model import Quantity
from knowledge.sources import FROM_MEMORY, JUDGEMENT
from knowledge.units import INCH, MM

#: from a journal that fills its bearing to a bearing worn right through
CLEARANCE = (0.0, 2 * MM)
SIZE = (1 * MM, 300 * MM)  #: of journals, bearings and holes in engines that run on a road or boat
COUNT = (0.0, 40.0)
SHARE = (0.01, 1.5)

# Clearances are taken by plastic thread, so its error stands for both. The circuit's parameters
# took 0.25 thou for this error until both came to stand here.
MAIN_CLEARANCE = Quantity(
    id="main_clearance",
    says="main bearing clearance, on the diameter",
    short="main bearing clearance",
    dimension="length",
    plausible=CLEARANCE,
    spread=GAUGE_STRIP,
    source=JUDGEMENT,
)
ROD_CLEARANCE = Quantity(
    id="rod_clearance",
    says="rod bearing clearance, on the diameter",
    short="rod bearing clearance",
    dimension="length",
    plausible=CLEARANCE,
    spread=GAUGE_STRIP,
    source=JUDGEMENT,
)
CRANK_END_FLOAT = Quantity(
    id="crank_end_float",
    says="crank end float",
    dimension="length",
    plausible=(0.0, 10 * MM),
    spread=DIAL_GAUGE,
    source=JUDGEMENT,
)

MAIN_DIAMETER = Quantity(
    id="main_diameter",
    says="main journal diameter",
    dimension="length",
    plausible=SIZE,
    source=JUDGEMENT,
)
ROD_DIAMETER = Quantity(
    id="rod_diameter",
    says="crankpin diameter",
    dimension="length",
    plausible=SIZE,
    source=JUDGEMENT,
)

# The widest clearance grows with the journal: three quarters of a thou for each inch, and an
# allowance. The allowances meet what is printed: 0.0035 in for a stock V8 with 3 in mains and 2.1 in
# crankpins (ENGINE_BUILDER_2021), 0.08 mm for the mains of a 3.2 V6 (MAIN_CLEARANCE_V6_1998), and
# nearly 0.10 mm for the crankpins of a 3.0 V6 (ROD_CLEARANCE_V6_1990).
PER_SIZE = 0.00075
PUSHROD_V8 = ("distributor_v8", "distributor_v8_solid", "marine_petrol_v8", "crank_nose_v8")
BIG_DIESEL = "tractor or truck diesel, sound with wider clearances"
SMALL_DIESEL = "small diesel, sound with wider clearances"
AIR_COOLED = "air-cooled engine, sound with wider clearances"


def sound_though_wide(
    big_diesel: float, small_diesel: float, air_cooled: float
) -> dict[str, Figure]:
    """Return the widest clearance (m) of layouts that are sound beyond what their journals suggest."""
    air = ("air_cooled_flat_four", "small_air_cooled", "generator_petrol")
    big = ("tractor_diesel", "heavy_diesel", "inline_six_diesel", "vee_diesel")
    small = ("small_diesel", "generator_diesel", "marine_diesel")
    return {
        **dict.fromkeys(big, Figure(big_diesel, BIG_DIESEL, FROM_MEMORY)),
        **dict.fromkeys(small, Figure(small_diesel, SMALL_DIESEL, FROM_MEMORY)),
        **dict.fromkeys(air, Figure(air_cooled, AIR_COOLED, FROM_MEMORY)),
    }


MOST_MAIN_CLEARANCE = Limit(
    id="main_clearance",
    says="greatest main bearing clearance, on the diameter",
    quantities=(MAIN_CLEARANCE,),
    side=Side.MOST,
    typical=0.0035 * INCH,
    source=sources.ENGINE_BUILDER_2021,
    typical_on=PUSHROD_V8,
    by_size=BySize(size=MAIN_DIAMETER, share=PER_SIZE, allowance=0.00125 * INCH, source=JUDGEMENT),
    on_layouts=sound_though_wide(0.15 * MM, 0.15 * MM, 0.18 * MM),
    of="stock parts of the older kind, thicker oil",
)
MOST_ROD_CLEARANCE = Limit(
    id="rod_clearance",
    says="greatest rod bearing clearance, on the diameter",
    quantities=(ROD_CLEARANCE,),
    side=Side.MOST,
    typical=0.0035 * INCH,
    source=sources.ENGINE_BUILDER_2021,
    typical_on=PUSHROD_V8,
    by_size=BySize(size=ROD_DIAMETER, share=PER_SIZE, allowance=0.0019 * INCH, source=JUDGEMENT),
    on_layouts=sound_though_wide(0.13 * MM, 0.13 * MM, 0.15 * MM),
    of="stock parts of the older kind, thicker oil",
)
LEAST_BEARING_CLEARANCE = Limit(
    id="least_bearing_clearance",
    says="smallest main or rod clearance, on the diameter",
    quantities=(MAIN_CLEARANCE, ROD_CLEARANCE),
    side=Side.LEAST,
    typical=0.0010 * INCH,
    source=sources.ENGINE_BUILDER_2021,
    of="stiff block and crank, thin oil",
    others=(
        Printed(
            value=0.0008 * INCH,
            of="petrol V8 of 2005, mains",
            source=sources.V8_CRANKSHAFT_2005,
        ),
    ),
)
MOST_CRANK_END_FLOAT = Limit(
    id="crank_end_float",
    says="greatest crank end float",
    quantities=(CRANK_END_FLOAT,),
    side=Side.MOST,
    typical=0.011 * INCH,
    source=sources.BEARING_GUIDE_CEB1,
    of="bearing maker, as fitted, for the biggest journals",
    others=(
        Printed(
            value=0.42 * MM,
            of="petrol four of 1998, worn",
            source=sources.FOUR_THRUST_PLAY_1998,
        ),
        Printed(
            value=0.015 * INCH,
            of="diesel, worn",
            source=sources.DIESEL_THRUST_CLEARANCE,
            only_with=(features.DIESEL,),
        ),
        Printed(
            value=0.011 * INCH,
            of="bearing maker, as fitted, for the biggest journals",
            source=sources.BEARING_GUIDE_CEB1,
            only_with=(features.DIESEL,),
        ),
    ),
)

# Form of journals and bores: the largest difference of readings of one part.
FORM = (0.0, 0.5 * MM)
JOURNAL_OVAL = Quantity(
    id="journal_oval",
    says="out of round of a journal",
    dimension="length",
    plausible=FORM,
    source=JUDGEMENT,
)
JOURNAL_TAPER = Quantity(
    id="journal_taper",
    says="taper of a journal, one end to the other",
    short="taper of a journal",
    dimension="length",
    plausible=FORM,
    source=JUDGEMENT,
)
BORE_OVAL = Quantity(
    id="bore_oval",
    says="out of round of a bearing's bore in block or rod",
    short="out of round of a bore",
    dimension="length",
    plausible=FORM,
    source=JUDGEMENT,
)
BORE_TAPER = Quantity(
    id="bore_taper",
    says="taper or bell mouth of a bearing's bore in block or rod",
    short="taper of a bore",
    dimension="length",
    plausible=FORM,
    source=JUDGEMENT,
)
MOST_JOURNAL_OVAL = Limit(
    id="journal_oval",
    says="greatest out of round of a main journal or crankpin",
    quantities=(JOURNAL_OVAL,),
    side=Side.MOST,
    typical=0.0005 * INCH,
    source=sources.BEARING_GUIDE_CEB1,
    of="bearing maker",
    others=(
        Printed(
            value=0.0005 * INCH, of="diesel, army manual", source=sources.ARMY_TM_262_CRANKPINS
        ),
        Printed(value=0.0003 * INCH, of="6.0 V8 of 2005", source=sources.V8_CRANKSHAFT_2005),
        Printed(value=0.010 * MM, of="1.9 four of 1998", source=sources.FOUR_CRANK_1998),
        Printed(value=0.0006 * INCH, of="3.8 V6 of 2001", source=sources.V6_CRANK_2001),
    ),
)
MOST_JOURNAL_TAPER = Limit(
    id="journal_taper",
    says="greatest taper of a main journal or crankpin",
    quantities=(JOURNAL_TAPER,),
    side=Side.MOST,
    typical=0.0005 * INCH,
    source=sources.V10_JOURNALS_1996,
    of="8.0 V10 of 1996",
    others=(
        Printed(
            value=0.0005 * INCH, of="diesel, army manual", source=sources.ARMY_TM_262_CRANKPINS
        ),
        Printed(value=0.0006 * INCH, of="diesel, army manual", source=sources.ARMY_TM_202_JOURNALS),
        Printed(value=0.010 * MM, of="1.9 four of 1998", source=sources.FOUR_CRANK_1998),
    ),
)
MOST_BORE_OVAL = Limit(
    id="bore_oval",
    says="greatest out of round of a main or rod bore without its shells",
    quantities=(BORE_OVAL,),
    side=Side.MOST,
    typical=0.010 * MM,
    source=sources.FOUR_RODS_1997,
    of="rods of a 2.0 four of 1997",
    others=(
        Printed(value=0.008 * MM, of="mains of a 3.9 V6 of 2007", source=sources.V6_BLOCK_2007),
        Printed(value=0.0010 * INCH, of="mains of older pushrod engines", source=FROM_MEMORY),
    ),
)
MOST_BORE_TAPER = Limit(
    id="bore_taper",
    says="greatest taper or bell mouth of a main or rod bore",
    quantities=(BORE_TAPER,),
    side=Side.MOST,
    typical=0.010 * MM,
    source=sources.FOUR_RODS_1997,
    of="rods of a 2.0 four of 1997",
    others=(Printed(value=0.0005 * INCH, of="mains of older pushrod engines", source=FROM_MEMORY),),
)

# dimensions of the circuit
MAIN_COUNT = Quantity(
    id="main_count",
    says="main bearings",
    dimension="count",
    plausible=COUNT,
    source=JUDGEMENT,
)
MAIN_LENGTH = Quantity(
    id="main_length",
    says="main bearing length, groove included",
    dimension="length",
    plausible=SIZE,
    source=JUDGEMENT,
)
MAIN_GROOVE = Quantity(
    id="main_groove",
    says="width of the groove in a main bearing",
    dimension="length",
    plausible=SIZE,
    source=JUDGEMENT,
)
MAIN_ECCENTRICITY = Quantity(
    id="main_eccentricity",
    says="eccentricity of a main journal, as a share of its clearance",
    dimension="count",
    plausible=SHARE,
    source=JUDGEMENT,
)
MAIN_FEED = Quantity(
    id="main_feed",
    says="flow through a main bearing's groove, as a share of a full groove's",
    dimension="count",
    plausible=SHARE,
    source=JUDGEMENT,
)
ROD_COUNT = Quantity(
    id="rod_count",
    says="rod bearings",
    dimension="count",
    plausible=COUNT,
    source=JUDGEMENT,
)
ROD_LENGTH = Quantity(
    id="rod_length",
    says="rod bearing length",
    dimension="length",
    plausible=SIZE,
    source=JUDGEMENT,
)
ROD_HOLE = Quantity(
    id="rod_hole",
    says="oil hole in the crankpin, diameter",
    dimension="length",
    plausible=SIZE,
    source=JUDGEMENT,
)
ROD_ECCENTRICITY = Quantity(
    id="rod_eccentricity",
    says="eccentricity of a crankpin, as a share of its clearance",
    dimension="count",
    plausible=SHARE,
    source=JUDGEMENT,
)
ROD_FEED = Quantity(
    id="rod_feed",
    says="share of a turn in which the crankpin's hole faces a wide gap",
    dimension="count",
    plausible=SHARE,
    source=JUDGEMENT,
)
CRANK_ENTRY_RADIUS = Quantity(
    id="crank_entry_radius",
    says="oil hole into the crank, distance from its axis",
    dimension="length",
    plausible=SIZE,
    source=JUDGEMENT,
)
CRANK_EXIT_RADIUS = Quantity(
    id="crank_exit_radius",
    says="oil hole out at the crankpin, distance from the axis",
    dimension="length",
    plausible=SIZE,
    source=JUDGEMENT,
)
FILM_RISE = Quantity(
    id="film_rise",
    says="bearing film temperature above gallery, kelvins",
    dimension="count",
    plausible=(0.0, 80.0),
    source=JUDGEMENT,
)
