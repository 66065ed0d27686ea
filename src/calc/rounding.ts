/** How far the last bits of a conversion or a product may push a number, as a share of it. */
const ROUNDING = 1e-9;

/** A limit that what equals it but for rounding does not pass, in its unit. */
export const withRounding = (limit: number): number => limit * (1 + ROUNDING);
