"""How people tell a complaint in passing: by a figure off a watch, or by what it kept them from."""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

from engine.symptoms.names import Symptom
from engine.symptoms.patterns import Phrase, table

_DAY = (
    r"(?:monday|tuesday|wednesday|thursday|friday|saturday|sunday|show|stage|event|weigh in|comp)"
)

DAILY_PHRASES: tuple[Phrase, ...] = (
    *table(
        Symptom.SEIZURE,
        "cramp shak jerk stiff twitch convuls respon react shook",
        sure=r"""
        (?:cramp\w*|shak\w*|shook|jerk\w*|stiff\w*|twitch\w*)<8>(?:not there|wasn't there|absent|unresponsive|not responding|not answering|away)<3>(?:minutes?|seconds|moment|while)
        not<1>(?:responding|responsive|reacting)<3>(?:minutes?|seconds)
        (?:cramp\w*|shak\w*|shook|jerk\w*|twitch\w*)<2>(?:all over|whole|all the|entire)(?: (?:my|the))?(?: body)?<6>(?:not there|remember|gone|unresponsive|didn't hear)
        """,
    ),
    *table(
        Symptom.FAINTING,
        "gap missing blank lying remember skirting face laying between seconds moments moment gone",
        sure=r"""
        (?:gap|blank|hole|jump|cut)<2>between<8>(?:lying|laying|floor|ground|tiles|on my back)
        (?:seconds|minutes?|moments?)<2>(?:missing|i'm missing|are gone)<6>(?:floor|lying|ground|on my back)
        """,
        doubtful=r"""
        (?:lying|laying)<1>(?:next to|beside|under|in front of)<4>(?:milk|fridge|oven|sink|toilet|shower|bath|dishwasher|rack)
        """,
    ),
    *table(
        Symptom.PALPITATIONS,
        "heart pulse beat",
        sure=r"""
        (?:heart|heartbeat|pulse|beats?)<6>(?:shak\w*|rock\w*|mov\w*|wobbl\w*|rattl\w*)<2>(?:bed|mattress|pillow|headboard|duvet|t ?shirt|sofa|couch)
        (?:bed|mattress|pillow|headboard|sofa|couch)<3>(?:shak\w*|rock\w*|mov\w*|wobbl\w*)<3>(?:heart|heartbeat|pulse|beats?)
        """,
    ),
    *table(
        Symptom.STROKE_SIGNS,
        "line side half dentist middle left right word knew know",
        sure=r"""
        line<3>middle<,8>(?:feel nothing|nothing|numb|dead|no feeling)
        (?:left|right|one|whole)<1>(?:side|half)<5>(?:feel nothing|feels nothing|no feeling|went numb|gone numb|completely numb|totally numb|all numb|fell asleep|gone to sleep|gone dead|not mine|isn't mine|won't listen|hangs?|hanging|sagg\w*|slid)
        (?:numb|dead|asleep|no feeling|feel nothing)<3>(?:down|on|along|in)<2>(?:left|right|one|whole|entire)<1>(?:side|half)
        half<2>(?:face|body|mouth|lip|tongue)<3>(?:numb|dead|asleep|gone|hang\w*|sagg\w*|droop\w*|slid|frozen|wax\w*)
        (?:dentist|anaesthetic|anesthetic)<,6>(?:half|one side|left side|right side)|(?:half|one side|left side|right side)<5>(?:dentist|anaesthetic|anesthetic)
        (?:know|knew)<1>(?:what|the word)<8>(?:can't|couldn't)<1>(?:say|name|get)<2>(?:it|the word|word)
        """,
    ),
    *table(
        Symptom.REPEATED_VOMITING,
        "sip bite mouthful gulp swallow",
        sure=r"""
        (?:every|each|any)<1>(?:sip|bite|mouthful|gulp|swallow)<4>(?:(?:comes?|came|coming|shoots|went|goes)<2>(?:back|up)|straight back|right back)(?! (?:on|to|in|for)\b)
        """,
    ),
    *table(
        Symptom.HEAVY_BLEEDING,
        "period soak pad tampon clot bleed nose towel leaking mattres bled",
        sure=r"""
        (?:nose ?bleeds?|nose ?bleeding|bleeding)<3>(?:won't|wont|wouldn't|doesn't|doesnt|does not|not|hasn't|never|refus\w+ to)<1>(?:quit\w*|stop\w*|ease\w*|let\w* up|clot\w*)
        (?:nose ?bleeds?|nose ?bleeding|bleeding)<,8>(?:second|third|fourth|fifth|2nd|3rd|4th) (?:towel|roll|box|cloth|shirt)|(?:nose ?bleeds?|nose ?bleeding|bleeding)<2>(?:for|since|going on|already)<1>(?:[2-9]\d|1\d\d) ?(?:min|mins|minutes)
        period<5>(?:heavy|flood\w*|gush\w*|pour\w*)<,8>(?:soak\w*|every|pads?|tampons?|clots?|woozy|dizzy|weak|through everything|faint)
        (?:soak\w*|flood\w*|bleed\w*|bled)<2>(?:through )?<2>(?:pads?|tampons?|mattress)<4>(?:hour|minutes|min|mins|half|night)
        (?:pads?|tampons?)<3>(?:every|an|per|each)<2>(?:hour|half|min|mins|minutes|20|30)
        (?:soaking|soaked|bleeding|bled|leaking)<1>through<4>every<2>(?:min|mins|minutes|hour)
        clots?<4>(?:golf|plum|fist|egg|walnut|size of|massive|huge)
        """,
    ),
    *table(
        Symptom.SEVERE_HEADACHE,
        "head skull temple brain forehead migraine",
        sure=r"""
        (?:nail ?gun|bolt gun|gun ?shot|shot|bullet|sledgehammer|baseball bat|firecracker|firework|whip|thunderbolt|electric shock)<6>(?:temples?|head|skull|brain|forehead)
        (?:temples?|head|skull|brain|forehead)<5>(?:nail ?gun|bolt gun|gun ?shot|bullet|sledgehammer|baseball bat|firecracker|firework|thunderbolt)
        (?:mid sentence|from one second to the next|bang|bam|boom|snap|wham)<6>(?:head ?ache|pain<3>head|migraine)
        pain<3>(?:head|skull)<6>(?:drop\w*|let go|knees|scream\w*|froze|whimper\w*)
        (?:headache|migraine|head pain)<6>(?:never (?:had|felt|known)|not once in my life|scream\w*|on my knees|whimper\w*)
        (?:never|not once)<4>(?:headache|migraine|head)<3>like this
        """,
    ),
    *table(
        Symptom.DOUBLE_VISION,
        "twin ghost two 2 double twice copy apart every each second copies doppelg vanish disappe goes gone",
        sure=r"""
        (?:every|each)<1>(?:car|light|line|letter|person|face|lamp|word|number|sign)<2>(?:became|becomes|turned into|turns into|split into|splits into)<1>two
        (?:lines?|letters|lights|lanes?|words|pictures)<4>(?:drift\w*|slid\w*|float\w*)<1>apart
        (?:everything|everyone|everybody|people|plates?|letters|lines|faces?|things|thumb|fingers?|lights?|words|numbers|it all)<2>(?:has|have|got|with)<2>(?:twins?|ghosts?|copy|copies|double|doppelganger|second one|second outline)
        (?:two|2)<1>(?:pictures|images)<3>(?:next to|side by side|on top|beside|over each|overlap\w*|of everything)
        (?:see|seeing|saw|there are|there's)<2>(?:two|2)<1>of<1>(?:everything|everyone|you|them|him|her|me|it|my|each|the)
        (?:see|seeing|saw)<2>(?:double|twice)(?! (?:lats|abs|bi\w*|digits))
        (?:close|closed|closing|cover|shut)<2>eye<5>(?:ghost|second|twin|other)<3>(?:gone|disappear\w*|vanish\w*|goes)
        """,
    ),
    *table(
        Symptom.SELF_HARM,
        "goodbye farewell roof edge ledge bridge car easy jump letters step suicide parapet railing balcony parking platfor floor",
        sure=r"""
        (?:goodbye|farewell|suicide)<1>(?:letters?|notes?|messages?|videos?|voice notes?)|letters?<3>(?:to say|saying)<1>goodbye
        (?:roof|edge|ledge|bridge|top floor|car park|parking|platform|parapet|balcony|railing)<,8>(?:so easy|be easy|one step|jump|one step|let go|just step)
        """,
        doubtful=r"""
        it would be so easy(?= ?$)|one step and<3>over
        """,
    ),
    *table(
        Symptom.URINE_DARK,
        "pee urine toilet",
        sure=r"""
        <pee><5>(?:stout|porter|espresso|balsamic|bourbon|cognac|brandy|rooibos|beetroot|chestnut|liquorice|motor oil|dark ale|treacle|marmite|red wine|bock)
        """,
    ),
    *table(
        Symptom.STARVING,
        "fast eat skip food meal",
        sure=rf"""
        (?:fast|fasting|not eating|stop eating|skip\w*<2>meals?|no food|eat nothing|nothing to eat|zero food|go without food)<2>(?:till|until|til|before|up to)<2>{_DAY}
        """,
    ),
    *table(
        Symptom.LOW_MOOD,
        "tears cry joy fun point pleasur worth interes",
        sure=r"""
        tears<2>(?:come|coming|fall|falling|flow\w*|start\w*|roll\w*|run|running|won't stop|every day|at night)(?! (?:of (?:joy|laughter|happiness)|from laughing|laughing))
        cry\w*<3>(?:at (?:the|my) desk|in the (?:car|shower|toilet|loo|bathroom|gym|kitchen)|over nothing|for no reason|for days|every day)(?! laughing)
        (?:joy|fun|pleasure|interest)<2>in (?:nothing|anything)<1>(?:any ?more)?|nothing<2>(?:fun|joy|brings joy|worth it)<1>any ?more
        """,
    ),
    *table(
        Symptom.DRYING_OUT,
        "bath sweat sauna bin hoodie salts plastic wrap trash garbage clingfi cling",
        sure=r"""
        (?:hot|salt|epsom|scalding|boiling)<2>baths?<6>(?:hoodie|sweat\w*|down|kilos?|weight|drop|off me|lighter|tracksuit)
        (?:hot|salt|epsom)(?: (?:hot|salt))? baths?<5>(?:to (?:drop|lose|cut|make weight|sweat)|before the (?:weigh in|scale))
        (?:bin bags?|trash bags?|cling ?film|plastic wrap|sweat suit|sauna suit|garbage bags?)<6>(?:bath|sauna|bike|treadmill|sweat\w*|cardio|run|sleep\w*|waist)
        """,
    ),
    *table(
        Symptom.PURGING,
        "laxative senna bisacodyl dulcolax epsom prunes magnesi",
        sure=r"""
        (?:laxatives?|senna\w*|bisacodyl|dulcolax|epsom|milk of magnesia)<8>(?:empty|flat|flatter|lighter|cleared? (?:me )?out|get it out|get rid|scale|weight|thinner|tiny|smaller)
        """,
    ),
    *table(
        Symptom.FAST_HEART,
        "rest rhr pulse hr sleeping lying nothing",
        sure=r"""
        (?:resting|rhr|at rest|sleeping (?:hr|pulse|heart rate))<4>(?:9\d|1[0-6]\d)(?= |$)(?! ?(?:g|grams|kg|kcal|secs?|seconds|minutes|mins?))
        (?:9\d|1[0-6]\d)<2>(?:resting|at rest|lying down|lying in bed|just lying|doing nothing)
        """,
        doubtful=r"""
        (?:resting|rhr)<3>[78]\d<3>(?:instead of|normally|usually|up from|from|vs|last week)<3>[345]\d
        """,
    ),
    *table(
        Symptom.FALL,
        "fell fall slip trip tumbl topp",
        sure=r"""
        (?:fell|fallen|tumbled|toppled|slipped)<1>off<3>(?:box|stage|ladder|bench|bike|treadmill|chair|stool|platform|step|steps|kerb|curb|bed|podium|stepper)
        (?:tripped|slipped|stumbled)<3>(?:over|on|off|down)<4>(?:stairs|steps?|kerb|curb|ice|tiles|mat|cable|rug|bath|shower|escalator)<4>(?:knees?|elbow|shoulder|wrist|hip|head|hands?|chin|sore|bruis\w*|graz\w*|flat|landed)
        """,
    ),
    *table(
        Symptom.VOMITING,
        "breakfast lunch dinner meal shake oats lost",
        sure=r"""
        lost<1>(?:breakfast|lunch|dinner|meal|shake|oats|pancakes)<2>(?:side of|road|street|car|bin|bush\w*|hedge|toilet|sink|bucket|car park|lawn|gutter|drain)
        lost<1>(?:breakfast|lunch|dinner|meal|shake|oats)<1>(?:on|in|at|behind|by|beside|outside|over|into)<3>(?:road|street|car|bin|bush\w*|hedge|toilet|sink|bucket|park|lawn|gutter|drain)
        (?:breakfast|lunch|dinner|meal|shake|oats)<4>(?:made a (?:comeback|reappearance|return)|reappeared|second appearance|in reverse|came to visit again|said hello again)
        """,
    ),
    *table(
        Symptom.FEVER,
        "38 39 40 teeth chatter",
        sure=r"""
        (?:38[.,][3-9]|39[.,]\d|40[.,]\d)<3>(?:ear|forehead|armpit|tongue|degrees|celsius|mouth|thermometer)|(?:ear|forehead|armpit|tongue|thermometer)<3>(?:38[.,][3-9]|39[.,]\d|40[.,]\d)
        teeth<2>(?:chatter\w*|clatter\w*)(?! (?:outside|in the cold|after the ice))
        """,
        doubtful=r"""
        (?:38[.,][5-9]|39[.,]\d|40[.,]\d)<6>(?:shiver\w*|hot|cold|sweat\w*|bed|achy|aching)
        """,
    ),
    *table(
        Symptom.HEADACHE,
        "tension head forehead temple",
        sure=r"""
        tension<3>(?:head|forehead|temples?|skull)|(?:forehead|temples?)<2>(?:tension|band round|band around)
        """,
    ),
    *table(
        Symptom.SWELLING,
        "shin ankle leg calf calves foot feet thumb finger dent",
        sure=r"""
        (?:shins?|ankles?|legs?|calf|calves|feet|foot)<4>(?:thumb ?prints?|finger ?prints?|thumb marks?|finger marks?|finger dents?)
        (?:thumb ?prints?|finger ?prints?|thumb|finger)<4>(?:stays?|remains?|left|visible|dent|pit)<4>(?:shins?|ankles?|legs?|calf|calves|feet|foot)
        """,
    ),
    *table(
        Symptom.DIZZY,
        "floaty swimmy spinny swirly helium",
        sure=r"""
        (?:floaty|swimmy|spinny|swirly|helium)<1>head(?:ed)?|head<3>(?:floaty|swimmy|spinny|swirly)|(?:feel|feeling|felt)<2>(?:floaty|swimmy|spinny|swirly)
        """,
    ),
    *table(
        Symptom.SLEEPLESS,
        "sheep sleep",
        sure=r"""
        count\w*<2>sheep<4>(?:till|until|alarm|am|night|hours|morning|again)|(?:no|zero) sleep (?:whatsoever|at all|last night)
        """,
    ),
    *table(
        Symptom.DIARRHOEA,
        "liquid water toilet end squirt squit skitter bum straigh peeing skits behind",
        sure=r"""
        (?:pure|all|just|only|nothing but|basically)<1>(?:liquid|water)<4>(?:other end|back end|behind|out of me|down there)
        (?:pour\w*|com\w+|rush\w*|run\w*|shoot\w*|straight)<2>(?:out|through)<3>(?:other end|back end|behind)|straight through me|(?:squirts|squits|skitters|skits)<1>(?:again|since|all|today|\d)|bum<1>(?:wee|pee|water)|peeing out of my (?:bum|arse|ass)
        """,
    ),
    *table(
        Symptom.CONSTIPATION,
        "moved moving prune go poo toilet days bung figs syrup psylliu happene vain nothing luck",
        sure=r"""
        nothing<2>(?:moved|moving|moves|come out|coming out|happened down there)<3>(?:days|day \d|monday|tuesday|wednesday|thursday|friday|saturday|sunday)
        (?:prunes?|psyllium|fig syrup|figs)<4>(?:no effect|nothing|not working|useless|don't help|didn't help|did nothing|no use)
        (?:sat|sit|sitting)<2>(?:toilet|loo)<6>(?:nothing|for nothing|no luck|in vain)
        """,
        doubtful=r"""
        can't go(?= ?$)
        """,
    ),
    *table(
        Symptom.EXHAUSTION,
        "battery sleepy tired drowsy stop knacker",
        sure=r"""
        battery<,5>(?:me not|mine not|my own|i mean me|mine i mean|human)|my (?:own|personal|inner|body)<1>battery
        so (?:sleepy|tired|drowsy|knackered)<2>(?:i )?(?:missed|fell|nodded|slept|walked|put|forgot|drove)|so (?:sleepy|tired|drowsy) i (?:missed|fell|nodded|slept|walked|put|forgot|drove|can't|could)
        """,
    ),
)
