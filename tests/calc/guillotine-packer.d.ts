/** What the tests use of guillotine-packer, which is the yardstick of the nesting. */
declare module "guillotine-packer" {
	export function packer(
		input: {
			binWidth: number;
			binHeight: number;
			items: { name: string; width: number; height: number }[];
		},
		options: { kerfSize: number; allowRotation: boolean },
	): unknown[][];
}
