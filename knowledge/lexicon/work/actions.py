"""What is done to a part of an engine, by whom, and what says that nothing was done."""

from __future__ import annotations

from knowledge.reports.words import Done, Hands

#: an action, by the words said of it; ``Done`` is what an entry of earlier work calls it
ACTIONS: dict[Done, tuple[str, ...]] = {
    Done.RENEWED: (
        "in|at|to|into the|a|my|local? shop|garage|dealer|dealers|workshop|mechanic|mechanics for|to-have|to-get a|an|the|my|new",
        "i|we =change|=replace|=renew|=mount",
        "full|complete|whole|matched =set|kit of",
        "put|stuck|fitted|got|bolted|bought a|an|the straight|good|better|decent|secondhand|genuine|fresh|spare|rebuilt|proper one in|on?",
        "replaced|replace|replacing|renewed|renewing|swapped|swapping|swap|=fitted|=fitting|installed|installing|exchanged|exchanging|swopped|substituted|substituting|interchanged",
        "changed|changing|change",
        "put|rolled in|on a? set? of?",
        "put|rolled a|another|the =set of",
        "threw a",
        "put|fitted|swapped|bolted the|my? original|old|previous",
        "brand? new|another|different|second|third|fourth|2nd|3rd|4th|fresh|replacement|spare|borrowed|reproduction|repro",
        "new|another|fresh|second set|pair of",
        "known good",
        "known-good|=substituted|=substituting|=subbed|=traded",
        "was|were|been|got|had|all|both|just =done|=redone",
        "=done|=redone|=added",
        "=done last|by|this|about|in|just|recently|professionally|@time",
        "=did|=done|=doing|=tried was? the|my|its|all|both|a",
        "put|stuck|threw|bunged|slapped|popped a|an|the|in|on correct|right|new|different|another|used? one|in|on?",
        "is|are|was brand? new",
        "upgraded|upgrading|mounted to|the|my|a|an",
        "=done|=tried|=did|=changed|=replaced|=renewed|=swapped|=new already|since|are|is|so-far|so? far? :",
        "hammered|knocked|pressed|=tapped|screwed|bolted|spliced|let|soldered|welded in",
    ),
    Done.REBUILT: (
        "i|we =repair|=rebuild|=weld",
        "=remade|=redid|=recrimped|=reterminated",
        "rebuilt|rebuild|rebuilding|overhauled|overhaul|overhauling|reconditioned|restored|refurbished|reground|"
        "recon|refreshed|remanufactured|reman|regrinding|rebushed|rebushing|rebushes",
        "=freshened|=freshening|=freshen =up?",
        "=repaired|=mended|=taped|=spliced|=insulated|=patched|=brazed|=straightened|=resoldered|=soldered|=welded|=unkinked",
    ),
    Done.CLEANED: (
        "i|we =clean|=wash|=clear|=free",
        "=cleaned|=cleaning|=cleared|=clearing|washed|flushed|flushing|unblocked|freed|=rodded|scrubbed|=freeing|=unblocking|=rodding|=brushed|=brushing|=soaked|=unclogged|=unclogging",
        "=ive|=have|=has|=was|=were|=been|=had =blown",
        "off|out|apart|down to =clean",
        "in|into|through a|the|my? ultrasonic|sonic|parts? bath|washer|cleaner",
        "in|into|through a|the|my? bath|bucket|tub|tray|tank|bowl|washer of cleaner|solvent|paraffin|petrol|diesel|degreaser|kerosene",
        "blew|blown|blow it|them|that|the? out|through",
        "=blew|=blasted|=poked|=blowing|=blasting|=poking|=lapping|=polishing|=honing|=facing|=resurfacing|=resurfaced|=skimming",
        "=lapped|=polished|=dressed|=honed|=linished|=unstuck|=degreased|=decoked|=rinsed|=wiped|=faced|=refaced|=reseated|=recut",
    ),
    Done.ADJUSTED: (
        "i|we =tighten|=adjust|=shim",
        "shimmed|shimming|stretched|adjusted|adjusting|reset|tightened|tightening|torqued|retorqued|regapped",
        "turned up|in",
        "wound in|up",
        "set up?",
        "=raised|=lowered|=spaced|=backed|=nipped|=retorqued|=torqued",
        "=spun|=screwed|=nipped|did it|them|up|the? up|on|tighter",
        "brought|wound|turned|bumped|raised|set|put|cranked|tweaked|nudged it|them up|to|at|down",
        "screwed|wound|backed|turned|=cranked it|them? in|up|down|out",
        "turned in|up|down",  # not "it turned out"
        "=screwed|=wound|=winding|=screwing",
        "=winding|=screwing|=turning|=backing|=cranking|=bumping|=raising|=setting it|them up|in|to|out|down",
        "topped|topping",
    ),
    Done.REFITTED: (
        "refitted|resealed|=reseal|=resealing|reseated|reinstalled|removed|pulled|dropped|=transferred|=transferring|=reused|=reusing",
        "taken|took off|out",
        "re-stabbed|restabbed|restab|unseated",
        "dropped|put|popped|pushed it|them back in|on|home?",
        "remounted|re-mounted|rebolted|re-bolted",
        "re-gasketed|regasketed",
    ),
    Done.OPENED: (
        "i|we =open",
        "opened|inspected|stripped|=dismantled|=disassembled",
        "took|taken apart",
        "tore down",
    ),
}


#: what was opened before something was seen
OPENED_AND_FOUND = (
    "pulled|took|removed|dropped|opened|unscrewed|stripped|undid|drained .. and|to|, found|find|saw|see|discovered",
)

#: "nobody has touched it"
NOTHING_DONE = (
    "nothing|none|nobody .. done|=touched|=changed|worked",
    "@not been? =touched anything|it|the?",
    "@not worked on",
    "@not been apart|opened",
    "never been? apart|opened|=touched|rebuilt",
    "no work done?",
)

HANDS: dict[Hands, tuple[str, ...]] = {
    Hands.MACHINE_SHOP: ("machine|machinist shop|did?", "machinist"),
    Hands.SHOP: ("garage|dealer|mechanic|workshop|shop|dealership|yard", "professionally"),
    Hands.OWNER: (
        "i|myself|we did|rebuilt|replaced|changed|fitted|installed|built",
        "did it myself",
    ),
    Hands.EARLIER_OWNER: ("previous|last|prior|former owner", "po"),
}
