"""Chooses and checks the bolt of a joint loaded across its axis.

Requests and answers are plain dictionaries, the JSON documents of the library; the files in ``examples/data`` of
its repository are templates, and ``schema("joint")`` describes every field.

>>> import shankline
>>> ply = {"material": "S275 steel", "end_distance": "35 mm", "edge_distance": "30 mm", "width": "60 mm"}
>>> joint = {
...     "title": "bracket on a rail (invented)",
...     "bolt": {"product": "iso_4014", "thread": "M12", "grade": "ISO 898-1 class 8.8"},
...     "nut": {"style": "iso_4032", "grade": "ISO 898-2 class 8"},
...     "stack": {
...         "plies": [{"name": "bracket", "thickness": "12 mm", **ply}, {"name": "rail", "thickness": "20 mm", **ply}],
...         "shear_planes": [1],
...     },
...     "pattern": "single",
...     "load": {"across": "9 kN", "along": "0 kN", "repeats": "never", "shock_factor": 1.5},
...     "environment": {
...         "coldest": "0 C", "hottest": "40 C", "vibration": False, "rotates": False, "dangerous_if_lost": False,
...         "refits": 0, "exposure": "dry",
...     },
...     "rules": "en_1090", "methods": "machine_design",
... }
>>> verdict = shankline.verdict(joint)
>>> verdict["word"], verdict["missing"][0]
('undecided', 'tightening: nobody says how the bolt is tightened')

A word is one of three: ``"holds"``, ``"does_not_hold"``, ``"undecided"``. What the library refuses is a
:class:`Refusal`. Nothing here keeps a state, and all of it may be called from any thread.

Results are estimates, not a certification: local codes and the maker's instructions rule, and where a failure can
hurt someone a licensed engineer must check the joint.
"""

from ._documents import Joint, Report, VerdictDocument
from ._door import INTERFACE, Place, Refusal, ask, ask_text
from ._questions import (
    assembly,
    catalogue,
    check,
    check_connection,
    design,
    draw,
    draw_connection,
    explain,
    lengths,
    schema,
    table,
    tables,
    verdict,
    version,
)
from ._sweep import STEADY, Sweep, sweep

__all__ = [
    "INTERFACE", "Joint", "Place", "Refusal", "Report", "STEADY", "Sweep", "VerdictDocument", "ask", "ask_text",
    "assembly", "catalogue", "check", "check_connection", "design", "draw", "draw_connection", "explain", "lengths",
    "schema", "sweep", "table", "tables", "verdict", "version",
]
