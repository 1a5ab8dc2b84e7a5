"""What is seen or known of running and idling, in phrases of more than the book's own ``also``."""

from __future__ import annotations

#: the finding, by what is said when it is there
SIGHTS_PRESSURE: dict[str, tuple[str, ...]] = {
    "engine_runs_normally": (
        "runs|running|ran|sounds|drives|starts|engine|idles is|sounds|runs|and|perfectly|really|absolutely|as|just|otherwise|very|runs? "
        "fine|good|well|great|perfect|perfectly|smooth|smoothly|normal|normally|sweet|sweetly|quiet|strong|lovely|healthy|beautifully",
        "no|without strange|odd|funny|weird|unusual|abnormal|bad|other|any? noise|noises|sounds",
        "sounds|runs as always|ever|usual|before",
    ),
    "idle_below_spec": ("idle|idling|idles too|is|very? low|slow",),
}
