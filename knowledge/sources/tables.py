"""Published troubleshooting tables."""

from knowledge.model import Source

ARMY_TM_347_CHART_1973 = Source(
    "HB-01",
    "US Army TM 5-3895-347-14&P, reproducing an engine maker's shop manual Sec. 15.2 \"Trouble "
    'Shooting (Engine)", Chart 7 "Low oil pressure", Nov 1973, p. 15. '
    "https://constructionrollers.tpub.com/TM-5-3895-347-14P/TM-5-3895-347-14P00792.html (same "
    "page in TM 5-3895-348-14&P-2)",
    "strong, read in a copy",
)
ARMY_TM_272_TABLE = Source(
    "HB-02",
    'US Army TM 9-2320-272-24-2, Table 4-1 "Mechanical Troubleshooting", malfunctions 7 and '
    "8. https://trucks5ton.tpub.com/TM-9-2320-272-24-2/TM-9-2320-272-24-20690.htm",
    "strong, read in a copy",
)
DIESEL_TESTING_MANUAL = Source(
    "HB-03",
    'Engine maker\'s testing & adjusting manual SENR9977 p. 43 "Engine Oil Pressure – Test" '
    "(1104 series); same list in the 1103 series workshop manual p. 36 (manualslib 2358568) "
    "and 1106A-70T manual p. 34 (UENR0617)",
    "strong, read in a copy",
)
DIESEL_WORKSHOP_2015 = Source(
    "HB-04",
    'Noordeman Diesel, "Common causes of low oil pressure and high oil pressure", 2 Dec 2015, '
    "https://www.noordeman.com.au/common-causes-of-low-oil-pressure-and-high-oil-pressure/",
    "medium",
)
CROSSOVER_V6_MANUAL_2007 = Source(
    "HB-05",
    "Vehicle maker's service manual (mid-size crossover, petrol V6, 2007), \"Low or No Oil "
    'Pressure", read on-line',
    "weak",
)
PRESSURE_TEST_MANUAL_2005 = Source(
    "HB-06",
    "Vehicle maker's service manual (Suzuki Verona 2005), \"Oil Pressure Test diagnostic "
    'procedures", https://lemon-manuals.gy/Suzuki/2005/Verona%20EX/Repair%20and%20Diagnosis/E'
    "ngine%20Mechanical/Lubrication%20System/Engine%20Lubrication%20System/Diagnostic%20Infor"
    "mation%20and%20Procedures/Oil%20Pressure%20Test/",
    "strong, read in a copy",
)
OVERHAUL_MANUAL_5_101 = Source(
    "HB-07",
    'Engine overhaul manual 5-101 (Mack E7), p. "Troubleshooting – Low engine oil pressure", '
    "https://issuu.com/heydownloads/docs/mack_truck_e7_engine_overhaul_operator_s_manual_5-/2"
    "81",
    "strong, read in a copy",
)
MARINE_OWNERS_MANUAL_2008 = Source(
    "HB-08",
    "Owner's manual 90-899883272 (MerCruiser 3.0 MPI), Mar 2008, Sec. 7, \"Low Engine Oil "
    'Pressure", https://manualshive.com/en/manual/mercruiser/3-0-mpi/3-0-mpi_owners-manual_17'
    "72921-108.html ; and same maker's diesel owner's manual p. 117 "
    "https://easymanua.ls/mercury/d4-2l-d-tronic/manual?p=117",
    "strong, read in a copy",
)
MARINE_SERVICE_MANUAL_1999 = Source(
    "HB-09",
    'Marine service manual no. 26, 90-861329--1, Mar 1999, p. 1C-26 "Oil Pressure", '
    "https://www.manualshelf.com/manual/mercruiser/gm4/service-manual-english/page-72.html ; "
    "earlier 90-823225--1 p. 1C-22, https://www.easymanua.ls/mercury/305-cid/manual?p=82",
    "strong, read in a copy",
)
SMALL_ENGINE_MANUAL = Source(
    "HB-10",
    "Technician's service manual (Briggs & Stratton 405777 series) p. 78 \"Check oil "
    'pressure", '
    "https://manualshive.com/en/manual/briggs-and-stratton/405777-series/2810902?page=78",
    "strong, read in a copy",
)
MARINE_DIESEL_MANUAL = Source(
    "HB-11",
    'Marine diesel technical manual (Westerbeke 30) p. 42, Section A.8 "Oil pressure", '
    "https://www.easymanua.ls/westerbeke/30/manual?p=42",
    "strong, read in a copy",
)
TRACTOR_DIESEL_MANUAL_2003 = Source(
    "HB-12",
    "Tractor/mower diesel service manual (Cub Cadet 8354/8404, D615-W02 May 2003) p. 2-24 "
    "(scanned copy on a public manual site)",
    "strong, read in a copy",
)
TRACTOR_WORKSHOP_MANUAL = Source(
    "HB-13",
    'Tractor workshop manual (Kubota L3540–L5740 WSM), "Engine Oil Pressure" 1-S14, '
    "https://www.manualslib.com/manual/1064983/Kubota-L3540.html?page=114",
    "strong, read in a copy",
)
MOTORCYCLE_MANUAL = Source(
    "HB-14",
    "Motorcycle service manual troubleshooting page (CBR600F4i), "
    "https://www.kappabikes.xyz/honda-cbr-600-f4i/troubleshooting.html",
    "strong, read in a copy",
)
PINPOINT_TEST_2012 = Source(
    "HB-16",
    "Vehicle maker's pinpoint test A (Ford Explorer 2.0 2012), https://manuals.autorepairshq."
    "com/Ford%20Truck/2012/Explorer%20FWD%20L4-2.0L%20Turbo/Repair%20and%20Diagnosis/Engine%2"
    "C%20Cooling%20and%20Exhaust/Engine/Testing%20and%20Inspection/Pinpoint%20Tests",
    "strong, read in a copy",
)
LOWER_ENGINE_NOISE_2006 = Source(
    "HB-17",
    'Vehicle maker\'s "lower engine noise" tables (Saturn Vue 2006 '
    "https://gm.saturn.team/Saturn/VUE___AWD/2006/58/1/4976/81628 ; Corvette dry-sump 2006 "
    "http://artfamilynsk.ru/Chevrolet/Corvette/2006/58/1/4976/141181 )",
    "strong, read in a copy",
)
AIRCRAFT_FAULT_ISOLATION = Source(
    "HB-18",
    'Engine maintenance manual fault-isolation guide, Table 1 "Low oil pressure (cont.)" '
    "(IO-390-D p. 92, manualslib 2568720 p. 118; TEO-540-C1A p. 93, manualslib 1522028 p. "
    "123)",
    "strong, read in a copy",
)
DIESEL_CASE_NOTE = Source(
    "HB-19",
    'Case note "Causes of low diesel engine oil pressure", http://lockhessen.com/Case/Details/29',
    "weak",
)
BEARING_BROCHURE_PREFACE = Source(
    "HB-20",
    'Bearing maker\'s brochure CEB-2-1114 "Engine bearing: failure analysis and correction", '
    "preface (copy at "
    "https://ja.scribd.com/document/317618622/Ceb-2-1114-Engine-Bearing-Failures-Brochure)",
    "strong, read in a copy",
)
EHRESMAN_1998 = Source(
    "HB-22",
    'T. Ehresman, "Piston engine troubleshooting", Mar 1998, section 5 "Low oil pressure", '
    "http://www.aviationpros.com/article/10389142/piston-engine-troubleshooting?page=5",
    "medium",
)
CARLEY_2000 = Source(
    "HB-23",
    'L. Carley, "Troubleshooting low oil pressure", 2000 '
    "(http://wikiwix.com/cache?url=http://www.aa1car.com/library/us1097.htm)",
    "medium",
)
