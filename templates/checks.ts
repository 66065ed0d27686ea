import type { Block, Value } from "../src/template/plan";

/** Row of the first check on the Job tab. */
const FIRST = 49;

const WAITS = "waits for the first check";

/** A check that has a meaning only where everything calculates. */
const once = (result: string) =>
	`=IF($D$${FIRST}<>"fine";"${WAITS}";${result})`;

/** A verdict that another tab gives; what is not said to be wrong is fine. */
const verdict = (cell: string) =>
	`=IF(ISERROR(${cell});"Look: it shows an error: point at it to read why";IF(LEFT(${cell};4)="Look";${cell};"fine"))`;

const errorsIn = (range: string) => `SUMPRODUCT(ISERROR(${range})*1)`;

const sumOfErrors = (ranges: readonly string[]) =>
	ranges.map(errorsIn).join("+");

/** Where an error cell or a blank would make other checks say nothing, tab by tab as one follows from the other. */
const ON_JOB = sumOfErrors(["M11", "P11:AB30", "AC11:AH30", "L49:O49"]);
const ON_TONES = sumOfErrors([
	"{at:Tones.binder}",
	"{at:Tones.headroom}",
	"{at:Tones.tone_weights}",
	"{at:Tones.differences}",
]);
const ON_CARD = sumOfErrors([
	"{at:Pour card.weigh_out}",
	"{at:Pour card.plan}",
	"{at:Pour card.plan_number}",
]);

const CREW = 'IF($O$6="";{studio:crew};$O$6)';

/** Mass of the lightest load, and how much lighter it is than the one on the Pour card. */
const LIGHTEST =
	"MIN(ARRAYFORMULA(IF(ISNUMBER(O49:O88);O49:O88*{studio:mixer_capacity};10^9)))";
const LIGHTER = `SUMIF(L49:L88;{job}load;N49:N88)/${LIGHTEST}`;

const PLAN_ACTIONS = "INDEX({at:Pour card.plan};0;3)";
const PLAN_VESSELS = "INDEX({at:Pour card.plan};0;2)";
const PLAN_LEFT = "INDEX({at:Pour card.plan};0;8)";

/** Least undosed mix into which pigment is folded in the mixer, in the lightest load. */
const LEAST_DOSED = `MIN(ARRAYFORMULA(IF((${PLAN_ACTIONS}="add")*(${PLAN_VESSELS}="mixer")*ISNUMBER(${PLAN_LEFT});${PLAN_LEFT};10^9)))/(${LIGHTER})`;

type Check = readonly [
	what: string,
	result: string,
	weight: 1 | 2 | 3,
	cell: string,
];

