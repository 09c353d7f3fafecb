"""The outer fields of the documents, for editors and type checkers. ``schema`` has every field."""

from typing import Any, List, Literal, Optional, TypedDict

Word = Literal["holds", "does_not_hold", "undecided"]
Units = Literal["si", "us_customary"]


class Joint(TypedDict, total=False):
    """A joint to check; see ``schema("joint")``."""

    title: str
    bolt: dict
    nut: dict
    stack: dict
    pattern: Any
    load: dict
    environment: dict
    tightening: Any
    rules: Any
    methods: Any
    scope: str
    set_aside: List[dict]
    granted: List[dict]


class Governing(TypedDict):
    """What governs: the check of the highest utilisation."""

    mode: str
    place: Any
    utilisation: float
    holds: bool


class VerdictDocument(TypedDict):
    """The word and why."""

    word: Word
    scope: str
    headline: str
    length: str
    governing: Optional[Governing]
    faults: List[str]
    missing: List[str]
    cautions: List[str]


class Report(TypedDict, total=False):
    """The whole answer to a joint; see ``schema("report")``."""

    format: int
    title: str
    units: Units
    word: Word
    scope: str
    headline: str
    conditions: List[str]
    bolt: dict
    layers: List[dict]
    planes: List[dict]
    other_lengths: List[dict]
    checks: List[dict]
    faults: List[dict]
    notes: List[dict]
    missing: List[dict]
    set_aside: List[dict]
    granted: List[dict]
    in_order: List[str]
    not_concerned: List[dict]
    tightening: Optional[dict]
    assembly: List[dict]
    inspection: List[dict]
    sources: List[str]
    cautions: List[dict]
    joint: Joint
