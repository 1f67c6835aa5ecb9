"""How people say each complaint: ordered tables of patterns over one clause of plain words.

Patterns are plain regular expressions with bounded gaps, so that their cost stays in proportion to the
text. `SURE` ones name the complaint; the doubtful ones lead to one question.
"""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

import re
from dataclasses import dataclass

from .names import Symptom


@dataclass(frozen=True, slots=True)
class Phrase:
    """One way of saying it. `cues` are stems, one of which must be in the text at all."""

    symptom: Symptom
    sure: bool
    pattern: re.Pattern[str]
    cues: tuple[str, ...]
    denies: bool
    """Whether words of denial are part of the complaint itself, as in "legs won't move"."""


_DENIAL = re.compile(r"n't|\bnot?\b|\bnothing\b|<can't>")
_W = r"[\w']+"


def _gap(most: int) -> str:
    return rf"(?: {_W}){{0,{most}}} "


def _compile(pattern: str) -> re.Pattern[str]:
    for most in range(1, 7):
        pattern = pattern.replace(f"<{most}>", _gap(most))
    for name, words in _GROUPS.items():
        pattern = pattern.replace(f"<{name}>", words)
    return re.compile(rf"\b(?:{pattern})\b")


_GROUPS = {
    "limb": r"(?:legs?|arms?|limbs?|hands?|feet|foot|knees?|muscles|thighs?|calf|calves|quads?|grip|body|left side|right side|face)",
    "can't": r"(?:can't|couldn't|can not|could not|can barely|could barely|can hardly|could hardly|barely|hardly|unable to|not able to|wasn't able to|struggl\w+ to|difficult\w* to|hard to|trouble)",
    "vomit": r"(?:vomit(?:ed|ing|s)?|(?:throw|threw|thrown|throwing|threwing) up|puk(?:e|ed|ing|es)|barf(?:ed|ing)?|chuck(?:ed|ing) up|hurled|spew(?:ed|ing)|retch(?:ed|ing)|dry heav(?:ed|ing)|(?:being|been) sick|(?:bring|brought|bringing) (?:it|everything|food|dinner|breakfast|water) (?:back )?up)",
    "bad": r"(?:severe|severely|splitting|pounding|thunderclap|worst|worse than ever|terrible|awful|unbearable|blinding|excruciating|horrible|horrific|horrendous|killer|massive|crushing|agoni[sz]ing|intense|extreme|extremely|brutal|insane|crippling|debilitating|violent|exploding|really bad|so bad|very bad|super bad|real bad|sudden|stabbing|murderous|monster|mega)",
    "gut": r"(?:stomach|tummy|gut|guts|belly|abdominal|abdomen)",
    "headache": r"(?:headaches?|head ?aches?|migraines?|head pains?|pain in my head)",
    "pee": r"(?:urine|pee|peeing)",
    "many": r"(?:twice|thrice|again|repeatedly|constantly|continuous(?:ly)?|nonstop|non stop|on repeat|over and over|on and off|all (?:night|day|morning|evening|weekend)|several|multiple|many|a few|few times|couple of times|couple times|(?:\d+|two|three|four|five|six|seven|eight|ten) ?(?:times|x)|x ?\d+|\dx|every (?:hour|time|few|half|thirty|meal|\d+)|everything|for hours|more than once|still|since)",
}


def _table(symptom: Symptom, cues: str, *, sure: str = "", doubtful: str = "") -> list[Phrase]:
    found = []
    for certain, block in ((True, sure), (False, doubtful)):
        lines = [line.strip() for line in block.strip().splitlines() if line.strip()]
        found += [
            Phrase(
                symptom,
                certain,
                _compile(line),
                tuple(cues.split()),
                _DENIAL.search(line) is not None,
            )
            for line in lines
        ]
    return found


