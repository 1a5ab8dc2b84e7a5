"""Words for normal pressure."""

from __future__ import annotations

from knowledge.reports.words import Shows

_P = "pressure|gauge|needle|psi|reading|indication|oil-pressure"
_LAMP_OR_SOUNDER = "light|lamp|buzzer|alarm|beeper|bleeper|sounder|annunciator"

#: what shows, by what is said
SHOWS: dict[Shows, tuple[str, ...]] = {
    Shows.NORMAL: (
        f"{_P} goes|comes|came|went|rises|rose|climbs|builds =up to|as|like? normal|normally|usual|always|fine|nicely",
        f"{_P} is|was|reads|looks|seems|stays|are|comes|goes|returns|came|went|back|to|as|all|shows|back|to|perfectly? "
        "good|fine|normal|ok|okay|great|perfect|healthy",
        f"{_P} is|was|reads|looks|seems|stays|are|shows|all|back|to|came|comes right",
        "good|normal|great|fine|healthy|decent|perfect|full|proper|plenty oil? pressure|psi|reading",
        f"{_P} good|fine|normal|ok|okay|great|perfect|healthy",
        "comes|came|goes|come back up? when|as|if|once|with",
        "goes|went|go out|off when|as|if|once|with",
        "goes|went|go|gone out|off as? soon|immediately|straight|right|instantly|directly away? as|when|if|once",
        "plenty of oil? pressure",
        "reads normal|fine|good",
        "its|it's|it|is|was|all|otherwise|but|and|perfectly|runs fine|ok|okay|good|normal|great",
        "fine|ok|okay|good|great|normal|decent",
        f"{_P} picks|picked|comes|came|rises|rose|climbs|climbed|recovers|recovered|increases|returns|builds up|back|right? up? when|as|if|once|with|above|at|on|upon",
        f"{_P} .. holds|held|holding steady|up|well|good|constant|fine|now",
        f"{_P} =now holds",
        f"{_P} is|was|reads|within|inside|in|to|up|well|right|back|where|its|it|should|be|the? spec|limits|specification|specifications|normal|green|range",
        f"{_P} strong|steady|rock-solid|solid|spot-on|excellent|perfectly|perfect|brilliant|healthy|alright|satisfactory|adequate|correct",
        f"{_P} is|was|stays|stayed|remains|remained|remained|holds|held|looks|seems|all|rock|very|perfectly|completely|absolutely|nice|quite strong|steady|solid|excellent|spot|alright|healthy|constant|satisfactory|correct|up",
        "good|normal|great|fine|healthy|decent|perfect|full|proper|plenty|excellent|strong|adequate|steady|correct|satisfactory|nice of? engine? oil? pressure|psi|reading|readings",
        f"{_P} measured|checked|tested|proved|proven|confirmed|verified as|to|be|at? good|normal|right|fine|ok|correct|spec|specification",
        f"{_P} =didnt|=doesnt|=never drop|drops|dropped|fall|falls|waver|wavers|falter|faltered",
        f"{_P} did|does not drop|fall|waver|falter",
        f"{_P} has|have|had never|always? been? good|normal|fine|perfect|ok",
        f"{_LAMP_OR_SOUNDER} =goes|=went|=go =out|=off =when|=as|=if|=once|=with|=above|=at|=just|=immediately|=soon",
        f"{_P} jumped|came|shot|went|rose|sprang|climbed|jumps right|straight? back? up? to? normal|full|where|spec|good",
        f"{_P} builds|built|comes|came|returns|returned|goes|went|climbs|climbed|rises|rose|stays|stayed|sits|gets back|right? up? to|in|into|within the? normal|usual|safe|correct range|level|levels|zone|reading",
        f"{_P} when|while|with|at|on .. is|was|stays|stayed good|fine|normal|excellent|perfect|healthy|great",
        f"{_P} when|while .. and running|driving|revved is|was|stays good|fine|normal|excellent|perfect|healthy|great",
        "up|back|returns|returned|recovers|goes|comes|came to? normal|full pressure?",
        f"{_P} .. reads|read|reading normally|correctly|properly|right|fine",
        f"{_P} .. =as =ever|=usual|=always",
        f"{_P} bang|spot|dead|right on|where",
        "back to normal",
        "usual oil? pressure",
        "pressure|pressures ,|:|-|;|and|which|both|all ,|it|they|all? all|which|it|they|readings|readings? is|was|were|are|looked|looks|seemed|came|its|reads? "
        "perfectly|all|quite|pretty|within|in|out|back? good|fine|normal|ok|okay|great|perfect|healthy|spec",
        f"{_P} is|was|stays|stayed|sits|sat|remains|remained|always|right|still|exactly? always|right|still|exactly? where it|i|we|you should|expect|expected|belongs|normally|usually|always|like|want",
        f"{_P} never|didnt|doesnt moved|moves|move|budged|dipped|dip|dropped|drop|flickered|twitched|changed",
        "perfect|fine|good|great|ok|okay|normal|spot-on|faultless|strong|solid when|on|at|with|from|if|while? a|an|the|it's|its|is|stone? =cold",
    ),
}
#: the same where a clause begins so, in a text that speaks of the pressure: "drops when hot"
BARE: dict[Shows, tuple[str, ...]] = {
    Shows.NORMAL: (
        "picks|comes|goes|rises|climbs|shoots|jumps|recovers up|back|right =up|=back? =when|=as|=if|=once|=with|=above|=on|=at",
    ),
}