const checks: readonly Check[] = [
	[
		"Everything calculates",
		`=IF(${ON_JOB}+${ON_TONES}+${ON_CARD}>0;IF(SUM(B11:B30)>40;"Look: there is room for 40 castings: split the job";IF((${ON_JOB}=0)*(LEFT({at:Tones.tones_check};4)="Look");{at:Tones.tones_check};"Look: a cell shows an error"&IF(${ON_JOB}>0;IF(ISERROR(P11);" under Face";"");IF(${ON_TONES}>0;" on the Tones tab";" on the Pour card"))&": point at it to read why"));IF(({job}mix_total=0)*(SUM(T11:T30)=0);"Look: there is nothing to pour yet: type the pieces";IF(({at:Tones.tones_check}="fine")+(LEFT({at:Tones.tones_check};7)="Weights")=0;IF(LEFT({at:Tones.tones_check};4)="Look";{at:Tones.tones_check};"Look: on the Tones tab: "&{at:Tones.tones_check});"fine")))`,
		3,
		"{cell:Job.pieces}",
	],
	[
		"Pigment limit of every tone",
		once(
			'IF(COUNTIF({at:Tones.headroom};"<0")=0;"fine";"Look: a tone is over its pigment limit: dose it less, or name a stronger pigment")',
		),
		3,
		"{cell:Tones.headroom}",
	],
	[
		"Weights belong to this plan",
		verdict("{at:Pour card.plan_check}"),
		3,
		"{cell:Pour card.plan_check}",
	],
	[
		"Every mold is the right hand",
		once(
			'IF(COUNTIF(AC11:AF30;"Look:*")=0;"fine";"Look: say how it is cast, where its notch is and its drop edge: else the wrong hand may be built")',
		),
		3,
		"{cell:Job.faces}",
	],
	[
		"The crew can lift every piece",
		once(
			`IF(SUM(ARRAYFORMULA(IF(ISNUMBER(U11:U30);IF(IF(ISNUMBER(X11:X30);X11:X30>${CREW};TRUE);IF(U11:U30>N({studio:equipment});1;0);0);0)))=0;"fine";"Look: a piece is too heavy for the crew and the lifting equipment: more hands, equipment, or two pieces")`,
		),
		3,
		"{cell:Job.weights}",
	],
	[
		"Slabs carried flat by their ends",
		once(
			'IF(MAX(Z11:Z30)*2<=1;"fine";"Look: a slab would crack: carry it on edge or on a board (twice its stress is above its strength)")',
		),
		3,
		"{cell:Job.stress_shares}",
	],
	[
		"Knockouts stay down",
		'=IF(COUNTA(G34:O41)=0;"fine";IF(ISERROR(R34);"Look: a knockout cannot be worked out: point at its error to read why";IF(SUM(ARRAYFORMULA(IF(ISNUMBER(R34:R41);IF(R34:R41>IF(ISNUMBER(O34:O41);O34:O41;0);1;0);0)))=0;"fine";"Look: a knockout would float: fasten it, or weigh it down with more")))',
		3,
		"{cell:Job.knockouts}",
	],
	[
		"Every casting fits in one load",
		once(
			'IF(MAX(ARRAYFORMULA(IF(ISNUMBER(U11:U30);U11:U30*(1+$C$8);0)))<={studio:mixer_capacity};"fine";"Look: a piece is more than the mixer takes: cold joints and color differences are likely")',
		),
		2,
		"{cell:Job.load_shares}",
	],
	[
		"Every load is enough to blend",
		once(
			`IF(COUNT(O49:O88)=0;"fine";IF(${LIGHTEST}>={studio:least_blend};"fine";"Look: a load is less than the mixer blends well: pour it with another, or make more"))`,
		),
		2,
		"{cell:Job.load_shares}",
	],
	[
		"Every tone is enough to blend",
		once(
			`IF(COUNTIF(${PLAN_ACTIONS};"add")=0;"fine";IF(${LEAST_DOSED}>={studio:least_blend};"fine";"Look: a tone in the mixer is less than it blends well: fold that one in a bucket"))`,
		),
		2,
		"{cell:Pour card.plan}",
	],
	[
		"Every dose can be weighed to 5%",
		once(
			`IF(COUNT({at:Pour card.dose_errors})=0;"fine";IF(MAX({at:Pour card.dose_errors})*(${LIGHTER})<=1/20;"fine";"Look: a dose of a small load is too small for the gram scale: weigh it with more mix, or as a diluted paste"))`,
		),
		2,
		"{cell:Pour card.plan}",
	],
	[
		"The card has columns for every load",
		once(
			'IF({job}loads<=8;"fine";"Look: the Pour card has columns for 8 loads: split the job")',
		),
		2,
		"{cell:Job.load_numbers}",
	],
	[
		"Waste covers reserve and what sticks",
		once(
			'IF({job}loads=0;"fine";IF($C$8*{job}mix_total/(1+$C$8)>={studio:reserve}*{job}mix_total+{studio:sticks}*{job}loads*{at:Tones.vessels};"fine";"Look: waste is less than the reserve and what sticks: raise it, or the last mold runs short"))',
		),
		2,
		"{cell:Job.waste}",
	],
	[
		"The steps fit in the working time",
		verdict("{at:Pour card.time_check}"),
		2,
		"{cell:Pour card.time_check}",
	],
	[
		"The mix is not too warm",
		'=IF(ISERROR({at:Pour card.mix_temperature});"Look: it shows an error: point at it to read why";IF(ISNUMBER({at:Pour card.mix_temperature});IF({at:Pour card.mix_temperature}>{studio:warmest_mix}+1;"Look: the mix will be warmer than wanted and stiffen early: colder water, or ice";"fine");"fine"))',
		2,
		"{cell:Pour card.mix_temperature}",
	],
	[
		"Drying before it is covered",
		verdict("{at:Cure.drying}"),
		2,
		"{cell:Cure.drying}",
	],
	[
		"The date can be met",
		verdict("{at:Cure.date_met}"),
		2,
		"{cell:Cure.date_met}",
	],
	[
		"The price covers the cost",
		'=IF(ISERROR({at:Cost.price})+ISERROR({at:Cost.cost})>0;"Look: it shows an error: point at it to read why";IF(ISNUMBER({at:Cost.price})*ISNUMBER({at:Cost.cost});IF({at:Cost.price}<{at:Cost.cost};"Look: the price is below the cost: this job loses money";IF(LEFT({at:Cost.price_met};4)="Look";{at:Cost.price_met};"fine"));"fine"))',
		2,
		"{cell:Cost.price}",
	],
	[
		"Every pigment is on the Pigments tab",
		once(
			'IF(COUNTA({job}pigments)=COUNT({at:Tones.maxima});"fine";"Look: a pigment is missing there: its limit is not known")',
		),
		2,
		"{cell:Tones.pigments}",
	],
	[
		"Swatches match this mix and finish",
		once(
			'IF(LEFT({at:Tones.swatches_used};4)="Look";{at:Tones.swatches_used};IF(COUNTIF({at:Tones.told_apart};"no color*")=0;"fine";"Look: a tone has no matching swatch: cast samples of this mix and finish, and note them on Swatches"))',
		),
		1,
		"{cell:Tones.swatches_used}",
	],
	[
		"Neighboring tones can be told apart",
		once(
			'IF(COUNTIF({at:Tones.told_apart};"Look: hard*")=0;"fine";"Look: two tones look alike: part their doses, or cast one tone less")',
		),
		1,
		"{cell:Tones.told_apart}",
	],
	[
		"Tone shares add up to 100%",
		once(
			'IF(ABS({at:Tones.share_total}-1)<1/1000;"fine";"Look: shares are not 100% together: they count as parts of the whole")',
		),
		1,
		"{cell:Tones.share_total}",
	],
];

