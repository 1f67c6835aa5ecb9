"""Mornings as tired people type and speak them, invented, with what each of them means.

Who writes: last weighed 72.4 kg; 3.5 L were to be drunk. A row: language, units (kg and litres, `us` for
pounds and US fluid ounces, `st` for stones and litres), what was typed, weight in kg, fullness, water in L
("none" for what was said to be unknown, "-" for what was not told). `~` before a value: it may be asked
about first. What is not marked so is read without a question.
"""

# ruff: noqa: E501 - a message stays on one line

MORNINGS = r"""
en | kg | 72.4 / 6 / 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4kg 6 3.5l | 72.4 | 6 | 3.5
en | kg | morning! 72.4 on the scale, feeling like a 6, drank 3 and a half litres | 72.4 | 6 | 3.5
en | kg | seventy two point four, six, three point five | 72.4 | 6 | 3.5
en | kg | seventy two four, six out of ten, three and a half liters of water | 72.4 | 6 | 3.5
en | kg | 7️⃣2️⃣.4️⃣ 6️⃣ 3️⃣.5️⃣ | 72.4 | 6 | 3.5
en | kg | wt 72.4\nfull 6\nh2o 3.5 | 72.4 | 6 | 3.5
en | kg | WT: 72.4 | FULL: 6 | WATER: 3.5 | 72.4 | 6 | 3.5
en | kg | weight=72.4, fullness=6, water=3.5 | 72.4 | 6 | 3.5
en | kg | weight (72.4) fullness (6) water (3.5) | 72.4 | 6 | 3.5
en | kg | 1. 72.4\n2. 6\n3. 3.5 | 72.4 | 6 | 3.5
en | kg | 1) 72.4 2) 6 3) 3.5 | 72.4 | 6 | 3.5
en | kg | - 72.4\n- 6\n- 3.5 | 72.4 | 6 | 3.5
en | kg | * weight: 72.4\n* fullness: 6/10\n* water: 3.5L | 72.4 | 6 | 3.5
en | kg | 72.4, 6/10, 3500ml | 72.4 | 6 | 3.5
en | kg | 72.4, 6, 3500 ml | 72.4 | 6 | 3.5
en | kg | 72.4 6 3500 | 72.4 | 6 | ~3.5
en | kg | 3.5 litres, full 6, 72.4 kg | 72.4 | 6 | 3.5
en | kg | fullness six weight 72.4 water 3.5 | 72.4 | 6 | 3.5
en | kg | same weight as yesterday, full 6, water 3.5 | 72.4 | 6 | 3.5
en | kg | weight same as yesterday, fullness 6, 3.5 L | 72.4 | 6 | 3.5
en | kg | same as yesterday 6 3.5 | 72.4 | 6 | 3.5
en | kg | weight unchanged 6 3.5 | 72.4 | 6 | 3.5
en | kg | still 72.4, still a 6, 3.5 in | 72.4 | 6 | 3.5
en | kg | 72.4 again. 6. 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4. 6. 3.5. | 72.4 | 6 | 3.5
en | kg | 72,4 6 3,5 | 72.4 | 6 | 3.5
en | kg | 72,4; 6; 3,5 | 72.4 | 6 | 3.5
en | kg | 72.4 kilos this morning, fullness is about a 6, water was 3.5 | 72.4 | 6 | 3.5
en | kg | about 72.4, 6ish, roughly 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4 6-7 3.5 | 72.4 | ~6.5 | 3.5
en | kg | 72.4, 6 or 7, 3.5 | 72.4 | ~6.5 | 3.5
en | kg | 72.4, between 6 and 7, 3.5 | 72.4 | ~6.5 | 3.5
en | kg | 72.4, somewhere between 6 and 7, 3.5 | 72.4 | ~6.5 | 3.5
en | kg | 72.4 somewhere 6 or 7 3.5 | 72.4 | ~6.5 | 3.5
en | kg | 72.4, 6, 3-4 l | 72.4 | 6 | ~3.5
en | kg | 72.4, 6, between 3 and 4 litres | 72.4 | 6 | ~3.5
en | kg | 72.4 (no wait 72.6) 6 3.5 | 72.6 | 6 | 3.5
en | kg | 72.4 sorry 72.6, 6, 3.5 | 72.6 | 6 | 3.5
en | kg | 72.4, 5, sorry 6, 3.5 | 72.4 | ~6 | 3.5
en | kg | 72.4 6 3 actually 3.5 | 72.4 | 6 | ~3.5
en | kg | 72.4 6 3.5 *72.6 | ~72.6 | 6 | 3.5
en | kg | scale says 72.4, I'd give myself a 6, got 3.5 L down | 72.4 | 6 | 3.5
en | kg | scale 72.4 look 6 drank 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4. look: 6. fluids: 3.5 | 72.4 | 6 | 3.5
en | kg | Weight 72.4kg, Fullness 6, Water 3.5L. Slept well! | 72.4 | 6 | 3.5
en | kg | 72.4 6 3.5 slept 7h | 72.4 | 6 | 3.5
en | kg | 72.4 6 3.5 slept like a log | 72.4 | 6 | 3.5
en | kg | woke at 5:30, 72.4, 6, 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4 after the toilet, 6, 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4 before bathroom, 6, 3.5 | ~72.4 | ~6 | ~3.5
en | kg | 72.9 before, 72.4 after bathroom. 6. 3.5 | 72.4 | 6 | 3.5
en | kg | W72.4 F6 D3.5 | 72.4 | ~6 | ~3.5
en | kg | w 72.4 f 6 w 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4w 6f 3.5w | ~72.4 | ~6 | ~3.5
en | kg | bw 72.4 fullness lvl 6 water intake 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4 kg, six, three and a half | 72.4 | 6 | 3.5
en | kg | 72 and a half, 6, 3 and a half | 72.5 | 6 | 3.5
en | kg | 72½ 6 3½ | 72.5 | 6 | 3.5
en | kg | I'm 72.4, I'm a 6, I drank 3.5 | 72.4 | 6 | 3.5
en | kg | im at 72.4 and fullness maybe a 6 and i had 3.5 litres | 72.4 | 6 | 3.5
en | kg | down to 72.4, 6, 3.5 | 72.4 | 6 | 3.5
en | kg | down 200 g to 72.4. fullness 6. water 3.5 | 72.4 | 6 | 3.5
en | kg | up 0.3 to 72.7, 6, 3.5 | 72.7 | 6 | 3.5
en | kg | 72.4 (-0.3) 6 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4 (yesterday 72.7), 6, 3.5 | 72.4 | 6 | 3.5
en | kg | no scale here. 6. 3.5 | none | 6 | 3.5
en | kg | no scale, 6, 3.5 | none | 6 | 3.5
en | kg | hotel no scale, fullness 6, drank 3.5 litres | none | 6 | 3.5
en | kg | forgot to weigh, 6 and 3.5 | none | 6 | 3.5
en | kg | 72.4 and 6, didn't track water | 72.4 | 6 | none
en | kg | 72.4 6 water: ? | 72.4 | 6 | -
en | kg | 72.4 6 ? | 72.4 | 6 | -
en | kg | 72.4 ? 3.5 | 72.4 | - | ~3.5
en | kg | 72.4 x 3.5 | ~72.4 | - | ~3.5
en | kg | 72.4 - 3.5 | 72.4 | - | ~3.5
en | kg | 72.4, skip, 3.5 | 72.4 | - | 3.5
en | kg | just the weight: 72.4 | 72.4 | - | -
en | kg | 72.4 | 72.4 | - | -
en | kg | water 3.5 | - | - | 3.5
en | kg | full 6 | - | 6 | -
en | kg | fullness: six. water: three litres. | - | 6 | 3
en | kg | 72.4 6 3.5 no training yesterday | 72.4 | 6 | 3.5
en | kg | 72.4 6 3.5 did all my cardio | 72.4 | 6 | 3.5
en | kg | 72.4 6 3.5 all good | 72.4 | 6 | 3.5
en | kg | all good 72.4 6 3.5 | 72.4 | 6 | 3.5
en | kg | Good morning coach :) 72.4 | 6 | 3.5 have a nice day | 72.4 | 6 | 3.5
en | kg | gm ☀️ 72.4 / 6 / 3.5 💪 | 72.4 | 6 | 3.5
en | kg | "72.4, 6, 3.5" | 72.4 | 6 | 3.5
en | kg | '72.4 6 3.5' | 72.4 | 6 | 3.5
en | kg | check in: 72.4/6/3.5 | 72.4 | 6 | 3.5
en | kg | checkin 72.4-6-3.5 | 72.4 | 6 | 3.5
en | kg | #checkin 72.4 6 3.5 | 72.4 | 6 | 3.5
en | kg | day 3: 72.4 6 3.5 | 72.4 | 6 | 3.5
en | kg | 5 days out: 72.4, 6, 3.5 | 72.4 | 6 | 3.5
en | kg | tuesday 72.4 6 3.5 | 72.4 | 6 | 3.5
en | kg | 4/5: 72.4, 6, 3.5 | 72.4 | 6 | 3.5
en | kg | 07:10 72.4 6 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4kgs, fullness 6 out of 10, water 3,5 ltr | 72.4 | 6 | 3.5
en | kg | 72.4kg fullness6 water3.5 | 72.4 | 6 | 3.5
en | kg | fullness 6/10 water 3.5/3.5 | ~none | 6 | 3.5
en | kg | 72.4, six!, 3.5 litres!! | 72.4 | 6 | 3.5
en | kg | 72.4 flat as a pancake 3.5 | 72.4 | ~1 | 3.5
en | kg | 72.4, pretty full, 3.5l | 72.4 | ~7 | 3.5
en | kg | weighed in at 72.4 this morning fullness a solid six and three and a half liters of water yesterday | 72.4 | 6 | 3.5
en | kg | 72.4 a solid six 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4 easy 6 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4 strong 6 3.5 | 72.4 | 6 | 3.5
en | kg | 159.6 lb, 6, 3.5 l | 72.39 | 6 | 3.5
en | kg | 11 st 5.6 lb, 6, 3.5 | 72.39 | 6 | 3.5
en | kg | 72.4 6 118oz | 72.4 | 6 | ~3.49
en | us | 159.6 6 118 | 72.39 | 6 | 3.49
en | us | 159.6 lbs / 6 / 118 oz | 72.39 | 6 | 3.49
en | us | 159.6# 6 118oz | 72.39 | 6 | 3.49
en | us | 159 and a half, 6, 118 oz | 72.35 | 6 | 3.49
en | us | one fifty nine point six, six, one eighteen ounces | 72.39 | 6 | 3.49
en | us | 159.6 6 a gallon | 72.39 | 6 | 3.785
en | us | 159.6 6 1 gallon | 72.39 | 6 | 3.785
en | us | 159.6 6 one gallon | 72.39 | 6 | 3.785
en | us | 159.6 6 just under a gallon | 72.39 | 6 | ~3.785
en | us | 159.6 6 3/4 gallon | 72.39 | 6 | 2.84
en | us | 159.6 6 half a gallon | 72.39 | 6 | 1.89
en | us | 159.6, 6, 3.5 liters | 72.39 | 6 | 3.5
en | us | 159.6lb fullness 6 120 oz water | 72.39 | 6 | 3.55
en | us | 159.6 6 7 bottles | 72.39 | 6 | ~
en | us | 159.6 - 6 - 15 cups | 72.39 | 6 | ~3.55
en | us | 159.6 6 3.5L | 72.39 | 6 | 3.5
en | us | 72.4 kg 6 3.5 L | 72.4 | 6 | 3.5
en | st | 11 5 6 3.5 | 72.12 | 6 | 3.5
en | st | 11st 5, 6, 3.5 | 72.12 | 6 | 3.5
en | st | 11 stone 5 and a half, 6, 3.5 | 72.35 | 6 | 3.5
en | kg | 72.4 6 3.5 dont feel great but ok | 72.4 | 6 | 3.5
en | kg | 72.4\n\n6\n\n3.5 | 72.4 | 6 | 3.5
en | kg | weight - 72.4\nfullness - 6\nwater - 3.5 | 72.4 | 6 | 3.5
en | kg | weight -> 72.4, fullness -> 6, water -> 3.5 | 72.4 | 6 | 3.5
en | kg | weight..72.4 fullness..6 water..3.5 | 72.4 | 6 | 3.5
en | kg | 72.4...6...3.5 | 72.4 | 6 | 3.5
en | kg | 72.4 and six and three point five | 72.4 | 6 | 3.5
en | kg | seventytwo point four, six, three and a half | 72.4 | 6 | 3.5
en | kg | weight is seventy-two point four kilos | 72.4 | - | -
en | kg | Weight seventy two point four Fullness six Water three point five | 72.4 | 6 | 3.5
en | kg | 7 2 . 4 6 3.5 | ~72.4 | ~6 | ~3.5
en | kg | 724 6 35 | ~72.4 | 6 | ~3.5
en | kg | 72.4 6 35 | 72.4 | 6 | ~3.5
en | kg | 72:4 6 3:5 | ~72.4 | ~6 | ~3.5
en | kg | 72.40kg 6.0 3.50 | 72.4 | 6 | 3.5
en | kg | 72.4 6.5 3.5 | 72.4 | ~6.5 | 3.5
en | kg | 72.4 6+ 3.5 | 72.4 | ~6 | 3.5
en | kg | 72.4 6- 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4 +6 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4 6.  3.5 (two coffees incl) | 72.4 | 6 | 3.5
en | kg | 72.4 6 3.5 incl. 2 coffees | 72.4 | 6 | 3.5
en | kg | 72.4 6 3l water 0.5l coffee | 72.4 | 6 | ~3.5
en | kg | 72.4 6 3 + 0.5 | 72.4 | 6 | 3.5
en | kg | 72.4 6 2x1.75 | 72.4 | 6 | 3.5
en | kg | 72.4 6 2 x 1.75 l | 72.4 | 6 | 3.5
en | kg | all 3.5 l drunk, 72.4 kg, fullness 6 | 72.4 | 6 | 3.5
en | kg | water hit 3.5, weight 72.4, fullness 6 | 72.4 | 6 | 3.5
en | kg | hit my water, 72.4, 6 | 72.4 | 6 | -
en | kg | 72.4, 6, water on target | 72.4 | 6 | -
en | kg | 72.4 6 water as planned | 72.4 | 6 | -
de | kg | 72,4 / 6 / 3,5 | 72.4 | 6 | 3.5
de | kg | 72,4kg 6 3,5l | 72.4 | 6 | 3.5
de | kg | 72,4 6 3,5 | 72.4 | 6 | 3.5
de | kg | 72,4, 6, 3,5 | 72.4 | 6 | 3.5
de | kg | 72.4 6 3.5 | 72.4 | 6 | 3.5
de | kg | moin, 72,4 auf der waage, gefühlt ne 6, dreieinhalb liter getrunken | 72.4 | 6 | 3.5
de | kg | zweiundsiebzig komma vier, sechs, drei komma fünf | 72.4 | 6 | 3.5
de | kg | zweiundsiebzig vier, sechs von zehn, dreieinhalb liter | 72.4 | 6 | 3.5
de | kg | Gewicht: 72,4\nFülle: 6\nWasser: 3,5 | 72.4 | 6 | 3.5
de | kg | gew 72,4 voll 6 was 3,5 | 72.4 | 6 | 3.5
de | kg | Gew. 72,4 / Fülle 6 / Wa 3,5 | 72.4 | 6 | 3.5
de | kg | G 72,4 V 6 W 3,5 | 72.4 | ~6 | 3.5
de | kg | gewicht wie gestern, voll 6, 3,5 liter | 72.4 | 6 | 3.5
de | kg | wie gestern, 6, 3,5 | 72.4 | 6 | 3.5
de | kg | gleiches gewicht wie gestern, fülle 6, wasser 3,5 | 72.4 | 6 | 3.5
de | kg | gewicht unverändert, 6, 3,5 | 72.4 | 6 | 3.5
de | kg | immer noch 72,4, voll 6, 3,5 | 72.4 | 6 | 3.5
de | kg | wieder 72,4. 6. 3,5 | 72.4 | 6 | 3.5
de | kg | 72,4, ne glatte sechs, 3,5 | 72.4 | 6 | 3.5
de | kg | 72,4 ne glatte sechs 3,5 | 72.4 | 6 | 3.5
de | kg | 72,4 ne gute 6 3,5 | 72.4 | 6 | 3.5
de | kg | 72,4, so ne 6, 3,5 | 72.4 | 6 | 3.5
de | kg | 72,4 ne sechs und dreieinhalb | 72.4 | 6 | 3.5
de | kg | 72,4 eine starke 6, 3,5 L | 72.4 | 6 | 3.5
de | kg | 72,4 zwischen 6 und 7 3,5 | 72.4 | ~6.5 | 3.5
de | kg | 72,4, irgendwo zwischen 6 und 7, 3,5 | 72.4 | ~6.5 | 3.5
de | kg | 72,4, 6 bis 7, 3,5 | 72.4 | ~6.5 | 3.5
de | kg | 72,4 6-7 3,5 | 72.4 | ~6.5 | 3.5
de | kg | 72,4 irgendwas um die 6, 3,5 | 72.4 | 6 | 3.5
de | kg | 72,4 6 3 bis 4 liter | 72.4 | 6 | ~3.5
de | kg | 72,4 äh 72,6, 6, 3,5 | 72.6 | 6 | 3.5
de | kg | 72,4 nein 72,6, voll 6, 3,5 | 72.6 | 6 | 3.5
de | kg | 72,4 quatsch 72,6 6 3,5 | 72.6 | 6 | 3.5
de | kg | 72,4, 5, sorry 6, 3,5 | 72.4 | ~6 | 3.5
de | kg | waage sagt 72,4, würd mir ne 6 geben, 3,5 liter geschafft | 72.4 | 6 | 3.5
de | kg | 72,4 nach klo, 6, 3,5 | 72.4 | 6 | 3.5
de | kg | 72,9 vor klo, 72,4 danach. 6. 3,5 | ~72.4 | ~6 | ~3.5
de | kg | zweiundsiebzigeinhalb, sechs, dreieinhalb | 72.5 | 6 | 3.5
de | kg | 72 einhalb, 6, 3 einhalb | 72.5 | 6 | 3.5
de | kg | 72½, 6, 3½ | 72.5 | 6 | 3.5
de | kg | bin bei 72,4, fülle vielleicht 6, hab 3,5 getrunken | 72.4 | 6 | 3.5
de | kg | bin auf 72,4 runter, 6, 3,5 | 72.4 | 6 | 3.5
de | kg | 200 g runter auf 72,4. fülle 6. wasser 3,5 | 72.4 | 6 | 3.5
de | kg | 72,4 (gestern 72,7), 6, 3,5 | 72.4 | 6 | 3.5
de | kg | keine waage hier. 6. 3,5 | none | 6 | 3.5
de | kg | hotel ohne waage, fülle 6, 3,5 liter getrunken | none | 6 | 3.5
de | kg | wiegen vergessen, 6 und 3,5 | none | 6 | 3.5
de | kg | 72,4 und 6, wasser nicht gezählt | 72.4 | 6 | none
de | kg | 72,4 6 wasser keine ahnung | 72.4 | 6 | none
de | kg | 72,4 6 ? | 72.4 | 6 | -
de | kg | nur gewicht: 72,4 | 72.4 | - | -
de | kg | 72,4 | 72.4 | - | -
de | kg | wasser 3,5 | - | - | 3.5
de | kg | voll 6 | - | 6 | -
de | kg | 72,4 6 3,5 gut geschlafen | 72.4 | 6 | 3.5
de | kg | 72,4 6 3,5 7h geschlafen | 72.4 | 6 | 3.5
de | kg | um 5:30 wach, 72,4, 6, 3,5 | 72.4 | 6 | 3.5
de | kg | 5 tage noch: 72,4, 6, 3,5 | 72.4 | 6 | 3.5
de | kg | Di 72,4 6 3,5 | 72.4 | 6 | 3.5
de | kg | Tag 3: 72,4 6 3,5 | 72.4 | 6 | 3.5
de | kg | guten morgen coach 72,4/6/3,5 lg | 72.4 | 6 | 3.5
de | kg | 72,4 platt wie ne flunder 3,5 | 72.4 | ~1 | ~3.5
de | kg | 72,4, ziemlich voll, 3,5l | 72.4 | ~7 | 3.5
de | kg | 72,4kg, fülle 6 von 10, 3,5 ltr wasser | 72.4 | 6 | 3.5
de | kg | 72,4 kg - 6 - 3,5 l | 72.4 | 6 | 3.5
de | kg | wasser 3,5 gewicht 72,4 voll 6 | 72.4 | 6 | 3.5
de | kg | sechs, 72,4, dreieinhalb liter | 72.4 | 6 | 3.5
de | kg | 72 komma 4, 6, 3 komma 5 | 72.4 | 6 | 3.5
de | kg | 72 kilo 400, 6, 3,5 | 72.4 | 6 | 3.5
de | kg | drei liter fünf, voll sechs, zweiundsiebzig vier | ~72.4 | 6 | 3.5
de | kg | Gewicht zweiundsiebzig Komma vier Fülle sechs Wasser drei Komma fünf Liter | 72.4 | 6 | 3.5
de | kg | 72,4 - 6/10 - 3500 ml | 72.4 | 6 | 3.5
de | kg | 72,4 6 3500 | 72.4 | 6 | ~3.5
de | kg | 72,4 6,5 3,5 | 72.4 | ~6.5 | 3.5
de | kg | 72,4 6+ 3,5 | 72.4 | ~6 | 3.5
de | kg | 72,4 6 dreieinhalb | 72.4 | 6 | 3.5
de | kg | 72,4 sechs dreieinhalb | 72.4 | 6 | 3.5
de | kg | 72,4 6 3,5 inkl. kaffee | 72.4 | 6 | 3.5
de | kg | 72,4 6 3 l wasser 0,5 l kaffee | 72.4 | 6 | ~3.5
de | kg | 72,4 6 knapp 3,5 | 72.4 | 6 | 3.5
de | kg | 72,4 6 gut 3,5 liter | 72.4 | 6 | 3.5
de | kg | 72,4. fülle: 6. getrunken: 3,5 | 72.4 | 6 | 3.5
de | kg | „72,4 6 3,5“ | 72.4 | 6 | 3.5
de | kg | 72,4; 6; 3,5 | 72.4 | 6 | 3.5
de | kg | 72,4 | 6 | 3,5 | 72.4 | 6 | 3.5
de | kg | alles gut, 72,4 6 3,5 | 72.4 | 6 | 3.5
de | kg | 72,4 6 3,5 gestern kein training | 72.4 | 6 | 3.5
de | kg | heute 72,4, voll: 6, wasser gestern 3,5 | 72.4 | 6 | 3.5
de | kg | gewogen 72,4 optik 6 trinken 3,5 | 72.4 | 6 | 3.5
de | kg | 72,4 optik ne 6 trinkmenge 3,5 | 72.4 | 6 | 3.5
de | kg | 72,4 6/10 3,5/3,5 | ~72.4 | ~6 | ~3.5
de | kg | 1. 72,4\n2. 6\n3. 3,5 | 72.4 | 6 | 3.5
de | kg | a) 72,4 b) 6 c) 3,5 | 72.4 | ~6 | ~3.5
de | kg | 7️⃣2️⃣,4️⃣ 6️⃣ 3️⃣,5️⃣ | 72.4 | 6 | 3.5
de | kg | siebzig null, fünf, drei | 70 | 5 | 3
de | kg | 72,4 6 3,5 ohne frühstück gewogen | 72.4 | 6 | 3.5
de | kg | nüchtern 72,4 6 3,5 | 72.4 | 6 | 3.5
de | kg | nackt 72,4, 6, 3,5 | 72.4 | 6 | 3.5
en | kg | fasted 72.4 6 3.5 | 72.4 | 6 | 3.5
en | kg | naked 72.4, 6, 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4 with clothes, 6, 3.5 | 72.4 | 6 | 3.5
en | kg | AM weight 72.4 fullness 6 water yesterday 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4 AM, 6, 3.5 | 72.4 | 6 | 3.5
en | kg | ⚖️ 72.4 💪 6 💧 3.5 | 72.4 | 6 | 3.5
en | kg | ⚖️72.4 💪6 💧3.5 | 72.4 | 6 | 3.5
en | kg | 72.4 ✅ 6 ✅ 3.5 ✅ | 72.4 | 6 | 3.5
en | kg | 72 .4 6 3 .5 | ~72.4 | ~6 | ~3.5
en | kg | 72..4 6 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4,, 6,, 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4//6//3.5 | 72.4 | 6 | 3.5
en | kg | 72.4 - fullness 6 - h20 3.5 | 72.4 | 6 | 3.5
en | kg | wgt 72.4 ful 6 wtr 3.5 | 72.4 | 6 | 3.5
en | kg | wght: 72.4 fulness: 6 watr: 3.5 | 72.4 | 6 | 3.5
en | kg | kg: 72.4, /10: 6, L: 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4kg6/10 3.5l | ~72.4 | ~6 | 3.5
en | kg | weight: 72.4 kg (159.6 lb), fullness 6, water 3.5 L (118 oz) | 72.4 | 6 | 3.5
en | kg | 72.4 6 outta 10 3.5 litres | 72.4 | 6 | 3.5
en | kg | six point five ish, no six. 72.4. 3.5 | 72.4 | 6 | 3.5
en | kg | fullness seven no six, weight 72.4, water 3.5 | 72.4 | ~6 | 3.5
en | kg | seventy two point four kilos fullness is six and water three point five litres | 72.4 | 6 | 3.5
en | kg | weight seventy-two four fullness six water three five | ~72.4 | ~6 | ~3.5
en | kg | I drank like three and a half litres, weighed seventy-two point four, fullness i guess six | 72.4 | 6 | 3.5
en | kg | ok so weight is 72.4 and then fullness i'd say 6 and water yesterday was 3.5 litres | 72.4 | 6 | 3.5
en | kg | so this morning I was 72.4, fullness six, and I drank three and a half litres yesterday | 72.4 | 6 | 3.5
en | kg | morning it's 72.4 and a 6 and about 3.5 of water | 72.4 | 6 | 3.5
en | kg | scale said 72.4 this am. prob a 6. water was 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4 on the dot, 6 for fullness, 3.5 for water | 72.4 | 6 | 3.5
en | kg | 6 for fullness, 72.4 for weight, 3.5 for water | 72.4 | 6 | 3.5
en | kg | 6 full 72.4 weight 3.5 water | 72.4 | 6 | 3.5
en | kg | 72.4 weight, 6 fullness, 3.5 water | 72.4 | 6 | 3.5
en | kg | 72.4 weight 6 fullness 3.5 water | 72.4 | 6 | 3.5
en | kg | weight this morning 72.4, fullness this morning 6, water yesterday 3.5 | 72.4 | 6 | 3.5
en | kg | weight today: 72.4. fullness today: 6. water yesterday: 3.5. | 72.4 | 6 | 3.5
en | kg | Weight:\n72.4\nFullness:\n6\nWater:\n3.5 | 72.4 | 6 | 3.5
en | kg | Weight\n72.4\nFullness\n6\nWater\n3.5 | 72.4 | 6 | 3.5
en | kg | 72.4\n6/10\n3.5 L\n\nall good here | 72.4 | 6 | 3.5
en | kg | hey coach,\n\n72.4\n6\n3.5\n\nx | 72.4 | 6 | 3.5
en | kg | Here's my check in: weight 72.4, fullness 6, water 3.5. Have a good one! | 72.4 | 6 | 3.5
en | kg | check-in tuesday: 72.4, 6, 3.5 | 72.4 | 6 | 3.5
en | kg | morning numbers: 72.4 - 6 - 3.5 | 72.4 | 6 | 3.5
en | kg | numbers: 72.4 6 3.5 | 72.4 | 6 | 3.5
en | kg | stats: 72.4, 6, 3.5 | 72.4 | 6 | 3.5
en | kg | today's: 72.4/6/3.5 | 72.4 | 6 | 3.5
en | kg | today 72.4 6 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4 today, 6, 3.5 yesterday | 72.4 | 6 | 3.5
en | kg | lost 300g, 72.4, 6, 3.5 | 72.4 | 6 | 3.5
en | kg | down 300g, full 6, water 3.5 | ~72.1 | 6 | 3.5
en | kg | 0.3 down, 6, 3.5 | ~72.1 | ~6 | ~3.5
en | kg | 72.4 (down .3), 6, 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4 (up a bit), 6, 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4, -0.3 from yesterday, 6, 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4 vs 72.7 yesterday, 6, 3.5 | ~72.4 | ~6 | ~3.5
en | kg | 72.7 -> 72.4, 6, 3.5 | ~72.4 | ~6 | ~3.5
en | kg | 72.4 twice, 6, 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4 I think, 6, 3.5ish | 72.4 | 6 | 3.5
en | kg | 72.4?, 6, 3.5 | ~72.4 | ~6 | ~3.5
en | kg | 72.4 6 3.5 ? | 72.4 | 6 | 3.5
en | kg | 72.4 6 3.5 ok? | ~72.4 | ~6 | ~3.5
en | kg | 72.4, 6, close to 3.5 litres | 72.4 | 6 | ~3.5
en | kg | 72.4, 6, a bit over 3.5 litres | 72.4 | 6 | ~3.5
en | kg | 72.4, 6, just shy of 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4, 6, 3.5 litres give or take | 72.4 | 6 | 3.5
en | kg | 72.4, 6, only 3 litres | 72.4 | 6 | 3
en | kg | 72.4, 6, only managed 3 litres | 72.4 | 6 | 3
en | kg | 72.4, full 6, only got 3 litres in | 72.4 | 6 | 3
en | kg | 72.4, full 6, 3 litres water plus 2 coffees | 72.4 | 6 | 3
en | kg | 72.4 6 3.5 incl coffee | 72.4 | 6 | 3.5
en | kg | 72.4, 6, 3.5 liters with electrolytes | 72.4 | 6 | 3.5
en | kg | 72.4, 6, three and a half | 72.4 | 6 | 3.5
en | kg | 72.4, 6, three | 72.4 | 6 | 3
en | kg | 72.4, 6, 3,5 | 72.4 | 6 | 3.5
en | kg | 72.4 5.5 3.5 | 72.4 | ~5.5 | 3.5
en | kg | 72.4 6/7 3.5 | 72.4 | ~6.5 | 3.5
en | kg | 72.4 6-ish 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4 6ish 3.5ish | 72.4 | 6 | 3.5
en | kg | 72.4kg, fuller than yesterday so 6, 3.5L | 72.4 | ~6 | 3.5
en | kg | 72.4, flatter today: 4, 3.5 | 72.4 | 4 | 3.5
en | kg | 72.4 flat 3 3.5 | 72.4 | 3 | 3.5
en | kg | 72.4, pretty flat (3), 3.5 | 72.4 | 3 | 3.5
en | kg | 72.4, very full 8, 3.5 | 72.4 | 8 | 3.5
en | kg | 72.4, fullness: flat, 3, 3.5 | 72.4 | 3 | 3.5
en | kg | forgot the scale, 6, 3.5 | none | 6 | 3.5
en | kg | no access to scales, fullness 6, water 3.5 | none | 6 | 3.5
en | kg | n/a, 6, 3.5 | none | 6 | 3.5
en | kg | na 6 3.5 | none | 6 | 3.5
en | kg | -, 6, 3.5 | ~none | ~6 | ~3.5
en | kg | weight n/a fullness 6 water 3.5 | none | 6 | 3.5
en | kg | weight: - fullness: 6 water: 3.5 | ~none | 6 | 3.5
en | kg | weight tbc, fullness 6, water 3.5 | ~ | 6 | 3.5
en | kg | didn't weigh in, 6, 3.5 | none | 6 | 3.5
en | kg | 72.4 6 no idea | 72.4 | 6 | ~none
en | kg | 72.4, 6, lost count of the water | 72.4 | 6 | ~none
en | kg | 72.4, 6, water same as always | 72.4 | 6 | ~
en | kg | 72.4, 6, usual water | 72.4 | 6 | ~
en | kg | 72.4, same fullness, 3.5 | 72.4 | ~ | ~3.5
en | kg | 72.4, fullness same as yesterday, 3.5 | 72.4 | ~ | ~3.5
en | us | 159.6, 6, gallon | 72.39 | 6 | 3.785
en | us | 159.6/6/1gal | 72.39 | 6 | 3.785
en | us | 159.6, 6, 1 gal 20 oz | 72.39 | 6 | ~4.38
en | us | 159.6, 6, gallon and a half | 72.39 | 6 | 5.68
en | us | 159.6, 6, 1.5 gallons | 72.39 | 6 | 5.68
en | us | 159.6, 6, 4 quarts | 72.39 | 6 | 3.785
en | us | 159.6, 6, 12 cups | 72.39 | 6 | ~2.84
en | us | 159.6, 6, 3 x 40oz | 72.39 | 6 | 3.55
en | us | 159.6, 6, 3 40oz bottles | 72.39 | 6 | ~3.55
en | us | 159.6, 6, 120 ounces | 72.39 | 6 | 3.55
en | us | 159.6, 6, 120 fl oz | 72.39 | 6 | 3.55
en | us | 159.6, 6, 120oz water | 72.39 | 6 | 3.55
en | us | 159 6 118 | 72.12 | 6 | 3.49
en | us | 159.6 6 118 all good | 72.39 | 6 | 3.49
en | us | 159.6 pounds, six out of ten, a hundred and eighteen ounces | 72.39 | 6 | 3.49
en | us | one fifty nine and a half pounds, six, hundred twenty ounces | 72.35 | 6 | 3.55
en | us | one hundred fifty nine point six fullness six water one eighteen | 72.39 | 6 | 3.49
en | us | 159.6lbs 6 118ozs | 72.39 | 6 | 3.49
en | us | weight 159.6 / full 6 / water 118oz | 72.39 | 6 | 3.49
en | us | 159.6, fullness 6, hit my gallon | 72.39 | 6 | 3.785
en | us | 159.6, fullness 6, one gallon of water | 72.39 | 6 | 3.785
en | us | 159.6, fullness 6, 1 gallon down | 72.39 | 6 | 3.785
en | us | 72.4kg, 6, 118 oz | 72.4 | 6 | 3.49
en | us | 159.6 (72.4kg) 6 118 | ~72.39 | 6 | 3.49
en | st | 11st 5lb, 6, 3.5 | 72.12 | 6 | 3.5
en | st | 11st5 6 3.5 | 72.12 | 6 | 3.5
en | st | 11 5.5 6 3.5 | 72.35 | 6 | 3.5
en | st | 11st 5lbs fullness 6 water 3.5l | 72.12 | 6 | 3.5
en | st | eleven stone five, six, three and a half litres | 72.12 | 6 | 3.5
en | st | 72.4kg 6 3.5 | 72.4 | 6 | 3.5
de | kg | ⚖️ 72,4 💪 6 💧 3,5 | 72.4 | 6 | 3.5
de | kg | 72,4 ✅ 6 ✅ 3,5 ✅ | 72.4 | 6 | 3.5
de | kg | gew: 72,4 fü: 6 wa: 3,5 | 72.4 | 6 | 3.5
de | kg | gewcht 72,4 fülle 6 waser 3,5 | 72.4 | 6 | 3.5
de | kg | KG 72,4, voll 6, L 3,5 | 72.4 | 6 | 3.5
de | kg | 72,4 kilo, sechs von zehn, dreieinhalb liter | 72.4 | 6 | 3.5
de | kg | 72 komma vier kilo voll sechs wasser drei komma fünf liter | 72.4 | 6 | 3.5
de | kg | also gewicht ist 72,4 und fülle würd ich sagen 6 und wasser gestern 3,5 liter | 72.4 | 6 | 3.5
de | kg | heute morgen hatte ich 72,4, fülle sechs und gestern hab ich dreieinhalb liter getrunken | 72.4 | 6 | 3.5
de | kg | moin hab 72,4 ne 6 und so 3,5 wasser | 72.4 | 6 | 3.5
de | kg | 72,4 gewicht, 6 fülle, 3,5 wasser | 72.4 | 6 | 3.5
de | kg | 6 bei fülle, 72,4 beim gewicht, 3,5 beim wasser | 72.4 | 6 | 3.5
de | kg | gewicht heute 72,4, fülle heute 6, wasser gestern 3,5 | 72.4 | 6 | 3.5
de | kg | Gewicht:\n72,4\nFülle:\n6\nWasser:\n3,5 | 72.4 | 6 | 3.5
de | kg | Gewicht\n72,4\nFülle\n6\nWasser\n3,5 | 72.4 | 6 | 3.5
de | kg | hey,\n\n72,4\n6\n3,5\n\nlg | 72.4 | 6 | 3.5
de | kg | hier meine werte: 72,4 / 6 / 3,5 | 72.4 | 6 | 3.5
de | kg | werte heute: 72,4 6 3,5 | 72.4 | 6 | 3.5
de | kg | check-in: gewicht 72,4, voll 6, wasser 3,5. schönen tag! | 72.4 | 6 | 3.5
de | kg | heute 72,4 6 3,5 | 72.4 | 6 | 3.5
de | kg | 300 g weniger, 72,4, 6, 3,5 | 72.4 | 6 | 3.5
de | kg | 300 g weniger, voll 6, wasser 3,5 | ~72.1 | 6 | 3.5
de | kg | 72,4 (-0,3), 6, 3,5 | 72.4 | 6 | 3.5
de | kg | 72,4 (0,3 weniger), 6, 3,5 | 72.4 | 6 | 3.5
de | kg | 72,4 statt 72,7, 6, 3,5 | ~72.4 | ~6 | ~3.5
de | kg | 72,4 glaub ich, 6, 3,5 ungefähr | 72.4 | 6 | 3.5
de | kg | 72,4, 6, fast 3,5 liter | 72.4 | 6 | 3.5
de | kg | 72,4, 6, etwas über 3,5 liter | 72.4 | 6 | ~3.5
de | kg | 72,4, 6, nur 3 liter | 72.4 | 6 | 3
de | kg | 72,4, voll 6, nur 3 liter geschafft | 72.4 | 6 | 3
de | kg | 72,4, voll 6, hab nur 3 liter geschafft | 72.4 | 6 | 3
de | kg | 72,4, voll 6, 3 liter wasser plus 2 kaffee | 72.4 | 6 | 3
de | kg | 72,4, 6, dreieinhalb | 72.4 | 6 | 3.5
de | kg | 72,4, 6, drei | 72.4 | 6 | 3
de | kg | 72,4 6 3.5 | 72.4 | 6 | 3.5
de | kg | 72.4 6 3,5 | 72.4 | 6 | 3.5
de | kg | 72,4 5,5 3,5 | 72.4 | ~5.5 | 3.5
de | kg | 72,4 6/7 3,5 | 72.4 | ~6.5 | 3.5
de | kg | 72,4, voller als gestern, 7, 3,5 | 72.4 | 7 | 3.5
de | kg | 72,4, flacher heute: 4, 3,5 | 72.4 | 4 | 3.5
de | kg | 72,4, ziemlich platt (3), 3,5 | 72.4 | 3 | 3.5
de | kg | 72,4, sehr voll 8, 3,5 | 72.4 | 8 | 3.5
de | kg | waage vergessen, 6, 3,5 | none | 6 | 3.5
de | kg | keine waage dabei, fülle 6, wasser 3,5 | none | 6 | 3.5
de | kg | gewicht keine ahnung, fülle 6, wasser 3,5 | none | 6 | 3.5
de | kg | nicht gewogen heute, 6, 3,5 | none | 6 | 3.5
de | kg | gewicht: - fülle: 6 wasser: 3,5 | ~none | 6 | 3.5
de | kg | 72,4 6 weiß nicht | 72.4 | 6 | ~none
de | kg | 72,4, 6, wasser wie immer | 72.4 | 6 | ~
de | kg | 72,4, 6, wasser weiß ich nicht mehr | 72.4 | 6 | none
de | kg | 72,4, fülle wie gestern, 3,5 | 72.4 | ~ | ~3.5
de | kg | 72,4 6 3,5 passt | 72.4 | 6 | 3.5
de | kg | passt alles, 72,4 6 3,5 | 72.4 | 6 | 3.5
de | kg | 72,4 6 3,5 👍 | 72.4 | 6 | 3.5
de | kg | 72,4 6 3,5 alles easy | 72.4 | 6 | 3.5
de | kg | 72,4 6 3,5 bin müde | 72.4 | 6 | 3.5
de | kg | 72,4 6 3,5 gestern beine trainiert | 72.4 | 6 | 3.5
de | kg | 72,4 6 3,5 training lief gut | 72.4 | 6 | 3.5
de | kg | gwicht 72,4, füllung 6, trunken 3,5 | 72.4 | 6 | 3.5
de | kg | i hob 72,4, a 6 und 3,5 trunken | 72.4 | 6 | 3.5
de | kg | hab 72,4 uf de waag, ne 6 und 3,5 liter | 72.4 | 6 | 3.5
de | kg | bi 72,4, fülli 6, 3,5 liter gha | 72.4 | 6 | ~3.5
de | kg | zweiundsiebzig komma vier kilo, fülle sechs, dreieinhalb liter getrunken | 72.4 | 6 | 3.5
de | kg | zwoundsiebzig vier, sechs, dreieinhalb | 72.4 | 6 | 3.5
de | kg | 72,4 nach dem aufstehen, fülle 6, gestern 3,5 l getrunken | 72.4 | 6 | 3.5
de | kg | gestern 3,5 l getrunken, heute 72,4, fülle 6 | 72.4 | 6 | 3.5
de | kg | 3,5 liter gestern, 72,4 heute, voll 6 | 72.4 | 6 | 3.5
de | kg | die 6, 72,4, 3,5 | 72.4 | 6 | 3.5
de | kg | 72,4 und ne 6 und 3,5 | 72.4 | 6 | 3.5
de | kg | 72,4 auf der waage, im spiegel ne 6, 3,5 liter | 72.4 | 6 | 3.5
en | kg | 72.4 on the scale, 6 in the mirror, 3.5 litres | 72.4 | 6 | 3.5
en | kg | mirror says 6, scale says 72.4, water 3.5 | 72.4 | 6 | 3.5
en | kg | 3.5 L yesterday, 72.4 today, full 6 | 72.4 | 6 | 3.5
en | kg | yesterday 3.5 L, this morning 72.4, fullness 6 | 72.4 | 6 | 3.5
en | kg | 72.4 6 3.5 tired | 72.4 | 6 | 3.5
en | kg | 72.4 6 3.5 trained legs yesterday | 72.4 | 6 | 3.5
en | kg | 72.4 6 3.5 👍 | 72.4 | 6 | 3.5
en | kg | 72.4 6 3.5 lets go | 72.4 | 6 | 3.5
en | kg | 72.4 6 3.5 #grind | 72.4 | 6 | 3.5
en | kg | 72.4 -> 72.2, 6, 3.5 | ~72.2 | ~6 | ~3.5
en | kg | 72.4... wait, 72.2, 6, 3.5 | 72.2 | 6 | 3.5
en | kg | not 72.4 but 72.2, full 6, water 3.5 | ~72.2 | 6 | 3.5
en | kg | 72.4 edit: 72.2, 6, 3.5 | 72.2 | 6 | 3.5
en | kg | 72.4 meant 72.2, 6, 3.5 | 72.2 | 6 | 3.5
en | kg | 72.4 I mean 72.2, 6, 3.5 | 72.2 | 6 | 3.5
en | kg | 72.4 no sorry misread 72.2, 6, 3.5 | 72.2 | 6 | 3.5
en | kg | 72.4, 5... no, 6. water 3.5 | 72.4 | ~6 | 3.5
en | kg | 72.4, 6, 3 no wait 3.5 | 72.4 | 6 | ~3.5
en | kg | 72.4, 6, 3.2 sorry 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4 6 3.5 edit weight 72.2 | ~72.2 | 6 | 3.5
en | kg | 72.45 6 3.25 | 72.45 | 6 | 3.25
en | kg | 72.4kg. 6/10. 3.25L. | 72.4 | 6 | 3.25
en | kg | 72.4 6 3l 250ml | 72.4 | 6 | 3.25
en | kg | 72.4 6 3250ml | 72.4 | 6 | 3.25
en | kg | 72.4 6 3,250 ml | 72.4 | 6 | 3.25
en | kg | 72.4 6 350cl | 72.4 | 6 | 3.5
en | kg | 72.4, fullness 6 (5 yesterday), 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4, fullness went from 5 to 6, 3.5 L | 72.4 | ~6 | 3.5
en | kg | 72.4, 6 up from 5, 3.5 | 72.4 | ~6 | ~3.5
en | kg | 72.4, fullness up from 5 to 6, water 3.5 | 72.4 | ~6 | 3.5
en | kg | 72.4 (72.7 yesterday), fullness 6, 3.5 litres | 72.4 | 6 | 3.5
en | kg | 72.4, yesterday was 72.7. full 6. 3.5 l | 72.4 | 6 | 3.5
en | kg | weight 72.4, which is 0.3 down. fullness 6, water 3.5 | 72.4 | 6 | 3.5
en | kg | weight 72.4 (lowest yet!), fullness 6, water 3.5 | 72.4 | 6 | 3.5
en | kg | new low 72.4! 6 and 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4 lowest ever 6 3.5 | 72.4 | 6 | 3.5
en | kg | hit 72.4 today, 6, 3.5 | 72.4 | 6 | 3.5
en | kg | finally under 73: 72.4. 6. 3.5 | 72.4 | 6 | 3.5
en | kg | stuck at 72.4, 6, 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4 ugh. 6. 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4 :( 6 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4 lol, 6, 3.5 | 72.4 | 6 | 3.5
en | kg | slept 6h, 72.4, 6, 3.5 | 72.4 | 6 | 3.5
en | kg | slept 6, 72.4, 6, 3.5 | 72.4 | 6 | 3.5
en | kg | up at 5, 72.4, 6, 3.5 | 72.4 | 6 | 3.5
en | kg | 5am: 72.4 / 6 / 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4 @ 6am, 6, 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4 at 6 am, fullness 6, 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4 6 3.5 10k steps | 72.4 | 6 | 3.5
en | kg | 72.4 6 3.5, 12000 steps, 20 min cardio | 72.4 | 6 | 3.5
en | kg | 72.4 6 3.5 200g carbs | 72.4 | 6 | 3.5
en | kg | 72.4 6 3.5, carbs 200 | 72.4 | 6 | 3.5
en | kg | 72.4, 6, 3.5, ate everything | 72.4 | 6 | 3.5
en | kg | 72.4, 6, 3.5, bit sore | 72.4 | 6 | 3.5
en | kg | 72.4, 6, 3.5. Legs sore from monday | 72.4 | 6 | 3.5
en | kg | 72.4, 6, 3.5 - feeling good! | 72.4 | 6 | 3.5
en | kg | 72.4, 6, 3.5 (no salt issues) | 72.4 | 6 | 3.5
en | kg | Weight 72.4 Fullness 6 Water 3.5 Sleep 7 | 72.4 | 6 | 3.5
en | kg | weight 72.4 fullness 6 water 3.5 steps 9000 | 72.4 | ~6 | ~3.5
en | kg | 72.4 // 6 // 3.5 // slept ok | 72.4 | 6 | 3.5
en | kg | BW: 72.4kg\nFullness: 6/10\nFluids: 3.5L\nSleep: 7h | 72.4 | 6 | 3.5
en | kg | BW 72.4 || full 6 || H2O 3.5 | 72.4 | 6 | 3.5
en | kg | 72.4 // full 6ish // 3 and a half L | 72.4 | 6 | 3.5
en | kg | im 72.4 fullness6 drank3.5 | 72.4 | 6 | 3.5
en | kg | weigjt 72.4 fullnss 6 watet 3.5 | 72.4 | 6 | 3.5
en | kg | Weihgt 72.4, fullnes 6, wather 3.5 | 72.4 | 6 | 3.5
en | kg | fullness is six weight is seventy two and water is three | 72 | 6 | 3
en | kg | seventy two, six, three | 72 | 6 | 3
en | kg | seventy-two point five. six. three point two five. | 72.5 | 6 | 3.25
en | kg | seventy two and a half kilos, fullness five, water four litres | 72.5 | 5 | 4
en | kg | weight seventy one point nine, fullness seven, water three litres | 71.9 | 7 | 3
en | kg | seventy one nine, seven, three litres | 71.9 | 7 | 3
en | kg | 72 point 4, 6, 3 point 5 | 72.4 | 6 | 3.5
en | kg | 2 litres water, 1 litre tea, 0.5 coffee, 72.4, 6 | 72.4 | 6 | ~
en | kg | water: 2 + 1.5, weight 72.4, full 6 | 72.4 | 6 | 3.5
en | kg | 72.4 full 6 water 2l morning 1.5l evening | 72.4 | 6 | ~3.5
en | kg | 72.4 full 6 water 7 x 500ml | 72.4 | 6 | 3.5
en | kg | 72.4 full 6 water seven 500ml bottles | 72.4 | 6 | ~3.5
en | kg | 72.4 full 6 water 7 bottles of 500 ml | 72.4 | 6 | ~3.5
en | us | 159.6 full 6 water 118 | 72.39 | 6 | 3.49
en | us | 159.6, 6/10, 118oz, feeling good | 72.39 | 6 | 3.49
en | us | 159.6 down from 160.2, 6, 118 | 72.39 | 6 | 3.49
en | us | weight 159.6 down .6, full 6, water 118 | 72.39 | 6 | 3.49
en | us | 159.6 6 118 slept 7 | 72.39 | 6 | 3.49
en | us | 159 6/10 118 oz | 72.12 | 6 | 3.49
en | us | 158.8 / 7 / gallon+ | 72.03 | 7 | ~
en | us | 158.8, 7, 1 gallon plus | 72.03 | 7 | 3.785
en | us | 158.8, 7, about a gallon | 72.03 | 7 | 3.785
en | us | 158.8, 7, almost a gallon | 72.03 | 7 | 3.785
en | us | 158.8, 7, gallon of water | 72.03 | 7 | 3.785
en | us | 158.8, 7, 16 cups | 72.03 | 7 | ~3.785
en | us | 158.8, 7, 2 half gallons | 72.03 | 7 | ~3.785
en | us | 158.8, 7, 64 oz x2 | 72.03 | 7 | ~3.785
en | us | 158.8, 7, 2x64oz | 72.03 | 7 | 3.785
en | us | 158.8, 7, 64+54 oz | 72.03 | 7 | 3.49
en | us | 158 and three quarters, 7, 118 | 72.0 | 7 | 3.49
en | us | 158 3/4, 7, 118 | 72.0 | 7 | 3.49
en | us | 158½ 7 118 | 71.89 | 7 | 3.49
en | us | one fifty eight point eight, seven, one eighteen | 72.03 | 7 | 3.49
en | us | a hundred fifty eight point eight, seven, a gallon | 72.03 | 7 | 3.785
en | us | 72 kilos, 7, 3.5 liters | 72 | 7 | 3.5
en | us | 72.4 kg today since scale is in kg, full 6, 118 oz | 72.4 | 6 | 3.49
en | st | 11 stone 5, full 6, 3.5 litres | 72.12 | 6 | 3.5
en | st | 11 stone 5.5, full 6, 3.5 litres | 72.35 | 6 | 3.5
en | st | 11st 5½, 6, 3.5 | 72.35 | 6 | 3.5
en | st | 11-5, 6, 3.5 | 72.12 | 6 | 3.5
en | st | eleven five, six, three and a half | 72.12 | 6 | 3.5
de | kg | 72,4 -> 72,2, 6, 3,5 | ~72.2 | ~6 | ~3.5
de | kg | 72,4... moment, 72,2, 6, 3,5 | 72.2 | 6 | 3.5
de | kg | nicht 72,4 sondern 72,2, voll 6, wasser 3,5 | ~72.2 | 6 | 3.5
de | kg | 72,4 korrektur: 72,2, 6, 3,5 | 72.2 | 6 | 3.5
de | kg | 72,4 ich meine 72,2, 6, 3,5 | 72.2 | 6 | 3.5
de | kg | 72,4 meinte 72,2, 6, 3,5 | 72.2 | 6 | 3.5
de | kg | 72,4, 5... nee, 6. wasser 3,5 | 72.4 | ~6 | 3.5
de | kg | 72,4, 6, 3 nein 3,5 | 72.4 | 6 | ~3.5
de | kg | 72,45 6 3,25 | 72.45 | 6 | 3.25
de | kg | 72,4 6 3 l 250 ml | 72.4 | 6 | 3.25
de | kg | 72,4 6 3 liter 250 | 72.4 | 6 | 3.25
de | kg | 72,4 6 3250 ml | 72.4 | 6 | 3.25
de | kg | 72,4 6 3.250 ml | 72.4 | 6 | 3.25
de | kg | 72,4, fülle 6 (gestern 5), 3,5 | 72.4 | 6 | 3.5
de | kg | 72,4, fülle von 5 auf 6, 3,5 l | 72.4 | ~6 | 3.5
de | kg | 72,4 (gestern 72,7), fülle 6, 3,5 liter | 72.4 | 6 | 3.5
de | kg | gewicht 72,4, also 0,3 weniger. fülle 6, wasser 3,5 | 72.4 | 6 | 3.5
de | kg | neuer tiefstand 72,4! 6 und 3,5 | 72.4 | 6 | 3.5
de | kg | endlich unter 73: 72,4. 6. 3,5 | 72.4 | 6 | 3.5
de | kg | hänge bei 72,4, 6, 3,5 | 72.4 | 6 | 3.5
de | kg | 72,4 puh. 6. 3,5 | 72.4 | 6 | 3.5
de | kg | 72,4 :( 6 3,5 | 72.4 | 6 | 3.5
de | kg | 6h geschlafen, 72,4, 6, 3,5 | 72.4 | 6 | 3.5
de | kg | seit 5 wach, 72,4, 6, 3,5 | 72.4 | 6 | 3.5
de | kg | 5 uhr: 72,4 / 6 / 3,5 | 72.4 | 6 | 3.5
de | kg | 72,4 um 6 uhr, fülle 6, 3,5 | 72.4 | 6 | 3.5
de | kg | 72,4 6 3,5 10k schritte | 72.4 | 6 | 3.5
de | kg | 72,4 6 3,5, 12000 schritte, 20 min cardio | 72.4 | 6 | 3.5
de | kg | 72,4 6 3,5 200 g kh | 72.4 | 6 | 3.5
de | kg | 72,4, 6, 3,5, alles gegessen | 72.4 | 6 | 3.5
de | kg | 72,4, 6, 3,5, bisschen muskelkater | 72.4 | 6 | 3.5
de | kg | 72,4, 6, 3,5 - fühl mich gut! | 72.4 | 6 | 3.5
de | kg | gewicht 72,4 fülle 6 wasser 3,5 schlaf 7 | 72.4 | 6 | 3.5
de | kg | KG: 72,4kg\nFülle: 6/10\nWasser: 3,5L\nSchlaf: 7h | 72.4 | 6 | 3.5
de | kg | gewicht 72,4kg fülle6 wasser3,5 | 72.4 | 6 | 3.5
de | kg | gewihct 72,4 fühle 6 wassser 3,5 | 72.4 | ~6 | 3.5
de | kg | fülle sechs gewicht zweiundsiebzig wasser drei | 72 | 6 | 3
de | kg | zweiundsiebzig, sechs, drei | 72 | 6 | 3
de | kg | zweiundsiebzig komma fünf. sechs. drei komma zwei fünf. | 72.5 | 6 | 3.25
de | kg | zweiundsiebzigeinhalb kilo, fülle fünf, vier liter wasser | 72.5 | 5 | 4
de | kg | einundsiebzig komma neun kilo, sieben, drei liter | 71.9 | 7 | 3
de | kg | einundsiebzig neun, sieben, drei liter | 71.9 | 7 | 3
de | kg | 2 liter wasser, 1 liter tee, 0,5 kaffee, 72,4, 6 | 72.4 | 6 | ~
de | kg | wasser: 2 + 1,5, gewicht 72,4, voll 6 | 72.4 | 6 | 3.5
de | kg | 72,4 voll 6 wasser 7 x 500 ml | 72.4 | 6 | 3.5
de | kg | 72,4 voll 6 wasser 7x 0,5 | 72.4 | 6 | 3.5
de | kg | 72,4 voll 6 wasser 7 flaschen à 0,5 l | 72.4 | 6 | ~3.5
de | kg | 72,4 voll 6 3 flaschen à 1,5 l | 72.4 | 6 | ~4.5
de | kg | 72,4kg | 6/10 | 3,5 l | 7 std schlaf | 72.4 | 6 | 3.5
de | kg | 72,4 / voll 6 / 3,5 / gut geschlafen | 72.4 | 6 | 3.5
de | kg | gestern abend 73,1, heute früh 72,4. voll 6. 3,5 l | 72.4 | 6 | 3.5
de | kg | 72,4 heute früh, abends warens 73,1. voll 6. 3,5 l | 72.4 | 6 | 3.5
de | kg | leicht voller, 7. 72,4. 3,5 | 72.4 | 7 | 3.5
de | kg | optisch ne 6, 72,4, 3,5 l | 72.4 | 6 | 3.5
de | kg | vom look her 6, gewicht 72,4, wasser 3,5 | 72.4 | 6 | 3.5
de | kg | füllegefühl 6, 72,4 kg, 3,5 l getrunken | 72.4 | 6 | 3.5
de | kg | muskelfülle 6, 72,4 kg, 3,5 l getrunken | 72.4 | 6 | 3.5
de | kg | fühle mich wie ne 6, 72,4 kg, 3,5 l | 72.4 | 6 | 3.5
de | kg | fühl mich 6/10 voll, 72,4, 3,5 | 72.4 | 6 | 3.5
en | kg | feel about a 6/10 full, 72.4, 3.5 | 72.4 | 6 | 3.5
en | kg | muscle fullness 6, 72.4 kg, 3.5 L drunk | 72.4 | 6 | 3.5
en | kg | look-wise a 6, 72.4, 3.5 l | 72.4 | 6 | 3.5
en | kg | visually a 6. weight 72.4. water 3.5 | 72.4 | 6 | 3.5
de | kg | 72,4 mit vollem magen, satte 8, 4 liter weg | 72.4 | 8 | 4
de | kg | 72,4 7 3,5 trotz kurzer nacht | 72.4 | 7 | 3.5
de | kg | waage zeigt 72,4. gefühlt ne 6. 3,5 l über den tag verteilt | 72.4 | 6 | 3.5
de | kg | 72,4 / fülle eher 5 / wasser knapp 4 l | 72.4 | 5 | 4
de | kg | fülle 6 nein 7, 72,4, 4 l | 72.4 | 7 | 4
de | kg | 72,4 fülle 7 wasser 3l nee 4l | 72.4 | 7 | 4
de | kg | 72,4 fülle 7 wasser 4l plus 500ml nachts | 72.4 | 7 | 4.5
de | kg | 72,4 fülle 7, 4 flaschen à 1l | 72.4 | 7 | 4
de | kg | 72,4 fülle 7, drei 1,5 liter flaschen | 72.4 | 7 | 4.5
de | kg | 72,4 fülle 7, 2 x 1,5 l und 1 l | 72.4 | 7 | 4
de | kg | nach dem klo 72,4, 7, 4 liter | 72.4 | 7 | 4
de | kg | 72,4. 7 weil die nudeln knallen. 4 l | 72.4 | 7 | 4
de | kg | 72,4 ich würd sagen ne 7 heute, 4 liter hab ich geschafft | 72.4 | 7 | 4
de | kg | 72,4 fülle 7 (gestern 6), wasser 4 | 72.4 | 7 | 4
de | kg | 72,4 fülle von 6 auf 7, wasser 4 | ~72.4 | ~7 | ~4
de | kg | Gewicht: 72,4kg Füllegefühl: 7 von 10 Getrunken: 4 Liter Stimmung: 6 | 72.4 | 7 | 4
de | kg | 72.4 7 4000ml | 72.4 | 7 | 4
de | kg | moin coach, 72,4 auf der uhr, 7er fülle und 4 liter wasser | 72.4 | 7 | 4
de | kg | 72,4, bin ne glatte 7, wasser passt mit 4 | 72.4 | 7 | 4
de | kg | 4 liter getrunken, wiege 72,4 und fühl mich wie ne 7 | 72.4 | 7 | 4
de | kg | Wasser 4 Gewicht 72,4 Fülle 7 Schlaf 6 | 72.4 | 7 | 4
de | kg | 72,4 (-0,2) / 7 (+1) / 4 | 72.4 | 7 | 4
de | kg | 72,4 | sieben | vier | 72.4 | 7 | 4
de | kg | g 72,4 f 7 w 4 | 72.4 | 7 | 4
de | kg | G72,4 / F7 / W4 | 72.4 | 7 | 4
de | kg | 72,4 nüchtern, so ne 6 bis 7, 4l | 72.4 | 6.5 | 4
de | kg | heut früh 72,4 drauf, optisch 7, wasser warens 4 | 72.4 | 7 | 4
de | kg | bin bei 72,4 gelandet, fülle 7, getrunken 4 l | 72.4 | 7 | 4
de | kg | 72,4 wieder, 7 wieder, 4 wieder | 72.4 | 7 | 4
de | kg | 72,4 7 und wasser hab ich 4 liter gepackt, beine müde | 72.4 | 7 | 4
de | kg | 72,4 7 4 muskelkater in den beinen | 72.4 | 7 | 4
de | kg | 72,4 7 4, hunger | 72.4 | 7 | 4
de | kg | 72,4 7 4 posing lief gut | 72.4 | 7 | 4
en | kg | 72.4 on the nose, a solid 7, 4 litres in | 72.4 | 7 | 4
en | kg | 72.4 and i feel like a 7, 4l by bedtime | 72.4 | 7 | 4
en | kg | 72.4 full 6 no 7, 4l | 72.4 | 7 | 4
en | kg | 72.4 fullness 7 instead of 6, water 4 | 72.4 | 7 | 4
en | kg | 72.4, 7, 3 bottles of 1.5 l | 72.4 | 7 | 4.5
en | kg | 72.4, 7, 2l plus another 2l | 72.4 | 7 | 4
en | kg | scale was 72.4 this morning, fullness id call a 7, water 4 litres like always | 72.4 | 7 | 4
en | kg | 72.4 / 7 because of the rice / 4 | 72.4 | 7 | 4
en | kg | 7 fullness today, 72.4 on the scale, and about 4 litres yesterday | 72.4 | 7 | 4
en | kg | 72.4kg felt like 7/10 had 4L | 72.4 | 7 | 4
en | kg | flat-ish 4, 72.4, 4l | ~72.4 | ~4 | ~4
en | kg | 72.4 flat 3, 4l | 72.4 | 3 | 4
en | kg | 72.4 7 4 legs sore from posing | 72.4 | 7 | 4
en | kg | 72.4 7 4 slept like a rock | 72.4 | 7 | 4
en | kg | weight 72.4 water 4 fullness 7 mood 6 | 72.4 | 7 | 4
de | kg | platt, 3, 72,4, 4l | 72.4 | 3 | 4
de | kg | 72,4 platt 3 wasser 4 | 72.4 | 3 | 4
de | kg | 72,4 flach wie ne flunder also 3, 4 liter | 72.4 | 3 | 4
de | kg | 72,4 leer, würd sagen 3, 4l | 72.4 | 3 | 4
de | kg | hab 72,4 aufm display gehabt, würd ne 6 geben, getrunken dreieinhalb | 72.4 | 6 | 3.5
de | kg | 72,4 . schwer zu sagen, aber eher 6. knapp 4 liter | 72.4 | 6 | 4
de | kg | Fülle passt so bei 7, Gewicht 72,4 und Wasser waren 4 Liter | 72.4 | 7 | 4
de | kg | 72,4... 7... 4l... | 72.4 | 7 | 4
de | kg | 72,4 kg fülle 7 4 l wasser kein schlaf | 72.4 | 7 | 4
de | kg | 72.4/7/4 und danke für gestern | 72.4 | 7 | 4
de | kg | fülle 7,wasser 4,gewicht 72,4 | 72.4 | 7 | 4
de | kg | wasser:4 fülle:7 gewicht:72,4 | 72.4 | 7 | 4
de | kg | 72,4 / 7 / 4 , bin unterwegs zum hotel | 72.4 | 7 | 4
de | kg | ach ja werte: 72,4, 7, 4 liter | 72.4 | 7 | 4
de | kg | 72.4kg, fülle würd ich ne 7 geben, wasser so 4 liter | 72.4 | 7 | 4
de | kg | Guten Morgen Trainer! 72,4kg heute früh. Fülle ungefähr bei 7. Habe gestern 4 Liter getrunken. Schönen Tag! | 72.4 | 7 | 4
de | kg | 72,4 (nach klo), 7, 4l | 72.4 | 7 | 4
de | kg | 72,4 ; 7 ; 4 ; alles roger | 72.4 | 7 | 4
de | kg | gewogen 72,4 - fülle 7 - wasser 4 - schlaf 7h | 72.4 | 7 | 4
de | kg | wiegt 72,4, fülle sieben von zehn, wasser vier liter und ein halber | 72.4 | 7 | 4.5
de | kg | 72,4 7 4,5 training lief super gestern | 72.4 | 7 | 4.5
de | kg | die 72,4 steht, 7 würd ich sagen, 4l | 72.4 | 7 | 4
de | kg | 72,4 hat die waage gesagt, fülle ist 7 und getrunken hab ich 4 | 72.4 | 7 | 4
de | kg | 4l 7 72,4 | 72.4 | 7 | 4
de | kg | 7 72,4 4l | 72.4 | 7 | 4
de | kg | 72,4 7 (echt prall), 4 liter | 72.4 | 7 | 4
de | kg | gewicht runter auf 72,4, fülle hoch auf 7, wasser 4 | 72.4 | 7 | 4
de | kg | von 72,6 auf 72,4, fülle 7, 4l | 72.4 | 7 | 4
de | kg | gestern 72,6 heute 72,4, fülle 7, 4l | 72.4 | 7 | 4
de | kg | 72,4kg | 7/10 | 4,0l | kopf ok | 72.4 | 7 | 4
de | kg | wasser 4 liter wie besprochen, fülle 7, gewicht 72,4 | 72.4 | 7 | 4
de | kg | wasser hab ich 4l geschafft statt 5, fülle 7, 72,4 | 72.4 | 7 | 4
de | kg | nur 2,5 liter geschafft, fülle 7, 72,4 | 72.4 | 7 | 2.5
de | kg | 72,4, fülle 7, leider nur 2 liter | 72.4 | 7 | 2
de | kg | 72,4, fülle 7, 4 liter plus 2 kaffee | 72.4 | 7 | 4
de | kg | 72,4 fülle 7 wasser 4 und 200g reis gegessen | 72.4 | 7 | 4
en | kg | down to 72.4, fullness up to 7, 4 litres | ~72.4 | ~7 | ~4
en | kg | yesterday 72.6 today 72.4, full 7, 4l | 72.4 | 7 | 4
en | kg | 72.4 after the loo, fullness prob a 7, drank all 4 litres | 72.4 | 7 | 4
en | kg | 72.4 - 7 - 4 - feeling strong | 72.4 | 7 | 4
en | kg | only 2.5 litres, fullness 7, 72.4 | 72.4 | 7 | 2.5
en | kg | 72.4, 7, 4 litres plus two coffees | 72.4 | 7 | 4
en | kg | morning coach! 72.4 today. looking like a 7. hit my 4 litres. | 72.4 | 7 | 4
en | kg | 300 g less than yesterday, full 6, 3.5 L | 72.1 | 6 | 3.5
en | kg | down 0.3, full 6, 3.5 L | 72.1 | 6 | 3.5
en | kg | 72.8 in my robe, reweighed 72.4. six. 3.5 L | ~72.4 | 6 | 3.5
en | kg | half a kilo up on yesterday, fullness 6, water 3.5 | 72.9 | 6 | 3.5
en | kg | down 0.4 from yesterday, 6, 3.5 | 72.0 | 6 | 3.5
en | us | a pound less than yesterday, 6, 120 oz | 71.95 | 6 | 3.55
en | us | 1.2 lb lighter than yesterday, fullness 6, 120 oz | 71.86 | 6 | 3.55
en | kg | no change on the scale, 6, 3.5 | 72.4 | 6 | 3.5
en | kg | no change!! fullness 6 and 3.5 litres | 72.4 | 6 | 3.5
en | kg | scale hasn't moved, full 6-7, 3.5 l | 72.4 | 6.5 | 3.5
en | kg | 72.4, fullness up to 8, 3.5 l | 72.4 | 8 | 3.5
en | kg | 72.3-72.5 scale is jumpy, 6, 3.5 | 72.4 | 6 | 3.5
en | kg | dropped to 72.1!! full 6 💧 3.5 | 72.1 | 6 | 3.5
en | kg | on a scale of 1 to 10 a 6, 72.4, 3.5 l | 72.4 | 6 | 3.5
en | kg | 12,000 steps 3.5l water 72.4 6 fullness | 72.4 | 6 | 3.5
en | kg | three bottles of 1.2 l, 72.4, full 6 | 72.4 | 6 | 3.6
en | kg | 72.4, fullness 5 no rather 6, 3.5 l | 72.4 | 6 | 3.5
en | kg | yesterday I was at fullness 5 today 6, 72.4 kg, 3.5 l | 72.4 | 6 | 3.5
en | kg | ate 300 g less than yesterday, 72.4 6 3.5 | 72.4 | 6 | 3.5
de | kg | 300 g weniger als gestern, fülle 6, 3,5 liter | 72.1 | 6 | 3.5
de | kg | ein halbes kilo mehr als gestern, 6, 3,5 | 72.9 | 6 | 3.5
de | kg | 0,4 kg leichter als gestern, voll 6, 3,5 l | 72.0 | 6 | 3.5
de | kg | unverändert, fülle 6, 3,5 l | 72.4 | 6 | 3.5
de | kg | gewicht hat sich nicht bewegt, fülle 6, 3,5 l | 72.4 | 6 | 3.5
de | kg | kilo wie gestern, 3,5 l, optik 6 | 72.4 | 6 | 3.5
de | kg | 72,3-72,5 schwankt, fülle 6 bis 7, 3,5 l | 72.4 | 6.5 | 3.5
de | kg | 72kg400, fülle 6, 3,5 liter | 72.4 | 6 | 3.5
de | kg | 72,4 un 6 un 3,5 l | 72.4 | 6 | 3.5
de | kg | fülle von 1 bis 10 eine 6, 72,4 kg, 3,5 l | 72.4 | 6 | 3.5
de | kg | liter: drei und halb. voll: sechs. gewicht: 72,4 | 72.4 | 6 | 3.5
de | kg | vier 0,9er flaschen, fülle 6, 72,4 kg | 72.4 | 6 | 3.6
de | kg | gestern hatt ich fülle 5 heut 6, 72,4 kg, 3,5 l | 72.4 | 6 | 3.5
de | kg | 72,4 (gest. 72,9), fülle 6, 3,5 l | 72.4 | 6 | 3.5
de | kg | waage steht daheim, fülle 6, 3,5 l | none | 6 | 3.5
"""
