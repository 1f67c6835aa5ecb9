"""The images in which people tell the warnings: a bird in the ribs, a floor that comes up."""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

from engine.symptoms.names import Symptom
from engine.symptoms.patterns import Phrase, table

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
