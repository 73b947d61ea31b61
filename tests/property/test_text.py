# SPDX-License-Identifier: MIT
"""Lengths in and out of text against the grammar as a regular expression."""

from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from asking import ask, ask_bytes
from muslin_model import text as model
from muslin_model.base import LENGTH_MAX
from questions import agree, as_object, choices, lengths

BLANKS = st.sampled_from(["", " ", "  ", "\t", "\u00a0", "\u202f", "\u2009"])
SLASHES = st.sampled_from("/\u2044\u2215")
DIGITS = st.one_of(st.integers(0, 120).map(str), st.integers(0, 10**9).map(str),
                   st.sampled_from(["007", "9" * 18, "9" * 19, "0" * 30, "500" + "0" * 20]))
SOME_BLANKS = BLANKS.map(lambda blank: blank or " ")
VULGAR = st.sampled_from(sorted(model.VULGAR))
UNITS = st.sampled_from(sorted(model.UNIT_OF))


def join(*parts):
    return st.tuples(*parts).map("".join)


def numbers(decimal_sign):
    fraction = join(DIGITS, SLASHES, DIGITS)
    return st.one_of(DIGITS, join(DIGITS, st.just(decimal_sign), DIGITS), join(st.just(decimal_sign), DIGITS),
                     fraction, join(DIGITS, SOME_BLANKS, fraction), join(DIGITS, st.just("-"), fraction),
                     VULGAR, join(DIGITS, VULGAR), join(DIGITS, SOME_BLANKS, VULGAR))


def texts(decimal_sign):
    part = join(numbers(decimal_sign), BLANKS, st.one_of(UNITS, UNITS.map(str.upper)), BLANKS)
    last = join(numbers(decimal_sign), BLANKS, st.one_of(st.just(""), UNITS), BLANKS)
    sign = st.sampled_from(["", "", "+", "-", "\u2212"])
    return join(BLANKS, sign, st.lists(part, max_size=2).map("".join), last)


signs = st.sampled_from(".,")
alphabet = st.text("0123456789 /-+.,'\"inftydcmM\u00bd\u2044\u2212\u2033\u00a0\u2009x", max_size=9)


def same_reading(data, unit, sign):
    agree(lambda: ask_bytes(data, unit, ord(sign)), lambda: model.parse(data, unit, sign))


@given(signs.flatmap(lambda sign: st.tuples(st.just(sign), texts(sign))), st.integers(1, 6))
def test_what_the_grammar_allows_is_read_exactly(written, unit):
    sign, text = written
    same_reading(text.encode(), unit, sign)


@given(alphabet, st.integers(1, 6), signs)
def test_any_other_text_is_refused(text, unit, sign):
    same_reading(text.encode(), unit, sign)


@given(texts("."), st.integers(0, 30), st.sampled_from(["", "x", "1", " ", "/", "\u00bd", "-", "in", ","]))
def test_a_text_with_one_slip_is_read_or_refused_alike(text, place, slip):
    same_reading((text[:place] + slip + text[place + 1:]).encode(), 1, ".")


@given(st.binary(max_size=10))
def test_any_bytes_at_all_are_read_or_refused_alike(data):
    same_reading(data, 1, ".")


styles = st.fixed_dictionaries({
    "style": choices(5),
    "denominator": st.one_of(st.sampled_from([1, 2, 4, 8, 16, 32, 64]), st.integers(-1, 66)),
    "decimals": st.integers(-1, 7),
    "decimal_sign": st.sampled_from([46, 44, 44, 46, 0]),
    "direction": choices(3),
})


@given(lengths, styles, st.booleans(), st.booleans())
def test_a_length_is_written_as_its_style_says(length, style, unicode, bare):
    agree(lambda: tuple(ask("length_format", length, dict(style, unicode=unicode, bare=bare)).values()),
          lambda: model.format_length(length, as_object(style), unicode, bare))


@st.composite
def shown_exactly(draw):
    """A style, and a length on its grid."""
    style = draw(st.integers(1, 5))
    spec = {"style": style, "denominator": draw(st.integers(1, 64)), "decimals": draw(st.integers(0, 6)),
            "decimal_sign": ord(draw(signs)), "unicode": draw(st.booleans()), "bare": draw(st.booleans())}
    below = spec["denominator"] if style in (model.INCH_FRACTION, model.YARD_FRACTION) else 10 ** spec["decimals"]
    step = Fraction(model.TICKS[model.STYLE_UNIT[style]], below).numerator
    most = LENGTH_MAX // step
    return spec, step * draw(st.integers(-1000, 1000) | st.integers(-most, most))


@given(shown_exactly())
def test_an_exact_text_reads_back_as_the_same_length(question):
    spec, length = question
    written = ask("length_format", length, spec)
    reading = {"default_unit": model.STYLE_UNIT[spec["style"]], "decimal_sign": spec["decimal_sign"]}
    read = ask("length_parse", written["text"], reading)
    assert (written["exact"], read["value"], read["exact"]) == (1, length, 1)
