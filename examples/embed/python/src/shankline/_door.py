"""The functions of ``shankline.h``, by ctypes."""

import ctypes
import json
import os
import sys
from dataclasses import dataclass
from pathlib import Path
from typing import Any, Optional

INTERFACE = 1
_ANSWERED, _REFUSED = 0, 1


class _Answer(ctypes.Structure):
    _fields_ = [("text", ctypes.c_void_p), ("length", ctypes.c_size_t)]


def _load() -> ctypes.CDLL:
    name = {"win32": "shankline_embed.dll", "darwin": "libshankline_embed.dylib"}.get(
        sys.platform, "libshankline_embed.so"
    )
    path = os.environ.get("SHANKLINE_LIBRARY") or Path(__file__).parent / name
    door = ctypes.CDLL(str(path))
    door.shankline_interface.restype = ctypes.c_uint32
    if door.shankline_interface() != INTERFACE:
        raise ImportError(f"{path} has another interface than {INTERFACE}")
    size, out = ctypes.c_size_t, ctypes.POINTER(_Answer)
    door.shankline_ask.argtypes = [ctypes.c_char_p, ctypes.c_char_p, size, out]
    door.shankline_ask.restype = ctypes.c_int32
    door.shankline_sweep.argtypes = [ctypes.c_char_p, size, size] + 7 * [ctypes.c_void_p] + [out]
    door.shankline_sweep.restype = ctypes.c_int32
    door.shankline_free.argtypes = [out]
    door.shankline_free.restype = None
    return door


door = _load()


@dataclass(frozen=True)
class Place:
    """Where in a request something is wrong; what is not known is None."""

    #: As ``joint.stack.plies[0].thickness``.
    field: Optional[str] = None
    #: Of the request as JSON, counted from 1.
    line: Optional[int] = None
    #: The byte of the line, counted from 1.
    column: Optional[int] = None
    #: The load case of a sweep, counted from 0.
    case: Optional[int] = None


class Refusal(ValueError):
    """Why there is no answer: ``code`` for programs, ``text`` for people, ``place``, and the whole ``document``."""

    def __init__(self, raw: bytes) -> None:
        document = json.loads(raw)
        #: The document as it came.
        self.raw = raw
        self.document: dict = document
        self.code: str = document["code"]
        self.text: str = document["text"]
        self.place: Optional[Place] = Place(**document["place"]) if document["place"] else None
        where = f" ({self.place.field})" if self.place and self.place.field else ""
        super().__init__(self.text + where)

    def __reduce__(self):
        return Refusal, (self.raw,)


def taken(status: int, answer: _Answer) -> bytes:
    """The text of an answer, which is given back; the refusal in it is raised."""
    if status not in (_ANSWERED, _REFUSED):
        raise RuntimeError("shankline was called wrongly")
    text = ctypes.string_at(answer.text, answer.length)
    door.shankline_free(ctypes.byref(answer))
    if status == _REFUSED:
        raise Refusal(text)
    return text


def as_json(request: Any) -> bytes:
    """The request as JSON. What is no number has no place in it, and is refused here."""
    return json.dumps(request, allow_nan=False, separators=(",", ":")).encode()


def ask_text(question: str, request: bytes) -> bytes:
    """Answers a question whose request is JSON already; the answer is UTF-8."""
    if "\0" in question:
        raise ValueError("a question has no zero in it")
    answer = _Answer()
    status = door.shankline_ask(question.encode(), request, len(request), ctypes.byref(answer))
    return taken(status, answer)


def ask(question: str, **request: Any) -> Any:
    """Answers a question by its name: a document. What is None in the request is left out."""
    request = {name: value for name, value in request.items() if value is not None}
    return json.loads(ask_text(question, as_json(request)))


def ask_picture(question: str, **request: Any) -> str:
    """Answers a question whose answer is a picture or a text."""
    request = {name: value for name, value in request.items() if value is not None}
    return ask_text(question, as_json(request)).decode()
