"""What is seen or known of running and idling, in phrases of more than the book's own ``also``."""

from __future__ import annotations

_FINE = (
    "fine|well|great|perfect|perfectly|smooth|smoothly|normal|normally|sweet|sweetly|quiet|quietly|strong|strongly|lovely|"
    "healthy|beautifully|nicely|nice|superbly|faultlessly|flawlessly|ok|okay|happily|good"
)
_HOW = "and|perfectly|really|absolutely|as|just|otherwise|very|quite|so|seemed|seems|was|is|still|seemingly|nice|all|always|runs|ran"
#: the finding, by what is said when it is there
SIGHTS_PRESSURE: dict[str, tuple[str, ...]] = {
    "engine_runs_normally": (
        f"=runs|=running|=ran|=sounds|=drives|=starts|=idles|=sounded|=drove|=run|=pulls|=pulled|=sounding {_HOW}? {_HOW}? {_FINE}",
        f"engine|motor {_HOW}|sounds|runs|running|ran|sounded? {_HOW}? {_FINE} throughout|otherwise?",
        "engine|motor otherwise|otherwise? normal|fine|smooth",
        "it is|was|runs? =otherwise normal|fine|smooth|ok|good",
        "no|without strange|odd|funny|weird|unusual|abnormal|bad|other|any|mechanical|untoward|nasty|horrible|extra|engine|loud? noise|noises|sounds|sound",
        "sounds|runs|running|ran|sounded|starts|drives and|just? just? as|like|the? always|ever|usual|before|same|new|well|normal|normally",
        "sounds|sounded|still sounds|sweet sweet",
        "ran|runs|running without complaint|problem|problems|trouble|distress|issue|issues|fault",
        "seemed|seems|seem otherwise|perfectly|absolutely? fine|ok|normal otherwise|in|apart?",
        "no change|difference in|to the? sound|running|note",
        "oil|propeller|engine temperature|speed|power and power|temperature|speed normal|steady",
        "runs|ran|running like a charm|dream|champ|clock|train|top",
    ),
    "idle_below_spec": (
        "idle|idling|idles|tickover speed|is|was|set|too|very|rather|only|really|at|bit? too|very|a|bit|rather|down? low|slow|slowly",
        "low|slow idle|tickover speed?",
        "idles|idling|idle at|around|about|down only|about|just|around|to? 400|450|500|350|300",
    ),
    "nothing_warned": (
        "=no =warning|=warnings of|from|whatsoever|at|before|from",
        "no oil? pressure? lamp|light|warning was|ever|at ever? seen|lit|any",
        "alarm|light|lamp|buzzer|warning never|didnt came|went|come|go|sounded|sound|warned|showed|show on|off|up",
        "gauge|light|lamp|alarm never|didnt gave|give|showed|show any? warning|sign",
        "nothing|nobody|never noticed on|by|at the? factory|stock|dash|panel|original? gauge|lamp",
        "fault|loss|problem|pressure was|went? never|not noticed|spotted on|by|until|at",
    ),
    "general_alarm": (
        "general|master|unspecified engine? alarm|warning|caution",
        "check engine light|lamp|alarm|message",
        "dash whistle|buzzer|whistle",
        "alarm|warning|light of|with unknown|no|without label|meaning|name",
    ),
    "stepped_down_and_stayed": (
        "dropped|fell|stepped|settled|slid|went|drop by|about|down|clearly|a|to|at .. stayed|stays|remained|remains|settled there|low|lower|that|at",
        "dropped|fell|stepped|went @pressure|@number .. stayed|remained|stays there|at",
        "stepped|settled clearly|down|lower lower|and|low|at?",
        "then|and settled|stayed clearly? lower",
    ),
    "sank_while_running": (
        "pressure|gauge|needle kept|keeps|continued to? falling|dropping|sinking|fall|drop|sink",
        "pressure|gauge|needle fell|sank|slid|dropped slowly|steadily|gradually during|in|over|while|through",
        "low and falling|dropping|sinking",
        "slid|sank|sagged|slipped from|down from? @pressure to|from",
    ),
    "back_when_slowed": (
        "pressure|it|needle|gauge came|comes|come|went|goes|was|is|climbed right|straight|all|up|slowly? back|up|right|normal to? .. when|as|once|after|if|soon i|we|he|she|you|it|the|as slowed|slow|slows|lifted|lift|eased|ease|backed|back|throttled|let",
        "back|returned|recovered to|at? normal .. when|as|once|soon .. slowed|slow|lifted|lift|eased|backed|throttled",
        "slowed|slow|lifted|eased|backed|throttled down|off|up|back .. and|, .. pressure|gauge|needle came|comes|returned|back|went|recovered",
    ),
}
