"""The chance that a standard normal value is below a number, of whole arrays.

By the rational approximations of Stephen L. Moshier's Cephes Mathematical Library (release 2.2, 1992,
`ndtr.c`, <https://netlib.org/cephes/>; relative error below 4e-14 from -13 to 0 by its own account).
They are those that scipy computes with, so that decisions kept from when scipy was asked replay to
the bit.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from engine.model.structures import Floats

Doubles = NDArray[np.float64]


def _each(*coefficients: float) -> tuple[Doubles, ...]:
    """Each as an array without a dimension: numpy takes those sooner than plain numbers."""
    return tuple(np.array(one) for one in coefficients)


#: Highest power first, as printed there; under the line the factor of the highest is 1 and left out.
#: erf(z) is z by their ratio in z squared, for z below 1.
ERF_OVER = _each(
    9.60497373987051638749e0, 9.00260197203842689217e1, 2.23200534594684319226e3,
    7.00332514112805075473e3, 5.55923013010394962768e4,
)  # fmt: skip
ERF_UNDER = _each(
    3.35617141647503099647e1, 5.21357949780152679795e2, 4.59432382970980127987e3,
    2.26290000613890934246e4, 4.92673942608635921086e4,
)  # fmt: skip
#: erfc(z) is exp(-z squared) by their ratio in z, for z from 1 to 8.
ERFC_OVER = _each(
    2.46196981473530512524e-10, 5.64189564831068821977e-1, 7.46321056442269912687e0,
    4.86371970985681366614e1, 1.96520832956077098242e2, 5.26445194995477358631e2,
    9.34528527171957607540e2, 1.02755188689515710272e3, 5.57535335369399327526e2,
)  # fmt: skip
ERFC_UNDER = _each(
    1.32281951154744992508e1, 8.67072140885989742329e1, 3.54937778887819891062e2,
    9.75708501743205489753e2, 1.82390916687909736289e3, 2.24633760818710981792e3,
    1.65666309194161350182e3, 5.57535340817727675546e2,
)  # fmt: skip
#: The same from `FAR_FROM` on.
FAR_OVER = _each(
    5.64189583547755073984e-1, 1.27536670759978104416e0, 5.01905042251180477414e0,
    6.16021097993053585195e0, 7.40974269950448939160e0, 2.97886665372100240670e0,
)  # fmt: skip
FAR_UNDER = _each(
    2.26052863220117276590e0, 9.39603524938001434673e0, 1.20489539808096656605e1,
    1.70814450747565897222e1, 9.60896809063285878198e0, 3.36907645100081516050e0,
)  # fmt: skip
ROOT_HALF = 0.70710678118654752440
#: From this z on the chance is 1 once it is rounded: in single precision, in double.
ONE_FROM_SINGLE, ONE_FROM_DOUBLE = 3.9, 5.9
FAR_FROM = 8.0
NOTHING_FROM = 40.0  # exp(-z squared) is 0, and the powers of z are not yet infinite


def normal_below(deviations: Floats) -> Floats:
    """The chance that a standard normal value is below each of these; single precision stays so."""
    z = np.multiply(deviations, ROOT_HALF, dtype=np.float64).ravel()
    below = np.ones(z.shape, dtype=deviations.dtype)
    single = deviations.dtype == np.float32
    near = np.abs(z) < 1
    if (at := np.flatnonzero(near)).size:
        below[at] = _near(z[at])
    sure = z > (ONE_FROM_SINGLE if single else ONE_FROM_DOUBLE)
    if (at := np.flatnonzero(~(near | sure))).size:
        below[at] = _far(z[at])
    return below.reshape(deviations.shape)


def _near(z: Doubles) -> Doubles:
    square = z * z
    below = z * _polynomial(square * ERF_OVER[0], ERF_OVER[1:], square)
    below /= _polynomial(square.copy(), ERF_UNDER, square)
    below *= 0.5
    below += 0.5
    return below


def _far(z: Doubles) -> Doubles:
    """Of z from 1 on either side: from the tail, which keeps its digits on the left."""
    out = np.minimum(np.abs(z), NOTHING_FROM)
    tail = _tail(out, ERFC_OVER, ERFC_UNDER)
    if (at := np.flatnonzero(out >= FAR_FROM)).size:
        tail[at] = _tail(out[at], FAR_OVER, FAR_UNDER)
    return np.abs(np.subtract(tail, z > 0, out=tail), out=tail)  # on the right 1 less the tail


def _tail(out: Doubles, over: Sequence[Doubles], under: Sequence[Doubles]) -> Doubles:
    """Half of erfc."""
    tail: Doubles = np.exp(-out * out)
    tail *= _polynomial(out * over[0], over[1:], out)
    tail /= _polynomial(out.copy(), under, out)
    tail *= 0.5
    return tail


def _polynomial(value: Doubles, coefficients: Sequence[Doubles], x: Doubles) -> Doubles:
    """By Horner's rule, in place: `value` is the highest term so far over the next power."""
    value += coefficients[0]
    for coefficient in coefficients[1:]:
        value *= x
        value += coefficient
    return value
