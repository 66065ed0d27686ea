/** A sentence of the script or of a sheet function, with its end. */
export const ended = (sentence: string): string =>
	/[.!?…]\)?$/.test(sentence) ? sentence : `${sentence}.`;
