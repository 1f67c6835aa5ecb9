"""The signs that emergency services ask for and that no single complaint names, as people tell them.

Which they are is common knowledge of first aid and of ambulance and eating-disorder services (severe
allergy, a stiff neck with fever, heat stroke, poisoning, a clot in a leg, low sugar, a belly like a
board, urine that cannot come, a blow to the head with what follows), listed from memory. Words that
tell a warning with a name of its own stand here too, where they are of the same kind.
"""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

from engine.symptoms.names import Symptom
from engine.symptoms.patterns import Phrase, table

_PILLS = r"(?:pills?|tablets?|meds|medication|painkillers?|sleepers|sleeping (?:pills|tablets)|paracetamol|ibuprofen|aspirin|caps|capsules|stimulants?|caffeine (?:pills|tablets))"
_SWOLLEN = r"(?:swollen|swell\w*|balloon\w*|puff\w*|thick|closing|twice the size)"
_SIDE = r"(?:one|left|right|only one|just one|the left|the right|one of my)"
_BELLY = r"(?:belly|stomach|tummy|abdomen|gut)"

DANGER_PHRASES: tuple[Phrase, ...] = (
    *table(
        Symptom.DANGER_SIGNS,
        "hive rash welt itch nettle lip tongue throat neck stiff sweat skin pill tablet meds medicat painkil paracet ibuprof aspirin caps stimula caffein pack box bottle strip blister calf calves leg sugar glucose meter claw finger bladder pee wee belly stomach tummy abdom gut head wake shake awake saddle groin genital blade temperat danger emergen pump sensor prick stick ambulance paramed recover resus intensive casualty hospital swallow poison anaphyl chin fever temp woken",
        sure=rf"""
        (?:hives|rash|welts?|itch\w*|nettle rash|blotches)<,8>(?:lips?|tongue|face|eyes|throat|eyelids)<3>{_SWOLLEN}
        (?:lips?|tongue|throat)<3>{_SWOLLEN}<,8>(?:hives|rash|welts?|itch\w*|blotches|wheez\w*|peanut\w*|cashew\w*|nuts?|prawns?|shrimps?|shellfish|sesame|antibiotic\w*)
        (?:allergic|anaphyla\w*)<2>(?:shock|reaction)<,6>(?:throat|breath\w*|lips?|tongue|swell\w*|swollen|bad|severe|epi ?pen)|anaphyla\w*(?! (?:kit|plan|training))
        (?:stiff neck|neck<3>(?:stiff|rigid|won't bend|can't bend|locked|like a board))<,9>(?:lights?<2>(?:hurts?|hurting|bright|unbearable|kills)|chin|fever\w*|burning up|chills|shivering|temperature|rash|headache)
        (?:fever\w*|burning up|chills|shivering|shaking with cold|temperature|light hurts)<,9>(?:stiff neck|neck<3>(?:stiff|rigid|won't bend|can't bend|hurts to bend|locked|like a board))
        <can't><4>chin<3>chest
        (?:stopped|no longer|quit)<1>sweat\w*<,8>(?:hot skin|skin<2>hot|dry skin|dizzy|spinning|confused)|(?:hot|burning)<,2>dry skin|dry<,1>hot skin|skin<3>(?:hot and dry|dry and hot)
        (?:took|taken|take|swallowed|necked|downed|popped|had)<2>(?:too many|way too many|loads of|all of|a handful of|handful of|a whole (?:pack|box|bottle|strip|blister) of|the whole (?:pack|box|bottle|strip|blister) of|double dose of|\d\d) (?:of )?(?:the |my |those |these )?(?:\w+ )?{_PILLS}(?! (?:are|is|left|in the|for sale|to choose|over the|a week|this week))
        (?:swallowed|swallow|necked|popped)<2>(?:whole|entire|full)<1>(?:pack|packet|box|strip|blister)(?= ?$| ?,| of (?:{_PILLS})| (?:at once|in one go|last night|this morning|an hour ago))
        {_SIDE}<1>(?:calf|lower leg|leg|thigh)<6>(?:swollen|hot|red|twice the size|double the size|thicker than the other)<,8>(?:hot|red|warm|hurts?|painful|sob|breath\w*|puff|flight|throb\w*)
        {_SIDE}<1>(?:calf|lower leg|leg|thigh)(?! of)<4>(?:twice|double)<1>the size
        (?:blood sugar|glucose|bg)<4>(?:[12][.,]\d|(?:[23]\d|4[0-9])(?! ?(?:g|grams|kg|carbs|min|%))|says lo|reads lo)|sugar<2>[12][.,]\d<3>meter|meter<3>(?:says|reads|shows)<1>lo
        (?:meter|pump|sensor|finger ?prick|stick)<1>(?:says|reads|shows|said|is at|is on)<1>[12][.,]\d(?!\d| ?(?:kg|kilos?|l|litres?|lbs?|g)\b)|lo(?:w)? says the meter
        (?:hands?|fingers?|feet)<4>(?:claws?|clawed|claw like|locked shut|locked in|cramped shut|curl\w* in|stuck shut|frozen shut)<,8>(?:open|straighten|lips?|tingl\w*|face|can't|won't|numb)|<can't><3>(?:straighten|uncurl|open)<2>(?:fingers|hands)<,8>(?:tingl\w*|lips?|face|cramp\w*|claw\w*)
        (?:hands?|fingers?)<3>(?:locked|cramp(?:ed|ing)|curl(?:ed|ing)|stuck|frozen)<2>(?:shut|claws?)
        (?:tingl\w*|lips?|face)<,8><can't><3>(?:straighten|uncurl|open)<2>(?:fingers|hands)|face<3>hands<3>(?:stiff|locked|cramped|numb)
        (?:can't|cannot|couldn't|unable to|impossible to)<2>(?:pee|wee|urinate|piss|go)<,9>(?:bladder|belly|tummy|stomach|lower belly)<5>(?:drum|burst\w*|hurts?|agony|hard|balloon|explod\w*|killing|killer|massive|pain\w*)
        bladder<3>(?:burst\w*|agony|explod\w*|full)<,8>(?:can't|cannot|couldn't|nothing comes|won't come|not a drop)
        (?:worst|unbearable|like a knife)<2>{_BELLY}<1>(?:pain|ache|cramps?)<3>(?:of my life|ever|i've ever had)|{_BELLY}<5>(?:hard as a board|like a board|board hard|rigid as|stiff as a board)(?! (?:abs|from abs|from planks?))
        (?:bang\w*|hit|smack\w*|knock\w*|whack\w*|crack\w*)<2>head<,9>(?:vomit\w*|threw up|throwing up|puk\w*|sick|sleepy|drowsy|confused|seeing double|blur\w*|blood from|can't remember|don't remember|worse)
        numb<4>(?:between (?:my |the )?legs|saddle|groin|genitals|private parts|down there)<,8>(?:pee|wee|bladder|bowel|toilet|hold|legs?|back)|(?:can't|cannot|couldn't)<2>(?:hold|control)<2>(?:pee|wee|bladder|bowels?)<,8>(?:numb|back|legs?)
        (?:tearing|ripping|tore|ripped)<2>pain<4>(?:back|shoulder blades|chest|belly)|(?:stuck|lodged)<3>throat<,8>(?:swallow|spit|saliva|breath\w*|air)|can't swallow<2>(?:spit|saliva)
        (?:temp\w*|fever)<4>40[.,]\d|fever<4>(?:41|10[4-7])(?! ?(?:g|kg|min))|danger signs|body temp\w*<3>(?:34|35)[.,]\d
        """,
        doubtful=r"""
        (?:ambulance|paramedics?)<3>(?:called|coming|on (?:its|the|their) way|(?:is|are) here|arrived|took me)|(?:called|rang|phoned|waiting for|sent for) (?:an? |the )?(?:ambulance|paramedics?)
        recovery position
        (?:am|being|was|got|still)<4>(?:emergency department|emergency room|a and e|resus|intensive care|heart hospital)
        (?:have to|had to|keep|kept|need to)<1>(?:shake|shaking|slap|slapping)<2>me<1>(?:awake|to wake|up)|(?:can't|couldn't|barely|hardly)<2>(?:be|get)<1>woken|(?:hard|impossible) to wake me|(?:keep|kept|keeps) (?:drifting|slipping|nodding) (?:off|away|out)<5>(?:mid|talking|sentence|shake|wake)|(?:people|they|he|she|someone)<3>(?:shake|slap) me
        (?:took|taken)<2>(?:whole|entire)<1>(?:pack|packet|strip|blister)(?= ?$| ?,)
        (?:swallowed|took|taken)<2>(?:something|stuff) i shouldn't|(?:been|was|got|is) poisoned|(?:swallowed|drank|took) (?:poison|bleach)
        """,
    ),
    *table(
        Symptom.HEAVY_BLEEDING,
        "red coffee nose pump spurt gush squirt cut artery",
        sure=r"""
        (?:red|blood\w*)<3>(?:in|with)<3>(?:what (?:came|comes|i brought)|my sick|the sick|my vomit|the vomit|puke)|(?:came|comes|coming|brought|threw)<3>(?:up )?(?:red|bloody|coffee grounds?|like coffee)
        (?:puk\w*|vomit\w*|threw up|sick|spew\w*|barf\w*)<6>(?:coffee grounds?|grounds of coffee|dark red|bright red|something red)
        nose<5>(?:red|blood\w*|pour\w*|gush\w*|running)<4>(?:[2-9]\d|hours?|an hour|half an hour)<,8>(?:won't|doesn't|not|hasn't|still|no stop\w*|quit|towel)
        (?:cut|slic\w*|gash\w*|slash\w*|stab\w*)<2>(?:hand|fingers?|thumb|palm|leg|arm|foot|shin|myself)<,9>(?:pump\w*|spurt\w*|squirt\w*|gush\w*|pulsing out|pouring out)
        """,
    ),
    *table(
        Symptom.STROKE_SIGNS,
        "word sign write name pen cup hand foot drag other came wrong say blind eye curtain",
        sure=r"""
        (?:wrong|different|other|another)<1>words?<2>(?:come|comes|came|coming|pop\w*)<1>out|(?:something|sth) (?:completely |totally |quite )?(?:different|else)<2>(?:come|comes|came) out
        (?:know|knew|have|had|see)<2>(?:the |my )?words?<,4>(?:can't|couldn't|won't|doesn't|cannot|not)<3>(?:say|come|get|speak|out|tell|pronounce)
        (?:can't|couldn't|unable to)<2>(?:sign|write)<2>(?:name|signature|properly|straight|anything|letters)<,8>(?:slid\w*|slip\w*|hand|fingers|pen|scribbl\w*|line)
        (?:hand|arm|fingers?)<2>(?:miss\w*|goes past|go past|went past|reach\w* past)<3>(?:cup|glass|handle|button|door|mug|tap|switch|fork)|past<1>(?:it|the (?:cup|glass|handle|mug))<,4>(?:hand|arm)<2>(?:won't|doesn't|goes)|my hand goes past(?: it)?
        (?:left|right|one)<1>(?:foot|leg)<3>(?:drags?|dragging)(?! (?:on the mat|in the warm|in the lunge|behind in))
        (?:blind|black|nothing|no sight|can't see)<3>(?:in|on|with|out of)<2>(?:one|left|right)<1>eye|curtain<3>(?:over|across|before|in front of)<3>eyes?|(?:one|left|right) eye<4>(?:blind|went dark|went black|gone black|sees nothing|lost sight)
        """,
    ),
    *table(
        Symptom.CHEST_PAIN,
        "heartburn indiges reflux boobs pecs weight breast shoulde jaw teeth tooth",
        sure=r"""
        (?:heartburn|indigestion|reflux)<,9>(?:jaw|teeth|left arm|clammy|cold sweat)
        (?:weight|slab|stone)<5>(?:between|on)<3>(?:breasts?|boobs)|between<2>(?:shoulder blades)<,9>(?:cold sweat|clammy|breath\w*)
        jaw<4>(?:ach\w*|hurts?|pain\w*)<,8>(?:stairs|climb\w*|uphill)
        """,
    ),
    *table(
        Symptom.BREATHLESSNESS,
        "sit flat lying pillow upright sentence breaths propped",
        sure=r"""
        (?:only|can only)<2>breathe<2>(?:sitting|upright|propped)|(?:lying|lie|laying)<1>(?:flat|down)<,6>(?:drown\w*|suffocat\w*|no air|can't breathe|choke|choking|gasp\w*)
        (?:sentence|words?)<5>(?:two|three|2|3|several)<1>breaths|(?:two|three|2|3|several) breaths<4>(?:sentence|few words)
        """,
    ),
    *table(
        Symptom.PALPITATIONS,
        "watch strap band ring tracker",
        sure=r"""
        (?:watch|strap|band|ring|tracker|oximeter)<3>(?:1[3-9]\d|2[0-2]\d)(?! ?(?:min\w*|kcal|cal\w*|steps|g|kg|h|hours|m))<3>(?:lying|laying|in bed|on the (?:sofa|couch)|sitting|resting|at rest|doing nothing)
        """,
    ),
    *table(
        Symptom.CONFUSION,
        "rubbish nonsense gibberish talked talking memory",
        sure=r"""
        (?:i|i'd) (?:was talking|talked|was saying|said|spoke)<2>(?:rubbish|nonsense|gibberish|weird stuff)<,9>(?:no memory|don't remember|can't remember|no idea|know nothing)
        """,
    ),
    *table(
        Symptom.SELF_HARM,
        "knife knives blade razor pills over bridge platfor roof edge step rope letter easy",
        sure=r"""
        (?:keep|kept|always|can't stop|constantly)<2>(?:looking at|staring at|eyeing|counting|picturing)<2>(?:knife|knives|blades?|razors?|pills|tablets)
        (?:want|wish|wanting)<1>it<2>(?:all )?(?:to be |be )?over<,2>(?:for good|forever|for ever|once and for all)|(?:want|wish)<3>(?:over|end)<,2>(?:for good|forever|for ever)
        (?:standing|stood|stand|sat|sitting|been)<1>(?:on|at|by|near)<,6>(?:bridge|platform|roof|ledge|tracks|cliff|balcony)<,6>(?:so easy|be easy|one step|just step\w*|stepping off|just jump\w*)
        """,
        doubtful=r"""
        (?:only|just|one)<1>(?:a |one )?step(?: away)?(?= ?$| ?,| and (?:it|then))
        """,
    ),
    *table(
        Symptom.NO_URINE,
        "peed wee pee drop loo",
        sure=r"""
        (?:only|just)<1>(?:peed|weed|been to the loo)<1>once<4>(?:today|since|tiny|drops?|all day|24)|(?:not a|a single|haven't had a|no)<1>drop<2>(?:come|came|coming|comes)<1>out
        """,
    ),
    *table(
        Symptom.LOW_MOOD,
        "cried crying sobbed",
        sure=r"""
        (?:cried|crying|sobbed|sobbing)<1>(?:through|all through|during)<3>(?:workout|session|cardio|training|dinner|meal|day|night|practice|call)(?! (?:with joy|from laughing))
        """,
    ),
    *table(
        Symptom.DRYING_OUT,
        "bath tub salts",
        sure=r"""
        (?:hot|salt|epsom)<1>(?:bath|tub)<,9>(?:to (?:drop|lose|shed)<2>(?:pounds?|kilos?|lbs?|kg|grams|weight))
        """,
    ),
    *table(
        Symptom.VOMITING,
        "sick",
        sure=r"""
        (?:was |been |got )?sick once(?= (?:after|since|this|last|today|at|in)|$)
        """,
    ),
    *table(
        Symptom.FALL,
        "went went over shower bath stairs ice",
        sure=r"""
        went<1>(?:over|flying|down)<2>(?:in|on|off)<2>(?:shower|bath|stairs|ice|kerb|curb|steps?|tiles)<,6>(?:knee|elbow|hip|wrist|ankle|head|shoulder|bruise\w*|blue|sore|swollen)
        """,
    ),
    *table(
        Symptom.LIMB_WEAKNESS,
        "feel leg arm hand feet foot finger",
        sure=r"""
        (?:don't|didn't|no longer|not|stopped)<1>feel(?:ing)?<1>(?:my|both|left|right)<1>(?:legs?|arms?|hands?|feet|foot|fingers|left side|right side)(?! (?:are|is|working|enough|growing|getting|during))
        (?:don't|didn't|no longer|not|stopped)<1>feel(?:ing)?<1>(?:legs?|arms?|hands?|feet|foot|fingers|left side|right side)(?! (?:are|is|working|enough|growing|getting|during))
        """,
    ),
    *table(
        Symptom.FEVER,
        "temperature",
        sure=r"""
        (?:has|have|had|got|with|running)<1>a<1>(?:bit of a )?temperature(?! (?:setting|sensor|controlled|problem in the oven))
        """,
    ),
    *table(
        Symptom.UNWELL,
        "back pulled tore torn strain tweak pinged twisted sprain rolled",
        doubtful=r"""
        back<2>(?:gone|went|locked up|seized up|locked)(?= ?$| ?,| (?:on|when|while|so|and|i|can't|again)\b)
        (?:pulled|tore|torn|strained|tweaked|pinged)<2>(?:muscle|hamstring|hammy|calf|quad|groin|back|shoulder|bicep\w*|pec|adductor|glute)(?! (?:session|day|workout))
        (?:twisted|sprained|rolled)<2>(?:ankle|knee|wrist)
        """,
    ),
    *table(
        Symptom.STROKE_SIGNS,
        "face arm hand leg",
        sure=r"""
        face<4>(?:melt\w*|slid\w*|sagg\w*|lower|slack)<4>(?:one|left|right)<1>side|(?:one|left|right)<1>side<4>face<4>(?:melt\w*|slid\w*|sagg\w*|lower|slack)
        (?:arm|hand)<4>(?:to sleep|asleep|dead|numb)<,9>(?:dropped|won't wake)
        """,
    ),
    *table(
        Symptom.FAINTING,
        "shower",
        sure=r"""
        (?:woke|awoke|came)<2>(?:in|on)<2>shower<1>(?:tray|floor|tub)|(?:woke|awoke|came)<1>(?:to|round)<2>(?:in|on)<2>shower
        """,
    ),
    *table(
        Symptom.PURGING,
        "run ran walk cycl cardio burpee step",
        sure=r"""
        (?:run\w*|ran|walk\w*|cycl\w*|cardio|burpees|steps)<4>(?:because of|to pay for|to make up for|as punishment for)<3>(?:cookies?|biscuits?|cake|chocolate|pizza|ice cream|burger|slice|bite|sweets|crisps|chips|peanut butter|croissant)
        """,
    ),
)
