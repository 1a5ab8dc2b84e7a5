"""Named trade authors, laboratories and rebuilders."""

from knowledge.model import Source

JOBBER_OIL_PUMPS = Source(
    "THK",
    '"Oil pumps", jobber article, http://www.thirskauto.net/Oil_Pumps.html',
    "medium",
)
CARLEY_1997 = Source(
    "AA97",
    'L. Carley, "Troubleshooting low oil pressure", '
    "http://wikiwix.com/cache?url=http://www.aa1car.com/library/us1097.htm",
    "medium",
)
GALLERY_PLUG_LEFT_OUT = Source(
    "MON",
    '"What I learned today: not all leaks are external" (gallery plug left out, 10 psi idle), '
    "chevyhardcore.com / J. Smith",
    "weak",
)
CALVER_2003 = Source(
    "CLV",
    'K. Calver, "Oil gallery plugs", 2003, '
    "http://www.calverst.com/articles/Eng-Lubrication-Oil_gallery_plugs(bungs).htm",
    "medium",
)
TENSIONER_GASKET_LEFT_OUT = Source(
    "AHS",
    '"No oil pressure after timing chain kit: tensioner gasket left out", http://www.allhead.'
    "com.au/technical/holden-alloytec-v6-timing-chain-tensioner-gaskets-no-oil-pressure/",
    "medium",
)
SUMP_TILT_TEST = Source(
    "SLO",
    '"Oil pan – slip slidin\' away" (pan tilt test, 1 g corner), '
    "https://hotrod.com/how-to/ccrp-0401-oil-pan",
    "medium",
)
OIL_AERATION_ARTICLE = Source(
    "HPA",
    '"Oil aeration", https://www.highpowermedia.com/Archive/category/oil-system/oil-aeration',
    "medium",
)
PUMP_CAVITATION_ANSWER = Source(
    "CAV",
    '"Pump cavitation: what causes it?", '
    "https://experts123.com/q/pump-cavitation-what-causes-it.html",
    "weak",
)
BEARING_MAKER_CLEARANCE = Source(
    "KNG",
    '"How much clearance should my engine bearings have?", '
    "https://kingenginebuilders.com/news/how-much-clearance-should-my-engine-bearings-have/",
    "medium",
)
BEARING_CLEARANCE_INFO = Source(
    "CLR",
    '"Bearing clearance info" (0.0020–0.0025 in), http://www.chevyhiperformance.com/tech/engi'
    "nes_drivetrain/shortblock/4380_bearing_clearance_info/",
    "medium",
)
LABORATORY_FUEL = Source(
    "LCF",
    '"Fuel dilution", http://www.labcheck.com.au/fuelDilution.asp',
    "medium",
)
LABORATORY_COOLANT = Source(
    "LCW",
    '"Water – coolant contamination", http://www.labcheck.com.au/waterCoolantContamination.asp',
    "medium",
)
LUBRICANTS_HANDBOOK_2004 = Source(
    "PCL",
    "Lubricants handbook 2004 warning limits reproduced at "
    "http://online.flipbuilder.com/WP/hwja/files/basic-html/page53.html",
    "medium",
)
OIL_ANALYSIS_TABLE = Source(
    "IOA",
    '"Interpreting oil analysis" table, https://v8sho.com/SHO/InterpretingOilAnalysis.htm',
    "weak",
)
LABORATORY_WORRY = Source(
    "BLK",
    'Oil laboratory, "Do I need to worry?", https://blackstone-labs.com/do-i-need-to-worry/',
    "medium",
)
FUEL_DILUTION_ARTICLE = Source(
    "AMS",
    '"What is fuel dilution", https://blog.amsoil.com/what-is-fuel-dilution-and-why-is-it-bad/',
    "medium",
)
FUEL_DILUTION_NOTE = Source(
    "DGA",
    '"Fuel dilution", http://dgaequipment.com/fuel-dilution-lubricating-oil-analysis-4292.html',
    "medium",
)
DISTRIBUTOR_PRACTICES_2016 = Source(
    "CTD",
    '"Distributor installation practices – shaft play and depth", '
    "http://www.speedyauto.cc/howto/racingcar/engine/201603/234635.html",
    "weak",
)
SEALER_CRACKS_CASTINGS = Source(
    "TBR",
    '"Excessive RTV silicone sealer may crack castings", https://www.tirebusiness.com/service'
    "-zone/excessive-rtv-silicone-sealer-may-crack-castings",
    "medium",
)
BUILD_ARTICLE_2017 = Source(
    "PE17",
    '"Precision engine" build article Apr 2017, http://read.uberflip.com/i/795225-april-17/44',
    "medium",
)
BUILD_ARTICLE_2020 = Source(
    "PE20",
    '"Precision engine" build article Jul 2020, https://nbm.uberflip.com/i/1252218-july-20/69',
    "medium",
)
PRE_OILING_ARTICLE = Source(
    "POI",
    '"Engine pre-oiling: a critical procedure for any fresh engine", http://www.autoservicepr'
    "ofessional.com/article/94860/engine-pre-oiling-a-critical-procedure-for-any-fresh-engine",
    "medium",
)
BREAKING_IN_TIP_184 = Source(
    "FOL",
    '"Breaking in your new or rebuilt engine", https://www.foleyengines.com/tech-tip-184-how-'
    "break-remanufactured-deutz-or-perkins-engine/",
    "medium",
)
CAMSHAFT_RULES = Source(
    "CAMB",
    '"The rules of successful camshaft installation", '
    "https://britishautoparts.com.au/camshaft_kits____v8 ; 20–30 min at 2000 rpm: "
    "http://www.sporttruck.com/editorial/0611st_letters_to_the_editor/1985_chevy_pickup.html",
    "medium",
)
CAM_MAKER_FIRST_START = Source(
    "HAM",
    "Cam maker's note: build oil pressure before the engine fires, "
    "http://competitiondiesel.com/threads/break-in-lubrication-for-cams.96462/",
    "weak",
)
TWO_GAUGE_METHOD = Source(
    "DOD",
    "Two-gauge method for an engine with a second regulating valve in the pan, "
    "https://map.jlldesignsolutions.com/ontheline/otl-0721-low-oil-pressure",
    "weak",
)
OIL_ANALYSIS_DARK_ART = Source(
    "TRN",
    '"Understanding the dark art of engine oil analysis", '
    "https://www.trucknews.com/features/understanding-the-dark-art-of-engine-oil-analysis/",
    "medium",
)
PRESSURIZED_BLACK_GOLD = Source(
    "FBE",
    '"Pressurized black gold", https://www.fenderbender.com/running-a-shop/operations/article'
    "/33022521/pressurized-black-gold",
    "medium",
)
REBUILDERS_PRIMING = Source(
    "AEB",
    "Engine rebuilders' association bulletin on priming (1995–2006 engines): feed a "
    "crank-driven rotor pump oil at its inlet while turning it, crank in 15 s spells with "
    "the fuel off, "
    "http://www.chicagoengines.com/tech/bulletins/Engine-Oil-Priming-Procedures-1995-2006-F"
    "ords.htm",
    "medium",
)
