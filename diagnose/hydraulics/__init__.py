"""Hydraulic model of the lubrication circuit: one module per element, and their network.

Bottom up: ``ranges`` and ``clearance`` (argument types and checks), ``oil``, then the
elements ``bearing``, ``leaks``, ``passage``, ``pump``, ``relief``, ``suction``, then ``engine``
(every parameter of one engine), ``network`` (flows at one gallery pressure), ``roots`` and
``circuit`` (which finds the pressure). SI units; every
function takes floats or numpy arrays and broadcasts. Clearances are diametral in ``engine`` and
radial in film formulas. Imports nothing of ``diagnose`` but itself.
"""
