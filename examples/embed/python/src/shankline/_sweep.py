"""One joint under many load cases."""

import ctypes
from array import array
from dataclasses import dataclass
from typing import Any, Tuple, Union

from ._documents import Joint
from ._door import _Answer, as_json, door, taken

try:
    import numpy
except ImportError:  # lists and arrays of the standard library do as well
    numpy = None

#: For ``sweep``: the loads neither come nor go.
STEADY = "steady"


@dataclass(frozen=True)
class Sweep:
    """The answers, one a case: numpy arrays where numpy is there, else arrays of the standard library."""

    #: 0 undecided, 1 holds, 2 does not hold.
    words: Any
    #: Places in ``catalogue()["families"]["modes"]`` of what governs; 255 where nothing was compared.
    modes: Any
    #: The highest utilisation; 0 where nothing was compared.
    utilisations: Any


def _column(values: Any, count: int) -> Tuple[Any, int]:
    """The numbers, in one piece in memory, and where they stand. What is so already is not copied."""
    if numpy is not None:
        values = numpy.ascontiguousarray(values, dtype=numpy.float64)
        if values.ndim != 1:
            raise ValueError("loads are one number a case")
        at = values.ctypes.data
    else:
        if not (isinstance(values, array) and values.typecode == "d"):
            values = array("d", values)
        at = values.buffer_info()[0]
    if count not in (-1, len(values)):
        raise ValueError("loads are not of one length")
    return values, at


def _room(kind: str, count: int) -> Tuple[Any, int]:
    if numpy is not None:
        room = numpy.empty(count, dtype={"B": numpy.uint8, "d": numpy.float64}[kind])
        return room, room.ctypes.data
    room = array(kind, bytes(count * array(kind).itemsize))
    return room, room.buffer_info()[0]


def sweep(joint: Joint, across: Any, along: Any, *, least: Union[str, Tuple[Any, Any]]) -> Sweep:
    """The word, the governing mode and the highest utilisation of every load case, in newtons.

    ``across`` and ``along`` are the greatest loads, ``along`` below zero where it presses the plies together.
    ``least`` is the least of both, ``(across, along)``, or ``STEADY``: a load that comes and goes tires the bolt,
    and must be told. Shock factor, load factor, prying and cycles are those of the joint, whose own loads do not count.

    A case that makes no sense is refused, with ``place.case``.
    """
    across, at_across = _column(across, -1)
    count = len(across)
    along, at_along = _column(along, count)
    kept, at_least = [], [None, None]
    if isinstance(least, str):
        if least != STEADY:
            raise ValueError("least is STEADY or a pair of columns")
    else:
        kept, at_least = zip(*(_column(column, count) for column in least))
        if len(kept) != 2:
            raise ValueError("least is STEADY or a pair of columns")
    (words, at_words), (modes, at_modes), (used, at_used) = (_room(kind, count) for kind in "BBd")
    request, answer = as_json({"joint": joint}), _Answer()
    status = door.shankline_sweep(
        request, len(request), count, at_across, at_along, *at_least, at_words, at_modes, at_used, ctypes.byref(answer)
    )
    taken(status, answer)
    return Sweep(words, modes, used)
