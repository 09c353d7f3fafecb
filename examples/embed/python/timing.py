"""How long it takes: python timing.py. The least of several runs, as others may work on the machine."""

import json
from pathlib import Path
from timeit import repeat

import shankline

DATA = Path(__file__).resolve().parent.parent.parent / "data"


def least(call, number):
    return min(repeat(call, number=number, repeat=9)) / number


for name in ["davit_socket", "seesaw_pivot", "winch_foot"]:
    joint = json.loads((DATA / f"{name}.json").read_text())
    verdict = least(lambda: shankline.verdict(joint), 100)
    check = least(lambda: shankline.check(joint), 50)
    print(f"{name}: verdict {1e6 * verdict:.0f} us, check {1e6 * check:.0f} us")
try:
    import numpy

    loads, none = numpy.linspace(0.0, 1e4, 1_000_000), numpy.zeros(1_000_000)
    swept = least(lambda: shankline.sweep(joint, loads, none, least=shankline.STEADY), 1)
    print(f"a million load cases: {1e3 * swept:.0f} ms")
except ImportError:
    print("numpy is not installed: no sweep")
