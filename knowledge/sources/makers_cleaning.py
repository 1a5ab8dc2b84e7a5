"""Makers and official manuals on what is cleaned or renewed after debris."""

from knowledge.model import Source

SERVICE_BULLETIN_22_NA_074 = Source(
    "GTL",
    "Vehicle maker's service newsletter on bulletin 22-NA-074: oil cooler, cooler lines and oil "
    "tank renewed after a rod or main bearing failed, https://gm-techlink.com/?p=16143",
    "strong",
)
OIL_COOLER_SERVICE = Source(
    "OCE",
    "Engine maker's service manual, oil cooler: no practical way to clean an element after a "
    "debris failure, https://www.dieselmechanic.info/2883445/2883445-133-007-003-tr-mixab.html",
    "strong, read in a copy",
)
ARMY_TM_254_COOLER = Source(
    "TM254",
    "TM 5-3805-254-14-P-2, oil cooler: flushed against the flow with mineral spirits, tried "
    "under water with air at 40 psi, "
    "https://www.nsndepot.com/Library/TM/TM-5-3805-254-14-P-2?PageNumber=381",
    "strong, read in a copy",
)
OIL_PASSAGE_CLEANING = Source(
    "OPC",
    'Engine maker\'s "Procedure to clean oil passages in crankshafts and cylinder blocks", '
    "https://www.catengine.info/engine-news/"
    "procedure-to-clean-oil-passages-in-crankshafts-and-cylinder-blocks-2.html",
    "strong, read in a copy",
)
GLYCOL_CLEANING_1979 = Source(
    "GLY",
    "Engine maker's service news, Feb 1979: cleaning the lubrication system after ethylene "
    "glycol got in, https://ch-part.com/i.caterpillar/sebd19060003/",
    "strong, read in a copy",
)
COOLANT_CLEANING_MANUAL = Source(
    "D13",
    "Engine maker's manual, section 13.12, cleaning a lubrication system contaminated with "
    "coolant, https://www.detroitmanuals.info/series-50/020e0c.html",
    "strong, read in a copy",
)
ARMY_TM_255_CRANKSHAFT = Source(
    "TM255",
    "TM 9-2815-255-24, crankshaft: magnetic crack test; a journal discoloured by heat has lost "
    "its heat treatment, "
    "http://automotiveenginemechanics.tpub.com/TM-9-2815-255-24/css/TM-9-2815-255-24_204.htm",
    "strong, read in a copy",
)
V6_CRANKSHAFT_1997 = Source(
    "CCI",
    "Vehicle maker's crankshaft clean and inspect text (3.1 V6 1997): probe the oilways; find "
    "the source of what is embedded in the shells, https://myvehicle.help/Buick/1997/Century%2"
    "0V6-3100%203.1L%20VIN%20M%20SFI/Repair%20and%20Diagnosis/Engine%2C%20Cooling%20and%20Exha"
    "ust/Engine/Service%20and%20Repair/Engine%20Overhaul%20%28Unit%20Repair%29/Crankshaft%20Cl"
    "ean%20and%20Inspect",
    "strong, read in a copy",
)
ROD_MAKER_SPUN_BEARING = Source(
    "ERD",
    'Rod maker\'s note "Spun a rod bearing?": a rod discoloured by heat is renewed, '
    "http://www.eaglerod.com/index.php?option=com_content&task=view&id=32&Itemid=25",
    "medium",
)
RING_MAKER_CLEANING_MEDIA = Source(
    "RMB",
    'Ring maker\'s tech tip "Pressure cleaning media engines" (glass beads, shot, oxides left '
    "in passages), https://hastingspistonrings.com/tech_tip/pressure-cleaning-media-engines/",
    "medium",
)
REBUILDERS_GLASS_BEADS = Source(
    "GBC",
    'Rebuilders\' association bulletin "Glass bead cleaning caution" (baffled covers and sumps, '
    "ring grooves), http://chicagoengines.com/tech/bulletins/Glass-Bead-Cleaning-Caution.aspx",
    "medium",
)
TURBO_MAKER_CONTAMINATION = Source(
    "TOC",
    'Turbo maker fact sheet "Oil contamination", http://dieselevante.biz/oil-contamination/',
    "strong, read in a copy",
)
TURBO_FAILURE_SHEET = Source(
    "TCF",
    "Turbocharger failure fact sheet, contaminated oil supply (debris, blasting beads, "
    "antifreeze), http://turboreplacement.co.za/turbocharger-failure-fact-sheet",
    "medium",
)
GASKET_FACE_CLEANING_2000 = Source(
    "GRT",
    "Vehicle maker's text on cleaning gasket faces (2000): no abrasive pads or power tools, "
    "their grit passes the oil filter, http://109.171.23.250/Chevrolet/Tracker___4WD/2000/10/1/"
    "1376/38431",
    "strong, read in a copy",
)
LIFTER_OVERHAUL_ARTICLE = Source(
    "LFT",
    "Overhaul article, hydraulic lifters: strip and clean a sticking one, never mix parts or "
    "places, https://hohrv2.com/lifters-1139.html",
    "weak",
)
TURBO_REBUILDER_CONTAMINATION = Source(
    "TME",
    "Turbo rebuilder's page on contaminated oil: oil and chips left in the charge air cooler come "
    "back later, http://turbomasterengineering.co.uk/contaminated-oil,12,en.html",
    "medium",
)
