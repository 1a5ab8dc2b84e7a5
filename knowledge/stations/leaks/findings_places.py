"""Places where oil escapes, and the checks that show them."""

from knowledge import sources
from knowledge.cautions import RUNNING
from knowledge.model import EXCEPTIONAL, HARDLY_EVER, RARE, VERY_RARE, Finding, Stage, Station
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.delivery import findings_filter as delivery_filter
from knowledge.stations.instrument import findings_sender as instrument_sender
from knowledge.stations.leaks import findings, findings_sights
from knowledge.stations.oil import findings_heat as oil_heat
from knowledge.work import Access, Caution, Inspection

FILTER_FOUND_LOOSE = Finding(
    id="filter_found_loose",
    station=Station.LEAKS,
    says="the oil filter is loose or has come off",
    asks="Oil filter loose, crooked or off?",
    source=COMMON_PRACTICE,
    denies="the oil filter is tight",
    stage=Stage.OUTSIDE,
    normal="hand tight and a little more, seal evenly squeezed",
    background=EXCEPTIONAL,
    also=("filter finger loose", "oil filter fell off", "filter spun off", "loose oil filter"),
)
FEEL_THE_FILTER = Inspection(
    id="feel_the_filter",
    station=Station.LEAKS,
    says="oil filter: tight, straight, dry",
    steps=(
        "engine stopped and cool enough to touch",
        "feel whether it turns by hand",
        "look right round its seal with a mirror",
    ),
    minutes=3,
    access=Access.OUTSIDE,
    reveals=(
        FILTER_FOUND_LOOSE,
        delivery_filter.FILTER_SEAT_LEAKS,
        delivery_filter.FILTER_BURST,
        findings_sights.FILTER_CAN_HOLED,
    ),
    source=COMMON_PRACTICE,
    tools=("mirror", "gloves"),
    cautions=(Caution.HOT, Caution.USED_OIL),
    keep="photograph how it sits before you tighten it",
    also=("check oil filter", "is the filter tight"),
)

LOOK_UNDER_THE_FILTER = Inspection(
    id="look_under_the_filter",
    station=Station.LEAKS,
    says="filter face: one seal, clean, none left behind",
    steps=(
        "photograph face and filter as you take them apart",
        "feel the face with a fingernail for an old seal",
        "count the seals on the filter",
    ),
    minutes=5,
    access=Access.FILTER_OFF,
    reveals=(
        delivery_filter.ADAPTER_GASKET_DISPLACED,
        delivery_filter.FILTER_MISFITTED,
    ),
    source=COMMON_PRACTICE,
    tools=("lamp", "camera"),
    cautions=(Caution.HOT, Caution.USED_OIL, Caution.WASTE),
    destroys="how the seal sat",
    keep="keep the filter and every seal",
    also=("double gasket check",),
)

OIL_LINE_FOUND_BROKEN = Finding(
    id="oil_line_found_broken",
    station=Station.LEAKS,
    says="an oil line, hose or cooler is burst, chafed through or off",
    asks="Oil line, hose or cooler burst, chafed through, cracked or off its fitting?",
    source=idea_from(sources.DIESEL_TESTING_MANUAL),
    denies="every oil line is whole and connected",
    stage=Stage.OUTSIDE,
    normal="whole, dry, clipped clear of heat and edges",
    background=VERY_RARE,
    also=("hose burst", "line chafed", "cooler split", "banjo bolt broke", "hose blew off"),
)
OIL_LINE_FITTING_WET = Finding(
    id="oil_line_fitting_wet",
    station=Station.LEAKS,
    says="a fitting of an oil line or cooler is loose or wet",
    asks="Any fitting of an oil line or cooler loose or wet with oil?",
    source=sources.DIESEL_TESTING_MANUAL,
    denies="the fittings of the oil lines are dry",
    stage=Stage.OUTSIDE,
    normal="dry and tight",
    background=RARE,
    also=("weeping fitting", "loose union", "oil line leaking", "leaking banjo"),
)
FOLLOW_THE_OIL_LINES = Inspection(
    id="follow_the_oil_lines",
    station=Station.LEAKS,
    says="follow every oil line, hose and cooler by hand",
    steps=(
        "engine stopped and cool",
        "bend each hose at its ends, feel for soft or chafed spots",
        "try each fitting with a wrench; look for bright chafe marks",
        "look at the cooler's seams; on a water-cooled one look for oil in the water",
    ),
    minutes=10,
    access=Access.OUTSIDE,
    reveals=(
        OIL_LINE_FOUND_BROKEN,
        OIL_LINE_FITTING_WET,
        findings.OIL_OVERBOARD,
        findings_sights.OIL_HOSES_AGED,
    ),
    source=COMMON_PRACTICE,
    tools=("lamp", "spanners"),
    cautions=(Caution.HOT, Caution.SHARP, Caution.USED_OIL),
    also=("check oil hoses", "check cooler lines"),
)

