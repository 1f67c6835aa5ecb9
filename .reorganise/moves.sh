set -e
HERE=$(cd "$(dirname "$0")" && pwd); R=$1; M="python3 $HERE/mvname.py $R"
$M bot.coach.words bot.words.common not_your_athlete no_such_day event_button message_names_drug
$M bot.membership.words_leaving bot.words.common coaching_over nobody_coaches_you
$M bot.membership.words_onboarding bot.words.figures volume_unit_name weight_unit_name VOLUME_UNITS WEIGHT_UNITS
$M bot.checkin.words bot.decision.words_target no_plan_yet nothing_planned_today
$M bot.checkin.words bot.words.names GUT_BUTTONS gut_button
$M bot.plan.words bot.words.names KIND_WORDS
$M bot.plan.words bot.words.common draft_plan_button
$M bot.week_picture.words bot.words.common picture_button
$M bot.sheets.words bot.words.common sheet_button
$M bot.calendar.words bot.words.common button=calendar_button
$M bot.decision.words_target bot.words.common not_active
$M bot.athlete.views bot.people.people active
$M bot.decision.signoff bot.people.rights signers
$M bot.undo.words bot.event.words_moving athlete_told_event_back
$M bot.membership.flow_onboarding bot.dialogue.readers zone_of
