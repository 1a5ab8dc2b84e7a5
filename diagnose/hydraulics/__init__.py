"""The lubrication circuit in numbers: one module per element, and the network of them all.

Bottom up: ``ranges`` and ``clearance`` (what a formula takes and refuses), ``oil``, then the
elements ``bearing``, ``leaks``, ``passage``, ``pump``, ``relief``, ``suction``, then ``engine``
(every parameter of one engine), ``network`` (what follows from one pressure), ``roots`` and
``circuit`` (which finds the pressure). SI inside; every
function takes floats or numpy arrays and broadcasts. Clearances are diametral in ``engine`` and
radial in film formulas. Imports nothing of ``diagnose`` but itself.
"""
