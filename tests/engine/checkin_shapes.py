"""Mornings as people type them, invented, with what each of them means.

Who writes: last weighed 60.4 kg, water target 3.5 L, yesterday's carbs set to 170 g, in kg and L.
`w` weight in kg, `f` fullness, `d` drunk in L, `s` sharpness, `c` carbs in g, `z` hours of sleep,
`t` training done, `-w` skipped, `ok` all fine, `on` on target, `~` words are kept as a note. A `?` in
front means that it has to be asked about first, and that nothing may be read otherwise than so.
"""

# before the load: sharpness is not asked for
ENGLISH = r"""
60.2 5 w3.5 | w60.2 f5 d3.5
60.2 f5 w3.5 | w60.2 f5 d3.5
sixty point two five four | ?
60.2 5, forgot to count water | w60.2 f5 -d
60.2, look 5, 3.5 litres | w60.2 f5 d3.5
60.2 5, 3 litres to go | ?w60.2 f5
hundred and thirty three pounds, full 5, 3.5 litres | w60.33 f5 d3.5
60.2 5 3.5 | w60.2 f5 d3.5
60,2 5 3,5 | w60.2 f5 d3.5
60.2, 5, 3.5 | w60.2 f5 d3.5
60.2,5,3.5 | w60.2 f5 d3.5
59.1,5,3.5 | w59.1 f5 d3.5
60.2/5/3.5 | w60.2 f5 d3.5
60.2 / 5 / 3.5 | w60.2 f5 d3.5
60.2 / 7/10 / 3.5 | w60.2 f7 d3.5
60.4,full 1/10,3.5 | w60.4 f1 d3.5
60.2 - 5 - 3.5 | w60.2 f5 d3.5
60.2;5;3.5 | w60.2 f5 d3.5
60.2 | 5 | 3.5 | w60.2 f5 d3.5
60.2kg 5 3.5l | w60.2 f5 d3.5
60.2 kg, 5/10, 3.5 L | w60.2 f5 d3.5
60.2kg, 5 out of 10, 3500ml | w60.2 f5 d3.5
weight 60.1 fullness 5 water 3.5 | w60.1 f5 d3.5
water 3.5, 60.1kg, full 5 | w60.1 f5 d3.5
Weight: 60.1, Fullness: 5, Water: 3.5 | w60.1 f5 d3.5
weight=60.1 full=5 water=3.5 | w60.1 f5 d3.5
fullness 5 weight 60.1 water 3.5 | w60.1 f5 d3.5
full 5, drank 3.5, weight 60.1 | w60.1 f5 d3.5
drank 3.5 l, full 5, 60.1 kg | w60.1 f5 d3.5
60.1 weight, 5 full, 3.5 water | w60.1 f5 d3.5
60.1 weight 5 fullness 3.5 water | w60.1 f5 d3.5
5 full 3.5 water 60.1 weight | w60.1 f5 d3.5
3.5l water 5 full 60.1kg | w60.1 f5 d3.5
My weight is 60.1, fullness is 5 and water was 3.5 | w60.1 f5 d3.5
weighed in at 60.1 this morning, fullness 5, drank 3.5 | w60.1 f5 d3.5
good morning coach, 60.1 kg, fullness 5, 3.5 litres | w60.1 f5 d3.5
morning! 60.2 5 3.5 | w60.2 f5 d3.5
hi, 60.2 5 3.5 thanks | w60.2 f5 d3.5
W: 60.1 kg F: 5 Water: 3.5 L | w60.1 f5 d3.5
60.1\n5\n3.5 | w60.1 f5 d3.5
weight 60.1\nfullness 5\nwater 3.5 | w60.1 f5 d3.5
60.2 5 3.5 carbs 170 | w60.2 f5 d3.5 c170
60.2 5 3.5 170g carbs | w60.2 f5 d3.5 c170
60.2 5 3.5 170 carbs | w60.2 f5 d3.5 c170
carbs 170, 60.2, 5, 3.5 | w60.2 f5 d3.5 c170
60.2 5 3.5 ate 170 g carbs | w60.2 f5 d3.5 c170
60.2 5 3.5 on target | w60.2 f5 d3.5 on
60.2 5 3.5 carbs on target, all fine | w60.2 f5 d3.5 on ok
60.2 5 3.5 on target fine | w60.2 f5 d3.5 on ok
60.2 5 3.5 hit my target | w60.2 f5 d3.5 on
60.2 5 3.5 on target? yes | w60.2 f5 d3.5 on
60.2 5 3.5 fine | w60.2 f5 d3.5 ok
60.2 5 3.5 all good | w60.2 f5 d3.5 ok
60.2 5 3.5 everything's fine, thanks coach! | w60.2 f5 d3.5 ok
60.2 5 3.5. carbs 310 | w60.2 f5 d3.5 c310
60.2 5 3.5. Carbs 310. | w60.2 f5 d3.5 c310
60.2 5 3.5 ok. carbs 160. | w60.2 f5 d3.5 c160 ok
60.2 5 3.5 170 fine | ?w60.2 f5 d3.5 c170
60.2 5 3.5 170 | ?w60.2 f5 d3.5 c170
60.2 5 3.5 palpitations all night | w60.2 f5 d3.5 ~
60.2, 5, 3.5 palpitations all night | w60.2 f5 d3.5 ~
weight 60.2 fullness 5 water 3.5 palpitations | w60.2 f5 d3.5 ~
60.2 5 3 rice cakes | w60.2 f5 ~
60.2, 5, 3.5, 170 | ?w60.2 f5 d3.5 c170
60.2 5 3.5 170g | ?w60.2 f5 d3.5 c170
60.2 5 3.5 4 | ?w60.2 f5 d3.5
60.2 5 3.5 170 4 | ?w60.2 f5 d3.5 c170
on target? no, 60.2 5 3.5 | w60.2 f5 d3.5 ~
60.2 5 3.5 on target? no | w60.2 f5 d3.5 ~
60.2 5 3.5 not on target | w60.2 f5 d3.5 ~
60.2 5 3.5 over target | w60.2 f5 d3.5 ~
60.2 5 3.5 slept badly | w60.2 f5 d3.5 ~
60.2 5 3.5 fine but dizzy | w60.2 f5 d3.5 ~
60.2 5 3.5 not fine | w60.2 f5 d3.5 ~
60.2 5 3.5 slept 5 hours | w60.2 f5 d3.5 z5 ~
60.2 5 3.5 6.5h sleep | w60.2 f5 d3.5 z6.5 ~
60.2 5 3.5 sleep 7 | w60.2 f5 d3.5 z7 ~
60.2 5 3.5 1.5h cardio | w60.2 f5 d3.5 ~
60.2 5 3.5 5 rice cakes | w60.2 f5 d3.5 ~
60.2 5 3.5, had 5 rice cakes and 2 eggs | w60.2 f5 d3.5 ~
60.2 5 3.5 10k steps | w60.2 f5 d3.5 ~
60.2 5 3.5 12000 steps | w60.2 f5 d3.5 ~
60.2 5 3.5 20 min cardio | w60.2 f5 d3.5 ~
60.2 5 3.5 woke up at 3 | w60.2 f5 d3.5 ~
60.2 5 3.5 carbs 1.5k | ?w60.2 f5 d3.5 c1500
60.2 5 3.5 carbs 1,5k | ?w60.2 f5 d3.5 c1500
60.2 5 3.5 training done | w60.2 f5 d3.5 tas-planned
60.2 5 3.5 trained as planned | w60.2 f5 d3.5 tas-planned
60.2 5 3.5 skipped cardio | w60.2 f5 d3.5 tless
60.2 5 3.5 no gym | w60.2 f5 d3.5 tnone
60.2 5 3.5, did not train | w60.2 f5 d3.5 tnone
60.2 5 3.5 extra cardio | w60.2 f5 d3.5 tmore
60.2 5 3.5, no training today | w60.2 f5 d3.5 ~
about 60 5 3.5 | w60 f5 d3.5
60ish, full 5, roughly 3.5 litres | w60 f5 d3.5
~60 5 ~3.5 | w60 f5 d3.5
around 60.2 kg, fullness about 5, approx 3.5 L | w60.2 f5 d3.5
ca. 60.2, 5, ca. 3.5 | w60.2 f5 d3.5
60-61 5 3.5 | ?f5 d3.5
60 to 61, full 5, water 3.5 | ?f5 d3.5
between 60 and 61, fullness 5, water 3.5 | ?f5 d3.5
60.2 4-5 3.5 | w60.2 f4.5 d3.5
60.2, fullness 4 or 5, water 3.5 | w60.2 f4.5 d3.5
60.2 5 3-4 litres | w60.2 f5 d3.5
60.2 5 over 3 litres | ?w60.2 f5
weight 60.2, pretty flat, water 3.5 | ?w60.2 d3.5
60.2 pretty flat 3.5 | ?w60.2 d3.5
60.2 kg, very full, 3.5 l | ?w60.2 d3.5
flat as a pancake, 60.2 kg, 3.5 l | ?w60.2 d3.5
no scale today, full 5, water 3.5 | -w f5 d3.5
no scale, 5, 3.5 | -w f5 d3.5
no scale, the battery is empty. 5 3.5 | -w f5 d3.5 ~
scale broken. full 5 water 3.5 | -w f5 d3.5
didn't weigh, fullness 5, drank 3.5 | -w f5 d3.5
weight skip, full 5, water 3.5 | -w f5 d3.5
60.2 5 water unknown | w60.2 f5 -d
60.2, full 5, no idea what I drank | w60.2 f5 -d
60.2 5 | w60.2 f5
69.1 5 | ?f5
60.2 | w60.2
weight 60.1 | w60.1
60.1 kg | w60.1
full 5 | f5
fullness 5/10 | f5
water 3.5 | d3.5
drank 3.5 litres | d3.5
3.5 l of water | d3.5
I drank 3.5 l yesterday | d3.5
fullness 5, water 3.5 | f5 d3.5
full 5 water 3.5 | f5 d3.5
60.2 water 3.5 | w60.2 d3.5
60.2 full 5 water 3.5 | w60.2 f5 d3.5
full5 water3.5 60.2kg | w60.2 f5 d3.5
60.2kg full five water three and a half | w60.2 f5 d3.5
sixty kg, full 5, 3.5 l | w60 f5 d3.5
60.2 55 3.5 | ?w60.2 d3.5
60.2 50 3.5 | ?w60.2 d3.5
60.2 5.5 3.5 | w60.2 f5.5 d3.5
60.2 0 3.5 | ?w60.2 d3.5
60.2 11 3.5 | ?w60.2 d3.5
60.2 -5 3.5 | ?w60.2 d3.5
133 5 3.5 | ?f5 d3.5
133 kg, 5, 3.5 | ?f5 d3.5
602 5 3.5 | ?f5 d3.5
6.02 5 3.5 | ?f5 d3.5
71.2 5 3.5 | ?f5 d3.5
60.2 5 35 | ?w60.2 f5
60.2 5 3500 | ?w60.2 f5
60.2 5 350 | ?w60.2 f5
60.2 5 3,500 | ?w60.2 f5
60.2 5 120 fl oz | ?w60.2 f5
60.2 5 8 | ?w60.2
60.2 4 7 | ?w60.2
60.2 3.5 5 | ?w60.2 f5 d3.5
5 3.5 60.2 | w60.2 f5 d3.5
3.5l 5 60.2kg | w60.2 f5 d3.5
60.2 7/103 .25l | ?w60.2 f7
60.2 ½7 l | w60.2 ~
60.2 ½7 3.5 | ?w60.2
60.2 /10 3.5 | ?w60.2 d3.5
60.2 5/10 3.5/10 | ?w60.2 f5
60.2 5² 3.5 | ?w60.2
60.2 5 3½ | w60.2 f5 d3.5
60.2 5x5 3.5 | ?w60.2
weight 60.4 yesterday, today 60.1, full 5, water 3.5 | w60.1 f5 d3.5 ~
should weigh 60, full 5, water 3.5 | ?f5 d3.5
60 full 5 | w60 f5
water 3.5 water 4, 60.2, full 5 | ?w60.2 f5
60.2 5 2l water 1.5l coffee | ?w60.2 f5
60.2 5 3.5 60.4 | ?f5 d3.5
60.2 5 3.5 sharp 4 | w60.2 f5 d3.5 s4
can I drink 4 litres? | ~
2 eggs and rice | ~
squatted 140 kg for 5 reps | ~
see you at 7 | ~
7am works | ~
12 days out | ~
14.5.2027 | ~
my 5 year old has fever | ~
ate 5 meals | ~
hello | .
I weigh more than I want | ~
60.2, 5 and 3.5 | w60.2 f5 d3.5
60.2, fullness: 5 (10 is best), water 3.5 | ?w60.2 f5 d3.5
weight: 60.2 kg (132.7 lb), full 5, water 3.5 l | w60.2 f5 d3.5
132.7 lb, 5, 3.5 | w60.19 f5 d3.5
9st 7lb, 5, 3.5 | w60.33 f5 d3.5
9 stone 7, full 5, water 3.5 | w60.33 f5 d3.5
sixty and a half, full six, three litres | w60.5 f6 d3
ate 165g of carbs, 60.0, six, 3 and a half | w60 f6 d3.5 c165
60.2, between 5 and 6, about 3 and a half | w60.2 f5.5 d3.5
60.2 5 2 x 1.5 l | w60.2 f5 d3
60.2 5 3 x 2 | w60.2 f5 ~
60.2 5 3 litres and a half | w60.2 f5 d3.5
60.2, full five or six, 3.5 | w60.2 f5.5 d3.5
60 point 2 full 5 water 3 point 5 | w60.2 f5 d3.5
60 1/2, 6, 3.5 | w60.5 f6 d3.5
60 point, 5, 3.5 | ?
60 2 5 3.5 | ?w60.2 f5 d3.5
60.2 5 3 5 | ?w60.2 f5 d3.5
59,1,5,3.5 | w59.1 f5 d3.5
170, 60.2, 5, 3.5, 4 | ?
nine stone seven, full 5, three litres | w60.33 f5 d3
nine stone dead, 6, 4 l | ?f6 d4
60.2 no 60.4, 5, 3.5 | w60.4 f5 d3.5
60.2 5 3.5 no 4.5 | ?w60.2 f5
wieght 60.2 fulness 5 watter 3.5 | w60.2 f5 d3.5
height 170 60.2 5 3.5 | w60.2 f5 d3.5 ~
👉 60.2 👉 5 👉 3.5 | w60.2 f5 d3.5
60.2 → 5 → 3.5 | w60.2 f5 d3.5
dont know the weight, full 7, 4 litres | -w f7 d4
60.4, didn't count the water | w60.4 -d
same as yesterday 60.2, bit fuller, 6 now, 3.5 again | w60.2 f6 d3.5
woke up at 6, 60.2, full 5, 3.5 l, 10k steps | w60.2 f5 d3.5 ~
60.2 kilos this morning so down 0.3, fullness is a 4, only got 3 litres in | w60.2 f4 d3 ~
ate 5 rice cakes, 60.2, 3.5 litres | w60.2 d3.5 ~
60.2, 7 outta 10, 3.5 | w60.2 f7 d3.5
60.2 5 3.5, six out of ten for mood | w60.2 f5 d3.5 ~
60.2 5 8 glasses | ?w60.2 f5
60.2 5 3.5, had 2 glasses of wine | w60.2 f5 d3.5 ~
""".strip()

