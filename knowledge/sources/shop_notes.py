"""Forums, club notes and newspaper answers: used for a pattern, never alone for a limit."""

from knowledge.model import Source

UNDERSTANDING_OIL_PRESSURE = Source(
    "INL",
    '"Understanding oil pressure" (low, erratic, too much), '
    "https://fordsixperformanceforum.github.io/OilPressure.html",
    "weak",
)
REAR_GALLERY_PLUG_ARTICLE = Source(
    "PSP",
    'technical article "Installing the rear galley oil plug with the engine in the car" '
    "(specialist site for a US V8 family, read on-line)",
    "weak",
)
CAM_BEARING_HOLES_BLOG = Source(
    "LTK",
    "Cam bearing holes misaligned, no oil to rockers, http://www.landtrek.net/blog/?p=924",
    "weak",
)
CLUB_CAM_BEARING_NOTE = Source(
    "MRG",
    "Club note: middle cam bearing worn to ten times standard, low hot pressure, "
    "http://moreg.org.au/wordpress/home-2/club-news/technical-tips/oil-pressure/",
    "weak",
)
WINDAGE_TRAY_ARTICLE = Source(
    "WTS",
    '"Windage tray for stroked engines", '
    "https://hotrod.com/how-to/ccrp-1009-windage-tray-for-stroked-engines",
    "weak",
)
AERATION_ARTICLE_2016 = Source(
    "ADT",
    '"Aeration: what is it and why should we care?", '
    "http://www.advancedta.com/blog/2016/2/16/what-is-aeration-why-should-we-care",
    "weak",
)
OIL_STARVATION_ARTICLE = Source(
    "OST",
    '"Oil starvation" (pump maker quoted), https://szlsgw.com/news/oil-starvation.htm',
    "weak",
)
RECONDITIONER_BEARINGS = Source(
    "RUS",
    "Engine reconditioner's bearing page, http://daverushton.co.uk/tech/techbrgs.html",
    "weak",
)
BEARING_WEAR_ANALYSIS = Source(
    "BTG",
    '"Bearing wear analysis", http://www.bobistheoilguy.com/bearingwear/bearingwearanalysis.htm',
    "weak",
)
BEARING_FAILURE_TYPES = Source(
    "MPH",
    '"What engine bearing failure types are known", '
    "https://marineprohelp.com/questions/2635/engine-bearings-failure-types-and-their-causes",
    "weak",
)
OIL_ANALYSIS_THREAD = Source(
    "TDI",
    "Oil analysis 101 thread, https://forums.tdiclub.com/index.php?threads/oil-analysis-101.43379/",
    "weak",
)
USED_OIL_ELEMENTS = Source(
    "TDR",
    "Used-oil element list and rule-of-thumb limits, "
    "https://xf2dev.turbodieselregister.com/goto/post?id=1869084",
    "weak",
)
MARINE_ELEMENT_LIST = Source(
    "ELM",
    "Element list (marine), https://captkonz.tripod.com/marineprofessional/id14.html",
    "weak",
)
BOAT_GAUGES_ARTICLE = Source(
    "FJE",
    '"Basic maintenance of your boat\'s gauges", https://www.fjeosin.com/Important-information'
    "-with-the-Basic-Maintenance-of-your-boat-s-gauges-id43213467.html",
    "weak",
)
NEWSPAPER_JUMPY_GAUGE_2013 = Source(
    "CTG",
    "Newspaper Q&A, jumpy gauge (2013), http://articles.chicagotribune.com/2013-07-30/classif"
    "ied/sc-cons-0725-autotips-oil-pressure-20130730_1_gauge-oil-pressure",
    "weak",
)
NEWSPAPER_BRAKING_2005 = Source(
    "SJR",
    "Newspaper Q&A, pressure zero under braking (2005), "
    "https://www.sunjournal.com/2005/02/13/218061-2",
    "weak",
)
NEWSPAPER_GAUGE_2010 = Source(
    "COL",
    "Newspaper Q&A (2010), https://www.columbiatribune.com/story/business/2010/01/22/heed-oil"
    "-pressure-gauge-s/21496887007/",
    "weak",
)
TECHNICIAN_ANSWER = Source(
    "2CP",
    "Technician's answer: good pressure at first then sudden drop = screen; debris in relief "
    "seen at low rpm; sender gives more low readings than engine faults on many cars, "
    "2carpros.com, question on the oil pressure of a 2000 car",
    "weak",
)
BLOG_SHAFT_BOUND_2009 = Source(
    "MSK",
    "Blog: new pump, drive shaft bound, distributor would not seat, "
    "https://mrskipracing.com/2009/01/19/mlk-day/",
    "weak",
)
DIARY_SHAFT_BINDS = Source(
    "OCM",
    "Build diary: pump-shaft hole misaligned, distributor binds, "
    "https://ocmhz.com/33_ford_coupe/engine/33_coupe_engine38.htm",
    "weak",
)
DISTRIBUTOR_FLOAT_EXTRACT = Source(
    "TR4",
    "Workshop-manual extract on distributor drive gear end float, "
    "https://britishcarforum.com/community/threads/distributor-pedestal-on-a-tr3.17373",
    "weak",
)
DISTRIBUTOR_GEAR_THREAD = Source(
    "FFC",
    "Distributor gear instructions quoted (end play 0.024–0.035 in), https://www.ffcars.com/t"
    "hreads/distributor-shaft-end-play-did-i-correct-it-properly-safely.164216/",
    "weak",
)
WORN_GEAR_THREAD = Source(
    "V8F",
    "Worn distributor drive gear – cause or effect?, "
    "https://www.v8forum.co.uk/forum/viewtopic.php?t=13544",
    "weak",
)
DRIVE_SHAFT_EARS_THREAD = Source(
    "PJM",
    "Forum thread citing pump drive-shaft ears, thick oil, enthusiasts' forum, read on-line "
    "(distributor gears)",
    "weak",
)
PUMP_GASKET_THREAD = Source(
    "PGN",
    "Forum debate on pump gasket, "
    "https://www.forabodiesonly.com/mopar/threads/oil-pump-gasket-yeah-or-nay.512440/",
    "weak",
)
PUMP_SCREEN_NOTES = Source(
    "AZN",
    "Pump-screen inspection notes (parts retailer with bearing-maker photographs), http://www"
    ".autozone.com/autozone/repairinfo/common/repairInfoMain.jsp?pageId=0996b43f80a013a2",
    "weak",
)
CLUB_BLOCKED_SCREENS = Source(
    "JIO",
    "Club note: screens blocked by plastic timing-gear teeth and by sludge, "
    "http://theymightberacing.com/Literature/BookArticle.aspx?ArticleID=12",
    "weak",
)
CLUB_SEALANT_STRAINER = Source(
    "RV8",
    "Club note: sump sealant jammed the strainer, https://v8register.net/subpages/RV8NOTE339.htm",
    "weak",
)
SEALER_TEXT_1992 = Source(
    "RTV",
    "Maker's use of sealer text, charm.li 1992 diesel truck",
    "weak",
)
OIL_PAN_TIPS = Source(
    "ELP",
    '"Useful tips: installing oil pans the right way", '
    "https://www.enginelabs.com/engine-tech/engine/useful-tips-installing-oil-pans-right-way/ "
    "(numbers were below the readable excerpt)",
    "weak",
)
PRIME_CONSIDERATIONS = Source(
    "PRC",
    '"Prime considerations" (crank without plugs to 40 psi), '
    "https://www.highpowermedia.com/Archive/prime-considerations",
    "weak",
)
BREAK_IN_OIL_NOTE = Source(
    "BIM",
    "Break-in oil note (first hour, then drain and filter), "
    "https://willandservicecentre.co.uk/how-soon-to-change-oil-after-engine-rebuild/",
    "weak",
)
REBUILDER_OIL_CHANGES = Source(
    "SYN",
    "Rebuilder: oil changed twice in the first thousand miles, "
    "http://www.syncro.org/boston_bob-fresh-engine.html",
    "weak",
)
CUT_FILTER_ANALYSIS_2026 = Source(
    "CUT",
    '"What cut-open filter analysis tells you", '
    "https://mopowergarage.blog/2026/01/09/what-cut-open-filter-analysis-tells-you",
    "weak",
)
READING_THE_FILTER = Source(
    "CTF",
    '"Reading the filter", '
    "http://www.circletrack.com/techarticles/ctrp_0710_reading_the_signs/page_2.html",
    "weak",
)
INSIDE_YOUR_FILTER = Source(
    "MIF",
    '"Check inside your oil filter", https://motoiq.com/pro-tip-check-inside-your-oil-filter/2/',
    "weak",
)
TEN_PSI_RULE_2009 = Source(
    "10R",
    'Rule of thumb 10 psi per 1000 rpm ("Oil pump technology", Jun 2009); also '
    "https://engineerfix.com/where-should-the-oil-pressure-be-in-your-car",
    "weak",
)
OIL_CHANGE_LAMP_TEXT = Source(
    "LAM",
    "Oil-change text: light out in a few seconds, stop if on for more than 5–10 s, "
    "https://engineerfix.com/how-long-after-changing-oil-can-i-drive",
    "weak",
)
RESTORER_HOT_FALL_2014 = Source(
    "VTE",
    "Restorer's answer: pressure falls after 1–2 h hot = worn pump and/or crank bearings, "
    "http://vintagetractorengineer.com/2014/12/mf35-3-cylinder-loosing-oil-pressure/",
    "weak",
)
RELIEF_VALVE_EXPLANATION = Source(
    "JHV",
    "Relief-valve explanation (reversed piston, shimmed spring), "
    "http://www.jensenhealey.com/forums/view_post.php?post_id=16638",
    "weak",
)
STICK_VERIFICATION_2002 = Source(
    "HPP",
    "Oil-level stick verification with the pan off, enthusiasts' magazine tech series, Aug "
    "2002, part III, photo 9",
    "weak",
)
ROTATED_GALLERY_PLUG = Source(
    "PBB",
    "Rotated rear gallery plug restricting the rear main feed, http://boddice.co.uk/bpic2546.html",
    "weak",
)
PRESS_FIT_PICKUP_THREAD = Source(
    "PT4",
    "Forum thread on fixing a press-fit pickup by tack weld or braze, with a dissenting "
    "opinion, https://www.pro-touring.com/archive/index.php/t-1566.html",
    "weak",
)
PICKUP_BRACKET_THREAD = Source(
    "CLR2",
    "Racers' thread: hold-down bracket fatigue, weld with relief spring removed, then recheck "
    "the pump body is square, "
    "http://classracer.com/classforum/showthread.php?mode=linear&p=680938",
    "weak",
)
DIARY_FELT_SEAL = Source(
    "FLT",
    "Restorer's diary: felt seal on the pickup pipe nearly left out, worn cover-screw threads, "
    "https://1959cadillacfinmonster.wordpress.com/2015/05/11/the-devil-is-in-the-detail/",
    "weak",
)
RELIEF_SPRING_STUDY = Source(
    "RLS",
    "Relief valve study: spring rate, shim calculation, https://ls1tech.com/forums/advanced-e"
    "ngineering-tech/469675-ls1-oil-pump-pressure-relief-study.html",
    "weak",
)
PUMP_FITTING_NOTES = Source(
    "AZP",
    "Pump fitting notes (parts retailer): drive shaft tried in the distributor's socket "
    "and its stop set, pump and shaft fitted together, never forced, "
    "http://www.autozone.com/repairinfo/common/repairInfoMain.jsp?targetPage=productsHowToI"
    "nspect&leftNavPage=productsHowTo&pageId=%25090996b43f80a01177&subtitle=replace",
    "weak",
)
PRIMING_TOOL_THREAD = Source(
    "CHR",
    "Forum thread: the priming tool drew the drive shaft out of the pump as it was lifted, "
    "http://clubhotrod.com/shop-talk/37581-oil-pump-drive-shaft.html",
    "weak",
)
POURED_BEARING_THREAD = Source(
    "PBT",
    "Machinists' thread on a poured main of a side-valve engine: pieces broke out of the upper half, "
    "the seat poorly tinned, "
    "http://www.practicalmachinist.com/vb/antique-machinery-history/ot-babbitt-bearing-failure-mode-237999/",
    "weak",
)
