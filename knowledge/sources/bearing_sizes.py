"""Sources of clearances by journal size, of shell sizes, and of the form of journals and bores."""

from knowledge.model import Source

BEARING_MAKER_PER_INCH = Source(
    "BCN",
    '"How much clearance do your bearings need?", bearing maker: 0.00075 to 0.0010 in for each '
    "inch of shaft, 0.0005 in added to the larger for high performance; 2.000 in: 0.0015 to "
    "0.0020 in, 0.0025 in, https://www.scribd.com/doc/313903479/Bearings-Clearances",
    "strong, read in a copy",
)
CLEARANCE_GUIDE_TABLE = Source(
    "LNB",
    '"Bearing clearance guide", engine parts maker: 2.500 in 0.0019 to 0.0025 in, 3.000 in 0.0023 '
    "to 0.0030 in, https://docs.lnengineering.com/article/34-bearing-clearance-guide",
    "medium",
)
MAGAZINE_BEARINGS_2008 = Source(
    "MMB",
    "Magazine with a bearing maker's guide, 2008: 0.001 in for each inch, 0.0005 in more on rods; "
    "halves may be mixed up to 0.0005 in of wall, the thicker one on top in a rod, below in a "
    "main; shells 0.001 in thinner for standard journals, http://www.moparmusclemagazine.com/techarticles/engine/"
    "mopp_0806_mopar_clevite_engine_bearing_guide/plastigage_clearance.html",
    "medium",
)
RACE_CLEARANCES = Source(
    "ELB",
    '"Clearing the air on bearing clearances": 0.001 in for each inch, 0.0005 in less is tight, '
    "0.0005 in more is loose, "
    "https://www.enginelabs.com/engine-tech/engine/clearing-the-air-on-bearing-clearances/",
    "medium",
)
STRIP_MAKER_LEAFLET = Source(
    "PGL",
    "Leaflet of a maker of gauge strip: about one part in 2000 of the diameter, "
    "https://doczz.net/doc/1317191/plastigauge%C2%AE",
    "medium",
)
CLEARANCE_CALCULATOR = Source(
    "EBC",
    "Bearing clearance page: gauge strip to about 0.0005 in either way; a 2.100 in journal "
    "0.0021 in, https://engine-build.com/calculators/bearing-clearance",
    "medium",
)
ARMY_TM_262_CRANKPINS = Source(
    "TMB",
    "TM 5-3805-262-34, sheet 4-24: crankpin under 2.748 in takes 0.002 in undersize; ground "
    "2.738 to 2.739, 2.728 to 2.729, 2.718 to 2.719 in; taper or out of round over 0.0005 in is "
    "ground; one ground, all ground, "
    "https://constructionloader.tpub.com/TM-5-3805-262-34/css/TM-5-3805-262-34_968.htm",
    "strong, read in a copy",
)
ARMY_TM_300_SHELLS = Source(
    "TSH",
    "TM 5-3810-300-24&P-3, table of main shells: standard 0.1548 to 0.1553 in, undersizes 0.002, "
    "0.010, 0.020, 0.030 in, "
    "https://constructioncranes.tpub.com/TM-5-3810-300-24P3/TM-5-3810-300-24P300064.html",
    "strong, read in a copy",
)
ARMY_TM_202_JOURNALS = Source(
    "TMJ",
    "TM 9-2815-202-34, p. 4-158: journals measured to the nearest 0.0002 in, taper to 0.0006 in, "
    "out of round to 0.0005 in, http://automotiveenginemechanics.tpub.com/TM-9-2815-202-34/css/"
    "TM-9-2815-202-34_264.htm",
    "strong, read in a copy",
)
ARMY_TM_255_BEARING_FIT = Source(
    "TMF",
    "TM 5-3805-255-14, bearing fitting procedure: spread about 0.025 in on a rod shell; crush never "
    "to be filed away, "
    "https://constructionloader.tpub.com/TM-5-3805-255-14/TM-5-3805-255-1400958.html",
    "strong, read in a copy",
)
V10_JOURNALS_1996 = Source(
    "VTJ",
    "Vehicle maker's main journal inspection (8.0 V10, 1996): taper and out of round 0.0005 in; "
    "undersizes 0.001, 0.002, 0.003, 0.010, 0.012, 0.020 in, ground to 0.020 in at most, "
    "https://charm.mcallihan.com/Dodge/1996/Viper%20V10-488%208.0L/",
    "strong, read in a copy",
)
FLAT_FOUR_CRANK_2000 = Source(
    "FFS",
    "Vehicle maker's crank figures (2.5 flat four, 2000): journals and shells standard, 0.03, "
    "0.05 and 0.25 mm undersize, "
    "https://myvehicle.help/Subaru/2000/Impreza%202.5%20RS%20Sedan%20F4-2.5L%20SOHC/",
    "strong, read in a copy",
)
FOUR_CRANK_1998 = Source(
    "FCS",
    "Vehicle maker's crank inspection (1.9 four, 1998): shells 0.012 and 0.025 mm undersize; taper "
    "and out of round 0.01 mm, https://saturnarchive.com/service-manuals/1998-Saturn-SL2-SC2-SW2/"
    "1998_Saturn_SL2_Files/servlets/BlobShtml0619.html",
    "strong, read in a copy",
)
METRIC_UNDERSIZES = Source(
    "MBU",
    "Parts dealer's note on undersizes: 0.25, 0.50, 0.75 mm, https://midwest-bayless.com/"
    "lancia-beta-0_p-24726-readme-rod-and-main-bearing-undersize-definitions-explanations-read-me.aspx",
    "medium",
)
FOUR_RODS_1997 = Source(
    "FRB",
    "Vehicle maker's rod figures (2.0 four, 1997): bore out of round 0.010 mm, taper 0.010 mm, "
    "https://manuals.autorepairshq.com/Mercury/1997/Tracer%20L4-122%202.0L%20SOHC/",
    "strong, read in a copy",
)
V6_BLOCK_2007 = Source(
    "VSB",
    "Vehicle maker's figures (3.9 V6, 2007): main bore out of round 0.008 mm, rod bore 0.006 mm, "
    "journals 0.005 mm, https://myvehicle.help/Chevrolet/2007/Impala%20V6-3.9L/",
    "strong, read in a copy",
)
V6_CRANK_2001 = Source(
    "VSC",
    "Vehicle maker's crank figures (3.8 V6, 2001): out of round 0.0006 in in all, taper 0.0003 in "
    "for each inch, https://charm.mcallihan.com/Ford/2001/Mustang%20V6-3.8L%20VIN%204/",
    "strong, read in a copy",
)
FOUR_SHELL_SELECTION_2000 = Source(
    "FSS",
    "Vehicle maker's bearing selection (2.2 four, 2000): journal averaged, rod bore measured along "
    "the rod; shells of different size not mixed in one bore, "
    "https://myvehicle.help/Isuzu%20Truck/2000/Hombre%20XS%20Space%20Cab%202WD%20L4-2.2L%20CPC/",
    "strong, read in a copy",
)
ROD_SHELL_NOTE = Source(
    "RSN",
    "Parts dealer's note on rod shells: 0.003 in with 0.001 in undersize shells becomes 0.002 in, "
    "https://www.jeeppartsdeal.com/parts-select/jeep-grand-cherokee-rod-bearing",
    "medium",
)
UNDERSIZE_GUIDE_2012 = Source(
    "UGI",
    "Vehicle maker's undersize bearing usage guide (3.5 V6, 2012): measure the bore with the "
    "undersize shells in and grind the journal to the clearance, keeping the fillet, "
    "https://lemon-manuals.la/Infiniti/2012/EX35%20Base%2C%20AWD/",
    "strong, read in a copy",
)
