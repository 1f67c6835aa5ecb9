"""gen_tables.py ROOT : per-feature table.py with one FEATURE, and bot/features.py."""
import ast,pathlib,sys,collections,re
ROOT=pathlib.Path(sys.argv[1])
SRCS=["bot/athlete/table.py","bot/coach/table.py","bot/food/routes.py","bot/stage/table.py","bot/calendar/file.py","bot/travel/travel.py","bot/readiness/table.py","bot/membership/language.py","bot/debrief/after_show.py","bot/debrief/debrief.py"]
KINDS={"COMMANDS":"commands","TAPS":"taps","FLOWS":"flows","DUTIES":"duties","ON_CARD":"on_card"}
feat=collections.defaultdict(lambda:collections.defaultdict(list)); imps=collections.defaultdict(set)
rank=0; firsts=[]
for s in SRCS:
    p=ROOT/s; src=p.read_text(); t=ast.parse(src); m=s[:-3].replace("/",".")
    imp={}
    local=set()
    for n in t.body:
        if isinstance(n,ast.ImportFrom):
            for al in n.names: imp[al.asname or al.name]=(n.module,al.name)
        if isinstance(n,(ast.FunctionDef,ast.ClassDef)): local.add(n.name)
        if isinstance(n,ast.Assign):
            for x in n.targets:
                if isinstance(x,ast.Name): local.add(x.id)
        if isinstance(n,ast.AnnAssign): local.add(n.target.id)
    def feature_of(expr):
        # the run function is the first Attribute/Name that is not a flow/kind
        n=expr
        if isinstance(n,ast.Starred): n=n.value
        if isinstance(n,ast.GeneratorExp): n=n.elt
        if isinstance(n,ast.Call):
            f=n.func.id; run=n.args[2] if f in("Command","Tap") else n.args[1]
        else: run=n
        base=run
        while isinstance(base,ast.Attribute): base=base.value
        if isinstance(base,ast.Call): base=base.args[0]
        if base.id in local and base.id not in imp: return m.split(".")[1]
        mod,name=imp[base.id]
        full=f"{mod}.{name}" if (ROOT/f"{mod}.{name}".replace('.','/')).with_suffix(".py").exists() else mod
        return full.split(".")[1]
    def need(expr,f):
        bound={a.arg for x in ast.walk(expr) if isinstance(x,ast.Lambda) for a in x.args.args}|{x.target.id for x in ast.walk(expr) if isinstance(x,ast.comprehension)}
        for x in ast.walk(expr):
            if isinstance(x,ast.Name) and x.id not in bound and x.id not in dir(__builtins__):
                if x.id in imp: imps[f].add((imp[x.id][0],imp[x.id][1],x.id))
                elif x.id in local and x.id!="BOTH":
                    pk,_,mb=m.rpartition("."); imps[f].add((pk,mb,mb))
                elif x.id=="BOTH":
                    imps[f].add((m,"BOTH","BOTH")); imps[f].add(("bot.core.routes","ATHLETE","ATHLETE")); imps[f].add(("bot.core.routes","COACHING","COACHING"))
    class Own(ast.NodeTransformer):
        def visit_Name(self,x):
            if x.id in local and x.id not in imp and x.id!="BOTH": return ast.Attribute(value=ast.Name(id=m.rpartition(".")[2]),attr=x.id)
            return x
    import copy
    def text(e): return ast.unparse(Own().visit(copy.deepcopy(e)))
    rm=[]
    for n in t.body:
        tgt=n.targets[0].id if isinstance(n,ast.Assign) and isinstance(n.targets[0],ast.Name) else n.target.id if isinstance(n,ast.AnnAssign) else None
        if tgt not in KINDS: continue
        a=n.lineno
        ls=src.split("\n")
        while ls[a-2].startswith("#"): a-=1
        rm.append((a,n.end_lineno))
        v=n.value
        if tgt=="ON_CARD":
            for k,e in zip(v.keys,v.values):
                f=feature_of(e); need(e,f); feat[f]["on_card"].append(f"{ast.unparse(k)}: {text(e)}")
        else:
            for e in v.elts:
                if isinstance(e,ast.Call) and e.args and isinstance(e.args[-1],ast.Name) and e.args[-1].id=="card_tapped": continue
                f=feature_of(e); need(e,f)
                x=text(e)
                if tgt=="COMMANDS":
                    rank+=10; x=x[:-1]+f", rank={rank})"
                feat[f][KINDS[tgt]].append(x)
    ls=src.split("\n")
    for a,b in sorted(rm,reverse=True): del ls[a-1:b]
    body="\n".join(ls)
    if s in("bot/coach/table.py","bot/athlete/table.py","bot/stage/table.py","bot/readiness/table.py"):
        p.with_suffix(".old").write_text(body); p.unlink()
    else: p.write_text(body)
