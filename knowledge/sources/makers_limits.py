"""Makers and official manuals that print wear limits of pumps, cam bearings and cranks."""

from knowledge.model import Source

ARMY_TM_664_GEROTOR = Source(
    "TM664",
    "US Army TM 10-3930-664-24 p. 3-59, oil pump with rotors: tip 0.007 in, rotor end 0.005 in, "
    "outer rotor to body 0.015 in, backlash of its drive 0.003–0.013 in",
    "strong, read in a copy",
)
ARMY_TM_322_GEROTOR = Source(
    "TM322",
    "US Army TM 5-1940-322-24 WP 0153 00, oil pump with rotors: tip 0.007 in, outer rotor to body "
    "0.015 in, backlash of its drive 0.003–0.015 in",
    "strong, read in a copy",
)
ARMY_TM_638_GEAR_PUMP = Source(
    "TM638",
    "US Army TM 10-3930-638-24&P p. 4-72, gear pump: gear to body 0.008 in, gear to cover 0.008 in",
    "strong, read in a copy",
)
ARMY_TM_229_GEAR_PUMP = Source(
    "TM229",
    "US Army TM 5-3825-229-14&P p. 5-33, gear pump: backlash 0.003–0.018 in, tooth tip to body "
    "0.004–0.007 in, gear face to body 0.002–0.006 in",
    "strong, read in a copy",
)
ARMY_TM_354_GEAR_PUMP = Source(
    "TM354",
    "US Army TM 5-4310-354-14 Table 5-2, gear pump: gear in its bore 0.002–0.004 in new, 0.007 in "
    "at most; shaft 0.001–0.0025 in new, 0.006 in at most",
    "strong, read in a copy",
)
V6_ROTOR_PUMP_2004 = Source(
    "AX4",
    "Vehicle maker's pump figures (V6 2004, rotors): tip 0.20 mm, body 0.20 mm, end 0.12 mm at "
    "most, on myvehicle.help",
    "weak",
)
VAN_ROTOR_PUMP_1997 = Source(
    "RV6",
    "Vehicle maker's pump inspection (3.9 V6 van 1997, rotors): cover 0.0015 in, rotor to body "
    "0.014 in, between rotors 0.008 in, end 0.004 in, "
    "https://myvehicle.help/Dodge%20or%20Ram%20Truck/1997/RAM%202500%20Van%20V6-3.9L%20VIN%20X/"
    "Repair%20and%20Diagnosis/Engine%2C%20Cooling%20and%20Exhaust/Engine/Engine%20Lubrication/"
    "Oil%20Pump/Service%20and%20Repair/Inspection",
    "strong, read in a copy",
)
V6_ROTOR_PUMP_1997 = Source(
    "RP6",
    "Vehicle maker's pump inspection (3.5 V6 1997, rotors): cover 0.003 in, rotor to body 0.015 "
    "in, between rotors 0.008 in, end 0.004 in, "
    "http://diesel-data.com:3010/Plymouth/1997/Prowler%20V6-3.5L%20VIN%20F/Repair%20and%20"
    "Diagnosis/Engine%2C%20Cooling%20and%20Exhaust/Engine/Engine%20Lubrication/Oil%20Pump/"
    "Service%20and%20Repair/Inspection",
    "strong, read in a copy",
)
V10_ROTOR_PUMP_1995 = Source(
    "RP10",
    "Vehicle maker's pump service (8.0 V10 1995, rotors in the timing cover): cover 0.003 in, "
    "rotor to body 0.007 in, between rotors 0.006 in, end 0.003 in, "
    "https://charm.li/Dodge%20and%20Ram/1995/2500%204x4%20Pickup%20V10-488%208.0L%20Magnum/"
    "Repair%20and%20Diagnosis/Engine%2C%20Cooling%20and%20Exhaust/Engine/Engine%20Lubrication/"
    "Oil%20Pump/Service%20and%20Repair/Oil%20Pump%20Service",
    "strong, read in a copy",
)
V8_ROTOR_PUMP_1997 = Source(
    "RP8",
    "Vehicle maker's rotor clearance text (7.5 V8 1997): cover 0.0015 in, rotor end play 0.004 in, "
    "https://charm.li/Ford%20Truck/1997/F%20250%202WD%20HD%20Pickup%20V8-460%207.5L%20VIN%20G%20"
    "EFI/Repair%20and%20Diagnosis/Engine%2C%20Cooling%20and%20Exhaust/Engine/Engine%20Lubrication/"
    "Oil%20Pump/Testing%20and%20Inspection/Rotor%20Clearance",
    "strong, read in a copy",
)
GEAR_TRAIN_PUMP_TEXT = Source(
    "GTP",
    "Vehicle maker's pump inspection (gear pump on the gear train): end 0.05–0.13 mm, 0.17 mm at "
    "most; backlash 0.091–0.217 mm, 0.25 mm at most, "
    "http://zatonevkredit.ru/repair_manuals/raw_content/AWHiMutDU9h2CeTm_9Y6",
    "strong, read in a copy",
)
FOUR_CAM_CLEARANCE = Source(
    "JZ4",
    "Vehicle maker's camshaft text (small overhead-cam four): 0.045–0.084 mm, limit 0.100 mm, "
    "http://hondafitjazz.com/manual/A00/HTML/L0/SAA2EL0A14616700000MAAT00.HTML",
    "strong, read in a copy",
)
TWIN_CAM_V6_2003 = Source(
    "LS6",
    "Vehicle maker's camshaft figures (3.0 twin-cam V6 2003): 0.025–0.076 mm, limit 0.151 mm, "
    "https://myvehicle.help/Lincoln/2003/LS%20V6-3.0L%20DOHC%20VIN%20S/Repair%20and%20Diagnosis/"
    "Specifications/Mechanical%20Specifications/Engine/Camshaft%2C%20Engine",
    "strong, read in a copy",
)
SMALL_DIESEL_CAMSHAFT = Source(
    "YM2",
    "Engine maker's manual, small marine diesel, p. 129: camshaft oil clearance limits 0.195 to "
    "0.245 mm by bearing, https://www.easymanua.ls/yanmar/2ym15/manual?p=149",
    "strong, read in a copy",
)
ARMY_TM_202_CAMSHAFTS = Source(
    "TM202",
    "TM 9-2815-202-34 p. 4-109, camshafts of a diesel: end bearings 0.006 in, intermediate ones "
    "0.009 in at most with used parts, "
    "http://automotiveenginemechanics.tpub.com/TM-9-2815-202-34/css/TM-9-2815-202-34_211.htm",
    "strong, read in a copy",
)
FOUR_THRUST_PLAY_1998 = Source(
    "SK4",
    "Vehicle maker's crankshaft figures (1.8 four 1998, journals 58 mm): thrust play 0.10–0.35 mm, "
    "limit 0.42 mm, https://myvehicle.help/Suzuki%20Truck/1998/Sidekick%20Sport%202D%20JLX%204WD"
    "%20L4-1.8L/Repair%20and%20Diagnosis/Specifications/Mechanical%20Specifications/Engine/"
    "Cylinder%20Block%20Assembly/Crankshaft%2C%20Engine",
    "strong, read in a copy",
)
DIESEL_THRUST_CLEARANCE = Source(
    "MST",
    "Text on a diesel's thrust bearing: 0.002–0.008 in new, 0.015 in at most, "
    "http://marinestudy.net/thrust-pad-clearance/",
    "weak",
)
ARMY_TM_382_RELIEF = Source(
    "TM382",
    "US Army TM 5-3895-382-24, oil pump: relief opens at 340–395 kPa, with piston jets at 415–470 "
    "kPa",
    "weak",
)
ARMY_TM_260_BYPASS = Source(
    "TM260",
    "US Army TM 5-3805-260-24, oil pump bypass valve: 520–590 kPa (75–85 psi)",
    "weak",
)
BALANCE_SHAFT_FOUR_2002 = Source(
    "BS02",
    "Vehicle maker's balance shaft figures (2.4 four 2002): bearing clearance 0.044–0.111 mm, "
    "https://myvehicle.help/Pontiac/2002/Sunfire%20L4-144%202.4L%20DOHC%20VIN%20T%20SFI/Repair%20"
    "and%20Diagnosis/Specifications/Mechanical%20Specifications/Engine/Cylinder%20Block%20Assembly/"
    "Balance%20Shaft",
    "strong, read in a copy",
)
BALANCE_SHAFT_FOUR_2009 = Source(
    "BS09",
    "Vehicle maker's balance shaft inspection (2.4 four 2009): oil clearance 0.022–0.049 mm, limit "
    "0.049 mm, https://manuals.autorepairshq.com/Pontiac/2009/Vibe%20AWD%20L4-2.4L/Repair%20and%20"
    "Diagnosis/Engine%2C%20Cooling%20and%20Exhaust/Engine/Service%20and%20Repair/Overhaul/Repair%20"
    "Instructions/22.%20Balance%20Shaft%20Cleaning%20and%20Inspection",
    "strong, read in a copy",
)
AUXILIARY_SHAFT_FOUR_1991 = Source(
    "AUX4",
    "Manual's auxiliary shaft figures (2.3 four 1991): bearing clearance 0.0006–0.0026 in, end play "
    "0.001–0.007 in, https://2carpros.com/questions/ford-mustang-1991-ford-mustang--13",
    "weak",
)
MARINE_IDLER_BUSH = Source(
    "YM3",
    "Engine maker's manual, small marine diesel, p. 131: idler gear bush 0.025–0.075 mm, limit "
    "0.175 mm, https://manualarchiveguide.com/manuals/Yanmar-3YM30-Sevice-Manual-4779226?page=146",
    "strong, read in a copy",
)
MARINE_IDLER_BUSH_46 = Source(
    "JH4",
    "Engine maker's manual, marine diesel, p. 212: idler gear bush 0.025–0.075 mm, limit 0.15 mm, "
    "https://www.easymanua.ls/yanmar/4jh4e/manual?p=232",
    "strong, read in a copy",
)
PICKUP_IDLER_BUSH_2021 = Source(
    "BT21",
    "Vehicle maker's idler gear text (pickup diesel 2021): shaft to bush 0.020–0.075 mm, limit "
    "0.20 mm, https://charm.li/Mazda/BT-50%2011%2F2021%20-%3E%20%28d9p6-1a-22b_ver7%29/esicont/"
    "srvc/html/si_579577.html",
    "strong, read in a copy",
)
ARMY_TM_379_IDLER = Source(
    "TM379",
    "US Army TM 5-3895-379-23 WP 0170 00, idler gear of a diesel: bushes on the hub 0.0023–0.0047 "
    "in, end play 0.004–0.008 in",
    "strong, read in a copy",
)
SMALL_ENGINE_SHUT_OFF = Source(
    "KO75",
    "Engine maker's manual, small air-cooled V-twin, p. 6.4: oil pressure switch makes contact below "
    "2–5 psi; it may stop stationary engines, on mowers it may only light a lamp, "
    "https://manualshive.com/en/manual/kohler/command-pro-ch749/1988101?page=74",
    "strong, read in a copy",
)
SMALL_ENGINE_SHUT_OFF_HIGHER = Source(
    "KO98",
    "Engine maker's manual, small air-cooled V-twin with oil cooler, p. 6.4: oil pressure switch "
    "changes over between 7 and 11 psi, https://manualshive.com/ru/manual/kohler/ch980/1988177?page=45",
    "strong, read in a copy",
)
SMALL_ENGINE_FLOAT_SWITCH = Source(
    "LOS",
    "Repair notes on small engines, low-oil shut-off by a float in the crankcase or by pressure, "
    "https://outdoorpowerinfo.com/repairs/tecumseh_low_oil_shutdown.asp",
    "weak",
)
SMALL_ENGINE_SPLASH = Source(
    "SPL",
    "Questions and answers on mowers, splash and forced lubrication, "
    "http://www.photonlexicon.com/repairfaq/samnew/lmfaq/lmosfmts.htm",
    "weak",
)
VARIABLE_PUMP_2021 = Source(
    "VP21",
    "Vehicle maker's description of a two-stage oil pump (van 2021): low stage 80–160 kPa at idle, "
    "solenoid off above 2800 rpm 310–390 kPa, "
    "https://automanuals.wh47n0w.com/2021%20Chrysler%20Voyager%20LXi,%20Gas/pages/46463.html",
    "strong, read in a copy",
)
SIDE_VALVE_HANDBOOK_1936 = Source(
    "SV36",
    "Car maker's handbook of 1936, side-valve six and eight, as quoted in a magazine (Sep 2005): at "
    "least 30 lb at driving speed, the needle may stand at zero at a hot idle, "
    "https://www.hagerty.com/articles-videos/articles/2005/09/06/under-pressure-oil-gauge-reading",
    "weak",
)
SIDE_VALVE_GENERATOR = Source(
    "SVG",
    "Generating set manual, side-valve engine: about 20 psi warmed up, 50 to 60 psi cold, "
    "https://www.easymanua.ls/kohler/l600/manual?p=5",
    "strong, read in a copy",
)
TRACTOR_IDLE_LIST = Source(
    "TIL",
    "Parts house's list for petrol tractors of 1939 to 1964: idle 400 rpm with side valves, 450 to "
    "475 rpm with overhead valves, http://n-complete.com/t-faq.aspx",
    "weak",
)