PHRASES: tuple[Phrase, ...] = (
    *_table(
        Symptom.CHEST_PAIN,
        "chest sternum breastbone heart angina arm",
        sure=r"""
        chest<4>(?:pains?|painful|hurts?|hurting|tight|tightness|tightening|tightens|pressure|crushing|crushed|squeez\w+|stabbing|sharp|discomfort|constricted)
        chest (?:pains?|painful|hurts?|hurting|tight|tightness|pressure|discomfort)
        (?:pains?|tight|tightness|pressure|stabbing|crushing|squeezing|discomfort|hurts?|hurting|sharp)<4>(?:chest|sternum|breastbone)
        (?:tight|painful|crushing|stabbing|sharp) chest
        (?:elephant|weight|brick|band)<3>chest
        angina|heart attack
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
        heart burn
        """,
    ),
    *_table(
        Symptom.SEIZURE,
        "seiz convuls epilep fit fitting jerking uncontroll fits spasming twitching",
        sure=r"""
        seizures?|convuls\w+|epilep\w+
        (?:shaking|shook|jerking|twitching|trembling)<2>uncontroll\w+
        uncontroll\w+<1>(?:shaking|jerking|twitching)
        (?:started|was|were|began)<1>fitting (?:on|in) the
        """,
        doubtful=r"""
        (?:had|having|have|has|throwing|took)<1>fits?|having fits?|had fits?
        whole body<2>(?:jerk\w+|twitch\w+|spasm\w+|stiff\w*)
        i<1>(?:seized|seizing)(?: up)?
        body<1>(?:jerk\w+|seized|seizing)
        """,
    ),
    *_table(
        Symptom.FAINTING,
        "faint pass black conscious collaps keeled floor syncop swoon cold went going",
        sure=r"""
        fainted|faints|fainting|syncop\w+|swooned
        i faint|keep<1>faint|kept<1>faint|to faint
        pass(?:ed|ing|es)?(?: right| clean)? out
        black(?:ed|ing|s)?(?: right)? out|blackouts?|black outs?
        (?:everything|it all|all|vision|sight|world|eyes)<1>(?:went|going|goes|gone) (?:black|dark)
        (?:lost|losing|lose|loss of)<1>(?:consciousness|conscious)|unconscious
        collapsed|collapsing|collapse|keeled over
        (?:woke|wake|came)<1>(?:up|to|round)<1>(?:on|lying on)<2>floor
        found (?:me|myself)<2>floor
        (?:hit|dropped to|fell to|went down on)<1>(?:floor|deck|ground)
        out cold
        """,
        doubtful=r"""
        faint
        (?:went|going|goes) black
        (?:fell|went|gone) (?:over|down)<3>(?:shower|bathroom|kitchen|floor)
        """,
    ),
    *_table(
        Symptom.BREATHLESSNESS,
        "breath wheez gasp suffocat air winded lungs sob",
        sure=r"""
        breathless\w*
        short(?:ness)?<1>breath|shortness of breathing|short breath\w*
        <can't><3>breath\w*|<can't> breath\w*
        (?:don't|didn't|doesn't) seem to<1>breathe
        <can't><2>catch<1>breath|(?:can't|couldn't) catch (?:my )?breath
        (?:difficulty|difficulties|trouble|problems?|struggling|struggle|struggled|labou?red|pain\w*|shallow|rapid|heavy)<1>breath\w*
        (?:difficulty|trouble|struggling|labou?red|shallow|rapid) breath\w*
        breath(?:ing)?<3>(?:difficult|hard|labou?red|shallow|short|painful|hurts|struggle|tough|fast|rapid|heavy|wrong)
        hurts?<2>(?:breathe|breath)
        gasping|suffocat\w*
        <can't><3>(?:enough )?air|(?:not|isn't|wasn't)<2>enough air|no air
        """,
        doubtful=r"""
        out of breath|wheez\w+|winded|sob|puffed out|air hunger
        breath\w*<2>(?:weird|funny|odd|off|strange)
        breathy|catch<1>breath|lungs<2>(?:burn\w*|tight|heavy)
        """,
    ),
    *_table(
        Symptom.PALPITATIONS,
        "heart palpit arrhythm fib pulse hr chest beat",
        sure=r"""
        palpitat\w*|arrhythmi\w*|afib|a fib|tachycardia
        heart(?:'s)?<5>(?:rac(?:ing|ed|es|y)|pound(?:ing|s|ed)|flutter\w*|skip\w*|thump\w*|thudd\w*|irregular\w*|erratic\w*|hammer\w*|misse[sd]|missing)
        heart(?:'s)? (?:rac(?:ing|ed|es|y)|pound(?:ing|s|ed)|flutter\w*|skip\w*|thump\w*|thudd\w*|irregular\w*|erratic\w*|hammer\w*|misse[sd])
        heart(?:'s)?<4>(?:beat|beats|beating)<2>(?:fast|faster|hard|weird\w*|funny|irregular\w*|out of|too|so|like crazy|like mad|quick\w*|strange\w*|erratic\w*|rapid\w*)
        heart(?:'s)?<3>(?:going|goes|went)<1>(?:crazy|mad|nuts|wild|million|mental|haywire|fast|berserk|100|200)
        heart(?:'s)?<3>(?:jump\w*|stopp\w+|out of rhythm|through the roof|won't slow|won't settle|out of my chest|flip\w*)
        heart ?beats?<3>(?:fast|irregular|weird|erratic|rapid|funny|strange|uneven|too|all over)
        (?:rac(?:ing|y)|pounding|flutter(?:ing|y)|irregular|skipped|skipping|skips|missed|missing|rapid|fast|uneven|erratic|extra|thumping)<1>(?:heart\w*|pulse|beats?)
        (?:racing|pounding|fluttering|fluttery|irregular|rapid|erratic|uneven|thumping) (?:heart\w*|pulse|beats?)
        pulse<3>(?:rac\w+|irregular\w*|weird|erratic|jump\w*|all over|pounding|skipp\w+)
        chest<2>(?:flutter\w*|pounding|thumping)|(?:flutter\w*|thumping|pounding)<3>chest
        (?:feel|hear|felt)<1>heart(?:beat)?<2>(?:ears?|throat|head|neck)
        """,
        doubtful=r"""
        heart(?:'s)?<3>(?:weird|funny|strange\w*|odd|off|fast|wrong|playing up|acting up|crazy)
        (?:heart rate|hr|pulse)<3>(?:high|elevated|up|spik\w+|all over|through the roof|1[1-9]\d|2\d\d)
        (?:high|elevated) (?:heart rate|hr|pulse)
        """,
    ),
    *_table(
        Symptom.LIMB_WEAKNESS,
        "weak week leg arm limb hand feet foot knee muscle thigh calf calves quad grip body side face "
        "paralys numb limp droop stand walk move bed stroke",
        sure=r"""
        paralys\w*|paralyz\w*|hemiplegia|stroke
        <limb><3>(?:weak|weakness|weaker|buckl\w+|paralys\w*|limp)
        <limb> (?:weak|weakness|week|buckl\w+|limp)
        <limb><2>(?:feel|feels|felt|feeling|are|is|so|very|went|going|gone)<1>week
        <limb><2>(?:feel|feels|felt|feeling|so|very) week
        <limb><2>(?:gave|give|gives|giving) (?:way|out|in)|<limb> (?:gave|give|gives|giving) (?:way|out|in)|<limb><2>(?:gave|giving|give)<2>(?:me|way)
        <limb><2>(?:won't|wouldn't|don't|doesn't|didn't|not|stopped|stop|can't|couldn't|refus\w+)<1>(?:move|moving|work|working|hold|lift|respond\w*|listen\w*|obey\w*|carry|support)
        <limb> (?:won't|wouldn't|don't|doesn't|didn't|not|stopped|can't|couldn't) (?:move|work|working|hold|lift|respond|support)
        (?:weak|weakness|weakened|paralys\w+)<3><limb>
        weak <limb>|muscle weakness|muscular weakness
        <can't><1>(?:move|feel|raise|use|bend|lift|control)<2><limb>
        <can't><1>(?:stand|walk|get up|sit up|move|climb)
        <can't> (?:stand|walk|get up|sit up|move|climb|get out of bed|get off)
        (?:lost|losing|lose|no)<2>(?:power|strength|use|feeling|control|movement|sensation)<2><limb>
        no (?:power|strength|feeling|control|movement|sensation)<2><limb>
        face<2>droop\w*|droop\w*<2>face
        (?:one|left|right) side<3>(?:weak|numb|dead|droop\w*)
        weak all over|too weak to
        went (?:all )?limp
        """,
        doubtful=r"""
        weak|weakness|weakly
        <limb><3>(?:numb|numbness|dead|jelly|lead|heavy|tingl\w*|wobbl\w*|shaky|unsteady|rubber\w*|cotton|spaghetti|noodles?)
        <limb> (?:numb|heavy|dead|wobbly)
        (?:numb|numbness|heavy|dead|wobbly|jelly)<2><limb>
        (?:numb|heavy|dead|wobbly|jelly) <limb>
        numb|numbness
        <can't><1>(?:hold|grip|lift|open|carry)<3>(?:phone|cup|glass|fork|pen|door|bottle|keys|anything|things|bag|kettle)
        """,
    ),
    *_table(
        Symptom.CONFUSION,
        "confus speak talk word disorient deliri slurr hallucinat foggy fog straight where what who sense nonsense gibberish "
        "incoheren drunk agitated spaced out blank strange weird remember muddled",
        sure=r"""
        confused|confusion|disorient\w*|deliri\w*|incoheren\w*
        (?:don't|didn't|doesn't|not|no idea|forgot|couldn't remember|can't remember|unsure)<2>(?:where i|who i|what day|what year|what month|how i got|my (?:own )?name)
        slurr\w+|hallucinat\w*
        (?:not|wasn't|isn't|didn't|weren't|stopped)<1>mak(?:e|ing)<2>sense
        (?:talking|speaking|saying)<1>(?:nonsense|gibberish|rubbish)|talking (?:nonsense|gibberish)
        <can't><1>(?:speak|talk|get (?:my )?words)(?: out)?(?: properly| straight)?
        """,
        doubtful=r"""
        <can't><1>(?:think|focus|concentrate)<1>(?:straight|clearly|properly)
        <can't> (?:think|focus|concentrate)
        brain fog\w*|foggy|fuzzy head\w*|head<2>(?:fog\w*|fuzzy|cloudy)|muddled
        (?:feel|feels|felt|feeling|acting|act)<2>(?:drunk|agitated|out of it|spaced out|not myself|not all there)
        (?:out of it|spaced out|agitated|not all there)
        (?:mind|memory)<2>blank
        acting<1>(?:strange|weird|odd)
        """,
    ),
    *_table(
        Symptom.REPEATED_VOMITING,
        "vomit throw threw thrown puk barf chuck hurl spew retch heav sick down up",
        sure=r"""
        <vomit><4><many>|<vomit> <many>
        (?:was|got) sick<3>(?:twice|thrice|again|all (?:night|day|morning)|several times|(?:\d+|two|three|four|five|six) times|everything)
        (?:twice|again|keeps?|kept|repeated(?:ly)?|constant(?:ly)?|can't stop|won't stop|couldn't stop|wouldn't stop|didn't stop|haven't stopped|hasn't stopped|not stopped|still|non ?stop|always|continuous(?:ly)?|persistent(?:ly)?|multiple|bouts of|second time|hours of|all (?:night|day|morning))<3><vomit>
        (?:twice|keeps?|kept|repeated(?:ly)?|constant(?:ly)?|can't stop|won't stop|couldn't stop|still|non ?stop|continuous|persistent) <vomit>
        keep<1>(?:being|getting)<1>sick
        (?:can't|couldn't|can not|not|cannot|unable to|struggling to|haven't|isn't|wasn't|hard to)<2>(?:keep|kept|keeping|hold)<4>down
        (?:nothing|no food|no water)<2>(?:stays?|staying|stayed|keeping) down
        <vomit><2>blood|blood<3><vomit>
        """,
        doubtful=r"""
        <vomit>(?! (?:just |only )?(?:once|one time|1x|1 time|a single))
        """,
    ),
    *_table(
        Symptom.SEVERE_HEADACHE,
        "head migraine skull",
        sure=r"""
        <bad><3><headache>
        <bad> <headache>
        <headache><5>(?:severe|unbearable|splitting|killing me|bad i|so bad|really bad|very bad|worst|excruciating|blinding|agony|of my life|of my whole life|like never before|like this before|than ever|out of nowhere|suddenly|intense|crippling|(?:8|9|10) ?(?:/|or|of|out of) ?10)
        <headache> (?:severe|unbearable|splitting|so bad|really bad|very bad|excruciating|killing me|out of nowhere)
        head(?:'s)?<5>(?:splitting|exploding|explode|pounding|killing me|bursting|burst|split|in agony)
        head(?:'s)? (?:splitting|exploding|pounding|killing me|bursting)
        skull<2>(?:split\w*|explod\w*|crush\w*|pound\w*)
        <can't><3>(?:see|open|think|move|stand|stop|shift|function)<4><headache>
        """,
        doubtful=r"""
        migraines?
        (?:bad|nasty|huge|big|throbbing|banging|raging|strong|worse|worsening|serious|bangin)<1><headache>
        (?:bad|nasty|huge|big|throbbing|banging|raging|strong|worse|serious) <headache>
        <headache><4>(?:worse|worsening|throbbing|won't go|won't shift|not going|bad|all day|for days|three days|two days|strong)
        <headache> (?:worse|bad|throbbing|all day|won't go)
        head(?:'s)?<2>(?:throbbing|banging)
        """,
    ),
    *_table(
        Symptom.SELF_HARM,
        "suicid kill myself life die dead end live harm alive",
        sure=r"""
        suicid\w*|kill(?:ing)? myself|end(?:ing)? my life|self ?harm\w*|take my own life
        (?:harm|harming|hurt|hurting) myself on purpose|(?:harm|harming) myself
        (?:don't|didn't) want to (?:live|be alive|be here any\w*|wake up)
        better off dead|no reason to live|rather be dead
        """,
        doubtful=r"""
        want to die|wanna die|wish i (?:was|were) dead|end it all|cut(?:ting)? myself|hurt(?:ing)? myself
        """,
    ),
    *_table(
        Symptom.SEVERE_GUT,
        "stomach tummy gut belly abdom blood doubled diarrhoea stool poo",
        sure=r"""
        <bad><2><gut><1>(?:pains?|cramps?|ache|cramping)
        <bad> <gut> (?:pains?|cramps?|ache|cramping)
        (?:severe|terrible|awful|excruciating|unbearable|really bad|intense)<2>diarrhoea|severe diarrhoea
        <gut><4>(?:agony|killing me|unbearable|excruciating|severe)
        doubled (?:over|up)
        blood(?:y)?<3>(?:stools?|poo|poop|diarrhoea|toilet)|bloody (?:stools?|poo|poop|diarrhoea)
        """,
        doubtful=r"""
        (?:bad|nasty)<1><gut><1>(?:pains?|cramps?|ache)
        (?:bad|nasty) <gut> (?:pains?|cramps?|ache)
        (?:bad|nasty) diarrhoea
        """,
    ),
    *_table(
        Symptom.HEADACHE,
        "head migraine",
        sure=r"""
        <headache>
        head(?:'s)?<2>(?:hurts?|hurting|aching|aches|sore|splitting|pounding|killing me|exploding|throbbing|banging)
        sore head
        """,
    ),
    *_table(
        Symptom.NAUSEA,
        "nause queasy sick vomit throw puke",
        sure=r"""
        nause\w*|queasy|queasiness
        (?:feel|feels|feeling|felt)<2>sick|(?:feel|feels|feeling|felt) sick|sick to<1>stomach
        (?:feel|feels|felt|feeling) like<2>(?:vomit\w*|throw\w* up|pu(?:ke|king)|being sick)
        (?:about|going|gonna|want|wanna|wanted|need)(?: to)? (?:vomit|throw up|puke|be sick)
        """,
        doubtful=r"""
        (?:i'm|i am|am|was|got|getting|get|bit|been|being) sick
        """,
    ),
    *_table(
        Symptom.VOMITING,
        "vomit throw threw thrown puk barf chuck hurl spew retch heav sick up",
        sure=r"""
        <vomit>
        """,
        doubtful=r"""
        (?:was|got|be) sick
        """,
    ),
    *_table(
        Symptom.SWOLLEN_HANDS,
        "hand finger knuckle wrist ring watch sausage",
        sure=r"""
        (?:hands?|fingers?|knuckles?|wrists?)<3>(?:swollen|swelled|swelling|swell|puffy|puffed|puffing|bloated|balloon\w*|sausages?)
        (?:hands?|fingers?|knuckles?|wrists?) (?:swollen|swelling|puffy|bloated)
        (?:swollen|swelling|puffy|puffiness|bloated|sausage|fat)<3>(?:hands?|fingers?|knuckles?|wrists?)
        (?:swollen|puffy|bloated|sausage|fat) (?:hands?|fingers?|knuckles?|wrists?)
        (?:wedding )?rings?<4>(?:tight|stuck|won't|doesn't|wouldn't|don't|too small|mark)
        rings? (?:tight|stuck|won't|doesn't)
        (?:can't|couldn't|struggl\w+)<4>rings?<1>(?:off|on)
        """,
        doubtful=r"""
        (?:hands?|fingers?)<2>(?:tight|fat|stiff|big)
        watch<3>(?:tight|mark|marks|tighter)
        """,
    ),
    *_table(
        Symptom.SWELLING,
        "swell swoll puffy ankle feet",
        sure=r"""
        (?:ankles?|feet|foot|legs?|face|eyes?|lips|shins?)<3>(?:swollen|swelled|swelling|puffy|puffed|balloon\w*)
        (?:swollen|swelling|puffy)<3>(?:ankles?|feet|foot|legs?|face|eyes?|lips|shins?)
        (?:swollen|puffy) (?:ankles?|feet|foot|legs?|face|eyes?|lips)
        """,
        doubtful=r"""
        swollen|swelling
        """,
    ),
    *_table(
        Symptom.DIZZY,
        "diz light wooz vertigo giddy spin rush stars spots unsteady balance wobbly faint room headed",
        sure=r"""
        dizz\w*|light ?headed\w*|woozy|wooziness|vertigo|head ?rush\w*
        (?:room|head|world|everything)(?:'s)?<2>spinning|(?:room|head|everything)(?:'s)? spinning
        (?:see|seeing|saw)<1>(?:stars|spots)|(?:see|seeing|saw) (?:stars|spots)
        (?:feel|feels|feeling|felt)<2>faint|(?:feel|feels|feeling|felt) faint
        """,
        doubtful=r"""
        giddy|unsteady|off balance|lost<1>balance|wobbly|light in the head
        """,
    ),
    *_table(
        Symptom.BLURRED_VISION,
        "vision see eyes sight",
        sure=r"""
        (?:blurr\w*|double|tunnel|lost|losing|loss of|patchy)<1>(?:vision|sight|eyesight)
        (?:blurr\w*|double|tunnel|lost|losing) (?:vision|sight|eyesight)
        (?:vision|sight|eyes)<2>(?:blurr\w*|gone|going|double|funny|weird|fuzzy)
        (?:can't|couldn't) see (?:properly|straight|clearly)
        """,
    ),
    *_table(
        Symptom.SLEEPLESS,
        "sleep slept insomnia awake",
        sure=r"""
        insomnia|sleepless\w*
        (?:can't|couldn't|unable to|barely|hardly|trouble|struggl\w+|didn't|haven't|not|never)<2>(?:sleep|sleeping|slept)(?! (?:well|great|good|much|badly|too|in|long|enough|through))
        (?:can't|couldn't|barely|hardly|didn't|haven't|not) (?:sleep|slept)(?! (?:well|great|good|too|in|long|enough|through))
        (?:no|zero|0|little|barely any|hardly any|1h|2h|[0-4] ?(?:h|hrs?|hours?)(?: of)?) sleep
        slept<2>(?:[0-4](?:\.\d)? ?(?:h|hrs?|hours?)|one hour|two hours|three hours|four hours)
        slept (?:[0-4](?:\.\d)? ?(?:h|hrs?|hours?))
        (?:wide )?(?:awake|up) (?:all|most of the) night|(?:wide )?awake (?:since|from)
        """,
        doubtful=r"""
        (?:didn't|haven't|not)<1>(?:sleep|slept)<1>(?:well|great|good|much|enough|through)
        slept<1>(?:bad|badly|terribly|terrible|poorly|horribly|rubbish|awful)|slept (?:bad|badly|terribly|poorly|rubbish|awful)
        (?:bad|poor|terrible|rubbish|awful|broken|shit) (?:night'?s? )?sleep
        """,
    ),
    *_table(
        Symptom.CRAMPS,
        "cramp spasm charley calf hamstring",
        sure=r"""
        cramp\w*|charley horse|muscle spasms?
        (?:calf|calves|hamstrings?|quads?|foot)<2>(?:locked|seized|spasm\w*|knotted)
        """,
    ),
    *_table(
        Symptom.TINGLING,
        "tingl pins numb",
        sure=r"""
        tingl\w*|pins and needles
        """,
        doubtful=r"""
        numb|numbness
        """,
    ),
    *_table(
        Symptom.SHAKY,
        "shak trembl tremor jitter hypo sugar",
        sure=r"""
        shaky|shakiness|the shakes|trembl\w*|tremors?|jitter\w*
        (?:low|dropped) blood sugar|blood sugar<2>(?:low|crash\w*|dropp\w*)|hypoglyc\w*
        (?:hands?|arms?|legs?|whole body|body|i'm)<2>shaking
        """,
        doubtful=r"""
        shaking
        """,
    ),
    *_table(
        Symptom.STOMACH_PAIN,
        "stomach tummy gut belly abdom",
        sure=r"""
        <gut><3>(?:pains?|hurts?|hurting|cramps?|cramping|aches?|aching|sore|agony|killing me)
        <gut> ?(?:pains?|hurts?|hurting|cramps?|cramping|aches?|aching)
        (?:pains?|cramps?|ache)<2><gut>
        """,
    ),
    *_table(
        Symptom.DIARRHOEA,
        "diarr runs runny loose trots shits toilet",
        sure=r"""
        diarrhoea\w*|loose (?:stools?|bowels?|motions?)|runny (?:poo|poop|stools?|tummy|bum)
        the (?:trots|shits)|(?:got|have|had|having) the runs
        """,
    ),
    *_table(
        Symptom.CONSTIPATION,
        "constip backed poo bowel toilet",
        sure=r"""
        constipat\w*|no bowel movements?
        (?:haven't|hasn't|not|can't|couldn't)<2>(?:pooped|pooed|poop|poo)
        """,
        doubtful=r"""
        backed up|bunged up
        """,
    ),
    *_table(
        Symptom.BLOATING,
        "bloat distend gassy stomach belly gut tummy",
        sure=r"""
        bloat\w*|distended|distension|gassy
        (?:stomach|belly|gut|tummy)<2>(?:swollen|distended|rock hard|hard as|huge|balloon\w*)
        """,
    ),
    *_table(
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
    *_table(
        Symptom.NO_URINE,
        "urin pee",
        sure=r"""
        (?:haven't|hasn't|can't|couldn't|not|hardly|barely|didn't|stopped)<2>(?:pee|peed|peeing|urinat\w*)(?! (?:clear|dark|much more))
        (?:haven't|can't|couldn't|not|hardly|barely|stopped) (?:pee|peed|peeing|urinat\w*)
        no (?:pee|urine)
        """,
    ),
    *_table(
        Symptom.FEVER,
        "fever temperature chills",
        sure=r"""
        fever\w*|chills|(?:high|running a) temperature|temperature<2>(?:3[89]|40|10[0-4])
        """,
    ),
    *_table(
        Symptom.EXHAUSTION,
        "exhaust fatigue knackered shattered wiped drained energy",
        sure=r"""
        exhaust\w*|fatigue\w*|knackered|shattered|wiped out|drained|no energy|zero energy
        """,
    ),
)
