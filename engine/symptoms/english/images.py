"""The images in which people tell the warnings: a bird in the ribs, a floor that comes up."""

from __future__ import annotations

from engine.symptoms.names import Symptom
from engine.symptoms.patterns import Phrase, table

# ruff: noqa: E501 - a pattern stays on one line


IMAGE_PHRASES: tuple[Phrase, ...] = (
    *table(
        Symptom.CHEST_PAIN,
        "chest rib stern breast heart jaw arm shoulde",
        sure=r"""
        (?:elephant|bricks?|belt|vice|vise|clamp|anvil|boulder|truck|tonne?|corset|concrete|knife|knives|dagger|spear)<4>(?:chest|ribs?|rib ?cage|rib cage|sternum|breastbone|heart)
        (?:sitting|standing|pressing|pushing|squeez\w+|crush\w+|kneeling|clamp\w+|wrapped|tighten\w+|gripp\w+|stab\w+|twisting|parked|jabb\w+)<3>(?:chest|ribs?|rib cage|ribcage|sternum|breastbone|heart)(?! (?:press|day|fly))
        chest<4>(?:caving|caved|being (?:crushed|squeezed|sat on)|closing|knotted|clenched|clamped|tearing|ripping|on fire|locked|vice|vise|gripp\w+|clench\w*)
        jaw<5>(?:arm|chest|shoulder)<3>(?:pains?|ach\w+|hurts?|hurting)|(?:pains?|ach\w+|hurts?|hurting)<4>(?:chest|arm|shoulder)<4>jaw
        (?:pains?|ache|aching|shooting)<3>(?:down|into|through|up)<3>(?:left arm|jaw|left shoulder)
        """,
        doubtful=r"""
        (?:fist|rope|stone|rock|something|someone|somebody|heavy)<3>(?:on|in|around|round|across|against|inside)<2>(?:chest|ribs|ribcage|rib cage)
        """,
    ),
    *table(
        Symptom.PALPITATIONS,
        "heart chest rib throat ticker beat pulse boom thud bird fish thump sternum neck breastb",
        sure=r"""
        (?:birds?|fish|butterfl\w+|moths?|frog|hummingbird|drum\w*|engine|motor|rabbit|squirrel|mouse|animal|hamster|horses?|jackhammer)<5>(?:chest|ribs?|ribcage|rib cage|throat|sternum|breastbone|heart)(?! (?:and chips|for dinner))
        heart(?:'s)?<4>(?:boom|thud|pause|pauses|pausing|bump|bumps|clunk\w*|skip|flop|twang\w*|hiccups?|goes on and off|on and off|stumbl\w*|uneven|every few (?:beats|seconds)|in my mouth|up my throat|clapp\w*|fast and slow|slow and fast)
        (?:extra|missed|dropped|double|odd|funny|skipped|empty)<1>(?:thumps?|thuds?|heart ?beats?|beats)(?! (?:per minute|the scale))
        (?:birds?|fish|butterfl\w+|moths?|frog|hummingbird|drum\w*|engine|motor|rabbit|squirrel|mouse|animal|hamster|horses?|jackhammer|bass|worms?|snake)<4>(?:in|inside|under|behind|against|around)<2>(?:chest|ribs?|ribcage|rib cage|throat|heart)
        heart(?:'s)?<4>(?:drum\w*|gallop\w*|tripp\w*|stumbl\w*|stutter\w*|flapp\w*|flopp\w*|trembl\w*|quiver\w*|bounc\w*|leap\w*|lurch\w*|kicks?|kicking|hiccup\w*|tumbl\w*|sprint\w*|revv\w*|rattl\w*|vibrat\w*|buzz\w*|danc\w*|misfir\w*|escap\w*|banging|bangs|knocking|cartwheels?|backflips?|acrobatics|gymnastics|jazz|techno|out of sync|no rhythm|off beat|offbeat|double beats?|extra beats?|dropp\w+ beats?|all night long|took off|takes off|jackhammer\w*|drops a beat|like a (?:drum|engine|machine|train|hummingbird|rabbit|bird|horse|hammer|motor|fish))
        (?:thump\w*|drumm\w*|pounding|bang\w*|flutter\w*|flips?|flipping|flopp\w*|skipp\w*|thud\w*|gallop\w*)<3>(?:in|inside|under|behind|against)<2>(?:chest|ribs?|ribcage|rib cage|throat|neck)
        (?:feel|hear|felt|feeling|hearing)<2>(?:pulse|heartbeat|heart ?beat|heart)<3>(?:ears?|throat|head|neck|everywhere|body|bed|pillow|mattress|fingertips|teeth|eyes)
        """,
        doubtful=r"""
        ticker<3>(?:rac\w*|skipp\w*|weird|going|off|funny|playing)
        (?:beats?|pulse)<2>(?:pauses?|paused|gaps?|stops?|stopped)|pause<2>beats
        """,
    ),
    *table(
        Symptom.FAINTING,
        "grey gray black dark white floor ground tile carpet pavement ceiling tunnel curtain out crumpl slump toppl keel slid seconds woke came vision sight eyes lights standing sparks hall lying laying caught slapp pick found remember lights waking static staring switche sunk asphalt concret ready laid against close flicked edges looking stars world sank hospita spots deck dim folded somebod fuzzy beside sides shook blank wake dropped knees coming someone wall lift closing shrunk faded come corners",
        sure=r"""
        (?:i was|was|found myself|then|ended up|woke)<3>(?:lying|laying|laid)<2>(?:in|on)<2>(?:hall\w*|floor|ground|bathroom|kitchen|shower|corridor|tiles|pavement|street|stairs|lawn)
        (?:black|blank|gap|hole|film tear|nothing)<3>(?:then|and then)<3>(?:floor|ground|lying|hospital)|(?:don't|can't|cannot|didn't)<1>remember<3>(?:falling|going down|hitting|how i got (?:on|to) the)
        (?:someone|they|people|he|she|mum|husband|wife|partner|friend|flatmate|neighbou?r|stranger|paramedics?)<4>(?:slapp\w*|pick\w*|lift\w*|shook|caught|found|woke|wake|waking)<2>me<3>(?:up|floor|ground|awake|round|face|before|in time|unconscious|lying|passed)
        (?:floor|ground|pavement|tiles|carpet|deck|concrete|asphalt)<3>(?:came|comes|coming|rushed|rose|rising|jumped|flew|met|smack\w*|hit|hits)<2>(?:up|me|my face|my head|closer|towards)
        (?:woke|wake|waking|came|come|coming)(?: (?:up|to|round|around))?<3>(?:on|under|against|beside|next to)<2>(?:floor|ground|tiles|carpet|rug|pavement|bath ?mat|kitchen|bathroom|grass|mat|hallway|stairs|lino|toilet|sink|concrete)
        (?:next thing|suddenly|then)<5>(?:looking up at|staring at|staring up|lying on|looking at)<3>(?:ceiling|floor|ground|tiles|strangers|paramedics|faces|people)
        (?:crumpled|slumped|toppled|folded|keeled|dropped|went down)<1>(?:over|to the (?:floor|ground)|like a (?:sack|tree|stone|plank|puppet)|in the (?:shower|kitchen|hall\w*)|against)
        (?:flaked|sparked) out|(?:flat )?out cold
        """,
        doubtful=r"""
        lights<3>(?:went|go|going|gone)<1>out
        (?:everything|vision|sight|eyesight|world|it all|room|edges|view|all|eyes)<3>(?:went|goes|going|gone|go|turn\w*|fad\w*|getting|got|becomes?|became)<2>(?:grey|gray|black|dark|dim|white|blank|fuzzy)
        (?:everything|vision|sight|eyesight|world|room|eyes|edges)<3>(?:faded|fading|fades|swam|dissolv\w*|shrank|shrunk|narrow\w*|tunnel\w*|closed in|closing in|whited out|went|disappear\w*|dimm\w*|cut out|switched off)
        (?:black|dark|darkness|blackness|grey|gray|static|curtain|tunnel|shadows?|sparks|snow)<3>(?:eyes|edges|corners|sides|vision|sight)
        (?:black|dark|grey|gray|stars|spots|sparks|static)<3>(?:when|every time|whenever|each time|as soon as|as)<2>(?:stand|stood|get up|got up|standing|getting up|rise|sit up|sat up|bend|bent)
        (?:tunnel|curtain|darkness|blackness)<2>(?:clos\w+|came|coming|creep\w*|fell|fall\w*)
        (?:someone|somebody)<1>(?:switched|turned|flicked|pulled)<2>(?:off|lights?|plug)|lights<1>went out
        (?:slid|sank|sunk|went)<2>(?:down|onto|to)<1>(?:the )?(?:wall|floor|ground|knees)
        (?:about|ready|close) to<2>(?:drop|keel|go down|go over|hit the (?:floor|deck))
        """,
    ),
    *table(
        Symptom.BREATHLESSNESS,
        "breath air lung drown smother chok oxygen sentence suffoc gulp throat straw huff pant strangl puff",
        sure=r"""
        (?:through|like)<3>straw|straw<3>(?:breath\w*|air)|(?:not|isn't|never)<2>(?:getting|get|got)<2>(?:enough )?(?:air|oxygen)
        (?:breath\w*|air)<4>(?:straw|wet cloth|blanket|pillow|mud|treacle|syrup|sponge|plastic bag|wet towel)
        <can't><3>(?:full breath|deep breath|breath in|enough oxygen|oxygen|lungs|finish<3>sentence|talk<3>breath\w*|fill<2>lungs)
        air<2>(?:won't|doesn't|isn't|not|never|wouldn't)<2>(?:go|going|get|getting|come|coming|reach\w*|enough)
        lungs?<3>(?:won't|can't|half|never|stuck|shrunk|shrinking|collapsed|fluid|water|squeezed|closing|paper bags?|too small)
        (?:gulp\w*|suck\w*|hungry|fight\w*|starv\w*|thirst\w*|snatch\w*|begging)<3>(?:air|breath)
        (?:feel\w*|like|felt|as if)<3>(?:drowning|smother\w*|chok\w*|strangl\w*)(?! in)
        """,
        doubtful=r"""
        (?:finish|end|say|speak|read|get through)<3>(?:sentences?|sentances?|words?|calls?)<3>without<3>(?:breath\w*|air|gasp\w*|puff\w*|stopping|pausing)
        (?:stop|stopped|stopping|pause|rest|sit down|stand still)<6>(?:breath|breathe|air|puff)|air<2>(?:thin|runs out|ran out|gone)
        (?:stop\w*|pause|pausing|rest)<4>(?:breath|air)
        breath<3>(?:gone|runs out|ran out|every (?:step|word)|mid sentence|between words|stairs|standing still|doing nothing)
        (?:puff\w*|huff\w*|pant\w*)<3>(?:talking|sitting|lying|tying|standing|walking to|doing nothing|old man|steam train|dog)
        throat<2>(?:tight\w*|clos\w+|narrow\w*)
        """,
    ),
    *table(
        Symptom.LIMB_WEAKNESS,
        "leg knee arm limb hand feet foot thigh calf calves quad crawl drag dropp fork spoon phone force power strength toothbrush wall grip hold haul muscles baniste rail furnitu lift bannist squeeze sink face side close carry fingers somethi body fist brush control feeling hardly cup",
        sure=r"""
        (?:no|without|not enough|zero|not any|lost the|lost all|no more)<1>(?:force|power|strength|control|feeling)<4>(?:legs?|arms?|hands?|feet|knees?|grip|fingers?|muscles)
        (?:must|need to|have to|had to|got to)<2>(?:hold|lean|grab|pull)<3>(?:walls?|rail|furniture|something|sink|banister)<3>(?:walk\w*|stand\w*|stay|get|move)|hold(?:ing)? (?:the|onto the|on to the) walls?<2>(?:walk\w*|to get)
        <can't><4>(?:hold|grip|close|lift|carry|open|squeeze)<3>(?:toothbrush|hand|fist|fingers|fork|phone|cup|pen|spoon|brush)
        <limb><3>(?:don't|doesn't|didn't|no longer|isn't|aren't|not)<2>(?:belong|mine|my own|listen\w*|obey\w*|there anymore|hold me|do what)
        <limb><3>(?:fold\w*|buckl\w*|crumpl\w*|melt\w*|giv\w+ out|quit on|went on strike|on strike|refus\w*|abandon\w*|let me down|just stopped|switched off|shut down)
        (?:have|had|having) to (?:crawl|drag)|crawl\w*<3>(?:bathroom|toilet|bed|door|stairs|phone)|dragg\w*<2>(?:leg|foot|myself)
        """,
        doubtful=r"""
        <limb><4>(?:concrete|spaghetti|noodles?|pudding|cotton wool|custard|sandbags?|cement|string|putty|bambi|sponge|foam|marshmallows?|plasticine|wet sand|tree trunks|glued|stuck|rubber\w*|wood\w*|not mine|asleep|gone to sleep|wobbl\w*|unsteady|shaky)
        (?:keep|keeps|kept)<1>dropping<3>(?:things|everything|phone|keys|cup|mug|fork|plates?|stuff)
        (?:barely|hardly|can't|couldn't)<2>(?:hold|grip|lift)<3>(?:fork|spoon|phone|cup|mug|glass|pen|toothbrush|kettle|bag|bottle|hairbrush|head)
        (?:hold\w*|lean\w*|haul\w*|pull\w*)<2>(?:myself )?(?:up )?(?:on|onto|along|by|up)<2>(?:wall|walls|rail|banister|furniture|bannister|sink)
        """,
    ),
    *table(
        Symptom.CONFUSION,
        "word forgot forget know remember name fridge read talk sentence mind head dream real unreal far glass water lost blank address conversation time day oven brush clue follow understand shoe microwave people talk flat house where same recogni freezer speech motion writing drove dazed saying speakin delirio befuddl wallet haze addled discomb typing muddled disorie autopil daze found instruc bubble distant walked text letters muffled anyone fog keys carton screen past idea sure wrong milk machine cupboar",
        sure=r"""
        (?:doesn't|doesnt|does not|no longer)<1>know<,2>(?:where (?:he|she) (?:is|was)|who (?:he|she|we|i) (?:is|are|am)|what (?:day|year|month) it)
        (?:asks?|asking|asked|repeats?|repeating)<2>(?:the )?same (?:thing|question)s?<1>(?:every|each)<2>(?:minutes?|min|mins|seconds?|time)
        (?:talking|speaking|saying|writing|typing)<2>(?:nonsense|gibberish|rubbish|weird stuff|things that|no sense|in circles)
        (?:doesn't|didn't|don't|can't|couldn't|not)<1>recogni[sz]\w*<3>(?:flat|house|home|street|room|gym|him|her|me|myself|mirror|husband|wife|mum|people|anyone|face)
        (?:feel|feeling|am|i'm|so|very|totally|all)<1>(?:muddled|disorient\w*|dazed|befuddled|discombobulated|addled|delirious)
        (?:words?|sentences?|speech)<3>(?:come|comes|came|coming)<1>(?:out )?(?:wrong|jumbled|backwards|mixed|scrambled|garbled|twisted|as mush|all wrong)
        (?:forgot|forgetting|forgotten|can't remember|couldn't remember|don't remember|didn't remember|blanked on)<2>(?:my (?:own )?(?:name|address|birthday|phone number|pin|house|flat)|where i (?:live|am|was|parked)|how to|what day|what year|who)
        (?:no idea|don't know|didn't know|not sure|couldn't say|no clue|lost track)<2>(?:where i|who i|what day|what time of|how i got|which day|what month)
        (?:letters|text|screen|sentences|conversation|instructions)<3>(?:no sense|don't make|doesn't make|gibberish|can't follow|couldn't follow)
        """,
        doubtful=r"""
        (?:put|found|left)<3>(?:phone|keys|wallet|milk|rice|shoes?|scale|carton)<4>(?:fridge|freezer|oven|microwave|bin|washing machine|bag|cupboard)
        (?:asked|asking|said|saying|repeat\w*)<2>(?:the )?same (?:thing|question)<2>(?:again|times|over|twice)|lost<2>(?:thread|train of thought)|<can't><2>follow<4>(?:say|saying|conversation|people|them|film|anyone)
        (?:can't|couldn't|unable to|hard to)<2>(?:follow|understand|string|form|finish|find)<3>(?:conversation|sentences?|words?|anyone|people|what people|what (?:he|she|they) sa\w+)
        (?:everything|world|things|people|it all)<2>(?:feels?|felt|seems?|seemed|is|looks?)<2>(?:far away|unreal|not real|dream\w*|like a dream|distant|muffled|slow motion)
        (?:in|through|behind|like)<2>(?:a dream|fog|haze|glass|underwater|daze|bubble|slow motion|autopilot)
        (?:put|found)<3>(?:phone|keys|wallet)<3>(?:fridge|freezer|oven|microwave|bin)
        (?:walked|drove|went)<3>(?:past my own|wrong house|wrong way home|wrong flat)
        (?:called|calling)<4>wrong name
        head<3>(?:cotton|underwater|not here|elsewhere|mush|soup|treacle|scrambled)
        """,
    ),
    *table(
        Symptom.SEIZURE,
        "jerk twitch shook shak tongue foam flail flap spasm convuls stiff fit own tongue wet pissed peed soiled jerk thrash flail eyes respond answer",
        sure=r"""
        tongue<2>(?:bitten|bit|chewed|bleeding)|(?:bit|bitten|biting)<2>tongue(?! (?:eating|while eating|instead|when he|when she|and said))
        (?:wet|pissed|peed|soiled)<1>(?:myself|pants|the bed|bed|trousers|sheets)(?! laugh\w*)
        (?:i was|was|started|they were|arms?|legs?|body|limbs|me)<3>(?:jerking|thrashing|convulsing|flailing|twitching all over|shaking all over|shaking like mad|shaking violently|having a fit)
        (?:can't|couldn't|didn't|not)<1>(?:answer|respond)<3>(?:anyone|them|him|her|eyes|but heard)|eyes rolled<2>(?:back|up)
        (?:arms?|legs?|limbs|body|hands?)<4>(?:jerk\w*|thrash\w*|flail\w*|flapp\w*|convuls\w*|twitch\w*|shook|shaking|spasm\w*)<3>(?:own|control|all over|uncontroll\w*|by themselves|by itself|violently|couldn't stop)
        (?:bit|bitten|chewed)<2>tongue<5>(?:woke|asleep|sleep|remember|floor|shak\w*|night)|woke<4>(?:bitten|bit)<2>tongue
        foam\w*<2>mouth
        """,
    ),
    *table(
        Symptom.SEVERE_HEADACHE,
        "head skull temple brain eye migraine axe thunder neck",
        sure=r"""
        (?:vice|vise|clamp|hammer\w*|drill\w*|axe|nails?|knife|knives|ice ?pick|jackhammer|chisel|lightning|thunder\w*|explosion|bomb)<6>(?:head|skull|temples?|brain|neck)
        (?:head|skull|temples?|headache|migraine)<8>(?:out of nowhere|all of a sudden|like never before|worst|thunderclap|not possible to stand|not to stand|can't stand it|unbearable|light hurts|can't bear|blinding)
        pain<3>(?:head|skull)<5>(?:stand|bear|unbearable|worst|terrible|insane|extreme|too much)
        head(?:'s)?<4>(?:vice|vise|clamp\w*|hammer\w*|drill\w*|axe|nail\w*|knife|knives|crack\w*|split\w*|burst\w*|explod\w*|jackhammer|screwdriver|pressure cooker|ice ?pick|pop|crush\w*|in half|blown? off|come off|grenade|bomb|drum\w*|pulsat\w*|blow\w* up)
        (?:vice|vise|clamp|hammer\w*|drill\w*|axe|nails?|knife|knives|ice ?pick|jackhammer|drummer|screws?|spike|chisel|lightning)<4>(?:head|skull|temples?|brain|eyes?|eyeballs?)
        (?:stab\w*|hammer\w*|pounding|throbbing|blinding|drilling|piercing)<4>(?:head|skull|temples?|eyes?|eyeballs?)
        (?:brain|skull|temples?)<3>(?:explod\w*|too big|swell\w*|burst\w*|crush\w*|hammer\w*|pound\w*|on fire|bleed\w*|split\w*|throb\w*)
        """,
    ),
)


# ruff: noqa: E501 - a pattern stays on one line


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
