"""What was tried with pump, relief valve, pickup and sump, said in a way of its own; other work is an action on a part."""

from __future__ import annotations

_PUT = "fitted|installed|put|replaced|renewed|changed|new|swapped|fitting|replacing|refitted"
_DID = "cleaned|cleared|opened|drilled|unblocked|rodded|cleaning|clearing|cleaned-out"
_TIGHT = "tightened|torqued|retorqued|tightening|nipped|retightened|re-torqued"

#: the trial, by what is said of it
TRIALS: dict[str, tuple[str, ...]] = {
    "pump_primed": (
        "=primed|=priming|=reprimed",
        "prime it|the|pump",
        "packed|packing .. vaseline|pump|jelly|grease",
        "packed|filled|smeared|stuffed|pushed|crammed|coated|loaded|squashed|put .. vaseline|petroleum|jelly",
        "vaseline|jelly|grease in|into|inside|round|on the? pump|vanes|gears|rotors|rotor",
        "prime|primed with a? drill",
        "oil .. spun by|with drill",
        "spun .. drill",
        "spun|turned|ran|drove|spinning|turning|running|span|driven|rotated the? oil? pump shaft|drive? with|by|using|on an|a? cordless|electric|power|battery? drill",
        "=prelubed|=prelubing|=pre-lubed the|my? engine|motor|system?",
        "pump =filled|=charged|=loaded|=flooded by|with|through hand|oil|syringe",
    ),
    "standard_pump": (
        "put|fitted|went|gone .. standard|stock|original oil? pump back?",
        "replaced|swapped|changed|exchanged the|my|that? hv|high-volume|hi-vol|high-pressure|bigger|big|uprated oil? pump .. by|for|with a|the|an? stock|standard|original|factory|normal|regular one|pump|item?",
        "back to|on the|a? stock|standard|original|factory volume|pressure? oil? pump",
        "from hv|high-volume to|back standard|stock",
    ),
    "new_pickup": (
        "brazed|soldered|welded|fixed|mended|repaired .. crack|split|pinhole .. pickup|suction",
    ),
    "stiffer_spring": (
        "shimmed|stretched|shim|stretch .. relief|spring|regulator valve|plunger|spring?",
        "put|added|stuck|fitted|placed|adding|putting .. washer|washers|shim|shims behind|under|on|in|below the|my? oil? pressure? bypass|pressure|ball|valve? spring",
        "put|added|stuck|fitted|placed|popped|slipped a|an|one|two|three|@number|some|couple-of? washer|washers|shim|shims|nut|coin|"
        "packing|spacer behind|under|on|in|to|below the|my? pressure? relief|regulator? valve? spring|relief|regulator",
        "stiffer|stronger relief? spring",
        "packed|packing|pack the|up|out? relief|valve|pressure? spring",
        "shimmed|packed|stretched it|the|up with? washers|shims|a-washer|coins",
        "relief|regulator valve? spring? was|is? now? =shimmed|=stretched|=packed",
        "=new|=another|=replacement|=different =spring",
    ),
    "other_sump": (
        "fitted|put .. deeper|bigger|different|another|new|deep sump|pan",
        "knocked|beat|beaten|hammered|pulled|took .. dent|dents out of|in the? sump|pan",
    ),
    "high_volume_pump": (
        "high volume pump",
        "bigger|larger|uprated|high-capacity|wider oil? pump",
    ),
    "pickup_cleaned": (
        "dropped the? oil? pan|sump .. clean|cleaned",
        "pulled the pan .. clean|cleaned|checked",
        "pan|sump off|out .. cleaned",
        "cleaned|scraped|dug|cleaning|washed .. sludge|crud|gunk|muck|debris out of|from the? oil? sump|pan|pickup",
    ),
    "new_relief_valve": (
        "swapped|replaced|changed|renewed|new|another|different the|a|my? relief|steel? =ball|=balls",
    ),
    "relief_cleaned": (
        "got|worked|getting the|my? pressure|oil? relief|regulator valve|plunger|piston moving|free|freed|sliding|working|unstuck again?",
    ),
    "scavenge_mended": (
        f"{_PUT}|fixed|repaired|primed|rebuilt .. scavenge pump|belt|stage|section",
        "new scavenge|dry-sump|drysump belt|pump",
    ),
    "relief_return_cleared": (
        f"{_DID} .. relief valve? return|drain|bleed passage|hole|line",
        f"{_DID} .. relief return|drain|bleed passage|hole",
    ),
    "pickup_gap_set": (
        "lengthened|extended the|my? pickup|pick-up tube|pipe?",
        "set|adjusted|raised|lowered|bent|shortened|spaced|corrected .. pickup|pick-up|strainer .. height|gap|clearance|depth|up|down|higher|lower",
        "pickup|pick-up height|gap|clearance was? set|adjusted|corrected",
    ),
    "restrictor_fitted": (
        f"{_PUT}|added|made .. restrictor|restrictors",
        "restricted the? oil .. head|heads|lifters|top|rockers|turbo|cam",
    ),
    "pickup_seal_renewed": (
        "o-ring|oring|seal|gasket =replaced|=renewed|=changed|=fitted on|at|of|for|to|in the? pickup|pick-up|suction|strainer tube|pipe?",
        f"{_PUT} .. o-ring|oring|ring|gasket|seal|washer .. on|to|of|for|at|between .. pickup|pick-up|suction|strainer pipe|tube?",
        f"{_PUT} pickup|pick-up|suction|strainer tube|pipe? o-ring|oring|gasket|seal",
        "new o ring|rings .. pickup|pick-up|suction|strainer",
        f"{_TIGHT} .. pickup|pick-up|suction|strainer",
        "sealed|resealed|bedded .. pickup|pick-up|suction tube|pipe|joint|strainer?",
    ),
    "suction_hose_renewed": (
        f"{_PUT}|{_TIGHT} .. suction|supply|tank|tank-feed hose|pipe|union|clamp|line",
        "new .. hose .. tank|suction|pump",
    ),
    "pump_refitted": (
        "bolted|put|screwed|fitted the? pump back? up|on|in|down? back? with|and|on a? new|fresh|another gasket|o-ring|seal",
        f"{_TIGHT} .. pump bolts|cover|mounting|screws|down",
        "new pump gasket|o-ring|seal",
        "oil? pump =off ,? with|and? a? new|fresh|another gasket|o-ring|seal ,? and? back? on? again?",
        f"{_PUT} .. gasket|o-ring|seal .. pump",
        "removed|pulled|took .. pump .. refitted|put|reinstalled back?",
    ),
    "pump_drive_renewed": (
        f"{_PUT} .. pump|intermediate|drive drive? shaft|driveshaft|=gear|chain|coupling|rod",
        f"{_PUT} .. pump drive gears",
        "new skew|drive|pump =gear|shaft",
    ),
    "distributor_refitted": (
        "pulled|removed|took|reseated|refitted|dropped|turned .. distributor|dizzy .. refitted|back|again|in|seated",
        "re-stabbed|restabbed|reseated the? distributor|dizzy",
    ),
    "relief_adjusted": (
        "adjusted|adjusting|reset the|my? oil pressure up|down|at|by|on?",
        "turned|wound|screwed|turning|winding up|down? the|my? oil? pressure up|down at|on|with the? relief|regulator|adjuster",
        "turned|turning up the|my? oil pressure",
        "gave|give|giving the? relief|regulator|adjusting|adjuster|pressure valve|screw|nut|bolt? a|an|one|two|half|another extra|full|half? turn|turns",
        "turned|turning|wound|winding|screwed the|my? pressure? relief|regulator valve? in|down|up|out",
        "wound|screwed|turned|cranked|backed|tightened|winding|turning the|my? pressure|oil? relief|regulator|adjusting|adjuster|adjustment valve? screw|adjuster|bolt|nut all the way|fully|right|@number|two|one|a|half turn|turns|in|out|up|down?",
        "wound|screwed|turned|cranked|backed|tightened the|my? pressure|oil? relief|regulator|adjusting|adjuster|adjustment valve? screw|adjuster|bolt|nut right|all|fully? in|out|up|down|home",
    ),
    "sump_baffled": (
        "fitted|made|added|welded|installed|put .. baffle|baffles|baffled|trapdoor|trap-door|tray in|into|to|for? the? sump|pan?",
        "baffled|baffle sump|pan|tray|plate was? fitted|installed|made|added",
        "baffled the? sump|pan",
    ),
    "tank_tap_opened": (
        "turned|opened|switched the? oil? tank? tap|valve|cock|stopcock on|open?",
        "opened the? oil? tap|valve",
    ),
}