base=lambda f:{("bot.dialogue.feature","Feature","Feature")}
for f,parts in feat.items():
    lines=[f'"""{f.replace("_"," ").capitalize()}: its commands, buttons, flows and timed duties."""',"","from __future__ import annotations",""]
    im=imps[f]|base(f)
    for mod,name,local in sorted(im):
        if mod==f"bot.{f}.table": # local constants of the old table
            continue
        lines.append(f"from {mod} import {name}"+(f" as {local}" if local!=name else ""))
    if any("partial(" in e for v in parts.values() for e in v): lines.append("from functools import partial")
    consts=[l for (mod,name,l) in im if mod==f"bot.{f}.table"]
    lines.append("")
    if "BOTH" in consts: lines+=["BOTH = ATHLETE | COACHING",""]
    lines.append("FEATURE = Feature("); lines.append(f'    id="{f}",')
    for k in ("commands","taps","on_card","flows","duties"):
        if not parts[k]: continue
        if k=="on_card": lines.append(f"    on_card={{{', '.join(parts[k])},}},")
        else: lines.append(f"    {k}=({', '.join(parts[k])},),")
    lines.append(")"); 
    (ROOT/f"bot/{f}/table.py").write_text("\n".join(lines)+"\n")
fs=sorted(feat)
(ROOT/"bot/features.py").write_text(f'''"""Every feature, once: what is not listed here does not exist.

A command, a button, a flow or a duty that two features claim stops the start.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from typing import TypeVar

{chr(10).join(f"from bot.{f}.table import FEATURE as {f.upper()}" for f in fs)}
from bot.dialogue.feature import Feature

_Entry = TypeVar("_Entry")

FEATURES: tuple[Feature, ...] = ({", ".join(f.upper() for f in fs)},)


def once(entries: Iterable[_Entry], key: Callable[[_Entry], str]) -> Mapping[str, _Entry]:
    """The entries by their key. Raises ValueError where two have the same."""
    found: dict[str, _Entry] = {{}}
    for entry in entries:
        if key(entry) in found:
            raise ValueError(f"two features claim {{key(entry)!r}}")
        found[key(entry)] = entry
    return found


#: Buttons "c:VIEW:ATHLETE:..." of cards, plans and limits. The athlete is the coach's own, or one
#: that they stand in for with full rights.
ON_CARD = {{
    view: run
    for view, (_, run) in once(
        ((view, run) for feature in FEATURES for view, run in feature.on_card.items()),
        lambda entry: entry[0],
    ).items()
}}
''')
p=ROOT/"bot/features.py"; s=p.read_text()
s=s.replace('_Entry = TypeVar("_Entry")\n','_Entry = TypeVar("_Entry")\n',1)
s+='''
#: The relation itself is the first coach's alone.
FIRST_COACH_ONLY = frozenset().union(*(feature.first_coach_only for feature in FEATURES))
COMMANDS = once(
    sorted(
        (command for feature in FEATURES for command in feature.commands),
        key=lambda command: command.rank,
    ),
    lambda command: command.name,
)
TAPS = once((tap for feature in FEATURES for tap in feature.taps), lambda tap: tap.prefix)
FLOWS = once((flow for feature in FEATURES for flow in feature.flows), lambda one: one.flow.id)
DUTIES = once((duty for feature in FEATURES for duty in feature.duties), lambda duty: duty.kind)
'''
s=s.replace("FIRST_COACH_ONLY = frozenset()","FIRST_COACH_ONLY: frozenset[str] = frozenset()")
p.write_text(s)
p=ROOT/"bot/membership/table.py"; s=p.read_text()
s=s.replace('    flows=(','    first_coach_only=frozenset(\n        {"second", "second-ask", "second-end", "end", "end-yes", "end-no"}\n    ),\n    flows=(',1)
p.write_text(s)
for f in ROOT.glob("bot/*/*.old"): f.unlink()
