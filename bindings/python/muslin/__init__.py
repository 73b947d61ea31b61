# SPDX-License-Identifier: MIT
"""Quilt arithmetic, exact: a thin, typed layer over the C library muslin.

    import muslin

    plan = muslin.stripquilt_plan(strips=42, columns=3, rows=3, strip_length="41 in")
    print(plan.tops, plan.top_finished_width)

Each call is named like its C function without the prefix, and what it says, with ranges, formulas and statuses, stands
in full in that function's header. A length is a muslin.Length, or text that says one exactly ("2 1/2 in"). A member of
a spec that is left out keeps the library's initial value. Results are frozen, with a Length for every length and the
warnings one by one. A call that fails raises the subclass of MuslinError for its status, from muslin.errors.

A quilt is a handle: muslin.Quilt, with a method for each function that takes it; muslin.Solution is a quilt solved, and
muslin.Pressing says how that is pressed. Fabrics, measures and nodes are plain numbers, which carry their quilt.

muslin.library is the loaded ctypes library itself, with every function's types set, and muslin.structs its structs.
"""
from . import _api, errors as errors
from ._api import __version__ as __version__
from ._handle import ClosedError as ClosedError
from ._length import Formatted as Formatted, InexactError as InexactError, Length as Length, LengthLike as LengthLike
from ._library import LibraryError as LibraryError, library as library
from ._problem import MuslinError as MuslinError
from ._values import Id as Id
from .calls import *
from .constants import *
from .handles import *
from .records import *

structs = _api
