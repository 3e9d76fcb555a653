#!/usr/bin/env python3
"""Computes a working again, line by line, in exact fractions, and says whether every line of it is true.

    python3 check_working.py [--arithmetic-only] FILE ...

A file holds one working in the form of working-1.schema.json. Of each file one line is printed: "accepted" with what was
found, or "refused" with the line of the working and the reason. The exit status is 0 if all are accepted, else 1.

What is computed: sums, differences, products, quotients, sizes, least and greatest, roundings (grid, mode and result),
comparisons and the answer, all exactly; roots and powers of ten to their last digit; Φ, the standard normal distribution, in
a bracket of 12 digits. Any other function is named as unchecked. What was given, and all texts, are held by the SHA-256 of
the canonical form (RFC 8785); --arithmetic-only leaves that out. Needs Python 3.8 and nothing else.
"""
import hashlib
import json
import re
import sys
from collections import Counter
from decimal import MAX_EMAX, MIN_EMIN, Decimal, localcontext
from fractions import Fraction

FORMAT, VERSION = "formulation-math/working", "1"
NUMBER = re.compile(r"-?(?:0|[1-9][0-9]*)(?:\.[0-9]+|/[1-9][0-9]*)?")
LONGEST = 100_000  # digits of a number
PI = Decimal("3.14159265358979323846264338327950288419716939937510582097494459230781640628620899862803482534211706798")


class Refused(Exception):
    """What is wrong with a working."""


def require(condition, reason):
    if not condition:
        raise Refused(reason)


def number(text):
    require(len(text) <= LONGEST and NUMBER.fullmatch(text), f"{text[:40]!r} is no number")
    return Fraction(text)


def whole(x, mode):
    """x as a whole number under one of the eight modes."""
    floor, rest = divmod(x.numerator, x.denominator)
    if rest == 0:
        return floor
    towards, away = (floor, floor + 1)[:: 1 if x > 0 else -1]
    ties = {"half-up": away, "half-down": towards, "half-even": floor + floor % 2}
    if mode in ties and 2 * rest != x.denominator:
        return floor + (2 * rest > x.denominator)
    modes = {"up": away, "down": towards, "ceiling": floor + 1, "floor": floor, **ties}
    require(mode in modes, f"{x} cannot be rounded by the mode {mode!r}")
    return modes[mode]


def grid(value, digits):
    """The value in units of its last digit, if it has no more than so many significant digits."""
    unit = Fraction(1)
    while abs(value) >= unit * 10**digits:
        unit *= 10
    while abs(value) < unit * 10 ** (digits - 1):
        unit /= 10
    require((value / unit).denominator == 1, f"{value} has more than {digits} significant digits")
    return unit


def rounded(line, x, _):
    if line["mode"] == "none":
        return x
    step = number(line["step"])
    require(step > 0 and number(line["divisions"]) * step == x, "the divisions of the step do not make up the input")
    if "digits" in line:
        d = int(line["digits"])
        size = abs(x / step)
        right = 10 ** (d - 1) <= size < 10**d if x else step == 1
        require(right and re.fullmatch("10*", str(max(step, 1 / step))), f"the step is not that of {d} digits")
    times = whole(x / step, line["mode"])
    require(number(line["whole"]) == times, f"the whole number of steps is {times}")
    return times * step


def root(line, x, claimed):
    if x == 0:
        return x
    require(x > 0 and claimed > 0, "the root of a negative number, or one that is not above 0")
    unit = grid(claimed, int(line["digits"]))
    require((claimed - unit / 2) ** 2 <= x <= (claimed + unit / 2) ** 2, "this is not the root to its last digit")
    return claimed


def power(line, x, claimed):
    require(abs(x) <= 10**6 and claimed > 0, "a power of ten that is too large or not above 0")
    with localcontext() as context:
        context.prec, context.Emax, context.Emin = 100, MAX_EMAX, MIN_EMIN
        exact = Fraction(Decimal(10) ** (Decimal(x.numerator) / x.denominator))
    unit = grid(claimed, int(line["digits"]))
    require(abs(exact - claimed) <= unit / 2 * (1 + Fraction(1, 10**30)), "this is not the power to its last digit")
    return claimed


