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
    """The axioms of the headers in this folder, but order.h and units.h, which WP proves."""
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
    yield ("what goes q times into a number, and not once more, is the quotient",
           And(q >= 0, divided(a, b, k, r), b > 0, q * b <= a, a < q * b + b), k == q, k == q + 1, And(b == 3, a == 7))
    yield ("products keep order", And(p >= 0, a <= b), a * p <= b * p, a * p < b * p, And(p == 2, a == 5, b == 5))
    yield ("half of a power of two is one, but of 1", And(Or([x == 2**n for n in range(63)]), divided(x, 2, half, odd)),
           If(x == 1, half == 0, And(odd == 0, Or([half == 2**n for n in range(63)]))), odd == 0, x == 1)
    yield ("18 digits are room for 10^18", And(0 <= k, k <= 18, Or([And(k == n, x == 10**n) for n in range(19)])),
           And(1 <= x, x <= 10**18), x < 10**18, k == 18)
    yield ("what divides b, and the rest of a by b, divides a",
           And(b > 0, divided(a, b, q, r), b == k * p, r == half * p), a == (q * k + half) * p, a == q * k * p,
           And(b == 2, r == 1))
    yield ("a rest that is a multiple of the divisor is none", And(p > 0, r == k * p, 0 <= r, r < p), r == 0,
           And(r == 0, p == 1), p == 3)
    yield ("a byte below 0 wraps by 2^8", And(-2**7 <= x, x < 0, divided(x, 2**8, q, r)), r == x + 2**8, r == x, True)
    yield ("a word below 0 wraps by 2^32", And(-2**32 <= x, x < 0, divided(x, 2**32, q, r)), r == x + 2**32, r == x,
           True)
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
    """The root of 2, by squares: f is the floor of b sqrt 2."""
    b, f = Ints("b f")
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


def main():
    proved = refuted = count = 0
    for group in (facts, products, roots):
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
