/** A part of the plan, m from the middle of the piece; y runs towards the person who stands in front. */
export interface Box {
	left: number;
	top: number;
	right: number;
	bottom: number;
}

export const boxOf = (widthM: number, heightM: number): Box => ({
	left: -widthM / 2,
	top: -heightM / 2,
	right: widthM / 2,
	bottom: heightM / 2,
});

export const inBox = (box: Box, x: number, y: number): boolean =>
	x >= box.left && x < box.right && y >= box.top && y < box.bottom;
