"""Invented messages for the symptom screening, each with what a person would read in it."""

from __future__ import annotations

# Every one of these must be found as that warning, surely or in doubt.
WARNINGS = {
    "fainting": """
        I fainted in the shower this morning
        fainted twice yesterday
        i fainted
        Fainted. Woke up on the bathroom floor
        passed out after posing practice
        I passed out in the kitchen, my flatmate found me
        blacked out when I stood up
        had a blackout on the stairs
        everything went black for a few seconds when I got up
        I lost consciousness for a moment
        lost conciousness at the gym
        collapsed on the treadmill
        was unconscious for about a minute
        came to on the floor with no idea what happened
        nearly fainted getting out of bed
        almost passed out at work
        felt faint all morning
        keeled over in the queue
        fianted this morning
        fainteed after cardio
        feinted in the bath
        I pased out
        not great, I fainted
        legs ok but fainted earlier
        I didn't tell you but I fainted on Tuesday
        no sleep, fainted at breakfast
        I think I fainted
        not sure if I fainted or just fell asleep
        dropped to the floor out of nowhere
        syncope this morning according to my nurse friend
        blacking out when standing
        woke up on the floor
        next thing I was on the ground
        passed clean out
        fell and hit my head
        fell unconscious
        I was out for a few seconds
        went out cold in the kitchen
        fainting spells
        my partner caught me when I fainted
        fell down in the bathroom and don't remember it
        blackedout this morning
        had a fainting episode
        i have been fainting
        about to faint
        think im going to pass out
        feeling like passing out
        feel like I could pass out
        everything is going dark when I stand
        no I fainted
        no joke I fainted
        No, I passed out
        none, fainted once though
        passed out food everywhere
    """,
    "confusion": """
        I feel really confused
        very confused this morning, didn't know where I was
        couldn't remember my own name for a minute
        disoriented when I woke up
        disorientated and slow
        my speech is slurred
        slurring my words
        my boyfriend says I'm not making sense
        I don't know what day it is
        confusion and a headache
        so confuzed today
        hallucinating a bit, seeing things
        can't think straight at all
        I feel drunk but haven't had a drink
        can't speak properly
        delirious last night
        can't remember driving home
        mum says I'm talking rubbish
        couldn't work out where I was
        I got lost on my own street
        I don't recognise people
        brain isn't working at all
        mixing up my words
        can't find words
        forgot where I live
        talking gibberish
        I'm so out of it
        woke up not knowing where I was
        not thinking straight
        very muddled
    """,
    "seizure": """
        had a seizure last night
        I had a siezure
        seizures again
        my wife says I had convulsions in my sleep
        convulsing on the floor
        shaking uncontrollably for five minutes
        epileptic fit this morning
        had a fit in the car park
        had a sezure
        started shaking and couldn't stop
        body went stiff and jerked
        I had a fit last night
        fitting
        had two seizures
        was seizing
    """,
    "chest-pain": """
        chest pain
        Chest pains since last night
        my chest hurts
        pain in my chest when I walk
        tightness in the chest
        chest feels tight
        my chest is really tight and sore
        pressure on my chest
        sharp stabbing pain near my sternum
        crushing feeling in chest
        feels like an elephant on my chest
        there's a weight on my chest
        chest discomfort
        cheast pain
        chst pain
        chestpain
        chest pian since 4am
        pain going down my left arm
        heart hurts
        think I'm having a heart attack
        chest hurts when I breathe in
        no appetite, chest pain
        slept fine, no headache, chest pain though
        don't want to worry you but my chest is hurting
        it's like a tight band around my chest
        angina maybe?
        chest pain not going away
        never had chest pain like this
        dull ache in my chest
        chest feels heavy
        my chest is killing me
        pain across my chest
        chest squeezing
        tight chested
        pains in chest
        chest is in pain
        chest all tight
        my chest has been bothering me
        chest feels crushed
        burning in my chest
        stabbing pains left side of chest
        it hurts in my chest
        chest feels like it's being squeezed
        weird feeling in my chest
        left arm pain and jaw pain
        chesst pain
        chest paint
        pain under my breastbone
        chest cramp
        heart pain
        my heart is hurting
        pain in the chest, not from training
        tightening in chest
        chest and back pain
        pain in my heart
        stabbing in my chest, heart feels off
        no relief from the chest pain
        no change in chest pain
        nothing helps the chest pain
        no new chest pain
        nothing new chest pain same as yesterday
        no my chest hurts
        no chest pain yesterday but today I do
    """,
    "palpitations": """
        palpitations
        heart palpitations all night
        heart is racing
        my heart's racing
        my heart was pounding lying in bed
        heart keeps skipping beats
        heart skipped a few beats
        heart fluttering
        fluttering in my chest
        racing heart at rest
        irregular heartbeat
        heart beating really fast for no reason
        my heart is beating out of my chest
        my heart is going crazy
        heart going a million miles an hour
        heart feels like it's jumping
        heart feels weird
        palpatations
        palpitaions since yesterday
        palpitashuns
        hart racing
        heart racin and sweaty
        can feel my heart pounding in my ears
        pulse is all over the place
        resting heart rate 130 this morning
        arrhythmia on my watch
        watch says afib
        heart missed a beat, twice
        heart thumping
        my heart won't slow down
        heart doing flips
        heart doing somersaults
        heart rate won't come down
        heart beat is irregular
        getting extra beats
        heart keeps stopping
        heart feels like it will explode
        heart beats so hard
        hr 150 lying down
        pulse racing
        palpitating
        heartbeat in my throat
        heart going like the clappers
        bpm 140 at rest
        heart is pumping like mad
        heart all over the place
        heart beating out of rhythm
        heart is beating funny
        my heart rate is super high lying in bed
        ectopic beats
        heart rhythm is off
        heart stopped for a second
        heart is hammering
        heart pounds when I lie down
        thumping heart
        heartrate 140 sitting
        something wrong with my heart
        heart rate was 50 now 140
        pulse irregular during cardio
        no doubt these are palpitations
        no sleep from palpitations
        no palpitations yesterday but it's back
        heart is strong and pounding
    """,
    "limb-weakness": """
        my legs gave way
        legs gave out on the stairs
        can't move my legs
        couldn't lift my arms
        cant feel my left leg
        weakness in my legs
        legs are so weak
        weak legs
        my arms feel weak and heavy
        my right arm is numb
        legs have gone numb
        legs feel like jelly and won't hold me
        couldn't stand up this morning
        can't get up, legs won't work
        I can hardly walk
        muscles are weak, can barely climb the stairs
        paralysed from the waist down for an hour
        woke up paralyzed
        my face is drooping on one side
        left side has gone weak
        lost strength in my hands
        no strength in my legs at all
        legs buckled
        legs feel week
        waekness in arms
        paralised
        heavy legs, can't lift them
        too weak to get out of bed
        my grip is gone, can't hold my phone
        feeling weak all over
        knees keep buckling
        legs not working
        my hand keeps dropping things
        arms don't respond
        legs won't carry me
        legs gone to jelly
        no power in legs
        I cannot move
        muscle paralysis
        legs have no strength
        legs feel dead
        can't make a fist
        can't open my hands
        can't hold a pen
        can't stand
        cannot walk
        my leg just gave up
        legs are giving up on me
        legs keep giving way
        so weak I can't stand
        I feel extremely weak
        arm went limp
        legs feel like lead
        legs completely gone
        cant get off the sofa my legs won't move
        left arm weakness
        body won't move
        muscles won't work
        dragging my foot
        can't lift my head
        legs failing me
        my legs collapsed under me
        really weak
        legs arent working
        weakness is in my legs
        my weakness is getting worse
        no better, legs still weak
    """,
    "repeated-vomiting": """
        vomited three times
        been vomiting all night
        threw up twice
        keep throwing up
        can't stop vomiting
        can't keep anything down
        cannot keep water down
        nothing stays down
        vomiting since 3 am
        threw up again
        puking all morning
        been sick four times since midnight
        I've been sick twice
        threw up everything I ate
        vommiting
        vomitting non stop
        trew up 3 times
        vomited and then vomited again
        throwing up every hour
        puked 5x
        brought everything back up
        vomiting blood
        vomiting hasn't stopped
        not stopped vomiting
        can't hold any food down
        sick 3 times
        been throwing up
        haven't stopped puking
        throwing up constantly
        vomit x3
        3rd time vomiting today
        second time I've thrown up
        everything comes back up
        food keeps coming back up
        keeps coming back up
        cant keep fluids down
        being sick all night
        I'm throwing up
        threw my guts up
        heaving all night
        hurling
        can't stop being sick
        vomited 4x
        puked twice
        vomited after every meal
        vomiting and diarrhoea
        can't hold anything down
        vomited 2 times
        throwing up everything
        vomitted a lot
        vomited yesterday and today
    """,
    "severe-headache": """
        severe headache
        worst headache of my life
        splitting headache
        my head is splitting
        head is pounding
        pounding headache
        thunderclap headache
        terrible headache since the carb up
        awful migraine
        the headache is unbearable
        headache so bad I can't open my eyes
        headache 9/10
        sudden headache out of nowhere
        head feels like it's going to explode
        killer headache
        excruciating pain in my head
        sever headache
        severe hedache
        severe headach
        massive headache and sick
        really bad headache
        bad headache
        headache won't go away, getting worse
        migraine
        my head is killing me
        head hurts so much I can't see
        worst head pain ever
        headache is a 10
        my head is about to burst
        headache like being hit by a hammer
        blinding pain behind my eyes
        head in agony
        headache and stiff neck
        headache, worst I've had
        incredible headache
        insanely painful headache
        headache from hell
        the worst migraine
        headache is awful
        headache is really severe
        extreme pain in my head
        severe pain in head
        headache so severe
        my head is exploding
        headache of my life
        brutal head pain
        headaches are getting unbearable
        severe head ache
        splitting head
        horrendous headache
        skull splitting headache
        never ending severe headache
    """,
    "breathlessness": """
        short of breath
        shortness of breath walking to the car
        breathless
        so breathless lying down
        can't breathe
        cant breath properly
        can't catch my breath
        couldn't get enough air
        hard to breathe
        difficulty breathing
        trouble breathing since last night
        struggling to breathe
        gasping for air
        my breathing is really shallow
        breathing is hard
        hurts to breathe
        out of breath doing nothing
        breathles
        brethless
        shortnes of breath
        short off breath
        dificulty breathing
        wheezing a lot
        can hardly breathe
        i feel like i'm suffocating
        no air
        can't get my breath
        cant get air in
        winded walking upstairs
        breathing heavily
        breathing feels hard
        hard breathing
        panting at rest
        lungs won't fill
        can't take a deep breath
        trouble catching my breath
        running out of breath
        breath short
        struggle for breath
        fighting for breath
        breathing is difficult
        breathing fast
        short breathed
        can't breathe lying flat
        can't breath
        cannot breath
        cnt breathe
        cant breeth
        breathing trouble
        breathing problems
        difficulties breathing
        difficult to breathe
        shortness in breath
        breath is short
        no breath left
        gasping
        can't seem to breathe
        not able to breathe
        breathing like I ran a marathon
        my lips are blue
        my throat is closing up
        coughing up blood
    """,
    "self-harm": """
        I want to kill myself
        feeling suicidal
        I don't want to live anymore
        thinking about ending my life
        I've been self harming
        everyone would be better off, I'd be better off dead
        I want to end it all
        thinking of suicide
        I keep hurting myself
        don't want to be here anymore
        I want to die
        life isn't worth living
        can't go on living
        cutting myself again
        I overdosed
    """,
    "stroke-signs": """
        my face is drooping on one side
        left side of my face is drooping
        the corner of my mouth is hanging
        one side of my body is numb
        I think I had a stroke
        right side has gone dead
        my speech is gone
    """,
    "heavy-bleeding": """
        vomiting blood
        coughing up blood
        blood in my stool
        there was blood in the toilet
        the bleeding won't stop
        bleeding heavily
    """,
    "double-vision": """
        I'm seeing double
        seeing double since I got up
        double vision
        my vision is double
        saw two of everything
        I see double when I look left
    """,
    "muscle-breakdown": """
        my pee is brown and my legs are killing me
        cola coloured pee and my muscles hurt
        legs so sore I can't bend them and dark urine
        thighs are rock hard and my pee is black
        I think it's rhabdo
        dark brown pee, muscle pain everywhere
    """,
    "danger-signs": """
        hives all over and my lips are ballooning
        neck so stiff I can't get my chin down and the light hurts
        hot, dry skin, stopped sweating, head spinning after the sauna suit
        I swallowed the whole pack of painkillers
        took too many of the tablets
        one calf is swollen and hot and now I'm short of puff
        sugar 2.1 on the meter and I'm sweating
        can't wee and my bladder hurts like hell
        hit my head on the rack and threw up since
        they keep having to shake me awake
    """,
}