export const CHECKS_END = FIRST + checks.length - 1;

const rows = (of: (check: Check) => readonly Value[]) => checks.map(of);

/** What could be wrong with the job: in words for who reads the tab, and as a table for the panel. */
export const checkBlocks: readonly Block[] = [
	{ at: `A${FIRST - 2}`, look: "total", rows: [["Checks"]] },
	{
		at: `A${FIRST - 1}`,
		look: "heading",
		rows: [
			[
				"What is checked",
				"",
				"",
				"Result, and what to do",
				"",
				"",
				"",
				"",
				"",
				"",
			],
		],
	},
	{ at: `A${FIRST}`, look: "label", rows: rows(([what]) => [what]) },
	{ at: `D${FIRST}`, look: "result", rows: rows(([, result]) => [result]) },
	{
		at: `AI${FIRST}`,
		look: "result",
		slot: "checks",
		size: [checks.length, 4],
		rows: checks.map(([, , weight, cell], index) => [
			index === 0 ? `=ARRAYFORMULA(A${FIRST}:A${CHECKS_END})` : "",
			index === 0 ? `=ARRAYFORMULA(D${FIRST}:D${CHECKS_END})` : "",
			weight,
			cell,
		]),
	},
];

/** How many checks say what to look at. */
export const TO_LOOK_AT = `=COUNTIF(D${FIRST}:D${CHECKS_END};"Look:*")`;

/** The first that does, the worst being above. */
export const WORST = `=IF(COUNTIF(D${FIRST}:D${CHECKS_END};"Look:*")=0;"";INDEX(D${FIRST}:D${CHECKS_END};MATCH("Look:*";D${FIRST}:D${CHECKS_END};0)))`;
