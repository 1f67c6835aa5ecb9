# UseCases into a module of its own, above Turn
set -e
HERE=$(cd "$(dirname "$0")" && pwd); R=$1; cd $R
python3 $HERE/mvname.py $R bot.core.context bot.core.use_cases UseCases _nothing_more
sed -i '1s/.*/"""The doors from the queues into the use cases, as the parts that own the queues see them."""/' bot/core/use_cases.py