# The others, found as that.
OTHERS = {
    "headache": """
        slight headache
        mild headache, probably the caffeine
        my head hurts
        head is aching a bit
        hedache
    """,
    "nausea": """
        feeling sick
        nauseous after the rice cakes
        bit of nausea
        nausous
        queasy
        feel like throwing up
    """,
    "vomiting": """
        vomited once after breakfast
        threw up once
    """,
    "swollen-hands": """
        swollen hands
        my hands are swollen
        fingers are puffy
        rings are tight
        can't get my ring off
        sausage fingers this morning
        hands feel puffy and bloated
        swolen fingers
    """,
    "dizzy": """
        dizzy
        a bit dizzy standing up
        felt light headed
        lightheaded
        light-headed after cardio
        dizzyness
        dizzines
        dissy when I stand up
        the room is spinning
        head rush every time I get up
        seeing stars when I stand
        woozy
    """,
    "sleepless": """
        couldn't sleep
        didn't sleep at all
        no sleep
        awake all night
        slept 3 hours
        barely slept
        insomnia again
    """,
    "cramps": """
        cramps in my calves
        calf cramp at night
        cramping up
        my hamstring locked up
    """,
    "diarrhoea": """
        diarrhea
        diarrhoea since last night
        diarreah
        got the runs
        loose stools
    """,
    "constipation": """
        constipated
        haven't pooped in three days
        constapated
    """,
    "bloating": """
        bloated
        so bloated
        stomach distended
    """,
    "severe-gut": """
        severe stomach pain
        stomach cramps are unbearable
        doubled over with stomach pain
        blood in my stool
    """,
    "urine-dark": """
        urine is really dark
        dark pee
        pee looks like cola
        brown urine
        blood in my urine
    """,
    "no-urine": """
        haven't peed since yesterday
        can't pee
    """,
    "tingling": """
        tingling in my lips
        pins and needles in both hands
    """,
    "shaky": """
        shaky and cold
        hands are trembling
    """,
    "fall": """
        I fell on the stairs
        my legs went from under me
    """,
    "fast-heart": """
        heart rate 140 lying down
        pulse 130 sitting on the couch
    """,
    "bleeding": """
        I'm bleeding
        nosebleed this morning
    """,
    "drying-out": """
        in the sauna to get the water off
        stopped drinking
        spitting into a cup
    """,
    "purging": """
        I binged and made myself sick last night
        stuck my fingers down my throat
        I purged
    """,
    "bingeing": """
        I binged last night
        binge eating again
    """,
    "starving": """
        not eating today
        i should stop eating until the show
    """,
    "body-hate": """
        I hate my body
        I hate myself
    """,
    "low-mood": """
        I feel hopeless
        can't stop crying
    """,
    "unwell": """
        I feel like crap
        feeling awful
    """,
    "fever": """
        I have a fever
    """,
    "exhaustion": """
        completely exhausted
    """,
    "stomach-pain": """
        stomach pain
    """,
    "swelling": """
        swollen ankles
    """,
    "blurred-vision": """
        blurry vision
        vision went blurry for a bit
    """,
}

