import type { Block } from "../src/template/plan";

/** Pieces that are not a slab. */
const NO_SLAB = '((C11:C30="basin")+(C11:C30="tube")>0)';

/** Words for carrying a piece, by what would break it. */
const CARRY = `=ARRAYFORMULA(IF(ISNUMBER(U11:U30);IF(${NO_SLAB};"by its floor and walls, not by the rim";"on edge"&IF(COUNTIF($A$34:$A$45;A11:A30)>0;", openings stiffened by a bar across";IF((C11:C30="L")+(C11:C30="U")>0;", notch stiffened by a bar across";"")))&IF(ISNUMBER(Z11:Z30);IF(Z11:Z30*2>1;"; flat on a board only";"");"")&IF(ISNUMBER(X11:X30);IF(X11:X30>IF($O$6="";{studio:crew};$O$6);"; more than the crew";"");"");""))`;

/** Who can lift each piece, what it bears of its own weight, and how to carry it. */
export const liftingBlocks: readonly Block[] = [
	{
		at: "X11",
		look: "result",
		size: [20, 1],
		rows: [
			[
				'=IF(ISERROR(AK11);AK11;ARRAYFORMULA(IF(AK11:AK30="lifting equipment";"equipment";IF(AK11:AK30="";"";AK11:AK30))))',
			],
		],
		formats: "text",
		align: "right",
		slot: "people",
	},
	{
		at: "Y11",
		look: "result",
		size: [20, 1],
		rows: [
			[
				'=IF(ISERROR(AJ11);AJ11;IF(OR(COUNT(AJ11:AJ30)=0;{job}density="");"";SELF_WEIGHT_STRESS(AJ11:AJ30;ARRAYFORMULA(IF(ISNUMBER(AJ11:AJ30);H11:H30;""));{job}density;"ends";1;{studio:units})))',
			],
		],
		formats: "number",
	},
	{
		at: "Z11",
		look: "result",
		size: [20, 1],
		rows: [
			[
				'=IF(ISERROR(Y11);Y11;ARRAYFORMULA(IF(ISNUMBER(Y11:Y30);Y11:Y30/{studio:flexural};"")))',
			],
		],
		formats: "percent",
		slot: "stress_shares",
	},
	{ at: "AA11", look: "result", size: [20, 1], rows: [[CARRY]] },
	{
		at: "AK11",
		look: "result",
		size: [20, 1],
		rows: [
			[
				'=IF(ISERROR(U11);U11;IF(COUNT(U11:U30)=0;"";PEOPLE_TO_LIFT(U11:U30;{studio:one_person})))',
			],
		],
	},
	{
		at: "AJ11",
		look: "result",
		size: [20, 1],
		rows: [
			[
				`=IF(ISERROR(AH11);AH11;ARRAYFORMULA(IF(${NO_SLAB}+(C11:C30="area")+(A11:A30="")>0;"";AH11:AH30)))`,
			],
		],
	},
	{
		at: "A31",
		look: "caution",
		rows: [
			[
				"Weights and stress are of a plain, cured slab: fresh from the mold it is weaker. Lift with clear room and one person calling. Local rules and a licensed engineer come first.",
			],
		],
	},
];
