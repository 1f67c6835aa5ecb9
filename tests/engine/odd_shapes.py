"""Mornings told oddly: drinks in parts of the day, labels glued or misplaced, weights by how they moved.

A row as in `told_shapes`: language, units, the weight of the morning before in kg, what was typed, then
weight in kg, fullness and water in L. 3.5 L were to be drunk; `~` where it may be asked about first.
"""

# ruff: noqa: E501 - a message stays on one line

MORNINGS = r"""
en | kg | 72.7 | 72.4, fullness 5 or maybe 8 by the other mirror, 3.5 L | 72.4 | ~6.5 | 3.5
en | kg | 72.7 | 72.4, 6 or even 7, 3.5 | 72.4 | 6.5 | 3.5
en | kg | 68.3 | 68.1 f 6 water 2.5 plus 1 with training | 68.1 | 6 | 3.5
en | kg | 68.3 | 68.1 full 6 half a litre five times | 68.1 | 6 | 2.5
en | kg | 68.3 | 68.1 fullness 6, 500ml x 6 plus a 330ml can | 68.1 | 6 | ~3.33
en | kg | 68.3 | 68.1 fullness 6, 9 glasses of water, 2 coffees and a bottle | 68.1 | 6 | ~-
en | kg | 68.3 | 68.1 fullness 6, three big bottles and a bit | 68.1 | 6 | ~-
en | kg | 68.3 | 68.1 six, finished two 1.5 litre bottles and half of a third | 68.1 | 6 | ~3.75
en | kg | 68.3 | 68.1, a six, five half-litre bottles and one 1l bottle | 68.1 | 6 | 3.5
en | kg | 68.3 | 68.1, fullness 6, 1.2 l up to noon then 2.1 l | 68.1 | 6 | 3.3
en | kg | 68.3 | fullness 6. water: morning 1, midday 1, night 1. weight: 68.1 | 68.1 | 6 | 3
en | kg | 77.5 | 06:35 / 77.2 / 7 / 4 | 77.2 | 7 | 4
en | kg | 77.5 | 7 fullness - 77.2 kilos - 4 litres | 77.2 | 7 | 4
en | kg | 77.5 | 7 out of ten, four litres, and 77.2 on the scales | 77.2 | 7 | 4
en | kg | 77.5 | 77 point 25 fullness 7 water 4 point 2 | 77.25 | 7 | 4.2
en | kg | 77.5 | 77'2 7 4l | 77.2 | 7 | 4
en | kg | 77.5 | 77.2 f=7 w=4 | 77.2 | 7 | 4
en | kg | 77.5 | 77.2 full 6½ water 3½ | 77.2 | 6.5 | 3.5
en | kg | 77.5 | 77.2 full 7 drank three, might have been four litres | 77.2 | 7 | ~-
en | kg | 77.5 | 77.2 full 7 water 4 salt 6g potassium 3g | 77.2 | 7 | 4
en | kg | 77.5 | 77.2 hr 48 7 4l hrv 63 | 77.2 | 7 | 4
en | kg | 77.5 | 77.2 l 7 l 4 | ~77.2 | ~7 | ~4
en | kg | 77.5 | 77.2 💪7/10 🚰4L 😴8h | 77.2 | 7 | 4
en | kg | 77.5 | 77.2, 5 and a half, 4 | 77.2 | 5.5 | 4
en | kg | 77.5 | 77.274 | ~77.2 | ~7 | ~4
en | kg | 77.5 | 77.2kg 7full 4litre | 77.2 | 7 | 4
en | kg | 77.5 | 77;2 ; 7 ; 4 | 77.2 | 7 | 4
en | kg | 77.5 | 7f 4w 77.2 | 77.2 | 7 | 4
en | kg | 77.5 | 7l.2 full 7 | ~- | 7 | -
en | kg | 77.5 | 7️⃣7️⃣.2️⃣ 7️⃣ 4️⃣ | 77.2 | 7 | 4
en | kg | 77.5 | a kilo and a half lighter, full 4, 4 litres | 76.0 | 4 | 4
en | kg | 77.5 | bp 121 over 74, 77.2, full 7, 4 l | 77.2 | 7 | 4
en | kg | 77.5 | five hundred less water than yesterday I think, 77.2, full 7 | 77.2 | 7 | ~-
en | kg | 77.5 | fullness 7 | - | 7 | -
en | kg | 77.5 | glucose 4.8, 77.2, full 7, water 4 | 77.2 | 7 | 4
en | kg | 77.5 | litres 4 kilos 77.2 fullness 7 | 77.2 | 7 | 4
en | kg | 77.5 | seventy-seven and a half, seven and a half, four and a half | 77.5 | 7.5 | 4.5
en | kg | 77.5 | three tenths down, 7, 4 litres | 77.2 | 7 | 4
en | kg | 77.5 | weight unchanged at 77.5, fullness down one to 6, water 4 | 77.5 | 6 | 4
en | st | 61.5 | 61.3kg on the gym scale, 6, 5 pints and a half | 61.3 | 6 | 3.13
en | st | 61.5 | 9 stone 9 and a half pounds, full 6, 5 pints | 61.46 | 6 | 2.84
en | st | 61.5 | 9-9, 6, 3 litres | ~61.23 | 6 | 3
en | st | 61.5 | 9st 10 dressed, 9st 9 stripped, full 6, 3l | 61.23 | 6 | 3
en | st | 61.5 | 9st 9, full 6, 3l | 61.23 | 6 | 3
en | st | 61.5 | 9st 9.4 | 61.42 | - | -
en | st | 61.5 | 9st9 f6 w3 | 61.23 | 6 | 3
en | st | 61.5 | half a pound down, 6, 3 l | 61.27 | 6 | 3
en | us | 64 | 140 and 3/4, 6, 128 | 63.84 | 6 | 3.79
en | us | 64 | 140 lb 6 oz, full 6, 120 fl oz | 63.67 | 6 | 3.55
en | us | 64 | 140..4, 6, 120 | 63.68 | 6 | 3.55
en | us | 64 | 140.4 f6 w 60+60 | 63.68 | 6 | 3.55
en | us | 64 | 140.4 full 6 half gallon am, half gallon pm | 63.68 | 6 | 3.79
en | us | 64 | 140.4, 6, 4 quarts | 63.68 | 6 | 3.79
en | us | 64 | 140.4, 6, 40 oz at breakfast, 40 at lunch and 40 at dinner | 63.68 | 6 | 3.55
en | us | 64 | 140.4, 6, a gallon and a half | 63.68 | 6 | 5.68
en | us | 64 | 140.4, 6, three quarters of a gallon | 63.68 | 6 | 2.84
en | us | 64 | 140lbs6oz / 6 / 1gal | 63.67 | 6 | 3.79
en | us | 64 | 14O.4 6 12O oz | 63.68 | 6 | 3.55
en | us | 64 | 2 lbs up from yesterday, full 7, 1 gallon | 64.91 | 7 | 3.79
en | us | 64 | down a pound and a half, fullness 6, a gallon | 63.32 | 6 | 3.79
en | us | 64 | h2o 1.25gal, 140.4, f=6 | 63.68 | 6 | 4.73
en | us | 64 | w140.4 f6 h1gal | 63.68 | 6 | ~3.79
de | kg | 70.6 | 70,4 / 6 / 1,5l flasche 2x | 70.4 | 6 | 3
de | kg | 70.6 | 70,4 6 drei dreiviertel liter | 70.4 | 6 | 3.75
de | kg | 70.6 | 70,4 6 dreiviertel liter früh, zwei liter bis abends | 70.4 | 6 | 2.75
de | kg | 70.6 | 70,4 voll 6 früh 1 mittags 1 abends 1,5 liter | 70.4 | 6 | 3.5
de | kg | 70.6 | 70,4 voll 6 wasser 1,5 vormittags und 2 nachmittags | 70.4 | 6 | 3.5
de | kg | 70.6 | 70,4 voll 6, 2 große Flaschen und ne halbe | 70.4 | 6 | ~-
de | kg | 70.6 | 70,4 voll 6, 3 l stilles und 0,5 l sprudel | 70.4 | 6 | 3.5
de | kg | 70.6 | 70,4 voll 6, 3 l wasser, 0,3 l cola light | 70.4 | 6 | ~3
de | kg | 70.6 | 70,4 voll 6, dreimal ein liter | 70.4 | 6 | 3
de | kg | 70.6 | 70,4 voll 6, ein liter fünfundsiebzig | 70.4 | 6 | 1.75
de | kg | 70.6 | 70,4 voll 6, eineinhalb kannen à 2 liter | 70.4 | 6 | 3
de | kg | 70.6 | 70,4 voll 6, insgesamt 3 liter, 1 früh und 2 abends | 70.4 | 6 | 3
de | kg | 70.6 | 70,4 voll 6, liter zwei komma fünf | 70.4 | 6 | 2.5
de | kg | 70.6 | 70,4 voll 6, vier Halbliterflaschen | 70.4 | 6 | 2
de | kg | 70.6 | 70,4 voll 6, zwei 1,5-Liter-Flaschen | 70.4 | 6 | 3
de | kg | 70.6 | 70,4 voll 6, zwei 1,5er flaschen und eine kleine | 70.4 | 6 | ~-
de | kg | 70.6 | 70,4 voll 6, zwei liter fünf | 70.4 | 6 | 2.5
de | kg | 70.6 | 70,4, 6, 10 gläser zu je 300 ml | 70.4 | 6 | 3
de | kg | 70.6 | 70,4, 6, 1l+1l+1,5l | 70.4 | 6 | 3.5
de | kg | 70.6 | 70,4, 6, wasser 1+1+1+0,5 | 70.4 | 6 | 3.5
de | kg | 70.6 | 70,4, voll 6, 1 liter morgens, 1,5 auf arbeit, 1 abends | 70.4 | 6 | 3.5
de | kg | 70.6 | trinkflasche (0,75) 4 mal leer, 70,4, voll 6 | 70.4 | 6 | 3
de | kg | 70.6 | voll: 6. wasser: 3 halbe liter plus 1 liter. gewicht: 70,4. | 70.4 | 6 | 2.5
de | kg | 81.2 | (8) voll (80,9) kg (5) l | 80.9 | 8 | 5
de | kg | 81.2 | 0,5 mehr als gestern, voll 8, 5 liter | 81.7 | 8 | 5
de | kg | 81.2 | 06:10 80,9 8 5 | 80.9 | 8 | 5
de | kg | 81.2 | 80,9 ,8 ,5 | 80.9 | 8 | 5
de | kg | 81.2 | 80,9 fuelle 8 wasser 5 | 80.9 | 8 | 5
de | kg | 81.2 | 80,9 voll 7½ wasser 4½ | 80.9 | 7.5 | 4.5
de | kg | 81.2 | 80,9 voll 8 pump 7 stimmung 9 wasser 5 | 80.9 | 8 | 5
de | kg | 81.2 | 80,9 voll 8 wasser 5 salz 8 g | 80.9 | 8 | 5
de | kg | 81.2 | 80,9, 7,5 von 10, 5 l | 80.9 | 7.5 | 5
de | kg | 81.2 | 80,9, fünfeinhalb, 5 liter | 80.9 | 5.5 | 5
de | kg | 81.2 | 80,9, mittelvoll, 5l | 80.9 | ~- | 5
de | kg | 81.2 | 80,9, total platt, wasser 5 | 80.9 | ~- | 5
de | kg | 81.2 | 80,9, voll nicht ganz 8, 5 l | 80.9 | ~8 | 5
de | kg | 81.2 | 80,9. füllgrad ne 8. 5 liter. | 80.9 | 8 | 5
de | kg | 81.2 | 80,9kg8/10 5l | 80.9 | 8 | 5
de | kg | 81.2 | 80.9..8..5 | 80.9 | 8 | 5
de | kg | 81.2 | 80.985 | ~80.9 | ~8 | ~5
de | kg | 81.2 | 81,4 vorm klo, 80,9 nachm klo, voll 8, 5 l | 80.9 | 8 | 5
de | kg | 81.2 | 81,5 mit hose, ohne 80,9, voll 8, 5l | 80.9 | 8 | 5
de | kg | 81.2 | Fülle 8 | - | 8 | -
de | kg | 81.2 | Gewicht 80 Komma 95 Fülle 8 Wasser 5 | 80.95 | 8 | 5
de | kg | 81.2 | Völle 8, 80,9, 5 Liter | 80.9 | 8 | 5
de | kg | 81.2 | bei der fülle ne glatte 8, 80,9 auf der waage, 5 liter | 80.9 | 8 | 5
de | kg | 81.2 | blutdruck 120 zu 75, 80,9, voll 8, 5 l | 80.9 | 8 | 5
de | kg | 81.2 | ein kilo leichter, voll 7, 5 liter | 80.2 | 7 | 5
de | kg | 81.2 | erste wiegung 81,3, zweite 80,9, die zweite zählt, voll 8, 5 l | 80.9 | 8 | 5
de | kg | 81.2 | fülle ist 8 und wasser war 5 und gewicht liegt bei 80,9 | 80.9 | 8 | 5
de | kg | 81.2 | gewicht ein halbes kilo rauf, voll 8, wasser 5 | 81.7 | 8 | 5
de | kg | 81.2 | hf 46 80,9 8 5l hrv 71 | 80.9 | 8 | 5
de | kg | 81.2 | in unterwäsche 80,9, voll 8, 5l | 80.9 | 8 | 5
de | kg | 81.2 | temperatur 36,6, 80,9, voll 8, wasser 5 | 80.9 | 8 | 5
de | kg | 81.2 | zweihundert gramm mehr, voll 8, 5 liter | 81.4 | 8 | 5
de | kg | 81.2 | ⚖️ 80,9 💪 8 💦 5 | 80.9 | 8 | 5
de | us | 64 | 140 pfund und ein halbes, voll 6, ne gallone und 20 unzen | 63.73 | 6 | 4.38
de | us | 64 | 140,4 6 4x32oz | 63.68 | 6 | 3.79
de | us | 64 | 140,4 voll 6 drei viertel gallone | 63.68 | 6 | 2.84
de | us | 64 | ein pfund runter, voll 6, 120 unzen | 63.55 | 6 | 3.55
en | kg | 68.3 | 68.1 / 6 / 2L before lunch + 1.5L after | 68.1 | 6 | 3.5
en | kg | 68.3 | 68.1 6 1l + 1l + 750ml | 68.1 | 6 | 2.75
en | kg | 68.3 | 68.1 f 6, litre and a half in the am, 2 litres in the pm | 68.1 | 6 | 3.5
en | kg | 68.3 | 68.1 fullness 6 water 1+1+1.5 | 68.1 | 6 | 3.5
en | kg | 68.3 | 68.1, 6, 1 litre in the morning, 1.5 at work and 1 in the evening | 68.1 | 6 | 3.5
en | kg | 68.3 | 68.1, 6, a litre on waking, one with each of 3 meals | 68.1 | 6 | ~4
en | kg | 68.3 | 68.1, a six, 6 bottles of half a litre | 68.1 | 6 | 3
en | kg | 68.3 | 68.1, fullness 6, drank my 2l jug twice | 68.1 | 6 | ~4
en | kg | 68.3 | 68.1, fullness 6, one and a half of my 2 litre jugs | 68.1 | 6 | ~3
en | kg | 68.3 | 68.1kg, full 6, two litres by noon and another one and a half by bed | 68.1 | 6 | 3.5
en | kg | 68.3 | three times one litre, 68.1, fullness 6 | 68.1 | 6 | 3
en | kg | 68.3 | weight 68.1 fullness 6 water 0.5 breakfast 1 gym 1.5 afternoon 0.5 bedtime | 68.1 | 6 | 3.5
en | kg | 77.5 | (7) full, (77.2) kg, (4) l | 77.2 | 7 | 4
en | kg | 77.5 | 4 l | 77.2 kg | 7 | 77.2 | 7 | 4
en | kg | 77.5 | 4 litres. nothing else to report yet | - | - | 4
en | kg | 77.5 | 77,2, 7, 4,2 | 77.2 | 7 | 4.2
en | kg | 77.5 | 77.2 (jeans on, so probably less), full 7, 4 l | ~77.2 | 7 | 4
en | kg | 77.5 | 77.2 745 | 77.2 | ~7 | ~4.5
en | kg | 77.5 | 77.2 full 7 1.5 pre gym 1 during 1.5 post | 77.2 | 7 | 4
en | kg | 77.5 | 77.2 full 7 water 4000 | 77.2 | 7 | 4
en | kg | 77.5 | 77.2 full 7, water 0 | 77.2 | 7 | ~0
en | kg | 77.5 | 77.2 full 7, water a litre short of target | 77.2 | 7 | ~2.5
en | kg | 77.5 | 77.2 fullness five point five, 4L | 77.2 | 5.5 | 4
en | kg | 77.5 | 77.2 only, rest later | 77.2 | - | -
en | kg | 77.5 | 77.2, 6.5/10, 4L | 77.2 | 6.5 | 4
en | kg | 77.5 | 77.2, bursting, water 4 | 77.2 | ~- | 4
en | kg | 77.5 | 77.2, full 7, 3 l water, 400 ml milk in my oats | 77.2 | 7 | ~3
en | kg | 77.5 | 77.2, full 7, 3 litres plain and 1 litre sparkling | 77.2 | 7 | 4
en | kg | 77.5 | 77.2, fullness 7, a 2l and two 750s | 77.2 | 7 | 3.5
en | kg | 77.5 | 77.2, medium full, 4l | 77.2 | ~- | 4
en | kg | 77.5 | 77.2, six and a half out of ten, 4L | 77.2 | 6.5 | 4
en | kg | 77.5 | 77.2, totally flat, 4 l | 77.2 | ~- | 4
en | kg | 77.5 | 77.2kgF7W4L | 77.2 | 7 | 4
en | kg | 77.5 | 77.6 first, then 77.2 after the toilet, fullness 7, 4L | 77.2 | 7 | 4
en | kg | 77.5 | 78.0 in joggers, naked 77.2, full 7, 4 l | 77.2 | 7 | 4
en | kg | 77.5 | F7W4 77.2 | 77.2 | 7 | 4
en | kg | 77.5 | f:7 wt:77.2 wa:4 | 77.2 | 7 | ~4
en | kg | 77.5 | full 7/10, pump 8/10, mood 6/10, 77.2, 4 l | 77.2 | 7 | 4
en | kg | 77.5 | full=7,water=4,weight=77.2 | 77.2 | 7 | 4
en | kg | 77.5 | fullness 7 water 4 weight down point three | 77.2 | 7 | 4
en | kg | 77.5 | gained two hundred grams, fullness 7, 4l | 77.7 | 7 | 4
en | kg | 77.5 | i'd say 7 for full and 77.2 for weight, water was four | 77.2 | 7 | 4
en | kg | 77.5 | jumped on twice: 77.2 and 77.2. 7. 4 l | 77.2 | 7 | 4
en | kg | 77.5 | same again, 7, 4 litres | ~77.5 | 7 | 4
en | kg | 77.5 | seventy seven point two full seven water four point five | 77.2 | 7 | 4.5
en | kg | 77.5 | sleep score 82, pulse 49, 77.2, full 7, 4 l | 77.2 | 7 | 4
en | kg | 77.5 | weighed 6.40am 77.2, resting hr 51, fullness 7, 4 l, bed at 10pm | 77.2 | 7 | 4
en | kg | 77.5 | weight half a kilo up, fullness 7, water 4 | 78.0 | 7 | 4
en | kg | 77.5 | weight seventy seven comma two fullness seven water three comma five | 77.2 | 7 | 3.5
en | kg | 77.5 | ⚖️77.2 🎈7 💧4 | 77.2 | 7 | 4
en | st | 61.5 | 135lb, 6, two pints at breakfast two at lunch two at tea | 61.23 | 6 | 3.41
en | st | 61.5 | nine stone nine, a 6, three litres | 61.23 | 6 | 3
en | us | 64 | 140.4 fullness 6 my 40oz tumbler three times | 63.68 | 6 | ~3.55
en | us | 64 | 140.4 fullness 6 water 2 qts + 1 pint | 63.68 | 6 | 2.37
en | us | 64 | 140.4, 6, a gallon plus 16 oz | 63.68 | 6 | 4.26
en | us | 64 | 63.7 kg today (hotel scale is metric), 6, 3.8 litres | 63.7 | 6 | 3.8
en | us | 64 | one forty point four, a six, hundred and twenty ounces | 63.68 | 6 | 3.55
en | us | 64 | up 0.6 lb; full 7; 130oz | 64.27 | 7 | 3.84
de | kg | 70.6 | 4x0,75, 70,4, voll 6 | 70.4 | 6 | 3
de | kg | 70.6 | 70,4 6 drei liter plus ein viertel | 70.4 | 6 | 3.25
de | kg | 70.6 | 70,4 6 ein liter zum frühstück, je ein halber zum mittag und abend | 70.4 | 6 | ~2
de | kg | 70.6 | 70,4 voll 6 wasser 2l tagsüber 1l training 0,5l nachts | 70.4 | 6 | 3.5
de | kg | 70.6 | 70,4 voll 6 zwei liter und dann noch drei gläser zu 0,25 | 70.4 | 6 | 2.75
de | kg | 70.6 | 70,4 voll 6, 1,5 vor dem gym, 1 dabei, 1 danach | 70.4 | 6 | 3.5
de | kg | 70.6 | 70,4 voll 6, 250 cl | 70.4 | 6 | 2.5
de | kg | 70.6 | 70,4 voll 6, 3 maß | 70.4 | 6 | 3
de | kg | 70.6 | 70,4 voll 6, 35 dl | 70.4 | 6 | 3.5
de | kg | 70.6 | 70,4 voll 6, fünf halbe liter | 70.4 | 6 | 2.5
de | kg | 70.6 | 70,4 voll 6, getrunken 3 liter, davon 1 beim training | 70.4 | 6 | 3
de | kg | 70.6 | 70,4 voll 6, sechs halbe und eine ganze | 70.4 | 6 | ~4
de | kg | 70.6 | 70,4, 6, 2 + 1,5 liter | 70.4 | 6 | 3.5
de | kg | 70.6 | 70,4, 6, 7 Gläser Wasser, 3 Tassen Tee, ne Flasche | 70.4 | 6 | ~-
de | kg | 70.6 | zwei mal eineinhalb liter, 70,4, voll 6 | 70.4 | 6 | 3
de | kg | 81.2 | 178,4 pfund sagt die hotelwaage, voll 8, 5 liter | ~80.92 | 8 | 5
de | kg | 81.2 | 5 l - 80,9 kg - 8 | 80.9 | 8 | 5
de | kg | 81.2 | 5l bei 80,9kg und 8/10 | 80.9 | 8 | 5
de | kg | 81.2 | 8 fülle, 5 wasser, 80,9 gewicht | 80.9 | 8 | 5
de | kg | 81.2 | 80 9 8 5 | ~80.9 | ~8 | ~5
de | kg | 81.2 | 80 Punkt 9 Fülle 8 Wasser 5 Punkt 5 | 80.9 | 8 | 5.5
de | kg | 81.2 | 80,9 8 5, 2 stück kuchen sorry | 80.9 | 8 | 5
de | kg | 81.2 | 80,9 8 5, kardio 40 min bei 130 puls | 80.9 | 8 | 5
de | kg | 81.2 | 80,9 85 | 80.9 | ~8 | ~5
de | kg | 81.2 | 80,9 fülle8 wasser5 | 80.9 | 8 | 5
de | kg | 81.2 | 80,9 voll 8 ein liter unter soll | 80.9 | 8 | ~2.5
de | kg | 81.2 | 80,9 voll 8 halber liter mehr als gestern | 80.9 | 8 | ~-
de | kg | 81.2 | 80,9 voll 8 wasser keine ahnung, 2 flaschen oder so | 80.9 | 8 | ~-
de | kg | 81.2 | 80,9 voll sieben komma fünf wasser 5 | 80.9 | 7.5 | 5
de | kg | 81.2 | 80,9 wie gestern fast, voll 8, 5 l | 80.9 | 8 | 5
de | kg | 81.2 | 80,9, prall, 5 l | 80.9 | ~- | 5
de | kg | 81.2 | 80,9, voll 7 1/2, 5 l | 80.9 | 7.5 | 5
de | kg | 81.2 | 80,9,8,5 | 80.9 | 8 | 5
de | kg | 81.2 | 80,985 | ~80.9 | ~8 | ~5
de | kg | 81.2 | 80,9kgF8 5l | 80.9 | 8 | 5
de | kg | 81.2 | 80;9 8 5 | 80.9 | 8 | 5
de | kg | 81.2 | 8O,9 8 5 | 80.9 | 8 | 5
de | kg | 81.2 | 8️⃣0️⃣,9️⃣ 8️⃣ 5️⃣ | 80.9 | 8 | 5
de | kg | 81.2 | F8W5 80,9 | 80.9 | 8 | 5
de | kg | 81.2 | Fülle: 8, Gew: 80,9, Trinken: 5 | 80.9 | 8 | 5
de | kg | 81.2 | G80,9F8W5 | 80.9 | 8 | 5
de | kg | 81.2 | acht von zehn, fünf liter, achtzig neun | 80.9 | 8 | 5
de | kg | 81.2 | achtzig komma neun fülle acht wasser fünf komma fünf | 80.9 | 8 | 5.5
de | kg | 81.2 | achtzig punkt neun fülle acht wasser fünf | 80.9 | 8 | 5
de | kg | 81.2 | achtzigeinhalb, siebeneinhalb, viereinhalb | 80.5 | 7.5 | 4.5
de | kg | 81.2 | anderthalb kilo drauf, voll 9, 5 liter | 82.7 | 9 | 5
de | kg | 81.2 | ca 81, fülle eher 8 als 7, 5 liter | 81 | 8 | 5
de | kg | 81.2 | drei zehntel runter, fülle 8, 5 liter | 80.9 | 8 | 5
de | kg | 81.2 | f=8 g=80,9 w=5 | 80.9 | 8 | 5
de | kg | 81.2 | gewicht unverändert, voll 8, 5 l | 81.2 | 8 | 5
de | kg | 81.2 | keine waage hier, fülle 8, 2 liter vor und 3 nach dem training | - | 8 | 5
de | kg | 81.2 | liter 5 kilo 80,9 fülle 8 | 80.9 | 8 | 5
de | kg | 81.2 | schlaf 7:20, puls 47, 80,9, voll 8, 5 l, 22 uhr bett | 80.9 | 8 | 5
de | kg | 81.2 | um 5.50 uhr gewogen 80,9, puls 47, voll 8, 5 l | 80.9 | 8 | 5
de | kg | 81.2 | voll 8, wasser 5, gewicht minus 0,3 | 80.9 | 8 | 5
de | kg | 81.2 | voll so ne 8, wasser waren 5, gewogen 80,9 | 80.9 | 8 | 5
de | kg | 81.2 | zweimal gewogen, beide male 80,9, voll 8, 5 l | 80.9 | 8 | 5
de | us | 64 | 140,4 lb, voll 6, eine gallone | 63.68 | 6 | 3.79
de | us | 64 | 140,4 voll 6 60 unzen früh und 60 abends | 63.68 | 6 | 3.55
"""
