# SPDX-License-Identifier: MIT
"""A second opinion on muslin's arithmetic: the same questions answered from the formulas in the headers with Python's
whole numbers and fractions, by counting and trying where that is possible. It never imports the binding.

Requests are objects with the members of the library's spec structs; answers are dicts with the members of its output
structs. A request that must fail raises Refused with every status that would be right.
"""
