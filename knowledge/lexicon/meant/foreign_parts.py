"""Parts of a machine, a house or a road that hold no oil pressure: what is said of them is no finding."""

from __future__ import annotations

from knowledge.lexicon.words.word_sets import set_of as _set

#: hold an oil or a fluid of their own: "gearbox oil is black"
OWN_OIL = _set(
    "gearbox gearboxes transmission tranny diff differential axle axles fork forks shock "
    "shocks absorber absorbers transfer ram rams steering brake brakes clutch hydraulics winch outdrive "
    "sterndrive saildrive loader"
)
#: name, before a part or behind "of the", whose part it is
OWNERS = OWN_OIL | _set(
    "hub hubs lever cock seacock voltage tail caliper calipers drum drums pads antifreeze handbrake propshaft halfshaft halfshafts wheel wheels tyre tyres tire tires "
    "suspension roof sunroof door doors window windows windscreen windshield wiper wipers sill sills "
    "mirror carpet chassis bodywork paint gate glovebox cellar garden house kitchen pond trailer caravan "
    "pedal seatbelt battery charger alternator dynamo starter speedo speedometer ammeter voltmeter "
    "counter rev-counter tacho tachometer tach shore glove headlamp headlamps headlight headlights indicator indicators radio stereo horn clock fog heater "
    "radiator rad coolant water fuel petrol carb carbs carburettor carburettors carburetor throttle "
    "choke exhaust rudder stern propeller prop anchor windlass bilge toilet servo air kettle phone lathe fence "
    "barbecue chimney stove workbench magazine newspaper neighbour neighbor pulley spigot aircon ac compressor thermostat"
)
#: words for what another word names as well
SAME = {
    "petrol": "fuel",
    "carb": "fuel",
    "rad": "coolant",
    "radiator": "coolant",
    "water": "coolant",
}
#: before such a word: it is where something lies, touches or acts, or one of several
BESIDE = _set("on onto over by against near at and")
#: with them the crank is turned by hand
TURNED_BY = _set("prop propeller pulley")
OF_TURNING = _set("engine_seized hard_to_turn")
#: whose needle or lamp shows no oil pressure
INSTRUMENTS = _set(
    "fuel temp temperature water coolant amp volt ammeter voltmeter boost vacuum speedo speedometer counter "
    "tacho tachometer rear tail cabin interior reading battery charge charging handbrake brake ignition abs airbag indicator headlamp fog"
)
HANDS = _set("gauge gage guage needle pointer light lamp dial")
#: with one of these its sentence is of the oil as well
OF_PRESSURE = _set("oil pressure psi bar lifters sender mechanical")
#: stand between such a word and the part: "the brake light switch", "the diff drain plug magnet"
BETWEEN = _set(
    "light lights lamp lamps pump filter housing belt hose hoses line pipe cable gauge needle switch fan "
    "cover pressure plate tank bearing bearings sensor plug plugs seal rod end rack box valve drain tube "
    "shaft shield level cap door release wire lead motor"
)
#: behind a finding, before where it was: "noise from the gearbox"
WHERE = _set("in inside from of for with under")
#: a noise that changes with it is of the engine: "clutch pressed, the rattle stops"
NO_NOISE = _set("clutch wheel starter throttle choke fuel water radiator coolant")
#: how a part is, straight before its name: "very noisy heater"
STATES = _set("noisy rough worn loose soft burnt broken split kinked bad faulty dead leaky cracked")
ARTICLES = _set("the a an my our your his her its their this that both one")
#: the engine's own: with one of these among its words a finding is of the engine
OF_THE_ENGINE = _set(
    "oil engine motor sump sumps pan crank crankshaft crankcase cam camshaft main mains rockers lifters "
    "lifter tappets gallery dipstick pickup sender lube filter-housing bores pistons piston"
)
#: begin a clause before its subject
LEADS = _set(
    "the a an my our its his and but also then while when that this one both two some rear front left "
    "right old new other upper lower second"
)
#: history that is of the engine unless another part is named
OF_HISTORY = _set("freshly_rebuilt earlier_breakage just_worked_on")
#: of all instruments, of the whole machine or of what it does: no part of it is another
OF_ALL = _set("other_gauges_also_wrong general_alarm")
#: between a part and the noise it makes: "the fuel pump was whining"
COPULAS = _set("is was are were started starts began begins keeps kept always")
#: findings of air itself, in the oil
OF_AIR = frozenset(["foam_on_stick"])
