"""Forums, club notes and newspaper answers: used for a pattern, never alone for a limit."""

from knowledge.model import Source

INL = Source(
    "INL",
    '"Understanding oil pressure" (low, erratic, too much), '
    "https://fordsixperformanceforum.github.io/OilPressure.html",
    "weak",
)
PSP = Source(
    "PSP",
    'technical article "Installing the rear galley oil plug with the engine in the car" '
    "(specialist site for a US V8 family, read on-line)",
    "weak",
)
LTK = Source(
    "LTK",
    "Cam bearing holes misaligned, no oil to rockers, http://www.landtrek.net/blog/?p=924",
    "weak",
)
MRG = Source(
    "MRG",
    "Club note: middle cam bearing worn to ten times standard, low hot pressure, "
    "http://moreg.org.au/wordpress/home-2/club-news/technical-tips/oil-pressure/",
    "weak",
)
WTS = Source(
    "WTS",
    '"Windage tray for stroked engines", '
    "https://hotrod.com/how-to/ccrp-1009-windage-tray-for-stroked-engines",
    "weak",
)
ADT = Source(
    "ADT",
    '"Aeration: what is it and why should we care?", '
    "http://www.advancedta.com/blog/2016/2/16/what-is-aeration-why-should-we-care",
    "weak",
)
OST = Source(
    "OST",
    '"Oil starvation" (pump maker quoted), https://szlsgw.com/news/oil-starvation.htm',
    "weak",
)
RUS = Source(
    "RUS",
    "Engine reconditioner's bearing page, http://daverushton.co.uk/tech/techbrgs.html",
    "weak",
)
BTG = Source(
    "BTG",
    '"Bearing wear analysis", http://www.bobistheoilguy.com/bearingwear/bearingwearanalysis.htm',
    "weak",
)
MPH = Source(
    "MPH",
    '"What engine bearing failure types are known", '
    "https://marineprohelp.com/questions/2635/engine-bearings-failure-types-and-their-causes",
    "weak",
)
TDI = Source(
    "TDI",
    "Oil analysis 101 thread, https://forums.tdiclub.com/index.php?threads/oil-analysis-101.43379/",
    "weak",
)
TDR = Source(
    "TDR",
    "Used-oil element list and rule-of-thumb limits, "
    "https://xf2dev.turbodieselregister.com/goto/post?id=1869084",
    "weak",
)
ELM = Source(
    "ELM",
    "Element list (marine), https://captkonz.tripod.com/marineprofessional/id14.html",
    "weak",
)
FJE = Source(
    "FJE",
    '"Basic maintenance of your boat\'s gauges", https://www.fjeosin.com/Important-information'
    "-with-the-Basic-Maintenance-of-your-boat-s-gauges-id43213467.html",
    "weak",
)
CTG = Source(
    "CTG",
    "Newspaper Q&A, jumpy gauge (2013), http://articles.chicagotribune.com/2013-07-30/classif"
    "ied/sc-cons-0725-autotips-oil-pressure-20130730_1_gauge-oil-pressure",
    "weak",
)
SJR = Source(
    "SJR",
    "Newspaper Q&A, pressure zero under braking (2005), "
    "https://www.sunjournal.com/2005/02/13/218061-2",
    "weak",
)
COL = Source(
    "COL",
    "Newspaper Q&A (2010), https://www.columbiatribune.com/story/business/2010/01/22/heed-oil"
    "-pressure-gauge-s/21496887007/",
    "weak",
)
TWO_CP = Source(
    "2CP",
    "Technician's answer: good pressure at first then sudden drop = screen; debris in relief "
    "seen at low rpm; sender gives more low readings than engine faults on many cars, "
    "https://2carpros.com/questions/2000-pontiac-grand-am-oil-pressure",
    "weak",
)
MSK = Source(
    "MSK",
    "Blog: new pump, drive shaft bound, distributor would not seat, "
    "https://mrskipracing.com/2009/01/19/mlk-day/",
    "weak",
)
OCM = Source(
    "OCM",
    "Build diary: pump-shaft hole misaligned, distributor binds, "
    "https://ocmhz.com/33_ford_coupe/engine/33_coupe_engine38.htm",
    "weak",
)
TR4 = Source(
    "TR4",
    "Workshop-manual extract on distributor drive gear end float, "
    "https://britishcarforum.com/community/threads/distributor-pedestal-on-a-tr3.17373",
    "weak",
)
FFC = Source(
    "FFC",
    "Distributor gear instructions quoted (end play 0.024–0.035 in), https://www.ffcars.com/t"
    "hreads/distributor-shaft-end-play-did-i-correct-it-properly-safely.164216/",
    "weak",
)
V8F = Source(
    "V8F",
    "Worn distributor drive gear – cause or effect?, "
    "https://www.v8forum.co.uk/forum/viewtopic.php?t=13544",
    "weak",
)
PJM = Source(
    "PJM",
    "Forum thread citing pump drive-shaft ears, thick oil, enthusiasts' forum, read on-line "
    "(distributor gears)",
    "weak",
)
PGN = Source(
    "PGN",
    "Forum debate on pump gasket, "
    "https://www.forabodiesonly.com/mopar/threads/oil-pump-gasket-yeah-or-nay.512440/",
    "weak",
)
AZN = Source(
    "AZN",
    "Pump-screen inspection notes (parts retailer with bearing-maker photographs), http://www"
    ".autozone.com/autozone/repairinfo/common/repairInfoMain.jsp?pageId=0996b43f80a013a2",
    "weak",
)
JIO = Source(
    "JIO",
    "Club note: screens blocked by plastic timing-gear teeth and by sludge, "
    "http://theymightberacing.com/Literature/BookArticle.aspx?ArticleID=12",
    "weak",
)
RV8 = Source(
    "RV8",
    "Club note: sump sealant jammed the strainer, https://v8register.net/subpages/RV8NOTE339.htm",
    "weak",
)
RTV = Source(
    "RTV",
    "Maker's use of sealer text, charm.li 1992 diesel truck",
    "weak",
)
ELP = Source(
    "ELP",
    '"Useful tips: installing oil pans the right way", '
    "https://www.enginelabs.com/engine-tech/engine/useful-tips-installing-oil-pans-right-way/ "
    "(numbers were below the readable excerpt)",
    "weak",
)
PRC = Source(
    "PRC",
    '"Prime considerations" (crank without plugs to 40 psi), '
    "https://www.highpowermedia.com/Archive/prime-considerations",
    "weak",
)
BIM = Source(
    "BIM",
    "Break-in oil note (first hour, then drain and filter), "
    "https://willandservicecentre.co.uk/how-soon-to-change-oil-after-engine-rebuild/",
    "weak",
)
SYN = Source(
    "SYN",
    "Rebuilder: oil changed twice in the first thousand miles, "
    "http://www.syncro.org/boston_bob-fresh-engine.html",
    "weak",
)
CUT = Source(
    "CUT",
    '"What cut-open filter analysis tells you", '
    "https://mopowergarage.blog/2026/01/09/what-cut-open-filter-analysis-tells-you",
    "weak",
)
CTF = Source(
    "CTF",
    '"Reading the filter", '
    "http://www.circletrack.com/techarticles/ctrp_0710_reading_the_signs/page_2.html",
    "weak",
)
MIF = Source(
    "MIF",
    '"Check inside your oil filter", https://motoiq.com/pro-tip-check-inside-your-oil-filter/2/',
    "weak",
)
TEN_R = Source(
    "10R",
    'Rule of thumb 10 psi per 1000 rpm ("Oil pump technology", Jun 2009); also '
    "https://engineerfix.com/where-should-the-oil-pressure-be-in-your-car",
    "weak",
)
LAM = Source(
    "LAM",
    "Oil-change text: light out in a few seconds, stop if on for more than 5–10 s, "
    "https://engineerfix.com/how-long-after-changing-oil-can-i-drive",
    "weak",
)
VTE = Source(
    "VTE",
    "Restorer's answer: pressure falls after 1–2 h hot = worn pump and/or crank bearings, "
    "http://vintagetractorengineer.com/2014/12/mf35-3-cylinder-loosing-oil-pressure/",
    "weak",
)
JHV = Source(
    "JHV",
    "Relief-valve explanation (reversed piston, shimmed spring), "
    "http://www.jensenhealey.com/forums/view_post.php?post_id=16638",
    "weak",
)
HPP = Source(
    "HPP",
    "Oil-level stick verification with the pan off, enthusiasts' magazine tech series, Aug "
    "2002, part III, photo 9",
    "weak",
)
PBB = Source(
    "PBB",
    "Rotated rear gallery plug restricting the rear main feed, http://boddice.co.uk/bpic2546.html",
    "weak",
)
PT4 = Source(
    "PT4",
    "Forum thread on fixing a press-fit pickup by tack weld or braze, with a dissenting "
    "opinion, https://www.pro-touring.com/archive/index.php/t-1566.html",
    "weak",
)
CLR2 = Source(
    "CLR2",
    "Racers' thread: hold-down bracket fatigue, weld with relief spring removed, then recheck "
    "the pump body is square, "
    "http://classracer.com/classforum/showthread.php?mode=linear&p=680938",
    "weak",
)
FLT = Source(
    "FLT",
    "Restorer's diary: felt seal on the pickup pipe nearly left out, worn cover-screw "
    "threads, "
    "https://1959cadillacfinmonster.wordpress.com/2015/05/11/the-devil-is-in-the-detail/",
    "weak",
)
RLS = Source(
    "RLS",
    "Relief valve study: spring rate, shim calculation, https://ls1tech.com/forums/advanced-e"
    "ngineering-tech/469675-ls1-oil-pump-pressure-relief-study.html",
    "weak",
)
AZP = Source(
    "AZP",
    "Pump fitting notes (parts retailer): drive shaft tried in the distributor's socket "
    "and its stop set, pump and shaft fitted together, never forced, "
    "http://www.autozone.com/repairinfo/common/repairInfoMain.jsp?targetPage=productsHowToI"
    "nspect&leftNavPage=productsHowTo&pageId=%25090996b43f80a01177&subtitle=replace",
    "weak",
)
CHR = Source(
    "CHR",
    "Forum thread: the priming tool drew the drive shaft out of the pump as it was lifted, "
    "http://clubhotrod.com/shop-talk/37581-oil-pump-drive-shaft.html",
    "weak",
)
