"""What athletes type, invented, by where it has to land. English, as people write it on a phone."""

# ruff: noqa: E501 - a message stays on one line

from __future__ import annotations

#: Said of one's own accord, about nothing that the bot knows: to the coach, in these words.
CHATTER = (
    "my period started", "good luck to all of us tomorrow", "the gym was packed",
    "my mum is driving me to the venue", "I found my posing shoes", "the tan lady confirmed",
    "just got my bikini back from the seamstress", "hotel has no kettle",
    "my flight got moved to the evening", "I'm so nervous", "so excited!!", "posing went really well",
    "my coach at the gym says hi", "my bag is broken", "bought a new scale",
    "my boyfriend made pancakes and I said no", "work is crazy this week", "I have an exam on thursday",
    "left my rice at home", "the oats brand I use is sold out", "forgot my shaker",
    "I'll be on a train until noon", "no internet from 2 to 5", "my dog ate my chicken",
    "I moved my cardio to the evening", "did legs yesterday instead of shoulders",
    "gym closes early today so I train at 4", "I skipped posing yesterday", "posed for 40 minutes",
    "my hair appointment is at three", "nails are done", "number pick up is on friday evening",
    "we booked the airbnb", "the show got a new venue", "they changed the order of classes",
    "two girls dropped out of my class", "I'm the only one in my class lol", "thanks so much",
    "thank you coach", "ok", "got it", "will do", "good morning!", "good night", "see you on saturday",
    "👍", "🙏🙏", "haha", "lol ok", "perfect", "that was fast", "no worries", "never mind",
    "I love this bot", "this bot is annoying", "are you a robot", "I don't understand this",
    "it's so cold here", "rainy day, stayed inside", "walked the dog twice", "my kids are with grandma",
    "I want to win this so badly", "I look so good today", "abs are popping", "my glutes came in",
    "feeling rested and ready", "feeling great honestly", "slept like a baby", "woke up before the alarm",
    "best sleep in weeks", "legs looked amazing in the mirror", "quads are showing new lines",
    "the lighting in my bathroom is bad", "my skin is glowing", "tanning salon ran out of the dark shade",
    "I switched to decaf", "I had my coffee black", "ate the last meal at nine",
    "meal two was an hour late", "had to eat in the car", "the rice was undercooked",
    "I weighed the rice dry this time", "used the other brand of rice cakes",
    "I'm at my parents' for two days", "time zone here is one hour ahead", "my new number is on the way",
    "my sister competes too", "the judges were at our gym", "posing coach wants me to change my front pose",
    "I changed my routine music", "my trunks arrived", "they are too big now", "order of march: me last",
    "can't wait for pizza", "dreaming of burgers", "only three more days", "almost there",
    "please tell Ravi I said hi", "I forgot to tell you something",
)  # fmt: skip

#: Questions that nobody but the coach answers.
QUESTIONS = (
    "can we talk later?", "are you free for a call", "when is our next call?", "should I do cardio today?",
    "do I still train legs tomorrow?", "is posing enough for today", "how long should I pose?",
    "what do you think of my back?", "did you see my pictures", "am I on track?", "do I look ready?",
    "which tan should I book", "how many coats do I need?", "what should I pack",
    "do I need my own number pin?", "can I go to the sauna with my sister's birthday group or not",
    "may I get a massage", "is it ok to fly the day before", "can I bring my own food to the venue",
    "what time should I get up on saturday", "when do I start sipping", "who picks me up",
    "should I shave today or tomorrow", "does the bikini need glue", "is it bad that I slept only 6.5 hours?",
    "what happens after the show", "when do we plan the next one", "should I be worried about the scale",
    "why is my weight not moving", "is it normal to be lighter today", "is this normal?",
    "can you send me the posing video", "which shoes are allowed", "do judges like the hair up",
    "how do I walk to the center", "can my dad come backstage", "how much is the entry",
    "where is the athletes' meeting", "what if I miss the meeting", "do I have to be there at six",
    "can we push my check-in to later tomorrow", "is there a plan b", "what is front loading",
    "how does the water work on the day", "what is spillover", "why no salt cut?",
    "do the others in my class load too", "is 3.5 liters a lot?", "what if I can't finish the food",
    "what did you change for Ana", "can I get my plan as a sheet", "will you be there?",
    "are you proud of me?", "did I do something wrong?", "is anybody reading this?",
    "hello?", "anyone there", "can you hear me", "coach are you there?", "what now coach, left or right tan",
)  # fmt: skip

#: Whether something may be eaten or drunk: to the coach, and the way to the food is shown.
FOOD = (
    "can I eat sushi", "can I have coffee", "can I have a coke zero tonight?", "may I drink sparkling water?",
    "can i have gum", "could I have mustard on it", "can I swap the rice for potatoes?",
    "can I replace oats with cream of rice", "am I allowed to eat tomatoes", "should I eat the skin of the potato",
    "can I still have my protein bar", "can I eat a banana before training", "is ketchup ok?",
    "are rice cakes with jam ok today?", "can I drink my coffee with milk", "can we have wine at dinner?",
    "may I have fruit", "can I add cinnamon", "can i eat bread instead", "could I eat honey backstage",
    "can I have pre workout", "should I drink tea in the evening", "can I eat at a restaurant tonight",
    "can I have pickles", "may I eat egg whites instead of chicken",
)  # fmt: skip

