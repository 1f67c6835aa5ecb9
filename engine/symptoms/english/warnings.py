"""How people say the warnings. Finding too much costs a question; missing one costs more."""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

from engine.symptoms.names import Symptom
from engine.symptoms.patterns import Phrase, table

WARNING_PHRASES: tuple[Phrase, ...] = (
    *table(
        Symptom.CHEST_PAIN,
        "chest sternum breastbone heart angina arm rib",
        sure=r"""
        chest<4>(?:pains?|painful|hurts?|hurting|tight|tightness|tightening|tightens|pressure|crushing|crushed|squeez\w+|stabbing|sharp|discomfort|constricted)
        chest (?:pains?|painful|hurts?|hurting|tight|tightness|pressure|discomfort)
        (?:pains?|tight|tightness|tightening|pressure|stabbing|crushing|squeezing|discomfort|hurts?|hurting|sharp)<4>(?:chest|sternum|breastbone)
        (?:tight|painful|crushing|stabbing|sharp) chest
        (?:elephant|weight|brick|band)<3>chest
        angina|heart attack|tight chested
        chest<3>(?:killing me|cramp\w*|spasm\w*|paint?)
        heart (?:pains?|hurts?|hurting|aches?|aching)|heart<2>(?:hurts?|hurting|painful)
        pains?<3>heart
        pains?<3>left arm
        """,
        doubtful=r"""
        chest<4>(?:ach\w+|sore|soreness|burn\w*|heavy|heaviness|weird|funny|twinges?|niggle|odd|strange|numb)
        chest (?:aches?|aching|sore|burns?|burning|heavy)
        (?:ach\w+|sore|burn\w+|heavy|heaviness|weird|funny|twinges?|niggle|odd|strange)<3>chest
        (?:sore|heavy|burning|aching) chest
        left arm<2>(?:hurts?|hurting|pains?|numb|ach\w+|tingl\w+)
        heart burn|chesty
        chest<4>(?:not right|isn't right)
        chest<4>(?:bother\w*|trouble|troubling|wrong|off|bad|playing up|feels?|feeling|felt|odd|problems?|issues?)
        (?:stabbing|sharp) pains?<3>ribs?
        """,
    ),
    *table(
        Symptom.SEIZURE,
        "seiz convuls epilep fit fitting jerking uncontroll fits spasming twitching body shaking seiz",
        sure=r"""
        seizures?|convuls\w+|epilep\w+
        (?:shaking|shook|jerking|twitching|trembling)<2>uncontroll\w+
        uncontroll\w+<1>(?:shaking|jerking|twitching)
        (?:started|was|were|began)<1>fitting (?:on|in) the
        """,
        doubtful=r"""
        (?:had|having|have|has|throwing|took)<1>fits?
        fitting|was seizing
        (?:shaking|twitching|jerking)<2>(?:couldn't|can't|won't|wouldn't) stop
        body<2>(?:stiff|rigid|jerk\w*)
        whole body<2>(?:jerk\w+|twitch\w+|spasm\w+|stiff\w*)
        i<1>(?:seized|seizing)(?: up)?
        body<1>(?:jerk\w+|seized|seizing)
        """,
    ),
    *table(
        Symptom.FAINTING,
        "faint pass black conscious collaps keeled floor syncop swoon cold went going ground fell head seconds lights surroun moments falling ambulan hospita came goes moment dropped minutes gray gone greying deck grey kitchen bathroo shower stairs face",
        sure=r"""
        fainted|faints|fainting|syncop\w+|swooned
        i faint|keep<1>faint|kept<1>faint|to faint
        pass(?:ed|ing|es)?(?: right| clean)? out
        black(?:ed|ing|s)?(?: right)? out|blackouts?|black outs?
        (?:everything|it all|all|vision|sight|world|eyes)<1>(?:went|going|goes|gone) (?:black|dark)
        (?:lost|losing|lose|loss of)<1>(?:consciousness|conscious)|unconscious
        collapsed|collapsing|collapse
        (?:woke|wake|came)<1>(?:up|to|round)<1>(?:on|lying on)<2>floor
        came (?:a?round|to|back)<2>(?:with|to|and|under|surrounded by)<3>(?:people|faces|somebody|someone|paramedic\w*|strangers|over me|above me|bending)
        found (?:me|myself)<2>floor
        (?:hit|dropped to|fell to|went down on)<1>(?:floor|deck|ground)
        """,
        doubtful=r"""
        faint|grey(?:ed|ing)? out|gray(?:ed|ing)? out|lights out
        next thing<3>(?:on|in)<2>(?:floor|ground|ambulance|hospital)
        (?:fell|fall|falling|dropped)<3>(?:head|face|shower|bathroom|kitchen|stairs)
        i was (?:just )?(?:out|gone) for (?:a |some )?(?:few |couple )?(?:seconds|minutes|moments?)
        on the (?:floor|ground)<3>remember
        (?:went|going|goes) black
        (?:fell|went|gone) (?:over|down)<3>(?:shower|bathroom|kitchen|floor)
        """,
    ),
    *table(
        Symptom.BREATHLESSNESS,
        "breath wheez gasp suffocat air winded lungs sob pant puff lips throat cough",
        sure=r"""
        breathless\w*
        short(?:ness)?<1>breath|shortness of breathing|short breath\w*
        <can't><3>breath\w*
        (?:don't|didn't|doesn't) seem to<1>breathe
        <can't><2>catch<1>breath
        (?:difficulty|difficulties|trouble|problems?|struggling|struggle|struggled|labou?red|pain\w*|shallow|rapid|heavy|heavily|hard|fast|fighting|fight|gasp\w*)<1>(?:for )?(?:my )?breath\w*
        breathing (?:troubles?|problems?|issues?|difficult\w*|heavily|heavy|hard|fast|fine not)
        breath(?:ing)?<3>(?:difficult|hard|labou?red|shallow|short|painful|hurts|struggle|tough|fast|rapid|heavy|heavily|wrong)
        hurts?<2>(?:breathe|breath)
        lips<2>blue|blue lips|throat<2>(?:closing|closed|swelling|swollen)|cough\w*<2>blood
        gasping|panting|cnt breathe|suffocat\w*
        <can't><3>(?:enough )?air|(?:not|isn't|wasn't)<2>enough air|no air
        """,
        doubtful=r"""
        out of breath|wheez\w+|winded|sob|puffed out|air hunger
        breath\w*<2>(?:weird|funny|odd|off|strange)
        breathing like|lungs<2>(?:won't|don't|not|feel|full of|empty)|no breath|lost<1>breath
        breathing<2>(?:not|isn't|feels?)
        breathy|catch<1>breath|lungs<2>(?:burn\w*|tight|heavy)
        """,
    ),
    *table(
        Symptom.PALPITATIONS,
        "heart palpit arrhythm fib pulse hr chest beat bpm ectopic tachyca",
        sure=r"""
        ectopics?|palpitat\w*|arrhythmi\w*|afib|a fib|tachycardia
        heart(?:'s)?<5>(?:rac(?:ing|ed|es|y)|pound(?:ing|s|ed)|flutter\w*|skip\w*|thump\w*|thudd\w*|irregular\w*|erratic\w*|hammer\w*|misse[sd]|missing)
        heart(?:'s)? (?:rac(?:ing|ed|es|y)|pound(?:ing|s|ed)|flutter\w*|skip\w*|thump\w*|thudd\w*|irregular\w*|erratic\w*|hammer\w*|misse[sd])
        heart(?:'s)?<4>(?:beat|beats|beating)<2>(?:fast|faster|hard|weird\w*|funny|irregular\w*|out of|too|so|like crazy|like mad|quick\w*|strange\w*|erratic\w*|rapid\w*)
        heart(?:'s)?<3>(?:going|goes|went)<1>(?:crazy|mad|nuts|wild|million|mental|haywire|fast|like|berserk|100|200)
        heart(?:'s)?<3>(?:jump\w*|stopp\w+|out of rhythm|through the roof|won't slow|won't settle|out of my chest|flip\w*|somersault\w*|explod\w*|explode|burst\w*|pumping|all over|throat)
        heart ?beats?<3>(?:throat|ears|neck)
        heart ?beats?<3>(?:fast|irregular|weird|erratic|rapid|funny|strange|uneven|too|all over)
        (?:rac(?:ing|y)|pounding|flutter(?:ing|y)|irregular|skipped|skipping|skips|missed|missing|rapid|fast|uneven|erratic|extra|thumping)<1>(?:heart\w*|pulse|beats?)
        (?:racing|pounding|fluttering|fluttery|irregular|rapid|erratic|uneven|thumping) (?:heart\w*|pulse|beats?)
        pulse<3>(?:rac\w+|irregular\w*|weird|erratic|jump\w*|all over|pounding|skipp\w+)
        chest<2>(?:flutter\w*|pounding|thumping)|(?:flutter\w*|thumping|pounding)<3>chest
        (?:feel|hear|felt)<1>heart(?:beat)?<2>(?:ears?|throat|head|neck)
        """,
        doubtful=r"""
        heart(?:'s)?<3>(?:weird|funny|strange\w*|odd|off|fast|wrong|playing up|acting up|crazy)
        (?:heart rate|heartrate|hr|pulse|bpm)<3>(?:won't|not|high|elevated|up|spik\w+|all over|through the roof|1[1-9]\d|2\d\d)
        (?:1[1-9]\d|2\d\d) ?bpm
        my heart|heart(?:'s)? (?:is|was|feels?|felt|keeps?|won't|has|doing|does|rhythm|problems?|issues?)
        (?:high|elevated) (?:heart rate|hr|pulse)
        """,
    ),
    *table(
        Symptom.LIMB_WEAKNESS,
        "paralyz droppin barely hardly difficu carry unable struggl trouble open close "
        "weak week leg arm limb hand feet foot knee muscle thigh calf calves quad grip body side face "
        "paralys numb limp droop stand walk move bed stroke fist drag hold lift",
        sure=r"""
        dropping things
        <limb><3>(?:failing|failed|given up|giving up|gave up|gone dead|no strength|no power)|<limb> (?:failing|collapsed|gone)
        <limb><1>(?:collapsed|arent working|aren't working|stopped responding)
        paralys\w*|paralyz\w*|hemiplegia|stroke
        <limb><3>(?:weak|weakness|weaker|buckl\w+|paralys\w*|limp)
        <limb> (?:weak|weakness|week|buckl\w+|limp)
        <limb><2>(?:feel|feels|felt|feeling|are|is|so|very|went|going|gone)<1>week
        <limb><2>(?:gave|give|gives|giving) (?:way|out|in)|<limb><2>(?:gave|giving|give)<2>(?:me|way)
        <limb><2>(?:won't|wouldn't|don't|doesn't|didn't|not|stopped|stop|can't|couldn't|refus\w+)<1>(?:move|moving|work|working|hold|lift|respond\w*|listen\w*|obey\w*|carry|support)
        (?:weak|weakness|weakened|paralys\w+)<3><limb>
        weak <limb>|muscle weakness|muscular weakness
        <can't><1>(?:make|form)<1>fist
        <can't><1>(?:open|close|use|lift|move)<2>(?:hands?|fingers?|head|fist)
        <can't><1>(?:move|feel|raise|use|bend|lift|control)<2><limb>
        <can't> (?:even|really|properly|physically|actually) (?:stand|walk|get up|sit up|move|climb)
        <can't> (?:get up|sit up|get out of bed|get off)(?! (?:before|early|that early|earlier|at (?:\d|five|six|four)|until|till|in time|to speed)\b)
        <can't> stand(?! (?:the|my|this|that|these|those|him|her|it|them|another|any|people|waiting|looking|seeing|eating|tilapia|chicken|fish|rice|how|when))
        <can't> walk(?! (?:past|by|away|the|my|into))
        <can't> (?:move|climb)(?! (?:the|my|this|that|it|to|house|flights?|forward|on|it))
        (?:lost|losing|lose|no)<2>(?:power|strength|use|feeling|control|movement|sensation)<2><limb>
        no (?:power|strength|feeling|control|movement|sensation)<2><limb>
        face<2>droop\w*|droop\w*<2>face
        (?:one|left|right) side<3>(?:weak|numb|dead|droop\w*)
        weak all over|too weak to
        went (?:all )?limp
        """,
        doubtful=r"""
        weak|weakness|weakly
        <limb><2>(?:gone|useless|completely gone|done)
        <limb><3>(?:numb|numbness|dead|jelly|lead|heavy|tingl\w*|wobbl\w*|shaky|unsteady|rubber\w*|cotton|spaghetti|noodles?)
        <limb> (?:numb|heavy|dead|wobbly)
        (?:numb|numbness|heavy|dead|wobbly|jelly)<2><limb>
        (?:numb|heavy|dead|wobbly|jelly) <limb>
        numb|numbness
        <can't><1>(?:hold|grip|lift|open|carry)<3>(?:pen|spoon|phone|cup|glass|fork|pen|door|bottle|keys|anything|things|bag|kettle)
        """,
    ),
    *table(
        Symptom.CONFUSION,
        "clearly concent acting focus thinkin fuzzy cloudy saying unsure idea question asking "
        "confus brain lost recogni words find mix forgot speak talk word disorient deliri slurr hallucinat foggy fog straight where what who sense nonsense gibberish "
        "incoheren drunk agitated spaced out blank strange weird remember muddled",
        sure=r"""
        confused|confusion|disorient\w*|deliri\w*|incoheren\w*
        (?:don't|didn't|doesn't|not|no idea|forgot|couldn't remember|can't remember|unsure)<2>(?:where i|who i|what day|what year|what month|how i got|my (?:own )?name)
        (?:didn't|don't|doesn't|couldn't|can't)<1>recogni[sz]\w+<2>(?:people|anyone|face|faces|family|him|her|them|where)
        (?:couldn't|can't|didn't|not|without)<3>(?:where i (?:was|am)|who i (?:was|am))
        slurr\w+|hallucinat\w*
        (?:he|she|keeps?|kept) ?ask(?:s|ing|ed)?<1>(?:the )?same (?:question|thing)(?: again| over|$)
        (?:not|wasn't|isn't|didn't|weren't|stopped)<1>mak(?:e|ing)<2>sense
        <can't><1>(?:speak|talk|get (?:my )?words)(?: out)?(?: properly| straight)?
        """,
        doubtful=r"""
        <can't><1>(?:think|focus|concentrate)<1>(?:straight|clearly|properly)
        <can't> (?:think|focus|concentrate)
        brain<3>(?:not working|isn't working|not functioning|mush|won't work|stopped)
        (?:mixing|muddling|jumbling|forgetting|losing|can't find|couldn't find)<2>words
        got lost<4>(?:street|home|house|gym|way)
        (?:can't|couldn't|don't|didn't) remember (?:driving|getting|coming|anything|last night|yesterday|how|what i)
        (?:not|isn't|wasn't) thinking (?:straight|clearly|right)|forgot where
        brain fog\w*|foggy|fuzzy head\w*|head<2>(?:fog\w*|fuzzy|cloudy)|muddled
        (?:feel|feels|felt|feeling|acting|act)<2>(?:drunk|agitated|out of it|spaced out|not myself|not all there)
        (?:out of it|spaced out|agitated|not all there)
        (?:mind|memory)<2>blank
        acting<1>(?:strange|weird|odd)
        """,
    ),
    *table(
        Symptom.REPEATED_VOMITING,
        "vomit throw threw thrown puk barf chuck hurl spew retch heav sick down up guts",
        sure=r"""
        <vomit><4><many>
        <vomit><1>(?:won't|wouldn't|doesn't|didn't|hasn't|not|never)<1>stop\w*
        (?:was|got) sick<3>(?:twice|thrice|again|all (?:night|day|morning)|several times|(?:\d+|two|three|four|five|six) times|everything)
        (?:twice|again|keeps?|kept|repeated(?:ly)?|constant(?:ly)?|can't stop|won't stop|couldn't stop|wouldn't stop|didn't stop|haven't stopped|hasn't stopped|not stopped|still|non ?stop|always|continuous(?:ly)?|persistent(?:ly)?|multiple|bouts of|second time|hours of|all (?:night|day|morning))<3><vomit>
        (?:twice|keeps?|kept|repeated(?:ly)?|constant(?:ly)?|can't stop|won't stop|couldn't stop|still|non ?stop|continuous|persistent) <vomit>
        sick<1>(?:\d+|two|three|four|five|six) times|sick (?:twice|thrice|(?:\d+|two|three|four|five|six) ?(?:times|x))
        (?:comes?|coming|came)<1>back up|(?:comes?|coming) straight up
        heaving<2>(?:all|for|since|again)
        (?:\d(?:nd|rd|th)|third|fourth|fifth) time<3><vomit>
        keep<1>(?:being|getting)<1>sick
        (?:can't|couldn't|can not|not|cannot|unable to|struggling to|haven't|isn't|wasn't|hard to)<2>(?:keep|kept|keeping|hold)<4>down
        (?:nothing|no food|no water)<2>(?:stays?|staying|stayed|keeping) down
        <vomit><2>blood|blood<3><vomit>
        """,
        doubtful=r"""
        hurling|heaving|(?:threw|throwing|puked|puking)<2>guts up
        <vomit>(?! (?:just |only )?(?:once|one time|1x|1 time|a single))
        """,
    ),
    *table(
        Symptom.SEVERE_HEADACHE,
        "head migraine skull eyes eye temples temple",
        sure=r"""
        <bad><3><headache>
        <bad> <headache>
        <headache><5>(?:severe|unbearable|splitting|killing me|bad i|so bad|really bad|very bad|worst|excruciating|blinding|agony|of my life|of my whole life|than ever|out of nowhere|suddenly|intense|crippling|(?:8|9|10) ?(?:/|or|of|out of) ?10)
        (?:severe|extreme|excruciating|unbearable|blinding|stabbing|terrible|awful|worst|intense)<1>pain<3>(?:head|eyes?|skull|temples?)
        (?:incredible|incredibly|insanely|unreal|agonising|agonizing|ridiculous|hellish)<2><headache>
        <headache><1>(?:from hell|awful|terrible|horrible|brutal|worst|insane|unreal|a (?:9|10)|like being|like a (?:hammer|knife|vice))
        <headache> , (?:the )?worst|<headache><2>stiff neck|splitting head
        head(?:'s)?<3>(?:hurts?|hurting)<2>(?:can't|so much|so bad|badly|unbearabl\w*)|head (?:hurts|hurting) (?:so|really|badly|like hell)
        <headache> (?:severe|unbearable|splitting|so bad|really bad|very bad|excruciating|killing me|out of nowhere)
        head(?:'s)?<5>(?:splitting|exploding|explode|pounding|killing me|bursting|burst|split|in agony)
        head(?:'s)? (?:splitting|exploding|pounding|killing me|bursting)
        skull<2>(?:split\w*|explod\w*|crush\w*|pound\w*)
        <can't><3>(?:see|open|think|move|stand|stop|shift|function)<4><headache>
        """,
        doubtful=r"""
        migraines?
        (?:bad|nasty|huge|big|throbbing|banging|raging|strong|worse|worsening|serious|bangin)<1><headache>
        <headache><4>(?:worse|worsening|throbbing|won't go|won't shift|not going|bad|all day|for days|three days|two days|strong)
        <headache> (?:worse|bad|throbbing|all day|won't go)
        head(?:'s)?<2>(?:throbbing|banging)
        """,
    ),
    *table(
        Symptom.SELF_HARM,
        "suicid overdos kill myself life die dead end live harm alive here living worth cutting hurting exist wake",
        sure=r"""
        suicid\w*|kill(?:ing)? myself|end(?:ing)? my life|self ?harm\w*|take my own life
        (?:harm|harming) myself
        (?:don't|didn't) want to (?:live|be alive|be here(?: any\w*)?|wake up|exist)
        (?:can't|cannot|no point)<2>(?:go on living|living|live anymore)|life<2>(?:not|isn't)<1>worth\w*|not worth living
        (?:no reason|nothing|nothing left) to live(?: for)?
        """,
        doubtful=r"""
        overdos\w*
        want to die|wanna die|wish i (?:was|were) dead|end it all|cut(?:ting)? myself|hurt(?:ing)? myself
        """,
    ),
)
