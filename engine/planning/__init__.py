"""Plans drafted, explained, reviewed, rescaled and learnt from; is a peak week worth it; travel.

What limits cost as a share of what may be needed is `room`, what a trial's load would teach
`teaching`. To change what is drafted or reviewed: `drafting/draft.py` with its line in
`draft_reasons.py` beside it; `review.py` with an id in `FINDINGS`; sentences in `bot/plan/`. A
draft passes its own review: `pytest -m soak tests/engine/test_review.py`.
"""
