"""The answers of the library itself, to be held against those of the module in a browser.

    python3 native.py LIBRARY < requests > answers    # a line each: ["question", "request"], then [status, "answer"]
"""

import ctypes
import json
import sys


class Text(ctypes.Structure):
    _fields_ = [("text", ctypes.c_void_p), ("length", ctypes.c_size_t)]


library = ctypes.CDLL(sys.argv[1])
library.shankline_ask.argtypes = [ctypes.c_char_p, ctypes.c_char_p, ctypes.c_size_t, ctypes.POINTER(Text)]
library.shankline_free.argtypes = [ctypes.POINTER(Text)]

for line in sys.stdin:
    question, request = json.loads(line)
    request = request.encode()
    text = Text()
    status = library.shankline_ask(question.encode(), request, len(request), ctypes.byref(text))
    print(json.dumps([status, ctypes.string_at(text.text, text.length).decode()]))
    library.shankline_free(ctypes.byref(text))
