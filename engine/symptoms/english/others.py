"""How people say everything that is no warning."""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

from engine.symptoms.names import Symptom
from engine.symptoms.patterns import Phrase, table

OTHER_PHRASES: tuple[Phrase, ...] = (
    *table(
        Symptom.SEVERE_GUT,
        "stomach tummy gut belly abdom blood doubled diarrhoea stool poo",
        sure=r"""
        <bad><2><gut><1>(?:pains?|cramps?|ache|cramping)
        (?:severe|terrible|awful|excruciating|unbearable|really bad|intense)<2>diarrhoea
        <gut><4>(?:agony|killing me|unbearable|excruciating|severe)
        doubled (?:over|up)
        blood(?:y)?<3>(?:stools?|poo|poop|diarrhoea|toilet)
        """,
        doubtful=r"""
        (?:bad|nasty)<1><gut><1>(?:pains?|cramps?|ache)
        (?:bad|nasty) diarrhoea
        """,
    ),
    *table(
        Symptom.HEADACHE,
        "head migraine",
        sure=r"""
        <headache>
        head(?:'s)?<2>(?:hurts?|hurting|aching|aches|sore|splitting|pounding|killing me|exploding|throbbing|banging)
        sore head
        """,
    ),
    *table(
        Symptom.NAUSEA,
        "nause queasy sick vomit throw puke queasin puking",
        sure=r"""
        nause\w*|queasy|queasiness
        (?:sort of|kind of|kinda|bit|rather) (?:sick|queasy)
        (?:feel|feels|feeling|felt)<2>sick|sick to<1>stomach
        (?:feel|feels|felt|feeling) like<2>(?:vomit\w*|throw\w* up|pu(?:ke|king)|being sick)
        (?:about|going|gonna|want|wanna|wanted|need)(?: to)? (?:vomit|throw up|puke|be sick)
        """,
        doubtful=r"""
        (?:i'm|i am|am|was|got|getting|get|been|being|pretty|really|quite|so) sick
        """,
    ),
    *table(
        Symptom.VOMITING,
        "vomit throw threw thrown puk barf chuck hurl spew retch heav sick up",
        sure=r"""
        <vomit>
        """,
        doubtful=r"""
        (?:was|got|be) sick
        """,
    ),
    *table(
        Symptom.SWOLLEN_HANDS,
        "hand finger knuckle wrist ring watch sausage",
        sure=r"""
        (?:hands?|fingers?|knuckles?|wrists?)<3>(?:swollen|swelled|swelling|swell|puffy|puffed|puffing|bloated|balloon\w*|sausages?)
        (?:hands?|fingers?|knuckles?|wrists?) (?:swollen|swelling|puffy|bloated)
        (?:swollen|swelling|puffy|puffiness|bloated|sausage|fat)<3>(?:hands?|fingers?|knuckles?|wrists?)
        (?:swollen|puffy|bloated|sausage|fat) (?:hands?|fingers?|knuckles?|wrists?)
        (?:wedding )?rings?<4>(?:tight|stuck|won't|doesn't|wouldn't|don't|too small|mark)
        (?:can't|couldn't|struggl\w+)<4>rings?<1>(?:off|on)
        """,
        doubtful=r"""
        (?:hands?|fingers?)<2>(?:tight|fat|stiff|big)
        watch<3>(?:tight|mark|marks|tighter)
        """,
    ),
    *table(
        Symptom.SWELLING,
        "swell swoll puffy ankle feet puffed balloon",
        sure=r"""
        (?:ankles?|feet|foot|legs?|face|eyes?|lips|shins?)<3>(?:swollen|swelled|swelling|puffy|puffed|balloon\w*)
        (?:swollen|swelling|puffy)<3>(?:ankles?|feet|foot|legs?|face|eyes?|lips|shins?)
        (?:swollen|puffy) (?:ankles?|feet|foot|legs?|face|eyes?|lips)
        """,
        doubtful=r"""
        swollen|swelling
        """,
    ),
    *table(
        Symptom.DIZZY,
        "diz light wooz vertigo giddy spin rush stars spots unsteady balance wobbly faint room headed",
        sure=r"""
        dizz\w*|light ?headed\w*|woozy|wooziness|vertigo|head ?rush\w*
        (?:room|head|world|everything)(?:'s)?<2>spinning
        (?:see|seeing|saw)<1>(?:stars|spots)
        (?:feel|feels|feeling|felt)<2>faint
        """,
        doubtful=r"""
        giddy|unsteady|off balance|lost<1>balance|wobbly|light in the head
        """,
    ),
    *table(
        Symptom.BLURRED_VISION,
        "vision see eyes sight",
        sure=r"""
        (?:blurr\w*|double|tunnel|lost|losing|loss of|patchy)<1>(?:vision|sight|eyesight)
        (?:vision|sight|eyes)<2>(?:blurr\w*|gone|going|double|funny|weird|fuzzy)
        (?:can't|couldn't) see (?:properly|straight|clearly)
        """,
    ),
    *table(
        Symptom.SLEEPLESS,
        "sleep slept insomnia awake wide most night",
        sure=r"""
        insomnia|sleepless\w*
        (?:can't|couldn't|unable to|barely|hardly|trouble|struggl\w+|didn't|haven't|not|never)<2>(?:sleep|sleeping|slept)(?! (?:well|great|good|much|badly|too|in|long|enough|through))
        (?:can't|couldn't|barely|hardly|didn't|haven't|not) (?:sleep|slept)(?! (?:well|great|good|too|in|long|enough|through))
        (?:no|zero|0|little|barely any|hardly any|1h|2h|[0-4] ?(?:h|hrs?|hours?)(?: of)?) sleep
        slept<2>(?:[0-4](?:\.\d)? ?(?:h|hrs?|hours?)|one hour|two hours|three hours|four hours)
        (?:wide )?(?:awake|up) (?:all|most of the) night|(?:wide )?awake (?:since|from)
        """,
        doubtful=r"""
        (?:didn't|haven't|not)<1>(?:sleep|slept)<1>(?:well|great|good|much|enough|through)
        slept<1>(?:bad|badly|terribly|terrible|poorly|horribly|rubbish|awful)
        (?:bad|poor|terrible|rubbish|awful|broken|shit) (?:night'?s? )?sleep
        """,
    ),
    *table(
        Symptom.CRAMPS,
        "cramp spasm charley calf hamstring knotted seized locked",
        sure=r"""
        cramp\w*|charley horse|muscle spasms?
        (?:calf|calves|hamstrings?|quads?|foot)<2>(?:locked|seized|spasm\w*|knotted)
        """,
    ),
    *table(
        Symptom.TINGLING,
        "tingl pins numb",
        sure=r"""
        tingl\w*|pins and needles
        """,
        doubtful=r"""
        numb|numbness
        """,
    ),
    *table(
        Symptom.SHAKY,
        "shak trembl tremor jitter hypo sugar",
        sure=r"""
        shaky|shakiness|the shakes|trembl\w*|tremors?|jitter\w*
        (?:low|dropped) blood sugar
        (?:hands?|arms?|legs?|whole body|body|i'm)<2>shaking
        """,
        doubtful=r"""
        shaking
        """,
    ),
    *table(
        Symptom.STOMACH_PAIN,
        "stomach tummy gut belly abdom heartburn",
        sure=r"""
        heartburn
        <gut><3>(?:pains?|hurts?|hurting|cramps?|cramping|aches?|aching|sore|agony|killing me)
        <gut> ?(?:pains?|hurts?|hurting|cramps?|cramping|aches?|aching)
        (?:pains?|cramps?|ache)<2><gut>
        """,
    ),
    *table(
        Symptom.DIARRHOEA,
        "diarr runs runny loose trots shits toilet",
        sure=r"""
        diarrhoea\w*|loose (?:stools?|bowels?|motions?)|runny (?:poo|poop|stools?|tummy|bum)
        the (?:trots|shits)|(?:got|have|had|having) the runs
        """,
    ),
    *table(
        Symptom.CONSTIPATION,
        "constip backed poo bowel toilet bunged",
        sure=r"""
        constipat\w*|no bowel movements?
        (?:haven't|hasn't|not|can't|couldn't)<2>(?:pooped|pooed|poop|poo)
        """,
        doubtful=r"""
        backed up|bunged up
        """,
    ),
    *table(
        Symptom.BLOATING,
        "bloat distend gassy stomach belly gut tummy distens",
        sure=r"""
        bloat\w*|distended|distension
        (?:stomach|belly|gut|tummy)<2>(?:swollen|distended|rock hard|hard as|huge|balloon\w*)
        """,
    ),
    *table(
        Symptom.URINE_DARK,
        "urine pee peeing",
        sure=r"""
        (?:dark|darker|brown|cola|coke|tea|orange|amber|red|black|bloody|rusty|deep yellow)<3><pee>
        (?:dark|darker|brown|cola|orange|amber|red|black|bloody|rusty) <pee>
        <pee><4>(?:dark|darker|brown|cola|coke|tea|orange|amber|red|black|rusty|bloody)
        <pee> (?:dark|darker|brown|orange|amber|red|black|bloody)
        blood<3><pee>
        """,
    ),
    *table(
        Symptom.NO_URINE,
        "urin pee",
        sure=r"""
        (?:haven't|hasn't|can't|couldn't|not|hardly|barely|didn't|stopped)<2>(?:pee|peed|peeing|urinat\w*)(?! (?:clear|dark|much more))
        (?:haven't|can't|couldn't|not|hardly|barely|stopped) (?:pee|peed|peeing|urinat\w*)
        no (?:pee|urine)
        """,
    ),
    *table(
        Symptom.FEVER,
        "fever temperature chills",
        sure=r"""
        fever\w*|chills|(?:high|running a) temperature|temperature<2>(?:3[89]|40|10[0-4])
        """,
    ),
    *table(
        Symptom.EXHAUSTION,
        "exhaust fatigue knackered shattered wiped drained energy",
        sure=r"""
        exhaust\w*|fatigue\w*|knackered|shattered|wiped out|drained|no energy|zero energy
        """,
    ),
)
