/**
 * Castings in grams with their fewest loads and, in so many loads, the lightest heaviest one.
 *
 * No fewer loads hold the sum of the masses. That no lighter loads do was found by trying all subsets, a million of 20
 * castings and 17 million of 24; `loads.all.test.ts` tries them again.
 */
export const OPTIMA = [
	{
		capacity: 100000,
		loads: 5,
		heaviest: 81736,
		masses: [
			10012, 29993, 10587, 18514, 10007, 25969, 29994, 29999, 29991, 19816,
			27231, 20937, 10009, 10220, 29992, 18001, 10013, 28536, 10005, 25311,
		],
	},
	{
		capacity: 100000,
		loads: 4,
		heaviest: 90263,
		masses: [
			28046, 19648, 28685, 10003, 10920, 30000, 24151, 10003, 12536, 12435,
			10003, 12717, 29991, 10013, 11651, 22322, 21987, 15619, 30000, 10012,
		],
	},
	{
		capacity: 100000,
		loads: 6,
		heaviest: 89975,
		masses: [
			20004, 34991, 25871, 21185, 20006, 25586, 34995, 34987, 34993, 28271,
			25066, 21172, 20008, 22041, 34987, 31577, 20001, 27367, 20012, 20792,
		],
	},
	{
		capacity: 100000,
		loads: 6,
		heaviest: 90108,
		masses: [
			24043, 26357, 32487, 20008, 21855, 34990, 26460, 20003, 22582, 29396,
			20007, 30058, 34990, 20010, 31264, 22899, 33267, 32646, 34990, 20007,
		],
	},
	{
		capacity: 100000,
		loads: 8,
		heaviest: 98597,
		masses: [
			18012, 49993, 28895, 18135, 18007, 30399, 49994, 49999, 49991, 25554,
			35417, 39173, 18009, 42799, 49992, 28479, 18013, 25850, 18005, 34646,
			18905, 41267, 23052, 41496,
		],
	},
];
