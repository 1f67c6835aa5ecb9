"""turn2.py ROOT: handlers of the tables take the act alone."""
import ast,pathlib,sys,re
ROOT=pathlib.Path(sys.argv[1])
H={}
def imports(t):
    imp={}
    for n in ast.walk(t):
        if isinstance(n,ast.ImportFrom) and n.module:
            for al in n.names: imp[al.asname or al.name]=(n.module,al.name)
    return imp
def res(e,imp,m):
    if isinstance(e,ast.Attribute) and isinstance(e.value,ast.Name) and e.value.id in imp: a,b=imp[e.value.id]; return f"{a}.{b}",e.attr
    if isinstance(e,ast.Name): return imp.get(e.id,(m,e.id))
    return None
mods={}
for p in ROOT.glob("bot/**/*.py"):
    if "versions" in p.parts: continue
    mods[".".join(p.relative_to(ROOT).with_suffix("").parts)]=p
for m,p in mods.items():
    t=ast.parse(p.read_text()); imp=imports(t)
    for n in ast.walk(t):
        if isinstance(n,ast.Call) and isinstance(n.func,ast.Name) and n.func.id in("Command","Tap") and len(n.args)>2:
            r=res(n.args[2],imp,m)
            if r: H[r]=n.func.id
        if isinstance(n,ast.keyword) and n.arg=="on_card" and isinstance(n.value,ast.Dict):
            for e in n.value.values: H[res(e,imp,m)]="card"
        if isinstance(n,ast.AnnAssign) and isinstance(n.value,ast.Dict) and isinstance(n.annotation,ast.Subscript) and re.search(r"OnFood|OnTap",ast.unparse(n.annotation)):
            for e in n.value.values:
                r=res(e,imp,m)
                if r: H[r]="Tap"
    for n in ast.walk(t):
        if isinstance(n,ast.Call) and isinstance(n.func,ast.IfExp): # (a if rest else b)(turn, person, rest)
            for e in(n.func.body,n.func.orelse): H[res(e,imp,m)]="Tap"
done=set()
for m,p in mods.items():
    src=p.read_text(); t=ast.parse(src); raw=src.encode(); offs=[0]
    for l in raw.split(b"\n"): offs.append(offs[-1]+len(l)+1)
    pos=lambda ln,c: offs[ln-1]+c
    edits=[];used=set()
    for n in t.body:
        if not isinstance(n,ast.FunctionDef) or (m,n.name) not in H: continue
        k=H[(m,n.name)]; ps=n.args.args; want=4 if k=="card" else 3
        if len(ps)!=want or n.args.kwonlyargs: print("ODD",m,n.name,[a.arg for a in ps]); continue
        done.add((m,n.name)); tn="OnAthlete" if k=="card" else "Act"; used.add(tn)
        ren={ps[1].arg:"turn.person"}
        if k=="card": ren[ps[2].arg]="turn.profile"
        ren[ps[-1].arg]="turn.words" if k=="Command" else "turn.arguments"
        stores={x.id for x in ast.walk(n) if isinstance(x,ast.Name) and isinstance(x.ctx,ast.Store)}
        pre=[a for a in ren if a in stores]
        start=pos(n.lineno,n.col_offset); o=raw.index(b"(",start); d=0;q=o
        while True:
            c=raw[q:q+1]
            if c in b"([{": d+=1
            if c in b")]}":
                d-=1
                if d==0: break
            q+=1
        edits.append((o+1,q,f"turn: {tn}".encode()))
        body=n.body; first=body[1] if isinstance(body[0],ast.Expr) and isinstance(body[0].value,ast.Constant) and len(body)>1 else body[0]
        if pre:
            at=pos(first.lineno,first.col_offset); edits.append((at,at,"".join(f"{a} = {ren[a]}\n    " for a in pre).encode()))
        # names shadowed by inner lambdas/functions stay
        def walk(x,hid):
            if isinstance(x,(ast.Lambda,ast.FunctionDef)): hid=hid|{a.arg for a in [*x.args.args,*x.args.kwonlyargs]}
            if isinstance(x,ast.Name) and x.id in ren and x.id not in hid and x.id not in pre:
                edits.append((pos(x.lineno,x.col_offset),pos(x.end_lineno,x.end_col_offset),ren[x.id].encode()))
            for c in ast.iter_child_nodes(x): walk(c,hid)
        for b in body: walk(b,set())
    if not edits: continue
    for a,b,x in sorted(edits,reverse=True): raw=raw[:a]+x+raw[b:]
    text=raw.decode(); tr=ast.parse(text); at=0
    for n in tr.body:
        if isinstance(n,ast.Expr) and isinstance(n.value,ast.Constant) and n is tr.body[0]: at=n.end_lineno
        elif isinstance(n,ast.ImportFrom) and n.module=="__future__": at=n.end_lineno
    ls=text.split("\n"); ls[at:at]=["",f"from bot.core.turn import {', '.join(sorted(used))}"]; p.write_text("\n".join(ls))
# calls
for m,p in [*mods.items(),*((".".join(q.relative_to(ROOT).with_suffix("").parts),q) for q in ROOT.glob("tests/**/*.py"))]:
    src=p.read_text(); t=ast.parse(src); imp=imports(t); raw=src.encode(); offs=[0]
    for l in raw.split(b"\n"): offs.append(offs[-1]+len(l)+1)
    pos=lambda ln,c: offs[ln-1]+c
    seg=lambda v: raw[pos(v.lineno,v.col_offset):pos(v.end_lineno,v.end_col_offset)].decode()
    edits=[]
    for n in ast.walk(t):
        if not isinstance(n,ast.Call): continue
        f=n.func
        rs=[res(f,imp,m)] if not isinstance(f,ast.IfExp) else [res(f.body,imp,m)]
        if rs[0] in done and len(n.args)>1:
            k=H[rs[0]]; a=[seg(x) for x in n.args]; a=["turn.person" if x in("person","coach","athlete") and False else x for x in a]
            if p.parts[-2]=="tests" or "tests" in p.parts: print("TEST CALL",p,n.lineno); continue
            if k=="card": new=f"turn.on({a[2]}, {a[3]})" if a[3]!="[]" else f"turn.on({a[2]})"
            elif k=="Tap": new=f"turn.saying({a[2]})"
            else: new=f"turn.saying(words={a[2]})"
            if a[0]!="turn": print("OTHER TURN",p,n.lineno,a)
            edits.append((pos(n.args[0].lineno,n.args[0].col_offset),pos(n.args[-1].end_lineno,n.args[-1].end_col_offset),new.encode()))
    for a,b,x in sorted(edits,reverse=True): raw=raw[:a]+x+raw[b:]
    if edits: p.write_text(raw.decode())
print(len(done),"handlers")
