/** Smooth random numbers over a plane: plane waves of chosen length, kept in a table that repeats far away. */

export interface Waves {
	/** Rows of one repeat, as many as columns: a power of two. */
	table: Float32Array;
	cells: number;
	perM: number;
	/** Root of the mean square slope in any direction, 1/m. */
	slopePerM: number;
}

export interface WaveLengths {
	/** Mean length of a wave, m. */
	startM: number;
	/** How many times longer the waves are along x than across. */
	layered?: number;
	/** What is added and subtracted at most, as a share of the mean. */
	spread?: number;
}

const WAVES = 7;
/** A table's cell, m: a twentieth of the shortest wave that tones have. */
const CELL_M = 6 / 256;

/** Random numbers of mean 0 and variance 1; they repeat after at least `periodM`. */
export function waves(
	random: () => number,
	periodM: number,
	{ startM, layered = 1, spread = 0.45 }: WaveLengths,
): Waves {
	const cellM = Math.min(CELL_M, startM / 10);
	const cells = 2 ** Math.ceil(Math.log2(periodM / cellM));
	const table = new Float32Array(cells * cells);
	const turn = Math.PI * random();
	const stretch = Math.sqrt(layered);
	let squares = 0;
	for (let wave = 0; wave < WAVES; wave++) {
		const angle = turn + (Math.PI * (wave + random())) / WAVES;
		const turns = (periodM * (1 - spread + 2 * spread * random())) / startM;
		const phase = 2 * Math.PI * random();
		const along = Math.round((turns * Math.cos(angle)) / stretch);
		const across = Math.round(turns * Math.sin(angle) * stretch);
		addWave(table, cells, { along, across, phase });
		squares += along ** 2 + across ** 2;
	}
	const slopePerM = ((2 * Math.PI) / periodM) * Math.sqrt(squares / WAVES / 2);
	return { table, cells, perM: cells / periodM, slopePerM };
}

/** Adds √(2 / waves) cos(along · u + across · v + phase), by the sum of two angles. */
function addWave(
	table: Float32Array,
	cells: number,
	{ along, across, phase }: { along: number; across: number; phase: number },
): void {
	const height = Math.sqrt(2 / WAVES);
	const step = (2 * Math.PI) / cells;
	const angles = Array.from({ length: cells }, (_, i) => along * step * i);
	const cosines = Float64Array.from(angles, Math.cos);
	const sines = Float64Array.from(angles, Math.sin);
	for (let row = 0, i = 0; row < cells; row++) {
		const cos = height * Math.cos(across * step * row + phase);
		const sin = height * Math.sin(across * step * row + phase);
		for (let column = 0; column < cells; column++, i++)
			table[i] =
				(table[i] as number) +
				(cosines[column] as number) * cos -
				(sines[column] as number) * sin;
	}
}

/** The number at a place, between the table's cells in a straight line. */
export function waveAt(
	{ table, cells, perM }: Waves,
	xM: number,
	yM: number,
): number {
	const u = xM * perM;
	const v = yM * perM;
	const column = Math.floor(u);
	const row = Math.floor(v);
	const right = u - column;
	const down = v - row;
	const mask = cells - 1;
	const i = column & mask;
	const j = (column + 1) & mask;
	const above = (row & mask) * cells;
	const below = ((row + 1) & mask) * cells;
	const upper =
		(table[above + i] as number) * (1 - right) +
		(table[above + j] as number) * right;
	const lower =
		(table[below + i] as number) * (1 - right) +
		(table[below + j] as number) * right;
	return upper * (1 - down) + lower * down;
}
