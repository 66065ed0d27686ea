/** All sums of some of a few things, sorted, with the selection behind each; masses in any unit, here and in what packs. */

/** Things of one mass. */
export interface Kind {
	mass: number;
	count: number;
}

export interface Half {
	kinds: readonly Kind[];
	/** Ascending. */
	sums: number[];
	/** The selection behind each sum, as a number with one digit a kind. */
	codes: number[];
	/** What finding them costs, as the number of sums when no two masses are equal. */
	work: number;
}

type Sorted = Pick<Half, "sums" | "codes">;

/** The sums of all selections of some kinds. */
export function half(kinds: readonly Kind[]): Half {
	const [first, ...others] = kinds;
	let all = multiples(first ?? { mass: 0, count: 0 });
	let digit = (first?.count ?? 0) + 1;
	let work = 2 * digit;
	for (const { mass, count } of others) {
		all = withMore(all, 0, count, mass, digit);
		digit *= count + 1;
		work += (all.sums.length * Math.log2(count + 1)) / 2;
	}
	return { kinds, ...all, work };
}

/** Of one kind, which may be thousands, without merging. */
function multiples({ mass, count }: Kind): Sorted {
	const sums: number[] = [];
	const codes: number[] = [];
	for (let times = 0; times <= count; times += 1) {
		sums.push(times * mass);
		codes.push(times);
	}
	return { sums, codes };
}

/** The selections with `from` to `to` more things of one mass. */
function withMore(
	all: Sorted,
	from: number,
	to: number,
	mass: number,
	digit: number,
): Sorted {
	if (to === 0) return all;
	if (from === to)
		return {
			sums: all.sums.map((sum) => sum + from * mass),
			codes: all.codes.map((code) => code + from * digit),
		};
	const middle = Math.floor((from + to) / 2);
	return merged(
		withMore(all, from, middle, mass, digit),
		withMore(all, middle + 1, to, mass, digit),
	);
}

function merged(a: Sorted, b: Sorted): Sorted {
	const sums: number[] = [];
	const codes: number[] = [];
	let j = 0;
	for (let i = 0; i <= a.sums.length; i += 1) {
		const sum = a.sums[i] ?? Number.POSITIVE_INFINITY;
		for (; j < b.sums.length && (b.sums[j] as number) < sum; j += 1) {
			sums.push(b.sums[j] as number);
			codes.push(b.codes[j] as number);
		}
		if (i === a.sums.length) break;
		sums.push(sum);
		codes.push(a.codes[i] as number);
	}
	return { sums, codes };
}
