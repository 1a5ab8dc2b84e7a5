"""Short everyday names of findings, and patterns of pressure as people put them in a few words."""

from __future__ import annotations

_P = "pressure|gauge|needle|psi|reading|it"
_LAMP = "lamp|light|buzzer|alarm|warning"
_REVS = "=revs|=rpm|=revved|=rev|=revving|=speed|=throttle|=gas|=accelerate|=faster"
_NO_MATTER = "however|whatever|regardless|no|irrespective|matter"
_BACK = "came|comes|returned|returns|recovered|recovers"
_CURED = "cured|fixed|solved|sorted|did|put"
_CUTS = "=backed|=eased|=lifted|=slowed|=throttled|=throttle|=slow|=slowing|=easing|=lift|=ease"
_GETS = "reads|shows|goes|went|hits|hit|reached|reaches|reading|showing|read|showed"
#: the finding, by what is said when it is there
SIGHTS_SHORT: dict[str, tuple[str, ...]] = {
    "capped_low": (
        f"{_P} @not =rise|=rises|=climb|=climbs|=increase|=increases|=move|=change|=improve|=respond any|much|far|further|higher|up|at|all|to? with|when|as|if|under|to .. {_REVS}",
        f"{_P} @not go|goes|come|comes|get|gets any? further|higher|better|more|up with|when|as|if|however|no .. {_REVS}",
        f"{_P} stops|stopped|quits =rising|=climbing|=increasing",
        f"{_P} tops|maxes|topped|maxed|peaks|peaked|plateaus|plateaued|levels|levelled|leveled =out|=off =low|=early|=there",
        "tops|maxes|peaks|plateaus|levels out|off =low|=early",
        "@not|wont|will go|come|get|rise above|past|over|beyond a|some certain pressure|point|figure|value|level",
        f"hardly|barely|scarcely =goes|=go|=rises|=rise|=climbs|=any up|higher|higher? when|with|as|if .. {_REVS}",
        f"{_P} stays|stayed|remains|is|was low|down {_NO_MATTER} .. {_REVS}",
        f"no|little =rise|=increase|=more in? pressure? with|when|as .. {_REVS}",
    ),
    "needle_follows_loads": (
        "when|with|if|as|whenever|once|every-time .. headlamps|headlights|=lights|wipers|heater|fan|blower|indicators|radio on? the|my|its? oil? pressure? needle|gauge|reading|pressure moves|drops|drop|jumps|swings|falls|rises|dips|kicks|changes|flicks|goes|twitches",
    ),
    "lamp_dead_with_key_on": (
        f"{_LAMP} should|ought|supposed to? come|light|glow|sound|work on|up? .. but|and|now|, .. doesnt|didnt|isnt|wont|neither|@not do|does|work|light|come?",
        f"neither {_LAMP} nor the? {_LAMP} works|work|comes|come|lights|sounds .. key|ignition|switch|turn",
    ),
    "tank_empties_running": (
        "scavenge|return pump|gears|stage? @not =bring|=bringing|=return|=returning|=pull|=pulling|=lift|=lifting|=send|=sending|=pick|=picking|=draw|=drawing|=pump|=pumping",
        "oil|it @not being|getting? =brought|=pumped|=sent|=lifted|=scavenged back? to|into the? tank",
        "oil|it @not being|getting? =brought|=pumped|=sent|=lifted|=scavenged back? from|out .. sump|crankcase|case|pan .. scavenge?",
    ),
    "no_return_to_tank": (
        "no|zero|nil oil coming|comming|comes|come|came|returning|returns|returned|return back? to|into|in|at the? oil? tank|bag|return?",
        "oil|it @not being|getting? =coming|=comming|=come|=comes|=returned|=returning|=return|=returns back? to|into|in the? oil? tank|bag",
        "nothing coming|comming|comes|came|returning back? to|into|in|out-of the? oil? tank|bag|return",
        "no|nothing in|at|from|out-of the? oil? return pipe|line|hose",
    ),
    "back_when_slowed": (
        f"{_P} {_BACK} back? up? again? at|on|in|with idle|tickover",
        f"{_P}? {_BACK} back? up? again? when|as|once|if|after|by .. {_CUTS}",
        f"{_P} is|was|goes|went fine|good|normal|ok|okay|back|right again? when|as|once|if|after .. {_CUTS}",
    ),
    "fades_at_speed_back_after_rest": (
        "stop|stopped|rest|wait|waited|pause|park|pull-over for? @minutes|minutes|a-while|while|bit|hour|@time and|then|, it|its|pressure|all? is|its|was|comes|came|goes? good|fine|back|normal|ok|okay|up|right",
        f"{_P} {_BACK} back? again? after|once|if|when .. =stopping|=stop|=stopped|=rest|=shutdown|=parked",
        "fades|drops|falls|sags|goes .. after .. minutes|miles at speed|flat|wide|full .. back|fine|good after .. rest|stop|stopping",
    ),
    "sags_as_oil_heats": (
        "pressure|gauge|needle|it sags|drops|falls|sinks|goes|fades .. as|once|when the? oil heats|gets|warms|temperature =heats|=hot|=up|=rises|=climbs",
        f"{_P} {_BACK} back? again? after|once|when .. =cooled|=cools|=cooling|=cool",
    ),
    "low_at_all_speeds": (
        f"{_P} is|was|reads|stays|just? =always low|down",
        "low|down everywhere|throughout the? range|revs|board?",
        "low|down at all|any|every speeds|speed|revs|rpm|rpms",
        f"low|down {_NO_MATTER} .. revs|speed|rpm|temperature",
        "low =all =the =time",
        "low =hot =and|=or =cold",
        "low =cold =and|=or =hot",
        "low at|from idle and|or|to at? speed|cruise|cruising|highway|revs",
    ),
    "never_reaches_setting_cold": (
        "@not reach|reaches|get|gets|make|makes|hit|hits|see|come to? relief|full|blow-off pressure|setting .. cold",
        "even|when =cold .. @not reach|reaches|get|gets|make|makes|hit|hits up? to? relief|full|blow-off pressure|setting",
        "never comes|gets up? to full pressure|relief",
    ),
    "climbs_past_setting": (
        "pressure|gauge|needle keeps|kept|continues going|climbing|rising|to? up? with|as|when .. =revs|=rpm|=revved|=rev|=throttle",
        "climbs|rises|shoots past|over|above|beyond the? relief setting|pressure|valve?",
    ),
    "more_than_it_can_make": (
        f"{_GETS} over|above|past|more 100|110|120|130|140|150|160",
        "impossible|ridiculous|silly|crazy|unbelievable|impossibly|ridiculously high? reading|pressure|readings",
        "needle|gauge|it =hard over|against|round",
        "=pegged =out|=full|=high|=solid|=hard|=to|=at|=past|=off",
        f"{_P} =swung|=swings|=shot|=shoots|=went|=goes|=flew right|straight|way|clean? past|beyond|off the? end|top|edge of? the? scale|dial|gauge",
        "=full =scale deflection?",
    ),
    "no_pattern_to_it": (
        "at random|randomly",
        "no|without|@not any|a|much|real|clear|set? pattern|rhyme|logic to|or|in? it?",
        "no rhyme or reason",
        "unpredictable|unpredictably",
        "comes|happens|flickers|does|drops|it whenever it? likes|wants|feels",
        "hot or cold|idle|fast .. no|makes difference",
        "random|randomly times|drops|moments|intervals|occasions|flickers",
    ),
    "engine_runs_rough": (
        "engine|motor|it =shakes|=stumbles|=hunts|=misses|=bucks|=coughs|=surges|=splutters|=sputters|=judders",
        "=shakes|=stumbles|=shaking|=stumbling|=splutters at|on|under idle|tickover|load|acceleration|speed",
    ),
    "goes_after_minutes": (
        "=fine|=good|=ok|=okay|=normal|=great|=right|=perfect for the|about|around? =first|@minutes few|couple|ten|five|twenty|half? miles|minutes|kilometres|hour|kms? .. then|after|and|until",
        "=fine|=good|=ok|=okay|=normal|=great for the first few|couple|ten|five|twenty|half|@minutes? miles|minutes|hour|kilometres",
        "after|every|each|within =about|=some|=a? =ten|=few|=couple|=@minutes minutes? .. =every|=each =time|=run|=trip",
    ),
    "ten_seconds_or_more": (
        "takes|took|taking|needs ages|forever|eternity|yonks|minute|ten|fifteen|twenty|thirty|ages|age seconds? to|before|till|until|for .. build|come|make|rise|get|show|oil|pressure",
        "long|big|scary|worrying delay|wait|pause|time before|until|till|to the? oil? pressure|gauge|it|lamp|light|anything",
    ),
    "worse_in_the_wet": (
        "worse|only|happens|does|comes|goes|plays|acts|always|flickers|drops it? up|mostly|mainly? in|when|after|on the|it|it's|wet|damp|rainy? =rain|=wet|=damp|=raining|=rains|=rained|=drizzle|=weather|=days",
        "after|since|when|following washing|pressure|hosing|steam|jet =washing|=the|=down|=cleaning|=wash .. engine|bay|motor|car|tractor|boat",
    ),
    "noise_with_pressure_loss": (
        "noise|rattle|knock|clatter|tapping|ticking|grinding|clattering =stops|=goes|=disappears|=quietens|=ceases|=vanishes|=quiets away|down|off? as|when|once|with .. pressure|light .. back|returns|up|comes|rises|out|off",
        "noise|rattle|knock|clatter|tapping|ticking|grinding|clattering =starts|=comes|=begins|=sets in|on|up? as|when|once|with|whenever .. pressure|light|needle .. drops|goes|falls|on|low|comes|down",
        "noise|rattle|knock|clatter|tapping|ticking|grinding and|plus|with light|lamp|needle|gauge come|comes|drop|go|together|at|always? together|same",
        "rattles|clatters|knocks|taps|ticks|grinds until|till .. pressure .. up|back|builds|comes|returns",
    ),
    "long_unchanged": (
        f"{_P} has|is|was|always|read|been|ever =always|=ever read|reads|been|shown|showed|done like? so|that|this|the|there same?",
        "always|ever been|was|read|done like? that|this|so since|from|same|low?",
        "been like that|this for|since|as|ever @years|years|ages|long|i|we|new",
        "never|not been? any different|higher|better|more since|as|in|than? .. had|owned|bought|have|years",
    ),
    "grows_worse": (
        "progressively|steadily|gradually|noticeably|rapidly =worse",
        "getting|gets|got|becoming|growing worse|lower|weaker each|every|by|with|all =time|=run|=trip|=day|=week|=outing|=start",
        "at? first only|just|it hot|at|when|was|flickered .. now all|always|constantly|every|everywhere|cold|at",
        "worse|lower every|each time|run|trip|day|week|outing",
    ),
    "low_only_when_level_low": (
        "only|just when|if|once it's|it|is|the|level|oil|gets|a|about? quart|litre|liter|pint|bit|down|low .. low|down",
        "light|lamp|flicker|flickers|gauge|pressure only|just? when|if .. quart|litre|liter|pint|level|oil low|down",
        "fine|ok|good|normal|never with|when|as|if .. sump|level|oil|stick =full|=right|=up|=topped",
    ),
    "gone_at_the_next_start": (
        "good|fine|had|normal|pressure|perfect when .. parked|stopped|off|down|left .. next|morning|now|restart|restarted .. no|none|nothing|zero|nil",
        "no|zero|nil|none oil? pressure on? the? next|following morning|day|time|start",
        "lost|gone|disappeared|vanished it? overnight",
    ),
    "began_after_revving_hard": (
        "after|since|when .. over-revved|over-revving|overrevved|overrevving|overrev|over-rev|redlined|bounced|redline|missed limiter|gear|shift|it|the?",
        "missed|fluffed a? gear|shift|downshift .. and|then|revved",
        "revved|took|ran to|past|into|over the? limiter|redline|red-line|7000|8000 .. then|since|after|and",
    ),
    "drive_partner_stopped": (
        "engine|motor|it died|quit|stopped|stalled|cut =when|=as|=with|=same|=and .. pressure .. went|gone|dropped|died|disappeared|lost",
        "rev-counter|tacho|tachometer|ignition|spark|distributor|sparks|mechanical stopped|died|quit|went|dead at|as|when|with|too|also|counter .. time|pressure|too|also|same",
    ),
    "instrument_just_changed": (
        "since|after|when|from i|we|he|they|putting|fitting|installing|adding|changing|swapping|new|fitted|added|put|changed|an|a aftermarket|new|a|the|different|second|mechanical|electric gauge|sender|cluster|sensor",
    ),
    "unsteadier_with_revs": (
        "worse|wilder|more|faster the|at|with|as higher|more|revs|speed .. revs|rev|rpm|flicker|bounce",
        "flicker|bounce|wavering|swinging|jumping gets|is|becomes|got worse|wilder with|as|at|when the? revs|rpm|speed|higher",
    ),
    "low_first_minutes_then_good": (
        "low|poor|slow|nothing at|for the|a first|start|few|couple minutes|minute|bit|then|but|and fine|good|normal|came|up|ok",
        "came|comes|built|rose|went up after|in|within a|few|couple|some|several|two|three minutes of|after the? first|running|start",
    ),
    "loss_is_passing": (
        "good|normal|full? pressure|gauge|needle|it|reading =comes|=came|=recovers|=recovered|=returns|=returned|=goes back|good|to|normal? =by =itself",
        "then|and|it =comes|=came|=recovers|=recovered|=returns|=returned right? back|normal|by|on its|itself|own by|on itself|its own?",
    ),
    "flickers_only_at_speed": (
        "flickers|flutters|unsteady|wavers|bounces|shakes|jumps|jumpy|dances only|just above|over|at|when|past .. revs|rpm|speed|@rpm|3000|2000|revved|high",
        "steady|fine|rock at|up|to|until idle|tickover|about|3000|@rpm but|then|and flickers|flutters|bounces|shakes|jumps|wavers .. =revs|=speed|=above|=over|=that|=revved",
    ),
    "flickers_only_at_hot_idle": (
        "flickers|flutters|unsteady|wavers|bounces|shakes only|just at|on|when hot|warm idle|tickover|idling?",
        "lamp|light flickers|flickering|flicker|glows|glimmers only|just? at|on|when .. =hot|=warm =idle|=tickover|=idling",
        "flickers|flicker|glimmers|glows at|on|when hot|warm|warmed idle|tickover|idling up? .. out|off|away|gone|stops|steady|fine|clears .. throttle|revs|rev|gas|speed|off|blip|touch",
    ),
    "rises_just_off_idle": (
        "fine|good|normal|ok|right|up|jumps|comes just|straight|back|right|quickly|immediately? off|above idle|tickover",
        "comes|jumps|rises|goes|shoots|springs right|straight|up|back|quickly|soon up|as|with|at the? slightest|touch|blip|least|bit|little|smallest|any of|touch|bit? throttle|gas|revs|pedal",
        "touch|blip|bit|tickle of? the? throttle|gas|revs|pedal .. comes|up|right|back|fine|good|jumps|rises",
    ),
    "falls_as_revs_rise": (
        "drops|falls|loses|sinks|dips|decreases|lower|less|goes pressure|down|off? when|as|with|the i|you|we|it's|is|more|higher|high|it? =revved|=revs|=rev|=rpm|=rpms",
        "the? =higher|=more|=faster .. revs|rev|rpm|it|i .. the? =lower|=less .. pressure|gauge|it|reads|goes",
    ),
}
