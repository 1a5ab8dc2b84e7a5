"""Makers, standards bodies, services and measured work; most texts of makers were read in copies."""

from knowledge.model import Source

PUMP_MAKER_PRESSURE_FLOW = Source(
    "PF",
    'Pump maker\'s guide "Pressure versus flow", '
    "http://www.ebay.co.uk/gds/PRESSURE-VERSUS-FLOW-/10000000178614435/g.html",
    "medium",
)
PUMP_MAKER_SHAFTS_SCREENS = Source(
    "ISS",
    'Pump maker\'s guide "Why replace intermediate shafts, oil pump screens", http://www.ebay.'
    "co.uk/gds/WHY-REPLACE-INTERMEDIATE-SHAFTS-Oil-Pump-Screens-/10000000178614462/g.html",
    "medium",
)
ENGINE_BUILDER_2009 = Source(
    "EB09",
    'Engine Builder magazine, "Oil pump technology", Jun 2009, '
    "https://www.enginebuildermag.com/2009/06/oil-pump-technology/",
    "medium",
)
ENGINE_BUILDER_2010 = Source(
    "EB10",
    'Engine Builder magazine, "Advantages, myths and fables of high volume oil pumps", Aug '
    "2010, http://www.enginebuildermag.com/2010/08/advantages-myths-and-fables-of-high-volume"
    "-oil-pumps/",
    "medium",
)
ENGINE_BUILDER_2021 = Source(
    "EB21",
    'Engine Builder magazine, "Understanding oil clearances in engine bearings", Aug 2021, ht'
    "tps://www.enginebuildermag.com/2021/08/understanding-oil-clearances-in-engine-bearings/",
    "medium",
)
ENGINE_BUILDERS_2020 = Source(
    "TEB",
    '"Diagnosing a high mileage oil pump", Jan 2020, '
    "https://theenginebuilders.com/new-blog/2020/1/24/diagnosing-a-high-mileage-oil-pump",
    "medium",
)
ARMY_TM_347_CAMSHAFT = Source(
    "TMC",
    "TM 5-3895-347-14&P, camshaft section, "
    "https://constructionrollers.tpub.com/TM-5-3895-347-14P/TM-5-3895-347-14P00550.html",
    "strong, read in a copy",
)
ASME_AERATION_2006 = Source(
    "AER",
    "ASME ICES2006, aeration in a V6 measured by X-ray, https://asmedigitalcollection.asme.or"
    "g/ICES/proceedings-abstract/ICES2006/42061/719/314436",
    "strong",
)
BEARING_GUIDE_CEB1 = Source(
    "CEB1",
    "Bearing maker's guide CEB-1-1208 / CL77-3-402, recommended tolerances, "
    "https://www.scribd.com/document/393164815/CL77-3-402-pdf",
    "strong, read in a copy",
)
BEARING_POSTER = Source(
    "BFP",
    'Bearing maker\'s poster "Bearing failures", '
    "https://www.scribd.com/document/717266910/Bearing-Failures",
    "strong, read in a copy",
)
ISO_7146_2019 = Source(
    "ISO",
    "ISO 7146-1:2019 (first edition 2008), scope only: appearance and characterization of "
    "damage to metallic hydrodynamic bearings; the body of the standard was not available, so "
    "it stands for terms only",
    "weak",
)
GAUGE_MAKER_SENDERS = Source(
    "TEL",
    "Gauge maker's troubleshooting sheet (sender ohms), "
    "https://www.jamestowndistributors.com/userportal/document.do?docId=835",
    "strong, read in a copy",
)
FILTER_MAKER_PRIME = Source(
    "PRM",
    '"Loss of prime of the oil pump" (filter maker), '
    "https://webfiltros.com/en/information/advice/77-loss-of-power-of-the-oil-pump",
    "medium",
)
TRUCK_SERVICE_1994 = Source(
    "GMC",
    'Truck service text 1994, "Oil pump: service and repair", https://myvehicle.help/GMC%20Tr'
    "uck/1994/K%202500%20Truck%204WD%20V8-350%205.7L/Repair%20and%20Diagnosis/Engine%2C%20Coo"
    "ling%20and%20Exhaust/Engine/Engine%20Lubrication/Oil%20Pump/Service%20and%20Repair",
    "strong, read in a copy",
)
PUMP_INSPECTION_2006 = Source(
    "GMI",
    "Vehicle maker's pump cleaning and inspection text (Equinox 2006), "
    "https://gm.saturn.team/Chevrolet/Equinox/2006/58/1/4938/41113",
    "strong, read in a copy",
)
PUMP_INSTALLATION_1983 = Source(
    "OLD",
    "Vehicle maker's pump installation text (1983 V6), https://vag.curiosii.ro/Oldsmobile/198"
    "3/Toronado%20V6-252%204.1L/Repair%20and%20Diagnosis/Engine%2C%20Cooling%20and%20Exhaust/"
    "Engine/Engine%20Lubrication/Oil%20Pump/Service%20and%20Repair/Installation",
    "strong, read in a copy",
)
STRAIGHT_SIX_MANUAL = Source(
    "AMC",
    "Vehicle maker's engine manual, in-line six, oil pump clearances, "
    "https://www.yumpu.com/en/document/view/40565164/jeep-engines-oljeep/330",
    "strong, read in a copy",
)
DIESEL_PUMP_BENCH = Source(
    "MKP",
    "Engine maker's pump bench checks (heavy diesel), p. 5-59: end 0.001–0.007 in; p. 5-60: side "
    "0.002–0.006 in, backlash 0.013–0.028 in, "
    "https://www.manualslib.com/manual/3019558/Mack-E7.html?page=149 ; "
    "https://www.manualshelf.com/manual/mack-trucks/mack-e7-engine-overhaul-manual/"
    "user-manual-german-english/page-150.html",
    "strong, read in a copy",
)
DIESEL_V8_PUMP_LIMITS = Source(
    "DMX",
    "Diesel V8 pump limits, https://dieselengineworkshop.com/2008-6-6l-duramax/36454.html",
    "strong, read in a copy",
)
ROTOR_PUMP_LIMITS_2023 = Source(
    "ROT",
    "Rotor-pump replacement limits (vehicle maker, 2023), "
    "https://alloemmanuals.com/manual/Dodge%20and%20Ram/2023/Charger%20SXT%2C%204WD/ (oil "
    "pump inspection)",
    "strong, read in a copy",
)
GEAR_PUMP_LIMITS = Source(
    "MZP",
    "Gear-pump limits (vehicle maker), https://charm.li/Mazda/BT-50%2011%2F2021%20-%3E%20%28d"
    "9p6-1a-22b_ver7%29/esicont/srvc/html/si_579678.html",
    "strong, read in a copy",
)
RELIEF_FREE_FALL = Source(
    "RVF",
    "Relief valve free-fall test text (vehicle maker), "
    "http://zatonevkredit.ru/repair_manuals/raw_content/AWHw52KDBFyj9RK3uqA6",
    "strong, read in a copy",
)
FILTER_MAKER_VALVES = Source(
    "FLV",
    'Filter maker: "What do the valves in an oil filter do", '
    "https://www.filfilter.com.tr/en/company/insights/yag-filtresindeki-valfler-ne-ise-yarar",
    "medium",
)
ARMY_TM_291_THEORY = Source(
    "TML",
    "TM 5-3805-291-23-1 theory of operation, "
    "https://constructionloader.tpub.com/TM-5-3805-291-23-1/TM-5-3805-291-23-100172.html",
    "strong, read in a copy",
)
ARMY_TM_256_LUBRICATION = Source(
    "TMR",
    "TM 9-2350-256-20 lubrication system, "
    "https://recoveryvehicles.tpub.com/TM-9-2350-256-20/css/TM-9-2350-256-20_33.htm",
    "strong, read in a copy",
)
ARMY_TM_643_SHUTDOWN = Source(
    "TMG",
    "TM 9-6115-643-24 (low-pressure shutdown 15 ± 3 psi), "
    "https://generators.tpub.com/TM-9-6115-643-24/css/TM-9-6115-643-24_37.htm ; TM "
    "9-6115-670-14&P (switch 7 psi) "
    "https://generators.tpub.com/TM-9-6115-670-14P/css/TM-9-6115-670-14P_38.htm",
    "strong, read in a copy",
)
ARMY_TM_280_LIMITS = Source(
    "TMH",
    "TM 9-2320-280-10 PMCS item 17 (less than about 40 psi driving or 6 psi idle = not "
    "serviceable), https://hummer-hmmwv.tpub.com/TM-9-2320-280-10/css/TM-9-2320-280-10_125.htm",
    "strong, read in a copy",
)
ARMY_TM_8000_PUMPS = Source(
    "TM8",
    "TM 9-8000 paras 8-9 to 8-13 (pumps, strainer, floating pickup), "
    "http://automotiveenginemechanics.tpub.com/TM-9-8000/TM-9-80000227.htm",
    "strong, read in a copy",
)
ARMY_TM_307_RUNNING = Source(
    "TMW",
    "TM 10-4320-307-24 pump installation and operational check with exhaust-burn and "
    "carbon-monoxide warnings, "
    "https://waterpumps.tpub.com/TM-10-4320-307-24/css/TM-10-4320-307-24_358.htm",
    "strong, read in a copy",
)
ARMY_TM_464_SUMP = Source(
    "TMS",
    "TM 9-6115-464-34 oil pan section with dry-cleaning-solvent warning, "
    "https://dieselgenerators.tpub.com/TM-9-6115-464-34/css/TM-9-6115-464-34_129.htm",
    "strong, read in a copy",
)
ARMY_TM_304_LEAKAGE = Source(
    "TMK",
    "TM 9-2320-304-14&P leakage classes I–III, "
    "https://constructiontractors.tpub.com/TM-9-2320-304-14P/css/TM-9-2320-304-14P_363.htm",
    "strong, read in a copy",
)
NAVY_ENGINEMAN = Source(
    "NE1",
    "NAVEDTRA Engineman 1&C, lubricating system, https://tpub.com/engine1/en1-56.htm",
    "strong, read in a copy",
)
NAVY_14075_INSTRUMENTS = Source(
    "NE2",
    "NAVEDTRA 14075, indicators of malfunction and instrument error, "
    "https://enginemechanics.tpub.com/14075/css/Compression-And-Firing-Pressures-78.htm",
    "strong, read in a copy",
)
NAVY_14075_CASUALTY = Source(
    "NE3",
    'NAVEDTRA 14075 ch. 9, "Failed main engine lube oil pressure": secure the engine '
    "immediately, "
    "http://enginemechanics.tpub.com/14075/css/Diesel-Engine-Casualties-Continued-231.htm",
    "strong, read in a copy",
)
TURBO_MAKER_STARVATION = Source(
    "TUR",
    'Turbo maker fact sheet "Oil starvation", http://dieselevante.biz/oil-starvation/ ; '
    "https://carwood.com/resource_library/troubleshooting-turbos-oil-starvation",
    "strong, read in a copy",
)
OIL_SERVICE_SAFETY_2002 = Source(
    "SCH",
    "Oil service safety text (skin, disposal), https://myvehicle.help/Jeep%20Truck/2002/TJ%20"
    "%28CANADA%29%20L6-4.0L/Repair%20and%20Diagnosis/Maintenance/Fluids/Engine%20Oil/Service%"
    "20and%20Repair",
    "strong, read in a copy",
)
PRESSURE_CHECK_2006 = Source(
    "LRP",
    "Vehicle maker's oil pressure check: hot-oil scald warning, gloves, 10 km road test "
    "before reading (2006)",
    "weak",
)
TRUCK_DRIVER_MANUAL = Source(
    "DTN",
    "Truck maker's driver manual: sudden drop or absence of pressure – stop, do not run until "
    "cause found; minimum tables, https://www.dtnatechlit.com (0000107968)",
    "strong",
)
V6_PUMP_CATALOGUE = Source(
    "OL2",
    "Parts-catalogue how-to text on the same V6 pump family (side clearance 0.0025–0.0050 in, "
    "end 0.002–0.006 in, cover flat within 0.001 in), "
    "https://www.gmpartsgiant.com/oem-oldsmobile-cutlass-oil_pump.html",
    "medium",
)
TRAINING_PUMP_TEST = Source(
    "CDX",
    'Training text "Test install oil pump", '
    "http://www.cdxetextbook.com/engines/rebuilding/preasembly/testinstalloilpump.html",
    "medium",
)
FOUR_PUMP_SERVICE_1988 = Source(
    "P88",
    "Vehicle maker's pump service (2.0 pushrod four 1988): cover 6–9 ft-lb, pump to main cap "
    "26–35 ft-lb, sealer on the end of a pressed tube, service manual 1988, 2.0 L four (read "
    "on-line)",
    "weak",
)
V8_PUMP_SERVICE_2006 = Source(
    "P06",
    "Vehicle maker's pump service (6.0 V8 2006): new lubricated O-ring, push the tube fully "
    "home before the bolt, pump bolts 25 N·m, pickup bolt 12 N·m, deflector nuts 25 N·m, "
    "service manual 2006, 6.0 L V8 (read on-line)",
    "weak",
)
USED_OIL_HANDLING_2007 = Source(
    "EPA",
    "Used-oil handling for service stations and home mechanics, "
    'https://ehsdailyadvisor.blr.com/?p=9808 ; Ohio EPA fact sheet "Handling used oil from '
    'your home", 2007, https://fdocuments.in/download/handling-used-oil.html ; California '
    "treats used oil as hazardous waste, "
    "https://normanswei.wordpress.com/2009/12/19/how-to-manage-your-used-oil/",
    "strong, read in a copy",
)
ARMY_TM_200_SUMP_FLANGE = Source(
    "TMP",
    "TM 9-2815-200-35: pan gasket flange flat within 0.004 in per foot, "
    "https://www.nsndepot.com/Library/TM/TM-9-2815-200-35?PageNumber=390",
    "strong, read in a copy",
)
ROTOR_PUMP_SERVICE = Source(
    "ROP",
    "Rotor-pump service text (fill rotor cavity with oil before fitting; if pump is in "
    "specification look at bearings), "
    "https://www.dodurango.net/disassembly_and_assembly-1332.html",
    "strong, read in a copy",
)
SUMP_REMOVAL_2003 = Source(
    "JWJ",
    "Vehicle maker's oil pan removal steps 2003 (disconnect battery negative, raise, drain), "
    "https://www.carmanualsonline.info/jeep-grand-cherokee-2003-wj-2-g-workshop-manual/11/?sr"
    "ch=Lock+cylinder",
    "strong, read in a copy",
)
MAIN_CLEARANCE_V6_1998 = Source(
    "ISZ",
    "Main oil clearance limit 0.08 mm (3.2 V6 1998), "
    "https://myvehicle.help/Isuzu%20Truck/1998/Rodeo%20LS%204WD%20V6-3.2L/",
    "strong, read in a copy",
)
ROD_CLEARANCE_V6_1990 = Source(
    "MZR",
    "Rod oil clearance limit 0.10 mm, side clearance 0.4 mm (3.0 V6 1990), "
    "https://myvehicle.help/Mazda/1990/929%20V6-3.0L%20DOHC/",
    "strong, read in a copy",
)
VAN_PUMP_SERVICE_1997 = Source(
    "GMV",
    "Vehicle maker's pump replacement text (1997 van, pushrod V6 and V8): pump to main cap "
    "65 lb-ft, no gasket, no locker or paint on threads unless stated, "
    "https://gm.saturn.team/GMC_Truck/Savana/1997/3/1/338/46035",
    "strong, read in a copy",
)