DRAIN_PLUG_FOUND_LOOSE = Finding(
    id="drain_plug_found_loose",
    station=Station.LEAKS,
    says="the drain plug is gone or loose, or the drain valve open",
    asks="Drain plug gone, loose or stripped, or a drain valve open?",
    source=COMMON_PRACTICE,
    denies="the drain plug is tight and dry",
    stage=Stage.OUTSIDE,
    normal="tight and dry on a good washer",
    background=EXCEPTIONAL,
    also=("sump plug gone", "no drain plug", "drain plug dripping", "drain cock open"),
)
LOOK_AT_THE_DRAIN = Inspection(
    id="look_at_the_drain",
    station=Station.LEAKS,
    says="drain plug or drain valve: fitted, tight, dry",
    steps=(
        "look from below with a light",
        "try the plug with a wrench",
        "see that a drain valve is shut",
    ),
    minutes=3,
    access=Access.OUTSIDE,
    reveals=(
        DRAIN_PLUG_FOUND_LOOSE,
        findings_sights.DRAIN_VALVE_WRONG,
    ),
    source=COMMON_PRACTICE,
    tools=("lamp", "spanner"),
    cautions=(Caution.LIFTING, Caution.HOT, Caution.USED_OIL, Caution.WASTE),
    also=("check the sump plug",),
)

DIPSTICK_PUSHED_OUT = Finding(
    id="dipstick_pushed_out",
    station=Station.LEAKS,
    says="the dipstick was pushed up or blown out",
    asks="Dipstick pushed up or blown out while running?",
    source=COMMON_PRACTICE,
    denies="the dipstick stays down",
    normal="stays seated",
    background=VERY_RARE,
    also=("dipstick pops out", "dip stick flew out", "oil out of the dipstick tube"),
)
FILLER_CAP_FOUND_OFF = Finding(
    id="filler_cap_found_off",
    station=Station.LEAKS,
    says="the filler cap or dipstick was off or not seated",
    asks="Filler cap or dipstick found off or not seated?",
    source=COMMON_PRACTICE,
    denies="filler cap and dipstick were in place",
    stage=Stage.OUTSIDE,
    normal="both seated",
    background=HARDLY_EVER,
    also=("oil cap left off", "oil cap missing", "dipstick out", "no filler cap"),
)
LOOK_AT_FILLER_AND_STICK = Inspection(
    id="look_at_filler_and_stick",
    station=Station.LEAKS,
    says="filler cap and dipstick seated",
    steps=(
        "see whether cap and dipstick are seated before you touch them",
        "look for oil blown around them",
    ),
    minutes=1,
    access=Access.OUTSIDE,
    reveals=(FILLER_CAP_FOUND_OFF, DIPSTICK_PUSHED_OUT),
    source=COMMON_PRACTICE,
    cautions=(Caution.HOT,),
    also=(
        "filler cap left off",
        "dipstick seated",
    ),
)

