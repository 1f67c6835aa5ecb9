"""mvname.py ROOT SRC DST NAME... : move top-level names between modules, rewriting every use."""
import ast,pathlib,sys,re,subprocess
ROOT=pathlib.Path(sys.argv[1]); SRC,DST=sys.argv[2:4]; NAMES=sys.argv[4:]
REN={}
for i,n in enumerate(NAMES):
    if "=" in n: a,b=n.split("="); NAMES[i]=a; REN[a]=b
def path(m):
    p=ROOT/(m.replace(".","/")+".py"); return p if p.exists() or not (ROOT/m.replace(".","/")).is_dir() else ROOT/m.replace(".","/")/"__init__.py"
sp,dp=path(SRC),path(DST)
src=sp.read_text(); tree=ast.parse(src); lines=src.split("\n")
def names_of(n):
    if isinstance(n,(ast.FunctionDef,ast.ClassDef,ast.AsyncFunctionDef)): return [n.name]
    if isinstance(n,ast.Assign): return [t.id for t in n.targets if isinstance(t,ast.Name)]
    if isinstance(n,ast.AnnAssign) and isinstance(n.target,ast.Name): return [n.target.id]
    return []
found=[n for n in tree.body if set(names_of(n))&set(NAMES)]
miss=set(NAMES)-{x for n in found for x in names_of(n)}
if miss: sys.exit(f"not in {SRC}: {miss}")
def span(n):
    a=min([n.lineno]+[d.lineno for d in getattr(n,"decorator_list",[])]); b=n.end_lineno
    while a>1 and lines[a-2].startswith("#"): a-=1
    return a,b
used={x.id for n in found for x in ast.walk(n) if isinstance(x,ast.Name)}
top={x for n in tree.body for x in names_of(n)}
extra=(used&top)-set(NAMES)
if extra: print("NEEDS TOO:",extra,"of",SRC)
imports=[]
for n in tree.body:
    if isinstance(n,(ast.Import,ast.ImportFrom)):
        for al in n.names:
            if (al.asname or al.name).split(".")[0] in used:
                t=al.name+(f" as {al.asname}" if al.asname else "")
                imports.append(f"from {'.'*n.level}{n.module or ''} import {t}" if isinstance(n,ast.ImportFrom) else f"import {t}")
imports=[i for i in imports if not i.startswith(f'from {DST} import ')]
for x in extra: imports.append(f"from {SRC} import {x}")
chunks=["\n".join(lines[span(n)[0]-1:span(n)[1]]) for n in found]
def ren(t):
    for a,b in REN.items(): t=re.sub(rf"\b{a}\b",b,t)
    return t
drop={i for n in found for i in range(span(n)[0],span(n)[1]+1)}
rest="\n".join(l for i,l in enumerate(lines,1) if i not in drop)
left={x.id for x in ast.walk(ast.parse(rest)) if isinstance(x,ast.Name)}
def insert_imports(text,imps):
    if not imps: return text
    t=ast.parse(text); at=0
    for n in t.body:
        if isinstance(n,ast.Expr) and isinstance(n.value,ast.Constant) and n is t.body[0]: at=n.end_lineno
        elif isinstance(n,ast.ImportFrom) and n.module=="__future__": at=n.end_lineno
    ls=text.split("\n"); return "\n".join(ls[:at]+[""]+imps+ls[at:])
back=[n for n in NAMES if n in left]
rest=insert_imports(rest,[f"from {DST} import {REN.get(n,n)}"+(f" as {n}" if REN.get(n,n)!=n else "") for n in back])
sp.write_text(rest)
d=dp.read_text() if dp.exists() else '"""TODO."""\n\nfrom __future__ import annotations\n'
d=d.rstrip("\n")+"\n\n\n"+"\n\n\n".join(ren(c) for c in chunks)+"\n"
dp.write_text(insert_imports(d,imports))
dpk,_,db=DST.rpartition("."); spk,_,sb=SRC.rpartition(".")
for p in [*ROOT.glob("bot/**/*.py"),*ROOT.glob("engine/**/*.py"),*ROOT.glob("tests/**/*.py")]:
    if p==sp: continue
    t=p.read_text()
    if sb not in t and SRC not in t: continue
    tr=ast.parse(t); edits=[]; newimps=[]
    local=None
    for n in ast.walk(tr):
        if isinstance(n,ast.ImportFrom) and n.level==0 and n.module==SRC:
            keep=[al for al in n.names if al.name not in NAMES]; go=[al for al in n.names if al.name in NAMES]
            if go:
                ind=" "*n.col_offset
                f=lambda al,r=False:(REN.get(al.name,al.name) if r else al.name)+(f" as {al.asname or al.name}" if (al.asname or (r and al.name in REN)) else "")
                out=([f"{ind}from {SRC} import {', '.join(map(f,keep))}"] if keep else [])+([f"{ind}from {DST} import {', '.join(f(a,True) for a in go)}"] if p!=dp else [])
                edits.append((n.lineno,n.end_lineno,out))
        if isinstance(n,ast.ImportFrom) and n.level==0 and n.module==spk:
            for al in n.names:
                if al.name==sb: local=al.asname or al.name
    ls=t.split("\n")
    if local:
        uses=[(a.lineno,a.col_offset,a.value.end_col_offset,a.attr,a.end_col_offset) for a in ast.walk(tr) if isinstance(a,ast.Attribute) and isinstance(a.value,ast.Name) and a.value.id==local and a.attr in NAMES]
        if uses:
            alias=None
            for n in ast.walk(tr):
                if isinstance(n,ast.ImportFrom) and n.module==dpk:
                    for al in n.names:
                        if al.name==db: alias=al.asname or al.name
            if p==dp: alias=""
            elif alias is None:
                taken={x.id for x in ast.walk(tr) if isinstance(x,ast.Name)}|{x.arg for x in ast.walk(tr) if isinstance(x,ast.arg)}
                alias=db if db not in taken else f"{dpk.split('.')[-1]}_{db}"
                newimps.append(f"from {dpk} import {db}"+(f" as {alias}" if alias!=db else ""))
            for (ln,c0,c1,attr,c2) in sorted(uses,reverse=True):
                l=ls[ln-1].encode(); new=(f"{alias}." if alias else "")+REN.get(attr,attr)
                ls[ln-1]=(l[:c0]+new.encode()+l[c2:]).decode()
    for a,b,out in sorted(edits,reverse=True): ls[a-1:b]=out
    if edits or newimps or (local and uses): p.write_text(insert_imports("\n".join(ls),newimps))
