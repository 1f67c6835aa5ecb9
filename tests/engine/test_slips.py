"""The small slips that `python -m tests.mutation` makes: what they are, and one at a time."""

from __future__ import annotations

import ast

from tests.mutation.changes import mutants, mutated

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


def test_each_slip_changes_that_one_thing_and_leaves_the_code_itself_alone() -> None:
    tree = ast.parse(CODE)
    before = ast.unparse(tree)
    changed = [ast.unparse(mutated(tree, one)) for one in mutants(tree)]
    assert ast.unparse(tree) == before
    assert len(set(changed)) == len(changed)
    assert before not in changed
    lines = before.splitlines()
    for code in changed:
        differ = [now for now, was in zip(code.splitlines(), lines, strict=True) if now != was]
        assert len(differ) == 1, code


def test_only_what_stands_in_a_function_is_asked_of_the_tests_that_run_it() -> None:
    by_line = {one.first: one.runs for one in mutants(ast.parse(CODE))}
    assert by_line == {2: False, 4: False, 6: True, 7: True, 8: True}
