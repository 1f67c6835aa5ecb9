import ast,sys,pathlib,collections
ROOT=pathlib.Path(sys.argv[1])
KERNEL=[{"store","words"},{"core"},{"dialogue","people","telegram"},{"week"}]
FLOOR={k:i for i,s in enumerate(KERNEL) for k in s}
MAY={"alerts":[],"athlete":["checkin","decision"],"calendar":["decision","food","stage"],"checkin":["alerts","decision"],
"coach":["alerts","athlete","calendar","debrief","decision","membership","photos","plan","safety","sheets","week_picture"],
"debrief":["alerts","decision","plan","safety","stage"],"decision":["alerts"],"event":["debrief","decision","plan","readiness","stage","travel"],
"food":[],"membership":["alerts","decision"],"photos":["decision"],"plan":["decision"],
"reachability":["alerts","checkin","coach","decision","membership","safety"],"readiness":[],"safety":["alerts","decision"],"sheets":["plan"],
"stage":["food"],"travel":["alerts"],"undo":["coach","decision","event","stage"],"week_picture":["decision"]}
ENGINE={"evidence":[],"values":["evidence"],"written":["evidence"],"symptoms":["written"],"model":["evidence","values"],"food":["evidence","values"],
"stage_day":["evidence","values"],"safety":["evidence","values","symptoms","written"],"decision":["evidence","values","model","safety","symptoms"],
"planning":["evidence","values","model","safety","decision","food"],"bench":["evidence","values","model","planning","decision"],"cli":["values","decision","planning","model","bench"]}
TOP={"doors","features","documents","uploads","app","cli","rehearsal","settings"}
mods={}
for p in [*ROOT.glob("bot/**/*.py"),*ROOT.glob("engine/**/*.py")]:
    r=p.relative_to(ROOT); 
    if "versions" in r.parts or ".venv" in r.parts: continue
    mods[".".join(r.with_suffix("").parts).removesuffix(".__init__")]=p
bad=collections.defaultdict(list)
for m,p in sorted(mods.items()):
    parts=m.split(".")
    if len(parts)<2: continue
    house,pk=parts[0],parts[1]
    src=ast.parse(p.read_text())
    for n in ast.walk(src):
        if not isinstance(n,ast.ImportFrom) or not n.module or n.module.split(".")[0] not in("bot","engine"): continue
        if n.level: continue
        for al in n.names:
            t=f"{n.module}.{al.name}" if f"{n.module}.{al.name}" in mods else n.module
            tp=t.split(".")
            if tp[0]!=house or len(tp)<2 or tp[1]==pk: continue
            d=tp[1]
            local=al.asname or al.name
            names=[al.name] if t==n.module else sorted({a.attr for a in ast.walk(src) if isinstance(a,ast.Attribute) and isinstance(a.value,ast.Name) and a.value.id==local})
            if house=="engine": ok=pk in("__main__",) or d in ENGINE.get(pk,[])
            elif pk in TOP or pk=="documents": ok=True
            elif pk in FLOOR: ok=d in FLOOR and (FLOOR[d]<FLOOR[pk] or d==pk or (FLOOR[d]==FLOOR[pk] and pk in("dialogue","people") and False))
            else: ok=d in FLOOR or d in MAY.get(pk,[])
            if not ok: bad[(house,pk,d)].append((m,t,names))
for k,v in sorted(bad.items()):
    print(k)
    for m,t,n in v: print("    ",m,"->",t,n)