def normal(x, claimed):
    """The series in odd powers near 0, the continued fraction of the tail beyond (Abramowitz, Stegun 26.2.11, 26.2.14)."""
    with localcontext() as context:
        context.prec = 60
        z = Decimal(abs(x.numerator)) / x.denominator
        total = term = below = z
        for k in range(400, 0, -1):
            below = z + k / below if z > 3 else z
        for k in range(3, 400, 2):
            term = term * z * z / k
            total += term
        density = (-z * z / 2).exp() / (2 * PI).sqrt()
        tail = Fraction(density / below if z > 3 else Decimal("0.5") - density * total)
    exact = tail if x <= 0 else 1 - tail
    return abs(claimed - exact) <= exact * (1 + x * x) / 10**12 + Fraction(1, 10**307)


EXACT = {
    "sum": lambda *all: sum(all, Fraction(0)),
    "difference": lambda a, b: a - b,
    "product": lambda a, b: a * b,
    "quotient": lambda a, b: a / b,
    "absolute": abs,
    "minimum": lambda *all: min(all),
    "maximum": lambda *all: max(all),
    "step": lambda a: a,
}
CLAIMS = {"rounded": rounded, "root": root, "power": power}
SIGNS = {"<": "__lt__", "≤": "__le__", "=": "__eq__", "≥": "__ge__", ">": "__gt__"}


def check_line(line, values, found):
    """The value of a line; None for a comparison or a remark."""
    kind = line["is"]
    found[kind] += 1
    if kind == "note":
        return None
    inputs = [values.get(each) for each in line.get("of", [])]
    require(None not in inputs, "it uses a line that is no number above it")
    if kind == "comparison":
        holds = str(getattr(inputs[0], SIGNS[line["sign"]])(inputs[1])).lower()
        require(len(inputs) == 2 and line["holds"] == holds, f"{inputs[0]} {line['sign']} {inputs[1]} is {holds}")
        return None
    claimed = number(line["value"])
    if kind in EXACT:
        value = EXACT[kind](*inputs)
    elif kind in CLAIMS:
        value = CLAIMS[kind](line, *inputs, claimed)
    else:
        require(kind == "function" or kind in ("given", "number") and not inputs, f"no such line: {kind[:40]!r}")
        value = claimed
        if kind == "function" and line["function"] == "Φ":
            require(normal(*inputs, claimed), "the value lies outside its bracket")
        elif kind == "function":
            found[f"unchecked {line['function']}"] += 1
    require(value == claimed, f"the value is {value}, not {claimed}")
    return value


def check(document, sealed=True):
    """What was found: how many lines of each kind."""
    require(document["format"] == FORMAT and document["version"] == VERSION, "this is no working of version 1")
    values, found = {}, Counter()
    for place, line in enumerate(document["lines"], 1):
        try:
            require(line["line"] == str(place), "the lines are not numbered in order")
            values[line["line"]] = check_line(line, values, found)
        except (Refused, KeyError, TypeError, ValueError, ArithmeticError, AttributeError) as e:
            raise Refused(f"line {place}: {e if isinstance(e, Refused) else repr(e)}") from e
    answer = values.get(document["answer"]["line"])
    require(answer is not None and answer == number(document["answer"]["value"]), f"the answer is {answer}")
    body = {key: part for key, part in document.items() if key != "sha256"}
    canonical = json.dumps(body, ensure_ascii=False, sort_keys=True, separators=(",", ":"))
    seal = hashlib.sha256(canonical.encode("utf-8")).hexdigest()
    require(not sealed or document["sha256"] == seal, "the seal is broken: a given value or a text was changed")
    return found


def fields(pairs):
    require(len(dict(pairs)) == len(pairs), "a field is given twice")
    return dict(pairs)


def main(arguments):
    getattr(sys, "set_int_max_str_digits", lambda digits: None)(LONGEST)
    sys.stdout.reconfigure(encoding="utf-8")
    files, refused = [each for each in arguments if each != "--arithmetic-only"], 0
    for file in files:
        try:
            with open(file, encoding="utf-8") as text:
                found = check(json.load(text, object_pairs_hook=fields), sealed=len(files) == len(arguments))
            print(f"{file}: accepted:", ", ".join(f"{many} {kind}" for kind, many in found.items()))
        except (Refused, OSError, ValueError, KeyError, TypeError, AttributeError, RecursionError) as e:
            refused += 1
            print(f"{file}: refused: {e if isinstance(e, Refused) else repr(e)}")
    return 1 if refused or not files else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
