"""The images in which people tell what is no warning: sausage fingers, a swimming head."""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

from engine.symptoms.names import Symptom
from engine.symptoms.patterns import Phrase, table

OTHER_IMAGES: tuple[Phrase, ...] = (
    *table(
        Symptom.SEVERE_GUT,
        "gut stomach belly tummy abdom cramp doubled curled bent curl bathroo floor",
        sure=r"""
        (?:<gut>|cramps?)<4>(?:so bad|so strong|so badly|that bad|unbearable|beyond|worst|screaming|crying|cried|floor|can't (?:sit|stand|move|walk|sleep)|can not (?:sit|stand|move)|agony|excruciat\w*|brutal|savage|vicious|insane|rock hard and (?:hurt\w*|pain\w*)|knives|stab\w*|tearing|ripp\w*|twisted in)
        (?:pains?|cramp\w*|ache)<4><gut><4>(?:so bad|so strong|unbearable|can't|can not|worst|insane|screaming|floor|cry\w*|severe\w*|extreme\w*)
        (?:curled up|curl up|doubled|bent double|bent over|on the (?:bathroom )?floor)<5>(?:<gut>|cramp\w*|pain)
        (?:knife|knives|stab\w*|tearing|ripping|wringing)<4><gut>
        """,
    ),
    *table(
        Symptom.HEADACHE,
        "head eyes temple skull forehead throb dull around eye",
        sure=r"""
        (?:ache|pressure|throb\w*|dull|pain|band)<3>(?:behind|around|across|in)<2>(?:eyes?|temples?|forehead|head|skull)
        (?:temples?|forehead|head|skull)<3>(?:throb\w*|ach\w+|pulsing|sore|thump\w*|tight|pressure|banging|hammering)(?! (?:schedule|suit|budget))
        """,
    ),
    *table(
        Symptom.NAUSEA,
        "stomach turn sick nause green gag queas hurl smell throw bile puke heave spew barf vomit",
        sure=r"""
        stomach<3>(?:turn\w*|churn\w*|flipp\w*|rolling|heaving|somersault\w*|doing flips|queasy|upside)|turns? my stomach|(?:green around|gagging|gagged|gag reflex)|want to hurl|(?:feel|felt|feeling)<2>(?:queasy|pukey|barfy|sick to|seasick|car ?sick|green)|seasick
        (?:could|might|will|gonna|going to|about to|nearly|almost)<2>(?:throw up|puke|vomit|hurl|barf|be sick|spew|heave)
        """,
    ),
    *table(
        Symptom.VOMITING,
        "breakfast lunch dinner meal rice oats portion came up toilet chunder cookies hugging hugged kneelin bent knelt chunks ralphed ralphin straigh bucket bowl comes shot coming sink come",
        sure=r"""
        (?:breakfast|lunch|dinner|meals?|rice|oats|shake|food|portion|chicken|last one|everything|it)<4>(?:came|come|comes|coming|shot)<1>(?:right |straight )?(?:back )?(?:up|out)(?= (?:again|after|within|twice|this|last|immediately|straight|\d)|$)(?! (?:short|clean|empty|great|well))
        (?:lost|saw)<1>my<1>(?:breakfast|lunch|dinner|cookies|last meal)<1>(?:again|in the|down|twice|$)|(?:chunder\w*|upchuck\w*|ralph(?:ed|ing)|blew chunks|tossed my cookies)
        (?:hugging|hugged|kneeling|knelt|head (?:over|in)|bent over)<3>(?:toilet|bowl|loo|bucket|sink)
        """,
    ),
    *table(
        Symptom.SWOLLEN_HANDS,
        "hand finger ring knuckle",
        sure=r"""
        (?:hands?|fingers?)<4>(?:sausages?|bananas?|balloons?|inflated|marshmallows?|boxing gloves?|michelin|hot ?dogs?|bratwurst|frankfurters?|pillows?|won't (?:close|bend|fit)|can't (?:close|bend)|twice (?:the|their)|thick|fat)
        rings?<4>(?:won't come|can't|cut\w* in|digg\w*|leav\w*|dent|stuck|tight|off)(?! stage| the finger food)
        """,
    ),
    *table(
        Symptom.SWELLING,
        "ankle feet foot leg shin sock shoe face eyes dent puff swell swoll water balloon elephant cankle pits thumb cheeks elastic sneaker eyelids straps trainer print calves boots pit boot hole strap",
        sure=r"""
        (?<!swelling in the )(?<!swelling in my )(?<!swelling of my )(?<!puffiness in my )(?<!water in my )(?:ankles?|feet|foot|legs?|shins?|calves)<4>(?:elephant\w*|tree ?trunks?|balloons?|dents?|pits|pitting|cankles|puff\w*|fat as|inflated|twice (?:the|their|its|as|normal|what)|ballooned|blown up|water balloons?|disappeared|gone)
        cankles|(?:socks?|sock line|elastic|shoes?|boots?|trainers?|sneakers?|straps?)<4>(?:marks?|lines?|dents?|grooves?|digg\w*|imprints?|cut\w* in|don't fit|won't go on|too tight|too small|don't close|won't close|don't go)(?! the suit)
        (?:press\w*|thumb|finger)<5>(?:dent|hole|pit|print)<3>(?:stays?|remains?|leg|shin|skin|ankle)?
        (?:face|eyes|eyelids|cheeks)<3>(?:moon|balloon\w*|puff\w*|slits|swollen|blown up|hamster|bloated)
        """,
    ),
    *table(
        Symptom.DIZZY,
        "room spin ground floor sway boat ship head swim merry carousel ceiling wall walls bed everything world wobbl stand stood standing giddy whirl tilt against onto cling swing roundab trampol cruise rollerc ferry rail deck furnitu coaster doorfra counter horizon sink basin rolling swam rocking frame moving spun goes turning round",
        sure=r"""
        (?:room|floor|ground|world|walls?|ceiling|everything|bed|kitchen|bathroom|screen|horizon)(?:'s)?<3>(?:spin\w*|spun|sway\w*|tilt\w*|rocking|rolling|wobbl\w*|swim\w*|swam|whirl\w*|turning|goes round|going round|went round|moving(?! (?:along|forward|on|well|to)))
        (?:feel\w*|felt|like|as if|walking|standing|legs)<4>(?:boat|ship|ferry|trampoline|waterbed|merry go round|carousel|roundabout|rollercoaster|roller coaster|swing|cruise|deck of a)
        head(?:'s)?<3>(?:swim\w*|swam|float\w*|spin\w*|spun|reel\w*|whirl\w*|full of helium|like a balloon|going round|goes round|light|woozy|wobbly)(?! (?:weights?|blue|green|meal|on))
        """,
        doubtful=r"""
        (?:hold\w*|held|grab\w*|cling\w*|lean\w*)<3>(?:on to|onto|against|the)<2>(?:walls?|rail|sink|counter|furniture|door ?frame|basin)<2>(?:to stand|for balance|when|walking|to stay|not to|so i|up|stand\w*|$)
        """,
    ),
    *table(
        Symptom.BLURRED_VISION,
        "vision see look eye focus blur glass milk fog spot dots float flash zigzag zig read label blind smear haze sight bright halo steamed steamy dirty frosted cloudy vaselin shimmer greasy hazy smudg flicker fuzzy swim picture wet front view squiggl sparkle lightni",
        sure=r"""
        (?:everything|things|text|labels?|letters|print|faces?|world|eyes|vision|it all)<3>(?:blurr\w*|out of focus|fuzzy|smear\w*|smudg\w*|hazy|foggy|unfocus\w*|swim\w*|milky|cloudy|flicker\w*|shimmer\w*)(?! (?:memory|feeling|plan))
        (?:through|like|behind)<3>(?:milk\w*|frosted|foggy|dirty|steamed|steamy|vaseline|wet|greasy|smeared)<1>(?:glass|window|lens|lenses|windscreen|glasses|milk)?
        (?:black|white|dark|bright|floating|dancing|shiny)<1>(?:spots?|dots?|specks?|flecks?)(?! (?:on (?:my|the) (?:skin|tan|face|banana|suit)))<4>(?:eyes|vision|see\w*|front)|(?:see|seeing|saw)<3>(?:spots|dots|flashes|flashing|zig ?zags?|sparkles|halos?|lightning|floaters|black dots|squiggles)|floaters|zig ?zags?
        (?:can't|couldn't|unable to|hard to)<3>(?:read|see|focus)<3>(?:labels?|print|phone|screen|text|letters|scale|clearly|straight|properly|eyes|anything|numbers)|eyes<2>(?:won't|don't|can't|not)<2>focus\w*
        (?:blind spot|went blind|gone blind|blind in|vision<3>(?:patch\w*|missing|gone|half|corner|loss|flicker\w*)|(?:half|part|corner)<3>(?:vision|sight|picture|view)<3>(?:gone|missing|dark|blank))
        """,
    ),
    *table(
        Symptom.SLEEPLESS,
        "sleep awake ceiling night eyes wired toss wide shut hours insomn wink woke close dark four three since two",
        sure=r"""
        (?:lay|lying|laid|lie|was|been|stayed|wide|still)<1>awake<2>(?:till|until|all|for|since|from|most|at|hours?|the whole|half|again|in bed)|star\w+<2>(?:ceiling|dark)(?! stage)
        (?:toss\w*)<1>(?:and )?turn\w*|(?:third|second|fourth|another|2nd|3rd|4th|fifth)<1>night<2>(?:without|no|of no|awake|not sleeping|bad)|(?:without|no|zero|hardly any|barely any|not a wink of|didn't get (?:a wink|any))<2>(?:proper |real |decent )?sleep|not a wink|sleepless
        didn't (?:close|shut) (?:an eye|my eyes)|(?:up|awake) (?:since|from|at) (?:[1-4](?:[.:]\d\d)? ?(?:am)?|one|two|three|four)(?= |$)(?! (?:sets|reps|weeks|days))|woke<2>(?:every hour|ten times|constantly|every (?:30|20|half|ten|few))
        """,
    ),
    *table(
        Symptom.CRAMPS,
        "cramp charley spasm lock knot calf toe seiz hamstring stitch curl rocks turned stones stone",
        sure=r"""
        (?:calf|calves|toes?|foot|feet|hamstrings?|hand|fingers?|leg|legs|quads?|abs)<4>(?:lock\w*|seiz\w+ up|knott\w*|in a knot|spasm\w*|curl\w*|cramp\w*|turned to (?:stone|rock)|like (?:a )?(?:rocks?|stones?))(?! (?:in|it in|them in))
        """,
    ),
    *table(
        Symptom.TINGLING,
        "tingl pins needles ants fizz prickl buzz numb electric asleep sparkli champag static crawlin gone",
        sure=r"""
        (?:fingers?|fingertips|hands?|lips?|toes?|feet|foot|face|mouth|tongue|arms?|legs?|skin|scalp)<4>(?:tingl\w*|fizz\w*|buzz\w*|prickl\w*|ants|electric\w*|champagne|sparkling|static|crawling|pins|gone to sleep|fell asleep|falling asleep|numb)
        ants<4>(?:skin|legs?|hands?|arms?|feet|fingers?|under)|(?:tingl\w*|prickl\w*|buzzing|fizzing)<3>(?:fingers?|hands?|lips?|toes?|feet|face|mouth|arms?|legs?)
        """,
    ),
    *table(
        Symptom.SHAKY,
        "shak trembl jitter quiver shiver hand leaf low sugar hypo wobbly",
        sure=r"""
        (?:i'm|i am|am|was|feel|feeling|felt|all|so|bit|getting|got|really|gone)<1>(?:shaky|trembly|jittery|quivery|wobbly inside|shivery)|(?:hands?|fingers?|knees?|body)<3>(?:shak\w*|trembl\w*|jitter\w*|quiver\w*|like a leaf)|(?:blood )?sugar<3>(?:low|crash\w*|dropp\w*|through the floor)|hypo(?:glyc\w*)?
        """,
    ),
    *table(
        Symptom.STOMACH_PAIN,
        "stomach belly tummy gut abdom bowel cramp",
        sure=r"""
        (?:<gut>|lower belly|bowels?)(?:'s)?<4>(?:pains?|painful|sore|ach\w+|hurts?|hurting|cramp\w*|knots?|knotted|twist\w*|stitch|stab\w*|burn\w*|griping|tender)(?! (?:free|lift|is fine))
        (?:pains?|ach\w+|cramp\w*|knots?|stitch|twisting|burning)<4><gut>
        """,
    ),
    *table(
        Symptom.DIARRHOEA,
        "runs toilet loo bathroom liquid water explos squits trots poo diarr bowel stool shit delhi montezu bog",
        sure=r"""
        (?:the|got the|have the|had the) (?:runs|trots|squits|shits)(?= (?:all|since|again|this|last|today|all|now|from|after|twice|with|and|badly|on)|$)|montezuma\w*|delhi belly
        (?:toilet|loo|bathroom|bog)<4>(?:(?:\d|two|three|four|five|six|seven|eight|ten) times|all (?:night|day|morning)|every (?:hour|half|twenty|20|30|ten|few)|again and again|liquid|like water|running|non ?stop)|(?:live|living|stuck|glued|chained|can't leave|sprint\w*)<3>(?:toilet|loo|bathroom|bog)
        (?:all|just|pure|only|pooping|pooing|like)<1>(?:liquid|water)<2>(?:out|stools?|poo|poop|coming|from|$)|explosive<2>(?:poo|poop|diarrhoea|toilet|bowels?|morning)|(?:poo|poop|stools?|bowels?)<3>(?:liquid|like water|watery|runny|loose|pouring)
        """,
    ),
    *table(
        Symptom.CONSTIPATION,
        "toilet poo bowel number concrete stuck days loo constip backed dump shit gone moves moving blocked crap movemen",
        sure=r"""
        (?:haven't|hasn't|not|no|couldn't|can't)<3>(?:number two|no 2|number 2|pooed|pooped|poop|poo|bowel movement|dump|a shit|bowels? (?:moved|open\w*)|a crap)
        (?:haven't|not)<2>(?:been|gone)<3>(?:toilet|loo|properly)?<2>(?:for|in|since)<1>(?:two|three|four|five|six|\d) days|(?:two|three|four|five|six|\d) days<3>(?:without|no)<2>(?:poo|poop|toilet|bowel|going|number|a dump)|(?:no|nothing)<1>(?:poo|poop|number two|movement|dump)<1>(?:since|for|in)
        (?:everything|all|it|nothing)<2>(?:stuck|moves|moving|like concrete|blocked)<2>(?:down there|inside|since|in there|bowels?|gut)?<1>(?:since|for)<2>(?:monday|tuesday|wednesday|thursday|friday|saturday|sunday|days)
        """,
    ),
    *table(
        Symptom.BLOATING,
        "bloat stomach belly gut balloon pregnan gas blown drum fart wind waist footbal inflate bubbl basketb abdomin blew abdomen swollen",
        sure=r"""
        (?:<gut>|waist|abs)<4>(?:balloon\w*|blown up|blew up|drum|pregnan\w*|basketball|football|beach ball|distend\w*|inflated|swollen|gas\w*|bubbl\w*)|(?:look|feel|like|looking)<3>(?:pregnant|months? pregnant|a balloon)|so much (?:gas|wind)|trapped (?:gas|wind)|(?:farting|gassy)
        """,
    ),
    *table(
        Symptom.URINE_DARK,
        "pee urine toilet bowl water wee",
        sure=r"""
        <pee><5>(?:dark\w*|brown\w*|cola|coke|coffee|tea|rust\w*|orange|amber|red|reddish|pink|black\w*|bloody|whisky|whiskey|beer|ale|syrup|apple juice|mahogany|maple|molasses|soy sauce|port|gravy|iron brew|pepsi|tan water|guinness|honey)(?! (?:clear|tan|room|suit))
        (?:toilet|bowl) water<4>(?:brown|red|dark|orange|cola|pink)|(?:dark\w*|brown\w*|cola|rusty|reddish|pink|orange)<4><pee>
        peeing<3>(?:cola|coke|tea|coffee|rust|brown|blood|dark|orange)
        """,
    ),
    *table(
        Symptom.NO_URINE,
        "pee urin wee toilet bladder loo number comes drops trickle dribble drop coming nothing passed last",
        sure=r"""
        (?:haven't|hasn't|not|didn't|no|never|can't|couldn't|don't|hardly|barely|stopped|without)<4>(?:pee|peed|peeing|a pee|urinat\w*|for a pee|number one|passed (?:any )?(?:water|urine))(?! (?:clear|dark|much more|enough to))
        last<4>(?:pee|peed|pe|number one|urinat\w*|toilet<3>number one)<6>(?:hours|yesterday|last night|\d|noon|morning)|(?:last time|hours)<4>(?:peed|pee|number one|urinat\w*)
        nothing<2>(?:comes?|coming|came)<1>out(?= (?:since|when i|for|all|at|of me|even|although)|$)|bladder<3>(?:empty|won't|full but|nothing|stuck|not)|(?:just|only)<2>(?:few |couple of )?(?:drops|dribbles?|trickle)<3>(?:pee\w*|toilet|since|come\w*|all day|$)
        (?:no|zero|not a drop of|not one)<1>(?:pee|urine|drop)(?= (?:since|for|all|today|in|at|yet)|$)
        """,
    ),
    *table(
        Symptom.FEVER,
        "fever temp shiver burning chill hot thermometer freez sweat 38 39 40 degrees chatter forehea",
        sure=r"""
        (?:temp|temperature|thermometer|forehead)<4>(?:3[89](?:[.,]\d)?|40(?:[.,]\d)?|10[0-4](?:[.,]\d)?|running|high|up|burning|raised)(?! (?:in the (?:room|gym|hotel|car)|outside))|running<2>(?:temp|temperature)(?! (?:test|log))|(?:3[89](?:[.,]\d)?|40[.,]\d)<1>(?:degrees|fever|c|temp\w*|grad)
        (?:shiver\w*|chills|burning up|hot and cold|teeth chattering|cold sweats?|freezing and sweating|sweating and (?:freezing|shiver\w*)|shakes and sweat)(?! (?:ice|outside|in the cold))
        """,
    ),
    *table(
        Symptom.EXHAUSTION,
        "exhaust tired energy fumes empty knacker wiped shatter drained burn nod zombie effort sofa dead battery sleepwalk collapse weary fatigue functio strengt power worn wrecked reserve open couch zero done hard much batteri tank",
        sure=r"""
        (?:running|run|going|living)<1>on<1>(?:fumes|empty|reserve|zero)|nodd\w* off<2>(?:at|during|in|on|while|twice)|(?:tired|fatigued|weary)<2>(?:like never|as never|than ever|to the bone|beyond|that i can't|i can (?:barely|hardly))|bone tired|(?:dog|dead) tired and
        (?:everything|each step|every step|walking|stairs|talking)<3>(?:too much|an effort|so hard|exhausting|too much effort)|my (?:battery|batteries|tank)<2>(?:empty|dead|flat|drained|at zero)|(?:burnt|burned) out|dead on my feet|barely (?:function\w*|keep my eyes open)|can't (?:keep my eyes open|get off the (?:sofa|couch)|function)|no (?:energy|strength|power) (?:left|at all|for anything)|worn out|done in|wrecked(?! by (?:squats|legs))|sleepwalking
        """,
    ),
)
