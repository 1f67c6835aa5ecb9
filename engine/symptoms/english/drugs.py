"""Words that name a drug. Only to notice that one was named: nothing here is advice on any."""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

import re

from engine.symptoms.cues import Cued
from engine.written.late import Late
from engine.written.word_set import word_set

DRUG_WORDS = word_set(
    """
    diuretic diuretics furosemide spironolactone hydrochlorothiazide hctz bumetanide torasemide
    torsemide chlortalidone chlorthalidone indapamide triamterene amiloride acetazolamide
    eplerenone mannitol dandelion thiazide metolazone tolvaptan desmopressin
    laxative laxatives senna bisacodyl lactulose macrogol picosulfate enema enemas
    clenbuterol clen ephedrine ephedra amphetamine amphetamines yohimbine sibutramine dnp
    dinitrophenol modafinil methylphenidate dexamphetamine synephrine salbutamol albuterol
    cocaine phentermine liothyronine levothyroxine thyroxine cytomel
    steroid steroids anabolics testosterone trenbolone tren stanozolol oxandrolone oxymetholone
    drostanolone nandrolone boldenone methenolone somatropin hgh halotestin fluoxymesterone
    letrozole anastrozole tamoxifen metformin semaglutide tirzepatide prednisolone prednisone
    cortisone
    lasix aldactone dyazide bumex edecrin dulcolax senokot ozempic wegovy mounjaro
    """
)
# Long enough to be put right when misspelt.
DRUG_VOCABULARY = frozenset(word for word in DRUG_WORDS if len(word) >= 7) | {
    "insulin",
    "potassium",
}

_PILL = r"(?:tablets?|tabs?|pills?|capsules?|caps|supplements?|supps?|powder|chloride|citrate|gluconate|drip|injections?|shots?|infusion)"
DRUG_PHRASES = Cued(
    Late(rf"\b(?:{pattern})\b")
    for pattern in (
        rf"potassium (?:\w+ )?{_PILL}",
        rf"{_PILL} (?:of|with) potassium",
        r"(?:\d+ ?(?:mg|g|meq|mmol)|dose|doses|dosing|load|loading|extra dose)(?: of)? potassium",
        r"slow k|k tabs?|potassium dos\w+",
        r"(?:how much|how many|when to|should i|shall i|can i|do i) (?:\w+ ){0,2}potassium",
        r"water (?:pills?|tablets?|tabs?|capsules?)",
        r"overdos\w*|(?:too many|handful of) (?:pills|tablets|capsules)|fat burners?|caffeine (?:pills?|tablets?|tabs?|capsules?)|eca stack|growth hormone",
        r"(?:iv|saline|drip) (?:fluids?|drip|bag)|colon cleanse\w*|stool softeners?",
        r"magnesium citrate|epsom salts? (?:drink|water|to flush)|milk of magnesia",
        r"insulin(?! (?:sensitiv\w+|resist\w+|response|spikes?|levels?|index|release|secretion))",
        r"t3 (?:tabs?|tablets?|dose|mcg)|\d+ ?mcg",
        r"blood pressure (?:pills?|tablets?|meds|medication)|beta blockers?",
    )
)
_FIGURES = Cued(
    Late(rf"\b(?:{pattern})\b")
    for pattern in (
        r"(?:spik\w+|raise[sd]?|blunts?|low|high|improves?|my|the|no|an?) insulin (?:spikes?|response|sensitiv\w+)",
        r"(?:spik\w+|release[sd]?|raise[sd]?|blunts?)(?: \w+)? insulin",
        r"testosterone (?:levels?|test|results?|is|was)|natural testosterone|low testosterone",
        r"(?:anti|non) steroid\w*|steroid free|drug free|no steroids",
        r"laxative effect|diuretic effect|natural laxative",
        r"dandelion (?:salad|leaves|greens)",
    )
)


def drug_spans(clause: str) -> list[tuple[int, int]]:
    """Where in one clause of plain words a drug is named, as (start, end)."""
    spared = clause
    for figure in _FIGURES.worth_trying(clause):
        spared = figure.sub(lambda match: "_" * len(match[0]), spared)
    spans = [m.span() for m in re.finditer(r"[\w']+", spared) if m[0] in DRUG_WORDS]
    for phrase in DRUG_PHRASES.worth_trying(clause):
        spans += [m.span() for m in phrase.finditer(spared)]
    return sorted(spans)