# from the load on: sharpness is asked for
ENGLISH_LOAD = r"""
60.2 5 3.5 4 the hotel bed was hard | w60.2 f5 d3.5 s4 ~
60.2 5 3.5 4 | w60.2 f5 d3.5 s4
60.2 5 3.5 4/5 | w60.2 f5 d3.5 s4
60.2,5,3.5,4 | w60.2 f5 d3.5 s4
60.2 5 3.5 4 170 | ?w60.2 f5 d3.5 s4 c170
60.2 5 3.5 170 | ?w60.2 f5 d3.5 c170
60.2 5 3.5 sharp 4 carbs 170 fine | w60.2 f5 d3.5 s4 c170 ok
sharpness 4, fullness 5, water 3.5, weight 60.2 | w60.2 f5 d3.5 s4
4 sharp, 5 full, 3.5 water, 60.2 kg | w60.2 f5 d3.5 s4
60.2 4 5 4.5 hours slept | w60.2 f4 d5 z4.5 ~
60.2 5 3.5 1.5h cardio | w60.2 f5 d3.5 ~
60.2 5 3.5 5 rice cakes | w60.2 f5 d3.5 ~
60.2 5 3.5 4 slept badly | w60.2 f5 d3.5 s4 ~
60.2 5 3.5 4 but tired | w60.2 f5 d3.5 s4 ~
60.2 5 3.5 4.5 | ?w60.2 f5 d3.5
60.2 5 3.5 6 | ?w60.2 f5 d3.5
60.2 5 3.5 soft and blurry | ?w60.2 f5 d3.5
60.2, pretty flat, 3.5, crisp | ?w60.2 d3.5
60.2 5 3.5 8h | w60.2 f5 d3.5 ~
60.2 5 3.5 5 days out | w60.2 f5 d3.5 ~
60.2 5 3.5, 3 coffees | w60.2 f5 d3.5 ~
60.2 5 3.5 4 carbs on target | w60.2 f5 d3.5 s4 on
60.2 5 3.5 sharp 9 | ?w60.2 f5 d3.5
60.2 6 4 3/5 | w60.2 f6 d4 s3
60.2 6 4 7/10 | ?w60.2 f6 d4
""".strip()

