"""The small changes that a slip of the hand could make of a module: each is one mutant.

A comparison's edge, `and` for `or`, `min` for `max`, a `not` or a sign left out, a level, a figure by
one, one of a set left out.
"""

from __future__ import annotations

import ast
import copy
from collections.abc import Iterator, Mapping
from dataclasses import dataclass

_COMPARED: Mapping[type[ast.cmpop], type[ast.cmpop]] = {
    ast.Lt: ast.LtE, ast.LtE: ast.Lt, ast.Gt: ast.GtE, ast.GtE: ast.Gt, ast.Eq: ast.NotEq,
    ast.NotEq: ast.Eq, ast.In: ast.NotIn, ast.NotIn: ast.In, ast.Is: ast.IsNot, ast.IsNot: ast.Is,
}  # fmt: skip
_ADDED: Mapping[type[ast.operator], type[ast.operator]] = {
    ast.Add: ast.Sub, ast.Sub: ast.Add, ast.Mult: ast.Div, ast.Div: ast.Mult,
}  # fmt: skip
_NAMES = {"min": "max", "max": "min", "any": "all", "all": "any"}
_MEMBERS = {
    ("Level", "ADVISORY"): "CAUTION", ("Level", "CAUTION"): "ADVISORY",
    ("Level", "WARNING"): "CAUTION",
    ("Forecast", "SILENT"): "SIZES", ("Forecast", "LOWERS"): "SIZES",
    ("Forecast", "DEEPENS"): "LOWERS", ("Forecast", "ASKS"): "SIZES",
    ("Forecast", "DECIDES"): "SIZES",
    ("Outcome", "HELD"): "ADJUSTED", ("Outcome", "ADJUSTED"): "HELD",
    ("Outcome", "ESCALATED"): "HELD",
    ("Look", "FLAT"): "FULL", ("Look", "FULL"): "SPILLED", ("Look", "SPILLED"): "FULL",
    ("CoachLook", "SPILLED"): "SOFTENING", ("CoachLook", "SOFTENING"): "SPILLED",
    ("CoachLook", "FULL"): "ON_COURSE", ("CoachLook", "ON_COURSE"): "FULL",
    ("CoachLook", "FLAT"): "ON_COURSE",
    ("Sex", "FEMALE"): "MALE", ("Sex", "MALE"): "FEMALE", ("Gut", "BAD"): "HEAVY",
}  # fmt: skip
#: About so much of what stands around a change is shown with it.
_SHOWN = 70


@dataclass(frozen=True, slots=True)
class Mutant:
    """One small change: the `change`-th of the `node`-th node of its module's tree.

    `step` is the line of the statement or lambda of a function's body that it stands in, of which only
    those tests can tell that come by there; None for what runs as the module is loaded.
    """

    node: int
    change: int
    place: str
    was: str
    now: str
    line: int
    step: int | None

    def __str__(self) -> str:
        where = f"{self.place}: " if self.place else ""
        return f"{where}{self.was}  ->  {self.now}"


def mutants(tree: ast.Module) -> list[Mutant]:
    """Every mutant of a module, in the order of its lines."""
    places = dict(_places(tree))
    passed_over = {id(one) for node in ast.walk(tree) for one in _unseen(node)}
    found = []
    for number, node in enumerate(ast.walk(tree)):
        if id(node) in passed_over:
            continue
        for change, changed in enumerate(_changes(node)):
            place, step, around = places[id(node)]
            was, now = _shown(node, changed, around)
            line = getattr(node, "lineno", 0)
            found.append(Mutant(number, change, place, was, now, line, step))
    return sorted(found, key=lambda one: (one.line, one.node, one.change))


def change(tree: ast.Module, mutant: Mutant) -> None:
    """Makes that change in the tree itself."""
    node = list(ast.walk(tree))[mutant.node]
    _put(node, list(_changes(node))[mutant.change])
    ast.fix_missing_locations(tree)


def with_steps_told(tree: ast.Module, told: str) -> ast.Module:
    """The module as it is, but each step of its functions calls the name `told` with its line first."""
    whole = copy.deepcopy(tree)
    for node in list(ast.walk(whole)):
        if isinstance(node, ast.Lambda):
            both = ast.Tuple([_call(told, node.body.lineno), node.body], ast.Load())
            node.body = ast.Subscript(both, ast.Constant(1), ast.Load())
        elif isinstance(node, ast.FunctionDef):
            _tell_steps(node, told)
    return ast.fix_missing_locations(whole)


