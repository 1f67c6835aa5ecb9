"""turn.py ROOT: (session, context[, incoming]) -> turn, in bot/ but for the boundary."""
import ast,pathlib,sys,re,collections
ROOT=pathlib.Path(sys.argv[1])
SKIP={"bot/app.py","bot/core/turn.py"}
SKIPDIR=("bot/store/","bot/words/")
S={"session","_session"};C={"context","_context"};I={"incoming","_incoming"}
report=[]
def files():
    for p in sorted([*ROOT.glob("bot/**/*.py"),*ROOT.glob("tests/**/*.py")]):
        r=str(p.relative_to(ROOT))
        if r in SKIP or r.startswith(SKIPDIR): continue
        yield p,r
def params(n): return [*n.args.posonlyargs,*n.args.args,*n.args.kwonlyargs]
def kind(n):
    ps={a.arg:a for a in params(n)}
    s=S&set(ps);c=C&set(ps);i=I&set(ps)
    if not(s and c): return None
    # a context that is not the Context of a use case (answers of a question)
    ann=ps[next(iter(c))].annotation
    if ann is not None and ast.unparse(ann)!="Context": return None
    return next(iter(s)),next(iter(c)),(next(iter(i)) if i else None)
for p,r in files():
    src=p.read_text(); tree=ast.parse(src); data=src.encode().split(b"\n")
    offs=[0]
    for l in data: offs.append(offs[-1]+len(l)+1)
    raw=src.encode()
    pos=lambda ln,col: offs[ln-1]+col
    edits=[]   # (start,end,bytes)
    used=set()
    def visit(node,env):
        if isinstance(node,(ast.FunctionDef,ast.Lambda)):
            k=kind(node)
            if isinstance(node,ast.FunctionDef):
                for d in node.decorator_list: visit(d,env)
            for d in [*node.args.defaults,*[x for x in node.args.kw_defaults if x]]: visit(d,env)
            if k:
                s,c,i=k
                a=node.args; al=[*a.posonlyargs,*a.args]; kw=a.kwonlyargs
                # rebuild the signature
                drop={c,i}
                body_uses={x.id for b in (node.body if isinstance(node.body,list) else [node.body]) for x in ast.walk(b) if isinstance(x,ast.Name)}
                name="turn"
                tname="ChatTurn" if i else "Turn"; used.add(tname)
                def put(x):
                    if x.arg==s: return ast.arg(arg=name,annotation=ast.Name(id=tname) if isinstance(node,ast.FunctionDef) else None)
                    return x
                nd=len(a.defaults); pairs=[(x,(a.defaults[j-(len(al)-nd)] if j>=len(al)-nd else None)) for j,x in enumerate(al)]
                pairs=[(put(x),d) for x,d in pairs if x.arg not in drop]
                kws=[(put(x),d) for x,d in zip(kw,a.kw_defaults) if x.arg not in drop]
                # keep turn positional and first of what it was
                na=ast.arguments(posonlyargs=[],args=[x for x,_ in pairs],defaults=[d for _,d in pairs if d is not None],kwonlyargs=[x for x,_ in kws],kw_defaults=[d for _,d in kws],vararg=a.vararg,kwarg=a.kwarg)
                if isinstance(node,ast.FunctionDef):
                    start=pos(node.lineno,node.col_offset); 
                    # args text between "(" after name and ")" before "->" or ":"
                    hdr_end=pos(node.body[0].lineno,node.body[0].col_offset)
                    o=raw.index(b"(",start); depth=0;q=o
                    while True:
                        ch=raw[q:q+1]
                        if ch in b"([{" : depth+=1
                        if ch in b")]}":
                            depth-=1
                            if depth==0: break
                        if ch==b"#":
                            q=raw.index(b"\n",q)
                        q+=1
                    edits.append((o+1,q,ast.unparse(na).encode()))
                    if b"#" in raw[o:q]: report.append(f"{r}:{node.lineno} comment in signature")
                else:
                    o=pos(node.lineno,node.col_offset)+len(b"lambda"); e=raw.index(b":",o)
                    edits.append((o,e,b" "+ast.unparse(na).encode()))
                env2={s:(name,"s"),c:(name,"c")}
                if i: env2[i]=(name,"i")
                inner={x.arg for x in params(node)}
                env={k2:v for k2,v in env.items() if k2 not in inner}|env2
            else:
                inner={x.arg for x in params(node)}
                env={k2:v for k2,v in env.items() if k2 not in inner}
            for b in (node.body if isinstance(node.body,list) else [node.body]): visit(b,env)
            return
        if isinstance(node,ast.Call):
            args=[*node.args]; kws=[*node.keywords]
            items=[(x.value if isinstance(x,ast.keyword) else x, x) for x in args+kws]
            def isn(v,t): return isinstance(v,ast.Name) and v.id in env and env[v.id][1]==t
            si=[x for v,x in items if isn(v,"s")]; ci=[x for v,x in items if isn(v,"c")]; ii=[x for v,x in items if isn(v,"i")]
            if si and ci:
                t=env[(si[0].value if isinstance(si[0],ast.keyword) else si[0]).id][0]
                v=si[0]; vv=v.value if isinstance(v,ast.keyword) else v
                edits.append((pos(vv.lineno,vv.col_offset),pos(vv.end_lineno,vv.end_col_offset),t.encode()))
                allx=args+kws
                for x in ci[:1]+ii[:1]:
                    j=allx.index(x); 
                    prev=allx[j-1] if j else None
                    st=pos(prev.end_lineno,prev.end_col_offset) if prev is not None else pos(x.lineno,x.col_offset)
                    edits.append((st,pos(x.end_lineno,x.end_col_offset),b""))
                skip={id(si[0]),*(id(x) for x in ci[:1]+ii[:1])}
                visit(node.func,env)
                for x in allx:
                    if id(x) in skip: continue
                    visit(x.value if isinstance(x,ast.keyword) else x,env)
                return
            ss=[x for x in args if isinstance(x,ast.Name) and x.id=="session" and "session" not in env]
            def isctx(v,x):
                if isinstance(x,ast.keyword) and x.arg=="context": return True
                if isinstance(x,ast.keyword): return False
                if isinstance(v,ast.Attribute) and v.attr=="context": return True
                if isinstance(v,ast.Name) and v.id=="context" and "context" not in env: return True
                if isinstance(v,ast.Call) and ast.unparse(v.func) in("self._context","Context","replace"): return True
                return False
            cc=[x for v,x in items if isctx(v,x)]
            if ss and cc and not (isinstance(node.func,ast.Name) and node.func.id in("Turn","ChatTurn")):
                inc=[x for x in args if isinstance(x,ast.Name) and x.id=="incoming"]
                cv=cc[0].value if isinstance(cc[0],ast.keyword) else cc[0]
                seg=lambda v: raw[pos(v.lineno,v.col_offset):pos(v.end_lineno,v.end_col_offset)]
                tn="ChatTurn" if inc else "Turn"; used.add(tn)
                new=tn.encode()+b"(session, "+seg(cv)+((b", "+seg(inc[0])) if inc else b"")+b")"
                v=ss[0]; edits.append((pos(v.lineno,v.col_offset),pos(v.end_lineno,v.end_col_offset),new))
                allx=args+kws
                for x in cc[:1]+inc[:1]:
                    j=allx.index(x); prev=allx[j-1]
                    edits.append((pos(prev.end_lineno,prev.end_col_offset),pos(x.end_lineno,x.end_col_offset),b""))
                skip={id(ss[0]),*(id(x) for x in cc[:1]+inc[:1])}
                visit(node.func,env)
                for x in allx:
                    if id(x) not in skip: visit(x.value if isinstance(x,ast.keyword) else x,env)
                return
        if isinstance(node,ast.Attribute) and isinstance(node.value,ast.Name) and node.value.id in env and env[node.value.id][1]=="c" and node.attr=="now":
            edits.append((pos(node.lineno,node.col_offset),pos(node.end_lineno,node.end_col_offset),env[node.value.id][0].encode()+b".now")); return
        if isinstance(node,ast.Name) and node.id in env:
            t,k=env[node.id]; a={"s":"session","c":"context","i":"incoming"}[k]
            edits.append((pos(node.lineno,node.col_offset),pos(node.end_lineno,node.end_col_offset),f"{t}.{a}".encode())); return
        for ch in ast.iter_child_nodes(node): visit(ch,env)
    # Callable types
    def callables(node):
        for x in ast.walk(node):
            if isinstance(x,ast.Subscript) and isinstance(x.value,ast.Name) and x.value.id=="Callable" and isinstance(x.slice,ast.Tuple) and isinstance(x.slice.elts[0],ast.List):
                l=x.slice.elts[0]; nm=[ast.unparse(e) for e in l.elts]
                if "Session" in nm and "Context" in nm:
                    tn="ChatTurn" if "Incoming" in nm else "Turn"; used.add(tn)
                    out=[tn if z=="Session" else z for z in nm if z not in("Context","Incoming")]
                    edits.append((pos(l.lineno,l.col_offset),pos(l.end_lineno,l.end_col_offset),("["+", ".join(out)+"]").encode()))
    visit(tree,{}); callables(tree)
    if not edits: continue
    # drop nested/overlapping duplicates
    edits=sorted(set(edits)); ok=[];last=-1
    for e in edits:
        if e[0]<last: report.append(f"{r}: overlap at {raw[e[0]:e[1]]!r}"); continue
        ok.append(e); last=e[1]
    for a,b,t in reversed(ok): raw=raw[:a]+t+raw[b:]
    text=raw.decode()
    if used:
        tr=ast.parse(text); at=0
        for n in tr.body:
            if isinstance(n,ast.Expr) and isinstance(n.value,ast.Constant) and n is tr.body[0]: at=n.end_lineno
            elif isinstance(n,ast.ImportFrom) and n.module=="__future__": at=n.end_lineno
        ls=text.split("\n"); ls[at:at]=["",f"from bot.core.turn import {', '.join(sorted(used))}"]; text="\n".join(ls)
    p.write_text(text)
print("\n".join(report))
