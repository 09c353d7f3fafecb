"""One function a question."""

from typing import Any, Dict, List, Literal, Optional, Sequence

from ._documents import Joint, Report, Units, VerdictDocument
from ._door import ask, ask_picture


def verdict(joint: Joint, *, units: Optional[Units] = None) -> VerdictDocument:
    """The word and why, what governs and what is missing: for a program that asks often."""
    return ask("verdict", joint=joint, units=units)


def check(joint: Joint, *, units: Optional[Units] = None, group: Optional[dict] = None) -> Report:
    """The whole report: every check with its method, findings, what is missing, the sheet for the workshop.

    ``units`` are those of its texts, and without them those of the thread. With the pattern of a ``group`` of such
    bolts the sheet has their order of tightening.
    """
    return ask("check", joint=joint, units=units, group=group)


def lengths(joint: Joint, *, units: Optional[Units] = None) -> dict:
    """Every stock length: which fit, and why not the others."""
    return ask("lengths", joint=joint, units=units)


def design(
    joint: Joint, space: dict, objectives: Sequence[Any] = (), *, units: Optional[Units] = None
) -> dict:
    """The best bolts, nuts and washers of those in ``space``, and why the others were turned down."""
    return ask("design", joint=joint, space=space, objectives=list(objectives), units=units)


def explain(
    joint: Joint,
    show: Literal["working", "report", "sheet"] = "working",
    format: Literal["text", "markdown", "latex"] = "text",
    *,
    units: Optional[Units] = None,
) -> str:
    """The working of every step, the report or the sheet for the workshop, for a person to read.

    A report is text or markdown, a sheet text.
    """
    return ask_picture("explain", joint=joint, show=show, format=format, units=units)


def draw(
    joint: Joint,
    picture: Literal["section", "checks", "lengths", "springs"] = "section",
    format: Literal["svg", "dxf"] = "svg",
    *,
    units: Optional[Units] = None,
) -> str:
    """A picture of the joint. Only the section is drawn as dxf; springs need a preload."""
    return ask_picture("draw", joint=joint, picture=picture, format=format, units=units)


def assembly(joint: Joint) -> dict:
    """The geometry: every part along and across the axis, with tolerances and the source of each size."""
    return ask("assembly", joint=joint)


def check_connection(connection: dict, *, units: Optional[Units] = None) -> dict:
    """Several bolts in load cases: ``headline``, what is ``governing``, ``faults``, ``missing`` and ``cautions``; the report as
    ``text``, and the ``verdict`` as data."""
    return ask("check_connection", connection=connection, units=units)


def draw_connection(
    connection: dict,
    format: Literal["svg", "dxf"] = "svg",
    *,
    case: Optional[str] = None,
    units: Optional[Units] = None,
) -> str:
    """The plan of a connection in a load case, and without a name in the one that governs."""
    return ask_picture("draw_connection", connection=connection, format=format, case=case, units=units)


def catalogue(thread: Optional[str] = None) -> dict:
    """What there is to choose from, by code and label; with a thread what is made for it."""
    return ask("catalogue", thread=thread)


def tables() -> List[str]:
    """The names of the tables."""
    return ask("tables")


def table(name: str) -> List[Dict[str, Any]]:
    """The rows of a table, with units and sources. A value that nobody has read is None, never zero."""
    return ask("tables", table=name)


def schema(document: str) -> dict:
    """The JSON Schema of a joint, a report, a connection, ..."""
    return ask("schema", document=document)


def version() -> dict:
    """Version, interface, format of the documents, questions, and what every user must be told."""
    return ask("version")
