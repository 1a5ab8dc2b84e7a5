"""What must be right about a variable pump: its control, and the pressure of both stages."""

from knowledge import sources
from knowledge.cautions import RUNNING
from knowledge.engines import features, features_build
from knowledge.figures import TRUSTED_GAUGE
from knowledge.stations.pump import causes_variable
from knowledge.work import Band, Caution, Phase, Task

#: where the pump is driven so, its delivery is not controlled
PLAIN = (
    features.PUMP_ON_DISTRIBUTOR_SHAFT,
    features.PUMP_ON_SKEW_GEAR,
    features.PUMP_ON_CAM_NOSE,
    features.PUMP_OUTSIDE,
    features.DRY_SUMP,
)
PUMP_CONTROL_WORKS = Task(
    id="pump_control_works",
    phase=Phase.PUMP,
    says="variable pump's control: solenoid, plug and wiring tested, slide free, no code left",
    how=(
        "solenoid: resistance and plug by the manual; it clicks when fed",
        "wire from plug to control unit without a break, earth (ground) clean",
        "read the codes and clear them",
        "slide or valve moves its whole way by hand and comes back by its spring",
        "screen of the control port clean",
    ),
    source=sources.VARIABLE_PUMP_2021,
    remedy="renew the solenoid or mend its wire; a slide that grips: free it or renew the pump",
    guards=(causes_variable.PUMP_CONTROL_STUCK,),
    only_with=(features_build.VARIABLE_PUMP,),
    not_with=PLAIN,
    cautions=(Caution.BATTERY, Caution.SPRING),
    also=("pump solenoid", "oil pressure control valve", "pump slide"),
)
LOW_STAGE_READ = Task(
    id="low_stage_read",
    phase=Phase.FIRST_START,
    says="variable pump, low stage: pressure at hot idle on a trusted gauge",
    how=(
        "oil hot, idle speed right, control plugged in",
        "the maker's figure comes first; below its stop limit: shut down",
    ),
    source=sources.VARIABLE_PUMP_2021,
    dimension="pressure",
    bands=(
        Band(
            low=80e3,
            high=160e3,
            source=sources.VARIABLE_PUMP_2021,
            says="one van's two-stage pump: 80 to 160 kPa",
            of_one=True,
        ),
    ),
    spread=TRUSTED_GAUGE,
    remedy="stop: too little in the low stage is wear, air or a leak, not the control",
    guards=(causes_variable.PUMP_CONTROL_STUCK,),
    only_with=(features_build.VARIABLE_PUMP,),
    not_with=PLAIN,
    cautions=(*RUNNING, Caution.FIRE),
    also=("low stage pressure",),
)
HIGH_STAGE_READ = Task(
    id="high_stage_read",
    phase=Phase.FIRST_START,
    says="variable pump, high stage: pressure hot, above the speed at which it changes",
    how=(
        "no load; raise the speed slowly until the needle steps up, note that speed",
        "no step by 3500 rpm: back to idle, it is still in its low stage",
    ),
    source=sources.VARIABLE_PUMP_2021,
    dimension="pressure",
    bands=(
        Band(
            low=310e3,
            high=390e3,
            source=sources.VARIABLE_PUMP_2021,
            says="one van's two-stage pump above 2800 rpm: 310 to 390 kPa",
            of_one=True,
        ),
    ),
    spread=TRUSTED_GAUGE,
    remedy="it stays in its low stage: control, wiring or slide again",
    why="idle pressure is right in the low stage: only this reading proves the repair",
    guards=(causes_variable.PUMP_CONTROL_STUCK,),
    only_with=(features_build.VARIABLE_PUMP,),
    not_with=PLAIN,
    cautions=(*RUNNING, Caution.FIRE),
    also=("high stage pressure", "solenoid off pressure"),
)