V8_CRANKSHAFT_2005 = Source(
    "C60",
    "Vehicle maker's crankshaft figures (6.0 V8 2005): end play 0.0015–0.0078 in, main "
    "clearance 0.0008–0.0025 in in service, oil deflector nuts 25 N·m, "
    "https://charm.li/Chevrolet/2005/Corvette%20V8-6.0L%20VIN%20U/Repair%20and%20Diagnosis/"
    "Specifications/Mechanical%20Specifications/Engine/Cylinder%20Block%20Assembly/Cranksha"
    "ft%2C%20Engine",
    "strong, read in a copy",
)

V6_TORQUES_2009 = Source(
    "N37",
    "Vehicle maker's torque list (3.7 V6 2009): oil pump bolts 250 in-lb, pump cover bolts "
    "105 in-lb, "
    "https://myvehicle.help/Dodge%20or%20Ram%20Truck/2009/Nitro%204WD%20V6-3.7L/Repair%20an"
    "d%20Diagnosis/Specifications/Mechanical%20Specifications/Engine/System%20Specification"
    "s/Engine%20Torque%20Specifications",
    "strong, read in a copy",
)

SIX_FRONT_PUMP_2009 = Source(
    "T42",
    "Vehicle maker's pump text (in-line six 2009, pump in the front cover): cover bolts 89 "
    "lb-in, relief plug 124 lb-in, "
    "https://gm.saturn.team/Chevrolet/TrailBlazer___4WD/2009/99/1/7786/63426",
    "strong, read in a copy",
)