GERMAN = r"""
gewicht sechzig null, sieben voll, vier liter | w60 f7 d4
60,2 5, drei liter neun | w60.2 f5 d3.9
sechzig kilo zwei, voll 5, 3,5 liter | w60.2 f5 d3.5
60,2 5, 2 liter noch offen | ?w60.2 f5
60,2 und 5, wasser vergessen zu zählen | w60.2 f5 -d
hatte 60,2 auf der anzeige, 5 von 10, 3,5 liter intus | w60.2 f5 d3.5
60,2 5 3,5 ziel ja | w60.2 f5 d3.5 on
60,2 füllung 5 wasser 3,5 | w60.2 f5 d3.5
60,2 5 3,5 | w60.2 f5 d3.5
60,2 5 3,5 Herzrasen die ganze Nacht | w60.2 f5 d3.5 ~
60.2 5 3.5 | w60.2 f5 d3.5
60,2; 5; 3,5 | w60.2 f5 d3.5
60,2, 5, 3,5 | w60.2 f5 d3.5
60,2/5/3,5 | w60.2 f5 d3.5
60.2,5,3.5 | w60.2 f5 d3.5
60,2 - 5 - 3,5 | w60.2 f5 d3.5
60,2kg 5 3,5l | w60.2 f5 d3.5
60,2 Kilo, 5 von 10, 3,5 Liter | w60.2 f5 d3.5
60,2 kg, 5/10, 3500 ml | w60.2 f5 d3.5
Gewicht 60,1 voll 5 Wasser 3,5 | w60.1 f5 d3.5
Gewicht: 60,1, Fülle: 5, Wasser: 3,5 | w60.1 f5 d3.5
Wasser 3,5, 60,1 kg, voll 5 | w60.1 f5 d3.5
Wasser 3,5 l, voll 5, 60,1 kg | w60.1 f5 d3.5
getrunken 3,5 l, voll 5, gewogen 60,1 | w60.1 f5 d3.5
60,1 Gewicht, 5 voll, 3,5 Wasser | w60.1 f5 d3.5
5 voll 3,5 Wasser 60,1 Gewicht | w60.1 f5 d3.5
3,5 l Wasser 5 voll 60,1 kg | w60.1 f5 d3.5
Mein Gewicht ist 60,1, voll 5 und Wasser war 3,5 | w60.1 f5 d3.5
ich wiege 60,1 kg, bin voll 5, 3,5 Liter getrunken | w60.1 f5 d3.5
heute 60,1 kg, voll 5, gestern 3,5 l getrunken | w60.1 f5 d3.5
guten Morgen, 60,2 5 3,5 | w60.2 f5 d3.5
Moin Coach 60,2 5 3,5 danke | w60.2 f5 d3.5
60,1\n5\n3,5 | w60.1 f5 d3.5
Gewicht 60,1\nvoll 5\nWasser 3,5 | w60.1 f5 d3.5
60,2 5 3,5 KH 170 | w60.2 f5 d3.5 c170
60,2 5 3,5 170 g KH | w60.2 f5 d3.5 c170
60,2 5 3,5 170 g Kohlenhydrate | w60.2 f5 d3.5 c170
KH 170, 60,2 kg, voll 5, 3,5 l | w60.2 f5 d3.5 c170
60,2 5 3,5 170 KH gegessen | w60.2 f5 d3.5 c170
60,2 5 3,5 KH nach Plan | w60.2 f5 d3.5 on
60,2 5 3,5 im Ziel, alles gut | w60.2 f5 d3.5 on ok
60,2 5 3,5 Ziel erreicht | w60.2 f5 d3.5 on
60,2 5 3,5 im Ziel? ja | w60.2 f5 d3.5 on
60,2 5 3,5 alles gut | w60.2 f5 d3.5 ok
60,2 5 3,5 passt | w60.2 f5 d3.5 ok
60,2 5 3,5 alles bestens, danke | w60.2 f5 d3.5 ok
60,2 5 3,5. KH 310 | w60.2 f5 d3.5 c310
60,2 5 3,5. Kohlenhydrate 160. Alles gut. | w60.2 f5 d3.5 c160 ok
60,2 5 3,5 170 passt | ?w60.2 f5 d3.5 c170
60,2 5 3,5 170 | ?w60.2 f5 d3.5 c170
60,2, 5, 3,5, 170 | ?w60.2 f5 d3.5 c170
60,2 5 3,5 170 g | ?w60.2 f5 d3.5 c170
60,2 5 3,5 4 | ?w60.2 f5 d3.5
im Ziel? nein, 60,2 5 3,5 | w60.2 f5 d3.5 ~
60,2 5 3,5 nicht im Ziel | w60.2 f5 d3.5 ~
60,2 5 3,5 schlecht geschlafen | w60.2 f5 d3.5 ~
60,2 5 3,5 gut, aber schwindelig | w60.2 f5 d3.5 ~
60,2 5 3,5 nicht gut | w60.2 f5 d3.5 ~
60,2 5 3,5 5 Stunden geschlafen | w60.2 f5 d3.5 z5 ~
60,2 5 3,5 4,5 std geschlafen | w60.2 f5 d3.5 z4.5 ~
60,2 5 3,5 Schlaf 7 | w60.2 f5 d3.5 z7 ~
60,2 5 3,5 7 h Schlaf | w60.2 f5 d3.5 z7 ~
60,2 5 3,5 1,5h Cardio | w60.2 f5 d3.5 ~
60,2 5 3,5 5 Reiswaffeln | w60.2 f5 d3.5 ~
60,2 5 3,5, dazu 2 Kaffee und 3 Eier | w60.2 f5 d3.5 ~
60,2 5 3,5 10000 Schritte | w60.2 f5 d3.5 ~
60,2 5 3,5 20 Minuten Cardio | w60.2 f5 d3.5 ~
60,2 5 3,5 um 3 aufgewacht | w60.2 f5 d3.5 ~
60,2 5 3,5 KH 1,5k | ?w60.2 f5 d3.5 c1500
60,2 5 3,5 Training wie geplant | w60.2 f5 d3.5 tas-planned
60,2 5 3,5 Training gemacht | w60.2 f5 d3.5 tas-planned
60,2 5 3,5 trainiert | w60.2 f5 d3.5 tas-planned
60,2 5 3,5 kein Training | w60.2 f5 d3.5 tnone
60,2 5 3,5, Training ausgefallen | w60.2 f5 d3.5 tnone
60,2 5 3,5 nicht trainiert | w60.2 f5 d3.5 tnone
60,2 5 3,5 Cardio ausgelassen | w60.2 f5 d3.5 tless
60,2 5 3,5 weniger trainiert | w60.2 f5 d3.5 tless
60,2 5 3,5 mehr trainiert | w60.2 f5 d3.5 tmore
60,2 5 3,5, heute kein Training | w60.2 f5 d3.5 ~
etwa 60 5 3,5 | w60 f5 d3.5
ungefähr 60 kg, voll 5, rund 3,5 Liter | w60 f5 d3.5
ca. 60,2, 5, ca. 3,5 | w60.2 f5 d3.5
so um die 60, voll 5, Wasser gut 3,5 | w60 f5 d3.5
knapp 60,2, 5, 3,5 | w60.2 f5 d3.5
~60 5 ~3,5 | w60 f5 d3.5
60-61 5 3,5 | ?f5 d3.5
60 bis 61, voll 5, Wasser 3,5 | ?f5 d3.5
zwischen 60 und 61 kg, voll 5, Wasser 3,5 | ?f5 d3.5
60,2 4-5 3,5 | w60.2 f4.5 d3.5
60,2, voll 4 oder 5, Wasser 3,5 | w60.2 f4.5 d3.5
60,2 5 3-4 Liter | w60.2 f5 d3.5
60,2 5 über 3 Liter | ?w60.2 f5
60,2 5 mindestens 3 Liter | ?w60.2 f5
60,2 kg, rund und voll, 3,5 l | ?w60.2 d3.5
60,2 ziemlich flach 3,5 | ?w60.2 d3.5
60,2 kg, ganz schön platt, Wasser 3,5 | ?w60.2 d3.5
60,2 kg, sehr voll, 3,5 l | ?w60.2 d3.5
keine Waage, voll 5, Wasser 3,5 | -w f5 d3.5
keine Waage heute, 5, 3,5 | -w f5 d3.5
Waage kaputt. voll 5 Wasser 3,5 | -w f5 d3.5
nicht gewogen, voll 5, 3,5 l getrunken | -w f5 d3.5
Gewicht überspringen, voll 5, Wasser 3,5 | -w f5 d3.5
ohne Waage: voll 5, 3,5 l | -w f5 d3.5
60,2 5 Wasser weiß nicht | w60.2 f5 -d
60,2, voll 5, keine Ahnung wie viel ich getrunken habe | w60.2 f5 -d
60,2 5 | w60.2 f5
69,1 5 | ?f5
60,2 | w60.2
Gewicht 60,1 | w60.1
60,1 kg | w60.1
voll 5 | f5
Fülle 5/10 | f5
Wasser 3,5 | d3.5
3,5 Liter getrunken | d3.5
ich hab gestern 3,5 l getrunken | d3.5
voll 5, Wasser 3,5 | f5 d3.5
voll 5 Wasser 3,5 | f5 d3.5
60,2 Wasser 3,5 | w60.2 d3.5
60,2 voll 5 Wasser 3,5 | w60.2 f5 d3.5
voll5 wasser3,5 60,2kg | w60.2 f5 d3.5
60,2 kg voll fünf Wasser dreieinhalb | w60.2 f5 d3.5
60,2 voll 5 std schlaf 7 wasser 3,5 | ?w60.2 z5 d3.5
60,2 kg, voll fünf, dreieinhalb Liter | w60.2 f5 d3.5
60,2 55 3,5 | ?w60.2 d3.5
60,2 5,5 3,5 | w60.2 f5.5 d3.5
60,2 0 3,5 | ?w60.2 d3.5
60,2 11 3,5 | ?w60.2 d3.5
60,2 -5 3,5 | ?w60.2 d3.5
133 5 3,5 | ?f5 d3.5
602 5 3,5 | ?f5 d3.5
71,2 5 3,5 | ?f5 d3.5
60,2 5 35 | ?w60.2 f5
60,2 5 3500 | ?w60.2 f5
60,2 5 3.500 | ?w60.2 f5
60,2 4 7 | ?w60.2
60,2 3,5 5 | ?w60.2 f5 d3.5
5 3,5 60,2 | w60.2 f5 d3.5
3,5l 5 60,2kg | w60.2 f5 d3.5
60,2,5,3,5 | w60.2 f5 d3.5
60,2 7/103 ,25l | ?w60.2 f7
60,2 ½7 l | w60.2 ~
60,2 /10 3,5 | ?w60.2 d3.5
60,2 5 3½ | w60.2 f5 d3.5
Gewicht gestern 60,4, heute 60,1, voll 5, Wasser 3,5 | w60.1 f5 d3.5 ~
sollte 60 wiegen, voll 5, Wasser 3,5 | ?f5 d3.5
Zielgewicht 58, heute 60,2, voll 5, 3,5 l | w60.2 f5 d3.5 ~
60 voll 5 | w60 f5
Wasser 3,5 Wasser 4, 60,2, voll 5 | ?w60.2 f5
60,2 5 2 l Wasser 1,5 l Kaffee | ?w60.2 f5
60,2 5 3,5 scharf 4 | w60.2 f5 d3.5 s4
darf ich 4 Liter trinken? | ~
2 Eier und Reis | ~
140 kg gebeugt, 5 Wiederholungen | ~
bis um 7 | ~
7 Uhr passt | ~
in 12 Tagen | ~
14.5.2027 | ~
mein Sohn ist 5 und krank | ~
hallo | .
60,2, 5 und 3,5 | w60.2 f5 d3.5
132,7 lb, 5, 3,5 | w60.19 f5 d3.5
Waage sagt 60,2, voll 5, Wasser 3,5 | w60.2 f5 d3.5
auf der Waage 60,2, Fülle 5, getrunken 3,5 | w60.2 f5 d3.5
60 Komma 2, fünf, dreieinhalb Liter | w60.2 f5 d3.5
sechzigeinhalb, voll sechs, drei Liter | w60.5 f6 d3
fünf voll, dreieinhalb Wasser, Gewicht einundsechzig | w61 f5 d3.5
gewogen hab ich 60,2 und fühl mich so bei 5 und getrunken hab ich glaub ich dreieinhalb | w60.2 f5 d3.5
60,2 fünfeinhalb 3,5 | w60.2 f5.5 d3.5
60,2 5 2 x 1,5 l | w60.2 f5 d3
60,2 5 3 l und ein halber | w60.2 f5 d3.5
Wasser 3 5 Gewicht 60 1 voll 5 | ?w60.1 f5 d3.5
einundsechzig zwei, voll fünf, Wasser drei fünf | ?w61.2 f5 d3.5
59,1,5,3.5 | w59.1 f5 d3.5
60,2 nein 60,4, 5, 3,5 | w60.4 f5 d3.5
voll 5 nein 6, 60,2, 3,5 | w60.2 f6 d3.5
gewiht 60,2 vol 5 waser 3,5 | w60.2 f5 d3.5
toll 5 60,2 3,5 | ?w60.2 f5 d3.5
👉 60,2 👉 5 👉 3,5 | w60.2 f5 d3.5
Gewicht hab ich nicht, voll 7, 4 Liter | -w f7 d4
60,4 und sonst weiß ich nix, Wasser nicht gezählt | w60.4 -d
wie gestern 60,2, bisschen voller, jetzt 6, wieder 3,5 | w60.2 f6 d3.5
um 6 auf, 60,2, voll 5, 3,5 l, 10.000 Schritte | w60.2 f5 d3.5 ~
60,2 Kilo, also 300 g runter, voll 4, nur 3 Liter geschafft | w60.2 f4 d3 ~
5 Reiswaffeln gegessen, 60,2, 3,5 Liter | w60.2 d3.5 ~
60,2 5 8 Gläser | ?w60.2 f5
""".strip()

