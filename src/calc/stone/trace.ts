/**
 * Where the mix at each place of a piece was before it was poured and folded. Each step keeps areas.
 *
 * @source Sine flow: Schlick et al., Phys. Fluids 25, 052102 (2013). Blinking vortex: Aref, J. Fluid Mech. 143 (1984),
 * from memory. Strengths and lengths of waves were chosen by looking: no source.
 */

/** Places of the pixels, m; a step moves them in place. */
export interface Places {
	x: Float64Array;
	y: Float64Array;
}

export type Placing = "bucket fold" | "mold lay-up";

type Random = () => number;

const TURN = 2 * Math.PI;
const between = (random: Random, least: number, most: number): number =>
	least + (most - least) * random();

/** Moves along a direction by two waves across it. */
interface Shear {
	angle: number;
	/** Heights and lengths of the waves, m. */
	heightsM: readonly [number, number];
	lengthsM: readonly [number, number];
}

function shear({ x, y }: Places, random: Random, step: Shear): void {
	const cos = Math.cos(step.angle);
	const sin = Math.sin(step.angle);
	const [height, otherHeight] = step.heightsM;
	const waves = TURN / step.lengthsM[0];
	const otherWaves = TURN / step.lengthsM[1];
	const phase = TURN * random();
	const otherPhase = TURN * random();
	for (let i = 0; i < x.length; i++) {
		const across = (y[i] as number) * cos - (x[i] as number) * sin;
		const by =
			height * Math.sin(waves * across + phase) +
			otherHeight * Math.sin(otherWaves * across + otherPhase);
		x[i] = (x[i] as number) + by * cos;
		y[i] = (y[i] as number) + by * sin;
	}
}

function turnAndSqueeze(
	{ x, y }: Places,
	angle: number,
	squeeze: number,
): void {
	const cos = Math.cos(angle);
	const sin = Math.sin(angle);
	for (let i = 0; i < x.length; i++) {
		const along = (x[i] as number) * cos + (y[i] as number) * sin;
		const across = (y[i] as number) * cos - (x[i] as number) * sin;
		x[i] = along / squeeze;
		y[i] = across * squeeze;
	}
}

/** How mix spreads as it is poured: a bucket's in one sweep, which draws it long. */
const POURS: Record<Placing, { turn: number; bendM: number; squeeze: number }> =
	{
		"bucket fold": { turn: 26 / 360, bendM: 0.08, squeeze: 1.5 },
		"mold lay-up": { turn: 0, bendM: 0.06, squeeze: 1 },
	};

/** Back from the piece to the mix as folded. */
export function tracePour(
	places: Places,
	placing: Placing,
	random: Random,
): void {
	for (const angle of [0.3, 1.9])
		shear(places, random, {
			angle,
			heightsM: [0.0035, 0.002],
			lengthsM: [0.16, 0.11],
		});
	const { turn, bendM, squeeze } = POURS[placing];
	turnAndSqueeze(places, TURN * turn * between(random, -1, 1), 1);
	for (const angle of [TURN / 4, 0])
		shear(places, random, {
			angle,
			heightsM: [bendM, bendM / 2],
			lengthsM: [1.3, 0.9],
		});
	turnAndSqueeze(places, 0, squeeze);
}

/** Back through the folds to the tones as they lay; a further fold is the last step, so that outer bends stay. */
export function traceFolds(
	places: Places,
	placing: Placing,
	folds: number,
	random: Random,
): void {
	if (placing === "mold lay-up")
		for (let round = 0; round < 2 * (folds + 1); round++) twist(places, random);
	else {
		let angle = TURN * random();
		for (let fold = 0; fold <= folds; fold++) {
			shear(places, random, foldAt(angle, random));
			angle += (TURN * (90 + between(random, -32, 32))) / 360;
		}
	}
}

const FOLD_M = 0.95;
/** Steepest slope: at 3.5 two waves together double a line's length. */
const SLOPE = 3.5;

function foldAt(angle: number, random: Random): Shear {
	const heightM = (SLOPE * FOLD_M) / TURN;
	return {
		angle,
		heightsM: [0.85 * heightM, 0.26 * heightM],
		lengthsM: [
			FOLD_M / between(random, 0.7, 1.3),
			FOLD_M / between(random, 1.5, 2.4),
		],
	};
}

/** Before the twists repeat; more cells than a piece has. */
const CELLS = 64;

/** Turns a disc in each cell of a turned grid, most in its middle. */
function twist({ x, y }: Places, random: Random): void {
	const angle = TURN * random();
	const cellM = between(random, 0.56, 1);
	const cos = Math.cos(angle) / cellM;
	const sin = Math.sin(angle) / cellM;
	const shift = random();
	const otherShift = random();
	const turns = new Float64Array(CELLS * CELLS);
	const perRadius2 = new Float64Array(CELLS * CELLS);
	for (let i = 0; i < turns.length; i++) {
		const turn = 0.72 * between(random, 0.35, 1);
		turns[i] = TURN * (random() < 0.5 ? turn : -turn);
		perRadius2[i] = between(random, 0.4, 0.5) ** -2;
	}
	for (let i = 0; i < x.length; i++) {
		const u = (x[i] as number) * cos + (y[i] as number) * sin + shift;
		const v = (y[i] as number) * cos - (x[i] as number) * sin + otherShift;
		const column = Math.floor(u);
		const row = Math.floor(v);
		const right = u - column - 0.5;
		const down = v - row - 0.5;
		const cell = (row & (CELLS - 1)) * CELLS + (column & (CELLS - 1));
		const inside =
			1 - (right * right + down * down) * (perRadius2[cell] as number);
		if (inside <= 0) continue;
		const by = (turns[cell] as number) * inside * inside;
		const less = Math.cos(by) - 1;
		const more = Math.sin(by);
		const du = right * less - down * more;
		const dv = down * less + right * more;
		x[i] = (x[i] as number) + (du * cos - dv * sin) * cellM * cellM;
		y[i] = (y[i] as number) + (dv * cos + du * sin) * cellM * cellM;
	}
}
