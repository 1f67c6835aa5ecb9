"""The small slips that `python -m tests.mutation` makes: what they are, and one at a time."""

from __future__ import annotations

import ast
from typing import Any

from tests.mutation.changes import change, mutants, with_steps_told

CODE = """
SIGNS = frozenset({"a", "b"})

def least(known, *, most=3.0):
    "Fewer than 5."
    if not known or known[-1] <= most:
        return min(known)
    return round(most * 2, 6)
"""


def test_a_slip_is_an_edge_a_sign_a_figure_or_one_left_out() -> None:
    found = {str(one) for one in mutants(ast.parse(CODE))}
    assert found == {
        "SIGNS = frozenset({'a', 'b'})  ->  SIGNS = frozenset({'b'})",
        "SIGNS = frozenset({'a', 'b'})  ->  SIGNS = frozenset({'a'})",
        "least: 3.0  ->  4.0",
        "least: not known or known[-1] <= most  ->  not known and known[-1] <= most",
        "least: not known or known[-1] <= most  ->  known or known[-1] <= most",
        "least: not known or known[-1] <= most  ->  not known or known[-1] < most",
        "least: not known or known[-1] <= most  ->  not known or known[1] <= most",
        "least: not known or known[-1] <= most  ->  not known or known[-2] <= most",
        "least: return min(known)  ->  return max(known)",
        "least: return round(most * 2, 6)  ->  return round(most / 2, 6)",
        "least: return round(most * 2, 6)  ->  return round(most * 3, 6)",
    }


def test_each_slip_changes_one_line_and_looking_for_them_none() -> None:
    tree = ast.parse(CODE)
    before = ast.unparse(tree)
    slips = mutants(tree)
    assert ast.unparse(tree) == before
    changed = []
    for one in slips:
        copied = ast.parse(CODE)
        change(copied, one)
        changed.append(ast.unparse(copied))
    assert len(set(changed)) == len(changed)
    assert before not in changed
    lines = before.splitlines()
    for code in changed:
        differ = [now for now, was in zip(code.splitlines(), lines, strict=True) if now != was]
        assert len(differ) == 1, code


def test_what_stands_in_a_function_is_asked_of_the_tests_that_come_by_there() -> None:
    tree = ast.parse(CODE)
    assert {one.line: one.step for one in mutants(tree)} == {2: None, 4: None, 6: 6, 7: 7, 8: 8}
    came_by: list[int] = []
    module: dict[str, Any] = {"told": came_by.append}
    exec(compile(with_steps_told(tree, "told"), "code", "exec"), module)
    assert came_by == []
    assert (module["least"]([2, 1]), came_by) == (1, [5, 6, 7])
    came_by.clear()
    assert (module["least"]([9]), came_by) == (6, [5, 6, 8])