LOOK_AT_THE_SENDER = Inspection(
    id="look_at_the_sender",
    station=Station.LEAKS,
    says="oil sender or switch: whole and dry",
    steps=(
        "engine stopped",
        "pull the plug off and look inside it for oil",
        "look for cracks at its neck and oil below it",
    ),
    minutes=5,
    access=Access.OUTSIDE,
    reveals=(instrument_sender.SENDER_LEAKS_OIL,),
    source=COMMON_PRACTICE,
    tools=("lamp", "mirror"),
    cautions=(Caution.HOT, Caution.BATTERY),
    also=("check sending unit for leaks", "oil in the connector"),
)

BREATHER_FOUND_BLOCKED = Finding(
    id="breather_found_blocked",
    station=Station.LEAKS,
    says="the crankcase breather, its valve or hose is blocked",
    asks="Crankcase breather, its valve or hose blocked, kinked or iced?",
    source=COMMON_PRACTICE,
    denies="the breather is clear",
    stage=Stage.OUTSIDE,
    normal="you can blow through it",
    background=EXCEPTIONAL,
    also=("pcv plugged", "breather clogged", "vent hose kinked", "iced breather"),
)
LOOK_THROUGH_THE_BREATHER = Inspection(
    id="look_through_the_breather",
    station=Station.LEAKS,
    says="crankcase breather: valve, hose and trap clear",
    steps=(
        "engine stopped and cool; take hose and valve off",
        "shake the valve, blow through hose and trap by mouth or bulb",
        "look for kinks, sludge, ice and a plugged outlet",
    ),
    minutes=10,
    access=Access.OUTSIDE,
    reveals=(
        BREATHER_FOUND_BLOCKED,
        findings_sights.BREATHER_MISROUTED,
    ),
    source=COMMON_PRACTICE,
    tools=("pliers", "clean hose"),
    cautions=(Caution.HOT,),
    also=("check pcv", "check crankcase vent"),
)

FEEL_THE_CRANKCASE_BREATHE = Inspection(
    id="feel_the_crankcase_breathe",
    station=Station.LEAKS,
    says="crankcase pressure at filler or stick tube, idling",
    steps=(
        "lift the filler cap, or put a water gauge on the dipstick tube",
        "judge at idle, then slightly above",
        "again with the breather hose off: if it blows less, the breather is blocked",
    ),
    minutes=10,
    access=Access.OUTSIDE,
    reveals=(oil_heat.BLOW_BY_HIGH, DIPSTICK_PUSHED_OUT),
    source=COMMON_PRACTICE,
    tools=("water gauge", "gloves"),
    cautions=(*RUNNING, Caution.EYES),
    needs_running=True,
    also=("blow-by test", "crankcase pressure test"),
)

ACCESSORY_PORT_UNCOVERED = Finding(
    id="accessory_port_uncovered",
    station=Station.LEAKS,
    says="the gasket under an accessory leaves its oil port open",
    asks="Accessory off: does its gasket leave an oil port uncovered?",
    source=COMMON_PRACTICE,
    denies="the accessory's gasket closes every port",
    stage=Stage.OPENED,
    normal="every hole in the pad meets a hole or solid gasket",
    background=HARDLY_EVER,
    also=("wrong gasket fitted", "gasket hole too big", "port open at the pad"),
)
LOOK_UNDER_THE_ACCESSORY = Inspection(
    id="look_under_the_accessory",
    station=Station.LEAKS,
    says="accessory off its pad: gasket against ports",
    steps=(
        "take off the accessory fitted last; mark how it sat",
        "photograph gasket and pad together",
        "lay the gasket on both faces: each port must meet its hole or solid gasket",
    ),
    minutes=25,
    access=Access.OUTSIDE,
    reveals=(ACCESSORY_PORT_UNCOVERED,),
    source=COMMON_PRACTICE,
    tools=("spanners", "camera"),
    cautions=(Caution.HOT, Caution.BATTERY, Caution.ASBESTOS, Caution.USED_OIL),
    destroys="the gasket",
    keep="keep the gasket; its print shows which port was open",
    also=(
        "gasket behind the fuel pump",
        "accessory gasket",
    ),
)
