"""Which number is the load, which the repetitions, which the sets: all readings of a stretch, ranked beside the plan.

A beam goes over the atoms. Every amount takes each role that its words and its join allow; what the plan speaks against
costs. Costs are this reader's own scale: `OUT` is out of reason, differences under `MARGIN` are too close to call.
"""

from bot.notation.roles.beam import Roles

__all__ = ["Roles"]
