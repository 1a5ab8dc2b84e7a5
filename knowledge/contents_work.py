"""The list of every file of tasks and of parts, in the order they are done and read.

Imported by ``book`` when a task or part is first asked for: a review needs none of them.
"""

from knowledge.reassembly import after_damage as reassembly_after_damage
from knowledge.reassembly import block as reassembly_block
from knowledge.reassembly import by_lamp as reassembly_by_lamp
from knowledge.reassembly import cleaning as reassembly_cleaning
from knowledge.reassembly import cleaning_block as reassembly_cleaning_block
from knowledge.reassembly import cleaning_first as reassembly_cleaning_first
from knowledge.reassembly import cleaning_oil as reassembly_cleaning_oil
from knowledge.reassembly import consumables as reassembly_consumables
from knowledge.reassembly import first_start as reassembly_first_start
from knowledge.reassembly import kinds as reassembly_kinds
from knowledge.reassembly import later as reassembly_later
from knowledge.reassembly import parts_closing as reassembly_parts_closing
from knowledge.reassembly import priming as reassembly_priming
from knowledge.reassembly import run_in as reassembly_run_in
from knowledge.stations.assembly import parts as assembly_parts
from knowledge.stations.bearings import parts as bearings_parts
from knowledge.stations.bearings import tasks as bearings_tasks
from knowledge.stations.bearings import tasks_build as bearings_tasks_build
from knowledge.stations.bearings import tasks_shafts as bearings_tasks_shafts
from knowledge.stations.delivery import parts as delivery_parts
from knowledge.stations.instrument import parts as instrument_parts
from knowledge.stations.leaks import parts as leaks_parts
from knowledge.stations.oil import parts as oil_parts
from knowledge.stations.pump import parts as pump_parts
from knowledge.stations.pump import tasks as pump_tasks
from knowledge.stations.pump import tasks_cover as pump_tasks_cover
from knowledge.stations.pump import tasks_distributor as pump_tasks_distributor
from knowledge.stations.pump import tasks_drive as pump_tasks_drive
from knowledge.stations.pump import tasks_variable as pump_tasks_variable
from knowledge.stations.relief import parts as relief_parts
from knowledge.stations.relief import tasks as relief_tasks
from knowledge.stations.suction import parts as suction_parts
from knowledge.stations.suction import tasks_pickup as suction_tasks_pickup
from knowledge.stations.suction import tasks_sump as suction_tasks_sump
from knowledge.stations.suction import tasks_tray as suction_tasks_tray
from knowledge.stations.topend import parts as topend_parts
from knowledge.stations.topend import tasks as topend_tasks

#: tasks, in the order of the work
WORK = (
    reassembly_cleaning_first,
    reassembly_cleaning,
    reassembly_cleaning_block,
    reassembly_cleaning_oil,
    reassembly_after_damage,
    reassembly_block,
    bearings_tasks,
    bearings_tasks_shafts,
    bearings_tasks_build,
    topend_tasks,
    pump_tasks,
    pump_tasks_cover,
    pump_tasks_variable,
    relief_tasks,
    pump_tasks_drive,
    pump_tasks_distributor,
    suction_tasks_tray,
    suction_tasks_pickup,
    suction_tasks_sump,
    reassembly_priming,
    reassembly_by_lamp,
    reassembly_first_start,
    reassembly_run_in,
    reassembly_kinds,
    reassembly_later,
)

#: parts, in the order a parts list is read: by station, then what closes and is used up
PARTS = (
    instrument_parts,
    oil_parts,
    suction_parts,
    pump_parts,
    relief_parts,
    delivery_parts,
    bearings_parts,
    topend_parts,
    assembly_parts,
    leaks_parts,
    reassembly_parts_closing,
    reassembly_consumables,
)
