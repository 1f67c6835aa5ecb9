"""How people say what else the body does: falls, bleeding, eyes that see double, drying out."""

from __future__ import annotations

from engine.symptoms.names import Symptom
from engine.symptoms.patterns import Phrase, table

# ruff: noqa: E501 - a pattern stays on one line


_FAST = r"(?:1[1-9]\d|2[0-2]\d)"
_REST = r"(?:lying|laying|sitting|sat|rest|resting|bed|couch|sofa|asleep|sleeping|chair|desk|standing|stood|doing nothing|not moving|woke|waking|wake|morning|still|watching|at my desk|in the bath)"

BODY_PHRASES: tuple[Phrase, ...] = (
    *table(
        Symptom.STROKE_SIGNS,
        "face mouth smile eyelid stroke side speech slur half cheek arm lip talk say speak words arms drool dribbl coffee left right body voice tongue pronato corner word suddenl trying raise meant wanted tried useless move gone lift limp mumbl noise went tell",
        sure=r"""
        (?:only|just)<1>(?:half|one side|one half)<3>(?:mouth|face|smile|lips)|(?:half|one side|one corner)<3>(?:mouth|face|smile|lips?)<3>(?:went|goes|go|moved?|moves|works?|lifts?|up|droop\w*|hang\w*|doesn't|won't|dead|numb|deaf)
        (?:half|side|left|right)<4>(?:body|face|leg|arm)<2>(?:is|are|feels?|felt|went|gone|was)<2>(?:deaf|numb|dead|asleep|paraly\w*|lame|without feeling|tingling|not there|weak)
        (?:want\w*|tried|trying|wanted|meant)<2>(?:to )?(?:say|speak|talk|tell)<5>(?:only|just|came out|nothing came|mush|gibberish|noise|sounds|mumbl\w*)
        (?:speech|talking|words?|voice)<3>(?:slurr\w*|slurry|washy|mushy|like (?:i'm )?drunk|thick|blurred|mumbl\w*|not clear|gone|unclear)
        coffee<3>(?:ran|runs|dribbl\w*|drips?|dripp\w*)<3>(?:mouth|side|chin)|(?:drool\w*|dribbl\w*)<4>(?:one side|left|right|corner)|pronator|(?:lift|raise|hold)<3>both arms<4>(?:one|left|right|drops?|sinks?)
        (?:face|mouth|smile|eyelid|cheek|lip|corner)<4>(?:droop\w*|hang\w*|lopsided|crooked|saggy|sagging|sagged|slid|slipped|slack|slanted|wonky|uneven|asymmetric\w*|dead|frozen|won't move|paralys\w*)
        (?:droop\w*|hanging|lopsided|crooked|sagging|slack|wonky)<2>(?:face|mouth|smile|eyelid|cheek)
        (?:had|having|have|got|like|after|mini)<2>stroke
        (?:one|left|right|half|other)<1>(?:side|half)<4>(?:numb|dead|droop\w*|paralys\w*|not working|doesn't work|gone|won't|weak|limp|asleep)
        (?:half|side)<2>(?:face|body|mouth)<3>(?:numb|dead|gone|droop\w*|hang\w*|asleep|weak|won't|tingl\w*)
        (?:left|right|one) (?:arm|leg|hand)<3>(?:suddenly|went|gone)<1>(?:numb|dead|limp|weak|useless)|(?:can't|couldn't)<2>(?:lift|move|raise|feel)<2>(?:left|right|one) (?:arm|leg|hand|side)
        speech<3>(?:gone|slurred|slurry|thick|garbled|went)|slurr\w+<2>(?:speech|words)|(?:can't|couldn't) (?:speak|talk|get (?:my |the )?words? out)(?! (?:to|with|about|right now|now))
        tongue<3>(?:thick|won't|heavy|not working|numb)
        """,
    ),
    *table(
        Symptom.HEAVY_BLEEDING,
        "blood bleed coffee tar black pad tampon clot towel gush spurt haemorr hemorrh squirti pumping bandage pouring soak",
        sure=r"""
        \w*bleed\w*<6>(?:won't|doesn't|not|can't|hasn't|never|wouldn't|didn't)<2>(?:stop\w*|end\w*|clot\w*|slow\w*)|\w*bleed\w*<3>(?:for|since|over)<2>(?:hours?|an hour|\d+ (?:min\w*|hours?)|half an hour|this morning|last night)
        (?:full|bowl|loads|lots|much|cups?|handful|sink|puddle)<2>of<1>(?:bright |red |fresh |dark )*blood|blood<3>(?:in the bowl|filled|all over|everywhere|down my (?:leg|legs|face|throat))|blood ?clots?|(?:are|were|big|large|with|pass\w*)<1>clots
        (?:pads?|tampons?)<4>(?:hour|hours|half|minutes|an hour)|(?:through|soaked|soaking)<3>(?:pads?|tampons?|towels?|bandages?)
        <vomit><3>(?:blood|coffee grounds)|(?:came|come|coming|brought|bring)<1>up<5>coffee grounds|coffee grounds<4>(?:came|come|coming|brought)<1>up|blood<3><vomit>|(?:cough\w*|spit\w*|spat|threw|throwing|puk\w*|chuck\w*)<2>(?:up )?blood
        blood(?:y)?<4>(?:stools?|poo|poop|diarrhoea|toilet bowl|toilet|loo|bowel|when i (?:poo|poop|go))(?! (?:seat|paper))|bloody (?:stools?|poo|poop|diarrhoea)
        (?:stools?|poo|poop)<3>(?:tar|tarry|black as|like tar|pitch black|blood\w*)|(?:black|tarry)<1>(?:stools?|poo|poop)
        (?:bleed\w*|blood)<4>(?:won't|doesn't|not|can't|hasn't|never|wouldn't|didn't)<2>(?:stop\w*|clot\w*|slow\w*)|<can't><1>(?:stop|control)<3>(?:bleed\w*|blood)
        bleeding<1>(?:heavily|badly|a lot|like crazy|everywhere|buckets|nonstop|non stop|for (?:an )?hours?|all (?:day|night))|(?:heavy|massive|severe|non ?stop) bleeding|haemorrhag\w*|hemorrhag\w*
        (?:lost|losing|loss of|so much|lots of|pool of|pouring|gushing|pumping|streaming|dripping)<2>blood|blood<2>(?:everywhere|all over|pouring|gushing|pumping|streaming|running down)
        (?:soak\w*|bleed\w*)<2>through<3>(?:towels?|pads?|tampons?|bandages?|plasters?|sheets)
        """,
        doubtful=r"""
        (?:gushing|spurting)<1>for<1>(?:hours?|an hour|half an hour|ages|\d+ (?:min\w*|hours?))
        (?:it's|it is|its|that's|is|keeps|just|still) (?:gushing|spurting|squirting|pumping out|pouring out)(?! (?:rain|over|about))
        """,
    ),
    *table(
        Symptom.DOUBLE_VISION,
        "double two twice twin ghost overlap split twins eye eyes pairs both duplica apart second doublin doubl side",
        sure=r"""
        (?:there are|there's|theres|there is|i have|i've got|got|has|have|suddenly|everything has|see|seeing|saw)<1>two<1>\w+s?<1>(?:when i look|if i look|where there|instead of one|with both|both eyes)
        (?:lines?|letters?|words?|screen|road|lights?|numbers?|everything|images?|tv|cars?|face|faces)<5>(?:split|splits|splitting|doubl\w*|duplicat\w*|come apart|drift\w* apart|into two|two pairs|side by side|overlap\w*)(?! (?:biceps|the price|in price|reps?|portion))
        (?:everyone|everybody|you|he|she|they|coach|dog|phone)<2>(?:has|have|had|with)<1>two (?:heads|faces|noses)|(?:close|cover)<2>one eye<5>(?:read|see|single|one|better|normal|goes|drive)
        (?:see|seeing|saw|sees|looks?|looking|read|reading)<3>(?:double|in doubles|in duplicate)(?! (?:chin|the|bi\w*|check|digit|time|as))|double vision|(?:vision|eyes?|letters|screen|everything|sight)<3>(?:doubled|double|doubling)(?! (?:the|as))
        (?:see|seeing|saw|sees|there are|there were|there's)<1>two<1>(?:of|phones?|screens?|moons?|faces?|heads?|plates?|everything|mirrors?|doors?|lights?|images?)|two of everything|everything twice
        (?:ghost|overlapping|second) (?:images?|pictures?)
        """,
    ),
    *table(
        Symptom.MUSCLE_BREAKDOWN,
        "rhabdo",
        sure=r"""
        rhabdo\w*
        """,
    ),
    *table(
        Symptom.FALL,
        "fell fall legs floor trip slip stumbl tumbl spill plant head wall ground knees feet crash tipped land went shower grab toppl balance wobble upright footing wound kissed straigh ended found swept keeled hard knocked beneath tiles pavemen deck slid came gone",
        sure=r"""
        (?:slipp?\w*|tripp?\w*|stumbl\w*|toppl\w*|tipped|keeled|crashed)<7>(?:landed|landing|went down|hit|fell|hip|wrist|elbow|knee|knees|shoulder|tailbone|coccyx|bum|head|face|floor|ground|stairs|sprained|bruis\w*)(?! (?:weights?|press|the gym|my (?:macros|target)))
        (?:landed|landing|went down|came down|crashed)<3>(?:hard|on (?:my|the)<1>(?:hip|wrist|elbow|knees?|shoulder|tailbone|bum|arse|back|head|face|floor|hands?|side|stage|tiles))
        (?:slipped|tripped)<2>(?:in the (?:shower|bath)|on (?:the )?(?:stairs|steps|ice|stage|kerb|curb|wet)|off the|over (?:the|my|a)|down the)
        (?:i|i've|i'd|just|and|nearly|almost|then|randomly|suddenly) (?:have |had |just |nearly |almost |kind of )?(?:fell|fallen|fall)(?! (?:asleep|in love|in lust|off (?:the )?(?:wagon|plan|track|diet)|behind|short|for|out with|apart|back on|into (?:bed|a|the|place|that|my)|through|ill|pregnant|in (?:line|the|with)|on (?:a |the )?(?:monday|tuesday|wednesday|thursday|friday|saturday|sunday|weekend)|under|by|from \d|to \d|\d))
        (?:fell|fall|falling|fallen) (?:over|down the|flat|on my|backwards|forwards|against|off (?:the|my) (?:toilet|chair|bed|treadmill|stage|bike|stool|step|stepper|bench)|down the (?:stairs|steps)|in the (?:shower|bath|kitchen|bathroom|street|hall\w*)|out of bed|up the stairs)
        legs?<3>(?:went|gone|slid|slipped|swept|knocked)<2>(?:under|beneath|away|out)
        (?:took|had|taken|having)<1>(?:a |nasty |bad |little )?(?:tumble|fall|spill|wobble and)
        (?:ended up|found myself|landed|wound up)<2>(?:on|in)<2>(?:floor|ground|heap|tiles|pavement|backside|arse|bum|knees|face)
        (?:face ?plant\w*|went flying|went sprawling|went arse over|lost my footing|legs from under)
        (?:bang\w*|hit|smack\w*|crack\w*|knock\w*|whack\w*)<1>my<1>head(?! with)|(?:hit|kissed) the (?:floor|deck|ground|tiles|pavement)(?! running)
        """,
        doubtful=r"""
        (?:i|just|nearly|almost|keep|kept)<1>(?:tripp\w+|stumbl\w+|toppl\w+|slipped)(?! (?:up on|on (?:my )?(?:diet|plan)|into|my mind|disc))
        <can't><2>(?:stay|keep|stand)<1>(?:upright|on my feet|balance|straight)|had to grab (?:the|a) \w+
        """,
    ),
    *table(
        Symptom.FAST_HEART,
        "heart pulse bpm hr beats rhr",
        sure=rf"""
        (?:heart ?rate|heart rate|hr|rhr|pulse|bpm|heart(?:'s)?|heartbeat)<5>(?:1\d\d|2[0-2]\d)<5>{_REST}
        {_REST}<6>(?:heart ?rate|heart rate|hr|pulse|bpm|heart(?:'s)?|heartbeat)<5>(?:1[0-9]\d|2[0-2]\d)
        (?:1\d\d|2[0-2]\d) ?(?:bpm|beats|heart rate|pulse)<5>{_REST}
        {_REST}<4>(?:1\d\d|2[0-2]\d) ?(?:bpm|beats)
        (?:resting (?:heart rate|hr|pulse|heart)|rhr)<4>(?:1\d\d|2[0-2]\d|9[5-9])
        """,
        doubtful=rf"""
        (?:heart ?rate|heart rate|hr|pulse|bpm|heart(?:'s)?|heartbeat)<4>{_FAST}(?! ?(?:g|kg|kcal|grams|reps?|ml|m|steps)\b)
        {_FAST} ?(?:bpm|beats)
        (?:heart ?rate|heart rate|hr|pulse|rhr)<3>(?:through the roof|sky high|won't (?:come|go) down|won't drop|not coming down|super high|really high|too high|way up|up by|over (?:a )?(?:100|hundred)|above (?:100|a hundred)|triple digits)
        """,
    ),
    *table(
        Symptom.BLEEDING,
        "bleed bled blood sliced gash stitche badly deep open",
        sure=r"""
        (?:blood|bloody|bleed)<4>(?:wip\w+|paper|tissue|flush\w*|underwear|knickers|pants|panties|brush\w*)|(?:little|bit|drops?|streaks?|spots?|spot|trace|some)<2>of<1>(?:bright |red |fresh )?blood
        (?:cut|gash\w*|sliced)<3>(?:open|deep|badly|stitches)
        bleeding(?! (?:edge|heart|obvious|brilliant|hell|love|ridiculous|starving|hungry|tired|cold|gorgeous))|nose ?bleeds?(?! seats?)|bled|bleeds
        blood<3>(?:nose|mouth|gums|ear|ears|spit|spat|saliva|tissue|toilet paper|pillow|mucus|phlegm|snot|toothbrush|sink|underwear)
        (?:nose|gums?|ears?|mouth)<2>(?:bleed\w*|bled)
        """,
    ),
    *table(
        Symptom.DRYING_OUT,
        "sauna spit spat drink drank drunk water fluid liquid bath sweat dry dehydrat bin steam sip thirst infrare parched tub mouth trash glass wetting dried cling garbage plastic hardly rubbish single barely nothing lips touch litre anythin drop only down today since",
        sure=r"""
        (?:sauna|steam room|hot bath|infrared|hot tub)<7>(?:weight|kilos?|kgs?|lbs?|pounds?|water|dry|drier|tight\w*|sweat\w*|lose|drop|cut|make (?:class|weight)|shed|hours?)
        (?:weight|kilos?|kgs?|pounds?|water|dry|sweat\w*|lose|drop|cut|shed)<7>(?:sauna|steam room|hot bath|hot tub)
        (?:sweat|sauna|bin|rubbish|plastic|trash|garbage)<1>(?:suit|bags?|liners?)<5>(?:cardio|run|bike|treadmill|sweat\w*|weight|water|wearing|sleep\w*|on)|(?:wear\w*|wrapped|cardio|run\w*|bike|in|training)<5>(?:sweat suit|bin ?bags?|bin liners?|sauna suit|cling film|trash bags?)
        (?:spitting|spit|spat)<3>(?:cup|bottle|bucket|tissue|sink|all day|weight|water|bag)|(?:gum|sweets|sour)<4>(?:spit\w*|spat)
        (?:stopp\w+|quit|cut|cutting|dropp\w+|slash\w*|restrict\w*|limit\w*|skipp\w*|refus\w*)<1>(?:out )?(?:on )?(?:all )?(?:my |the )?(?:water|fluids?|liquids?|drinking)(?! (?:coffee|alcohol|beer|wine|diet|soda|coke|milk|tea|weight|retention|pills?|fizzy|energy|bottle|bill|cooler))
        (?:not|isn't|aren't|won't be|haven't been|stop|avoid\w*) drinking(?= (?:anything|today|since|until|till|at all|any ?more|any water|water|much|for|now|from|enough|before)|$)
        (?:haven't|hasn't|not|didn't|never|won't)<1>(?:drunk|drank|drink|had|touch\w*|have)<1>(?:anything|a drop|water|any water|fluids?|any fluids?|a sip|a single \w+)<1>(?:to drink )?(?:since|today|all day|until|till|for|yet|yesterday|from|in)
        (?:no|zero|without) (?:more )?(?:water|fluids?|liquids?|drinks?|drinking)(?: \w+)? (?:since|until|till|today|from|tonight|for|all day|before|tomorrow|anymore|any more|yesterday|now)
        (?:drunk|drank|drinking|had)<1>nothing(?= (?:since|all|today|for|yet|until|but)|$)|nothing to drink
        (?:dry|drying|dried)<1>(?:myself )?out(?= (?:for|to|before|today|tomorrow|until|now|completely|the)|$)|drying out|(?:want|trying|going|gonna|need)<1>to<1>(?:dry out|dehydrate)|dehydrat(?:e|ing)<1>(?:myself|for|before|to)
        (?:only|just|barely|hardly|down to)<3>(?:sips?|sipping|drops?|mouthfuls?|a glass|one glass|half a litre|[1-4]\d\d ?ml|wetting)(?: of| my)?(?: (?:water|mouth|lips|all day|today|since|a day))
        water<2>(?:cut|cutting|cut out|cut off|restriction|manipulation|depletion)(?! (?:in|into|melon))|(?:cut|cutting|pull|pulling|pulled)<1>(?:my |the )?water
        """,
        doubtful=r"""
        (?:sat|sit|sitting|went|going|been|did|doing|spent|minutes|mins?|session|planning|hit|straight|rounds?|use|using)<4>(?:sauna|steam room|infrared)
        dehydrated(?! (?:mango\w*|fruits?|food|strawberr\w*|apple\w*|meals?|veg\w*))|dehydration
        (?:so|really|very|super|extremely|always|constantly|terribly) thirsty|mouth<3>(?:dry as|sandpaper|desert|cotton|sahara|glue)|parched
        (?:barely|hardly|not really) (?:drinking|drank|drunk|drink)(?! (?:alcohol|coffee|beer|wine))
        """,
    ),
    *table(
        Symptom.UNWELL,
        "feel unwell feeling felt wrong sick ill poorly weather help ambulance right ok myself weird off dying rough something scared freak worried wrecked coming mess caught emergen doctor paramed bad covid going virus send bug call flu need well cold good",
        sure=r"""
        (?:feel|feeling|feels|felt)<2>(?:like (?:absolute |total |complete |utter )?(?:crap|shit|shite|death|garbage|trash|hell|rubbish|roadkill|a zombie|a corpse|dirt|arse|ass|poo|poop|i'm dying|i am dying|dying|i've been (?:hit|run over)|hit by)|awful|terrible|horrible|dreadful|unwell|ill|poorly|ghastly|grim|lousy|horrendous|wretched|rotten|dire|atrocious)(?! (?:about|for (?:him|her|them|you)|that i|hungry))
        unwell|under the weather|(?:coming|going) down with|i'm (?:really )?(?:ill|poorly)|(?:caught|got|have) (?:a bug|the flu|flu|a virus|covid|a cold)
        (?:not|don't|doesn't|didn't|isn't)<1>(?:feel|feeling)<1>(?:well|good|great|right|ok|okay|myself|normal|human)(?! (?:about|in (?:the|my) (?:suit|bikini|heels)))
        something(?:'s| is| feels?| really)*<1>(?:wrong|off|not right|up) (?:with me|with my body|inside|here|today)|something(?:'s| is| feels) (?:really |very |seriously |badly )?(?:wrong|not right)
        (?:i )?(?:need|call|get|send)<2>(?:help|ambulance|a doctor|doctor|emergency|911|999|112|paramedics?)(?= (?:now|please|me|asap|quick|right now)|$)|help me(?= (?:please|now)|$)
        i think i'm dying|i'm dying(?= (?:here|seriously|for real|help)|$)
        """,
        doubtful=r"""
        (?:something|anything)<3>(?:not right|wrong|off|weird)<2>(?:with me|my body|in me|today)?|freaking out|kinda scared|i'm scared|really worried about myself
        (?:feel|feeling|feels|felt)<2>(?:off|weird|strange|funny|rough|wrong|odd|peculiar|bad|really bad|so bad|sick|iffy|ropey|rubbish|crap|shit|crappy|shitty)(?! (?:plan|season|about|in (?:the|my)|posing|for|not))
        (?:i'm|i am|am) (?:really |so |not )?(?:not (?:ok|okay|well|alright|right|good)|sick|in a bad way|a mess|wrecked|broken)(?! of)
        """,
    ),
)
#: Beside dark urine these make it muscle that breaks down.
MUSCLES_HURT = (
    r"(?:muscles?|legs?|arms?|thighs?|quads?|calves|calf|shoulders?|glutes|hamstrings?|biceps|triceps|lats|back|whole body|everything|body)"
    r"(?: [\w']+){0,4} (?:hurts?|hurting|pain\w*|sore|ach\w+|agony|killing|stiff|rock hard|swollen|tender|solid|wrecked|weak|bend|straighten|burn\w*|like rocks?|like wood|cramp\w*|excruciat\w*|unbearable|scream\w*|torture|destroyed)|"
    r"muscle (?:pains?|aches?|soreness|cramps?)|(?:sore|aching|painful|swollen|stiff|tender) (?:muscles?|legs?|arms?|thighs?|quads?|calves|shoulders?)|doms|sore all over|aching all over"
)


