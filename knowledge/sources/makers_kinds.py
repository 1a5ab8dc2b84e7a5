"""Makers, handbooks and club pages on kinds of engine: side-valve V8, roller cranks, rotary pistons."""

from knowledge.model import Source

SIDE_VALVE_V8_PUMPS = Source(
    "SV8",
    "Magazine on oil filters for a side-valve V8 (1932 to 1953): long-body pumps rated 30 psi at "
    "30 mph, pumps from 1948 on about 60 psi; gear pump driven by the camshaft, relief valve at the "
    "front of the valley up to 1948, http://www.streetrodderweb.com/tech/1210sr_oil_filters_for_flatheads/",
    "weak",
)
ROLLER_V_TWIN_PRESSURES = Source(
    "RVT",
    "Club's table from the maker's manuals, V-twin motorcycles with roller big ends: idle 3 to 7 psi "
    "(1957 to 1978), 4 to 7 psi (1979 to 1985); riding 4 to 15 psi; 10 to 20 psi at 3500 rpm; the "
    "pump has no relief valve, http://sportsterpedia.com/doku.php/techtalk:ref:oil04",
    "weak",
)
ROLLER_V_TWIN_1958 = Source(
    "RV58",
    "Maker's manual text, large V-twin motorcycle with relief valve: 25 to 28 psi at 20 mph, steady at "
    "35 to 38 psi from 30 mph on, https://www.motorcycleinstitute.tk/el-fl-service/"
    "operating-oil-pressure.html",
    "weak",
)
DRY_SUMP_CHECK_VALVE = Source(
    "DSC",
    "Maker's manual text, V-twin motorcycle: a check valve in the feed pump keeps the tank from "
    "draining into the crankcase; no return at the tank, or oil blown from the breather: check it "
    "before the pump is stripped, https://www.motorcycleinstitute.tk/xl-service/general-cpq.html",
    "weak",
)
DRY_SUMP_RETURN_VISIBLE = Source(
    "AJ20",
    "Maker's handbook, single-cylinder motorcycle, p. 20: the oil is seen circulating with the filler "
    "cap off; the sump pump moves more than the feed pump, "
    "https://www.easymanua.ls/ajs/g2/manual?p=20",
    "strong, read in a copy",
)
DRY_SUMP_RETURN_TWICE = Source(
    "RP2",
    "Owners' page on a single-cylinder motorcycle: the return pump moves about twice what the feed "
    "pump does, http://fixmybull.com/general.html",
    "weak",
)
TRIPLE_MOTORCYCLE_PRESSURE = Source(
    "TR3",
    "Maker's manual, motorcycle triple with plain big ends and a dry sump, section A5: 75 to 90 psi hot "
    "at 3000 rpm; check that oil returns to the tank, "
    "https://www.easymanua.ls/triumph/trident-t160/manual?p=27",
    "strong, read in a copy",
)
ROTARY_2004 = Source(
    "RE04",
    "Vehicle maker's service highlights 2004, p. 01-00-3, rotary engine: 350 kPa (51 psi) at 3000 rpm "
    "and 100 °C, relief valve 441 to 490 kPa (64 to 71 psi), idle 750 to 850 rpm, "
    "https://www.easymanua.ls/mazda/rx-8-2004/manual?p=14",
    "strong, read in a copy",
)
ROTARY_OWNERS = Source(
    "REO",
    "Owners' forum on rotary engines (2003): 30 psi at idle, 60 psi from 3000 rpm on; senders fail "
    "often, https://www.rx8club.com/series-i-tech-garage-22/making-oil-pressure-gauge-into-true-gauge-8767/",
    "weak",
)
ROTARY_FRONT_COVER = Source(
    "RFC",
    "Builders' mailing list on rotary engines (2007 to 2013): the O-ring between front cover and front "
    "housing blows out, the cover bends there and no bolt is near; a backing ring keeps it in; "
    "sealant alone does not hold; a second relief valve of about 140 psi sits in the front housing, "
    "https://mail.lancair.net/Lists/flyrotary/Message/38253.html",
    "weak",
)
VARIABLE_PUMP_2011 = Source(
    "VP11",
    "Vehicle maker's oil pump text (3.6 V6 2011): low stage about 200 kPa up to some 3000 rpm, high "
    "stage about 450 kPa, at least 41 kPa (6 psi) at any operating condition, "
    "https://charm.li/Dodge%20and%20Ram/2011/Durango%202WD%20V6-3.6L/Repair%20and%20Diagnosis/"
    "Engine%2C%20Cooling%20and%20Exhaust/Engine/Engine%20Lubrication/Oil%20Pump/"
    "Description%20and%20Operation/Engine%20Oil%20Pump%20-%20Operation",
    "strong, read in a copy",
)
TROUGH_FED_SIX_1942 = Source(
    "TF42",
    "Car maker's shop manual 1942 to 1947, p. 6-19, six with pressure to mains and cam, dippers, "
    "troughs and nozzles for the rods: troughs oil them at low speed, the nozzles as the pressure "
    "rises; all rests on the height of dippers, troughs and nozzles, "
    "http://chevy.oldcarmanualproject.com/shop/1942_47/4247csm619.htm",
    "strong, read in a copy",
)
TROUGH_FED_SIX_1935 = Source(
    "TF35",
    "Car maker's repair manual 1935, oil pan: troughs checked with a gauge from the pan flange, gaskets "
    "off; pump shaft 0.009 in at most in its body, https://oldcarburetors.com/1935-Chevy/025.htm",
    "strong, read in a copy",
)
SPLASH_DIESEL_OILER = Source(
    "SDO",
    "Boat owner on a slow single-acting twin diesel: dippers throw oil from a trough that a plunger "
    "pump fills; a sight shows that it pumps, "
    "http://nbpercy.blogspot.com/2013/11/under-some-pressure.html",
    "weak",
)
GAS_ENGINE_HANDBOOK = Source(
    "RAT",
    "J. B. Rathbun, Practical Hand Book of Gas, Oil and Steam Engines, paragraphs 121 and 122: oil cups "
    "cleaned and filled often, stiff in cold weather; a hot bearing means too little oil, "
    "https://bitlit.ru/page/en/john-b-rathbun/practical-hand-book-of-gas-oil-and-steam-engines-"
    "stationary-marine-traction-gas-burners-oil-burners-etc-farm-traction-automobile-locomotive-"
    "a-simple-p/159",
    "strong, read in a copy",
)
TWO_STROKE_OIL_TESTS = Source(
    "TSO",
    "Maker's manual, two-stroke jet boat, sections 07-01 and 07-02: oil system holds 21 kPa (3 psi) for "
    "10 min, filter renewed yearly, pump delivery per port measured in 30 s at 1500 rpm, "
    "https://www.manualshelf.com/manual/seadoo/sp/technical-data-english/page-139.html",
    "strong, read in a copy",
)
TWO_STROKE_OIL_USED = Source(
    "TSU",
    "Outboard notes (2008): mark the oil tank, burn a measured tank of fuel and see whether the oil "
    "used is the ratio, https://www.outboardmotoroilblog.com/date/2008/11/10/",
    "weak",
)
PRELUBE_PUMP_GUIDE = Source(
    "PLP",
    "Engine maker's product guide, large medium-speed engine, section 7.2.4: separate pre-lubricating "
    "pump with safety valve at 350 kPa, at most 200 kPa in the engine at rest, always running "
    "while the engine is stopped, "
    "https://manual.onestart.ai/manuals/Wartsila-31DF-Series-Product-Manual-4709127?page=130",
    "strong, read in a copy",
)
SHIP_ENGINE_TRIPS = Source(
    "SET",
    "Seafarers' forum on a ship's main engine: slow down below 1.5 bar of lubricating oil, shut down "
    "below 1 bar, https://sgseafarers.com/forums/topic/main-engine-trips-slow-down-shut-down",
    "weak",
)
JET_CHECK_BALLS = Source(
    "JCB",
    "Vehicle makers' oil jet inspections: check ball stays shut below 105 kPa (small four), opens from "
    "380 kPa (2.4 four 2010), at 1.3 to 1.6 bar (1.8 turbo four 2003); moves freely, "
    "http://diesel-data.com:3010/Honda%20Truck/2010/CR-V%204WD%20L4-2.4L/Repair%20and%20Diagnosis/"
    "Engine%2C%20Cooling%20and%20Exhaust/Engine/Engine%20Lubrication/Oil%20Spray%20Jet/"
    "Testing%20and%20Inspection",
    "strong, read in a copy",
)