HEAVY_DIESEL_TORQUES = Source(
    "MP7",
    "Engine maker's torque list (heavy in-line diesel): sump, pump and pickup screws 24 ± "
    "4 N·m, https://www.easymanua.ls/mack/mp7/manual?p=333",
    "strong, read in a copy",
)

TURBO_FOUR_SUMP_2012 = Source(
    "VB4",
    "Vehicle maker's sump and pump overview (2.0 turbo four 2012): oil baffle bolts 9 N·m, "
    "https://manuals.autorepairshq.com/hyperlink/Volkswagen/2012/Beetle%20%285C1%29%20L4-2."
    "0L%20Turbo%20%28CCTA%29/Repair%20and%20Diagnosis/Engine%2C%20Cooling%20and%20Exhaust/E"
    "ngine/Engine%20Lubrication/Oil%20Pan/Service%20and%20Repair/Oil%20Pan%2FOil%20Pump%20O"
    "verview",
    "strong, read in a copy",
)

V6_SUMP_1997 = Source(
    "RG7",
    "Vehicle maker's sump text (V6 1997): sump bolts 125 lb-in, over-tight bolts spoil the "
    "sump, https://562586.zfhpni.asia/Buick/Regal/1997/3/1/330/41908",
    "strong, read in a copy",
)

SMALL_FOUR_ASSEMBLY_1999 = Source(
    "FF9",
    "Vehicle maker's service manual, three- and four-cylinder engines of a small car (1999), "
    "lubrication system, assembly: strainer bolts 11 N·m, sump bolts 11 N·m (97 lb-in), read "
    "on-line",
    "weak",
)

TORQUE_TOOL_ISO_6789 = Source(
    "TQW",
    "Torque tool maker's manual on ISO 6789, class A setting wrench: ±4 % above 10 N·m, ±6 "
    "% up to 10 N·m, checked from 20 % of its range, "
    "https://manuzoid.com/manuals/7Bakw-Facom%20S.325DA%20User%20manual",
    "strong, read in a copy",
)
PRELUBRICATION_SWITCH = Source(
    "PLS",
    "Machine maker's prelubrication starting system (D9R): the starter may turn the crank from "
    "28 kPa (4 psi) in the gallery, https://penambang.com/prelubrication-starting-system-d9r",
    "strong, read in a copy",
)
