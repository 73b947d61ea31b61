"""What is too hard for Frama-C, and the facts that it takes on trust, proved by z3 as sums of whole numbers.

Every lemma says that the negation of a statement has no solution. Beside each stands a false neighbour, which must have
one: a lemma that proves anything would prove that too. The last line counts both.

SPDX-License-Identifier: MIT
"""

from z3 import And, BitVec, BitVecVal, If, Implies, Ints, LShR, Not, Or, Solver, SolverFor, UDiv, URem
from z3 import sat, unknown, unsat

EFFORT = 8000000  # in z3's own steps, so that the answer is the same on every machine


def answer(*formulas):
    """What z3 says of these together."""
    for solver in (Solver(), SolverFor("QF_NIA")):
        solver.set("rlimit", EFFORT)
        solver.add(*formulas)
        said = solver.check()
        if said != unknown:
            return said
    return unknown


def divided(a, b, q, r):
    """q is a / b, whole, and r the rest; b above 0."""
    return And(a == q * b + r, 0 <= r, r < b)


def facts():
    """The axioms of wraps.h, shifts.h and multiples.h."""
    x, p, k, b, a = Ints("x p k b a")
    q, r, half, odd = Ints("q r half odd")
    yield ("x / p / 2 is x / (2 p)",
           And(x >= 0, p > 0, x == q * p + r, 0 <= r, r < p, q == 2 * half + odd, 0 <= odd, odd <= 1),
           And(x == half * (2 * p) + (odd * p + r), 0 <= odd * p + r, odd * p + r < 2 * p), odd * p + r < p,
           And(p == 2, x == 3))
    yield ("k b leaves no rest by b", And(b > 0, k * b == k * b + r, 0 <= r, r < b), r == 0,
           And(r == 0, b != 3), b == 3)
    yield ("a multiple with b more or less is one", And(b > 0, a == q * b),
           And(a + b == (q + 1) * b, a - b == (q - 1) * b),
           a + b == q * b, And(b == 3, q == 1))
    within = And(0 <= a, a < 2**64, 0 <= b, b < 2**64)
    yield ("a sum wraps by one 2^64", And(within, divided(a + b, 2**64, q, r)),
           r == If(a + b < 2**64, a + b, a + b - 2**64), r == a + b, True)
    yield ("a difference wraps by one 2^64", And(within, divided(a - b, 2**64, q, r)),
           r == If(a >= b, a - b, a - b + 2**64), r == a - b, True)
    word = BitVec("word", 64)
    yield "the lowest digit is the rest of 2", True, word & 1 == URem(word, BitVecVal(2, 64)), word & 1 == 0, True
    for n in range(64):
        power = BitVecVal(2**n, 64)
        yield (f"x >> {n} is x / 2^{n}", True, And(LShR(word, n) == UDiv(word, power), BitVecVal(1, 64) << n == power),
               LShR(word, n) == UDiv(word, power) + 1, True)


def products():
    """Two limbs: room for the carries, and the quotient of a number below 0."""
    a, b, d, half = Ints("a b d half")
    n, q, r, whole = Ints("n q r whole")
    yield ("a product of halves leaves room for two carries", And(0 <= a, a < 2**32, 0 <= b, b < 2**32),
           a * b <= (2**32 - 1)**2, a * b < (2**32 - 1)**2, And(a == 2**32 - 1, b == a))
    yield ("n below 0 is divided as -1 - n", And(d > 0, n < 0, -1 - n == q * d + r, 0 <= r, r < d),
           And(n == (-1 - q) * d + (d - 1 - r), 0 <= d - 1 - r, d - 1 - r < d), n == -q * d + r, And(d == 3, n == -5))
    yield ("twice a value keeps its floor", And(d > 0, divided(n, d, whole, r), divided(2 * r, d, half, b), half <= 1),
           And(2 * n == (2 * whole + half) * d + b, Or(half == 0, half == 1)), 2 * n == 2 * whole * d + b,
           And(d == 3, n == 2))