#: What a command serves, by the command.
REQUESTS = {
    "today": (
        "what do I eat today", "what should I eat today?", "what are my targets", "what are my macros today",
        "how many carbs today", "how much water should I drink today?", "my targets please", "today",
        "hi, what do I eat today?", "what is my plan today", "Today's carbs", "how much protein do i eat today",
    ),
    "why": ("why", "why?", "why so many carbs", "why less carbs today", "why did my carbs change", "why that figure"),
    "week": ("what does my week look like", "show me my week", "what's tomorrow", "tomorrow's carbs", "the plan for the week"),
    "help": ("help", "help me", "what can you do", "how does this work", "what do I do now"),
    "checkin": ("I want to change my weight", "change my answer", "can I correct my check-in", "check in", "I made a mistake"),
    "food": ("show me my meals", "meal ideas", "what foods can I eat today", "my shopping list"),
    "stage": ("when am I on stage?", "what time is my class", "my timetable"),
    "settings": ("settings", "change my units", "change my check-in time"),
    "photos": ("show me my photos",),
    "picture": ("show me my chart",),
    "late": ("we're running late", "there is a delay", "I'm late"),
}  # fmt: skip

#: Something is wrong: heard as that, whatever else is open.
COMPLAINTS = (
    "I fainted in the kitchen", "I have chest pain", "my heart keeps fluttering", "threw up five times since midnight",
    "I feel dizzy", "dizzy when I stand up", "I have a headache", "bad headache all day", "I feel sick",
    "nauseous since breakfast", "cramps in my calves all night", "my hands are swollen", "my ankles are swollen",
    "diarrhea since last night", "my stomach hurts badly", "I feel weak", "I can't sleep at all", "I have a fever",
    "my legs are cramping", "I passed out after cardio", "short of breath on the stairs", "I'm confused and shaky",
    "I can't breathe", "heart is racing while I sit", "my vision is blurry", "I have palpitations",
    "bloated and constipated for 4 days", "heartburn all night", "I threw up this morning", "my calves cramp so hard",
    "headache and swollen hands and I feel sick", "I want to kill myself", "i don't want to live anymore",
    "I collapsed at the gym", "seeing double", "I had a seizure", "coughing blood", "my pee is dark brown",
    "haven't peed since yesterday", "I binged and made myself sick last night",
)  # fmt: skip

#: A drug named: refused, and a caution to the coach.
DRUGS = (
    "can I take furosemide tonight?", "thinking about a laxative", "how much potassium before stage",
    "a friend gave me clen", "should I use a diuretic",
)  # fmt: skip

#: A whole morning in one message (before the load, and in it).
CHECK_INS = (
    "60.4 5 3.5", "60,4 5 3,5", "60.4kg 5 3.5l", "60.4 5 3.5 fine",
    "60.4 kg, 5, 3.5 L",
)  # fmt: skip

#: Answers as they are typed, by the question that is open.
ANSWERS = {
    "weight_kg": ("60.4", "60,4", "60.4 kg", "60.4kg", "133 lb"),
    "fullness": ("5", "7", "5/10", " 6 "),
    "water_l": ("3.5", "3,5", "3.5 L", "3500 ml", "3.5 litres"),
    "sharpness": ("4", "3", "4/5"),
    "carb_eaten_g": ("on target", "500", "500 g", "480g"),
    "fine": ("all fine", "All fine", "something's off"),
    "gut": ("fine", "heavy", "Bad"),
    "sleep_h": ("7", "6.5", "7 hours", "skip"),
    "note": ("long day at work", "skip"),
    "sex": ("female", "Female", "male"),
    "diabetes": ("no", "No", "nope", "n"),
    "place": ("London", "Dublin"),
    "which_place": ("Dublin, IE",),
    "carb_g": ("310", "310 g", "310g"),
}  # fmt: skip

#: Once the event is over, the morning after and a week later, by where it has to land.
AFTER = {
    "chatter": (
        "trophy is on the shelf", "third place!!", "had pizza with everybody last night", "what a day, thank you for everything",
        "the pictures from yesterday are online", "scale says 63.5, haha", "when does the next season start", "back at work today",
        "tan is all over the sheets", "took the week off training", "feels strange without a plan",
    ),
    "food": ("can I eat normally again", "can I have a burger today", "should I still weigh my rice"),
    "complaint": (
        "my ankles are so swollen my shoes don't fit", "legs are like balloons since the show", "can't stop eating since the show",
        "binged all night again", "I feel empty now that it is over, can't stop crying", "my chest hurts since the show",
        "dizzy every time I get up", "no pee at all since yesterday noon", "threw up the buffet three times",
    ),
}  # fmt: skip
