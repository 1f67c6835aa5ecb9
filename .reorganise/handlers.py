import ast,pathlib,sys,collections
ROOT=pathlib.Path(sys.argv[1])
H={}
for p in ROOT.glob("bot/*/table.py"):
    t=ast.parse(p.read_text()); imp={}
    for n in t.body:
        if isinstance(n,ast.ImportFrom):
            for al in n.names: imp[al.asname or al.name]=(n.module,al.name)
    def res(e):
        if isinstance(e,ast.Attribute) and isinstance(e.value,ast.Name): m,n=imp[e.value.id]; return f"{m}.{n}",e.attr
        if isinstance(e,ast.Name) and e.id in imp: return imp[e.id]
        return None
    for n in ast.walk(t):
        if isinstance(n,ast.Call) and isinstance(n.func,ast.Name) and n.func.id in("Command","Tap") and len(n.args)>2: 
            r=res(n.args[2]); 
            if r: H[r]=n.func.id
        if isinstance(n,ast.keyword) and n.arg=="on_card":
            for e in n.value.values:
                r=res(e)
                if r: H[r]="card"
print(len(H), collections.Counter(H.values()))
calls=[]
for p in [*ROOT.glob("bot/**/*.py"),*ROOT.glob("tests/**/*.py")]:
    t=ast.parse(p.read_text()); m=".".join(p.relative_to(ROOT).with_suffix("").parts); imp={}
    for n in ast.walk(t):
        if isinstance(n,ast.ImportFrom) and n.module:
            for al in n.names: imp[al.asname or al.name]=(n.module,al.name)
    for n in ast.walk(t):
        if isinstance(n,ast.Call):
            f=n.func; r=None
            if isinstance(f,ast.Attribute) and isinstance(f.value,ast.Name) and f.value.id in imp: a,b=imp[f.value.id]; r=(f"{a}.{b}",f.attr)
            elif isinstance(f,ast.Name): r=imp.get(f.id,(m,f.id))
            if r in H: calls.append((H[r],str(p.relative_to(ROOT)),n.lineno,ast.unparse(n)))
print(len(calls)); [print(*c) for c in calls]