# Said not to be there: no find at all.
DENIED = """
    free of chest pain
    free from headaches
    heart isn't racing
    no i haven't fainted
    chest doesn't feel tight
    no dizziness
    no chest pain
    no headache, no nausea, no chest pain
    no headache or nausea
    no chest pain, palpitations or fainting
    didn't faint
    did not faint
    I have not fainted
    haven't fainted, haven't been dizzy
    not dizzy
    not dizzy at all
    no palpitations
    never had palpitations
    without any dizziness
    no signs of dizziness or headache
    no vomiting
    I'm not confused
    not short of breath
    no shortness of breath
    not breathless
    no weakness in my legs
    don't have a headache
    isn't chest pain
    chest pain: no
    dizzy? no
    headache: none, nausea: none
    headache free
    I don't feel faint
    zero cramps
    no swelling in my hands
    no swollen hands or headache
    hands not swollen
    legs not weak
    neither dizzy nor sick
    no seizures
    didn't throw up
    didnt vomit
    no more symptoms, no dizzyness
    I don't have any chest pain
    had no palpitations last night
"""

# Everyday messages, figures of speech and the trade's own words: no warning that is sure.
HARMLESS = """
    all good today
    slept well, feeling full
    my heart is in it
    my heart isn't in it today
    put my heart and soul into this prep
    heart rate was 58 this morning
    dying to get on stage
    dying for a pizza
    this cardio is killing me
    passed out asleep at 9
    chest day done
    chest and back looking crisp
    chest pump was insane
    did chest press and flyes
    took my breath away
    that stage was breathtaking
    breathing exercises before bed
    faint lines in my glutes now
    faint striations showing
    not for the faint of heart
    calves are my weak point
    weak points are hamstrings
    weak pump today
    my weakness is chocolate
    sick of chicken
    sick and tired of tilapia
    you look sick mate
    sick pump
    posted a pic, threw up a photo on my story
    confused about the macros
    confused which day is the load
    bit confused by the plan
    back seized up in the car
    seized the day
    blackout curtains helped me sleep
    passing out flyers for the show
    deadlifts felt heavy
    dead tired
    legs are sore from squats
    legs are full and round
    arms look bigger
    hands are cold
    face looks leaner
    knees are a bit sore
    head is clear
    headed to the gym
    heading out for steps
    heard from the promoter
    paint job for the tan tomorrow
    cheat meal was amazing
    chess with my brother
    bread and rice all day
    heat was on all night
    week is going well
    feeling full this week
    weeks of work paid off
    number of steps 12000
    remember to send photos
    bikini fitting went well
    dress fits great
    fitted for my suit
    trained arms and shoulders
    moved the furniture, good workout
    walked the dog, 12k steps
    stood on the scale twice
    ate everything on plan
    drank 4 litres
    water going down easily
    kept everything on track
    sodium steady
    sleep 7 hours
    slept like a baby
    woke up at 5, ready to go
    stomach is flat
    gut is fine
    stomach feels good
    veins popping everywhere
    muscles feel flat
    flat but sharp
    a little watery today
    spilled over a bit I think
    feeling drained of carbs lol
    hungry as ever
    posing practice went great
    can't wait for saturday
    couldn't be happier
    couldn't ask for a better coach
    won't miss a meal
    not good at waiting
    no problems
    nothing to report
    no complaints
    quads are popping
    glutes coming in
    rings on my fingers look silly with this tan
    watch says 9k steps
    up early for the flight
    stand up comedy tonight
    air fryer chicken again
    breath smells of keto
    bananas for potassium
    potatoes are high in potassium
    shaking my protein now
    protein shake went down well
    the runs I did this week were easy
    did my run this morning
    my run was fine
    black coffee only
    tan is going dark
    stage is going to be dark and cold
    pressed the wrong button
    pressure is on now
    under pressure at work
    tight conditioning
    skin is tight
    suit is tight
    shoulders tight from posing
    hamstrings tight
    racing around all day at work
    pounding the pavement, 15k steps
    pounding the steps
    jumping on a call later
    skipped breakfast
    skipped cardio
    numbers look good
    body is tired but fine
    body feels good
    my side pose needs work
    left side looks better than right
    front relaxed and side chest pose
    side chest pose is improving
    arms not growing
    fullness 7, looking crisp
    sharp as ever
    Morning coach! Weight down a touch, sleep was okay, felt a bit hungry at night
    Trained back and biceps, strength still there
    Legs are smoked after yesterday
    legs tired from steps
    Arms are pumped
    Feet hurt from heels
    My knees ache from posing in heels
    Body weight up a bit but looking tighter
    Feels like I'm holding water
    Skin looks thin
    Carbs are going down well, no issues
    Rice cakes and jam all day, living the dream
    Gut is a bit heavy after the sweet potatoes
    a little bloated after dinner
    Was up twice to pee
    Peeing a lot, clear
    Woke at 4 to pee
    Heart rate 52
    resting HR 55
    Resting pulse 61
    HR avg 128 on cardio
    heart rate got to 150 on the stairmaster
    Cardio done, 30 min incline walk, out of breath but good
    sweating a lot on cardio
    My mum is coming to the show
    Can't believe it's 3 days out
    Can't get enough of these rice cakes
    can't move my appointment
    couldn't get to the gym until 8
    couldn't find the scale
    can't find my suit
    hardly hungry
    barely any veg left
    hard to eat all the rice
    struggling to eat all this rice
    difficult to eat that much
    not a big fan of cream of rice
    feel great
    feel strong
    feel ready
    feeling a bit flat but dry
    eyes look sunken a bit
    face is leaner
    hands look veiny
    grip was fine on rows
    lost my lifting straps
    held my poses for 30 seconds
    practiced quarter turns, shaky quads on the most muscular
    most muscular pose is shaking me up
    my coach is the best
    I lost 0.4 since yesterday
    down to 61.2 this morning
    up 400 g
    weight stable
    drank a coffee and 500 ml water
    had 3.4 l of water
    water 4 L split through the day
    drinking on schedule
    salted my meals as planned
    the tan is on
    went for a walk with the dog
    work was stressful
    a bit stressed about travel
    nervous about saturday
    excited
    tired but motivated
    tired
    low energy
    hungry all day
    cravings are bad
    I could eat a horse
    bad night, neighbours were loud
    slept 6.5 h
    slept ok
    only 5 hours but fine
    went to bed early
    took a nap
    hit all macros
    hit my target
    missed 20 g of carbs
    ate 10 g over on carbs
    left out the last meal
    fasted until noon
    where do I send photos?
    what time should I eat tomorrow?
    should I do cardio today?
    is it ok to have gum?
    can I have diet soda
    thank you!
    ok
    yes
    no
    nope
    👍
    💪🔥
    photos sent
    sent you the side chest and front double bi
    chest and shoulders tomorrow
    how is my chest looking?
    upper chest is lagging
    bench pressed 60 for reps
    shoulder is a bit sore
    lower back sore from deadlifts
    hamstrings are wrecked
    glutes sore
    calves tight
    neck stiff from the pillow
    jaw is sharp now lol
    skin feels tight around the abs
    stomach growling
    stomach is empty
    tummy looks flat
    digestion is great
    toilet visit fine
    went to the toilet, normal
    regular as clockwork
    I'm cold all the time
    hands cold, feet cold
    libido zero lol
    mood is good
    mood low today
    bit emotional
    irritable
    brain is slow today but fine
    word is the show has 12 in my class
    my number is 47
    judges like fullness
    floor work done
    posed on the stage floor
    hit the floor running
    black suit arrived
    went down a belt hole
    scale went down
    numbers are going down
    everything went to plan
    everything went smoothly
    stood up all day at work
    walking everywhere this week
    can't stand tilapia any more
    can't stand my ex
    can't walk past a bakery without staring
    my legs look amazing
    left leg looks fuller than right
    arms were weak spot last year but better now
    a stroke of luck, no queue
    threw my shoes out
    threw together a quick meal
    can i train legs twice this week or is that daft
    heaving bag to carry
    sick beats at the gym
    what a sick show
    it's sick how good you look
    going out for dinner
    ran out of rice
    passed my exam
    passed the drug test
    passing time
    blackberries tonight
    lights out at ten
    fell asleep at 9
    falling leaves look nice
    dropped 300 g
    dropped my phone
    end of the day and still going
    dead on target
    life is good
    living on rice
    happy to be here
    breathing through my nose on cardio
    air travel tomorrow
"""

DRUGS = """
    took too many pills
    I overdosed on something
    should I take a diuretic
    thinking about a water pill
    took 40 mg furosemide
    took some furosamide
    spironolactone from a friend
    my mate offered me clen
    clenbuterol
    clenbutarol 40
    took two potassium tablets
    potassium pills?
    can I use insulin with the load
    10 iu insulin
    laxatives last night
    laxitives
    senna tea before bed
    took a laxative to get lighter
    ephedrine before cardio
    water tablets
    dandelion root capsules
    caffeine tablets
    fat burner
    how much hydrochlorothiazide
    diuretcs
    what dose of potassium chloride
    is tren ok this week
    DNP
"""

NO_DRUGS = """
    bananas for potassium
    potassium from potatoes
    is there potassium in spinach
    insulin sensitivity must be great right now
    rice spikes my insulin
    no diuretics
    I don't take any diuretics
    never used laxatives
    natural athlete, drug free
    coffee before cardio
    water is going down fine
    inulin fibre bar
    oats and rice
    salt as planned
    lactose free milk
    lactose gives me gas
"""


def lines(block: str) -> list[str]:
    return [line.strip() for line in block.strip().splitlines()]