GERMAN_LOAD = r"""
60,2 5 3,5 4 das Hotelbett war hart | w60.2 f5 d3.5 s4 ~
60,2 5 3,5 4 | w60.2 f5 d3.5 s4
60,2 5 3,5 4/5 | w60.2 f5 d3.5 s4
60,2 5 3,5 4 170 | ?w60.2 f5 d3.5 s4 c170
60,2 4 5 4,5 std geschlafen | w60.2 f4 d5 z4.5 ~
60,2 5 3,5 Definition 4 KH 170 alles gut | w60.2 f5 d3.5 s4 c170 ok
Schärfe 4, voll 5, Wasser 3,5, Gewicht 60,2 | w60.2 f5 d3.5 s4
60,2 5 3,5 4 schlecht geschlafen | w60.2 f5 d3.5 s4 ~
60,2 5 3,5 4 aber müde | w60.2 f5 d3.5 s4 ~
60,2 5 3,5 5 Reiswaffeln | w60.2 f5 d3.5 ~
60,2 5 3,5 1,5h Cardio | w60.2 f5 d3.5 ~
60,2 5 3,5 4,5 | ?w60.2 f5 d3.5
60,2 5 3,5 6 | ?w60.2 f5 d3.5
60,2 5 3,5 weich und verschwommen | ?w60.2 f5 d3.5
60,2, ziemlich flach, 3,5, knackig | ?w60.2 d3.5
60,2 5 3,5 8 Stunden | w60.2 f5 d3.5 ~
60,2 5 3,5 Definition 9 | ?w60.2 f5 d3.5
""".strip()
