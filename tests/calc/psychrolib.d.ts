/** What the tests use of psychrolib (MIT), which comes without types. */
declare module "psychrolib" {
	const psychrolib: {
		SI: number;
		SetUnitSystem(system: number): void;
		/** Saturation vapor pressure in Pa at °C; ASHRAE Handbook, Fundamentals (2017), ch. 1. */
		GetSatVapPres(temperatureC: number): number;
	};
	export default psychrolib;
}
