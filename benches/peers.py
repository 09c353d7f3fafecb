"""The sweep of benches/joint.rs as a user of Python writes it: the same joint, the same loads, the highest utilisation.

By hand, with numpy and pint installed:   python benches/peers.py

What each part bears is what the verdict of the joint says, as in `by_hand` there. The Rust side in the same run of the
same machine:                             cargo bench --bench joint -- sweep
"""

import math
import time

import numpy as np
import pint

SHOCK, MARGIN = 1.5, 2.0
SHEAR, TENSION = 37_124.074_723_764_44, 45_433.836_694_052_836
ACROSS = [39_118.094_978_520_01, 100_864.0, 102_275.481_761_808_62, 152_805.058_509_843_77, 195_590.474_892_600_03]
ALONG = [64_979.450_987_960_29, 195_119.033_455_756_67, 199_464.866_473_634_87]
BOLT = [90_867.673_388_105_67, 137_868.194_106_091_37, 148_740.26, 158_759.6]
TIGHTENING = 0.957_479_89
PRELOAD = 84_176.739_382_628_42
SHARE = 809_978_828.486_803 / (809_978_828.486_803 + 3_071_557_439.387_712_5)
AREA, TENSILE, ENDURANCE = 156.668_402_393_285_63, 800.0, 129.0


UNITS = pint.UnitRegistry()


def cases(count):
    state = 1
    loads = np.empty((count, 2))
    for place in range(count):
        for column, most in enumerate((30e3, 12e3)):
            state = (state * 1_664_525 + 1_013_904_223) % 2**32
            loads[place, column] = most * state / (2**32 - 1)
    return loads


def vectorised(loads):
    across, high = SHOCK * loads[:, 0], SHOCK * loads[:, 1]
    parted = PRELOAD / (1 - SHARE)
    force = lambda load: np.where(load > parted, load, PRELOAD + SHARE * load)
    used = np.full(len(loads), TIGHTENING)
    np.maximum(used, across / SHEAR, out=used)
    np.maximum(used, high / TENSION, out=used)
    for bears in ACROSS * 2:
        np.maximum(used, across / bears, out=used)
    for bears in ALONG:
        np.maximum(used, MARGIN * high / bears, out=used)
    greatest = force(MARGIN * high)
    for bears in BOLT:
        np.maximum(used, greatest / bears, out=used)
    np.maximum(used, np.hypot(across / SHEAR, high / TENSION), out=used)
    amplitude = (force(high) - PRELOAD) / 2 / AREA
    above = (force(high) + PRELOAD) / 2 / AREA - PRELOAD / AREA
    bears = (TENSILE - PRELOAD / AREA) / (TENSILE / ENDURANCE + above / amplitude)
    np.maximum(used, MARGIN * amplitude / bears, out=used)
    return used


def with_units(loads):
    unit = UNITS
    newton, mpa, area = unit.newton, unit.megapascal, AREA * unit.millimeter**2
    shear, tension, preload = SHEAR * newton, TENSION * newton, PRELOAD * newton
    across_bears = [bears * newton for bears in ACROSS * 2]
    along_bears = [bears * newton for bears in ALONG]
    bolt_bears = [bears * newton for bears in BOLT]
    tensile, endurance = TENSILE * mpa, ENDURANCE * mpa
    parted = preload / (1 - SHARE)
    force = lambda load: load if load > parted else preload + SHARE * load
    found = []
    for across, high in loads.tolist():
        across, high = SHOCK * across * newton, SHOCK * high * newton
        used = [TIGHTENING, (across / shear).m, (high / tension).m]
        used += [(across / bears).m for bears in across_bears]
        used += [(MARGIN * high / bears).m for bears in along_bears]
        used += [(force(MARGIN * high) / bears).m for bears in bolt_bears]
        used.append(math.hypot((across / shear).m, (high / tension).m))
        amplitude = ((force(high) - preload) / 2 / area).to(mpa)
        above = ((force(high) + preload) / 2 / area - preload / area).to(mpa)
        bears = (tensile - (preload / area).to(mpa)) / ((tensile / endurance).m + (above / amplitude).m)
        used.append((MARGIN * amplitude / bears).to("").m)
        found.append(max(used))
    return np.array(found)


def timed(name, run, loads, times):
    spent = []
    for _ in range(times):
        start = time.perf_counter()
        found = run(loads)
        spent.append(time.perf_counter() - start)
    each = min(spent) / len(loads)
    print(f"{name:28} {each * 1e9:12.1f} ns a case {each * 1e6:12.3f} s for a million")
    return found


loads = cases(1_000_000)
whole = timed("numpy, vectorised", vectorised, loads, 5)
few = timed("plain Python, units by pint", with_units, loads[:300], 3)
assert np.allclose(whole[:300], few, rtol=1e-12)
