set -e
HERE=$(cd "$(dirname "$0")" && pwd); R=$1; cd "$R"
git reset -q --hard; git clean -qfdx -e .venv; true
lint() { .venv/bin/ruff check -q --fix --select I,F401,F811 bot engine tests || true; .venv/bin/ruff format -q .; }
python3 $HERE/move.py $R | tail -3; lint
bash $HERE/moves.sh $R; lint
[ -n "$NOTURN" ] && exit 0
bash $HERE/use_cases.sh $R; lint
cp $HERE/turn_module.py bot/core/turn.py
python3 $HERE/turn.py $R; lint
git add -A; git -c user.email=x@y -c user.name=x commit -qm wip
python3 $HERE/gen_tables.py $R; lint
git add -A; git -c user.email=x@y -c user.name=x commit -qm wip2
python3 $HERE/turn2.py $R; lint
python3 $HERE/post.py $R; lint