# ruff: noqa: E501 - a pattern stays on one line


_PILLS = (
    r"(?:(?:sleeping|pain|water|heart|diet|blood pressure) ?)?(?:pills|tablets|painkillers|meds)"
)

COLLOQUIAL_PHRASES: tuple[Phrase, ...] = (
    *table(
        Symptom.PALPITATIONS,
        "heart hr pulse bpm",
        sure=r"""
        (?:heart ?rate|heart rate|hr|pulse|rhr|bpm|heart)<4>(?:1[3-9]\d|2[0-2]\d)<3>(?:lying|laying|in bed|at rest|resting|sitting|on the (?:couch|sofa)|doing nothing|in my sleep)
        (?:lying|laying|in bed|at rest|resting|sitting)<4>(?:heart ?rate|heart rate|hr|pulse)<3>(?:1[3-9]\d|2[0-2]\d)
        """,
    ),
    *table(
        Symptom.SELF_HARM,
        "pills tablets painkiller meds will googled",
        sure=rf"""
        (?:whole|entire|full|all) (?:of )?(?:the |my |a )?(?:packet|pack|box|bottle|strip) (?:of )?(?:the |my )?{_PILLS}<3>(?:swallowed|taken|down|gone)?|(?:took|swallowed|taken|downed)<3>(?:whole|entire|all|full)<3>(?:packet|pack|box|bottle|strip|{_PILLS})(?! (?:of (?:water|rice|cookies|biscuits|oats|sweets|cakes)))
        (?:googled|searched|looked up)<5>how many<4>{_PILLS}
        """,
    ),
    *table(
        Symptom.HEAVY_BLEEDING,
        "blood red",
        sure=r"""
        (?:puk\w*|vomit\w*|threw up|throwing up|being sick)<5>(?:something red|red stuff|blood\w*)
        """,
    ),
    *table(
        Symptom.DIARRHOEA,
        "loo toilet bathroom times",
        sure=r"""
        (?:four|five|six|seven|eight|nine|ten|[4-9]|1\d|2\d) ?(?:times|x)<2>(?:on|to) (?:the )?(?:loo|toilet|bathroom|bog|can)<3>(?:today|this morning|since|already|so far)
        """,
    ),
)
