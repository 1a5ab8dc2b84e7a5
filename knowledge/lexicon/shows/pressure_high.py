"""Words for high pressure."""

from __future__ import annotations

from knowledge.reports.words import Shows

_P = "pressure|gauge|needle|psi|reading|indication|oil-pressure"

#: what shows, by what is said
SHOWS: dict[Shows, tuple[str, ...]] = {
    Shows.HIGH: (
        f"high|excessive|too-high oil? {_P}",
        f"{_P} is|was|reads|goes|gets|seems|stays|extremely|too|very|way|really|runs|shows|extremely|too|very|way|really? "
        "high|excessive",
        f"{_P} extremely|too|very|way|really? high",
        f"{_P} pegged|pegs|pinned|off-the-clock",
        "pegs|pegged|pinned at|on|to the? max|maximum",
        "it still|just pegs",
        f"{_P} stays|stayed|sits|is|stands|stood|stuck|reads|goes at|on|to the? maximum|max|top|full",
        "off the clock|scale|dial|top",
        "too much oil? pressure",
        "over pressure|pressured",
        "pressure climbs|climbed|rises|shoots above|past|over",
        f"{_P} climbs|climbed|goes|went|jumps|jumped|shoots|shot|swings|swung|reads|straight|at|to|once|right|all|sits|sat|rises|rose full|top|maximum|max|off|past|beyond|over the? scale|deflection|clock|gauge|end|top|stop|way",
        f"{_P} .. above|over|past|beyond the? green|normal|limit|relief|maximum arc|zone|line|setting?",
        "needle|gauge .. off|past the? scale|clock|end|top|right|stop",
        "full|hard over scale|deflection|right|on",
        f"{_P} through|thru the? roof",
        f"sky|dangerously|abnormally|unusually|ridiculously|stupidly high oil? {_P}",
        "maxed|maxing|pegging|buried out|on|the",
        f"{_P} maxed|maxes|buried|slammed|pegging",
        f"{_P} up|high by|around|at|over about? @pressure|@number|@range",
        f"{_P} hard over|right|against|to|up the? right|top|max hand? stop|side|end|peg?",
        f"{_P} goes|swings|moves|went|jumps|is all the way over|round|right|up|across",
        f"{_P} hits|hit|hitting|reaches|reached|reads|wraps|wrapped|bangs|buried the|on|at|around|off|against stop|peg|end|top|max|maximum",
        f"{_P} went|goes|shot|shoots|flew up? to the? max|maximum|limit",
        f"{_P} far|much|way too high|much",
        f"{_P} climbs|climbed|climbing and climbs|climbed|climbing",
        f"{_P} keeps|kept on? climbing|rising",
        f"{_P} is|was|looks|sky|stupid|crazy sky? =high|sky-high",
        f"{_P} shows|showed|reads|gives|gave|registers far|much|way|well? too high|large|great a figure|reading|value",
        "far|much|way too high a figure|reading|pressure",
        f"{_P} is|was|goes|went|got|reads so|that =high",
        f"{_P} well|far|way|much|miles? above|over|past|beyond the? book|spec|manual|handbook|figure|figures|usual",
        f"higher|more oil? {_P} than the? book|spec|manual|normal|usual|before|it",
        f"{_P} too|very much|great|big|strong|large",
        f"{_P} .. over|past|beyond|off|round|around the? top|end of? the? scale|dial|gauge|range",
        f"{_P} is|was|sits|sat|reads|goes|went|runs|hovers|close|nearly|almost|up|right|near|very near|close|up|at|to|on|against the? =top|=maximum|=max|=redline|upper|high of? the|its? scale|dial|gauge|end|limit|maximum|max?",
        f"{_P} is|was|sits|sat|reads|goes|went|runs|close|nearly|almost|up|right|near|up|at|to|on|against the? =end of the|its scale|dial|gauge",
        f"{_P} .. close|near|up|almost to? the? red line|limit|mark at|maximum|max|top|on",
        f"{_P} .. round|over|across to the? stop|end|peg|pin|max|maximum",
        "pegs|pegged|pins|pinned|buries|buried|maxes|maxed the|my oil? pressure? gauge|needle",
        "going|climbing|rising|went|climbed|rose up? past|above|over|beyond @number|@pressure and|until|before|then",
        f"{_P} hits|hit|hitting|on|at|against|touches|reaches|reached|finds the? top|upper|right|far|maximum|max peg|stop|pin|end|mark",
        f"{_P} runs|ran|run|running|is|was|being|sits|stays|reads|reading|goes|going way|far|much|a-bit|really|very|too? too? high",
        f"{_P} shoots|shot|shoot|shooting|rockets|rocketed|spikes|spiked|spike|spiking|soars|soared|soar|climbs|climbed|jumps|jumped|goes|went|go up? sky-high|skyhigh|sky|through-the-roof|way-up|off-the-charts high?",
        f"{_P} spikes|spiked|spiking|skyrockets|skyrocketed|soars|soared|rockets|rocketed",
        "spike|spikes|surge in|of oil? pressure",
        f"{_P} goes|went|go|going|gone|shoots|shot|climbs|climbed|is|was|reads|runs right|straight|way|clean? off|past|beyond|over the? scale|dial|clock|chart|charts|top|end",
        f"{_P} pegged|pinned|maxed|maxes|max|maxing|buried|topped|tops|jammed|stuck out|at|on|to|against|over|hard? the? max|maximum|top|high|right|stop|limit|full side|end|peg?",
        "pegged|pinned|=maxed|maxed-out|buried|pegging|sky-high|skyhigh|off-the-scale out? oil? gauge|needle|pressure|psi",
        f"{_P} reads|read|reading|is|was|runs|sits|being|showing way|far|much|crazy|insanely|stupidly|abnormally|unusually|ridiculously|too too? high",
        f"{_P} =off the? scale|clock|dial|chart|charts",
    ),
}
#: the same of "it", where gauge, pressure or lamp was named last: "It goes to nothing in bends"
OF_THE_GAUGE: dict[Shows, tuple[str, ...]] = {
    Shows.HIGH: (
        "pegs|pegged|maxes|maxed|pins|pinned|buries out|itself|at|on|over|to|against",
        "goes|went|shoots|shot|climbs|climbed|is|was|reads right|straight|way? off|past the? scale|dial|clock|chart|charts|top",
        "is|was|reads|read|runs|goes way|far|much|too|really? too? high|pegged|pinned|maxed",
        "shoots|shot|spikes|spiked|rockets|rocketed|soars up|sky-high|high?",
    ),
}
