package validate

// A cue is a turn of speech that says how the words near it are meant.
type cue int32

// The cues.
const (
	cueDeny    cue = iota // not, never, no: what follows is denied
	cueReplace            // instead of, without: what follows is not done
	cueAway               // avoid, stop, forget: turns what follows round
	cueCondemn            // unsafe, a myth: speaks against what stands near
	cuePast               // used to, old books: tells what was done once
	cueOthers             // some people, I have heard: tells what others do
	cueChanged            // until I learned better
	cueEndorse            // I still do, it never failed: speaks for it
	cueNeutral            // not only, no matter: denies nothing
)

// cuePhrases holds the phrases of each cue. The longest at a place counts.
var cuePhrases = [...]string{
	cueDeny: `not; never; no; nor; neither; none; nobody; nothing; nowhere; no one; cannot; hardly; scarcely; ain't
		don't|doesn't|didn't|won't|wouldn't|can't|couldn't|shouldn't|mustn't|needn't|isn't|aren't|wasn't|weren't|haven't|hasn't|hadn't
		dont|doesnt|didnt|wont|wouldnt|cant|couldnt|shouldnt|isnt|arent
		under no circumstances|circumstance; by no means; in no way; at no time; never ever; not ever; no never
		do not|never; must not|never; should not|never; need not|never; can not|never; will not|never; may not|never`,
	cueReplace: `instead of; rather than; in place of; as opposed to; in lieu of; without; unlike; other than; in preference to`,
	cueAway: `avoid~; stop|stops|stopped|stopping; skip~; refrain~; resist~; forget~; fail~ to; hesitate~; omit~; neglect~; quit~; cease~; beware~
		give~ up; leave~ off; leave~ .. out; steer~ clear; steer~ away; stay~ away; keep~ .. away; keep~ .. out of
		wary; leery; advise~|recommend~|warn~|caution~|counsel~|advice|warning .. against; warn~ .. about|of; against; discourage~; ban~; forbid~
		prohibit~; afraid; scared; nervous; shy; refuse~; say~ no to; save yourself; lest; no_need to|for; need|reason not to; free of|from; reluctant; too dangerous|risky to; do away with`,
	cueCondemn: `unsafe; unsafely; dangerous; dangerously; hazardous; hazard~; risky; risk~; myth~; misconception~; fallacy; outdated; outmoded; obsolete
		deadly; lethal; has|have|had no place|business; get|gets|got|are|is fooled; fool~ .. people|you|cooks|us; mistake~; mistaken; wrong; wrongly; bad idea|practice|advice|habit|method|way|news; terrible|awful|poor|dreadful idea|practice|advice|way; harm; had its|their day; varies|vary .. acid|acidity|strength|sourness; unpredictable; too weak|short|shallow|mild
		not|isn't|aren't|no_longer|never|nor be? considered|thought? a? safe|recommended|advised|advisable|approved|accepted|acceptable|suitable|reliable|allowed|supported|endorsed|enough|adequate|sufficient|proof
		not|isn't|aren't|no|never a|an|any|the? real|true|tested|safe|good|valid|proper? substitute~|replacement~|guarantee~|option; not|isn't|aren't a|an|any|the real|true|tested|safe|good|valid|proper? .. process|canner; not|isn't|aren't processes|processing|canners|canning
		never|not|isn't a? good|great|wise|smart idea|choice|practice|way; not worth; no longer; no_no; no_nos; debunk~; old wives; discredit~; unreliable; unproven; untested; unacceptable
		asking for trouble; false sense; useless; pointless; worthless; needless; needlessly; unnecessary; unneeded; unwise; foolish; reckless
		makes no sense; out of date; superseded; withdrawn; gamble~; recipe for disaster|botulism|trouble; out of the question
		make~ .. sick|ill; kill~ you|someone; cause~ botulism; discouraged; frowned; taboo; nonsense; nope; false; inadequate; insufficient; problem~; trouble; danger~
		do not do; don't do it|that|this; strongly|dead|firmly against; condemn~; underprocess~`,
	cuePast: `used to; days of; the old|older .. process~|time~|minute~; formerly; in the past; years|decades|generations ago; old|older|oldest recipe~|book~|cookbook~|advice|instruction~|direction~|method~|leaflet~|bulletin~|way|ways|timer~|pamphlet~|guide~|text~|wisdom|habit~|practice~|custom~|days|trick~|rule~
		vintage|antique|grandma's .. recipe~|book~|cookbook~; back then; back in the day; in those days; old fashioned|school
		grandmother~|grandma~|granny|grannies|gran|nana|grandfather|grandpa|nonna|oma; my|her|his|our|your mother|mom|mum|mama|aunt|auntie|great
		was|were once; once common|popular|recommended|thought|taught|believed|considered|done|advised; once upon; generations of; the previous|last generation; nineteen; wartime; in my youth; when i was`,
	cueOthers: `some|many|most|other|lots_of|plenty_of|several|countless of? the? people|cooks|canners|folks|bloggers|blogs|recipes|books|sites|websites|videos|posts|home|readers|families|friends|neighbors|neighbours|influencers
		others; they say; people say|think|believe|claim|tell|insist|swear|still|who; i|i've|we've|we have? heard|read|seen; you may|might|will|have|can|could have? hear|heard|read|seen|see|find|found|come_across; you'll hear|read|see|find
		was|were|been taught|told; said to; supposedly; so called; internet; online; rumour|rumor; the idea|notion|belief|claim|theory|thought|temptation|story that|of
		a|one|another reader|listener|friend|neighbor|neighbour|cousin|commenter|woman|man wrote|asked|told|asks|says|said|swears; asked|ask|asks|asking|wonder~ me? if|whether|why|about|can; commercial~; in europe; traditional|traditionally; some still; who still; people; those who; anyone who`,
	cueChanged: `until|till i|we|she|he learned|learnt|took|read|was|were|found|knew|discovered|went; before i|we knew|learned|learnt|took|read; now i know; i|we no longer; not any more; not anymore; these days we|i|they|it; we now know; i|we stopped|quit|gave; since learned; has changed; have changed; advice changed; science; research`,
	cueEndorse: `so do i|we; i|we still do; still do|works|work; i|we|it|they works? every|great|like; works like a charm; works just fine|as; works fine|great|well|perfectly|every; never had a problem|jar|failure|issue|bad|single; never have had; nobody|no_one|none .. died|sick|ill
		i|we do too; i|we swear by; i|we|and always do|have; never fails|failed; as .. always said|says|did|taught; can't|cannot|can not|never? go wrong; nothing wrong; no harm; i|we still seal|turn|flip|pour|skip|invert|process; that|which is|was how i|we; i am not ashamed; and it works; if it ain't broke; as did|does my; like she|grandma|mom did|does; good enough for; it works; lived to be`,
	cueNeutral: `no matter what|how|who ... say~|hear~|read~|tell~|told|think~; not only; not just; not merely; no matter; no doubt; no wonder; no sooner; no less than; no more than; no later than; nothing but; nothing more; whether or not; or not; if not; why not
		not to mention; not until; no problem; can't wait; cannot wait; not long; not far; nothing beats; nothing easier; couldn't|could_not be easier|simpler|better|quicker; not hard|difficult|complicated; no trouble|fuss|bother; not a problem
		don't|do_not worry; no worries; never|didn't|doesn't|won't hurt|harmed|killed anybody|anyone|nobody|us|me|a; wrong bugs|germs|bacteria|microbes; no pectin|sugar|salt|cook|bake|knead|fail|nonsense|equipment|special; never mind; don't|do_not be surprised|alarmed; not yet; is|are|was|were|be|been|being used to; get|got used to
		can't|cannot beat; not so; no other; against gravity|each|the side|the glass|the rim; some people's; no idea|one; not sure|certain|know; don't|do_not know
		stop watch; until it|they|the stop|stops; nonstop; the time is no; not|n't even; don't|do_not you; won't|wouldn't you; isn't it; aren't they`,
}
