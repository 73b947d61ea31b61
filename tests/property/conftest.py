# SPDX-License-Identifier: MIT
"""Where the model and the binding lie, and how long to look.

MUSLIN_PROPERTY_EXAMPLES: how many requests each property is tried with (default 100).
MUSLIN_PROPERTY_FIRST: that one is not right is enough; no simpler one is looked for.
"""

import os
import pathlib
import sys

from hypothesis import HealthCheck, Phase, settings

TESTS = pathlib.Path(__file__).resolve().parent.parent
sys.path[:0] = [str(TESTS / "property"), str(TESTS / "model"), str(TESTS.parent / "bindings" / "python")]

settings.register_profile("muslin", max_examples=int(os.environ.get("MUSLIN_PROPERTY_EXAMPLES", "100")),
                          deadline=None, derandomize="CI" in os.environ, database=None,
                          phases=[Phase.explicit, Phase.generate] if "MUSLIN_PROPERTY_FIRST" in os.environ else Phase,
                          suppress_health_check=[HealthCheck.too_slow, HealthCheck.filter_too_much])
settings.load_profile("muslin")
