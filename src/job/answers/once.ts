/** An answer that is worked out when it is first asked for, and kept. */
export const once = <T>(work: () => T): (() => T) => {
	let answer: { is: T } | undefined;
	return () => {
		answer ??= { is: work() };
		return answer.is;
	};
};