def roots():
    """Roots rounded once, by squares: f is the floor of a root, q and o its quotient and rest by d."""
    b, f, n, d, q, o, rest = Ints("b f n d q o rest")
    u, v = Ints("u v")
    yield "squares keep order", And(0 <= v, v < u), v * v < u * u, v * v + 2 * v + 1 < u * u, And(u == 2, v == 1)
    # ff and bb stand for the squares of f and b; that squares keep order is told of the two that are compared
    ff, bb = Ints("ff bb")
    floor = And(b >= 1, bb >= b, f >= 0, ff >= f, ff <= 2 * bb, 2 * bb < ff + 2 * f + 1)
    above = Implies(1000000 * f > 1414214 * b, 1000000**2 * ff > 1414214**2 * bb)
    below = Implies(1000000 * (f + 1) <= 1414213 * b, 1000000**2 * (ff + 2 * f + 1) <= 1414213**2 * bb)
    ten = And(b == 10, bb == 100, f == 14, ff == 196)
    yield ("floor(b sqrt 2) is at most 1.414214 b, for any b", And(floor, above), 1000000 * f <= 1414214 * b,
           10 * f <= 13 * b, ten)
    yield ("floor(b sqrt 2) is above 1.414213 b - 1, for any b", And(floor, below), 1000000 * (f + 1) > 1414213 * b,
           1000000 * f > 1414213 * b, ten)
    known = And(d > 0, q >= 0, f == q * d + o, 0 <= o, o < d, f * f <= n, n < (f + 1) * (f + 1))
    low = q * d
    yield ("sqrt(n) / d is not below floor(floor(sqrt n) / d)", And(known, low >= 0), low * low <= n, low * low < n,
           And(d == 2, n == 4))
    yield ("sqrt(n) / d is below the next whole number", known, n < (low + d) * (low + d), n < low * low + d,
           And(d == 3, n == 8))
    # 2 sqrt n >= (2 q + 1) d, both sides squared, against msl_root_round's question; s is sqrt n's share of a tick
    odd = 2 * low + d
    asked = 2 * o + If(rest > f, 1, 0) >= d
    known = And(known, rest == n - f * f)
    yield ("a half is reached where it is said", And(known, asked), 4 * n >= odd * odd, 4 * n > odd * odd,
           And(n == 1, d == 2))
    yield ("a half is not reached where it is denied", And(known, Not(asked)), 4 * n < odd * odd, 4 * n + 2 < odd * odd,
           And(d == 3, n == 2))


def yields():
    """stripset.c's most_cuts(): the cuts that fit, a re-squaring after every m of them. In t full rounds of m a + loss,
    and then in `last` more."""
    room, a, loss, m, t, r, fit, s, last = Ints("room a loss m t r fit s last")
    turns, cuts = t * (m * a + loss), t * m
    spec = And(1 <= a, 0 <= loss, 1 <= m, 0 <= t, room - a == turns + r, 0 <= r, r < m * a + loss,
               r == fit * a + s, 0 <= s, s < a, fit >= 0)
    opened = And(spec, fit < m)  # last = fit
    full = And(spec, fit >= m)  # last = m - 1
    yield ("in an open round, the cuts fit", opened, (1 + cuts + fit) * a + t * loss <= room,
           (1 + cuts + fit) * a + t * loss < room, And(a == 1, loss == 1, m == 2, room == 1))
    yield ("in an open round, one more does not", And(opened, fit < m - 1), (2 + cuts + fit) * a + t * loss > room,
           (1 + cuts + fit) * a + t * loss > room, And(a == 1, loss == 1, m == 2, room == 1, fit == 0))
    yield ("in the last place of a round, one more and a re-squaring do not", And(opened, fit == m - 1),
           (1 + cuts + m) * a + (t + 1) * loss > room, (1 + cuts + m) * a + t * loss < room,
           And(a == 1, loss == 1, m == 2, room == 2))
    yield ("in a full round, the cuts fit", full, (cuts + m) * a + t * loss <= room,
           (1 + cuts + m) * a + (t + 1) * loss <= room, And(a == 1, loss == 1, m == 1, room == 2))
    yield ("in a full round, one more and a re-squaring do not", full, (1 + cuts + m) * a + (t + 1) * loss > room,
           (1 + cuts + m) * a + t * loss > room, And(a == 1, loss == 1, m == 1, room == 2))


def main():
    proved = refuted = count = 0
    for group in (facts, products, roots, yields):
        for name, known, follows, false, example in group():
            count += 1
            good = answer(known, Not(follows)) == unsat
            wrong = answer(known, example, Not(false)) == sat
            proved += good
            refuted += wrong
            if not good or not wrong:
                print(f"{group.__name__}: {name}:", "proved" if good else "NOT PROVED",
                      "and its neighbour", "refuted" if wrong else "NOT REFUTED", flush=True)
    print(f"{proved} of {count} lemmas proved, {refuted} false ones refuted")


main()
