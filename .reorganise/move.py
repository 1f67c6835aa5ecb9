"""move.py TREE: git mv by mapping, rewrite imports and dotted names."""
import ast,os,pathlib,re,subprocess,sys
sys.path.insert(0,str(pathlib.Path(__file__).parent))
from mapping import m as MAP
ROOT=pathlib.Path(sys.argv[1])
EXTRA={
 "bot/clock_watch.py":"bot/core/clock_watch.py",
 "bot/service/coach_doors.py":"bot/coach/table.py","bot/service/athlete_doors.py":"bot/athlete/table.py",
 "bot/service/food_doors.py":"bot/food/routes.py",
 "engine/training.py":"engine/model/training.py","engine/health_screen.py":"engine/planning/health_screen.py","bot/service/handles.py":"bot/core/routes.py","bot/messages/passing_on.py":"bot/landing/words.py","bot/flows/passing_on.py":"bot/landing/flow.py","bot/flows/requests.py":"bot/landing/requests.py","bot/service/answering.py":"bot/dialogue/answering.py","bot/service/landing.py":"bot/landing/landing.py","bot/service/passing_on.py":"bot/landing/passing_on.py","bot/service/replies.py":"bot/landing/replies.py",
 "engine/level.py":"engine/values/level.py",
}
exec(pathlib.Path("extra.py").read_text()) if pathlib.Path("extra.py").exists() else None
MAP={**MAP,**EXTRA}
files=subprocess.check_output(["git","ls-files"],cwd=ROOT,text=True).split("\n")
py=[f for f in files if f.endswith(".py")]
own=[f for f in py if f.startswith(("bot/","engine/"))]
GONE={"bot/service/__init__.py","bot/messages/__init__.py","bot/flows/__init__.py"}
new={}
for f in own:
    if f in GONE or "migrations/versions" in f: continue
    n=MAP.get(f)
    if n is None:
        # new files of a moved package go along with their package
        pk=str(pathlib.Path(f).parent/"__init__.py")
        if pk in MAP and pk not in GONE: n=str(pathlib.Path(MAP[pk]).parent/pathlib.Path(f).name)
        elif f in ("engine/__init__.py","bot/__init__.py"): n=f
        else: print("UNMAPPED",f); n=f
    new[f]=n
def mod(path):
    p=path[:-3].replace("/",".")
    return p[:-9] if p.endswith(".__init__") else p
old_mods={mod(f):mod(n) for f,n in new.items()}
for f in own:
    if "migrations/versions" in f: old_mods[mod(f)]=mod(f)
def absolute(node,f):
    if node.level==0: return node.module
    pkg=mod(f).split(".") if f.endswith("__init__.py") else mod(f).split(".")[:-1]
    base=pkg[:len(pkg)-(node.level-1)]
    return ".".join(base+([node.module] if node.module else []))
def rewrite(f):
    src=(ROOT/f).read_text(); tree=ast.parse(src); lines=src.split("\n"); edits=[]
    for node in ast.walk(tree):
        if isinstance(node,ast.ImportFrom):
            a=absolute(node,f)
            if a is None or a.split(".")[0] not in ("bot","engine"): continue
            groups={}
            order=[]
            for al in node.names:
                full=f"{a}.{al.name}"
                if full in old_mods:
                    n=old_mods[full]; pk,_,nm=n.rpartition("."); local=al.asname or al.name
                    item=nm if nm==local else f"{nm} as {local}"; key=pk
                else:
                    key=old_mods.get(a,a); item=al.name+(f" as {al.asname}" if al.asname else "")
                if key not in groups: groups[key]=[]; order.append(key)
                groups[key].append(item)
            ind=lines[node.lineno-1][:len(lines[node.lineno-1])-len(lines[node.lineno-1].lstrip())]
            tail=lines[node.end_lineno-1][node.end_col_offset:]  # comments such as noqa
            if node.lineno!=node.end_lineno:
                first=lines[node.lineno-1]; c=re.search(r"#.*",first); tail=("  "+c[0]) if c else tail
            out=[f"{ind}from {k} import {', '.join(groups[k])}{tail}" for k in order]
            edits.append((node.lineno,node.end_lineno,out))
        elif isinstance(node,ast.Import):
            ch=False;names=[]
            for al in node.names:
                if al.name in old_mods and old_mods[al.name]!=al.name: ch=True; names.append(old_mods[al.name]+(f" as {al.asname}" if al.asname else ""))
                else: names.append(al.name+(f" as {al.asname}" if al.asname else ""))
            if ch: edits.append((node.lineno,node.end_lineno,["import "+", ".join(names)]))
    covered={i for a,b,_ in edits for i in range(a,b+1)}
    starts={a:out for a,b,out in edits}
    res=[]
    for i,l in enumerate(lines,1):
        if i in starts: res+=starts[i]
        elif i not in covered: res.append(strings(l) if "migrations/versions" not in f else l)
    return "\n".join(res)
# dotted names and paths in strings and docs
DOTS={o:n for o,n in old_mods.items() if o!=n}; PATHS={o:n for o,n in new.items() if o!=n}
RD=re.compile(r"(?<![\w.])("+"|".join(re.escape(o) for o in sorted(DOTS,key=len,reverse=True))+r")(?!\w)")
RP=re.compile(r"(?<![\w/])("+"|".join(re.escape(o) for o in sorted(PATHS,key=len,reverse=True))+r")(?!\w)")
def strings(t): return RP.sub(lambda k:PATHS[k[1]],RD.sub(lambda k:DOTS[k[1]],t))
texts={f:rewrite(f) for f in py}
for f,n in new.items():
    if f!=n:
        (ROOT/n).parent.mkdir(parents=True,exist_ok=True)
# two-step to survive swaps
for f,n in new.items():
    if f!=n: subprocess.check_call(["git","mv","-f",f,n+".moving"],cwd=ROOT)
for f,n in new.items():
    if f!=n: subprocess.check_call(["git","mv",n+".moving",n],cwd=ROOT)
# data files beside
for f in files:
    if f and not f.endswith(".py") and f.startswith(("bot/","engine/")):
        pk=str(pathlib.Path(f).parent/"__init__.py")
        d=pathlib.Path(f).parent
        while str(d) not in (".",""):
            pk=str(d/"__init__.py")
            if pk in new and new[pk]!=pk:
                n=str(pathlib.Path(new[pk]).parent/pathlib.Path(f).relative_to(d)); (ROOT/n).parent.mkdir(parents=True,exist_ok=True)
                subprocess.check_call(["git","mv",f,n],cwd=ROOT); break
            if pk in new: break
            d=d.parent
for g in GONE: subprocess.call(["git","rm","-q","-f",g],cwd=ROOT)
for f,t in texts.items():
    if f in GONE: continue
    (ROOT/new.get(f,f)).write_text(t)
for f in files:
    if f and f.endswith((".md",".toml")) or f==".ci/run":
        p=ROOT/f
        if p.exists(): p.write_text(strings(p.read_text()))
for d in {pathlib.Path(n).parent for n in new.values()}:
    i=ROOT/d/"__init__.py"
    if not i.exists(): i.write_text(""); subprocess.check_call(["git","add",str(i)],cwd=ROOT)
print("moved",sum(a!=b for a,b in new.items()))