def _tell_steps(node: ast.AST, told: str) -> None:
    for name in ("body", "orelse", "finalbody"):
        steps = getattr(node, name, None)
        if isinstance(steps, list):
            for step in steps:
                if not isinstance(step, ast.FunctionDef):  # that one is looked at by itself
                    _tell_steps(step, told)
            each = [(ast.Expr(_call(told, step.lineno)), step) for step in steps]
            setattr(node, name, [one for pair in each for one in pair])
    for handler in getattr(node, "handlers", ()):
        _tell_steps(handler, told)


def _call(told: str, line: int) -> ast.Call:
    return ast.Call(ast.Name(told, ast.Load()), [ast.Constant(line)], [])


def _put(node: ast.AST, changed: ast.AST) -> None:
    """Turns the node into the changed one, in the place where it stands."""
    node.__class__ = changed.__class__
    where = {
        name: value for name, value in vars(node).items() if name.endswith(("lineno", "offset"))
    }
    vars(node).clear()
    vars(node).update({**vars(changed), **where})


def _places(
    node: ast.AST, place: str = "", step: int | None = None, around: tuple[ast.AST, ...] = ()
) -> Iterator[tuple[int, tuple[str, int | None, tuple[ast.AST, ...]]]]:
    """Where each node stands, by id: the names of what it is in, the step that it is a part of."""
    yield id(node), (place, step, around)
    called = step is not None or isinstance(node, ast.FunctionDef | ast.Lambda)
    for name, value in ast.iter_fields(node):
        inside = place
        if isinstance(node, ast.FunctionDef | ast.ClassDef):
            inside = f"{place}.{node.name}".lstrip(".")
        elif isinstance(node, ast.Call) and not place:
            inside = next((str(ast.literal_eval(k.value)) for k in node.keywords if _is_id(k)), "")
        for child in value if isinstance(value, list) else [value]:
            if isinstance(child, ast.AST):
                own = isinstance(child, ast.stmt) or isinstance(node, ast.Lambda)
                begins = called and own and name in {"body", "orelse", "finalbody"}
                line = child.lineno if begins and isinstance(child, ast.stmt | ast.expr) else step
                yield from _places(child, inside, line, (*around, node))


def _is_id(keyword: ast.keyword) -> bool:
    """Whether this names an entry of a table, as `id="steady"` does."""
    return keyword.arg == "id" and isinstance(keyword.value, ast.Constant)


def _shown(node: ast.AST, changed: ast.AST, around: tuple[ast.AST, ...]) -> tuple[str, str]:
    """The change with what stands around it, before and after."""
    shown = node
    for outer in reversed(around):
        if not isinstance(outer, ast.expr | ast.keyword | ast.Assign | ast.AnnAssign | ast.Return):
            break
        if len(ast.unparse(outer)) > _SHOWN:
            break
        shown = outer
    was = ast.unparse(shown)
    kept = copy.copy(node)
    try:
        _put(node, changed)
        return was, ast.unparse(shown)
    finally:
        _put(node, kept)


def _unseen(node: ast.AST) -> Iterator[ast.AST]:
    """What no decision could tell of: decorators, and where dust is rounded off."""
    unseen: list[ast.expr] = []
    if isinstance(node, ast.ClassDef | ast.FunctionDef):
        unseen += node.decorator_list
    elif isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id == "round":
        unseen += node.args[1:]
    for one in unseen:
        yield from ast.walk(one)


def _changes(node: ast.AST) -> Iterator[ast.AST]:
    """What the node could become by one small change."""
    match node:
        case ast.Compare():
            for i, compared in enumerate(node.ops):
                if (other := _COMPARED.get(type(compared))) is not None:
                    ops = [*node.ops[:i], other(), *node.ops[i + 1 :]]
                    yield ast.Compare(node.left, ops, node.comparators)
        case ast.BoolOp():
            swapped = ast.Or() if isinstance(node.op, ast.And) else ast.And()
            yield ast.BoolOp(swapped, node.values)
        case ast.BinOp() if type(node.op) in _ADDED:
            yield ast.BinOp(node.left, _ADDED[type(node.op)](), node.right)
        case ast.UnaryOp(op=ast.Not() | ast.USub()):
            yield node.operand
        case ast.Name(id=name) if name in _NAMES:
            yield ast.Name(_NAMES[name], node.ctx)
        case ast.Constant(value=bool()):
            yield ast.Constant(not node.value)
        case ast.Constant(value=int() | float()):
            yield ast.Constant(node.value + 1)
        case ast.Attribute(value=ast.Name(id=of), attr=name) if (of, name) in _MEMBERS:
            yield ast.Attribute(node.value, _MEMBERS[of, name], node.ctx)
        case ast.Set(elts=several) if len(several) > 1:
            for i in range(len(several)):
                yield ast.Set([*several[:i], *several[i + 1 :]])
