"""Words that state nothing by themselves: left over, they are not reported as not understood."""

from __future__ import annotations

from knowledge.lexicon.words.word_sets import set_of as _set

#: said in passing, to or of people, or to lead on
_CHATTER = _set(
    "only mind though anyway anyhow basically actually literally honestly obviously apparently seemingly however "
    "otherwise meanwhile besides plus etc lol haha tbh imo btw fwiw ok okay yes yeah yep yup nah right alright hi "
    "hey hello guys folks all everyone everybody mate mates pal buddy bro lads gents cheers thanks ta please sorry "
    "regards update edit quick question post forum thread ps duh doh oops ugh argh grr sigh happy sure guess "
    "theres there heres thats whats its itll im ive id ill youre youve shes hes theyre weve were dont cant ie eg "
    "quite rather fairly pretty really very somewhat kinda sorta bit lot lots bunch few some any each both either "
    "own such enough else ever even yet already soon later earlier recently lately usually normally often "
    "sometimes always everywhere anywhere somewhere somehow whatever whichever whoever somebody someone anybody "
    "others rest thing things stuff way ways bloke guy chap owner skipper friend brother dad neighbour neighbor"
)
#: when or where it was, which no entry holds
_TIMES = _set(
    "today yesterday tonight morning afternoon evening night day days week weeks weekend month months year years "
    "hour hours minute minutes second seconds moment while monday tuesday wednesday thursday friday saturday "
    "sunday january february march april may june july august september october november december jan feb mar apr "
    "jun jul aug sept oct nov dec spring summer autumn fall winter season fortnight during until till"
)
_PLACES = _set(
    "front rear side sides top bottom left right middle inside outside behind under underneath above below beside "
    "between across along through onto into around near next end corner place spot home garage workshop yard drive "
    "motorway highway road street town harbour harbor marina dock field barn shed track mile miles"
)
#: lead to what a sentence states; where something of it was read they add nothing
LEADING = _set(
    "one ones used found find finding pulled pull took take taken dropped drop lifted drained changed fitted put stripped "
    "measured removed checked check ran run runs running bought cut stuck swapped tried noticed looked "
    "look sits sit gives give says say stays stay began begin makes make making turns turn comes come goes go went climbs "
    "climb shows reads needle pointer seems seem looks noticed reports reckons owner local small big large piece "
    "couple pair whole lot lots single twin original stock level badly usual new old caught quick picked ended "
    "started start starts engine engines motor bike car van truck boat tractor bulkhead firewall panel dash glass"
)
#: what everything here is about
_SUBJECT = _set(
    "and but also just so oil pressure pressur gauge engine motor read reading show start petrol gasoline"
)
FILLERS = _CHATTER | _TIMES | _PLACES | _SUBJECT
